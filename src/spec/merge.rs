//! Two versions of one section made into one, place by place.
//!
//! Walking the two asks for every place where they differ which of them stands; asking alone gives
//! the list of differences, answering gives the merged section: there is one walk for both.

use std::collections::BTreeSet;

use super::document::{Colourway, Colourways, Drawing, Identified, Part, Record, Section, Spec};
use super::id::ItemId;

/// A place where two versions of a section differ, chosen by itself.
#[derive(Debug, Clone, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Place {
    /// A field of the section itself, by its name; of a nested record `outer.inner`.
    Field(String),
    /// An item that only one version has; or a mark on a drawing, which is chosen whole.
    Item(ItemId),
    /// A field of an item that both have, by its name; of a nested record `outer.inner`. A
    /// drawing's `file` goes with its size.
    Of {
        item: ItemId,
        field: String,
    },
    Cell {
        colourway: ItemId,
        part: ItemId,
    },
    /// The order of a list, by its name.
    Order(&'static str),
}

impl Place {
    /// Whether it is one place with the other, or holds it, or lies in it.
    pub fn meets(&self, other: &Place) -> bool {
        match (self, other) {
            (Place::Item(whole), Place::Of { item, .. })
            | (Place::Of { item, .. }, Place::Item(whole)) => whole == item,
            (Place::Item(whole), Place::Cell { colourway, part })
            | (Place::Cell { colourway, part }, Place::Item(whole)) => {
                whole == colourway || whole == part
            }
            _ => self == other,
        }
    }
}

#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Side {
    /// What is in the draft.
    Theirs,
    /// What was sent when somebody else's save was there already.
    Mine,
}

/// The places where the section differs, in the order of the document.
pub fn differences(section: Section, theirs: &Spec, mine: &Spec) -> Vec<Place> {
    let mut found = Vec::new();
    merged(section, theirs, mine, |place| {
        found.push(place.clone());
        Side::Theirs
    });
    found
}

/// `theirs` with its section merged: where the two differ, `choose` says which one stands.
pub fn merged(
    section: Section,
    theirs: &Spec,
    mine: &Spec,
    mut choose: impl FnMut(&Place) -> Side,
) -> Spec {
    let mut spec = theirs.clone();
    let choose = &mut choose;
    macro_rules! lists {
        ($section:ident: $($list:ident)*) => {{
            spec.$section = fields(&theirs.$section, &mine.$section, &[$(stringify!($list)),*], choose);
            $(
                let lists = (&theirs.$section.$list, &mine.$section.$list);
                spec.$section.$list = list(stringify!($list), lists.0, lists.1, choose, item);
            )*
        }};
    }
    match section {
        Section::Header => lists!(header:),
        Section::Sizes => lists!(sizes: sizes lengths),
        Section::Drawings => {
            let lists = (&theirs.drawings.drawings, &mine.drawings.drawings);
            spec.drawings.drawings = list("drawings", lists.0, lists.1, choose, drawing);
        }
        Section::Points => lists!(points: points),
        Section::Colourways => {
            spec.colourways = colourways(&theirs.colourways, &mine.colourways, choose);
        }
        Section::Materials => lists!(materials: materials),
        Section::Construction => lists!(construction: lines callouts),
        Section::Artwork => lists!(artwork: artworks),
        Section::Labels => lists!(labels: labels),
        Section::Packing => lists!(packing: steps ratio),
    }
    spec
}

type Choose<'a> = dyn FnMut(&Place) -> Side + 'a;

fn pick<T: Clone + PartialEq>(
    place: impl FnOnce() -> Place,
    theirs: &T,
    mine: &T,
    choose: &mut Choose,
) -> T {
    if theirs == mine || choose(&place()) == Side::Theirs {
        theirs.clone()
    } else {
        mine.clone()
    }
}

/// The fields of a section, its lists aside.
fn fields<T: Record>(theirs: &T, mine: &T, lists: &[&str], choose: &mut Choose) -> T {
    T::merged(theirs, mine, &mut |field| {
        !lists.contains(&field) && choose(&Place::Field(field.to_owned())) == Side::Mine
    })
}

/// An item that both have, field by field.
fn item<T: Record + Identified>(theirs: &T, mine: &T, choose: &mut Choose) -> T {
    T::merged(theirs, mine, &mut |field| {
        choose(&of(theirs.id(), field)) == Side::Mine
    })
}

fn of(item: &ItemId, field: &str) -> Place {
    Place::Of {
        item: item.clone(),
        field: field.to_owned(),
    }
}

/// A drawing: its picture with its size, and each of its marks by itself.
fn drawing(theirs: &Drawing, mine: &Drawing, choose: &mut Choose) -> Drawing {
    let id = &theirs.id;
    let picture = |it: &Drawing| (it.file.clone(), it.width, it.height);
    let (file, width, height) = pick(|| of(id, "file"), &picture(theirs), &picture(mine), choose);
    Drawing {
        id: id.clone(),
        view: pick(|| of(id, "view"), &theirs.view, &mine.view, choose),
        title: pick(|| of(id, "title"), &theirs.title, &mine.title, choose),
        file,
        width,
        height,
        markers: marks(&theirs.markers, &mine.markers, choose),
        lines: marks(&theirs.lines, &mine.lines, choose),
        blow_ups: marks(&theirs.blow_ups, &mine.blow_ups, choose),
    }
}

/// What is drawn on a drawing: its order says nothing.
fn marks<T: Identified + Clone + PartialEq>(
    theirs: &[T],
    mine: &[T],
    choose: &mut Choose,
) -> Vec<T> {
    let find = |side: &[T], id: &ItemId| side.iter().find(|mark| mark.id() == id).cloned();
    let more = mine.iter().filter(|mark| find(theirs, mark.id()).is_none());
    let all = theirs.iter().chain(more);
    all.filter_map(|mark| {
        let place = || Place::Item(mark.id().clone());
        pick(
            place,
            &find(theirs, mark.id()),
            &find(mine, mark.id()),
            choose,
        )
    })
    .collect()
}

fn colourways(theirs: &Colourways, mine: &Colourways, choose: &mut Choose) -> Colourways {
    let mut merged = Colourways {
        parts: list("parts", &theirs.parts, &mine.parts, choose, item),
        colourways: list(
            "colourways",
            &theirs.colourways,
            &mine.colourways,
            choose,
            item,
        ),
        ..Colourways::default()
    };
    let has = |side: &Colourways, colourway: &Colourway, part: &Part| {
        side.colourways.iter().any(|it| it.id == colourway.id)
            && side.parts.iter().any(|it| it.id == part.id)
    };
    for colourway in &merged.colourways {
        for part in &merged.parts {
            let cell = |side: &Colourways| side.cell(&colourway.id, &part.id).cloned();
            let place = || Place::Cell {
                colourway: colourway.id.clone(),
                part: part.id.clone(),
            };
            // The cells of a part or colourway that only one version has go with it.
            let cell = match (has(theirs, colourway, part), has(mine, colourway, part)) {
                (true, true) => pick(place, &cell(theirs), &cell(mine), choose),
                (false, true) => cell(mine),
                (_, false) => cell(theirs),
            };
            if let Some(cell) = cell {
                let row = merged.cells.entry(colourway.id.clone()).or_default();
                row.insert(part.id.clone(), cell);
            }
        }
    }
    merged
}

fn list<T: Identified + Clone + PartialEq>(
    name: &'static str,
    theirs: &[T],
    mine: &[T],
    choose: &mut Choose,
    both: impl Fn(&T, &T, &mut Choose) -> T,
) -> Vec<T> {
    let find = |side: &[T], id: &ItemId| side.iter().find(|item| item.id() == id).cloned();
    let common = |side: &[T], other: &[T]| -> Vec<ItemId> {
        let ids = side.iter().map(|item| item.id().clone());
        ids.filter(|id| find(other, id).is_some()).collect()
    };
    let order = pick(
        || Place::Order(name),
        &common(theirs, mine),
        &common(mine, theirs),
        choose,
    );
    // The one whose order stands leads; what only the other one has comes after the item that it
    // follows there.
    let mine_leads = order != common(theirs, mine);
    let (lead, other) = if mine_leads {
        (mine, theirs)
    } else {
        (theirs, mine)
    };
    let mut ids: Vec<ItemId> = lead.iter().map(|item| item.id().clone()).collect();
    let mut seen: BTreeSet<ItemId> = ids.iter().cloned().collect();
    let mut before = None;
    for item in other {
        if seen.insert(item.id().clone()) {
            let after = before.and_then(|id| ids.iter().position(|other| other == id));
            ids.insert(after.map_or(0, |at| at + 1), item.id().clone());
        }
        before = Some(item.id());
    }
    ids.iter()
        .filter_map(|id| {
            let place = || Place::Item(id.clone());
            match (find(theirs, id), find(mine, id)) {
                (Some(theirs), Some(mine)) => Some(both(&theirs, &mine, choose)),
                (theirs, mine) => pick(place, &theirs, &mine, choose),
            }
        })
        .collect()
}

#[cfg(test)]
mod tests;
