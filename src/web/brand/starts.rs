//! What a style may begin with: nothing, a start for its kind of garment, or one of the brand's own.

use axum::extract::State;

use crate::access::{Actor, Permit, StylePermit, act, grant_on};
use crate::language::Text;
use crate::spec::document::{GarmentKind, Word};
use crate::spec::start::{STARTS, Start};
use crate::spec::{Spec, StyleId};
use crate::web::App;
use crate::web::assets;
use crate::web::form::Form;
use crate::web::may::MayOn;
use crate::web::page::{Answer, go};
use crate::web::problem::Problem;
use crate::web::upload::{Kept, keep_drawing};

/// How the form tells a style of the brand from a kind of garment.
const OWN: &str = "style-";

/// One thing to begin with, as the form offers it.
pub struct Choice {
    /// Empty for nothing.
    pub value: String,
    pub name: String,
    /// The address of a flat.
    pub picture: Option<String>,
}

pub async fn choices(
    app: &App,
    t: Text,
    permit: &Permit<act::Browse>,
) -> Result<Vec<Choice>, Problem> {
    let nothing = Choice {
        value: String::new(),
        name: t.say("starts-nothing").to_string(),
        picture: None,
    };
    let kinds = STARTS.iter().map(|start| Choice {
        value: start.kind.word().to_owned(),
        name: t.name(&start.kind).to_string(),
        picture: Some(assets::address(start.flats[0].name)),
    });
    let own = app.store.own_starts(permit).await?;
    let own = own.into_iter().map(|style| Choice {
        picture: style
            .drawing
            .map(|drawing| format!("/styles/{}/files/{drawing}/480", style.id)),
        value: format!("{OWN}{}", style.id),
        name: format!("{} {}", style.number, style.name),
    });
    Ok([nothing].into_iter().chain(kinds).chain(own).collect())
}

/// What was chosen to begin with.
pub struct Chosen {
    pub spec: Spec,
    /// The brand's own style that it is a copy of.
    pub from: Option<StylePermit<act::Review>>,
    start: Option<&'static Start>,
}

impl Chosen {
    /// By a choice's value.
    ///
    /// Errors: `BadForm` for a value that is none; as on its own pages for a style that is not
    /// there.
    pub async fn read(app: &App, actor: &Actor, value: &str) -> Result<Chosen, Problem> {
        if let Some(style) = value.strip_prefix(OWN) {
            let facts = app.store.style_facts(actor, &StyleId::new(style)).await?;
            let review = grant_on(actor, &facts.ok_or(Problem::NotFound)?)?;
            return Ok(Chosen {
                spec: app.store.draft(&review).await?.spec.for_another_style(),
                from: Some(review),
                start: None,
            });
        }
        let start = match value {
            "" => None,
            kind => {
                let start = GarmentKind::from_word(kind).and_then(Start::of);
                Some(start.ok_or(Problem::BadForm)?)
            }
        };
        Ok(Chosen {
            spec: start.map(Start::spec).unwrap_or_default(),
            from: None,
            start,
        })
    }

    /// Keeps the flats of a kind's start, before the style that shows them is begun.
    pub async fn keep_flats(&self, app: &App) -> Result<Vec<Kept>, Problem> {
        let mut kept = Vec::new();
        for flat in self.start.iter().flat_map(|start| start.drawn()) {
            let bytes = flat.svg.as_bytes().to_vec();
            kept.push(keep_drawing(app, flat.name.to_owned(), bytes).await?);
        }
        Ok(kept)
    }
}

/// Makes the flats known as drawings of the style that was begun with them.
pub async fn hand_over(
    app: &App,
    actor: &Actor,
    style: &StyleId,
    flats: Vec<Kept>,
) -> Result<(), Problem> {
    let facts = app.store.style_facts(actor, style).await?;
    let permit = grant_on::<act::Write>(actor, &facts.ok_or(Problem::NotFound)?)?;
    for flat in flats {
        flat.used_by(app, &permit).await?;
    }
    Ok(())
}

/// Keeps a style as one of the brand's own starts, or does not any more.
pub async fn keep(may: MayOn<act::Write>, State(app): State<App>, form: Form) -> Answer {
    let keep = match form.fields.text("keep") {
        "yes" => true,
        "no" => false,
        _ => return Err(Problem::BadForm),
    };
    app.store.keep_as_start(&may.permit, keep).await?;
    go(&format!("/styles/{}?said=saved", may.permit.style()))
}
