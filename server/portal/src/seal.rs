//! Sealing: free text about a person, names, numbers and places are kept as AES-256-GCM ciphertext.
//!
//! Each client has a key of their own, wrapped by the practice's key, which lives in a file outside
//! the database. A sealed value is bound to what it is (field, row, client, version of the row): moved
//! anywhere else, or put back in an older version, it does not open.
//!
//! Layout of a sealed value: 1 byte format (1), 12 bytes nonce, ciphertext with its 16-byte tag.

use aes_gcm::aead::{Aead, KeyInit, Payload};
use aes_gcm::{Aes256Gcm, Key, Nonce};
use uuid::Uuid;

use crate::clock::World;
use crate::once::Derived;

const FORMAT: u8 = 1;
const NONCE: usize = 12;

/// Text about a person, opened. It has no `Display`, and `Debug` hides it: only a page that means to
/// show it calls [`Private::reveal`].
#[derive(Clone, Default, PartialEq, Eq)]
pub struct Private(String);

impl Private {
    /// Marks a text as private.
    #[must_use]
    pub fn new(text: impl Into<String>) -> Self {
        Self(text.into())
    }

    /// The text itself.
    #[must_use]
    pub fn reveal(&self) -> &str {
        &self.0
    }

    /// Whether there is no text.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.0.is_empty()
    }
}

impl std::fmt::Debug for Private {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str("[private]")
    }
}

/// Which field a sealed value belongs to. The numbers are part of what is sealed: never reuse or change one.
///
/// Each feature has a range of its own: 1 to 9 keys and what checks them, 10 to 19 clients, 20 to 29 targets, 30 to 39
/// sessions, 40 to 49 process notes, 50 to 59 the plan of treatment, 60 to 69 intake and consent, 70 to 79 measures,
/// 80 to 89 what a client writes between sessions, 90 to 99 appointments, 100 to 109 handing over and cover.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[repr(u16)]
#[expect(missing_docs, reason = "each is the column of the same name")]
pub enum Field {
    ClientKey = 1,
    ClientName = 10,
    ClientAddressedAs = 11,
    ClientPhone = 12,
    ClientContactName = 13,
    ClientContactPhone = 14,
    ClientUsualLocation = 15,
    TargetLabel = 20,
    TargetPicture = 21,
    TargetNegativeBelief = 22,
    TargetPositiveBelief = 23,
    TargetEmotions = 24,
    TargetBodyLocation = 25,
    SessionLocation = 30,
    SessionCallBack = 31,
    SessionResource = 32,
    SessionLeavingState = 33,
    SessionCompanion = 34,
    SessionNextContact = 35,
    SessionClientWords = 36,
    SessionNote = 37,
    ProcessWords = 40,
}

/// Why a value did not open.
#[derive(Clone, Copy, Debug, PartialEq, Eq, thiserror::Error)]
pub enum SealError {
    /// Not written by this module, or cut short.
    #[error("a sealed value has a form this version does not know")]
    Form,
    /// Wrong key, or not the field, row, client or version it was sealed for.
    #[error("a sealed value does not open: wrong key, or moved from where it was sealed")]
    Closed,
}

/// The practice's key: wraps the clients' keys, and opens nothing else.
#[derive(Clone)]
pub struct PracticeKey {
    key: Key<Aes256Gcm>,
}

impl PracticeKey {
    /// The number of the key, kept beside each wrapped key. One so far.
    pub const ID: i32 = 1;

    /// Reads 64 hexadecimal digits.
    ///
    /// # Errors
    /// [`SealError::Form`] for anything else.
    pub fn parse(text: &str) -> Result<Self, SealError> {
        let text = text.trim();
        if text.len() != 64 || !text.is_ascii() {
            return Err(SealError::Form);
        }
        let mut bytes = [0; 32];
        for (byte, pair) in bytes.iter_mut().zip(text.as_bytes().chunks(2)) {
            let pair = std::str::from_utf8(pair).map_err(|_| SealError::Form)?;
            *byte = u8::from_str_radix(pair, 16).map_err(|_| SealError::Form)?;
        }
        Ok(Self { key: bytes.into() })
    }

    /// What links, codes and seats are made from: a secret of its own, by HMAC-SHA-256 of the key.
    #[must_use]
    pub fn derived(&self) -> Derived {
        Derived::under(&Derived::under(&self.key.into()).bytes("links, codes and seats", &[]))
    }

    /// A new key for a client, and the same wrapped for the database.
    ///
    /// # Errors
    /// [`SealError::Closed`] if the cipher refuses, which it does not for values of this size.
    pub fn new_client_key(&self, world: &World, client: Uuid) -> Result<(ClientKey, Vec<u8>), SealError> {
        let mut bytes = [0; 32];
        world.fill(&mut bytes);
        let wrapped = encrypt(&self.key, world, &context(Field::ClientKey, client, client, 1), &bytes)?;
        Ok((ClientKey { key: bytes.into(), client }, wrapped))
    }

    /// Opens a client's wrapped key.
    ///
    /// # Errors
    /// See [`SealError`].
    pub fn unwrap(&self, client: Uuid, wrapped: &[u8]) -> Result<ClientKey, SealError> {
        let bytes = decrypt(&self.key, &context(Field::ClientKey, client, client, 1), wrapped)?;
        let bytes: [u8; 32] = bytes.try_into().map_err(|_| SealError::Form)?;
        Ok(ClientKey { key: bytes.into(), client })
    }
}

/// One client's key.
#[derive(Clone)]
pub struct ClientKey {
    key: Key<Aes256Gcm>,
    client: Uuid,
}

impl ClientKey {
    /// Seals and opens the values of one row at one version.
    #[must_use]
    pub fn row(&self, row: Uuid, version: i32) -> SealedRow<'_> {
        SealedRow { key: self, row, version }
    }
}

/// One row's place: what is sealed here opens only here.
pub struct SealedRow<'a> {
    key: &'a ClientKey,
    row: Uuid,
    version: i32,
}

impl SealedRow<'_> {
    /// Seals a text for `field` of this row.
    ///
    /// # Errors
    /// See [`SealError`].
    pub fn seal(&self, world: &World, field: Field, text: &Private) -> Result<Vec<u8>, SealError> {
        encrypt(&self.key.key, world, &context(field, self.row, self.key.client, self.version), text.0.as_bytes())
    }

    /// Opens what [`SealedRow::seal`] wrote for the same field, row, client and version.
    ///
    /// # Errors
    /// See [`SealError`].
    pub fn open(&self, field: Field, sealed: &[u8]) -> Result<Private, SealError> {
        let bytes = decrypt(&self.key.key, &context(field, self.row, self.key.client, self.version), sealed)?;
        String::from_utf8(bytes).map(Private).map_err(|_| SealError::Form)
    }
}

/// What a value is bound to, as associated data.
fn context(field: Field, row: Uuid, client: Uuid, version: i32) -> Vec<u8> {
    format!("leeward|{FORMAT}|{}|{row}|{client}|{version}", field as u16).into_bytes()
}

fn encrypt(key: &Key<Aes256Gcm>, world: &World, context: &[u8], text: &[u8]) -> Result<Vec<u8>, SealError> {
    let mut nonce = [0; NONCE];
    world.fill(&mut nonce);
    let payload = Payload { msg: text, aad: context };
    let ciphertext = Aes256Gcm::new(key).encrypt(&Nonce::from(nonce), payload).map_err(|_| SealError::Closed)?;
    Ok([&[FORMAT], nonce.as_slice(), &ciphertext].concat())
}

fn decrypt(key: &Key<Aes256Gcm>, context: &[u8], sealed: &[u8]) -> Result<Vec<u8>, SealError> {
    let (format, rest) = sealed.split_first().ok_or(SealError::Form)?;
    let (nonce, ciphertext) = rest.split_first_chunk::<NONCE>().ok_or(SealError::Form)?;
    if *format != FORMAT {
        return Err(SealError::Form);
    }
    let payload = Payload { msg: ciphertext, aad: context };
    Aes256Gcm::new(key).decrypt(&Nonce::from(*nonce), payload).map_err(|_| SealError::Closed)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::clock::Machine;
    use std::sync::Arc;

    fn world() -> World {
        Arc::new(Machine)
    }

    #[test]
    fn a_value_opens_only_where_it_was_sealed() {
        let world = world();
        let practice = PracticeKey::parse(&"0f".repeat(32)).unwrap();
        let (client, other) = (Uuid::from_u128(1), Uuid::from_u128(2));
        let (key, wrapped) = practice.new_client_key(&world, client).unwrap();
        let row = Uuid::from_u128(7);
        let sealed = key.row(row, 3).seal(&world, Field::ClientName, &Private::new("Ada")).unwrap();
        let again = practice.unwrap(client, &wrapped).unwrap();
        assert_eq!(again.row(row, 3).open(Field::ClientName, &sealed).unwrap().reveal(), "Ada");
        assert!(again.row(row, 3).open(Field::ClientPhone, &sealed).is_err(), "another field");
        assert!(again.row(Uuid::from_u128(8), 3).open(Field::ClientName, &sealed).is_err(), "another row");
        assert!(again.row(row, 2).open(Field::ClientName, &sealed).is_err(), "an older version");
        assert!(practice.unwrap(other, &wrapped).is_err(), "another client's key");
        let (foreign, _) = practice.new_client_key(&world, other).unwrap();
        assert!(foreign.row(row, 3).open(Field::ClientName, &sealed).is_err(), "another key");
        for at in 0..sealed.len() {
            let mut bent = sealed.clone();
            bent[at] ^= 1;
            assert!(again.row(row, 3).open(Field::ClientName, &bent).is_err(), "byte {at} changed");
        }
    }

    #[test]
    fn the_practice_key_is_64_hexadecimal_digits() {
        assert!(PracticeKey::parse(&"ab".repeat(32)).is_ok());
        for bad in ["", "ab", &"ab".repeat(33), &"zz".repeat(32), &"é".repeat(32)] {
            assert_eq!(PracticeKey::parse(bad).err(), Some(SealError::Form));
        }
    }

    #[test]
    fn every_field_has_a_number_of_its_features_range_and_no_two_share_one() {
        use Field::*;
        let ranges: [(std::ops::RangeInclusive<u16>, &[Field]); 5] = [
            (1..=9, &[ClientKey]),
            (10..=19, &[ClientName, ClientAddressedAs, ClientPhone, ClientContactName, ClientContactPhone, ClientUsualLocation]),
            (20..=29, &[TargetLabel, TargetPicture, TargetNegativeBelief, TargetPositiveBelief, TargetEmotions, TargetBodyLocation]),
            (
                30..=39,
                &[
                    SessionLocation,
                    SessionCallBack,
                    SessionResource,
                    SessionLeavingState,
                    SessionCompanion,
                    SessionNextContact,
                    SessionClientWords,
                    SessionNote,
                ],
            ),
            (40..=49, &[ProcessWords]),
        ];
        let mut numbers = std::collections::HashSet::new();
        for (range, fields) in ranges {
            for field in fields {
                assert!(range.contains(&(*field as u16)) && numbers.insert(*field as u16), "{field:?}");
            }
        }
    }

    #[test]
    fn nothing_prints_a_private_text() {
        assert_eq!(format!("{:?}", Private::new("Ada")), "[private]");
    }
}
