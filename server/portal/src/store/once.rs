//! Sending again: what was sent twice has one effect and the first answer.
//!
//! A page gives each of its forms a key, which the form carries hidden; a script sends one in the
//! header `Idempotency-Key` (IETF draft-ietf-httpapi-idempotency-key-header, from memory). The key goes
//! into the transaction first, the answer last. Whoever sends the same again gets that answer; another
//! body under the same key is refused. A sending that was not kept leaves no key behind.

use axum::Json;
use axum::extract::FromRequestParts;
use axum::http::request::Parts;
use axum::http::{HeaderMap, StatusCode};
use axum::response::{IntoResponse, Redirect, Response};
use hmac::{Hmac, KeyInit, Mac};
use serde::{Deserialize, Serialize};
use sha2::{Digest, Sha256};
use uuid::Uuid;

use super::queries;
use crate::store::database::Database;
use crate::store::error::Error;
use crate::store::subject::{Act, Subject, Tx};

/// The hidden field of a form.
pub const FIELD: &str = "once";
/// In the address of a page: the key of the request that led to it once it was kept.
pub const SAVED: &str = "saved";
/// The header of a script's request.
pub const HEADER: &str = "idempotency-key";

/// The key that a request was sent under, and what it said.
#[derive(Clone, Debug)]
pub struct Once {
    /// Of one form in one showing of its page.
    pub key: Uuid,
    /// SHA-256 of what was sent, the key itself left out.
    body: Vec<u8>,
}

impl Once {
    /// Reads the key of a request; `None` when it carries none.
    #[must_use]
    pub fn read(path: &str, headers: &HeaderMap, form: bool, body: &[u8]) -> Option<Self> {
        let mut digest = Sha256::new();
        let mut key = headers.get(HEADER).and_then(|value| value.to_str().ok()).map(str::to_owned);
        if form {
            for (name, value) in form_urlencoded::parse(body) {
                if name == FIELD {
                    key = Some(value.into_owned());
                } else {
                    // Browsers send line ends in their own way when a page sends a form on.
                    digest.update(format!("\0{name}\0{}", value.replace("\r\n", "\n")));
                }
            }
        } else {
            digest.update(body);
        }
        let key: Uuid = key?.trim().parse().ok()?;
        Some(Self { key: on_path(key, path), body: digest.finalize().to_vec() })
    }
}

/// The key that a form carries as it was sent.
#[must_use]
pub fn key_in(form: &[u8]) -> Option<Uuid> {
    form_urlencoded::parse(form).find(|(name, _)| name == FIELD).and_then(|(_, value)| value.parse().ok())
}

/// All forms of a page share its key; each is sent to a path of its own.
fn on_path(key: Uuid, path: &str) -> Uuid {
    let digest: [u8; 32] = Sha256::new_with_prefix(key.as_bytes()).chain_update(path).finalize().into();
    Uuid::from_u128(digest.iter().take(16).fold(0, |number, byte| number << 8 | u128::from(*byte)))
}

impl<S: Send + Sync> FromRequestParts<S> for Once {
    type Rejection = Error;

    async fn from_request_parts(parts: &mut Parts, _: &S) -> Result<Self, Error> {
        parts
            .extensions
            .get::<Self>()
            .cloned()
            .ok_or(Error::BadRequest("The form did not arrive whole, so nothing was saved. Open the page again, then send it again."))
    }
}

/// What a request that was kept is answered with, the first time and every later time.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Answer {
    /// Go there.
    See(String),
    /// This, for a script.
    Json(serde_json::Value),
    /// It is done, and there is nothing to say.
    Done,
}

impl Answer {
    /// Go there.
    #[must_use]
    pub fn see(path: impl Into<String>) -> Self {
        Self::See(path.into())
    }
}

impl IntoResponse for Answer {
    fn into_response(self) -> Response {
        match self {
            Self::See(path) => Redirect::to(&path).into_response(),
            Self::Json(value) => Json(value).into_response(),
            Self::Done => StatusCode::NO_CONTENT.into_response(),
        }
    }
}

/// A transaction that happens once for its key. Dropped without [`OnceTx::commit`], nothing of it happened.
pub struct OnceTx {
    tx: Tx,
    key: Uuid,
}

impl std::ops::Deref for OnceTx {
    type Target = Tx;
    fn deref(&self) -> &Tx {
        &self.tx
    }
}

impl std::ops::DerefMut for OnceTx {
    fn deref_mut(&mut self) -> &mut Tx {
        &mut self.tx
    }
}

impl OnceTx {
    /// Keeps the answer beside the key, writes the audit row and commits.
    ///
    /// # Errors
    /// As [`Tx::commit`].
    pub async fn commit(mut self, answer: Answer) -> Result<Answer, Error> {
        let text = serde_json::to_string(&answer).map_err(|fault| Error::Inner(format!("answer: {fault}")))?;
        if !queries::answer_request(&mut self.tx, self.key, &text).await? {
            return Err(Error::Inconsistent("access.request_key"));
        }
        self.tx.commit().await?;
        Ok(answer)
    }
}

impl OnceTx {
    /// As [`OnceTx::commit`]: on to the page at `path`, which says when this was saved. A part of the page may stand at its end.
    ///
    /// # Errors
    /// As [`Tx::commit`].
    pub async fn saved(self, path: impl AsRef<str>) -> Result<Answer, Error> {
        let path = path.as_ref();
        let (page, part) = path.find('#').map_or((path, ""), |at| path.split_at(at));
        let answer = Answer::See(format!("{page}?{SAVED}={}{part}", self.key));
        self.commit(answer).await
    }
}

impl Database {
    /// Opens a transaction as a member to do `act`, once for the key of this request.
    ///
    /// # Errors
    /// [`Error::Before`] with the first answer when it was done already, [`Error::OtherBody`] when something else
    /// was done under this key; [`Error::SignInNeeded`] for anybody but a member; [`Error::Database`].
    pub async fn act_once(&self, subject: &Subject, act: Act, once: &Once) -> Result<OnceTx, Error> {
        let mut tx = self.act(subject, act).await?;
        let row = queries::begin_request(&mut tx, once.key, act.name(), &once.body).await?.ok_or(Error::SignInNeeded)?;
        if row.fresh {
            return Ok(OnceTx { tx, key: once.key });
        }
        if !row.same {
            return Err(Error::OtherBody);
        }
        let answer =
            row.answer.as_deref().and_then(|text| serde_json::from_str(text).ok()).ok_or(Error::Inconsistent("access.request_key"))?;
        Err(Error::Before(answer))
    }
}

/// Bytes that the portal can make again from the key of a request, and nobody without its secret.
///
/// HMAC-SHA-256 (RFC 2104) under a secret of the practice's own. `purpose` keeps what one key makes apart.
#[derive(Clone)]
pub struct Derived(Hmac<Sha256>);

impl Derived {
    /// Derives under `secret`.
    #[must_use]
    pub fn under(secret: &[u8; 32]) -> Self {
        // RFC 2104: a key shorter than the block is filled up with zeros.
        let mut block = [0; 64];
        block[..32].copy_from_slice(secret);
        Self(Hmac::new(&block.into()))
    }

    /// 32 bytes for this purpose and these parts.
    #[must_use]
    pub fn bytes(&self, purpose: &str, parts: &[&[u8]]) -> [u8; 32] {
        let mut mac = self.0.clone();
        for part in [purpose.as_bytes()].iter().chain(parts) {
            // With their lengths, so that no two lists of parts read the same.
            mac.update(&(part.len() as u64).to_be_bytes());
            mac.update(part);
        }
        mac.finalize().into_bytes().into()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Against the library's own way to take a key of any length.
    #[test]
    fn what_is_derived_is_an_hmac_and_no_two_purposes_share_one() {
        let secret = [7; 32];
        let bytes = |purpose, parts: &[&[u8]]| Derived::under(&secret).bytes(purpose, parts);
        let mut mac = <Hmac<Sha256> as KeyInit>::new_from_slice(&secret).unwrap();
        mac.update(&[0, 0, 0, 0, 0, 0, 0, 4]);
        mac.update(b"seat");
        assert_eq!(bytes("seat", &[]), <[u8; 32]>::from(mac.finalize().into_bytes()));
        let all = [
            bytes("seat", &[b"ab"]),
            bytes("link", &[b"ab"]),
            bytes("seat", &[b"a", b"b"]),
            bytes("seat", &[b"a"]),
            bytes("seata", &[b"b"]),
        ];
        for (at, one) in all.iter().enumerate() {
            assert!(!all[at + 1..].contains(one), "{at}");
        }
    }

    #[test]
    fn a_key_counts_for_one_form_of_its_page_and_the_body_without_it() {
        let headers = HeaderMap::new();
        let read = |path, body: &str| Once::read(path, &headers, true, body.as_bytes());
        let key = "once=6f0e7f1e-8f0a-4c55-9d1e-0a1b2c3d4e5f";
        let (a, b) = (read("/a", &format!("{key}&x=1%0D%0A2")).unwrap(), read("/a", &format!("x=1%0A2&{key}")).unwrap());
        assert_eq!((a.key, &a.body), (b.key, &b.body), "line ends as browsers send them");
        assert_ne!(a.key, read("/b", key).unwrap().key);
        assert_ne!(a.body, read("/a", &format!("{key}&x=2")).unwrap().body);
        assert!(read("/a", "x=1").is_none() && read("/a", "once=1&x=1").is_none());
    }
}
