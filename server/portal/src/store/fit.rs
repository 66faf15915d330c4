//! The check that refuses to serve on an unsafe database. The database's own wall has to hold when all above it is lost;
//! whether it stands is looked at each time the portal starts.

use sqlx::PgPool;

use super::queries_fit;
use crate::store::database::{MIGRATIONS, Unfit};

/// Whether the app role is bound by the policies, and the database is as the migrations left it.
///
/// # Errors
/// See [`Unfit`].
pub(crate) async fn check(pool: &PgPool) -> Result<(), Unfit> {
    let role = queries_fit::role(pool).await?;
    if role.r#unsafe {
        return Err(Unfit::Role(role.name));
    }
    let open = queries_fit::open_tables(pool).await?;
    if !open.is_empty() {
        return Err(Unfit::Open(open.join(", ")));
    }
    check_settings(pool).await?;
    check_names(pool, role.name).await
}

async fn check_settings(pool: &PgPool) -> Result<(), Unfit> {
    let commit = queries_fit::commit(pool).await?;
    if commit == "off" || commit == "local" {
        return Err(Unfit::Commit(commit));
    }
    let found = queries_fit::version(pool).await?;
    let needed = MIGRATIONS.iter().map(|m| m.version).max().unwrap_or(0);
    if found < needed {
        return Err(Unfit::Version { found, needed });
    }
    Ok(())
}

/// Whether what functions name can be nothing but what it was when they were written.
async fn check_names(pool: &PgPool, role: String) -> Result<(), Unfit> {
    // A restored or copied database has not got the grants of the one it came from.
    let cures = queries_fit::cures(pool).await?;
    if !cures.is_empty() {
        return Err(Unfit::Makes { role, cure: cures.join("; ") });
    }
    let elsewhere = queries_fit::paths_elsewhere(pool).await?;
    if elsewhere.is_empty() { Ok(()) } else { Err(Unfit::Paths(elsewhere.join(", "))) }
}

/// Whether the role that signs people in can do just that, and the app role cannot do it.
///
/// # Errors
/// See [`Unfit`].
pub(crate) async fn check_sign_in(signin: &PgPool, app: &PgPool) -> Result<(), Unfit> {
    let app = queries_fit::role_name(app).await?;
    let role = queries_fit::sign_in_role(signin, &app).await?;
    let tables = queries_fit::tables(signin).await?;
    let shared = queries_fit::shared_functions(signin, &app).await?;
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
