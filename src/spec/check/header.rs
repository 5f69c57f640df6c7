//! Checks of the header and of the sizes.

use std::collections::HashSet;

use super::{Code, Fact, Finding, blank, listed, same_label};
use crate::spec::document::{Market, Section, Spec};
use crate::spec::id::ItemId;
use crate::spec::safety;

pub fn header(spec: &Spec, findings: &mut Vec<Finding>) {
    let header = &spec.header;
    let base_size = header.base_size.as_ref();
    let unknown = |id: &ItemId| spec.size(id).is_none();
    let labelled = header.labelled();
    let checks = [
        (blank(&header.number), Code::NumberMissing, "number"),
        (blank(&header.name), Code::NameMissing, "name"),
        (header.wearer.is_none(), Code::WearerMissing, "wearer"),
        (header.markets.is_empty(), Code::MarketsNone, "markets"),
        (
            labelled && header.languages.is_empty(),
            Code::LanguagesMissing,
            "languages",
        ),
        (
            header.sold_in(Market::Us) && blank(&header.origin),
            Code::OriginMissing,
            "origin",
        ),
        (base_size.is_none(), Code::BaseSizeMissing, "base_size"),
        (
            base_size.is_some_and(unknown),
            Code::BaseSizeUnknown,
            "base_size",
        ),
        (header.unit.is_none(), Code::UnitMissing, "unit"),
        (
            header.measured.is_none(),
            Code::MeasuringStateMissing,
            "measured",
        ),
    ];
    let found = checks.into_iter().filter(|(found, _, _)| *found);
    findings.extend(found.map(|(_, code, field)| Finding::new(code, Section::Header).field(field)));
    let mut void = header.exemptions.iter().filter(|exemption| {
        let lifts = Code::ALL
            .iter()
            .any(|code| code.can_be_lifted() && code.name() == exemption.code);
        !lifts || blank(&exemption.reason) || blank(&exemption.by)
    });
    if let Some(exemption) = void.next() {
        let finding = Finding::new(Code::ExemptionVoid, Section::Header).field("exemptions");
        findings.push(finding.fact("code", exemption.code.as_str()));
    }
}

pub fn sizes(spec: &Spec, findings: &mut Vec<Finding>) {
    let sizes = &spec.sizes.sizes;
    if sizes.is_empty() {
        findings.push(Finding::new(Code::SizesNone, Section::Sizes));
    }
    let mut seen = HashSet::new();
    for size in sizes {
        let finding = |code| {
            let finding = Finding::new(code, Section::Sizes).item(&size.id);
            finding.field("code")
        };
        if blank(&size.code) {
            findings.push(finding(Code::SizeCodeMissing));
        } else if !seen.insert(same_label(&size.code)) {
            findings.push(finding(Code::SizeCodeTwice).fact("code", size.code.as_str()));
        }
    }
    if safety::is_for_children(spec) {
        let unsaid = sizes.iter().filter(|size| !safety::tells_child(spec, size));
        let unsaid = listed(unsaid.map(|size| size.code.as_str()));
        if !unsaid.is_empty() {
            let finding = Finding::new(Code::SizeAgeMissing, Section::Sizes);
            findings.push(finding.fact("sizes", Fact::Text(unsaid)));
        }
    }
}
