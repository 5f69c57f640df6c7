//! The store on both databases.

#[path = "../support/mod.rs"]
mod support;

mod apart;
mod approvals;
mod audit;
mod base;
mod drafts;
mod entry;
mod erase;
mod files;
mod guard;
mod inspections;
mod measuring;
mod needs;
mod people;
mod pieces;
mod revisions;
mod rounds;
mod seals;
mod shares;
mod signing;
mod sqlite;
mod threads;
mod together;
mod translations;
mod walk;
