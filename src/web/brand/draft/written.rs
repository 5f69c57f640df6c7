//! A place of a section written anew where two versions of it differ: its inputs, and what is read
//! from them. Places with a value of one line have some; what is longer is chosen, and written on
//! its own page afterwards.

use std::collections::BTreeMap;

use serde_json::{Map, Value as Json};

use super::colour_cell::{COLOUR, Cells, NATURAL, NONE, match_value};
use super::listed::{section_of, with_section};
use super::typed::{Choice, Desk, Input, Node, Reader};
use crate::language::Text;
use crate::spec::document::{Section, Shape};
use crate::spec::item::of_list;
use crate::spec::merge::Place;
use crate::spec::rule::{self, Names};
use crate::spec::units::Unit;
use crate::spec::{Item, ItemId, Spec};
use crate::web::form::{Errors, Fields};
use crate::web::problem::Problem;

/// Before the name of a place, in the names of its inputs.
const TYPED: &str = "typed";

/// Where a field is: the names of the records around it, and its shape.
struct Field {
    outer: Vec<String>,
    name: &'static str,
    shape: Shape,
}

impl Field {
    /// The field of this name among these, `outer.inner` in a nested record.
    fn find(shapes: Vec<(&'static str, Shape)>, path: &str) -> Option<Field> {
        let (first, rest) = match path.split_once('.') {
            Some((first, rest)) => (first, Some(rest)),
            None => (path, None),
        };
        let (name, shape) = shapes.into_iter().find(|(name, _)| *name == first)?;
        match (rest, shape) {
            (None, shape) => Some(Field {
                outer: Vec::new(),
                name,
                shape,
            }),
            (Some(rest), Shape::Record(inner)) => {
                let mut field = Field::find(inner, rest)?;
                field.outer.insert(0, name.to_owned());
                Some(field)
            }
            _ => None,
        }
    }

    /// Whether it is written in one input.
    fn is_short(&self) -> bool {
        match &self.shape {
            Shape::Text
            | Shape::Number
            | Shape::Decimal
            | Shape::Length
            | Shape::Word { .. }
            | Shape::Item
            | Shape::Unit
            | Shape::Grade => true,
            Shape::List(of) => matches!(**of, Shape::Text),
            _ => false,
        }
    }
}

fn field_of(spec: &Spec, section: Section, place: &Place) -> Option<Field> {
    let field = match place {
        Place::Field(path) => Field::find(section.shapes(), path),
        Place::Of { item, field } => {
            let item = spec.item(item)?;
            let (_, shapes) = of_list(section, item.list())?;
            Field::find(shapes, field)
        }
        _ => None,
    };
    field.filter(Field::is_short)
}

/// The name of the record that holds a place's field, in the form.
fn holder(place: &Place, field: &Field) -> String {
    let mut path = vec![TYPED.to_owned()];
    if let Place::Of { item, .. } = place {
        path.push(item.to_string());
    }
    path.extend(field.outer.iter().cloned());
    path.join(".")
}

/// The key of a colourway's cells in the form.
fn column(colourway: &ItemId) -> String {
    format!("{TYPED}.{colourway}")
}

/// The inputs of a place, named `label`; none where it cannot be written here.
pub fn nodes(desk: Desk<'_>, section: Section, place: &Place, label: &str) -> Vec<Node> {
    if let Place::Cell { colourway, part } = place {
        return cell_nodes(desk, colourway, part);
    }
    let Some(field) = field_of(desk.spec, section, place) else {
        return Vec::new();
    };
    let holder = holder(place, &field);
    let at = format!("{holder}.{}", field.name);
    let nodes = match &field.shape {
        Shape::Grade => vec![line(desk, at, Input::Line)],
        Shape::Unit => {
            let sent = desk.sent.map_or("", |sent| sent.text(&at));
            let choices = Unit::ALL.iter().map(|unit| Choice {
                value: unit.name().to_owned(),
                label: desk.t.name(unit).to_string(),
                chosen: sent == unit.name(),
            });
            let choices = choices.collect();
            vec![line(desk, at, Input::One(choices))]
        }
        shape => desk.nodes(&holder, &[(field.name, shape.clone())], None),
    };
    let named = nodes.into_iter().map(|node| Node {
        label: label.to_owned(),
        ..node
    });
    named.collect()
}

fn line(desk: Desk<'_>, at: String, input: Input) -> Node {
    Node {
        label: String::new(),
        value: desk.sent.map_or("", |sent| sent.text(&at)).to_owned(),
        error: desk.errors.of(&at).map(str::to_owned),
        at,
        input,
    }
}

fn cell_nodes(desk: Desk<'_>, colourway: &ItemId, part: &ItemId) -> Vec<Node> {
    let t = desk.t;
    let at = |field: &str| format!("{}.{part}.{field}", column(colourway));
    let sent = desk.sent.map_or("", |sent| sent.text(&at("kind")));
    let mut kinds = vec![
        (COLOUR.to_owned(), t.say("cell-colour").to_string()),
        (NONE.to_owned(), t.say("cell-none").to_string()),
        (NATURAL.to_owned(), t.say("cell-natural").to_string()),
    ];
    let others = desk
        .spec
        .colourways
        .parts
        .iter()
        .filter(|it| it.id != *part);
    kinds.extend(others.map(|other| {
        let known = Item::Part(other).known_by();
        let label = t.say("cell-dyed-to-match").with("part", known).to_string();
        (match_value(other.id.as_str()), label)
    }));
    let kinds = kinds.into_iter().map(|(value, label)| Choice {
        chosen: value == sent,
        value,
        label,
    });
    let kinds = kinds.collect();
    let labelled = |label: String, node: Node| Node { label, ..node };
    vec![
        labelled(
            t.say("cell-kind").to_string(),
            line(desk, at("kind"), Input::One(kinds)),
        ),
        labelled(
            t.say("cell-name").to_string(),
            line(desk, at("name"), Input::Line),
        ),
        labelled(
            t.say("cell-reference").to_string(),
            line(desk, at("reference"), Input::Line),
        ),
        labelled(
            t.say("cell-screen").to_string(),
            line(desk, at("screen"), Input::Line),
        ),
    ]
}

/// Whether something is written in the inputs of a place.
pub fn is_written(nodes: &[Node]) -> bool {
    let chosen = |input: &Input| match input {
        Input::One(choices) => choices.iter().any(|choice| choice.chosen),
        _ => false,
    };
    nodes
        .iter()
        .any(|node| !node.value.is_empty() || chosen(&node.input))
}

/// What is written at places, put into `spec`, whose section they are of.
pub fn put(
    t: Text,
    spec: &Spec,
    section: Section,
    places: &[&Place],
    fields: &Fields,
    errors: &mut Errors,
) -> Result<Spec, Problem> {
    let mut spec = spec.clone();
    for place in places {
        if let Place::Cell { colourway, part } = place {
            put_cell(t, &mut spec, colourway, part, fields, errors);
            continue;
        }
        let Some(field) = field_of(&spec, section, place) else {
            return Err(Problem::BadForm);
        };
        let holder = holder(place, &field);
        let value = value(t, &spec, &field, &holder, fields, errors);
        let mut content = section_of(&spec, section);
        let record = match place {
            Place::Of { item, .. } => find(&mut content, item).ok_or(Problem::BadForm)?,
            _ => &mut content,
        };
        set(record, &field, value);
        spec = with_section(&spec, section, content)?;
    }
    Ok(spec)
}

/// What is written in a field's input, as the document holds it.
fn value(
    t: Text,
    spec: &Spec,
    field: &Field,
    holder: &str,
    fields: &Fields,
    errors: &mut Errors,
) -> Option<Json> {
    let at = format!("{holder}.{}", field.name);
    match &field.shape {
        Shape::Grade => {
            let typed = fields.line(t, &at, errors);
            if typed.is_empty() {
                return None;
            }
            let points = spec.points.points.iter();
            let names = Names {
                sizes: &spec.sizes.sizes,
                points: points.map(|it| (&it.id, it.letter.as_str())).collect(),
                unit: spec.header.unit,
            };
            match rule::read(&typed, &names) {
                Ok(grade) => serde_json::to_value(grade).ok(),
                Err(why) => {
                    errors.add(at, t.not_a_grade(&why));
                    None
                }
            }
        }
        Shape::Unit => {
            let unit = Unit::from_name(fields.text(&at));
            unit.and_then(|unit| serde_json::to_value(unit).ok())
        }
        shape => {
            let mut record = Map::new();
            let mut reader = Reader {
                t,
                fields,
                unit: spec.header.unit,
                spec,
                errors,
            };
            reader.read(holder, &[(field.name, shape.clone())], &mut record);
            record.remove(field.name)
        }
    }
}

/// The item of this id in a section's lists.
fn find<'a>(content: &'a mut Map<String, Json>, id: &ItemId) -> Option<&'a mut Map<String, Json>> {
    let lists = content.values_mut().filter_map(Json::as_array_mut);
    let mut items = lists.flatten().filter_map(Json::as_object_mut);
    items.find(|item| item.get("id").and_then(Json::as_str) == Some(id.as_str()))
}

fn set(record: &mut Map<String, Json>, field: &Field, value: Option<Json>) {
    let mut record = record;
    for outer in &field.outer {
        let inner = record.entry(outer.clone());
        let inner = inner.or_insert_with(|| Json::Object(Map::new()));
        match inner {
            Json::Object(inner) => record = inner,
            _ => return,
        }
    }
    match value {
        Some(value) => record.insert(field.name.to_owned(), value),
        None => record.remove(field.name),
    };
}

fn put_cell(
    t: Text,
    spec: &mut Spec,
    colourway: &ItemId,
    part: &ItemId,
    fields: &Fields,
    errors: &mut Errors,
) {
    let (column, row) = (column(colourway), part.as_str());
    let mut cells = Cells::default();
    cells.read(t, fields, &column, row, errors);
    let old = spec.colourways.cell(colourway, part).cloned();
    let cell = cells.cell(t, &column, row, &BTreeMap::new(), old.as_ref(), errors);
    let cells = spec.colourways.cells.entry(colourway.clone()).or_default();
    match cell {
        Some(cell) => cells.insert(part.clone(), cell),
        None => cells.remove(part),
    };
}
