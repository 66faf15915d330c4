//! The page on which clients are handed over.

use askama::Template;
use axum::extract::State;
use axum::response::IntoResponse;
use serde::Deserialize;
use uuid::Uuid;

use super::queries::{self, ClinicianRow};
use crate::base::ids::new_id;
use crate::platform::App;
use crate::platform::Member;
use crate::platform::forms::{Asks, Id, Keyed};
use crate::platform::page::{Frame, page};
use crate::signin::{ClientRow, clients_of, is_fresh};
use crate::store::error::Error;
use crate::store::once::Answer;
use crate::store::subject::Act;

#[derive(Template)]
#[template(path = "handover/clients.html")]
struct HandoverPage {
    frame: Frame,
    fresh: bool,
    /// Whose clients stand here; nothing: those whom nobody treats.
    from: Option<ClinicianRow>,
    clients: Vec<ClientRow>,
    clinicians: Vec<ClinicianRow>,
    /// How many nobody treats.
    untreated: usize,
}

impl HandoverPage {
    fn is_from(&self, id: &Uuid) -> bool {
        self.from.as_ref().is_some_and(|from| from.id == *id)
    }
}

/// Whose clients to show.
#[derive(Deserialize)]
pub(super) struct Whose {
    #[serde(default)]
    from: String,
}

/// A member's id, or empty for nobody.
fn member(typed: &str) -> Result<Option<Uuid>, Error> {
    if typed.is_empty() { Ok(None) } else { typed.parse().map(Some).map_err(|_| Error::NotFound) }
}

/// `GET /handover?from=`.
pub(super) async fn show(me: Member, State(app): State<App>, frame: Frame, Asks(whose): Asks<Whose>) -> Result<impl IntoResponse, Error> {
    let whose = member(&whose.from)?;
    let mut tx = app.database.act(&me.subject, Act::new("member.clients")).await?;
    if let Some(whose) = whose {
        tx.is_about(whose);
    }
    let clinicians = queries::clinicians(&mut tx).await?;
    let untreated = clients_of(&mut tx, None).await?;
    let (count, clients) = match whose {
        Some(whose) => (untreated.len(), clients_of(&mut tx, Some(whose)).await?),
        None => (untreated.len(), untreated),
    };
    let fresh = is_fresh(&mut tx).await?;
    tx.commit().await?;
    let from = match whose {
        Some(whose) => {
            let found = clinicians.iter().find(|row| row.id == whose).ok_or(Error::NotFound)?;
            Some(ClinicianRow { id: found.id, name: found.name.clone() })
        }
        None => None,
    };
    page(&HandoverPage { frame, fresh, from, clients, clinicians, untreated: count })
}

/// From whom, to whom.
#[derive(Deserialize)]
pub(super) struct Typed {
    #[serde(default)]
    from: String,
    #[serde(default)]
    to: String,
}

/// `POST /handover/{client}`: both clinicians are told, and a desk of the earlier one closes in words.
pub(super) async fn hand_over(
    me: Member,
    State(app): State<App>,
    Id(client): Id,
    Keyed(once, typed): Keyed<Typed>,
) -> Result<Answer, Error> {
    let from = member(&typed.from)?;
    let Some(to) = member(&typed.to)? else {
        return Err(Error::BadRequest("Choose the clinician who takes this client on. Nothing was handed over yet."));
    };
    let act = Act::new("client.hand_over").client(client).object(to);
    let mut tx = app.database.act_once(&me.subject, act, &once).await?;
    if !queries::hand_over(&mut tx, new_id(&app.world), client, from, to).await? {
        return Err(Error::Conflict(
            "It does not stand like this any more: the client was handed over meanwhile, or that clinician has left. Look at the list again.",
        ));
    }
    let back = typed.from.parse::<Uuid>().map_or_else(|_| "/handover".to_owned(), |from| format!("/handover?from={from}"));
    let answer = tx.commit(Answer::see(back)).await?;
    app.closings.look_again();
    Ok(answer)
}
