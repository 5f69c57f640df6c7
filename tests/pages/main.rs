//! Every page and every refusal, through the real router, on both databases.

#[path = "../support/mod.rs"]
mod support;

// The pages need the program itself, which draws pictures in a child.
#[path = "../support/pages.rs"]
mod pages;

mod access;
mod approvals;
mod archive;
mod by_size;
mod changes;
mod colours;
mod conflict;
mod draft;
mod drawings;
mod entry;
mod files;
mod found;
mod going_on;
mod guarding;
mod history;
mod inspections;
mod judgement;
mod languages;
mod listed;
mod live;
mod mail;
mod marked;
mod mid_round;
mod ledger;
mod now;
mod numbers;
mod originals;
mod people;
mod pieces;
mod plates;
mod points;
mod proxy;
mod publish;
mod ready;
mod records;
mod revision;
mod rounds;
mod seals;
mod sheets;
mod starts;
mod style;
mod sections;
mod styles;
mod tables;
mod threads;
mod together;
mod translations;
