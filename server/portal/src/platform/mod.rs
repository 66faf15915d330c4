//! What every feature stands on: who asks and what they may, how a page is made and a form read, what all requests share.

pub mod assets;
mod bell;
pub(crate) mod codes;
mod cookie;
mod errand;
pub mod forms;
mod member;
pub mod observe;
pub mod page;
pub(crate) mod parts;
mod queries;
mod refused;
mod revocations;
mod routes;
mod saved;
mod seat;
pub mod security;
mod state;
mod tries;
mod turns;
pub mod when;

pub use bell::{Bell, Follows, Whose};
pub(crate) use cookie::{token_cookie, token_in};
pub use errand::Errand;
pub(crate) use member::MAY_HAND_OVER;
pub use member::{Member, Role, members_only, needs_role, recognise, resolve};
pub use refused::note_refused;
pub use revocations::{Revocations, Revokes};
pub use routes::{Repeats, Route, Routes, Rule};
pub use seat::Seat;
pub use state::{App, Parts, Shared};
pub use tries::Counted;
pub use turns::in_turn;
