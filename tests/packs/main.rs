//! The three complete specs of the demo: that they are whole, and what the checks find in them once
//! something is spoilt. Builds without the service.

mod faults;
mod placed;
mod whole;

#[path = "../support/packs.rs"]
mod packs;

#[path = "../support/faults/mod.rs"]
mod planted;
