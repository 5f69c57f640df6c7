//! The room of files and the child that draws them, each file made here out of code.

mod child;
mod drawings;
mod folder;
mod inputs;
#[expect(dead_code, reason = "each test uses its own part")]
#[path = "../support/packs.rs"]
mod packs;
mod paper;
mod photos;
mod refusals;
mod sheets;
