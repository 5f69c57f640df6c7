//! Who else has a section open: open pages say from time to time that they are.

use askama::Template;
use axum::extract::{Path, State};
use axum::http::StatusCode;
use axum::response::IntoResponse;

use super::rows;
use crate::access::act;
use crate::language::Text;
use crate::spec::Section;
use crate::store::Present;
use crate::web::App;
use crate::web::form::Form;
use crate::web::frame::name_or_erased;
use crate::web::may::MayOn;
use crate::web::page::{Answer, page};
use crate::web::problem::Problem;

/// Somebody else who has the section open.
pub struct Here {
    pub name: String,
    pub since: String,
}

/// The part of a section's page that says who is here.
#[derive(Template)]
#[template(path = "brand/here.html")]
struct HerePage {
    t: Text,
    here: Vec<Here>,
}

/// Those who are in this section.
pub fn of(t: Text, section: Section, present: Vec<Present>) -> Vec<Here> {
    let here = present.into_iter().filter(|one| one.section == section);
    here.map(|one| Here {
        name: name_or_erased(t, one.name.as_deref()),
        since: one.since.minute(),
    })
    .collect()
}

/// A page says that it is open, or by the field `gone` that it is closed; the answer is who else is
/// here.
pub async fn say(
    may: MayOn<act::Review>,
    State(app): State<App>,
    Path((_, section)): Path<(String, String)>,
    form: Form,
) -> Answer {
    let section = Section::from_name(&section).ok_or(Problem::NotFound)?;
    let seat = form.fields.text("seat");
    if !rows::is_key(seat) {
        return Err(Problem::BadForm);
    }
    if form.fields.has("gone") {
        app.store.leaves(&may.permit, seat).await?;
        return Ok(StatusCode::NO_CONTENT.into_response());
    }
    app.store.stays(&may.permit, section, seat).await?;
    let present = app.store.others_here(&may.permit).await?;
    page(&HerePage {
        t: may.who.t,
        here: of(may.who.t, section, present),
    })
}
