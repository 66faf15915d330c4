//! One candidate.

use std::net::IpAddr;

use super::{LONGEST_CANDIDATE, Reach, Unfit};

/// `text` as it may be passed on: what stands after `a=` in a description. Empty: there are no more (RFC 8838, section 13).
///
/// ```
/// use leeward_core::call::{Reach, candidate};
///
/// let relayed = "candidate:3 1 udp 41885439 203.0.113.9 49203 typ relay raddr 198.51.100.7 rport 50102 generation 0";
/// let passed = candidate(relayed, Reach::Relay { private: false });
/// assert_eq!(passed.unwrap(), "candidate:3 1 udp 41885439 203.0.113.9 49203 typ relay raddr 0.0.0.0 rport 0 generation 0");
/// ```
///
/// # Errors
/// [`Unfit`] when it has not the form of RFC 8839, section 5.1, or is of an address that is not passed on.
pub fn candidate(text: &str, reach: Reach) -> Result<String, Unfit> {
    if text.is_empty() {
        return Ok(String::new());
    }
    if text.len() > LONGEST_CANDIDATE {
        return Err(Unfit::Long);
    }
    let parts = Parts::read(text).ok_or(Unfit::Form)?;
    match reach {
        Reach::Direct => Ok(parts.text(parts.related)),
        // A relayed candidate says from where the relay was asked: the very address that is to stay unknown.
        Reach::Relay { private } if parts.kind == "relay" && parts.is_passed_on(private) => Ok(parts.text(Some(("0.0.0.0", "0")))),
        Reach::Relay { .. } => Err(Unfit::Address),
    }
}

/// A candidate taken apart.
struct Parts<'a> {
    /// Foundation, component, transport, priority.
    head: [&'a str; 4],
    address: &'a str,
    port: &'a str,
    kind: &'a str,
    related: Option<(&'a str, &'a str)>,
    /// Names and values.
    rest: Vec<(&'a str, &'a str)>,
}

impl<'a> Parts<'a> {
    fn read(text: &'a str) -> Option<Self> {
        let mut words = text.strip_prefix("candidate:")?.split(' ');
        let mut next = || words.next().filter(|word| !word.is_empty());
        let head = [next()?, next()?, next()?, next()?];
        let (address, port) = (next()?, next()?);
        let kind = next().filter(|word| *word == "typ").and_then(|_| next())?;
        let rest: Vec<&str> = words.collect();
        let mut pairs: Vec<(&str, &str)> = vec![];
        for pair in rest.chunks(2) {
            pairs.push((pair.first().copied()?, pair.get(1).copied()?));
        }
        let related = match pairs.as_slice() {
            [("raddr", address), ("rport", port), ..] => Some((*address, *port)),
            _ => None,
        };
        let rest = if related.is_some() { pairs.split_off(2) } else { pairs };
        let parts = Self { head, address, port, kind, related, rest };
        parts.is_well_formed().then_some(parts)
    }

    fn is_well_formed(&self) -> bool {
        let [foundation, component, transport, priority] = self.head;
        let ports = [Some(self.port), self.related.map(|(_, port)| port)];
        let addresses = [Some(self.address), self.related.map(|(address, _)| address)];
        (1..=32).contains(&foundation.len())
            && foundation.chars().all(|c| c.is_ascii_alphanumeric() || "+/".contains(c))
            && component.parse::<u16>().is_ok_and(|component| (1..=256).contains(&component))
            && ["udp", "tcp"].contains(&transport.to_ascii_lowercase().as_str())
            && priority.parse::<u32>().is_ok_and(|priority| priority > 0)
            && ports.into_iter().flatten().all(|port| port.parse::<u16>().is_ok())
            && addresses.into_iter().flatten().all(is_address)
            && ["host", "srflx", "prflx", "relay"].contains(&self.kind)
            && self.rest.iter().all(|(name, value)| is_token(name) && is_token(value) && !["raddr", "rport", "typ"].contains(name))
    }

    /// Whether the address may be that of a relay: one that others can reach, or, where the relay stands at a private one, any literal.
    fn is_passed_on(&self, private: bool) -> bool {
        self.address.parse::<IpAddr>().is_ok_and(|address| !address.is_unspecified() && (private || is_public(address)))
    }

    fn text(&self, related: Option<(&str, &str)>) -> String {
        let [foundation, component, transport, priority] = self.head;
        let mut text =
            format!("candidate:{foundation} {component} {transport} {priority} {} {} typ {}", self.address, self.port, self.kind);
        if let Some((address, port)) = related {
            text.push_str(&format!(" raddr {address} rport {port}"));
        }
        for (name, value) in &self.rest {
            text.push_str(&format!(" {name} {value}"));
        }
        text
    }
}

/// An address literal, or the name that a browser gives in place of its own (RFC 8839 allows names; multicast DNS, RFC 6762, ends them in `.local`).
fn is_address(text: &str) -> bool {
    let is_name = text.len() <= 253 && text.ends_with(".local") && text.chars().all(|c| c.is_ascii_alphanumeric() || "-.".contains(c));
    text.parse::<IpAddr>().is_ok() || is_name
}

/// Extensions are tokens here, though the standard allows more: no browser writes more.
fn is_token(text: &str) -> bool {
    !text.is_empty() && text.chars().all(|c| c.is_ascii_graphic())
}

/// Whether others can reach it: not of the ranges that the registries of special addresses keep for other purposes (RFC 6890; RFC 6598; RFC 4193; RFC 4291).
#[must_use]
pub fn is_public(address: IpAddr) -> bool {
    match address.to_canonical() {
        IpAddr::V4(address) => {
            let [first, second, third, _] = address.octets();
            !(address.is_private()
                || address.is_loopback()
                || address.is_link_local()
                || address.is_broadcast()
                || address.is_multicast()
                || first == 0
                || first >= 240
                || (first == 100 && (64..128).contains(&second))
                || (first == 192 && second == 0 && third == 0)
                || (first == 198 && (18..20).contains(&second)))
        }
        IpAddr::V6(address) => {
            let first = address.segments()[0];
            !(address.is_loopback() || address.is_multicast() || first & 0xfe00 == 0xfc00 || first & 0xffc0 == 0xfe80)
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const HIDDEN: Reach = Reach::Relay { private: false };

    // The examples of RFC 8839, section 5.1.
    const HOST: &str = "candidate:1 1 UDP 2130706431 203.0.113.141 8998 typ host";
    const SERVER: &str = "candidate:2 1 UDP 1694498815 192.0.2.3 45664 typ srflx raddr 203.0.113.141 rport 8998";

    #[test]
    fn directly_what_the_standard_writes_is_passed_on_as_it_is() {
        for text in [HOST, SERVER] {
            assert_eq!(candidate(text, Reach::Direct).as_deref(), Ok(text));
        }
        let named = "candidate:1 1 udp 2113937151 3f6c1c2e-0000-4000-8000-000000000001.local 51210 typ host generation 0 ufrag aB3/ network-cost 999";
        assert_eq!(candidate(named, Reach::Direct).as_deref(), Ok(named));
        assert_eq!(candidate("", Reach::Direct).as_deref(), Ok(""));
    }

    #[test]
    fn by_the_relay_alone_nothing_else_is_passed_on() {
        for text in [HOST, SERVER, "candidate:1 1 udp 2113937151 aa.local 51210 typ host", "candidate:1 1 udp 1 203.0.113.9 3478 typ prflx"]
        {
            assert_eq!(candidate(text, HIDDEN), Err(Unfit::Address), "{text}");
        }
        for address in [
            "10.1.2.3",
            "172.31.0.1",
            "192.168.1.7",
            "127.0.0.1",
            "169.254.169.254",
            "100.64.0.1",
            "0.0.0.0",
            "::1",
            "fd00::1",
            "fe80::1",
            "::ffff:10.0.0.1",
            "aa.local",
        ] {
            let text = format!("candidate:3 1 udp 41885439 {address} 49203 typ relay raddr 0.0.0.0 rport 0");
            assert_eq!(candidate(&text, HIDDEN), Err(Unfit::Address), "{address}");
        }
        let there = "candidate:3 1 udp 41885439 127.0.0.1 49203 typ relay raddr 10.0.0.7 rport 50000";
        let passed = candidate(there, Reach::Relay { private: true });
        assert_eq!(passed.as_deref(), Ok("candidate:3 1 udp 41885439 127.0.0.1 49203 typ relay raddr 0.0.0.0 rport 0"));
    }

    #[test]
    fn what_no_browser_writes_is_refused() {
        for text in [
            "candidate:",
            "candidate:1 1 UDP 2130706431 203.0.113.141 8998",
            "candidate:1 0 UDP 2130706431 203.0.113.141 8998 typ host",
            "candidate:1 1 SCTP 2130706431 203.0.113.141 8998 typ host",
            "candidate:1 1 UDP 2130706431 example.org 8998 typ host",
            "candidate:1 1 UDP 2130706431 203.0.113.141 99999 typ host",
            "candidate:1 1 UDP 2130706431 203.0.113.141 8998 typ home",
            "candidate:1 1 UDP 2130706431 203.0.113.141 8998 typ host raddr",
            "candidate:1 1 UDP 2130706431 203.0.113.141 8998 typ host generation 0 raddr 10.0.0.1 rport 9",
            "candidate:1 1 UDP 2130706431 203.0.113.141 8998 typ host x y\r\na=evil",
            "a=candidate:1 1 UDP 2130706431 203.0.113.141 8998 typ host",
        ] {
            assert_eq!(candidate(text, Reach::Direct), Err(Unfit::Form), "{text}");
        }
        assert_eq!(candidate(&"candidate:1 ".repeat(60), Reach::Direct), Err(Unfit::Long));
    }
}
