//! What is said about a target on its page, beside its words and ratings: how it is worked on, what was found, what is decided.

use axum::extract::State;
use leeward_core::course::Because;
use leeward_core::scale::Sud;
use uuid::Uuid;

use super::assessments::{self, Ratings};
use super::{find, queries};
use crate::base::ids::new_id;
use crate::course::{self, Saying};
use crate::platform::forms::{Id, Keyed};
use crate::platform::{App, Member, codes};
use crate::store::error::Error;
use crate::store::once::Answer;
use crate::store::subject::Act;

/// Segments of one event: more than anybody divides one into.
const SEGMENTS: std::ops::RangeInclusive<i16> = 1..=99;

/// What the page's forms send, each its own part of it.
#[derive(Default, serde::Deserialize)]
#[serde(default)]
pub(super) struct Said {
    /// A kind and its code, such as "scan.clear"; or "segment".
    said: String,
    /// Why, by its code, where something is done out of its order.
    because: String,
    segment: String,
    sud: String,
    /// The target at its end whose cluster is asked anew: back to its page.
    of: String,
    /// How the target stood when the page was shown, see [`super::show`].
    stood: String,
}

/// `POST /targets/{target}/facts`
pub(super) async fn post(member: Member, State(app): State<App>, Id(id): Id, Keyed(once, typed): Keyed<Said>) -> Result<Answer, Error> {
    let mut tx = app.database.act_once(&member.subject, Act::new("target.fact").object(id), &once).await?;
    let target = find(&mut tx, &app, id).await?;
    if typed.said == "segment" {
        let (segment, sud) = segment(&typed)?;
        queries::insert_segment(&mut tx, new_id(&app.world), target.client, id, (segment, sud.get().into()), app.world.now()).await?;
        course::fold(&mut tx, id).await?;
        return tx.saved(format!("/targets/{id}")).await;
    }
    if typed.said == "anew" {
        assessments::assess(&mut tx, &app, target.client, id, Ratings { sud: Some(sud(&typed)?), voc: None }).await?;
        let back = typed.of.parse::<Uuid>().unwrap_or(id);
        return tx.saved(format!("/targets/{back}")).await;
    }
    let saying = saying(&typed)?;
    if typed.stood != target.stands() {
        return Err(Error::Conflict(
            "The target stands otherwise now than this page showed, so nothing was done. Open it again and look first.",
        ));
    }
    course::say(&mut tx, &app, target.client, id, saying).await?;
    tx.saved(format!("/targets/{id}")).await
}

fn segment(typed: &Said) -> Result<(i16, Sud), Error> {
    let segment = typed.segment.trim().parse().ok().filter(|number| SEGMENTS.contains(number));
    let segment = segment.ok_or(Error::BadRequest("Number the segments 1, 2, 3 in their order. Go back and type which one was rated."))?;
    Ok((segment, sud(typed)?))
}

fn sud(typed: &Said) -> Result<Sud, Error> {
    Sud::parse(&typed.sud).map_err(|_| Error::BadRequest("A SUD is a whole number from 0 to 10. Go back and type it again."))
}

fn saying(typed: &Said) -> Result<Saying, Error> {
    let because = match typed.because.as_str() {
        "" => None,
        code => Some(codes::read::<Because>(code, "").map_err(|_| Error::BadRequest("Choose why from the list on the target's page."))?),
    };
    let (kind, code) = typed.said.split_once('.').unwrap_or_default();
    Saying::read(kind, code, because).ok_or(Error::BadRequest("Choose what is said from the list on the target's page."))
}
