//! The bodies that the sizes are for.

use serde::Serialize;

use super::{Head, Writer};
use crate::spec::Item;
use crate::spec::document::{Ages, BodyDimension, BodyRange, Word};

#[derive(Serialize)]
pub struct Bodies {
    /// How sizes are called; empty where that is not said.
    pub system: String,
    /// The dimensions that a size is given by, and the column of ages where there is one.
    pub columns: Vec<String>,
    pub rows: Vec<BodyRow>,
}

#[derive(Serialize)]
pub struct BodyRow {
    pub head: Head,
    /// One for each column; empty where a size has none.
    pub cells: Vec<String>,
}

impl Writer<'_> {
    /// Nothing where no size says more than its code.
    pub(super) fn bodies(&self) -> Option<Bodies> {
        let t = self.t;
        let spec = &self.frozen.spec.sizes;
        let is_given = |dimension: BodyDimension| {
            let mut ranges = spec.sizes.iter().flat_map(|size| &size.body);
            ranges.any(|range| range.dimension == Some(dimension))
        };
        let given = BodyDimension::ALL.iter().copied();
        let given: Vec<BodyDimension> = given.filter(|it| is_given(*it)).collect();
        let has_ages = spec.sizes.iter().any(|size| size.ages.is_some());
        if given.is_empty() && !has_ages && spec.system.is_none() {
            return None;
        }
        let ages = has_ages.then(|| t.say("sizes-ages").to_string());
        let columns = given.iter().map(|it| t.name(it).to_string());
        let rows = spec.sizes.iter().map(|size| {
            let ages = has_ages.then(|| {
                let ages = size.ages.as_ref();
                ages.map(|it| self.ages(it)).unwrap_or_default()
            });
            let body = given.iter().map(|dimension| {
                let mut ranges = size.body.iter();
                let range = ranges.find(|range| range.dimension == Some(*dimension));
                range.map(|it| self.range(it)).unwrap_or_default()
            });
            BodyRow {
                head: self.head(Item::Size(size)),
                cells: ages.into_iter().chain(body).collect(),
            }
        });
        Some(Bodies {
            system: spec
                .system
                .map(|it| t.name(&it).to_string())
                .unwrap_or_default(),
            rows: rows.collect(),
            columns: ages.into_iter().chain(columns).collect(),
        })
    }

    /// In years where they are whole.
    fn ages(&self, ages: &Ages) -> String {
        let (from, to) = (ages.from, ages.to);
        let message = match from % 12 == 0 && to % 12 == 0 {
            true => self
                .t
                .say("sizes-years")
                .with("from", from / 12)
                .with("to", to / 12),
            false => self.t.say("sizes-months").with("from", from).with("to", to),
        };
        message.to_string()
    }

    /// `88 to 92 cm`, in the unit that it was typed in.
    fn range(&self, range: &BodyRange) -> String {
        let sign = self.frozen.decimal;
        let t = self.t;
        match (range.from, range.to) {
            (Some(from), Some(to)) => t
                .say("sizes-range")
                .with("from", from.exact(sign))
                .with("to", to.exact(sign))
                .with("unit", t.name(&to.unit))
                .to_string(),
            (Some(only), None) | (None, Some(only)) => t
                .say("sizes-single")
                .with("value", only.exact(sign))
                .with("unit", t.name(&only.unit))
                .to_string(),
            (None, None) => String::new(),
        }
    }
}
