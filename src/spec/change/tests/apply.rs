//! The old document and the changes give the new one: so the list leaves nothing out.

use crate::spec::change::{Change, Kind, Value};
use crate::spec::document::*;
use crate::spec::id::ItemId;

pub fn apply(old: &Spec, changes: &[Change]) -> Spec {
    let mut spec = old.clone();
    for change in changes.iter().filter(|change| change.item.is_none()) {
        header(&mut spec.header, change);
    }
    let of = |kind: fn(&Value) -> bool| {
        move |change: &&Change| {
            let whole = [&change.old, &change.new].into_iter().flatten();
            change.field.is_none() && whole.into_iter().any(kind)
        }
    };
    place(
        &mut spec.sizes.sizes,
        changes,
        |s| &s.id,
        |value| match value {
            Value::Size(size) => Some(size.clone()),
            _ => None,
        },
    );
    place(
        &mut spec.drawings.drawings,
        changes,
        |d| &d.id,
        |value| match value {
            Value::Drawing(drawing) => Some(drawing.clone()),
            _ => None,
        },
    );
    for drawing in &mut spec.drawings.drawings {
        let within = changes
            .iter()
            .filter(|change| change.within.as_ref() == Some(&drawing.id));
        let within: Vec<Change> = within.cloned().collect();
        place(
            &mut drawing.markers,
            &within,
            |m| &m.id,
            |value| match value {
                Value::Marker(marker) => Some(marker.clone()),
                _ => None,
            },
        );
        for change in within
            .iter()
            .filter(of(|value| matches!(value, Value::Marker(_))))
        {
            let mut markers = drawing.markers.iter_mut();
            let marker = markers.find(|marker| Some(&marker.id) == change.item.as_ref());
            if let (Kind::Changed, Some(marker), Some(Value::Marker(new))) =
                (change.kind, marker, &change.new)
            {
                *marker = new.clone();
            }
        }
    }
    place(
        &mut spec.points.points,
        changes,
        |p| &p.id,
        |value| match value {
            Value::Point(point) => Some((**point).clone()),
            _ => None,
        },
    );
    place(
        &mut spec.colourways.parts,
        changes,
        |p| &p.id,
        |value| match value {
            Value::Part(part) => Some(part.clone()),
            _ => None,
        },
    );
    place(
        &mut spec.colourways.colourways,
        changes,
        |c| &c.id,
        |value| match value {
            Value::Colourway(colourway) => Some(colourway.clone()),
            _ => None,
        },
    );
    for change in changes
        .iter()
        .filter(|change| change.item.is_some() && change.field.is_some())
    {
        field(&mut spec, change);
    }
    super::random::prune(&mut spec);
    spec
}

/// Takes out what was removed or moved and puts in what was added or moved, first places first.
fn place<T: Clone>(
    list: &mut Vec<T>,
    changes: &[Change],
    id: fn(&T) -> &ItemId,
    whole: fn(&Value) -> Option<T>,
) {
    let mut arriving: Vec<(usize, T)> = Vec::new();
    for change in changes {
        let here = |list: &[T]| {
            list.iter()
                .position(|item| Some(id(item)) == change.item.as_ref())
        };
        match change.kind {
            Kind::Removed if change.old.as_ref().and_then(whole).is_some() => {
                list.remove(here(list).unwrap());
            }
            Kind::Moved { to, .. } => {
                if let Some(from) = here(list) {
                    arriving.push((to, list.remove(from)));
                }
            }
            Kind::Added { at } => {
                arriving.extend(change.new.as_ref().and_then(whole).map(|item| (at, item)));
            }
            _ => {}
        }
    }
    arriving.sort_by_key(|(at, _)| *at);
    for (at, item) in arriving {
        list.insert(at, item);
    }
}

fn text(value: &Option<Value>) -> String {
    match value {
        Some(Value::Text(text)) => text.clone(),
        None => String::new(),
        other => panic!("{other:?}"),
    }
}

/// The one kind of value that a field holds.
macro_rules! held {
    ($value:expr, $kind:ident) => {
        match &$value {
            Some(Value::$kind(held)) => Some(held.clone()),
            None => None,
            other => panic!("{other:?}"),
        }
    };
}

fn header(header: &mut Header, change: &Change) {
    let new = &change.new;
    match change.field.unwrap() {
        "number" => header.number = text(new),
        "name" => header.name = text(new),
        "garment" => header.garment = text(new),
        "wearer" => header.wearer = held!(new, Wearer),
        "season" => header.season = text(new),
        "markets" => header.markets = held!(new, Markets).unwrap_or_default(),
        "origin" => header.origin = text(new),
        "base_size" => header.base_size = held!(new, Item),
        "unit" => header.unit = held!(new, Unit),
        "measured" => header.measured = held!(new, Measured),
        "main_fabric" => header.main_fabric = text(new),
        "contrast_fabric" => header.contrast_fabric = text(new),
        other => panic!("{other}"),
    }
}

fn field(spec: &mut Spec, change: &Change) {
    let (item, field, new) = (
        change.item.as_ref().unwrap(),
        change.field.unwrap(),
        &change.new,
    );
    if field == "cell" {
        let row = change.within.clone().unwrap();
        let row = spec.colourways.cells.entry(row).or_default();
        match held!(new, Cell) {
            Some(cell) => row.insert(item.clone(), cell),
            None => row.remove(item),
        };
    }
    for size in spec.sizes.sizes.iter_mut().filter(|size| size.id == *item) {
        match field {
            "code" => size.code = text(new),
            "label" => size.label = text(new),
            other => panic!("{other}"),
        }
    }
    for drawing in spec.drawings.drawings.iter_mut().filter(|d| d.id == *item) {
        match (field, new) {
            ("view", Some(Value::View(view))) => drawing.view = *view,
            ("title", new) => drawing.title = text(new),
            ("file", Some(Value::File(file))) => drawing.file = file.clone(),
            ("extent", Some(Value::Extent(width, height))) => {
                (drawing.width, drawing.height) = (*width, *height);
            }
            other => panic!("{other:?}"),
        }
    }
    for point in spec
        .points
        .points
        .iter_mut()
        .filter(|point| point.id == *item)
    {
        match field {
            "letter" => point.letter = text(new),
            "name" => point.name = text(new),
            "how.start" => point.how.start = text(new),
            "how.end" => point.how.end = text(new),
            "how.path" => point.how.path = held!(new, Path),
            "how.stretched" => point.how.stretched = held!(new, Flag).unwrap(),
            "how.note" => point.how.note = text(new),
            "basis" => point.basis = held!(new, Basis),
            "direction" => point.direction = held!(new, Direction),
            "key" => point.key = held!(new, Flag).unwrap(),
            "critical" => point.critical = held!(new, Flag).unwrap(),
            "minus" => point.minus = held!(new, Length),
            "plus" => point.plus = held!(new, Length),
            "step" => point.step = held!(new, Length),
            "base" => point.base = held!(new, Length),
            "grade" => point.grade = held!(new, Grade),
            other => panic!("{other}"),
        }
    }
    for part in spec
        .colourways
        .parts
        .iter_mut()
        .filter(|part| part.id == *item)
    {
        match field {
            "letter" => part.letter = text(new),
            "name" => part.name = text(new),
            "cell" => {}
            other => panic!("{other}"),
        }
    }
    for colourway in spec
        .colourways
        .colourways
        .iter_mut()
        .filter(|c| c.id == *item)
    {
        match field {
            "code" => colourway.code = text(new),
            "name" => colourway.name = text(new),
            other => panic!("{other}"),
        }
    }
}
