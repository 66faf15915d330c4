//! What the portal looks after by itself.

mod key;
mod log;
mod room;
mod rows;
mod tidy;
