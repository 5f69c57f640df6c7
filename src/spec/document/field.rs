//! What a field of the document holds and takes.

use std::borrow::Cow;
use std::collections::BTreeMap;

use serde::Serialize;

use super::drawings::{BlowUp, DimensionLine, Marker};
use super::points::Grade;
use super::{Cell, MeasuringState};
use crate::spec::decimal::Decimal;
use crate::spec::id::{Digest, ItemId};
use crate::spec::units::{Entered, Unit};

/// A value that is compared whole: the old one against the new one. Serialised as the document
/// holds it.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(untagged)]
pub enum Value {
    Text(String),
    Flag(bool),
    Number(u64),
    Decimal(Decimal),
    /// With the unit that it was typed in.
    Length(Entered),
    /// One of a fixed set: `word` is its name in the document, `kind` the set's.
    #[serde(serialize_with = "word_only")]
    Word {
        kind: &'static str,
        word: &'static str,
    },
    Unit(Unit),
    Measured(MeasuringState),
    Item(ItemId),
    File(Digest),
    List(Vec<Value>),
    /// By item: a value for each size.
    ByItem(BTreeMap<ItemId, Value>),
    /// Several named values that belong together, in their order.
    #[serde(serialize_with = "as_object")]
    Group(Vec<(&'static str, Value)>),
    Grade(Grade),
    Cell(Cell),
    Marker(Marker),
    Line(DimensionLine),
    BlowUp(BlowUp),
    /// An item that was added or removed, as the document holds it.
    Whole(Box<serde_json::Value>),
}

fn word_only<S: serde::Serializer>(
    _: &&'static str,
    word: &&'static str,
    to: S,
) -> Result<S::Ok, S::Error> {
    to.serialize_str(word)
}

fn as_object<S: serde::Serializer>(
    group: &[(&'static str, Value)],
    to: S,
) -> Result<S::Ok, S::Error> {
    to.collect_map(group.iter().map(|(name, value)| (name, value)))
}

/// Anything with an id of its own, by which it is known wherever it stands.
pub trait Identified {
    fn id(&self) -> &ItemId;
}

/// One of a fixed set of words, each with its name in the document.
pub trait Word: Copy + Sized + 'static {
    /// The set's name: messages are called after it, `KIND-word`.
    const KIND: &'static str;
    const ALL: &'static [Self];

    fn word(self) -> &'static str;

    fn from_word(word: &str) -> Option<Self> {
        Self::ALL.iter().copied().find(|it| it.word() == word)
    }
}

/// What a field takes: what forms and descriptions of the document are made from.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Shape {
    Text,
    Flag,
    Number,
    Decimal,
    Length,
    Unit,
    /// The state of measuring.
    Measured,
    Word {
        kind: &'static str,
        words: Vec<&'static str>,
    },
    /// The id of an item of the same spec.
    Item,
    /// The SHA-256 of a file.
    File,
    Grade,
    /// What a part is in a colourway.
    Cell,
    List(Box<Shape>),
    /// A value for each of several items.
    ByItem(Box<Shape>),
    /// Fields that are compared one by one.
    Record(Vec<(&'static str, Shape)>),
    /// Fields that are compared together.
    Group(Vec<(&'static str, Shape)>),
    /// One of several shapes, by its name.
    OneOf(Vec<(&'static str, Shape)>),
    /// A record with an id, or what is drawn on a drawing.
    Own,
}

/// A value that a field can hold, optionally or in a list.
pub trait Leaf {
    fn shape() -> Shape;

    /// Nothing for items in a list, which are compared one by one.
    fn value(&self) -> Option<Value>;
}

/// The named values that a record holds; absent ones are not in it.
pub type Fields = Vec<(Cow<'static, str>, Value)>;

/// A field's content.
pub trait Held {
    fn shape() -> Shape;

    /// Whether it is as good as not there, and left out of the document.
    fn is_absent(&self) -> bool;

    /// Adds what is there under the field's name.
    fn hold(&self, name: &'static str, fields: &mut Fields);

    /// From one of two versions of the field of this name: where they differ, mine when `choose`
    /// says so. A nested record is chosen field by field, as `outer.inner`.
    fn merged(theirs: &Self, mine: &Self, name: &str, choose: &mut dyn FnMut(&str) -> bool) -> Self
    where
        Self: Clone + PartialEq,
    {
        match theirs == mine || !choose(name) {
            true => theirs.clone(),
            false => mine.clone(),
        }
    }
}

/// What a field of this type takes.
pub fn shape_of<H: Held>() -> Shape {
    H::shape()
}

fn shape_of_leaf<L: Leaf>() -> Shape {
    L::shape()
}

/// The fields of a record.
pub fn shapes_of<R: Record>() -> Vec<(&'static str, Shape)> {
    R::shapes()
}

/// A declared struct of the document.
pub trait Record: Clone + PartialEq {
    /// Its fields in their order, by their names in the document.
    fn shapes() -> Vec<(&'static str, Shape)>;

    /// The fields that are compared whole; of nested records as `outer.inner`.
    fn fields(&self) -> Fields;

    /// Field by field from one of two versions: where they differ, mine when `choose` says so. Of
    /// nested records as `outer.inner`.
    fn merged(theirs: &Self, mine: &Self, choose: &mut dyn FnMut(&str) -> bool) -> Self;
}

impl Held for String {
    fn shape() -> Shape {
        Shape::Text
    }

    fn is_absent(&self) -> bool {
        self.is_empty()
    }

    fn hold(&self, name: &'static str, fields: &mut Fields) {
        if !self.is_empty() {
            fields.push((name.into(), Value::Text(self.clone())));
        }
    }
}

impl Held for bool {
    fn shape() -> Shape {
        Shape::Flag
    }

    fn is_absent(&self) -> bool {
        !*self
    }

    fn hold(&self, name: &'static str, fields: &mut Fields) {
        fields.push((name.into(), Value::Flag(*self)));
    }
}

impl<L: Leaf> Held for Option<L> {
    fn shape() -> Shape {
        L::shape()
    }

    fn is_absent(&self) -> bool {
        self.is_none()
    }

    fn hold(&self, name: &'static str, fields: &mut Fields) {
        if let Some(value) = self.as_ref().and_then(Leaf::value) {
            fields.push((name.into(), value));
        }
    }
}

impl<L: Leaf> Held for Vec<L> {
    fn shape() -> Shape {
        Shape::List(Box::new(L::shape()))
    }

    fn is_absent(&self) -> bool {
        self.is_empty()
    }

    fn hold(&self, name: &'static str, fields: &mut Fields) {
        let list: Vec<Value> = self.iter().filter_map(Leaf::value).collect();
        if !list.is_empty() {
            fields.push((name.into(), Value::List(list)));
        }
    }
}

impl<L: Leaf> Held for BTreeMap<ItemId, L> {
    fn shape() -> Shape {
        Shape::ByItem(Box::new(L::shape()))
    }

    fn is_absent(&self) -> bool {
        self.is_empty()
    }

    fn hold(&self, name: &'static str, fields: &mut Fields) {
        let values = self.iter();
        let values = values.filter_map(|(id, leaf)| Some((id.clone(), leaf.value()?)));
        let map: BTreeMap<ItemId, Value> = values.collect();
        if !map.is_empty() {
            fields.push((name.into(), Value::ByItem(map)));
        }
    }
}

/// What is always there: a drawing's view, its size.
macro_rules! always {
    ($($type:ty)*) => {$(
        impl Held for $type {
            fn shape() -> Shape {
                shape_of_leaf::<$type>()
            }

            fn is_absent(&self) -> bool {
                false
            }

            fn hold(&self, name: &'static str, fields: &mut Fields) {
                fields.extend(Leaf::value(self).map(|value| (name.into(), value)));
            }
        }
    )*};
}

macro_rules! leaves {
    ($($type:ty: $leaf:ident => $value:expr, $shape:ident;)*) => {$(
        impl Leaf for $type {
            fn shape() -> Shape {
                Shape::$shape
            }

            fn value(&self) -> Option<Value> {
                let $leaf = self;
                Some($value)
            }
        }
    )*};
}

leaves! {
    String: text => Value::Text(text.clone()), Text;
    u8: number => Value::Number(u64::from(*number)), Number;
    u16: number => Value::Number(u64::from(*number)), Number;
    u32: number => Value::Number(u64::from(*number)), Number;
    Decimal: decimal => Value::Decimal(*decimal), Decimal;
    Entered: length => Value::Length(*length), Length;
    Unit: unit => Value::Unit(*unit), Unit;
    MeasuringState: state => Value::Measured(*state), Measured;
    ItemId: id => Value::Item(id.clone()), Item;
    Digest: file => Value::File(file.clone()), File;
    Grade: grade => Value::Grade(grade.clone()), Grade;
    Cell: cell => Value::Cell(cell.clone()), Cell;
}

always! { u16 u32 ItemId Digest super::drawings::View super::drawings::Spot }

/// The cells of one colourway, which are compared one by one.
impl Leaf for BTreeMap<ItemId, Cell> {
    fn shape() -> Shape {
        Shape::ByItem(Box::new(Cell::shape()))
    }

    fn value(&self) -> Option<Value> {
        None
    }
}
