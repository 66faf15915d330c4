-- Why: a screen that a new room's first view cut off says that it rests and does not know why. That was taken for the
-- screen's word and stood before a stop that the desk had shown. Unknown is nobody's word: whoever knows goes first.

CREATE OR REPLACE VIEW set_outcome WITH (security_invoker = true) AS
SELECT s.id AS set_id, s.session_id, s.client_id,
  coalesce(
    (SELECT e.ending FROM set_evidence e WHERE e.set_id = s.id AND e.kind = 'rested' AND e.ending <> 'unknown' ORDER BY e.seq LIMIT 1),
    (SELECT e.ending FROM set_ending e WHERE e.set_id = s.id AND e.ending <> 'unknown' ORDER BY e.witness = 'room' DESC LIMIT 1),
    CASE WHEN s.epoch < n.room_epoch OR n.ended_at IS NOT NULL
      OR EXISTS (SELECT FROM set_evidence e WHERE e.set_id = s.id AND e.kind = 'rested') THEN 'unknown' END) AS ending
FROM stimulus_set s LEFT JOIN session n ON n.id = s.session_id;
