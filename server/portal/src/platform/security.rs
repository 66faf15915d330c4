//! What every response and every request is held to: headers, nonces, origins, rates.

use std::net::{IpAddr, Ipv6Addr, SocketAddr};
use std::num::NonZeroU32;

use axum::extract::{ConnectInfo, Request, State};
use axum::http::header::{self, HeaderMap, HeaderValue};
use axum::http::{HeaderName, Method};
use axum::middleware::Next;
use axum::response::{IntoResponse, Response};
use governor::{DefaultKeyedRateLimiter, Quota, RateLimiter};

use crate::base::ids::new_id;
use crate::platform::App;
use crate::platform::page::FormKey;
use crate::store::error::Error;

/// The nonce that this response's scripts carry.
#[derive(Clone, Debug)]
pub struct Nonce(pub String);

/// The caller's address as far as it is to be believed: IPv6 by its /64, since one household has that many.
#[derive(Clone, Copy, Debug)]
pub struct Caller(pub IpAddr);

/// Adds a nonce to the request and the security headers to the response.
pub async fn headers(State(app): State<App>, mut request: Request, next: Next) -> Response {
    let mut bytes = [0; 16];
    app.world.fill(&mut bytes);
    let nonce = hex::encode(bytes);
    request.extensions_mut().insert(Nonce(nonce.clone()));
    request.extensions_mut().insert(FormKey(new_id(&app.world)));
    let mut response = next.run(request).await;
    add_headers(response.headers_mut(), &nonce);
    response
}

fn add_headers(headers: &mut HeaderMap, nonce: &str) {
    let policy = format!(
        "default-src 'none'; script-src 'nonce-{nonce}' 'strict-dynamic'; style-src 'self'; connect-src 'self'; img-src 'self' data:; \
         media-src 'self' blob:; manifest-src 'self'; worker-src 'self' blob:; form-action 'self'; base-uri 'none'; frame-ancestors 'none'; \
         require-trusted-types-for 'script'; trusted-types leeward-worker"
    );
    if let Ok(policy) = HeaderValue::from_str(&policy) {
        headers.insert(header::CONTENT_SECURITY_POLICY, policy);
    }
    // Client pages set `no-referrer` themselves; the rest needs an Origin on its form posts.
    headers.entry(header::REFERRER_POLICY).or_insert(HeaderValue::from_static("same-origin"));
    headers.entry(header::CACHE_CONTROL).or_insert(HeaderValue::from_static("no-store"));
    headers.entry(HeaderName::from_static("permissions-policy")).or_insert(HeaderValue::from_static(PERMISSIONS));
    for (name, value) in FIXED {
        headers.insert(HeaderName::from_static(name), HeaderValue::from_static(value));
    }
}

const FIXED: [(&str, &str); 6] = [
    ("x-content-type-options", "nosniff"),
    ("cross-origin-opener-policy", "same-origin"),
    ("cross-origin-resource-policy", "same-origin"),
    ("cross-origin-embedder-policy", "require-corp"),
    ("strict-transport-security", "max-age=63072000; includeSubDomains"),
    ("x-robots-tag", "noindex, nofollow"),
];

/// What a page may ask the browser for.
const PERMISSIONS: &str = "autoplay=(self), fullscreen=(self), screen-wake-lock=(self), publickey-credentials-get=(self), \
    publickey-credentials-create=(self), camera=(), microphone=(), geolocation=(), payment=(), usb=(), browsing-topics=()";

/// The same, and picture and voice: for the two pages of a session alone, which set it themselves.
pub const PERMISSIONS_OF_A_CALL: (HeaderName, HeaderValue) = (
    HeaderName::from_static("permissions-policy"),
    HeaderValue::from_static(
        "autoplay=(self), fullscreen=(self), screen-wake-lock=(self), speaker-selection=(self), camera=(self), microphone=(self), \
         publickey-credentials-get=(), publickey-credentials-create=(), geolocation=(), payment=(), usb=(), browsing-topics=()",
    ),
);

/// Refuses what a page of another origin sent. tower-http's layer lets socket upgrades and requests
/// without any sign of their origin through; both are refused here.
pub async fn same_origin(State(app): State<App>, request: Request, next: Next) -> Response {
    let safe = matches!(*request.method(), Method::GET | Method::HEAD);
    if safe && !request.headers().contains_key(header::UPGRADE) {
        return next.run(request).await;
    }
    if is_own(&app, request.headers()) { next.run(request).await } else { Error::ForeignOrigin.into_response() }
}

fn is_own(app: &App, headers: &HeaderMap) -> bool {
    // What is said twice is not said by a browser: which of the two would be believed depends on who reads.
    let (Ok(origin), Ok(site)) = (only(headers, header::ORIGIN), only(headers, HeaderName::from_static("sec-fetch-site"))) else {
        return false;
    };
    match (origin, site) {
        (Some(origin), None | Some(b"same-origin")) if origin == app.origin.text.as_bytes() => true,
        // Under `no-referrer` a form's Origin is "null"; the browser's own word on the site decides.
        (None | Some(b"null"), Some(b"same-origin")) => !headers.contains_key(header::UPGRADE),
        _ => false,
    }
}

/// What a header says, if it is there; an error when it is there twice.
fn only(headers: &HeaderMap, name: HeaderName) -> Result<Option<&[u8]>, ()> {
    let mut said = headers.get_all(name).iter().map(HeaderValue::as_bytes);
    match (said.next(), said.next()) {
        (first, None) => Ok(first),
        (_, Some(_)) => Err(()),
    }
}

/// Finds out who calls, for the limits on tries.
pub async fn caller(State(app): State<App>, mut request: Request, next: Next) -> Response {
    let peer = request.extensions().get::<ConnectInfo<SocketAddr>>().map(|info| info.0.ip());
    let forwarded = forwarded_for(request.headers(), app.proxies);
    let address = forwarded.or(peer).unwrap_or(IpAddr::V6(Ipv6Addr::UNSPECIFIED));
    request.extensions_mut().insert(Caller(household(address)));
    next.run(request).await
}

/// The address that the outermost of our own proxies saw. What stands to its left is the caller's own word.
fn forwarded_for(headers: &HeaderMap, proxies: usize) -> Option<IpAddr> {
    let hops: Vec<&str> =
        headers.get_all("x-forwarded-for").iter().filter_map(|value| value.to_str().ok()).flat_map(|value| value.split(',')).collect();
    let at = hops.len().checked_sub(proxies).filter(|_| proxies > 0)?;
    hops.get(at)?.trim().parse().ok()
}

fn household(address: IpAddr) -> IpAddr {
    match address.to_canonical() {
        IpAddr::V4(v4) => IpAddr::V4(v4),
        IpAddr::V6(v6) => {
            let s = v6.segments();
            IpAddr::V6(Ipv6Addr::new(s[0], s[1], s[2], s[3], 0, 0, 0, 0))
        }
    }
}

/// Limits on tries, by caller: they slow down, they never lock anybody out.
pub struct Limits {
    tries: DefaultKeyedRateLimiter<IpAddr>,
}

impl Default for Limits {
    fn default() -> Self {
        // Ten at once, then one every three seconds: a person who mistypes is not held up.
        let every = std::time::Duration::from_secs(3);
        let quota = Quota::with_period(every).unwrap_or(Quota::per_second(NonZeroU32::MIN)).allow_burst(NonZeroU32::MIN.saturating_add(9));
        Self { tries: RateLimiter::keyed(quota) }
    }
}

impl Limits {
    /// Counts a try at a code, a link or a passkey.
    ///
    /// # Errors
    /// [`Error::SlowDown`] when there were too many.
    pub fn count(&self, caller: Caller) -> Result<(), Error> {
        // What nobody asked about for a while is forgotten, so the table does not grow.
        if self.tries.len() > 10_000 {
            self.tries.retain_recent();
        }
        self.tries.check_key(&caller.0).map_err(|_| Error::SlowDown)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_what_our_own_proxies_added_is_believed() {
        let mut headers = HeaderMap::new();
        headers.insert("x-forwarded-for", HeaderValue::from_static("203.0.113.9, 198.51.100.7"));
        assert_eq!(forwarded_for(&headers, 0), None);
        assert_eq!(forwarded_for(&headers, 1), "198.51.100.7".parse().ok());
        assert_eq!(forwarded_for(&headers, 2), "203.0.113.9".parse().ok());
        assert_eq!(forwarded_for(&headers, 3), None);
    }

    #[test]
    fn a_header_that_is_there_twice_says_nothing() {
        let mut headers = HeaderMap::new();
        assert_eq!(only(&headers, header::ORIGIN), Ok(None));
        headers.append(header::ORIGIN, HeaderValue::from_static("https://portal.example"));
        assert_eq!(only(&headers, header::ORIGIN), Ok(Some(&b"https://portal.example"[..])));
        headers.append(header::ORIGIN, HeaderValue::from_static("https://portal.example"));
        assert_eq!(only(&headers, header::ORIGIN), Err(()));
    }

    #[test]
    fn a_household_has_one_ipv6_prefix() {
        let (a, b): (IpAddr, IpAddr) = ("2001:db8:1:2::3".parse().unwrap(), "2001:db8:1:2:ffff::9".parse().unwrap());
        assert_eq!(household(a), household(b));
    }
}
