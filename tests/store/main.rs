//! The store on both databases.

#[path = "../support/mod.rs"]
mod support;

mod base;
mod entry;
mod guard;
mod people;
mod revisions;
mod sqlite;
