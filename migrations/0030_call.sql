-- Why: the call ran in another program. Picture and voice go from page to page now, by the practice's relay alone unless it says otherwise: a direct
-- connection tells each page the other's address.

ALTER TABLE practice ADD COLUMN direct_calls boolean NOT NULL DEFAULT false;
-- A client who is not seen is followed by nobody: after so many seconds without picture or sound a set comes to rest.
ALTER TABLE practice ADD COLUMN unseen_seconds smallint NOT NULL DEFAULT 5 CHECK (unseen_seconds BETWEEN 3 AND 15);
GRANT UPDATE (direct_calls, unseen_seconds) ON practice TO leeward_app;
