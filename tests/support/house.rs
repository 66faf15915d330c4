//! The real portal on a free port.

use std::net::{SocketAddr, TcpListener};
use std::sync::Arc;

use leeward::app::{self};
use leeward::base::clock::World;
use leeward::base::ids::{Token, new_id};
use leeward::base::origin::Origin;
use leeward::platform::Role;
use leeward::platform::{App, Parts};
use leeward::store::database::Database;
use leeward::store::key_check;
use leeward::store::seal::PracticeKey;
use sqlx::postgres::PgConnectOptions;
use uuid::Uuid;

use crate::{Browser, TestDatabase, TestWorld, Wire};

/// A practice with its portal running. Dropped, the portal stops.
pub struct House {
    /// The portal's shared state, for calling its functions directly.
    pub app: App,
    /// Where it is reached, such as `http://localhost:40123`.
    pub origin: String,
    /// The clock of this house.
    pub clock: Arc<TestWorld>,
    /// Its database.
    pub database: TestDatabase,
    /// What lies between it and the portal, if the test asked for it.
    pub wire: Option<Wire>,
    handle: axum_server::Handle<SocketAddr>,
    demo: bool,
}

/// The practice's key in tests, and of the dumps under `tests/dumps`.
#[must_use]
pub fn key() -> PracticeKey {
    PracticeKey::parse(&key_digits()).expect("64 digits")
}

/// The same as a key file holds it.
#[must_use]
pub fn key_digits() -> String {
    "5a".repeat(32)
}

impl House {
    /// A fresh practice without members.
    pub async fn build() -> Self {
        Self::on(TestDatabase::new().await, Arc::default(), false, None).await
    }

    /// A fresh practice served as the demo is.
    pub async fn build_demo() -> Self {
        Self::on(TestDatabase::new().await, Arc::default(), true, None).await
    }

    /// A fresh practice, served as the demo is, whose database lies behind a wire that the test holds.
    pub async fn build_behind_wire() -> Self {
        let database = TestDatabase::new().await;
        let wire = Wire::before(&database.app());
        Self::on(database, Arc::default(), true, Some(wire)).await
    }

    /// A fresh practice on a server of the test's own.
    pub async fn build_on(server: PgConnectOptions) -> Self {
        Self::on(TestDatabase::on(server).await, Arc::default(), false, None).await
    }

    /// A practice that an earlier version kept, opened by this one. See [`TestDatabase::from_dump`].
    pub async fn from_dump(path: &std::path::Path) -> Self {
        Self::on(TestDatabase::from_dump(path).await, Arc::default(), false, None).await
    }

    async fn on(database: TestDatabase, clock: Arc<TestWorld>, demo: bool, wire: Option<Wire>) -> Self {
        let listener = TcpListener::bind("127.0.0.1:0").expect("a free port");
        listener.set_nonblocking(true).expect("the socket takes it");
        let port = listener.local_addr().expect("it has an address").port();
        let origin = Origin::parse(&format!("http://localhost:{port}")).expect("a good origin");
        let world: World = clock.clone();
        let options = wire.as_ref().map_or_else(|| database.app(), |wire| wire.over(database.app()));
        let connected = Database::connect_with(options, world.clone()).await.expect("the database is fit");
        let text = origin.text.clone();
        let key = key_check::check(&connected, key()).await.expect("the key is this practice's");
        let (app, router) = app::build(Parts { database: connected, world, key, origin, proxies: 0, demo, mails: false }, None);
        let handle = axum_server::Handle::new();
        tokio::spawn(leeward::connections::serve(router, listener, handle.clone()));
        Self { app, origin: text, clock, database, wire, handle, demo }
    }

    /// Stops the portal at once, as a crash would, and starts another on the same database (and another port).
    pub async fn restart(self) -> Self {
        self.handle.shutdown();
        Self::on(self.database.reopened(), self.clock.clone(), self.demo, None).await
    }

    /// Somebody who has not signed in.
    #[must_use]
    pub fn visitor(&self) -> Browser {
        Browser::new(&self.origin)
    }

    /// A new member with these roles, signed in.
    pub async fn member(&self, roles: &[Role]) -> Browser {
        let id = new_id(&self.app.world);
        let names: Vec<String> = roles.iter().map(|role| role.name().to_owned()).collect();
        sqlx::query("INSERT INTO access.member (id, name, roles, joined_at) VALUES ($1, $2, $3, $4)")
            .bind(id)
            .bind(format!("Member {}", &id.simple().to_string()[..6]))
            .bind(names)
            .bind(self.app.world.now())
            .execute(&self.database.as_owner)
            .await
            .expect("the owner adds a member");
        self.sign_in(id).await
    }

    /// One more sign-in of a member.
    pub async fn sign_in(&self, member: Uuid) -> Browser {
        let token = Token::new(&self.app.world);
        sqlx::query(
            "INSERT INTO access.signin (id, token_hash, member_id, device, opened_at, seen_at, shown_at, ends_at)
             VALUES ($1, $2, $3, 'a test', $4, $4, $4, $4 + interval '12 hours')",
        )
        .bind(new_id(&self.app.world))
        .bind(token.hash())
        .bind(member)
        .bind(self.app.world.now())
        .execute(&self.database.as_owner)
        .await
        .expect("the owner opens a sign-in");
        Browser::new(&self.origin).signed_in(member, &self.app.origin.member_cookie(), &token)
    }
}

impl Drop for House {
    fn drop(&mut self) {
        self.handle.shutdown();
    }
}
