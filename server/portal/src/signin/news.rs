//! What a member is told on their start page until they have read it.

use axum::extract::State;
use uuid::Uuid;

use super::queries::{self, NewsRow};
use crate::platform::App;
use crate::platform::Member;
use crate::platform::forms::Id;
use crate::platform::when::When;
use crate::store::error::Error;
use crate::store::once::Answer;
use crate::store::subject::{Act, Tx};

/// One piece of news.
pub(crate) struct News {
    pub(crate) id: Uuid,
    pub(crate) words: String,
    /// Where to go on: an address and what stands there.
    pub(crate) way: Option<(&'static str, &'static str)>,
}

/// What the asker has not read yet, the oldest first.
pub(crate) async fn unread(tx: &mut Tx, when: When) -> Result<Vec<News>, Error> {
    Ok(queries::news(tx).await?.into_iter().map(|row| News { id: row.id, words: words(&row, when), way: way(&row.kind) }).collect())
}

/// `POST /news/{news}/read`.
pub(super) async fn read(member: Member, State(app): State<App>, Id(which): Id) -> Result<Answer, Error> {
    let mut tx = app.database.act(&member.subject, Act::new("news.read").object(which)).await?;
    if !queries::read_news(&mut tx, which).await? {
        return Err(Error::NotFound);
    }
    tx.commit().await?;
    Ok(Answer::see("/"))
}

fn way(kind: &str) -> Option<(&'static str, &'static str)> {
    match kind {
        "passkey_asked" => Some(("/replacements", "Lost passkeys")),
        "roles_of_changed" | "joined" => Some(("/members", "Members")),
        _ => None,
    }
}

fn words(row: &NewsRow, when: When) -> String {
    let (at, by) = (when.moment(&row.at), row.by.as_deref().unwrap_or("The practice"));
    let about = row.about.as_deref();
    let record = row.number.map(|number| format!("record {number}")).unwrap_or_default();
    match row.kind.as_str() {
        "client_given" => match about {
            Some(from) => format!("{at}: {by} handed {record} over to you from {from}."),
            None => format!("{at}: {by} handed {record} over to you. Nobody treated this client any more."),
        },
        "client_taken" => format!("{at}: {by} handed {record} over from you to {}.", about.unwrap_or("another clinician")),
        "passkey_asked" => {
            format!(
                "{at}: {by} says that {} has lost their passkeys, and asks for a new one. Another administrator or lead has to agree; each of you may refuse.",
                about.unwrap_or("a member")
            )
        }
        "passkey_replaced" => format!("{at}: the passkeys of {} were replaced by a new one.", about.unwrap_or("a member")),
        "passkey_refused" => format!("{at}: {by} refused a new passkey for {}.", about.unwrap_or("a member")),
        "roles_of_changed" => format!("{at}: {by} changed the roles of {}.", about.unwrap_or("a member")),
        "joined" => format!("{at}: {} joined the practice as a lead or an administrator, invited by {by}.", about.unwrap_or("somebody")),
        "roles_changed" => format!("{at}: {by} changed your roles."),
        // Of a later version.
        _ => format!("{at}: there is news that this version cannot show."),
    }
}
