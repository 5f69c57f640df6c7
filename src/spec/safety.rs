//! Safety rules for children's wear and for what touches the skin: which garments and sizes each is
//! for, and its figures.
//!
//! These tables caution; they do not decide. The text of the regulation, local law and a licensed
//! laboratory do. Each rule says whether what is written here was held against a published copy or
//! comes from memory; how ages, heights and US size codes stand for each other is from memory
//! throughout.

use std::ops::Range;

use super::document::{
    BodyDimension, CordPlace, GarmentKind, Market, Size, SizeSystem, Spec, Wearer, Worn,
};
use super::units::{Length, Unit};

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

/// How far a waist or hem cord may hang out of its channel, with the garment at its fullest width:
/// 3 in. [`US_CORDS`].
pub const US_CORD_MOST: Length = Length::nm(3 * Unit::Inch.nanometres());

/// How far a cord may hang out at a place, from memory: [`EN_CORD_LENGTHS`]. Nothing where the table
/// has no figure.
pub fn en_cord_most(place: CordPlace, young: bool) -> Option<Length> {
    let mm = match place {
        CordPlace::Waist => 140,
        CordPlace::Sleeve if young => 75,
        CordPlace::Sleeve => 140,
        // Below the crotch nothing hangs free.
        CordPlace::Legs => 0,
        CordPlace::HoodNeck
        | CordPlace::Chest
        | CordPlace::Hem
        | CordPlace::Back
        | CordPlace::Elsewhere => return None,
    };
    Some(Length::nm(mm * Unit::Mm.nanometres()))
}

/// From this mass on a plain fabric is exempt, in tenths of g/m²: 2.6 oz/yd². [`US_FLAMMABILITY`],
/// from memory.
pub const PLAIN_EXEMPT_TENTHS: i64 = 882;

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

/// US sizes 2T to 12. Ages and heights of them are from memory.
pub const US_HOOD_NECK: Band = Band {
    months: 24..156,
    centimetres: 84..156,
    us_sizes: 2..13,
};
/// US sizes 2T to 16. Ages and heights of them are from memory.
pub const US_WAIST: Band = Band {
    months: 24..204,
    centimetres: 84..174,
    us_sizes: 2..17,
};
/// Under 7 years, up to 134 cm.
pub const EN_YOUNG: Band = Band {
    months: 0..84,
    centimetres: 0..135,
    us_sizes: 0..0,
};
/// From 7 to under 14 years, over 134 cm up to 182 (boys; girls 176).
pub const EN_OLDER: Band = Band {
    months: 84..168,
    centimetres: 135..183,
    us_sizes: 0..0,
};
/// Under 3 years. The height is from memory.
pub const UNDER_THREE: Band = Band {
    months: 0..36,
    centimetres: 0..99,
    us_sizes: 0..4,
};
/// US sizes 0 to 6X. Ages and heights of them are from memory.
pub const SLEEPWEAR_SMALL: Band = Band {
    months: 9..84,
    centimetres: 72..123,
    us_sizes: 0..7,
};
/// US sizes 7 to 14. Ages and heights of them are from memory.
pub const SLEEPWEAR_LARGE: Band = Band {
    months: 84..180,
    centimetres: 123..165,
    us_sizes: 7..15,
};
/// Designed for 12 years or younger.
pub const UP_TO_TWELVE: Band = Band {
    months: 0..156,
    centimetres: 0..156,
    us_sizes: 0..13,
};

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
        for (band, size, inside) in [
            (US_HOOD_NECK, called("2T"), Some(true)),
            (US_HOOD_NECK, called("12"), Some(true)),
            (US_HOOD_NECK, called("14"), Some(false)),
            (US_WAIST, called("16"), Some(true)),
            (US_WAIST, called("18"), Some(false)),
            (US_HOOD_NECK, called("l"), Some(true)),
            (US_HOOD_NECK, called("XL"), Some(false)),
            (US_WAIST, called("XL"), Some(true)),
            (US_HOOD_NECK, called("one size"), None),
            (EN_YOUNG, called("2T"), None),
            (EN_YOUNG, aged(83, 90), Some(true)),
            (EN_YOUNG, aged(84, 96), Some(false)),
            (EN_OLDER, aged(72, 84), Some(true)),
            (EN_OLDER, aged(72, 83), Some(false)),
            (EN_OLDER, aged(167, 180), Some(true)),
            (EN_OLDER, aged(168, 180), Some(false)),
            (EN_YOUNG, tall("134"), Some(true)),
            (EN_YOUNG, tall("140"), Some(false)),
            (EN_OLDER, tall("134"), Some(false)),
            (EN_OLDER, tall("182"), Some(true)),
            (UNDER_THREE, aged(35, 48), Some(true)),
            (UNDER_THREE, aged(36, 48), Some(false)),
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
        let mut spec = Spec::default();
        assert_eq!(EN_YOUNG.sizes(&spec), Some(vec![]));
        spec.sizes.sizes = vec![called("A"), aged(120, 132)];
        assert_eq!(EN_YOUNG.sizes(&spec), Some(vec!["A"]));
        spec.sizes.sizes.remove(0);
        assert_eq!(EN_YOUNG.sizes(&spec), None);
    }
}
