-- Why: a room's token held for a day and was never renewed, so that a session left open overnight took nothing more; and to
-- decide about a device that asked before it was kept why a seat is closed had no answer.

-- The room that asks goes on for another day; for the room itself, which does so as it reads the record.
CREATE FUNCTION access.keep_room() RETURNS void
LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
DECLARE at timestamptz := access.now();
BEGIN
  UPDATE access.room_token SET ends_at = at + interval '24 hours'
  WHERE token_hash = access.token_hash() AND access.kind() = 'room' AND ends_at > at AND ends_at < at + interval '23 hours';
END $$;
REVOKE ALL ON FUNCTION access.keep_room() FROM PUBLIC;
GRANT EXECUTE ON FUNCTION access.keep_room() TO leeward_app;

CREATE OR REPLACE FUNCTION access.decide_seat(which uuid, wanted uuid, move boolean) RETURNS boolean
LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
DECLARE asked access.seat;
BEGIN
  IF access.treats_session(which) IS NOT TRUE THEN
    RAISE EXCEPTION 'not allowed to decide about this seat' USING ERRCODE = 'insufficient_privilege';
  END IF;
  PERFORM pg_advisory_xact_lock(hashtextextended(which::text, 0));
  SELECT * INTO asked FROM access.seat WHERE id = wanted AND session_id = which;
  IF NOT FOUND THEN RETURN false; END IF;
  IF move THEN
    IF asked.closed_at IS NOT NULL THEN RETURN false; END IF;
    IF asked.taken_at IS NOT NULL THEN RETURN true; END IF;
    UPDATE access.seat SET closed_at = access.now(), closed_why = 'moved' WHERE session_id = which AND closed_at IS NULL AND id <> wanted;
    UPDATE access.seat SET taken_at = access.now() WHERE id = wanted;
    RETURN true;
  END IF;
  IF asked.taken_at IS NOT NULL THEN RETURN false; END IF;
  UPDATE access.seat SET closed_at = access.now(), closed_why = 'refused'
  WHERE session_id = which AND taken_at IS NULL AND closed_at IS NULL AND asked_no <= asked.asked_no;
  RETURN asked.closed_at IS NULL OR asked.closed_why IS NOT DISTINCT FROM 'refused';
END $$;
