-- Written by ./tests/run --dump at migration 32. Sealed under the tests' key, 5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a.
--
-- PostgreSQL database dump
--

\restrict 1Yznp3e8tFPqbsYkUhV1GmNYf7zJ1eOL3X6mVTVp6SVCb332gYx8k1nGNXeqhxU

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
  PERFORM pg_advisory_xact_lock(hashtextextended(NEW.episode_id::text, 32));
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
  PERFORM pg_advisory_xact_lock(hashtextextended(of_target::text, 32));
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
 WITH t AS MATERIALIZED (
         SELECT ((access.now() AT TIME ZONE practice.zone))::date AS day
           FROM public.practice
        )
 SELECT s.client_id,
        CASE
            WHEN l.holds THEN n.due_for
            ELSE NULL::text
        END AS due_for,
        CASE
            WHEN l.holds THEN n.due_on
            ELSE NULL::date
        END AS due_on,
    s.due_on AS folded_on
   FROM ((((public.schedule s
     CROSS JOIN t)
     CROSS JOIN LATERAL ( SELECT COALESCE(((s.due_for = 'end'::text) AND (s.then_on <= t.day)), false) AS after) e)
     CROSS JOIN LATERAL ( SELECT
                CASE
                    WHEN e.after THEN s.then_for
                    ELSE s.due_for
                END AS due_for,
                CASE
                    WHEN (NOT e.after) THEN s.due_on
                    WHEN (s.then_for IS NOT NULL) THEN s.then_on
                    ELSE NULL::date
                END AS due_on) n)
     CROSS JOIN LATERAL ( SELECT ((n.due_for IS DISTINCT FROM 'follow_up'::text) OR ((n.due_on + 90) > t.day)) AS holds) l);


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
t	75	\\xd8a2c2080437cbdf909bdc40d2d4a2322a9ed7daf26406ad4f60ccea2ac61387
\.


--
-- Data for Name: care_link; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.care_link (id, member_id, client_id, since, until) FROM stdin;
211cd37f-b74e-4c0f-ba27-42f36b6ea6cb	21592c02-c035-4943-9320-bc8501645a59	3621206b-927c-4cc0-8009-c2ed9c1740c3	2026-03-03 09:00:00+00	\N
fb1fcc35-e9b1-4d9b-8782-6228aeb91816	21592c02-c035-4943-9320-bc8501645a59	e5007cdb-4411-4f1b-b5d3-4750832e211e	2026-03-10 09:04:22+00	\N
09ec6379-b7ac-46bf-b7f4-fa5de39b6b67	21592c02-c035-4943-9320-bc8501645a59	f2920556-ff54-48ef-9cb5-533a991e9dfc	2026-03-10 09:04:22+00	\N
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
4daa2e85-ee0c-45eb-bbda-25030001e8cc	\\xf7e727b81606836d59f873189b0663b57e770f7b2f9fdd6b10b899b49df6168d	3621206b-927c-4cc0-8009-c2ed9c1740c3	forms	427280f3-dd0c-41e9-b637-4c296d0ffcf7	21592c02-c035-4943-9320-bc8501645a59	2026-03-10 09:04:22+00	\N
\.


--
-- Data for Name: gate; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.gate (session_id, client_id, ended_at) FROM stdin;
7cef5d09-bf65-4242-9869-33c506d2f815	3621206b-927c-4cc0-8009-c2ed9c1740c3	2026-03-03 09:04:22+00
7c9dba37-5eb3-4ccc-a084-12bb05f7ef30	3621206b-927c-4cc0-8009-c2ed9c1740c3	\N
6ac168be-6488-4d88-8865-823b59385021	e5007cdb-4411-4f1b-b5d3-4750832e211e	\N
\.


--
-- Data for Name: invitation; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.invitation (token_hash, member_id, name, roles, made_by, made_at, ends_at, spent_at, made_in, replacement) FROM stdin;
\\xb5be47a0acd9d6eebdf7be39d1cc17f2f3d21c70c87ef419c1c5f8012c715b0c	\N	Somebody New	{lead}	c2e1beeb-3131-4765-8084-dc47b70e3012	2026-03-03 09:01:00+00	2026-03-06 09:01:00+00	\N	da198ffe-ec11-4c9b-aca4-bb46f8c2db6e	\N
\.


--
-- Data for Name: join_link; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.join_link (id, token_hash, session_id, made_at, ends_at, revoked_at, code_phc, code_ends_at, code_tries, code_spent_at) FROM stdin;
7199f499-e485-4808-b184-cc773dcb4556	\\xd1748f2840295fba0bee211167e1b8d2596d7ae6efe8018b8478f610b124a9e3	7c9dba37-5eb3-4ccc-a084-12bb05f7ef30	2026-03-10 09:04:22+00	2026-03-10 13:04:22+00	\N	$argon2id$v=19$m=19456,t=2,p=1$GVC3tMTCYXihBIU4TVbLsg$ugwftU467DyfWPP5UMUDGlNWQUIZRsJGsfOUgQaaqAk	2026-03-10 09:14:22+00	1	2026-03-10 09:04:22+00
\.


--
-- Data for Name: key_check; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.key_check (key_id, sealed) FROM stdin;
1	\\x01ed6fd8dbddff46d178632ddb19097380864ac286d6e0458e0a788eb78807662b35007550c1505bd19a22bd091e
\.


--
-- Data for Name: member; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.member (id, name, roles, joined_at, left_at, roles_since) FROM stdin;
21592c02-c035-4943-9320-bc8501645a59	Member 21592c	{clinician}	2026-03-03 09:00:00+00	\N	\N
c1e11fa0-b036-423e-ad7e-55e2be62563e	Member c1e11f	{lead}	2026-03-03 09:01:00+00	\N	\N
c2e1beeb-3131-4765-8084-dc47b70e3012	Member c2e1be	{administrator}	2026-03-03 09:01:00+00	\N	\N
a8092d32-381a-41f3-af0f-3ee949a1f419	Member a8092d	{lead}	2026-03-10 09:04:22+00	\N	\N
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
21592c02-c035-4943-9320-bc8501645a59	e5007cdb-4411-4f1b-b5d3-4750832e211e
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
c2e1beeb-3131-4765-8084-dc47b70e3012	b96bc7b4-1646-22e7-1a48-65c380b5d62b	member.invite	\\xe2363b47c16ec24771f466dcafefd75b082e8e3016e2f9e70ec7728212875a63	{"json":"2026-03-06T09:01:00Z"}	2026-03-03 09:01:00+00
c2e1beeb-3131-4765-8084-dc47b70e3012	df8283e4-58b7-e8da-1399-f38913a79f5c	practice.settings.change	\\x3e64732a5e4370a80e8ba4814df45b97ca43ce946745bf2da3c0fdaea745b3e7	{"see":"/practice/settings?saved=df8283e4-58b7-e8da-1399-f38913a79f5c"}	2026-03-03 09:01:00+00
21592c02-c035-4943-9320-bc8501645a59	0ba4cc56-2820-b9a5-4768-874ec9fdd001	preset.create	\\x67f8aa3b84c8869b415acfe4c1f6e316f15397a9a65a578df07867f203fe5edd	{"see":"/presets?saved=0ba4cc56-2820-b9a5-4768-874ec9fdd001"}	2026-03-03 09:01:00+00
21592c02-c035-4943-9320-bc8501645a59	fdf5f584-ec74-846d-6164-23ee2aad7ccc	preset.create	\\x953d427bf0820728e80909e2230864766d0a7b14539231a9a15be4eec05db0a0	{"see":"/presets?saved=fdf5f584-ec74-846d-6164-23ee2aad7ccc"}	2026-03-03 09:01:00+00
21592c02-c035-4943-9320-bc8501645a59	dfac47ce-eb95-c7de-7c8b-c0ccbfa1d957	preset.put_away	\\x7d4f828a583b92a24935f7fa152dfed5f6a19b69aa3c05c9abcdcda703bd04d5	{"see":"/presets"}	2026-03-03 09:01:00+00
21592c02-c035-4943-9320-bc8501645a59	d93e91a9-2c47-9b56-a708-0c9668ab910e	client.change	\\xc70acaf2e505d55bdfc378b96f53987b1bf2c7d5cb10b1e3486b3a3e09b72d10	{"see":"/clients/3621206b-927c-4cc0-8009-c2ed9c1740c3?saved=d93e91a9-2c47-9b56-a708-0c9668ab910e"}	2026-03-03 09:01:00+00
21592c02-c035-4943-9320-bc8501645a59	b132332f-6ff9-0e7b-7aa7-6a887d8ba848	comfort.change	\\xcdf68b7f9738e1cc63937dde20bd88482de3684c3b17c2d058b282ed2688f9fa	{"see":"/clients/3621206b-927c-4cc0-8009-c2ed9c1740c3?saved=b132332f-6ff9-0e7b-7aa7-6a887d8ba848"}	2026-03-03 09:01:00+00
21592c02-c035-4943-9320-bc8501645a59	3c40cabf-9175-bff8-58fa-6fd7a95805de	safety_plan.change	\\x01240058e659a4e96d39a74031c5224f56ee275a8d16cc6e10bee64fb065de8f	{"see":"/clients/3621206b-927c-4cc0-8009-c2ed9c1740c3/safety-plan?saved=3c40cabf-9175-bff8-58fa-6fd7a95805de"}	2026-03-03 09:01:00+00
21592c02-c035-4943-9320-bc8501645a59	5c04efe4-34ff-610e-a491-40956de5416e	steadying.change	\\x1c23db7e4f950da7c95ae9ea82929bcab46e3107ddac48b0283291ad21ec2da2	{"see":"/clients/3621206b-927c-4cc0-8009-c2ed9c1740c3/steadying?saved=5c04efe4-34ff-610e-a491-40956de5416e"}	2026-03-03 09:01:00+00
21592c02-c035-4943-9320-bc8501645a59	b4440a18-12ed-94ed-3c0d-dc7ab648932f	reach.change	\\x287ae8447a74b192840984907efcde273ecdccdc920251c7a91ff3008c19427e	{"see":"/clients/3621206b-927c-4cc0-8009-c2ed9c1740c3?saved=b4440a18-12ed-94ed-3c0d-dc7ab648932f"}	2026-03-03 09:01:00+00
21592c02-c035-4943-9320-bc8501645a59	dbd49d95-6d85-9862-936d-5320532ecaa6	resource.create	\\xbbc3c6075eb07e50d0d7ad8476064591c9a691561fff915bffbbdbab2a5ddad1	{"see":"/clients/3621206b-927c-4cc0-8009-c2ed9c1740c3/steadying?saved=dbd49d95-6d85-9862-936d-5320532ecaa6"}	2026-03-03 09:01:00+00
21592c02-c035-4943-9320-bc8501645a59	3d967097-5586-0221-1cbb-a862004f3e96	event.create	\\x9aee00580bf8e7d0a83d448cd4592e69521965435271bb4962d6df3073554dbb	{"see":"/clients/3621206b-927c-4cc0-8009-c2ed9c1740c3/events?saved=3d967097-5586-0221-1cbb-a862004f3e96"}	2026-03-03 09:01:00+00
21592c02-c035-4943-9320-bc8501645a59	84f28de7-2d7a-2c65-a9e7-35c7f55d36a7	target.change	\\x605fe58e9ab21e948530f42eb2ceb51b9a5189c05075ea3a2434b4c8770a2fde	{"see":"/targets/d732ab79-94e9-4c4b-bb33-dc2cb5c3019e?saved=84f28de7-2d7a-2c65-a9e7-35c7f55d36a7"}	2026-03-03 09:02:00+00
21592c02-c035-4943-9320-bc8501645a59	828dcd0a-7082-a284-5a56-11881356c7fa	target.change	\\xb05dfc50de946b528172f516637e15c40ead58821dc896603cea850476a3e09a	{"see":"/targets/d732ab79-94e9-4c4b-bb33-dc2cb5c3019e?saved=828dcd0a-7082-a284-5a56-11881356c7fa"}	2026-03-03 09:02:00+00
21592c02-c035-4943-9320-bc8501645a59	7fdbdf1f-2d04-abc6-2d0a-d932194f911a	plan.cluster	\\x196cb957c3794713eb0584f4b4d46281e8fbaa5674ed5b4777ff3f8e485e44e8	{"see":"/clients/3621206b-927c-4cc0-8009-c2ed9c1740c3/plan?saved=7fdbdf1f-2d04-abc6-2d0a-d932194f911a"}	2026-03-03 09:02:00+00
21592c02-c035-4943-9320-bc8501645a59	be1da8a1-1b74-fc6c-8e2b-0affad2fd676	target.create	\\xc911ea42fb3c7a25e783bd8eac41e52db2fdab5ec9678fcee5f2a11b75b78c9f	{"see":"/targets/f128b10d-e23d-4d9a-b736-4afa086866c2?saved=be1da8a1-1b74-fc6c-8e2b-0affad2fd676"}	2026-03-03 09:02:00+00
21592c02-c035-4943-9320-bc8501645a59	c7443002-67b4-853a-13a3-16a92d711287	plan.move	\\x73519ecab28a5b2cf703544dd4ae9d666c84b2acfa594445b0293408a79a56e1	{"see":"/clients/3621206b-927c-4cc0-8009-c2ed9c1740c3/plan#target-2"}	2026-03-03 09:02:00+00
21592c02-c035-4943-9320-bc8501645a59	555079b8-6185-6dd4-bc47-229582d71902	target.fact	\\x47aa79fb9932d04cf6c05cded96db5c0d813189be2afc45255d40dd57afde951	{"see":"/targets/d732ab79-94e9-4c4b-bb33-dc2cb5c3019e?saved=555079b8-6185-6dd4-bc47-229582d71902"}	2026-03-03 09:03:41+00
21592c02-c035-4943-9320-bc8501645a59	fe774420-5c59-5528-f3da-5950804dd497	target.fact	\\x02d977337be7ceedd72fe074f2707b4757a94294ac98e60d2594ba39f5b9c88e	{"see":"/targets/d732ab79-94e9-4c4b-bb33-dc2cb5c3019e?saved=fe774420-5c59-5528-f3da-5950804dd497"}	2026-03-03 09:03:41+00
21592c02-c035-4943-9320-bc8501645a59	64be1c37-17e8-4666-c4ff-4bf83f390a9e	target.fact	\\x9559030edbc97588cdefa756bfa2d7bbe3db2248933f618d9a8dee68711efa34	{"see":"/targets/d732ab79-94e9-4c4b-bb33-dc2cb5c3019e?saved=64be1c37-17e8-4666-c4ff-4bf83f390a9e"}	2026-03-03 09:03:41+00
21592c02-c035-4943-9320-bc8501645a59	7675a007-df6f-2e6a-c996-9620992a17ab	session.close	\\xba4a9859768c0e3347863e78b0d61b629ff06f9822d73b35760077e763de72c2	{"see":"/sessions/7cef5d09-bf65-4242-9869-33c506d2f815?saved=7675a007-df6f-2e6a-c996-9620992a17ab"}	2026-03-03 09:04:22+00
21592c02-c035-4943-9320-bc8501645a59	e7dc8ee1-5604-9975-9c87-e4445584eab7	session.check	\\x64c1ee0c96e640065be94c12c27ef1d1bb4eb025501597f8942f082ae89b421d	{"see":"/sessions/7cef5d09-bf65-4242-9869-33c506d2f815?saved=e7dc8ee1-5604-9975-9c87-e4445584eab7"}	2026-03-03 09:04:22+00
21592c02-c035-4943-9320-bc8501645a59	117a256f-ad3e-860a-5696-52eb0ccf9da1	session.note.save	\\xd4c7e7611f7a25059bfc6c5049a4befb857b2382ec243f65541d2ccb433abf99	{"see":"/sessions/7cef5d09-bf65-4242-9869-33c506d2f815?saved=117a256f-ad3e-860a-5696-52eb0ccf9da1#note"}	2026-03-03 09:04:22+00
21592c02-c035-4943-9320-bc8501645a59	df1bee36-9ce3-f80f-90d1-8eb78b232b99	link.make	\\x44136fa355b3678a1146ad16f7e8649e94fb4fc21fe77e8310c060f61caaff8a	{"json":"2026-03-10T09:14:22Z"}	2026-03-10 09:04:22+00
21592c02-c035-4943-9320-bc8501645a59	4b44f356-e648-02bd-5699-f00469c00b77	code.make	\\x44136fa355b3678a1146ad16f7e8649e94fb4fc21fe77e8310c060f61caaff8a	{"json":"2026-03-10T09:14:22Z"}	2026-03-10 09:04:22+00
21592c02-c035-4943-9320-bc8501645a59	0e95f728-4911-1650-bb94-6b73bb6ffcba	client.archive	\\x7d4f828a583b92a24935f7fa152dfed5f6a19b69aa3c05c9abcdcda703bd04d5	{"see":"/clients/f2920556-ff54-48ef-9cb5-533a991e9dfc"}	2026-03-10 09:04:22+00
a8092d32-381a-41f3-af0f-3ee949a1f419	20249991-a058-9691-2083-6dc3a1ecf618	wording.load	\\x085e643aa828f9877ed8582b45bc9454444867fee2f99b9ed90fe673c6ef9687	{"see":"/practice/wordings/gad7?saved=20249991-a058-9691-2083-6dc3a1ecf618"}	2026-03-10 09:04:22+00
21592c02-c035-4943-9320-bc8501645a59	ccb27587-8e66-d784-82bb-a439d5bd58a4	schedule.change	\\x0b20fc209e2e1e63a766ee58f27a09c3850bd6f1125f28da9f269ea958615163	{"see":"/clients/3621206b-927c-4cc0-8009-c2ed9c1740c3/askings?saved=ccb27587-8e66-d784-82bb-a439d5bd58a4"}	2026-03-10 09:04:22+00
21592c02-c035-4943-9320-bc8501645a59	59aad21b-7786-5d4c-20ad-df985c4eb646	measure.enter	\\x1bea2e87f6a1b39ee182f9c27a03f9f2081ecac9233805e85a8c9144fc9d8cc7	{"see":"/clients/3621206b-927c-4cc0-8009-c2ed9c1740c3/measures/1?saved=59aad21b-7786-5d4c-20ad-df985c4eb646"}	2026-03-10 09:04:22+00
21592c02-c035-4943-9320-bc8501645a59	8ae1dac1-9ea1-c90d-2d1e-fbd5767b6eeb	account.mail.change	\\xc51afc06bf45bd496162afcbbbe6d4e5b6e84a7da91b4bc2e13d8f5b82e530b3	{"see":"/account/mail?saved=8ae1dac1-9ea1-c90d-2d1e-fbd5767b6eeb"}	2026-03-10 09:04:22+00
\.


--
-- Data for Name: room_token; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.room_token (token_hash, session_id, ends_at) FROM stdin;
\\xd05337aff2f1cffced10948a42a6bde71abee5197b4c2fec82b69f86e1ecb5de	7cef5d09-bf65-4242-9869-33c506d2f815	2026-03-04 09:02:01+00
\\xf143aeca1e710d2dd84683d61a38a9504ff6bb125e7b7547e204d3b5590811e3	7cef5d09-bf65-4242-9869-33c506d2f815	2026-03-04 09:02:35+00
\\x439db325ed8332d87999e87270737736e72e29fab70e168a21334b3482edc94d	7cef5d09-bf65-4242-9869-33c506d2f815	2026-03-04 09:03:07+00
\\x305363df4632f1684a3bc57c45da33e0288a5f10fa8e8477ba7dbe5b14a94956	7cef5d09-bf65-4242-9869-33c506d2f815	2026-03-04 09:03:41+00
\.


--
-- Data for Name: seat; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.seat (id, token_hash, link_id, session_id, device, asked_at, taken_at, closed_at, asked_no, admitted_at, closed_why) FROM stdin;
cedb0d53-f937-4c1f-aa05-67d29c6afd98	\\x11f92a6f5968b724552fd246cfe2e85143462cc51bd80196642830bffa29b9c0	7199f499-e485-4808-b184-cc773dcb4556	7c9dba37-5eb3-4ccc-a084-12bb05f7ef30	device	2026-03-10 09:04:22+00	2026-03-10 09:04:22+00	\N	1	2026-03-10 09:04:22+00	\N
189e989e-51ef-4b2b-b72d-df5a99b8c07d	\\x133c2d61185a80e083c6d34233f16fa984409f9cae8d0c5bf82fc96d96829e5a	7199f499-e485-4808-b184-cc773dcb4556	7c9dba37-5eb3-4ccc-a084-12bb05f7ef30	device	2026-03-10 09:04:22+00	\N	\N	2	\N	\N
\.


--
-- Data for Name: signin; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.signin (id, token_hash, member_id, device, opened_at, seen_at, ends_at, closed_at, shown_at) FROM stdin;
223c61fa-6fbf-4fe8-b74b-b6117c4ec0bf	\\x0da4904f3798d5164bcb5c0c606ec14b4c3e96f12f0e3cf4f4d918281eacd65e	c1e11fa0-b036-423e-ad7e-55e2be62563e	a test	2026-03-03 09:01:00+00	2026-03-03 09:01:00+00	2026-03-03 21:01:00+00	\N	2026-03-03 09:01:00+00
da198ffe-ec11-4c9b-aca4-bb46f8c2db6e	\\x5ab92159a703ab1ecb09f7fe548bb51f60ef0f841c3247314bb6b47fd899ddaa	c2e1beeb-3131-4765-8084-dc47b70e3012	a test	2026-03-03 09:01:00+00	2026-03-03 09:01:00+00	2026-03-03 21:01:00+00	\N	2026-03-03 09:01:00+00
c79a677f-896b-4956-85f3-34725e9b0081	\\xe96fc2db355b2d8725b5ed3ca0d8ba485ea0311975b3a5647dd59c6c18d21a33	21592c02-c035-4943-9320-bc8501645a59	a test	2026-03-03 09:00:00+00	2026-03-03 09:04:12+00	2026-03-03 21:00:00+00	\N	2026-03-03 09:00:00+00
f5f49a90-d921-48dd-9e8f-ddd88ef45cac	\\xb128e739e64f0bd6989d8c82ea829c07c3e0528ffd6c73e73d97909224aed5d1	21592c02-c035-4943-9320-bc8501645a59	a test	2026-03-10 09:04:22+00	2026-03-10 09:04:22+00	2026-03-10 21:04:22+00	\N	2026-03-10 09:04:22+00
756fe789-be02-45f5-bc33-d881e5d5f4e5	\\xb4a3fdd83c64b676287a0a8ef2041ab4fea96e51cd6e0b91c5f613fa54ae2b57	a8092d32-381a-41f3-af0f-3ee949a1f419	a test	2026-03-10 09:04:22+00	2026-03-10 09:04:22+00	2026-03-10 21:04:22+00	\N	2026-03-10 09:04:22+00
\.


--
-- Data for Name: _sqlx_migrations; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public._sqlx_migrations (version, description, installed_on, success, checksum, execution_time) FROM stdin;
1	access	2026-11-30 07:38:31.32648+00	t	\\xee58a96d68f93385e2e3af6d4390382fcafdadee1b3238242b344c60c94a8a4273a40010f4ba1d66f24207ad6aa82776	20058162
2	acts	2026-11-30 07:38:31.347129+00	t	\\x0f1c508e40ba3792e8e2c58fc8d185e11836f9b1edbc9ee5e6fc9a92df9e176255b3f22d035b99a39cacc5519227d601	6173803
3	audit	2026-11-30 07:38:31.353806+00	t	\\x2dcb585f14b456aae15b0d06e9e436a1575c0781ae10803bee3b70623ac409a8962de276d2dcd3a58ef61135aed43953	9824158
4	records	2026-11-30 07:38:31.363888+00	t	\\x9c4ec09ed84e6bff571cb8c4e9522c0282f285dad35065f146b0b53be2e4bac359f321e4dcfa97ba7635f5070af5291c	26003937
5	sessions	2026-11-30 07:38:31.390531+00	t	\\x3013bebd83db0d46eca7767511705f52abb32a744ff204f5bdcb3afb063c1a18464207dd188aa4c42cd742db6aff73a7	22679388
6	standing ratings	2026-11-30 07:38:31.413621+00	t	\\xa43c139ae2899d8e1dc400509333c23cb35febf1c311c95315c815ad8f5786811785868cfde2df96ad491c1e641366e6	1965400
7	preparation	2026-11-30 07:38:31.415806+00	t	\\x4039cb17dce2ac0b1a5c9987dfad7b5d9423a5d32f43e2faaf08827b835146f0e59d31276bd09283dad5a4c90562ba0b	8313816
8	kept once	2026-11-30 07:38:31.424355+00	t	\\xe127621eaa8d28ce25c37396363f914cbc8bf50c61eb3e086ca8f6f279ee945eb2403ea2402783472868733728cbc2f5	18000619
9	assessments	2026-11-30 07:38:31.442829+00	t	\\x5bf0696b51deb48ebfb71a27a4779e2da2efaf85174c4c7b8b0b88f67c867051a235ae6a038426b2cf9714b07de370d5	16473593
10	upkeep	2026-11-30 07:38:31.459815+00	t	\\x3f4a71c2e96ccf63581bbe1594408bc7672b13212d73c6347be4c10e049e853222b107f9a5cd31e2d60284bb9445afb4	6109284
11	known endings	2026-11-30 07:38:31.466187+00	t	\\x0a97a58fbc94f4dd07219030a06389d787aa440be152804e2a07da2545acf733ac66f06c456acba078caf09dba984cf9	2159597
12	second wall	2026-11-30 07:38:31.468504+00	t	\\xf2b839c5ed136915edd9a3b5082421152ff644aa35c788cc4b55ffd93fee695d696210983c475948599bf94dfa4ff539	11660599
13	nobody stranded	2026-11-30 07:38:31.480547+00	t	\\x14f8e04a51d086fbaab1b3f6845afc067d25ffcdd89dc5a3652defe3c568c12141846c15a94cdee63511346587aa0e3e	7956401
14	stays open	2026-11-30 07:38:31.488706+00	t	\\xbce641e43ef5e0a37f25030aa8d2da5628e88f328a4d46878446cf4ef20fa7db69a7cd2d0b7e66f503d1ef5004e8a710	782179
15	two at once	2026-11-30 07:38:31.489553+00	t	\\x6f2a8632031128d32d81d4dd3eec3afc45deb68c1f16f7e143b018e44e8d9a00c505c026c575835e9587cf861c582fac	18261576
16	how it is written	2026-11-30 07:38:31.510732+00	t	\\x76aae8e7a2d18d6f2f5f65227d5f5a5865bf26fe68b97b1d1cb74bc59f6299d8dbe7689172a944793865827bbd38bd66	3821522
17	course	2026-11-30 07:38:31.514802+00	t	\\xa6254301cb4d15288063fe66b8a02baa70a3925524c246e747736d986981e46e74715411e206af41f1b599e4cef99e12	22460981
18	opening	2026-11-30 07:38:31.53821+00	t	\\xec2d5896e3cabcf441991fedb5b6ef7c462b59ed2e2a4d339766d3daa9067a2d72250bffbda5645b9c0a9d4eafda4d70	21236228
19	plan	2026-11-30 07:38:31.560926+00	t	\\xba1afbb9b61f7e89c65231c839f2edede3bd4c82d1b2ef548d676cd47f34247a72fdf379b5a54a99bb49baa43fefd7d6	9503601
20	safety plan	2026-11-30 07:38:31.569585+00	t	\\x661fdedd23a5f1e2b96fd0538d32407e3d2efe1750893a2174a824ffb12ba9fb7ee7ae190d36377151f0f5816e8029c0	3588520
21	hour	2026-11-30 07:38:31.573404+00	t	\\x21ba20d76eea6e42b7171d17d12dccbfd565d47b2f65d4068699502c8c9cab0159f3aadf5f4acf2f4d3245fd3b2b57d7	24026360
22	events	2026-11-30 07:38:31.597932+00	t	\\x7f252014b7699a5b0c0bdd5c30bd3c4e1798b52b2a2076c152d7e178209a9ec0daae5055c05e17e644f520482901d6f0	7630836
23	safety	2026-11-30 07:38:31.605897+00	t	\\x4893ee25fbe357773f5af9c82ee6c3a70c299c9de4d4f58d0c917e9de811ce4297cee7ba335edfa265c6b7532c9eb4ae	806444
24	episodes	2026-11-30 07:38:31.606796+00	t	\\x6eecf5746cf428275f63c5026520fc1f62032d3c5d2b1c9e698680542137a479c442416b461e915e1c2768045e3ce133	12865522
25	measures	2026-11-30 07:38:31.619931+00	t	\\x3beafd1c2f0e7548b538e159de11717ae16e5aafa16a9fc5f755f55a99c55116240dbe76ae44edc6c9b240cb987db2a2	22033961
26	practice	2026-11-30 07:38:31.6424+00	t	\\x5c216703aabfb680cb3bbca783ffab803bc934d98bd6f8fede40776eba6cf80e918a17444b036da4c6381de436486989	9738762
27	asking	2026-11-30 07:38:31.652323+00	t	\\xa81b2922add24798e95c69e8fa50f616a15d16f957f57173835ca87e140c642b4e7587368b8cf26d1ba910b6d768f88a	25043527
28	snapshots	2026-11-30 07:38:31.677818+00	t	\\x9380961b77c15e5c7cb135646c7685eda6c60dc3cf3f4ed5688b867028ad97c37c97f9a21cff3c377eba8496b7164fe2	5666956
29	told	2026-11-30 07:38:31.683641+00	t	\\x4e814f052aaaf2cdb013811ae951fff9a4ab385b845ae2977f1ecf7e71fc8ccbf34d32636cf8fa5203711a50f6db82a4	138788878
30	call	2026-11-30 07:38:31.822961+00	t	\\x7a415008b66ff2fadc2de3aa8b2fc64e3400221e49574f94a4b2d509001ae94d57612f51987d6daed2d95792651ab01c	2307818
31	lists	2026-11-30 07:38:31.825391+00	t	\\x6348363b72aafd08d0577c1351662edd3f8334bd356ee2d59bb8e01b559158215d951aa59cec65557039be33046ee854	2828106
32	folds	2026-11-30 07:38:31.828415+00	t	\\xaae91e0d58c6c45b48f7e0028f9d70fea65380b175dc68bef46b62acf3cca30f6471888939256430659815e2765a645d	3007873
\.


--
-- Data for Name: adverse_account; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.adverse_account (event_id, client_id, account) FROM stdin;
64c6341b-ab38-4c3a-ba12-4d7166a39f8a	3621206b-927c-4cc0-8009-c2ed9c1740c3	\\x014175b1f6cbff0d44533cbeab5fea90794a780a26c44b71f6bb98b39e67c2429f4e0ba10f631338af1d
\.


--
-- Data for Name: adverse_event; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.adverse_event (id, client_id, session_id, number, kind, happened_at, done, replaces, written_by, written_at) FROM stdin;
64c6341b-ab38-4c3a-ba12-4d7166a39f8a	3621206b-927c-4cc0-8009-c2ed9c1740c3	\N	1	panic	2026-01-02 09:30:00+00	called	\N	21592c02-c035-4943-9320-bc8501645a59	2026-03-03 09:01:00+00
\.


--
-- Data for Name: after_check; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.after_check (session_id, client_id, member_id, reason, due_from, due_until) FROM stdin;
7cef5d09-bf65-4242-9869-33c506d2f815	3621206b-927c-4cc0-8009-c2ed9c1740c3	21592c02-c035-4943-9320-bc8501645a59	too_much	2026-03-03 21:04:22+00	2026-03-05 09:04:22+00
\.


--
-- Data for Name: after_check_try; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.after_check_try (id, session_id, client_id, outcome, entered_by, at, seq) FROM stdin;
b0a522e5-c7cb-486d-8666-660c20f8a57d	7cef5d09-bf65-4242-9869-33c506d2f815	3621206b-927c-4cc0-8009-c2ed9c1740c3	not_reached	21592c02-c035-4943-9320-bc8501645a59	2026-03-03 09:04:22+00	38
\.


--
-- Data for Name: asking; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.asking (id, client_id, episode_id, number, occasion, measures, asked_by, asked_at, from_at, due_on, until_at, links, closed_as, closed_at, link_holds) FROM stdin;
427280f3-dd0c-41e9-b637-4c296d0ffcf7	3621206b-927c-4cc0-8009-c2ed9c1740c3	297cf610-d6d5-4241-9dbd-1e79dc02cdce	1	regular	{phq9,gad7}	21592c02-c035-4943-9320-bc8501645a59	2026-03-10 09:04:22+00	2026-03-10 09:04:22+00	2026-03-10	2026-03-24 23:59:00+00	1	\N	\N	t
\.


--
-- Data for Name: asking_words; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.asking_words (asking_id, client_id, event) FROM stdin;
427280f3-dd0c-41e9-b637-4c296d0ffcf7	3621206b-927c-4cc0-8009-c2ed9c1740c3	\\x015517e6801e4d0a954792baa06482e6af591aed639d094143d5b35575
\.


--
-- Data for Name: audit; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.audit (seq, at, kind, member_id, act, client_id, object_id, previous, hash) FROM stdin;
1	2026-03-03 09:00:00+00	member	21592c02-c035-4943-9320-bc8501645a59	client.create	3621206b-927c-4cc0-8009-c2ed9c1740c3	\N	\\x1049f89a5ef4bff11e67b37b9945096f203ea0c09e92a8bc7dc4a04461f6529f	\\x56d627c1606fa853392114fffb85bc23af14aa250cc071e8af96cf5e44bc4a47
2	2026-03-03 09:00:00+00	member	21592c02-c035-4943-9320-bc8501645a59	target.create	3621206b-927c-4cc0-8009-c2ed9c1740c3	d732ab79-94e9-4c4b-bb33-dc2cb5c3019e	\\x56d627c1606fa853392114fffb85bc23af14aa250cc071e8af96cf5e44bc4a47	\\x7f34fab0436eeb743f72cb5258a56d34a48f4778fd679d8f6e70c80a182bb227
3	2026-03-03 09:01:00+00	member	21592c02-c035-4943-9320-bc8501645a59	session.open	3621206b-927c-4cc0-8009-c2ed9c1740c3	7cef5d09-bf65-4242-9869-33c506d2f815	\\x7f34fab0436eeb743f72cb5258a56d34a48f4778fd679d8f6e70c80a182bb227	\\x3f2a9cab03abd517b5ea0a88bc8dea8175eeabf9efec6212066fff6f42000f56
4	2026-03-03 09:01:00+00	member	c2e1beeb-3131-4765-8084-dc47b70e3012	member.invite	\N	\N	\\x3f2a9cab03abd517b5ea0a88bc8dea8175eeabf9efec6212066fff6f42000f56	\\x9db08c609bc02a858074c47984908c96ad2eafe1e07a580250829c6dc8b03051
5	2026-03-03 09:01:00+00	member	c2e1beeb-3131-4765-8084-dc47b70e3012	practice.settings.change	\N	\N	\\x9db08c609bc02a858074c47984908c96ad2eafe1e07a580250829c6dc8b03051	\\x2993fae10d817c24fae42fa6c97d38e4e481d17c5d4f04335636da453b4f22ba
6	2026-03-03 09:01:00+00	member	21592c02-c035-4943-9320-bc8501645a59	preset.create	\N	1b485cf7-856c-4782-a947-f86e75cbf6fd	\\x2993fae10d817c24fae42fa6c97d38e4e481d17c5d4f04335636da453b4f22ba	\\xecb87dd7b67fc3a5540be745d71b6384bfef1217b52ecdf26bcab760e4e93660
7	2026-03-03 09:01:00+00	member	21592c02-c035-4943-9320-bc8501645a59	preset.create	\N	e4dab71f-0035-4351-a75c-3926c2709db7	\\xecb87dd7b67fc3a5540be745d71b6384bfef1217b52ecdf26bcab760e4e93660	\\xb3b3d56794fff0baa387c347772d69b725bfd46153ddfc998da2d6e6b4bf7043
8	2026-03-03 09:01:00+00	member	21592c02-c035-4943-9320-bc8501645a59	preset.put_away	\N	e4dab71f-0035-4351-a75c-3926c2709db7	\\xb3b3d56794fff0baa387c347772d69b725bfd46153ddfc998da2d6e6b4bf7043	\\x1045ae8d361b11d18b6a6587dc1ce8fcb6d802432d87ca46f1c4d1e020877ebe
9	2026-03-03 09:01:00+00	member	21592c02-c035-4943-9320-bc8501645a59	client.change	3621206b-927c-4cc0-8009-c2ed9c1740c3	\N	\\x1045ae8d361b11d18b6a6587dc1ce8fcb6d802432d87ca46f1c4d1e020877ebe	\\xed43fb44d77d213cb9aa8995e002599433af24dfc96874044d1f39a75347fec2
10	2026-03-03 09:01:00+00	member	21592c02-c035-4943-9320-bc8501645a59	comfort.change	3621206b-927c-4cc0-8009-c2ed9c1740c3	\N	\\xed43fb44d77d213cb9aa8995e002599433af24dfc96874044d1f39a75347fec2	\\x33ab2c1b4dfc7c26128617b782b435c9414aa15c67ec206a11d09af5bde429c9
11	2026-03-03 09:01:00+00	member	21592c02-c035-4943-9320-bc8501645a59	safety_plan.change	3621206b-927c-4cc0-8009-c2ed9c1740c3	\N	\\x33ab2c1b4dfc7c26128617b782b435c9414aa15c67ec206a11d09af5bde429c9	\\xd1d6f013e8276ee4574e59a6de5e02658f94bb6e256f3afd8bfeffa5a70dd5fa
12	2026-03-03 09:01:00+00	member	21592c02-c035-4943-9320-bc8501645a59	steadying.change	3621206b-927c-4cc0-8009-c2ed9c1740c3	\N	\\xd1d6f013e8276ee4574e59a6de5e02658f94bb6e256f3afd8bfeffa5a70dd5fa	\\xa3a9d36408012d0e0af9f9cc1c0a041607db3b878c12869941e431a61d730120
13	2026-03-03 09:01:00+00	member	21592c02-c035-4943-9320-bc8501645a59	reach.change	3621206b-927c-4cc0-8009-c2ed9c1740c3	\N	\\xa3a9d36408012d0e0af9f9cc1c0a041607db3b878c12869941e431a61d730120	\\xa1381f0d248e9834b88616aa2042a5197bede1c9d6450e654e29c3f8878034a0
14	2026-03-03 09:01:00+00	member	21592c02-c035-4943-9320-bc8501645a59	resource.create	3621206b-927c-4cc0-8009-c2ed9c1740c3	\N	\\xa1381f0d248e9834b88616aa2042a5197bede1c9d6450e654e29c3f8878034a0	\\xdfb88c4d1040da8963a284f884788ea135ed79297c91d32a758483840fd58925
15	2026-03-03 09:01:00+00	member	21592c02-c035-4943-9320-bc8501645a59	event.create	3621206b-927c-4cc0-8009-c2ed9c1740c3	\N	\\xdfb88c4d1040da8963a284f884788ea135ed79297c91d32a758483840fd58925	\\x698f505473998df75fc9cb92480a18b75066051cdc165ae754ab37ec6b470f23
16	2026-03-03 09:02:00+00	member	21592c02-c035-4943-9320-bc8501645a59	target.change	3621206b-927c-4cc0-8009-c2ed9c1740c3	d732ab79-94e9-4c4b-bb33-dc2cb5c3019e	\\x698f505473998df75fc9cb92480a18b75066051cdc165ae754ab37ec6b470f23	\\x148a9acdc6c56276f5b0994246ec64fe791ec1a65b799f06a5f090fd05cae42d
17	2026-03-03 09:02:00+00	member	21592c02-c035-4943-9320-bc8501645a59	target.change	3621206b-927c-4cc0-8009-c2ed9c1740c3	d732ab79-94e9-4c4b-bb33-dc2cb5c3019e	\\x148a9acdc6c56276f5b0994246ec64fe791ec1a65b799f06a5f090fd05cae42d	\\x840f61ecdb2393c527ab630628c76d9995815b97d388dbc01b4b338e93c7568d
18	2026-03-03 09:02:00+00	member	21592c02-c035-4943-9320-bc8501645a59	plan.cluster	3621206b-927c-4cc0-8009-c2ed9c1740c3	\N	\\x840f61ecdb2393c527ab630628c76d9995815b97d388dbc01b4b338e93c7568d	\\x60807f829c938495fdc546be6e59edf834c94ac33b4f3d9a32cd289f6fc68466
19	2026-03-03 09:02:00+00	member	21592c02-c035-4943-9320-bc8501645a59	target.create	3621206b-927c-4cc0-8009-c2ed9c1740c3	f128b10d-e23d-4d9a-b736-4afa086866c2	\\x60807f829c938495fdc546be6e59edf834c94ac33b4f3d9a32cd289f6fc68466	\\xb6820ed9a6a6cb58e11d9f812eb41d126ee2a5144d0360930c76b85c598d5f1c
20	2026-03-03 09:02:00+00	member	21592c02-c035-4943-9320-bc8501645a59	plan.move	3621206b-927c-4cc0-8009-c2ed9c1740c3	\N	\\xb6820ed9a6a6cb58e11d9f812eb41d126ee2a5144d0360930c76b85c598d5f1c	\\x285d1c53adda316cfe01c0c8ce96389cf7ad87cc210606c9ff4b52e5b25b6e64
21	2026-03-03 09:02:01+00	member	21592c02-c035-4943-9320-bc8501645a59	entry.keep	3621206b-927c-4cc0-8009-c2ed9c1740c3	7cef5d09-bf65-4242-9869-33c506d2f815	\\x285d1c53adda316cfe01c0c8ce96389cf7ad87cc210606c9ff4b52e5b25b6e64	\\x331d86683d59c1ffb24d037b0576a7e862b2abde4ce856cf04440013be246312
22	2026-03-03 09:02:32+00	member	21592c02-c035-4943-9320-bc8501645a59	entry.keep	3621206b-927c-4cc0-8009-c2ed9c1740c3	7cef5d09-bf65-4242-9869-33c506d2f815	\\x331d86683d59c1ffb24d037b0576a7e862b2abde4ce856cf04440013be246312	\\xa354b79fe9fdb3f56f4ef925cf5837be301c3cc1b569ab64c7d17e12fd7bc1c4
23	2026-03-03 09:02:33+00	member	21592c02-c035-4943-9320-bc8501645a59	entry.keep	3621206b-927c-4cc0-8009-c2ed9c1740c3	7cef5d09-bf65-4242-9869-33c506d2f815	\\xa354b79fe9fdb3f56f4ef925cf5837be301c3cc1b569ab64c7d17e12fd7bc1c4	\\x2a612fae0f806822050e45af456e29fd33e275c326fb399b7e3db9134d2803a8
24	2026-03-03 09:02:34+00	member	21592c02-c035-4943-9320-bc8501645a59	entry.keep	3621206b-927c-4cc0-8009-c2ed9c1740c3	7cef5d09-bf65-4242-9869-33c506d2f815	\\x2a612fae0f806822050e45af456e29fd33e275c326fb399b7e3db9134d2803a8	\\xdc7105fc30d392331200817c47369e0d1182c4559cc0f9a8e82f682c2bc67a12
25	2026-03-03 09:02:35+00	member	21592c02-c035-4943-9320-bc8501645a59	entry.keep	3621206b-927c-4cc0-8009-c2ed9c1740c3	7cef5d09-bf65-4242-9869-33c506d2f815	\\xdc7105fc30d392331200817c47369e0d1182c4559cc0f9a8e82f682c2bc67a12	\\x986e2220620d18cc4205ab71381ff4a1645de3ed8f137877403abd33c937fafa
26	2026-03-03 09:03:06+00	member	21592c02-c035-4943-9320-bc8501645a59	entry.keep	3621206b-927c-4cc0-8009-c2ed9c1740c3	7cef5d09-bf65-4242-9869-33c506d2f815	\\x986e2220620d18cc4205ab71381ff4a1645de3ed8f137877403abd33c937fafa	\\x6a46ce8167cd15e39a13537048f07bcf6349ee2a82186ef92ee2406d62687528
27	2026-03-03 09:03:07+00	member	21592c02-c035-4943-9320-bc8501645a59	entry.keep	3621206b-927c-4cc0-8009-c2ed9c1740c3	7cef5d09-bf65-4242-9869-33c506d2f815	\\x6a46ce8167cd15e39a13537048f07bcf6349ee2a82186ef92ee2406d62687528	\\xe921e810744255ff082c0995ced475dc22cdf867dda4d8c8241b741328d0b664
28	2026-03-03 09:03:38+00	member	21592c02-c035-4943-9320-bc8501645a59	entry.keep	3621206b-927c-4cc0-8009-c2ed9c1740c3	7cef5d09-bf65-4242-9869-33c506d2f815	\\xe921e810744255ff082c0995ced475dc22cdf867dda4d8c8241b741328d0b664	\\x1f9151059b8c64a8d987503c6835cc200fcc48355130fc807836417ed27a4afc
29	2026-03-03 09:03:39+00	member	21592c02-c035-4943-9320-bc8501645a59	entry.keep	3621206b-927c-4cc0-8009-c2ed9c1740c3	7cef5d09-bf65-4242-9869-33c506d2f815	\\x1f9151059b8c64a8d987503c6835cc200fcc48355130fc807836417ed27a4afc	\\x7c087c3bd966add205bfbe06ad38649d46ad0031b7ec65444891f5f91ea2c45f
30	2026-03-03 09:03:40+00	member	21592c02-c035-4943-9320-bc8501645a59	entry.keep	3621206b-927c-4cc0-8009-c2ed9c1740c3	7cef5d09-bf65-4242-9869-33c506d2f815	\\x7c087c3bd966add205bfbe06ad38649d46ad0031b7ec65444891f5f91ea2c45f	\\xb01ff7e488d34c6e4b8afc587047e906b506246d7269e33239770099a8ba76fe
31	2026-03-03 09:03:41+00	member	21592c02-c035-4943-9320-bc8501645a59	entry.keep	3621206b-927c-4cc0-8009-c2ed9c1740c3	7cef5d09-bf65-4242-9869-33c506d2f815	\\xb01ff7e488d34c6e4b8afc587047e906b506246d7269e33239770099a8ba76fe	\\x4f2f4090529239c435b71742d6c58211129519349d58ee6f2e9b4f127ff9f2a3
32	2026-03-03 09:03:41+00	member	21592c02-c035-4943-9320-bc8501645a59	target.fact	3621206b-927c-4cc0-8009-c2ed9c1740c3	d732ab79-94e9-4c4b-bb33-dc2cb5c3019e	\\x4f2f4090529239c435b71742d6c58211129519349d58ee6f2e9b4f127ff9f2a3	\\xb976a1435f7e0eb0d2bc0659a62c214971cd341df87eaa63f210395051d19c6d
33	2026-03-03 09:03:41+00	member	21592c02-c035-4943-9320-bc8501645a59	target.fact	3621206b-927c-4cc0-8009-c2ed9c1740c3	d732ab79-94e9-4c4b-bb33-dc2cb5c3019e	\\xb976a1435f7e0eb0d2bc0659a62c214971cd341df87eaa63f210395051d19c6d	\\xe217a5ad72bbd6a1924a19c71a147250127607de459605f920e0f74cc913b4c9
34	2026-03-03 09:03:41+00	member	21592c02-c035-4943-9320-bc8501645a59	target.fact	3621206b-927c-4cc0-8009-c2ed9c1740c3	d732ab79-94e9-4c4b-bb33-dc2cb5c3019e	\\xe217a5ad72bbd6a1924a19c71a147250127607de459605f920e0f74cc913b4c9	\\x8a841d90d814b24c7cd3366d59402d94f039111fc53a285b117042465490c4db
35	2026-03-03 09:04:12+00	member	21592c02-c035-4943-9320-bc8501645a59	entry.keep	3621206b-927c-4cc0-8009-c2ed9c1740c3	7cef5d09-bf65-4242-9869-33c506d2f815	\\x8a841d90d814b24c7cd3366d59402d94f039111fc53a285b117042465490c4db	\\xe8121d3ae9b7a94349b9addc5676d93358afaf99970e8f963da7f56a0ddd6eb8
36	2026-03-03 09:04:13+00	member	21592c02-c035-4943-9320-bc8501645a59	entry.keep	3621206b-927c-4cc0-8009-c2ed9c1740c3	7cef5d09-bf65-4242-9869-33c506d2f815	\\xe8121d3ae9b7a94349b9addc5676d93358afaf99970e8f963da7f56a0ddd6eb8	\\xb36da8fcb85164453967ff3e0f1878243ad5e26a638b0f9caf1f07b2cabfecc3
37	2026-03-03 09:04:14+00	member	21592c02-c035-4943-9320-bc8501645a59	entry.keep	3621206b-927c-4cc0-8009-c2ed9c1740c3	7cef5d09-bf65-4242-9869-33c506d2f815	\\xb36da8fcb85164453967ff3e0f1878243ad5e26a638b0f9caf1f07b2cabfecc3	\\xa33016225f9ab9d8ad737f2d7fcbb8daa2ee81da626916d6b0bc142cd6245567
38	2026-03-03 09:04:15+00	member	21592c02-c035-4943-9320-bc8501645a59	entry.keep	3621206b-927c-4cc0-8009-c2ed9c1740c3	7cef5d09-bf65-4242-9869-33c506d2f815	\\xa33016225f9ab9d8ad737f2d7fcbb8daa2ee81da626916d6b0bc142cd6245567	\\x10e302c2c7ab83de800ac996c8131570b527d0bf4a314711dc9cb699f964c521
39	2026-03-03 09:04:16+00	member	21592c02-c035-4943-9320-bc8501645a59	entry.keep	3621206b-927c-4cc0-8009-c2ed9c1740c3	7cef5d09-bf65-4242-9869-33c506d2f815	\\x10e302c2c7ab83de800ac996c8131570b527d0bf4a314711dc9cb699f964c521	\\xbb9e7925f8b0b924a34ea1f600fb92e969634ec99bdfee7d3fa3f83bd32805ca
40	2026-03-03 09:04:17+00	member	21592c02-c035-4943-9320-bc8501645a59	entry.keep	3621206b-927c-4cc0-8009-c2ed9c1740c3	7cef5d09-bf65-4242-9869-33c506d2f815	\\xbb9e7925f8b0b924a34ea1f600fb92e969634ec99bdfee7d3fa3f83bd32805ca	\\x64f83a35fcb8436dacf36adb1a4a49605a4d5cc481bf8ddec27a7a2cb147a6da
41	2026-03-03 09:04:18+00	member	21592c02-c035-4943-9320-bc8501645a59	entry.keep	3621206b-927c-4cc0-8009-c2ed9c1740c3	7cef5d09-bf65-4242-9869-33c506d2f815	\\x64f83a35fcb8436dacf36adb1a4a49605a4d5cc481bf8ddec27a7a2cb147a6da	\\xe416fa5d8ae72c5f6c904a65364aa00054eb7f19eb6fc50d65138c1eb9fc31b8
42	2026-03-03 09:04:19+00	member	21592c02-c035-4943-9320-bc8501645a59	entry.keep	3621206b-927c-4cc0-8009-c2ed9c1740c3	7cef5d09-bf65-4242-9869-33c506d2f815	\\xe416fa5d8ae72c5f6c904a65364aa00054eb7f19eb6fc50d65138c1eb9fc31b8	\\xc66ab697ce2033ee98ccfe5966f164d5019c482d0806ed6d41c123943ad8bc11
43	2026-03-03 09:04:20+00	member	21592c02-c035-4943-9320-bc8501645a59	entry.keep	3621206b-927c-4cc0-8009-c2ed9c1740c3	7cef5d09-bf65-4242-9869-33c506d2f815	\\xc66ab697ce2033ee98ccfe5966f164d5019c482d0806ed6d41c123943ad8bc11	\\x6016aec4b4cb8d78ae90024434f0186e8dbd9bd355f63a3cc34bc3af1c138197
44	2026-03-03 09:04:21+00	member	21592c02-c035-4943-9320-bc8501645a59	entry.keep	3621206b-927c-4cc0-8009-c2ed9c1740c3	7cef5d09-bf65-4242-9869-33c506d2f815	\\x6016aec4b4cb8d78ae90024434f0186e8dbd9bd355f63a3cc34bc3af1c138197	\\xc6fcf3a3c8ac0342926f7bda565bb53a2fd8a07611363d5bdd8740c71c76f8bc
45	2026-03-03 09:04:22+00	member	21592c02-c035-4943-9320-bc8501645a59	entry.keep	3621206b-927c-4cc0-8009-c2ed9c1740c3	7cef5d09-bf65-4242-9869-33c506d2f815	\\xc6fcf3a3c8ac0342926f7bda565bb53a2fd8a07611363d5bdd8740c71c76f8bc	\\x9d914175dc82f1465de95d31ed3f1880c9e32a876ed94a6cbe6bbdb9ce2ccbc1
46	2026-03-03 09:04:22+00	member	21592c02-c035-4943-9320-bc8501645a59	session.view	3621206b-927c-4cc0-8009-c2ed9c1740c3	7cef5d09-bf65-4242-9869-33c506d2f815	\\x9d914175dc82f1465de95d31ed3f1880c9e32a876ed94a6cbe6bbdb9ce2ccbc1	\\x1b3a190815f657d8183e7d4c940868734b71dac60a32150643a0c4f2b581f65e
47	2026-03-03 09:04:22+00	member	21592c02-c035-4943-9320-bc8501645a59	session.draft	3621206b-927c-4cc0-8009-c2ed9c1740c3	7cef5d09-bf65-4242-9869-33c506d2f815	\\x1b3a190815f657d8183e7d4c940868734b71dac60a32150643a0c4f2b581f65e	\\x684d224c832cace13e4fb5cce43e135f0e7bfefd4ed6850466035dd5494d0b2b
48	2026-03-03 09:04:22+00	member	21592c02-c035-4943-9320-bc8501645a59	session.view	3621206b-927c-4cc0-8009-c2ed9c1740c3	7cef5d09-bf65-4242-9869-33c506d2f815	\\x684d224c832cace13e4fb5cce43e135f0e7bfefd4ed6850466035dd5494d0b2b	\\xf7d6212a5131c16a231a141e882dddca8b0d2b814b2ae31bdcbb7ff2c5fe8e5e
49	2026-03-03 09:04:22+00	member	21592c02-c035-4943-9320-bc8501645a59	session.close	3621206b-927c-4cc0-8009-c2ed9c1740c3	7cef5d09-bf65-4242-9869-33c506d2f815	\\xf7d6212a5131c16a231a141e882dddca8b0d2b814b2ae31bdcbb7ff2c5fe8e5e	\\x09d79ba64336d22d30bc40e6a2ea894b0507ad59dcde0ea7b36dc2b9c473568c
50	2026-03-03 09:04:22+00	member	21592c02-c035-4943-9320-bc8501645a59	session.check	3621206b-927c-4cc0-8009-c2ed9c1740c3	7cef5d09-bf65-4242-9869-33c506d2f815	\\x09d79ba64336d22d30bc40e6a2ea894b0507ad59dcde0ea7b36dc2b9c473568c	\\x2d7f4d913680045503aad0ffad8717ea52cd1bbd9073d84a50d6a5c875ea42a5
51	2026-03-03 09:04:22+00	member	21592c02-c035-4943-9320-bc8501645a59	session.note.view	3621206b-927c-4cc0-8009-c2ed9c1740c3	7cef5d09-bf65-4242-9869-33c506d2f815	\\x2d7f4d913680045503aad0ffad8717ea52cd1bbd9073d84a50d6a5c875ea42a5	\\x19cd23046233af961a440f151bbcc419b0e529adb6e577ad8a687a65dd2927ac
52	2026-03-03 09:04:22+00	member	21592c02-c035-4943-9320-bc8501645a59	session.note.save	3621206b-927c-4cc0-8009-c2ed9c1740c3	7cef5d09-bf65-4242-9869-33c506d2f815	\\x19cd23046233af961a440f151bbcc419b0e529adb6e577ad8a687a65dd2927ac	\\x0d01be3f99bdb1c42f28c9d459f522fc16e602ba5c41aa2091c89ece6ea9da90
57	2026-03-10 09:04:22+00	member	21592c02-c035-4943-9320-bc8501645a59	code.make	3621206b-927c-4cc0-8009-c2ed9c1740c3	7c9dba37-5eb3-4ccc-a084-12bb05f7ef30	\\xf0d6dd950f3796d686af17c57170ec877ee4b9ef5b5a7738760157a1b6227e59	\\xd06ba5e23559c7d9c3327da39cfe731a03a6046afafb7f41a7f52d5ab6ac9738
58	2026-03-10 09:04:22+00	visitor	\N	seat.claim	\N	7c9dba37-5eb3-4ccc-a084-12bb05f7ef30	\\xd06ba5e23559c7d9c3327da39cfe731a03a6046afafb7f41a7f52d5ab6ac9738	\\xdd41ebdb2977668cc5f5cb6f07a56484b5d90b167374685c06036a54883e259f
59	2026-03-10 09:04:22+00	member	21592c02-c035-4943-9320-bc8501645a59	rehearsal.prepare	e5007cdb-4411-4f1b-b5d3-4750832e211e	\N	\\xdd41ebdb2977668cc5f5cb6f07a56484b5d90b167374685c06036a54883e259f	\\x5c0b2a5a21bfe5eb4fcb0ac8d36c471f7a426755e7a706563968f413989ed897
61	2026-03-10 09:04:22+00	member	21592c02-c035-4943-9320-bc8501645a59	client.create	f2920556-ff54-48ef-9cb5-533a991e9dfc	\N	\\x901f8fc13704fb45c385d6226e081415015f12c7aadf69cc66c7d797b12e1fff	\\xdfe75cd8881c9c01bfae693afa40219f59b520199c12bffb733b5b36526b789b
62	2026-03-10 09:04:22+00	member	21592c02-c035-4943-9320-bc8501645a59	client.archive	f2920556-ff54-48ef-9cb5-533a991e9dfc	\N	\\xdfe75cd8881c9c01bfae693afa40219f59b520199c12bffb733b5b36526b789b	\\xf490d69f212ec65618c6b897da64b4c46a67c3aae4ebde31cbe6971ccca476b6
64	2026-03-10 09:04:22+00	member	a8092d32-381a-41f3-af0f-3ee949a1f419	wording.use	\N	6da42e70-b336-4478-8ba7-f16260f3b854	\\xa3920bf10371524211f169d5d1c09a1316d30e9cf0c710308168c06ac392b564	\\x4d93e0f4dc9991e2c6d37a9da968cd9c7e8b29b52852ba1db1bcc618d44aa9b8
66	2026-03-10 09:04:22+00	member	a8092d32-381a-41f3-af0f-3ee949a1f419	wording.use	\N	4b66be11-16c9-4fee-9059-3e47da6a6ad1	\\xd50a005f6953d973df35968a89c0f09494969d4cd16a31da405213ac20dddc0d	\\x10ccbe5940787d322af504600189671771c69e8d2a0e97b151fbe3cf4601c049
67	2026-03-10 09:04:22+00	member	a8092d32-381a-41f3-af0f-3ee949a1f419	wording.load	\N	ffef62d7-66df-4b72-a99e-3cdb39404ecc	\\x10ccbe5940787d322af504600189671771c69e8d2a0e97b151fbe3cf4601c049	\\xb744d06248ad40f5167007bee7f6ba9912a5fa9e28fa29444eec031f057436d0
68	2026-03-10 09:04:22+00	member	21592c02-c035-4943-9320-bc8501645a59	schedule.change	3621206b-927c-4cc0-8009-c2ed9c1740c3	\N	\\xb744d06248ad40f5167007bee7f6ba9912a5fa9e28fa29444eec031f057436d0	\\xad5ecbf8ef10a0c18dcefea1923a8ef2e740f1b0c0c4ff6d4405995e871d216c
69	2026-03-10 09:04:22+00	member	21592c02-c035-4943-9320-bc8501645a59	measure.enter	3621206b-927c-4cc0-8009-c2ed9c1740c3	\N	\\xad5ecbf8ef10a0c18dcefea1923a8ef2e740f1b0c0c4ff6d4405995e871d216c	\\x21f1cddea1c453d10ac252bdf46a96970faee2a67c456dc6288275a8517e810e
71	2026-03-10 09:04:22+00	errand	\N	errand.open	3621206b-927c-4cc0-8009-c2ed9c1740c3	427280f3-dd0c-41e9-b637-4c296d0ffcf7	\\xc461748e9d5d9134ec74abef3bdc23b5be6c4c9ac9a2379873d7794f87bf61e7	\\x55add87e7be309b1558f30bb923bc27f724de6e764e17cb171fdf7e61aa5c4ea
72	2026-03-10 09:04:22+00	errand	\N	errand.open	3621206b-927c-4cc0-8009-c2ed9c1740c3	427280f3-dd0c-41e9-b637-4c296d0ffcf7	\\x55add87e7be309b1558f30bb923bc27f724de6e764e17cb171fdf7e61aa5c4ea	\\x6989ec8d102662f654858f315b886097d542651734c56695d89a8fcdb0bc61f2
73	2026-03-10 09:04:22+00	errand	\N	errand.hand_in	3621206b-927c-4cc0-8009-c2ed9c1740c3	427280f3-dd0c-41e9-b637-4c296d0ffcf7	\\x6989ec8d102662f654858f315b886097d542651734c56695d89a8fcdb0bc61f2	\\xb7b33053a1613aae0e0902f2852abad366e2e6eaae07f7db4357676a3d223c31
74	2026-03-10 09:04:22+00	errand	\N	errand.open	3621206b-927c-4cc0-8009-c2ed9c1740c3	427280f3-dd0c-41e9-b637-4c296d0ffcf7	\\xb7b33053a1613aae0e0902f2852abad366e2e6eaae07f7db4357676a3d223c31	\\x34afe21775fbe9ea9ee18324e00f45edfdae631edc6813ea5dc5ccfba181fe71
75	2026-03-10 09:04:22+00	member	21592c02-c035-4943-9320-bc8501645a59	account.mail.change	\N	\N	\\x34afe21775fbe9ea9ee18324e00f45edfdae631edc6813ea5dc5ccfba181fe71	\\xd8a2c2080437cbdf909bdc40d2d4a2322a9ed7daf26406ad4f60ccea2ac61387
53	2026-03-10 09:04:22+00	member	21592c02-c035-4943-9320-bc8501645a59	session.open	3621206b-927c-4cc0-8009-c2ed9c1740c3	7c9dba37-5eb3-4ccc-a084-12bb05f7ef30	\\x0d01be3f99bdb1c42f28c9d459f522fc16e602ba5c41aa2091c89ece6ea9da90	\\xe412b0a69dd0113f6042bd8a7abccb8bf1867ac158e8e88e05b4b1b7eb3d8843
54	2026-03-10 09:04:22+00	member	21592c02-c035-4943-9320-bc8501645a59	link.make	3621206b-927c-4cc0-8009-c2ed9c1740c3	7c9dba37-5eb3-4ccc-a084-12bb05f7ef30	\\xe412b0a69dd0113f6042bd8a7abccb8bf1867ac158e8e88e05b4b1b7eb3d8843	\\x6288ebad42b33bd5f887b6b3f7c238b8518f98384a2b8bd05adc242222d94b32
55	2026-03-10 09:04:22+00	visitor	\N	seat.claim	\N	7c9dba37-5eb3-4ccc-a084-12bb05f7ef30	\\x6288ebad42b33bd5f887b6b3f7c238b8518f98384a2b8bd05adc242222d94b32	\\x06377f7a5593ac349f4387d38932f6d00d7cdd9503ccb29736a8cde5b90bd176
56	2026-03-10 09:04:22+00	member	21592c02-c035-4943-9320-bc8501645a59	session.admit	3621206b-927c-4cc0-8009-c2ed9c1740c3	7c9dba37-5eb3-4ccc-a084-12bb05f7ef30	\\x06377f7a5593ac349f4387d38932f6d00d7cdd9503ccb29736a8cde5b90bd176	\\xf0d6dd950f3796d686af17c57170ec877ee4b9ef5b5a7738760157a1b6227e59
60	2026-03-10 09:04:22+00	member	21592c02-c035-4943-9320-bc8501645a59	session.open	e5007cdb-4411-4f1b-b5d3-4750832e211e	6ac168be-6488-4d88-8865-823b59385021	\\x5c0b2a5a21bfe5eb4fcb0ac8d36c471f7a426755e7a706563968f413989ed897	\\x901f8fc13704fb45c385d6226e081415015f12c7aadf69cc66c7d797b12e1fff
63	2026-03-10 09:04:22+00	member	a8092d32-381a-41f3-af0f-3ee949a1f419	wording.load	\N	6da42e70-b336-4478-8ba7-f16260f3b854	\\xf490d69f212ec65618c6b897da64b4c46a67c3aae4ebde31cbe6971ccca476b6	\\xa3920bf10371524211f169d5d1c09a1316d30e9cf0c710308168c06ac392b564
65	2026-03-10 09:04:22+00	member	a8092d32-381a-41f3-af0f-3ee949a1f419	wording.load	\N	4b66be11-16c9-4fee-9059-3e47da6a6ad1	\\x4d93e0f4dc9991e2c6d37a9da968cd9c7e8b29b52852ba1db1bcc618d44aa9b8	\\xd50a005f6953d973df35968a89c0f09494969d4cd16a31da405213ac20dddc0d
70	2026-03-10 09:04:22+00	member	21592c02-c035-4943-9320-bc8501645a59	asking.make	3621206b-927c-4cc0-8009-c2ed9c1740c3	\N	\\x21f1cddea1c453d10ac252bdf46a96970faee2a67c456dc6288275a8517e810e	\\xc461748e9d5d9134ec74abef3bdc23b5be6c4c9ac9a2379873d7794f87bf61e7
\.


--
-- Data for Name: client; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.client (id, number, opened_on, archived_at, seizures, eye_condition, version, plan_version) FROM stdin;
3621206b-927c-4cc0-8009-c2ed9c1740c3	1	2026-03-03	\N	no	no	2	7
e5007cdb-4411-4f1b-b5d3-4750832e211e	2	2026-03-10	\N	no	no	1	1
f2920556-ff54-48ef-9cb5-533a991e9dfc	3	2026-03-10	2026-03-10 09:04:22+00	yes	not_asked	2	1
\.


--
-- Data for Name: client_details; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.client_details (client_id, name, addressed_as, phone, contact_name, contact_phone, usual_location, version) FROM stdin;
3621206b-927c-4cc0-8009-c2ed9c1740c3	\\x01f728ceca14d924d3cbaeca51523c178daba0f12d9e28085a051cf25d1756abb1eeb3235f084ce75615d672a1dd62590b3da926	\\x015f9496f07aec61495ed793f4a65711176af48150b6f6d3569157de95168d1002981eea40eb	\\x01b35545d6117f5060b0d2955b11682979667e70c7c71452e99de400b8c8961e7ced9605d3ff492fcb8ed8	\\x018a609820428e4fed558362154797df153ec6e74b4bba7b87fe292433cb9f725759b696f358150003a918ff1fe41f	\\x0180797dbfe8fdcef0b0ce9eec185178632c026f1b2caca277e298d807f91c8ce6f70561d4a5bb3b	\\x0144f43d0b65c71197292a81abe21414e53f25144edb9d3af6f3d81addccab2c59ed69583356d043e17c70417bb9d978e5ac63dd96b98432	2
e5007cdb-4411-4f1b-b5d3-4750832e211e	\\x01a99ff6248abdb9f453230bdb9d1ccab4ebb8753a322835a282a1ee4ea7846484273ff1c8ca	\\x014e14f14affd5e63c4146f8eb4d2c337629a234fc7f484bda2546f2f2	\\x01a7a7bde1d1d392df0a5dfea43ce2cef7d8e71220bb4934ad85b0428a	\\x01052894fc9c1137a9240021a0c235c54825b3f7cb868e11b3f0c03cc9	\\x01f036bf32f3a2a7a047cce640e1902b44476391a615029a1d4c340e7f	\\x012b967fa510af42901962403f1b127ea879e2e03cdef1683cd5e0b5d1	1
f2920556-ff54-48ef-9cb5-533a991e9dfc	\\x011b3b3f5bec8a31a766f9ef5b0b46fee837126379dca023c7eced5a271269b84d21535bd0a6fcc0c210	\\x013c2509d79b2e75a5f5d8530efa62ab0fca35bc4cb37e3bf20dea31a9	\\x014ea66c40fec4df2bc49d42273b5aeaee4e6cab773b4174a084ea01d0	\\x01464c08ff2d4632802de10a6d80fadfbd535299e958e112d89b90b774	\\x0143e1f85faf42a854fef26fd92267992a78f0c02cb5c31c3434dbb842	\\x01360457889c6a9e1a15d2f0ba3bd4d64e798e21504198d63d930f7b66	1
\.


--
-- Data for Name: client_key; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.client_key (client_id, key_id, wrapped) FROM stdin;
3621206b-927c-4cc0-8009-c2ed9c1740c3	1	\\x014f454dea3c7d0fd1a486bc5c2d2b43985a4729255b991650c5bbb2962e9f4cb36f912974ee644877a0f73cfbe9047b69076dac15663c0a00baf68743
e5007cdb-4411-4f1b-b5d3-4750832e211e	1	\\x01ebd6eb1def0019aac693b4707d19ef6b94d33e5f2473987b5bf27d0ef53287dd2104ef8855e7abb8e6680d2e93d6b4f6abb52e1dea3d4522ea1b3a4b
f2920556-ff54-48ef-9cb5-533a991e9dfc	1	\\x0120d5d75313618fe1e50af601396bc61ea528b0cb067b41ff70aed66f316669ee11ba304674fe0b8e544d57ad5e486f81ce00c6b266199deda0393ea6
\.


--
-- Data for Name: client_reach; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.client_reach (client_id, phone_use, contact_use, help_from_here, tried_on, help_there, written_at, version) FROM stdin;
3621206b-927c-4cc0-8009-c2ed9c1740c3	call	message	\\x01210991d87e1583deaa6c22b9d287643174a99dda760b9bd5d07d09728fec7c2ea1b995bd72024cc67f9c	2026-03-01	\\x01e361809aefc7151e61e7e86363523ddce245015dfe9ee6cd34562c9a25ada3	2026-03-03 09:01:00+00	1
\.


--
-- Data for Name: closing_draft; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.closing_draft (session_id, client_id, typed, written_by, written_at, version) FROM stdin;
7cef5d09-bf65-4242-9869-33c506d2f815	3621206b-927c-4cc0-8009-c2ed9c1740c3	\\x0134fbafdf8d4bc2d66207819f67f4548352fe38fd255438f5f3b43878	21592c02-c035-4943-9320-bc8501645a59	2026-03-03 09:04:22+00	2
\.


--
-- Data for Name: cluster; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.cluster (id, client_id, number, name, theme, earliest_id, worst_id, version) FROM stdin;
fc7feb09-3dff-4d5e-9c99-668323d2b931	3621206b-927c-4cc0-8009-c2ed9c1740c3	1	\\x017a945e47cde41d6438082f2fb4db05a2eae203c0af94bd33f1cb136e6d5bf16747d061a780622a16	safety	d732ab79-94e9-4c4b-bb33-dc2cb5c3019e	\N	2
\.


--
-- Data for Name: comfort; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.comfort (client_id, path, dot, comfort, filled_at, version) FROM stdin;
3621206b-927c-4cc0-8009-c2ed9c1740c3	eight	2.5	{"level": 60, "pitch": 400, "sweep": "constant", "timbre": "wood", "colours": "lake", "tone_ms": 90, "vibration": true}	2026-03-03 09:01:00+00	1
\.


--
-- Data for Name: episode; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.episode (id, client_id, number, begun_at, started_at, reprocessed_at, last_at, sessions, ended_at, reason, judged_by, version) FROM stdin;
297cf610-d6d5-4241-9dbd-1e79dc02cdce	3621206b-927c-4cc0-8009-c2ed9c1740c3	1	2026-03-03 09:01:00+00	2026-03-03 09:01:00+00	2026-03-03 09:02:06+00	2026-03-10 09:04:22+00	2	\N	\N	\N	1
\.


--
-- Data for Name: episode_measure; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.episode_measure (episode_id, measure, client_id, first_total, first_at, last_total, last_at, end_total, end_at, totals) FROM stdin;
297cf610-d6d5-4241-9dbd-1e79dc02cdce	pcl5	3621206b-927c-4cc0-8009-c2ed9c1740c3	40	2026-03-10 09:04:22+00	40	2026-03-10 09:04:22+00	\N	\N	1
297cf610-d6d5-4241-9dbd-1e79dc02cdce	phq9	3621206b-927c-4cc0-8009-c2ed9c1740c3	9	2026-03-10 09:04:22+00	9	2026-03-10 09:04:22+00	\N	\N	1
\.


--
-- Data for Name: fact; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.fact (id, client_id, session_id, target_id, set_id, kind, code, because, moment, replaces, first_id, entered_by, at, seq) FROM stdin;
7be32159-cabe-4371-ac92-4f317679d995	3621206b-927c-4cc0-8009-c2ed9c1740c3	7cef5d09-bf65-4242-9869-33c506d2f815	d732ab79-94e9-4c4b-bb33-dc2cb5c3019e	0520bd70-d6e5-4508-a374-b390f5875625	mark	same	\N	after_set	\N	\N	21592c02-c035-4943-9320-bc8501645a59	2026-03-03 09:03:38+00	17
9c2095d7-2108-4cd3-9dbe-90953f3e6614	3621206b-927c-4cc0-8009-c2ed9c1740c3	7cef5d09-bf65-4242-9869-33c506d2f815	d732ab79-94e9-4c4b-bb33-dc2cb5c3019e	0520bd70-d6e5-4508-a374-b390f5875625	mark	changing	\N	after_set	7be32159-cabe-4371-ac92-4f317679d995	7be32159-cabe-4371-ac92-4f317679d995	21592c02-c035-4943-9320-bc8501645a59	2026-03-03 09:03:39+00	18
8a05ef2f-c50c-4023-8d45-8aaa920a3b9a	3621206b-927c-4cc0-8009-c2ed9c1740c3	7cef5d09-bf65-4242-9869-33c506d2f815	d732ab79-94e9-4c4b-bb33-dc2cb5c3019e	0520bd70-d6e5-4508-a374-b390f5875625	saw	glazed	\N	after_set	\N	\N	21592c02-c035-4943-9320-bc8501645a59	2026-03-03 09:03:40+00	19
cea56e8e-25e5-4e39-a8b8-8e91c25f3c95	3621206b-927c-4cc0-8009-c2ed9c1740c3	7cef5d09-bf65-4242-9869-33c506d2f815	d732ab79-94e9-4c4b-bb33-dc2cb5c3019e	0520bd70-d6e5-4508-a374-b390f5875625	tried	arousal	\N	after_set	\N	\N	21592c02-c035-4943-9320-bc8501645a59	2026-03-03 09:03:41+00	20
eb9d3b3c-3932-4dfe-af38-11dafc6d2bc3	3621206b-927c-4cc0-8009-c2ed9c1740c3	7cef5d09-bf65-4242-9869-33c506d2f815	d732ab79-94e9-4c4b-bb33-dc2cb5c3019e	\N	procedure	recent_event	\N	\N	\N	\N	21592c02-c035-4943-9320-bc8501645a59	2026-03-03 09:03:41+00	21
0c9dd5d2-f4d4-47e4-9201-8881724879bb	3621206b-927c-4cc0-8009-c2ed9c1740c3	7cef5d09-bf65-4242-9869-33c506d2f815	d732ab79-94e9-4c4b-bb33-dc2cb5c3019e	\N	scan	felt	\N	\N	\N	\N	21592c02-c035-4943-9320-bc8501645a59	2026-03-03 09:03:41+00	23
1c1d7525-26b0-4d12-94b2-5d6e1d6b65cd	3621206b-927c-4cc0-8009-c2ed9c1740c3	7cef5d09-bf65-4242-9869-33c506d2f815	d732ab79-94e9-4c4b-bb33-dc2cb5c3019e	c33d4b20-13c7-4c91-a6c9-13b10230c3f1	too_much	stopped	\N	after_set	\N	\N	21592c02-c035-4943-9320-bc8501645a59	2026-03-03 09:04:12+00	25
9ed67435-e5f7-4ec6-be61-fbd669019a2c	3621206b-927c-4cc0-8009-c2ed9c1740c3	7cef5d09-bf65-4242-9869-33c506d2f815	d732ab79-94e9-4c4b-bb33-dc2cb5c3019e	c33d4b20-13c7-4c91-a6c9-13b10230c3f1	showed	orient	\N	after_set	\N	\N	21592c02-c035-4943-9320-bc8501645a59	2026-03-03 09:04:13+00	26
05f3578f-c950-4c10-9c36-caedfa3923ab	3621206b-927c-4cc0-8009-c2ed9c1740c3	7cef5d09-bf65-4242-9869-33c506d2f815	d732ab79-94e9-4c4b-bb33-dc2cb5c3019e	c33d4b20-13c7-4c91-a6c9-13b10230c3f1	belief	another	\N	after_set	\N	\N	21592c02-c035-4943-9320-bc8501645a59	2026-03-03 09:04:14+00	27
e09143c1-c08f-443f-a917-c0d6bedd41c9	3621206b-927c-4cc0-8009-c2ed9c1740c3	7cef5d09-bf65-4242-9869-33c506d2f815	d732ab79-94e9-4c4b-bb33-dc2cb5c3019e	\N	decided	incomplete	\N	\N	\N	\N	21592c02-c035-4943-9320-bc8501645a59	2026-03-03 09:04:22+00	37
\.


--
-- Data for Name: hour_fact; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.hour_fact (id, client_id, session_id, kind, code, because, again, replaces, entered_by, at, seq) FROM stdin;
705c0519-6e14-4784-a6e1-8b7d28fd930a	3621206b-927c-4cc0-8009-c2ed9c1740c3	7cef5d09-bf65-4242-9869-33c506d2f815	answered	acute	\N	f	\N	21592c02-c035-4943-9320-bc8501645a59	2026-03-03 09:04:19+00	32
26b2d392-a25b-4a3f-89e7-ffe4017465bc	3621206b-927c-4cc0-8009-c2ed9c1740c3	7cef5d09-bf65-4242-9869-33c506d2f815	answered	\N	\N	f	705c0519-6e14-4784-a6e1-8b7d28fd930a	21592c02-c035-4943-9320-bc8501645a59	2026-03-03 09:04:20+00	33
af9efce0-8a92-40c0-bf61-85db7a635f03	3621206b-927c-4cc0-8009-c2ed9c1740c3	7cef5d09-bf65-4242-9869-33c506d2f815	passed	risk	judgement	f	\N	21592c02-c035-4943-9320-bc8501645a59	2026-03-03 09:04:21+00	34
3c10f855-ad34-4c16-9bf9-fb3f7efc80b2	3621206b-927c-4cc0-8009-c2ed9c1740c3	7cef5d09-bf65-4242-9869-33c506d2f815	time	60+10	\N	f	\N	21592c02-c035-4943-9320-bc8501645a59	2026-03-03 09:04:22+00	35
e1704eea-8d0f-4623-8efe-a118d8b4b1fe	3621206b-927c-4cc0-8009-c2ed9c1740c3	7c9dba37-5eb3-4ccc-a084-12bb05f7ef30	answered	another_place	\N	f	\N	21592c02-c035-4943-9320-bc8501645a59	2026-03-10 09:04:22+00	40
273600c9-a535-40e5-8576-c31d358a5b76	3621206b-927c-4cc0-8009-c2ed9c1740c3	7c9dba37-5eb3-4ccc-a084-12bb05f7ef30	answered	private	\N	f	\N	21592c02-c035-4943-9320-bc8501645a59	2026-03-10 09:04:22+00	41
\.


--
-- Data for Name: mail_address; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.mail_address (member_id, address, changed_at) FROM stdin;
21592c02-c035-4943-9320-bc8501645a59	hofer@practice.example	2026-03-10 09:04:22+00
\.


--
-- Data for Name: practice; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.practice (singleton, instance, name, zone, emergency_number, demo, day_order, clock, tells_whom, minutes, reserve, check_from, check_until, stuck_after, places, crisis_words, weeks_without, points_pcl5, points_anxiety5, told_too, flag_hours, items_at_once, reading_hours, single_courses, direct_calls, unseen_seconds) FROM stdin;
t	8dfa0596-0d7f-425a-bcef-c2afa698020d	Practice	UTC	112	f	month_first	12	t	90	15	12	48	3	Fjordgata	The night line of the practice.	8	15	4	\N	24	36		t	t	8
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
07cda030-ec16-4162-9107-7f44bddaeb51	\N	Slow	processing	t	f	f	0.8	18	24	2026-11-30 07:38:31.415806+00	\N	1
101d0f47-24c4-4d71-845a-f5e7edaf4b32	\N	Standard	processing	t	f	f	1	18	24	2026-11-30 07:38:31.415806+00	\N	1
2d998726-3ef6-4bd3-93b2-427862ef513d	\N	Fast	processing	t	f	f	1.2	18	24	2026-11-30 07:38:31.415806+00	\N	1
fe616221-bffe-4568-a0b3-744e48b9542e	\N	Calm place	calm_place	t	f	f	0.5	18	6	2026-11-30 07:38:31.415806+00	\N	1
1b485cf7-856c-4782-a947-f86e75cbf6fd	21592c02-c035-4943-9320-bc8501645a59	Evening	processing	t	f	f	0.9	16	30	2026-03-03 09:01:00+00	\N	1
e4dab71f-0035-4351-a75c-3926c2709db7	21592c02-c035-4943-9320-bc8501645a59	Given up	processing	t	f	f	0.9	16	30	2026-03-03 09:01:00+00	2026-03-03 09:01:00+00	2
\.


--
-- Data for Name: process_note; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.process_note (id, session_id, client_id, set_id, moment, words, replaces, entered_by, at, seq) FROM stdin;
a60b5d37-e628-481d-9091-825afc81649a	7cef5d09-bf65-4242-9869-33c506d2f815	3621206b-927c-4cc0-8009-c2ed9c1740c3	ad841539-0f07-4856-b6e8-a56e8e35ca5e	after_set	\\x01a429d2d2b8d346389a24005032b9f381c56ac60c69ec09d236e06b10237c07f4ec1d68ebba42ebdf4f977ffcba1166	\N	21592c02-c035-4943-9320-bc8501645a59	2026-03-03 09:02:32+00	9
474b7f58-48b6-4290-8fed-946ad94add83	7cef5d09-bf65-4242-9869-33c506d2f815	3621206b-927c-4cc0-8009-c2ed9c1740c3	ad841539-0f07-4856-b6e8-a56e8e35ca5e	after_set	\\x017127661b13172d68c9a668e3d10844e87558ce2fe1047ecc00e23034840a0bfb0d8202bd25aea4f6823328e967e148f2fc2c161a	a60b5d37-e628-481d-9091-825afc81649a	21592c02-c035-4943-9320-bc8501645a59	2026-03-03 09:02:33+00	10
\.


--
-- Data for Name: rating; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.rating (id, client_id, session_id, target_id, set_id, scale, value, moment, replaces, entered_by, at, seq, first_id, segment, from_client) FROM stdin;
6952a7ba-1694-42e3-8162-2cac21a36341	3621206b-927c-4cc0-8009-c2ed9c1740c3	\N	d732ab79-94e9-4c4b-bb33-dc2cb5c3019e	\N	sud	8	assessment	\N	21592c02-c035-4943-9320-bc8501645a59	2026-03-03 09:00:00+00	1	\N	\N	f
fbfdc4d1-3828-45bc-b5e6-4ff1ea0577bf	3621206b-927c-4cc0-8009-c2ed9c1740c3	\N	d732ab79-94e9-4c4b-bb33-dc2cb5c3019e	\N	voc	2	assessment	\N	21592c02-c035-4943-9320-bc8501645a59	2026-03-03 09:00:00+00	2	\N	\N	f
99aa1c3a-caf9-4548-81a6-a8ceb476bdde	3621206b-927c-4cc0-8009-c2ed9c1740c3	7cef5d09-bf65-4242-9869-33c506d2f815	d732ab79-94e9-4c4b-bb33-dc2cb5c3019e	\N	sud	7	assessment	\N	21592c02-c035-4943-9320-bc8501645a59	2026-03-03 09:02:00+00	4	\N	\N	f
0238c315-7c95-419b-9132-ca6a622f4779	3621206b-927c-4cc0-8009-c2ed9c1740c3	7cef5d09-bf65-4242-9869-33c506d2f815	d732ab79-94e9-4c4b-bb33-dc2cb5c3019e	\N	voc	3	assessment	\N	21592c02-c035-4943-9320-bc8501645a59	2026-03-03 09:02:00+00	5	\N	\N	f
549343ce-eb44-4abe-a3cb-dfbdbd6675c9	3621206b-927c-4cc0-8009-c2ed9c1740c3	7cef5d09-bf65-4242-9869-33c506d2f815	d732ab79-94e9-4c4b-bb33-dc2cb5c3019e	\N	sud	8	assessment	99aa1c3a-caf9-4548-81a6-a8ceb476bdde	21592c02-c035-4943-9320-bc8501645a59	2026-03-03 09:02:00+00	6	99aa1c3a-caf9-4548-81a6-a8ceb476bdde	\N	f
1927b431-ebf1-474a-82fa-4f66c2f389e4	3621206b-927c-4cc0-8009-c2ed9c1740c3	7cef5d09-bf65-4242-9869-33c506d2f815	d732ab79-94e9-4c4b-bb33-dc2cb5c3019e	\N	sud	8	back_at_target	\N	21592c02-c035-4943-9320-bc8501645a59	2026-03-03 09:02:01+00	7	\N	\N	f
e85936e1-51b3-49b9-8c9d-42a2a6508a55	3621206b-927c-4cc0-8009-c2ed9c1740c3	7cef5d09-bf65-4242-9869-33c506d2f815	d732ab79-94e9-4c4b-bb33-dc2cb5c3019e	ad841539-0f07-4856-b6e8-a56e8e35ca5e	sud	9	after_set	\N	21592c02-c035-4943-9320-bc8501645a59	2026-03-03 09:02:34+00	11	\N	\N	f
bf87dd51-6b23-4777-a8e7-6992ab27588f	3621206b-927c-4cc0-8009-c2ed9c1740c3	7cef5d09-bf65-4242-9869-33c506d2f815	d732ab79-94e9-4c4b-bb33-dc2cb5c3019e	ad841539-0f07-4856-b6e8-a56e8e35ca5e	sud	6	after_set	e85936e1-51b3-49b9-8c9d-42a2a6508a55	21592c02-c035-4943-9320-bc8501645a59	2026-03-03 09:02:35+00	12	e85936e1-51b3-49b9-8c9d-42a2a6508a55	\N	f
1b9bb546-1c59-479b-a5a0-c1d83a9551f7	3621206b-927c-4cc0-8009-c2ed9c1740c3	7cef5d09-bf65-4242-9869-33c506d2f815	d732ab79-94e9-4c4b-bb33-dc2cb5c3019e	7aa943df-d4b1-4ace-8477-e688e55d411b	voc	4	installation	\N	21592c02-c035-4943-9320-bc8501645a59	2026-03-03 09:03:06+00	14	\N	\N	f
ca48d51b-f61b-4b69-9626-9ce75a187510	3621206b-927c-4cc0-8009-c2ed9c1740c3	7cef5d09-bf65-4242-9869-33c506d2f815	d732ab79-94e9-4c4b-bb33-dc2cb5c3019e	7aa943df-d4b1-4ace-8477-e688e55d411b	voc	\N	installation	1b9bb546-1c59-479b-a5a0-c1d83a9551f7	21592c02-c035-4943-9320-bc8501645a59	2026-03-03 09:03:07+00	15	1b9bb546-1c59-479b-a5a0-c1d83a9551f7	\N	f
beb544e6-58ff-4811-82d4-ba6fc4cb4f6f	3621206b-927c-4cc0-8009-c2ed9c1740c3	7cef5d09-bf65-4242-9869-33c506d2f815	d732ab79-94e9-4c4b-bb33-dc2cb5c3019e	\N	sud	3	back_at_target	\N	21592c02-c035-4943-9320-bc8501645a59	2026-03-03 09:03:41+00	22	\N	1	f
27ed9b0f-56d2-4830-b781-b5b8c8f1e2bb	3621206b-927c-4cc0-8009-c2ed9c1740c3	7cef5d09-bf65-4242-9869-33c506d2f815	d732ab79-94e9-4c4b-bb33-dc2cb5c3019e	c33d4b20-13c7-4c91-a6c9-13b10230c3f1	sud	6	after_set	\N	21592c02-c035-4943-9320-bc8501645a59	2026-03-03 09:04:18+00	31	\N	\N	t
8d143278-1d36-4703-844d-0f94193676f5	3621206b-927c-4cc0-8009-c2ed9c1740c3	7cef5d09-bf65-4242-9869-33c506d2f815	d732ab79-94e9-4c4b-bb33-dc2cb5c3019e	\N	sud	5	closing	\N	21592c02-c035-4943-9320-bc8501645a59	2026-03-03 09:04:22+00	36	\N	\N	f
\.


--
-- Data for Name: reach_step; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.reach_step (id, client_id, session_id, step, replaces, entered_by, at, seq) FROM stdin;
85199ee6-12e6-42e1-9003-47eef4761b52	3621206b-927c-4cc0-8009-c2ed9c1740c3	7cef5d09-bf65-4242-9869-33c506d2f815	no_answer	\N	21592c02-c035-4943-9320-bc8501645a59	2026-03-03 09:04:15+00	28
\.


--
-- Data for Name: resource; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.resource (id, client_id, number, cue, image, body_feeling, helped, on_offer, found_at, version) FROM stdin;
2e56fb1d-b79e-4852-974c-514dfaa96949	3621206b-927c-4cc0-8009-c2ed9c1740c3	1	\\x01da986a84d4662ae14f7b823816eff91f509097ecad11e4a0138da5a40d7a7a84	\\x014301ead1fd6d45c81fd5f05c3ce3b93094f340524256b9aad87283d2f8bf3a6efaecb2f022b0748aa7c847	\\x01c1c5b3cde27d6767b803862097aca2bc42348b9ea03b16d03bba8c1b	yes	t	2026-03-03 09:01:00+00	1
\.


--
-- Data for Name: response; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.response (id, client_id, episode_id, number, measure, rules, occasion, answered_at, total, prorated, points, by_client, replaces, withdrawn, entered_by, kept_at, asking_id, wording_id, page) FROM stdin;
370ed2c1-b357-4bfd-9833-da5dd35e73e4	3621206b-927c-4cc0-8009-c2ed9c1740c3	297cf610-d6d5-4241-9dbd-1e79dc02cdce	1	pcl5	1	intake	2026-03-10 09:04:22+00	40	f	15	f	\N	f	21592c02-c035-4943-9320-bc8501645a59	2026-03-10 09:04:22+00	\N	\N	\N
ee54a323-a69f-4520-bf44-70170a002ccb	3621206b-927c-4cc0-8009-c2ed9c1740c3	297cf610-d6d5-4241-9dbd-1e79dc02cdce	2	phq9	1	regular	2026-03-10 09:04:22+00	9	f	6	t	\N	f	\N	2026-03-10 09:04:22+00	427280f3-dd0c-41e9-b637-4c296d0ffcf7	6da42e70-b336-4478-8ba7-f16260f3b854	ffbab0a5-1e4c-4181-b2dd-b18ac6b2af81
\.


--
-- Data for Name: response_answers; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.response_answers (response_id, client_id, answers, event) FROM stdin;
370ed2c1-b357-4bfd-9833-da5dd35e73e4	3621206b-927c-4cc0-8009-c2ed9c1740c3	\\x01581ef48033d29f2951ccccf976493b7df8c89445cef9a8f45874f973b2a1c2bec10e85f87312f71aeeb4bd9d0df8cfb53022d5d561c828577749b6d570e985a26ce4d1	\\x01366a380fdaa4021d71f82f22581710b4226124604b0b0d4c8ad248b19769729b4576bd7dcb7c99ae
ee54a323-a69f-4520-bf44-70170a002ccb	3621206b-927c-4cc0-8009-c2ed9c1740c3	\\x01db0b3fecbc5bc8c293e6c0eda11298f75fcb1461532ce44a9ba46c9baf18816285c85876a3169b24f9a935314f	\\x0110f65cb9a3864f9aee97f45e50972e2c9d1cd3fffb28ab35910003dd
\.


--
-- Data for Name: response_draft; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.response_draft (id, asking_id, client_id, measure, answers, version, kept_at, page, sending, wording_id) FROM stdin;
56b98ee8-830f-4fb1-890e-831fdaa5f937	427280f3-dd0c-41e9-b637-4c296d0ffcf7	3621206b-927c-4cc0-8009-c2ed9c1740c3	gad7	\\x0141d432959744ce0e3f357b25ab1a85c0fa57a0a9ae54b6aff9d9701d0338e239c993ed96c93d63920a	1	2026-03-10 09:04:22+00	a01ad873-371c-4084-96be-647ed97d137c	1	4b66be11-16c9-4fee-9059-3e47da6a6ad1
\.


--
-- Data for Name: risk_flag; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.risk_flag (response_id, client_id, says, raised_at, done, done_at, done_by) FROM stdin;
ee54a323-a69f-4520-bf44-70170a002ccb	3621206b-927c-4cc0-8009-c2ed9c1740c3	flag	2026-03-10 09:04:22+00	\N	\N	\N
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
3621206b-927c-4cc0-8009-c2ed9c1740c3	\\x014b9a8bf9de45e26c1ae0268b8c8dcd99e0194bb2830a5fad804595df7e4b277d8b3d9c17437c	\\x0156ec536c1aee62aed62482423a532d131e773cc75d48dc2736ebbbf2f3e56dd66089e0532bb2	\\x01d0dc04f9d63aa4ee6fea955e120722f279147a801fe5df55222d0fcd	\\x01d7dac6230288d7b54ce0c4647371a70e0eda692be1bebf6aca7bfa9d	\\x0181d815e24632418f9f81168c0b1e9f5b95a94ef41b75a7190981ec58c558ab6cfd970e6edccfec71bf01bb8dd5ec3e58576d	\\x0182e1352da22346753689a48f447fb17ad6188fa3c968cfcefbfe164b	\N	2026-03-03 09:01:00+00	1
\.


--
-- Data for Name: schedule; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.schedule (client_id, measures, every, follow_up_weeks, set_at, version, due_for, due_on, then_for, then_on) FROM stdin;
3621206b-927c-4cc0-8009-c2ed9c1740c3	{phq9}	4	\N	2026-03-10 09:04:22+00	1	\N	\N	\N	\N
\.


--
-- Data for Name: session; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.session (id, client_id, member_id, target_id, number, zone, opened_at, admitted_at, ended_at, closing, room_epoch, room_holder, version, seq, over_at, episode_id) FROM stdin;
7cef5d09-bf65-4242-9869-33c506d2f815	3621206b-927c-4cc0-8009-c2ed9c1740c3	21592c02-c035-4943-9320-bc8501645a59	d732ab79-94e9-4c4b-bb33-dc2cb5c3019e	1	UTC	2026-03-03 09:01:00+00	\N	2026-03-03 09:04:22+00	incomplete	4	118179e1-bf60-463b-8af2-46e8a13bbee5	2	3	\N	297cf610-d6d5-4241-9dbd-1e79dc02cdce
7c9dba37-5eb3-4ccc-a084-12bb05f7ef30	3621206b-927c-4cc0-8009-c2ed9c1740c3	21592c02-c035-4943-9320-bc8501645a59	d732ab79-94e9-4c4b-bb33-dc2cb5c3019e	2	UTC	2026-03-10 09:04:22+00	2026-03-10 09:04:22+00	\N	\N	0	\N	1	39	\N	297cf610-d6d5-4241-9dbd-1e79dc02cdce
6ac168be-6488-4d88-8865-823b59385021	e5007cdb-4411-4f1b-b5d3-4750832e211e	21592c02-c035-4943-9320-bc8501645a59	\N	1	UTC	2026-03-10 09:04:22+00	\N	\N	\N	0	\N	1	42	\N	\N
\.


--
-- Data for Name: session_moment; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.session_moment (id, session_id, client_id, kind, at, once) FROM stdin;
1	7c9dba37-5eb3-4ccc-a084-12bb05f7ef30	3621206b-927c-4cc0-8009-c2ed9c1740c3	admitted	2026-03-10 09:04:22+00	cedb0d53-f937-4c1f-aa05-67d29c6afd98
\.


--
-- Data for Name: session_words; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.session_words (session_id, client_id, location, call_back, resource, leaving_state, companion, next_contact, client_words, note, version, written_by, written_at) FROM stdin;
7cef5d09-bf65-4242-9869-33c506d2f815	3621206b-927c-4cc0-8009-c2ed9c1740c3	\\x01d703ba5be7b1c461535a2445ef3e33175124740cf8addbb4ffb2f5d9	\\x01776ade5c954b70a1a744c851d005473e0305124c0a5c4c60628f76da	\\x01f97bdb184d2627d9d4b3b8a10477f04945347507a6706472dff79846	\\x0166b5a4e01bc43fe5205b8585f93f709a6575fbdb892a79e0a750d5e1	\\x015fc9bc8e0fedc1c2327c20a34df8a250418dcb066a588fc83d998082	\\x01c20654f976aebc44734cf24132930728fa39d5ddfd521011a21a3aad	\\x01e2cf936607fa9ee666389f5047fcf81075a5e6de23ee775a97c7e77b	\\x01c3944fdf4ea06752567c83e07750f14a1fd8b6c90fe433a5a8056b7d	1	21592c02-c035-4943-9320-bc8501645a59	2026-03-03 09:01:00+00
7cef5d09-bf65-4242-9869-33c506d2f815	3621206b-927c-4cc0-8009-c2ed9c1740c3	\\x01f7964d0ade7ad067e6bc0ea3478ef13ff95dc37e77c4b8dc0c686667	\\x01411baede56b59696510787f5f1ef9faeced35d4b45644c837a4ae44f	\\x016a22ebfae81c85404a4fe06c429020b421d9ee4d20387f45233739858192e031ee8f416080b3a86a7d9e34ffe2a9809cc6b8f2528ddfb78a	\\x01748db597d3cc93c5e1e4c99d34b0e81983c397d939794ed0b5f225a65e6a25af6a391c719a7d10d7d0241b8db12c389757ea8c560ee60f3714f9f1980c8c6ba7ad27cc09564d67d70abc21	\\x011928652267afd025b6863d6c35d680a9b5d2b923cc21334eb64c5db50d1abb1d10f7ef2959e7fd	\\x013d11037fc1c0a0997034bd4821673f7b272bc58f76ab1b71d97871aa1fbc9f513ce2449cfe64fc4ffc28ab	\\x01d1a0d5509e0527231cc97994423f11faffa728d43e10efbec8fb982ecf8b23f0e80b2d1378cbdda7f2	\\x01671d71cebfe073be00d5fd61594990eba8236961cbf742a6949d87b7ca7230a1c2a2027d1db062d7e66d1678924923f84c	2	21592c02-c035-4943-9320-bc8501645a59	2026-03-03 09:04:22+00
7cef5d09-bf65-4242-9869-33c506d2f815	3621206b-927c-4cc0-8009-c2ed9c1740c3	\\x01f3bdcffff6a0aeea45e190b2a916dbf5690e9dde53eebd69a418ad0b	\\x01a234228144884b83e2e76ae1b41ec69c724d002061af1b8575e5129c	\\x01ecca3b53754756b3538626e5257ea2b556c14133f76da97db251f9902ce4c5e4abc450a5be2d9ed27d92a14fcfd9b3614edefd8cb562c243	\\x0126ffc9bc964170b6aa11d5cf25bc73569ac8d241a69c951cb04238e8c95571bebef9066a2f3277934abec62139691d8dd4c3f228164bd052f0deb81024e4f3010a8a37b80b8587d13077db	\\x012dfb80ff09bb69d0a416371ab229d2d606956d294dd4b45fe9d573105da6bd76f26ccbb54a54e0	\\x018653d06b32c964ed7ca82c33501bf2b39d555b2d32c21f3e7fc8dac53743dbdf7e61eba3795ec498125af2	\\x01f6f03216cd5f86c7e19fe810a09569dcac54193038a1f05f788049493382dee7b13a183b61501c3ff3	\\x01aa325132762437923f5b46be97264ad90a97d282fa99dcc257673c2b256800962c750c72e6b6fc0594970cde66a7a6c3c9b89b1be65f5bc80bab74e55f3522faa6efc3559305ae	3	21592c02-c035-4943-9320-bc8501645a59	2026-03-03 09:04:22+00
7c9dba37-5eb3-4ccc-a084-12bb05f7ef30	3621206b-927c-4cc0-8009-c2ed9c1740c3	\\x01190bb7dbe3fdfe8c188fd053addb16f7dc98872d48d538931072b15f	\\x01d68648f0368dcdfd3627fd0662ae10be0ee11f7b7f3c80cdfe120886	\\x01d370122d9ab6cfcf3935e3457e351daedf12368cb32f11dd0b433931	\\x0178725b3a6cb940cda8734ada20cc9a5beb1267a77d9b271a61530fa7	\\x012eef454df6eefb1d55ae1757b16221324b0b5dff4f63b9fa8c6730f2	\\x01b53039e594e98aa6897d87f1b596ac49efc595f02461388ec65687b2	\\x0133cd5034927e03ffb30ccbacc6bc7492c9ee1dcc5ebd798402d2ee39	\\x019ff5f3f1f9c1e23e42d77ffe0b0add447a2d9986976c7cbfed958a5f	1	21592c02-c035-4943-9320-bc8501645a59	2026-03-10 09:04:22+00
7c9dba37-5eb3-4ccc-a084-12bb05f7ef30	3621206b-927c-4cc0-8009-c2ed9c1740c3	\\x01e0e10bcfdf79f15929e57d168a862a6f05b782ff07d3122186b6e36e570f5c8acc4419d69e41caf7	\\x01503baf158c71e5232ec3ed6cb6c1b187438785a621e5e6dd2485c33ea7b1fa3593aaba51c3995fb87146	\\x01f0d837ea23d38bdbf88f26da261321887793341bf2db6ce38bee6c76	\\x0123ddf17be082a891d37ba4110aa7e611fd1e68aa38155c5a67b2a2c8	\\x01ee7f470a3f7d2644a73ad3410992c000c8955be1a46b9b5025ca86dd	\\x01ca9faabf720b4af6f85ff7d4a49175ca88701b0b2308655b2533be45	\\x01398f7ac848061503de7865e0696e81230ae54525e2cf0634bb54b835	\\x013753f83e3729fcb175bbe468e07e4ee89d18f6e0ec6d546d02fb7407	2	21592c02-c035-4943-9320-bc8501645a59	2026-03-10 09:04:22+00
6ac168be-6488-4d88-8865-823b59385021	e5007cdb-4411-4f1b-b5d3-4750832e211e	\\x01386b81a94e32e5fda50c13123a429db93ac5307955ed9be5c8c71252	\\x0178dbe774da79fe97c28768932f3b7a563f2742e910589c2a9d5ec053	\\x0128b19e002a4f3bb2f48a974ce42993bfae966ace651dc191f20b6f79	\\x01d2e1e39e6beea379c3565e6b8949d7c22f24ab01903e2130ef78e941	\\x016cc5b18055f11be100fe96439a58493dfb5b35e7403e440aad7d1b23	\\x01adab15cfc766e909e9750972185150ff238c0c5eb88b4154454dd553	\\x01303fa181e15ac8ab0c1230edea2d8cb820c5070c52112733d07c4919	\\x01645145109cecec601fe0cac3a24ad119c151c4c5e8000262258147e9	1	21592c02-c035-4943-9320-bc8501645a59	2026-03-10 09:04:22+00
\.


--
-- Data for Name: set_ending; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.set_ending (set_id, session_id, client_id, ending, at_ms, recorded_at, witness) FROM stdin;
ad841539-0f07-4856-b6e8-a56e8e35ca5e	7cef5d09-bf65-4242-9869-33c506d2f815	3621206b-927c-4cc0-8009-c2ed9c1740c3	done	26500	2026-03-03 09:02:27.5+00	room
7aa943df-d4b1-4ace-8477-e688e55d411b	7cef5d09-bf65-4242-9869-33c506d2f815	3621206b-927c-4cc0-8009-c2ed9c1740c3	stopped_by_client	26500	2026-03-03 09:03:01.5+00	room
0520bd70-d6e5-4508-a374-b390f5875625	7cef5d09-bf65-4242-9869-33c506d2f815	3621206b-927c-4cc0-8009-c2ed9c1740c3	stopped_by_clinician	26500	2026-03-03 09:03:33.5+00	room
c33d4b20-13c7-4c91-a6c9-13b10230c3f1	7cef5d09-bf65-4242-9869-33c506d2f815	3621206b-927c-4cc0-8009-c2ed9c1740c3	unknown	26500	2026-03-03 09:04:07.5+00	room
\.


--
-- Data for Name: set_evidence; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.set_evidence (set_id, seq, session_id, client_id, kind, at_ms, phase, width, frames, longest_gap, ending, recorded_at) FROM stdin;
ad841539-0f07-4856-b6e8-a56e8e35ca5e	3	7cef5d09-bf65-4242-9869-33c506d2f815	3621206b-927c-4cc0-8009-c2ed9c1740c3	rested	26500	24.5	\N	\N	\N	done	2026-03-03 09:02:27.5+00
ad841539-0f07-4856-b6e8-a56e8e35ca5e	2	7cef5d09-bf65-4242-9869-33c506d2f815	3621206b-927c-4cc0-8009-c2ed9c1740c3	second	8000	2	\N	52	84	\N	2026-03-03 09:02:27.5+00
ad841539-0f07-4856-b6e8-a56e8e35ca5e	1	7cef5d09-bf65-4242-9869-33c506d2f815	3621206b-927c-4cc0-8009-c2ed9c1740c3	second	7000	1	\N	60	17	\N	2026-03-03 09:02:27.5+00
ad841539-0f07-4856-b6e8-a56e8e35ca5e	0	7cef5d09-bf65-4242-9869-33c506d2f815	3621206b-927c-4cc0-8009-c2ed9c1740c3	shown	6000	\N	18	\N	\N	\N	2026-03-03 09:02:27.5+00
0520bd70-d6e5-4508-a374-b390f5875625	3	7cef5d09-bf65-4242-9869-33c506d2f815	3621206b-927c-4cc0-8009-c2ed9c1740c3	rested	26500	11	\N	\N	\N	stopped_by_clinician	2026-03-03 09:03:33.5+00
0520bd70-d6e5-4508-a374-b390f5875625	2	7cef5d09-bf65-4242-9869-33c506d2f815	3621206b-927c-4cc0-8009-c2ed9c1740c3	second	8000	2	\N	52	84	\N	2026-03-03 09:03:33.5+00
0520bd70-d6e5-4508-a374-b390f5875625	1	7cef5d09-bf65-4242-9869-33c506d2f815	3621206b-927c-4cc0-8009-c2ed9c1740c3	second	7000	1	\N	60	17	\N	2026-03-03 09:03:33.5+00
0520bd70-d6e5-4508-a374-b390f5875625	0	7cef5d09-bf65-4242-9869-33c506d2f815	3621206b-927c-4cc0-8009-c2ed9c1740c3	shown	6000	\N	18	\N	\N	\N	2026-03-03 09:03:33.5+00
\.


--
-- Data for Name: set_order; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.set_order (set_id, seq, session_id, client_id, cause, at_ms, plan, timeline, recorded_at) FROM stdin;
ad841539-0f07-4856-b6e8-a56e8e35ca5e	0	7cef5d09-bf65-4242-9869-33c506d2f815	3621206b-927c-4cc0-8009-c2ed9c1740c3	started	5000	{"dot": 1.5, "path": "across", "rate": 1.0, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "purpose": "processing", "channels": {"ears": false, "eyes": true, "hands": false}}	{"segments": []}	2026-03-03 09:02:06+00
ad841539-0f07-4856-b6e8-a56e8e35ca5e	1	7cef5d09-bf65-4242-9869-33c506d2f815	3621206b-927c-4cc0-8009-c2ed9c1740c3	rate	11500	{"dot": 1.5, "path": "across", "rate": 1.2, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "purpose": "processing", "channels": {"ears": false, "eyes": true, "hands": false}}	{"segments": []}	2026-03-03 09:02:12.5+00
7aa943df-d4b1-4ace-8477-e688e55d411b	0	7cef5d09-bf65-4242-9869-33c506d2f815	3621206b-927c-4cc0-8009-c2ed9c1740c3	started	5000	{"dot": 1.5, "path": "across", "rate": 1.0, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "purpose": "processing", "channels": {"ears": false, "eyes": true, "hands": false}}	{"segments": []}	2026-03-03 09:02:40+00
7aa943df-d4b1-4ace-8477-e688e55d411b	1	7cef5d09-bf65-4242-9869-33c506d2f815	3621206b-927c-4cc0-8009-c2ed9c1740c3	rate	11500	{"dot": 1.5, "path": "across", "rate": 1.2, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "purpose": "processing", "channels": {"ears": false, "eyes": true, "hands": false}}	{"segments": []}	2026-03-03 09:02:46.5+00
0520bd70-d6e5-4508-a374-b390f5875625	0	7cef5d09-bf65-4242-9869-33c506d2f815	3621206b-927c-4cc0-8009-c2ed9c1740c3	started	5000	{"dot": 1.5, "path": "across", "rate": 1.0, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "purpose": "processing", "channels": {"ears": false, "eyes": true, "hands": false}}	{"segments": []}	2026-03-03 09:03:12+00
0520bd70-d6e5-4508-a374-b390f5875625	1	7cef5d09-bf65-4242-9869-33c506d2f815	3621206b-927c-4cc0-8009-c2ed9c1740c3	rate	11500	{"dot": 1.5, "path": "across", "rate": 1.2, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "purpose": "processing", "channels": {"ears": false, "eyes": true, "hands": false}}	{"segments": []}	2026-03-03 09:03:18.5+00
c33d4b20-13c7-4c91-a6c9-13b10230c3f1	0	7cef5d09-bf65-4242-9869-33c506d2f815	3621206b-927c-4cc0-8009-c2ed9c1740c3	started	5000	{"dot": 1.5, "path": "across", "rate": 1.0, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "purpose": "processing", "channels": {"ears": false, "eyes": true, "hands": false}}	{"segments": []}	2026-03-03 09:03:46+00
c33d4b20-13c7-4c91-a6c9-13b10230c3f1	1	7cef5d09-bf65-4242-9869-33c506d2f815	3621206b-927c-4cc0-8009-c2ed9c1740c3	rate	11500	{"dot": 1.5, "path": "across", "rate": 1.2, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "purpose": "processing", "channels": {"ears": false, "eyes": true, "hands": false}}	{"segments": []}	2026-03-03 09:03:52.5+00
\.


--
-- Data for Name: steadying; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.steadying (client_id, signs, way_back, first_words, written_at, version) FROM stdin;
3621206b-927c-4cc0-8009-c2ed9c1740c3	\\x01e5e257d8dd4c921750eb83ee2ceb3e3940bf016c3d5f360bea1b3cb1028b84b4a6eb0bbec15cf0fd43	\\x0144d19df1c332842f002beba7796e89d8236d00548de3808400eca48213e046835ab606a4114f0b1161664b963368e7d3572e	\\x01b693b48aa72b0763903fc52cc0548ef5bab34ca5006763762327809c	2026-03-03 09:01:00+00	1
\.


--
-- Data for Name: stimulus_set; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.stimulus_set (id, session_id, client_id, target_id, number, epoch, plan, recorded_at, seq) FROM stdin;
ad841539-0f07-4856-b6e8-a56e8e35ca5e	7cef5d09-bf65-4242-9869-33c506d2f815	3621206b-927c-4cc0-8009-c2ed9c1740c3	d732ab79-94e9-4c4b-bb33-dc2cb5c3019e	1	1	{"dot": 1.5, "path": "across", "rate": 1.0, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "purpose": "processing", "channels": {"ears": false, "eyes": true, "hands": false}}	2026-03-03 09:02:06+00	8
7aa943df-d4b1-4ace-8477-e688e55d411b	7cef5d09-bf65-4242-9869-33c506d2f815	3621206b-927c-4cc0-8009-c2ed9c1740c3	d732ab79-94e9-4c4b-bb33-dc2cb5c3019e	2	2	{"dot": 1.5, "path": "across", "rate": 1.0, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "purpose": "processing", "channels": {"ears": false, "eyes": true, "hands": false}}	2026-03-03 09:02:40+00	13
0520bd70-d6e5-4508-a374-b390f5875625	7cef5d09-bf65-4242-9869-33c506d2f815	3621206b-927c-4cc0-8009-c2ed9c1740c3	d732ab79-94e9-4c4b-bb33-dc2cb5c3019e	3	3	{"dot": 1.5, "path": "across", "rate": 1.0, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "purpose": "processing", "channels": {"ears": false, "eyes": true, "hands": false}}	2026-03-03 09:03:12+00	16
c33d4b20-13c7-4c91-a6c9-13b10230c3f1	7cef5d09-bf65-4242-9869-33c506d2f815	3621206b-927c-4cc0-8009-c2ed9c1740c3	d732ab79-94e9-4c4b-bb33-dc2cb5c3019e	4	4	{"dot": 1.5, "path": "across", "rate": 1.0, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "purpose": "processing", "channels": {"ears": false, "eyes": true, "hands": false}}	2026-03-03 09:03:46+00	24
\.


--
-- Data for Name: target; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.target (id, client_id, number, prong, opened_at, archived_at, version) FROM stdin;
d732ab79-94e9-4c4b-bb33-dc2cb5c3019e	3621206b-927c-4cc0-8009-c2ed9c1740c3	1	past	2026-03-03 09:00:00+00	\N	3
f128b10d-e23d-4d9a-b736-4afa086866c2	3621206b-927c-4cc0-8009-c2ed9c1740c3	2	present	2026-03-03 09:02:00+00	\N	1
\.


--
-- Data for Name: target_course; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.target_course (target_id, client_id, rules, procedure, state, held, because, unfounded, version) FROM stdin;
f128b10d-e23d-4d9a-b736-4afa086866c2	3621206b-927c-4cc0-8009-c2ed9c1740c3	2	standard	planned	\N	\N	f	1
d732ab79-94e9-4c4b-bb33-dc2cb5c3019e	3621206b-927c-4cc0-8009-c2ed9c1740c3	2	recent_event	incomplete	\N	\N	f	4
\.


--
-- Data for Name: target_plan; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.target_plan (target_id, client_id, place, age, year, cluster_id, parent_id) FROM stdin;
d732ab79-94e9-4c4b-bb33-dc2cb5c3019e	3621206b-927c-4cc0-8009-c2ed9c1740c3	2	9	1998	fc7feb09-3dff-4d5e-9c99-668323d2b931	\N
f128b10d-e23d-4d9a-b736-4afa086866c2	3621206b-927c-4cc0-8009-c2ed9c1740c3	1	\N	\N	fc7feb09-3dff-4d5e-9c99-668323d2b931	d732ab79-94e9-4c4b-bb33-dc2cb5c3019e
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
d732ab79-94e9-4c4b-bb33-dc2cb5c3019e	3621206b-927c-4cc0-8009-c2ed9c1740c3	\\x01ba4a75e657897c78316a175f3125b1722bbd69bcd2fead450d85ff8f9f0f21a34303fe57b8148826dbd3c6e2	\\x01eb59deba4d5d84f20e4b2c5158cbcccef6b230ad4f0c07be04775d4d362a2d2551e553d3242808952b3af824d6ccad2a6951271a	\\x0109d07aaed23c5a242e7b8749c5ca95570c2e43cec826e5b0f25cda8b8cfc564663c4f18370b395aaf05c932b7c7b7448709bb4d8	\\x01d3fbe80e9d17b78b759cebe9e0d573c33dc838b365d3873c53307eed73c5d271fe9c9c09ee9ac56222e55124676803ded87ad4	\\x011127bb6fa12fe0025f5fbfadc0a0cd84845aa32068ecf07e2240ee5e6f1b3bdd8231d37be90bf271f447d1	\\x01559ac71084497383730b1b5481a205a7ff6f7eff137153f68f9ed594c59200e9817b1c672f9d075476636c6542	3
f128b10d-e23d-4d9a-b736-4afa086866c2	3621206b-927c-4cc0-8009-c2ed9c1740c3	\\x01199a8eda02eeca834c0ebc172d209bb9910ea063cbb47b2ee4f138fbb6d3b70a08fb30d185d41f1f	\\x01b13485b543dc937a5fd7736dd4608e04f92c96e2ba1e05655faba36b	\\x019c107f7d71095740a529a38aca434b81472e5818e453e1964ca7c13b	\\x01f2321f2e1f5fc6240ce42208b70721cc77fb5d80d5af18686e51168c	\\x017810394ba1d270bb68516f98d80da778bf892714d8efdd2f2066cb7c	\\x01e7527758d2bdfd770e95af561c9ccbf71d84282a9dea1d906eb2bd19	1
\.


--
-- Data for Name: unmeasured; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.unmeasured (id, client_id, session_id, target_id, way, replaces, entered_by, at, seq) FROM stdin;
20ad4d4a-fc9a-4f51-a2ba-833376e4a815	3621206b-927c-4cc0-8009-c2ed9c1740c3	7cef5d09-bf65-4242-9869-33c506d2f815	d732ab79-94e9-4c4b-bb33-dc2cb5c3019e	own_tapping	\N	21592c02-c035-4943-9320-bc8501645a59	2026-03-03 09:04:16+00	29
3839782e-5438-4122-be7d-f99943ba743a	3621206b-927c-4cc0-8009-c2ed9c1740c3	7cef5d09-bf65-4242-9869-33c506d2f815	d732ab79-94e9-4c4b-bb33-dc2cb5c3019e	\N	20ad4d4a-fc9a-4f51-a2ba-833376e4a815	21592c02-c035-4943-9320-bc8501645a59	2026-03-03 09:04:17+00	30
\.


--
-- Data for Name: wording; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.wording (id, measure, body, loaded_by, loaded_at, checked_by, checked_at, ended_at) FROM stdin;
6da42e70-b336-4478-8ba7-f16260f3b854	phq9	{"intro": [], "title": "Invented form PHQ-9", "language": "en", "questions": [{"id": "q1", "text": "Invented question 1", "under": "", "answers": [[0, "Level 0"], [1, "Level 1"], [2, "Level 2"], [3, "Level 3"]]}, {"id": "q2", "text": "Invented question 2", "under": "", "answers": [[0, "Level 0"], [1, "Level 1"], [2, "Level 2"], [3, "Level 3"]]}, {"id": "q3", "text": "Invented question 3", "under": "", "answers": [[0, "Level 0"], [1, "Level 1"], [2, "Level 2"], [3, "Level 3"]]}, {"id": "q4", "text": "Invented question 4", "under": "", "answers": [[0, "Level 0"], [1, "Level 1"], [2, "Level 2"], [3, "Level 3"]]}, {"id": "q5", "text": "Invented question 5", "under": "", "answers": [[0, "Level 0"], [1, "Level 1"], [2, "Level 2"], [3, "Level 3"]]}, {"id": "q6", "text": "Invented question 6", "under": "", "answers": [[0, "Level 0"], [1, "Level 1"], [2, "Level 2"], [3, "Level 3"]]}, {"id": "q7", "text": "Invented question 7", "under": "", "answers": [[0, "Level 0"], [1, "Level 1"], [2, "Level 2"], [3, "Level 3"]]}, {"id": "q8", "text": "Invented question 8", "under": "", "answers": [[0, "Level 0"], [1, "Level 1"], [2, "Level 2"], [3, "Level 3"]]}, {"id": "q9", "text": "Invented question 9", "under": "", "answers": [[0, "Level 0"], [1, "Level 1"], [2, "Level 2"], [3, "Level 3"]]}]}	a8092d32-381a-41f3-af0f-3ee949a1f419	2026-03-10 09:04:22+00	a8092d32-381a-41f3-af0f-3ee949a1f419	2026-03-10 09:04:22+00	\N
4b66be11-16c9-4fee-9059-3e47da6a6ad1	gad7	{"intro": [], "title": "Invented form GAD-7", "language": "en", "questions": [{"id": "q1", "text": "Invented question 1", "under": "", "answers": [[0, "Level 0"], [1, "Level 1"], [2, "Level 2"], [3, "Level 3"]]}, {"id": "q2", "text": "Invented question 2", "under": "", "answers": [[0, "Level 0"], [1, "Level 1"], [2, "Level 2"], [3, "Level 3"]]}, {"id": "q3", "text": "Invented question 3", "under": "", "answers": [[0, "Level 0"], [1, "Level 1"], [2, "Level 2"], [3, "Level 3"]]}, {"id": "q4", "text": "Invented question 4", "under": "", "answers": [[0, "Level 0"], [1, "Level 1"], [2, "Level 2"], [3, "Level 3"]]}, {"id": "q5", "text": "Invented question 5", "under": "", "answers": [[0, "Level 0"], [1, "Level 1"], [2, "Level 2"], [3, "Level 3"]]}, {"id": "q6", "text": "Invented question 6", "under": "", "answers": [[0, "Level 0"], [1, "Level 1"], [2, "Level 2"], [3, "Level 3"]]}, {"id": "q7", "text": "Invented question 7", "under": "", "answers": [[0, "Level 0"], [1, "Level 1"], [2, "Level 2"], [3, "Level 3"]]}]}	a8092d32-381a-41f3-af0f-3ee949a1f419	2026-03-10 09:04:22+00	a8092d32-381a-41f3-af0f-3ee949a1f419	2026-03-10 09:04:22+00	\N
ffef62d7-66df-4b72-a99e-3cdb39404ecc	gad7	{"intro": [], "title": "Invented form GAD-7", "language": "en", "questions": [{"id": "q1", "text": "Invented question 1", "under": "", "answers": [[0, "Level 0"], [1, "Level 1"], [2, "Level 2"], [3, "Level 3"]]}, {"id": "q2", "text": "Invented question 2", "under": "", "answers": [[0, "Level 0"], [1, "Level 1"], [2, "Level 2"], [3, "Level 3"]]}, {"id": "q3", "text": "Invented question 3", "under": "", "answers": [[0, "Level 0"], [1, "Level 1"], [2, "Level 2"], [3, "Level 3"]]}, {"id": "q4", "text": "Invented question 4", "under": "", "answers": [[0, "Level 0"], [1, "Level 1"], [2, "Level 2"], [3, "Level 3"]]}, {"id": "q5", "text": "Invented question 5", "under": "", "answers": [[0, "Level 0"], [1, "Level 1"], [2, "Level 2"], [3, "Level 3"]]}, {"id": "q6", "text": "Invented question 6", "under": "", "answers": [[0, "Level 0"], [1, "Level 1"], [2, "Level 2"], [3, "Level 3"]]}, {"id": "q7", "text": "Invented question 7", "under": "", "answers": [[0, "Level 0"], [1, "Level 1"], [2, "Level 2"], [3, "Level 3"]]}]}	a8092d32-381a-41f3-af0f-3ee949a1f419	2026-03-10 09:04:22+00	\N	\N	\N
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

\unrestrict 1Yznp3e8tFPqbsYkUhV1GmNYf7zJ1eOL3X6mVTVp6SVCb332gYx8k1nGNXeqhxU

