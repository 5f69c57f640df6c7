//! Beginning an inspection: what keeps from it, the lot by colourway and size, and the plan that the
//! lot leads to, which is looked at before it is taken.

use std::collections::BTreeMap;

use askama::Template;
use axum::extract::{Path, Query, State};

use super::plan::{PlanLine, lines};
use super::{SortLine, address, sorts};
use crate::access::{StylePermit, act};
use crate::exchange::Refused;
use crate::exchange::inspection::{Class, Group, LARGEST, Lot, Sort, draw};
use crate::language::{Beside, Text};
use crate::sample::inspection::{Aql, Level};
use crate::spec::{Digest, InspectionId, ItemId, Spec, StyleId};
use crate::store::{Inspection, Seal, StoreError, ToInspect};
use crate::web::form::{Errors, Fields, Form};
use crate::web::frame::Frame;
use crate::web::may::{MayOn, Who};
use crate::web::page::{Answer, go, page, page_again};
use crate::web::problem::Problem;
use crate::web::refusal::{WayOn, ways_on};
use crate::web::{App, shape};

#[derive(Template)]
#[template(path = "both/begin_inspection.html")]
struct BeginPage {
    t: Text,
    frame: Frame,
    style: StyleId,
    seal: Seal,
    base: String,
    blocks: Vec<(String, Vec<WayOn>)>,
    /// For a lot that was mended: its inspection before, and the address of that.
    again: Option<(Inspection, String)>,
    /// The inspections that there are against this seal.
    earlier: Vec<Earlier>,
    /// For who may inspect, when nothing blocks.
    form: Option<LotForm>,
    plan: Option<Shown>,
    /// The lot was changed after its plan was shown.
    moved: bool,
    errors: Errors,
    refused: Option<(String, Vec<WayOn>)>,
}

/// An inspection in a list.
pub struct Earlier {
    pub href: String,
    pub title: String,
    pub state: String,
    pub shape: &'static str,
}

/// The lot as it stands in the form.
struct LotForm {
    colourways: Vec<Row>,
    level: Level,
    major: Aql,
    minor: Aql,
}

struct Row {
    name: String,
    beside: Option<Beside>,
    cells: Vec<Cell>,
}

struct Cell {
    sort: Sort,
    /// Of its field.
    field: String,
    size: String,
    typed: String,
}

/// The plan that a lot leads to.
struct Shown {
    /// Names the lot and its levels: what is begun is what was shown.
    key: Digest,
    lot: u64,
    sample: u32,
    lines: [PlanLine; 2],
    sorts: Vec<SortLine>,
}

impl BeginPage {
    fn header(&self) -> &crate::spec::document::Header {
        &self.seal.frozen.spec.header
    }

    fn error(&self, field: &str) -> Option<&str> {
        self.errors.of(field)
    }
}

/// Where bulk is inspected against a seal.
pub fn here(style: &StyleId, seal: &crate::spec::SealId) -> String {
    format!("/styles/{style}/seals/{seal}/inspect")
}

/// The inspections against one seal, newest first.
pub fn earlier(t: Text, style: &StyleId, seal: &Seal, all: &[Inspection]) -> Vec<Earlier> {
    let ours = all.iter().rev().filter(|it| it.seal == seal.id);
    let line = |it: &Inspection| Earlier {
        href: address(style, &it.id),
        title: t
            .say("inspection-title")
            .with("number", it.number)
            .to_string(),
        state: t.name(&it.state()).to_string(),
        shape: shape::inspection(it.state()),
    };
    ours.map(line).collect()
}

pub async fn show(
    may: MayOn<act::Read>,
    State(app): State<App>,
    Path((_, seal)): Path<(String, String)>,
    Query(query): Query<BTreeMap<String, String>>,
) -> Answer {
    let again = query.get("again").map(InspectionId::new);
    let seal = crate::spec::SealId::new(seal);
    let known = app
        .store
        .to_inspect(&may.permit, &seal, again.as_ref())
        .await?;
    page(&load(&app, &may.permit, &may.who, known, None).await?)
}

/// Shows the plan of the lot; begins the inspection whose plan was shown.
pub async fn submit(
    may: MayOn<act::Inspect>,
    State(app): State<App>,
    Path((_, seal)): Path<(String, String)>,
    form: Form,
) -> Answer {
    let t = may.who.t;
    let seal = crate::spec::SealId::new(seal);
    let fields = &form.fields;
    let again = Some(fields.text("again")).filter(|it| !it.is_empty());
    let again = again.map(InspectionId::new);
    let reader = may.permit.also::<act::Read>()?;
    let known = app.store.to_inspect(&reader, &seal, again.as_ref()).await?;
    if let Some(why) = known.blocks.first() {
        let style = may.permit.style().clone();
        return Err(Problem::Refused(why.clone(), Some(style)));
    }
    let mut errors = Errors::default();
    let typed = LotForm::read(t, &known.seal, fields, &mut errors);
    let lot = typed.lot();
    let mut refused = None;
    let wanted = fields.text("begin");
    let shown = key(&lot);
    let moved = !wanted.is_empty() && wanted != shown.as_str();
    if errors.is_empty() && !wanted.is_empty() && !moved {
        let begun = app
            .store
            .begin_inspection(&may.permit, &seal, &lot, again.as_ref());
        match begun.await {
            Ok(id) => {
                let to = address(may.permit.style(), &id);
                return go(&format!("{to}?said=begun"));
            }
            Err(StoreError::Refused(why, style)) => match *why {
                Refused::LotUnsaid | Refused::LotGrown => errors.add("lot", t.why(&why)),
                _ => refused = Some((t.why(&why).to_string(), ways_on(t, &why, &style))),
            },
            Err(other) => return Err(other.into()),
        }
    } else if errors.is_empty() && lot.plans().is_none() {
        errors.add("lot", t.why(&Refused::LotUnsaid));
    }
    let fine = errors.is_empty() && refused.is_none() && !moved;
    let mut again = load(&app, &reader, &may.who, known, Some(typed)).await?;
    again.errors = errors;
    again.refused = refused;
    again.moved = moved;
    match fine {
        true => page(&again),
        false => page_again(&again),
    }
}

fn key(lot: &Lot) -> Digest {
    let groups = lot.groups.iter().map(|it| {
        let Sort { colourway, size } = &it.sort;
        format!("{colourway} {size} {}\n", it.pieces)
    });
    let levels = [lot.level.name(), lot.major.name(), lot.minor.name()].join(" ");
    Digest::of((groups.collect::<String>() + &levels).as_bytes())
}

impl LotForm {
    /// As it is before anybody typed: a mended lot as it was, any other empty, with level II and AQL
    /// 2.5 and 4.0, common practice, no source.
    fn of(t: Text, seal: &Seal, before: Option<&Lot>) -> LotForm {
        let pieces = |sort: &Sort| {
            let pieces = before.map_or(0, |it| it.pieces_of(sort));
            match pieces {
                0 => String::new(),
                pieces => pieces.to_string(),
            }
        };
        LotForm {
            colourways: rows(t, seal, |sort, _| pieces(sort)),
            level: before.map_or(Level::II, |it| it.level),
            major: before.map_or(Aql::A2_5, |it| it.major),
            minor: before.map_or(Aql::A4_0, |it| it.minor),
        }
    }

    fn read(t: Text, seal: &Seal, fields: &Fields, errors: &mut Errors) -> LotForm {
        let typed = |_: &Sort, field: &str| {
            let typed = fields.text(field);
            let fits = typed.parse::<u32>().is_ok_and(|it| it <= LARGEST);
            if !typed.is_empty() && !fits {
                errors.add(field, t.say("inspection-count-wrong").with("most", LARGEST));
            }
            typed.to_owned()
        };
        LotForm {
            colourways: rows(t, seal, typed),
            level: Level::from_name(fields.text("level")).unwrap_or(Level::II),
            major: Aql::from_name(fields.text("major")).unwrap_or(Aql::A2_5),
            minor: Aql::from_name(fields.text("minor")).unwrap_or(Aql::A4_0),
        }
    }

    /// The class that each level is for, its field, and what is chosen.
    fn aqls(&self) -> [(Class, &'static str, Aql); 2] {
        [
            (Class::Major, "major", self.major),
            (Class::Minor, "minor", self.minor),
        ]
    }

    fn lot(&self) -> Lot {
        let cells = self.colourways.iter().flat_map(|row| &row.cells);
        let group = |cell: &Cell| Group {
            sort: cell.sort.clone(),
            pieces: cell.typed.parse().unwrap_or(0),
        };
        Lot {
            groups: cells.map(group).filter(|it| it.pieces > 0).collect(),
            level: self.level,
            major: self.major,
            minor: self.minor,
        }
    }
}

fn rows(t: Text, seal: &Seal, mut typed: impl FnMut(&Sort, &str) -> String) -> Vec<Row> {
    let (spec, chart) = (&seal.frozen.spec, &seal.frozen.chart);
    let colourways = (1..).zip(&spec.colourways.colourways);
    let row = |(number, colourway): (usize, &crate::spec::document::Colourway)| {
        let sizes = (1..).zip(&chart.sizes);
        let cells = sizes.map(|(place, size): (usize, &ItemId)| {
            let field = format!("pieces-{number}-{place}");
            let sort = Sort {
                colourway: colourway.id.clone(),
                size: size.clone(),
            };
            Cell {
                typed: typed(&sort, &field),
                size: code(spec, size),
                field,
                sort,
            }
        });
        Row {
            name: colourway.name.clone(),
            beside: t.beside(&seal.frozen, &colourway.name),
            cells: cells.collect(),
        }
    };
    colourways.map(row).collect()
}

fn code(spec: &Spec, size: &ItemId) -> String {
    spec.size(size).map_or(String::new(), |it| it.code.clone())
}

async fn load(
    app: &App,
    reader: &StylePermit<act::Read>,
    who: &Who,
    known: ToInspect,
    typed: Option<LotForm>,
) -> Result<BeginPage, Problem> {
    let (t, style) = (who.t, reader.style());
    let ToInspect {
        seal,
        before,
        blocks,
        ..
    } = known;
    let all = app.store.inspections(reader).await?;
    let way = |why: &Refused| -> Vec<WayOn> {
        let followed = before.as_ref().and_then(|it| it.followed_by.as_ref());
        match (why, followed) {
            (Refused::SealUnsigned { .. }, _) => vec![WayOn {
                href: format!("/styles/{style}/seals/{}#sign", seal.id),
                label: t.say("seal-open").to_string(),
            }],
            (Refused::InspectedAgain, Some(id)) => vec![WayOn {
                href: address(style, id),
                label: t.say("inspection-open-other").to_string(),
            }],
            _ => ways_on(t, why, style),
        }
    };
    let told = blocks.iter();
    let told = told.map(|why| (t.why(why).to_string(), way(why))).collect();
    let may = blocks.is_empty() && reader.also::<act::Inspect>().is_ok();
    let lot_before = before.as_ref().map(|it| &it.lot);
    let was_typed = typed.is_some();
    let form = typed.unwrap_or_else(|| LotForm::of(t, &seal, lot_before));
    let lot = form.lot();
    let plans = lot
        .plans()
        .filter(|_| may && (was_typed || lot_before.is_some()));
    let plan = plans.map(|plans| {
        let drawn = draw::draw(&lot.groups, plans.sample()).into_iter();
        Shown {
            key: key(&lot),
            lot: lot.size(),
            sample: plans.sample(),
            lines: lines(&plans, (lot.major, lot.minor), None),
            sorts: sorts(t, &seal.frozen, &lot, drawn.map(|it| (it, 0))),
        }
    });
    Ok(BeginPage {
        t,
        frame: who.frame(),
        style: style.clone(),
        base: here(style, &seal.id),
        blocks: told,
        earlier: earlier(t, style, &seal, &all),
        form: may.then_some(form),
        plan,
        again: before.map(|it| {
            let href = address(style, &it.id);
            (it, href)
        }),
        seal,
        moved: false,
        errors: Errors::default(),
        refused: None,
    })
}
