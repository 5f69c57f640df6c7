//! Safety rules for children's wear and for what touches the skin: which garments and sizes each is
//! for, and its figures.
//!
//! These tables caution; they do not decide. The text of the regulation, local law and a licensed
//! laboratory do. Each rule and each row says whether what is written here was held against a
//! published copy or comes from memory; how ages, heights and US size codes stand for each other is
//! from memory throughout.

mod figures;

use std::ops::Range;

use super::document::{BodyDimension, GarmentKind, Market, Size, SizeSystem, Spec, Wearer, Worn};
use super::units::{Length, Unit};

pub use figures::Figures;

/// How far what is written here can be relied on.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Status {
    /// Held against a published copy or the authority's own guidance.
    Verified,
    FromMemory,
}

/// Where a rule is written.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Rule {
    pub cited: &'static str,
    /// The edition, or when it was published.
    pub dated: &'static str,
    pub status: Status,
}

impl Rule {
    /// As sentences name it.
    pub fn name(&self) -> String {
        format!("{} ({})", self.cited, self.dated)
    }
}

/// Drawstrings of children's upper outerwear. Its scope, sizes and the 3 in are verified by the
/// Commission's questions and answers on drawstrings.
pub const US_CORDS: Rule = Rule {
    cited: "16 CFR 1120.3, ASTM F1816-97",
    dated: "76 FR 42502, 19 July 2011",
    status: Status::Verified,
};
/// Cords and drawstrings of children's clothing; in the UK as BS EN 14682, which is from memory. Its
/// bands and the ban at hood and neck are verified by an authority's guidance.
pub const EN_CORDS: Rule = Rule {
    cited: "EN 14682",
    dated: "2014",
    status: Status::Verified,
};
/// The lengths of the same standard.
pub const EN_CORD_LENGTHS: Rule = Rule {
    cited: "EN 14682",
    dated: "2014",
    status: Status::FromMemory,
};
/// Small parts of articles for children under three.
pub const US_SMALL_PARTS: Rule = Rule {
    cited: "16 CFR 1501",
    dated: "1979",
    status: Status::FromMemory,
};
/// Flammability of clothing textiles.
pub const US_FLAMMABILITY: Rule = Rule {
    cited: "16 CFR 1610",
    dated: "2008",
    status: Status::FromMemory,
};
/// Flammability of children's sleepwear up to size 6X.
pub const US_SLEEPWEAR_SMALL: Rule = Rule {
    cited: "16 CFR 1615",
    dated: "sizes 0 to 6X",
    status: Status::Verified,
};
/// Flammability of children's sleepwear from size 7 to 14.
pub const US_SLEEPWEAR_LARGE: Rule = Rule {
    cited: "16 CFR 1616",
    dated: "sizes 7 to 14",
    status: Status::Verified,
};
/// Nickel of what touches the skin for long. In the UK as retained law, which is from memory.
pub const NICKEL: Rule = Rule {
    cited: "REACH Annex XVII, entry 27",
    dated: "Regulation (EC) No 1907/2006",
    status: Status::Verified,
};
/// Azo dyes of what touches the skin for long. In the UK as retained law, which is from memory.
pub const AZO_DYES: Rule = Rule {
    cited: "REACH Annex XVII, entry 43",
    dated: "Regulation (EC) No 1907/2006",
    status: Status::Verified,
};
/// Lead in children's products.
pub const US_LEAD: Rule = Rule {
    cited: "15 USC 1278a, 16 CFR 1303",
    dated: "CPSIA, 2008",
    status: Status::Verified,
};

/// Sizes that a rule is for, told by any of three ways.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Band {
    /// Months of age, the end not included.
    months: Range<u16>,
    /// Centimetres of body height, the end not included.
    centimetres: Range<i64>,
    /// US child sizes in years, `2T` being 2 and `6X` 6; the end not included. Empty for rules that
    /// do not go by them.
    us_sizes: Range<u16>,
}

impl Band {
    /// Whether a size is in it; nothing where the size does not tell. A size that covers a range is
    /// in it if any of the range is.
    fn holds(&self, size: &Size, system: Option<SizeSystem>) -> Option<bool> {
        let by_age = size
            .ages
            .as_ref()
            .map(|ages| ages.from < self.months.end && ages.to.max(ages.from) >= self.months.start);
        let by_height = body_height(size, system).map(|(from, to)| {
            let whole = Unit::Cm.nanometres();
            let below = from.as_nm() < self.centimetres.end * whole;
            below && to.as_nm() >= self.centimetres.start * whole
        });
        let by_code = us_size(&size.code)
            .filter(|_| !self.us_sizes.is_empty())
            .map(|number| self.us_sizes.contains(&number));
        let told = [by_age, by_height, by_code];
        let mut told = told.into_iter().flatten().peekable();
        told.peek()?;
        Some(told.any(|holds| holds))
    }

    /// The sizes of a child's garment that the rule is for; those that do not tell are taken to be.
    /// Nothing when there are sizes and all are outside.
    pub fn sizes<'a>(&self, spec: &'a Spec) -> Option<Vec<&'a str>> {
        let sizes = &spec.sizes.sizes;
        let system = spec.sizes.system;
        let inside = sizes
            .iter()
            .filter(|size| self.holds(size, system) != Some(false));
        let inside: Vec<&str> = inside.map(|size| size.code.as_str()).collect();
        (sizes.is_empty() || !inside.is_empty()).then_some(inside)
    }
}

/// Whether a garment is for children: said so, or by the ages or heights of its sizes.
pub fn is_for_children(spec: &Spec) -> bool {
    matches!(spec.header.wearer, Some(Wearer::Children | Wearer::Infants))
        || spec.sizes.system == Some(SizeSystem::Height)
        || spec.sizes.sizes.iter().any(|size| size.ages.is_some())
}

/// Whether a size tells which child it is for: by age or by height; sold in the US alone, a code such
/// as `2T` or `10` does too.
pub fn tells_child(spec: &Spec, size: &Size) -> bool {
    let us_alone = spec.header.markets == [Market::Us];
    let is_number = size.code.trim().starts_with(|c: char| c.is_ascii_digit());
    size.ages.is_some()
        || body_height(size, spec.sizes.system).is_some()
        || us_alone && is_number && us_size(&size.code).is_some()
}

/// Whether it is upper outerwear: said so, or of a kind that is where nothing is said.
pub fn is_upper_outerwear(spec: &Spec) -> bool {
    use GarmentKind::{HalfZip, Hoodie, Jacket};
    match spec.header.worn {
        Some(worn) => worn == Worn::UpperOuterwear,
        None => matches!(spec.header.kind, Some(Hoodie | HalfZip | Jacket)),
    }
}

/// The body height that a size is for, from and to: its dimension, or its code where sizes are
/// called by the height in centimetres (`116`, `110/116`).
pub fn body_height(size: &Size, system: Option<SizeSystem>) -> Option<(Length, Length)> {
    let height = Some(BodyDimension::Height);
    let ranges = size.body.iter().filter(|range| range.dimension == height);
    let ends = ranges.flat_map(|range| range.from.into_iter().chain(range.to));
    let mut heights: Vec<Length> = ends.map(|end| end.nm).collect();
    if heights.is_empty() && system == Some(SizeSystem::Height) {
        let numbers = size.code.split(|c: char| !c.is_ascii_digit());
        let numbers = numbers.filter_map(|number| number.parse::<u16>().ok());
        let lengths = numbers.map(|cm| Length::nm(i64::from(cm) * Unit::Cm.nanometres()));
        heights.extend(lengths);
    }
    Some((*heights.iter().min()?, *heights.iter().max()?))
}

/// A US child size in years: `2T` is 2, `6X` is 6. Letters are taken at their largest: L is 12 and
/// XL is 16, from memory.
fn us_size(code: &str) -> Option<u16> {
    let code = code.trim().to_ascii_uppercase();
    let letters = match code.as_str() {
        "XS" => Some(5),
        "S" => Some(7),
        "M" => Some(10),
        "L" => Some(12),
        "XL" => Some(16),
        _ => None,
    };
    let number = code.strip_suffix(['T', 'X']).unwrap_or(&code);
    let number = number.parse().ok().filter(|number| *number <= 20);
    letters.or(number)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::spec::document::{Ages, BodyRange};
    use crate::spec::units::Entered;

    fn called(code: &str) -> Size {
        Size {
            code: code.to_owned(),
            ..Size::default()
        }
    }

    fn aged(from: u16, to: u16) -> Size {
        Size {
            ages: Some(Ages { from, to }),
            ..Size::default()
        }
    }

    fn tall(cm: &str) -> Size {
        Size {
            body: vec![BodyRange {
                dimension: Some(BodyDimension::Height),
                from: Entered::read(cm, Unit::Cm).ok(),
                to: None,
            }],
            ..Size::default()
        }
    }

    #[test]
    fn a_band_ends_where_its_rule_says() {
        let figures = Figures::shipped();
        for (band, size, inside) in [
            (&figures.us_hood_neck, called("2T"), Some(true)),
            (&figures.us_hood_neck, called("12"), Some(true)),
            (&figures.us_hood_neck, called("14"), Some(false)),
            (&figures.us_waist, called("16"), Some(true)),
            (&figures.us_waist, called("18"), Some(false)),
            (&figures.us_hood_neck, called("l"), Some(true)),
            (&figures.us_hood_neck, called("XL"), Some(false)),
            (&figures.us_waist, called("XL"), Some(true)),
            (&figures.us_hood_neck, called("one size"), None),
            (&figures.en_young, called("2T"), None),
            (&figures.en_young, aged(83, 90), Some(true)),
            (&figures.en_young, aged(84, 96), Some(false)),
            (&figures.en_older, aged(72, 84), Some(true)),
            (&figures.en_older, aged(72, 83), Some(false)),
            (&figures.en_older, aged(167, 180), Some(true)),
            (&figures.en_older, aged(168, 180), Some(false)),
            (&figures.en_young, tall("134"), Some(true)),
            (&figures.en_young, tall("140"), Some(false)),
            (&figures.en_older, tall("134"), Some(false)),
            (&figures.en_older, tall("182"), Some(true)),
            (&figures.under_three, aged(35, 48), Some(true)),
            (&figures.under_three, aged(36, 48), Some(false)),
        ] {
            assert_eq!(band.holds(&size, None), inside, "{band:?} {size:?}");
        }
    }

    #[test]
    fn sizes_by_height_are_read_from_their_codes() {
        let height = |code: &str| {
            let (from, to) = body_height(&called(code), Some(SizeSystem::Height))?;
            Some((from.as_nm() / 10_000_000, to.as_nm() / 10_000_000))
        };
        assert_eq!(height("116"), Some((116, 116)));
        assert_eq!(height("128/134"), Some((128, 134)));
        assert_eq!(height("S"), None);
        assert_eq!(body_height(&called("116"), None), None);
    }

    #[test]
    fn a_us_size_tells_where_it_is_read_as_one() {
        let mut spec = Spec::default();
        spec.header.markets = vec![Market::Us];
        assert!(tells_child(&spec, &called("2T")) && tells_child(&spec, &called("10")));
        assert!(!tells_child(&spec, &called("M")) && !tells_child(&spec, &called("116")));
        spec.header.markets.push(Market::Eu);
        assert!(!tells_child(&spec, &called("10")));
        assert!(tells_child(&spec, &aged(60, 71)) && tells_child(&spec, &tall("116")));
    }

    #[test]
    fn a_size_that_does_not_tell_is_taken_to_be_inside() {
        let figures = Figures::shipped();
        let mut spec = Spec::default();
        assert_eq!(figures.en_young.sizes(&spec), Some(vec![]));
        spec.sizes.sizes = vec![called("A"), aged(120, 132)];
        assert_eq!(figures.en_young.sizes(&spec), Some(vec!["A"]));
        spec.sizes.sizes.remove(0);
        assert_eq!(figures.en_young.sizes(&spec), None);
    }
}
