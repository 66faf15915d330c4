-- Why: who may do what, before there is anything to do it to.
--
-- The schema `access` holds what the row-level-security policies read: sign-ins, care links, links
-- and seats of clients, tokens of rooms. The app role has no right on its tables, only on its
-- functions. They run as the owner, who is not bound by row level security here (no FORCE), so that
-- a policy never reads its own table. The start-up check knows this schema by name.
--
-- A transaction says who it acts for in three transaction-local settings: `leeward.kind`,
-- `leeward.token` (the raw token, hex) and `leeward.now` (the portal's clock). A kind alone opens
-- nothing: every policy goes through a token whose hash must be found here.

DO $$ BEGIN
  IF NOT EXISTS (SELECT FROM pg_roles WHERE rolname = 'leeward_app') THEN
    CREATE ROLE leeward_app LOGIN NOSUPERUSER NOBYPASSRLS NOCREATEDB NOCREATEROLE;
  END IF;
EXCEPTION WHEN duplicate_object OR unique_violation THEN NULL; END $$;

CREATE SCHEMA access;
REVOKE ALL ON SCHEMA access FROM PUBLIC;
GRANT USAGE ON SCHEMA access TO leeward_app;
GRANT USAGE ON SCHEMA public TO leeward_app;

CREATE TABLE access.member (
  id uuid PRIMARY KEY,
  name text NOT NULL CHECK (length(name) BETWEEN 1 AND 120),
  roles text[] NOT NULL CHECK (roles <@ ARRAY['clinician','lead','administrator'] AND cardinality(roles) > 0),
  joined_at timestamptz NOT NULL,
  left_at timestamptz
);

CREATE TABLE access.invitation (
  token_hash bytea PRIMARY KEY,
  member_id uuid REFERENCES access.member, -- set when it adds a passkey to somebody who is a member already
  name text NOT NULL,
  roles text[] NOT NULL,
  made_by uuid REFERENCES access.member,
  made_at timestamptz NOT NULL,
  ends_at timestamptz NOT NULL,
  spent_at timestamptz
);

CREATE TABLE access.passkey (
  id uuid PRIMARY KEY,
  member_id uuid NOT NULL REFERENCES access.member,
  credential_id bytea NOT NULL UNIQUE,
  passkey jsonb NOT NULL,
  label text NOT NULL,
  added_at timestamptz NOT NULL,
  used_at timestamptz
);

-- The server's half of a passkey ceremony: deleted on use, five minutes at most.
CREATE TABLE access.ceremony (
  token_hash bytea PRIMARY KEY,
  state jsonb NOT NULL,
  ends_at timestamptz NOT NULL
);

CREATE TABLE access.signin (
  id uuid PRIMARY KEY,
  token_hash bytea NOT NULL UNIQUE,
  member_id uuid NOT NULL REFERENCES access.member,
  device text NOT NULL,
  opened_at timestamptz NOT NULL,
  seen_at timestamptz NOT NULL,
  ends_at timestamptz NOT NULL,
  closed_at timestamptz
);
CREATE INDEX ON access.signin (member_id);

CREATE TABLE access.care_link (
  id uuid PRIMARY KEY,
  member_id uuid NOT NULL REFERENCES access.member,
  client_id uuid NOT NULL,
  since timestamptz NOT NULL,
  until timestamptz
);
CREATE INDEX ON access.care_link (member_id);
CREATE INDEX ON access.care_link (client_id);

-- The few facts of a session that policies need; kept by a trigger on `session`.
CREATE TABLE access.gate (
  session_id uuid PRIMARY KEY,
  client_id uuid NOT NULL,
  ended_at timestamptz
);

CREATE TABLE access.join_link (
  id uuid PRIMARY KEY,
  token_hash bytea NOT NULL UNIQUE,
  session_id uuid NOT NULL,
  made_at timestamptz NOT NULL,
  ends_at timestamptz NOT NULL,
  revoked_at timestamptz,
  code_phc text NOT NULL,
  code_ends_at timestamptz NOT NULL,
  code_tries smallint NOT NULL DEFAULT 0,
  code_spent_at timestamptz
);
CREATE INDEX ON access.join_link (session_id);

CREATE TABLE access.seat (
  id uuid PRIMARY KEY,
  token_hash bytea NOT NULL UNIQUE,
  link_id uuid NOT NULL REFERENCES access.join_link,
  session_id uuid NOT NULL,
  device text NOT NULL,
  asked_at timestamptz NOT NULL,
  taken_at timestamptz,   -- it is the seat of the session
  closed_at timestamptz   -- left, moved away from, or refused
);
CREATE UNIQUE INDEX one_seat_per_session ON access.seat (session_id) WHERE taken_at IS NOT NULL AND closed_at IS NULL;
CREATE INDEX ON access.seat (session_id);

CREATE TABLE access.room_token (
  token_hash bytea PRIMARY KEY,
  session_id uuid NOT NULL,
  ends_at timestamptz NOT NULL
);

-- The head of the audit chain: locking this one row puts the rows in order.
CREATE TABLE access.audit_head (singleton boolean PRIMARY KEY DEFAULT true CHECK (singleton), seq bigint NOT NULL, hash bytea NOT NULL);
INSERT INTO access.audit_head (seq, hash) VALUES (0, sha256('leeward audit 1'));

-- ---------------------------------------------------------------------------------------------
-- Who is asking
--
-- In PL/pgSQL, whose plans are kept for the connection: Postgres plans a function in SQL anew at each
-- call, and one statement asks a handful of these. In a policy each stands in a sub-select, which is
-- asked once for a statement and not for every row.

CREATE FUNCTION access.kind() RETURNS text LANGUAGE sql STABLE AS
  $$ SELECT nullif(current_setting('leeward.kind', true), '') $$;
CREATE FUNCTION access.token_hash() RETURNS bytea LANGUAGE sql STABLE AS
  $$ SELECT sha256(decode(nullif(current_setting('leeward.token', true), ''), 'hex')) $$;
CREATE FUNCTION access.now() RETURNS timestamptz LANGUAGE sql STABLE AS
  $$ SELECT nullif(current_setting('leeward.now', true), '')::timestamptz $$;

CREATE FUNCTION access.my_signin() RETURNS uuid LANGUAGE plpgsql STABLE SECURITY DEFINER SET search_path = '' AS $$
BEGIN
  IF access.kind() IS DISTINCT FROM 'member' THEN RETURN NULL; END IF;
  RETURN (SELECT s.id FROM access.signin s JOIN access.member m ON m.id = s.member_id
    WHERE s.token_hash = access.token_hash() AND s.closed_at IS NULL AND s.ends_at > access.now()
      AND s.seen_at > access.now() - interval '30 minutes' AND m.left_at IS NULL);
END $$;

CREATE FUNCTION access.me() RETURNS uuid LANGUAGE plpgsql STABLE SECURITY DEFINER SET search_path = '' AS $$
DECLARE mine uuid := access.my_signin();
BEGIN
  IF mine IS NULL THEN RETURN NULL; END IF;
  RETURN (SELECT member_id FROM access.signin WHERE id = mine);
END $$;

CREATE FUNCTION access.has_role(wanted text) RETURNS boolean LANGUAGE plpgsql STABLE SECURITY DEFINER SET search_path = '' AS $$
DECLARE who uuid := access.me();
BEGIN
  RETURN EXISTS (SELECT FROM access.member WHERE id = who AND wanted = ANY (roles));
END $$;

CREATE FUNCTION access.my_clients() RETURNS SETOF uuid LANGUAGE plpgsql STABLE SECURITY DEFINER SET search_path = '' AS $$
DECLARE who uuid := access.me(); at timestamptz := access.now();
BEGIN
  IF who IS NULL THEN RETURN; END IF;
  RETURN QUERY SELECT client_id FROM access.care_link WHERE member_id = who AND since <= at AND (until IS NULL OR until > at);
END $$;

CREATE FUNCTION access.my_room() RETURNS uuid LANGUAGE plpgsql STABLE SECURITY DEFINER SET search_path = '' AS $$
BEGIN
  IF access.kind() IS DISTINCT FROM 'room' THEN RETURN NULL; END IF;
  RETURN (SELECT session_id FROM access.room_token WHERE token_hash = access.token_hash() AND ends_at > access.now());
END $$;

CREATE FUNCTION access.my_room_client() RETURNS uuid LANGUAGE plpgsql STABLE SECURITY DEFINER SET search_path = '' AS $$
DECLARE mine uuid := access.my_room();
BEGIN
  IF mine IS NULL THEN RETURN NULL; END IF;
  RETURN (SELECT client_id FROM access.gate WHERE session_id = mine);
END $$;

-- A seat reaches its session while that is open; for 15 minutes after the end it may still hand in
-- what its screen showed.
CREATE FUNCTION access.seat_within(after interval) RETURNS uuid LANGUAGE plpgsql STABLE SECURITY DEFINER SET search_path = '' AS $$
DECLARE at timestamptz := access.now();
BEGIN
  IF access.kind() IS DISTINCT FROM 'seat' THEN RETURN NULL; END IF;
  RETURN (SELECT s.session_id FROM access.seat s JOIN access.gate g USING (session_id)
    WHERE s.token_hash = access.token_hash() AND s.taken_at IS NOT NULL AND s.closed_at IS NULL
      AND (g.ended_at IS NULL OR g.ended_at > at - after));
END $$;
CREATE FUNCTION access.my_seat() RETURNS uuid LANGUAGE plpgsql STABLE SECURITY DEFINER SET search_path = '' AS
  $$ BEGIN RETURN access.seat_within(interval '0'); END $$;
CREATE FUNCTION access.my_late_seat() RETURNS uuid LANGUAGE plpgsql STABLE SECURITY DEFINER SET search_path = '' AS
  $$ BEGIN RETURN access.seat_within(interval '15 minutes'); END $$;

-- True in functions that run as the owner, and for the owner's own commands.
CREATE FUNCTION access.is_owner() RETURNS boolean LANGUAGE sql STABLE AS
  $$ SELECT current_user = (SELECT pg_get_userbyid(nspowner) FROM pg_namespace WHERE nspname = 'access') $$;

REVOKE ALL ON ALL FUNCTIONS IN SCHEMA access FROM PUBLIC;
GRANT EXECUTE ON ALL FUNCTIONS IN SCHEMA access TO leeward_app;
