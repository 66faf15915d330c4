-- Why: forms were entered by the clinician alone, from paper. Nobody knew when one was due, and a client between sessions had no way to answer:
-- a seat ends with its session.

-- ---------------------------------------------------------------------------------------------
-- The wording of a form, as the practice brought it. Not in use until somebody has looked at it question by question. What was in use stays:
-- answers refer to it.

CREATE TABLE wording (
  id uuid PRIMARY KEY,
  measure text NOT NULL CHECK (measure IN ('pcl5', 'itq', 'iesr', 'phq9', 'gad7', 'anxiety5', 'who5', 'des2')),
  body jsonb NOT NULL,                       -- leeward_core::measures::wording::Wording
  loaded_by uuid NOT NULL REFERENCES access.member,
  loaded_at timestamptz NOT NULL CONSTRAINT loaded_at_is_a_time CHECK (isfinite(loaded_at)),
  checked_by uuid REFERENCES access.member,
  checked_at timestamptz CONSTRAINT checked_at_is_a_time CHECK (isfinite(checked_at)),
  ended_at timestamptz CONSTRAINT ended_at_is_a_time CHECK (isfinite(ended_at)),
  CHECK ((checked_by IS NULL) = (checked_at IS NULL))
);
CREATE UNIQUE INDEX one_wording_in_use ON wording (measure) WHERE checked_at IS NOT NULL AND ended_at IS NULL;
CREATE UNIQUE INDEX one_wording_to_check ON wording (measure) WHERE checked_at IS NULL AND ended_at IS NULL;

-- ---------------------------------------------------------------------------------------------
-- What a client is to be asked, and when: the forms at the beginning and at the end, and every so many sessions. When it is due next is
-- folded from the record in the transaction that changes it; nothing else writes it.

CREATE TABLE schedule (
  client_id uuid PRIMARY KEY REFERENCES client,
  measures text[] NOT NULL CHECK (cardinality(measures) BETWEEN 0 AND 6),
  every smallint NOT NULL CHECK (every BETWEEN 1 AND 20),          -- sessions attended
  follow_up_weeks smallint CHECK (follow_up_weeks BETWEEN 2 AND 104), -- after the end; null: none
  set_at timestamptz NOT NULL CONSTRAINT set_at_is_a_time CHECK (isfinite(set_at)),
  version integer NOT NULL DEFAULT 1 CHECK (version > 0),
  due_for text CHECK (due_for IN ('intake', 'regular', 'end', 'follow_up')),
  due_on date CONSTRAINT due_on_is_a_day CHECK (isfinite(due_on)),
  CHECK ((due_for IS NULL) = (due_on IS NULL))
);
CREATE INDEX ON schedule (due_on) WHERE due_on IS NOT NULL;

-- ---------------------------------------------------------------------------------------------
-- One asking: which forms, from when until when, and what became of it. One at a time is open for a client.

CREATE TABLE asking (
  id uuid PRIMARY KEY,
  client_id uuid NOT NULL REFERENCES client,
  episode_id uuid NOT NULL,
  number integer NOT NULL CHECK (number > 0),   -- within the client
  occasion text NOT NULL CHECK (occasion IN ('intake', 'regular', 'end', 'follow_up')),
  measures text[] NOT NULL CHECK (cardinality(measures) BETWEEN 1 AND 6),
  asked_by uuid NOT NULL REFERENCES access.member,
  asked_at timestamptz NOT NULL CONSTRAINT asked_at_is_a_time CHECK (isfinite(asked_at)),
  from_at timestamptz NOT NULL CONSTRAINT from_at_is_a_time CHECK (isfinite(from_at)),
  due_on date NOT NULL CONSTRAINT due_on_is_a_day CHECK (isfinite(due_on)),
  until_at timestamptz NOT NULL CONSTRAINT until_at_is_a_time CHECK (isfinite(until_at)),
  links integer NOT NULL DEFAULT 0 CHECK (links >= 0),   -- how many links were made; the last one holds
  closed_as text CHECK (closed_as IN ('answered', 'declined', 'withdrawn')),
  closed_at timestamptz CONSTRAINT closed_at_is_a_time CHECK (isfinite(closed_at)),
  CHECK ((closed_as IS NULL) = (closed_at IS NULL)),
  CHECK (until_at > from_at),
  UNIQUE (client_id, number),
  UNIQUE (id, client_id),
  FOREIGN KEY (episode_id, client_id) REFERENCES episode (id, client_id)
);
CREATE UNIQUE INDEX one_open_asking ON asking (client_id) WHERE closed_at IS NULL;
CREATE INDEX ON asking (due_on) WHERE closed_at IS NULL;

-- Words stand apart, where a lead does not read.
CREATE TABLE asking_words (
  asking_id uuid PRIMARY KEY,
  client_id uuid NOT NULL,
  event bytea NOT NULL,                         -- what a form about one event asks about
  FOREIGN KEY (asking_id, client_id) REFERENCES asking (id, client_id)
);
CREATE INDEX ON asking_words (client_id);

ALTER TABLE response ADD COLUMN asking_id uuid, ADD COLUMN wording_id uuid REFERENCES wording,
  ADD FOREIGN KEY (asking_id, client_id) REFERENCES asking (id, client_id);
CREATE INDEX ON response (asking_id) WHERE asking_id IS NOT NULL;

-- What is filled in so far. Handed in, it is gone.
CREATE TABLE response_draft (
  id uuid PRIMARY KEY,
  asking_id uuid NOT NULL,
  client_id uuid NOT NULL,
  measure text NOT NULL,
  answers bytea NOT NULL,
  version integer NOT NULL CHECK (version > 0),
  kept_at timestamptz NOT NULL CONSTRAINT kept_at_is_a_time CHECK (isfinite(kept_at)),
  UNIQUE (asking_id, measure),
  FOREIGN KEY (asking_id, client_id) REFERENCES asking (id, client_id)
);
CREATE INDEX ON response_draft (client_id);

-- ---------------------------------------------------------------------------------------------
-- A client between sessions: an errand. One purpose, one client, from a time until a time. It has no right on any table: it reads and writes by
-- the functions below alone, and by these only what its purpose needs: its asking, the wording of its forms, its own draft, the client's wrapped
-- key (without it nothing could be sealed), and what the practice says to everybody. It writes a draft, its answers, and that it declines.

CREATE TABLE access.errand (
  id uuid PRIMARY KEY,
  token_hash bytea NOT NULL UNIQUE,
  client_id uuid NOT NULL,
  purpose text NOT NULL CHECK (purpose IN ('forms')),
  asking_id uuid NOT NULL REFERENCES public.asking,
  made_by uuid NOT NULL REFERENCES access.member,
  made_at timestamptz NOT NULL CONSTRAINT made_at_is_a_time CHECK (isfinite(made_at)),
  revoked_at timestamptz CONSTRAINT revoked_at_is_a_time CHECK (isfinite(revoked_at))
);
CREATE UNIQUE INDEX one_errand_that_holds ON access.errand (asking_id) WHERE revoked_at IS NULL;

-- The asking of the errand that asks; null: its link has ended, was made anew, or its record is archived.
CREATE FUNCTION access.my_errand() RETURNS uuid
LANGUAGE plpgsql STABLE SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
BEGIN
  IF access.kind() IS DISTINCT FROM 'errand' THEN RETURN NULL; END IF;
  RETURN (SELECT a.id FROM access.errand e JOIN public.asking a ON a.id = e.asking_id JOIN public.client c ON c.id = a.client_id
    WHERE e.token_hash = access.token_hash() AND e.revoked_at IS NULL AND a.until_at > access.now()
      AND a.closed_as IS DISTINCT FROM 'withdrawn' AND c.archived_at IS NULL);
END $$;

-- A new link for an open asking; the one before ends with it.
CREATE FUNCTION access.mint_errand(errand_id uuid, hash bytea, which uuid) RETURNS void
LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
DECLARE of_client uuid;
BEGIN
  SELECT client_id INTO of_client FROM public.asking WHERE id = which AND closed_at IS NULL AND client_id IN (SELECT access.my_clients());
  IF of_client IS NULL THEN
    RAISE EXCEPTION 'not allowed to make a link' USING ERRCODE = 'insufficient_privilege';
  END IF;
  UPDATE access.errand SET revoked_at = access.now() WHERE asking_id = which AND revoked_at IS NULL;
  INSERT INTO access.errand (id, token_hash, client_id, purpose, asking_id, made_by, made_at)
  VALUES (errand_id, hash, of_client, 'forms', which, access.me(), access.now());
END $$;

-- What the errand is for.
CREATE FUNCTION access.errand_asking() RETURNS TABLE (asking_id uuid, client_id uuid, occasion text, measures text[], from_at timestamptz,
  event bytea, closed_as text, wrapped bytea)
LANGUAGE plpgsql STABLE SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
DECLARE mine uuid := access.my_errand();
BEGIN
  RETURN QUERY SELECT a.id, a.client_id, a.occasion, a.measures, a.from_at, w.event, a.closed_as, k.wrapped
    FROM public.asking a JOIN public.asking_words w ON w.asking_id = a.id JOIN public.client_key k ON k.client_id = a.client_id WHERE a.id = mine;
END $$;

-- Its forms: the wording in use, whether it was handed in, and what is filled in so far.
CREATE FUNCTION access.errand_forms() RETURNS TABLE (measure text, wording_id uuid, body jsonb, handed_in boolean, draft_id uuid, draft bytea, draft_version integer)
LANGUAGE plpgsql STABLE SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
DECLARE mine uuid := access.my_errand();
BEGIN
  RETURN QUERY SELECT m.measure, w.id, w.body,
      EXISTS (SELECT FROM public.response r WHERE r.asking_id = mine AND r.measure = m.measure), d.id, d.answers, d.version
    FROM public.asking a, LATERAL unnest(a.measures) WITH ORDINALITY m(measure, place)
    LEFT JOIN public.wording w ON w.measure = m.measure AND w.checked_at IS NOT NULL AND w.ended_at IS NULL
    LEFT JOIN public.response_draft d ON d.asking_id = mine AND d.measure = m.measure
    WHERE a.id = mine ORDER BY m.place;
END $$;

-- Whether a form of this errand may be written now: the asking is open, its time has come, and the form was not handed in. Locks the asking.
CREATE FUNCTION access.errand_writes(of_measure text) RETURNS public.asking
LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
DECLARE mine public.asking; which uuid := access.my_errand();
BEGIN
  IF which IS NULL THEN RAISE EXCEPTION 'no errand' USING ERRCODE = 'insufficient_privilege'; END IF;
  PERFORM FROM public.client c JOIN public.asking a ON a.client_id = c.id WHERE a.id = which FOR UPDATE OF c;
  SELECT a.* INTO mine FROM public.asking a WHERE a.id = which AND a.closed_at IS NULL AND a.from_at <= access.now() AND of_measure = ANY (a.measures)
    AND NOT EXISTS (SELECT FROM public.response r WHERE r.asking_id = which AND r.measure = of_measure) FOR UPDATE;
  RETURN mine;
END $$;

-- Keeps what is filled in so far. Returns the version that it has now; null: another device has kept more since, or it was handed in.
CREATE FUNCTION access.keep_draft(draft_id uuid, of_measure text, sealed bytea, was integer) RETURNS integer
LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
DECLARE mine public.asking := access.errand_writes(of_measure); kept integer;
BEGIN
  IF mine.id IS NULL THEN RETURN NULL; END IF;
  IF was = 0 THEN
    INSERT INTO public.response_draft (id, asking_id, client_id, measure, answers, version, kept_at)
    VALUES (draft_id, mine.id, mine.client_id, of_measure, sealed, 1, access.now()) ON CONFLICT DO NOTHING RETURNING version INTO kept;
  ELSE
    UPDATE public.response_draft SET answers = sealed, version = version + 1, kept_at = access.now()
    WHERE id = draft_id AND asking_id = mine.id AND measure = of_measure AND version = was RETURNING version INTO kept;
  END IF;
  RETURN kept;
END $$;

-- Hands a form in: the answers, the flag that they raise, and, with the last form, the end of the asking. False: it was handed in already, or
-- its time is over.
CREATE FUNCTION access.hand_in(response uuid, of_measure text, wording uuid, by_rules smallint, comes_to double precision, filled_up boolean,
  judged_by smallint, sealed bytea, about bytea, says text) RETURNS boolean
LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
DECLARE mine public.asking := access.errand_writes(of_measure);
BEGIN
  IF mine.id IS NULL THEN RETURN false; END IF;
  INSERT INTO public.response (id, client_id, episode_id, number, measure, rules, occasion, answered_at, total, prorated, points, by_client, kept_at,
    asking_id, wording_id)
  SELECT hand_in.response, mine.client_id, mine.episode_id, coalesce(max(r.number), 0) + 1, of_measure, by_rules, mine.occasion, access.now(), comes_to,
    filled_up, judged_by, true, access.now(), mine.id, hand_in.wording FROM public.response r WHERE r.client_id = mine.client_id;
  INSERT INTO public.response_answers (response_id, client_id, answers, event) VALUES (hand_in.response, mine.client_id, sealed, about);
  IF says IS NOT NULL THEN
    INSERT INTO public.risk_flag (response_id, client_id, says, raised_at) VALUES (hand_in.response, mine.client_id, hand_in.says, access.now());
  END IF;
  DELETE FROM public.response_draft d WHERE d.asking_id = mine.id AND d.measure = of_measure;
  UPDATE public.asking a SET closed_as = 'answered', closed_at = access.now() WHERE a.id = mine.id
    AND (SELECT count(DISTINCT r.measure) FROM public.response r WHERE r.asking_id = mine.id AND r.measure = ANY (a.measures)) = cardinality(a.measures);
  RETURN true;
END $$;

-- The client would rather not. What was handed in stays; what was begun is let go of. False: it is closed already.
CREATE FUNCTION access.decline() RETURNS boolean
LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
DECLARE which uuid := access.my_errand();
BEGIN
  IF which IS NULL THEN RAISE EXCEPTION 'no errand' USING ERRCODE = 'insufficient_privilege'; END IF;
  UPDATE public.asking SET closed_as = 'declined', closed_at = access.now() WHERE id = which AND closed_at IS NULL;
  IF NOT FOUND THEN RETURN false; END IF;
  DELETE FROM public.response_draft WHERE asking_id = which;
  RETURN true;
END $$;

-- What was begun is let go of with the asking.
CREATE FUNCTION access.let_go_of_drafts() RETURNS trigger LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
BEGIN
  DELETE FROM public.response_draft WHERE asking_id = NEW.id;
  RETURN NULL;
END $$;
CREATE TRIGGER let_go_of_drafts AFTER UPDATE OF closed_at ON asking FOR EACH ROW WHEN (NEW.closed_at IS NOT NULL)
  EXECUTE FUNCTION access.let_go_of_drafts();

-- ---------------------------------------------------------------------------------------------
-- When a client is to be asked next. Dealt with is what was answered and what was declined. Days are those of the practice. How far a form
-- looks back is known to leeward_core::measures alone: who asks is held to it there.

CREATE VIEW schedule_fold WITH (security_invoker = true) AS
SELECT s.client_id, d.due_for, CASE WHEN d.due_for IS NOT NULL THEN (d.due_at AT TIME ZONE (SELECT zone FROM public.practice))::date END AS due_on
FROM schedule s
LEFT JOIN LATERAL (SELECT e.* FROM episode e WHERE e.client_id = s.client_id ORDER BY e.number DESC LIMIT 1) e ON true
LEFT JOIN LATERAL (
  SELECT max(x.at) AS last_at, bool_or(x.occasion = 'end') AS at_end, bool_or(x.occasion = 'follow_up') AS after_end FROM (
    SELECT r.answered_at AS at, r.occasion FROM standing_response r WHERE r.episode_id = e.id AND r.measure = ANY (s.measures)
    UNION ALL SELECT a.closed_at, a.occasion FROM asking a WHERE a.episode_id = e.id AND a.closed_as = 'declined') x) h ON true
LEFT JOIN LATERAL (
  SELECT n.opened_at FROM attended n WHERE n.episode_id = e.id AND n.opened_at > h.last_at ORDER BY n.opened_at OFFSET s.every - 1 LIMIT 1) n ON true
CROSS JOIN LATERAL (
  SELECT CASE
      WHEN cardinality(s.measures) = 0 OR e.reason = 'died' THEN NULL
      WHEN e.ended_at IS NULL AND h.last_at IS NULL THEN 'intake'
      WHEN e.ended_at IS NULL AND n.opened_at IS NOT NULL THEN 'regular'
      WHEN e.ended_at IS NULL THEN NULL
      WHEN h.at_end IS NOT TRUE THEN 'end'
      WHEN h.after_end IS NOT TRUE AND s.follow_up_weeks IS NOT NULL THEN 'follow_up' END AS due_for) f
CROSS JOIN LATERAL (
  SELECT f.due_for, CASE f.due_for WHEN 'intake' THEN greatest(coalesce(e.begun_at, s.set_at), s.set_at) WHEN 'regular' THEN n.opened_at
    WHEN 'end' THEN e.ended_at WHEN 'follow_up' THEN e.ended_at + make_interval(weeks => s.follow_up_weeks) END AS due_at) d;
GRANT SELECT ON schedule_fold TO leeward_app;

CREATE FUNCTION access.fold_schedule() RETURNS trigger LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
BEGIN
  UPDATE public.schedule s SET due_for = f.due_for, due_on = f.due_on FROM public.schedule_fold f
  WHERE s.client_id = NEW.client_id AND f.client_id = s.client_id AND (s.due_for, s.due_on) IS DISTINCT FROM (f.due_for, f.due_on);
  RETURN NULL;
END $$;
CREATE TRIGGER fold_schedule AFTER INSERT OR UPDATE OF measures, every, follow_up_weeks, version ON schedule
  FOR EACH ROW EXECUTE FUNCTION access.fold_schedule();
CREATE TRIGGER fold_schedule AFTER INSERT ON response FOR EACH ROW EXECUTE FUNCTION access.fold_schedule();
CREATE TRIGGER fold_schedule AFTER UPDATE OF closed_as ON asking FOR EACH ROW EXECUTE FUNCTION access.fold_schedule();
CREATE TRIGGER fold_schedule AFTER INSERT OR UPDATE OF ended_at, reason, begun_at ON episode FOR EACH ROW EXECUTE FUNCTION access.fold_schedule();
CREATE TRIGGER zz_fold_schedule AFTER INSERT OR UPDATE OF admitted_at, ended_at, closing ON session FOR EACH ROW EXECUTE FUNCTION access.fold_schedule();

-- ---------------------------------------------------------------------------------------------
-- What the practice goes by: how many questions an asking may have, and when somebody reads what comes in.

ALTER TABLE practice
  ADD COLUMN items_at_once smallint NOT NULL DEFAULT 36 CHECK (items_at_once BETWEEN 5 AND 80),
  ADD COLUMN reading_hours text NOT NULL DEFAULT '' CHECK (length(reading_hours) <= 300);
GRANT UPDATE (items_at_once, reading_hours) ON practice TO leeward_app;

-- ---------------------------------------------------------------------------------------------

ALTER TABLE wording ENABLE ROW LEVEL SECURITY;
ALTER TABLE wording FORCE ROW LEVEL SECURITY;
CREATE POLICY read ON wording FOR SELECT USING ((SELECT access.me()) IS NOT NULL);
CREATE POLICY add ON wording FOR INSERT WITH CHECK (
  ((SELECT access.has_role('administrator')) OR (SELECT access.has_role('lead'))) AND loaded_by = (SELECT access.me()) AND checked_by IS NULL AND ended_at IS NULL);
CREATE POLICY change ON wording FOR UPDATE USING (ended_at IS NULL AND ((SELECT access.has_role('administrator')) OR (SELECT access.has_role('lead'))))
  WITH CHECK (checked_by IS NULL OR ended_at IS NOT NULL OR checked_by = (SELECT access.me()));
CREATE POLICY upkeep ON wording FOR SELECT USING ((SELECT access.is_owner()));
GRANT SELECT, INSERT (id, measure, body, loaded_by, loaded_at), UPDATE (checked_by, checked_at, ended_at) ON wording TO leeward_app;

ALTER TABLE schedule ENABLE ROW LEVEL SECURITY;
ALTER TABLE schedule FORCE ROW LEVEL SECURITY;
CREATE POLICY read ON schedule FOR SELECT USING (client_id IN (SELECT access.my_clients()) OR (SELECT access.has_role('lead')));
CREATE POLICY add ON schedule FOR INSERT WITH CHECK (client_id IN (SELECT access.my_clients()));
CREATE POLICY change ON schedule FOR UPDATE USING (client_id IN (SELECT access.my_clients()));
CREATE POLICY upkeep ON schedule FOR SELECT USING ((SELECT access.is_owner()));
CREATE POLICY upkeep_fold ON schedule FOR UPDATE USING ((SELECT access.is_owner()));
GRANT SELECT, INSERT (client_id, measures, every, follow_up_weeks, set_at), UPDATE (measures, every, follow_up_weeks, set_at, version)
  ON schedule TO leeward_app;

ALTER TABLE asking ENABLE ROW LEVEL SECURITY;
ALTER TABLE asking FORCE ROW LEVEL SECURITY;
CREATE POLICY read ON asking FOR SELECT USING (client_id IN (SELECT access.my_clients()) OR (SELECT access.has_role('lead')));
CREATE POLICY add ON asking FOR INSERT WITH CHECK (client_id IN (SELECT access.my_clients()) AND asked_by = (SELECT access.me()));
CREATE POLICY change ON asking FOR UPDATE USING (client_id IN (SELECT access.my_clients()) AND closed_at IS NULL)
  WITH CHECK (closed_as IS NULL OR closed_as <> 'answered');
CREATE POLICY upkeep ON asking FOR ALL USING ((SELECT access.is_owner())) WITH CHECK ((SELECT access.is_owner()));
GRANT SELECT, INSERT (id, client_id, episode_id, number, occasion, measures, asked_by, asked_at, from_at, due_on, until_at),
  UPDATE (links, closed_as, closed_at) ON asking TO leeward_app;

ALTER TABLE asking_words ENABLE ROW LEVEL SECURITY;
ALTER TABLE asking_words FORCE ROW LEVEL SECURITY;
CREATE POLICY read ON asking_words FOR SELECT USING (client_id IN (SELECT access.my_clients()));
CREATE POLICY add ON asking_words FOR INSERT WITH CHECK (client_id IN (SELECT access.my_clients()));
CREATE POLICY upkeep ON asking_words FOR SELECT USING ((SELECT access.is_owner()));
GRANT SELECT, INSERT (asking_id, client_id, event) ON asking_words TO leeward_app;

-- Nobody reads a draft but whoever writes it, by the functions above.
ALTER TABLE response_draft ENABLE ROW LEVEL SECURITY;
ALTER TABLE response_draft FORCE ROW LEVEL SECURITY;
CREATE POLICY upkeep ON response_draft FOR ALL USING ((SELECT access.is_owner())) WITH CHECK ((SELECT access.is_owner()));

GRANT SELECT ON response_draft TO leeward_app;

CREATE POLICY errand_locks ON client FOR UPDATE USING ((SELECT access.is_owner()));
CREATE POLICY errand_adds ON response FOR INSERT WITH CHECK ((SELECT access.is_owner()) AND by_client AND asking_id IS NOT NULL);
CREATE POLICY errand_adds ON response_answers FOR INSERT WITH CHECK ((SELECT access.is_owner()));
CREATE POLICY errand_adds ON risk_flag FOR INSERT WITH CHECK ((SELECT access.is_owner()));

REVOKE ALL ON FUNCTION access.my_errand(), access.mint_errand(uuid, bytea, uuid), access.errand_asking(), access.errand_forms(),
  access.errand_writes(text), access.keep_draft(uuid, text, bytea, integer),
  access.hand_in(uuid, text, uuid, smallint, double precision, boolean, smallint, bytea, bytea, text), access.decline(), access.fold_schedule(),
  access.let_go_of_drafts() FROM PUBLIC;
GRANT EXECUTE ON FUNCTION access.my_errand(), access.mint_errand(uuid, bytea, uuid), access.errand_asking(), access.errand_forms(),
  access.keep_draft(uuid, text, bytea, integer),
  access.hand_in(uuid, text, uuid, smallint, double precision, boolean, smallint, bytea, bytea, text), access.decline() TO leeward_app;

-- ---------------------------------------------------------------------------------------------
-- The trail knows errands.

ALTER TABLE access.audit_act DROP CONSTRAINT audit_act_kind_check,
  ADD CONSTRAINT audit_act_kind_check CHECK (kind IN ('visitor', 'member', 'seat', 'owner', 'errand'));
INSERT INTO access.audit_act VALUES
  ('member', 'wording.view', false), ('member', 'wording.load', false), ('member', 'wording.use', false),
  ('member', 'schedule.view', false), ('member', 'schedule.change', false),
  ('member', 'asking.view', false), ('member', 'asking.make', false), ('member', 'asking.link', false), ('member', 'asking.withdraw', false),
  ('errand', 'errand.open', false), ('errand', 'errand.hand_in', false), ('errand', 'errand.decline', false);

CREATE OR REPLACE FUNCTION access.audit(act text, client uuid, object uuid) RETURNS void
LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
DECLARE what text := access.kind(); who uuid; holds boolean; last_act boolean;
BEGIN
  SELECT a.may_be_last INTO last_act FROM access.audit_act a WHERE a.kind = what AND a.act = $1;
  IF NOT FOUND THEN
    RAISE EXCEPTION '"%" is no act of a %', $1, what USING ERRCODE = 'insufficient_privilege';
  END IF;
  CASE what
    WHEN 'member' THEN
      SELECT s.member_id INTO who FROM access.signin s WHERE s.token_hash = access.token_hash();
      holds := who IS NOT NULL AND (last_act OR access.my_signin() IS NOT NULL);
    WHEN 'seat' THEN
      holds := EXISTS (SELECT FROM access.seat s WHERE s.token_hash = access.token_hash() AND (last_act OR s.closed_at IS NULL));
    WHEN 'errand' THEN holds := access.my_errand() IS NOT NULL;
    WHEN 'owner' THEN holds := session_user = current_user;
    ELSE holds := what = 'visitor';
  END CASE;
  IF holds IS NOT TRUE THEN
    RAISE EXCEPTION 'nobody who may do "%"', $1 USING ERRCODE = 'insufficient_privilege';
  END IF;
  PERFORM access.keep_act(what, who, $1, client, object);
END $$;
