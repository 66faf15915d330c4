//! Forms of what is kept once for a client: shown filled with it, and kept against the version that they showed.

use std::future::Future;

use axum::extract::State;
use axum::response::Response;
use serde::de::DeserializeOwned;
use uuid::Uuid;

use super::{key, number_again, row};
use crate::platform::forms::{Again, Fields, Id, Keyed, Problems, SaveOutcome, answer, comes_back, version};
use crate::platform::page::Frame;
use crate::platform::{App, Member};
use crate::store::error::Error;
use crate::store::once::Once;
use crate::store::seal::{ClientKey, SealError};
use crate::store::subject::{Act, Tx};

/// Whose form it is, as its page says it.
#[derive(Clone, Copy)]
pub(crate) struct Whose {
    /// The client.
    pub(crate) client: Uuid,
    /// The record's number; `None` when the database did not answer.
    pub(crate) number: Option<i32>,
}

/// One such form.
pub(crate) trait OneForm: Paged + Fields + Clone + DeserializeOwned + Send + Sync + 'static {
    /// The acts of looking at it and of changing it.
    const ACTS: [&'static str; 2];
    /// Behind the client's address: the page that a saved form leads to.
    const SHOWN: &'static str;

    /// Filled with what is kept; where nothing is, as it begins.
    ///
    /// # Errors
    /// [`Error::NotFound`] when the asker does not treat the client; what does not open has no form.
    fn filled(tx: &mut Tx, app: &App, client: Uuid) -> impl Future<Output = Result<Self, Error>> + Send;

    /// What was typed, once it is sound.
    type Good: Send + Sync;

    /// What was typed.
    ///
    /// # Errors
    /// What is wrong with it.
    fn check(&self) -> Result<Self::Good, Problems>;

    /// Keeps it against a version, 0 when nothing was kept. False: somebody has changed it meanwhile.
    ///
    /// # Errors
    /// [`Error::Inner`] when what is kept does not open, [`Error::Database`]: nothing was changed.
    fn change(
        tx: &mut Tx,
        app: &App,
        key: &ClientKey,
        client: Uuid,
        good: &Self::Good,
        version: i32,
    ) -> impl Future<Output = Result<bool, Error>> + Send;
}

/// What is shown as a page; [`one_page`] defines how.
pub(crate) trait Paged: Sized {
    /// Its page.
    ///
    /// # Errors
    /// [`Error::Inner`].
    fn page(frame: Frame, whose: Whose, again: Again<Self>) -> Result<Response, Error>;
}

/// `GET`
pub(crate) async fn show<F: OneForm>(member: Member, State(app): State<App>, frame: Frame, Id(client): Id) -> Result<Response, Error> {
    let mut tx = app.database.act(&member.subject, Act::new(F::ACTS[0]).client(client)).await?;
    let typed = F::filled(&mut tx, &app, client).await?;
    let number = row(&mut tx, client).await?.map(|row| row.number);
    tx.commit().await?;
    F::page(frame, Whose { client, number }, Again::first(typed))
}

/// `POST`
pub(crate) async fn save<F: OneForm>(
    member: Member,
    State(app): State<App>,
    frame: Frame,
    Id(client): Id,
    Keyed(once, typed): Keyed<F>,
) -> Result<Response, Error> {
    let tried = try_save(&member, &app, client, &once, &typed).await;
    let number = if comes_back(&tried) { number_again(&app, &member, client).await } else { None };
    answer(typed, tried, |again| F::page(frame, Whose { client, number }, again))
}

async fn try_save<F: OneForm>(member: &Member, app: &App, client: Uuid, once: &Once, typed: &F) -> Result<SaveOutcome<F>, Error> {
    let mut tx = app.database.act_once(&member.subject, Act::new(F::ACTS[1]).client(client), once).await?;
    // To those who do not treat the client, the form is not there at all.
    let key = key(&mut tx, app, client).await?;
    let good = match typed.check() {
        Ok(good) => good,
        Err(problems) => return Ok(SaveOutcome::Refused(problems)),
    };
    if F::change(&mut tx, app, &key, client, &good, version(typed.clone().version())?).await? {
        Ok(SaveOutcome::Saved(tx.saved(format!("/clients/{client}{}", F::SHOWN)).await?))
    } else {
        Ok(SaveOutcome::Changed(Box::new(F::filled(&mut tx, app, client).await?)))
    }
}

/// Whether what was read at `version` may be replaced. `before`: whether what is kept opens, and its version; `None` when nothing is
/// kept, which is version 0. False: somebody has changed it meanwhile.
///
/// # Errors
/// [`SealError`] when what is kept does not open: the form cannot have shown it, so it is not replaced.
pub(crate) fn may_replace(before: Option<(Result<(), SealError>, i32)>, version: i32) -> Result<bool, SealError> {
    let Some((opens, at)) = before else { return Ok(version == 0) };
    if at == version { opens.map(|()| true) } else { Ok(false) }
}

/// Defines `FormPage`, the page of a [`OneForm`], and how it is shown.
macro_rules! one_page {
    ($form:ty, $path:tt) => {
        #[derive(askama::Template)]
        #[template(path = $path)]
        struct FormPage {
            frame: crate::platform::page::Frame,
            whose: crate::clients::one_form::Whose,
            typed: $form,
            problems: crate::platform::forms::Problems,
            notice: &'static str,
        }

        impl FormPage {
            fn messages(&self) -> Vec<(&'static str, &'static str, String)> {
                crate::platform::forms::list::<$form>(&self.problems)
            }
        }

        impl crate::clients::one_form::Paged for $form {
            fn page(
                frame: crate::platform::page::Frame,
                whose: crate::clients::one_form::Whose,
                again: crate::platform::forms::Again<Self>,
            ) -> Result<axum::response::Response, crate::store::error::Error> {
                let frame = again.titled(frame);
                let crate::platform::forms::Again { typed, problems, notice, status } = again;
                let shown = crate::platform::page::page(&FormPage { frame, whose, typed, problems, notice })?;
                Ok(axum::response::IntoResponse::into_response((status, shown)))
            }
        }
    };
}
pub(crate) use one_page;
