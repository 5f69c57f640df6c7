//! The store on both databases.

#[path = "../support/mod.rs"]
mod support;

mod audit;
mod base;
mod drafts;
mod entry;
mod guard;
mod people;
mod revisions;
mod rounds;
mod shares;
mod sqlite;
mod threads;
mod walk;
