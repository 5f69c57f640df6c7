//! The garment document: what a draft holds section by section and a revision freezes whole.
//!
//! Fields that a draft may still lack are `Option`s; the readiness checks say which must be there
//! before it can be published. What is absent is omitted from the canonical form.

use std::collections::BTreeMap;

use serde::{Deserialize, Serialize};

use super::id::{Digest, ItemId};
use super::units::{Entered, Unit};

/// The version of the document's shape. A reader upgrades older ones in memory only.
pub const FORMAT: u32 = 1;

/// One whole spec.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Spec {
    #[serde(default)]
    pub header: Header,
    #[serde(default)]
    pub sizes: Sizes,
    #[serde(default)]
    pub drawings: Drawings,
    #[serde(default)]
    pub points: Points,
    #[serde(default)]
    pub colourways: Colourways,
}

/// The parts of a spec that are saved, versioned and shown each by itself.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Section {
    Header,
    Sizes,
    Drawings,
    Points,
    Colourways,
}

impl Section {
    pub const ALL: [Section; 5] = [
        Section::Header,
        Section::Sizes,
        Section::Drawings,
        Section::Points,
        Section::Colourways,
    ];

    /// The name in addresses, in the database and in the canonical document.
    pub fn name(self) -> &'static str {
        match self {
            Section::Header => "header",
            Section::Sizes => "sizes",
            Section::Drawings => "drawings",
            Section::Points => "points",
            Section::Colourways => "colourways",
        }
    }

    pub fn from_name(name: &str) -> Option<Section> {
        Section::ALL
            .into_iter()
            .find(|section| section.name() == name)
    }
}

/// The title block's content.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct Header {
    /// The brand's style number.
    pub number: String,
    pub name: String,
    /// What it is, in the brand's words: joggers, half-zip, rain jacket.
    pub garment: String,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub wearer: Option<Wearer>,
    pub season: String,
    /// Where it will be sold: decides which checks apply.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub markets: Vec<Market>,
    /// Country of origin, in words.
    #[serde(skip_serializing_if = "String::is_empty")]
    pub origin: String,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub base_size: Option<ItemId>,
    /// The master unit. The other one is only ever shown as a reference.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub unit: Option<Unit>,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub measured: Option<MeasuringState>,
    #[serde(skip_serializing_if = "String::is_empty")]
    pub main_fabric: String,
    #[serde(skip_serializing_if = "String::is_empty")]
    pub contrast_fabric: String,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Wearer {
    Women,
    Men,
    Unisex,
    Children,
    Infants,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Market {
    Eu,
    Uk,
    Us,
    Other,
}

/// The state that every number of the spec holds for. Garments are measured flat and relaxed,
/// seam to seam, unless a point says otherwise.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case", deny_unknown_fields)]
pub enum MeasuringState {
    AsSewn,
    AfterFinish,
    AfterWashes(u8),
}

/// The sizes, smallest first.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct Sizes {
    pub sizes: Vec<Size>,
}

#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Size {
    pub id: ItemId,
    /// As on the label: `M`, `38`, `116`.
    pub code: String,
    /// Anything to add for the factory: `age 5-6`.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub label: String,
}

#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct Drawings {
    pub drawings: Vec<Drawing>,
}

#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Drawing {
    pub id: ItemId,
    pub view: View,
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub title: String,
    /// The original as it was uploaded.
    pub file: Digest,
    /// Size of the original in pixels, or in the user units of an SVG: gives the aspect.
    pub width: u32,
    pub height: u32,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub markers: Vec<Marker>,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum View {
    Front,
    Back,
    /// The wearer's left.
    Left,
    /// The wearer's right.
    Right,
    Detail,
}

/// A letter on a drawing.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Marker {
    pub id: ItemId,
    /// The point of measure or part whose letter it carries.
    pub item: ItemId,
    /// From the left, in ten-thousandths of the drawing's width (0 to 10 000).
    pub x: u16,
    /// From the top, in ten-thousandths of the drawing's height (0 to 10 000).
    pub y: u16,
}

#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct Points {
    pub points: Vec<Point>,
}

/// A point of measure: one dimension of the garment.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Point {
    pub id: ItemId,
    /// `A`, `B` ... `Z`, `AA`.
    pub letter: String,
    pub name: String,
    #[serde(default, skip_serializing_if = "HowToMeasure::is_empty")]
    pub how: HowToMeasure,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub basis: Option<Basis>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub direction: Option<Direction>,
    /// Key points make the short sizing sheet; all of them make the pattern sheet.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub key: bool,
    /// Out of tolerance here is never let pass without a concession.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub critical: bool,
    /// How much smaller than the chart it may be; written positive.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub minus: Option<Entered>,
    /// How much larger than the chart it may be; written positive.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub plus: Option<Entered>,
    /// The value at the base size.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub base: Option<Entered>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub grade: Option<Grade>,
    /// Each size is rounded once to a multiple of this.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub step: Option<Entered>,
}

#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct HowToMeasure {
    #[serde(skip_serializing_if = "String::is_empty")]
    pub start: String,
    #[serde(skip_serializing_if = "String::is_empty")]
    pub end: String,
    #[serde(skip_serializing_if = "Option::is_none")]
    pub path: Option<Path>,
    /// Relaxed unless this is set.
    #[serde(skip_serializing_if = "std::ops::Not::not")]
    pub stretched: bool,
    #[serde(skip_serializing_if = "String::is_empty")]
    pub note: String,
}

impl HowToMeasure {
    pub fn is_empty(&self) -> bool {
        *self == Self::default()
    }
}

#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Path {
    Straight,
    Curved,
}

/// What the numbers of a point count.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Basis {
    /// Laid flat, edge to edge: half of the way round.
    Half,
    /// All the way round.
    Full,
    /// A length that is not part of a way round.
    Linear,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Direction {
    Length,
    Width,
}

/// How a point's value goes from size to size.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case", deny_unknown_fields)]
pub enum Grade {
    /// The same in all sizes.
    Same {},
    /// Steps between neighbouring sizes; the segments cover every gap exactly once.
    Segments { segments: Vec<Segment> },
    /// A value for every size.
    Explicit { values: BTreeMap<ItemId, Entered> },
    /// Another point's unrounded value plus an offset, which may be negative.
    Derived { from: ItemId, offset: Entered },
}

/// From one size to a later one, each gap grows by `step` (may be negative).
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Segment {
    pub from: ItemId,
    pub to: ItemId,
    pub step: Entered,
}

#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct Colourways {
    pub parts: Vec<Part>,
    pub colourways: Vec<Colourway>,
    /// Colourway, then part. A cell that is not there is empty, which is not the same as `none`.
    #[serde(skip_serializing_if = "BTreeMap::is_empty")]
    pub cells: BTreeMap<ItemId, BTreeMap<ItemId, Cell>>,
}

impl Colourways {
    pub fn cell(&self, colourway: &ItemId, part: &ItemId) -> Option<&Cell> {
        self.cells.get(colourway)?.get(part)
    }
}

/// Anything that can have a colour of its own: main fabric, cuff, drawcord, slider, thread.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Part {
    pub id: ItemId,
    /// `P1`, `P2` ...
    pub letter: String,
    pub name: String,
}

#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Colourway {
    pub id: ItemId,
    pub code: String,
    pub name: String,
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
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Colour {
    pub name: String,
    /// Reference system and code, as typed.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub reference: String,
    /// `#rrggbb`: an approximation for screens, and always labelled so.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub screen: Option<String>,
}
