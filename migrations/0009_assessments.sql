-- Why: what was rated when must have one answer. A count in order of keeping takes the place of the wall
-- clock, which may be set back. A correction stands where its first entry was asked, by the database, so
-- that no form can move it. An assessment made anew is a row of its own; what is in the record as a
-- replacement stays one. And one view counts a client's targets and sessions for every page that says so.

-- ---------------------------------------------------------------------------------------------
-- One count for sessions, sets, ratings and notes: what was kept later has the higher number.

CREATE SEQUENCE kept_order;
GRANT USAGE ON SEQUENCE kept_order TO leeward_app;

ALTER TABLE session ADD COLUMN seq bigint;
ALTER TABLE stimulus_set ADD COLUMN seq bigint;
ALTER TABLE process_note ADD COLUMN seq bigint;
ALTER TABLE rating ADD COLUMN seq bigint;
-- The first of its chain of corrections; null where it is that itself.
ALTER TABLE rating ADD COLUMN first_id uuid REFERENCES rating;

-- The owner is bound by the policies too, and they let nobody change a kept row: lifted for the numbering alone.
ALTER TABLE session NO FORCE ROW LEVEL SECURITY;
ALTER TABLE stimulus_set NO FORCE ROW LEVEL SECURITY;
ALTER TABLE process_note NO FORCE ROW LEVEL SECURITY;
ALTER TABLE rating NO FORCE ROW LEVEL SECURITY;

-- What is there already is numbered by its times, as it was read so far. Only where a clock was set back its
-- numbers and links know better: no session or set comes before the one numbered before it, no correction
-- before what it corrects, no entry before its session or set.
CREATE TEMPORARY TABLE numbered ON COMMIT DROP AS
WITH RECURSIVE session_time AS (
    SELECT id, number, max(opened_at) OVER (PARTITION BY client_id ORDER BY number) AS no_sooner FROM session),
  set_time AS (
    SELECT x.id, x.number, greatest(max(x.recorded_at) OVER (PARTITION BY x.session_id ORDER BY x.number), s.no_sooner) AS no_sooner
    FROM stimulus_set x JOIN session_time s ON s.id = x.session_id),
  entry AS (
    SELECT r.id, r.replaces, greatest(r.at, s.no_sooner, t.no_sooner) AS no_sooner
    FROM rating r LEFT JOIN session_time s ON s.id = r.session_id LEFT JOIN set_time t ON t.id = r.set_id
    UNION ALL SELECT n.id, n.replaces, greatest(n.at, s.no_sooner, t.no_sooner)
    FROM process_note n JOIN session_time s ON s.id = n.session_id LEFT JOIN set_time t ON t.id = n.set_id),
  chain AS (
    SELECT id, id AS first_id, no_sooner, 0 AS corrections FROM entry WHERE replaces IS NULL
    UNION ALL SELECT e.id, c.first_id, greatest(e.no_sooner, c.no_sooner), c.corrections + 1
    FROM chain c JOIN entry e ON e.replaces = c.id),
  kept AS (
    SELECT id, NULL::uuid AS first_id, no_sooner, 1 AS kind, number FROM session_time
    UNION ALL SELECT id, NULL, no_sooner, 2, number FROM set_time
    UNION ALL SELECT id, first_id, no_sooner, 3, corrections FROM chain)
SELECT id, first_id, row_number() OVER (ORDER BY no_sooner, kind, number, id) AS seq FROM kept;
CREATE UNIQUE INDEX ON numbered (id);
ANALYZE numbered;

UPDATE session s SET seq = n.seq FROM numbered n WHERE n.id = s.id;
UPDATE stimulus_set s SET seq = n.seq FROM numbered n WHERE n.id = s.id;
UPDATE process_note p SET seq = n.seq FROM numbered n WHERE n.id = p.id;
UPDATE rating r SET seq = n.seq, first_id = nullif(n.first_id, r.id) FROM numbered n WHERE n.id = r.id;
SELECT setval('kept_order', (SELECT count(*) + 1 FROM numbered), false);

ALTER TABLE session FORCE ROW LEVEL SECURITY;
ALTER TABLE stimulus_set FORCE ROW LEVEL SECURITY;
ALTER TABLE process_note FORCE ROW LEVEL SECURITY;
ALTER TABLE rating FORCE ROW LEVEL SECURITY;

ALTER TABLE session ALTER COLUMN seq SET NOT NULL, ALTER COLUMN seq SET DEFAULT nextval('kept_order');
ALTER TABLE stimulus_set ALTER COLUMN seq SET NOT NULL, ALTER COLUMN seq SET DEFAULT nextval('kept_order');
ALTER TABLE process_note ALTER COLUMN seq SET NOT NULL, ALTER COLUMN seq SET DEFAULT nextval('kept_order');
ALTER TABLE rating ALTER COLUMN seq SET NOT NULL, ALTER COLUMN seq SET DEFAULT nextval('kept_order'),
  ADD CHECK ((first_id IS NULL) = (replaces IS NULL));
CREATE INDEX ON rating (first_id) WHERE first_id IS NOT NULL;

-- ---------------------------------------------------------------------------------------------
-- A correction takes over where and when its chain was asked: only its value is new.

CREATE FUNCTION place_of_correction() RETURNS trigger LANGUAGE plpgsql SET search_path = pg_catalog, pg_temp AS $$
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
  RETURN NEW;
END $$;
CREATE TRIGGER place_of_correction BEFORE INSERT ON rating FOR EACH ROW WHEN (NEW.replaces IS NOT NULL) EXECUTE FUNCTION place_of_correction();

-- ---------------------------------------------------------------------------------------------
-- Which ratings stand: leeward_core::standing in SQL, bound to it by a test. Of each chain the last, where the
-- first was asked. `asked` orders them within a session or outside of any; `place` orders sessions among
-- what was asked outside: an entry that came after the end belongs to its session all the same.

CREATE OR REPLACE VIEW standing_rating WITH (security_invoker = true) AS
SELECT r.id, r.client_id, r.session_id, r.target_id, r.set_id, r.scale, r.value, r.moment, r.entered_by, r.at,
  r.at AS asked_at, r.seq AS asked, coalesce(s.seq, r.seq) AS place, false AS corrected
FROM rating r LEFT JOIN session s ON s.id = r.session_id
WHERE r.replaces IS NULL AND r.value IS NOT NULL AND NOT EXISTS (SELECT FROM rating later WHERE later.replaces = r.id)
UNION ALL
SELECT r.id, f.client_id, f.session_id, f.target_id, f.set_id, f.scale, r.value, f.moment, r.entered_by, r.at,
  f.at, f.seq, coalesce(s.seq, f.seq), true
FROM rating f JOIN rating r ON r.first_id = f.id LEFT JOIN session s ON s.id = f.session_id
WHERE f.replaces IS NULL AND r.value IS NOT NULL AND NOT EXISTS (SELECT FROM rating later WHERE later.replaces = r.id);
DROP FUNCTION first_asked_at(uuid);

-- ---------------------------------------------------------------------------------------------
-- What the lists of clients count. Open: not put away and not complete; the incomplete ones are among them.

CREATE VIEW client_count WITH (security_invoker = true) AS
SELECT c.id AS client_id, coalesce(t.open, 0) AS open, coalesce(t.incomplete, 0) AS incomplete, coalesce(t.complete, 0) AS complete,
  coalesce(s.sessions, 0) AS sessions, coalesce(x.sets, 0) AS sets, s.first_at, s.last_at
FROM client c
LEFT JOIN (
  SELECT client_id, count(*) FILTER (WHERE status <> 'complete') AS open, count(*) FILTER (WHERE status = 'incomplete') AS incomplete,
    count(*) FILTER (WHERE status = 'complete') AS complete
  FROM target WHERE archived_at IS NULL GROUP BY client_id) t ON t.client_id = c.id
LEFT JOIN (
  SELECT client_id, count(*) AS sessions, min(opened_at) AS first_at, max(opened_at) AS last_at FROM session GROUP BY client_id) s
  ON s.client_id = c.id
LEFT JOIN (SELECT client_id, count(*) AS sets FROM stimulus_set GROUP BY client_id) x ON x.client_id = c.id;
GRANT SELECT ON client_count TO leeward_app;
