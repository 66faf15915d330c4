//! The database and what is kept in it: the one door to a connection, what is sealed, what is done once, what goes wrong.

pub mod database;
pub mod error;
mod fit;
pub mod key_check;
pub mod once;
pub mod patience;
mod queries;
mod queries_fit;
pub mod seal;
pub mod subject;
