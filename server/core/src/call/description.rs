//! One description.

use super::{LONGEST_SDP, Reach, Unfit, candidate};

/// Pictures and voices of one description: a browser writes one of each, and keeps the place of what was stopped.
const MOST_MEDIA: usize = 4;

/// `sdp` as it may be passed on, line by line; what is not understood here is the browser's to understand, as RFC 8866, section 5, has it.
///
/// # Errors
/// [`Unfit`] when it is no description, or of something else than a picture and a voice.
pub fn description(sdp: &str, reach: Reach) -> Result<String, Unfit> {
    if sdp.len() > LONGEST_SDP {
        return Err(Unfit::Long);
    }
    if !sdp.starts_with("v=0\r\n") || !sdp.ends_with("\r\n") {
        return Err(Unfit::Form);
    }
    let (mut passed, mut media) = (String::with_capacity(sdp.len()), 0);
    for line in sdp.split_terminator("\r\n") {
        if let Some(kind) = line.strip_prefix("m=") {
            media += 1;
            if media > MOST_MEDIA || !["audio ", "video "].iter().any(|known| kind.starts_with(known)) {
                return Err(Unfit::Kind);
            }
        }
        if let Some(line) = line_passed_on(line, reach)? {
            passed.push_str(&line);
            passed.push_str("\r\n");
        }
    }
    Ok(passed)
}

/// A line as it may be passed on; `None`: not at all.
fn line_passed_on(line: &str, reach: Reach) -> Result<Option<String>, Unfit> {
    let mut chars = line.chars();
    let (kind, is) = (chars.next(), chars.next());
    if !kind.is_some_and(|kind| kind.is_ascii_lowercase()) || is != Some('=') || line.chars().any(char::is_control) {
        return Err(Unfit::Form);
    }
    if let Some(text) = line.strip_prefix("a=").filter(|text| text.starts_with("candidate:")) {
        // One that is not passed on, or not understood, is left out: others of the same description are passed on.
        return Ok(candidate(text, reach).ok().map(|text| format!("a={text}")));
    }
    // Where the default candidate is: an address of its own. Nobody needs it, for candidates come one by one (RFC 8829, section 5.2.1; RFC 8840).
    let names_an_address = line.starts_with("c=") || line.starts_with("a=rtcp:") || line.starts_with("o=");
    if names_an_address && reach != Reach::Direct {
        // A port alone (RFC 3605, section 2.1) is of the address that is left out.
        return if line.starts_with("a=rtcp:") { Ok(unnamed(line)) } else { unnamed(line).map(Some).ok_or(Unfit::Form) };
    }
    Ok(Some(line.to_owned()))
}

/// The line with no address in it: what stands after IN IP4 or IN IP6 is an address in each of them.
fn unnamed(line: &str) -> Option<String> {
    let (before, _) = line.split_once(" IN IP").or_else(|| line.split_once("=IN IP"))?;
    let port = before.strip_prefix("a=rtcp:").map(|_| "a=rtcp:9");
    let joint = if line.starts_with("c=") { "c=IN IP4 0.0.0.0".to_owned() } else { format!("{} IN IP4 0.0.0.0", port.unwrap_or(before)) };
    Some(joint)
}

#[cfg(test)]
mod tests {
    use super::*;

    const HIDDEN: Reach = Reach::Relay { private: false };

    /// Of the form of the examples of RFC 8829, section 7, shortened.
    fn offer() -> String {
        [
            "v=0",
            "o=- 4962303333179871722 1 IN IP4 198.51.100.7",
            "s=-",
            "t=0 0",
            "a=group:BUNDLE a1 v1",
            "m=audio 56500 UDP/TLS/RTP/SAVPF 96 0",
            "c=IN IP4 198.51.100.7",
            "a=mid:a1",
            "a=sendrecv",
            "a=rtcp:56501 IN IP4 198.51.100.7",
            "a=ice-ufrag:ETEn",
            "a=fingerprint:sha-256 19:E2:1C:3B",
            "a=candidate:1 1 udp 2113929471 198.51.100.7 56500 typ host",
            "a=candidate:2 1 udp 41885439 203.0.113.9 49203 typ relay raddr 198.51.100.7 rport 56500",
            "m=video 9 UDP/TLS/RTP/SAVPF 100",
            "c=IN IP6 2001:db8::7",
            "a=mid:v1",
        ]
        .map(|line| format!("{line}\r\n"))
        .concat()
    }

    #[test]
    fn directly_it_is_passed_on_as_it_is() {
        assert_eq!(description(&offer(), Reach::Direct).as_deref(), Ok(offer().as_str()));
    }

    #[test]
    fn by_the_relay_alone_no_address_is_left_but_the_relays() {
        let passed = description(&offer(), HIDDEN).unwrap();
        for gone in ["198.51.100.7", "2001:db8::7", "typ host"] {
            assert!(!passed.contains(gone), "{gone}: {passed}");
        }
        assert!(passed.contains("203.0.113.9 49203 typ relay raddr 0.0.0.0 rport 0\r\n"), "{passed}");
        assert_eq!(passed.matches("c=IN IP4 0.0.0.0\r\n").count(), 2, "{passed}");
        assert!(
            passed.contains("o=- 4962303333179871722 1 IN IP4 0.0.0.0\r\n") && passed.contains("a=rtcp:9 IN IP4 0.0.0.0\r\n"),
            "{passed}"
        );
        assert!(passed.contains("a=fingerprint:sha-256 19:E2:1C:3B\r\n") && passed.lines().count() == offer().lines().count() - 1);
    }

    #[test]
    fn a_line_that_is_not_understood_costs_no_call() {
        let sdp = "v=0\r\nm=audio 9 UDP/TLS/RTP/SAVPF 0\r\na=rtcp:9\r\na=candidate:1 1 udp\r\na=candidate:1 1 udp 1 home.example 9 typ host\r\na=mid:0\r\n";
        assert_eq!(description(sdp, HIDDEN).unwrap(), "v=0\r\nm=audio 9 UDP/TLS/RTP/SAVPF 0\r\na=mid:0\r\n");
    }

    #[test]
    fn what_is_none_or_asks_for_more_is_refused() {
        let long = format!("v=0\r\n{}", "a=x\r\n".repeat(LONGEST_SDP / 5));
        let many = format!("v=0\r\n{}", "m=audio 9 UDP/TLS/RTP/SAVPF 0\r\n".repeat(5));
        for (sdp, why) in [
            (long.as_str(), Unfit::Long),
            (many.as_str(), Unfit::Kind),
            ("v=0\r\nm=application 9 UDP/DTLS/SCTP webrtc-datachannel\r\n", Unfit::Kind),
            ("v=0\r\nm=text 9 RTP/AVP 98\r\n", Unfit::Kind),
            ("", Unfit::Form),
            ("v=1\r\n", Unfit::Form),
            ("v=0\ns=-\n", Unfit::Form),
            ("v=0\r\nnothing\r\n", Unfit::Form),
            ("v=0\r\na=x\u{0}\r\n", Unfit::Form),
            ("v=0\r\nc=anything\r\n", Unfit::Form),
        ] {
            assert_eq!(description(sdp, HIDDEN), Err(why), "{sdp:?}");
        }
    }
}
