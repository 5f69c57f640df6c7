//! Checks of the callouts.

use super::known::Known;
use super::{Code, Finding, blank, on};
use crate::spec::stitch::{self, Tables};

pub fn construction(known: &Known, tables: &Tables, findings: &mut Vec<Finding>) {
    for callout in &known.spec.construction.callouts {
        if blank(&callout.text) {
            findings.push(on(callout, Code::CalloutTextMissing).field("text"));
        }
        if !blank(&callout.stitch) && !tables.knows(&callout.stitch) {
            let finding = on(callout, Code::StitchUnknown).field("stitch");
            findings.push(finding.fact("stitch", callout.stitch.trim()));
        }
        if !blank(&callout.seam_code) {
            let class = stitch::seam_class(&callout.seam_code);
            if class.is_none() || callout.seam.is_some() && callout.seam != class {
                let finding = on(callout, Code::SeamCodeUnlike).field("seam_code");
                findings.push(finding.fact("code", callout.seam_code.trim()));
            }
        }
    }
}
