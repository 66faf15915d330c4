-- Why: what the portal looks after by itself: that its key file is the practice's, and that what has
-- expired does not pile up.

-- ---------------------------------------------------------------------------------------------
-- The key check: one value sealed under each key in use. The app role reads it and adds it once, by the
-- functions below; it has no right on the table, and nobody but the owner takes a value away.

CREATE TABLE access.key_check (
  key_id integer PRIMARY KEY,     -- as in client_key
  sealed bytea NOT NULL CHECK (length(sealed) BETWEEN 30 AND 200)
);

-- What the functions below need to see; the owner, whom they run as, is bound by row security here.
CREATE POLICY upkeep ON client_key FOR SELECT USING ((SELECT access.is_owner()));

CREATE FUNCTION access.keys_in_use() RETURNS SETOF integer
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS
  $$ SELECT key_id FROM public.client_key UNION SELECT key_id FROM access.key_check $$;

CREATE FUNCTION access.key_check(which integer) RETURNS bytea
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS
  $$ SELECT sealed FROM access.key_check WHERE key_id = which $$;

-- A few wrapped keys to try a key file on, and only until its check value stands: a practice from before
-- this migration has none. A few, so that one row that was damaged does not speak for all.
CREATE FUNCTION access.keys_to_try(which integer) RETURNS TABLE (client_id uuid, wrapped bytea)
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
  SELECT k.client_id, k.wrapped FROM public.client_key k
  WHERE k.key_id = which AND NOT EXISTS (SELECT FROM access.key_check c WHERE c.key_id = which) LIMIT 8 $$;

-- Adds the check value of a key unless one stands, and returns the one that stands: of two portals that
-- start at once, both compare with the same.
CREATE FUNCTION access.keep_key_check(which integer, fresh bytea) RETURNS bytea
LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
BEGIN
  INSERT INTO access.key_check VALUES (which, fresh) ON CONFLICT DO NOTHING;
  RETURN (SELECT sealed FROM access.key_check WHERE key_id = which);
END $$;

-- ---------------------------------------------------------------------------------------------
-- Tidying up. Whoever calls this can only have removed what has long expired: how long each is kept
-- stands here and is no argument, and the caller's clock counts only as far as the database's own.
-- No row of the clinical record or of the audit is ever deleted.

-- What policies let this function do to a session: end one of a pretend client, that nobody ended.
CREATE POLICY upkeep_find ON session FOR SELECT USING ((SELECT access.is_owner()) AND client_id IN (SELECT access.rehearsals()));
CREATE POLICY upkeep_end ON session FOR UPDATE USING ((SELECT access.is_owner()) AND client_id IN (SELECT access.rehearsals()));

CREATE FUNCTION access.tidy(OUT signins bigint, OUT invitations bigint, OUT ceremonies bigint, OUT seats bigint, OUT links bigint,
  OUT room_tokens bigint, OUT request_keys bigint, OUT rehearsals uuid[])
LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
DECLARE
  at constant timestamptz := least(access.now(), clock_timestamp());
  -- Who was signed in where, and who was let in by whom, can still be asked when a misuse comes to light.
  sign_in_kept constant interval := '30 days';
  -- A page that was left open overnight still learns that its session is over, rather than that it never was.
  seat_kept constant interval := '1 day';
  -- A tab that was left open over a holiday may send its last entry again and must not add it twice.
  request_kept constant interval := '30 days';
  -- Nobody rehearses for a day; what is still open then was forgotten.
  rehearsal_lasts constant interval := '1 day';
  ended record;
BEGIN
  DELETE FROM access.signin
  WHERE least(ends_at, closed_at, seen_at + interval '30 minutes') < at - sign_in_kept; -- least passes over NULL
  GET DIAGNOSTICS signins = ROW_COUNT;
  DELETE FROM access.invitation WHERE least(ends_at, spent_at) < at - sign_in_kept;
  GET DIAGNOSTICS invitations = ROW_COUNT;
  -- These two open nothing once their time is over, and nobody asks about them.
  DELETE FROM access.ceremony WHERE ends_at < at;
  GET DIAGNOSTICS ceremonies = ROW_COUNT;
  DELETE FROM access.room_token WHERE ends_at < at;
  GET DIAGNOSTICS room_tokens = ROW_COUNT;

  rehearsals := '{}';
  FOR ended IN
    UPDATE public.session SET ended_at = at, version = version + 1
    WHERE ended_at IS NULL AND opened_at < at - rehearsal_lasts AND client_id IN (SELECT r.client_id FROM access.rehearsal r)
    RETURNING id, client_id
  LOOP
    PERFORM access.audit('rehearsal.end', ended.client_id, ended.id);
    rehearsals := rehearsals || ended.id;
  END LOOP;

  DELETE FROM access.seat s USING access.gate g WHERE g.session_id = s.session_id AND g.ended_at < at - seat_kept;
  GET DIAGNOSTICS seats = ROW_COUNT;
  -- A link carries its code. One that is over stays while a seat that was taken through it does.
  DELETE FROM access.join_link l
  WHERE NOT EXISTS (SELECT FROM access.seat s WHERE s.link_id = l.id)
    AND (least(l.ends_at, l.revoked_at) < at - seat_kept
      OR EXISTS (SELECT FROM access.gate g WHERE g.session_id = l.session_id AND g.ended_at < at - seat_kept));
  GET DIAGNOSTICS links = ROW_COUNT;

  DELETE FROM access.request_key WHERE kept_at < at - request_kept;
  GET DIAGNOSTICS request_keys = ROW_COUNT;
END $$;

REVOKE ALL ON FUNCTION access.keys_in_use(), access.key_check(integer), access.keys_to_try(integer),
  access.keep_key_check(integer, bytea), access.tidy() FROM PUBLIC;
GRANT EXECUTE ON FUNCTION access.keys_in_use(), access.key_check(integer), access.keys_to_try(integer),
  access.keep_key_check(integer, bytea), access.tidy() TO leeward_app;
