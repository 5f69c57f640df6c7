use proptest::prelude::*;

use super::*;
use crate::spec::table::Status;

fn percent(text: &str) -> Decimal {
    Decimal::read(text).unwrap_or_else(|_| panic!("{text}"))
}

pub(super) fn share(fibre: Fibre, of: &str) -> Share {
    Share {
        fibre: Some(fibre),
        percent: Some(percent(of)),
        ..Share::default()
    }
}

pub(super) fn called(name: &str, of: &str) -> Share {
    Share {
        name: name.to_owned(),
        ..share(Fibre::Other, of)
    }
}

pub(super) fn garment(components: Vec<(Component, Vec<Share>)>) -> Spec {
    let mut spec = Spec::default();
    let materials = (1..)
        .zip(components)
        .map(|(number, (component, composition))| Material {
            id: ItemId::new(format!("material-{number}")),
            component: Some(component),
            composition,
            ..Material::default()
        });
    spec.materials.materials = materials.collect();
    spec
}

fn label(spec: &Spec, market: Market, language: &str) -> Composition {
    text(spec, market, language, Tables::shipped())
}

/// The label of a garment of one component.
fn one(shares: Vec<Share>, market: Market, language: &str) -> String {
    let label = label(&garment(vec![(Component::Main, shares)]), market, language);
    assert_eq!(label.faults, []);
    label.whole().unwrap()
}

fn faults(shares: Vec<Share>, market: Market, language: &str) -> Vec<Fault> {
    label(&garment(vec![(Component::Main, shares)]), market, language).faults
}

#[test]
fn fibres_stand_in_descending_order() {
    let mix = || {
        vec![
            share(Fibre::Elastane, "2.5"),
            share(Fibre::Cotton, "60"),
            share(Fibre::Polyamide, "37.5"),
        ]
    };
    assert_eq!(
        one(mix(), Market::Eu, "en"),
        "60% cotton, 37.5% polyamide, 2.5% elastane"
    );
    assert_eq!(
        one(mix(), Market::Eu, "de"),
        "60\u{a0}% Baumwolle, 37,5\u{a0}% Polyamid, 2,5\u{a0}% Elasthan"
    );
    assert_eq!(
        one(mix(), Market::Eu, "pt-BR"),
        "60\u{a0}% algodão, 37,5\u{a0}% poliamida, 2,5\u{a0}% elastano"
    );
    assert_eq!(
        one(mix(), Market::Us, "en"),
        "60% cotton, 37.5% nylon, 2.5% spandex"
    );
    assert_eq!(
        one(mix(), Market::Uk, "en-US"),
        one(mix(), Market::Eu, "en")
    );
}

#[test]
fn a_hundred_is_only_said_of_one_fibre() {
    assert_eq!(
        one(vec![share(Fibre::Linen, "100")], Market::Eu, "fr"),
        "100\u{a0}% lin"
    );
    let twice = vec![share(Fibre::Wool, "60"), share(Fibre::RecycledWool, "40")];
    // The Regulation has one name for both; the United States have two.
    assert_eq!(one(twice.clone(), Market::Eu, "en"), "100% wool");
    assert_eq!(one(twice, Market::Us, "en"), "60% wool, 40% recycled wool");
}

#[test]
fn each_component_is_named_where_there_are_several() {
    let main = || vec![share(Fibre::Cotton, "80"), share(Fibre::Polyester, "20")];
    let spec = garment(vec![
        (Component::Lining, vec![share(Fibre::Polyester, "100")]),
        (Component::Main, main()),
        (Component::Main, main()),
        (Component::Main, vec![share(Fibre::Cotton, "100")]),
    ]);
    let german = label(&spec, Market::Eu, "de");
    assert_eq!(german.faults, []);
    let lines = [
        "Oberstoff: 80\u{a0}% Baumwolle, 20\u{a0}% Polyester",
        "Oberstoff: 100\u{a0}% Baumwolle",
        "Futter: 100\u{a0}% Polyester",
    ];
    assert_eq!(german.whole().unwrap(), lines.join("\n"));
    let materials = &german.components[0].materials;
    assert_eq!(materials, &["material-2", "material-3"].map(ItemId::new));
    // The fibres are verified, the components' names are not.
    assert!(!german.is_verified());
    let english = label(&spec, Market::Us, "en").whole().unwrap();
    assert!(
        english.starts_with("Body: 80% cotton, 20% polyester\n"),
        "{english}"
    );
}

#[test]
fn a_material_that_is_no_component_is_not_on_the_label() {
    let mut spec = garment(vec![(Component::Main, vec![share(Fibre::Cotton, "100")])]);
    spec.materials.materials.push(Material {
        composition: vec![share(Fibre::Polyester, "100")],
        ..Material::default()
    });
    assert_eq!(
        label(&spec, Market::Eu, "en").whole().unwrap(),
        "100% cotton"
    );
}

#[test]
fn a_label_says_how_far_it_was_checked() {
    let status = |market, language| {
        let spec = garment(vec![(
            Component::Main,
            vec![share(Fibre::Polyester, "100")],
        )]);
        let label = label(&spec, market, language);
        let source = label.components[0].entries[0].source.clone().unwrap();
        assert_eq!(label.is_verified(), source.status == Status::Verified);
        (source.status, source.on)
    };
    let on = || "2026-11-25".to_owned();
    assert_eq!(status(Market::Eu, "de"), (Status::Verified, on()));
    assert_eq!(status(Market::Eu, "it"), (Status::Seen, on()));
    assert_eq!(status(Market::Eu, "fi"), (Status::FromMemory, on()));
    let tolerance = label(&Spec::default(), Market::Eu, "de").tolerance;
    assert_eq!(tolerance.percent, percent("3"));
    assert_eq!(tolerance.article, "20(3)");
    assert_eq!(tolerance.source.status, Status::FromMemory);
    assert_eq!(
        label(&Spec::default(), Market::Us, "en").tolerance.article,
        "303.43"
    );
}

#[test]
fn the_total_is_checked() {
    let short = vec![share(Fibre::Cotton, "60"), share(Fibre::Polyester, "39.9")];
    assert_eq!(total(&short), percent("99.9"));
    let material = ItemId::new("material-1");
    let wrong = Fault::TotalWrong {
        material: material.clone(),
        total: percent("99.9"),
    };
    assert_eq!(faults(short, Market::Eu, "en"), [wrong]);
    assert_eq!(
        faults(vec![], Market::Eu, "en"),
        [Fault::Missing {
            material: material.clone()
        }]
    );
    let unclear = vec![
        share(Fibre::Cotton, "100"),
        Share {
            percent: Some(Decimal::ZERO),
            ..Share::default()
        },
    ];
    assert_eq!(
        faults(unclear, Market::Eu, "en"),
        [Fault::ShareUnclear { material }]
    );
}

#[test]
fn what_is_not_named_has_its_limits_in_the_union() {
    let mix = |others: &[&str]| {
        let others: Vec<Share> = others.iter().map(|of| called("", of)).collect();
        let rest = Decimal::HUNDRED.minus(total(&others)).unwrap().to_string();
        [vec![share(Fibre::Cotton, &rest)], others].concat()
    };
    assert_eq!(
        one(mix(&["5"]), Market::Eu, "en"),
        "95% cotton, 5% other fibres"
    );
    assert_eq!(
        one(mix(&["10", "5"]), Market::Eu, "fr"),
        "85\u{a0}% coton, 15\u{a0}% autres fibres"
    );
    for (others, limit) in [(vec!["5.1"], "5"), (vec!["10", "5.1"], "15")] {
        let [Fault::OthersTooMuch { limit: found, .. }] =
            faults(mix(&others), Market::Eu, "en")[..]
        else {
            panic!("{others:?}");
        };
        assert_eq!(found, percent(limit));
    }
    // A fibre that Annex I does not list has no other name there, however much it is.
    let unlisted = || vec![called("pina", "70"), share(Fibre::Cotton, "30")];
    assert_eq!(
        one(unlisted(), Market::Eu, "en"),
        "30% cotton, 70% other fibres"
    );
    assert_eq!(one(unlisted(), Market::Us, "en"), "70% pina, 30% cotton");
}

#[test]
fn a_little_of_a_fibre_goes_unnamed_in_the_united_states() {
    let us = |shares| one(shares, Market::Us, "en");
    assert_eq!(
        us(vec![
            share(Fibre::Cotton, "96"),
            share(Fibre::Elastane, "4")
        ]),
        "96% cotton, 4% spandex"
    );
    assert_eq!(
        us(vec![
            share(Fibre::Polyester, "4"),
            share(Fibre::Cotton, "96")
        ]),
        "96% cotton, 4% other fiber"
    );
    assert_eq!(
        us(vec![
            share(Fibre::Polyester, "5"),
            share(Fibre::Cotton, "95")
        ]),
        "95% cotton, 5% polyester"
    );
    assert_eq!(
        us(vec![
            share(Fibre::Polyester, "4"),
            share(Fibre::Cotton, "92"),
            share(Fibre::Acrylic, "4"),
        ]),
        "92% cotton, 8% other fibers"
    );
    assert_eq!(
        us(vec![
            share(Fibre::Cotton, "98"),
            share(Fibre::Cashmere, "2")
        ]),
        "98% cotton, 2% cashmere"
    );
    // Of a task of its own, strength for instance.
    let strong = Share {
        functional: true,
        ..share(Fibre::Polyamide, "3")
    };
    assert_eq!(
        us(vec![share(Fibre::Cotton, "97"), strong]),
        "97% cotton, 3% nylon"
    );
    // Two names that are one there.
    assert_eq!(
        us(vec![
            share(Fibre::Cotton, "93"),
            share(Fibre::Viscose, "4"),
            share(Fibre::Cupro, "3"),
        ]),
        "93% cotton, 7% rayon"
    );
    let unnamed = vec![share(Fibre::Cotton, "95"), called("", "5")];
    assert!(matches!(
        faults(unnamed, Market::Us, "en")[..],
        [Fault::OthersTooMuch { .. }]
    ));
}

#[test]
fn a_word_that_is_missing_leaves_no_text() {
    let rare = vec![share(Fibre::Aramid, "100")];
    let spec = garment(vec![(Component::Main, rare)]);
    let finnish = label(&spec, Market::Eu, "fi");
    assert_eq!(finnish.whole(), None);
    assert_eq!(
        finnish.faults,
        [Fault::FibreUnnamed {
            fibre: Fibre::Aramid
        }]
    );
    assert_eq!(
        label(&spec, Market::Eu, "de").whole().unwrap(),
        "100\u{a0}% Aramid"
    );

    let spec = garment(vec![
        (
            Component::Main,
            vec![share(Fibre::Cotton, "50"), called("", "50")],
        ),
        (Component::Lining, vec![share(Fibre::Cotton, "100")]),
    ]);
    let unknown = label(&spec, Market::Other, "xx").faults;
    for fault in [
        Fault::FibreUnnamed {
            fibre: Fibre::Cotton,
        },
        Fault::ComponentUnnamed {
            component: Component::Lining,
        },
        Fault::PhraseUnnamed {
            phrase: Phrase::OtherFibres,
        },
    ] {
        assert_eq!(
            unknown.iter().filter(|it| **it == fault).count(),
            1,
            "{fault:?}"
        );
    }
}

#[test]
fn down_brings_its_phrase_in_the_union() {
    let spec = garment(vec![(Component::Padding, vec![share(Fibre::Down, "100")])]);
    assert_eq!(
        label(&spec, Market::Eu, "en").whole().unwrap(),
        "100% down\nContains non-textile parts of animal origin"
    );
    assert_eq!(label(&spec, Market::Us, "en").whole().unwrap(), "100% down");
}

proptest! {
    /// Whatever the composition, no percent is lost on the label, and it descends to the last.
    #[test]
    fn a_label_has_the_whole_composition(
        shares in proptest::collection::vec((proptest::sample::select(Fibre::ALL), 1i64..1000), 1..7),
        market in proptest::sample::select(Market::ALL),
    ) {
        let shares: Vec<Share> = shares.iter().map(|(fibre, tenths)| Share {
            fibre: Some(*fibre),
            percent: Some(Decimal::new(*tenths, 1)),
            ..Share::default()
        }).collect();
        let whole = total(&shares);
        let label = label(&garment(vec![(Component::Main, shares)]), market, "en");
        let entries = &label.components[0].entries;
        let said = entries.iter().try_fold(Decimal::ZERO, |sum, it| sum.plus(it.percent));
        prop_assert_eq!(said, Some(whole));
        let named: Vec<Decimal> = entries.iter()
            .filter(|it| it.what != What::Others)
            .map(|it| it.percent)
            .collect();
        prop_assert!(named.is_sorted_by(|one, next| one >= next));
        let others = entries.iter().position(|it| it.what == What::Others);
        prop_assert!(others.is_none_or(|at| at + 1 == entries.len()));
    }
}
