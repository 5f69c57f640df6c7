//! Places of a section in words, for people who compare two versions of it.

use crate::language::{FieldWords, Text};
use crate::spec::document::{Fields, Section, Value};
use crate::spec::item::Item;
use crate::spec::merge::Place;
use crate::spec::units::DecimalSign;
use crate::spec::{ItemId, Spec};

/// What a place belongs to: an item by letter and name, the order of a list; empty for the section
/// itself. `specs` are the versions that it may be in.
pub fn heading(t: Text, specs: [&Spec; 2], place: &Place) -> String {
    let item = |id| {
        let found = specs.into_iter().find_map(|spec| spec.item(id));
        found.map_or(String::new(), |item| named(t, specs, item))
    };
    match place {
        Place::Field(_) => String::new(),
        Place::Item(id) | Place::Of { item: id, .. } => item(id),
        Place::Cell { part, .. } => item(part),
        Place::Order(list) => t.list(list).to_string(),
    }
}

/// What is chosen there: a field, the colour in a colourway, the order; empty for a whole item.
pub fn label(t: Text, specs: [&Spec; 2], place: &Place) -> String {
    match place {
        Place::Field(field) | Place::Of { field, .. } => t.field(field).to_string(),
        Place::Item(_) => String::new(),
        Place::Cell { colourway, .. } => {
            let found = specs.into_iter().find_map(|spec| spec.item(colourway));
            found.map_or(String::new(), |item| named(t, specs, item))
        }
        Place::Order(_) => t.say("conflict-order").to_string(),
    }
}

fn named(t: Text, specs: [&Spec; 2], item: Item<'_>) -> String {
    let known = |id: &ItemId| {
        let found = specs.into_iter().find_map(|spec| spec.item(id));
        found.map_or(String::from("?"), |item| match item {
            Item::Drawing(drawing) if drawing.title.is_empty() => t.name(&drawing.view).to_string(),
            item => item.known_by(),
        })
    };
    match item {
        Item::Marker(marker) => t.say("conflict-letter").with("item", known(&marker.item)),
        Item::DimensionLine(line) => t.say("conflict-line").with("item", known(&line.item)),
        Item::BlowUp(ring) => t.say("conflict-ring").with("drawing", known(&ring.drawing)),
        item => return known(item.id()),
    }
    .to_string()
}

/// What stands at a place in one version, a line each; nothing when it is not there. A line without
/// words is empty.
pub fn words(t: Text, spec: &Spec, section: Section, place: &Place) -> Option<Vec<FieldWords>> {
    let words = t.words(spec, DecimalSign::Point);
    let plain = |value: String| {
        vec![FieldWords {
            label: String::new(),
            value,
            typed: false,
        }]
    };
    let one = |fields: &Fields, field: &str| {
        // What a garment takes is said in the unit that stands in another field.
        let unit = |name: &str| field.starts_with("consumption.") && name == "consumption.unit";
        let mut own: Fields = fields.clone();
        own.retain(|(name, _)| name == field);
        let mut with_unit = own.clone();
        with_unit.extend(
            fields
                .iter()
                .filter(|(name, _)| name != field && unit(name))
                .cloned(),
        );
        let said = words.fields(&with_unit).into_iter().take(own.len());
        plain(said.map(|it| it.value).collect())
    };
    match place {
        Place::Field(field) => Some(one(&spec.fields(section), field)),
        Place::Of { item, field } => spec.item(item).map(|item| one(&item.fields(), field)),
        Place::Item(id) => spec.item(id).map(|item| match item {
            Item::Marker(mark) => plain(words.value(&Value::Marker(mark.clone()), None)),
            Item::DimensionLine(line) => plain(words.value(&Value::Line(line.clone()), None)),
            Item::BlowUp(ring) => plain(words.value(&Value::BlowUp(ring.clone()), None)),
            item => words.fields(&item.fields()),
        }),
        Place::Cell { colourway, part } => {
            let cell = spec.colourways.cell(colourway, part);
            Some(plain(cell.map_or(String::new(), |it| words.cell(Some(it)))))
        }
        Place::Order(list) => {
            let items = spec.items().filter(|item| item.list() == *list);
            let labels: Vec<String> = items.map(|item| short(t, item)).collect();
            Some(plain(labels.join(", ")))
        }
    }
}

fn short(t: Text, item: Item<'_>) -> String {
    match (item, item.letter(), item.name()) {
        (Item::Drawing(drawing), _, "") => t.name(&drawing.view).to_string(),
        (_, "", name) => name.to_owned(),
        (_, letter, _) => letter.to_owned(),
    }
}
