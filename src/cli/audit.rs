//! `fellseam audit`: does everything still hold?

use std::process::ExitCode;

use clap::Args;

use super::{Ended, Place, open};
use crate::files::Verdict;

#[derive(Debug, Args)]
pub struct Audit {
    #[command(flatten)]
    place: Place,
}

impl Audit {
    /// Prints what was checked and what does not hold; fails when anything does not.
    pub fn run(self) -> Ended {
        open::block_on(async {
            let store = open::store(&self.place, open::world()).await?;
            let files = open::files(&self.place).await?;
            let audit = store.audit().await?;
            for fault in &audit.faults {
                println!("style {}: {}: {}", fault.style, fault.what, fault.why);
            }
            let known = store.known_files().await?;
            let mut bad_files = 0;
            for digest in &known {
                let why = match files.verify(digest).await? {
                    Verdict::Sound => continue,
                    Verdict::Altered { .. } => "its bytes are not those of its name",
                    Verdict::Missing => "it is missing",
                };
                bad_files += 1;
                println!("file {digest}: {why}");
            }
            println!(
                "{} styles, {} ledger entries, {} revisions, {} messages, {} measurements, \
                 {} signatures, {} files; {} texts erased",
                audit.styles,
                audit.entries,
                audit.revisions,
                audit.messages,
                audit.measurements,
                audit.signatures,
                known.len(),
                audit.erased,
            );
            store.close().await;
            let faults = audit.faults.len() + bad_files;
            if faults == 0 {
                println!("Everything holds.");
                Ok(ExitCode::SUCCESS)
            } else {
                println!("{faults} faults.");
                Ok(ExitCode::FAILURE)
            }
        })?
    }
}
