-- Written by ./tests/run --dump at migration 19. Sealed under the tests' key, 5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a.
--
-- PostgreSQL database dump
--

\restrict GOkl3bFAw0vjfzYf76auot57IeSeq3Ib1pTvmcdlW0U8m5pdtcRRgbwsiKPbQWK

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
    CONSTRAINT after_check_reason_check CHECK ((reason = ANY (ARRAY['first_reprocessing'::text, 'incomplete'::text, 'unsteady'::text]))),
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
    CONSTRAINT admitted_at_is_a_time CHECK (isfinite(admitted_at)),
    CONSTRAINT ended_at_is_a_time CHECK (isfinite(ended_at)),
    CONSTRAINT opened_at_is_a_time CHECK (isfinite(opened_at)),
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
    WHEN 'procedure'::text THEN (code = ANY (ARRAY['standard'::text, 'resource'::text, 'restricted'::text, 'recent_event'::text, 'future'::text]))
    WHEN 'scan'::text THEN (code = ANY (ARRAY['clear'::text, 'felt'::text]))
    WHEN 'rehearsal'::text THEN (code = ANY (ARRAY['undisturbed'::text, 'disturbed'::text]))
    WHEN 'fits'::text THEN (code = ANY (ARRAY['sud'::text, 'voc'::text]))
    WHEN 'decided'::text THEN (code = ANY (ARRAY['incomplete'::text, 'complete'::text, 'reduced'::text, 'reopened'::text]))
    WHEN 'carried_over'::text THEN (code = ANY (ARRAY['planned'::text, 'active'::text, 'incomplete'::text, 'complete'::text, 'reopened'::text]))
    ELSE false
END),
    CONSTRAINT of_a_target CHECK (((target_id IS NOT NULL) OR (kind = ANY (ARRAY['mark'::text, 'saw'::text, 'tried'::text])))),
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
    CONSTRAINT check_in_order CHECK ((check_from < check_until)),
    CONSTRAINT practice_check CHECK (((reserve >= 0) AND (reserve <= 60) AND (reserve < minutes))),
    CONSTRAINT practice_check_from_check CHECK (((check_from >= 1) AND (check_from <= 168))),
    CONSTRAINT practice_check_until_check CHECK (((check_until >= 1) AND (check_until <= 336))),
    CONSTRAINT practice_clock_check CHECK ((clock = ANY (ARRAY[12, 24]))),
    CONSTRAINT practice_day_order_check CHECK ((day_order = ANY (ARRAY['day_first'::text, 'month_first'::text, 'year_first'::text]))),
    CONSTRAINT practice_minutes_check CHECK (((minutes >= 10) AND (minutes <= 240))),
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
\.


--
-- Data for Name: audit_head; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.audit_head (singleton, seq, hash) FROM stdin;
t	48	\\x4d5b41d32a8dfbb8a862162e78564799538acfc62561b6fc2a6f5a81167b53aa
\.


--
-- Data for Name: care_link; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.care_link (id, member_id, client_id, since, until) FROM stdin;
7c312b33-d8f4-4b58-810a-b7340aa845b5	252d3662-612d-47b3-8d6d-0539a4d381b5	d144c980-6015-4337-9ea2-7e11415c7c70	2026-03-03 09:00:00+00	\N
8ee8f910-a27f-440f-a819-acc6116b836a	252d3662-612d-47b3-8d6d-0539a4d381b5	28bb37f3-d9a2-4c59-9d17-a0711de7c904	2026-03-10 09:04:15+00	\N
6505c075-4245-4cd5-a4d3-1881d77508ec	252d3662-612d-47b3-8d6d-0539a4d381b5	07cd93d6-b617-4c55-bb7d-05df4a693182	2026-03-10 09:04:15+00	\N
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
f9c30601-de09-44b6-997a-f8d54ba6b640	d144c980-6015-4337-9ea2-7e11415c7c70	2026-03-03 09:04:15+00
76cd1542-9976-4af7-a5b0-c6e2a40bc48f	d144c980-6015-4337-9ea2-7e11415c7c70	\N
7659429b-37f4-4378-915b-6c176e15f1f5	28bb37f3-d9a2-4c59-9d17-a0711de7c904	\N
\.


--
-- Data for Name: invitation; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.invitation (token_hash, member_id, name, roles, made_by, made_at, ends_at, spent_at, made_in, replacement) FROM stdin;
\\x991d414b741e8dfbff96cfaa786b7bd215bf58d5582c8c5f830e64647049bd06	\N	Somebody New	{lead}	716068db-57f8-4a94-9fc0-7926c90f2e29	2026-03-03 09:01:00+00	2026-03-06 09:01:00+00	\N	488769b1-12a2-49a4-90e2-42fff11c0e4c	\N
\.


--
-- Data for Name: join_link; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.join_link (id, token_hash, session_id, made_at, ends_at, revoked_at, code_phc, code_ends_at, code_tries, code_spent_at) FROM stdin;
5c9f281e-e0e5-4d92-bdaa-8486e5b761f0	\\xb16827ea9dd24c06872712d0e6e34eef846bdda135284a63009f340808eaf498	76cd1542-9976-4af7-a5b0-c6e2a40bc48f	2026-03-10 09:04:15+00	2026-03-10 13:04:15+00	\N	$argon2id$v=19$m=19456,t=2,p=1$opHkuXwZg9zQwtP6X2te0w$6tXG3BKJBcCrF/T8vjH9DrPAonuojaHy9CB0Ca0vfyc	2026-03-10 09:14:15+00	1	2026-03-10 09:04:15+00
\.


--
-- Data for Name: key_check; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.key_check (key_id, sealed) FROM stdin;
1	\\x01f8b2b3f6eadbf674acfe32d83576f20fa547f120d06d65f4bfdefbbaa123a68f6ebfb26a29ef5bbf1ec6c27bcf
\.


--
-- Data for Name: member; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.member (id, name, roles, joined_at, left_at, roles_since) FROM stdin;
252d3662-612d-47b3-8d6d-0539a4d381b5	Member 252d36	{clinician}	2026-03-03 09:00:00+00	\N	\N
6935bdfa-0e82-4b95-a06f-5e7118f57e5f	Member 6935bd	{lead}	2026-03-03 09:01:00+00	\N	\N
716068db-57f8-4a94-9fc0-7926c90f2e29	Member 716068	{administrator}	2026-03-03 09:01:00+00	\N	\N
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
252d3662-612d-47b3-8d6d-0539a4d381b5	28bb37f3-d9a2-4c59-9d17-a0711de7c904
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
716068db-57f8-4a94-9fc0-7926c90f2e29	f47bd0cc-f5f2-9e87-f1de-191c1428f747	member.invite	\\xe2363b47c16ec24771f466dcafefd75b082e8e3016e2f9e70ec7728212875a63	{"json":"2026-03-06T09:01:00Z"}	2026-03-03 09:01:00+00
716068db-57f8-4a94-9fc0-7926c90f2e29	c98d8e14-b021-2d15-00d7-e8d3ffc2365e	practice.settings.change	\\xadc1779b2a45431eb158aeb39f8b62beb0aa64fbd5f27d9c7812d86e4eff3e77	{"see":"/practice/settings?saved=c98d8e14-b021-2d15-00d7-e8d3ffc2365e"}	2026-03-03 09:01:00+00
252d3662-612d-47b3-8d6d-0539a4d381b5	3df913cc-8952-444e-3a5a-21264a808a53	preset.create	\\x67f8aa3b84c8869b415acfe4c1f6e316f15397a9a65a578df07867f203fe5edd	{"see":"/presets?saved=3df913cc-8952-444e-3a5a-21264a808a53"}	2026-03-03 09:01:00+00
252d3662-612d-47b3-8d6d-0539a4d381b5	ba5b4153-ac12-a544-543f-edf021127d55	preset.create	\\x953d427bf0820728e80909e2230864766d0a7b14539231a9a15be4eec05db0a0	{"see":"/presets?saved=ba5b4153-ac12-a544-543f-edf021127d55"}	2026-03-03 09:01:00+00
252d3662-612d-47b3-8d6d-0539a4d381b5	2b29863b-f8bd-1744-98a6-3bb20154ed18	preset.put_away	\\x7d4f828a583b92a24935f7fa152dfed5f6a19b69aa3c05c9abcdcda703bd04d5	{"see":"/presets"}	2026-03-03 09:01:00+00
252d3662-612d-47b3-8d6d-0539a4d381b5	4e322d27-804d-b099-65f9-c474efafe200	client.change	\\xc70acaf2e505d55bdfc378b96f53987b1bf2c7d5cb10b1e3486b3a3e09b72d10	{"see":"/clients/d144c980-6015-4337-9ea2-7e11415c7c70?saved=4e322d27-804d-b099-65f9-c474efafe200"}	2026-03-03 09:01:00+00
252d3662-612d-47b3-8d6d-0539a4d381b5	8b6b5e2a-58d2-f902-4245-e952bc15eb75	comfort.change	\\xcdf68b7f9738e1cc63937dde20bd88482de3684c3b17c2d058b282ed2688f9fa	{"see":"/clients/d144c980-6015-4337-9ea2-7e11415c7c70?saved=8b6b5e2a-58d2-f902-4245-e952bc15eb75"}	2026-03-03 09:01:00+00
252d3662-612d-47b3-8d6d-0539a4d381b5	fe4a9c5a-dc75-7344-de82-dfe715695fbb	target.change	\\x605fe58e9ab21e948530f42eb2ceb51b9a5189c05075ea3a2434b4c8770a2fde	{"see":"/targets/dcbb6c79-5b1a-43b3-8aa9-79eb3dd15b86?saved=fe4a9c5a-dc75-7344-de82-dfe715695fbb"}	2026-03-03 09:02:00+00
252d3662-612d-47b3-8d6d-0539a4d381b5	68668732-2027-48e0-e70a-b77d9d2b031e	target.change	\\x5602b94618cba8dab1aefdd18d8a1e043e32e5f9cc62792335c8a105c7b29643	{"see":"/targets/dcbb6c79-5b1a-43b3-8aa9-79eb3dd15b86?saved=68668732-2027-48e0-e70a-b77d9d2b031e"}	2026-03-03 09:02:00+00
252d3662-612d-47b3-8d6d-0539a4d381b5	d2be1fe3-d2cb-1269-90f6-1d47a550f264	plan.cluster	\\x196cb957c3794713eb0584f4b4d46281e8fbaa5674ed5b4777ff3f8e485e44e8	{"see":"/clients/d144c980-6015-4337-9ea2-7e11415c7c70/plan?saved=d2be1fe3-d2cb-1269-90f6-1d47a550f264"}	2026-03-03 09:02:00+00
252d3662-612d-47b3-8d6d-0539a4d381b5	28fbdb3f-d518-ebb6-38eb-dab45fdb6582	target.create	\\xc911ea42fb3c7a25e783bd8eac41e52db2fdab5ec9678fcee5f2a11b75b78c9f	{"see":"/targets/c5636dbb-57e1-459a-9c1d-efeec79dd5b4?saved=28fbdb3f-d518-ebb6-38eb-dab45fdb6582"}	2026-03-03 09:02:00+00
252d3662-612d-47b3-8d6d-0539a4d381b5	ca0a7295-5482-aefe-3d7b-0ce81a901303	plan.move	\\x73519ecab28a5b2cf703544dd4ae9d666c84b2acfa594445b0293408a79a56e1	{"see":"/clients/d144c980-6015-4337-9ea2-7e11415c7c70/plan#target-2"}	2026-03-03 09:02:00+00
252d3662-612d-47b3-8d6d-0539a4d381b5	8788954e-3699-2c1d-7077-abba446b9127	target.fact	\\x47aa79fb9932d04cf6c05cded96db5c0d813189be2afc45255d40dd57afde951	{"see":"/targets/dcbb6c79-5b1a-43b3-8aa9-79eb3dd15b86?saved=8788954e-3699-2c1d-7077-abba446b9127"}	2026-03-03 09:03:41+00
252d3662-612d-47b3-8d6d-0539a4d381b5	899e72ec-d5aa-6c99-f413-dfa8cb209971	target.fact	\\x02d977337be7ceedd72fe074f2707b4757a94294ac98e60d2594ba39f5b9c88e	{"see":"/targets/dcbb6c79-5b1a-43b3-8aa9-79eb3dd15b86?saved=899e72ec-d5aa-6c99-f413-dfa8cb209971"}	2026-03-03 09:03:41+00
252d3662-612d-47b3-8d6d-0539a4d381b5	5d2b9711-2035-67e4-5d96-c2a11c60f82b	target.fact	\\x9559030edbc97588cdefa756bfa2d7bbe3db2248933f618d9a8dee68711efa34	{"see":"/targets/dcbb6c79-5b1a-43b3-8aa9-79eb3dd15b86?saved=5d2b9711-2035-67e4-5d96-c2a11c60f82b"}	2026-03-03 09:03:41+00
252d3662-612d-47b3-8d6d-0539a4d381b5	635ab4c2-2092-c343-efd0-1e214e697a44	session.close	\\xba4a9859768c0e3347863e78b0d61b629ff06f9822d73b35760077e763de72c2	{"see":"/sessions/f9c30601-de09-44b6-997a-f8d54ba6b640?saved=635ab4c2-2092-c343-efd0-1e214e697a44"}	2026-03-03 09:04:15+00
252d3662-612d-47b3-8d6d-0539a4d381b5	951cfad7-7509-32bc-9f3e-1c206697e4d7	session.check	\\x64c1ee0c96e640065be94c12c27ef1d1bb4eb025501597f8942f082ae89b421d	{"see":"/sessions/f9c30601-de09-44b6-997a-f8d54ba6b640?saved=951cfad7-7509-32bc-9f3e-1c206697e4d7"}	2026-03-03 09:04:15+00
252d3662-612d-47b3-8d6d-0539a4d381b5	6b753d9e-d208-b5fd-6238-f2ee83ea922c	session.note.save	\\xd4c7e7611f7a25059bfc6c5049a4befb857b2382ec243f65541d2ccb433abf99	{"see":"/sessions/f9c30601-de09-44b6-997a-f8d54ba6b640?saved=6b753d9e-d208-b5fd-6238-f2ee83ea922c#note"}	2026-03-03 09:04:15+00
252d3662-612d-47b3-8d6d-0539a4d381b5	d71df1cc-0f14-752a-2ba2-a83e4c1282c8	link.make	\\x44136fa355b3678a1146ad16f7e8649e94fb4fc21fe77e8310c060f61caaff8a	{"json":"2026-03-10T09:14:15Z"}	2026-03-10 09:04:15+00
252d3662-612d-47b3-8d6d-0539a4d381b5	bfcd75eb-b241-d336-ca0b-ecf175bde3c8	code.make	\\x44136fa355b3678a1146ad16f7e8649e94fb4fc21fe77e8310c060f61caaff8a	{"json":"2026-03-10T09:14:15Z"}	2026-03-10 09:04:15+00
252d3662-612d-47b3-8d6d-0539a4d381b5	c0516787-ef59-8a46-e886-1c3d14961a9c	client.archive	\\x7d4f828a583b92a24935f7fa152dfed5f6a19b69aa3c05c9abcdcda703bd04d5	{"see":"/clients/07cd93d6-b617-4c55-bb7d-05df4a693182"}	2026-03-10 09:04:15+00
\.


--
-- Data for Name: room_token; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.room_token (token_hash, session_id, ends_at) FROM stdin;
\\x3977742ab04a81cdc210d1525993260d4f8d33f1bef71cbf02dd70cd0c0f7622	f9c30601-de09-44b6-997a-f8d54ba6b640	2026-03-04 09:02:01+00
\\xec406e374acf223d01270758736b4bf242948209bcdbd4dc66e074e682f1fffd	f9c30601-de09-44b6-997a-f8d54ba6b640	2026-03-04 09:02:35+00
\\x53ccfa6e3dc720633d8c2093d731928b73cd1f87b110be80eb933f0dc752485c	f9c30601-de09-44b6-997a-f8d54ba6b640	2026-03-04 09:03:07+00
\\x7eefe6f0c594e9be9c4ce43751f4ce4ec4aea3e6377c5ce240531034e66291e6	f9c30601-de09-44b6-997a-f8d54ba6b640	2026-03-04 09:03:41+00
\.


--
-- Data for Name: seat; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.seat (id, token_hash, link_id, session_id, device, asked_at, taken_at, closed_at, asked_no, admitted_at, closed_why) FROM stdin;
8ac2dcee-dcd5-4bd0-b41f-4ec3928d6375	\\x8d502fed8f373a4bce5b1ab1a1100de23f3f61d527c32303500563c3294e1ff0	5c9f281e-e0e5-4d92-bdaa-8486e5b761f0	76cd1542-9976-4af7-a5b0-c6e2a40bc48f	device	2026-03-10 09:04:15+00	2026-03-10 09:04:15+00	\N	1	2026-03-10 09:04:15+00	\N
19b32c6f-f7b9-481a-9739-a47ea065ec17	\\xb2e94be90cdf6cca25cdc920c8769a4314e20c907c167930370ac5783cd235da	5c9f281e-e0e5-4d92-bdaa-8486e5b761f0	76cd1542-9976-4af7-a5b0-c6e2a40bc48f	device	2026-03-10 09:04:15+00	\N	\N	2	\N	\N
\.


--
-- Data for Name: signin; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.signin (id, token_hash, member_id, device, opened_at, seen_at, ends_at, closed_at, shown_at) FROM stdin;
b1fc7467-143b-48b5-a04f-5d9c2d48255a	\\x46d7a834826ee1849dac00bfbbc44df0d743a655e85aef2766f3ae83bddd9626	6935bdfa-0e82-4b95-a06f-5e7118f57e5f	a test	2026-03-03 09:01:00+00	2026-03-03 09:01:00+00	2026-03-03 21:01:00+00	\N	2026-03-03 09:01:00+00
488769b1-12a2-49a4-90e2-42fff11c0e4c	\\x9f6687c720b497376eb1d898bb1e288ad6de4ba6e3e6dcdfbad1c58d985384f2	716068db-57f8-4a94-9fc0-7926c90f2e29	a test	2026-03-03 09:01:00+00	2026-03-03 09:01:00+00	2026-03-03 21:01:00+00	\N	2026-03-03 09:01:00+00
7f05108e-9a4c-47ad-a13d-f92ac3317498	\\x00991bafd97089cb5f5c64fb0a46107935c8586e46d60e514cfebaf52bc2b4fc	252d3662-612d-47b3-8d6d-0539a4d381b5	a test	2026-03-03 09:00:00+00	2026-03-03 09:04:12+00	2026-03-03 21:00:00+00	\N	2026-03-03 09:00:00+00
b1346cd2-9684-48de-b57f-f859f60e06e9	\\x8af444a1e04e8fdb84c65024615b6040c0fcd4819c3dab8b84058b94bcb394f4	252d3662-612d-47b3-8d6d-0539a4d381b5	a test	2026-03-10 09:04:15+00	2026-03-10 09:04:15+00	2026-03-10 21:04:15+00	\N	2026-03-10 09:04:15+00
\.


--
-- Data for Name: _sqlx_migrations; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public._sqlx_migrations (version, description, installed_on, success, checksum, execution_time) FROM stdin;
1	access	2026-11-29 09:01:53.991231+00	t	\\xee58a96d68f93385e2e3af6d4390382fcafdadee1b3238242b344c60c94a8a4273a40010f4ba1d66f24207ad6aa82776	28059695
2	acts	2026-11-29 09:01:54.020074+00	t	\\x0f1c508e40ba3792e8e2c58fc8d185e11836f9b1edbc9ee5e6fc9a92df9e176255b3f22d035b99a39cacc5519227d601	6078036
3	audit	2026-11-29 09:01:54.026552+00	t	\\x2dcb585f14b456aae15b0d06e9e436a1575c0781ae10803bee3b70623ac409a8962de276d2dcd3a58ef61135aed43953	7577546
4	records	2026-11-29 09:01:54.034721+00	t	\\x9c4ec09ed84e6bff571cb8c4e9522c0282f285dad35065f146b0b53be2e4bac359f321e4dcfa97ba7635f5070af5291c	21342518
5	sessions	2026-11-29 09:01:54.056833+00	t	\\x3013bebd83db0d46eca7767511705f52abb32a744ff204f5bdcb3afb063c1a18464207dd188aa4c42cd742db6aff73a7	25035454
6	standing ratings	2026-11-29 09:01:54.082368+00	t	\\xa43c139ae2899d8e1dc400509333c23cb35febf1c311c95315c815ad8f5786811785868cfde2df96ad491c1e641366e6	1396387
7	preparation	2026-11-29 09:01:54.084078+00	t	\\x4039cb17dce2ac0b1a5c9987dfad7b5d9423a5d32f43e2faaf08827b835146f0e59d31276bd09283dad5a4c90562ba0b	7413383
8	kept once	2026-11-29 09:01:54.091806+00	t	\\xe127621eaa8d28ce25c37396363f914cbc8bf50c61eb3e086ca8f6f279ee945eb2403ea2402783472868733728cbc2f5	11860955
9	assessments	2026-11-29 09:01:54.104009+00	t	\\x5bf0696b51deb48ebfb71a27a4779e2da2efaf85174c4c7b8b0b88f67c867051a235ae6a038426b2cf9714b07de370d5	8421524
10	upkeep	2026-11-29 09:01:54.112756+00	t	\\x3f4a71c2e96ccf63581bbe1594408bc7672b13212d73c6347be4c10e049e853222b107f9a5cd31e2d60284bb9445afb4	2896557
11	known endings	2026-11-29 09:01:54.115916+00	t	\\x0a97a58fbc94f4dd07219030a06389d787aa440be152804e2a07da2545acf733ac66f06c456acba078caf09dba984cf9	1322247
12	second wall	2026-11-29 09:01:54.11755+00	t	\\xf2b839c5ed136915edd9a3b5082421152ff644aa35c788cc4b55ffd93fee695d696210983c475948599bf94dfa4ff539	9778993
13	nobody stranded	2026-11-29 09:01:54.128127+00	t	\\x14f8e04a51d086fbaab1b3f6845afc067d25ffcdd89dc5a3652defe3c568c12141846c15a94cdee63511346587aa0e3e	12922646
14	stays open	2026-11-29 09:01:54.141419+00	t	\\xbce641e43ef5e0a37f25030aa8d2da5628e88f328a4d46878446cf4ef20fa7db69a7cd2d0b7e66f503d1ef5004e8a710	836828
15	two at once	2026-11-29 09:01:54.142491+00	t	\\x6f2a8632031128d32d81d4dd3eec3afc45deb68c1f16f7e143b018e44e8d9a00c505c026c575835e9587cf861c582fac	16280566
16	how it is written	2026-11-29 09:01:54.159266+00	t	\\x76aae8e7a2d18d6f2f5f65227d5f5a5865bf26fe68b97b1d1cb74bc59f6299d8dbe7689172a944793865827bbd38bd66	1988873
17	course	2026-11-29 09:01:54.161739+00	t	\\xa6254301cb4d15288063fe66b8a02baa70a3925524c246e747736d986981e46e74715411e206af41f1b599e4cef99e12	18509795
18	opening	2026-11-29 09:01:54.180713+00	t	\\xec2d5896e3cabcf441991fedb5b6ef7c462b59ed2e2a4d339766d3daa9067a2d72250bffbda5645b9c0a9d4eafda4d70	19767477
19	plan	2026-11-29 09:01:54.201025+00	t	\\xba1afbb9b61f7e89c65231c839f2edede3bd4c82d1b2ef548d676cd47f34247a72fdf379b5a54a99bb49baa43fefd7d6	8515784
\.


--
-- Data for Name: after_check; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.after_check (session_id, client_id, member_id, reason, due_from, due_until) FROM stdin;
f9c30601-de09-44b6-997a-f8d54ba6b640	d144c980-6015-4337-9ea2-7e11415c7c70	252d3662-612d-47b3-8d6d-0539a4d381b5	incomplete	2026-03-03 21:04:15+00	2026-03-05 09:04:15+00
\.


--
-- Data for Name: after_check_try; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.after_check_try (id, session_id, client_id, outcome, entered_by, at, seq) FROM stdin;
48ed4536-6678-4a0d-b9f0-694eca68bb24	f9c30601-de09-44b6-997a-f8d54ba6b640	d144c980-6015-4337-9ea2-7e11415c7c70	not_reached	252d3662-612d-47b3-8d6d-0539a4d381b5	2026-03-03 09:04:15+00	31
\.


--
-- Data for Name: audit; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.audit (seq, at, kind, member_id, act, client_id, object_id, previous, hash) FROM stdin;
1	2026-03-03 09:00:00+00	member	252d3662-612d-47b3-8d6d-0539a4d381b5	client.create	d144c980-6015-4337-9ea2-7e11415c7c70	\N	\\x1049f89a5ef4bff11e67b37b9945096f203ea0c09e92a8bc7dc4a04461f6529f	\\xae7554bf6113313af3653d055e00789aedfd9c9e9a30a1db1cd49ab27d05d6c2
2	2026-03-03 09:00:00+00	member	252d3662-612d-47b3-8d6d-0539a4d381b5	target.create	d144c980-6015-4337-9ea2-7e11415c7c70	dcbb6c79-5b1a-43b3-8aa9-79eb3dd15b86	\\xae7554bf6113313af3653d055e00789aedfd9c9e9a30a1db1cd49ab27d05d6c2	\\xf1604ba242f4ec7482259bd6f40a7979439d3d21033c9dbd166a21512ff3ddc4
3	2026-03-03 09:01:00+00	member	252d3662-612d-47b3-8d6d-0539a4d381b5	session.open	d144c980-6015-4337-9ea2-7e11415c7c70	f9c30601-de09-44b6-997a-f8d54ba6b640	\\xf1604ba242f4ec7482259bd6f40a7979439d3d21033c9dbd166a21512ff3ddc4	\\xeb212f57d0a862cf5f920b0f8218f0003a99d23aa279f01a8ec8a51374dabbc4
4	2026-03-03 09:01:00+00	member	716068db-57f8-4a94-9fc0-7926c90f2e29	member.invite	\N	\N	\\xeb212f57d0a862cf5f920b0f8218f0003a99d23aa279f01a8ec8a51374dabbc4	\\x1d0177b0ed539667324d8756eb9e6a7835f4fce77003d2078a8860171e1cd5e3
5	2026-03-03 09:01:00+00	member	716068db-57f8-4a94-9fc0-7926c90f2e29	practice.settings.change	\N	\N	\\x1d0177b0ed539667324d8756eb9e6a7835f4fce77003d2078a8860171e1cd5e3	\\x4defb056df67ab687e357df915f462f9cbf6f928ac63e6501bdc893cdafd80b7
6	2026-03-03 09:01:00+00	member	252d3662-612d-47b3-8d6d-0539a4d381b5	preset.create	\N	fd2d9182-085a-4f57-9cb9-fcb486133936	\\x4defb056df67ab687e357df915f462f9cbf6f928ac63e6501bdc893cdafd80b7	\\x6a1201a17b5220825e6d694bdb80718415e102aeb901df6a10a42319ef9709ce
7	2026-03-03 09:01:00+00	member	252d3662-612d-47b3-8d6d-0539a4d381b5	preset.create	\N	1bf8e909-3e2b-464b-82eb-73b37f9c2597	\\x6a1201a17b5220825e6d694bdb80718415e102aeb901df6a10a42319ef9709ce	\\xe4b702628c90a9d8a9a09720d10750035324d3a9cee0a795ba023a03b4cdcc00
8	2026-03-03 09:01:00+00	member	252d3662-612d-47b3-8d6d-0539a4d381b5	preset.put_away	\N	1bf8e909-3e2b-464b-82eb-73b37f9c2597	\\xe4b702628c90a9d8a9a09720d10750035324d3a9cee0a795ba023a03b4cdcc00	\\x42f8f986007ace6aeec6ddbcf8ceb78102a8474e5039e86e8e625b127c7ca44f
9	2026-03-03 09:01:00+00	member	252d3662-612d-47b3-8d6d-0539a4d381b5	client.change	d144c980-6015-4337-9ea2-7e11415c7c70	\N	\\x42f8f986007ace6aeec6ddbcf8ceb78102a8474e5039e86e8e625b127c7ca44f	\\xaea62a360efc1e1cdb1327cf8d1adb0dc312a5877bb98d514613ed46d9f13671
10	2026-03-03 09:01:00+00	member	252d3662-612d-47b3-8d6d-0539a4d381b5	comfort.change	d144c980-6015-4337-9ea2-7e11415c7c70	\N	\\xaea62a360efc1e1cdb1327cf8d1adb0dc312a5877bb98d514613ed46d9f13671	\\x15ea7cf6fcc8e3f0915e4f404c4b57efd3e1230053902c5e4effb114a084afca
11	2026-03-03 09:02:00+00	member	252d3662-612d-47b3-8d6d-0539a4d381b5	target.change	d144c980-6015-4337-9ea2-7e11415c7c70	dcbb6c79-5b1a-43b3-8aa9-79eb3dd15b86	\\x15ea7cf6fcc8e3f0915e4f404c4b57efd3e1230053902c5e4effb114a084afca	\\x986d8e12b768819316e87b1e56973af0e307d3e92c1b55b3b375d5fda66af84b
12	2026-03-03 09:02:00+00	member	252d3662-612d-47b3-8d6d-0539a4d381b5	target.change	d144c980-6015-4337-9ea2-7e11415c7c70	dcbb6c79-5b1a-43b3-8aa9-79eb3dd15b86	\\x986d8e12b768819316e87b1e56973af0e307d3e92c1b55b3b375d5fda66af84b	\\xd7dace002b00737d333083bb9105c8cf0fc17f5f4984ef154f5e04b61699f4d1
13	2026-03-03 09:02:00+00	member	252d3662-612d-47b3-8d6d-0539a4d381b5	plan.cluster	d144c980-6015-4337-9ea2-7e11415c7c70	\N	\\xd7dace002b00737d333083bb9105c8cf0fc17f5f4984ef154f5e04b61699f4d1	\\x8283893b8e51ce5b34fbd70d541c0a140a608776e8a7688a08f164181b8fe99f
14	2026-03-03 09:02:00+00	member	252d3662-612d-47b3-8d6d-0539a4d381b5	target.create	d144c980-6015-4337-9ea2-7e11415c7c70	c5636dbb-57e1-459a-9c1d-efeec79dd5b4	\\x8283893b8e51ce5b34fbd70d541c0a140a608776e8a7688a08f164181b8fe99f	\\x27f3298e42942ecbc29b21051134062b061b52624f7e8869cc0fc90dc9979c7c
15	2026-03-03 09:02:00+00	member	252d3662-612d-47b3-8d6d-0539a4d381b5	plan.move	d144c980-6015-4337-9ea2-7e11415c7c70	\N	\\x27f3298e42942ecbc29b21051134062b061b52624f7e8869cc0fc90dc9979c7c	\\x918088da1adb005c89ede908d006d9ee185b0714f9fee656ee887fc73fbbd0cb
16	2026-03-03 09:02:01+00	member	252d3662-612d-47b3-8d6d-0539a4d381b5	entry.keep	d144c980-6015-4337-9ea2-7e11415c7c70	f9c30601-de09-44b6-997a-f8d54ba6b640	\\x918088da1adb005c89ede908d006d9ee185b0714f9fee656ee887fc73fbbd0cb	\\xc8495c144ecc1ce25633d68bdfb12b84578967a7961edf2d4f1d9e9d1961cc33
17	2026-03-03 09:02:32+00	member	252d3662-612d-47b3-8d6d-0539a4d381b5	entry.keep	d144c980-6015-4337-9ea2-7e11415c7c70	f9c30601-de09-44b6-997a-f8d54ba6b640	\\xc8495c144ecc1ce25633d68bdfb12b84578967a7961edf2d4f1d9e9d1961cc33	\\x294ea162de003a10fb516b2fbd1427a031d8bf34e87a674f4ae15799524e2d1d
18	2026-03-03 09:02:33+00	member	252d3662-612d-47b3-8d6d-0539a4d381b5	entry.keep	d144c980-6015-4337-9ea2-7e11415c7c70	f9c30601-de09-44b6-997a-f8d54ba6b640	\\x294ea162de003a10fb516b2fbd1427a031d8bf34e87a674f4ae15799524e2d1d	\\x72afa826a84e2fa512a63716e9d8c25bdebc63ca955f41bd70b69a29c2a4b0dc
19	2026-03-03 09:02:34+00	member	252d3662-612d-47b3-8d6d-0539a4d381b5	entry.keep	d144c980-6015-4337-9ea2-7e11415c7c70	f9c30601-de09-44b6-997a-f8d54ba6b640	\\x72afa826a84e2fa512a63716e9d8c25bdebc63ca955f41bd70b69a29c2a4b0dc	\\xb622f80b9c845f86578d75f99316d4241436bac69015a79d09ce91afb158eeb6
20	2026-03-03 09:02:35+00	member	252d3662-612d-47b3-8d6d-0539a4d381b5	entry.keep	d144c980-6015-4337-9ea2-7e11415c7c70	f9c30601-de09-44b6-997a-f8d54ba6b640	\\xb622f80b9c845f86578d75f99316d4241436bac69015a79d09ce91afb158eeb6	\\xea7e390e6d51762d87d13f1c543f31682df70a950c7689317a4259daedd545cb
21	2026-03-03 09:03:06+00	member	252d3662-612d-47b3-8d6d-0539a4d381b5	entry.keep	d144c980-6015-4337-9ea2-7e11415c7c70	f9c30601-de09-44b6-997a-f8d54ba6b640	\\xea7e390e6d51762d87d13f1c543f31682df70a950c7689317a4259daedd545cb	\\x65d472667cabe1653bb66d510224c14f2f4ee7b400050afda6ed18a527adf7c1
22	2026-03-03 09:03:07+00	member	252d3662-612d-47b3-8d6d-0539a4d381b5	entry.keep	d144c980-6015-4337-9ea2-7e11415c7c70	f9c30601-de09-44b6-997a-f8d54ba6b640	\\x65d472667cabe1653bb66d510224c14f2f4ee7b400050afda6ed18a527adf7c1	\\xf792d535ea9324380f98b3c436a7171b30c5a445fbf5ffe1f74e49346c539663
23	2026-03-03 09:03:38+00	member	252d3662-612d-47b3-8d6d-0539a4d381b5	entry.keep	d144c980-6015-4337-9ea2-7e11415c7c70	f9c30601-de09-44b6-997a-f8d54ba6b640	\\xf792d535ea9324380f98b3c436a7171b30c5a445fbf5ffe1f74e49346c539663	\\x1ef2114a7a328ae04999f8c00e339e571e83bb42194967b95c8d6582af276a78
24	2026-03-03 09:03:39+00	member	252d3662-612d-47b3-8d6d-0539a4d381b5	entry.keep	d144c980-6015-4337-9ea2-7e11415c7c70	f9c30601-de09-44b6-997a-f8d54ba6b640	\\x1ef2114a7a328ae04999f8c00e339e571e83bb42194967b95c8d6582af276a78	\\xa081e1b02d9f1401574a57d6b38f9554a6de3045ffe35738a62ac3a2108e044f
25	2026-03-03 09:03:40+00	member	252d3662-612d-47b3-8d6d-0539a4d381b5	entry.keep	d144c980-6015-4337-9ea2-7e11415c7c70	f9c30601-de09-44b6-997a-f8d54ba6b640	\\xa081e1b02d9f1401574a57d6b38f9554a6de3045ffe35738a62ac3a2108e044f	\\x1379d7aac4835eb7accd3bde052a3d9620a3eac353634e00770b45b1b380c61d
26	2026-03-03 09:03:41+00	member	252d3662-612d-47b3-8d6d-0539a4d381b5	entry.keep	d144c980-6015-4337-9ea2-7e11415c7c70	f9c30601-de09-44b6-997a-f8d54ba6b640	\\x1379d7aac4835eb7accd3bde052a3d9620a3eac353634e00770b45b1b380c61d	\\x0faaba748237acd273107345826f83a47877a2df2764cd1a19b26111ff5cd91f
27	2026-03-03 09:03:41+00	member	252d3662-612d-47b3-8d6d-0539a4d381b5	target.fact	d144c980-6015-4337-9ea2-7e11415c7c70	dcbb6c79-5b1a-43b3-8aa9-79eb3dd15b86	\\x0faaba748237acd273107345826f83a47877a2df2764cd1a19b26111ff5cd91f	\\x9568f7f43fc77e634d8754b58dc1ca76550a15614866cd7c7c8ff40b22e510c9
28	2026-03-03 09:03:41+00	member	252d3662-612d-47b3-8d6d-0539a4d381b5	target.fact	d144c980-6015-4337-9ea2-7e11415c7c70	dcbb6c79-5b1a-43b3-8aa9-79eb3dd15b86	\\x9568f7f43fc77e634d8754b58dc1ca76550a15614866cd7c7c8ff40b22e510c9	\\x4a77775d4d97c14eb21cdff980748a9b94783c78922a535f9bd70c15ff0e73d8
29	2026-03-03 09:03:41+00	member	252d3662-612d-47b3-8d6d-0539a4d381b5	target.fact	d144c980-6015-4337-9ea2-7e11415c7c70	dcbb6c79-5b1a-43b3-8aa9-79eb3dd15b86	\\x4a77775d4d97c14eb21cdff980748a9b94783c78922a535f9bd70c15ff0e73d8	\\xd497d416e7aec80e861d4e7775e8824273762b8ae6ed0b015811c92a09167db9
30	2026-03-03 09:04:12+00	member	252d3662-612d-47b3-8d6d-0539a4d381b5	entry.keep	d144c980-6015-4337-9ea2-7e11415c7c70	f9c30601-de09-44b6-997a-f8d54ba6b640	\\xd497d416e7aec80e861d4e7775e8824273762b8ae6ed0b015811c92a09167db9	\\x67e800606b25ac7c711043a1f85697838964214dacdc7c9485e9a88104238b54
31	2026-03-03 09:04:13+00	member	252d3662-612d-47b3-8d6d-0539a4d381b5	entry.keep	d144c980-6015-4337-9ea2-7e11415c7c70	f9c30601-de09-44b6-997a-f8d54ba6b640	\\x67e800606b25ac7c711043a1f85697838964214dacdc7c9485e9a88104238b54	\\x7174f2a1049056fd4f72b8228708cdce69936ac7a6ba88ae36118f71c2eee9fe
32	2026-03-03 09:04:14+00	member	252d3662-612d-47b3-8d6d-0539a4d381b5	entry.keep	d144c980-6015-4337-9ea2-7e11415c7c70	f9c30601-de09-44b6-997a-f8d54ba6b640	\\x7174f2a1049056fd4f72b8228708cdce69936ac7a6ba88ae36118f71c2eee9fe	\\xcc7fc5e4806a79b8815704f652203bc814679f9dabf85897ff457426826e32cf
33	2026-03-03 09:04:15+00	member	252d3662-612d-47b3-8d6d-0539a4d381b5	entry.keep	d144c980-6015-4337-9ea2-7e11415c7c70	f9c30601-de09-44b6-997a-f8d54ba6b640	\\xcc7fc5e4806a79b8815704f652203bc814679f9dabf85897ff457426826e32cf	\\x5fad1fc1589c8b86d389f8343446ec2e0dd2a48c6f0a2fca58ad7fe7ee3c0eb7
34	2026-03-03 09:04:15+00	member	252d3662-612d-47b3-8d6d-0539a4d381b5	session.view	d144c980-6015-4337-9ea2-7e11415c7c70	f9c30601-de09-44b6-997a-f8d54ba6b640	\\x5fad1fc1589c8b86d389f8343446ec2e0dd2a48c6f0a2fca58ad7fe7ee3c0eb7	\\x9ec65a185f96e62515153fead1c7831d5104c7d605fe3e52370c9db5aabfb06e
35	2026-03-03 09:04:15+00	member	252d3662-612d-47b3-8d6d-0539a4d381b5	session.close	d144c980-6015-4337-9ea2-7e11415c7c70	f9c30601-de09-44b6-997a-f8d54ba6b640	\\x9ec65a185f96e62515153fead1c7831d5104c7d605fe3e52370c9db5aabfb06e	\\x7f30a9bcaef03d7aeaf4ad94f6cf243ed7d7c9f25fad816747b0940b6ebce01d
36	2026-03-03 09:04:15+00	member	252d3662-612d-47b3-8d6d-0539a4d381b5	session.check	d144c980-6015-4337-9ea2-7e11415c7c70	f9c30601-de09-44b6-997a-f8d54ba6b640	\\x7f30a9bcaef03d7aeaf4ad94f6cf243ed7d7c9f25fad816747b0940b6ebce01d	\\xdff144f053608b6aa2b397d803fbe6f23c3621325c245cdbf5117048d248038f
37	2026-03-03 09:04:15+00	member	252d3662-612d-47b3-8d6d-0539a4d381b5	session.note.view	d144c980-6015-4337-9ea2-7e11415c7c70	f9c30601-de09-44b6-997a-f8d54ba6b640	\\xdff144f053608b6aa2b397d803fbe6f23c3621325c245cdbf5117048d248038f	\\x9f8a7916e8a7c54ebedd5d74905d0019186a83cb2bd2746c5c0bfa37900d9dc1
38	2026-03-03 09:04:15+00	member	252d3662-612d-47b3-8d6d-0539a4d381b5	session.note.save	d144c980-6015-4337-9ea2-7e11415c7c70	f9c30601-de09-44b6-997a-f8d54ba6b640	\\x9f8a7916e8a7c54ebedd5d74905d0019186a83cb2bd2746c5c0bfa37900d9dc1	\\xc14ca9286851f181b3818e61b8851e3d1e40061afbcbc5e1e39825b3927881d1
39	2026-03-10 09:04:15+00	member	252d3662-612d-47b3-8d6d-0539a4d381b5	session.open	d144c980-6015-4337-9ea2-7e11415c7c70	76cd1542-9976-4af7-a5b0-c6e2a40bc48f	\\xc14ca9286851f181b3818e61b8851e3d1e40061afbcbc5e1e39825b3927881d1	\\x6af6b54c5117c2b8b9ed6badfb32dffc0d2064b82e48c211dac1bb27bc3d7453
40	2026-03-10 09:04:15+00	member	252d3662-612d-47b3-8d6d-0539a4d381b5	link.make	d144c980-6015-4337-9ea2-7e11415c7c70	76cd1542-9976-4af7-a5b0-c6e2a40bc48f	\\x6af6b54c5117c2b8b9ed6badfb32dffc0d2064b82e48c211dac1bb27bc3d7453	\\xe89c14274963ebb428339358209d04345ef05c5d647a25d98e91856f21ff7f18
41	2026-03-10 09:04:15+00	visitor	\N	seat.claim	\N	76cd1542-9976-4af7-a5b0-c6e2a40bc48f	\\xe89c14274963ebb428339358209d04345ef05c5d647a25d98e91856f21ff7f18	\\xfa67043919c3b5c6ebfa0708a9820881e88b92a15197436c03f3c9f0a7b9dce7
42	2026-03-10 09:04:15+00	member	252d3662-612d-47b3-8d6d-0539a4d381b5	session.admit	d144c980-6015-4337-9ea2-7e11415c7c70	76cd1542-9976-4af7-a5b0-c6e2a40bc48f	\\xfa67043919c3b5c6ebfa0708a9820881e88b92a15197436c03f3c9f0a7b9dce7	\\x51cf81b248d0980c8096e13ddf9fb1753b4c08e7062921dbe97314f4c1c561b0
43	2026-03-10 09:04:15+00	member	252d3662-612d-47b3-8d6d-0539a4d381b5	code.make	d144c980-6015-4337-9ea2-7e11415c7c70	76cd1542-9976-4af7-a5b0-c6e2a40bc48f	\\x51cf81b248d0980c8096e13ddf9fb1753b4c08e7062921dbe97314f4c1c561b0	\\x811561837bbab1e9d4b14048985cd5470aa9b616f2168ecf892b4a46067862da
44	2026-03-10 09:04:15+00	visitor	\N	seat.claim	\N	76cd1542-9976-4af7-a5b0-c6e2a40bc48f	\\x811561837bbab1e9d4b14048985cd5470aa9b616f2168ecf892b4a46067862da	\\xff07da9b4616a85c10f3887ca3916809c681bc197eedcbd8026827f8af15406c
45	2026-03-10 09:04:15+00	member	252d3662-612d-47b3-8d6d-0539a4d381b5	rehearsal.prepare	28bb37f3-d9a2-4c59-9d17-a0711de7c904	\N	\\xff07da9b4616a85c10f3887ca3916809c681bc197eedcbd8026827f8af15406c	\\x55297dc2a0358b1de3782e7be35ba33d4b3dd9f10f09a64c4e8a7e302ad1fc71
46	2026-03-10 09:04:15+00	member	252d3662-612d-47b3-8d6d-0539a4d381b5	session.open	28bb37f3-d9a2-4c59-9d17-a0711de7c904	7659429b-37f4-4378-915b-6c176e15f1f5	\\x55297dc2a0358b1de3782e7be35ba33d4b3dd9f10f09a64c4e8a7e302ad1fc71	\\xc95a4da58fe159fedc8031fb5feb119812cf41efec5d25600d25ac20f8dc809f
47	2026-03-10 09:04:15+00	member	252d3662-612d-47b3-8d6d-0539a4d381b5	client.create	07cd93d6-b617-4c55-bb7d-05df4a693182	\N	\\xc95a4da58fe159fedc8031fb5feb119812cf41efec5d25600d25ac20f8dc809f	\\x50994717f79356b105f60bd200288988f47e554bf1c021b78a275bf90b3bbaed
48	2026-03-10 09:04:15+00	member	252d3662-612d-47b3-8d6d-0539a4d381b5	client.archive	07cd93d6-b617-4c55-bb7d-05df4a693182	\N	\\x50994717f79356b105f60bd200288988f47e554bf1c021b78a275bf90b3bbaed	\\x4d5b41d32a8dfbb8a862162e78564799538acfc62561b6fc2a6f5a81167b53aa
\.


--
-- Data for Name: client; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.client (id, number, opened_on, archived_at, seizures, eye_condition, version, plan_version) FROM stdin;
d144c980-6015-4337-9ea2-7e11415c7c70	1	2026-03-03	\N	no	no	2	7
28bb37f3-d9a2-4c59-9d17-a0711de7c904	2	2026-03-10	\N	no	no	1	1
07cd93d6-b617-4c55-bb7d-05df4a693182	3	2026-03-10	2026-03-10 09:04:15+00	yes	not_asked	2	1
\.


--
-- Data for Name: client_details; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.client_details (client_id, name, addressed_as, phone, contact_name, contact_phone, usual_location, version) FROM stdin;
d144c980-6015-4337-9ea2-7e11415c7c70	\\x01ea37cdabe4c16272fc4380e7dc0e67920c11ee0dc0f44d30518e311ecd0b646d2bbf50cdb2c38b9532145232f3db636789a105	\\x01b97600f404b11b8976b64eb4bcc8bbf92fe3b5b1b88df4bd92dfca5c07b6fc9b750d5e010b	\\x01f2fa08690de02c7944d315d6c8c141d0842cc9b9f65ed63d4724f060075da87de712261f235b14f2f25a	\\x0136ac7774496fec4956e8402c6680ba33bcf6313e0684b5c0d8b8f1f12c3b91a8ff68391e4627ba63445c6288d7ed	\\x013a45304c7bdfc7f92d169cd4be6af20ca93a555954abd707e5efcc20da48e6458ee486e9af79f8	\\x01d0a5c87ab4efafa0396dda02e43b09d0992e0edeb66bd20492c549c8150e11ef470a35f6aa29168f87387c26cd779a2b8e30d5ab8625a7	2
28bb37f3-d9a2-4c59-9d17-a0711de7c904	\\x01a2f37df2f7a6f964507953a316989e11bba9467b2493ccd298e7ddbb8e3c5d70e4dff44d08	\\x01d0f0d39b81cea6b13d716da47e90fa1f51557b4404e180abc5a3e167	\\x01439143cb8e5eb5f2eecd3cbcd05a8dfe2fe78aba0cc0bc768ae2be5b	\\x0105e5abb44a722d030b597c9685f06a36bacfe955527850e7733b5a1e	\\x019264fc6eee017ff0514b2c9df1852592d4df4af6160f70ee2fa3470a	\\x015d030780c3c806a342439a569c4b8a87890d5eafa88eb61266ece241	1
07cd93d6-b617-4c55-bb7d-05df4a693182	\\x01cfff0ad4b31ab4f9942b95ea2e8783362363095a06bff0b756011d33b7395b46d289376c8faecdc1fa	\\x01bbba85180e65353b8f12d0f0b59905cd616204f3f4cb2d15d04ed815	\\x014ee05956565c203dae0450503095bac5bb83b43ead14b416675499e0	\\x0149adbaa1c334c36b33cc9ba4f20ada5a55f6d0d7ca927c7511d91330	\\x011adccca7a4a8a44fe1905e71fce8faafc0536859f7e1c90787615e61	\\x01eae71fa62284d06a0bcd14ea2dd6ecfe48fd1e562301eeb772c3a5e5	1
\.


--
-- Data for Name: client_key; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.client_key (client_id, key_id, wrapped) FROM stdin;
d144c980-6015-4337-9ea2-7e11415c7c70	1	\\x018c8e0fac6d3d9e5b9d9f474a471ed5fd0a5c13012dd210db476878845cc50d5d3b77ee43a434286714fad32f65bd5acea2e35513eb7a3f967df353d7
28bb37f3-d9a2-4c59-9d17-a0711de7c904	1	\\x0185c4c8e905fb25a5e51d157f4431e93d21cac31ae1e3a10997cdaf947e29011a48afd7f3713387b71de01938db2e79ad2059d8566ec74266fc1eae45
07cd93d6-b617-4c55-bb7d-05df4a693182	1	\\x0195b700cf0c024b6c94c876f1e108c7b0a77f7302e97003d8fd744e3ea7a2586878e18892720ab767b0d5938c9bac70a99ce5331f0f42b2c7a029098b
\.


--
-- Data for Name: cluster; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.cluster (id, client_id, number, name, theme, earliest_id, worst_id, version) FROM stdin;
0372d781-4b50-4b5e-a48d-845f6338389b	d144c980-6015-4337-9ea2-7e11415c7c70	1	\\x01aa2583d95771762c7423e56081512fdc37cb15ea13cd92e7ab9f5ec53fb3e5276edaaad21e8035a2	safety	dcbb6c79-5b1a-43b3-8aa9-79eb3dd15b86	\N	2
\.


--
-- Data for Name: comfort; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.comfort (client_id, path, dot, comfort, filled_at, version) FROM stdin;
d144c980-6015-4337-9ea2-7e11415c7c70	eight	2.5	{"level": 60, "pitch": 400, "sweep": "constant", "timbre": "wood", "colours": "lake", "tone_ms": 90, "vibration": true}	2026-03-03 09:01:00+00	1
\.


--
-- Data for Name: fact; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.fact (id, client_id, session_id, target_id, set_id, kind, code, because, moment, replaces, first_id, entered_by, at, seq) FROM stdin;
60d7957f-f129-44b7-9127-748d9500d856	d144c980-6015-4337-9ea2-7e11415c7c70	f9c30601-de09-44b6-997a-f8d54ba6b640	dcbb6c79-5b1a-43b3-8aa9-79eb3dd15b86	bf8faec3-4124-4e12-9bfb-b07f667aee00	mark	same	\N	after_set	\N	\N	252d3662-612d-47b3-8d6d-0539a4d381b5	2026-03-03 09:03:38+00	17
848d3694-629a-4f29-b7ad-c6d6fbca4a21	d144c980-6015-4337-9ea2-7e11415c7c70	f9c30601-de09-44b6-997a-f8d54ba6b640	dcbb6c79-5b1a-43b3-8aa9-79eb3dd15b86	bf8faec3-4124-4e12-9bfb-b07f667aee00	mark	changing	\N	after_set	60d7957f-f129-44b7-9127-748d9500d856	60d7957f-f129-44b7-9127-748d9500d856	252d3662-612d-47b3-8d6d-0539a4d381b5	2026-03-03 09:03:39+00	18
98182cf8-1f3e-4b57-b096-602167310122	d144c980-6015-4337-9ea2-7e11415c7c70	f9c30601-de09-44b6-997a-f8d54ba6b640	dcbb6c79-5b1a-43b3-8aa9-79eb3dd15b86	bf8faec3-4124-4e12-9bfb-b07f667aee00	saw	glazed	\N	after_set	\N	\N	252d3662-612d-47b3-8d6d-0539a4d381b5	2026-03-03 09:03:40+00	19
5c7027e5-c925-445e-8495-e631aaf90031	d144c980-6015-4337-9ea2-7e11415c7c70	f9c30601-de09-44b6-997a-f8d54ba6b640	dcbb6c79-5b1a-43b3-8aa9-79eb3dd15b86	bf8faec3-4124-4e12-9bfb-b07f667aee00	tried	arousal	\N	after_set	\N	\N	252d3662-612d-47b3-8d6d-0539a4d381b5	2026-03-03 09:03:41+00	20
e77d6222-0383-4266-8e11-8425a0f81a74	d144c980-6015-4337-9ea2-7e11415c7c70	f9c30601-de09-44b6-997a-f8d54ba6b640	dcbb6c79-5b1a-43b3-8aa9-79eb3dd15b86	\N	procedure	recent_event	\N	\N	\N	\N	252d3662-612d-47b3-8d6d-0539a4d381b5	2026-03-03 09:03:41+00	21
4f76d02c-ae3c-4ce9-a241-806471403155	d144c980-6015-4337-9ea2-7e11415c7c70	f9c30601-de09-44b6-997a-f8d54ba6b640	dcbb6c79-5b1a-43b3-8aa9-79eb3dd15b86	\N	scan	felt	\N	\N	\N	\N	252d3662-612d-47b3-8d6d-0539a4d381b5	2026-03-03 09:03:41+00	23
5817f5c3-fb64-4175-ad69-7e82f37fed58	d144c980-6015-4337-9ea2-7e11415c7c70	f9c30601-de09-44b6-997a-f8d54ba6b640	dcbb6c79-5b1a-43b3-8aa9-79eb3dd15b86	\N	decided	incomplete	\N	\N	\N	\N	252d3662-612d-47b3-8d6d-0539a4d381b5	2026-03-03 09:04:15+00	30
\.


--
-- Data for Name: hour_fact; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.hour_fact (id, client_id, session_id, kind, code, because, again, replaces, entered_by, at, seq) FROM stdin;
1b4786a8-346e-4ecf-8a51-51cf0ef5ff33	d144c980-6015-4337-9ea2-7e11415c7c70	f9c30601-de09-44b6-997a-f8d54ba6b640	answered	acute	\N	f	\N	252d3662-612d-47b3-8d6d-0539a4d381b5	2026-03-03 09:04:12+00	25
55490b87-afdb-4094-a826-e65449230375	d144c980-6015-4337-9ea2-7e11415c7c70	f9c30601-de09-44b6-997a-f8d54ba6b640	answered	\N	\N	f	1b4786a8-346e-4ecf-8a51-51cf0ef5ff33	252d3662-612d-47b3-8d6d-0539a4d381b5	2026-03-03 09:04:13+00	26
80a34cd6-70ac-4b75-88d0-9db56abfe70f	d144c980-6015-4337-9ea2-7e11415c7c70	f9c30601-de09-44b6-997a-f8d54ba6b640	passed	risk	judgement	f	\N	252d3662-612d-47b3-8d6d-0539a4d381b5	2026-03-03 09:04:14+00	27
6b68942c-b304-4488-91c8-89c375f8c21f	d144c980-6015-4337-9ea2-7e11415c7c70	f9c30601-de09-44b6-997a-f8d54ba6b640	time	60+10	\N	f	\N	252d3662-612d-47b3-8d6d-0539a4d381b5	2026-03-03 09:04:15+00	28
bbb4ac02-20bb-4217-99a6-65004360f538	d144c980-6015-4337-9ea2-7e11415c7c70	76cd1542-9976-4af7-a5b0-c6e2a40bc48f	answered	another_place	\N	f	\N	252d3662-612d-47b3-8d6d-0539a4d381b5	2026-03-10 09:04:15+00	33
45e293a0-db2b-4f6f-9bfe-3057ec6a8d88	d144c980-6015-4337-9ea2-7e11415c7c70	76cd1542-9976-4af7-a5b0-c6e2a40bc48f	answered	private	\N	f	\N	252d3662-612d-47b3-8d6d-0539a4d381b5	2026-03-10 09:04:15+00	34
\.


--
-- Data for Name: practice; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.practice (singleton, instance, name, zone, emergency_number, demo, day_order, clock, tells_whom, minutes, reserve, check_from, check_until, stuck_after) FROM stdin;
t	5eec1b13-b857-49cf-9401-27adc0ba92b1	Practice	UTC	112	f	month_first	12	t	90	15	12	48	3
\.


--
-- Data for Name: preset; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.preset (id, member_id, name, purpose, eyes, ears, hands, rate, width, cycles, made_at, put_away_at, version) FROM stdin;
8bb249cc-8086-4a5b-9243-e6152b19a6e0	\N	Slow	processing	t	f	f	0.8	18	24	2026-11-29 09:01:54.084078+00	\N	1
42616f06-addc-41f8-b918-b41a2fda5401	\N	Standard	processing	t	f	f	1	18	24	2026-11-29 09:01:54.084078+00	\N	1
9798ebcd-ee32-47f7-9eb2-1684d54ad417	\N	Fast	processing	t	f	f	1.2	18	24	2026-11-29 09:01:54.084078+00	\N	1
a8ca99b0-b11f-4c22-8834-5e342054ca5f	\N	Calm place	calm_place	t	f	f	0.5	18	6	2026-11-29 09:01:54.084078+00	\N	1
fd2d9182-085a-4f57-9cb9-fcb486133936	252d3662-612d-47b3-8d6d-0539a4d381b5	Evening	processing	t	f	f	0.9	16	30	2026-03-03 09:01:00+00	\N	1
1bf8e909-3e2b-464b-82eb-73b37f9c2597	252d3662-612d-47b3-8d6d-0539a4d381b5	Given up	processing	t	f	f	0.9	16	30	2026-03-03 09:01:00+00	2026-03-03 09:01:00+00	2
\.


--
-- Data for Name: process_note; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.process_note (id, session_id, client_id, set_id, moment, words, replaces, entered_by, at, seq) FROM stdin;
c31e74d7-bb91-466b-8650-e2fdc29ae4b8	f9c30601-de09-44b6-997a-f8d54ba6b640	d144c980-6015-4337-9ea2-7e11415c7c70	d7526b33-aad9-4748-acae-08abbfb040ce	after_set	\\x01b9fff5c02fd42e2f39e7ed7534e85b6a7235e40af7faa13abebff1afc1673718d36605223e67ee9a48ce511582e8be	\N	252d3662-612d-47b3-8d6d-0539a4d381b5	2026-03-03 09:02:32+00	9
370ff7b8-b6c4-41eb-97d8-33a02456cd83	f9c30601-de09-44b6-997a-f8d54ba6b640	d144c980-6015-4337-9ea2-7e11415c7c70	d7526b33-aad9-4748-acae-08abbfb040ce	after_set	\\x01423b143f65534696977737a3dfb5859c15fd8473f6f6da8483583defafffe8e7950f35b58f90d793fc207840d7830fac04a2fe85	c31e74d7-bb91-466b-8650-e2fdc29ae4b8	252d3662-612d-47b3-8d6d-0539a4d381b5	2026-03-03 09:02:33+00	10
\.


--
-- Data for Name: rating; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.rating (id, client_id, session_id, target_id, set_id, scale, value, moment, replaces, entered_by, at, seq, first_id, segment) FROM stdin;
ca6af62c-88f4-4d76-b519-d749b68153d9	d144c980-6015-4337-9ea2-7e11415c7c70	\N	dcbb6c79-5b1a-43b3-8aa9-79eb3dd15b86	\N	sud	8	assessment	\N	252d3662-612d-47b3-8d6d-0539a4d381b5	2026-03-03 09:00:00+00	1	\N	\N
43abc304-da7a-4234-b7af-bf5ab796eee5	d144c980-6015-4337-9ea2-7e11415c7c70	\N	dcbb6c79-5b1a-43b3-8aa9-79eb3dd15b86	\N	voc	2	assessment	\N	252d3662-612d-47b3-8d6d-0539a4d381b5	2026-03-03 09:00:00+00	2	\N	\N
d472fa5b-5019-4573-aa33-feb7ec8fb5e2	d144c980-6015-4337-9ea2-7e11415c7c70	f9c30601-de09-44b6-997a-f8d54ba6b640	dcbb6c79-5b1a-43b3-8aa9-79eb3dd15b86	\N	sud	7	assessment	\N	252d3662-612d-47b3-8d6d-0539a4d381b5	2026-03-03 09:02:00+00	4	\N	\N
f6b0e45d-d07c-4117-b968-917ea8c1b523	d144c980-6015-4337-9ea2-7e11415c7c70	f9c30601-de09-44b6-997a-f8d54ba6b640	dcbb6c79-5b1a-43b3-8aa9-79eb3dd15b86	\N	voc	3	assessment	\N	252d3662-612d-47b3-8d6d-0539a4d381b5	2026-03-03 09:02:00+00	5	\N	\N
d60e4705-2c64-43ae-877d-62629108076d	d144c980-6015-4337-9ea2-7e11415c7c70	f9c30601-de09-44b6-997a-f8d54ba6b640	dcbb6c79-5b1a-43b3-8aa9-79eb3dd15b86	\N	sud	8	assessment	d472fa5b-5019-4573-aa33-feb7ec8fb5e2	252d3662-612d-47b3-8d6d-0539a4d381b5	2026-03-03 09:02:00+00	6	d472fa5b-5019-4573-aa33-feb7ec8fb5e2	\N
f7027129-b5e2-4252-b6df-777d95fceb6e	d144c980-6015-4337-9ea2-7e11415c7c70	f9c30601-de09-44b6-997a-f8d54ba6b640	dcbb6c79-5b1a-43b3-8aa9-79eb3dd15b86	\N	sud	8	back_at_target	\N	252d3662-612d-47b3-8d6d-0539a4d381b5	2026-03-03 09:02:01+00	7	\N	\N
bd698d7a-7998-45e5-b5e1-b86434a6098e	d144c980-6015-4337-9ea2-7e11415c7c70	f9c30601-de09-44b6-997a-f8d54ba6b640	dcbb6c79-5b1a-43b3-8aa9-79eb3dd15b86	d7526b33-aad9-4748-acae-08abbfb040ce	sud	9	after_set	\N	252d3662-612d-47b3-8d6d-0539a4d381b5	2026-03-03 09:02:34+00	11	\N	\N
d1121516-288d-4e4c-846c-bf28290e64e0	d144c980-6015-4337-9ea2-7e11415c7c70	f9c30601-de09-44b6-997a-f8d54ba6b640	dcbb6c79-5b1a-43b3-8aa9-79eb3dd15b86	d7526b33-aad9-4748-acae-08abbfb040ce	sud	6	after_set	bd698d7a-7998-45e5-b5e1-b86434a6098e	252d3662-612d-47b3-8d6d-0539a4d381b5	2026-03-03 09:02:35+00	12	bd698d7a-7998-45e5-b5e1-b86434a6098e	\N
b1a9df5a-00d6-46c2-b202-b5fe40a22a81	d144c980-6015-4337-9ea2-7e11415c7c70	f9c30601-de09-44b6-997a-f8d54ba6b640	dcbb6c79-5b1a-43b3-8aa9-79eb3dd15b86	28b265b3-8579-484d-8d97-7d9344ab222d	voc	4	installation	\N	252d3662-612d-47b3-8d6d-0539a4d381b5	2026-03-03 09:03:06+00	14	\N	\N
3099bc82-2a4b-445c-b27c-769763be4621	d144c980-6015-4337-9ea2-7e11415c7c70	f9c30601-de09-44b6-997a-f8d54ba6b640	dcbb6c79-5b1a-43b3-8aa9-79eb3dd15b86	28b265b3-8579-484d-8d97-7d9344ab222d	voc	\N	installation	b1a9df5a-00d6-46c2-b202-b5fe40a22a81	252d3662-612d-47b3-8d6d-0539a4d381b5	2026-03-03 09:03:07+00	15	b1a9df5a-00d6-46c2-b202-b5fe40a22a81	\N
7eec4289-1c76-4816-a72c-07ae13b57154	d144c980-6015-4337-9ea2-7e11415c7c70	f9c30601-de09-44b6-997a-f8d54ba6b640	dcbb6c79-5b1a-43b3-8aa9-79eb3dd15b86	\N	sud	3	back_at_target	\N	252d3662-612d-47b3-8d6d-0539a4d381b5	2026-03-03 09:03:41+00	22	\N	1
0593337e-1e8f-44f5-9a25-2b01496ebdfa	d144c980-6015-4337-9ea2-7e11415c7c70	f9c30601-de09-44b6-997a-f8d54ba6b640	dcbb6c79-5b1a-43b3-8aa9-79eb3dd15b86	\N	sud	5	closing	\N	252d3662-612d-47b3-8d6d-0539a4d381b5	2026-03-03 09:04:15+00	29	\N	\N
\.


--
-- Data for Name: session; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.session (id, client_id, member_id, target_id, number, zone, opened_at, admitted_at, ended_at, closing, room_epoch, room_holder, version, seq) FROM stdin;
f9c30601-de09-44b6-997a-f8d54ba6b640	d144c980-6015-4337-9ea2-7e11415c7c70	252d3662-612d-47b3-8d6d-0539a4d381b5	dcbb6c79-5b1a-43b3-8aa9-79eb3dd15b86	1	UTC	2026-03-03 09:01:00+00	\N	2026-03-03 09:04:15+00	incomplete	4	1f9cb513-c977-4047-8d14-8dd5839cb79f	2	3
76cd1542-9976-4af7-a5b0-c6e2a40bc48f	d144c980-6015-4337-9ea2-7e11415c7c70	252d3662-612d-47b3-8d6d-0539a4d381b5	dcbb6c79-5b1a-43b3-8aa9-79eb3dd15b86	2	UTC	2026-03-10 09:04:15+00	2026-03-10 09:04:15+00	\N	\N	0	\N	1	32
7659429b-37f4-4378-915b-6c176e15f1f5	28bb37f3-d9a2-4c59-9d17-a0711de7c904	252d3662-612d-47b3-8d6d-0539a4d381b5	\N	1	UTC	2026-03-10 09:04:15+00	\N	\N	\N	0	\N	1	35
\.


--
-- Data for Name: session_moment; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.session_moment (id, session_id, client_id, kind, at, once) FROM stdin;
1	76cd1542-9976-4af7-a5b0-c6e2a40bc48f	d144c980-6015-4337-9ea2-7e11415c7c70	admitted	2026-03-10 09:04:15+00	8ac2dcee-dcd5-4bd0-b41f-4ec3928d6375
\.


--
-- Data for Name: session_words; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.session_words (session_id, client_id, location, call_back, resource, leaving_state, companion, next_contact, client_words, note, version, written_by, written_at) FROM stdin;
f9c30601-de09-44b6-997a-f8d54ba6b640	d144c980-6015-4337-9ea2-7e11415c7c70	\\x015379ae8e2fa32d2f6a0b55a4dbb3f24b168d3722313edc4cb962e178	\\x01028b51ffd09722489ec8dda35cc815619bf9eeb3e036565c313c8702	\\x01bc27f4ce153a5313e1224c7cb13fe38844411b9f7d6ba0086db11353	\\x01fe1128cd87e3a1d3d2bb598bfa07ec29ad6f43d5c422bbd62044d4f6	\\x01e7297170065ff92822a5036e23c7b58fe102e29214e8018857d5183d	\\x015dfeb1b4a3c96f6a6db44f01f10ade75945ce9509133d729fb3ee695	\\x01b479d18028f347d30209498c47869d56dfa497bb31dbdab13bf50f89	\\x01a06ece03047e9b45fdf3be52e909dfe2e6fb5f454371f2f179bff72c	1	252d3662-612d-47b3-8d6d-0539a4d381b5	2026-03-03 09:01:00+00
f9c30601-de09-44b6-997a-f8d54ba6b640	d144c980-6015-4337-9ea2-7e11415c7c70	\\x0171a58f19203cc30c0686460f36f29c1a72dcf72fddecb27a50d26c1e	\\x010c7d67a8b5db44b72397b5b3f26df69b86519f2ce6cc37fced2e09cf	\\x01f26d0ca2284dd657718d06e95a5c85d3f62b8729b1a82cb19c55a29444ef5469a1029fbab9a33b3e5ba38355e95ae99f9b36931cd0c7000b	\\x01a41dba77d196175129e7f794ab946cf5cd25e7ee98552703f06bb4bd479dbd2f0856cfe409513172855efe7ad8056dfbee846233b93b7620df2e858e1ec937dc401d970103cbf5474ad0ff	\\x013cfa1e87903d1b255ad987b94533e32a46ce242ecc4e65ae8eafa31c465ce1bb1104db6654132e	\\x01ebce7ba940557fe4209f2df6322f9abbf3b52d6e467e23a9327cf5a6d5e745d8c80ecf59cfba2a5cead464	\\x0164bf855740499234450ebb0b3c53083b9c8f4e6e3e66ee222c42543454fb58186f3fcfd2b37673aefe	\\x019a03f48744a919af97114284a2ebefd2e6cac612c8d032459b777185d518daf65fc3358f97091970d00a5a347623782ab1	2	252d3662-612d-47b3-8d6d-0539a4d381b5	2026-03-03 09:04:15+00
f9c30601-de09-44b6-997a-f8d54ba6b640	d144c980-6015-4337-9ea2-7e11415c7c70	\\x0162d9f09c2e292b860f36349d011de2a5720bdd42d0806ffdd443908d	\\x017824923823870d3798e0dbba37ddc81b8270410779e1306fa0295b3b	\\x01d6b254f5378035178091eac268681f65b0ab5c0b03c92fca97618e38bbfc6e4fa95dd9dbcf2a2ec43a7c3133e129f44209c2cd95f3e5ce02	\\x01b891777f58ab5b64b47d71762089158dbc53e10c1ab9aeb7a6ceffe5a9a8f7453f6e122f32cd6c8e111c5433926623b7751b32d9cf83e226dd84a3ace8f00d509c84d265ec928fe58eac46	\\x017061f0b56d1ea0ce64208c3e407c02e4127f4b35ae263a803553442d0680ef4efcc9e3a63931f6	\\x01f4a6cd28eb10703455818bf2dcfad77deeb307eb664c1d74ebdf924708e8cc1bbfe0e5660dcd8e0cdac2a7	\\x0196fcb30d0149eec5a3e91d826ba7e2ca333765ea0e57143eb11d5d199f1f4bcad70d4b365aa6cf80c1	\\x01a509a33abb477b4377ec7e0c4cffface77e262a248b05a96f8648518c53ad95a3c620984c0c56f09cd2abbfd0e6756a3df0cf5e44bef0c6770b4eaf1aa56949774cd094db3ce1e	3	252d3662-612d-47b3-8d6d-0539a4d381b5	2026-03-03 09:04:15+00
76cd1542-9976-4af7-a5b0-c6e2a40bc48f	d144c980-6015-4337-9ea2-7e11415c7c70	\\x018d6e34fbeae0c662724f5bfb87a773b24da6aaae0f174716dda51e54	\\x012f0823db8e14d9c1b7acdb8efa701b5b330ebb198867e0f0271d4b9c	\\x01fac280c993b2ee2b61f9d6e360826d940ba77ee60a59b6e1048694b4	\\x0104d73bf2f843f58467828db65b0d8ce414c4fda030e70a496dae0111	\\x013b30fe97a4d325777f303a0d7cfe7e46e1c975d7689d48894b412628	\\x0197d9d64ee82872372dfb7e13add8ded381516f926312756b5dbcca88	\\x01d3da47b017d129a5cfc5959bd8049d37eb3067bde50e1abd0a1f8989	\\x01d1364efb06cb23629b7fd47eaa7fead76345a95c7a3834ff180cb629	1	252d3662-612d-47b3-8d6d-0539a4d381b5	2026-03-10 09:04:15+00
76cd1542-9976-4af7-a5b0-c6e2a40bc48f	d144c980-6015-4337-9ea2-7e11415c7c70	\\x0105828756fb080a74d40f0c67a47e3f47e155edb463309c4356af17f3ea2dba01c5ac7d2adb7905eb	\\x01e9e8062e6ec53b03ab97ad1bf478103dce7fecd9450dbf08b123998a9630756e9cda47eb4e0e76fc2ff1	\\x01005d421796314e7d925babdad8bd49fcdeb21c02f4c397c71204e741	\\x01b489652da0821492af4dfcf8e56cb51d14af73ec98e47d7161ca7452	\\x01c26fc069cbee1750a2e7963e32e1769835d6b47b110d83c607aa1665	\\x01974fad409ef5dd07c9f622a1524bb4a7e448631898d3d31dae8b6cc4	\\x014f534d1967e356337c101b59456fbd34db4c0a7609257a1c4508594e	\\x012423109d96c5e14e503d6328406e6fa5fa47c16783d8a583ff455ce5	2	252d3662-612d-47b3-8d6d-0539a4d381b5	2026-03-10 09:04:15+00
7659429b-37f4-4378-915b-6c176e15f1f5	28bb37f3-d9a2-4c59-9d17-a0711de7c904	\\x018b8029d5ae24df34cbb34d39178278e6c38cbb461834d3f0ec56bb95	\\x010570fa1cb502ed400aa77570061033512e479c037390e1be3e69f741	\\x0184be1cb29d7b0750951aa9e8803681cbcf3cd04f39b8669626ba423e	\\x0181dfedcb123d1ff06f8075cb9d63fc3f684626fcca36a55048057ee2	\\x01b8522a01e8f8ff7275c9caa0eb7699d59f64c14375ca65d812ef432c	\\x013c9380b1ed26a72a3c26908e28c07c9c7ed3254e358cfea201c901c9	\\x011150809f6908fe8b8f0738d8e1e3d4a89e214af832b9202829739618	\\x01c8fc3b466482dd9b4f979058d8e20262a342dc3689a8394a324cc374	1	252d3662-612d-47b3-8d6d-0539a4d381b5	2026-03-10 09:04:15+00
\.


--
-- Data for Name: set_ending; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.set_ending (set_id, session_id, client_id, ending, at_ms, recorded_at, witness) FROM stdin;
d7526b33-aad9-4748-acae-08abbfb040ce	f9c30601-de09-44b6-997a-f8d54ba6b640	d144c980-6015-4337-9ea2-7e11415c7c70	done	26500	2026-03-03 09:02:27.5+00	room
28b265b3-8579-484d-8d97-7d9344ab222d	f9c30601-de09-44b6-997a-f8d54ba6b640	d144c980-6015-4337-9ea2-7e11415c7c70	stopped_by_client	26500	2026-03-03 09:03:01.5+00	room
bf8faec3-4124-4e12-9bfb-b07f667aee00	f9c30601-de09-44b6-997a-f8d54ba6b640	d144c980-6015-4337-9ea2-7e11415c7c70	stopped_by_clinician	26500	2026-03-03 09:03:33.5+00	room
63955367-c601-4f6d-8ce8-b473b819a1d1	f9c30601-de09-44b6-997a-f8d54ba6b640	d144c980-6015-4337-9ea2-7e11415c7c70	unknown	26500	2026-03-03 09:04:07.5+00	room
\.


--
-- Data for Name: set_evidence; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.set_evidence (set_id, seq, session_id, client_id, kind, at_ms, phase, width, frames, longest_gap, ending, recorded_at) FROM stdin;
d7526b33-aad9-4748-acae-08abbfb040ce	3	f9c30601-de09-44b6-997a-f8d54ba6b640	d144c980-6015-4337-9ea2-7e11415c7c70	rested	26500	24.5	\N	\N	\N	done	2026-03-03 09:02:27.5+00
d7526b33-aad9-4748-acae-08abbfb040ce	2	f9c30601-de09-44b6-997a-f8d54ba6b640	d144c980-6015-4337-9ea2-7e11415c7c70	second	8000	2	\N	52	84	\N	2026-03-03 09:02:27.5+00
d7526b33-aad9-4748-acae-08abbfb040ce	1	f9c30601-de09-44b6-997a-f8d54ba6b640	d144c980-6015-4337-9ea2-7e11415c7c70	second	7000	1	\N	60	17	\N	2026-03-03 09:02:27.5+00
d7526b33-aad9-4748-acae-08abbfb040ce	0	f9c30601-de09-44b6-997a-f8d54ba6b640	d144c980-6015-4337-9ea2-7e11415c7c70	shown	6000	\N	18	\N	\N	\N	2026-03-03 09:02:27.5+00
bf8faec3-4124-4e12-9bfb-b07f667aee00	3	f9c30601-de09-44b6-997a-f8d54ba6b640	d144c980-6015-4337-9ea2-7e11415c7c70	rested	26500	11	\N	\N	\N	stopped_by_clinician	2026-03-03 09:03:33.5+00
bf8faec3-4124-4e12-9bfb-b07f667aee00	2	f9c30601-de09-44b6-997a-f8d54ba6b640	d144c980-6015-4337-9ea2-7e11415c7c70	second	8000	2	\N	52	84	\N	2026-03-03 09:03:33.5+00
bf8faec3-4124-4e12-9bfb-b07f667aee00	1	f9c30601-de09-44b6-997a-f8d54ba6b640	d144c980-6015-4337-9ea2-7e11415c7c70	second	7000	1	\N	60	17	\N	2026-03-03 09:03:33.5+00
bf8faec3-4124-4e12-9bfb-b07f667aee00	0	f9c30601-de09-44b6-997a-f8d54ba6b640	d144c980-6015-4337-9ea2-7e11415c7c70	shown	6000	\N	18	\N	\N	\N	2026-03-03 09:03:33.5+00
\.


--
-- Data for Name: set_order; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.set_order (set_id, seq, session_id, client_id, cause, at_ms, plan, timeline, recorded_at) FROM stdin;
d7526b33-aad9-4748-acae-08abbfb040ce	0	f9c30601-de09-44b6-997a-f8d54ba6b640	d144c980-6015-4337-9ea2-7e11415c7c70	started	5000	{"dot": 1.5, "path": "across", "rate": 1.0, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "purpose": "processing", "channels": {"ears": false, "eyes": true, "hands": false}}	{"segments": []}	2026-03-03 09:02:06+00
d7526b33-aad9-4748-acae-08abbfb040ce	1	f9c30601-de09-44b6-997a-f8d54ba6b640	d144c980-6015-4337-9ea2-7e11415c7c70	rate	11500	{"dot": 1.5, "path": "across", "rate": 1.2, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "purpose": "processing", "channels": {"ears": false, "eyes": true, "hands": false}}	{"segments": []}	2026-03-03 09:02:12.5+00
28b265b3-8579-484d-8d97-7d9344ab222d	0	f9c30601-de09-44b6-997a-f8d54ba6b640	d144c980-6015-4337-9ea2-7e11415c7c70	started	5000	{"dot": 1.5, "path": "across", "rate": 1.0, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "purpose": "processing", "channels": {"ears": false, "eyes": true, "hands": false}}	{"segments": []}	2026-03-03 09:02:40+00
28b265b3-8579-484d-8d97-7d9344ab222d	1	f9c30601-de09-44b6-997a-f8d54ba6b640	d144c980-6015-4337-9ea2-7e11415c7c70	rate	11500	{"dot": 1.5, "path": "across", "rate": 1.2, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "purpose": "processing", "channels": {"ears": false, "eyes": true, "hands": false}}	{"segments": []}	2026-03-03 09:02:46.5+00
bf8faec3-4124-4e12-9bfb-b07f667aee00	0	f9c30601-de09-44b6-997a-f8d54ba6b640	d144c980-6015-4337-9ea2-7e11415c7c70	started	5000	{"dot": 1.5, "path": "across", "rate": 1.0, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "purpose": "processing", "channels": {"ears": false, "eyes": true, "hands": false}}	{"segments": []}	2026-03-03 09:03:12+00
bf8faec3-4124-4e12-9bfb-b07f667aee00	1	f9c30601-de09-44b6-997a-f8d54ba6b640	d144c980-6015-4337-9ea2-7e11415c7c70	rate	11500	{"dot": 1.5, "path": "across", "rate": 1.2, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "purpose": "processing", "channels": {"ears": false, "eyes": true, "hands": false}}	{"segments": []}	2026-03-03 09:03:18.5+00
63955367-c601-4f6d-8ce8-b473b819a1d1	0	f9c30601-de09-44b6-997a-f8d54ba6b640	d144c980-6015-4337-9ea2-7e11415c7c70	started	5000	{"dot": 1.5, "path": "across", "rate": 1.0, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "purpose": "processing", "channels": {"ears": false, "eyes": true, "hands": false}}	{"segments": []}	2026-03-03 09:03:46+00
63955367-c601-4f6d-8ce8-b473b819a1d1	1	f9c30601-de09-44b6-997a-f8d54ba6b640	d144c980-6015-4337-9ea2-7e11415c7c70	rate	11500	{"dot": 1.5, "path": "across", "rate": 1.2, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "purpose": "processing", "channels": {"ears": false, "eyes": true, "hands": false}}	{"segments": []}	2026-03-03 09:03:52.5+00
\.


--
-- Data for Name: stimulus_set; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.stimulus_set (id, session_id, client_id, target_id, number, epoch, plan, recorded_at, seq) FROM stdin;
d7526b33-aad9-4748-acae-08abbfb040ce	f9c30601-de09-44b6-997a-f8d54ba6b640	d144c980-6015-4337-9ea2-7e11415c7c70	dcbb6c79-5b1a-43b3-8aa9-79eb3dd15b86	1	1	{"dot": 1.5, "path": "across", "rate": 1.0, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "purpose": "processing", "channels": {"ears": false, "eyes": true, "hands": false}}	2026-03-03 09:02:06+00	8
28b265b3-8579-484d-8d97-7d9344ab222d	f9c30601-de09-44b6-997a-f8d54ba6b640	d144c980-6015-4337-9ea2-7e11415c7c70	dcbb6c79-5b1a-43b3-8aa9-79eb3dd15b86	2	2	{"dot": 1.5, "path": "across", "rate": 1.0, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "purpose": "processing", "channels": {"ears": false, "eyes": true, "hands": false}}	2026-03-03 09:02:40+00	13
bf8faec3-4124-4e12-9bfb-b07f667aee00	f9c30601-de09-44b6-997a-f8d54ba6b640	d144c980-6015-4337-9ea2-7e11415c7c70	dcbb6c79-5b1a-43b3-8aa9-79eb3dd15b86	3	3	{"dot": 1.5, "path": "across", "rate": 1.0, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "purpose": "processing", "channels": {"ears": false, "eyes": true, "hands": false}}	2026-03-03 09:03:12+00	16
63955367-c601-4f6d-8ce8-b473b819a1d1	f9c30601-de09-44b6-997a-f8d54ba6b640	d144c980-6015-4337-9ea2-7e11415c7c70	dcbb6c79-5b1a-43b3-8aa9-79eb3dd15b86	4	4	{"dot": 1.5, "path": "across", "rate": 1.0, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "purpose": "processing", "channels": {"ears": false, "eyes": true, "hands": false}}	2026-03-03 09:03:46+00	24
\.


--
-- Data for Name: target; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.target (id, client_id, number, prong, opened_at, archived_at, version) FROM stdin;
dcbb6c79-5b1a-43b3-8aa9-79eb3dd15b86	d144c980-6015-4337-9ea2-7e11415c7c70	1	past	2026-03-03 09:00:00+00	\N	3
c5636dbb-57e1-459a-9c1d-efeec79dd5b4	d144c980-6015-4337-9ea2-7e11415c7c70	2	present	2026-03-03 09:02:00+00	\N	1
\.


--
-- Data for Name: target_course; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.target_course (target_id, client_id, rules, procedure, state, held, because, unfounded, version) FROM stdin;
c5636dbb-57e1-459a-9c1d-efeec79dd5b4	d144c980-6015-4337-9ea2-7e11415c7c70	1	standard	planned	\N	\N	f	1
dcbb6c79-5b1a-43b3-8aa9-79eb3dd15b86	d144c980-6015-4337-9ea2-7e11415c7c70	1	recent_event	incomplete	\N	\N	f	4
\.


--
-- Data for Name: target_plan; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.target_plan (target_id, client_id, place, age, year, cluster_id, parent_id) FROM stdin;
dcbb6c79-5b1a-43b3-8aa9-79eb3dd15b86	d144c980-6015-4337-9ea2-7e11415c7c70	2	9	1998	0372d781-4b50-4b5e-a48d-845f6338389b	\N
c5636dbb-57e1-459a-9c1d-efeec79dd5b4	d144c980-6015-4337-9ea2-7e11415c7c70	1	\N	\N	0372d781-4b50-4b5e-a48d-845f6338389b	dcbb6c79-5b1a-43b3-8aa9-79eb3dd15b86
\.


--
-- Data for Name: target_words; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.target_words (target_id, client_id, label, picture, negative_belief, positive_belief, emotions, body_location, version) FROM stdin;
dcbb6c79-5b1a-43b3-8aa9-79eb3dd15b86	d144c980-6015-4337-9ea2-7e11415c7c70	\\x01cf13e9991cd94619c304e086cc728ff334f82165d121166222707a542299571ce7671eecff1bdd630b526ad8	\\x013e17c0dd5f3267bebf08cf9514e3bb6b2f10e82698edf96bac09e3349342a0b356818d3b323a5e6b6a0aa17aaa6bcf3b33921188	\\x01d622686d558eccd3c0bc5acd14efbce3f028a5026a6e9b565a2ad75c9059a5be9de91aa6c2a96031e3bf3a2e59a9c6c5afa73305	\\x0103baa2202d932e75c3781523e450ebdcf62f29ada5cecf694fe6ba26583ca9a2039a2f59daea290c920662e8da7ed48890df11	\\x014c07af61b3b9dde921d635468a1ccccc9361b0c0674e4fad1ca59eb423332cfa5c2ae5302a8ba54f1da28d	\\x014eace5623fc013109f73f9cab9d59f09d75e02e3eab6f22b3384aba29070bd0d98d9a30547f5836fcef10565fb	3
c5636dbb-57e1-459a-9c1d-efeec79dd5b4	d144c980-6015-4337-9ea2-7e11415c7c70	\\x01d819d394caa3f2acc8392ba3ef7ecf1e5a285a4be4fbd63a149cd8a06d4b9e40475922e0cfa70a4e	\\x018762dba5ed9c5d16211a55b86385718618940b4945b94bf4c9d382c7	\\x0143c3bdf0811327c91ce6e23cf74ff1d666b1ba6c27548c3eca1f0fdc	\\x01d90a4514545f83017d59ba67e37dbeaa8d1460015862d962c17fa0d7	\\x01bf4b79676e02205133c1327f7a4cbecfd0cdfaac58386208b62e08af	\\x01d861c896830dba4ce3c890f3a5ab5cd0a153e42d8778955c2e57a8da	1
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

SELECT pg_catalog.setval('public.kept_order', 35, true);


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
-- Name: session change; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY change ON public.session FOR UPDATE USING (((client_id IN ( SELECT access.my_clients() AS my_clients)) OR (id = ( SELECT access.my_room() AS my_room))));


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
-- PostgreSQL database dump complete
--

\unrestrict GOkl3bFAw0vjfzYf76auot57IeSeq3Ib1pTvmcdlW0U8m5pdtcRRgbwsiKPbQWK

