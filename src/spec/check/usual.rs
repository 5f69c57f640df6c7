//! Points that a garment of a kind usually has, and dimensions that are not told whole.

use std::collections::HashMap;

use super::{Code, Fact, Finding, on};
use crate::spec::document::{GarmentKind, Measure, Point, Section, Spec};

use Measure::*;

/// What a garment of this kind is usually measured by. Common practice, no source.
const fn points(kind: GarmentKind) -> &'static [Measure] {
    match kind {
        GarmentKind::Joggers => &[
            Waist,
            Hip,
            FrontRise,
            BackRise,
            Inseam,
            Thigh,
            Knee,
            LegOpening,
            WaistbandHeight,
        ],
        GarmentKind::Shorts => &[
            Waist,
            Hip,
            FrontRise,
            BackRise,
            Inseam,
            Thigh,
            LegOpening,
            WaistbandHeight,
        ],
        GarmentKind::Leggings => &[
            Waist,
            Hip,
            FrontRise,
            BackRise,
            Inseam,
            Thigh,
            LegOpening,
            WaistbandHeight,
        ],
        GarmentKind::TShirt => &[
            BodyLength,
            Chest,
            Hem,
            ShoulderWidth,
            SleeveLength,
            NeckOpening,
            NeckDropFront,
        ],
        GarmentKind::Hoodie => &[
            BodyLength,
            Chest,
            Hem,
            ShoulderWidth,
            SleeveLength,
            Cuff,
            HoodHeight,
            HoodWidth,
        ],
        GarmentKind::HalfZip => &[
            BodyLength,
            Chest,
            Hem,
            ShoulderWidth,
            SleeveLength,
            Cuff,
            ZipLength,
        ],
        GarmentKind::Jacket => &[BodyLength, Chest, Hem, ShoulderWidth, SleeveLength, Cuff],
        GarmentKind::Dress => &[BodyLength, Chest, Waist, Hem, ShoulderWidth, NeckOpening],
    }
}

/// What must be told too, where one of these is: each inner list names measures of which any does.
/// Common practice, no source.
const TOGETHER: &[(&[Measure], &[&[Measure]])] = &[
    (
        &[PocketOpening, PocketWidth, PocketDepth, PocketPlace],
        &[
            &[PocketOpening, PocketWidth],
            &[PocketDepth],
            &[PocketPlace],
        ],
    ),
    (&[HoodHeight, HoodWidth], &[&[HoodHeight], &[HoodWidth]]),
];

pub fn usual(spec: &Spec, findings: &mut Vec<Finding>) {
    let mut there: HashMap<Measure, &Point> = HashMap::new();
    for point in &spec.points.points {
        if let Some(measure) = point.measure {
            there.entry(measure).or_insert(point);
        }
    }
    let kind = spec.header.kind;
    if let Some(kind) = kind.filter(|_| !spec.points.points.is_empty()) {
        let missing = points(kind).iter().copied();
        let missing: Vec<Measure> = missing.filter(|it| !there.contains_key(it)).collect();
        if !missing.is_empty() {
            let finding = Finding::new(Code::PointsUsual, Section::Points);
            let finding = finding.fact("kind", Fact::word(kind));
            findings.push(finding.fact("missing", Fact::words(missing)));
        }
    }
    let any = |of: &[Measure]| of.iter().find_map(|measure| there.get(measure).copied());
    let mut need = |at: Option<&Point>, missing: Vec<Measure>| {
        if let (Some(point), false) = (at, missing.is_empty()) {
            let finding = on(point, Code::DimensionMissing).field("measure");
            findings.push(finding.fact("missing", Fact::words(missing)));
        }
    };
    for (of, needed) in TOGETHER {
        let missing = needed.iter().filter(|one| any(one).is_none());
        need(any(of), missing.map(|one| one[0]).collect());
    }
    // A cuff or a waistband has a height; the lower edge of a short sleeve and of a skirt has none.
    let sleeve_edge = [Some(GarmentKind::TShirt), Some(GarmentKind::Dress)];
    if !sleeve_edge.contains(&kind) && any(&[CuffHeight]).is_none() {
        need(any(&[Cuff, CuffStretched]), vec![CuffHeight]);
    }
    let legs = any(&[FrontRise, BackRise, Inseam, LegOpening]);
    if legs.is_some() && any(&[WaistbandHeight]).is_none() {
        need(any(&[Waist, WaistStretched]), vec![WaistbandHeight]);
    }
}
