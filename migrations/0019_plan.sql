-- Why: a client's targets stood in the order in which they had been entered, and what belongs together, what came first and what led to
-- what lived on paper. A plan of treatment is kept now: the order by hand, the age or the year, clusters with their earliest and worst
-- memory, and what came up from what. How old somebody was is about them: it is for those who treat them, and leads do not read it.

-- Two who move one plan at once: the later sees what the earlier did.
ALTER TABLE client ADD COLUMN plan_version integer NOT NULL DEFAULT 1 CHECK (plan_version > 0);
GRANT UPDATE (plan_version) ON client TO leeward_app;

CREATE TABLE cluster (
  id uuid PRIMARY KEY,
  client_id uuid NOT NULL REFERENCES client,
  number integer NOT NULL CHECK (number > 0),   -- within the client, from 1
  name bytea NOT NULL,                          -- sealed
  theme text CHECK (theme IN ('responsibility', 'safety', 'choice')),
  earliest_id uuid,
  worst_id uuid,
  version integer NOT NULL CHECK (version > 0),
  UNIQUE (id, client_id),
  UNIQUE (client_id, number)
);

CREATE TABLE target_plan (
  target_id uuid PRIMARY KEY,
  client_id uuid NOT NULL,
  place integer NOT NULL CHECK (place > 0),     -- the order of the work within the client
  age smallint CHECK (age BETWEEN 0 AND 120),
  year smallint CHECK (year BETWEEN 1900 AND 2200),
  cluster_id uuid,
  parent_id uuid CHECK (parent_id <> target_id),
  UNIQUE (client_id, place) DEFERRABLE INITIALLY DEFERRED,
  UNIQUE (target_id, cluster_id),
  FOREIGN KEY (target_id, client_id) REFERENCES target (id, client_id),
  FOREIGN KEY (parent_id, client_id) REFERENCES target (id, client_id),
  FOREIGN KEY (cluster_id, client_id) REFERENCES cluster (id, client_id)
);
CREATE INDEX ON target_plan (cluster_id) WHERE cluster_id IS NOT NULL;
CREATE INDEX ON target_plan (parent_id) WHERE parent_id IS NOT NULL;

-- What is marked in a cluster belongs to it.
ALTER TABLE cluster ADD FOREIGN KEY (earliest_id, id) REFERENCES target_plan (target_id, cluster_id),
  ADD FOREIGN KEY (worst_id, id) REFERENCES target_plan (target_id, cluster_id);

-- The targets there are: in the order in which they were entered. The owner is bound by the policies too: lifted for this alone.
ALTER TABLE target NO FORCE ROW LEVEL SECURITY;
INSERT INTO target_plan (target_id, client_id, place) SELECT id, client_id, number FROM target;
ALTER TABLE target FORCE ROW LEVEL SECURITY;

ALTER TABLE cluster ENABLE ROW LEVEL SECURITY;
ALTER TABLE cluster FORCE ROW LEVEL SECURITY;
CREATE POLICY read ON cluster FOR SELECT USING (client_id IN (SELECT access.my_clients()));
CREATE POLICY add ON cluster FOR INSERT WITH CHECK (client_id IN (SELECT access.my_clients()));
CREATE POLICY change ON cluster FOR UPDATE USING (client_id IN (SELECT access.my_clients()));
GRANT SELECT, INSERT (id, client_id, number, name, theme, version), UPDATE (name, theme, earliest_id, worst_id, version) ON cluster TO leeward_app;

ALTER TABLE target_plan ENABLE ROW LEVEL SECURITY;
ALTER TABLE target_plan FORCE ROW LEVEL SECURITY;
CREATE POLICY read ON target_plan FOR SELECT USING (client_id IN (SELECT access.my_clients()));
CREATE POLICY add ON target_plan FOR INSERT WITH CHECK (client_id IN (SELECT access.my_clients()));
CREATE POLICY change ON target_plan FOR UPDATE USING (client_id IN (SELECT access.my_clients()));
GRANT SELECT, INSERT (target_id, client_id, place), UPDATE (place, age, year, cluster_id, parent_id) ON target_plan TO leeward_app;

INSERT INTO access.audit_act VALUES ('member', 'plan.move', false), ('member', 'plan.cluster', false);
