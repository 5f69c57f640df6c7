//! What a field of the document holds, and the two macros that the document is declared with.
//!
//! A record is declared once, field by field. From that come its serialised form (what is absent is
//! omitted), the change list's comparison and the merging of two versions: a field cannot be
//! forgotten in one of them.

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

/// A value that a field can hold, optionally or in a list.
pub trait Leaf {
    /// Nothing for items in a list, which are compared one by one.
    fn value(&self) -> Option<Value>;
}

/// The named values that a record holds; absent ones are not in it.
pub type Fields = Vec<(Cow<'static, str>, Value)>;

/// A field's content.
pub trait Held {
    /// Whether it is as good as not there, and left out of the document.
    fn is_absent(&self) -> bool;

    /// Adds what is there under the field's name.
    fn hold(&self, name: &'static str, fields: &mut Fields);
}

/// A declared struct of the document.
pub trait Record: Clone + PartialEq {
    /// The fields that are compared whole; of nested records as `outer.inner`.
    fn fields(&self) -> Fields;

    /// Field by field from one of two versions, as `choose` says where they differ.
    fn merged(theirs: &Self, mine: &Self, choose: &mut dyn FnMut(&'static str) -> bool) -> Self;
}

impl Held for String {
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
    fn is_absent(&self) -> bool {
        !*self
    }

    fn hold(&self, name: &'static str, fields: &mut Fields) {
        fields.push((name.into(), Value::Flag(*self)));
    }
}

impl<L: Leaf> Held for Option<L> {
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
    ($($type:ty: $leaf:ident => $value:expr;)*) => {$(
        impl Leaf for $type {
            fn value(&self) -> Option<Value> {
                let $leaf = self;
                Some($value)
            }
        }
    )*};
}

leaves! {
    String: text => Value::Text(text.clone());
    u8: number => Value::Number(u64::from(*number));
    u16: number => Value::Number(u64::from(*number));
    u32: number => Value::Number(u64::from(*number));
    Decimal: decimal => Value::Decimal(*decimal);
    Entered: length => Value::Length(*length);
    Unit: unit => Value::Unit(*unit);
    MeasuringState: state => Value::Measured(*state);
    ItemId: id => Value::Item(id.clone());
    Digest: file => Value::File(file.clone());
    Grade: grade => Value::Grade(grade.clone());
    Cell: cell => Value::Cell(cell.clone());
}

always! { u16 u32 ItemId Digest super::drawings::View }

/// The cells of one colourway, which are compared one by one.
impl Leaf for BTreeMap<ItemId, Cell> {
    fn value(&self) -> Option<Value> {
        None
    }
}

/// Declares sets of words: an enum each, serialised by the names given.
macro_rules! words {
    ($($(#[$doc:meta])* $type:ident $kind:literal {
        $($(#[$word_doc:meta])* $variant:ident $word:literal,)*
    })*) => {$(
        $(#[$doc])*
        #[derive(
            Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord,
            serde::Serialize, serde::Deserialize,
        )]
        pub enum $type {$(
            $(#[$word_doc])*
            #[serde(rename = $word)]
            $variant,
        )*}

        impl $crate::spec::document::Word for $type {
            const KIND: &'static str = $kind;
            const ALL: &'static [Self] = &[$($type::$variant),*];

            fn word(self) -> &'static str {
                match self {
                    $($type::$variant => $word,)*
                }
            }
        }

        impl $crate::spec::document::Leaf for $type {
            fn value(&self) -> Option<$crate::spec::document::Value> {
                use $crate::spec::document::Word;
                Some($crate::spec::document::Value::Word {
                    kind: Self::KIND,
                    word: self.word(),
                })
            }
        }
    )*};
}

/// Declares records: structs whose every field may be absent. `item` gives one an id, by which it
/// is compared wherever it stands; `group` makes one that is compared whole.
macro_rules! records {
    () => {};
    (
        $(#[$doc:meta])* item $name:ident {
            $($(#[$field_doc:meta])* $field:ident: $type:ty,)*
        }
        $($rest:tt)*
    ) => {
        $(#[$doc])*
        #[derive(
            Debug, Clone, Default, PartialEq, Eq, serde::Serialize, serde::Deserialize,
        )]
        #[serde(deny_unknown_fields)]
        pub struct $name {
            pub id: $crate::spec::id::ItemId,
            $(
                $(#[$field_doc])*
                #[serde(
                    default,
                    skip_serializing_if = "crate::spec::document::Held::is_absent"
                )]
                pub $field: $type,
            )*
        }

        impl $crate::spec::document::Identified for $name {
            fn id(&self) -> &$crate::spec::id::ItemId {
                &self.id
            }
        }

        impl $crate::spec::document::Leaf for $name {
            fn value(&self) -> Option<$crate::spec::document::Value> {
                None
            }
        }

        $crate::spec::document::field::record!($name { id: clone, } $($field)*);
        $crate::spec::document::field::records! { $($rest)* }
    };
    (
        $(#[$doc:meta])* record $name:ident {
            $($(#[$field_doc:meta])* $field:ident: $type:ty,)*
        }
        $($rest:tt)*
    ) => {
        $crate::spec::document::field::plain! { $(#[$doc])* $name { $($(#[$field_doc])* $field: $type,)* } }

        impl $crate::spec::document::Held for $name {
            fn is_absent(&self) -> bool {
                *self == Self::default()
            }

            fn hold(&self, name: &'static str, fields: &mut $crate::spec::document::Fields) {
                let inner = $crate::spec::document::Record::fields(self);
                fields.extend(inner.into_iter().map(|(field, value)| {
                    (format!("{name}.{field}").into(), value)
                }));
            }
        }

        $crate::spec::document::field::record!($name {} $($field)*);
        $crate::spec::document::field::records! { $($rest)* }
    };
    (
        $(#[$doc:meta])* group $name:ident {
            $($(#[$field_doc:meta])* $field:ident: $type:ty,)*
        }
        $($rest:tt)*
    ) => {
        $crate::spec::document::field::plain! { $(#[$doc])* $name { $($(#[$field_doc])* $field: $type,)* } }

        impl $crate::spec::document::Leaf for $name {
            fn value(&self) -> Option<$crate::spec::document::Value> {
                let mut group = Vec::new();
                $(
                    let mut fields = Vec::new();
                    if !$crate::spec::document::Held::is_absent(&self.$field) {
                        $crate::spec::document::Held::hold(
                            &self.$field, stringify!($field), &mut fields,
                        );
                    }
                    group.extend(fields.into_iter().map(|(_, value)| (stringify!($field), value)));
                )*
                Some($crate::spec::document::Value::Group(group))
            }
        }

        $crate::spec::document::field::records! { $($rest)* }
    };
}

macro_rules! plain {
    ($(#[$doc:meta])* $name:ident { $($(#[$field_doc:meta])* $field:ident: $type:ty,)* }) => {
        $(#[$doc])*
        #[derive(
            Debug, Clone, Default, PartialEq, Eq, serde::Serialize, serde::Deserialize,
        )]
        #[serde(deny_unknown_fields)]
        pub struct $name {$(
            $(#[$field_doc])*
            #[serde(
                default,
                skip_serializing_if = "crate::spec::document::Held::is_absent"
            )]
            pub $field: $type,
        )*}
    };
}

macro_rules! record {
    ($name:ident { $($key:ident: clone,)? } $($field:ident)*) => {
        impl $crate::spec::document::Record for $name {
            fn fields(&self) -> $crate::spec::document::Fields {
                let mut fields = Vec::new();
                $($crate::spec::document::Held::hold(&self.$field, stringify!($field), &mut fields);)*
                fields
            }

            fn merged(
                theirs: &Self,
                mine: &Self,
                choose: &mut dyn FnMut(&'static str) -> bool,
            ) -> Self {
                $name {
                    $($key: theirs.$key.clone(),)?
                    $($field: if theirs.$field == mine.$field || !choose(stringify!($field)) {
                        theirs.$field.clone()
                    } else {
                        mine.$field.clone()
                    },)*
                }
            }
        }
    };
}

pub(super) use {plain, record, records, words};
