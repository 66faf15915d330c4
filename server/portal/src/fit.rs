//! The check that refuses to serve on an unsafe database. The database's own wall has to hold when all above it is lost;
//! whether it stands is looked at each time the portal starts.

use sqlx::PgPool;

use crate::database::{MIGRATIONS, Unfit};

/// Whether the app role is bound by the policies, and the database is as the migrations left it.
///
/// # Errors
/// See [`Unfit`].
pub(crate) async fn check(pool: &PgPool) -> Result<(), Unfit> {
    let role = sqlx::query!(
        r#"SELECT current_user::text AS "name!", (rolsuper OR rolbypassrls OR EXISTS
             (SELECT FROM pg_class WHERE relowner = r.oid AND relnamespace = 'public'::regnamespace)) AS "unsafe!"
           FROM pg_roles r WHERE rolname = current_user"#
    )
    .fetch_one(pool)
    .await?;
    if role.r#unsafe {
        return Err(Unfit::Role(role.name));
    }
    let open = sqlx::query_scalar!(
        r#"SELECT c.relname::text AS "name!" FROM pg_class c
           WHERE c.relkind IN ('r', 'p') AND c.relnamespace = 'public'::regnamespace AND c.relname <> '_sqlx_migrations'
             AND NOT (c.relrowsecurity AND c.relforcerowsecurity) ORDER BY 1"#
    )
    .fetch_all(pool)
    .await?;
    if !open.is_empty() {
        return Err(Unfit::Open(open.join(", ")));
    }
    check_settings(pool).await?;
    check_names(pool, role.name).await
}

async fn check_settings(pool: &PgPool) -> Result<(), Unfit> {
    let commit = sqlx::query_scalar!(r#"SELECT current_setting('synchronous_commit') AS "value!""#).fetch_one(pool).await?;
    if commit == "off" || commit == "local" {
        return Err(Unfit::Commit(commit));
    }
    let found = sqlx::query_scalar!(r#"SELECT access.schema_version() AS "version!""#).fetch_one(pool).await?;
    let needed = MIGRATIONS.iter().map(|m| m.version).max().unwrap_or(0);
    if found < needed {
        return Err(Unfit::Version { found, needed });
    }
    Ok(())
}

/// Whether what functions name can be nothing but what it was when they were written.
async fn check_names(pool: &PgPool, role: String) -> Result<(), Unfit> {
    // A restored or copied database has not got the grants of the one it came from.
    let cures = sqlx::query_scalar!(
        r#"SELECT format('REVOKE %s ON DATABASE %I FROM PUBLIC, %I', what, current_database(), current_user) AS "cure!"
           FROM unnest(ARRAY['TEMPORARY', 'CREATE']) what WHERE has_database_privilege(current_database(), what)
           UNION ALL
           SELECT format('REVOKE CREATE ON SCHEMA %I FROM PUBLIC, %I', nspname, current_user) FROM pg_namespace
           WHERE nspname !~ '^pg_' AND has_schema_privilege(oid, 'CREATE')"#
    )
    .fetch_all(pool)
    .await?;
    if !cures.is_empty() {
        return Err(Unfit::Makes { role, cure: cures.join("; ") });
    }
    let elsewhere = sqlx::query_scalar!(
        r#"SELECT p.oid::regprocedure::text AS "name!" FROM pg_proc p JOIN pg_namespace n ON n.oid = p.pronamespace
           WHERE p.prosecdef AND n.nspname !~ '^pg_' AND n.nspname <> 'information_schema'
             AND NOT coalesce('search_path=pg_catalog, pg_temp' = ANY (p.proconfig), false) ORDER BY 1"#
    )
    .fetch_all(pool)
    .await?;
    if elsewhere.is_empty() { Ok(()) } else { Err(Unfit::Paths(elsewhere.join(", "))) }
}

/// Whether the role that signs people in can do just that, and the app role cannot do it.
///
/// # Errors
/// See [`Unfit`].
pub(crate) async fn check_sign_in(signin: &PgPool, app: &PgPool) -> Result<(), Unfit> {
    let app = sqlx::query_scalar!(r#"SELECT current_user::text AS "name!""#).fetch_one(app).await?;
    let role = sqlx::query!(
        r#"SELECT rolname::text AS "name!", (rolsuper OR rolbypassrls OR rolcreaterole OR rolcreatedb) AS "mighty!",
             (pg_has_role(rolname, $1::text::name, 'MEMBER') OR pg_has_role($1::text::name, rolname, 'MEMBER')) AS "same!",
             has_function_privilege('access.open_signin(uuid, bytea, uuid, text)', 'EXECUTE') AS "signs_in!"
           FROM pg_roles WHERE rolname = current_user"#,
        app
    )
    .fetch_one(signin)
    .await?;
    let tables = sqlx::query_scalar!(
        r#"SELECT c.oid::regclass::text AS "name!" FROM pg_class c JOIN pg_namespace n ON n.oid = c.relnamespace
           WHERE c.relkind IN ('r', 'p', 'v', 'm', 'f') AND n.nspname !~ '^pg_' AND n.nspname <> 'information_schema'
             AND (has_table_privilege(c.oid, 'SELECT, INSERT, UPDATE, DELETE, TRUNCATE, REFERENCES, TRIGGER')
               OR has_any_column_privilege(c.oid, 'SELECT, INSERT, UPDATE, REFERENCES')) ORDER BY 1"#
    )
    .fetch_all(signin)
    .await?;
    // What both may: leave a row in the trail, and invite oneself to a further passkey.
    let shared = sqlx::query_scalar!(
        r#"SELECT p.oid::regprocedure::text AS "name!" FROM pg_proc p JOIN pg_namespace n ON n.oid = p.pronamespace
           WHERE n.nspname !~ '^pg_' AND n.nspname <> 'information_schema' AND p.proname NOT IN ('audit', 'invite')
             AND p.prorettype <> 'trigger'::regtype
             AND has_function_privilege(p.oid, 'EXECUTE') AND has_function_privilege($1::text, p.oid, 'EXECUTE') ORDER BY 1"#,
        app
    )
    .fetch_all(signin)
    .await?;
    let what = if role.mighty {
        "is a superuser, may bypass row security, or may make roles or databases".to_owned()
    } else if role.same {
        format!("is the app role \"{app}\", or a member of it, or the other way round")
    } else if !tables.is_empty() {
        format!("reaches tables: {}", tables.join(", "))
    } else if !shared.is_empty() {
        format!("and the app role \"{app}\" may both call {}", shared.join(", "))
    } else if !role.signs_in {
        "may not open sign-ins".to_owned()
    } else {
        return Ok(());
    };
    Err(Unfit::SignIn { role: role.name, what })
}

/// Why the role that signs people in did not get in. PostgreSQL, appendix A: class 28, the role or its password; 42501, it may
/// not connect. Anything else passes by itself as it does for the app role.
pub(crate) fn not_let_in(fault: sqlx::Error) -> Unfit {
    let code = fault.as_database_error().and_then(sqlx::error::DatabaseError::code);
    if code.is_some_and(|code| code.starts_with("28") || code == "42501") { Unfit::NoSignIn(fault) } else { fault.into() }
}
