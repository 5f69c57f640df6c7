//! The file that `fellseam evaluate` reads.

use std::collections::{BTreeMap, BTreeSet};
use std::path::Path;

use serde::Deserialize;

use crate::cli::given::{Unreadable, read};
use crate::sample::contract::{Contract, Piece, Place, Reading};
use crate::sample::deviation::{Column, Limits};
use crate::sample::evaluation::Earlier;
use crate::spec::canon::from_json;
use crate::spec::document::{Basis, Direction};
use crate::spec::{DecimalSign, Entered, ItemId, Length, PieceId, Unit};

/// For `--help`.
pub const DESCRIPTION: &str = r#"Ends with 0 when every value is within tolerance, with 1 when one is not, with 2 when the file
cannot be read.

The file is one JSON object. Lengths are text in the file's unit: "53.5", "53,5", "21 1/16"; a unit
may stand behind them. What is absent is left out; fields that are not named here are refused.

  unit        "cm", "mm" or "inch"
  decimal     "point" (if left out) or "comma": how the answer writes numbers
  base_size   the size that the others are graded from
  sizes       all sizes of the chart in their order: ["S", "M", "L"]
  points      the points of measure, each with
                id          a short name of your own, used once
                letter      as on the drawing; optional
                name        optional
                fabric      what it is measured on; points of one fabric shrink alike; optional
                direction   "length" or "width"; optional
                basis       "half", "full" or "linear"; optional
                critical    true or false; optional
                minus       how much smaller it may be, without a sign
                plus        how much larger it may be
                tolerances  sizes whose tolerance differs: {"L": {"minus": "1", "plus": "1"}}; optional
                values      the frozen chart by size: {"S": "51", "M": "53", "L": "55"}
  pieces      the garments, each with
                id          what is written on the piece, used once
                size        what its label says
                measured    who measured what: [{"by": "factory", "values": {"chest": "53.4"}}];
                            of a point that several measured, the last one's value is judged
                washed      the same points after washing: {"chest": "52.1"}; optional
  earlier     rounds before this one: [{"round": "proto", "failed": ["chest"]}], as "failed" in the
              answer of that round lists them; optional

Without fabrics and directions shrinkage cannot be told from other causes.

The answer holds a verdict for every value, findings with cause, place, figures and a sentence, what
to measure again, what there is not enough data for, steps between sizes and changes by washing."#;

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Written {
    unit: Unit,
    #[serde(default)]
    decimal: DecimalSign,
    base_size: ItemId,
    sizes: Vec<ItemId>,
    points: Vec<WrittenPoint>,
    pieces: Vec<WrittenPiece>,
    #[serde(default)]
    earlier: Vec<WrittenEarlier>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct WrittenPoint {
    id: ItemId,
    #[serde(default)]
    letter: String,
    #[serde(default)]
    name: String,
    fabric: Option<ItemId>,
    direction: Option<Direction>,
    basis: Option<Basis>,
    #[serde(default)]
    critical: bool,
    minus: String,
    plus: String,
    #[serde(default)]
    tolerances: BTreeMap<ItemId, WrittenTolerance>,
    values: BTreeMap<ItemId, String>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct WrittenTolerance {
    minus: String,
    plus: String,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct WrittenPiece {
    id: PieceId,
    size: ItemId,
    measured: Vec<WrittenReading>,
    #[serde(default)]
    washed: BTreeMap<ItemId, String>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct WrittenReading {
    by: String,
    values: BTreeMap<ItemId, String>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct WrittenEarlier {
    round: String,
    failed: BTreeSet<ItemId>,
}

/// The file, understood.
pub struct Paper {
    pub unit: Unit,
    pub sign: DecimalSign,
    pub contract: Contract,
    /// Letter and name of each point.
    pub names: BTreeMap<ItemId, (String, String)>,
    pub pieces: Vec<Piece>,
    /// What each piece measured after washing, for those that were washed.
    pub washed: BTreeMap<PieceId, BTreeMap<ItemId, Length>>,
    pub earlier: Vec<Earlier>,
}

impl Paper {
    /// Reads a file, or standard input for `-`.
    pub fn read(file: &Path) -> Result<Paper, Unreadable> {
        read(file, |bytes| {
            let written: Written = from_json(bytes)?;
            Ok(Paper::of(written))
        })?
        .map_err(|why| Unreadable::new(file, format!("$.{why}")))
    }

    /// What does not belong together is told with its path.
    fn of(written: Written) -> Result<Paper, String> {
        let Written {
            unit,
            decimal,
            base_size,
            sizes,
            points,
            pieces,
            earlier,
        } = written;
        if !sizes.contains(&base_size) {
            return Err(format!("base_size: {base_size} is none of the sizes"));
        }
        once(sizes.iter().map(ItemId::as_str), "sizes")?;
        once(points.iter().map(|it| it.id.as_str()), "points")?;
        once(pieces.iter().map(|it| it.id.as_str()), "pieces")?;
        let mut columns: BTreeMap<ItemId, Column> = BTreeMap::new();
        for (number, point) in points.iter().enumerate() {
            let path = format!("points[{number}]");
            for size in point.values.keys().chain(point.tolerances.keys()) {
                known(&sizes, size, &path, "none of the sizes")?;
            }
            for size in &sizes {
                let limits = limits(point, size, unit, &path)?;
                let column = columns.entry(size.clone()).or_default();
                column.insert(point.id.clone(), limits);
            }
        }
        let ids: Vec<ItemId> = points.iter().map(|it| it.id.clone()).collect();
        let values = |values: &BTreeMap<ItemId, String>, path: &str| {
            let read = values.iter().map(|(point, value)| {
                known(&ids, point, path, "none of the points")?;
                Ok((
                    point.clone(),
                    length(value, unit, &format!("{path}.{point}"))?,
                ))
            });
            read.collect::<Result<BTreeMap<ItemId, Length>, String>>()
        };
        let mut washed = BTreeMap::new();
        let mut made = Vec::new();
        for (number, piece) in pieces.into_iter().enumerate() {
            let path = format!("pieces[{number}]");
            known(
                &sizes,
                &piece.size,
                &format!("{path}.size"),
                "none of the sizes",
            )?;
            if !piece.washed.is_empty() {
                let after = values(&piece.washed, &format!("{path}.washed"))?;
                washed.insert(piece.id.clone(), after);
            }
            let readings = piece.measured.into_iter().enumerate();
            let readings = readings.map(|(at, reading)| {
                Ok(Reading {
                    values: values(&reading.values, &format!("{path}.measured[{at}].values"))?,
                    by: reading.by,
                })
            });
            made.push(Piece {
                readings: readings.collect::<Result<_, String>>()?,
                id: piece.id,
                size: piece.size,
            });
        }
        for (number, round) in earlier.iter().enumerate() {
            for point in &round.failed {
                known(
                    &ids,
                    point,
                    &format!("earlier[{number}].failed"),
                    "none of the points",
                )?;
            }
        }
        let places = points.iter().map(|point| Place {
            point: point.id.clone(),
            fabric: point.fabric.clone(),
            along: point.direction,
            basis: point.basis,
        });
        Ok(Paper {
            unit,
            sign: decimal,
            contract: Contract {
                points: places.collect(),
                base: base_size,
                sizes,
                columns,
            },
            names: points
                .into_iter()
                .map(|point| (point.id, (point.letter, point.name)))
                .collect(),
            pieces: made,
            washed,
            earlier: earlier
                .into_iter()
                .map(|it| Earlier {
                    round: it.round,
                    failed: it.failed,
                })
                .collect(),
        })
    }
}

fn limits(point: &WrittenPoint, size: &ItemId, unit: Unit, path: &str) -> Result<Limits, String> {
    let value = point.values.get(size);
    let value = value.ok_or_else(|| format!("{path}.values: {size} is missing"))?;
    let own = point.tolerances.get(size);
    let (minus, plus) = own.map_or((&point.minus, &point.plus), |own| (&own.minus, &own.plus));
    let tolerance = |text: &str, side: &str| {
        let tolerance = length(text, unit, &format!("{path}.{side}"))?;
        match tolerance.is_negative() {
            true => Err(format!(
                "{path}.{side}: a tolerance is written without a sign"
            )),
            false => Ok(tolerance),
        }
    };
    Ok(Limits {
        spec: length(value, unit, &format!("{path}.values.{size}"))?,
        minus: tolerance(minus, "minus")?,
        plus: tolerance(plus, "plus")?,
        critical: point.critical,
    })
}

fn length(text: &str, unit: Unit, path: &str) -> Result<Length, String> {
    let entered = Entered::read(text, unit).map_err(|why| format!("{path}: “{text}”: {why}"))?;
    Ok(entered.nm)
}

fn known(all: &[ItemId], one: &ItemId, path: &str, what: &str) -> Result<(), String> {
    match all.contains(one) {
        true => Ok(()),
        false => Err(format!("{path}: {one} is {what}")),
    }
}

fn once<'a>(ids: impl Iterator<Item = &'a str>, path: &str) -> Result<(), String> {
    let mut seen = BTreeSet::new();
    for id in ids {
        if !seen.insert(id) {
            return Err(format!("{path}: {id} is there twice"));
        }
    }
    Ok(())
}
