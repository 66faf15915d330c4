//! `leeward doctor`: tries what the portal needs of its surroundings, and says of each problem what cures it. So far of the relay.

mod line;
mod relay;

use crate::live::Relay;

pub use relay::{Finding, examine};

/// Examines the relay and prints what was found.
///
/// # Errors
/// A sentence that counts the problems; each is printed with its cure before.
pub async fn run(relay: Option<Relay>, now: chrono::DateTime<chrono::Utc>) -> Result<(), String> {
    let Some(relay) = relay else {
        println!(
            "relay: none is set. Sessions go by telephone unless the practice allows direct connections. deploy/coturn has settings for one; \
             then set LEEWARD_RELAY_URL and LEEWARD_RELAY_SECRET_FILE."
        );
        return Ok(());
    };
    let mut problems = 0;
    for Finding { about, problem } in examine(&relay, now).await {
        match problem {
            None => println!("well     {about}"),
            Some(cure) => {
                problems += 1;
                println!("PROBLEM  {about}\n         {cure}");
            }
        }
    }
    if problems == 0 { Ok(()) } else { Err(format!("doctor: {problems} found. Cure the first, then run it again.")) }
}
