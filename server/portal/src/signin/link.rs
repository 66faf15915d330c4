//! The page that shows a link to make a passkey, this once.

use askama::Template;
use axum::response::{IntoResponse, Response};

use super::invite::Invitation;
use crate::platform::App;
use crate::platform::Member;
use crate::platform::page::{Frame, page};
use crate::platform::when::When;
use crate::store::error::Error;

/// See the template.
#[derive(Template)]
#[template(path = "signin/link.html")]
pub(super) struct LinkPage {
    frame: Frame,
    name: String,
    link: String,
    until: String,
    back: &'static str,
}

impl LinkPage {
    /// Shows `member` the link that is for `name`.
    pub(super) async fn show(
        app: &App,
        member: &Member,
        frame: Frame,
        name: &str,
        invitation: Invitation,
        back: &'static str,
    ) -> Result<Response, Error> {
        let mut tx = app.database.look(&member.subject).await?;
        let until = When::in_practice(&mut tx).await?.moment(&invitation.until);
        Ok(page(&Self { frame, name: name.to_owned(), link: invitation.link, until, back })?.into_response())
    }
}
