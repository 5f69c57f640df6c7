//! `fellseam ready`: what keeps a spec from being published, and what needs a reason.

use std::path::PathBuf;
use std::process::ExitCode;

use clap::Args;
use serde::Serialize;

use super::Ended;
use super::given::{Given, Spoken, answer};
use crate::language::Text;
use crate::spec::check::{Finding, RULES, Severity, check};
use crate::spec::{ItemId, Unit};

#[derive(Debug, Args)]
#[command(
    after_help = "Ends with 0 when there is no error (warnings alone are none), \
    with 1 when there is one, with 2 when the file cannot be read."
)]
pub struct Ready {
    /// A spec as JSON, bare or within a revision's document, or a style's archive; `-` is standard
    /// input.
    file: PathBuf,
    #[command(flatten)]
    spoken: Spoken,
}

#[derive(Serialize)]
struct Answer {
    /// The version of the rules.
    rules: u32,
    errors: usize,
    warnings: usize,
    findings: Vec<Found>,
}

#[derive(Serialize)]
struct Found {
    code: &'static str,
    severity: &'static str,
    section: &'static str,
    #[serde(skip_serializing_if = "Option::is_none")]
    item: Option<ItemId>,
    /// The letter of the item, or the code of a size or colourway.
    #[serde(skip_serializing_if = "String::is_empty")]
    letter: String,
    /// Of a cell, whose part is the item.
    #[serde(skip_serializing_if = "Option::is_none")]
    colourway: Option<ItemId>,
    #[serde(skip_serializing_if = "Option::is_none")]
    field: Option<&'static str>,
    sentence: String,
}

impl Ready {
    pub fn run(self) -> Ended {
        let t = self.spoken.text();
        answer(Given::read(&self.file).map(|given| {
            let findings = check(&given.spec, &given.graded);
            let errors = findings.iter().filter(|it| it.is_error()).count();
            let findings: Vec<Found> = findings.iter().map(|it| found(t, &given, it)).collect();
            let answer = Answer {
                rules: RULES,
                errors,
                warnings: findings.len() - errors,
                findings,
            };
            (answer, ExitCode::from(u8::from(errors > 0)))
        }))
    }
}

fn found(t: Text, given: &Given, finding: &Finding) -> Found {
    let item = finding.item.as_ref().and_then(|id| given.spec.item(id));
    let unit = given.spec.header.unit.unwrap_or(Unit::Cm);
    Found {
        code: finding.code.name(),
        severity: match finding.severity() {
            Severity::Error => "error",
            Severity::Warning => "warning",
        },
        section: finding.section.name(),
        item: finding.item.clone(),
        letter: item.map_or(String::new(), |item| item.letter().to_owned()),
        colourway: finding.colourway.clone(),
        field: finding.field,
        sentence: t.finding(finding, unit, given.sign).to_string(),
    }
}
