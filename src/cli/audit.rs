//! `fellseam audit`: does everything still hold?

use std::path::PathBuf;
use std::process::ExitCode;

use clap::Args;

use super::check_record::faults;
use super::given::{read, unreadable};
use super::{Ended, Place, open};
use crate::exchange::record::check;
use crate::files::Verdict;

#[derive(Debug, Args)]
pub struct Audit {
    #[command(flatten)]
    place: Place,
    /// A signed record that was kept elsewhere: the chain must still hold every entry that it
    /// knows. May be given several times.
    #[arg(long, value_name = "RECORD")]
    against: Vec<PathBuf>,
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
            let mut against = 0;
            for file in &self.against {
                let key = store.record_key().await?.public();
                let checked = match read(file, |bytes| check(bytes, &key)) {
                    Ok(checked) => checked,
                    Err(why) => return Ok(unreadable(&why)),
                };
                let mut lines = faults(&checked);
                if let Some(fault) = store.audit_against(&checked.record).await? {
                    lines.push(format!(
                        "style {}: {}: {}",
                        fault.style, fault.what, fault.why
                    ));
                }
                against += lines.len();
                for line in lines {
                    println!("{}: {line}", file.display());
                }
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
            let faults = audit.faults.len() + bad_files + against;
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
