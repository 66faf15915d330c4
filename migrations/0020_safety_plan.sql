-- Why: when a session finds that today is not for reprocessing, the plan for staying safe has to be in front, and it lay on paper in another
-- room. One a client, sealed line for line; leads do not read it.

CREATE TABLE safety_plan (
  client_id uuid PRIMARY KEY REFERENCES client,
  signs bytea NOT NULL,
  helps bytea NOT NULL,
  people bytea NOT NULL,
  places bytea NOT NULL,
  professionals bytea NOT NULL,
  surroundings bytea NOT NULL,
  review_on date CONSTRAINT review_on_is_a_day CHECK (isfinite(review_on)),
  written_at timestamptz NOT NULL CONSTRAINT written_at_is_a_time CHECK (isfinite(written_at)),
  version integer NOT NULL CHECK (version > 0)
);

ALTER TABLE safety_plan ENABLE ROW LEVEL SECURITY;
ALTER TABLE safety_plan FORCE ROW LEVEL SECURITY;
CREATE POLICY read ON safety_plan FOR SELECT USING (client_id IN (SELECT access.my_clients()));
CREATE POLICY add ON safety_plan FOR INSERT WITH CHECK (client_id IN (SELECT access.my_clients()));
CREATE POLICY change ON safety_plan FOR UPDATE USING (client_id IN (SELECT access.my_clients()));
GRANT SELECT, INSERT (client_id, signs, helps, people, places, professionals, surroundings, review_on, written_at, version),
  UPDATE (signs, helps, people, places, professionals, surroundings, review_on, written_at, version) ON safety_plan TO leeward_app;

INSERT INTO access.audit_act VALUES ('member', 'safety_plan.view', false), ('member', 'safety_plan.change', false);
