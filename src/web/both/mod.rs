//! Pages that both sides look at: each side sees its own part of the same page.

pub mod files;
