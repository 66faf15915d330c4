//! A Postgres server of a test's own, which the test may kill.

use std::os::unix::fs::{PermissionsExt, chown};
use std::os::unix::process::CommandExt;
use std::path::{Path, PathBuf};
use std::process::{Child, Command, Stdio};
use std::sync::Arc;
use std::time::{Duration, Instant};

use leeward::base::clock::{Machine, World};
use leeward::base::ids::new_id;
use sqlx::postgres::PgConnectOptions;

/// A fresh server in a folder of its own, on a socket there. Dropped, it is killed and its folder removed.
pub struct Cluster {
    folder: PathBuf,
    programs: PathBuf,
    postmaster: Child,
}

impl Cluster {
    /// Makes and starts one. As root it runs as the postgres user, since Postgres refuses root.
    ///
    /// # Panics
    /// When Postgres is not installed, or does not come up.
    #[must_use]
    pub fn start() -> Self {
        let folder = std::env::temp_dir().join(format!("leeward-cluster-{}", new_id(&(Arc::new(Machine) as World)).simple()));
        std::fs::create_dir(&folder).expect("a folder for it");
        std::fs::set_permissions(&folder, std::fs::Permissions::from_mode(0o700)).expect("its own");
        if let Some(user) = postgres_user() {
            chown(&folder, Some(user), Some(user)).expect("given to the postgres user");
        }
        let programs = programs();
        let made = as_postgres(&programs.join("initdb"))
            .arg("--pgdata")
            .arg(folder.join("data"))
            .args(["--username", "postgres", "--auth-local", "trust", "--auth-host", "reject"])
            .args(["--encoding", "UTF8", "--locale", "C.UTF-8", "--no-sync"])
            .output()
            .expect("initdb runs");
        assert!(made.status.success(), "{}", String::from_utf8_lossy(&made.stderr));
        let postmaster = launch(&programs, &folder);
        Self { folder, programs, postmaster }
    }

    /// How its superuser connects.
    #[must_use]
    pub fn superuser(&self) -> PgConnectOptions {
        PgConnectOptions::new().username("postgres").database("postgres").host("localhost").socket(&self.folder).port(5432)
    }

    /// SIGKILL to all of it, the server first so that it cannot mend what follows: nothing more is written, nothing answered.
    ///
    /// # Panics
    /// When it had ended by itself.
    pub fn kill(&mut self) {
        assert!(self.postmaster.try_wait().expect("it is our child").is_none(), "Postgres ended by itself");
        let backends = children(self.postmaster.id());
        self.postmaster.kill().expect("it can be killed");
        self.postmaster.wait().expect("it is our child");
        for backend in &backends {
            // It may have gone by itself when it saw its server gone.
            let _ = Command::new("kill").args(["-KILL", &backend.to_string()]).stderr(Stdio::null()).status();
        }
        let until = Instant::now() + Duration::from_secs(10);
        while backends.iter().any(|backend| Path::new(&format!("/proc/{backend}")).exists()) {
            assert!(Instant::now() < until, "a backend outlived SIGKILL");
            std::thread::sleep(Duration::from_millis(5));
        }
    }

    /// Starts it anew; it recovers what was committed. Waits until it takes connections.
    ///
    /// # Panics
    /// When it does not come up.
    pub fn start_again(&mut self) {
        self.postmaster = launch(&self.programs, &self.folder);
    }
}

impl Drop for Cluster {
    fn drop(&mut self) {
        if let Ok(None) = self.postmaster.try_wait() {
            self.kill();
        }
        let _ = std::fs::remove_dir_all(&self.folder);
    }
}

fn launch(programs: &Path, folder: &Path) -> Child {
    let log = std::fs::OpenOptions::new().create(true).append(true).open(folder.join("log")).expect("a log");
    let mut postmaster = as_postgres(&programs.join("postgres"))
        .arg("-D")
        .arg(folder.join("data"))
        .arg(format!("--unix_socket_directories={}", folder.display()))
        .args(["--listen_addresses=", "--port=5432", "--fsync=on", "--synchronous_commit=on", "--max_connections=100"])
        .stdin(Stdio::null())
        .stdout(log.try_clone().expect("the log again"))
        .stderr(log)
        .spawn()
        .expect("postgres starts");
    let until = Instant::now() + Duration::from_secs(60);
    let ready = || as_postgres(&programs.join("pg_isready")).args(["-q", "-p", "5432", "-h"]).arg(folder).status();
    while !ready().expect("pg_isready runs").success() {
        let log = || std::fs::read_to_string(folder.join("log")).unwrap_or_default();
        assert!(postmaster.try_wait().expect("it is our child").is_none() && Instant::now() < until, "Postgres did not start: {}", log());
        std::thread::sleep(Duration::from_millis(20));
    }
    postmaster
}

/// A command as the postgres user, where the tests run as root.
fn as_postgres(program: &Path) -> Command {
    let mut command = Command::new(program);
    command.current_dir("/");
    if let Some(user) = postgres_user() {
        command.uid(user).gid(user);
    }
    command
}

fn postgres_user() -> Option<u32> {
    let id = |what: &[&str]| {
        let said = Command::new("id").args(what).output().expect("id is there").stdout;
        String::from_utf8_lossy(&said).trim().parse::<u32>().ok()
    };
    if id(&["-u"]) == Some(0) {
        Some(id(&["-u", "postgres"]).expect("there is a user postgres, since Postgres refuses root"))
    } else {
        None
    }
}

/// The folder of the newest server's programs, as `deploy/lib/postgres.sh` looks for it.
fn programs() -> PathBuf {
    let versions = std::fs::read_dir("/usr/lib/postgresql").into_iter().flatten().flatten();
    let newest = versions.filter_map(|entry| entry.file_name().to_str()?.parse::<u32>().ok()).max();
    let debian = newest.map(|version| PathBuf::from(format!("/usr/lib/postgresql/{version}/bin")));
    let on_path = || std::env::split_paths(&std::env::var_os("PATH")?).find(|folder| folder.join("initdb").exists());
    debian.or_else(on_path).expect("Postgres is installed")
}

/// The processes that `parent` started (proc(5): the fourth field of stat, after the name in brackets).
fn children(parent: u32) -> Vec<u32> {
    let of = |pid: u32| {
        let stat = std::fs::read_to_string(format!("/proc/{pid}/stat")).ok()?;
        stat.rsplit_once(')')?.1.split_whitespace().nth(1)?.parse::<u32>().ok()
    };
    let processes = std::fs::read_dir("/proc").expect("proc is there").flatten();
    processes.filter_map(|entry| entry.file_name().to_str()?.parse().ok()).filter(|pid| of(*pid) == Some(parent)).collect()
}
