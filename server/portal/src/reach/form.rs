//! The form of reaching a client and help: what was typed, what is wrong with it, and keeping it.

use chrono::NaiveDate;
use uuid::Uuid;

use super::{Reach, Use, change, reach};
use crate::clients::one_form::{OneForm, one_page};
use crate::platform::App;
use crate::platform::forms::{Fields, Need, Problems};
use crate::store::error::Error;
use crate::store::seal::{ClientKey, Opened, Private, SealError};
use crate::store::subject::Tx;

/// As it was typed.
#[derive(Clone, Default, serde::Deserialize)]
#[serde(default)]
pub(super) struct ReachForm {
    phone_use: String,
    contact_use: String,
    help_from_here: String,
    tried_on: String,
    help_there: String,
    version: String,
}

impl ReachForm {
    /// The form filled with what is kept; where nothing is, with nothing asked.
    ///
    /// # Errors
    /// [`SealError`] when a number did not open: then there is no form.
    fn of(kept: Option<(Reach<Opened>, i32)>) -> Result<Self, SealError> {
        let (kept, version) = match kept {
            Some((kept, version)) => (kept.whole()?, version),
            None => (Reach::default(), 0),
        };
        Ok(Self {
            phone_use: kept.phone.name().to_owned(),
            contact_use: kept.contact.name().to_owned(),
            help_from_here: kept.help_from_here.reveal().to_owned(),
            tried_on: kept.tried_on.map(|day| day.to_string()).unwrap_or_default(),
            help_there: kept.help_there.reveal().to_owned(),
            version: version.to_string(),
        })
    }
}

impl Fields for ReachForm {
    const LABELS: &'static [(&'static str, &'static str)] = &[
        ("phone_use", "The client's call-back number"),
        ("contact_use", "The emergency contact's number"),
        ("help_from_here", "Help, dialled from your seat"),
        ("tried_on", "Tried on"),
        ("help_there", "What the client dials"),
    ];

    fn shown(&self, name: &str) -> String {
        let usable = |typed: &str| Use::parse(typed).map_or_else(|| typed.to_owned(), |one| one.words().to_owned());
        match name {
            "phone_use" => usable(&self.phone_use),
            "contact_use" => usable(&self.contact_use),
            "help_from_here" => self.help_from_here.clone(),
            "tried_on" => self.tried_on.clone(),
            _ => self.help_there.clone(),
        }
    }

    fn version(&mut self) -> &mut String {
        &mut self.version
    }
}

one_page!(ReachForm, "reach/form.html");

impl FormPage {
    fn uses(&self) -> Vec<(&'static str, &'static str)> {
        Use::ALL.iter().map(|one| (one.name(), one.words())).collect()
    }
}

impl OneForm for ReachForm {
    const ACTS: [&'static str; 2] = ["reach.view", "reach.change"];
    const SHOWN: &'static str = "";
    type Good = Reach;

    async fn filled(tx: &mut Tx, app: &App, client: Uuid) -> Result<Self, Error> {
        Ok(Self::of(reach(tx, app, client).await?)?)
    }

    fn check(&self) -> Result<Self::Good, Problems> {
        let mut problems = Problems::default();
        let phone = problems.choice("phone_use", &self.phone_use, Use::parse).unwrap_or_default();
        let contact = problems.choice("contact_use", &self.contact_use, Use::parse).unwrap_or_default();
        let help_from_here = Private::new(problems.phone("help_from_here", &self.help_from_here, Need::Optional));
        let help_there = Private::new(problems.phone("help_there", &self.help_there, Need::Optional));
        let day = self.tried_on.trim();
        let tried_on = day.parse::<NaiveDate>().ok();
        if tried_on.is_none() && !day.is_empty() {
            problems.add("tried_on", "A day as year, month and day, such as 2026-03-24.");
        }
        let reach = Reach { phone, contact, help_from_here, tried_on, help_there };
        if problems.none() { Ok(reach) } else { Err(problems) }
    }

    async fn change(tx: &mut Tx, app: &App, key: &ClientKey, client: Uuid, good: &Self::Good, version: i32) -> Result<bool, Error> {
        change(tx, app, key, client, good, version).await
    }
}
