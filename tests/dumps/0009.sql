-- Written by ./tests/run --dump at migration 9. Sealed under the tests' key, 5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a5a.
--
-- PostgreSQL database dump
--

\restrict cmzMznb1ewzAebPQSlwTAneClmalPU9NYoyVfMpXkFl95CWB4oWZzErJ6aDJDWl

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
  RETURN NEW;
END $$;


ALTER FUNCTION public.place_of_correction() OWNER TO leeward_owner;

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
    CONSTRAINT session_closing_check CHECK ((closing = ANY (ARRAY['complete'::text, 'incomplete'::text, 'no_reprocessing'::text]))),
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
     LEFT JOIN ( SELECT target.client_id,
            count(*) FILTER (WHERE (target.status <> 'complete'::text)) AS open,
            count(*) FILTER (WHERE (target.status = 'incomplete'::text)) AS incomplete,
            count(*) FILTER (WHERE (target.status = 'complete'::text)) AS complete
           FROM public.target
          WHERE (target.archived_at IS NULL)
          GROUP BY target.client_id) t ON ((t.client_id = c.id)))
     LEFT JOIN ( SELECT session.client_id,
            count(*) AS sessions,
            min(session.opened_at) AS first_at,
            max(session.opened_at) AS last_at
           FROM public.session
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
    seq bigint DEFAULT nextval('public.kept_order'::regclass) NOT NULL,
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
    seq bigint DEFAULT nextval('public.kept_order'::regclass) NOT NULL,
    first_id uuid,
    CONSTRAINT rating_check CHECK (((value IS NOT NULL) OR (replaces IS NOT NULL))),
    CONSTRAINT rating_check1 CHECK ((((scale = 'sud'::text) AND ((value >= 0) AND (value <= 10))) OR ((scale = 'voc'::text) AND ((value >= 1) AND (value <= 7))) OR (value IS NULL))),
    CONSTRAINT rating_check2 CHECK (((first_id IS NULL) = (replaces IS NULL))),
    CONSTRAINT rating_moment_check CHECK ((moment = ANY (ARRAY['assessment'::text, 'after_set'::text, 'back_at_target'::text, 'installation'::text, 'closing'::text, 'reevaluation'::text]))),
    CONSTRAINT rating_scale_check CHECK ((scale = ANY (ARRAY['sud'::text, 'voc'::text])))
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
    r.at AS asked_at,
    r.seq AS asked,
    COALESCE(s.seq, r.seq) AS place,
    false AS corrected
   FROM (public.rating r
     LEFT JOIN public.session s ON ((s.id = r.session_id)))
  WHERE ((r.replaces IS NULL) AND (r.value IS NOT NULL) AND (NOT (EXISTS ( SELECT
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
  WHERE ((f.replaces IS NULL) AND (r.value IS NOT NULL) AND (NOT (EXISTS ( SELECT
           FROM public.rating later
          WHERE (later.replaces = r.id)))));


ALTER TABLE public.standing_rating OWNER TO leeward_owner;

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
t	33	\\xeaedffb72219a27a9c798a9b224b2e08c60837ae171c68383f568aae9435abd7
\.


--
-- Data for Name: care_link; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.care_link (id, member_id, client_id, since, until) FROM stdin;
3319e836-ca8e-4fe5-bbe8-7d7d3a1badf6	99e8910b-ae86-4e98-a598-bfdfb7d848ef	6c2b27d7-15a0-4049-9694-99377da6941d	2026-03-03 09:00:00+00	\N
e14bae3e-e354-4e09-8339-80d9ae19a7cd	99e8910b-ae86-4e98-a598-bfdfb7d848ef	4977c822-ece2-4946-a93e-1121be72e67c	2026-03-10 09:04:08+00	\N
a32c1e42-bd1f-4849-af5d-094f4ef63802	99e8910b-ae86-4e98-a598-bfdfb7d848ef	ebddf3a9-26e1-406b-8de4-7c68685c5d6e	2026-03-10 09:04:08+00	\N
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
683471f9-2c1d-4c29-b319-2835451f58ad	6c2b27d7-15a0-4049-9694-99377da6941d	2026-03-03 09:04:08+00
b67d4911-6f4e-42a6-8312-d3e661651320	6c2b27d7-15a0-4049-9694-99377da6941d	\N
a1a461b9-8021-4599-9a93-93e2262ccc77	4977c822-ece2-4946-a93e-1121be72e67c	\N
\.


--
-- Data for Name: invitation; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.invitation (token_hash, member_id, name, roles, made_by, made_at, ends_at, spent_at) FROM stdin;
\\x8915e46206a46af21d09fe7e523b3772250dce2153d10d9044e6d29e5eaa9620	\N	Somebody New	{lead}	987036b1-7e0f-425f-b17f-845a65106b6d	2026-03-03 09:01:00+00	2026-03-06 09:01:00+00	\N
\.


--
-- Data for Name: join_link; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.join_link (id, token_hash, session_id, made_at, ends_at, revoked_at, code_phc, code_ends_at, code_tries, code_spent_at) FROM stdin;
64a533cf-04ec-410e-a084-0b5758dd65f1	\\xdd3b7e51b53cce8b0d86a8b13d4a9264c325723782c5384d01691830207d99e7	b67d4911-6f4e-42a6-8312-d3e661651320	2026-03-10 09:04:08+00	2026-03-10 13:04:08+00	\N	$argon2id$v=19$m=19456,t=2,p=1$pfVrkx1UjxAX9smJPYT/9A$9VRv/CauC8aGN0JwJ4trwcqz9kkLUZtqbhNx1xIeqZE	2026-03-10 09:14:08+00	1	2026-03-10 09:04:08+00
\.


--
-- Data for Name: member; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.member (id, name, roles, joined_at, left_at) FROM stdin;
99e8910b-ae86-4e98-a598-bfdfb7d848ef	Member 99e891	{clinician}	2026-03-03 09:00:00+00	\N
6e9545e4-4c9f-4f33-be7d-124ad076a054	Member 6e9545	{lead}	2026-03-03 09:01:00+00	\N
987036b1-7e0f-425f-b17f-845a65106b6d	Member 987036	{administrator}	2026-03-03 09:01:00+00	\N
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
99e8910b-ae86-4e98-a598-bfdfb7d848ef	4977c822-ece2-4946-a93e-1121be72e67c
\.


--
-- Data for Name: request_key; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.request_key (member_id, key, act, body, answer, kept_at) FROM stdin;
987036b1-7e0f-425f-b17f-845a65106b6d	5867e133-cb48-1134-184b-193b492333ea	member.invite	\\xe2363b47c16ec24771f466dcafefd75b082e8e3016e2f9e70ec7728212875a63	{"json":"2026-03-06T09:01:00Z"}	2026-03-03 09:01:00+00
99e8910b-ae86-4e98-a598-bfdfb7d848ef	f2cfa88b-f80e-c3b2-8fc9-6cf2170c45c1	preset.create	\\x67f8aa3b84c8869b415acfe4c1f6e316f15397a9a65a578df07867f203fe5edd	{"see":"/presets"}	2026-03-03 09:01:00+00
99e8910b-ae86-4e98-a598-bfdfb7d848ef	652be93a-f539-5146-75e9-98c491f963e0	preset.create	\\x953d427bf0820728e80909e2230864766d0a7b14539231a9a15be4eec05db0a0	{"see":"/presets"}	2026-03-03 09:01:00+00
99e8910b-ae86-4e98-a598-bfdfb7d848ef	8ecd7ec9-e5e7-0e82-ef90-cf2f98c67615	preset.put_away	\\x7d4f828a583b92a24935f7fa152dfed5f6a19b69aa3c05c9abcdcda703bd04d5	{"see":"/presets"}	2026-03-03 09:01:00+00
99e8910b-ae86-4e98-a598-bfdfb7d848ef	8e24e670-4100-abbe-968c-edfaa2699ac0	client.change	\\xc70acaf2e505d55bdfc378b96f53987b1bf2c7d5cb10b1e3486b3a3e09b72d10	{"see":"/clients/6c2b27d7-15a0-4049-9694-99377da6941d"}	2026-03-03 09:01:00+00
99e8910b-ae86-4e98-a598-bfdfb7d848ef	10d9f48c-f5b6-45e3-9092-8cf7ad3a8912	comfort.change	\\xcdf68b7f9738e1cc63937dde20bd88482de3684c3b17c2d058b282ed2688f9fa	{"see":"/clients/6c2b27d7-15a0-4049-9694-99377da6941d"}	2026-03-03 09:01:00+00
99e8910b-ae86-4e98-a598-bfdfb7d848ef	b9a298f4-9e16-3d57-8211-706b7d1563bd	target.change	\\x605fe58e9ab21e948530f42eb2ceb51b9a5189c05075ea3a2434b4c8770a2fde	{"see":"/targets/3e5ea74b-0ed7-4478-8fd8-be5a58bac735"}	2026-03-03 09:02:00+00
99e8910b-ae86-4e98-a598-bfdfb7d848ef	460aaa97-21f7-e131-ce19-14a561c1264a	target.change	\\x41576dd0978be4d309106b3f4b08a34de795451fdb00bffdb768ed3e66dea688	{"see":"/targets/3e5ea74b-0ed7-4478-8fd8-be5a58bac735"}	2026-03-03 09:02:00+00
99e8910b-ae86-4e98-a598-bfdfb7d848ef	72132177-874f-4414-dc93-d0efa4cc0723	session.close	\\x19a8fcab46aa0c8f81415a43db34c22cf6115c7eb3d689befb6d8fef5f12881b	{"see":"/sessions/683471f9-2c1d-4c29-b319-2835451f58ad"}	2026-03-03 09:04:08+00
99e8910b-ae86-4e98-a598-bfdfb7d848ef	bb8afee0-9e3f-8ac7-c0b3-6e3ff291a5fb	session.note.save	\\xd4c7e7611f7a25059bfc6c5049a4befb857b2382ec243f65541d2ccb433abf99	{"see":"/sessions/683471f9-2c1d-4c29-b319-2835451f58ad#note"}	2026-03-03 09:04:08+00
99e8910b-ae86-4e98-a598-bfdfb7d848ef	3df8da32-28ec-b8eb-ceaa-e668cb4a7fd2	link.make	\\x44136fa355b3678a1146ad16f7e8649e94fb4fc21fe77e8310c060f61caaff8a	"done"	2026-03-10 09:04:08+00
99e8910b-ae86-4e98-a598-bfdfb7d848ef	4c01477d-59a4-1068-635f-5501a5c2d63e	code.make	\\x44136fa355b3678a1146ad16f7e8649e94fb4fc21fe77e8310c060f61caaff8a	"done"	2026-03-10 09:04:08+00
99e8910b-ae86-4e98-a598-bfdfb7d848ef	6e542646-15c0-336d-556b-e8a59058b9ae	client.archive	\\x7d4f828a583b92a24935f7fa152dfed5f6a19b69aa3c05c9abcdcda703bd04d5	{"see":"/clients/ebddf3a9-26e1-406b-8de4-7c68685c5d6e"}	2026-03-10 09:04:08+00
\.


--
-- Data for Name: room_token; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.room_token (token_hash, session_id, ends_at) FROM stdin;
\\xd9bc64e7b9c6b4377437f6fd15390f03c7a7ac57ca8d393cb2b555db057bb30d	683471f9-2c1d-4c29-b319-2835451f58ad	2026-03-04 09:02:01+00
\\x9731515e14e79ce4c1b06751f25211f852e4cc84a810d767fa2fa552a885e597	683471f9-2c1d-4c29-b319-2835451f58ad	2026-03-04 09:02:35+00
\\x0cd50975146a43d83b8592a1862eba157ae56dd04c62dc01c183bfbb8c557361	683471f9-2c1d-4c29-b319-2835451f58ad	2026-03-04 09:03:07+00
\\xa53e0b2fc970fb5e61f91284ab768e9c0d041fb0848c32c1d2cea7a1db177b7e	683471f9-2c1d-4c29-b319-2835451f58ad	2026-03-04 09:03:38+00
\.


--
-- Data for Name: seat; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.seat (id, token_hash, link_id, session_id, device, asked_at, taken_at, closed_at, asked_no, admitted_at, closed_why) FROM stdin;
a234edd2-052b-4d1e-a707-43162e73c038	\\x5601ef68d3ec01a5fa1ef88f8fc486f8042fb4d966df8b558c4b94ba1386b5c1	64a533cf-04ec-410e-a084-0b5758dd65f1	b67d4911-6f4e-42a6-8312-d3e661651320	device	2026-03-10 09:04:08+00	2026-03-10 09:04:08+00	\N	1	2026-03-10 09:04:08+00	\N
0229e7ff-f437-4896-91ed-42a3a0aa843e	\\xc8a0f6f291f0584acb254b014ba2420316b724bc020a0edc3d02ce6f9db54767	64a533cf-04ec-410e-a084-0b5758dd65f1	b67d4911-6f4e-42a6-8312-d3e661651320	device	2026-03-10 09:04:08+00	\N	\N	2	\N	\N
\.


--
-- Data for Name: signin; Type: TABLE DATA; Schema: access; Owner: leeward_owner
--

COPY access.signin (id, token_hash, member_id, device, opened_at, seen_at, ends_at, closed_at) FROM stdin;
843a31e6-603f-4e5c-9649-680e30a6691f	\\x5dbc9673cd4c9c692ada39e9131da71e18f0f6377e53d47404253b3dcb854d9a	6e9545e4-4c9f-4f33-be7d-124ad076a054	a test	2026-03-03 09:01:00+00	2026-03-03 09:01:00+00	2026-03-03 21:01:00+00	\N
6a4a29b7-2910-4883-b477-7c3f223cfc59	\\xae014195205c4c3911575506dc2c7842399cb5791f30bf7db850617dc855b250	987036b1-7e0f-425f-b17f-845a65106b6d	a test	2026-03-03 09:01:00+00	2026-03-03 09:01:00+00	2026-03-03 21:01:00+00	\N
165704d2-ae75-49ad-a05b-ec311139395c	\\x49e326db9aceae9473719d1d697e4ae4cca19c9df9df0bda7037a0cf44b5bf82	99e8910b-ae86-4e98-a598-bfdfb7d848ef	a test	2026-03-03 09:00:00+00	2026-03-03 09:04:08+00	2026-03-03 21:00:00+00	\N
9b2e0bbe-cd14-453e-9545-3be25fcf71e1	\\xfd00ad0c22b54305d1c198c655216e6285eabcf644bdf35967a51051a57e6618	99e8910b-ae86-4e98-a598-bfdfb7d848ef	a test	2026-03-10 09:04:08+00	2026-03-10 09:04:08+00	2026-03-10 21:04:08+00	\N
\.


--
-- Data for Name: _sqlx_migrations; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public._sqlx_migrations (version, description, installed_on, success, checksum, execution_time) FROM stdin;
1	access	2026-11-28 10:31:35.536161+00	t	\\xee58a96d68f93385e2e3af6d4390382fcafdadee1b3238242b344c60c94a8a4273a40010f4ba1d66f24207ad6aa82776	37801651
2	acts	2026-11-28 10:31:35.575192+00	t	\\x0f1c508e40ba3792e8e2c58fc8d185e11836f9b1edbc9ee5e6fc9a92df9e176255b3f22d035b99a39cacc5519227d601	9782219
3	audit	2026-11-28 10:31:35.585463+00	t	\\x2dcb585f14b456aae15b0d06e9e436a1575c0781ae10803bee3b70623ac409a8962de276d2dcd3a58ef61135aed43953	10652702
4	records	2026-11-28 10:31:35.596739+00	t	\\x9c4ec09ed84e6bff571cb8c4e9522c0282f285dad35065f146b0b53be2e4bac359f321e4dcfa97ba7635f5070af5291c	17147642
5	sessions	2026-11-28 10:31:35.614481+00	t	\\x3013bebd83db0d46eca7767511705f52abb32a744ff204f5bdcb3afb063c1a18464207dd188aa4c42cd742db6aff73a7	43169343
6	standing ratings	2026-11-28 10:31:35.658448+00	t	\\xa43c139ae2899d8e1dc400509333c23cb35febf1c311c95315c815ad8f5786811785868cfde2df96ad491c1e641366e6	2652375
7	preparation	2026-11-28 10:31:35.661601+00	t	\\x4039cb17dce2ac0b1a5c9987dfad7b5d9423a5d32f43e2faaf08827b835146f0e59d31276bd09283dad5a4c90562ba0b	16065105
9	assessments	2026-11-28 10:31:35.702065+00	t	\\x5bf0696b51deb48ebfb71a27a4779e2da2efaf85174c4c7b8b0b88f67c867051a235ae6a038426b2cf9714b07de370d5	14433714
8	kept once	2026-11-28 10:31:35.678183+00	t	\\xe127621eaa8d28ce25c37396363f914cbc8bf50c61eb3e086ca8f6f279ee945eb2403ea2402783472868733728cbc2f5	23240181
\.


--
-- Data for Name: audit; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.audit (seq, at, kind, member_id, act, client_id, object_id, previous, hash) FROM stdin;
1	2026-03-03 09:00:00+00	member	99e8910b-ae86-4e98-a598-bfdfb7d848ef	client.create	6c2b27d7-15a0-4049-9694-99377da6941d	\N	\\x1049f89a5ef4bff11e67b37b9945096f203ea0c09e92a8bc7dc4a04461f6529f	\\x1b7e1c0a8da9130bef949260f4e69640df4296a9eed74a4f09189fc3ebbfd8e8
2	2026-03-03 09:00:00+00	member	99e8910b-ae86-4e98-a598-bfdfb7d848ef	target.create	6c2b27d7-15a0-4049-9694-99377da6941d	3e5ea74b-0ed7-4478-8fd8-be5a58bac735	\\x1b7e1c0a8da9130bef949260f4e69640df4296a9eed74a4f09189fc3ebbfd8e8	\\x6c0651bbfc8babd9606b8462a5b0621bad5930a3eedf45924b4540472c19e10e
3	2026-03-03 09:01:00+00	member	99e8910b-ae86-4e98-a598-bfdfb7d848ef	session.open	6c2b27d7-15a0-4049-9694-99377da6941d	683471f9-2c1d-4c29-b319-2835451f58ad	\\x6c0651bbfc8babd9606b8462a5b0621bad5930a3eedf45924b4540472c19e10e	\\xf9ebcb9d68ac51ed75e76b94ee59e1e9472339bba07b8a72b46a0d76dd2e89ef
4	2026-03-03 09:01:00+00	member	987036b1-7e0f-425f-b17f-845a65106b6d	member.invite	\N	\N	\\xf9ebcb9d68ac51ed75e76b94ee59e1e9472339bba07b8a72b46a0d76dd2e89ef	\\x46463a0913b28603e08c9970c44609e9fd3a51ed6a30fcd6c3f74a2b6de05557
5	2026-03-03 09:01:00+00	member	99e8910b-ae86-4e98-a598-bfdfb7d848ef	preset.create	\N	fb451ea2-796a-4a47-acea-5a990407289b	\\x46463a0913b28603e08c9970c44609e9fd3a51ed6a30fcd6c3f74a2b6de05557	\\xd7db35da94a62c9f3f122a88df09a028a8fce2b4f589d8f27cf4d8bc8e78d9a8
6	2026-03-03 09:01:00+00	member	99e8910b-ae86-4e98-a598-bfdfb7d848ef	preset.create	\N	ff085b19-cc62-4201-9f1b-66eefad3e362	\\xd7db35da94a62c9f3f122a88df09a028a8fce2b4f589d8f27cf4d8bc8e78d9a8	\\xd171e21589bd0e6e05ee5c46957a5a9faf93b6432bdfa62ac15a34d4f275ae93
7	2026-03-03 09:01:00+00	member	99e8910b-ae86-4e98-a598-bfdfb7d848ef	preset.put_away	\N	ff085b19-cc62-4201-9f1b-66eefad3e362	\\xd171e21589bd0e6e05ee5c46957a5a9faf93b6432bdfa62ac15a34d4f275ae93	\\x12f745f28048c3a4ddb860b2dc0ebcf521c61cefb6e9ba45275d491c7ca8e40d
8	2026-03-03 09:01:00+00	member	99e8910b-ae86-4e98-a598-bfdfb7d848ef	client.change	6c2b27d7-15a0-4049-9694-99377da6941d	\N	\\x12f745f28048c3a4ddb860b2dc0ebcf521c61cefb6e9ba45275d491c7ca8e40d	\\x1deadd51b96e395894ac3bd0ae941196cb59e688408d9925d3ca7915db312049
9	2026-03-03 09:01:00+00	member	99e8910b-ae86-4e98-a598-bfdfb7d848ef	comfort.change	6c2b27d7-15a0-4049-9694-99377da6941d	\N	\\x1deadd51b96e395894ac3bd0ae941196cb59e688408d9925d3ca7915db312049	\\x87de04c278b8bd70a35e945e88d56809bbba492a0227baf50c6151032bdbf884
10	2026-03-03 09:02:00+00	member	99e8910b-ae86-4e98-a598-bfdfb7d848ef	target.change	6c2b27d7-15a0-4049-9694-99377da6941d	3e5ea74b-0ed7-4478-8fd8-be5a58bac735	\\x87de04c278b8bd70a35e945e88d56809bbba492a0227baf50c6151032bdbf884	\\x2aa4e4bd85d4255521776cfeaff954788ce43eb52315c504d56259c044dee36b
11	2026-03-03 09:02:00+00	member	99e8910b-ae86-4e98-a598-bfdfb7d848ef	target.change	6c2b27d7-15a0-4049-9694-99377da6941d	3e5ea74b-0ed7-4478-8fd8-be5a58bac735	\\x2aa4e4bd85d4255521776cfeaff954788ce43eb52315c504d56259c044dee36b	\\x34356cc8337326a66c7b9f6a2fc3f398a6635f1433827cada54b76c78b24d278
12	2026-03-03 09:02:01+00	member	99e8910b-ae86-4e98-a598-bfdfb7d848ef	entry.keep	6c2b27d7-15a0-4049-9694-99377da6941d	683471f9-2c1d-4c29-b319-2835451f58ad	\\x34356cc8337326a66c7b9f6a2fc3f398a6635f1433827cada54b76c78b24d278	\\x241b7ccf5e42112abbc260607217b674f7939a1371dccf3d8e41517a3fbe921e
13	2026-03-03 09:02:32+00	member	99e8910b-ae86-4e98-a598-bfdfb7d848ef	entry.keep	6c2b27d7-15a0-4049-9694-99377da6941d	683471f9-2c1d-4c29-b319-2835451f58ad	\\x241b7ccf5e42112abbc260607217b674f7939a1371dccf3d8e41517a3fbe921e	\\x43fbe535bdd27da83588b2f0700440d2df3da7f604f2581da468ac4376c27b24
14	2026-03-03 09:02:33+00	member	99e8910b-ae86-4e98-a598-bfdfb7d848ef	entry.keep	6c2b27d7-15a0-4049-9694-99377da6941d	683471f9-2c1d-4c29-b319-2835451f58ad	\\x43fbe535bdd27da83588b2f0700440d2df3da7f604f2581da468ac4376c27b24	\\x5670e4618ea2f6bcea6563a64f9c80d9b0007e441d5ad92a1c73245a626a2481
15	2026-03-03 09:02:34+00	member	99e8910b-ae86-4e98-a598-bfdfb7d848ef	entry.keep	6c2b27d7-15a0-4049-9694-99377da6941d	683471f9-2c1d-4c29-b319-2835451f58ad	\\x5670e4618ea2f6bcea6563a64f9c80d9b0007e441d5ad92a1c73245a626a2481	\\x9c63a88632b3410dcbc0911b96e8ee8df79a9f22304545ca9299382109824280
16	2026-03-03 09:02:35+00	member	99e8910b-ae86-4e98-a598-bfdfb7d848ef	entry.keep	6c2b27d7-15a0-4049-9694-99377da6941d	683471f9-2c1d-4c29-b319-2835451f58ad	\\x9c63a88632b3410dcbc0911b96e8ee8df79a9f22304545ca9299382109824280	\\xb58409694ee73b842c81b12c41764c6f3745bff6686c55e9d786786bdd137fbb
17	2026-03-03 09:03:06+00	member	99e8910b-ae86-4e98-a598-bfdfb7d848ef	entry.keep	6c2b27d7-15a0-4049-9694-99377da6941d	683471f9-2c1d-4c29-b319-2835451f58ad	\\xb58409694ee73b842c81b12c41764c6f3745bff6686c55e9d786786bdd137fbb	\\x9ba3e18afdb2230c8aa5042e9b5d383d340ee6f7b70191b13da46aa769adcdb2
18	2026-03-03 09:03:07+00	member	99e8910b-ae86-4e98-a598-bfdfb7d848ef	entry.keep	6c2b27d7-15a0-4049-9694-99377da6941d	683471f9-2c1d-4c29-b319-2835451f58ad	\\x9ba3e18afdb2230c8aa5042e9b5d383d340ee6f7b70191b13da46aa769adcdb2	\\x8c345feff70c8e79ab4c1e584c7cdc78f36455a301abb07765ea96525b74a8a2
19	2026-03-03 09:03:38+00	member	99e8910b-ae86-4e98-a598-bfdfb7d848ef	entry.keep	6c2b27d7-15a0-4049-9694-99377da6941d	683471f9-2c1d-4c29-b319-2835451f58ad	\\x8c345feff70c8e79ab4c1e584c7cdc78f36455a301abb07765ea96525b74a8a2	\\x387d75006da26a4c78dd9a012167c6f46076f7ad8e8299224975c6593cba2af6
20	2026-03-03 09:04:08+00	member	99e8910b-ae86-4e98-a598-bfdfb7d848ef	session.view	6c2b27d7-15a0-4049-9694-99377da6941d	683471f9-2c1d-4c29-b319-2835451f58ad	\\x387d75006da26a4c78dd9a012167c6f46076f7ad8e8299224975c6593cba2af6	\\x5a43e60fc5a4c3c16156abf1e1d9b878d528637189945c0f0e28feacd8e1cfd5
21	2026-03-03 09:04:08+00	member	99e8910b-ae86-4e98-a598-bfdfb7d848ef	session.close	6c2b27d7-15a0-4049-9694-99377da6941d	683471f9-2c1d-4c29-b319-2835451f58ad	\\x5a43e60fc5a4c3c16156abf1e1d9b878d528637189945c0f0e28feacd8e1cfd5	\\xed03d9929c9054322791eea92ef7ed9b74cc5cff96aeaef18d2c6af934bac892
22	2026-03-03 09:04:08+00	member	99e8910b-ae86-4e98-a598-bfdfb7d848ef	session.note.view	6c2b27d7-15a0-4049-9694-99377da6941d	683471f9-2c1d-4c29-b319-2835451f58ad	\\xed03d9929c9054322791eea92ef7ed9b74cc5cff96aeaef18d2c6af934bac892	\\x7d46d4679baac5a4fa0156fa0d3b305a91816388b584e11e069db489c2c7ff93
23	2026-03-03 09:04:08+00	member	99e8910b-ae86-4e98-a598-bfdfb7d848ef	session.note.save	6c2b27d7-15a0-4049-9694-99377da6941d	683471f9-2c1d-4c29-b319-2835451f58ad	\\x7d46d4679baac5a4fa0156fa0d3b305a91816388b584e11e069db489c2c7ff93	\\x2c939a7e5ad9657146b1ada24cd15572e62b3465a9b210c45e4d5dd2c499cc67
24	2026-03-10 09:04:08+00	member	99e8910b-ae86-4e98-a598-bfdfb7d848ef	session.open	6c2b27d7-15a0-4049-9694-99377da6941d	b67d4911-6f4e-42a6-8312-d3e661651320	\\x2c939a7e5ad9657146b1ada24cd15572e62b3465a9b210c45e4d5dd2c499cc67	\\x9dc2e30442be4aa4f6762e1e0f621cd06f4bc3a744f71c6bae5cf488dd4adf97
25	2026-03-10 09:04:08+00	member	99e8910b-ae86-4e98-a598-bfdfb7d848ef	link.make	6c2b27d7-15a0-4049-9694-99377da6941d	b67d4911-6f4e-42a6-8312-d3e661651320	\\x9dc2e30442be4aa4f6762e1e0f621cd06f4bc3a744f71c6bae5cf488dd4adf97	\\xbb947a1a82ebbb94f2e5c1e655774a27ea6f153ae0df1ac67ead76f4c614d5f6
26	2026-03-10 09:04:08+00	visitor	\N	seat.claim	\N	b67d4911-6f4e-42a6-8312-d3e661651320	\\xbb947a1a82ebbb94f2e5c1e655774a27ea6f153ae0df1ac67ead76f4c614d5f6	\\xaf9861894adaf8d3ff9ce2bd8c3858582a12c3bcde1ea2373fa7df38f823fbdb
27	2026-03-10 09:04:08+00	member	99e8910b-ae86-4e98-a598-bfdfb7d848ef	session.admit	6c2b27d7-15a0-4049-9694-99377da6941d	b67d4911-6f4e-42a6-8312-d3e661651320	\\xaf9861894adaf8d3ff9ce2bd8c3858582a12c3bcde1ea2373fa7df38f823fbdb	\\x0430ddf94ced6763b2ad3813a196ed28df234417de5096c800464ab2eae26dfc
28	2026-03-10 09:04:08+00	member	99e8910b-ae86-4e98-a598-bfdfb7d848ef	code.make	6c2b27d7-15a0-4049-9694-99377da6941d	b67d4911-6f4e-42a6-8312-d3e661651320	\\x0430ddf94ced6763b2ad3813a196ed28df234417de5096c800464ab2eae26dfc	\\x5ed6ecf5079264a901917e624d839ef05854c075aaef3a6b07398b5ce90b28dc
29	2026-03-10 09:04:08+00	visitor	\N	seat.claim	\N	b67d4911-6f4e-42a6-8312-d3e661651320	\\x5ed6ecf5079264a901917e624d839ef05854c075aaef3a6b07398b5ce90b28dc	\\x1d82cb43dc4de799e9917580acd95fddd57579df769148b9a38404a13e60ecf7
30	2026-03-10 09:04:08+00	member	99e8910b-ae86-4e98-a598-bfdfb7d848ef	rehearsal.prepare	4977c822-ece2-4946-a93e-1121be72e67c	\N	\\x1d82cb43dc4de799e9917580acd95fddd57579df769148b9a38404a13e60ecf7	\\xb59b67824f8dd049abc8a9d022ddb0129b865831a426a748be76209ec08f4d60
31	2026-03-10 09:04:08+00	member	99e8910b-ae86-4e98-a598-bfdfb7d848ef	session.open	4977c822-ece2-4946-a93e-1121be72e67c	a1a461b9-8021-4599-9a93-93e2262ccc77	\\xb59b67824f8dd049abc8a9d022ddb0129b865831a426a748be76209ec08f4d60	\\xd1c004247e27a83752358b7d9d16daead90c0da59dcc964f15fd219ffc99761e
32	2026-03-10 09:04:08+00	member	99e8910b-ae86-4e98-a598-bfdfb7d848ef	client.create	ebddf3a9-26e1-406b-8de4-7c68685c5d6e	\N	\\xd1c004247e27a83752358b7d9d16daead90c0da59dcc964f15fd219ffc99761e	\\xf8bbf402f724a6fbe84d18dd6250b9a635b07d01479d23d49aa5f59af5903d84
33	2026-03-10 09:04:08+00	member	99e8910b-ae86-4e98-a598-bfdfb7d848ef	client.archive	ebddf3a9-26e1-406b-8de4-7c68685c5d6e	\N	\\xf8bbf402f724a6fbe84d18dd6250b9a635b07d01479d23d49aa5f59af5903d84	\\xeaedffb72219a27a9c798a9b224b2e08c60837ae171c68383f568aae9435abd7
\.


--
-- Data for Name: client; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.client (id, number, opened_on, archived_at, seizures, eye_condition, version) FROM stdin;
6c2b27d7-15a0-4049-9694-99377da6941d	1	2026-03-03	\N	no	no	2
4977c822-ece2-4946-a93e-1121be72e67c	2	2026-03-10	\N	no	no	1
ebddf3a9-26e1-406b-8de4-7c68685c5d6e	3	2026-03-10	2026-03-10 09:04:08+00	yes	not_asked	2
\.


--
-- Data for Name: client_details; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.client_details (client_id, name, addressed_as, phone, contact_name, contact_phone, usual_location, version) FROM stdin;
6c2b27d7-15a0-4049-9694-99377da6941d	\\x01d49cea3c6a5bd178ec3596e60cf02166371a3819c0522cd9593f006122ce524822abe41a40dd12a71544410245184496a85289	\\x014161053bc4441d6f53fd2d05e215199f1afbaa8737759fee8199082863d6d12a76afc4c603	\\x0118aa462c6abd0ab8c919a5f0e87e77064e4c7b92e416c06500c591c3c9ea0b5bae079cf33080bfd41c6b	\\x01b00fcafb9e13c3e3ea3554e1a5289d77e0d68fbd195d8a1c63642729dd879cca6098abbde05536312a556b9f4373	\\x018ebace8c13450b2c68db61eadf6d7e28f47d0be8a7c725b25154e9ff47947a427c27e161f6d72a	\\x015fe29eba55b6d04bc69c54a3d3b8db2430f8b922bec3296c8b35dbbd3177e724358a67056cbbae08e2323b35f9aee4c19016b9f2af4d57	2
4977c822-ece2-4946-a93e-1121be72e67c	\\x01e6488b48e0bd16f77c3ef3895a6f70730e6a32780b91f32f47c9c808f49f6b29c2e6dfab57	\\x0149d7fb52c97bd55b83ab753f7dbfcec1e2c1b799ec31117504a1775e	\\x01f05f302b6f8c21d6e77223c84f7e4837065c4e9364d38b8d5174bef5	\\x01e0905b1a92ca4a8cb3328bd2e31e41857be992c3637b9ce0febd55f5	\\x01ebf1daca51e65f2f2fd5949d20832d164f0186804c9435d1897e6609	\\x01bd1e90cfc06876ed5483c049daa7a37ae9a757827b62c0e722dc9f4f	1
ebddf3a9-26e1-406b-8de4-7c68685c5d6e	\\x0161f41e3bde74b5d36e8f4da1a744f44b1236797904256abcfcf7774bc0b681357895aead6e2ad97c30	\\x01914e01683f3f6464d9a097c64c8bb6b039c8e29bade85358fbe7fc99	\\x018a259caaf1e4d4935b56bd49060d9f9695a7a01348eb1ba0237578c0	\\x01a76f829d0cc8ca4495e4c0a45c3dd0882cb3522aa8e51567f45fc48e	\\x0171ae015e1e8c84d8015927c6d78ebff13718ef846b67f2ac1ab84405	\\x01ce63d92d9d126d6ba78bab5ca3f1054cddded6a6cf6f40f34b623362	1
\.


--
-- Data for Name: client_key; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.client_key (client_id, key_id, wrapped) FROM stdin;
6c2b27d7-15a0-4049-9694-99377da6941d	1	\\x012024e7d7d00ddda1c32e36f4149d79654fed0635d93a51dd62a5ee3d5f2ff7b65509721d3b6e3316fbe3a33f9c1449a3433c8b9d20c3344270cffe31
4977c822-ece2-4946-a93e-1121be72e67c	1	\\x014d91aad9296cb4bb15b8e573406c76811fc19f8b35fdf0d1668d9c9be6156e2e10040211e3bb08b5159ecc00cf63c63e201ad7a78017496858fe7c73
ebddf3a9-26e1-406b-8de4-7c68685c5d6e	1	\\x0145a854dbe2618efb29ebbb5ae256af416881cc432f47488ec80c89a482661443b756ed0eb407acc68a7d9314d1b592ccde4fdd2969ac62196c7b2f9d
\.


--
-- Data for Name: comfort; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.comfort (client_id, path, dot, comfort, filled_at, version) FROM stdin;
6c2b27d7-15a0-4049-9694-99377da6941d	eight	2.5	{"level": 60, "pitch": 400, "sweep": "constant", "timbre": "wood", "colours": "lake", "tone_ms": 90, "vibration": true}	2026-03-03 09:01:00+00	1
\.


--
-- Data for Name: practice; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.practice (singleton, instance, name, zone, emergency_number, demo) FROM stdin;
t	6f94f6f0-1a25-40b2-a8a0-681eb618d703	Practice	UTC	112	f
\.


--
-- Data for Name: preset; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.preset (id, member_id, name, purpose, eyes, ears, hands, rate, width, cycles, made_at, put_away_at, version) FROM stdin;
16c4a217-a708-422e-b156-fc6bf165413b	\N	Slow	processing	t	f	f	0.8	18	24	2026-11-28 10:31:35.661601+00	\N	1
0fd59c88-f6e9-44a3-ab2a-3ef9a541f330	\N	Standard	processing	t	f	f	1	18	24	2026-11-28 10:31:35.661601+00	\N	1
67fb7f8f-b56f-4167-88aa-2706bfc3c698	\N	Fast	processing	t	f	f	1.2	18	24	2026-11-28 10:31:35.661601+00	\N	1
d30734bf-9ab8-4424-b758-4fc738b86c56	\N	Calm place	calm_place	t	f	f	0.5	18	6	2026-11-28 10:31:35.661601+00	\N	1
fb451ea2-796a-4a47-acea-5a990407289b	99e8910b-ae86-4e98-a598-bfdfb7d848ef	Evening	processing	t	f	f	0.9	16	30	2026-03-03 09:01:00+00	\N	1
ff085b19-cc62-4201-9f1b-66eefad3e362	99e8910b-ae86-4e98-a598-bfdfb7d848ef	Given up	processing	t	f	f	0.9	16	30	2026-03-03 09:01:00+00	2026-03-03 09:01:00+00	2
\.


--
-- Data for Name: process_note; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.process_note (id, session_id, client_id, set_id, moment, change, words, replaces, entered_by, at, seq) FROM stdin;
1f5b2f7f-9183-4f4d-b7ad-9987ca4acd6b	683471f9-2c1d-4c29-b319-2835451f58ad	6c2b27d7-15a0-4049-9694-99377da6941d	e803d38b-a6bb-4d37-ac61-cf200ac41be9	after_set	\N	\\x016d53e845607d463127f135d7927e9e378d386fe49582fc1f534ca7da8caf02b5bebfe9c3f36cf2a8610f7c3b468579	\N	99e8910b-ae86-4e98-a598-bfdfb7d848ef	2026-03-03 09:02:32+00	9
6935a0b0-1ded-4e33-ac05-76234d776a91	683471f9-2c1d-4c29-b319-2835451f58ad	6c2b27d7-15a0-4049-9694-99377da6941d	e803d38b-a6bb-4d37-ac61-cf200ac41be9	after_set	\N	\\x01ad88be4fea60aa6461376c94c52fe25558b3eb96abae86d1a1b8d1f10169071d0e93a0ebec5fe8caf5908e2a8e0980becd47b0e9	1f5b2f7f-9183-4f4d-b7ad-9987ca4acd6b	99e8910b-ae86-4e98-a598-bfdfb7d848ef	2026-03-03 09:02:33+00	10
c6a47a4a-ecdc-4792-8f2c-0c7552723173	683471f9-2c1d-4c29-b319-2835451f58ad	6c2b27d7-15a0-4049-9694-99377da6941d	e2fb8a7b-9990-47d8-8032-22c6b91abfb2	after_set	same	\N	\N	99e8910b-ae86-4e98-a598-bfdfb7d848ef	2026-03-03 09:03:38+00	17
\.


--
-- Data for Name: rating; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.rating (id, client_id, session_id, target_id, set_id, scale, value, moment, replaces, entered_by, at, seq, first_id) FROM stdin;
121f4bc4-1e94-43f7-8e7a-24ddfb080ed2	6c2b27d7-15a0-4049-9694-99377da6941d	\N	3e5ea74b-0ed7-4478-8fd8-be5a58bac735	\N	sud	8	assessment	\N	99e8910b-ae86-4e98-a598-bfdfb7d848ef	2026-03-03 09:00:00+00	1	\N
23a71702-0078-4b67-8738-e3440f264274	6c2b27d7-15a0-4049-9694-99377da6941d	\N	3e5ea74b-0ed7-4478-8fd8-be5a58bac735	\N	voc	2	assessment	\N	99e8910b-ae86-4e98-a598-bfdfb7d848ef	2026-03-03 09:00:00+00	2	\N
ec0eeeea-ad08-47d9-8266-8bafb84f5120	6c2b27d7-15a0-4049-9694-99377da6941d	683471f9-2c1d-4c29-b319-2835451f58ad	3e5ea74b-0ed7-4478-8fd8-be5a58bac735	\N	sud	7	assessment	\N	99e8910b-ae86-4e98-a598-bfdfb7d848ef	2026-03-03 09:02:00+00	4	\N
11c3a509-a29f-4414-9053-ab27fb5ff51f	6c2b27d7-15a0-4049-9694-99377da6941d	683471f9-2c1d-4c29-b319-2835451f58ad	3e5ea74b-0ed7-4478-8fd8-be5a58bac735	\N	voc	3	assessment	\N	99e8910b-ae86-4e98-a598-bfdfb7d848ef	2026-03-03 09:02:00+00	5	\N
8d41e603-0a0f-455a-8159-b748d5067ca8	6c2b27d7-15a0-4049-9694-99377da6941d	683471f9-2c1d-4c29-b319-2835451f58ad	3e5ea74b-0ed7-4478-8fd8-be5a58bac735	\N	sud	8	assessment	ec0eeeea-ad08-47d9-8266-8bafb84f5120	99e8910b-ae86-4e98-a598-bfdfb7d848ef	2026-03-03 09:02:00+00	6	ec0eeeea-ad08-47d9-8266-8bafb84f5120
94bbfc7c-de5e-4b67-8c61-4c08fc105022	6c2b27d7-15a0-4049-9694-99377da6941d	683471f9-2c1d-4c29-b319-2835451f58ad	3e5ea74b-0ed7-4478-8fd8-be5a58bac735	\N	sud	8	back_at_target	\N	99e8910b-ae86-4e98-a598-bfdfb7d848ef	2026-03-03 09:02:01+00	7	\N
7993c723-f075-4d77-890a-4050bdbb74e8	6c2b27d7-15a0-4049-9694-99377da6941d	683471f9-2c1d-4c29-b319-2835451f58ad	3e5ea74b-0ed7-4478-8fd8-be5a58bac735	e803d38b-a6bb-4d37-ac61-cf200ac41be9	sud	9	after_set	\N	99e8910b-ae86-4e98-a598-bfdfb7d848ef	2026-03-03 09:02:34+00	11	\N
6dada672-8efe-4472-91c0-cecef8543fc0	6c2b27d7-15a0-4049-9694-99377da6941d	683471f9-2c1d-4c29-b319-2835451f58ad	3e5ea74b-0ed7-4478-8fd8-be5a58bac735	e803d38b-a6bb-4d37-ac61-cf200ac41be9	sud	6	after_set	7993c723-f075-4d77-890a-4050bdbb74e8	99e8910b-ae86-4e98-a598-bfdfb7d848ef	2026-03-03 09:02:35+00	12	7993c723-f075-4d77-890a-4050bdbb74e8
cc718bdc-2435-461e-a761-4344090f85f7	6c2b27d7-15a0-4049-9694-99377da6941d	683471f9-2c1d-4c29-b319-2835451f58ad	3e5ea74b-0ed7-4478-8fd8-be5a58bac735	21f696e9-092b-4d9e-8e1c-f34b96cb08e5	voc	4	installation	\N	99e8910b-ae86-4e98-a598-bfdfb7d848ef	2026-03-03 09:03:06+00	14	\N
f6a2f28b-b7fd-451f-9837-8cb35e7c8fbe	6c2b27d7-15a0-4049-9694-99377da6941d	683471f9-2c1d-4c29-b319-2835451f58ad	3e5ea74b-0ed7-4478-8fd8-be5a58bac735	21f696e9-092b-4d9e-8e1c-f34b96cb08e5	voc	\N	installation	cc718bdc-2435-461e-a761-4344090f85f7	99e8910b-ae86-4e98-a598-bfdfb7d848ef	2026-03-03 09:03:07+00	15	cc718bdc-2435-461e-a761-4344090f85f7
99aa78fa-069f-43d5-afad-ec48d0ebd983	6c2b27d7-15a0-4049-9694-99377da6941d	683471f9-2c1d-4c29-b319-2835451f58ad	3e5ea74b-0ed7-4478-8fd8-be5a58bac735	\N	sud	5	closing	\N	99e8910b-ae86-4e98-a598-bfdfb7d848ef	2026-03-03 09:04:08+00	19	\N
\.


--
-- Data for Name: session; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.session (id, client_id, member_id, target_id, number, zone, opened_at, admitted_at, ended_at, closing, room_epoch, room_holder, version, seq) FROM stdin;
683471f9-2c1d-4c29-b319-2835451f58ad	6c2b27d7-15a0-4049-9694-99377da6941d	99e8910b-ae86-4e98-a598-bfdfb7d848ef	3e5ea74b-0ed7-4478-8fd8-be5a58bac735	1	UTC	2026-03-03 09:01:00+00	\N	2026-03-03 09:04:08+00	incomplete	4	49eec18a-fd22-4382-902d-a3be68c4731f	2	3
b67d4911-6f4e-42a6-8312-d3e661651320	6c2b27d7-15a0-4049-9694-99377da6941d	99e8910b-ae86-4e98-a598-bfdfb7d848ef	3e5ea74b-0ed7-4478-8fd8-be5a58bac735	2	UTC	2026-03-10 09:04:08+00	2026-03-10 09:04:08+00	\N	\N	0	\N	1	20
a1a461b9-8021-4599-9a93-93e2262ccc77	4977c822-ece2-4946-a93e-1121be72e67c	99e8910b-ae86-4e98-a598-bfdfb7d848ef	\N	1	UTC	2026-03-10 09:04:08+00	\N	\N	\N	0	\N	1	21
\.


--
-- Data for Name: session_moment; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.session_moment (id, session_id, client_id, kind, at, once) FROM stdin;
1	b67d4911-6f4e-42a6-8312-d3e661651320	6c2b27d7-15a0-4049-9694-99377da6941d	admitted	2026-03-10 09:04:08+00	a234edd2-052b-4d1e-a707-43162e73c038
\.


--
-- Data for Name: session_words; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.session_words (session_id, client_id, location, call_back, resource, leaving_state, companion, next_contact, client_words, note, version, written_by, written_at) FROM stdin;
683471f9-2c1d-4c29-b319-2835451f58ad	6c2b27d7-15a0-4049-9694-99377da6941d	\\x01489ab06c38b75a282ef78580d7f5a1040b7ea29de5e6cdd7f011beab	\\x01d6982fed6382ac94f67aa0fea9283745600a0142cb25bd36a1bbec73	\\x018994aafe5c58541b24bc9f60a8d4a9212d8d26c0fbaa0d299eef766d	\\x01536b2dd4c1d1b670659e43206672c2ea35b8f9c396a326c884e1d2c3	\\x0140aee04de3393326b67f8a1cffedc455490a18fdea2411d19085f01d	\\x01db1135caa38626819ba174173b39ca7cbcb8a045750e2e4364e148e1	\\x01224e37cf23f741416b8ccbda605ddb0084b646511f5ac7fa295d7673	\\x01fdc59f0f75aef88e5dba425a9915db7e8a0e32014ba02d03076e6a41	1	99e8910b-ae86-4e98-a598-bfdfb7d848ef	2026-03-03 09:01:00+00
683471f9-2c1d-4c29-b319-2835451f58ad	6c2b27d7-15a0-4049-9694-99377da6941d	\\x0191c7f1f6d26173b0f6dec7f4c3fd91837aea52e351b01662183f6ab7	\\x01335d5c278a60a0319831df829eaa32fce53259043e36b17c87a87db7	\\x01caeac2c619b2d32fd3c7da9b034139c85463c0eb3d5ca483920ff994a2844fc3909a48f658eaef93578676d5fb54569662eef72683713a78	\\x01f7b031f363833c71a0c51da4d2683f5236f2ed8701c64c2367afe0b518dde0964298ed4d197dcc6da949ff6282d05fec462ce5b29ba9445e4c2f8decb3327302ac770253a37b3c493164ff	\\x01c0d5096c72cb72da90fea98fed70daaaffa1165076358dc28b07b7d79f05b6d0f28bb124d9021a	\\x01f3686f41127b6380f9be52fe4d3309aed3dee5aaf5b2e969d2229e54c0a0cd1a665ab87e4792d856b8b58d	\\x01a3dea2053c2ae6bc791d3b86d8f238435e346d7569c68bebe5b6ac57ccf6b17a08aa79538d3e75bf95	\\x0195f4159298fa4de0ee3e239afca975bef82d9202fc8e454c6903ff0be4f0813d7c6485eb7ddf55622e376e224c05ba16e5	2	99e8910b-ae86-4e98-a598-bfdfb7d848ef	2026-03-03 09:04:08+00
683471f9-2c1d-4c29-b319-2835451f58ad	6c2b27d7-15a0-4049-9694-99377da6941d	\\x01fd6cf2aa47beb23113e4a9cb097b92fe8dc4893a78f522d29c82a78f	\\x017e12a8e8797f8bba894c06331596e734ae0a98c2bf73d1ccaf8916cb	\\x01e839683dd0a290cb7d16893d96f5a60a92eb6d38ae45f3d99cd5fd675ecaeda26c76b0270890ce1c63a8f87470ea39cacc11a620774a239a	\\x01b177eefc74cb6578af198489dbd6c3f68dcdefd947164866b8240a1f38b2d14326039e5fb38a6307604aa90ccdbddf80d7a3f9743fced4a18a27dc8b7557431fdb8edd6695c5b3e2b2cd49	\\x013d34ce9c9e2a5b16b996c47cc61def2e1da79f05e9178acc72a981c5a7cc44fc9aa419f02a930a	\\x01c4819af3284902bcd0f04a9c954ffc5e77ce1d2701b2edd491bc55023865a93ae96a8bf7d9ee627f92ec6a	\\x016faff668f41119aa86e5f036084abb0f9e6dc2d2a074d3fd5c7dc799d69208d98f15a3f28438478ebb	\\x011ee9fd746d7d5c870c54b081e0fc355232e434042e4f463af907197b5bd96619af47fe96874f085f25f758be109ca6b76c65d7b2e0a42212056139ecb29afd00e38294f46c7f1f	3	99e8910b-ae86-4e98-a598-bfdfb7d848ef	2026-03-03 09:04:08+00
b67d4911-6f4e-42a6-8312-d3e661651320	6c2b27d7-15a0-4049-9694-99377da6941d	\\x01c66920385a4feb458a562f907f0244e0334e5f4c8a414e6d9eca9304	\\x01c32834c303c1e8c2a6c0a08de3a41bb27c18bb8b3240f48bd144dd08	\\x0123eb4cf68c8dd2c70fe2781afe9f8b847767a49c6583a301a1a1eeca	\\x01248d1ea229aae6cc6bd1a72b79c9c5e686769aa4569323f69b4a8909	\\x015035ce285e4e2f0e2e7d79104d311dda5806c03d4c06de0d9cab003e	\\x011b1e4ea1c915c0e334ce441e2a277fef21d94cde768bc4137f35673c	\\x01648ef43c1dbca292d5f8f8ec19654abd49a8802490d820b0aeefbeb9	\\x01ffaad54e58a27e1e2e2e528fd69fa7bea0378f26cba839b4653c5d7f	1	99e8910b-ae86-4e98-a598-bfdfb7d848ef	2026-03-10 09:04:08+00
b67d4911-6f4e-42a6-8312-d3e661651320	6c2b27d7-15a0-4049-9694-99377da6941d	\\x01b7b8bd5a6996161284f1fcb9947ffb740554f8a3878cf1fbb06218ad2205b2377b2baef6d3f8922b	\\x014849c8ac0cd64e0941e43ed3261b78fc0299b3a7d0bce65dc71be668c076ddf0ab71ebb5ba298af17d01	\\x01aaf1a1d2777957fba0ea13dd5d03a09f8068c5e2c062eb0c5bab7194	\\x016d5f34214bfc04054633acf46bd52e064032bf4124ee48516171806e	\\x01d8d61f7294fc90e956e6d15f8292b2fe2770f6967f64090a85149255	\\x013e85cf872da1ed5d1eb5ddd77efe39ef08e05127a5543102503de20f	\\x01227902e1f67ff271c2448afb8f87ec67e5a69053d63aef54e3a5fb8d	\\x01f9dba72d2428d086180db9c40361e46679c123e2dbda96ee61a34ba8	2	99e8910b-ae86-4e98-a598-bfdfb7d848ef	2026-03-10 09:04:08+00
a1a461b9-8021-4599-9a93-93e2262ccc77	4977c822-ece2-4946-a93e-1121be72e67c	\\x0142bdea7f8ec8f368d8256dcda00d69f8c0b88ff0894418bce2830c6f	\\x01768c5eeb3b3e874dafe2a044bf298531578380dbf2bf341f31b9caac	\\x0122511fc9013d20a1c4ee707b48127776a0bf82e253b74bfba98aa12c	\\x015907b3322f69474ebae3b83a2c6751813c4b52d6cdce5a73c692e875	\\x010bdd1a3dcacba78ac578c2646bcdb5d953a61567a996cb7106f772dd	\\x01999ef5c46a1804068913faef90b1e17468843191346ee102be88bef8	\\x017c382728aed00342b9e01f6de9d2e58380d11eeb4e94d54dc82e3aae	\\x01e4e2bb6cf5b54ff1c3e1f350cdf708ad2e53a9f17062d96bd273d942	1	99e8910b-ae86-4e98-a598-bfdfb7d848ef	2026-03-10 09:04:08+00
\.


--
-- Data for Name: set_ending; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.set_ending (set_id, session_id, client_id, ending, at_ms, recorded_at, witness) FROM stdin;
e803d38b-a6bb-4d37-ac61-cf200ac41be9	683471f9-2c1d-4c29-b319-2835451f58ad	6c2b27d7-15a0-4049-9694-99377da6941d	done	26500	2026-03-03 09:02:27.5+00	room
21f696e9-092b-4d9e-8e1c-f34b96cb08e5	683471f9-2c1d-4c29-b319-2835451f58ad	6c2b27d7-15a0-4049-9694-99377da6941d	stopped_by_client	26500	2026-03-03 09:03:01.5+00	room
e2fb8a7b-9990-47d8-8032-22c6b91abfb2	683471f9-2c1d-4c29-b319-2835451f58ad	6c2b27d7-15a0-4049-9694-99377da6941d	stopped_by_clinician	26500	2026-03-03 09:03:33.5+00	room
68eba752-69f5-4cc0-91c9-6e75bfb0913a	683471f9-2c1d-4c29-b319-2835451f58ad	6c2b27d7-15a0-4049-9694-99377da6941d	unknown	26500	2026-03-03 09:04:04.5+00	room
\.


--
-- Data for Name: set_evidence; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.set_evidence (set_id, seq, session_id, client_id, kind, at_ms, phase, width, frames, longest_gap, ending, recorded_at) FROM stdin;
e803d38b-a6bb-4d37-ac61-cf200ac41be9	3	683471f9-2c1d-4c29-b319-2835451f58ad	6c2b27d7-15a0-4049-9694-99377da6941d	rested	26500	24.5	\N	\N	\N	done	2026-03-03 09:02:27.5+00
e803d38b-a6bb-4d37-ac61-cf200ac41be9	2	683471f9-2c1d-4c29-b319-2835451f58ad	6c2b27d7-15a0-4049-9694-99377da6941d	second	8000	2	\N	52	84	\N	2026-03-03 09:02:27.5+00
e803d38b-a6bb-4d37-ac61-cf200ac41be9	1	683471f9-2c1d-4c29-b319-2835451f58ad	6c2b27d7-15a0-4049-9694-99377da6941d	second	7000	1	\N	60	17	\N	2026-03-03 09:02:27.5+00
e803d38b-a6bb-4d37-ac61-cf200ac41be9	0	683471f9-2c1d-4c29-b319-2835451f58ad	6c2b27d7-15a0-4049-9694-99377da6941d	shown	6000	\N	18	\N	\N	\N	2026-03-03 09:02:27.5+00
e2fb8a7b-9990-47d8-8032-22c6b91abfb2	3	683471f9-2c1d-4c29-b319-2835451f58ad	6c2b27d7-15a0-4049-9694-99377da6941d	rested	26500	11	\N	\N	\N	stopped_by_clinician	2026-03-03 09:03:33.5+00
e2fb8a7b-9990-47d8-8032-22c6b91abfb2	2	683471f9-2c1d-4c29-b319-2835451f58ad	6c2b27d7-15a0-4049-9694-99377da6941d	second	8000	2	\N	52	84	\N	2026-03-03 09:03:33.5+00
e2fb8a7b-9990-47d8-8032-22c6b91abfb2	1	683471f9-2c1d-4c29-b319-2835451f58ad	6c2b27d7-15a0-4049-9694-99377da6941d	second	7000	1	\N	60	17	\N	2026-03-03 09:03:33.5+00
e2fb8a7b-9990-47d8-8032-22c6b91abfb2	0	683471f9-2c1d-4c29-b319-2835451f58ad	6c2b27d7-15a0-4049-9694-99377da6941d	shown	6000	\N	18	\N	\N	\N	2026-03-03 09:03:33.5+00
\.


--
-- Data for Name: set_order; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.set_order (set_id, seq, session_id, client_id, cause, at_ms, plan, timeline, recorded_at) FROM stdin;
e803d38b-a6bb-4d37-ac61-cf200ac41be9	0	683471f9-2c1d-4c29-b319-2835451f58ad	6c2b27d7-15a0-4049-9694-99377da6941d	started	5000	{"dot": 1.5, "path": "across", "rate": 1.0, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "channels": {"ears": false, "eyes": true, "hands": false}}	{"segments": []}	2026-03-03 09:02:06+00
e803d38b-a6bb-4d37-ac61-cf200ac41be9	1	683471f9-2c1d-4c29-b319-2835451f58ad	6c2b27d7-15a0-4049-9694-99377da6941d	rate	11500	{"dot": 1.5, "path": "across", "rate": 1.2, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "channels": {"ears": false, "eyes": true, "hands": false}}	{"segments": []}	2026-03-03 09:02:12.5+00
21f696e9-092b-4d9e-8e1c-f34b96cb08e5	0	683471f9-2c1d-4c29-b319-2835451f58ad	6c2b27d7-15a0-4049-9694-99377da6941d	started	5000	{"dot": 1.5, "path": "across", "rate": 1.0, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "channels": {"ears": false, "eyes": true, "hands": false}}	{"segments": []}	2026-03-03 09:02:40+00
21f696e9-092b-4d9e-8e1c-f34b96cb08e5	1	683471f9-2c1d-4c29-b319-2835451f58ad	6c2b27d7-15a0-4049-9694-99377da6941d	rate	11500	{"dot": 1.5, "path": "across", "rate": 1.2, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "channels": {"ears": false, "eyes": true, "hands": false}}	{"segments": []}	2026-03-03 09:02:46.5+00
e2fb8a7b-9990-47d8-8032-22c6b91abfb2	0	683471f9-2c1d-4c29-b319-2835451f58ad	6c2b27d7-15a0-4049-9694-99377da6941d	started	5000	{"dot": 1.5, "path": "across", "rate": 1.0, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "channels": {"ears": false, "eyes": true, "hands": false}}	{"segments": []}	2026-03-03 09:03:12+00
e2fb8a7b-9990-47d8-8032-22c6b91abfb2	1	683471f9-2c1d-4c29-b319-2835451f58ad	6c2b27d7-15a0-4049-9694-99377da6941d	rate	11500	{"dot": 1.5, "path": "across", "rate": 1.2, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "channels": {"ears": false, "eyes": true, "hands": false}}	{"segments": []}	2026-03-03 09:03:18.5+00
68eba752-69f5-4cc0-91c9-6e75bfb0913a	0	683471f9-2c1d-4c29-b319-2835451f58ad	6c2b27d7-15a0-4049-9694-99377da6941d	started	5000	{"dot": 1.5, "path": "across", "rate": 1.0, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "channels": {"ears": false, "eyes": true, "hands": false}}	{"segments": []}	2026-03-03 09:03:43+00
68eba752-69f5-4cc0-91c9-6e75bfb0913a	1	683471f9-2c1d-4c29-b319-2835451f58ad	6c2b27d7-15a0-4049-9694-99377da6941d	rate	11500	{"dot": 1.5, "path": "across", "rate": 1.2, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "channels": {"ears": false, "eyes": true, "hands": false}}	{"segments": []}	2026-03-03 09:03:49.5+00
\.


--
-- Data for Name: stimulus_set; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.stimulus_set (id, session_id, client_id, target_id, number, epoch, plan, recorded_at, seq) FROM stdin;
e803d38b-a6bb-4d37-ac61-cf200ac41be9	683471f9-2c1d-4c29-b319-2835451f58ad	6c2b27d7-15a0-4049-9694-99377da6941d	3e5ea74b-0ed7-4478-8fd8-be5a58bac735	1	1	{"dot": 1.5, "path": "across", "rate": 1.0, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "channels": {"ears": false, "eyes": true, "hands": false}}	2026-03-03 09:02:06+00	8
21f696e9-092b-4d9e-8e1c-f34b96cb08e5	683471f9-2c1d-4c29-b319-2835451f58ad	6c2b27d7-15a0-4049-9694-99377da6941d	3e5ea74b-0ed7-4478-8fd8-be5a58bac735	2	2	{"dot": 1.5, "path": "across", "rate": 1.0, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "channels": {"ears": false, "eyes": true, "hands": false}}	2026-03-03 09:02:40+00	13
e2fb8a7b-9990-47d8-8032-22c6b91abfb2	683471f9-2c1d-4c29-b319-2835451f58ad	6c2b27d7-15a0-4049-9694-99377da6941d	3e5ea74b-0ed7-4478-8fd8-be5a58bac735	3	3	{"dot": 1.5, "path": "across", "rate": 1.0, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "channels": {"ears": false, "eyes": true, "hands": false}}	2026-03-03 09:03:12+00	16
68eba752-69f5-4cc0-91c9-6e75bfb0913a	683471f9-2c1d-4c29-b319-2835451f58ad	6c2b27d7-15a0-4049-9694-99377da6941d	3e5ea74b-0ed7-4478-8fd8-be5a58bac735	4	4	{"dot": 1.5, "path": "across", "rate": 1.0, "width": 18.0, "length": {"kind": "cycles", "cycles": 24}, "comfort": {"level": 100, "pitch": 450, "sweep": "sine", "timbre": "round", "colours": "sand", "tone_ms": 120, "vibration": false}, "channels": {"ears": false, "eyes": true, "hands": false}}	2026-03-03 09:03:43+00	18
\.


--
-- Data for Name: target; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.target (id, client_id, number, prong, status, opened_at, archived_at, version) FROM stdin;
3e5ea74b-0ed7-4478-8fd8-be5a58bac735	6c2b27d7-15a0-4049-9694-99377da6941d	1	past	incomplete	2026-03-03 09:00:00+00	\N	4
\.


--
-- Data for Name: target_words; Type: TABLE DATA; Schema: public; Owner: leeward_owner
--

COPY public.target_words (target_id, client_id, label, picture, negative_belief, positive_belief, emotions, body_location, version) FROM stdin;
3e5ea74b-0ed7-4478-8fd8-be5a58bac735	6c2b27d7-15a0-4049-9694-99377da6941d	\\x01a26687f9a2c2b32364a212967d28f838b0c8810cd69db523c6ba7731f0ba6f0f198a23d60bbe46528040f94f	\\x01b15673fe415eabca1c07bd2045f4469d0e6043459fb4e7ae27c904ded9b0a1feab1d242e22b2f4cf2403f1a8716bbd65e2720012	\\x012c5bc52b354c74bc2f6cb1fa46e701484fe72b5f3c3075c53c12c940a5a391007e028aae5e47acc943d8bf178cc3e6afb3f9ebf0	\\x017e31ae146191cc45154a330a400b3c8ed45e08d906b5fc5cbdfeb14519bbdf11899f460afd3acbf64aad1b6fcdeba16a352178	\\x01c1ee17abee990a2770f140938c534c44574faa7de029332d7e8163b58154a47232dc1b25dac9aa4251c48e	\\x015edc7c825405d47f62fda643face4b63fa352d02ddef79d6f8b5a739e91c602cc614805184c9c682ecec9a5a86	3
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

SELECT pg_catalog.setval('public.kept_order', 21, true);


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
-- Name: session keep_gate; Type: TRIGGER; Schema: public; Owner: leeward_owner
--

CREATE TRIGGER keep_gate AFTER INSERT OR UPDATE OF ended_at ON public.session FOR EACH ROW EXECUTE FUNCTION access.keep_gate();


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
-- Name: SEQUENCE kept_order; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT USAGE ON SEQUENCE public.kept_order TO leeward_app;


--
-- Name: TABLE session; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT,INSERT,UPDATE ON TABLE public.session TO leeward_app;


--
-- Name: TABLE stimulus_set; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT,INSERT ON TABLE public.stimulus_set TO leeward_app;


--
-- Name: TABLE target; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT,INSERT,UPDATE ON TABLE public.target TO leeward_app;


--
-- Name: TABLE client_count; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT ON TABLE public.client_count TO leeward_app;


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
-- Name: TABLE set_outcome; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT ON TABLE public.set_outcome TO leeward_app;


--
-- Name: TABLE standing_rating; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT ON TABLE public.standing_rating TO leeward_app;


--
-- Name: TABLE target_words; Type: ACL; Schema: public; Owner: leeward_owner
--

GRANT SELECT,INSERT,UPDATE ON TABLE public.target_words TO leeward_app;


--
-- PostgreSQL database dump complete
--

\unrestrict cmzMznb1ewzAebPQSlwTAneClmalPU9NYoyVfMpXkFl95CWB4oWZzErJ6aDJDWl

