-- Why: ratings and process notes had no policies yet, so nobody could write one and the start-up
-- check rightly refused to serve. Ratings are numbers: a lead may read them. Process notes are words
-- about a person: only those who treat the client. Both are append-only.

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

-- The ratings that count: neither corrected nor taken back. `asked_at` is the time of the first
-- entry of its chain of corrections, so that correcting an early rating does not make it the latest.
-- With the rights and policies of whoever asks.
CREATE VIEW standing_rating WITH (security_invoker = true) AS
SELECT r.id, r.client_id, r.session_id, r.target_id, r.set_id, r.scale, r.value, r.moment, r.entered_by, r.at,
  CASE WHEN r.replaces IS NULL THEN r.at ELSE (
    WITH RECURSIVE earlier AS (
      SELECT e.replaces, e.at FROM rating e WHERE e.id = r.replaces
      UNION ALL SELECT e.replaces, e.at FROM earlier JOIN rating e ON e.id = earlier.replaces)
    SELECT at FROM earlier WHERE replaces IS NULL) END AS asked_at
FROM rating r
WHERE r.value IS NOT NULL AND NOT EXISTS (SELECT FROM rating later WHERE later.replaces = r.id);
GRANT SELECT ON standing_rating TO leeward_app;
