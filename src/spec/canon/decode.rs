//! A JSON tree to a typed value, so that what the type refuses is told with its path.

use std::fmt;

use serde::de::{
    self, DeserializeOwned, DeserializeSeed, Deserializer, EnumAccess, MapAccess, SeqAccess,
    VariantAccess, Visitor,
};
use serde::forward_to_deserialize_any;
use serde_json::Value;

use super::{CanonError, CanonFault, Step, refused};

pub fn decode<T: DeserializeOwned>(value: Value) -> Result<T, CanonError> {
    T::deserialize(Node(value))
}

impl de::Error for CanonError {
    fn custom<T: fmt::Display>(message: T) -> Self {
        refused(&message)
    }

    fn unknown_field(field: &str, _: &'static [&'static str]) -> Self {
        CanonError::from(CanonFault::UnknownField).within(Step::Key(field.to_owned()))
    }
}

struct Node(Value);

impl<'de> Deserializer<'de> for Node {
    type Error = CanonError;

    fn deserialize_any<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, CanonError> {
        match self.0 {
            Value::Null => Err(CanonFault::Null.into()),
            Value::Bool(value) => visitor.visit_bool(value),
            Value::Number(number) => match number.as_i64() {
                Some(integer) => visitor.visit_i64(integer),
                None => Err(CanonFault::IntegerTooLarge.into()),
            },
            Value::String(text) => visitor.visit_string(text),
            Value::Array(items) => {
                let mut items = Items {
                    rest: items.into_iter(),
                    index: 0,
                };
                let value = visitor.visit_seq(&mut items)?;
                if items.rest.len() > 0 {
                    return Err(refused(&"more items than expected"));
                }
                Ok(value)
            }
            Value::Object(fields) => visitor.visit_map(Fields {
                rest: fields.into_iter(),
                value: None,
            }),
        }
    }

    fn deserialize_option<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, CanonError> {
        visitor.visit_some(self)
    }

    fn deserialize_newtype_struct<V: Visitor<'de>>(
        self,
        _: &'static str,
        visitor: V,
    ) -> Result<V::Value, CanonError> {
        visitor.visit_newtype_struct(self)
    }

    /// A bare name, or an object of one field: the name and what it carries.
    fn deserialize_enum<V: Visitor<'de>>(
        self,
        _: &'static str,
        _: &'static [&'static str],
        visitor: V,
    ) -> Result<V::Value, CanonError> {
        let mut fields = match self.0 {
            Value::String(name) => return visitor.visit_enum(Choice { name, value: None }),
            Value::Object(fields) => fields.into_iter(),
            _ => return Err(refused(&"expected one of several kinds")),
        };
        match (fields.next(), fields.next()) {
            (Some((name, value)), None) => visitor.visit_enum(Choice {
                name,
                value: Some(value),
            }),
            _ => Err(refused(&"expected exactly one kind")),
        }
    }

    forward_to_deserialize_any! {
        bool i8 i16 i32 i64 i128 u8 u16 u32 u64 u128 f32 f64 char str string bytes byte_buf unit
        unit_struct seq tuple tuple_struct map struct identifier ignored_any
    }
}

struct Items {
    rest: std::vec::IntoIter<Value>,
    index: usize,
}

impl<'de> SeqAccess<'de> for Items {
    type Error = CanonError;

    fn next_element_seed<T: DeserializeSeed<'de>>(
        &mut self,
        seed: T,
    ) -> Result<Option<T::Value>, CanonError> {
        let Some(item) = self.rest.next() else {
            return Ok(None);
        };
        let index = self.index;
        self.index += 1;
        let value = seed.deserialize(Node(item));
        value.map(Some).map_err(|e| e.within(Step::Index(index)))
    }
}

struct Fields {
    rest: serde_json::map::IntoIter,
    value: Option<(String, Value)>,
}

impl<'de> MapAccess<'de> for Fields {
    type Error = CanonError;

    fn next_key_seed<K: DeserializeSeed<'de>>(
        &mut self,
        seed: K,
    ) -> Result<Option<K::Value>, CanonError> {
        self.value = self.rest.next();
        match &self.value {
            Some((key, _)) => seed.deserialize(Node(Value::String(key.clone()))).map(Some),
            None => Ok(None),
        }
    }

    fn next_value_seed<V: DeserializeSeed<'de>>(
        &mut self,
        seed: V,
    ) -> Result<V::Value, CanonError> {
        let (key, value) = self
            .value
            .take()
            .ok_or_else(|| refused(&"a value without its key"))?;
        let value = seed.deserialize(Node(value));
        value.map_err(|error| error.within(Step::Key(key)))
    }
}

struct Choice {
    name: String,
    value: Option<Value>,
}

impl Choice {
    /// What the choice carries, read by `read`.
    fn carried<T>(self, read: impl FnOnce(Node) -> Result<T, CanonError>) -> Result<T, CanonError> {
        match self.value {
            Some(value) => read(Node(value)).map_err(|error| error.within(Step::Key(self.name))),
            None => Err(refused(&format!("{} carries a value", self.name))),
        }
    }
}

impl<'de> EnumAccess<'de> for Choice {
    type Error = CanonError;
    type Variant = Self;

    fn variant_seed<V: DeserializeSeed<'de>>(
        self,
        seed: V,
    ) -> Result<(V::Value, Self), CanonError> {
        let name = seed.deserialize(Node(Value::String(self.name.clone())))?;
        Ok((name, self))
    }
}

impl<'de> VariantAccess<'de> for Choice {
    type Error = CanonError;

    fn unit_variant(self) -> Result<(), CanonError> {
        match self.value {
            None => Ok(()),
            Some(_) => Err(refused(&format!("{} carries no value", self.name))),
        }
    }

    fn newtype_variant_seed<T: DeserializeSeed<'de>>(
        self,
        seed: T,
    ) -> Result<T::Value, CanonError> {
        self.carried(|node| seed.deserialize(node))
    }

    fn tuple_variant<V: Visitor<'de>>(self, _: usize, visitor: V) -> Result<V::Value, CanonError> {
        self.carried(|node| node.deserialize_any(visitor))
    }

    fn struct_variant<V: Visitor<'de>>(
        self,
        _: &'static [&'static str],
        visitor: V,
    ) -> Result<V::Value, CanonError> {
        self.carried(|node| node.deserialize_any(visitor))
    }
}
