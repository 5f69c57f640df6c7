//! Changes of lists: what came, what went, what moved, and what changed in its place.

use std::collections::HashMap;

use super::{Change, Kind, Value, Values, fields};
use crate::spec::document::{Colourway, Colourways, Drawing, Marker, Part, Point, Section, Size};
use crate::spec::id::ItemId;

pub fn sizes(old: &[Size], new: &[Size], changes: &mut Vec<Change>) {
    let list = List {
        section: Section::Sizes,
        id: |size: &Size| &size.id,
        whole: |size| Value::Size(size.clone()),
    };
    list.compare(old, new, changes, |old, new, changes| {
        fields::item(list.section, &new.id, (old, new), fields::of_size, changes);
    });
}

pub fn drawings(old: &[Drawing], new: &[Drawing], changes: &mut Vec<Change>) {
    let list = List {
        section: Section::Drawings,
        id: |drawing: &Drawing| &drawing.id,
        whole: |drawing| Value::Drawing(drawing.clone()),
    };
    list.compare(old, new, changes, |old, new, changes| {
        fields::item(
            list.section,
            &new.id,
            (old, new),
            fields::of_drawing,
            changes,
        );
        markers(old, new, changes);
    });
}

fn markers(old: &Drawing, new: &Drawing, changes: &mut Vec<Change>) {
    let list = List {
        section: Section::Drawings,
        id: |marker: &Marker| &marker.id,
        whole: |marker| Value::Marker(marker.clone()),
    };
    let first = changes.len();
    list.compare(&old.markers, &new.markers, changes, |old, new, changes| {
        if old != new {
            changes.push(Change {
                old: Some(Value::Marker(old.clone())),
                new: Some(Value::Marker(new.clone())),
                ..Change::new(list.section, Some(&new.id), Kind::Changed)
            });
        }
    });
    for change in &mut changes[first..] {
        change.within = Some(new.id.clone());
    }
}

pub fn points(old: &[Point], new: &[Point], values: &Values, changes: &mut Vec<Change>) {
    let list = List {
        section: Section::Points,
        id: |point: &Point| &point.id,
        whole: |point| Value::Point(Box::new(point.clone())),
    };
    let first = changes.len();
    list.compare(old, new, changes, |old, new, changes| {
        let first = changes.len();
        fields::item(list.section, &new.id, (old, new), fields::of_point, changes);
        if !values.differ(&new.id) {
            return;
        }
        let mut typed = changes[first..].iter_mut().rev();
        let typed = typed.find(|change| change.field.is_some_and(fields::moves_values));
        if let Some(change) = typed {
            change.sizes = values.sizes(&new.id);
        } else if values.moved(&new.id) {
            changes.push(Change {
                sizes: values.sizes(&new.id),
                ..Change::new(list.section, Some(&new.id), Kind::Regraded)
            });
        }
    });
    for change in &mut changes[first..] {
        if let (Kind::Added { .. } | Kind::Removed, Some(point)) = (change.kind, &change.item) {
            change.sizes = values.sizes(point);
        }
    }
}

pub fn colourways(old: &Colourways, new: &Colourways, changes: &mut Vec<Change>) {
    if old == new {
        return;
    }
    let list = List {
        section: Section::Colourways,
        id: |part: &Part| &part.id,
        whole: |part| Value::Part(part.clone()),
    };
    list.compare(&old.parts, &new.parts, changes, |old, new, changes| {
        fields::item(list.section, &new.id, (old, new), fields::of_part, changes);
    });
    let list = List {
        section: Section::Colourways,
        id: |colourway: &Colourway| &colourway.id,
        whole: |colourway| Value::Colourway(colourway.clone()),
    };
    list.compare(
        &old.colourways,
        &new.colourways,
        changes,
        |old, new, changes| {
            fields::item(
                list.section,
                &new.id,
                (old, new),
                fields::of_colourway,
                changes,
            );
        },
    );
    cells(old, new, changes);
}

/// The cells of what is there now: with a part or a colourway go its cells, unsaid.
fn cells(old: &Colourways, new: &Colourways, changes: &mut Vec<Change>) {
    for colourway in &new.colourways {
        for part in &new.parts {
            let before = old.cell(&colourway.id, &part.id);
            let after = new.cell(&colourway.id, &part.id);
            if before != after {
                changes.push(Change {
                    within: Some(colourway.id.clone()),
                    field: Some("cell"),
                    old: before.cloned().map(Value::Cell),
                    new: after.cloned().map(Value::Cell),
                    ..Change::new(Section::Colourways, Some(&part.id), Kind::Changed)
                });
            }
        }
    }
}

/// What comparing two lists needs to know of their items.
struct List<T> {
    section: Section,
    id: fn(&T) -> &ItemId,
    whole: fn(&T) -> Value,
}

impl<T> List<T> {
    /// What was removed; then, in the order of the new list, what was added, moved, or changed as
    /// `each` finds of the two states of an item.
    fn compare(
        &self,
        old: &[T],
        new: &[T],
        changes: &mut Vec<Change>,
        each: impl Fn(&T, &T, &mut Vec<Change>),
    ) {
        if old.iter().map(self.id).eq(new.iter().map(self.id)) {
            for (old, new) in old.iter().zip(new) {
                each(old, new, changes);
            }
            return;
        }
        let (before, after) = (self.index(old), self.index(new));
        for item in old
            .iter()
            .filter(|item| !after.contains_key((self.id)(item)))
        {
            changes.push(Change {
                old: Some((self.whole)(item)),
                ..Change::new(self.section, Some((self.id)(item)), Kind::Removed)
            });
        }
        let kept = new
            .iter()
            .filter_map(|item| before.get((self.id)(item)).copied());
        let mut stays = longest_rising(&kept.collect::<Vec<_>>()).into_iter();
        for (at, item) in new.iter().enumerate() {
            let id = (self.id)(item);
            let Some(from) = before.get(id).copied() else {
                changes.push(Change {
                    new: Some((self.whole)(item)),
                    ..Change::new(self.section, Some(id), Kind::Added { at })
                });
                continue;
            };
            if stays.next() == Some(false) {
                let kind = Kind::Moved { from, to: at };
                changes.push(Change::new(self.section, Some(id), kind));
            }
            each(&old[from], item, changes);
        }
    }

    fn index<'a>(&self, items: &'a [T]) -> HashMap<&'a ItemId, usize> {
        items.iter().map(self.id).zip(0..).collect()
    }
}

/// Which numbers belong to one longest rising run of them: the fewest others have moved.
fn longest_rising(numbers: &[usize]) -> Vec<bool> {
    // For each length, the index of the smallest number that ends a run so long.
    let mut ends: Vec<usize> = Vec::new();
    let mut before: Vec<Option<usize>> = Vec::with_capacity(numbers.len());
    for (index, number) in numbers.iter().enumerate() {
        let length = ends.partition_point(|end| numbers[*end] < *number);
        before.push(length.checked_sub(1).map(|shorter| ends[shorter]));
        match ends.get_mut(length) {
            Some(end) => *end = index,
            None => ends.push(index),
        }
    }
    let mut rising = vec![false; numbers.len()];
    let mut at = ends.last().copied();
    while let Some(index) = at {
        rising[index] = true;
        at = before[index];
    }
    rising
}
