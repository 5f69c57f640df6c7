//! The document that is typed: what it says, field by field, and whether what was published says the
//! same.

use std::collections::BTreeMap;

use serde_json::Value as Json;

use super::hand::Wanted;

/// The ids that the program gave, by those of the fixture.
#[derive(Default)]
pub struct Ids(BTreeMap<String, String>);

impl Ids {
    /// Takes note of the ids of a list, in its order.
    pub fn learns(&mut self, list: &Json, made: &[String]) {
        let list = list.as_array().expect("a list");
        assert_eq!(list.len(), made.len(), "as many rows as there are to be");
        for (item, made) in list.iter().zip(made) {
            self.0.insert(text(&item["id"]), made.clone());
        }
    }

    /// What the program calls this item; every other text as it is.
    pub fn of(&self, text: &str) -> String {
        self.0.get(text).cloned().unwrap_or_else(|| text.to_owned())
    }
}

pub fn text(json: &Json) -> String {
    json.as_str().unwrap_or_default().to_owned()
}

/// What is written into the fields of a record: a field is named by the way to it, in the third of
/// several groups `ITEM.field.2.inner`.
pub fn fields(at: &str, json: &Json, ids: &Ids) -> Wanted {
    let mut wanted = Vec::new();
    add(at, json, ids, &mut wanted);
    wanted
}

fn add(at: &str, json: &Json, ids: &Ids, wanted: &mut Wanted) {
    let under = |field: &str| match at {
        "" => field.to_owned(),
        at => format!("{at}.{field}"),
    };
    match json {
        Json::Object(_) if length(json).is_some() => {
            wanted.extend(length(json).map(|length| (at.to_owned(), vec![length])));
        }
        Json::Object(fields) => {
            for (field, json) in fields.iter().filter(|(field, _)| *field != "id") {
                add(&under(&ids.of(field)), json, ids, wanted);
            }
        }
        Json::Array(all) if all.iter().any(Json::is_object) => {
            for (n, json) in all.iter().enumerate() {
                add(&under(&n.to_string()), json, ids, wanted);
            }
        }
        Json::Array(all) => {
            let values = all.iter().filter_map(Json::as_str).map(|it| ids.of(it));
            wanted.push((at.to_owned(), values.collect()));
        }
        Json::Bool(_) => wanted.push((at.to_owned(), vec!["on".to_owned()])),
        Json::Number(number) => wanted.push((at.to_owned(), vec![number.to_string()])),
        Json::String(text) => wanted.push((at.to_owned(), vec![ids.of(text)])),
        Json::Null => {}
    }
}

/// A length as it is typed where the master unit is the centimetre.
pub fn length(json: &Json) -> Option<String> {
    let (nm, unit) = (json.get("nm")?.as_i64()?, json.get("unit")?.as_str()?);
    let (per, after) = match unit {
        "cm" => (10_000_000, ""),
        "mm" => (1_000_000, " mm"),
        other => panic!("the fixture has no {other}"),
    };
    let rest = format!("{:07}", nm.abs() % per * (10_000_000 / per));
    let number = format!("{}.{rest}", nm.abs() / per);
    let number = number.trim_end_matches('0').trim_end_matches('.');
    Some(format!("{}{number}{after}", if nm < 0 { "-" } else { "" }))
}

/// A grade as people write it.
pub fn grade(grade: &Json, spec: &Json) -> String {
    let named = |list: &Json, id: &Json, field: &str| {
        let mut items = list.as_array().into_iter().flatten();
        text(&items.find(|item| item["id"] == *id).expect("an item")[field])
    };
    let size = |id: &Json| named(&spec["sizes"]["sizes"], id, "code");
    if let Some(segments) = grade["segments"]["segments"].as_array() {
        let piece = |it: &Json| {
            let step = length(&it["step"]).expect("a step");
            format!("{}-{} {step}", size(&it["from"]), size(&it["to"]))
        };
        return segments.iter().map(piece).collect::<Vec<_>>().join(", ");
    }
    if let Some(from) = grade["derived"].get("from") {
        let letter = named(&spec["points"]["points"], from, "letter");
        let offset = length(&grade["derived"]["offset"]).expect("an offset");
        return match offset.strip_prefix('-') {
            Some(less) => format!("={letter} - {less}"),
            None => format!("={letter} + {offset}"),
        };
    }
    assert!(grade.get("same").is_some(), "{grade}");
    "same".to_owned()
}

/// A list's rows as cells of a spreadsheet, in these columns.
pub fn cells(
    list: &Json,
    columns: &[String],
    cell: impl Fn(&Json, &str) -> String,
) -> Vec<Vec<String>> {
    let rows = list.as_array().into_iter().flatten();
    let line = |row: &Json| columns.iter().map(|column| cell(row, column)).collect();
    rows.map(line).collect()
}

/// A cell that holds a field's text.
pub fn plain(row: &Json, column: &str) -> String {
    match &row[column] {
        Json::Bool(true) => "x".to_owned(),
        held => length(held).unwrap_or_else(|| text(held)),
    }
}

/// What a document says otherwise than the fixture, after its ids are put in the fixture's words.
///
/// What is mapped: the id of every item of a list (whatever has an `id`), to the id of the item at
/// the same place of the same list in the fixture; and wherever such an id stands as a whole text or
/// as the name of a field. Nothing else: not the order of a list, no letter, no number, no file.
pub fn differences(published: &Json, fixture: &Json) -> Vec<String> {
    let mut ids = BTreeMap::new();
    pairs(published, fixture, &mut ids);
    let distinct: std::collections::BTreeSet<_> = ids.values().collect();
    assert_eq!(distinct.len(), ids.len(), "no two ids stand for one");
    let mut found = Vec::new();
    compare("", &renamed(published, &ids), fixture, &mut found);
    found
}

fn pairs(published: &Json, fixture: &Json, ids: &mut BTreeMap<String, String>) {
    match (published, fixture) {
        (Json::Object(a), Json::Object(b)) => {
            if let (Some(Json::String(a)), Some(Json::String(b))) = (a.get("id"), b.get("id")) {
                ids.insert(a.clone(), b.clone());
            }
            for (field, a) in a {
                if let Some(b) = b.get(field) {
                    pairs(a, b, ids);
                }
            }
        }
        (Json::Array(a), Json::Array(b)) => {
            for (a, b) in a.iter().zip(b) {
                pairs(a, b, ids);
            }
        }
        _ => {}
    }
}

fn renamed(json: &Json, ids: &BTreeMap<String, String>) -> Json {
    let name = |text: &String| ids.get(text).unwrap_or(text).clone();
    match json {
        Json::String(text) => Json::String(name(text)),
        Json::Array(all) => all.iter().map(|it| renamed(it, ids)).collect(),
        Json::Object(fields) => {
            let fields = fields.iter();
            fields
                .map(|(field, it)| (name(field), renamed(it, ids)))
                .collect()
        }
        other => other.clone(),
    }
}

fn compare(at: &str, is: &Json, fixture: &Json, found: &mut Vec<String>) {
    match (is, fixture) {
        (Json::Object(a), Json::Object(b)) => {
            let names: std::collections::BTreeSet<_> = a.keys().chain(b.keys()).collect();
            for name in names {
                let (a, b) = (a.get(name), b.get(name));
                let (a, b) = (a.unwrap_or(&Json::Null), b.unwrap_or(&Json::Null));
                compare(&format!("{at}.{name}"), a, b, found);
            }
        }
        (Json::Array(a), Json::Array(b)) if a.len() == b.len() => {
            for (n, (a, b)) in a.iter().zip(b).enumerate() {
                compare(&format!("{at}[{n}]"), a, b, found);
            }
        }
        (a, b) if a == b => {}
        (a, b) => found.push(format!("{at}: {a}, not {b}")),
    }
}
