//! Cases of relations between measurements, and of points that are usual.

use super::*;

#[rustfmt::skip]
pub const CASES: &[Case] = &[
    (Code::StretchedBelowRelaxed, Some("point-g"), Some("stretched_min"),
        |s| point(s, "G").stretched_min = inches("3 7/16"),
        |s| point(s, "G").stretched_min = inches("3 1/2")),
    (Code::NeckUnderHead, Some("point-i"), Some("base"),
        |s| neck(s, "21 1/2"),
        |s| neck(s, "22")),
    (Code::CuffUnderHand, Some("point-g"), Some("base"),
        |s| { point(s, "G").stretched_min = inches("4 1/8"); bodies(s, BodyDimension::HandGirth, "8"); },
        |s| { point(s, "G").stretched_min = inches("4 1/4"); bodies(s, BodyDimension::HandGirth, "8"); }),
    (Code::ZipNotOpening, Some("material-zip"), Some("length"),
        |s| { zips(s); material(s, "zip").length_by_size.insert(id("size-l"), inches("10 7/16").unwrap()); },
        |s| zips(s)),
    (Code::CordUnderChannel, Some("material-tape"), Some("length"),
        |s| { material(s, "tape").cord.channel = Some(id("point-b")); material(s, "tape").length = inches("44 7/16"); },
        |s| { material(s, "tape").cord.channel = Some(id("point-b")); material(s, "tape").length = inches("44 1/2"); }),
    (Code::RiseAndInseam, Some("point-f"), Some("base"),
        |s| legs(s, "10", "30", "41 1/4"),
        |s| legs(s, "10", "30", "41 1/8")),
    (Code::PointsUsual, None, None,
        |s| { s.header.kind = Some(GarmentKind::HalfZip); point(s, "D").measure = None; },
        |s| s.header.kind = Some(GarmentKind::HalfZip)),
    (Code::DimensionMissing, Some("point-g"), Some("measure"),
        |s| point(s, "H").measure = None,
        |s| { point(s, "H").measure = None; s.header.kind = Some(GarmentKind::TShirt); }),
];

fn bodies(spec: &mut Spec, dimension: BodyDimension, girth: &str) {
    for size in &mut spec.sizes.sizes {
        size.body.push(BodyRange {
            dimension: Some(dimension),
            from: inches("1"),
            to: inches(girth),
        });
    }
}

/// A stretched neck opening of this width around, for heads of 22 in.
fn neck(spec: &mut Spec, around: &str) {
    bodies(spec, BodyDimension::HeadGirth, "22");
    let point = point(spec, "I");
    point.measure = Some(Measure::NeckStretched);
    point.base = inches(around);
}

/// Zips that are as long as the openings and their tolerance allow.
fn zips(spec: &mut Spec) {
    let lengths = [
        ("size-xs", "8"),
        ("size-s", "9 1/8"),
        ("size-m", "9 1/4"),
        ("size-l", "10 3/8"),
        ("size-xl", "10 1/2"),
    ];
    let lengths = lengths.map(|(size, length)| (id(size), inches(length).unwrap()));
    material(spec, "zip").length_by_size = lengths.into();
}

fn legs(spec: &mut Spec, rise: &str, inseam: &str, outseam: &str) {
    for (letter, measure, base) in [
        ("H", Measure::FrontRise, rise),
        ("I", Measure::Inseam, inseam),
        ("F", Measure::Outseam, outseam),
    ] {
        let point = point(spec, letter);
        point.measure = Some(measure);
        point.base = inches(base);
        point.grade = Some(Grade::Same {});
    }
}

#[test]
fn nothing_is_said_of_bodies_that_are_not_given() {
    let codes = [Code::NeckUnderHead, Code::CuffUnderHand];
    let said = |edit: Edit| {
        let findings = after(edit);
        findings
            .iter()
            .filter(|it| codes.contains(&it.code))
            .count()
    };
    assert_eq!(said(|s| neck(s, "10")), 1);
    let without_bodies: Edit = |s| {
        neck(s, "10");
        point(s, "G").stretched_min = inches("4");
        for size in &mut s.sizes.sizes {
            size.body.clear();
        }
    };
    assert_eq!(said(without_bodies), 0);
    // A half-zip opens at the neck.
    let opens: Edit = |s| {
        neck(s, "10");
        s.header.kind = Some(GarmentKind::HalfZip);
    };
    assert_eq!(said(opens), 0);
}

#[test]
fn a_relation_carries_its_figures() {
    let findings = after(|s| legs(s, "10", "30", "50"));
    let finding = findings.iter().find(|it| it.code == Code::RiseAndInseam);
    let facts = &finding.unwrap().facts;
    let length = |text: &str| Fact::Length(inches(text).unwrap().nm);
    assert_eq!(
        facts[1..],
        [
            ("size", "XS".into()),
            ("rise", length("10")),
            ("inseam", length("30")),
            ("outseam", length("50")),
        ]
    );
    // The other way: together far longer than the outseam.
    let found = |outseam: &'static str| {
        let findings = after(|s| legs(s, "12", "30", outseam));
        findings.iter().any(|it| it.code == Code::RiseAndInseam)
    };
    assert!(found("37 7/8"));
    assert!(!found("38"));
}

#[test]
fn a_stretched_point_is_no_narrower_than_the_relaxed_one() {
    let found = |around: &'static str| {
        let findings = after(|s| {
            let stretched = point(s, "I");
            stretched.measure = Some(Measure::CuffStretched);
            stretched.base = inches(around);
        });
        findings
            .into_iter()
            .find(|it| it.code == Code::StretchedBelowRelaxed)
    };
    // The cuff lies 3 3/4 in wide in XL: 7 1/2 in around.
    let finding = found("7 3/8").expect("it is narrower in XL");
    assert!(
        finding.facts.contains(&("size", "XL".into())),
        "{finding:?}"
    );
    assert!(found("7 1/2").is_none());
}

#[test]
fn the_least_stretched_value_is_held_against_the_base_size_only() {
    let found = |base: Option<&str>| {
        let findings = after(|s| {
            point(s, "G").stretched_min = inches("3 7/16");
            s.header.base_size = base.map(id);
        });
        findings
            .into_iter()
            .find(|it| it.code == Code::StretchedBelowRelaxed)
    };
    let finding = found(Some("size-s")).expect("it lies below the relaxed value");
    assert!(finding.facts.contains(&("size", "S".into())));
    assert!(
        found(None).is_none(),
        "no base size, nothing to hold against"
    );
}
