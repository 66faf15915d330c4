-- Why: what happened in a session: what was ordered, what the client's screen showed, what was rated
-- and reported. Sets, orders, evidence, ratings and notes are append-only: the app role has no right
-- to change or delete them. A correction is a new row that names the one it replaces.

CREATE TABLE session (
  id uuid PRIMARY KEY,
  client_id uuid NOT NULL REFERENCES client,
  member_id uuid NOT NULL REFERENCES access.member,
  target_id uuid,
  number integer NOT NULL CHECK (number > 0),   -- within the client
  zone text NOT NULL,                           -- IANA, of the practice at that time
  opened_at timestamptz NOT NULL,
  admitted_at timestamptz,
  ended_at timestamptz,
  closing text CHECK (closing IN ('complete', 'incomplete', 'no_reprocessing')),
  room_epoch integer NOT NULL CHECK (room_epoch >= 0),  -- counts the holders of its room
  room_holder uuid,
  version integer NOT NULL CHECK (version > 0),
  UNIQUE (client_id, number),
  UNIQUE (id, client_id),
  FOREIGN KEY (target_id, client_id) REFERENCES target (id, client_id)
);
CREATE INDEX ON session (member_id, opened_at);

CREATE TABLE session_words (
  session_id uuid PRIMARY KEY,
  client_id uuid NOT NULL,
  location bytea NOT NULL,          -- where the client sits today, as confirmed on admitting
  call_back bytea NOT NULL,
  resource bytea NOT NULL,          -- closing: what was used to settle
  leaving_state bytea NOT NULL,
  companion bytea NOT NULL,         -- who is with the client
  next_contact bytea NOT NULL,
  client_words bytea NOT NULL,      -- what the client's page says at the end
  note bytea NOT NULL,
  version integer NOT NULL CHECK (version > 0),
  FOREIGN KEY (session_id, client_id) REFERENCES session (id, client_id)
);

CREATE TABLE session_moment (
  id bigint GENERATED ALWAYS AS IDENTITY PRIMARY KEY,
  session_id uuid NOT NULL,
  client_id uuid NOT NULL,
  kind text NOT NULL,
  at timestamptz NOT NULL,
  FOREIGN KEY (session_id, client_id) REFERENCES session (id, client_id)
);
CREATE INDEX ON session_moment (session_id);

CREATE TABLE stimulus_set (
  id uuid PRIMARY KEY,
  session_id uuid NOT NULL,
  client_id uuid NOT NULL,
  target_id uuid,
  number integer NOT NULL CHECK (number > 0),   -- within the session
  epoch integer NOT NULL,
  plan jsonb NOT NULL,              -- as first ordered: wire::Plan
  recorded_at timestamptz NOT NULL,
  UNIQUE (session_id, number),
  UNIQUE (id, session_id, client_id),
  FOREIGN KEY (session_id, client_id) REFERENCES session (id, client_id),
  FOREIGN KEY (target_id, client_id) REFERENCES target (id, client_id)
);
CREATE INDEX ON stimulus_set (client_id);

-- Everything that was ordered: the start, each change of rate, extensions, the end or the stop.
CREATE TABLE set_order (
  set_id uuid NOT NULL,
  seq integer NOT NULL,
  session_id uuid NOT NULL,
  client_id uuid NOT NULL,
  cause text NOT NULL,
  at_ms double precision NOT NULL,  -- room time
  plan jsonb NOT NULL,
  timeline jsonb NOT NULL,          -- wire::Timeline
  recorded_at timestamptz NOT NULL,
  PRIMARY KEY (set_id, seq),
  FOREIGN KEY (set_id, session_id, client_id) REFERENCES stimulus_set (id, session_id, client_id)
);

-- What the room says ended a set; the screen's own word is in set_evidence.
CREATE TABLE set_ending (
  set_id uuid PRIMARY KEY,
  session_id uuid NOT NULL,
  client_id uuid NOT NULL,
  ending text NOT NULL,             -- wire::Ending
  at_ms double precision,           -- room time; null when nothing was heard
  recorded_at timestamptz NOT NULL,
  FOREIGN KEY (set_id, session_id, client_id) REFERENCES stimulus_set (id, session_id, client_id)
);

-- What the client's screen showed: wire::Evidence, kept once by (set, seq).
CREATE TABLE set_evidence (
  set_id uuid NOT NULL,
  seq integer NOT NULL,
  session_id uuid NOT NULL,
  client_id uuid NOT NULL,
  kind text NOT NULL CHECK (kind IN ('shown', 'second', 'rested')),
  at_ms double precision NOT NULL,
  phase double precision,           -- cycles shown so far
  width double precision,           -- degrees
  frames integer,
  longest_gap double precision,     -- ms
  ending text,                      -- wire::Ending
  recorded_at timestamptz NOT NULL,
  PRIMARY KEY (set_id, seq),
  FOREIGN KEY (set_id, session_id, client_id) REFERENCES stimulus_set (id, session_id, client_id)
);

CREATE TABLE rating (
  id uuid PRIMARY KEY,
  client_id uuid NOT NULL REFERENCES client,
  session_id uuid,
  target_id uuid,
  set_id uuid,
  scale text NOT NULL CHECK (scale IN ('sud', 'voc')),
  value smallint,                   -- null: the one it replaces is taken back
  moment text NOT NULL CHECK (moment IN ('assessment', 'after_set', 'back_at_target', 'installation', 'closing', 'reevaluation')),
  replaces uuid UNIQUE REFERENCES rating,
  entered_by uuid NOT NULL REFERENCES access.member,
  at timestamptz NOT NULL,
  CHECK (value IS NOT NULL OR replaces IS NOT NULL),
  -- SUD 0 to 10 (Wolpe 1990), VOC 1 to 7 (Shapiro 1989)
  CHECK ((scale = 'sud' AND value BETWEEN 0 AND 10) OR (scale = 'voc' AND value BETWEEN 1 AND 7) OR value IS NULL),
  FOREIGN KEY (session_id, client_id) REFERENCES session (id, client_id),
  FOREIGN KEY (target_id, client_id) REFERENCES target (id, client_id),
  FOREIGN KEY (set_id, session_id, client_id) REFERENCES stimulus_set (id, session_id, client_id)
);
CREATE INDEX ON rating (client_id);
CREATE INDEX ON rating (session_id);
CREATE INDEX ON rating (target_id);

-- What the client reported: process notes, sealed apart, not printed by default.
CREATE TABLE process_note (
  id uuid PRIMARY KEY,
  session_id uuid NOT NULL,
  client_id uuid NOT NULL,
  set_id uuid,
  moment text NOT NULL CHECK (moment IN ('assessment', 'after_set', 'back_at_target', 'installation', 'closing', 'reevaluation')),
  change text CHECK (change IN ('changing', 'same', 'settled')),
  words bytea,
  replaces uuid UNIQUE REFERENCES process_note,
  entered_by uuid NOT NULL REFERENCES access.member,
  at timestamptz NOT NULL,
  CHECK (change IS NOT NULL OR words IS NOT NULL OR replaces IS NOT NULL),
  FOREIGN KEY (session_id, client_id) REFERENCES session (id, client_id),
  FOREIGN KEY (set_id, session_id, client_id) REFERENCES stimulus_set (id, session_id, client_id)
);
CREATE INDEX ON process_note (session_id);

CREATE FUNCTION access.keep_gate() RETURNS trigger LANGUAGE plpgsql SECURITY DEFINER SET search_path = '' AS $$
BEGIN
  INSERT INTO access.gate (session_id, client_id, ended_at) VALUES (NEW.id, NEW.client_id, NEW.ended_at)
  ON CONFLICT (session_id) DO UPDATE SET ended_at = EXCLUDED.ended_at;
  RETURN NULL;
END $$;
REVOKE ALL ON FUNCTION access.keep_gate() FROM PUBLIC;
CREATE TRIGGER keep_gate AFTER INSERT OR UPDATE OF ended_at ON session FOR EACH ROW EXECUTE FUNCTION access.keep_gate();

ALTER TABLE session ENABLE ROW LEVEL SECURITY;
ALTER TABLE session FORCE ROW LEVEL SECURITY;
CREATE POLICY read ON session FOR SELECT USING (
  client_id IN (SELECT access.my_clients()) OR (SELECT access.has_role('lead'))
  OR id = (SELECT access.my_room()) OR id = (SELECT access.my_seat()));
CREATE POLICY add ON session FOR INSERT WITH CHECK (client_id IN (SELECT access.my_clients()) AND member_id = (SELECT access.me()));
CREATE POLICY change ON session FOR UPDATE USING (client_id IN (SELECT access.my_clients()) OR id = (SELECT access.my_room()));
GRANT SELECT, INSERT, UPDATE ON session TO leeward_app;

ALTER TABLE session_words ENABLE ROW LEVEL SECURITY;
ALTER TABLE session_words FORCE ROW LEVEL SECURITY;
CREATE POLICY read ON session_words FOR SELECT USING (client_id IN (SELECT access.my_clients()));
CREATE POLICY add ON session_words FOR INSERT WITH CHECK (client_id IN (SELECT access.my_clients()));
CREATE POLICY change ON session_words FOR UPDATE USING (client_id IN (SELECT access.my_clients()));
GRANT SELECT, INSERT, UPDATE ON session_words TO leeward_app;

ALTER TABLE session_moment ENABLE ROW LEVEL SECURITY;
ALTER TABLE session_moment FORCE ROW LEVEL SECURITY;
CREATE POLICY read ON session_moment FOR SELECT USING (
  client_id IN (SELECT access.my_clients()) OR (SELECT access.has_role('lead')) OR session_id = (SELECT access.my_room()));
CREATE POLICY add ON session_moment FOR INSERT WITH CHECK (
  client_id IN (SELECT access.my_clients()) OR session_id = (SELECT access.my_room()));
GRANT SELECT, INSERT ON session_moment TO leeward_app;

ALTER TABLE stimulus_set ENABLE ROW LEVEL SECURITY;
ALTER TABLE stimulus_set FORCE ROW LEVEL SECURITY;
CREATE POLICY read ON stimulus_set FOR SELECT USING (
  client_id IN (SELECT access.my_clients()) OR (SELECT access.has_role('lead')) OR session_id = (SELECT access.my_room())
  OR session_id = (SELECT access.my_late_seat()));
CREATE POLICY add ON stimulus_set FOR INSERT WITH CHECK (session_id = (SELECT access.my_room()));
GRANT SELECT, INSERT ON stimulus_set TO leeward_app;

ALTER TABLE set_order ENABLE ROW LEVEL SECURITY;
ALTER TABLE set_order FORCE ROW LEVEL SECURITY;
CREATE POLICY read ON set_order FOR SELECT USING (
  client_id IN (SELECT access.my_clients()) OR (SELECT access.has_role('lead')) OR session_id = (SELECT access.my_room()));
CREATE POLICY add ON set_order FOR INSERT WITH CHECK (session_id = (SELECT access.my_room()));
GRANT SELECT, INSERT ON set_order TO leeward_app;

ALTER TABLE set_ending ENABLE ROW LEVEL SECURITY;
ALTER TABLE set_ending FORCE ROW LEVEL SECURITY;
CREATE POLICY read ON set_ending FOR SELECT USING (
  client_id IN (SELECT access.my_clients()) OR (SELECT access.has_role('lead')) OR session_id = (SELECT access.my_room()));
CREATE POLICY add ON set_ending FOR INSERT WITH CHECK (session_id = (SELECT access.my_room()));
GRANT SELECT, INSERT ON set_ending TO leeward_app;

ALTER TABLE set_evidence ENABLE ROW LEVEL SECURITY;
ALTER TABLE set_evidence FORCE ROW LEVEL SECURITY;
CREATE POLICY read ON set_evidence FOR SELECT USING (
  client_id IN (SELECT access.my_clients()) OR (SELECT access.has_role('lead')) OR session_id = (SELECT access.my_room()));
-- A seat may hand in what its screen showed until 15 minutes after the end, and read none of it.
CREATE POLICY add ON set_evidence FOR INSERT WITH CHECK (
  session_id = (SELECT access.my_room()) OR session_id = (SELECT access.my_late_seat()));
GRANT SELECT, INSERT ON set_evidence TO leeward_app;

ALTER TABLE rating ENABLE ROW LEVEL SECURITY;
ALTER TABLE rating FORCE ROW LEVEL SECURITY;
CREATE POLICY read ON rating FOR SELECT USING (client_id IN (SELECT access.my_clients()) OR (SELECT access.has_role('lead')));
CREATE POLICY add ON rating FOR INSERT WITH CHECK (client_id IN (SELECT access.my_clients()) AND entered_by = (SELECT access.me()));
GRANT SELECT, INSERT ON rating TO leeward_app;

ALTER TABLE process_note ENABLE ROW LEVEL SECURITY;
ALTER TABLE process_note FORCE ROW LEVEL SECURITY;
CREATE POLICY read ON process_note FOR SELECT USING (client_id IN (SELECT access.my_clients()));
CREATE POLICY add ON process_note FOR INSERT WITH CHECK (client_id IN (SELECT access.my_clients()) AND entered_by = (SELECT access.me()));
GRANT SELECT, INSERT ON process_note TO leeward_app;
