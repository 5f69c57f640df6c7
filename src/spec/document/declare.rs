//! The two macros that the document is declared with.
//!
//! A record is declared once, field by field. From that come its serialised form (what is absent is
//! omitted), the change list's comparison, the merging of two versions and the shape of its form: a
//! field cannot be forgotten in one of them.

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
            fn shape() -> $crate::spec::document::Shape {
                use $crate::spec::document::Word;
                $crate::spec::document::Shape::Word {
                    kind: Self::KIND,
                    words: Self::ALL.iter().map(|it| it.word()).collect(),
                }
            }

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
            fn shape() -> $crate::spec::document::Shape {
                $crate::spec::document::Shape::Own
            }

            fn value(&self) -> Option<$crate::spec::document::Value> {
                None
            }
        }

        $crate::spec::document::declare::record!($name { id: clone, } $($field: $type,)*);
        $crate::spec::document::declare::records! { $($rest)* }
    };
    (
        $(#[$doc:meta])* record $name:ident {
            $($(#[$field_doc:meta])* $field:ident: $type:ty,)*
        }
        $($rest:tt)*
    ) => {
        $crate::spec::document::declare::plain! { $(#[$doc])* $name { $($(#[$field_doc])* $field: $type,)* } }

        impl $crate::spec::document::Held for $name {
            fn shape() -> $crate::spec::document::Shape {
                $crate::spec::document::Shape::Record(
                    $crate::spec::document::shapes_of::<Self>(),
                )
            }

            fn is_absent(&self) -> bool {
                *self == Self::default()
            }

            fn hold(&self, name: &'static str, fields: &mut $crate::spec::document::Fields) {
                let inner = $crate::spec::document::Record::fields(self);
                fields.extend(inner.into_iter().map(|(field, value)| {
                    (format!("{name}.{field}").into(), value)
                }));
            }

            fn merged(
                theirs: &Self,
                mine: &Self,
                name: &str,
                choose: &mut dyn FnMut(&str) -> bool,
            ) -> Self {
                $crate::spec::document::Record::merged(theirs, mine, &mut |field| {
                    choose(&format!("{name}.{field}"))
                })
            }
        }

        $crate::spec::document::declare::record!($name {} $($field: $type,)*);
        $crate::spec::document::declare::records! { $($rest)* }
    };
    (
        $(#[$doc:meta])* group $name:ident {
            $($(#[$field_doc:meta])* $field:ident: $type:ty,)*
        }
        $($rest:tt)*
    ) => {
        $crate::spec::document::declare::plain! { $(#[$doc])* $name { $($(#[$field_doc])* $field: $type,)* } }

        impl $crate::spec::document::Leaf for $name {
            fn shape() -> $crate::spec::document::Shape {
                $crate::spec::document::Shape::Group(vec![
                    $((
                        stringify!($field),
                        $crate::spec::document::shape_of::<$type>(),
                    ),)*
                ])
            }

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

        $crate::spec::document::declare::records! { $($rest)* }
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
    ($name:ident { $($key:ident: clone,)? } $($field:ident: $type:ty,)*) => {
        impl $crate::spec::document::Record for $name {
            fn shapes() -> Vec<(&'static str, $crate::spec::document::Shape)> {
                vec![$((
                    stringify!($field),
                    $crate::spec::document::shape_of::<$type>(),
                ),)*]
            }

            fn fields(&self) -> $crate::spec::document::Fields {
                let mut fields = Vec::new();
                $($crate::spec::document::Held::hold(&self.$field, stringify!($field), &mut fields);)*
                fields
            }

            fn merged(
                theirs: &Self,
                mine: &Self,
                choose: &mut dyn FnMut(&str) -> bool,
            ) -> Self {
                $name {
                    $($key: theirs.$key.clone(),)?
                    $($field: $crate::spec::document::Held::merged(
                        &theirs.$field,
                        &mine.$field,
                        stringify!($field),
                        choose,
                    ),)*
                }
            }
        }
    };
}

pub(in crate::spec) use words;
pub(super) use {plain, record, records};
