//! Stands in for what the spec room has not landed yet.

use crate::spec::ItemId;

#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Finding {
    pub code: String,
    pub item: Option<ItemId>,
    pub is_error: bool,
}
