//! For who buys and cuts: materials, and the matrix of parts and colourways.

use super::block::{Block, Cell, Page, Patch, Table, Words};
use super::writer::Writer;
use crate::spec::colour::shown;
use crate::spec::document::{Cell as Made, Colour, Fields, Record};
use crate::spec::{Item, ItemId, Section};

/// So many colourways stand side by side.
const ABREAST: usize = 5;

impl Writer<'_> {
    pub(super) fn cutting(&self) -> Vec<Page> {
        let mut pages = Vec::new();
        let materials = &self.spec.materials.materials;
        if !materials.is_empty() {
            let columns = vec![
                self.column(|t| t.say("materials-material"), 58.0),
                self.column(|t| t.say("materials-what"), 0.0),
                self.column(|t| t.say("materials-length"), 70.0),
                self.column(|t| t.say("materials-supply"), 62.0),
            ];
            let rows = materials.iter().map(|material| {
                let item = Item::Material(material);
                let mut fields = material.fields();
                let mut first = self.item_cell(item);
                let place = take(&mut fields, &["kind", "parts", "placement"]);
                first.small = self.facts_cell(self.facts(&place)).small;
                take(&mut fields, &["letter", "name"]);
                let length = take(
                    &mut fields,
                    &[
                        "size",
                        "length",
                        "length_by_size",
                        "consumption.",
                        "wastage",
                    ],
                );
                let supply = take(
                    &mut fields,
                    &[
                        "supplier",
                        "reference",
                        "nominated",
                        "substitute",
                        "minimum",
                        "pack",
                        "lead_days",
                        "evidence",
                    ],
                );
                vec![
                    first,
                    // Last: all that nothing else has taken.
                    self.facts_cell(self.facts(&fields)),
                    self.facts_cell(self.facts(&length)),
                    self.facts_cell(self.facts(&supply)),
                ]
            });
            pages.push(Page::of(vec![
                self.heading(|t| t.name(&Section::Materials)),
                Block::Table(Table {
                    rows: rows.collect(),
                    columns,
                }),
            ]));
        }
        let matrix = self.matrix();
        if !matrix.is_empty() {
            let mut blocks = vec![self.heading(|t| t.name(&Section::Colourways))];
            blocks.extend(matrix);
            pages.push(Page::of(blocks));
        }
        pages
    }

    /// Parts by colourways, with their patches.
    pub(super) fn matrix(&self) -> Vec<Block> {
        let colourways = &self.spec.colourways;
        if colourways.parts.is_empty() || colourways.colourways.is_empty() {
            return Vec::new();
        }
        let mut blocks = Vec::new();
        for abreast in colourways.colourways.chunks(ABREAST) {
            let mut columns = vec![self.column(|t| t.say("parts-part"), 58.0)];
            columns.extend(abreast.iter().map(|colourway| {
                let name = format!("{} {}", colourway.code, colourway.name);
                let name = [name.trim(), colourway.number.as_str()].join(" ");
                super::block::Column::of(self.named(name.trim()), 0.0)
            }));
            let rows = colourways.parts.iter().map(|part| {
                let mut cells = vec![self.item_cell(Item::Part(part))];
                let of = abreast.iter().map(|colourway| &colourway.id);
                cells.extend(of.map(|colourway| self.colour_cell(colourway, &part.id)));
                cells
            });
            blocks.push(Block::Table(Table {
                rows: rows.collect(),
                columns,
            }));
        }
        blocks.push(self.note(|t| t.say("parts-approximate")));
        blocks
    }

    pub(super) fn colour_cell(&self, colourway: &ItemId, part: &ItemId) -> Cell {
        let matrix = &self.spec.colourways;
        let made = matrix.cell(colourway, part);
        let old = self.before.and_then(|old| {
            let before = old.spec.colourways.cell(colourway, part);
            let was_there = old.spec.item(colourway).is_some() && old.spec.item(part).is_some();
            let words = self.texts[0].words(&old.spec, old.decimal);
            (was_there && before != made).then(|| words.cell(before))
        });
        let screen = |colour: &Colour| Some(shown(colour)?.screen.to_string());
        let patch = made.map(|made| Patch {
            none: matches!(made, Made::None {}),
            fill: match made {
                Made::Colour(colour) => screen(colour),
                Made::DyedToMatch { part } => match matrix.settled(colourway, part) {
                    Some((_, Made::Colour(colour))) => screen(colour),
                    _ => None,
                },
                _ => None,
            },
        });
        let (text, small) = match made {
            Some(Made::Colour(colour)) => {
                let mut small = vec![Words::plain(&colour.reference)];
                small.push(self.each(|t| {
                    let words = t.words(self.spec, self.edition.decimal);
                    words.colour(colour).join(" · ")
                }));
                small.retain(|it| !it.is_empty());
                (self.named(&colour.name), small)
            }
            other => {
                let said = self.each(|t| t.words(self.spec, self.edition.decimal).cell(other));
                (said, Vec::new())
            }
        };
        Cell {
            text,
            small,
            changed: old.is_some(),
            old,
            patch,
            ..Cell::default()
        }
    }
}

/// Takes fields out by their names; a name that ends with a dot is a nested record's.
pub(super) fn take(fields: &mut Fields, names: &[&str]) -> Fields {
    let wanted = |name: &str| {
        names.iter().any(|it| match it.strip_suffix('.') {
            Some(record) => name.split('.').next() == Some(record),
            None => *it == name,
        })
    };
    fields.extract_if(.., |(name, _)| wanted(name)).collect()
}
