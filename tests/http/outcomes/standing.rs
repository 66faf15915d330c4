//! The view `standing_rating` against the rule in core, on histories that no form would write.

use std::collections::HashMap;

use chrono::{DateTime, Duration, Utc};
use leeward::platform::Role;
use leeward_core::standing::{Link, standing};
use serde::Deserialize;
use sqlx::PgPool;
use uuid::Uuid;

use crate::scene::{Scene, rows, target};

/// Numbers that look random and are the same in each run (a multiplier of Knuth's, from memory).
pub struct Dice(pub u64);

impl Dice {
    pub fn below(&mut self, most: usize) -> usize {
        self.0 = self.0.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        usize::try_from(self.0 >> 33).unwrap() % most
    }

    fn one_of<T: Copy>(&mut self, from: &[T]) -> T {
        from[self.below(from.len())]
    }
}

/// A rating as some form, or none, might write it.
struct Row {
    id: Uuid,
    session: Option<Uuid>,
    target: Option<Uuid>,
    scale: &'static str,
    value: Option<i16>,
    moment: &'static str,
    replaces: Option<Uuid>,
    at: DateTime<Utc>,
}

async fn write(pool: &PgPool, client: Uuid, member: Uuid, row: &Row) {
    sqlx::query(
        "INSERT INTO rating (id, client_id, session_id, target_id, scale, value, moment, replaces, entered_by, at)
         VALUES ($1, $2, $3, $4, $5, $6, $7, $8, $9, $10)",
    )
    .bind(row.id)
    .bind(client)
    .bind(row.session)
    .bind(row.target)
    .bind(row.scale)
    .bind(row.value)
    .bind(row.moment)
    .bind(row.replaces)
    .bind(member)
    .bind(row.at)
    .execute(pool)
    .await
    .unwrap();
}

/// What the view says of one rating that stands.
type Said = (Uuid, Option<Uuid>, Option<Uuid>, String, i16, String, DateTime<Utc>, i64, bool);

/// The rows of the table, and of the view by when they were asked.
async fn both(pool: &PgPool, client: Uuid) -> (Vec<(Uuid, Option<Uuid>, Option<i16>, i64)>, Vec<Said>) {
    let kept = sqlx::query_as("SELECT id, replaces, value, seq FROM rating WHERE client_id = $1 ORDER BY seq").bind(client).fetch_all(pool);
    let said = sqlx::query_as(
        "SELECT id, session_id, target_id, scale, value, moment, asked_at, asked, corrected FROM standing_rating WHERE client_id = $1 ORDER BY asked",
    );
    (kept.await.unwrap(), said.bind(client).fetch_all(pool).await.unwrap())
}

const MOMENTS: [&str; 6] = ["assessment", "after_set", "back_at_target", "installation", "closing", "reevaluation"];

#[tokio::test]
async fn the_view_and_the_rule_agree_on_odd_histories() {
    let scene = Scene::build().await;
    let pool = &scene.house.database.superuser;
    sqlx::query("DELETE FROM rating").execute(pool).await.unwrap();
    let other = target(&scene.house, &scene.clinician, scene.client).await;
    sqlx::query("DELETE FROM rating").execute(pool).await.unwrap();
    let mut dice = Dice(1);
    for history in 0..25 {
        let mut written: Vec<Row> = Vec::new();
        let mut open: Vec<usize> = Vec::new();
        for _ in 0..2 + dice.below(16) {
            let corrected = if !open.is_empty() && dice.below(10) < 6 { Some(open.swap_remove(dice.below(open.len()))) } else { None };
            let row = Row {
                id: Uuid::from_u128(u128::from(dice.0)),
                // A correction may name any place: it is the first entry's that counts.
                session: dice.one_of(&[None, Some(scene.session)]),
                target: dice.one_of(&[None, Some(scene.target), Some(other)]),
                scale: corrected.map_or_else(|| dice.one_of(&["sud", "voc"]), |at| written[at].scale),
                value: if corrected.is_some() && dice.below(3) == 0 { None } else { Some(1 + i16::try_from(dice.below(7)).unwrap()) },
                moment: dice.one_of(&MOMENTS),
                replaces: corrected.map(|at| written[at].id),
                // The clock jumps about.
                at: scene.house.app.world.now() + Duration::seconds(i64::try_from(dice.below(1000)).unwrap() - 500),
            };
            write(pool, scene.client, scene.clinician.member, &row).await;
            open.push(written.len());
            written.push(row);
        }
        let (kept, said) = both(pool, scene.client).await;
        let order: Vec<Uuid> = kept.iter().map(|row| row.0).collect();
        assert_eq!(order, written.iter().map(|row| row.id).collect::<Vec<_>>(), "in order of keeping, whatever the clock says");
        let links: Vec<Link<Uuid>> =
            kept.iter().map(|(id, replaces, value, _)| Link { id: *id, replaces: *replaces, says: value.is_some() }).collect();
        let wanted: Vec<Said> = standing(&links)
            .into_iter()
            .map(|stands| {
                let (row, first) = (&written[stands.at], &written[stands.first]);
                let value = row.value.unwrap();
                let (moment, scale) = (first.moment.to_owned(), row.scale.to_owned());
                (row.id, first.session, first.target, scale, value, moment, first.at, kept[stands.first].3, row.id != first.id)
            })
            .collect();
        let micros =
            |said: &Said| (said.0, said.1, said.2, said.3.clone(), said.4, said.5.clone(), said.6.timestamp_micros(), said.7, said.8);
        assert_eq!(said.iter().map(micros).collect::<Vec<_>>(), wanted.iter().map(micros).collect::<Vec<_>>(), "history {history}");
        sqlx::query("DELETE FROM rating").execute(pool).await.unwrap();
    }
}

#[derive(Deserialize)]
struct Vectors {
    histories: Vec<History>,
}

#[derive(Deserialize)]
struct History {
    name: String,
    kept: Vec<Entry>,
    stands: Vec<Stands>,
}

#[derive(Deserialize)]
struct Entry {
    id: String,
    replaces: Option<String>,
    says: bool,
}

#[derive(Deserialize)]
struct Stands {
    id: String,
}

/// The vectors that the rule and the desk are bound to, as far as the table can hold them: it has no second
/// correction of one entry, and no link to nowhere.
#[tokio::test]
async fn the_view_agrees_with_the_clerks_slips() {
    let scene = Scene::build().await;
    let pool = &scene.house.database.superuser;
    let vectors: Vectors = serde_json::from_str(include_str!("../../reference/ratings.json")).unwrap();
    let mut checked = 0;
    for History { name, kept, stands } in vectors.histories {
        sqlx::query("DELETE FROM rating").execute(pool).await.unwrap();
        let mut ids: HashMap<&str, Uuid> = HashMap::new();
        let mut names: HashMap<Uuid, &str> = HashMap::new();
        let once = kept.iter().all(|one| one.replaces.is_none() || kept.iter().filter(|other| other.replaces == one.replaces).count() == 1);
        let known = kept.iter().all(|one| match &one.replaces {
            None => one.says,
            Some(id) => kept.iter().any(|other| other.id == *id),
        });
        if !once || !known {
            continue;
        }
        for one in &kept {
            let id = leeward::base::ids::new_id(&scene.house.app.world);
            let replaces = one.replaces.as_deref().map(|earlier| ids[earlier]);
            ids.insert(&one.id, id);
            names.insert(id, &one.id);
            let (at, value) = (scene.house.app.world.now(), one.says.then_some(5));
            let row = Row { id, session: None, target: Some(scene.target), scale: "sud", value, moment: "after_set", replaces, at };
            write(pool, scene.client, scene.clinician.member, &row).await;
        }
        let said: Vec<&str> = both(pool, scene.client).await.1.iter().map(|said| names[&said.0]).collect();
        assert_eq!(said, stands.iter().map(|one| one.id.as_str()).collect::<Vec<_>>(), "{name}");
        checked += 1;
    }
    assert!(checked > 15, "{checked}");
}

/// A rating is corrected within its client and scale, whoever writes it.
#[tokio::test]
async fn a_correction_of_another_scale_is_refused_by_the_database() {
    let scene = Scene::build().await;
    let pool = &scene.house.database.superuser;
    let sud: Uuid = sqlx::query_scalar("SELECT id FROM rating WHERE scale = 'sud'").fetch_one(pool).await.unwrap();
    let refused = sqlx::query(
        "INSERT INTO rating (id, client_id, scale, value, moment, replaces, entered_by, at)
         VALUES (gen_random_uuid(), $1, 'voc', 3, 'assessment', $2, $3, now())",
    )
    .bind(scene.client)
    .bind(sud)
    .bind(scene.clinician.member)
    .execute(pool)
    .await
    .unwrap_err();
    assert!(refused.to_string().contains("the client and the scale of what it corrects"), "{refused}");
}

/// The lead's list, the lead's chart, the clinician's chart and the target's table name the same first and last SUD.
#[tokio::test]
async fn lead_and_clinician_read_the_same_first_and_last_of_generated_courses() {
    let mut scene = Scene::build().await;
    let mut lead = scene.house.member(&[Role::Lead]).await;
    let pool = scene.house.database.superuser.clone();
    let mut dice = Dice(7);
    let mut sessions = vec![scene.session];
    for _ in 0..2 {
        super::next_session(&mut scene, leeward::sessions::ClosingKind::Incomplete).await;
        sessions.push(scene.session);
    }
    lead = scene.house.sign_in(lead.member).await;
    for course in 0..12 {
        sqlx::query("DELETE FROM rating").execute(&pool).await.unwrap();
        let mut open: Vec<(Uuid, bool)> = Vec::new();
        for _ in 0..dice.below(14) {
            let corrected = if !open.is_empty() && dice.below(10) < 4 { Some(open.swap_remove(dice.below(open.len()))) } else { None };
            let row = Row {
                id: Uuid::from_u128(u128::from(dice.0) << 1),
                // Late entries to earlier sessions too.
                session: dice.one_of(&[None, Some(sessions[0]), Some(sessions[1]), Some(sessions[2])]),
                target: Some(scene.target),
                scale: "sud",
                value: if corrected.is_some() && dice.below(3) == 0 { None } else { Some(i16::try_from(dice.below(11)).unwrap()) },
                moment: dice.one_of(&["assessment", "after_set"]),
                replaces: corrected.map(|row| row.0),
                at: scene.house.app.world.now() + Duration::days(i64::try_from(dice.below(9)).unwrap() - 4),
            };
            open.push((row.id, row.value.is_some()));
            write(&pool, scene.client, scene.clinician.member, &row).await;
        }
        let list = lead.get("/practice/caseload").await.body;
        let line: Vec<String> = rows(&list, "By record number")[0].split('|').map(str::to_owned).collect();
        let said: Vec<String> = line[line.len() - 3..line.len() - 1].to_vec();
        let leads = lead.get(&format!("/practice/clients/{}", scene.client)).await.body;
        let clinicians = scene.clinician.get(&format!("/targets/{}", scene.target)).await.body;
        for page in [&leads, &clinicians] {
            let columns = rows(page, "over sessions</caption>");
            let cell = |row: &String, at: usize| row.split('|').nth(at).unwrap().to_owned();
            let asked: Vec<&String> = columns.iter().filter(|row| cell(row, 1) != "not asked").collect();
            let ends = [asked.first().map_or(String::new(), |row| cell(row, 1)), asked.last().map_or(String::new(), |row| cell(row, 2))];
            assert_eq!(ends.to_vec(), said, "course {course}: {columns:?}");
        }
        let table = rows(&clinicians, "First and last ratings");
        let cells: Vec<&str> = table[0].split('|').collect();
        let of = |value: &str| if value.is_empty() { "not rated".to_owned() } else { format!("{value} of 10") };
        assert_eq!((cells[1], cells[cells.len() - 1]), (of(&said[0]).as_str(), of(&said[1]).as_str()), "course {course}");
        let caption = |page: &str| page[page.find("<figcaption>").unwrap()..].split("</figcaption>").next().unwrap().to_owned();
        assert_eq!(caption(&leads), caption(&clinicians));
    }
}
