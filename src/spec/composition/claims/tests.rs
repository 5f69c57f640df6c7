use super::super::tests::{called, garment, share};
use super::*;
use crate::spec::document::{Label, LabelText};

#[test]
fn a_claim_that_the_composition_does_not_bear_out_is_found() {
    let claims = |spec: &Spec| -> Vec<(ClaimKind, &'static str)> {
        let claims = unusual_claims(spec, Tables::shipped());
        claims.iter().map(|it| (it.kind, it.field)).collect()
    };
    let mix = vec![share(Fibre::Cotton, "95"), share(Fibre::Elastane, "5")];
    let mut spec = garment(vec![(Component::Main, mix)]);
    spec.header.main_fabric = "Brushed loopback jersey, 95 % cotton".to_owned();
    assert_eq!(claims(&spec), []);
    spec.header.main_fabric = "Jersey, 100% cotton".to_owned();
    spec.materials.materials[0].name = "Pure cotton jersey".to_owned();
    spec.labels.labels = vec![Label {
        texts: vec![LabelText {
            text: "100 % cotton".to_owned(),
            ..Default::default()
        }],
        ..Default::default()
    }];
    let said = ClaimKind::SaysOnlyOne;
    assert_eq!(
        claims(&spec),
        [(said, "name"), (said, "main_fabric"), (said, "texts")]
    );
    // With a component of one fibre the label may be right.
    let lining = garment(vec![(Component::Lining, vec![share(Fibre::Cotton, "100")])]);
    spec.materials.materials.extend(lining.materials.materials);
    assert_eq!(claims(&spec), [(said, "name"), (said, "main_fabric")]);

    let both = vec![share(Fibre::Cotton, "100"), share(Fibre::Elastane, "5")];
    let spec = garment(vec![(Component::Main, both)]);
    assert_eq!(
        claims(&spec),
        [(ClaimKind::HundredWithSecond, "composition")]
    );
    let twice = vec![share(Fibre::Cotton, "50"), share(Fibre::Cotton, "50")];
    let spec = garment(vec![(Component::Main, twice)]);
    assert_eq!(claims(&spec), [(ClaimKind::FibreTwice, "composition")]);
    // Two that have no listed name may well be two.
    let unlisted = vec![called("", "50"), called("", "50")];
    assert_eq!(claims(&garment(vec![(Component::Main, unlisted)])), []);
}

#[test]
fn virgin_wool_in_a_mixture_has_its_limits() {
    let claims = |shares: Vec<Share>, markets: &[Market]| {
        let mut spec = garment(vec![(Component::Main, shares)]);
        spec.header.markets = markets.to_vec();
        let claims = unusual_claims(&spec, Tables::shipped());
        claims.iter().any(|it| it.kind == ClaimKind::VirginWool)
    };
    let wool = |of: &str, rest: &[&str]| {
        let fibres = [Fibre::Cotton, Fibre::Polyester].into_iter().zip(rest);
        let rest = fibres.map(|(fibre, of)| share(fibre, of));
        [share(Fibre::VirginWool, of)]
            .into_iter()
            .chain(rest)
            .collect::<Vec<_>>()
    };
    let eu = &[Market::Us, Market::Eu];
    assert!(!claims(wool("100", &[]), eu));
    assert!(!claims(wool("25", &["75"]), eu));
    assert!(claims(wool("24.9", &["75.1"]), eu));
    assert!(claims(wool("60", &["20", "20"]), eu));
    assert!(!claims(wool("60", &["20", "20"]), &[Market::Us]));
    assert!(!claims(wool("60", &["20", "20"]), &[]));
    assert!(!claims(
        vec![share(Fibre::Wool, "20"), share(Fibre::Cotton, "80")],
        eu
    ));
}

#[test]
fn a_text_that_says_only_one_is_recognised() {
    for text in [
        "100 % Baumwolle",
        "100% cotton",
        "Jersey 100\u{a0}%",
        "pure new wool",
        "All silk!",
    ] {
        assert!(says_only_one(text, Tables::shipped()), "{text}");
    }
    for text in [
        "1100 %",
        "0.100 %",
        "100 g/m²",
        "Pure white rib",
        "overall cotton feel",
        "all weights",
        "95 % cotton",
        "",
    ] {
        assert!(!says_only_one(text, Tables::shipped()), "{text}");
    }
}
