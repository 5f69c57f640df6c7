//! Coming in and going out: signing in, set-up, invitations, codes, one's own settings.

pub mod code;
pub mod join;
pub mod me;
pub mod set_up;
pub mod sign_in;
pub mod sign_out;

use axum::extract::ConnectInfo;
use axum::extract::FromRequestParts;
use axum::http::request::Parts;
use std::net::SocketAddr;

use super::App;
use super::form::{Errors, Fields};
use super::password::SHORTEST;
use super::problem::Problem;
use crate::language::{Language, Text};

/// The address that a request came from, for the brake on guessing. Behind a proxy it is the
/// proxy's, and the brake per name does the work.
pub struct From(pub String);

impl FromRequestParts<App> for From {
    type Rejection = Problem;

    async fn from_request_parts(parts: &mut Parts, _app: &App) -> Result<Self, Problem> {
        let peer = parts.extensions.get::<ConnectInfo<SocketAddr>>();
        Ok(From(peer.map_or_else(
            || "unknown".to_owned(),
            |ConnectInfo(peer)| peer.ip().to_string(),
        )))
    }
}

/// A name as a form gave it, or what is wrong with it.
fn name(t: Text, fields: &Fields, field: &'static str, errors: &mut Errors) -> String {
    let name = fields.text(field);
    if name.is_empty() {
        errors.add(field, t.say("error-name-missing"));
    } else if name.chars().count() > 100 {
        errors.add(field, t.say("error-name-long"));
    }
    name.to_owned()
}

/// A sign-in name in lower case and a password, or what is wrong with them.
fn credentials(t: Text, fields: &Fields, errors: &mut Errors) -> (String, String) {
    let login = fields.text("login").to_lowercase();
    if login.is_empty() || login.chars().count() > 200 {
        errors.add("login", t.say("error-login-missing"));
    }
    let password = fields.raw("password").to_owned();
    if password.chars().count() < SHORTEST {
        errors.add(
            "password",
            t.say("error-password-short").with("count", SHORTEST),
        );
    } else if password.chars().count() > 1000 {
        errors.add("password", t.say("error-password-long"));
    }
    (login, password)
}

/// The language that a form chose; the visitor's own when it chose none of ours.
fn language(t: Text, fields: &Fields) -> Language {
    Language::from_tag(fields.text("language")).unwrap_or(t.language())
}
