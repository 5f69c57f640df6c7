//! The matrix of parts and colourways.

use serde::Serialize;

use super::{Head, Writer};
use crate::spec::document::{Cell, Part};
use crate::spec::{Item, ItemId};
use crate::web::both::patch::{Patch, patch};

#[derive(Serialize)]
pub struct ColourwayHead {
    pub head: Head,
    /// A number of its own; may be empty.
    pub number: String,
    /// How many are planned.
    pub pieces: Option<u32>,
}

#[derive(Serialize)]
pub struct PartRow {
    pub head: Head,
    /// One for each colourway.
    pub cells: Vec<PartCell>,
}

/// A part in one colourway.
#[derive(Serialize)]
pub struct PartCell {
    /// `None`: empty, which is not *none*.
    pub patch: Option<Patch>,
    /// What else is said of the colour.
    pub more: Vec<String>,
    /// A photograph of it as dyed.
    pub photo: Option<String>,
    /// What it was in the revision that was acknowledged, if that was something else.
    #[serde(skip)]
    pub old: Option<String>,
}

impl ColourwayHead {
    pub fn called(&self) -> String {
        let called = format!("{} {}", self.head.letter, self.head.name);
        called.trim().to_owned()
    }
}

impl Writer<'_> {
    pub(super) fn colourways(&self) -> Vec<ColourwayHead> {
        let colourways = self.frozen.spec.colourways.colourways.iter();
        let heads = colourways.map(|colourway| ColourwayHead {
            head: self.head(Item::Colourway(colourway)),
            number: colourway.number.clone(),
            pieces: colourway.pieces,
        });
        heads.collect()
    }

    pub(super) fn parts(&self) -> Vec<PartRow> {
        let parts = self.frozen.spec.colourways.parts.iter();
        parts.map(|part| self.part(part)).collect()
    }

    pub(super) fn part(&self, part: &Part) -> PartRow {
        let colourways = self.frozen.spec.colourways.colourways.iter();
        PartRow {
            head: self.head(Item::Part(part)),
            cells: colourways.map(|it| self.cell(&it.id, &part.id)).collect(),
        }
    }

    fn cell(&self, colourway: &ItemId, part: &ItemId) -> PartCell {
        let matrix = &self.frozen.spec.colourways;
        let old = self.old.and_then(|old| {
            let was_there = self.known.contains(part) && self.known.contains(colourway);
            let before = old.spec.colourways.cell(colourway, part);
            let differs = before != matrix.cell(colourway, part);
            let words = self.t.words(&old.spec, old.decimal);
            (was_there && differs).then(|| words.cell(before))
        });
        let colour = match matrix.cell(colourway, part) {
            Some(Cell::Colour(colour)) => Some(colour),
            _ => None,
        };
        PartCell {
            patch: patch(self.t, matrix, colourway, part),
            more: colour.map(|it| self.words.colour(it)).unwrap_or_default(),
            photo: colour.and_then(|it| it.photo.as_ref().map(ToString::to_string)),
            old,
        }
    }
}
