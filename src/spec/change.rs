//! What changed between two specs. Placeholder until the change list lands: names whole sections.

use std::collections::BTreeSet;

use super::{ItemId, Spec};

/// The change list.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Changes {
    touched: BTreeSet<ItemId>,
}

impl Changes {
    /// Every item that the list names.
    pub fn touched(&self) -> &BTreeSet<ItemId> {
        &self.touched
    }
}

/// What is different in `new`.
pub fn changes(old: &Spec, new: &Spec) -> Changes {
    let touched = new
        .items()
        .filter(|item| old.item(item.id()) != Some(*item))
        .map(|item| item.id().clone())
        .collect();
    Changes { touched }
}
