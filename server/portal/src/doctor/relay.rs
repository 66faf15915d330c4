//! The relay: reached, passwords of ours accepted and others not, and nothing passed on to where it must not reach.

use std::net::IpAddr;

use chrono::{DateTime, Utc};
use leeward_core::call::{Reach, is_public};
use leeward_core::wire::Ways;
use turn_client_proto::api::TurnEvent;
use turn_client_proto::types::AddressFamily;

use super::line::{Line, Place};
use crate::live::Relay;

/// What was found, and its cure where it is a problem.
pub struct Finding {
    /// What was tried.
    pub about: String,
    /// `None`: all is well.
    pub problem: Option<String>,
}

/// Ranges that a relay must not pass anything on to, each by one address in it (RFC 6890, RFC 6598, RFC 4193, RFC 4291): what stands beside the relay, the
/// machine itself, where machines of providers give out their secrets, and (RFC 5737, RFC 3849) anybody in the internet.
const DENIED: [&str; 8] = ["10.0.0.1", "172.16.0.1", "192.168.0.1", "100.64.0.1", "169.254.169.254", "0.0.0.1", "127.0.0.1", "192.0.2.1"];
const DENIED_6: [&str; 5] = ["::1", "fd00::1", "fe80::1", "::ffff:10.0.0.1", "2001:db8::1"];
const NOT_TRIED: &str = "It could not be tried: the relay did not answer. Run this again.";
const TAKE: &str = "Take the denied-peer-ip lines of deploy/coturn/turnserver.conf.";

/// Tries each address of `relay`.
pub async fn examine(relay: &Relay, now: DateTime<Utc>) -> Vec<Finding> {
    let mut found = vec![];
    for url in relay.urls() {
        match place(url) {
            Some(place) => Examined { relay, url, place, now, found: &mut found }.all().await,
            None => found.push(Finding { about: format!("{url}: address"), problem: Some("It is none: see LEEWARD_RELAY_URL.".into()) }),
        }
    }
    found
}

/// One address of the relay.
struct Examined<'a> {
    relay: &'a Relay,
    url: &'a str,
    place: Place,
    now: DateTime<Utc>,
    found: &'a mut Vec<Finding>,
}

/// What became of asking to be let through.
enum Passage {
    Refused,
    Through,
    Unknown,
}

impl Examined<'_> {
    fn say(&mut self, what: &str, problem: Option<String>) {
        self.found.push(Finding { about: format!("{}: {what}", self.url), problem });
    }

    async fn all(mut self) {
        // A name of its own each time: the relay counts places by it.
        let ways = match self.relay.ways(&format!("doctor{}", self.now.timestamp_millis()), self.now, true) {
            Ok(ways) => ways,
            Err(fault) => return self.say("password", Some(format!("None could be made: {fault}."))),
        };
        let Some((mut line, at)) = self.reached(&ways).await else { return };
        let refused = other_password(&self.place, &ways.username).await;
        self.say("another password is refused", refused);
        self.own_place(&mut line, at).await;
        for address in DENIED {
            self.nothing_goes_to(&mut line, address, at).await;
        }
        self.by_ipv6(&ways).await;
    }

    /// A place there, and where it is.
    async fn reached(&mut self, ways: &Ways) -> Option<(Line, IpAddr)> {
        const IS_IT_THERE: &str = "Is it running, and does the firewall let this port through?";
        let mut line = match Line::open(&self.place, AddressFamily::IPV4, &ways.username, &ways.credential).await {
            Ok(line) => line,
            Err(why) => {
                self.say("reached", Some(format!("{why}. {IS_IT_THERE}")));
                return None;
            }
        };
        match line.answer().await {
            Some(TurnEvent::AllocationCreated(_, at)) => {
                self.say("reached, and a password of ours is accepted", None);
                return Some((line, at.ip()));
            }
            // Asked for another password by a relay that has another secret, the client's side falls silent.
            answer if answer.is_some() || line.heard => {
                let cure = "It answers and refuses. Compare static-auth-secret there with LEEWARD_RELAY_SECRET here, the two clocks, and its quotas.";
                self.say("a password of ours is accepted", Some(cure.into()));
            }
            _ => self.say("reached", Some(format!("Nothing answers there. {IS_IT_THERE}"))),
        }
        None
    }

    /// Both pages have a place there: the relay must let one through to the other, at an address that pages reach.
    async fn own_place(&mut self, line: &mut Line, at: IpAddr) {
        let hidden = !is_public(at) && self.relay.reach() != (Reach::Relay { private: true });
        let cure = "No page reaches that. Set external-ip there to the address that the internet knows it by.";
        self.say(&format!("its places are at {at}"), hidden.then(|| cure.into()));
        let problem = match passage(line, at).await {
            Passage::Through => None,
            _ => Some(format!("It does not: no call comes about. Set allowed-peer-ip={at} there.")),
        };
        self.say("it passes on from one of its places to another", problem);
    }

    async fn nothing_goes_to(&mut self, line: &mut Line, address: &str, own: IpAddr) {
        let Some(address) = address.parse::<IpAddr>().ok().filter(|address| *address != own) else { return };
        let problem = match passage(line, address).await {
            Passage::Refused => None,
            Passage::Through => Some(format!("It passes on to {address}. {TAKE}")),
            Passage::Unknown => Some(NOT_TRIED.into()),
        };
        self.say(&format!("nothing goes to {address}"), problem);
    }

    /// Where it gives places at IPv6 addresses too, these reach nothing either.
    async fn by_ipv6(&mut self, ways: &Ways) {
        let asked = async {
            let mut line = Line::open(&self.place, AddressFamily::IPV6, &ways.username, &ways.credential).await.ok()?;
            let answer = line.answer().await?;
            Some((line, answer))
        };
        let (mut line, at) = match asked.await {
            Some((line, TurnEvent::AllocationCreated(_, at))) => (line, at),
            Some((_, TurnEvent::AllocationCreateFailed(_))) => return self.say("it gives no place at IPv6", None),
            _ => return self.say("places at IPv6", Some(NOT_TRIED.into())),
        };
        for address in DENIED_6 {
            self.nothing_goes_to(&mut line, address, at.ip()).await;
        }
    }
}

async fn passage(line: &mut Line, address: IpAddr) -> Passage {
    if !line.ask_for(address) {
        return Passage::Unknown;
    }
    match line.answer().await {
        Some(TurnEvent::PermissionCreated(_, at)) if at == address => Passage::Through,
        Some(TurnEvent::PermissionCreateFailed(_, at)) if at == address => Passage::Refused,
        _ => Passage::Unknown,
    }
}

/// What is wrong when anybody's password is as good as ours, or when that could not be found out.
async fn other_password(place: &Place, username: &str) -> Option<String> {
    let unknown = || Some(NOT_TRIED.to_owned());
    let Ok(mut line) = Line::open(place, AddressFamily::IPV4, username, "none of ours").await else { return unknown() };
    match line.answer().await {
        Some(TurnEvent::AllocationCreated(..)) => Some("It lets in whoever comes. Set use-auth-secret, and take out no-auth.".into()),
        answer if answer.is_some() || line.heard => None,
        _ => unknown(),
    }
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
