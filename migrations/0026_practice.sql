-- Why: the lead could see single records and nothing of the practice: who began, who left and why, whether totals changed.

CREATE INDEX ON episode (reprocessed_at) WHERE reprocessed_at IS NOT NULL;
INSERT INTO access.audit_act VALUES ('member', 'practice.outcomes.view', false);
CREATE INDEX ON after_check (due_until);

-- ---------------------------------------------------------------------------------------------
-- Which courses have not moved: the SUD at the end of none of the target's three latest sessions was lower than at the beginning of the first
-- of them, and that was above 0. A reason to offer help, not a mark; three is a practitioner's judgement. One row for each target with as many
-- sessions, kept in the transaction that keeps the rating; nothing else writes it.

CREATE TABLE target_still (
  target_id uuid PRIMARY KEY,
  client_id uuid NOT NULL,
  still boolean NOT NULL,
  FOREIGN KEY (target_id, client_id) REFERENCES target (id, client_id)
);
CREATE INDEX ON target_still (client_id);
CREATE INDEX ON target_still (target_id) WHERE still;

CREATE VIEW target_still_fold WITH (security_invoker = true) AS
WITH per AS (
    SELECT target_id, client_id, session_id, max(place) AS place, (array_agg(value ORDER BY place, asked))[1] AS first,
      (array_agg(value ORDER BY place DESC, asked DESC))[1] AS last
    FROM standing_rating WHERE scale = 'sud' AND session_id IS NOT NULL AND target_id IS NOT NULL GROUP BY target_id, client_id, session_id),
  latest AS (SELECT *, row_number() OVER (PARTITION BY target_id ORDER BY place DESC) AS back FROM per)
SELECT target_id, client_id, min(last) >= (array_agg(first ORDER BY back DESC))[1] AND (array_agg(first ORDER BY back DESC))[1] > 0 AS still
FROM latest WHERE back <= 3 GROUP BY target_id, client_id HAVING count(*) = 3;
GRANT SELECT ON target_still_fold TO leeward_app;

CREATE FUNCTION access.fold_still() RETURNS trigger LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
DECLARE of_target uuid := coalesce(NEW.target_id, (SELECT r.target_id FROM public.rating r WHERE r.id = NEW.first_id));
BEGIN
  INSERT INTO public.target_still AS kept (target_id, client_id, still)
  SELECT f.target_id, f.client_id, f.still FROM public.target_still_fold f WHERE f.target_id = of_target
  ON CONFLICT (target_id) DO UPDATE SET still = excluded.still WHERE kept.still <> excluded.still;
  DELETE FROM public.target_still s WHERE s.target_id = of_target
    AND NOT EXISTS (SELECT FROM public.target_still_fold f WHERE f.target_id = s.target_id);
  RETURN NULL;
END $$;
REVOKE ALL ON FUNCTION access.fold_still() FROM PUBLIC;
CREATE TRIGGER fold_still AFTER INSERT ON rating FOR EACH ROW WHEN (NEW.scale = 'sud') EXECUTE FUNCTION access.fold_still();

ALTER TABLE target_still ENABLE ROW LEVEL SECURITY;
ALTER TABLE target_still FORCE ROW LEVEL SECURITY;
CREATE POLICY read ON target_still FOR SELECT USING (client_id IN (SELECT access.my_clients()) OR (SELECT access.has_role('lead')));
CREATE POLICY upkeep ON target_still FOR ALL USING ((SELECT access.is_owner())) WITH CHECK ((SELECT access.is_owner()));
GRANT SELECT ON target_still TO leeward_app;

-- What there is already.
INSERT INTO target_still (target_id, client_id, still) SELECT target_id, client_id, still FROM target_still_fold;

-- ---------------------------------------------------------------------------------------------
-- How late a flag is was counted a day too many: "16 days -24:00:00" has 16 days.

CREATE OR REPLACE FUNCTION access.flags_past_time() RETURNS TABLE (client_id uuid, days_late integer, told bigint)
LANGUAGE plpgsql STABLE SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
BEGIN
  IF access.has_role('lead') IS NOT TRUE THEN RETURN; END IF;
  RETURN QUERY
    SELECT f.client_id, floor((extract(epoch FROM access.now() - f.raised_at) - 3600 * p.flag_hours) / 86400)::integer,
      (SELECT count(*) FROM public.risk_told t WHERE t.response_id = f.response_id)
    FROM public.risk_flag f, public.practice p WHERE f.done IS NULL AND f.raised_at < access.now() - make_interval(hours => p.flag_hours);
END $$;
