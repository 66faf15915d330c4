-- Why: every act leaves a row, and the practice has a name and a place.

-- ---------------------------------------------------------------------------------------------
-- Audit: one row an act, in the same transaction, chained.

CREATE TABLE audit (
  seq bigint PRIMARY KEY,
  at timestamptz NOT NULL,
  kind text NOT NULL,          -- what sort of subject acted
  member_id uuid,              -- the member, if it was one
  act text NOT NULL,
  client_id uuid,
  object_id uuid,
  previous bytea NOT NULL,
  hash bytea NOT NULL
);

-- The bytes a row's hash covers; the checker of the chain calls this same function.
CREATE FUNCTION access.audit_hash(previous bytea, seq bigint, at timestamptz, kind text, member uuid, act text, client uuid, object uuid)
RETURNS bytea LANGUAGE sql IMMUTABLE AS $$
  SELECT sha256(previous || convert_to(concat_ws('|', seq, extract(epoch FROM at), kind, coalesce(member::text, '-'), act,
    coalesce(client::text, '-'), coalesce(object::text, '-')), 'UTF8')) $$;

CREATE FUNCTION access.audit(act text, client uuid, object uuid) RETURNS void
LANGUAGE plpgsql SECURITY DEFINER SET search_path = '' AS $$
DECLARE head access.audit_head; next_hash bytea; who uuid; what text := coalesce(access.kind(), 'nobody');
BEGIN
  SELECT s.member_id INTO who FROM access.signin s WHERE what = 'member' AND s.token_hash = access.token_hash();
  SELECT * INTO head FROM access.audit_head FOR UPDATE;
  next_hash := access.audit_hash(head.hash, head.seq + 1, access.now(), what, who, act, client, object);
  INSERT INTO public.audit VALUES (head.seq + 1, access.now(), what, who, act, client, object, head.hash, next_hash);
  UPDATE access.audit_head SET seq = head.seq + 1, hash = next_hash;
END $$;

ALTER TABLE audit ENABLE ROW LEVEL SECURITY;
ALTER TABLE audit FORCE ROW LEVEL SECURITY;
CREATE POLICY read ON audit FOR SELECT USING ((SELECT access.is_owner()) OR (SELECT access.has_role('administrator')));
CREATE POLICY append ON audit FOR INSERT WITH CHECK ((SELECT access.is_owner()));
GRANT SELECT ON audit TO leeward_app;

-- ---------------------------------------------------------------------------------------------
-- The practice

CREATE TABLE practice (
  singleton boolean PRIMARY KEY DEFAULT true CHECK (singleton),
  instance uuid NOT NULL,
  name text NOT NULL,
  zone text NOT NULL,              -- IANA time zone of its days
  emergency_number text NOT NULL,
  demo boolean NOT NULL            -- seeded with invented people
);
INSERT INTO practice (instance, name, zone, emergency_number, demo) VALUES (gen_random_uuid(), 'Practice', 'UTC', '112', false);
ALTER TABLE practice ENABLE ROW LEVEL SECURITY;
ALTER TABLE practice FORCE ROW LEVEL SECURITY;
CREATE POLICY read ON practice FOR SELECT USING (true);
CREATE POLICY change ON practice FOR UPDATE USING ((SELECT access.is_owner()) OR (SELECT access.has_role('administrator')));
GRANT SELECT, UPDATE ON practice TO leeward_app;

-- The demo's own sign-in: only on a database that the demo seeded.
CREATE FUNCTION access.demo_member(wanted text) RETURNS uuid LANGUAGE sql STABLE SECURITY DEFINER SET search_path = '' AS $$
  SELECT m.id FROM access.member m JOIN public.practice p ON p.demo
  WHERE m.left_at IS NULL AND wanted = ANY (m.roles) ORDER BY m.joined_at, m.name LIMIT 1 $$;

-- The start-up check compares this with the migrations in the binary.
CREATE FUNCTION access.schema_version() RETURNS bigint LANGUAGE plpgsql STABLE SECURITY DEFINER SET search_path = '' AS
  $$ BEGIN RETURN (SELECT coalesce(max(version), 0) FROM public._sqlx_migrations WHERE success); END $$;

REVOKE ALL ON ALL FUNCTIONS IN SCHEMA access FROM PUBLIC;
GRANT EXECUTE ON ALL FUNCTIONS IN SCHEMA access TO leeward_app;
