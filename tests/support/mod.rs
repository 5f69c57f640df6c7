//! What the test binaries share. Each compiles all of it and uses a part.
#![allow(dead_code, unused_imports, unused_macros)]

pub mod cast;
pub mod database;
pub mod faults;
pub mod large;
pub mod packs;
pub mod past;
pub mod world;
