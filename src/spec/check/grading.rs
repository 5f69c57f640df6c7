//! What a grade or a rounding makes doubtful: warnings on points that could be graded.

use super::points::about;
use super::{Code, Finding};
use crate::spec::chart::{Graded, Values, steps};
use crate::spec::document::{Basis, Direction, Point, Spec};
use crate::spec::units::Length;

pub fn judge(spec: &Spec, point: &Point, values: &Values, findings: &mut Vec<Finding>) {
    let size = |index: usize| spec.sizes.sizes[index].code.as_str();
    let lengths = values.lengths.iter().map(|(_, values)| values);
    let mut all = std::iter::once(&values.rounded).chain(lengths);
    let low = all.find_map(|values| {
        let mut values = values.iter().enumerate();
        values.find(|(_, value)| !value.is_positive())
    });
    if let Some((index, value)) = low {
        let finding = about(point, Code::ValueNotPositive).fact("size", size(index));
        findings.push(finding.fact("value", *value));
    }
    if let Some(index) = reversal(&values.exact) {
        let finding = about(point, Code::GradeReverses).field("grade");
        findings.push(finding.fact("size", size(index)));
    }
    if let Some((index, before, after)) = uneven(values) {
        let exact = values.exact[index + 1] - values.exact[index];
        let finding = about(point, Code::StepsUneven).field("step");
        let finding = finding.fact("size", size(index)).fact("exact", exact);
        findings.push(finding.fact("before", before).fact("after", after));
    }
    let (Some(minus), Some(plus), Some(step)) = (point.minus, point.plus, point.step) else {
        return;
    };
    let (minus, plus, step) = (minus.nm, plus.nm, step.nm);
    // Half of the tolerance of a side; of both together where they differ.
    if step.doubled().doubled() > minus + plus {
        let finding = about(point, Code::StepCoarse).field("step");
        let finding = finding.fact("step", step);
        findings.push(finding.fact("minus", minus).fact("plus", plus));
    }
    if point.critical
        && let Some((index, below, above)) = overlap(spec, point, values)
    {
        let step = values.rounded[index + 1] - values.rounded[index];
        let finding = about(point, Code::ToleranceOverlaps).field("plus");
        let finding = finding
            .fact("from", size(index))
            .fact("to", size(index + 1));
        let finding = finding.fact("step", step);
        findings.push(finding.fact("minus", below).fact("plus", above));
    }
}

/// The first size that can pass as the next one, with how much the larger of the two may be below
/// its value and the smaller above.
fn overlap(spec: &Spec, point: &Point, values: &Values) -> Option<(usize, Length, Length)> {
    let allowed = |size: usize| point.allowed(&spec.sizes.sizes[size].id);
    let mut left = steps(&values.rounded).enumerate();
    left.find_map(|(index, step)| {
        let (smaller, larger) = match step.is_negative() {
            false => (index, index + 1),
            true => (index + 1, index),
        };
        let below = allowed(larger)?.minus;
        let above = allowed(smaller)?.plus;
        // Equal sizes are meant to be equal: only sizes that differ can be mistaken for each other.
        let overlaps = step != Length::ZERO && below + above >= step.abs();
        overlaps.then_some((index, below, above))
    })
}

/// The size at which a growing grade begins to shrink, or the other way round.
fn reversal(values: &[Length]) -> Option<usize> {
    let mut direction = None;
    for (index, step) in steps(values).enumerate() {
        if step == Length::ZERO {
            continue;
        }
        let grows = step.is_positive();
        if direction.is_some_and(|grew| grew != grows) {
            return Some(index);
        }
        direction = Some(grows);
    }
    None
}

/// The size between two steps that are equal unrounded and differ rounded, with both.
fn uneven(values: &Values) -> Option<(usize, Length, Length)> {
    let exact: Vec<Length> = steps(&values.exact).collect();
    let rounded: Vec<Length> = steps(&values.rounded).collect();
    let index =
        (1..exact.len()).find(|i| exact[*i] == exact[i - 1] && rounded[*i] != rounded[i - 1])?;
    Some((index, rounded[index - 1], rounded[index]))
}

/// Grades that may have been typed for the other basis.
///
/// Common practice, no source: chest, waist, hip and bottom of one garment grade by about the same
/// amount. Among the widths with a basis of half or full that measure, the full way round, at
/// least 60 % of the widest, one that grows from the first size to the last by twice or half the
/// median (within a tenth) is suspected. Fewer than three such points say nothing.
pub fn half_or_full(spec: &Spec, graded: &Graded, findings: &mut Vec<Finding>) {
    let mut girths = Vec::new();
    for (point, graded) in spec.points.points.iter().zip(&graded.points) {
        let (Ok(values), Some(Direction::Width)) = (&graded.result, point.direction) else {
            continue;
        };
        let full = |length: Length| match point.basis {
            Some(Basis::Half) => Some(length.doubled()),
            Some(Basis::Full) => Some(length),
            Some(Basis::Linear) | None => None,
        };
        if let (Some(first), Some(last)) = (values.exact.first(), values.exact.last())
            && let (Some(widest), Some(growth)) = (full(*last), full(*last - *first))
            && growth.is_positive()
        {
            girths.push((point, widest, growth));
        }
    }
    let widest = girths.iter().map(|(_, girth, _)| girth.as_nm()).max();
    let widest = widest.unwrap_or_default();
    girths.retain(|(_, girth, _)| girth.as_nm() * 10 >= widest * 6);
    if girths.len() < 3 {
        return;
    }
    let mut growths: Vec<Length> = girths.iter().map(|(_, _, growth)| *growth).collect();
    growths.sort_unstable();
    let usual = growths[(growths.len() - 1) / 2];
    let about_twice = |one: Length, other: Length| {
        (other.as_nm() * 18..=other.as_nm() * 22).contains(&(one.as_nm() * 10))
    };
    for (point, _, growth) in girths {
        if about_twice(growth, usual) || about_twice(usual, growth) {
            let finding = about(point, Code::GradeHalfOrFull).field("grade");
            findings.push(finding.fact("growth", growth).fact("usual", usual));
        }
    }
}
