//! The room in virtual time, with pages that answer as real ones do.

mod aids;
mod answers;
mod breaches;
mod calling;
mod changes;
mod joining;
mod play;
mod schedules;
mod shown;
mod silence;
mod starting;
mod stopping;
mod witness;
