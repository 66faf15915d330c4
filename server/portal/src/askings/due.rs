//! When a client is to be asked next: read from what is folded in the database (`schedule`), for the record, the caseload and the hour.

use chrono::NaiveDate;
use uuid::Uuid;

use super::queries::{self, DueRow};
use crate::measures::Occasion;
use crate::store::error::Error;
use crate::store::subject::Tx;

/// What is due for one client.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Due {
    /// Whose.
    pub client: Uuid,
    /// When in the treatment.
    pub occasion: Occasion,
    /// Since when, or from when on.
    pub on: NaiveDate,
    /// It was asked for and is not answered; the day is then the one until which it was hoped for.
    pub asked: bool,
}

impl Due {
    fn of(row: DueRow) -> Result<Self, Error> {
        let occasion = Occasion::parse(&row.occasion).ok_or(Error::Inconsistent("schedule.due_for"))?;
        Ok(Self { client: row.client, occasion, on: row.on, asked: row.asked })
    }

    /// What is to be done, in words; `today` tells how long already.
    #[must_use]
    pub fn words(&self, today: NaiveDate) -> String {
        let days = (today - self.on).num_days();
        let what = self.occasion.words();
        match (self.asked, days) {
            (true, 1) => format!("Forms asked for ({what}) have been overdue since yesterday"),
            (true, _) => format!("Forms asked for ({what}) have been overdue for {days} days"),
            (false, 0) => format!("Forms are due today ({what})"),
            (false, 1) => format!("Forms have been due since yesterday ({what})"),
            (false, _) => format!("Forms have been due for {days} days ({what})"),
        }
    }
}

/// What is due for `client` on `today`; `None`: nothing, or it was asked for and there is time.
///
/// # Errors
/// [`Error::Inconsistent`] when a row does not say what it must.
pub async fn due(tx: &mut Tx, client: Uuid, today: NaiveDate) -> Result<Option<Due>, Error> {
    queries::due(tx, Some(client), today).await?.into_iter().next().map(Due::of).transpose()
}

/// What is due on `today` for those whom the asker treats.
///
/// # Errors
/// As [`due`].
pub async fn due_of_mine(tx: &mut Tx, today: NaiveDate) -> Result<Vec<Due>, Error> {
    queries::due(tx, None, today).await?.into_iter().map(Due::of).collect()
}
