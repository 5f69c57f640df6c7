//! How it is folded, bagged, tagged and boxed.

use std::collections::BTreeMap;

use super::declare::{records, words};
use crate::spec::decimal::Decimal;
use crate::spec::id::ItemId;
use crate::spec::units::Entered;

words! {
    Assortment "assortment" {
        /// One size and colourway in a carton.
        Solid "solid",
        Assorted "assorted",
    }
}

records! {
    record Packing {
        fold: String,
        bag: String,
        bag_warning: String,
        tags: String,
        steps: Vec<Step>,
        assortment: Option<Assortment>,
        ratio: Vec<RatioPack>,
        packs_per_carton: Option<u32>,
        carton: Carton,
    }

    item Step {
        text: String,
    }

    /// So many of each size in one pack.
    item RatioPack {
        name: String,
        /// Of every colourway where none is named.
        colourway: Option<ItemId>,
        pieces: BTreeMap<ItemId, u32>,
    }

    record Carton {
        length: Option<Entered>,
        width: Option<Entered>,
        height: Option<Entered>,
        /// Kilograms, packed.
        mass_limit: Option<Decimal>,
    }
}
