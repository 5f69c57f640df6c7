//! For who measures: the key points with their tolerances, and room to write beside each value.

use super::block::{Block, Cell, Column, Page, Table, Words};
use super::writer::Writer;
use crate::spec::{Item, ItemId};

/// So many sizes stand side by side at most, each with a column to write in.
const ABREAST: usize = 5;

impl Writer<'_> {
    pub(super) fn inspection(&self) -> Vec<Page> {
        let Some(chart) = &self.edition.chart else {
            let text = self.each(|t| t.say("paper-no-chart"));
            return vec![Page::of(vec![Block::Note { text, strong: true }])];
        };
        // Six are three and three, not five and one.
        let pages = chart.sizes.len().div_ceil(ABREAST).max(1);
        let abreast = chart.sizes.len().div_ceil(pages).max(1);
        let pages = chart.sizes.chunks(abreast);
        pages
            .map(|sizes| Page::of(self.to_fill_in(sizes)))
            .collect()
    }

    fn to_fill_in(&self, sizes: &[ItemId]) -> Vec<Block> {
        let Some(chart) = &self.edition.chart else {
            return Vec::new();
        };
        let points = &self.spec.points.points;
        // Where no point is marked as key, all are.
        let any = points.iter().any(|point| point.key || point.critical);
        let wanted = points
            .iter()
            .filter(|point| !any || point.key || point.critical);
        let mut columns = vec![
            self.column(|t| t.say("chart-point"), 0.0),
            self.column(|t| t.say("chart-tolerance"), 27.0).right(),
        ];
        for column in self.size_columns(sizes, 17.0) {
            columns.push(column);
            columns.push(self.column(|t| t.say("paper-found"), 19.0));
        }
        let rows = wanted.filter_map(|point| {
            let row = chart.row(&point.id)?;
            let mut first = self.item_cell(Item::Point(point));
            first.strong = point.critical;
            let mut small = self.each(|t| {
                let basis = point.basis.map(|it| t.name(&it).to_string());
                let critical = point.critical.then(|| t.field("critical").to_string());
                let all: Vec<String> = basis.into_iter().chain(critical).collect();
                all.join(" · ")
            });
            if !small.is_empty() {
                first.small.push(std::mem::take(&mut small));
            }
            let tolerance = format!("−{} +{}", self.exact(row.minus), self.exact(row.plus));
            let mut cells = vec![first, Cell::plain(tolerance)];
            for size in sizes {
                let at = chart.sizes.iter().position(|it| it == size)?;
                let mut cell = Cell::plain(self.length(*row.values.get(at)?, row.step));
                if let Some(allowed) = row.tolerances.get(size) {
                    cell.small.push(Words::plain(format!(
                        "−{} +{}",
                        self.exact(allowed.minus),
                        self.exact(allowed.plus)
                    )));
                }
                cells.push(cell);
                cells.push(Cell::default());
            }
            Some(cells)
        });
        let rows = rows.collect();
        let blank = |head: Words| Column::of(head, 0.0);
        let about = Table {
            columns: vec![
                blank(self.each(|t| t.say("paper-inspector"))),
                blank(self.each(|t| t.say("paper-day"))),
                blank(self.each(|t| t.say("paper-pieces"))),
                blank(self.each(|t| t.say("paper-stage"))),
            ],
            rows: vec![vec![
                Cell::default(),
                Cell::default(),
                Cell::default(),
                Cell::default(),
            ]],
        };
        vec![
            Block::Table(about),
            self.note(|t| t.say("paper-how-to-fill")),
            Block::Table(Table { columns, rows }),
        ]
    }
}
