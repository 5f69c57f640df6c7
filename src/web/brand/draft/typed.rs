//! Fields of the document as inputs, by their shapes: one way to write and to read all of them.
//!
//! A field's input is named `ITEM.field`, in a nested record `ITEM.outer.inner`, in the third of
//! several groups `ITEM.field.2.inner`, a value for a size `ITEM.field.SIZE`. What somebody typed
//! stands in its input until it can be read.

use askama::Template;
use serde::Deserialize;
use serde_json::{Map, Value as Json};

use super::rows;
use crate::language::Text;
use crate::spec::document::Shape;
use crate::spec::rule::write_length;
use crate::spec::units::{Entered, Unit};
use crate::spec::{Decimal, Item, ItemId, Spec};
use crate::web::form::{Errors, Fields};

/// How many empty groups follow those that are there.
const SPARE: usize = 2;

/// One field of a form, with those that belong to it.
#[derive(Template)]
#[template(path = "brand/node.html")]
pub struct Node {
    pub at: String,
    pub label: String,
    pub input: Input,
    pub value: String,
    pub error: Option<String>,
}

/// A field without its label, for a cell of a table that has a head.
#[derive(Template)]
#[template(path = "brand/bare.html")]
struct Bare<'a> {
    node: &'a Node,
}

impl Node {
    pub fn is_number(&self) -> bool {
        matches!(self.input, Input::Number)
    }

    pub fn bare(&self) -> impl std::fmt::Display + '_ {
        Bare { node: self }
    }
}

pub enum Input {
    Line,
    /// A line with a list of what is known, by the list's id.
    Known(&'static str),
    /// With a numeric keypad.
    Number,
    Area,
    Tick,
    /// One of several; nothing is one of them.
    One(Vec<Choice>),
    /// Any of several.
    Many(Vec<Choice>),
    /// A file to put in the place of the one that is kept, whose address and its words follow.
    File(Option<(String, String)>),
    Group(Vec<Node>),
    /// Groups of one kind, each with its number.
    Groups(Vec<(String, Vec<Node>)>),
    /// Small fields beside each other: a value for each size.
    Row(Vec<Node>),
}

pub struct Choice {
    pub value: String,
    pub label: String,
    pub chosen: bool,
}

/// What inputs are made from: the spec as it is, and what was sent, if it could not be read.
#[derive(Clone, Copy)]
pub struct Desk<'a> {
    pub t: Text,
    pub spec: &'a Spec,
    pub sent: Option<&'a Fields>,
    pub errors: &'a Errors,
}

/// Fields that take several lines.
const LONG: [&str; 6] = ["text", "note", "reason", "bag_warning", "fold", "tags"];

/// The list of a spec that a field's ids are from.
fn source(field: &str) -> &'static str {
    match field {
        "line" => "lines",
        "opening" | "channel" => "points",
        "thread" | "tape" => "materials",
        "drawing" | "detail" => "drawings",
        "lengths" => "lengths",
        "colourway" => "colourways",
        "from" | "to" | "by_size" | "length_by_size" | "pieces" | "tolerances" | "base_size" => {
            "sizes"
        }
        _ => "parts",
    }
}

impl<'a> Desk<'a> {
    fn unit(&self) -> Option<Unit> {
        self.spec.header.unit
    }

    fn items(&self, field: &str) -> impl Iterator<Item = Item<'a>> + use<'a> {
        let list = source(field);
        // Seams and dimension lines are both called lines.
        let drawn = |item: &Item<'_>| matches!(item, Item::DimensionLine(_));
        let items = self.spec.items();
        items.filter(move |item| item.list() == list && !drawn(item))
    }

    /// What the items are known by that a field has values for: the codes of the sizes.
    pub fn letters(&self, field: &str) -> Vec<String> {
        let items = self.items(field);
        items.map(|item| item.letter().to_owned()).collect()
    }

    /// The inputs of a record's fields, but for items of its own.
    pub fn nodes<'s>(
        &self,
        at: &str,
        shapes: impl IntoIterator<Item = &'s (&'static str, Shape)>,
        json: Option<&Json>,
    ) -> Vec<Node> {
        let nodes = shapes.into_iter().filter_map(|(field, shape)| {
            let held = json.and_then(|json| json.get(field));
            self.node(&join(at, field), field, shape, held)
        });
        nodes.collect()
    }

    fn node(&self, at: &str, field: &str, shape: &Shape, json: Option<&Json>) -> Option<Node> {
        let input = match shape {
            Shape::Text if LONG.contains(&field) => Input::Area,
            Shape::Text if field == "stitch" => Input::Known("known-stitches"),
            Shape::Text => Input::Line,
            Shape::Number | Shape::Decimal => Input::Number,
            Shape::Length => Input::Number,
            Shape::Flag => Input::Tick,
            Shape::Word { kind, words } => Input::One(self.words(at, kind, words, json)),
            Shape::Item => Input::One(self.choices(at, field, json)),
            Shape::File => {
                let kept = json.and_then(Json::as_str);
                let kept = kept.map(|file| {
                    // From an item's page, where files are taken: of the same style.
                    let words = self.t.say("listed-file-kept");
                    (format!("../../files/{file}"), words.to_string())
                });
                Input::File(kept)
            }
            Shape::List(of) => match &**of {
                Shape::Word { kind, words } => Input::Many(self.words(at, kind, words, json)),
                Shape::Item => Input::Many(self.choices(at, field, json)),
                Shape::Text => Input::Line,
                Shape::Group(shapes) => Input::Groups(self.groups(at, shapes, json)),
                _ => return None,
            },
            Shape::ByItem(of) => {
                let nodes = self.items(field).filter_map(|item| {
                    let id = item.id().as_str();
                    let held = json.and_then(|json| json.get(id));
                    let node = self.node(&join(at, id), field, of, held)?;
                    Some(Node {
                        label: item.letter().to_owned(),
                        ..node
                    })
                });
                let nodes: Vec<Node> = nodes.collect();
                if nodes.is_empty() {
                    return None;
                }
                Input::Row(nodes)
            }
            Shape::Record(shapes) | Shape::Group(shapes) => {
                Input::Group(self.nodes(at, shapes, json))
            }
            Shape::OneOf(shapes) => Input::Group(self.nodes(at, shapes, json)),
            Shape::Unit | Shape::Measured | Shape::Grade | Shape::Cell | Shape::Own => {
                return None;
            }
        };
        Some(Node {
            label: self.t.field(&named(field, at)).to_string(),
            value: self.text(at, shape, json),
            error: self.errors.of(at).map(str::to_owned),
            at: at.to_owned(),
            input,
        })
    }

    /// What stands in a field of one line.
    fn text(&self, at: &str, shape: &Shape, json: Option<&Json>) -> String {
        if let Some(sent) = self.sent {
            return match shape {
                Shape::Flag => if sent.has(at) { "on" } else { "" }.to_owned(),
                _ => sent.text(at).to_owned(),
            };
        }
        match (shape, json) {
            (Shape::Flag, Some(Json::Bool(true))) => "on".to_owned(),
            (Shape::Length, Some(json)) => {
                let entered = Entered::deserialize(json).ok();
                entered.map_or(String::new(), |it| write_length(it, self.unit()))
            }
            (Shape::List(_), Some(Json::Array(list))) => {
                let texts: Vec<&str> = list.iter().filter_map(Json::as_str).collect();
                texts.join(", ")
            }
            (_, Some(Json::String(text))) => text.clone(),
            (_, Some(Json::Number(number))) => number.to_string(),
            _ => String::new(),
        }
    }

    fn is_chosen(&self, at: &str, value: &str, json: Option<&Json>) -> bool {
        match (self.sent, json) {
            (Some(sent), _) => sent.all(at).any(|chosen| chosen == value),
            (None, Some(Json::Array(list))) => list.iter().any(|chosen| chosen == value),
            (None, Some(chosen)) => chosen == value,
            (None, None) => false,
        }
    }

    fn words(
        &self,
        at: &str,
        kind: &str,
        words: &[&'static str],
        json: Option<&Json>,
    ) -> Vec<Choice> {
        let choices = words.iter().map(|word| Choice {
            value: (*word).to_owned(),
            label: self.t.word(kind, word).to_string(),
            chosen: self.is_chosen(at, word, json),
        });
        choices.collect()
    }

    fn choices(&self, at: &str, field: &str, json: Option<&Json>) -> Vec<Choice> {
        let choices = self.items(field).map(|item| Choice {
            value: item.id().to_string(),
            label: match (item, item.name()) {
                (Item::Drawing(drawing), "") => self.t.name(&drawing.view).to_string(),
                (_, name) => format!("{} {name}", item.letter()).trim().to_owned(),
            },
            chosen: self.is_chosen(at, item.id().as_str(), json),
        });
        choices.collect()
    }

    fn groups(
        &self,
        at: &str,
        shapes: &[(&'static str, Shape)],
        json: Option<&Json>,
    ) -> Vec<(String, Vec<Node>)> {
        let held = json.and_then(Json::as_array);
        let count = match (self.sent, held) {
            (Some(sent), _) => sent.all(at).count(),
            (None, held) => held.map_or(0, Vec::len) + SPARE,
        };
        let groups = (0..count).map(|number| {
            let number_at = join(at, &number.to_string());
            let held = held.and_then(|held| held.get(number));
            (number.to_string(), self.nodes(&number_at, shapes, held))
        });
        groups.collect()
    }
}

/// Reads what was typed.
pub struct Reader<'a> {
    pub t: Text,
    pub fields: &'a Fields,
    pub unit: Option<Unit>,
    pub spec: &'a Spec,
    pub errors: &'a mut Errors,
}

impl Reader<'_> {
    /// Sets the fields of these shapes in a record; what no input stands for stays as it is.
    pub fn read<'s>(
        &mut self,
        at: &str,
        shapes: impl IntoIterator<Item = &'s (&'static str, Shape)>,
        record: &mut Map<String, Json>,
    ) {
        for (field, shape) in shapes {
            let old = record.remove(*field);
            if let Some(new) = self.value(&join(at, field), field, shape, old) {
                record.insert((*field).to_owned(), new);
            }
        }
    }

    fn value(&mut self, at: &str, field: &str, shape: &Shape, old: Option<Json>) -> Option<Json> {
        match shape {
            Shape::Text if LONG.contains(&field) => words(self.fields.text(at)),
            Shape::Text => words(&self.fields.line(self.t, at, self.errors)),
            Shape::Flag => self.fields.has(at).then_some(Json::Bool(true)),
            Shape::Number => {
                let typed = self.fields.text(at);
                let number = typed.parse::<u32>();
                if number.is_err() && !typed.is_empty() {
                    self.errors
                        .add(at, self.t.say("error-whole-number").with("typed", typed));
                }
                number.ok().map(Json::from)
            }
            Shape::Decimal => {
                let typed = self.fields.text(at);
                let decimal = Decimal::read(typed);
                if decimal.is_err() && !typed.is_empty() {
                    self.errors
                        .add(at, self.t.say("error-decimal").with("typed", typed));
                }
                decimal
                    .ok()
                    .map(|decimal| Json::String(decimal.to_string()))
            }
            Shape::Length => {
                let typed = self.fields.text(at);
                if typed.is_empty() {
                    return None;
                }
                match Entered::read_in(typed, self.unit) {
                    Ok(entered) => serde_json::to_value(entered).ok(),
                    Err(why) => {
                        self.errors.add(at, self.t.not_a_length(why, typed));
                        None
                    }
                }
            }
            Shape::Word { words: all, .. } => {
                let chosen = self.fields.text(at);
                all.contains(&chosen)
                    .then(|| Json::String(chosen.to_owned()))
            }
            Shape::Item => {
                let chosen = ItemId::new(self.fields.text(at));
                // What was chosen may be gone since: the checks tell of it.
                let known =
                    self.spec.item(&chosen).is_some() || old == Some(chosen.as_str().into());
                known.then(|| Json::String(chosen.to_string()))
            }
            Shape::List(of) => self.list(at, field, of, old),
            Shape::ByItem(of) => {
                let mut values = Map::new();
                let list = source(field);
                let items: Vec<_> = self.spec.items().filter(|it| it.list() == list).collect();
                for item in items {
                    let id = item.id().as_str();
                    let old = old.as_ref().and_then(|old| old.get(id)).cloned();
                    if let Some(value) = self.value(&join(at, id), field, of, old) {
                        values.insert(id.to_owned(), value);
                    }
                }
                (!values.is_empty()).then_some(Json::Object(values))
            }
            Shape::Record(shapes) | Shape::Group(shapes) => self.group(at, shapes, old),
            Shape::OneOf(shapes) => {
                let written = shapes.iter().find_map(|(name, shape)| {
                    let old = old.as_ref().and_then(|old| old.get(name)).cloned();
                    let value = self.value(&join(at, name), name, shape, old)?;
                    Some((*name, value))
                });
                written.map(|(name, value)| {
                    Json::Object([(name.to_owned(), value)].into_iter().collect())
                })
            }
            // Set elsewhere: by an upload, in the grid, on the matrix.
            Shape::File
            | Shape::Unit
            | Shape::Measured
            | Shape::Grade
            | Shape::Cell
            | Shape::Own => old,
        }
    }

    fn list(&mut self, at: &str, field: &str, of: &Shape, old: Option<Json>) -> Option<Json> {
        let list: Vec<Json> = match of {
            Shape::Word { words: all, .. } => {
                let chosen = self.fields.all(at).filter(|it| all.contains(it));
                chosen.map(Json::from).collect()
            }
            Shape::Item => {
                let known = |id: &&str| self.spec.item(&ItemId::new(*id)).is_some();
                self.fields.all(at).filter(known).map(Json::from).collect()
            }
            Shape::Text => {
                let typed = self.fields.line(self.t, at, self.errors);
                let texts = typed.split([',', ';']).map(str::trim);
                texts
                    .filter(|text| !text.is_empty())
                    .map(Json::from)
                    .collect()
            }
            Shape::Group(_) => {
                let rows: Vec<String> = self.fields.all(at).map(str::to_owned).collect();
                let held = |row: &str| {
                    let number: usize = row.parse().ok()?;
                    old.as_ref()?.get(number).cloned()
                };
                let mut groups = Vec::new();
                for row in rows {
                    groups.extend(self.value(&join(at, &row), field, of, held(&row)));
                }
                groups
            }
            _ => return old,
        };
        (!list.is_empty()).then_some(Json::Array(list))
    }

    fn group(
        &mut self,
        at: &str,
        shapes: &[(&'static str, Shape)],
        old: Option<Json>,
    ) -> Option<Json> {
        let mut group = match old {
            Some(Json::Object(group)) => group,
            _ => Map::new(),
        };
        self.read(at, shapes, &mut group);
        (!group.is_empty()).then_some(Json::Object(group))
    }
}

fn words(text: &str) -> Option<Json> {
    (!text.is_empty()).then(|| Json::String(text.to_owned()))
}

fn join(at: &str, field: &str) -> String {
    if at.is_empty() {
        field.to_owned()
    } else {
        rows::at(at, field)
    }
}

/// The name that a field has in the document: with the record that it is nested in.
fn named(field: &str, at: &str) -> String {
    const RECORDS: [&str; 7] = [
        "how",
        "fabric",
        "zip",
        "cord",
        "consumption",
        "care",
        "carton",
    ];
    let mut path = at.rsplit('.').skip(1);
    match path.next() {
        Some(outer) if RECORDS.contains(&outer) => format!("{outer}.{field}"),
        _ => field.to_owned(),
    }
}
