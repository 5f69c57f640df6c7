//! `fellseam schema`: what a spec file holds.

use std::process::ExitCode;

use super::Ended;
use super::given::answer;
use crate::spec::schema::schema;

/// Prints the schema of a spec, which every document that the program takes fits.
pub fn run() -> Ended {
    answer(Ok((schema(), ExitCode::SUCCESS)))
}
