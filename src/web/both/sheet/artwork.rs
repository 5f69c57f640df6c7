//! Artwork at its true size, where it goes, and its originals.

use serde::Serialize;

use super::colourways::PartRow;
use super::{Fact, Head, Writer};
use crate::spec::document::{Artwork, Band, Distance, Record};
use crate::spec::{Digest, Entered, Item, Unit};
use crate::web::plates::Bench;
use crate::web::plates::artwork::ArtworkPlate;

#[derive(Serialize)]
pub struct ArtworkCard {
    pub head: Head,
    pub file: Option<Original>,
    /// What is shown of it.
    #[serde(skip)]
    pub picture: Option<Picture>,
    pub facts: Vec<Fact>,
    pub bands: Vec<BandRow>,
    /// Its inks or threads: rows of the matrix.
    pub colours: Vec<PartRow>,
    /// The drawing that it is placed on: its id and title.
    pub drawing: Option<(String, String)>,
    pub note: String,
    /// Drawn to scale: says nothing more than the numbers do.
    #[serde(skip)]
    pub plate: ArtworkPlate,
}

/// A file to download. What it is called and what it is are known to the store.
#[derive(Serialize)]
pub struct Original {
    pub file: String,
    #[serde(skip)]
    pub name: String,
}

pub struct Picture {
    pub file: String,
    pub width: u32,
    pub height: u32,
}

/// Size and place in some sizes.
#[derive(Serialize)]
pub struct BandRow {
    /// `XS to L`; of all sizes where it is empty.
    pub sizes: String,
    /// In millimetres, as on paper.
    pub width: String,
    pub height: String,
    /// Both in the other system.
    pub reference: String,
    pub distances: Vec<String>,
}

impl Writer<'_> {
    pub(super) fn artworks(&self) -> Vec<ArtworkCard> {
        let artworks = self.frozen.spec.artwork.artworks.iter();
        let drawn = |bench: Bench<'_>| {
            let cards = artworks.map(|artwork| self.artwork(bench, artwork));
            cards.collect()
        };
        self.at_bench(drawn)
    }

    fn artwork(&self, bench: Bench<'_>, artwork: &Artwork) -> ArtworkCard {
        let mut fields = artwork.fields();
        let own = [
            "letter", "name", "file", "preview", "colours", "drawing", "bands", "note",
        ];
        self.take(&mut fields, &own);
        let parts = artwork.colours.iter().filter_map(|id| {
            let mut parts = self.frozen.spec.colourways.parts.iter();
            parts.find(|part| part.id == *id)
        });
        let drawing = artwork.drawing.as_ref().and_then(|id| self.drawing(id));
        let bands = &artwork.bands;
        ArtworkCard {
            head: self.head(Item::Artwork(artwork)),
            file: artwork.file.as_ref().map(|file| self.original(file)),
            picture: [&artwork.preview, &artwork.file]
                .into_iter()
                .flatten()
                .find_map(|file| self.picture(file)),
            facts: self.facts(&fields),
            bands: bands.iter().map(|band| self.band(band)).collect(),
            colours: parts.map(|part| self.part(part)).collect(),
            drawing: drawing.map(|it| (it.id.to_string(), self.drawing_title(it))),
            note: artwork.note.clone(),
            plate: ArtworkPlate::of(bench, artwork),
        }
    }

    pub(super) fn original(&self, file: &Digest) -> Original {
        let known = self.files.iter().find(|known| known.digest == *file);
        Original {
            file: file.to_string(),
            name: known.map(|known| known.name.clone()).unwrap_or_default(),
        }
    }

    /// Nothing where no picture was made of it.
    pub(super) fn picture(&self, file: &Digest) -> Option<Picture> {
        let known = self.files.iter().find(|known| known.digest == *file)?;
        known.pictured.then(|| Picture {
            file: file.to_string(),
            width: known.width,
            height: known.height,
        })
    }

    pub(super) fn distances(&self, distances: &[Distance]) -> Vec<String> {
        let distances = distances.iter();
        distances
            .filter_map(|it| self.phrase(it, "distances"))
            .collect()
    }

    fn band(&self, band: &Band) -> BandRow {
        let sign = self.frozen.decimal;
        let millimetres = |length: Option<Entered>| {
            let exact = |it: Entered| it.nm.exact(Unit::Mm, sign);
            length.map(exact).unwrap_or_default()
        };
        let inches = |length: Option<Entered>| {
            let text = |it: Entered| it.nm.show(Unit::Inch, Unit::Inch.fine_step(), sign);
            length.map(text).unwrap_or_default()
        };
        let sizes = match (&band.from, &band.to) {
            (None, None) => String::new(),
            (Some(only), None) | (None, Some(only)) => self.size_code(only),
            (Some(from), Some(to)) if from == to => self.size_code(from),
            (Some(from), Some(to)) => self
                .t
                .say("artwork-sizes")
                .with("from", self.size_code(from))
                .with("to", self.size_code(to))
                .to_string(),
        };
        BandRow {
            sizes,
            width: millimetres(band.width),
            height: millimetres(band.height),
            reference: format!("{} × {}", inches(band.width), inches(band.height)),
            distances: self.distances(&band.distances),
        }
    }
}
