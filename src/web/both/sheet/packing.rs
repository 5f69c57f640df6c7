//! How it is folded, bagged and boxed.

use serde::Serialize;

use super::{Fact, Head, Writer};
use crate::spec::document::RatioPack;
use crate::spec::{Item, Section};

#[derive(Serialize)]
pub struct Packing {
    pub facts: Vec<Fact>,
    /// In their order; the text is the name.
    pub steps: Vec<Head>,
    pub packs: Vec<PackRow>,
}

/// So many of each size in one pack.
#[derive(Serialize)]
pub struct PackRow {
    pub head: Head,
    /// Of every colourway where it is empty.
    pub colourway: String,
    /// One for each size.
    pub pieces: Vec<u32>,
    pub total: u64,
}

impl Packing {
    pub fn is_empty(&self) -> bool {
        self.facts.is_empty() && self.steps.is_empty() && self.packs.is_empty()
    }
}

impl Writer<'_> {
    pub(super) fn packing(&self) -> Packing {
        let spec = &self.frozen.spec;
        let steps = spec.packing.steps.iter();
        Packing {
            facts: self.facts(&spec.fields(Section::Packing)),
            steps: steps.map(|step| self.head(Item::Step(step))).collect(),
            packs: (spec.packing.ratio.iter())
                .map(|pack| self.pack(pack))
                .collect(),
        }
    }

    fn pack(&self, pack: &RatioPack) -> PackRow {
        let sizes = self.frozen.chart.sizes.iter();
        let pieces = sizes.map(|size| pack.pieces.get(size).copied().unwrap_or(0));
        let pieces: Vec<u32> = pieces.collect();
        let colourway = pack.colourway.as_ref();
        PackRow {
            head: self.head(Item::RatioPack(pack)),
            colourway: colourway.map(|id| self.words.item(id)).unwrap_or_default(),
            total: pieces.iter().map(|pieces| u64::from(*pieces)).sum(),
            pieces,
        }
    }
}
