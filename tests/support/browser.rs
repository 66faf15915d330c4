//! A small browser: keeps cookies, sends what a page of the portal would send, follows nothing.

use std::collections::BTreeMap;
use std::sync::Arc;

use leeward::base::clock::{Machine, World};
use leeward::base::ids::{Token, new_id};
use leeward::store::once;
use leeward::store::subject::Subject;
use uuid::Uuid;

/// One person's browser.
#[derive(Clone)]
pub struct Browser {
    origin: String,
    http: reqwest::Client,
    /// Cookies by name.
    pub cookies: BTreeMap<String, String>,
    /// The member signed in, if one is.
    pub member: Uuid,
    token: Option<Token>,
}

/// What came back.
#[derive(Debug)]
pub struct Answer {
    /// The status code.
    pub status: u16,
    /// Where a redirect leads, or an empty text.
    pub location: String,
    /// The body.
    pub body: String,
    /// All headers, names in lower case.
    pub headers: Vec<(String, String)>,
}

impl Answer {
    /// The page that a redirect leads to: its path alone.
    #[must_use]
    pub fn place(&self) -> &str {
        self.location.split(['?', '#']).next().unwrap_or_default()
    }

    /// The body as JSON.
    #[must_use]
    pub fn json(&self) -> serde_json::Value {
        serde_json::from_str(&self.body).expect("the answer is JSON")
    }
}

impl Browser {
    /// Nobody yet, at the portal of this origin.
    #[must_use]
    pub fn new(origin: &str) -> Self {
        let http = reqwest::Client::builder().redirect(reqwest::redirect::Policy::none()).build().expect("a client");
        Self { origin: origin.to_owned(), http, cookies: BTreeMap::new(), member: Uuid::nil(), token: None }
    }

    pub(crate) fn signed_in(mut self, member: Uuid, cookie: &str, token: &Token) -> Self {
        self.member = member;
        self.token = Some(token.clone());
        self.cookies.insert(cookie.to_owned(), token.reveal());
        self
    }

    /// To call the portal's functions as this member.
    #[must_use]
    pub fn subject(&self) -> Subject {
        self.token.clone().map_or(Subject::Visitor, Subject::Member)
    }

    /// The `Cookie` header, for sockets.
    #[must_use]
    pub fn cookie_header(&self) -> String {
        self.cookies.iter().map(|(name, value)| format!("{name}={value}")).collect::<Vec<_>>().join("; ")
    }

    /// Opens a page.
    pub async fn get(&mut self, path: &str) -> Answer {
        self.send(self.http.get(self.url(path)).header("accept", "text/html")).await
    }

    /// Fetches JSON.
    pub async fn get_json(&mut self, path: &str) -> Answer {
        self.send(self.http.get(self.url(path)).header("accept", "application/json")).await
    }

    /// Sends a form as a page of the portal would: with a key of its own, unless `fields` has one.
    pub async fn post_form(&mut self, path: &str, fields: &[(&str, &str)]) -> Answer {
        let once = fresh_key();
        let key = (!fields.iter().any(|(name, _)| *name == once::FIELD)).then_some((once::FIELD, once.as_str()));
        let body = fields.iter().copied().chain(key).collect::<Vec<_>>();
        let body = body.iter().map(|(name, value)| format!("{}={}", encode(name), encode(value))).collect::<Vec<_>>().join("&");
        let request = self.own(path).header("accept", "text/html").header("content-type", "application/x-www-form-urlencoded").body(body);
        self.send(request).await
    }

    /// Opens the page of a form, fills these fields in and sends it, with what the page put into its hidden fields.
    pub async fn fill_in(&mut self, page: &str, fields: &[(&str, &str)]) -> Answer {
        let shown = self.get(page).await.body;
        let form = shown.split(&format!("action=\"{page}\"")).nth(1).and_then(|rest| rest.split("</form>").next()).unwrap_or_default();
        let attribute = |tag: &str, name: &str| Some(tag.split_once(&format!("{name}=\""))?.1.split_once('"')?.0.to_owned());
        let hidden =
            form.split("<input type=\"hidden\"").skip(1).filter_map(|tag| Some((attribute(tag, " name")?, attribute(tag, " value")?)));
        let hidden: Vec<(String, String)> = hidden.filter(|(name, _)| !fields.iter().any(|(typed, _)| typed == name)).collect();
        let all = hidden.iter().map(|(name, value)| (name.as_str(), value.as_str())).chain(fields.iter().copied()).collect::<Vec<_>>();
        self.post_form(page, &all).await
    }

    /// Sends JSON as a script of the portal would, with a key of its own.
    pub async fn post_json(&mut self, path: &str, value: &impl serde::Serialize) -> Answer {
        self.post_json_once(path, value, &fresh_key()).await
    }

    /// Sends JSON under this key.
    pub async fn post_json_once(&mut self, path: &str, value: &impl serde::Serialize, key: &str) -> Answer {
        let request = self.own(path).header("accept", "application/json").header(once::HEADER, key).json(value);
        self.send(request).await
    }

    /// The same while the portal may be gone: `None` when no answer came.
    pub async fn try_post_json(&mut self, path: &str, value: &impl serde::Serialize) -> Option<Answer> {
        let request = self.own(path).header("accept", "application/json").header(once::HEADER, fresh_key()).json(value);
        self.attempt(request).await.ok()
    }

    /// A POST with exactly these headers and this body: for what no page of the portal would send.
    pub async fn post_raw(&mut self, path: &str, headers: &[(&str, &str)], body: &str) -> Answer {
        let mut request = self.http.post(self.url(path)).body(body.to_owned());
        for (name, value) in headers {
            request = request.header(*name, *value);
        }
        self.send(request).await
    }

    fn url(&self, path: &str) -> String {
        format!("{}{path}", self.origin)
    }

    fn own(&self, path: &str) -> reqwest::RequestBuilder {
        self.http.post(self.url(path)).header("origin", &self.origin).header("sec-fetch-site", "same-origin")
    }

    async fn send(&mut self, request: reqwest::RequestBuilder) -> Answer {
        self.attempt(request).await.expect("the portal answers")
    }

    async fn attempt(&mut self, request: reqwest::RequestBuilder) -> Result<Answer, reqwest::Error> {
        let answer = request.header("cookie", self.cookie_header()).send().await?;
        let headers: Vec<(String, String)> = answer
            .headers()
            .iter()
            .map(|(name, value)| (name.to_string(), String::from_utf8_lossy(value.as_bytes()).into_owned()))
            .collect();
        for (_, value) in headers.iter().filter(|(name, _)| name == "set-cookie") {
            self.keep_cookie(value);
        }
        let location = headers.iter().find(|(name, _)| name == "location").map(|(_, value)| value.clone()).unwrap_or_default();
        Ok(Answer { status: answer.status().as_u16(), location, headers, body: answer.text().await? })
    }

    fn keep_cookie(&mut self, header: &str) {
        let (pair, attributes) = header.split_once(';').unwrap_or((header, ""));
        let Some((name, value)) = pair.split_once('=') else { return };
        if value.is_empty() || attributes.to_lowercase().contains("max-age=0") {
            self.cookies.remove(name);
        } else {
            self.cookies.insert(name.to_owned(), value.to_owned());
        }
    }
}

/// A key as a page of the portal would carry one.
fn fresh_key() -> String {
    let world: World = Arc::new(Machine);
    new_id(&world).to_string()
}

/// Percent-encodes all but the unreserved characters of RFC 3986.
fn encode(text: &str) -> String {
    text.bytes()
        .map(
            |byte| {
                if byte.is_ascii_alphanumeric() || b"-._~".contains(&byte) { char::from(byte).to_string() } else { format!("%{byte:02X}") }
            },
        )
        .collect()
}
