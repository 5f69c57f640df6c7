//! Cases of the materials.

use super::*;

#[rustfmt::skip]
pub const CASES: &[Case] = &[
    (Code::MaterialsNone, None, None,
        |s| s.materials.materials.clear(),
        |s| s.materials.materials.truncate(1)),
    (Code::MaterialKindMissing, Some("material-zip"), Some("kind"),
        |s| material(s, "zip").kind = None,
        |s| material(s, "zip").kind = Some(MaterialKind::Other)),
    (Code::MaterialUnused, Some("material-tape"), Some("parts"),
        |s| { material(s, "tape").parts.clear(); callout(s, "1").tape = None; },
        |s| material(s, "tape").parts.clear()),
    (Code::FabricsNone, None, None,
        |s| { material(s, "main").kind = Some(MaterialKind::Tape); material(s, "rib").kind = Some(MaterialKind::Tape); },
        |s| material(s, "main").kind = Some(MaterialKind::Tape)),
    (Code::CompositionMissing, Some("material-main"), Some("composition"),
        |s| material(s, "main").composition.clear(),
        |s| { material(s, "main").composition.clear(); s.header.markets = vec![Market::Other]; }),
    (Code::CompositionTotal, Some("material-rib"), Some("composition"),
        |s| shares(s, "94.9", "5"),
        |s| shares(s, "94.9", "5.1")),
    (Code::ShareIncomplete, Some("material-rib"), Some("composition"),
        |s| shares(s, "100", "0"),
        |s| shares(s, "95", "4")),
    (Code::ComponentMissing, Some("material-rib"), Some("component"),
        |s| material(s, "rib").component = None,
        |s| { s.materials.materials.remove(1); material(s, "main").component = None; }),
    (Code::ClaimHundred, Some("material-rib"), Some("name"),
        |s| material(s, "rib").name = "100\u{a0}% cotton rib".to_owned(),
        |s| material(s, "main").name = "100 % cotton jersey".to_owned()),
    (Code::ZipSizeMissing, Some("material-zip"), Some("length"),
        |s| material(s, "zip").zip.opening = None,
        |s| { let zip = material(s, "zip"); zip.zip.opening = None; zip.length = inches("9"); }),
    (Code::MinimumUnmet, Some("material-main"), Some("minimum"),
        |s| orders(s, [100, 100], "220.1", MinimumLevel::Style),
        |s| orders(s, [100, 100], "220", MinimumLevel::Style)),
    (Code::FibreTwice, Some("material-rib"), Some("composition"),
        |s| material(s, "rib").composition[1].fibre = Some(Fibre::Cotton),
        |s| material(s, "rib").composition[1].fibre = Some(Fibre::Linen)),
    (Code::VirginWool, Some("material-rib"), Some("composition"),
        |s| { shares(s, "24.9", "75.1"); material(s, "rib").composition[0].fibre = Some(Fibre::VirginWool); },
        |s| { shares(s, "25", "75"); material(s, "rib").composition[0].fibre = Some(Fibre::VirginWool); }),
    (Code::MassDisagrees, Some("material-main"), Some("fabric.mass"),
        |s| knitted(s, "278"),
        |s| knitted(s, "279")),
];

/// The main fabric of 320 g/m², of a yarn of so many tex that comes to as many g/m².
fn knitted(spec: &mut Spec, tex: &str) {
    let ten = Some(decimal("10"));
    material(spec, "main").fabric.structure = Some(Structure::Knitted(Knitted {
        yarn: Some(Yarn {
            count: Some(decimal(tex)),
            system: Some(YarnSystem::Tex),
            ..Yarn::default()
        }),
        courses: ten,
        wales: ten,
        loop_mm: Some(decimal("1")),
        ..Knitted::default()
    }));
}

/// The rib's two shares.
fn shares(spec: &mut Spec, cotton: &str, elastane: &str) {
    let shares = &mut material(spec, "rib").composition;
    for (share, percent) in shares.iter_mut().zip([cotton, elastane]) {
        share.percent = Some(decimal(percent));
    }
}

/// So many pieces of each colourway, and a minimum order of the main fabric in metres.
fn orders(spec: &mut Spec, pieces: [u32; 2], metres: &str, level: MinimumLevel) {
    let colourways = spec.colourways.colourways.iter_mut();
    for (colourway, pieces) in colourways.zip(pieces) {
        colourway.pieces = Some(pieces);
    }
    material(spec, "main").minimum = Some(Minimum {
        quantity: Some(decimal(metres)),
        unit: Some(Measured::Metre),
        level: Some(level),
    });
}

#[test]
fn a_minimum_counts_at_its_level() {
    let found = |pieces, metres: &str, level| {
        let findings = after(|s| orders(s, pieces, metres, level));
        let of_code = findings
            .into_iter()
            .filter(|it| it.code == Code::MinimumUnmet);
        of_code.map(|it| it.facts).collect::<Vec<_>>()
    };
    // 1.1 m a garment: 110 m of Ink, 55 m of Chalk.
    let met = found([100, 50], "55", MinimumLevel::Colour);
    assert_eq!(met, Vec::<Vec<_>>::new());
    let unmet = found([100, 50], "56", MinimumLevel::Colour);
    let [facts] = &unmet[..] else {
        panic!("{unmet:?}");
    };
    assert_eq!(
        facts[1..],
        [
            ("needed", decimal("55").into()),
            ("minimum", decimal("56").into()),
            ("unit", Fact::word(Measured::Metre)),
            ("colourway", "CHALK Chalk".into()),
        ]
    );
    // How much of the order one dimension takes is not known.
    assert_eq!(
        found([1, 1], "900", MinimumLevel::Dimension),
        Vec::<Vec<_>>::new()
    );
    // Nor how much is ordered, while a colourway has no pieces.
    let findings = after(|s| {
        orders(s, [100, 100], "900", MinimumLevel::Style);
        s.colourways.colourways[1].pieces = None;
    });
    assert!(findings.iter().all(|it| it.code != Code::MinimumUnmet));
}

#[test]
fn an_unlisted_fibre_needs_a_name() {
    let found = |name: &str| {
        let findings = after(|s| {
            let share = &mut material(s, "rib").composition[1];
            share.fibre = Some(Fibre::Other);
            share.name = name.to_owned();
        });
        findings.iter().any(|it| it.code == Code::ShareIncomplete)
    };
    assert!(found(" "));
    assert!(!found("lotus"));
}

#[test]
fn what_lies_hidden_may_have_its_place_in_words() {
    let unused = |placement: &str, kind| {
        let findings = after(|s| {
            let tape = material(s, "tape");
            tape.parts.clear();
            tape.kind = Some(kind);
            tape.placement = placement.to_owned();
            callout(s, "1").tape = None;
        });
        findings.iter().any(|it| it.code == Code::MaterialUnused)
    };
    assert!(unused("", MaterialKind::Elastic));
    assert!(!unused("in the hem", MaterialKind::Elastic));
    assert!(unused("in the hem", MaterialKind::Tape));
    assert!(!unused("", MaterialKind::Packing));
}

#[test]
fn without_any_part_no_material_is_told_to_be_in_none() {
    let unused = |parts: bool| {
        let findings = after(|s| {
            material(s, "tape").parts.clear();
            callout(s, "1").tape = None;
            if !parts {
                s.colourways.parts.clear();
            }
        });
        findings.iter().any(|it| it.code == Code::MaterialUnused)
    };
    assert!(unused(true));
    assert!(!unused(false));
}
