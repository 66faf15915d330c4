//! Identifiers and secret tokens, made from the portal's own source of randomness.

use sha2::{Digest, Sha256};
use uuid::Uuid;

use crate::base::clock::World;

/// A new random (version 4) id.
#[must_use]
pub fn new_id(world: &World) -> Uuid {
    let mut bytes = [0; 16];
    world.fill(&mut bytes);
    uuid::Builder::from_random_bytes(bytes).into_uuid()
}

/// 256 random bits that open something: a sign-in, a seat, a room, a link. The database keeps only
/// its SHA-256. Neither `Debug` nor anything else prints it but [`Token::reveal`].
#[derive(Clone, PartialEq, Eq)]
pub struct Token([u8; 32]);

impl Token {
    /// A new one.
    #[must_use]
    pub fn new(world: &World) -> Self {
        let mut bytes = [0; 32];
        world.fill(&mut bytes);
        Self(bytes)
    }

    /// One that the portal can make again.
    #[must_use]
    pub const fn of(bytes: [u8; 32]) -> Self {
        Self(bytes)
    }

    /// Reads the 43 characters of unpadded base64url that [`Token::reveal`] writes; `None` for anything else.
    #[must_use]
    pub fn parse(text: &str) -> Option<Self> {
        use base64::Engine;
        let bytes = base64::engine::general_purpose::URL_SAFE_NO_PAD.decode(text).ok()?;
        Some(Self(bytes.try_into().ok()?))
    }

    /// The text that a link or a cookie carries.
    #[must_use]
    pub fn reveal(&self) -> String {
        use base64::Engine;
        base64::engine::general_purpose::URL_SAFE_NO_PAD.encode(self.0)
    }

    /// What the database keeps of it.
    #[must_use]
    pub fn hash(&self) -> Vec<u8> {
        Sha256::digest(self.0).to_vec()
    }

    /// As the transaction-local setting carries it.
    pub(crate) fn hex(&self) -> String {
        hex::encode(self.0)
    }
}

impl std::fmt::Debug for Token {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str("[token]")
    }
}

/// Six decimal digits for a spoken code. Of 2^256 numbers, so no code is likelier than another by more than 10^-70.
#[must_use]
pub fn spoken_code(random: [u8; 32]) -> String {
    let rest = random.iter().fold(0_u64, |rest, byte| (rest * 256 + u64::from(*byte)) % 1_000_000);
    format!("{rest:06}")
}
