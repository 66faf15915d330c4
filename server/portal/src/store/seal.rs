//! Sealing: free text about a person, names, numbers and places are kept as AES-256-GCM ciphertext.
//!
//! Each client has a key of their own, wrapped by the practice's key, which lives in a file outside
//! the database. A sealed value is bound to what it is (field, row, client, version of the row): moved
//! anywhere else, or put back in an older version, it does not open.
//!
//! Layout of a sealed value: 1 byte format (1), 12 bytes nonce, ciphertext with its 16-byte tag.

mod private;

use aes_gcm::aead::{Aead, KeyInit, Payload};
use aes_gcm::{Aes256Gcm, Nonce};
use uuid::Uuid;
use zeroize::Zeroizing;

use crate::base::clock::World;
use crate::store::once::Derived;

pub use private::{DOES_NOT_OPEN, Opened, Private};

const FORMAT: u8 = 1;
const NONCE: usize = 12;
/// What a key's check value says once it is opened.
const CHECK: &[u8] = b"leeward key check";

/// Which field a sealed value belongs to. The numbers are part of what is sealed: never reuse or change one.
///
/// Each feature has a range of its own: 1 to 9 keys and what checks them, 10 to 19 clients, 20 to 29 targets, 30 to 39
/// sessions, 40 to 49 process notes, 50 to 59 the plan of treatment and resources, 60 to 69 intake, consent and safety, 70 to 79 measures,
/// 80 to 89 what a client writes between sessions, 90 to 99 appointments, 100 to 109 handing over and cover.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[repr(u16)]
#[expect(missing_docs, reason = "each is the column of the same name")]
pub enum Field {
    ClientKey = 1,
    KeyCheck = 2,
    ClientName = 10,
    ClientAddressedAs = 11,
    ClientPhone = 12,
    ClientContactName = 13,
    ClientContactPhone = 14,
    ClientUsualLocation = 15,
    ReachHelpFromHere = 16,
    ReachHelpThere = 17,
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
    SessionDraft = 38,
    ProcessWords = 40,
    ClusterName = 50,
    ResourceCue = 56,
    ResourceImage = 57,
    ResourceBodyFeeling = 58,
    SafetySigns = 60,
    SafetyHelps = 61,
    SafetyPeople = 62,
    SafetyPlaces = 63,
    SafetyProfessionals = 64,
    SafetySurroundings = 65,
    SteadyingSigns = 66,
    SteadyingWayBack = 67,
    SteadyingFirstWords = 68,
    EventAccount = 69,
    ResponseAnswers = 70,
    ResponseEvent = 71,
    AskingEvent = 72,
    ResponseDraft = 73,
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
    /// Wiped when it is let go of, as the clients' keys are.
    key: Zeroizing<[u8; 32]>,
}

impl PracticeKey {
    /// The number of the key, kept beside each wrapped key. One so far.
    pub const ID: i32 = 1;

    /// Reads 64 hexadecimal digits.
    ///
    /// # Errors
    /// [`SealError::Form`] for anything else.
    pub fn parse(text: &str) -> Result<Self, SealError> {
        let mut bytes = Zeroizing::new([0; 32]);
        hex::decode_to_slice(text.trim(), &mut *bytes).map_err(|_| SealError::Form)?;
        Ok(Self { key: bytes })
    }

    /// What links, codes and seats are made from: a secret of its own, by HMAC-SHA-256 of the key.
    #[must_use]
    pub fn derived(&self) -> Derived {
        Derived::under(&Derived::under(&self.key).bytes("links, codes and seats", &[]))
    }

    /// A new key for a client, and the same wrapped for the database.
    ///
    /// # Errors
    /// [`SealError::Closed`] if the cipher refuses, which it does not for values of this size.
    pub fn new_client_key(&self, world: &World, client: Uuid) -> Result<(ClientKey, Vec<u8>), SealError> {
        let mut bytes = Zeroizing::new([0; 32]);
        world.fill(&mut *bytes);
        let wrapped = encrypt(&self.key, world, &context(Field::ClientKey, client, client, 1), &*bytes)?;
        Ok((ClientKey { key: Some(bytes), client }, wrapped))
    }

    /// A value that only this key makes and opens, to tell it from another.
    ///
    /// # Errors
    /// See [`SealError`].
    pub fn check_value(&self, world: &World) -> Result<Vec<u8>, SealError> {
        encrypt(&self.key, world, &Self::check_context(), CHECK)
    }

    /// Whether this key made `value` by [`PracticeKey::check_value`].
    #[must_use]
    pub fn made(&self, value: &[u8]) -> bool {
        decrypt(&self.key, &Self::check_context(), value).is_ok_and(|text| text == CHECK)
    }

    fn check_context() -> Vec<u8> {
        context(Field::KeyCheck, Uuid::nil(), Uuid::nil(), Self::ID)
    }

    /// Opens a client's wrapped key. One that does not open is a key that opens and seals nothing.
    #[must_use]
    pub fn unwrap(&self, client: Uuid, wrapped: &[u8]) -> ClientKey {
        let bytes = decrypt(&self.key, &context(Field::ClientKey, client, client, 1), wrapped).map(Zeroizing::new).ok();
        let bytes: Option<[u8; 32]> = bytes.and_then(|bytes| bytes.as_slice().try_into().ok());
        ClientKey { key: bytes.map(Zeroizing::new), client }
    }
}

/// One client's key.
#[derive(Clone)]
pub struct ClientKey {
    key: Option<Zeroizing<[u8; 32]>>,
    client: Uuid,
}

impl ClientKey {
    /// Whether it was opened itself.
    #[must_use]
    pub fn is_open(&self) -> bool {
        self.key.is_some()
    }

    fn key(&self) -> Result<&[u8; 32], SealError> {
        self.key.as_deref().ok_or(SealError::Closed)
    }

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
        encrypt(self.key.key()?, world, &context(field, self.row, self.key.client, self.version), text.reveal().as_bytes())
    }

    /// Opens what [`SealedRow::seal`] wrote for the same field, row, client and version.
    #[must_use]
    pub fn open(&self, field: Field, sealed: &[u8]) -> Opened {
        self.try_open(field, sealed).map_or(Opened::Unreadable, Opened::Text)
    }

    fn try_open(&self, field: Field, sealed: &[u8]) -> Result<Private, SealError> {
        let bytes = decrypt(self.key.key()?, &context(field, self.row, self.key.client, self.version), sealed)?;
        String::from_utf8(bytes).map(Private::new).map_err(|_| SealError::Form)
    }
}

/// What a value is bound to, as associated data.
fn context(field: Field, row: Uuid, client: Uuid, version: i32) -> Vec<u8> {
    format!("leeward|{FORMAT}|{}|{row}|{client}|{version}", field as u16).into_bytes()
}

fn encrypt(key: &[u8; 32], world: &World, context: &[u8], text: &[u8]) -> Result<Vec<u8>, SealError> {
    let mut nonce = [0; NONCE];
    world.fill(&mut nonce);
    let payload = Payload { msg: text, aad: context };
    let ciphertext = Aes256Gcm::new(key.into()).encrypt(&Nonce::from(nonce), payload).map_err(|_| SealError::Closed)?;
    Ok([&[FORMAT], nonce.as_slice(), &ciphertext].concat())
}

fn decrypt(key: &[u8; 32], context: &[u8], sealed: &[u8]) -> Result<Vec<u8>, SealError> {
    let (format, rest) = sealed.split_first().ok_or(SealError::Form)?;
    let (nonce, ciphertext) = rest.split_first_chunk::<NONCE>().ok_or(SealError::Form)?;
    if *format != FORMAT {
        return Err(SealError::Form);
    }
    let payload = Payload { msg: ciphertext, aad: context };
    Aes256Gcm::new(key.into()).decrypt(&Nonce::from(*nonce), payload).map_err(|_| SealError::Closed)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::base::clock::Machine;
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
        let again = practice.unwrap(client, &wrapped);
        assert_eq!(again.row(row, 3).open(Field::ClientName, &sealed), Opened::Text(Private::new("Ada")));
        assert_eq!(again.row(row, 3).open(Field::ClientPhone, &sealed), Opened::Unreadable, "another field");
        assert_eq!(again.row(Uuid::from_u128(8), 3).open(Field::ClientName, &sealed), Opened::Unreadable, "another row");
        assert_eq!(again.row(row, 2).open(Field::ClientName, &sealed), Opened::Unreadable, "an older version");
        let closed = practice.unwrap(other, &wrapped);
        assert!(!closed.is_open(), "another client's key");
        assert!(closed.row(row, 3).seal(&world, Field::ClientName, &Private::new("Ada")).is_err(), "nothing is sealed with it");
        assert_eq!(closed.row(row, 3).open(Field::ClientName, &sealed), Opened::Unreadable);
        let (foreign, _) = practice.new_client_key(&world, other).unwrap();
        assert_eq!(foreign.row(row, 3).open(Field::ClientName, &sealed), Opened::Unreadable, "another key");
        for at in 0..sealed.len() {
            let mut bent = sealed.clone();
            bent[at] ^= 1;
            assert_eq!(again.row(row, 3).open(Field::ClientName, &bent), Opened::Unreadable, "byte {at} changed");
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
        let ranges: [(std::ops::RangeInclusive<u16>, &[Field]); 8] = [
            (1..=9, &[ClientKey, KeyCheck]),
            (
                10..=19,
                &[
                    ClientName,
                    ClientAddressedAs,
                    ClientPhone,
                    ClientContactName,
                    ClientContactPhone,
                    ClientUsualLocation,
                    ReachHelpFromHere,
                    ReachHelpThere,
                ],
            ),
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
                    SessionDraft,
                ],
            ),
            (40..=49, &[ProcessWords]),
            (50..=59, &[ClusterName, ResourceCue, ResourceImage, ResourceBodyFeeling]),
            (
                60..=69,
                &[
                    SafetySigns,
                    SafetyHelps,
                    SafetyPeople,
                    SafetyPlaces,
                    SafetyProfessionals,
                    SafetySurroundings,
                    SteadyingSigns,
                    SteadyingWayBack,
                    SteadyingFirstWords,
                    EventAccount,
                ],
            ),
            (70..=79, &[ResponseAnswers, ResponseEvent, AskingEvent, ResponseDraft]),
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
