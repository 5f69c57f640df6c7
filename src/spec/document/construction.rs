//! How it is sewn: the seams, edges and lines that other sections refer to, and callouts.

use super::declare::{records, words};
use crate::spec::decimal::Decimal;
use crate::spec::id::ItemId;
use crate::spec::units::Entered;

words! {
    LineKind "line" {
        Seam "seam",
        Edge "edge",
        Fold "fold",
        CentreLine "centre_line",
    }

    /// Seam classes by ISO 4916.
    SeamClass "seam" {
        Superimposed "1",
        Lapped "2",
        Bound "3",
        Flat "4",
        Decorative "5",
        EdgeFinish "6",
        Attached "7",
        SinglePly "8",
    }
}

records! {
    record Construction {
        lines: Vec<Line>,
        callouts: Vec<Callout>,
    }

    /// Something on the garment that a distance can start from.
    item Line {
        name: String,
        kind: Option<LineKind>,
    }

    item Callout {
        /// `1`, `2` ...
        letter: String,
        /// The part or seam, in words.
        place: String,
        part: Option<ItemId>,
        line: Option<ItemId>,
        text: String,
        /// The drawing that shows it larger.
        detail: Option<ItemId>,
        /// Stitch type by ISO 4915: `301`, `504`.
        stitch: String,
        seam: Option<SeamClass>,
        /// The full designation by ISO 4916, where wanted: `2.04.06`.
        seam_code: String,
        /// Stitches per centimetre.
        density: Option<Decimal>,
        /// Between the needles.
        gauge: Option<Entered>,
        allowance: Option<Entered>,
        /// From the seam or edge to the topstitching.
        topstitch: Option<Entered>,
        thread: Option<ItemId>,
        tape: Option<ItemId>,
        bartacks: Option<u8>,
        /// Of the bartacks.
        bartack_length: Option<Entered>,
    }
}
