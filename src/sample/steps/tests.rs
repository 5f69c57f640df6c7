use super::*;
use crate::sample::contract::{Place, Reading};
use crate::sample::deviation::Limits;
use crate::spec::PieceId;

fn id(name: &str) -> ItemId {
    ItemId::new(name)
}

fn mm(mm: i64) -> Length {
    Length::nm(mm * 1_000_000)
}

/// A chest in four sizes, and a zip that is in every size the same.
fn contract() -> Contract {
    let limits = |spec| Limits {
        spec: mm(spec),
        minus: mm(10),
        plus: mm(10),
        critical: false,
    };
    let column = |chest| BTreeMap::from([(id("chest"), limits(chest)), (id("zip"), limits(200))]);
    let sizes = [("s", 510), ("m", 530), ("l", 550), ("xl", 575)];
    let place = |point| Place {
        point: id(point),
        fabric: None,
        along: None,
        basis: None,
    };
    Contract {
        base: id("m"),
        sizes: sizes.iter().map(|(size, _)| id(size)).collect(),
        points: vec![place("chest"), place("zip")],
        columns: sizes
            .iter()
            .map(|(size, chest)| (id(size), column(*chest)))
            .collect(),
    }
}

fn piece(size: &str, chest: i64) -> Piece {
    Piece {
        id: PieceId::new(format!("{size}-{chest}")),
        size: id(size),
        readings: vec![Reading {
            by: String::new(),
            values: BTreeMap::from([(id("chest"), mm(chest))]),
        }],
    }
}

#[test]
fn the_steps_are_those_between_the_sizes_that_were_measured() {
    // Out of order, with a size left out and one made twice.
    let pieces = [
        piece("xl", 570),
        piece("s", 512),
        piece("m", 528),
        piece("m", 532),
    ];
    let [(point, steps)] = &steps(&contract(), &pieces)[..] else {
        panic!("the zip was not measured");
    };
    assert_eq!(*point, id("chest"));
    let told: Vec<_> = steps
        .iter()
        .map(|it| (it.from.as_str(), it.to.as_str(), it.frozen, it.actual))
        .collect();
    assert_eq!(
        told,
        [("s", "m", mm(20), mm(18)), ("m", "xl", mm(45), mm(40))]
    );
    assert_eq!(steps[1].more(), mm(-5));
    assert!(!steps[1].reverses());
}

#[test]
fn a_larger_size_that_is_smaller_reverses_the_grade() {
    let pieces = [piece("m", 530), piece("l", 528)];
    assert!(steps(&contract(), &pieces)[0].1[0].reverses());
    // Of what does not grow, no step reverses.
    let same = [piece("m", 530), piece("l", 530)];
    assert!(!steps(&contract(), &same)[0].1[0].reverses());
}

#[test]
fn one_size_has_no_steps() {
    assert_eq!(steps(&contract(), &[piece("m", 530), piece("m", 531)]), []);
}
