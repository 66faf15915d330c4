//! The practice as a whole: who treats whom, and what kind of course each client has.

use leeward::clients::Asked;
use leeward::comfort::Sheet;
use leeward::platform::Role;
use leeward::sessions::ClosingKind;
use leeward_core::course::Procedure;
use leeward_core::wire::{Colours, Comfort, Path, Plan, Timbre};
use rand::{Rng, SeedableRng};
use rand_chacha::ChaCha8Rng;

use crate::course::{self, Kind};
use crate::odd;
use crate::people::{ADMINISTRATOR, CLINICIANS, FAMILY, FIRST, LEAD, STAYING_SAFE, STREETS};
use crate::plan::{ClientPlan, MemberPlan, Practice};

/// How many clients the practice has.
pub const CLIENTS: usize = 64;

/// Draws a practice of so many clients; the same seed gives the same one.
pub fn draw(seed: u64, clients: usize) -> Practice {
    let mut rng = ChaCha8Rng::seed_from_u64(seed);
    let clients = (0..clients).map(|at| client(&mut rng, at)).collect();
    Practice { members: members(), clients }
}

fn members() -> Vec<MemberPlan> {
    let mut members: Vec<_> = CLINICIANS.iter().map(|name| MemberPlan { name, roles: &[Role::Clinician] }).collect();
    // The first also reviews the caseload, so that the demo's desk and its lead's page can stand in one
    // browser: it holds one sign-in at a time.
    if let Some(first) = members.first_mut() {
        first.roles = &[Role::Clinician, Role::Lead];
    }
    members.push(MemberPlan { name: LEAD, roles: &[Role::Lead] });
    members.push(MemberPlan { name: ADMINISTRATOR, roles: &[Role::Administrator] });
    members
}

/// The kinds in turn, so that every clinician has some of each.
fn kind(at: usize) -> (Kind, std::ops::Range<usize>) {
    match at % 8 {
        0 | 3 | 5 => (Kind::Well, 8..12),
        1 => (Kind::Helped, 9..13),
        2 => (Kind::Slow, 10..14),
        4 => (Kind::Reopened, 10..13),
        6 => (Kind::Away, 3..6),
        _ => (Kind::New, 1..5),
    }
}

fn client(rng: &mut ChaCha8Rng, at: usize) -> ClientPlan {
    let (kind, sessions) = kind(at);
    let sessions = rng.random_range(sessions);
    let last = match kind {
        Kind::Away => rng.random_range(60..150),
        Kind::New => rng.random_range(1..8),
        _ => rng.random_range(2..100),
    };
    let (seizures, eye_condition) = cautions(rng, at);
    let eyes = seizures == Asked::No && eye_condition == Asked::No;
    let has_sheet = at.is_multiple_of(2);
    let mut plan = course::comfort(rng, eyes);
    if !has_sheet {
        // Another path to begin with is chosen on the comfort sheet.
        plan.path = Path::Across;
    }
    let mut course = course::draw(rng, kind, sessions, last, plan);
    course.sessions.extend(odd::hour(at, &course, plan));
    let is_finished = course.sessions.iter().any(|session| session.target == Some(0) && session.closing == ClosingKind::Complete);
    match (at, course.targets.first_mut()) {
        (10, Some(first)) => first.procedure = Procedure::Restricted,
        // Its end asks for segments, which no course of the demo has.
        (14, Some(first)) if !is_finished => first.procedure = Procedure::RecentEvent,
        _ => {}
    }
    let (first, family) = (FIRST[(at * 7 + 3) % FIRST.len()], FAMILY[(at * 11 + 5) % FAMILY.len()]);
    ClientPlan {
        clinician: at % CLINICIANS.len(),
        name: format!("{first} {family}"),
        addressed_as: first.to_owned(),
        phone: phone(at * 2),
        contact_name: format!("{} {family}", FIRST[(at * 7 + 4 + at % (FIRST.len() - 1)) % FIRST.len()]),
        contact_phone: phone(at * 2 + 1),
        location: format!("{} {}, Ternhaven, at home", rng.random_range(1..90), STREETS[at % STREETS.len()]),
        seizures,
        eye_condition,
        comfort: has_sheet.then(|| sheet(at, plan)),
        safety: has_sheet.then_some(STAYING_SAFE),
        targets: course.targets,
        sessions: course.sessions,
        archived: kind == Kind::Away && at.is_multiple_of(3),
    }
}

/// What was found in preparation, around the settings that the client's sets have.
fn sheet(at: usize, plan: Plan) -> Sheet {
    let timbre = [Timbre::Round, Timbre::Warm, Timbre::Wood][at / 2 % 3];
    let colours = [Colours::Sand, Colours::Lake, Colours::Leaf, Colours::Stone][at / 2 % 4];
    Sheet { path: plan.path, dot: plan.dot, comfort: Comfort { timbre, colours, level: 70, ..Comfort::default() } }
}

/// Most were asked and said no; some keep the moving dot locked.
fn cautions(rng: &mut ChaCha8Rng, at: usize) -> (Asked, Asked) {
    match at % 16 {
        9 => (Asked::Yes, Asked::No),
        12 => (Asked::No, Asked::Yes),
        15 => (Asked::NotAsked, Asked::NotAsked),
        _ if rng.random_bool(0.02) => (Asked::No, Asked::NotAsked),
        _ => (Asked::No, Asked::No),
    }
}

/// Mobile numbers that the United Kingdom's regulator keeps free for fiction (07700 900000 to 900999; from memory).
fn phone(at: usize) -> String {
    format!("07700 900{:03}", at % 1000)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn it_is_as_large_as_it_says_and_the_same_again() {
        let (one, two) = (draw(1, CLIENTS), draw(1, CLIENTS));
        let sessions: usize = one.clients.iter().map(|client| client.sessions.len()).sum();
        let sets: usize = one.clients.iter().flat_map(|client| &client.sessions).map(|session| session.sets.len()).sum();
        assert!(
            one.clients.len() >= 60 && sessions >= 500 && sets >= 6_000,
            "{} clients, {sessions} sessions, {sets} sets",
            one.clients.len()
        );
        let notes = |practice: &Practice| -> Vec<String> {
            practice.clients.iter().flat_map(|c| c.sessions.iter().map(|s| s.note.clone())).collect()
        };
        assert_eq!(notes(&one), notes(&two));
        assert_ne!(notes(&one), notes(&draw(2, CLIENTS)));
    }

    #[test]
    fn nobody_has_two_names_and_every_rating_is_on_its_scale() {
        let practice = draw(1, CLIENTS);
        let mut names: Vec<_> = practice.clients.iter().map(|client| &client.name).collect();
        names.sort();
        names.dedup();
        assert_eq!(names.len(), practice.clients.len());
        for set in practice.clients.iter().flat_map(|client| &client.sessions).flat_map(|session| &session.sets) {
            assert!(set.sud.is_none_or(|sud| sud <= 10) && set.voc.is_none_or(|voc| (1..=7).contains(&voc)));
            assert!(leeward_core::safety::check(&set.plan, false).is_ok(), "{:?}", set.plan);
        }
    }
}
