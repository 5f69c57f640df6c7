//! A change list in a reader's words: one line for each change, as a colleague would note it.

mod narrow;

use crate::spec::change::{Change, Kind, SizeValue, Value, Version};
use crate::spec::document::{BlowUp, DimensionLine, Grade, Marker};
use crate::spec::{DecimalSign, Item, ItemId, Length, Section, Spec, Unit};

use super::message::{Message, Text};
use super::values::Words;
use narrow::{Part, narrow};

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
    /// The item in the brand's words; of the header, the field.
    pub name: String,
    /// A field of it changed: what `kind` says by itself is no news.
    pub changed: bool,
    /// `material added`, `re-lettered`, `changed` ...
    pub kind: String,
    /// What of the item changed, and where in it; empty where it is the whole.
    pub field: String,
    /// What differs of the old value and of the new one. One of them alone is the part of a list
    /// that was removed or added.
    pub old: Option<String>,
    pub new: Option<String>,
    /// How far it reaches: `4 sizes change, base M does not`. May be empty.
    pub effect: String,
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
    /// The symbol of the master unit.
    pub unit: &'static str,
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

    /// A change as one sentence, with every size that it moves.
    pub fn change_sentence(self, line: &ChangeLine) -> String {
        let subject = format!("{} {}", line.letter, line.name);
        let mut what: Vec<String> = Vec::new();
        if !line.changed {
            what.push(line.kind.clone());
        }
        if !line.field.is_empty() {
            what.push(line.field.clone());
        }
        // A packing step is a sentence itself.
        let mut told = subject.trim().trim_end_matches('.').to_owned();
        let mut say = |what: String| {
            told = match told.is_empty() {
                true => what,
                false => self
                    .say("change-told")
                    .with("subject", &told)
                    .with("what", what)
                    .to_string(),
            };
        };
        if !what.is_empty() {
            say(what.join(" "));
        }
        let value = self.between(line.old.as_ref(), line.new.as_ref());
        if !value.is_empty() {
            say(value);
        }
        if !line.effect.is_empty() {
            told = self
                .say("change-effect")
                .with("what", &told)
                .with("effect", &line.effect)
                .to_string();
        }
        let sizes = line.sizes.iter().map(|size| {
            self.say("change-size")
                .with("size", &size.code)
                .with("value", self.between(size.old.as_ref(), size.new.as_ref()))
                .with("unit", size.unit)
                .to_string()
        });
        let sizes: Vec<String> = sizes.collect();
        match sizes.is_empty() {
            true => told,
            false => format!("{told}. {}", sizes.join(", ")),
        }
    }

    fn between(self, old: Option<&String>, new: Option<&String>) -> String {
        match (old, new) {
            (Some(old), Some(new)) => self
                .say("change-from-to")
                .with("old", old)
                .with("new", new)
                .to_string(),
            (one, other) => one.or(other).cloned().unwrap_or_default(),
        }
    }
}

/// Both versions, to find the names of what changed.
struct Teller<'a> {
    t: Text,
    old: Version<'a>,
    new: Version<'a>,
    sign: DecimalSign,
}

impl<'a> Teller<'a> {
    fn line(&self, change: &Change) -> ChangeLine {
        let t = self.t;
        let item = change.item.as_ref().and_then(|id| self.find(id));
        let mut told = self.told(change);
        let name = match item {
            // A field of the section is what the line is about.
            None => std::mem::take(&mut told.field).join(", "),
            Some(
                Item::Marker(Marker { item, .. })
                | Item::DimensionLine(DimensionLine { item, .. })
                | Item::BlowUp(BlowUp { drawing: item, .. }),
            ) => t.item(item, &self.specs()),
            Some(Item::Drawing(drawing)) if drawing.title.is_empty() => {
                t.name(&drawing.view).to_string()
            }
            Some(item) => item.name().to_owned(),
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
            name,
            changed: change.kind == Kind::Changed && !marks_the_same(change),
            kind: self.kind(change, item),
            field: told.field.join(", "),
            old: told.old,
            new: told.new,
            effect: self.effect(change),
            sizes: match &change.item {
                Some(point) => self.sizes(point, &change.sizes),
                None => Vec::new(),
            },
        }
    }

    fn kind(&self, change: &Change, item: Option<Item<'_>>) -> String {
        let t = self.t;
        let what = item.map(|item| what(t, item).to_string());
        let what = what.unwrap_or_default();
        let message = match change.kind {
            Kind::Added { .. } => t.say("change-added").with("what", what),
            Kind::Removed => t.say("change-removed").with("what", what),
            Kind::Moved { .. } => t.say("change-moved"),
            Kind::Relettered => t.say("change-relettered"),
            Kind::Changed if marks_the_same(change) => {
                t.say("change-mark-moved").with("what", what)
            }
            Kind::Changed => t.say("change-changed"),
            Kind::Regraded => t.say("change-regraded"),
        };
        message.to_string()
    }

    /// What changed of the item, and from what to what.
    fn told(&self, change: &Change) -> Told {
        let t = self.t;
        let mut told = Told::default();
        if let Some(field) = change.field.as_deref().filter(|it| *it != "letter") {
            told.field.push(t.field(field).to_string());
        }
        if let Some(within) = &change.within {
            let name = t.item(within, &self.specs());
            let on_a_drawing = change.section == Section::Drawings;
            told.field.push(match on_a_drawing {
                true => t
                    .say("change-on-drawing")
                    .with("drawing", self.drawing(within))
                    .to_string(),
                false => t
                    .say("change-in-colourway")
                    .with("colourway", name)
                    .to_string(),
            });
        }
        match change.kind {
            Kind::Moved { from, to } => {
                let place = |at: usize| t.say("change-place").with("place", at + 1).to_string();
                (told.old, told.new) = (Some(place(from)), Some(place(to)));
            }
            // The whole item stands in the line's head.
            Kind::Added { .. } | Kind::Removed | Kind::Regraded => {}
            Kind::Relettered | Kind::Changed => self.values(change, &mut told),
        }
        told
    }

    fn words(&self, version: Version<'a>, change: &Change, field: &str) -> Words<'a> {
        let material = change
            .item
            .as_ref()
            .and_then(|id| version.spec.material(id));
        let unit = material.and_then(|material| material.consumption.unit);
        self.t.words(version.spec, self.sign).counting(field, unit)
    }

    fn values(&self, change: &Change, told: &mut Told) {
        let t = self.t;
        let field = change.field.as_deref().unwrap_or_default();
        let old = self.words(self.old, change, field);
        let new = self.words(self.new, change, field);
        if marks_the_same(change) {
            let spot = |words: &Words<'_>, value: &Option<Value>| match value {
                Some(Value::Marker(marker)) => Some(words.spot(marker.x, marker.y)),
                other => other.as_ref().map(|value| words.value(value, None)),
            };
            (told.old, told.new) = (spot(&old, &change.old), spot(&new, &change.new));
            return;
        }
        // Written in one unit they would look the same.
        if let (Some(Value::Length(was)), Some(Value::Length(is))) = (&change.old, &change.new)
            && was.nm == is.nm
        {
            (told.old, told.new) = (Some(old.typed(*was)), Some(new.typed(*is)));
            return;
        }
        let narrowed = narrow(&new, field, change.old.as_ref(), change.new.as_ref());
        match (&narrowed.within[..], field) {
            ([range], "grade") => {
                let rule = t.say("change-rule").with("range", range);
                told.field = vec![rule.to_string()];
            }
            _ => told.field.extend(narrowed.within.iter().cloned()),
        }
        let (was, is) = (&narrowed.old, &narrowed.new);
        let value = |words: &Words<'_>, part: &Part, other: &Part| match (part, other) {
            (Part::Value(value), _) => Some(words.value(value, Some(&narrowed.field))),
            (Part::Empty, Part::Value(Value::Flag(_))) => Some(t.say("change-no").to_string()),
            (Part::Empty, _) => Some(t.say("change-empty").to_string()),
            (Part::Unsaid, _) => None,
        };
        (told.old, told.new) = match (value(&old, was, is), value(&new, is, was)) {
            (None, Some(new)) => {
                let added = t.say("change-list-added").with("value", new);
                (None, Some(added.to_string()))
            }
            (Some(old), None) => {
                let removed = t.say("change-list-removed").with("value", old);
                (Some(removed.to_string()), None)
            }
            both => both,
        };
    }

    fn specs(&self) -> [&Spec; 2] {
        [self.new.spec, self.old.spec]
    }

    fn find(&self, id: &ItemId) -> Option<Item<'_>> {
        self.new.spec.item(id).or_else(|| self.old.spec.item(id))
    }

    fn drawing(&self, id: &ItemId) -> String {
        match self.find(id) {
            Some(Item::Drawing(drawing)) if drawing.title.is_empty() => {
                self.t.name(&drawing.view).to_string()
            }
            Some(item) => item.name().to_owned(),
            None => String::new(),
        }
    }

    /// How far a change of a point's rule reaches.
    fn effect(&self, change: &Change) -> String {
        let t = self.t;
        if change.kind == Kind::Regraded {
            let point = change.item.as_ref().and_then(|id| self.new.spec.point(id));
            return match point.and_then(|point| point.grade.as_ref()) {
                Some(Grade::Derived { from, .. }) => t
                    .say("change-follows")
                    .with("point", t.item(from, &self.specs()))
                    .to_string(),
                _ => String::new(),
            };
        }
        let of_a_rule = matches!(change.field.as_deref(), Some("step" | "base" | "grade"));
        let point = change.item.as_ref().filter(|_| of_a_rule);
        let charted = |version: Version<'_>, point| {
            version
                .chart
                .is_some_and(|chart| chart.row(point).is_some())
        };
        let charted = point.is_some_and(|it| charted(self.old, it) && charted(self.new, it));
        if !charted {
            return String::new();
        }
        let moved = change.sizes.iter().filter(|size| size.moved());
        let count = moved.clone().count();
        let base = self.new.spec.header.base_size.as_ref();
        let base = base.filter(|base| !moved.clone().any(|size| size.size == **base));
        let base = base.and_then(|base| self.find(base)).map(Item::letter);
        let message = match (count, base) {
            // Of several fields that move the values together the last one says it: the grade.
            (0, _) if change.field.as_deref() != Some("grade") => return String::new(),
            (0, _) => t.say("change-sizes-none"),
            (count, _) if count == change.sizes.len() => {
                t.say("change-sizes-all").with("count", count)
            }
            (count, Some(base)) => t
                .say("change-sizes-not-base")
                .with("count", count)
                .with("base", base),
            (count, None) => t.say("change-sizes-some").with("count", count),
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
        let unit = self.new.chart.or(self.old.chart).map(|chart| chart.unit);
        let moved = sizes.iter().filter(|size| size.moved());
        let lines = moved.map(|size| SizeLine {
            code: match self.find(&size.size) {
                Some(item) => item.letter().to_owned(),
                None => size.size.as_str().to_owned(),
            },
            base: base == Some(&size.size),
            old: value(size.old, self.old),
            new: value(size.new, self.new),
            unit: unit.map_or("", Unit::symbol),
            reference: size.new.zip(self.new.chart).map(|(length, chart)| {
                let other = other_unit(chart.unit);
                let text = length.show(other, other.fine_step(), self.sign);
                format!("{} {}", shown(text), other.symbol())
            }),
        });
        lines.collect()
    }
}

/// What changed of an item, in words: where in it, and both values.
#[derive(Default)]
struct Told {
    field: Vec<String>,
    old: Option<String>,
    new: Option<String>,
}

/// A letter, line or circle that stays on its drawing and shows the same thing.
fn marks_the_same(change: &Change) -> bool {
    match (&change.old, &change.new) {
        (Some(Value::Marker(old)), Some(Value::Marker(new))) => old.item == new.item,
        (Some(Value::Line(old)), Some(Value::Line(new))) => old.item == new.item,
        (Some(Value::BlowUp(old)), Some(Value::BlowUp(new))) => old.drawing == new.drawing,
        _ => false,
    }
}

/// What kind of thing an item is.
fn what(t: Text, item: Item<'_>) -> Message {
    t.say(match item {
        Item::Size(_) => "change-what-size",
        Item::LengthOption(_) => "change-what-length",
        Item::Drawing(_) => "change-what-drawing",
        Item::Marker(_) => "change-what-letter",
        Item::DimensionLine(_) => "change-what-line",
        Item::BlowUp(_) => "change-what-circle",
        Item::Point(_) => "change-what-point",
        Item::Part(_) => "change-what-part",
        Item::Colourway(_) => "change-what-colourway",
        Item::Material(_) => "change-what-material",
        Item::Line(_) => "change-what-seam",
        Item::Callout(_) => "change-what-callout",
        Item::Artwork(_) => "change-what-artwork",
        Item::Label(_) => "change-what-label",
        Item::Step(_) => "change-what-step",
        Item::RatioPack(_) => "change-what-pack",
    })
}

#[cfg(test)]
mod tests;
