-- Why: what a clinician prepares before a set: presets of the practice's and of their own, what a
-- client finds comfortable, and a rehearsal that no number of the practice ever counts.

-- ---------------------------------------------------------------------------------------------
-- Presets: in clear, since they say nothing about anybody.

CREATE TABLE preset (
  id uuid PRIMARY KEY,
  member_id uuid REFERENCES access.member,      -- whose it is; null: the practice's
  name text NOT NULL CHECK (length(name) BETWEEN 1 AND 40),
  purpose text NOT NULL CHECK (purpose IN ('processing', 'calm_place')),
  eyes boolean NOT NULL,
  ears boolean NOT NULL,
  hands boolean NOT NULL,
  -- The limits of leeward_core::safety, which looks at each preset before it is kept or used.
  rate double precision NOT NULL CHECK (rate BETWEEN 0.3 AND 2),        -- cycles a second
  width double precision NOT NULL CHECK (width BETWEEN 2 AND 40),       -- degrees
  cycles integer CHECK (cycles BETWEEN 1 AND 200),                      -- null: open-ended
  made_at timestamptz NOT NULL,
  put_away_at timestamptz,
  version integer NOT NULL CHECK (version > 0),
  CHECK (eyes OR ears OR hands),
  -- Work on a calm place is short and slow: 6 to 8 cycles (common practice, no source); the ends are ours.
  CHECK (purpose <> 'calm_place' OR (cycles IS NOT NULL AND cycles <= 12 AND rate <= 1))
);

-- Slow, standard and fast: van Veen et al. 2015, doi 10.3389/fpsyt.2015.00045, cycles a second. 24 cycles:
-- a handbook's starting point (Shapiro 2018, from memory).
INSERT INTO preset (id, name, purpose, eyes, ears, hands, rate, width, cycles, made_at, version) VALUES
  (gen_random_uuid(), 'Slow', 'processing', true, false, false, 0.8, 18, 24, now(), 1),
  (gen_random_uuid(), 'Standard', 'processing', true, false, false, 1.0, 18, 24, now(), 1),
  (gen_random_uuid(), 'Fast', 'processing', true, false, false, 1.2, 18, 24, now(), 1),
  (gen_random_uuid(), 'Calm place', 'calm_place', true, false, false, 0.5, 18, 6, now(), 1);

ALTER TABLE preset ENABLE ROW LEVEL SECURITY;
ALTER TABLE preset FORCE ROW LEVEL SECURITY;
-- The practice's are for every member; one's own for nobody else.
CREATE POLICY read ON preset FOR SELECT USING (
  (member_id IS NULL AND (SELECT access.me()) IS NOT NULL) OR member_id = (SELECT access.me()));
CREATE POLICY add ON preset FOR INSERT WITH CHECK (
  (member_id IS NULL AND ((SELECT access.has_role('lead')) OR (SELECT access.has_role('administrator'))))
  OR (member_id = (SELECT access.me()) AND (SELECT access.has_role('clinician'))));
CREATE POLICY change ON preset FOR UPDATE USING (
  (member_id IS NULL AND ((SELECT access.has_role('lead')) OR (SELECT access.has_role('administrator'))))
  OR (member_id = (SELECT access.me()) AND (SELECT access.has_role('clinician'))));
GRANT SELECT, INSERT, UPDATE ON preset TO leeward_app;

-- ---------------------------------------------------------------------------------------------
-- Comfort: one sheet a client, filled in preparation. Choices from lists and measures, no words.

CREATE TABLE comfort (
  client_id uuid PRIMARY KEY REFERENCES client,
  path text NOT NULL,               -- wire::Path
  dot double precision NOT NULL CHECK (dot BETWEEN 0.3 AND 3),          -- degrees
  comfort jsonb NOT NULL,           -- wire::Comfort
  filled_at timestamptz NOT NULL,
  version integer NOT NULL CHECK (version > 0)
);

ALTER TABLE comfort ENABLE ROW LEVEL SECURITY;
ALTER TABLE comfort FORCE ROW LEVEL SECURITY;
CREATE POLICY read ON comfort FOR SELECT USING (
  client_id IN (SELECT access.my_clients()) OR client_id = (SELECT access.my_room_client()));
CREATE POLICY add ON comfort FOR INSERT WITH CHECK (client_id IN (SELECT access.my_clients()));
CREATE POLICY change ON comfort FOR UPDATE USING (client_id IN (SELECT access.my_clients()));
GRANT SELECT, INSERT, UPDATE ON comfort TO leeward_app;

-- A room starts from what its client was comfortable with last, so it may read the figures of the
-- client's earlier sets. It still writes into its own session alone.
CREATE POLICY read_earlier ON stimulus_set FOR SELECT USING (client_id = (SELECT access.my_room_client()));
CREATE POLICY read_earlier ON set_order FOR SELECT USING (client_id = (SELECT access.my_room_client()));
CREATE POLICY read_earlier ON set_ending FOR SELECT USING (client_id = (SELECT access.my_room_client()));
CREATE POLICY read_earlier ON set_evidence FOR SELECT USING (client_id = (SELECT access.my_room_client()));

-- ---------------------------------------------------------------------------------------------
-- Rehearsal: a pretend client for each clinician. The mark is made together with the record and has no
-- way of being set or taken off later, so that no real client can drop out of the numbers.

CREATE TABLE access.rehearsal (
  member_id uuid PRIMARY KEY REFERENCES access.member,
  client_id uuid NOT NULL UNIQUE REFERENCES client DEFERRABLE INITIALLY DEFERRED
);

-- All pretend clients. Whatever counts or lists clients leaves these out.
CREATE FUNCTION access.rehearsals() RETURNS SETOF uuid LANGUAGE sql STABLE SECURITY DEFINER SET search_path = '' AS
  $$ SELECT client_id FROM access.rehearsal $$;

-- The asker's own, if there is one. The member's row is locked, so that two requests cannot make two.
CREATE FUNCTION access.my_rehearsal() RETURNS uuid LANGUAGE plpgsql SECURITY DEFINER SET search_path = '' AS $$
DECLARE who uuid := access.me();
BEGIN
  PERFORM FROM access.member WHERE id = who FOR UPDATE;
  RETURN (SELECT client_id FROM access.rehearsal WHERE member_id = who);
END $$;

-- Takes on a new client as the asker's pretend one. `take_on` refuses whoever is a client already.
CREATE FUNCTION access.take_on_rehearsal(link_id uuid, client uuid) RETURNS void
LANGUAGE plpgsql SECURITY DEFINER SET search_path = '' AS $$
BEGIN
  PERFORM access.take_on(link_id, client);
  INSERT INTO access.rehearsal VALUES (access.me(), client);
END $$;

-- Whether the asker's seat is in a rehearsal.
CREATE FUNCTION access.seat_rehearses() RETURNS boolean LANGUAGE sql STABLE SECURITY DEFINER SET search_path = '' AS $$
  SELECT EXISTS (SELECT FROM access.seat s JOIN access.gate g USING (session_id) JOIN access.rehearsal r USING (client_id)
    WHERE access.kind() = 'seat' AND s.token_hash = access.token_hash()) $$;

REVOKE ALL ON FUNCTION access.rehearsals(), access.my_rehearsal(), access.take_on_rehearsal(uuid, uuid), access.seat_rehearses() FROM PUBLIC;
GRANT EXECUTE ON FUNCTION access.rehearsals(), access.my_rehearsal(), access.take_on_rehearsal(uuid, uuid), access.seat_rehearses() TO leeward_app;
