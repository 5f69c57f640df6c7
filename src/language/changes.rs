//! A change list in a reader's words: one line for each change.

use crate::spec::change::{Change, Kind, SizeValue, Value, Version};
use crate::spec::document::{BlowUp, DimensionLine, Marker};
use crate::spec::{DecimalSign, Item, ItemId, Length, Section, Spec, Unit};

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
    match number.strip_prefix('-') {
        Some(magnitude) => format!("−{magnitude}"),
        None => number,
    }
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
                drawn @ (Item::Marker(Marker { item, .. })
                | Item::DimensionLine(DimensionLine { item, .. })
                | Item::BlowUp(BlowUp { drawing: item, .. })),
            ) => (
                t.item(item, &self.specs()),
                self.on_drawing(drawn, change.within.as_ref()),
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
                    Some(value) => t
                        .words(spec, self.sign)
                        .value(value, change.field.as_deref()),
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

    /// A letter, a line or a circle on this drawing.
    fn on_drawing(&self, item: Item<'_>, drawing: Option<&ItemId>) -> String {
        let drawing = match drawing.and_then(|id| self.find(id)) {
            Some(Item::Drawing(drawing)) if drawing.title.is_empty() => {
                self.t.name(&drawing.view).to_string()
            }
            Some(item) => item.name().to_owned(),
            None => String::new(),
        };
        let message = match item {
            Item::Marker(_) => self.t.say("change-letter-on").with("drawing", drawing),
            Item::DimensionLine(_) => self.t.say("change-line-on").with("drawing", drawing),
            _ => self.t.say("change-circle-on").with("drawing", drawing),
        };
        message.to_string()
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
}

#[cfg(test)]
mod tests;
