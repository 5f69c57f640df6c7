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
