//! The items of a spec by their ids, found once for all checks.

use std::collections::HashMap;
use std::collections::hash_map::Entry;

use crate::spec::chart::{Graded, Values};
use crate::spec::document::{Basis, Point, Spec};
use crate::spec::id::ItemId;
use crate::spec::item::Item;
use crate::spec::units::Length;

pub struct Known<'a> {
    pub spec: &'a Spec,
    pub graded: &'a Graded,
    /// Items that have the id of one before them.
    pub twice: Vec<Item<'a>>,
    items: HashMap<&'a ItemId, Item<'a>>,
    /// Where each point stands.
    points: HashMap<&'a ItemId, usize>,
}

impl<'a> Known<'a> {
    pub fn of(spec: &'a Spec, graded: &'a Graded) -> Self {
        let mut items = HashMap::new();
        let mut twice = Vec::new();
        for item in spec.items() {
            match items.entry(item.id()) {
                Entry::Vacant(free) => {
                    free.insert(item);
                }
                Entry::Occupied(_) => twice.push(item),
            }
        }
        let points = spec.points.points.iter().map(|point| &point.id);
        Self {
            spec,
            graded,
            twice,
            items,
            points: points.zip(0..).collect(),
        }
    }

    pub fn item(&self, id: &ItemId) -> Option<Item<'a>> {
        self.items.get(id).copied()
    }

    /// The letter of a point, or the code of a size or colourway; empty when it is gone.
    pub fn letter(&self, id: &ItemId) -> &'a str {
        self.item(id).map_or("", Item::letter)
    }

    pub fn is_size(&self, id: &ItemId) -> bool {
        matches!(self.item(id), Some(Item::Size(_)))
    }

    pub fn is_part(&self, id: &ItemId) -> bool {
        matches!(self.item(id), Some(Item::Part(_)))
    }

    pub fn is_line(&self, id: &ItemId) -> bool {
        matches!(self.item(id), Some(Item::Line(_)))
    }

    /// A point with its values, if it is there and can be graded.
    pub fn graded(&self, id: &ItemId) -> Option<(&'a Point, &'a Values)> {
        let at = *self.points.get(id)?;
        let values = self.graded.points.get(at)?.result.as_ref().ok()?;
        Some((&self.spec.points.points[at], values))
    }
}

/// The whole way round, from what a point measures.
pub fn way_round(point: &Point, value: Length) -> Length {
    match point.basis {
        Some(Basis::Half) => value.doubled(),
        Some(Basis::Full | Basis::Linear) | None => value,
    }
}
