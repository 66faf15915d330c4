-- Why: which ratings count is asked in many places and must have one answer: those neither corrected
-- nor taken back. `asked_at` is the time of the first entry of its chain of corrections, so that
-- correcting an early rating does not make it the latest. With the rights and policies of whoever asks.

-- A function, so that the planner reckons the search for the start of a chain as what it is: rare.
CREATE FUNCTION first_asked_at(corrected uuid) RETURNS timestamptz LANGUAGE sql STABLE SET search_path = '' AS $$
  WITH RECURSIVE earlier AS (
    SELECT e.replaces, e.at FROM public.rating e WHERE e.id = corrected
    UNION ALL SELECT e.replaces, e.at FROM earlier JOIN public.rating e ON e.id = earlier.replaces)
  SELECT at FROM earlier WHERE replaces IS NULL $$;

CREATE VIEW standing_rating WITH (security_invoker = true) AS
SELECT r.id, r.client_id, r.session_id, r.target_id, r.set_id, r.scale, r.value, r.moment, r.entered_by, r.at,
  CASE WHEN r.replaces IS NULL THEN r.at ELSE first_asked_at(r.replaces) END AS asked_at
FROM rating r
WHERE r.value IS NOT NULL AND NOT EXISTS (SELECT FROM rating later WHERE later.replaces = r.id);
GRANT SELECT ON standing_rating TO leeward_app;
