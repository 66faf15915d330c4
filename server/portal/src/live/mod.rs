//! The live room: joining, stage, desk, and the sockets between them.

mod admit;
mod clerk;
mod code;
mod desk;
mod evidence;
mod history;
mod holder;
mod hub;
mod join;
mod line;
mod names;
mod queries;
mod queries_room;
mod room_effects;
mod room_seats;
mod room_task;
mod socket;
mod stage;

use axum::routing::{get, post};
use leeward_core::room::Event;
use serde::de::DeserializeOwned;
use uuid::Uuid;

use crate::app::{App, Routes, Rule};
use crate::error::Error;

pub use admit::{Admission, admit};
pub use history::{PastOrder, PastSet, keep_past, sit_down};
pub use hub::Rooms;
pub use join::{mint, mint_code};

/// Ends the room of a session that has ended in the record: a set that runs is stopped, both ends are told, the
/// client with `words`, and the sockets close. The link died with the session.
pub async fn close(app: &App, session: Uuid, words: Option<String>) {
    app.rooms.post(session, Event::Close { words }.into()).await;
}

/// The client's cautions were changed in the record: their rooms lock the moving dot, or free it.
pub async fn tell(app: &App, client: Uuid, eyes_locked: bool) {
    for door in app.rooms.of_client(client).await {
        // A room that ends at this moment reads the cautions when it opens again.
        let _ = door.mail.send(Event::EyesLocked(eyes_locked).into()).await;
    }
}

/// What a page's script sent.
fn read<T: DeserializeOwned>(body: &[u8]) -> Result<T, Error> {
    serde_json::from_slice(body).map_err(|_| Error::BadRequest("This is not what the page sends. Reload the page and try again."))
}

/// Adds this feature's routes.
pub(crate) fn routes(routes: Routes) -> Routes {
    routes
        .get("/j", Rule::Anybody, get(stage::link))
        .post("/join", Rule::Anybody, post(join::join))
        .get("/left", Rule::Anybody, get(stage::left))
        .get("/stage", Rule::Seat, get(stage::show))
        .get("/stage/socket", Rule::Seat, get(socket::stage))
        .post("/stage/evidence", Rule::Seat, post(stage::hand_in))
        .post("/stage/leave", Rule::Seat, post(stage::leave))
        .get("/sessions/{session}/desk", Rule::Care, get(desk::show))
        .get("/sessions/{session}/desk/socket", Rule::Care, get(socket::desk))
        .post("/sessions/{session}/link", Rule::Care, post(join::make_link))
        .post("/sessions/{session}/code", Rule::Care, post(join::make_code))
        .post("/sessions/{session}/admit", Rule::Care, post(admit::post))
        .post("/sessions/{session}/seat", Rule::Care, post(admit::decide))
}
