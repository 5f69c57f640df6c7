//! Judging measurements of a sample against the frozen chart. Pure: no I/O, no clock, no SQL.

pub mod ask;
pub mod deviation;
