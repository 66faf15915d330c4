-- Why: a clinician who left took their clients out of everybody's reach, a lost passkey took its member out of the practice,
-- and a role could not be changed. What gives somebody access to people's records now also asks for the passkey again.

-- ---------------------------------------------------------------------------------------------
-- The passkey, shown again. A browser that was left open must not be enough to change who gets at what.

ALTER TABLE access.signin ADD COLUMN shown_at timestamptz;
UPDATE access.signin SET shown_at = opened_at;
ALTER TABLE access.signin ALTER COLUMN shown_at SET NOT NULL;

CREATE OR REPLACE FUNCTION access.open_signin(signin_id uuid, hash bytea, who uuid, on_device text) RETURNS boolean
LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
DECLARE at timestamptz := access.now();
BEGIN
  INSERT INTO access.signin (id, token_hash, member_id, device, opened_at, seen_at, shown_at, ends_at)
  SELECT signin_id, hash, m.id, on_device, at, at, at, at + interval '12 hours' FROM access.member m WHERE m.id = who AND m.left_at IS NULL;
  RETURN FOUND;
END $$;

-- Whether the asker's passkey was shown within the last ten minutes.
CREATE FUNCTION access.is_fresh() RETURNS boolean
LANGUAGE plpgsql STABLE SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
DECLARE mine uuid := access.my_signin();
BEGIN
  RETURN EXISTS (SELECT FROM access.signin WHERE id = mine AND shown_at > access.now() - interval '10 minutes');
END $$;

-- That a member has shown a passkey of theirs again in the sign-in that asks. For the role that signs people in, which has
-- seen the passkey; true when it was a passkey of that sign-in's own member.
CREATE FUNCTION access.passkey_shown(who uuid) RETURNS boolean
LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
BEGIN
  UPDATE access.signin SET shown_at = access.now() WHERE id = access.my_signin() AND member_id = who;
  RETURN FOUND;
END $$;

-- Refuses in one way what needs a fresh passkey: the portal reads this code.
CREATE FUNCTION access.must_be_fresh() RETURNS void
LANGUAGE plpgsql STABLE SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
BEGIN
  IF access.is_fresh() IS NOT TRUE THEN
    RAISE EXCEPTION 'the passkey was not shown lately' USING ERRCODE = 'LW001';
  END IF;
END $$;

CREATE OR REPLACE FUNCTION access.remove_passkey(which uuid) RETURNS boolean
LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
BEGIN
  PERFORM access.must_be_fresh();
  PERFORM FROM access.member WHERE id = access.me() FOR UPDATE;
  DELETE FROM access.passkey p WHERE p.id = which AND p.member_id = access.me()
    AND (SELECT count(*) FROM access.passkey o WHERE o.member_id = access.me()) > 1;
  RETURN FOUND;
END $$;

-- ---------------------------------------------------------------------------------------------
-- Links to make a passkey end with the sign-in that made them.

ALTER TABLE access.invitation ADD COLUMN made_in uuid REFERENCES access.signin ON DELETE SET NULL;

CREATE OR REPLACE FUNCTION access.invite(hash bytea, for_member uuid, for_name text, for_roles text[], until timestamptz) RETURNS void
LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
BEGIN
  IF (session_user = current_user OR (for_member IS NULL AND access.has_role('administrator')) OR for_member = access.me()) IS NOT TRUE THEN
    RAISE EXCEPTION 'not allowed to invite' USING ERRCODE = 'insufficient_privilege';
  END IF;
  IF session_user <> current_user THEN PERFORM access.must_be_fresh(); END IF;
  INSERT INTO access.invitation (token_hash, member_id, name, roles, made_by, made_in, made_at, ends_at)
  VALUES (hash, for_member, for_name, for_roles, access.me(), access.my_signin(), access.now(), until);
END $$;

CREATE FUNCTION access.end_links_of_signin() RETURNS trigger
LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
BEGIN
  UPDATE access.invitation SET ends_at = least(ends_at, NEW.closed_at)
  WHERE made_in = NEW.id AND member_id IS NOT NULL AND spent_at IS NULL;
  RETURN NULL;
END $$;
CREATE TRIGGER links_end AFTER UPDATE OF closed_at ON access.signin
  FOR EACH ROW WHEN (NEW.closed_at IS NOT NULL AND OLD.closed_at IS NULL) EXECUTE FUNCTION access.end_links_of_signin();

-- ---------------------------------------------------------------------------------------------
-- Who treats whom: only while they are clinicians of this practice.

CREATE OR REPLACE FUNCTION access.my_clients() RETURNS SETOF uuid
LANGUAGE plpgsql STABLE SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
DECLARE who uuid := access.me();
BEGIN
  IF who IS NULL THEN RETURN; END IF;
  RETURN QUERY SELECT c.client_id FROM access.care_link c JOIN access.member m ON m.id = c.member_id
    WHERE c.member_id = who AND c.until IS NULL AND 'clinician' = ANY (m.roles);
END $$;

-- May say who treats whom, without seeing a word of it.
CREATE FUNCTION access.may_hand_over() RETURNS boolean
LANGUAGE plpgsql STABLE SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
BEGIN
  RETURN access.has_role('administrator') OR access.has_role('lead');
END $$;

-- The clients of a member, for whoever may hand them over: by record number. `alone`: nobody else treats them. With no member
-- named, the clients whom nobody treats.
CREATE FUNCTION access.clients_of(who uuid) RETURNS TABLE (client_id uuid, number integer, alone boolean, session_id uuid)
LANGUAGE plpgsql STABLE SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
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
-- The owner, whom it runs as, is bound by row security there.
CREATE POLICY hand_over ON client FOR SELECT USING ((SELECT access.is_owner()));

-- What somebody is told on their next page, until they have read it: no words about anybody.
CREATE TABLE access.news (
  id uuid PRIMARY KEY DEFAULT gen_random_uuid(),
  member_id uuid NOT NULL REFERENCES access.member,
  kind text NOT NULL CHECK (kind IN ('client_given', 'client_taken', 'passkey_asked', 'passkey_replaced', 'roles_changed')),
  client_id uuid REFERENCES client,
  about uuid REFERENCES access.member,
  by_member uuid REFERENCES access.member,
  at timestamptz NOT NULL,
  read_at timestamptz
);
CREATE INDEX ON access.news (member_id) WHERE read_at IS NULL;

-- Gives a client of `from_member` (or of nobody) to `to_member`. True when that is how it stands afterwards.
CREATE FUNCTION access.hand_over(link_id uuid, client uuid, from_member uuid, to_member uuid) RETURNS boolean
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
  -- Two who hand the same client over at once do it one after the other.
  PERFORM FROM access.care_link WHERE client_id = client ORDER BY id FOR UPDATE;
  UPDATE access.care_link SET until = at WHERE client_id = client AND member_id = from_member AND until IS NULL;
  GET DIAGNOSTICS ended = ROW_COUNT;
  IF from_member IS NOT NULL AND ended = 0 THEN RETURN false; END IF;
  IF from_member IS NULL AND EXISTS (SELECT FROM access.care_link WHERE client_id = client AND until IS NULL) THEN
    -- Links of members who have left or treat nobody any more end with it.
    UPDATE access.care_link l SET until = at FROM access.member m
    WHERE l.client_id = client AND l.until IS NULL AND m.id = l.member_id AND (m.left_at IS NOT NULL OR 'clinician' <> ALL (m.roles));
  END IF;
  INSERT INTO access.care_link SELECT link_id, to_member, client, at, NULL
  WHERE NOT EXISTS (SELECT FROM access.care_link WHERE client_id = client AND member_id = to_member AND until IS NULL);
  INSERT INTO access.news (member_id, kind, client_id, about, by_member, at)
  SELECT m.id, k.kind, client, k.other, access.me(), at
  FROM (VALUES (from_member, 'client_taken', to_member), (to_member, 'client_given', from_member)) AS k (who, kind, other)
  JOIN access.member m ON m.id = k.who AND m.left_at IS NULL;
  RETURN true;
END $$;

CREATE FUNCTION access.my_news() RETURNS TABLE (id uuid, kind text, client_id uuid, number integer, about text, by_name text, at timestamptz)
LANGUAGE plpgsql STABLE SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
BEGIN
  RETURN QUERY SELECT n.id, n.kind, n.client_id, (SELECT c.number FROM public.client c WHERE c.id = n.client_id),
    (SELECT m.name FROM access.member m WHERE m.id = n.about), (SELECT m.name FROM access.member m WHERE m.id = n.by_member), n.at
  FROM access.news n WHERE n.member_id = access.me() AND n.read_at IS NULL ORDER BY n.at;
END $$;

CREATE FUNCTION access.news_read(which uuid) RETURNS boolean
LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
BEGIN
  UPDATE access.news SET read_at = coalesce(read_at, access.now()) WHERE id = which AND member_id = access.me();
  RETURN FOUND;
END $$;

-- ---------------------------------------------------------------------------------------------
-- Leaving, and changing roles. Both may leave clients alone, which the portal asks about first; what is then still alone stands
-- on the list of clients whom nobody treats.

CREATE OR REPLACE FUNCTION access.end_membership(who uuid) RETURNS SETOF uuid
LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
BEGIN
  IF (access.has_role('administrator') AND who <> access.me()) IS NOT TRUE THEN
    RAISE EXCEPTION 'not allowed to end this membership' USING ERRCODE = 'insufficient_privilege';
  END IF;
  PERFORM access.must_be_fresh();
  UPDATE access.member SET left_at = access.now() WHERE id = who AND left_at IS NULL;
  UPDATE access.care_link SET until = access.now() WHERE member_id = who AND until IS NULL;
  UPDATE access.invitation SET ends_at = access.now()
  WHERE (made_by = who OR member_id = who) AND spent_at IS NULL AND ends_at > access.now();
  RETURN QUERY UPDATE access.signin SET closed_at = access.now() WHERE member_id = who AND closed_at IS NULL RETURNING id;
END $$;

-- True when the roles are these afterwards. Nobody takes their own administration away, so one administrator always stays.
CREATE FUNCTION access.change_roles(who uuid, wanted text[]) RETURNS boolean
LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
BEGIN
  IF access.has_role('administrator') IS NOT TRUE THEN
    RAISE EXCEPTION 'not allowed to change roles' USING ERRCODE = 'insufficient_privilege';
  END IF;
  PERFORM access.must_be_fresh();
  IF (who = access.me() AND 'administrator' <> ALL (wanted)) IS NOT FALSE THEN RETURN false; END IF;
  UPDATE access.member SET roles = wanted WHERE id = who AND left_at IS NULL;
  IF NOT FOUND THEN RETURN false; END IF;
  INSERT INTO access.news (member_id, kind, by_member, at) SELECT who, 'roles_changed', access.me(), access.now() WHERE who <> access.me();
  RETURN true;
END $$;

-- ---------------------------------------------------------------------------------------------
-- A lost passkey is replaced by two: an administrator asks, somebody else agrees (an administrator or a lead, or the owner's
-- command on the server in a practice of one). Only then there is a link, and with the passkey made by it all older ones go.

CREATE TABLE access.replacement (
  id uuid PRIMARY KEY,
  member_id uuid NOT NULL REFERENCES access.member,
  asked_by uuid REFERENCES access.member,     -- null: the owner's command
  asked_at timestamptz NOT NULL,
  agreed_by uuid REFERENCES access.member,    -- null: nobody yet, or the owner's command
  agreed_at timestamptz,
  ends_at timestamptz NOT NULL,
  CHECK (agreed_by IS DISTINCT FROM asked_by OR agreed_by IS NULL),
  CHECK (asked_by IS DISTINCT FROM member_id AND agreed_by IS DISTINCT FROM member_id)
);
CREATE INDEX ON access.replacement (member_id);
ALTER TABLE access.invitation ADD COLUMN replacement uuid REFERENCES access.replacement;

CREATE FUNCTION access.ask_replacement(which uuid, who uuid) RETURNS void
LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
DECLARE owner boolean := session_user = current_user; at timestamptz := access.now();
BEGIN
  IF (owner OR (access.has_role('administrator') AND who <> access.me())) IS NOT TRUE
    OR NOT EXISTS (SELECT FROM access.member WHERE id = who AND left_at IS NULL) THEN
    RAISE EXCEPTION 'not allowed to ask for this' USING ERRCODE = 'insufficient_privilege';
  END IF;
  IF NOT owner THEN PERFORM access.must_be_fresh(); END IF;
  -- One at a time: an earlier one that nobody agreed to is over.
  UPDATE access.replacement SET ends_at = at WHERE member_id = who AND agreed_at IS NULL AND ends_at > at;
  INSERT INTO access.replacement (id, member_id, asked_by, asked_at, ends_at) VALUES (which, who, access.me(), at, at + interval '1 day');
  INSERT INTO access.news (member_id, kind, about, by_member, at)
  SELECT m.id, 'passkey_asked', who, access.me(), at FROM access.member m
  WHERE m.left_at IS NULL AND m.roles && ARRAY['administrator', 'lead'] AND m.id <> who AND m.id IS DISTINCT FROM access.me();
END $$;

-- What waits for somebody's agreement; `mine`: the asker asked for it, and cannot be the one who agrees.
CREATE FUNCTION access.replacements() RETURNS TABLE (id uuid, member_id uuid, name text, asked_by text, mine boolean, asked_at timestamptz, ends_at timestamptz)
LANGUAGE plpgsql STABLE SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
BEGIN
  IF (session_user = current_user OR access.may_hand_over()) IS NOT TRUE THEN RETURN; END IF;
  RETURN QUERY SELECT r.id, r.member_id, m.name, (SELECT a.name FROM access.member a WHERE a.id = r.asked_by),
    r.asked_by IS NOT DISTINCT FROM access.me() AND session_user <> current_user, r.asked_at, r.ends_at
  FROM access.replacement r JOIN access.member m ON m.id = r.member_id
  WHERE r.agreed_at IS NULL AND r.ends_at > access.now() AND m.left_at IS NULL AND r.member_id IS DISTINCT FROM access.me() ORDER BY r.asked_at;
END $$;

-- Agrees, and makes the link. Null when there is nothing to agree to, or not by this person; else the member.
CREATE FUNCTION access.agree_replacement(which uuid, hash bytea, until timestamptz) RETURNS uuid
LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
DECLARE owner boolean := session_user = current_user; me uuid := access.me(); at timestamptz := access.now(); r access.replacement;
BEGIN
  IF (owner OR access.may_hand_over()) IS NOT TRUE THEN
    RAISE EXCEPTION 'not allowed to agree to this' USING ERRCODE = 'insufficient_privilege';
  END IF;
  IF NOT owner THEN PERFORM access.must_be_fresh(); END IF;
  UPDATE access.replacement p SET agreed_by = me, agreed_at = at
  WHERE p.id = which AND p.agreed_at IS NULL AND p.ends_at > at
    -- Two people: the one who asked, and another. The owner's command may be one of the two, and both where there is nobody else.
    AND (CASE WHEN owner THEN p.asked_by IS NOT NULL OR NOT EXISTS (SELECT FROM access.member o
        WHERE o.id <> p.member_id AND o.left_at IS NULL AND o.roles && ARRAY['administrator', 'lead']) ELSE p.asked_by IS DISTINCT FROM me AND p.member_id <> me END)
    AND EXISTS (SELECT FROM access.member m WHERE m.id = p.member_id AND m.left_at IS NULL)
  RETURNING * INTO r;
  IF NOT FOUND THEN RETURN NULL; END IF;
  INSERT INTO access.invitation (token_hash, member_id, name, roles, made_by, made_at, ends_at, replacement)
  SELECT hash, m.id, m.name, m.roles, me, at, until, r.id FROM access.member m WHERE m.id = r.member_id;
  RETURN r.member_id;
END $$;

-- As before; with a replacement, older passkeys and all sign-ins go, and every administrator is told.
CREATE OR REPLACE FUNCTION access.accept_invitation(hash bytea, new_member uuid, passkey_id uuid, credential bytea, passkey jsonb, label text)
RETURNS uuid LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
DECLARE i access.invitation; who uuid; at timestamptz := access.now();
BEGIN
  UPDATE access.invitation SET spent_at = at WHERE token_hash = hash AND spent_at IS NULL AND ends_at > at RETURNING * INTO i;
  IF NOT FOUND THEN RETURN NULL; END IF;
  who := coalesce(i.member_id, new_member);
  IF i.member_id IS NULL THEN
    INSERT INTO access.member (id, name, roles, joined_at) VALUES (who, i.name, i.roles, at);
  END IF;
  IF i.replacement IS NOT NULL THEN
    DELETE FROM access.passkey WHERE member_id = who;
    UPDATE access.signin SET closed_at = at WHERE member_id = who AND closed_at IS NULL;
    INSERT INTO access.news (member_id, kind, about, at)
    SELECT m.id, 'passkey_replaced', who, at FROM access.member m WHERE m.left_at IS NULL AND 'administrator' = ANY (m.roles);
  END IF;
  INSERT INTO access.passkey (id, member_id, credential_id, passkey, label, added_at) VALUES (passkey_id, who, credential, passkey, label, at);
  RETURN who;
END $$;

-- ---------------------------------------------------------------------------------------------

INSERT INTO access.audit_act (kind, act) SELECT 'member', unnest(ARRAY[
  'client.hand_over', 'member.clients', 'member.roles', 'news.read', 'passkey.show', 'replacement.ask', 'replacement.agree']);
INSERT INTO access.audit_act VALUES ('owner', 'replacement.ask', false), ('owner', 'replacement.agree', false);

REVOKE ALL ON FUNCTION access.is_fresh(), access.passkey_shown(uuid), access.must_be_fresh(), access.may_hand_over(), access.clients_of(uuid),
  access.hand_over(uuid, uuid, uuid, uuid), access.my_news(), access.news_read(uuid), access.change_roles(uuid, text[]),
  access.ask_replacement(uuid, uuid), access.replacements(), access.agree_replacement(uuid, bytea, timestamptz),
  access.end_links_of_signin() FROM PUBLIC;
GRANT EXECUTE ON FUNCTION access.is_fresh(), access.must_be_fresh(), access.may_hand_over(), access.clients_of(uuid),
  access.hand_over(uuid, uuid, uuid, uuid), access.my_news(), access.news_read(uuid), access.change_roles(uuid, text[]),
  access.ask_replacement(uuid, uuid), access.replacements(), access.agree_replacement(uuid, bytea, timestamptz) TO leeward_app;
GRANT EXECUTE ON FUNCTION access.passkey_shown(uuid) TO leeward_signin;
