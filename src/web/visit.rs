//! Who asks, and how the answer is dressed: the outermost room of every request.

use std::sync::Arc;

use axum::extract::{Request, State};
use axum::http::{Extensions, HeaderMap, HeaderValue, header};
use axum::middleware::Next;
use axum::response::Response;

use super::App;
use super::problem::Problem;
use crate::language::{Language, Text};
use crate::spec::{Digest, StyleId};
use crate::store::Visit;

/// A live page that looks whether something is new says so: it is no sign that anybody is there.
const LOOKS_BY_ITSELF: &str = "x-fellseam-live";

/// The one who asks: signed in or not.
#[derive(Debug, Clone)]
pub struct Visitor {
    /// The token of the live session, and what was read for it and the style of the address.
    pub visit: Option<(String, Visit)>,
    /// The visitor's language.
    pub t: Text,
}

impl Visitor {
    /// Who [`dress`] found asking.
    pub fn of(extensions: &Extensions) -> Visitor {
        extensions.get().cloned().unwrap_or(Visitor {
            visit: None,
            t: Language::ORIGINAL.text(),
        })
    }

    /// The token that this person's forms carry: known only to pages of this session.
    pub fn form_token(&self) -> Option<String> {
        let (token, _) = self.visit.as_ref()?;
        Some(Digest::of(format!("form {token}").as_bytes()).as_str()[..32].to_owned())
    }

    async fn read(app: &App, path: &str, headers: &HeaderMap) -> Result<Visitor, Problem> {
        let visit = match session_cookie(app, headers) {
            Some(token) => {
                let asked = style_of(path);
                let seen = !headers.contains_key(LOOKS_BY_ITSELF);
                let visit = app.store.visit(&token, asked.as_ref(), seen).await?;
                visit.map(|visit| (token, visit))
            }
            None => None,
        };
        let language = match &visit {
            Some((_, visit)) => Language::from_tag(&visit.session.language),
            None => headers
                .get(header::ACCEPT_LANGUAGE)
                .and_then(|value| value.to_str().ok())
                .map(Language::negotiate),
        };
        Ok(Visitor {
            visit,
            t: language.unwrap_or(Language::ORIGINAL).text(),
        })
    }
}

/// The style that an address names: `/styles/{style}` and all below it.
fn style_of(path: &str) -> Option<StyleId> {
    let style = path.strip_prefix("/styles/")?.split('/').next()?;
    (!style.is_empty()).then(|| StyleId::new(style))
}

/// Finds out who asks, and shows a [`Problem`] in their language, as a page or as JSON.
pub async fn dress(State(app): State<App>, mut request: Request, next: Next) -> Response {
    let json = request
        .headers()
        .get(header::ACCEPT)
        .is_some_and(|accept| accept.as_bytes().starts_with(b"application/json"));
    let path = request.uri().path().to_owned();
    let get = request.method().is_safe();
    let visitor = match Visitor::read(&app, &path, request.headers()).await {
        Ok(visitor) => visitor,
        Err(problem) => {
            // Nobody knows who asks, but they still read what to tell.
            let nobody = Visitor::of(&Extensions::new());
            return match json {
                true => problem.json(nobody.t),
                false => problem.page(&nobody),
            };
        }
    };
    request.extensions_mut().insert(visitor.clone());
    let mut response = next.run(request).await;
    let Some(problem) = response.extensions_mut().remove::<Arc<Problem>>() else {
        return response;
    };
    if json {
        return problem.json(visitor.t);
    }
    if matches!(*problem, Problem::SignIn) {
        // After a form there is nothing to come back to.
        let then = if get { path.as_str() } else { "/" };
        return super::problem::to_sign_in(then);
    }
    problem.page(&visitor)
}

fn cookie_name(app: &App) -> &'static str {
    if app.settings.secure() {
        "__Host-fellseam"
    } else {
        "fellseam"
    }
}

fn session_cookie(app: &App, headers: &HeaderMap) -> Option<String> {
    headers
        .get_all(header::COOKIE)
        .iter()
        .filter_map(|value| value.to_str().ok())
        .flat_map(|line| line.split(';'))
        .filter_map(|pair| pair.trim().split_once('='))
        .find(|(name, _)| *name == cookie_name(app))
        .map(|(_, value)| value.to_owned())
}

/// The header that hands a session's token to the browser. `Lax`, since people come by links.
pub fn set_session(app: &App, token: &str) -> (header::HeaderName, HeaderValue) {
    cookie(app, token, 180 * 24 * 60 * 60)
}

/// The header that takes it away.
pub fn clear_session(app: &App) -> (header::HeaderName, HeaderValue) {
    cookie(app, "", 0)
}

fn cookie(app: &App, value: &str, seconds: u32) -> (header::HeaderName, HeaderValue) {
    let secure = if app.settings.secure() {
        "; Secure"
    } else {
        ""
    };
    let text = format!(
        "{}={value}; Path=/; HttpOnly; SameSite=Lax; Max-Age={seconds}{secure}",
        cookie_name(app)
    );
    let value = HeaderValue::from_str(&text).expect("tokens are letters, digits, - and _");
    (header::SET_COOKIE, value)
}
