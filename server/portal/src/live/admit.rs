//! Admitting the client, and which of two devices has the seat.

use axum::Json;
use axum::body::Bytes;
use axum::extract::State;
use axum::http::StatusCode;
use axum::response::{IntoResponse, Response};
use leeward_core::wire::Answer;
use serde::Deserialize;
use uuid::Uuid;

use super::queries;
use crate::base::ids::new_id;
use crate::platform::App;
use crate::platform::Member;
use crate::platform::codes;
use crate::platform::forms::{Id, Lines, Need, Problems};
use crate::store::error::Error;
use crate::store::seal::{Opened, Private};
use crate::store::subject::{Act, Subject};
use crate::{clients, sessions};

/// Characters that say where somebody is.
const MOST_LOCATION: usize = 300;

/// What the clinician confirmed with the client before admitting them.
pub struct Admission {
    /// Where the client is now.
    pub location: Private,
    /// The number to call when the line is lost.
    pub call_back: Private,
}

/// Admits the client at this device. Not in effect before it returns. Asked again, nothing happens twice.
///
/// # Errors
/// [`Error::NotFound`] unless `subject` treats the session's client and the session is open;
/// [`Error::Conflict`] when that device does not have the seat.
pub async fn admit(app: &App, subject: &Subject, session: Uuid, seat: Uuid, admission: Admission) -> Result<(), Error> {
    let _told = app.bell.follows(session);
    let mut tx = app.database.act(subject, Act::new("session.admit").object(session)).await?;
    let open = queries::open_session(&mut tx, session).await?;
    tx.concerns(open.client);
    if !queries::admit_seat(&mut tx, session, seat).await? {
        return Err(Error::Conflict("Another device has the seat now, or nobody has. Look who is at the door, then admit them."));
    }
    let key = clients::key(&mut tx, app, open.client).await?;
    let location = admission.location.clone();
    sessions::change_words(&mut tx, app, &key, session, |words| {
        words.location = admission.location;
        words.call_back = admission.call_back;
    })
    .await?;
    // A seat is admitted once, so its own id names the moment.
    let now = app.world.now();
    if queries::admit(&mut tx, session, seat, now).await? {
        let usual = clients::details(&mut tx, app, open.client).await?.usual_location;
        let usual = matches!(&usual, Opened::Text(text) if *text == location);
        let place = if usual { Answer::UsualPlace } else { Answer::AnotherPlace };
        for answer in [place, Answer::Private] {
            queries::answer(&mut tx, new_id(&app.world), session, &codes::name(answer)?, now).await?;
        }
    }
    tx.commit().await
}

/// What is said of a client at `location` when the practice may treat at `places`, one a line; empty when one of them stands in the
/// address, or nothing is said about it.
pub(super) fn outside(places: &str, location: &str) -> String {
    let places: Vec<&str> = places.lines().map(str::trim).filter(|place| !place.is_empty()).collect();
    let location = location.to_lowercase();
    if places.is_empty() || places.iter().any(|place| location.contains(&place.to_lowercase())) {
        return String::new();
    }
    format!("None of the practice\u{2019}s places ({}): check that you may treat there.", places.join(", "))
}

#[derive(Deserialize)]
struct AdmissionForm {
    #[serde(default)]
    location: String,
    #[serde(default)]
    call_back: String,
    #[serde(default)]
    private: bool,
    /// The device that the desk shows as waiting.
    seat: Uuid,
}

impl AdmissionForm {
    fn check(&self) -> Result<Admission, Problems> {
        let mut problems = Problems::default();
        let location = problems.text("location", &self.location, MOST_LOCATION, Need::Required, Lines::One);
        let call_back = problems.phone("call_back", &self.call_back, Need::Required);
        if !self.private {
            problems.add("private", "Confirm that they are alone, or that they are content with who is near.");
        }
        if problems.none() { Ok(Admission { location: Private::new(location), call_back: Private::new(call_back) }) } else { Err(problems) }
    }
}

/// `POST /sessions/{session}/admit`
pub(super) async fn post(State(app): State<App>, member: Member, Id(session): Id, body: Bytes) -> Result<Response, Error> {
    let typed: AdmissionForm = super::read(&body)?;
    match typed.check() {
        Ok(admission) => {
            let location = admission.location.clone();
            admit(&app, &member.subject, session, typed.seat, admission).await?;
            let mut tx = app.database.look(&member.subject).await?;
            let caution = outside(&queries::places(&mut tx).await?, location.reveal());
            Ok(if caution.is_empty() {
                StatusCode::NO_CONTENT.into_response()
            } else {
                Json(serde_json::json!({ "caution": caution })).into_response()
            })
        }
        Err(problems) => {
            // Whether there is such a session is not told to others by the sort of answer.
            let mut tx = app.database.look(&member.subject).await?;
            queries::open_session(&mut tx, session).await?;
            Ok((StatusCode::UNPROCESSABLE_ENTITY, Json(serde_json::json!({ "errors": problems }))).into_response())
        }
    }
}

#[derive(Deserialize)]
struct Decided {
    decision: Decision,
    /// The device that the desk shows as asking, or as having the seat.
    seat: Uuid,
}

/// What becomes of a second device that asks for the seat, or of the first one.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "snake_case")]
enum Decision {
    /// It gets the seat; the first one loses it, and the client is admitted anew.
    Move,
    /// It is sent away, and whatever asked before it.
    Refuse,
    /// It has the seat and loses it; the session goes on without anybody there.
    Remove,
}

/// `POST /sessions/{session}/seat`
pub(super) async fn decide(State(app): State<App>, member: Member, Id(session): Id, body: Bytes) -> Result<StatusCode, Error> {
    let _told = app.bell.follows(session);
    let Decided { decision, seat } = super::read(&body)?;
    let act = match decision {
        Decision::Move => Act::new("seat.move"),
        Decision::Refuse => Act::new("seat.refuse"),
        Decision::Remove => Act::new("seat.remove"),
    };
    let mut tx = app.database.act(&member.subject, act.object(session)).await?;
    let open = queries::open_session(&mut tx, session).await?;
    tx.concerns(open.client);
    let (stands, otherwise) = match decision {
        Decision::Remove => {
            (queries::remove_seat(&mut tx, session, seat).await?, "That device has not got the seat any more. Look who is there now.")
        }
        Decision::Move | Decision::Refuse => {
            let to_it = decision == Decision::Move;
            (
                queries::decide_seat(&mut tx, session, seat, to_it).await?,
                "That device does not ask for the seat any more. Look who asks now.",
            )
        }
    };
    if !stands {
        return Err(Error::Conflict(otherwise));
    }
    tx.commit().await?;
    Ok(StatusCode::NO_CONTENT)
}

#[cfg(test)]
mod tests {
    use super::outside;

    // That a client must be where the clinician may treat: telehealth guidance (clinical reference 1.1, source 3).
    #[test]
    fn a_place_outside_the_practices_list_is_said() {
        let places = "Ternhaven\n North Skerry \n\n";
        for inside in ["12 Fjordgata, ternhaven", "North Skerry, the yellow house"] {
            assert_eq!(outside(places, inside), "");
        }
        assert!(outside(places, "a hotel in Porto").contains("(Ternhaven, North Skerry)"));
        assert_eq!(outside("\n ", "a hotel in Porto"), "", "a practice that says nothing is never warned");
    }
}
