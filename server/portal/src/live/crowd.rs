//! How many sockets may be held at once by whoever has not been let in yet. They are counted until their connection is
//! closed, and turned away before the database is asked, so that many of them cost next to nothing.

use std::collections::HashMap;
use std::net::IpAddr;
use std::sync::{Arc, Mutex, PoisonError};

use axum::extract::FromRequestParts;
use axum::http::request::Parts;
use uuid::Uuid;

use crate::platform::App;
use crate::platform::token_in;
use crate::store::error::Error;

/// One page has one socket, and on a poor line some that are about to be given up.
const OF_ONE_SEAT: u32 = 8;
/// Devices that ask for the seat of one session: a person tries two or three.
const WAITING_IN_SESSION: u32 = 8;
/// The same from one address: a clinic's clients may share one.
const WAITING_AT_ADDRESS: u32 = 16;

/// Whose sockets are counted.
#[derive(Clone, PartialEq, Eq, Hash)]
enum Whose {
    /// The hash of what the cookie says, whether or not it is a seat's.
    Seat(Vec<u8>),
    WaitingIn(Uuid),
    WaitingAt(IpAddr),
}

/// Counts them.
#[derive(Clone, Default)]
pub(super) struct Crowd(Arc<Mutex<HashMap<Whose, u32>>>);

/// A place in the crowd, free again when this is dropped.
pub(super) struct Place {
    crowd: Crowd,
    whose: Whose,
}

impl Crowd {
    /// Places for a device that only asks for the seat.
    ///
    /// # Errors
    /// [`Error::Busy`] when too many wait already.
    pub(super) fn waiting(&self, session: Uuid, address: IpAddr) -> Result<[Place; 2], Error> {
        let at_address = self.take(Whose::WaitingAt(address), WAITING_AT_ADDRESS)?;
        Ok([at_address, self.take(Whose::WaitingIn(session), WAITING_IN_SESSION)?])
    }

    fn take(&self, whose: Whose, most: u32) -> Result<Place, Error> {
        let mut counts = self.0.lock().unwrap_or_else(PoisonError::into_inner);
        let count = counts.entry(whose.clone()).or_default();
        if *count >= most {
            return Err(Error::Busy("This page is open too many times at once. Close the others, then try again in a moment."));
        }
        *count += 1;
        Ok(Place { crowd: self.clone(), whose })
    }
}

impl Drop for Place {
    fn drop(&mut self) {
        let mut counts = self.crowd.0.lock().unwrap_or_else(PoisonError::into_inner);
        if let Some(count) = counts.get_mut(&self.whose) {
            *count -= 1;
            if *count == 0 {
                counts.remove(&self.whose);
            }
        }
    }
}

/// One of the places of a seat's own sockets; none for a request without a seat. Taken before the seat is looked up.
pub(super) struct SeatPlace(#[expect(dead_code, reason = "held, and let go when it is dropped")] Option<Place>);

impl FromRequestParts<App> for SeatPlace {
    type Rejection = Error;

    async fn from_request_parts(parts: &mut Parts, app: &App) -> Result<Self, Error> {
        let token = token_in(&parts.headers, &app.origin.seat_cookie());
        let place = token.map(|token| app.rooms().crowd().take(Whose::Seat(token.hash()), OF_ONE_SEAT)).transpose()?;
        Ok(Self(place))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn places_run_out_for_one_session_and_come_back() {
        let crowd = Crowd::default();
        let address = IpAddr::from([192, 0, 2, 1]);
        let (a, b) = (Uuid::from_u128(1), Uuid::from_u128(2));
        let mut held: Vec<_> = (0..WAITING_IN_SESSION).map(|_| crowd.waiting(a, address).ok().unwrap()).collect();
        assert!(crowd.waiting(a, address).is_err());
        held.extend((0..WAITING_AT_ADDRESS - WAITING_IN_SESSION).map(|_| crowd.waiting(b, address).ok().unwrap()));
        assert!(crowd.waiting(Uuid::from_u128(3), address).is_err(), "from this address");
        assert!(crowd.waiting(Uuid::from_u128(3), IpAddr::from([192, 0, 2, 2])).is_ok(), "from another");
        held.clear();
        assert!(crowd.0.lock().unwrap().is_empty(), "nothing is left behind");
    }
}
