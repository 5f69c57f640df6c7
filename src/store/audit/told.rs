//! What an entry of a ledger says, in the shape that rows have.

use std::collections::BTreeMap;

use serde::Serialize;

use crate::exchange::Side;
use crate::exchange::ledger::Entry;
use crate::spec::Digest;

/// A digest over several rows.
#[derive(Serialize, PartialEq)]
pub(super) struct Several {
    pub rows: Digest,
}

/// What an entry says under a name; empty when it does not, which no row has.
pub(super) fn id(entry: &Entry, name: &str) -> String {
    entry.ids.get(name).cloned().unwrap_or_default()
}

pub(super) fn number(entry: &Entry, name: &str) -> Option<i64> {
    entry.ids.get(name)?.parse().ok()
}

pub(super) fn hash(entry: &Entry, name: &str) -> String {
    let hash = entry.hashes.get(name);
    hash.map(Digest::to_string).unwrap_or_default()
}

pub(super) fn at(entry: &Entry) -> String {
    entry.at.to_string()
}

pub(super) fn person(entry: &Entry) -> String {
    entry
        .person
        .as_ref()
        .map_or_else(String::new, ToString::to_string)
}

/// The factory that it was done with or by.
pub(super) fn factory(entry: &Entry) -> String {
    let factory = entry.visible_to.as_ref();
    factory.map_or_else(String::new, ToString::to_string)
}

pub(super) fn side(entry: &Entry) -> String {
    let by_factory = entry.org.is_some() && entry.org == entry.visible_to;
    let side = if by_factory {
        Side::Factory
    } else {
        Side::Brand
    };
    side.name().to_owned()
}

/// The next number of something that is counted by what it belongs to.
pub(super) fn next(counts: &mut BTreeMap<String, i64>, of: &str) -> i64 {
    let count = counts.entry(of.to_owned()).or_default();
    *count += 1;
    *count
}
