-- Why: the records that a session needs: who the client is, what is worked on.
--
-- Numbers, dates, codes and ticked cautions stand in clear and the lead may read them. Words about a
-- person, names, phone numbers and places stand in tables of their own, sealed (bytea), and only
-- those who treat the client can reach these rows, or the key that opens them.

CREATE TABLE client (
  id uuid PRIMARY KEY,
  number integer GENERATED ALWAYS AS IDENTITY,
  opened_on date NOT NULL,
  archived_at timestamptz,
  seizures text NOT NULL CHECK (seizures IN ('not_asked', 'no', 'yes')),
  eye_condition text NOT NULL CHECK (eye_condition IN ('not_asked', 'no', 'yes')),
  version integer NOT NULL CHECK (version > 0)
);
ALTER TABLE access.care_link ADD FOREIGN KEY (client_id) REFERENCES client DEFERRABLE INITIALLY DEFERRED;

CREATE TABLE client_key (
  client_id uuid PRIMARY KEY REFERENCES client DEFERRABLE INITIALLY DEFERRED,
  key_id integer NOT NULL,        -- which key file wrapped it
  wrapped bytea NOT NULL
);

CREATE TABLE client_details (
  client_id uuid PRIMARY KEY REFERENCES client,
  name bytea NOT NULL,
  addressed_as bytea NOT NULL,
  phone bytea NOT NULL,
  contact_name bytea NOT NULL,
  contact_phone bytea NOT NULL,
  usual_location bytea NOT NULL,
  version integer NOT NULL CHECK (version > 0)
);

CREATE TABLE target (
  id uuid PRIMARY KEY,
  client_id uuid NOT NULL REFERENCES client,
  number integer NOT NULL CHECK (number > 0),   -- within the client
  prong text NOT NULL CHECK (prong IN ('past', 'present', 'future')),
  status text NOT NULL CHECK (status IN ('planned', 'active', 'incomplete', 'complete', 'reopened')),
  opened_at timestamptz NOT NULL,
  archived_at timestamptz,
  version integer NOT NULL CHECK (version > 0),
  UNIQUE (client_id, number),
  UNIQUE (id, client_id)
);

CREATE TABLE target_words (
  target_id uuid PRIMARY KEY,
  client_id uuid NOT NULL,
  label bytea NOT NULL,
  picture bytea NOT NULL,
  negative_belief bytea NOT NULL,
  positive_belief bytea NOT NULL,
  emotions bytea NOT NULL,
  body_location bytea NOT NULL,
  version integer NOT NULL CHECK (version > 0),
  FOREIGN KEY (target_id, client_id) REFERENCES target (id, client_id)
);

ALTER TABLE client ENABLE ROW LEVEL SECURITY;
ALTER TABLE client FORCE ROW LEVEL SECURITY;
CREATE POLICY read ON client FOR SELECT USING (
  id IN (SELECT access.my_clients()) OR (SELECT access.has_role('lead')) OR id = (SELECT access.my_room_client()));
CREATE POLICY add ON client FOR INSERT WITH CHECK (id IN (SELECT access.my_clients()));
CREATE POLICY change ON client FOR UPDATE USING (id IN (SELECT access.my_clients()));
GRANT SELECT, INSERT, UPDATE ON client TO leeward_app;

ALTER TABLE client_key ENABLE ROW LEVEL SECURITY;
ALTER TABLE client_key FORCE ROW LEVEL SECURITY;
CREATE POLICY read ON client_key FOR SELECT USING (client_id IN (SELECT access.my_clients()));
CREATE POLICY add ON client_key FOR INSERT WITH CHECK (client_id IN (SELECT access.my_clients()));
GRANT SELECT, INSERT ON client_key TO leeward_app;

ALTER TABLE client_details ENABLE ROW LEVEL SECURITY;
ALTER TABLE client_details FORCE ROW LEVEL SECURITY;
CREATE POLICY read ON client_details FOR SELECT USING (client_id IN (SELECT access.my_clients()));
CREATE POLICY add ON client_details FOR INSERT WITH CHECK (client_id IN (SELECT access.my_clients()));
CREATE POLICY change ON client_details FOR UPDATE USING (client_id IN (SELECT access.my_clients()));
GRANT SELECT, INSERT, UPDATE ON client_details TO leeward_app;

ALTER TABLE target ENABLE ROW LEVEL SECURITY;
ALTER TABLE target FORCE ROW LEVEL SECURITY;
CREATE POLICY read ON target FOR SELECT USING (client_id IN (SELECT access.my_clients()) OR (SELECT access.has_role('lead')));
CREATE POLICY add ON target FOR INSERT WITH CHECK (client_id IN (SELECT access.my_clients()));
CREATE POLICY change ON target FOR UPDATE USING (client_id IN (SELECT access.my_clients()));
GRANT SELECT, INSERT, UPDATE ON target TO leeward_app;

ALTER TABLE target_words ENABLE ROW LEVEL SECURITY;
ALTER TABLE target_words FORCE ROW LEVEL SECURITY;
CREATE POLICY read ON target_words FOR SELECT USING (client_id IN (SELECT access.my_clients()));
CREATE POLICY add ON target_words FOR INSERT WITH CHECK (client_id IN (SELECT access.my_clients()));
CREATE POLICY change ON target_words FOR UPDATE USING (client_id IN (SELECT access.my_clients()));
GRANT SELECT, INSERT, UPDATE ON target_words TO leeward_app;
