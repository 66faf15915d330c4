-- Written by ./tests/run --dump at migration 31. Sealed under the tests' key, 5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a.
--
-- PostgreSQL database dump
--

\restrict 8HtyGWCKeGqJFK1yEZNdxvyJ5eCY7aNhuh0Gao7jYXj1G2h181YaCvnkx1d3I1H

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
    WHEN 'errand' THEN holds := access.my_errand() IS NOT NULL;
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
-- Name: decline(); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.decline() RETURNS boolean
    LANGUAGE plpgsql SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
DECLARE which uuid := access.my_errand();
BEGIN
  IF which IS NULL THEN RAISE EXCEPTION 'no errand' USING ERRCODE = 'insufficient_privilege'; END IF;
  PERFORM FROM public.client c JOIN public.asking a ON a.client_id = c.id WHERE a.id = which FOR UPDATE OF c;
  IF access.my_errand() IS DISTINCT FROM which THEN RETURN false; END IF;
  UPDATE public.asking SET closed_as = 'declined', closed_at = access.now() WHERE id = which AND closed_at IS NULL;
  RETURN FOUND;
END $$;


ALTER FUNCTION access.decline() OWNER TO leeward_owner;

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
-- Name: end_askings(); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.end_askings() RETURNS trigger
    LANGUAGE plpgsql SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
BEGIN
  UPDATE public.asking SET closed_as = 'withdrawn', closed_at = access.now()
  WHERE episode_id = NEW.id AND closed_at IS NULL AND (occasion IN ('intake', 'regular') OR NEW.reason IN ('died', 'mistake'));
  RETURN NULL;
END $$;


ALTER FUNCTION access.end_askings() OWNER TO leeward_owner;

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
-- Name: end_links(); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.end_links() RETURNS trigger
    LANGUAGE plpgsql SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
BEGIN
  UPDATE public.asking a SET link_holds = false FROM access.errand e
    WHERE e.asking_id = a.id AND e.client_id = NEW.client_id AND e.made_by = NEW.member_id AND e.revoked_at IS NULL;
  UPDATE access.errand SET revoked_at = access.now() WHERE client_id = NEW.client_id AND made_by = NEW.member_id AND revoked_at IS NULL;
  RETURN NULL;
END $$;


ALTER FUNCTION access.end_links() OWNER TO leeward_owner;

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
-- Name: errand_asking(); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.errand_asking() RETURNS TABLE(asking_id uuid, client_id uuid, occasion text, measures text[], from_at timestamp with time zone, event bytea, closed_as text, wrapped bytea)
    LANGUAGE plpgsql STABLE SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
DECLARE mine uuid := access.my_errand();
BEGIN
  RETURN QUERY SELECT a.id, a.client_id, a.occasion, a.measures, a.from_at, w.event, a.closed_as, k.wrapped
    FROM public.asking a JOIN public.asking_words w ON w.asking_id = a.id JOIN public.client_key k ON k.client_id = a.client_id WHERE a.id = mine;
END $$;


ALTER FUNCTION access.errand_asking() OWNER TO leeward_owner;

--
-- Name: errand_forms(); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.errand_forms() RETURNS TABLE(measure text, wording_id uuid, body jsonb, handed_in boolean, draft_id uuid, draft bytea, draft_version integer, draft_wording uuid, draft_page uuid, draft_sending integer, handed_page uuid)
    LANGUAGE plpgsql STABLE SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
DECLARE mine uuid := access.my_errand();
BEGIN
  RETURN QUERY SELECT m.measure, w.id, w.body,
      EXISTS (SELECT FROM public.response r WHERE r.asking_id = mine AND r.measure = m.measure), d.id, d.answers, d.version, d.wording_id, d.page, d.sending,
      (SELECT r.page FROM public.response r WHERE r.asking_id = mine AND r.measure = m.measure ORDER BY r.number LIMIT 1)
    FROM public.asking a, LATERAL unnest(a.measures) WITH ORDINALITY m(measure, place)
    LEFT JOIN public.wording w ON w.measure = m.measure AND w.checked_at IS NOT NULL AND w.ended_at IS NULL
    LEFT JOIN public.response_draft d ON d.asking_id = mine AND d.measure = m.measure
    WHERE a.id = mine ORDER BY m.place;
END $$;


ALTER FUNCTION access.errand_forms() OWNER TO leeward_owner;

SET default_tablespace = '';

SET default_table_access_method = heap;

--
-- Name: asking; Type: TABLE; Schema: public; Owner: leeward_owner
--

CREATE TABLE public.asking (
    id uuid NOT NULL,
    client_id uuid NOT NULL,
    episode_id uuid NOT NULL,
    number integer NOT NULL,
    occasion text NOT NULL,
    measures text[] NOT NULL,
    asked_by uuid NOT NULL,
    asked_at timestamp with time zone NOT NULL,
    from_at timestamp with time zone NOT NULL,
    due_on date NOT NULL,
    until_at timestamp with time zone NOT NULL,
    links integer DEFAULT 0 NOT NULL,
    closed_as text,
    closed_at timestamp with time zone,
    link_holds boolean DEFAULT true NOT NULL,
    CONSTRAINT asked_at_is_a_time CHECK (isfinite(asked_at)),
    CONSTRAINT asking_check CHECK (((closed_as IS NULL) = (closed_at IS NULL))),
    CONSTRAINT asking_check1 CHECK ((until_at > from_at)),
    CONSTRAINT asking_closed_as_check CHECK ((closed_as = ANY (ARRAY['answered'::text, 'declined'::text, 'withdrawn'::text]))),
    CONSTRAINT asking_links_check CHECK ((links >= 0)),
    CONSTRAINT asking_measures_check CHECK (((cardinality(measures) >= 1) AND (cardinality(measures) <= 6))),
    CONSTRAINT asking_number_check CHECK ((number > 0)),
    CONSTRAINT asking_occasion_check CHECK ((occasion = ANY (ARRAY['intake'::text, 'regular'::text, 'end'::text, 'follow_up'::text]))),
    CONSTRAINT closed_at_is_a_time CHECK (isfinite(closed_at)),
    CONSTRAINT due_on_is_a_day CHECK (isfinite(due_on)),
    CONSTRAINT from_at_is_a_time CHECK (isfinite(from_at)),
    CONSTRAINT until_at_is_a_time CHECK (isfinite(until_at))
);

ALTER TABLE ONLY public.asking FORCE ROW LEVEL SECURITY;


ALTER TABLE public.asking OWNER TO leeward_owner;

--
-- Name: errand_writes(text); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.errand_writes(of_measure text) RETURNS public.asking
    LANGUAGE plpgsql SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
DECLARE mine public.asking; which uuid := access.my_errand();
BEGIN
  IF which IS NULL THEN RAISE EXCEPTION 'no errand' USING ERRCODE = 'insufficient_privilege'; END IF;
  PERFORM FROM public.client c JOIN public.asking a ON a.client_id = c.id WHERE a.id = which FOR UPDATE OF c;
  IF access.my_errand() IS DISTINCT FROM which THEN RETURN NULL; END IF;
  SELECT a.* INTO mine FROM public.asking a WHERE a.id = which AND a.closed_at IS NULL AND a.from_at <= access.now() AND of_measure = ANY (a.measures)
    AND NOT EXISTS (SELECT FROM public.response r WHERE r.asking_id = which AND r.measure = of_measure) FOR UPDATE;
  RETURN mine;
END $$;


ALTER FUNCTION access.errand_writes(of_measure text) OWNER TO leeward_owner;

--
-- Name: flag_mailed(uuid, uuid); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.flag_mailed(flag uuid, member uuid) RETURNS boolean
    LANGUAGE plpgsql SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
BEGIN
  INSERT INTO public.risk_mail (response_id, client_id, member_id, at)
  SELECT f.response_id, f.client_id, u.member_id, access.now()
  FROM access.flags_to_mail() u JOIN public.risk_flag f ON f.response_id = u.response_id WHERE u.response_id = flag AND u.member_id = member
  ON CONFLICT DO NOTHING;
  RETURN FOUND;
END $$;


ALTER FUNCTION access.flag_mailed(flag uuid, member uuid) OWNER TO leeward_owner;

--
-- Name: flags_past_time(); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.flags_past_time() RETURNS TABLE(client_id uuid, days_late integer, told bigint)
    LANGUAGE plpgsql STABLE SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
BEGIN
  IF access.has_role('lead') IS NOT TRUE THEN RETURN; END IF;
  RETURN QUERY
    SELECT f.client_id, floor((extract(epoch FROM access.now() - f.raised_at) - 3600 * p.flag_hours) / 86400)::integer,
      (SELECT count(*) FROM public.risk_told t WHERE t.response_id = f.response_id AND EXISTS (
        SELECT FROM access.care_link l WHERE l.client_id = f.client_id AND l.member_id = t.member_id AND l.since <= t.at AND (l.until IS NULL OR l.until > t.at)))
    FROM public.risk_flag f, public.practice p WHERE f.done IS NULL AND f.raised_at < access.now() - make_interval(hours => p.flag_hours);
END $$;


ALTER FUNCTION access.flags_past_time() OWNER TO leeward_owner;

--
-- Name: flags_to_mail(); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.flags_to_mail() RETURNS TABLE(response_id uuid, member_id uuid, address text)
    LANGUAGE plpgsql STABLE SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
BEGIN
  RETURN QUERY
    SELECT f.response_id, a.member_id, a.address
    FROM public.risk_flag f JOIN public.response r ON r.id = f.response_id, public.mail_address a JOIN access.member m ON m.id = a.member_id
    WHERE f.done IS NULL AND a.address <> '' AND f.client_id NOT IN (SELECT x.client_id FROM access.rehearsal x)
      AND m.left_at IS NULL AND r.entered_by IS DISTINCT FROM m.id
      AND (m.id = (SELECT p.told_too FROM public.practice p) OR EXISTS (SELECT FROM access.care_link l
        WHERE l.client_id = f.client_id AND l.member_id = m.id AND l.since <= access.now() AND (l.until IS NULL OR l.until > access.now())))
      AND NOT EXISTS (SELECT FROM public.risk_told t WHERE t.response_id = f.response_id AND t.member_id = m.id)
      AND NOT EXISTS (SELECT FROM public.risk_mail t WHERE t.response_id = f.response_id AND t.member_id = m.id)
    ORDER BY f.raised_at, a.member_id;
END $$;


ALTER FUNCTION access.flags_to_mail() OWNER TO leeward_owner;

--
-- Name: flags_to_me(); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.flags_to_me() RETURNS TABLE(response_id uuid, client_id uuid, record integer, number integer, measure text, says text, raised_at timestamp with time zone, mine boolean, treats text)
    LANGUAGE plpgsql STABLE SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
DECLARE who uuid := access.me(); named boolean := who = (SELECT told_too FROM public.practice);
BEGIN
  IF who IS NULL THEN RETURN; END IF;
  RETURN QUERY
    SELECT f.response_id, f.client_id, c.number, CASE WHEN own THEN r.number END, CASE WHEN own THEN r.measure END, CASE WHEN own THEN f.says END,
      f.raised_at, own, (SELECT string_agg(m.name, ', ' ORDER BY m.name) FROM access.care_link l JOIN access.member m ON m.id = l.member_id
        WHERE l.client_id = f.client_id AND l.since <= access.now() AND (l.until IS NULL OR l.until > access.now()))
    FROM public.risk_flag f JOIN public.response r ON r.id = f.response_id JOIN public.client c ON c.id = f.client_id,
      LATERAL (SELECT f.client_id IN (SELECT access.my_clients())) o(own)
    WHERE f.done IS NULL AND (own OR named IS TRUE) AND f.client_id NOT IN (SELECT x.client_id FROM access.rehearsal x) ORDER BY f.raised_at;
END $$;


ALTER FUNCTION access.flags_to_me() OWNER TO leeward_owner;

--
-- Name: fold_first_set(); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.fold_first_set() RETURNS trigger
    LANGUAGE plpgsql SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
BEGIN
  UPDATE public.episode e SET reprocessed_at = NEW.recorded_at FROM public.session s
  WHERE s.id = NEW.session_id AND e.id = s.episode_id AND (e.reprocessed_at IS NULL OR e.reprocessed_at > NEW.recorded_at);
  RETURN NULL;
END $$;


ALTER FUNCTION access.fold_first_set() OWNER TO leeward_owner;

--
-- Name: fold_measure(); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.fold_measure() RETURNS trigger
    LANGUAGE plpgsql SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
BEGIN
  DELETE FROM public.episode_measure WHERE episode_id = NEW.episode_id AND measure = NEW.measure;
  INSERT INTO public.episode_measure (episode_id, measure, client_id, first_total, first_at, last_total, last_at, end_total, end_at, totals)
  SELECT episode_id, measure, client_id, first_total, first_at, last_total, last_at, end_total, end_at, totals
  FROM public.episode_measure_fold WHERE episode_id = NEW.episode_id AND measure = NEW.measure;
  RETURN NULL;
END $$;


ALTER FUNCTION access.fold_measure() OWNER TO leeward_owner;

--
-- Name: fold_schedule(); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.fold_schedule() RETURNS trigger
    LANGUAGE plpgsql SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
BEGIN
  -- Whoever comes second folds what the first has written.
  PERFORM FROM public.schedule s WHERE s.client_id = NEW.client_id FOR UPDATE;
  UPDATE public.schedule s SET due_for = f.due_for, due_on = f.due_on, then_for = f.then_for, then_on = f.then_on FROM public.schedule_fold f
  WHERE s.client_id = NEW.client_id AND f.client_id = s.client_id
    AND (s.due_for, s.due_on, s.then_for, s.then_on) IS DISTINCT FROM (f.due_for, f.due_on, f.then_for, f.then_on);
  RETURN NULL;
END $$;


ALTER FUNCTION access.fold_schedule() OWNER TO leeward_owner;

--
-- Name: fold_sessions(); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.fold_sessions() RETURNS trigger
    LANGUAGE plpgsql SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
BEGIN
  UPDATE public.episode e SET started_at = f.started_at, last_at = f.last_at, sessions = f.sessions
  FROM (SELECT min(opened_at) AS started_at, max(opened_at) AS last_at, count(*) AS sessions FROM public.attended WHERE episode_id = NEW.episode_id) f
  WHERE e.id = NEW.episode_id AND (e.started_at, e.last_at, e.sessions) IS DISTINCT FROM (f.started_at, f.last_at, f.sessions);
  RETURN NULL;
END $$;


ALTER FUNCTION access.fold_sessions() OWNER TO leeward_owner;

--
-- Name: fold_still(); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.fold_still() RETURNS trigger
    LANGUAGE plpgsql SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
DECLARE of_target uuid := coalesce(NEW.target_id, (SELECT r.target_id FROM public.rating r WHERE r.id = NEW.first_id));
BEGIN
  INSERT INTO public.target_still AS kept (target_id, client_id, still)
  SELECT f.target_id, f.client_id, f.still FROM public.target_still_fold f WHERE f.target_id = of_target
  ON CONFLICT (target_id) DO UPDATE SET still = excluded.still WHERE kept.still <> excluded.still;
  DELETE FROM public.target_still s WHERE s.target_id = of_target
    AND NOT EXISTS (SELECT FROM public.target_still_fold f WHERE f.target_id = s.target_id);
  RETURN NULL;
END $$;


ALTER FUNCTION access.fold_still() OWNER TO leeward_owner;

--
-- Name: hand_in(uuid, text, uuid, smallint, double precision, boolean, smallint, bytea, bytea, text, integer, uuid); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.hand_in(response uuid, of_measure text, wording uuid, by_rules smallint, comes_to double precision, filled_up boolean, judged_by smallint, sealed bytea, about bytea, says text, follows integer, from_page uuid) RETURNS boolean
    LANGUAGE plpgsql SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
DECLARE mine public.asking := access.errand_writes(of_measure);
BEGIN
  IF mine.id IS NULL THEN RETURN false; END IF;
  IF coalesce((SELECT d.version FROM public.response_draft d WHERE d.asking_id = mine.id AND d.measure = of_measure), 0) IS DISTINCT FROM follows
    OR NOT EXISTS (SELECT FROM public.wording w WHERE w.id = hand_in.wording AND w.measure = of_measure AND w.checked_at IS NOT NULL AND w.ended_at IS NULL)
  THEN
    RETURN false;
  END IF;
  INSERT INTO public.response (id, client_id, episode_id, number, measure, rules, occasion, answered_at, total, prorated, points, by_client, kept_at,
    asking_id, wording_id, page)
  SELECT hand_in.response, mine.client_id, mine.episode_id, coalesce(max(r.number), 0) + 1, of_measure, by_rules, mine.occasion, access.now(), comes_to,
    filled_up, judged_by, true, access.now(), mine.id, hand_in.wording, from_page
  FROM public.response r WHERE r.client_id = mine.client_id;
  INSERT INTO public.response_answers (response_id, client_id, answers, event) VALUES (hand_in.response, mine.client_id, sealed, about);
  IF says IS NOT NULL THEN
    INSERT INTO public.risk_flag (response_id, client_id, says, raised_at) VALUES (hand_in.response, mine.client_id, hand_in.says, access.now());
  END IF;
  DELETE FROM public.response_draft d WHERE d.asking_id = mine.id AND d.measure = of_measure;
  UPDATE public.asking a SET closed_as = 'answered', closed_at = access.now() WHERE a.id = mine.id
    AND (SELECT count(DISTINCT r.measure) FROM public.response r WHERE r.asking_id = mine.id AND r.measure = ANY (a.measures)) = cardinality(a.measures);
  RETURN true;
END $$;


ALTER FUNCTION access.hand_in(response uuid, of_measure text, wording uuid, by_rules smallint, comes_to double precision, filled_up boolean, judged_by smallint, sealed bytea, about bytea, says text, follows integer, from_page uuid) OWNER TO leeward_owner;

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
-- Name: keep_draft(uuid, text, bytea, integer, uuid, uuid, integer); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.keep_draft(draft_id uuid, of_measure text, sealed bytea, was integer, to_wording uuid, by_page uuid, nth integer) RETURNS integer
    LANGUAGE plpgsql SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
DECLARE mine public.asking := access.errand_writes(of_measure); kept integer;
BEGIN
  IF mine.id IS NULL THEN RETURN NULL; END IF;
  IF was = 0 THEN
    INSERT INTO public.response_draft (id, asking_id, client_id, measure, answers, version, kept_at, wording_id, page, sending)
    VALUES (draft_id, mine.id, mine.client_id, of_measure, sealed, 1, access.now(), to_wording, by_page, nth) ON CONFLICT DO NOTHING RETURNING version INTO kept;
  ELSE
    UPDATE public.response_draft SET answers = sealed, version = version + 1, kept_at = access.now(), wording_id = to_wording, page = by_page, sending = nth
    WHERE id = draft_id AND asking_id = mine.id AND measure = of_measure AND version = was RETURNING version INTO kept;
  END IF;
  RETURN kept;
END $$;


ALTER FUNCTION access.keep_draft(draft_id uuid, of_measure text, sealed bytea, was integer, to_wording uuid, by_page uuid, nth integer) OWNER TO leeward_owner;

--
-- Name: keep_episode(); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.keep_episode() RETURNS trigger
    LANGUAGE plpgsql
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
BEGIN
  IF OLD.ended_at IS NOT NULL AND NEW.ended_at IS NULL
      AND EXISTS (SELECT FROM public.episode later WHERE later.client_id = OLD.client_id AND later.number > OLD.number)
    OR NEW.ended_at IS NOT NULL AND OLD.ended_at IS NULL
      AND EXISTS (SELECT FROM public.session s WHERE s.episode_id = OLD.id AND s.ended_at IS NULL)
    OR NEW.reason IS NOT DISTINCT FROM 'mistake' AND OLD.reason IS DISTINCT FROM 'mistake'
      AND (NEW.started_at IS NOT NULL OR EXISTS (SELECT FROM public.standing_response r WHERE r.episode_id = OLD.id)) THEN
    RAISE EXCEPTION 'not allowed to change this of an episode' USING ERRCODE = 'insufficient_privilege';
  END IF;
  RETURN NEW;
END $$;


ALTER FUNCTION access.keep_episode() OWNER TO leeward_owner;

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
-- Name: let_go_of_drafts(); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.let_go_of_drafts() RETURNS trigger
    LANGUAGE plpgsql SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
BEGIN
  DELETE FROM public.response_draft WHERE asking_id = NEW.id;
  RETURN NULL;
END $$;


ALTER FUNCTION access.let_go_of_drafts() OWNER TO leeward_owner;

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
-- Name: mint_errand(uuid, bytea, uuid); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.mint_errand(errand_id uuid, hash bytea, which uuid) RETURNS void
    LANGUAGE plpgsql SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
DECLARE of_client uuid;
BEGIN
  SELECT client_id INTO of_client FROM public.asking WHERE id = which AND closed_at IS NULL AND client_id IN (SELECT access.my_clients());
  IF of_client IS NULL THEN
    RAISE EXCEPTION 'not allowed to make a link' USING ERRCODE = 'insufficient_privilege';
  END IF;
  UPDATE access.errand SET revoked_at = access.now() WHERE asking_id = which AND revoked_at IS NULL;
  INSERT INTO access.errand (id, token_hash, client_id, purpose, asking_id, made_by, made_at)
  VALUES (errand_id, hash, of_client, 'forms', which, access.me(), access.now());
  UPDATE public.asking SET link_holds = true WHERE id = which;
END $$;


ALTER FUNCTION access.mint_errand(errand_id uuid, hash bytea, which uuid) OWNER TO leeward_owner;

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
-- Name: my_errand(); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.my_errand() RETURNS uuid
    LANGUAGE plpgsql STABLE SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
BEGIN
  IF access.kind() IS DISTINCT FROM 'errand' THEN RETURN NULL; END IF;
  RETURN (SELECT a.id FROM access.errand e JOIN public.asking a ON a.id = e.asking_id JOIN public.client c ON c.id = a.client_id
    WHERE e.token_hash = access.token_hash() AND e.revoked_at IS NULL AND a.until_at > access.now()
      AND a.closed_as IS DISTINCT FROM 'withdrawn' AND c.archived_at IS NULL);
END $$;


ALTER FUNCTION access.my_errand() OWNER TO leeward_owner;

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
-- Name: session_in_episode(); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.session_in_episode() RETURNS trigger
    LANGUAGE plpgsql SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
BEGIN
  NEW.episode_id := NULL;
  IF EXISTS (SELECT FROM access.rehearsal WHERE client_id = NEW.client_id) THEN RETURN NEW; END IF;
  SELECT id INTO NEW.episode_id FROM public.episode WHERE client_id = NEW.client_id AND ended_at IS NULL;
  IF NEW.episode_id IS NULL THEN
    INSERT INTO public.episode (id, client_id, number, begun_at)
    SELECT gen_random_uuid(), NEW.client_id, coalesce(max(number), 0) + 1, NEW.opened_at FROM public.episode WHERE client_id = NEW.client_id
    RETURNING id INTO NEW.episode_id;
  END IF;
  RETURN NEW;
END $$;


ALTER FUNCTION access.session_in_episode() OWNER TO leeward_owner;

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
-- Name: place_of_corrected_response(); Type: FUNCTION; Schema: public; Owner: leeward_owner
--

CREATE FUNCTION public.place_of_corrected_response() RETURNS trigger
    LANGUAGE plpgsql
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
DECLARE said public.response;
BEGIN
  SELECT r.* INTO said FROM public.response r WHERE r.id = NEW.replaces;
  IF (said.client_id = NEW.client_id AND said.measure = NEW.measure) IS NOT TRUE THEN
    RAISE EXCEPTION 'a correction is of the client and the form of what it corrects' USING ERRCODE = 'foreign_key_violation';
  END IF;
  NEW.episode_id := said.episode_id;
  RETURN NEW;
END $$;


ALTER FUNCTION public.place_of_corrected_response() OWNER TO leeward_owner;

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

--
-- Name: audit_act; Type: TABLE; Schema: access; Owner: leeward_owner
--

CREATE TABLE access.audit_act (
    kind text NOT NULL,
    act text NOT NULL,
    may_be_last boolean DEFAULT false NOT NULL,
    CONSTRAINT audit_act_kind_check CHECK ((kind = ANY (ARRAY['visitor'::text, 'member'::text, 'seat'::text, 'owner'::text, 'errand'::text])))
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
-- Name: errand; Type: TABLE; Schema: access; Owner: leeward_owner
--

CREATE TABLE access.errand (
    id uuid NOT NULL,
    token_hash bytea NOT NULL,
    client_id uuid NOT NULL,
    purpose text NOT NULL,
    asking_id uuid NOT NULL,
    made_by uuid NOT NULL,
    made_at timestamp with time zone NOT NULL,
    revoked_at timestamp with time zone,
    CONSTRAINT errand_purpose_check CHECK ((purpose = 'forms'::text)),
    CONSTRAINT made_at_is_a_time CHECK (isfinite(made_at)),
    CONSTRAINT revoked_at_is_a_time CHECK (isfinite(revoked_at))
);


ALTER TABLE access.errand OWNER TO leeward_owner;

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
-- Name: asking_words; Type: TABLE; Schema: public; Owner: leeward_owner
--

CREATE TABLE public.asking_words (
    asking_id uuid NOT NULL,
    client_id uuid NOT NULL,
    event bytea NOT NULL
);

ALTER TABLE ONLY public.asking_words FORCE ROW LEVEL SECURITY;


ALTER TABLE public.asking_words OWNER TO leeward_owner;

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
    episode_id uuid,
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
-- Name: attended; Type: VIEW; Schema: public; Owner: leeward_owner
--

CREATE VIEW public.attended WITH (security_invoker='true') AS
 SELECT session.id,
    session.client_id,
    session.episode_id,
    session.opened_at
   FROM public.session
  WHERE ((session.episode_id IS NOT NULL) AND session.took_place AND ((session.admitted_at IS NOT NULL) OR (session.ended_at IS NOT NULL)));


ALTER TABLE public.attended OWNER TO leeward_owner;

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
-- Name: episode; Type: TABLE; Schema: public; Owner: leeward_owner
--

CREATE TABLE public.episode (
    id uuid NOT NULL,
    client_id uuid NOT NULL,
    number integer NOT NULL,
    begun_at timestamp with time zone NOT NULL,
    started_at timestamp with time zone,
    reprocessed_at timestamp with time zone,
    last_at timestamp with time zone,
    sessions integer DEFAULT 0 NOT NULL,
    ended_at timestamp with time zone,
    reason text,
    judged_by uuid,
    version integer DEFAULT 1 NOT NULL,
    CONSTRAINT begun_at_is_a_time CHECK (isfinite(begun_at)),
    CONSTRAINT ended_at_is_a_time CHECK (isfinite(ended_at)),
    CONSTRAINT episode_check CHECK ((((ended_at IS NULL) = (reason IS NULL)) AND ((ended_at IS NULL) = (judged_by IS NULL)))),
    CONSTRAINT episode_check1 CHECK ((ended_at >= begun_at)),
    CONSTRAINT episode_number_check CHECK ((number > 0)),
    CONSTRAINT episode_reason_check CHECK ((reason = ANY (ARRAY['as_agreed'::text, 'early_by_agreement'::text, 'client_ended'::text, 'referred_on'::text, 'crisis'::text, 'moved'::text, 'clinician_left'::text, 'died'::text, 'unknown'::text, 'mistake'::text]))),
    CONSTRAINT episode_sessions_check CHECK ((sessions >= 0)),
    CONSTRAINT episode_version_check CHECK ((version > 0)),
    CONSTRAINT last_at_is_a_time CHECK (isfinite(last_at)),
    CONSTRAINT reprocessed_at_is_a_time CHECK (isfinite(reprocessed_at)),
    CONSTRAINT started_at_is_a_time CHECK (isfinite(started_at))
);

ALTER TABLE ONLY public.episode FORCE ROW LEVEL SECURITY;


ALTER TABLE public.episode OWNER TO leeward_owner;

--
-- Name: episode_fold; Type: VIEW; Schema: public; Owner: leeward_owner
--

CREATE VIEW public.episode_fold WITH (security_invoker='true') AS
 SELECT e.id,
    e.client_id,
    s.started_at,
    x.reprocessed_at,
    s.last_at,
    (COALESCE(s.sessions, (0)::bigint))::integer AS sessions
   FROM ((public.episode e
     LEFT JOIN ( SELECT attended.episode_id,
            min(attended.opened_at) AS started_at,
            max(attended.opened_at) AS last_at,
            count(*) AS sessions
           FROM public.attended
          GROUP BY attended.episode_id) s ON ((s.episode_id = e.id)))
     LEFT JOIN ( SELECT s_1.episode_id,
            min(x_1.recorded_at) AS reprocessed_at
           FROM (public.stimulus_set x_1
             JOIN public.session s_1 ON ((s_1.id = x_1.session_id)))
          WHERE ((x_1.target_id IS NOT NULL) AND (COALESCE((x_1.plan ->> 'purpose'::text), 'processing'::text) = 'processing'::text))
          GROUP BY s_1.episode_id) x ON ((x.episode_id = e.id)));


ALTER TABLE public.episode_fold OWNER TO leeward_owner;

--
-- Name: episode_measure; Type: TABLE; Schema: public; Owner: leeward_owner
--

CREATE TABLE public.episode_measure (
    episode_id uuid NOT NULL,
    measure text NOT NULL,
    client_id uuid NOT NULL,
    first_total double precision NOT NULL,
    first_at timestamp with time zone NOT NULL,
    last_total double precision NOT NULL,
    last_at timestamp with time zone NOT NULL,
    end_total double precision,
    end_at timestamp with time zone,
    totals integer NOT NULL,
    CONSTRAINT end_at_is_a_time CHECK (isfinite(end_at)),
    CONSTRAINT episode_measure_check CHECK (((end_total IS NULL) = (end_at IS NULL))),
    CONSTRAINT episode_measure_totals_check CHECK ((totals > 0)),
    CONSTRAINT first_at_is_a_time CHECK (isfinite(first_at)),
    CONSTRAINT last_at_is_a_time CHECK (isfinite(last_at))
);

ALTER TABLE ONLY public.episode_measure FORCE ROW LEVEL SECURITY;


ALTER TABLE public.episode_measure OWNER TO leeward_owner;

--
-- Name: response; Type: TABLE; Schema: public; Owner: leeward_owner
--

CREATE TABLE public.response (
    id uuid NOT NULL,
    client_id uuid NOT NULL,
    episode_id uuid NOT NULL,
    number integer NOT NULL,
    measure text NOT NULL,
    rules smallint NOT NULL,
    occasion text NOT NULL,
    answered_at timestamp with time zone NOT NULL,
    total double precision,
    prorated boolean NOT NULL,
    points smallint,
    by_client boolean DEFAULT false NOT NULL,
    replaces uuid,
    withdrawn boolean DEFAULT false NOT NULL,
    entered_by uuid,
    kept_at timestamp with time zone NOT NULL,
    asking_id uuid,
    wording_id uuid,
    page uuid,
    CONSTRAINT answered_at_is_a_time CHECK (isfinite(answered_at)),
    CONSTRAINT kept_at_is_a_time CHECK (isfinite(kept_at)),
    CONSTRAINT response_check CHECK (((entered_by IS NOT NULL) OR by_client)),
    CONSTRAINT response_check1 CHECK (((NOT withdrawn) OR (replaces IS NOT NULL))),
    CONSTRAINT response_measure_check CHECK ((measure = ANY (ARRAY['pcl5'::text, 'itq'::text, 'iesr'::text, 'phq9'::text, 'gad7'::text, 'anxiety5'::text, 'who5'::text, 'des2'::text]))),
    CONSTRAINT response_number_check CHECK ((number > 0)),
    CONSTRAINT response_occasion_check CHECK ((occasion = ANY (ARRAY['intake'::text, 'regular'::text, 'end'::text, 'follow_up'::text]))),
    CONSTRAINT response_points_check CHECK ((points > 0)),
    CONSTRAINT response_rules_check CHECK ((rules > 0)),
    CONSTRAINT response_total_check CHECK (((total >= (0)::double precision) AND (total <= (100)::double precision)))
);

ALTER TABLE ONLY public.response FORCE ROW LEVEL SECURITY;


ALTER TABLE public.response OWNER TO leeward_owner;

--
-- Name: standing_response; Type: VIEW; Schema: public; Owner: leeward_owner
--

CREATE VIEW public.standing_response WITH (security_invoker='true') AS
 SELECT r.id,
    r.client_id,
    r.episode_id,
    r.number,
    r.measure,
    r.rules,
    r.occasion,
    r.answered_at,
    r.total,
    r.prorated,
    r.points,
    r.by_client,
    r.replaces,
    r.withdrawn,
    r.entered_by,
    r.kept_at
   FROM public.response r
  WHERE ((NOT r.withdrawn) AND (NOT (EXISTS ( SELECT
           FROM public.response later
          WHERE (later.replaces = r.id)))));


ALTER TABLE public.standing_response OWNER TO leeward_owner;

--
-- Name: episode_measure_fold; Type: VIEW; Schema: public; Owner: leeward_owner
--

CREATE VIEW public.episode_measure_fold WITH (security_invoker='true') AS
 SELECT standing_response.episode_id,
    standing_response.measure,
    (array_agg(standing_response.client_id))[1] AS client_id,
    (array_agg(standing_response.total ORDER BY standing_response.answered_at, standing_response.number) FILTER (WHERE (standing_response.occasion <> 'end'::text)))[1] AS first_total,
    min(standing_response.answered_at) FILTER (WHERE (standing_response.occasion <> 'end'::text)) AS first_at,
    (array_agg(standing_response.total ORDER BY standing_response.answered_at DESC, standing_response.number DESC) FILTER (WHERE (standing_response.occasion <> 'end'::text)))[1] AS last_total,
    max(standing_response.answered_at) FILTER (WHERE (standing_response.occasion <> 'end'::text)) AS last_at,
    (array_agg(standing_response.total ORDER BY standing_response.answered_at DESC, standing_response.number DESC) FILTER (WHERE (standing_response.occasion = 'end'::text)))[1] AS end_total,
    max(standing_response.answered_at) FILTER (WHERE (standing_response.occasion = 'end'::text)) AS end_at,
    (count(*))::integer AS totals
   FROM public.standing_response
  WHERE ((standing_response.total IS NOT NULL) AND (standing_response.occasion <> 'follow_up'::text))
  GROUP BY standing_response.episode_id, standing_response.measure
 HAVING (count(*) FILTER (WHERE (standing_response.occasion <> 'end'::text)) > 0);


ALTER TABLE public.episode_measure_fold OWNER TO leeward_owner;

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
-- Name: mail_address; Type: TABLE; Schema: public; Owner: leeward_owner
--

CREATE TABLE public.mail_address (
    member_id uuid NOT NULL,
    address text NOT NULL,
    changed_at timestamp with time zone NOT NULL,
    CONSTRAINT changed_at_is_a_time CHECK (isfinite(changed_at)),
    CONSTRAINT mail_address_address_check CHECK (((address = ''::text) OR ((length(address) >= 3) AND (length(address) <= 254))))
);

ALTER TABLE ONLY public.mail_address FORCE ROW LEVEL SECURITY;


ALTER TABLE public.mail_address OWNER TO leeward_owner;

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
    weeks_without smallint DEFAULT 8 NOT NULL,
    points_pcl5 smallint DEFAULT 15 NOT NULL,
    points_anxiety5 smallint DEFAULT 4 NOT NULL,
    told_too uuid,
    flag_hours smallint DEFAULT 24 NOT NULL,
    items_at_once smallint DEFAULT 36 NOT NULL,
    reading_hours text DEFAULT ''::text NOT NULL,
    single_courses boolean DEFAULT true NOT NULL,
    direct_calls boolean DEFAULT false NOT NULL,
    unseen_seconds smallint DEFAULT 5 NOT NULL,
    CONSTRAINT check_in_order CHECK ((check_from < check_until)),
    CONSTRAINT practice_check CHECK (((reserve >= 0) AND (reserve <= 60) AND (reserve < minutes))),
    CONSTRAINT practice_check_from_check CHECK (((check_from >= 1) AND (check_from <= 168))),
    CONSTRAINT practice_check_until_check CHECK (((check_until >= 1) AND (check_until <= 336))),
    CONSTRAINT practice_clock_check CHECK ((clock = ANY (ARRAY[12, 24]))),
    CONSTRAINT practice_crisis_words_check CHECK ((char_length(crisis_words) <= 600)),
    CONSTRAINT practice_day_order_check CHECK ((day_order = ANY (ARRAY['day_first'::text, 'month_first'::text, 'year_first'::text]))),
    CONSTRAINT practice_flag_hours_check CHECK (((flag_hours >= 1) AND (flag_hours <= 168))),
    CONSTRAINT practice_items_at_once_check CHECK (((items_at_once >= 5) AND (items_at_once <= 80))),
    CONSTRAINT practice_minutes_check CHECK (((minutes >= 10) AND (minutes <= 240))),
    CONSTRAINT practice_places_check CHECK ((char_length(places) <= 1000)),
    CONSTRAINT practice_points_anxiety5_check CHECK ((points_anxiety5 = ANY (ARRAY[4, 5]))),
    CONSTRAINT practice_points_pcl5_check CHECK ((points_pcl5 = ANY (ARRAY[10, 15, 18]))),
    CONSTRAINT practice_reading_hours_check CHECK ((length(reading_hours) <= 300)),
    CONSTRAINT practice_singleton_check CHECK (singleton),
    CONSTRAINT practice_stuck_after_check CHECK ((stuck_after = ANY (ARRAY[2, 3]))),
    CONSTRAINT practice_unseen_seconds_check CHECK (((unseen_seconds >= 3) AND (unseen_seconds <= 15))),
    CONSTRAINT practice_weeks_without_check CHECK (((weeks_without >= 2) AND (weeks_without <= 52)))
);

ALTER TABLE ONLY public.practice FORCE ROW LEVEL SECURITY;


ALTER TABLE public.practice OWNER TO leeward_owner;

--
-- Name: practice_snapshot; Type: TABLE; Schema: public; Owner: leeward_owner
--

CREATE TABLE public.practice_snapshot (
    id uuid NOT NULL,
    first_day date NOT NULL,
    last_day date NOT NULL,
    made_at timestamp with time zone NOT NULL,
    made_by uuid NOT NULL,
    figures jsonb NOT NULL,
    CONSTRAINT first_day_is_a_day CHECK (isfinite(first_day)),
    CONSTRAINT last_day_is_a_day CHECK (isfinite(last_day)),
    CONSTRAINT made_at_is_a_time CHECK (isfinite(made_at)),
    CONSTRAINT practice_snapshot_check CHECK ((last_day > first_day))
);

ALTER TABLE ONLY public.practice_snapshot FORCE ROW LEVEL SECURITY;


ALTER TABLE public.practice_snapshot OWNER TO leeward_owner;

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
-- Name: response_answers; Type: TABLE; Schema: public; Owner: leeward_owner
--

CREATE TABLE public.response_answers (
    response_id uuid NOT NULL,
    client_id uuid NOT NULL,
    answers bytea NOT NULL,
    event bytea NOT NULL
);

ALTER TABLE ONLY public.response_answers FORCE ROW LEVEL SECURITY;


ALTER TABLE public.response_answers OWNER TO leeward_owner;

--
-- Name: response_draft; Type: TABLE; Schema: public; Owner: leeward_owner
--

CREATE TABLE public.response_draft (
    id uuid NOT NULL,
    asking_id uuid NOT NULL,
    client_id uuid NOT NULL,
    measure text NOT NULL,
    answers bytea NOT NULL,
    version integer NOT NULL,
    kept_at timestamp with time zone NOT NULL,
    page uuid,
    sending integer DEFAULT 0 NOT NULL,
    wording_id uuid,
    CONSTRAINT kept_at_is_a_time CHECK (isfinite(kept_at)),
    CONSTRAINT response_draft_sending_check CHECK ((sending >= 0)),
    CONSTRAINT response_draft_version_check CHECK ((version > 0))
);

ALTER TABLE ONLY public.response_draft FORCE ROW LEVEL SECURITY;


ALTER TABLE public.response_draft OWNER TO leeward_owner;

--
-- Name: risk_flag; Type: TABLE; Schema: public; Owner: leeward_owner
--

CREATE TABLE public.risk_flag (
    response_id uuid NOT NULL,
    client_id uuid NOT NULL,
    says text NOT NULL,
    raised_at timestamp with time zone NOT NULL,
    done text,
    done_at timestamp with time zone,
    done_by uuid,
    CONSTRAINT done_at_is_a_time CHECK (isfinite(done_at)),
    CONSTRAINT raised_at_is_a_time CHECK (isfinite(raised_at)),
    CONSTRAINT risk_flag_check CHECK ((((done IS NULL) = (done_at IS NULL)) AND ((done IS NULL) = (done_by IS NULL)))),
    CONSTRAINT risk_flag_done_check CHECK ((done = ANY (ARRAY['plan_stands'::text, 'asked'::text, 'seen'::text, 'others_called'::text, 'sent_on'::text, 'emergency'::text]))),
    CONSTRAINT risk_flag_says_check CHECK ((says = ANY (ARRAY['flag'::text, 'unknown'::text])))
);

ALTER TABLE ONLY public.risk_flag FORCE ROW LEVEL SECURITY;


ALTER TABLE public.risk_flag OWNER TO leeward_owner;

--
-- Name: risk_mail; Type: TABLE; Schema: public; Owner: leeward_owner
--

CREATE TABLE public.risk_mail (
    response_id uuid NOT NULL,
    client_id uuid NOT NULL,
    member_id uuid NOT NULL,
    at timestamp with time zone NOT NULL,
    CONSTRAINT at_is_a_time CHECK (isfinite(at))
);

ALTER TABLE ONLY public.risk_mail FORCE ROW LEVEL SECURITY;


ALTER TABLE public.risk_mail OWNER TO leeward_owner;

--
-- Name: risk_told; Type: TABLE; Schema: public; Owner: leeward_owner
--

CREATE TABLE public.risk_told (
    response_id uuid NOT NULL,
    client_id uuid NOT NULL,
    member_id uuid NOT NULL,
    at timestamp with time zone NOT NULL,
    CONSTRAINT at_is_a_time CHECK (isfinite(at))
);

ALTER TABLE ONLY public.risk_told FORCE ROW LEVEL SECURITY;


ALTER TABLE public.risk_told OWNER TO leeward_owner;

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
-- Name: schedule; Type: TABLE; Schema: public; Owner: leeward_owner
--

CREATE TABLE public.schedule (
    client_id uuid NOT NULL,
    measures text[] NOT NULL,
    every smallint NOT NULL,
    follow_up_weeks smallint,
    set_at timestamp with time zone NOT NULL,
    version integer DEFAULT 1 NOT NULL,
    due_for text,
    due_on date,
    then_for text,
    then_on date,
    CONSTRAINT due_on_is_a_day CHECK (isfinite(due_on)),
    CONSTRAINT schedule_check CHECK (((due_for IS NULL) = (due_on IS NULL))),
    CONSTRAINT schedule_due_for_check CHECK ((due_for = ANY (ARRAY['intake'::text, 'regular'::text, 'end'::text, 'follow_up'::text]))),
    CONSTRAINT schedule_every_check CHECK (((every >= 1) AND (every <= 20))),
    CONSTRAINT schedule_follow_up_weeks_check CHECK (((follow_up_weeks >= 2) AND (follow_up_weeks <= 104))),
    CONSTRAINT schedule_measures_check CHECK (((cardinality(measures) >= 0) AND (cardinality(measures) <= 6))),
    CONSTRAINT schedule_then_for_check CHECK ((then_for = 'follow_up'::text)),
    CONSTRAINT schedule_version_check CHECK ((version > 0)),
    CONSTRAINT set_at_is_a_time CHECK (isfinite(set_at)),
    CONSTRAINT then_on_is_a_day CHECK (isfinite(then_on))
);

ALTER TABLE ONLY public.schedule FORCE ROW LEVEL SECURITY;


ALTER TABLE public.schedule OWNER TO leeward_owner;

--
-- Name: schedule_due; Type: VIEW; Schema: public; Owner: leeward_owner
--

CREATE VIEW public.schedule_due WITH (security_invoker='true') AS
 SELECT s.client_id,
        CASE
            WHEN l.lapsed THEN s.then_for
            ELSE s.due_for
        END AS due_for,
        CASE
            WHEN (NOT l.lapsed) THEN s.due_on
            WHEN (s.then_for IS NOT NULL) THEN s.then_on
            ELSE NULL::date
        END AS due_on,
    s.due_on AS folded_on
   FROM (public.schedule s
     CROSS JOIN LATERAL ( SELECT COALESCE(((s.due_for = 'end'::text) AND (s.then_on <= ( SELECT ((access.now() AT TIME ZONE practice.zone))::date AS timezone
                   FROM public.practice))), false) AS lapsed) l);


ALTER TABLE public.schedule_due OWNER TO leeward_owner;

--
-- Name: schedule_fold; Type: VIEW; Schema: public; Owner: leeward_owner
--

CREATE VIEW public.schedule_fold WITH (security_invoker='true') AS
 SELECT s.client_id,
    d.due_for,
        CASE
            WHEN (d.due_for IS NOT NULL) THEN ((d.due_at AT TIME ZONE p.zone))::date
            ELSE NULL::date
        END AS due_on,
        CASE
            WHEN ((d.due_for = 'end'::text) AND d.after_is_due) THEN 'follow_up'::text
            ELSE NULL::text
        END AS then_for,
        CASE
            WHEN (d.due_for = 'end'::text) THEN ((d.then_at AT TIME ZONE p.zone))::date
            ELSE NULL::date
        END AS then_on
   FROM ((((((public.schedule s
     CROSS JOIN ( SELECT practice.zone
           FROM public.practice) p)
     LEFT JOIN LATERAL ( SELECT e_1.id,
            e_1.client_id,
            e_1.number,
            e_1.begun_at,
            e_1.started_at,
            e_1.reprocessed_at,
            e_1.last_at,
            e_1.sessions,
            e_1.ended_at,
            e_1.reason,
            e_1.judged_by,
            e_1.version
           FROM public.episode e_1
          WHERE ((e_1.client_id = s.client_id) AND (e_1.reason IS DISTINCT FROM 'mistake'::text))
          ORDER BY e_1.number DESC
         LIMIT 1) e ON (true))
     LEFT JOIN LATERAL ( SELECT count(*) FILTER (WHERE (m.last_at IS NULL)) AS without,
            min(m.last_at) AS last_at,
            bool_and(m.at_end) AS at_end,
            bool_and(m.after_end) AS after_end
           FROM ( SELECT f_1.measure,
                    max(x.at) AS last_at,
                    COALESCE(bool_or((x.occasion = 'end'::text)), false) AS at_end,
                    COALESCE(bool_or((x.occasion = 'follow_up'::text)), false) AS after_end
                   FROM (unnest(s.measures) f_1(measure)
                     LEFT JOIN LATERAL ( SELECT r.answered_at AS at,
                            r.occasion
                           FROM public.standing_response r
                          WHERE ((r.episode_id = e.id) AND (r.measure = f_1.measure))
                        UNION ALL
                         SELECT a.closed_at,
                            a.occasion
                           FROM public.asking a
                          WHERE ((a.episode_id = e.id) AND (a.closed_as = 'declined'::text) AND (f_1.measure = ANY (a.measures)))) x ON (true))
                  GROUP BY f_1.measure) m) h ON (true))
     LEFT JOIN LATERAL ( SELECT n_1.opened_at
           FROM public.attended n_1
          WHERE ((n_1.episode_id = e.id) AND (((n_1.opened_at AT TIME ZONE p.zone))::date > ((h.last_at AT TIME ZONE p.zone))::date))
          ORDER BY n_1.opened_at
         OFFSET (s.every - 1)
         LIMIT 1) n ON (true))
     CROSS JOIN LATERAL ( SELECT
                CASE
                    WHEN ((cardinality(s.measures) = 0) OR (e.reason = 'died'::text)) THEN NULL::text
                    WHEN ((e.ended_at IS NULL) AND (h.without = cardinality(s.measures))) THEN 'intake'::text
                    WHEN ((e.ended_at IS NULL) AND ((h.without > 0) OR (n.opened_at IS NOT NULL))) THEN 'regular'::text
                    WHEN ((e.ended_at IS NULL) OR (e.started_at IS NULL)) THEN NULL::text
                    WHEN (h.at_end IS NOT TRUE) THEN 'end'::text
                    WHEN ((h.after_end IS NOT TRUE) AND (s.follow_up_weeks IS NOT NULL)) THEN 'follow_up'::text
                    ELSE NULL::text
                END AS due_for) f)
     CROSS JOIN LATERAL ( SELECT f.due_for,
            ((h.after_end IS NOT TRUE) AND (s.follow_up_weeks IS NOT NULL)) AS after_is_due,
            (e.ended_at + make_interval(weeks => COALESCE((s.follow_up_weeks)::integer, 8))) AS then_at,
                CASE
                    WHEN ((f.due_for = 'intake'::text) OR ((f.due_for = 'regular'::text) AND (h.without > 0))) THEN GREATEST(e.begun_at, s.set_at)
                    WHEN (f.due_for = 'regular'::text) THEN n.opened_at
                    WHEN (f.due_for = 'end'::text) THEN e.ended_at
                    WHEN (f.due_for = 'follow_up'::text) THEN (e.ended_at + make_interval(weeks => (s.follow_up_weeks)::integer))
                    ELSE NULL::timestamp with time zone
                END AS due_at) d);


ALTER TABLE public.schedule_fold OWNER TO leeward_owner;

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
-- Name: target_still; Type: TABLE; Schema: public; Owner: leeward_owner
--

CREATE TABLE public.target_still (
    target_id uuid NOT NULL,
    client_id uuid NOT NULL,
    still boolean NOT NULL
);

ALTER TABLE ONLY public.target_still FORCE ROW LEVEL SECURITY;


ALTER TABLE public.target_still OWNER TO leeward_owner;

--
-- Name: target_still_fold; Type: VIEW; Schema: public; Owner: leeward_owner
--

CREATE VIEW public.target_still_fold WITH (security_invoker='true') AS
 WITH per AS (
         SELECT standing_rating.target_id,
            standing_rating.client_id,
            standing_rating.session_id,
            max(standing_rating.place) AS place,
            (array_agg(standing_rating.value ORDER BY standing_rating.place, standing_rating.asked))[1] AS first,
            (array_agg(standing_rating.value ORDER BY standing_rating.place DESC, standing_rating.asked DESC))[1] AS last
           FROM public.standing_rating
          WHERE ((standing_rating.scale = 'sud'::text) AND (standing_rating.session_id IS NOT NULL) AND (standing_rating.target_id IS NOT NULL))
          GROUP BY standing_rating.target_id, standing_rating.client_id, standing_rating.session_id
        ), latest AS (
         SELECT per.target_id,
            per.client_id,
            per.session_id,
            per.place,
            per.first,
            per.last,
            row_number() OVER (PARTITION BY per.target_id ORDER BY per.place DESC) AS back
           FROM per
        )
 SELECT latest.target_id,
    latest.client_id,
    ((min(latest.last) >= (array_agg(latest.first ORDER BY latest.back DESC))[1]) AND ((array_agg(latest.first ORDER BY latest.back DESC))[1] > 0)) AS still
   FROM latest
  WHERE (latest.back <= 3)
  GROUP BY latest.target_id, latest.client_id
 HAVING (count(*) = 3);


ALTER TABLE public.target_still_fold OWNER TO leeward_owner;

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
-- Name: wording; Type: TABLE; Schema: public; Owner: leeward_owner
--

CREATE TABLE public.wording (
    id uuid NOT NULL,
    measure text NOT NULL,
    body jsonb NOT NULL,
    loaded_by uuid NOT NULL,
    loaded_at timestamp with time zone NOT NULL,
    checked_by uuid,
    checked_at timestamp with time zone,
    ended_at timestamp with time zone,
    CONSTRAINT checked_at_is_a_time CHECK (isfinite(checked_at)),
    CONSTRAINT ended_at_is_a_time CHECK (isfinite(ended_at)),
    CONSTRAINT loaded_at_is_a_time CHECK (isfinite(loaded_at)),
    CONSTRAINT wording_check CHECK (((checked_by IS NULL) = (checked_at IS NULL))),
    CONSTRAINT wording_measure_check CHECK ((measure = ANY (ARRAY['pcl5'::text, 'itq'::text, 'iesr'::text, 'phq9'::text, 'gad7'::text, 'anxiety5'::text, 'who5'::text, 'des2'::text])))
);

ALTER TABLE ONLY public.wording FORCE ROW LEVEL SECURITY;


ALTER TABLE public.wording OWNER TO leeward_owner;

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
member	episode.view	f
member	episode.begin	f
member	episode.end	f
member	measure.view	f
member	measure.enter	f
member	measure.withdraw	f
member	flag.close	f
member	practice.outcomes.view	f
member	wording.view	f
member	wording.load	f
member	wording.use	f
member	schedule.view	f
member	schedule.change	f
member	asking.view	f
member	asking.make	f
member	asking.link	f
member	asking.withdraw	f
errand	errand.open	f
errand	errand.hand_in	f
errand	errand.decline	f
member	practice.snapshot.make	f
member	account.mail.view	f
member	account.mail.change	f
member	wording.end	f
\.


--
-- Data for Name: audit_head; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.audit_head (singleton, seq, hash) FROM stdin;
t	75	\\x9ca12ec6364889f3aaea5b645bdaebf573015331d41c9a89ed90c9f328f58632
\.


--
-- Data for Name: care_link; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.care_link (id, member_id, client_id, since, until) FROM stdin;
530c4b8c-e4c1-470e-911f-aaa9461b60ab	97cf309d-b45e-4492-8207-af5484c9e1df	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	2026-03-03 09:00:00+00	\N
1904cc23-9aaf-4112-81b6-fe075d4b8992	97cf309d-b45e-4492-8207-af5484c9e1df	96cb1b9a-8f27-4225-bc8d-87e930f99ddf	2026-03-10 09:04:22+00	\N
691d3f36-3da0-4766-bead-137ba9f88c1e	97cf309d-b45e-4492-8207-af5484c9e1df	2cd1321e-f179-48a1-9f8b-61573100d563	2026-03-10 09:04:22+00	\N
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
-- Data for Name: errand; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.errand (id, token_hash, client_id, purpose, asking_id, made_by, made_at, revoked_at) FROM stdin;
9ea27ece-14e2-4ac4-a80f-d6bf85b24567	\\x5e2a8743c8f8c0a370f00d16f96a103c00d505e6237a9b7596be89ea70653706	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	forms	fe7cbc48-53b9-4249-9c86-e7bea3d2336a	97cf309d-b45e-4492-8207-af5484c9e1df	2026-03-10 09:04:22+00	\N
\.


--
-- Data for Name: gate; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.gate (session_id, client_id, ended_at) FROM stdin;
a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	2026-03-03 09:04:22+00
9f978597-2bcd-4d16-a04d-f2164581b6e0	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	\N
f0b2b007-5c13-40ca-8c43-e8d15aa70718	96cb1b9a-8f27-4225-bc8d-87e930f99ddf	\N
\.


--
-- Data for Name: invitation; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.invitation (token_hash, member_id, name, roles, made_by, made_at, ends_at, spent_at, made_in, replacement) FROM stdin;
\\xc4f32138fc58755dddc7f4a31e9481b6640b5ea08c1d85607849eb61e6985a1c	\N	Somebody New	{lead}	abffe018-c70a-4966-bdba-8db3da1dfa1b	2026-03-03 09:01:00+00	2026-03-06 09:01:00+00	\N	981c5d63-ed3e-46c6-b227-0e0887152c20	\N
\.


--
-- Data for Name: join_link; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.join_link (id, token_hash, session_id, made_at, ends_at, revoked_at, code_phc, code_ends_at, code_tries, code_spent_at) FROM stdin;
dfed996b-ab9a-4d6a-8ae6-58ae7c240732	\\x540108b9d1ed5377b32da647eb960ed10005d9d4f24f840aea1a637ab87489e4	9f978597-2bcd-4d16-a04d-f2164581b6e0	2026-03-10 09:04:22+00	2026-03-10 13:04:22+00	\N	$argon2id$v=19$m=19456,t=2,p=1$nM6rciCJ8cLx0oMdFRzyoA$pf4r4umkswhf62z5jfnq1+H+sWWAVSYzCTYzuvCRHrM	2026-03-10 09:14:22+00	1	2026-03-10 09:04:22+00
\.


--
-- Data for Name: key_check; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.key_check (key_id, sealed) FROM stdin;
1	\\x01a8d1d3869d11bbb01c88bc20cad2f455f20f75e5ff9a339614627321953d5a1f2876788b24f420be2f01628784
\.


--
-- Data for Name: member; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.member (id, name, roles, joined_at, left_at, roles_since) FROM stdin;
97cf309d-b45e-4492-8207-af5484c9e1df	Member 97cf30	{clinician}	2026-03-03 09:00:00+00	\N	\N
d1cf4d20-8d35-4a98-81e3-393ab06e586b	Member d1cf4d	{lead}	2026-03-03 09:01:00+00	\N	\N
abffe018-c70a-4966-bdba-8db3da1dfa1b	Member abffe0	{administrator}	2026-03-03 09:01:00+00	\N	\N
21c5d1e2-9f0b-4592-8e1d-a6f424519b8a	Member 21c5d1	{lead}	2026-03-10 09:04:22+00	\N	\N
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
97cf309d-b45e-4492-8207-af5484c9e1df	96cb1b9a-8f27-4225-bc8d-87e930f99ddf
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
abffe018-c70a-4966-bdba-8db3da1dfa1b	885f0eb6-6ccf-92cc-e329-abec7ff242d1	member.invite	\\xe2363b47c16ec24771f466dcafefd75b082e8e3016e2f9e70ec7728212875a63	{"json":"2026-03-06T09:01:00Z"}	2026-03-03 09:01:00+00
abffe018-c70a-4966-bdba-8db3da1dfa1b	3a76959a-dc71-c147-8fea-100921e58329	practice.settings.change	\\x3e64732a5e4370a80e8ba4814df45b97ca43ce946745bf2da3c0fdaea745b3e7	{"see":"/practice/settings?saved=3a76959a-dc71-c147-8fea-100921e58329"}	2026-03-03 09:01:00+00
97cf309d-b45e-4492-8207-af5484c9e1df	1db7e78c-6212-3327-6714-dc8965035f54	preset.create	\\x67f8aa3b84c8869b415acfe4c1f6e316f15397a9a65a578df07867f203fe5edd	{"see":"/presets?saved=1db7e78c-6212-3327-6714-dc8965035f54"}	2026-03-03 09:01:00+00
97cf309d-b45e-4492-8207-af5484c9e1df	fba80247-d23e-1c74-c801-c6871093e2a7	preset.create	\\x953d427bf0820728e80909e2230864766d0a7b14539231a9a15be4eec05db0a0	{"see":"/presets?saved=fba80247-d23e-1c74-c801-c6871093e2a7"}	2026-03-03 09:01:00+00
97cf309d-b45e-4492-8207-af5484c9e1df	3c80b26f-d453-4435-b370-b3a6b3dfd076	preset.put_away	\\x7d4f828a583b92a24935f7fa152dfed5f6a19b69aa3c05c9abcdcda703bd04d5	{"see":"/presets"}	2026-03-03 09:01:00+00
97cf309d-b45e-4492-8207-af5484c9e1df	29fbc208-ed3f-f0b7-b6c4-74c7e6a01da4	client.change	\\xc70acaf2e505d55bdfc378b96f53987b1bf2c7d5cb10b1e3486b3a3e09b72d10	{"see":"/clients/456b8bda-4398-44a3-aa81-5fe2fa4b0c62?saved=29fbc208-ed3f-f0b7-b6c4-74c7e6a01da4"}	2026-03-03 09:01:00+00
97cf309d-b45e-4492-8207-af5484c9e1df	7badfc64-60b6-dcc7-4ccc-e6b91f18f090	comfort.change	\\xcdf68b7f9738e1cc63937dde20bd88482de3684c3b17c2d058b282ed2688f9fa	{"see":"/clients/456b8bda-4398-44a3-aa81-5fe2fa4b0c62?saved=7badfc64-60b6-dcc7-4ccc-e6b91f18f090"}	2026-03-03 09:01:00+00
97cf309d-b45e-4492-8207-af5484c9e1df	da1ff3ae-30b9-004c-71a0-9576d407aff1	safety_plan.change	\\x01240058e659a4e96d39a74031c5224f56ee275a8d16cc6e10bee64fb065de8f	{"see":"/clients/456b8bda-4398-44a3-aa81-5fe2fa4b0c62/safety-plan?saved=da1ff3ae-30b9-004c-71a0-9576d407aff1"}	2026-03-03 09:01:00+00
97cf309d-b45e-4492-8207-af5484c9e1df	1d28b5ad-d7eb-daf0-baec-681b0be4e63d	steadying.change	\\x1c23db7e4f950da7c95ae9ea82929bcab46e3107ddac48b0283291ad21ec2da2	{"see":"/clients/456b8bda-4398-44a3-aa81-5fe2fa4b0c62/steadying?saved=1d28b5ad-d7eb-daf0-baec-681b0be4e63d"}	2026-03-03 09:01:00+00
97cf309d-b45e-4492-8207-af5484c9e1df	3634d0e6-a2ce-5c64-23f9-73f8beed9f6f	reach.change	\\x287ae8447a74b192840984907efcde273ecdccdc920251c7a91ff3008c19427e	{"see":"/clients/456b8bda-4398-44a3-aa81-5fe2fa4b0c62?saved=3634d0e6-a2ce-5c64-23f9-73f8beed9f6f"}	2026-03-03 09:01:00+00
97cf309d-b45e-4492-8207-af5484c9e1df	12f3b842-c361-3ab0-7254-c683fe5fa365	resource.create	\\xbbc3c6075eb07e50d0d7ad8476064591c9a691561fff915bffbbdbab2a5ddad1	{"see":"/clients/456b8bda-4398-44a3-aa81-5fe2fa4b0c62/steadying?saved=12f3b842-c361-3ab0-7254-c683fe5fa365"}	2026-03-03 09:01:00+00
97cf309d-b45e-4492-8207-af5484c9e1df	c371b1fe-4951-df19-ec93-1cddcf481ee9	event.create	\\x9aee00580bf8e7d0a83d448cd4592e69521965435271bb4962d6df3073554dbb	{"see":"/clients/456b8bda-4398-44a3-aa81-5fe2fa4b0c62/events?saved=c371b1fe-4951-df19-ec93-1cddcf481ee9"}	2026-03-03 09:01:00+00
97cf309d-b45e-4492-8207-af5484c9e1df	1f8d68ca-ce66-81c4-1ffa-99a90377128f	target.change	\\x605fe58e9ab21e948530f42eb2ceb51b9a5189c05075ea3a2434b4c8770a2fde	{"see":"/targets/d55df3b6-5f4a-4ee3-90b8-670c687fd8fc?saved=1f8d68ca-ce66-81c4-1ffa-99a90377128f"}	2026-03-03 09:02:00+00
97cf309d-b45e-4492-8207-af5484c9e1df	39529c5e-adbe-25f2-8415-ee1accde6838	target.change	\\x98400991d74a180ee6f692076d566d401c6d4a6ff587943d40d59026cb3076cc	{"see":"/targets/d55df3b6-5f4a-4ee3-90b8-670c687fd8fc?saved=39529c5e-adbe-25f2-8415-ee1accde6838"}	2026-03-03 09:02:00+00
97cf309d-b45e-4492-8207-af5484c9e1df	435f7d81-8747-ad63-2cd0-a4a6b245e0cc	plan.cluster	\\x196cb957c3794713eb0584f4b4d46281e8fbaa5674ed5b4777ff3f8e485e44e8	{"see":"/clients/456b8bda-4398-44a3-aa81-5fe2fa4b0c62/plan?saved=435f7d81-8747-ad63-2cd0-a4a6b245e0cc"}	2026-03-03 09:02:00+00
97cf309d-b45e-4492-8207-af5484c9e1df	fa9923dc-ef5f-0921-00e5-c12b8595baaa	target.create	\\xc911ea42fb3c7a25e783bd8eac41e52db2fdab5ec9678fcee5f2a11b75b78c9f	{"see":"/targets/3e46a2b0-f6b9-408b-9262-15381ece7e92?saved=fa9923dc-ef5f-0921-00e5-c12b8595baaa"}	2026-03-03 09:02:00+00
97cf309d-b45e-4492-8207-af5484c9e1df	19008a85-2986-f89f-4487-d95491f25f27	plan.move	\\x73519ecab28a5b2cf703544dd4ae9d666c84b2acfa594445b0293408a79a56e1	{"see":"/clients/456b8bda-4398-44a3-aa81-5fe2fa4b0c62/plan#target-2"}	2026-03-03 09:02:00+00
97cf309d-b45e-4492-8207-af5484c9e1df	8dc72792-bb25-077d-ed45-c6c61f47d26e	target.fact	\\x47aa79fb9932d04cf6c05cded96db5c0d813189be2afc45255d40dd57afde951	{"see":"/targets/d55df3b6-5f4a-4ee3-90b8-670c687fd8fc?saved=8dc72792-bb25-077d-ed45-c6c61f47d26e"}	2026-03-03 09:03:41+00
97cf309d-b45e-4492-8207-af5484c9e1df	22f9d13b-4b41-36a7-7842-4f1cd6467b00	target.fact	\\x02d977337be7ceedd72fe074f2707b4757a94294ac98e60d2594ba39f5b9c88e	{"see":"/targets/d55df3b6-5f4a-4ee3-90b8-670c687fd8fc?saved=22f9d13b-4b41-36a7-7842-4f1cd6467b00"}	2026-03-03 09:03:41+00
97cf309d-b45e-4492-8207-af5484c9e1df	dfbe33a3-b6fd-bebb-ae15-33aca8863a10	target.fact	\\x9559030edbc97588cdefa756bfa2d7bbe3db2248933f618d9a8dee68711efa34	{"see":"/targets/d55df3b6-5f4a-4ee3-90b8-670c687fd8fc?saved=dfbe33a3-b6fd-bebb-ae15-33aca8863a10"}	2026-03-03 09:03:41+00
97cf309d-b45e-4492-8207-af5484c9e1df	2cc11dc7-aa01-dcc2-9e07-2b0055dacc2f	session.close	\\xba4a9859768c0e3347863e78b0d61b629ff06f9822d73b35760077e763de72c2	{"see":"/sessions/a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59?saved=2cc11dc7-aa01-dcc2-9e07-2b0055dacc2f"}	2026-03-03 09:04:22+00
97cf309d-b45e-4492-8207-af5484c9e1df	3fa4edd8-4284-d3ce-1e27-7afea1ff0c3b	session.check	\\x64c1ee0c96e640065be94c12c27ef1d1bb4eb025501597f8942f082ae89b421d	{"see":"/sessions/a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59?saved=3fa4edd8-4284-d3ce-1e27-7afea1ff0c3b"}	2026-03-03 09:04:22+00
97cf309d-b45e-4492-8207-af5484c9e1df	e5b1f2d4-499d-10ed-47b5-7476e62f7dc8	session.note.save	\\xd4c7e7611f7a25059bfc6c5049a4befb857b2382ec243f65541d2ccb433abf99	{"see":"/sessions/a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59?saved=e5b1f2d4-499d-10ed-47b5-7476e62f7dc8#note"}	2026-03-03 09:04:22+00
97cf309d-b45e-4492-8207-af5484c9e1df	d92dec19-4d66-1a90-fa77-36643e1158db	link.make	\\x44136fa355b3678a1146ad16f7e8649e94fb4fc21fe77e8310c060f61caaff8a	{"json":"2026-03-10T09:14:22Z"}	2026-03-10 09:04:22+00
97cf309d-b45e-4492-8207-af5484c9e1df	d75bfcab-9fe5-b298-cee1-b675431ec99d	code.make	\\x44136fa355b3678a1146ad16f7e8649e94fb4fc21fe77e8310c060f61caaff8a	{"json":"2026-03-10T09:14:22Z"}	2026-03-10 09:04:22+00
97cf309d-b45e-4492-8207-af5484c9e1df	0f6284c7-d733-f519-9a52-29f6466ad9ce	client.archive	\\x7d4f828a583b92a24935f7fa152dfed5f6a19b69aa3c05c9abcdcda703bd04d5	{"see":"/clients/2cd1321e-f179-48a1-9f8b-61573100d563"}	2026-03-10 09:04:22+00
21c5d1e2-9f0b-4592-8e1d-a6f424519b8a	2c073aad-4c0c-ff8d-1cc0-eaca8ceccc6d	wording.load	\\x085e643aa828f9877ed8582b45bc9454444867fee2f99b9ed90fe673c6ef9687	{"see":"/practice/wordings/gad7?saved=2c073aad-4c0c-ff8d-1cc0-eaca8ceccc6d"}	2026-03-10 09:04:22+00
97cf309d-b45e-4492-8207-af5484c9e1df	69711c55-6d66-4888-355c-50ec5a7f95ea	schedule.change	\\x0b20fc209e2e1e63a766ee58f27a09c3850bd6f1125f28da9f269ea958615163	{"see":"/clients/456b8bda-4398-44a3-aa81-5fe2fa4b0c62/askings?saved=69711c55-6d66-4888-355c-50ec5a7f95ea"}	2026-03-10 09:04:22+00
97cf309d-b45e-4492-8207-af5484c9e1df	26ed218b-e878-b911-5804-a26fc81da2ad	measure.enter	\\x1bea2e87f6a1b39ee182f9c27a03f9f2081ecac9233805e85a8c9144fc9d8cc7	{"see":"/clients/456b8bda-4398-44a3-aa81-5fe2fa4b0c62/measures/1?saved=26ed218b-e878-b911-5804-a26fc81da2ad"}	2026-03-10 09:04:22+00
97cf309d-b45e-4492-8207-af5484c9e1df	9f248eb5-23e9-475c-0157-f5180ccc6d5b	account.mail.change	\\xc51afc06bf45bd496162afcbbbe6d4e5b6e84a7da91b4bc2e13d8f5b82e530b3	{"see":"/account/mail?saved=9f248eb5-23e9-475c-0157-f5180ccc6d5b"}	2026-03-10 09:04:22+00
\.


--
-- Data for Name: room_token; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.room_token (token_hash, session_id, ends_at) FROM stdin;
\\x25dd8e47836a9cbf2260cff92592bdb926e458c4d810e66456ad80a1e586cb37	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	2026-03-04 09:02:01+00
\\xcc1883c1a271b59c36330518687cd5dd7e7811aabc3c659f315a4fb1862eb966	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	2026-03-04 09:02:35+00
\\x8bbafe9838e8e7789093b3ccaf44dda797cc6762998610914d808cb8f72c4321	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	2026-03-04 09:03:07+00
\\x32938481cc07aadef947f582e980b3ae8f14e6d66ad1654dabf82db61331bdce	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	2026-03-04 09:03:41+00
\.


--
-- Data for Name: seat; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.seat (id, token_hash, link_id, session_id, device, asked_at, taken_at, closed_at, asked_no, admitted_at, closed_why) FROM stdin;
9c646107-fdc3-4ea5-b2fa-7a16e7d53c0a	\\x7fe401884047390206000539383dc3a0bd7984b8678e60d7a56667bb32747ce7	dfed996b-ab9a-4d6a-8ae6-58ae7c240732	9f978597-2bcd-4d16-a04d-f2164581b6e0	device	2026-03-10 09:04:22+00	2026-03-10 09:04:22+00	\N	1	2026-03-10 09:04:22+00	\N
7637d7c6-48e0-4bb1-9589-c3803820e246	\\x5e7e8190800dc3c8d0da4b68103b2f94cd087c959307c185776b961f916dcd83	dfed996b-ab9a-4d6a-8ae6-58ae7c240732	9f978597-2bcd-4d16-a04d-f2164581b6e0	device	2026-03-10 09:04:22+00	\N	\N	2	\N	\N
\.


--
-- Data for Name: signin; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.signin (id, token_hash, member_id, device, opened_at, seen_at, ends_at, closed_at, shown_at) FROM stdin;
58abac14-f707-481c-954e-a8c7305e0e33	\\xe642f8688b6bec58dd8727d03fa17b9898898d59ad26c6dc59be84e9c3303687	d1cf4d20-8d35-4a98-81e3-393ab06e586b	a test	2026-03-03 09:01:00+00	2026-03-03 09:01:00+00	2026-03-03 21:01:00+00	\N	2026-03-03 09:01:00+00
981c5d63-ed3e-46c6-b227-0e0887152c20	\\x4daacdbecd9d6f5c9e2dfc4f18221b6f10eaef75654899e52e7331a16bb274b3	abffe018-c70a-4966-bdba-8db3da1dfa1b	a test	2026-03-03 09:01:00+00	2026-03-03 09:01:00+00	2026-03-03 21:01:00+00	\N	2026-03-03 09:01:00+00
2126e8ec-bf02-4fc0-9b7e-6192485725f6	\\xa99bb1ce966831441a9cd610a235dd0b654c4af6290aeb7e44f19caa036097b8	97cf309d-b45e-4492-8207-af5484c9e1df	a test	2026-03-03 09:00:00+00	2026-03-03 09:04:12+00	2026-03-03 21:00:00+00	\N	2026-03-03 09:00:00+00
a956c871-2b5e-417a-a629-fce56f5c9682	\\xd7566c185e19529383caf8bd9b4d8dc14434bcbc7188fd07251c5e60b45b4340	97cf309d-b45e-4492-8207-af5484c9e1df	a test	2026-03-10 09:04:22+00	2026-03-10 09:04:22+00	2026-03-10 21:04:22+00	\N	2026-03-10 09:04:22+00
53bac90c-6d3d-4e39-8984-534e7af89daf	\\x2943b31be5866b147123c6b8d927ffeb7a0b5237b3657ae2da0a2d9eae19b2f0	21c5d1e2-9f0b-4592-8e1d-a6f424519b8a	a test	2026-03-10 09:04:22+00	2026-03-10 09:04:22+00	2026-03-10 21:04:22+00	\N	2026-03-10 09:04:22+00
\.


--
-- Data for Name: _sqlx_migrations; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public._sqlx_migrations (version, description, installed_on, success, checksum, execution_time) FROM stdin;
1	access	2026-11-30 05:34:23.694823+00	t	\\xee58a96d68f93385e2e3af6d4390382fcafdadee1b3238242b344c60c94a8a4273a40010f4ba1d66f24207ad6aa82776	41258328
2	acts	2026-11-30 05:34:23.742737+00	t	\\x0f1c508e40ba3792e8e2c58fc8d185e11836f9b1edbc9ee5e6fc9a92df9e176255b3f22d035b99a39cacc5519227d601	10275634
3	audit	2026-11-30 05:34:23.751794+00	t	\\x2dcb585f14b456aae15b0d06e9e436a1575c0781ae10803bee3b70623ac409a8962de276d2dcd3a58ef61135aed43953	8779274
4	records	2026-11-30 05:34:23.761481+00	t	\\x9c4ec09ed84e6bff571cb8c4e9522c0282f285dad35065f146b0b53be2e4bac359f321e4dcfa97ba7635f5070af5291c	18756108
5	sessions	2026-11-30 05:34:23.781188+00	t	\\x3013bebd83db0d46eca7767511705f52abb32a744ff204f5bdcb3afb063c1a18464207dd188aa4c42cd742db6aff73a7	41579303
6	standing ratings	2026-11-30 05:34:23.823872+00	t	\\xa43c139ae2899d8e1dc400509333c23cb35febf1c311c95315c815ad8f5786811785868cfde2df96ad491c1e641366e6	3243485
7	preparation	2026-11-30 05:34:23.827717+00	t	\\x4039cb17dce2ac0b1a5c9987dfad7b5d9423a5d32f43e2faaf08827b835146f0e59d31276bd09283dad5a4c90562ba0b	14248209
8	kept once	2026-11-30 05:34:23.842817+00	t	\\xe127621eaa8d28ce25c37396363f914cbc8bf50c61eb3e086ca8f6f279ee945eb2403ea2402783472868733728cbc2f5	22185080
9	assessments	2026-11-30 05:34:23.86597+00	t	\\x5bf0696b51deb48ebfb71a27a4779e2da2efaf85174c4c7b8b0b88f67c867051a235ae6a038426b2cf9714b07de370d5	16912690
10	upkeep	2026-11-30 05:34:23.883547+00	t	\\x3f4a71c2e96ccf63581bbe1594408bc7672b13212d73c6347be4c10e049e853222b107f9a5cd31e2d60284bb9445afb4	5509124
11	known endings	2026-11-30 05:34:23.889754+00	t	\\x0a97a58fbc94f4dd07219030a06389d787aa440be152804e2a07da2545acf733ac66f06c456acba078caf09dba984cf9	2512670
12	second wall	2026-11-30 05:34:23.892567+00	t	\\xf2b839c5ed136915edd9a3b5082421152ff644aa35c788cc4b55ffd93fee695d696210983c475948599bf94dfa4ff539	15973719
13	nobody stranded	2026-11-30 05:34:23.909461+00	t	\\x14f8e04a51d086fbaab1b3f6845afc067d25ffcdd89dc5a3652defe3c568c12141846c15a94cdee63511346587aa0e3e	19142787
14	stays open	2026-11-30 05:34:23.929301+00	t	\\xbce641e43ef5e0a37f25030aa8d2da5628e88f328a4d46878446cf4ef20fa7db69a7cd2d0b7e66f503d1ef5004e8a710	2360225
15	two at once	2026-11-30 05:34:23.932251+00	t	\\x6f2a8632031128d32d81d4dd3eec3afc45deb68c1f16f7e143b018e44e8d9a00c505c026c575835e9587cf861c582fac	14974673
16	how it is written	2026-11-30 05:34:23.948243+00	t	\\x76aae8e7a2d18d6f2f5f65227d5f5a5865bf26fe68b97b1d1cb74bc59f6299d8dbe7689172a944793865827bbd38bd66	3061688
17	course	2026-11-30 05:34:23.952169+00	t	\\xa6254301cb4d15288063fe66b8a02baa70a3925524c246e747736d986981e46e74715411e206af41f1b599e4cef99e12	25936080
18	opening	2026-11-30 05:34:23.979072+00	t	\\xec2d5896e3cabcf441991fedb5b6ef7c462b59ed2e2a4d339766d3daa9067a2d72250bffbda5645b9c0a9d4eafda4d70	32781977
19	plan	2026-11-30 05:34:24.013511+00	t	\\xba1afbb9b61f7e89c65231c839f2edede3bd4c82d1b2ef548d676cd47f34247a72fdf379b5a54a99bb49baa43fefd7d6	18654938
20	safety plan	2026-11-30 05:34:24.032774+00	t	\\x661fdedd23a5f1e2b96fd0538d32407e3d2efe1750893a2174a824ffb12ba9fb7ee7ae190d36377151f0f5816e8029c0	5746757
21	hour	2026-11-30 05:34:24.039131+00	t	\\x21ba20d76eea6e42b7171d17d12dccbfd565d47b2f65d4068699502c8c9cab0159f3aadf5f4acf2f4d3245fd3b2b57d7	34672496
22	events	2026-11-30 05:34:24.074859+00	t	\\x7f252014b7699a5b0c0bdd5c30bd3c4e1798b52b2a2076c152d7e178209a9ec0daae5055c05e17e644f520482901d6f0	15786136
23	safety	2026-11-30 05:34:24.092718+00	t	\\x4893ee25fbe357773f5af9c82ee6c3a70c299c9de4d4f58d0c917e9de811ce4297cee7ba335edfa265c6b7532c9eb4ae	1648222
24	episodes	2026-11-30 05:34:24.094832+00	t	\\x6eecf5746cf428275f63c5026520fc1f62032d3c5d2b1c9e698680542137a479c442416b461e915e1c2768045e3ce133	20377717
25	measures	2026-11-30 05:34:24.116136+00	t	\\x3beafd1c2f0e7548b538e159de11717ae16e5aafa16a9fc5f755f55a99c55116240dbe76ae44edc6c9b240cb987db2a2	31725910
26	practice	2026-11-30 05:34:24.148721+00	t	\\x5c216703aabfb680cb3bbca783ffab803bc934d98bd6f8fede40776eba6cf80e918a17444b036da4c6381de436486989	13663596
27	asking	2026-11-30 05:34:24.163145+00	t	\\xa81b2922add24798e95c69e8fa50f616a15d16f957f57173835ca87e140c642b4e7587368b8cf26d1ba910b6d768f88a	46683790
28	snapshots	2026-11-30 05:34:24.210764+00	t	\\x9380961b77c15e5c7cb135646c7685eda6c60dc3cf3f4ed5688b867028ad97c37c97f9a21cff3c377eba8496b7164fe2	6817439
29	told	2026-11-30 05:34:24.218413+00	t	\\x4e814f052aaaf2cdb013811ae951fff9a4ab385b845ae2977f1ecf7e71fc8ccbf34d32636cf8fa5203711a50f6db82a4	62262132
30	call	2026-11-30 05:34:24.281897+00	t	\\x7a415008b66ff2fadc2de3aa8b2fc64e3400221e49574f94a4b2d509001ae94d57612f51987d6daed2d95792651ab01c	3382312
31	lists	2026-11-30 05:34:24.287925+00	t	\\x6348363b72aafd08d0577c1351662edd3f8334bd356ee2d59bb8e01b559158215d951aa59cec65557039be33046ee854	5378896
\.


--
-- Data for Name: adverse_account; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.adverse_account (event_id, client_id, account) FROM stdin;
1433fef8-e3a1-4022-ae7a-6bf3335b9256	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	\\x018ea28c453690dce97bfe1f01385cff318f6899ae0d33283ee236af2acbafff13483880425c3142272d
\.


--
-- Data for Name: adverse_event; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.adverse_event (id, client_id, session_id, number, kind, happened_at, done, replaces, written_by, written_at) FROM stdin;
1433fef8-e3a1-4022-ae7a-6bf3335b9256	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	\N	1	panic	2026-01-02 09:30:00+00	called	\N	97cf309d-b45e-4492-8207-af5484c9e1df	2026-03-03 09:01:00+00
\.


--
-- Data for Name: after_check; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.after_check (session_id, client_id, member_id, reason, due_from, due_until) FROM stdin;
a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	97cf309d-b45e-4492-8207-af5484c9e1df	too_much	2026-03-03 21:04:22+00	2026-03-05 09:04:22+00
\.


--
-- Data for Name: after_check_try; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.after_check_try (id, session_id, client_id, outcome, entered_by, at, seq) FROM stdin;
bb206db4-63ed-47a3-bde2-3743207baea6	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	not_reached	97cf309d-b45e-4492-8207-af5484c9e1df	2026-03-03 09:04:22+00	38
\.


--
-- Data for Name: asking; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.asking (id, client_id, episode_id, number, occasion, measures, asked_by, asked_at, from_at, due_on, until_at, links, closed_as, closed_at, link_holds) FROM stdin;
fe7cbc48-53b9-4249-9c86-e7bea3d2336a	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	0d1af92c-fb5b-437e-a648-6d03d515b568	1	regular	{phq9,gad7}	97cf309d-b45e-4492-8207-af5484c9e1df	2026-03-10 09:04:22+00	2026-03-10 09:04:22+00	2026-03-10	2026-03-24 23:59:00+00	1	\N	\N	t
\.


--
-- Data for Name: asking_words; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.asking_words (asking_id, client_id, event) FROM stdin;
fe7cbc48-53b9-4249-9c86-e7bea3d2336a	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	\\x0104e65116d233d8c13866971842415c9f25530618129ffc0ed30ab5cd
\.


--
-- Data for Name: audit; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.audit (seq, at, kind, member_id, act, client_id, object_id, previous, hash) FROM stdin;
1	2026-03-03 09:00:00+00	member	97cf309d-b45e-4492-8207-af5484c9e1df	client.create	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	\N	\\x1049f89a5ef4bff11e67b37b9945096f203ea0c09e92a8bc7dc4a04461f6529f	\\x25c9e19f1ce07548671942c245239a4b9f3fea9b271e6eb841111a1a72c82017
2	2026-03-03 09:00:00+00	member	97cf309d-b45e-4492-8207-af5484c9e1df	target.create	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	d55df3b6-5f4a-4ee3-90b8-670c687fd8fc	\\x25c9e19f1ce07548671942c245239a4b9f3fea9b271e6eb841111a1a72c82017	\\xd197bdc63a10397926f7b6f51ae152bd064c242130caf1867abe51302a29d7a2
3	2026-03-03 09:01:00+00	member	97cf309d-b45e-4492-8207-af5484c9e1df	session.open	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	\\xd197bdc63a10397926f7b6f51ae152bd064c242130caf1867abe51302a29d7a2	\\xf7e7d7471fe8c1efbaf3e116e374737e68e1639c5a09392b248d17762a0eaba0
4	2026-03-03 09:01:00+00	member	abffe018-c70a-4966-bdba-8db3da1dfa1b	member.invite	\N	\N	\\xf7e7d7471fe8c1efbaf3e116e374737e68e1639c5a09392b248d17762a0eaba0	\\xbaa06ea6c45dd7dd204b9bdb148f6dea1acae4f923ff35575017eab39bbf9c53
5	2026-03-03 09:01:00+00	member	abffe018-c70a-4966-bdba-8db3da1dfa1b	practice.settings.change	\N	\N	\\xbaa06ea6c45dd7dd204b9bdb148f6dea1acae4f923ff35575017eab39bbf9c53	\\xf7146554b45dbf94727ae2f57908e0a306b37be41cd8f035a45a0b132a171e66
6	2026-03-03 09:01:00+00	member	97cf309d-b45e-4492-8207-af5484c9e1df	preset.create	\N	c56663b7-7b10-4acb-97df-4acf250a5af2	\\xf7146554b45dbf94727ae2f57908e0a306b37be41cd8f035a45a0b132a171e66	\\x8f6edba0fd91de70595a790e530c9aa43ee7026aea3832f7a0080daa16c52efb
7	2026-03-03 09:01:00+00	member	97cf309d-b45e-4492-8207-af5484c9e1df	preset.create	\N	6b2cb3cb-875c-45b4-a8da-f45d86783cf1	\\x8f6edba0fd91de70595a790e530c9aa43ee7026aea3832f7a0080daa16c52efb	\\x5a6639d54f7aac04d6411f0f9308686d343a464e2bfd444a6c2028eca487caac
8	2026-03-03 09:01:00+00	member	97cf309d-b45e-4492-8207-af5484c9e1df	preset.put_away	\N	6b2cb3cb-875c-45b4-a8da-f45d86783cf1	\\x5a6639d54f7aac04d6411f0f9308686d343a464e2bfd444a6c2028eca487caac	\\x9e9b1b56ba2ede7f8e663fd71cd155a785e5b8508fea4de281ddfd99e94da400
9	2026-03-03 09:01:00+00	member	97cf309d-b45e-4492-8207-af5484c9e1df	client.change	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	\N	\\x9e9b1b56ba2ede7f8e663fd71cd155a785e5b8508fea4de281ddfd99e94da400	\\x05691ed7ea1b308016f54b03b6cbb831b03f648137b6c4e2e0c72b54a676108c
10	2026-03-03 09:01:00+00	member	97cf309d-b45e-4492-8207-af5484c9e1df	comfort.change	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	\N	\\x05691ed7ea1b308016f54b03b6cbb831b03f648137b6c4e2e0c72b54a676108c	\\xc6e629944d89e862edabc81e29da12f9c2e1cd9ae992dcc0291f2db0c4839ba3
11	2026-03-03 09:01:00+00	member	97cf309d-b45e-4492-8207-af5484c9e1df	safety_plan.change	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	\N	\\xc6e629944d89e862edabc81e29da12f9c2e1cd9ae992dcc0291f2db0c4839ba3	\\x19f49ac8c546e174aeee0f1fea0a39e89e5f2751cbcbbf24a7bd1bcd40922ebf
12	2026-03-03 09:01:00+00	member	97cf309d-b45e-4492-8207-af5484c9e1df	steadying.change	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	\N	\\x19f49ac8c546e174aeee0f1fea0a39e89e5f2751cbcbbf24a7bd1bcd40922ebf	\\xe903b5d71b32a978f8b3019f5048a95f707ad92792875bc5aee73aba51efee69
13	2026-03-03 09:01:00+00	member	97cf309d-b45e-4492-8207-af5484c9e1df	reach.change	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	\N	\\xe903b5d71b32a978f8b3019f5048a95f707ad92792875bc5aee73aba51efee69	\\x5c5a309d1e40dbaa6bcc4e8604615d2dacdf0d3e2fe1e2d8f6f56f158457a681
14	2026-03-03 09:01:00+00	member	97cf309d-b45e-4492-8207-af5484c9e1df	resource.create	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	\N	\\x5c5a309d1e40dbaa6bcc4e8604615d2dacdf0d3e2fe1e2d8f6f56f158457a681	\\x1a31e781cf015cb073a9e64540f9c060aaa7bbbcdda8bcad0dba3aee3ec8ce62
15	2026-03-03 09:01:00+00	member	97cf309d-b45e-4492-8207-af5484c9e1df	event.create	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	\N	\\x1a31e781cf015cb073a9e64540f9c060aaa7bbbcdda8bcad0dba3aee3ec8ce62	\\xc771ca1d2c58cfd7efdf3b9027aad02f3b995518eab0c74eb1d92d8c1fc84189
16	2026-03-03 09:02:00+00	member	97cf309d-b45e-4492-8207-af5484c9e1df	target.change	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	d55df3b6-5f4a-4ee3-90b8-670c687fd8fc	\\xc771ca1d2c58cfd7efdf3b9027aad02f3b995518eab0c74eb1d92d8c1fc84189	\\xc59bc636f42b95446bfa97e9aaa19d552154cea8bed5e222d520ee18a7a919f2
17	2026-03-03 09:02:00+00	member	97cf309d-b45e-4492-8207-af5484c9e1df	target.change	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	d55df3b6-5f4a-4ee3-90b8-670c687fd8fc	\\xc59bc636f42b95446bfa97e9aaa19d552154cea8bed5e222d520ee18a7a919f2	\\xa68f9308be70d688070511390819102896af4a0114ac30bf8f7f758e90b68659
18	2026-03-03 09:02:00+00	member	97cf309d-b45e-4492-8207-af5484c9e1df	plan.cluster	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	\N	\\xa68f9308be70d688070511390819102896af4a0114ac30bf8f7f758e90b68659	\\x5fb8be6d24ebf6740db654a1d3bd0b5d27d7fd7fedf077ae84515e339cbeded0
19	2026-03-03 09:02:00+00	member	97cf309d-b45e-4492-8207-af5484c9e1df	target.create	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	3e46a2b0-f6b9-408b-9262-15381ece7e92	\\x5fb8be6d24ebf6740db654a1d3bd0b5d27d7fd7fedf077ae84515e339cbeded0	\\x96ce70123c1d51323e35761897bd0ba7b13be8fa2043df81ba09991731d0178c
20	2026-03-03 09:02:00+00	member	97cf309d-b45e-4492-8207-af5484c9e1df	plan.move	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	\N	\\x96ce70123c1d51323e35761897bd0ba7b13be8fa2043df81ba09991731d0178c	\\x6d185de8b66cf9f7664e7f00cc19da55ccff76985659b41c1fe6ee1b0eb0aa09
21	2026-03-03 09:02:01+00	member	97cf309d-b45e-4492-8207-af5484c9e1df	entry.keep	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	\\x6d185de8b66cf9f7664e7f00cc19da55ccff76985659b41c1fe6ee1b0eb0aa09	\\xf0b5acf56ba22ab26ec9997ab56721235479ce1a7494f70527a16bce172ad98b
22	2026-03-03 09:02:32+00	member	97cf309d-b45e-4492-8207-af5484c9e1df	entry.keep	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	\\xf0b5acf56ba22ab26ec9997ab56721235479ce1a7494f70527a16bce172ad98b	\\x01effc2db6db941100db609adfb983daac4e870bb983e6dbaf4ad7a80a9b1641
23	2026-03-03 09:02:33+00	member	97cf309d-b45e-4492-8207-af5484c9e1df	entry.keep	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	\\x01effc2db6db941100db609adfb983daac4e870bb983e6dbaf4ad7a80a9b1641	\\xc112ac1631f8fe7539ab4dbcbc85ec7eb81f75154a0bfe9ef07c2f09e4f9605f
24	2026-03-03 09:02:34+00	member	97cf309d-b45e-4492-8207-af5484c9e1df	entry.keep	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	\\xc112ac1631f8fe7539ab4dbcbc85ec7eb81f75154a0bfe9ef07c2f09e4f9605f	\\x0a91ac8fe1aeb7f691af7ee299fdebff5c9adcabfda631c4fb5d59509d55d86e
25	2026-03-03 09:02:35+00	member	97cf309d-b45e-4492-8207-af5484c9e1df	entry.keep	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	\\x0a91ac8fe1aeb7f691af7ee299fdebff5c9adcabfda631c4fb5d59509d55d86e	\\xb1353ba2e1d45206e061f947211ae6a848576d63db3567a5d2436985320cd5ae
26	2026-03-03 09:03:06+00	member	97cf309d-b45e-4492-8207-af5484c9e1df	entry.keep	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	\\xb1353ba2e1d45206e061f947211ae6a848576d63db3567a5d2436985320cd5ae	\\x61d103a36f88d20ee88a1e7131eb298a06ee06d7631dc6d7115c15d337e286f5
27	2026-03-03 09:03:07+00	member	97cf309d-b45e-4492-8207-af5484c9e1df	entry.keep	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	\\x61d103a36f88d20ee88a1e7131eb298a06ee06d7631dc6d7115c15d337e286f5	\\xff93e10ff75b2baa045e58d9f3b13fdc77c1091750da9f1a7d9a24003d9eedb7
28	2026-03-03 09:03:38+00	member	97cf309d-b45e-4492-8207-af5484c9e1df	entry.keep	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	\\xff93e10ff75b2baa045e58d9f3b13fdc77c1091750da9f1a7d9a24003d9eedb7	\\xa13694b44f9536fc8cf813917a9c8c8ac41334c63cb2854b55166a1c25aec401
29	2026-03-03 09:03:39+00	member	97cf309d-b45e-4492-8207-af5484c9e1df	entry.keep	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	\\xa13694b44f9536fc8cf813917a9c8c8ac41334c63cb2854b55166a1c25aec401	\\xd5d2efdad75d79963d4fba96727f91dded5c1dec0ae14a3c30d9ae1c028602a8
30	2026-03-03 09:03:40+00	member	97cf309d-b45e-4492-8207-af5484c9e1df	entry.keep	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	\\xd5d2efdad75d79963d4fba96727f91dded5c1dec0ae14a3c30d9ae1c028602a8	\\x4882c2f71caf5c4930707c1b37c7844094dc76125c476ca20379f0e64d8c2699
31	2026-03-03 09:03:41+00	member	97cf309d-b45e-4492-8207-af5484c9e1df	entry.keep	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	\\x4882c2f71caf5c4930707c1b37c7844094dc76125c476ca20379f0e64d8c2699	\\x73a2d9ebd5e2524778b40da6995126592f13feb23ffa0f31e8278e64bd42241b
32	2026-03-03 09:03:41+00	member	97cf309d-b45e-4492-8207-af5484c9e1df	target.fact	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	d55df3b6-5f4a-4ee3-90b8-670c687fd8fc	\\x73a2d9ebd5e2524778b40da6995126592f13feb23ffa0f31e8278e64bd42241b	\\x0ab87ab28259d3db3f76ad8cd55391b0738090c40822e1354a19584dd186cc92
33	2026-03-03 09:03:41+00	member	97cf309d-b45e-4492-8207-af5484c9e1df	target.fact	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	d55df3b6-5f4a-4ee3-90b8-670c687fd8fc	\\x0ab87ab28259d3db3f76ad8cd55391b0738090c40822e1354a19584dd186cc92	\\x3ec00407725152313ce393d63aba886d1e49428654826093ab6dce902d4a8fec
34	2026-03-03 09:03:41+00	member	97cf309d-b45e-4492-8207-af5484c9e1df	target.fact	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	d55df3b6-5f4a-4ee3-90b8-670c687fd8fc	\\x3ec00407725152313ce393d63aba886d1e49428654826093ab6dce902d4a8fec	\\x1ab777b1621bbfc481cbd654c4f6a3ee83b66f986f8ab342a3ad886ddd67ee12
35	2026-03-03 09:04:12+00	member	97cf309d-b45e-4492-8207-af5484c9e1df	entry.keep	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	\\x1ab777b1621bbfc481cbd654c4f6a3ee83b66f986f8ab342a3ad886ddd67ee12	\\x18dcdaf3d97c3b174743b3396a2b83c1c926be20e76a35c9200e95058b2013c0
36	2026-03-03 09:04:13+00	member	97cf309d-b45e-4492-8207-af5484c9e1df	entry.keep	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	\\x18dcdaf3d97c3b174743b3396a2b83c1c926be20e76a35c9200e95058b2013c0	\\x7892da82b5573763b65d34d3b3e7fb99ff4ea926bb8c874ba7bc7a64ad76c6e6
37	2026-03-03 09:04:14+00	member	97cf309d-b45e-4492-8207-af5484c9e1df	entry.keep	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	\\x7892da82b5573763b65d34d3b3e7fb99ff4ea926bb8c874ba7bc7a64ad76c6e6	\\x2d6f38b536ae524f643c675b8c5334260f7899a78863fdd5d2c24e7551b5b09e
38	2026-03-03 09:04:15+00	member	97cf309d-b45e-4492-8207-af5484c9e1df	entry.keep	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	\\x2d6f38b536ae524f643c675b8c5334260f7899a78863fdd5d2c24e7551b5b09e	\\xb1f82d05ccd02a1ef1c3c0be26a4dd0ce632accdad261005bbebfee23e5ab8a4
39	2026-03-03 09:04:16+00	member	97cf309d-b45e-4492-8207-af5484c9e1df	entry.keep	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	\\xb1f82d05ccd02a1ef1c3c0be26a4dd0ce632accdad261005bbebfee23e5ab8a4	\\xb62d1ec7b430628905cde17e27589c2c4692ab38135641c60f0c55c71a6ec635
40	2026-03-03 09:04:17+00	member	97cf309d-b45e-4492-8207-af5484c9e1df	entry.keep	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	\\xb62d1ec7b430628905cde17e27589c2c4692ab38135641c60f0c55c71a6ec635	\\x8df666ae441d053c85c7019e3b533b2f9ef0dbdd74aad605ec867b06984a68bf
41	2026-03-03 09:04:18+00	member	97cf309d-b45e-4492-8207-af5484c9e1df	entry.keep	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	\\x8df666ae441d053c85c7019e3b533b2f9ef0dbdd74aad605ec867b06984a68bf	\\x07e3d701be716fd69229a43ee4369ab9d95e79ebf548e84063d84a0b92a51950
42	2026-03-03 09:04:19+00	member	97cf309d-b45e-4492-8207-af5484c9e1df	entry.keep	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	\\x07e3d701be716fd69229a43ee4369ab9d95e79ebf548e84063d84a0b92a51950	\\x4a944402d0d967058ac6d910813217afb50385379ede3d139f1cc97905dbd44a
43	2026-03-03 09:04:20+00	member	97cf309d-b45e-4492-8207-af5484c9e1df	entry.keep	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	\\x4a944402d0d967058ac6d910813217afb50385379ede3d139f1cc97905dbd44a	\\xfc8abae0b5531cbc5d1b580d9fb6db85c6d99c5c8c39b12e87e7a8dc2553a348
44	2026-03-03 09:04:21+00	member	97cf309d-b45e-4492-8207-af5484c9e1df	entry.keep	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	\\xfc8abae0b5531cbc5d1b580d9fb6db85c6d99c5c8c39b12e87e7a8dc2553a348	\\x067bc4cd5f6bb58a1dba411442e724e3383eb84c43f37cb2a8561a6217ea36b4
45	2026-03-03 09:04:22+00	member	97cf309d-b45e-4492-8207-af5484c9e1df	entry.keep	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	\\x067bc4cd5f6bb58a1dba411442e724e3383eb84c43f37cb2a8561a6217ea36b4	\\x836336bf4004c34a38a90eb5b693ad8fe0369630a216c9f7addd20dd246af8a3
46	2026-03-03 09:04:22+00	member	97cf309d-b45e-4492-8207-af5484c9e1df	session.view	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	\\x836336bf4004c34a38a90eb5b693ad8fe0369630a216c9f7addd20dd246af8a3	\\x95f8fac76796caa69cfe93cbdfed3affbb46119238f766296637438a1ba066ea
47	2026-03-03 09:04:22+00	member	97cf309d-b45e-4492-8207-af5484c9e1df	session.draft	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	\\x95f8fac76796caa69cfe93cbdfed3affbb46119238f766296637438a1ba066ea	\\x912d52250cca117837236defdc5b88f2a34d7c97dc2780bafc24fe43e654c198
48	2026-03-03 09:04:22+00	member	97cf309d-b45e-4492-8207-af5484c9e1df	session.view	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	\\x912d52250cca117837236defdc5b88f2a34d7c97dc2780bafc24fe43e654c198	\\xce78ce3d0900ffd57624c6e9dc6745bc440da586c116c583b497247bf79e60b1
49	2026-03-03 09:04:22+00	member	97cf309d-b45e-4492-8207-af5484c9e1df	session.close	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	\\xce78ce3d0900ffd57624c6e9dc6745bc440da586c116c583b497247bf79e60b1	\\x298a848638dac3a52f590de18491051a11b8b95a359cb58f52c6f0149e38b2af
50	2026-03-03 09:04:22+00	member	97cf309d-b45e-4492-8207-af5484c9e1df	session.check	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	\\x298a848638dac3a52f590de18491051a11b8b95a359cb58f52c6f0149e38b2af	\\x726be2d3e9a8be3685cee42a8749bb0773e86c19a308c8e1ab137f8528b3f4bb
51	2026-03-03 09:04:22+00	member	97cf309d-b45e-4492-8207-af5484c9e1df	session.note.view	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	\\x726be2d3e9a8be3685cee42a8749bb0773e86c19a308c8e1ab137f8528b3f4bb	\\x958d05054ce8222395eafb19170266f7d694d5879b1d2ee8a9fc821da573c241
52	2026-03-03 09:04:22+00	member	97cf309d-b45e-4492-8207-af5484c9e1df	session.note.save	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	\\x958d05054ce8222395eafb19170266f7d694d5879b1d2ee8a9fc821da573c241	\\x98097ef2f1fe09f5ef69adfc1a5c8d7cedcbee9b85abcdb128281ec6083d347c
57	2026-03-10 09:04:22+00	member	97cf309d-b45e-4492-8207-af5484c9e1df	code.make	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	9f978597-2bcd-4d16-a04d-f2164581b6e0	\\x65667f5658411485e8c61af98c5606767af1ad452f94a547023081959231ded2	\\x3194c2981475587e6ba09d1396b6f3a42ebc9de7668aed0fdaf829791c749d76
58	2026-03-10 09:04:22+00	visitor	\N	seat.claim	\N	9f978597-2bcd-4d16-a04d-f2164581b6e0	\\x3194c2981475587e6ba09d1396b6f3a42ebc9de7668aed0fdaf829791c749d76	\\x7fb90ec268cf5a9a30d637bc85bb19f947604219019ce7f84b5566d0b00caaa9
59	2026-03-10 09:04:22+00	member	97cf309d-b45e-4492-8207-af5484c9e1df	rehearsal.prepare	96cb1b9a-8f27-4225-bc8d-87e930f99ddf	\N	\\x7fb90ec268cf5a9a30d637bc85bb19f947604219019ce7f84b5566d0b00caaa9	\\x466de7963a8ce91cdcee0fde680118a73d0085762d745a4816f32b2424167d26
61	2026-03-10 09:04:22+00	member	97cf309d-b45e-4492-8207-af5484c9e1df	client.create	2cd1321e-f179-48a1-9f8b-61573100d563	\N	\\xf0de5e10f6747fd0d22b8bb611c07af0a61ddae8b3204c1b97159c8103b2c4c2	\\xeb2ffdb94b46660aeb5f8ddeb020e596d1e24b87d59eac82d804dcc05895f704
62	2026-03-10 09:04:22+00	member	97cf309d-b45e-4492-8207-af5484c9e1df	client.archive	2cd1321e-f179-48a1-9f8b-61573100d563	\N	\\xeb2ffdb94b46660aeb5f8ddeb020e596d1e24b87d59eac82d804dcc05895f704	\\xc1bf3167e58876c5c64e36f5696f956d9112538019e91d2f7b2cfb2e5455aa22
64	2026-03-10 09:04:22+00	member	21c5d1e2-9f0b-4592-8e1d-a6f424519b8a	wording.use	\N	a58f01cd-1ab7-4680-afed-9ca63c0b4f71	\\x7aec8df0e3a41cafe17b691c574349727f6b2c59917bf04982b2e15c7e9a63c0	\\x9502e17357610a02b87273c7b48b108cad83e6838656ad66355c48c84f104127
66	2026-03-10 09:04:22+00	member	21c5d1e2-9f0b-4592-8e1d-a6f424519b8a	wording.use	\N	6bbf7b54-07d7-4deb-96e1-e47252d3960f	\\xe755f5f1e8129595812680b611f3028289c6888c09748b3c33f00c05617312f2	\\xf6bfe46c2bfad47661f5af56a4c74b53dd347f17f9ec32abbc3f18ee376a1973
67	2026-03-10 09:04:22+00	member	21c5d1e2-9f0b-4592-8e1d-a6f424519b8a	wording.load	\N	b3267445-735c-4d35-adeb-f7f1562eca56	\\xf6bfe46c2bfad47661f5af56a4c74b53dd347f17f9ec32abbc3f18ee376a1973	\\x74aa1bc0c64533f31e86db8e81a8a40ad13a1697b3471abd2d46d09a9bfbcfcd
68	2026-03-10 09:04:22+00	member	97cf309d-b45e-4492-8207-af5484c9e1df	schedule.change	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	\N	\\x74aa1bc0c64533f31e86db8e81a8a40ad13a1697b3471abd2d46d09a9bfbcfcd	\\x662ef76461aa663275fe54d33fac081d4ad317412c22ef6e34da85fe97d78df5
69	2026-03-10 09:04:22+00	member	97cf309d-b45e-4492-8207-af5484c9e1df	measure.enter	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	\N	\\x662ef76461aa663275fe54d33fac081d4ad317412c22ef6e34da85fe97d78df5	\\x25891e7c6d8d0be92b7d5af4084536d2509c438d4ed57f9791437e78853c306f
71	2026-03-10 09:04:22+00	errand	\N	errand.open	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	fe7cbc48-53b9-4249-9c86-e7bea3d2336a	\\xb4c7978353f3e189fc11ca04d6bb832c62b4fe80416a5145849079f9d4ac8e0a	\\x92a3ec7ebf57b51fdf90baac12c9074a0c8ed700eb3a5e4f6134caf9dd94058a
72	2026-03-10 09:04:22+00	errand	\N	errand.open	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	fe7cbc48-53b9-4249-9c86-e7bea3d2336a	\\x92a3ec7ebf57b51fdf90baac12c9074a0c8ed700eb3a5e4f6134caf9dd94058a	\\x53a0a958fe9a55e9be3734e6452af8298bb43635cb2da6f3377ce31a56ead9c5
73	2026-03-10 09:04:22+00	errand	\N	errand.hand_in	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	fe7cbc48-53b9-4249-9c86-e7bea3d2336a	\\x53a0a958fe9a55e9be3734e6452af8298bb43635cb2da6f3377ce31a56ead9c5	\\x7bec9ae6a0eb0600461ffc38f3f200acb164212c32e142c843eacfba971ca413
74	2026-03-10 09:04:22+00	errand	\N	errand.open	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	fe7cbc48-53b9-4249-9c86-e7bea3d2336a	\\x7bec9ae6a0eb0600461ffc38f3f200acb164212c32e142c843eacfba971ca413	\\x206cb4cf12cfe5ac6673a2fde8b295ce7ddda98495d7d0ba7500109ce3930d87
75	2026-03-10 09:04:22+00	member	97cf309d-b45e-4492-8207-af5484c9e1df	account.mail.change	\N	\N	\\x206cb4cf12cfe5ac6673a2fde8b295ce7ddda98495d7d0ba7500109ce3930d87	\\x9ca12ec6364889f3aaea5b645bdaebf573015331d41c9a89ed90c9f328f58632
53	2026-03-10 09:04:22+00	member	97cf309d-b45e-4492-8207-af5484c9e1df	session.open	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	9f978597-2bcd-4d16-a04d-f2164581b6e0	\\x98097ef2f1fe09f5ef69adfc1a5c8d7cedcbee9b85abcdb128281ec6083d347c	\\x10cfc87ad4796d06daccb47d086c56c2448687929ff024ce9c67d3daa3c31a2f
54	2026-03-10 09:04:22+00	member	97cf309d-b45e-4492-8207-af5484c9e1df	link.make	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	9f978597-2bcd-4d16-a04d-f2164581b6e0	\\x10cfc87ad4796d06daccb47d086c56c2448687929ff024ce9c67d3daa3c31a2f	\\xe14815c74e7075597b513d14ffc028f4a461ca4450ecb7a6c136cc9dd6d590f2
55	2026-03-10 09:04:22+00	visitor	\N	seat.claim	\N	9f978597-2bcd-4d16-a04d-f2164581b6e0	\\xe14815c74e7075597b513d14ffc028f4a461ca4450ecb7a6c136cc9dd6d590f2	\\x507adb4a1e0373c90a330cbdbb2cf4a832728de4c885adb8d380e0cce60e2f44
56	2026-03-10 09:04:22+00	member	97cf309d-b45e-4492-8207-af5484c9e1df	session.admit	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	9f978597-2bcd-4d16-a04d-f2164581b6e0	\\x507adb4a1e0373c90a330cbdbb2cf4a832728de4c885adb8d380e0cce60e2f44	\\x65667f5658411485e8c61af98c5606767af1ad452f94a547023081959231ded2
60	2026-03-10 09:04:22+00	member	97cf309d-b45e-4492-8207-af5484c9e1df	session.open	96cb1b9a-8f27-4225-bc8d-87e930f99ddf	f0b2b007-5c13-40ca-8c43-e8d15aa70718	\\x466de7963a8ce91cdcee0fde680118a73d0085762d745a4816f32b2424167d26	\\xf0de5e10f6747fd0d22b8bb611c07af0a61ddae8b3204c1b97159c8103b2c4c2
63	2026-03-10 09:04:22+00	member	21c5d1e2-9f0b-4592-8e1d-a6f424519b8a	wording.load	\N	a58f01cd-1ab7-4680-afed-9ca63c0b4f71	\\xc1bf3167e58876c5c64e36f5696f956d9112538019e91d2f7b2cfb2e5455aa22	\\x7aec8df0e3a41cafe17b691c574349727f6b2c59917bf04982b2e15c7e9a63c0
65	2026-03-10 09:04:22+00	member	21c5d1e2-9f0b-4592-8e1d-a6f424519b8a	wording.load	\N	6bbf7b54-07d7-4deb-96e1-e47252d3960f	\\x9502e17357610a02b87273c7b48b108cad83e6838656ad66355c48c84f104127	\\xe755f5f1e8129595812680b611f3028289c6888c09748b3c33f00c05617312f2
70	2026-03-10 09:04:22+00	member	97cf309d-b45e-4492-8207-af5484c9e1df	asking.make	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	\N	\\x25891e7c6d8d0be92b7d5af4084536d2509c438d4ed57f9791437e78853c306f	\\xb4c7978353f3e189fc11ca04d6bb832c62b4fe80416a5145849079f9d4ac8e0a
\.


--
-- Data for Name: client; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.client (id, number, opened_on, archived_at, seizures, eye_condition, version, plan_version) FROM stdin;
456b8bda-4398-44a3-aa81-5fe2fa4b0c62	1	2026-03-03	\N	no	no	2	7
96cb1b9a-8f27-4225-bc8d-87e930f99ddf	2	2026-03-10	\N	no	no	1	1
2cd1321e-f179-48a1-9f8b-61573100d563	3	2026-03-10	2026-03-10 09:04:22+00	yes	not_asked	2	1
\.


--
-- Data for Name: client_details; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.client_details (client_id, name, addressed_as, phone, contact_name, contact_phone, usual_location, version) FROM stdin;
456b8bda-4398-44a3-aa81-5fe2fa4b0c62	\\x01f4fabe0494d2e9d41515f88c2cc7a753df9e799a6081e1f3f31381cb16230b041e9930a2c1a136a3ec4f2d47418f37b2552bf6	\\x015f0c4c03ef59ab2a6db0d4cb46120dd005133249f030496278ce173ea0296bd8cca7f06640	\\x01af62e4babfd864d84b3d1649b87bb74aaf75d09c5b5cfc675302414752da1e1ba854cb57e5b943d6ff99	\\x0132211aa7dd22740b61768ae78f62efe28c077281649d4d9f0f6dfd5d5a526f096ec197537ad83aa9822567dee27a	\\x019c674067d0b4dfa12b4c49d1abe339f6aa07d302ae6b27b7fad063e7a621b5bb106d290dc5f3f5	\\x01d8aa7bc5128b06b0e42d6651d104427189d253e0d358a070a10b123d80a291f51397302a9104235efd77a3a28c120b9bafad5fc640613f	2
96cb1b9a-8f27-4225-bc8d-87e930f99ddf	\\x01f959b60780aa1c7efcbfde60c223d43b892e62b47f57395caa6f6f5fa537e992c6d8232352	\\x0113d61043798606c7224eaf7fd0d7e49a4995fde589d6f0908b11f4d0	\\x013656d109923e874b9745bd9fc21e5b9a0bf2a27f148d32af0c812907	\\x01c7bab71c016a9793f5fb1a546d4fdad14f010c995e6503bf74de688e	\\x016f7d9273f2fd9053bec21e3b5962f72ae4e42429eec3cebae95fc05c	\\x014a39b4d51a302a2f02a719c2fe0d05b4ef447e222079a48b847f7304	1
2cd1321e-f179-48a1-9f8b-61573100d563	\\x01a9c8a1a920e3c9c988a4898ddc1a89ee600be9d5f0eea14b400da18b7e04e741e65a1d5c88f8d31640	\\x0189d642531b3708798a1ea6827cbe9852969fff5d5354ea6b69c3ca10	\\x015088c52035bedc69b500ba8894520c37863ab67a61c17855b5ae9aa2	\\x010381eb61f9267d5c950c04e9afa7b2bd1df2dfaf3355a86e40c9e0b3	\\x01d5b8ada657da1586732a1b9c545a848971b752a7183990633135430b	\\x0108b7a695f82706b86c0c5cf5294fd4662a789909cd599a7348a19312	1
\.


--
-- Data for Name: client_key; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.client_key (client_id, key_id, wrapped) FROM stdin;
456b8bda-4398-44a3-aa81-5fe2fa4b0c62	1	\\x0134932634d180695f2f8b0e949c76b7702e55b50c78028a5e44d62781d3b048c0216db0b5377212739f896d0269cad5154638d3779d7c6cdb6f498690
96cb1b9a-8f27-4225-bc8d-87e930f99ddf	1	\\x01d616e9578c2ea28e0df9203019818fc56b701608d4dab0a6350cfc6191f63bc08334d696f7ef0b665832fc12d663c97e067a076a30bd1f6954e3c54e
2cd1321e-f179-48a1-9f8b-61573100d563	1	\\x01ce9a26909ebfe1f2ab82de0a969668e053ffd9d7dfa8792a20ccbb4beb73ca5f9879f09c0b3ce831f211a95ec079ca08e30e14c15c5de3340525f0a7
\.


--
-- Data for Name: client_reach; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.client_reach (client_id, phone_use, contact_use, help_from_here, tried_on, help_there, written_at, version) FROM stdin;
456b8bda-4398-44a3-aa81-5fe2fa4b0c62	call	message	\\x01f38ed1aab2347cb415dfabfa113c4a8fb45aba1b02805b525a51f70871b1ad9dc5c62631a1027284ae85	2026-03-01	\\x01adb57d918aaaffca7f788212f3b9aaf70427272ef149dcf95f5b890ff60e11	2026-03-03 09:01:00+00	1
\.


--
-- Data for Name: closing_draft; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.closing_draft (session_id, client_id, typed, written_by, written_at, version) FROM stdin;
a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	\\x01bbc1332790811c41ddc78e0bc003567d12328162b1ee300039b8ea7e	97cf309d-b45e-4492-8207-af5484c9e1df	2026-03-03 09:04:22+00	2
\.


--
-- Data for Name: cluster; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.cluster (id, client_id, number, name, theme, earliest_id, worst_id, version) FROM stdin;
7a33823f-ad06-4157-a857-56474fb1d497	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	1	\\x01079a7f9286e0984fe96c2abc7e3f449611eb444ce23e42927bf215d5fc09eef08be74bd090899595	safety	d55df3b6-5f4a-4ee3-90b8-670c687fd8fc	\N	2
\.


--
-- Data for Name: comfort; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.comfort (client_id, path, dot, comfort, filled_at, version) FROM stdin;
456b8bda-4398-44a3-aa81-5fe2fa4b0c62	eight	2.5	{"level": 60, "pitch": 400, "sweep": "constant", "timbre": "wood", "colours": "lake", "tone_ms": 90, "vibration": true}	2026-03-03 09:01:00+00	1
\.


--
-- Data for Name: episode; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.episode (id, client_id, number, begun_at, started_at, reprocessed_at, last_at, sessions, ended_at, reason, judged_by, version) FROM stdin;
0d1af92c-fb5b-437e-a648-6d03d515b568	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	1	2026-03-03 09:01:00+00	2026-03-03 09:01:00+00	2026-03-03 09:02:06+00	2026-03-10 09:04:22+00	2	\N	\N	\N	1
\.


--
-- Data for Name: episode_measure; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.episode_measure (episode_id, measure, client_id, first_total, first_at, last_total, last_at, end_total, end_at, totals) FROM stdin;
0d1af92c-fb5b-437e-a648-6d03d515b568	pcl5	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	40	2026-03-10 09:04:22+00	40	2026-03-10 09:04:22+00	\N	\N	1
0d1af92c-fb5b-437e-a648-6d03d515b568	phq9	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	9	2026-03-10 09:04:22+00	9	2026-03-10 09:04:22+00	\N	\N	1
\.


--
-- Data for Name: fact; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.fact (id, client_id, session_id, target_id, set_id, kind, code, because, moment, replaces, first_id, entered_by, at, seq) FROM stdin;
1a635b9e-64dd-4a56-97d1-33f19289de4f	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	d55df3b6-5f4a-4ee3-90b8-670c687fd8fc	9068a7b5-87f9-4fe1-98a2-08c5e484d4a9	mark	same	\N	after_set	\N	\N	97cf309d-b45e-4492-8207-af5484c9e1df	2026-03-03 09:03:38+00	17
c3c20c3c-7802-481b-87ff-56885d17d666	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	d55df3b6-5f4a-4ee3-90b8-670c687fd8fc	9068a7b5-87f9-4fe1-98a2-08c5e484d4a9	mark	changing	\N	after_set	1a635b9e-64dd-4a56-97d1-33f19289de4f	1a635b9e-64dd-4a56-97d1-33f19289de4f	97cf309d-b45e-4492-8207-af5484c9e1df	2026-03-03 09:03:39+00	18
725d9206-d1df-45cf-9319-ca6d8cb88b3d	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	d55df3b6-5f4a-4ee3-90b8-670c687fd8fc	9068a7b5-87f9-4fe1-98a2-08c5e484d4a9	saw	glazed	\N	after_set	\N	\N	97cf309d-b45e-4492-8207-af5484c9e1df	2026-03-03 09:03:40+00	19
8dd4074b-1f59-4b2b-815a-1ee7fc153f36	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	d55df3b6-5f4a-4ee3-90b8-670c687fd8fc	9068a7b5-87f9-4fe1-98a2-08c5e484d4a9	tried	arousal	\N	after_set	\N	\N	97cf309d-b45e-4492-8207-af5484c9e1df	2026-03-03 09:03:41+00	20
b6e94c5d-c74e-4968-9848-2102ab31278d	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	d55df3b6-5f4a-4ee3-90b8-670c687fd8fc	\N	procedure	recent_event	\N	\N	\N	\N	97cf309d-b45e-4492-8207-af5484c9e1df	2026-03-03 09:03:41+00	21
4488cabb-2dec-4595-b987-6ec1e6d6c1e5	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	d55df3b6-5f4a-4ee3-90b8-670c687fd8fc	\N	scan	felt	\N	\N	\N	\N	97cf309d-b45e-4492-8207-af5484c9e1df	2026-03-03 09:03:41+00	23
de393148-14a1-469a-88ce-510c61f2a955	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	d55df3b6-5f4a-4ee3-90b8-670c687fd8fc	11e9e545-76d3-4a46-92f1-12fcbc5875b4	too_much	stopped	\N	after_set	\N	\N	97cf309d-b45e-4492-8207-af5484c9e1df	2026-03-03 09:04:12+00	25
3e44b331-9f56-4814-a2cf-ef13381128b4	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	d55df3b6-5f4a-4ee3-90b8-670c687fd8fc	11e9e545-76d3-4a46-92f1-12fcbc5875b4	showed	orient	\N	after_set	\N	\N	97cf309d-b45e-4492-8207-af5484c9e1df	2026-03-03 09:04:13+00	26
ed312c76-078d-42cd-a88a-0bb524c401ca	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	d55df3b6-5f4a-4ee3-90b8-670c687fd8fc	11e9e545-76d3-4a46-92f1-12fcbc5875b4	belief	another	\N	after_set	\N	\N	97cf309d-b45e-4492-8207-af5484c9e1df	2026-03-03 09:04:14+00	27
2fa89417-fb50-4c19-8fcd-2c78a6eb1bc3	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	d55df3b6-5f4a-4ee3-90b8-670c687fd8fc	\N	decided	incomplete	\N	\N	\N	\N	97cf309d-b45e-4492-8207-af5484c9e1df	2026-03-03 09:04:22+00	37
\.


--
-- Data for Name: hour_fact; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.hour_fact (id, client_id, session_id, kind, code, because, again, replaces, entered_by, at, seq) FROM stdin;
e2c32fee-e18c-4c2f-94cb-caa9fdb0ab73	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	answered	acute	\N	f	\N	97cf309d-b45e-4492-8207-af5484c9e1df	2026-03-03 09:04:19+00	32
4dde766d-ea1f-49b9-af68-b6d90bf475e7	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	answered	\N	\N	f	e2c32fee-e18c-4c2f-94cb-caa9fdb0ab73	97cf309d-b45e-4492-8207-af5484c9e1df	2026-03-03 09:04:20+00	33
cf3cd889-9be7-44be-a472-9991efc8c8ac	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	passed	risk	judgement	f	\N	97cf309d-b45e-4492-8207-af5484c9e1df	2026-03-03 09:04:21+00	34
6b88a491-5440-4978-a847-9fd164946f0d	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	time	60+10	\N	f	\N	97cf309d-b45e-4492-8207-af5484c9e1df	2026-03-03 09:04:22+00	35
8f6c4d3a-de8e-43ea-85af-4e9292851a86	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	9f978597-2bcd-4d16-a04d-f2164581b6e0	answered	another_place	\N	f	\N	97cf309d-b45e-4492-8207-af5484c9e1df	2026-03-10 09:04:22+00	40
95d50dd0-6934-40d8-abb8-71c193f96c66	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	9f978597-2bcd-4d16-a04d-f2164581b6e0	answered	private	\N	f	\N	97cf309d-b45e-4492-8207-af5484c9e1df	2026-03-10 09:04:22+00	41
\.


--
-- Data for Name: mail_address; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.mail_address (member_id, address, changed_at) FROM stdin;
97cf309d-b45e-4492-8207-af5484c9e1df	hofer@practice.example	2026-03-10 09:04:22+00
\.


--
-- Data for Name: practice; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.practice (singleton, instance, name, zone, emergency_number, demo, day_order, clock, tells_whom, minutes, reserve, check_from, check_until, stuck_after, places, crisis_words, weeks_without, points_pcl5, points_anxiety5, told_too, flag_hours, items_at_once, reading_hours, single_courses, direct_calls, unseen_seconds) FROM stdin;
t	eeb7d39c-12d2-443b-ba9a-3be3ef55ca9e	Practice	UTC	112	f	month_first	12	t	90	15	12	48	3	Fjordgata	The night line of the practice.	8	15	4	\N	24	36		t	t	8
\.


--
-- Data for Name: practice_snapshot; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.practice_snapshot (id, first_day, last_day, made_at, made_by, figures) FROM stdin;
\.


--
-- Data for Name: preset; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.preset (id, member_id, name, purpose, eyes, ears, hands, rate, width, cycles, made_at, put_away_at, version) FROM stdin;
ab4f8aec-095b-4bb7-9cc2-3324e3febb1a	\N	Slow	processing	t	f	f	0.8	18	24	2026-11-30 05:34:23.827717+00	\N	1
c8513fea-a42d-4aa9-9a6b-5a1a65f9a049	\N	Standard	processing	t	f	f	1	18	24	2026-11-30 05:34:23.827717+00	\N	1
84f824f5-83f4-4125-96a8-7f1f5de1e802	\N	Fast	processing	t	f	f	1.2	18	24	2026-11-30 05:34:23.827717+00	\N	1
7be225b6-3664-41bc-aeef-16333de89dd4	\N	Calm place	calm_place	t	f	f	0.5	18	6	2026-11-30 05:34:23.827717+00	\N	1
c56663b7-7b10-4acb-97df-4acf250a5af2	97cf309d-b45e-4492-8207-af5484c9e1df	Evening	processing	t	f	f	0.9	16	30	2026-03-03 09:01:00+00	\N	1
6b2cb3cb-875c-45b4-a8da-f45d86783cf1	97cf309d-b45e-4492-8207-af5484c9e1df	Given up	processing	t	f	f	0.9	16	30	2026-03-03 09:01:00+00	2026-03-03 09:01:00+00	2
\.


--
-- Data for Name: process_note; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.process_note (id, session_id, client_id, set_id, moment, words, replaces, entered_by, at, seq) FROM stdin;
f60d6696-35e5-4fb0-b43e-ee0d3e803f57	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	cebd9694-7e8e-40ec-b102-48a90778ad66	after_set	\\x017392ac1352d8d5008a6bc211eee73ec0c35ff23b61192757e2a99b7d78da623823a381d209fe415fd4f11436960330	\N	97cf309d-b45e-4492-8207-af5484c9e1df	2026-03-03 09:02:32+00	9
4d082863-f423-4d29-95c3-ff718bdccf19	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	cebd9694-7e8e-40ec-b102-48a90778ad66	after_set	\\x013c7c84dcaa6cb1f5cbf11a487805fba8f7a9866dcd180a52f9ddcfbf5dd365edbe6ec3725df23c137fc8823b965a79db7a24aa1e	f60d6696-35e5-4fb0-b43e-ee0d3e803f57	97cf309d-b45e-4492-8207-af5484c9e1df	2026-03-03 09:02:33+00	10
\.


--
-- Data for Name: rating; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.rating (id, client_id, session_id, target_id, set_id, scale, value, moment, replaces, entered_by, at, seq, first_id, segment, from_client) FROM stdin;
a6293c90-17af-49d5-81b2-eba34bce4b5d	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	\N	d55df3b6-5f4a-4ee3-90b8-670c687fd8fc	\N	sud	8	assessment	\N	97cf309d-b45e-4492-8207-af5484c9e1df	2026-03-03 09:00:00+00	1	\N	\N	f
a81f7377-c2f2-4d78-ae3a-e535b768dab8	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	\N	d55df3b6-5f4a-4ee3-90b8-670c687fd8fc	\N	voc	2	assessment	\N	97cf309d-b45e-4492-8207-af5484c9e1df	2026-03-03 09:00:00+00	2	\N	\N	f
84e19274-6411-4d9b-800a-e7f52cb1bbb1	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	d55df3b6-5f4a-4ee3-90b8-670c687fd8fc	\N	sud	7	assessment	\N	97cf309d-b45e-4492-8207-af5484c9e1df	2026-03-03 09:02:00+00	4	\N	\N	f
c3ea3d6a-03e3-4cd3-ae35-fa6d30be8307	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	d55df3b6-5f4a-4ee3-90b8-670c687fd8fc	\N	voc	3	assessment	\N	97cf309d-b45e-4492-8207-af5484c9e1df	2026-03-03 09:02:00+00	5	\N	\N	f
816d81b7-2838-4dfe-93e0-a5d1a50cdfd1	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	d55df3b6-5f4a-4ee3-90b8-670c687fd8fc	\N	sud	8	assessment	84e19274-6411-4d9b-800a-e7f52cb1bbb1	97cf309d-b45e-4492-8207-af5484c9e1df	2026-03-03 09:02:00+00	6	84e19274-6411-4d9b-800a-e7f52cb1bbb1	\N	f
88047e23-334b-4f55-a94d-2b8c74320fe7	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	d55df3b6-5f4a-4ee3-90b8-670c687fd8fc	\N	sud	8	back_at_target	\N	97cf309d-b45e-4492-8207-af5484c9e1df	2026-03-03 09:02:01+00	7	\N	\N	f
ba9040f3-5ab6-4013-9e6b-9aba74fdd2ff	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	d55df3b6-5f4a-4ee3-90b8-670c687fd8fc	cebd9694-7e8e-40ec-b102-48a90778ad66	sud	9	after_set	\N	97cf309d-b45e-4492-8207-af5484c9e1df	2026-03-03 09:02:34+00	11	\N	\N	f
e8ffcc3f-647f-4873-96db-649af5782658	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	d55df3b6-5f4a-4ee3-90b8-670c687fd8fc	cebd9694-7e8e-40ec-b102-48a90778ad66	sud	6	after_set	ba9040f3-5ab6-4013-9e6b-9aba74fdd2ff	97cf309d-b45e-4492-8207-af5484c9e1df	2026-03-03 09:02:35+00	12	ba9040f3-5ab6-4013-9e6b-9aba74fdd2ff	\N	f
6e7785d7-ff3b-4199-b317-963397c61a07	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	d55df3b6-5f4a-4ee3-90b8-670c687fd8fc	3120eea4-279d-48db-9f98-219ef5cfba2f	voc	4	installation	\N	97cf309d-b45e-4492-8207-af5484c9e1df	2026-03-03 09:03:06+00	14	\N	\N	f
57eccdd8-4cad-4155-b68d-44b355a9f501	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	d55df3b6-5f4a-4ee3-90b8-670c687fd8fc	3120eea4-279d-48db-9f98-219ef5cfba2f	voc	\N	installation	6e7785d7-ff3b-4199-b317-963397c61a07	97cf309d-b45e-4492-8207-af5484c9e1df	2026-03-03 09:03:07+00	15	6e7785d7-ff3b-4199-b317-963397c61a07	\N	f
a362e7ab-c8cf-4ecf-99c9-d828d515b7bf	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	d55df3b6-5f4a-4ee3-90b8-670c687fd8fc	\N	sud	3	back_at_target	\N	97cf309d-b45e-4492-8207-af5484c9e1df	2026-03-03 09:03:41+00	22	\N	1	f
5e55523a-2469-47ad-8a98-a519179101d5	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	d55df3b6-5f4a-4ee3-90b8-670c687fd8fc	11e9e545-76d3-4a46-92f1-12fcbc5875b4	sud	6	after_set	\N	97cf309d-b45e-4492-8207-af5484c9e1df	2026-03-03 09:04:18+00	31	\N	\N	t
454396c9-c2b0-47f1-90b1-37b60c0bc502	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	d55df3b6-5f4a-4ee3-90b8-670c687fd8fc	\N	sud	5	closing	\N	97cf309d-b45e-4492-8207-af5484c9e1df	2026-03-03 09:04:22+00	36	\N	\N	f
\.


--
-- Data for Name: reach_step; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.reach_step (id, client_id, session_id, step, replaces, entered_by, at, seq) FROM stdin;
ad426e9e-1bf6-424e-a618-f678b7d90e0a	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	no_answer	\N	97cf309d-b45e-4492-8207-af5484c9e1df	2026-03-03 09:04:15+00	28
\.


--
-- Data for Name: resource; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.resource (id, client_id, number, cue, image, body_feeling, helped, on_offer, found_at, version) FROM stdin;
72f051b0-e41f-42d7-9834-97678db8820c	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	1	\\x010b0fac4c539ef17cdd27ffa0b3b0b0f2b9e86d690ab5fca90ddfbf4520340744	\\x0193740b69031b2ed97e7f1a3ca19b946e66be6b351106ec334cf13217fdc4c0cdea370d2a6f8ec46f1f4d41	\\x01f80957c9f35bcc0797aadec0edc79096dba1dd8c39cc78cbece23628	yes	t	2026-03-03 09:01:00+00	1
\.


--
-- Data for Name: response; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.response (id, client_id, episode_id, number, measure, rules, occasion, answered_at, total, prorated, points, by_client, replaces, withdrawn, entered_by, kept_at, asking_id, wording_id, page) FROM stdin;
0e3c21be-7b13-4c94-acad-9911021ce8ee	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	0d1af92c-fb5b-437e-a648-6d03d515b568	1	pcl5	1	intake	2026-03-10 09:04:22+00	40	f	15	f	\N	f	97cf309d-b45e-4492-8207-af5484c9e1df	2026-03-10 09:04:22+00	\N	\N	\N
61a6a516-ff8f-4fd6-8e16-318232d51dcf	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	0d1af92c-fb5b-437e-a648-6d03d515b568	2	phq9	1	regular	2026-03-10 09:04:22+00	9	f	6	t	\N	f	\N	2026-03-10 09:04:22+00	fe7cbc48-53b9-4249-9c86-e7bea3d2336a	a58f01cd-1ab7-4680-afed-9ca63c0b4f71	54830fe2-dbf0-4b44-b0bf-af9b2b2c8d37
\.


--
-- Data for Name: response_answers; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.response_answers (response_id, client_id, answers, event) FROM stdin;
0e3c21be-7b13-4c94-acad-9911021ce8ee	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	\\x01db2586d7cd5e89d99810dd02b127d8ac1c5a4da49946bcd95d2527cdc82b8d9cd80c08003a3f35487c13aef33c580e921d424c192032e7708c5bf9c8504704279212c6	\\x0150cc9efde110a18666085056e3dd8904d57e73cd9a5c5e6d784d43cfa4b0e2608430667576875b8e
61a6a516-ff8f-4fd6-8e16-318232d51dcf	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	\\x014fae322d2aadd2f19e394b6b1353c5d715f8eab591cd32a8e202d4ebcd2a3211f505d8062af9fa0b4f763d3a81	\\x01107de75f0813d1c6d37ae3177e4c509b4bdd097bbeef902c12092aa6
\.


--
-- Data for Name: response_draft; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.response_draft (id, asking_id, client_id, measure, answers, version, kept_at, page, sending, wording_id) FROM stdin;
17f63f74-263c-4ad4-8e98-10c7b1e955f2	fe7cbc48-53b9-4249-9c86-e7bea3d2336a	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	gad7	\\x019fd3e6539943e9938cf4a648c4d735a95499f36b0ca75c741f99210cd736d11c00a184604e5146afb8	1	2026-03-10 09:04:22+00	a65048cf-552c-40ca-9c75-4871ba5c387f	1	6bbf7b54-07d7-4deb-96e1-e47252d3960f
\.


--
-- Data for Name: risk_flag; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.risk_flag (response_id, client_id, says, raised_at, done, done_at, done_by) FROM stdin;
61a6a516-ff8f-4fd6-8e16-318232d51dcf	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	flag	2026-03-10 09:04:22+00	\N	\N	\N
\.


--
-- Data for Name: risk_mail; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.risk_mail (response_id, client_id, member_id, at) FROM stdin;
\.


--
-- Data for Name: risk_told; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.risk_told (response_id, client_id, member_id, at) FROM stdin;
\.


--
-- Data for Name: safety_plan; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.safety_plan (client_id, signs, helps, people, places, professionals, surroundings, review_on, written_at, version) FROM stdin;
456b8bda-4398-44a3-aa81-5fe2fa4b0c62	\\x01ec6a2982e8cfefe397ca54a0b9f1be849e011075c29cb192cbd08a4c3d9312b80e25ee4c30d8	\\x01809626929fe6e81fb40bc92a29f09dd2ece286757a61617ddc31674ce35511b0225d7466ec3c	\\x01f06d0d59f65aa46d5736f5b5f453904e3f95c119a18da5ecc114ec36	\\x0184c27b52d4393868f9141841bf93683db209715205ada87a9f607838	\\x0180afee3b817d614cdd6c5779588510a3b950a9a523c1d4469029e7d84d4e651c110180c6209773ad5f1e33fbb6a3c7377175	\\x01fcf81b017da105f604749dfff1b71a8efd39ea81870df751b742c23e	\N	2026-03-03 09:01:00+00	1
\.


--
-- Data for Name: schedule; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.schedule (client_id, measures, every, follow_up_weeks, set_at, version, due_for, due_on, then_for, then_on) FROM stdin;
456b8bda-4398-44a3-aa81-5fe2fa4b0c62	{phq9}	4	\N	2026-03-10 09:04:22+00	1	\N	\N	\N	\N
\.


--
-- Data for Name: session; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.session (id, client_id, member_id, target_id, number, zone, opened_at, admitted_at, ended_at, closing, room_epoch, room_holder, version, seq, over_at, episode_id) FROM stdin;
a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	97cf309d-b45e-4492-8207-af5484c9e1df	d55df3b6-5f4a-4ee3-90b8-670c687fd8fc	1	UTC	2026-03-03 09:01:00+00	\N	2026-03-03 09:04:22+00	incomplete	4	43872f96-65fe-4b03-a3cc-9075c5fccc68	2	3	\N	0d1af92c-fb5b-437e-a648-6d03d515b568
9f978597-2bcd-4d16-a04d-f2164581b6e0	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	97cf309d-b45e-4492-8207-af5484c9e1df	d55df3b6-5f4a-4ee3-90b8-670c687fd8fc	2	UTC	2026-03-10 09:04:22+00	2026-03-10 09:04:22+00	\N	\N	0	\N	1	39	\N	0d1af92c-fb5b-437e-a648-6d03d515b568
f0b2b007-5c13-40ca-8c43-e8d15aa70718	96cb1b9a-8f27-4225-bc8d-87e930f99ddf	97cf309d-b45e-4492-8207-af5484c9e1df	\N	1	UTC	2026-03-10 09:04:22+00	\N	\N	\N	0	\N	1	42	\N	\N
\.


--
-- Data for Name: session_moment; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.session_moment (id, session_id, client_id, kind, at, once) FROM stdin;
1	9f978597-2bcd-4d16-a04d-f2164581b6e0	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	admitted	2026-03-10 09:04:22+00	9c646107-fdc3-4ea5-b2fa-7a16e7d53c0a
\.


--
-- Data for Name: session_words; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.session_words (session_id, client_id, location, call_back, resource, leaving_state, companion, next_contact, client_words, note, version, written_by, written_at) FROM stdin;
a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	\\x0151382f18b3431fe2fbf72888fd94234ab132ccc2778cf0758c12970f	\\x01bc64a9b802b2544c85d59ce9f18524009ce15279bb4af7b838dd9838	\\x01fb220da769a2d3a02d4d61e7a7c276e5aa202c7f91b510aa33c4aa92	\\x01ce50f772cd2d49761950952d8b8373c5c4bee02ea177380e470ed0f5	\\x018d555c3745ee40eddd45a93965726e1ddfe283932624a042f0912ddb	\\x01923baa1fbaa3418c2c13cde6185ce3fd4ea805f58f271ad4dfd34ba5	\\x01fd916ee0f427f1a19f8a7e97fe11a54670a4f16c1478284692ba4017	\\x01f30bc61f24d30e2163f73f770d6d3ee4461cc895d5a1ff0756e35d7d	1	97cf309d-b45e-4492-8207-af5484c9e1df	2026-03-03 09:01:00+00
a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	\\x01e1d44210779b0eedb75e9100133a1be499dfd4e0a774702bd4ac2627	\\x01c654ccfc30d1c265a7e20f9b3b0be4dd8e52d4a2963d0eca22741ce7	\\x01ae0f99fc152a1332f0319a70626cbde1c8feca226804ae2e49da7b6d711857bd797f9ff376365a978ba0184143107540e6ab402392c8afdb	\\x01f18c06403e72603f1337dc173a00f0413d3d35004a30092c566a82cf435a8521ff9db0fabbb3120db5e21b568c466c81bc2ab7864b3c0ffc54a7b794512a2847658903f941bd5a78b244da	\\x0183227123c8c33db2d9b5c749ef65fa02c0e56a5264db0dd66e4b1cc5755d54d00a526e843ec264	\\x01e67ae5cd1915be3083ff3a23eed2816d92d9881b65da368c89aa4674ed9e34db887d054725a9a9a88258db	\\x01c0169af4dd664e80089ee817913c03c16bd72e4ed381787861d58a8afcb642d1eafa6382a19b3f9bad	\\x01a85f77fcda072646cd680d6428c5326f34cd055dc13e9f3211a7dadaa56ff812fa9aafc4aba5677cbdcb5d1a3596644b3b	2	97cf309d-b45e-4492-8207-af5484c9e1df	2026-03-03 09:04:22+00
a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	\\x01a863eba7fac3dd64d48b3f4ce4dbf92a67431ee87736501d9e36f1a7	\\x017e042fe9e736697727376653f6ee2f38c67951de9e3b35c8d6384def	\\x0131629cac496dbf33786366e5041d7f55f6baf1b65db3a306ee97529b80ff2b94d3426c92f1f1a375533309271fce14ce3ea024561df2d562	\\x01bbb2acf6a299d701b947aa62f47493ce187212313e0e4058be7464ab908571e6b9fdbfa77f1e703b6a76df729c3d800d0cf046e0155e6e2000d67b58bb3ab2be2b0fe514967b929135ee61	\\x01b90c58cf971bf9472073cf39398823613c4139bba82698529f669db23c20ff364dcbbe603092ea	\\x0189a1fa9311b0d24af0015aa80eb26ddd8c040ffa028d09642817a88e39099e704da4c1438a28a33d1dd185	\\x01c8848db00bc99c06d9f3ed617250c247c212e2e19ef70776a61a98484b8dca5c34c233848107be652f	\\x01c314e536d9c82fc34c2af20ea0a19a2fef4518be6de14a2387011e1ad5631dac1b933593a13551834091e12326e884eb3546fd1b66e4a4dbf60565137b9abf86c0762010f8c49d	3	97cf309d-b45e-4492-8207-af5484c9e1df	2026-03-03 09:04:22+00
9f978597-2bcd-4d16-a04d-f2164581b6e0	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	\\x01f89f50efc66b276b6b51c9c0f02432ea63b61c3455843bc468e9a839	\\x01e33f8cb4280d7408d19f1cbbd822d215604fce9249166633d3cf3381	\\x01b87b73f61ea385a14e090e3d730670c84e39e85f1402412a43a4aa39	\\x01076ecd42e0188745acbd8fb20d37f5beac633ff4c8f7b3d3adc8a65e	\\x01bc5b0e79b282dbf575745918ca5c63d27e608a9828ae26b21d0690fe	\\x0165d71a79772e45678d15abb7adf91c5a9943c472e8bb6afee160743f	\\x014beec6e94ee55b2a57e4d162a6453abbf25800096091fbace6e8dbc2	\\x0109cddb3defebecf0297ec6bd5f8e92dbc7f388ddba367683a0663b3f	1	97cf309d-b45e-4492-8207-af5484c9e1df	2026-03-10 09:04:22+00
9f978597-2bcd-4d16-a04d-f2164581b6e0	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	\\x01c42c58ed708b44c3d6254707c837d5b3ee6ca38e01ca119a8e69f591584c18f8e79c028a08605952	\\x01a2bf6d7c31b9177f0ac31e2ea1e95eb0a391717a08d9536d5e9b32993988f3028ef6722c435df66672c5	\\x01c49112f208538a7300fa6322f00046c2929721d32f9d2891cb56dad5	\\x015fcdefbf6523c8abe5cde6f7dc1218004e0ae499cd2e090b8fccc491	\\x01d4d30522d02951fc0a759872994222cf56d959c690e777dabad5b123	\\x0113a10b58a020f9fd109a783412768b2d349acdc0baa2680ec710a8ee	\\x01d5e90603a3fc271bd0a54998cf303f7d7a77cb8f2de45627464bf116	\\x010c31f66cc0ee044f516345773b60c6c1a2783fb03fb727a3764188d3	2	97cf309d-b45e-4492-8207-af5484c9e1df	2026-03-10 09:04:22+00
f0b2b007-5c13-40ca-8c43-e8d15aa70718	96cb1b9a-8f27-4225-bc8d-87e930f99ddf	\\x019a5505f470aeef19ae559f58de2fd4ee681e5b6ba1795cdd4cd10348	\\x011290107b0e4d469955401ad128e4897b579fea7371cb771e5bf07a2d	\\x013754def34b031a91e50196bd9889ed2fa0c93ee2b025a01febacb4e3	\\x010c560f02fd4a41731df3e4ff290f4b6081d492196054a55b20157dc5	\\x016aeafe1675ed8122d93289c1446331d9420028296ffda22104db599e	\\x017c0d584aa86ad7eb3a250cd2e592fa85161e41f32b6761b6b9010d4c	\\x01acba59486e70aa08736da301406abf1a5d534d7e15d0a6106c89d977	\\x012dc8a0380882310924a48f439eca3c456a82bfc765c5d3769c511a97	1	97cf309d-b45e-4492-8207-af5484c9e1df	2026-03-10 09:04:22+00
\.


--
-- Data for Name: set_ending; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.set_ending (set_id, session_id, client_id, ending, at_ms, recorded_at, witness) FROM stdin;
cebd9694-7e8e-40ec-b102-48a90778ad66	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	done	26500	2026-03-03 09:02:27.5+00	room
3120eea4-279d-48db-9f98-219ef5cfba2f	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	stopped_by_client	26500	2026-03-03 09:03:01.5+00	room
9068a7b5-87f9-4fe1-98a2-08c5e484d4a9	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	stopped_by_clinician	26500	2026-03-03 09:03:33.5+00	room
11e9e545-76d3-4a46-92f1-12fcbc5875b4	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	unknown	26500	2026-03-03 09:04:07.5+00	room
\.


--
-- Data for Name: set_evidence; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.set_evidence (set_id, seq, session_id, client_id, kind, at_ms, phase, width, frames, longest_gap, ending, recorded_at) FROM stdin;
cebd9694-7e8e-40ec-b102-48a90778ad66	3	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	rested	26500	24.5	\N	\N	\N	done	2026-03-03 09:02:27.5+00
cebd9694-7e8e-40ec-b102-48a90778ad66	2	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	second	8000	2	\N	52	84	\N	2026-03-03 09:02:27.5+00
cebd9694-7e8e-40ec-b102-48a90778ad66	1	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	second	7000	1	\N	60	17	\N	2026-03-03 09:02:27.5+00
cebd9694-7e8e-40ec-b102-48a90778ad66	0	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	shown	6000	\N	18	\N	\N	\N	2026-03-03 09:02:27.5+00
9068a7b5-87f9-4fe1-98a2-08c5e484d4a9	3	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	rested	26500	11	\N	\N	\N	stopped_by_clinician	2026-03-03 09:03:33.5+00
9068a7b5-87f9-4fe1-98a2-08c5e484d4a9	2	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	second	8000	2	\N	52	84	\N	2026-03-03 09:03:33.5+00
9068a7b5-87f9-4fe1-98a2-08c5e484d4a9	1	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	second	7000	1	\N	60	17	\N	2026-03-03 09:03:33.5+00
9068a7b5-87f9-4fe1-98a2-08c5e484d4a9	0	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	shown	6000	\N	18	\N	\N	\N	2026-03-03 09:03:33.5+00
\.


--
-- Data for Name: set_order; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.set_order (set_id, seq, session_id, client_id, cause, at_ms, plan, timeline, recorded_at) FROM stdin;
cebd9694-7e8e-40ec-b102-48a90778ad66	0	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	started	5000	{"dot": 1.5, "path": "across", "rate": 1.0, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "purpose": "processing", "channels": {"ears": false, "eyes": true, "hands": false}}	{"segments": []}	2026-03-03 09:02:06+00
cebd9694-7e8e-40ec-b102-48a90778ad66	1	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	rate	11500	{"dot": 1.5, "path": "across", "rate": 1.2, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "purpose": "processing", "channels": {"ears": false, "eyes": true, "hands": false}}	{"segments": []}	2026-03-03 09:02:12.5+00
3120eea4-279d-48db-9f98-219ef5cfba2f	0	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	started	5000	{"dot": 1.5, "path": "across", "rate": 1.0, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "purpose": "processing", "channels": {"ears": false, "eyes": true, "hands": false}}	{"segments": []}	2026-03-03 09:02:40+00
3120eea4-279d-48db-9f98-219ef5cfba2f	1	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	rate	11500	{"dot": 1.5, "path": "across", "rate": 1.2, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "purpose": "processing", "channels": {"ears": false, "eyes": true, "hands": false}}	{"segments": []}	2026-03-03 09:02:46.5+00
9068a7b5-87f9-4fe1-98a2-08c5e484d4a9	0	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	started	5000	{"dot": 1.5, "path": "across", "rate": 1.0, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "purpose": "processing", "channels": {"ears": false, "eyes": true, "hands": false}}	{"segments": []}	2026-03-03 09:03:12+00
9068a7b5-87f9-4fe1-98a2-08c5e484d4a9	1	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	rate	11500	{"dot": 1.5, "path": "across", "rate": 1.2, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "purpose": "processing", "channels": {"ears": false, "eyes": true, "hands": false}}	{"segments": []}	2026-03-03 09:03:18.5+00
11e9e545-76d3-4a46-92f1-12fcbc5875b4	0	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	started	5000	{"dot": 1.5, "path": "across", "rate": 1.0, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "purpose": "processing", "channels": {"ears": false, "eyes": true, "hands": false}}	{"segments": []}	2026-03-03 09:03:46+00
11e9e545-76d3-4a46-92f1-12fcbc5875b4	1	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	rate	11500	{"dot": 1.5, "path": "across", "rate": 1.2, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "purpose": "processing", "channels": {"ears": false, "eyes": true, "hands": false}}	{"segments": []}	2026-03-03 09:03:52.5+00
\.


--
-- Data for Name: steadying; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.steadying (client_id, signs, way_back, first_words, written_at, version) FROM stdin;
456b8bda-4398-44a3-aa81-5fe2fa4b0c62	\\x01429eea83b3db72f075647f40fda2d02d5db1e10f40d5cee1ce2b0c77ce72c3512b6b502efd4f90349e	\\x019b68746c84ee2de0688e6d03a025cbdeab905d8ac595108313495755f8fa40676795dbf117cf476e61e90be4d1675ad37cdc	\\x0176025df3cb0d9887f2667d348e1c32856cebad7e317fb5ae7e169ec2	2026-03-03 09:01:00+00	1
\.


--
-- Data for Name: stimulus_set; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.stimulus_set (id, session_id, client_id, target_id, number, epoch, plan, recorded_at, seq) FROM stdin;
cebd9694-7e8e-40ec-b102-48a90778ad66	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	d55df3b6-5f4a-4ee3-90b8-670c687fd8fc	1	1	{"dot": 1.5, "path": "across", "rate": 1.0, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "purpose": "processing", "channels": {"ears": false, "eyes": true, "hands": false}}	2026-03-03 09:02:06+00	8
3120eea4-279d-48db-9f98-219ef5cfba2f	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	d55df3b6-5f4a-4ee3-90b8-670c687fd8fc	2	2	{"dot": 1.5, "path": "across", "rate": 1.0, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "purpose": "processing", "channels": {"ears": false, "eyes": true, "hands": false}}	2026-03-03 09:02:40+00	13
9068a7b5-87f9-4fe1-98a2-08c5e484d4a9	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	d55df3b6-5f4a-4ee3-90b8-670c687fd8fc	3	3	{"dot": 1.5, "path": "across", "rate": 1.0, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "purpose": "processing", "channels": {"ears": false, "eyes": true, "hands": false}}	2026-03-03 09:03:12+00	16
11e9e545-76d3-4a46-92f1-12fcbc5875b4	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	d55df3b6-5f4a-4ee3-90b8-670c687fd8fc	4	4	{"dot": 1.5, "path": "across", "rate": 1.0, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "purpose": "processing", "channels": {"ears": false, "eyes": true, "hands": false}}	2026-03-03 09:03:46+00	24
\.


--
-- Data for Name: target; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.target (id, client_id, number, prong, opened_at, archived_at, version) FROM stdin;
d55df3b6-5f4a-4ee3-90b8-670c687fd8fc	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	1	past	2026-03-03 09:00:00+00	\N	3
3e46a2b0-f6b9-408b-9262-15381ece7e92	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	2	present	2026-03-03 09:02:00+00	\N	1
\.


--
-- Data for Name: target_course; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.target_course (target_id, client_id, rules, procedure, state, held, because, unfounded, version) FROM stdin;
3e46a2b0-f6b9-408b-9262-15381ece7e92	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	2	standard	planned	\N	\N	f	1
d55df3b6-5f4a-4ee3-90b8-670c687fd8fc	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	2	recent_event	incomplete	\N	\N	f	4
\.


--
-- Data for Name: target_plan; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.target_plan (target_id, client_id, place, age, year, cluster_id, parent_id) FROM stdin;
d55df3b6-5f4a-4ee3-90b8-670c687fd8fc	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	2	9	1998	7a33823f-ad06-4157-a857-56474fb1d497	\N
3e46a2b0-f6b9-408b-9262-15381ece7e92	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	1	\N	\N	7a33823f-ad06-4157-a857-56474fb1d497	d55df3b6-5f4a-4ee3-90b8-670c687fd8fc
\.


--
-- Data for Name: target_still; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.target_still (target_id, client_id, still) FROM stdin;
\.


--
-- Data for Name: target_words; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.target_words (target_id, client_id, label, picture, negative_belief, positive_belief, emotions, body_location, version) FROM stdin;
d55df3b6-5f4a-4ee3-90b8-670c687fd8fc	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	\\x01ea05eba88c7f1cfdd997ac33977a9a0c59768314667ca4acd0dffebf3f779c3c9fa0c54d4ad128d2ebc1f4f7	\\x013ffd36adef962e07560f5f9473fca7d99f52bc65811adc86de1a553eba8feb711f6ed0d02138e31d7fdae944d0482014ab307afe	\\x01e658488548aebfa2f2fd5cfd21af41b43b8abfc664035d3a59b5be3ce8f680d32be4f14d85b55a8c40cbc679603a619bb098ea9d	\\x01790952c481ac469e0cb5e4d1bbf9cc151ae0a5be9138afb533d5b56ebdf80a357a562492cd76a1deb07d7e3d56cc301b1f5708	\\x01f9bf50447b3c719621e37721b4606298909e82a42d803ccaf209ee1b14fec70af7770a7e9674e57f6a14a5	\\x016ba1f3dd5575537621ebe82cd9e3686619cc741e15466c6eddd430026e8090acbd6074e0a4e5e0cb9d8d6d23aa	3
3e46a2b0-f6b9-408b-9262-15381ece7e92	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	\\x01c8b385e6aad6f052a317d02e48776ccf9cbdd9dd8d60f28a8a5bcad683daad9f505d2decf48ace63	\\x01b744340480df686cbe0c4888124726a5bd6e0e45e86eed1b5f22a7b5	\\x01177240d1713076650baf2565038d692fc01c1dbf8876b185444426b3	\\x01b347bfddd7a8267ed1078063c1dbe12bb0d27cbc88478cc4811dd10c	\\x0153d6251bfdb91ed36bc0e96dcd3d040b5cd90e74eedf840a0bee5dba	\\x01d57c0b2518add7644349dc62e974a91236f24eecb36f4120f8917839	1
\.


--
-- Data for Name: unmeasured; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.unmeasured (id, client_id, session_id, target_id, way, replaces, entered_by, at, seq) FROM stdin;
f651b104-584a-4eea-9e20-ed07cc7a1eab	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	d55df3b6-5f4a-4ee3-90b8-670c687fd8fc	own_tapping	\N	97cf309d-b45e-4492-8207-af5484c9e1df	2026-03-03 09:04:16+00	29
da301088-86c8-40b6-9679-ade00a065b61	456b8bda-4398-44a3-aa81-5fe2fa4b0c62	a9d8b1e9-f6fb-4d0b-bdf8-882cfe1adb59	d55df3b6-5f4a-4ee3-90b8-670c687fd8fc	\N	f651b104-584a-4eea-9e20-ed07cc7a1eab	97cf309d-b45e-4492-8207-af5484c9e1df	2026-03-03 09:04:17+00	30
\.


--
-- Data for Name: wording; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.wording (id, measure, body, loaded_by, loaded_at, checked_by, checked_at, ended_at) FROM stdin;
a58f01cd-1ab7-4680-afed-9ca63c0b4f71	phq9	{"intro": [], "title": "Invented form PHQ-9", "language": "en", "questions": [{"id": "q1", "text": "Invented question 1", "under": "", "answers": [[0, "Level 0"], [1, "Level 1"], [2, "Level 2"], [3, "Level 3"]]}, {"id": "q2", "text": "Invented question 2", "under": "", "answers": [[0, "Level 0"], [1, "Level 1"], [2, "Level 2"], [3, "Level 3"]]}, {"id": "q3", "text": "Invented question 3", "under": "", "answers": [[0, "Level 0"], [1, "Level 1"], [2, "Level 2"], [3, "Level 3"]]}, {"id": "q4", "text": "Invented question 4", "under": "", "answers": [[0, "Level 0"], [1, "Level 1"], [2, "Level 2"], [3, "Level 3"]]}, {"id": "q5", "text": "Invented question 5", "under": "", "answers": [[0, "Level 0"], [1, "Level 1"], [2, "Level 2"], [3, "Level 3"]]}, {"id": "q6", "text": "Invented question 6", "under": "", "answers": [[0, "Level 0"], [1, "Level 1"], [2, "Level 2"], [3, "Level 3"]]}, {"id": "q7", "text": "Invented question 7", "under": "", "answers": [[0, "Level 0"], [1, "Level 1"], [2, "Level 2"], [3, "Level 3"]]}, {"id": "q8", "text": "Invented question 8", "under": "", "answers": [[0, "Level 0"], [1, "Level 1"], [2, "Level 2"], [3, "Level 3"]]}, {"id": "q9", "text": "Invented question 9", "under": "", "answers": [[0, "Level 0"], [1, "Level 1"], [2, "Level 2"], [3, "Level 3"]]}]}	21c5d1e2-9f0b-4592-8e1d-a6f424519b8a	2026-03-10 09:04:22+00	21c5d1e2-9f0b-4592-8e1d-a6f424519b8a	2026-03-10 09:04:22+00	\N
6bbf7b54-07d7-4deb-96e1-e47252d3960f	gad7	{"intro": [], "title": "Invented form GAD-7", "language": "en", "questions": [{"id": "q1", "text": "Invented question 1", "under": "", "answers": [[0, "Level 0"], [1, "Level 1"], [2, "Level 2"], [3, "Level 3"]]}, {"id": "q2", "text": "Invented question 2", "under": "", "answers": [[0, "Level 0"], [1, "Level 1"], [2, "Level 2"], [3, "Level 3"]]}, {"id": "q3", "text": "Invented question 3", "under": "", "answers": [[0, "Level 0"], [1, "Level 1"], [2, "Level 2"], [3, "Level 3"]]}, {"id": "q4", "text": "Invented question 4", "under": "", "answers": [[0, "Level 0"], [1, "Level 1"], [2, "Level 2"], [3, "Level 3"]]}, {"id": "q5", "text": "Invented question 5", "under": "", "answers": [[0, "Level 0"], [1, "Level 1"], [2, "Level 2"], [3, "Level 3"]]}, {"id": "q6", "text": "Invented question 6", "under": "", "answers": [[0, "Level 0"], [1, "Level 1"], [2, "Level 2"], [3, "Level 3"]]}, {"id": "q7", "text": "Invented question 7", "under": "", "answers": [[0, "Level 0"], [1, "Level 1"], [2, "Level 2"], [3, "Level 3"]]}]}	21c5d1e2-9f0b-4592-8e1d-a6f424519b8a	2026-03-10 09:04:22+00	21c5d1e2-9f0b-4592-8e1d-a6f424519b8a	2026-03-10 09:04:22+00	\N
b3267445-735c-4d35-adeb-f7f1562eca56	gad7	{"intro": [], "title": "Invented form GAD-7", "language": "en", "questions": [{"id": "q1", "text": "Invented question 1", "under": "", "answers": [[0, "Level 0"], [1, "Level 1"], [2, "Level 2"], [3, "Level 3"]]}, {"id": "q2", "text": "Invented question 2", "under": "", "answers": [[0, "Level 0"], [1, "Level 1"], [2, "Level 2"], [3, "Level 3"]]}, {"id": "q3", "text": "Invented question 3", "under": "", "answers": [[0, "Level 0"], [1, "Level 1"], [2, "Level 2"], [3, "Level 3"]]}, {"id": "q4", "text": "Invented question 4", "under": "", "answers": [[0, "Level 0"], [1, "Level 1"], [2, "Level 2"], [3, "Level 3"]]}, {"id": "q5", "text": "Invented question 5", "under": "", "answers": [[0, "Level 0"], [1, "Level 1"], [2, "Level 2"], [3, "Level 3"]]}, {"id": "q6", "text": "Invented question 6", "under": "", "answers": [[0, "Level 0"], [1, "Level 1"], [2, "Level 2"], [3, "Level 3"]]}, {"id": "q7", "text": "Invented question 7", "under": "", "answers": [[0, "Level 0"], [1, "Level 1"], [2, "Level 2"], [3, "Level 3"]]}]}	21c5d1e2-9f0b-4592-8e1d-a6f424519b8a	2026-03-10 09:04:22+00	\N	\N	\N
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
-- Name: errand errand_pkey; Type: CONSTRAINT; Schema: access; Owner: leeward_owner
--

ALTER TABLE ONLY access.errand
    ADD CONSTRAINT errand_pkey PRIMARY KEY (id);


--
-- Name: errand errand_token_hash_key; Type: CONSTRAINT; Schema: access; Owner: leeward_owner
--

ALTER TABLE ONLY access.errand
    ADD CONSTRAINT errand_token_hash_key UNIQUE (token_hash);


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
-- Name: asking asking_client_id_number_key; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.asking
    ADD CONSTRAINT asking_client_id_number_key UNIQUE (client_id, number);


--
-- Name: asking asking_id_client_id_key; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.asking
    ADD CONSTRAINT asking_id_client_id_key UNIQUE (id, client_id);


--
-- Name: asking asking_pkey; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.asking
    ADD CONSTRAINT asking_pkey PRIMARY KEY (id);


--
-- Name: asking_words asking_words_pkey; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.asking_words
    ADD CONSTRAINT asking_words_pkey PRIMARY KEY (asking_id);


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
-- Name: episode episode_client_id_number_key; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.episode
    ADD CONSTRAINT episode_client_id_number_key UNIQUE (client_id, number);


--
-- Name: episode episode_id_client_id_key; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.episode
    ADD CONSTRAINT episode_id_client_id_key UNIQUE (id, client_id);


--
-- Name: episode_measure episode_measure_pkey; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.episode_measure
    ADD CONSTRAINT episode_measure_pkey PRIMARY KEY (episode_id, measure);


--
-- Name: episode episode_pkey; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.episode
    ADD CONSTRAINT episode_pkey PRIMARY KEY (id);


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
-- Name: mail_address mail_address_pkey; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.mail_address
    ADD CONSTRAINT mail_address_pkey PRIMARY KEY (member_id);


--
-- Name: practice practice_pkey; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.practice
    ADD CONSTRAINT practice_pkey PRIMARY KEY (singleton);


--
-- Name: practice_snapshot practice_snapshot_first_day_key; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.practice_snapshot
    ADD CONSTRAINT practice_snapshot_first_day_key UNIQUE (first_day);


--
-- Name: practice_snapshot practice_snapshot_pkey; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.practice_snapshot
    ADD CONSTRAINT practice_snapshot_pkey PRIMARY KEY (id);


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
-- Name: response_answers response_answers_pkey; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.response_answers
    ADD CONSTRAINT response_answers_pkey PRIMARY KEY (response_id);


--
-- Name: response response_client_id_number_key; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.response
    ADD CONSTRAINT response_client_id_number_key UNIQUE (client_id, number);


--
-- Name: response_draft response_draft_asking_id_measure_key; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.response_draft
    ADD CONSTRAINT response_draft_asking_id_measure_key UNIQUE (asking_id, measure);


--
-- Name: response_draft response_draft_pkey; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.response_draft
    ADD CONSTRAINT response_draft_pkey PRIMARY KEY (id);


--
-- Name: response response_id_client_id_key; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.response
    ADD CONSTRAINT response_id_client_id_key UNIQUE (id, client_id);


--
-- Name: response response_pkey; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.response
    ADD CONSTRAINT response_pkey PRIMARY KEY (id);


--
-- Name: response response_replaces_key; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.response
    ADD CONSTRAINT response_replaces_key UNIQUE (replaces);


--
-- Name: risk_flag risk_flag_pkey; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.risk_flag
    ADD CONSTRAINT risk_flag_pkey PRIMARY KEY (response_id);


--
-- Name: risk_flag risk_flag_response_id_client_id_key; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.risk_flag
    ADD CONSTRAINT risk_flag_response_id_client_id_key UNIQUE (response_id, client_id);


--
-- Name: risk_mail risk_mail_pkey; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.risk_mail
    ADD CONSTRAINT risk_mail_pkey PRIMARY KEY (response_id, member_id);


--
-- Name: risk_told risk_told_pkey; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.risk_told
    ADD CONSTRAINT risk_told_pkey PRIMARY KEY (response_id, member_id);


--
-- Name: safety_plan safety_plan_pkey; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.safety_plan
    ADD CONSTRAINT safety_plan_pkey PRIMARY KEY (client_id);


--
-- Name: schedule schedule_pkey; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.schedule
    ADD CONSTRAINT schedule_pkey PRIMARY KEY (client_id);


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
-- Name: target_still target_still_pkey; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.target_still
    ADD CONSTRAINT target_still_pkey PRIMARY KEY (target_id);


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
-- Name: wording wording_pkey; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.wording
    ADD CONSTRAINT wording_pkey PRIMARY KEY (id);


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
-- Name: one_errand_that_holds; Type: INDEX; Schema: access; Owner: leeward_owner
--

CREATE UNIQUE INDEX one_errand_that_holds ON access.errand USING btree (asking_id) WHERE (revoked_at IS NULL);


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
-- Name: after_check_due_until_idx; Type: INDEX; Schema: public; Owner: leeward_owner
--

CREATE INDEX after_check_due_until_idx ON public.after_check USING btree (due_until);


--
-- Name: after_check_try_session_id_idx; Type: INDEX; Schema: public; Owner: leeward_owner
--

CREATE INDEX after_check_try_session_id_idx ON public.after_check_try USING btree (session_id);


--
-- Name: asking_due_on_idx; Type: INDEX; Schema: public; Owner: leeward_owner
--

CREATE INDEX asking_due_on_idx ON public.asking USING btree (due_on) WHERE (closed_at IS NULL);


--
-- Name: asking_episode_id_idx; Type: INDEX; Schema: public; Owner: leeward_owner
--

CREATE INDEX asking_episode_id_idx ON public.asking USING btree (episode_id) WHERE (closed_as = 'declined'::text);


--
-- Name: asking_words_client_id_idx; Type: INDEX; Schema: public; Owner: leeward_owner
--

CREATE INDEX asking_words_client_id_idx ON public.asking_words USING btree (client_id);


--
-- Name: episode_ended_at_idx; Type: INDEX; Schema: public; Owner: leeward_owner
--

CREATE INDEX episode_ended_at_idx ON public.episode USING btree (ended_at) WHERE (ended_at IS NOT NULL);


--
-- Name: episode_measure_client_id_idx; Type: INDEX; Schema: public; Owner: leeward_owner
--

CREATE INDEX episode_measure_client_id_idx ON public.episode_measure USING btree (client_id);


--
-- Name: episode_measure_measure_first_at_idx; Type: INDEX; Schema: public; Owner: leeward_owner
--

CREATE INDEX episode_measure_measure_first_at_idx ON public.episode_measure USING btree (measure, first_at);


--
-- Name: episode_reprocessed_at_idx; Type: INDEX; Schema: public; Owner: leeward_owner
--

CREATE INDEX episode_reprocessed_at_idx ON public.episode USING btree (reprocessed_at) WHERE (reprocessed_at IS NOT NULL);


--
-- Name: episode_started_at_idx; Type: INDEX; Schema: public; Owner: leeward_owner
--

CREATE INDEX episode_started_at_idx ON public.episode USING btree (started_at);


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
-- Name: one_open_asking; Type: INDEX; Schema: public; Owner: leeward_owner
--

CREATE UNIQUE INDEX one_open_asking ON public.asking USING btree (client_id) WHERE (closed_at IS NULL);


--
-- Name: one_open_episode; Type: INDEX; Schema: public; Owner: leeward_owner
--

CREATE UNIQUE INDEX one_open_episode ON public.episode USING btree (client_id) WHERE (ended_at IS NULL);


--
-- Name: one_wording_in_use; Type: INDEX; Schema: public; Owner: leeward_owner
--

CREATE UNIQUE INDEX one_wording_in_use ON public.wording USING btree (measure) WHERE ((checked_at IS NOT NULL) AND (ended_at IS NULL));


--
-- Name: one_wording_to_check; Type: INDEX; Schema: public; Owner: leeward_owner
--

CREATE UNIQUE INDEX one_wording_to_check ON public.wording USING btree (measure) WHERE ((checked_at IS NULL) AND (ended_at IS NULL));


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
-- Name: response_answers_client_id_idx; Type: INDEX; Schema: public; Owner: leeward_owner
--

CREATE INDEX response_answers_client_id_idx ON public.response_answers USING btree (client_id);


--
-- Name: response_asking_id_idx; Type: INDEX; Schema: public; Owner: leeward_owner
--

CREATE INDEX response_asking_id_idx ON public.response USING btree (asking_id) WHERE (asking_id IS NOT NULL);


--
-- Name: response_draft_client_id_idx; Type: INDEX; Schema: public; Owner: leeward_owner
--

CREATE INDEX response_draft_client_id_idx ON public.response_draft USING btree (client_id);


--
-- Name: response_episode_id_measure_idx; Type: INDEX; Schema: public; Owner: leeward_owner
--

CREATE INDEX response_episode_id_measure_idx ON public.response USING btree (episode_id, measure);


--
-- Name: risk_flag_client_id_idx; Type: INDEX; Schema: public; Owner: leeward_owner
--

CREATE INDEX risk_flag_client_id_idx ON public.risk_flag USING btree (client_id);


--
-- Name: risk_flag_raised_at_idx; Type: INDEX; Schema: public; Owner: leeward_owner
--

CREATE INDEX risk_flag_raised_at_idx ON public.risk_flag USING btree (raised_at) WHERE (done IS NULL);


--
-- Name: risk_mail_client_id_idx; Type: INDEX; Schema: public; Owner: leeward_owner
--

CREATE INDEX risk_mail_client_id_idx ON public.risk_mail USING btree (client_id);


--
-- Name: risk_told_client_id_idx; Type: INDEX; Schema: public; Owner: leeward_owner
--

CREATE INDEX risk_told_client_id_idx ON public.risk_told USING btree (client_id);


--
-- Name: schedule_due_on_idx; Type: INDEX; Schema: public; Owner: leeward_owner
--

CREATE INDEX schedule_due_on_idx ON public.schedule USING btree (due_on) WHERE (due_on IS NOT NULL);


--
-- Name: session_episode_id_idx; Type: INDEX; Schema: public; Owner: leeward_owner
--

CREATE INDEX session_episode_id_idx ON public.session USING btree (episode_id);


--
-- Name: session_member_id_opened_at_idx; Type: INDEX; Schema: public; Owner: leeward_owner
--

CREATE INDEX session_member_id_opened_at_idx ON public.session USING btree (member_id, opened_at);


--
-- Name: session_moment_session_id_idx; Type: INDEX; Schema: public; Owner: leeward_owner
--

CREATE INDEX session_moment_session_id_idx ON public.session_moment USING btree (session_id);


--
-- Name: session_opened_at_idx; Type: INDEX; Schema: public; Owner: leeward_owner
--

CREATE INDEX session_opened_at_idx ON public.session USING btree (opened_at) WHERE (ended_at IS NULL);


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
-- Name: target_still_client_id_idx; Type: INDEX; Schema: public; Owner: leeward_owner
--

CREATE INDEX target_still_client_id_idx ON public.target_still USING btree (client_id);


--
-- Name: target_still_target_id_idx; Type: INDEX; Schema: public; Owner: leeward_owner
--

CREATE INDEX target_still_target_id_idx ON public.target_still USING btree (target_id) WHERE still;


--
-- Name: unmeasured_session_id_idx; Type: INDEX; Schema: public; Owner: leeward_owner
--

CREATE INDEX unmeasured_session_id_idx ON public.unmeasured USING btree (session_id);


--
-- Name: unmeasured_target_id_idx; Type: INDEX; Schema: public; Owner: leeward_owner
--

CREATE INDEX unmeasured_target_id_idx ON public.unmeasured USING btree (target_id);


--
-- Name: care_link end_links; Type: TRIGGER; Schema: access; Owner: leeward_owner
--

CREATE TRIGGER end_links AFTER UPDATE OF until ON access.care_link FOR EACH ROW WHEN (((new.until IS NOT NULL) AND (old.until IS NULL))) EXECUTE FUNCTION access.end_links();


--
-- Name: signin links_end; Type: TRIGGER; Schema: access; Owner: leeward_owner
--

CREATE TRIGGER links_end AFTER UPDATE OF closed_at ON access.signin FOR EACH ROW WHEN (((new.closed_at IS NOT NULL) AND (old.closed_at IS NULL))) EXECUTE FUNCTION access.end_links_of_signin();


--
-- Name: episode end_askings; Type: TRIGGER; Schema: public; Owner: leeward_owner
--

CREATE TRIGGER end_askings AFTER UPDATE OF ended_at, reason ON public.episode FOR EACH ROW WHEN ((new.ended_at IS NOT NULL)) EXECUTE FUNCTION access.end_askings();


--
-- Name: stimulus_set fold_first_set; Type: TRIGGER; Schema: public; Owner: leeward_owner
--

CREATE TRIGGER fold_first_set AFTER INSERT ON public.stimulus_set FOR EACH ROW WHEN (((new.target_id IS NOT NULL) AND (COALESCE((new.plan ->> 'purpose'::text), 'processing'::text) = 'processing'::text))) EXECUTE FUNCTION access.fold_first_set();


--
-- Name: response fold_measure; Type: TRIGGER; Schema: public; Owner: leeward_owner
--

CREATE TRIGGER fold_measure AFTER INSERT ON public.response FOR EACH ROW EXECUTE FUNCTION access.fold_measure();


--
-- Name: asking fold_schedule; Type: TRIGGER; Schema: public; Owner: leeward_owner
--

CREATE TRIGGER fold_schedule AFTER UPDATE OF closed_as ON public.asking FOR EACH ROW EXECUTE FUNCTION access.fold_schedule();


--
-- Name: episode fold_schedule; Type: TRIGGER; Schema: public; Owner: leeward_owner
--

CREATE TRIGGER fold_schedule AFTER INSERT OR UPDATE OF ended_at, reason, begun_at ON public.episode FOR EACH ROW EXECUTE FUNCTION access.fold_schedule();


--
-- Name: response fold_schedule; Type: TRIGGER; Schema: public; Owner: leeward_owner
--

CREATE TRIGGER fold_schedule AFTER INSERT ON public.response FOR EACH ROW EXECUTE FUNCTION access.fold_schedule();


--
-- Name: schedule fold_schedule; Type: TRIGGER; Schema: public; Owner: leeward_owner
--

CREATE TRIGGER fold_schedule AFTER INSERT OR UPDATE OF measures, every, follow_up_weeks, version ON public.schedule FOR EACH ROW EXECUTE FUNCTION access.fold_schedule();


--
-- Name: session fold_sessions; Type: TRIGGER; Schema: public; Owner: leeward_owner
--

CREATE TRIGGER fold_sessions AFTER INSERT OR UPDATE OF admitted_at, ended_at, closing ON public.session FOR EACH ROW WHEN ((new.episode_id IS NOT NULL)) EXECUTE FUNCTION access.fold_sessions();


--
-- Name: rating fold_still; Type: TRIGGER; Schema: public; Owner: leeward_owner
--

CREATE TRIGGER fold_still AFTER INSERT ON public.rating FOR EACH ROW WHEN ((new.scale = 'sud'::text)) EXECUTE FUNCTION access.fold_still();


--
-- Name: session in_episode; Type: TRIGGER; Schema: public; Owner: leeward_owner
--

CREATE TRIGGER in_episode BEFORE INSERT ON public.session FOR EACH ROW EXECUTE FUNCTION access.session_in_episode();


--
-- Name: episode keep_episode; Type: TRIGGER; Schema: public; Owner: leeward_owner
--

CREATE TRIGGER keep_episode BEFORE UPDATE OF ended_at, reason ON public.episode FOR EACH ROW EXECUTE FUNCTION access.keep_episode();


--
-- Name: session keep_gate; Type: TRIGGER; Schema: public; Owner: leeward_owner
--

CREATE TRIGGER keep_gate AFTER INSERT OR UPDATE OF ended_at ON public.session FOR EACH ROW EXECUTE FUNCTION access.keep_gate();


--
-- Name: session keep_session; Type: TRIGGER; Schema: public; Owner: leeward_owner
--

CREATE TRIGGER keep_session BEFORE UPDATE ON public.session FOR EACH ROW EXECUTE FUNCTION access.keep_session();


--
-- Name: asking let_go_of_drafts; Type: TRIGGER; Schema: public; Owner: leeward_owner
--

CREATE TRIGGER let_go_of_drafts AFTER UPDATE OF closed_at ON public.asking FOR EACH ROW WHEN ((new.closed_at IS NOT NULL)) EXECUTE FUNCTION access.let_go_of_drafts();


--
-- Name: fact place_of_correction; Type: TRIGGER; Schema: public; Owner: leeward_owner
--

CREATE TRIGGER place_of_correction BEFORE INSERT ON public.fact FOR EACH ROW WHEN ((new.replaces IS NOT NULL)) EXECUTE FUNCTION public.place_of_corrected_fact();


--
-- Name: rating place_of_correction; Type: TRIGGER; Schema: public; Owner: leeward_owner
--

CREATE TRIGGER place_of_correction BEFORE INSERT ON public.rating FOR EACH ROW WHEN ((new.replaces IS NOT NULL)) EXECUTE FUNCTION public.place_of_correction();


--
-- Name: response place_of_correction; Type: TRIGGER; Schema: public; Owner: leeward_owner
--

CREATE TRIGGER place_of_correction BEFORE INSERT ON public.response FOR EACH ROW WHEN ((new.replaces IS NOT NULL)) EXECUTE FUNCTION public.place_of_corrected_response();


--
-- Name: session zz_fold_schedule; Type: TRIGGER; Schema: public; Owner: leeward_owner
--

CREATE TRIGGER zz_fold_schedule AFTER INSERT OR UPDATE OF admitted_at, ended_at, closing ON public.session FOR EACH ROW EXECUTE FUNCTION access.fold_schedule();


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
-- Name: errand errand_asking_id_fkey; Type: FK CONSTRAINT; Schema: access; Owner: leeward_owner
--

ALTER TABLE ONLY access.errand
    ADD CONSTRAINT errand_asking_id_fkey FOREIGN KEY (asking_id) REFERENCES public.asking(id);


--
-- Name: errand errand_made_by_fkey; Type: FK CONSTRAINT; Schema: access; Owner: leeward_owner
--

ALTER TABLE ONLY access.errand
    ADD CONSTRAINT errand_made_by_fkey FOREIGN KEY (made_by) REFERENCES access.member(id);


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
-- Name: asking asking_asked_by_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.asking
    ADD CONSTRAINT asking_asked_by_fkey FOREIGN KEY (asked_by) REFERENCES access.member(id);


--
-- Name: asking asking_client_id_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.asking
    ADD CONSTRAINT asking_client_id_fkey FOREIGN KEY (client_id) REFERENCES public.client(id);


--
-- Name: asking asking_episode_id_client_id_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.asking
    ADD CONSTRAINT asking_episode_id_client_id_fkey FOREIGN KEY (episode_id, client_id) REFERENCES public.episode(id, client_id);


--
-- Name: asking_words asking_words_asking_id_client_id_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.asking_words
    ADD CONSTRAINT asking_words_asking_id_client_id_fkey FOREIGN KEY (asking_id, client_id) REFERENCES public.asking(id, client_id);


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
-- Name: episode episode_client_id_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.episode
    ADD CONSTRAINT episode_client_id_fkey FOREIGN KEY (client_id) REFERENCES public.client(id);


--
-- Name: episode episode_judged_by_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.episode
    ADD CONSTRAINT episode_judged_by_fkey FOREIGN KEY (judged_by) REFERENCES access.member(id);


--
-- Name: episode_measure episode_measure_episode_id_client_id_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.episode_measure
    ADD CONSTRAINT episode_measure_episode_id_client_id_fkey FOREIGN KEY (episode_id, client_id) REFERENCES public.episode(id, client_id);


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
-- Name: mail_address mail_address_member_id_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.mail_address
    ADD CONSTRAINT mail_address_member_id_fkey FOREIGN KEY (member_id) REFERENCES access.member(id);


--
-- Name: practice_snapshot practice_snapshot_made_by_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.practice_snapshot
    ADD CONSTRAINT practice_snapshot_made_by_fkey FOREIGN KEY (made_by) REFERENCES access.member(id);


--
-- Name: practice practice_told_too_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.practice
    ADD CONSTRAINT practice_told_too_fkey FOREIGN KEY (told_too) REFERENCES access.member(id);


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
-- Name: response_answers response_answers_response_id_client_id_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.response_answers
    ADD CONSTRAINT response_answers_response_id_client_id_fkey FOREIGN KEY (response_id, client_id) REFERENCES public.response(id, client_id);


--
-- Name: response response_asking_id_client_id_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.response
    ADD CONSTRAINT response_asking_id_client_id_fkey FOREIGN KEY (asking_id, client_id) REFERENCES public.asking(id, client_id);


--
-- Name: response response_client_id_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.response
    ADD CONSTRAINT response_client_id_fkey FOREIGN KEY (client_id) REFERENCES public.client(id);


--
-- Name: response_draft response_draft_asking_id_client_id_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.response_draft
    ADD CONSTRAINT response_draft_asking_id_client_id_fkey FOREIGN KEY (asking_id, client_id) REFERENCES public.asking(id, client_id);


--
-- Name: response_draft response_draft_wording_id_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.response_draft
    ADD CONSTRAINT response_draft_wording_id_fkey FOREIGN KEY (wording_id) REFERENCES public.wording(id);


--
-- Name: response response_entered_by_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.response
    ADD CONSTRAINT response_entered_by_fkey FOREIGN KEY (entered_by) REFERENCES access.member(id);


--
-- Name: response response_episode_id_client_id_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.response
    ADD CONSTRAINT response_episode_id_client_id_fkey FOREIGN KEY (episode_id, client_id) REFERENCES public.episode(id, client_id);


--
-- Name: response response_replaces_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.response
    ADD CONSTRAINT response_replaces_fkey FOREIGN KEY (replaces) REFERENCES public.response(id);


--
-- Name: response response_wording_id_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.response
    ADD CONSTRAINT response_wording_id_fkey FOREIGN KEY (wording_id) REFERENCES public.wording(id);


--
-- Name: risk_flag risk_flag_done_by_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.risk_flag
    ADD CONSTRAINT risk_flag_done_by_fkey FOREIGN KEY (done_by) REFERENCES access.member(id);


--
-- Name: risk_flag risk_flag_response_id_client_id_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.risk_flag
    ADD CONSTRAINT risk_flag_response_id_client_id_fkey FOREIGN KEY (response_id, client_id) REFERENCES public.response(id, client_id);


--
-- Name: risk_mail risk_mail_member_id_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.risk_mail
    ADD CONSTRAINT risk_mail_member_id_fkey FOREIGN KEY (member_id) REFERENCES access.member(id);


--
-- Name: risk_mail risk_mail_response_id_client_id_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.risk_mail
    ADD CONSTRAINT risk_mail_response_id_client_id_fkey FOREIGN KEY (response_id, client_id) REFERENCES public.risk_flag(response_id, client_id);


--
-- Name: risk_told risk_told_member_id_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.risk_told
    ADD CONSTRAINT risk_told_member_id_fkey FOREIGN KEY (member_id) REFERENCES access.member(id);


--
-- Name: risk_told risk_told_response_id_client_id_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.risk_told
    ADD CONSTRAINT risk_told_response_id_client_id_fkey FOREIGN KEY (response_id, client_id) REFERENCES public.risk_flag(response_id, client_id);


--
-- Name: safety_plan safety_plan_client_id_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.safety_plan
    ADD CONSTRAINT safety_plan_client_id_fkey FOREIGN KEY (client_id) REFERENCES public.client(id);


--
-- Name: schedule schedule_client_id_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.schedule
    ADD CONSTRAINT schedule_client_id_fkey FOREIGN KEY (client_id) REFERENCES public.client(id);


--
-- Name: session session_client_id_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.session
    ADD CONSTRAINT session_client_id_fkey FOREIGN KEY (client_id) REFERENCES public.client(id);


--
-- Name: session session_episode_id_client_id_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.session
    ADD CONSTRAINT session_episode_id_client_id_fkey FOREIGN KEY (episode_id, client_id) REFERENCES public.episode(id, client_id);


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
-- Name: target_still target_still_target_id_client_id_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.target_still
    ADD CONSTRAINT target_still_target_id_client_id_fkey FOREIGN KEY (target_id, client_id) REFERENCES public.target(id, client_id);


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
-- Name: wording wording_checked_by_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.wording
    ADD CONSTRAINT wording_checked_by_fkey FOREIGN KEY (checked_by) REFERENCES access.member(id);


--
-- Name: wording wording_loaded_by_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.wording
    ADD CONSTRAINT wording_loaded_by_fkey FOREIGN KEY (loaded_by) REFERENCES access.member(id);


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
-- Name: asking add; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY add ON public.asking FOR INSERT WITH CHECK (((client_id IN ( SELECT access.my_clients() AS my_clients)) AND (asked_by = ( SELECT access.me() AS me))));


--
-- Name: asking_words add; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY add ON public.asking_words FOR INSERT WITH CHECK ((client_id IN ( SELECT access.my_clients() AS my_clients)));


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
-- Name: episode add; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY add ON public.episode FOR INSERT WITH CHECK ((client_id IN ( SELECT access.my_clients() AS my_clients)));


--
-- Name: fact add; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY add ON public.fact FOR INSERT WITH CHECK (((client_id IN ( SELECT access.my_clients() AS my_clients)) AND (entered_by = ( SELECT access.me() AS me))));


--
-- Name: hour_fact add; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY add ON public.hour_fact FOR INSERT WITH CHECK (((client_id IN ( SELECT access.my_clients() AS my_clients)) AND (entered_by = ( SELECT access.me() AS me))));


--
-- Name: practice_snapshot add; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY add ON public.practice_snapshot FOR INSERT WITH CHECK ((( SELECT access.has_role('lead'::text) AS has_role) AND (made_by = ( SELECT access.me() AS me))));


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
-- Name: response add; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY add ON public.response FOR INSERT WITH CHECK (((client_id IN ( SELECT access.my_clients() AS my_clients)) AND (entered_by = ( SELECT access.me() AS me))));


--
-- Name: response_answers add; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY add ON public.response_answers FOR INSERT WITH CHECK ((client_id IN ( SELECT access.my_clients() AS my_clients)));


--
-- Name: risk_flag add; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY add ON public.risk_flag FOR INSERT WITH CHECK ((client_id IN ( SELECT access.my_clients() AS my_clients)));


--
-- Name: risk_told add; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY add ON public.risk_told FOR INSERT WITH CHECK (((member_id = ( SELECT access.me() AS me)) AND (response_id IN ( SELECT f.response_id
   FROM access.flags_to_me() f(response_id, client_id, record, number, measure, says, raised_at, mine, treats)))));


--
-- Name: safety_plan add; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY add ON public.safety_plan FOR INSERT WITH CHECK ((client_id IN ( SELECT access.my_clients() AS my_clients)));


--
-- Name: schedule add; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY add ON public.schedule FOR INSERT WITH CHECK ((client_id IN ( SELECT access.my_clients() AS my_clients)));


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
-- Name: wording add; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY add ON public.wording FOR INSERT WITH CHECK (((( SELECT access.has_role('administrator'::text) AS has_role) OR ( SELECT access.has_role('lead'::text) AS has_role)) AND (loaded_by = ( SELECT access.me() AS me)) AND (checked_by IS NULL) AND (ended_at IS NULL)));


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
-- Name: asking; Type: ROW SECURITY; Schema: public; Owner: leeward_owner
--

ALTER TABLE public.asking ENABLE ROW LEVEL SECURITY;

--
-- Name: asking_words; Type: ROW SECURITY; Schema: public; Owner: leeward_owner
--

ALTER TABLE public.asking_words ENABLE ROW LEVEL SECURITY;

--
-- Name: audit; Type: ROW SECURITY; Schema: public; Owner: leeward_owner
--

ALTER TABLE public.audit ENABLE ROW LEVEL SECURITY;

--
-- Name: asking change; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY change ON public.asking FOR UPDATE USING (((client_id IN ( SELECT access.my_clients() AS my_clients)) AND (closed_at IS NULL))) WITH CHECK (((closed_as IS NULL) OR (closed_as <> 'answered'::text)));


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
-- Name: episode change; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY change ON public.episode FOR UPDATE USING ((client_id IN ( SELECT access.my_clients() AS my_clients))) WITH CHECK (((judged_by IS NULL) OR (judged_by = ( SELECT access.me() AS me))));


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
-- Name: risk_flag change; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY change ON public.risk_flag FOR UPDATE USING (((client_id IN ( SELECT access.my_clients() AS my_clients)) AND (done IS NULL))) WITH CHECK ((done_by = ( SELECT access.me() AS me)));


--
-- Name: safety_plan change; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY change ON public.safety_plan FOR UPDATE USING ((client_id IN ( SELECT access.my_clients() AS my_clients)));


--
-- Name: schedule change; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY change ON public.schedule FOR UPDATE USING ((client_id IN ( SELECT access.my_clients() AS my_clients)));


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
-- Name: wording change; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY change ON public.wording FOR UPDATE USING (((ended_at IS NULL) AND (( SELECT access.has_role('administrator'::text) AS has_role) OR ( SELECT access.has_role('lead'::text) AS has_role)))) WITH CHECK (((checked_by IS NULL) OR (ended_at IS NOT NULL) OR (checked_by = ( SELECT access.me() AS me))));


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
-- Name: episode; Type: ROW SECURITY; Schema: public; Owner: leeward_owner
--

ALTER TABLE public.episode ENABLE ROW LEVEL SECURITY;

--
-- Name: episode_measure; Type: ROW SECURITY; Schema: public; Owner: leeward_owner
--

ALTER TABLE public.episode_measure ENABLE ROW LEVEL SECURITY;

--
-- Name: response errand_adds; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY errand_adds ON public.response FOR INSERT WITH CHECK ((( SELECT access.is_owner() AS is_owner) AND by_client AND (asking_id IS NOT NULL)));


--
-- Name: response_answers errand_adds; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY errand_adds ON public.response_answers FOR INSERT WITH CHECK (( SELECT access.is_owner() AS is_owner));


--
-- Name: risk_flag errand_adds; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY errand_adds ON public.risk_flag FOR INSERT WITH CHECK (( SELECT access.is_owner() AS is_owner));


--
-- Name: client errand_locks; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY errand_locks ON public.client FOR UPDATE USING (( SELECT access.is_owner() AS is_owner));


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
-- Name: mail_address; Type: ROW SECURITY; Schema: public; Owner: leeward_owner
--

ALTER TABLE public.mail_address ENABLE ROW LEVEL SECURITY;

--
-- Name: mail_address own; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY own ON public.mail_address USING ((member_id = ( SELECT access.me() AS me))) WITH CHECK ((member_id = ( SELECT access.me() AS me)));


--
-- Name: practice; Type: ROW SECURITY; Schema: public; Owner: leeward_owner
--

ALTER TABLE public.practice ENABLE ROW LEVEL SECURITY;

--
-- Name: practice_snapshot; Type: ROW SECURITY; Schema: public; Owner: leeward_owner
--

ALTER TABLE public.practice_snapshot ENABLE ROW LEVEL SECURITY;

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
-- Name: asking read; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY read ON public.asking FOR SELECT USING (((client_id IN ( SELECT access.my_clients() AS my_clients)) OR ( SELECT access.has_role('lead'::text) AS has_role)));


--
-- Name: asking_words read; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY read ON public.asking_words FOR SELECT USING ((client_id IN ( SELECT access.my_clients() AS my_clients)));


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
-- Name: episode read; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY read ON public.episode FOR SELECT USING (((client_id IN ( SELECT access.my_clients() AS my_clients)) OR ( SELECT access.has_role('lead'::text) AS has_role)));


--
-- Name: episode_measure read; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY read ON public.episode_measure FOR SELECT USING (((client_id IN ( SELECT access.my_clients() AS my_clients)) OR ( SELECT access.has_role('lead'::text) AS has_role)));


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
-- Name: practice_snapshot read; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY read ON public.practice_snapshot FOR SELECT USING (( SELECT access.has_role('lead'::text) AS has_role));


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
-- Name: response read; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY read ON public.response FOR SELECT USING (((client_id IN ( SELECT access.my_clients() AS my_clients)) OR ( SELECT access.has_role('lead'::text) AS has_role)));


--
-- Name: response_answers read; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY read ON public.response_answers FOR SELECT USING ((client_id IN ( SELECT access.my_clients() AS my_clients)));


--
-- Name: risk_flag read; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY read ON public.risk_flag FOR SELECT USING ((client_id IN ( SELECT access.my_clients() AS my_clients)));


--
-- Name: risk_mail read; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY read ON public.risk_mail FOR SELECT USING ((client_id IN ( SELECT access.my_clients() AS my_clients)));


--
-- Name: risk_told read; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY read ON public.risk_told FOR SELECT USING (((client_id IN ( SELECT access.my_clients() AS my_clients)) OR (member_id = ( SELECT access.me() AS me))));


--
-- Name: safety_plan read; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY read ON public.safety_plan FOR SELECT USING ((client_id IN ( SELECT access.my_clients() AS my_clients)));


--
-- Name: schedule read; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY read ON public.schedule FOR SELECT USING (((client_id IN ( SELECT access.my_clients() AS my_clients)) OR ( SELECT access.has_role('lead'::text) AS has_role)));


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
-- Name: target_still read; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY read ON public.target_still FOR SELECT USING (((client_id IN ( SELECT access.my_clients() AS my_clients)) OR ( SELECT access.has_role('lead'::text) AS has_role)));


--
-- Name: target_words read; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY read ON public.target_words FOR SELECT USING ((client_id IN ( SELECT access.my_clients() AS my_clients)));


--
-- Name: unmeasured read; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY read ON public.unmeasured FOR SELECT USING (((client_id IN ( SELECT access.my_clients() AS my_clients)) OR ( SELECT access.has_role('lead'::text) AS has_role)));


--
-- Name: wording read; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY read ON public.wording FOR SELECT USING ((( SELECT access.me() AS me) IS NOT NULL));


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
-- Name: response; Type: ROW SECURITY; Schema: public; Owner: leeward_owner
--

ALTER TABLE public.response ENABLE ROW LEVEL SECURITY;

--
-- Name: response_answers; Type: ROW SECURITY; Schema: public; Owner: leeward_owner
--

ALTER TABLE public.response_answers ENABLE ROW LEVEL SECURITY;

--
-- Name: response_draft; Type: ROW SECURITY; Schema: public; Owner: leeward_owner
--

ALTER TABLE public.response_draft ENABLE ROW LEVEL SECURITY;

--
-- Name: risk_flag; Type: ROW SECURITY; Schema: public; Owner: leeward_owner
--

ALTER TABLE public.risk_flag ENABLE ROW LEVEL SECURITY;

--
-- Name: risk_mail; Type: ROW SECURITY; Schema: public; Owner: leeward_owner
--

ALTER TABLE public.risk_mail ENABLE ROW LEVEL SECURITY;

--
-- Name: risk_told; Type: ROW SECURITY; Schema: public; Owner: leeward_owner
--

ALTER TABLE public.risk_told ENABLE ROW LEVEL SECURITY;

--
-- Name: safety_plan; Type: ROW SECURITY; Schema: public; Owner: leeward_owner
--

ALTER TABLE public.safety_plan ENABLE ROW LEVEL SECURITY;

--
-- Name: schedule; Type: ROW SECURITY; Schema: public; Owner: leeward_owner
--

ALTER TABLE public.schedule ENABLE ROW LEVEL SECURITY;

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
-- Name: target_still; Type: ROW SECURITY; Schema: public; Owner: leeward_owner
--

ALTER TABLE public.target_still ENABLE ROW LEVEL SECURITY;

--
-- Name: target_words; Type: ROW SECURITY; Schema: public; Owner: leeward_owner
--

ALTER TABLE public.target_words ENABLE ROW LEVEL SECURITY;

--
-- Name: unmeasured; Type: ROW SECURITY; Schema: public; Owner: leeward_owner
--

ALTER TABLE public.unmeasured ENABLE ROW LEVEL SECURITY;

--
-- Name: asking upkeep; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY upkeep ON public.asking USING (( SELECT access.is_owner() AS is_owner)) WITH CHECK (( SELECT access.is_owner() AS is_owner));


--
-- Name: asking_words upkeep; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY upkeep ON public.asking_words FOR SELECT USING (( SELECT access.is_owner() AS is_owner));


--
-- Name: client_key upkeep; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY upkeep ON public.client_key FOR SELECT USING (( SELECT access.is_owner() AS is_owner));


--
-- Name: episode upkeep; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY upkeep ON public.episode FOR SELECT USING (( SELECT access.is_owner() AS is_owner));


--
-- Name: episode_measure upkeep; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY upkeep ON public.episode_measure USING (( SELECT access.is_owner() AS is_owner)) WITH CHECK (( SELECT access.is_owner() AS is_owner));


--
-- Name: fact upkeep; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY upkeep ON public.fact FOR SELECT USING (( SELECT access.is_owner() AS is_owner));


--
-- Name: mail_address upkeep; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY upkeep ON public.mail_address FOR SELECT USING (( SELECT access.is_owner() AS is_owner));


--
-- Name: rating upkeep; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY upkeep ON public.rating FOR SELECT USING (( SELECT access.is_owner() AS is_owner));


--
-- Name: response upkeep; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY upkeep ON public.response FOR SELECT USING (( SELECT access.is_owner() AS is_owner));


--
-- Name: response_draft upkeep; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY upkeep ON public.response_draft USING (( SELECT access.is_owner() AS is_owner)) WITH CHECK (( SELECT access.is_owner() AS is_owner));


--
-- Name: risk_flag upkeep; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY upkeep ON public.risk_flag FOR SELECT USING (( SELECT access.is_owner() AS is_owner));


--
-- Name: risk_mail upkeep; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY upkeep ON public.risk_mail FOR SELECT USING (( SELECT access.is_owner() AS is_owner));


--
-- Name: risk_told upkeep; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY upkeep ON public.risk_told FOR SELECT USING (( SELECT access.is_owner() AS is_owner));


--
-- Name: schedule upkeep; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY upkeep ON public.schedule FOR SELECT USING (( SELECT access.is_owner() AS is_owner));


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
-- Name: target_still upkeep; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY upkeep ON public.target_still USING (( SELECT access.is_owner() AS is_owner)) WITH CHECK (( SELECT access.is_owner() AS is_owner));


--
-- Name: wording upkeep; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY upkeep ON public.wording FOR SELECT USING (( SELECT access.is_owner() AS is_owner));


--
-- Name: episode upkeep_add; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY upkeep_add ON public.episode FOR INSERT WITH CHECK (( SELECT access.is_owner() AS is_owner));


--
-- Name: risk_mail upkeep_add; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY upkeep_add ON public.risk_mail FOR INSERT WITH CHECK (( SELECT access.is_owner() AS is_owner));


--
-- Name: session upkeep_end; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY upkeep_end ON public.session FOR UPDATE USING ((( SELECT access.is_owner() AS is_owner) AND (client_id IN ( SELECT access.rehearsals() AS rehearsals))));


--
-- Name: session upkeep_find; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY upkeep_find ON public.session FOR SELECT USING ((( SELECT access.is_owner() AS is_owner) AND (client_id IN ( SELECT access.rehearsals() AS rehearsals))));


--
-- Name: episode upkeep_fold; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY upkeep_fold ON public.episode FOR UPDATE USING (( SELECT access.is_owner() AS is_owner));


--
-- Name: schedule upkeep_fold; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY upkeep_fold ON public.schedule FOR UPDATE USING (( SELECT access.is_owner() AS is_owner));


--
-- Name: target_course upkeep_fold; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY upkeep_fold ON public.target_course FOR UPDATE USING (( SELECT access.is_owner() AS is_owner));


--
-- Name: wording; Type: ROW SECURITY; Schema: public; Owner: leeward_owner
--

ALTER TABLE public.wording ENABLE ROW LEVEL SECURITY;

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
-- Name: FUNCTION decline(); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.decline() FROM PUBLIC;
GRANT ALL ON FUNCTION access.decline() TO leeward_app;


--
-- Name: FUNCTION demo_member(wanted text); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.demo_member(wanted text) FROM PUBLIC;
GRANT ALL ON FUNCTION access.demo_member(wanted text) TO leeward_signin;


--
-- Name: FUNCTION end_askings(); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.end_askings() FROM PUBLIC;


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
-- Name: FUNCTION end_links(); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.end_links() FROM PUBLIC;


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
-- Name: FUNCTION errand_asking(); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.errand_asking() FROM PUBLIC;
GRANT ALL ON FUNCTION access.errand_asking() TO leeward_app;


--
-- Name: FUNCTION errand_forms(); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.errand_forms() FROM PUBLIC;
GRANT ALL ON FUNCTION access.errand_forms() TO leeward_app;


--
-- Name: TABLE asking; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT ON TABLE public.asking TO leeward_app;


--
-- Name: COLUMN asking.id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(id) ON TABLE public.asking TO leeward_app;


--
-- Name: COLUMN asking.client_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(client_id) ON TABLE public.asking TO leeward_app;


--
-- Name: COLUMN asking.episode_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(episode_id) ON TABLE public.asking TO leeward_app;


--
-- Name: COLUMN asking.number; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(number) ON TABLE public.asking TO leeward_app;


--
-- Name: COLUMN asking.occasion; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(occasion) ON TABLE public.asking TO leeward_app;


--
-- Name: COLUMN asking.measures; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(measures) ON TABLE public.asking TO leeward_app;


--
-- Name: COLUMN asking.asked_by; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(asked_by) ON TABLE public.asking TO leeward_app;


--
-- Name: COLUMN asking.asked_at; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(asked_at) ON TABLE public.asking TO leeward_app;


--
-- Name: COLUMN asking.from_at; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(from_at) ON TABLE public.asking TO leeward_app;


--
-- Name: COLUMN asking.due_on; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(due_on) ON TABLE public.asking TO leeward_app;


--
-- Name: COLUMN asking.until_at; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(until_at) ON TABLE public.asking TO leeward_app;


--
-- Name: COLUMN asking.links; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT UPDATE(links) ON TABLE public.asking TO leeward_app;


--
-- Name: COLUMN asking.closed_as; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT UPDATE(closed_as) ON TABLE public.asking TO leeward_app;


--
-- Name: COLUMN asking.closed_at; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT UPDATE(closed_at) ON TABLE public.asking TO leeward_app;


--
-- Name: FUNCTION errand_writes(of_measure text); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.errand_writes(of_measure text) FROM PUBLIC;


--
-- Name: FUNCTION flag_mailed(flag uuid, member uuid); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.flag_mailed(flag uuid, member uuid) FROM PUBLIC;
GRANT ALL ON FUNCTION access.flag_mailed(flag uuid, member uuid) TO leeward_app;


--
-- Name: FUNCTION flags_past_time(); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.flags_past_time() FROM PUBLIC;
GRANT ALL ON FUNCTION access.flags_past_time() TO leeward_app;


--
-- Name: FUNCTION flags_to_mail(); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.flags_to_mail() FROM PUBLIC;
GRANT ALL ON FUNCTION access.flags_to_mail() TO leeward_app;


--
-- Name: FUNCTION flags_to_me(); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.flags_to_me() FROM PUBLIC;
GRANT ALL ON FUNCTION access.flags_to_me() TO leeward_app;


--
-- Name: FUNCTION fold_first_set(); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.fold_first_set() FROM PUBLIC;


--
-- Name: FUNCTION fold_measure(); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.fold_measure() FROM PUBLIC;


--
-- Name: FUNCTION fold_schedule(); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.fold_schedule() FROM PUBLIC;


--
-- Name: FUNCTION fold_sessions(); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.fold_sessions() FROM PUBLIC;


--
-- Name: FUNCTION fold_still(); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.fold_still() FROM PUBLIC;


--
-- Name: FUNCTION hand_in(response uuid, of_measure text, wording uuid, by_rules smallint, comes_to double precision, filled_up boolean, judged_by smallint, sealed bytea, about bytea, says text, follows integer, from_page uuid); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.hand_in(response uuid, of_measure text, wording uuid, by_rules smallint, comes_to double precision, filled_up boolean, judged_by smallint, sealed bytea, about bytea, says text, follows integer, from_page uuid) FROM PUBLIC;
GRANT ALL ON FUNCTION access.hand_in(response uuid, of_measure text, wording uuid, by_rules smallint, comes_to double precision, filled_up boolean, judged_by smallint, sealed bytea, about bytea, says text, follows integer, from_page uuid) TO leeward_app;


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
-- Name: FUNCTION keep_draft(draft_id uuid, of_measure text, sealed bytea, was integer, to_wording uuid, by_page uuid, nth integer); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.keep_draft(draft_id uuid, of_measure text, sealed bytea, was integer, to_wording uuid, by_page uuid, nth integer) FROM PUBLIC;
GRANT ALL ON FUNCTION access.keep_draft(draft_id uuid, of_measure text, sealed bytea, was integer, to_wording uuid, by_page uuid, nth integer) TO leeward_app;


--
-- Name: FUNCTION keep_episode(); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.keep_episode() FROM PUBLIC;


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
-- Name: FUNCTION let_go_of_drafts(); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.let_go_of_drafts() FROM PUBLIC;


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
-- Name: FUNCTION mint_errand(errand_id uuid, hash bytea, which uuid); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.mint_errand(errand_id uuid, hash bytea, which uuid) FROM PUBLIC;
GRANT ALL ON FUNCTION access.mint_errand(errand_id uuid, hash bytea, which uuid) TO leeward_app;


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
-- Name: FUNCTION my_errand(); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.my_errand() FROM PUBLIC;
GRANT ALL ON FUNCTION access.my_errand() TO leeward_app;


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
-- Name: FUNCTION session_in_episode(); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.session_in_episode() FROM PUBLIC;


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
-- Name: TABLE asking_words; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT ON TABLE public.asking_words TO leeward_app;


--
-- Name: COLUMN asking_words.asking_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(asking_id) ON TABLE public.asking_words TO leeward_app;


--
-- Name: COLUMN asking_words.client_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(client_id) ON TABLE public.asking_words TO leeward_app;


--
-- Name: COLUMN asking_words.event; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(event) ON TABLE public.asking_words TO leeward_app;


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
-- Name: TABLE attended; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT ON TABLE public.attended TO leeward_app;


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
-- Name: TABLE episode; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT ON TABLE public.episode TO leeward_app;


--
-- Name: COLUMN episode.id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(id) ON TABLE public.episode TO leeward_app;


--
-- Name: COLUMN episode.client_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(client_id) ON TABLE public.episode TO leeward_app;


--
-- Name: COLUMN episode.number; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(number) ON TABLE public.episode TO leeward_app;


--
-- Name: COLUMN episode.begun_at; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(begun_at) ON TABLE public.episode TO leeward_app;


--
-- Name: COLUMN episode.ended_at; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT UPDATE(ended_at) ON TABLE public.episode TO leeward_app;


--
-- Name: COLUMN episode.reason; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT UPDATE(reason) ON TABLE public.episode TO leeward_app;


--
-- Name: COLUMN episode.judged_by; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT UPDATE(judged_by) ON TABLE public.episode TO leeward_app;


--
-- Name: COLUMN episode.version; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT UPDATE(version) ON TABLE public.episode TO leeward_app;


--
-- Name: TABLE episode_fold; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT ON TABLE public.episode_fold TO leeward_app;


--
-- Name: TABLE episode_measure; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT ON TABLE public.episode_measure TO leeward_app;


--
-- Name: TABLE response; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT ON TABLE public.response TO leeward_app;


--
-- Name: COLUMN response.id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(id) ON TABLE public.response TO leeward_app;


--
-- Name: COLUMN response.client_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(client_id) ON TABLE public.response TO leeward_app;


--
-- Name: COLUMN response.episode_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(episode_id) ON TABLE public.response TO leeward_app;


--
-- Name: COLUMN response.number; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(number) ON TABLE public.response TO leeward_app;


--
-- Name: COLUMN response.measure; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(measure) ON TABLE public.response TO leeward_app;


--
-- Name: COLUMN response.rules; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(rules) ON TABLE public.response TO leeward_app;


--
-- Name: COLUMN response.occasion; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(occasion) ON TABLE public.response TO leeward_app;


--
-- Name: COLUMN response.answered_at; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(answered_at) ON TABLE public.response TO leeward_app;


--
-- Name: COLUMN response.total; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(total) ON TABLE public.response TO leeward_app;


--
-- Name: COLUMN response.prorated; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(prorated) ON TABLE public.response TO leeward_app;


--
-- Name: COLUMN response.points; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(points) ON TABLE public.response TO leeward_app;


--
-- Name: COLUMN response.by_client; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(by_client) ON TABLE public.response TO leeward_app;


--
-- Name: COLUMN response.replaces; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(replaces) ON TABLE public.response TO leeward_app;


--
-- Name: COLUMN response.withdrawn; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(withdrawn) ON TABLE public.response TO leeward_app;


--
-- Name: COLUMN response.entered_by; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(entered_by) ON TABLE public.response TO leeward_app;


--
-- Name: COLUMN response.kept_at; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(kept_at) ON TABLE public.response TO leeward_app;


--
-- Name: TABLE standing_response; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT ON TABLE public.standing_response TO leeward_app;


--
-- Name: TABLE episode_measure_fold; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT ON TABLE public.episode_measure_fold TO leeward_app;


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
-- Name: TABLE mail_address; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT ON TABLE public.mail_address TO leeward_app;


--
-- Name: COLUMN mail_address.member_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(member_id) ON TABLE public.mail_address TO leeward_app;


--
-- Name: COLUMN mail_address.address; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(address),UPDATE(address) ON TABLE public.mail_address TO leeward_app;


--
-- Name: COLUMN mail_address.changed_at; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(changed_at),UPDATE(changed_at) ON TABLE public.mail_address TO leeward_app;


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
-- Name: COLUMN practice.weeks_without; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT UPDATE(weeks_without) ON TABLE public.practice TO leeward_app;


--
-- Name: COLUMN practice.points_pcl5; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT UPDATE(points_pcl5) ON TABLE public.practice TO leeward_app;


--
-- Name: COLUMN practice.points_anxiety5; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT UPDATE(points_anxiety5) ON TABLE public.practice TO leeward_app;


--
-- Name: COLUMN practice.told_too; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT UPDATE(told_too) ON TABLE public.practice TO leeward_app;


--
-- Name: COLUMN practice.flag_hours; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT UPDATE(flag_hours) ON TABLE public.practice TO leeward_app;


--
-- Name: COLUMN practice.items_at_once; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT UPDATE(items_at_once) ON TABLE public.practice TO leeward_app;


--
-- Name: COLUMN practice.reading_hours; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT UPDATE(reading_hours) ON TABLE public.practice TO leeward_app;


--
-- Name: COLUMN practice.single_courses; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT UPDATE(single_courses) ON TABLE public.practice TO leeward_app;


--
-- Name: COLUMN practice.direct_calls; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT UPDATE(direct_calls) ON TABLE public.practice TO leeward_app;


--
-- Name: COLUMN practice.unseen_seconds; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT UPDATE(unseen_seconds) ON TABLE public.practice TO leeward_app;


--
-- Name: TABLE practice_snapshot; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT ON TABLE public.practice_snapshot TO leeward_app;


--
-- Name: COLUMN practice_snapshot.id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(id) ON TABLE public.practice_snapshot TO leeward_app;


--
-- Name: COLUMN practice_snapshot.first_day; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(first_day) ON TABLE public.practice_snapshot TO leeward_app;


--
-- Name: COLUMN practice_snapshot.last_day; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(last_day) ON TABLE public.practice_snapshot TO leeward_app;


--
-- Name: COLUMN practice_snapshot.made_at; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(made_at) ON TABLE public.practice_snapshot TO leeward_app;


--
-- Name: COLUMN practice_snapshot.made_by; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(made_by) ON TABLE public.practice_snapshot TO leeward_app;


--
-- Name: COLUMN practice_snapshot.figures; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(figures) ON TABLE public.practice_snapshot TO leeward_app;


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
-- Name: TABLE response_answers; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT ON TABLE public.response_answers TO leeward_app;


--
-- Name: COLUMN response_answers.response_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(response_id) ON TABLE public.response_answers TO leeward_app;


--
-- Name: COLUMN response_answers.client_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(client_id) ON TABLE public.response_answers TO leeward_app;


--
-- Name: COLUMN response_answers.answers; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(answers) ON TABLE public.response_answers TO leeward_app;


--
-- Name: COLUMN response_answers.event; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(event) ON TABLE public.response_answers TO leeward_app;


--
-- Name: TABLE response_draft; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT ON TABLE public.response_draft TO leeward_app;


--
-- Name: TABLE risk_flag; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT ON TABLE public.risk_flag TO leeward_app;


--
-- Name: COLUMN risk_flag.response_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(response_id) ON TABLE public.risk_flag TO leeward_app;


--
-- Name: COLUMN risk_flag.client_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(client_id) ON TABLE public.risk_flag TO leeward_app;


--
-- Name: COLUMN risk_flag.says; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(says) ON TABLE public.risk_flag TO leeward_app;


--
-- Name: COLUMN risk_flag.raised_at; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(raised_at) ON TABLE public.risk_flag TO leeward_app;


--
-- Name: COLUMN risk_flag.done; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT UPDATE(done) ON TABLE public.risk_flag TO leeward_app;


--
-- Name: COLUMN risk_flag.done_at; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT UPDATE(done_at) ON TABLE public.risk_flag TO leeward_app;


--
-- Name: COLUMN risk_flag.done_by; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT UPDATE(done_by) ON TABLE public.risk_flag TO leeward_app;


--
-- Name: TABLE risk_mail; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT ON TABLE public.risk_mail TO leeward_app;


--
-- Name: TABLE risk_told; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT ON TABLE public.risk_told TO leeward_app;


--
-- Name: COLUMN risk_told.response_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(response_id) ON TABLE public.risk_told TO leeward_app;


--
-- Name: COLUMN risk_told.client_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(client_id) ON TABLE public.risk_told TO leeward_app;


--
-- Name: COLUMN risk_told.member_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(member_id) ON TABLE public.risk_told TO leeward_app;


--
-- Name: COLUMN risk_told.at; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(at) ON TABLE public.risk_told TO leeward_app;


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
-- Name: TABLE schedule; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT ON TABLE public.schedule TO leeward_app;


--
-- Name: COLUMN schedule.client_id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(client_id) ON TABLE public.schedule TO leeward_app;


--
-- Name: COLUMN schedule.measures; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(measures),UPDATE(measures) ON TABLE public.schedule TO leeward_app;


--
-- Name: COLUMN schedule.every; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(every),UPDATE(every) ON TABLE public.schedule TO leeward_app;


--
-- Name: COLUMN schedule.follow_up_weeks; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(follow_up_weeks),UPDATE(follow_up_weeks) ON TABLE public.schedule TO leeward_app;


--
-- Name: COLUMN schedule.set_at; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(set_at),UPDATE(set_at) ON TABLE public.schedule TO leeward_app;


--
-- Name: COLUMN schedule.version; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT UPDATE(version) ON TABLE public.schedule TO leeward_app;


--
-- Name: TABLE schedule_due; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT ON TABLE public.schedule_due TO leeward_app;


--
-- Name: TABLE schedule_fold; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT ON TABLE public.schedule_fold TO leeward_app;


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
-- Name: TABLE target_still; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT ON TABLE public.target_still TO leeward_app;


--
-- Name: TABLE target_still_fold; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT ON TABLE public.target_still_fold TO leeward_app;


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
-- Name: TABLE wording; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT ON TABLE public.wording TO leeward_app;


--
-- Name: COLUMN wording.id; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(id) ON TABLE public.wording TO leeward_app;


--
-- Name: COLUMN wording.measure; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(measure) ON TABLE public.wording TO leeward_app;


--
-- Name: COLUMN wording.body; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(body) ON TABLE public.wording TO leeward_app;


--
-- Name: COLUMN wording.loaded_by; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(loaded_by) ON TABLE public.wording TO leeward_app;


--
-- Name: COLUMN wording.loaded_at; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT INSERT(loaded_at) ON TABLE public.wording TO leeward_app;


--
-- Name: COLUMN wording.checked_by; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT UPDATE(checked_by) ON TABLE public.wording TO leeward_app;


--
-- Name: COLUMN wording.checked_at; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT UPDATE(checked_at) ON TABLE public.wording TO leeward_app;


--
-- Name: COLUMN wording.ended_at; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT UPDATE(ended_at) ON TABLE public.wording TO leeward_app;


--
-- PostgreSQL database dump complete
--

\unrestrict 8HtyGWCKeGqJFK1yEZNdxvyJ5eCY7aNhuh0Gao7jYXj1G2h181YaCvnkx1d3I1H

