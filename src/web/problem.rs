//! What goes wrong on a page: one type, with an HTML and a JSON face, and never any internals.

use std::sync::Arc;

use askama::Template;
use axum::Json;
use axum::http::{HeaderValue, StatusCode, header};
use axum::response::{Html, IntoResponse, Response};
use serde_json::json;

use super::frame::Frame;
use super::refusal;
use super::visit::Visitor;
use crate::access::{Denied, Role};
use crate::exchange::Refused;
use crate::files::RenderError;
use crate::language::Text;
use crate::spec::StyleId;
use crate::store::StoreError;

/// Why there is no ordinary answer.
#[derive(Debug)]
pub enum Problem {
    /// There is no such thing, or none that this person may know of.
    NotFound,
    /// Nobody is signed in.
    SignIn,
    /// The act is not this role's.
    NotYours {
        role: Role,
    },
    /// The form was not sent by this person's own page, or the page is from an earlier session.
    Forged,
    /// The request cannot be read.
    BadForm,
    TooLarge,
    /// Too many wrong tries.
    TooManyTries,
    /// The rules of the exchange refuse the move; on which style it was tried.
    Refused(Refused, Option<StyleId>),
    /// A file cannot be taken.
    Upload(RenderError),
    /// The program's own fault, or the machine's. The cause goes to the log under the reference.
    Fault {
        reference: String,
    },
}

impl Problem {
    /// A fault: logs the cause and gives it a reference number that the page shows.
    pub fn fault(cause: &dyn std::fmt::Display) -> Self {
        let reference = reference();
        tracing::error!(reference, %cause, "fault");
        Problem::Fault { reference }
    }

    pub fn status(&self) -> StatusCode {
        match self {
            Problem::NotFound => StatusCode::NOT_FOUND,
            Problem::SignIn => StatusCode::UNAUTHORIZED,
            Problem::NotYours { .. } | Problem::Forged => StatusCode::FORBIDDEN,
            Problem::BadForm => StatusCode::BAD_REQUEST,
            Problem::TooLarge => StatusCode::PAYLOAD_TOO_LARGE,
            Problem::TooManyTries => StatusCode::TOO_MANY_REQUESTS,
            Problem::Refused(..) => StatusCode::CONFLICT,
            Problem::Upload(_) => StatusCode::UNPROCESSABLE_ENTITY,
            Problem::Fault { .. } => StatusCode::INTERNAL_SERVER_ERROR,
        }
    }

    /// The sentence that says what is wrong and what to do.
    pub fn sentence(&self, t: Text) -> String {
        match self {
            Problem::NotFound => t.say("problem-not-found").to_string(),
            Problem::SignIn => t.say("problem-sign-in").to_string(),
            Problem::NotYours { role } => t
                .say("problem-not-yours")
                .with("role", t.name(role))
                .to_string(),
            Problem::Forged => t.say("problem-forged").to_string(),
            Problem::BadForm => t.say("problem-bad-form").to_string(),
            Problem::TooLarge => t.say("problem-too-large").to_string(),
            Problem::TooManyTries => t.say("problem-too-many-tries").to_string(),
            Problem::Refused(why, _) => t.why(why).to_string(),
            Problem::Upload(why) => refusal::upload(t, why),
            Problem::Fault { reference } => t
                .say("problem-fault")
                .with("reference", reference)
                .to_string(),
        }
    }

    pub fn page(&self, visitor: &Visitor) -> Response {
        let t = visitor.t;
        let frame = match (&visitor.visit, visitor.form_token()) {
            (Some((_, visit)), Some(token)) => Frame::signed_in(t, &visit.session, &token),
            _ => Frame::outside(t),
        };
        let ways_on = match self {
            Problem::Refused(why, Some(style)) => refusal::ways_on(t, why, style),
            _ => Vec::new(),
        };
        let page = ProblemPage {
            heading: match self {
                Problem::Refused(..) => t.say("problem-heading-refused").to_string(),
                Problem::NotFound => t.say("problem-heading-not-found").to_string(),
                _ => t.say("problem-heading").to_string(),
            },
            sentence: self.sentence(t),
            ways_on,
            frame,
            t,
        };
        match page.render() {
            Ok(html) => (self.status(), Html(html)).into_response(),
            Err(cause) => {
                tracing::error!(%cause, "the problem page does not render");
                self.status().into_response()
            }
        }
    }

    pub fn json(&self, t: Text) -> Response {
        let code = match self {
            Problem::Refused(why, _) => why.code(),
            Problem::Fault { .. } => "fault",
            _ => self.status().canonical_reason().unwrap_or_default(),
        };
        (
            self.status(),
            Json(json!({ "problem": code, "sentence": self.sentence(t) })),
        )
            .into_response()
    }
}

/// The page itself.
#[derive(Template)]
#[template(path = "problem.html")]
struct ProblemPage {
    t: Text,
    frame: Frame,
    heading: String,
    sentence: String,
    ways_on: Vec<refusal::WayOn>,
}

impl IntoResponse for Problem {
    /// Bare: [`dress`](super::visit::dress) makes the page, since it knows who asks.
    fn into_response(self) -> Response {
        let mut response = self.status().into_response();
        response.extensions_mut().insert(Arc::new(self));
        response
    }
}

impl From<StoreError> for Problem {
    fn from(error: StoreError) -> Self {
        match error {
            StoreError::Missing => Problem::NotFound,
            StoreError::Refused(why, style) => Problem::Refused(*why, Some(style)),
            other => Problem::fault(&other),
        }
    }
}

impl From<Denied> for Problem {
    fn from(denied: Denied) -> Self {
        match denied {
            Denied::Hidden => Problem::NotFound,
            Denied::NotYours { role, .. } => Problem::NotYours { role },
        }
    }
}

impl From<RenderError> for Problem {
    fn from(error: RenderError) -> Self {
        Problem::Upload(error)
    }
}

impl From<askama::Error> for Problem {
    fn from(error: askama::Error) -> Self {
        Problem::fault(&error)
    }
}

impl From<std::io::Error> for Problem {
    fn from(error: std::io::Error) -> Self {
        Problem::fault(&error)
    }
}

/// To the sign-in page, and back to `then` after it.
pub fn to_sign_in(then: &str) -> Response {
    let then: String = form_urlencoded::byte_serialize(then.as_bytes()).collect();
    let to = format!("/sign-in?then={then}");
    let mut response = StatusCode::SEE_OTHER.into_response();
    let to = HeaderValue::from_str(&to).unwrap_or(HeaderValue::from_static("/sign-in"));
    response.headers_mut().insert(header::LOCATION, to);
    response
}

/// Counts the faults of this run: `F-1`, `F-2` ... stands on the page and in the log beside the
/// cause and the time.
fn reference() -> String {
    use std::sync::atomic::{AtomicU32, Ordering};
    static FAULTS: AtomicU32 = AtomicU32::new(0);
    format!("F-{}", FAULTS.fetch_add(1, Ordering::Relaxed) + 1)
}
