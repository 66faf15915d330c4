-- Why: which ratings count is asked in many places and must have one answer: those neither
-- corrected nor taken back. `asked_at` is the time of the first
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
