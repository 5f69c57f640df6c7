//! Parts and colourways: the matrix of what has which colour.

use std::collections::BTreeMap;

use serde::{Deserialize, Serialize};

use super::declare::{records, words};
use crate::spec::decimal::Decimal;
use crate::spec::id::{Digest, ItemId};

words! {
    /// The light that a colour was measured under (ISO/CIE 11664-2).
    Illuminant "illuminant" {
        D50 "d50",
        D65 "d65",
        A "a",
        F11 "f11",
    }

    /// The standard observer (ISO/CIE 11664-1).
    Observer "observer" {
        Two "2",
        Ten "10",
    }

    /// Where a colour stands on its way to bulk.
    Approval "approval" {
        Asked "asked",
        Submitted "submitted",
        Approved "approved",
        Rejected "rejected",
    }
}

records! {
    record Colourways {
        parts: Vec<Part>,
        colourways: Vec<Colourway>,
        /// Colourway, then part. A cell that is not there is empty, which is not the same as
        /// `none`.
        cells: BTreeMap<ItemId, BTreeMap<ItemId, Cell>>,
    }

    /// Anything that can have a colour of its own: main fabric, cuff, drawcord, slider, thread,
    /// one ink of a print.
    item Part {
        /// `P1`, `P2` ...
        letter: String,
        name: String,
    }

    item Colourway {
        code: String,
        name: String,
        /// A number of its own, where the brand's scheme gives one.
        number: String,
        /// How many are thought of, before there is an order.
        pieces: Option<u32>,
    }
}

impl Colourways {
    pub fn cell(&self, colourway: &ItemId, part: &ItemId) -> Option<&Cell> {
        self.cells.get(colourway)?.get(part)
    }

    /// What a part is in a colourway once *dyed to match* is followed, with the part where that ends.
    /// Nothing where a cell is empty or the matches lead round in a circle.
    pub fn settled<'a>(
        &'a self,
        colourway: &ItemId,
        part: &'a ItemId,
    ) -> Option<(&'a ItemId, &'a Cell)> {
        let mut part = part;
        // In as many steps as there are parts it has either ended or gone round.
        for _ in 0..=self.parts.len() {
            match self.cell(colourway, part)? {
                Cell::DyedToMatch { part: target } => part = target,
                cell => return Some((part, cell)),
            }
        }
        None
    }
}

/// What one part is in one colourway.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case", deny_unknown_fields)]
pub enum Cell {
    /// This colourway does without the part.
    None {},
    /// Left undyed.
    Natural {},
    /// Dyed to match another part of the same colourway.
    DyedToMatch {
        part: ItemId,
    },
    Colour(Colour),
}

/// A colour by the brand's own reference. The program ships no colour library.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Colour {
    pub name: String,
    /// Reference system and code, as typed.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub reference: String,
    /// What it is dyed or printed on: the same reference looks another on another substrate.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub substrate: String,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub lab: Option<Lab>,
    /// `#rrggbb`: an approximation for screens, and always labelled so. Computed from L*a*b* where
    /// there is one.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub screen: Option<String>,
    /// A photograph of it as dyed.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub photo: Option<Digest>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub approval: Option<Approval>,
}

impl Colour {
    /// Whether it is meant to be the same colour as another one. Names are spelled this way and that:
    /// a reference decides where either has one. A colour without both is like no other.
    pub fn is_meant_as(&self, other: &Colour) -> bool {
        let normal = |text: &str| text.trim().to_lowercase();
        let of = |it: &Colour| (normal(&it.reference), normal(&it.name));
        match (of(self), of(other)) {
            ((one, name), (other, other_name)) if one.is_empty() && other.is_empty() => {
                !name.is_empty() && name == other_name
            }
            ((one, _), (other, _)) => one == other,
        }
    }
}

/// CIE 1976 L*a*b* with the conditions that it was measured under.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Lab {
    pub l: Decimal,
    pub a: Decimal,
    pub b: Decimal,
    pub illuminant: Illuminant,
    pub observer: Observer,
}
