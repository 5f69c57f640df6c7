//! Places of a section in words, for people who compare two versions of it.

use super::point_row::Row;
use crate::language::{Message, Named, Text};
use crate::spec::document::{Colourways, Drawing, Marker};
use crate::spec::item::Item;
use crate::spec::merge::Place;
use crate::spec::rule::Names;
use crate::spec::{ItemId, Spec};
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
        Place::Field(name) => header(t, specs[0], name).label,
        Place::Item(id) => item(id),
        Place::Cell { colourway, part } => format!("{} · {}", item(part), item(colourway)),
        Place::Order(_) => t.say("conflict-order").to_string(),
    }
}

/// What stands at a place in one version; nothing when it is not there.
pub fn fields(t: Text, spec: &Spec, place: &Place) -> Option<Vec<Described>> {
    let plain = |value: String| vec![field("", value)];
    match place {
        Place::Field(name) => Some(plain(header(t, spec, name).value)),
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

/// A field of the header, by its name.
fn header(t: Text, spec: &Spec, name: &str) -> Described {
    fn named(t: Text, value: Option<impl Named>) -> String {
        value.map_or(String::new(), |value| t.name(&value).to_string())
    }
    let header = &spec.header;
    match name {
        "number" => field(t.say("header-number"), &header.number),
        "name" => field(t.say("header-name"), &header.name),
        "garment" => field(t.say("header-garment"), &header.garment),
        "wearer" => field(t.say("header-wearer"), named(t, header.wearer)),
        "season" => field(t.say("header-season"), &header.season),
        "markets" => {
            let names = header.markets.iter().map(|it| t.name(it).to_string());
            let names: Vec<String> = names.collect();
            field(t.say("header-markets"), names.join(", "))
        }
        "origin" => field(t.say("header-origin"), &header.origin),
        "base_size" => {
            let size = header.base_size.as_ref().and_then(|id| spec.size(id));
            let code = size.map_or("", |size| size.code.as_str());
            field(t.say("header-base-size"), code)
        }
        "unit" => field(t.say("header-unit"), named(t, header.unit)),
        "measured" => field(t.say("header-measured"), named(t, header.measured)),
        "main_fabric" => field(t.say("header-main-fabric"), &header.main_fabric),
        _ => field(t.say("header-contrast-fabric"), &header.contrast_fabric),
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
    let name = |name: Option<Message>| name.map_or(String::new(), String::from);
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
    let letter = |marker: &Marker| {
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

fn cell(t: Text, colourways: &Colourways, colourway: &ItemId, part: &ItemId) -> String {
    let Some(patch) = patch(t, colourways, colourway, part) else {
        return t.say("conflict-empty").to_string();
    };
    let fill = patch.fill.filter(|_| !patch.name.is_empty());
    let words = [patch.name, patch.reference, fill.unwrap_or_default()];
    let words: Vec<String> = words.into_iter().filter(|it| !it.is_empty()).collect();
    words.join(" · ")
}
