-- Why: who is asking was found out anew for every row that a policy's function looked at: with 60
-- clients, seconds for a page. A scalar sub-select is asked once for a statement. Nothing else of
-- these functions changes.

CREATE OR REPLACE FUNCTION access.my_signin() RETURNS uuid LANGUAGE sql STABLE SECURITY DEFINER SET search_path = '' AS $$
  SELECT s.id FROM access.signin s JOIN access.member m ON m.id = s.member_id
  WHERE (SELECT access.kind()) = 'member' AND s.token_hash = (SELECT access.token_hash())
    AND s.closed_at IS NULL AND s.ends_at > (SELECT access.now())
    AND s.seen_at > (SELECT access.now()) - interval '30 minutes' AND m.left_at IS NULL $$;

CREATE OR REPLACE FUNCTION access.me() RETURNS uuid LANGUAGE sql STABLE SECURITY DEFINER SET search_path = '' AS
  $$ SELECT member_id FROM access.signin WHERE id = (SELECT access.my_signin()) $$;

CREATE OR REPLACE FUNCTION access.has_role(wanted text) RETURNS boolean LANGUAGE sql STABLE SECURITY DEFINER SET search_path = '' AS
  $$ SELECT EXISTS (SELECT FROM access.member WHERE id = (SELECT access.me()) AND wanted = ANY (roles)) $$;

CREATE OR REPLACE FUNCTION access.my_clients() RETURNS SETOF uuid LANGUAGE sql STABLE SECURITY DEFINER SET search_path = '' AS $$
  SELECT client_id FROM access.care_link
  WHERE member_id = (SELECT access.me()) AND since <= (SELECT access.now()) AND (until IS NULL OR until > (SELECT access.now())) $$;

CREATE OR REPLACE FUNCTION access.my_room() RETURNS uuid LANGUAGE sql STABLE SECURITY DEFINER SET search_path = '' AS $$
  SELECT session_id FROM access.room_token
  WHERE (SELECT access.kind()) = 'room' AND token_hash = (SELECT access.token_hash()) AND ends_at > (SELECT access.now()) $$;

CREATE OR REPLACE FUNCTION access.my_room_client() RETURNS uuid LANGUAGE sql STABLE SECURITY DEFINER SET search_path = '' AS
  $$ SELECT client_id FROM access.gate WHERE session_id = (SELECT access.my_room()) $$;

CREATE OR REPLACE FUNCTION access.seat_within(after interval) RETURNS uuid LANGUAGE sql STABLE SECURITY DEFINER SET search_path = '' AS $$
  SELECT s.session_id FROM access.seat s JOIN access.gate g USING (session_id)
  WHERE (SELECT access.kind()) = 'seat' AND s.token_hash = (SELECT access.token_hash()) AND s.taken_at IS NOT NULL AND s.closed_at IS NULL
    AND (g.ended_at IS NULL OR g.ended_at > (SELECT access.now()) - after) $$;

CREATE OR REPLACE FUNCTION access.care_links() RETURNS TABLE (member_id uuid, client_id uuid, since timestamptz, until timestamptz)
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = '' AS $$
  SELECT c.member_id, c.client_id, c.since, c.until FROM access.care_link c
  WHERE c.member_id = (SELECT access.me()) OR (SELECT access.has_role('lead')) $$;

CREATE OR REPLACE FUNCTION access.whoami() RETURNS TABLE (signin_id uuid, member_id uuid, name text, roles text[], passkeys bigint)
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = '' AS $$
  SELECT (SELECT access.my_signin()), m.id, m.name, m.roles, (SELECT count(*) FROM access.passkey p WHERE p.member_id = m.id)
  FROM access.member m WHERE m.id = (SELECT access.me()) $$;

-- The same for the ratings that count: the planner took the search for the start of a chain of
-- corrections for the work of every row, and compiled machine code for seconds. As a function it is
-- reckoned as what it is: rare.
CREATE FUNCTION first_asked_at(corrected uuid) RETURNS timestamptz LANGUAGE sql STABLE SET search_path = '' AS $$
  WITH RECURSIVE earlier AS (
    SELECT e.replaces, e.at FROM public.rating e WHERE e.id = corrected
    UNION ALL SELECT e.replaces, e.at FROM earlier JOIN public.rating e ON e.id = earlier.replaces)
  SELECT at FROM earlier WHERE replaces IS NULL $$;

CREATE OR REPLACE VIEW standing_rating WITH (security_invoker = true) AS
SELECT r.id, r.client_id, r.session_id, r.target_id, r.set_id, r.scale, r.value, r.moment, r.entered_by, r.at,
  CASE WHEN r.replaces IS NULL THEN r.at ELSE first_asked_at(r.replaces) END AS asked_at
FROM rating r
WHERE r.value IS NOT NULL AND NOT EXISTS (SELECT FROM rating later WHERE later.replaces = r.id);
