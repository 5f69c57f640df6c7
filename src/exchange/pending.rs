//! Stands in for what the spec room has not landed yet.

use std::collections::BTreeMap;

use serde::Serialize;

use crate::spec::{ItemId, Length};

pub type Chart = BTreeMap<ItemId, BTreeMap<ItemId, Length>>;

#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, serde::Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum DecimalSign {
    Point,
    Comma,
}

#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Finding {
    pub code: String,
    pub item: Option<ItemId>,
    pub is_error: bool,
}

pub type NotCanonical = serde_json::Error;

pub fn canonical<T: Serialize>(value: &T) -> Result<Vec<u8>, NotCanonical> {
    serde_json::to_vec(&serde_json::to_value(value)?)
}
