//! The relay: reached, passwords of ours accepted and others not, and nothing passed on to where it must not reach.

use std::net::IpAddr;

use chrono::{DateTime, Utc};
use turn_client_proto::api::TurnEvent;

use super::line::{Line, Place};
use crate::live::Relay;

/// What was found, and its cure where it is a problem.
pub struct Finding {
    /// What was tried.
    pub about: String,
    /// `None`: all is well.
    pub problem: Option<String>,
}

/// Ranges that a relay must not pass anything on to, each by one address in it (RFC 6890, RFC 6598): what stands beside the relay, the machine itself,
/// and where machines of providers give out their secrets.
const DENIED: [&str; 7] = ["10.0.0.1", "172.16.0.1", "192.168.0.1", "100.64.0.1", "169.254.169.254", "0.0.0.1", "127.0.0.1"];

/// Tries each address of `relay`.
pub async fn examine(relay: &Relay, now: DateTime<Utc>) -> Vec<Finding> {
    let mut found = vec![];
    for url in relay.urls() {
        examine_one(relay, url, now, &mut found).await;
    }
    found
}

async fn examine_one(relay: &Relay, url: &str, now: DateTime<Utc>, found: &mut Vec<Finding>) {
    let mut say = |what: &str, problem: Option<String>| found.push(Finding { about: format!("{url}: {what}"), problem });
    let Some(place) = place(url) else { return say("address", Some("It is none: see LEEWARD_RELAY_URL.".into())) };
    let ways = match relay.ways("doctor", now, true) {
        Ok(ways) => ways,
        Err(fault) => return say("password", Some(format!("None could be made: {fault}."))),
    };
    let mut line = match Line::open(&place, &ways.username, &ways.credential).await {
        Ok(line) => line,
        Err(why) => return say("reached", Some(format!("{why}. Is it running, and does the firewall let this port through?"))),
    };
    match line.answer().await {
        Some(TurnEvent::AllocationCreated(..)) => say("reached, and a password of ours is accepted", None),
        // Asked for another password by a relay that has another secret, the client's side falls silent.
        answer if answer.is_some() || line.heard => {
            let cure =
                "It answers and refuses. Compare static-auth-secret there with LEEWARD_RELAY_SECRET here, the two clocks, and its quotas.";
            return say("a password of ours is accepted", Some(cure.into()));
        }
        _ => return say("reached", Some("Nothing answers there. Is it running, and does the firewall let this port through?".into())),
    }
    say("another password is refused", other_password(&place, &ways.username).await);
    for address in DENIED {
        let Ok(address) = address.parse::<IpAddr>() else { continue };
        let passes = line.ask_for(address) && matches!(line.answer().await, Some(TurnEvent::PermissionCreated(..)));
        let cure = format!("It passes on to {address}. Take the denied-peer-ip lines of deploy/coturn/turnserver.conf.");
        say(&format!("nothing goes to {address}"), passes.then_some(cure));
    }
}

/// What is wrong when anybody's password is as good as ours.
async fn other_password(place: &Place, username: &str) -> Option<String> {
    let mut line = Line::open(place, username, "none of ours").await.ok()?;
    let open = matches!(line.answer().await, Some(TurnEvent::AllocationCreated(..)));
    open.then(|| "It lets in whoever comes. Set use-auth-secret, and take out no-auth.".into())
}

/// `turn:host:port?transport=…` (RFC 7065, section 3.1, which has the ports).
fn place(url: &str) -> Option<Place> {
    let (sealed, rest) = url.strip_prefix("turns:").map(|rest| (true, rest)).or_else(|| Some((false, url.strip_prefix("turn:")?)))?;
    let (at, query) = rest.split_once('?').unwrap_or((rest, ""));
    let usual = if sealed { 5349 } else { 3478 };
    let (host, port) = match at.rsplit_once(':') {
        Some((host, port)) if !host.contains(':') || host.ends_with(']') => (host, port.parse().ok()?),
        _ => (at, usual),
    };
    let host = host.trim_start_matches('[').trim_end_matches(']').to_owned();
    Some(Place { host, port, stream: sealed || query == "transport=tcp", sealed })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_address_is_read_as_its_standard_has_it() {
        let read = |url| place(url).map(|place| (place.host, place.port, place.stream, place.sealed));
        assert_eq!(read("turn:relay.test"), Some(("relay.test".into(), 3478, false, false)));
        assert_eq!(read("turns:relay.test"), Some(("relay.test".into(), 5349, true, true)));
        assert_eq!(read("turn:[2001:db8::9]:3479?transport=tcp"), Some(("2001:db8::9".into(), 3479, true, false)));
        assert_eq!(read("turn:192.0.2.9:3478?transport=udp"), Some(("192.0.2.9".into(), 3478, false, false)));
        assert_eq!(read("stun:relay.test"), None);
    }
}
