//! What the owner of the database does before and after: whether it may be seeded, and the members.

use std::sync::Arc;

use chrono::{Duration, NaiveDate, NaiveTime};
use leeward::base::clock::World;
use leeward::base::ids::new_id;
use sqlx::{Connection, PgConnection};
use uuid::Uuid;

use crate::people::{CRISIS_WORDS, EMERGENCY, PRACTICE, READING_HOURS, ZONE};
use crate::plan::MemberPlan;
use crate::world::SeedWorld;
use crate::write::Fault;

/// The practice's name while it is being made.
pub const IN_THE_MAKING: &str = "Demo in the making";

/// What stands in the database.
pub enum State {
    /// Nobody and nothing.
    Empty,
    /// The demo, whole.
    Seeded,
    /// The demo, broken off.
    Unfinished,
    /// A practice.
    InUse,
}

/// The database as its owner.
pub struct Ground(PgConnection);

impl Ground {
    /// Connects.
    ///
    /// # Errors
    /// When it cannot.
    pub async fn connect(url: &str) -> Result<Self, Fault> {
        Ok(Self(PgConnection::connect(url).await.map_err(|fault| format!("LEEWARD_OWNER_URL: {fault}"))?))
    }

    /// What is there.
    ///
    /// # Errors
    /// When the database is not migrated or does not answer.
    pub async fn state(&mut self) -> Result<State, Fault> {
        let (demo, name): (bool, String) = sqlx::query_as("SELECT demo, name FROM practice").fetch_one(&mut self.0).await?;
        let members: i64 = sqlx::query_scalar("SELECT count(*) FROM access.member").fetch_one(&mut self.0).await?;
        Ok(match (demo, members) {
            (true, _) if name == IN_THE_MAKING => State::Unfinished,
            (true, _) => State::Seeded,
            (false, 0) => State::Empty,
            (false, _) => State::InUse,
        })
    }

    /// Clears away a demo that was broken off: only ever called on one.
    ///
    /// # Errors
    /// When the database does not do it.
    pub async fn clear(&mut self) -> Result<(), Fault> {
        // What refers to members goes with them, and the practice's one row names one: it is put back without, for which no policy provides.
        sqlx::raw_sql(
            "BEGIN;
             UPDATE practice SET told_too = NULL;
             CREATE TEMP TABLE kept ON COMMIT DROP AS SELECT * FROM practice;
             TRUNCATE access.member, client, access.gate, access.key_check RESTART IDENTITY CASCADE;
             ALTER TABLE practice NO FORCE ROW LEVEL SECURITY;
             INSERT INTO practice SELECT * FROM kept;
             ALTER TABLE practice FORCE ROW LEVEL SECURITY;
             COMMIT",
        )
        .execute(&mut self.0)
        .await?;
        Ok(())
    }

    /// Marks the practice as a demo in the making and adds its members; returns their ids in order.
    ///
    /// # Errors
    /// When the database does not do it; nothing of it is then there.
    pub async fn begin(&mut self, members: &[MemberPlan], world: &Arc<SeedWorld>, today: NaiveDate) -> Result<Vec<Uuid>, Fault> {
        let world: World = world.clone();
        let joined = (today - Duration::days(400)).and_time(NaiveTime::MIN).and_utc();
        let mut tx = self.0.begin().await?;
        sqlx::query("UPDATE practice SET demo = true, name = $1, zone = $2, emergency_number = $3, reading_hours = $4, crisis_words = $5")
            .bind(IN_THE_MAKING)
            .bind(ZONE)
            .bind(EMERGENCY)
            .bind(READING_HOURS)
            .bind(CRISIS_WORDS)
            .execute(&mut *tx)
            .await?;
        // The years behind are written as they pass.
        sqlx::query("UPDATE access.clock SET slack = '1000 years'").execute(&mut *tx).await?;
        let mut ids = vec![];
        for member in members {
            let roles: Vec<String> = member.roles.iter().map(|role| role.name().to_owned()).collect();
            let id = new_id(&world);
            // A second apart, so that the first of the list is the demo's clinician.
            let at = joined + Duration::seconds(i64::try_from(ids.len())?);
            sqlx::query("INSERT INTO access.member (id, name, roles, joined_at) VALUES ($1, $2, $3, $4)")
                .bind(id)
                .bind(member.name)
                .bind(roles)
                .bind(at)
                .execute(&mut *tx)
                .await?;
            ids.push(id);
        }
        tx.commit().await?;
        Ok(ids)
    }

    /// Gives the practice its name: from now on it counts as seeded, and the time in it is the present. `direct_calls`: as its administrator would
    /// have set it.
    ///
    /// # Errors
    /// When the database does not do it.
    pub async fn finish(&mut self, direct_calls: bool) -> Result<(), Fault> {
        let mut tx = self.0.begin().await?;
        sqlx::query("UPDATE practice SET name = $1, direct_calls = $2").bind(PRACTICE).bind(direct_calls).execute(&mut *tx).await?;
        sqlx::query("UPDATE access.clock SET slack = DEFAULT").execute(&mut *tx).await?;
        tx.commit().await?;
        Ok(())
    }
}
