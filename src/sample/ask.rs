//! What to ask about before a measurement is saved: the values look like a slip of the hand.
//!
//! Asking never refuses; the one who measured may have measured right.

use std::collections::BTreeMap;

use crate::spec::{ItemId, Length};

use super::deviation::{Column, Limits};

/// How near to a tell-tale ratio a value must come, in hundredths of that ratio.
const NEAR: i128 = 3;

/// Fewer measured points than this show no pattern of a whole piece. Our own choice.
const ENOUGH: usize = 4;

/// What a value looks like beside the one that the chart asks for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Slip {
    /// Near twice: the full way round instead of the half.
    Doubled,
    /// Near half: the half instead of the full way round.
    Halved,
    /// Near 2.54 times: centimetres read off, written as inches.
    CmAsInch,
    /// Near 0.394 of it: inches read off, written as centimetres.
    InchAsCm,
    /// Near ten times: millimetres as centimetres, or a decimal sign missed.
    TenTimes,
    /// Near a tenth.
    Tenth,
}

impl Slip {
    pub const ALL: [Slip; 6] = [
        Slip::Doubled,
        Slip::Halved,
        Slip::CmAsInch,
        Slip::InchAsCm,
        Slip::TenTimes,
        Slip::Tenth,
    ];

    /// The stable name.
    pub fn name(self) -> &'static str {
        match self {
            Slip::Doubled => "doubled",
            Slip::Halved => "halved",
            Slip::CmAsInch => "cm_as_inch",
            Slip::InchAsCm => "inch_as_cm",
            Slip::TenTimes => "ten_times",
            Slip::Tenth => "tenth",
        }
    }

    /// measured : spec. An inch is exactly 2.54 cm.
    fn ratio(self) -> (i128, i128) {
        match self {
            Slip::Doubled => (2, 1),
            Slip::Halved => (1, 2),
            Slip::CmAsInch => (127, 50),
            Slip::InchAsCm => (50, 127),
            Slip::TenTimes => (10, 1),
            Slip::Tenth => (1, 10),
        }
    }
}

/// A question to put before saving.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Ask {
    /// This point's value looks like a slip.
    Slip { point: ItemId, slip: Slip },
    /// The piece as a whole fits this other size better.
    OtherSize { size: ItemId },
    /// Every value is exactly the chart's: copied, not measured?
    Copied,
}

/// Does this value look like a slip? Within tolerance it never does.
pub fn slip(limits: &Limits, measured: Length) -> Option<Slip> {
    let spec = i128::from(limits.spec.as_nm());
    let measured_nm = i128::from(measured.as_nm());
    if !limits.judge(measured).verdict.is_out() {
        return None;
    }
    Slip::ALL.into_iter().find(|slip| {
        let (over, under) = slip.ratio();
        // |measured/spec − over/under| ≤ 3 % of over/under, without dividing.
        (measured_nm * under - spec * over).abs() * 100 <= spec * over * NEAR
    })
}

/// What to ask about one piece before its values are saved. `columns` are those of every size of
/// the revision, and `size` is the one that the piece is said to be.
pub fn asks(
    columns: &BTreeMap<ItemId, Column>,
    size: &ItemId,
    values: &BTreeMap<ItemId, Length>,
) -> Vec<Ask> {
    let Some(own) = columns.get(size) else {
        return Vec::new();
    };
    let measured: Vec<(&ItemId, &Limits, Length)> = own
        .iter()
        .filter_map(|(point, limits)| Some((point, limits, *values.get(point)?)))
        .collect();
    let mut asks: Vec<Ask> = measured
        .iter()
        .filter_map(|(point, limits, value)| {
            let slip = slip(limits, *value)?;
            Some(Ask::Slip {
                point: (*point).clone(),
                slip,
            })
        })
        .collect();
    if let Some(size) = better_size(columns, size, values) {
        asks.push(Ask::OtherSize { size });
    }
    if measured.len() >= ENOUGH
        && measured
            .iter()
            .all(|(_, limits, value)| limits.spec == *value)
    {
        asks.push(Ask::Copied);
    }
    asks
}

/// The other size whose column the piece fits better: fewer points out of tolerance and less
/// deviation in all, over the points whose values differ between the two sizes.
fn better_size(
    columns: &BTreeMap<ItemId, Column>,
    size: &ItemId,
    values: &BTreeMap<ItemId, Length>,
) -> Option<ItemId> {
    let own = columns.get(size)?;
    columns
        .iter()
        .filter(|(other, _)| *other != size)
        .filter_map(|(other, column)| {
            let graded: Vec<(&Limits, &Limits, Length)> = values
                .iter()
                .filter_map(|(point, value)| Some((own.get(point)?, column.get(point)?, *value)))
                .filter(|(own, other, _)| own.spec != other.spec)
                .collect();
            if graded.len() < ENOUGH {
                return None;
            }
            let here = fit(graded.iter().map(|(own, _, value)| (*own, *value)));
            let there = fit(graded.iter().map(|(_, other, value)| (*other, *value)));
            let better = there.0 < here.0 && there.1 < here.1;
            better.then_some((there, other))
        })
        .min()
        .map(|(_, size)| size.clone())
}

/// Points out of tolerance, and the sum of all deviations in nanometres.
fn fit<'a>(points: impl Iterator<Item = (&'a Limits, Length)>) -> (usize, i128) {
    points.fold((0, 0), |(out, sum), (limits, value)| {
        let deviation = limits.judge(value);
        (
            out + usize::from(deviation.verdict.is_out()),
            sum + i128::from(deviation.d.as_nm().abs()),
        )
    })
}

#[cfg(test)]
mod tests;
