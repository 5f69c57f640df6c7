//! Artwork at its true size, with a ruler that shows whether it was printed so.

use super::block::{Block, Cell, Page, Table, TrueSize, Words};
use super::writer::Writer;
use crate::spec::document::{Artwork, Band};
use crate::spec::{Item, Length, Unit};

/// Millimetres that a page has beside what stands on it at its true size: margins and title block,
/// and what is said above.
const ASIDE: (f64, f64) = (24.0, 92.0);

/// No higher, in millimetres, a picture stands on the page of what is said of it.
const BESIDE_WORDS: f64 = 50.0;

impl Writer<'_> {
    pub(super) fn artwork(&self) -> Vec<Page> {
        let artworks = self.spec.artwork.artworks.iter();
        artworks.flat_map(|it| self.of_artwork(it)).collect()
    }

    fn of_artwork(&self, artwork: &Artwork) -> Vec<Page> {
        let mut about = vec![self.item_heading(Item::Artwork(artwork))];
        let aside = [
            "letter", "name", "file", "preview", "colours", "bands", "drawing",
        ];
        about.push(Block::Facts {
            facts: self.facts_but(artwork, &aside),
            columns: 3,
        });
        about.extend(self.bands(artwork));
        let mut pages = Vec::new();
        for band in &artwork.bands {
            let (Some(width), Some(height)) = (band.width, band.height) else {
                continue;
            };
            let (width, height) = (millimetres(width.nm), millimetres(height.nm));
            // What is said of it and a large picture do not go on one page.
            if height > BESIDE_WORDS && !about.is_empty() {
                pages.push(Page::of(std::mem::take(&mut about)));
            }
            let mut blocks = std::mem::take(&mut about);
            blocks.push(Block::Ruler {
                text: self.each(|t| t.say("paper-true-size")),
            });
            let (paper_width, paper_height) = self.parcel.order.paper.size();
            let (beside, above) = ASIDE;
            let needed = (width + beside, height + above);
            let larger = needed.0 > paper_width || needed.1 > paper_height;
            let size = larger.then_some((needed.0.max(paper_width), needed.1.max(paper_height)));
            if let Some((wide, high)) = size {
                let strong = true;
                let text = self.each(|t| {
                    t.say("paper-larger")
                        .with("width", format!("{wide:.0}"))
                        .with("height", format!("{high:.0}"))
                });
                blocks.push(Block::Note { text, strong });
            }
            let sizes = self.band_sizes(band);
            let file = [&artwork.preview, &artwork.file];
            let mut files = file.into_iter().flatten();
            blocks.push(Block::True(TrueSize {
                picture: files.find_map(|file| self.picture_of(file)),
                alt: format!("{} {}", artwork.letter, artwork.name),
                width,
                height,
                caption: self.each(|t| {
                    let size = t
                        .say("artwork-true-size")
                        .with("width", self.exact_millimetres(band.width.map(|it| it.nm)))
                        .with(
                            "height",
                            self.exact_millimetres(band.height.map(|it| it.nm)),
                        );
                    format!("{} {} · {size} · {}", artwork.letter, artwork.name, sizes.a)
                }),
            }));
            pages.push(Page { size, blocks });
        }
        if !about.is_empty() {
            pages.push(Page::of(about));
        }
        pages
    }

    /// The sizes that a band holds for.
    pub(super) fn band_sizes(&self, band: &Band) -> Words {
        self.each(|t| match (&band.from, &band.to) {
            (None, None) => t.say("artwork-all-sizes").to_string(),
            (Some(only), None) | (None, Some(only)) => self.size_code(only),
            (Some(from), Some(to)) if from == to => self.size_code(from),
            (Some(from), Some(to)) => t
                .say("artwork-sizes")
                .with("from", self.size_code(from))
                .with("to", self.size_code(to))
                .to_string(),
        })
    }

    fn exact_millimetres(&self, length: Option<Length>) -> String {
        let sign = self.edition.decimal;
        length.map_or(String::new(), |it| it.exact(Unit::Mm, sign))
    }

    fn bands(&self, artwork: &Artwork) -> Vec<Block> {
        let mut blocks = Vec::new();
        if !artwork.bands.is_empty() {
            let columns = vec![
                self.column(|t| t.say("chart-size"), 40.0),
                self.column(|t| t.field("bands"), 60.0),
                self.column(|t| t.field("distances"), 0.0),
            ];
            let rows = artwork.bands.iter().map(|band| {
                let nm = |it: Option<crate::spec::Entered>| it.map(|it| it.nm);
                let size = self.each(|t| {
                    t.say("artwork-true-size")
                        .with("width", self.exact_millimetres(nm(band.width)))
                        .with("height", self.exact_millimetres(nm(band.height)))
                });
                let distances = band.distances.iter();
                let place = Cell {
                    small: distances.map(|it| self.distance(it)).collect(),
                    ..Cell::default()
                };
                vec![Cell::of(self.band_sizes(band)), Cell::of(size), place]
            });
            blocks.push(Block::Table(Table {
                rows: rows.collect(),
                columns,
            }));
        }
        let colourways = &self.spec.colourways;
        let parts = colourways.parts.iter();
        let parts = parts.filter(|part| artwork.colours.contains(&part.id));
        let rows: Vec<Vec<Cell>> = parts
            .map(|part| {
                let mut cells = vec![self.item_cell(Item::Part(part))];
                let of = colourways.colourways.iter().take(5);
                cells.extend(of.map(|it| self.colour_cell(&it.id, &part.id)));
                cells
            })
            .collect();
        if !rows.is_empty() {
            let mut columns = vec![self.column(|t| t.field("colours"), 58.0)];
            columns.extend(colourways.colourways.iter().take(5).map(|it| {
                let name = format!("{} {}", it.code, it.name);
                super::block::Column::of(self.named(name.trim()), 0.0)
            }));
            blocks.push(Block::Table(Table { columns, rows }));
        }
        blocks
    }
}

fn millimetres(length: Length) -> f64 {
    length.as_nm() as f64 / 1_000_000.0
}
