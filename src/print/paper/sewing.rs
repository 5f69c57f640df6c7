//! For who sews: callouts, what is drawn larger, seams and lines, and where things are placed.

use super::block::{Block, Cell, Page, Table, Words};
use super::cutting::take;
use super::writer::Writer;
use crate::spec::document::{Distance, Record};
use crate::spec::{Item, Section};

impl Writer<'_> {
    pub(super) fn sewing(&self) -> Vec<Page> {
        let construction = &self.spec.construction;
        let mut blocks = Vec::new();
        if !construction.callouts.is_empty() {
            let columns = vec![
                self.column(|t| t.say("construction-callout"), 0.0),
                self.column(|t| t.say("construction-stitch"), 62.0),
                self.column(|t| t.say("construction-measures"), 62.0),
                self.column(|t| t.say("construction-with"), 52.0),
            ];
            let rows = construction.callouts.iter().map(|callout| {
                let mut fields = callout.fields();
                take(&mut fields, &["letter", "place", "text"]);
                let stitch = take(&mut fields, &["stitch", "seam", "seam_code", "density"]);
                let with = take(
                    &mut fields,
                    &["thread", "tape", "bartacks", "bartack_length"],
                );
                let place = take(&mut fields, &["part", "line", "detail"]);
                let mut first = self.item_cell(Item::Callout(callout));
                if !callout.text.is_empty() {
                    first.small.push(self.named(&callout.text));
                }
                first
                    .small
                    .extend(self.facts_cell(self.facts(&place)).small);
                vec![
                    first,
                    self.facts_cell(self.facts(&stitch)),
                    // Last: all that nothing else has taken.
                    self.facts_cell(self.facts(&fields)),
                    self.facts_cell(self.facts(&with)),
                ]
            });
            blocks.push(self.heading(|t| t.name(&Section::Construction)));
            blocks.push(Block::Table(Table {
                rows: rows.collect(),
                columns,
            }));
        }
        blocks.extend(self.placements());
        if !construction.lines.is_empty() {
            blocks.push(self.heading(|t| t.say("construction-lines")));
            let items = construction.lines.iter().map(|line| {
                let kind = line.kind;
                self.each(|t| match kind {
                    Some(kind) => format!("{} ({})", line.name, t.name(&kind)),
                    None => line.name.clone(),
                })
            });
            blocks.push(Block::List {
                items: items.collect(),
            });
        }
        let mut pages = Vec::new();
        if !blocks.is_empty() {
            pages.push(Page::of(blocks));
        }
        let larger = self.blow_ups();
        if !larger.is_empty() {
            pages.push(Page::of(larger));
        }
        pages
    }

    /// Where artwork and labels go, by their distances.
    fn placements(&self) -> Vec<Block> {
        let artworks = self.spec.artwork.artworks.iter().flat_map(|artwork| {
            let bands = artwork.bands.iter();
            bands.map(move |band| {
                let sizes = self.band_sizes(band);
                (Item::Artwork(artwork), sizes, band.distances.as_slice())
            })
        });
        let labels = self.spec.labels.labels.iter().map(|label| {
            let sizes = Words::default();
            (Item::Label(label), sizes, label.distances.as_slice())
        });
        let rows: Vec<Vec<Cell>> = artworks
            .chain(labels)
            .filter(|(.., distances)| !distances.is_empty())
            .map(|(item, sizes, distances)| {
                let place = Cell {
                    small: distances.iter().map(|it| self.distance(it)).collect(),
                    ..Cell::default()
                };
                vec![self.item_cell(item), Cell::of(sizes), place]
            })
            .collect();
        if rows.is_empty() {
            return Vec::new();
        }
        let columns = vec![
            self.column(|t| t.say("artwork-placed"), 80.0),
            self.column(|t| t.say("chart-size"), 40.0),
            self.column(|t| t.field("distances"), 0.0),
        ];
        vec![
            self.heading(|t| t.say("plates-placement")),
            Block::Table(Table { columns, rows }),
        ]
    }

    pub(super) fn distance(&self, distance: &Distance) -> Words {
        use crate::spec::document::Leaf;

        let value = distance.value();
        self.each(|t| {
            let words = t.words(self.spec, self.edition.decimal);
            let said = value.as_ref();
            said.map(|value| words.value(value, Some("distances")))
                .unwrap_or_default()
        })
    }
}
