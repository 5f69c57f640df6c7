//! The title block's content.

use serde::{Deserialize, Serialize};

use super::declare::{records, words};
use crate::spec::id::ItemId;
use crate::spec::units::Unit;

words! {
    Wearer "wearer" {
        Women "women",
        Men "men",
        Unisex "unisex",
        Children "children",
        Infants "infants",
    }

    /// Where it will be sold: decides which checks and which label texts apply.
    Market "market" {
        Eu "eu",
        Uk "uk",
        Us "us",
        Other "other",
    }

    /// What kind of garment it is: decides which points are usual.
    GarmentKind "garment" {
        Joggers "joggers",
        Shorts "shorts",
        TShirt "t_shirt",
        Hoodie "hoodie",
        HalfZip "half_zip",
        Jacket "jacket",
        Dress "dress",
        Leggings "leggings",
    }

    /// How it is worn: some safety rules are for outerwear or sleepwear alone.
    Worn "worn" {
        /// Jackets, sweatshirts: over other clothes, on the upper body.
        UpperOuterwear "upper_outerwear",
        Upper "upper",
        Lower "lower",
        /// Upper and lower body in one piece.
        Whole "whole",
        Sleepwear "sleepwear",
        Underwear "underwear",
        Swimwear "swimwear",
    }

    /// Where a measurement ends at a seam, unless its point says otherwise.
    Edges "edges" {
        SeamToSeam "seam_to_seam",
        EdgeToEdge "edge_to_edge",
    }
}

records! {
    record Header {
        /// The brand's style number.
        number: String,
        name: String,
        /// What it is, in the brand's words: joggers, half-zip, rain jacket.
        garment: String,
        kind: Option<GarmentKind>,
        wearer: Option<Wearer>,
        worn: Option<Worn>,
        season: String,
        year: Option<u16>,
        markets: Vec<Market>,
        /// The languages of its labels, as tags: `en`, `de`, `pt-BR`.
        languages: Vec<String>,
        /// Country of origin, in words.
        origin: String,
        /// The brand's label or range that it is sold under.
        range: String,
        base_size: Option<ItemId>,
        /// The master unit. The other one is only ever shown as a reference.
        unit: Option<Unit>,
        measured: Option<MeasuringState>,
        edges: Option<Edges>,
        main_fabric: String,
        contrast_fabric: String,
        /// Left and right differ: both side views are needed.
        asymmetric: bool,
        exemptions: Vec<Exemption>,
    }

    /// An owner's documented reason why a rule that would stop publishing does not apply. It is
    /// printed on every sheet.
    group Exemption {
        /// The code of the check.
        code: String,
        reason: String,
        /// Who says so.
        by: String,
    }
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

impl Header {
    pub fn sold_in(&self, market: Market) -> bool {
        self.markets.contains(&market)
    }

    /// Whether it is sold where composition labels are due: the EU, the UK or the US.
    pub fn labelled(&self) -> bool {
        let due = [Market::Eu, Market::Uk, Market::Us];
        due.into_iter().any(|market| self.sold_in(market))
    }
}
