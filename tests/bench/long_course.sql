-- Makes the longest record of the invented practice 200 sessions long: its last session that has sets, again and again, a day apart.
WITH model AS (
  SELECT s.* FROM session s
  -- The demo's first clinician has the first record.
  WHERE s.client_id = (SELECT client_id FROM session WHERE member_id = (SELECT member_id FROM session ORDER BY seq LIMIT 1)
      GROUP BY client_id ORDER BY count(*) DESC, client_id LIMIT 1)
    AND EXISTS (SELECT FROM stimulus_set x WHERE x.session_id = s.id)
  ORDER BY s.number DESC LIMIT 1),
numbers AS (
  SELECT gen_random_uuid() AS id, n
  FROM generate_series((SELECT max(s.number) + 1 FROM session s JOIN model m ON m.client_id = s.client_id), 200) n),
sessions AS (
  INSERT INTO session (id, client_id, member_id, target_id, number, zone, opened_at, admitted_at, ended_at, closing, room_epoch, version)
  SELECT n.id, m.client_id, m.member_id, m.target_id, n.n, m.zone, m.opened_at, m.admitted_at, m.ended_at, m.closing, 0, 1
  FROM model m, numbers n RETURNING id),
sets AS (
  SELECT gen_random_uuid() AS id, x.id AS of, n.id AS session_id FROM stimulus_set x JOIN model m ON m.id = x.session_id CROSS JOIN numbers n),
made AS (
  INSERT INTO stimulus_set (id, session_id, client_id, target_id, number, epoch, plan, recorded_at)
  SELECT s.id, s.session_id, x.client_id, x.target_id, x.number, x.epoch, x.plan, x.recorded_at FROM sets s JOIN stimulus_set x ON x.id = s.of RETURNING id)
INSERT INTO rating (id, client_id, session_id, target_id, set_id, scale, value, moment, entered_by, at)
SELECT gen_random_uuid(), r.client_id, s.session_id, r.target_id, s.id, r.scale, r.value, r.moment, r.entered_by, r.at
FROM sets s JOIN rating r ON r.set_id = s.of WHERE r.replaces IS NULL;
ANALYZE;
