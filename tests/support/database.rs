//! A database of one's own, copied from a template that is migrated once, or from one that a dump was restored into once.

use std::collections::BTreeSet;
use std::path::{Path, PathBuf};
use std::process::Command;
use std::str::FromStr;
use std::sync::{Arc, Mutex};

use leeward::base::clock::{Machine, World};
use leeward::base::ids::new_id;
use leeward::store::database::{MIGRATIONS, migrate};
use sha2::{Digest, Sha256};
use sqlx::postgres::{PgConnectOptions, PgPoolOptions};
use sqlx::{AssertSqlSafe, ConnectOptions, Connection, Executor, PgConnection, PgPool};

/// Who owns the tables.
const OWNER: &str = "leeward_owner";

/// A migrated database in three roles. A new connection is dear: each is made once, when it is needed.
#[derive(Clone)]
pub struct TestDatabase {
    name: String,
    /// The server it lies on, as a superuser.
    server: PgConnectOptions,
    /// As a superuser: sees every row, for looking at what is really there.
    pub superuser: PgPool,
    /// As the owner of the tables: makes what no role of the portal's may.
    pub as_owner: PgPool,
}

fn server() -> PgConnectOptions {
    let url = std::env::var("DATABASE_URL").expect("DATABASE_URL leads to a Postgres server as a superuser; ./tests/run sets it");
    PgConnectOptions::from_str(&url).expect("DATABASE_URL can be read")
}

impl TestDatabase {
    /// A fresh one.
    pub async fn new() -> Self {
        Self::on(server()).await
    }

    /// A fresh one on this server, as its superuser.
    pub async fn on(server: PgConnectOptions) -> Self {
        let template = template(&server).await;
        Self::copy(server, &template).await
    }

    async fn copy(server: PgConnectOptions, template: &str) -> Self {
        // The files as they are: written through the log it takes three times as long.
        Self::create(server, &format!("TEMPLATE {template} STRATEGY FILE_COPY")).await
    }

    async fn create(server: PgConnectOptions, how: &str) -> Self {
        let world: World = Arc::new(Machine);
        let name = format!("leeward_test_{}", new_id(&world).simple());
        let mut connection = PgConnection::connect_with(&server.clone().database("postgres")).await.expect("the server answers");
        run(&mut connection, format!("CREATE DATABASE {name} {how} OWNER {OWNER}")).await;
        // Rights on the database itself are in no template and no dump: deploy/restore takes them away again, as here.
        run(&mut connection, format!("REVOKE TEMPORARY ON DATABASE {name} FROM PUBLIC")).await;
        Self::open(name, server)
    }

    /// One without anything in it.
    async fn empty() -> Self {
        // The roles come with the template.
        template(&server()).await;
        Self::create(server(), "").await
    }

    /// A practice as an earlier version left it: restored from this dump, then brought to this version's shape by its owner.
    pub async fn from_dump(path: &Path) -> Self {
        let server = server();
        let stem = path.file_stem().expect("a dump has a name").to_string_lossy();
        let name = template(&server).await.replace("template", &format!("dump_{stem}"));
        made_once(&server, &name, async |making| restore(&server, making, path).await).await;
        Self::copy(server, &name).await
    }

    /// One with the migrations before this version alone, to put into it what an older portal kept.
    pub async fn before(version: i64) -> Self {
        let database = Self::empty().await;
        for migration in MIGRATIONS.iter().filter(|migration| migration.version < version) {
            database.migrate_one(migration.version).await;
        }
        database
    }

    /// Runs the migration of this version as the owner.
    pub async fn migrate_one(&self, version: i64) {
        let migration = MIGRATIONS.iter().find(|migration| migration.version == version).expect("there is such a migration");
        let mut owner = PgConnection::connect_with(&self.owner()).await.expect("the database answers");
        let mut tx = owner.begin().await.expect("a transaction begins");
        sqlx::raw_sql(migration.sql.clone()).execute(&mut *tx).await.expect("the migration runs");
        tx.commit().await.expect("the migration is kept");
        set_any_time(&self.owner()).await;
    }

    /// The same database over connections of the present runtime: the old ones may hang on one that has ended.
    #[must_use]
    pub fn reopened(&self) -> Self {
        Self::open(self.name.clone(), self.server.clone())
    }

    fn open(name: String, server: PgConnectOptions) -> Self {
        let pool = |most, role: PgConnectOptions| PgPoolOptions::new().max_connections(most).connect_lazy_with(role.database(&name));
        let (superuser, as_owner) = (pool(2, server.clone()), pool(1, server.clone().username(OWNER)));
        Self { name, server, superuser, as_owner }
    }

    /// How the portal connects; with the other role's name it signs people in.
    #[must_use]
    pub fn app(&self) -> PgConnectOptions {
        self.server.clone().username("leeward_app").database(&self.name)
    }

    /// As the owner of the tables: for what the command line does.
    #[must_use]
    pub fn owner(&self) -> PgConnectOptions {
        self.server.clone().username(OWNER).database(&self.name)
    }

    /// All of it as SQL, as a backup holds it.
    #[must_use]
    pub fn dump(&self) -> String {
        let output = client(&self.server, "pg_dump").arg(&self.name).output().expect("pg_dump is installed with Postgres");
        assert!(output.status.success(), "{}", String::from_utf8_lossy(&output.stderr));
        String::from_utf8(output.stdout).expect("the database is in UTF-8")
    }
}

/// One of Postgres' own programs, as a superuser of this server.
fn client(server: &PgConnectOptions, program: &str) -> Command {
    let host = server.get_socket().map_or_else(|| server.get_host().to_owned(), |folder| folder.display().to_string());
    let mut command = Command::new(program);
    command.args(["--host", &host, "--port", &server.get_port().to_string(), "--username", server.get_username()]);
    command
}

/// As whoever runs a practice makes them. A migration must not be what makes a role that is missing.
fn make_roles(server: &PgConnectOptions) {
    let roles = Path::new(env!("CARGO_MANIFEST_DIR")).join("../deploy/roles.sql");
    let mut psql = client(server, "psql");
    psql.args(["--no-psqlrc", "--quiet", "--set=ON_ERROR_STOP=1", "--dbname=postgres", "--file"]).arg(roles);
    let output = psql.output().expect("psql is installed with Postgres");
    assert!(output.status.success(), "{}", String::from_utf8_lossy(&output.stderr));
}

/// Tests live in a time of their own, which the owner alone can allow. Does nothing before there is a clock.
async fn set_any_time(owner: &PgConnectOptions) {
    let mut owner = PgConnection::connect_with(owner).await.expect("the owner connects");
    let there: bool = sqlx::query_scalar("SELECT to_regclass('access.clock') IS NOT NULL").fetch_one(&mut owner).await.expect("it answers");
    if there {
        run(&mut owner, "UPDATE access.clock SET slack = '1000 years'".into()).await;
    }
}

/// Runs a statement made of names that this module chose itself.
async fn run(connection: &mut PgConnection, statement: String) {
    connection.execute(AssertSqlSafe(statement)).await.expect("a set-up statement runs");
}

/// The migrated template of this set of migrations.
async fn template(server: &PgConnectOptions) -> String {
    let mut digest = Sha256::new();
    for migration in MIGRATIONS.iter() {
        digest.update(&migration.checksum);
    }
    let hash: String = digest.finalize().iter().take(6).map(|byte| format!("{byte:02x}")).collect();
    let name = format!("leeward_template_{hash}");
    made_once(server, &name, async |making| {
        let owner = server.clone().username(OWNER).database(making);
        migrate(owner.to_url_lossy().as_str()).await.expect("the migrations run as the owner");
        set_any_time(&owner).await;
    })
    .await;
    name
}

/// The practice of a dump in the shape of this version.
async fn restore(server: &PgConnectOptions, making: &str, path: &Path) {
    let mut psql = client(server, "psql");
    psql.args(["--no-psqlrc", "--quiet", "--set=ON_ERROR_STOP=1", "--single-transaction", "--file"]).arg(path);
    let output = psql.arg(making).output().expect("psql is installed with Postgres");
    assert!(output.status.success(), "{}", String::from_utf8_lossy(&output.stderr));
    let owner = server.clone().username(OWNER).database(making);
    migrate(owner.to_url_lossy().as_str()).await.expect("the migrations run on what was there");
    set_any_time(&owner).await;
}

/// Makes a database that others are copied from, by whichever test comes first: `fill` is given its name while it is being made.
async fn made_once(server: &PgConnectOptions, name: &str, fill: impl AsyncFnOnce(&str)) {
    // What this process has seen is there. Tests run as processes of their own, too, so that the server has the last word.
    static SEEN: Mutex<BTreeSet<(Option<PathBuf>, String)>> = Mutex::new(BTreeSet::new());
    let key = (server.get_socket().cloned(), name.to_owned());
    if SEEN.lock().expect("no test holds it").contains(&key) {
        return;
    }
    let mut connection = PgConnection::connect_with(&server.clone().database("postgres")).await.expect("the server answers");
    run(&mut connection, format!("SELECT pg_advisory_lock(hashtextextended('{name}', 0))")).await;
    let there: bool = sqlx::query_scalar("SELECT EXISTS (SELECT FROM pg_database WHERE datname = $1)")
        .bind(name)
        .fetch_one(&mut connection)
        .await
        .expect("the catalogue can be read");
    if !there {
        // One at a time: a role cannot be changed by two at once.
        run(&mut connection, "SELECT pg_advisory_lock(7230001)".into()).await;
        make_roles(server);
        run(&mut connection, "SELECT pg_advisory_unlock(7230001)".into()).await;
        let making = format!("{name}_making");
        run(&mut connection, format!("DROP DATABASE IF EXISTS {making} WITH (FORCE)")).await;
        run(&mut connection, format!("CREATE DATABASE {making} OWNER {OWNER}")).await;
        // Rights on the database itself are in no dump, and not copied: deploy/restore takes them away again, as here.
        run(&mut connection, format!("REVOKE TEMPORARY ON DATABASE {making} FROM PUBLIC")).await;
        fill(&making).await;
        run(&mut connection, format!("ALTER DATABASE {making} RENAME TO {name}")).await;
    }
    run(&mut connection, format!("SELECT pg_advisory_unlock(hashtextextended('{name}', 0))")).await;
    SEEN.lock().expect("no test holds it").insert(key);
}
