//! What was typed of a closing so far: kept sealed while the session is open, so that neither a browser that dies nor another window
//! loses it.

use uuid::Uuid;

use super::close_form::ClosingForm;
use super::queries_draft as queries;
use crate::platform::App;
use crate::store::error::Error;
use crate::store::seal::{ClientKey, Field, Opened, Private};
use crate::store::subject::Tx;

/// The draft of `session` and its version; 0 and nothing where there is none, or none that can be read.
pub(super) async fn draft(tx: &mut Tx, key: &ClientKey, session: Uuid) -> Result<(Option<ClosingForm>, i32), Error> {
    let Some(row) = queries::draft(tx, session).await? else { return Ok((None, 0)) };
    let typed = match key.row(session, row.version).open(Field::SessionDraft, &row.typed) {
        // A draft of another version of the portal is none: its closing is typed anew.
        Opened::Text(text) => serde_json::from_str(text.reveal()).ok(),
        Opened::Unreadable => None,
    };
    Ok((typed, row.version))
}

/// Keeps what was typed against the version it was read at, and finds it again when it is sent again. `None`: somebody else has
/// written on it meanwhile.
pub(super) async fn keep(
    tx: &mut Tx,
    app: &App,
    key: &ClientKey,
    session: Uuid,
    typed: Option<&ClosingForm>,
    version: i32,
) -> Result<Option<i32>, Error> {
    let text = typed.map(serde_json::to_string).transpose().map_err(|fault| Error::Inner(format!("a draft: {fault}")))?;
    let sealed = key.row(session, version + 1).seal(&app.world, Field::SessionDraft, &Private::new(text.unwrap_or_default()))?;
    if queries::keep(tx, session, &sealed, (version + 1, app.world.now())).await? {
        return Ok(Some(version + 1));
    }
    let (now, at) = draft(tx, key, session).await?;
    Ok((typed.is_some() && now.as_ref() == typed && at == version + 1).then_some(at))
}
