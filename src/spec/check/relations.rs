//! Relations between measurements that cannot hold: warnings, since a garment may be meant so.
//!
//! What the body measures is told by the sizes; where it is not, nothing is said.

use std::collections::HashMap;

use super::known::{Known, way_round};
use super::{Code, Finding, on};
use crate::spec::chart::Values;
use crate::spec::document::{BodyDimension, GarmentKind, Material, Measure, Point, Size};
use crate::spec::item::Item;
use crate::spec::units::Length;

pub fn relations(known: &Known, findings: &mut Vec<Finding>) {
    let mut by_measure: HashMap<Measure, (&Point, &Values)> = HashMap::new();
    for point in &known.spec.points.points {
        if let (Some(measure), Some(graded)) = (point.measure, known.graded(&point.id)) {
            by_measure.entry(measure).or_insert(graded);
        }
        stretched_min(known, point, findings);
    }
    let of = |measure| by_measure.get(&measure).copied();
    for (relaxed, stretched) in [
        (Measure::NeckOpening, Measure::NeckStretched),
        (Measure::Cuff, Measure::CuffStretched),
        (Measure::Waist, Measure::WaistStretched),
    ] {
        if let (Some(relaxed), Some(stretched)) = (of(relaxed), of(stretched)) {
            stretches(known, relaxed, stretched, findings);
        }
    }
    // These open at the neck.
    let opens = [Some(GarmentKind::HalfZip), Some(GarmentKind::Jacket)];
    if !opens.contains(&known.spec.header.kind) {
        let neck = passing(&of, Measure::NeckOpening, Measure::NeckStretched);
        passes(
            known,
            neck,
            Code::NeckUnderHead,
            BodyDimension::HeadGirth,
            findings,
        );
    }
    let cuff = passing(&of, Measure::Cuff, Measure::CuffStretched);
    passes(
        known,
        cuff,
        Code::CuffUnderHand,
        BodyDimension::HandGirth,
        findings,
    );
    rise(known, &of, findings);
    for material in &known.spec.materials.materials {
        zip(known, material, findings);
        cord(known, material, findings);
    }
}

fn size<'a>(known: &Known<'a>, index: usize) -> &'a Size {
    &known.spec.sizes.sizes[index]
}

/// The value that a point must reach when stretched lies above the relaxed one.
fn stretched_min(known: &Known, point: &Point, findings: &mut Vec<Finding>) {
    let header = &known.spec.header;
    let base = known.spec.sizes.sizes.iter();
    let mut base = base.filter(|size| header.base_size.as_ref() == Some(&size.id));
    if let (Some(least), Some(relaxed), Some(base)) = (point.stretched_min, point.base, base.next())
        && least.nm < relaxed.nm
    {
        let finding = on(point, Code::StretchedBelowRelaxed).field("stretched_min");
        let finding = finding.fact("size", base.code.as_str());
        let finding = finding.fact("relaxed", relaxed.nm);
        findings.push(finding.fact("stretched", least.nm));
    }
}

fn stretches(
    known: &Known,
    (relaxed, values): (&Point, &Values),
    (point, stretched): (&Point, &Values),
    findings: &mut Vec<Finding>,
) {
    let pairs = values.rounded.iter().zip(&stretched.rounded);
    let pairs = pairs.map(|(one, other)| (way_round(relaxed, *one), way_round(point, *other)));
    if let Some((index, (one, other))) = pairs.enumerate().find(|(_, (one, other))| other < one) {
        let finding = on(point, Code::StretchedBelowRelaxed).field("base");
        let finding = finding.fact("size", size(known, index).code.as_str());
        let finding = finding.fact("relaxed", one);
        findings.push(finding.fact("stretched", other));
    }
}

/// The point of an opening that the body must pass, with how wide it gets in every size.
type Passing<'a> = Option<(&'a Point, Vec<Length>)>;

/// The stretched opening, or what the relaxed one must reach, or what one that is measured
/// stretched measures.
fn passing<'a>(
    of: &impl Fn(Measure) -> Option<(&'a Point, &'a Values)>,
    relaxed: Measure,
    stretched: Measure,
) -> Passing<'a> {
    let around = |point: &Point, values: &[Length]| {
        values
            .iter()
            .map(|value| way_round(point, *value))
            .collect()
    };
    if let Some((point, values)) = of(stretched) {
        return Some((point, around(point, &values.rounded)));
    }
    let (point, values) = of(relaxed)?;
    let values = match point.how.stretched {
        true => &values.rounded,
        false => &values.stretched,
    };
    (!values.is_empty()).then(|| (point, around(point, values)))
}

fn passes(
    known: &Known,
    opening: Passing,
    code: Code,
    dimension: BodyDimension,
    findings: &mut Vec<Finding>,
) {
    let Some((point, openings)) = opening else {
        return;
    };
    let sizes = known.spec.sizes.sizes.iter().zip(openings);
    let mut tight = sizes.filter_map(|(size, opening)| {
        let girth = largest(size, dimension)?;
        (opening < girth).then_some((size, opening, girth))
    });
    if let Some((size, opening, girth)) = tight.next() {
        let finding = on(point, code).field("base");
        let finding = finding.fact("size", size.code.as_str());
        findings.push(finding.fact("opening", opening).fact("girth", girth));
    }
}

/// The largest body that a size is for.
fn largest(size: &Size, dimension: BodyDimension) -> Option<Length> {
    let ranges = size
        .body
        .iter()
        .filter(|range| range.dimension == Some(dimension));
    let ends = ranges.flat_map(|range| range.from.into_iter().chain(range.to));
    ends.map(|end| end.nm).max()
}

/// A zip closes its opening, within the tolerances of the point.
fn zip(known: &Known, material: &Material, findings: &mut Vec<Finding>) {
    let opening = material.zip.opening.as_ref();
    let Some((point, values)) = opening.and_then(|id| known.graded(id)) else {
        return;
    };
    let unfit = known.spec.sizes.sizes.iter().zip(&values.rounded);
    let mut unfit = unfit.filter_map(|(size, value)| {
        let length = material.length_in(&size.id)?.nm;
        let allowed = point.allowed(&size.id)?;
        let fits = way_round(point, *value - allowed.minus) <= length
            && length <= way_round(point, *value + allowed.plus);
        (!fits).then_some((size, length, way_round(point, *value)))
    });
    if let Some((size, length, opening)) = unfit.next() {
        let finding = on(material, Code::ZipNotOpening).field("length");
        let finding = finding.fact("point", on_paper(point));
        let finding = finding.fact("size", size.code.as_str());
        findings.push(finding.fact("length", length).fact("opening", opening));
    }
}

/// A cord is no shorter than its channel, all the way round.
fn cord(known: &Known, material: &Material, findings: &mut Vec<Finding>) {
    let channel = material.cord.channel.as_ref();
    let Some((point, values)) = channel.and_then(|id| known.graded(id)) else {
        return;
    };
    let short = known.spec.sizes.sizes.iter().zip(&values.rounded);
    let mut short = short.filter_map(|(size, value)| {
        let length = material.length_in(&size.id)?.nm;
        let channel = way_round(point, *value);
        (length < channel).then_some((size, length, channel))
    });
    if let Some((size, length, channel)) = short.next() {
        let finding = on(material, Code::CordUnderChannel).field("length");
        let finding = finding.fact("point", on_paper(point));
        let finding = finding.fact("size", size.code.as_str());
        findings.push(finding.fact("length", length).fact("channel", channel));
    }
}

fn on_paper(point: &Point) -> String {
    Item::Point(point).known_by()
}

/// Front rise and inseam go from the waist to the hem as the outseam does. The rise is curved:
/// together they are at most 3 % shorter than the outseam, and at most a third of the rise longer.
/// Common practice, no source.
fn rise<'a>(
    known: &Known,
    of: &impl Fn(Measure) -> Option<(&'a Point, &'a Values)>,
    findings: &mut Vec<Finding>,
) {
    let (Some((_, rise)), Some((_, inseam)), Some((point, outseam))) = (
        of(Measure::FrontRise),
        of(Measure::Inseam),
        of(Measure::Outseam),
    ) else {
        return;
    };
    let sizes = known.spec.sizes.sizes.iter().enumerate();
    let mut unlike = sizes.filter_map(|(index, size)| {
        let at = |values: &Values| values.rounded.get(index).copied();
        let (rise, inseam, outseam) = (at(rise)?, at(inseam)?, at(outseam)?);
        let sum = (rise + inseam).as_nm();
        let holds =
            sum * 100 >= outseam.as_nm() * 97 && (sum - outseam.as_nm()) * 3 <= rise.as_nm();
        (!holds).then_some((size, rise, inseam, outseam))
    });
    if let Some((size, rise, inseam, outseam)) = unlike.next() {
        let finding = on(point, Code::RiseAndInseam).field("base");
        let finding = finding.fact("size", size.code.as_str());
        let finding = finding.fact("rise", rise).fact("inseam", inseam);
        findings.push(finding.fact("outseam", outseam));
    }
}
