//! Points of measure: every dimension of the garment.

use std::collections::BTreeMap;

use serde::{Deserialize, Serialize};

use super::declare::{records, words};
use crate::spec::id::ItemId;
use crate::spec::units::Entered;

words! {
    Path "path" {
        Straight "straight",
        Curved "curved",
    }

    /// How an opening lies while it is measured.
    Closure "closure" {
        Closed "closed",
        Open "open",
    }

    /// The wearer's.
    BodySide "side" {
        Left "left",
        Right "right",
        Both "both",
    }

    /// What the numbers of a point count.
    Basis "basis" {
        /// Laid flat, edge to edge: half of the way round.
        Half "half",
        /// All the way round.
        Full "full",
        /// A length that is not part of a way round.
        Linear "linear",
    }

    Direction "direction" {
        Length "length",
        Width "width",
    }

    /// What a point is in the trade's words, where it has one: it lets relations be checked, and
    /// names be shown in the reader's language.
    Measure "measure" {
        BodyLength "body_length",
        ShoulderWidth "shoulder_width",
        /// Of one shoulder, along its seam.
        ShoulderLength "shoulder_length",
        AcrossFront "across_front",
        AcrossBack "across_back",
        Chest "chest",
        Waist "waist",
        /// The waist, pulled to its full width.
        WaistStretched "waist_stretched",
        Hip "hip",
        /// Of a top, around its lower edge.
        Hem "hem",
        HemHeight "hem_height",
        SleeveLength "sleeve_length",
        UpperArm "upper_arm",
        Elbow "elbow",
        Armhole "armhole",
        /// From the underarm to the hem.
        SideSeam "side_seam",
        /// From the underarm to the cuff.
        UnderarmSeam "underarm_seam",
        Cuff "cuff",
        CuffStretched "cuff_stretched",
        CuffHeight "cuff_height",
        /// From neck seam to neck seam, straight across.
        NeckWidth "neck_width",
        NeckOpening "neck_opening",
        NeckStretched "neck_stretched",
        NeckDropFront "neck_drop_front",
        NeckDropBack "neck_drop_back",
        CollarHeight "collar_height",
        HoodHeight "hood_height",
        HoodWidth "hood_width",
        HoodOpening "hood_opening",
        FrontOpening "front_opening",
        ZipLength "zip_length",
        FrontRise "front_rise",
        BackRise "back_rise",
        Inseam "inseam",
        Outseam "outseam",
        Thigh "thigh",
        Knee "knee",
        LegOpening "leg_opening",
        WaistbandHeight "waistband_height",
        PocketOpening "pocket_opening",
        PocketWidth "pocket_width",
        PocketDepth "pocket_depth",
        /// From a pocket to a seam or edge.
        PocketPlace "pocket_place",
        Gusset "gusset",
        Vent "vent",
        YokeHeight "yoke_height",
        SkirtLength "skirt_length",
    }
}

records! {
    record Points {
        points: Vec<Point>,
    }

    item Point {
        /// `A`, `B` ... `Z`, `AA`.
        letter: String,
        name: String,
        measure: Option<Measure>,
        how: HowToMeasure,
        basis: Option<Basis>,
        direction: Option<Direction>,
        /// The part that it is measured on.
        part: Option<ItemId>,
        /// The pattern piece, in words: back yoke, upper sleeve.
        panel: String,
        /// Key points make the short sizing sheet; all of them make the pattern sheet.
        key: bool,
        /// Out of tolerance here is never let pass without a concession.
        critical: bool,
        /// How much smaller than the chart it may be; written positive.
        minus: Option<Entered>,
        /// How much larger than the chart it may be; written positive.
        plus: Option<Entered>,
        /// Where the tolerance of a size differs.
        tolerances: BTreeMap<ItemId, Tolerance>,
        /// It is there left and right: how much the two may differ.
        pair_limit: Option<Entered>,
        /// What it must reach at the base size when stretched; it grades as the point does.
        stretched_min: Option<Entered>,
        /// Each size is rounded once to a multiple of this.
        step: Option<Entered>,
        /// What each value of the second axis adds, for points that it changes.
        lengths: BTreeMap<ItemId, Entered>,
        /// The value at the base size.
        base: Option<Entered>,
        grade: Option<Grade>,
    }

    record HowToMeasure {
        start: String,
        end: String,
        path: Option<Path>,
        /// Relaxed unless this is set.
        stretched: bool,
        closure: Option<Closure>,
        side: Option<BodySide>,
        note: String,
    }

    /// Written positive, both.
    group Tolerance {
        minus: Option<Entered>,
        plus: Option<Entered>,
    }
}

impl HowToMeasure {
    pub fn is_empty(&self) -> bool {
        *self == Self::default()
    }
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
