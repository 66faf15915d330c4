-- Why: what is sent again has one effect; words keep every version; an ending is what its witnesses say; the
-- order of seats does not hang on a clock; what a room needs of the record it can read again.

-- ---------------------------------------------------------------------------------------------
-- Sending again: see server/portal/src/once.rs. A key is of one member; the answer holds no secret.

CREATE TABLE access.request_key (
  member_id uuid NOT NULL REFERENCES access.member,
  key uuid NOT NULL,
  act text NOT NULL,
  body bytea NOT NULL,             -- SHA-256 of what was sent
  answer text,                     -- null only within the transaction that brings it
  kept_at timestamptz NOT NULL,
  PRIMARY KEY (member_id, key)
);
CREATE INDEX ON access.request_key (kept_at);

-- Takes the key for this transaction. A second sending waits here for the first, then hears its answer. No row: nobody
-- who may ask.
CREATE FUNCTION access.begin_request(which uuid, of_act text, said bytea) RETURNS TABLE (fresh boolean, same boolean, answer text)
LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
DECLARE who uuid := access.me();
BEGIN
  IF who IS NULL THEN RETURN; END IF;
  INSERT INTO access.request_key (member_id, key, act, body, kept_at) VALUES (who, which, of_act, said, access.now())
  ON CONFLICT DO NOTHING;
  IF FOUND THEN
    RETURN QUERY SELECT true, true, NULL::text;
  ELSE
    RETURN QUERY SELECT false, (r.act = of_act AND r.body = said), r.answer FROM access.request_key r
      WHERE r.member_id = who AND r.key = which;
  END IF;
END $$;

-- Keeps the answer, once. True when it did.
CREATE FUNCTION access.answer_request(which uuid, said text) RETURNS boolean
LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
BEGIN
  UPDATE access.request_key SET answer = said WHERE member_id = access.me() AND key = which AND answer IS NULL;
  RETURN FOUND;
END $$;

-- ---------------------------------------------------------------------------------------------
-- Words of a session: a row for each version. What is there stays as it was sealed, with its version.

ALTER TABLE session_words DROP CONSTRAINT session_words_pkey;
ALTER TABLE session_words ADD PRIMARY KEY (session_id, version);
ALTER TABLE session_words ADD COLUMN written_by uuid REFERENCES access.member, ADD COLUMN written_at timestamptz;
DROP POLICY change ON session_words;
REVOKE UPDATE ON session_words FROM leeward_app;
DROP POLICY add ON session_words;
CREATE POLICY add ON session_words FOR INSERT WITH CHECK (
  client_id IN (SELECT access.my_clients()) AND written_by = (SELECT access.me()) AND written_at IS NOT NULL);

-- A room shows the client the last words of its session once that has ended. It reads them by this function alone: one
-- column, its own session, after the end; and with them the key that opens them.
CREATE POLICY last_words ON session_words FOR SELECT USING ((SELECT access.is_owner()));
CREATE POLICY last_words ON client_key FOR SELECT USING ((SELECT access.is_owner()));
CREATE FUNCTION access.last_words() RETURNS TABLE (words bytea, version integer, wrapped bytea)
LANGUAGE plpgsql STABLE SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
DECLARE mine uuid := access.my_room();
BEGIN
  RETURN QUERY SELECT w.client_words, w.version, k.wrapped
    FROM public.session_words w JOIN public.client_key k USING (client_id) JOIN access.gate g USING (session_id)
    WHERE w.session_id = mine AND g.ended_at IS NOT NULL ORDER BY w.version DESC LIMIT 1;
END $$;

-- ---------------------------------------------------------------------------------------------
-- Moments: each has a name of its own, so that writing it again does not double it.

ALTER TABLE session_moment ADD COLUMN once uuid UNIQUE;

-- ---------------------------------------------------------------------------------------------
-- Endings: each witness's word is kept, and one view decides.

ALTER TABLE set_ending DROP CONSTRAINT set_ending_pkey;
ALTER TABLE set_ending ADD COLUMN witness text NOT NULL DEFAULT 'room' CHECK (witness IN ('room', 'desk'));
ALTER TABLE set_ending ALTER COLUMN witness DROP DEFAULT;
ALTER TABLE set_ending ADD PRIMARY KEY (set_id, witness);

-- The screen's word first, then the room's, then what a desk was told by a room that could not write it any more. Unknown

CREATE VIEW set_outcome WITH (security_invoker = true) AS
SELECT s.id AS set_id, s.session_id, s.client_id,
  coalesce(
    (SELECT e.ending FROM set_evidence e WHERE e.set_id = s.id AND e.kind = 'rested' ORDER BY e.seq LIMIT 1),
    (SELECT e.ending FROM set_ending e WHERE e.set_id = s.id AND e.ending <> 'unknown' ORDER BY e.witness = 'room' DESC LIMIT 1),
    CASE WHEN s.epoch < n.room_epoch OR n.ended_at IS NOT NULL THEN 'unknown' END) AS ending
FROM stimulus_set s LEFT JOIN session n ON n.id = s.session_id;
GRANT SELECT ON set_outcome TO leeward_app;

-- ---------------------------------------------------------------------------------------------
-- Seats: asked for in the order of a counter; admitted by name; closed for a reason.

ALTER TABLE access.seat ADD COLUMN asked_no bigint GENERATED ALWAYS AS IDENTITY;
ALTER TABLE access.seat ADD COLUMN admitted_at timestamptz;
ALTER TABLE access.seat ADD COLUMN closed_why text CHECK (closed_why IN ('left', 'moved', 'refused', 'joined_again'));

-- What is open and was admitted so far: the owner is bound by row security too, so it is lifted for this one look.
ALTER TABLE session_moment NO FORCE ROW LEVEL SECURITY;
UPDATE access.seat q SET admitted_at = m.at
FROM (SELECT session_id, max(at) AS at FROM session_moment WHERE kind = 'admitted' GROUP BY session_id) m
WHERE m.session_id = q.session_id AND q.taken_at IS NOT NULL AND q.closed_at IS NULL AND m.at >= q.asked_at;
ALTER TABLE session_moment FORCE ROW LEVEL SECURITY;

DROP FUNCTION access.claim_seat(uuid, uuid, bytea, text);
DROP FUNCTION access.leave_seat();
DROP FUNCTION access.decide_seat(uuid, boolean);
DROP FUNCTION access.seats(uuid);

-- Where the seat stands that was claimed under this token: 'taken', 'asked', 'closed', or null when there is none. For a
-- device that sends its claim again; whoever knows the token has the seat anyway.
CREATE FUNCTION access.claimed_seat(link_hash bytea, hash bytea) RETURNS TABLE (session_id uuid, state text)
LANGUAGE plpgsql STABLE SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
BEGIN
  RETURN QUERY SELECT s.session_id,
    CASE WHEN s.closed_at IS NOT NULL OR g.ended_at IS NOT NULL THEN 'closed' WHEN s.taken_at IS NULL THEN 'asked' ELSE 'taken' END
  FROM access.seat s JOIN access.join_link l ON l.id = s.link_id JOIN access.gate g ON g.session_id = s.session_id
  WHERE s.token_hash = hash AND l.token_hash = link_hash;
END $$;

-- After the right code: takes the seat, or asks for it when another device has it. Spends the code, and gives up the seat
-- that the same browser had before. Returns 'taken', 'asked', or null when the link has gone meanwhile.
CREATE FUNCTION access.claim_seat(link uuid, seat_id uuid, hash bytea, on_device text, earlier bytea) RETURNS text
LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
DECLARE which uuid; has boolean;
BEGIN
  UPDATE access.join_link SET code_spent_at = access.now()
  WHERE id = link AND code_spent_at IS NULL AND revoked_at IS NULL RETURNING session_id INTO which;
  IF which IS NULL THEN RETURN NULL; END IF;
  PERFORM pg_advisory_xact_lock(hashtextextended(which::text, 0));
  UPDATE access.seat SET closed_at = access.now(), closed_why = 'joined_again' WHERE token_hash = earlier AND closed_at IS NULL;
  has := EXISTS (SELECT FROM access.seat WHERE session_id = which AND taken_at IS NOT NULL AND closed_at IS NULL);
  INSERT INTO access.seat (id, token_hash, link_id, session_id, device, asked_at, taken_at)
  VALUES (seat_id, hash, link, which, on_device, access.now(), CASE WHEN NOT has THEN access.now() END);
  RETURN CASE WHEN has THEN 'asked' ELSE 'taken' END;
END $$;

-- True when there was a seat to give up.
CREATE FUNCTION access.leave_seat() RETURNS boolean LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
BEGIN
  UPDATE access.seat SET closed_at = access.now(), closed_why = 'left'
  WHERE access.kind() = 'seat' AND token_hash = access.token_hash() AND closed_at IS NULL;
  RETURN FOUND;
END $$;

-- The clinician admits the device that they see; asked again, the answer is the same. False: that device has not got the
-- seat any more.
CREATE FUNCTION access.admit_seat(which uuid, wanted uuid) RETURNS boolean
LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
BEGIN
  IF access.treats_session(which) IS NOT TRUE THEN
    RAISE EXCEPTION 'not allowed to admit to this session' USING ERRCODE = 'insufficient_privilege';
  END IF;
  UPDATE access.seat SET admitted_at = coalesce(admitted_at, access.now())
  WHERE id = wanted AND session_id = which AND taken_at IS NOT NULL AND closed_at IS NULL;
  RETURN FOUND;
END $$;

-- The clinician moves the seat to the device that they see asking, or refuses it and all that asked before it. True when
-- that is how it stands afterwards, so that asking again answers the same.
CREATE FUNCTION access.decide_seat(which uuid, wanted uuid, move boolean) RETURNS boolean
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
  RETURN asked.closed_at IS NULL OR asked.closed_why = 'refused';
END $$;

-- The seats of a session for its clinician and its room, in the order of asking: those that are open, as 'asked', 'taken'
-- or 'admitted', and the last that had the place if the client has left it, as 'left'.
CREATE FUNCTION access.seats(which uuid) RETURNS TABLE (seat_id uuid, device text, state text)
LANGUAGE plpgsql STABLE SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
BEGIN
  IF (access.treats_session(which) OR access.my_room() = which) IS NOT TRUE THEN RETURN; END IF;
  RETURN QUERY SELECT s.id, s.device,
    CASE WHEN s.closed_at IS NOT NULL THEN 'left' WHEN s.taken_at IS NULL THEN 'asked' WHEN s.admitted_at IS NULL THEN 'taken' ELSE 'admitted' END
  FROM access.seat s
  WHERE s.session_id = which AND (s.closed_at IS NULL OR (s.closed_why = 'left'
    AND s.asked_no = (SELECT max(l.asked_no) FROM access.seat l WHERE l.session_id = which AND l.taken_at IS NOT NULL)))
  ORDER BY s.asked_no;
END $$;

-- A care link holds from when it is there until it is ended: both are states. Compared with the wall clock, a clock set
-- back took the newest clients from their clinicians, and would have given back the ones that were handed over.
CREATE OR REPLACE FUNCTION access.my_clients() RETURNS SETOF uuid
LANGUAGE plpgsql STABLE SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
DECLARE who uuid := access.me();
BEGIN
  IF who IS NULL THEN RETURN; END IF;
  RETURN QUERY SELECT client_id FROM access.care_link WHERE member_id = who AND until IS NULL;
END $$;

REVOKE ALL ON FUNCTION access.begin_request(uuid, text, bytea), access.answer_request(uuid, text), access.last_words(),
  access.claimed_seat(bytea, bytea), access.claim_seat(uuid, uuid, bytea, text, bytea), access.leave_seat(),
  access.admit_seat(uuid, uuid), access.decide_seat(uuid, uuid, boolean), access.seats(uuid) FROM PUBLIC;
GRANT EXECUTE ON FUNCTION access.begin_request(uuid, text, bytea), access.answer_request(uuid, text), access.last_words(),
  access.claimed_seat(bytea, bytea), access.claim_seat(uuid, uuid, bytea, text, bytea), access.leave_seat(),
  access.admit_seat(uuid, uuid), access.decide_seat(uuid, uuid, boolean), access.seats(uuid) TO leeward_app;
