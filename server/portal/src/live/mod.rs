//! The live room: joining, stage, desk, and the sockets between them.

mod admit;
mod calls;
mod code;
mod crowd;
mod desk;
mod desk_turns;
mod history;
mod hub;
mod join;
mod lease;
mod names;
mod queries;
mod queries_evidence;
mod queries_room;
mod recorder;
mod relay;
mod room_effects;
mod room_seats;
mod room_task;
mod room_waiting;
mod socket;
mod socket_end;
mod stage;
mod waiting_alone;

use axum::routing::{get, post};
use serde::de::DeserializeOwned;

use crate::platform::{Repeats, Routes, Rule};
use crate::store::error::Error;

pub use admit::{Admission, admit};
pub use calls::Calls;
pub use history::{PastOrder, PastSet, keep_past, sit_down};
pub use hub::{Rooms, bell, gauges};
pub use join::mint;
pub use relay::Relay;

/// What a page's script sent.
fn read<T: DeserializeOwned>(body: &[u8]) -> Result<T, Error> {
    serde_json::from_slice(body).map_err(|_| Error::BadRequest("This is not what the page sends. Reload the page and try again."))
}

/// Adds this feature's routes.
pub(crate) fn routes(routes: Routes) -> Routes {
    routes
        .get("/j", Rule::Anybody, get(stage::link))
        .post_repeated("/join", Rule::Anybody, Repeats::ByNature("the seat's token comes from the page's key"), post(join::join))
        .get("/left", Rule::Anybody, get(stage::left))
        .get("/stage", Rule::Seat, get(stage::show))
        .get("/stage/socket", Rule::Seat, get(socket::stage))
        .post_repeated(
            "/stage/evidence",
            Rule::Seat,
            Repeats::ByNature("each fact is kept once, by its set and number"),
            post(stage::hand_in),
        )
        .post_repeated("/stage/leave", Rule::Seat, Repeats::ByNature("a seat that was left stays left"), post(stage::leave))
        .get("/sessions/{session}/desk", Rule::Care, get(desk::show))
        .get("/sessions/{session}/desk/socket", Rule::Care, get(socket::desk))
        .post("/sessions/{session}/link", Rule::Care, post(join::make_link))
        .post("/sessions/{session}/code", Rule::Care, post(join::make_code))
        .post_repeated(
            "/sessions/{session}/admit",
            Rule::Care,
            Repeats::ByNature("it names the seat, which is admitted once"),
            post(admit::post),
        )
        .post_repeated(
            "/sessions/{session}/seat",
            Rule::Care,
            Repeats::ByNature("it names the seat and where it goes"),
            post(admit::decide),
        )
}
