//! The document described as JSON Schema (draft 2020-12), made from its declarations.
//!
//! It lists every field, what it takes and the words of every set. The reader of the program is
//! stricter in what a schema cannot say: text in normalization form C, and no key twice.

use serde_json::{Map, Value as Json, json};

use super::canon::MAX_INTEGER;
use super::document::*;
use super::item::of_list;
use super::units::{Length, Unit};

/// The schema of a spec.
pub fn schema() -> Json {
    let mut writer = Writer {
        section: Section::Header,
        kinds: kinds(),
    };
    let mut sections = Map::new();
    for section in Section::ALL {
        writer.section = *section;
        let shape = writer.object(&section.shapes(), &[]);
        sections.insert(section.name().to_owned(), shape);
    }
    json!({
        "$schema": "https://json-schema.org/draft/2020-12/schema",
        "title": "A garment spec",
        "description": format!("Format {FORMAT}. What is absent is left out; null is refused."),
        "type": "object",
        "properties": sections,
        "additionalProperties": false,
        "$defs": writer.kinds,
    })
}

struct Writer {
    /// Lists go by their names within a section.
    section: Section,
    kinds: Map<String, Json>,
}

impl Writer {
    fn object(&mut self, shapes: &[(&'static str, Shape)], required: &[&str]) -> Json {
        let fields = shapes.iter().map(|(name, shape)| {
            let field = self.field(name, shape);
            ((*name).to_owned(), field)
        });
        let fields: Map<String, Json> = fields.collect();
        json!({
            "type": "object",
            "properties": fields,
            "required": required,
            "additionalProperties": false,
        })
    }

    fn field(&mut self, name: &str, shape: &Shape) -> Json {
        match shape {
            Shape::Text => json!({ "type": "string" }),
            Shape::Flag => json!({ "type": "boolean" }),
            Shape::Number => json!({ "type": "integer", "minimum": 0, "maximum": MAX_INTEGER }),
            Shape::Decimal => kind("decimal"),
            Shape::Length => kind("length"),
            Shape::Unit => kind("unit"),
            Shape::Measured => kind("measured"),
            Shape::Word { words, .. } => json!({ "enum": words }),
            Shape::Item => kind("id"),
            Shape::File => kind("file"),
            Shape::Grade => kind("grade"),
            Shape::Cell => kind("cell"),
            Shape::List(of) => json!({ "type": "array", "items": self.field(name, of) }),
            Shape::ByItem(of) => by_item(self.field(name, of)),
            Shape::Record(shapes) | Shape::Group(shapes) => self.object(shapes, &[]),
            Shape::OneOf(shapes) => {
                let each = shapes.iter().map(|(name, shape)| {
                    let shape = self.field(name, shape);
                    only(name, shape)
                });
                json!({ "oneOf": each.collect::<Vec<_>>() })
            }
            Shape::Own => self.own(name),
        }
    }

    /// The items of a list are described once, by their kind.
    fn own(&mut self, list: &str) -> Json {
        let (name, mut shapes) =
            of_list(self.section, list).expect("every list of items is in the table of items");
        shapes.insert(0, ("id", Shape::Item));
        let item = self.object(&shapes, &["id"]);
        self.kinds.insert(name.to_owned(), item);
        kind(name)
    }
}

fn kind(name: &str) -> Json {
    json!({ "$ref": format!("#/$defs/{name}") })
}

/// An object with this one field.
fn only(name: &str, shape: Json) -> Json {
    json!({
        "type": "object",
        "properties": { name: shape },
        "required": [name],
        "additionalProperties": false,
    })
}

fn by_item(of: Json) -> Json {
    json!({ "type": "object", "additionalProperties": of })
}

fn words<W: Word>() -> Json {
    let words: Vec<&str> = W::ALL.iter().map(|word| word.word()).collect();
    json!({ "enum": words })
}

/// What the document's types read that are not declared field by field.
fn kinds() -> Map<String, Json> {
    let object = |properties: Json, required: &[&str]| {
        json!({
            "type": "object",
            "properties": properties,
            "required": required,
            "additionalProperties": false,
        })
    };
    let nothing = object(json!({}), &[]);
    let segment = object(
        json!({ "from": kind("id"), "to": kind("id"), "step": kind("length") }),
        &["from", "to", "step"],
    );
    let segments = object(
        json!({ "segments": { "type": "array", "items": segment } }),
        &["segments"],
    );
    let explicit = object(json!({ "values": by_item(kind("length")) }), &["values"]);
    let derived = object(
        json!({ "from": kind("id"), "offset": kind("length") }),
        &["from", "offset"],
    );
    let text = json!({ "type": "string" });
    let lab = object(
        json!({
            "l": kind("decimal"),
            "a": kind("decimal"),
            "b": kind("decimal"),
            "illuminant": words::<Illuminant>(),
            "observer": words::<Observer>(),
        }),
        &["l", "a", "b", "illuminant", "observer"],
    );
    let colour = object(
        json!({
            "name": text,
            "reference": text,
            "substrate": text,
            "lab": lab,
            "screen": { "type": "string", "pattern": "^#[0-9a-fA-F]{6}$" },
            "photo": kind("file"),
            "approval": words::<Approval>(),
        }),
        &["name"],
    );
    let max = Length::MAX.as_nm();
    let kinds = json!({
        "id": { "type": "string", "description": "Of an item; never used again for another." },
        "file": { "type": "string", "pattern": "^[0-9a-f]{64}$", "description": "SHA-256." },
        "decimal": {
            "type": "string",
            "pattern": "^-?(0|[1-9][0-9]*)(\\.[0-9]*[1-9])?$",
        },
        "unit": { "enum": Unit::ALL.map(Unit::name) },
        "length": object(
            json!({
                "nm": {
                    "type": "integer",
                    "minimum": -max,
                    "maximum": max,
                    "description": "Whole nanometres.",
                },
                "unit": kind("unit"),
            }),
            &["nm", "unit"],
        ),
        "measured": {
            "oneOf": [
                { "enum": ["as_sewn", "after_finish"] },
                only("after_washes", json!({ "type": "integer", "minimum": 0, "maximum": u8::MAX })),
            ],
        },
        "grade": {
            "oneOf": [
                only("same", nothing.clone()),
                only("segments", segments),
                only("explicit", explicit),
                only("derived", derived),
            ],
        },
        "cell": {
            "oneOf": [
                only("none", nothing.clone()),
                only("natural", nothing),
                only("dyed_to_match", object(json!({ "part": kind("id") }), &["part"])),
                only("colour", colour),
            ],
        },
    });
    match kinds {
        Json::Object(kinds) => kinds,
        _ => Map::new(),
    }
}

#[cfg(test)]
mod tests;
