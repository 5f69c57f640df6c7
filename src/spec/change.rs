//! The change list: what differs between two versions of a spec and of their charts.
//!
//! Data only: what a change is called is said in the reader's language. A document's field that
//! changed is one change; one grade rule that changed is one change, however many sizes it moves.

mod list;

use std::borrow::Cow;
use std::collections::{BTreeSet, HashMap};

use super::chart::{Chart, Row};
pub use super::document::Value;
use super::document::{Section, Spec};
use super::id::ItemId;
use super::units::Length;

/// One version of a spec with its chart: the frozen chart of a revision, or a draft's as far as
/// there is one.
#[derive(Debug, Clone, Copy)]
pub struct Version<'a> {
    pub spec: &'a Spec,
    pub chart: Option<&'a Chart>,
}

#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Change {
    pub section: Section,
    /// The list of the section that the item stands in, by its name in the document.
    pub list: Option<&'static str>,
    /// What changed; nothing for a field of the section itself.
    pub item: Option<ItemId>,
    /// The drawing of a marker, line or blow-up; the colourway of a cell, whose part is `item`.
    pub within: Option<ItemId>,
    pub kind: Kind,
    /// The field of the document: `minus`, `how.start`, `cell`. Nothing where the whole item was
    /// added, removed, moved or re-graded. A picture's `file` carries its size, as a group.
    pub field: Option<Cow<'static, str>>,
    /// What it was, unless it was absent.
    pub old: Option<Value>,
    /// What it is, unless it is absent.
    pub new: Option<Value>,
    /// The rounded value of every size, the old and the new, where this change moves any. Where
    /// several changes of one point move its values together, the last of them carries these.
    pub sizes: Vec<SizeValue>,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Kind {
    /// At this place of its list, from 0.
    Added {
        at: usize,
    },
    Removed,
    /// To another place of its list, from 0.
    Moved {
        from: usize,
        to: usize,
    },
    /// An item that goes by another letter.
    Relettered,
    Changed,
    /// A point whose values moved though nothing typed in it changed: it is derived from one that
    /// changed, or the base size or the sizes did.
    Regraded,
}

/// One size of one point, before and after. Nothing where the version has no such value.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct SizeValue {
    pub size: ItemId,
    pub old: Option<Length>,
    pub new: Option<Length>,
}

/// Everything that differs, in the order of the sections, and of the new document within each.
pub fn changes(old: Version<'_>, new: Version<'_>) -> Vec<Change> {
    let mut changes = Vec::new();
    let (before, after) = (old.spec, new.spec);
    list::section(Section::Header, &before.header, &after.header, &mut changes);
    list::sizes(&before.sizes, &after.sizes, &mut changes);
    list::drawings(&before.drawings, &after.drawings, &mut changes);
    let values = Values::of(old, new);
    list::points(&before.points, &after.points, &values, &mut changes);
    list::colourways(&before.colourways, &after.colourways, &mut changes);
    list::materials(&before.materials, &after.materials, &mut changes);
    list::construction(&before.construction, &after.construction, &mut changes);
    list::artwork(&before.artwork, &after.artwork, &mut changes);
    list::labels(&before.labels, &after.labels, &mut changes);
    list::packing(&before.packing, &after.packing, &mut changes);
    changes
}

/// Every item that the changes touch.
pub fn touched(changes: &[Change]) -> BTreeSet<ItemId> {
    changes.iter().flat_map(Change::items).cloned().collect()
}

impl Change {
    fn new(place: Place, item: Option<&ItemId>, kind: Kind) -> Self {
        Self {
            section: place.section,
            list: place.list,
            item: item.cloned(),
            within: None,
            kind,
            field: None,
            old: None,
            new: None,
            sizes: Vec::new(),
        }
    }

    /// Whether it shows that this item changed. A marker or line that changed touches what it
    /// marks and its drawing; a cell touches its part and its colourway. A new place in the list touches
    /// nothing: which of two that changed places was the one that moved cannot be told.
    pub fn touches(&self, item: &ItemId) -> bool {
        self.items().any(|touched| touched == item)
    }

    fn items(&self) -> impl Iterator<Item = &ItemId> {
        let moved = matches!(self.kind, Kind::Moved { .. });
        let own = [&self.item, &self.within].into_iter().flatten();
        let marked = [&self.old, &self.new].into_iter().flatten();
        let marked = marked.filter_map(|value| match value {
            Value::Marker(marker) => Some(&marker.item),
            Value::Line(line) => Some(&line.item),
            _ => None,
        });
        own.chain(marked).filter(move |_| !moved)
    }
}

/// Where a change is: in a section, or in one of its lists.
#[derive(Clone, Copy)]
struct Place {
    section: Section,
    list: Option<&'static str>,
}

impl SizeValue {
    pub fn moved(&self) -> bool {
        self.old != self.new
    }
}

/// The rows of both charts, by point, and the sizes of both, with their columns.
struct Values<'a> {
    sizes: Vec<(&'a ItemId, Option<usize>, Option<usize>)>,
    old: HashMap<&'a ItemId, &'a Row>,
    new: HashMap<&'a ItemId, &'a Row>,
}

impl<'a> Values<'a> {
    fn of(old: Version<'a>, new: Version<'a>) -> Self {
        let rows = |chart: Option<&'a Chart>| {
            let rows = chart.into_iter().flat_map(|chart| &chart.rows);
            rows.map(|row| (&row.point, row)).collect()
        };
        let columns = |chart: Option<&'a Chart>| -> &'a [ItemId] {
            chart.map(|chart| &chart.sizes[..]).unwrap_or_default()
        };
        let (before, after) = (columns(old.chart), columns(new.chart));
        let place = |sizes: &[ItemId], id: &ItemId| sizes.iter().position(|size| size == id);
        let kept = after.iter().enumerate();
        let kept = kept.map(|(column, id)| (id, place(before, id), Some(column)));
        let gone = before.iter().enumerate();
        let gone = gone.filter(|(_, id)| place(after, id).is_none());
        let gone = gone.map(|(column, id)| (id, Some(column), None));
        Self {
            sizes: kept.chain(gone).collect(),
            old: rows(old.chart),
            new: rows(new.chart),
        }
    }

    /// A point's value in every size of either version, before and after.
    fn pairs(
        &self,
        point: &ItemId,
    ) -> impl Iterator<Item = (&'a ItemId, Option<Length>, Option<Length>)> {
        let (old, new) = (self.old.get(point), self.new.get(point));
        let value = |row: Option<&&Row>, column: Option<usize>| row?.values.get(column?).copied();
        self.sizes
            .iter()
            .map(move |(size, before, after)| (*size, value(old, *before), value(new, *after)))
    }

    fn sizes(&self, point: &ItemId) -> Vec<SizeValue> {
        let sizes = self.pairs(point).map(|(size, old, new)| SizeValue {
            size: size.clone(),
            old,
            new,
        });
        sizes.collect()
    }

    /// Whether both charts have the point, and a size has another value or is in one of them only.
    fn differ(&self, point: &ItemId) -> bool {
        let in_both = self.old.contains_key(point) && self.new.contains_key(point);
        in_both && self.pairs(point).any(|(_, old, new)| old != new)
    }

    /// Whether a size that is in both charts has another value.
    fn moved(&self, point: &ItemId) -> bool {
        let mut both = self.pairs(point).filter_map(|(_, old, new)| old.zip(new));
        both.any(|(old, new)| old != new)
    }
}

#[cfg(test)]
mod tests;
