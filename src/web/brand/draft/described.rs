//! Places of a section in words, for people who compare two versions of it.

use crate::language::{FieldWords, Text};
use crate::spec::document::{Drawing, Section};
use crate::spec::item::Item;
use crate::spec::merge::Place;
use crate::spec::units::DecimalSign;
use crate::spec::{ItemId, Spec};

/// What a place is called; `specs` are the versions that it may be in.
pub fn label(t: Text, specs: [&Spec; 2], place: &Place) -> String {
    let item = |id| {
        let found = specs.into_iter().find_map(|spec| spec.item(id));
        found.map_or(String::new(), |item| match item {
            Item::Drawing(drawing) if drawing.title.is_empty() => t.name(&drawing.view).to_string(),
            item => format!("{} {}", item.letter(), item.name())
                .trim()
                .to_owned(),
        })
    };
    match place {
        Place::Field(name) => t.field(name).to_string(),
        Place::Item(id) => item(id),
        Place::Cell { colourway, part } => format!("{} · {}", item(part), item(colourway)),
        Place::Order(_) => t.say("conflict-order").to_string(),
    }
}

/// What stands at a place in one version; nothing when it is not there.
pub fn fields(t: Text, spec: &Spec, section: Section, place: &Place) -> Option<Vec<FieldWords>> {
    let words = t.words(spec, DecimalSign::Point);
    let plain = |value: String| {
        vec![FieldWords {
            label: String::new(),
            value,
        }]
    };
    match place {
        Place::Field(name) => {
            // A nested record's fields go by `outer.inner`.
            let of = |field: &str| field.split('.').next() == Some(name);
            let mut fields = spec.fields(section);
            fields.retain(|(field, _)| of(field));
            Some(words.fields(&fields))
        }
        Place::Item(id) => spec.item(id).map(|item| match item {
            Item::Drawing(drawing) => drawing_fields(t, spec, drawing),
            item => words.fields(&item.fields()),
        }),
        Place::Cell { colourway, part } => {
            let cell = spec.colourways.cell(colourway, part);
            Some(plain(words.cell(cell)))
        }
        Place::Order(list) => {
            let items = spec.items().filter(|item| item.list() == *list);
            let labels: Vec<String> = items.map(|item| label_of(t, item)).collect();
            Some(plain(labels.join(", ")))
        }
    }
}

fn label_of(t: Text, item: Item<'_>) -> String {
    match (item, item.letter(), item.name()) {
        (Item::Drawing(drawing), _, "") => t.name(&drawing.view).to_string(),
        (_, "", name) => name.to_owned(),
        (_, letter, _) => letter.to_owned(),
    }
}

/// With what is drawn on it, which is chosen with it.
fn drawing_fields(t: Text, spec: &Spec, drawing: &Drawing) -> Vec<FieldWords> {
    let letter = |item: &ItemId| spec.item(item).map_or("?", Item::letter).to_owned();
    let letters = drawing.markers.iter().map(|marker| {
        // In hundredths of the picture, from the left and from the top.
        let (x, y) = (marker.x / 100, marker.y / 100);
        format!("{} ({x}, {y})", letter(&marker.item))
    });
    let lines = drawing.lines.iter().map(|line| letter(&line.item));
    let drawn = [
        (t.say("conflict-letters"), letters.collect::<Vec<_>>()),
        (t.say("conflict-lines"), lines.collect()),
    ];
    let drawn = drawn.into_iter().filter(|(_, list)| !list.is_empty());
    let drawn = drawn.map(|(label, list)| FieldWords {
        label: label.to_string(),
        value: list.join(", "),
    });
    let words = t.words(spec, DecimalSign::Point);
    let mut fields = words.fields(&Item::Drawing(drawing).fields());
    fields.extend(drawn);
    fields
}
