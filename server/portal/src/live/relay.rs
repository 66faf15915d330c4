//! The practice's relay, and the short-lived passwords for it. Each is for one seat, or for the desks of one session. The name says when it ends and whose it is, the password
//! is a MAC of the name under a secret that relay and portal share: what coturn's manual calls `use-auth-secret`.

use std::net::IpAddr;

use base64::Engine;
use base64::engine::general_purpose::STANDARD;
use chrono::{DateTime, TimeDelta, Utc};
use hmac::{Hmac, KeyInit, Mac};
use leeward_core::call::Reach;
use leeward_core::wire::Ways;
use secrecy::{ExposeSecret, SecretString};
use sha1::Sha1;

/// So long does a password hold (ASVS 5.0 asks for short ones; the reference has ten minutes). A call that is under way goes on after it.
const HOLDS: TimeDelta = TimeDelta::minutes(10);
/// What stands in the settings that come with it until somebody changes it.
const PLACEHOLDER: &str = "PUT-THE-SECRET-HERE";
/// A shorter secret can be guessed from one password that somebody saw.
const SHORTEST_SECRET: usize = 16;

/// See the head of this file.
pub struct Relay {
    urls: Vec<String>,
    secret: SecretString,
    private: bool,
}

impl Relay {
    /// From its addresses, with commas between them, such as `turns:relay.practice.example:5349?transport=tcp` (RFC 7065), and the secret that it shares.
    ///
    /// # Errors
    /// A sentence that says what is wrong with the settings; the secret is not repeated.
    pub fn new(urls: &str, secret: String) -> Result<Self, String> {
        let urls: Vec<String> = urls.split(',').map(|url| url.trim().to_owned()).filter(|url| !url.is_empty()).collect();
        let hosts = urls.iter().map(|url| host(url)).collect::<Option<Vec<_>>>().filter(|hosts| !hosts.is_empty());
        let hosts = hosts
            .ok_or("LEEWARD_RELAY_URL must be like turn:relay.practice.example:3478 or turns:relay.practice.example:5349?transport=tcp")?;
        if secret.trim() == PLACEHOLDER {
            return Err(
                "LEEWARD_RELAY_SECRET is the one that stands in deploy/coturn/turnserver.conf for everybody to read: put one of your own \
                        there and here, from `openssl rand -hex 32`"
                    .into(),
            );
        }
        if secret.trim().len() < SHORTEST_SECRET {
            return Err(format!("LEEWARD_RELAY_SECRET is shorter than {SHORTEST_SECRET} characters: take one from `openssl rand -hex 32`"));
        }
        let private = hosts.iter().any(|host| is_private(host));
        Ok(Self { urls, secret: SecretString::from(secret.trim().to_owned()), private })
    }

    /// How pages reach each other by it alone.
    #[must_use]
    pub fn reach(&self) -> Reach {
        Reach::Relay { private: self.private }
    }

    /// Its addresses.
    #[must_use]
    pub fn urls(&self) -> &[String] {
        &self.urls
    }

    /// Ways for the one that `whose` names, from `now` on. `whose`: nobody's name.
    ///
    /// # Errors
    /// When the secret is none that a MAC can be made with; [`Relay::new`] takes none of these.
    pub(crate) fn ways(&self, whose: &str, now: DateTime<Utc>, relay_only: bool) -> Result<Ways, hmac::digest::InvalidLength> {
        let username = format!("{}:{whose}", (now + HOLDS).timestamp());
        let mut mac = Hmac::<Sha1>::new_from_slice(self.secret.expose_secret().as_bytes())?;
        mac.update(username.as_bytes());
        let credential = STANDARD.encode(mac.finalize().into_bytes());
        Ok(Ways { relay_only, urls: self.urls.clone(), username, credential, holds_for: HOLDS.num_milliseconds() as f64 })
    }
}

/// The host of an address of a relay; `None`: it is none.
fn host(url: &str) -> Option<&str> {
    let rest = url.strip_prefix("turns:").or_else(|| url.strip_prefix("turn:"))?;
    let place = rest.split('?').next()?;
    let (host, port) = match place.rsplit_once(':').filter(|(host, _)| !host.ends_with(':') && (!host.contains(':') || host.ends_with(']')))
    {
        Some((host, port)) => (host, Some(port)),
        None => (place, None),
    };
    let is_port = port.is_none_or(|port| port.parse::<u16>().is_ok_and(|port| port > 0));
    let known = rest.split_once('?').is_none_or(|(_, query)| ["transport=udp", "transport=tcp"].contains(&query));
    let is_host = !host.is_empty() && host.chars().all(|c| c.is_ascii_alphanumeric() || ".-:[]".contains(c));
    (is_port && known && is_host).then_some(host)
}

fn is_private(host: &str) -> bool {
    let address = host.trim_start_matches('[').trim_end_matches(']').parse::<IpAddr>();
    host == "localhost" || address.is_ok_and(|address| !leeward_core::call::is_public(address))
}

#[cfg(test)]
mod tests {
    use super::*;

    const SECRET: &str = "north-sea-of-the-mind";

    // Made with OpenSSL, which is not ours: printf %s NAME | openssl dgst -sha1 -hmac SECRET -binary | base64
    #[test]
    fn a_password_is_what_another_program_makes_of_the_same_name() {
        let relay = Relay::new("turn:relay.practice.example", SECRET.into()).unwrap();
        let now = DateTime::from_timestamp(1_800_000_000, 0).unwrap();
        let ways = relay.ways("b1f0", now, true).unwrap();
        assert_eq!(ways.username, "1800000600:b1f0");
        assert_eq!(ways.credential, "NnL2cs5RiHEVF/Bfu8CsXQZXkJ4=");
        assert_eq!((ways.relay_only, ways.holds_for), (true, 600_000.0));
    }

    #[test]
    fn what_is_no_relay_or_no_secret_is_said() {
        for url in [
            "turn:relay.practice.example",
            "turns:relay.practice.example:5349?transport=tcp",
            "turn:203.0.113.9:3478, turn:[2001:db8::9]:3478",
            "turn:127.0.0.1:40001?transport=udp",
        ] {
            assert!(Relay::new(url, SECRET.into()).is_ok(), "{url}");
        }
        for url in [
            "",
            "stun:relay.practice.example",
            "https://relay.practice.example",
            "turn:",
            "turn:a b",
            "turn:relay:0",
            "turn:relay?transport=sctp",
        ] {
            assert!(Relay::new(url, SECRET.into()).err().unwrap_or_default().contains("LEEWARD_RELAY_URL"), "{url}");
        }
        let short = Relay::new("turn:relay.practice.example", "short".into()).err().unwrap_or_default();
        assert!(short.contains("LEEWARD_RELAY_SECRET") && !short.contains("\"short\""), "{short}");
    }

    #[test]
    fn a_relay_at_a_private_address_is_known_as_one() {
        for (url, private) in [
            ("turn:127.0.0.1:3478", true),
            ("turn:localhost", true),
            ("turn:[fd00::1]", true),
            ("turn:203.0.113.9", false),
            ("turn:relay.practice.example", false),
        ] {
            assert_eq!(Relay::new(url, SECRET.into()).unwrap().reach(), Reach::Relay { private }, "{url}");
        }
    }
}
