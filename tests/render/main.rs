//! The room of files and the child that draws them, each file made here out of code.

mod child;
mod drawings;
mod folder;
mod inputs;
mod photos;
mod refusals;
mod sheets;
