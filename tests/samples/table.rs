//! How often the right cause is named, counted.

use std::collections::{BTreeMap, BTreeSet};
use std::fmt;

use fellseam::sample::contract::Contract;
use fellseam::sample::evaluation::evaluate;
use fellseam::sample::finding::Finding;
use fellseam::spec::ItemId;

use crate::chance::Chance;
use crate::fault::{Fault, Kind};
use crate::garment::{contract, made, sizes};
use crate::packs::PACKS;

/// What became of the samples with one kind of fault.
#[derive(Debug, Clone, Default)]
pub struct Row {
    pub samples: usize,
    /// Every fault was named with its place, and nothing else.
    pub right: usize,
    /// Nothing was named.
    pub silent: usize,
    /// How many samples each cause was named in.
    pub named: BTreeMap<&'static str, usize>,
    /// The samples that were not right, in words.
    pub missed: Vec<String>,
}

pub struct Table {
    pub pieces: usize,
    pub rows: Vec<(Kind, Row)>,
}

/// Makes and evaluates so many samples of each kind, of so many pieces each.
pub fn run(pieces: usize, samples: usize, seed: u64) -> Table {
    let contracts = PACKS.map(contract);
    let kinds = Kind::ALL
        .into_iter()
        .filter(|kind| pieces > 1 || *kind != Kind::Grade);
    let rows = kinds.map(|kind| {
        let mut row = Row::default();
        for number in 0..samples {
            let mix = seed * 1_000_003 + pieces as u64 * 7919 + kind as u64 * 104_729;
            let mut chance = Chance::new(mix.wrapping_mul(31).wrapping_add(number as u64));
            let contract = &contracts[number % contracts.len()];
            row.count(contract, kind, pieces, &mut chance);
        }
        (kind, row)
    });
    Table {
        pieces,
        rows: rows.collect(),
    }
}

impl Row {
    fn count(&mut self, contract: &Contract, kind: Kind, pieces: usize, chance: &mut Chance) {
        let sizes = sizes(contract, pieces, kind == Kind::Grade, chance);
        let faults = faults(kind, contract, &sizes, chance);
        let deviation = chance.between(0.12, 0.25);
        let made = made(contract, &sizes, &faults, deviation, chance);
        let evaluation = evaluate(contract, &made, &[]);
        let findings = evaluation.diagnosis.expect("it was measured").findings;
        let really = |(piece, said)| {
            let mut labels = faults.iter().filter_map(|fault| fault.really(piece));
            labels.next().unwrap_or(said)
        };
        let really: Vec<&ItemId> = sizes.iter().enumerate().map(really).collect();
        let several = really.iter().any(|size| *size != really[0]);
        let named = |fault: &Fault| {
            let by = |finding: &Finding| fault.is_named_by(finding, several);
            findings.iter().any(by)
        };
        let right = faults.iter().all(named) && findings.len() == faults.len();
        self.samples += 1;
        self.right += usize::from(right);
        self.silent += usize::from(findings.is_empty());
        let causes: BTreeSet<_> = findings.iter().map(|it| it.cause.name()).collect();
        for cause in causes {
            *self.named.entry(cause).or_default() += 1;
        }
        if !right {
            let told = findings.iter().map(|it| {
                let points: Vec<&str> = it.points.iter().map(ItemId::as_str).collect();
                format!(
                    "\n   told: {} {:?} {:?} {points:?}",
                    it.cause.name(),
                    it.fabric,
                    it.along
                )
            });
            let told: String = told.collect();
            self.missed
                .push(format!("σ {deviation:.2}, {sizes:?}, {faults:?}{told}"));
        }
    }
}

fn faults(kind: Kind, contract: &Contract, sizes: &[ItemId], chance: &mut Chance) -> Vec<Fault> {
    let simple = [
        Kind::Shrinkage,
        Kind::Constant,
        Kind::Single,
        Kind::Label,
        Kind::HalfFull,
        Kind::InchCm,
        Kind::Swapped,
    ];
    match kind {
        Kind::Nothing => Vec::new(),
        Kind::Two => loop {
            let mut fault = || Fault::of(*chance.one(&simple), contract, sizes, chance);
            let (one, other) = (fault(), fault());
            if one.goes_with(&other) {
                break vec![one, other];
            }
        },
        kind => vec![Fault::of(kind, contract, sizes, chance)],
    }
}

impl fmt::Display for Table {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        writeln!(f, "{} piece(s)", self.pieces)?;
        writeln!(
            f,
            "{:<22}{:>8}{:>8}  causes named, in samples",
            "fault", "right", "none"
        )?;
        for (kind, row) in &self.rows {
            let share = |count: usize| 100.0 * count as f64 / row.samples as f64;
            write!(
                f,
                "{:<22}{:>6.1} %{:>6.1} % ",
                kind.name(),
                share(row.right),
                share(row.silent)
            )?;
            for (cause, count) in &row.named {
                write!(f, " {cause} {count}")?;
            }
            writeln!(f)?;
        }
        Ok(())
    }
}
