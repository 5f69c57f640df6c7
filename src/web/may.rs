//! The extractors that give a handler its permit, or refuse before it runs.

use axum::extract::{FromRequestParts, RawPathParams};
use axum::http::Method;
use axum::http::request::Parts;
use std::sync::Arc;

use super::App;
use super::frame::Frame;
use super::problem::Problem;
use super::visit::Visitor;
use crate::access::{Act, Permit, StylePermit, grant, grant_on};
use crate::language::Text;
use crate::spec::StyleId;
use crate::store::Session;

/// Leave to do `A`, and who has it.
pub struct May<A> {
    pub permit: Permit<A>,
    pub who: Who,
}

/// Leave to do `A` on the style of the path, and who has it.
pub struct MayOn<A> {
    pub permit: StylePermit<A>,
    pub who: Who,
    /// Another word whenever something that the style's pages show has changed, drafts left out.
    pub edition: String,
}

/// A signed-in person, as a page needs them.
#[derive(Clone)]
pub struct Who {
    pub session: Arc<Session>,
    pub t: Text,
    pub token: String,
    pub form_token: String,
    /// What the form before this page has done, by its code in the address.
    said: Option<String>,
    /// Path and query.
    pub address: String,
    /// The stream that tells of changes on the style of the path.
    live: Option<String>,
}

impl Who {
    /// The frame of this person's page.
    pub fn frame(&self) -> Frame {
        Frame::signed_in(self.t, &self.session, &self.form_token)
            .at(self.address.split('?').next().unwrap_or_default())
            .saying(self.said.as_deref())
            .told_by(self.live.clone())
    }

    async fn from_parts(parts: &Parts) -> Result<Who, Problem> {
        let visitor = Visitor::of(&parts.extensions);
        let form_token = visitor.form_token().ok_or(Problem::SignIn)?;
        let (token, visit) = visitor.visit.ok_or(Problem::SignIn)?;
        let said = form_urlencoded::parse(parts.uri.query().unwrap_or_default().as_bytes())
            .find(|(name, _)| name == "said")
            .map(|(_, code)| code.into_owned());
        Ok(Who {
            session: visit.session,
            t: visitor.t,
            token,
            form_token,
            said,
            address: parts.uri.to_string(),
            live: None,
        })
    }
}

impl<A: Act> FromRequestParts<App> for May<A> {
    type Rejection = Problem;

    async fn from_request_parts(parts: &mut Parts, _app: &App) -> Result<Self, Problem> {
        let who = Who::from_parts(parts).await?;
        let permit = grant(&who.session.actor)?;
        Ok(May { permit, who })
    }
}

impl<A: Act> FromRequestParts<App> for MayOn<A> {
    type Rejection = Problem;

    async fn from_request_parts(parts: &mut Parts, app: &App) -> Result<Self, Problem> {
        let mut who = Who::from_parts(parts).await?;
        let params = RawPathParams::from_request_parts(parts, app)
            .await
            .map_err(|_| Problem::NotFound)?;
        let style = params
            .iter()
            .find(|(name, _)| *name == "style")
            .map(|(_, id)| StyleId::new(id))
            .ok_or(Problem::NotFound)?;
        let (_, visit) = Visitor::of(&parts.extensions)
            .visit
            .ok_or(Problem::SignIn)?;
        let facts = visit.style.filter(|facts| facts.style == style);
        let facts = facts.ok_or(Problem::NotFound)?;
        let permit = grant_on(&who.session.actor, &facts)?;
        // What answers a form stands at the form's address, where there may be no page to look at
        // again: it would say that there is no connection.
        let live = || format!("/styles/{style}/live");
        who.live = (parts.method == Method::GET).then(live);
        Ok(MayOn {
            permit,
            who,
            edition: facts.edition,
        })
    }
}
