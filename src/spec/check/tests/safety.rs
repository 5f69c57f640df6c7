//! Cases of safety.

use super::*;

#[rustfmt::skip]
pub const CASES: &[Case] = &[
    (Code::CordPlaceMissing, Some("material-cord"), Some("cord.place"),
        |s| { child(s, 60, 71); cord(s).place = None; },
        |s| cord(s).place = None),
    (Code::CordHoodNeckUs, Some("material-cord"), Some("cord.place"),
        |s| { child(s, 155, 160); us(s); cord(s).place = Some(CordPlace::HoodNeck); },
        |s| { child(s, 156, 160); us(s); cord(s).place = Some(CordPlace::HoodNeck); }),
    (Code::CordHoodNeckEu, Some("material-cord"), Some("cord.place"),
        |s| { child(s, 83, 90); cord(s).place = Some(CordPlace::HoodNeck); },
        |s| { child(s, 84, 90); cord(s).place = Some(CordPlace::HoodNeck); }),
    (Code::CordExempted, Some("material-cord"), Some("cord.place"),
        |s| { child(s, 60, 71); us(s); cord(s).place = Some(CordPlace::HoodNeck); s.header.exemptions = exempt("cord-hood-neck-us", "a costume"); },
        |s| { child(s, 60, 71); us(s); cord(s).place = Some(CordPlace::HoodNeck); s.header.exemptions = exempt("cord-hood-neck-us", ""); }),
    (Code::CordFreeEndsEu, Some("material-cord"), Some("cord.ends"),
        |s| { child(s, 84, 90); cord(s).place = Some(CordPlace::HoodNeck); },
        |s| { child(s, 84, 90); cord(s).place = Some(CordPlace::HoodNeck); material(s, "cord").cord.ends = Some(CordEnds::Fixed); }),
    (Code::CordFreeMissing, Some("material-cord"), Some("cord.free"),
        |s| { child(s, 60, 71); cord(s).free = None; },
        |s| cord(s).free = None),
    (Code::CordLongUs, Some("material-cord"), Some("cord.free"),
        |s| { child(s, 60, 71); us(s); cord(s).free = mm("76.3"); },
        |s| { child(s, 60, 71); us(s); cord(s).free = inches("3"); }),
    (Code::CordToggledUs, Some("material-cord"), Some("cord.ends"),
        |s| { child(s, 60, 71); us(s); cord(s).ends = Some(CordEnds::Toggled); },
        |s| { child(s, 60, 71); us(s); cord(s).ends = Some(CordEnds::Free); }),
    (Code::CordLooseUs, Some("material-cord"), Some("cord.bartacked"),
        |s| { child(s, 60, 71); us(s); cord(s).bartacked = false; },
        |s| { child(s, 60, 71); cord(s).bartacked = false; }),
    (Code::CordLongEu, Some("material-cord"), Some("cord.free"),
        |s| { child(s, 60, 71); cord(s).free = mm("140.1"); },
        |s| { child(s, 60, 71); cord(s).free = mm("140"); }),
    (Code::CordBackEu, Some("material-cord"), Some("cord.place"),
        |s| { child(s, 60, 71); cord(s).place = Some(CordPlace::Back); },
        |s| { child(s, 168, 180); cord(s).place = Some(CordPlace::Back); }),
    (Code::EvidenceSmallParts, Some("material-zip"), Some("evidence"),
        |s| { child(s, 35, 40); us(s); },
        |s| { child(s, 36, 40); us(s); }),
    (Code::EvidenceFlammability, Some("material-main"), Some("evidence"),
        |s| us(s),
        |s| { us(s); material(s, "main").fabric.raised = false; }),
    (Code::EvidenceSleepwear, Some("material-main"), Some("evidence"),
        |s| { sleepwear(s); material(s, "rib").evidence = report(EvidenceKind::Flammability, "R 1"); },
        |s| { sleepwear(s); s.header.worn = Some(Worn::Upper); }),
    (Code::EvidenceNickel, Some("material-zip"), Some("evidence"),
        |s| material(s, "zip").metal_on_skin = true,
        |s| { let zip = material(s, "zip"); zip.metal_on_skin = true; zip.evidence = report(EvidenceKind::Nickel, "R 1"); }),
    (Code::EvidenceAzoDyes, Some("material-main"), Some("evidence"),
        |s| material(s, "main").evidence = report(EvidenceKind::AzoDyes, " "),
        |s| { material(s, "main").evidence.clear(); s.colourways.colourways.remove(0); s.colourways.cells.remove(&id("colourway-ink")); }),
    (Code::EvidenceLead, Some("material-zip"), Some("evidence"),
        |s| { child(s, 155, 160); us(s); },
        |s| { child(s, 156, 160); us(s); }),
];

/// A waist cord that nothing can be said against.
fn cord(spec: &mut Spec) -> &mut Cord {
    let kind = Some(MaterialKind::Drawcord);
    spec.materials.materials.push(Material {
        id: id("material-cord"),
        letter: "T9".to_owned(),
        name: "Drawcord".to_owned(),
        kind,
        parts: vec![id("part-4")],
        cord: Cord {
            place: Some(CordPlace::Waist),
            ends: Some(CordEnds::Free),
            free: mm("50"),
            bartacked: true,
            ..Cord::default()
        },
        ..Material::default()
    });
    &mut material(spec, "cord").cord
}

/// Children's sleepwear, sold in the US.
fn sleepwear(spec: &mut Spec) {
    child(spec, 60, 71);
    us(spec);
    spec.header.worn = Some(Worn::Sleepwear);
}

fn report(kind: EvidenceKind, number: &str) -> Vec<Evidence> {
    vec![Evidence {
        kind: Some(kind),
        report: number.to_owned(),
        ..Evidence::default()
    }]
}

fn codes(edit: impl FnOnce(&mut Spec)) -> Vec<Code> {
    let about_cords = |code: &Code| code.name().starts_with("cord-");
    let findings = after(edit).into_iter();
    findings.map(|it| it.code).filter(about_cords).collect()
}

#[test]
fn cords_of_grown_peoples_clothes_are_let_be() {
    let edit: Edit = |s| {
        s.header.markets = vec![Market::Us, Market::Eu];
        *cord(s) = Cord {
            place: Some(CordPlace::HoodNeck),
            ends: Some(CordEnds::Toggled),
            free: inches("30"),
            ..Cord::default()
        };
    };
    assert_eq!(codes(edit), []);
}

#[test]
fn a_toggle_is_judged_by_its_place_alone() {
    let toggle = |place: Option<CordPlace>| {
        codes(|s| {
            child(s, 60, 71);
            us(s);
            *cord(s) = Cord {
                place,
                ..Cord::default()
            };
            material(s, "cord").kind = Some(MaterialKind::CordStop);
        })
    };
    assert_eq!(toggle(None), [Code::CordPlaceMissing]);
    assert_eq!(toggle(Some(CordPlace::HoodNeck)), [Code::CordHoodNeckUs]);
    assert_eq!(toggle(Some(CordPlace::Waist)), [Code::CordToggledUs]);
    assert_eq!(toggle(Some(CordPlace::Elsewhere)), []);
}

#[test]
fn a_reason_lifts_its_own_ban_and_no_other() {
    let hood = |s: &mut Spec| {
        child(s, 60, 71);
        s.header.markets = vec![Market::Us, Market::Eu];
        cord(s).place = Some(CordPlace::HoodNeck);
    };
    let bans = [Code::CordHoodNeckUs, Code::CordHoodNeckEu];
    assert_eq!(codes(hood), bans);
    let one = codes(|s| {
        hood(s);
        s.header.exemptions = exempt("cord-hood-neck-us", "a costume");
    });
    assert_eq!(one, [Code::CordHoodNeckEu, Code::CordExempted]);
    let findings = after(|s| {
        hood(s);
        s.header.exemptions = exempt("cord-hood-neck-us", "a costume");
        let other = exempt("cord-hood-neck-eu", "a costume, worn once");
        s.header.exemptions.extend(other);
    });
    let lifted = findings.iter().filter(|it| it.code == Code::CordExempted);
    let reasons: Vec<_> = lifted.map(|it| &it.facts[1]).collect();
    let said = "16 CFR 1120.3, ASTM F1816-97: a costume (Nell); \
                EN 14682: a costume, worn once (Nell)";
    assert_eq!(reasons, [&("reasons", said.into())]);
    assert!(findings.iter().all(|it| !it.is_error()), "{findings:?}");
}

#[test]
fn no_other_error_can_be_set_aside() {
    let lifted: Vec<Code> = {
        let all = Code::ALL.iter().copied();
        all.filter(|code| code.can_be_lifted()).collect()
    };
    assert_eq!(lifted, [Code::CordHoodNeckUs, Code::CordHoodNeckEu]);
    let codes = after(|s| {
        s.header.name.clear();
        s.header.exemptions = exempt("name-missing", "it has none");
    });
    let codes: Vec<Code> = codes.iter().map(|it| it.code).collect();
    assert_eq!(codes, [Code::NameMissing, Code::ExemptionVoid]);
}

#[test]
fn sizes_that_do_not_tell_are_taken_to_be_for_small_children() {
    let findings = after(|s| {
        child(s, 0, 0);
        for size in &mut s.sizes.sizes {
            size.ages = None;
        }
        cord(s).place = Some(CordPlace::HoodNeck);
    });
    let found = findings.iter().find(|it| it.code == Code::CordHoodNeckEu);
    assert!(found.is_some(), "{findings:?}");
}

#[test]
fn no_sentence_calls_anything_safe() {
    let texts = include_str!("../../../language/en/checks.ftl");
    for word in [" safe ", " safe.", "complies", "compliant", "conforms"] {
        assert!(!texts.contains(word), "{word}");
    }
}

#[test]
fn light_plain_cloth_is_exempt_by_its_fibres_or_its_mass() {
    let asked = |mass: &str, fibre| {
        let findings = after(|s| {
            us(s);
            let main = material(s, "main");
            main.fabric.raised = false;
            main.fabric.mass = Some(decimal(mass));
            main.composition[0].fibre = Some(fibre);
        });
        let code = Code::EvidenceFlammability;
        findings.iter().any(|it| it.code == code)
    };
    assert!(asked("88.1", Fibre::Cotton));
    assert!(!asked("88.2", Fibre::Cotton));
    assert!(!asked("60", Fibre::Polyester));
}
