//! A browser and its system in a few words, for lists of sign-ins and passkeys.

use axum::http::{HeaderMap, header};

/// What a User-Agent holds, and what people call it. Earlier ones win: most browsers also name the ones
/// they want to be taken for.
const BROWSERS: [(&str, &str); 9] = [
    ("Edg", "Edge"),
    ("OPR/", "Opera"),
    ("SamsungBrowser/", "Samsung Internet"),
    ("FxiOS/", "Firefox"),
    ("Firefox/", "Firefox"),
    ("CriOS/", "Chrome"),
    ("Chromium/", "Chromium"),
    ("Chrome/", "Chrome"),
    ("Safari/", "Safari"),
];

const SYSTEMS: [(&str, &str); 7] = [
    ("iPhone", "iPhone"),
    ("iPad", "iPad"),
    ("Android", "Android"),
    ("CrOS", "ChromeOS"),
    ("Windows", "Windows"),
    ("Mac OS X", "macOS"),
    ("Linux", "Linux"),
];

/// Such as "Firefox on Windows"; never anything of the header itself, which is the caller's own word.
pub(super) fn device(headers: &HeaderMap) -> String {
    let agent = headers.get(header::USER_AGENT).and_then(|value| value.to_str().ok()).unwrap_or_default();
    let named = |names: &[(&str, &'static str)]| names.iter().find(|(mark, _)| agent.contains(mark)).map(|(_, name)| *name);
    match (named(&BROWSERS), named(&SYSTEMS)) {
        (Some(browser), Some(system)) => format!("{browser} on {system}"),
        (Some(one), None) | (None, Some(one)) => one.to_owned(),
        (None, None) => "Unknown browser".to_owned(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The forms of the header as MDN's "User-Agent" page gives them (from memory, versions shortened).
    #[test]
    fn browsers_are_called_what_people_call_them() {
        for (agent, words) in [
            ("Mozilla/5.0 (Windows NT 10.0; Win64; x64; rv:128.0) Gecko/20100101 Firefox/128.0", "Firefox on Windows"),
            ("Mozilla/5.0 (X11; Linux x86_64) AppleWebKit/537.36 (KHTML, like Gecko) Chrome/126.0.0.0 Safari/537.36", "Chrome on Linux"),
            (
                "Mozilla/5.0 (Windows NT 10.0; Win64; x64) AppleWebKit/537.36 (KHTML, like Gecko) Chrome/126.0.0.0 Safari/537.36 Edg/126.0.0.0",
                "Edge on Windows",
            ),
            (
                "Mozilla/5.0 (Macintosh; Intel Mac OS X 10_15_7) AppleWebKit/605.1.15 (KHTML, like Gecko) Version/17.5 Safari/605.1.15",
                "Safari on macOS",
            ),
            (
                "Mozilla/5.0 (iPhone; CPU iPhone OS 17_5 like Mac OS X) AppleWebKit/605.1.15 (KHTML, like Gecko) Version/17.5 Mobile/15E148 Safari/604.1",
                "Safari on iPhone",
            ),
            (
                "Mozilla/5.0 (Linux; Android 14) AppleWebKit/537.36 (KHTML, like Gecko) Chrome/126.0.0.0 Mobile Safari/537.36",
                "Chrome on Android",
            ),
            ("curl/8.0", "Unknown browser"),
            ("<script>Firefox/1</script>", "Firefox"),
        ] {
            let mut headers = HeaderMap::new();
            headers.insert(header::USER_AGENT, agent.parse().unwrap());
            assert_eq!(device(&headers), words);
        }
    }
}
