-- Why: whether it helped could be asked of single ratings alone. Questionnaires were filled in on paper or nowhere: no total, no course, and
-- an answer about wanting to die that nobody read.

-- ---------------------------------------------------------------------------------------------
-- What came of a form. The total stands in clear, with the rules that made it and the threshold that a change was judged by at that time;
-- the answers themselves are sealed and lie apart. A correction is a row of its own; nothing is rescored.

CREATE TABLE response (
  id uuid PRIMARY KEY,
  client_id uuid NOT NULL REFERENCES client,
  episode_id uuid NOT NULL,
  number integer NOT NULL CHECK (number > 0),   -- within the client
  measure text NOT NULL CHECK (measure IN ('pcl5', 'itq', 'iesr', 'phq9', 'gad7', 'anxiety5', 'who5', 'des2')),
  rules smallint NOT NULL CHECK (rules > 0),
  occasion text NOT NULL CHECK (occasion IN ('intake', 'regular', 'end', 'follow_up')),
  answered_at timestamptz NOT NULL CONSTRAINT answered_at_is_a_time CHECK (isfinite(answered_at)),
  total double precision CHECK (total BETWEEN 0 AND 100),   -- null: it cannot be told, for blanks
  prorated boolean NOT NULL,
  points smallint CHECK (points > 0),           -- from so many on a change was reliable then; null: no change of it is judged
  by_client boolean NOT NULL DEFAULT false,
  replaces uuid UNIQUE REFERENCES response,
  withdrawn boolean NOT NULL DEFAULT false,     -- it takes back what it replaces, and is none itself
  entered_by uuid REFERENCES access.member,     -- null: the client
  kept_at timestamptz NOT NULL CONSTRAINT kept_at_is_a_time CHECK (isfinite(kept_at)),
  CHECK (entered_by IS NOT NULL OR by_client),
  CHECK (NOT withdrawn OR replaces IS NOT NULL),
  UNIQUE (client_id, number),
  UNIQUE (id, client_id),
  FOREIGN KEY (episode_id, client_id) REFERENCES episode (id, client_id)
);
CREATE INDEX ON response (episode_id, measure);

CREATE TABLE response_answers (
  response_id uuid PRIMARY KEY,
  client_id uuid NOT NULL,
  answers bytea NOT NULL,
  event bytea NOT NULL,                         -- what it was asked about, where the form asks about one event
  FOREIGN KEY (response_id, client_id) REFERENCES response (id, client_id)
);
CREATE INDEX ON response_answers (client_id);

CREATE VIEW standing_response WITH (security_invoker = true) AS
SELECT r.* FROM response r WHERE NOT r.withdrawn AND NOT EXISTS (SELECT FROM response later WHERE later.replaces = r.id);

-- ---------------------------------------------------------------------------------------------
-- One row an episode and measure for lists: the first total, the last in treatment, the one at its end. Nothing else writes it.

CREATE TABLE episode_measure (
  episode_id uuid NOT NULL,
  measure text NOT NULL,
  client_id uuid NOT NULL,
  first_total double precision NOT NULL,
  first_at timestamptz NOT NULL CONSTRAINT first_at_is_a_time CHECK (isfinite(first_at)),
  last_total double precision NOT NULL,         -- before its end; the first where there is no other
  last_at timestamptz NOT NULL CONSTRAINT last_at_is_a_time CHECK (isfinite(last_at)),
  end_total double precision,                   -- null: it was not asked at the end
  end_at timestamptz CONSTRAINT end_at_is_a_time CHECK (isfinite(end_at)),
  totals integer NOT NULL CHECK (totals > 0),
  PRIMARY KEY (episode_id, measure),
  CHECK ((end_total IS NULL) = (end_at IS NULL)),
  FOREIGN KEY (episode_id, client_id) REFERENCES episode (id, client_id)
);
CREATE INDEX ON episode_measure (client_id);
CREATE INDEX ON episode_measure (measure, first_at);

-- The rows as they should be: what is asked after the end is no part of the treatment, and of what was asked at its end alone no change is known.
CREATE VIEW episode_measure_fold WITH (security_invoker = true) AS
SELECT episode_id, measure, (array_agg(client_id))[1] AS client_id,
  (array_agg(total ORDER BY answered_at, number) FILTER (WHERE occasion <> 'end'))[1] AS first_total,
  min(answered_at) FILTER (WHERE occasion <> 'end') AS first_at,
  (array_agg(total ORDER BY answered_at DESC, number DESC) FILTER (WHERE occasion <> 'end'))[1] AS last_total,
  max(answered_at) FILTER (WHERE occasion <> 'end') AS last_at,
  (array_agg(total ORDER BY answered_at DESC, number DESC) FILTER (WHERE occasion = 'end'))[1] AS end_total,
  max(answered_at) FILTER (WHERE occasion = 'end') AS end_at, count(*)::integer AS totals
FROM standing_response WHERE total IS NOT NULL AND occasion <> 'follow_up' GROUP BY episode_id, measure
HAVING count(*) FILTER (WHERE occasion <> 'end') > 0;
GRANT SELECT ON standing_response, episode_measure_fold TO leeward_app;

CREATE FUNCTION access.fold_measure() RETURNS trigger LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
BEGIN
  DELETE FROM public.episode_measure WHERE episode_id = NEW.episode_id AND measure = NEW.measure;
  INSERT INTO public.episode_measure (episode_id, measure, client_id, first_total, first_at, last_total, last_at, end_total, end_at, totals)
  SELECT episode_id, measure, client_id, first_total, first_at, last_total, last_at, end_total, end_at, totals
  FROM public.episode_measure_fold WHERE episode_id = NEW.episode_id AND measure = NEW.measure;
  RETURN NULL;
END $$;
REVOKE ALL ON FUNCTION access.fold_measure() FROM PUBLIC;
CREATE TRIGGER fold_measure AFTER INSERT ON response FOR EACH ROW EXECUTE FUNCTION access.fold_measure();

-- A correction is of the client, the episode and the form of what it corrects.
CREATE FUNCTION place_of_corrected_response() RETURNS trigger LANGUAGE plpgsql SET search_path = pg_catalog, pg_temp AS $$
DECLARE said public.response;
BEGIN
  SELECT r.* INTO said FROM public.response r WHERE r.id = NEW.replaces;
  IF (said.client_id = NEW.client_id AND said.measure = NEW.measure) IS NOT TRUE THEN
    RAISE EXCEPTION 'a correction is of the client and the form of what it corrects' USING ERRCODE = 'foreign_key_violation';
  END IF;
  NEW.episode_id := said.episode_id;
  RETURN NEW;
END $$;
CREATE TRIGGER place_of_correction BEFORE INSERT ON response FOR EACH ROW WHEN (NEW.replaces IS NOT NULL) EXECUTE FUNCTION place_of_corrected_response();

-- ---------------------------------------------------------------------------------------------
-- An answer that is a sign of risk to life, or a blank where one was asked for. It stays open until a person writes down what was done.

CREATE TABLE risk_flag (
  response_id uuid PRIMARY KEY,
  client_id uuid NOT NULL,
  says text NOT NULL CHECK (says IN ('flag', 'unknown')),
  raised_at timestamptz NOT NULL CONSTRAINT raised_at_is_a_time CHECK (isfinite(raised_at)),
  done text CHECK (done IN ('plan_stands', 'asked', 'seen', 'others_called', 'sent_on', 'emergency')),
  done_at timestamptz CONSTRAINT done_at_is_a_time CHECK (isfinite(done_at)),
  done_by uuid REFERENCES access.member,
  CHECK ((done IS NULL) = (done_at IS NULL) AND (done IS NULL) = (done_by IS NULL)),
  UNIQUE (response_id, client_id),
  FOREIGN KEY (response_id, client_id) REFERENCES response (id, client_id)
);
CREATE INDEX ON risk_flag (client_id);
CREATE INDEX ON risk_flag (raised_at) WHERE done IS NULL;

-- Who has had a flag on screen, and when first.
CREATE TABLE risk_told (
  response_id uuid NOT NULL,
  client_id uuid NOT NULL,
  member_id uuid NOT NULL REFERENCES access.member,
  at timestamptz NOT NULL CONSTRAINT at_is_a_time CHECK (isfinite(at)),
  PRIMARY KEY (response_id, member_id),
  FOREIGN KEY (response_id, client_id) REFERENCES risk_flag (response_id, client_id)
);
CREATE INDEX ON risk_told (client_id);

-- ---------------------------------------------------------------------------------------------
-- What the practice goes by: points from which on a change is reliable (their sources stand in leeward_core::measures), and who is told of
-- a flag beside the one who treats.

ALTER TABLE practice
  ADD COLUMN points_pcl5 smallint NOT NULL DEFAULT 15 CHECK (points_pcl5 IN (10, 15, 18)),
  ADD COLUMN points_anxiety5 smallint NOT NULL DEFAULT 4 CHECK (points_anxiety5 IN (4, 5)),
  ADD COLUMN told_too uuid REFERENCES access.member,
  ADD COLUMN flag_hours smallint NOT NULL DEFAULT 24 CHECK (flag_hours BETWEEN 1 AND 168);
GRANT UPDATE (points_pcl5, points_anxiety5, told_too, flag_hours) ON practice TO leeward_app;

-- ---------------------------------------------------------------------------------------------

ALTER TABLE response ENABLE ROW LEVEL SECURITY;
ALTER TABLE response FORCE ROW LEVEL SECURITY;
CREATE POLICY read ON response FOR SELECT USING (client_id IN (SELECT access.my_clients()) OR (SELECT access.has_role('lead')));
CREATE POLICY add ON response FOR INSERT WITH CHECK (client_id IN (SELECT access.my_clients()) AND entered_by = (SELECT access.me()));
CREATE POLICY upkeep ON response FOR SELECT USING ((SELECT access.is_owner()));
GRANT SELECT, INSERT (id, client_id, episode_id, number, measure, rules, occasion, answered_at, total, prorated, points, by_client, replaces,
  withdrawn, entered_by, kept_at) ON response TO leeward_app;

ALTER TABLE response_answers ENABLE ROW LEVEL SECURITY;
ALTER TABLE response_answers FORCE ROW LEVEL SECURITY;
CREATE POLICY read ON response_answers FOR SELECT USING (client_id IN (SELECT access.my_clients()));
CREATE POLICY add ON response_answers FOR INSERT WITH CHECK (client_id IN (SELECT access.my_clients()));
GRANT SELECT, INSERT (response_id, client_id, answers, event) ON response_answers TO leeward_app;

ALTER TABLE episode_measure ENABLE ROW LEVEL SECURITY;
ALTER TABLE episode_measure FORCE ROW LEVEL SECURITY;
CREATE POLICY read ON episode_measure FOR SELECT USING (client_id IN (SELECT access.my_clients()) OR (SELECT access.has_role('lead')));
CREATE POLICY upkeep ON episode_measure FOR ALL USING ((SELECT access.is_owner())) WITH CHECK ((SELECT access.is_owner()));
GRANT SELECT ON episode_measure TO leeward_app;

-- A lead reads neither flags nor what they say: see access.flags_past_time().
ALTER TABLE risk_flag ENABLE ROW LEVEL SECURITY;
ALTER TABLE risk_flag FORCE ROW LEVEL SECURITY;
CREATE POLICY read ON risk_flag FOR SELECT USING (client_id IN (SELECT access.my_clients()));
CREATE POLICY add ON risk_flag FOR INSERT WITH CHECK (client_id IN (SELECT access.my_clients()));
CREATE POLICY change ON risk_flag FOR UPDATE USING (client_id IN (SELECT access.my_clients()) AND done IS NULL)
  WITH CHECK (done_by = (SELECT access.me()));
CREATE POLICY upkeep ON risk_flag FOR SELECT USING ((SELECT access.is_owner()));
GRANT SELECT, INSERT (response_id, client_id, says, raised_at), UPDATE (done, done_at, done_by) ON risk_flag TO leeward_app;

-- Flags that are open and that are for the asker: of those whom they treat, and all for the member whom the practice named. That member learns
-- that there is one, of which record, and who treats them; not what it says.
CREATE FUNCTION access.flags_to_me() RETURNS TABLE (response_id uuid, client_id uuid, record integer, number integer, measure text, says text,
  raised_at timestamptz, mine boolean, treats text)
LANGUAGE plpgsql STABLE SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
DECLARE who uuid := access.me(); named boolean := who = (SELECT told_too FROM public.practice);
BEGIN
  IF who IS NULL THEN RETURN; END IF;
  RETURN QUERY
    SELECT f.response_id, f.client_id, c.number, CASE WHEN own THEN r.number END, CASE WHEN own THEN r.measure END, CASE WHEN own THEN f.says END,
      f.raised_at, own, (SELECT string_agg(m.name, ', ' ORDER BY m.name) FROM access.care_link l JOIN access.member m ON m.id = l.member_id
        WHERE l.client_id = f.client_id AND l.since <= access.now() AND (l.until IS NULL OR l.until > access.now()))
    FROM public.risk_flag f JOIN public.response r ON r.id = f.response_id JOIN public.client c ON c.id = f.client_id,
      LATERAL (SELECT f.client_id IN (SELECT access.my_clients())) o(own)
    WHERE f.done IS NULL AND (own OR named IS TRUE) AND f.client_id NOT IN (SELECT x.client_id FROM access.rehearsal x) ORDER BY f.raised_at;
END $$;
REVOKE ALL ON FUNCTION access.flags_to_me() FROM PUBLIC;
GRANT EXECUTE ON FUNCTION access.flags_to_me() TO leeward_app;

ALTER TABLE risk_told ENABLE ROW LEVEL SECURITY;
ALTER TABLE risk_told FORCE ROW LEVEL SECURITY;
CREATE POLICY read ON risk_told FOR SELECT USING (client_id IN (SELECT access.my_clients()) OR member_id = (SELECT access.me()));
CREATE POLICY add ON risk_told FOR INSERT WITH CHECK (
  member_id = (SELECT access.me()) AND response_id IN (SELECT f.response_id FROM access.flags_to_me() f));
CREATE POLICY upkeep ON risk_told FOR SELECT USING ((SELECT access.is_owner()));
GRANT SELECT, INSERT (response_id, client_id, member_id, at) ON risk_told TO leeward_app;

-- Flags that are open for longer than the practice wants, for its leads: whose record, how many whole days late, how many were told; never what it
-- says, nor a moment by which the form could be found that raised it.
CREATE FUNCTION access.flags_past_time() RETURNS TABLE (client_id uuid, days_late integer, told bigint)
LANGUAGE plpgsql STABLE SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
BEGIN
  IF access.has_role('lead') IS NOT TRUE THEN RETURN; END IF;
  RETURN QUERY SELECT f.client_id, extract(day FROM access.now() - f.raised_at - make_interval(hours => p.flag_hours))::integer, (SELECT count(*) FROM public.risk_told t WHERE t.response_id = f.response_id)
    FROM public.risk_flag f, public.practice p WHERE f.done IS NULL AND f.raised_at < access.now() - make_interval(hours => p.flag_hours);
END $$;
REVOKE ALL ON FUNCTION access.flags_past_time() FROM PUBLIC;
GRANT EXECUTE ON FUNCTION access.flags_past_time() TO leeward_app;

INSERT INTO access.audit_act VALUES
  ('member', 'measure.view', false), ('member', 'measure.enter', false), ('member', 'measure.withdraw', false), ('member', 'flag.close', false);
