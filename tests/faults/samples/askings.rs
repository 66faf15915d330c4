//! What to send to the routes of wording and asking, and to a client's own pages behind the link.

use leeward::askings::{self, New};
use leeward::measures::Occasion;
use leeward::platform::Role;
use leeward::store::seal::Private;
use leeward::wordings;
use leeward_core::measures::Measure;
use leeward_tests::forms::{file, wording};
use serde_json::json;
use uuid::Uuid;

use super::{Sample, unknown};

/// How these routes begin.
pub const ROUTES: [&str; 3] = ["/clients/{client}/askings", "/practice/wordings", "/q"];

pub async fn of_asking(sample: &mut Sample, route: &str) {
    let lead = sample.house().member(&[Role::Lead]).await;
    if route.starts_with("/practice") {
        sample.path = sample.path.replace("{measure}", "gad7");
        sample.who = lead.clone();
    }
    match route {
        "/practice/wordings/{measure}" => sample.typed(&[("file", &file(Measure::Gad7).to_string())]),
        "/practice/wordings/{measure}/use" => {
            let path = "/practice/wordings/gad7";
            assert_eq!(sample.who.fill_in(path, &[("file", &file(Measure::Gad7).to_string())]).await.status, 303);
            let waiting = sample.id("SELECT id FROM wording").await.to_string();
            sample.typed(&[("wording", &waiting)]);
        }
        _ => {
            wordings::load_and_use(&sample.house().app, &lead.subject(), Measure::Gad7, &wording(Measure::Gad7)).await.unwrap();
            of_use(sample, route).await;
        }
    }
}

async fn of_use(sample: &mut Sample, route: &str) {
    let today = sample.house().app.world.now().date_naive().to_string();
    match route {
        "/practice/wordings/{measure}/end" => {
            let used = sample.id("SELECT id FROM wording WHERE ended_at IS NULL").await.to_string();
            sample.typed(&[("wording", &used)]);
        }
        "/clients/{client}/askings/new" => {
            sample.typed(&[("gad7", "yes"), ("occasion", "regular"), ("from", &today), ("due", &today), ("event", "")]);
        }
        "/clients/{client}/askings/schedule" => sample.typed(&[("gad7", "yes"), ("every", "4"), ("follow_up", ""), ("version", "0")]),
        _ => {
            let link = asked(sample).await;
            behind_the_link(sample, route, &link).await;
        }
    }
}

/// A link of an asking that holds.
async fn asked(sample: &Sample) -> String {
    let now = sample.house().app.world.now();
    let (occasion, measures, event) = (Occasion::Regular, vec![Measure::Gad7], Private::default());
    let new = New { occasion, measures, from_at: now, due_on: now.date_naive(), event };
    let link = askings::make(&sample.house().app, &sample.scene.clinician.subject(), sample.scene.client, new).await.unwrap();
    link.split('#').nth(1).unwrap().to_owned()
}

async fn behind_the_link(sample: &mut Sample, route: &str, link: &str) {
    let mut client = sample.house().visitor();
    client.cookies.insert(sample.house().app.origin.errand_cookie(), link.to_owned());
    let asking = sample.id("SELECT id FROM asking").await.to_string();
    let wording = sample.id("SELECT id FROM wording WHERE ended_at IS NULL").await.to_string();
    let page = Uuid::from_u128(7).to_string();
    match route {
        "/clients/{client}/askings/link" | "/clients/{client}/askings/withdraw" => return sample.typed(&[("asking", &asking)]),
        "/q" => {
            sample.who = sample.house().visitor();
            return sample.json(json!({ "link": link }));
        }
        "/q/draft" => {
            let answers = [Some("1"), None, None, None, None, None, None];
            let of_page = json!({ "asking": asking, "page": page, "wording": wording, "was": 0, "sending": 1 });
            let mut sent = json!({ "measure": "gad7", "answers": answers });
            sent.as_object_mut().unwrap().extend(of_page.as_object().unwrap().clone());
            sample.json(sent);
        }
        "/q/forms" => {
            let items = ["item_1", "item_2", "item_3", "item_4", "item_5", "item_6", "item_7"].map(|item| (item, "1"));
            let of_page = [("measure", "gad7"), ("asking", &asking), ("page", &page), ("wording", &wording), ("was", "0")];
            sample.typed(&[&items[..], &of_page].concat());
        }
        "/q/decline" => sample.typed(&[("asking", &asking)]),
        _ => unknown(route),
    }
    sample.who = client;
}
