//! Judging measurements of a sample against the frozen chart. Pure: no I/O, no clock, no SQL.

pub mod ask;
pub mod contract;
pub mod deviation;
pub mod diagnose;
pub mod evaluation;
pub mod finding;
pub mod inspection;
pub mod pasted;
pub mod ratio;
pub mod steps;
pub mod wash;
