//! Labels that are sewn in: brand, care and composition, size, origin.

use super::artwork::Distance;
use super::care::Care;
use super::declare::{records, words};
use super::header::Market;
use crate::spec::id::{Digest, ItemId};
use crate::spec::units::Entered;

words! {
    LabelKind "label" {
        Brand "brand",
        CareComposition "care_composition",
        SizeLoop "size_loop",
        Origin "origin",
        Warning "warning",
        Other "other",
    }

    LabelMade "label-made" {
        Woven "woven",
        Printed "printed",
        Transfer "transfer",
    }

    LabelFold "label-fold" {
        Flat "flat",
        Centre "centre",
        Ends "ends",
        Mitre "mitre",
        Loop "loop",
    }

    /// What decides how many of a label are needed.
    Driver "driver" {
        Style "style",
        Size "size",
        Colourway "colourway",
        Market "market",
    }

    /// What the program puts on the label by itself.
    LabelContent "label-content" {
        Composition "composition",
        Care "care",
        Origin "origin",
        Size "size",
    }
}

records! {
    record Labels {
        /// What the care label says, of the whole garment.
        care: Care,
        labels: Vec<Label>,
    }

    item Label {
        letter: String,
        name: String,
        kind: Option<LabelKind>,
        /// Open.
        width: Option<Entered>,
        height: Option<Entered>,
        folded_height: Option<Entered>,
        ground: String,
        made: Option<LabelMade>,
        text_height: Option<Entered>,
        contents: Vec<LabelContent>,
        texts: Vec<LabelText>,
        /// Its artwork, with symbols that the brand has a licence for.
        artwork: Option<Digest>,
        fold: Option<LabelFold>,
        /// How it is attached.
        attached: String,
        distances: Vec<Distance>,
        driver: Option<Driver>,
        part: Option<ItemId>,
    }

    group LabelText {
        market: Option<Market>,
        /// As a tag: `en`, `de`.
        language: String,
        text: String,
    }
}
