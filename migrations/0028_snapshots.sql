-- Why: a quarter that was reported changes when a form comes in late or a threshold is set otherwise, and nobody could show what was reported.
-- And some practices do not want leads to open single courses.

-- ---------------------------------------------------------------------------------------------
-- The figures of a quarter as they stood when it was frozen, with the thresholds and the rules they were judged by: counts, never a word
-- about a person. Never changed.

CREATE TABLE practice_snapshot (
  id uuid PRIMARY KEY,
  first_day date NOT NULL UNIQUE CONSTRAINT first_day_is_a_day CHECK (isfinite(first_day)),
  last_day date NOT NULL CONSTRAINT last_day_is_a_day CHECK (isfinite(last_day)),
  CHECK (last_day > first_day),
  made_at timestamptz NOT NULL CONSTRAINT made_at_is_a_time CHECK (isfinite(made_at)),
  made_by uuid NOT NULL REFERENCES access.member,
  figures jsonb NOT NULL                        -- portal: outcomes::figures::Figures
);
ALTER TABLE practice_snapshot ENABLE ROW LEVEL SECURITY;
ALTER TABLE practice_snapshot FORCE ROW LEVEL SECURITY;
CREATE POLICY read ON practice_snapshot FOR SELECT USING ((SELECT access.has_role('lead')));
CREATE POLICY add ON practice_snapshot FOR INSERT WITH CHECK ((SELECT access.has_role('lead')) AND made_by = (SELECT access.me()));
GRANT SELECT, INSERT (id, first_day, last_day, made_at, made_by, figures) ON practice_snapshot TO leeward_app;

INSERT INTO access.audit_act VALUES ('member', 'practice.snapshot.make', false);

-- Whether leads may open single courses by record.
ALTER TABLE practice ADD COLUMN single_courses boolean NOT NULL DEFAULT true;
GRANT UPDATE (single_courses) ON practice TO leeward_app;
