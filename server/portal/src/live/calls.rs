//! How the two pages of a session may be connected for picture and voice, and what each is told to do so. Neither comes by here: the pages send them
//! to each other, or to the practice's relay.

use std::sync::Arc;

use leeward_core::call::Reach;
use leeward_core::room::Event;
use leeward_core::wire::{ToCaller, ToDesk, ToStage, Ways};
use serde::Serialize;

use super::relay::Relay;
use super::room_task::RoomTask;
use super::socket_end::SocketEnd;
use crate::platform::App;
use crate::store::error::Error;

/// What this portal has to connect pages by.
pub struct Calls {
    /// The practice's relay, if it has one.
    pub relay: Option<Relay>,
}

impl Calls {
    /// By what the practice allows; `None`: not at all. `direct`: the pages may connect without the relay.
    pub(super) fn reach(&self, direct: bool) -> Option<Reach> {
        if direct { Some(Reach::Direct) } else { self.relay.as_ref().map(Relay::reach) }
    }
}

impl App {
    /// See [`Calls`].
    #[must_use]
    pub fn calls(&self) -> &Calls {
        self.own::<Arc<Calls>>()
    }
}

impl RoomTask {
    /// Tells both pages to connect, each by ways of its own.
    pub(super) fn begin_call(&mut self, desk: u64, stage: u64, call: u32, relay_only: bool) -> Vec<Event> {
        let (for_desk, for_stage) = match (self.ways(desk, relay_only), self.ways(stage, relay_only)) {
            (Ok(desk), Ok(stage)) => (desk, stage),
            (Err(fault), _) | (_, Err(fault)) => {
                tracing::error!(%fault, "two pages could not be told how to connect");
                return vec![];
            }
        };
        let begin = |offers, ways| ToCaller::Begin { call, offers, ways };
        let told = [self.send(desk, &ToDesk::Call(begin(true, for_desk))), self.send(stage, &ToStage::Call(begin(false, for_stage)))];
        told.into_iter().flatten().collect()
    }

    /// Gives one page new ways for the call that goes on.
    pub(super) fn renew_ways(&mut self, socket: u64, of_desk: bool, call: u32, relay_only: bool) -> Option<Event> {
        match self.ways(socket, relay_only) {
            Ok(ways) if of_desk => self.send(socket, &ToDesk::Call(ToCaller::Ways { call, ways })),
            Ok(ways) => self.send(socket, &ToStage::Call(ToCaller::Ways { call, ways })),
            Err(fault) => {
                tracing::error!(%fault, "a page could not be given new ways");
                None
            }
        }
    }

    /// Passes on what a page is told about the call. What the other page says never costs it its line: when that is behind already it is left out,
    /// and the pages try again by themselves.
    pub(super) fn tell_caller<T: Serialize>(&mut self, socket: u64, said: ToCaller, to: impl Fn(ToCaller) -> T) -> Option<Event> {
        if matches!(said, ToCaller::Signal { .. }) && self.lines.get(&socket).is_some_and(|line| line.out.is_behind()) {
            tracing::debug!("a page is behind: what the other says of the call is left out");
            return None;
        }
        self.send(socket, &to(said))
    }

    fn ways(&self, socket: u64, relay_only: bool) -> Result<Ways, Error> {
        let app = &self.lease.app;
        let Some(relay) = &app.calls().relay else {
            return Ok(Ways { relay_only, urls: vec![], username: String::new(), credential: String::new(), holds_for: 0.0 });
        };
        // Of this seat, or of the session's desks, and nobody's name: whoever connects again and again has the same relay's quota.
        let seat = self.lines.get(&socket).and_then(SocketEnd::seat);
        let parts: [&[u8]; 2] = [self.lease.session.as_bytes(), seat.as_ref().map_or(b"desk", |seat| seat.as_bytes())];
        let whose = hex::encode(&app.derived.bytes("relay", &parts)[..12]);
        relay.ways(&whose, app.world.now(), relay_only).map_err(|fault| Error::Inner(format!("a relay's password: {fault}")))
    }
}
