//! Checks of the points of measure, one by one.

use std::collections::HashMap;

use super::known::Known;
use super::{Code, Finding, blank, grading, same_label};
use crate::spec::chart::GradeFault;
use crate::spec::document::{Point, Section};
use crate::spec::units::{Entered, Unit};

pub fn points(known: &Known, findings: &mut Vec<Finding>) {
    let spec = known.spec;
    if spec.points.points.is_empty() {
        findings.push(Finding::new(Code::PointsNone, Section::Points));
    }
    let mut letters: HashMap<String, &str> = HashMap::new();
    for (point, graded) in spec.points.points.iter().zip(&known.graded.points) {
        texts(point, findings);
        if !blank(&point.letter)
            && let Some(other) = letters.insert(same_label(&point.letter), &point.name)
        {
            let finding = about(point, Code::PointLetterTwice).field("letter");
            findings.push(finding.fact("other", other));
        }
        tolerances(known, point, findings);
        lengths(known, point, findings);
        match &graded.result {
            Ok(values) => grading::judge(spec, point, values, findings),
            Err(faults) => {
                findings.extend(faults.iter().filter_map(|f| fault(point, f, known)));
            }
        }
    }
    grading::half_or_full(spec, known.graded, findings);
}

/// A finding on a point, with the words that every sentence about a point needs.
pub fn about(point: &Point, code: Code) -> Finding {
    let finding = Finding::new(code, Section::Points).item(&point.id);
    let finding = finding.fact("letter", point.letter.as_str());
    finding.fact("name", point.name.as_str())
}

fn texts(point: &Point, findings: &mut Vec<Finding>) {
    let checks = [
        (blank(&point.letter), Code::PointLetterMissing, "letter"),
        (blank(&point.name), Code::PointNameMissing, "name"),
        (blank(&point.how.start), Code::HowStartMissing, "how.start"),
        (blank(&point.how.end), Code::HowEndMissing, "how.end"),
        (point.basis.is_none(), Code::PointBasisMissing, "basis"),
    ];
    let found = checks.into_iter().filter(|(found, _, _)| *found);
    findings.extend(found.map(|(_, code, field)| about(point, code).field(field)));
}

fn tolerances(known: &Known, point: &Point, findings: &mut Vec<Finding>) {
    let unit = known.spec.header.unit;
    for (side, field, missing) in [
        (point.minus, "minus", Code::PointMinusMissing),
        (point.plus, "plus", Code::PointPlusMissing),
    ] {
        match side {
            None => findings.push(about(point, missing).field(field)),
            Some(side) => tolerance(point, side, field, unit, findings),
        }
    }
    for side in point.pair_limit.iter().copied() {
        tolerance(point, side, "pair_limit", unit, findings);
    }
    for (size, own) in &point.tolerances {
        if !known.is_size(size) {
            findings.push(about(point, Code::ToleranceSizeUnknown).field("tolerances"));
        }
        for side in own.minus.into_iter().chain(own.plus) {
            tolerance(point, side, "tolerances", unit, findings);
        }
    }
    if point.step.is_some_and(|step| is_foreign(step, unit)) {
        findings.push(about(point, Code::StepUnit).field("step"));
    }
}

fn is_foreign(entered: Entered, unit: Option<Unit>) -> bool {
    unit.is_some_and(|unit| unit.is_metric() != entered.unit.is_metric())
}

fn tolerance(
    point: &Point,
    side: Entered,
    field: &'static str,
    unit: Option<Unit>,
    findings: &mut Vec<Finding>,
) {
    if side.nm.is_negative() {
        findings.push(about(point, Code::ToleranceNegative).field(field));
    } else if is_foreign(side, unit) {
        findings.push(about(point, Code::ToleranceUnit).field(field));
    }
}

/// A point that the second axis changes is changed by each of its values.
fn lengths(known: &Known, point: &Point, findings: &mut Vec<Finding>) {
    let mut lengths = known.spec.sizes.lengths.iter();
    if !point.lengths.is_empty()
        && let Some(missing) = lengths.find(|length| !point.lengths.contains_key(&length.id))
    {
        let finding = about(point, Code::LengthsPartial).field("lengths");
        findings.push(finding.fact("length", missing.code.as_str()));
    }
}

/// What keeps a point from being graded. Nothing where another finding says it already.
fn fault(point: &Point, fault: &GradeFault, known: &Known) -> Option<Finding> {
    let grade = |code| about(point, code).field("grade");
    let between = |code, from, to| {
        let finding = grade(code).fact("from", known.letter(from));
        finding.fact("to", known.letter(to))
    };
    Some(match fault {
        GradeFault::NoBase => about(point, Code::PointBaseMissing).field("base"),
        GradeFault::NoGrade => grade(Code::PointGradeMissing),
        GradeFault::NoStep => about(point, Code::PointStepMissing).field("step"),
        GradeFault::GapUncovered { from, to } => between(Code::GradeGapUncovered, from, to),
        GradeFault::GapDoubled { from, to } => between(Code::GradeGapTwice, from, to),
        GradeFault::SegmentBackwards { from, to } => between(Code::GradeBackwards, from, to),
        GradeFault::UnknownSize { .. } => grade(Code::GradeSizeUnknown),
        GradeFault::SizeWithoutValue { size } => {
            grade(Code::GradeSizeMissing).fact("size", known.letter(size))
        }
        GradeFault::UnknownPoint { .. } => grade(Code::GradeSourceMissing),
        GradeFault::DerivedCycle { points } => {
            let round = points.iter().chain(points.first());
            let letters: Vec<&str> = round.map(|id| known.letter(id)).collect();
            grade(Code::GradeCycle).fact("letters", letters.join(" ← ").as_str())
        }
        GradeFault::BaseDisagrees { typed, graded } => {
            let finding = about(point, Code::GradeBaseDisagrees).field("base");
            finding.fact("typed", *typed).fact("graded", *graded)
        }
        GradeFault::TooLong => grade(Code::GradeTooLong),
        // Told of the spec, and of the source.
        GradeFault::NoBaseSize | GradeFault::SourceFaulty { .. } => return None,
    })
}
