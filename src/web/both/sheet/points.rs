//! The lines of the size chart, each with how to measure it, and what the second axis adds.

use serde::Serialize;

use super::{Fact, Head, OfSize, Value, Writer};
use crate::language::Worded;
use crate::spec::chart::Row;
use crate::spec::document::{Point, Record};
use crate::spec::{Item, Length};

/// One line of the size chart, with how to measure it.
#[derive(Serialize)]
pub struct PointRow {
    pub head: Head,
    pub basis: String,
    pub key: bool,
    pub critical: bool,
    pub cells: Vec<Value>,
    pub minus: Value,
    pub plus: Value,
    /// What it is in the trade's words, and where on the garment.
    pub what: String,
    pub start: Worded,
    pub end: Worded,
    /// Path, stretched or relaxed, along which direction; and the brand's own words.
    pub how: String,
    pub note: Worded,
    /// Left against right.
    pub limits: Vec<Fact>,
    /// What each size must reach when stretched; empty where that is not said.
    pub stretched: Vec<OfSize>,
    /// From size to size, and to what it is rounded.
    pub grade: String,
    pub step: String,
}

/// A point at one value of the second axis.
#[derive(Serialize)]
pub struct LengthRow {
    pub head: Head,
    /// The first line of its point.
    pub first: bool,
    pub code: String,
    pub label: String,
    /// What it adds, with its sign.
    pub added: String,
    pub cells: Vec<Value>,
}

impl Writer<'_> {
    pub(super) fn points(&self) -> Vec<PointRow> {
        let points = self.frozen.spec.points.points.iter();
        let rows = points.filter_map(|it| Some(self.point(it, self.frozen.chart.row(&it.id)?)));
        rows.collect()
    }

    fn point(&self, point: &Point, row: &Row) -> PointRow {
        let t = self.t;
        let old = self.old.map(|old| (old, old.chart.row(&point.id)));
        let old_row = old.and_then(|(_, row)| row);
        let columns = self.frozen.chart.sizes.iter().zip(&row.values);
        let cells = columns.map(|(size, value)| {
            let before = old.and_then(|(old, _)| old.chart.value(&point.id, size));
            let before = before.zip(old_row.map(|row| row.step));
            let before = before.filter(|(before, _)| before != value);
            Value {
                value: self.written(*value, row.step),
                other: self.reference(*value),
                old: before.map(|(before, step)| self.written(before, step)),
                base: *size == self.frozen.chart.base_size,
                tolerance: row.tolerances.get(size).map(|allowed| {
                    let (minus, plus) = (self.exact(allowed.minus), self.exact(allowed.plus));
                    format!("−{minus} +{plus}")
                }),
            }
        });
        let how = &point.how;
        let what = [
            point.measure.map(|it| t.name(&it).to_string()),
            point.part.as_ref().map(|it| self.words.item(it)),
            Some(point.panel.clone()),
        ];
        let what = what.into_iter().flatten();
        let mut fields = point.fields();
        PointRow {
            head: self.head(Item::Point(point)),
            basis: point
                .basis
                .map(|it| t.name(&it).to_string())
                .unwrap_or_default(),
            key: point.key,
            critical: point.critical,
            cells: cells.collect(),
            minus: self.tolerance('−', row.minus, old_row.map(|row| row.minus)),
            plus: self.tolerance('+', row.plus, old_row.map(|row| row.plus)),
            what: what
                .filter(|it| !it.is_empty() && *it != point.name)
                .collect::<Vec<_>>()
                .join(" · "),
            start: self.worded(&how.start),
            end: self.worded(&how.end),
            how: t.way(point),
            note: self.worded(&how.note),
            limits: self.take(&mut fields, &["pair_limit"]),
            stretched: (self.frozen.chart.sizes.iter().zip(&row.stretched))
                .map(|(size, value)| OfSize {
                    code: self.size_code(size),
                    value: self.written(*value, row.step),
                })
                .collect(),
            grade: (point.grade.as_ref())
                .and_then(|it| self.phrase(it, "grade"))
                .unwrap_or_default(),
            step: format!(
                "{} {}",
                row.step.exact(self.unit, self.frozen.decimal),
                self.unit
            ),
        }
    }

    fn tolerance(&self, side: char, now: Length, before: Option<Length>) -> Value {
        let exact = |length: Length| format!("{side}{}", self.exact(length));
        let other = now.tolerance_in(self.other);
        let other = other.show(self.other, self.other.fine_step(), self.frozen.decimal);
        Value {
            value: exact(now),
            other: format!("{side}{other}"),
            old: before.filter(|before| *before != now).map(exact),
            base: false,
            tolerance: None,
        }
    }

    /// With as many decimals as the finest step, so that a column lines up; more where it needs.
    fn exact(&self, length: Length) -> String {
        let fine = self.unit.fine_step();
        match length.is_multiple_of(fine) {
            true => length.show(self.unit, fine, self.frozen.decimal),
            false => length.exact(self.unit, self.frozen.decimal),
        }
    }

    /// What each length adds to each point that it changes, and what that makes in every size.
    pub(super) fn lengths(&self) -> Vec<LengthRow> {
        let spec = &self.frozen.spec;
        let chart = &self.frozen.chart;
        let mut before = None;
        let rows = chart.lengths.iter().filter_map(|row| {
            let point = spec.point(&row.point)?;
            let option = spec.sizes.lengths.iter().find(|it| it.id == row.length)?;
            let step = chart.row(&row.point)?.step;
            let added = point.lengths.get(&row.length)?.nm;
            let sign = if added.is_negative() { '−' } else { '+' };
            let cells = chart.sizes.iter().zip(&row.values);
            Some(LengthRow {
                head: self.head(Item::Point(point)),
                first: before.replace(&row.point) != Some(&row.point),
                code: option.code.clone(),
                label: option.label.clone(),
                added: format!("{sign}{}", self.exact(added.abs())),
                cells: cells
                    .map(|(size, value)| Value {
                        value: self.written(*value, step),
                        other: self.reference(*value),
                        old: None,
                        base: *size == chart.base_size,
                        tolerance: None,
                    })
                    .collect(),
            })
        });
        rows.collect()
    }
}
