//! The assessment as the desk takes it: on one screen, in its order, while the hour goes on.

use axum::Json;
use axum::body::Bytes;
use axum::extract::State;
use axum::http::StatusCode;
use axum::response::{IntoResponse, Response};
use leeward_core::scale::{Sud, Voc};
use serde::Deserialize;

use super::assessments::{Ratings, assess};
use super::form::{long, rating};
use super::{Words, find, queries, seal};
use crate::clients;
use crate::platform::forms::{Id, Problems};
use crate::platform::{App, Member};
use crate::store::error::Error;
use crate::store::once::{Answer, Once};
use crate::store::subject::Act;

/// As it was typed. The label and the place in the plan are the target's page's.
#[derive(Default, Deserialize)]
#[serde(default)]
struct AtDesk {
    picture: String,
    negative_belief: String,
    positive_belief: String,
    voc: String,
    emotions: String,
    sud: String,
    body_location: String,
    /// The version of the target that the desk showed.
    version: i32,
}

/// `POST /targets/{target}/assessment`: answers the target's new version.
pub(super) async fn post(member: Member, State(app): State<App>, Id(id): Id, once: Once, body: Bytes) -> Result<Response, Error> {
    let mut tx = app.database.act_once(&member.subject, Act::new("session.assess").object(id), &once).await?;
    let before = find(&mut tx, &app, id).await?;
    let typed: AtDesk = serde_json::from_slice(&body).map_err(|_| Error::BadRequest("Send one assessment as JSON."))?;
    let mut problems = Problems::default();
    // The form showed all of it, or nothing is replaced.
    let shown = before.words.whole()?;
    let words = Words {
        label: shown.label,
        picture: long(&mut problems, "picture", &typed.picture, 600),
        negative_belief: long(&mut problems, "negative_belief", &typed.negative_belief, 600),
        positive_belief: long(&mut problems, "positive_belief", &typed.positive_belief, 600),
        emotions: long(&mut problems, "emotions", &typed.emotions, 300),
        body_location: long(&mut problems, "body_location", &typed.body_location, 300),
    };
    let ratings =
        Ratings { sud: rating(&mut problems, "sud", Sud::parse(&typed.sud)), voc: rating(&mut problems, "voc", Voc::parse(&typed.voc)) };
    if !problems.none() {
        return Ok((StatusCode::UNPROCESSABLE_ENTITY, Json(serde_json::json!({ "errors": problems }))).into_response());
    }
    if !queries::change_target(&mut tx, id, typed.version, before.prong).await? {
        return Err(Error::Conflict(
            "This target was changed elsewhere meanwhile. What you typed is still here: open the target, look, then reload this desk.",
        ));
    }
    let key = clients::key(&mut tx, &app, before.client).await?;
    let next = queries::words_version(&mut tx, id).await? + 1;
    queries::keep_words(&mut tx, before.client, &seal(&app, &key, id, next, &words)?).await?;
    assess(&mut tx, &app, before.client, id, ratings).await?;
    let answer = Answer::Json(serde_json::json!({ "version": typed.version + 1 }));
    Ok(tx.commit(answer).await?.into_response())
}
