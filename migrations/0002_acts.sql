-- Why: what may be done to sign-ins, care links, links, seats and rooms. The app role reaches their
-- tables by these functions alone; each says for itself who may call it.

-- ---------------------------------------------------------------------------------------------
-- Members

CREATE FUNCTION access.members() RETURNS TABLE (id uuid, name text, roles text[], joined_at timestamptz, left_at timestamptz, passkeys bigint)
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = '' AS $$
  SELECT m.id, m.name, m.roles, m.joined_at, m.left_at, (SELECT count(*) FROM access.passkey p WHERE p.member_id = m.id)
  FROM access.member m WHERE access.me() IS NOT NULL ORDER BY m.name $$;

CREATE FUNCTION access.whoami() RETURNS TABLE (signin_id uuid, member_id uuid, name text, roles text[], passkeys bigint)
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = '' AS $$
  SELECT (SELECT access.my_signin()), m.id, m.name, m.roles, (SELECT count(*) FROM access.passkey p WHERE p.member_id = m.id)
  FROM access.member m WHERE m.id = (SELECT access.me()) $$;

-- An invitation by an administrator, by the owner's command, or (with no name) for a further passkey of one's own.
CREATE FUNCTION access.invite(hash bytea, for_member uuid, for_name text, for_roles text[], until timestamptz) RETURNS void
LANGUAGE plpgsql SECURITY DEFINER SET search_path = '' AS $$
BEGIN
  IF NOT (access.has_role('administrator') OR session_user = current_user OR (for_member IS NOT NULL AND for_member = access.me())) THEN
    RAISE EXCEPTION 'not allowed to invite' USING ERRCODE = 'insufficient_privilege';
  END IF;
  INSERT INTO access.invitation (token_hash, member_id, name, roles, made_by, made_at, ends_at)
  VALUES (hash, for_member, for_name, for_roles, access.me(), access.now(), until);
END $$;

CREATE FUNCTION access.open_invitation(hash bytea) RETURNS TABLE (member_id uuid, name text, roles text[])
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = '' AS $$
  SELECT i.member_id, i.name, i.roles FROM access.invitation i
  WHERE i.token_hash = hash AND i.spent_at IS NULL AND i.ends_at > access.now() $$;

-- Spends an invitation and keeps the passkey. Returns the member, or null when the invitation is not open any more.
CREATE FUNCTION access.accept_invitation(hash bytea, new_member uuid, passkey_id uuid, credential bytea, passkey jsonb, label text)
RETURNS uuid LANGUAGE plpgsql SECURITY DEFINER SET search_path = '' AS $$
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

CREATE FUNCTION access.passkeys_of(who uuid) RETURNS TABLE (id uuid, passkey jsonb)
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = '' AS $$
  SELECT p.id, p.passkey FROM access.passkey p JOIN access.member m ON m.id = p.member_id
  WHERE p.member_id = who AND m.left_at IS NULL $$;

CREATE FUNCTION access.passkey_used(which uuid, newer jsonb) RETURNS void
LANGUAGE sql SECURITY DEFINER SET search_path = '' AS
  $$ UPDATE access.passkey SET passkey = newer, used_at = access.now() WHERE id = which $$;

CREATE FUNCTION access.begin_ceremony(hash bytea, ceremony jsonb) RETURNS void
LANGUAGE sql SECURITY DEFINER SET search_path = '' AS $$
  DELETE FROM access.ceremony WHERE ends_at <= access.now();
  INSERT INTO access.ceremony VALUES (hash, ceremony, access.now() + interval '5 minutes') $$;

CREATE FUNCTION access.end_ceremony(hash bytea) RETURNS jsonb
LANGUAGE sql SECURITY DEFINER SET search_path = '' AS
  $$ DELETE FROM access.ceremony WHERE token_hash = hash AND ends_at > access.now() RETURNING state $$;

CREATE FUNCTION access.my_passkeys() RETURNS TABLE (id uuid, label text, synced boolean, added_at timestamptz, used_at timestamptz)
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = '' AS $$
  SELECT p.id, p.label, coalesce((p.passkey #>> '{cred,backup_eligible}')::boolean, false), p.added_at, p.used_at
  FROM access.passkey p WHERE p.member_id = access.me() ORDER BY p.added_at $$;

-- Takes away one of one's own passkeys, never the last. True when it did. The member's row is locked
-- first, so that two requests cannot take the last two at once.
CREATE FUNCTION access.remove_passkey(which uuid) RETURNS boolean
LANGUAGE plpgsql SECURITY DEFINER SET search_path = '' AS $$
BEGIN
  PERFORM FROM access.member WHERE id = access.me() FOR UPDATE;
  DELETE FROM access.passkey p WHERE p.id = which AND p.member_id = access.me()
    AND (SELECT count(*) FROM access.passkey o WHERE o.member_id = access.me()) > 1;
  RETURN FOUND;
END $$;

-- The invitations that still open something, for administrators.
CREATE FUNCTION access.invitations() RETURNS TABLE (hash bytea, name text, roles text[], made_at timestamptz, ends_at timestamptz)
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = '' AS $$
  SELECT i.token_hash, i.name, i.roles, i.made_at, i.ends_at FROM access.invitation i
  WHERE access.has_role('administrator') AND i.member_id IS NULL AND i.spent_at IS NULL AND i.ends_at > access.now() ORDER BY i.made_at $$;

-- True when there was one to withdraw.
CREATE FUNCTION access.withdraw_invitation(which bytea) RETURNS boolean
LANGUAGE plpgsql SECURITY DEFINER SET search_path = '' AS $$
BEGIN
  UPDATE access.invitation SET ends_at = access.now()
  WHERE access.has_role('administrator') AND token_hash = which AND member_id IS NULL AND spent_at IS NULL AND ends_at > access.now();
  RETURN FOUND;
END $$;

-- ---------------------------------------------------------------------------------------------
-- Sign-ins

CREATE FUNCTION access.open_signin(signin_id uuid, hash bytea, who uuid, on_device text) RETURNS void
LANGUAGE sql SECURITY DEFINER SET search_path = '' AS $$
  INSERT INTO access.signin (id, token_hash, member_id, device, opened_at, seen_at, ends_at)
  SELECT signin_id, hash, m.id, on_device, access.now(), access.now(), access.now() + interval '12 hours'
  FROM access.member m WHERE m.id = who AND m.left_at IS NULL $$;

CREATE FUNCTION access.touch_signin() RETURNS void LANGUAGE sql SECURITY DEFINER SET search_path = '' AS
  $$ UPDATE access.signin SET seen_at = access.now() WHERE id = access.my_signin() AND seen_at < access.now() - interval '1 minute' $$;

CREATE FUNCTION access.my_signins() RETURNS TABLE (id uuid, device text, opened_at timestamptz, seen_at timestamptz)
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = '' AS $$
  SELECT s.id, s.device, s.opened_at, s.seen_at FROM access.signin s
  WHERE s.member_id = access.me() AND s.closed_at IS NULL AND s.ends_at > access.now()
    AND s.seen_at > access.now() - interval '30 minutes' ORDER BY s.opened_at DESC $$;

-- Closes one of one's own sign-ins. True when there was one to close.
CREATE FUNCTION access.close_signin(which uuid) RETURNS boolean
LANGUAGE plpgsql SECURITY DEFINER SET search_path = '' AS $$
BEGIN
  UPDATE access.signin SET closed_at = access.now() WHERE id = which AND closed_at IS NULL AND member_id = access.me();
  RETURN FOUND;
END $$;

-- A member leaves the practice: all sign-ins end with it. Returns the sign-ins that were open.
CREATE FUNCTION access.end_membership(who uuid) RETURNS SETOF uuid
LANGUAGE plpgsql SECURITY DEFINER SET search_path = '' AS $$
BEGIN
  IF NOT access.has_role('administrator') OR who = access.me() THEN
    RAISE EXCEPTION 'not allowed to end this membership' USING ERRCODE = 'insufficient_privilege';
  END IF;
  UPDATE access.member SET left_at = access.now() WHERE id = who AND left_at IS NULL;
  UPDATE access.invitation SET ends_at = access.now()
  WHERE (made_by = who OR member_id = who) AND spent_at IS NULL AND ends_at > access.now();
  RETURN QUERY UPDATE access.signin SET closed_at = access.now() WHERE member_id = who AND closed_at IS NULL RETURNING id;
END $$;

-- ---------------------------------------------------------------------------------------------
-- Clients and their clinicians

-- The first care link of a new client: only while nobody treats it yet.
CREATE FUNCTION access.take_on(link_id uuid, client uuid) RETURNS void
LANGUAGE plpgsql SECURITY DEFINER SET search_path = '' AS $$
BEGIN
  IF NOT access.has_role('clinician') OR EXISTS (SELECT FROM access.care_link WHERE client_id = client) THEN
    RAISE EXCEPTION 'not allowed to take on this client' USING ERRCODE = 'insufficient_privilege';
  END IF;
  INSERT INTO access.care_link VALUES (link_id, access.me(), client, access.now(), NULL);
END $$;

-- Who treats whom, as far as the asker may know: one's own, all for a lead.
CREATE FUNCTION access.care_links() RETURNS TABLE (member_id uuid, client_id uuid, since timestamptz, until timestamptz)
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = '' AS $$
  SELECT c.member_id, c.client_id, c.since, c.until FROM access.care_link c
  WHERE c.member_id = (SELECT access.me()) OR (SELECT access.has_role('lead')) $$;

-- ---------------------------------------------------------------------------------------------
-- Links, seats, rooms

CREATE FUNCTION access.treats_session(which uuid) RETURNS boolean LANGUAGE sql STABLE SECURITY DEFINER SET search_path = '' AS
  $$ SELECT EXISTS (SELECT FROM access.gate WHERE session_id = which AND client_id IN (SELECT access.my_clients())) $$;

-- A new link for a session; earlier ones end with it. The seat that was taken stays.
CREATE FUNCTION access.mint_link(link_id uuid, hash bytea, which uuid, until timestamptz, phc text) RETURNS void
LANGUAGE plpgsql SECURITY DEFINER SET search_path = '' AS $$
BEGIN
  IF NOT access.treats_session(which) THEN
    RAISE EXCEPTION 'not allowed to make a link' USING ERRCODE = 'insufficient_privilege';
  END IF;
  UPDATE access.join_link SET revoked_at = access.now() WHERE session_id = which AND revoked_at IS NULL;
  INSERT INTO access.join_link (id, token_hash, session_id, made_at, ends_at, code_phc, code_ends_at)
  VALUES (link_id, hash, which, access.now(), until, phc, access.now() + interval '10 minutes');
END $$;

-- A new code for the link that is open. True when there is one.
CREATE FUNCTION access.mint_code(which uuid, phc text) RETURNS boolean
LANGUAGE plpgsql SECURITY DEFINER SET search_path = '' AS $$
BEGIN
  IF NOT access.treats_session(which) THEN RETURN false; END IF;
  UPDATE access.join_link SET code_phc = phc, code_ends_at = access.now() + interval '10 minutes', code_tries = 0, code_spent_at = NULL
  WHERE session_id = which AND revoked_at IS NULL AND ends_at > access.now();
  RETURN FOUND;
END $$;

-- One try at the code of a link: counted before the answer is known. Five tries, then a new code.
CREATE FUNCTION access.try_code(hash bytea) RETURNS TABLE (link_id uuid, session_id uuid, phc text)
LANGUAGE sql SECURITY DEFINER SET search_path = '' AS $$
  UPDATE access.join_link l SET code_tries = code_tries + 1
  FROM access.gate g
  WHERE l.token_hash = hash AND g.session_id = l.session_id AND g.ended_at IS NULL AND l.revoked_at IS NULL
    AND l.ends_at > access.now() AND l.code_ends_at > access.now() AND l.code_spent_at IS NULL AND l.code_tries < 5
  RETURNING l.id, l.session_id, l.code_phc $$;

-- After the right code: takes the seat, or asks for it when another device has it.
-- Spends the code. Returns 'taken', 'asked', or null when the link has gone meanwhile.
CREATE FUNCTION access.claim_seat(link uuid, seat_id uuid, hash bytea, on_device text) RETURNS text
LANGUAGE plpgsql SECURITY DEFINER SET search_path = '' AS $$
DECLARE which uuid;
BEGIN
  UPDATE access.join_link SET code_spent_at = access.now()
  WHERE id = link AND code_spent_at IS NULL AND revoked_at IS NULL RETURNING session_id INTO which;
  IF which IS NULL THEN RETURN NULL; END IF;
  PERFORM pg_advisory_xact_lock(hashtextextended(which::text, 0));
  IF EXISTS (SELECT FROM access.seat WHERE session_id = which AND taken_at IS NOT NULL AND closed_at IS NULL) THEN
    INSERT INTO access.seat (id, token_hash, link_id, session_id, device, asked_at) VALUES (seat_id, hash, link, which, on_device, access.now());
    RETURN 'asked';
  END IF;
  INSERT INTO access.seat (id, token_hash, link_id, session_id, device, asked_at, taken_at)
  VALUES (seat_id, hash, link, which, on_device, access.now(), access.now());
  RETURN 'taken';
END $$;

-- Where a seat stands: 'taken', 'asked' or null; and its session.
CREATE FUNCTION access.seat_state() RETURNS TABLE (seat_id uuid, session_id uuid, state text)
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = '' AS $$
  SELECT s.id, s.session_id, CASE WHEN s.taken_at IS NULL THEN 'asked' ELSE 'taken' END
  FROM access.seat s JOIN access.gate g USING (session_id)
  WHERE access.kind() = 'seat' AND s.token_hash = access.token_hash() AND s.closed_at IS NULL AND g.ended_at IS NULL $$;

-- The seats of a session for its clinician: the one that is taken, and those that ask.
CREATE FUNCTION access.seats(which uuid) RETURNS TABLE (seat_id uuid, device text, asked_at timestamptz, taken boolean)
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = '' AS $$
  SELECT s.id, s.device, s.asked_at, s.taken_at IS NOT NULL FROM access.seat s
  WHERE s.session_id = which AND s.closed_at IS NULL AND (access.treats_session(which) OR access.my_room() = which) $$;

-- The clinician moves the seat to the device that asked last, or refuses all that ask.
CREATE FUNCTION access.decide_seat(which uuid, move boolean) RETURNS boolean
LANGUAGE plpgsql SECURITY DEFINER SET search_path = '' AS $$
DECLARE asked uuid;
BEGIN
  IF NOT access.treats_session(which) THEN
    RAISE EXCEPTION 'not allowed to decide about this seat' USING ERRCODE = 'insufficient_privilege';
  END IF;
  SELECT id INTO asked FROM access.seat WHERE session_id = which AND taken_at IS NULL AND closed_at IS NULL ORDER BY asked_at DESC LIMIT 1;
  IF asked IS NULL THEN RETURN false; END IF;
  IF move THEN
    UPDATE access.seat SET closed_at = access.now() WHERE session_id = which AND closed_at IS NULL AND id <> asked;
    UPDATE access.seat SET taken_at = access.now() WHERE id = asked;
  ELSE
    UPDATE access.seat SET closed_at = access.now() WHERE session_id = which AND taken_at IS NULL AND closed_at IS NULL;
  END IF;
  RETURN true;
END $$;

CREATE FUNCTION access.leave_seat() RETURNS void LANGUAGE sql SECURITY DEFINER SET search_path = '' AS
  $$ UPDATE access.seat SET closed_at = access.now() WHERE access.kind() = 'seat' AND token_hash = access.token_hash() AND closed_at IS NULL $$;

-- A room acts under a token of its own, for one session's rows, so that it outlives the sign-in of
-- the clinician. Its clinician or its seat may open it.
CREATE FUNCTION access.open_room(hash bytea, which uuid) RETURNS boolean
LANGUAGE plpgsql SECURITY DEFINER SET search_path = '' AS $$
BEGIN
  IF NOT (access.treats_session(which) OR access.my_seat() = which) THEN RETURN false; END IF;
  DELETE FROM access.room_token WHERE ends_at <= access.now();
  INSERT INTO access.room_token VALUES (hash, which, access.now() + interval '24 hours');
  RETURN true;
END $$;

REVOKE ALL ON ALL FUNCTIONS IN SCHEMA access FROM PUBLIC;
GRANT EXECUTE ON ALL FUNCTIONS IN SCHEMA access TO leeward_app;
