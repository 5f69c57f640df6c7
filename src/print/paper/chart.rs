//! The pattern room's sheet: the flats with every dimension, the size chart, how to measure, the
//! grade.

use super::block::{Block, Cell, Column, Page, Table, Words};
use super::writer::Writer;
use crate::language::{Text, other_unit, shown};
use crate::spec::chart::Row;
use crate::spec::document::{Point, Record, View};
use crate::spec::{Chart, Item, ItemId, Length};

/// So many sizes stand side by side.
const ABREAST: usize = 10;

impl Writer<'_> {
    pub(super) fn pattern(&self) -> Vec<Page> {
        let mut pages = self.marked_drawings(|it| !it.lines.is_empty() && it.view != View::Detail);
        let Some(chart) = &self.edition.chart else {
            let text = self.each(|t| t.say("paper-no-chart"));
            let mut blocks = vec![Block::Note { text, strong: true }];
            blocks.extend(self.how_to_measure());
            pages.push(Page::of(blocks));
            return pages;
        };
        let mut blocks = vec![self.heading(|t| t.say("chart-title"))];
        let other = other_unit(self.unit);
        blocks.push(self.note(|t| {
            t.say("chart-units")
                .with("unit", t.name(&self.unit))
                .with("other", t.name(&other))
        }));
        for sizes in chart.sizes.chunks(ABREAST) {
            blocks.push(self.size_chart(chart, sizes));
        }
        blocks.extend(self.lengths(chart));
        blocks.extend(self.how_to_measure());
        blocks.extend(self.bodies());
        pages.push(Page::of(blocks));
        pages
    }

    pub(super) fn size_columns(&self, sizes: &[ItemId], width: f64) -> Vec<Column> {
        let base = self.spec.header.base_size.as_ref();
        let columns = sizes.iter().map(|size| {
            let is_base = Some(size) == base;
            let mut column = Column::of(Words::plain(self.size_code(size)), width).right();
            if is_base {
                column.head = Words::plain(format!("[{}]", column.head.a));
                column.strong = true;
            }
            column
        });
        columns.collect()
    }

    fn size_chart(&self, chart: &Chart, sizes: &[ItemId]) -> Block {
        let mut columns = vec![self.column(|t| t.say("chart-point"), 0.0)];
        let width = if sizes.len() > 7 { 15.5 } else { 18.0 };
        columns.extend(self.size_columns(sizes, width));
        columns.push(Column::of(Words::plain("−"), 14.0).right());
        columns.push(Column::of(Words::plain("+"), 14.0).right());
        let rows = chart.rows.iter().filter_map(|row| {
            let point = self.spec.point(&row.point)?;
            let mut cells = vec![self.point_cell(point)];
            let values = chart.sizes.iter().zip(&row.values);
            let values = values.filter(|(size, _)| sizes.contains(size));
            cells.extend(values.map(|(size, value)| self.value(row, size, *value)));
            let old = self.old_row(row);
            cells.push(self.tolerance(row.minus, old.map(|it| it.minus)));
            cells.push(self.tolerance(row.plus, old.map(|it| it.plus)));
            Some(cells)
        });
        Block::Table(Table {
            rows: rows.collect(),
            columns,
        })
    }

    fn point_cell(&self, point: &Point) -> Cell {
        let mut cell = self.item_cell(Item::Point(point));
        let said = |t: Text| {
            let basis = point.basis.map(|it| t.name(&it).to_string());
            let flags = [(point.key, "key"), (point.critical, "critical")];
            let flags = flags.into_iter().filter(|(is, _)| *is);
            let flags = flags.map(|(_, field)| t.field(field).to_string());
            let all: Vec<String> = basis.into_iter().chain(flags).collect();
            all.join(" · ")
        };
        let small = self.each(said);
        cell.strong = point.critical;
        if !small.is_empty() {
            cell.small.push(small);
        }
        cell
    }

    fn old_row(&self, row: &Row) -> Option<&Row> {
        let old = self.before.filter(|old| old.chart.unit == self.unit)?;
        old.chart.row(&row.point)
    }

    fn value(&self, row: &Row, size: &ItemId, value: Length) -> Cell {
        let other = other_unit(self.unit);
        let reference = value.show(other, other.fine_step(), self.edition.decimal);
        let old = self.old_row(row).and_then(|old| {
            let before = self.before?.chart.value(&row.point, size)?;
            (before != value).then(|| self.length(before, old.step))
        });
        let mut small = vec![Words::plain(shown(reference))];
        if let Some(allowed) = row.tolerances.get(size) {
            small.push(Words::plain(format!(
                "−{} +{}",
                self.exact(allowed.minus),
                self.exact(allowed.plus)
            )));
        }
        Cell {
            text: Words::plain(self.length(value, row.step)),
            changed: old.is_some(),
            old,
            small,
            strong: self.spec.header.base_size.as_ref() == Some(size),
            ..Cell::default()
        }
    }

    pub(super) fn exact(&self, length: Length) -> String {
        let fine = self.unit.fine_step();
        match length.is_multiple_of(fine) {
            true => length.show(self.unit, fine, self.edition.decimal),
            false => length.exact(self.unit, self.edition.decimal),
        }
    }

    fn tolerance(&self, now: Length, before: Option<Length>) -> Cell {
        let other = other_unit(self.unit);
        let reference = now.tolerance_in(other);
        let reference = reference.show(other, other.fine_step(), self.edition.decimal);
        let old = before.filter(|it| *it != now).map(|it| self.exact(it));
        Cell {
            text: Words::plain(self.exact(now)),
            changed: old.is_some(),
            old,
            small: vec![Words::plain(reference)],
            ..Cell::default()
        }
    }

    /// The second axis.
    fn lengths(&self, chart: &Chart) -> Vec<Block> {
        let mut blocks = Vec::new();
        if chart.lengths.is_empty() {
            return blocks;
        }
        blocks.push(self.heading(|t| t.say("lengths-caption").with("unit", t.name(&self.unit))));
        for sizes in chart.sizes.chunks(ABREAST) {
            let mut columns = vec![
                self.column(|t| t.say("chart-point"), 0.0),
                self.column(|t| t.field("length"), 40.0),
            ];
            columns.extend(self.size_columns(sizes, 17.0));
            let rows = chart.lengths.iter().filter_map(|row| {
                let point = self.spec.point(&row.point)?;
                let options = &self.spec.sizes.lengths;
                let option = options.iter().find(|it| it.id == row.length)?;
                let step = chart.row(&row.point)?.step;
                let name = format!("{} {}", option.code, option.label);
                let mut cells = vec![self.item_cell(Item::Point(point)), Cell::plain(name.trim())];
                let values = chart.sizes.iter().zip(&row.values);
                let values = values.filter(|(size, _)| sizes.contains(size));
                cells.extend(values.map(|(_, it)| Cell::plain(self.length(*it, step))));
                Some(cells)
            });
            blocks.push(Block::Table(Table {
                rows: rows.collect(),
                columns,
            }));
        }
        blocks
    }

    fn how_to_measure(&self) -> Vec<Block> {
        let points = &self.spec.points.points;
        if points.is_empty() {
            return Vec::new();
        }
        let columns = vec![
            self.column(|t| t.say("chart-point"), 0.0),
            self.column(|t| t.field("how.start"), 50.0),
            self.column(|t| t.field("how.end"), 50.0),
            self.column(|t| t.say("how-way"), 52.0),
            self.column(|t| t.field("grade"), 58.0),
        ];
        let rows = points.iter().map(|point| {
            let how = &point.how;
            let mut way = Cell::of(self.each(|t| t.way(point)));
            if !how.note.is_empty() {
                way.small.push(self.named(&how.note));
            }
            let mut fields = point.fields();
            fields.retain(|(name, _)| {
                matches!(
                    name.as_ref(),
                    "grade" | "step" | "pair_limit" | "stretched_min"
                )
            });
            vec![
                self.item_cell(Item::Point(point)),
                Cell::of(self.named(&how.start)),
                Cell::of(self.named(&how.end)),
                way,
                self.facts_cell(self.facts(&fields)),
            ]
        });
        vec![
            self.heading(|t| t.say("how-title")),
            Block::Table(Table {
                rows: rows.collect(),
                columns,
            }),
        ]
    }

    fn bodies(&self) -> Vec<Block> {
        let sizes = self.spec.sizes.sizes.iter();
        let rows: Vec<Vec<Cell>> = sizes
            .filter(|size| !size.body.is_empty() || size.ages.is_some())
            .map(|size| {
                let facts = self.facts_but(size, &["code", "label"]);
                let name = format!("{} {}", size.code, size.label);
                vec![Cell::plain(name.trim()), self.facts_cell(facts)]
            })
            .collect();
        if rows.is_empty() {
            return Vec::new();
        }
        let columns = vec![
            self.column(|t| t.say("chart-size"), 30.0),
            self.column(|t| t.field("body"), 0.0),
        ];
        vec![
            self.heading(|t| t.name(&crate::spec::Section::Sizes)),
            Block::Table(Table { columns, rows }),
        ]
    }
}
