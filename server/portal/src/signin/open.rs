//! Opening and closing sign-ins: 30 minutes idle and 12 hours in all (within NIST SP 800-63B-4,
//! section 2.2.3: an hour and a day at most).

use axum::http::HeaderMap;
use axum::http::header::HeaderValue;
use uuid::Uuid;

use super::device::device;
use super::queries;
use crate::base::ids::{Token, new_id};
use crate::platform::App;
use crate::platform::{Member, resolve, token_cookie, token_in};
use crate::store::error::Error;
use crate::store::subject::{Act, Subject, Tx};

/// A sign-in in the making: it acts as itself from the start, so that the audit names the member.
pub(super) struct Opening {
    tx: Tx,
    token: Token,
    id: Uuid,
}

impl Opening {
    /// Begins one; nothing is kept before [`Opening::finish`].
    pub(super) async fn begin(app: &App) -> Result<Self, Error> {
        let (token, id) = (Token::new(&app.world), new_id(&app.world));
        let tx = app.database.act_to_sign_in(&Subject::Member(token.clone()), Act::new("signin.open").object(id)).await?;
        Ok(Self { tx, token, id })
    }

    /// To read and write what belongs to the sign-in.
    pub(super) fn tx(&mut self) -> &mut Tx {
        &mut self.tx
    }

    /// Opens it for `member` and returns the cookie that carries it, or `None` when the member has left.
    pub(super) async fn finish(mut self, app: &App, member: Uuid, headers: &HeaderMap) -> Result<Option<Opened>, Error> {
        if !queries::open_signin(&mut self.tx, self.id, &self.token.hash(), member, &device(headers)).await? {
            return Ok(None);
        }
        self.tx.commit().await?;
        let cookie = token_cookie(&app.origin.member_cookie(), Some(&self.token))?;
        let member = resolve(app, Subject::Member(self.token)).await?;
        Ok(Some(Opened { cookie, member }))
    }
}

/// A sign-in that has been opened.
pub(super) struct Opened {
    /// Carries it, and is shown to the browser once.
    pub(super) cookie: HeaderValue,
    /// Whose it is.
    pub(super) member: Member,
}

/// Signs in a member whose identity is beyond doubt, in this browser.
pub(super) async fn open(app: &App, member: Uuid, headers: &HeaderMap) -> Result<Option<Opened>, Error> {
    Opening::begin(app).await?.finish(app, member, headers).await
}

/// Opens a sign-in for a member whose identity the caller vouches for, without a browser.
///
/// # Errors
/// [`Error::NotFound`] when the member has left or never was; [`Error::Database`].
pub async fn vouch(app: &App, member: Uuid, device: &str) -> Result<Subject, Error> {
    let mut opening = Opening::begin(app).await?;
    if !queries::open_signin(&mut opening.tx, opening.id, &opening.token.hash(), member, device).await? {
        return Err(Error::NotFound);
    }
    opening.tx.commit().await?;
    Ok(Subject::Member(opening.token))
}

/// Ends the sign-in that this browser had before, so that a stolen token dies with it (OWASP ASVS 5.0, 7.2.4).
pub(super) async fn close_earlier(app: &App, headers: &HeaderMap) -> Result<(), Error> {
    let Some(token) = token_in(headers, &app.origin.member_cookie()) else { return Ok(()) };
    match resolve(app, Subject::Member(token)).await {
        Ok(earlier) => close(app, &earlier, earlier.signin).await.map(drop),
        Err(Error::SignInNeeded) => Ok(()),
        Err(fault) => Err(fault),
    }
}

/// Closes one of a member's own sign-ins, and the sockets that were opened with it. False when there was none.
///
/// # Errors
/// [`Error::Database`]: it is still open.
pub async fn close(app: &App, member: &Member, signin: Uuid) -> Result<bool, Error> {
    let mut tx = app.database.act(&member.subject, Act::new("signin.close").object(signin)).await?;
    let closed = queries::close_signin(&mut tx, signin).await?;
    if closed {
        let _told = app.revocations.follow();
        tx.commit().await?;
    }
    Ok(closed)
}
