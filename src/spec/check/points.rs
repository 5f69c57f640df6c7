//! Checks of the points of measure, one by one.

use std::collections::HashMap;

use super::document::same_label;
use super::{Code, Finding, blank, grading};
use crate::spec::chart::{GradeFault, Graded};
use crate::spec::document::{Point, Section, Spec};
use crate::spec::id::ItemId;
use crate::spec::units::{Entered, Unit};

pub fn points(spec: &Spec, graded: &Graded, findings: &mut Vec<Finding>) {
    if spec.points.points.is_empty() {
        findings.push(Finding::new(Code::PointsNone, Section::Points));
    }
    let labels = Labels::of(spec);
    let mut letters: HashMap<String, &str> = HashMap::new();
    for (point, graded) in spec.points.points.iter().zip(&graded.points) {
        texts(point, findings);
        if !blank(&point.letter)
            && let Some(other) = letters.insert(same_label(&point.letter), &point.name)
        {
            let finding = about(point, Code::PointLetterTwice).field("letter");
            findings.push(finding.fact("other", other));
        }
        tolerances(point, spec.header.unit, findings);
        match &graded.result {
            Ok(values) => grading::judge(spec, point, values, &labels, findings),
            Err(faults) => {
                findings.extend(faults.iter().filter_map(|f| fault(point, f, &labels)));
            }
        }
    }
    grading::half_or_full(spec, graded, findings);
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

fn tolerances(point: &Point, unit: Option<Unit>, findings: &mut Vec<Finding>) {
    let foreign =
        |entered: Entered| unit.is_some_and(|unit| unit.is_metric() != entered.unit.is_metric());
    for (side, field, missing) in [
        (point.minus, "minus", Code::PointMinusMissing),
        (point.plus, "plus", Code::PointPlusMissing),
    ] {
        let code = match side {
            None => missing,
            Some(side) if side.nm.is_negative() => Code::ToleranceNegative,
            Some(side) if foreign(side) => Code::ToleranceUnit,
            Some(_) => continue,
        };
        findings.push(about(point, code).field(field));
    }
    if point.step.is_some_and(foreign) {
        findings.push(about(point, Code::StepUnit).field("step"));
    }
}

/// What keeps a point from being graded. Nothing where another finding says it already.
fn fault(point: &Point, fault: &GradeFault, labels: &Labels) -> Option<Finding> {
    let grade = |code| about(point, code).field("grade");
    let between = |code, from, to| {
        let finding = grade(code).fact("from", labels.get(from));
        finding.fact("to", labels.get(to))
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
            grade(Code::GradeSizeMissing).fact("size", labels.get(size))
        }
        GradeFault::UnknownPoint { .. } => grade(Code::GradeSourceMissing),
        GradeFault::DerivedCycle { points } => {
            let round = points.iter().chain(points.first());
            let letters: Vec<&str> = round.map(|id| labels.get(id)).collect();
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

/// The codes of sizes and the letters of points.
pub struct Labels<'a>(HashMap<&'a ItemId, &'a str>);

impl<'a> Labels<'a> {
    fn of(spec: &'a Spec) -> Self {
        let sizes = spec.sizes.sizes.iter().map(|s| (&s.id, s.code.as_str()));
        let points = spec
            .points
            .points
            .iter()
            .map(|p| (&p.id, p.letter.as_str()));
        Self(sizes.chain(points).collect())
    }

    pub fn get(&self, id: &ItemId) -> &'a str {
        self.0.get(id).copied().unwrap_or_default()
    }
}
