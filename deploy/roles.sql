-- Roles and database of Leeward, made by a superuser once; running it again changes nothing.
--     sudo -u postgres psql --no-psqlrc --set ON_ERROR_STOP=1 --file deploy/roles.sql
-- The owner migrates; the app role serves and is bound by the row-level-security policies. Neither may make roles,
-- be a superuser or bypass policies: the portal refuses to serve otherwise.

SELECT format('CREATE ROLE %I LOGIN NOSUPERUSER NOBYPASSRLS NOCREATEDB NOCREATEROLE', name)
FROM unnest(ARRAY['leeward_owner', 'leeward_app']) AS name
WHERE NOT EXISTS (SELECT FROM pg_roles WHERE rolname = name) \gexec

SELECT 'CREATE DATABASE leeward OWNER leeward_owner'
WHERE NOT EXISTS (SELECT FROM pg_database WHERE datname = 'leeward') \gexec
