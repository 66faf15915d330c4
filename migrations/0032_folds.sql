-- Why: forms some weeks after the end of a treatment were due for ever where nobody answered them, and stood on every list for years. Ninety days after
-- their day they are not that any more (a practitioner's judgement), and nothing is due.

CREATE OR REPLACE VIEW schedule_due WITH (security_invoker = true) AS
WITH t AS MATERIALIZED (SELECT (access.now() AT TIME ZONE zone)::date AS day FROM practice) -- once, and not for each client
SELECT s.client_id, CASE WHEN l.holds THEN n.due_for END AS due_for, CASE WHEN l.holds THEN n.due_on END AS due_on, s.due_on AS folded_on
FROM schedule s CROSS JOIN t
CROSS JOIN LATERAL (SELECT coalesce(s.due_for = 'end' AND s.then_on <= t.day, false) AS after) e
CROSS JOIN LATERAL (
  SELECT CASE WHEN e.after THEN s.then_for ELSE s.due_for END AS due_for,
    CASE WHEN NOT e.after THEN s.due_on WHEN s.then_for IS NOT NULL THEN s.then_on END AS due_on) n
CROSS JOIN LATERAL (SELECT n.due_for IS DISTINCT FROM 'follow_up' OR n.due_on + 90 > t.day AS holds) l;

-- Two SUD of one target kept at the same moment: whoever comes second folds what the first has written.
CREATE OR REPLACE FUNCTION access.fold_still() RETURNS trigger LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
DECLARE of_target uuid := coalesce(NEW.target_id, (SELECT r.target_id FROM public.rating r WHERE r.id = NEW.first_id));
BEGIN
  PERFORM pg_advisory_xact_lock(hashtextextended(of_target::text, 32));
  INSERT INTO public.target_still AS kept (target_id, client_id, still)
  SELECT f.target_id, f.client_id, f.still FROM public.target_still_fold f WHERE f.target_id = of_target
  ON CONFLICT (target_id) DO UPDATE SET still = excluded.still WHERE kept.still <> excluded.still;
  DELETE FROM public.target_still s WHERE s.target_id = of_target
    AND NOT EXISTS (SELECT FROM public.target_still_fold f WHERE f.target_id = s.target_id);
  RETURN NULL;
END $$;

-- The same for two sessions of one treatment.
CREATE OR REPLACE FUNCTION access.fold_sessions() RETURNS trigger LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
BEGIN
  PERFORM pg_advisory_xact_lock(hashtextextended(NEW.episode_id::text, 32));
  UPDATE public.episode e SET started_at = f.started_at, last_at = f.last_at, sessions = f.sessions
  FROM (SELECT min(opened_at) AS started_at, max(opened_at) AS last_at, count(*) AS sessions FROM public.attended WHERE episode_id = NEW.episode_id) f
  WHERE e.id = NEW.episode_id AND (e.started_at, e.last_at, e.sessions) IS DISTINCT FROM (f.started_at, f.last_at, f.sessions);
  RETURN NULL;
END $$;
