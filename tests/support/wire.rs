//! The wire between the portal and its database, in a test's hands: it can be held, and an answer can be lost on it.

use std::path::PathBuf;
use std::sync::Arc;
use std::sync::atomic::{AtomicBool, AtomicI64, AtomicU32, Ordering};

use leeward::base::clock::{Machine, World};
use leeward::base::ids::new_id;
use sqlx::postgres::PgConnectOptions;
use tokio::io::{AsyncRead, AsyncReadExt, AsyncWrite, AsyncWriteExt};
use tokio::net::{TcpStream, UnixListener, UnixStream};
use tokio::sync::watch;

/// A relay before the tests' Postgres. Dropped, all connections over it break.
pub struct Wire {
    folder: PathBuf,
    shared: Arc<Shared>,
    listening: tokio::task::JoinHandle<()>,
}

struct Shared {
    /// Nothing passes, either way, while this is true.
    held: watch::Sender<bool>,
    /// So many commits from now, the answer is lost; below zero none will be.
    lose: AtomicI64,
    /// An answer was lost since it was asked for.
    lost: AtomicBool,
    /// Commits that have passed.
    commits: AtomicU32,
}

impl Wire {
    /// A relay to the server that `options` lead to.
    ///
    /// # Panics
    /// When no socket can be made.
    #[must_use]
    pub fn before(options: &PgConnectOptions) -> Self {
        let folder = std::env::temp_dir().join(format!("leeward-wire-{}", new_id(&(Arc::new(Machine) as World)).simple()));
        std::fs::create_dir(&folder).expect("a folder for the socket");
        let listener = UnixListener::bind(folder.join(".s.PGSQL.5432")).expect("a socket");
        let shared = Arc::new(Shared {
            held: watch::Sender::new(false),
            lose: AtomicI64::new(-1),
            lost: AtomicBool::new(false),
            commits: AtomicU32::new(0),
        });
        let listening = tokio::spawn(listen(listener, options.clone(), shared.clone()));
        Self { folder, shared, listening }
    }

    /// `options` with this relay in the way.
    #[must_use]
    pub fn over(&self, options: PgConnectOptions) -> PgConnectOptions {
        options.socket(&self.folder).port(5432)
    }

    /// From now on nothing passes, as when the server hangs; or everything again.
    pub fn hold(&self, held: bool) {
        self.shared.held.send_replace(held);
    }

    /// Lets so many commits pass, then one more whose answer is lost together with its connection.
    pub fn lose_answer_after(&self, commits: u32) {
        self.shared.lost.store(false, Ordering::SeqCst);
        self.shared.lose.store(commits.into(), Ordering::SeqCst);
    }

    /// How many commits have passed so far.
    #[must_use]
    pub fn commits(&self) -> u32 {
        self.shared.commits.load(Ordering::SeqCst)
    }

    /// Whether the answer was lost that [`Wire::lose_answer_after`] asked for. None will be after this.
    #[must_use]
    pub fn has_lost(&self) -> bool {
        self.shared.lose.store(-1, Ordering::SeqCst);
        self.shared.lost.load(Ordering::SeqCst)
    }
}

impl Drop for Wire {
    fn drop(&mut self) {
        self.listening.abort();
        let _ = std::fs::remove_dir_all(&self.folder);
    }
}

async fn listen(listener: UnixListener, options: PgConnectOptions, shared: Arc<Shared>) {
    let mut connections = tokio::task::JoinSet::new();
    while let Ok((client, _)) = listener.accept().await {
        connections.spawn(relay(client, options.clone(), shared.clone()));
    }
}

async fn relay(client: UnixStream, options: PgConnectOptions, shared: Arc<Shared>) {
    let port = options.get_port();
    let linked = match options.get_socket() {
        Some(folder) => match UnixStream::connect(folder.join(format!(".s.PGSQL.{port}"))).await {
            Ok(server) => both_ways(client, server, shared).await,
            Err(fault) => Err(fault),
        },
        None => match TcpStream::connect((options.get_host(), port)).await {
            Ok(server) => both_ways(client, server, shared).await,
            Err(fault) => Err(fault),
        },
    };
    // A connection that breaks is what these tests are about.
    drop(linked);
}

async fn both_ways(client: UnixStream, server: impl AsyncRead + AsyncWrite, shared: Arc<Shared>) -> std::io::Result<()> {
    let (from_client, to_client) = client.into_split();
    let (from_server, to_server) = tokio::io::split(server);
    let losing = AtomicBool::new(false);
    tokio::select! {
        done = asked(from_client, to_server, &shared, &losing) => done,
        done = answered(from_server, to_client, &shared, &losing) => done,
    }
}

/// From the portal to the server, watching for commits: a simple query (PostgreSQL, 55.7: message Q).
async fn asked(
    mut from: impl AsyncRead + Unpin,
    mut to: impl AsyncWrite + Unpin,
    shared: &Shared,
    losing: &AtomicBool,
) -> std::io::Result<()> {
    const COMMIT: &[u8] = b"Q\0\0\0\x0bCOMMIT\0";
    let mut held = shared.held.subscribe();
    let mut buffer = vec![0; 64 * 1024];
    loop {
        let read = from.read(&mut buffer).await?;
        if read == 0 {
            return Ok(());
        }
        let _ = held.wait_for(|held| !held).await;
        let commits = buffer[..read].windows(COMMIT.len()).any(|window| window == COMMIT);
        shared.commits.fetch_add(commits.into(), Ordering::SeqCst);
        if commits && shared.lose.load(Ordering::SeqCst) >= 0 && shared.lose.fetch_sub(1, Ordering::SeqCst) == 0 {
            losing.store(true, Ordering::SeqCst);
        }
        to.write_all(&buffer[..read]).await?;
    }
}

/// From the server to the portal; ends once an answer has been swallowed.
async fn answered(
    mut from: impl AsyncRead + Unpin,
    mut to: impl AsyncWrite + Unpin,
    shared: &Shared,
    losing: &AtomicBool,
) -> std::io::Result<()> {
    let mut held = shared.held.subscribe();
    let mut buffer = vec![0; 64 * 1024];
    loop {
        let read = from.read(&mut buffer).await?;
        if read == 0 {
            return Ok(());
        }
        let _ = held.wait_for(|held| !held).await;
        if losing.load(Ordering::SeqCst) {
            // The server has said that it is done (CommandComplete, ReadyForQuery); nobody hears it.
            shared.lost.store(true, Ordering::SeqCst);
            return Ok(());
        }
        to.write_all(&buffer[..read]).await?;
    }
}
