//! What to send to the routes of treatments and of the forms that were filled in.

use super::{Sample, unknown};

const PHQ9: [&str; 9] = ["item_1", "item_2", "item_3", "item_4", "item_5", "item_6", "item_7", "item_8", "item_9"];

/// How these routes begin.
pub const ROUTES: [&str; 2] = ["/clients/{client}/episodes", "/clients/{client}/measures"];

pub async fn of_treatment(sample: &mut Sample, route: &str) {
    sample.path = sample.path.replace("{number}", "1").replace("{measure}", "phq9");
    match route {
        "/clients/{client}/episodes" => {}
        "/clients/{client}/episodes/{number}" => {
            sample.sql("UPDATE session SET ended_at = opened_at, closing = 'no_reprocessing'").await;
            let day = today(sample);
            sample.typed(&[("reason", "moved"), ("day", &day), ("version", "1")]);
        }
        "/clients/{client}/measures/new/{measure}" => {
            let day = today(sample);
            sample.typed(&form(&day, "2"));
        }
        "/clients/{client}/measures/{number}/withdraw" => entered(sample, "0").await,
        "/clients/{client}/measures/{number}/flag" => {
            entered(sample, "1").await;
            sample.typed(&[("done", "asked")]);
        }
        _ => unknown(route),
    }
}

fn today(sample: &Sample) -> String {
    sample.house().app.world.now().date_naive().to_string()
}

/// A PHQ-9 of `day`, every item answered with `answer`: 1 or more at item 9 raises a flag.
fn form<'a>(day: &'a str, answer: &'a str) -> Vec<(&'static str, &'a str)> {
    let answers = PHQ9.iter().map(|item| (*item, answer));
    answers.chain([("occasion", "intake"), ("day", day)]).collect()
}

/// The form whose page the route is of.
async fn entered(sample: &mut Sample, answer: &str) {
    let (day, path) = (today(sample), format!("/clients/{}/measures/new/phq9", sample.scene.client));
    let saved = sample.who.fill_in(&path, &form(&day, answer)).await;
    assert_eq!(saved.status, 303, "{}", saved.body);
}
