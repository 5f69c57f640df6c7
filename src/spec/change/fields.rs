//! The fields of everything that has several, and the changes between two states of one.

use super::{Change, Kind, Value};
use crate::spec::document::{Colourway, Drawing, Header, HowToMeasure, Part, Point, Section, Size};
use crate::spec::id::ItemId;

/// Each field's name and what it holds, absent or empty being nothing.
type Fields = Vec<(&'static str, Option<Value>)>;

pub fn header(old: &Header, new: &Header, changes: &mut Vec<Change>) {
    if old != new {
        let both = (of_header(old), of_header(new));
        compare(Section::Header, None, both, changes);
    }
}

/// An item that is in both versions.
pub fn item<T: PartialEq>(
    section: Section,
    item: &ItemId,
    (old, new): (&T, &T),
    fields: fn(&T) -> Fields,
    changes: &mut Vec<Change>,
) {
    if old != new {
        let both = (fields(old), fields(new));
        compare(section, Some(item), both, changes);
    }
}

fn compare(
    section: Section,
    item: Option<&ItemId>,
    (old, new): (Fields, Fields),
    changes: &mut Vec<Change>,
) {
    for ((field, old), (_, new)) in old.into_iter().zip(new) {
        if old == new {
            continue;
        }
        let kind = match field {
            "letter" => Kind::Relettered,
            _ => Kind::Changed,
        };
        changes.push(Change {
            field: Some(field),
            old,
            new,
            ..Change::new(section, item, kind)
        });
    }
}

fn of_header(header: &Header) -> Fields {
    // Named one by one, so that a new field does not compile until it is listed.
    let Header {
        number,
        name,
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
    } = header;
    let markets = (!markets.is_empty()).then(|| Value::Markets(markets.clone()));
    vec![
        ("number", text(number)),
        ("name", text(name)),
        ("garment", text(garment)),
        ("wearer", wearer.map(Value::Wearer)),
        ("season", text(season)),
        ("markets", markets),
        ("origin", text(origin)),
        ("base_size", base_size.clone().map(Value::Item)),
        ("unit", unit.map(Value::Unit)),
        ("measured", measured.map(Value::Measured)),
        ("main_fabric", text(main_fabric)),
        ("contrast_fabric", text(contrast_fabric)),
    ]
}

pub fn of_size(size: &Size) -> Fields {
    let Size { id: _, code, label } = size;
    vec![("code", text(code)), ("label", text(label))]
}

/// Without its markers, which are items of their own.
pub fn of_drawing(drawing: &Drawing) -> Fields {
    let Drawing {
        id: _,
        view,
        title,
        file,
        width,
        height,
        markers: _,
    } = drawing;
    vec![
        ("view", Some(Value::View(*view))),
        ("title", text(title)),
        ("file", Some(Value::File(file.clone()))),
        ("extent", Some(Value::Extent(*width, *height))),
    ]
}

/// What moves a point's values comes last, the grade last of all.
pub fn of_point(point: &Point) -> Fields {
    let Point {
        id: _,
        letter,
        name,
        how,
        basis,
        direction,
        key,
        critical,
        minus,
        plus,
        base,
        grade,
        step,
    } = point;
    let HowToMeasure {
        start,
        end,
        path,
        stretched,
        note,
    } = how;
    vec![
        ("letter", text(letter)),
        ("name", text(name)),
        ("how.start", text(start)),
        ("how.end", text(end)),
        ("how.path", path.map(Value::Path)),
        ("how.stretched", Some(Value::Flag(*stretched))),
        ("how.note", text(note)),
        ("basis", basis.map(Value::Basis)),
        ("direction", direction.map(Value::Direction)),
        ("key", Some(Value::Flag(*key))),
        ("critical", Some(Value::Flag(*critical))),
        ("minus", minus.map(Value::Length)),
        ("plus", plus.map(Value::Length)),
        ("step", step.map(Value::Length)),
        ("base", base.map(Value::Length)),
        ("grade", grade.clone().map(Value::Grade)),
    ]
}

/// Whether a change of the field can move the point's values.
pub fn moves_values(field: &str) -> bool {
    matches!(field, "step" | "base" | "grade")
}

pub fn of_part(part: &Part) -> Fields {
    let Part {
        id: _,
        letter,
        name,
    } = part;
    vec![("letter", text(letter)), ("name", text(name))]
}

pub fn of_colourway(colourway: &Colourway) -> Fields {
    let Colourway { id: _, code, name } = colourway;
    vec![("code", text(code)), ("name", text(name))]
}

fn text(text: &str) -> Option<Value> {
    (!text.is_empty()).then(|| Value::Text(text.to_owned()))
}
