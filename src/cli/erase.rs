//! `fellseam erase PERSON`: forgets what somebody wrote, and their name.

use std::process::ExitCode;

use clap::Args;

use super::{Ended, Place, open};
use crate::spec::PersonId;

#[derive(Debug, Args)]
pub struct Erase {
    /// The person's id, as the list of people shows it.
    person: String,
    /// Do it: without this, nothing is erased.
    #[arg(long)]
    yes: bool,
    #[command(flatten)]
    place: Place,
}

impl Erase {
    pub fn run(self) -> Ended {
        if !self.yes {
            println!(
                "This erases the name, messages and photographs of {} for good. Their name under \
                 signatures stays. Add --yes to do it.",
                self.person
            );
            return Ok(ExitCode::FAILURE);
        }
        open::block_on(async {
            let store = open::store(&self.place, open::world()).await?;
            let files = open::files(&self.place).await?;
            let erased = store.erase(&PersonId::new(self.person.as_str())).await?;
            for file in &erased.files {
                files.remove(file).await?;
            }
            store.close().await;
            println!(
                "{} texts and {} pictures erased.",
                erased.texts,
                erased.files.len()
            );
            Ok(ExitCode::SUCCESS)
        })?
    }
}
