//! The brand's styles, and the start of a new one.

use askama::Template;
use axum::extract::State;

use crate::access::{Permit, act, grant};
use crate::language::Text;
use crate::spec::number_scheme::{Choices, collision};
use crate::spec::{NumberScheme, Spec};
use crate::store::{StoreError, StyleCard};
use crate::web::App;
use crate::web::form::{Errors, Fields, Form};
use crate::web::frame::Frame;
use crate::web::may::{May, Who};
use crate::web::page::{Answer, go, page, page_again};
use crate::web::problem::Problem;

#[derive(Template)]
#[template(path = "brand/styles.html")]
struct StylesPage {
    t: Text,
    frame: Frame,
    styles: Vec<StyleCard>,
    /// May start a style.
    creates: bool,
    number: String,
    name: String,
    /// How styles are numbered, and the next number where there is nothing to choose.
    scheme: Option<NumberScheme>,
    next: Option<String>,
    errors: Errors,
}

pub async fn show(may: May<act::Browse>, State(app): State<App>) -> Answer {
    page(&styles(&may.permit, &may.who, &app).await?)
}

pub async fn create(may: May<act::Create>, State(app): State<App>, form: Form) -> Answer {
    let t = may.who.t;
    let browse = grant::<act::Browse>(&may.who.session.actor)?;
    let scheme = app.store.number_scheme(&browse).await?;
    let mut start = Spec::default();
    let mut errors = Errors::default();
    let typed = form.fields.line(t, "number", &mut errors);
    start.header.name = form.fields.line(t, "name", &mut errors);
    if start.header.name.is_empty() {
        errors.add("name", t.say("error-missing"));
    }
    // Somebody may take the proposed number in the same moment.
    for _ in 0..TRIES {
        let taken = app.store.taken_numbers(&browse).await?;
        let taken = || taken.iter().map(String::as_str);
        start.header.number = match (&scheme, typed.as_str()) {
            (Some(scheme), "") => match scheme.next(&choices(scheme, &form.fields), taken()) {
                Ok(next) => next,
                Err(why) => {
                    errors.add("number", t.no_number(&why));
                    break;
                }
            },
            (None, "") => {
                errors.add("number", t.say("error-missing"));
                break;
            }
            (scheme, typed) => {
                if let Some(Err(why)) = scheme.as_ref().map(|scheme| scheme.read(typed)) {
                    errors.add("number", t.not_a_number(why));
                }
                if let Some(other) = collision(typed, taken()) {
                    errors.add("number", t.say("error-number-like").with("other", other));
                }
                typed.to_owned()
            }
        };
        if !errors.is_empty() {
            break;
        }
        match app.store.create_style(&may.permit, &start).await {
            Ok(style) => return go(&format!("/styles/{style}/draft/header?said=made")),
            Err(StoreError::Unique(_)) if typed.is_empty() => {}
            Err(StoreError::Unique(_)) => {
                errors.add("number", t.say("error-number-taken"));
                break;
            }
            Err(other) => return Err(other.into()),
        }
    }
    page_again(&StylesPage {
        number: typed,
        name: start.header.name,
        errors,
        ..styles(&browse, &may.who, &app).await?
    })
}

const TRIES: usize = 5;

/// What was chosen from each list of the scheme.
fn choices(scheme: &NumberScheme, fields: &Fields) -> Choices {
    let chosen = scheme.lists().map(|list| {
        let code = fields.text(&format!("list.{}", list.name));
        (list.name.clone(), code.to_owned())
    });
    chosen.filter(|(_, code)| !code.is_empty()).collect()
}

async fn styles(permit: &Permit<act::Browse>, who: &Who, app: &App) -> Result<StylesPage, Problem> {
    let scheme = app.store.number_scheme(permit).await?;
    let taken = app.store.taken_numbers(permit).await?;
    let next = scheme.as_ref().and_then(|scheme| {
        let taken = taken.iter().map(String::as_str);
        scheme.next(&Choices::new(), taken).ok()
    });
    Ok(StylesPage {
        t: who.t,
        frame: who.frame(),
        styles: app.store.styles(permit).await?,
        creates: grant::<act::Create>(&who.session.actor).is_ok(),
        number: String::new(),
        name: String::new(),
        scheme,
        next,
        errors: Errors::default(),
    })
}
