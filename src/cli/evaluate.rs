//! `fellseam evaluate`: measurements that were taken elsewhere, judged and explained.

mod paper;
mod told;

use std::path::PathBuf;
use std::process::ExitCode;

use clap::Args;

use super::Ended;
use super::given::{Spoken, answer};
use paper::Paper;
use told::Answer;

/// The same evaluation as that of a sample round, for pieces that were measured elsewhere.
#[derive(Debug, Args)]
#[command(
    after_help = "Ends with 0 when every value is within tolerance, \
    with 1 when one is not, with 2 when the file cannot be read.",
    after_long_help = paper::DESCRIPTION
)]
pub struct Evaluate {
    /// A frozen chart and measured pieces as JSON; `-` is standard input. `--help` describes it.
    file: PathBuf,
    #[command(flatten)]
    spoken: Spoken,
}

impl Evaluate {
    pub fn run(self) -> Ended {
        let t = self.spoken.text();
        answer(Paper::read(&self.file).map(|paper| {
            let answer = Answer::of(t, &paper);
            let code = ExitCode::from(u8::from(answer.is_out()));
            (answer, code)
        }))
    }
}
