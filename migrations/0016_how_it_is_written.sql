-- Why: how a practice writes its days and times is its own affair, and whether a client's page says whom they meet as well; and a
-- page that says "Saved" takes the time from what was kept, not from its address.

ALTER TABLE practice
  ADD COLUMN day_order text NOT NULL DEFAULT 'day_first' CHECK (day_order IN ('day_first', 'month_first', 'year_first')),
  ADD COLUMN clock smallint NOT NULL DEFAULT 24 CHECK (clock IN (12, 24)),   -- hours
  ADD COLUMN tells_whom boolean NOT NULL DEFAULT false;                      -- whether a client's page says whom they meet
-- Administrators alone: the policy `change` of 0003 stands over it.
GRANT UPDATE (day_order, clock, tells_whom) ON practice TO leeward_app;

INSERT INTO access.audit_act VALUES ('member', 'practice.settings.view', false), ('member', 'practice.settings.change', false);

-- What the asker's request of that key was answered, and when, for some minutes: the page that it led to says so.
CREATE FUNCTION access.saved_now(which uuid) RETURNS TABLE (answer text, at timestamptz)
LANGUAGE plpgsql STABLE SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
DECLARE me uuid := access.me();
BEGIN
  RETURN QUERY SELECT r.answer, r.kept_at FROM access.request_key r
    WHERE r.member_id = me AND r.key = which AND r.answer IS NOT NULL AND r.kept_at > access.now() - interval '5 minutes';
END $$;
REVOKE ALL ON FUNCTION access.saved_now(uuid) FROM PUBLIC;
GRANT EXECUTE ON FUNCTION access.saved_now(uuid) TO leeward_app;

-- The name of whom the client of the asker's seat meets, where the practice says so: of the session's own clinician, while they treat this client.
CREATE FUNCTION access.whom_we_meet() RETURNS text LANGUAGE plpgsql STABLE SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
DECLARE here uuid := access.my_seat();
BEGIN
  IF here IS NULL OR (SELECT p.tells_whom FROM public.practice p) IS NOT TRUE THEN RETURN NULL; END IF;
  RETURN (SELECT m.name FROM public.session s JOIN access.member m ON m.id = s.member_id
    WHERE s.id = here AND EXISTS (SELECT FROM access.care_link c WHERE c.member_id = s.member_id AND c.client_id = s.client_id AND c.until IS NULL));
END $$;
REVOKE ALL ON FUNCTION access.whom_we_meet() FROM PUBLIC;
GRANT EXECUTE ON FUNCTION access.whom_we_meet() TO leeward_app;
