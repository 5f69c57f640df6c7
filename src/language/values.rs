//! What the document holds, in a reader's words.

use std::collections::BTreeMap;

use crate::spec::decimal::Decimal;
use crate::spec::document::{
    Cell, Colour, DimensionLine, Fields, Grade, Measured, Spot, Value, Word,
};
use crate::spec::{DecimalSign, Entered, Item, ItemId, Length, Spec, Unit};

use super::changes::{other_unit, shown};
use super::message::Text;

/// Values of one spec in one language.
#[derive(Debug, Clone, Copy)]
pub struct Words<'a> {
    pub(super) t: Text,
    pub(super) spec: &'a Spec,
    pub(super) sign: DecimalSign,
    /// What decimals count, where a record says it in a field of its own.
    counted: Option<Measured>,
}

/// One field in words.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct FieldWords {
    pub label: String,
    pub value: String,
    /// The value is in the brand's own words.
    pub typed: bool,
}

impl Text {
    /// The values of this spec, with its decimal sign.
    pub fn words(self, spec: &Spec, sign: DecimalSign) -> Words<'_> {
        Words {
            t: self,
            spec,
            sign,
            counted: None,
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
    /// What a part is in one colourway; a cell that is not there is empty, which is not *none*.
    pub fn cell(&self, cell: Option<&Cell>) -> String {
        let t = self.t;
        match cell {
            None => t.say("change-empty").to_string(),
            Some(Cell::None {}) => t.say("cell-none").to_string(),
            Some(Cell::Natural {}) => t.say("cell-natural").to_string(),
            Some(Cell::DyedToMatch { part }) => t
                .say("cell-dyed-to-match")
                .with("part", self.item(part))
                .to_string(),
            Some(Cell::Colour(colour)) => {
                let mut parts = vec![colour.name.clone(), colour.reference.clone()];
                parts.extend(self.colour(colour));
                parts.extend(colour.screen.clone());
                parts.retain(|part| !part.is_empty());
                parts.join(" · ")
            }
        }
    }

    /// What else is said of a colour than its name and reference: what it is on, how it was
    /// measured, whether it is approved.
    pub fn colour(&self, colour: &Colour) -> Vec<String> {
        let t = self.t;
        let mut said = Vec::new();
        if !colour.substrate.is_empty() {
            let substrate = colour.substrate.as_str();
            said.push(t.say("colour-on").with("substrate", substrate).to_string());
        }
        if let Some(lab) = &colour.lab {
            let number = |number: Decimal| shown(number.show(self.sign));
            said.push(
                t.say("colour-lab")
                    .with("l", number(lab.l))
                    .with("a", number(lab.a))
                    .with("b", number(lab.b))
                    .with("illuminant", t.name(&lab.illuminant))
                    .with("observer", t.name(&lab.observer))
                    .to_string(),
            );
        }
        said.extend(colour.approval.map(|it| t.name(&it).to_string()));
        said
    }

    /// Letter and name of an item.
    pub fn item(&self, id: &ItemId) -> String {
        self.t.item(id, &[self.spec])
    }

    /// The fields that say something; a flag that is not set says nothing.
    pub fn fields(&self, fields: &Fields) -> Vec<FieldWords> {
        let said = fields.iter();
        let said = said.filter(|(_, value)| *value != Value::Flag(false));
        let unit = fields.iter().find(|(name, _)| name == "consumption.unit");
        let unit = unit.and_then(|(_, value)| match value {
            Value::Word { word, .. } => Measured::from_word(word),
            _ => None,
        });
        let said = said.map(|(name, value)| FieldWords {
            label: self.t.field(name).to_string(),
            value: self.counting(name, unit).value(value, Some(name)),
            typed: matches!(value, Value::Text(_)),
        });
        said.collect()
    }

    /// For a field of this name: what garments take is said in the material's unit.
    pub(super) fn counting(mut self, field: &str, unit: Option<Measured>) -> Self {
        self.counted = unit.filter(|_| field.starts_with("consumption."));
        self
    }

    /// In the master unit, with the other one in brackets; as it was typed, where the master unit
    /// has no such step.
    fn length(&self, length: Entered, tolerance: bool) -> String {
        let fits = |master: &Unit| {
            master.is_metric() == length.unit.is_metric()
                || length.nm.is_multiple_of(master.fine_step())
        };
        let unit = self.spec.header.unit.filter(fits).unwrap_or(length.unit);
        self.both_units(length.nm, unit, tolerance)
    }

    /// As it was typed, with the other unit in brackets.
    pub(super) fn typed(&self, length: Entered) -> String {
        self.both_units(length.nm, length.unit, false)
    }

    /// A tolerance is never widened by the other unit.
    fn both_units(&self, length: Length, unit: Unit, tolerance: bool) -> String {
        let other = other_unit(unit);
        let reference = if tolerance {
            length.tolerance_in(other)
        } else {
            length
        };
        let reference = reference.show(other, other.fine_step(), self.sign);
        let fine = unit.fine_step();
        let value = match length.is_multiple_of(fine) {
            true => length.show(unit, fine, self.sign),
            false => length.exact(unit, self.sign),
        };
        self.t
            .say("change-both-units")
            .with("value", shown(value))
            .with("unit", unit.symbol())
            .with("other", shown(reference))
            .with("other-unit", other.symbol())
            .to_string()
    }

    /// What a field holds; `field` is its name in the document.
    pub fn value(&self, value: &Value, field: Option<&str>) -> String {
        let t = self.t;
        // Of nested records the inner name: what belongs together is read alike wherever it is.
        let field = field.map(|field| field.rsplit('.').next().unwrap_or(field));
        match value {
            Value::Text(text) => text.clone(),
            Value::Flag(true) => t.say("change-yes").to_string(),
            Value::Flag(false) => t.say("change-no").to_string(),
            Value::Length(length) => self.length(*length, matches!(field, Some("minus" | "plus"))),
            Value::Number(number) => number.to_string(),
            Value::Decimal(decimal) => self.decimal(*decimal),
            Value::Word { kind, word } => t.word(kind, word).to_string(),
            Value::Unit(unit) => t.name(unit).to_string(),
            Value::Measured(state) => t.name(state).to_string(),
            Value::Item(item) => t.item(item, &[self.spec]),
            Value::File(file) => file.fingerprint(),
            Value::List(values) => {
                let long = matches!(field, Some("bands" | "texts" | "evidence" | "exemptions"));
                let values = values.iter().map(|value| self.value(value, field));
                let values: Vec<String> = values.collect();
                values.join(if long { "; " } else { ", " })
            }
            Value::ByItem(values) => self.by_item(values, field),
            Value::Group(members) => self.group(field.unwrap_or_default(), members),
            Value::Grade(grade) => self.grade(grade),
            Value::Cell(cell) => self.cell(Some(cell)),
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

    fn decimal(&self, decimal: Decimal) -> String {
        let value = shown(decimal.show(self.sign));
        match self.counted {
            None => value,
            Some(unit) => self
                .t
                .say("change-amount")
                .with("value", value)
                .with("unit", self.t.name(&unit))
                .to_string(),
        }
    }

    /// In the order of the sizes; of what is no size, in the order of the ids.
    fn by_item(&self, values: &BTreeMap<ItemId, Value>, field: Option<&str>) -> String {
        let order = |id: &ItemId| self.spec.items().position(|item| item.id() == id);
        let mut values: Vec<_> = values.iter().collect();
        values.sort_by_key(|(id, _)| order(id));
        let values = values.into_iter().map(|(id, value)| {
            self.t
                .say("change-by-item")
                .with("item", self.letter(id))
                .with("value", self.value(value, field))
                .to_string()
        });
        values.collect::<Vec<_>>().join(", ")
    }

    /// What an item is known by: a size by its code.
    pub(super) fn letter(&self, id: &ItemId) -> String {
        let letter = self.spec.item(id).map(Item::letter);
        letter.unwrap_or(id.as_str()).to_owned()
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
    pub(super) fn spot(&self, x: u16, y: u16) -> String {
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
        match grade {
            Grade::Same {} => t.say("change-grade-same").to_string(),
            Grade::Segments { segments } => {
                let texts = segments.iter().map(|segment| {
                    t.say("change-grade-segment")
                        .with("range", self.range(&segment.from, &segment.to))
                        .with("step", self.length(segment.step, false))
                        .to_string()
                });
                texts.collect::<Vec<_>>().join(", ")
            }
            Grade::Explicit { values } => {
                let values = values.iter();
                let values = values.map(|(size, value)| (size.clone(), Value::Length(*value)));
                self.by_item(&values.collect(), None)
            }
            Grade::Derived { from, offset } => {
                let less = offset.nm.is_negative();
                let offset = Entered {
                    nm: offset.nm.abs(),
                    ..*offset
                };
                t.say(match less {
                    true => "change-grade-less",
                    false => "change-grade-more",
                })
                .with("point", t.item(from, &[self.spec]))
                .with("offset", self.length(offset, false))
                .to_string()
            }
        }
    }

    /// `XS–L`; one size by itself.
    pub(super) fn range(&self, from: &ItemId, to: &ItemId) -> String {
        if from == to {
            return self.letter(from);
        }
        self.t
            .say("change-range")
            .with("from", self.letter(from))
            .with("to", self.letter(to))
            .to_string()
    }
}
