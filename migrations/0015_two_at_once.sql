-- Why: somebody who treats nobody could be given any client beside the one who treats them, two administrators who acted at once
-- left none, a lost passkey's two could be one and a puppet, and links outlived the right of who had made them.

-- ---------------------------------------------------------------------------------------------
-- Handing over: of nobody only whom nobody treats; one at a time.

CREATE OR REPLACE FUNCTION access.hand_over(link_id uuid, client uuid, from_member uuid, to_member uuid) RETURNS boolean
LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
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

-- ---------------------------------------------------------------------------------------------
-- Roles and leaving: whoever changes who administers waits for whoever does it at the same time, and looks again after that.

ALTER TABLE access.news DROP CONSTRAINT news_kind_check;
ALTER TABLE access.news ADD CONSTRAINT news_kind_check CHECK (kind IN ('client_given', 'client_taken', 'passkey_asked', 'passkey_replaced',
  'passkey_refused', 'roles_changed', 'roles_of_changed', 'joined'));
-- Since when a member has had the last role that they were given; null: since they joined.
ALTER TABLE access.member ADD COLUMN roles_since timestamptz;

CREATE FUNCTION access.lock_administrators() RETURNS void
LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
BEGIN
  -- Not FOR UPDATE: the key of each one's request refers to its member already, and the two would wait for each other.
  PERFORM FROM access.member WHERE 'administrator' = ANY (roles) AND left_at IS NULL ORDER BY id FOR NO KEY UPDATE;
END $$;
REVOKE ALL ON FUNCTION access.lock_administrators() FROM PUBLIC;

-- Links to newcomers end with the right to make them.
CREATE FUNCTION access.end_invitations_of(who uuid) RETURNS void
LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
BEGIN
  UPDATE access.invitation SET ends_at = access.now()
  WHERE made_by = who AND member_id IS NULL AND spent_at IS NULL AND ends_at > access.now();
END $$;
REVOKE ALL ON FUNCTION access.end_invitations_of(uuid) FROM PUBLIC;

CREATE OR REPLACE FUNCTION access.end_membership(who uuid) RETURNS SETOF uuid
LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
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

-- `was`: the roles that the form showed. False when they are others by now, when there is no such member, or when it would take
-- the asker's own administration away.
DROP FUNCTION access.change_roles(uuid, text[]);
CREATE FUNCTION access.change_roles(who uuid, was text[], wanted text[]) RETURNS boolean
LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
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
REVOKE ALL ON FUNCTION access.change_roles(uuid, text[], text[]) FROM PUBLIC;
GRANT EXECUTE ON FUNCTION access.change_roles(uuid, text[], text[]) TO leeward_app;

-- ---------------------------------------------------------------------------------------------
-- A lost passkey: the member is told too, anybody who is told may refuse, and the second person was there before it was asked.

CREATE OR REPLACE FUNCTION access.ask_replacement(which uuid, who uuid) RETURNS void
LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
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

-- What waits for somebody's agreement, or was agreed to and not used yet: for who may agree, and for the member whom it is about.
DROP FUNCTION access.replacements();
CREATE FUNCTION access.replacements() RETURNS TABLE (id uuid, member_id uuid, name text, asked_by text, state text, asked_at timestamptz, ends_at timestamptz)
LANGUAGE plpgsql STABLE SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
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
REVOKE ALL ON FUNCTION access.replacements() FROM PUBLIC;
GRANT EXECUTE ON FUNCTION access.replacements() TO leeward_app;

-- Refuses it, before or after the other's agreement: the link is of no use then. True when that is how it stands.
CREATE FUNCTION access.refuse_replacement(which uuid) RETURNS boolean
LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
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
REVOKE ALL ON FUNCTION access.refuse_replacement(uuid) FROM PUBLIC;
GRANT EXECUTE ON FUNCTION access.refuse_replacement(uuid) TO leeward_app;
INSERT INTO access.audit_act VALUES ('member', 'replacement.refuse', false);

-- Agrees, and makes the link; see 0013. The second person had their roles before it was asked for, the first has theirs still.
CREATE OR REPLACE FUNCTION access.agree_replacement(which uuid, hash bytea, until timestamptz) RETURNS uuid
LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
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

-- As before; whoever joins as a lead or an administrator is announced to the administrators.
CREATE OR REPLACE FUNCTION access.accept_invitation(hash bytea, new_member uuid, passkey_id uuid, credential bytea, passkey jsonb, label text)
RETURNS uuid LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
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

-- ---------------------------------------------------------------------------------------------
-- Links end: not in the past, and not at a time that is none (`infinity` is one to Postgres and none to the portal).

CREATE OR REPLACE FUNCTION access.invite(hash bytea, for_member uuid, for_name text, for_roles text[], until timestamptz) RETURNS void
LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
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

CREATE OR REPLACE FUNCTION access.mint_link(link_id uuid, hash bytea, which uuid, until timestamptz, phc text) RETURNS void
LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
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

-- A room's token is renewed while its session is open; what is handed in late has the day that is left.
CREATE OR REPLACE FUNCTION access.keep_room() RETURNS void
LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
DECLARE at timestamptz := access.now();
BEGIN
  UPDATE access.room_token t SET ends_at = at + interval '24 hours' FROM access.gate g
  WHERE t.token_hash = access.token_hash() AND access.kind() = 'room' AND t.ends_at > at AND t.ends_at < at + interval '23 hours'
    AND g.session_id = t.session_id AND g.ended_at IS NULL;
END $$;

DO $$
DECLARE at record;
BEGIN
  FOR at IN
    SELECT c.oid::regclass AS of_table, a.attname AS name FROM pg_class c JOIN pg_attribute a ON a.attrelid = c.oid
    WHERE c.relkind = 'r' AND c.relnamespace IN ('public'::regnamespace, 'access'::regnamespace) AND c.relname <> '_sqlx_migrations'
      AND a.attnum > 0 AND NOT a.attisdropped AND a.atttypid IN ('timestamptz'::regtype, 'date'::regtype)
  LOOP
    EXECUTE format('ALTER TABLE %s ADD CONSTRAINT %I CHECK (isfinite(%I))', at.of_table, at.name || '_is_a_time', at.name);
  END LOOP;
END $$;

-- A key of a request is small: what is kept for a month is not somebody's store.
ALTER TABLE access.request_key ADD CONSTRAINT small CHECK (length(act) <= 100 AND length(body) <= 64 AND length(answer) <= 10000);

-- ---------------------------------------------------------------------------------------------
-- The app role writes the columns that the portal writes, and no others: not a record's number, not the order in which things were
-- kept, not to whom a row belongs. What is over stays over, and a room keeps to its own columns of a session.

REVOKE UPDATE ON practice FROM leeward_app;
REVOKE INSERT, UPDATE ON client, client_key, client_details, target, target_words, session, session_words, session_moment, stimulus_set,
  set_order, set_ending, set_evidence, rating, process_note, preset, comfort FROM leeward_app;

GRANT INSERT (id, opened_on, seizures, eye_condition, version), UPDATE (archived_at, seizures, eye_condition, version)
  ON client TO leeward_app;
GRANT INSERT (client_id, key_id, wrapped) ON client_key TO leeward_app;
GRANT INSERT (client_id, name, addressed_as, phone, contact_name, contact_phone, usual_location, version),
  UPDATE (name, addressed_as, phone, contact_name, contact_phone, usual_location, version) ON client_details TO leeward_app;
GRANT INSERT (id, client_id, number, prong, status, opened_at, version), UPDATE (prong, status, archived_at, version) ON target TO leeward_app;
GRANT INSERT (target_id, client_id, label, picture, negative_belief, positive_belief, emotions, body_location, version),
  UPDATE (label, picture, negative_belief, positive_belief, emotions, body_location, version) ON target_words TO leeward_app;
GRANT INSERT (id, client_id, member_id, target_id, number, zone, opened_at, room_epoch, version),
  UPDATE (admitted_at, ended_at, closing, room_epoch, room_holder, version) ON session TO leeward_app;
GRANT INSERT (session_id, client_id, location, call_back, resource, leaving_state, companion, next_contact, client_words, note, version,
  written_by, written_at) ON session_words TO leeward_app;
GRANT INSERT (session_id, client_id, kind, once, at) ON session_moment TO leeward_app;
GRANT INSERT (id, session_id, client_id, target_id, number, epoch, plan, recorded_at) ON stimulus_set TO leeward_app;
GRANT INSERT (set_id, seq, session_id, client_id, cause, at_ms, plan, timeline, recorded_at) ON set_order TO leeward_app;
GRANT INSERT (set_id, session_id, client_id, witness, ending, at_ms, recorded_at) ON set_ending TO leeward_app;
GRANT INSERT (set_id, seq, session_id, client_id, kind, at_ms, phase, width, frames, longest_gap, ending, recorded_at)
  ON set_evidence TO leeward_app;
GRANT INSERT (id, client_id, session_id, target_id, set_id, scale, value, moment, replaces, entered_by, at) ON rating TO leeward_app;
GRANT INSERT (id, session_id, client_id, set_id, moment, change, words, replaces, entered_by, at) ON process_note TO leeward_app;
GRANT INSERT (id, member_id, name, purpose, eyes, ears, hands, rate, width, cycles, made_at, version),
  UPDATE (name, purpose, eyes, ears, hands, rate, width, cycles, put_away_at, version) ON preset TO leeward_app;
GRANT INSERT (client_id, path, dot, comfort, filled_at, version), UPDATE (path, dot, comfort, filled_at, version) ON comfort TO leeward_app;

CREATE FUNCTION access.keep_session() RETURNS trigger LANGUAGE plpgsql SET search_path = pg_catalog, pg_temp AS $$
BEGIN
  IF OLD.ended_at IS NOT NULL AND (NEW.ended_at, NEW.closing) IS DISTINCT FROM (OLD.ended_at, OLD.closing)
    OR OLD.admitted_at IS NOT NULL AND NEW.admitted_at IS DISTINCT FROM OLD.admitted_at
    OR access.kind() = 'room' AND (NEW.admitted_at, NEW.ended_at, NEW.closing, NEW.version)
      IS DISTINCT FROM (OLD.admitted_at, OLD.ended_at, OLD.closing, OLD.version) THEN
    RAISE EXCEPTION 'not allowed to change this of a session' USING ERRCODE = 'insufficient_privilege';
  END IF;
  RETURN NEW;
END $$;
REVOKE ALL ON FUNCTION access.keep_session() FROM PUBLIC;
CREATE TRIGGER keep_session BEFORE UPDATE ON session FOR EACH ROW EXECUTE FUNCTION access.keep_session();
