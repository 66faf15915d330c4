//! The real program in a process of its own, for what a process alone shows: its memory, its end.

use std::io::{BufRead, BufReader};
use std::net::TcpListener;
use std::process::{Child, Command, ExitStatus, Stdio};
use std::time::{Duration, Instant};

use leeward::base::clock::{Machine, Surroundings};
use sqlx::ConnectOptions;
use sqlx::postgres::PgConnectOptions;

use crate::{Browser, House, key_digits};

/// `leeward serve`, running. Dropped, it is killed.
pub struct Served {
    /// Where it is reached.
    pub origin: String,
    port: u16,
    program: String,
    database: PgConnectOptions,
    child: Child,
}

impl Served {
    /// Starts `program` on the house's database, over its wire if it has one, and lets the house's browsers go there from now
    /// on. The house's clock is set to the real one, which the program reads.
    ///
    /// # Panics
    /// When it does not come up.
    #[must_use]
    pub fn of(house: &mut House, program: &str) -> Self {
        house.clock.advance(Machine.now() - house.clock.now());
        let database = house.database.app();
        let database = house.wire.as_ref().map_or_else(|| database.clone(), |wire| wire.over(database.clone()));
        let served = Self::start(program, &database);
        house.origin.clone_from(&served.origin);
        served
    }

    /// The cookies that the house gave, under the names that this portal looks for: they hold its port.
    pub fn welcomes(&self, browser: &mut Browser) {
        for (name, value) in browser.cookies.clone() {
            if let Some((family, _)) = name.rsplit_once('-') {
                browser.cookies.insert(format!("{family}-{}", self.port), value);
            }
        }
    }

    /// Starts `program` on the database that `database` leads to; one proxy in front of it is believed.
    fn start(program: &str, database: &PgConnectOptions) -> Self {
        let port = TcpListener::bind("127.0.0.1:0").and_then(|free| free.local_addr()).expect("a free port").port();
        let origin = format!("http://localhost:{port}");
        let child = launch(program, database, port);
        Self { origin, port, program: program.to_owned(), database: database.clone(), child }
    }

    /// SIGKILL, as when the machine's memory runs out: it writes nothing more and says nothing more.
    ///
    /// # Panics
    /// When it cannot be sent.
    pub fn kill(&mut self) {
        self.child.kill().expect("it can be killed");
        self.child.wait().expect("it is our child");
    }

    /// Starts it anew in the same place, as systemd does.
    ///
    /// # Panics
    /// When it does not come up.
    pub fn start_again(&mut self) {
        self.child = launch(&self.program, &self.database, self.port);
    }

    /// What it holds in memory, MiB (proc(5): VmRSS).
    ///
    /// # Panics
    /// When it has ended.
    #[must_use]
    pub fn memory(&self) -> f64 {
        let status = std::fs::read_to_string(format!("/proc/{}/status", self.child.id())).expect("it runs");
        let line = status.lines().find_map(|line| line.strip_prefix("VmRSS:")).expect("proc says it");
        line.trim().trim_end_matches(" kB").parse::<f64>().expect("a number") / 1024.0
    }

    /// SIGTERM, as systemd sends it.
    ///
    /// # Panics
    /// When it cannot be sent.
    pub fn terminate(&self) {
        let sent = Command::new("kill").args(["-TERM", &self.child.id().to_string()]).status();
        assert!(sent.expect("kill is there").success());
    }

    /// Waits for its end, `patience` at most.
    pub async fn ended(&mut self, patience: Duration) -> Option<ExitStatus> {
        let until = Instant::now() + patience;
        while Instant::now() < until {
            if let Ok(Some(status)) = self.child.try_wait() {
                return Some(status);
            }
            tokio::time::sleep(Duration::from_millis(20)).await;
        }
        None
    }
}

impl Drop for Served {
    fn drop(&mut self) {
        let _ = self.child.kill();
        let _ = self.child.wait();
    }
}

fn launch(program: &str, database: &PgConnectOptions, port: u16) -> Child {
    let key = std::env::temp_dir().join(format!("leeward-key-{port}"));
    std::fs::write(&key, key_digits()).expect("a key file");
    let mut child = Command::new(program)
        .arg("serve")
        .args(["--origin", &format!("http://localhost:{port}"), "--listen", &format!("127.0.0.1:{port}"), "--proxies", "1"])
        .env("LEEWARD_DATABASE_URL", database.to_url_lossy().as_str())
        .env_remove("LEEWARD_SIGNIN_URL")
        .env("LEEWARD_KEY_FILE", &key)
        .env("LEEWARD_LOG", "error")
        .stdout(Stdio::piped())
        .spawn()
        .expect("the program starts");
    let mut said = String::new();
    BufReader::new(child.stdout.take().expect("piped")).read_line(&mut said).expect("it says something");
    let _ = std::fs::remove_file(key);
    assert!(said.starts_with("ready on"), "the program did not come up: {said}");
    child
}
