//! Places of a section in words, for people who compare two versions of it.

use super::point_row::Row;
use crate::language::Text;
use crate::spec::Spec;
use crate::spec::document::{Colourways, Drawing, Header};
use crate::spec::item::Item;
use crate::spec::merge::Place;
use crate::spec::rule::Names;
use crate::web::both::patch::patch;

/// One field of a place: what it is called and what stands in it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Described {
    /// Empty where the place is a single field.
    pub label: String,
    pub value: String,
}

fn field(label: impl ToString, value: impl ToString) -> Described {
    Described {
        label: label.to_string(),
        value: value.to_string(),
    }
}

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
        Place::Field(name) => header_label(t, name),
        Place::Item(id) => item(id),
        Place::Cell { colourway, part } => format!("{} · {}", item(part), item(colourway)),
        Place::Order(_) => t.say("conflict-order").to_string(),
    }
}

/// What stands at a place in one version; nothing when it is not there.
pub fn fields(t: Text, spec: &Spec, place: &Place) -> Option<Vec<Described>> {
    let plain = |value: String| vec![field("", value)];
    match place {
        Place::Field(name) => Some(plain(header_value(t, spec, name))),
        Place::Item(id) => spec.item(id).map(|item| item_fields(t, spec, item)),
        Place::Cell { colourway, part } => Some(plain(cell(t, &spec.colourways, colourway, part))),
        Place::Order(list) => {
            let labels: Vec<String> = match *list {
                "sizes" => labels(spec.sizes.sizes.iter().map(Item::Size)),
                "drawings" => {
                    let drawings = spec.drawings.drawings.iter();
                    drawings.map(|it| drawing_title(t, it)).collect()
                }
                "points" => labels(spec.points.points.iter().map(Item::Point)),
                "parts" => labels(spec.colourways.parts.iter().map(Item::Part)),
                _ => labels(spec.colourways.colourways.iter().map(Item::Colourway)),
            };
            Some(plain(labels.join(", ")))
        }
    }
}

fn labels<'a>(items: impl Iterator<Item = Item<'a>>) -> Vec<String> {
    items
        .map(|item| match item.letter() {
            "" => item.name().to_owned(),
            letter => letter.to_owned(),
        })
        .collect()
}

fn header_label(t: Text, name: &str) -> String {
    t.say(match name {
        "number" => "header-number",
        "name" => "header-name",
        "garment" => "header-garment",
        "wearer" => "header-wearer",
        "season" => "header-season",
        "markets" => "header-markets",
        "origin" => "header-origin",
        "base_size" => "header-base-size",
        "unit" => "header-unit",
        "measured" => "header-measured",
        "main_fabric" => "header-main-fabric",
        _ => "header-contrast-fabric",
    })
    .to_string()
}

fn header_value(t: Text, spec: &Spec, name: &str) -> String {
    let Header {
        number,
        name: title,
        garment,
        wearer,
        season,
        markets,
        origin,
        base_size,
        unit,
        measured,
        main_fabric,
        contrast_fabric,
    } = &spec.header;
    match name {
        "number" => number.clone(),
        "name" => title.clone(),
        "garment" => garment.clone(),
        "wearer" => wearer.map_or(String::new(), |it| t.name(&it).to_string()),
        "season" => season.clone(),
        "markets" => {
            let names: Vec<String> = markets.iter().map(|it| t.name(it).to_string()).collect();
            names.join(", ")
        }
        "origin" => origin.clone(),
        "base_size" => {
            let size = base_size.as_ref().and_then(|id| spec.size(id));
            size.map_or(String::new(), |size| size.code.clone())
        }
        "unit" => unit.map_or(String::new(), |it| t.name(&it).to_string()),
        "measured" => measured.map_or(String::new(), |it| t.name(&it).to_string()),
        "main_fabric" => main_fabric.clone(),
        _ => contrast_fabric.clone(),
    }
}

fn item_fields(t: Text, spec: &Spec, item: Item<'_>) -> Vec<Described> {
    match item {
        Item::Size(size) => vec![
            field(t.say("size-code"), &size.code),
            field(t.say("size-label"), &size.label),
        ],
        Item::Point(point) => {
            let points = spec.points.points.iter();
            let names = Names {
                sizes: &spec.sizes.sizes,
                points: points.map(|it| (&it.id, it.letter.as_str())).collect(),
                unit: spec.header.unit,
            };
            point_fields(t, &Row::of(point, &names))
        }
        Item::Part(part) => vec![
            field(t.say("part-letter"), &part.letter),
            field(t.say("part-name"), &part.name),
        ],
        Item::Colourway(colourway) => vec![
            field(t.say("colourway-code"), &colourway.code),
            field(t.say("colourway-name"), &colourway.name),
        ],
        Item::Drawing(drawing) => drawing_fields(t, spec, drawing),
        // A marker is part of its drawing, which is chosen whole.
        Item::Marker(_) => Vec::new(),
    }
}

fn point_fields(t: Text, row: &Row) -> Vec<Described> {
    let tick = |ticked: bool| if ticked { "✓" } else { "" };
    let name = |name: Option<crate::language::Message>| name.map_or(String::new(), String::from);
    vec![
        field(t.say("point-letter"), &row.letter),
        field(t.say("point-name"), &row.name),
        field(t.say("point-basis"), name(row.basis.map(|it| t.name(&it)))),
        field(t.say("point-base"), &row.base),
        field(t.say("point-minus"), &row.minus),
        field(t.say("point-plus"), &row.plus),
        field(t.say("point-grade"), &row.grade),
        field(t.say("point-step"), &row.step),
        field(t.say("point-key"), tick(row.key_point)),
        field(t.say("point-critical"), tick(row.critical)),
        field(
            t.say("point-direction"),
            name(row.direction.map(|it| t.name(&it))),
        ),
        field(t.say("point-start"), &row.start),
        field(t.say("point-end"), &row.end),
        field(t.say("point-path"), name(row.path.map(|it| t.name(&it)))),
        field(t.say("point-stretched"), tick(row.stretched)),
        field(t.say("point-note"), &row.note),
    ]
}

fn drawing_title(t: Text, drawing: &Drawing) -> String {
    match drawing.title.as_str() {
        "" => t.name(&drawing.view).to_string(),
        title => title.to_owned(),
    }
}

fn drawing_fields(t: Text, spec: &Spec, drawing: &Drawing) -> Vec<Described> {
    let letter = |marker: &crate::spec::document::Marker| {
        let letter = spec.item(&marker.item).map_or("?", Item::letter);
        // In hundredths of the picture, from the left and from the top.
        format!("{letter} ({}, {})", marker.x / 100, marker.y / 100)
    };
    let letters: Vec<String> = drawing.markers.iter().map(letter).collect();
    vec![
        field(t.say("conflict-view"), t.name(&drawing.view)),
        field(t.say("conflict-title"), &drawing.title),
        field(t.say("conflict-picture"), drawing.file.fingerprint()),
        field(t.say("conflict-letters"), letters.join(", ")),
    ]
}

fn cell(
    t: Text,
    colourways: &Colourways,
    colourway: &crate::spec::ItemId,
    part: &crate::spec::ItemId,
) -> String {
    let Some(patch) = patch(t, colourways, colourway, part) else {
        return t.say("conflict-empty").to_string();
    };
    let fill = patch.fill.filter(|_| !patch.name.is_empty());
    let words = [patch.name, patch.reference, fill.unwrap_or_default()];
    let words: Vec<String> = words.into_iter().filter(|it| !it.is_empty()).collect();
    words.join(" · ")
}
