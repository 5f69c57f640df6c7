//! A spec in a file: bare, within the document of a published revision, or in a style's archive.

use std::fmt;
use std::fs::File;
use std::io::{self, Read, Write};
use std::path::{Path, PathBuf};
use std::process::ExitCode;

use clap::Args;
use serde::{Deserialize, Serialize};

use super::Ended;
use crate::exchange::revision::Frozen;
use crate::language::{Language, Text, other_unit};
use crate::print::archive::{self, MAX_BYTES};
use crate::spec::canon::{CanonError, CanonFault, from_json};
use crate::spec::change::Version;
use crate::spec::chart::{Chart, Graded, grade};
use crate::spec::{DecimalSign, Length, Spec, Unit};

/// What an unreadable file ends with.
const UNREADABLE: u8 = 2;

/// The language that sentences are said in.
#[derive(Debug, Args)]
pub struct Spoken {
    /// The language of the sentences, as a tag.
    #[arg(long, value_name = "TAG", default_value = "en", value_parser = language)]
    language: Language,
}

fn language(tag: &str) -> Result<Language, String> {
    let tags = || {
        let tags = Language::ALL.iter().map(|language| language.tag());
        tags.collect::<Vec<_>>().join(", ")
    };
    Language::from_tag(tag).ok_or_else(|| format!("not among the languages: {}", tags()))
}

impl Spoken {
    pub fn text(&self) -> Text {
        self.language.text()
    }
}

/// A spec with what goes by it.
pub struct Given {
    pub spec: Spec,
    pub graded: Graded,
    /// The frozen chart of a revision; of a bare spec as far as there is one.
    pub chart: Option<Chart>,
    pub sign: DecimalSign,
}

/// Why a file cannot be read, for the one who named it.
#[derive(Debug)]
pub struct Unreadable {
    file: PathBuf,
    why: String,
}

impl fmt::Display for Unreadable {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}: {}", self.file.display(), self.why)
    }
}

/// Only a revision has it.
#[derive(Deserialize)]
struct Outermost {
    format: Option<u32>,
}

impl Unreadable {
    pub fn new(file: &Path, why: String) -> Unreadable {
        Unreadable {
            file: file.to_owned(),
            why,
        }
    }
}

/// Reads a file, or standard input for `-`, and makes something of it.
pub fn read<T>(
    file: &Path,
    make: impl FnOnce(&[u8]) -> Result<T, CanonError>,
) -> Result<T, Unreadable> {
    made(file, &bytes_of(file)?, make)
}

/// The bytes of a file, or of standard input for `-`.
pub fn bytes_of(file: &Path) -> Result<Vec<u8>, Unreadable> {
    let bytes = if file == Path::new("-") {
        bounded(io::stdin())
    } else {
        File::open(file).and_then(bounded)
    };
    bytes.map_err(|cause| Unreadable::new(file, cause.to_string()))
}

fn made<T>(
    file: &Path,
    bytes: &[u8],
    make: impl FnOnce(&[u8]) -> Result<T, CanonError>,
) -> Result<T, Unreadable> {
    make(bytes).map_err(|cause| Unreadable::new(file, said(&cause, bytes)))
}

impl Given {
    /// Reads a file, or standard input for `-`.
    pub fn read(file: &Path) -> Result<Given, Unreadable> {
        let bytes = bytes_of(file)?;
        if !archive::is_archive(&bytes) {
            return made(file, &bytes, Given::of);
        }
        let document = archive::document(&bytes);
        let document = document.map_err(|cause| Unreadable::new(file, cause.to_string()))?;
        made(file, &document, Given::of)
    }

    fn of(bytes: &[u8]) -> Result<Given, CanonError> {
        let outermost = serde_json::from_slice::<Outermost>(bytes);
        if outermost.is_ok_and(|it| it.format.is_some()) {
            let frozen = Frozen::read_json(bytes)?;
            return Ok(Given {
                graded: grade(&frozen.spec),
                chart: Some(frozen.chart),
                sign: frozen.decimal,
                spec: frozen.spec,
            });
        }
        let spec: Spec = from_json(bytes)?;
        let graded = grade(&spec);
        Ok(Given {
            chart: graded.chart(&spec),
            graded,
            sign: DecimalSign::default(),
            spec,
        })
    }

    pub fn version(&self) -> Version<'_> {
        Version {
            spec: &self.spec,
            chart: self.chart.as_ref(),
        }
    }
}

/// Nothing that is read here is larger than an archive.
fn bounded(from: impl Read) -> io::Result<Vec<u8>> {
    let mut bytes = Vec::new();
    from.take(MAX_BYTES + 1).read_to_end(&mut bytes)?;
    match bytes.len() as u64 > MAX_BYTES {
        true => Err(io::ErrorKind::FileTooLarge.into()),
        false => Ok(bytes),
    }
}

/// Where JSON breaks off is told by line and column: people write these files.
fn said(cause: &CanonError, bytes: &[u8]) -> String {
    let CanonFault::Syntax { at } = cause.fault else {
        return cause.to_string();
    };
    let before = String::from_utf8_lossy(&bytes[..at.min(bytes.len())]);
    let line = before.matches('\n').count() + 1;
    let column = before.rsplit('\n').next().unwrap_or_default();
    let column = column.chars().count() + 1;
    format!("not JSON at line {line}, column {column}")
}

/// Runs what prints one document; an unreadable file ends it with its own code.
pub fn answer(made: Result<(impl Serialize, ExitCode), Unreadable>) -> Ended {
    match made {
        Ok((document, code)) => {
            let mut out = std::io::stdout().lock();
            serde_json::to_writer_pretty(&mut out, &document)?;
            writeln!(out)?;
            Ok(code)
        }
        Err(why) => Ok(unreadable(&why)),
    }
}

/// Says why a file cannot be read: the command ends with this code.
pub fn unreadable(why: &Unreadable) -> ExitCode {
    eprintln!("fellseam: {why}");
    ExitCode::from(UNREADABLE)
}

/// A length in the master unit, and in the other one as a reference.
#[derive(Serialize)]
pub struct InBoth {
    nm: Length,
    value: String,
    reference: String,
}

impl InBoth {
    /// As it is written to `step`; a value between two steps exactly.
    pub fn of(nm: Length, unit: Unit, step: Length, sign: DecimalSign) -> Self {
        Self::with_reference(nm, nm, unit, step, sign)
    }

    /// A tolerance, which the other unit never widens.
    pub fn of_tolerance(nm: Length, unit: Unit, sign: DecimalSign) -> Self {
        let other = other_unit(unit);
        Self::with_reference(nm, nm.tolerance_in(other), unit, unit.fine_step(), sign)
    }

    fn with_reference(
        nm: Length,
        reference: Length,
        unit: Unit,
        step: Length,
        sign: DecimalSign,
    ) -> Self {
        let other = other_unit(unit);
        let value = match nm.is_multiple_of(step) {
            true => nm.show(unit, step, sign),
            false => nm.exact(unit, sign),
        };
        let reference = reference.show(other, other.fine_step(), sign);
        Self {
            nm,
            value: format!("{value} {}", unit.symbol()),
            reference: format!("{reference} {}", other.symbol()),
        }
    }
}
