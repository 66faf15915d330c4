//! Reaching a client and help: which numbers may be used how, and what is dialled for help where they are.

mod form;
mod queries;

use axum::routing::{get, post};
use chrono::NaiveDate;
use strum::{EnumString, IntoStaticStr, VariantArray};
use uuid::Uuid;

use crate::base::named::named;
use crate::clients::{self, one_form};
use crate::platform::when::When;
use crate::platform::{App, Routes, Rule};
use crate::store::error::Error;
use crate::store::seal::{ClientKey, Field, Opened, Private, SealError};
use crate::store::subject::{Act, Subject, Tx};

/// How a number may be used: somebody else may answer it, or read what stands there.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, EnumString, IntoStaticStr, VariantArray)]
#[strum(serialize_all = "snake_case")]
pub enum Use {
    /// Nobody has asked.
    #[default]
    NotAsked,
    /// Safe to call.
    Call,
    /// Safe to message, not to call.
    Message,
    /// Never.
    Never,
}

named!(Use);

impl Use {
    /// As a person reads it.
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Self::NotAsked => "not asked whether it is safe",
            Self::Call => "safe to call",
            Self::Message => "safe to message, not to call",
            Self::Never => "never call or message",
        }
    }
}

/// See the module. As it is read, each number may turn out not to open.
#[derive(Clone, Debug, Default)]
pub struct Reach<T = Private> {
    /// Of the client's call-back number.
    pub phone: Use,
    /// Of the emergency contact's number.
    pub contact: Use,
    /// A number that can be dialled from the clinician's seat and reaches help at the client's place; at most 40 characters.
    pub help_from_here: T,
    /// When that was tried.
    pub tried_on: Option<NaiveDate>,
    /// What the client dials; at most 40 characters.
    pub help_there: T,
}

impl Reach<Opened> {
    /// Nothing was asked or written down.
    #[must_use]
    pub fn nothing() -> Self {
        let none = || Opened::Text(Private::default());
        Self { phone: Use::NotAsked, contact: Use::NotAsked, help_from_here: none(), tried_on: None, help_there: none() }
    }

    /// When the number that is dialled from here was tried, in words; empty where there is none.
    #[must_use]
    pub fn tried(&self, when: When) -> String {
        match self.tried_on {
            _ if self.help_from_here.is_empty() => String::new(),
            Some(day) => format!("tried {}", when.brief(day)),
            None => "not tried yet".to_owned(),
        }
    }

    /// Each fact with its name, as the record shows it.
    #[must_use]
    pub fn in_words(&self, when: When) -> Vec<(&'static str, String)> {
        let number = |text: &Opened, more: String| match (text.is_empty(), more.is_empty()) {
            (true, _) => "not given".to_owned(),
            (false, true) => text.shown().to_owned(),
            (false, false) => format!("{}, {more}", text.shown()),
        };
        vec![
            ("Use of their number", self.phone.words().to_owned()),
            ("Use of the contact\u{2019}s", self.contact.words().to_owned()),
            ("Help, from your seat", number(&self.help_from_here, self.tried(when))),
            ("What they dial", number(&self.help_there, String::new())),
        ]
    }

    fn whole(self) -> Result<Reach, SealError> {
        let Self { phone, contact, help_from_here, tried_on, help_there } = self;
        Ok(Reach { phone, contact, help_from_here: help_from_here.text()?, tried_on, help_there: help_there.text()? })
    }
}

/// What is known about reaching `client`, and its version, if anything was written down.
///
/// # Errors
/// [`Error::NotFound`] when the one who asks does not treat the client; [`Error::Inconsistent`] when a row does not say what it must.
pub async fn reach(tx: &mut Tx, app: &App, client: Uuid) -> Result<Option<(Reach<Opened>, i32)>, Error> {
    let key = clients::key(tx, app, client).await?;
    queries::reach(tx, client).await?.map(|row| row.open(&key, client)).transpose()
}

/// Keeps it against the version it was read at, 0 when there was none. False: somebody has changed it meanwhile.
///
/// # Errors
/// [`Error::NotFound`] when the one who asks does not treat the client, [`Error::Conflict`] when the record is archived,
/// [`Error::Database`]: nothing was kept.
pub async fn save(app: &App, subject: &Subject, client: Uuid, reach: &Reach, version: i32) -> Result<bool, Error> {
    let mut tx = app.database.act(subject, Act::new("reach.change").client(client)).await?;
    let key = clients::key(&mut tx, app, client).await?;
    if !change(&mut tx, app, &key, client, reach, version).await? {
        return Ok(false);
    }
    tx.commit().await?;
    Ok(true)
}

async fn change(tx: &mut Tx, app: &App, key: &ClientKey, client: Uuid, reach: &Reach, version: i32) -> Result<bool, Error> {
    clients::must_be_open(tx, client).await?;
    let before = queries::reach(tx, client).await?.map(|row| row.open(key, client)).transpose()?;
    if !one_form::may_replace(before.map(|(reach, at)| (reach.whole().map(drop), at)), version)? {
        return Ok(false);
    }
    let row = key.row(client, version + 1);
    let sealed = queries::Sealed {
        help_from_here: row.seal(&app.world, Field::ReachHelpFromHere, &reach.help_from_here)?,
        help_there: row.seal(&app.world, Field::ReachHelpThere, &reach.help_there)?,
    };
    queries::keep(tx, client, reach, &sealed, (version + 1, app.world.now())).await
}

/// Adds this feature's routes.
pub(crate) fn routes(routes: Routes) -> Routes {
    routes.get("/clients/{client}/reach", Rule::Care, get(one_form::show::<form::ReachForm>)).post(
        "/clients/{client}/reach",
        Rule::Care,
        post(one_form::save::<form::ReachForm>),
    )
}
