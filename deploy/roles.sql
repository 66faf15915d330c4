-- Roles and database of Leeward, made by a superuser once; running it again changes nothing that is right.
--     sudo -u postgres psql --no-psqlrc --set ON_ERROR_STOP=1 --file deploy/roles.sql
-- The owner migrates. The app role serves and is bound by the row-level-security policies; signing people in is the part of
-- a role of its own, which reaches no table. None may make roles, be a superuser or bypass policies, and none but the owner
-- may make anything in the database, not even for itself: the portal refuses to serve otherwise.

SELECT format('CREATE ROLE %I LOGIN NOSUPERUSER NOBYPASSRLS NOCREATEDB NOCREATEROLE', name)
FROM unnest(ARRAY['leeward_owner', 'leeward_app', 'leeward_signin']) AS name
WHERE NOT EXISTS (SELECT FROM pg_roles WHERE rolname = name) \gexec

SELECT 'CREATE DATABASE leeward OWNER leeward_owner'
WHERE NOT EXISTS (SELECT FROM pg_database WHERE datname = 'leeward') \gexec

REVOKE TEMPORARY ON DATABASE leeward FROM PUBLIC;
