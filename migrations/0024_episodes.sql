-- Why: nobody could say who began, who is in treatment, who ended and why: there were sessions, and no course of treatment that they belong
-- to. Nothing is counted as an outcome without one.

-- ---------------------------------------------------------------------------------------------
-- A course of treatment. It begins with its first session, or by hand before that; it ends for a reason that a person gives. What its
-- sessions make of it (started_at to sessions) is kept here in their own transactions, for lists; nothing else writes it.

CREATE TABLE episode (
  id uuid PRIMARY KEY,
  client_id uuid NOT NULL REFERENCES client,
  number integer NOT NULL CHECK (number > 0),   -- within the client
  begun_at timestamptz NOT NULL CONSTRAINT begun_at_is_a_time CHECK (isfinite(begun_at)),
  started_at timestamptz CONSTRAINT started_at_is_a_time CHECK (isfinite(started_at)),                       -- its first session attended; null: none was
  reprocessed_at timestamptz CONSTRAINT reprocessed_at_is_a_time CHECK (isfinite(reprocessed_at)),                   -- its first set of reprocessing; null: there was none
  last_at timestamptz CONSTRAINT last_at_is_a_time CHECK (isfinite(last_at)),                          -- its last session attended
  sessions integer NOT NULL DEFAULT 0 CHECK (sessions >= 0),   -- attended
  ended_at timestamptz CONSTRAINT ended_at_is_a_time CHECK (isfinite(ended_at)),
  reason text CHECK (reason IN ('as_agreed', 'early_by_agreement', 'client_ended', 'referred_on', 'crisis', 'moved', 'clinician_left', 'died', 'unknown')),
  judged_by uuid REFERENCES access.member,
  version integer NOT NULL DEFAULT 1 CHECK (version > 0),
  CHECK ((ended_at IS NULL) = (reason IS NULL) AND (ended_at IS NULL) = (judged_by IS NULL)),
  CHECK (ended_at >= begun_at),
  UNIQUE (client_id, number),
  UNIQUE (id, client_id)
);
CREATE UNIQUE INDEX one_open_episode ON episode (client_id) WHERE ended_at IS NULL;
CREATE INDEX ON episode (started_at);
CREATE INDEX ON episode (ended_at) WHERE ended_at IS NOT NULL;

ALTER TABLE session ADD COLUMN episode_id uuid,
  ADD FOREIGN KEY (episode_id, client_id) REFERENCES episode (id, client_id);
CREATE INDEX ON session (episode_id);

-- How long nobody need be seen before an end is proposed, weeks. A practitioner's judgement.
ALTER TABLE practice ADD COLUMN weeks_without smallint NOT NULL DEFAULT 8 CHECK (weeks_without BETWEEN 2 AND 52);
GRANT UPDATE (weeks_without) ON practice TO leeward_app;

-- ---------------------------------------------------------------------------------------------
-- What its sessions make of an episode. Attended: the client was let in, or it was closed as one that took place (in the same room, or
-- not measured).

CREATE VIEW attended WITH (security_invoker = true) AS
SELECT id, client_id, episode_id, opened_at FROM session
WHERE episode_id IS NOT NULL AND took_place AND (admitted_at IS NOT NULL OR ended_at IS NOT NULL);

-- The rows as they should be; the command that rebuilds compares them with those that are kept.
CREATE VIEW episode_fold WITH (security_invoker = true) AS
SELECT e.id, e.client_id, s.started_at, x.reprocessed_at, s.last_at, coalesce(s.sessions, 0)::integer AS sessions
FROM episode e
LEFT JOIN (SELECT episode_id, min(opened_at) AS started_at, max(opened_at) AS last_at, count(*) AS sessions FROM attended GROUP BY episode_id) s
  ON s.episode_id = e.id
LEFT JOIN (
  SELECT s.episode_id, min(x.recorded_at) AS reprocessed_at FROM stimulus_set x JOIN session s ON s.id = x.session_id
  WHERE x.target_id IS NOT NULL AND coalesce(x.plan->>'purpose', 'processing') = 'processing' GROUP BY s.episode_id) x ON x.episode_id = e.id;
GRANT SELECT ON attended, episode_fold TO leeward_app;

-- A session belongs to the episode that is open, and opens one where none is. Rehearsals are no treatment.
CREATE FUNCTION access.session_in_episode() RETURNS trigger LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
BEGIN
  NEW.episode_id := NULL;
  IF EXISTS (SELECT FROM access.rehearsal WHERE client_id = NEW.client_id) THEN RETURN NEW; END IF;
  SELECT id INTO NEW.episode_id FROM public.episode WHERE client_id = NEW.client_id AND ended_at IS NULL;
  IF NEW.episode_id IS NULL THEN
    INSERT INTO public.episode (id, client_id, number, begun_at)
    SELECT gen_random_uuid(), NEW.client_id, coalesce(max(number), 0) + 1, NEW.opened_at FROM public.episode WHERE client_id = NEW.client_id
    RETURNING id INTO NEW.episode_id;
  END IF;
  RETURN NEW;
END $$;
REVOKE ALL ON FUNCTION access.session_in_episode() FROM PUBLIC;

CREATE FUNCTION access.fold_sessions() RETURNS trigger LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
BEGIN
  UPDATE public.episode e SET started_at = f.started_at, last_at = f.last_at, sessions = f.sessions
  FROM (SELECT min(opened_at) AS started_at, max(opened_at) AS last_at, count(*) AS sessions FROM public.attended WHERE episode_id = NEW.episode_id) f
  WHERE e.id = NEW.episode_id AND (e.started_at, e.last_at, e.sessions) IS DISTINCT FROM (f.started_at, f.last_at, f.sessions);
  RETURN NULL;
END $$;
REVOKE ALL ON FUNCTION access.fold_sessions() FROM PUBLIC;

CREATE FUNCTION access.fold_first_set() RETURNS trigger LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
BEGIN
  UPDATE public.episode e SET reprocessed_at = NEW.recorded_at FROM public.session s
  WHERE s.id = NEW.session_id AND e.id = s.episode_id AND (e.reprocessed_at IS NULL OR e.reprocessed_at > NEW.recorded_at);
  RETURN NULL;
END $$;
REVOKE ALL ON FUNCTION access.fold_first_set() FROM PUBLIC;

-- ---------------------------------------------------------------------------------------------
-- What there is already: one episode for each client who had a session, open, since nobody has said that it ended. The owner is bound by
-- the policies too: lifted for this alone.

ALTER TABLE session NO FORCE ROW LEVEL SECURITY;
ALTER TABLE stimulus_set NO FORCE ROW LEVEL SECURITY;
ALTER TABLE client NO FORCE ROW LEVEL SECURITY;
INSERT INTO episode (id, client_id, number, begun_at)
SELECT gen_random_uuid(), client_id, 1, min(opened_at) FROM session
WHERE client_id NOT IN (SELECT access.rehearsals()) GROUP BY client_id;
UPDATE session s SET episode_id = e.id FROM episode e WHERE e.client_id = s.client_id;
UPDATE episode e SET started_at = f.started_at, reprocessed_at = f.reprocessed_at, last_at = f.last_at, sessions = f.sessions
FROM episode_fold f WHERE f.id = e.id;
ALTER TABLE session FORCE ROW LEVEL SECURITY;
ALTER TABLE stimulus_set FORCE ROW LEVEL SECURITY;
ALTER TABLE client FORCE ROW LEVEL SECURITY;

CREATE TRIGGER in_episode BEFORE INSERT ON session FOR EACH ROW EXECUTE FUNCTION access.session_in_episode();
CREATE TRIGGER fold_sessions AFTER INSERT OR UPDATE OF admitted_at, ended_at, closing ON session
  FOR EACH ROW WHEN (NEW.episode_id IS NOT NULL) EXECUTE FUNCTION access.fold_sessions();
CREATE TRIGGER fold_first_set AFTER INSERT ON stimulus_set
  FOR EACH ROW WHEN (NEW.target_id IS NOT NULL AND coalesce(NEW.plan->>'purpose', 'processing') = 'processing')
  EXECUTE FUNCTION access.fold_first_set();

ALTER TABLE episode ENABLE ROW LEVEL SECURITY;
ALTER TABLE episode FORCE ROW LEVEL SECURITY;
CREATE POLICY read ON episode FOR SELECT USING (client_id IN (SELECT access.my_clients()) OR (SELECT access.has_role('lead')));
CREATE POLICY add ON episode FOR INSERT WITH CHECK (client_id IN (SELECT access.my_clients()));
CREATE POLICY change ON episode FOR UPDATE USING (client_id IN (SELECT access.my_clients()))
  WITH CHECK (judged_by IS NULL OR judged_by = (SELECT access.me()));
-- The functions above run as the owner, and so does the command that rebuilds.
CREATE POLICY upkeep ON episode FOR SELECT USING ((SELECT access.is_owner()));
CREATE POLICY upkeep_add ON episode FOR INSERT WITH CHECK ((SELECT access.is_owner()));
CREATE POLICY upkeep_fold ON episode FOR UPDATE USING ((SELECT access.is_owner()));
GRANT SELECT, INSERT (id, client_id, number, begun_at), UPDATE (ended_at, reason, judged_by, version) ON episode TO leeward_app;

-- It does not end while one of its sessions is open, and goes on again only while none came after it.
CREATE FUNCTION access.keep_episode() RETURNS trigger LANGUAGE plpgsql SET search_path = pg_catalog, pg_temp AS $$
BEGIN
  IF OLD.ended_at IS NOT NULL AND NEW.ended_at IS NULL
      AND EXISTS (SELECT FROM public.episode later WHERE later.client_id = OLD.client_id AND later.number > OLD.number)
    OR NEW.ended_at IS NOT NULL AND OLD.ended_at IS NULL
      AND EXISTS (SELECT FROM public.session s WHERE s.episode_id = OLD.id AND s.ended_at IS NULL) THEN
    RAISE EXCEPTION 'not allowed to change this of an episode' USING ERRCODE = 'insufficient_privilege';
  END IF;
  RETURN NEW;
END $$;
REVOKE ALL ON FUNCTION access.keep_episode() FROM PUBLIC;
CREATE TRIGGER keep_episode BEFORE UPDATE OF ended_at ON episode FOR EACH ROW EXECUTE FUNCTION access.keep_episode();

INSERT INTO access.audit_act VALUES ('member', 'episode.view', false), ('member', 'episode.begin', false), ('member', 'episode.end', false);
