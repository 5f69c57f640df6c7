//! A change list in a reader's words: one line for each change.

use std::collections::BTreeMap;

use crate::spec::change::{Change, Kind, SizeValue, Value, Version};
use crate::spec::document::{Cell, DimensionLine, Grade, Marker, Spot};
use crate::spec::{DecimalSign, Entered, Item, ItemId, Length, Section, Spec, Unit};

use super::message::{Message, Text};
use super::names::Named;

/// One change, ready to be read.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct ChangeLine {
    pub section: Section,
    /// What changed; nothing for a field of the header.
    pub item: Option<ItemId>,
    /// It is not in the newer version any more.
    pub removed: bool,
    /// The letter of a point or part, the code of a size or colourway; may be empty.
    pub letter: String,
    /// The letter belongs to a part.
    pub is_part: bool,
    /// The item in the brand's words; of the header, the field.
    pub name: String,
    /// Added, removed, changed ...
    pub kind: String,
    /// What of the item changed; empty where it is the whole.
    pub field: String,
    pub old: Option<String>,
    pub new: Option<String>,
    /// Every size whose value moved.
    pub sizes: Vec<SizeLine>,
}

/// One size of a point, before and after, in the master unit of each version.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct SizeLine {
    pub code: String,
    pub base: bool,
    pub old: Option<String>,
    pub new: Option<String>,
    /// The new value in the other unit, as a reference, with its unit.
    pub reference: Option<String>,
}

/// What a measurement of one unit is shown beside as a reference.
pub fn other_unit(unit: Unit) -> Unit {
    match unit {
        Unit::Cm | Unit::Mm => Unit::Inch,
        Unit::Inch => Unit::Cm,
    }
}

/// A measurement as pages show it: a true minus instead of a hyphen.
pub fn shown(number: String) -> String {
    number.replace('-', "−")
}

impl Named for Kind {
    fn name(&self, t: Text) -> Message {
        t.say(match self {
            Kind::Added { .. } => "change-added",
            Kind::Removed => "change-removed",
            Kind::Moved { .. } => "change-moved",
            Kind::Relettered => "change-relettered",
            Kind::Changed => "change-changed",
            Kind::Regraded => "change-regraded",
        })
    }
}

impl Text {
    /// The lines of a change list, in its order.
    pub fn change_lines(
        self,
        changes: &[Change],
        old: Version<'_>,
        new: Version<'_>,
        sign: DecimalSign,
    ) -> Vec<ChangeLine> {
        let teller = Teller {
            t: self,
            old,
            new,
            sign,
        };
        changes.iter().map(|change| teller.line(change)).collect()
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
    fn item(self, id: &ItemId, specs: &[&Spec]) -> String {
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

/// Both versions, to find the names of what changed.
struct Teller<'a> {
    t: Text,
    old: Version<'a>,
    new: Version<'a>,
    sign: DecimalSign,
}

impl Teller<'_> {
    fn line(&self, change: &Change) -> ChangeLine {
        let t = self.t;
        let item = change.item.as_ref().and_then(|id| self.find(id));
        let field = change.field.as_deref();
        let field = field.map(|field| t.field(field).to_string());
        let (name, field) = match item {
            None => (field.unwrap_or_default(), String::new()),
            Some(
                Item::Marker(Marker { item, .. }) | Item::DimensionLine(DimensionLine { item, .. }),
            ) => (
                t.item(item, &self.specs()),
                self.on_drawing(change.within.as_ref()),
            ),
            Some(Item::BlowUp(blow_up)) => (
                t.item(&blow_up.drawing, &self.specs()),
                self.on_drawing(change.within.as_ref()),
            ),
            Some(Item::Drawing(drawing)) if drawing.title.is_empty() => {
                (t.name(&drawing.view).to_string(), field.unwrap_or_default())
            }
            Some(item) => {
                let within = change.within.as_ref().map(|colourway| {
                    t.say("change-in-colourway")
                        .with("colourway", t.item(colourway, &self.specs()))
                        .to_string()
                });
                let field = [field, within].into_iter().flatten().collect::<Vec<_>>();
                (item.name().to_owned(), field.join(", "))
            }
        };
        let (old, new) = match change.kind {
            Kind::Moved { from, to } => {
                let place = |at: usize| t.say("change-place").with("place", at + 1).to_string();
                (Some(place(from)), Some(place(to)))
            }
            // The whole item stands in the line's head.
            Kind::Added { .. } | Kind::Removed => (None, None),
            _ if change.field.is_none() && change.old.is_none() && change.new.is_none() => {
                (None, None)
            }
            _ => {
                let value = |value: &Option<Value>, spec| match value {
                    Some(value) => self.value(value, change.field.as_deref(), spec),
                    None => t.say("change-empty").to_string(),
                };
                (
                    Some(value(&change.old, self.old.spec)),
                    Some(value(&change.new, self.new.spec)),
                )
            }
        };
        ChangeLine {
            section: change.section,
            item: change.item.clone(),
            removed: change
                .item
                .as_ref()
                .is_some_and(|id| self.new.spec.item(id).is_none()),
            letter: match item {
                None => String::new(),
                Some(item) => item.letter().to_owned(),
            },
            is_part: matches!(item, Some(Item::Part(_))),
            name,
            kind: t.name(&change.kind).to_string(),
            field,
            old,
            new,
            sizes: match &change.item {
                Some(point) => self.sizes(point, &change.sizes),
                None => Vec::new(),
            },
        }
    }

    fn specs(&self) -> [&Spec; 2] {
        [self.new.spec, self.old.spec]
    }

    fn find(&self, id: &ItemId) -> Option<Item<'_>> {
        self.new.spec.item(id).or_else(|| self.old.spec.item(id))
    }

    fn on_drawing(&self, drawing: Option<&ItemId>) -> String {
        let drawing = match drawing.and_then(|id| self.find(id)) {
            Some(Item::Drawing(drawing)) if drawing.title.is_empty() => {
                self.t.name(&drawing.view).to_string()
            }
            Some(item) => item.name().to_owned(),
            None => String::new(),
        };
        self.t
            .say("change-on-drawing")
            .with("drawing", drawing)
            .to_string()
    }

    fn sizes(&self, point: &ItemId, sizes: &[SizeValue]) -> Vec<SizeLine> {
        let value = |value: Option<Length>, version: Version<'_>| {
            let chart = version.chart?;
            let step = chart.row(point)?.step;
            Some(shown(value?.show(chart.unit, step, self.sign)))
        };
        let base = self.new.spec.header.base_size.as_ref();
        let moved = sizes.iter().filter(|size| size.moved());
        let lines = moved.map(|size| SizeLine {
            code: match self.find(&size.size) {
                Some(item) => item.letter().to_owned(),
                None => size.size.as_str().to_owned(),
            },
            base: base == Some(&size.size),
            old: value(size.old, self.old),
            new: value(size.new, self.new),
            reference: size.new.zip(self.new.chart).map(|(length, chart)| {
                let other = other_unit(chart.unit);
                let text = length.show(other, other.fine_step(), self.sign);
                format!("{} {}", shown(text), other.symbol())
            }),
        });
        lines.collect()
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

    fn value(&self, value: &Value, field: Option<&str>, spec: &Spec) -> String {
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
            Value::Item(item) => t.item(item, &[spec]),
            Value::File(file) => file.fingerprint(),
            Value::List(values) => {
                let values = values.iter().map(|value| self.value(value, None, spec));
                values.collect::<Vec<_>>().join("; ")
            }
            Value::ByItem(values) => self.by_item(values, spec),
            Value::Group(values) => {
                let values = values.iter().map(|(name, value)| {
                    t.say("change-named")
                        .with("name", t.field(name))
                        .with("value", self.value(value, Some(name), spec))
                        .to_string()
                });
                values.collect::<Vec<_>>().join(", ")
            }
            Value::Grade(grade) => self.grade(grade, spec),
            Value::Cell(cell) => t.cell(Some(cell), spec),
            Value::Marker(marker) => format!(
                "{}: {}",
                t.item(&marker.item, &[spec]),
                self.spot(marker.x, marker.y)
            ),
            Value::Line(line) => self.dimension_line(line),
            Value::BlowUp(blow_up) => t
                .say("change-blow-up")
                .with("drawing", t.item(&blow_up.drawing, &[spec]))
                .with("spot", self.spot(blow_up.at.x, blow_up.at.y))
                .to_string(),
            // The whole item stands in the line's head.
            Value::Whole(_) => String::new(),
        }
    }

    /// In the order of the sizes; of what is no size, in the order of the ids.
    fn by_item(&self, values: &BTreeMap<ItemId, Value>, spec: &Spec) -> String {
        let order = |id: &ItemId| spec.items().position(|item| item.id() == id);
        let mut values: Vec<_> = values.iter().collect();
        values.sort_by_key(|(id, _)| order(id));
        let values = values.into_iter().map(|(id, value)| {
            let item = match spec.item(id) {
                Some(item) => item.letter().to_owned(),
                None => id.as_str().to_owned(),
            };
            self.t
                .say("change-by-item")
                .with("item", item)
                .with("value", self.value(value, None, spec))
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

    fn grade(&self, grade: &Grade, spec: &Spec) -> String {
        let t = self.t;
        let size = |id: &ItemId| {
            let size = spec.size(id).map(|size| size.code.as_str());
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
                let sizes = spec.sizes.sizes.iter();
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
                .with("point", t.item(from, &[spec]))
                .with("offset", self.length(*offset, false))
                .to_string(),
        }
    }
}

#[cfg(test)]
mod tests;
