-- Written by ./tests/run --dump at migration 25. Sealed under the tests' key, 5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a.
--
-- PostgreSQL database dump
--

\restrict 7ookTffgRfTERJa8GxFbotyail0OfTXixLxGzgfFdIXHjnIReAfDJDHgpQd2c3L

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
-- Name: flags_past_time(); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.flags_past_time() RETURNS TABLE(client_id uuid, days_late integer, told bigint)
    LANGUAGE plpgsql STABLE SECURITY DEFINER
    SET search_path TO 'pg_catalog', 'pg_temp'
    AS $$
BEGIN
  IF access.has_role('lead') IS NOT TRUE THEN RETURN; END IF;
  RETURN QUERY SELECT f.client_id, extract(day FROM access.now() - f.raised_at - make_interval(hours => p.flag_hours))::integer, (SELECT count(*) FROM public.risk_told t WHERE t.response_id = f.response_id)
    FROM public.risk_flag f, public.practice p WHERE f.done IS NULL AND f.raised_at < access.now() - make_interval(hours => p.flag_hours);
END $$;


ALTER FUNCTION access.flags_past_time() OWNER TO leeward_owner;

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
      AND EXISTS (SELECT FROM public.session s WHERE s.episode_id = OLD.id AND s.ended_at IS NULL) THEN
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
    CONSTRAINT episode_reason_check CHECK ((reason = ANY (ARRAY['as_agreed'::text, 'early_by_agreement'::text, 'client_ended'::text, 'referred_on'::text, 'crisis'::text, 'moved'::text, 'clinician_left'::text, 'died'::text, 'unknown'::text]))),
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
    CONSTRAINT check_in_order CHECK ((check_from < check_until)),
    CONSTRAINT practice_check CHECK (((reserve >= 0) AND (reserve <= 60) AND (reserve < minutes))),
    CONSTRAINT practice_check_from_check CHECK (((check_from >= 1) AND (check_from <= 168))),
    CONSTRAINT practice_check_until_check CHECK (((check_until >= 1) AND (check_until <= 336))),
    CONSTRAINT practice_clock_check CHECK ((clock = ANY (ARRAY[12, 24]))),
    CONSTRAINT practice_crisis_words_check CHECK ((char_length(crisis_words) <= 600)),
    CONSTRAINT practice_day_order_check CHECK ((day_order = ANY (ARRAY['day_first'::text, 'month_first'::text, 'year_first'::text]))),
    CONSTRAINT practice_flag_hours_check CHECK (((flag_hours >= 1) AND (flag_hours <= 168))),
    CONSTRAINT practice_minutes_check CHECK (((minutes >= 10) AND (minutes <= 240))),
    CONSTRAINT practice_places_check CHECK ((char_length(places) <= 1000)),
    CONSTRAINT practice_points_anxiety5_check CHECK ((points_anxiety5 = ANY (ARRAY[4, 5]))),
    CONSTRAINT practice_points_pcl5_check CHECK ((points_pcl5 = ANY (ARRAY[10, 15, 18]))),
    CONSTRAINT practice_singleton_check CHECK (singleton),
    CONSTRAINT practice_stuck_after_check CHECK ((stuck_after = ANY (ARRAY[2, 3]))),
    CONSTRAINT practice_weeks_without_check CHECK (((weeks_without >= 2) AND (weeks_without <= 52)))
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
member	episode.view	f
member	episode.begin	f
member	episode.end	f
member	measure.view	f
member	measure.enter	f
member	measure.withdraw	f
member	flag.close	f
\.


--
-- Data for Name: audit_head; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.audit_head (singleton, seq, hash) FROM stdin;
t	62	\\x4454b4879ee5aad012878b69d43063e21757941410000ae08b43cdf684588ed4
\.


--
-- Data for Name: care_link; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.care_link (id, member_id, client_id, since, until) FROM stdin;
64449dab-41c5-48d5-9c90-45e0ca049f3a	072ce82b-c588-45cd-9a00-9988b3f75896	044cb0de-c701-4a42-aec2-9aa1025c579f	2026-03-03 09:00:00+00	\N
c5183eaf-b5ce-4e32-b786-0a8dafd483e8	072ce82b-c588-45cd-9a00-9988b3f75896	96a205d3-0ef5-4eff-8869-96a37a9d700b	2026-03-10 09:04:22+00	\N
084eb977-8acb-424d-a1cf-30427baf8072	072ce82b-c588-45cd-9a00-9988b3f75896	b181524d-118d-48c6-9ab0-edd40889fbb3	2026-03-10 09:04:22+00	\N
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
5ef81d4e-dc00-4936-b105-32be438e6d58	044cb0de-c701-4a42-aec2-9aa1025c579f	2026-03-03 09:04:22+00
b0a225ed-d779-46b7-8d49-44ac3c51b9aa	044cb0de-c701-4a42-aec2-9aa1025c579f	\N
07dcb125-6c15-44f6-9bbd-9d06cea54626	96a205d3-0ef5-4eff-8869-96a37a9d700b	\N
\.


--
-- Data for Name: invitation; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.invitation (token_hash, member_id, name, roles, made_by, made_at, ends_at, spent_at, made_in, replacement) FROM stdin;
\\x041189c1a9834b236de837bdfea127c7be89cde49f1215dcfb57e30ef1846c0c	\N	Somebody New	{lead}	bb496a14-abb8-49db-86ff-f586040fdfa0	2026-03-03 09:01:00+00	2026-03-06 09:01:00+00	\N	a65e8ef2-89a1-41a9-8e7c-03e13deba760	\N
\.


--
-- Data for Name: join_link; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.join_link (id, token_hash, session_id, made_at, ends_at, revoked_at, code_phc, code_ends_at, code_tries, code_spent_at) FROM stdin;
4bb7efbc-d7dc-454e-b1f9-8390a5192421	\\x3e8e6f2223ddf0d2da2890398530458f48017c1b0fa8e1e72c95dd229b45be2f	b0a225ed-d779-46b7-8d49-44ac3c51b9aa	2026-03-10 09:04:22+00	2026-03-10 13:04:22+00	\N	$argon2id$v=19$m=19456,t=2,p=1$3+NZVfKJzsZPAyE8P82djw$Eaax1xihMfmYj1vr8NKBacDEh3hS8F/7kugHk+60x8I	2026-03-10 09:14:22+00	1	2026-03-10 09:04:22+00
\.


--
-- Data for Name: key_check; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.key_check (key_id, sealed) FROM stdin;
1	\\x015f1b75b9cbee317ee54c3b1e3a5a27a3329395ebd5491b83616f173500e8f96eef3663c513ce02a533e407b681
\.


--
-- Data for Name: member; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.member (id, name, roles, joined_at, left_at, roles_since) FROM stdin;
072ce82b-c588-45cd-9a00-9988b3f75896	Member 072ce8	{clinician}	2026-03-03 09:00:00+00	\N	\N
e4987c89-1c49-458d-bbf6-989e9e4414b9	Member e4987c	{lead}	2026-03-03 09:01:00+00	\N	\N
bb496a14-abb8-49db-86ff-f586040fdfa0	Member bb496a	{administrator}	2026-03-03 09:01:00+00	\N	\N
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
072ce82b-c588-45cd-9a00-9988b3f75896	96a205d3-0ef5-4eff-8869-96a37a9d700b
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
bb496a14-abb8-49db-86ff-f586040fdfa0	2f31440e-efa9-34b9-8958-0a79e38d1ca4	member.invite	\\xe2363b47c16ec24771f466dcafefd75b082e8e3016e2f9e70ec7728212875a63	{"json":"2026-03-06T09:01:00Z"}	2026-03-03 09:01:00+00
bb496a14-abb8-49db-86ff-f586040fdfa0	20ae57a1-2c90-65c5-6b49-dbd61cbc7595	practice.settings.change	\\x79ad68e107e0a890f79e286d96e38040d2702dc48edc35e19ca85e653e8e7999	{"see":"/practice/settings?saved=20ae57a1-2c90-65c5-6b49-dbd61cbc7595"}	2026-03-03 09:01:00+00
072ce82b-c588-45cd-9a00-9988b3f75896	dc7633dc-bd72-0875-6c44-03107ec4ef63	preset.create	\\x67f8aa3b84c8869b415acfe4c1f6e316f15397a9a65a578df07867f203fe5edd	{"see":"/presets?saved=dc7633dc-bd72-0875-6c44-03107ec4ef63"}	2026-03-03 09:01:00+00
072ce82b-c588-45cd-9a00-9988b3f75896	151f6d06-814a-7f11-5fe2-e896f80dae61	preset.create	\\x953d427bf0820728e80909e2230864766d0a7b14539231a9a15be4eec05db0a0	{"see":"/presets?saved=151f6d06-814a-7f11-5fe2-e896f80dae61"}	2026-03-03 09:01:00+00
072ce82b-c588-45cd-9a00-9988b3f75896	0cb8919c-14a5-f686-490d-c868d94e2a5b	preset.put_away	\\x7d4f828a583b92a24935f7fa152dfed5f6a19b69aa3c05c9abcdcda703bd04d5	{"see":"/presets"}	2026-03-03 09:01:00+00
072ce82b-c588-45cd-9a00-9988b3f75896	122815e8-c4ce-edd8-8dd7-7ffbe7865ebc	client.change	\\xc70acaf2e505d55bdfc378b96f53987b1bf2c7d5cb10b1e3486b3a3e09b72d10	{"see":"/clients/044cb0de-c701-4a42-aec2-9aa1025c579f?saved=122815e8-c4ce-edd8-8dd7-7ffbe7865ebc"}	2026-03-03 09:01:00+00
072ce82b-c588-45cd-9a00-9988b3f75896	1ab0d335-b40c-644c-7043-1b1f210247bd	comfort.change	\\xcdf68b7f9738e1cc63937dde20bd88482de3684c3b17c2d058b282ed2688f9fa	{"see":"/clients/044cb0de-c701-4a42-aec2-9aa1025c579f?saved=1ab0d335-b40c-644c-7043-1b1f210247bd"}	2026-03-03 09:01:00+00
072ce82b-c588-45cd-9a00-9988b3f75896	9cdc771d-f995-960c-63f6-878ca454e1b0	safety_plan.change	\\x01240058e659a4e96d39a74031c5224f56ee275a8d16cc6e10bee64fb065de8f	{"see":"/clients/044cb0de-c701-4a42-aec2-9aa1025c579f/safety-plan?saved=9cdc771d-f995-960c-63f6-878ca454e1b0"}	2026-03-03 09:01:00+00
072ce82b-c588-45cd-9a00-9988b3f75896	6bc948fa-89cb-6f67-017f-edb3c07e9d29	steadying.change	\\x1c23db7e4f950da7c95ae9ea82929bcab46e3107ddac48b0283291ad21ec2da2	{"see":"/clients/044cb0de-c701-4a42-aec2-9aa1025c579f/steadying?saved=6bc948fa-89cb-6f67-017f-edb3c07e9d29"}	2026-03-03 09:01:00+00
072ce82b-c588-45cd-9a00-9988b3f75896	2be14f83-53b4-8c56-4bf8-ebe6061acdd9	reach.change	\\x287ae8447a74b192840984907efcde273ecdccdc920251c7a91ff3008c19427e	{"see":"/clients/044cb0de-c701-4a42-aec2-9aa1025c579f?saved=2be14f83-53b4-8c56-4bf8-ebe6061acdd9"}	2026-03-03 09:01:00+00
072ce82b-c588-45cd-9a00-9988b3f75896	e01014fc-e06d-6ea2-300d-3b7329e5aa84	resource.create	\\xbbc3c6075eb07e50d0d7ad8476064591c9a691561fff915bffbbdbab2a5ddad1	{"see":"/clients/044cb0de-c701-4a42-aec2-9aa1025c579f/steadying?saved=e01014fc-e06d-6ea2-300d-3b7329e5aa84"}	2026-03-03 09:01:00+00
072ce82b-c588-45cd-9a00-9988b3f75896	0895ed35-5065-f1c4-4608-db94dfe23d31	event.create	\\x9aee00580bf8e7d0a83d448cd4592e69521965435271bb4962d6df3073554dbb	{"see":"/clients/044cb0de-c701-4a42-aec2-9aa1025c579f/events?saved=0895ed35-5065-f1c4-4608-db94dfe23d31"}	2026-03-03 09:01:00+00
072ce82b-c588-45cd-9a00-9988b3f75896	89d4da92-ce92-f69e-0a5a-52e2912ccd01	target.change	\\x605fe58e9ab21e948530f42eb2ceb51b9a5189c05075ea3a2434b4c8770a2fde	{"see":"/targets/66228bd8-c47f-46fa-8cb5-1a1e82c1fd11?saved=89d4da92-ce92-f69e-0a5a-52e2912ccd01"}	2026-03-03 09:02:00+00
072ce82b-c588-45cd-9a00-9988b3f75896	4e5654f8-cbce-2e40-b43d-18d1048ba35a	target.change	\\x1425f7100407d7cdbb8c03986e20afd94c978df814502ac65854f99e9d8ce93d	{"see":"/targets/66228bd8-c47f-46fa-8cb5-1a1e82c1fd11?saved=4e5654f8-cbce-2e40-b43d-18d1048ba35a"}	2026-03-03 09:02:00+00
072ce82b-c588-45cd-9a00-9988b3f75896	0b669367-b78d-1e52-38a1-3602bca83310	plan.cluster	\\x196cb957c3794713eb0584f4b4d46281e8fbaa5674ed5b4777ff3f8e485e44e8	{"see":"/clients/044cb0de-c701-4a42-aec2-9aa1025c579f/plan?saved=0b669367-b78d-1e52-38a1-3602bca83310"}	2026-03-03 09:02:00+00
072ce82b-c588-45cd-9a00-9988b3f75896	02cef801-c225-08b2-052d-f2b55e53c592	target.create	\\xc911ea42fb3c7a25e783bd8eac41e52db2fdab5ec9678fcee5f2a11b75b78c9f	{"see":"/targets/9c4c97b5-dd64-45c3-b87e-f558fe714136?saved=02cef801-c225-08b2-052d-f2b55e53c592"}	2026-03-03 09:02:00+00
072ce82b-c588-45cd-9a00-9988b3f75896	be9d8e68-204a-f2e7-9c78-45d29ba32532	plan.move	\\x73519ecab28a5b2cf703544dd4ae9d666c84b2acfa594445b0293408a79a56e1	{"see":"/clients/044cb0de-c701-4a42-aec2-9aa1025c579f/plan#target-2"}	2026-03-03 09:02:00+00
072ce82b-c588-45cd-9a00-9988b3f75896	fba84c7b-400e-81a5-28b3-72704a4081e2	target.fact	\\x47aa79fb9932d04cf6c05cded96db5c0d813189be2afc45255d40dd57afde951	{"see":"/targets/66228bd8-c47f-46fa-8cb5-1a1e82c1fd11?saved=fba84c7b-400e-81a5-28b3-72704a4081e2"}	2026-03-03 09:03:41+00
072ce82b-c588-45cd-9a00-9988b3f75896	966daf8d-fe1e-7666-2ed0-b09a521ed6c0	target.fact	\\x02d977337be7ceedd72fe074f2707b4757a94294ac98e60d2594ba39f5b9c88e	{"see":"/targets/66228bd8-c47f-46fa-8cb5-1a1e82c1fd11?saved=966daf8d-fe1e-7666-2ed0-b09a521ed6c0"}	2026-03-03 09:03:41+00
072ce82b-c588-45cd-9a00-9988b3f75896	80da6697-6e26-3105-ff53-0a94910407d9	target.fact	\\x9559030edbc97588cdefa756bfa2d7bbe3db2248933f618d9a8dee68711efa34	{"see":"/targets/66228bd8-c47f-46fa-8cb5-1a1e82c1fd11?saved=80da6697-6e26-3105-ff53-0a94910407d9"}	2026-03-03 09:03:41+00
072ce82b-c588-45cd-9a00-9988b3f75896	6582f6ef-f0f5-42a3-cec9-88f92452f0c8	session.close	\\xba4a9859768c0e3347863e78b0d61b629ff06f9822d73b35760077e763de72c2	{"see":"/sessions/5ef81d4e-dc00-4936-b105-32be438e6d58?saved=6582f6ef-f0f5-42a3-cec9-88f92452f0c8"}	2026-03-03 09:04:22+00
072ce82b-c588-45cd-9a00-9988b3f75896	08f7929d-1bdc-570f-ceec-d2ddb195cc2d	session.check	\\x64c1ee0c96e640065be94c12c27ef1d1bb4eb025501597f8942f082ae89b421d	{"see":"/sessions/5ef81d4e-dc00-4936-b105-32be438e6d58?saved=08f7929d-1bdc-570f-ceec-d2ddb195cc2d"}	2026-03-03 09:04:22+00
072ce82b-c588-45cd-9a00-9988b3f75896	de5fffa2-015a-3052-be1b-a5e1d00ed4dd	session.note.save	\\xd4c7e7611f7a25059bfc6c5049a4befb857b2382ec243f65541d2ccb433abf99	{"see":"/sessions/5ef81d4e-dc00-4936-b105-32be438e6d58?saved=de5fffa2-015a-3052-be1b-a5e1d00ed4dd#note"}	2026-03-03 09:04:22+00
072ce82b-c588-45cd-9a00-9988b3f75896	7b66d210-f502-c0fd-d847-5b29ee881abb	link.make	\\x44136fa355b3678a1146ad16f7e8649e94fb4fc21fe77e8310c060f61caaff8a	{"json":"2026-03-10T09:14:22Z"}	2026-03-10 09:04:22+00
072ce82b-c588-45cd-9a00-9988b3f75896	70927939-c978-e129-987f-b413c17692b4	code.make	\\x44136fa355b3678a1146ad16f7e8649e94fb4fc21fe77e8310c060f61caaff8a	{"json":"2026-03-10T09:14:22Z"}	2026-03-10 09:04:22+00
072ce82b-c588-45cd-9a00-9988b3f75896	16a4013e-d05f-ad45-d22a-7f4d4ad9727f	client.archive	\\x7d4f828a583b92a24935f7fa152dfed5f6a19b69aa3c05c9abcdcda703bd04d5	{"see":"/clients/b181524d-118d-48c6-9ab0-edd40889fbb3"}	2026-03-10 09:04:22+00
\.


--
-- Data for Name: room_token; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.room_token (token_hash, session_id, ends_at) FROM stdin;
\\xb896f8c4e84c48d07570fd763cc0849e863053a63a061fef5be10badf6e18c94	5ef81d4e-dc00-4936-b105-32be438e6d58	2026-03-04 09:02:01+00
\\x474f3f67f89a7690b0a024727efcb8d45a9f4a368ea66402cd67beaa568ef108	5ef81d4e-dc00-4936-b105-32be438e6d58	2026-03-04 09:02:35+00
\\x288d4cd828a587fb0a05f46702b1828d3aa0f4e9431827d1078b2f4d6acbb45a	5ef81d4e-dc00-4936-b105-32be438e6d58	2026-03-04 09:03:07+00
\\x0015caf8e7d01008ca5a4b4624ead036fa352db997dd2ed226dff7499117c901	5ef81d4e-dc00-4936-b105-32be438e6d58	2026-03-04 09:03:41+00
\.


--
-- Data for Name: seat; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.seat (id, token_hash, link_id, session_id, device, asked_at, taken_at, closed_at, asked_no, admitted_at, closed_why) FROM stdin;
4138b7d4-2d61-4b0b-a837-bb90e54ccad9	\\xcacb1d82b723a7dfa78c9e73a83324c96b9bf873e7b8150779ea1d6e4099f0e7	4bb7efbc-d7dc-454e-b1f9-8390a5192421	b0a225ed-d779-46b7-8d49-44ac3c51b9aa	device	2026-03-10 09:04:22+00	2026-03-10 09:04:22+00	\N	1	2026-03-10 09:04:22+00	\N
fab21e67-62bc-47ce-a1c9-483dd506aeee	\\x331eb90eb496524ef90f2f4a1ca3302d7271135b766b19ae41eb802e2c96f7cf	4bb7efbc-d7dc-454e-b1f9-8390a5192421	b0a225ed-d779-46b7-8d49-44ac3c51b9aa	device	2026-03-10 09:04:22+00	\N	\N	2	\N	\N
\.


--
-- Data for Name: signin; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.signin (id, token_hash, member_id, device, opened_at, seen_at, ends_at, closed_at, shown_at) FROM stdin;
0a199728-63b2-4ea6-927c-c05de0eec2a9	\\xb203a311cf77c507114ae6f6eafa9a6425eb5aedac2d52c7c1163162930ad2e1	e4987c89-1c49-458d-bbf6-989e9e4414b9	a test	2026-03-03 09:01:00+00	2026-03-03 09:01:00+00	2026-03-03 21:01:00+00	\N	2026-03-03 09:01:00+00
a65e8ef2-89a1-41a9-8e7c-03e13deba760	\\x7618c49b949dbd58ab81b70c519c8f9079b18950e491aa2fbcc34899735c5002	bb496a14-abb8-49db-86ff-f586040fdfa0	a test	2026-03-03 09:01:00+00	2026-03-03 09:01:00+00	2026-03-03 21:01:00+00	\N	2026-03-03 09:01:00+00
b8cfdbd0-209a-41c9-b6e9-8aae56063a3d	\\x61f32da9d7a03f3827ae1817fdb62a4f14bd7e85f20493fbabf17fa23a135837	072ce82b-c588-45cd-9a00-9988b3f75896	a test	2026-03-03 09:00:00+00	2026-03-03 09:04:12+00	2026-03-03 21:00:00+00	\N	2026-03-03 09:00:00+00
8ba2936d-f2a2-49ee-99e1-c4634410279f	\\x41e51a32fd17706ce7c8f4ce02d8a83fb0e1139956725b641fdc398360c2b4e9	072ce82b-c588-45cd-9a00-9988b3f75896	a test	2026-03-10 09:04:22+00	2026-03-10 09:04:22+00	2026-03-10 21:04:22+00	\N	2026-03-10 09:04:22+00
\.


--
-- Data for Name: _sqlx_migrations; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public._sqlx_migrations (version, description, installed_on, success, checksum, execution_time) FROM stdin;
1	access	2026-11-29 15:32:02.714251+00	t	\\xee58a96d68f93385e2e3af6d4390382fcafdadee1b3238242b344c60c94a8a4273a40010f4ba1d66f24207ad6aa82776	23421655
2	acts	2026-11-29 15:32:02.738467+00	t	\\x0f1c508e40ba3792e8e2c58fc8d185e11836f9b1edbc9ee5e6fc9a92df9e176255b3f22d035b99a39cacc5519227d601	5915776
3	audit	2026-11-29 15:32:02.744774+00	t	\\x2dcb585f14b456aae15b0d06e9e436a1575c0781ae10803bee3b70623ac409a8962de276d2dcd3a58ef61135aed43953	6784111
4	records	2026-11-29 15:32:02.751924+00	t	\\x9c4ec09ed84e6bff571cb8c4e9522c0282f285dad35065f146b0b53be2e4bac359f321e4dcfa97ba7635f5070af5291c	11000231
5	sessions	2026-11-29 15:32:02.76337+00	t	\\x3013bebd83db0d46eca7767511705f52abb32a744ff204f5bdcb3afb063c1a18464207dd188aa4c42cd742db6aff73a7	26226041
6	standing ratings	2026-11-29 15:32:02.790168+00	t	\\xa43c139ae2899d8e1dc400509333c23cb35febf1c311c95315c815ad8f5786811785868cfde2df96ad491c1e641366e6	1545618
7	preparation	2026-11-29 15:32:02.792032+00	t	\\x4039cb17dce2ac0b1a5c9987dfad7b5d9423a5d32f43e2faaf08827b835146f0e59d31276bd09283dad5a4c90562ba0b	8744417
8	kept once	2026-11-29 15:32:02.801204+00	t	\\xe127621eaa8d28ce25c37396363f914cbc8bf50c61eb3e086ca8f6f279ee945eb2403ea2402783472868733728cbc2f5	14304697
9	assessments	2026-11-29 15:32:02.815891+00	t	\\x5bf0696b51deb48ebfb71a27a4779e2da2efaf85174c4c7b8b0b88f67c867051a235ae6a038426b2cf9714b07de370d5	9317691
10	upkeep	2026-11-29 15:32:02.82564+00	t	\\x3f4a71c2e96ccf63581bbe1594408bc7672b13212d73c6347be4c10e049e853222b107f9a5cd31e2d60284bb9445afb4	3504267
11	known endings	2026-11-29 15:32:02.829442+00	t	\\x0a97a58fbc94f4dd07219030a06389d787aa440be152804e2a07da2545acf733ac66f06c456acba078caf09dba984cf9	1296399
12	second wall	2026-11-29 15:32:02.830968+00	t	\\xf2b839c5ed136915edd9a3b5082421152ff644aa35c788cc4b55ffd93fee695d696210983c475948599bf94dfa4ff539	10482625
13	nobody stranded	2026-11-29 15:32:02.841828+00	t	\\x14f8e04a51d086fbaab1b3f6845afc067d25ffcdd89dc5a3652defe3c568c12141846c15a94cdee63511346587aa0e3e	8649201
14	stays open	2026-11-29 15:32:02.850813+00	t	\\xbce641e43ef5e0a37f25030aa8d2da5628e88f328a4d46878446cf4ef20fa7db69a7cd2d0b7e66f503d1ef5004e8a710	951048
15	two at once	2026-11-29 15:32:02.852045+00	t	\\x6f2a8632031128d32d81d4dd3eec3afc45deb68c1f16f7e143b018e44e8d9a00c505c026c575835e9587cf861c582fac	12327936
16	how it is written	2026-11-29 15:32:02.864721+00	t	\\x76aae8e7a2d18d6f2f5f65227d5f5a5865bf26fe68b97b1d1cb74bc59f6299d8dbe7689172a944793865827bbd38bd66	1675239
17	course	2026-11-29 15:32:02.866676+00	t	\\xa6254301cb4d15288063fe66b8a02baa70a3925524c246e747736d986981e46e74715411e206af41f1b599e4cef99e12	17629202
18	opening	2026-11-29 15:32:02.884692+00	t	\\xec2d5896e3cabcf441991fedb5b6ef7c462b59ed2e2a4d339766d3daa9067a2d72250bffbda5645b9c0a9d4eafda4d70	18886072
19	plan	2026-11-29 15:32:02.905127+00	t	\\xba1afbb9b61f7e89c65231c839f2edede3bd4c82d1b2ef548d676cd47f34247a72fdf379b5a54a99bb49baa43fefd7d6	15080616
20	safety plan	2026-11-29 15:32:02.92057+00	t	\\x661fdedd23a5f1e2b96fd0538d32407e3d2efe1750893a2174a824ffb12ba9fb7ee7ae190d36377151f0f5816e8029c0	3013851
21	hour	2026-11-29 15:32:02.92392+00	t	\\x21ba20d76eea6e42b7171d17d12dccbfd565d47b2f65d4068699502c8c9cab0159f3aadf5f4acf2f4d3245fd3b2b57d7	20399888
22	events	2026-11-29 15:32:02.944706+00	t	\\x7f252014b7699a5b0c0bdd5c30bd3c4e1798b52b2a2076c152d7e178209a9ec0daae5055c05e17e644f520482901d6f0	8330520
23	safety	2026-11-29 15:32:02.953422+00	t	\\x4893ee25fbe357773f5af9c82ee6c3a70c299c9de4d4f58d0c917e9de811ce4297cee7ba335edfa265c6b7532c9eb4ae	851710
24	episodes	2026-11-29 15:32:02.954514+00	t	\\x6eecf5746cf428275f63c5026520fc1f62032d3c5d2b1c9e698680542137a479c442416b461e915e1c2768045e3ce133	12543170
25	measures	2026-11-29 15:32:02.967446+00	t	\\x3beafd1c2f0e7548b538e159de11717ae16e5aafa16a9fc5f755f55a99c55116240dbe76ae44edc6c9b240cb987db2a2	21037762
\.


--
-- Data for Name: adverse_account; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.adverse_account (event_id, client_id, account) FROM stdin;
84edc98a-94ae-41a4-a0e1-7db955582e3c	044cb0de-c701-4a42-aec2-9aa1025c579f	\\x017643176f1baa45aacd92033c3dd3975e60efc7a22ea57d3e5c25ac58aacd2d09ddbbebc4e530ca76c7
\.


--
-- Data for Name: adverse_event; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.adverse_event (id, client_id, session_id, number, kind, happened_at, done, replaces, written_by, written_at) FROM stdin;
84edc98a-94ae-41a4-a0e1-7db955582e3c	044cb0de-c701-4a42-aec2-9aa1025c579f	\N	1	panic	2026-01-02 09:30:00+00	called	\N	072ce82b-c588-45cd-9a00-9988b3f75896	2026-03-03 09:01:00+00
\.


--
-- Data for Name: after_check; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.after_check (session_id, client_id, member_id, reason, due_from, due_until) FROM stdin;
5ef81d4e-dc00-4936-b105-32be438e6d58	044cb0de-c701-4a42-aec2-9aa1025c579f	072ce82b-c588-45cd-9a00-9988b3f75896	too_much	2026-03-03 21:04:22+00	2026-03-05 09:04:22+00
\.


--
-- Data for Name: after_check_try; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.after_check_try (id, session_id, client_id, outcome, entered_by, at, seq) FROM stdin;
1ecacc59-0153-460b-b5df-23ef9a5bf1cc	5ef81d4e-dc00-4936-b105-32be438e6d58	044cb0de-c701-4a42-aec2-9aa1025c579f	not_reached	072ce82b-c588-45cd-9a00-9988b3f75896	2026-03-03 09:04:22+00	38
\.


--
-- Data for Name: audit; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.audit (seq, at, kind, member_id, act, client_id, object_id, previous, hash) FROM stdin;
1	2026-03-03 09:00:00+00	member	072ce82b-c588-45cd-9a00-9988b3f75896	client.create	044cb0de-c701-4a42-aec2-9aa1025c579f	\N	\\x1049f89a5ef4bff11e67b37b9945096f203ea0c09e92a8bc7dc4a04461f6529f	\\x14cadf2e675e00e78fd762e1d99075e7252a1246ea3c0e02d57e39bac200c0f4
2	2026-03-03 09:00:00+00	member	072ce82b-c588-45cd-9a00-9988b3f75896	target.create	044cb0de-c701-4a42-aec2-9aa1025c579f	66228bd8-c47f-46fa-8cb5-1a1e82c1fd11	\\x14cadf2e675e00e78fd762e1d99075e7252a1246ea3c0e02d57e39bac200c0f4	\\x3999f7fc74326d9a4dac7d3d1ed3153f4b72c4e23c07e8bd036b1d83eec27faf
3	2026-03-03 09:01:00+00	member	072ce82b-c588-45cd-9a00-9988b3f75896	session.open	044cb0de-c701-4a42-aec2-9aa1025c579f	5ef81d4e-dc00-4936-b105-32be438e6d58	\\x3999f7fc74326d9a4dac7d3d1ed3153f4b72c4e23c07e8bd036b1d83eec27faf	\\x43880be08c3bd34b6ab0c1ac954db0c093b8bbd66578ffba5c4b73a101a8624e
4	2026-03-03 09:01:00+00	member	bb496a14-abb8-49db-86ff-f586040fdfa0	member.invite	\N	\N	\\x43880be08c3bd34b6ab0c1ac954db0c093b8bbd66578ffba5c4b73a101a8624e	\\xabe7450b06c7e8f45ebdfb2263a27afa1f2bc23c3abc16f856ba4094b1596aa8
5	2026-03-03 09:01:00+00	member	bb496a14-abb8-49db-86ff-f586040fdfa0	practice.settings.change	\N	\N	\\xabe7450b06c7e8f45ebdfb2263a27afa1f2bc23c3abc16f856ba4094b1596aa8	\\xc0b505e3c7d055bff5d4a69e6d1b431344dda9a5cf0ca94a05fd89aa6d5c152d
6	2026-03-03 09:01:00+00	member	072ce82b-c588-45cd-9a00-9988b3f75896	preset.create	\N	793bce48-a38a-4785-b994-13201445426a	\\xc0b505e3c7d055bff5d4a69e6d1b431344dda9a5cf0ca94a05fd89aa6d5c152d	\\x178aa5ed2d80f7c67b96c4f1036d00030eed997c87aec5b552aaeeac73ffefb3
7	2026-03-03 09:01:00+00	member	072ce82b-c588-45cd-9a00-9988b3f75896	preset.create	\N	73bdb248-12aa-46c9-a36a-a860243147b4	\\x178aa5ed2d80f7c67b96c4f1036d00030eed997c87aec5b552aaeeac73ffefb3	\\xda6fd04432d989e256d1dea2a1a1ad26852874f3e43d9b4a2c8cc15b2eaa50e5
8	2026-03-03 09:01:00+00	member	072ce82b-c588-45cd-9a00-9988b3f75896	preset.put_away	\N	73bdb248-12aa-46c9-a36a-a860243147b4	\\xda6fd04432d989e256d1dea2a1a1ad26852874f3e43d9b4a2c8cc15b2eaa50e5	\\x18b3627c499df2a3959fb2779cc2f899e6e080396a642902353dd24f319d5f28
9	2026-03-03 09:01:00+00	member	072ce82b-c588-45cd-9a00-9988b3f75896	client.change	044cb0de-c701-4a42-aec2-9aa1025c579f	\N	\\x18b3627c499df2a3959fb2779cc2f899e6e080396a642902353dd24f319d5f28	\\x0f96cf0bb368bc099472a6988d85f0c786cf954a755b59302357a23954cbdd02
10	2026-03-03 09:01:00+00	member	072ce82b-c588-45cd-9a00-9988b3f75896	comfort.change	044cb0de-c701-4a42-aec2-9aa1025c579f	\N	\\x0f96cf0bb368bc099472a6988d85f0c786cf954a755b59302357a23954cbdd02	\\xdf579904030691e6c60b6408edc66debd02acd6424e035453005fbef604f5e82
11	2026-03-03 09:01:00+00	member	072ce82b-c588-45cd-9a00-9988b3f75896	safety_plan.change	044cb0de-c701-4a42-aec2-9aa1025c579f	\N	\\xdf579904030691e6c60b6408edc66debd02acd6424e035453005fbef604f5e82	\\xbb8e2162acecc237b3087e164ac8648fbb81604c1c811261d606d51d974eea4f
12	2026-03-03 09:01:00+00	member	072ce82b-c588-45cd-9a00-9988b3f75896	steadying.change	044cb0de-c701-4a42-aec2-9aa1025c579f	\N	\\xbb8e2162acecc237b3087e164ac8648fbb81604c1c811261d606d51d974eea4f	\\x97f6e47f067936f11b79ab949f077bb8a46c3622a08f8062afc219dcb500d471
13	2026-03-03 09:01:00+00	member	072ce82b-c588-45cd-9a00-9988b3f75896	reach.change	044cb0de-c701-4a42-aec2-9aa1025c579f	\N	\\x97f6e47f067936f11b79ab949f077bb8a46c3622a08f8062afc219dcb500d471	\\xa8afeee7710ea8ab14fa2c81892cdcf35dab0772b6e4123cf7f1e025ae51f0e2
14	2026-03-03 09:01:00+00	member	072ce82b-c588-45cd-9a00-9988b3f75896	resource.create	044cb0de-c701-4a42-aec2-9aa1025c579f	\N	\\xa8afeee7710ea8ab14fa2c81892cdcf35dab0772b6e4123cf7f1e025ae51f0e2	\\xe801df481402a3320f9707c54325f591999e30cba0dae9fc17d2d43fff7a5865
15	2026-03-03 09:01:00+00	member	072ce82b-c588-45cd-9a00-9988b3f75896	event.create	044cb0de-c701-4a42-aec2-9aa1025c579f	\N	\\xe801df481402a3320f9707c54325f591999e30cba0dae9fc17d2d43fff7a5865	\\xf03143898c9ba4d71f886952e362df68641ce9edac458b1b74027fda7c2413af
16	2026-03-03 09:02:00+00	member	072ce82b-c588-45cd-9a00-9988b3f75896	target.change	044cb0de-c701-4a42-aec2-9aa1025c579f	66228bd8-c47f-46fa-8cb5-1a1e82c1fd11	\\xf03143898c9ba4d71f886952e362df68641ce9edac458b1b74027fda7c2413af	\\xaaef3b031e9684d13ac4ad1b25f8134ca57da4d1fd3d0991909bb7a7c848ddbf
17	2026-03-03 09:02:00+00	member	072ce82b-c588-45cd-9a00-9988b3f75896	target.change	044cb0de-c701-4a42-aec2-9aa1025c579f	66228bd8-c47f-46fa-8cb5-1a1e82c1fd11	\\xaaef3b031e9684d13ac4ad1b25f8134ca57da4d1fd3d0991909bb7a7c848ddbf	\\xbe0c9630a1fabc9b1e23640d67be25a6a2b72e69042233bef1a00b7ec4374966
18	2026-03-03 09:02:00+00	member	072ce82b-c588-45cd-9a00-9988b3f75896	plan.cluster	044cb0de-c701-4a42-aec2-9aa1025c579f	\N	\\xbe0c9630a1fabc9b1e23640d67be25a6a2b72e69042233bef1a00b7ec4374966	\\x0352aa8b9d662cf84cc5970be6789047826889eab945be5cb59b9ff1f7652435
19	2026-03-03 09:02:00+00	member	072ce82b-c588-45cd-9a00-9988b3f75896	target.create	044cb0de-c701-4a42-aec2-9aa1025c579f	9c4c97b5-dd64-45c3-b87e-f558fe714136	\\x0352aa8b9d662cf84cc5970be6789047826889eab945be5cb59b9ff1f7652435	\\x9d85055f1036c221c9579e2ccfd4a7fd0af84a024d2b39cbfaf175125be385fc
20	2026-03-03 09:02:00+00	member	072ce82b-c588-45cd-9a00-9988b3f75896	plan.move	044cb0de-c701-4a42-aec2-9aa1025c579f	\N	\\x9d85055f1036c221c9579e2ccfd4a7fd0af84a024d2b39cbfaf175125be385fc	\\xfb3308408317a380e4ccf9713133131ef5c0003b387e13394c6b6135617d63d8
21	2026-03-03 09:02:01+00	member	072ce82b-c588-45cd-9a00-9988b3f75896	entry.keep	044cb0de-c701-4a42-aec2-9aa1025c579f	5ef81d4e-dc00-4936-b105-32be438e6d58	\\xfb3308408317a380e4ccf9713133131ef5c0003b387e13394c6b6135617d63d8	\\x4177cf3db9d08796f1fbbed69eca704c0b75d96ba6dc65083ea1f7e189fc6ef6
22	2026-03-03 09:02:32+00	member	072ce82b-c588-45cd-9a00-9988b3f75896	entry.keep	044cb0de-c701-4a42-aec2-9aa1025c579f	5ef81d4e-dc00-4936-b105-32be438e6d58	\\x4177cf3db9d08796f1fbbed69eca704c0b75d96ba6dc65083ea1f7e189fc6ef6	\\x03e297fba527f9001d776d7530827159a1ef49e569fbf8c4104428242f3a335e
23	2026-03-03 09:02:33+00	member	072ce82b-c588-45cd-9a00-9988b3f75896	entry.keep	044cb0de-c701-4a42-aec2-9aa1025c579f	5ef81d4e-dc00-4936-b105-32be438e6d58	\\x03e297fba527f9001d776d7530827159a1ef49e569fbf8c4104428242f3a335e	\\xcc2f46833f89c37ee819a4563f607017ccffbbaa4f68de5ac74ab04bca7e075c
24	2026-03-03 09:02:34+00	member	072ce82b-c588-45cd-9a00-9988b3f75896	entry.keep	044cb0de-c701-4a42-aec2-9aa1025c579f	5ef81d4e-dc00-4936-b105-32be438e6d58	\\xcc2f46833f89c37ee819a4563f607017ccffbbaa4f68de5ac74ab04bca7e075c	\\x45c3def80ed93787938ae3257a82e40dbef12a9bd6f2287da8af0a7c1802554d
25	2026-03-03 09:02:35+00	member	072ce82b-c588-45cd-9a00-9988b3f75896	entry.keep	044cb0de-c701-4a42-aec2-9aa1025c579f	5ef81d4e-dc00-4936-b105-32be438e6d58	\\x45c3def80ed93787938ae3257a82e40dbef12a9bd6f2287da8af0a7c1802554d	\\x88deae6396ffa681ff17369dd0f89ec5f35b09e33da9788c180f765e85e051f2
26	2026-03-03 09:03:06+00	member	072ce82b-c588-45cd-9a00-9988b3f75896	entry.keep	044cb0de-c701-4a42-aec2-9aa1025c579f	5ef81d4e-dc00-4936-b105-32be438e6d58	\\x88deae6396ffa681ff17369dd0f89ec5f35b09e33da9788c180f765e85e051f2	\\xa8795ef52ef03495fb60dcac56157b6b56112c77ff370c148243ca92a76e277c
27	2026-03-03 09:03:07+00	member	072ce82b-c588-45cd-9a00-9988b3f75896	entry.keep	044cb0de-c701-4a42-aec2-9aa1025c579f	5ef81d4e-dc00-4936-b105-32be438e6d58	\\xa8795ef52ef03495fb60dcac56157b6b56112c77ff370c148243ca92a76e277c	\\x27efb9b3d8656424bd56006b781147decfeda30f45265738fc198383c396f496
28	2026-03-03 09:03:38+00	member	072ce82b-c588-45cd-9a00-9988b3f75896	entry.keep	044cb0de-c701-4a42-aec2-9aa1025c579f	5ef81d4e-dc00-4936-b105-32be438e6d58	\\x27efb9b3d8656424bd56006b781147decfeda30f45265738fc198383c396f496	\\x09943a5a0fce1f84fbb7b1a98336070ac84ae3bd97eb0c50db95d946e3d8ca2e
29	2026-03-03 09:03:39+00	member	072ce82b-c588-45cd-9a00-9988b3f75896	entry.keep	044cb0de-c701-4a42-aec2-9aa1025c579f	5ef81d4e-dc00-4936-b105-32be438e6d58	\\x09943a5a0fce1f84fbb7b1a98336070ac84ae3bd97eb0c50db95d946e3d8ca2e	\\xa7d2a2af0c06c6b8fa66764ce9977655b2abe2ea89ba6c4e881366e399234ce6
30	2026-03-03 09:03:40+00	member	072ce82b-c588-45cd-9a00-9988b3f75896	entry.keep	044cb0de-c701-4a42-aec2-9aa1025c579f	5ef81d4e-dc00-4936-b105-32be438e6d58	\\xa7d2a2af0c06c6b8fa66764ce9977655b2abe2ea89ba6c4e881366e399234ce6	\\xde0ca99a2131f8f39a812284978ad7558df016b80e1df7481289967360c5d3a5
31	2026-03-03 09:03:41+00	member	072ce82b-c588-45cd-9a00-9988b3f75896	entry.keep	044cb0de-c701-4a42-aec2-9aa1025c579f	5ef81d4e-dc00-4936-b105-32be438e6d58	\\xde0ca99a2131f8f39a812284978ad7558df016b80e1df7481289967360c5d3a5	\\x03e5da7b1a7d8dfc7724704152128d02b4ab3f11f6f6b0bbc033110f0171390d
32	2026-03-03 09:03:41+00	member	072ce82b-c588-45cd-9a00-9988b3f75896	target.fact	044cb0de-c701-4a42-aec2-9aa1025c579f	66228bd8-c47f-46fa-8cb5-1a1e82c1fd11	\\x03e5da7b1a7d8dfc7724704152128d02b4ab3f11f6f6b0bbc033110f0171390d	\\x8abc7e155027b869d6b2f0f4286d197ec80aa682329cc6499ae92985ef92d721
33	2026-03-03 09:03:41+00	member	072ce82b-c588-45cd-9a00-9988b3f75896	target.fact	044cb0de-c701-4a42-aec2-9aa1025c579f	66228bd8-c47f-46fa-8cb5-1a1e82c1fd11	\\x8abc7e155027b869d6b2f0f4286d197ec80aa682329cc6499ae92985ef92d721	\\x9bf6fd704e9b6db0dac1f9897c00698f7938e6813354ee2d32cac03eba7a5423
34	2026-03-03 09:03:41+00	member	072ce82b-c588-45cd-9a00-9988b3f75896	target.fact	044cb0de-c701-4a42-aec2-9aa1025c579f	66228bd8-c47f-46fa-8cb5-1a1e82c1fd11	\\x9bf6fd704e9b6db0dac1f9897c00698f7938e6813354ee2d32cac03eba7a5423	\\x8841e90aed4482d4021c9018e6cfaf83ce3731a6c7141b5225ccee84b5921aad
35	2026-03-03 09:04:12+00	member	072ce82b-c588-45cd-9a00-9988b3f75896	entry.keep	044cb0de-c701-4a42-aec2-9aa1025c579f	5ef81d4e-dc00-4936-b105-32be438e6d58	\\x8841e90aed4482d4021c9018e6cfaf83ce3731a6c7141b5225ccee84b5921aad	\\x95bfed1cd614894be7e3d7704045ee9d6cebffd8a06d11f793c29e32ded34027
36	2026-03-03 09:04:13+00	member	072ce82b-c588-45cd-9a00-9988b3f75896	entry.keep	044cb0de-c701-4a42-aec2-9aa1025c579f	5ef81d4e-dc00-4936-b105-32be438e6d58	\\x95bfed1cd614894be7e3d7704045ee9d6cebffd8a06d11f793c29e32ded34027	\\x84fe0d7e59d639c09bfa530b2210932d573c8676a0dcf3d08245759402c109a4
37	2026-03-03 09:04:14+00	member	072ce82b-c588-45cd-9a00-9988b3f75896	entry.keep	044cb0de-c701-4a42-aec2-9aa1025c579f	5ef81d4e-dc00-4936-b105-32be438e6d58	\\x84fe0d7e59d639c09bfa530b2210932d573c8676a0dcf3d08245759402c109a4	\\xca1aed3869a17d80f2cc1ef3ec82da16f74de802294de9dbc91a47ad4178f9d3
38	2026-03-03 09:04:15+00	member	072ce82b-c588-45cd-9a00-9988b3f75896	entry.keep	044cb0de-c701-4a42-aec2-9aa1025c579f	5ef81d4e-dc00-4936-b105-32be438e6d58	\\xca1aed3869a17d80f2cc1ef3ec82da16f74de802294de9dbc91a47ad4178f9d3	\\x9cf8203b2cba5846e35d9b86b070e408e9defe90839143c0d0e958bb251c8a14
39	2026-03-03 09:04:16+00	member	072ce82b-c588-45cd-9a00-9988b3f75896	entry.keep	044cb0de-c701-4a42-aec2-9aa1025c579f	5ef81d4e-dc00-4936-b105-32be438e6d58	\\x9cf8203b2cba5846e35d9b86b070e408e9defe90839143c0d0e958bb251c8a14	\\x5bbc51c404c108c7b443e06b92805e3a7aeff63b6464000f8297246108f174df
40	2026-03-03 09:04:17+00	member	072ce82b-c588-45cd-9a00-9988b3f75896	entry.keep	044cb0de-c701-4a42-aec2-9aa1025c579f	5ef81d4e-dc00-4936-b105-32be438e6d58	\\x5bbc51c404c108c7b443e06b92805e3a7aeff63b6464000f8297246108f174df	\\x0c5b57d79bc6755112099b02017cf949adf556784da6a6c0ca888e4ebd9a1f1f
41	2026-03-03 09:04:18+00	member	072ce82b-c588-45cd-9a00-9988b3f75896	entry.keep	044cb0de-c701-4a42-aec2-9aa1025c579f	5ef81d4e-dc00-4936-b105-32be438e6d58	\\x0c5b57d79bc6755112099b02017cf949adf556784da6a6c0ca888e4ebd9a1f1f	\\x4d7358fa94b11cfcf5b09e33c446fccd65405757d42779afaa6bc31a7f2d6631
42	2026-03-03 09:04:19+00	member	072ce82b-c588-45cd-9a00-9988b3f75896	entry.keep	044cb0de-c701-4a42-aec2-9aa1025c579f	5ef81d4e-dc00-4936-b105-32be438e6d58	\\x4d7358fa94b11cfcf5b09e33c446fccd65405757d42779afaa6bc31a7f2d6631	\\x3f415149ebc5640f6268f1926a705e31df218417c6ea2f442aee9d30ae8a3fe6
43	2026-03-03 09:04:20+00	member	072ce82b-c588-45cd-9a00-9988b3f75896	entry.keep	044cb0de-c701-4a42-aec2-9aa1025c579f	5ef81d4e-dc00-4936-b105-32be438e6d58	\\x3f415149ebc5640f6268f1926a705e31df218417c6ea2f442aee9d30ae8a3fe6	\\x9fa58192168b6334dbaaf30065ee429dc994bb3f9d727adcb7e2efbdc92d59c3
44	2026-03-03 09:04:21+00	member	072ce82b-c588-45cd-9a00-9988b3f75896	entry.keep	044cb0de-c701-4a42-aec2-9aa1025c579f	5ef81d4e-dc00-4936-b105-32be438e6d58	\\x9fa58192168b6334dbaaf30065ee429dc994bb3f9d727adcb7e2efbdc92d59c3	\\x5ab00767b2313e077e29adb658cef10bd804ca6c81d0e9049cf26c3562ee1e9a
45	2026-03-03 09:04:22+00	member	072ce82b-c588-45cd-9a00-9988b3f75896	entry.keep	044cb0de-c701-4a42-aec2-9aa1025c579f	5ef81d4e-dc00-4936-b105-32be438e6d58	\\x5ab00767b2313e077e29adb658cef10bd804ca6c81d0e9049cf26c3562ee1e9a	\\x1515439c243d79cf6bdbcb2d2901033e8e543826c2c0ae1dc8259064ca7b628a
46	2026-03-03 09:04:22+00	member	072ce82b-c588-45cd-9a00-9988b3f75896	session.view	044cb0de-c701-4a42-aec2-9aa1025c579f	5ef81d4e-dc00-4936-b105-32be438e6d58	\\x1515439c243d79cf6bdbcb2d2901033e8e543826c2c0ae1dc8259064ca7b628a	\\x3b9d67334b22d2195e3a6708376e783696b9c8fba9bf380db237da08484df9cc
47	2026-03-03 09:04:22+00	member	072ce82b-c588-45cd-9a00-9988b3f75896	session.draft	044cb0de-c701-4a42-aec2-9aa1025c579f	5ef81d4e-dc00-4936-b105-32be438e6d58	\\x3b9d67334b22d2195e3a6708376e783696b9c8fba9bf380db237da08484df9cc	\\xba07798ba3da40d847763693fe06bf907ac09687203939b84a9dcd47e6e4c58f
48	2026-03-03 09:04:22+00	member	072ce82b-c588-45cd-9a00-9988b3f75896	session.view	044cb0de-c701-4a42-aec2-9aa1025c579f	5ef81d4e-dc00-4936-b105-32be438e6d58	\\xba07798ba3da40d847763693fe06bf907ac09687203939b84a9dcd47e6e4c58f	\\x99215724b7f7c0f8f186f1e6b89c3669b3478abee658e647c8a71e81dcdbc170
49	2026-03-03 09:04:22+00	member	072ce82b-c588-45cd-9a00-9988b3f75896	session.close	044cb0de-c701-4a42-aec2-9aa1025c579f	5ef81d4e-dc00-4936-b105-32be438e6d58	\\x99215724b7f7c0f8f186f1e6b89c3669b3478abee658e647c8a71e81dcdbc170	\\x8ac65fc1b56a05ffb4e4daaae13f50d9e0c6cb1376921c3397d9533c50fe3dd1
50	2026-03-03 09:04:22+00	member	072ce82b-c588-45cd-9a00-9988b3f75896	session.check	044cb0de-c701-4a42-aec2-9aa1025c579f	5ef81d4e-dc00-4936-b105-32be438e6d58	\\x8ac65fc1b56a05ffb4e4daaae13f50d9e0c6cb1376921c3397d9533c50fe3dd1	\\xdd6a5300cf4c3b6e4252b3c4835ea8b239b76f6fcf7b0054e25cc743759d2a73
51	2026-03-03 09:04:22+00	member	072ce82b-c588-45cd-9a00-9988b3f75896	session.note.view	044cb0de-c701-4a42-aec2-9aa1025c579f	5ef81d4e-dc00-4936-b105-32be438e6d58	\\xdd6a5300cf4c3b6e4252b3c4835ea8b239b76f6fcf7b0054e25cc743759d2a73	\\xe26402a45dfe28cafb0d7b5892d4e6a88ed74a288d0555f14f96d7b60e2033f6
52	2026-03-03 09:04:22+00	member	072ce82b-c588-45cd-9a00-9988b3f75896	session.note.save	044cb0de-c701-4a42-aec2-9aa1025c579f	5ef81d4e-dc00-4936-b105-32be438e6d58	\\xe26402a45dfe28cafb0d7b5892d4e6a88ed74a288d0555f14f96d7b60e2033f6	\\x22d82c29b13abae5464046dab58ba478523395e56fd3fd5cb2d115f3e8b0bb39
57	2026-03-10 09:04:22+00	member	072ce82b-c588-45cd-9a00-9988b3f75896	code.make	044cb0de-c701-4a42-aec2-9aa1025c579f	b0a225ed-d779-46b7-8d49-44ac3c51b9aa	\\x0d0555d87b4e59fce6c550dcb03799627dccee54cfc94daa2178f9b5fa660a7a	\\x9cb9f4c8311ef8ab18ac7694dbafe30bcf83b8f3881317e6631104051ef1c3ae
58	2026-03-10 09:04:22+00	visitor	\N	seat.claim	\N	b0a225ed-d779-46b7-8d49-44ac3c51b9aa	\\x9cb9f4c8311ef8ab18ac7694dbafe30bcf83b8f3881317e6631104051ef1c3ae	\\xf92b34f65c52a5213467c1225febcf07bd5282c39af173a5a9d335a9949d27c3
59	2026-03-10 09:04:22+00	member	072ce82b-c588-45cd-9a00-9988b3f75896	rehearsal.prepare	96a205d3-0ef5-4eff-8869-96a37a9d700b	\N	\\xf92b34f65c52a5213467c1225febcf07bd5282c39af173a5a9d335a9949d27c3	\\x656224fed2223e15d03e50697dfded50d779699f7ba028ef97b0909b5a47876f
61	2026-03-10 09:04:22+00	member	072ce82b-c588-45cd-9a00-9988b3f75896	client.create	b181524d-118d-48c6-9ab0-edd40889fbb3	\N	\\x2ee021718246b8552654de3c281575682f539ebd44e2f67e373d9c7e69bc4416	\\x1c637ef58f8f7f5d323e56ca162af2b13d15414c68f2900d5c5d382203df25dc
62	2026-03-10 09:04:22+00	member	072ce82b-c588-45cd-9a00-9988b3f75896	client.archive	b181524d-118d-48c6-9ab0-edd40889fbb3	\N	\\x1c637ef58f8f7f5d323e56ca162af2b13d15414c68f2900d5c5d382203df25dc	\\x4454b4879ee5aad012878b69d43063e21757941410000ae08b43cdf684588ed4
53	2026-03-10 09:04:22+00	member	072ce82b-c588-45cd-9a00-9988b3f75896	session.open	044cb0de-c701-4a42-aec2-9aa1025c579f	b0a225ed-d779-46b7-8d49-44ac3c51b9aa	\\x22d82c29b13abae5464046dab58ba478523395e56fd3fd5cb2d115f3e8b0bb39	\\x4706b3346b8d7dba62e50531313f4db0dad9c95f76bc2cc8898aa763dc5efc20
54	2026-03-10 09:04:22+00	member	072ce82b-c588-45cd-9a00-9988b3f75896	link.make	044cb0de-c701-4a42-aec2-9aa1025c579f	b0a225ed-d779-46b7-8d49-44ac3c51b9aa	\\x4706b3346b8d7dba62e50531313f4db0dad9c95f76bc2cc8898aa763dc5efc20	\\x4cee25a3fa0e82ebef3fb719a4866f83d2db79b7cfe510fae8b6fa6e69caf518
55	2026-03-10 09:04:22+00	visitor	\N	seat.claim	\N	b0a225ed-d779-46b7-8d49-44ac3c51b9aa	\\x4cee25a3fa0e82ebef3fb719a4866f83d2db79b7cfe510fae8b6fa6e69caf518	\\x582cd352ebff95354e242793eb7053e7eebfb700e15d2516e7c6bf80a5747255
56	2026-03-10 09:04:22+00	member	072ce82b-c588-45cd-9a00-9988b3f75896	session.admit	044cb0de-c701-4a42-aec2-9aa1025c579f	b0a225ed-d779-46b7-8d49-44ac3c51b9aa	\\x582cd352ebff95354e242793eb7053e7eebfb700e15d2516e7c6bf80a5747255	\\x0d0555d87b4e59fce6c550dcb03799627dccee54cfc94daa2178f9b5fa660a7a
60	2026-03-10 09:04:22+00	member	072ce82b-c588-45cd-9a00-9988b3f75896	session.open	96a205d3-0ef5-4eff-8869-96a37a9d700b	07dcb125-6c15-44f6-9bbd-9d06cea54626	\\x656224fed2223e15d03e50697dfded50d779699f7ba028ef97b0909b5a47876f	\\x2ee021718246b8552654de3c281575682f539ebd44e2f67e373d9c7e69bc4416
\.


--
-- Data for Name: client; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.client (id, number, opened_on, archived_at, seizures, eye_condition, version, plan_version) FROM stdin;
044cb0de-c701-4a42-aec2-9aa1025c579f	1	2026-03-03	\N	no	no	2	7
96a205d3-0ef5-4eff-8869-96a37a9d700b	2	2026-03-10	\N	no	no	1	1
b181524d-118d-48c6-9ab0-edd40889fbb3	3	2026-03-10	2026-03-10 09:04:22+00	yes	not_asked	2	1
\.


--
-- Data for Name: client_details; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.client_details (client_id, name, addressed_as, phone, contact_name, contact_phone, usual_location, version) FROM stdin;
044cb0de-c701-4a42-aec2-9aa1025c579f	\\x0140dda5ef6adc2dfe3f22d0e3a9140f795855d94ab25495a90b036357a41d7a044a66a17f6f9949f408f878fdd3fa02b4ef0cb8	\\x01c7c77dc8bdfcc89d963ef0d331d01ff4c0913dcfbfded66e0d6ab37a7e5b50077ddebcb5fc	\\x01664a485c80ad6e812253207156c36c0eafb9f172293fec7408c0fe4bb43fc02d0e12765ea25b639bf31a	\\x0156bdc875f26428ea3734b09ee01de6ccaa224b45c2220b59eb94d25f09ae3e7560afaa6f2d4abf603ed40d21488f	\\x01b30df88cdba62171c8609e1ed35323033440bd650800a8c4239ad93d935dfae6f022b702f67878	\\x015812e2fc25030b239da81b3982623d92aaeed26cb083a1a112afbe0b32e7b82f89d750e852e56f45c3c104617e85ad136acb85559b90a6	2
96a205d3-0ef5-4eff-8869-96a37a9d700b	\\x017415e90d96e43345555b5c220a84cd349923631363d9621b22d71875115308557acde8f949	\\x010856eca0c61fde49aaf1eed6a8194feecf06e9749500b8a6db8a6c91	\\x0178fad3d5fcfb3123691eb4ec427456c4077dbbbb69e8c572dd7ca234	\\x013f23140c7371eab8dab38ed38bbaadc9b66b3392450c9bcb0f8c62d2	\\x019285ef5b8ad5f2d9af636e952c5a3d6e21cfc3dbd4f2ae89668e2a9f	\\x0179b343e0cb5924e68e88badff0d373138882d32471a882a6176486a2	1
b181524d-118d-48c6-9ab0-edd40889fbb3	\\x01615779b5d83ffac5117f4b6a16392224017604972e8c13cf6c3ea797c44aa1de4e03f04f74e5a912ca	\\x01fc0f7b5e2947bc604de7dfa0cf55702a50c1b11a175a34ded7a5f84a	\\x01023953d40b1eb43b3bc7dc61b54e63f4733b5053018c834e3478f9e8	\\x01c0c69841a9565e948078c72a438c7a4ed2552719d35126eb0539469d	\\x01e6084d7587f871f9d6b40f3d9ac26c744283a3e654e4dd2d4d343414	\\x019adc32ddb581e8f259aef07d9a4cbd7ed1befd13014e12278c1dad3b	1
\.


--
-- Data for Name: client_key; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.client_key (client_id, key_id, wrapped) FROM stdin;
044cb0de-c701-4a42-aec2-9aa1025c579f	1	\\x01c26cba345cd4a8107afab9037a74f06127aad8a6b0549392189ee735c1b7a7065a89ea04bd4b8a7a80c3a3b8553e1de90fe4c2c3aa0aad6a4750c2cf
96a205d3-0ef5-4eff-8869-96a37a9d700b	1	\\x01c4cb13578a0cceead8af9bfbea16af5180080bd9f4a4d6eca950ee6f31c85f57cce2214d11fe9a3deb55788377cb54940c02238cf12cc75b81182d96
b181524d-118d-48c6-9ab0-edd40889fbb3	1	\\x0183015e0f9b553ee46ad6e4d7e3ad0542cc7e6b793a02738892b2485081338cee3779f9974cfbc8b459dff7098e939428fa3bf65e0e5eb33d7db00be9
\.


--
-- Data for Name: client_reach; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.client_reach (client_id, phone_use, contact_use, help_from_here, tried_on, help_there, written_at, version) FROM stdin;
044cb0de-c701-4a42-aec2-9aa1025c579f	call	message	\\x01dc4119b2e9c447361293f738c04ad96e73460193669242d03d0283b49a8dbc825f7ffb283acaf2e4ca2a	2026-03-01	\\x01fd42e62b89a125e635ff156e3ed76c29907656f4a8f07a4f1f7a1722b8f1de	2026-03-03 09:01:00+00	1
\.


--
-- Data for Name: closing_draft; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.closing_draft (session_id, client_id, typed, written_by, written_at, version) FROM stdin;
5ef81d4e-dc00-4936-b105-32be438e6d58	044cb0de-c701-4a42-aec2-9aa1025c579f	\\x01f177cc9df875eb2f6b702503ea7b77fa7054722877ff399463ea5506	072ce82b-c588-45cd-9a00-9988b3f75896	2026-03-03 09:04:22+00	2
\.


--
-- Data for Name: cluster; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.cluster (id, client_id, number, name, theme, earliest_id, worst_id, version) FROM stdin;
12c68429-8b25-441d-a00d-869d50654a53	044cb0de-c701-4a42-aec2-9aa1025c579f	1	\\x01b60e92ce1d7ccdce9a9e66eef0effc3941925ad41342bcc90baf328a55c72451fcae4d351bef5ce8	safety	66228bd8-c47f-46fa-8cb5-1a1e82c1fd11	\N	2
\.


--
-- Data for Name: comfort; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.comfort (client_id, path, dot, comfort, filled_at, version) FROM stdin;
044cb0de-c701-4a42-aec2-9aa1025c579f	eight	2.5	{"level": 60, "pitch": 400, "sweep": "constant", "timbre": "wood", "colours": "lake", "tone_ms": 90, "vibration": true}	2026-03-03 09:01:00+00	1
\.


--
-- Data for Name: episode; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.episode (id, client_id, number, begun_at, started_at, reprocessed_at, last_at, sessions, ended_at, reason, judged_by, version) FROM stdin;
76542ed1-f205-477a-9404-d3a1232e697f	044cb0de-c701-4a42-aec2-9aa1025c579f	1	2026-03-03 09:01:00+00	2026-03-03 09:01:00+00	2026-03-03 09:02:06+00	2026-03-10 09:04:22+00	2	\N	\N	\N	1
\.


--
-- Data for Name: episode_measure; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.episode_measure (episode_id, measure, client_id, first_total, first_at, last_total, last_at, end_total, end_at, totals) FROM stdin;
\.


--
-- Data for Name: fact; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.fact (id, client_id, session_id, target_id, set_id, kind, code, because, moment, replaces, first_id, entered_by, at, seq) FROM stdin;
72243d9e-4086-48ef-901c-4c925166acf4	044cb0de-c701-4a42-aec2-9aa1025c579f	5ef81d4e-dc00-4936-b105-32be438e6d58	66228bd8-c47f-46fa-8cb5-1a1e82c1fd11	bfe2ec09-4ae1-4b20-b421-1f197d575f7d	mark	same	\N	after_set	\N	\N	072ce82b-c588-45cd-9a00-9988b3f75896	2026-03-03 09:03:38+00	17
89b71f91-da28-443b-8afd-4ed605d8fd58	044cb0de-c701-4a42-aec2-9aa1025c579f	5ef81d4e-dc00-4936-b105-32be438e6d58	66228bd8-c47f-46fa-8cb5-1a1e82c1fd11	bfe2ec09-4ae1-4b20-b421-1f197d575f7d	mark	changing	\N	after_set	72243d9e-4086-48ef-901c-4c925166acf4	72243d9e-4086-48ef-901c-4c925166acf4	072ce82b-c588-45cd-9a00-9988b3f75896	2026-03-03 09:03:39+00	18
ff942a95-28bc-4f5a-9600-b651f5be5dc9	044cb0de-c701-4a42-aec2-9aa1025c579f	5ef81d4e-dc00-4936-b105-32be438e6d58	66228bd8-c47f-46fa-8cb5-1a1e82c1fd11	bfe2ec09-4ae1-4b20-b421-1f197d575f7d	saw	glazed	\N	after_set	\N	\N	072ce82b-c588-45cd-9a00-9988b3f75896	2026-03-03 09:03:40+00	19
baec21c6-d517-4fe8-b80d-27bcc99727d8	044cb0de-c701-4a42-aec2-9aa1025c579f	5ef81d4e-dc00-4936-b105-32be438e6d58	66228bd8-c47f-46fa-8cb5-1a1e82c1fd11	bfe2ec09-4ae1-4b20-b421-1f197d575f7d	tried	arousal	\N	after_set	\N	\N	072ce82b-c588-45cd-9a00-9988b3f75896	2026-03-03 09:03:41+00	20
40615e3c-44cb-473b-bf9c-7ac6231f3062	044cb0de-c701-4a42-aec2-9aa1025c579f	5ef81d4e-dc00-4936-b105-32be438e6d58	66228bd8-c47f-46fa-8cb5-1a1e82c1fd11	\N	procedure	recent_event	\N	\N	\N	\N	072ce82b-c588-45cd-9a00-9988b3f75896	2026-03-03 09:03:41+00	21
4b74bf7d-1902-4237-a8d8-47d66b20c12d	044cb0de-c701-4a42-aec2-9aa1025c579f	5ef81d4e-dc00-4936-b105-32be438e6d58	66228bd8-c47f-46fa-8cb5-1a1e82c1fd11	\N	scan	felt	\N	\N	\N	\N	072ce82b-c588-45cd-9a00-9988b3f75896	2026-03-03 09:03:41+00	23
5c4f5a4c-0344-4e53-8f31-b8ab54be9983	044cb0de-c701-4a42-aec2-9aa1025c579f	5ef81d4e-dc00-4936-b105-32be438e6d58	66228bd8-c47f-46fa-8cb5-1a1e82c1fd11	6903db7e-b0f7-4d60-8666-865e8e138147	too_much	stopped	\N	after_set	\N	\N	072ce82b-c588-45cd-9a00-9988b3f75896	2026-03-03 09:04:12+00	25
6a99b656-0882-4fde-9092-8a15b0bdcc96	044cb0de-c701-4a42-aec2-9aa1025c579f	5ef81d4e-dc00-4936-b105-32be438e6d58	66228bd8-c47f-46fa-8cb5-1a1e82c1fd11	6903db7e-b0f7-4d60-8666-865e8e138147	showed	orient	\N	after_set	\N	\N	072ce82b-c588-45cd-9a00-9988b3f75896	2026-03-03 09:04:13+00	26
37b8c898-a8eb-4c31-92d9-377a25ea43df	044cb0de-c701-4a42-aec2-9aa1025c579f	5ef81d4e-dc00-4936-b105-32be438e6d58	66228bd8-c47f-46fa-8cb5-1a1e82c1fd11	6903db7e-b0f7-4d60-8666-865e8e138147	belief	another	\N	after_set	\N	\N	072ce82b-c588-45cd-9a00-9988b3f75896	2026-03-03 09:04:14+00	27
29103ed5-6e34-45c1-8a2a-5aaaec19d241	044cb0de-c701-4a42-aec2-9aa1025c579f	5ef81d4e-dc00-4936-b105-32be438e6d58	66228bd8-c47f-46fa-8cb5-1a1e82c1fd11	\N	decided	incomplete	\N	\N	\N	\N	072ce82b-c588-45cd-9a00-9988b3f75896	2026-03-03 09:04:22+00	37
\.


--
-- Data for Name: hour_fact; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.hour_fact (id, client_id, session_id, kind, code, because, again, replaces, entered_by, at, seq) FROM stdin;
9aa30e4e-4994-4402-9ffb-3a4103aa4b1f	044cb0de-c701-4a42-aec2-9aa1025c579f	5ef81d4e-dc00-4936-b105-32be438e6d58	answered	acute	\N	f	\N	072ce82b-c588-45cd-9a00-9988b3f75896	2026-03-03 09:04:19+00	32
377d0246-ed72-490f-ae89-fd8be7576cdb	044cb0de-c701-4a42-aec2-9aa1025c579f	5ef81d4e-dc00-4936-b105-32be438e6d58	answered	\N	\N	f	9aa30e4e-4994-4402-9ffb-3a4103aa4b1f	072ce82b-c588-45cd-9a00-9988b3f75896	2026-03-03 09:04:20+00	33
209aad29-0d02-4bc5-b328-632a31900521	044cb0de-c701-4a42-aec2-9aa1025c579f	5ef81d4e-dc00-4936-b105-32be438e6d58	passed	risk	judgement	f	\N	072ce82b-c588-45cd-9a00-9988b3f75896	2026-03-03 09:04:21+00	34
075ac08d-ad34-4103-8cbf-5a46d9f604af	044cb0de-c701-4a42-aec2-9aa1025c579f	5ef81d4e-dc00-4936-b105-32be438e6d58	time	60+10	\N	f	\N	072ce82b-c588-45cd-9a00-9988b3f75896	2026-03-03 09:04:22+00	35
7cafaade-f06b-48b7-83bf-d0576db932ef	044cb0de-c701-4a42-aec2-9aa1025c579f	b0a225ed-d779-46b7-8d49-44ac3c51b9aa	answered	another_place	\N	f	\N	072ce82b-c588-45cd-9a00-9988b3f75896	2026-03-10 09:04:22+00	40
a8538e31-aa15-4d04-8aee-e352eb43a64e	044cb0de-c701-4a42-aec2-9aa1025c579f	b0a225ed-d779-46b7-8d49-44ac3c51b9aa	answered	private	\N	f	\N	072ce82b-c588-45cd-9a00-9988b3f75896	2026-03-10 09:04:22+00	41
\.


--
-- Data for Name: practice; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.practice (singleton, instance, name, zone, emergency_number, demo, day_order, clock, tells_whom, minutes, reserve, check_from, check_until, stuck_after, places, crisis_words, weeks_without, points_pcl5, points_anxiety5, told_too, flag_hours) FROM stdin;
t	d04f7d61-a0b1-462a-91f4-a753f48b6f5f	Practice	UTC	112	f	month_first	12	t	90	15	12	48	3	Fjordgata	The night line of the practice.	8	15	4	\N	24
\.


--
-- Data for Name: preset; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.preset (id, member_id, name, purpose, eyes, ears, hands, rate, width, cycles, made_at, put_away_at, version) FROM stdin;
d2e45af9-2a06-4d80-9bde-820ceded5c86	\N	Slow	processing	t	f	f	0.8	18	24	2026-11-29 15:32:02.792032+00	\N	1
a0e6f5c9-cc1d-4ca7-8296-9a05b7110fcf	\N	Standard	processing	t	f	f	1	18	24	2026-11-29 15:32:02.792032+00	\N	1
d4cf0333-1be1-4286-9df4-a11df92efb56	\N	Fast	processing	t	f	f	1.2	18	24	2026-11-29 15:32:02.792032+00	\N	1
90d5a46f-59d6-458e-94fc-5c4eb460027f	\N	Calm place	calm_place	t	f	f	0.5	18	6	2026-11-29 15:32:02.792032+00	\N	1
793bce48-a38a-4785-b994-13201445426a	072ce82b-c588-45cd-9a00-9988b3f75896	Evening	processing	t	f	f	0.9	16	30	2026-03-03 09:01:00+00	\N	1
73bdb248-12aa-46c9-a36a-a860243147b4	072ce82b-c588-45cd-9a00-9988b3f75896	Given up	processing	t	f	f	0.9	16	30	2026-03-03 09:01:00+00	2026-03-03 09:01:00+00	2
\.


--
-- Data for Name: process_note; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.process_note (id, session_id, client_id, set_id, moment, words, replaces, entered_by, at, seq) FROM stdin;
6c38bc5d-484a-4050-bb28-2ef14750f4c0	5ef81d4e-dc00-4936-b105-32be438e6d58	044cb0de-c701-4a42-aec2-9aa1025c579f	4165410e-bba9-4cd6-974d-e22cf5236608	after_set	\\x01f265cab5d72d293fa56e9692e4fb800aa5c4c53a6b00062acb547a619e308d535d75055a93e7a66bd37597aef0f312	\N	072ce82b-c588-45cd-9a00-9988b3f75896	2026-03-03 09:02:32+00	9
59bf5986-31f0-456c-8a95-59ea4a82d78f	5ef81d4e-dc00-4936-b105-32be438e6d58	044cb0de-c701-4a42-aec2-9aa1025c579f	4165410e-bba9-4cd6-974d-e22cf5236608	after_set	\\x011bed896ba7617a8a7aba3b916ce0e704d9a57c7ed160da89957fc54426503fdfaa7e25a829cfa7b99786620adf0f03343c1d5800	6c38bc5d-484a-4050-bb28-2ef14750f4c0	072ce82b-c588-45cd-9a00-9988b3f75896	2026-03-03 09:02:33+00	10
\.


--
-- Data for Name: rating; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.rating (id, client_id, session_id, target_id, set_id, scale, value, moment, replaces, entered_by, at, seq, first_id, segment, from_client) FROM stdin;
2c6649b5-9cbc-4c97-83d5-a1d5f5efc153	044cb0de-c701-4a42-aec2-9aa1025c579f	\N	66228bd8-c47f-46fa-8cb5-1a1e82c1fd11	\N	sud	8	assessment	\N	072ce82b-c588-45cd-9a00-9988b3f75896	2026-03-03 09:00:00+00	1	\N	\N	f
9127da5b-c252-4095-a10d-5002e71efd0f	044cb0de-c701-4a42-aec2-9aa1025c579f	\N	66228bd8-c47f-46fa-8cb5-1a1e82c1fd11	\N	voc	2	assessment	\N	072ce82b-c588-45cd-9a00-9988b3f75896	2026-03-03 09:00:00+00	2	\N	\N	f
d521673d-2c5c-4947-8d2c-9699855a965c	044cb0de-c701-4a42-aec2-9aa1025c579f	5ef81d4e-dc00-4936-b105-32be438e6d58	66228bd8-c47f-46fa-8cb5-1a1e82c1fd11	\N	sud	7	assessment	\N	072ce82b-c588-45cd-9a00-9988b3f75896	2026-03-03 09:02:00+00	4	\N	\N	f
63371b13-a934-4a87-8333-a7c3d0ddba4c	044cb0de-c701-4a42-aec2-9aa1025c579f	5ef81d4e-dc00-4936-b105-32be438e6d58	66228bd8-c47f-46fa-8cb5-1a1e82c1fd11	\N	voc	3	assessment	\N	072ce82b-c588-45cd-9a00-9988b3f75896	2026-03-03 09:02:00+00	5	\N	\N	f
2e437240-d0e5-4864-baec-12387cb302fc	044cb0de-c701-4a42-aec2-9aa1025c579f	5ef81d4e-dc00-4936-b105-32be438e6d58	66228bd8-c47f-46fa-8cb5-1a1e82c1fd11	\N	sud	8	assessment	d521673d-2c5c-4947-8d2c-9699855a965c	072ce82b-c588-45cd-9a00-9988b3f75896	2026-03-03 09:02:00+00	6	d521673d-2c5c-4947-8d2c-9699855a965c	\N	f
46e5b856-0096-4c16-8f56-d92c9044f4b1	044cb0de-c701-4a42-aec2-9aa1025c579f	5ef81d4e-dc00-4936-b105-32be438e6d58	66228bd8-c47f-46fa-8cb5-1a1e82c1fd11	\N	sud	8	back_at_target	\N	072ce82b-c588-45cd-9a00-9988b3f75896	2026-03-03 09:02:01+00	7	\N	\N	f
e2123b77-d8f5-4052-8283-51a5ae094fa9	044cb0de-c701-4a42-aec2-9aa1025c579f	5ef81d4e-dc00-4936-b105-32be438e6d58	66228bd8-c47f-46fa-8cb5-1a1e82c1fd11	4165410e-bba9-4cd6-974d-e22cf5236608	sud	9	after_set	\N	072ce82b-c588-45cd-9a00-9988b3f75896	2026-03-03 09:02:34+00	11	\N	\N	f
87d93148-f888-481f-830a-7527b13d5d0f	044cb0de-c701-4a42-aec2-9aa1025c579f	5ef81d4e-dc00-4936-b105-32be438e6d58	66228bd8-c47f-46fa-8cb5-1a1e82c1fd11	4165410e-bba9-4cd6-974d-e22cf5236608	sud	6	after_set	e2123b77-d8f5-4052-8283-51a5ae094fa9	072ce82b-c588-45cd-9a00-9988b3f75896	2026-03-03 09:02:35+00	12	e2123b77-d8f5-4052-8283-51a5ae094fa9	\N	f
e7ae9776-79d3-450a-a7e4-7b5839435432	044cb0de-c701-4a42-aec2-9aa1025c579f	5ef81d4e-dc00-4936-b105-32be438e6d58	66228bd8-c47f-46fa-8cb5-1a1e82c1fd11	8dc4d636-8467-4042-95f0-6e128dabc2a6	voc	4	installation	\N	072ce82b-c588-45cd-9a00-9988b3f75896	2026-03-03 09:03:06+00	14	\N	\N	f
4c3848a4-b0c2-43a6-b703-8a838518a314	044cb0de-c701-4a42-aec2-9aa1025c579f	5ef81d4e-dc00-4936-b105-32be438e6d58	66228bd8-c47f-46fa-8cb5-1a1e82c1fd11	8dc4d636-8467-4042-95f0-6e128dabc2a6	voc	\N	installation	e7ae9776-79d3-450a-a7e4-7b5839435432	072ce82b-c588-45cd-9a00-9988b3f75896	2026-03-03 09:03:07+00	15	e7ae9776-79d3-450a-a7e4-7b5839435432	\N	f
f4e00b36-6110-4b1d-80fd-a2036afc5c87	044cb0de-c701-4a42-aec2-9aa1025c579f	5ef81d4e-dc00-4936-b105-32be438e6d58	66228bd8-c47f-46fa-8cb5-1a1e82c1fd11	\N	sud	3	back_at_target	\N	072ce82b-c588-45cd-9a00-9988b3f75896	2026-03-03 09:03:41+00	22	\N	1	f
1117f2c7-b526-44c0-ae05-a5e88145d852	044cb0de-c701-4a42-aec2-9aa1025c579f	5ef81d4e-dc00-4936-b105-32be438e6d58	66228bd8-c47f-46fa-8cb5-1a1e82c1fd11	6903db7e-b0f7-4d60-8666-865e8e138147	sud	6	after_set	\N	072ce82b-c588-45cd-9a00-9988b3f75896	2026-03-03 09:04:18+00	31	\N	\N	t
4683f0fa-dd90-4832-a5f2-4bab2085b517	044cb0de-c701-4a42-aec2-9aa1025c579f	5ef81d4e-dc00-4936-b105-32be438e6d58	66228bd8-c47f-46fa-8cb5-1a1e82c1fd11	\N	sud	5	closing	\N	072ce82b-c588-45cd-9a00-9988b3f75896	2026-03-03 09:04:22+00	36	\N	\N	f
\.


--
-- Data for Name: reach_step; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.reach_step (id, client_id, session_id, step, replaces, entered_by, at, seq) FROM stdin;
c68f6282-a1db-4880-9e4c-c5959d730159	044cb0de-c701-4a42-aec2-9aa1025c579f	5ef81d4e-dc00-4936-b105-32be438e6d58	no_answer	\N	072ce82b-c588-45cd-9a00-9988b3f75896	2026-03-03 09:04:15+00	28
\.


--
-- Data for Name: resource; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.resource (id, client_id, number, cue, image, body_feeling, helped, on_offer, found_at, version) FROM stdin;
e98889bf-2030-4fca-8579-1767b32be7ee	044cb0de-c701-4a42-aec2-9aa1025c579f	1	\\x0193378dd5c4ba3b05c80f18d0476bec14a563ae1e3c9b1800175f3f0e7aadf982	\\x01bccae82cb1a4a8095684a1759e3ed7e6e51505665cc947fbed900a5a57e8f8b09bc82099954f6ff4ccbad8	\\x01cd850dc58e7493a02b4a5cb57f621f2a9ded78c035f1cdbe79b8249a	yes	t	2026-03-03 09:01:00+00	1
\.


--
-- Data for Name: response; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.response (id, client_id, episode_id, number, measure, rules, occasion, answered_at, total, prorated, points, by_client, replaces, withdrawn, entered_by, kept_at) FROM stdin;
\.


--
-- Data for Name: response_answers; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.response_answers (response_id, client_id, answers, event) FROM stdin;
\.


--
-- Data for Name: risk_flag; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.risk_flag (response_id, client_id, says, raised_at, done, done_at, done_by) FROM stdin;
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
044cb0de-c701-4a42-aec2-9aa1025c579f	\\x01690a9138d157f79d3d234f53e0d26899e62b92870b97c32d9ba81bca6c9f54ab9adb2bd4f672	\\x0169720ace70c3d2965cbf5d057be93e28de32f9a8d459c46a392e25d588f1b25bf7fc07cbfbec	\\x01b7d0a2ebeb474c4478cce5fe16d5f21502f858bb05245d1ef1f93d62	\\x0187e2e37a90b238856e1dfb3ceb73ae0436b615fc6e683c8722aaa425	\\x01730f53b3a4b2a72805bc9322b636f985e7dfd0253efedfef9c984ce77449daa751e3388f4070b0cb8dc2c55febe777521c43	\\x01440801d946ab121bb0cc47b59a8c6b2c31a3b8643c6c824fa24f3597	\N	2026-03-03 09:01:00+00	1
\.


--
-- Data for Name: session; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.session (id, client_id, member_id, target_id, number, zone, opened_at, admitted_at, ended_at, closing, room_epoch, room_holder, version, seq, over_at, episode_id) FROM stdin;
5ef81d4e-dc00-4936-b105-32be438e6d58	044cb0de-c701-4a42-aec2-9aa1025c579f	072ce82b-c588-45cd-9a00-9988b3f75896	66228bd8-c47f-46fa-8cb5-1a1e82c1fd11	1	UTC	2026-03-03 09:01:00+00	\N	2026-03-03 09:04:22+00	incomplete	4	8a921890-e662-451f-ae0b-7879bfb644a9	2	3	\N	76542ed1-f205-477a-9404-d3a1232e697f
b0a225ed-d779-46b7-8d49-44ac3c51b9aa	044cb0de-c701-4a42-aec2-9aa1025c579f	072ce82b-c588-45cd-9a00-9988b3f75896	66228bd8-c47f-46fa-8cb5-1a1e82c1fd11	2	UTC	2026-03-10 09:04:22+00	2026-03-10 09:04:22+00	\N	\N	0	\N	1	39	\N	76542ed1-f205-477a-9404-d3a1232e697f
07dcb125-6c15-44f6-9bbd-9d06cea54626	96a205d3-0ef5-4eff-8869-96a37a9d700b	072ce82b-c588-45cd-9a00-9988b3f75896	\N	1	UTC	2026-03-10 09:04:22+00	\N	\N	\N	0	\N	1	42	\N	\N
\.


--
-- Data for Name: session_moment; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.session_moment (id, session_id, client_id, kind, at, once) FROM stdin;
1	b0a225ed-d779-46b7-8d49-44ac3c51b9aa	044cb0de-c701-4a42-aec2-9aa1025c579f	admitted	2026-03-10 09:04:22+00	4138b7d4-2d61-4b0b-a837-bb90e54ccad9
\.


--
-- Data for Name: session_words; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.session_words (session_id, client_id, location, call_back, resource, leaving_state, companion, next_contact, client_words, note, version, written_by, written_at) FROM stdin;
5ef81d4e-dc00-4936-b105-32be438e6d58	044cb0de-c701-4a42-aec2-9aa1025c579f	\\x01ab51b3c73ccfd82a0abbed38dbd0e938bd1ad69c94bd917698041944	\\x01edd82e67d65d408c615e899bba7cfef3a464c14570a2531d369a35f8	\\x013230b15904f57016d105447fc91308f4bd00ca44f8166b3bab7f9415	\\x01c20b41d46573a7653ee56258e7f09802476ea429a47a46980b73ba95	\\x013a82158eededc10add5966f697c059c5b072bbdcce29780ca2d71c21	\\x0196983414799379d75585c72457a8968f33d1f3fe765f0e9b8f94d011	\\x01b110ac668b63a66737eb1c58976e82ae2860a09cd4c3ef4ac0f89277	\\x011905aa4fca318968ccfd6a009c4a246083fc9068fd41e91fa5548540	1	072ce82b-c588-45cd-9a00-9988b3f75896	2026-03-03 09:01:00+00
5ef81d4e-dc00-4936-b105-32be438e6d58	044cb0de-c701-4a42-aec2-9aa1025c579f	\\x0147f1dfbc05e725d6469dec96f6262c37b6fb2054c17a746d44dc9c2e	\\x01a5d96db9c0729ea992f5c0189dc973fc6038780888141943c91e0603	\\x01ae39d4da155d5fc5e98ec39c48c2a1f3ea3a7c5da8572d11b0fce518a8fa73ce4938156a261e670978de04938311deb83e657ef3b4ec5b60	\\x019213892f63cddf87286e81aa5dd4b713033a488a795f48941f377a2a69a24bb8ca49e77392aca5cd4098c79aed0182c68feeba5ddecf14186dec4a22db5c5aa0b924fe38a86da4789321d0	\\x01ac3df70c55fd138e1a81e55262a55a1516c1e4f434360e777d074d2ff684565dab76b764a8fe1d	\\x010beffa78c12bb782ca9557bdff1f8a757bba1b92d4b372f89aef763ef3b0b0fd31f1e43c0c7e4f5e968bb0	\\x01e53c29d58481402959e9f730a58c41c803e28552a445ead5afa37aadf53bb198f86b086309347930a8	\\x019ab2a4f518f2705da6c2c7d79ba58f4c63eea0afe8e1b87792b7d3012b0e29079e9e837bdae07097a1ba55a35931140b9e	2	072ce82b-c588-45cd-9a00-9988b3f75896	2026-03-03 09:04:22+00
5ef81d4e-dc00-4936-b105-32be438e6d58	044cb0de-c701-4a42-aec2-9aa1025c579f	\\x01b375953854cda3e036de5f93594ff5f16eab734dcee1338b56c82d0b	\\x012034c0a7c17d0b9dca07d65739ed07337c47d92a569fcf75e83549fd	\\x01d3c66c6c462a6e5668b629b3e844fe30630da8c317a9a69e112fb6fad4d36e10b0b0b9f569299e77c4c0f8b806d26cd46170629d20cbf741	\\x01681d848e3743efdb324456fd817fc2470a16267d1853effe711b9cd938428ad0a7f4c2127748e65363291826d7e8282c3ec0272a8b1a66564a2db6143f3f990d7de394c795e4b624d7dbed	\\x0100e249e0bd8666ff4aaa5163169a9d19c7f093895eb75226611407b1a7277d63e71a0e87c66dff	\\x01bebad63661d0fdf7a1c0ccb532d2d4830b5e96990f2a0438766999b98d0b2f304e97748f0d5ae7282a088c	\\x016e936cbee8a0ee9378a576f2600daed76878f5874a7ad6d0ef33ea780885fe501afd0db23e960a6b2b	\\x01629710aa02bc261d14c422c9f6708660819d186c927eec89f3b0e4485ecb8fa1b42aee3ba36293f656fea887f5a7d799ee32ae736cdd570a1ae414a35b302c8856c2a6abc0d9be	3	072ce82b-c588-45cd-9a00-9988b3f75896	2026-03-03 09:04:22+00
b0a225ed-d779-46b7-8d49-44ac3c51b9aa	044cb0de-c701-4a42-aec2-9aa1025c579f	\\x010e141cc19a8ebc6264c4a08995beda48ebde0c71a2614acc5a500098	\\x0178cf7fdac82a33de725a5f500c522bc465958dcf6765d71bfa69e7e9	\\x010230f0626c45b42cedef3ec42948443d218e1dc3a833a529f37e9239	\\x01ad17a7b862d85f9555fb13d1640b92723aa618fb61101b1c19119798	\\x01328d02155c02357038899be70a49ba60bcd7f576df661c07f5304cfe	\\x0154da622205cf834425379b54a0579a4f239856718058999e95e3fbbe	\\x01987fb260f5af67537de3a67ec8e70a8a2e9f312b925903e64c4684d8	\\x011502e28c4d5d2b5c84d356846c14831853b121d281a8aba0b3adb2b7	1	072ce82b-c588-45cd-9a00-9988b3f75896	2026-03-10 09:04:22+00
b0a225ed-d779-46b7-8d49-44ac3c51b9aa	044cb0de-c701-4a42-aec2-9aa1025c579f	\\x010ff7a76300d7a9ca9bc09cd02417e06da6326029b94430503adc09a6f83dee84830d8f458ed567c0	\\x01c4298bea1a4890a7aad622a9c6d41d289d369a36ccc9489a52f484c9036c3729ccc42b49a3cd6b4c1c0a	\\x01dd81db53e728cd2bb8472de680ae95b7e0b0930701221b928e1fcab5	\\x01f21a4fa575377d1c89d76304ccde20fe466225375282d46223678fbb	\\x01d4953d35e206921e83e195111f5cfc4ee2a5fce4186a2cf1626e3c2d	\\x01119b3e6dde2fa77a2692b89565d675cf60e6c52d766a5f28e44da7c5	\\x01506bcfb0f36a0a587e66c3bfe5a7cc8e702da20efb553627d18bcdf1	\\x011e70dfc556ab7a9a841d974c358cd2ac89453d7e61776bcf738e22ef	2	072ce82b-c588-45cd-9a00-9988b3f75896	2026-03-10 09:04:22+00
07dcb125-6c15-44f6-9bbd-9d06cea54626	96a205d3-0ef5-4eff-8869-96a37a9d700b	\\x0186d108b37d3a87c0328bf6c7ce0253ea063806e64a0c3759d597dfb8	\\x018a1b08ede094ec83f4dc5bc0d1ede1f034187740f57c5fd10eaa2152	\\x0119eae09e0ca31a1405a657a16d23e9466ded4de0a94bc832d9c0ce3d	\\x01aafa1493dc056758f9c7420fbecb5ed20d31cea03a7e0049561372da	\\x018fa4736308bd00746eade588f566d035902f590a2518b49443ffdb73	\\x015129619fc0772cdee45b489d04078a4007880d462693bcf2566d2888	\\x01175ae462815f6793c75282ca54a7982e4dabee390ead8d1232e5c543	\\x01267229be7d5921732e57a648a5c3a98ae6ceb83a466c5f5f2f7492ab	1	072ce82b-c588-45cd-9a00-9988b3f75896	2026-03-10 09:04:22+00
\.


--
-- Data for Name: set_ending; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.set_ending (set_id, session_id, client_id, ending, at_ms, recorded_at, witness) FROM stdin;
4165410e-bba9-4cd6-974d-e22cf5236608	5ef81d4e-dc00-4936-b105-32be438e6d58	044cb0de-c701-4a42-aec2-9aa1025c579f	done	26500	2026-03-03 09:02:27.5+00	room
8dc4d636-8467-4042-95f0-6e128dabc2a6	5ef81d4e-dc00-4936-b105-32be438e6d58	044cb0de-c701-4a42-aec2-9aa1025c579f	stopped_by_client	26500	2026-03-03 09:03:01.5+00	room
bfe2ec09-4ae1-4b20-b421-1f197d575f7d	5ef81d4e-dc00-4936-b105-32be438e6d58	044cb0de-c701-4a42-aec2-9aa1025c579f	stopped_by_clinician	26500	2026-03-03 09:03:33.5+00	room
6903db7e-b0f7-4d60-8666-865e8e138147	5ef81d4e-dc00-4936-b105-32be438e6d58	044cb0de-c701-4a42-aec2-9aa1025c579f	unknown	26500	2026-03-03 09:04:07.5+00	room
\.


--
-- Data for Name: set_evidence; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.set_evidence (set_id, seq, session_id, client_id, kind, at_ms, phase, width, frames, longest_gap, ending, recorded_at) FROM stdin;
4165410e-bba9-4cd6-974d-e22cf5236608	3	5ef81d4e-dc00-4936-b105-32be438e6d58	044cb0de-c701-4a42-aec2-9aa1025c579f	rested	26500	24.5	\N	\N	\N	done	2026-03-03 09:02:27.5+00
4165410e-bba9-4cd6-974d-e22cf5236608	2	5ef81d4e-dc00-4936-b105-32be438e6d58	044cb0de-c701-4a42-aec2-9aa1025c579f	second	8000	2	\N	52	84	\N	2026-03-03 09:02:27.5+00
4165410e-bba9-4cd6-974d-e22cf5236608	1	5ef81d4e-dc00-4936-b105-32be438e6d58	044cb0de-c701-4a42-aec2-9aa1025c579f	second	7000	1	\N	60	17	\N	2026-03-03 09:02:27.5+00
4165410e-bba9-4cd6-974d-e22cf5236608	0	5ef81d4e-dc00-4936-b105-32be438e6d58	044cb0de-c701-4a42-aec2-9aa1025c579f	shown	6000	\N	18	\N	\N	\N	2026-03-03 09:02:27.5+00
bfe2ec09-4ae1-4b20-b421-1f197d575f7d	3	5ef81d4e-dc00-4936-b105-32be438e6d58	044cb0de-c701-4a42-aec2-9aa1025c579f	rested	26500	11	\N	\N	\N	stopped_by_clinician	2026-03-03 09:03:33.5+00
bfe2ec09-4ae1-4b20-b421-1f197d575f7d	2	5ef81d4e-dc00-4936-b105-32be438e6d58	044cb0de-c701-4a42-aec2-9aa1025c579f	second	8000	2	\N	52	84	\N	2026-03-03 09:03:33.5+00
bfe2ec09-4ae1-4b20-b421-1f197d575f7d	1	5ef81d4e-dc00-4936-b105-32be438e6d58	044cb0de-c701-4a42-aec2-9aa1025c579f	second	7000	1	\N	60	17	\N	2026-03-03 09:03:33.5+00
bfe2ec09-4ae1-4b20-b421-1f197d575f7d	0	5ef81d4e-dc00-4936-b105-32be438e6d58	044cb0de-c701-4a42-aec2-9aa1025c579f	shown	6000	\N	18	\N	\N	\N	2026-03-03 09:03:33.5+00
\.


--
-- Data for Name: set_order; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.set_order (set_id, seq, session_id, client_id, cause, at_ms, plan, timeline, recorded_at) FROM stdin;
4165410e-bba9-4cd6-974d-e22cf5236608	0	5ef81d4e-dc00-4936-b105-32be438e6d58	044cb0de-c701-4a42-aec2-9aa1025c579f	started	5000	{"dot": 1.5, "path": "across", "rate": 1.0, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "purpose": "processing", "channels": {"ears": false, "eyes": true, "hands": false}}	{"segments": []}	2026-03-03 09:02:06+00
4165410e-bba9-4cd6-974d-e22cf5236608	1	5ef81d4e-dc00-4936-b105-32be438e6d58	044cb0de-c701-4a42-aec2-9aa1025c579f	rate	11500	{"dot": 1.5, "path": "across", "rate": 1.2, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "purpose": "processing", "channels": {"ears": false, "eyes": true, "hands": false}}	{"segments": []}	2026-03-03 09:02:12.5+00
8dc4d636-8467-4042-95f0-6e128dabc2a6	0	5ef81d4e-dc00-4936-b105-32be438e6d58	044cb0de-c701-4a42-aec2-9aa1025c579f	started	5000	{"dot": 1.5, "path": "across", "rate": 1.0, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "purpose": "processing", "channels": {"ears": false, "eyes": true, "hands": false}}	{"segments": []}	2026-03-03 09:02:40+00
8dc4d636-8467-4042-95f0-6e128dabc2a6	1	5ef81d4e-dc00-4936-b105-32be438e6d58	044cb0de-c701-4a42-aec2-9aa1025c579f	rate	11500	{"dot": 1.5, "path": "across", "rate": 1.2, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "purpose": "processing", "channels": {"ears": false, "eyes": true, "hands": false}}	{"segments": []}	2026-03-03 09:02:46.5+00
bfe2ec09-4ae1-4b20-b421-1f197d575f7d	0	5ef81d4e-dc00-4936-b105-32be438e6d58	044cb0de-c701-4a42-aec2-9aa1025c579f	started	5000	{"dot": 1.5, "path": "across", "rate": 1.0, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "purpose": "processing", "channels": {"ears": false, "eyes": true, "hands": false}}	{"segments": []}	2026-03-03 09:03:12+00
bfe2ec09-4ae1-4b20-b421-1f197d575f7d	1	5ef81d4e-dc00-4936-b105-32be438e6d58	044cb0de-c701-4a42-aec2-9aa1025c579f	rate	11500	{"dot": 1.5, "path": "across", "rate": 1.2, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "purpose": "processing", "channels": {"ears": false, "eyes": true, "hands": false}}	{"segments": []}	2026-03-03 09:03:18.5+00
6903db7e-b0f7-4d60-8666-865e8e138147	0	5ef81d4e-dc00-4936-b105-32be438e6d58	044cb0de-c701-4a42-aec2-9aa1025c579f	started	5000	{"dot": 1.5, "path": "across", "rate": 1.0, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "purpose": "processing", "channels": {"ears": false, "eyes": true, "hands": false}}	{"segments": []}	2026-03-03 09:03:46+00
6903db7e-b0f7-4d60-8666-865e8e138147	1	5ef81d4e-dc00-4936-b105-32be438e6d58	044cb0de-c701-4a42-aec2-9aa1025c579f	rate	11500	{"dot": 1.5, "path": "across", "rate": 1.2, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "purpose": "processing", "channels": {"ears": false, "eyes": true, "hands": false}}	{"segments": []}	2026-03-03 09:03:52.5+00
\.


--
-- Data for Name: steadying; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.steadying (client_id, signs, way_back, first_words, written_at, version) FROM stdin;
044cb0de-c701-4a42-aec2-9aa1025c579f	\\x01c9da935f702bf28a670bb83198affa274f810054bd3266a6789160f23c7badede097cac5f8829774c6	\\x01ce0bd7901c01dad52dfe6b0eb912d8662cc3feb979e377dff089467dd148f4d5c04c5a6fd3b88a9a27151035a99206e114c9	\\x01c6c843746b76b5849c6ca49aa7085b52057da01d875c7b22f7532369	2026-03-03 09:01:00+00	1
\.


--
-- Data for Name: stimulus_set; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.stimulus_set (id, session_id, client_id, target_id, number, epoch, plan, recorded_at, seq) FROM stdin;
4165410e-bba9-4cd6-974d-e22cf5236608	5ef81d4e-dc00-4936-b105-32be438e6d58	044cb0de-c701-4a42-aec2-9aa1025c579f	66228bd8-c47f-46fa-8cb5-1a1e82c1fd11	1	1	{"dot": 1.5, "path": "across", "rate": 1.0, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "purpose": "processing", "channels": {"ears": false, "eyes": true, "hands": false}}	2026-03-03 09:02:06+00	8
8dc4d636-8467-4042-95f0-6e128dabc2a6	5ef81d4e-dc00-4936-b105-32be438e6d58	044cb0de-c701-4a42-aec2-9aa1025c579f	66228bd8-c47f-46fa-8cb5-1a1e82c1fd11	2	2	{"dot": 1.5, "path": "across", "rate": 1.0, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "purpose": "processing", "channels": {"ears": false, "eyes": true, "hands": false}}	2026-03-03 09:02:40+00	13
bfe2ec09-4ae1-4b20-b421-1f197d575f7d	5ef81d4e-dc00-4936-b105-32be438e6d58	044cb0de-c701-4a42-aec2-9aa1025c579f	66228bd8-c47f-46fa-8cb5-1a1e82c1fd11	3	3	{"dot": 1.5, "path": "across", "rate": 1.0, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "purpose": "processing", "channels": {"ears": false, "eyes": true, "hands": false}}	2026-03-03 09:03:12+00	16
6903db7e-b0f7-4d60-8666-865e8e138147	5ef81d4e-dc00-4936-b105-32be438e6d58	044cb0de-c701-4a42-aec2-9aa1025c579f	66228bd8-c47f-46fa-8cb5-1a1e82c1fd11	4	4	{"dot": 1.5, "path": "across", "rate": 1.0, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "purpose": "processing", "channels": {"ears": false, "eyes": true, "hands": false}}	2026-03-03 09:03:46+00	24
\.


--
-- Data for Name: target; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.target (id, client_id, number, prong, opened_at, archived_at, version) FROM stdin;
66228bd8-c47f-46fa-8cb5-1a1e82c1fd11	044cb0de-c701-4a42-aec2-9aa1025c579f	1	past	2026-03-03 09:00:00+00	\N	3
9c4c97b5-dd64-45c3-b87e-f558fe714136	044cb0de-c701-4a42-aec2-9aa1025c579f	2	present	2026-03-03 09:02:00+00	\N	1
\.


--
-- Data for Name: target_course; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.target_course (target_id, client_id, rules, procedure, state, held, because, unfounded, version) FROM stdin;
9c4c97b5-dd64-45c3-b87e-f558fe714136	044cb0de-c701-4a42-aec2-9aa1025c579f	2	standard	planned	\N	\N	f	1
66228bd8-c47f-46fa-8cb5-1a1e82c1fd11	044cb0de-c701-4a42-aec2-9aa1025c579f	2	recent_event	incomplete	\N	\N	f	4
\.


--
-- Data for Name: target_plan; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.target_plan (target_id, client_id, place, age, year, cluster_id, parent_id) FROM stdin;
66228bd8-c47f-46fa-8cb5-1a1e82c1fd11	044cb0de-c701-4a42-aec2-9aa1025c579f	2	9	1998	12c68429-8b25-441d-a00d-869d50654a53	\N
9c4c97b5-dd64-45c3-b87e-f558fe714136	044cb0de-c701-4a42-aec2-9aa1025c579f	1	\N	\N	12c68429-8b25-441d-a00d-869d50654a53	66228bd8-c47f-46fa-8cb5-1a1e82c1fd11
\.


--
-- Data for Name: target_words; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.target_words (target_id, client_id, label, picture, negative_belief, positive_belief, emotions, body_location, version) FROM stdin;
66228bd8-c47f-46fa-8cb5-1a1e82c1fd11	044cb0de-c701-4a42-aec2-9aa1025c579f	\\x0121b45c9e26e7bacaa1d624ceeed667045ddbcceab240391f4969c64d8434b0fb81f7b2a88c9f72eb24fcf08c	\\x010c8c625ac0e63becd1e94d4dece2b9f7e2a72591a4f05f60d68097117add1837baf3ad7b1b3281afc36f03fd82acb65329627432	\\x01c516e63f05a82b7c615ab6f8396da73ea386ed745466d023d784889e91fae18ae94dc10fbe4d8f233ff56a67812d4666a077ef28	\\x01a1474802531def05dcda953c14b4fa87cae3ac22a53600b5b02cb9a02cafab7833fd0de28e2f7305c6605893fdf5d78f1af53f	\\x01cb86952c3f9951e00d0b2866b1fff8857b5b45d62599201a8815b04ecad96fab16edf9dd2b935f485db4af	\\x014b8cca63f3ed151c0ade76ca5f8710dc06a77d5c79c5bf1e99f88bdde283639d59b10262f70e0a26862bdd1e18	3
9c4c97b5-dd64-45c3-b87e-f558fe714136	044cb0de-c701-4a42-aec2-9aa1025c579f	\\x0123d2acd97b54f34f1a8d1ffc6a55cd3820a0efdd06e6c2b047b3a0ce1bce6aa07950c683728425ca	\\x013d543ebfeb429efe6f1bdced04de3460b8cb0412c260328138906ee9	\\x01efafc7d60660bb68950f9cfab530975b2e00136a865c2bb0251d3322	\\x0105064b7342245e77003aef72de858127a2b623ee5587cf2e08247dbc	\\x012fc307ca1c90b55dab699c455a71b5f9999224868e973b9cc99bc823	\\x015c5597c56b17e19d53532e1c9cb065efe118a49dabbffe74f5564699	1
\.


--
-- Data for Name: unmeasured; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.unmeasured (id, client_id, session_id, target_id, way, replaces, entered_by, at, seq) FROM stdin;
7fe43c00-e89c-456a-8a1e-df42ed20c097	044cb0de-c701-4a42-aec2-9aa1025c579f	5ef81d4e-dc00-4936-b105-32be438e6d58	66228bd8-c47f-46fa-8cb5-1a1e82c1fd11	own_tapping	\N	072ce82b-c588-45cd-9a00-9988b3f75896	2026-03-03 09:04:16+00	29
478bd36b-05d3-40a0-9f0d-f4697204a065	044cb0de-c701-4a42-aec2-9aa1025c579f	5ef81d4e-dc00-4936-b105-32be438e6d58	66228bd8-c47f-46fa-8cb5-1a1e82c1fd11	\N	7fe43c00-e89c-456a-8a1e-df42ed20c097	072ce82b-c588-45cd-9a00-9988b3f75896	2026-03-03 09:04:17+00	30
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
-- Name: one_open_episode; Type: INDEX; Schema: public; Owner: leeward_owner
--

CREATE UNIQUE INDEX one_open_episode ON public.episode USING btree (client_id) WHERE (ended_at IS NULL);


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
-- Name: risk_told_client_id_idx; Type: INDEX; Schema: public; Owner: leeward_owner
--

CREATE INDEX risk_told_client_id_idx ON public.risk_told USING btree (client_id);


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
-- Name: stimulus_set fold_first_set; Type: TRIGGER; Schema: public; Owner: leeward_owner
--

CREATE TRIGGER fold_first_set AFTER INSERT ON public.stimulus_set FOR EACH ROW WHEN (((new.target_id IS NOT NULL) AND (COALESCE((new.plan ->> 'purpose'::text), 'processing'::text) = 'processing'::text))) EXECUTE FUNCTION access.fold_first_set();


--
-- Name: response fold_measure; Type: TRIGGER; Schema: public; Owner: leeward_owner
--

CREATE TRIGGER fold_measure AFTER INSERT ON public.response FOR EACH ROW EXECUTE FUNCTION access.fold_measure();


--
-- Name: session fold_sessions; Type: TRIGGER; Schema: public; Owner: leeward_owner
--

CREATE TRIGGER fold_sessions AFTER INSERT OR UPDATE OF admitted_at, ended_at, closing ON public.session FOR EACH ROW WHEN ((new.episode_id IS NOT NULL)) EXECUTE FUNCTION access.fold_sessions();


--
-- Name: session in_episode; Type: TRIGGER; Schema: public; Owner: leeward_owner
--

CREATE TRIGGER in_episode BEFORE INSERT ON public.session FOR EACH ROW EXECUTE FUNCTION access.session_in_episode();


--
-- Name: episode keep_episode; Type: TRIGGER; Schema: public; Owner: leeward_owner
--

CREATE TRIGGER keep_episode BEFORE UPDATE OF ended_at ON public.episode FOR EACH ROW EXECUTE FUNCTION access.keep_episode();


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
-- Name: response place_of_correction; Type: TRIGGER; Schema: public; Owner: leeward_owner
--

CREATE TRIGGER place_of_correction BEFORE INSERT ON public.response FOR EACH ROW WHEN ((new.replaces IS NOT NULL)) EXECUTE FUNCTION public.place_of_corrected_response();


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
-- Name: response response_client_id_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.response
    ADD CONSTRAINT response_client_id_fkey FOREIGN KEY (client_id) REFERENCES public.client(id);


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
-- Name: episode; Type: ROW SECURITY; Schema: public; Owner: leeward_owner
--

ALTER TABLE public.episode ENABLE ROW LEVEL SECURITY;

--
-- Name: episode_measure; Type: ROW SECURITY; Schema: public; Owner: leeward_owner
--

ALTER TABLE public.episode_measure ENABLE ROW LEVEL SECURITY;

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
-- Name: risk_told read; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY read ON public.risk_told FOR SELECT USING (((client_id IN ( SELECT access.my_clients() AS my_clients)) OR (member_id = ( SELECT access.me() AS me))));


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
-- Name: response; Type: ROW SECURITY; Schema: public; Owner: leeward_owner
--

ALTER TABLE public.response ENABLE ROW LEVEL SECURITY;

--
-- Name: response_answers; Type: ROW SECURITY; Schema: public; Owner: leeward_owner
--

ALTER TABLE public.response_answers ENABLE ROW LEVEL SECURITY;

--
-- Name: risk_flag; Type: ROW SECURITY; Schema: public; Owner: leeward_owner
--

ALTER TABLE public.risk_flag ENABLE ROW LEVEL SECURITY;

--
-- Name: risk_told; Type: ROW SECURITY; Schema: public; Owner: leeward_owner
--

ALTER TABLE public.risk_told ENABLE ROW LEVEL SECURITY;

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
-- Name: rating upkeep; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY upkeep ON public.rating FOR SELECT USING (( SELECT access.is_owner() AS is_owner));


--
-- Name: response upkeep; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY upkeep ON public.response FOR SELECT USING (( SELECT access.is_owner() AS is_owner));


--
-- Name: risk_flag upkeep; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY upkeep ON public.risk_flag FOR SELECT USING (( SELECT access.is_owner() AS is_owner));


--
-- Name: risk_told upkeep; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY upkeep ON public.risk_told FOR SELECT USING (( SELECT access.is_owner() AS is_owner));


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
-- Name: episode upkeep_add; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY upkeep_add ON public.episode FOR INSERT WITH CHECK (( SELECT access.is_owner() AS is_owner));


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
-- Name: FUNCTION flags_past_time(); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.flags_past_time() FROM PUBLIC;
GRANT ALL ON FUNCTION access.flags_past_time() TO leeward_app;


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
-- Name: FUNCTION fold_sessions(); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.fold_sessions() FROM PUBLIC;


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

\unrestrict 7ookTffgRfTERJa8GxFbotyail0OfTXixLxGzgfFdIXHjnIReAfDJDHgpQd2c3L

