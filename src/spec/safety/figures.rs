//! The figures of the safety rules, and the sizes that each is for: data that may be replaced.

use std::collections::BTreeMap;
use std::ops::Range;
use std::str::FromStr;
use std::sync::LazyLock;

use super::Band;
use crate::spec::decimal::Decimal;
use crate::spec::document::CordPlace;
use crate::spec::table::{self, Source, TableError};
use crate::spec::units::{Entered, Length, Unit};

const FIGURES: &str = "safety figures";
const BANDS: &str = "safety bands";

/// What the checks of safety reckon with.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Figures {
    /// How far a waist or hem cord may hang out of its channel, with the garment at its fullest
    /// width. [`super::US_CORDS`].
    pub us_cord: Length,
    en_cord_waist: Length,
    en_cord_sleeve_young: Length,
    en_cord_sleeve: Length,
    en_cord_legs: Length,
    /// From this mass on, in g/m², a plain fabric is exempt. [`super::US_FLAMMABILITY`].
    pub us_plain_exempt: Decimal,
    /// US sizes 2T to 12.
    pub us_hood_neck: Band,
    /// US sizes 2T to 16.
    pub us_waist: Band,
    /// Under 7 years.
    pub en_young: Band,
    /// From 7 to under 14 years.
    pub en_older: Band,
    /// Under 3 years.
    pub under_three: Band,
    /// US sizes 0 to 6X.
    pub sleepwear_small: Band,
    /// US sizes 7 to 14.
    pub sleepwear_large: Band,
    /// Designed for 12 years or younger.
    pub up_to_twelve: Band,
}

static SHIPPED: LazyLock<Figures> = LazyLock::new(|| {
    let figures = include_str!("../data/safety_figures.csv");
    let bands = include_str!("../data/safety_bands.csv");
    Figures::read(figures, bands).expect("a test reads the shipped tables")
});

impl Figures {
    pub fn shipped() -> &'static Figures {
        &SHIPPED
    }

    /// From texts of the shipped tables' form, in `src/spec/data`.
    pub fn read(figures: &str, bands: &str) -> Result<Figures, TableError> {
        let figures = table::rows(FIGURES, figures, |[name, value, status, on]| {
            Source::read(status, on)?;
            let negative = value.starts_with('-');
            let number = Decimal::read(value).ok().filter(|_| !negative);
            number.ok_or_else(|| format!("no figure `{value}`"))?;
            Ok((name.to_owned(), value.to_owned()))
        })?;
        let figures: BTreeMap<String, String> = figures.into_iter().collect();
        let figure = |name: &str| {
            let found = figures.get(name).map(String::as_str);
            found.ok_or_else(|| missing(FIGURES, name))
        };
        let mm = |name: &str| {
            let read = Entered::read(figure(name)?, Unit::Mm);
            read.map(|it| it.nm).map_err(|_| missing(FIGURES, name))
        };
        let mut bands: BTreeMap<String, Band> =
            table::rows(BANDS, bands, read_band)?.into_iter().collect();
        let mut band = |name| bands.remove(name).ok_or_else(|| missing(BANDS, name));
        Ok(Figures {
            us_cord: mm("us_cord_mm")?,
            en_cord_waist: mm("en_cord_waist_mm")?,
            en_cord_sleeve_young: mm("en_cord_sleeve_young_mm")?,
            en_cord_sleeve: mm("en_cord_sleeve_mm")?,
            en_cord_legs: mm("en_cord_legs_mm")?,
            us_plain_exempt: Decimal::read(figure("us_plain_exempt_g_m2")?)
                .map_err(|_| missing(FIGURES, "us_plain_exempt_g_m2"))?,
            us_hood_neck: band("us_hood_neck")?,
            us_waist: band("us_waist")?,
            en_young: band("en_young")?,
            en_older: band("en_older")?,
            under_three: band("under_three")?,
            sleepwear_small: band("sleepwear_small")?,
            sleepwear_large: band("sleepwear_large")?,
            up_to_twelve: band("up_to_twelve")?,
        })
    }

    /// How far a cord may hang out at a place: [`super::EN_CORD_LENGTHS`]. Nothing where the table
    /// has no figure.
    pub fn en_cord(&self, place: CordPlace, young: bool) -> Option<Length> {
        match place {
            CordPlace::Waist => Some(self.en_cord_waist),
            CordPlace::Sleeve if young => Some(self.en_cord_sleeve_young),
            CordPlace::Sleeve => Some(self.en_cord_sleeve),
            CordPlace::Legs => Some(self.en_cord_legs),
            CordPlace::HoodNeck
            | CordPlace::Chest
            | CordPlace::Hem
            | CordPlace::Back
            | CordPlace::Elsewhere => None,
        }
    }
}

fn missing(table: &'static str, name: &str) -> TableError {
    TableError {
        table,
        line: 0,
        what: format!("`{name}` is not there"),
    }
}

fn read_band(columns: [&str; 9]) -> Result<(String, Band), String> {
    let [name, months, months_end, cm, cm_end, us, us_end, status, on] = columns;
    Source::read(status, on)?;
    let band = Band {
        months: range(months, months_end)?,
        centimetres: range(cm, cm_end)?,
        us_sizes: match (us, us_end) {
            ("", "") => 0..0,
            (from, to) => range(from, to)?,
        },
    };
    Ok((name.to_owned(), band))
}

fn range<N: FromStr + PartialOrd + Default>(from: &str, to: &str) -> Result<Range<N>, String> {
    let wrong = || format!("no range `{from}` to `{to}`");
    let read = |text: &str| text.parse::<N>().map_err(|_| wrong());
    let range = read(from)?..read(to)?;
    let makes_sense = range.start >= N::default() && range.start < range.end;
    makes_sense.then_some(range).ok_or_else(wrong)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_shipped_figures_are_read() {
        let figures = Figures::shipped();
        let inch = Unit::Inch.nanometres();
        assert_eq!(figures.us_cord, Length::nm(3 * inch));
        let mm = |mm: i64| Some(Length::nm(mm * Unit::Mm.nanometres()));
        assert_eq!(figures.en_cord(CordPlace::Sleeve, true), mm(75));
        assert_eq!(figures.en_cord(CordPlace::Sleeve, false), mm(140));
        assert_eq!(figures.en_cord(CordPlace::Legs, false), mm(0));
        assert_eq!(figures.en_cord(CordPlace::Hem, false), None);
        assert!(figures.en_young.us_sizes.is_empty());
        assert_eq!(figures.us_hood_neck.us_sizes, 2..13);
    }

    #[test]
    fn an_edited_figure_that_makes_no_sense_is_refused() {
        let figures = include_str!("../data/safety_figures.csv");
        let bands = include_str!("../data/safety_bands.csv");
        let read = |from: &str, to: &str| {
            let (figures, bands) = (figures.replace(from, to), bands.replace(from, to));
            Figures::read(&figures, &bands).map_err(|why| why.to_string())
        };
        for (from, to, why) in [
            (
                "mm,75,",
                "mm,long,",
                "safety figures, line 5: no figure `long`",
            ),
            (
                "mm,75,",
                "mm,-75,",
                "safety figures, line 5: no figure `-75`",
            ),
            (
                "en_cord_legs_mm",
                "legs",
                "safety figures, line 0: `en_cord_legs_mm` is not there",
            ),
            (
                "0,84,0,135",
                "84,0,0,135",
                "safety bands, line 5: no range `84` to `0`",
            ),
            (
                "0,84,0,135",
                "0,84,-5,135",
                "safety bands, line 5: no range `-5` to `135`",
            ),
            (
                "under_three",
                "toddlers",
                "safety bands, line 0: `under_three` is not there",
            ),
        ] {
            assert_eq!(read(from, to).unwrap_err(), why);
        }
        assert_eq!(
            read("mm,75,", "mm,74.5,")
                .unwrap()
                .en_cord(CordPlace::Sleeve, true),
            Some(Length::nm(74_500_000))
        );
    }
}
