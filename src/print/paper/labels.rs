//! Labels, care and packing.

use super::block::{Block, Cell, Page, Table, Words};
use super::writer::Writer;
use crate::spec::{Item, Section};

impl Writer<'_> {
    pub(super) fn labels(&self) -> Vec<Page> {
        let mut pages = Vec::new();
        let labels = &self.spec.labels;
        let mut blocks = Vec::new();
        let care = self.facts(&self.spec.fields(Section::Labels));
        if !care.is_empty() {
            blocks.push(self.heading(|t| t.say("labels-care")));
            blocks.push(Block::Facts {
                facts: care,
                columns: 3,
            });
        }
        blocks.extend(self.compositions());
        if !labels.labels.is_empty() {
            blocks.push(self.heading(|t| t.name(&Section::Labels)));
            let columns = vec![
                self.column(|t| t.field("label"), 62.0),
                self.column(|t| t.say("materials-what"), 0.0),
                self.column(|t| t.field("texts"), 100.0),
            ];
            let rows = labels.labels.iter().map(|label| {
                let texts = label.texts.iter().map(|text| {
                    let market = text.market;
                    self.each(|t| {
                        let market = market.map(|it| t.name(&it).to_string());
                        let of: Vec<String> = market
                            .into_iter()
                            .chain([text.language.clone()])
                            .filter(|it| !it.is_empty())
                            .collect();
                        format!("{}: {}", of.join(" "), text.text)
                    })
                });
                let texts = Cell {
                    small: texts.collect(),
                    ..Cell::default()
                };
                let aside = ["letter", "name", "texts", "artwork"];
                vec![
                    self.item_cell(Item::Label(label)),
                    self.facts_cell(self.facts_but(label, &aside)),
                    texts,
                ]
            });
            blocks.push(Block::Table(Table {
                rows: rows.collect(),
                columns,
            }));
        }
        if !blocks.is_empty() {
            pages.push(Page::of(blocks));
        }
        let packing = self.packing();
        if !packing.is_empty() {
            pages.push(Page::of(packing));
        }
        pages
    }

    /// As they were frozen.
    fn compositions(&self) -> Vec<Block> {
        let frozen = self.edition.frozen.as_ref();
        let texts = frozen.map_or(&[][..], |it| &it.compositions);
        if texts.is_empty() {
            return Vec::new();
        }
        let columns = vec![
            self.column(|t| t.field("market"), 40.0),
            self.column(|t| t.field("language"), 30.0),
            self.column(|t| t.field("composition"), 0.0),
        ];
        let rows = texts.iter().map(|text| {
            vec![
                Cell::of(self.each(|t| t.name(&text.market))),
                Cell::plain(&text.language),
                Cell::plain(text.text.replace('\n', " · ")),
            ]
        });
        vec![
            self.heading(|t| t.say("composition-title")),
            self.note(|t| t.say("composition-draft")),
            Block::Table(Table {
                rows: rows.collect(),
                columns,
            }),
        ]
    }

    fn packing(&self) -> Vec<Block> {
        let packing = &self.spec.packing;
        let facts = self.facts(&self.spec.fields(Section::Packing));
        let mut blocks = Vec::new();
        if !facts.is_empty() {
            let columns = 2;
            blocks.push(Block::Facts { facts, columns });
        }
        if !packing.steps.is_empty() {
            blocks.push(self.heading(|t| t.say("packing-steps")));
            let steps = packing.steps.iter().map(|step| Words::plain(&step.text));
            blocks.push(Block::List {
                items: steps.collect(),
            });
        }
        if !packing.ratio.is_empty() {
            let sizes: Vec<_> = self.spec.sizes.sizes.iter().map(|it| &it.id).collect();
            let mut columns = vec![
                self.column(|t| t.say("packing-pack"), 0.0),
                self.column(|t| t.field("colourway"), 50.0),
            ];
            for size in &sizes {
                let code = Words::plain(self.size_code(size));
                columns.push(super::block::Column::of(code, 15.0).right());
            }
            columns.push(self.column(|t| t.say("packing-total"), 20.0).right());
            let rows = packing.ratio.iter().map(|pack| {
                let colourway = self.each(|t| match &pack.colourway {
                    Some(id) => t.words(self.spec, self.edition.decimal).item(id),
                    None => t.say("packing-every-colourway").to_string(),
                });
                let pieces = sizes
                    .iter()
                    .map(|id| pack.pieces.get(*id).copied().unwrap_or(0));
                let pieces: Vec<u32> = pieces.collect();
                let total: u64 = pieces.iter().map(|it| u64::from(*it)).sum();
                let mut cells = vec![self.item_cell(Item::RatioPack(pack)), Cell::of(colourway)];
                cells.extend(pieces.iter().map(|it| Cell::plain(it.to_string())));
                cells.push(Cell::plain(total.to_string()));
                cells
            });
            blocks.push(self.heading(|t| t.say("packing-packs")));
            blocks.push(Block::Table(Table {
                rows: rows.collect(),
                columns,
            }));
        }
        if !blocks.is_empty() {
            blocks.insert(0, self.heading(|t| t.name(&Section::Packing)));
        }
        blocks
    }
}
