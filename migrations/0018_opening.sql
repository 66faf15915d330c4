-- Why: a set could be started before anybody had asked whether the client is alone, safe, fit and still agrees. What the opening of the
-- hour found is kept, only added to, so that a start can wait for it; going past a matter is kept with its code. It is about a person and
-- today, so it is for those who treat them: leads do not read it. A room reads it, since it holds a start.

CREATE TABLE hour_fact (
  id uuid PRIMARY KEY,
  client_id uuid NOT NULL,
  session_id uuid NOT NULL,
  kind text NOT NULL CHECK (kind IN ('answered', 'passed', 'time')),
  code text,                        -- an Answer or a Matter of leeward_core::wire, or minutes and reserve as 50+10; null: what it replaces is taken back
  because text CHECK (because IN ('asked_elsewhere', 'client_declines', 'too_much_now', 'fits_the_facts', 'does_not_apply', 'judgement')),
  again boolean NOT NULL,           -- answered as last time, not asked anew
  replaces uuid UNIQUE REFERENCES hour_fact,
  entered_by uuid NOT NULL REFERENCES access.member,
  at timestamptz NOT NULL CONSTRAINT at_is_a_time CHECK (isfinite(at)),
  seq bigint NOT NULL DEFAULT nextval('kept_order'),
  CONSTRAINT says_something CHECK (code IS NOT NULL OR replaces IS NOT NULL),
  CONSTRAINT passed_because CHECK ((because IS NOT NULL) = (kind = 'passed' AND code IS NOT NULL)),
  CONSTRAINT small CHECK (length(code) <= 40),
  FOREIGN KEY (session_id, client_id) REFERENCES session (id, client_id)
);
CREATE INDEX ON hour_fact (session_id);

-- What stands, in the order in which it was said last: an answer that is put back counts as said then.
CREATE VIEW standing_hour_fact WITH (security_invoker = true) AS
SELECT f.id, f.client_id, f.session_id, f.kind, f.code, f.because, f.again, f.entered_by, f.at, f.seq
FROM hour_fact f WHERE f.code IS NOT NULL AND NOT EXISTS (SELECT FROM hour_fact later WHERE later.replaces = f.id);

ALTER TABLE hour_fact ENABLE ROW LEVEL SECURITY;
ALTER TABLE hour_fact FORCE ROW LEVEL SECURITY;
CREATE POLICY read ON hour_fact FOR SELECT USING (client_id IN (SELECT access.my_clients()) OR session_id = (SELECT access.my_room()));
CREATE POLICY add ON hour_fact FOR INSERT WITH CHECK (client_id IN (SELECT access.my_clients()) AND entered_by = (SELECT access.me()));
GRANT SELECT, INSERT (id, client_id, session_id, kind, code, because, again, replaces, entered_by, at) ON hour_fact TO leeward_app;
GRANT SELECT ON standing_hour_fact TO leeward_app;

-- Whether a target is due to be rated anew, or was never assessed, a room has to see from the ratings of its own client.
CREATE POLICY read_for_start ON rating FOR SELECT USING (client_id = (SELECT access.my_room_client()));

-- How long an appointment usually is and what of that is kept for closing, minutes: a practice's own habit, and a desk changes it for its hour.
ALTER TABLE practice
  ADD COLUMN minutes smallint NOT NULL DEFAULT 50 CHECK (minutes BETWEEN 10 AND 240),
  ADD COLUMN reserve smallint NOT NULL DEFAULT 10 CHECK (reserve >= 0 AND reserve <= 60 AND reserve < minutes),
-- Within which hours after a session that asks for it the client is called: a practitioner's judgement, so a setting.
  ADD COLUMN check_from smallint NOT NULL DEFAULT 24 CHECK (check_from BETWEEN 1 AND 168),
  ADD COLUMN check_until smallint NOT NULL DEFAULT 72 CHECK (check_until BETWEEN 1 AND 336),
  ADD CONSTRAINT check_in_order CHECK (check_from < check_until);
GRANT UPDATE (minutes, reserve, check_from, check_until) ON practice TO leeward_app;

-- ---------------------------------------------------------------------------------------------
-- A check after the session: the client is called after a first reprocessing, or when they left unfinished or unsteady. Who calls is named;
-- each try is kept.

CREATE TABLE after_check (
  session_id uuid PRIMARY KEY,
  client_id uuid NOT NULL,
  member_id uuid NOT NULL REFERENCES access.member,
  reason text NOT NULL CHECK (reason IN ('first_reprocessing', 'incomplete', 'unsteady')),
  due_from timestamptz NOT NULL CONSTRAINT due_from_is_a_time CHECK (isfinite(due_from)),
  due_until timestamptz NOT NULL CONSTRAINT due_until_is_a_time CHECK (isfinite(due_until)),
  CHECK (due_from < due_until),
  UNIQUE (session_id, client_id),
  FOREIGN KEY (session_id, client_id) REFERENCES session (id, client_id)
);
CREATE INDEX ON after_check (client_id);

CREATE TABLE after_check_try (
  id uuid PRIMARY KEY,
  session_id uuid NOT NULL,
  client_id uuid NOT NULL,
  outcome text NOT NULL CHECK (outcome IN ('well', 'support', 'not_reached', 'declined')),
  entered_by uuid NOT NULL REFERENCES access.member,
  at timestamptz NOT NULL CONSTRAINT at_is_a_time CHECK (isfinite(at)),
  seq bigint NOT NULL DEFAULT nextval('kept_order'),
  FOREIGN KEY (session_id, client_id) REFERENCES after_check (session_id, client_id)
);
CREATE INDEX ON after_check_try (session_id);

-- Figures and codes: leads may see whether what was agreed was done.
ALTER TABLE after_check ENABLE ROW LEVEL SECURITY;
ALTER TABLE after_check FORCE ROW LEVEL SECURITY;
CREATE POLICY read ON after_check FOR SELECT USING (client_id IN (SELECT access.my_clients()) OR (SELECT access.has_role('lead')));
CREATE POLICY add ON after_check FOR INSERT WITH CHECK (client_id IN (SELECT access.my_clients()));
GRANT SELECT, INSERT (session_id, client_id, member_id, reason, due_from, due_until) ON after_check TO leeward_app;

ALTER TABLE after_check_try ENABLE ROW LEVEL SECURITY;
ALTER TABLE after_check_try FORCE ROW LEVEL SECURITY;
CREATE POLICY read ON after_check_try FOR SELECT USING (client_id IN (SELECT access.my_clients()) OR (SELECT access.has_role('lead')));
CREATE POLICY add ON after_check_try FOR INSERT WITH CHECK (client_id IN (SELECT access.my_clients()) AND entered_by = (SELECT access.me()));
GRANT SELECT, INSERT (id, session_id, client_id, outcome, entered_by, at) ON after_check_try TO leeward_app;

INSERT INTO access.audit_act VALUES ('member', 'session.check', false);

-- ---------------------------------------------------------------------------------------------
-- What the clinician saw in a set, and what was tried when it did not move: facts like the marks, never a tally of what works.

ALTER TABLE fact DROP CONSTRAINT kind_and_code, ADD CONSTRAINT kind_and_code CHECK (CASE kind
    WHEN 'mark' THEN code IN ('changing', 'same', 'settled') AND session_id IS NOT NULL AND moment IS NOT NULL
    WHEN 'saw' THEN code IN ('glazed', 'tears', 'numb', 'far_away', 'other') AND session_id IS NOT NULL AND moment IS NOT NULL
    WHEN 'tried' THEN code IN ('arousal', 'mechanics', 'focus', 'earlier', 'interweave') AND session_id IS NOT NULL AND moment IS NOT NULL
    WHEN 'procedure' THEN code IN ('standard', 'resource', 'restricted', 'recent_event', 'future')
    WHEN 'scan' THEN code IN ('clear', 'felt')
    WHEN 'rehearsal' THEN code IN ('undisturbed', 'disturbed')
    WHEN 'fits' THEN code IN ('sud', 'voc')
    WHEN 'decided' THEN code IN ('incomplete', 'complete', 'reduced', 'reopened')
    WHEN 'carried_over' THEN code IN ('planned', 'active', 'incomplete', 'complete', 'reopened')
    ELSE false END),
  DROP CONSTRAINT of_a_target, ADD CONSTRAINT of_a_target CHECK (target_id IS NOT NULL OR kind IN ('mark', 'saw', 'tried'));

-- How many sets alike in a row a practice calls stuck.
ALTER TABLE practice ADD COLUMN stuck_after smallint NOT NULL DEFAULT 2 CHECK (stuck_after IN (2, 3));
GRANT UPDATE (stuck_after) ON practice TO leeward_app;

-- ---------------------------------------------------------------------------------------------
-- An appointment that did not take place, and one that was opened by mistake, end as no session: they stay in the record and count nowhere.

ALTER TABLE session DROP CONSTRAINT session_closing_check,
  ADD CONSTRAINT session_closing_check
    CHECK (closing IN ('complete', 'reduced', 'incomplete', 'no_reprocessing', 'did_not_attend', 'by_mistake')),
  ADD COLUMN took_place boolean NOT NULL GENERATED ALWAYS AS (coalesce(closing NOT IN ('did_not_attend', 'by_mistake'), true)) STORED;

CREATE OR REPLACE VIEW client_count WITH (security_invoker = true) AS
SELECT c.id AS client_id, coalesce(t.open, 0) AS open, coalesce(t.incomplete, 0) AS incomplete, coalesce(t.complete, 0) AS complete,
  coalesce(s.sessions, 0) AS sessions, coalesce(x.sets, 0) AS sets, s.first_at, s.last_at
FROM client c
LEFT JOIN (
  SELECT t.client_id, count(*) FILTER (WHERE n.state NOT IN ('complete', 'reduced')) AS open,
    count(*) FILTER (WHERE n.state = 'incomplete') AS incomplete, count(*) FILTER (WHERE n.state = 'complete') AS complete
  FROM target t JOIN target_course n ON n.target_id = t.id WHERE t.archived_at IS NULL GROUP BY t.client_id) t ON t.client_id = c.id
LEFT JOIN (
  SELECT client_id, count(*) AS sessions, min(opened_at) AS first_at, max(opened_at) AS last_at FROM session WHERE took_place GROUP BY client_id) s
  ON s.client_id = c.id
LEFT JOIN (SELECT client_id, count(*) AS sets FROM stimulus_set GROUP BY client_id) x ON x.client_id = c.id;
