//! Coming in and going out: signing in, set-up, invitations, codes, one's own settings.

pub mod code;
pub mod join;
pub mod me;
pub mod set_up;
pub mod sign_in;
pub mod sign_out;

use axum::extract::ConnectInfo;
use axum::extract::FromRequestParts;
use axum::http::HeaderMap;
use axum::http::request::Parts;
use std::net::{IpAddr, SocketAddr};

use super::App;
use super::form::{Errors, Fields};
use super::password::SHORTEST;
use super::problem::Problem;
use crate::language::{Language, Text};

/// The address that a request came from, for the brake on guessing.
///
/// Behind a proxy that is the last entry of `X-Forwarded-For`, the one that the proxy itself added:
/// the entries before it are whatever the caller wrote. Without a proxy the whole header is.
pub struct From(pub String);

impl FromRequestParts<App> for From {
    type Rejection = Problem;

    async fn from_request_parts(parts: &mut Parts, app: &App) -> Result<Self, Problem> {
        if app.settings.behind_proxy
            && let Some(caller) = forwarded_for(&parts.headers)
        {
            return Ok(From(caller.to_string()));
        }
        let peer = parts.extensions.get::<ConnectInfo<SocketAddr>>();
        Ok(From(peer.map_or_else(
            || "unknown".to_owned(),
            |ConnectInfo(peer)| peer.ip().to_string(),
        )))
    }
}

/// The last address in the last `X-Forwarded-For`; some proxies write its port too.
fn forwarded_for(headers: &HeaderMap) -> Option<IpAddr> {
    let last = headers.get_all("x-forwarded-for").iter().next_back()?;
    let entry = last.to_str().ok()?.rsplit(',').next()?.trim();
    let with_port = || entry.parse().ok().map(|address: SocketAddr| address.ip());
    entry.parse().ok().or_else(with_port)
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

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_what_the_proxy_added_is_an_address() {
        let from = |lines: &[&'static str]| {
            let mut headers = HeaderMap::new();
            for line in lines {
                headers.append("x-forwarded-for", line.parse().unwrap());
            }
            forwarded_for(&headers).map(|address| address.to_string())
        };
        assert_eq!(from(&[]), None);
        assert_eq!(from(&["192.0.2.7"]).as_deref(), Some("192.0.2.7"));
        assert_eq!(
            from(&["10.0.0.1, 198.51.100.9 ,192.0.2.7"]).as_deref(),
            Some("192.0.2.7")
        );
        assert_eq!(
            from(&["198.51.100.9", "2001:db8::7"]).as_deref(),
            Some("2001:db8::7")
        );
        assert_eq!(from(&["[2001:db8::7]:443"]).as_deref(), Some("2001:db8::7"));
        assert_eq!(from(&["192.0.2.7:5100"]).as_deref(), Some("192.0.2.7"));
        assert_eq!(from(&["192.0.2.7, unknown"]), None);
    }
}
