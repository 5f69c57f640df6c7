//! From a template to an answer.

use askama::Template;
use axum::http::{HeaderValue, StatusCode, header};
use axum::response::{Html, IntoResponse, Response};

use super::problem::Problem;

/// A page, or an act's way to the next one.
pub type Answer = Result<Response, Problem>;

/// Renders a page.
pub fn page(template: &impl Template) -> Answer {
    Ok(Html(template.render()?).into_response())
}

/// The form again, with what is wrong beside its fields.
pub fn page_again(template: &impl Template) -> Answer {
    let html = Html(template.render()?);
    Ok((StatusCode::UNPROCESSABLE_ENTITY, html).into_response())
}

/// After a form was taken: on to this address of the site, by GET.
pub fn go(to: &str) -> Answer {
    // Every part of it was made here, from ids and numbers.
    let to = HeaderValue::from_str(to).map_err(|_| Problem::BadForm)?;
    Ok((StatusCode::SEE_OTHER, [(header::LOCATION, to)]).into_response())
}
