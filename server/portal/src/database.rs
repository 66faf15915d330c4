//! The pools, the migrations, and the check that refuses to serve on an unsafe database.

use sqlx::postgres::{PgConnectOptions, PgPoolOptions};
use sqlx::{ConnectOptions, Connection, PgConnection, PgPool};

use crate::clock::World;
use crate::patience::{CONNECTION, IDLE_IN_TRANSACTION, LOCK, READY, STATEMENT};
use crate::subject::Subject;

/// All migrations, embedded.
pub static MIGRATIONS: sqlx::migrate::Migrator = sqlx::migrate!("../../migrations");

/// The database as the portal sees it. Connections are only to be had through `subject.rs`.
#[derive(Clone)]
pub struct Database {
    pub(crate) pools: Pools,
    pub(crate) world: World,
}

/// Connections, kept apart by who would suffer from the wait of another: no flood of pages holds up a room's record, and
/// neither holds up the start of a set. 20 in all, of the 100 that Postgres has by default.
#[derive(Clone)]
pub(crate) struct Pools {
    pub pages: PgPool,
    /// What rooms write down and read again.
    pub rooms: PgPool,
    /// New sets.
    pub starts: PgPool,
}

/// Why the portal does not serve on this database.
#[derive(Debug, thiserror::Error)]
pub enum Unfit {
    /// Not reachable, or the migrations have not run.
    #[error("the database cannot be used: {0}. Is it running, and has `leeward migrate` been run?")]
    Unreachable(#[from] sqlx::Error),
    /// The role could pass by the policies.
    #[error(
        "the role \"{0}\" owns tables, is a superuser or may bypass row security. Use the app role (leeward_app) in LEEWARD_DATABASE_URL"
    )]
    Role(String),
    /// Tables without forced row security.
    #[error("row security is not forced on: {0}. Run `leeward migrate`, and do not change these tables by hand")]
    Open(String),
    /// Commits could be lost.
    #[error("synchronous_commit is \"{0}\": what is shown as saved could be lost. Set it to on")]
    Commit(String),
    /// Not all migrations are in.
    #[error("the database is at migration {found} and this version needs {needed}. Run `leeward migrate`")]
    Version {
        /// The highest that is in.
        found: i64,
        /// The highest this binary has.
        needed: i64,
    },
}

impl Database {
    /// Connects as the app role and checks that the database is fit to hold a practice.
    ///
    /// # Errors
    /// See [`Unfit`]; each says what to do.
    pub async fn connect(url: &str, world: World) -> Result<Self, Unfit> {
        let options: PgConnectOptions = url.parse()?;
        Self::connect_with(options, world).await
    }

    /// As [`Database::connect`], with options that were parsed already.
    ///
    /// # Errors
    /// See [`Unfit`].
    pub async fn connect_with(options: PgConnectOptions, world: World) -> Result<Self, Unfit> {
        let options = options.application_name("leeward").options(settings()).disable_statement_logging();
        let pool = |most| PgPoolOptions::new().max_connections(most).acquire_timeout(CONNECTION);
        let pages = pool(10).connect_with(options.clone()).await?;
        check(&pages).await?;
        let (rooms, starts) = (pool(6).connect_lazy_with(options.clone()), pool(4).connect_lazy_with(options));
        Ok(Self { pools: Pools { pages, rooms, starts }, world })
    }

    /// Connections that are open, and those of them in use, over all pools.
    #[must_use]
    pub fn connections(&self) -> (u32, u32) {
        let Pools { pages, rooms, starts } = &self.pools;
        let used = |pool: &PgPool| pool.size().saturating_sub(u32::try_from(pool.num_idle()).unwrap_or(u32::MAX));
        let both = |pool: &PgPool| (pool.size(), used(pool));
        [pages, rooms, starts].map(both).into_iter().fold((0, 0), |(open, busy), (size, used)| (open + size, busy + used))
    }

    /// Whether the database answers in time.
    pub async fn answers(&self) -> bool {
        tokio::time::timeout(READY, self.look(&Subject::Visitor)).await.is_ok_and(|opened| opened.is_ok())
    }
}

/// What each connection asks of the server. Its limits free what a portal that died had locked, and come before ours.
fn settings() -> [(&'static str, String); 4] {
    let ms = |limit: std::time::Duration| limit.as_millis().to_string();
    [
        // Compiling a statement to machine code takes longer than any statement here runs.
        ("jit", "off".into()),
        ("statement_timeout", ms(STATEMENT)),
        ("lock_timeout", ms(LOCK)),
        ("idle_in_transaction_session_timeout", ms(IDLE_IN_TRANSACTION)),
    ]
}

/// Runs the migrations as the owner.
///
/// # Errors
/// When the database is not reachable or a migration fails; then none of that migration is kept.
pub async fn migrate(owner_url: &str) -> Result<(), sqlx::Error> {
    let mut connection = PgConnection::connect(owner_url).await?;
    MIGRATIONS.run(&mut connection).await?;
    connection.close().await
}

async fn check(pool: &PgPool) -> Result<(), Unfit> {
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
    check_settings(pool).await
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
