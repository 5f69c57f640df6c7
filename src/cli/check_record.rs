//! `fellseam check-record FILE --key PUBLIC`: does a signed record still hold? Needs no service and
//! no connection.

use std::path::PathBuf;
use std::process::ExitCode;

use clap::Args;

use super::Ended;
use super::given::{bytes_of, read, unreadable};
use crate::exchange::record::{Checked, PublicKey, Record, check};
use crate::spec::Digest;

#[derive(Debug, Args)]
#[command(
    after_help = "Ends with 0 when everything holds, with 1 when something does not, with 2 when \
    the file cannot be read."
)]
pub struct CheckRecord {
    /// A signed record as a page gave it; `-` is standard input.
    file: PathBuf,
    /// The installation's public key, as `fellseam key` prints it and the page of the record shows
    /// it. Take it from your own notes: the one in the file is no proof.
    #[arg(long, value_name = "PUBLIC", value_parser = key)]
    key: PublicKey,
    /// The document of the signed revision: is it the one that was signed?
    #[arg(long, value_name = "FILE")]
    document: Option<PathBuf>,
}

fn key(text: &str) -> Result<PublicKey, &'static str> {
    PublicKey::try_from(text.to_owned())
}

impl CheckRecord {
    /// Prints who signed what when, and what does not hold.
    pub fn run(self) -> Ended {
        let checked = match read(&self.file, |bytes| check(bytes, &self.key)) {
            Ok(checked) => checked,
            Err(why) => return Ok(unreadable(&why)),
        };
        let mut faults = faults(&checked);
        if let Some(file) = &self.document {
            let bytes = match bytes_of(file) {
                Ok(bytes) => bytes,
                Err(why) => return Ok(unreadable(&why)),
            };
            if checked.record.subject.digest != Some(Digest::of(&bytes)) {
                let file = file.display();
                faults.push(format!("{file}: it is not the document that was signed"));
            }
        }
        tell(&checked.record);
        for fault in &faults {
            println!("{fault}");
        }
        if faults.is_empty() {
            println!("Everything holds.");
            Ok(ExitCode::SUCCESS)
        } else {
            println!("{} faults.", faults.len());
            Ok(ExitCode::FAILURE)
        }
    }
}

/// A line for each thing of a record that does not hold.
pub fn faults(checked: &Checked) -> Vec<String> {
    checked.doubts.iter().map(ToString::to_string).collect()
}

fn tell(record: &Record) {
    let subject = &record.subject;
    println!(
        "{} {}, {} {}, {} with {}",
        record.style.number,
        record.style.name,
        subject.kind.name(),
        subject.number,
        record.brand,
        record.factory.name,
    );
    match &subject.digest {
        Some(digest) => println!("SHA-256 {digest}"),
        None => println!("nothing to sign yet"),
    }
    for given in &record.signatures {
        println!(
            "signed {} by {} ({}, {}): {}",
            given.at,
            given.name.as_deref().unwrap_or("an erased name"),
            given.role.name(),
            given.side.name(),
            given.words,
        );
        if subject.digest.as_ref() != Some(&given.digest) {
            println!("  put to SHA-256 {}", given.digest);
        }
    }
    let chain = &record.chain;
    println!(
        "written {}, ledger of {} entries, {} of them here",
        record.made,
        chain.head.seq,
        chain.entries.len(),
    );
}
