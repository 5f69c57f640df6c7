//! Hands over to the command line.

use std::process::ExitCode;

fn main() -> ExitCode {
    match std::env::args().nth(1).as_deref() {
        Some("render") => fellseam::cli::render::render(),
        _ => ExitCode::FAILURE,
    }
}
