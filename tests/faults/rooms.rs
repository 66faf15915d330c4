//! A commit that was let through and whose answer was lost: the live room follows it all the same, without a second try.

use std::time::{Duration, Instant};

use leeward::live::{self, Admission};
use leeward::platform::Route;
use leeward::store::seal::Private;
use leeward_core::wire::{DeskView, RoomState, SeatState, StageView, ToDesk, ToStage};
use leeward_tests::Wire;
use tokio::time::sleep;
use uuid::Uuid;

use crate::again::routes;
use crate::figures::{figure, is_full, seconds};
use crate::page::{Desk, Stage};
use crate::samples::{Sample, sample};

/// An open room agrees with the record by then.
const AGREES: Duration = Duration::from_secs(5);

/// What changes something that an open room shows. No other route may, and the room must not make anything up.
const FOLLOWED: [&str; 6] = [
    "/sessions/{session}/close",
    "/clients/{client}/edit",
    "/sessions/{session}/admit",
    "/sessions/{session}/seat",
    "/join",
    "/stage/leave",
];
/// Where the client is not inside yet.
const BEFORE_ADMISSION: [&str; 3] = ["/sessions/{session}/admit", "/sessions/{session}/seat", "/join"];

/// What the room has to follow, as the record has it.
#[derive(Clone, Debug, PartialEq)]
struct Facts {
    ended: bool,
    eyes_locked: bool,
    seat: SeatState,
    seat_id: Option<String>,
    asking: Option<String>,
}

async fn record(sent: &Sample) -> Facts {
    let pool = &sent.scene.house.database.superuser;
    let (ended, eyes_locked): (bool, bool) = sqlx::query_as(
        "SELECT s.ended_at IS NOT NULL, c.seizures <> 'no' OR c.eye_condition <> 'no'
         FROM session s JOIN client c ON c.id = s.client_id WHERE s.id = $1",
    )
    .bind(sent.scene.session)
    .fetch_one(pool)
    .await
    .unwrap();
    let devices: Vec<(Uuid, bool, bool, bool)> = sqlx::query_as(
        "SELECT id, taken_at IS NOT NULL, admitted_at IS NOT NULL, closed_at IS NOT NULL FROM access.seat
         WHERE session_id = $1 AND (closed_at IS NULL OR closed_why = 'left') ORDER BY asked_no",
    )
    .bind(sent.scene.session)
    .fetch_all(pool)
    .await
    .unwrap();
    // Whoever sits there, or else whoever left last.
    let place = devices.iter().rfind(|(_, taken, _, closed)| *taken && !closed).or_else(|| devices.iter().rfind(|(_, taken, ..)| *taken));
    let seat = match place {
        None => SeatState::Empty,
        Some((.., true)) => SeatState::Left,
        Some((_, _, true, _)) => SeatState::Admitted,
        Some(_) => SeatState::Waiting,
    };
    let asking = devices.iter().rfind(|(_, taken, _, closed)| !taken && !closed);
    let id = |device: Option<&(Uuid, bool, bool, bool)>| device.map(|(id, ..)| id.to_string());
    Facts { ended, eyes_locked, seat, seat_id: id(place), asking: id(asking) }
}

/// Both pages, as they were told last.
struct Pages {
    desk: Desk,
    stage: Option<Stage>,
}

impl Pages {
    async fn open(sent: &Sample) -> Self {
        let house = &sent.scene.house;
        let desk = Desk::open(&sent.scene.clinician, &house.origin, sent.scene.session).await;
        let stage = match &sent.seated {
            Some(browser) => Some(Stage::open(browser, &house.origin).await),
            None => None,
        };
        Self { desk, stage }
    }

    fn desk_view(&self) -> Option<DeskView> {
        self.desk.all().into_iter().rev().find_map(|message| if let ToDesk::View(view) = message { Some(view) } else { None })
    }

    /// Whether both say what the record says. The first device's page stands for the client's end.
    fn agree(&self, record: &Facts, first_seat: Option<&str>) -> bool {
        self.desk_agrees(record) && self.stage.as_ref().is_none_or(|stage| stage_agrees(stage, record, first_seat))
    }

    fn desk_agrees(&self, record: &Facts) -> bool {
        let Some(view) = self.desk_view() else { return false };
        if record.ended {
            return view.state == RoomState::Closed && !self.desk.is_open();
        }
        let DeskView { seat, eyes_locked, .. } = view;
        let found = Facts { ended: view.state == RoomState::Closed, eyes_locked, seat, seat_id: view.seat_id, asking: view.asking };
        found == *record
    }
}

fn stage_agrees(stage: &Stage, record: &Facts, seat: Option<&str>) -> bool {
    let sits = seat == record.seat_id.as_deref() && record.seat != SeatState::Left;
    if record.ended || !sits {
        return !stage.is_open();
    }
    let view = stage.all().into_iter().rev().find_map(|message| if let ToStage::View(view) = message { Some(view) } else { None });
    let says = |StageView { state, figure, .. }: StageView| match record.seat {
        SeatState::Admitted => ![RoomState::Waiting, RoomState::AtTheDoor].contains(&state) && figure != record.eyes_locked,
        _ => state == RoomState::AtTheDoor,
    };
    view.is_some_and(says)
}

/// How long it takes until both pages say what the record says; `None`: not in time.
async fn agreement(sent: &Sample, pages: &Pages, seat: Option<&str>) -> Option<Duration> {
    let began = Instant::now();
    while began.elapsed() < AGREES {
        if pages.agree(&record(sent).await, seat) {
            return Some(began.elapsed());
        }
        sleep(Duration::from_millis(20)).await;
    }
    None
}

/// Something to send, with the client inside if it takes that; `None` where the session is over before it is sent.
async fn ready(route: &Route) -> Option<Sample> {
    let mut sent = sample(route).await;
    if record(&sent).await.ended {
        return None;
    }
    if !BEFORE_ADMISSION.contains(&route.path) {
        if sent.seated.is_none() {
            sent.seat().await;
        }
        let seat = record(&sent).await.seat_id.expect("somebody sits there").parse().unwrap();
        let admission = Admission { location: Private::new("Room 4"), call_back: Private::new("112") };
        let (app, clinician) = (&sent.scene.house.app, sent.scene.clinician.subject());
        live::admit(app, &clinician, sent.scene.session, seat, admission).await.unwrap();
        if route.path == "/sessions/{session}/code" {
            // The one who sits there came by a link of their own, which ended the first.
            sent.link().await;
        }
    }
    Some(sent)
}

/// How many commits it takes; `None` as above.
async fn commits(route: &Route) -> Option<u32> {
    let control = ready(route).await?;
    let wire = control.scene.house.wire.as_ref().unwrap();
    let before = wire.commits();
    let answer = control.send().await;
    assert!(answer.status < 400, "{}: {} {}", route.path, answer.status, answer.body);
    Some(wire.commits() - before)
}

/// Until the room has written down that its pages came: the next commit is the request's.
async fn quiet(wire: &Wire) {
    let (mut commits, mut since) = (wire.commits(), Instant::now());
    while since.elapsed() < Duration::from_millis(300) {
        sleep(Duration::from_millis(20)).await;
        if wire.commits() != commits {
            (commits, since) = (wire.commits(), Instant::now());
        }
    }
}

/// Loses the answer to one commit of it with the room open: whether the record changed, and how long the room took.
async fn lose(route: &Route, commit: u32) -> (bool, Duration) {
    let sent = ready(route).await.expect("as before");
    let before = record(&sent).await;
    let pages = Pages::open(&sent).await;
    let seat = before.seat_id.as_deref();
    agreement(&sent, &pages, seat).await.unwrap_or_else(|| panic!("{}: no room: {:#?}", route.path, pages.desk_view()));
    let wire = sent.scene.house.wire.as_ref().unwrap();
    quiet(wire).await;
    wire.lose_answer_after(commit);
    sent.send().await;
    assert!(wire.has_lost(), "{}: no commit {commit}", route.path);
    let took = agreement(&sent, &pages, seat).await;
    let now = record(&sent).await;
    let said = || format!("{}, commit {commit}: the record says {now:#?} and the desk {:#?}", route.path, pages.desk_view());
    (now != before, took.unwrap_or_else(|| panic!("{}", said())))
}

#[tokio::test]
async fn the_room_follows_a_commit_whose_answer_was_lost() {
    let (mut lost, mut open, mut slowest) = (0, 0, Duration::ZERO);
    for route in routes() {
        let follows = FOLLOWED.contains(&route.path);
        // In the short form what a room follows, and the last commit of it, which holds the effect as a rule.
        if !(is_full() || follows) {
            continue;
        }
        let Some(took) = commits(&route).await else { continue };
        let mut followed = false;
        for commit in (0..took).rev().take(if is_full() { 8 } else { 1 }) {
            let (changed, agreed) = lose(&route, commit).await;
            (lost, slowest, followed) = (lost + 1, slowest.max(agreed), followed || changed);
        }
        assert_eq!(followed, follows, "{}: whether the record has something new for the room", route.path);
        open += 1;
    }
    let what = format!("{lost} lost answers at {open} routes with the room open, no second try: the room agrees with the record");
    figure(&what, open >= FOLLOWED.len() && slowest < AGREES, &seconds(slowest), &seconds(AGREES));
}
