//! Scripts and styles, embedded, each under an address that holds its content's hash.

use std::collections::HashMap;
use std::sync::LazyLock;

use axum::http::header::{CACHE_CONTROL, CONTENT_TYPE};
use axum::response::{IntoResponse, Response};
use rust_embed::RustEmbed;

use crate::platform::forms::InPath;
use crate::store::error::Error;

#[derive(RustEmbed)]
#[folder = "../../web/dist"]
#[allow_missing = true]
struct Built;

static HASHES: LazyLock<HashMap<String, String>> = LazyLock::new(|| {
    Built::iter()
        .filter_map(|name| {
            let hash = Built::get(&name)?.metadata.sha256_hash();
            let short: String = hex::encode(&hash[..8]);
            Some((name.into_owned(), short))
        })
        .collect()
});

/// What templates ask for the address of a script or style.
#[derive(Clone, Copy, Debug, Default)]
pub struct Assets;

impl Assets {
    /// The address of `name`, such as `stage.js`.
    #[must_use]
    pub fn url(&self, name: &str) -> String {
        HASHES.get(name).map_or_else(|| format!("/assets/missing/{name}"), |hash| format!("/assets/{hash}/{name}"))
    }
}

/// The names that a complete build has; what of them is missing.
#[must_use]
pub fn missing() -> Vec<&'static str> {
    const ALL: [&str; 19] = [
        "records.css",
        "desk.css",
        "stage.css",
        "stage_call.css",
        "forms.css",
        "desk.js",
        "desk_call.js",
        "closing.js",
        "stage.js",
        "stage_call.js",
        "join.js",
        "errand.js",
        "forms.js",
        "passkey.js",
        "records.js",
        "mark.svg",
        "page.svg",
        "desk.webmanifest",
        "stage.webmanifest",
    ];
    ALL.into_iter().filter(|name| !HASHES.contains_key(*name)).collect()
}

/// `GET /assets/{hash}/{name}`: kept by browsers for good, since another content has another address.
///
/// # Errors
/// [`Error::NotFound`] for a name or hash that is not in this build.
pub(crate) async fn show(InPath((hash, name)): InPath<(String, String)>) -> Result<Response, Error> {
    if HASHES.get(&name) != Some(&hash) {
        return Err(Error::NotFound);
    }
    let file = Built::get(&name).ok_or(Error::NotFound)?;
    let kind = match name.rsplit('.').next() {
        Some("js") => "text/javascript; charset=utf-8",
        Some("css") => "text/css; charset=utf-8",
        Some("svg") => "image/svg+xml",
        Some("webmanifest") => "application/manifest+json",
        _ => "application/octet-stream",
    };
    let headers = [(CONTENT_TYPE, kind), (CACHE_CONTROL, "public, max-age=31536000, immutable")];
    Ok((headers, file.data.into_owned()).into_response())
}
