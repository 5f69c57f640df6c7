//! An inspection of a lot: what to draw, what was found, what the plans say of it, and what is next.

pub mod begin;
mod curve;
mod next;
pub mod piece;
mod plan;
mod told;

use askama::Template;
use axum::extract::{Path, State};

use self::curve::Curve;
use self::next::{Next, next};
use self::plan::{PlanLine, lines};
use self::told::{Corrected, PieceLine, corrected, told};
use crate::access::{StylePermit, act};
use crate::exchange::inspection::{
    self, Class, Decision, Lot, Outcome, State as Stage, rejections,
};
use crate::exchange::revision::{Frozen, Standing};
use crate::exchange::{Actor, Refused};
use crate::language::{Beside, Message, Text};
use crate::sample::inspection::{Found, Rejection};
use crate::spec::{InspectionId, StyleId};
use crate::store::{Inspection, StoreError};
use crate::web::both::sealing::named;
use crate::web::form::{Errors, Form};
use crate::web::frame::{Frame, name_or_erased};
use crate::web::may::{MayOn, Who};
use crate::web::page::{Answer, go, page, page_again};
use crate::web::problem::Problem;
use crate::web::refusal::{WayOn, ways_on};
use crate::web::{App, shape};

#[derive(Template)]
#[template(path = "both/inspection.html")]
struct InspectionPage {
    t: Text,
    frame: Frame,
    style: StyleId,
    base: String,
    inspection: Inspection,
    state: Stage,
    shape: &'static str,
    by: String,
    next: Next,
    /// A revision that is current instead of the one of the sealed pieces.
    newer: Option<u32>,
    /// The inspection of the same lot before, and after.
    before: Option<(String, String)>,
    after: Option<(String, String)>,
    plans: [PlanLine; 2],
    /// Pieces with a critical defect.
    critical: u32,
    done: u32,
    sorts: Vec<SortLine>,
    /// Why the lot is rejected as it stands.
    rejections: Vec<String>,
    curve: Curve,
    /// Pieces with something wrong, and the numbers of the others.
    found: Vec<PieceLine>,
    sound: Vec<(u32, String)>,
    corrected: Vec<Corrected>,
    /// What was let pass on the revision, each with its address.
    concessions: Vec<(String, String)>,
    /// The reader may enter pieces now; then the number that a piece beyond the sample would have.
    enters: Option<u32>,
    concludes: bool,
    decide: Option<DecideForm>,
    /// Why what was sent was not taken.
    refused: Option<(String, Vec<WayOn>)>,
}

/// A colourway and size of the lot: how many it has, how many are drawn, how many are done.
pub struct SortLine {
    pub colourway: String,
    pub beside: Option<Beside>,
    pub size: String,
    pub pieces: u32,
    pub draw: u32,
    pub done: u32,
}

/// The decision as it stands in the form.
struct DecideForm {
    /// Those that may be taken.
    choices: Vec<Decision>,
    chosen: Option<Decision>,
    reason: String,
    errors: Errors,
}

impl InspectionPage {
    fn header(&self) -> &crate::spec::document::Header {
        &self.inspection.frozen.spec.header
    }

    /// A name; one that was erased is said to be.
    fn who(&self, name: &Option<String>) -> String {
        name_or_erased(self.t, name.as_deref())
    }

    fn help(&self, decision: &Decision) -> Message {
        self.t.say(match decision {
            Decision::Released => "inspection-released-help",
            Decision::Concession => "inspection-concession-help",
            Decision::Rework => "inspection-rework-help",
            Decision::Refused => "inspection-refused-help",
        })
    }
}

impl DecideForm {
    fn is_chosen(&self, decision: &Decision) -> bool {
        self.chosen == Some(*decision)
    }
}

/// The address of an inspection's page.
pub fn address(style: &StyleId, inspection: &InspectionId) -> String {
    format!("/styles/{style}/inspections/{inspection}")
}

/// The lot's sorts with how many pieces of each are drawn and done.
pub fn sorts(
    t: Text,
    frozen: &Frozen,
    lot: &Lot,
    drawn: impl Iterator<Item = (u32, u32)>,
) -> Vec<SortLine> {
    let lines = lot.groups.iter().zip(drawn).map(|(group, (draw, done))| {
        let colourway = frozen.spec.item(&group.sort.colourway);
        let colourway = colourway.map_or("", |it| it.name());
        let size = frozen.spec.size(&group.sort.size);
        SortLine {
            colourway: colourway.to_owned(),
            beside: t.beside(frozen, colourway),
            size: size.map_or(String::new(), |it| it.code.clone()),
            pieces: group.pieces,
            draw,
            done,
        }
    });
    lines.collect()
}

/// A page that is sent back with what somebody sent and why it was not taken.
#[derive(Default)]
struct Returned {
    decide: Option<DecideForm>,
    refused: Option<(String, Vec<WayOn>)>,
}

pub async fn show(
    may: MayOn<act::Read>,
    State(app): State<App>,
    Path((_, inspection)): Path<(String, String)>,
) -> Answer {
    let id = InspectionId::new(inspection);
    page(&load(&app, &may.permit, &may.who, &id, Returned::default()).await?)
}

/// Concludes the inspection.
pub async fn conclude(
    may: MayOn<act::Inspect>,
    State(app): State<App>,
    Path((style, inspection)): Path<(String, String)>,
    _form: Form,
) -> Answer {
    let t = may.who.t;
    let id = InspectionId::new(inspection);
    match app.store.conclude_inspection(&may.permit, &id).await {
        Ok(_) => go(&format!("/styles/{style}/inspections/{id}?said=concluded")),
        Err(StoreError::Refused(why, style)) => {
            let reader = may.permit.also::<act::Read>()?;
            let returned = Returned {
                refused: Some((t.why(&why).to_string(), ways_on(t, &why, &style))),
                ..Returned::default()
            };
            page_again(&load(&app, &reader, &may.who, &id, returned).await?)
        }
        Err(other) => Err(other.into()),
    }
}

/// Decides on the lot. What the rules refuse comes back with the form as it was filled in.
pub async fn decide(
    may: MayOn<act::Decide>,
    State(app): State<App>,
    Path((style, inspection)): Path<(String, String)>,
    form: Form,
) -> Answer {
    let t = may.who.t;
    let id = InspectionId::new(inspection);
    let mut errors = Errors::default();
    let chosen = Decision::from_name(form.fields.text("decision"));
    let reason = form.fields.line(t, "reason", &mut errors);
    if chosen.is_none() {
        errors.add("decision", t.say("error-choice-missing"));
    }
    let mut returned = Returned::default();
    if let (Some(decision), true) = (chosen, errors.is_empty()) {
        let decided = app
            .store
            .decide_inspection(&may.permit, &id, decision, &reason);
        match decided.await {
            Ok(()) => return go(&format!("/styles/{style}/inspections/{id}?said=decided")),
            Err(StoreError::Refused(why, _)) if *why == Refused::ReasonMissing => {
                errors.add("reason", t.why(&why));
            }
            Err(StoreError::Refused(why, style)) => {
                returned.refused = Some((t.why(&why).to_string(), ways_on(t, &why, &style)));
            }
            Err(other) => return Err(other.into()),
        }
    }
    returned.decide = Some(DecideForm {
        choices: Vec::new(),
        chosen,
        reason,
        errors,
    });
    let reader = may.permit.also::<act::Read>()?;
    page_again(&load(&app, &reader, &may.who, &id, returned).await?)
}

/// What may be decided, a reason given: the rules say.
fn choices(state: Stage, by: &Actor, found: &Found) -> Vec<Decision> {
    let allowed =
        |decision: &Decision| inspection::decide(state, by, found, *decision, "-").is_ok();
    Decision::ALL.into_iter().filter(allowed).collect()
}

async fn load(
    app: &App,
    reader: &StylePermit<act::Read>,
    who: &Who,
    id: &InspectionId,
    returned: Returned,
) -> Result<InspectionPage, Problem> {
    let (t, store, style) = (who.t, &app.store, reader.style());
    let all = store.inspections(reader).await?;
    let other = |id: &InspectionId| {
        let found = all.iter().find(|it| it.id == *id)?;
        let title = t.say("inspection-title").with("number", found.number);
        Some((address(style, id), title.to_string()))
    };
    let found = all.iter().find(|it| it.id == *id);
    let inspection = found.ok_or(Problem::NotFound)?.clone();
    let newest = store.newest(reader).await?;
    let current = newest.filter(|it| it.standing == Standing::Current);
    let current = current.map(|it| it.number);
    let spec = &inspection.frozen.spec;
    let seals = store.seals(reader).await?;
    let seal = seals.iter().find(|it| it.id == inspection.seal);
    let granted = seal.map_or(&[][..], |it| &it.concessions);
    let threads = store.thread_facts(reader).await?;
    let threads = threads.iter().filter(|it| granted.contains(&it.id));
    let concessions = threads.map(|it| {
        let href = format!("/styles/{style}/threads/{}", it.id);
        (
            href,
            format!("{}: {}", t.name(&it.kind), named(spec, &it.item)),
        )
    });
    let concessions = concessions.collect();
    let (state, tally) = (inspection.state(), inspection.tally());
    let (plans, lot) = (&inspection.plans, &inspection.lot);
    let inspects = reader.also::<act::Inspect>().is_ok();
    let decides = reader.also::<act::Decide>().is_ok();
    let enters = (inspects && state == Stage::Open).then(|| inspection.beyond());
    let why = rejections(plans, &tally);
    let concludes = enters.is_some() && (tally.missing == 0 || !why.is_empty());
    let base = address(style, id);
    let (found, sound) = told(t, &inspection, &base, enters.is_some());
    let decide = match state {
        Stage::Concluded(_) if decides => {
            let mut form = returned.decide.unwrap_or(DecideForm {
                choices: Vec::new(),
                chosen: None,
                reason: String::new(),
                errors: Errors::default(),
            });
            form.choices = choices(state, reader.actor(), &tally.found);
            Some(form)
        }
        _ => None,
    };
    Ok(InspectionPage {
        t,
        frame: who.frame(),
        style: style.clone(),
        next: next(t, &inspection, reader, &base, &tally, !why.is_empty()),
        newer: current.filter(|it| *it != inspection.revision),
        before: inspection.follows.as_ref().and_then(other),
        after: inspection.followed_by.as_ref().and_then(other),
        plans: lines(plans, (lot.major, lot.minor), Some(&tally)),
        critical: tally.found.critical,
        done: plans.sample() - tally.missing,
        sorts: sorts(t, &inspection.frozen, lot, inspection.drawn().into_iter()),
        rejections: why.iter().map(|it| rejected(t, it)).collect(),
        curve: Curve::of(lot, plans, inspection.frozen.decimal),
        corrected: corrected(t, &inspection),
        by: name_or_erased(t, inspection.person.as_deref()),
        shape: shape::inspection(state),
        found,
        sound,
        concessions,
        enters,
        concludes,
        decide,
        refused: returned.refused,
        state,
        base,
        inspection,
    })
}

/// Why a lot is rejected.
fn rejected(t: Text, why: &Rejection) -> String {
    let said = match why {
        Rejection::Critical { found } => t.say("inspection-fails-critical").with("count", found),
        Rejection::Major { found, accept } => t
            .say("inspection-fails")
            .with("class", t.name(&Class::Major))
            .with("found", found)
            .with("accept", accept),
        Rejection::Minor { found, accept } => t
            .say("inspection-fails")
            .with("class", t.name(&Class::Minor))
            .with("found", found)
            .with("accept", accept),
    };
    said.to_string()
}
