//! The store on both databases.

#[path = "../support/mod.rs"]
mod support;

mod base;
mod guard;
mod revisions;
mod sqlite;
