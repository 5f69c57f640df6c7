//! The house itself under test: what its rooms may name, what its texts say, how its files look.

mod arrows;
mod files;
mod fluent;
mod source;
#[cfg(feature = "service")]
mod sql;
mod templates;
mod texts;
