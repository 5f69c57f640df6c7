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
    for key in rows::keys(fields, "row", &Press::Save)? {
        // Nothing is saved, so a new row may go by its key.
        let id = ItemId::new(key.as_str());
        let row = Row::read(t, fields, key, &mut errors);
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
        let shown = json!({ "values": graded.values, "notes": graded.notes, "errors": errors });
        (graded.row.key, shown)
    });
    let rows: Map<_, _> = rows.collect();
    Ok(Json(json!({ "rows": rows })).into_response())
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
    pub notes: Vec<Note>,
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

    fn names<'a>(&'a self, points: impl Iterator<Item = (&'a ItemId, &'a str)>) -> Names<'a> {
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
    rows.iter()
        .map(|(id, row)| row.point(t, id, &names, old.point(id), errors))
        .collect()
}

/// The rows with their values and with what is found about them.
pub fn graded(t: Text, spec: &Spec, rows: Vec<(ItemId, Row)>, errors: &Errors) -> Vec<Graded> {
    let results = grade(spec);
    let findings = check(spec, &results);
    let unit = spec.header.unit.unwrap_or(Unit::Cm);
    let other = if unit.is_metric() {
        Unit::Inch
    } else {
        Unit::Cm
    };
    rows.into_iter()
        .map(|(id, row)| {
            let step = spec.point(&id).and_then(|point| point.step);
            let step = step.map_or(unit.fine_step(), |step| step.nm);
            let values = results
                .values(&id)
                .map_or(&[][..], |values| &values.rounded);
            let show = |value: &Length| Shown {
                value: value.show(unit, step, DecimalSign::Point),
                reference: value.show(other, other.fine_step(), DecimalSign::Point),
            };
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
            Graded {
                values: values.iter().map(show).collect(),
                notes: notes.collect(),
                row,
            }
        })
        .collect()
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
