-- Why: what went wrong stood in notes, where nobody finds it again; a memory that opened while another was worked on could not be turned
-- to without ending the hour; and what the practice itself says about where it may treat, and whom to call between sessions, was on paper.

-- ---------------------------------------------------------------------------------------------
-- Adverse events: kind, time and what was done first, which leads read; the account of it is sealed and lies apart. A correction is a row
-- of its own.

CREATE TABLE adverse_event (
  id uuid PRIMARY KEY,
  client_id uuid NOT NULL REFERENCES client,
  session_id uuid,                              -- null: between sessions
  number integer NOT NULL CHECK (number > 0),   -- within the client
  kind text NOT NULL CHECK (kind IN ('distress', 'reliving', 'away', 'panic', 'suicidal', 'self_harm', 'body', 'seizure', 'injury', 'seen', 'other')),
  happened_at timestamptz NOT NULL CONSTRAINT happened_at_is_a_time CHECK (isfinite(happened_at)),
  done text NOT NULL CHECK (done IN ('settled', 'stayed', 'called', 'plan', 'sent_on', 'emergency', 'nothing')),
  replaces uuid UNIQUE REFERENCES adverse_event,
  written_by uuid NOT NULL REFERENCES access.member,
  written_at timestamptz NOT NULL CONSTRAINT written_at_is_a_time CHECK (isfinite(written_at)),
  UNIQUE (client_id, number),
  UNIQUE (id, client_id),
  FOREIGN KEY (session_id, client_id) REFERENCES session (id, client_id)
);
CREATE INDEX ON adverse_event (session_id);

CREATE TABLE adverse_account (
  event_id uuid PRIMARY KEY,
  client_id uuid NOT NULL,
  account bytea NOT NULL,
  FOREIGN KEY (event_id, client_id) REFERENCES adverse_event (id, client_id)
);
CREATE INDEX ON adverse_account (client_id);

ALTER TABLE adverse_event ENABLE ROW LEVEL SECURITY;
ALTER TABLE adverse_event FORCE ROW LEVEL SECURITY;
CREATE POLICY read ON adverse_event FOR SELECT USING (client_id IN (SELECT access.my_clients()) OR (SELECT access.has_role('lead')));
CREATE POLICY add ON adverse_event FOR INSERT WITH CHECK (client_id IN (SELECT access.my_clients()) AND written_by = (SELECT access.me()));
GRANT SELECT, INSERT (id, client_id, session_id, number, kind, happened_at, done, replaces, written_by, written_at) ON adverse_event TO leeward_app;

ALTER TABLE adverse_account ENABLE ROW LEVEL SECURITY;
ALTER TABLE adverse_account FORCE ROW LEVEL SECURITY;
CREATE POLICY read ON adverse_account FOR SELECT USING (client_id IN (SELECT access.my_clients()));
CREATE POLICY add ON adverse_account FOR INSERT WITH CHECK (client_id IN (SELECT access.my_clients()));
GRANT SELECT, INSERT (event_id, client_id, account) ON adverse_account TO leeward_app;

INSERT INTO access.audit_act VALUES ('member', 'event.view', false), ('member', 'event.create', false);

-- ---------------------------------------------------------------------------------------------
-- Another target in mid-session. Sets, ratings and facts each keep the target that they were of.

CREATE FUNCTION access.turn_session(which uuid, wanted uuid, was uuid) RETURNS boolean
LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
BEGIN
  IF access.treats_session(which) IS NOT TRUE THEN RETURN false; END IF;
  UPDATE public.session s SET target_id = wanted
  WHERE s.id = which AND s.ended_at IS NULL AND s.target_id IS NOT DISTINCT FROM was
    AND EXISTS (SELECT FROM public.target t WHERE t.id = wanted AND t.client_id = s.client_id AND t.archived_at IS NULL);
  RETURN FOUND;
END $$;
REVOKE ALL ON FUNCTION access.turn_session(uuid, uuid, uuid) FROM PUBLIC;
GRANT EXECUTE ON FUNCTION access.turn_session(uuid, uuid, uuid) TO leeward_app;
INSERT INTO access.audit_act VALUES ('member', 'session.turn', false);

-- ---------------------------------------------------------------------------------------------
-- What the practice itself says: where it may treat, a place a line; and whom a client can call between sessions, in its own words.

ALTER TABLE practice
  ADD COLUMN places text NOT NULL DEFAULT '' CHECK (char_length(places) <= 1000),
  ADD COLUMN crisis_words text NOT NULL DEFAULT '' CHECK (char_length(crisis_words) <= 600);
GRANT UPDATE (places, crisis_words) ON practice TO leeward_app;
