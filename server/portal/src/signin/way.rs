//! Where somebody goes after signing in.

use crate::platform::{Member, Role};

/// `next` when it is a path of this portal. Browsers read `\` as `/` and drop tabs and line ends
/// (WHATWG URL, "basic URL parser"), so a path with any of them could lead elsewhere.
pub(super) fn local_path(next: &str) -> Option<&str> {
    let local = next.starts_with('/') && !next.starts_with("//") && !next.contains(|c: char| c == '\\' || c.is_control());
    local.then_some(next)
}

/// Where a signed-in member goes who asked for `next`.
pub(super) fn onward(next: Option<&str>, member: &Member) -> String {
    next.and_then(local_path).unwrap_or_else(|| Role::start(&member.roles).0).to_owned()
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Open redirects as OWASP's Unvalidated Redirects and Forwards Cheat Sheet warns of them; what browsers
    /// make of backslashes and tabs is the URL Standard's.
    #[test]
    fn nothing_leads_elsewhere() {
        for bad in
            ["", "https://evil.example", "//evil.example", "/\\evil.example", "\\\\evil.example", "/\t/evil.example", "/a\r\nb", "clients"]
        {
            assert_eq!(local_path(bad), None, "{bad:?}");
        }
        for good in ["/", "/clients/1?x=//y", "/signin/done"] {
            assert_eq!(local_path(good), Some(good));
        }
    }
}
