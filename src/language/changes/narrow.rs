//! What differs between two values of a field, and where in them: what both have is left out.

use std::collections::BTreeMap;

use crate::spec::ItemId;
use crate::spec::document::{Grade, Segment, Value};

use super::super::values::Words;

/// Two values without what they have in common.
pub struct Narrowed {
    /// Where the difference is, from the outside in: a size, a seam and a point of the artwork.
    pub within: Vec<String>,
    /// The field that holds what is left.
    pub field: String,
    pub old: Part,
    pub new: Part,
}

pub enum Part {
    Value(Value),
    /// It holds nothing.
    Empty,
    /// All that it holds the other one has too.
    Unsaid,
}

/// The members by which one group of a list is the same in both versions.
const KEYS: &[(&str, &[&str])] = &[
    ("distances", &["line", "anchor"]),
    ("bands", &["from", "to"]),
    ("texts", &["market", "language"]),
    ("body", &["dimension"]),
    ("evidence", &["kind"]),
    ("exemptions", &["code"]),
];

/// The part of a field that differs, with the places in it called as in the newer version.
pub fn narrow(
    words: &Words<'_>,
    field: &str,
    old: Option<&Value>,
    new: Option<&Value>,
) -> Narrowed {
    let mut narrower = Narrower {
        words,
        within: Vec::new(),
    };
    let (field, old, new) = narrower.narrow(field.to_owned(), old, new);
    Narrowed {
        within: narrower.within,
        field,
        old,
        new,
    }
}

struct Narrower<'a> {
    words: &'a Words<'a>,
    within: Vec<String>,
}

type Members = Vec<(&'static str, Value)>;

impl Narrower<'_> {
    fn narrow(
        &mut self,
        field: String,
        old: Option<&Value>,
        new: Option<&Value>,
    ) -> (String, Part, Part) {
        let inner = field.rsplit('.').next().unwrap_or_default();
        match (old, new) {
            (Some(Value::ByItem(old)), Some(Value::ByItem(new))) => self.by_item(field, old, new),
            // The shares of a composition are one whole.
            (Some(Value::List(old)), Some(Value::List(new))) if inner != "composition" => {
                self.list(field, old, new)
            }
            (Some(Value::Group(old)), Some(Value::Group(new)))
                if matches!(inner, "structure" | "woven" | "knitted") =>
            {
                self.group(field, old, new)
            }
            (Some(Value::Grade(old)), Some(Value::Grade(new))) => self.grade(field, old, new),
            (old, new) => {
                let part = |value: Option<&Value>| match value {
                    None => Part::Empty,
                    Some(value) => Part::Value(value.clone()),
                };
                (field, part(old), part(new))
            }
        }
    }

    fn by_item(
        &mut self,
        field: String,
        old: &BTreeMap<ItemId, Value>,
        new: &BTreeMap<ItemId, Value>,
    ) -> (String, Part, Part) {
        let rest = |one: &BTreeMap<ItemId, Value>, other: &BTreeMap<ItemId, Value>| {
            let rest = one
                .iter()
                .filter(|(id, value)| other.get(id) != Some(value));
            let rest = rest.map(|(id, value)| (id.clone(), value.clone()));
            rest.collect::<BTreeMap<_, _>>()
        };
        let (old, new) = (rest(old, new), rest(new, old));
        if let (Some((id, was)), Some((same, is))) = (old.first_key_value(), new.first_key_value())
            && (old.len(), new.len()) == (1, 1)
            && id == same
        {
            self.within.push(self.words.letter(id));
            return self.narrow(field, Some(was), Some(is));
        }
        let part = |rest: BTreeMap<ItemId, Value>| match rest.is_empty() {
            true => Part::Unsaid,
            false => Part::Value(Value::ByItem(rest)),
        };
        (field, part(old), part(new))
    }

    fn list(&mut self, field: String, old: &[Value], new: &[Value]) -> (String, Part, Part) {
        let (was, is) = (without(old, new), without(new, old));
        if was.is_empty() && is.is_empty() {
            // In another order.
            let whole = |list: &[Value]| Part::Value(Value::List(list.to_vec()));
            return (field, whole(old), whole(new));
        }
        let inner = field.rsplit('.').next().unwrap_or_default();
        let keys = KEYS.iter().find(|(name, _)| *name == inner);
        if let ([Value::Group(was)], [Value::Group(is)]) = (&was[..], &is[..])
            && let Some((_, keys)) = keys
        {
            let key = |group: &Members| -> Members {
                let members = group.iter().filter(|(name, _)| keys.contains(name));
                members.cloned().collect()
            };
            let (old_key, new_key) = (key(was), key(is));
            if old_key == new_key {
                let place = self.words.group(inner, &new_key);
                self.within.extend(Some(place).filter(|it| !it.is_empty()));
                return self.group(field, was, is);
            }
        }
        let part = |rest: Vec<Value>| match rest.is_empty() {
            true => Part::Unsaid,
            false => Part::Value(Value::List(rest)),
        };
        (field, part(was), part(is))
    }

    /// The members that differ; one by itself under its own name.
    fn group(&mut self, field: String, old: &Members, new: &Members) -> (String, Part, Part) {
        let rest = |one: &Members, other: &Members| -> Members {
            let rest = one.iter().filter(|member| !other.contains(member));
            rest.cloned().collect()
        };
        let (old, new) = (rest(old, new), rest(new, old));
        let mut names: Vec<&'static str> = old.iter().chain(&new).map(|(name, _)| *name).collect();
        names.sort_unstable();
        names.dedup();
        if let [name] = names[..] {
            let value = |members: &Members| members.first().map(|(_, value)| value.clone());
            // What it is called is clear from the place, or from the value itself.
            if !matches!(name, "distance" | "text" | "distances") {
                let label = self.words.t.field(name).to_string();
                self.within.push(self.words.t.within(&label));
            }
            return self.narrow(name.to_owned(), value(&old).as_ref(), value(&new).as_ref());
        }
        let part = |rest: Members| match rest.is_empty() {
            true => Part::Empty,
            false => Part::Value(Value::Group(rest)),
        };
        (field, part(old), part(new))
    }

    /// The segments, or the sizes, whose step or value is another one.
    fn grade(&mut self, field: String, old: &Grade, new: &Grade) -> (String, Part, Part) {
        let whole = |grade: &Grade| Part::Value(Value::Grade(grade.clone()));
        match (old, new) {
            (Grade::Segments { segments: was }, Grade::Segments { segments: is }) => {
                let spans = |of: &[Segment]| -> Vec<(ItemId, ItemId)> {
                    let spans = of.iter().map(|it| (it.from.clone(), it.to.clone()));
                    spans.collect()
                };
                if spans(was) != spans(is) {
                    return (field, whole(old), whole(new));
                }
                let moved = was.iter().zip(is).filter(|(was, is)| was.step != is.step);
                let moved: Vec<_> = moved.collect();
                if let [(was, is)] = moved[..] {
                    self.within.push(self.words.range(&is.from, &is.to));
                    let (was, is) = (Value::Length(was.step), Value::Length(is.step));
                    return (field, Part::Value(was), Part::Value(is));
                }
                let (was, is) = moved.into_iter().unzip::<_, _, Vec<_>, Vec<_>>();
                let segments = |of: Vec<&Segment>| Grade::Segments {
                    segments: of.into_iter().cloned().collect(),
                };
                (field, whole(&segments(was)), whole(&segments(is)))
            }
            (Grade::Explicit { values: was }, Grade::Explicit { values: is }) => {
                let lengths = |of: &BTreeMap<ItemId, _>| {
                    let of = of.iter();
                    of.map(|(id, value)| (id.clone(), Value::Length(*value)))
                        .collect::<BTreeMap<_, _>>()
                };
                self.by_item(field, &lengths(was), &lengths(is))
            }
            _ => (field, whole(old), whole(new)),
        }
    }
}

/// The values of one list that the other one has not, each as often as it is there.
fn without(list: &[Value], other: &[Value]) -> Vec<Value> {
    let mut other: Vec<&Value> = other.iter().collect();
    let mut rest = Vec::new();
    for value in list {
        match other.iter().position(|it| *it == value) {
            Some(at) => {
                other.swap_remove(at);
            }
            None => rest.push(value.clone()),
        }
    }
    rest
}
