//! Entering one piece of a lot: which it is, its defects, what its key points measure.
//!
//! Colourway and size are chosen by links, so that the values of just that size stand beside the
//! fields without script too.

mod typed;

use askama::Template;
use axum::extract::{Path, Query, State};

use self::typed::{DefectForm, Typed};
use super::address;
use crate::access::act;
use crate::exchange::Refused;
use crate::exchange::inspection::{Class, Sort, State as Stage};
use crate::language::{Beside, Text};
use crate::sample::ask::{Ask, asks};
use crate::sample::deviation::columns;
use crate::spec::document::{Basis, Point};
use crate::spec::{EntryId, InspectionId, Item, ItemId, Section, Unit};
use crate::store::{InspectedPiece, Inspection, NewPiece, PieceSent, StoreError, lengths};
use crate::web::App;
use crate::web::both::measure;
use crate::web::both::sealing::named;
use crate::web::figures::Figures;
use crate::web::form::{Errors, Form};
use crate::web::frame::Frame;
use crate::web::may::MayOn;
use crate::web::page::{Answer, go, page, page_again};
use crate::web::problem::Problem;

#[derive(Template)]
#[template(path = "both/inspected_piece.html")]
struct PiecePage {
    t: Text,
    frame: Frame,
    /// The inspection's address.
    base: String,
    title: String,
    number: u32,
    /// Beyond the sample: for a critical defect only.
    beyond: bool,
    /// The entry that this one corrects; empty for none.
    corrects: String,
    key: String,
    sort: Sort,
    colourway: String,
    beside: Option<Beside>,
    size: String,
    sorts: Vec<SortLink>,
    rows: Vec<DefectForm>,
    items: Vec<(Section, Vec<(ItemId, String)>)>,
    /// The key points of the revision, then the others.
    points: [Vec<PointInput>; 2],
    unit: Unit,
    done: u32,
    sample: u32,
    errors: Errors,
    refused: Option<String>,
    /// What to look at once more, and what says that somebody did.
    asks: Vec<String>,
    anyway: String,
}

/// Another colourway and size that the piece may be of.
struct SortLink {
    href: String,
    colourway: String,
    size: String,
    draw: u32,
    done: u32,
    current: bool,
}

struct PointInput {
    id: ItemId,
    letter: String,
    name: String,
    beside: Option<Beside>,
    basis: Option<Basis>,
    critical: bool,
    spec: String,
    tolerance: String,
    typed: String,
    error: Option<String>,
}

/// Which piece; the next that is due, when it is not said.
#[derive(serde::Deserialize)]
pub struct Place {
    number: Option<u32>,
    colourway: Option<String>,
    size: Option<String>,
}

/// Why what was sent was not saved.
#[derive(Default)]
struct Unsaved {
    errors: Errors,
    refused: Option<String>,
    asks: Vec<String>,
}

pub async fn show(
    may: MayOn<act::Inspect>,
    State(app): State<App>,
    Path((_, inspection)): Path<(String, String)>,
    Query(place): Query<Place>,
) -> Answer {
    let inspection = open(&may, &app, inspection).await?;
    let Some(number) = place.number.or_else(|| missing(&inspection)) else {
        return go(&address(may.permit.style(), &inspection.id));
    };
    let sort = match (place.colourway, place.size) {
        (Some(colourway), Some(size)) => Some(Sort {
            colourway: ItemId::new(colourway),
            size: ItemId::new(size),
        }),
        _ => None,
    };
    let (sort, entry) = at(&inspection, number, sort)?;
    let typed = Typed::of(&inspection, entry);
    let corrects = entry.map(|it| it.id.clone());
    let made = piece(
        &may,
        &app,
        &inspection,
        (number, sort),
        corrects,
        typed,
        Unsaved::default(),
    );
    page(&made?)
}

/// Saves a piece, and goes on to the next.
pub async fn submit(
    may: MayOn<act::Inspect>,
    State(app): State<App>,
    Path((_, inspection)): Path<(String, String)>,
    form: Form,
) -> Answer {
    let t = may.who.t;
    let fields = &form.fields;
    let inspection = open(&may, &app, inspection).await?;
    let mut number: u32 = fields.number("number").ok_or(Problem::BadForm)?;
    let sort = Sort {
        colourway: ItemId::new(fields.text("colourway")),
        size: ItemId::new(fields.text("size")),
    };
    let (sort, _) = at(&inspection, number, Some(sort))?;
    let key = fields.text("key");
    if key.is_empty() || key.len() > 64 {
        return Err(Problem::BadForm);
    }
    let corrects = Some(fields.text("corrects")).filter(|it| !it.is_empty());
    let mut corrects = corrects.map(EntryId::new);
    let mut unsaved = Unsaved::default();
    let mut typed = Typed::read(t, &inspection, &sort, fields, &mut unsaved.errors);
    if fields.has("more") {
        typed.more();
        let place = (number, sort);
        let made = piece(
            &may,
            &app,
            &inspection,
            place,
            corrects,
            typed,
            Unsaved::default(),
        );
        return page(&made?);
    }
    if unsaved.errors.is_empty() && fields.text("anyway") != typed.anyway() {
        unsaved.asks = slips(t, &inspection, &sort, &typed);
    }
    if unsaved.errors.is_empty() && unsaved.asks.is_empty() {
        let new = NewPiece {
            piece: number,
            sort: &sort,
            defects: &typed.defects(),
            values: &typed.values,
            corrects: corrects.as_ref(),
            language: &may.who.session.language,
            key,
        };
        match app.store.inspect(&may.permit, &inspection.id, new).await {
            Ok(PieceSent::Kept | PieceSent::Before) => {
                return next(&may, &app, &inspection, number, corrects.is_some()).await;
            }
            Ok(PieceSent::KeyUsed) => {
                unsaved.refused = Some(t.say("rounds-key-used").to_string());
            }
            Err(StoreError::Refused(why, _)) if *why == Refused::PieceMoved => {
                // Read anew: somebody has written meanwhile.
                let now = open(&may, &app, inspection.id.to_string()).await?;
                let newest = now.newest().get(&number).map(|it| it.id.clone());
                if corrects.is_some() {
                    unsaved.refused = Some(t.why(&why).to_string());
                    corrects = newest;
                } else {
                    number = missing(&now).unwrap_or_else(|| now.beyond());
                    let said = t.say("inspection-moved-on").with("number", number);
                    unsaved.refused = Some(said.to_string());
                }
                let place = (number, sort);
                let made = piece(&may, &app, &now, place, corrects, typed, unsaved);
                return page_again(&made?);
            }
            Err(StoreError::Refused(why, _)) => unsaved.refused = Some(t.why(&why).to_string()),
            Err(other) => return Err(other.into()),
        }
    }
    let place = (number, sort);
    page_again(&piece(
        &may,
        &app,
        &inspection,
        place,
        corrects,
        typed,
        unsaved,
    )?)
}

/// The inspection, if pieces can be entered at all.
async fn open(may: &MayOn<act::Inspect>, app: &App, id: String) -> Result<Inspection, Problem> {
    let reader = may.permit.also::<act::Read>()?;
    let inspection = app
        .store
        .inspection(&reader, &InspectionId::new(id))
        .await?;
    match inspection.state() {
        Stage::Open => Ok(inspection),
        state => {
            let why = Refused::InspectionNotIn { state };
            Err(Problem::Refused(why, Some(may.permit.style().clone())))
        }
    }
}

/// The first piece of the sample that nobody has looked at.
fn missing(inspection: &Inspection) -> Option<u32> {
    let newest = inspection.newest();
    (1..=inspection.plans.sample()).find(|number| !newest.contains_key(number))
}

/// What the piece of this number is of, and its newest entry: as it was said, else as it was entered
/// before, else what is to be drawn next.
fn at(
    inspection: &Inspection,
    number: u32,
    said: Option<Sort>,
) -> Result<(Sort, Option<&InspectedPiece>), Problem> {
    if !(1..=inspection.plans.major.lot).contains(&number) {
        return Err(Problem::NotFound);
    }
    let entry = inspection.newest().remove(&number);
    let groups = || inspection.lot.groups.iter().zip(inspection.drawn());
    let due = || {
        let wanted = groups().find(|(_, (draw, done))| done < draw);
        let left = || groups().find(|(group, (_, done))| *done < group.pieces);
        wanted.or_else(left).map(|(group, _)| group.sort.clone())
    };
    let before = || entry.map(|it| it.sort.clone());
    let sort = said.or_else(before).or_else(due).ok_or(Problem::NotFound)?;
    match inspection.lot.pieces_of(&sort) {
        0 => Err(Problem::NotFound),
        _ => Ok((sort, entry)),
    }
}

/// To the next piece of the sample; to the inspection when none is due, or when this one was none of
/// the next.
async fn next(
    may: &MayOn<act::Inspect>,
    app: &App,
    inspection: &Inspection,
    number: u32,
    corrected: bool,
) -> Answer {
    let base = address(may.permit.style(), &inspection.id);
    let now = open(may, app, inspection.id.to_string()).await?;
    let goes_on = !corrected && number <= now.plans.sample() && missing(&now).is_some();
    match goes_on {
        true => go(&format!("{base}/piece?said=saved")),
        false => go(&format!("{base}?said=saved")),
    }
}

/// Values that look like a slip of the hand.
fn slips(t: Text, inspection: &Inspection, sort: &Sort, typed: &Typed) -> Vec<String> {
    let frozen = &inspection.frozen;
    let columns = columns(&frozen.spec, &frozen.chart);
    let found = asks(&columns, &sort.size, &lengths(&typed.values)).into_iter();
    let said = found.filter_map(|ask| {
        let Ask::Slip { point, .. } = &ask else {
            return None;
        };
        let value = typed.values.get(point)?.nm;
        let points = &frozen.spec.points.points;
        let point = points.iter().find(|it| it.id == *point)?;
        let sentence = measure::sentence(t, frozen, ask, value, point);
        Some(format!("{} {}: {sentence}", point.letter, point.name))
    });
    said.collect()
}

fn piece(
    may: &MayOn<act::Inspect>,
    app: &App,
    inspection: &Inspection,
    (number, sort): (u32, Sort),
    corrects: Option<EntryId>,
    typed: Typed,
    unsaved: Unsaved,
) -> Result<PiecePage, Problem> {
    let t = may.who.t;
    let base = address(may.permit.style(), &inspection.id);
    let frozen = &inspection.frozen;
    let spec = &frozen.spec;
    let name = |id: &ItemId| spec.item(id).map_or("", |it| it.name()).to_owned();
    let code = |id: &ItemId| spec.size(id).map_or("", |it| it.code.as_str()).to_owned();
    let groups = inspection.lot.groups.iter().zip(inspection.drawn());
    let link = |(group, (draw, done)): (&crate::exchange::inspection::Group, (u32, u32))| {
        let Sort { colourway, size } = &group.sort;
        SortLink {
            href: format!("{base}/piece?number={number}&colourway={colourway}&size={size}"),
            colourway: name(colourway),
            size: code(size),
            current: group.sort == sort,
            draw,
            done,
        }
    };
    let sorts = groups.map(link).collect();
    let points = &spec.points.points;
    // Where no point is marked as key, all are.
    let any = points.iter().any(|it| it.key || it.critical);
    let (key, others): (Vec<&Point>, Vec<&Point>) =
        points.iter().partition(|it| !any || it.key || it.critical);
    let figures = Figures::of(frozen);
    let input = |point: &Point| {
        let row = frozen.chart.row(&point.id)?;
        let allowed = row.tolerance(&sort.size);
        let value = frozen.chart.value(&point.id, &sort.size)?;
        Some(PointInput {
            id: point.id.clone(),
            letter: point.letter.clone(),
            name: point.name.clone(),
            beside: t.beside(frozen, &point.name),
            basis: point.basis,
            critical: point.critical,
            spec: figures.value(value, row.step),
            tolerance: figures.tolerance(allowed.minus, allowed.plus, row.step),
            typed: typed.measured.get(&point.id).cloned().unwrap_or_default(),
            error: unsaved
                .errors
                .of(&typed::field(&point.id))
                .map(ToOwned::to_owned),
        })
    };
    let inputs = |points: Vec<&Point>| points.into_iter().filter_map(input).collect();
    let colourway = name(&sort.colourway);
    Ok(PiecePage {
        t,
        frame: may.who.frame().told_by(None),
        title: t
            .say("inspection-title")
            .with("number", inspection.number)
            .to_string(),
        beyond: number > inspection.plans.sample(),
        corrects: corrects.map_or_else(String::new, |it| it.to_string()),
        key: app.store.world().id(),
        beside: t.beside(frozen, &colourway),
        size: code(&sort.size),
        points: [inputs(key), inputs(others)],
        items: items(t, inspection),
        unit: figures.unit,
        done: inspection.plans.sample() - inspection.tally().missing,
        sample: inspection.plans.sample(),
        anyway: typed.anyway(),
        rows: typed.rows,
        errors: unsaved.errors,
        refused: unsaved.refused,
        asks: unsaved.asks,
        number,
        sorts,
        colourway,
        sort,
        base,
    })
}

/// What a defect can be on, by the section that it stands in.
fn items(t: Text, inspection: &Inspection) -> Vec<(Section, Vec<(ItemId, String)>)> {
    let frozen = &inspection.frozen;
    let mut groups: Vec<(Section, Vec<(ItemId, String)>)> = Vec::new();
    for item in frozen.spec.items() {
        let seen = matches!(
            item,
            Item::Point(_)
                | Item::Part(_)
                | Item::Material(_)
                | Item::Callout(_)
                | Item::Artwork(_)
                | Item::Label(_)
        );
        if !seen {
            continue;
        }
        let beside = t.beside(frozen, item.name());
        let beside = beside.map_or_else(String::new, |it| {
            let sign = if it.own { '=' } else { '≈' };
            format!(" {sign} {}", it.text)
        });
        let label = format!("{}{beside}", named(&frozen.spec, item.id()));
        let entry = (item.id().clone(), label);
        match groups.last_mut() {
            Some((section, entries)) if *section == item.section() => entries.push(entry),
            _ => groups.push((item.section(), vec![entry])),
        }
    }
    groups
}

impl PiecePage {
    fn error(&self, field: &str) -> Option<&str> {
        self.errors.of(field)
    }
}
