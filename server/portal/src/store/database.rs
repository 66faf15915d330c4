//! The pools and the migrations. What is demanded of a database before it is served stands in `fit`.

use sqlx::postgres::{PgConnectOptions, PgPoolOptions};
use sqlx::{ConnectOptions, Connection, PgConnection, PgPool};

pub(crate) use super::queries::hold_folds;
use crate::base::clock::World;
use crate::store::error::Error;
use crate::store::fit;
use crate::store::patience::{CONNECTION, IDLE_IN_TRANSACTION, LOCK, READY, STATEMENT};
use crate::store::subject::Subject;

/// All migrations, embedded.
pub static MIGRATIONS: sqlx::migrate::Migrator = sqlx::migrate!("../../migrations");

/// The database as the portal sees it. Connections are only to be had through `subject.rs`.
#[derive(Clone)]
pub struct Database {
    pub(crate) pools: Pools,
    pub(crate) world: World,
}

/// How the portal connects: each part as the role that may do it and nothing else.
#[derive(Clone)]
pub struct Access {
    /// For everything but signing in (leeward_app).
    pub app: PgConnectOptions,
    /// For signing in alone (leeward_signin).
    pub signin: PgConnectOptions,
}

/// Who signs in, unless LEEWARD_SIGNIN_URL says otherwise.
const SIGN_IN_ROLE: &str = "leeward_signin";

impl From<PgConnectOptions> for Access {
    /// Signing in goes to the same place under its own name.
    fn from(app: PgConnectOptions) -> Self {
        Self { signin: app.clone().username(SIGN_IN_ROLE), app }
    }
}

/// Connections, kept apart by who would suffer from the wait of another: no flood of pages holds up a room's record, and
/// neither holds up the start of a set. 24 in all, of the 100 that Postgres has by default.
#[derive(Clone)]
pub(crate) struct Pools {
    pub pages: PgPool,
    /// What rooms write down and read again.
    pub rooms: PgPool,
    /// New sets.
    pub starts: PgPool,
    /// Signing in: in a role of its own, so that who has the others cannot become somebody.
    pub signin: PgPool,
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
    /// The app role could put its own types and tables into the way of functions.
    #[error(
        "the role \"{role}\" may make objects in this database, and with them get past row security. Run as the database's owner: {cure}"
    )]
    Makes {
        /// The app role.
        role: String,
        /// What takes the right away.
        cure: String,
    },
    /// Functions of the owner's rights that could run foreign code.
    #[error(
        "these functions run with the owner's rights and do not look for names in the system first: {0}. Run `leeward migrate`, \
         and do not change functions by hand"
    )]
    Paths(String),
    /// Nobody can sign in: the role for that does not get in.
    #[error(
        "the portal cannot connect as the role that signs people in: {0}. Run deploy/roles.sql again if there is no role leeward_signin; \
         where it has a password or another name, set LEEWARD_SIGNIN_URL"
    )]
    NoSignIn(#[source] sqlx::Error),
    /// The role that signs people in could do other things too, or the app role could sign in.
    #[error(
        "the role \"{role}\" {what}. Signing in needs a role that does nothing else (leeward_signin): see LEEWARD_SIGNIN_URL, run \
             deploy/roles.sql and `leeward migrate`, and do not grant rights by hand"
    )]
    SignIn {
        /// The role of LEEWARD_SIGNIN_URL.
        role: String,
        /// What is wrong with it.
        what: String,
    },
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
    /// Connects and checks that the database is fit to hold a practice. Options of the app role alone do where signing in
    /// goes by the role's usual name.
    ///
    /// # Errors
    /// See [`Unfit`]; each says what to do.
    pub async fn connect_with(access: impl Into<Access>, world: World) -> Result<Self, Unfit> {
        let Access { app, signin } = access.into();
        let set = |options: PgConnectOptions| options.application_name("leeward").options(settings()).disable_statement_logging();
        let (app, signin) = (set(app), set(signin));
        let pool = |most| PgPoolOptions::new().max_connections(most).acquire_timeout(CONNECTION);
        let pages = pool(10).connect_with(app.clone()).await?;
        fit::check(&pages).await?;
        let signin = pool(4).connect_with(signin).await.map_err(fit::not_let_in)?;
        fit::check_sign_in(&signin, &pages).await?;
        let (rooms, starts) = (pool(6).connect_lazy_with(app.clone()), pool(4).connect_lazy_with(app));
        Ok(Self { pools: Pools { pages, rooms, starts, signin }, world })
    }

    /// Connections that are open, and those of them in use, over all pools.
    #[must_use]
    pub fn connections(&self) -> (u32, u32) {
        let Pools { pages, rooms, starts, signin } = &self.pools;
        let used = |pool: &PgPool| pool.size().saturating_sub(u32::try_from(pool.num_idle()).unwrap_or(u32::MAX));
        let both = |pool: &PgPool| (pool.size(), used(pool));
        [pages, rooms, starts, signin].map(both).into_iter().fold((0, 0), |(open, busy), (size, used)| (open + size, busy + used))
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

/// Does `work` in one transaction as the database's owner: what is folded is made anew like that.
///
/// # Errors
/// [`Error::Database`], also when `owner_url` is not the owner's: nothing was done.
pub async fn as_owner<T>(owner_url: &str, work: impl AsyncFnOnce(&mut PgConnection) -> sqlx::Result<T>) -> Result<T, Error> {
    let mut db = PgConnection::connect(owner_url).await?;
    let mut tx = db.begin().await?;
    let done = work(&mut tx).await?;
    tx.commit().await?;
    Ok(done)
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
