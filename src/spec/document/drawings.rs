//! Views, flats and blow-ups, with what is marked on them.
//!
//! Spots are in ten-thousandths of the drawing's width, from the left, and of its height, from the
//! top (0 to 10 000).

use serde::{Deserialize, Serialize};

use super::Identified;
use super::declare::{records, words};
use super::field::{Leaf, Shape, Value};
use crate::spec::id::{Digest, ItemId};

words! {
    View "view" {
        Front "front",
        Back "back",
        /// The wearer's left.
        Left "left",
        /// The wearer's right.
        Right "right",
        /// From an angle.
        Angle "angle",
        /// A part of it, larger.
        Detail "detail",
    }
}

records! {
    record Drawings {
        drawings: Vec<Drawing>,
    }
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
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub lines: Vec<DimensionLine>,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub blow_ups: Vec<BlowUp>,
}

super::declare::record!(Drawing { id: clone, }
    view: View,
    title: String,
    file: Digest,
    width: u32,
    height: u32,
    markers: Vec<Marker>,
    lines: Vec<DimensionLine>,
    blow_ups: Vec<BlowUp>,
);

/// A letter on a drawing.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Marker {
    pub id: ItemId,
    /// The point, part, callout, artwork or label whose letter it carries.
    pub item: ItemId,
    pub x: u16,
    pub y: u16,
}

/// A line with arrow heads between the two ends of what a point measures.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct DimensionLine {
    pub id: ItemId,
    /// The point that it measures.
    pub item: ItemId,
    pub from: Spot,
    pub to: Spot,
    /// Where a curved one is drawn to: the control point of a quadratic Bézier curve.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub via: Option<Spot>,
}

/// A circle on a drawing that another drawing shows larger.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct BlowUp {
    pub id: ItemId,
    /// The drawing that shows it larger.
    pub drawing: ItemId,
    pub at: Spot,
    /// In ten-thousandths of the width.
    pub radius: u16,
}

#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Spot {
    pub x: u16,
    pub y: u16,
}

super::declare::record!(Marker { id: clone, } item: ItemId, x: u16, y: u16,);
super::declare::record!(DimensionLine { id: clone, }
    item: ItemId,
    from: Spot,
    to: Spot,
    via: Option<Spot>,
);
super::declare::record!(BlowUp { id: clone, } drawing: ItemId, at: Spot, radius: u16,);

impl Leaf for Spot {
    fn shape() -> Shape {
        Shape::Group(vec![("x", Shape::Number), ("y", Shape::Number)])
    }

    fn value(&self) -> Option<Value> {
        let number = |part: u16| Value::Number(u64::from(part));
        Some(Value::Group(vec![
            ("x", number(self.x)),
            ("y", number(self.y)),
        ]))
    }
}

macro_rules! identified {
    ($($type:ty)*) => {$(
        impl Identified for $type {
            fn id(&self) -> &ItemId {
                &self.id
            }
        }

        impl Leaf for $type {
            fn shape() -> Shape {
                Shape::Own
            }

            fn value(&self) -> Option<Value> {
                None
            }
        }
    )*};
}

identified! { Drawing Marker DimensionLine BlowUp }
