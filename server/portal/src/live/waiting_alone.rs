//! A device that asks for the seat of a session whose room is not open. It may not have one opened: it waits here, by the
//! conduct of those that wait beside a room, until somebody who may has opened it, or there is nothing to wait for.

use std::time::Duration;

use axum::extract::ws::{Message, WebSocket};
use futures_util::StreamExt;
use futures_util::stream::SplitSink;
use leeward_core::room::Conduct;
use leeward_core::wire::{FromStage, ToStage};
use tokio::time::{Instant, sleep_until};

use super::queries;
use super::room_task::{READING, WAITING_VIEW};
use super::room_waiting::{hear, silent, view};
use super::socket::{Halves, put, said};
use super::socket_end::{Out, closing};
use crate::platform::App;
use crate::platform::Seat;
use crate::store::error::Error;
use crate::store::patience::{ANSWER, within};

struct Waiting<'a> {
    sink: &'a mut SplitSink<WebSocket, Message>,
    conduct: Conduct,
    since: Instant,
    views: u32,
    next_view: Instant,
    next_look: Instant,
}

/// Waits. Returns what the socket is to be closed with; `None`: the page has gone.
pub(super) async fn wait((sink, stream): &mut Halves, app: &App, seat: &Seat) -> Option<Out> {
    let now = Instant::now();
    let mut waiting = Waiting { sink, conduct: Conduct::new(0.0), since: now, views: 0, next_view: now, next_look: now + READING };
    loop {
        let done = tokio::select! {
            message = stream.next() => match message.map(said::<FromStage>) {
                Some(Ok(Some(message))) => waiting.hear(message).await,
                Some(Ok(None)) => Ok(()),
                Some(Err(last)) => Err(last),
                None => Err(None),
            },
            () = sleep_until(waiting.wake()) => waiting.due(app, seat).await,
        };
        if let Err(last) = done {
            return last;
        }
    }
}

impl Waiting<'_> {
    fn now(&self) -> f64 {
        self.since.elapsed().as_secs_f64() * 1_000.0
    }

    fn wake(&self) -> Instant {
        let due = self.since + Duration::from_secs_f64(self.conduct.next_wake().max(0.0) / 1_000.0);
        let view = self.conduct.greeted.then_some(self.next_view);
        [Some(due), view, Some(self.next_look)].into_iter().flatten().min().unwrap_or(self.next_look)
    }

    async fn hear(&mut self, message: FromStage) -> Result<(), Option<Out>> {
        let now = self.now();
        if hear(&mut self.conduct, now, self.views, message)? { self.show().await } else { Ok(()) }
    }

    async fn due(&mut self, app: &App, seat: &Seat) -> Result<(), Option<Out>> {
        let now = self.now();
        if self.conduct.is_dead(now) {
            return Err(Some(silent()));
        }
        // It comes in by the door, as everybody.
        if app.rooms().find(seat.session).is_some() {
            return Err(Some(closing::COME_BACK));
        }
        if let Some(beat) = self.conduct.beat(now, false, (None, 0.0)) {
            self.tell(&ToStage::Beat(beat)).await?;
        }
        if self.conduct.greeted && Instant::now() >= self.next_view {
            self.show().await?;
        }
        if Instant::now() >= self.next_look {
            self.next_look = Instant::now() + READING;
            return still_asks(app, seat).await.map_or(Ok(()), |last| Err(Some(last)));
        }
        Ok(())
    }

    async fn show(&mut self) -> Result<(), Option<Out>> {
        self.views += 1;
        self.next_view = Instant::now() + WAITING_VIEW;
        self.conduct.view_sent(self.views);
        self.tell(&view(self.views)).await
    }

    async fn tell(&mut self, message: &ToStage) -> Result<(), Option<Out>> {
        let Ok(text) = serde_json::to_string(message) else { return Err(None) };
        if put(self.sink, text).await { Ok(()) } else { Err(None) }
    }
}

/// `None` while it does; else what it is told. While the database does not answer, nobody is sent away.
async fn still_asks(app: &App, seat: &Seat) -> Option<Out> {
    let asked = async {
        let mut tx = app.database.look(&seat.subject).await?;
        let state = queries::seat_state(&mut tx).await?;
        let over = state.is_none() && queries::seat_is_over(&mut tx).await?;
        tx.commit().await?;
        Ok::<_, Error>((state, over))
    };
    match within(ANSWER, asked).await {
        Ok((Some((_, state)), _)) => (state != "asked").then_some(closing::COME_BACK),
        Ok((None, true)) => Some(closing::OVER),
        Ok((None, false)) => Some(closing::SEAT_CLOSED),
        Err(fault) => {
            tracing::warn!(%fault, "a waiting device's seat could not be looked at");
            None
        }
    }
}
