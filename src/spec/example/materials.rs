//! The materials of the example.

use super::{inches, sixteenths};
use crate::spec::decimal::Decimal;
use crate::spec::document::*;
use crate::spec::id::ItemId;
use crate::spec::units::{Entered, Length, Unit};

pub fn materials() -> Materials {
    Materials {
        materials: vec![
            fabric(
                ("F1", "main", "Brushed loopback jersey"),
                (Component::Main, "part-1"),
                &[(Fibre::Cotton, 100)],
                (320, 180),
                "body, sleeves and collar",
            ),
            fabric(
                ("F2", "rib", "2 × 2 rib"),
                (Component::Rib, "part-2"),
                &[(Fibre::Cotton, 95), (Fibre::Elastane, 5)],
                (380, 110),
                "cuffs and hem",
            ),
            Material {
                zip: Zip {
                    teeth: Some(ZipTeeth::Coil),
                    end: Some(ZipEnd::Closed),
                    chain: Some(sixteenths(4)),
                    tape: "woven, polyester".to_owned(),
                    slider: "locking".to_owned(),
                    puller: "cord loop".to_owned(),
                    opening: Some(ItemId::new("point-j")),
                },
                consumption: each(),
                ..trim(
                    ("T1", "zip", "Coil zip"),
                    MaterialKind::Zip,
                    "part-3",
                    "centre front",
                )
            },
            Material {
                size: Some(sixteenths(6)),
                length: Some(inches(8)),
                consumption: each(),
                ..trim(
                    ("T2", "tape", "Twill tape"),
                    MaterialKind::Tape,
                    "part-4",
                    "neck seam, inside",
                )
            },
            Material {
                composition: shares(&[(Fibre::Polyester, 100)]),
                reference: "120 tex".to_owned(),
                ..trim(
                    ("T3", "thread", "Sewing thread"),
                    MaterialKind::Thread,
                    "part-1",
                    "all seams",
                )
            },
        ],
    }
}

fn fabric(
    (letter, id, name): (&str, &str, &str),
    (component, part): (Component, &str),
    composition: &[(Fibre, i64)],
    (mass, width): (i64, i64),
    placement: &str,
) -> Material {
    let cm = |count| Entered {
        nm: Length::nm(count * 10_000_000),
        unit: Unit::Cm,
    };
    Material {
        component: Some(component),
        composition: shares(composition),
        fabric: Fabric {
            mass: Some(Decimal::new(mass, 0)),
            width: Some(cm(width)),
            cuttable: Some(cm(width - 4)),
            raised: component == Component::Main,
            ..Fabric::default()
        },
        consumption: Consumption {
            unit: Some(Measured::Metre),
            basis: Some(ConsumptionBasis::Marker),
            amount: Some(Decimal::new(mass - 210, 2)),
            ..Consumption::default()
        },
        care: Care {
            wash: Some(Wash::Normal40),
            bleach: Some(Bleach::No),
            tumble: Some(Tumble::No),
            air_dry: Some(AirDry::Line),
            iron: Some(Iron::Medium),
            dry_clean: Some(DryClean::No),
            ..Care::default()
        },
        evidence: vec![Evidence {
            kind: Some(EvidenceKind::AzoDyes),
            report: format!("Bay Textile Laboratory, {letter}-2026-031"),
            date: "2026-03-12".to_owned(),
        }],
        ..trim(
            (letter, id, name),
            MaterialKind::KnittedFabric,
            part,
            placement,
        )
    }
}

fn trim(
    (letter, id, name): (&str, &str, &str),
    kind: MaterialKind,
    part: &str,
    placement: &str,
) -> Material {
    Material {
        id: ItemId::new(format!("material-{id}")),
        letter: letter.to_owned(),
        name: name.to_owned(),
        kind: Some(kind),
        parts: vec![ItemId::new(part)],
        placement: placement.to_owned(),
        supplier: "Tidewater Mills".to_owned(),
        ..Material::default()
    }
}

/// One a garment.
fn each() -> Consumption {
    Consumption {
        unit: Some(Measured::Piece),
        amount: Some(Decimal::new(1, 0)),
        ..Consumption::default()
    }
}

fn shares(of: &[(Fibre, i64)]) -> Vec<Share> {
    let share = |(fibre, percent): &(Fibre, i64)| Share {
        fibre: Some(*fibre),
        percent: Some(Decimal::new(*percent, 0)),
        ..Share::default()
    };
    of.iter().map(share).collect()
}
