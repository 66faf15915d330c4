//! What the two pages of a call tell each other before they are connected: descriptions (SDP, RFC 8866, as browsers write it by RFC 8829) and
//! candidates (RFC 8839, section 5.1). The portal passes both on and never sees a picture or hears a voice. What it passes on names no address
//! that the practice does not want known: where only the relay may be used, of a candidate nothing is left but the relay's own address.

mod candidate;
mod description;

pub use candidate::{candidate, is_public};
pub use description::description;

/// The longest description, bytes: a browser's own, of one picture and one voice, takes some 6,000. A message of the room's line, which carries it,
/// ends at 16 KiB.
pub const LONGEST_SDP: usize = 12 * 1024;
/// The longest candidate, bytes: RFC 8839's own examples take 100.
pub const LONGEST_CANDIDATE: usize = 512;

/// How the pages may reach each other.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Reach {
    /// By the practice's relay alone: neither page learns where the other is.
    Relay {
        /// The relay itself stands at a private address, as on a machine where things are tried out: then its candidates name one.
        private: bool,
    },
    /// Directly where that works: each page learns the other's address.
    Direct,
}

/// Why something was not passed on. Says nothing of what was in it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
pub enum Unfit {
    /// Too long.
    #[error("longer than any browser writes")]
    Long,
    /// It has not the form that its standard gives it.
    #[error("not what a browser writes")]
    Form,
    /// Of a kind, or an address, that is not passed on here.
    #[error("an address that is not passed on")]
    Address,
    /// Something else than a picture and a voice.
    #[error("more than a picture and a voice")]
    Kind,
}
