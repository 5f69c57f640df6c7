use proptest::prelude::*;

use super::*;
use crate::spec::document::{MaterialKind, Word};

/// Every treatment with the group and meaning that the published table has for it, in our order.
const MEANINGS: &[(Treatment, &str, &str)] = {
    use Treatment::*;
    &[
        (Wash(self::Wash::Normal95), "1 washing", "95 normal"),
        (Wash(self::Wash::Normal70), "1 washing", "70 normal"),
        (Wash(self::Wash::Normal60), "1 washing", "60 normal"),
        (Wash(self::Wash::Mild60), "1 washing", "60 mild"),
        (Wash(self::Wash::Normal50), "1 washing", "50 normal"),
        (Wash(self::Wash::Mild50), "1 washing", "50 mild"),
        (Wash(self::Wash::Normal40), "1 washing", "40 normal"),
        (Wash(self::Wash::Mild40), "1 washing", "40 mild"),
        (Wash(self::Wash::VeryMild40), "1 washing", "40 very mild"),
        (Wash(self::Wash::Normal30), "1 washing", "30 normal"),
        (Wash(self::Wash::Mild30), "1 washing", "30 mild"),
        (Wash(self::Wash::VeryMild30), "1 washing", "30 very mild"),
        (Wash(self::Wash::Hand), "1 washing", "hand wash"),
        (Wash(self::Wash::No), "1 washing", "do not wash"),
        (Bleach(self::Bleach::Any), "2 bleaching", "any bleach"),
        (
            Bleach(self::Bleach::Oxygen),
            "2 bleaching",
            "oxygen/non-chlorine only",
        ),
        (Bleach(self::Bleach::No), "2 bleaching", "do not bleach"),
        (Tumble(self::Tumble::Normal), "3 drying", "tumble normal"),
        (Tumble(self::Tumble::Low), "3 drying", "tumble low"),
        (Tumble(self::Tumble::No), "3 drying", "do not tumble dry"),
        (AirDry(self::AirDry::Line), "3 drying (natural)", "line dry"),
        (
            AirDry(self::AirDry::LineShade),
            "3 drying (natural)",
            "line dry in shade",
        ),
        (
            AirDry(self::AirDry::LineDrip),
            "3 drying (natural)",
            "drip line dry",
        ),
        (
            AirDry(self::AirDry::LineDripShade),
            "3 drying (natural)",
            "drip line dry in shade",
        ),
        (AirDry(self::AirDry::Flat), "3 drying (natural)", "flat dry"),
        (
            AirDry(self::AirDry::FlatShade),
            "3 drying (natural)",
            "flat dry in shade",
        ),
        (
            AirDry(self::AirDry::FlatDrip),
            "3 drying (natural)",
            "drip flat dry",
        ),
        (
            AirDry(self::AirDry::FlatDripShade),
            "3 drying (natural)",
            "drip flat dry in shade",
        ),
        (Iron(self::Iron::High), "4 ironing", "high"),
        (Iron(self::Iron::Medium), "4 ironing", "medium"),
        (Iron(self::Iron::Low), "4 ironing", "\"low, no steam\""),
        (Iron(self::Iron::No), "4 ironing", "do not iron"),
        (DryClean(self::DryClean::P), "5 professional", "dry clean P"),
        (
            DryClean(self::DryClean::PMild),
            "5 professional",
            "dry clean P mild",
        ),
        (DryClean(self::DryClean::F), "5 professional", "dry clean F"),
        (
            DryClean(self::DryClean::FMild),
            "5 professional",
            "dry clean F mild",
        ),
        (
            DryClean(self::DryClean::No),
            "5 professional",
            "do not dry clean",
        ),
        (
            WetClean(self::WetClean::Normal),
            "5 professional",
            "wet clean W",
        ),
        (
            WetClean(self::WetClean::Mild),
            "5 professional",
            "wet clean W mild",
        ),
        (
            WetClean(self::WetClean::VeryMild),
            "5 professional",
            "wet clean W very mild",
        ),
        (
            WetClean(self::WetClean::No),
            "5 professional",
            "do not wet clean",
        ),
    ]
};

fn published() -> Vec<&'static str> {
    let table = include_str!("../../../tests/reference/care_iso3758_2012.csv");
    table
        .lines()
        .filter(|line| !line.starts_with('#'))
        .skip(1)
        .collect()
}

#[test]
fn the_treatments_are_those_of_the_standard_in_its_order() {
    let rows = published();
    assert_eq!(rows.len(), MEANINGS.len());
    for (row, (treatment, group, meaning)) in rows.iter().zip(MEANINGS) {
        assert!(
            row.starts_with(&format!("{group},{meaning},")),
            "{treatment:?}: {row}"
        );
    }
    let words = Wash::ALL.len()
        + Bleach::ALL.len()
        + Tumble::ALL.len()
        + AirDry::ALL.len()
        + Iron::ALL.len()
        + DryClean::ALL.len()
        + WetClean::ALL.len();
    assert_eq!(words, rows.len());
}

#[test]
fn the_temperatures_are_those_of_the_standard() {
    for (row, (treatment, ..)) in published().iter().zip(MEANINGS) {
        // The last but one; no column behind the meaning holds a comma.
        let published = row.rsplit(',').nth(1).unwrap();
        let ours = treatment
            .temperature()
            .map(|it| it.to_string())
            .unwrap_or_default();
        assert_eq!(ours, published, "{row}");
    }
}

#[test]
fn what_is_said_stands_in_the_order_of_a_label() {
    let care = Care {
        wet_clean: Some(WetClean::No),
        iron: Some(Iron::Low),
        air_dry: Some(AirDry::Line),
        tumble: Some(Tumble::No),
        wash: Some(Wash::Mild30),
        ..Care::default()
    };
    let fields: Vec<_> = treatments(&care)
        .into_iter()
        .map(Treatment::field)
        .collect();
    assert_eq!(
        fields,
        [
            "care.wash",
            "care.tumble",
            "care.air_dry",
            "care.iron",
            "care.wet_clean"
        ]
    );
    // Each is a field of the labels by this very name.
    let spec = Spec {
        labels: crate::spec::document::Labels {
            care,
            ..Default::default()
        },
        ..Spec::default()
    };
    let held = crate::spec::document::Record::fields(&spec.labels);
    for field in fields {
        assert!(held.iter().any(|(name, _)| name == field), "{field}");
    }
}

#[test]
fn the_milder_of_two_may_be_a_third() {
    assert_eq!(milder(Wash::Normal40, Wash::Normal30), Wash::Normal30);
    assert_eq!(milder(Wash::Mild60, Wash::Normal50), Wash::Mild50);
    assert_eq!(milder(Wash::Normal30, Wash::VeryMild40), Wash::VeryMild30);
    assert_eq!(milder(Wash::Normal95, Wash::VeryMild40), Wash::VeryMild40);
    assert_eq!(milder(Wash::VeryMild30, Wash::Hand), Wash::Hand);
    assert_eq!(milder(Wash::Hand, Wash::No), Wash::No);
    assert_eq!(
        milder(AirDry::LineShade, AirDry::FlatDrip),
        AirDry::FlatDripShade
    );
    assert_eq!(milder(DryClean::PMild, DryClean::F), DryClean::FMild);
}

fn materials(cares: Vec<Care>) -> Spec {
    let materials = (1..).zip(cares).map(|(number, care)| Material {
        id: ItemId::new(format!("material-{number}")),
        care,
        ..Material::default()
    });
    let mut spec = Spec::default();
    spec.materials.materials = materials.collect();
    spec
}

#[test]
fn a_care_that_a_material_does_not_bear_is_found() {
    let fleece = Care {
        wash: Some(Wash::Normal40),
        tumble: Some(Tumble::Low),
        iron: Some(Iron::Medium),
        ..Care::default()
    };
    let transfer = Care {
        wash: Some(Wash::Mild40),
        tumble: Some(Tumble::No),
        iron: Some(Iron::No),
        ..Care::default()
    };
    let mut spec = materials(vec![fleece, transfer.clone(), Care::default()]);
    assert_eq!(most_delicate(&spec), transfer);
    spec.labels.care = transfer;
    assert_eq!(harsher(&spec), []);

    spec.labels.care.wash = Some(Wash::VeryMild40);
    spec.labels.care.bleach = Some(Bleach::Any);
    assert_eq!(harsher(&spec), []);

    spec.labels.care.wash = Some(Wash::Normal60);
    spec.labels.care.iron = Some(Iron::Low);
    let found = harsher(&spec);
    let found: Vec<_> = found
        .iter()
        .map(|(field, id)| (*field, id.as_str()))
        .collect();
    assert_eq!(
        found,
        [
            ("care.wash", "material-1"),
            ("care.wash", "material-2"),
            ("care.iron", "material-2"),
        ]
    );
}

#[test]
fn each_kind_of_treatment_is_looked_at() {
    let gentle = Care {
        wash: Some(Wash::No),
        bleach: Some(Bleach::No),
        tumble: Some(Tumble::No),
        air_dry: Some(AirDry::FlatDripShade),
        iron: Some(Iron::No),
        dry_clean: Some(DryClean::No),
        wet_clean: Some(WetClean::No),
        note: String::new(),
    };
    let harsh = Care {
        wash: Some(Wash::Normal95),
        bleach: Some(Bleach::Any),
        tumble: Some(Tumble::Normal),
        air_dry: Some(AirDry::Line),
        iron: Some(Iron::High),
        dry_clean: Some(DryClean::P),
        wet_clean: Some(WetClean::Normal),
        note: String::new(),
    };
    let mut spec = materials(vec![gentle.clone(), harsh.clone()]);
    assert_eq!(most_delicate(&spec), gentle);
    spec.labels.care = harsh;
    let found = harsher(&spec);
    assert_eq!(found.len(), 7);
    assert!(found.iter().all(|(_, id)| id.as_str() == "material-1"));
}

#[test]
fn the_bag_is_not_washed() {
    let mut spec = materials(vec![Care {
        wash: Some(Wash::No),
        ..Care::default()
    }]);
    spec.labels.care.wash = Some(Wash::Mild30);
    assert_eq!(harsher(&spec).len(), 1);
    spec.materials.materials[0].kind = Some(MaterialKind::Packing);
    assert_eq!(harsher(&spec), []);
    assert_eq!(most_delicate(&spec), Care::default());
}

#[test]
fn a_label_for_the_united_states_says_how_to_clean() {
    let care = |wash, bleach, tumble, air_dry, dry_clean| Care {
        wash,
        bleach,
        tumble,
        air_dry,
        dry_clean,
        ..Care::default()
    };
    let washed = Some(Wash::Mild30);
    let no_bleach = Some(Bleach::No);
    for (care, missing) in [
        (Care::default(), vec!["care.wash"]),
        (
            care(None, None, None, None, Some(DryClean::No)),
            vec!["care.wash"],
        ),
        (care(None, None, None, None, Some(DryClean::P)), vec![]),
        (
            care(Some(Wash::No), None, None, None, None),
            vec!["care.dry_clean"],
        ),
        (
            care(Some(Wash::No), None, None, None, Some(DryClean::No)),
            vec![],
        ),
        (
            care(Some(Wash::No), None, None, None, Some(DryClean::F)),
            vec![],
        ),
        (
            care(washed, None, None, None, None),
            vec!["care.bleach", "care.tumble"],
        ),
        (
            care(washed, no_bleach, Some(Tumble::No), None, None),
            vec!["care.air_dry"],
        ),
        (
            care(washed, no_bleach, Some(Tumble::Low), None, None),
            vec![],
        ),
        (
            care(washed, no_bleach, None, Some(AirDry::Flat), None),
            vec![],
        ),
    ] {
        assert_eq!(missing_for_us(&care), missing, "{care:?}");
    }
    // What it asks for is what the rule's text, as we have it, asks for.
    let rule: serde_json::Value =
        serde_json::from_str(include_str!("../../../tests/reference/care_16cfr423.json")).unwrap();
    let said = |name: &str| rule[name].to_string();
    assert!(said("required").contains("either washing OR drycleaning"));
    for piece in [
        "bleach: only if not all",
        "drying: machine or other",
        "ironing: only if needed",
    ] {
        assert!(said("washing_elements_order").contains(piece), "{piece}");
    }
}

fn laws<T: Graded + PartialEq + std::fmt::Debug>() {
    for a in T::ALL.iter().copied() {
        assert!(!exceeds(a, a));
        for b in T::ALL.iter().copied() {
            let both = milder(a, b);
            assert_eq!(both, milder(b, a));
            assert!(!exceeds(both, a) && !exceeds(both, b));
            // Whatever exceeds neither does not exceed it either: it is the strongest.
            let others = T::ALL
                .iter()
                .filter(|it| !exceeds(**it, a) && !exceeds(**it, b));
            for other in others {
                assert!(
                    !exceeds(*other, both),
                    "{a:?} {b:?}: {other:?} over {both:?}"
                );
            }
            // No two are equally strong.
            assert!(a == b || exceeds(a, b) || exceeds(b, a), "{a:?} {b:?}");
        }
    }
}

#[test]
fn any_two_treatments_have_one_strongest_that_exceeds_neither() {
    laws::<Wash>();
    laws::<Bleach>();
    laws::<Tumble>();
    laws::<AirDry>();
    laws::<Iron>();
    laws::<DryClean>();
    laws::<WetClean>();
}

proptest! {
    /// The care that all bear is borne by each, and in any order of the materials.
    #[test]
    fn what_all_bear_each_bears(
        washes in proptest::collection::vec(proptest::sample::select(Wash::ALL), 1..6),
        dries in proptest::collection::vec(proptest::sample::select(AirDry::ALL), 1..6),
    ) {
        let cares: Vec<Care> = washes.iter().zip(&dries).map(|(wash, dry)| Care {
            wash: Some(*wash),
            air_dry: Some(*dry),
            ..Care::default()
        }).collect();
        let mut spec = materials(cares.clone());
        spec.labels.care = most_delicate(&spec);
        prop_assert_eq!(harsher(&spec), []);
        let turned = materials(cares.into_iter().rev().collect());
        prop_assert_eq!(most_delicate(&turned), spec.labels.care);
    }
}
