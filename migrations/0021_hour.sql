-- Why: at the desk there were keys for a set and none for the work around it. A scan, a belief that no longer fits, a segment's SUD were
-- written down on another page afterwards or not at all; when it was too much, nobody could see on the screen what shows that this client
-- is leaving, and what brought them back; a rating that the client gave by themselves looked like one that was asked; closing was a page beside the desk, typed
-- afterwards and lost with the browser; and a client who was gone was looked for from memory.

-- ---------------------------------------------------------------------------------------------
-- Facts of the phases. "too_much": the clinician stopped because it was; "showed": what was put on the client's page to steady by.

ALTER TABLE fact DROP CONSTRAINT kind_and_code, ADD CONSTRAINT kind_and_code CHECK (CASE kind
    WHEN 'mark' THEN code IN ('changing', 'same', 'settled') AND session_id IS NOT NULL AND moment IS NOT NULL
    WHEN 'saw' THEN code IN ('glazed', 'tears', 'numb', 'far_away', 'other') AND session_id IS NOT NULL AND moment IS NOT NULL
    WHEN 'tried' THEN code IN ('arousal', 'mechanics', 'focus', 'earlier', 'interweave') AND session_id IS NOT NULL AND moment IS NOT NULL
    WHEN 'too_much' THEN code = 'stopped' AND session_id IS NOT NULL AND moment IS NOT NULL
    WHEN 'showed' THEN code IN ('orient', 'resource', 'nothing') AND session_id IS NOT NULL AND moment IS NOT NULL
    WHEN 'procedure' THEN code IN ('standard', 'resource', 'restricted', 'recent_event', 'future')
    WHEN 'scan' THEN code IN ('clear', 'felt')
    WHEN 'rehearsal' THEN code IN ('undisturbed', 'disturbed')
    WHEN 'belief' THEN code IN ('still', 'another')
    WHEN 'fits' THEN code IN ('sud', 'voc')
    WHEN 'decided' THEN code IN ('incomplete', 'complete', 'reduced', 'reopened')
    WHEN 'carried_over' THEN code IN ('planned', 'active', 'incomplete', 'complete', 'reopened')
    ELSE false END),
  DROP CONSTRAINT of_a_target,
  ADD CONSTRAINT of_a_target CHECK (target_id IS NOT NULL OR kind IN ('mark', 'saw', 'tried', 'too_much', 'showed'));

-- The client gave it on their own page; a correction of it may be the clinician's.
ALTER TABLE rating ADD COLUMN from_client boolean NOT NULL DEFAULT false;
GRANT INSERT (from_client) ON rating TO leeward_app;

ALTER TABLE after_check DROP CONSTRAINT after_check_reason_check,
  ADD CONSTRAINT after_check_reason_check CHECK (reason IN ('first_reprocessing', 'incomplete', 'too_much', 'unsteady'));

-- ---------------------------------------------------------------------------------------------
-- Work that no page of ours paced: in the same room, without stimulation, by the client's own tapping. In a table of its own, so that
-- nobody takes it for something that was measured.

CREATE TABLE unmeasured (
  id uuid PRIMARY KEY,
  client_id uuid NOT NULL,
  session_id uuid NOT NULL,
  target_id uuid,
  way text CHECK (way IN ('in_person', 'without', 'own_tapping')),  -- null: the one it replaces is taken back
  replaces uuid UNIQUE REFERENCES unmeasured,
  entered_by uuid NOT NULL REFERENCES access.member,
  at timestamptz NOT NULL CONSTRAINT at_is_a_time CHECK (isfinite(at)),
  seq bigint NOT NULL DEFAULT nextval('kept_order'),
  CONSTRAINT says_something CHECK (way IS NOT NULL OR replaces IS NOT NULL),
  FOREIGN KEY (session_id, client_id) REFERENCES session (id, client_id),
  FOREIGN KEY (target_id, client_id) REFERENCES target (id, client_id)
);
CREATE INDEX ON unmeasured (session_id);
CREATE INDEX ON unmeasured (target_id);

ALTER TABLE unmeasured ENABLE ROW LEVEL SECURITY;
ALTER TABLE unmeasured FORCE ROW LEVEL SECURITY;
CREATE POLICY read ON unmeasured FOR SELECT USING (client_id IN (SELECT access.my_clients()) OR (SELECT access.has_role('lead')));
CREATE POLICY add ON unmeasured FOR INSERT WITH CHECK (client_id IN (SELECT access.my_clients()) AND entered_by = (SELECT access.me()));
GRANT SELECT, INSERT (id, client_id, session_id, target_id, way, replaces, entered_by, at) ON unmeasured TO leeward_app;

-- ---------------------------------------------------------------------------------------------
-- What steadies this client: what shows early that they are leaving, what brought them back, what to say first; and what has helped,
-- each dated. Sealed; leads do not read it.

CREATE TABLE steadying (
  client_id uuid PRIMARY KEY REFERENCES client,
  signs bytea NOT NULL,
  way_back bytea NOT NULL,
  first_words bytea NOT NULL,
  written_at timestamptz NOT NULL CONSTRAINT written_at_is_a_time CHECK (isfinite(written_at)),
  version integer NOT NULL CHECK (version > 0)
);

CREATE TABLE resource (
  id uuid PRIMARY KEY,
  client_id uuid NOT NULL REFERENCES client,
  number integer NOT NULL CHECK (number > 0),   -- within the client
  cue bytea NOT NULL,
  image bytea NOT NULL,
  body_feeling bytea NOT NULL,
  helped text NOT NULL CHECK (helped IN ('yes', 'no', 'not_known')),
  on_offer boolean NOT NULL,                    -- at the desk
  found_at timestamptz NOT NULL CONSTRAINT found_at_is_a_time CHECK (isfinite(found_at)),
  version integer NOT NULL CHECK (version > 0),
  UNIQUE (client_id, number)
);

ALTER TABLE steadying ENABLE ROW LEVEL SECURITY;
ALTER TABLE steadying FORCE ROW LEVEL SECURITY;
CREATE POLICY read ON steadying FOR SELECT USING (client_id IN (SELECT access.my_clients()));
CREATE POLICY add ON steadying FOR INSERT WITH CHECK (client_id IN (SELECT access.my_clients()));
CREATE POLICY change ON steadying FOR UPDATE USING (client_id IN (SELECT access.my_clients()));
GRANT SELECT, INSERT (client_id, signs, way_back, first_words, written_at, version),
  UPDATE (signs, way_back, first_words, written_at, version) ON steadying TO leeward_app;

ALTER TABLE resource ENABLE ROW LEVEL SECURITY;
ALTER TABLE resource FORCE ROW LEVEL SECURITY;
CREATE POLICY read ON resource FOR SELECT USING (client_id IN (SELECT access.my_clients()));
CREATE POLICY add ON resource FOR INSERT WITH CHECK (client_id IN (SELECT access.my_clients()));
CREATE POLICY change ON resource FOR UPDATE USING (client_id IN (SELECT access.my_clients()));
GRANT SELECT, INSERT (id, client_id, number, cue, image, body_feeling, helped, on_offer, found_at, version),
  UPDATE (cue, image, body_feeling, helped, on_offer, version) ON resource TO leeward_app;

INSERT INTO access.audit_act VALUES ('member', 'steadying.view', false), ('member', 'steadying.change', false),
  ('member', 'resource.create', false), ('member', 'resource.change', false), ('member', 'session.assess', false);

-- ---------------------------------------------------------------------------------------------
-- What was typed of a closing so far, sealed as one text; emptied when the session is closed.
CREATE TABLE closing_draft (
  session_id uuid PRIMARY KEY,
  client_id uuid NOT NULL,
  typed bytea NOT NULL,
  written_by uuid NOT NULL REFERENCES access.member,
  written_at timestamptz NOT NULL CONSTRAINT written_at_is_a_time CHECK (isfinite(written_at)),
  version integer NOT NULL CHECK (version > 0),
  FOREIGN KEY (session_id, client_id) REFERENCES session (id, client_id)
);

ALTER TABLE closing_draft ENABLE ROW LEVEL SECURITY;
ALTER TABLE closing_draft FORCE ROW LEVEL SECURITY;
CREATE POLICY read ON closing_draft FOR SELECT USING (client_id IN (SELECT access.my_clients()));
CREATE POLICY add ON closing_draft FOR INSERT WITH CHECK (client_id IN (SELECT access.my_clients()) AND written_by = (SELECT access.me()));
CREATE POLICY change ON closing_draft FOR UPDATE USING (client_id IN (SELECT access.my_clients()))
  WITH CHECK (client_id IN (SELECT access.my_clients()) AND written_by = (SELECT access.me()));
GRANT SELECT, INSERT (session_id, client_id, typed, written_by, written_at, version),
  UPDATE (typed, written_by, written_at, version) ON closing_draft TO leeward_app;

-- When the work was over, where that was said to be earlier than the closing.
ALTER TABLE session ADD COLUMN over_at timestamptz CONSTRAINT over_at_is_a_time CHECK (isfinite(over_at)),
  ADD CONSTRAINT over_before_it_was_closed CHECK (over_at IS NULL OR over_at >= opened_at AND over_at <= ended_at);
GRANT UPDATE (over_at) ON session TO leeward_app;

INSERT INTO access.audit_act VALUES ('member', 'session.draft', false);

-- ---------------------------------------------------------------------------------------------
-- The way after a client who is gone: what was tried and what came of it, step by step, until they are heard of. Codes and times, which leads read.

CREATE TABLE reach_step (
  id uuid PRIMARY KEY,
  client_id uuid NOT NULL,
  session_id uuid NOT NULL,
  step text CHECK (step IN ('no_answer', 'messaged', 'contact_called', 'welfare_asked', 'help_called', 'reached', 'safe')),
                                    -- null: the one it replaces is taken back
  replaces uuid UNIQUE REFERENCES reach_step,
  entered_by uuid NOT NULL REFERENCES access.member,
  at timestamptz NOT NULL CONSTRAINT at_is_a_time CHECK (isfinite(at)),
  seq bigint NOT NULL DEFAULT nextval('kept_order'),
  CONSTRAINT says_something CHECK (step IS NOT NULL OR replaces IS NOT NULL),
  FOREIGN KEY (session_id, client_id) REFERENCES session (id, client_id)
);
CREATE INDEX ON reach_step (session_id);
CREATE INDEX ON reach_step (client_id);

ALTER TABLE reach_step ENABLE ROW LEVEL SECURITY;
ALTER TABLE reach_step FORCE ROW LEVEL SECURITY;
CREATE POLICY read ON reach_step FOR SELECT USING (client_id IN (SELECT access.my_clients()) OR (SELECT access.has_role('lead')));
CREATE POLICY add ON reach_step FOR INSERT WITH CHECK (client_id IN (SELECT access.my_clients()) AND entered_by = (SELECT access.me()));
GRANT SELECT, INSERT (id, client_id, session_id, step, replaces, entered_by, at) ON reach_step TO leeward_app;

-- Whether the numbers on the record may be used, and what is dialled for help: from the clinician's seat, and by the client.
CREATE TABLE client_reach (
  client_id uuid PRIMARY KEY REFERENCES client,
  phone_use text NOT NULL CHECK (phone_use IN ('not_asked', 'call', 'message', 'never')),
  contact_use text NOT NULL CHECK (contact_use IN ('not_asked', 'call', 'message', 'never')),
  help_from_here bytea NOT NULL,
  tried_on date CONSTRAINT tried_on_is_a_day CHECK (isfinite(tried_on)),
  help_there bytea NOT NULL,
  written_at timestamptz NOT NULL CONSTRAINT written_at_is_a_time CHECK (isfinite(written_at)),
  version integer NOT NULL CHECK (version > 0)
);

ALTER TABLE client_reach ENABLE ROW LEVEL SECURITY;
ALTER TABLE client_reach FORCE ROW LEVEL SECURITY;
CREATE POLICY read ON client_reach FOR SELECT USING (client_id IN (SELECT access.my_clients()));
CREATE POLICY add ON client_reach FOR INSERT WITH CHECK (client_id IN (SELECT access.my_clients()));
CREATE POLICY change ON client_reach FOR UPDATE USING (client_id IN (SELECT access.my_clients()));
GRANT SELECT, INSERT (client_id, phone_use, contact_use, help_from_here, tried_on, help_there, written_at, version),
  UPDATE (phone_use, contact_use, help_from_here, tried_on, help_there, written_at, version) ON client_reach TO leeward_app;

INSERT INTO access.audit_act VALUES ('member', 'reach.view', false), ('member', 'reach.change', false);
