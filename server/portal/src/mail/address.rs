//! The page of one's own address of mail.

use askama::Template;
use axum::extract::State;
use axum::response::{IntoResponse, Response};
use lettre::Address;

use super::queries;
use crate::platform::forms::{Again, Fields, Keyed, Lines, Need, Problems, SaveOutcome, answer};
use crate::platform::page::{Frame, page};
use crate::platform::{App, Member};
use crate::store::error::Error;
use crate::store::once::Once;
use crate::store::subject::Act;

/// As it was typed.
#[derive(Clone, Default, serde::Deserialize)]
#[serde(default)]
pub(super) struct AddressForm {
    address: String,
    /// The address that the form showed: nothing else is replaced.
    shown: String,
}

impl AddressForm {
    fn of(address: String) -> Self {
        Self { shown: address.clone(), address }
    }

    fn check(&self) -> Result<String, Problems> {
        let mut problems = Problems::default();
        let address = problems.text("address", &self.address, 254, Need::Optional, Lines::One);
        if problems.none() && !address.is_empty() && address.parse::<Address>().is_err() {
            problems.add("address", "One address of mail, such as name@practice.example, or nothing.");
        }
        if problems.none() { Ok(address) } else { Err(problems) }
    }
}

impl Fields for AddressForm {
    const LABELS: &'static [(&'static str, &'static str)] = &[("address", "Address")];

    fn shown(&self, _: &str) -> String {
        if self.address.is_empty() { "none".to_owned() } else { self.address.clone() }
    }

    fn version(&mut self) -> &mut String {
        &mut self.shown
    }
}

#[derive(Template)]
#[template(path = "mail/address.html")]
struct AddressPage {
    frame: Frame,
    /// This portal sends mail at all.
    sends: bool,
    again: Again<AddressForm>,
}

impl AddressPage {
    fn show(frame: Frame, app: &App, again: Again<AddressForm>) -> Result<Response, Error> {
        let frame = again.titled(frame);
        Ok((again.status, page(&Self { frame, sends: app.mails, again })?).into_response())
    }
}

/// `GET /account/mail`
pub(super) async fn show(member: Member, State(app): State<App>, frame: Frame) -> Result<Response, Error> {
    let mut tx = app.database.act(&member.subject, Act::new("account.mail.view")).await?;
    let kept = queries::own(&mut tx).await?;
    tx.commit().await?;
    AddressPage::show(frame, &app, Again::first(AddressForm::of(kept)))
}

/// `POST /account/mail`
pub(super) async fn save(
    member: Member,
    State(app): State<App>,
    frame: Frame,
    Keyed(once, typed): Keyed<AddressForm>,
) -> Result<Response, Error> {
    let tried = try_save(&app, &member, &once, &typed).await;
    answer(typed, tried, |again| AddressPage::show(frame, &app, again))
}

async fn try_save(app: &App, member: &Member, once: &Once, typed: &AddressForm) -> Result<SaveOutcome<AddressForm>, Error> {
    let mut tx = app.database.act_once(&member.subject, Act::new("account.mail.change"), once).await?;
    let wanted = match typed.check() {
        Err(problems) => return Ok(SaveOutcome::Refused(problems)),
        Ok(wanted) => wanted,
    };
    let kept = queries::own_to_change(&mut tx).await?;
    if kept != typed.shown {
        return Ok(SaveOutcome::Changed(Box::new(AddressForm::of(kept))));
    }
    if !queries::keep(&mut tx, &wanted, app.world.now()).await? {
        return Err(Error::NothingWritten("mail_address"));
    }
    Ok(SaveOutcome::Saved(tx.saved("/account/mail").await?))
}
