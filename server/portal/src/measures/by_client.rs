//! A form that the client handed in, on an errand.

use leeward_core::measures::Measure;
use uuid::Uuid;

use super::{ONLY_VERSION, Sheet, flag, queries, threshold};
use crate::base::ids::new_id;
use crate::platform::App;
use crate::store::error::Error;
use crate::store::seal::{ClientKey, Field, Private};
use crate::store::subject::Tx;

/// What is handed in.
pub(crate) struct Handed<'a> {
    /// Which form.
    pub(crate) measure: Measure,
    /// The wording that it was answered to.
    pub(crate) wording: Uuid,
    /// Its answers.
    pub(crate) sheet: &'a Sheet,
    /// What it was asked about.
    pub(crate) event: &'a Private,
    /// The version of the draft that it was made from; 0: from none.
    pub(crate) follows: i32,
    /// The page that it comes from.
    pub(crate) page: Uuid,
}

/// Keeps what a client hands in, with the flag that it raises. False: it was handed in already, its time is not now, or another draft stands.
///
/// # Errors
/// [`Error::Inner`] when the answers are none to this form; [`Error::Seal`].
pub(crate) async fn hand_in(tx: &mut Tx, app: &App, key: &ClientKey, handed: &Handed<'_>) -> Result<bool, Error> {
    let Handed { measure, sheet, event, .. } = *handed;
    let score = measure.score(sheet.answers()).map_err(|fault| Error::Inner(format!("a form: {fault}")))?;
    let points = threshold(tx, measure).await?.filter(|_| measure.form().is_outcome).and_then(|one| i16::try_from(one.points).ok());
    let id = new_id(&app.world);
    let row = key.row(id, ONLY_VERSION);
    let answers = row.seal(&app.world, Field::ResponseAnswers, &Private::new(sheet.text()))?;
    let event = row.seal(&app.world, Field::ResponseEvent, event)?;
    let kept = queries::HandedRow {
        id,
        measure,
        wording: handed.wording,
        score: &score,
        points,
        says: flag(score.risk),
        follows: handed.follows,
        page: handed.page,
    };
    Ok(queries::hand_in(tx, &kept, &answers, &event).await?)
}
