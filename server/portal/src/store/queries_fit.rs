//! SQL of the check at the start: what the database says of itself.

use sqlx::PgPool;

type Done<T> = Result<T, sqlx::Error>;

pub(super) struct RoleRow {
    pub(super) name: String,
    /// Owns tables, is a superuser, or may bypass row security.
    pub(super) r#unsafe: bool,
}

/// The role of these connections.
pub(super) async fn role(pool: &PgPool) -> Done<RoleRow> {
    sqlx::query_as!(
        RoleRow,
        r#"SELECT current_user::text AS "name!", (rolsuper OR rolbypassrls OR EXISTS
             (SELECT FROM pg_class WHERE relowner = r.oid AND relnamespace = 'public'::regnamespace)) AS "unsafe!"
           FROM pg_roles r WHERE rolname = current_user"#
    )
    .fetch_one(pool)
    .await
}

/// Tables on which row security is not forced.
pub(super) async fn open_tables(pool: &PgPool) -> Done<Vec<String>> {
    sqlx::query_scalar!(
        r#"SELECT c.relname::text AS "name!" FROM pg_class c
           WHERE c.relkind IN ('r', 'p') AND c.relnamespace = 'public'::regnamespace AND c.relname <> '_sqlx_migrations'
             AND NOT (c.relrowsecurity AND c.relforcerowsecurity) ORDER BY 1"#
    )
    .fetch_all(pool)
    .await
}

/// The setting synchronous_commit.
pub(super) async fn commit(pool: &PgPool) -> Done<String> {
    sqlx::query_scalar!(r#"SELECT current_setting('synchronous_commit') AS "value!""#).fetch_one(pool).await
}

/// The highest migration that is in.
pub(super) async fn version(pool: &PgPool) -> Done<i64> {
    sqlx::query_scalar!(r#"SELECT access.schema_version() AS "version!""#).fetch_one(pool).await
}

/// What takes away the rights to make objects that this role has, a statement each.
pub(super) async fn cures(pool: &PgPool) -> Done<Vec<String>> {
    sqlx::query_scalar!(
        r#"SELECT format('REVOKE %s ON DATABASE %I FROM PUBLIC, %I', what, current_database(), current_user) AS "cure!"
           FROM unnest(ARRAY['TEMPORARY', 'CREATE']) what WHERE has_database_privilege(current_database(), what)
           UNION ALL
           SELECT format('REVOKE CREATE ON SCHEMA %I FROM PUBLIC, %I', nspname, current_user) FROM pg_namespace
           WHERE nspname !~ '^pg_' AND has_schema_privilege(oid, 'CREATE')"#
    )
    .fetch_all(pool)
    .await
}

/// Functions of the owner's rights that do not look for names in the system first.
pub(super) async fn paths_elsewhere(pool: &PgPool) -> Done<Vec<String>> {
    sqlx::query_scalar!(
        r#"SELECT p.oid::regprocedure::text AS "name!" FROM pg_proc p JOIN pg_namespace n ON n.oid = p.pronamespace
           WHERE p.prosecdef AND n.nspname !~ '^pg_' AND n.nspname <> 'information_schema'
             AND NOT coalesce('search_path=pg_catalog, pg_temp' = ANY (p.proconfig), false) ORDER BY 1"#
    )
    .fetch_all(pool)
    .await
}

/// The name of the role of these connections.
pub(super) async fn role_name(pool: &PgPool) -> Done<String> {
    sqlx::query_scalar!(r#"SELECT current_user::text AS "name!""#).fetch_one(pool).await
}

pub(super) struct SignInRow {
    pub(super) name: String,
    /// Could do more than any member: a superuser, one that bypasses row security, one that makes roles or databases.
    pub(super) mighty: bool,
    /// The app role itself, or a member of it, or the other way round.
    pub(super) same: bool,
    /// May open sign-ins.
    pub(super) signs_in: bool,
}

/// The role that signs people in, beside the app role of that name.
pub(super) async fn sign_in_role(pool: &PgPool, app: &str) -> Done<SignInRow> {
    sqlx::query_as!(
        SignInRow,
        r#"SELECT rolname::text AS "name!", (rolsuper OR rolbypassrls OR rolcreaterole OR rolcreatedb) AS "mighty!",
             (pg_has_role(rolname, $1::text::name, 'MEMBER') OR pg_has_role($1::text::name, rolname, 'MEMBER')) AS "same!",
             has_function_privilege('access.open_signin(uuid, bytea, uuid, text)', 'EXECUTE') AS "signs_in!"
           FROM pg_roles WHERE rolname = current_user"#,
        app
    )
    .fetch_one(pool)
    .await
}

/// Tables that this role reaches.
pub(super) async fn tables(pool: &PgPool) -> Done<Vec<String>> {
    sqlx::query_scalar!(
        r#"SELECT c.oid::regclass::text AS "name!" FROM pg_class c JOIN pg_namespace n ON n.oid = c.relnamespace
           WHERE c.relkind IN ('r', 'p', 'v', 'm', 'f') AND n.nspname !~ '^pg_' AND n.nspname <> 'information_schema'
             AND (has_table_privilege(c.oid, 'SELECT, INSERT, UPDATE, DELETE, TRUNCATE, REFERENCES, TRIGGER')
               OR has_any_column_privilege(c.oid, 'SELECT, INSERT, UPDATE, REFERENCES')) ORDER BY 1"#
    )
    .fetch_all(pool)
    .await
}

/// What both may call besides what they may share: leaving a row in the trail, and inviting oneself to a further passkey.
pub(super) async fn shared_functions(pool: &PgPool, app: &str) -> Done<Vec<String>> {
    sqlx::query_scalar!(
        r#"SELECT p.oid::regprocedure::text AS "name!" FROM pg_proc p JOIN pg_namespace n ON n.oid = p.pronamespace
           WHERE n.nspname !~ '^pg_' AND n.nspname <> 'information_schema' AND p.proname NOT IN ('audit', 'invite')
             AND p.prorettype <> 'trigger'::regtype
             AND has_function_privilege(p.oid, 'EXECUTE') AND has_function_privilege($1::text, p.oid, 'EXECUTE') ORDER BY 1"#,
        app
    )
    .fetch_all(pool)
    .await
}
