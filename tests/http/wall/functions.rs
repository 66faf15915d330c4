//! Every function of the database by everybody without the right to it, generated from the catalogue.

use leeward::askings::{self, New};
use leeward::base::ids::Token;
use leeward::live;
use leeward::measures::Occasion;
use leeward::platform::Role;
use leeward::sessions::{self, NewSession};
use leeward::store::seal::Private;
use leeward::store::subject::Subject;
use leeward_core::measures::Measure;
use sqlx::postgres::PgConnectOptions;

use super::probe::{Ground, Outcome, Said, ground};

/// What tells or does something for the app role without any token, and why it may.
const OPEN: [(&str, &str); 14] = [
    ("access.kind", "says back what the asker has said"),
    ("access.token_hash", "the same, hashed"),
    ("access.now", "the time"),
    ("access.schema_version", "which migrations are in: asked at the start, before anybody is there"),
    ("access.keys_in_use", "numbers of keys: asked at the start"),
    ("access.key_check", "a sealed value that opens no record: asked at the start"),
    ("access.keys_to_try", "wrapped keys, and only until a check value stands"),
    ("access.tidy", "removes only what has long expired by the database's own clock"),
    ("access.try_code", "who has the link's hash has the link; the tries are counted"),
    ("access.claim_seat", "the link's id is told by try_code alone; the code is compared in the portal"),
    ("access.claimed_seat", "who has the seat's hash made it"),
    ("access.audit", "an act of a visitor's leaves its row"),
    ("access.flags_to_mail", "whom the program tells by mail, at which address; of no flag whose it is"),
    ("access.flag_mailed", "that one of these was told, and nobody else"),
];

/// The same for the role that signs people in.
const OPEN_TO_SIGN_IN: [(&str, &str); 8] = [
    ("access.open_signin", "opens a sign-in once a passkey was checked, which the portal does"),
    ("access.passkeys_of", "what a passkey is checked against"),
    ("access.passkey_used", "its counter"),
    ("access.begin_ceremony", "a challenge is for whoever asks"),
    ("access.end_ceremony", "and answered by who has its token"),
    ("access.open_invitation", "who has the token's hash was invited"),
    ("access.accept_invitation", "the same"),
    ("access.audit", "an act of a visitor's leaves its row"),
];

/// What a token that holds may tell or do beyond its own: the function, whose token (in their names below), and why.
const ALLOWED: [(&str, &[&str], &str); 24] = [
    ("access.members", MEMBERS, "colleagues know each other"),
    ("access.care_links", &["a lead"], "a lead knows who treats whom"),
    ("access.rehearsals", &["a lead"], "a lead's lists leave pretend clients out"),
    ("access.begin_request", ANY, "one's own key"),
    ("access.answer_request", ANY, "one's own key"),
    ("access.invite", &["an administrator"], "an administrator invites newcomers"),
    ("access.end_membership", &["an administrator"], "an administrator ends a membership"),
    ("access.take_on", &["another clinician"], "a client whom nobody treats"),
    ("access.take_on_rehearsal", &["another clinician"], "the same"),
    ("access.leave_seat", ANY, "one's own seat"),
    ("access.decline", &["another client's errand"], "one's own asking"),
    ("access.touch_signin", MEMBERS, "one's own sign-in"),
    ("access.note_refused", MEMBERS, "what one reached for in vain, some times an hour"),
    ("access.clients_of", HAND_OVER, "record numbers, for who hands clients over"),
    ("access.hand_over", HAND_OVER, "to a clinician of the practice; both are told"),
    ("access.replacements", HAND_OVER, "who else's passkey was lost"),
    ("access.agree_replacement", HAND_OVER, "as the second of two"),
    ("access.refuse_replacement", HAND_OVER, "as who is told of it"),
    ("access.ask_replacement", &["an administrator"], "as the first of two"),
    ("access.change_roles", &["an administrator"], "an administrator changes roles; the member is told"),
    ("access.keep_room", &["another session's room"], "one's own token"),
    ("access.is_fresh", MEMBERS, "one's own sign-in"),
    ("access.may_hand_over", HAND_OVER, "one's own role"),
    ("access.must_be_fresh", MEMBERS, "one's own sign-in"),
];

const MEMBERS: &[&str] = &["another clinician", "a lead", "an administrator"];
const HAND_OVER: &[&str] = &["a lead", "an administrator"];
const ANY: &[&str] = &[
    "another clinician",
    "a lead",
    "an administrator",
    "another session's seat",
    "a device that asks for another session's seat",
    "another session's room",
];

fn allowed(who: &str, outcome: &Outcome) -> bool {
    ALLOWED.iter().any(|(name, whose, _)| *name == outcome.function && whose.contains(&who))
}

fn listed(list: &[(&str, &str)], outcome: &Outcome) -> bool {
    list.iter().any(|(name, _)| *name == outcome.function)
}

/// Sign-ins of each role, a seat and a room, none of which holds any more.
async fn expired(ground: &Ground) -> Vec<Said> {
    let house = &ground.scene.house;
    let mut all = vec![
        ground.said("the seat that was closed", &Subject::Seat(ground.seat_token.clone())).await,
        ground.said("the device that was refused", &Subject::Seat(ground.asking_token.clone())).await,
        ground.said("the room whose token is over", &Subject::Room(ground.room_token.clone())).await,
        ground.said("the client, whose asking was taken back", &Subject::Errand(ground.errand_token.clone())).await,
        ground.said("the clinician, signed out", &ground.scene.clinician.subject()).await,
    ];
    for &role in Role::ALL {
        let member = house.member(&[role]).await;
        all.push(ground.said(&format!("{}, whose sign-in is over", role.name()), &member.subject()).await);
    }
    for statement in [
        "UPDATE access.signin SET ends_at = seen_at - interval '1 hour'",
        "UPDATE access.seat SET closed_at = asked_at",
        "UPDATE access.room_token SET ends_at = ends_at - interval '25 hours'",
        "UPDATE asking SET closed_as = 'withdrawn', closed_at = asked_at",
    ] {
        sqlx::query(statement).execute(&house.database.superuser).await.unwrap();
    }
    all
}

/// All there are to say, and what is none.
const KINDS: [&str; 7] = ["visitor", "member", "seat", "room", "errand", "owner", ""];

/// Nobody, whatever they call themselves.
async fn nobody(ground: &Ground) -> Vec<Said> {
    let made_up = ground.said("", &Subject::Member(Token::new(&ground.scene.house.app.world))).await.token;
    let without = KINDS.map(|kind| Said::new(format!("{kind:?} without a token"), kind, ""));
    without.into_iter().chain(KINDS.map(|kind| Said::new(format!("{kind:?} with a token that nobody was given"), kind, &made_up))).collect()
}

/// Whoever has this token, used as each of the others.
fn misused(real: &Said) -> Vec<Said> {
    let others = KINDS.iter().filter(|kind| **kind != real.kind);
    others.map(|kind| Said::new(format!("{} as {kind:?}", real.name), kind, &real.token)).collect()
}

async fn misused_by_members_and_clients(ground: &Ground) -> Vec<Said> {
    let member = ground.said("the clinician's token", &ground.scene.clinician.subject()).await;
    let errand = ground.said("the client's errand", &Subject::Errand(ground.errand_token.clone())).await;
    [misused(&member), misused(&errand)].concat()
}

async fn misused_in_a_session(ground: &Ground) -> Vec<Said> {
    let seat = ground.said("the seat's token", &Subject::Seat(ground.seat_token.clone())).await;
    let asking = ground.said("the asking device's token", &Subject::Seat(ground.asking_token.clone())).await;
    let room = ground.said("the room's token", &Subject::Room(ground.room_token.clone())).await;
    [misused(&seat), misused(&asking), misused(&room)].concat()
}

async fn faults(ground: &Ground, role: &PgConnectOptions, said: &Said, fits: impl Fn(&Outcome) -> bool) -> (usize, Vec<String>) {
    let outcomes = ground.call_all(role, said).await;
    let faults = outcomes.iter().filter(|outcome| !fits(outcome)).map(|outcome| format!("{}: {outcome}", said.name));
    (outcomes.len(), faults.take(12).collect())
}

/// All functions as each of these: every one refuses or is empty.
async fn opens_nothing(ground: &Ground, who: &[Said]) {
    let app = ground.scene.house.database.app();
    let (mut calls, mut wrong) = (0, Vec::new());
    for said in who {
        let (some, mut more) = faults(ground, &app, said, |outcome| outcome.is_nothing() || listed(&OPEN, outcome)).await;
        calls += some;
        wrong.append(&mut more);
    }
    assert!(calls > 5_000, "only {calls} calls: are these all functions?");
    assert!(wrong.is_empty(), "{} calls too many:\n{}", wrong.len(), wrong.join("\n"));
}

#[tokio::test]
async fn to_nobody_every_function_refuses_or_is_empty() {
    let ground = ground().await;
    opens_nothing(&ground, &nobody(&ground).await).await;
}

// In two, which run beside each other: together they take longer than all that comes after them.
#[tokio::test]
async fn to_a_members_token_used_as_another_every_function_refuses_or_is_empty() {
    let ground = ground().await;
    opens_nothing(&ground, &misused_by_members_and_clients(&ground).await).await;
}

#[tokio::test]
async fn to_a_sessions_token_used_as_another_every_function_refuses_or_is_empty() {
    let ground = ground().await;
    opens_nothing(&ground, &misused_in_a_session(&ground).await).await;
}

#[tokio::test]
async fn to_who_has_a_token_that_is_over_every_function_refuses_or_is_empty() {
    let ground = ground().await;
    opens_nothing(&ground, &expired(&ground).await).await;
}

#[tokio::test]
async fn the_role_that_signs_in_does_nothing_else() {
    let ground = ground().await;
    let mut wrong = Vec::new();
    let everybody = [nobody(&ground).await, misused_by_members_and_clients(&ground).await, misused_in_a_session(&ground).await];
    for said in everybody.concat() {
        let fits = |outcome: &Outcome| outcome.is_nothing() || listed(&OPEN_TO_SIGN_IN, outcome);
        wrong.append(&mut faults(&ground, &ground.signin_role(), &said, fits).await.1);
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

/// What a token is good for is its own: another clinician, another session's seat and room, the roles that treat nobody.
#[tokio::test]
async fn a_token_opens_nothing_of_somebody_elses() {
    let ground = ground().await;
    let (house, app) = (&ground.scene.house, &ground.scene.house.app);
    let other = house.member(&[Role::Clinician]).await;
    let client = leeward::clients::create(app, &other.subject(), leeward::clients::NewClient::default()).await.unwrap();
    let session = sessions::open(app, &other.subject(), NewSession { client, target: None }).await.unwrap();
    let (_, seat) = live::sit_down(app, &other.subject(), session).await.unwrap();
    let (_, asking) = live::sit_down(app, &other.subject(), session).await.unwrap();
    let room = Token::new(&app.world);
    sqlx::query("INSERT INTO access.room_token VALUES ($1, $2, $3)")
        .bind(room.hash())
        .bind(session)
        .bind(app.world.now() + chrono::Duration::hours(24))
        .execute(&house.database.superuser)
        .await
        .unwrap();
    let now = app.world.now();
    let asks = New {
        occasion: Occasion::Intake,
        measures: vec![Measure::Gad7],
        from_at: now,
        due_on: now.date_naive(),
        event: Private::default(),
    };
    let link = askings::make(app, &other.subject(), client, asks).await.unwrap();
    let errand = Token::parse(link.split('#').nth(1).unwrap()).unwrap();
    let (lead, administrator) = (house.member(&[Role::Lead]).await, house.member(&[Role::Administrator]).await);
    let mut wrong = Vec::new();
    for (name, subject) in [
        ("another clinician", other.subject()),
        ("a lead", lead.subject()),
        ("an administrator", administrator.subject()),
        ("another session's seat", Subject::Seat(seat)),
        ("a device that asks for another session's seat", Subject::Seat(asking)),
        ("another session's room", Subject::Room(room)),
        ("another client's errand", Subject::Errand(errand)),
    ] {
        let said = ground.said(name, &subject).await;
        let own = ground.own();
        let fits = |outcome: &Outcome| {
            let about_them = own.iter().any(|id| outcome.told.contains(id.as_str()));
            listed(&OPEN, outcome)
                || allowed(name, outcome)
                || outcome.is_nothing()
                || (outcome.written == 0 && outcome.fault.is_none() && !about_them)
        };
        wrong.append(&mut faults(&ground, &house.database.app(), &said, fits).await.1);
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

/// The seat and the room of the session itself: a device that only asks opens nothing.
#[tokio::test]
async fn a_device_that_only_asks_opens_no_room() {
    let ground = ground().await;
    let asking = ground.said("asks", &Subject::Seat(ground.asking_token.clone())).await;
    let opened = |outcome: &Outcome| outcome.function != "access.open_room" || outcome.is_nothing();
    let wrong = faults(&ground, &ground.scene.house.database.app(), &asking, opened).await.1;
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
    let seated = ground.said("sits", &Subject::Seat(ground.seat_token.clone())).await;
    let outcomes = ground.call_all(&ground.scene.house.database.app(), &seated).await;
    assert!(
        outcomes.iter().any(|outcome| outcome.function == "access.open_room" && outcome.told == "true"),
        "the one that sits there does"
    );
}

/// An invitation for somebody who is a member makes a passkey of theirs: that is theirs alone to ask for.
#[tokio::test]
async fn an_administrator_invites_newcomers_only() {
    let ground = ground().await;
    let administrator = ground.scene.house.member(&[Role::Administrator]).await;
    let said = ground.said("an administrator", &administrator.subject()).await;
    let outcomes = ground.call_all(&ground.scene.house.database.app(), &said).await;
    let (for_members, for_newcomers): (Vec<&Outcome>, Vec<&Outcome>) =
        outcomes.iter().filter(|o| o.function == "access.invite").partition(|o| !o.call.contains("NULL::uuid"));
    assert!(!for_members.is_empty() && for_members.iter().all(|outcome| outcome.is_nothing()), "a member's passkey is the member's");
    assert!(for_newcomers.iter().any(|outcome| outcome.written > 0), "a newcomer is invited");
}

#[tokio::test]
async fn a_pretend_client_is_known_to_its_clinician_and_to_leads() {
    let ground = ground().await;
    let house = &ground.scene.house;
    let other = house.member(&[Role::Clinician]).await;
    let own = leeward::clients::rehearsal(&house.app, &ground.scene.clinician.subject()).await.unwrap();
    let others = leeward::clients::rehearsal(&house.app, &other.subject()).await.unwrap();
    let (lead, administrator) = (house.member(&[Role::Lead]).await, house.member(&[Role::Administrator]).await);
    for (subject, mut known) in [
        (ground.scene.clinician.subject(), vec![own]),
        (other.subject(), vec![others]),
        (lead.subject(), vec![own, others]),
        (administrator.subject(), vec![]),
        (Subject::Visitor, vec![]),
        (Subject::Seat(ground.seat_token.clone()), vec![]),
        (Subject::Room(ground.room_token.clone()), vec![]),
    ] {
        let mut tx = house.app.database.look(&subject).await.unwrap();
        let told: Vec<uuid::Uuid> =
            sqlx::query_scalar("SELECT id FROM access.rehearsals() id ORDER BY id").fetch_all(&mut *tx).await.unwrap();
        known.sort();
        assert_eq!(told, known, "{subject:?}");
    }
}
