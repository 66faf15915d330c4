//! Writing the three lines: what was typed, what is wrong with it, and keeping it.

use uuid::Uuid;

use super::{LINES, Line, Steadying, change, steadying};
use crate::clients::one_form::{OneForm, one_page};
use crate::platform::App;
use crate::platform::forms::{Fields, Lines, Need, Problems};
use crate::store::error::Error;
use crate::store::seal::{ClientKey, Opened, Private, SealError};
use crate::store::subject::Tx;

/// Most characters of a line: it is read at a glance.
const MOST: usize = 200;

/// As it was typed.
#[derive(Clone, Default, serde::Deserialize)]
#[serde(default)]
pub(super) struct LinesForm {
    signs: String,
    way_back: String,
    first_words: String,
    version: String,
}

impl LinesForm {
    /// The form filled with what is kept.
    ///
    /// # Errors
    /// [`SealError`] when a line did not open: then there is no form.
    fn of(kept: Option<(Steadying<Opened>, i32)>) -> Result<Self, SealError> {
        let Some((lines, version)) = kept else { return Ok(Self { version: "0".to_owned(), ..Self::default() }) };
        let [signs, way_back, first_words] = lines.whole()?.lines.map(|text| text.reveal().to_owned());
        Ok(Self { signs, way_back, first_words, version: version.to_string() })
    }

    /// What was typed for a line.
    fn typed(&self, line: &Line) -> &str {
        match line.name {
            "signs" => &self.signs,
            "way_back" => &self.way_back,
            _ => &self.first_words,
        }
    }
}

impl Fields for LinesForm {
    const LABELS: &'static [(&'static str, &'static str)] =
        &[("signs", "Early signs"), ("way_back", "Way back"), ("first_words", "First words")];

    fn shown(&self, name: &str) -> String {
        LINES.iter().find(|line| line.name == name).map_or_else(String::new, |line| self.typed(line).to_owned())
    }

    fn version(&mut self) -> &mut String {
        &mut self.version
    }
}

one_page!(LinesForm, "steadying/form.html");

impl OneForm for LinesForm {
    const ACTS: [&'static str; 2] = ["steadying.view", "steadying.change"];
    const SHOWN: &'static str = "/steadying";
    type Good = Steadying;

    async fn filled(tx: &mut Tx, app: &App, client: Uuid) -> Result<Self, Error> {
        Ok(Self::of(steadying(tx, app, client).await?)?)
    }

    fn check(&self) -> Result<Self::Good, Problems> {
        let mut problems = Problems::default();
        let lines = LINES.each_ref().map(|line| Private::new(problems.text(line.name, self.typed(line), MOST, Need::Optional, Lines::One)));
        if problems.none() { Ok(Steadying { lines }) } else { Err(problems) }
    }

    async fn change(tx: &mut Tx, app: &App, key: &ClientKey, client: Uuid, good: &Self::Good, version: i32) -> Result<bool, Error> {
        change(tx, app, key, client, good, version).await
    }
}
