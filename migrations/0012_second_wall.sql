-- Why: whoever could speak SQL as the app role got past the policies. Functions of the owner's rights took types from the
-- caller's temporary schema and ran its code; a guard that came out as NULL let everybody by; the app role could open a
-- sign-in for any member; it could write any act into the trail, and set the clock back to revive what had expired. The
-- database's own wall has to hold when everything above it is lost.

-- ---------------------------------------------------------------------------------------------
-- The role that signs people in. Only a superuser makes roles, and a database is restored into a server that has them.

DO $$ BEGIN
  IF NOT EXISTS (SELECT FROM pg_roles WHERE rolname = 'leeward_signin') THEN
    RAISE EXCEPTION 'the role leeward_signin is not there: run deploy/roles.sql again as a superuser, then migrate again'
      USING ERRCODE = 'undefined_object';
  END IF;
END $$;

-- Nobody but the owner makes objects here: what a function names could otherwise be somebody else's.
DO $$ BEGIN
  EXECUTE format('REVOKE TEMPORARY ON DATABASE %I FROM PUBLIC', current_database());
  REVOKE CREATE ON SCHEMA public FROM PUBLIC;
  IF has_database_privilege('leeward_app', current_database(), 'TEMPORARY') OR has_schema_privilege('leeward_app', 'public', 'CREATE') THEN
    RAISE EXCEPTION 'leeward_app may still make objects in database "%": run as its owner: REVOKE TEMPORARY ON DATABASE "%" FROM PUBLIC; REVOKE CREATE ON SCHEMA public FROM PUBLIC',
      current_database(), current_database() USING ERRCODE = 'insufficient_privilege';
  END IF;
END $$;

-- ---------------------------------------------------------------------------------------------
-- The clock: the portal's, but no further from the database's own than `slack`. What is over stays over, whatever a
-- connection says the time is. Tests and the seeding of the demo live in other times, which the owner alone allows.

CREATE TABLE access.clock (
  singleton boolean PRIMARY KEY DEFAULT true CHECK (singleton),
  ahead interval NOT NULL DEFAULT '0',                                          -- of the database's clock
  slack interval NOT NULL DEFAULT '1 minute' CHECK (slack >= interval '0')      -- how far the portal's may differ
);
INSERT INTO access.clock DEFAULT VALUES;

-- The clock itself and not the transaction's beginning, which whoever holds a transaction open could keep.
CREATE OR REPLACE FUNCTION access.now() RETURNS timestamptz
LANGUAGE plpgsql STABLE SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
DECLARE said timestamptz := nullif(current_setting('leeward.now', true), ''); here timestamptz; give interval;
BEGIN
  SELECT clock_timestamp() + ahead, slack INTO STRICT here, give FROM access.clock;
  RETURN least(greatest(coalesce(said, here), here - give), here + give);
END $$;

-- ---------------------------------------------------------------------------------------------
-- Who is asking. These run as whoever calls them and are inlined, so they have no search path of their own: each name says
-- where it is. A table of the caller's called pg_namespace made `is_owner` say yes.

CREATE OR REPLACE FUNCTION access.kind() RETURNS text LANGUAGE sql STABLE AS
  $$ SELECT nullif(pg_catalog.current_setting('leeward.kind', true), '') $$;
CREATE OR REPLACE FUNCTION access.token_hash() RETURNS bytea LANGUAGE sql STABLE AS
  $$ SELECT pg_catalog.sha256(pg_catalog.decode(nullif(pg_catalog.current_setting('leeward.token', true), ''), 'hex')) $$;
CREATE OR REPLACE FUNCTION access.is_owner() RETURNS boolean LANGUAGE sql STABLE AS
  $$ SELECT current_user = (SELECT pg_catalog.pg_get_userbyid(nspowner) FROM pg_catalog.pg_namespace WHERE nspname = 'access') $$;
CREATE OR REPLACE FUNCTION access.audit_hash(previous bytea, seq bigint, at timestamptz, kind text, member uuid, act text, client uuid, object uuid)
RETURNS bytea LANGUAGE sql IMMUTABLE SET search_path = pg_catalog, pg_temp AS $$
  SELECT sha256(previous || convert_to(concat_ws('|', seq, extract(epoch FROM at), kind, coalesce(member::text, '-'), act,
    coalesce(client::text, '-'), coalesce(object::text, '-')), 'UTF8')) $$;

-- ---------------------------------------------------------------------------------------------
-- Guards: what is not known to be allowed is refused. `NOT (x OR NULL)` is NULL, and an IF passes over NULL.

-- An invitation by an administrator, for a newcomer; by the owner's command; or for a further passkey of one's own.
CREATE OR REPLACE FUNCTION access.invite(hash bytea, for_member uuid, for_name text, for_roles text[], until timestamptz) RETURNS void
LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
BEGIN
  IF (session_user = current_user OR (for_member IS NULL AND access.has_role('administrator')) OR for_member = access.me()) IS NOT TRUE THEN
    RAISE EXCEPTION 'not allowed to invite' USING ERRCODE = 'insufficient_privilege';
  END IF;
  INSERT INTO access.invitation (token_hash, member_id, name, roles, made_by, made_at, ends_at)
  VALUES (hash, for_member, for_name, for_roles, access.me(), access.now(), until);
END $$;

CREATE OR REPLACE FUNCTION access.end_membership(who uuid) RETURNS SETOF uuid
LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
BEGIN
  IF (access.has_role('administrator') AND who <> access.me()) IS NOT TRUE THEN
    RAISE EXCEPTION 'not allowed to end this membership' USING ERRCODE = 'insufficient_privilege';
  END IF;
  UPDATE access.member SET left_at = access.now() WHERE id = who AND left_at IS NULL;
  UPDATE access.invitation SET ends_at = access.now()
  WHERE (made_by = who OR member_id = who) AND spent_at IS NULL AND ends_at > access.now();
  RETURN QUERY UPDATE access.signin SET closed_at = access.now() WHERE member_id = who AND closed_at IS NULL RETURNING id;
END $$;

CREATE OR REPLACE FUNCTION access.take_on(link_id uuid, client uuid) RETURNS void
LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
BEGIN
  IF (access.has_role('clinician') AND link_id IS NOT NULL AND client IS NOT NULL
      AND NOT EXISTS (SELECT FROM access.care_link WHERE client_id = client)) IS NOT TRUE THEN
    RAISE EXCEPTION 'not allowed to take on this client' USING ERRCODE = 'insufficient_privilege';
  END IF;
  INSERT INTO access.care_link VALUES (link_id, access.me(), client, access.now(), NULL);
END $$;

CREATE OR REPLACE FUNCTION access.mint_link(link_id uuid, hash bytea, which uuid, until timestamptz, phc text) RETURNS void
LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
BEGIN
  IF access.treats_session(which) IS NOT TRUE THEN
    RAISE EXCEPTION 'not allowed to make a link' USING ERRCODE = 'insufficient_privilege';
  END IF;
  UPDATE access.join_link SET revoked_at = access.now() WHERE session_id = which AND revoked_at IS NULL;
  INSERT INTO access.join_link (id, token_hash, session_id, made_at, ends_at, code_phc, code_ends_at)
  VALUES (link_id, hash, which, access.now(), until, phc, access.now() + interval '10 minutes');
END $$;

CREATE OR REPLACE FUNCTION access.mint_code(which uuid, phc text) RETURNS boolean
LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
BEGIN
  IF access.treats_session(which) IS NOT TRUE THEN RETURN false; END IF;
  UPDATE access.join_link SET code_phc = phc, code_ends_at = access.now() + interval '10 minutes', code_tries = 0, code_spent_at = NULL
  WHERE session_id = which AND revoked_at IS NULL AND ends_at > access.now();
  RETURN FOUND;
END $$;

-- A room's clinician or its seat may open it. A device that only asks for the seat waits without one.
CREATE OR REPLACE FUNCTION access.open_room(hash bytea, which uuid) RETURNS boolean
LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
BEGIN
  IF (hash IS NOT NULL AND (access.treats_session(which) OR access.my_seat() = which)) IS NOT TRUE THEN RETURN false; END IF;
  DELETE FROM access.room_token WHERE ends_at <= access.now();
  INSERT INTO access.room_token VALUES (hash, which, access.now() + interval '24 hours');
  RETURN true;
END $$;

-- The clinician takes the seat from a device, and the session goes on: somebody else sat there, or the wrong client. True when
-- that is how it stands afterwards, so that asking again answers the same.
ALTER TABLE access.seat DROP CONSTRAINT seat_closed_why_check;
ALTER TABLE access.seat ADD CONSTRAINT seat_closed_why_check CHECK (closed_why IN ('left', 'moved', 'refused', 'joined_again', 'removed'));
CREATE FUNCTION access.remove_seat(which uuid, wanted uuid) RETURNS boolean
LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
BEGIN
  IF access.treats_session(which) IS NOT TRUE THEN
    RAISE EXCEPTION 'not allowed to decide about this seat' USING ERRCODE = 'insufficient_privilege';
  END IF;
  UPDATE access.seat SET closed_at = access.now(), closed_why = 'removed'
  WHERE id = wanted AND session_id = which AND taken_at IS NOT NULL AND closed_at IS NULL;
  RETURN EXISTS (SELECT FROM access.seat WHERE id = wanted AND session_id = which AND closed_why = 'removed');
END $$;

-- As before, and those that were removed, as 'removed': their pages are told that it is over for them.
CREATE OR REPLACE FUNCTION access.seats(which uuid) RETURNS TABLE (seat_id uuid, device text, state text)
LANGUAGE plpgsql STABLE SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
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

-- For a device that comes back: whether it is over for it, because its session has ended or it was removed, in the last 15
-- minutes.
CREATE FUNCTION access.seat_is_over() RETURNS boolean
LANGUAGE plpgsql STABLE SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
DECLARE since timestamptz := access.now() - interval '15 minutes';
BEGIN
  RETURN access.kind() IS NOT DISTINCT FROM 'seat' AND EXISTS (SELECT FROM access.seat s JOIN access.gate g USING (session_id)
    WHERE s.token_hash = access.token_hash()
      AND CASE WHEN s.closed_at IS NULL THEN g.ended_at > since ELSE s.closed_why = 'removed' AND s.closed_at > since END);
END $$;

-- ---------------------------------------------------------------------------------------------
-- Pretend clients: a clinician's own, and for a lead all, whom the practice's lists leave out. What runs as the owner sees
-- all of them: the policies of `access.tidy()` go by this function. It runs as whoever calls it.

CREATE FUNCTION access.rehearsals_to_know() RETURNS SETOF uuid
LANGUAGE plpgsql STABLE SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
DECLARE who uuid := access.me(); leads boolean := access.has_role('lead');
BEGIN
  RETURN QUERY SELECT r.client_id FROM access.rehearsal r WHERE leads OR r.member_id = who;
END $$;

CREATE OR REPLACE FUNCTION access.rehearsals() RETURNS SETOF uuid
LANGUAGE plpgsql STABLE SECURITY INVOKER SET search_path = pg_catalog, pg_temp AS $$
BEGIN
  IF access.is_owner() THEN
    RETURN QUERY SELECT r.client_id FROM access.rehearsal r;
  ELSE
    RETURN QUERY SELECT access.rehearsals_to_know();
  END IF;
END $$;

-- ---------------------------------------------------------------------------------------------
-- The trail takes only acts that the portal knows, each from those who can do it. A new act comes with a row here.

CREATE TABLE access.audit_act (
  kind text NOT NULL CHECK (kind IN ('visitor', 'member', 'seat', 'owner')),
  act text NOT NULL,
  may_be_last boolean NOT NULL DEFAULT false,   -- it ends the sign-in or the seat that does it
  PRIMARY KEY (kind, act)
);
INSERT INTO access.audit_act (kind, act) SELECT 'member', unnest(ARRAY[
  'account.view', 'caseload.view', 'client.archive', 'client.change', 'client.create', 'client.restore', 'client.view', 'code.make',
  'comfort.change', 'comfort.view', 'desk.connect', 'desk.view', 'entry.keep', 'link.make', 'member.end', 'member.invite', 'member.list',
  'member.view', 'member.withdraw', 'passkey.add', 'passkey.invite', 'passkey.remove', 'practice.caseload.view', 'practice.client.view',
  'preset.change', 'preset.create', 'preset.put_away', 'preset.take_back', 'preset.view', 'presets.view', 'rehearsal.prepare', 'seat.move',
  'seat.refuse', 'seat.remove', 'session.admit', 'session.close', 'session.log', 'session.note.save', 'session.note.view', 'session.open', 'session.view',
  'set.view', 'signin.open', 'target.archive', 'target.change', 'target.create', 'target.restore', 'target.status', 'target.view']);
INSERT INTO access.audit_act VALUES
  ('member', 'signin.close', true),
  ('seat', 'seat.leave', true), ('seat', 'evidence.hand_in', false),
  ('visitor', 'code.wrong', false), ('visitor', 'seat.claim', false), ('visitor', 'signin.refused', false),
  ('visitor', 'member.join', false), ('visitor', 'passkey.add', false),
  ('owner', 'member.invite', false);

-- Adds a row to the chain. For functions of the owner's alone: what the database itself notes stands in them.
CREATE FUNCTION access.keep_act(kind text, member uuid, act text, client uuid, object uuid) RETURNS void
LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
DECLARE head access.audit_head; at timestamptz := access.now(); next_hash bytea;
BEGIN
  SELECT * INTO STRICT head FROM access.audit_head FOR UPDATE;
  next_hash := access.audit_hash(head.hash, head.seq + 1, at, kind, member, act, client, object);
  INSERT INTO public.audit VALUES (head.seq + 1, at, kind, member, act, client, object, head.hash, next_hash);
  UPDATE access.audit_head SET seq = head.seq + 1, hash = next_hash;
END $$;

CREATE OR REPLACE FUNCTION access.audit(act text, client uuid, object uuid) RETURNS void
LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
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
END $$;

-- A look at somebody else's record is refused and leaves a row, for whoever asks later who reached for what. At most 20 an
-- hour of each sign-in: more would say nothing new, and could bury the trail. Says nothing of whether there is such a record.

CREATE TABLE access.refused_look (
  signin_id uuid NOT NULL REFERENCES access.signin ON DELETE CASCADE,
  hour timestamptz NOT NULL,
  looks integer NOT NULL,
  PRIMARY KEY (signin_id, hour)
);
CREATE POLICY refused_look ON target FOR SELECT USING ((SELECT access.is_owner()));

CREATE FUNCTION access.note_refused(which uuid) RETURNS void
LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
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

-- ---------------------------------------------------------------------------------------------
-- Signing in. Says itself whether it opened one: its role may ask nothing else.

DROP FUNCTION access.open_signin(uuid, bytea, uuid, text);
CREATE FUNCTION access.open_signin(signin_id uuid, hash bytea, who uuid, on_device text) RETURNS boolean
LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
DECLARE at timestamptz := access.now();
BEGIN
  INSERT INTO access.signin (id, token_hash, member_id, device, opened_at, seen_at, ends_at)
  SELECT signin_id, hash, m.id, on_device, at, at, at + interval '12 hours' FROM access.member m WHERE m.id = who AND m.left_at IS NULL;
  RETURN FOUND;
END $$;

GRANT USAGE ON SCHEMA access TO leeward_signin;
DO $$ DECLARE signs_in regprocedure; BEGIN
  FOREACH signs_in IN ARRAY ARRAY[
    'access.open_signin(uuid, bytea, uuid, text)', 'access.passkey_used(uuid, jsonb)', 'access.passkeys_of(uuid)',
    'access.open_invitation(bytea)', 'access.accept_invitation(bytea, uuid, uuid, bytea, jsonb, text)',
    'access.begin_ceremony(bytea, jsonb)', 'access.end_ceremony(bytea)', 'access.demo_member(text)']::regprocedure[]
  LOOP
    EXECUTE format('REVOKE ALL ON FUNCTION %s FROM PUBLIC, leeward_app', signs_in);
    EXECUTE format('GRANT EXECUTE ON FUNCTION %s TO leeward_signin', signs_in);
  END LOOP;
END $$;
-- Both: an act of either leaves its row, and who adds a passkey while signed in invites themselves in the same transaction.
GRANT EXECUTE ON FUNCTION access.audit(text, uuid, uuid), access.invite(bytea, uuid, text, text[], timestamptz) TO leeward_signin;

REVOKE ALL ON FUNCTION access.keep_act(text, uuid, text, uuid, uuid), access.rehearsals_to_know(), access.seat_is_over(),
  access.note_refused(uuid), access.remove_seat(uuid, uuid) FROM PUBLIC;
GRANT EXECUTE ON FUNCTION access.rehearsals_to_know(), access.seat_is_over(), access.note_refused(uuid),
  access.remove_seat(uuid, uuid) TO leeward_app;
-- Only other functions call it, and with an age of its own choosing the app role would find what is long over.
REVOKE ALL ON FUNCTION access.seat_within(interval) FROM leeward_app;

-- ---------------------------------------------------------------------------------------------
-- A check value is added for the first key of a practice, or for one that is in use. For any other number it would have kept
-- the portal from starting again.

CREATE OR REPLACE FUNCTION access.keep_key_check(which integer, fresh bytea) RETURNS bytea
LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
BEGIN
  INSERT INTO access.key_check SELECT which, fresh
  WHERE NOT EXISTS (SELECT FROM access.key_check) OR EXISTS (SELECT FROM public.client_key k WHERE k.key_id = which)
  ON CONFLICT DO NOTHING;
  RETURN (SELECT sealed FROM access.key_check WHERE key_id = which);
END $$;

-- ---------------------------------------------------------------------------------------------
-- Tidying up, as before; what it ends itself is nobody's act but its own.

CREATE OR REPLACE FUNCTION access.tidy(OUT signins bigint, OUT invitations bigint, OUT ceremonies bigint, OUT seats bigint, OUT links bigint,
  OUT room_tokens bigint, OUT request_keys bigint, OUT rehearsals uuid[])
LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
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

-- ---------------------------------------------------------------------------------------------
-- Last, for all that is there: a function of the owner's rights takes its names from the system first, and from a caller's
-- temporary schema never before it. With an empty path that schema still came first for types. The portal looks at this
-- each time it starts.

DO $$ DECLARE ours regprocedure; BEGIN
  FOR ours IN SELECT p.oid::regprocedure FROM pg_proc p JOIN pg_namespace n ON n.oid = p.pronamespace
    WHERE p.prosecdef AND n.nspname !~ '^pg_' AND n.nspname <> 'information_schema'
  LOOP
    EXECUTE format('ALTER FUNCTION %s SET search_path = pg_catalog, pg_temp', ours);
  END LOOP;
END $$;
