use std::collections::BTreeMap;

use proptest::prelude::*;

use super::*;
use crate::spec::document::{
    Consumption, Fabric, Knitted, MaterialKind, Measured, Part, RatioPack, Share, Size, Structure,
    Wastage, WastageBasis,
};
use crate::spec::units::{Entered, Unit};

fn id(name: &str) -> ItemId {
    ItemId::new(name)
}

fn decimal(text: &str) -> Decimal {
    Decimal::read(text).unwrap_or_else(|_| panic!("{text}"))
}

fn colour(name: &str) -> Cell {
    Cell::Colour(Colour {
        name: name.to_owned(),
        ..Colour::default()
    })
}

fn shares(shares: &[(Fibre, i64)]) -> Vec<Share> {
    let share = |(fibre, percent): &(Fibre, i64)| Share {
        fibre: Some(*fibre),
        percent: Some(Decimal::new(*percent, 0)),
        ..Share::default()
    };
    shares.iter().map(share).collect()
}

/// 1.2 m a garment of 1.6 m width at 280 g/m²: 537.6 g a garment.
fn fleece() -> Material {
    Material {
        id: id("fleece"),
        kind: Some(MaterialKind::KnittedFabric),
        parts: vec![id("body")],
        composition: shares(&[(Fibre::Cotton, 80), (Fibre::Polyester, 20)]),
        fabric: Fabric {
            mass: Some(decimal("280")),
            width: Some(Entered::read("160", Unit::Cm).unwrap()),
            ..Fabric::default()
        },
        consumption: Consumption {
            unit: Some(Measured::Metre),
            amount: Some(decimal("1.2")),
            ..Consumption::default()
        },
        ..Material::default()
    }
}

/// 40 g a garment, of the same fibres named in another order.
fn rib() -> Material {
    Material {
        id: id("rib"),
        parts: vec![id("cuff")],
        composition: shares(&[(Fibre::Polyester, 20), (Fibre::Cotton, 80)]),
        consumption: Consumption {
            unit: Some(Measured::Gram),
            amount: Some(decimal("40")),
            ..Consumption::default()
        },
        fabric: Fabric::default(),
        ..fleece()
    }
}

/// 1000 pieces in ink; the cuff is dyed to match the body.
fn garment(materials: Vec<Material>) -> Spec {
    let mut spec = Spec::default();
    spec.materials.materials = materials;
    spec.sizes.sizes = ["s", "m", "l"]
        .map(|code| Size {
            id: id(code),
            ..Size::default()
        })
        .into();
    spec.colourways.parts = ["body", "cuff"]
        .map(|part| Part {
            id: id(part),
            ..Part::default()
        })
        .into();
    let to_match = Cell::DyedToMatch { part: id("body") };
    colourway(&mut spec, "ink", 1000, [colour("Ink"), to_match]);
    spec
}

fn colourway(spec: &mut Spec, name: &str, pieces: u32, [body, cuff]: [Cell; 2]) {
    spec.colourways.colourways.push(Colourway {
        id: id(name),
        pieces: Some(pieces),
        ..Colourway::default()
    });
    let row = BTreeMap::from([(id("body"), body), (id("cuff"), cuff)]);
    spec.colourways.cells.insert(id(name), row);
}

/// Colour and kilograms of each row; nothing may be missing.
fn answer(spec: &Spec) -> Vec<(String, String)> {
    let found = dyeing(spec);
    assert_eq!(found.missing, []);
    let row = |row: &Row| {
        let colour = row.colour.as_ref();
        let colour = colour.map_or("natural".to_owned(), |it| it.name.clone());
        (colour, row.kg.to_string())
    };
    found.rows.iter().map(row).collect()
}

fn kg(material: Material) -> String {
    let answer = answer(&garment(vec![material]));
    assert_eq!(answer.len(), 1);
    answer[0].1.clone()
}

/// The one thing that is missing; nothing is answered.
fn lack(spec: &Spec) -> Missing {
    let found = dyeing(spec);
    assert_eq!(found.rows, []);
    let [missing] = found.missing.as_slice() else {
        panic!("{:?}", found.missing);
    };
    missing.clone()
}

fn with(change: impl FnOnce(&mut Material)) -> Material {
    let mut fleece = fleece();
    change(&mut fleece);
    fleece
}

#[test]
fn metres_of_full_width_weigh_their_area() {
    assert_eq!(kg(fleece()), "537.6");
    // A tube of half the width is as much cloth.
    let tube = with(|it| {
        it.fabric.width = Some(Entered::read("80", Unit::Cm).unwrap());
        it.fabric.structure = Some(Structure::Knitted(Knitted {
            tubular: true,
            ..Knitted::default()
        }));
    });
    assert_eq!(kg(tube), "537.6");
    let inches = with(|it| it.fabric.width = Some(Entered::read("60 in", Unit::Cm).unwrap()));
    assert_eq!(kg(inches), "512.064");
}

#[test]
fn square_metres_and_grams_need_no_width() {
    let area = with(|it| {
        it.fabric.width = None;
        it.consumption.unit = Some(Measured::SquareMetre);
    });
    assert_eq!(kg(area), "336");
    let grams = with(|it| {
        it.fabric = Fabric::default();
        it.consumption.unit = Some(Measured::Gram);
        it.consumption.amount = Some(decimal("40.5"));
    });
    assert_eq!(kg(grams), "40.5");
}

#[test]
fn the_two_bases_of_wastage_are_never_mixed() {
    let wasted = |percent: &str, basis| {
        with(|it| {
            it.wastage = Some(Wastage {
                percent: Some(decimal(percent)),
                basis,
            });
        })
    };
    assert_eq!(kg(wasted("5", Some(WastageBasis::Allowance))), "564.48");
    // 537.6 ÷ 0.95 = 565.8947...
    assert_eq!(kg(wasted("5", Some(WastageBasis::LossOfInput))), "565.895");
    assert_eq!(kg(wasted("0", None)), "537.6");
    for (percent, basis) in [
        ("5", None),
        ("100", Some(WastageBasis::LossOfInput)),
        ("-1", Some(WastageBasis::Allowance)),
    ] {
        let missing = lack(&garment(vec![wasted(percent, basis)]));
        assert_eq!(missing.what, Lack::Wastage, "{percent} {basis:?}");
    }
}

#[test]
fn sizes_are_averaged_plainly_unless_packs_give_their_ratio() {
    let by_size = [("s", "1.0"), ("l", "1.7")].map(|(size, it)| (id(size), decimal(it)));
    let mut spec = garment(vec![with(|it| it.consumption.by_size = by_size.into())]);
    // (1.0 + 1.2 + 1.7) ÷ 3 = 1.3; M has the amount.
    assert_eq!(answer(&spec)[0].1, "582.4");

    let pack = |colourway: Option<&str>, pieces: [u32; 3]| RatioPack {
        colourway: colourway.map(id),
        pieces: ["s", "m", "l"].map(id).into_iter().zip(pieces).collect(),
        ..RatioPack::default()
    };
    spec.packing.ratio = vec![pack(None, [1, 2, 1]), pack(Some("other"), [9, 0, 0])];
    // (1.0 + 2 × 1.2 + 1.7) ÷ 4 = 1.275
    assert_eq!(answer(&spec)[0].1, "571.2");
    // The colourway's own packs go before those of every one; sizes that it lacks do not count.
    spec.packing.ratio.push(pack(Some("ink"), [3, 1, 0]));
    // (3 × 1.0 + 1.2) ÷ 4 = 1.05
    assert_eq!(answer(&spec)[0].1, "470.4");
}

#[test]
fn what_matches_goes_into_the_same_bath() {
    let spec = garment(vec![fleece(), rib()]);
    assert_eq!(answer(&spec), [("Ink".to_owned(), "577.6".to_owned())]);
    let lines = &dyeing(&spec).rows[0].lines;
    let lines: Vec<_> = lines.iter().map(|line| line.material.as_str()).collect();
    assert_eq!(lines, ["fleece", "rib"]);

    // Other fibres take other dyes.
    let mut apart = spec.clone();
    apart.materials.materials[1].composition = shares(&[(Fibre::Cotton, 100)]);
    assert_eq!(answer(&apart).len(), 2);
}

#[test]
fn one_colour_of_two_colourways_is_one_row() {
    let mut spec = garment(vec![fleece(), rib()]);
    colourway(&mut spec, "dusk", 500, [colour("Rust"), colour(" ink ")]);
    let rows = [("Ink", "597.6"), ("Rust", "268.8")];
    assert_eq!(
        answer(&spec),
        rows.map(|(name, kg)| (name.to_owned(), kg.to_owned()))
    );

    // References decide where there is one.
    let referred = |reference: &str| {
        Cell::Colour(Colour {
            name: "Ink".to_owned(),
            reference: reference.to_owned(),
            ..Colour::default()
        })
    };
    let mut spec = garment(vec![fleece()]);
    spec.colourways.cells.clear();
    spec.colourways.colourways.clear();
    colourway(&mut spec, "one", 1, [referred("A 1"), Cell::None {}]);
    colourway(&mut spec, "two", 1, [referred("a 1"), Cell::None {}]);
    colourway(&mut spec, "three", 1, [referred("A 2"), Cell::None {}]);
    assert_eq!(answer(&spec).len(), 2);
}

#[test]
fn natural_stands_apart_and_none_needs_nothing() {
    let mut spec = garment(vec![fleece(), rib()]);
    spec.colourways.cells.clear();
    spec.colourways.colourways.clear();
    colourway(&mut spec, "chalk", 1000, [Cell::Natural {}, Cell::None {}]);
    assert_eq!(answer(&spec), [("natural".to_owned(), "537.6".to_owned())]);
    assert_eq!(dyeing(&spec).natural().count(), 1);
}

#[test]
fn a_substrate_is_its_fibres_else_what_was_typed_else_the_fabric() {
    let bare = with(|it| it.composition.clear());
    let mut spec = garment(vec![bare]);
    assert_eq!(
        dyeing(&spec).rows[0].substrate,
        Substrate::Fabric(id("fleece"))
    );
    let typed = Cell::Colour(Colour {
        name: "Ink".to_owned(),
        substrate: " cotton fleece ".to_owned(),
        ..Colour::default()
    });
    let cells = spec.colourways.cells.get_mut(&id("ink")).unwrap();
    cells.insert(id("body"), typed);
    let substrate = Substrate::Typed("cotton fleece".to_owned());
    assert_eq!(dyeing(&spec).rows[0].substrate, substrate);
    spec.materials.materials = vec![rib()];
    let fibres = vec![
        (Fibre::Cotton, Decimal::new(80, 0)),
        (Fibre::Polyester, Decimal::new(20, 0)),
    ];
    assert_eq!(dyeing(&spec).rows[0].substrate, Substrate::Fibres(fibres));
}

#[test]
fn what_is_missing_is_named() {
    type Change = fn(&mut Material);
    let cases: [(Change, Lack); 9] = [
        (|it| it.parts.clear(), Lack::Parts),
        (|it| it.fabric.mass = None, Lack::Mass),
        (|it| it.fabric.mass = Some(Decimal::ZERO), Lack::Mass),
        (|it| it.fabric.width = None, Lack::Width),
        (|it| it.consumption.amount = None, Lack::Consumption),
        (|it| it.consumption.unit = None, Lack::ConsumptionUnit),
        (
            |it| it.consumption.unit = Some(Measured::Piece),
            Lack::ConsumptionUnit,
        ),
        (|it| it.parts = vec![id("zip")], Lack::Colour),
        (
            |it| {
                it.fabric.mass = Some(Decimal::new(999_999_999_999_999_999, 0));
                it.consumption.amount = it.fabric.mass;
            },
            Lack::TooLarge,
        ),
    ];
    for (change, what) in cases {
        let missing = lack(&garment(vec![with(change)]));
        assert_eq!((missing.what, missing.material), (what, Some(id("fleece"))));
    }
    let mut spec = garment(vec![fleece()]);
    spec.colourways.colourways[0].pieces = None;
    let missing = lack(&spec);
    assert_eq!(
        (missing.what, missing.colourway),
        (Lack::Pieces, Some(id("ink")))
    );
}

#[test]
fn a_fabric_of_several_parts_is_only_split_where_they_are_alike() {
    let both = with(|it| it.parts = vec![id("body"), id("cuff")]);
    let mut spec = garment(vec![both]);
    assert_eq!(answer(&spec)[0].1, "537.6");
    for cuff in [colour("Rust"), Cell::Natural {}, Cell::None {}] {
        let cells = spec.colourways.cells.get_mut(&id("ink")).unwrap();
        cells.insert(id("cuff"), cuff);
        assert_eq!(lack(&spec).what, Lack::PartsDiffer);
    }
    let cells = spec.colourways.cells.get_mut(&id("ink")).unwrap();
    cells.insert(id("cuff"), Cell::DyedToMatch { part: id("cuff") });
    let missing = lack(&spec);
    assert_eq!(
        (missing.what, missing.part),
        (Lack::Colour, Some(id("cuff")))
    );
    let cells = spec.colourways.cells.get_mut(&id("ink")).unwrap();
    cells.insert(id("cuff"), colour(" "));
    assert_eq!(lack(&spec).what, Lack::Colour);
}

#[test]
fn only_fabrics_are_dyed() {
    let button = with(|it| it.kind = Some(MaterialKind::Button));
    assert_eq!(dyeing(&garment(vec![button])), Dyeing::default());
}

proptest! {
    /// What colourways need together is the sum of what each needs alone.
    #[test]
    fn kilograms_add_up_over_colourways(
        pieces in proptest::collection::vec(1u32..50_000, 1..5),
        amount in 1i64..5_000,
        percent in 0i64..40,
        loss in any::<bool>(),
    ) {
        let basis = if loss { WastageBasis::LossOfInput } else { WastageBasis::Allowance };
        let material = with(|it| {
            it.consumption.amount = Some(Decimal::new(amount, 3));
            it.wastage = Some(Wastage {
                percent: Some(Decimal::new(percent, 0)),
                basis: Some(basis),
            });
        });
        let mut all = garment(vec![material]);
        all.colourways.colourways.clear();
        let empty = all.clone();
        let mut alone = Decimal::ZERO;
        for (number, pieces) in pieces.iter().enumerate() {
            let name = format!("colourway-{number}");
            let cells = || [colour("Ink"), Cell::None {}];
            colourway(&mut all, &name, *pieces, cells());
            let mut one = empty.clone();
            colourway(&mut one, &name, *pieces, cells());
            alone = alone.plus(dyeing(&one).rows[0].lines[0].kg).unwrap();
        }
        let found = dyeing(&all);
        prop_assert_eq!(found.rows.len(), 1);
        prop_assert_eq!(found.rows[0].lines.len(), pieces.len());
        prop_assert_eq!(found.rows[0].kg, alone.rounded(3));
    }
}
