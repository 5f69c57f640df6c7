//! The old document and the changes give the new one: so the list leaves nothing out.
//!
//! It is done on the documents' JSON, by the names that the changes carry and nothing else.

use serde_json::{Map, Value as Json, json};

use crate::spec::change::{Change, Kind};
use crate::spec::document::*;
use crate::spec::id::ItemId;

pub fn apply(old: &Spec, changes: &[Change]) -> Spec {
    let mut document = serde_json::to_value(old).unwrap();
    // A drawing is put in its place before what is drawn on it.
    for within in [false, true] {
        let mut lists: Vec<(Section, &str, Option<ItemId>)> = Vec::new();
        for change in changes.iter().filter(|it| on_a_drawing(it) == within) {
            let Some(list) = change.list else { continue };
            let place = (change.section, list, owner(change));
            if !lists.contains(&place) {
                lists.push(place);
            }
        }
        for (section, list, drawing) in lists {
            let here = |it: &&Change| {
                it.section == section && it.list == Some(list) && owner(it) == drawing
            };
            let here: Vec<&Change> = changes.iter().filter(here).collect();
            let items = items(&mut document, section, list, drawing.as_ref());
            place(items, &here);
            for change in here {
                change_item(items, change);
            }
        }
    }
    for change in changes {
        match (&change.item, change.field.as_deref()) {
            (None, Some(field)) => set(section(&mut document, change.section), field, change),
            (Some(part), Some("cell")) => {
                let cells = section(&mut document, Section::Colourways);
                let cells = object(cells).entry("cells").or_insert(json!({}));
                let colourway = change.within.as_ref().unwrap().to_string();
                let row = object(cells).entry(colourway).or_insert(json!({}));
                set(row, part.as_str(), change);
            }
            _ => {}
        }
    }
    let mut spec: Spec = serde_json::from_value(document).unwrap();
    super::random::prune(&mut spec);
    spec
}

fn on_a_drawing(change: &Change) -> bool {
    matches!(change.list, Some("markers" | "blow_ups"))
        || (change.section, change.list) == (Section::Drawings, Some("lines"))
}

/// The drawing whose list it is.
fn owner(change: &Change) -> Option<ItemId> {
    change.within.clone().filter(|_| on_a_drawing(change))
}

fn object(json: &mut Json) -> &mut Map<String, Json> {
    json.as_object_mut().unwrap()
}

fn section(document: &mut Json, section: Section) -> &mut Json {
    object(document)
        .entry(section.name())
        .or_insert_with(|| json!({}))
}

fn items<'a>(
    document: &'a mut Json,
    of: Section,
    list: &str,
    drawing: Option<&ItemId>,
) -> &'a mut Vec<Json> {
    let mut holder = section(document, of);
    if let Some(drawing) = drawing {
        let mut drawings = holder["drawings"].as_array_mut().unwrap().iter_mut();
        holder = drawings.find(|it| it["id"] == drawing.as_str()).unwrap();
    }
    let list = object(holder).entry(list).or_insert_with(|| json!([]));
    list.as_array_mut().unwrap()
}

/// Takes out what was removed or moved and puts in what was added or moved, first places first.
fn place(list: &mut Vec<Json>, changes: &[&Change]) {
    let mut arriving: Vec<(usize, Json)> = Vec::new();
    for change in changes {
        let id = change.item.as_ref().unwrap().as_str();
        let here = |list: &[Json]| list.iter().position(|item| item["id"] == id).unwrap();
        match change.kind {
            Kind::Removed => {
                list.remove(here(list));
            }
            Kind::Moved { to, .. } => arriving.push((to, list.remove(here(list)))),
            Kind::Added { at } => {
                arriving.push((at, serde_json::to_value(&change.new).unwrap()));
            }
            _ => {}
        }
    }
    arriving.sort_by_key(|(at, _)| *at);
    for (at, item) in arriving {
        list.insert(at, item);
    }
}

fn change_item(list: &mut [Json], change: &Change) {
    let id = change.item.as_ref().unwrap().as_str();
    let Some(item) = list.iter_mut().find(|item| item["id"] == id) else {
        return;
    };
    match (change.kind, change.field.as_deref()) {
        (_, Some("cell")) => {}
        (_, Some(field)) => set(item, field, change),
        (Kind::Changed, None) => *item = serde_json::to_value(&change.new).unwrap(),
        _ => {}
    }
}

/// Sets a field, `outer.inner` in a nested record; without a new value it goes.
fn set(json: &mut Json, field: &str, change: &Change) {
    let mut holder = object(json);
    let mut name = field;
    if let Some((outer, inner)) = field.split_once('.') {
        holder = object(holder.entry(outer).or_insert_with(|| json!({})));
        name = inner;
    }
    let members = |side: &Option<Value>| match side {
        // A picture: several fields as one.
        Some(Value::Group(members)) if field == "file" => members.clone(),
        _ => Vec::new(),
    };
    let (old, new) = (members(&change.old), members(&change.new));
    for (name, _) in &old {
        holder.remove(*name);
    }
    for (name, value) in &new {
        holder.insert((*name).to_owned(), serde_json::to_value(value).unwrap());
    }
    if !old.is_empty() || !new.is_empty() {
        return;
    }
    match &change.new {
        Some(value) => holder.insert(name.to_owned(), serde_json::to_value(value).unwrap()),
        None => holder.remove(name),
    };
}
