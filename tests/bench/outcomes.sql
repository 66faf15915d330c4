-- A practice of :clients clients over five years, 21 sessions a client who has come that far and 12 or 13 sets in each but the first, with forms,
-- askings, schedules, flags and calls, for tests/bench/outcomes: nobody in it was ever anybody. No evidence by second, no audit, nothing sealed. Made by sets, without triggers and foreign keys: what the triggers
-- fold is folded at the end by the views that say what it should be.
\set ON_ERROR_STOP on
-- The cluster is thrown away afterwards: it need not write its log twice as often as that.
ALTER SYSTEM SET max_wal_size = '8GB';
SELECT pg_reload_conf();
SET session_replication_role = replica;
SET synchronous_commit = off;
SET work_mem = '256MB';

-- A number from 0 up to 1 that always belongs to the same words.
CREATE FUNCTION pg_temp.chance(words text) RETURNS double precision LANGUAGE sql IMMUTABLE AS
  $$ SELECT ('x' || substr(md5(words), 1, 8))::bit(32)::bigint / 4294967296.0 $$;
-- Ids in order, so that twelve million rows go to the end of each index and not into its middle.
CREATE FUNCTION pg_temp.id(sort integer, n bigint) RETURNS uuid LANGUAGE sql IMMUTABLE AS
  $$ SELECT ('0000000' || sort || '-0000-4000-8000-' || lpad(to_hex(n), 12, '0'))::uuid $$;

INSERT INTO access.member (id, name, roles, joined_at)
SELECT pg_temp.id(1, m), 'Clinician ' || m, '{clinician}', now() - interval '6 years' FROM generate_series(1, :clinicians) m;

INSERT INTO client (id, number, opened_on, seizures, eye_condition, version) OVERRIDING SYSTEM VALUE
SELECT pg_temp.id(2, c), c + 1000, current_date - 1900, 'no', 'no', 1 FROM generate_series(1, :clients) c;

INSERT INTO access.care_link (id, member_id, client_id, since)
SELECT pg_temp.id(3, c), pg_temp.id(1, 1 + c % :clinicians), pg_temp.id(2, c), now() - interval '5 years'
FROM generate_series(1, :clients) c;

-- One treatment a client, begun at some time of the last five years; a few ended early, some are open.
CREATE TEMPORARY TABLE work AS
SELECT c, pg_temp.id(2, c) AS client_id, pg_temp.id(4, c) AS episode_id, pg_temp.id(1, 1 + c % :clinicians) AS member_id,
  now() - interval '1 day' * floor(1825 * pg_temp.chance('begun' || c)) AS begun_at, 21 AS sessions
FROM generate_series(1, :clients) c;

INSERT INTO episode (id, client_id, number, begun_at, ended_at, reason, judged_by)
SELECT episode_id, client_id, 1, begun_at, CASE WHEN over THEN ended END, CASE WHEN over THEN reason END, CASE WHEN over THEN member_id END
FROM (SELECT w.*, begun_at + interval '1 week' * sessions AS ended, begun_at + interval '1 week' * sessions < now() AS over,
    (ARRAY['as_agreed', 'as_agreed', 'as_agreed', 'early_by_agreement', 'client_ended', 'client_ended', 'referred_on', 'crisis', 'moved',
      'clinician_left', 'unknown'])[1 + floor(11 * pg_temp.chance('reason' || c))::integer] AS reason FROM work w) e;

INSERT INTO session (id, client_id, member_id, episode_id, number, zone, opened_at, admitted_at, ended_at, closing, room_epoch, version)
SELECT pg_temp.id(5, c * 32::bigint + n), client_id, member_id, episode_id, n, 'UTC', at, at + interval '3 minutes', at + interval '50 minutes',
  CASE WHEN n % 4 = 0 THEN 'complete' WHEN n = 1 THEN 'no_reprocessing' ELSE 'incomplete' END, 0, 1
FROM work, generate_series(1, sessions) n, LATERAL (SELECT begun_at + interval '1 week' * (n - 1) AS at) t WHERE at < now() - interval '1 hour';

INSERT INTO target (id, client_id, number, prong, opened_at, version)
SELECT pg_temp.id(6, c), client_id, 1, 'past', begun_at, 1 FROM work;
INSERT INTO target_course (target_id, client_id, rules, procedure, state, unfounded, version)
SELECT pg_temp.id(6, c), client_id, 2, 'standard', 'active', false, 1 FROM work;

INSERT INTO stimulus_set (id, session_id, client_id, target_id, number, epoch, plan, recorded_at)
SELECT pg_temp.id(7, (w.c * 32::bigint + s.number) * 16 + x), s.id, s.client_id, pg_temp.id(6, w.c), x, 0,
  '{"rate": 1.0, "width": 18.0, "dot": 1.0, "path": "across", "length": {"kind": "cycles", "cycles": 24}, "channels": {"eyes": true, "ears": false, "hands": false}, "purpose": "processing"}',
  s.opened_at + interval '1 minute' * (3 + 3 * x)
FROM work w JOIN session s ON s.client_id = w.client_id, generate_series(1, 12 + (s.number % 3 <> 0)::integer) x WHERE s.number > 1;

-- Two forms at intake, every fourth session, and for three quarters at the end; totals fall with the sessions for most.
INSERT INTO response (id, client_id, episode_id, number, measure, rules, occasion, answered_at, total, prorated, points, entered_by, kept_at)
SELECT pg_temp.id(8, f.c * 32::bigint + f.n * 2 + CASE f.measure WHEN 'pcl5' THEN 1 ELSE 0 END), f.client_id, f.episode_id, f.n * 2 + CASE f.measure WHEN 'pcl5' THEN 1 ELSE 2 END, f.measure, 1,
  f.occasion, f.at, f.total, false, CASE f.measure WHEN 'pcl5' THEN 15 ELSE 6 END, f.member_id, f.at
FROM (
  SELECT w.*, n, measure, begun_at + interval '4 weeks' * n AS at,
    CASE WHEN n = 0 THEN 'intake' WHEN n = 5 THEN 'end' ELSE 'regular' END AS occasion,
    floor(most * greatest(0.05, 0.45 + 0.35 * pg_temp.chance('level' || c) - 0.09 * n * pg_temp.chance('fall' || c)
      + 0.1 * (pg_temp.chance('noise' || c || measure || n) - 0.5))) AS total
  FROM work w, generate_series(0, 5) n, (VALUES ('pcl5', 80), ('phq9', 27)) m(measure, most)
  WHERE n < 5 OR pg_temp.chance('stays' || c) < 0.75) f
WHERE f.at < now();

UPDATE episode e SET started_at = f.started_at, reprocessed_at = f.reprocessed_at, last_at = f.last_at, sessions = f.sessions
FROM episode_fold f WHERE f.id = e.id;
INSERT INTO episode_measure (episode_id, measure, client_id, first_total, first_at, last_total, last_at, end_total, end_at, totals)
SELECT episode_id, measure, client_id, first_total, first_at, last_total, last_at, end_total, end_at, totals FROM episode_measure_fold
ON CONFLICT (episode_id, measure) DO NOTHING;

-- What the day's lists look through. One course in thirty has not moved; a call after each first reprocessing, one in forty not made; each client
-- asked for forms five times, one in ten with an asking that is open now; one in twenty with a flag, nearly all closed.
INSERT INTO target_still (target_id, client_id, still) SELECT pg_temp.id(6, c), client_id, pg_temp.chance('still' || c) < 0.033 FROM work
WHERE begun_at < now() - interval '4 weeks'
ON CONFLICT DO NOTHING;
INSERT INTO after_check (session_id, client_id, member_id, reason, due_from, due_until)
SELECT s.id, s.client_id, s.member_id, 'first_reprocessing', s.ended_at + interval '1 day', s.ended_at + interval '3 days' FROM session s WHERE s.number = 2
ON CONFLICT DO NOTHING;
INSERT INTO after_check_try (id, session_id, client_id, outcome, entered_by, at)
SELECT pg_temp.id(9, row_number() OVER ()), a.session_id, a.client_id, 'well', a.member_id, a.due_from + interval '1 hour' FROM after_check a
WHERE pg_temp.chance('call' || a.session_id) > 0.025
ON CONFLICT DO NOTHING;
INSERT INTO asking (id, client_id, episode_id, number, occasion, measures, asked_by, asked_at, from_at, due_on, until_at, links, closed_as, closed_at)
SELECT pg_temp.id(0, w.c * 8::bigint + n), w.client_id, w.episode_id, n, 'regular', '{pcl5,phq9}', w.member_id, at, at, (at + interval '7 days')::date,
  at + interval '21 days', 1, CASE WHEN is_open THEN NULL WHEN pg_temp.chance('declines' || w.c || n) < 0.1 THEN 'declined' ELSE 'answered' END,
  CASE WHEN is_open THEN NULL ELSE at + interval '3 days' END
FROM work w, generate_series(1, 5) n, LATERAL (SELECT w.begun_at + interval '4 weeks' * n AS at) t,
  LATERAL (SELECT at > now() - interval '20 days' AND pg_temp.chance('open' || w.c) < 0.5 AS is_open) o WHERE at < now()
ON CONFLICT DO NOTHING;
INSERT INTO schedule (client_id, measures, every, follow_up_weeks, set_at)
SELECT client_id, '{pcl5,phq9}', 4, CASE WHEN c % 2 = 0 THEN 12 END::smallint, begun_at FROM work
ON CONFLICT DO NOTHING;
INSERT INTO risk_flag (response_id, client_id, says, raised_at, done, done_at, done_by)
SELECT r.id, r.client_id, 'flag', r.answered_at, CASE WHEN NOT left_open THEN 'plan_stands' END, CASE WHEN NOT left_open THEN r.answered_at + interval '1 hour' END,
  CASE WHEN NOT left_open THEN r.entered_by END
FROM response r, LATERAL (SELECT r.answered_at > now() - interval '30 days' AND pg_temp.chance('left' || r.id) < 0.1 AS left_open) o
WHERE r.measure = 'phq9' AND pg_temp.chance('flag' || r.id) < 0.01
ON CONFLICT DO NOTHING;
INSERT INTO risk_told (response_id, client_id, member_id, at)
SELECT f.response_id, f.client_id, r.entered_by, f.raised_at FROM risk_flag f JOIN response r ON r.id = f.response_id
WHERE pg_temp.chance('told' || f.response_id) < 0.9
ON CONFLICT DO NOTHING;
UPDATE schedule s SET due_for = f.due_for, due_on = f.due_on, then_for = f.then_for, then_on = f.then_on FROM schedule_fold f WHERE f.client_id = s.client_id;

SET session_replication_role = DEFAULT;
ANALYZE;
SELECT format('%s clients, %s sessions, %s sets, %s forms', (SELECT count(*) FROM client), (SELECT count(*) FROM session),
  (SELECT count(*) FROM stimulus_set), (SELECT count(*) FROM response));
