//! Changes of records and lists: what came, what went, what moved, and what changed in its place.

use std::collections::HashMap;

use serde::Serialize;

use super::{Change, Kind, Place, Values};
use crate::spec::document::*;
use crate::spec::id::ItemId;

/// The fields of a section itself.
pub fn section<T: Record>(section: Section, old: &T, new: &T, changes: &mut Vec<Change>) {
    if old != new {
        let place = Place {
            section,
            list: None,
        };
        fields(place, None, old, new, changes);
    }
}

pub fn sizes(old: &Sizes, new: &Sizes, changes: &mut Vec<Change>) {
    section(Section::Sizes, old, new, changes);
    let place = of(Section::Sizes);
    items(place("sizes"), &old.sizes, &new.sizes, changes);
    items(place("lengths"), &old.lengths, &new.lengths, changes);
}

pub fn drawings(old: &Drawings, new: &Drawings, changes: &mut Vec<Change>) {
    let place = of(Section::Drawings);
    let each = |old: &Drawing, new: &Drawing, changes: &mut Vec<Change>| {
        with_file(place("drawings"), old, new, &["width", "height"], changes);
        let first = changes.len();
        let whole = |it: &Marker| Value::Marker(it.clone());
        marks(place("markers"), &old.markers, &new.markers, whole, changes);
        let whole = |it: &DimensionLine| Value::Line(it.clone());
        marks(place("lines"), &old.lines, &new.lines, whole, changes);
        let whole = |it: &BlowUp| Value::BlowUp(it.clone());
        let blow_ups = (&old.blow_ups, &new.blow_ups);
        marks(place("blow_ups"), blow_ups.0, blow_ups.1, whole, changes);
        for change in &mut changes[first..] {
            change.within = Some(new.id.clone());
        }
    };
    let lists = (&old.drawings, &new.drawings);
    compare(place("drawings"), lists.0, lists.1, whole, changes, each);
}

/// What is drawn on a drawing changes whole.
fn marks<T: Identified + PartialEq>(
    place: Place,
    old: &[T],
    new: &[T],
    whole: fn(&T) -> Value,
    changes: &mut Vec<Change>,
) {
    compare(place, old, new, whole, changes, |old, new, changes| {
        if old != new {
            changes.push(Change {
                old: Some(whole(old)),
                new: Some(whole(new)),
                ..Change::new(place, Some(new.id()), Kind::Changed)
            });
        }
    });
}

pub fn points(old: &Points, new: &Points, values: &Values, changes: &mut Vec<Change>) {
    let place = of(Section::Points)("points");
    let first = changes.len();
    let each = |old: &Point, new: &Point, changes: &mut Vec<Change>| {
        let first = changes.len();
        if old != new {
            fields(place, Some(&new.id), old, new, changes);
        }
        if !values.differ(&new.id) {
            return;
        }
        let mut typed = changes[first..].iter_mut().rev();
        let typed = typed.find(|change| change.field.as_deref().is_some_and(moves_values));
        if let Some(change) = typed {
            change.sizes = values.sizes(&new.id);
        } else if values.moved(&new.id) {
            changes.push(Change {
                sizes: values.sizes(&new.id),
                ..Change::new(place, Some(&new.id), Kind::Regraded)
            });
        }
    };
    compare(place, &old.points, &new.points, whole, changes, each);
    for change in &mut changes[first..] {
        if let (Kind::Added { .. } | Kind::Removed, Some(point)) = (change.kind, &change.item) {
            change.sizes = values.sizes(point);
        }
    }
}

/// Whether a change of the field can move the point's values. They stand last in the document, so
/// that the last of them carries the values.
fn moves_values(field: &str) -> bool {
    matches!(field, "step" | "base" | "grade")
}

pub fn colourways(old: &Colourways, new: &Colourways, changes: &mut Vec<Change>) {
    if old == new {
        return;
    }
    let place = of(Section::Colourways);
    items(place("parts"), &old.parts, &new.parts, changes);
    let colourways = (&old.colourways, &new.colourways);
    items(place("colourways"), colourways.0, colourways.1, changes);
    cells(place("parts"), old, new, changes);
}

/// The cells of what is there now: with a part or a colourway go its cells, unsaid.
fn cells(place: Place, old: &Colourways, new: &Colourways, changes: &mut Vec<Change>) {
    for colourway in &new.colourways {
        for part in &new.parts {
            let before = old.cell(&colourway.id, &part.id);
            let after = new.cell(&colourway.id, &part.id);
            if before != after {
                changes.push(Change {
                    within: Some(colourway.id.clone()),
                    field: Some("cell".into()),
                    old: before.cloned().map(Value::Cell),
                    new: after.cloned().map(Value::Cell),
                    ..Change::new(place, Some(&part.id), Kind::Changed)
                });
            }
        }
    }
}

pub fn materials(old: &Materials, new: &Materials, changes: &mut Vec<Change>) {
    let place = of(Section::Materials)("materials");
    items(place, &old.materials, &new.materials, changes);
}

pub fn construction(old: &Construction, new: &Construction, changes: &mut Vec<Change>) {
    let place = of(Section::Construction);
    items(place("lines"), &old.lines, &new.lines, changes);
    items(place("callouts"), &old.callouts, &new.callouts, changes);
}

pub fn artwork(old: &Artworks, new: &Artworks, changes: &mut Vec<Change>) {
    let place = of(Section::Artwork)("artworks");
    let size = ["pixels_across", "pixels_down"];
    let each = |old: &Artwork, new: &Artwork, changes: &mut Vec<Change>| {
        with_file(place, old, new, &size, changes);
    };
    compare(place, &old.artworks, &new.artworks, whole, changes, each);
}

pub fn labels(old: &Labels, new: &Labels, changes: &mut Vec<Change>) {
    section(Section::Labels, old, new, changes);
    let place = of(Section::Labels)("labels");
    items(place, &old.labels, &new.labels, changes);
}

pub fn packing(old: &Packing, new: &Packing, changes: &mut Vec<Change>) {
    section(Section::Packing, old, new, changes);
    let place = of(Section::Packing);
    items(place("steps"), &old.steps, &new.steps, changes);
    items(place("ratio"), &old.ratio, &new.ratio, changes);
}

fn of(section: Section) -> impl Fn(&'static str) -> Place {
    move |list| Place {
        section,
        list: Some(list),
    }
}

/// A list of records with ids, each compared field by field.
fn items<T: Identified + Record + Serialize>(
    place: Place,
    old: &[T],
    new: &[T],
    changes: &mut Vec<Change>,
) {
    compare(place, old, new, whole, changes, |old, new, changes| {
        if old != new {
            fields(place, Some(new.id()), old, new, changes);
        }
    });
}

/// The fields of an item with a picture. What is read off the file changes with it: one change of
/// `file` carries the file and its size, each as far as it is there.
fn with_file<T: Identified + Record>(
    place: Place,
    old: &T,
    new: &T,
    size: &[&'static str],
    changes: &mut Vec<Change>,
) {
    if old == new {
        return;
    }
    let first = changes.len();
    fields(place, Some(new.id()), old, new, changes);
    let of_file = |change: &Change| {
        let field = change.field.as_deref();
        field.is_some_and(|field| field == "file" || size.contains(&field))
    };
    let Some(at) = changes[first..].iter().position(of_file) else {
        return;
    };
    let picture = |item: &T| {
        let fields = item.fields();
        let names = std::iter::once("file").chain(size.iter().copied());
        let held = names.filter_map(|name| {
            let (_, value) = fields.iter().find(|(field, _)| field == name)?;
            Some((name, value.clone()))
        });
        let held: Vec<_> = held.collect();
        (!held.is_empty()).then_some(Value::Group(held))
    };
    let mut rest = changes.split_off(first);
    rest[at] = Change {
        field: Some("file".into()),
        old: picture(old),
        new: picture(new),
        ..Change::new(place, Some(new.id()), Kind::Changed)
    };
    let kept = rest.into_iter().enumerate();
    let kept = kept.filter(|(index, change)| *index == at || !of_file(change));
    changes.extend(kept.map(|(_, change)| change));
}

fn whole<T: Serialize>(item: &T) -> Value {
    let json = serde_json::to_value(item).expect("the document is JSON");
    Value::Whole(Box::new(json))
}

/// Every field that differs, in the order of the document.
fn fields<T: Record>(
    place: Place,
    item: Option<&ItemId>,
    old: &T,
    new: &T,
    changes: &mut Vec<Change>,
) {
    let (old, new) = (old.fields(), new.fields());
    let stays = |name: &str| new.iter().any(|(other, _)| other == name);
    let change = |name: &std::borrow::Cow<'static, str>, old, new| Change {
        field: Some(name.clone()),
        old,
        new,
        ..Change::new(
            place,
            item,
            match name.as_ref() {
                "letter" => Kind::Relettered,
                _ => Kind::Changed,
            },
        )
    };
    let mut before = old.iter().peekable();
    for (name, value) in &new {
        while let Some((gone, was)) = before.next_if(|(name, _)| !stays(name)) {
            changes.push(change(gone, Some(was.clone()), None));
        }
        match before.next_if(|(old, _)| old == name) {
            Some((_, was)) if was == value => {}
            Some((_, was)) => {
                changes.push(change(name, Some(was.clone()), Some(value.clone())));
            }
            None => changes.push(change(name, None, Some(value.clone()))),
        }
    }
    for (gone, was) in before {
        changes.push(change(gone, Some(was.clone()), None));
    }
}

/// What was removed; then, in the order of the new list, what was added, moved, or changed as
/// `each` finds of the two states of an item.
fn compare<T: Identified>(
    place: Place,
    old: &[T],
    new: &[T],
    whole: impl Fn(&T) -> Value,
    changes: &mut Vec<Change>,
    each: impl Fn(&T, &T, &mut Vec<Change>),
) {
    if old.iter().map(T::id).eq(new.iter().map(T::id)) {
        for (old, new) in old.iter().zip(new) {
            each(old, new, changes);
        }
        return;
    }
    let (before, after) = (index(old), index(new));
    for item in old.iter().filter(|item| !after.contains_key(item.id())) {
        changes.push(Change {
            old: Some(whole(item)),
            ..Change::new(place, Some(item.id()), Kind::Removed)
        });
    }
    let kept = new.iter().filter_map(|item| before.get(item.id()).copied());
    let mut stays = longest_rising(&kept.collect::<Vec<_>>()).into_iter();
    for (at, item) in new.iter().enumerate() {
        let id = item.id();
        let Some(from) = before.get(id).copied() else {
            changes.push(Change {
                new: Some(whole(item)),
                ..Change::new(place, Some(id), Kind::Added { at })
            });
            continue;
        };
        if stays.next() == Some(false) {
            let kind = Kind::Moved { from, to: at };
            changes.push(Change::new(place, Some(id), kind));
        }
        each(&old[from], item, changes);
    }
}

fn index<T: Identified>(items: &[T]) -> HashMap<&ItemId, usize> {
    items.iter().map(T::id).zip(0..).collect()
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
