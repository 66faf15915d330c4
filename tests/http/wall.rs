//! The database's own wall: what somebody gets who can speak SQL as one of the portal's roles, and holds no token that
//! lets them.

mod audit;
mod clock;
mod functions;
mod probe;
mod refused;
mod roles;
mod types;
