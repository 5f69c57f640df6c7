//! Neighbouring parts of a colourway, and whether an eye tells their colours apart.
//!
//! Neighbours are parts that follow each other in the brand's own order. Two colours are compared by
//! their readings where both have one, else by what stands for them on a screen, which is an
//! approximation. The limits below are ours, no source: they draw attention, they judge nothing.

use super::{Formula, Incomparable, difference, from_screen, lightness_contrast, shown};
use crate::spec::decimal::Decimal;
use crate::spec::document::{Cell, Colour, Colourways, Illuminant, Part};
use crate::spec::id::ItemId;

/// Below this ΔE00 two parts beside each other are hard to tell apart.
const HARD: i64 = 5;
/// Below this |ΔL*| they are alike where hue is not seen: in a print without colour, and by many an
/// eye.
const GREY: f64 = 10.0;

/// A part that a colourway has, with what it is once matches are followed.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Neighbour<'a> {
    pub part: &'a Part,
    /// Beside the part before; nothing for the first.
    pub beside: Option<Beside>,
}

/// How a colour stands beside another one.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Beside {
    /// Meant to be one colour: dyed to match, or the same colour twice.
    Same,
    Apart {
        /// ΔE00, two digits behind the sign.
        difference: Decimal,
        /// From two readings; else from screen values.
        measured: bool,
        hard: bool,
        /// Alike in lightness.
        grey: bool,
        /// Meant to be one colour: then it is neither hard nor grey, but may be off.
        same: bool,
    },
    Incomparable(Incomparable),
    /// One of them has neither a reading nor a screen value, or is left natural.
    Unknown,
}

/// The parts that a colourway has, in their order; those that it does without, and those that
/// nothing is said of, are left out.
pub fn neighbours<'a>(colourways: &'a Colourways, colourway: &ItemId) -> Vec<Neighbour<'a>> {
    let mut found: Vec<Neighbour> = Vec::new();
    let mut before: Option<(&ItemId, &Cell)> = None;
    for part in &colourways.parts {
        let Some(settled) = colourways.settled(colourway, &part.id) else {
            continue;
        };
        if let (_, Cell::None {}) = settled {
            continue;
        }
        found.push(Neighbour {
            part,
            beside: before.map(|before| beside(before, settled)),
        });
        before = Some(settled);
    }
    found
}

fn beside(one: (&ItemId, &Cell), other: (&ItemId, &Cell)) -> Beside {
    match (one.1, other.1) {
        _ if one.0 == other.0 => Beside::Same,
        (Cell::Natural {}, Cell::Natural {}) => Beside::Same,
        (Cell::Colour(one), Cell::Colour(other)) if one == other => Beside::Same,
        (Cell::Colour(one), Cell::Colour(other)) => apart(one, other),
        _ => Beside::Unknown,
    }
}

fn apart(one: &Colour, other: &Colour) -> Beside {
    let same = one.is_meant_as(other);
    let found = |labs, measured, lightness: f64| {
        let (one, other) = labs;
        match difference(one, other, Formula::Ciede2000 {}) {
            Ok(difference) => Beside::Apart {
                difference,
                measured,
                hard: !same && difference < Decimal::new(HARD, 0),
                grey: !same && lightness < GREY,
                same,
            },
            Err(why) => Beside::Incomparable(why),
        }
    };
    if let (Some(one), Some(other)) = (&one.lab, &other.lab) {
        let lightness = (one.l.to_f64() - other.l.to_f64()).abs();
        return found((one, other), true, lightness);
    }
    let (Some(one), Some(other)) = (shown(one), shown(other)) else {
        return Beside::Unknown;
    };
    let lab = |screen| from_screen(screen, Illuminant::D65);
    match (lab(one.screen), lab(other.screen)) {
        (Ok(a), Ok(b)) => found(
            (&a, &b),
            false,
            lightness_contrast(one.screen, other.screen),
        ),
        _ => Beside::Unknown,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::spec::document::{Lab, Observer};

    fn screen(value: &str) -> Cell {
        Cell::Colour(Colour {
            name: value.to_owned(),
            screen: Some(value.to_owned()),
            ..Colour::default()
        })
    }

    fn read(l: i64, a: i64, b: i64, illuminant: Illuminant) -> Cell {
        let [l, a, b] = [l, a, b].map(|it| Decimal::new(it, 0));
        Cell::Colour(Colour {
            lab: Some(Lab {
                l,
                a,
                b,
                illuminant,
                observer: Observer::Ten,
            }),
            ..Colour::default()
        })
    }

    fn to_match(part: &str) -> Cell {
        Cell::DyedToMatch {
            part: ItemId::new(part),
        }
    }

    /// One colourway of parts `p0`, `p1` ...; `None` is an empty cell.
    fn beside_of(cells: Vec<Option<Cell>>) -> Vec<(String, Option<Beside>)> {
        let mut section = Colourways::default();
        let colourway = ItemId::new("ink");
        for (at, cell) in cells.into_iter().enumerate() {
            let id = ItemId::new(format!("p{at}"));
            section.parts.push(Part {
                id: id.clone(),
                letter: format!("P{at}"),
                ..Part::default()
            });
            if let Some(cell) = cell {
                let row = section.cells.entry(colourway.clone()).or_default();
                row.insert(id, cell);
            }
        }
        let found = neighbours(&section, &colourway).into_iter();
        found
            .map(|it| (it.part.letter.clone(), it.beside))
            .collect()
    }

    fn pair(one: Cell, other: Cell) -> Beside {
        let found = beside_of(vec![Some(one), Some(other)]);
        found[1].1.expect("it has one before it")
    }

    #[test]
    fn two_near_blues_are_hard_to_tell_apart_and_a_red_is_not() {
        let Beside::Apart {
            hard,
            grey,
            measured,
            ..
        } = pair(screen("#1f2a3c"), screen("#1f2c40"))
        else {
            panic!("two screen values");
        };
        assert!(hard && grey && !measured);
        let Beside::Apart { hard, grey, .. } = pair(screen("#1f2a3c"), screen("#f4f1e8")) else {
            panic!("two screen values");
        };
        assert!(!hard && !grey);
        // A red and a green of one lightness: other hues, and one grey.
        let red = read(50, 60, 30, Illuminant::D65);
        let green = read(52, -50, 30, Illuminant::D65);
        let Beside::Apart {
            hard,
            grey,
            measured,
            ..
        } = pair(red, green)
        else {
            panic!("two readings");
        };
        assert!(!hard && grey && measured);
    }

    #[test]
    fn one_reference_on_two_cloths_is_shown_with_its_difference() {
        let on = |reference: &str, screen: &str| {
            Cell::Colour(Colour {
                name: "Slate".to_owned(),
                reference: reference.to_owned(),
                screen: Some(screen.to_owned()),
                ..Colour::default()
            })
        };
        for (other, meant) in [("a 12 ", true), ("A 13", false)] {
            let Beside::Apart { hard, same, .. } =
                pair(on("A 12", "#1f2a3c"), on(other, "#1f2a3d"))
            else {
                panic!("two screen values");
            };
            assert_eq!((same, hard), (meant, !meant));
        }
    }

    #[test]
    fn readings_under_unlike_light_are_not_compared() {
        let (standard, sample) = (Illuminant::D65, Illuminant::A);
        assert_eq!(
            pair(read(50, 0, 0, standard), read(50, 0, 0, sample)),
            Beside::Incomparable(Incomparable::Illuminants { standard, sample })
        );
    }

    #[test]
    fn what_is_meant_to_be_one_colour_is_not_warned_of() {
        assert_eq!(pair(screen("#1f2a3c"), to_match("p0")), Beside::Same);
        assert_eq!(pair(to_match("p1"), screen("#1f2a3c")), Beside::Same);
        assert_eq!(pair(screen("#1f2a3c"), screen("#1f2a3c")), Beside::Same);
        assert_eq!(pair(Cell::Natural {}, Cell::Natural {}), Beside::Same);
        assert_eq!(pair(Cell::Natural {}, screen("#1f2a3c")), Beside::Unknown);
    }

    #[test]
    fn parts_that_are_not_there_have_no_neighbours() {
        let found = beside_of(vec![
            Some(screen("#1f2a3c")),
            Some(Cell::None {}),
            None,
            Some(to_match("p5")),
            Some(screen("#1f2a3c")),
            Some(to_match("p3")),
        ]);
        // P3 and P5 match each other and come to nothing.
        let letters: Vec<&str> = found.iter().map(|it| it.0.as_str()).collect();
        assert_eq!(letters, ["P0", "P4"]);
        assert_eq!(found[0].1, None);
        assert_eq!(found[1].1, Some(Beside::Same));
    }
}
