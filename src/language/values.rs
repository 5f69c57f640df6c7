//! What the document holds, in a reader's words.

use std::collections::BTreeMap;

use crate::spec::document::{Cell, DimensionLine, Fields, Grade, Spot, Value};
use crate::spec::{DecimalSign, Entered, ItemId, Spec};

use super::changes::{other_unit, shown};
use super::message::Text;

/// Values of one spec in one language.
#[derive(Debug, Clone, Copy)]
pub struct Words<'a> {
    t: Text,
    spec: &'a Spec,
    sign: DecimalSign,
}

/// One field in words.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct FieldWords {
    pub label: String,
    pub value: String,
}

impl Text {
    /// The values of this spec, with its decimal sign.
    pub fn words(self, spec: &Spec, sign: DecimalSign) -> Words<'_> {
        Words {
            t: self,
            spec,
            sign,
        }
    }

    /// What a part is in one colourway; a cell that is not there is empty, which is not *none*.
    pub fn cell(self, cell: Option<&Cell>, spec: &Spec) -> String {
        match cell {
            None => self.say("change-empty").to_string(),
            Some(Cell::None {}) => self.say("cell-none").to_string(),
            Some(Cell::Natural {}) => self.say("cell-natural").to_string(),
            Some(Cell::DyedToMatch { part }) => self
                .say("cell-dyed-to-match")
                .with("part", self.item(part, &[spec]))
                .to_string(),
            Some(Cell::Colour(colour)) => {
                let reference = Some(&colour.reference).filter(|it| !it.is_empty());
                let parts = [Some(&colour.name), reference, colour.screen.as_ref()];
                let parts: Vec<&str> = parts.into_iter().flatten().map(String::as_str).collect();
                parts.join(" · ")
            }
        }
    }

    /// Letter and name of an item, from the first version that has it.
    pub(super) fn item(self, id: &ItemId, specs: &[&Spec]) -> String {
        let Some(item) = specs.iter().find_map(|spec| spec.item(id)) else {
            return id.as_str().to_owned();
        };
        let text = self
            .say("change-item")
            .with("letter", item.letter())
            .with("name", item.name())
            .to_string();
        text.trim().to_owned()
    }
}

impl Words<'_> {
    /// The fields that say something; a flag that is not set says nothing.
    pub fn fields(&self, fields: &Fields) -> Vec<FieldWords> {
        let said = fields.iter();
        let said = said.filter(|(_, value)| *value != Value::Flag(false));
        let said = said.map(|(name, value)| FieldWords {
            label: self.t.field(name).to_string(),
            value: self.value(value, Some(name)),
        });
        said.collect()
    }

    /// With the other unit in brackets; a tolerance is never widened by that.
    fn length(&self, length: Entered, tolerance: bool) -> String {
        let other = other_unit(length.unit);
        let reference = if tolerance {
            length.nm.tolerance_in(other)
        } else {
            length.nm
        };
        let reference = reference.show(other, other.fine_step(), self.sign);
        self.t
            .say("change-both-units")
            .with("value", shown(length.exact(self.sign)))
            .with("unit", length.unit.symbol())
            .with("other", shown(reference))
            .with("other-unit", other.symbol())
            .to_string()
    }

    /// What a field holds; `field` is its name in the document.
    pub fn value(&self, value: &Value, field: Option<&str>) -> String {
        let t = self.t;
        match value {
            Value::Text(text) => text.clone(),
            Value::Flag(true) => t.say("change-yes").to_string(),
            Value::Flag(false) => t.say("change-no").to_string(),
            Value::Length(length) => self.length(*length, matches!(field, Some("minus" | "plus"))),
            Value::Number(number) => number.to_string(),
            Value::Decimal(decimal) => shown(decimal.show(self.sign)),
            Value::Word { kind, word } => t.word(kind, word).to_string(),
            Value::Unit(unit) => t.name(unit).to_string(),
            Value::Measured(state) => t.name(state).to_string(),
            Value::Item(item) => t.item(item, &[self.spec]),
            Value::File(file) => file.fingerprint(),
            Value::List(values) => {
                let values = values.iter().map(|value| self.value(value, None));
                values.collect::<Vec<_>>().join("; ")
            }
            Value::ByItem(values) => self.by_item(values),
            Value::Group(values) => {
                let values = values.iter().map(|(name, value)| {
                    t.say("change-named")
                        .with("name", t.field(name))
                        .with("value", self.value(value, Some(name)))
                        .to_string()
                });
                values.collect::<Vec<_>>().join(", ")
            }
            Value::Grade(grade) => self.grade(grade),
            Value::Cell(cell) => t.cell(Some(cell), self.spec),
            Value::Marker(marker) => format!(
                "{}: {}",
                t.item(&marker.item, &[self.spec]),
                self.spot(marker.x, marker.y)
            ),
            Value::Line(line) => self.dimension_line(line),
            Value::BlowUp(blow_up) => t
                .say("change-blow-up")
                .with("drawing", t.item(&blow_up.drawing, &[self.spec]))
                .with("spot", self.spot(blow_up.at.x, blow_up.at.y))
                .to_string(),
            // The whole item stands in the line's head.
            Value::Whole(_) => String::new(),
        }
    }

    /// In the order of the sizes; of what is no size, in the order of the ids.
    fn by_item(&self, values: &BTreeMap<ItemId, Value>) -> String {
        let order = |id: &ItemId| self.spec.items().position(|item| item.id() == id);
        let mut values: Vec<_> = values.iter().collect();
        values.sort_by_key(|(id, _)| order(id));
        let values = values.into_iter().map(|(id, value)| {
            let item = match self.spec.item(id) {
                Some(item) => item.letter().to_owned(),
                None => id.as_str().to_owned(),
            };
            self.t
                .say("change-by-item")
                .with("item", item)
                .with("value", self.value(value, None))
                .to_string()
        });
        values.collect::<Vec<_>>().join("; ")
    }

    fn dimension_line(&self, line: &DimensionLine) -> String {
        let spot = |spot: Spot| self.spot(spot.x, spot.y);
        let message = match line.via {
            None => self
                .t
                .say("change-line")
                .with("from", spot(line.from))
                .with("to", spot(line.to)),
            Some(via) => self
                .t
                .say("change-line-curved")
                .with("from", spot(line.from))
                .with("to", spot(line.to))
                .with("via", spot(via)),
        };
        message.to_string()
    }

    /// In hundredths of the drawing.
    fn spot(&self, x: u16, y: u16) -> String {
        let percent = |part: u16| {
            let text = format!("{}{}{:02}", part / 100, self.sign.sign(), part % 100);
            let trimmed = text
                .trim_end_matches('0')
                .trim_end_matches(self.sign.sign());
            trimmed.to_owned()
        };
        self.t
            .say("change-spot")
            .with("left", percent(x))
            .with("top", percent(y))
            .to_string()
    }

    fn grade(&self, grade: &Grade) -> String {
        let t = self.t;
        let size = |id: &ItemId| {
            let size = self.spec.size(id).map(|size| size.code.as_str());
            size.unwrap_or(id.as_str()).to_owned()
        };
        match grade {
            Grade::Same {} => t.say("change-grade-same").to_string(),
            Grade::Segments { segments } => {
                let texts = segments.iter().map(|segment| {
                    t.say("change-grade-segment")
                        .with("from", size(&segment.from))
                        .with("to", size(&segment.to))
                        .with("step", self.length(segment.step, false))
                        .to_string()
                });
                texts.collect::<Vec<_>>().join("; ")
            }
            Grade::Explicit { values } => {
                let sizes = self.spec.sizes.sizes.iter();
                let texts = sizes.filter_map(|size| {
                    let value = values.get(&size.id)?;
                    Some(
                        t.say("change-grade-value")
                            .with("size", &size.code)
                            .with("value", self.length(*value, false))
                            .to_string(),
                    )
                });
                texts.collect::<Vec<_>>().join("; ")
            }
            Grade::Derived { from, offset } => t
                .say("change-grade-derived")
                .with("point", t.item(from, &[self.spec]))
                .with("offset", self.length(*offset, false))
                .to_string(),
        }
    }
}
