//! Pages for the brand alone.

pub mod draft;
pub mod styles;
