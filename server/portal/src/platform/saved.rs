//! "Saved 14:02": what a page says to which a form led that was kept. The address names the request and nothing else; that it was
//! kept, when, and that it led here is read from the record. No address makes a page say what is not so.

use axum::http::Uri;
use uuid::Uuid;

use super::member::Member;
use super::queries;
use super::state::App;
use super::when::When;
use crate::store::error::Error;
use crate::store::once::{Answer, SAVED};

/// When what led to this page was kept, as a person reads it; in the extensions of the request.
#[derive(Clone, Debug)]
pub(super) struct Saved(pub(super) String);

/// Finds out what led to this address, if it says that something did.
pub(super) async fn saved(app: &App, member: &Member, here: &Uri) -> Result<Option<Saved>, Error> {
    let Some(key) = key_in(here) else { return Ok(None) };
    let mut tx = app.database.look(&member.subject).await?;
    let kept = queries::saved_now(&mut tx, key).await?;
    let when = When::in_practice(&mut tx).await?;
    tx.commit().await?;
    Ok(kept.filter(|kept| leads(&kept.answer, here)).map(|kept| Saved(when.time(&kept.at))))
}

fn key_in(here: &Uri) -> Option<Uuid> {
    form_urlencoded::parse(here.query()?.as_bytes()).find(|(name, _)| name == SAVED).and_then(|(_, key)| key.parse().ok())
}

/// Whether that answer leads to this address; which part of the page it names, no server is told.
fn leads(answer: &str, here: &Uri) -> bool {
    let Ok(Answer::See(to)) = serde_json::from_str(answer) else { return false };
    here.path_and_query().is_some_and(|here| to.split('#').next() == Some(here.as_str()))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_answer_leads_to_its_own_address_alone() {
        let key = "6f0e7f1e-8f0a-4c55-9d1e-0a1b2c3d4e5f";
        let answer = serde_json::to_string(&Answer::See(format!("/presets?saved={key}#own"))).unwrap();
        let here = |path: &str| Uri::try_from(path).unwrap();
        assert_eq!(key_in(&here(&format!("/presets?saved={key}"))), key.parse().ok());
        assert!(leads(&answer, &here(&format!("/presets?saved={key}"))));
        for elsewhere in [format!("/members?saved={key}"), format!("/presets?saved={key}&find=x"), "/presets".into()] {
            assert!(!leads(&answer, &here(&elsewhere)), "{elsewhere}");
        }
        assert!(key_in(&here("/presets?saved=14:02")).is_none() && key_in(&here("/presets")).is_none());
    }
}
