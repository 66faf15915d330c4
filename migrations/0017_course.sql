-- Why: what a set changed, what the clinician decided about a target and what its end asks for were not facts: marks lay with sealed
-- words, where nobody could count them, and the state of a target was whatever had been chosen last, asked of nothing. Facts are kept
-- now as ratings are, in clear and only added to; the state is folded from them by leeward_core::course, and kept in one row a target
-- for lists. What a person had set by hand is a fact too, dated and called carried over.

-- ---------------------------------------------------------------------------------------------
-- Facts. Codes are those of leeward_core::course.

CREATE TABLE fact (
  id uuid PRIMARY KEY,
  client_id uuid NOT NULL REFERENCES client,
  session_id uuid,
  target_id uuid,
  set_id uuid,
  kind text NOT NULL,
  code text,                        -- null: the one it replaces is taken back
  because text CHECK (because IN ('asked_elsewhere', 'client_declines', 'too_much_now', 'fits_the_facts', 'does_not_apply', 'judgement')),
  moment text CHECK (moment IN ('assessment', 'after_set', 'back_at_target', 'installation', 'closing', 'reevaluation')),
  replaces uuid UNIQUE REFERENCES fact,
  first_id uuid REFERENCES fact,    -- the first of its chain of corrections; null where it is that itself
  entered_by uuid REFERENCES access.member,
  at timestamptz NOT NULL CONSTRAINT at_is_a_time CHECK (isfinite(at)),
  seq bigint NOT NULL DEFAULT nextval('kept_order'),
  CONSTRAINT kind_and_code CHECK (CASE kind
    WHEN 'mark' THEN code IN ('changing', 'same', 'settled') AND session_id IS NOT NULL AND moment IS NOT NULL
    WHEN 'procedure' THEN code IN ('standard', 'resource', 'restricted', 'recent_event', 'future')
    WHEN 'scan' THEN code IN ('clear', 'felt')
    WHEN 'rehearsal' THEN code IN ('undisturbed', 'disturbed')
    WHEN 'fits' THEN code IN ('sud', 'voc')
    WHEN 'decided' THEN code IN ('incomplete', 'complete', 'reduced', 'reopened')
    WHEN 'carried_over' THEN code IN ('planned', 'active', 'incomplete', 'complete', 'reopened')
    ELSE false END),
  CONSTRAINT says_something CHECK (code IS NOT NULL OR replaces IS NOT NULL),
  CONSTRAINT chained CHECK ((first_id IS NULL) = (replaces IS NULL)),
  CONSTRAINT of_a_target CHECK (target_id IS NOT NULL OR kind = 'mark'),
  CONSTRAINT because_of_a_decision CHECK (because IS NULL OR kind = 'decided'),
  CONSTRAINT somebody_said CHECK ((entered_by IS NULL) = (kind = 'carried_over')),
  FOREIGN KEY (session_id, client_id) REFERENCES session (id, client_id),
  FOREIGN KEY (target_id, client_id) REFERENCES target (id, client_id),
  FOREIGN KEY (set_id, session_id, client_id) REFERENCES stimulus_set (id, session_id, client_id)
);
CREATE INDEX ON fact (session_id);
CREATE INDEX ON fact (target_id);
CREATE INDEX ON fact (first_id) WHERE first_id IS NOT NULL;

-- A segment of a recent event, from 1; null: the whole.
ALTER TABLE rating ADD COLUMN segment smallint CHECK (segment BETWEEN 1 AND 99);
ALTER TABLE rating ADD CONSTRAINT segments_have_sud CHECK (segment IS NULL OR scale = 'sud');

-- A session that ends restricted work.
ALTER TABLE session DROP CONSTRAINT session_closing_check,
  ADD CONSTRAINT session_closing_check CHECK (closing IN ('complete', 'reduced', 'incomplete', 'no_reprocessing'));

-- ---------------------------------------------------------------------------------------------
-- One row a target for lists: what the rules of that version make of its record. Nothing else writes it.

CREATE TABLE target_course (
  target_id uuid PRIMARY KEY,
  client_id uuid NOT NULL,
  rules smallint NOT NULL CHECK (rules > 0),
  procedure text NOT NULL CHECK (procedure IN ('standard', 'resource', 'restricted', 'recent_event', 'future')),
  state text NOT NULL CHECK (state IN ('planned', 'active', 'incomplete', 'complete', 'reduced', 'reopened')),
  held text CHECK (held IN ('not_yet', 'yes', 'no')),
  because text,
  unfounded boolean NOT NULL,
  version integer NOT NULL CHECK (version > 0),
  CHECK ((held IS NOT NULL) = (state = 'complete')),
  CHECK (because IS NULL OR state = 'complete'),
  FOREIGN KEY (target_id, client_id) REFERENCES target (id, client_id)
);
CREATE INDEX ON target_course (client_id);

-- ---------------------------------------------------------------------------------------------
-- What there is already. The owner is bound by the policies too: lifted for this alone.

ALTER TABLE session NO FORCE ROW LEVEL SECURITY;
ALTER TABLE stimulus_set NO FORCE ROW LEVEL SECURITY;
ALTER TABLE process_note NO FORCE ROW LEVEL SECURITY;
ALTER TABLE target NO FORCE ROW LEVEL SECURITY;

-- Marks move, with their ids, their order and their corrections. A correction was always of the same kind as what it corrects.
WITH RECURSIVE chain AS (
    SELECT id, id AS first_id FROM process_note WHERE replaces IS NULL AND change IS NOT NULL
    UNION ALL SELECT n.id, c.first_id FROM chain c JOIN process_note n ON n.replaces = c.id)
INSERT INTO fact (id, client_id, session_id, target_id, set_id, kind, code, moment, replaces, first_id, entered_by, at, seq)
SELECT n.id, n.client_id, n.session_id, s.target_id, n.set_id, 'mark', n.change, n.moment, n.replaces, nullif(c.first_id, n.id),
  n.entered_by, n.at, n.seq
FROM chain c JOIN process_note n ON n.id = c.id JOIN session s ON s.id = n.session_id;
DELETE FROM process_note n USING fact f WHERE f.id = n.id;
ALTER TABLE process_note DROP COLUMN change;
ALTER TABLE process_note ADD CONSTRAINT says_something CHECK (words IS NOT NULL OR replaces IS NOT NULL);

-- A state that was set by hand. In a session that is open it stands among what that session has, before whatever comes.
INSERT INTO fact (id, client_id, session_id, target_id, kind, code, at)
SELECT gen_random_uuid(), t.client_id, (SELECT s.id FROM session s WHERE s.client_id = t.client_id AND s.ended_at IS NULL ORDER BY s.seq DESC LIMIT 1),
  t.id, 'carried_over', t.status, now()
FROM target t
WHERE t.status <> 'planned' OR EXISTS (SELECT FROM stimulus_set s WHERE s.target_id = t.id)
ORDER BY t.client_id, t.number;

INSERT INTO target_course (target_id, client_id, rules, procedure, state, held, unfounded, version)
SELECT id, client_id, 1, 'standard', status, CASE status WHEN 'complete' THEN 'not_yet' END, false, 1 FROM target;

ALTER TABLE session FORCE ROW LEVEL SECURITY;
ALTER TABLE stimulus_set FORCE ROW LEVEL SECURITY;
ALTER TABLE process_note FORCE ROW LEVEL SECURITY;
ALTER TABLE target FORCE ROW LEVEL SECURITY;

DROP VIEW client_count;
ALTER TABLE target DROP COLUMN status;

-- ---------------------------------------------------------------------------------------------
-- A correction takes over where and when its chain was said: only its code is new.

CREATE FUNCTION place_of_corrected_fact() RETURNS trigger LANGUAGE plpgsql SET search_path = pg_catalog, pg_temp AS $$
DECLARE said public.fact;
BEGIN
  SELECT f.* INTO said FROM public.fact r JOIN public.fact f ON f.id = coalesce(r.first_id, r.id) WHERE r.id = NEW.replaces;
  IF (said.client_id = NEW.client_id AND said.kind = NEW.kind) IS NOT TRUE THEN
    RAISE EXCEPTION 'a correction is of the client and the kind of what it corrects' USING ERRCODE = 'foreign_key_violation';
  END IF;
  NEW.first_id := said.id;
  NEW.session_id := said.session_id;
  NEW.target_id := said.target_id;
  NEW.set_id := said.set_id;
  NEW.moment := said.moment;
  RETURN NEW;
END $$;
CREATE TRIGGER place_of_correction BEFORE INSERT ON fact FOR EACH ROW WHEN (NEW.replaces IS NOT NULL) EXECUTE FUNCTION place_of_corrected_fact();

CREATE OR REPLACE FUNCTION place_of_correction() RETURNS trigger LANGUAGE plpgsql SET search_path = pg_catalog, pg_temp AS $$
DECLARE asked public.rating;
BEGIN
  SELECT f.* INTO asked FROM public.rating r JOIN public.rating f ON f.id = coalesce(r.first_id, r.id) WHERE r.id = NEW.replaces;
  IF (asked.client_id = NEW.client_id AND asked.scale = NEW.scale) IS NOT TRUE THEN
    RAISE EXCEPTION 'a correction is of the client and the scale of what it corrects' USING ERRCODE = 'foreign_key_violation';
  END IF;
  NEW.first_id := asked.id;
  NEW.session_id := asked.session_id;
  NEW.target_id := asked.target_id;
  NEW.set_id := asked.set_id;
  NEW.moment := asked.moment;
  NEW.segment := asked.segment;
  RETURN NEW;
END $$;

-- ---------------------------------------------------------------------------------------------
-- What stands: leeward_core::standing in SQL. See 0009 for `asked` and `place`.

CREATE VIEW standing_fact WITH (security_invoker = true) AS
SELECT f.id, f.client_id, f.session_id, f.target_id, f.set_id, f.kind, f.code, f.because, f.moment, f.seq AS asked, coalesce(s.seq, f.seq) AS place
FROM fact f LEFT JOIN session s ON s.id = f.session_id
WHERE f.replaces IS NULL AND f.code IS NOT NULL AND NOT EXISTS (SELECT FROM fact later WHERE later.replaces = f.id)
UNION ALL
SELECT r.id, f.client_id, f.session_id, f.target_id, f.set_id, f.kind, r.code, r.because, f.moment, f.seq, coalesce(s.seq, f.seq)
FROM fact f JOIN fact r ON r.first_id = f.id LEFT JOIN session s ON s.id = f.session_id
WHERE f.replaces IS NULL AND r.code IS NOT NULL AND NOT EXISTS (SELECT FROM fact later WHERE later.replaces = r.id);

-- Of the whole of a target; a segment's SUD is not the target's.
CREATE OR REPLACE VIEW standing_rating WITH (security_invoker = true) AS
SELECT r.id, r.client_id, r.session_id, r.target_id, r.set_id, r.scale, r.value, r.moment, r.entered_by, r.at,
  r.at AS asked_at, r.seq AS asked, coalesce(s.seq, r.seq) AS place, false AS corrected
FROM rating r LEFT JOIN session s ON s.id = r.session_id
WHERE r.segment IS NULL AND r.replaces IS NULL AND r.value IS NOT NULL AND NOT EXISTS (SELECT FROM rating later WHERE later.replaces = r.id)
UNION ALL
SELECT r.id, f.client_id, f.session_id, f.target_id, f.set_id, f.scale, r.value, f.moment, r.entered_by, r.at,
  f.at, f.seq, coalesce(s.seq, f.seq), true
FROM rating f JOIN rating r ON r.first_id = f.id LEFT JOIN session s ON s.id = f.session_id
WHERE f.segment IS NULL AND f.replaces IS NULL AND r.value IS NOT NULL AND NOT EXISTS (SELECT FROM rating later WHERE later.replaces = r.id);

-- The SUDs of segments. None is corrected: one that is asked again takes its place.
CREATE VIEW standing_segment WITH (security_invoker = true) AS
SELECT r.target_id, r.segment, r.value, r.moment, r.seq AS asked, coalesce(s.seq, r.seq) AS place
FROM rating r LEFT JOIN session s ON s.id = r.session_id
WHERE r.segment IS NOT NULL AND r.value IS NOT NULL AND NOT EXISTS (SELECT FROM rating later WHERE later.replaces = r.id);

-- Open: not put away and not at its end; the incomplete ones are among them.
CREATE VIEW client_count WITH (security_invoker = true) AS
SELECT c.id AS client_id, coalesce(t.open, 0) AS open, coalesce(t.incomplete, 0) AS incomplete, coalesce(t.complete, 0) AS complete,
  coalesce(s.sessions, 0) AS sessions, coalesce(x.sets, 0) AS sets, s.first_at, s.last_at
FROM client c
LEFT JOIN (
  SELECT t.client_id, count(*) FILTER (WHERE n.state NOT IN ('complete', 'reduced')) AS open,
    count(*) FILTER (WHERE n.state = 'incomplete') AS incomplete, count(*) FILTER (WHERE n.state = 'complete') AS complete
  FROM target t JOIN target_course n ON n.target_id = t.id WHERE t.archived_at IS NULL GROUP BY t.client_id) t ON t.client_id = c.id
LEFT JOIN (
  SELECT client_id, count(*) AS sessions, min(opened_at) AS first_at, max(opened_at) AS last_at FROM session GROUP BY client_id) s
  ON s.client_id = c.id
LEFT JOIN (SELECT client_id, count(*) AS sets FROM stimulus_set GROUP BY client_id) x ON x.client_id = c.id;
GRANT SELECT ON client_count, standing_fact, standing_segment TO leeward_app;

-- ---------------------------------------------------------------------------------------------
-- Policies. Facts are read like ratings: by those who treat the client, and by leads. A room says that a set has begun, and no more.

ALTER TABLE fact ENABLE ROW LEVEL SECURITY;
ALTER TABLE fact FORCE ROW LEVEL SECURITY;
CREATE POLICY read ON fact FOR SELECT USING (client_id IN (SELECT access.my_clients()) OR (SELECT access.has_role('lead')));
CREATE POLICY add ON fact FOR INSERT WITH CHECK (client_id IN (SELECT access.my_clients()) AND entered_by = (SELECT access.me()));
GRANT SELECT, INSERT (id, client_id, session_id, target_id, set_id, kind, code, because, moment, replaces, entered_by, at) ON fact TO leeward_app;

ALTER TABLE target_course ENABLE ROW LEVEL SECURITY;
ALTER TABLE target_course FORCE ROW LEVEL SECURITY;
CREATE POLICY read ON target_course FOR SELECT USING (
  client_id IN (SELECT access.my_clients()) OR (SELECT access.has_role('lead')) OR client_id = (SELECT access.my_room_client()));
CREATE POLICY add ON target_course FOR INSERT WITH CHECK (client_id IN (SELECT access.my_clients()));
CREATE POLICY change ON target_course FOR UPDATE USING (
  client_id IN (SELECT access.my_clients()) OR client_id = (SELECT access.my_room_client()));
GRANT SELECT, INSERT (target_id, client_id, rules, procedure, state, held, because, unfounded, version),
  UPDATE (rules, procedure, state, held, because, unfounded, version) ON target_course TO leeward_app;

GRANT INSERT (segment) ON rating TO leeward_app;

-- What `leeward course` reads and makes anew, as the owner.
CREATE POLICY upkeep ON fact FOR SELECT USING ((SELECT access.is_owner()));
CREATE POLICY upkeep ON rating FOR SELECT USING ((SELECT access.is_owner()));
CREATE POLICY upkeep ON stimulus_set FOR SELECT USING ((SELECT access.is_owner()));
CREATE POLICY upkeep ON session FOR SELECT USING ((SELECT access.is_owner()));
CREATE POLICY upkeep ON target_course FOR SELECT USING ((SELECT access.is_owner()));
CREATE POLICY upkeep_fold ON target_course FOR UPDATE USING ((SELECT access.is_owner()));

DELETE FROM access.audit_act WHERE act = 'target.status';
INSERT INTO access.audit_act VALUES ('member', 'target.fact', false);
