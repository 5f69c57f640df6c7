//! The values beside the rows that are being typed: worked out here for the page, and for its script
//! while somebody types. There is one arithmetic, and it is the spec's.

use axum::Json;
use axum::extract::State;
use axum::response::IntoResponse;
use serde_json::{Map, Value, json};

use super::point_row::Row;
use super::rows::{self, Press};
use crate::access::{StylePermit, act};
use crate::language::Text;
use crate::spec::chart::{Values, steps};
use crate::spec::document::{Grade, Point, Section, Size};
use crate::spec::rule::Names;
use crate::spec::units::{DecimalSign, Unit};
use crate::spec::{Finding, ItemId, Length, Spec, check, grade};
use crate::store::{Draft, put_section};
use crate::web::App;
use crate::web::form::{Errors, Fields, Form};
use crate::web::may::MayOn;
use crate::web::page::Answer;
use crate::web::problem::Problem;

/// Grades the rows of a form as if they were saved, and with them all that follow another point.
/// Answers by row: the values, what is found, and what cannot be read by field.
pub async fn live(may: MayOn<act::Write>, State(app): State<App>, form: Form) -> Answer {
    let t = may.who.t;
    let fields = &form.fields;
    let review = may.permit.also()?;
    let draft = app.store.draft(&review).await?;
    let basis = Basis::read(&app, &review, &draft, fields).await?;
    let mut errors = Errors::default();
    let mut rows = rows_of(&draft.spec, &basis);
    let mut sent = Vec::new();
    for (id, row) in typed(t, fields, &mut errors)? {
        match rows.iter_mut().find(|(other, _)| *other == id) {
            Some((_, old)) => *old = row,
            None => rows.push((id.clone(), row)),
        }
        sent.push(id);
    }
    let mut spec = draft.spec.clone();
    spec.points.points = read(t, &draft.spec, &basis, &rows, &mut errors);
    let follows = |id: &ItemId| {
        let grade = spec.point(id).and_then(|point| point.grade.as_ref());
        matches!(grade, Some(Grade::Derived { .. }))
    };
    rows.retain(|(id, _)| sent.contains(id) || follows(id));
    let rows = graded(t, &spec, rows, &errors).into_iter().map(|graded| {
        let of_row = |(at, sentence): (&str, &str)| {
            let (key, field) = at.split_once('.')?;
            (key == graded.row.key).then(|| (field.to_owned(), Value::from(sentence)))
        };
        let errors: Map<_, _> = errors.all().filter_map(of_row).collect();
        let shown = json!({
            "values": graded.values,
            "steps": graded.steps,
            "told": graded.told,
            "notes": graded.notes,
            "errors": errors,
        });
        (graded.row.key, shown)
    });
    let rows: Map<_, _> = rows.collect();
    Ok(Json(json!({ "rows": rows })).into_response())
}

/// The rows that a script sends. Nothing is saved, so a new row may go by its key.
pub fn typed(t: Text, fields: &Fields, errors: &mut Errors) -> Result<Vec<(ItemId, Row)>, Problem> {
    let keys = rows::keys(fields, "row", &Press::Save)?;
    let rows = keys.into_iter().map(|key| {
        let id = ItemId::new(key.as_str());
        (id, Row::read(t, fields, key, errors))
    });
    Ok(rows.collect())
}

/// What the texts of a form hold for: a unit or a size code that changed since must not change what
/// they mean.
pub struct Basis {
    pub unit: Option<Unit>,
    pub sizes_version: i64,
    pub sizes: Vec<Size>,
}

/// A row of the grid with what the program works out.
pub struct Graded {
    pub row: Row,
    /// One for each size; none while the row cannot be graded.
    pub values: Vec<Shown>,
    /// One for each two neighbouring sizes.
    pub steps: Vec<StepLeft>,
    /// What the tolerances are in the other unit.
    pub told: Option<String>,
    pub notes: Vec<Note>,
}

impl Graded {
    /// A row of which nothing is worked out yet.
    pub fn bare(row: Row) -> Graded {
        Graded {
            row,
            values: Vec::new(),
            steps: Vec::new(),
            told: None,
            notes: Vec::new(),
        }
    }
}

/// A finding about a row.
#[derive(serde::Serialize)]
pub struct Note {
    /// It keeps the draft from being published.
    pub error: bool,
    pub sentence: String,
}

/// A value in the master unit, and in the other one as a reference.
#[derive(serde::Serialize)]
pub struct Shown {
    pub value: String,
    pub reference: String,
    /// What the rule gives, where rounding has changed it.
    pub unrounded: Option<String>,
}

/// The step from one size to the next, after rounding.
#[derive(serde::Serialize)]
pub struct StepLeft {
    /// The codes of the two sizes.
    pub gap: String,
    pub left: String,
    /// The step of the rule, where rounding has changed it.
    pub unrounded: Option<String>,
}

impl Basis {
    pub fn of(draft: &Draft) -> Basis {
        Basis {
            unit: draft.spec.header.unit,
            sizes_version: draft.versions[&Section::Sizes],
            sizes: draft.spec.sizes.sizes.clone(),
        }
    }

    /// What the form was filled by. Errors: `BadForm` when it does not say.
    pub async fn read(
        app: &App,
        permit: &StylePermit<act::Review>,
        draft: &Draft,
        fields: &Fields,
    ) -> Result<Basis, Problem> {
        let now = Basis::of(draft);
        let sizes_version = fields.number("sizes_version").ok_or(Problem::BadForm)?;
        let sizes = if sizes_version == now.sizes_version {
            now.sizes
        } else {
            let history = app.store.section_history(permit, Section::Sizes).await?;
            let then = history.iter().find(|then| then.version == sizes_version);
            let mut spec = Spec::default();
            put_section(
                &mut spec,
                Section::Sizes,
                &then.ok_or(Problem::BadForm)?.content,
            )
            .map_err(|cause| Problem::fault(&cause))?;
            spec.sizes.sizes
        };
        Ok(Basis {
            unit: Unit::from_name(fields.text("unit")),
            sizes_version,
            sizes,
        })
    }

    pub fn unit_name(&self) -> &'static str {
        self.unit.map_or("", Unit::name)
    }

    pub fn names<'a>(&'a self, points: impl Iterator<Item = (&'a ItemId, &'a str)>) -> Names<'a> {
        Names {
            sizes: &self.sizes,
            points: points.collect(),
            unit: self.unit,
        }
    }
}

/// The rows of a form as points, in their order, each under the id beside it.
pub fn read(
    t: Text,
    old: &Spec,
    basis: &Basis,
    rows: &[(ItemId, Row)],
    errors: &mut Errors,
) -> Vec<Point> {
    let names = basis.names(rows.iter().map(|(id, row)| (id, row.letter.as_str())));
    let written_by = basis.names(rows.iter().map(|(id, row)| (id, row.lettered.as_str())));
    rows.iter()
        .map(|(id, row)| row.point(t, id, &names, &written_by, old.point(id), errors))
        .collect()
}

/// The rows with their values and with what is found about them.
pub fn graded(t: Text, spec: &Spec, rows: Vec<(ItemId, Row)>, errors: &Errors) -> Vec<Graded> {
    let results = grade(spec);
    let findings = check(spec, &results);
    let unit = spec.header.unit.unwrap_or(Unit::Cm);
    rows.into_iter()
        .map(|(id, row)| {
            // Not what is still missing beside an empty field, nor what is said at the field.
            let worth = |field| row.typed(field) && errors.of(&row.at(field)).is_none();
            let told = |finding: &&Finding| {
                finding.section == Section::Points
                    && finding.item.as_ref() == Some(&id)
                    && finding.field.is_none_or(worth)
            };
            let notes = findings.iter().filter(told);
            let notes = notes.map(|finding| Note {
                error: finding.is_error(),
                sentence: t.finding(finding, unit, DecimalSign::Point).to_string(),
            });
            let notes = notes.collect();
            let point = spec.point(&id);
            let step = point.and_then(|point| point.step);
            let step = step.map_or(unit.fine_step(), |step| step.nm);
            let values = results.values(&id);
            Graded {
                values: values.map_or(Vec::new(), |values| shown(values, unit, step)),
                steps: values.map_or(Vec::new(), |values| steps_left(spec, values, unit)),
                told: point.and_then(|point| tolerances(t, point, unit)),
                notes,
                row,
            }
        })
        .collect()
}

fn shown(values: &Values, unit: Unit, step: Length) -> Vec<Shown> {
    let other = other_unit(unit);
    let pairs = values.rounded.iter().zip(&values.exact);
    pairs
        .map(|(rounded, exact)| Shown {
            value: rounded.show(unit, step, DecimalSign::Point),
            reference: rounded.show(other, other.fine_step(), DecimalSign::Point),
            unrounded: (rounded != exact).then(|| about(*exact, unit)),
        })
        .collect()
}

fn steps_left(spec: &Spec, values: &Values, unit: Unit) -> Vec<StepLeft> {
    let gaps = spec.sizes.sizes.windows(2);
    let both = steps(&values.rounded).zip(steps(&values.exact));
    gaps.zip(both)
        .map(|(gap, (left, exact))| StepLeft {
            gap: format!("{}–{}", gap[0].code, gap[1].code),
            left: about(left, unit),
            unrounded: (left != exact).then(|| about(exact, unit)),
        })
        .collect()
}

/// A length as finely as anybody cuts: what has no short form says that it is not quite it.
fn about(length: Length, unit: Unit) -> String {
    let finest = Length::nm(match unit {
        Unit::Inch => unit.nanometres() / 64,
        Unit::Cm => unit.nanometres() / 100,
        Unit::Mm => unit.nanometres() / 10,
    });
    let short = length.rounded(finest);
    let text = short.exact(unit, DecimalSign::Point);
    match short == length {
        true => text,
        false => format!("≈ {text}"),
    }
}

/// The tolerances in the other unit, towards zero: conversion never widens them.
fn tolerances(t: Text, point: &Point, unit: Unit) -> Option<String> {
    let (minus, plus) = (point.minus?, point.plus?);
    let other = other_unit(unit);
    let show = |side: Length| {
        let side = side.tolerance_in(other);
        side.show(other, other.fine_step(), DecimalSign::Point)
    };
    let sentence = t
        .say("point-tolerance-other")
        .with("minus", show(minus.nm))
        .with("plus", show(plus.nm))
        .with("unit", t.name(&other));
    Some(sentence.to_string())
}

/// The unit that a value is shown in as a reference.
pub fn other_unit(unit: Unit) -> Unit {
    if unit.is_metric() {
        Unit::Inch
    } else {
        Unit::Cm
    }
}

/// The draft's points as rows.
pub fn rows_of(spec: &Spec, basis: &Basis) -> Vec<(ItemId, Row)> {
    let points = &spec.points.points;
    let names = basis.names(
        points
            .iter()
            .map(|point| (&point.id, point.letter.as_str())),
    );
    let row = |point: &Point| (point.id.clone(), Row::of(point, &names));
    points.iter().map(row).collect()
}
