//! Signing in with a passkey, one's own account, and who is a member of the practice.

mod account;
mod again;
mod ceremony;
mod demo;
mod device;
mod enrol;
mod entry;
mod invite;
mod link;
mod members;
mod news;
mod open;
mod owner;
mod queries;
mod queries_owner;
mod replace;
mod roles;
mod way;

pub(crate) use news::{News, unread};
pub(crate) use queries::{ClientRow, clients_of, is_fresh};

pub use invite::{Invitation, Newcomer, invite};
pub use open::{close, vouch};
pub use owner::{OwnerError, agree_replacement_as_owner, ask_replacement_as_owner, invite_as_owner};

use axum::routing::{get, post};

use crate::platform::{MAY_HAND_OVER, Repeats, Role, Routes, Rule};

/// A challenge is answered once, by a passkey that counts its uses (Web Authentication Level 3, 13.4.3, from memory).
const CEREMONY: Repeats = Repeats::Not("a challenge of a passkey ceremony is spent by its first answer");

/// Adds this feature's routes. The demo's sign-in is only there for the demo.
pub(crate) fn routes(routes: Routes, demo: bool) -> Routes {
    let routes = routes
        .get("/", Rule::Anybody, get(entry::start))
        .get("/signin", Rule::Anybody, get(entry::show))
        .get("/signin/done", Rule::Anybody, get(entry::done))
        .post_repeated("/signin/begin", Rule::Anybody, CEREMONY, post(entry::begin))
        .post_repeated("/signin/finish", Rule::Anybody, CEREMONY, post(entry::finish))
        .get("/signin/again", Rule::Member, get(again::show))
        .post_repeated("/signin/again/begin", Rule::Member, CEREMONY, post(again::begin))
        .post_repeated("/signin/again/finish", Rule::Member, CEREMONY, post(again::finish))
        .post_repeated("/signout", Rule::Anybody, Repeats::ByNature("who is signed out stays so"), post(entry::sign_out))
        .get("/enrol", Rule::Anybody, get(enrol::show))
        .post_repeated("/enrol/begin", Rule::Anybody, CEREMONY, post(enrol::begin))
        .post_repeated("/enrol/finish", Rule::Anybody, CEREMONY, post(enrol::finish));
    let routes = member_routes(routes);
    if !demo {
        return routes;
    }
    let signs_in = Repeats::Not("each sending signs in anew, as each try with a passkey does");
    routes.get("/demo/{role}", Rule::Anybody, get(demo::show)).post_repeated("/demo/{role}", Rule::Anybody, signs_in, post(demo::enter))
}

fn member_routes(routes: Routes) -> Routes {
    let administrator = Rule::Role(Role::Administrator);
    routes
        .get("/account", Rule::Member, get(account::show))
        .post_repeated("/account/passkeys/begin", Rule::Member, CEREMONY, post(enrol::begin_further))
        .post_repeated("/account/passkeys/finish", Rule::Member, CEREMONY, post(enrol::finish_further))
        .post("/account/passkeys/link", Rule::Member, post(account::link))
        .post("/account/passkeys/{passkey}/remove", Rule::Member, post(account::remove_passkey))
        .post("/account/signins/{signin}/revoke", Rule::Member, post(account::revoke))
        .get("/members", administrator, get(members::show))
        .post("/members/invite", administrator, post(members::invite_member))
        .post("/members/withdraw", administrator, post(members::withdraw))
        .get("/members/{member}/end", administrator, get(members::ask_end))
        .post("/members/{member}/end", administrator, post(members::end))
        .get("/members/{member}/roles", administrator, get(roles::show))
        .post("/members/{member}/roles", administrator, post(roles::change))
        .get("/members/{member}/passkey", administrator, get(replace::show))
        .post("/members/{member}/passkey", administrator, post(replace::ask))
        .post_repeated("/news/{news}/read", Rule::Member, Repeats::ByNature("what is read stays so"), post(news::read))
        .get("/replacements", Rule::Member, get(replace::list))
        .post("/replacements/{replacement}/refuse", Rule::Member, post(replace::refuse))
        .post("/replacements/{replacement}/agree", Rule::Roles(MAY_HAND_OVER), post(replace::agree))
}
