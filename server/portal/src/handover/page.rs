//! The page on which clients are handed over.

use askama::Template;
use axum::extract::State;
use axum::response::IntoResponse;
use serde::Deserialize;
use uuid::Uuid;

use super::queries::{self, MemberRow};
use crate::base::ids::new_id;
use crate::platform::App;
use crate::platform::Member;
use crate::platform::forms::{Asks, Id, Keyed};
use crate::platform::page::{Frame, page};
use crate::signin::{ClientRow, clients_of, is_fresh};
use crate::store::error::Error;
use crate::store::once::Answer;
use crate::store::subject::{Act, Tx};

#[derive(Template)]
#[template(path = "handover/clients.html")]
struct HandoverPage {
    frame: Frame,
    fresh: bool,
    /// Whose clients stand here; nothing: those whom nobody treats.
    from: Option<MemberRow>,
    clients: Vec<ClientRow>,
    clinicians: Vec<MemberRow>,
    /// How many nobody treats.
    untreated: usize,
    done: Option<Done>,
}

/// That somebody was handed over, as it stands now.
struct Done {
    number: i32,
    to: String,
}

impl HandoverPage {
    fn is_from(&self, id: &Uuid) -> bool {
        self.from.as_ref().is_some_and(|from| from.id == *id)
    }
}

/// Whose clients to show, and who was handed over to whom before.
#[derive(Default, Deserialize)]
#[serde(default)]
pub(super) struct Whose {
    from: String,
    client: String,
    to: String,
}

/// An id, or empty for nobody.
fn id(typed: &str) -> Result<Option<Uuid>, Error> {
    if typed.is_empty() { Ok(None) } else { typed.parse().map(Some).map_err(|_| Error::NotFound) }
}

/// `GET /handover?from=&client=&to=`.
pub(super) async fn show(me: Member, State(app): State<App>, frame: Frame, Asks(asked): Asks<Whose>) -> Result<impl IntoResponse, Error> {
    let whose = id(&asked.from)?;
    let mut tx = app.database.act(&me.subject, Act::new("member.clients")).await?;
    if let Some(whose) = whose {
        tx.is_about(whose);
    }
    let members = queries::members(&mut tx).await?;
    let untreated = clients_of(&mut tx, None).await?;
    let (count, clients) = match whose {
        Some(whose) => (untreated.len(), clients_of(&mut tx, Some(whose)).await?),
        None => (untreated.len(), untreated),
    };
    let done = done(&mut tx, &members, &asked).await?;
    let fresh = is_fresh(&mut tx).await?;
    tx.commit().await?;
    let from = match whose {
        Some(whose) => Some(members.iter().find(|row| row.id == whose).cloned().ok_or(Error::NotFound)?),
        None => None,
    };
    let clinicians = members.into_iter().filter(|row| row.treats).collect();
    page(&HandoverPage { frame, fresh, from, clients, clinicians, untreated: count, done })
}

/// What the address says was done, if that is how it stands.
async fn done(tx: &mut Tx, members: &[MemberRow], asked: &Whose) -> Result<Option<Done>, Error> {
    let (Some(client), Some(to)) = (id(&asked.client)?, id(&asked.to)?) else { return Ok(None) };
    let number = clients_of(tx, Some(to)).await?.into_iter().find(|row| row.client == client).map(|row| row.number);
    let name = members.iter().find(|row| row.id == to).map(|row| row.name.clone());
    Ok(number.zip(name).map(|(number, to)| Done { number, to }))
}

/// From whom, to whom.
#[derive(Deserialize)]
pub(super) struct HandoverForm {
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
    Keyed(once, typed): Keyed<HandoverForm>,
) -> Result<Answer, Error> {
    let from = id(&typed.from)?;
    let Some(to) = id(&typed.to)? else {
        return Err(Error::BadRequest("Choose the clinician who takes this client on. Nothing was handed over yet."));
    };
    let act = Act::new("client.hand_over").client(client).object(to);
    let mut tx = app.database.act_once(&me.subject, act, &once).await?;
    if !queries::hand_over(&mut tx, new_id(&app.world), client, from, to).await? {
        return Err(Error::Conflict(
            "It does not stand like this any more: the client was handed over or taken on meanwhile, or that clinician has left. Look at the list again.",
        ));
    }
    let _told = app.revocations.follow();
    let from = from.map(|from| format!("from={from}&")).unwrap_or_default();
    tx.commit(Answer::see(format!("/handover?{from}client={client}&to={to}"))).await
}
