//! Checks of the callouts.

use super::known::Known;
use super::{Code, Finding, blank, on};

pub fn construction(known: &Known, findings: &mut Vec<Finding>) {
    for callout in &known.spec.construction.callouts {
        if blank(&callout.text) {
            findings.push(on(callout, Code::CalloutTextMissing).field("text"));
        }
    }
}
