//! The address at which browsers reach the portal.

/// Where the portal is reached, taken apart once.
#[derive(Clone, Debug)]
pub struct Origin {
    /// As browsers send it: scheme, host, and port unless it is the scheme's own.
    pub text: String,
    /// The host alone: what passkeys are bound to.
    pub host: String,
    /// The port, for the names of cookies (they are shared between ports of one host).
    pub port: u16,
}

impl Origin {
    /// Reads an origin: https anywhere, or http on localhost (where browsers call it secure).
    ///
    /// # Errors
    /// A sentence that says what is wrong with it.
    pub fn parse(text: &str) -> Result<Self, String> {
        let wrong = || format!("LEEWARD_ORIGIN: \"{text}\" must be like https://portal.example.org (http only for localhost, no path)");
        let url: axum::http::Uri = text.trim_end_matches('/').parse().map_err(|_| wrong())?;
        let (scheme, host) = (url.scheme_str().ok_or_else(wrong)?, url.host().ok_or_else(wrong)?);
        let natural = if scheme == "https" { 443 } else { 80 };
        if !(url.path().is_empty() || url.path() == "/") || !(scheme == "https" || (scheme == "http" && host == "localhost")) {
            return Err(wrong());
        }
        let port = url.port_u16().unwrap_or(natural);
        let text = if port == natural { format!("{scheme}://{host}") } else { format!("{scheme}://{host}:{port}") };
        Ok(Self { text, host: host.to_owned(), port })
    }

    /// The name of the cookie that holds a member's sign-in.
    #[must_use]
    pub fn member_cookie(&self) -> String {
        format!("__Host-leeward-member-{}", self.port)
    }

    /// The name of the cookie that holds a client's seat.
    #[must_use]
    pub fn seat_cookie(&self) -> String {
        format!("__Host-leeward-seat-{}", self.port)
    }

    /// The name of the cookie that holds a client's errand.
    #[must_use]
    pub fn errand_cookie(&self) -> String {
        format!("__Host-leeward-errand-{}", self.port)
    }
}
