-- 0007.sql brought to this version by 0008_kept_once.sql; nothing was added, so what that migration made new is empty.
--
-- PostgreSQL database dump
--

\restrict Welg8KVI8NX038pZDlowEx346A6lUpa6fITmbvzlAAfFxisG0ih7mSjp1O0lbLg

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
    SET search_path TO ''
    AS $$
DECLARE i access.invitation; who uuid;
BEGIN
  UPDATE access.invitation SET spent_at = access.now()
  WHERE token_hash = hash AND spent_at IS NULL AND ends_at > access.now() RETURNING * INTO i;
  IF NOT FOUND THEN RETURN NULL; END IF;
  who := coalesce(i.member_id, new_member);
  IF i.member_id IS NULL THEN
    INSERT INTO access.member (id, name, roles, joined_at) VALUES (who, i.name, i.roles, access.now());
  END IF;
  INSERT INTO access.passkey (id, member_id, credential_id, passkey, label, added_at)
  VALUES (passkey_id, who, credential, passkey, label, access.now());
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
-- Name: audit(text, uuid, uuid); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.audit(act text, client uuid, object uuid) RETURNS void
    LANGUAGE plpgsql SECURITY DEFINER
    SET search_path TO ''
    AS $$
DECLARE head access.audit_head; next_hash bytea; who uuid; what text := coalesce(access.kind(), 'nobody');
BEGIN
  SELECT s.member_id INTO who FROM access.signin s WHERE what = 'member' AND s.token_hash = access.token_hash();
  SELECT * INTO head FROM access.audit_head FOR UPDATE;
  next_hash := access.audit_hash(head.hash, head.seq + 1, access.now(), what, who, act, client, object);
  INSERT INTO public.audit VALUES (head.seq + 1, access.now(), what, who, act, client, object, head.hash, next_hash);
  UPDATE access.audit_head SET seq = head.seq + 1, hash = next_hash;
END $$;


ALTER FUNCTION access.audit(act text, client uuid, object uuid) OWNER TO leeward_owner;

--
-- Name: audit_hash(bytea, bigint, timestamp with time zone, text, uuid, text, uuid, uuid); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.audit_hash(previous bytea, seq bigint, at timestamp with time zone, kind text, member uuid, act text, client uuid, object uuid) RETURNS bytea
    LANGUAGE sql IMMUTABLE
    AS $$
  SELECT sha256(previous || convert_to(concat_ws('|', seq, extract(epoch FROM at), kind, coalesce(member::text, '-'), act,
    coalesce(client::text, '-'), coalesce(object::text, '-')), 'UTF8')) $$;


ALTER FUNCTION access.audit_hash(previous bytea, seq bigint, at timestamp with time zone, kind text, member uuid, act text, client uuid, object uuid) OWNER TO leeward_owner;

--
-- Name: begin_ceremony(bytea, jsonb); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.begin_ceremony(hash bytea, ceremony jsonb) RETURNS void
    LANGUAGE sql SECURITY DEFINER
    SET search_path TO ''
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
    SET search_path TO ''
    AS $$
  SELECT c.member_id, c.client_id, c.since, c.until FROM access.care_link c
  WHERE c.member_id = (SELECT access.me()) OR (SELECT access.has_role('lead')) $$;


ALTER FUNCTION access.care_links() OWNER TO leeward_owner;

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
-- Name: close_signin(uuid); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.close_signin(which uuid) RETURNS boolean
    LANGUAGE plpgsql SECURITY DEFINER
    SET search_path TO ''
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
  RETURN asked.closed_at IS NULL OR asked.closed_why = 'refused';
END $$;


ALTER FUNCTION access.decide_seat(which uuid, wanted uuid, move boolean) OWNER TO leeward_owner;

--
-- Name: demo_member(text); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.demo_member(wanted text) RETURNS uuid
    LANGUAGE sql STABLE SECURITY DEFINER
    SET search_path TO ''
    AS $$
  SELECT m.id FROM access.member m JOIN public.practice p ON p.demo
  WHERE m.left_at IS NULL AND wanted = ANY (m.roles) ORDER BY m.joined_at, m.name LIMIT 1 $$;


ALTER FUNCTION access.demo_member(wanted text) OWNER TO leeward_owner;

--
-- Name: end_ceremony(bytea); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.end_ceremony(hash bytea) RETURNS jsonb
    LANGUAGE sql SECURITY DEFINER
    SET search_path TO ''
    AS $$ DELETE FROM access.ceremony WHERE token_hash = hash AND ends_at > access.now() RETURNING state $$;


ALTER FUNCTION access.end_ceremony(hash bytea) OWNER TO leeward_owner;

--
-- Name: end_membership(uuid); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.end_membership(who uuid) RETURNS SETOF uuid
    LANGUAGE plpgsql SECURITY DEFINER
    SET search_path TO ''
    AS $$
BEGIN
  IF NOT access.has_role('administrator') OR who = access.me() THEN
    RAISE EXCEPTION 'not allowed to end this membership' USING ERRCODE = 'insufficient_privilege';
  END IF;
  UPDATE access.member SET left_at = access.now() WHERE id = who AND left_at IS NULL;
  UPDATE access.invitation SET ends_at = access.now()
  WHERE (made_by = who OR member_id = who) AND spent_at IS NULL AND ends_at > access.now();
  RETURN QUERY UPDATE access.signin SET closed_at = access.now() WHERE member_id = who AND closed_at IS NULL RETURNING id;
END $$;


ALTER FUNCTION access.end_membership(who uuid) OWNER TO leeward_owner;

--
-- Name: has_role(text); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.has_role(wanted text) RETURNS boolean
    LANGUAGE plpgsql STABLE SECURITY DEFINER
    SET search_path TO ''
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
    SET search_path TO ''
    AS $$
  SELECT i.token_hash, i.name, i.roles, i.made_at, i.ends_at FROM access.invitation i
  WHERE access.has_role('administrator') AND i.member_id IS NULL AND i.spent_at IS NULL AND i.ends_at > access.now() ORDER BY i.made_at $$;


ALTER FUNCTION access.invitations() OWNER TO leeward_owner;

--
-- Name: invite(bytea, uuid, text, text[], timestamp with time zone); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.invite(hash bytea, for_member uuid, for_name text, for_roles text[], until timestamp with time zone) RETURNS void
    LANGUAGE plpgsql SECURITY DEFINER
    SET search_path TO ''
    AS $$
BEGIN
  IF NOT (access.has_role('administrator') OR session_user = current_user OR (for_member IS NOT NULL AND for_member = access.me())) THEN
    RAISE EXCEPTION 'not allowed to invite' USING ERRCODE = 'insufficient_privilege';
  END IF;
  INSERT INTO access.invitation (token_hash, member_id, name, roles, made_by, made_at, ends_at)
  VALUES (hash, for_member, for_name, for_roles, access.me(), access.now(), until);
END $$;


ALTER FUNCTION access.invite(hash bytea, for_member uuid, for_name text, for_roles text[], until timestamp with time zone) OWNER TO leeward_owner;

--
-- Name: is_owner(); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.is_owner() RETURNS boolean
    LANGUAGE sql STABLE
    AS $$ SELECT current_user = (SELECT pg_get_userbyid(nspowner) FROM pg_namespace WHERE nspname = 'access') $$;


ALTER FUNCTION access.is_owner() OWNER TO leeward_owner;

--
-- Name: keep_gate(); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.keep_gate() RETURNS trigger
    LANGUAGE plpgsql SECURITY DEFINER
    SET search_path TO ''
    AS $$
BEGIN
  INSERT INTO access.gate (session_id, client_id, ended_at) VALUES (NEW.id, NEW.client_id, NEW.ended_at)
  ON CONFLICT (session_id) DO UPDATE SET ended_at = EXCLUDED.ended_at;
  RETURN NULL;
END $$;


ALTER FUNCTION access.keep_gate() OWNER TO leeward_owner;

--
-- Name: kind(); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.kind() RETURNS text
    LANGUAGE sql STABLE
    AS $$ SELECT nullif(current_setting('leeward.kind', true), '') $$;


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
-- Name: me(); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.me() RETURNS uuid
    LANGUAGE plpgsql STABLE SECURITY DEFINER
    SET search_path TO ''
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
    SET search_path TO ''
    AS $$
  SELECT m.id, m.name, m.roles, m.joined_at, m.left_at, (SELECT count(*) FROM access.passkey p WHERE p.member_id = m.id)
  FROM access.member m WHERE access.me() IS NOT NULL ORDER BY m.name $$;


ALTER FUNCTION access.members() OWNER TO leeward_owner;

--
-- Name: mint_code(uuid, text); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.mint_code(which uuid, phc text) RETURNS boolean
    LANGUAGE plpgsql SECURITY DEFINER
    SET search_path TO ''
    AS $$
BEGIN
  IF NOT access.treats_session(which) THEN RETURN false; END IF;
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
    SET search_path TO ''
    AS $$
BEGIN
  IF NOT access.treats_session(which) THEN
    RAISE EXCEPTION 'not allowed to make a link' USING ERRCODE = 'insufficient_privilege';
  END IF;
  UPDATE access.join_link SET revoked_at = access.now() WHERE session_id = which AND revoked_at IS NULL;
  INSERT INTO access.join_link (id, token_hash, session_id, made_at, ends_at, code_phc, code_ends_at)
  VALUES (link_id, hash, which, access.now(), until, phc, access.now() + interval '10 minutes');
END $$;


ALTER FUNCTION access.mint_link(link_id uuid, hash bytea, which uuid, until timestamp with time zone, phc text) OWNER TO leeward_owner;

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
  RETURN QUERY SELECT client_id FROM access.care_link WHERE member_id = who AND until IS NULL;
END $$;


ALTER FUNCTION access.my_clients() OWNER TO leeward_owner;

--
-- Name: my_late_seat(); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.my_late_seat() RETURNS uuid
    LANGUAGE plpgsql STABLE SECURITY DEFINER
    SET search_path TO ''
    AS $$ BEGIN RETURN access.seat_within(interval '15 minutes'); END $$;


ALTER FUNCTION access.my_late_seat() OWNER TO leeward_owner;

--
-- Name: my_passkeys(); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.my_passkeys() RETURNS TABLE(id uuid, label text, synced boolean, added_at timestamp with time zone, used_at timestamp with time zone)
    LANGUAGE sql STABLE SECURITY DEFINER
    SET search_path TO ''
    AS $$
  SELECT p.id, p.label, coalesce((p.passkey #>> '{cred,backup_eligible}')::boolean, false), p.added_at, p.used_at
  FROM access.passkey p WHERE p.member_id = access.me() ORDER BY p.added_at $$;


ALTER FUNCTION access.my_passkeys() OWNER TO leeward_owner;

--
-- Name: my_rehearsal(); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.my_rehearsal() RETURNS uuid
    LANGUAGE plpgsql SECURITY DEFINER
    SET search_path TO ''
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
    SET search_path TO ''
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
    SET search_path TO ''
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
    SET search_path TO ''
    AS $$ BEGIN RETURN access.seat_within(interval '0'); END $$;


ALTER FUNCTION access.my_seat() OWNER TO leeward_owner;

--
-- Name: my_signin(); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.my_signin() RETURNS uuid
    LANGUAGE plpgsql STABLE SECURITY DEFINER
    SET search_path TO ''
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
    SET search_path TO ''
    AS $$
  SELECT s.id, s.device, s.opened_at, s.seen_at FROM access.signin s
  WHERE s.member_id = access.me() AND s.closed_at IS NULL AND s.ends_at > access.now()
    AND s.seen_at > access.now() - interval '30 minutes' ORDER BY s.opened_at DESC $$;


ALTER FUNCTION access.my_signins() OWNER TO leeward_owner;

--
-- Name: now(); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.now() RETURNS timestamp with time zone
    LANGUAGE sql STABLE
    AS $$ SELECT nullif(current_setting('leeward.now', true), '')::timestamptz $$;


ALTER FUNCTION access.now() OWNER TO leeward_owner;

--
-- Name: open_invitation(bytea); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.open_invitation(hash bytea) RETURNS TABLE(member_id uuid, name text, roles text[])
    LANGUAGE sql STABLE SECURITY DEFINER
    SET search_path TO ''
    AS $$
  SELECT i.member_id, i.name, i.roles FROM access.invitation i
  WHERE i.token_hash = hash AND i.spent_at IS NULL AND i.ends_at > access.now() $$;


ALTER FUNCTION access.open_invitation(hash bytea) OWNER TO leeward_owner;

--
-- Name: open_room(bytea, uuid); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.open_room(hash bytea, which uuid) RETURNS boolean
    LANGUAGE plpgsql SECURITY DEFINER
    SET search_path TO ''
    AS $$
BEGIN
  IF NOT (access.treats_session(which) OR access.my_seat() = which) THEN RETURN false; END IF;
  DELETE FROM access.room_token WHERE ends_at <= access.now();
  INSERT INTO access.room_token VALUES (hash, which, access.now() + interval '24 hours');
  RETURN true;
END $$;


ALTER FUNCTION access.open_room(hash bytea, which uuid) OWNER TO leeward_owner;

--
-- Name: open_signin(uuid, bytea, uuid, text); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.open_signin(signin_id uuid, hash bytea, who uuid, on_device text) RETURNS void
    LANGUAGE sql SECURITY DEFINER
    SET search_path TO ''
    AS $$
  INSERT INTO access.signin (id, token_hash, member_id, device, opened_at, seen_at, ends_at)
  SELECT signin_id, hash, m.id, on_device, access.now(), access.now(), access.now() + interval '12 hours'
  FROM access.member m WHERE m.id = who AND m.left_at IS NULL $$;


ALTER FUNCTION access.open_signin(signin_id uuid, hash bytea, who uuid, on_device text) OWNER TO leeward_owner;

--
-- Name: passkey_used(uuid, jsonb); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.passkey_used(which uuid, newer jsonb) RETURNS void
    LANGUAGE sql SECURITY DEFINER
    SET search_path TO ''
    AS $$ UPDATE access.passkey SET passkey = newer, used_at = access.now() WHERE id = which $$;


ALTER FUNCTION access.passkey_used(which uuid, newer jsonb) OWNER TO leeward_owner;

--
-- Name: passkeys_of(uuid); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.passkeys_of(who uuid) RETURNS TABLE(id uuid, passkey jsonb)
    LANGUAGE sql STABLE SECURITY DEFINER
    SET search_path TO ''
    AS $$
  SELECT p.id, p.passkey FROM access.passkey p JOIN access.member m ON m.id = p.member_id
  WHERE p.member_id = who AND m.left_at IS NULL $$;


ALTER FUNCTION access.passkeys_of(who uuid) OWNER TO leeward_owner;

--
-- Name: rehearsals(); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.rehearsals() RETURNS SETOF uuid
    LANGUAGE sql STABLE SECURITY DEFINER
    SET search_path TO ''
    AS $$ SELECT client_id FROM access.rehearsal $$;


ALTER FUNCTION access.rehearsals() OWNER TO leeward_owner;

--
-- Name: remove_passkey(uuid); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.remove_passkey(which uuid) RETURNS boolean
    LANGUAGE plpgsql SECURITY DEFINER
    SET search_path TO ''
    AS $$
BEGIN
  PERFORM FROM access.member WHERE id = access.me() FOR UPDATE;
  DELETE FROM access.passkey p WHERE p.id = which AND p.member_id = access.me()
    AND (SELECT count(*) FROM access.passkey o WHERE o.member_id = access.me()) > 1;
  RETURN FOUND;
END $$;


ALTER FUNCTION access.remove_passkey(which uuid) OWNER TO leeward_owner;

--
-- Name: schema_version(); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.schema_version() RETURNS bigint
    LANGUAGE plpgsql STABLE SECURITY DEFINER
    SET search_path TO ''
    AS $$ BEGIN RETURN (SELECT coalesce(max(version), 0) FROM public._sqlx_migrations WHERE success); END $$;


ALTER FUNCTION access.schema_version() OWNER TO leeward_owner;

--
-- Name: seat_rehearses(); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.seat_rehearses() RETURNS boolean
    LANGUAGE sql STABLE SECURITY DEFINER
    SET search_path TO ''
    AS $$
  SELECT EXISTS (SELECT FROM access.seat s JOIN access.gate g USING (session_id) JOIN access.rehearsal r USING (client_id)
    WHERE access.kind() = 'seat' AND s.token_hash = access.token_hash()) $$;


ALTER FUNCTION access.seat_rehearses() OWNER TO leeward_owner;

--
-- Name: seat_state(); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.seat_state() RETURNS TABLE(seat_id uuid, session_id uuid, state text)
    LANGUAGE sql STABLE SECURITY DEFINER
    SET search_path TO ''
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
    SET search_path TO ''
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
    CASE WHEN s.closed_at IS NOT NULL THEN 'left' WHEN s.taken_at IS NULL THEN 'asked' WHEN s.admitted_at IS NULL THEN 'taken' ELSE 'admitted' END
  FROM access.seat s
  WHERE s.session_id = which AND (s.closed_at IS NULL OR (s.closed_why = 'left'
    AND s.asked_no = (SELECT max(l.asked_no) FROM access.seat l WHERE l.session_id = which AND l.taken_at IS NOT NULL)))
  ORDER BY s.asked_no;
END $$;


ALTER FUNCTION access.seats(which uuid) OWNER TO leeward_owner;

--
-- Name: take_on(uuid, uuid); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.take_on(link_id uuid, client uuid) RETURNS void
    LANGUAGE plpgsql SECURITY DEFINER
    SET search_path TO ''
    AS $$
BEGIN
  IF NOT access.has_role('clinician') OR EXISTS (SELECT FROM access.care_link WHERE client_id = client) THEN
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
    SET search_path TO ''
    AS $$
BEGIN
  PERFORM access.take_on(link_id, client);
  INSERT INTO access.rehearsal VALUES (access.me(), client);
END $$;


ALTER FUNCTION access.take_on_rehearsal(link_id uuid, client uuid) OWNER TO leeward_owner;

--
-- Name: token_hash(); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.token_hash() RETURNS bytea
    LANGUAGE sql STABLE
    AS $$ SELECT sha256(decode(nullif(current_setting('leeward.token', true), ''), 'hex')) $$;


ALTER FUNCTION access.token_hash() OWNER TO leeward_owner;

--
-- Name: touch_signin(); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.touch_signin() RETURNS void
    LANGUAGE sql SECURITY DEFINER
    SET search_path TO ''
    AS $$ UPDATE access.signin SET seen_at = access.now() WHERE id = access.my_signin() AND seen_at < access.now() - interval '1 minute' $$;


ALTER FUNCTION access.touch_signin() OWNER TO leeward_owner;

--
-- Name: treats_session(uuid); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.treats_session(which uuid) RETURNS boolean
    LANGUAGE sql STABLE SECURITY DEFINER
    SET search_path TO ''
    AS $$ SELECT EXISTS (SELECT FROM access.gate WHERE session_id = which AND client_id IN (SELECT access.my_clients())) $$;


ALTER FUNCTION access.treats_session(which uuid) OWNER TO leeward_owner;

--
-- Name: try_code(bytea); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.try_code(hash bytea) RETURNS TABLE(link_id uuid, session_id uuid, phc text)
    LANGUAGE sql SECURITY DEFINER
    SET search_path TO ''
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
    SET search_path TO ''
    AS $$
  SELECT (SELECT access.my_signin()), m.id, m.name, m.roles, (SELECT count(*) FROM access.passkey p WHERE p.member_id = m.id)
  FROM access.member m WHERE m.id = (SELECT access.me()) $$;


ALTER FUNCTION access.whoami() OWNER TO leeward_owner;

--
-- Name: withdraw_invitation(bytea); Type: FUNCTION; Schema: access; Owner: leeward_owner
--

CREATE FUNCTION access.withdraw_invitation(which bytea) RETURNS boolean
    LANGUAGE plpgsql SECURITY DEFINER
    SET search_path TO ''
    AS $$
BEGIN
  UPDATE access.invitation SET ends_at = access.now()
  WHERE access.has_role('administrator') AND token_hash = which AND member_id IS NULL AND spent_at IS NULL AND ends_at > access.now();
  RETURN FOUND;
END $$;


ALTER FUNCTION access.withdraw_invitation(which bytea) OWNER TO leeward_owner;

--
-- Name: first_asked_at(uuid); Type: FUNCTION; Schema: public; Owner: leeward_owner
--

CREATE FUNCTION public.first_asked_at(corrected uuid) RETURNS timestamp with time zone
    LANGUAGE sql STABLE
    SET search_path TO ''
    AS $$
  WITH RECURSIVE earlier AS (
    SELECT e.replaces, e.at FROM public.rating e WHERE e.id = corrected
    UNION ALL SELECT e.replaces, e.at FROM earlier JOIN public.rating e ON e.id = earlier.replaces)
  SELECT at FROM earlier WHERE replaces IS NULL $$;


ALTER FUNCTION public.first_asked_at(corrected uuid) OWNER TO leeward_owner;

SET default_tablespace = '';

SET default_table_access_method = heap;

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
    until timestamp with time zone
);


ALTER TABLE access.care_link OWNER TO leeward_owner;

--
-- Name: ceremony; Type: TABLE; Schema: access; Owner: leeward_owner
--

CREATE TABLE access.ceremony (
    token_hash bytea NOT NULL,
    state jsonb NOT NULL,
    ends_at timestamp with time zone NOT NULL
);


ALTER TABLE access.ceremony OWNER TO leeward_owner;

--
-- Name: gate; Type: TABLE; Schema: access; Owner: leeward_owner
--

CREATE TABLE access.gate (
    session_id uuid NOT NULL,
    client_id uuid NOT NULL,
    ended_at timestamp with time zone
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
    spent_at timestamp with time zone
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
    code_spent_at timestamp with time zone
);


ALTER TABLE access.join_link OWNER TO leeward_owner;

--
-- Name: member; Type: TABLE; Schema: access; Owner: leeward_owner
--

CREATE TABLE access.member (
    id uuid NOT NULL,
    name text NOT NULL,
    roles text[] NOT NULL,
    joined_at timestamp with time zone NOT NULL,
    left_at timestamp with time zone,
    CONSTRAINT member_name_check CHECK (((length(name) >= 1) AND (length(name) <= 120))),
    CONSTRAINT member_roles_check CHECK (((roles <@ ARRAY['clinician'::text, 'lead'::text, 'administrator'::text]) AND (cardinality(roles) > 0)))
);


ALTER TABLE access.member OWNER TO leeward_owner;

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
    used_at timestamp with time zone
);


ALTER TABLE access.passkey OWNER TO leeward_owner;

--
-- Name: rehearsal; Type: TABLE; Schema: access; Owner: leeward_owner
--

CREATE TABLE access.rehearsal (
    member_id uuid NOT NULL,
    client_id uuid NOT NULL
);


ALTER TABLE access.rehearsal OWNER TO leeward_owner;

--
-- Name: request_key; Type: TABLE; Schema: access; Owner: leeward_owner
--

CREATE TABLE access.request_key (
    member_id uuid NOT NULL,
    key uuid NOT NULL,
    act text NOT NULL,
    body bytea NOT NULL,
    answer text,
    kept_at timestamp with time zone NOT NULL
);


ALTER TABLE access.request_key OWNER TO leeward_owner;

--
-- Name: room_token; Type: TABLE; Schema: access; Owner: leeward_owner
--

CREATE TABLE access.room_token (
    token_hash bytea NOT NULL,
    session_id uuid NOT NULL,
    ends_at timestamp with time zone NOT NULL
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
    CONSTRAINT seat_closed_why_check CHECK ((closed_why = ANY (ARRAY['left'::text, 'moved'::text, 'refused'::text, 'joined_again'::text])))
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
    closed_at timestamp with time zone
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
    hash bytea NOT NULL
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
    CONSTRAINT client_eye_condition_check CHECK ((eye_condition = ANY (ARRAY['not_asked'::text, 'no'::text, 'yes'::text]))),
    CONSTRAINT client_seizures_check CHECK ((seizures = ANY (ARRAY['not_asked'::text, 'no'::text, 'yes'::text]))),
    CONSTRAINT client_version_check CHECK ((version > 0))
);

ALTER TABLE ONLY public.client FORCE ROW LEVEL SECURITY;


ALTER TABLE public.client OWNER TO leeward_owner;

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
    CONSTRAINT comfort_version_check CHECK ((version > 0))
);

ALTER TABLE ONLY public.comfort FORCE ROW LEVEL SECURITY;


ALTER TABLE public.comfort OWNER TO leeward_owner;

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
    CONSTRAINT practice_singleton_check CHECK (singleton)
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
    CONSTRAINT preset_check CHECK ((eyes OR ears OR hands)),
    CONSTRAINT preset_check1 CHECK (((purpose <> 'calm_place'::text) OR ((cycles IS NOT NULL) AND (cycles <= 12) AND (rate <= (1)::double precision)))),
    CONSTRAINT preset_cycles_check CHECK (((cycles >= 1) AND (cycles <= 200))),
    CONSTRAINT preset_name_check CHECK (((length(name) >= 1) AND (length(name) <= 40))),
    CONSTRAINT preset_purpose_check CHECK ((purpose = ANY (ARRAY['processing'::text, 'calm_place'::text]))),
    CONSTRAINT preset_rate_check CHECK (((rate >= (0.3)::double precision) AND (rate <= (2)::double precision))),
    CONSTRAINT preset_version_check CHECK ((version > 0)),
    CONSTRAINT preset_width_check CHECK (((width >= (2)::double precision) AND (width <= (40)::double precision)))
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
    change text,
    words bytea,
    replaces uuid,
    entered_by uuid NOT NULL,
    at timestamp with time zone NOT NULL,
    CONSTRAINT process_note_change_check CHECK ((change = ANY (ARRAY['changing'::text, 'same'::text, 'settled'::text]))),
    CONSTRAINT process_note_check CHECK (((change IS NOT NULL) OR (words IS NOT NULL) OR (replaces IS NOT NULL))),
    CONSTRAINT process_note_moment_check CHECK ((moment = ANY (ARRAY['assessment'::text, 'after_set'::text, 'back_at_target'::text, 'installation'::text, 'closing'::text, 'reevaluation'::text])))
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
    CONSTRAINT rating_check CHECK (((value IS NOT NULL) OR (replaces IS NOT NULL))),
    CONSTRAINT rating_check1 CHECK ((((scale = 'sud'::text) AND ((value >= 0) AND (value <= 10))) OR ((scale = 'voc'::text) AND ((value >= 1) AND (value <= 7))) OR (value IS NULL))),
    CONSTRAINT rating_moment_check CHECK ((moment = ANY (ARRAY['assessment'::text, 'after_set'::text, 'back_at_target'::text, 'installation'::text, 'closing'::text, 'reevaluation'::text]))),
    CONSTRAINT rating_scale_check CHECK ((scale = ANY (ARRAY['sud'::text, 'voc'::text])))
);

ALTER TABLE ONLY public.rating FORCE ROW LEVEL SECURITY;


ALTER TABLE public.rating OWNER TO leeward_owner;

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
    CONSTRAINT session_closing_check CHECK ((closing = ANY (ARRAY['complete'::text, 'incomplete'::text, 'no_reprocessing'::text]))),
    CONSTRAINT session_number_check CHECK ((number > 0)),
    CONSTRAINT session_room_epoch_check CHECK ((room_epoch >= 0)),
    CONSTRAINT session_version_check CHECK ((version > 0))
);

ALTER TABLE ONLY public.session FORCE ROW LEVEL SECURITY;


ALTER TABLE public.session OWNER TO leeward_owner;

--
-- Name: session_moment; Type: TABLE; Schema: public; Owner: leeward_owner
--

CREATE TABLE public.session_moment (
    id bigint NOT NULL,
    session_id uuid NOT NULL,
    client_id uuid NOT NULL,
    kind text NOT NULL,
    at timestamp with time zone NOT NULL,
    once uuid
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
    CONSTRAINT session_words_version_check CHECK ((version > 0))
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
    recorded_at timestamp with time zone NOT NULL
);

ALTER TABLE ONLY public.set_order FORCE ROW LEVEL SECURITY;


ALTER TABLE public.set_order OWNER TO leeward_owner;

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
    CONSTRAINT stimulus_set_number_check CHECK ((number > 0))
);

ALTER TABLE ONLY public.stimulus_set FORCE ROW LEVEL SECURITY;


ALTER TABLE public.stimulus_set OWNER TO leeward_owner;

--
-- Name: set_outcome; Type: VIEW; Schema: public; Owner: leeward_owner
--

CREATE VIEW public.set_outcome WITH (security_invoker='true') AS
 SELECT s.id AS set_id,
    s.session_id,
    s.client_id,
    COALESCE(( SELECT e.ending
           FROM public.set_evidence e
          WHERE ((e.set_id = s.id) AND (e.kind = 'rested'::text))
          ORDER BY e.seq
         LIMIT 1), ( SELECT e.ending
           FROM public.set_ending e
          WHERE ((e.set_id = s.id) AND (e.ending <> 'unknown'::text))
          ORDER BY (e.witness = 'room'::text) DESC
         LIMIT 1),
        CASE
            WHEN ((s.epoch < n.room_epoch) OR (n.ended_at IS NOT NULL)) THEN 'unknown'::text
            ELSE NULL::text
        END) AS ending
   FROM (public.stimulus_set s
     LEFT JOIN public.session n ON ((n.id = s.session_id)));


ALTER TABLE public.set_outcome OWNER TO leeward_owner;

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
        CASE
            WHEN (r.replaces IS NULL) THEN r.at
            ELSE public.first_asked_at(r.replaces)
        END AS asked_at
   FROM public.rating r
  WHERE ((r.value IS NOT NULL) AND (NOT (EXISTS ( SELECT
           FROM public.rating later
          WHERE (later.replaces = r.id)))));


ALTER TABLE public.standing_rating OWNER TO leeward_owner;

--
-- Name: target; Type: TABLE; Schema: public; Owner: leeward_owner
--

CREATE TABLE public.target (
    id uuid NOT NULL,
    client_id uuid NOT NULL,
    number integer NOT NULL,
    prong text NOT NULL,
    status text NOT NULL,
    opened_at timestamp with time zone NOT NULL,
    archived_at timestamp with time zone,
    version integer NOT NULL,
    CONSTRAINT target_number_check CHECK ((number > 0)),
    CONSTRAINT target_prong_check CHECK ((prong = ANY (ARRAY['past'::text, 'present'::text, 'future'::text]))),
    CONSTRAINT target_status_check CHECK ((status = ANY (ARRAY['planned'::text, 'active'::text, 'incomplete'::text, 'complete'::text, 'reopened'::text]))),
    CONSTRAINT target_version_check CHECK ((version > 0))
);

ALTER TABLE ONLY public.target FORCE ROW LEVEL SECURITY;


ALTER TABLE public.target OWNER TO leeward_owner;

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
-- Data for Name: audit_head; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.audit_head (singleton, seq, hash) FROM stdin;
t	29	\\xaeddab83f4db5fd640d8b4e71d679b64546dd9652643c02e106bda607373dcdc
\.


--
-- Data for Name: care_link; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.care_link (id, member_id, client_id, since, until) FROM stdin;
c08bddbc-75d2-410b-a845-6b4cb985c0d4	9b0a3581-900a-489b-a164-04840d9f55d6	874f4bc4-40ce-4fe9-b6c8-9d6cdcddfc3d	2026-03-03 09:00:00+00	\N
44b3c19f-652d-40f3-a6a9-bef36bb1ecec	9b0a3581-900a-489b-a164-04840d9f55d6	758225e3-2544-4570-8f7b-b88ea8e32997	2026-03-10 09:02:43+00	\N
c5371b7b-f5bd-4264-96fa-acbcaae01dd0	9b0a3581-900a-489b-a164-04840d9f55d6	32facb48-5a59-4eee-bcf4-0238d661672b	2026-03-10 09:02:43+00	\N
\.


--
-- Data for Name: ceremony; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.ceremony (token_hash, state, ends_at) FROM stdin;
\.


--
-- Data for Name: gate; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.gate (session_id, client_id, ended_at) FROM stdin;
e4de4cf8-ba56-430b-acb0-9640935b85a0	874f4bc4-40ce-4fe9-b6c8-9d6cdcddfc3d	2026-03-03 09:02:38+00
d61efa86-6e94-4545-9965-e8f50f34e7ee	874f4bc4-40ce-4fe9-b6c8-9d6cdcddfc3d	\N
cb928cfd-cc55-4c15-8c57-5f79b26963cd	758225e3-2544-4570-8f7b-b88ea8e32997	\N
\.


--
-- Data for Name: invitation; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.invitation (token_hash, member_id, name, roles, made_by, made_at, ends_at, spent_at) FROM stdin;
\\xa93995936ed1f42a1ca44807435848426a09dae06e879d6fcfb8f0efab99cba4	\N	Somebody New	{lead}	46e085e3-49e1-47f3-bba1-318d20f4fbbd	2026-03-03 09:01:00+00	2026-03-06 09:01:00+00	\N
\.


--
-- Data for Name: join_link; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.join_link (id, token_hash, session_id, made_at, ends_at, revoked_at, code_phc, code_ends_at, code_tries, code_spent_at) FROM stdin;
aeb79c1d-0cfc-45da-b70f-7eab0a9ad9b7	\\x570084286c3d5e3536f94ef02b9b1bddd85e38a82a4cd95bddcc6bbbf51d1895	d61efa86-6e94-4545-9965-e8f50f34e7ee	2026-03-10 09:02:38+00	2026-03-10 13:02:38+00	\N	$argon2id$v=19$m=19456,t=2,p=1$YXn1JxXj6p8g8/hb2lbySA$vkxvMVHw0m8PL6tE7xEwJEg5dVMYrF1Zpdi2dpj9vp8	2026-03-10 09:12:38+00	1	2026-03-10 09:02:43+00
\.


--
-- Data for Name: member; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.member (id, name, roles, joined_at, left_at) FROM stdin;
9b0a3581-900a-489b-a164-04840d9f55d6	Member 9b0a35	{clinician}	2026-03-03 09:00:00+00	\N
5d65e049-9c25-40bd-9acf-324f1d424866	Member 5d65e0	{lead}	2026-03-03 09:01:00+00	\N
46e085e3-49e1-47f3-bba1-318d20f4fbbd	Member 46e085	{administrator}	2026-03-03 09:01:00+00	\N
\.


--
-- Data for Name: passkey; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.passkey (id, member_id, credential_id, passkey, label, added_at, used_at) FROM stdin;
\.


--
-- Data for Name: rehearsal; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.rehearsal (member_id, client_id) FROM stdin;
9b0a3581-900a-489b-a164-04840d9f55d6	758225e3-2544-4570-8f7b-b88ea8e32997
\.


--
-- Data for Name: request_key; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.request_key (member_id, key, act, body, answer, kept_at) FROM stdin;
\.


--
-- Data for Name: room_token; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.room_token (token_hash, session_id, ends_at) FROM stdin;
\\x3cff4c1d7638b50def6bdd776fcfca3bd63bfea2ca13977f0d34adfa12d8f532	e4de4cf8-ba56-430b-acb0-9640935b85a0	2026-03-04 09:01:00+00
\\x176c9a00b8b32b654458f53f6618e57042de34f938e6c66fa3df753f3c70d77d	e4de4cf8-ba56-430b-acb0-9640935b85a0	2026-03-04 09:01:30+00
\\xb9faad28cde046ea01176111136034dd14844c4f8ad0f98b8cf97d485ffe6d2c	e4de4cf8-ba56-430b-acb0-9640935b85a0	2026-03-04 09:02:00+00
\.


--
-- Data for Name: seat; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.seat (id, token_hash, link_id, session_id, device, asked_at, taken_at, closed_at, asked_no, admitted_at, closed_why) FROM stdin;
a787078d-0a0e-41ab-8f02-a5d6541294ba	\\xb491add67c26321449342ac497f34e694888dbd1ed87a563404da7ec00d96854	aeb79c1d-0cfc-45da-b70f-7eab0a9ad9b7	d61efa86-6e94-4545-9965-e8f50f34e7ee	device	2026-03-10 09:02:43+00	\N	\N	2	\N	\N
20a98e16-f33c-4aa3-a929-3ae9a10a272e	\\xb5ac03136bbb78adadc3942af5c4a1f07cfc86ecce79c48ae89e498468716181	aeb79c1d-0cfc-45da-b70f-7eab0a9ad9b7	d61efa86-6e94-4545-9965-e8f50f34e7ee	device	2026-03-10 09:02:38+00	2026-03-10 09:02:38+00	\N	1	2026-03-10 09:02:38+00	\N
\.


--
-- Data for Name: signin; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.signin (id, token_hash, member_id, device, opened_at, seen_at, ends_at, closed_at) FROM stdin;
6b1705a9-31dc-4956-950a-7eaddc957cc5	\\x63c1d36f86ff60cf4ecef0752226e866eb8bdd1b2bae67b7849e53ee0535ca44	5d65e049-9c25-40bd-9acf-324f1d424866	a test	2026-03-03 09:01:00+00	2026-03-03 09:01:00+00	2026-03-03 21:01:00+00	\N
fb799953-38e9-4c6e-8c80-cc6208eb9054	\\xb47355dc11b9d03fe5561b29e3ed3c6a207e5a643cabdc83b5351644c33c6ae9	46e085e3-49e1-47f3-bba1-318d20f4fbbd	a test	2026-03-03 09:01:00+00	2026-03-03 09:01:00+00	2026-03-03 21:01:00+00	\N
d2d27173-39f9-42ba-be1d-debdc8620b66	\\x6653a1ae0766ea2151143e6cbd915e2c801894c04f85cb5fd6270d41647ba79e	9b0a3581-900a-489b-a164-04840d9f55d6	a test	2026-03-03 09:00:00+00	2026-03-03 09:02:31+00	2026-03-03 21:00:00+00	\N
6a13a57a-d4b1-4928-b2f9-4a48fbe43aa7	\\x13c45f4dd7c6730e1ac622eee8008946124ad64ae90aacd4e4c92f97ef683af2	9b0a3581-900a-489b-a164-04840d9f55d6	a test	2026-03-10 09:02:38+00	2026-03-10 09:02:38+00	2026-03-10 21:02:38+00	\N
\.


--
-- Data for Name: _sqlx_migrations; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public._sqlx_migrations (version, description, installed_on, success, checksum, execution_time) FROM stdin;
1	access	2026-11-28 08:39:41.643571+00	t	\\xee58a96d68f93385e2e3af6d4390382fcafdadee1b3238242b344c60c94a8a4273a40010f4ba1d66f24207ad6aa82776	55168858
2	acts	2026-11-28 08:39:41.700232+00	t	\\x0f1c508e40ba3792e8e2c58fc8d185e11836f9b1edbc9ee5e6fc9a92df9e176255b3f22d035b99a39cacc5519227d601	14947820
3	audit	2026-11-28 08:39:41.716287+00	t	\\x2dcb585f14b456aae15b0d06e9e436a1575c0781ae10803bee3b70623ac409a8962de276d2dcd3a58ef61135aed43953	13874076
4	records	2026-11-28 08:39:41.730805+00	t	\\x9c4ec09ed84e6bff571cb8c4e9522c0282f285dad35065f146b0b53be2e4bac359f321e4dcfa97ba7635f5070af5291c	19653404
5	sessions	2026-11-28 08:39:41.751077+00	t	\\x3013bebd83db0d46eca7767511705f52abb32a744ff204f5bdcb3afb063c1a18464207dd188aa4c42cd742db6aff73a7	49881100
6	standing ratings	2026-11-28 08:39:41.801767+00	t	\\xa43c139ae2899d8e1dc400509333c23cb35febf1c311c95315c815ad8f5786811785868cfde2df96ad491c1e641366e6	2656604
7	preparation	2026-11-28 08:39:41.804941+00	t	\\x4039cb17dce2ac0b1a5c9987dfad7b5d9423a5d32f43e2faaf08827b835146f0e59d31276bd09283dad5a4c90562ba0b	14343364
8	kept once	2026-11-28 09:00:00+00	t	\\xe127621eaa8d28ce25c37396363f914cbc8bf50c61eb3e086ca8f6f279ee945eb2403ea2402783472868733728cbc2f5	0
\.


--
-- Data for Name: audit; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.audit (seq, at, kind, member_id, act, client_id, object_id, previous, hash) FROM stdin;
1	2026-03-03 09:00:00+00	member	9b0a3581-900a-489b-a164-04840d9f55d6	client.create	874f4bc4-40ce-4fe9-b6c8-9d6cdcddfc3d	\N	\\x1049f89a5ef4bff11e67b37b9945096f203ea0c09e92a8bc7dc4a04461f6529f	\\xdee59a400e00d9ffe4f2200f3fe242a93506b0f725f4b8b7bfc6c2489de65284
2	2026-03-03 09:00:00+00	member	9b0a3581-900a-489b-a164-04840d9f55d6	target.create	874f4bc4-40ce-4fe9-b6c8-9d6cdcddfc3d	062c4abf-696e-49ad-899f-e86edec0a531	\\xdee59a400e00d9ffe4f2200f3fe242a93506b0f725f4b8b7bfc6c2489de65284	\\xa3867c23111a6b4f463314ad9a5e7c1133c968a2cf993c76a04e9e6cc6489d8a
3	2026-03-03 09:01:00+00	member	9b0a3581-900a-489b-a164-04840d9f55d6	session.open	874f4bc4-40ce-4fe9-b6c8-9d6cdcddfc3d	e4de4cf8-ba56-430b-acb0-9640935b85a0	\\xa3867c23111a6b4f463314ad9a5e7c1133c968a2cf993c76a04e9e6cc6489d8a	\\xbc2a4b243a12951f48fbeb3da22e8c1fa114565e45adc3cf2082e241c69f5621
4	2026-03-03 09:01:00+00	member	46e085e3-49e1-47f3-bba1-318d20f4fbbd	member.invite	\N	\N	\\xbc2a4b243a12951f48fbeb3da22e8c1fa114565e45adc3cf2082e241c69f5621	\\xc965fc4653f521b0bb9a87af0dfaf6ff4fc396f430c4ba629429c910cdf252f2
5	2026-03-03 09:01:00+00	member	9b0a3581-900a-489b-a164-04840d9f55d6	client.change	874f4bc4-40ce-4fe9-b6c8-9d6cdcddfc3d	\N	\\xc965fc4653f521b0bb9a87af0dfaf6ff4fc396f430c4ba629429c910cdf252f2	\\x375e6fc9d3b82ef55bce0ccf77e9eca408472b9d7265afe28d0a02703cb7b4a4
6	2026-03-03 09:01:00+00	member	9b0a3581-900a-489b-a164-04840d9f55d6	client.change	874f4bc4-40ce-4fe9-b6c8-9d6cdcddfc3d	\N	\\x375e6fc9d3b82ef55bce0ccf77e9eca408472b9d7265afe28d0a02703cb7b4a4	\\x34d052ab0b07ee3b1080de373e25780422ae052339d5587473ee3a7571f219ac
7	2026-03-03 09:01:00+00	member	9b0a3581-900a-489b-a164-04840d9f55d6	target.change	874f4bc4-40ce-4fe9-b6c8-9d6cdcddfc3d	062c4abf-696e-49ad-899f-e86edec0a531	\\x34d052ab0b07ee3b1080de373e25780422ae052339d5587473ee3a7571f219ac	\\x52afe773459956175ea01c3298a3ea12382c1ffa872f3c628d08bda061550240
8	2026-03-03 09:02:31+00	member	9b0a3581-900a-489b-a164-04840d9f55d6	entry.keep	874f4bc4-40ce-4fe9-b6c8-9d6cdcddfc3d	e4de4cf8-ba56-430b-acb0-9640935b85a0	\\x52afe773459956175ea01c3298a3ea12382c1ffa872f3c628d08bda061550240	\\x33a0c4ffe173ac034e3a863147ac4de2a8a68c8cfa991910db41785a304ae284
9	2026-03-03 09:02:32+00	member	9b0a3581-900a-489b-a164-04840d9f55d6	entry.keep	874f4bc4-40ce-4fe9-b6c8-9d6cdcddfc3d	e4de4cf8-ba56-430b-acb0-9640935b85a0	\\x33a0c4ffe173ac034e3a863147ac4de2a8a68c8cfa991910db41785a304ae284	\\x5d31dcb6fa77f3ffbcf5ad430a0ffcf9078ae12c30d71a2954d4cdd47b1e43fd
10	2026-03-03 09:02:33+00	member	9b0a3581-900a-489b-a164-04840d9f55d6	entry.keep	874f4bc4-40ce-4fe9-b6c8-9d6cdcddfc3d	e4de4cf8-ba56-430b-acb0-9640935b85a0	\\x5d31dcb6fa77f3ffbcf5ad430a0ffcf9078ae12c30d71a2954d4cdd47b1e43fd	\\xf084659826216d18cc7ca5fc968e4975143815b2af91a62687e2c8b47ea7cf0d
11	2026-03-03 09:02:34+00	member	9b0a3581-900a-489b-a164-04840d9f55d6	entry.keep	874f4bc4-40ce-4fe9-b6c8-9d6cdcddfc3d	e4de4cf8-ba56-430b-acb0-9640935b85a0	\\xf084659826216d18cc7ca5fc968e4975143815b2af91a62687e2c8b47ea7cf0d	\\x59fd4eb751f5034ef774a6913b9dc5d4566224f6b8186cb22cd5aa66d2521f4f
12	2026-03-03 09:02:35+00	member	9b0a3581-900a-489b-a164-04840d9f55d6	entry.keep	874f4bc4-40ce-4fe9-b6c8-9d6cdcddfc3d	e4de4cf8-ba56-430b-acb0-9640935b85a0	\\x59fd4eb751f5034ef774a6913b9dc5d4566224f6b8186cb22cd5aa66d2521f4f	\\x0751e3c437a752089ebbc959b6c5f478e64cc8bfffc4947e38cb8ceca90466fc
13	2026-03-03 09:02:36+00	member	9b0a3581-900a-489b-a164-04840d9f55d6	entry.keep	874f4bc4-40ce-4fe9-b6c8-9d6cdcddfc3d	e4de4cf8-ba56-430b-acb0-9640935b85a0	\\x0751e3c437a752089ebbc959b6c5f478e64cc8bfffc4947e38cb8ceca90466fc	\\x83c858f4616a2b67918fdd8734d014bcfd417cb74d9a09e1dca74a7b78f4a7e0
14	2026-03-03 09:02:37+00	member	9b0a3581-900a-489b-a164-04840d9f55d6	entry.keep	874f4bc4-40ce-4fe9-b6c8-9d6cdcddfc3d	e4de4cf8-ba56-430b-acb0-9640935b85a0	\\x83c858f4616a2b67918fdd8734d014bcfd417cb74d9a09e1dca74a7b78f4a7e0	\\x69c89edc09f20d6293ec580338bf86a17f922a9f9fc9aaf756f1fc3f143aded5
15	2026-03-03 09:02:38+00	member	9b0a3581-900a-489b-a164-04840d9f55d6	entry.keep	874f4bc4-40ce-4fe9-b6c8-9d6cdcddfc3d	e4de4cf8-ba56-430b-acb0-9640935b85a0	\\x69c89edc09f20d6293ec580338bf86a17f922a9f9fc9aaf756f1fc3f143aded5	\\xde91dd4a20e1aa6216112e9b812d2f2bd6aef5553a2c0bc7d7f338d9bc597455
16	2026-03-03 09:02:38+00	member	9b0a3581-900a-489b-a164-04840d9f55d6	session.note.save	874f4bc4-40ce-4fe9-b6c8-9d6cdcddfc3d	e4de4cf8-ba56-430b-acb0-9640935b85a0	\\xde91dd4a20e1aa6216112e9b812d2f2bd6aef5553a2c0bc7d7f338d9bc597455	\\xa01b95d4d95673124cff37389be2e82a52c8f53efadd91cde4e67faeacc22927
17	2026-03-03 09:02:38+00	member	9b0a3581-900a-489b-a164-04840d9f55d6	session.view	874f4bc4-40ce-4fe9-b6c8-9d6cdcddfc3d	e4de4cf8-ba56-430b-acb0-9640935b85a0	\\xa01b95d4d95673124cff37389be2e82a52c8f53efadd91cde4e67faeacc22927	\\xd887fcf5da1af0c01d8024d1c8204b812aede125c582df120f2154090ec56e2a
18	2026-03-03 09:02:38+00	member	9b0a3581-900a-489b-a164-04840d9f55d6	session.close	874f4bc4-40ce-4fe9-b6c8-9d6cdcddfc3d	e4de4cf8-ba56-430b-acb0-9640935b85a0	\\xd887fcf5da1af0c01d8024d1c8204b812aede125c582df120f2154090ec56e2a	\\x9be4ec3d4d379885a4633479e8ed90ae8a7b9edea4dc0aec8763dec8f2e6e004
19	2026-03-10 09:02:38+00	member	9b0a3581-900a-489b-a164-04840d9f55d6	session.open	874f4bc4-40ce-4fe9-b6c8-9d6cdcddfc3d	d61efa86-6e94-4545-9965-e8f50f34e7ee	\\x9be4ec3d4d379885a4633479e8ed90ae8a7b9edea4dc0aec8763dec8f2e6e004	\\x27b944f5901a9d6ac16075667b29cf6c81a9b9a85a9d3fe7b9345a8c06cce349
20	2026-03-10 09:02:38+00	member	9b0a3581-900a-489b-a164-04840d9f55d6	link.make	874f4bc4-40ce-4fe9-b6c8-9d6cdcddfc3d	d61efa86-6e94-4545-9965-e8f50f34e7ee	\\x27b944f5901a9d6ac16075667b29cf6c81a9b9a85a9d3fe7b9345a8c06cce349	\\x42469aa5c5a2360f57d842feb3b0774f5ed57c5a614c7c1f9dba55e4ae823ac7
21	2026-03-10 09:02:38+00	visitor	\N	seat.claim	\N	d61efa86-6e94-4545-9965-e8f50f34e7ee	\\x42469aa5c5a2360f57d842feb3b0774f5ed57c5a614c7c1f9dba55e4ae823ac7	\\x0c520d3d12c29d59b037e54850be098e659f24a1b49c908a927a638e6ff6865b
22	2026-03-10 09:02:38+00	member	9b0a3581-900a-489b-a164-04840d9f55d6	session.admit	874f4bc4-40ce-4fe9-b6c8-9d6cdcddfc3d	d61efa86-6e94-4545-9965-e8f50f34e7ee	\\x0c520d3d12c29d59b037e54850be098e659f24a1b49c908a927a638e6ff6865b	\\xaf521a360f61a686a3a471ba94cbde17113734fd380cd5b129ea61e4c26292f2
23	2026-03-10 09:02:38+00	member	9b0a3581-900a-489b-a164-04840d9f55d6	code.make	874f4bc4-40ce-4fe9-b6c8-9d6cdcddfc3d	d61efa86-6e94-4545-9965-e8f50f34e7ee	\\xaf521a360f61a686a3a471ba94cbde17113734fd380cd5b129ea61e4c26292f2	\\x75ce37c537632f0e92898274853dfda4f2408a72260144d1ae899c2253b26fc3
24	2026-03-10 09:02:43+00	visitor	\N	seat.claim	\N	d61efa86-6e94-4545-9965-e8f50f34e7ee	\\x75ce37c537632f0e92898274853dfda4f2408a72260144d1ae899c2253b26fc3	\\x4ef345fa3ab81b2b8567b61c1d4d9731d9c447d6a0e750da3d13d1e8024bff47
25	2026-03-10 09:02:43+00	member	9b0a3581-900a-489b-a164-04840d9f55d6	preset.create	\N	efc5e8ed-a025-4d4f-b493-6d1e921a0c20	\\x4ef345fa3ab81b2b8567b61c1d4d9731d9c447d6a0e750da3d13d1e8024bff47	\\x32c4636fe48f916b6a4676241329f129911ddcf92b6e5c16b8cb13fe56151973
26	2026-03-10 09:02:43+00	member	9b0a3581-900a-489b-a164-04840d9f55d6	rehearsal.prepare	758225e3-2544-4570-8f7b-b88ea8e32997	\N	\\x32c4636fe48f916b6a4676241329f129911ddcf92b6e5c16b8cb13fe56151973	\\x0565291587b9ad291c0a36edd738de78db76acf718c1c406d1ff25753a51734e
27	2026-03-10 09:02:43+00	member	9b0a3581-900a-489b-a164-04840d9f55d6	session.open	758225e3-2544-4570-8f7b-b88ea8e32997	cb928cfd-cc55-4c15-8c57-5f79b26963cd	\\x0565291587b9ad291c0a36edd738de78db76acf718c1c406d1ff25753a51734e	\\x5c5747f15677532ca5f58b677db36439fa65603b73487ccd033023a9e3bd035e
28	2026-03-10 09:02:43+00	member	9b0a3581-900a-489b-a164-04840d9f55d6	client.create	32facb48-5a59-4eee-bcf4-0238d661672b	\N	\\x5c5747f15677532ca5f58b677db36439fa65603b73487ccd033023a9e3bd035e	\\x2850b8312191b27af6ce129eb3cdb77e219c4038c5a4eef8c2294248ea6767ac
29	2026-03-10 09:02:43+00	member	9b0a3581-900a-489b-a164-04840d9f55d6	client.archive	32facb48-5a59-4eee-bcf4-0238d661672b	\N	\\x2850b8312191b27af6ce129eb3cdb77e219c4038c5a4eef8c2294248ea6767ac	\\xaeddab83f4db5fd640d8b4e71d679b64546dd9652643c02e106bda607373dcdc
\.


--
-- Data for Name: client; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.client (id, number, opened_on, archived_at, seizures, eye_condition, version) FROM stdin;
874f4bc4-40ce-4fe9-b6c8-9d6cdcddfc3d	1	2026-03-03	\N	no	no	3
758225e3-2544-4570-8f7b-b88ea8e32997	2	2026-03-10	\N	no	no	1
32facb48-5a59-4eee-bcf4-0238d661672b	3	2026-03-10	2026-03-10 09:02:43+00	yes	not_asked	2
\.


--
-- Data for Name: client_details; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.client_details (client_id, name, addressed_as, phone, contact_name, contact_phone, usual_location, version) FROM stdin;
874f4bc4-40ce-4fe9-b6c8-9d6cdcddfc3d	\\x0107ed1a8d04f17c3583c6c9081e767d204e595ef2c4017b28cef9b534b7a07dca8b58152dca3ed5b824ad3ce282a4768f26c151	\\x0132dfe6b74cb35d967795b1d77a4a676dc163dfd11f6aad8c3135dced114776e6	\\x0100db32853c9a7ac0fb07433500880b160da4117d0bc4fb81884df1191b32a8c0cbad3cc6fca524b6d64e43ad	\\x0147ce4cb2dcd703e0c4bcb67434e2bb9cde26ffa8dc176ff75a9dce0816408887084b791535357954ee25bea21539	\\x019319872eb0355927b4825659cb64e0f5771daeffd5ed85bbe0735d37142a022bda331cde25c496e41a75b88f	\\x01deaa4a709e01bf78845a642ff4d9aac4845679787cd19eff6bd659f9af23861bc2405e29c66cb2df3515e04df7d3d889	3
758225e3-2544-4570-8f7b-b88ea8e32997	\\x012e11710af8970b95dbb51ee95a0183e2b678a49420d5710e8e421e1f22302c4c0d7e561cb8	\\x0118afce5651526ee1b8f548b7216c9e580f50d84ab8876b6b20838725	\\x015d21810236b3964b7f40617f029b2fc947df45b801499d33fc8e3d87	\\x01dd2c156b8f0a96685018c54814d3a083824672b03f879a58a9a2bd95	\\x017c64d110600c02fe5b3a0091e6cd58c6186bc7bf3730536d265fa40f	\\x017a9e0bafb5ed5a86ad8abed53ec96b5236bb2061aa8f37af418c26fa	1
32facb48-5a59-4eee-bcf4-0238d661672b	\\x01ae5fb20653fb2e9630c14f6837a2e9e04cc1f83b656c5b3f9d75a0a0daea88e79412828bdb06	\\x0121f04eef598f39a0ddd93893dc9b210c006e642087d6038964e76d83	\\x012653aa1aa7b408a11e54657ecfdce63fbf8efbee37601564730bcc77	\\x0100d56f16a54055c2a4176b0a58da3c066f1a65009f1884b40ba16f74	\\x01beb7d5e274beb07b7f69e92999280b48b86a564d257d91c773d0b9f7	\\x019e6eb3c986b3e21eb26b8f9a9d43d1324812d86dd8abde74409226e8	1
\.


--
-- Data for Name: client_key; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.client_key (client_id, key_id, wrapped) FROM stdin;
874f4bc4-40ce-4fe9-b6c8-9d6cdcddfc3d	1	\\x01fa742647ce18a33157230dd30e9d91bcaad945eea604ef0be08a9431cafdb732590c26b83714dac2147260cddb0d356c19e62aa8c9aced702703c22d
758225e3-2544-4570-8f7b-b88ea8e32997	1	\\x011bf050c66025b877ff8860265ba1cc64e29c32f5505fb9f6d10a27d346765fb12ee8dad7d25f93e8fd0bbef97318a26855ee666e7160554fc57a14ab
32facb48-5a59-4eee-bcf4-0238d661672b	1	\\x01f869a11db249ba08d08b85129ea6987f2e3ce5f58d5b515948038c0e3c66875e24a30f7404e549e28ec9338611c9ac7d367d7ba374717834ffda31e9
\.


--
-- Data for Name: comfort; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.comfort (client_id, path, dot, comfort, filled_at, version) FROM stdin;
\.


--
-- Data for Name: practice; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.practice (singleton, instance, name, zone, emergency_number, demo) FROM stdin;
t	4525c747-a9b2-48b7-a3b6-a32cbc77824a	Practice	UTC	112	f
\.


--
-- Data for Name: preset; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.preset (id, member_id, name, purpose, eyes, ears, hands, rate, width, cycles, made_at, put_away_at, version) FROM stdin;
d855af28-4fc5-454d-ad38-321bac3aae35	\N	Slow	processing	t	f	f	0.8	18	24	2026-11-28 08:39:41.804941+00	\N	1
f211d970-46e2-48aa-984e-1c4f3a32c8a9	\N	Standard	processing	t	f	f	1	18	24	2026-11-28 08:39:41.804941+00	\N	1
38ae56d6-a047-44ef-ae52-df0427803c49	\N	Fast	processing	t	f	f	1.2	18	24	2026-11-28 08:39:41.804941+00	\N	1
79fa7d2a-49b3-4314-af57-90b53a37a19e	\N	Calm place	calm_place	t	f	f	0.5	18	6	2026-11-28 08:39:41.804941+00	\N	1
efc5e8ed-a025-4d4f-b493-6d1e921a0c20	9b0a3581-900a-489b-a164-04840d9f55d6	Slower	processing	t	f	f	0.6	16	20	2026-03-10 09:02:43+00	\N	1
\.


--
-- Data for Name: process_note; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.process_note (id, session_id, client_id, set_id, moment, change, words, replaces, entered_by, at) FROM stdin;
c13add1b-eb1d-4b2d-8555-0a3345ed7762	e4de4cf8-ba56-430b-acb0-9640935b85a0	874f4bc4-40ce-4fe9-b6c8-9d6cdcddfc3d	f735f9f9-2fa5-4182-b342-acc0ab5c2708	after_set	\N	\\x01ecb9c1b8f018d9143a6a19d318266c93dfbc636610282749b3ecbc940d219c236d0cfe45507b1dc595386e0640	\N	9b0a3581-900a-489b-a164-04840d9f55d6	2026-03-03 09:02:34+00
10c1d96d-a6a6-4551-9524-3bf43e038b23	e4de4cf8-ba56-430b-acb0-9640935b85a0	874f4bc4-40ce-4fe9-b6c8-9d6cdcddfc3d	f735f9f9-2fa5-4182-b342-acc0ab5c2708	after_set	\N	\\x01ab3bf13763bc3b6444ec56e6eff30c7baad42b2b802ecb0359e092d859b75f9e9729c89fc80defda77535878ed031fc775e717fc	c13add1b-eb1d-4b2d-8555-0a3345ed7762	9b0a3581-900a-489b-a164-04840d9f55d6	2026-03-03 09:02:35+00
9107c0ee-d4da-40ec-a8e4-55218d3a03d5	e4de4cf8-ba56-430b-acb0-9640935b85a0	874f4bc4-40ce-4fe9-b6c8-9d6cdcddfc3d	ceb73219-5a7c-4a59-a0b9-2da59e5370c2	after_set	same	\N	\N	9b0a3581-900a-489b-a164-04840d9f55d6	2026-03-03 09:02:38+00
\.


--
-- Data for Name: rating; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.rating (id, client_id, session_id, target_id, set_id, scale, value, moment, replaces, entered_by, at) FROM stdin;
88b2397a-6eae-41fd-a071-d2098380ac96	874f4bc4-40ce-4fe9-b6c8-9d6cdcddfc3d	\N	062c4abf-696e-49ad-899f-e86edec0a531	\N	sud	8	assessment	\N	9b0a3581-900a-489b-a164-04840d9f55d6	2026-03-03 09:00:00+00
b9669c35-c752-4a28-b7b0-508f5b5f0cb5	874f4bc4-40ce-4fe9-b6c8-9d6cdcddfc3d	\N	062c4abf-696e-49ad-899f-e86edec0a531	\N	voc	2	assessment	\N	9b0a3581-900a-489b-a164-04840d9f55d6	2026-03-03 09:00:00+00
d647a79f-1294-4f6e-a146-e879622c0fd0	874f4bc4-40ce-4fe9-b6c8-9d6cdcddfc3d	\N	062c4abf-696e-49ad-899f-e86edec0a531	\N	sud	7	assessment	88b2397a-6eae-41fd-a071-d2098380ac96	9b0a3581-900a-489b-a164-04840d9f55d6	2026-03-03 09:01:00+00
bc42ee9e-592d-4885-85b4-e4bc5406b2b4	874f4bc4-40ce-4fe9-b6c8-9d6cdcddfc3d	\N	062c4abf-696e-49ad-899f-e86edec0a531	\N	voc	3	assessment	b9669c35-c752-4a28-b7b0-508f5b5f0cb5	9b0a3581-900a-489b-a164-04840d9f55d6	2026-03-03 09:01:00+00
9086e718-f278-41c0-8abd-b7347881a75d	874f4bc4-40ce-4fe9-b6c8-9d6cdcddfc3d	e4de4cf8-ba56-430b-acb0-9640935b85a0	062c4abf-696e-49ad-899f-e86edec0a531	\N	sud	8	back_at_target	\N	9b0a3581-900a-489b-a164-04840d9f55d6	2026-03-03 09:02:31+00
8c25bf71-ebc0-42ac-83c0-c5864d3610c8	874f4bc4-40ce-4fe9-b6c8-9d6cdcddfc3d	e4de4cf8-ba56-430b-acb0-9640935b85a0	062c4abf-696e-49ad-899f-e86edec0a531	f735f9f9-2fa5-4182-b342-acc0ab5c2708	sud	9	after_set	\N	9b0a3581-900a-489b-a164-04840d9f55d6	2026-03-03 09:02:32+00
13cc8f8a-4c1b-44a4-bdf4-bc7ff37ed0b2	874f4bc4-40ce-4fe9-b6c8-9d6cdcddfc3d	e4de4cf8-ba56-430b-acb0-9640935b85a0	062c4abf-696e-49ad-899f-e86edec0a531	f735f9f9-2fa5-4182-b342-acc0ab5c2708	sud	6	after_set	8c25bf71-ebc0-42ac-83c0-c5864d3610c8	9b0a3581-900a-489b-a164-04840d9f55d6	2026-03-03 09:02:33+00
d3c7f179-3a73-49cf-adbe-1d3e996ef136	874f4bc4-40ce-4fe9-b6c8-9d6cdcddfc3d	e4de4cf8-ba56-430b-acb0-9640935b85a0	062c4abf-696e-49ad-899f-e86edec0a531	fae9e84b-9dc7-4b9a-8ba2-d995d87560c5	voc	4	after_set	\N	9b0a3581-900a-489b-a164-04840d9f55d6	2026-03-03 09:02:36+00
f1dba866-4dc1-4bad-9b06-aae4190c818e	874f4bc4-40ce-4fe9-b6c8-9d6cdcddfc3d	e4de4cf8-ba56-430b-acb0-9640935b85a0	062c4abf-696e-49ad-899f-e86edec0a531	fae9e84b-9dc7-4b9a-8ba2-d995d87560c5	voc	\N	after_set	d3c7f179-3a73-49cf-adbe-1d3e996ef136	9b0a3581-900a-489b-a164-04840d9f55d6	2026-03-03 09:02:37+00
b4f04ca8-08a1-40ff-be43-1f950905c29b	874f4bc4-40ce-4fe9-b6c8-9d6cdcddfc3d	e4de4cf8-ba56-430b-acb0-9640935b85a0	062c4abf-696e-49ad-899f-e86edec0a531	\N	sud	5	closing	\N	9b0a3581-900a-489b-a164-04840d9f55d6	2026-03-03 09:02:38+00
\.


--
-- Data for Name: session; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.session (id, client_id, member_id, target_id, number, zone, opened_at, admitted_at, ended_at, closing, room_epoch, room_holder, version) FROM stdin;
e4de4cf8-ba56-430b-acb0-9640935b85a0	874f4bc4-40ce-4fe9-b6c8-9d6cdcddfc3d	9b0a3581-900a-489b-a164-04840d9f55d6	062c4abf-696e-49ad-899f-e86edec0a531	1	UTC	2026-03-03 09:01:00+00	\N	2026-03-03 09:02:38+00	incomplete	3	eb525f89-da44-4677-a007-ab24d33b7ace	2
d61efa86-6e94-4545-9965-e8f50f34e7ee	874f4bc4-40ce-4fe9-b6c8-9d6cdcddfc3d	9b0a3581-900a-489b-a164-04840d9f55d6	062c4abf-696e-49ad-899f-e86edec0a531	2	UTC	2026-03-10 09:02:38+00	2026-03-10 09:02:38+00	\N	\N	0	\N	1
cb928cfd-cc55-4c15-8c57-5f79b26963cd	758225e3-2544-4570-8f7b-b88ea8e32997	9b0a3581-900a-489b-a164-04840d9f55d6	\N	1	UTC	2026-03-10 09:02:43+00	\N	\N	\N	0	\N	1
\.


--
-- Data for Name: session_moment; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.session_moment (id, session_id, client_id, kind, at, once) FROM stdin;
1	d61efa86-6e94-4545-9965-e8f50f34e7ee	874f4bc4-40ce-4fe9-b6c8-9d6cdcddfc3d	admitted	2026-03-10 09:02:38+00	\N
\.


--
-- Data for Name: session_words; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.session_words (session_id, client_id, location, call_back, resource, leaving_state, companion, next_contact, client_words, note, version, written_by, written_at) FROM stdin;
e4de4cf8-ba56-430b-acb0-9640935b85a0	874f4bc4-40ce-4fe9-b6c8-9d6cdcddfc3d	\\x01e010cef552c4733b0b2d6ca8cecf5de730813087d7d4d48fab7f3fa9	\\x013ba294c4c7f783189031a38c78bd682495c7578d1fec9b9e1ae1b255	\\x01827944b1700d49e6b858d57a6e40b296c0d8867ac45b38f1f57d9b5c8d98039e0b09acfbed4ad9abbb7a071bce0f3e9e1e7fe3f94a7a3880	\\x017eaac627ebde41444f5a5fe1f2061bcd32c116ac05ace356c4dcbd8dcce500511922a136922626552ac9ebbb6ac99e596d83139b2c7ec3778f09eb3a6673ce20768eb48773b5b56ca1cd22	\\x01e0473f03aa43c04b4babdf5278723485e0bf24a75191e6c5107f6cc36b3ed7a2422a	\\x01ca08f3ade0250af4413a9a92e6b35b436d4d87f3b260193488c561a4c973530be39d	\\x01f01bab12165f63231d63e8c03c52d27ce140446ab3615b9939f0f392bad6918371fb4b6c6b00e326f8	\\x01de504c9ef0296d034eabbf5f946e23c3d9395c9f97d1b3a58ef3dc830279653cc6ca1db83d0086f7f4aeec5f5305de9dc8	3	\N	\N
d61efa86-6e94-4545-9965-e8f50f34e7ee	874f4bc4-40ce-4fe9-b6c8-9d6cdcddfc3d	\\x015d466852f7076e37dbfc6f1adad1be9c19c810eb92192419b5824d994df270117e89bf863f270cbf	\\x0134eec8d3e2862bed1e7d0a782c4881e2ba3364b358d93cd8af926e6fa3134b6ba2fd77e8a6e43d104d95fa	\\x01fc8607cf6e2b7f2186038e81a8f7b6f2a7e5822d7a49a844b7c9cd8a	\\x01f7792c3f9371f512bccf11b8cc7d35eec3b5500d21dced38bd1bdd9e	\\x012ed79d1d7178db1da4e0dcbeaf126ae421603f1d17587bb77a2df35c	\\x01b9cfb2bad9e5d3f67ca985cb57326946509b51539ce4487d1103dc2b	\\x01ad38161704a2d9e9379d409d9e21c2ee8a95db572e5d39f3d968aefe	\\x01204f57b53cdf0dc4802474876023a79f53da515f896f60f2264e153a	2	\N	\N
cb928cfd-cc55-4c15-8c57-5f79b26963cd	758225e3-2544-4570-8f7b-b88ea8e32997	\\x014f97fbb1f3915602a0e80c28b8a19e193cb19c5cf660d36a9330f2fe	\\x01daeaae7e5378cfa0f91d11b35c2b840795176cc976220292de6ae646	\\x0184e2b9e4e0732716c632d529bf2e11d7bb58ca6c1b861f131af17664	\\x01f91a2315e9f9533f3c568b509260f3ea15a522073533d74c25fd876b	\\x0151bfb2f24395d41f161220685c64b4a9c6fc0526edac835aa3f3dda8	\\x010d5b224f81f7b1c579076f551f4f3a7fd766316aa21d1985eeb3b525	\\x013d514de6ef1ed51e7dd02c7deeedd89f432ed7fbaddf1c6cb6d43e13	\\x0100936c94e08f8151382a6744df21d49f1250d5ebbe357b36613fc4ad	1	\N	\N
\.


--
-- Data for Name: set_ending; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.set_ending (set_id, session_id, client_id, ending, at_ms, recorded_at, witness) FROM stdin;
f735f9f9-2fa5-4182-b342-acc0ab5c2708	e4de4cf8-ba56-430b-acb0-9640935b85a0	874f4bc4-40ce-4fe9-b6c8-9d6cdcddfc3d	done	26500	2026-03-03 09:01:26.5+00	room
fae9e84b-9dc7-4b9a-8ba2-d995d87560c5	e4de4cf8-ba56-430b-acb0-9640935b85a0	874f4bc4-40ce-4fe9-b6c8-9d6cdcddfc3d	stopped_by_client	26500	2026-03-03 09:01:56.5+00	room
ceb73219-5a7c-4a59-a0b9-2da59e5370c2	e4de4cf8-ba56-430b-acb0-9640935b85a0	874f4bc4-40ce-4fe9-b6c8-9d6cdcddfc3d	unknown	\N	2026-03-03 09:02:26.5+00	room
\.


--
-- Data for Name: set_evidence; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.set_evidence (set_id, seq, session_id, client_id, kind, at_ms, phase, width, frames, longest_gap, ending, recorded_at) FROM stdin;
f735f9f9-2fa5-4182-b342-acc0ab5c2708	3	e4de4cf8-ba56-430b-acb0-9640935b85a0	874f4bc4-40ce-4fe9-b6c8-9d6cdcddfc3d	rested	26500	24.5	\N	\N	\N	done	2026-03-03 09:01:26.5+00
f735f9f9-2fa5-4182-b342-acc0ab5c2708	2	e4de4cf8-ba56-430b-acb0-9640935b85a0	874f4bc4-40ce-4fe9-b6c8-9d6cdcddfc3d	second	8000	2	\N	52	84	\N	2026-03-03 09:01:26.5+00
f735f9f9-2fa5-4182-b342-acc0ab5c2708	1	e4de4cf8-ba56-430b-acb0-9640935b85a0	874f4bc4-40ce-4fe9-b6c8-9d6cdcddfc3d	second	7000	1	\N	60	17	\N	2026-03-03 09:01:26.5+00
f735f9f9-2fa5-4182-b342-acc0ab5c2708	0	e4de4cf8-ba56-430b-acb0-9640935b85a0	874f4bc4-40ce-4fe9-b6c8-9d6cdcddfc3d	shown	6000	\N	18	\N	\N	\N	2026-03-03 09:01:26.5+00
ceb73219-5a7c-4a59-a0b9-2da59e5370c2	3	e4de4cf8-ba56-430b-acb0-9640935b85a0	874f4bc4-40ce-4fe9-b6c8-9d6cdcddfc3d	rested	26500	11	\N	\N	\N	stopped_by_clinician	2026-03-03 09:02:26.5+00
ceb73219-5a7c-4a59-a0b9-2da59e5370c2	2	e4de4cf8-ba56-430b-acb0-9640935b85a0	874f4bc4-40ce-4fe9-b6c8-9d6cdcddfc3d	second	8000	2	\N	52	84	\N	2026-03-03 09:02:26.5+00
ceb73219-5a7c-4a59-a0b9-2da59e5370c2	1	e4de4cf8-ba56-430b-acb0-9640935b85a0	874f4bc4-40ce-4fe9-b6c8-9d6cdcddfc3d	second	7000	1	\N	60	17	\N	2026-03-03 09:02:26.5+00
ceb73219-5a7c-4a59-a0b9-2da59e5370c2	0	e4de4cf8-ba56-430b-acb0-9640935b85a0	874f4bc4-40ce-4fe9-b6c8-9d6cdcddfc3d	shown	6000	\N	18	\N	\N	\N	2026-03-03 09:02:26.5+00
\.


--
-- Data for Name: set_order; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.set_order (set_id, seq, session_id, client_id, cause, at_ms, plan, timeline, recorded_at) FROM stdin;
f735f9f9-2fa5-4182-b342-acc0ab5c2708	0	e4de4cf8-ba56-430b-acb0-9640935b85a0	874f4bc4-40ce-4fe9-b6c8-9d6cdcddfc3d	started	5000	{"dot": 1.5, "path": "across", "rate": 1.0, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "channels": {"ears": false, "eyes": true, "hands": false}}	{"segments": []}	2026-03-03 09:01:05+00
f735f9f9-2fa5-4182-b342-acc0ab5c2708	1	e4de4cf8-ba56-430b-acb0-9640935b85a0	874f4bc4-40ce-4fe9-b6c8-9d6cdcddfc3d	rate	11500	{"dot": 1.5, "path": "across", "rate": 1.2, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "channels": {"ears": false, "eyes": true, "hands": false}}	{"segments": []}	2026-03-03 09:01:11.5+00
fae9e84b-9dc7-4b9a-8ba2-d995d87560c5	0	e4de4cf8-ba56-430b-acb0-9640935b85a0	874f4bc4-40ce-4fe9-b6c8-9d6cdcddfc3d	started	5000	{"dot": 1.5, "path": "across", "rate": 1.0, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "channels": {"ears": false, "eyes": true, "hands": false}}	{"segments": []}	2026-03-03 09:01:35+00
fae9e84b-9dc7-4b9a-8ba2-d995d87560c5	1	e4de4cf8-ba56-430b-acb0-9640935b85a0	874f4bc4-40ce-4fe9-b6c8-9d6cdcddfc3d	rate	11500	{"dot": 1.5, "path": "across", "rate": 1.2, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "channels": {"ears": false, "eyes": true, "hands": false}}	{"segments": []}	2026-03-03 09:01:41.5+00
ceb73219-5a7c-4a59-a0b9-2da59e5370c2	0	e4de4cf8-ba56-430b-acb0-9640935b85a0	874f4bc4-40ce-4fe9-b6c8-9d6cdcddfc3d	started	5000	{"dot": 1.5, "path": "across", "rate": 1.0, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "channels": {"ears": false, "eyes": true, "hands": false}}	{"segments": []}	2026-03-03 09:02:05+00
ceb73219-5a7c-4a59-a0b9-2da59e5370c2	1	e4de4cf8-ba56-430b-acb0-9640935b85a0	874f4bc4-40ce-4fe9-b6c8-9d6cdcddfc3d	rate	11500	{"dot": 1.5, "path": "across", "rate": 1.2, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "channels": {"ears": false, "eyes": true, "hands": false}}	{"segments": []}	2026-03-03 09:02:11.5+00
\.


--
-- Data for Name: stimulus_set; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.stimulus_set (id, session_id, client_id, target_id, number, epoch, plan, recorded_at) FROM stdin;
f735f9f9-2fa5-4182-b342-acc0ab5c2708	e4de4cf8-ba56-430b-acb0-9640935b85a0	874f4bc4-40ce-4fe9-b6c8-9d6cdcddfc3d	062c4abf-696e-49ad-899f-e86edec0a531	1	1	{"dot": 1.5, "path": "across", "rate": 1.0, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "channels": {"ears": false, "eyes": true, "hands": false}}	2026-03-03 09:01:05+00
fae9e84b-9dc7-4b9a-8ba2-d995d87560c5	e4de4cf8-ba56-430b-acb0-9640935b85a0	874f4bc4-40ce-4fe9-b6c8-9d6cdcddfc3d	062c4abf-696e-49ad-899f-e86edec0a531	2	2	{"dot": 1.5, "path": "across", "rate": 1.0, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "channels": {"ears": false, "eyes": true, "hands": false}}	2026-03-03 09:01:35+00
ceb73219-5a7c-4a59-a0b9-2da59e5370c2	e4de4cf8-ba56-430b-acb0-9640935b85a0	874f4bc4-40ce-4fe9-b6c8-9d6cdcddfc3d	062c4abf-696e-49ad-899f-e86edec0a531	3	3	{"dot": 1.5, "path": "across", "rate": 1.0, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "channels": {"ears": false, "eyes": true, "hands": false}}	2026-03-03 09:02:05+00
\.


--
-- Data for Name: target; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.target (id, client_id, number, prong, status, opened_at, archived_at, version) FROM stdin;
062c4abf-696e-49ad-899f-e86edec0a531	874f4bc4-40ce-4fe9-b6c8-9d6cdcddfc3d	1	past	active	2026-03-03 09:00:00+00	\N	3
\.


--
-- Data for Name: target_words; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.target_words (target_id, client_id, label, picture, negative_belief, positive_belief, emotions, body_location, version) FROM stdin;
062c4abf-696e-49ad-899f-e86edec0a531	874f4bc4-40ce-4fe9-b6c8-9d6cdcddfc3d	\\x01c2e002a5fbdc20860df75e9b832b738f134de908c43c2a7706217b11a143b017e97662a916c5dab69aab7025	\\x015878511edb1beb908d3f14502b356919a381228abdd3376df8774edafd52e2b849abb5ca20b3d3826356464dddb0733bab53dd33	\\x01ef3e87cbfdf4b722d60e3700c8cf9dfe437155cf7e13ea0bc59a62de6825ad1d92b6c49017	\\x010b5997b0d527f926b5f014c8d861523a4f81388c8d77afa989323528eba6430dabfc123ae83cae57afd345	\\x01b26ffe50cf5bb48dfd96f4f11be6509a720e5c3542afa710ab6b7b30add656de	\\x01254ac325a42e1dcd5c42eed3fd298f2200c178371247051168eddd916cf5f6228d	2
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
-- Name: session_moment_id_seq; Type: SEQUENCE SET; Schema: public; Owner: leeward_owner
--

SELECT pg_catalog.setval('public.session_moment_id_seq', 1, true);


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
-- Name: member member_pkey; Type: CONSTRAINT; Schema: access; Owner: leeward_owner
--

ALTER TABLE ONLY access.member
    ADD CONSTRAINT member_pkey PRIMARY KEY (id);


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
-- Name: comfort comfort_pkey; Type: CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.comfort
    ADD CONSTRAINT comfort_pkey PRIMARY KEY (client_id);


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
-- Name: one_seat_per_session; Type: INDEX; Schema: access; Owner: leeward_owner
--

CREATE UNIQUE INDEX one_seat_per_session ON access.seat USING btree (session_id) WHERE ((taken_at IS NOT NULL) AND (closed_at IS NULL));


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
-- Name: process_note_session_id_idx; Type: INDEX; Schema: public; Owner: leeward_owner
--

CREATE INDEX process_note_session_id_idx ON public.process_note USING btree (session_id);


--
-- Name: rating_client_id_idx; Type: INDEX; Schema: public; Owner: leeward_owner
--

CREATE INDEX rating_client_id_idx ON public.rating USING btree (client_id);


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
-- Name: session keep_gate; Type: TRIGGER; Schema: public; Owner: leeward_owner
--

CREATE TRIGGER keep_gate AFTER INSERT OR UPDATE OF ended_at ON public.session FOR EACH ROW EXECUTE FUNCTION access.keep_gate();


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
-- Name: invitation invitation_member_id_fkey; Type: FK CONSTRAINT; Schema: access; Owner: leeward_owner
--

ALTER TABLE ONLY access.invitation
    ADD CONSTRAINT invitation_member_id_fkey FOREIGN KEY (member_id) REFERENCES access.member(id);


--
-- Name: passkey passkey_member_id_fkey; Type: FK CONSTRAINT; Schema: access; Owner: leeward_owner
--

ALTER TABLE ONLY access.passkey
    ADD CONSTRAINT passkey_member_id_fkey FOREIGN KEY (member_id) REFERENCES access.member(id);


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
-- Name: comfort comfort_client_id_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.comfort
    ADD CONSTRAINT comfort_client_id_fkey FOREIGN KEY (client_id) REFERENCES public.client(id);


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
-- Name: target_words target_words_target_id_client_id_fkey; Type: FK CONSTRAINT; Schema: public; Owner: leeward_owner
--

ALTER TABLE ONLY public.target_words
    ADD CONSTRAINT target_words_target_id_client_id_fkey FOREIGN KEY (target_id, client_id) REFERENCES public.target(id, client_id);


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
-- Name: comfort add; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY add ON public.comfort FOR INSERT WITH CHECK ((client_id IN ( SELECT access.my_clients() AS my_clients)));


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
-- Name: target_words add; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY add ON public.target_words FOR INSERT WITH CHECK ((client_id IN ( SELECT access.my_clients() AS my_clients)));


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
-- Name: comfort; Type: ROW SECURITY; Schema: public; Owner: leeward_owner
--

ALTER TABLE public.comfort ENABLE ROW LEVEL SECURITY;

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
-- Name: comfort read; Type: POLICY; Schema: public; Owner: leeward_owner
--

CREATE POLICY read ON public.comfort FOR SELECT USING (((client_id IN ( SELECT access.my_clients() AS my_clients)) OR (client_id = ( SELECT access.my_room_client() AS my_room_client))));


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
-- Name: target_words; Type: ROW SECURITY; Schema: public; Owner: leeward_owner
--

ALTER TABLE public.target_words ENABLE ROW LEVEL SECURITY;

--
-- Name: SCHEMA access; Type: ACL; Schema: -; Owner: leeward_owner
--

GRANT USAGE ON SCHEMA access TO leeward_app;


--
-- Name: SCHEMA public; Type: ACL; Schema: -; Owner: pg_database_owner
--

GRANT USAGE ON SCHEMA public TO leeward_app;


--
-- Name: FUNCTION accept_invitation(hash bytea, new_member uuid, passkey_id uuid, credential bytea, passkey jsonb, label text); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.accept_invitation(hash bytea, new_member uuid, passkey_id uuid, credential bytea, passkey jsonb, label text) FROM PUBLIC;
GRANT ALL ON FUNCTION access.accept_invitation(hash bytea, new_member uuid, passkey_id uuid, credential bytea, passkey jsonb, label text) TO leeward_app;


--
-- Name: FUNCTION admit_seat(which uuid, wanted uuid); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.admit_seat(which uuid, wanted uuid) FROM PUBLIC;
GRANT ALL ON FUNCTION access.admit_seat(which uuid, wanted uuid) TO leeward_app;


--
-- Name: FUNCTION answer_request(which uuid, said text); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.answer_request(which uuid, said text) FROM PUBLIC;
GRANT ALL ON FUNCTION access.answer_request(which uuid, said text) TO leeward_app;


--
-- Name: FUNCTION audit(act text, client uuid, object uuid); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.audit(act text, client uuid, object uuid) FROM PUBLIC;
GRANT ALL ON FUNCTION access.audit(act text, client uuid, object uuid) TO leeward_app;


--
-- Name: FUNCTION audit_hash(previous bytea, seq bigint, at timestamp with time zone, kind text, member uuid, act text, client uuid, object uuid); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.audit_hash(previous bytea, seq bigint, at timestamp with time zone, kind text, member uuid, act text, client uuid, object uuid) FROM PUBLIC;
GRANT ALL ON FUNCTION access.audit_hash(previous bytea, seq bigint, at timestamp with time zone, kind text, member uuid, act text, client uuid, object uuid) TO leeward_app;


--
-- Name: FUNCTION begin_ceremony(hash bytea, ceremony jsonb); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.begin_ceremony(hash bytea, ceremony jsonb) FROM PUBLIC;
GRANT ALL ON FUNCTION access.begin_ceremony(hash bytea, ceremony jsonb) TO leeward_app;


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
GRANT ALL ON FUNCTION access.demo_member(wanted text) TO leeward_app;


--
-- Name: FUNCTION end_ceremony(hash bytea); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.end_ceremony(hash bytea) FROM PUBLIC;
GRANT ALL ON FUNCTION access.end_ceremony(hash bytea) TO leeward_app;


--
-- Name: FUNCTION end_membership(who uuid); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.end_membership(who uuid) FROM PUBLIC;
GRANT ALL ON FUNCTION access.end_membership(who uuid) TO leeward_app;


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


--
-- Name: FUNCTION is_owner(); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.is_owner() FROM PUBLIC;
GRANT ALL ON FUNCTION access.is_owner() TO leeward_app;


--
-- Name: FUNCTION keep_gate(); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.keep_gate() FROM PUBLIC;


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
-- Name: FUNCTION now(); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.now() FROM PUBLIC;
GRANT ALL ON FUNCTION access.now() TO leeward_app;


--
-- Name: FUNCTION open_invitation(hash bytea); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.open_invitation(hash bytea) FROM PUBLIC;
GRANT ALL ON FUNCTION access.open_invitation(hash bytea) TO leeward_app;


--
-- Name: FUNCTION open_room(hash bytea, which uuid); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.open_room(hash bytea, which uuid) FROM PUBLIC;
GRANT ALL ON FUNCTION access.open_room(hash bytea, which uuid) TO leeward_app;


--
-- Name: FUNCTION open_signin(signin_id uuid, hash bytea, who uuid, on_device text); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.open_signin(signin_id uuid, hash bytea, who uuid, on_device text) FROM PUBLIC;
GRANT ALL ON FUNCTION access.open_signin(signin_id uuid, hash bytea, who uuid, on_device text) TO leeward_app;


--
-- Name: FUNCTION passkey_used(which uuid, newer jsonb); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.passkey_used(which uuid, newer jsonb) FROM PUBLIC;
GRANT ALL ON FUNCTION access.passkey_used(which uuid, newer jsonb) TO leeward_app;


--
-- Name: FUNCTION passkeys_of(who uuid); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.passkeys_of(who uuid) FROM PUBLIC;
GRANT ALL ON FUNCTION access.passkeys_of(who uuid) TO leeward_app;


--
-- Name: FUNCTION rehearsals(); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.rehearsals() FROM PUBLIC;
GRANT ALL ON FUNCTION access.rehearsals() TO leeward_app;


--
-- Name: FUNCTION remove_passkey(which uuid); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.remove_passkey(which uuid) FROM PUBLIC;
GRANT ALL ON FUNCTION access.remove_passkey(which uuid) TO leeward_app;


--
-- Name: FUNCTION schema_version(); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.schema_version() FROM PUBLIC;
GRANT ALL ON FUNCTION access.schema_version() TO leeward_app;


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
GRANT ALL ON FUNCTION access.seat_within(after interval) TO leeward_app;


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
-- Name: FUNCTION withdraw_invitation(which bytea); Type: ACL; Schema: access; Owner: leeward_owner
--

REVOKE ALL ON FUNCTION access.withdraw_invitation(which bytea) FROM PUBLIC;
GRANT ALL ON FUNCTION access.withdraw_invitation(which bytea) TO leeward_app;


--
-- Name: TABLE audit; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT ON TABLE public.audit TO leeward_app;


--
-- Name: TABLE client; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT,INSERT,UPDATE ON TABLE public.client TO leeward_app;


--
-- Name: TABLE client_details; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT,INSERT,UPDATE ON TABLE public.client_details TO leeward_app;


--
-- Name: TABLE client_key; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT,INSERT ON TABLE public.client_key TO leeward_app;


--
-- Name: TABLE comfort; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT,INSERT,UPDATE ON TABLE public.comfort TO leeward_app;


--
-- Name: TABLE practice; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT,UPDATE ON TABLE public.practice TO leeward_app;


--
-- Name: TABLE preset; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT,INSERT,UPDATE ON TABLE public.preset TO leeward_app;


--
-- Name: TABLE process_note; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT,INSERT ON TABLE public.process_note TO leeward_app;


--
-- Name: TABLE rating; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT,INSERT ON TABLE public.rating TO leeward_app;


--
-- Name: TABLE session; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT,INSERT,UPDATE ON TABLE public.session TO leeward_app;


--
-- Name: TABLE session_moment; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT,INSERT ON TABLE public.session_moment TO leeward_app;


--
-- Name: TABLE session_words; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT,INSERT ON TABLE public.session_words TO leeward_app;


--
-- Name: TABLE set_ending; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT,INSERT ON TABLE public.set_ending TO leeward_app;


--
-- Name: TABLE set_evidence; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT,INSERT ON TABLE public.set_evidence TO leeward_app;


--
-- Name: TABLE set_order; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT,INSERT ON TABLE public.set_order TO leeward_app;


--
-- Name: TABLE stimulus_set; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT,INSERT ON TABLE public.stimulus_set TO leeward_app;


--
-- Name: TABLE set_outcome; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT ON TABLE public.set_outcome TO leeward_app;


--
-- Name: TABLE standing_rating; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT ON TABLE public.standing_rating TO leeward_app;


--
-- Name: TABLE target; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT,INSERT,UPDATE ON TABLE public.target TO leeward_app;


--
-- Name: TABLE target_words; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT,INSERT,UPDATE ON TABLE public.target_words TO leeward_app;


--
-- PostgreSQL database dump complete
--

\unrestrict Welg8KVI8NX038pZDlowEx346A6lUpa6fITmbvzlAAfFxisG0ih7mSjp1O0lbLg

