-- Written by ./tests/run --dump at migration 23. Sealed under the tests' key, 5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a.
--
-- PostgreSQL database dump
--

\restrict hQdIJUdZbhfHbCiEe0fmRAsgFhyYx69kx8A6B2ZZaZ1eRNDoHoXhRfYjpj2wTBX

-- Dumped from database version 15.18 (Debian 15.18-0+deb12u1)
-- Dumped by pg_dump version 15.18 (Debian 15.18-0+deb12u1)

SET statement_timeout = 0;
SET lock_timeout = 0;
SET idle_in_transaction_session_timeout = 0;
SET client_encoding = 'UTF8';
SET standard_conforming_strings = on;
SELECT pg_catalog.set_config('search_path', '', false);
SET check_function_bodies = false;
SET xmloption = content;
SET client_min_messages = warning;
SET row_security = off;

--
-- Name: access; Type: SCHEMA; Schema: -; Owner: leeward_owner
--

CREATE SCHEMA access;


ALTER SCHEMA access OWNER TO leeward_owner;

--
-- Name: accept_invitation(bytea, uuid, uuid, bytea, jsonb, text); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.accept_invitation(hash bytea, new_member uuid, passkey_id uuid, credential bytea, passkey jsonb, label text) RETURNS uuid
    LANGUAGE plpgsql SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
DECLARE i access.invitation; who uuid; at timestamptz := access.now();
BEGIN
  UPDATE access.invitation SET spent_at = at WHERE token_hash = hash AND spent_at IS NULL AND ends_at > at RETURNING * INTO i;
  IF NOT FOUND THEN RETURN NULL; END IF;
  who := coalesce(i.member_id, new_member);
  IF i.member_id IS NULL THEN
    INSERT INTO access.member (id, name, roles, joined_at) VALUES (who, i.name, i.roles, at);
    INSERT INTO access.news (member_id, kind, about, by_member, at)
    SELECT m.id, 'joined', who, i.made_by, at FROM access.member m
    WHERE i.roles && ARRAY['administrator', 'lead'] AND m.left_at IS NULL AND 'administrator' = ANY (m.roles) AND m.id <> who;
  END IF;
  IF i.replacement IS NOT NULL THEN
    DELETE FROM access.passkey WHERE member_id = who;
    UPDATE access.signin SET closed_at = at WHERE member_id = who AND closed_at IS NULL;
    UPDATE access.invitation SET ends_at = at WHERE member_id = who AND spent_at IS NULL AND ends_at > at;
    INSERT INTO access.news (member_id, kind, about, at)
    SELECT m.id, 'passkey_replaced', who, at FROM access.member m WHERE m.left_at IS NULL AND 'administrator' = ANY (m.roles);
  END IF;
  INSERT INTO access.passkey (id, member_id, credential_id, passkey, label, added_at) VALUES (passkey_id, who, credential, passkey, label, at);
  RETURN who;
END $$;


ALTER FUNCTION access.accept_invitation(hash bytea, new_member uuid, passkey_id uuid, credential bytea, passkey jsonb, label text) OWNER TO leeward_owner;

--
-- Name: admit_seat(uuid, uuid); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.admit_seat(which uuid, wanted uuid) RETURNS boolean
    LANGUAGE plpgsql SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
BEGIN
  IF access.treats_session(which) IS NOT TRUE THEN
    RAISE EXCEPTION 'not allowed to admit to this session' USING ERRCODE = 'insufficient_privilege';
  END IF;
  UPDATE access.seat SET admitted_at = coalesce(admitted_at, access.now())
  WHERE id = wanted AND session_id = which AND taken_at IS NOT NULL AND closed_at IS NULL;
  RETURN FOUND;
END $$;


ALTER FUNCTION access.admit_seat(which uuid, wanted uuid) OWNER TO leeward_owner;

--
-- Name: agree_replacement(uuid, bytea, timestamp with time zone); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.agree_replacement(which uuid, hash bytea, until timestamp with time zone) RETURNS uuid
    LANGUAGE plpgsql SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
DECLARE owner boolean := session_user = current_user; me uuid := access.me(); at timestamptz := access.now(); r access.replacement;
BEGIN
  IF (owner OR access.may_hand_over()) IS NOT TRUE THEN
    RAISE EXCEPTION 'not allowed to agree to this' USING ERRCODE = 'insufficient_privilege';
  END IF;
  IF NOT owner THEN PERFORM access.must_be_fresh(); END IF;
  IF (until > at AND until <= at + interval '1 day') IS NOT TRUE THEN RETURN NULL; END IF;
  UPDATE access.replacement p SET agreed_by = me, agreed_at = at
  WHERE p.id = which AND p.agreed_at IS NULL AND p.ends_at > at
    AND (CASE WHEN owner THEN p.asked_by IS NOT NULL OR NOT EXISTS (SELECT FROM access.member o
        WHERE o.id <> p.member_id AND o.left_at IS NULL AND o.roles && ARRAY['administrator', 'lead'])
      ELSE p.asked_by IS DISTINCT FROM me AND p.member_id <> me
        AND EXISTS (SELECT FROM access.member m WHERE m.id = me AND coalesce(m.roles_since, m.joined_at) <= p.asked_at) END)
    AND (p.asked_by IS NULL OR EXISTS (SELECT FROM access.member a
      WHERE a.id = p.asked_by AND a.left_at IS NULL AND 'administrator' = ANY (a.roles)))
    AND EXISTS (SELECT FROM access.member m WHERE m.id = p.member_id AND m.left_at IS NULL)
  RETURNING * INTO r;
  IF NOT FOUND THEN RETURN NULL; END IF;
  INSERT INTO access.invitation (token_hash, member_id, name, roles, made_by, made_at, ends_at, replacement)
  SELECT hash, m.id, m.name, m.roles, me, at, until, r.id FROM access.member m WHERE m.id = r.member_id;
  RETURN r.member_id;
END $$;


ALTER FUNCTION access.agree_replacement(which uuid, hash bytea, until timestamp with time zone) OWNER TO leeward_owner;

--
-- Name: answer_request(uuid, text); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.answer_request(which uuid, said text) RETURNS boolean
    LANGUAGE plpgsql SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
BEGIN
  UPDATE access.request_key SET answer = said WHERE member_id = access.me() AND key = which AND answer IS NULL;
  RETURN FOUND;
END $$;


ALTER FUNCTION access.answer_request(which uuid, said text) OWNER TO leeward_owner;

--
-- Name: ask_replacement(uuid, uuid); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.ask_replacement(which uuid, who uuid) RETURNS void
    LANGUAGE plpgsql SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
DECLARE owner boolean := session_user = current_user; at timestamptz := access.now();
BEGIN
  IF (owner OR (access.has_role('administrator') AND who <> access.me())) IS NOT TRUE
    OR NOT EXISTS (SELECT FROM access.member WHERE id = who AND left_at IS NULL) THEN
    RAISE EXCEPTION 'not allowed to ask for this' USING ERRCODE = 'insufficient_privilege';
  END IF;
  IF NOT owner THEN PERFORM access.must_be_fresh(); END IF;
  -- One at a time: an earlier one is over, and so is its link.
  UPDATE access.invitation SET ends_at = at WHERE member_id = who AND replacement IS NOT NULL AND spent_at IS NULL AND ends_at > at;
  UPDATE access.replacement SET ends_at = at WHERE member_id = who AND ends_at > at;
  INSERT INTO access.replacement (id, member_id, asked_by, asked_at, ends_at) VALUES (which, who, access.me(), at, at + interval '1 day');
  INSERT INTO access.news (member_id, kind, about, by_member, at)
  SELECT m.id, 'passkey_asked', who, access.me(), at FROM access.member m
  WHERE m.left_at IS NULL AND (m.roles && ARRAY['administrator', 'lead'] OR m.id = who) AND m.id IS DISTINCT FROM access.me();
END $$;


ALTER FUNCTION access.ask_replacement(which uuid, who uuid) OWNER TO leeward_owner;

--
-- Name: audit(text, uuid, uuid); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.audit(act text, client uuid, object uuid) RETURNS void
    LANGUAGE plpgsql SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $_$
DECLARE what text := access.kind(); who uuid; holds boolean; last_act boolean;
BEGIN
  SELECT a.may_be_last INTO last_act FROM access.audit_act a WHERE a.kind = what AND a.act = $1;
  IF NOT FOUND THEN
    RAISE EXCEPTION '"%" is no act of a %', $1, what USING ERRCODE = 'insufficient_privilege';
  END IF;
  CASE what
    WHEN 'member' THEN
      SELECT s.member_id INTO who FROM access.signin s WHERE s.token_hash = access.token_hash();
      holds := who IS NOT NULL AND (last_act OR access.my_signin() IS NOT NULL);
    WHEN 'seat' THEN
      holds := EXISTS (SELECT FROM access.seat s WHERE s.token_hash = access.token_hash() AND (last_act OR s.closed_at IS NULL));
    WHEN 'owner' THEN holds := session_user = current_user;
    ELSE holds := what = 'visitor';
  END CASE;
  IF holds IS NOT TRUE THEN
    RAISE EXCEPTION 'nobody who may do "%"', $1 USING ERRCODE = 'insufficient_privilege';
  END IF;
  PERFORM access.keep_act(what, who, $1, client, object);
END $_$;


ALTER FUNCTION access.audit(act text, client uuid, object uuid) OWNER TO leeward_owner;

--
-- Name: audit_hash(bytea, bigint, timestamp with time zone, text, uuid, text, uuid, uuid); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.audit_hash(previous bytea, seq bigint, at timestamp with time zone, kind text, member uuid, act text, client uuid, object uuid) RETURNS bytea
    LANGUAGE sql IMMUTABLE
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
  SELECT sha256(previous || convert_to(concat_ws('|', seq, extract(epoch FROM at), kind, coalesce(member::text, '-'), act,
    coalesce(client::text, '-'), coalesce(object::text, '-')), 'UTF8')) $$;


ALTER FUNCTION access.audit_hash(previous bytea, seq bigint, at timestamp with time zone, kind text, member uuid, act text, client uuid, object uuid) OWNER TO leeward_owner;

--
-- Name: begin_ceremony(bytea, jsonb); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.begin_ceremony(hash bytea, ceremony jsonb) RETURNS void
    LANGUAGE sql SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
  DELETE FROM access.ceremony WHERE ends_at <= access.now();
  INSERT INTO access.ceremony VALUES (hash, ceremony, access.now() + interval '5 minutes') $$;


ALTER FUNCTION access.begin_ceremony(hash bytea, ceremony jsonb) OWNER TO leeward_owner;

--
-- Name: begin_request(uuid, text, bytea); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.begin_request(which uuid, of_act text, said bytea) RETURNS TABLE(fresh boolean, same boolean, answer text)
    LANGUAGE plpgsql SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
DECLARE who uuid := access.me();
BEGIN
  IF who IS NULL THEN RETURN; END IF;
  INSERT INTO access.request_key (member_id, key, act, body, kept_at) VALUES (who, which, of_act, said, access.now())
  ON CONFLICT DO NOTHING;
  IF FOUND THEN
    RETURN QUERY SELECT true, true, NULL::text;
  ELSE
    RETURN QUERY SELECT false, (r.act = of_act AND r.body = said), r.answer FROM access.request_key r
      WHERE r.member_id = who AND r.key = which;
  END IF;
END $$;


ALTER FUNCTION access.begin_request(which uuid, of_act text, said bytea) OWNER TO leeward_owner;

--
-- Name: care_links(); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.care_links() RETURNS TABLE(member_id uuid, client_id uuid, since timestamp with time zone, until timestamp with time zone)
    LANGUAGE sql STABLE SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
  SELECT c.member_id, c.client_id, c.since, c.until FROM access.care_link c
  WHERE c.member_id = (SELECT access.me()) OR (SELECT access.has_role('lead')) $$;


ALTER FUNCTION access.care_links() OWNER TO leeward_owner;

--
-- Name: change_roles(uuid, text[], text[]); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.change_roles(who uuid, was text[], wanted text[]) RETURNS boolean
    LANGUAGE plpgsql SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
DECLARE at timestamptz := access.now();
BEGIN
  PERFORM access.lock_administrators();
  IF access.has_role('administrator') IS NOT TRUE THEN
    RAISE EXCEPTION 'not allowed to change roles' USING ERRCODE = 'insufficient_privilege';
  END IF;
  PERFORM access.must_be_fresh();
  IF (who = access.me() AND 'administrator' <> ALL (wanted)) IS NOT FALSE THEN RETURN false; END IF;
  UPDATE access.member SET roles = wanted, roles_since = CASE WHEN roles @> wanted THEN roles_since ELSE at END
  WHERE id = who AND left_at IS NULL AND roles @> was AND was @> roles;
  IF NOT FOUND THEN RETURN false; END IF;
  IF 'administrator' <> ALL (wanted) THEN
    PERFORM access.end_invitations_of(who);
    UPDATE access.replacement SET ends_at = at WHERE asked_by = who AND ends_at > at;
  END IF;
  INSERT INTO access.news (member_id, kind, by_member, at) SELECT who, 'roles_changed', access.me(), at WHERE who <> access.me();
  -- Nobody takes on a role unseen, their own least of all.
  INSERT INTO access.news (member_id, kind, about, by_member, at)
  SELECT m.id, 'roles_of_changed', who, access.me(), at FROM access.member m
  WHERE m.left_at IS NULL AND m.roles && ARRAY['administrator', 'lead'] AND m.id NOT IN (who, access.me());
  RETURN true;
END $$;


ALTER FUNCTION access.change_roles(who uuid, was text[], wanted text[]) OWNER TO leeward_owner;

--
-- Name: claim_seat(uuid, uuid, bytea, text, bytea); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.claim_seat(link uuid, seat_id uuid, hash bytea, on_device text, earlier bytea) RETURNS text
    LANGUAGE plpgsql SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
DECLARE which uuid; has boolean;
BEGIN
  UPDATE access.join_link SET code_spent_at = access.now()
  WHERE id = link AND code_spent_at IS NULL AND revoked_at IS NULL RETURNING session_id INTO which;
  IF which IS NULL THEN RETURN NULL; END IF;
  PERFORM pg_advisory_xact_lock(hashtextextended(which::text, 0));
  UPDATE access.seat SET closed_at = access.now(), closed_why = 'joined_again' WHERE token_hash = earlier AND closed_at IS NULL;
  has := EXISTS (SELECT FROM access.seat WHERE session_id = which AND taken_at IS NOT NULL AND closed_at IS NULL);
  INSERT INTO access.seat (id, token_hash, link_id, session_id, device, asked_at, taken_at)
  VALUES (seat_id, hash, link, which, on_device, access.now(), CASE WHEN NOT has THEN access.now() END);
  RETURN CASE WHEN has THEN 'asked' ELSE 'taken' END;
END $$;


ALTER FUNCTION access.claim_seat(link uuid, seat_id uuid, hash bytea, on_device text, earlier bytea) OWNER TO leeward_owner;

--
-- Name: claimed_seat(bytea, bytea); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.claimed_seat(link_hash bytea, hash bytea) RETURNS TABLE(session_id uuid, state text)
    LANGUAGE plpgsql STABLE SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
BEGIN
  RETURN QUERY SELECT s.session_id,
    CASE WHEN s.closed_at IS NOT NULL OR g.ended_at IS NOT NULL THEN 'closed' WHEN s.taken_at IS NULL THEN 'asked' ELSE 'taken' END
  FROM access.seat s JOIN access.join_link l ON l.id = s.link_id JOIN access.gate g ON g.session_id = s.session_id
  WHERE s.token_hash = hash AND l.token_hash = link_hash;
END $$;


ALTER FUNCTION access.claimed_seat(link_hash bytea, hash bytea) OWNER TO leeward_owner;

--
-- Name: clients_of(uuid); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.clients_of(who uuid) RETURNS TABLE(client_id uuid, number integer, alone boolean, session_id uuid)
    LANGUAGE plpgsql STABLE SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
BEGIN
  IF access.may_hand_over() IS NOT TRUE THEN RETURN; END IF;
  RETURN QUERY
    SELECT c.id, c.number,
      NOT EXISTS (SELECT FROM access.care_link o JOIN access.member m ON m.id = o.member_id
        WHERE o.client_id = c.id AND o.until IS NULL AND m.left_at IS NULL AND 'clinician' = ANY (m.roles) AND o.member_id IS DISTINCT FROM who),
      (SELECT g.session_id FROM access.gate g WHERE g.client_id = c.id AND g.ended_at IS NULL LIMIT 1)
    FROM public.client c
    WHERE c.id NOT IN (SELECT r.client_id FROM access.rehearsal r)
      AND CASE WHEN who IS NULL
        THEN NOT EXISTS (SELECT FROM access.care_link o JOIN access.member m ON m.id = o.member_id
          WHERE o.client_id = c.id AND o.until IS NULL AND m.left_at IS NULL AND 'clinician' = ANY (m.roles))
        ELSE EXISTS (SELECT FROM access.care_link o WHERE o.client_id = c.id AND o.member_id = who AND o.until IS NULL) END
    ORDER BY c.number;
END $$;


ALTER FUNCTION access.clients_of(who uuid) OWNER TO leeward_owner;

--
-- Name: close_signin(uuid); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.close_signin(which uuid) RETURNS boolean
    LANGUAGE plpgsql SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
BEGIN
  UPDATE access.signin SET closed_at = access.now() WHERE id = which AND closed_at IS NULL AND member_id = access.me();
  RETURN FOUND;
END $$;


ALTER FUNCTION access.close_signin(which uuid) OWNER TO leeward_owner;

--
-- Name: decide_seat(uuid, uuid, boolean); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.decide_seat(which uuid, wanted uuid, move boolean) RETURNS boolean
    LANGUAGE plpgsql SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
DECLARE asked access.seat;
BEGIN
  IF access.treats_session(which) IS NOT TRUE THEN
    RAISE EXCEPTION 'not allowed to decide about this seat' USING ERRCODE = 'insufficient_privilege';
  END IF;
  PERFORM pg_advisory_xact_lock(hashtextextended(which::text, 0));
  SELECT * INTO asked FROM access.seat WHERE id = wanted AND session_id = which;
  IF NOT FOUND THEN RETURN false; END IF;
  IF move THEN
    IF asked.closed_at IS NOT NULL THEN RETURN false; END IF;
    IF asked.taken_at IS NOT NULL THEN RETURN true; END IF;
    UPDATE access.seat SET closed_at = access.now(), closed_why = 'moved' WHERE session_id = which AND closed_at IS NULL AND id <> wanted;
    UPDATE access.seat SET taken_at = access.now() WHERE id = wanted;
    RETURN true;
  END IF;
  IF asked.taken_at IS NOT NULL THEN RETURN false; END IF;
  UPDATE access.seat SET closed_at = access.now(), closed_why = 'refused'
  WHERE session_id = which AND taken_at IS NULL AND closed_at IS NULL AND asked_no <= asked.asked_no;
  RETURN asked.closed_at IS NULL OR asked.closed_why IS NOT DISTINCT FROM 'refused';
END $$;


ALTER FUNCTION access.decide_seat(which uuid, wanted uuid, move boolean) OWNER TO leeward_owner;

--
-- Name: demo_member(text); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.demo_member(wanted text) RETURNS uuid
    LANGUAGE sql STABLE SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
  SELECT m.id FROM access.member m JOIN public.practice p ON p.demo
  WHERE m.left_at IS NULL AND wanted = ANY (m.roles) ORDER BY m.joined_at, m.name LIMIT 1 $$;


ALTER FUNCTION access.demo_member(wanted text) OWNER TO leeward_owner;

--
-- Name: end_ceremony(bytea); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.end_ceremony(hash bytea) RETURNS jsonb
    LANGUAGE sql SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$ DELETE FROM access.ceremony WHERE token_hash = hash AND ends_at > access.now() RETURNING state $$;


ALTER FUNCTION access.end_ceremony(hash bytea) OWNER TO leeward_owner;

--
-- Name: end_invitations_of(uuid); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.end_invitations_of(who uuid) RETURNS void
    LANGUAGE plpgsql SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
BEGIN
  UPDATE access.invitation SET ends_at = access.now()
  WHERE made_by = who AND member_id IS NULL AND spent_at IS NULL AND ends_at > access.now();
END $$;


ALTER FUNCTION access.end_invitations_of(who uuid) OWNER TO leeward_owner;

--
-- Name: end_links_of_signin(); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.end_links_of_signin() RETURNS trigger
    LANGUAGE plpgsql SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
BEGIN
  UPDATE access.invitation SET ends_at = least(ends_at, NEW.closed_at)
  WHERE made_in = NEW.id AND member_id IS NOT NULL AND spent_at IS NULL;
  RETURN NULL;
END $$;


ALTER FUNCTION access.end_links_of_signin() OWNER TO leeward_owner;

--
-- Name: end_membership(uuid); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.end_membership(who uuid) RETURNS SETOF uuid
    LANGUAGE plpgsql SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
BEGIN
  PERFORM access.lock_administrators();
  IF (access.has_role('administrator') AND who <> access.me()) IS NOT TRUE THEN
    RAISE EXCEPTION 'not allowed to end this membership' USING ERRCODE = 'insufficient_privilege';
  END IF;
  PERFORM access.must_be_fresh();
  UPDATE access.member SET left_at = access.now() WHERE id = who AND left_at IS NULL;
  UPDATE access.care_link SET until = access.now() WHERE member_id = who AND until IS NULL;
  UPDATE access.invitation SET ends_at = access.now()
  WHERE (made_by = who OR member_id = who) AND spent_at IS NULL AND ends_at > access.now();
  UPDATE access.replacement SET ends_at = access.now() WHERE (member_id = who OR asked_by = who) AND ends_at > access.now();
  RETURN QUERY UPDATE access.signin SET closed_at = access.now() WHERE member_id = who AND closed_at IS NULL RETURNING id;
END $$;


ALTER FUNCTION access.end_membership(who uuid) OWNER TO leeward_owner;

--
-- Name: hand_over(uuid, uuid, uuid, uuid); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.hand_over(link_id uuid, client uuid, from_member uuid, to_member uuid) RETURNS boolean
    LANGUAGE plpgsql SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
DECLARE at timestamptz := access.now(); ended integer;
BEGIN
  IF access.may_hand_over() IS NOT TRUE THEN
    RAISE EXCEPTION 'not allowed to hand this client over' USING ERRCODE = 'insufficient_privilege';
  END IF;
  PERFORM access.must_be_fresh();
  IF (to_member IS DISTINCT FROM from_member AND EXISTS (SELECT FROM public.client c WHERE c.id = client)
      AND client NOT IN (SELECT r.client_id FROM access.rehearsal r)
      AND EXISTS (SELECT FROM access.member WHERE id = to_member AND left_at IS NULL AND 'clinician' = ANY (roles))) IS NOT TRUE THEN
    RETURN false;
  END IF;
  -- Two who hand the same client over at once do it one after the other, also where there is no link yet to wait for.
  PERFORM pg_advisory_xact_lock(hashtextextended(client::text, 13));
  IF from_member IS NULL THEN
    IF EXISTS (SELECT FROM access.care_link l JOIN access.member m ON m.id = l.member_id
      WHERE l.client_id = client AND l.until IS NULL AND m.left_at IS NULL AND 'clinician' = ANY (m.roles)) THEN RETURN false; END IF;
    -- Links of members who have left or treat nobody any more end with it.
    UPDATE access.care_link SET until = at WHERE client_id = client AND until IS NULL;
  ELSE
    UPDATE access.care_link SET until = at WHERE client_id = client AND member_id = from_member AND until IS NULL;
    GET DIAGNOSTICS ended = ROW_COUNT;
    IF ended = 0 THEN RETURN false; END IF;
  END IF;
  INSERT INTO access.care_link SELECT link_id, to_member, client, at, NULL
  WHERE NOT EXISTS (SELECT FROM access.care_link WHERE client_id = client AND member_id = to_member AND until IS NULL);
  INSERT INTO access.news (member_id, kind, client_id, about, by_member, at)
  SELECT m.id, k.kind, client, k.other, access.me(), at
  FROM (VALUES (from_member, 'client_taken', to_member), (to_member, 'client_given', from_member)) AS k (who, kind, other)
  JOIN access.member m ON m.id = k.who AND m.left_at IS NULL;
  RETURN true;
END $$;


ALTER FUNCTION access.hand_over(link_id uuid, client uuid, from_member uuid, to_member uuid) OWNER TO leeward_owner;

--
-- Name: has_role(text); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.has_role(wanted text) RETURNS boolean
    LANGUAGE plpgsql STABLE SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
DECLARE who uuid := access.me();
BEGIN
  RETURN EXISTS (SELECT FROM access.member WHERE id = who AND wanted = ANY (roles));
END $$;


ALTER FUNCTION access.has_role(wanted text) OWNER TO leeward_owner;

--
-- Name: invitations(); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.invitations() RETURNS TABLE(hash bytea, name text, roles text[], made_at timestamp with time zone, ends_at timestamp with time zone)
    LANGUAGE sql STABLE SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
  SELECT i.token_hash, i.name, i.roles, i.made_at, i.ends_at FROM access.invitation i
  WHERE access.has_role('administrator') AND i.member_id IS NULL AND i.spent_at IS NULL AND i.ends_at > access.now() ORDER BY i.made_at $$;


ALTER FUNCTION access.invitations() OWNER TO leeward_owner;

--
-- Name: invite(bytea, uuid, text, text[], timestamp with time zone); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.invite(hash bytea, for_member uuid, for_name text, for_roles text[], until timestamp with time zone) RETURNS void
    LANGUAGE plpgsql SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
DECLARE at timestamptz := access.now();
BEGIN
  IF (session_user = current_user OR (for_member IS NULL AND access.has_role('administrator')) OR for_member = access.me()) IS NOT TRUE THEN
    RAISE EXCEPTION 'not allowed to invite' USING ERRCODE = 'insufficient_privilege';
  END IF;
  IF session_user <> current_user THEN PERFORM access.must_be_fresh(); END IF;
  IF (until > at AND until <= at + interval '8 days') IS NOT TRUE THEN
    RAISE EXCEPTION 'an invitation ends within days' USING ERRCODE = 'check_violation';
  END IF;
  INSERT INTO access.invitation (token_hash, member_id, name, roles, made_by, made_in, made_at, ends_at)
  VALUES (hash, for_member, for_name, for_roles, access.me(), access.my_signin(), at, until);
END $$;


ALTER FUNCTION access.invite(hash bytea, for_member uuid, for_name text, for_roles text[], until timestamp with time zone) OWNER TO leeward_owner;

--
-- Name: is_fresh(); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.is_fresh() RETURNS boolean
    LANGUAGE plpgsql STABLE SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
DECLARE mine uuid := access.my_signin();
BEGIN
  RETURN EXISTS (SELECT FROM access.signin WHERE id = mine AND shown_at > access.now() - interval '10 minutes');
END $$;


ALTER FUNCTION access.is_fresh() OWNER TO leeward_owner;

--
-- Name: is_owner(); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.is_owner() RETURNS boolean
    LANGUAGE sql STABLE
    AS $$ SELECT current_user = (SELECT pg_catalog.pg_get_userbyid(nspowner) FROM pg_catalog.pg_namespace WHERE nspname = 'access') $$;


ALTER FUNCTION access.is_owner() OWNER TO leeward_owner;

--
-- Name: keep_act(text, uuid, text, uuid, uuid); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.keep_act(kind text, member uuid, act text, client uuid, object uuid) RETURNS void
    LANGUAGE plpgsql SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
DECLARE head access.audit_head; at timestamptz := access.now(); next_hash bytea;
BEGIN
  SELECT * INTO STRICT head FROM access.audit_head FOR UPDATE;
  next_hash := access.audit_hash(head.hash, head.seq + 1, at, kind, member, act, client, object);
  INSERT INTO public.audit VALUES (head.seq + 1, at, kind, member, act, client, object, head.hash, next_hash);
  UPDATE access.audit_head SET seq = head.seq + 1, hash = next_hash;
END $$;


ALTER FUNCTION access.keep_act(kind text, member uuid, act text, client uuid, object uuid) OWNER TO leeward_owner;

--
-- Name: keep_gate(); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.keep_gate() RETURNS trigger
    LANGUAGE plpgsql SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
BEGIN
  INSERT INTO access.gate (session_id, client_id, ended_at) VALUES (NEW.id, NEW.client_id, NEW.ended_at)
  ON CONFLICT (session_id) DO UPDATE SET ended_at = EXCLUDED.ended_at;
  RETURN NULL;
END $$;


ALTER FUNCTION access.keep_gate() OWNER TO leeward_owner;

--
-- Name: keep_key_check(integer, bytea); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.keep_key_check(which integer, fresh bytea) RETURNS bytea
    LANGUAGE plpgsql SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
BEGIN
  INSERT INTO access.key_check SELECT which, fresh
  WHERE NOT EXISTS (SELECT FROM access.key_check) OR EXISTS (SELECT FROM public.client_key k WHERE k.key_id = which)
  ON CONFLICT DO NOTHING;
  RETURN (SELECT sealed FROM access.key_check WHERE key_id = which);
END $$;


ALTER FUNCTION access.keep_key_check(which integer, fresh bytea) OWNER TO leeward_owner;

--
-- Name: keep_room(); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.keep_room() RETURNS void
    LANGUAGE plpgsql SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
DECLARE at timestamptz := access.now();
BEGIN
  UPDATE access.room_token t SET ends_at = at + interval '24 hours' FROM access.gate g
  WHERE t.token_hash = access.token_hash() AND access.kind() = 'room' AND t.ends_at > at AND t.ends_at < at + interval '23 hours'
    AND g.session_id = t.session_id AND g.ended_at IS NULL;
END $$;


ALTER FUNCTION access.keep_room() OWNER TO leeward_owner;

--
-- Name: keep_session(); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.keep_session() RETURNS trigger
    LANGUAGE plpgsql
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
BEGIN
  IF OLD.ended_at IS NOT NULL AND (NEW.ended_at, NEW.closing) IS DISTINCT FROM (OLD.ended_at, OLD.closing)
    OR OLD.admitted_at IS NOT NULL AND NEW.admitted_at IS DISTINCT FROM OLD.admitted_at
    OR access.kind() = 'room' AND (NEW.admitted_at, NEW.ended_at, NEW.closing, NEW.version)
      IS DISTINCT FROM (OLD.admitted_at, OLD.ended_at, OLD.closing, OLD.version) THEN
    RAISE EXCEPTION 'not allowed to change this of a session' USING ERRCODE = 'insufficient_privilege';
  END IF;
  RETURN NEW;
END $$;


ALTER FUNCTION access.keep_session() OWNER TO leeward_owner;

--
-- Name: key_check(integer); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.key_check(which integer) RETURNS bytea
    LANGUAGE sql STABLE SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$ SELECT sealed FROM access.key_check WHERE key_id = which $$;


ALTER FUNCTION access.key_check(which integer) OWNER TO leeward_owner;

--
-- Name: keys_in_use(); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.keys_in_use() RETURNS SETOF integer
    LANGUAGE sql STABLE SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$ SELECT key_id FROM public.client_key UNION SELECT key_id FROM access.key_check $$;


ALTER FUNCTION access.keys_in_use() OWNER TO leeward_owner;

--
-- Name: keys_to_try(integer); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.keys_to_try(which integer) RETURNS TABLE(client_id uuid, wrapped bytea)
    LANGUAGE sql STABLE SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
  SELECT k.client_id, k.wrapped FROM public.client_key k
  WHERE k.key_id = which AND NOT EXISTS (SELECT FROM access.key_check c WHERE c.key_id = which) LIMIT 8 $$;


ALTER FUNCTION access.keys_to_try(which integer) OWNER TO leeward_owner;

--
-- Name: kind(); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.kind() RETURNS text
    LANGUAGE sql STABLE
    AS $$ SELECT nullif(pg_catalog.current_setting('leeward.kind', true), '') $$;


ALTER FUNCTION access.kind() OWNER TO leeward_owner;

--
-- Name: last_words(); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.last_words() RETURNS TABLE(words bytea, version integer, wrapped bytea)
    LANGUAGE plpgsql STABLE SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
DECLARE mine uuid := access.my_room();
BEGIN
  RETURN QUERY SELECT w.client_words, w.version, k.wrapped
    FROM public.session_words w JOIN public.client_key k USING (client_id) JOIN access.gate g USING (session_id)
    WHERE w.session_id = mine AND g.ended_at IS NOT NULL ORDER BY w.version DESC LIMIT 1;
END $$;


ALTER FUNCTION access.last_words() OWNER TO leeward_owner;

--
-- Name: leave_seat(); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.leave_seat() RETURNS boolean
    LANGUAGE plpgsql SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
BEGIN
  UPDATE access.seat SET closed_at = access.now(), closed_why = 'left'
  WHERE access.kind() = 'seat' AND token_hash = access.token_hash() AND closed_at IS NULL;
  RETURN FOUND;
END $$;


ALTER FUNCTION access.leave_seat() OWNER TO leeward_owner;

--
-- Name: lock_administrators(); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.lock_administrators() RETURNS void
    LANGUAGE plpgsql SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
BEGIN
  -- Not FOR UPDATE: the key of each one's request refers to its member already, and the two would wait for each other.
  PERFORM FROM access.member WHERE 'administrator' = ANY (roles) AND left_at IS NULL ORDER BY id FOR NO KEY UPDATE;
END $$;


ALTER FUNCTION access.lock_administrators() OWNER TO leeward_owner;

--
-- Name: may_hand_over(); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.may_hand_over() RETURNS boolean
    LANGUAGE plpgsql STABLE SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
BEGIN
  RETURN access.has_role('administrator') OR access.has_role('lead');
END $$;


ALTER FUNCTION access.may_hand_over() OWNER TO leeward_owner;

--
-- Name: me(); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.me() RETURNS uuid
    LANGUAGE plpgsql STABLE SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
DECLARE mine uuid := access.my_signin();
BEGIN
  IF mine IS NULL THEN RETURN NULL; END IF;
  RETURN (SELECT member_id FROM access.signin WHERE id = mine);
END $$;


ALTER FUNCTION access.me() OWNER TO leeward_owner;

--
-- Name: members(); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.members() RETURNS TABLE(id uuid, name text, roles text[], joined_at timestamp with time zone, left_at timestamp with time zone, passkeys bigint)
    LANGUAGE sql STABLE SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
  SELECT m.id, m.name, m.roles, m.joined_at, m.left_at, (SELECT count(*) FROM access.passkey p WHERE p.member_id = m.id)
  FROM access.member m WHERE access.me() IS NOT NULL ORDER BY m.name $$;


ALTER FUNCTION access.members() OWNER TO leeward_owner;

--
-- Name: mint_code(uuid, text); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.mint_code(which uuid, phc text) RETURNS boolean
    LANGUAGE plpgsql SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
BEGIN
  IF access.treats_session(which) IS NOT TRUE THEN RETURN false; END IF;
  UPDATE access.join_link SET code_phc = phc, code_ends_at = access.now() + interval '10 minutes', code_tries = 0, code_spent_at = NULL
  WHERE session_id = which AND revoked_at IS NULL AND ends_at > access.now();
  RETURN FOUND;
END $$;


ALTER FUNCTION access.mint_code(which uuid, phc text) OWNER TO leeward_owner;

--
-- Name: mint_link(uuid, bytea, uuid, timestamp with time zone, text); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.mint_link(link_id uuid, hash bytea, which uuid, until timestamp with time zone, phc text) RETURNS void
    LANGUAGE plpgsql SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
DECLARE at timestamptz := access.now();
BEGIN
  IF access.treats_session(which) IS NOT TRUE THEN
    RAISE EXCEPTION 'not allowed to make a link' USING ERRCODE = 'insufficient_privilege';
  END IF;
  IF (until > at AND until <= at + interval '8 days') IS NOT TRUE THEN
    RAISE EXCEPTION 'a link ends within days' USING ERRCODE = 'check_violation';
  END IF;
  UPDATE access.join_link SET revoked_at = at WHERE session_id = which AND revoked_at IS NULL;
  INSERT INTO access.join_link (id, token_hash, session_id, made_at, ends_at, code_phc, code_ends_at)
  VALUES (link_id, hash, which, at, until, phc, at + interval '10 minutes');
END $$;


ALTER FUNCTION access.mint_link(link_id uuid, hash bytea, which uuid, until timestamp with time zone, phc text) OWNER TO leeward_owner;

--
-- Name: must_be_fresh(); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.must_be_fresh() RETURNS void
    LANGUAGE plpgsql STABLE SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
BEGIN
  IF access.is_fresh() IS NOT TRUE THEN
    RAISE EXCEPTION 'the passkey was not shown lately' USING ERRCODE = 'LW001';
  END IF;
END $$;


ALTER FUNCTION access.must_be_fresh() OWNER TO leeward_owner;

--
-- Name: my_clients(); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.my_clients() RETURNS SETOF uuid
    LANGUAGE plpgsql STABLE SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
DECLARE who uuid := access.me();
BEGIN
  IF who IS NULL THEN RETURN; END IF;
  RETURN QUERY SELECT c.client_id FROM access.care_link c JOIN access.member m ON m.id = c.member_id
    WHERE c.member_id = who AND c.until IS NULL AND 'clinician' = ANY (m.roles);
END $$;


ALTER FUNCTION access.my_clients() OWNER TO leeward_owner;

--
-- Name: my_late_seat(); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.my_late_seat() RETURNS uuid
    LANGUAGE plpgsql STABLE SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$ BEGIN RETURN access.seat_within(interval '15 minutes'); END $$;


ALTER FUNCTION access.my_late_seat() OWNER TO leeward_owner;

--
-- Name: my_news(); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.my_news() RETURNS TABLE(id uuid, kind text, client_id uuid, number integer, about text, by_name text, at timestamp with time zone)
    LANGUAGE plpgsql STABLE SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
BEGIN
  RETURN QUERY SELECT n.id, n.kind, n.client_id, (SELECT c.number FROM public.client c WHERE c.id = n.client_id),
    (SELECT m.name FROM access.member m WHERE m.id = n.about), (SELECT m.name FROM access.member m WHERE m.id = n.by_member), n.at
  FROM access.news n WHERE n.member_id = access.me() AND n.read_at IS NULL ORDER BY n.at;
END $$;


ALTER FUNCTION access.my_news() OWNER TO leeward_owner;

--
-- Name: my_passkeys(); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.my_passkeys() RETURNS TABLE(id uuid, label text, synced boolean, added_at timestamp with time zone, used_at timestamp with time zone)
    LANGUAGE sql STABLE SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
  SELECT p.id, p.label, coalesce((p.passkey #>> '{cred,backup_eligible}')::boolean, false), p.added_at, p.used_at
  FROM access.passkey p WHERE p.member_id = access.me() ORDER BY p.added_at $$;


ALTER FUNCTION access.my_passkeys() OWNER TO leeward_owner;

--
-- Name: my_rehearsal(); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.my_rehearsal() RETURNS uuid
    LANGUAGE plpgsql SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
DECLARE who uuid := access.me();
BEGIN
  PERFORM FROM access.member WHERE id = who FOR UPDATE;
  RETURN (SELECT client_id FROM access.rehearsal WHERE member_id = who);
END $$;


ALTER FUNCTION access.my_rehearsal() OWNER TO leeward_owner;

--
-- Name: my_room(); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.my_room() RETURNS uuid
    LANGUAGE plpgsql STABLE SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
BEGIN
  IF access.kind() IS DISTINCT FROM 'room' THEN RETURN NULL; END IF;
  RETURN (SELECT session_id FROM access.room_token WHERE token_hash = access.token_hash() AND ends_at > access.now());
END $$;


ALTER FUNCTION access.my_room() OWNER TO leeward_owner;

--
-- Name: my_room_client(); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.my_room_client() RETURNS uuid
    LANGUAGE plpgsql STABLE SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
DECLARE mine uuid := access.my_room();
BEGIN
  IF mine IS NULL THEN RETURN NULL; END IF;
  RETURN (SELECT client_id FROM access.gate WHERE session_id = mine);
END $$;


ALTER FUNCTION access.my_room_client() OWNER TO leeward_owner;

--
-- Name: my_seat(); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.my_seat() RETURNS uuid
    LANGUAGE plpgsql STABLE SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$ BEGIN RETURN access.seat_within(interval '0'); END $$;


ALTER FUNCTION access.my_seat() OWNER TO leeward_owner;

--
-- Name: my_signin(); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.my_signin() RETURNS uuid
    LANGUAGE plpgsql STABLE SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
BEGIN
  IF access.kind() IS DISTINCT FROM 'member' THEN RETURN NULL; END IF;
  RETURN (SELECT s.id FROM access.signin s JOIN access.member m ON m.id = s.member_id
    WHERE s.token_hash = access.token_hash() AND s.closed_at IS NULL AND s.ends_at > access.now()
      AND s.seen_at > access.now() - interval '30 minutes' AND m.left_at IS NULL);
END $$;


ALTER FUNCTION access.my_signin() OWNER TO leeward_owner;

--
-- Name: my_signins(); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.my_signins() RETURNS TABLE(id uuid, device text, opened_at timestamp with time zone, seen_at timestamp with time zone)
    LANGUAGE sql STABLE SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
  SELECT s.id, s.device, s.opened_at, s.seen_at FROM access.signin s
  WHERE s.member_id = access.me() AND s.closed_at IS NULL AND s.ends_at > access.now()
    AND s.seen_at > access.now() - interval '30 minutes' ORDER BY s.opened_at DESC $$;


ALTER FUNCTION access.my_signins() OWNER TO leeward_owner;

--
-- Name: news_read(uuid); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.news_read(which uuid) RETURNS boolean
    LANGUAGE plpgsql SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
BEGIN
  UPDATE access.news SET read_at = coalesce(read_at, access.now()) WHERE id = which AND member_id = access.me();
  RETURN FOUND;
END $$;


ALTER FUNCTION access.news_read(which uuid) OWNER TO leeward_owner;

--
-- Name: note_refused(uuid); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.note_refused(which uuid) RETURNS void
    LANGUAGE plpgsql SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
DECLARE
  most constant integer := 20;
  mine uuid := access.my_signin();
  of_client uuid := coalesce(
    (SELECT g.client_id FROM access.gate g WHERE g.session_id = which),
    (SELECT t.client_id FROM public.target t WHERE t.id = which),
    (SELECT c.client_id FROM access.care_link c WHERE c.client_id = which LIMIT 1));
  so_far integer;
BEGIN
  IF mine IS NULL OR of_client IS NULL OR of_client IN (SELECT access.my_clients()) THEN RETURN; END IF;
  INSERT INTO access.refused_look AS l VALUES (mine, date_trunc('hour', access.now()), 1)
  ON CONFLICT (signin_id, hour) DO UPDATE SET looks = l.looks + 1 WHERE l.looks < most RETURNING l.looks INTO so_far;
  IF so_far IS NULL THEN RETURN; END IF;
  PERFORM access.keep_act('member', access.me(), 'record.refused', of_client, which);
END $$;


ALTER FUNCTION access.note_refused(which uuid) OWNER TO leeward_owner;

--
-- Name: now(); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.now() RETURNS timestamp with time zone
    LANGUAGE plpgsql STABLE SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
DECLARE said timestamptz := nullif(current_setting('leeward.now', true), ''); here timestamptz; give interval;
BEGIN
  SELECT clock_timestamp() + ahead, slack INTO STRICT here, give FROM access.clock;
  RETURN least(greatest(coalesce(said, here), here - give), here + give);
END $$;


ALTER FUNCTION access.now() OWNER TO leeward_owner;

--
-- Name: open_invitation(bytea); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.open_invitation(hash bytea) RETURNS TABLE(member_id uuid, name text, roles text[])
    LANGUAGE sql STABLE SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
  SELECT i.member_id, i.name, i.roles FROM access.invitation i
  WHERE i.token_hash = hash AND i.spent_at IS NULL AND i.ends_at > access.now() $$;


ALTER FUNCTION access.open_invitation(hash bytea) OWNER TO leeward_owner;

--
-- Name: open_room(bytea, uuid); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.open_room(hash bytea, which uuid) RETURNS boolean
    LANGUAGE plpgsql SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
BEGIN
  IF (hash IS NOT NULL AND (access.treats_session(which) OR access.my_seat() = which)) IS NOT TRUE THEN RETURN false; END IF;
  DELETE FROM access.room_token WHERE ends_at <= access.now();
  INSERT INTO access.room_token VALUES (hash, which, access.now() + interval '24 hours');
  RETURN true;
END $$;


ALTER FUNCTION access.open_room(hash bytea, which uuid) OWNER TO leeward_owner;

--
-- Name: open_signin(uuid, bytea, uuid, text); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.open_signin(signin_id uuid, hash bytea, who uuid, on_device text) RETURNS boolean
    LANGUAGE plpgsql SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
DECLARE at timestamptz := access.now();
BEGIN
  INSERT INTO access.signin (id, token_hash, member_id, device, opened_at, seen_at, shown_at, ends_at)
  SELECT signin_id, hash, m.id, on_device, at, at, at, at + interval '12 hours' FROM access.member m WHERE m.id = who AND m.left_at IS NULL;
  RETURN FOUND;
END $$;


ALTER FUNCTION access.open_signin(signin_id uuid, hash bytea, who uuid, on_device text) OWNER TO leeward_owner;

--
-- Name: passkey_shown(uuid); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.passkey_shown(who uuid) RETURNS boolean
    LANGUAGE plpgsql SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
BEGIN
  UPDATE access.signin SET shown_at = access.now() WHERE id = access.my_signin() AND member_id = who;
  RETURN FOUND;
END $$;


ALTER FUNCTION access.passkey_shown(who uuid) OWNER TO leeward_owner;

--
-- Name: passkey_used(uuid, jsonb); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.passkey_used(which uuid, newer jsonb) RETURNS void
    LANGUAGE sql SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$ UPDATE access.passkey SET passkey = newer, used_at = access.now() WHERE id = which $$;


ALTER FUNCTION access.passkey_used(which uuid, newer jsonb) OWNER TO leeward_owner;

--
-- Name: passkeys_of(uuid); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.passkeys_of(who uuid) RETURNS TABLE(id uuid, passkey jsonb)
    LANGUAGE sql STABLE SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
  SELECT p.id, p.passkey FROM access.passkey p JOIN access.member m ON m.id = p.member_id
  WHERE p.member_id = who AND m.left_at IS NULL $$;


ALTER FUNCTION access.passkeys_of(who uuid) OWNER TO leeward_owner;

--
-- Name: refuse_replacement(uuid); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.refuse_replacement(which uuid) RETURNS boolean
    LANGUAGE plpgsql SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
DECLARE r access.replacement; at timestamptz := access.now();
BEGIN
  SELECT * INTO r FROM access.replacement WHERE id = which FOR UPDATE;
  IF NOT FOUND OR (access.may_hand_over() OR r.member_id = access.me()) IS NOT TRUE THEN RETURN false; END IF;
  UPDATE access.replacement SET ends_at = least(ends_at, at) WHERE id = which;
  UPDATE access.invitation SET ends_at = at WHERE replacement = which AND spent_at IS NULL AND ends_at > at;
  INSERT INTO access.news (member_id, kind, about, by_member, at)
  SELECT m.id, 'passkey_refused', r.member_id, access.me(), at FROM access.member m
  WHERE m.left_at IS NULL AND 'administrator' = ANY (m.roles) AND m.id IS DISTINCT FROM access.me();
  RETURN true;
END $$;


ALTER FUNCTION access.refuse_replacement(which uuid) OWNER TO leeward_owner;

--
-- Name: rehearsals(); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.rehearsals() RETURNS SETOF uuid
    LANGUAGE plpgsql STABLE
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
BEGIN
  IF access.is_owner() THEN
    RETURN QUERY SELECT r.client_id FROM access.rehearsal r;
  ELSE
    RETURN QUERY SELECT access.rehearsals_to_know();
  END IF;
END $$;


ALTER FUNCTION access.rehearsals() OWNER TO leeward_owner;

--
-- Name: rehearsals_to_know(); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.rehearsals_to_know() RETURNS SETOF uuid
    LANGUAGE plpgsql STABLE SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
DECLARE who uuid := access.me(); leads boolean := access.has_role('lead');
BEGIN
  RETURN QUERY SELECT r.client_id FROM access.rehearsal r WHERE leads OR r.member_id = who;
END $$;


ALTER FUNCTION access.rehearsals_to_know() OWNER TO leeward_owner;

--
-- Name: remove_passkey(uuid); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.remove_passkey(which uuid) RETURNS boolean
    LANGUAGE plpgsql SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
BEGIN
  PERFORM access.must_be_fresh();
  PERFORM FROM access.member WHERE id = access.me() FOR UPDATE;
  DELETE FROM access.passkey p WHERE p.id = which AND p.member_id = access.me()
    AND (SELECT count(*) FROM access.passkey o WHERE o.member_id = access.me()) > 1;
  RETURN FOUND;
END $$;


ALTER FUNCTION access.remove_passkey(which uuid) OWNER TO leeward_owner;

--
-- Name: remove_seat(uuid, uuid); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.remove_seat(which uuid, wanted uuid) RETURNS boolean
    LANGUAGE plpgsql SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
BEGIN
  IF access.treats_session(which) IS NOT TRUE THEN
    RAISE EXCEPTION 'not allowed to decide about this seat' USING ERRCODE = 'insufficient_privilege';
  END IF;
  UPDATE access.seat SET closed_at = access.now(), closed_why = 'removed'
  WHERE id = wanted AND session_id = which AND taken_at IS NOT NULL AND closed_at IS NULL;
  RETURN EXISTS (SELECT FROM access.seat WHERE id = wanted AND session_id = which AND closed_why = 'removed');
END $$;


ALTER FUNCTION access.remove_seat(which uuid, wanted uuid) OWNER TO leeward_owner;

--
-- Name: replacements(); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.replacements() RETURNS TABLE(id uuid, member_id uuid, name text, asked_by text, state text, asked_at timestamp with time zone, ends_at timestamp with time zone)
    LANGUAGE plpgsql STABLE SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
DECLARE owner boolean := session_user = current_user; me uuid := access.me(); all_of_them boolean := access.may_hand_over();
BEGIN
  IF (owner OR me IS NOT NULL) IS NOT TRUE THEN RETURN; END IF;
  RETURN QUERY SELECT r.id, r.member_id, m.name, (SELECT a.name FROM access.member a WHERE a.id = r.asked_by),
    CASE WHEN r.agreed_at IS NOT NULL THEN 'agreed' WHEN r.member_id = me THEN 'about_me' WHEN r.asked_by = me THEN 'asked_by_me'
      WHEN NOT owner AND NOT EXISTS (SELECT FROM access.member o WHERE o.id = me AND coalesce(o.roles_since, o.joined_at) <= r.asked_at) THEN 'too_new'
      ELSE 'waits' END,
    r.asked_at, coalesce(i.ends_at, r.ends_at)
  FROM access.replacement r JOIN access.member m ON m.id = r.member_id
    LEFT JOIN access.invitation i ON i.replacement = r.id AND i.spent_at IS NULL AND i.ends_at > access.now()
  WHERE (owner OR all_of_them OR r.member_id = me) AND m.left_at IS NULL
    AND (i.replacement IS NOT NULL OR r.agreed_at IS NULL AND r.ends_at > access.now())
  ORDER BY r.asked_at;
END $$;


ALTER FUNCTION access.replacements() OWNER TO leeward_owner;

--
-- Name: saved_now(uuid); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.saved_now(which uuid) RETURNS TABLE(answer text, at timestamp with time zone)
    LANGUAGE plpgsql STABLE SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
DECLARE me uuid := access.me();
BEGIN
  RETURN QUERY SELECT r.answer, r.kept_at FROM access.request_key r
    WHERE r.member_id = me AND r.key = which AND r.answer IS NOT NULL AND r.kept_at > access.now() - interval '5 minutes';
END $$;


ALTER FUNCTION access.saved_now(which uuid) OWNER TO leeward_owner;

--
-- Name: schema_version(); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.schema_version() RETURNS bigint
    LANGUAGE plpgsql STABLE SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$ BEGIN RETURN (SELECT coalesce(max(version), 0) FROM public._sqlx_migrations WHERE success); END $$;


ALTER FUNCTION access.schema_version() OWNER TO leeward_owner;

--
-- Name: seat_is_over(); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.seat_is_over() RETURNS boolean
    LANGUAGE plpgsql STABLE SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
DECLARE since timestamptz := access.now() - interval '15 minutes';
BEGIN
  RETURN access.kind() IS NOT DISTINCT FROM 'seat' AND EXISTS (SELECT FROM access.seat s JOIN access.gate g USING (session_id)
    WHERE s.token_hash = access.token_hash()
      AND CASE WHEN s.closed_at IS NULL THEN g.ended_at > since ELSE s.closed_why = 'removed' AND s.closed_at > since END);
END $$;


ALTER FUNCTION access.seat_is_over() OWNER TO leeward_owner;

--
-- Name: seat_rehearses(); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.seat_rehearses() RETURNS boolean
    LANGUAGE sql STABLE SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
  SELECT EXISTS (SELECT FROM access.seat s JOIN access.gate g USING (session_id) JOIN access.rehearsal r USING (client_id)
    WHERE access.kind() = 'seat' AND s.token_hash = access.token_hash()) $$;


ALTER FUNCTION access.seat_rehearses() OWNER TO leeward_owner;

--
-- Name: seat_state(); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.seat_state() RETURNS TABLE(seat_id uuid, session_id uuid, state text)
    LANGUAGE sql STABLE SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
  SELECT s.id, s.session_id, CASE WHEN s.taken_at IS NULL THEN 'asked' ELSE 'taken' END
  FROM access.seat s JOIN access.gate g USING (session_id)
  WHERE access.kind() = 'seat' AND s.token_hash = access.token_hash() AND s.closed_at IS NULL AND g.ended_at IS NULL $$;


ALTER FUNCTION access.seat_state() OWNER TO leeward_owner;

--
-- Name: seat_within(interval); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.seat_within(after interval) RETURNS uuid
    LANGUAGE plpgsql STABLE SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
DECLARE at timestamptz := access.now();
BEGIN
  IF access.kind() IS DISTINCT FROM 'seat' THEN RETURN NULL; END IF;
  RETURN (SELECT s.session_id FROM access.seat s JOIN access.gate g USING (session_id)
    WHERE s.token_hash = access.token_hash() AND s.taken_at IS NOT NULL AND s.closed_at IS NULL
      AND (g.ended_at IS NULL OR g.ended_at > at - after));
END $$;


ALTER FUNCTION access.seat_within(after interval) OWNER TO leeward_owner;

--
-- Name: seats(uuid); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.seats(which uuid) RETURNS TABLE(seat_id uuid, device text, state text)
    LANGUAGE plpgsql STABLE SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
BEGIN
  IF (access.treats_session(which) OR access.my_room() = which) IS NOT TRUE THEN RETURN; END IF;
  RETURN QUERY SELECT s.id, s.device,
    CASE WHEN s.closed_why = 'removed' THEN 'removed' WHEN s.closed_at IS NOT NULL THEN 'left' WHEN s.taken_at IS NULL THEN 'asked'
      WHEN s.admitted_at IS NULL THEN 'taken' ELSE 'admitted' END
  FROM access.seat s
  WHERE s.session_id = which AND (s.closed_at IS NULL OR s.closed_why = 'removed' OR (s.closed_why = 'left'
    AND s.asked_no = (SELECT max(l.asked_no) FROM access.seat l WHERE l.session_id = which AND l.taken_at IS NOT NULL)))
  ORDER BY s.asked_no;
END $$;


ALTER FUNCTION access.seats(which uuid) OWNER TO leeward_owner;

--
-- Name: take_on(uuid, uuid); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.take_on(link_id uuid, client uuid) RETURNS void
    LANGUAGE plpgsql SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
BEGIN
  IF (access.has_role('clinician') AND link_id IS NOT NULL AND client IS NOT NULL
      AND NOT EXISTS (SELECT FROM access.care_link WHERE client_id = client)) IS NOT TRUE THEN
    RAISE EXCEPTION 'not allowed to take on this client' USING ERRCODE = 'insufficient_privilege';
  END IF;
  INSERT INTO access.care_link VALUES (link_id, access.me(), client, access.now(), NULL);
END $$;


ALTER FUNCTION access.take_on(link_id uuid, client uuid) OWNER TO leeward_owner;

--
-- Name: take_on_rehearsal(uuid, uuid); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.take_on_rehearsal(link_id uuid, client uuid) RETURNS void
    LANGUAGE plpgsql SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
BEGIN
  PERFORM access.take_on(link_id, client);
  INSERT INTO access.rehearsal VALUES (access.me(), client);
END $$;


ALTER FUNCTION access.take_on_rehearsal(link_id uuid, client uuid) OWNER TO leeward_owner;

--
-- Name: tidy(); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.tidy(OUT signins bigint, OUT invitations bigint, OUT ceremonies bigint, OUT seats bigint, OUT links bigint, OUT room_tokens bigint, OUT request_keys bigint, OUT rehearsals uuid[]) RETURNS record
    LANGUAGE plpgsql SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
DECLARE
  at constant timestamptz := least(access.now(), clock_timestamp());
  -- Who was signed in where, and who was let in by whom, can still be asked when a misuse comes to light.
  sign_in_kept constant interval := '30 days';
  -- A page that was left open overnight still learns that its session is over, rather than that it never was.
  seat_kept constant interval := '1 day';
  -- A tab that was left open over a holiday may send its last entry again and must not add it twice.
  request_kept constant interval := '30 days';
  -- Nobody rehearses for a day; what is still open then was forgotten.
  rehearsal_lasts constant interval := '1 day';
  ended record;
BEGIN
  DELETE FROM access.signin
  WHERE least(ends_at, closed_at, seen_at + interval '30 minutes') < at - sign_in_kept; -- least passes over NULL
  GET DIAGNOSTICS signins = ROW_COUNT;
  DELETE FROM access.invitation WHERE least(ends_at, spent_at) < at - sign_in_kept;
  GET DIAGNOSTICS invitations = ROW_COUNT;
  -- These two open nothing once their time is over, and nobody asks about them.
  DELETE FROM access.ceremony WHERE ends_at < at;
  GET DIAGNOSTICS ceremonies = ROW_COUNT;
  DELETE FROM access.room_token WHERE ends_at < at;
  GET DIAGNOSTICS room_tokens = ROW_COUNT;

  rehearsals := '{}';
  FOR ended IN
    UPDATE public.session SET ended_at = at, version = version + 1
    WHERE ended_at IS NULL AND opened_at < at - rehearsal_lasts AND client_id IN (SELECT r.client_id FROM access.rehearsal r)
    RETURNING id, client_id
  LOOP
    PERFORM access.keep_act('database', NULL, 'rehearsal.end', ended.client_id, ended.id);
    rehearsals := rehearsals || ended.id;
  END LOOP;

  DELETE FROM access.seat s USING access.gate g WHERE g.session_id = s.session_id AND g.ended_at < at - seat_kept;
  GET DIAGNOSTICS seats = ROW_COUNT;
  -- A link carries its code. One that is over stays while a seat that was taken through it does.
  DELETE FROM access.join_link l
  WHERE NOT EXISTS (SELECT FROM access.seat s WHERE s.link_id = l.id)
    AND (least(l.ends_at, l.revoked_at) < at - seat_kept
      OR EXISTS (SELECT FROM access.gate g WHERE g.session_id = l.session_id AND g.ended_at < at - seat_kept));
  GET DIAGNOSTICS links = ROW_COUNT;

  DELETE FROM access.request_key WHERE kept_at < at - request_kept;
  GET DIAGNOSTICS request_keys = ROW_COUNT;
END $$;


ALTER FUNCTION access.tidy(OUT signins bigint, OUT invitations bigint, OUT ceremonies bigint, OUT seats bigint, OUT links bigint, OUT room_tokens bigint, OUT request_keys bigint, OUT rehearsals uuid[]) OWNER TO leeward_owner;

--
-- Name: token_hash(); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.token_hash() RETURNS bytea
    LANGUAGE sql STABLE
    AS $$ SELECT pg_catalog.sha256(pg_catalog.decode(nullif(pg_catalog.current_setting('leeward.token', true), ''), 'hex')) $$;


ALTER FUNCTION access.token_hash() OWNER TO leeward_owner;

--
-- Name: touch_signin(); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.touch_signin() RETURNS void
    LANGUAGE sql SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$ UPDATE access.signin SET seen_at = access.now() WHERE id = access.my_signin() AND seen_at < access.now() - interval '1 minute' $$;


ALTER FUNCTION access.touch_signin() OWNER TO leeward_owner;

--
-- Name: treats_session(uuid); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.treats_session(which uuid) RETURNS boolean
    LANGUAGE sql STABLE SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$ SELECT EXISTS (SELECT FROM access.gate WHERE session_id = which AND client_id IN (SELECT access.my_clients())) $$;


ALTER FUNCTION access.treats_session(which uuid) OWNER TO leeward_owner;

--
-- Name: try_code(bytea); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.try_code(hash bytea) RETURNS TABLE(link_id uuid, session_id uuid, phc text)
    LANGUAGE sql SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
  UPDATE access.join_link l SET code_tries = code_tries + 1
  FROM access.gate g
  WHERE l.token_hash = hash AND g.session_id = l.session_id AND g.ended_at IS NULL AND l.revoked_at IS NULL
    AND l.ends_at > access.now() AND l.code_ends_at > access.now() AND l.code_spent_at IS NULL AND l.code_tries < 5
  RETURNING l.id, l.session_id, l.code_phc $$;


ALTER FUNCTION access.try_code(hash bytea) OWNER TO leeward_owner;

--
-- Name: turn_session(uuid, uuid, uuid); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.turn_session(which uuid, wanted uuid, was uuid) RETURNS boolean
    LANGUAGE plpgsql SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
BEGIN
  IF access.treats_session(which) IS NOT TRUE THEN RETURN false; END IF;
  UPDATE public.session s SET target_id = wanted
  WHERE s.id = which AND s.ended_at IS NULL AND s.target_id IS NOT DISTINCT FROM was
    AND EXISTS (SELECT FROM public.target t WHERE t.id = wanted AND t.client_id = s.client_id AND t.archived_at IS NULL);
  RETURN FOUND;
END $$;


ALTER FUNCTION access.turn_session(which uuid, wanted uuid, was uuid) OWNER TO leeward_owner;

--
-- Name: whoami(); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.whoami() RETURNS TABLE(signin_id uuid, member_id uuid, name text, roles text[], passkeys bigint)
    LANGUAGE sql STABLE SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
  SELECT (SELECT access.my_signin()), m.id, m.name, m.roles, (SELECT count(*) FROM access.passkey p WHERE p.member_id = m.id)
  FROM access.member m WHERE m.id = (SELECT access.me()) $$;


ALTER FUNCTION access.whoami() OWNER TO leeward_owner;

--
-- Name: whom_we_meet(); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.whom_we_meet() RETURNS text
    LANGUAGE plpgsql STABLE SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
DECLARE here uuid := access.my_seat();
BEGIN
  IF here IS NULL OR (SELECT p.tells_whom FROM public.practice p) IS NOT TRUE THEN RETURN NULL; END IF;
  RETURN (SELECT m.name FROM public.session s JOIN access.member m ON m.id = s.member_id
    WHERE s.id = here AND EXISTS (SELECT FROM access.care_link c WHERE c.member_id = s.member_id AND c.client_id = s.client_id AND c.until IS NULL));
END $$;


ALTER FUNCTION access.whom_we_meet() OWNER TO leeward_owner;

--
-- Name: withdraw_invitation(bytea); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.withdraw_invitation(which bytea) RETURNS boolean
    LANGUAGE plpgsql SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
BEGIN
  UPDATE access.invitation SET ends_at = access.now()
  WHERE access.has_role('administrator') AND token_hash = which AND member_id IS NULL AND spent_at IS NULL AND ends_at > access.now();
  RETURN FOUND;
END $$;


ALTER FUNCTION access.withdraw_invitation(which bytea) OWNER TO leeward_owner;

--
-- Name: place_of_corrected_fact(); Type: FUNCTION; Schema: public; Owner: leeward_owner
--

CREATE FUNCTION public.place_of_corrected_fact() RETURNS trigger
    LANGUAGE plpgsql
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
DECLARE said public.fact;
BEGIN
  SELECT f.* INTO said FROM public.fact r JOIN public.fact f ON f.id = coalesce(r.first_id, r.id) WHERE r.id = NEW.replaces;
  IF (said.client_id = NEW.client_id AND said.kind = NEW.kind) IS NOT TRUE THEN
    RAISE EXCEPTION 'a correction is of the client and the kind of what it corrects' USING ERRCODE = 'foreign_key_violation';
  END IF;
  NEW.first_id := said.id;
  NEW.session_id := said.session_id;
  NEW.target_id := said.target_id;
  NEW.set_id := said.set_id;
  NEW.moment := said.moment;
  RETURN NEW;
END $$;


ALTER FUNCTION public.place_of_corrected_fact() OWNER TO leeward_owner;

--
-- Name: place_of_correction(); Type: FUNCTION; Schema: public; Owner: leeward_owner
--

CREATE FUNCTION public.place_of_correction() RETURNS trigger
    LANGUAGE plpgsql
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
DECLARE asked public.rating;
BEGIN
  SELECT f.* INTO asked FROM public.rating r JOIN public.rating f ON f.id = coalesce(r.first_id, r.id) WHERE r.id = NEW.replaces;
  IF (asked.client_id = NEW.client_id AND asked.scale = NEW.scale) IS NOT TRUE THEN
    RAISE EXCEPTION 'a correction is of the client and the scale of what it corrects' USING ERRCODE = 'foreign_key_violation';
  END IF;
  NEW.first_id := asked.id;
  NEW.session_id := asked.session_id;
  NEW.target_id := asked.target_id;
  NEW.set_id := asked.set_id;
  NEW.moment := asked.moment;
  NEW.segment := asked.segment;
  RETURN NEW;
END $$;


ALTER FUNCTION public.place_of_correction() OWNER TO leeward_owner;

SET default_tablespace = '';

SET default_table_access_method = heap;

--
-- Name: audit_act; Type: TABLE; Schema: access; Owner: leeward_owner
--

CREATE TABLE access.audit_act (
    kind text NOT NULL,
    act text NOT NULL,
    may_be_last boolean DEFAULT false NOT NULL,
    CONSTRAINT audit_act_kind_check CHECK ((kind = ANY (ARRAY['visitor'::text, 'member'::text, 'seat'::text, 'owner'::text])))
);


ALTER TABLE access.audit_act OWNER TO leeward_owner;

--
-- Name: audit_head; Type: TABLE; Schema: access; Owner: leeward_owner
--

CREATE TABLE access.audit_head (
    singleton boolean DEFAULT true NOT NULL,
    seq bigint NOT NULL,
    hash bytea NOT NULL,
    CONSTRAINT audit_head_singleton_check CHECK (singleton)
);


ALTER TABLE access.audit_head OWNER TO leeward_owner;

--
-- Name: care_link; Type: TABLE; Schema: access; Owner: leeward_owner
--

CREATE TABLE access.care_link (
    id uuid NOT NULL,
    member_id uuid NOT NULL,
    client_id uuid NOT NULL,
    since timestamp with time zone NOT NULL,
    until timestamp with time zone,
    CONSTRAINT since_is_a_time CHECK (isfinite(since)),
    CONSTRAINT until_is_a_time CHECK (isfinite(until))
);


ALTER TABLE access.care_link OWNER TO leeward_owner;

--
-- Name: ceremony; Type: TABLE; Schema: access; Owner: leeward_owner
--

CREATE TABLE access.ceremony (
    token_hash bytea NOT NULL,
    state jsonb NOT NULL,
    ends_at timestamp with time zone NOT NULL,
    CONSTRAINT ends_at_is_a_time CHECK (isfinite(ends_at))
);


ALTER TABLE access.ceremony OWNER TO leeward_owner;

--
-- Name: clock; Type: TABLE; Schema: access; Owner: leeward_owner
--

CREATE TABLE access.clock (
    singleton boolean DEFAULT true NOT NULL,
    ahead interval DEFAULT '00:00:00'::interval NOT NULL,
    slack interval DEFAULT '00:01:00'::interval NOT NULL,
    CONSTRAINT clock_singleton_check CHECK (singleton),
    CONSTRAINT clock_slack_check CHECK ((slack >= '00:00:00'::interval))
);


ALTER TABLE access.clock OWNER TO leeward_owner;

--
-- Name: gate; Type: TABLE; Schema: access; Owner: leeward_owner
--

CREATE TABLE access.gate (
    session_id uuid NOT NULL,
    client_id uuid NOT NULL,
    ended_at timestamp with time zone,
    CONSTRAINT ended_at_is_a_time CHECK (isfinite(ended_at))
);


ALTER TABLE access.gate OWNER TO leeward_owner;

--
-- Name: invitation; Type: TABLE; Schema: access; Owner: leeward_owner
--

CREATE TABLE access.invitation (
    token_hash bytea NOT NULL,
    member_id uuid,
    name text NOT NULL,
    roles text[] NOT NULL,
    made_by uuid,
    made_at timestamp with time zone NOT NULL,
    ends_at timestamp with time zone NOT NULL,
    spent_at timestamp with time zone,
    made_in uuid,
    replacement uuid,
    CONSTRAINT ends_at_is_a_time CHECK (isfinite(ends_at)),
    CONSTRAINT made_at_is_a_time CHECK (isfinite(made_at)),
    CONSTRAINT spent_at_is_a_time CHECK (isfinite(spent_at))
);


ALTER TABLE access.invitation OWNER TO leeward_owner;

--
-- Name: join_link; Type: TABLE; Schema: access; Owner: leeward_owner
--

CREATE TABLE access.join_link (
    id uuid NOT NULL,
    token_hash bytea NOT NULL,
    session_id uuid NOT NULL,
    made_at timestamp with time zone NOT NULL,
    ends_at timestamp with time zone NOT NULL,
    revoked_at timestamp with time zone,
    code_phc text NOT NULL,
    code_ends_at timestamp with time zone NOT NULL,
    code_tries smallint DEFAULT 0 NOT NULL,
    code_spent_at timestamp with time zone,
    CONSTRAINT code_ends_at_is_a_time CHECK (isfinite(code_ends_at)),
    CONSTRAINT code_spent_at_is_a_time CHECK (isfinite(code_spent_at)),
    CONSTRAINT ends_at_is_a_time CHECK (isfinite(ends_at)),
    CONSTRAINT made_at_is_a_time CHECK (isfinite(made_at)),
    CONSTRAINT revoked_at_is_a_time CHECK (isfinite(revoked_at))
);


ALTER TABLE access.join_link OWNER TO leeward_owner;

--
-- Name: key_check; Type: TABLE; Schema: access; Owner: leeward_owner
--

CREATE TABLE access.key_check (
    key_id integer NOT NULL,
    sealed bytea NOT NULL,
    CONSTRAINT key_check_sealed_check CHECK (((length(sealed) >= 30) AND (length(sealed) <= 200)))
);


ALTER TABLE access.key_check OWNER TO leeward_owner;

--
-- Name: member; Type: TABLE; Schema: access; Owner: leeward_owner
--

CREATE TABLE access.member (
    id uuid NOT NULL,
    name text NOT NULL,
    roles text[] NOT NULL,
    joined_at timestamp with time zone NOT NULL,
    left_at timestamp with time zone,
    roles_since timestamp with time zone,
    CONSTRAINT joined_at_is_a_time CHECK (isfinite(joined_at)),
    CONSTRAINT left_at_is_a_time CHECK (isfinite(left_at)),
    CONSTRAINT member_name_check CHECK (((length(name) >= 1) AND (length(name) <= 120))),
    CONSTRAINT member_roles_check CHECK (((roles <@ ARRAY['clinician'::text, 'lead'::text, 'administrator'::text]) AND (cardinality(roles) > 0))),
    CONSTRAINT roles_since_is_a_time CHECK (isfinite(roles_since))
);


ALTER TABLE access.member OWNER TO leeward_owner;

--
-- Name: news; Type: TABLE; Schema: access; Owner: leeward_owner
--

CREATE TABLE access.news (
    id uuid DEFAULT gen_random_uuid() NOT NULL,
    member_id uuid NOT NULL,
    kind text NOT NULL,
    client_id uuid,
    about uuid,
    by_member uuid,
    at timestamp with time zone NOT NULL,
    read_at timestamp with time zone,
    CONSTRAINT at_is_a_time CHECK (isfinite(at)),
    CONSTRAINT news_kind_check CHECK ((kind = ANY (ARRAY['client_given'::text, 'client_taken'::text, 'passkey_asked'::text, 'passkey_replaced'::text, 'passkey_refused'::text, 'roles_changed'::text, 'roles_of_changed'::text, 'joined'::text]))),
    CONSTRAINT read_at_is_a_time CHECK (isfinite(read_at))
);


ALTER TABLE access.news OWNER TO leeward_owner;

--
-- Name: passkey; Type: TABLE; Schema: access; Owner: leeward_owner
--

CREATE TABLE access.passkey (
    id uuid NOT NULL,
    member_id uuid NOT NULL,
    credential_id bytea NOT NULL,
    passkey jsonb NOT NULL,
    label text NOT NULL,
    added_at timestamp with time zone NOT NULL,
    used_at timestamp with time zone,
    CONSTRAINT added_at_is_a_time CHECK (isfinite(added_at)),
    CONSTRAINT used_at_is_a_time CHECK (isfinite(used_at))
);


ALTER TABLE access.passkey OWNER TO leeward_owner;

--
-- Name: refused_look; Type: TABLE; Schema: access; Owner: leeward_owner
--

CREATE TABLE access.refused_look (
    signin_id uuid NOT NULL,
    hour timestamp with time zone NOT NULL,
    looks integer NOT NULL,
    CONSTRAINT hour_is_a_time CHECK (isfinite(hour))
);


ALTER TABLE access.refused_look OWNER TO leeward_owner;

--
-- Name: rehearsal; Type: TABLE; Schema: access; Owner: leeward_owner
--

CREATE TABLE access.rehearsal (
    member_id uuid NOT NULL,
    client_id uuid NOT NULL
);


ALTER TABLE access.rehearsal OWNER TO leeward_owner;

--
-- Name: replacement; Type: TABLE; Schema: access; Owner: leeward_owner
--

CREATE TABLE access.replacement (
    id uuid NOT NULL,
    member_id uuid NOT NULL,
    asked_by uuid,
    asked_at timestamp with time zone NOT NULL,
    agreed_by uuid,
    agreed_at timestamp with time zone,
    ends_at timestamp with time zone NOT NULL,
    CONSTRAINT agreed_at_is_a_time CHECK (isfinite(agreed_at)),
    CONSTRAINT asked_at_is_a_time CHECK (isfinite(asked_at)),
    CONSTRAINT ends_at_is_a_time CHECK (isfinite(ends_at)),
    CONSTRAINT replacement_check CHECK (((agreed_by IS DISTINCT FROM asked_by) OR (agreed_by IS NULL))),
    CONSTRAINT replacement_check1 CHECK (((asked_by IS DISTINCT FROM member_id) AND (agreed_by IS DISTINCT FROM member_id)))
);


ALTER TABLE access.replacement OWNER TO leeward_owner;

--
-- Name: request_key; Type: TABLE; Schema: access; Owner: leeward_owner
--

CREATE TABLE access.request_key (
    member_id uuid NOT NULL,
    key uuid NOT NULL,
    act text NOT NULL,
    body bytea NOT NULL,
    answer text,
    kept_at timestamp with time zone NOT NULL,
    CONSTRAINT kept_at_is_a_time CHECK (isfinite(kept_at)),
    CONSTRAINT small CHECK (((length(act) <= 100) AND (length(body) <= 64) AND (length(answer) <= 10000)))
);


ALTER TABLE access.request_key OWNER TO leeward_owner;

--
-- Name: room_token; Type: TABLE; Schema: access; Owner: leeward_owner
--

CREATE TABLE access.room_token (
    token_hash bytea NOT NULL,
    session_id uuid NOT NULL,
    ends_at timestamp with time zone NOT NULL,
    CONSTRAINT ends_at_is_a_time CHECK (isfinite(ends_at))
);


ALTER TABLE access.room_token OWNER TO leeward_owner;

--
-- Name: seat; Type: TABLE; Schema: access; Owner: leeward_owner
--

CREATE TABLE access.seat (
    id uuid NOT NULL,
    token_hash bytea NOT NULL,
    link_id uuid NOT NULL,
    session_id uuid NOT NULL,
    device text NOT NULL,
    asked_at timestamp with time zone NOT NULL,
    taken_at timestamp with time zone,
    closed_at timestamp with time zone,
    asked_no bigint NOT NULL,
    admitted_at timestamp with time zone,
    closed_why text,
    CONSTRAINT admitted_at_is_a_time CHECK (isfinite(admitted_at)),
    CONSTRAINT asked_at_is_a_time CHECK (isfinite(asked_at)),
    CONSTRAINT closed_at_is_a_time CHECK (isfinite(closed_at)),
    CONSTRAINT seat_closed_why_check CHECK ((closed_why = ANY (ARRAY['left'::text, 'moved'::text, 'refused'::text, 'joined_again'::text, 'removed'::text]))),
    CONSTRAINT taken_at_is_a_time CHECK (isfinite(taken_at))
);


ALTER TABLE access.seat OWNER TO leeward_owner;

--
-- Name: seat_asked_no_seq; Type: SEQUENCE; Schema: access; Owner: leeward_owner
--

ALTER TABLE access.seat ALTER COLUMN asked_no ADD GENERATED ALWAYS AS IDENTITY (
    SEQUENCE NAME access.seat_asked_no_seq
    START WITH 1
    INCREMENT BY 1
    NO MINVALUE
    NO MAXVALUE
    CACHE 1
);


--
-- Name: signin; Type: TABLE; Schema: access; Owner: leeward_owner
--

CREATE TABLE access.signin (
    id uuid NOT NULL,
    token_hash bytea NOT NULL,
    member_id uuid NOT NULL,
    device text NOT NULL,
    opened_at timestamp with time zone NOT NULL,
    seen_at timestamp with time zone NOT NULL,
    ends_at timestamp with time zone NOT NULL,
    closed_at timestamp with time zone,
    shown_at timestamp with time zone NOT NULL,
    CONSTRAINT closed_at_is_a_time CHECK (isfinite(closed_at)),
    CONSTRAINT ends_at_is_a_time CHECK (isfinite(ends_at)),
    CONSTRAINT opened_at_is_a_time CHECK (isfinite(opened_at)),
    CONSTRAINT seen_at_is_a_time CHECK (isfinite(seen_at)),
    CONSTRAINT shown_at_is_a_time CHECK (isfinite(shown_at))
);


ALTER TABLE access.signin OWNER TO leeward_owner;

--
-- Name: _sqlx_migrations; Type: TABLE; Schema: public; Owner: leeward_owner
--

CREATE TABLE public._sqlx_migrations (
    version bigint NOT NULL,
    description text NOT NULL,
    installed_on timestamp with time zone DEFAULT now() NOT NULL,
    success boolean NOT NULL,
    checksum bytea NOT NULL,
    execution_time bigint NOT NULL
);


ALTER TABLE public._sqlx_migrations OWNER TO leeward_owner;

--
-- Name: adverse_account; Type: TABLE; Schema: public; Owner: leeward_owner
--

CREATE TABLE public.adverse_account (
    event_id uuid NOT NULL,
    client_id uuid NOT NULL,
    account bytea NOT NULL
);

ALTER TABLE ONLY public.adverse_account FORCE ROW LEVEL SECURITY;


ALTER TABLE public.adverse_account OWNER TO leeward_owner;

--
-- Name: adverse_event; Type: TABLE; Schema: public; Owner: leeward_owner
--

CREATE TABLE public.adverse_event (
    id uuid NOT NULL,
    client_id uuid NOT NULL,
    session_id uuid,
    number integer NOT NULL,
    kind text NOT NULL,
    happened_at timestamp with time zone NOT NULL,
    done text NOT NULL,
    replaces uuid,
    written_by uuid NOT NULL,
    written_at timestamp with time zone NOT NULL,
    CONSTRAINT adverse_event_done_check CHECK ((done = ANY (ARRAY['settled'::text, 'stayed'::text, 'called'::text, 'plan'::text, 'sent_on'::text, 'emergency'::text, 'nothing'::text]))),
    CONSTRAINT adverse_event_kind_check CHECK ((kind = ANY (ARRAY['distress'::text, 'reliving'::text, 'away'::text, 'panic'::text, 'suicidal'::text, 'self_harm'::text, 'body'::text, 'seizure'::text, 'injury'::text, 'seen'::text, 'other'::text]))),
    CONSTRAINT adverse_event_number_check CHECK ((number > 0)),
    CONSTRAINT happened_at_is_a_time CHECK (isfinite(happened_at)),
    CONSTRAINT written_at_is_a_time CHECK (isfinite(written_at))
);

ALTER TABLE ONLY public.adverse_event FORCE ROW LEVEL SECURITY;


ALTER TABLE public.adverse_event OWNER TO leeward_owner;

--
-- Name: after_check; Type: TABLE; Schema: public; Owner: leeward_owner
--

CREATE TABLE public.after_check (
    session_id uuid NOT NULL,
    client_id uuid NOT NULL,
    member_id uuid NOT NULL,
    reason text NOT NULL,
    due_from timestamp with time zone NOT NULL,
    due_until timestamp with time zone NOT NULL,
    CONSTRAINT after_check_check CHECK ((due_from < due_until)),
    CONSTRAINT after_check_reason_check CHECK ((reason = ANY (ARRAY['first_reprocessing'::text, 'incomplete'::text, 'safety'::text, 'too_much'::text, 'unsteady'::text]))),
    CONSTRAINT due_from_is_a_time CHECK (isfinite(due_from)),
    CONSTRAINT due_until_is_a_time CHECK (isfinite(due_until))
);

ALTER TABLE ONLY public.after_check FORCE ROW LEVEL SECURITY;


ALTER TABLE public.after_check OWNER TO leeward_owner;

--
-- Name: kept_order; Type: SEQUENCE; Schema: public; Owner: leeward_owner
--

CREATE SEQUENCE public.kept_order
    START WITH 1
    INCREMENT BY 1
    NO MINVALUE
    NO MAXVALUE
    CACHE 1;


ALTER TABLE public.kept_order OWNER TO leeward_owner;

--
-- Name: after_check_try; Type: TABLE; Schema: public; Owner: leeward_owner
--

CREATE TABLE public.after_check_try (
    id uuid NOT NULL,
    session_id uuid NOT NULL,
    client_id uuid NOT NULL,
    outcome text NOT NULL,
    entered_by uuid NOT NULL,
    at timestamp with time zone NOT NULL,
    seq bigint DEFAULT nextval('public.kept_order'::regclass) NOT NULL,
    CONSTRAINT after_check_try_outcome_check CHECK ((outcome = ANY (ARRAY['well'::text, 'support'::text, 'not_reached'::text, 'declined'::text]))),
    CONSTRAINT at_is_a_time CHECK (isfinite(at))
);

ALTER TABLE ONLY public.after_check_try FORCE ROW LEVEL SECURITY;


ALTER TABLE public.after_check_try OWNER TO leeward_owner;

--
-- Name: audit; Type: TABLE; Schema: public; Owner: leeward_owner
--

CREATE TABLE public.audit (
    seq bigint NOT NULL,
    at timestamp with time zone NOT NULL,
    kind text NOT NULL,
    member_id uuid,
    act text NOT NULL,
    client_id uuid,
    object_id uuid,
    previous bytea NOT NULL,
    hash bytea NOT NULL,
    CONSTRAINT at_is_a_time CHECK (isfinite(at))
);

ALTER TABLE ONLY public.audit FORCE ROW LEVEL SECURITY;


ALTER TABLE public.audit OWNER TO leeward_owner;

--
-- Name: client; Type: TABLE; Schema: public; Owner: leeward_owner
--

CREATE TABLE public.client (
    id uuid NOT NULL,
    number integer NOT NULL,
    opened_on date NOT NULL,
    archived_at timestamp with time zone,
    seizures text NOT NULL,
    eye_condition text NOT NULL,
    version integer NOT NULL,
    plan_version integer DEFAULT 1 NOT NULL,
    CONSTRAINT archived_at_is_a_time CHECK (isfinite(archived_at)),
    CONSTRAINT client_eye_condition_check CHECK ((eye_condition = ANY (ARRAY['not_asked'::text, 'no'::text, 'yes'::text]))),
    CONSTRAINT client_plan_version_check CHECK ((plan_version > 0)),
    CONSTRAINT client_seizures_check CHECK ((seizures = ANY (ARRAY['not_asked'::text, 'no'::text, 'yes'::text]))),
    CONSTRAINT client_version_check CHECK ((version > 0)),
    CONSTRAINT opened_on_is_a_time CHECK (isfinite(opened_on))
);

ALTER TABLE ONLY public.client FORCE ROW LEVEL SECURITY;


ALTER TABLE public.client OWNER TO leeward_owner;

--
-- Name: session; Type: TABLE; Schema: public; Owner: leeward_owner
--

CREATE TABLE public.session (
    id uuid NOT NULL,
    client_id uuid NOT NULL,
    member_id uuid NOT NULL,
    target_id uuid,
    number integer NOT NULL,
    zone text NOT NULL,
    opened_at timestamp with time zone NOT NULL,
    admitted_at timestamp with time zone,
    ended_at timestamp with time zone,
    closing text,
    room_epoch integer NOT NULL,
    room_holder uuid,
    version integer NOT NULL,
    seq bigint DEFAULT nextval('public.kept_order'::regclass) NOT NULL,
    took_place boolean GENERATED ALWAYS AS (COALESCE((closing <> ALL (ARRAY['did_not_attend'::text, 'by_mistake'::text])), true)) STORED NOT NULL,
    over_at timestamp with time zone,
    CONSTRAINT admitted_at_is_a_time CHECK (isfinite(admitted_at)),
    CONSTRAINT ended_at_is_a_time CHECK (isfinite(ended_at)),
    CONSTRAINT opened_at_is_a_time CHECK (isfinite(opened_at)),
    CONSTRAINT over_at_is_a_time CHECK (isfinite(over_at)),
    CONSTRAINT over_before_it_was_closed CHECK (((over_at IS NULL) OR ((over_at >= opened_at) AND (over_at <= ended_at)))),
    CONSTRAINT session_closing_check CHECK ((closing = ANY (ARRAY['complete'::text, 'reduced'::text, 'incomplete'::text, 'no_reprocessing'::text, 'did_not_attend'::text, 'by_mistake'::text]))),
    CONSTRAINT session_number_check CHECK ((number > 0)),
    CONSTRAINT session_room_epoch_check CHECK ((room_epoch >= 0)),
    CONSTRAINT session_version_check CHECK ((version > 0))
);

ALTER TABLE ONLY public.session FORCE ROW LEVEL SECURITY;


ALTER TABLE public.session OWNER TO leeward_owner;

--
-- Name: stimulus_set; Type: TABLE; Schema: public; Owner: leeward_owner
--

CREATE TABLE public.stimulus_set (
    id uuid NOT NULL,
    session_id uuid NOT NULL,
    client_id uuid NOT NULL,
    target_id uuid,
    number integer NOT NULL,
    epoch integer NOT NULL,
    plan jsonb NOT NULL,
    recorded_at timestamp with time zone NOT NULL,
    seq bigint DEFAULT nextval('public.kept_order'::regclass) NOT NULL,
    CONSTRAINT recorded_at_is_a_time CHECK (isfinite(recorded_at)),
    CONSTRAINT stimulus_set_number_check CHECK ((number > 0))
);

ALTER TABLE ONLY public.stimulus_set FORCE ROW LEVEL SECURITY;


ALTER TABLE public.stimulus_set OWNER TO leeward_owner;

--
-- Name: target; Type: TABLE; Schema: public; Owner: leeward_owner
--

CREATE TABLE public.target (
    id uuid NOT NULL,
    client_id uuid NOT NULL,
    number integer NOT NULL,
    prong text NOT NULL,
    opened_at timestamp with time zone NOT NULL,
    archived_at timestamp with time zone,
    version integer NOT NULL,
    CONSTRAINT archived_at_is_a_time CHECK (isfinite(archived_at)),
    CONSTRAINT opened_at_is_a_time CHECK (isfinite(opened_at)),
    CONSTRAINT target_number_check CHECK ((number > 0)),
    CONSTRAINT target_prong_check CHECK ((prong = ANY (ARRAY['past'::text, 'present'::text, 'future'::text]))),
    CONSTRAINT target_version_check CHECK ((version > 0))
);

ALTER TABLE ONLY public.target FORCE ROW LEVEL SECURITY;


ALTER TABLE public.target OWNER TO leeward_owner;

--
-- Name: target_course; Type: TABLE; Schema: public; Owner: leeward_owner
--

CREATE TABLE public.target_course (
    target_id uuid NOT NULL,
    client_id uuid NOT NULL,
    rules smallint NOT NULL,
    procedure text NOT NULL,
    state text NOT NULL,
    held text,
    because text,
    unfounded boolean NOT NULL,
    version integer NOT NULL,
    CONSTRAINT target_course_check CHECK (((held IS NOT NULL) = (state = 'complete'::text))),
    CONSTRAINT target_course_check1 CHECK (((because IS NULL) OR (state = 'complete'::text))),
    CONSTRAINT target_course_held_check CHECK ((held = ANY (ARRAY['not_yet'::text, 'yes'::text, 'no'::text]))),
    CONSTRAINT target_course_procedure_check CHECK ((procedure = ANY (ARRAY['standard'::text, 'resource'::text, 'restricted'::text, 'recent_event'::text, 'future'::text]))),
    CONSTRAINT target_course_rules_check CHECK ((rules > 0)),
    CONSTRAINT target_course_state_check CHECK ((state = ANY (ARRAY['planned'::text, 'active'::text, 'incomplete'::text, 'complete'::text, 'reduced'::text, 'reopened'::text]))),
    CONSTRAINT target_course_version_check CHECK ((version > 0))
);

ALTER TABLE ONLY public.target_course FORCE ROW LEVEL SECURITY;


ALTER TABLE public.target_course OWNER TO leeward_owner;

--
-- Name: client_count; Type: VIEW; Schema: public; Owner: leeward_owner
--

CREATE VIEW public.client_count WITH (security_invoker='true') AS
 SELECT c.id AS client_id,
    COALESCE(t.open, (0)::bigint) AS open,
    COALESCE(t.incomplete, (0)::bigint) AS incomplete,
    COALESCE(t.complete, (0)::bigint) AS complete,
    COALESCE(s.sessions, (0)::bigint) AS sessions,
    COALESCE(x.sets, (0)::bigint) AS sets,
    s.first_at,
    s.last_at
   FROM (((public.client c
     LEFT JOIN ( SELECT t_1.client_id,
            count(*) FILTER (WHERE (n.state <> ALL (ARRAY['complete'::text, 'reduced'::text]))) AS open,
            count(*) FILTER (WHERE (n.state = 'incomplete'::text)) AS incomplete,
            count(*) FILTER (WHERE (n.state = 'complete'::text)) AS complete
           FROM (public.target t_1
             JOIN public.target_course n ON ((n.target_id = t_1.id)))
          WHERE (t_1.archived_at IS NULL)
          GROUP BY t_1.client_id) t ON ((t.client_id = c.id)))
     LEFT JOIN ( SELECT session.client_id,
            count(*) AS sessions,
            min(session.opened_at) AS first_at,
            max(session.opened_at) AS last_at
           FROM public.session
          WHERE session.took_place
          GROUP BY session.client_id) s ON ((s.client_id = c.id)))
     LEFT JOIN ( SELECT stimulus_set.client_id,
            count(*) AS sets
           FROM public.stimulus_set
          GROUP BY stimulus_set.client_id) x ON ((x.client_id = c.id)));


ALTER TABLE public.client_count OWNER TO leeward_owner;

--
-- Name: client_details; Type: TABLE; Schema: public; Owner: leeward_owner
--

CREATE TABLE public.client_details (
    client_id uuid NOT NULL,
    name bytea NOT NULL,
    addressed_as bytea NOT NULL,
    phone bytea NOT NULL,
    contact_name bytea NOT NULL,
    contact_phone bytea NOT NULL,
    usual_location bytea NOT NULL,
    version integer NOT NULL,
    CONSTRAINT client_details_version_check CHECK ((version > 0))
);

ALTER TABLE ONLY public.client_details FORCE ROW LEVEL SECURITY;


ALTER TABLE public.client_details OWNER TO leeward_owner;

--
-- Name: client_key; Type: TABLE; Schema: public; Owner: leeward_owner
--

CREATE TABLE public.client_key (
    client_id uuid NOT NULL,
    key_id integer NOT NULL,
    wrapped bytea NOT NULL
);

ALTER TABLE ONLY public.client_key FORCE ROW LEVEL SECURITY;


ALTER TABLE public.client_key OWNER TO leeward_owner;

--
-- Name: client_number_seq; Type: SEQUENCE; Schema: public; Owner: leeward_owner
--

ALTER TABLE public.client ALTER COLUMN number ADD GENERATED ALWAYS AS IDENTITY (
    SEQUENCE NAME public.client_number_seq
    START WITH 1
    INCREMENT BY 1
    NO MINVALUE
    NO MAXVALUE
    CACHE 1
);


--
-- Name: client_reach; Type: TABLE; Schema: public; Owner: leeward_owner
--

CREATE TABLE public.client_reach (
    client_id uuid NOT NULL,
    phone_use text NOT NULL,
    contact_use text NOT NULL,
    help_from_here bytea NOT NULL,
    tried_on date,
    help_there bytea NOT NULL,
    written_at timestamp with time zone NOT NULL,
    version integer NOT NULL,
    CONSTRAINT client_reach_contact_use_check CHECK ((contact_use = ANY (ARRAY['not_asked'::text, 'call'::text, 'message'::text, 'never'::text]))),
    CONSTRAINT client_reach_phone_use_check CHECK ((phone_use = ANY (ARRAY['not_asked'::text, 'call'::text, 'message'::text, 'never'::text]))),
    CONSTRAINT client_reach_version_check CHECK ((version > 0)),
    CONSTRAINT tried_on_is_a_day CHECK (isfinite(tried_on)),
    CONSTRAINT written_at_is_a_time CHECK (isfinite(written_at))
);

ALTER TABLE ONLY public.client_reach FORCE ROW LEVEL SECURITY;


ALTER TABLE public.client_reach OWNER TO leeward_owner;

--
-- Name: closing_draft; Type: TABLE; Schema: public; Owner: leeward_owner
--

CREATE TABLE public.closing_draft (
    session_id uuid NOT NULL,
    client_id uuid NOT NULL,
    typed bytea NOT NULL,
    written_by uuid NOT NULL,
    written_at timestamp with time zone NOT NULL,
    version integer NOT NULL,
    CONSTRAINT closing_draft_version_check CHECK ((version > 0)),
    CONSTRAINT written_at_is_a_time CHECK (isfinite(written_at))
);

ALTER TABLE ONLY public.closing_draft FORCE ROW LEVEL SECURITY;


ALTER TABLE public.closing_draft OWNER TO leeward_owner;

--
-- Name: cluster; Type: TABLE; Schema: public; Owner: leeward_owner
--

CREATE TABLE public.cluster (
    id uuid NOT NULL,
    client_id uuid NOT NULL,
    number integer NOT NULL,
    name bytea NOT NULL,
    theme text,
    earliest_id uuid,
    worst_id uuid,
    version integer NOT NULL,
    CONSTRAINT cluster_number_check CHECK ((number > 0)),
    CONSTRAINT cluster_theme_check CHECK ((theme = ANY (ARRAY['responsibility'::text, 'safety'::text, 'choice'::text]))),
    CONSTRAINT cluster_version_check CHECK ((version > 0))
);

ALTER TABLE ONLY public.cluster FORCE ROW LEVEL SECURITY;


ALTER TABLE public.cluster OWNER TO leeward_owner;

--
-- Name: comfort; Type: TABLE; Schema: public; Owner: leeward_owner
--

CREATE TABLE public.comfort (
    client_id uuid NOT NULL,
    path text NOT NULL,
    dot double precision NOT NULL,
    comfort jsonb NOT NULL,
    filled_at timestamp with time zone NOT NULL,
    version integer NOT NULL,
    CONSTRAINT comfort_dot_check CHECK (((dot >= (0.3)::double precision) AND (dot <= (3)::double precision))),
    CONSTRAINT comfort_version_check CHECK ((version > 0)),
    CONSTRAINT filled_at_is_a_time CHECK (isfinite(filled_at))
);

ALTER TABLE ONLY public.comfort FORCE ROW LEVEL SECURITY;


ALTER TABLE public.comfort OWNER TO leeward_owner;

--
-- Name: fact; Type: TABLE; Schema: public; Owner: leeward_owner
--

CREATE TABLE public.fact (
    id uuid NOT NULL,
    client_id uuid NOT NULL,
    session_id uuid,
    target_id uuid,
    set_id uuid,
    kind text NOT NULL,
    code text,
    because text,
    moment text,
    replaces uuid,
    first_id uuid,
    entered_by uuid,
    at timestamp with time zone NOT NULL,
    seq bigint DEFAULT nextval('public.kept_order'::regclass) NOT NULL,
    CONSTRAINT at_is_a_time CHECK (isfinite(at)),
    CONSTRAINT because_of_a_decision CHECK (((because IS NULL) OR (kind = 'decided'::text))),
    CONSTRAINT chained CHECK (((first_id IS NULL) = (replaces IS NULL))),
    CONSTRAINT fact_because_check CHECK ((because = ANY (ARRAY['asked_elsewhere'::text, 'client_declines'::text, 'too_much_now'::text, 'fits_the_facts'::text, 'does_not_apply'::text, 'judgement'::text]))),
    CONSTRAINT fact_moment_check CHECK ((moment = ANY (ARRAY['assessment'::text, 'after_set'::text, 'back_at_target'::text, 'installation'::text, 'closing'::text, 'reevaluation'::text]))),
    CONSTRAINT kind_and_code CHECK (
CASE kind
    WHEN 'mark'::text THEN ((code = ANY (ARRAY['changing'::text, 'same'::text, 'settled'::text])) AND (session_id IS NOT NULL) AND (moment IS NOT NULL))
    WHEN 'saw'::text THEN ((code = ANY (ARRAY['glazed'::text, 'tears'::text, 'numb'::text, 'far_away'::text, 'other'::text])) AND (session_id IS NOT NULL) AND (moment IS NOT NULL))
    WHEN 'tried'::text THEN ((code = ANY (ARRAY['arousal'::text, 'mechanics'::text, 'focus'::text, 'earlier'::text, 'interweave'::text])) AND (session_id IS NOT NULL) AND (moment IS NOT NULL))
    WHEN 'too_much'::text THEN ((code = 'stopped'::text) AND (session_id IS NOT NULL) AND (moment IS NOT NULL))
    WHEN 'showed'::text THEN ((code = ANY (ARRAY['orient'::text, 'resource'::text, 'nothing'::text])) AND (session_id IS NOT NULL) AND (moment IS NOT NULL))
    WHEN 'procedure'::text THEN (code = ANY (ARRAY['standard'::text, 'resource'::text, 'restricted'::text, 'recent_event'::text, 'future'::text]))
    WHEN 'scan'::text THEN (code = ANY (ARRAY['clear'::text, 'felt'::text]))
    WHEN 'rehearsal'::text THEN (code = ANY (ARRAY['undisturbed'::text, 'disturbed'::text]))
    WHEN 'belief'::text THEN (code = ANY (ARRAY['still'::text, 'another'::text]))
    WHEN 'fits'::text THEN (code = ANY (ARRAY['sud'::text, 'voc'::text]))
    WHEN 'decided'::text THEN (code = ANY (ARRAY['incomplete'::text, 'complete'::text, 'reduced'::text, 'reopened'::text]))
    WHEN 'carried_over'::text THEN (code = ANY (ARRAY['planned'::text, 'active'::text, 'incomplete'::text, 'complete'::text, 'reopened'::text]))
    ELSE false
END),
    CONSTRAINT of_a_target CHECK (((target_id IS NOT NULL) OR (kind = ANY (ARRAY['mark'::text, 'saw'::text, 'tried'::text, 'too_much'::text, 'showed'::text])))),
    CONSTRAINT says_something CHECK (((code IS NOT NULL) OR (replaces IS NOT NULL))),
    CONSTRAINT somebody_said CHECK (((entered_by IS NULL) = (kind = 'carried_over'::text)))
);

ALTER TABLE ONLY public.fact FORCE ROW LEVEL SECURITY;


ALTER TABLE public.fact OWNER TO leeward_owner;

--
-- Name: hour_fact; Type: TABLE; Schema: public; Owner: leeward_owner
--

CREATE TABLE public.hour_fact (
    id uuid NOT NULL,
    client_id uuid NOT NULL,
    session_id uuid NOT NULL,
    kind text NOT NULL,
    code text,
    because text,
    again boolean NOT NULL,
    replaces uuid,
    entered_by uuid NOT NULL,
    at timestamp with time zone NOT NULL,
    seq bigint DEFAULT nextval('public.kept_order'::regclass) NOT NULL,
    CONSTRAINT at_is_a_time CHECK (isfinite(at)),
    CONSTRAINT hour_fact_because_check CHECK ((because = ANY (ARRAY['asked_elsewhere'::text, 'client_declines'::text, 'too_much_now'::text, 'fits_the_facts'::text, 'does_not_apply'::text, 'judgement'::text]))),
    CONSTRAINT hour_fact_kind_check CHECK ((kind = ANY (ARRAY['answered'::text, 'passed'::text, 'time'::text]))),
    CONSTRAINT passed_because CHECK (((because IS NOT NULL) = ((kind = 'passed'::text) AND (code IS NOT NULL)))),
    CONSTRAINT says_something CHECK (((code IS NOT NULL) OR (replaces IS NOT NULL))),
    CONSTRAINT small CHECK ((length(code) <= 40))
);

ALTER TABLE ONLY public.hour_fact FORCE ROW LEVEL SECURITY;


ALTER TABLE public.hour_fact OWNER TO leeward_owner;

--
-- Name: practice; Type: TABLE; Schema: public; Owner: leeward_owner
--

CREATE TABLE public.practice (
    singleton boolean DEFAULT true NOT NULL,
    instance uuid NOT NULL,
    name text NOT NULL,
    zone text NOT NULL,
    emergency_number text NOT NULL,
    demo boolean NOT NULL,
    day_order text DEFAULT 'day_first'::text NOT NULL,
    clock smallint DEFAULT 24 NOT NULL,
    tells_whom boolean DEFAULT false NOT NULL,
    minutes smallint DEFAULT 50 NOT NULL,
    reserve smallint DEFAULT 10 NOT NULL,
    check_from smallint DEFAULT 24 NOT NULL,
    check_until smallint DEFAULT 72 NOT NULL,
    stuck_after smallint DEFAULT 2 NOT NULL,
    places text DEFAULT ''::text NOT NULL,
    crisis_words text DEFAULT ''::text NOT NULL,
    CONSTRAINT check_in_order CHECK ((check_from < check_until)),
    CONSTRAINT practice_check CHECK (((reserve >= 0) AND (reserve <= 60) AND (reserve < minutes))),
    CONSTRAINT practice_check_from_check CHECK (((check_from >= 1) AND (check_from <= 168))),
    CONSTRAINT practice_check_until_check CHECK (((check_until >= 1) AND (check_until <= 336))),
    CONSTRAINT practice_clock_check CHECK ((clock = ANY (ARRAY[12, 24]))),
    CONSTRAINT practice_crisis_words_check CHECK ((char_length(crisis_words) <= 600)),
    CONSTRAINT practice_day_order_check CHECK ((day_order = ANY (ARRAY['day_first'::text, 'month_first'::text, 'year_first'::text]))),
    CONSTRAINT practice_minutes_check CHECK (((minutes >= 10) AND (minutes <= 240))),
    CONSTRAINT practice_places_check CHECK ((char_length(places) <= 1000)),
    CONSTRAINT practice_singleton_check CHECK (singleton),
    CONSTRAINT practice_stuck_after_check CHECK ((stuck_after = ANY (ARRAY[2, 3])))
);

ALTER TABLE ONLY public.practice FORCE ROW LEVEL SECURITY;


ALTER TABLE public.practice OWNER TO leeward_owner;

--
-- Name: preset; Type: TABLE; Schema: public; Owner: leeward_owner
--

CREATE TABLE public.preset (
    id uuid NOT NULL,
    member_id uuid,
    name text NOT NULL,
    purpose text NOT NULL,
    eyes boolean NOT NULL,
    ears boolean NOT NULL,
    hands boolean NOT NULL,
    rate double precision NOT NULL,
    width double precision NOT NULL,
    cycles integer,
    made_at timestamp with time zone NOT NULL,
    put_away_at timestamp with time zone,
    version integer NOT NULL,
    CONSTRAINT made_at_is_a_time CHECK (isfinite(made_at)),
    CONSTRAINT preset_check CHECK ((eyes OR ears OR hands)),
    CONSTRAINT preset_check1 CHECK (((purpose <> 'calm_place'::text) OR ((cycles IS NOT NULL) AND (cycles <= 12) AND (rate <= (1)::double precision)))),
    CONSTRAINT preset_cycles_check CHECK (((cycles >= 1) AND (cycles <= 200))),
    CONSTRAINT preset_name_check CHECK (((length(name) >= 1) AND (length(name) <= 40))),
    CONSTRAINT preset_purpose_check CHECK ((purpose = ANY (ARRAY['processing'::text, 'calm_place'::text]))),
    CONSTRAINT preset_rate_check CHECK (((rate >= (0.3)::double precision) AND (rate <= (2)::double precision))),
    CONSTRAINT preset_version_check CHECK ((version > 0)),
    CONSTRAINT preset_width_check CHECK (((width >= (2)::double precision) AND (width <= (40)::double precision))),
    CONSTRAINT put_away_at_is_a_time CHECK (isfinite(put_away_at))
);

ALTER TABLE ONLY public.preset FORCE ROW LEVEL SECURITY;


ALTER TABLE public.preset OWNER TO leeward_owner;

--
-- Name: process_note; Type: TABLE; Schema: public; Owner: leeward_owner
--

CREATE TABLE public.process_note (
    id uuid NOT NULL,
    session_id uuid NOT NULL,
    client_id uuid NOT NULL,
    set_id uuid,
    moment text NOT NULL,
    words bytea,
    replaces uuid,
    entered_by uuid NOT NULL,
    at timestamp with time zone NOT NULL,
    seq bigint DEFAULT nextval('public.kept_order'::regclass) NOT NULL,
    CONSTRAINT at_is_a_time CHECK (isfinite(at)),
    CONSTRAINT process_note_moment_check CHECK ((moment = ANY (ARRAY['assessment'::text, 'after_set'::text, 'back_at_target'::text, 'installation'::text, 'closing'::text, 'reevaluation'::text]))),
    CONSTRAINT says_something CHECK (((words IS NOT NULL) OR (replaces IS NOT NULL)))
);

ALTER TABLE ONLY public.process_note FORCE ROW LEVEL SECURITY;


ALTER TABLE public.process_note OWNER TO leeward_owner;

--
-- Name: rating; Type: TABLE; Schema: public; Owner: leeward_owner
--

CREATE TABLE public.rating (
    id uuid NOT NULL,
    client_id uuid NOT NULL,
    session_id uuid,
    target_id uuid,
    set_id uuid,
    scale text NOT NULL,
    value smallint,
    moment text NOT NULL,
    replaces uuid,
    entered_by uuid NOT NULL,
    at timestamp with time zone NOT NULL,
    seq bigint DEFAULT nextval('public.kept_order'::regclass) NOT NULL,
    first_id uuid,
    segment smallint,
    from_client boolean DEFAULT false NOT NULL,
    CONSTRAINT at_is_a_time CHECK (isfinite(at)),
    CONSTRAINT rating_check CHECK (((value IS NOT NULL) OR (replaces IS NOT NULL))),
    CONSTRAINT rating_check1 CHECK ((((scale = 'sud'::text) AND ((value >= 0) AND (value <= 10))) OR ((scale = 'voc'::text) AND ((value >= 1) AND (value <= 7))) OR (value IS NULL))),
    CONSTRAINT rating_check2 CHECK (((first_id IS NULL) = (replaces IS NULL))),
    CONSTRAINT rating_moment_check CHECK ((moment = ANY (ARRAY['assessment'::text, 'after_set'::text, 'back_at_target'::text, 'installation'::text, 'closing'::text, 'reevaluation'::text]))),
    CONSTRAINT rating_scale_check CHECK ((scale = ANY (ARRAY['sud'::text, 'voc'::text]))),
    CONSTRAINT rating_segment_check CHECK (((segment >= 1) AND (segment <= 99))),
    CONSTRAINT segments_have_sud CHECK (((segment IS NULL) OR (scale = 'sud'::text)))
);

ALTER TABLE ONLY public.rating FORCE ROW LEVEL SECURITY;


ALTER TABLE public.rating OWNER TO leeward_owner;

--
-- Name: reach_step; Type: TABLE; Schema: public; Owner: leeward_owner
--

CREATE TABLE public.reach_step (
    id uuid NOT NULL,
    client_id uuid NOT NULL,
    session_id uuid NOT NULL,
    step text,
    replaces uuid,
    entered_by uuid NOT NULL,
    at timestamp with time zone NOT NULL,
    seq bigint DEFAULT nextval('public.kept_order'::regclass) NOT NULL,
    CONSTRAINT at_is_a_time CHECK (isfinite(at)),
    CONSTRAINT reach_step_step_check CHECK ((step = ANY (ARRAY['no_answer'::text, 'messaged'::text, 'contact_called'::text, 'welfare_asked'::text, 'help_called'::text, 'reached'::text, 'safe'::text]))),
    CONSTRAINT says_something CHECK (((step IS NOT NULL) OR (replaces IS NOT NULL)))
);

ALTER TABLE ONLY public.reach_step FORCE ROW LEVEL SECURITY;


ALTER TABLE public.reach_step OWNER TO leeward_owner;

--
-- Name: resource; Type: TABLE; Schema: public; Owner: leeward_owner
--

CREATE TABLE public.resource (
    id uuid NOT NULL,
    client_id uuid NOT NULL,
    number integer NOT NULL,
    cue bytea NOT NULL,
    image bytea NOT NULL,
    body_feeling bytea NOT NULL,
    helped text NOT NULL,
    on_offer boolean NOT NULL,
    found_at timestamp with time zone NOT NULL,
    version integer NOT NULL,
    CONSTRAINT found_at_is_a_time CHECK (isfinite(found_at)),
    CONSTRAINT resource_helped_check CHECK ((helped = ANY (ARRAY['yes'::text, 'no'::text, 'not_known'::text]))),
    CONSTRAINT resource_number_check CHECK ((number > 0)),
    CONSTRAINT resource_version_check CHECK ((version > 0))
);

ALTER TABLE ONLY public.resource FORCE ROW LEVEL SECURITY;


ALTER TABLE public.resource OWNER TO leeward_owner;

--
-- Name: safety_plan; Type: TABLE; Schema: public; Owner: leeward_owner
--

CREATE TABLE public.safety_plan (
    client_id uuid NOT NULL,
    signs bytea NOT NULL,
    helps bytea NOT NULL,
    people bytea NOT NULL,
    places bytea NOT NULL,
    professionals bytea NOT NULL,
    surroundings bytea NOT NULL,
    review_on date,
    written_at timestamp with time zone NOT NULL,
    version integer NOT NULL,
    CONSTRAINT review_on_is_a_day CHECK (isfinite(review_on)),
    CONSTRAINT safety_plan_version_check CHECK ((version > 0)),
    CONSTRAINT written_at_is_a_time CHECK (isfinite(written_at))
);

ALTER TABLE ONLY public.safety_plan FORCE ROW LEVEL SECURITY;


ALTER TABLE public.safety_plan OWNER TO leeward_owner;

--
-- Name: session_moment; Type: TABLE; Schema: public; Owner: leeward_owner
--

CREATE TABLE public.session_moment (
    id bigint NOT NULL,
    session_id uuid NOT NULL,
    client_id uuid NOT NULL,
    kind text NOT NULL,
    at timestamp with time zone NOT NULL,
    once uuid,
    CONSTRAINT at_is_a_time CHECK (isfinite(at))
);

ALTER TABLE ONLY public.session_moment FORCE ROW LEVEL SECURITY;


ALTER TABLE public.session_moment OWNER TO leeward_owner;

--
-- Name: session_moment_id_seq; Type: SEQUENCE; Schema: public; Owner: leeward_owner
--

ALTER TABLE public.session_moment ALTER COLUMN id ADD GENERATED ALWAYS AS IDENTITY (
    SEQUENCE NAME public.session_moment_id_seq
    START WITH 1
    INCREMENT BY 1
    NO MINVALUE
    NO MAXVALUE
    CACHE 1
);


--
-- Name: session_words; Type: TABLE; Schema: public; Owner: leeward_owner
--

CREATE TABLE public.session_words (
    session_id uuid NOT NULL,
    client_id uuid NOT NULL,
    location bytea NOT NULL,
    call_back bytea NOT NULL,
    resource bytea NOT NULL,
    leaving_state bytea NOT NULL,
    companion bytea NOT NULL,
    next_contact bytea NOT NULL,
    client_words bytea NOT NULL,
    note bytea NOT NULL,
    version integer NOT NULL,
    written_by uuid,
    written_at timestamp with time zone,
    CONSTRAINT session_words_version_check CHECK ((version > 0)),
    CONSTRAINT written_at_is_a_time CHECK (isfinite(written_at))
);

ALTER TABLE ONLY public.session_words FORCE ROW LEVEL SECURITY;


ALTER TABLE public.session_words OWNER TO leeward_owner;

--
-- Name: set_ending; Type: TABLE; Schema: public; Owner: leeward_owner
--

CREATE TABLE public.set_ending (
    set_id uuid NOT NULL,
    session_id uuid NOT NULL,
    client_id uuid NOT NULL,
    ending text NOT NULL,
    at_ms double precision,
    recorded_at timestamp with time zone NOT NULL,
    witness text NOT NULL,
    CONSTRAINT recorded_at_is_a_time CHECK (isfinite(recorded_at)),
    CONSTRAINT set_ending_witness_check CHECK ((witness = ANY (ARRAY['room'::text, 'desk'::text])))
);

ALTER TABLE ONLY public.set_ending FORCE ROW LEVEL SECURITY;


ALTER TABLE public.set_ending OWNER TO leeward_owner;

--
-- Name: set_evidence; Type: TABLE; Schema: public; Owner: leeward_owner
--

CREATE TABLE public.set_evidence (
    set_id uuid NOT NULL,
    seq integer NOT NULL,
    session_id uuid NOT NULL,
    client_id uuid NOT NULL,
    kind text NOT NULL,
    at_ms double precision NOT NULL,
    phase double precision,
    width double precision,
    frames integer,
    longest_gap double precision,
    ending text,
    recorded_at timestamp with time zone NOT NULL,
    CONSTRAINT recorded_at_is_a_time CHECK (isfinite(recorded_at)),
    CONSTRAINT set_evidence_kind_check CHECK ((kind = ANY (ARRAY['shown'::text, 'second'::text, 'rested'::text])))
);

ALTER TABLE ONLY public.set_evidence FORCE ROW LEVEL SECURITY;


ALTER TABLE public.set_evidence OWNER TO leeward_owner;

--
-- Name: set_order; Type: TABLE; Schema: public; Owner: leeward_owner
--

CREATE TABLE public.set_order (
    set_id uuid NOT NULL,
    seq integer NOT NULL,
    session_id uuid NOT NULL,
    client_id uuid NOT NULL,
    cause text NOT NULL,
    at_ms double precision NOT NULL,
    plan jsonb NOT NULL,
    timeline jsonb NOT NULL,
    recorded_at timestamp with time zone NOT NULL,
    CONSTRAINT recorded_at_is_a_time CHECK (isfinite(recorded_at))
);

ALTER TABLE ONLY public.set_order FORCE ROW LEVEL SECURITY;


ALTER TABLE public.set_order OWNER TO leeward_owner;

--
-- Name: set_outcome; Type: VIEW; Schema: public; Owner: leeward_owner
--

CREATE VIEW public.set_outcome WITH (security_invoker='true') AS
 SELECT s.id AS set_id,
    s.session_id,
    s.client_id,
    COALESCE(( SELECT e.ending
           FROM public.set_evidence e
          WHERE ((e.set_id = s.id) AND (e.kind = 'rested'::text) AND (e.ending <> 'unknown'::text))
          ORDER BY e.seq
         LIMIT 1), ( SELECT e.ending
           FROM public.set_ending e
          WHERE ((e.set_id = s.id) AND (e.ending <> 'unknown'::text))
          ORDER BY (e.witness = 'room'::text) DESC
         LIMIT 1),
        CASE
            WHEN ((s.epoch < n.room_epoch) OR (n.ended_at IS NOT NULL) OR (EXISTS ( SELECT
               FROM public.set_evidence e
              WHERE ((e.set_id = s.id) AND (e.kind = 'rested'::text))))) THEN 'unknown'::text
            ELSE NULL::text
        END) AS ending
   FROM (public.stimulus_set s
     LEFT JOIN public.session n ON ((n.id = s.session_id)));


ALTER TABLE public.set_outcome OWNER TO leeward_owner;

--
-- Name: standing_fact; Type: VIEW; Schema: public; Owner: leeward_owner
--

CREATE VIEW public.standing_fact WITH (security_invoker='true') AS
 SELECT f.id,
    f.client_id,
    f.session_id,
    f.target_id,
    f.set_id,
    f.kind,
    f.code,
    f.because,
    f.moment,
    f.seq AS asked,
    COALESCE(s.seq, f.seq) AS place
   FROM (public.fact f
     LEFT JOIN public.session s ON ((s.id = f.session_id)))
  WHERE ((f.replaces IS NULL) AND (f.code IS NOT NULL) AND (NOT (EXISTS ( SELECT
           FROM public.fact later
          WHERE (later.replaces = f.id)))))
UNION ALL
 SELECT r.id,
    f.client_id,
    f.session_id,
    f.target_id,
    f.set_id,
    f.kind,
    r.code,
    r.because,
    f.moment,
    f.seq AS asked,
    COALESCE(s.seq, f.seq) AS place
   FROM ((public.fact f
     JOIN public.fact r ON ((r.first_id = f.id)))
     LEFT JOIN public.session s ON ((s.id = f.session_id)))
  WHERE ((f.replaces IS NULL) AND (r.code IS NOT NULL) AND (NOT (EXISTS ( SELECT
           FROM public.fact later
          WHERE (later.replaces = r.id)))));


ALTER TABLE public.standing_fact OWNER TO leeward_owner;

--
-- Name: standing_hour_fact; Type: VIEW; Schema: public; Owner: leeward_owner
--

CREATE VIEW public.standing_hour_fact WITH (security_invoker='true') AS
 SELECT f.id,
    f.client_id,
    f.session_id,
    f.kind,
    f.code,
    f.because,
    f.again,
    f.entered_by,
    f.at,
    f.seq
   FROM public.hour_fact f
  WHERE ((f.code IS NOT NULL) AND (NOT (EXISTS ( SELECT
           FROM public.hour_fact later
          WHERE (later.replaces = f.id)))));


ALTER TABLE public.standing_hour_fact OWNER TO leeward_owner;

--
-- Name: standing_rating; Type: VIEW; Schema: public; Owner: leeward_owner
--

CREATE VIEW public.standing_rating WITH (security_invoker='true') AS
 SELECT r.id,
    r.client_id,
    r.session_id,
    r.target_id,
    r.set_id,
    r.scale,
    r.value,
    r.moment,
    r.entered_by,
    r.at,
    r.at AS asked_at,
    r.seq AS asked,
    COALESCE(s.seq, r.seq) AS place,
    false AS corrected
   FROM (public.rating r
     LEFT JOIN public.session s ON ((s.id = r.session_id)))
  WHERE ((r.segment IS NULL) AND (r.replaces IS NULL) AND (r.value IS NOT NULL) AND (NOT (EXISTS ( SELECT
           FROM public.rating later
          WHERE (later.replaces = r.id)))))
UNION ALL
 SELECT r.id,
    f.client_id,
    f.session_id,
    f.target_id,
    f.set_id,
    f.scale,
    r.value,
    f.moment,
    r.entered_by,
    r.at,
    f.at AS asked_at,
    f.seq AS asked,
    COALESCE(s.seq, f.seq) AS place,
    true AS corrected
   FROM ((public.rating f
     JOIN public.rating r ON ((r.first_id = f.id)))
     LEFT JOIN public.session s ON ((s.id = f.session_id)))
  WHERE ((f.segment IS NULL) AND (f.replaces IS NULL) AND (r.value IS NOT NULL) AND (NOT (EXISTS ( SELECT
           FROM public.rating later
          WHERE (later.replaces = r.id)))));


ALTER TABLE public.standing_rating OWNER TO leeward_owner;

--
-- Name: standing_segment; Type: VIEW; Schema: public; Owner: leeward_owner
--

CREATE VIEW public.standing_segment WITH (security_invoker='true') AS
 SELECT r.target_id,
    r.segment,
    r.value,
    r.moment,
    r.seq AS asked,
    COALESCE(s.seq, r.seq) AS place
   FROM (public.rating r
     LEFT JOIN public.session s ON ((s.id = r.session_id)))
  WHERE ((r.segment IS NOT NULL) AND (r.value IS NOT NULL) AND (NOT (EXISTS ( SELECT
           FROM public.rating later
          WHERE (later.replaces = r.id)))));


ALTER TABLE public.standing_segment OWNER TO leeward_owner;

--
-- Name: steadying; Type: TABLE; Schema: public; Owner: leeward_owner
--

CREATE TABLE public.steadying (
    client_id uuid NOT NULL,
    signs bytea NOT NULL,
    way_back bytea NOT NULL,
    first_words bytea NOT NULL,
    written_at timestamp with time zone NOT NULL,
    version integer NOT NULL,
    CONSTRAINT steadying_version_check CHECK ((version > 0)),
    CONSTRAINT written_at_is_a_time CHECK (isfinite(written_at))
);

ALTER TABLE ONLY public.steadying FORCE ROW LEVEL SECURITY;


ALTER TABLE public.steadying OWNER TO leeward_owner;

--
-- Name: target_plan; Type: TABLE; Schema: public; Owner: leeward_owner
--

CREATE TABLE public.target_plan (
    target_id uuid NOT NULL,
    client_id uuid NOT NULL,
    place integer NOT NULL,
    age smallint,
    year smallint,
    cluster_id uuid,
    parent_id uuid,
    CONSTRAINT target_plan_age_check CHECK (((age >= 0) AND (age <= 120))),
    CONSTRAINT target_plan_check CHECK ((parent_id <> target_id)),
    CONSTRAINT target_plan_place_check CHECK ((place > 0)),
    CONSTRAINT target_plan_year_check CHECK (((year >= 1900) AND (year <= 2200)))
);

ALTER TABLE ONLY public.target_plan FORCE ROW LEVEL SECURITY;


ALTER TABLE public.target_plan OWNER TO leeward_owner;

--
-- Name: target_words; Type: TABLE; Schema: public; Owner: leeward_owner
--

CREATE TABLE public.target_words (
    target_id uuid NOT NULL,
    client_id uuid NOT NULL,
    label bytea NOT NULL,
    picture bytea NOT NULL,
    negative_belief bytea NOT NULL,
    positive_belief bytea NOT NULL,
    emotions bytea NOT NULL,
    body_location bytea NOT NULL,
    version integer NOT NULL,
    CONSTRAINT target_words_version_check CHECK ((version > 0))
);

ALTER TABLE ONLY public.target_words FORCE ROW LEVEL SECURITY;


ALTER TABLE public.target_words OWNER TO leeward_owner;

--
-- Name: unmeasured; Type: TABLE; Schema: public; Owner: leeward_owner
--

CREATE TABLE public.unmeasured (
    id uuid NOT NULL,
    client_id uuid NOT NULL,
    session_id uuid NOT NULL,
    target_id uuid,
    way text,
    replaces uuid,
    entered_by uuid NOT NULL,
    at timestamp with time zone NOT NULL,
    seq bigint DEFAULT nextval('public.kept_order'::regclass) NOT NULL,
    CONSTRAINT at_is_a_time CHECK (isfinite(at)),
    CONSTRAINT says_something CHECK (((way IS NOT NULL) OR (replaces IS NOT NULL))),
    CONSTRAINT unmeasured_way_check CHECK ((way = ANY (ARRAY['in_person'::text, 'without'::text, 'own_tapping'::text])))
);

ALTER TABLE ONLY public.unmeasured FORCE ROW LEVEL SECURITY;


ALTER TABLE public.unmeasured OWNER TO leeward_owner;

--
-- Data for Name: audit_act; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.audit_act (kind, act, may_be_last) FROM stdin;
member	account.view	f
member	caseload.view	f
member	client.archive	f
member	client.change	f
member	client.create	f
member	client.restore	f
member	client.view	f
member	code.make	f
member	comfort.change	f
member	comfort.view	f
member	desk.connect	f
member	desk.view	f
member	entry.keep	f
member	link.make	f
member	member.end	f
member	member.invite	f
member	member.list	f
member	member.view	f
member	member.withdraw	f
member	passkey.add	f
member	passkey.invite	f
member	passkey.remove	f
member	practice.caseload.view	f
member	practice.client.view	f
member	preset.change	f
member	preset.create	f
member	preset.put_away	f
member	preset.take_back	f
member	preset.view	f
member	presets.view	f
member	rehearsal.prepare	f
member	seat.move	f
member	seat.refuse	f
member	seat.remove	f
member	session.admit	f
member	session.close	f
member	session.log	f
member	session.note.save	f
member	session.note.view	f
member	session.open	f
member	session.view	f
member	set.view	f
member	signin.open	f
member	target.archive	f
member	target.change	f
member	target.create	f
member	target.restore	f
member	target.view	f
member	signin.close	t
seat	seat.leave	t
seat	evidence.hand_in	f
visitor	code.wrong	f
visitor	seat.claim	f
visitor	signin.refused	f
visitor	member.join	f
visitor	passkey.add	f
owner	member.invite	f
member	client.hand_over	f
member	member.clients	f
member	member.roles	f
member	news.read	f
member	passkey.show	f
member	replacement.ask	f
member	replacement.agree	f
owner	replacement.ask	f
owner	replacement.agree	f
member	replacement.refuse	f
member	practice.settings.view	f
member	practice.settings.change	f
member	target.fact	f
member	session.check	f
member	plan.move	f
member	plan.cluster	f
member	safety_plan.view	f
member	safety_plan.change	f
member	steadying.view	f
member	steadying.change	f
member	resource.create	f
member	resource.change	f
member	session.assess	f
member	session.draft	f
member	reach.view	f
member	reach.change	f
member	event.view	f
member	event.create	f
member	session.turn	f
\.


--
-- Data for Name: audit_head; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.audit_head (singleton, seq, hash) FROM stdin;
t	62	\\x7cd47bd833788b2ae141081040300c55e8e75e5b6822de6d6d099fc8473bfbdf
\.


--
-- Data for Name: care_link; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.care_link (id, member_id, client_id, since, until) FROM stdin;
b107e29d-99c4-4a22-b86b-5c33c31210fc	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	2026-03-03 09:00:00+00	\N
218c9df6-951a-4b6e-a06b-5884e7638b86	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	aec86340-f120-48af-92f5-8e6e46155284	2026-03-10 09:04:22+00	\N
c7beae43-2f32-4340-a832-0c095c9a3e35	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	75b9484f-affb-4f59-bbbc-31b3026feb38	2026-03-10 09:04:22+00	\N
\.


--
-- Data for Name: ceremony; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.ceremony (token_hash, state, ends_at) FROM stdin;
\.


--
-- Data for Name: clock; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.clock (singleton, ahead, slack) FROM stdin;
t	00:00:00	1000 years
\.


--
-- Data for Name: gate; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.gate (session_id, client_id, ended_at) FROM stdin;
a0c02700-752d-420f-9e12-c07cc07d5559	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	2026-03-03 09:04:22+00
4eaeea9f-6575-4129-a7d7-3634ccfb61c9	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	\N
f0a1903d-f39a-4747-ba4e-97d6c0298427	aec86340-f120-48af-92f5-8e6e46155284	\N
\.


--
-- Data for Name: invitation; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.invitation (token_hash, member_id, name, roles, made_by, made_at, ends_at, spent_at, made_in, replacement) FROM stdin;
\\xb26ad4e8797fb8ea32df6bb17094c7b11b7d02a1e2ca424ee9c57512a2184364	\N	Somebody New	{lead}	7dc4dc66-f914-4f2a-b751-97de3014e94b	2026-03-03 09:01:00+00	2026-03-06 09:01:00+00	\N	a119440b-b82d-471c-a096-32b2a742eea9	\N
\.


--
-- Data for Name: join_link; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.join_link (id, token_hash, session_id, made_at, ends_at, revoked_at, code_phc, code_ends_at, code_tries, code_spent_at) FROM stdin;
1d53792f-126e-4ff0-bdf4-bfb1bc29d45b	\\x7439397902e3bdce0faf7d61ce7be48f6c1c4f165583b2b37ed13d4037297b1a	4eaeea9f-6575-4129-a7d7-3634ccfb61c9	2026-03-10 09:04:22+00	2026-03-10 13:04:22+00	\N	$argon2id$v=19$m=19456,t=2,p=1$gwIo3VDdSL3R3hnmyYhdXA$k5DxicjLnIYSNKORRB57J03YmQxzC59EHnYMKG6SbGk	2026-03-10 09:14:22+00	1	2026-03-10 09:04:22+00
\.


--
-- Data for Name: key_check; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.key_check (key_id, sealed) FROM stdin;
1	\\x01aa842a5ddd612ff3f8564225e8e16fdd7a3a7a440fb827c8c6b90883088d253e39ff436709b9e43abd62fd0295
\.


--
-- Data for Name: member; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.member (id, name, roles, joined_at, left_at, roles_since) FROM stdin;
286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	Member 286c1a	{clinician}	2026-03-03 09:00:00+00	\N	\N
d5f388f7-c981-44dc-aacf-ae69bca7536b	Member d5f388	{lead}	2026-03-03 09:01:00+00	\N	\N
7dc4dc66-f914-4f2a-b751-97de3014e94b	Member 7dc4dc	{administrator}	2026-03-03 09:01:00+00	\N	\N
\.


--
-- Data for Name: news; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.news (id, member_id, kind, client_id, about, by_member, at, read_at) FROM stdin;
\.


--
-- Data for Name: passkey; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.passkey (id, member_id, credential_id, passkey, label, added_at, used_at) FROM stdin;
\.


--
-- Data for Name: refused_look; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.refused_look (signin_id, hour, looks) FROM stdin;
\.


--
-- Data for Name: rehearsal; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.rehearsal (member_id, client_id) FROM stdin;
286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	aec86340-f120-48af-92f5-8e6e46155284
\.


--
-- Data for Name: replacement; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.replacement (id, member_id, asked_by, asked_at, agreed_by, agreed_at, ends_at) FROM stdin;
\.


--
-- Data for Name: request_key; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.request_key (member_id, key, act, body, answer, kept_at) FROM stdin;
7dc4dc66-f914-4f2a-b751-97de3014e94b	59b6c0a2-e66b-8e72-9618-0e79f1fdaa5b	member.invite	\\xe2363b47c16ec24771f466dcafefd75b082e8e3016e2f9e70ec7728212875a63	{"json":"2026-03-06T09:01:00Z"}	2026-03-03 09:01:00+00
7dc4dc66-f914-4f2a-b751-97de3014e94b	9f4a9eaf-0cbe-0f21-02b1-6aa7ab7ee344	practice.settings.change	\\x79ad68e107e0a890f79e286d96e38040d2702dc48edc35e19ca85e653e8e7999	{"see":"/practice/settings?saved=9f4a9eaf-0cbe-0f21-02b1-6aa7ab7ee344"}	2026-03-03 09:01:00+00
286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	c1bb6d95-17f3-df6b-b162-68f904508a32	preset.create	\\x67f8aa3b84c8869b415acfe4c1f6e316f15397a9a65a578df07867f203fe5edd	{"see":"/presets?saved=c1bb6d95-17f3-df6b-b162-68f904508a32"}	2026-03-03 09:01:00+00
286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	f6f899a1-f82a-bb2a-32c6-d9a9022231b6	preset.create	\\x953d427bf0820728e80909e2230864766d0a7b14539231a9a15be4eec05db0a0	{"see":"/presets?saved=f6f899a1-f82a-bb2a-32c6-d9a9022231b6"}	2026-03-03 09:01:00+00
286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	24135c64-c7b2-8ed4-0994-ee3dfefb4404	preset.put_away	\\x7d4f828a583b92a24935f7fa152dfed5f6a19b69aa3c05c9abcdcda703bd04d5	{"see":"/presets"}	2026-03-03 09:01:00+00
286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	ba0be7fc-51ae-3733-2ae9-ac1239772cc5	client.change	\\xc70acaf2e505d55bdfc378b96f53987b1bf2c7d5cb10b1e3486b3a3e09b72d10	{"see":"/clients/61f6b241-ab2e-48b6-870c-7e6262e9a9ab?saved=ba0be7fc-51ae-3733-2ae9-ac1239772cc5"}	2026-03-03 09:01:00+00
286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	d42ed22c-b7fe-18f7-090f-edbf90e5a9b3	comfort.change	\\xcdf68b7f9738e1cc63937dde20bd88482de3684c3b17c2d058b282ed2688f9fa	{"see":"/clients/61f6b241-ab2e-48b6-870c-7e6262e9a9ab?saved=d42ed22c-b7fe-18f7-090f-edbf90e5a9b3"}	2026-03-03 09:01:00+00
286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	dcf1c73f-fa29-8bd9-43ea-2611c2db0c90	safety_plan.change	\\x01240058e659a4e96d39a74031c5224f56ee275a8d16cc6e10bee64fb065de8f	{"see":"/clients/61f6b241-ab2e-48b6-870c-7e6262e9a9ab/safety-plan?saved=dcf1c73f-fa29-8bd9-43ea-2611c2db0c90"}	2026-03-03 09:01:00+00
286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	bcbe139f-efe9-a663-3009-0e60af0c50a8	steadying.change	\\x1c23db7e4f950da7c95ae9ea82929bcab46e3107ddac48b0283291ad21ec2da2	{"see":"/clients/61f6b241-ab2e-48b6-870c-7e6262e9a9ab/steadying?saved=bcbe139f-efe9-a663-3009-0e60af0c50a8"}	2026-03-03 09:01:00+00
286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	02d68e3b-de2a-0ea1-b7d7-0a39f00e1052	reach.change	\\x287ae8447a74b192840984907efcde273ecdccdc920251c7a91ff3008c19427e	{"see":"/clients/61f6b241-ab2e-48b6-870c-7e6262e9a9ab?saved=02d68e3b-de2a-0ea1-b7d7-0a39f00e1052"}	2026-03-03 09:01:00+00
286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	909c85dc-e4e5-7647-2690-84b015a72b25	resource.create	\\xbbc3c6075eb07e50d0d7ad8476064591c9a691561fff915bffbbdbab2a5ddad1	{"see":"/clients/61f6b241-ab2e-48b6-870c-7e6262e9a9ab/steadying?saved=909c85dc-e4e5-7647-2690-84b015a72b25"}	2026-03-03 09:01:00+00
286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	713ff0cf-03b2-b042-fcb9-17943052cd8c	event.create	\\x9aee00580bf8e7d0a83d448cd4592e69521965435271bb4962d6df3073554dbb	{"see":"/clients/61f6b241-ab2e-48b6-870c-7e6262e9a9ab/events?saved=713ff0cf-03b2-b042-fcb9-17943052cd8c"}	2026-03-03 09:01:00+00
286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	8f785070-4fae-0aff-68bf-9ec2603f9815	target.change	\\x605fe58e9ab21e948530f42eb2ceb51b9a5189c05075ea3a2434b4c8770a2fde	{"see":"/targets/e5eb4c5b-8b1f-40c9-80a5-7c21f21e082a?saved=8f785070-4fae-0aff-68bf-9ec2603f9815"}	2026-03-03 09:02:00+00
286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	0a118f53-34e3-4b91-0427-bf6960fab9ef	target.change	\\x96db60ca9120941d3c7e3b546c47a3dc6249381feaea8797b574147480f350af	{"see":"/targets/e5eb4c5b-8b1f-40c9-80a5-7c21f21e082a?saved=0a118f53-34e3-4b91-0427-bf6960fab9ef"}	2026-03-03 09:02:00+00
286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	e0b57792-a99e-6076-fd34-14a54d5e05b3	plan.cluster	\\x196cb957c3794713eb0584f4b4d46281e8fbaa5674ed5b4777ff3f8e485e44e8	{"see":"/clients/61f6b241-ab2e-48b6-870c-7e6262e9a9ab/plan?saved=e0b57792-a99e-6076-fd34-14a54d5e05b3"}	2026-03-03 09:02:00+00
286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	8915eb47-1b86-d4e6-de2b-66f9887b2e62	target.create	\\xc911ea42fb3c7a25e783bd8eac41e52db2fdab5ec9678fcee5f2a11b75b78c9f	{"see":"/targets/16a36ba8-1765-44b8-86a6-24a4604740ad?saved=8915eb47-1b86-d4e6-de2b-66f9887b2e62"}	2026-03-03 09:02:00+00
286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	2aa4efbb-c8cd-1148-5542-2097f1d555f2	plan.move	\\x73519ecab28a5b2cf703544dd4ae9d666c84b2acfa594445b0293408a79a56e1	{"see":"/clients/61f6b241-ab2e-48b6-870c-7e6262e9a9ab/plan#target-2"}	2026-03-03 09:02:00+00
286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	3d1f3434-aa80-d0e0-71e3-656326d24617	target.fact	\\x47aa79fb9932d04cf6c05cded96db5c0d813189be2afc45255d40dd57afde951	{"see":"/targets/e5eb4c5b-8b1f-40c9-80a5-7c21f21e082a?saved=3d1f3434-aa80-d0e0-71e3-656326d24617"}	2026-03-03 09:03:41+00
286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	485fd75c-ea7c-7271-18f6-b610b2c88f9c	target.fact	\\x02d977337be7ceedd72fe074f2707b4757a94294ac98e60d2594ba39f5b9c88e	{"see":"/targets/e5eb4c5b-8b1f-40c9-80a5-7c21f21e082a?saved=485fd75c-ea7c-7271-18f6-b610b2c88f9c"}	2026-03-03 09:03:41+00
286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	8a9e13c6-1dd5-e857-1009-a9a5cc3d452e	target.fact	\\x9559030edbc97588cdefa756bfa2d7bbe3db2248933f618d9a8dee68711efa34	{"see":"/targets/e5eb4c5b-8b1f-40c9-80a5-7c21f21e082a?saved=8a9e13c6-1dd5-e857-1009-a9a5cc3d452e"}	2026-03-03 09:03:41+00
286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	03dde46f-4f10-660f-a9e7-d4e86a2dd788	session.close	\\xba4a9859768c0e3347863e78b0d61b629ff06f9822d73b35760077e763de72c2	{"see":"/sessions/a0c02700-752d-420f-9e12-c07cc07d5559?saved=03dde46f-4f10-660f-a9e7-d4e86a2dd788"}	2026-03-03 09:04:22+00
286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	f1d54cef-d6fe-4af8-d4c7-b901e7bd2609	session.check	\\x64c1ee0c96e640065be94c12c27ef1d1bb4eb025501597f8942f082ae89b421d	{"see":"/sessions/a0c02700-752d-420f-9e12-c07cc07d5559?saved=f1d54cef-d6fe-4af8-d4c7-b901e7bd2609"}	2026-03-03 09:04:22+00
286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	fff1f3a9-7e35-953b-af7d-87e4784b883b	session.note.save	\\xd4c7e7611f7a25059bfc6c5049a4befb857b2382ec243f65541d2ccb433abf99	{"see":"/sessions/a0c02700-752d-420f-9e12-c07cc07d5559?saved=fff1f3a9-7e35-953b-af7d-87e4784b883b#note"}	2026-03-03 09:04:22+00
286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	1ee03051-2bbf-751c-a5e7-155c5c5ff410	link.make	\\x44136fa355b3678a1146ad16f7e8649e94fb4fc21fe77e8310c060f61caaff8a	{"json":"2026-03-10T09:14:22Z"}	2026-03-10 09:04:22+00
286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	960d3ffc-af3e-ce66-ee8a-910f0ca4be32	code.make	\\x44136fa355b3678a1146ad16f7e8649e94fb4fc21fe77e8310c060f61caaff8a	{"json":"2026-03-10T09:14:22Z"}	2026-03-10 09:04:22+00
286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	46effd94-8207-e472-f7c8-5c3eb7b495b4	client.archive	\\x7d4f828a583b92a24935f7fa152dfed5f6a19b69aa3c05c9abcdcda703bd04d5	{"see":"/clients/75b9484f-affb-4f59-bbbc-31b3026feb38"}	2026-03-10 09:04:22+00
\.


--
-- Data for Name: room_token; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.room_token (token_hash, session_id, ends_at) FROM stdin;
\\x84d06c3fe61e5c5ded28bfe495c08149a628c68f441089cebfa3c291b6ec3ab5	a0c02700-752d-420f-9e12-c07cc07d5559	2026-03-04 09:02:01+00
\\x9dc41f4d7360bb208a8cccbd2200696f05566ba6dc0e08335aade424835b75a7	a0c02700-752d-420f-9e12-c07cc07d5559	2026-03-04 09:02:35+00
\\x34a3eceb67c8e6d53362eec24499dfa2cbc863fe49636aa35e3a54543c1da1ce	a0c02700-752d-420f-9e12-c07cc07d5559	2026-03-04 09:03:07+00
\\x287df304a8596894c36a86aa846787556be74b35e05b91af0102f887e01038a0	a0c02700-752d-420f-9e12-c07cc07d5559	2026-03-04 09:03:41+00
\.


--
-- Data for Name: seat; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.seat (id, token_hash, link_id, session_id, device, asked_at, taken_at, closed_at, asked_no, admitted_at, closed_why) FROM stdin;
5119cbc7-7a8b-445f-b2fe-269bd14e799f	\\xdab4177ce4544dc4c951e666abdf08c6b06e0caa4f1564cae5ce9a0f73102292	1d53792f-126e-4ff0-bdf4-bfb1bc29d45b	4eaeea9f-6575-4129-a7d7-3634ccfb61c9	device	2026-03-10 09:04:22+00	2026-03-10 09:04:22+00	\N	1	2026-03-10 09:04:22+00	\N
e15294fb-6f9f-4ca9-b4ba-079f130f183c	\\x846aaa4df62dabea008b2301a3356da2259a791c25ca8de92aaf8714c1e4a4b3	1d53792f-126e-4ff0-bdf4-bfb1bc29d45b	4eaeea9f-6575-4129-a7d7-3634ccfb61c9	device	2026-03-10 09:04:22+00	\N	\N	2	\N	\N
\.


--
-- Data for Name: signin; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.signin (id, token_hash, member_id, device, opened_at, seen_at, ends_at, closed_at, shown_at) FROM stdin;
d5307bdc-69e8-4fd9-bc90-d079b663e93d	\\xd92fb6d0ca2f376106b3f29f860beb4a2fa7266dbf2ea6536f527713e7a16d95	d5f388f7-c981-44dc-aacf-ae69bca7536b	a test	2026-03-03 09:01:00+00	2026-03-03 09:01:00+00	2026-03-03 21:01:00+00	\N	2026-03-03 09:01:00+00
a119440b-b82d-471c-a096-32b2a742eea9	\\xcb57b2db5bb888d93dd59a65690b3bd69f9db50418399fc7e2b2ae3b3c19c637	7dc4dc66-f914-4f2a-b751-97de3014e94b	a test	2026-03-03 09:01:00+00	2026-03-03 09:01:00+00	2026-03-03 21:01:00+00	\N	2026-03-03 09:01:00+00
eee434a2-616e-4d27-bff1-3ef3961a3f08	\\xf13011e80c9cd5b583e9778c4cd4ea2335d6f9bf53eb311583099f56eb9f1df5	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	a test	2026-03-03 09:00:00+00	2026-03-03 09:04:12+00	2026-03-03 21:00:00+00	\N	2026-03-03 09:00:00+00
10999d1e-4542-4845-943c-8fc920e948a5	\\x20e64844d52dfd95ee8d9b760503458e928ec9024fef7476c4af4c9228571bd9	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	a test	2026-03-10 09:04:22+00	2026-03-10 09:04:22+00	2026-03-10 21:04:22+00	\N	2026-03-10 09:04:22+00
\.


--
-- Data for Name: _sqlx_migrations; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public._sqlx_migrations (version, description, installed_on, success, checksum, execution_time) FROM stdin;
1	access	2026-11-29 14:01:06.2189+00	t	\\xee58a96d68f93385e2e3af6d4390382fcafdadee1b3238242b344c60c94a8a4273a40010f4ba1d66f24207ad6aa82776	24926352
2	acts	2026-11-29 14:01:06.244639+00	t	\\x0f1c508e40ba3792e8e2c58fc8d185e11836f9b1edbc9ee5e6fc9a92df9e176255b3f22d035b99a39cacc5519227d601	5789839
3	audit	2026-11-29 14:01:06.250932+00	t	\\x2dcb585f14b456aae15b0d06e9e436a1575c0781ae10803bee3b70623ac409a8962de276d2dcd3a58ef61135aed43953	6776650
4	records	2026-11-29 14:01:06.258153+00	t	\\x9c4ec09ed84e6bff571cb8c4e9522c0282f285dad35065f146b0b53be2e4bac359f321e4dcfa97ba7635f5070af5291c	12050150
5	sessions	2026-11-29 14:01:06.270944+00	t	\\x3013bebd83db0d46eca7767511705f52abb32a744ff204f5bdcb3afb063c1a18464207dd188aa4c42cd742db6aff73a7	25936171
6	standing ratings	2026-11-29 14:01:06.297593+00	t	\\xa43c139ae2899d8e1dc400509333c23cb35febf1c311c95315c815ad8f5786811785868cfde2df96ad491c1e641366e6	1724142
7	preparation	2026-11-29 14:01:06.299689+00	t	\\x4039cb17dce2ac0b1a5c9987dfad7b5d9423a5d32f43e2faaf08827b835146f0e59d31276bd09283dad5a4c90562ba0b	8178033
8	kept once	2026-11-29 14:01:06.308273+00	t	\\xe127621eaa8d28ce25c37396363f914cbc8bf50c61eb3e086ca8f6f279ee945eb2403ea2402783472868733728cbc2f5	12829088
9	assessments	2026-11-29 14:01:06.321598+00	t	\\x5bf0696b51deb48ebfb71a27a4779e2da2efaf85174c4c7b8b0b88f67c867051a235ae6a038426b2cf9714b07de370d5	9288308
10	upkeep	2026-11-29 14:01:06.331296+00	t	\\x3f4a71c2e96ccf63581bbe1594408bc7672b13212d73c6347be4c10e049e853222b107f9a5cd31e2d60284bb9445afb4	3976671
11	known endings	2026-11-29 14:01:06.33572+00	t	\\x0a97a58fbc94f4dd07219030a06389d787aa440be152804e2a07da2545acf733ac66f06c456acba078caf09dba984cf9	2338191
12	second wall	2026-11-29 14:01:06.338458+00	t	\\xf2b839c5ed136915edd9a3b5082421152ff644aa35c788cc4b55ffd93fee695d696210983c475948599bf94dfa4ff539	12448304
13	nobody stranded	2026-11-29 14:01:06.351691+00	t	\\x14f8e04a51d086fbaab1b3f6845afc067d25ffcdd89dc5a3652defe3c568c12141846c15a94cdee63511346587aa0e3e	11677864
14	stays open	2026-11-29 14:01:06.363967+00	t	\\xbce641e43ef5e0a37f25030aa8d2da5628e88f328a4d46878446cf4ef20fa7db69a7cd2d0b7e66f503d1ef5004e8a710	1731373
15	two at once	2026-11-29 14:01:06.36613+00	t	\\x6f2a8632031128d32d81d4dd3eec3afc45deb68c1f16f7e143b018e44e8d9a00c505c026c575835e9587cf861c582fac	20835788
16	how it is written	2026-11-29 14:01:06.38764+00	t	\\x76aae8e7a2d18d6f2f5f65227d5f5a5865bf26fe68b97b1d1cb74bc59f6299d8dbe7689172a944793865827bbd38bd66	2993601
17	course	2026-11-29 14:01:06.39106+00	t	\\xa6254301cb4d15288063fe66b8a02baa70a3925524c246e747736d986981e46e74715411e206af41f1b599e4cef99e12	20550080
18	opening	2026-11-29 14:01:06.412185+00	t	\\xec2d5896e3cabcf441991fedb5b6ef7c462b59ed2e2a4d339766d3daa9067a2d72250bffbda5645b9c0a9d4eafda4d70	20690854
19	plan	2026-11-29 14:01:06.433605+00	t	\\xba1afbb9b61f7e89c65231c839f2edede3bd4c82d1b2ef548d676cd47f34247a72fdf379b5a54a99bb49baa43fefd7d6	9755128
20	safety plan	2026-11-29 14:01:06.44372+00	t	\\x661fdedd23a5f1e2b96fd0538d32407e3d2efe1750893a2174a824ffb12ba9fb7ee7ae190d36377151f0f5816e8029c0	4486625
21	hour	2026-11-29 14:01:06.448652+00	t	\\x21ba20d76eea6e42b7171d17d12dccbfd565d47b2f65d4068699502c8c9cab0159f3aadf5f4acf2f4d3245fd3b2b57d7	23898511
22	events	2026-11-29 14:01:06.473498+00	t	\\x7f252014b7699a5b0c0bdd5c30bd3c4e1798b52b2a2076c152d7e178209a9ec0daae5055c05e17e644f520482901d6f0	10960122
23	safety	2026-11-29 14:01:06.485015+00	t	\\x4893ee25fbe357773f5af9c82ee6c3a70c299c9de4d4f58d0c917e9de811ce4297cee7ba335edfa265c6b7532c9eb4ae	1667488
\.


--
-- Data for Name: adverse_account; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.adverse_account (event_id, client_id, account) FROM stdin;
ae6453d8-b601-430a-ab2a-53fb24594e74	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	\\x01733248aa38ed728fc2ffa462085336bf9acf04b5ff319119a9ea841bc773a4c95849cd592cf28fd031
\.


--
-- Data for Name: adverse_event; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.adverse_event (id, client_id, session_id, number, kind, happened_at, done, replaces, written_by, written_at) FROM stdin;
ae6453d8-b601-430a-ab2a-53fb24594e74	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	\N	1	panic	2026-01-02 09:30:00+00	called	\N	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	2026-03-03 09:01:00+00
\.


--
-- Data for Name: after_check; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.after_check (session_id, client_id, member_id, reason, due_from, due_until) FROM stdin;
a0c02700-752d-420f-9e12-c07cc07d5559	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	too_much	2026-03-03 21:04:22+00	2026-03-05 09:04:22+00
\.


--
-- Data for Name: after_check_try; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.after_check_try (id, session_id, client_id, outcome, entered_by, at, seq) FROM stdin;
2a716da0-f1b5-45bf-b5c7-dda141c8e54c	a0c02700-752d-420f-9e12-c07cc07d5559	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	not_reached	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	2026-03-03 09:04:22+00	38
\.


--
-- Data for Name: audit; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.audit (seq, at, kind, member_id, act, client_id, object_id, previous, hash) FROM stdin;
1	2026-03-03 09:00:00+00	member	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	client.create	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	\N	\\x1049f89a5ef4bff11e67b37b9945096f203ea0c09e92a8bc7dc4a04461f6529f	\\xd65ce1d1f2a0fee6a1e9a417235692e8f90e05d94dd81a28ea71367795de0336
2	2026-03-03 09:00:00+00	member	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	target.create	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	e5eb4c5b-8b1f-40c9-80a5-7c21f21e082a	\\xd65ce1d1f2a0fee6a1e9a417235692e8f90e05d94dd81a28ea71367795de0336	\\xbc2f590ccab25f56dd8a257e3fd689b97dcfc71caf82634405517f0318b1d582
3	2026-03-03 09:01:00+00	member	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	session.open	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	a0c02700-752d-420f-9e12-c07cc07d5559	\\xbc2f590ccab25f56dd8a257e3fd689b97dcfc71caf82634405517f0318b1d582	\\x0172c8c69cda31bb7b7304dc3e5cac3ce491d6eb06e3e536ed0d8f6343949948
4	2026-03-03 09:01:00+00	member	7dc4dc66-f914-4f2a-b751-97de3014e94b	member.invite	\N	\N	\\x0172c8c69cda31bb7b7304dc3e5cac3ce491d6eb06e3e536ed0d8f6343949948	\\xe7d0d07f195fd81b12129795cd4c571b39fc9897a53dfde41db920f3510dfafd
5	2026-03-03 09:01:00+00	member	7dc4dc66-f914-4f2a-b751-97de3014e94b	practice.settings.change	\N	\N	\\xe7d0d07f195fd81b12129795cd4c571b39fc9897a53dfde41db920f3510dfafd	\\x69cb1388d2ddc73f9ac6be3b8fd919f31da6fe8ac7bc16ab146b438fc091042d
6	2026-03-03 09:01:00+00	member	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	preset.create	\N	51f7f317-7849-4f04-a2ae-1e21ea1e66f1	\\x69cb1388d2ddc73f9ac6be3b8fd919f31da6fe8ac7bc16ab146b438fc091042d	\\x6f793c67a9663e863dc578b3c3859580e9a3ae977588712a051f7d9593f4f7bd
7	2026-03-03 09:01:00+00	member	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	preset.create	\N	0f86d9cb-1333-4c90-a68b-b195af56db10	\\x6f793c67a9663e863dc578b3c3859580e9a3ae977588712a051f7d9593f4f7bd	\\xb81082a5099c7a0ba3fded592aac9c90f204a4fe676d2c938eacbcfecdfed75d
8	2026-03-03 09:01:00+00	member	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	preset.put_away	\N	0f86d9cb-1333-4c90-a68b-b195af56db10	\\xb81082a5099c7a0ba3fded592aac9c90f204a4fe676d2c938eacbcfecdfed75d	\\xc1450b087ad0196c21bc8fca684834f7f0f267e1e2618837435ed09f6dabf0cb
9	2026-03-03 09:01:00+00	member	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	client.change	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	\N	\\xc1450b087ad0196c21bc8fca684834f7f0f267e1e2618837435ed09f6dabf0cb	\\x187801955363dc8621299dfcdf73323950a6afd6f424fd014bc82efbc9be247a
10	2026-03-03 09:01:00+00	member	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	comfort.change	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	\N	\\x187801955363dc8621299dfcdf73323950a6afd6f424fd014bc82efbc9be247a	\\x6c02e799040959eecb75dc9c6b75b7365e45a2b716cea726b2af9dc950c11d25
11	2026-03-03 09:01:00+00	member	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	safety_plan.change	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	\N	\\x6c02e799040959eecb75dc9c6b75b7365e45a2b716cea726b2af9dc950c11d25	\\xcd8204f061c6f56cd2899fa0ed2e8abfeacb610a05189f0c7da3c14fcde79798
12	2026-03-03 09:01:00+00	member	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	steadying.change	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	\N	\\xcd8204f061c6f56cd2899fa0ed2e8abfeacb610a05189f0c7da3c14fcde79798	\\xf7d5ba29aef9aeaddfd73c4b3b26677ae71df6f0998ebfcbd4e3d3291c16f1ab
13	2026-03-03 09:01:00+00	member	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	reach.change	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	\N	\\xf7d5ba29aef9aeaddfd73c4b3b26677ae71df6f0998ebfcbd4e3d3291c16f1ab	\\x26bbc5185b44b76eff3c94bebd01416e5bde44111dd59c02fae75a562db48354
14	2026-03-03 09:01:00+00	member	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	resource.create	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	\N	\\x26bbc5185b44b76eff3c94bebd01416e5bde44111dd59c02fae75a562db48354	\\x8c38a9fc774f8d885c4d07eaa53f61d50e5de32f3bcbabef4b83d72bcd991d51
15	2026-03-03 09:01:00+00	member	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	event.create	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	\N	\\x8c38a9fc774f8d885c4d07eaa53f61d50e5de32f3bcbabef4b83d72bcd991d51	\\x27ee6cfd6eb6748cc20963614fb5f8fe2dd1ba7a59de361effaa52cd141cb25c
16	2026-03-03 09:02:00+00	member	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	target.change	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	e5eb4c5b-8b1f-40c9-80a5-7c21f21e082a	\\x27ee6cfd6eb6748cc20963614fb5f8fe2dd1ba7a59de361effaa52cd141cb25c	\\x4ca59af448b52acd2f51ee1a0b149e3241ce17d62def48a106cf86b5cb9e8c52
17	2026-03-03 09:02:00+00	member	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	target.change	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	e5eb4c5b-8b1f-40c9-80a5-7c21f21e082a	\\x4ca59af448b52acd2f51ee1a0b149e3241ce17d62def48a106cf86b5cb9e8c52	\\x2877bf50c0f7689d6b03ab91cdc1ec9237683e03f5bf2ea37b5d7d2454e621db
18	2026-03-03 09:02:00+00	member	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	plan.cluster	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	\N	\\x2877bf50c0f7689d6b03ab91cdc1ec9237683e03f5bf2ea37b5d7d2454e621db	\\x1ab3115b0b224aed65fbe99b814c96aa604d1e57a949894b21ac9d7208daeb13
19	2026-03-03 09:02:00+00	member	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	target.create	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	16a36ba8-1765-44b8-86a6-24a4604740ad	\\x1ab3115b0b224aed65fbe99b814c96aa604d1e57a949894b21ac9d7208daeb13	\\x66613c4b1eb020831e730633b14499d31236a2063b0acfe114d4efe14d747cbf
20	2026-03-03 09:02:00+00	member	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	plan.move	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	\N	\\x66613c4b1eb020831e730633b14499d31236a2063b0acfe114d4efe14d747cbf	\\x9ad90c80b41346cd635127deff99e1b7aea57142ff38bd2173abc2f508860890
21	2026-03-03 09:02:01+00	member	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	entry.keep	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	a0c02700-752d-420f-9e12-c07cc07d5559	\\x9ad90c80b41346cd635127deff99e1b7aea57142ff38bd2173abc2f508860890	\\x08a404a3805192e9d8fc01a8c6353f10bc7be736047ad66a396fcc96c613040a
22	2026-03-03 09:02:32+00	member	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	entry.keep	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	a0c02700-752d-420f-9e12-c07cc07d5559	\\x08a404a3805192e9d8fc01a8c6353f10bc7be736047ad66a396fcc96c613040a	\\x4821a8251bd3b3792cf2e862bb21176b1d185f025aca5e636218352fb5bd403f
23	2026-03-03 09:02:33+00	member	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	entry.keep	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	a0c02700-752d-420f-9e12-c07cc07d5559	\\x4821a8251bd3b3792cf2e862bb21176b1d185f025aca5e636218352fb5bd403f	\\xbddf37c7d94ad23bb0a742c2bf87cf83a85ffff441fb395b07427950f9ee83c7
24	2026-03-03 09:02:34+00	member	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	entry.keep	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	a0c02700-752d-420f-9e12-c07cc07d5559	\\xbddf37c7d94ad23bb0a742c2bf87cf83a85ffff441fb395b07427950f9ee83c7	\\x4104ec2ddcc57f801dc81af3efc5fd50ad461a74c41c18d0510213ecaaab7035
25	2026-03-03 09:02:35+00	member	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	entry.keep	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	a0c02700-752d-420f-9e12-c07cc07d5559	\\x4104ec2ddcc57f801dc81af3efc5fd50ad461a74c41c18d0510213ecaaab7035	\\xe910d53b9e5dbecd6b84cb6939e874c218f327c5fd55dbc69ac5c5cd054ef159
26	2026-03-03 09:03:06+00	member	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	entry.keep	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	a0c02700-752d-420f-9e12-c07cc07d5559	\\xe910d53b9e5dbecd6b84cb6939e874c218f327c5fd55dbc69ac5c5cd054ef159	\\x50caf172b4ac1676bbf61c6910041f6885ea64c7f33e9b76f1cea66b4a63ad40
27	2026-03-03 09:03:07+00	member	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	entry.keep	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	a0c02700-752d-420f-9e12-c07cc07d5559	\\x50caf172b4ac1676bbf61c6910041f6885ea64c7f33e9b76f1cea66b4a63ad40	\\xfa04dfd8231ea70b56079beb79c341dc69d8fb3c64141b4eefd31d95cabb9c96
28	2026-03-03 09:03:38+00	member	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	entry.keep	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	a0c02700-752d-420f-9e12-c07cc07d5559	\\xfa04dfd8231ea70b56079beb79c341dc69d8fb3c64141b4eefd31d95cabb9c96	\\x929f946a1c6983bdf77ccd2eedac230672d0a59acee882009384298fb7bcbc84
29	2026-03-03 09:03:39+00	member	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	entry.keep	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	a0c02700-752d-420f-9e12-c07cc07d5559	\\x929f946a1c6983bdf77ccd2eedac230672d0a59acee882009384298fb7bcbc84	\\x223c9f36ac55b497785490456e235bbb1c57422eaee9542f63227d9b6482761e
30	2026-03-03 09:03:40+00	member	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	entry.keep	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	a0c02700-752d-420f-9e12-c07cc07d5559	\\x223c9f36ac55b497785490456e235bbb1c57422eaee9542f63227d9b6482761e	\\x7d219f10b5788fea4ded2e90c95406770ae96ccbc57fbf1fa14a61f165ad00af
31	2026-03-03 09:03:41+00	member	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	entry.keep	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	a0c02700-752d-420f-9e12-c07cc07d5559	\\x7d219f10b5788fea4ded2e90c95406770ae96ccbc57fbf1fa14a61f165ad00af	\\xaea295ce3e1d8201fbbc35f4c09d7d7b2086a5f35795292f985545c9aaec37b0
32	2026-03-03 09:03:41+00	member	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	target.fact	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	e5eb4c5b-8b1f-40c9-80a5-7c21f21e082a	\\xaea295ce3e1d8201fbbc35f4c09d7d7b2086a5f35795292f985545c9aaec37b0	\\xf99c733d84d32f0af5dc66b4f618d4bb9b4ef2b2870da7cbb03937f52c68bb8d
33	2026-03-03 09:03:41+00	member	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	target.fact	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	e5eb4c5b-8b1f-40c9-80a5-7c21f21e082a	\\xf99c733d84d32f0af5dc66b4f618d4bb9b4ef2b2870da7cbb03937f52c68bb8d	\\x8db22ecdaa0ce3f323bd843cbb8c661dd0f9dd278707cc67d66f7e19dc45b8cf
34	2026-03-03 09:03:41+00	member	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	target.fact	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	e5eb4c5b-8b1f-40c9-80a5-7c21f21e082a	\\x8db22ecdaa0ce3f323bd843cbb8c661dd0f9dd278707cc67d66f7e19dc45b8cf	\\xf8ab47ce92bd68f3a6bc9e72236c0d6afea915fe1592cca66e663f7e5e793d67
35	2026-03-03 09:04:12+00	member	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	entry.keep	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	a0c02700-752d-420f-9e12-c07cc07d5559	\\xf8ab47ce92bd68f3a6bc9e72236c0d6afea915fe1592cca66e663f7e5e793d67	\\x26e3ab88ae666a8d64d284a6f792bcc42828193471a567e758903df2c13c0022
36	2026-03-03 09:04:13+00	member	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	entry.keep	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	a0c02700-752d-420f-9e12-c07cc07d5559	\\x26e3ab88ae666a8d64d284a6f792bcc42828193471a567e758903df2c13c0022	\\xc6df6cfecf880b7b4ad053e68a0444e38f2743ae6c0573a1b086f1a529b34122
37	2026-03-03 09:04:14+00	member	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	entry.keep	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	a0c02700-752d-420f-9e12-c07cc07d5559	\\xc6df6cfecf880b7b4ad053e68a0444e38f2743ae6c0573a1b086f1a529b34122	\\xef2a2def45cfb82c464014413805d3cf6eaad8003bd2d9f8e67e664965d8c3c4
38	2026-03-03 09:04:15+00	member	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	entry.keep	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	a0c02700-752d-420f-9e12-c07cc07d5559	\\xef2a2def45cfb82c464014413805d3cf6eaad8003bd2d9f8e67e664965d8c3c4	\\x3d919648f5c6e772d158737602a37547e9e3e0f8e01ddea1620ad782e0cf3833
39	2026-03-03 09:04:16+00	member	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	entry.keep	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	a0c02700-752d-420f-9e12-c07cc07d5559	\\x3d919648f5c6e772d158737602a37547e9e3e0f8e01ddea1620ad782e0cf3833	\\x5e011ff5b2f45a9561ca5fd4c27c22518b9117586cade0b13eb2ee0a759cae57
40	2026-03-03 09:04:17+00	member	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	entry.keep	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	a0c02700-752d-420f-9e12-c07cc07d5559	\\x5e011ff5b2f45a9561ca5fd4c27c22518b9117586cade0b13eb2ee0a759cae57	\\xb1a180e867d6b258c614afe1dfac4e546f172cbca2591564ffc4aec93a0a9453
41	2026-03-03 09:04:18+00	member	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	entry.keep	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	a0c02700-752d-420f-9e12-c07cc07d5559	\\xb1a180e867d6b258c614afe1dfac4e546f172cbca2591564ffc4aec93a0a9453	\\x615da12c6c38b0a5334512b71e71a162d088c76c5a4f8a4a9cb59dac230a7e16
42	2026-03-03 09:04:19+00	member	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	entry.keep	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	a0c02700-752d-420f-9e12-c07cc07d5559	\\x615da12c6c38b0a5334512b71e71a162d088c76c5a4f8a4a9cb59dac230a7e16	\\x5ccd633ae06393fd45efe484a89fc4c93883ec64235a45eb379a8c3b56748d98
43	2026-03-03 09:04:20+00	member	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	entry.keep	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	a0c02700-752d-420f-9e12-c07cc07d5559	\\x5ccd633ae06393fd45efe484a89fc4c93883ec64235a45eb379a8c3b56748d98	\\xefe367972e23b67d245663fca70b65d671579860e02b319be1b4571c54de5bb0
44	2026-03-03 09:04:21+00	member	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	entry.keep	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	a0c02700-752d-420f-9e12-c07cc07d5559	\\xefe367972e23b67d245663fca70b65d671579860e02b319be1b4571c54de5bb0	\\xfdc976f659838664a744c697e44d2614041f2339fcc43f54e7962949a76b972a
45	2026-03-03 09:04:22+00	member	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	entry.keep	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	a0c02700-752d-420f-9e12-c07cc07d5559	\\xfdc976f659838664a744c697e44d2614041f2339fcc43f54e7962949a76b972a	\\xba94cd82420971cd6213376fe4b3722bafd1e8a2ae887e6d7706b6ab5c22ee7f
46	2026-03-03 09:04:22+00	member	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	session.view	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	a0c02700-752d-420f-9e12-c07cc07d5559	\\xba94cd82420971cd6213376fe4b3722bafd1e8a2ae887e6d7706b6ab5c22ee7f	\\x6cfe4c4e3d48a6c86abdac07dec3cb059aacb7ed80327b8a669a6f50a8dac125
47	2026-03-03 09:04:22+00	member	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	session.draft	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	a0c02700-752d-420f-9e12-c07cc07d5559	\\x6cfe4c4e3d48a6c86abdac07dec3cb059aacb7ed80327b8a669a6f50a8dac125	\\xe17240d002547b8333327270a2026311f9a0c784f2729ca25fac316529521f6e
48	2026-03-03 09:04:22+00	member	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	session.view	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	a0c02700-752d-420f-9e12-c07cc07d5559	\\xe17240d002547b8333327270a2026311f9a0c784f2729ca25fac316529521f6e	\\x36adb67c5266efb64f9dc19cda434fe6ba9546e4881785ed855498d227009274
49	2026-03-03 09:04:22+00	member	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	session.close	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	a0c02700-752d-420f-9e12-c07cc07d5559	\\x36adb67c5266efb64f9dc19cda434fe6ba9546e4881785ed855498d227009274	\\xdeec1d0620354622126e5694ef2ac415b2206f4db00435fea83f02e82a2f8832
50	2026-03-03 09:04:22+00	member	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	session.check	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	a0c02700-752d-420f-9e12-c07cc07d5559	\\xdeec1d0620354622126e5694ef2ac415b2206f4db00435fea83f02e82a2f8832	\\xaf0864c750644bcc4e03b52c157f88b35fccf984f9d1173881103c2edb5af219
51	2026-03-03 09:04:22+00	member	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	session.note.view	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	a0c02700-752d-420f-9e12-c07cc07d5559	\\xaf0864c750644bcc4e03b52c157f88b35fccf984f9d1173881103c2edb5af219	\\x6727402f1d156a9391eef6c490aa0508c723d6176f2fa8efd7bb1d060bfef96c
52	2026-03-03 09:04:22+00	member	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	session.note.save	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	a0c02700-752d-420f-9e12-c07cc07d5559	\\x6727402f1d156a9391eef6c490aa0508c723d6176f2fa8efd7bb1d060bfef96c	\\x732097e5bafb3b96bdf8c0f0db30540a133b047ab44097492e3a8f95c16ad9fe
57	2026-03-10 09:04:22+00	member	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	code.make	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	4eaeea9f-6575-4129-a7d7-3634ccfb61c9	\\x7a48a3f84cd8a0821d814a33a21c9f6aedea271849e07b8ee3b4564807b760f7	\\xf77048893d02b81428177c504f9b653fd8ea1b24b9e06c64cb4c46e4a26032e1
58	2026-03-10 09:04:22+00	visitor	\N	seat.claim	\N	4eaeea9f-6575-4129-a7d7-3634ccfb61c9	\\xf77048893d02b81428177c504f9b653fd8ea1b24b9e06c64cb4c46e4a26032e1	\\x26626957f75ac7a81cd1764f6f22de8ad959aa244fa398ab02aea2458ff035cb
59	2026-03-10 09:04:22+00	member	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	rehearsal.prepare	aec86340-f120-48af-92f5-8e6e46155284	\N	\\x26626957f75ac7a81cd1764f6f22de8ad959aa244fa398ab02aea2458ff035cb	\\xe4f6d68d61a2b32baa839f5c5f3a4ff1330cdc359f0f6e1e5b9945cc7ff30ee4
61	2026-03-10 09:04:22+00	member	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	client.create	75b9484f-affb-4f59-bbbc-31b3026feb38	\N	\\xa2a7e37e4cd543344b4221fd94fcb09acf750c9ac3ccd8744818ceeb97cc484a	\\x4c529d411b890f8ad8fe9d83cbd6dfd94691d84190e2741f0879ead583118a12
62	2026-03-10 09:04:22+00	member	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	client.archive	75b9484f-affb-4f59-bbbc-31b3026feb38	\N	\\x4c529d411b890f8ad8fe9d83cbd6dfd94691d84190e2741f0879ead583118a12	\\x7cd47bd833788b2ae141081040300c55e8e75e5b6822de6d6d099fc8473bfbdf
53	2026-03-10 09:04:22+00	member	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	session.open	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	4eaeea9f-6575-4129-a7d7-3634ccfb61c9	\\x732097e5bafb3b96bdf8c0f0db30540a133b047ab44097492e3a8f95c16ad9fe	\\x8a64503eaa1110894c993f4db1d40fa2d544674ffa403f1fd233504c3f481b10
54	2026-03-10 09:04:22+00	member	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	link.make	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	4eaeea9f-6575-4129-a7d7-3634ccfb61c9	\\x8a64503eaa1110894c993f4db1d40fa2d544674ffa403f1fd233504c3f481b10	\\x1d0523cac59658250b8faaff7d4f0025f87e3eb8ccd52ceac836f10e724f18be
55	2026-03-10 09:04:22+00	visitor	\N	seat.claim	\N	4eaeea9f-6575-4129-a7d7-3634ccfb61c9	\\x1d0523cac59658250b8faaff7d4f0025f87e3eb8ccd52ceac836f10e724f18be	\\x2622cb9038e9073a8c92df974141d767a91d809885c1d59dc851040277647ab7
56	2026-03-10 09:04:22+00	member	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	session.admit	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	4eaeea9f-6575-4129-a7d7-3634ccfb61c9	\\x2622cb9038e9073a8c92df974141d767a91d809885c1d59dc851040277647ab7	\\x7a48a3f84cd8a0821d814a33a21c9f6aedea271849e07b8ee3b4564807b760f7
60	2026-03-10 09:04:22+00	member	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	session.open	aec86340-f120-48af-92f5-8e6e46155284	f0a1903d-f39a-4747-ba4e-97d6c0298427	\\xe4f6d68d61a2b32baa839f5c5f3a4ff1330cdc359f0f6e1e5b9945cc7ff30ee4	\\xa2a7e37e4cd543344b4221fd94fcb09acf750c9ac3ccd8744818ceeb97cc484a
\.


--
-- Data for Name: client; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.client (id, number, opened_on, archived_at, seizures, eye_condition, version, plan_version) FROM stdin;
61f6b241-ab2e-48b6-870c-7e6262e9a9ab	1	2026-03-03	\N	no	no	2	7
aec86340-f120-48af-92f5-8e6e46155284	2	2026-03-10	\N	no	no	1	1
75b9484f-affb-4f59-bbbc-31b3026feb38	3	2026-03-10	2026-03-10 09:04:22+00	yes	not_asked	2	1
\.


--
-- Data for Name: client_details; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.client_details (client_id, name, addressed_as, phone, contact_name, contact_phone, usual_location, version) FROM stdin;
61f6b241-ab2e-48b6-870c-7e6262e9a9ab	\\x019bd114bf69dd15e0c1ba04ba9fb8f48afa0b222f5a5f8a02fe971b0571faca1c7fc4e11ce9a5f376c2f10555dacde580917faa	\\x0112c60eed91742288a76f4d6bfa37ef9eef27ac2a245e74ad9b58fcd18cb659ff0bf1fc53af	\\x015e0a703704829bbcbdd83883f6aac6291279e6fc70e6fa3633924b750e2e263f2a5cc87a677698788a8f	\\x01d2256e3af74177c20ab31fa324628f69ae4f239cf679c5bc352955a125bb02d7d98a8ac854d54243c0064a9855c1	\\x01a975ffc22782f5c7ef6f835eb735a1a5d472eb7922238d246dda8440f75137099cf5d04a1be0f3	\\x01facfcbf4e2c969d1551d5f33ec6d8d13f6032eacc1ab064710a95d0f243db80b5561d2fb6cd5612b653d28fd84de53e7c42dbbb75c156e	2
aec86340-f120-48af-92f5-8e6e46155284	\\x01bfdf5253e5a8c6b6a53ab1b7d0de625b0a49dd57b0215fdc1930cbf0d39da9e333d3951fe8	\\x015b2884e60c960685a5bafa282b3c3d62599d4acc5697809377c65096	\\x0187a8c1ec4da9fa5310ff1a660d620ef9e05899875236ce2f5909e00d	\\x01be3037c8a0ef54ac4afdf870d95bd031af6911d3a5a6c371fc01e728	\\x01e6ad2690385e9f34da1481e3b9a24830e7d3df10e6c7260964b9ce1b	\\x012ce5867e901a4357e3d9ce5812db8ad3aacfd9a6fed24e77e83907e2	1
75b9484f-affb-4f59-bbbc-31b3026feb38	\\x01067cc82b4a8b1f6d6c7c7b1016ce5120575332edb59221b914c07d4b2f00c77ae44aa4a21232687419	\\x01aac396a1ee2a5cfbc0ead09d757ae2025d6ad3723a3672971a4b8582	\\x018f85eca81f7cad26dcc6a0454b45ca811a8e98526971563f0e181379	\\x014235dada7abe83b0c50c008f31305dc9b6b093e60da8c1aec6191f15	\\x01e68ab52cc9a1f6a01d890df29b07a9fd39023cedcc3d5f3ad194dad4	\\x013cb2f0240ab7270b810e4ed27a21c436de9d4ae398974fdf996e13ad	1
\.


--
-- Data for Name: client_key; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.client_key (client_id, key_id, wrapped) FROM stdin;
61f6b241-ab2e-48b6-870c-7e6262e9a9ab	1	\\x0129422ffb7785fca03a0eabdd4dd6a1466207aa52f33e8a1908ec6915465425b00ababd3ea0d38f0ca505c794084f3cd51b6d6bce65cdb98ca63cb1e4
aec86340-f120-48af-92f5-8e6e46155284	1	\\x01abef65b1cdeff8566ca7b1d69c15552203ed2b844b873490c15f45d036c2be01445cc2716797d352183bee35872e007b4f563d3a3c616bf63705d836
75b9484f-affb-4f59-bbbc-31b3026feb38	1	\\x0192d0201643ccef4b0f2dde862d53432726007e2e01f9a453d5203cc00e41ad7532985667436deb3cc2f65b36779bf9e04647571cf0e542dcb651e8c2
\.


--
-- Data for Name: client_reach; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.client_reach (client_id, phone_use, contact_use, help_from_here, tried_on, help_there, written_at, version) FROM stdin;
61f6b241-ab2e-48b6-870c-7e6262e9a9ab	call	message	\\x01717b8991b952962dee75e4630828f1de0b2ae69e6be509628d94edc8765f27a82c26f600003e82003041	2026-03-01	\\x01ed55251f3f1aea3107306343715bec5b35e595f509ba216d5a7f4f4f7bdeee	2026-03-03 09:01:00+00	1
\.


--
-- Data for Name: closing_draft; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.closing_draft (session_id, client_id, typed, written_by, written_at, version) FROM stdin;
a0c02700-752d-420f-9e12-c07cc07d5559	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	\\x01908b9685d962c9dfc757433d020b9ce6b02b0211f53eac2eb1a069ba	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	2026-03-03 09:04:22+00	2
\.


--
-- Data for Name: cluster; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.cluster (id, client_id, number, name, theme, earliest_id, worst_id, version) FROM stdin;
4c899b3d-b21e-4c84-94bf-2566621a1ff2	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	1	\\x01544b0dbc533c89548cd11b3864655602f66d0f0fe61fdc2cf7ffb89e951be2c7b58175713192777d	safety	e5eb4c5b-8b1f-40c9-80a5-7c21f21e082a	\N	2
\.


--
-- Data for Name: comfort; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.comfort (client_id, path, dot, comfort, filled_at, version) FROM stdin;
61f6b241-ab2e-48b6-870c-7e6262e9a9ab	eight	2.5	{"level": 60, "pitch": 400, "sweep": "constant", "timbre": "wood", "colours": "lake", "tone_ms": 90, "vibration": true}	2026-03-03 09:01:00+00	1
\.


--
-- Data for Name: fact; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.fact (id, client_id, session_id, target_id, set_id, kind, code, because, moment, replaces, first_id, entered_by, at, seq) FROM stdin;
b59f2b56-74f5-4e5a-af0e-58525cf30391	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	a0c02700-752d-420f-9e12-c07cc07d5559	e5eb4c5b-8b1f-40c9-80a5-7c21f21e082a	ca9dd03e-c03d-4322-8033-8fbd3ab360b8	mark	same	\N	after_set	\N	\N	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	2026-03-03 09:03:38+00	17
1af21e48-612e-40d3-88a5-eab506dd8540	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	a0c02700-752d-420f-9e12-c07cc07d5559	e5eb4c5b-8b1f-40c9-80a5-7c21f21e082a	ca9dd03e-c03d-4322-8033-8fbd3ab360b8	mark	changing	\N	after_set	b59f2b56-74f5-4e5a-af0e-58525cf30391	b59f2b56-74f5-4e5a-af0e-58525cf30391	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	2026-03-03 09:03:39+00	18
589e54c0-24ae-43c0-b5d5-9a67a30f25a7	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	a0c02700-752d-420f-9e12-c07cc07d5559	e5eb4c5b-8b1f-40c9-80a5-7c21f21e082a	ca9dd03e-c03d-4322-8033-8fbd3ab360b8	saw	glazed	\N	after_set	\N	\N	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	2026-03-03 09:03:40+00	19
c5fae8f7-6772-47f8-b127-253598dd3191	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	a0c02700-752d-420f-9e12-c07cc07d5559	e5eb4c5b-8b1f-40c9-80a5-7c21f21e082a	ca9dd03e-c03d-4322-8033-8fbd3ab360b8	tried	arousal	\N	after_set	\N	\N	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	2026-03-03 09:03:41+00	20
6d53a2ff-34f0-497c-9c76-d867f7797718	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	a0c02700-752d-420f-9e12-c07cc07d5559	e5eb4c5b-8b1f-40c9-80a5-7c21f21e082a	\N	procedure	recent_event	\N	\N	\N	\N	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	2026-03-03 09:03:41+00	21
708843a4-f04a-4b18-99b2-0389b5a95ec8	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	a0c02700-752d-420f-9e12-c07cc07d5559	e5eb4c5b-8b1f-40c9-80a5-7c21f21e082a	\N	scan	felt	\N	\N	\N	\N	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	2026-03-03 09:03:41+00	23
208e2ad6-efb3-4c2a-afff-3be1b0398f9c	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	a0c02700-752d-420f-9e12-c07cc07d5559	e5eb4c5b-8b1f-40c9-80a5-7c21f21e082a	a87363ea-fae8-43ee-b440-5cf0b2bb5c40	too_much	stopped	\N	after_set	\N	\N	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	2026-03-03 09:04:12+00	25
e54189a0-3937-4595-bc92-4c67f707f235	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	a0c02700-752d-420f-9e12-c07cc07d5559	e5eb4c5b-8b1f-40c9-80a5-7c21f21e082a	a87363ea-fae8-43ee-b440-5cf0b2bb5c40	showed	orient	\N	after_set	\N	\N	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	2026-03-03 09:04:13+00	26
d19db3df-335f-4589-8675-3148a6387c0c	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	a0c02700-752d-420f-9e12-c07cc07d5559	e5eb4c5b-8b1f-40c9-80a5-7c21f21e082a	a87363ea-fae8-43ee-b440-5cf0b2bb5c40	belief	another	\N	after_set	\N	\N	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	2026-03-03 09:04:14+00	27
353b8ef7-e293-41d5-a490-762154d03032	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	a0c02700-752d-420f-9e12-c07cc07d5559	e5eb4c5b-8b1f-40c9-80a5-7c21f21e082a	\N	decided	incomplete	\N	\N	\N	\N	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	2026-03-03 09:04:22+00	37
\.


--
-- Data for Name: hour_fact; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.hour_fact (id, client_id, session_id, kind, code, because, again, replaces, entered_by, at, seq) FROM stdin;
8d6ca3ae-7e34-455c-b097-612fdaa0255f	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	a0c02700-752d-420f-9e12-c07cc07d5559	answered	acute	\N	f	\N	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	2026-03-03 09:04:19+00	32
56cde979-36e5-4f58-9d14-2a9e56e5ca07	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	a0c02700-752d-420f-9e12-c07cc07d5559	answered	\N	\N	f	8d6ca3ae-7e34-455c-b097-612fdaa0255f	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	2026-03-03 09:04:20+00	33
67b47c17-880f-4d6d-963a-74396a1de22e	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	a0c02700-752d-420f-9e12-c07cc07d5559	passed	risk	judgement	f	\N	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	2026-03-03 09:04:21+00	34
4cb6b631-6e05-457f-93c9-4fdde9bf9ddf	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	a0c02700-752d-420f-9e12-c07cc07d5559	time	60+10	\N	f	\N	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	2026-03-03 09:04:22+00	35
613124af-7f63-492c-876b-e5958571f5a5	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	4eaeea9f-6575-4129-a7d7-3634ccfb61c9	answered	another_place	\N	f	\N	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	2026-03-10 09:04:22+00	40
565f6983-a9dd-41f0-b6d2-b9199c2003c1	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	4eaeea9f-6575-4129-a7d7-3634ccfb61c9	answered	private	\N	f	\N	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	2026-03-10 09:04:22+00	41
\.


--
-- Data for Name: practice; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.practice (singleton, instance, name, zone, emergency_number, demo, day_order, clock, tells_whom, minutes, reserve, check_from, check_until, stuck_after, places, crisis_words) FROM stdin;
t	b45bea9b-5667-4f47-9da3-1f81888edf38	Practice	UTC	112	f	month_first	12	t	90	15	12	48	3	Fjordgata	The night line of the practice.
\.


--
-- Data for Name: preset; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.preset (id, member_id, name, purpose, eyes, ears, hands, rate, width, cycles, made_at, put_away_at, version) FROM stdin;
b198ec12-e64a-471b-85fa-e857e3bd10c1	\N	Slow	processing	t	f	f	0.8	18	24	2026-11-29 14:01:06.299689+00	\N	1
d6bed721-7097-49d6-8de6-7828d93daad1	\N	Standard	processing	t	f	f	1	18	24	2026-11-29 14:01:06.299689+00	\N	1
97eb286e-d202-4b7b-b5ab-c9ac88607612	\N	Fast	processing	t	f	f	1.2	18	24	2026-11-29 14:01:06.299689+00	\N	1
29f7288d-de7e-4991-ab8e-8a9d86a81fb4	\N	Calm place	calm_place	t	f	f	0.5	18	6	2026-11-29 14:01:06.299689+00	\N	1
51f7f317-7849-4f04-a2ae-1e21ea1e66f1	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	Evening	processing	t	f	f	0.9	16	30	2026-03-03 09:01:00+00	\N	1
0f86d9cb-1333-4c90-a68b-b195af56db10	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	Given up	processing	t	f	f	0.9	16	30	2026-03-03 09:01:00+00	2026-03-03 09:01:00+00	2
\.


--
-- Data for Name: process_note; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.process_note (id, session_id, client_id, set_id, moment, words, replaces, entered_by, at, seq) FROM stdin;
6ba87f58-1a56-4e6d-9fc8-ebb9808db921	a0c02700-752d-420f-9e12-c07cc07d5559	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	771ad20a-06ea-4c77-8b5f-700d49e8508c	after_set	\\x01fe32163c2501d51192bf4b77663f8a386502d502fb1d03877c4772f0dfafaac652f7652f3cc5332a35c749fc1a5466	\N	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	2026-03-03 09:02:32+00	9
c9c9f256-51ab-40de-b641-9056a5d54cb5	a0c02700-752d-420f-9e12-c07cc07d5559	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	771ad20a-06ea-4c77-8b5f-700d49e8508c	after_set	\\x017007d8f25f024968503c1969e92b1943d2956809c9abcc5aa8727b03d81580c9dd3e3415066632cdc74471db2597ae6f3440d136	6ba87f58-1a56-4e6d-9fc8-ebb9808db921	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	2026-03-03 09:02:33+00	10
\.


--
-- Data for Name: rating; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.rating (id, client_id, session_id, target_id, set_id, scale, value, moment, replaces, entered_by, at, seq, first_id, segment, from_client) FROM stdin;
6ed09084-769e-4c66-99bc-6950a845fede	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	\N	e5eb4c5b-8b1f-40c9-80a5-7c21f21e082a	\N	sud	8	assessment	\N	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	2026-03-03 09:00:00+00	1	\N	\N	f
74ec859d-8796-4efa-ab87-2e6c10965b1c	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	\N	e5eb4c5b-8b1f-40c9-80a5-7c21f21e082a	\N	voc	2	assessment	\N	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	2026-03-03 09:00:00+00	2	\N	\N	f
25ca20bf-0bc8-4420-9f3c-8e13adbd3f21	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	a0c02700-752d-420f-9e12-c07cc07d5559	e5eb4c5b-8b1f-40c9-80a5-7c21f21e082a	\N	sud	7	assessment	\N	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	2026-03-03 09:02:00+00	4	\N	\N	f
2c5a5fb1-3f06-452a-802d-4d9bc4147b1b	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	a0c02700-752d-420f-9e12-c07cc07d5559	e5eb4c5b-8b1f-40c9-80a5-7c21f21e082a	\N	voc	3	assessment	\N	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	2026-03-03 09:02:00+00	5	\N	\N	f
39477eef-9923-43dc-aa2f-de2412b0e646	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	a0c02700-752d-420f-9e12-c07cc07d5559	e5eb4c5b-8b1f-40c9-80a5-7c21f21e082a	\N	sud	8	assessment	25ca20bf-0bc8-4420-9f3c-8e13adbd3f21	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	2026-03-03 09:02:00+00	6	25ca20bf-0bc8-4420-9f3c-8e13adbd3f21	\N	f
71dc5d41-d302-4153-a8c1-eff268cfe304	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	a0c02700-752d-420f-9e12-c07cc07d5559	e5eb4c5b-8b1f-40c9-80a5-7c21f21e082a	\N	sud	8	back_at_target	\N	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	2026-03-03 09:02:01+00	7	\N	\N	f
b4e98169-e2d1-4d4c-8841-919b866cde9c	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	a0c02700-752d-420f-9e12-c07cc07d5559	e5eb4c5b-8b1f-40c9-80a5-7c21f21e082a	771ad20a-06ea-4c77-8b5f-700d49e8508c	sud	9	after_set	\N	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	2026-03-03 09:02:34+00	11	\N	\N	f
3153d97c-0478-4ae7-82cd-0fb75727acfb	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	a0c02700-752d-420f-9e12-c07cc07d5559	e5eb4c5b-8b1f-40c9-80a5-7c21f21e082a	771ad20a-06ea-4c77-8b5f-700d49e8508c	sud	6	after_set	b4e98169-e2d1-4d4c-8841-919b866cde9c	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	2026-03-03 09:02:35+00	12	b4e98169-e2d1-4d4c-8841-919b866cde9c	\N	f
2f85173f-4821-46f8-a8fe-c18596ebd82b	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	a0c02700-752d-420f-9e12-c07cc07d5559	e5eb4c5b-8b1f-40c9-80a5-7c21f21e082a	0d212cde-f7aa-4297-a704-62ed3ffb9618	voc	4	installation	\N	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	2026-03-03 09:03:06+00	14	\N	\N	f
3536fd0c-d33d-473c-bc67-63e228861540	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	a0c02700-752d-420f-9e12-c07cc07d5559	e5eb4c5b-8b1f-40c9-80a5-7c21f21e082a	0d212cde-f7aa-4297-a704-62ed3ffb9618	voc	\N	installation	2f85173f-4821-46f8-a8fe-c18596ebd82b	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	2026-03-03 09:03:07+00	15	2f85173f-4821-46f8-a8fe-c18596ebd82b	\N	f
03b0a96f-b943-4ca4-ac6c-67f2b95c8d6b	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	a0c02700-752d-420f-9e12-c07cc07d5559	e5eb4c5b-8b1f-40c9-80a5-7c21f21e082a	\N	sud	3	back_at_target	\N	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	2026-03-03 09:03:41+00	22	\N	1	f
91bdff38-7f0b-44eb-986d-d738719ab372	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	a0c02700-752d-420f-9e12-c07cc07d5559	e5eb4c5b-8b1f-40c9-80a5-7c21f21e082a	a87363ea-fae8-43ee-b440-5cf0b2bb5c40	sud	6	after_set	\N	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	2026-03-03 09:04:18+00	31	\N	\N	t
947b957d-011a-4fa3-96b0-822efac16a50	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	a0c02700-752d-420f-9e12-c07cc07d5559	e5eb4c5b-8b1f-40c9-80a5-7c21f21e082a	\N	sud	5	closing	\N	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	2026-03-03 09:04:22+00	36	\N	\N	f
\.


--
-- Data for Name: reach_step; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.reach_step (id, client_id, session_id, step, replaces, entered_by, at, seq) FROM stdin;
60b754a6-3ce2-4cc5-9f6b-e88b37e1434c	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	a0c02700-752d-420f-9e12-c07cc07d5559	no_answer	\N	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	2026-03-03 09:04:15+00	28
\.


--
-- Data for Name: resource; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.resource (id, client_id, number, cue, image, body_feeling, helped, on_offer, found_at, version) FROM stdin;
34839248-0173-4b7e-83ec-2e6cfb0c889e	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	1	\\x01587e77743a4ab83e6470b6877d1c12c9b4f02f7897a017bc99f3bf900c8060a9	\\x0100346837c5ab90b7f985fccfc6ffaac3f280ffc3f095b5295d06b702825a836954529ad40be0333a00d7d9	\\x01bf7b622a0313fc1ea2b3f1f45348bbad4d2333a4e2e80e6df8dbab6a	yes	t	2026-03-03 09:01:00+00	1
\.


--
-- Data for Name: safety_plan; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.safety_plan (client_id, signs, helps, people, places, professionals, surroundings, review_on, written_at, version) FROM stdin;
61f6b241-ab2e-48b6-870c-7e6262e9a9ab	\\x017a73d474222b0af7582695cc641bcaf8c18f0d82aad33c38b9cc6ad39ad3aff9c424aa1e52f8	\\x015440fa5b14c78d278a788c4ebad9f218b835ab0bd0919fccb41b4ccc28d5a4a8e8b7c14dc974	\\x01a2697dfa1502327b8a2b7dc6bd28dedaa4b0ee1afead41e53e3ebb09	\\x010ae185279803ed5d43d2d06fd2e43ceb47c546b81ed0009f5ea1c9ae	\\x0183984906692e29db268db7bbc65b9b02f2a91e1f13ea1e5919f5d150e6c4c7680c1834be3f4e5581a3a38a194ee8c75aa859	\\x01c9de78df27d5f4c1ed8f5ed065265d4f12216c00ba0cb67f20afc508	\N	2026-03-03 09:01:00+00	1
\.


--
-- Data for Name: session; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.session (id, client_id, member_id, target_id, number, zone, opened_at, admitted_at, ended_at, closing, room_epoch, room_holder, version, seq, over_at) FROM stdin;
a0c02700-752d-420f-9e12-c07cc07d5559	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	e5eb4c5b-8b1f-40c9-80a5-7c21f21e082a	1	UTC	2026-03-03 09:01:00+00	\N	2026-03-03 09:04:22+00	incomplete	4	84143451-01be-4ee5-9f56-211561ac8f79	2	3	\N
4eaeea9f-6575-4129-a7d7-3634ccfb61c9	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	e5eb4c5b-8b1f-40c9-80a5-7c21f21e082a	2	UTC	2026-03-10 09:04:22+00	2026-03-10 09:04:22+00	\N	\N	0	\N	1	39	\N
f0a1903d-f39a-4747-ba4e-97d6c0298427	aec86340-f120-48af-92f5-8e6e46155284	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	\N	1	UTC	2026-03-10 09:04:22+00	\N	\N	\N	0	\N	1	42	\N
\.


--
-- Data for Name: session_moment; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.session_moment (id, session_id, client_id, kind, at, once) FROM stdin;
1	4eaeea9f-6575-4129-a7d7-3634ccfb61c9	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	admitted	2026-03-10 09:04:22+00	5119cbc7-7a8b-445f-b2fe-269bd14e799f
\.


--
-- Data for Name: session_words; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.session_words (session_id, client_id, location, call_back, resource, leaving_state, companion, next_contact, client_words, note, version, written_by, written_at) FROM stdin;
a0c02700-752d-420f-9e12-c07cc07d5559	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	\\x010ff9c47a56e5f8de52503b69790ac5729342b2377ad494421d4359c7	\\x015748414a5e58d443b0ea524fd387db7e79c7ccf981aebfcfdb9ad525	\\x016baf792ef2f301eb820b9568f33ad4fed86983f33a944f566b3f57e3	\\x01b1777fe978ceb8617d1faf0e6f927c5041f5a19d975319499d7c3f6b	\\x015b28679fc76c7cb899c9c6395749c7f52414ad400093b6c25b280759	\\x0182f03ff4e7537601a21957e8907374620e8abf23749e2ce5a9175817	\\x01f7bdf9be9e4d322fe3947ebc67e1adbf2e7af82be8481be78aaeb072	\\x0190a81a8df449f94e116cb7b5f22080f97af303cc44532191cf8f6362	1	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	2026-03-03 09:01:00+00
a0c02700-752d-420f-9e12-c07cc07d5559	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	\\x012654bccaa6542e76b5648c9ec8df84a7d0850fe32c2104cb0997f10c	\\x01ab16efb0de300f1c036867cc57223282483b43d912bca40bd9a9a5e3	\\x01e89326aac4125f52c6e842d561a217672c708e5a8d25dd18a80202880669c9868956ebfb1fcd6d9d51122a651e515b4b8d3e60fc9028e5b8	\\x01a025036d1feb1b5a1444479bbdeebe138703ca9870d085d4e40a38729aca6fbdfbf5efd9d3aedb24011d9753dab919544fccccc3e7a05dbcc1b4d7b344c55af907a6d3d6a8d9ae4f13c151	\\x01af54dd53f2f0c6fb637700b63eb8839f75142aa637b5b11b95bfca1a6481663cf684b7c40ebe35	\\x01cf9e7227fedfcda5f090b530564fc8ca602cdaddeee1cb8feb635506b1c33792ea478884176810a47a9400	\\x01cc89ada7f054eaed18e11cd008bbf4d191acea3c9e4d06eeeeb92d43b45991ca1b8a0db8cc7d9753ce	\\x01b89df9b093b88d7a69d7f3c9a09a7200b952206f5b358268293c95795f9416184a7c8eff10b009fdc528203e001091ac17	2	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	2026-03-03 09:04:22+00
a0c02700-752d-420f-9e12-c07cc07d5559	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	\\x01e4cb93d6cfad5a5ded3a4e189175871973031589e4dfea5d67fe0f40	\\x01090937c2521e8aef55c87916fbfcbd7386b7f9970b4ecb2a012beb38	\\x01c24107717cd27cb635ca984a3226cfeff4409fc9d7925aeb3bbc53d9924e5281323dbd05c0efebd15d057c428eba42fdd391b77b644c407e	\\x01851f9d904fe701c90c4d77103160f4bfddff4c3914a5d287aa8b5bf8ad8b9a36cbc1567705b2aacb08809580da63214129332c485dd319c5ec4879e600f064e69eb0e2d0833c25576d455d	\\x0131d92c76ec63c5117f721822c54a823f2ca310650bfa2dbe579ee5591d6989d1fe121bf7f411bd	\\x0193cf3671c9d4b942ade0773f191581d5e463a813b559ba229e7a70113e6907d15bd14e333242fba3b9d2e6	\\x01d7bc759573e69d3f01e8ca673a87d5392be00c9194bcf87267455e24933d3d08f2fc71a993a60a8992	\\x01528df538d0ab6e7c716dcc27e85dd9393cb4d72c5f9dd72ccb265aafc786e7f07b16cdb8aee8e1a6e2b0a5612914ea642d9b975b4812c6dc24a2cc3c79aee18357c2cd4465e88a	3	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	2026-03-03 09:04:22+00
4eaeea9f-6575-4129-a7d7-3634ccfb61c9	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	\\x01293d8032474d9d9a9dba40bb82fe6fa16442fccbcdfddcc137db7b5f	\\x01ca4df4ad62884febf9196454cd76f52128150d63cb5b05444582dfdb	\\x0102fd48860634996d994f1f334d1ad0ee08141dc407ebb544468b55cc	\\x01ce83c5630388b0ea8c13862276fd4e02dc247c069595c6601f5edd37	\\x01159f20985aacdd87531711e562290f7679f362191e49fae87d331800	\\x011ba8b56e90ec3b903fc58706956315790702a364343057da2ff6fe30	\\x0114f1a42724c67a2fbc76d90212b5bc4f7d89a86869a0d0078cdf16e5	\\x01d200978bc54e55fd2ea9af7adfc3d70261f9407650f8f19e218be7f0	1	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	2026-03-10 09:04:22+00
4eaeea9f-6575-4129-a7d7-3634ccfb61c9	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	\\x01142f2d9ddfd5ed16b8855cc24d971b8cb32668589d6f41369386b7f3412cb870a40a304f286e0e96	\\x0141644d69b26152840d5aceaf7bcd27773816a7b15b11f92587bd695faa6ac2d2ebdfdd0a5aaf50d9f5c4	\\x0176ac4bc9e33ca2b4aa9aaddfcb5411de8e08079644416305f79fb14b	\\x01c8ecab573015d92ea8c7192d1858e2f340a1d97ec2007bf90fd9fa8d	\\x01a958b0b507d611ef2f3bad5f8cf6dc2cbdfdcf9f259bd6ca1e7d5e59	\\x018a240afa9b874178fb47d5e445a0ec5b5f36fbbda29a2e3da55c4a93	\\x011a737979a4f77f75f79027a4815644c2d669857fdcd859a38141ae37	\\x013e49619cfd4b369b865c8578c7be7b11d0ae22a32b57b27c1febbbed	2	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	2026-03-10 09:04:22+00
f0a1903d-f39a-4747-ba4e-97d6c0298427	aec86340-f120-48af-92f5-8e6e46155284	\\x01e043c64d246e0f5ebb187eac866c7492a2e4ca86dbe770e1c9bf4c8e	\\x01276bc395bfdb32a722a700a09131a8d001d11cc7f0563a71d03a6b6c	\\x018305f6ed3df38c9cc6509e3fdfa3a4bb1fa902db09777e3225d7797a	\\x01cb5d7452d45359c61b04138f14b7af77addb0ab9e53e95b82451ad3b	\\x01ee8928adc0d1e74027557b1ab9fb4ba002f1cf96ad51f20bbba19f84	\\x017e6321e408d364c9f6c367a1cc98a38e6eea4ddc967c7d2e20304fe7	\\x0137453a339b88ce9663e9244f5a495a540c73239b4f70e5fc6bdef4e7	\\x01ac2a6cbea03f5db613874a67aefb677618775e06d74f472b3ee41d6a	1	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	2026-03-10 09:04:22+00
\.


--
-- Data for Name: set_ending; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.set_ending (set_id, session_id, client_id, ending, at_ms, recorded_at, witness) FROM stdin;
771ad20a-06ea-4c77-8b5f-700d49e8508c	a0c02700-752d-420f-9e12-c07cc07d5559	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	done	26500	2026-03-03 09:02:27.5+00	room
0d212cde-f7aa-4297-a704-62ed3ffb9618	a0c02700-752d-420f-9e12-c07cc07d5559	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	stopped_by_client	26500	2026-03-03 09:03:01.5+00	room
ca9dd03e-c03d-4322-8033-8fbd3ab360b8	a0c02700-752d-420f-9e12-c07cc07d5559	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	stopped_by_clinician	26500	2026-03-03 09:03:33.5+00	room
a87363ea-fae8-43ee-b440-5cf0b2bb5c40	a0c02700-752d-420f-9e12-c07cc07d5559	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	unknown	26500	2026-03-03 09:04:07.5+00	room
\.


--
-- Data for Name: set_evidence; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.set_evidence (set_id, seq, session_id, client_id, kind, at_ms, phase, width, frames, longest_gap, ending, recorded_at) FROM stdin;
771ad20a-06ea-4c77-8b5f-700d49e8508c	3	a0c02700-752d-420f-9e12-c07cc07d5559	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	rested	26500	24.5	\N	\N	\N	done	2026-03-03 09:02:27.5+00
771ad20a-06ea-4c77-8b5f-700d49e8508c	2	a0c02700-752d-420f-9e12-c07cc07d5559	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	second	8000	2	\N	52	84	\N	2026-03-03 09:02:27.5+00
771ad20a-06ea-4c77-8b5f-700d49e8508c	1	a0c02700-752d-420f-9e12-c07cc07d5559	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	second	7000	1	\N	60	17	\N	2026-03-03 09:02:27.5+00
771ad20a-06ea-4c77-8b5f-700d49e8508c	0	a0c02700-752d-420f-9e12-c07cc07d5559	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	shown	6000	\N	18	\N	\N	\N	2026-03-03 09:02:27.5+00
ca9dd03e-c03d-4322-8033-8fbd3ab360b8	3	a0c02700-752d-420f-9e12-c07cc07d5559	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	rested	26500	11	\N	\N	\N	stopped_by_clinician	2026-03-03 09:03:33.5+00
ca9dd03e-c03d-4322-8033-8fbd3ab360b8	2	a0c02700-752d-420f-9e12-c07cc07d5559	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	second	8000	2	\N	52	84	\N	2026-03-03 09:03:33.5+00
ca9dd03e-c03d-4322-8033-8fbd3ab360b8	1	a0c02700-752d-420f-9e12-c07cc07d5559	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	second	7000	1	\N	60	17	\N	2026-03-03 09:03:33.5+00
ca9dd03e-c03d-4322-8033-8fbd3ab360b8	0	a0c02700-752d-420f-9e12-c07cc07d5559	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	shown	6000	\N	18	\N	\N	\N	2026-03-03 09:03:33.5+00
\.


--
-- Data for Name: set_order; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.set_order (set_id, seq, session_id, client_id, cause, at_ms, plan, timeline, recorded_at) FROM stdin;
771ad20a-06ea-4c77-8b5f-700d49e8508c	0	a0c02700-752d-420f-9e12-c07cc07d5559	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	started	5000	{"dot": 1.5, "path": "across", "rate": 1.0, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "purpose": "processing", "channels": {"ears": false, "eyes": true, "hands": false}}	{"segments": []}	2026-03-03 09:02:06+00
771ad20a-06ea-4c77-8b5f-700d49e8508c	1	a0c02700-752d-420f-9e12-c07cc07d5559	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	rate	11500	{"dot": 1.5, "path": "across", "rate": 1.2, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "purpose": "processing", "channels": {"ears": false, "eyes": true, "hands": false}}	{"segments": []}	2026-03-03 09:02:12.5+00
0d212cde-f7aa-4297-a704-62ed3ffb9618	0	a0c02700-752d-420f-9e12-c07cc07d5559	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	started	5000	{"dot": 1.5, "path": "across", "rate": 1.0, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "purpose": "processing", "channels": {"ears": false, "eyes": true, "hands": false}}	{"segments": []}	2026-03-03 09:02:40+00
0d212cde-f7aa-4297-a704-62ed3ffb9618	1	a0c02700-752d-420f-9e12-c07cc07d5559	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	rate	11500	{"dot": 1.5, "path": "across", "rate": 1.2, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "purpose": "processing", "channels": {"ears": false, "eyes": true, "hands": false}}	{"segments": []}	2026-03-03 09:02:46.5+00
ca9dd03e-c03d-4322-8033-8fbd3ab360b8	0	a0c02700-752d-420f-9e12-c07cc07d5559	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	started	5000	{"dot": 1.5, "path": "across", "rate": 1.0, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "purpose": "processing", "channels": {"ears": false, "eyes": true, "hands": false}}	{"segments": []}	2026-03-03 09:03:12+00
ca9dd03e-c03d-4322-8033-8fbd3ab360b8	1	a0c02700-752d-420f-9e12-c07cc07d5559	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	rate	11500	{"dot": 1.5, "path": "across", "rate": 1.2, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "purpose": "processing", "channels": {"ears": false, "eyes": true, "hands": false}}	{"segments": []}	2026-03-03 09:03:18.5+00
a87363ea-fae8-43ee-b440-5cf0b2bb5c40	0	a0c02700-752d-420f-9e12-c07cc07d5559	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	started	5000	{"dot": 1.5, "path": "across", "rate": 1.0, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "purpose": "processing", "channels": {"ears": false, "eyes": true, "hands": false}}	{"segments": []}	2026-03-03 09:03:46+00
a87363ea-fae8-43ee-b440-5cf0b2bb5c40	1	a0c02700-752d-420f-9e12-c07cc07d5559	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	rate	11500	{"dot": 1.5, "path": "across", "rate": 1.2, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "purpose": "processing", "channels": {"ears": false, "eyes": true, "hands": false}}	{"segments": []}	2026-03-03 09:03:52.5+00
\.


--
-- Data for Name: steadying; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.steadying (client_id, signs, way_back, first_words, written_at, version) FROM stdin;
61f6b241-ab2e-48b6-870c-7e6262e9a9ab	\\x01c32f8e31eaf2d26fb9696febf27d12bb8aa98478613d6c76e3c443603237abca27b37079aa0509bf43	\\x010e2a0daa61a4e40f3095f02e32e6bb754d3840b2796488371de77dffcf04f3d5ff4ee7307edf75dda5d2ba520d2a6118f302	\\x01eb602941653493fb3e22d98467bd970ca24f9690bc22f30711458939	2026-03-03 09:01:00+00	1
\.


--
-- Data for Name: stimulus_set; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.stimulus_set (id, session_id, client_id, target_id, number, epoch, plan, recorded_at, seq) FROM stdin;
771ad20a-06ea-4c77-8b5f-700d49e8508c	a0c02700-752d-420f-9e12-c07cc07d5559	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	e5eb4c5b-8b1f-40c9-80a5-7c21f21e082a	1	1	{"dot": 1.5, "path": "across", "rate": 1.0, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "purpose": "processing", "channels": {"ears": false, "eyes": true, "hands": false}}	2026-03-03 09:02:06+00	8
0d212cde-f7aa-4297-a704-62ed3ffb9618	a0c02700-752d-420f-9e12-c07cc07d5559	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	e5eb4c5b-8b1f-40c9-80a5-7c21f21e082a	2	2	{"dot": 1.5, "path": "across", "rate": 1.0, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "purpose": "processing", "channels": {"ears": false, "eyes": true, "hands": false}}	2026-03-03 09:02:40+00	13
ca9dd03e-c03d-4322-8033-8fbd3ab360b8	a0c02700-752d-420f-9e12-c07cc07d5559	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	e5eb4c5b-8b1f-40c9-80a5-7c21f21e082a	3	3	{"dot": 1.5, "path": "across", "rate": 1.0, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "purpose": "processing", "channels": {"ears": false, "eyes": true, "hands": false}}	2026-03-03 09:03:12+00	16
a87363ea-fae8-43ee-b440-5cf0b2bb5c40	a0c02700-752d-420f-9e12-c07cc07d5559	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	e5eb4c5b-8b1f-40c9-80a5-7c21f21e082a	4	4	{"dot": 1.5, "path": "across", "rate": 1.0, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "purpose": "processing", "channels": {"ears": false, "eyes": true, "hands": false}}	2026-03-03 09:03:46+00	24
\.


--
-- Data for Name: target; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.target (id, client_id, number, prong, opened_at, archived_at, version) FROM stdin;
e5eb4c5b-8b1f-40c9-80a5-7c21f21e082a	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	1	past	2026-03-03 09:00:00+00	\N	3
16a36ba8-1765-44b8-86a6-24a4604740ad	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	2	present	2026-03-03 09:02:00+00	\N	1
\.


--
-- Data for Name: target_course; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.target_course (target_id, client_id, rules, procedure, state, held, because, unfounded, version) FROM stdin;
16a36ba8-1765-44b8-86a6-24a4604740ad	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	2	standard	planned	\N	\N	f	1
e5eb4c5b-8b1f-40c9-80a5-7c21f21e082a	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	2	recent_event	incomplete	\N	\N	f	4
\.


--
-- Data for Name: target_plan; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.target_plan (target_id, client_id, place, age, year, cluster_id, parent_id) FROM stdin;
e5eb4c5b-8b1f-40c9-80a5-7c21f21e082a	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	2	9	1998	4c899b3d-b21e-4c84-94bf-2566621a1ff2	\N
16a36ba8-1765-44b8-86a6-24a4604740ad	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	1	\N	\N	4c899b3d-b21e-4c84-94bf-2566621a1ff2	e5eb4c5b-8b1f-40c9-80a5-7c21f21e082a
\.


--
-- Data for Name: target_words; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.target_words (target_id, client_id, label, picture, negative_belief, positive_belief, emotions, body_location, version) FROM stdin;
e5eb4c5b-8b1f-40c9-80a5-7c21f21e082a	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	\\x015c9935cbf66b91b2534234381d4003b1ad432294a1851a70b96a0e198595ba0f82a0e27d4bbb25676a55f965	\\x01f394b8012928a951bf0faea3e2187c3befbe784c8da188d95bcfbd01dfb5b71d4ddc2c7c46bbbc2832ddf0f3389149ae2216d932	\\x018b9a75d2e3c8c08fd9fa7fd957a66207b358ab219e9b2742d062c7d4ac0f096f5f5011d2f5554b7434deeed73db7764a4e721722	\\x0189fb73c05f67ef9e37767dae0978d5ecea37f6f4b3e5200f4260d0e0098f704081fbf4d779c1e0eae7d387d35f844d2be76891	\\x01d2535648cc87177480d0d87f409a4669fab8a8b9ea7738a001bbae8724b8c15f49d6ef00b0687533ed6c3b	\\x01ffeb449897840983a0d995a00da226f552eb4fdf890b53255cb1b4eea5db5ca7e7bb73fb8235761f6465ccb949	3
16a36ba8-1765-44b8-86a6-24a4604740ad	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	\\x0193a333dec0302e79891e1f1a39c156a4b46080296e547036cbd603c2b47f2c1c4bffc92611f80c5a	\\x0187f8c574af62465ecdb2c6b124b1653dbd0e35bb114f984e85a37dc6	\\x01c8574eb6a6e43d05f3da041b8049ec70a49ca6576376b05ebed0b0f8	\\x01567e347868add4e871919af9b908a838a8cbd2d7d7ed498d03e3cf67	\\x01e4badfd9fc4015f6578e611ca26d86342c1be560f060087ee3aff75b	\\x015d908eb6bd7db834e03004ee9efa5c16b30ed279b65c9dbf7157e7d6	1
\.


--
-- Data for Name: unmeasured; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.unmeasured (id, client_id, session_id, target_id, way, replaces, entered_by, at, seq) FROM stdin;
1f4996b1-2b9b-4e00-8713-3b1507e19d01	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	a0c02700-752d-420f-9e12-c07cc07d5559	e5eb4c5b-8b1f-40c9-80a5-7c21f21e082a	own_tapping	\N	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	2026-03-03 09:04:16+00	29
2bea2a57-4ecb-4720-92a7-dee7dc0d42f5	61f6b241-ab2e-48b6-870c-7e6262e9a9ab	a0c02700-752d-420f-9e12-c07cc07d5559	e5eb4c5b-8b1f-40c9-80a5-7c21f21e082a	\N	1f4996b1-2b9b-4e00-8713-3b1507e19d01	286c1a40-c6c0-4e67-b746-bc61c2f9fdb1	2026-03-03 09:04:17+00	30
\.


--
-- Name: seat_asked_no_seq; Type: SEQUENCE SET; Schema: access; Owner: leeward_owner
--

SELECT pg_catalog.setval('access.seat_asked_no_seq', 2, true);


--
-- Name: client_number_seq; Type: SEQUENCE SET; Schema: public; Owner: leeward_owner
--

SELECT pg_catalog.setval('public.client_number_seq', 3, true);


--
-- Name: kept_order; Type: SEQUENCE SET; Schema: public; Owner: leeward_owner
--

SELECT pg_catalog.setval('public.kept_order', 42, true);


--
-- Name: session_moment_id_seq; Type: SEQUENCE SET; Schema: public; Owner: leeward_owner
--

SELECT pg_catalog.setval('public.session_moment_id_seq', 1, true);


--
-- Name: audit_act audit_act_pkey; Type: CONSTRAINT; Schema: access; Owner: leeward_owner
--

ALTER TABLE ONLY access.audit_act
    ADD CONSTRAINT audit_act_pkey PRIMARY KEY (kind, act);


--
-- Name: audit_head audit_head_pkey; Type: CONSTRAINT; Schema: access; Owner: leeward_owner
--

ALTER TABLE ONLY access.audit_head
    ADD CONSTRAINT audit_head_pkey PRIMARY KEY (singleton);


--
-- Name: care_link care_link_pkey; Type: CONSTRAINT; Schema: access; Owner: leeward_owner
--

ALTER TABLE ONLY access.care_link
    ADD CONSTRAINT care_link_pkey PRIMARY KEY (id);


--
-- Name: ceremony ceremony_pkey; Type: CONSTRAINT; Schema: access; Owner: leeward_owner
--

ALTER TABLE ONLY access.ceremony
    ADD CONSTRAINT ceremony_pkey PRIMARY KEY (token_hash);


--
-- Name: clock clock_pkey; Type: CONSTRAINT; Schema: access; Owner: leeward_owner
--

ALTER TABLE ONLY access.clock
    ADD CONSTRAINT clock_pkey PRIMARY KEY (singleton);


--
-- Name: gate gate_pkey; Type: CONSTRAINT; Schema: access; Owner: leeward_owner
--

ALTER TABLE ONLY access.gate
    ADD CONSTRAINT gate_pkey PRIMARY KEY (session_id);


--
-- Name: invitation invitation_pkey; Type: CONSTRAINT; Schema: access; Owner: leeward_owner
--

ALTER TABLE ONLY access.invitation
    ADD CONSTRAINT invitation_pkey PRIMARY KEY (token_hash);


--
-- Name: join_link join_link_pkey; Type: CONSTRAINT; Schema: access; Owner: leeward_owner
--

ALTER TABLE ONLY access.join_link
    ADD CONSTRAINT join_link_pkey PRIMARY KEY (id);


--
-- Name: join_link join_link_token_hash_key; Type: CONSTRAINT; Schema: access; Owner: leeward_owner
--

ALTER TABLE ONLY access.join_link
    ADD CONSTRAINT join_link_token_hash_key UNIQUE (token_hash);


--
-- Name: key_check key_check_pkey; Type: CONSTRAINT; Schema: access; Owner: leeward_owner
--

ALTER TABLE ONLY access.key_check
    ADD CONSTRAINT key_check_pkey PRIMARY KEY (key_id);


--
-- Name: member member_pkey; Type: CONSTRAINT; Schema: access; Owner: leeward_owner
--

ALTER TABLE ONLY access.member
    ADD CONSTRAINT member_pkey PRIMARY KEY (id);


--
-- Name: news news_pkey; Type: CONSTRAINT; Schema: access; Owner: leeward_owner
--

ALTER TABLE ONLY access.news
    ADD CONSTRAINT news_pkey PRIMARY KEY (id);


--
-- Name: passkey passkey_credential_id_key; Type: CONSTRAINT; Schema: access; Owner: leeward_owner
--

ALTER TABLE ONLY access.passkey
    ADD CONSTRAINT passkey_credential_id_key UNIQUE (credential_id);


--
-- Name: passkey passkey_pkey; Type: CONSTRAINT; Schema: access; Owner: leeward_owner
--

ALTER TABLE ONLY access.passkey
    ADD CONSTRAINT passkey_pkey PRIMARY KEY (id);


--
-- Name: refused_look refused_look_pkey; Type: CONSTRAINT; Schema: access; Owner: leeward_owner
--

ALTER TABLE ONLY access.refused_look
    ADD CONSTRAINT refused_look_pkey PRIMARY KEY (signin_id, hour);


--
-- Name: rehearsal rehearsal_client_id_key; Type: CONSTRAINT; Schema: access; Owner: leeward_owner
--

ALTER TABLE ONLY access.rehearsal
    ADD CONSTRAINT rehearsal_client_id_key UNIQUE (client_id);


--
-- Name: rehearsal rehearsal_pkey; Type: CONSTRAINT; Schema: access; Owner: leeward_owner
--

ALTER TABLE ONLY access.rehearsal
    ADD CONSTRAINT rehearsal_pkey PRIMARY KEY (member_id);


--
-- Name: replacement replacement_pkey; Type: CONSTRAINT; Schema: access; Owner: leeward_owner
--

ALTER TABLE ONLY access.replacement
    ADD CONSTRAINT replacement_pkey PRIMARY KEY (id);


--
-- Name: request_key request_key_pkey; Type: CONSTRAINT; Schema: access; Owner: leeward_owner
--

ALTER TABLE ONLY access.request_key
    ADD CONSTRAINT request_key_pkey PRIMARY KEY (member_id, key);


--
-- Name: room_token room_token_pkey; Type: CONSTRAINT; Schema: access; Owner: leeward_owner
--

ALTER TABLE ONLY access.room_token
    ADD CONSTRAINT room_token_pkey PRIMARY KEY (token_hash);


--
-- Name: seat seat_pkey; Type: CONSTRAINT; Schema: access; Owner: leeward_owner
--

ALTER TABLE ONLY access.seat
    ADD CONSTRAINT seat_pkey PRIMARY KEY (id);


--
-- Name: seat seat_token_hash_key; Type: CONSTRAINT; Schema: access; Owner: leeward_owner
--

ALTER TABLE ONLY access.seat
    ADD CONSTRAINT seat_token_hash_key UNIQUE (token_hash);


--
-- Name: signin signin_pkey; Type: CONSTRAINT; Schema: access; Owner: leeward_owner
--

ALTER TABLE ONLY access.signin
    ADD CONSTRAINT signin_pkey PRIMARY KEY (id);


--
-- Name: signin signin_token_hash_key; Type: CONSTRAINT; Schema: access; Owner: leeward_owner
--

ALTER TABLE ONLY access.signin
    ADD CONSTRAINT signin_token_hash_key UNIQUE (token_hash);


--
-- Name: _sqlx_migrations _sqlx_migrations_pkey; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public._sqlx_migrations
    ADD CONSTRAINT _sqlx_migrations_pkey PRIMARY KEY (version);


--
-- Name: adverse_account adverse_account_pkey; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.adverse_account
    ADD CONSTRAINT adverse_account_pkey PRIMARY KEY (event_id);


--
-- Name: adverse_event adverse_event_client_id_number_key; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.adverse_event
    ADD CONSTRAINT adverse_event_client_id_number_key UNIQUE (client_id, number);


--
-- Name: adverse_event adverse_event_id_client_id_key; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.adverse_event
    ADD CONSTRAINT adverse_event_id_client_id_key UNIQUE (id, client_id);


--
-- Name: adverse_event adverse_event_pkey; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.adverse_event
    ADD CONSTRAINT adverse_event_pkey PRIMARY KEY (id);


--
-- Name: adverse_event adverse_event_replaces_key; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.adverse_event
    ADD CONSTRAINT adverse_event_replaces_key UNIQUE (replaces);


--
-- Name: after_check after_check_pkey; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.after_check
    ADD CONSTRAINT after_check_pkey PRIMARY KEY (session_id);


--
-- Name: after_check after_check_session_id_client_id_key; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.after_check
    ADD CONSTRAINT after_check_session_id_client_id_key UNIQUE (session_id, client_id);


--
-- Name: after_check_try after_check_try_pkey; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.after_check_try
    ADD CONSTRAINT after_check_try_pkey PRIMARY KEY (id);


--
-- Name: audit audit_pkey; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.audit
    ADD CONSTRAINT audit_pkey PRIMARY KEY (seq);


--
-- Name: client_details client_details_pkey; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.client_details
    ADD CONSTRAINT client_details_pkey PRIMARY KEY (client_id);


--
-- Name: client_key client_key_pkey; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.client_key
    ADD CONSTRAINT client_key_pkey PRIMARY KEY (client_id);


--
-- Name: client client_pkey; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.client
    ADD CONSTRAINT client_pkey PRIMARY KEY (id);


--
-- Name: client_reach client_reach_pkey; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.client_reach
    ADD CONSTRAINT client_reach_pkey PRIMARY KEY (client_id);


--
-- Name: closing_draft closing_draft_pkey; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.closing_draft
    ADD CONSTRAINT closing_draft_pkey PRIMARY KEY (session_id);


--
-- Name: cluster cluster_client_id_number_key; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.cluster
    ADD CONSTRAINT cluster_client_id_number_key UNIQUE (client_id, number);


--
-- Name: cluster cluster_id_client_id_key; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.cluster
    ADD CONSTRAINT cluster_id_client_id_key UNIQUE (id, client_id);


--
-- Name: cluster cluster_pkey; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.cluster
    ADD CONSTRAINT cluster_pkey PRIMARY KEY (id);


--
-- Name: comfort comfort_pkey; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.comfort
    ADD CONSTRAINT comfort_pkey PRIMARY KEY (client_id);


--
-- Name: fact fact_pkey; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.fact
    ADD CONSTRAINT fact_pkey PRIMARY KEY (id);


--
-- Name: fact fact_replaces_key; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.fact
    ADD CONSTRAINT fact_replaces_key UNIQUE (replaces);


--
-- Name: hour_fact hour_fact_pkey; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.hour_fact
    ADD CONSTRAINT hour_fact_pkey PRIMARY KEY (id);


--
-- Name: hour_fact hour_fact_replaces_key; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.hour_fact
    ADD CONSTRAINT hour_fact_replaces_key UNIQUE (replaces);


--
-- Name: practice practice_pkey; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.practice
    ADD CONSTRAINT practice_pkey PRIMARY KEY (singleton);


--
-- Name: preset preset_pkey; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.preset
    ADD CONSTRAINT preset_pkey PRIMARY KEY (id);


--
-- Name: process_note process_note_pkey; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.process_note
    ADD CONSTRAINT process_note_pkey PRIMARY KEY (id);


--
-- Name: process_note process_note_replaces_key; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.process_note
    ADD CONSTRAINT process_note_replaces_key UNIQUE (replaces);


--
-- Name: rating rating_pkey; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.rating
    ADD CONSTRAINT rating_pkey PRIMARY KEY (id);


--
-- Name: rating rating_replaces_key; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.rating
    ADD CONSTRAINT rating_replaces_key UNIQUE (replaces);


--
-- Name: reach_step reach_step_pkey; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.reach_step
    ADD CONSTRAINT reach_step_pkey PRIMARY KEY (id);


--
-- Name: reach_step reach_step_replaces_key; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.reach_step
    ADD CONSTRAINT reach_step_replaces_key UNIQUE (replaces);


--
-- Name: resource resource_client_id_number_key; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.resource
    ADD CONSTRAINT resource_client_id_number_key UNIQUE (client_id, number);


--
-- Name: resource resource_pkey; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.resource
    ADD CONSTRAINT resource_pkey PRIMARY KEY (id);


--
-- Name: safety_plan safety_plan_pkey; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.safety_plan
    ADD CONSTRAINT safety_plan_pkey PRIMARY KEY (client_id);


--
-- Name: session session_client_id_number_key; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.session
    ADD CONSTRAINT session_client_id_number_key UNIQUE (client_id, number);


--
-- Name: session session_id_client_id_key; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.session
    ADD CONSTRAINT session_id_client_id_key UNIQUE (id, client_id);


--
-- Name: session_moment session_moment_once_key; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.session_moment
    ADD CONSTRAINT session_moment_once_key UNIQUE (once);


--
-- Name: session_moment session_moment_pkey; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.session_moment
    ADD CONSTRAINT session_moment_pkey PRIMARY KEY (id);


--
-- Name: session session_pkey; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.session
    ADD CONSTRAINT session_pkey PRIMARY KEY (id);


--
-- Name: session_words session_words_pkey; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.session_words
    ADD CONSTRAINT session_words_pkey PRIMARY KEY (session_id, version);


--
-- Name: set_ending set_ending_pkey; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.set_ending
    ADD CONSTRAINT set_ending_pkey PRIMARY KEY (set_id, witness);


--
-- Name: set_evidence set_evidence_pkey; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.set_evidence
    ADD CONSTRAINT set_evidence_pkey PRIMARY KEY (set_id, seq);


--
-- Name: set_order set_order_pkey; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.set_order
    ADD CONSTRAINT set_order_pkey PRIMARY KEY (set_id, seq);


--
-- Name: steadying steadying_pkey; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.steadying
    ADD CONSTRAINT steadying_pkey PRIMARY KEY (client_id);


--
-- Name: stimulus_set stimulus_set_id_session_id_client_id_key; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.stimulus_set
    ADD CONSTRAINT stimulus_set_id_session_id_client_id_key UNIQUE (id, session_id, client_id);


--
-- Name: stimulus_set stimulus_set_pkey; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.stimulus_set
    ADD CONSTRAINT stimulus_set_pkey PRIMARY KEY (id);


--
-- Name: stimulus_set stimulus_set_session_id_number_key; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.stimulus_set
    ADD CONSTRAINT stimulus_set_session_id_number_key UNIQUE (session_id, number);


--
-- Name: target target_client_id_number_key; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.target
    ADD CONSTRAINT target_client_id_number_key UNIQUE (client_id, number);


--
-- Name: target_course target_course_pkey; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.target_course
    ADD CONSTRAINT target_course_pkey PRIMARY KEY (target_id);


--
-- Name: target target_id_client_id_key; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.target
    ADD CONSTRAINT target_id_client_id_key UNIQUE (id, client_id);


--
-- Name: target target_pkey; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.target
    ADD CONSTRAINT target_pkey PRIMARY KEY (id);


--
-- Name: target_plan target_plan_client_id_place_key; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.target_plan
    ADD CONSTRAINT target_plan_client_id_place_key UNIQUE (client_id, place) DEFERRABLE INITIALLY DEFERRED;


--
-- Name: target_plan target_plan_pkey; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.target_plan
    ADD CONSTRAINT target_plan_pkey PRIMARY KEY (target_id);


--
-- Name: target_plan target_plan_target_id_cluster_id_key; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.target_plan
    ADD CONSTRAINT target_plan_target_id_cluster_id_key UNIQUE (target_id, cluster_id);


--
-- Name: target_words target_words_pkey; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.target_words
    ADD CONSTRAINT target_words_pkey PRIMARY KEY (target_id);


--
-- Name: unmeasured unmeasured_pkey; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.unmeasured
    ADD CONSTRAINT unmeasured_pkey PRIMARY KEY (id);


--
-- Name: unmeasured unmeasured_replaces_key; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.unmeasured
    ADD CONSTRAINT unmeasured_replaces_key UNIQUE (replaces);


--
-- Name: care_link_client_id_idx; Type: INDEX; Schema: access; Owner: leeward_owner
--

CREATE INDEX care_link_client_id_idx ON access.care_link USING btree (client_id);


--
-- Name: care_link_member_id_idx; Type: INDEX; Schema: access; Owner: leeward_owner
--

CREATE INDEX care_link_member_id_idx ON access.care_link USING btree (member_id);


--
-- Name: join_link_session_id_idx; Type: INDEX; Schema: access; Owner: leeward_owner
--

CREATE INDEX join_link_session_id_idx ON access.join_link USING btree (session_id);


--
-- Name: news_member_id_idx; Type: INDEX; Schema: access; Owner: leeward_owner
--

CREATE INDEX news_member_id_idx ON access.news USING btree (member_id) WHERE (read_at IS NULL);


--
-- Name: one_seat_per_session; Type: INDEX; Schema: access; Owner: leeward_owner
--

CREATE UNIQUE INDEX one_seat_per_session ON access.seat USING btree (session_id) WHERE ((taken_at IS NOT NULL) AND (closed_at IS NULL));


--
-- Name: replacement_member_id_idx; Type: INDEX; Schema: access; Owner: leeward_owner
--

CREATE INDEX replacement_member_id_idx ON access.replacement USING btree (member_id);


--
-- Name: request_key_kept_at_idx; Type: INDEX; Schema: access; Owner: leeward_owner
--

CREATE INDEX request_key_kept_at_idx ON access.request_key USING btree (kept_at);


--
-- Name: seat_session_id_idx; Type: INDEX; Schema: access; Owner: leeward_owner
--

CREATE INDEX seat_session_id_idx ON access.seat USING btree (session_id);


--
-- Name: signin_member_id_idx; Type: INDEX; Schema: access; Owner: leeward_owner
--

CREATE INDEX signin_member_id_idx ON access.signin USING btree (member_id);


--
-- Name: adverse_account_client_id_idx; Type: INDEX; Schema: public; Owner: leeward_owner
--

CREATE INDEX adverse_account_client_id_idx ON public.adverse_account USING btree (client_id);


--
-- Name: adverse_event_session_id_idx; Type: INDEX; Schema: public; Owner: leeward_owner
--

CREATE INDEX adverse_event_session_id_idx ON public.adverse_event USING btree (session_id);


--
-- Name: after_check_client_id_idx; Type: INDEX; Schema: public; Owner: leeward_owner
--

CREATE INDEX after_check_client_id_idx ON public.after_check USING btree (client_id);


--
-- Name: after_check_try_session_id_idx; Type: INDEX; Schema: public; Owner: leeward_owner
--

CREATE INDEX after_check_try_session_id_idx ON public.after_check_try USING btree (session_id);


--
-- Name: fact_first_id_idx; Type: INDEX; Schema: public; Owner: leeward_owner
--

CREATE INDEX fact_first_id_idx ON public.fact USING btree (first_id) WHERE (first_id IS NOT NULL);


--
-- Name: fact_session_id_idx; Type: INDEX; Schema: public; Owner: leeward_owner
--

CREATE INDEX fact_session_id_idx ON public.fact USING btree (session_id);


--
-- Name: fact_target_id_idx; Type: INDEX; Schema: public; Owner: leeward_owner
--

CREATE INDEX fact_target_id_idx ON public.fact USING btree (target_id);


--
-- Name: hour_fact_session_id_idx; Type: INDEX; Schema: public; Owner: leeward_owner
--

CREATE INDEX hour_fact_session_id_idx ON public.hour_fact USING btree (session_id);


--
-- Name: process_note_session_id_idx; Type: INDEX; Schema: public; Owner: leeward_owner
--

CREATE INDEX process_note_session_id_idx ON public.process_note USING btree (session_id);


--
-- Name: rating_client_id_idx; Type: INDEX; Schema: public; Owner: leeward_owner
--

CREATE INDEX rating_client_id_idx ON public.rating USING btree (client_id);


--
-- Name: rating_first_id_idx; Type: INDEX; Schema: public; Owner: leeward_owner
--

CREATE INDEX rating_first_id_idx ON public.rating USING btree (first_id) WHERE (first_id IS NOT NULL);


--
-- Name: rating_session_id_idx; Type: INDEX; Schema: public; Owner: leeward_owner
--

CREATE INDEX rating_session_id_idx ON public.rating USING btree (session_id);


--
-- Name: rating_target_id_idx; Type: INDEX; Schema: public; Owner: leeward_owner
--

CREATE INDEX rating_target_id_idx ON public.rating USING btree (target_id);


--
-- Name: reach_step_client_id_idx; Type: INDEX; Schema: public; Owner: leeward_owner
--

CREATE INDEX reach_step_client_id_idx ON public.reach_step USING btree (client_id);


--
-- Name: reach_step_session_id_idx; Type: INDEX; Schema: public; Owner: leeward_owner
--

CREATE INDEX reach_step_session_id_idx ON public.reach_step USING btree (session_id);


--
-- Name: session_member_id_opened_at_idx; Type: INDEX; Schema: public; Owner: leeward_owner
--

CREATE INDEX session_member_id_opened_at_idx ON public.session USING btree (member_id, opened_at);


--
-- Name: session_moment_session_id_idx; Type: INDEX; Schema: public; Owner: leeward_owner
--

CREATE INDEX session_moment_session_id_idx ON public.session_moment USING btree (session_id);


--
-- Name: stimulus_set_client_id_idx; Type: INDEX; Schema: public; Owner: leeward_owner
--

CREATE INDEX stimulus_set_client_id_idx ON public.stimulus_set USING btree (client_id);


--
-- Name: target_course_client_id_idx; Type: INDEX; Schema: public; Owner: leeward_owner
--

CREATE INDEX target_course_client_id_idx ON public.target_course USING btree (client_id);


--
-- Name: target_plan_cluster_id_idx; Type: INDEX; Schema: public; Owner: leeward_owner
--

CREATE INDEX target_plan_cluster_id_idx ON public.target_plan USING btree (cluster_id) WHERE (cluster_id IS NOT NULL);


--
-- Name: target_plan_parent_id_idx; Type: INDEX; Schema: public; Owner: leeward_owner
--

CREATE INDEX target_plan_parent_id_idx ON public.target_plan USING btree (parent_id) WHERE (parent_id IS NOT NULL);


--
-- Name: unmeasured_session_id_idx; Type: INDEX; Schema: public; Owner: leeward_owner
--

CREATE INDEX unmeasured_session_id_idx ON public.unmeasured USING btree (session_id);


--
-- Name: unmeasured_target_id_idx; Type: INDEX; Schema: public; Owner: leeward_owner
--

CREATE INDEX unmeasured_target_id_idx ON public.unmeasured USING btree (target_id);


--
-- Name: signin links_end; Type: TRIGGER; Schema: access; Owner: leeward_owner
--

CREATE TRIGGER links_end AFTER UPDATE OF closed_at ON access.signin FOR EACH ROW WHEN (((new.closed_at IS NOT NULL) AND (old.closed_at IS NULL))) EXECUTE FUNCTION access.end_links_of_signin();


--
-- Name: session keep_gate; Type: TRIGGER; Schema: public; Owner: leeward_owner
--

CREATE TRIGGER keep_gate AFTER INSERT OR UPDATE OF ended_at ON public.session FOR EACH ROW EXECUTE FUNCTION access.keep_gate();


--
-- Name: session keep_session; Type: TRIGGER; Schema: public; Owner: leeward_owner
--

CREATE TRIGGER keep_session BEFORE UPDATE ON public.session FOR EACH ROW EXECUTE FUNCTION access.keep_session();


--
-- Name: fact place_of_correction; Type: TRIGGER; Schema: public; Owner: leeward_owner
--

CREATE TRIGGER place_of_correction BEFORE INSERT ON public.fact FOR EACH ROW WHEN ((new.replaces IS NOT NULL)) EXECUTE FUNCTION public.place_of_corrected_fact();


--
-- Name: rating place_of_correction; Type: TRIGGER; Schema: public; Owner: leeward_owner
--

CREATE TRIGGER place_of_correction BEFORE INSERT ON public.rating FOR EACH ROW WHEN ((new.replaces IS NOT NULL)) EXECUTE FUNCTION public.place_of_correction();


--
-- Name: care_link care_link_client_id_fkey; Type: FK CONSTRAINT; Schema: access; Owner: leeward_owner
--

ALTER TABLE ONLY access.care_link
    ADD CONSTRAINT care_link_client_id_fkey FOREIGN KEY (client_id) REFERENCES public.client(id) DEFERRABLE INITIALLY DEFERRED;


--
-- Name: care_link care_link_member_id_fkey; Type: FK CONSTRAINT; Schema: access; Owner: leeward_owner
--

ALTER TABLE ONLY access.care_link
    ADD CONSTRAINT care_link_member_id_fkey FOREIGN KEY (member_id) REFERENCES access.member(id);


--
-- Name: invitation invitation_made_by_fkey; Type: FK CONSTRAINT; Schema: access; Owner: leeward_owner
--

ALTER TABLE ONLY access.invitation
    ADD CONSTRAINT invitation_made_by_fkey FOREIGN KEY (made_by) REFERENCES access.member(id);


--
-- Name: invitation invitation_made_in_fkey; Type: FK CONSTRAINT; Schema: access; Owner: leeward_owner
--

ALTER TABLE ONLY access.invitation
    ADD CONSTRAINT invitation_made_in_fkey FOREIGN KEY (made_in) REFERENCES access.signin(id) ON DELETE SET NULL;


--
-- Name: invitation invitation_member_id_fkey; Type: FK CONSTRAINT; Schema: access; Owner: leeward_owner
--

ALTER TABLE ONLY access.invitation
    ADD CONSTRAINT invitation_member_id_fkey FOREIGN KEY (member_id) REFERENCES access.member(id);


--
-- Name: invitation invitation_replacement_fkey; Type: FK CONSTRAINT; Schema: access; Owner: leeward_owner
--

ALTER TABLE ONLY access.invitation
    ADD CONSTRAINT invitation_replacement_fkey FOREIGN KEY (replacement) REFERENCES access.replacement(id);


--
-- Name: news news_about_fkey; Type: FK CONSTRAINT; Schema: access; Owner: leeward_owner
--

ALTER TABLE ONLY access.news
    ADD CONSTRAINT news_about_fkey FOREIGN KEY (about) REFERENCES access.member(id);


--
-- Name: news news_by_member_fkey; Type: FK CONSTRAINT; Schema: access; Owner: leeward_owner
--

ALTER TABLE ONLY access.news
    ADD CONSTRAINT news_by_member_fkey FOREIGN KEY (by_member) REFERENCES access.member(id);


--
-- Name: news news_client_id_fkey; Type: FK CONSTRAINT; Schema: access; Owner: leeward_owner
--

ALTER TABLE ONLY access.news
    ADD CONSTRAINT news_client_id_fkey FOREIGN KEY (client_id) REFERENCES public.client(id);


--
-- Name: news news_member_id_fkey; Type: FK CONSTRAINT; Schema: access; Owner: leeward_owner
--

ALTER TABLE ONLY access.news
    ADD CONSTRAINT news_member_id_fkey FOREIGN KEY (member_id) REFERENCES access.member(id);


--
-- Name: passkey passkey_member_id_fkey; Type: FK CONSTRAINT; Schema: access; Owner: leeward_owner
--

ALTER TABLE ONLY access.passkey
    ADD CONSTRAINT passkey_member_id_fkey FOREIGN KEY (member_id) REFERENCES access.member(id);


--
-- Name: refused_look refused_look_signin_id_fkey; Type: FK CONSTRAINT; Schema: access; Owner: leeward_owner
--

ALTER TABLE ONLY access.refused_look
    ADD CONSTRAINT refused_look_signin_id_fkey FOREIGN KEY (signin_id) REFERENCES access.signin(id) ON DELETE CASCADE;


--
-- Name: rehearsal rehearsal_client_id_fkey; Type: FK CONSTRAINT; Schema: access; Owner: leeward_owner
--

ALTER TABLE ONLY access.rehearsal
    ADD CONSTRAINT rehearsal_client_id_fkey FOREIGN KEY (client_id) REFERENCES public.client(id) DEFERRABLE INITIALLY DEFERRED;


--
-- Name: rehearsal rehearsal_member_id_fkey; Type: FK CONSTRAINT; Schema: access; Owner: leeward_owner
--

ALTER TABLE ONLY access.rehearsal
    ADD CONSTRAINT rehearsal_member_id_fkey FOREIGN KEY (member_id) REFERENCES access.member(id);


--
-- Name: replacement replacement_agreed_by_fkey; Type: FK CONSTRAINT; Schema: access; Owner: leeward_owner
--

ALTER TABLE ONLY access.replacement
    ADD CONSTRAINT replacement_agreed_by_fkey FOREIGN KEY (agreed_by) REFERENCES access.member(id);


--
-- Name: replacement replacement_asked_by_fkey; Type: FK CONSTRAINT; Schema: access; Owner: leeward_owner
--

ALTER TABLE ONLY access.replacement
    ADD CONSTRAINT replacement_asked_by_fkey FOREIGN KEY (asked_by) REFERENCES access.member(id);


--
-- Name: replacement replacement_member_id_fkey; Type: FK CONSTRAINT; Schema: access; Owner: leeward_owner
--

ALTER TABLE ONLY access.replacement
    ADD CONSTRAINT replacement_member_id_fkey FOREIGN KEY (member_id) REFERENCES access.member(id);


--
-- Name: request_key request_key_member_id_fkey; Type: FK CONSTRAINT; Schema: access; Owner: leeward_owner
--

ALTER TABLE ONLY access.request_key
    ADD CONSTRAINT request_key_member_id_fkey FOREIGN KEY (member_id) REFERENCES access.member(id);


--
-- Name: seat seat_link_id_fkey; Type: FK CONSTRAINT; Schema: access; Owner: leeward_owner
--

ALTER TABLE ONLY access.seat
    ADD CONSTRAINT seat_link_id_fkey FOREIGN KEY (link_id) REFERENCES access.join_link(id);


--
-- Name: signin signin_member_id_fkey; Type: FK CONSTRAINT; Schema: access; Owner: leeward_owner
--

ALTER TABLE ONLY access.signin
    ADD CONSTRAINT signin_member_id_fkey FOREIGN KEY (member_id) REFERENCES access.member(id);


--
-- Name: adverse_account adverse_account_event_id_client_id_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.adverse_account
    ADD CONSTRAINT adverse_account_event_id_client_id_fkey FOREIGN KEY (event_id, client_id) REFERENCES public.adverse_event(id, client_id);


--
-- Name: adverse_event adverse_event_client_id_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.adverse_event
    ADD CONSTRAINT adverse_event_client_id_fkey FOREIGN KEY (client_id) REFERENCES public.client(id);


--
-- Name: adverse_event adverse_event_replaces_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.adverse_event
    ADD CONSTRAINT adverse_event_replaces_fkey FOREIGN KEY (replaces) REFERENCES public.adverse_event(id);


--
-- Name: adverse_event adverse_event_session_id_client_id_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.adverse_event
    ADD CONSTRAINT adverse_event_session_id_client_id_fkey FOREIGN KEY (session_id, client_id) REFERENCES public.session(id, client_id);


--
-- Name: adverse_event adverse_event_written_by_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.adverse_event
    ADD CONSTRAINT adverse_event_written_by_fkey FOREIGN KEY (written_by) REFERENCES access.member(id);


--
-- Name: after_check after_check_member_id_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.after_check
    ADD CONSTRAINT after_check_member_id_fkey FOREIGN KEY (member_id) REFERENCES access.member(id);


--
-- Name: after_check after_check_session_id_client_id_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.after_check
    ADD CONSTRAINT after_check_session_id_client_id_fkey FOREIGN KEY (session_id, client_id) REFERENCES public.session(id, client_id);


--
-- Name: after_check_try after_check_try_entered_by_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.after_check_try
    ADD CONSTRAINT after_check_try_entered_by_fkey FOREIGN KEY (entered_by) REFERENCES access.member(id);


--
-- Name: after_check_try after_check_try_session_id_client_id_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.after_check_try
    ADD CONSTRAINT after_check_try_session_id_client_id_fkey FOREIGN KEY (session_id, client_id) REFERENCES public.after_check(session_id, client_id);


--
-- Name: client_details client_details_client_id_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.client_details
    ADD CONSTRAINT client_details_client_id_fkey FOREIGN KEY (client_id) REFERENCES public.client(id);


--
-- Name: client_key client_key_client_id_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.client_key
    ADD CONSTRAINT client_key_client_id_fkey FOREIGN KEY (client_id) REFERENCES public.client(id) DEFERRABLE INITIALLY DEFERRED;


--
-- Name: client_reach client_reach_client_id_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.client_reach
    ADD CONSTRAINT client_reach_client_id_fkey FOREIGN KEY (client_id) REFERENCES public.client(id);


--
-- Name: closing_draft closing_draft_session_id_client_id_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.closing_draft
    ADD CONSTRAINT closing_draft_session_id_client_id_fkey FOREIGN KEY (session_id, client_id) REFERENCES public.session(id, client_id);


--
-- Name: closing_draft closing_draft_written_by_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.closing_draft
    ADD CONSTRAINT closing_draft_written_by_fkey FOREIGN KEY (written_by) REFERENCES access.member(id);


--
-- Name: cluster cluster_client_id_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.cluster
    ADD CONSTRAINT cluster_client_id_fkey FOREIGN KEY (client_id) REFERENCES public.client(id);


--
-- Name: cluster cluster_earliest_id_id_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.cluster
    ADD CONSTRAINT cluster_earliest_id_id_fkey FOREIGN KEY (earliest_id, id) REFERENCES public.target_plan(target_id, cluster_id);


--
-- Name: cluster cluster_worst_id_id_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.cluster
    ADD CONSTRAINT cluster_worst_id_id_fkey FOREIGN KEY (worst_id, id) REFERENCES public.target_plan(target_id, cluster_id);


--
-- Name: comfort comfort_client_id_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.comfort
    ADD CONSTRAINT comfort_client_id_fkey FOREIGN KEY (client_id) REFERENCES public.client(id);


--
-- Name: fact fact_client_id_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.fact
    ADD CONSTRAINT fact_client_id_fkey FOREIGN KEY (client_id) REFERENCES public.client(id);


--
-- Name: fact fact_entered_by_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.fact
    ADD CONSTRAINT fact_entered_by_fkey FOREIGN KEY (entered_by) REFERENCES access.member(id);


--
-- Name: fact fact_first_id_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.fact
    ADD CONSTRAINT fact_first_id_fkey FOREIGN KEY (first_id) REFERENCES public.fact(id);


--
-- Name: fact fact_replaces_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.fact
    ADD CONSTRAINT fact_replaces_fkey FOREIGN KEY (replaces) REFERENCES public.fact(id);


--
-- Name: fact fact_session_id_client_id_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.fact
    ADD CONSTRAINT fact_session_id_client_id_fkey FOREIGN KEY (session_id, client_id) REFERENCES public.session(id, client_id);


--
-- Name: fact fact_set_id_session_id_client_id_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.fact
    ADD CONSTRAINT fact_set_id_session_id_client_id_fkey FOREIGN KEY (set_id, session_id, client_id) REFERENCES public.stimulus_set(id, session_id, client_id);


--
-- Name: fact fact_target_id_client_id_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.fact
    ADD CONSTRAINT fact_target_id_client_id_fkey FOREIGN KEY (target_id, client_id) REFERENCES public.target(id, client_id);


--
-- Name: hour_fact hour_fact_entered_by_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.hour_fact
    ADD CONSTRAINT hour_fact_entered_by_fkey FOREIGN KEY (entered_by) REFERENCES access.member(id);


--
-- Name: hour_fact hour_fact_replaces_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.hour_fact
    ADD CONSTRAINT hour_fact_replaces_fkey FOREIGN KEY (replaces) REFERENCES public.hour_fact(id);


--
-- Name: hour_fact hour_fact_session_id_client_id_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.hour_fact
    ADD CONSTRAINT hour_fact_session_id_client_id_fkey FOREIGN KEY (session_id, client_id) REFERENCES public.session(id, client_id);


--
-- Name: preset preset_member_id_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.preset
    ADD CONSTRAINT preset_member_id_fkey FOREIGN KEY (member_id) REFERENCES access.member(id);


--
-- Name: process_note process_note_entered_by_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.process_note
    ADD CONSTRAINT process_note_entered_by_fkey FOREIGN KEY (entered_by) REFERENCES access.member(id);


--
-- Name: process_note process_note_replaces_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.process_note
    ADD CONSTRAINT process_note_replaces_fkey FOREIGN KEY (replaces) REFERENCES public.process_note(id);


--
-- Name: process_note process_note_session_id_client_id_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.process_note
    ADD CONSTRAINT process_note_session_id_client_id_fkey FOREIGN KEY (session_id, client_id) REFERENCES public.session(id, client_id);


--
-- Name: process_note process_note_set_id_session_id_client_id_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.process_note
    ADD CONSTRAINT process_note_set_id_session_id_client_id_fkey FOREIGN KEY (set_id, session_id, client_id) REFERENCES public.stimulus_set(id, session_id, client_id);


--
-- Name: rating rating_client_id_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.rating
    ADD CONSTRAINT rating_client_id_fkey FOREIGN KEY (client_id) REFERENCES public.client(id);


--
-- Name: rating rating_entered_by_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.rating
    ADD CONSTRAINT rating_entered_by_fkey FOREIGN KEY (entered_by) REFERENCES access.member(id);


--
-- Name: rating rating_first_id_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.rating
    ADD CONSTRAINT rating_first_id_fkey FOREIGN KEY (first_id) REFERENCES public.rating(id);


--
-- Name: rating rating_replaces_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.rating
    ADD CONSTRAINT rating_replaces_fkey FOREIGN KEY (replaces) REFERENCES public.rating(id);


--
-- Name: rating rating_session_id_client_id_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.rating
    ADD CONSTRAINT rating_session_id_client_id_fkey FOREIGN KEY (session_id, client_id) REFERENCES public.session(id, client_id);


--
-- Name: rating rating_set_id_session_id_client_id_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.rating
    ADD CONSTRAINT rating_set_id_session_id_client_id_fkey FOREIGN KEY (set_id, session_id, client_id) REFERENCES public.stimulus_set(id, session_id, client_id);


--
-- Name: rating rating_target_id_client_id_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.rating
    ADD CONSTRAINT rating_target_id_client_id_fkey FOREIGN KEY (target_id, client_id) REFERENCES public.target(id, client_id);


--
-- Name: reach_step reach_step_entered_by_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.reach_step
    ADD CONSTRAINT reach_step_entered_by_fkey FOREIGN KEY (entered_by) REFERENCES access.member(id);


--
-- Name: reach_step reach_step_replaces_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.reach_step
    ADD CONSTRAINT reach_step_replaces_fkey FOREIGN KEY (replaces) REFERENCES public.reach_step(id);


--
-- Name: reach_step reach_step_session_id_client_id_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.reach_step
    ADD CONSTRAINT reach_step_session_id_client_id_fkey FOREIGN KEY (session_id, client_id) REFERENCES public.session(id, client_id);


--
-- Name: resource resource_client_id_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.resource
    ADD CONSTRAINT resource_client_id_fkey FOREIGN KEY (client_id) REFERENCES public.client(id);


--
-- Name: safety_plan safety_plan_client_id_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.safety_plan
    ADD CONSTRAINT safety_plan_client_id_fkey FOREIGN KEY (client_id) REFERENCES public.client(id);


--
-- Name: session session_client_id_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.session
    ADD CONSTRAINT session_client_id_fkey FOREIGN KEY (client_id) REFERENCES public.client(id);


--
-- Name: session session_member_id_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.session
    ADD CONSTRAINT session_member_id_fkey FOREIGN KEY (member_id) REFERENCES access.member(id);


--
-- Name: session_moment session_moment_session_id_client_id_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.session_moment
    ADD CONSTRAINT session_moment_session_id_client_id_fkey FOREIGN KEY (session_id, client_id) REFERENCES public.session(id, client_id);


--
-- Name: session session_target_id_client_id_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.session
    ADD CONSTRAINT session_target_id_client_id_fkey FOREIGN KEY (target_id, client_id) REFERENCES public.target(id, client_id);


--
-- Name: session_words session_words_session_id_client_id_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.session_words
    ADD CONSTRAINT session_words_session_id_client_id_fkey FOREIGN KEY (session_id, client_id) REFERENCES public.session(id, client_id);


--
-- Name: session_words session_words_written_by_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.session_words
    ADD CONSTRAINT session_words_written_by_fkey FOREIGN KEY (written_by) REFERENCES access.member(id);


--
-- Name: set_ending set_ending_set_id_session_id_client_id_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.set_ending
    ADD CONSTRAINT set_ending_set_id_session_id_client_id_fkey FOREIGN KEY (set_id, session_id, client_id) REFERENCES public.stimulus_set(id, session_id, client_id);


--
-- Name: set_evidence set_evidence_set_id_session_id_client_id_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.set_evidence
    ADD CONSTRAINT set_evidence_set_id_session_id_client_id_fkey FOREIGN KEY (set_id, session_id, client_id) REFERENCES public.stimulus_set(id, session_id, client_id);


--
-- Name: set_order set_order_set_id_session_id_client_id_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.set_order
    ADD CONSTRAINT set_order_set_id_session_id_client_id_fkey FOREIGN KEY (set_id, session_id, client_id) REFERENCES public.stimulus_set(id, session_id, client_id);


--
-- Name: steadying steadying_client_id_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.steadying
    ADD CONSTRAINT steadying_client_id_fkey FOREIGN KEY (client_id) REFERENCES public.client(id);


--
-- Name: stimulus_set stimulus_set_session_id_client_id_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.stimulus_set
    ADD CONSTRAINT stimulus_set_session_id_client_id_fkey FOREIGN KEY (session_id, client_id) REFERENCES public.session(id, client_id);


--
-- Name: stimulus_set stimulus_set_target_id_client_id_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.stimulus_set
    ADD CONSTRAINT stimulus_set_target_id_client_id_fkey FOREIGN KEY (target_id, client_id) REFERENCES public.target(id, client_id);


--
-- Name: target target_client_id_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.target
    ADD CONSTRAINT target_client_id_fkey FOREIGN KEY (client_id) REFERENCES public.client(id);


--
-- Name: target_course target_course_target_id_client_id_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.target_course
    ADD CONSTRAINT target_course_target_id_client_id_fkey FOREIGN KEY (target_id, client_id) REFERENCES public.target(id, client_id);


--
-- Name: target_plan target_plan_cluster_id_client_id_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.target_plan
    ADD CONSTRAINT target_plan_cluster_id_client_id_fkey FOREIGN KEY (cluster_id, client_id) REFERENCES public.cluster(id, client_id);


--
-- Name: target_plan target_plan_parent_id_client_id_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.target_plan
    ADD CONSTRAINT target_plan_parent_id_client_id_fkey FOREIGN KEY (parent_id, client_id) REFERENCES public.target(id, client_id);


--
-- Name: target_plan target_plan_target_id_client_id_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.target_plan
    ADD CONSTRAINT target_plan_target_id_client_id_fkey FOREIGN KEY (target_id, client_id) REFERENCES public.target(id, client_id);


--
-- Name: target_words target_words_target_id_client_id_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.target_words
    ADD CONSTRAINT target_words_target_id_client_id_fkey FOREIGN KEY (target_id, client_id) REFERENCES public.target(id, client_id);


--
-- Name: unmeasured unmeasured_entered_by_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.unmeasured
    ADD CONSTRAINT unmeasured_entered_by_fkey FOREIGN KEY (entered_by) REFERENCES access.member(id);


--
-- Name: unmeasured unmeasured_replaces_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.unmeasured
    ADD CONSTRAINT unmeasured_replaces_fkey FOREIGN KEY (replaces) REFERENCES public.unmeasured(id);


--
-- Name: unmeasured unmeasured_session_id_client_id_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.unmeasured
    ADD CONSTRAINT unmeasured_session_id_client_id_fkey FOREIGN KEY (session_id, client_id) REFERENCES public.session(id, client_id);


--
-- Name: unmeasured unmeasured_target_id_client_id_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.unmeasured
    ADD CONSTRAINT unmeasured_target_id_client_id_fkey FOREIGN KEY (target_id, client_id) REFERENCES public.target(id, client_id);


--
-- Name: adverse_account add; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY add ON public.adverse_account FOR INSERT WITH CHECK ((client_id IN ( SELECT access.my_clients() AS my_clients)));


--
-- Name: adverse_event add; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY add ON public.adverse_event FOR INSERT WITH CHECK (((client_id IN ( SELECT access.my_clients() AS my_clients)) AND (written_by = ( SELECT access.me() AS me))));


--
-- Name: after_check add; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY add ON public.after_check FOR INSERT WITH CHECK ((client_id IN ( SELECT access.my_clients() AS my_clients)));


--
-- Name: after_check_try add; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY add ON public.after_check_try FOR INSERT WITH CHECK (((client_id IN ( SELECT access.my_clients() AS my_clients)) AND (entered_by = ( SELECT access.me() AS me))));


--
-- Name: client add; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY add ON public.client FOR INSERT WITH CHECK ((id IN ( SELECT access.my_clients() AS my_clients)));


--
-- Name: client_details add; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY add ON public.client_details FOR INSERT WITH CHECK ((client_id IN ( SELECT access.my_clients() AS my_clients)));


--
-- Name: client_key add; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY add ON public.client_key FOR INSERT WITH CHECK ((client_id IN ( SELECT access.my_clients() AS my_clients)));


--
-- Name: client_reach add; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY add ON public.client_reach FOR INSERT WITH CHECK ((client_id IN ( SELECT access.my_clients() AS my_clients)));


--
-- Name: closing_draft add; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY add ON public.closing_draft FOR INSERT WITH CHECK (((client_id IN ( SELECT access.my_clients() AS my_clients)) AND (written_by = ( SELECT access.me() AS me))));


--
-- Name: cluster add; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY add ON public.cluster FOR INSERT WITH CHECK ((client_id IN ( SELECT access.my_clients() AS my_clients)));


--
-- Name: comfort add; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY add ON public.comfort FOR INSERT WITH CHECK ((client_id IN ( SELECT access.my_clients() AS my_clients)));


--
-- Name: fact add; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY add ON public.fact FOR INSERT WITH CHECK (((client_id IN ( SELECT access.my_clients() AS my_clients)) AND (entered_by = ( SELECT access.me() AS me))));


--
-- Name: hour_fact add; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY add ON public.hour_fact FOR INSERT WITH CHECK (((client_id IN ( SELECT access.my_clients() AS my_clients)) AND (entered_by = ( SELECT access.me() AS me))));


--
-- Name: preset add; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY add ON public.preset FOR INSERT WITH CHECK ((((member_id IS NULL) AND (( SELECT access.has_role('lead'::text) AS has_role) OR ( SELECT access.has_role('administrator'::text) AS has_role))) OR ((member_id = ( SELECT access.me() AS me)) AND ( SELECT access.has_role('clinician'::text) AS has_role))));


--
-- Name: process_note add; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY add ON public.process_note FOR INSERT WITH CHECK (((client_id IN ( SELECT access.my_clients() AS my_clients)) AND (entered_by = ( SELECT access.me() AS me))));


--
-- Name: rating add; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY add ON public.rating FOR INSERT WITH CHECK (((client_id IN ( SELECT access.my_clients() AS my_clients)) AND (entered_by = ( SELECT access.me() AS me))));


--
-- Name: reach_step add; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY add ON public.reach_step FOR INSERT WITH CHECK (((client_id IN ( SELECT access.my_clients() AS my_clients)) AND (entered_by = ( SELECT access.me() AS me))));


--
-- Name: resource add; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY add ON public.resource FOR INSERT WITH CHECK ((client_id IN ( SELECT access.my_clients() AS my_clients)));


--
-- Name: safety_plan add; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY add ON public.safety_plan FOR INSERT WITH CHECK ((client_id IN ( SELECT access.my_clients() AS my_clients)));


--
-- Name: session add; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY add ON public.session FOR INSERT WITH CHECK (((client_id IN ( SELECT access.my_clients() AS my_clients)) AND (member_id = ( SELECT access.me() AS me))));


--
-- Name: session_moment add; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY add ON public.session_moment FOR INSERT WITH CHECK (((client_id IN ( SELECT access.my_clients() AS my_clients)) OR (session_id = ( SELECT access.my_room() AS my_room))));


--
-- Name: session_words add; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY add ON public.session_words FOR INSERT WITH CHECK (((client_id IN ( SELECT access.my_clients() AS my_clients)) AND (written_by = ( SELECT access.me() AS me)) AND (written_at IS NOT NULL)));


--
-- Name: set_ending add; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY add ON public.set_ending FOR INSERT WITH CHECK ((session_id = ( SELECT access.my_room() AS my_room)));


--
-- Name: set_evidence add; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY add ON public.set_evidence FOR INSERT WITH CHECK (((session_id = ( SELECT access.my_room() AS my_room)) OR (session_id = ( SELECT access.my_late_seat() AS my_late_seat))));


--
-- Name: set_order add; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY add ON public.set_order FOR INSERT WITH CHECK ((session_id = ( SELECT access.my_room() AS my_room)));


--
-- Name: steadying add; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY add ON public.steadying FOR INSERT WITH CHECK ((client_id IN ( SELECT access.my_clients() AS my_clients)));


--
-- Name: stimulus_set add; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY add ON public.stimulus_set FOR INSERT WITH CHECK ((session_id = ( SELECT access.my_room() AS my_room)));


--
-- Name: target add; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY add ON public.target FOR INSERT WITH CHECK ((client_id IN ( SELECT access.my_clients() AS my_clients)));


--
-- Name: target_course add; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY add ON public.target_course FOR INSERT WITH CHECK ((client_id IN ( SELECT access.my_clients() AS my_clients)));


--
-- Name: target_plan add; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY add ON public.target_plan FOR INSERT WITH CHECK ((client_id IN ( SELECT access.my_clients() AS my_clients)));


--
-- Name: target_words add; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY add ON public.target_words FOR INSERT WITH CHECK ((client_id IN ( SELECT access.my_clients() AS my_clients)));


--
-- Name: unmeasured add; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY add ON public.unmeasured FOR INSERT WITH CHECK (((client_id IN ( SELECT access.my_clients() AS my_clients)) AND (entered_by = ( SELECT access.me() AS me))));


--
-- Name: adverse_account; Type: ROW SECURITY; Schema: public; Owner: leeward_owner
--

ALTER TABLE public.adverse_account ENABLE ROW LEVEL SECURITY;

--
-- Name: adverse_event; Type: ROW SECURITY; Schema: public; Owner: leeward_owner
--

ALTER TABLE public.adverse_event ENABLE ROW LEVEL SECURITY;

--
-- Name: after_check; Type: ROW SECURITY; Schema: public; Owner: leeward_owner
--

ALTER TABLE public.after_check ENABLE ROW LEVEL SECURITY;

--
-- Name: after_check_try; Type: ROW SECURITY; Schema: public; Owner: leeward_owner
--

ALTER TABLE public.after_check_try ENABLE ROW LEVEL SECURITY;

--
-- Name: audit append; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY append ON public.audit FOR INSERT WITH CHECK (( SELECT access.is_owner() AS is_owner));


--
-- Name: audit; Type: ROW SECURITY; Schema: public; Owner: leeward_owner
--

ALTER TABLE public.audit ENABLE ROW LEVEL SECURITY;

--
-- Name: client change; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY change ON public.client FOR UPDATE USING ((id IN ( SELECT access.my_clients() AS my_clients)));


--
-- Name: client_details change; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY change ON public.client_details FOR UPDATE USING ((client_id IN ( SELECT access.my_clients() AS my_clients)));


--
-- Name: client_reach change; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY change ON public.client_reach FOR UPDATE USING ((client_id IN ( SELECT access.my_clients() AS my_clients)));


--
-- Name: closing_draft change; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY change ON public.closing_draft FOR UPDATE USING ((client_id IN ( SELECT access.my_clients() AS my_clients))) WITH CHECK (((client_id IN ( SELECT access.my_clients() AS my_clients)) AND (written_by = ( SELECT access.me() AS me))));


--
-- Name: cluster change; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY change ON public.cluster FOR UPDATE USING ((client_id IN ( SELECT access.my_clients() AS my_clients)));


--
-- Name: comfort change; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY change ON public.comfort FOR UPDATE USING ((client_id IN ( SELECT access.my_clients() AS my_clients)));


--
-- Name: practice change; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY change ON public.practice FOR UPDATE USING ((( SELECT access.is_owner() AS is_owner) OR ( SELECT access.has_role('administrator'::text) AS has_role)));


--
-- Name: preset change; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY change ON public.preset FOR UPDATE USING ((((member_id IS NULL) AND (( SELECT access.has_role('lead'::text) AS has_role) OR ( SELECT access.has_role('administrator'::text) AS has_role))) OR ((member_id = ( SELECT access.me() AS me)) AND ( SELECT access.has_role('clinician'::text) AS has_role))));


--
-- Name: resource change; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY change ON public.resource FOR UPDATE USING ((client_id IN ( SELECT access.my_clients() AS my_clients)));


--
-- Name: safety_plan change; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY change ON public.safety_plan FOR UPDATE USING ((client_id IN ( SELECT access.my_clients() AS my_clients)));


--
-- Name: session change; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY change ON public.session FOR UPDATE USING (((client_id IN ( SELECT access.my_clients() AS my_clients)) OR (id = ( SELECT access.my_room() AS my_room))));


--
-- Name: steadying change; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY change ON public.steadying FOR UPDATE USING ((client_id IN ( SELECT access.my_clients() AS my_clients)));


--
-- Name: target change; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY change ON public.target FOR UPDATE USING ((client_id IN ( SELECT access.my_clients() AS my_clients)));


--
-- Name: target_course change; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY change ON public.target_course FOR UPDATE USING (((client_id IN ( SELECT access.my_clients() AS my_clients)) OR (client_id = ( SELECT access.my_room_client() AS my_room_client))));


--
-- Name: target_plan change; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY change ON public.target_plan FOR UPDATE USING ((client_id IN ( SELECT access.my_clients() AS my_clients)));


--
-- Name: target_words change; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY change ON public.target_words FOR UPDATE USING ((client_id IN ( SELECT access.my_clients() AS my_clients)));


--
-- Name: client; Type: ROW SECURITY; Schema: public; Owner: leeward_owner
--

ALTER TABLE public.client ENABLE ROW LEVEL SECURITY;

--
-- Name: client_details; Type: ROW SECURITY; Schema: public; Owner: leeward_owner
--

ALTER TABLE public.client_details ENABLE ROW LEVEL SECURITY;

--
-- Name: client_key; Type: ROW SECURITY; Schema: public; Owner: leeward_owner
--

ALTER TABLE public.client_key ENABLE ROW LEVEL SECURITY;

--
-- Name: client_reach; Type: ROW SECURITY; Schema: public; Owner: leeward_owner
--

ALTER TABLE public.client_reach ENABLE ROW LEVEL SECURITY;

--
-- Name: closing_draft; Type: ROW SECURITY; Schema: public; Owner: leeward_owner
--

ALTER TABLE public.closing_draft ENABLE ROW LEVEL SECURITY;

--
-- Name: cluster; Type: ROW SECURITY; Schema: public; Owner: leeward_owner
--

ALTER TABLE public.cluster ENABLE ROW LEVEL SECURITY;

--
-- Name: comfort; Type: ROW SECURITY; Schema: public; Owner: leeward_owner
--

ALTER TABLE public.comfort ENABLE ROW LEVEL SECURITY;

--
-- Name: fact; Type: ROW SECURITY; Schema: public; Owner: leeward_owner
--

ALTER TABLE public.fact ENABLE ROW LEVEL SECURITY;

--
-- Name: client hand_over; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY hand_over ON public.client FOR SELECT USING (( SELECT access.is_owner() AS is_owner));


--
-- Name: hour_fact; Type: ROW SECURITY; Schema: public; Owner: leeward_owner
--

ALTER TABLE public.hour_fact ENABLE ROW LEVEL SECURITY;

--
-- Name: client_key last_words; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY last_words ON public.client_key FOR SELECT USING (( SELECT access.is_owner() AS is_owner));


--
-- Name: session_words last_words; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY last_words ON public.session_words FOR SELECT USING (( SELECT access.is_owner() AS is_owner));


--
-- Name: practice; Type: ROW SECURITY; Schema: public; Owner: leeward_owner
--

ALTER TABLE public.practice ENABLE ROW LEVEL SECURITY;

--
-- Name: preset; Type: ROW SECURITY; Schema: public; Owner: leeward_owner
--

ALTER TABLE public.preset ENABLE ROW LEVEL SECURITY;

--
-- Name: process_note; Type: ROW SECURITY; Schema: public; Owner: leeward_owner
--

ALTER TABLE public.process_note ENABLE ROW LEVEL SECURITY;

--
-- Name: rating; Type: ROW SECURITY; Schema: public; Owner: leeward_owner
--

ALTER TABLE public.rating ENABLE ROW LEVEL SECURITY;

--
-- Name: reach_step; Type: ROW SECURITY; Schema: public; Owner: leeward_owner
--

ALTER TABLE public.reach_step ENABLE ROW LEVEL SECURITY;

--
-- Name: adverse_account read; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY read ON public.adverse_account FOR SELECT USING ((client_id IN ( SELECT access.my_clients() AS my_clients)));


--
-- Name: adverse_event read; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY read ON public.adverse_event FOR SELECT USING (((client_id IN ( SELECT access.my_clients() AS my_clients)) OR ( SELECT access.has_role('lead'::text) AS has_role)));


--
-- Name: after_check read; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY read ON public.after_check FOR SELECT USING (((client_id IN ( SELECT access.my_clients() AS my_clients)) OR ( SELECT access.has_role('lead'::text) AS has_role)));


--
-- Name: after_check_try read; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY read ON public.after_check_try FOR SELECT USING (((client_id IN ( SELECT access.my_clients() AS my_clients)) OR ( SELECT access.has_role('lead'::text) AS has_role)));


--
-- Name: audit read; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY read ON public.audit FOR SELECT USING ((( SELECT access.is_owner() AS is_owner) OR ( SELECT access.has_role('administrator'::text) AS has_role)));


--
-- Name: client read; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY read ON public.client FOR SELECT USING (((id IN ( SELECT access.my_clients() AS my_clients)) OR ( SELECT access.has_role('lead'::text) AS has_role) OR (id = ( SELECT access.my_room_client() AS my_room_client))));


--
-- Name: client_details read; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY read ON public.client_details FOR SELECT USING ((client_id IN ( SELECT access.my_clients() AS my_clients)));


--
-- Name: client_key read; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY read ON public.client_key FOR SELECT USING ((client_id IN ( SELECT access.my_clients() AS my_clients)));


--
-- Name: client_reach read; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY read ON public.client_reach FOR SELECT USING ((client_id IN ( SELECT access.my_clients() AS my_clients)));


--
-- Name: closing_draft read; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY read ON public.closing_draft FOR SELECT USING ((client_id IN ( SELECT access.my_clients() AS my_clients)));


--
-- Name: cluster read; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY read ON public.cluster FOR SELECT USING ((client_id IN ( SELECT access.my_clients() AS my_clients)));


--
-- Name: comfort read; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY read ON public.comfort FOR SELECT USING (((client_id IN ( SELECT access.my_clients() AS my_clients)) OR (client_id = ( SELECT access.my_room_client() AS my_room_client))));


--
-- Name: fact read; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY read ON public.fact FOR SELECT USING (((client_id IN ( SELECT access.my_clients() AS my_clients)) OR ( SELECT access.has_role('lead'::text) AS has_role)));


--
-- Name: hour_fact read; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY read ON public.hour_fact FOR SELECT USING (((client_id IN ( SELECT access.my_clients() AS my_clients)) OR (session_id = ( SELECT access.my_room() AS my_room))));


--
-- Name: practice read; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY read ON public.practice FOR SELECT USING (true);


--
-- Name: preset read; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY read ON public.preset FOR SELECT USING ((((member_id IS NULL) AND (( SELECT access.me() AS me) IS NOT NULL)) OR (member_id = ( SELECT access.me() AS me))));


--
-- Name: process_note read; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY read ON public.process_note FOR SELECT USING ((client_id IN ( SELECT access.my_clients() AS my_clients)));


--
-- Name: rating read; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY read ON public.rating FOR SELECT USING (((client_id IN ( SELECT access.my_clients() AS my_clients)) OR ( SELECT access.has_role('lead'::text) AS has_role)));


--
-- Name: reach_step read; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY read ON public.reach_step FOR SELECT USING (((client_id IN ( SELECT access.my_clients() AS my_clients)) OR ( SELECT access.has_role('lead'::text) AS has_role)));


--
-- Name: resource read; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY read ON public.resource FOR SELECT USING ((client_id IN ( SELECT access.my_clients() AS my_clients)));


--
-- Name: safety_plan read; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY read ON public.safety_plan FOR SELECT USING ((client_id IN ( SELECT access.my_clients() AS my_clients)));


--
-- Name: session read; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY read ON public.session FOR SELECT USING (((client_id IN ( SELECT access.my_clients() AS my_clients)) OR ( SELECT access.has_role('lead'::text) AS has_role) OR (id = ( SELECT access.my_room() AS my_room)) OR (id = ( SELECT access.my_seat() AS my_seat))));


--
-- Name: session_moment read; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY read ON public.session_moment FOR SELECT USING (((client_id IN ( SELECT access.my_clients() AS my_clients)) OR ( SELECT access.has_role('lead'::text) AS has_role) OR (session_id = ( SELECT access.my_room() AS my_room))));


--
-- Name: session_words read; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY read ON public.session_words FOR SELECT USING ((client_id IN ( SELECT access.my_clients() AS my_clients)));


--
-- Name: set_ending read; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY read ON public.set_ending FOR SELECT USING (((client_id IN ( SELECT access.my_clients() AS my_clients)) OR ( SELECT access.has_role('lead'::text) AS has_role) OR (session_id = ( SELECT access.my_room() AS my_room))));


--
-- Name: set_evidence read; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY read ON public.set_evidence FOR SELECT USING (((client_id IN ( SELECT access.my_clients() AS my_clients)) OR ( SELECT access.has_role('lead'::text) AS has_role) OR (session_id = ( SELECT access.my_room() AS my_room))));


--
-- Name: set_order read; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY read ON public.set_order FOR SELECT USING (((client_id IN ( SELECT access.my_clients() AS my_clients)) OR ( SELECT access.has_role('lead'::text) AS has_role) OR (session_id = ( SELECT access.my_room() AS my_room))));


--
-- Name: steadying read; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY read ON public.steadying FOR SELECT USING ((client_id IN ( SELECT access.my_clients() AS my_clients)));


--
-- Name: stimulus_set read; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY read ON public.stimulus_set FOR SELECT USING (((client_id IN ( SELECT access.my_clients() AS my_clients)) OR ( SELECT access.has_role('lead'::text) AS has_role) OR (session_id = ( SELECT access.my_room() AS my_room)) OR (session_id = ( SELECT access.my_late_seat() AS my_late_seat))));


--
-- Name: target read; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY read ON public.target FOR SELECT USING (((client_id IN ( SELECT access.my_clients() AS my_clients)) OR ( SELECT access.has_role('lead'::text) AS has_role)));


--
-- Name: target_course read; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY read ON public.target_course FOR SELECT USING (((client_id IN ( SELECT access.my_clients() AS my_clients)) OR ( SELECT access.has_role('lead'::text) AS has_role) OR (client_id = ( SELECT access.my_room_client() AS my_room_client))));


--
-- Name: target_plan read; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY read ON public.target_plan FOR SELECT USING ((client_id IN ( SELECT access.my_clients() AS my_clients)));


--
-- Name: target_words read; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY read ON public.target_words FOR SELECT USING ((client_id IN ( SELECT access.my_clients() AS my_clients)));


--
-- Name: unmeasured read; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY read ON public.unmeasured FOR SELECT USING (((client_id IN ( SELECT access.my_clients() AS my_clients)) OR ( SELECT access.has_role('lead'::text) AS has_role)));


--
-- Name: set_ending read_earlier; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY read_earlier ON public.set_ending FOR SELECT USING ((client_id = ( SELECT access.my_room_client() AS my_room_client)));


--
-- Name: set_evidence read_earlier; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY read_earlier ON public.set_evidence FOR SELECT USING ((client_id = ( SELECT access.my_room_client() AS my_room_client)));


--
-- Name: set_order read_earlier; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY read_earlier ON public.set_order FOR SELECT USING ((client_id = ( SELECT access.my_room_client() AS my_room_client)));


--
-- Name: stimulus_set read_earlier; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY read_earlier ON public.stimulus_set FOR SELECT USING ((client_id = ( SELECT access.my_room_client() AS my_room_client)));


--
-- Name: rating read_for_start; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY read_for_start ON public.rating FOR SELECT USING ((client_id = ( SELECT access.my_room_client() AS my_room_client)));


--
-- Name: target refused_look; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY refused_look ON public.target FOR SELECT USING (( SELECT access.is_owner() AS is_owner));


--
-- Name: resource; Type: ROW SECURITY; Schema: public; Owner: leeward_owner
--

ALTER TABLE public.resource ENABLE ROW LEVEL SECURITY;

--
-- Name: safety_plan; Type: ROW SECURITY; Schema: public; Owner: leeward_owner
--

ALTER TABLE public.safety_plan ENABLE ROW LEVEL SECURITY;

--
-- Name: session; Type: ROW SECURITY; Schema: public; Owner: leeward_owner
--

ALTER TABLE public.session ENABLE ROW LEVEL SECURITY;

--
-- Name: session_moment; Type: ROW SECURITY; Schema: public; Owner: leeward_owner
--

ALTER TABLE public.session_moment ENABLE ROW LEVEL SECURITY;

--
-- Name: session_words; Type: ROW SECURITY; Schema: public; Owner: leeward_owner
--

ALTER TABLE public.session_words ENABLE ROW LEVEL SECURITY;

--
-- Name: set_ending; Type: ROW SECURITY; Schema: public; Owner: leeward_owner
--

ALTER TABLE public.set_ending ENABLE ROW LEVEL SECURITY;

--
-- Name: set_evidence; Type: ROW SECURITY; Schema: public; Owner: leeward_owner
--

ALTER TABLE public.set_evidence ENABLE ROW LEVEL SECURITY;

--
-- Name: set_order; Type: ROW SECURITY; Schema: public; Owner: leeward_owner
--

ALTER TABLE public.set_order ENABLE ROW LEVEL SECURITY;

--
-- Name: steadying; Type: ROW SECURITY; Schema: public; Owner: leeward_owner
--

ALTER TABLE public.steadying ENABLE ROW LEVEL SECURITY;

--
-- Name: stimulus_set; Type: ROW SECURITY; Schema: public; Owner: leeward_owner
--

ALTER TABLE public.stimulus_set ENABLE ROW LEVEL SECURITY;

--
-- Name: target; Type: ROW SECURITY; Schema: public; Owner: leeward_owner
--

ALTER TABLE public.target ENABLE ROW LEVEL SECURITY;

--
-- Name: target_course; Type: ROW SECURITY; Schema: public; Owner: leeward_owner
--

ALTER TABLE public.target_course ENABLE ROW LEVEL SECURITY;

--
-- Name: target_plan; Type: ROW SECURITY; Schema: public; Owner: leeward_owner
--

ALTER TABLE public.target_plan ENABLE ROW LEVEL SECURITY;

--
-- Name: target_words; Type: ROW SECURITY; Schema: public; Owner: leeward_owner
--

ALTER TABLE public.target_words ENABLE ROW LEVEL SECURITY;

--
-- Name: unmeasured; Type: ROW SECURITY; Schema: public; Owner: leeward_owner
--

ALTER TABLE public.unmeasured ENABLE ROW LEVEL SECURITY;

--
-- Name: client_key upkeep; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY upkeep ON public.client_key FOR SELECT USING (( SELECT access.is_owner() AS is_owner));


--
-- Name: fact upkeep; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY upkeep ON public.fact FOR SELECT USING (( SELECT access.is_owner() AS is_owner));


--
-- Name: rating upkeep; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY upkeep ON public.rating FOR SELECT USING (( SELECT access.is_owner() AS is_owner));


--
-- Name: session upkeep; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY upkeep ON public.session FOR SELECT USING (( SELECT access.is_owner() AS is_owner));


--
-- Name: stimulus_set upkeep; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY upkeep ON public.stimulus_set FOR SELECT USING (( SELECT access.is_owner() AS is_owner));


--
-- Name: target_course upkeep; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY upkeep ON public.target_course FOR SELECT USING (( SELECT access.is_owner() AS is_owner));


--
-- Name: session upkeep_end; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY upkeep_end ON public.session FOR UPDATE USING ((( SELECT access.is_owner() AS is_owner) AND (client_id IN ( SELECT access.rehearsals() AS rehearsals))));


--
-- Name: session upkeep_find; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY upkeep_find ON public.session FOR SELECT USING ((( SELECT access.is_owner() AS is_owner) AND (client_id IN ( SELECT access.rehearsals() AS rehearsals))));


--
-- Name: target_course upkeep_fold; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY upkeep_fold ON public.target_course FOR UPDATE USING (( SELECT access.is_owner() AS is_owner));


--
-- Name: SCHEMA access; Type: ACL; Schema: -; Owner: leeward_owner
--

GRANT USAGE ON SCHEMA access TO leeward_app;
GRANT USAGE ON SCHEMA access TO leeward_signin;


--
-- Name: SCHEMA public; Type: ACL; Schema: -; Owner: pg_database_owner
--

GRANT USAGE ON SCHEMA public TO leeward_app;


--
-- Name: FUNCTION accept_invitation(hash bytea, new_member uuid, passkey_id uuid, credential bytea, passkey jsonb, label text); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.accept_invitation(hash bytea, new_member uuid, passkey_id uuid, credential bytea, passkey jsonb, label text) FROM PUBLIC;
GRANT ALL ON FUNCTION access.accept_invitation(hash bytea, new_member uuid, passkey_id uuid, credential bytea, passkey jsonb, label text) TO leeward_signin;


--
-- Name: FUNCTION admit_seat(which uuid, wanted uuid); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.admit_seat(which uuid, wanted uuid) FROM PUBLIC;
GRANT ALL ON FUNCTION access.admit_seat(which uuid, wanted uuid) TO leeward_app;


--
-- Name: FUNCTION agree_replacement(which uuid, hash bytea, until timestamp with time zone); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.agree_replacement(which uuid, hash bytea, until timestamp with time zone) FROM PUBLIC;
GRANT ALL ON FUNCTION access.agree_replacement(which uuid, hash bytea, until timestamp with time zone) TO leeward_app;


--
-- Name: FUNCTION answer_request(which uuid, said text); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.answer_request(which uuid, said text) FROM PUBLIC;
GRANT ALL ON FUNCTION access.answer_request(which uuid, said text) TO leeward_app;


--
-- Name: FUNCTION ask_replacement(which uuid, who uuid); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.ask_replacement(which uuid, who uuid) FROM PUBLIC;
GRANT ALL ON FUNCTION access.ask_replacement(which uuid, who uuid) TO leeward_app;


--
-- Name: FUNCTION audit(act text, client uuid, object uuid); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.audit(act text, client uuid, object uuid) FROM PUBLIC;
GRANT ALL ON FUNCTION access.audit(act text, client uuid, object uuid) TO leeward_app;
GRANT ALL ON FUNCTION access.audit(act text, client uuid, object uuid) TO leeward_signin;


--
-- Name: FUNCTION audit_hash(previous bytea, seq bigint, at timestamp with time zone, kind text, member uuid, act text, client uuid, object uuid); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.audit_hash(previous bytea, seq bigint, at timestamp with time zone, kind text, member uuid, act text, client uuid, object uuid) FROM PUBLIC;
GRANT ALL ON FUNCTION access.audit_hash(previous bytea, seq bigint, at timestamp with time zone, kind text, member uuid, act text, client uuid, object uuid) TO leeward_app;


--
-- Name: FUNCTION begin_ceremony(hash bytea, ceremony jsonb); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.begin_ceremony(hash bytea, ceremony jsonb) FROM PUBLIC;
GRANT ALL ON FUNCTION access.begin_ceremony(hash bytea, ceremony jsonb) TO leeward_signin;


--
-- Name: FUNCTION begin_request(which uuid, of_act text, said bytea); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.begin_request(which uuid, of_act text, said bytea) FROM PUBLIC;
GRANT ALL ON FUNCTION access.begin_request(which uuid, of_act text, said bytea) TO leeward_app;


--
-- Name: FUNCTION care_links(); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.care_links() FROM PUBLIC;
GRANT ALL ON FUNCTION access.care_links() TO leeward_app;


--
-- Name: FUNCTION change_roles(who uuid, was text[], wanted text[]); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.change_roles(who uuid, was text[], wanted text[]) FROM PUBLIC;
GRANT ALL ON FUNCTION access.change_roles(who uuid, was text[], wanted text[]) TO leeward_app;


--
-- Name: FUNCTION claim_seat(link uuid, seat_id uuid, hash bytea, on_device text, earlier bytea); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.claim_seat(link uuid, seat_id uuid, hash bytea, on_device text, earlier bytea) FROM PUBLIC;
GRANT ALL ON FUNCTION access.claim_seat(link uuid, seat_id uuid, hash bytea, on_device text, earlier bytea) TO leeward_app;


--
-- Name: FUNCTION claimed_seat(link_hash bytea, hash bytea); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.claimed_seat(link_hash bytea, hash bytea) FROM PUBLIC;
GRANT ALL ON FUNCTION access.claimed_seat(link_hash bytea, hash bytea) TO leeward_app;


--
-- Name: FUNCTION clients_of(who uuid); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.clients_of(who uuid) FROM PUBLIC;
GRANT ALL ON FUNCTION access.clients_of(who uuid) TO leeward_app;


--
-- Name: FUNCTION close_signin(which uuid); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.close_signin(which uuid) FROM PUBLIC;
GRANT ALL ON FUNCTION access.close_signin(which uuid) TO leeward_app;


--
-- Name: FUNCTION decide_seat(which uuid, wanted uuid, move boolean); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.decide_seat(which uuid, wanted uuid, move boolean) FROM PUBLIC;
GRANT ALL ON FUNCTION access.decide_seat(which uuid, wanted uuid, move boolean) TO leeward_app;


--
-- Name: FUNCTION demo_member(wanted text); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.demo_member(wanted text) FROM PUBLIC;
GRANT ALL ON FUNCTION access.demo_member(wanted text) TO leeward_signin;


--
-- Name: FUNCTION end_ceremony(hash bytea); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.end_ceremony(hash bytea) FROM PUBLIC;
GRANT ALL ON FUNCTION access.end_ceremony(hash bytea) TO leeward_signin;


--
-- Name: FUNCTION end_invitations_of(who uuid); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.end_invitations_of(who uuid) FROM PUBLIC;


--
-- Name: FUNCTION end_links_of_signin(); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.end_links_of_signin() FROM PUBLIC;


--
-- Name: FUNCTION end_membership(who uuid); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.end_membership(who uuid) FROM PUBLIC;
GRANT ALL ON FUNCTION access.end_membership(who uuid) TO leeward_app;


--
-- Name: FUNCTION hand_over(link_id uuid, client uuid, from_member uuid, to_member uuid); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.hand_over(link_id uuid, client uuid, from_member uuid, to_member uuid) FROM PUBLIC;
GRANT ALL ON FUNCTION access.hand_over(link_id uuid, client uuid, from_member uuid, to_member uuid) TO leeward_app;


--
-- Name: FUNCTION has_role(wanted text); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.has_role(wanted text) FROM PUBLIC;
GRANT ALL ON FUNCTION access.has_role(wanted text) TO leeward_app;


--
-- Name: FUNCTION invitations(); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.invitations() FROM PUBLIC;
GRANT ALL ON FUNCTION access.invitations() TO leeward_app;


--
-- Name: FUNCTION invite(hash bytea, for_member uuid, for_name text, for_roles text[], until timestamp with time zone); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.invite(hash bytea, for_member uuid, for_name text, for_roles text[], until timestamp with time zone) FROM PUBLIC;
GRANT ALL ON FUNCTION access.invite(hash bytea, for_member uuid, for_name text, for_roles text[], until timestamp with time zone) TO leeward_app;
GRANT ALL ON FUNCTION access.invite(hash bytea, for_member uuid, for_name text, for_roles text[], until timestamp with time zone) TO leeward_signin;


--
-- Name: FUNCTION is_fresh(); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.is_fresh() FROM PUBLIC;
GRANT ALL ON FUNCTION access.is_fresh() TO leeward_app;


--
-- Name: FUNCTION is_owner(); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.is_owner() FROM PUBLIC;
GRANT ALL ON FUNCTION access.is_owner() TO leeward_app;


--
-- Name: FUNCTION keep_act(kind text, member uuid, act text, client uuid, object uuid); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.keep_act(kind text, member uuid, act text, client uuid, object uuid) FROM PUBLIC;


--
-- Name: FUNCTION keep_gate(); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.keep_gate() FROM PUBLIC;


--
-- Name: FUNCTION keep_key_check(which integer, fresh bytea); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.keep_key_check(which integer, fresh bytea) FROM PUBLIC;
GRANT ALL ON FUNCTION access.keep_key_check(which integer, fresh bytea) TO leeward_app;


--
-- Name: FUNCTION keep_room(); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.keep_room() FROM PUBLIC;
GRANT ALL ON FUNCTION access.keep_room() TO leeward_app;


--
-- Name: FUNCTION keep_session(); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.keep_session() FROM PUBLIC;


--
-- Name: FUNCTION key_check(which integer); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.key_check(which integer) FROM PUBLIC;
GRANT ALL ON FUNCTION access.key_check(which integer) TO leeward_app;


--
-- Name: FUNCTION keys_in_use(); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.keys_in_use() FROM PUBLIC;
GRANT ALL ON FUNCTION access.keys_in_use() TO leeward_app;


--
-- Name: FUNCTION keys_to_try(which integer); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.keys_to_try(which integer) FROM PUBLIC;
GRANT ALL ON FUNCTION access.keys_to_try(which integer) TO leeward_app;


--
-- Name: FUNCTION kind(); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.kind() FROM PUBLIC;
GRANT ALL ON FUNCTION access.kind() TO leeward_app;


--
-- Name: FUNCTION last_words(); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.last_words() FROM PUBLIC;
GRANT ALL ON FUNCTION access.last_words() TO leeward_app;


--
-- Name: FUNCTION leave_seat(); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.leave_seat() FROM PUBLIC;
GRANT ALL ON FUNCTION access.leave_seat() TO leeward_app;


--
-- Name: FUNCTION lock_administrators(); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.lock_administrators() FROM PUBLIC;


--
-- Name: FUNCTION may_hand_over(); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.may_hand_over() FROM PUBLIC;
GRANT ALL ON FUNCTION access.may_hand_over() TO leeward_app;


--
-- Name: FUNCTION me(); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.me() FROM PUBLIC;
GRANT ALL ON FUNCTION access.me() TO leeward_app;


--
-- Name: FUNCTION members(); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.members() FROM PUBLIC;
GRANT ALL ON FUNCTION access.members() TO leeward_app;


--
-- Name: FUNCTION mint_code(which uuid, phc text); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.mint_code(which uuid, phc text) FROM PUBLIC;
GRANT ALL ON FUNCTION access.mint_code(which uuid, phc text) TO leeward_app;


--
-- Name: FUNCTION mint_link(link_id uuid, hash bytea, which uuid, until timestamp with time zone, phc text); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.mint_link(link_id uuid, hash bytea, which uuid, until timestamp with time zone, phc text) FROM PUBLIC;
GRANT ALL ON FUNCTION access.mint_link(link_id uuid, hash bytea, which uuid, until timestamp with time zone, phc text) TO leeward_app;


--
-- Name: FUNCTION must_be_fresh(); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.must_be_fresh() FROM PUBLIC;
GRANT ALL ON FUNCTION access.must_be_fresh() TO leeward_app;


--
-- Name: FUNCTION my_clients(); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.my_clients() FROM PUBLIC;
GRANT ALL ON FUNCTION access.my_clients() TO leeward_app;


--
-- Name: FUNCTION my_late_seat(); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.my_late_seat() FROM PUBLIC;
GRANT ALL ON FUNCTION access.my_late_seat() TO leeward_app;


--
-- Name: FUNCTION my_news(); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.my_news() FROM PUBLIC;
GRANT ALL ON FUNCTION access.my_news() TO leeward_app;


--
-- Name: FUNCTION my_passkeys(); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.my_passkeys() FROM PUBLIC;
GRANT ALL ON FUNCTION access.my_passkeys() TO leeward_app;


--
-- Name: FUNCTION my_rehearsal(); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.my_rehearsal() FROM PUBLIC;
GRANT ALL ON FUNCTION access.my_rehearsal() TO leeward_app;


--
-- Name: FUNCTION my_room(); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.my_room() FROM PUBLIC;
GRANT ALL ON FUNCTION access.my_room() TO leeward_app;


--
-- Name: FUNCTION my_room_client(); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.my_room_client() FROM PUBLIC;
GRANT ALL ON FUNCTION access.my_room_client() TO leeward_app;


--
-- Name: FUNCTION my_seat(); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.my_seat() FROM PUBLIC;
GRANT ALL ON FUNCTION access.my_seat() TO leeward_app;


--
-- Name: FUNCTION my_signin(); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.my_signin() FROM PUBLIC;
GRANT ALL ON FUNCTION access.my_signin() TO leeward_app;


--
-- Name: FUNCTION my_signins(); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.my_signins() FROM PUBLIC;
GRANT ALL ON FUNCTION access.my_signins() TO leeward_app;


--
-- Name: FUNCTION news_read(which uuid); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.news_read(which uuid) FROM PUBLIC;
GRANT ALL ON FUNCTION access.news_read(which uuid) TO leeward_app;


--
-- Name: FUNCTION note_refused(which uuid); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.note_refused(which uuid) FROM PUBLIC;
GRANT ALL ON FUNCTION access.note_refused(which uuid) TO leeward_app;


--
-- Name: FUNCTION now(); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.now() FROM PUBLIC;
GRANT ALL ON FUNCTION access.now() TO leeward_app;


--
-- Name: FUNCTION open_invitation(hash bytea); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.open_invitation(hash bytea) FROM PUBLIC;
GRANT ALL ON FUNCTION access.open_invitation(hash bytea) TO leeward_signin;


--
-- Name: FUNCTION open_room(hash bytea, which uuid); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.open_room(hash bytea, which uuid) FROM PUBLIC;
GRANT ALL ON FUNCTION access.open_room(hash bytea, which uuid) TO leeward_app;


--
-- Name: FUNCTION open_signin(signin_id uuid, hash bytea, who uuid, on_device text); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.open_signin(signin_id uuid, hash bytea, who uuid, on_device text) FROM PUBLIC;
GRANT ALL ON FUNCTION access.open_signin(signin_id uuid, hash bytea, who uuid, on_device text) TO leeward_signin;


--
-- Name: FUNCTION passkey_shown(who uuid); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.passkey_shown(who uuid) FROM PUBLIC;
GRANT ALL ON FUNCTION access.passkey_shown(who uuid) TO leeward_signin;


--
-- Name: FUNCTION passkey_used(which uuid, newer jsonb); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.passkey_used(which uuid, newer jsonb) FROM PUBLIC;
GRANT ALL ON FUNCTION access.passkey_used(which uuid, newer jsonb) TO leeward_signin;


--
-- Name: FUNCTION passkeys_of(who uuid); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.passkeys_of(who uuid) FROM PUBLIC;
GRANT ALL ON FUNCTION access.passkeys_of(who uuid) TO leeward_signin;


--
-- Name: FUNCTION refuse_replacement(which uuid); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.refuse_replacement(which uuid) FROM PUBLIC;
GRANT ALL ON FUNCTION access.refuse_replacement(which uuid) TO leeward_app;


--
-- Name: FUNCTION rehearsals(); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.rehearsals() FROM PUBLIC;
GRANT ALL ON FUNCTION access.rehearsals() TO leeward_app;


--
-- Name: FUNCTION rehearsals_to_know(); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.rehearsals_to_know() FROM PUBLIC;
GRANT ALL ON FUNCTION access.rehearsals_to_know() TO leeward_app;


--
-- Name: FUNCTION remove_passkey(which uuid); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.remove_passkey(which uuid) FROM PUBLIC;
GRANT ALL ON FUNCTION access.remove_passkey(which uuid) TO leeward_app;


--
-- Name: FUNCTION remove_seat(which uuid, wanted uuid); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.remove_seat(which uuid, wanted uuid) FROM PUBLIC;
GRANT ALL ON FUNCTION access.remove_seat(which uuid, wanted uuid) TO leeward_app;


--
-- Name: FUNCTION replacements(); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.replacements() FROM PUBLIC;
GRANT ALL ON FUNCTION access.replacements() TO leeward_app;


--
-- Name: FUNCTION saved_now(which uuid); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.saved_now(which uuid) FROM PUBLIC;
GRANT ALL ON FUNCTION access.saved_now(which uuid) TO leeward_app;


--
-- Name: FUNCTION schema_version(); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.schema_version() FROM PUBLIC;
GRANT ALL ON FUNCTION access.schema_version() TO leeward_app;


--
-- Name: FUNCTION seat_is_over(); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.seat_is_over() FROM PUBLIC;
GRANT ALL ON FUNCTION access.seat_is_over() TO leeward_app;


--
-- Name: FUNCTION seat_rehearses(); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.seat_rehearses() FROM PUBLIC;
GRANT ALL ON FUNCTION access.seat_rehearses() TO leeward_app;


--
-- Name: FUNCTION seat_state(); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.seat_state() FROM PUBLIC;
GRANT ALL ON FUNCTION access.seat_state() TO leeward_app;


--
-- Name: FUNCTION seat_within(after interval); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.seat_within(after interval) FROM PUBLIC;


--
-- Name: FUNCTION seats(which uuid); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.seats(which uuid) FROM PUBLIC;
GRANT ALL ON FUNCTION access.seats(which uuid) TO leeward_app;


--
-- Name: FUNCTION take_on(link_id uuid, client uuid); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.take_on(link_id uuid, client uuid) FROM PUBLIC;
GRANT ALL ON FUNCTION access.take_on(link_id uuid, client uuid) TO leeward_app;


--
-- Name: FUNCTION take_on_rehearsal(link_id uuid, client uuid); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.take_on_rehearsal(link_id uuid, client uuid) FROM PUBLIC;
GRANT ALL ON FUNCTION access.take_on_rehearsal(link_id uuid, client uuid) TO leeward_app;


--
-- Name: FUNCTION tidy(OUT signins bigint, OUT invitations bigint, OUT ceremonies bigint, OUT seats bigint, OUT links bigint, OUT room_tokens bigint, OUT request_keys bigint, OUT rehearsals uuid[]); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.tidy(OUT signins bigint, OUT invitations bigint, OUT ceremonies bigint, OUT seats bigint, OUT links bigint, OUT room_tokens bigint, OUT request_keys bigint, OUT rehearsals uuid[]) FROM PUBLIC;
GRANT ALL ON FUNCTION access.tidy(OUT signins bigint, OUT invitations bigint, OUT ceremonies bigint, OUT seats bigint, OUT links bigint, OUT room_tokens bigint, OUT request_keys bigint, OUT rehearsals uuid[]) TO leeward_app;


--
-- Name: FUNCTION token_hash(); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.token_hash() FROM PUBLIC;
GRANT ALL ON FUNCTION access.token_hash() TO leeward_app;


--
-- Name: FUNCTION touch_signin(); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.touch_signin() FROM PUBLIC;
GRANT ALL ON FUNCTION access.touch_signin() TO leeward_app;


--
-- Name: FUNCTION treats_session(which uuid); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.treats_session(which uuid) FROM PUBLIC;
GRANT ALL ON FUNCTION access.treats_session(which uuid) TO leeward_app;


--
-- Name: FUNCTION try_code(hash bytea); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.try_code(hash bytea) FROM PUBLIC;
GRANT ALL ON FUNCTION access.try_code(hash bytea) TO leeward_app;


--
-- Name: FUNCTION turn_session(which uuid, wanted uuid, was uuid); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.turn_session(which uuid, wanted uuid, was uuid) FROM PUBLIC;
GRANT ALL ON FUNCTION access.turn_session(which uuid, wanted uuid, was uuid) TO leeward_app;


--
-- Name: FUNCTION whoami(); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.whoami() FROM PUBLIC;
GRANT ALL ON FUNCTION access.whoami() TO leeward_app;


--
-- Name: FUNCTION whom_we_meet(); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.whom_we_meet() FROM PUBLIC;
GRANT ALL ON FUNCTION access.whom_we_meet() TO leeward_app;


--
-- Name: FUNCTION withdraw_invitation(which bytea); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.withdraw_invitation(which bytea) FROM PUBLIC;
GRANT ALL ON FUNCTION access.withdraw_invitation(which bytea) TO leeward_app;


--
-- Name: TABLE adverse_account; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT ON TABLE public.adverse_account TO leeward_app;


--
-- Name: COLUMN adverse_account.event_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(event_id) ON TABLE public.adverse_account TO leeward_app;


--
-- Name: COLUMN adverse_account.client_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(client_id) ON TABLE public.adverse_account TO leeward_app;


--
-- Name: COLUMN adverse_account.account; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(account) ON TABLE public.adverse_account TO leeward_app;


--
-- Name: TABLE adverse_event; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT ON TABLE public.adverse_event TO leeward_app;


--
-- Name: COLUMN adverse_event.id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(id) ON TABLE public.adverse_event TO leeward_app;


--
-- Name: COLUMN adverse_event.client_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(client_id) ON TABLE public.adverse_event TO leeward_app;


--
-- Name: COLUMN adverse_event.session_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(session_id) ON TABLE public.adverse_event TO leeward_app;


--
-- Name: COLUMN adverse_event.number; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(number) ON TABLE public.adverse_event TO leeward_app;


--
-- Name: COLUMN adverse_event.kind; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(kind) ON TABLE public.adverse_event TO leeward_app;


--
-- Name: COLUMN adverse_event.happened_at; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(happened_at) ON TABLE public.adverse_event TO leeward_app;


--
-- Name: COLUMN adverse_event.done; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(done) ON TABLE public.adverse_event TO leeward_app;


--
-- Name: COLUMN adverse_event.replaces; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(replaces) ON TABLE public.adverse_event TO leeward_app;


--
-- Name: COLUMN adverse_event.written_by; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(written_by) ON TABLE public.adverse_event TO leeward_app;


--
-- Name: COLUMN adverse_event.written_at; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(written_at) ON TABLE public.adverse_event TO leeward_app;


--
-- Name: TABLE after_check; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT ON TABLE public.after_check TO leeward_app;


--
-- Name: COLUMN after_check.session_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(session_id) ON TABLE public.after_check TO leeward_app;


--
-- Name: COLUMN after_check.client_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(client_id) ON TABLE public.after_check TO leeward_app;


--
-- Name: COLUMN after_check.member_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(member_id) ON TABLE public.after_check TO leeward_app;


--
-- Name: COLUMN after_check.reason; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(reason) ON TABLE public.after_check TO leeward_app;


--
-- Name: COLUMN after_check.due_from; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(due_from) ON TABLE public.after_check TO leeward_app;


--
-- Name: COLUMN after_check.due_until; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(due_until) ON TABLE public.after_check TO leeward_app;


--
-- Name: SEQUENCE kept_order; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT USAGE ON SEQUENCE public.kept_order TO leeward_app;


--
-- Name: TABLE after_check_try; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT ON TABLE public.after_check_try TO leeward_app;


--
-- Name: COLUMN after_check_try.id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(id) ON TABLE public.after_check_try TO leeward_app;


--
-- Name: COLUMN after_check_try.session_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(session_id) ON TABLE public.after_check_try TO leeward_app;


--
-- Name: COLUMN after_check_try.client_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(client_id) ON TABLE public.after_check_try TO leeward_app;


--
-- Name: COLUMN after_check_try.outcome; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(outcome) ON TABLE public.after_check_try TO leeward_app;


--
-- Name: COLUMN after_check_try.entered_by; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(entered_by) ON TABLE public.after_check_try TO leeward_app;


--
-- Name: COLUMN after_check_try.at; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(at) ON TABLE public.after_check_try TO leeward_app;


--
-- Name: TABLE audit; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT ON TABLE public.audit TO leeward_app;


--
-- Name: TABLE client; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT ON TABLE public.client TO leeward_app;


--
-- Name: COLUMN client.id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(id) ON TABLE public.client TO leeward_app;


--
-- Name: COLUMN client.opened_on; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(opened_on) ON TABLE public.client TO leeward_app;


--
-- Name: COLUMN client.archived_at; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT UPDATE(archived_at) ON TABLE public.client TO leeward_app;


--
-- Name: COLUMN client.seizures; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(seizures),UPDATE(seizures) ON TABLE public.client TO leeward_app;


--
-- Name: COLUMN client.eye_condition; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(eye_condition),UPDATE(eye_condition) ON TABLE public.client TO leeward_app;


--
-- Name: COLUMN client.version; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(version),UPDATE(version) ON TABLE public.client TO leeward_app;


--
-- Name: COLUMN client.plan_version; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT UPDATE(plan_version) ON TABLE public.client TO leeward_app;


--
-- Name: TABLE session; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT ON TABLE public.session TO leeward_app;


--
-- Name: COLUMN session.id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(id) ON TABLE public.session TO leeward_app;


--
-- Name: COLUMN session.client_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(client_id) ON TABLE public.session TO leeward_app;


--
-- Name: COLUMN session.member_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(member_id) ON TABLE public.session TO leeward_app;


--
-- Name: COLUMN session.target_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(target_id) ON TABLE public.session TO leeward_app;


--
-- Name: COLUMN session.number; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(number) ON TABLE public.session TO leeward_app;


--
-- Name: COLUMN session.zone; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(zone) ON TABLE public.session TO leeward_app;


--
-- Name: COLUMN session.opened_at; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(opened_at) ON TABLE public.session TO leeward_app;


--
-- Name: COLUMN session.admitted_at; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT UPDATE(admitted_at) ON TABLE public.session TO leeward_app;


--
-- Name: COLUMN session.ended_at; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT UPDATE(ended_at) ON TABLE public.session TO leeward_app;


--
-- Name: COLUMN session.closing; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT UPDATE(closing) ON TABLE public.session TO leeward_app;


--
-- Name: COLUMN session.room_epoch; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(room_epoch),UPDATE(room_epoch) ON TABLE public.session TO leeward_app;


--
-- Name: COLUMN session.room_holder; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT UPDATE(room_holder) ON TABLE public.session TO leeward_app;


--
-- Name: COLUMN session.version; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(version),UPDATE(version) ON TABLE public.session TO leeward_app;


--
-- Name: COLUMN session.over_at; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT UPDATE(over_at) ON TABLE public.session TO leeward_app;


--
-- Name: TABLE stimulus_set; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT ON TABLE public.stimulus_set TO leeward_app;


--
-- Name: COLUMN stimulus_set.id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(id) ON TABLE public.stimulus_set TO leeward_app;


--
-- Name: COLUMN stimulus_set.session_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(session_id) ON TABLE public.stimulus_set TO leeward_app;


--
-- Name: COLUMN stimulus_set.client_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(client_id) ON TABLE public.stimulus_set TO leeward_app;


--
-- Name: COLUMN stimulus_set.target_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(target_id) ON TABLE public.stimulus_set TO leeward_app;


--
-- Name: COLUMN stimulus_set.number; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(number) ON TABLE public.stimulus_set TO leeward_app;


--
-- Name: COLUMN stimulus_set.epoch; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(epoch) ON TABLE public.stimulus_set TO leeward_app;


--
-- Name: COLUMN stimulus_set.plan; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(plan) ON TABLE public.stimulus_set TO leeward_app;


--
-- Name: COLUMN stimulus_set.recorded_at; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(recorded_at) ON TABLE public.stimulus_set TO leeward_app;


--
-- Name: TABLE target; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT ON TABLE public.target TO leeward_app;


--
-- Name: COLUMN target.id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(id) ON TABLE public.target TO leeward_app;


--
-- Name: COLUMN target.client_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(client_id) ON TABLE public.target TO leeward_app;


--
-- Name: COLUMN target.number; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(number) ON TABLE public.target TO leeward_app;


--
-- Name: COLUMN target.prong; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(prong),UPDATE(prong) ON TABLE public.target TO leeward_app;


--
-- Name: COLUMN target.opened_at; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(opened_at) ON TABLE public.target TO leeward_app;


--
-- Name: COLUMN target.archived_at; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT UPDATE(archived_at) ON TABLE public.target TO leeward_app;


--
-- Name: COLUMN target.version; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(version),UPDATE(version) ON TABLE public.target TO leeward_app;


--
-- Name: TABLE target_course; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT ON TABLE public.target_course TO leeward_app;


--
-- Name: COLUMN target_course.target_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(target_id) ON TABLE public.target_course TO leeward_app;


--
-- Name: COLUMN target_course.client_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(client_id) ON TABLE public.target_course TO leeward_app;


--
-- Name: COLUMN target_course.rules; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(rules),UPDATE(rules) ON TABLE public.target_course TO leeward_app;


--
-- Name: COLUMN target_course.procedure; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(procedure),UPDATE(procedure) ON TABLE public.target_course TO leeward_app;


--
-- Name: COLUMN target_course.state; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(state),UPDATE(state) ON TABLE public.target_course TO leeward_app;


--
-- Name: COLUMN target_course.held; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(held),UPDATE(held) ON TABLE public.target_course TO leeward_app;


--
-- Name: COLUMN target_course.because; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(because),UPDATE(because) ON TABLE public.target_course TO leeward_app;


--
-- Name: COLUMN target_course.unfounded; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(unfounded),UPDATE(unfounded) ON TABLE public.target_course TO leeward_app;


--
-- Name: COLUMN target_course.version; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(version),UPDATE(version) ON TABLE public.target_course TO leeward_app;


--
-- Name: TABLE client_count; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT ON TABLE public.client_count TO leeward_app;


--
-- Name: TABLE client_details; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT ON TABLE public.client_details TO leeward_app;


--
-- Name: COLUMN client_details.client_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(client_id) ON TABLE public.client_details TO leeward_app;


--
-- Name: COLUMN client_details.name; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(name),UPDATE(name) ON TABLE public.client_details TO leeward_app;


--
-- Name: COLUMN client_details.addressed_as; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(addressed_as),UPDATE(addressed_as) ON TABLE public.client_details TO leeward_app;


--
-- Name: COLUMN client_details.phone; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(phone),UPDATE(phone) ON TABLE public.client_details TO leeward_app;


--
-- Name: COLUMN client_details.contact_name; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(contact_name),UPDATE(contact_name) ON TABLE public.client_details TO leeward_app;


--
-- Name: COLUMN client_details.contact_phone; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(contact_phone),UPDATE(contact_phone) ON TABLE public.client_details TO leeward_app;


--
-- Name: COLUMN client_details.usual_location; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(usual_location),UPDATE(usual_location) ON TABLE public.client_details TO leeward_app;


--
-- Name: COLUMN client_details.version; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(version),UPDATE(version) ON TABLE public.client_details TO leeward_app;


--
-- Name: TABLE client_key; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT ON TABLE public.client_key TO leeward_app;


--
-- Name: COLUMN client_key.client_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(client_id) ON TABLE public.client_key TO leeward_app;


--
-- Name: COLUMN client_key.key_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(key_id) ON TABLE public.client_key TO leeward_app;


--
-- Name: COLUMN client_key.wrapped; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(wrapped) ON TABLE public.client_key TO leeward_app;


--
-- Name: TABLE client_reach; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT ON TABLE public.client_reach TO leeward_app;


--
-- Name: COLUMN client_reach.client_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(client_id) ON TABLE public.client_reach TO leeward_app;


--
-- Name: COLUMN client_reach.phone_use; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(phone_use),UPDATE(phone_use) ON TABLE public.client_reach TO leeward_app;


--
-- Name: COLUMN client_reach.contact_use; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(contact_use),UPDATE(contact_use) ON TABLE public.client_reach TO leeward_app;


--
-- Name: COLUMN client_reach.help_from_here; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(help_from_here),UPDATE(help_from_here) ON TABLE public.client_reach TO leeward_app;


--
-- Name: COLUMN client_reach.tried_on; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(tried_on),UPDATE(tried_on) ON TABLE public.client_reach TO leeward_app;


--
-- Name: COLUMN client_reach.help_there; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(help_there),UPDATE(help_there) ON TABLE public.client_reach TO leeward_app;


--
-- Name: COLUMN client_reach.written_at; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(written_at),UPDATE(written_at) ON TABLE public.client_reach TO leeward_app;


--
-- Name: COLUMN client_reach.version; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(version),UPDATE(version) ON TABLE public.client_reach TO leeward_app;


--
-- Name: TABLE closing_draft; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT ON TABLE public.closing_draft TO leeward_app;


--
-- Name: COLUMN closing_draft.session_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(session_id) ON TABLE public.closing_draft TO leeward_app;


--
-- Name: COLUMN closing_draft.client_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(client_id) ON TABLE public.closing_draft TO leeward_app;


--
-- Name: COLUMN closing_draft.typed; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(typed),UPDATE(typed) ON TABLE public.closing_draft TO leeward_app;


--
-- Name: COLUMN closing_draft.written_by; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(written_by),UPDATE(written_by) ON TABLE public.closing_draft TO leeward_app;


--
-- Name: COLUMN closing_draft.written_at; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(written_at),UPDATE(written_at) ON TABLE public.closing_draft TO leeward_app;


--
-- Name: COLUMN closing_draft.version; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(version),UPDATE(version) ON TABLE public.closing_draft TO leeward_app;


--
-- Name: TABLE cluster; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT ON TABLE public.cluster TO leeward_app;


--
-- Name: COLUMN cluster.id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(id) ON TABLE public.cluster TO leeward_app;


--
-- Name: COLUMN cluster.client_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(client_id) ON TABLE public.cluster TO leeward_app;


--
-- Name: COLUMN cluster.number; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(number) ON TABLE public.cluster TO leeward_app;


--
-- Name: COLUMN cluster.name; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(name),UPDATE(name) ON TABLE public.cluster TO leeward_app;


--
-- Name: COLUMN cluster.theme; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(theme),UPDATE(theme) ON TABLE public.cluster TO leeward_app;


--
-- Name: COLUMN cluster.earliest_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT UPDATE(earliest_id) ON TABLE public.cluster TO leeward_app;


--
-- Name: COLUMN cluster.worst_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT UPDATE(worst_id) ON TABLE public.cluster TO leeward_app;


--
-- Name: COLUMN cluster.version; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(version),UPDATE(version) ON TABLE public.cluster TO leeward_app;


--
-- Name: TABLE comfort; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT ON TABLE public.comfort TO leeward_app;


--
-- Name: COLUMN comfort.client_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(client_id) ON TABLE public.comfort TO leeward_app;


--
-- Name: COLUMN comfort.path; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(path),UPDATE(path) ON TABLE public.comfort TO leeward_app;


--
-- Name: COLUMN comfort.dot; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(dot),UPDATE(dot) ON TABLE public.comfort TO leeward_app;


--
-- Name: COLUMN comfort.comfort; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(comfort),UPDATE(comfort) ON TABLE public.comfort TO leeward_app;


--
-- Name: COLUMN comfort.filled_at; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(filled_at),UPDATE(filled_at) ON TABLE public.comfort TO leeward_app;


--
-- Name: COLUMN comfort.version; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(version),UPDATE(version) ON TABLE public.comfort TO leeward_app;


--
-- Name: TABLE fact; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT ON TABLE public.fact TO leeward_app;


--
-- Name: COLUMN fact.id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(id) ON TABLE public.fact TO leeward_app;


--
-- Name: COLUMN fact.client_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(client_id) ON TABLE public.fact TO leeward_app;


--
-- Name: COLUMN fact.session_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(session_id) ON TABLE public.fact TO leeward_app;


--
-- Name: COLUMN fact.target_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(target_id) ON TABLE public.fact TO leeward_app;


--
-- Name: COLUMN fact.set_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(set_id) ON TABLE public.fact TO leeward_app;


--
-- Name: COLUMN fact.kind; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(kind) ON TABLE public.fact TO leeward_app;


--
-- Name: COLUMN fact.code; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(code) ON TABLE public.fact TO leeward_app;


--
-- Name: COLUMN fact.because; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(because) ON TABLE public.fact TO leeward_app;


--
-- Name: COLUMN fact.moment; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(moment) ON TABLE public.fact TO leeward_app;


--
-- Name: COLUMN fact.replaces; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(replaces) ON TABLE public.fact TO leeward_app;


--
-- Name: COLUMN fact.entered_by; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(entered_by) ON TABLE public.fact TO leeward_app;


--
-- Name: COLUMN fact.at; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(at) ON TABLE public.fact TO leeward_app;


--
-- Name: TABLE hour_fact; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT ON TABLE public.hour_fact TO leeward_app;


--
-- Name: COLUMN hour_fact.id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(id) ON TABLE public.hour_fact TO leeward_app;


--
-- Name: COLUMN hour_fact.client_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(client_id) ON TABLE public.hour_fact TO leeward_app;


--
-- Name: COLUMN hour_fact.session_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(session_id) ON TABLE public.hour_fact TO leeward_app;


--
-- Name: COLUMN hour_fact.kind; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(kind) ON TABLE public.hour_fact TO leeward_app;


--
-- Name: COLUMN hour_fact.code; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(code) ON TABLE public.hour_fact TO leeward_app;


--
-- Name: COLUMN hour_fact.because; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(because) ON TABLE public.hour_fact TO leeward_app;


--
-- Name: COLUMN hour_fact.again; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(again) ON TABLE public.hour_fact TO leeward_app;


--
-- Name: COLUMN hour_fact.replaces; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(replaces) ON TABLE public.hour_fact TO leeward_app;


--
-- Name: COLUMN hour_fact.entered_by; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(entered_by) ON TABLE public.hour_fact TO leeward_app;


--
-- Name: COLUMN hour_fact.at; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(at) ON TABLE public.hour_fact TO leeward_app;


--
-- Name: TABLE practice; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT ON TABLE public.practice TO leeward_app;


--
-- Name: COLUMN practice.day_order; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT UPDATE(day_order) ON TABLE public.practice TO leeward_app;


--
-- Name: COLUMN practice.clock; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT UPDATE(clock) ON TABLE public.practice TO leeward_app;


--
-- Name: COLUMN practice.tells_whom; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT UPDATE(tells_whom) ON TABLE public.practice TO leeward_app;


--
-- Name: COLUMN practice.minutes; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT UPDATE(minutes) ON TABLE public.practice TO leeward_app;


--
-- Name: COLUMN practice.reserve; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT UPDATE(reserve) ON TABLE public.practice TO leeward_app;


--
-- Name: COLUMN practice.check_from; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT UPDATE(check_from) ON TABLE public.practice TO leeward_app;


--
-- Name: COLUMN practice.check_until; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT UPDATE(check_until) ON TABLE public.practice TO leeward_app;


--
-- Name: COLUMN practice.stuck_after; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT UPDATE(stuck_after) ON TABLE public.practice TO leeward_app;


--
-- Name: COLUMN practice.places; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT UPDATE(places) ON TABLE public.practice TO leeward_app;


--
-- Name: COLUMN practice.crisis_words; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT UPDATE(crisis_words) ON TABLE public.practice TO leeward_app;


--
-- Name: TABLE preset; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT ON TABLE public.preset TO leeward_app;


--
-- Name: COLUMN preset.id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(id) ON TABLE public.preset TO leeward_app;


--
-- Name: COLUMN preset.member_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(member_id) ON TABLE public.preset TO leeward_app;


--
-- Name: COLUMN preset.name; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(name),UPDATE(name) ON TABLE public.preset TO leeward_app;


--
-- Name: COLUMN preset.purpose; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(purpose),UPDATE(purpose) ON TABLE public.preset TO leeward_app;


--
-- Name: COLUMN preset.eyes; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(eyes),UPDATE(eyes) ON TABLE public.preset TO leeward_app;


--
-- Name: COLUMN preset.ears; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(ears),UPDATE(ears) ON TABLE public.preset TO leeward_app;


--
-- Name: COLUMN preset.hands; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(hands),UPDATE(hands) ON TABLE public.preset TO leeward_app;


--
-- Name: COLUMN preset.rate; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(rate),UPDATE(rate) ON TABLE public.preset TO leeward_app;


--
-- Name: COLUMN preset.width; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(width),UPDATE(width) ON TABLE public.preset TO leeward_app;


--
-- Name: COLUMN preset.cycles; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(cycles),UPDATE(cycles) ON TABLE public.preset TO leeward_app;


--
-- Name: COLUMN preset.made_at; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(made_at) ON TABLE public.preset TO leeward_app;


--
-- Name: COLUMN preset.put_away_at; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT UPDATE(put_away_at) ON TABLE public.preset TO leeward_app;


--
-- Name: COLUMN preset.version; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(version),UPDATE(version) ON TABLE public.preset TO leeward_app;


--
-- Name: TABLE process_note; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT ON TABLE public.process_note TO leeward_app;


--
-- Name: COLUMN process_note.id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(id) ON TABLE public.process_note TO leeward_app;


--
-- Name: COLUMN process_note.session_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(session_id) ON TABLE public.process_note TO leeward_app;


--
-- Name: COLUMN process_note.client_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(client_id) ON TABLE public.process_note TO leeward_app;


--
-- Name: COLUMN process_note.set_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(set_id) ON TABLE public.process_note TO leeward_app;


--
-- Name: COLUMN process_note.moment; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(moment) ON TABLE public.process_note TO leeward_app;


--
-- Name: COLUMN process_note.words; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(words) ON TABLE public.process_note TO leeward_app;


--
-- Name: COLUMN process_note.replaces; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(replaces) ON TABLE public.process_note TO leeward_app;


--
-- Name: COLUMN process_note.entered_by; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(entered_by) ON TABLE public.process_note TO leeward_app;


--
-- Name: COLUMN process_note.at; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(at) ON TABLE public.process_note TO leeward_app;


--
-- Name: TABLE rating; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT ON TABLE public.rating TO leeward_app;


--
-- Name: COLUMN rating.id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(id) ON TABLE public.rating TO leeward_app;


--
-- Name: COLUMN rating.client_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(client_id) ON TABLE public.rating TO leeward_app;


--
-- Name: COLUMN rating.session_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(session_id) ON TABLE public.rating TO leeward_app;


--
-- Name: COLUMN rating.target_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(target_id) ON TABLE public.rating TO leeward_app;


--
-- Name: COLUMN rating.set_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(set_id) ON TABLE public.rating TO leeward_app;


--
-- Name: COLUMN rating.scale; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(scale) ON TABLE public.rating TO leeward_app;


--
-- Name: COLUMN rating.value; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(value) ON TABLE public.rating TO leeward_app;


--
-- Name: COLUMN rating.moment; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(moment) ON TABLE public.rating TO leeward_app;


--
-- Name: COLUMN rating.replaces; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(replaces) ON TABLE public.rating TO leeward_app;


--
-- Name: COLUMN rating.entered_by; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(entered_by) ON TABLE public.rating TO leeward_app;


--
-- Name: COLUMN rating.at; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(at) ON TABLE public.rating TO leeward_app;


--
-- Name: COLUMN rating.segment; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(segment) ON TABLE public.rating TO leeward_app;


--
-- Name: COLUMN rating.from_client; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(from_client) ON TABLE public.rating TO leeward_app;


--
-- Name: TABLE reach_step; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT ON TABLE public.reach_step TO leeward_app;


--
-- Name: COLUMN reach_step.id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(id) ON TABLE public.reach_step TO leeward_app;


--
-- Name: COLUMN reach_step.client_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(client_id) ON TABLE public.reach_step TO leeward_app;


--
-- Name: COLUMN reach_step.session_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(session_id) ON TABLE public.reach_step TO leeward_app;


--
-- Name: COLUMN reach_step.step; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(step) ON TABLE public.reach_step TO leeward_app;


--
-- Name: COLUMN reach_step.replaces; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(replaces) ON TABLE public.reach_step TO leeward_app;


--
-- Name: COLUMN reach_step.entered_by; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(entered_by) ON TABLE public.reach_step TO leeward_app;


--
-- Name: COLUMN reach_step.at; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(at) ON TABLE public.reach_step TO leeward_app;


--
-- Name: TABLE resource; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT ON TABLE public.resource TO leeward_app;


--
-- Name: COLUMN resource.id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(id) ON TABLE public.resource TO leeward_app;


--
-- Name: COLUMN resource.client_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(client_id) ON TABLE public.resource TO leeward_app;


--
-- Name: COLUMN resource.number; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(number) ON TABLE public.resource TO leeward_app;


--
-- Name: COLUMN resource.cue; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(cue),UPDATE(cue) ON TABLE public.resource TO leeward_app;


--
-- Name: COLUMN resource.image; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(image),UPDATE(image) ON TABLE public.resource TO leeward_app;


--
-- Name: COLUMN resource.body_feeling; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(body_feeling),UPDATE(body_feeling) ON TABLE public.resource TO leeward_app;


--
-- Name: COLUMN resource.helped; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(helped),UPDATE(helped) ON TABLE public.resource TO leeward_app;


--
-- Name: COLUMN resource.on_offer; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(on_offer),UPDATE(on_offer) ON TABLE public.resource TO leeward_app;


--
-- Name: COLUMN resource.found_at; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(found_at) ON TABLE public.resource TO leeward_app;


--
-- Name: COLUMN resource.version; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(version),UPDATE(version) ON TABLE public.resource TO leeward_app;


--
-- Name: TABLE safety_plan; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT ON TABLE public.safety_plan TO leeward_app;


--
-- Name: COLUMN safety_plan.client_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(client_id) ON TABLE public.safety_plan TO leeward_app;


--
-- Name: COLUMN safety_plan.signs; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(signs),UPDATE(signs) ON TABLE public.safety_plan TO leeward_app;


--
-- Name: COLUMN safety_plan.helps; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(helps),UPDATE(helps) ON TABLE public.safety_plan TO leeward_app;


--
-- Name: COLUMN safety_plan.people; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(people),UPDATE(people) ON TABLE public.safety_plan TO leeward_app;


--
-- Name: COLUMN safety_plan.places; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(places),UPDATE(places) ON TABLE public.safety_plan TO leeward_app;


--
-- Name: COLUMN safety_plan.professionals; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(professionals),UPDATE(professionals) ON TABLE public.safety_plan TO leeward_app;


--
-- Name: COLUMN safety_plan.surroundings; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(surroundings),UPDATE(surroundings) ON TABLE public.safety_plan TO leeward_app;


--
-- Name: COLUMN safety_plan.review_on; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(review_on),UPDATE(review_on) ON TABLE public.safety_plan TO leeward_app;


--
-- Name: COLUMN safety_plan.written_at; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(written_at),UPDATE(written_at) ON TABLE public.safety_plan TO leeward_app;


--
-- Name: COLUMN safety_plan.version; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(version),UPDATE(version) ON TABLE public.safety_plan TO leeward_app;


--
-- Name: TABLE session_moment; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT ON TABLE public.session_moment TO leeward_app;


--
-- Name: COLUMN session_moment.session_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(session_id) ON TABLE public.session_moment TO leeward_app;


--
-- Name: COLUMN session_moment.client_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(client_id) ON TABLE public.session_moment TO leeward_app;


--
-- Name: COLUMN session_moment.kind; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(kind) ON TABLE public.session_moment TO leeward_app;


--
-- Name: COLUMN session_moment.at; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(at) ON TABLE public.session_moment TO leeward_app;


--
-- Name: COLUMN session_moment.once; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(once) ON TABLE public.session_moment TO leeward_app;


--
-- Name: TABLE session_words; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT ON TABLE public.session_words TO leeward_app;


--
-- Name: COLUMN session_words.session_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(session_id) ON TABLE public.session_words TO leeward_app;


--
-- Name: COLUMN session_words.client_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(client_id) ON TABLE public.session_words TO leeward_app;


--
-- Name: COLUMN session_words.location; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(location) ON TABLE public.session_words TO leeward_app;


--
-- Name: COLUMN session_words.call_back; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(call_back) ON TABLE public.session_words TO leeward_app;


--
-- Name: COLUMN session_words.resource; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(resource) ON TABLE public.session_words TO leeward_app;


--
-- Name: COLUMN session_words.leaving_state; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(leaving_state) ON TABLE public.session_words TO leeward_app;


--
-- Name: COLUMN session_words.companion; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(companion) ON TABLE public.session_words TO leeward_app;


--
-- Name: COLUMN session_words.next_contact; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(next_contact) ON TABLE public.session_words TO leeward_app;


--
-- Name: COLUMN session_words.client_words; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(client_words) ON TABLE public.session_words TO leeward_app;


--
-- Name: COLUMN session_words.note; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(note) ON TABLE public.session_words TO leeward_app;


--
-- Name: COLUMN session_words.version; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(version) ON TABLE public.session_words TO leeward_app;


--
-- Name: COLUMN session_words.written_by; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(written_by) ON TABLE public.session_words TO leeward_app;


--
-- Name: COLUMN session_words.written_at; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(written_at) ON TABLE public.session_words TO leeward_app;


--
-- Name: TABLE set_ending; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT ON TABLE public.set_ending TO leeward_app;


--
-- Name: COLUMN set_ending.set_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(set_id) ON TABLE public.set_ending TO leeward_app;


--
-- Name: COLUMN set_ending.session_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(session_id) ON TABLE public.set_ending TO leeward_app;


--
-- Name: COLUMN set_ending.client_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(client_id) ON TABLE public.set_ending TO leeward_app;


--
-- Name: COLUMN set_ending.ending; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(ending) ON TABLE public.set_ending TO leeward_app;


--
-- Name: COLUMN set_ending.at_ms; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(at_ms) ON TABLE public.set_ending TO leeward_app;


--
-- Name: COLUMN set_ending.recorded_at; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(recorded_at) ON TABLE public.set_ending TO leeward_app;


--
-- Name: COLUMN set_ending.witness; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(witness) ON TABLE public.set_ending TO leeward_app;


--
-- Name: TABLE set_evidence; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT ON TABLE public.set_evidence TO leeward_app;


--
-- Name: COLUMN set_evidence.set_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(set_id) ON TABLE public.set_evidence TO leeward_app;


--
-- Name: COLUMN set_evidence.seq; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(seq) ON TABLE public.set_evidence TO leeward_app;


--
-- Name: COLUMN set_evidence.session_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(session_id) ON TABLE public.set_evidence TO leeward_app;


--
-- Name: COLUMN set_evidence.client_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(client_id) ON TABLE public.set_evidence TO leeward_app;


--
-- Name: COLUMN set_evidence.kind; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(kind) ON TABLE public.set_evidence TO leeward_app;


--
-- Name: COLUMN set_evidence.at_ms; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(at_ms) ON TABLE public.set_evidence TO leeward_app;


--
-- Name: COLUMN set_evidence.phase; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(phase) ON TABLE public.set_evidence TO leeward_app;


--
-- Name: COLUMN set_evidence.width; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(width) ON TABLE public.set_evidence TO leeward_app;


--
-- Name: COLUMN set_evidence.frames; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(frames) ON TABLE public.set_evidence TO leeward_app;


--
-- Name: COLUMN set_evidence.longest_gap; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(longest_gap) ON TABLE public.set_evidence TO leeward_app;


--
-- Name: COLUMN set_evidence.ending; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(ending) ON TABLE public.set_evidence TO leeward_app;


--
-- Name: COLUMN set_evidence.recorded_at; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(recorded_at) ON TABLE public.set_evidence TO leeward_app;


--
-- Name: TABLE set_order; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT ON TABLE public.set_order TO leeward_app;


--
-- Name: COLUMN set_order.set_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(set_id) ON TABLE public.set_order TO leeward_app;


--
-- Name: COLUMN set_order.seq; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(seq) ON TABLE public.set_order TO leeward_app;


--
-- Name: COLUMN set_order.session_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(session_id) ON TABLE public.set_order TO leeward_app;


--
-- Name: COLUMN set_order.client_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(client_id) ON TABLE public.set_order TO leeward_app;


--
-- Name: COLUMN set_order.cause; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(cause) ON TABLE public.set_order TO leeward_app;


--
-- Name: COLUMN set_order.at_ms; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(at_ms) ON TABLE public.set_order TO leeward_app;


--
-- Name: COLUMN set_order.plan; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(plan) ON TABLE public.set_order TO leeward_app;


--
-- Name: COLUMN set_order.timeline; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(timeline) ON TABLE public.set_order TO leeward_app;


--
-- Name: COLUMN set_order.recorded_at; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(recorded_at) ON TABLE public.set_order TO leeward_app;


--
-- Name: TABLE set_outcome; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT ON TABLE public.set_outcome TO leeward_app;


--
-- Name: TABLE standing_fact; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT ON TABLE public.standing_fact TO leeward_app;


--
-- Name: TABLE standing_hour_fact; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT ON TABLE public.standing_hour_fact TO leeward_app;


--
-- Name: TABLE standing_rating; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT ON TABLE public.standing_rating TO leeward_app;


--
-- Name: TABLE standing_segment; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT ON TABLE public.standing_segment TO leeward_app;


--
-- Name: TABLE steadying; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT ON TABLE public.steadying TO leeward_app;


--
-- Name: COLUMN steadying.client_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(client_id) ON TABLE public.steadying TO leeward_app;


--
-- Name: COLUMN steadying.signs; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(signs),UPDATE(signs) ON TABLE public.steadying TO leeward_app;


--
-- Name: COLUMN steadying.way_back; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(way_back),UPDATE(way_back) ON TABLE public.steadying TO leeward_app;


--
-- Name: COLUMN steadying.first_words; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(first_words),UPDATE(first_words) ON TABLE public.steadying TO leeward_app;


--
-- Name: COLUMN steadying.written_at; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(written_at),UPDATE(written_at) ON TABLE public.steadying TO leeward_app;


--
-- Name: COLUMN steadying.version; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(version),UPDATE(version) ON TABLE public.steadying TO leeward_app;


--
-- Name: TABLE target_plan; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT ON TABLE public.target_plan TO leeward_app;


--
-- Name: COLUMN target_plan.target_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(target_id) ON TABLE public.target_plan TO leeward_app;


--
-- Name: COLUMN target_plan.client_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(client_id) ON TABLE public.target_plan TO leeward_app;


--
-- Name: COLUMN target_plan.place; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(place),UPDATE(place) ON TABLE public.target_plan TO leeward_app;


--
-- Name: COLUMN target_plan.age; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT UPDATE(age) ON TABLE public.target_plan TO leeward_app;


--
-- Name: COLUMN target_plan.year; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT UPDATE(year) ON TABLE public.target_plan TO leeward_app;


--
-- Name: COLUMN target_plan.cluster_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT UPDATE(cluster_id) ON TABLE public.target_plan TO leeward_app;


--
-- Name: COLUMN target_plan.parent_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT UPDATE(parent_id) ON TABLE public.target_plan TO leeward_app;


--
-- Name: TABLE target_words; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT ON TABLE public.target_words TO leeward_app;


--
-- Name: COLUMN target_words.target_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(target_id) ON TABLE public.target_words TO leeward_app;


--
-- Name: COLUMN target_words.client_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(client_id) ON TABLE public.target_words TO leeward_app;


--
-- Name: COLUMN target_words.label; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(label),UPDATE(label) ON TABLE public.target_words TO leeward_app;


--
-- Name: COLUMN target_words.picture; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(picture),UPDATE(picture) ON TABLE public.target_words TO leeward_app;


--
-- Name: COLUMN target_words.negative_belief; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(negative_belief),UPDATE(negative_belief) ON TABLE public.target_words TO leeward_app;


--
-- Name: COLUMN target_words.positive_belief; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(positive_belief),UPDATE(positive_belief) ON TABLE public.target_words TO leeward_app;


--
-- Name: COLUMN target_words.emotions; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(emotions),UPDATE(emotions) ON TABLE public.target_words TO leeward_app;


--
-- Name: COLUMN target_words.body_location; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(body_location),UPDATE(body_location) ON TABLE public.target_words TO leeward_app;


--
-- Name: COLUMN target_words.version; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(version),UPDATE(version) ON TABLE public.target_words TO leeward_app;


--
-- Name: TABLE unmeasured; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT ON TABLE public.unmeasured TO leeward_app;


--
-- Name: COLUMN unmeasured.id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(id) ON TABLE public.unmeasured TO leeward_app;


--
-- Name: COLUMN unmeasured.client_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(client_id) ON TABLE public.unmeasured TO leeward_app;


--
-- Name: COLUMN unmeasured.session_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(session_id) ON TABLE public.unmeasured TO leeward_app;


--
-- Name: COLUMN unmeasured.target_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(target_id) ON TABLE public.unmeasured TO leeward_app;


--
-- Name: COLUMN unmeasured.way; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(way) ON TABLE public.unmeasured TO leeward_app;


--
-- Name: COLUMN unmeasured.replaces; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(replaces) ON TABLE public.unmeasured TO leeward_app;


--
-- Name: COLUMN unmeasured.entered_by; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(entered_by) ON TABLE public.unmeasured TO leeward_app;


--
-- Name: COLUMN unmeasured.at; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(at) ON TABLE public.unmeasured TO leeward_app;


--
-- PostgreSQL database dump complete
--

\unrestrict hQdIJUdZbhfHbCiEe0fmRAsgFhyYx69kx8A6B2ZZaZ1eRNDoHoXhRfYjpj2wTBX

