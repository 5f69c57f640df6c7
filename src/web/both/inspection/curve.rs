//! The operating characteristic of a lot's plans as a drawing: how likely the lot is accepted, by the
//! share of it that is defective. It is exact for the lot (hypergeometric), not for an endless one.
//!
//! Lengths are units of the `viewBox`, about a pixel on a phone.

use crate::exchange::inspection::{Class, Lot, Plans};
use crate::sample::inspection::{Aql, Plan};
use crate::spec::DecimalSign;

/// The field in a drawing of 340 by 240: left, right, top, bottom.
const FIELD: (f64, f64, f64, f64) = (64.0, 314.0, 30.0, 196.0);

/// How far to the right the drawing reaches, in shares of the lot: the least of these at which both
/// plans accept less than one lot of twenty. Our own choice.
const REACHES: [f64; 6] = [0.02, 0.05, 0.1, 0.2, 0.4, 1.0];
const SELDOM: f64 = 0.05;

/// So many points make a line, where the lot has as many pieces.
const POINTS: u32 = 60;

pub struct Curve {
    /// One of each plan; alike where both plans are.
    pub lines: [Line; 2],
    /// Places on the axes with what stands there.
    pub shares: Vec<(f64, String)>,
    pub likelihoods: Vec<(f64, String)>,
}

/// The line of one plan.
pub struct Line {
    pub class: Class,
    pub aql: &'static str,
    /// As the points of a polyline.
    pub points: String,
    /// Broken, so that the two are told apart in black and white.
    pub broken: bool,
    /// Where the AQL is; nothing where it lies beyond the drawing.
    pub mark: Option<f64>,
    /// Above the field.
    pub label: f64,
    /// The share nearest to the AQL that the lot can have, and how likely it is accepted then: in
    /// percent.
    pub at_aql: (String, String),
}

impl Curve {
    pub fn of(lot: &Lot, plans: &Plans, sign: DecimalSign) -> Curve {
        let both = [plans.major, plans.minor];
        let seldom = |reach: &f64| {
            let bad = pieces(plans.major.lot, *reach);
            both.iter().all(|plan| plan.acceptance(bad) < SELDOM)
        };
        let reach = REACHES.into_iter().find(seldom).unwrap_or(1.0);
        let line = |class, aql: Aql, plan: &Plan| Line::of(class, aql, plan, reach, sign);
        let quarters = |parts: u32| (0..=parts).map(move |it| f64::from(it) / f64::from(parts));
        Curve {
            lines: [
                line(Class::Major, lot.major, &plans.major),
                line(Class::Minor, lot.minor, &plans.minor),
            ],
            shares: quarters(4)
                .map(|part| (across(part), percent(part * reach, sign)))
                .collect(),
            likelihoods: quarters(4)
                .map(|part| (up(part), percent(part, sign)))
                .collect(),
        }
    }
}

impl Line {
    fn of(class: Class, aql: Aql, plan: &Plan, reach: f64, sign: DecimalSign) -> Line {
        let most = pieces(plan.lot, reach);
        let steps = most.clamp(1, POINTS);
        let mut bad: Vec<u32> = (0..=steps)
            .map(|step| {
                let part = u64::from(most) * u64::from(step) / u64::from(steps);
                u32::try_from(part).unwrap_or(most)
            })
            .collect();
        bad.dedup();
        let point = |bad: &u32| {
            let share = f64::from(*bad) / f64::from(plan.lot) / reach;
            format!("{},{}", across(share), up(plan.acceptance(*bad)))
        };
        let points: Vec<String> = bad.iter().map(point).collect();
        let level = aql.name().parse::<f64>().unwrap_or_default() / 100.0;
        // Without a defective piece every lot is accepted: that tells nothing.
        let near = pieces(plan.lot, level).max(1);
        let minor = class == Class::Minor;
        Line {
            class,
            aql: aql.name(),
            points: points.join(" "),
            broken: minor,
            mark: (level <= reach).then(|| across(level / reach)),
            label: if minor { 26.0 } else { 13.0 },
            at_aql: (
                percent(f64::from(near) / f64::from(plan.lot), sign),
                percent(plan.acceptance(near), sign),
            ),
        }
    }
}

/// So many pieces of a lot are a share of it, as nearly as it can have that.
fn pieces(lot: u32, share: f64) -> u32 {
    (f64::from(lot) * share).round() as u32
}

fn across(part: f64) -> f64 {
    tenths(FIELD.0 + part.min(1.0) * (FIELD.1 - FIELD.0))
}

fn up(part: f64) -> f64 {
    tenths(FIELD.3 - part.clamp(0.0, 1.0) * (FIELD.3 - FIELD.2))
}

fn tenths(value: f64) -> f64 {
    (value * 10.0).round() / 10.0
}

/// In percent, with a decimal where it says something.
fn percent(share: f64, sign: DecimalSign) -> String {
    let text = format!("{:.1}", share * 100.0);
    let text = text.strip_suffix(".0").unwrap_or(&text);
    format!("{} %", text.replace('.', &sign.sign().to_string()))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::exchange::inspection::{Group, Sort};
    use crate::sample::inspection::Level;
    use crate::spec::ItemId;

    fn lot(pieces: u32) -> Lot {
        let sort = Sort {
            colourway: ItemId::new("ink"),
            size: ItemId::new("m"),
        };
        Lot {
            groups: vec![Group { sort, pieces }],
            level: Level::II,
            major: Aql::A2_5,
            minor: Aql::A4_0,
        }
    }

    fn curve(pieces: u32) -> Curve {
        let lot = lot(pieces);
        Curve::of(&lot, &lot.plans().expect("a lot"), DecimalSign::Comma)
    }

    fn heights(line: &Line) -> Vec<f64> {
        let points = line.points.split(' ');
        let height = |point: &str| point.split_once(',').and_then(|(_, y)| y.parse().ok());
        points
            .map(|point| height(point).expect("a height"))
            .collect()
    }

    #[test]
    fn a_line_falls_from_certainty_to_hardly_ever() {
        for pieces in [8, 90, 1200, 10_000_000] {
            for line in curve(pieces).lines {
                let heights = heights(&line);
                assert_eq!(heights[0], FIELD.2, "a lot without a fault is accepted");
                assert!(heights.windows(2).all(|pair| pair[1] >= pair[0]));
                let last = heights.last().expect("points");
                assert!(*last > up(SELDOM) - 0.2, "{pieces}: {last}");
                assert!(heights.len() <= POINTS as usize + 1);
            }
        }
    }

    #[test]
    fn the_level_is_marked_with_what_it_promises() {
        let [major, minor] = curve(1200).lines;
        // 80 pieces, at most 5 of them defective, of 1200 with 30: by the exact distribution.
        assert_eq!(major.at_aql, ("2,5 %".to_owned(), "98,8 %".to_owned()));
        assert!(major.mark < minor.mark);
        assert!(!major.broken && minor.broken);
        let small = curve(8);
        // One of 8, of which 5 are drawn and none may be bad: 3 of 8.
        assert_eq!(
            small.lines[0].at_aql,
            ("12,5 %".to_owned(), "37,5 %".to_owned())
        );
        assert_eq!(small.shares.last().expect("a place").1, "100 %");
    }
}
