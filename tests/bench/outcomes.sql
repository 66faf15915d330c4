-- A practice of :clients clients over five years, 20 sessions a client and 12 sets a session, with forms, for tests/bench/outcomes: nobody in
-- it was ever anybody. No evidence by second, no audit, nothing sealed. Made by sets, without triggers and foreign keys: what the triggers
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
  now() - interval '1 day' * floor(1825 * pg_temp.chance('begun' || c)) AS begun_at, 20 AS sessions
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
FROM work w JOIN session s ON s.client_id = w.client_id, generate_series(1, 12) x WHERE s.number > 1;

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
SELECT episode_id, measure, client_id, first_total, first_at, last_total, last_at, end_total, end_at, totals FROM episode_measure_fold;

SET session_replication_role = DEFAULT;
ANALYZE;
SELECT format('%s clients, %s sessions, %s sets, %s forms', (SELECT count(*) FROM client), (SELECT count(*) FROM session),
  (SELECT count(*) FROM stimulus_set), (SELECT count(*) FROM response));
