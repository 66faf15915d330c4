//! The demo's own sign-in, for a newcomer who tries the portal on their own computer without a passkey.
//!
//! These routes exist only under `serve --demo`; they answer only this computer's own browser, and the
//! database knows of no demo member unless the demo seeded it.

use std::net::SocketAddr;

use askama::Template;
use axum::Form;
use axum::extract::{ConnectInfo, Query, State};
use axum::http::Uri;
use axum::http::header::{HOST, HeaderMap, SET_COOKIE};
use axum::response::{IntoResponse, Redirect, Response};

use super::ceremony::refused;
use super::entry::Next;
use super::open::open;
use super::{queries, way};
use crate::platform::App;
use crate::platform::Role;
use crate::platform::forms::InPath;
use crate::platform::page::{Frame, page};
use crate::store::error::Error;
use crate::store::subject::Subject;

#[derive(Template)]
#[template(path = "signin/demo.html")]
struct DemoPage {
    frame: Frame,
    role: &'static str,
    next: String,
}

/// `GET /demo/{role}`: one button; does nothing.
pub(super) async fn show(frame: Frame, InPath(role): InPath<String>, Query(next): Query<Next>) -> Result<impl IntoResponse, Error> {
    let role = Role::parse(&role).ok_or(Error::NotFound)?.name();
    page(&DemoPage { frame, role, next: next.path().to_owned() })
}

/// `POST /demo/{role}`: signs in as the invented member of that role. An earlier sign-in of this browser
/// stays open, so that a desk goes on while its owner also looks at the lead's pages.
pub(super) async fn enter(
    State(app): State<App>,
    ConnectInfo(peer): ConnectInfo<SocketAddr>,
    uri: Uri,
    headers: HeaderMap,
    InPath(role): InPath<String>,
    Form(next): Form<Next>,
) -> Result<Response, Error> {
    let role = Role::parse(&role).ok_or(Error::NotFound)?;
    if !(peer.ip().is_loopback() && is_direct(&uri, &headers)) {
        return Ok(refused("Not from here", "The demo's sign-in works only in a browser on the computer that serves the demo."));
    }
    let mut tx = app.database.look_to_sign_in(&Subject::Visitor).await?;
    let found = queries::demo_member(&mut tx, role).await?;
    tx.commit().await?;
    let opened = match found {
        Some(member) => open(&app, member, &headers).await?,
        None => None,
    };
    let Some(opened) = opened else {
        return Ok(refused("No demo here", "This database holds no invented practice. Run the demo on a database of its own."));
    };
    let onward = next.next.as_deref().and_then(way::local_path).unwrap_or_else(|| Role::start(&[role]).0);
    Ok(([(SET_COOKIE, opened.cookie)], Redirect::to(onward)).into_response())
}

/// Whether a request names this computer and came through no proxy.
fn is_direct(uri: &Uri, headers: &HeaderMap) -> bool {
    let mut hosts = headers.get_all(HOST).iter().map(|host| host.to_str().unwrap_or_default());
    let named = matches!((hosts.next(), hosts.next()), (Some(host), None) if is_local(host));
    // A request line may name a host as well; RFC 9112, 3.2.2.
    named
        && uri.authority().is_none_or(|authority| is_local(authority.as_str()))
        && !headers.keys().any(|name| is_forwarders(name.as_str()))
}

fn is_local(host: &str) -> bool {
    host == "localhost" || host.strip_prefix("localhost:").is_some_and(|port| port.parse::<u16>().is_ok())
}

/// Whether a header is one that only something in between adds: RFC 7239, RFC 9110 7.6.3, and what is common practice.
fn is_forwarders(name: &str) -> bool {
    matches!(name, "via" | "max-forwards") || ["forwarded", "client-ip", "real-ip", "connecting-ip"].iter().any(|part| name.contains(part))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_this_computers_own_browser_is_direct() {
        let headers = |pairs: &[(&'static str, &'static str)]| {
            let mut map = HeaderMap::new();
            for (name, value) in pairs {
                map.append(*name, value.parse().unwrap());
            }
            map
        };
        for good in ["localhost", "localhost:8080"] {
            assert!(is_direct(&Uri::from_static("/demo/lead"), &headers(&[("host", good)])));
            assert!(is_direct(&format!("http://{good}/demo/lead").parse().unwrap(), &headers(&[("host", good)])));
        }
        for bad in ["", "127.0.0.1:8080", "localhost.evil.example", "localhost:x", "portal.example.org"] {
            assert!(!is_direct(&Uri::from_static("/demo/lead"), &headers(&[("host", bad)])), "{bad}");
        }
        let elsewhere = Uri::from_static("http://portal.example.org/demo/lead");
        assert!(!is_direct(&elsewhere, &headers(&[("host", "localhost:8080")])), "the request line names another");
        assert!(!is_direct(&Uri::from_static("/"), &headers(&[("host", "localhost"), ("host", "localhost")])), "two hosts");
        for name in [
            "forwarded",
            "via",
            "x-forwarded-for",
            "x-forwarded-host",
            "x-forwarded-proto",
            "x-real-ip",
            "x-original-forwarded-for",
            "true-client-ip",
            "x-cluster-client-ip",
            "cf-connecting-ip",
        ] {
            assert!(!is_direct(&Uri::from_static("/demo/lead"), &headers(&[("host", "localhost:8080"), (name, "x")])), "{name}");
        }
    }
}
