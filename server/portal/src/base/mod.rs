//! What knows nothing of a database or of a page.

pub mod clock;
pub mod ids;
pub(crate) mod named;
pub mod origin;
