-- Why: a flag was on screen at once, and nobody who was not signed in knew of it; a treatment that was begun by mistake could only end as one
-- that was; and an answer that was lost on the way looked to a client as if another device had gone on.

-- ---------------------------------------------------------------------------------------------
-- Where a member wants to be told by mail that something waits. Their own affair: nobody else reads or changes it.

CREATE TABLE mail_address (
  member_id uuid PRIMARY KEY REFERENCES access.member,
  address text NOT NULL CHECK (address = '' OR length(address) BETWEEN 3 AND 254),  -- empty: not by mail any more
  changed_at timestamptz NOT NULL CONSTRAINT changed_at_is_a_time CHECK (isfinite(changed_at))
);
ALTER TABLE mail_address ENABLE ROW LEVEL SECURITY;
ALTER TABLE mail_address FORCE ROW LEVEL SECURITY;
CREATE POLICY own ON mail_address FOR ALL USING (member_id = (SELECT access.me())) WITH CHECK (member_id = (SELECT access.me()));
CREATE POLICY upkeep ON mail_address FOR SELECT USING ((SELECT access.is_owner()));
GRANT SELECT, INSERT (member_id, address, changed_at), UPDATE (address, changed_at) ON mail_address TO leeward_app;

-- Who was told of a flag by mail, and when it was handed to the server of mail.
CREATE TABLE risk_mail (
  response_id uuid NOT NULL,
  client_id uuid NOT NULL,
  member_id uuid NOT NULL REFERENCES access.member,
  at timestamptz NOT NULL CONSTRAINT at_is_a_time CHECK (isfinite(at)),
  PRIMARY KEY (response_id, member_id),
  FOREIGN KEY (response_id, client_id) REFERENCES risk_flag (response_id, client_id)
);
CREATE INDEX ON risk_mail (client_id);
ALTER TABLE risk_mail ENABLE ROW LEVEL SECURITY;
ALTER TABLE risk_mail FORCE ROW LEVEL SECURITY;
CREATE POLICY read ON risk_mail FOR SELECT USING (client_id IN (SELECT access.my_clients()));
CREATE POLICY upkeep ON risk_mail FOR SELECT USING ((SELECT access.is_owner()));
CREATE POLICY upkeep_add ON risk_mail FOR INSERT WITH CHECK ((SELECT access.is_owner()));
GRANT SELECT ON risk_mail TO leeward_app;

-- Whom the program has to tell by mail now: those who treat the client and the one whom the practice named, who gave an address, have had the
-- flag neither on screen nor by mail, and did not enter the form themselves. Anybody may ask, as with access.tidy(): it says of no flag whose it
-- is. Found from the record each time, so that nothing is forgotten when the program or the server of mail is down.
CREATE FUNCTION access.flags_to_mail() RETURNS TABLE (response_id uuid, member_id uuid, address text)
LANGUAGE plpgsql STABLE SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
BEGIN
  RETURN QUERY
    SELECT f.response_id, a.member_id, a.address
    FROM public.risk_flag f JOIN public.response r ON r.id = f.response_id, public.mail_address a JOIN access.member m ON m.id = a.member_id
    WHERE f.done IS NULL AND a.address <> '' AND f.client_id NOT IN (SELECT x.client_id FROM access.rehearsal x)
      AND m.left_at IS NULL AND r.entered_by IS DISTINCT FROM m.id
      AND (m.id = (SELECT p.told_too FROM public.practice p) OR EXISTS (SELECT FROM access.care_link l
        WHERE l.client_id = f.client_id AND l.member_id = m.id AND l.since <= access.now() AND (l.until IS NULL OR l.until > access.now())))
      AND NOT EXISTS (SELECT FROM public.risk_told t WHERE t.response_id = f.response_id AND t.member_id = m.id)
      AND NOT EXISTS (SELECT FROM public.risk_mail t WHERE t.response_id = f.response_id AND t.member_id = m.id)
    ORDER BY f.raised_at, a.member_id;
END $$;
REVOKE ALL ON FUNCTION access.flags_to_mail() FROM PUBLIC;
GRANT EXECUTE ON FUNCTION access.flags_to_mail() TO leeward_app;

-- Writes down that one was told; false: there was nobody to be told like that.
CREATE FUNCTION access.flag_mailed(flag uuid, member uuid) RETURNS boolean
LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
BEGIN
  INSERT INTO public.risk_mail (response_id, client_id, member_id, at)
  SELECT f.response_id, f.client_id, u.member_id, access.now()
  FROM access.flags_to_mail() u JOIN public.risk_flag f ON f.response_id = u.response_id WHERE u.response_id = flag AND u.member_id = member
  ON CONFLICT DO NOTHING;
  RETURN FOUND;
END $$;
REVOKE ALL ON FUNCTION access.flag_mailed(uuid, uuid) FROM PUBLIC;
GRANT EXECUTE ON FUNCTION access.flag_mailed(uuid, uuid) TO leeward_app;

INSERT INTO access.audit_act VALUES ('member', 'account.mail.view', false), ('member', 'account.mail.change', false);

-- ---------------------------------------------------------------------------------------------
-- A treatment that was begun by mistake, where nobody was treated: no session was attended, and no form of it stands.

ALTER TABLE episode DROP CONSTRAINT episode_reason_check, ADD CONSTRAINT episode_reason_check CHECK (
  reason IN ('as_agreed', 'early_by_agreement', 'client_ended', 'referred_on', 'crisis', 'moved', 'clinician_left', 'died', 'unknown', 'mistake'));

CREATE OR REPLACE FUNCTION access.keep_episode() RETURNS trigger LANGUAGE plpgsql SET search_path = pg_catalog, pg_temp AS $$
BEGIN
  IF OLD.ended_at IS NOT NULL AND NEW.ended_at IS NULL
      AND EXISTS (SELECT FROM public.episode later WHERE later.client_id = OLD.client_id AND later.number > OLD.number)
    OR NEW.ended_at IS NOT NULL AND OLD.ended_at IS NULL
      AND EXISTS (SELECT FROM public.session s WHERE s.episode_id = OLD.id AND s.ended_at IS NULL)
    OR NEW.reason IS NOT DISTINCT FROM 'mistake' AND OLD.reason IS DISTINCT FROM 'mistake'
      AND (NEW.started_at IS NOT NULL OR EXISTS (SELECT FROM public.standing_response r WHERE r.episode_id = OLD.id)) THEN
    RAISE EXCEPTION 'not allowed to change this of an episode' USING ERRCODE = 'insufficient_privilege';
  END IF;
  RETURN NEW;
END $$;
DROP TRIGGER keep_episode ON episode;
CREATE TRIGGER keep_episode BEFORE UPDATE OF ended_at, reason ON episode FOR EACH ROW EXECUTE FUNCTION access.keep_episode();

-- ---------------------------------------------------------------------------------------------
-- A draft says which page wrote it last, and with its how-manieth sending: a page goes on from its own though an answer was lost on the way, and
-- overwrites no other's. What is handed in was made from the draft that stands.

ALTER TABLE response_draft ADD COLUMN page uuid, ADD COLUMN sending integer NOT NULL DEFAULT 0 CHECK (sending >= 0),
  ADD COLUMN wording_id uuid REFERENCES wording;  -- the one that it was answered to
ALTER TABLE response ADD COLUMN page uuid;        -- the client's page that it was handed in from

DROP FUNCTION access.errand_forms();
CREATE FUNCTION access.errand_forms() RETURNS TABLE (measure text, wording_id uuid, body jsonb, handed_in boolean, draft_id uuid, draft bytea,
  draft_version integer, draft_wording uuid, draft_page uuid, draft_sending integer, handed_page uuid)
LANGUAGE plpgsql STABLE SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
DECLARE mine uuid := access.my_errand();
BEGIN
  RETURN QUERY SELECT m.measure, w.id, w.body,
      EXISTS (SELECT FROM public.response r WHERE r.asking_id = mine AND r.measure = m.measure), d.id, d.answers, d.version, d.wording_id, d.page, d.sending,
      (SELECT r.page FROM public.response r WHERE r.asking_id = mine AND r.measure = m.measure ORDER BY r.number LIMIT 1)
    FROM public.asking a, LATERAL unnest(a.measures) WITH ORDINALITY m(measure, place)
    LEFT JOIN public.wording w ON w.measure = m.measure AND w.checked_at IS NOT NULL AND w.ended_at IS NULL
    LEFT JOIN public.response_draft d ON d.asking_id = mine AND d.measure = m.measure
    WHERE a.id = mine ORDER BY m.place;
END $$;

-- Keeps what is filled in so far in place of version `was`. Returns the version that it has now; null: another page has kept more since, or it was
-- handed in.
DROP FUNCTION access.keep_draft(uuid, text, bytea, integer);
CREATE FUNCTION access.keep_draft(draft_id uuid, of_measure text, sealed bytea, was integer, to_wording uuid, by_page uuid, nth integer) RETURNS integer
LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
DECLARE mine public.asking := access.errand_writes(of_measure); kept integer;
BEGIN
  IF mine.id IS NULL THEN RETURN NULL; END IF;
  IF was = 0 THEN
    INSERT INTO public.response_draft (id, asking_id, client_id, measure, answers, version, kept_at, wording_id, page, sending)
    VALUES (draft_id, mine.id, mine.client_id, of_measure, sealed, 1, access.now(), to_wording, by_page, nth) ON CONFLICT DO NOTHING RETURNING version INTO kept;
  ELSE
    UPDATE public.response_draft SET answers = sealed, version = version + 1, kept_at = access.now(), wording_id = to_wording, page = by_page, sending = nth
    WHERE id = draft_id AND asking_id = mine.id AND measure = of_measure AND version = was RETURNING version INTO kept;
  END IF;
  RETURN kept;
END $$;

-- As before, and what is handed in was made from version `follows` of its draft (0: from none) and answers the wording in use. False as well when
-- another draft stands, or another wording is in use.
DROP FUNCTION access.hand_in(uuid, text, uuid, smallint, double precision, boolean, smallint, bytea, bytea, text);
CREATE FUNCTION access.hand_in(response uuid, of_measure text, wording uuid, by_rules smallint, comes_to double precision, filled_up boolean,
  judged_by smallint, sealed bytea, about bytea, says text, follows integer, from_page uuid) RETURNS boolean
LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
DECLARE mine public.asking := access.errand_writes(of_measure);
BEGIN
  IF mine.id IS NULL THEN RETURN false; END IF;
  IF coalesce((SELECT d.version FROM public.response_draft d WHERE d.asking_id = mine.id AND d.measure = of_measure), 0) IS DISTINCT FROM follows
    OR NOT EXISTS (SELECT FROM public.wording w WHERE w.id = hand_in.wording AND w.measure = of_measure AND w.checked_at IS NOT NULL AND w.ended_at IS NULL)
  THEN
    RETURN false;
  END IF;
  INSERT INTO public.response (id, client_id, episode_id, number, measure, rules, occasion, answered_at, total, prorated, points, by_client, kept_at,
    asking_id, wording_id, page)
  SELECT hand_in.response, mine.client_id, mine.episode_id, coalesce(max(r.number), 0) + 1, of_measure, by_rules, mine.occasion, access.now(), comes_to,
    filled_up, judged_by, true, access.now(), mine.id, hand_in.wording, from_page
  FROM public.response r WHERE r.client_id = mine.client_id;
  INSERT INTO public.response_answers (response_id, client_id, answers, event) VALUES (hand_in.response, mine.client_id, sealed, about);
  IF says IS NOT NULL THEN
    INSERT INTO public.risk_flag (response_id, client_id, says, raised_at) VALUES (hand_in.response, mine.client_id, hand_in.says, access.now());
  END IF;
  DELETE FROM public.response_draft d WHERE d.asking_id = mine.id AND d.measure = of_measure;
  UPDATE public.asking a SET closed_as = 'answered', closed_at = access.now() WHERE a.id = mine.id
    AND (SELECT count(DISTINCT r.measure) FROM public.response r WHERE r.asking_id = mine.id AND r.measure = ANY (a.measures)) = cardinality(a.measures);
  RETURN true;
END $$;

REVOKE ALL ON FUNCTION access.errand_forms(), access.keep_draft(uuid, text, bytea, integer, uuid, uuid, integer),
  access.hand_in(uuid, text, uuid, smallint, double precision, boolean, smallint, bytea, bytea, text, integer, uuid) FROM PUBLIC;
GRANT EXECUTE ON FUNCTION access.errand_forms(), access.keep_draft(uuid, text, bytea, integer, uuid, uuid, integer),
  access.hand_in(uuid, text, uuid, smallint, double precision, boolean, smallint, bytea, bytea, text, integer, uuid) TO leeward_app;

-- Whether a form of this errand may be written now. What was waited for may have ended the link, archived the record or closed the asking: it is looked
-- at again once the client's row is locked.
CREATE OR REPLACE FUNCTION access.errand_writes(of_measure text) RETURNS public.asking
LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
DECLARE mine public.asking; which uuid := access.my_errand();
BEGIN
  IF which IS NULL THEN RAISE EXCEPTION 'no errand' USING ERRCODE = 'insufficient_privilege'; END IF;
  PERFORM FROM public.client c JOIN public.asking a ON a.client_id = c.id WHERE a.id = which FOR UPDATE OF c;
  IF access.my_errand() IS DISTINCT FROM which THEN RETURN NULL; END IF;
  SELECT a.* INTO mine FROM public.asking a WHERE a.id = which AND a.closed_at IS NULL AND a.from_at <= access.now() AND of_measure = ANY (a.measures)
    AND NOT EXISTS (SELECT FROM public.response r WHERE r.asking_id = which AND r.measure = of_measure) FOR UPDATE;
  RETURN mine;
END $$;

CREATE OR REPLACE FUNCTION access.decline() RETURNS boolean
LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
DECLARE which uuid := access.my_errand();
BEGIN
  IF which IS NULL THEN RAISE EXCEPTION 'no errand' USING ERRCODE = 'insufficient_privilege'; END IF;
  PERFORM FROM public.client c JOIN public.asking a ON a.client_id = c.id WHERE a.id = which FOR UPDATE OF c;
  IF access.my_errand() IS DISTINCT FROM which THEN RETURN false; END IF;
  UPDATE public.asking SET closed_as = 'declined', closed_at = access.now() WHERE id = which AND closed_at IS NULL;
  RETURN FOUND;
END $$;

-- A link ends with the right of whoever made it: from then on its maker may not read the client's answers, and so may not by the link.
ALTER TABLE asking ADD COLUMN link_holds boolean NOT NULL DEFAULT true;
CREATE FUNCTION access.end_links() RETURNS trigger LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
BEGIN
  UPDATE public.asking a SET link_holds = false FROM access.errand e
    WHERE e.asking_id = a.id AND e.client_id = NEW.client_id AND e.made_by = NEW.member_id AND e.revoked_at IS NULL;
  UPDATE access.errand SET revoked_at = access.now() WHERE client_id = NEW.client_id AND made_by = NEW.member_id AND revoked_at IS NULL;
  RETURN NULL;
END $$;
REVOKE ALL ON FUNCTION access.end_links() FROM PUBLIC;
CREATE TRIGGER end_links AFTER UPDATE OF until ON access.care_link FOR EACH ROW WHEN (NEW.until IS NOT NULL AND OLD.until IS NULL)
  EXECUTE FUNCTION access.end_links();

CREATE OR REPLACE FUNCTION access.mint_errand(errand_id uuid, hash bytea, which uuid) RETURNS void
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
  UPDATE public.asking SET link_holds = true WHERE id = which;
END $$;

-- What is asked at the beginning or in the course of a treatment is not answered after it: it ends with the treatment; where the client died, or there
-- was no treatment, so does all that is asked.
CREATE FUNCTION access.end_askings() RETURNS trigger LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
BEGIN
  UPDATE public.asking SET closed_as = 'withdrawn', closed_at = access.now()
  WHERE episode_id = NEW.id AND closed_at IS NULL AND (occasion IN ('intake', 'regular') OR NEW.reason IN ('died', 'mistake'));
  RETURN NULL;
END $$;
REVOKE ALL ON FUNCTION access.end_askings() FROM PUBLIC;
CREATE TRIGGER end_askings AFTER UPDATE OF ended_at, reason ON episode FOR EACH ROW WHEN (NEW.ended_at IS NOT NULL) EXECUTE FUNCTION access.end_askings();
UPDATE asking a SET closed_as = 'withdrawn', closed_at = access.now() FROM episode e
WHERE e.id = a.episode_id AND a.closed_at IS NULL AND e.ended_at IS NOT NULL AND (a.occasion IN ('intake', 'regular') OR e.reason = 'died');

-- ---------------------------------------------------------------------------------------------
-- When a client is to be asked next, form by form: one that was answered says nothing of another. A session on the day of a form does not come after
-- it. Forms at the end are asked for until those after the end are due, or for eight weeks (a practitioner's judgement); not after a treatment that
-- nobody attended.

ALTER TABLE schedule ADD COLUMN then_for text CHECK (then_for IN ('follow_up')),
  ADD COLUMN then_on date CONSTRAINT then_on_is_a_day CHECK (isfinite(then_on));

CREATE OR REPLACE VIEW schedule_fold WITH (security_invoker = true) AS
SELECT s.client_id, d.due_for, CASE WHEN d.due_for IS NOT NULL THEN (d.due_at AT TIME ZONE p.zone)::date END AS due_on,
  CASE WHEN d.due_for = 'end' AND d.after_is_due THEN 'follow_up' END AS then_for,
  CASE WHEN d.due_for = 'end' THEN (d.then_at AT TIME ZONE p.zone)::date END AS then_on
FROM schedule s CROSS JOIN (SELECT zone FROM practice) p
LEFT JOIN LATERAL (
  SELECT e.* FROM episode e WHERE e.client_id = s.client_id AND e.reason IS DISTINCT FROM 'mistake' ORDER BY e.number DESC LIMIT 1) e ON true
LEFT JOIN LATERAL (
  SELECT count(*) FILTER (WHERE m.last_at IS NULL) AS without, min(m.last_at) AS last_at, bool_and(m.at_end) AS at_end, bool_and(m.after_end) AS after_end
  FROM (
    SELECT f.measure, max(x.at) AS last_at, coalesce(bool_or(x.occasion = 'end'), false) AS at_end,
      coalesce(bool_or(x.occasion = 'follow_up'), false) AS after_end
    FROM unnest(s.measures) f(measure) LEFT JOIN LATERAL (
      SELECT r.answered_at AS at, r.occasion FROM standing_response r WHERE r.episode_id = e.id AND r.measure = f.measure
      UNION ALL SELECT a.closed_at, a.occasion FROM asking a
        WHERE a.episode_id = e.id AND a.closed_as = 'declined' AND f.measure = ANY (a.measures)) x ON true
    GROUP BY f.measure) m) h ON true
LEFT JOIN LATERAL (
  SELECT n.opened_at FROM attended n WHERE n.episode_id = e.id AND (n.opened_at AT TIME ZONE p.zone)::date > (h.last_at AT TIME ZONE p.zone)::date
  ORDER BY n.opened_at OFFSET s.every - 1 LIMIT 1) n ON true
CROSS JOIN LATERAL (
  SELECT CASE
      WHEN cardinality(s.measures) = 0 OR e.reason = 'died' THEN NULL
      WHEN e.ended_at IS NULL AND h.without = cardinality(s.measures) THEN 'intake'
      WHEN e.ended_at IS NULL AND (h.without > 0 OR n.opened_at IS NOT NULL) THEN 'regular'
      WHEN e.ended_at IS NULL OR e.started_at IS NULL THEN NULL
      WHEN h.at_end IS NOT TRUE THEN 'end'
      WHEN h.after_end IS NOT TRUE AND s.follow_up_weeks IS NOT NULL THEN 'follow_up' END AS due_for) f
CROSS JOIN LATERAL (
  SELECT f.due_for, h.after_end IS NOT TRUE AND s.follow_up_weeks IS NOT NULL AS after_is_due,
    e.ended_at + make_interval(weeks => coalesce(s.follow_up_weeks::integer, 8)) AS then_at,
    CASE WHEN f.due_for = 'intake' OR f.due_for = 'regular' AND h.without > 0 THEN greatest(e.begun_at, s.set_at)
      WHEN f.due_for = 'regular' THEN n.opened_at
      WHEN f.due_for = 'end' THEN e.ended_at
      WHEN f.due_for = 'follow_up' THEN e.ended_at + make_interval(weeks => s.follow_up_weeks) END AS due_at) d;

-- What is due by the day it is. `folded_on` is never later than the day.
CREATE VIEW schedule_due WITH (security_invoker = true) AS
SELECT s.client_id, CASE WHEN l.lapsed THEN s.then_for ELSE s.due_for END AS due_for,
  CASE WHEN NOT l.lapsed THEN s.due_on WHEN s.then_for IS NOT NULL THEN s.then_on END AS due_on, s.due_on AS folded_on
FROM schedule s CROSS JOIN LATERAL (
  SELECT coalesce(s.due_for = 'end' AND s.then_on <= (SELECT (access.now() AT TIME ZONE zone)::date FROM practice), false) AS lapsed) l;
GRANT SELECT ON schedule_due TO leeward_app;

CREATE OR REPLACE FUNCTION access.fold_schedule() RETURNS trigger LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
BEGIN
  -- Whoever comes second folds what the first has written.
  PERFORM FROM public.schedule s WHERE s.client_id = NEW.client_id FOR UPDATE;
  UPDATE public.schedule s SET due_for = f.due_for, due_on = f.due_on, then_for = f.then_for, then_on = f.then_on FROM public.schedule_fold f
  WHERE s.client_id = NEW.client_id AND f.client_id = s.client_id
    AND (s.due_for, s.due_on, s.then_for, s.then_on) IS DISTINCT FROM (f.due_for, f.due_on, f.then_for, f.then_on);
  RETURN NULL;
END $$;
UPDATE schedule s SET due_for = f.due_for, due_on = f.due_on, then_for = f.then_for, then_on = f.then_on FROM schedule_fold f WHERE f.client_id = s.client_id;

INSERT INTO access.audit_act VALUES ('member', 'wording.end', false);

-- ---------------------------------------------------------------------------------------------
-- Told is who treats the client: that somebody else saw that there is a flag leaves it with nobody who knows whose it is.

CREATE OR REPLACE FUNCTION access.flags_past_time() RETURNS TABLE (client_id uuid, days_late integer, told bigint)
LANGUAGE plpgsql STABLE SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
BEGIN
  IF access.has_role('lead') IS NOT TRUE THEN RETURN; END IF;
  RETURN QUERY
    SELECT f.client_id, floor((extract(epoch FROM access.now() - f.raised_at) - 3600 * p.flag_hours) / 86400)::integer,
      (SELECT count(*) FROM public.risk_told t WHERE t.response_id = f.response_id AND EXISTS (
        SELECT FROM access.care_link l WHERE l.client_id = f.client_id AND l.member_id = t.member_id AND l.since <= t.at AND (l.until IS NULL OR l.until > t.at)))
    FROM public.risk_flag f, public.practice p WHERE f.done IS NULL AND f.raised_at < access.now() - make_interval(hours => p.flag_hours);
END $$;
