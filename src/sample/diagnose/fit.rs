//! Least squares of the deviations on what may be wrong, and what a state costs.

use super::atom::{Atom, Column};
use super::data::Data;
use super::state::{Cell, State};

/// What is known of the scatter of a single value before the round is looked at.
#[derive(Debug, Clone, Copy)]
pub struct Prior {
    /// How many readings it is worth.
    pub weight: f64,
    /// In square centimetres.
    pub variance: f64,
}

/// The deviations, taken apart.
pub struct Fit {
    /// Orthonormal, one for each atom that moves more than one cell.
    basis: Vec<Vec<f64>>,
    /// Cells that have an atom of their own: it takes all of what is left there, so that they say
    /// nothing of the other atoms.
    spoken_for: Vec<bool>,
    /// What is left of each cell.
    pub left: Vec<f64>,
    /// The squares of it, together.
    pub squares: f64,
    /// How much of each atom there is.
    pub amounts: Vec<f64>,
}

/// A column counts as one of those before it when less than this share of it is left.
const DEPENDENT: f64 = 1e-6;

fn dot(a: &[f64], b: &[f64]) -> f64 {
    a.iter().zip(b).map(|(a, b)| a * b).sum()
}

fn silence(values: &mut [f64], spoken_for: &[bool]) {
    let values = values.iter_mut().zip(spoken_for);
    values.filter(|(_, it)| **it).for_each(|(it, _)| *it = 0.0);
}

impl Fit {
    /// By the modified Gram–Schmidt process. `None` when one atom says what others say already.
    pub fn new(data: &Data, cells: &[Cell], atoms: &[Atom]) -> Option<Fit> {
        let lone: Vec<Option<usize>> = atoms.iter().map(|it| it.only(data, cells)).collect();
        let mut spoken_for = vec![false; cells.len()];
        for row in lone.iter().flatten() {
            // Two atoms for one cell.
            if std::mem::replace(&mut spoken_for[*row], true) {
                return None;
            }
        }
        let mut left: Vec<f64> = cells.iter().map(|cell| cell.d).collect();
        silence(&mut left, &spoken_for);
        let mut basis: Vec<Vec<f64>> = Vec::new();
        // The atoms' columns in terms of `basis`: above the diagonal.
        let mut corner: Vec<Vec<f64>> = Vec::new();
        let mut onto = Vec::new();
        let wide = || atoms.iter().zip(&lone).filter(|(_, lone)| lone.is_none());
        for (atom, _) in wide() {
            let mut rest: Vec<f64> = cells.iter().map(|cell| atom.at(data, cell)).collect();
            let whole = dot(&rest, &rest);
            silence(&mut rest, &spoken_for);
            let mut upper = Vec::new();
            for base in &basis {
                let along = dot(&rest, base);
                upper.push(along);
                rest.iter_mut()
                    .zip(base)
                    .for_each(|(it, base)| *it -= along * base);
            }
            let squared = dot(&rest, &rest);
            if squared <= DEPENDENT * whole || squared <= 0.0 {
                return None;
            }
            let norm = squared.sqrt();
            rest.iter_mut().for_each(|it| *it /= norm);
            upper.push(norm);
            let along = dot(&left, &rest);
            onto.push(along);
            left.iter_mut()
                .zip(&rest)
                .for_each(|(it, base)| *it -= along * base);
            basis.push(rest);
            corner.push(upper);
        }
        let mut found = vec![0.0; onto.len()];
        for row in (0..onto.len()).rev() {
            let later = (row + 1..onto.len()).map(|at| corner[at][row] * found[at]);
            found[row] = (onto[row] - later.sum::<f64>()) / corner[row][row];
        }
        let moved = |cell: &Cell| -> f64 {
            let wide = wide().zip(&found);
            wide.map(|((atom, _), amount)| atom.at(data, cell) * amount)
                .sum()
        };
        let mut wide_found = found.iter();
        let amounts = lone.iter().map(|lone| match lone {
            Some(row) => cells[*row].d - moved(&cells[*row]),
            None => wide_found.next().copied().unwrap_or_default(),
        });
        Some(Fit {
            amounts: amounts.collect(),
            squares: dot(&left, &left),
            basis,
            spoken_for,
            left,
        })
    }

    /// How much smaller the squares become by one more column, and how much of it there would be.
    pub fn gain(&self, column: &Column) -> Option<(f64, f64)> {
        let onto = |other: &[f64]| column.iter().map(|(row, it)| it * other[*row]).sum::<f64>();
        let whole: f64 = column.iter().map(|(_, it)| it * it).sum();
        let spoken_for = column.iter().filter(|(row, _)| self.spoken_for[*row]);
        let known: f64 = spoken_for.map(|(_, it)| it * it).sum();
        // Basis vectors are nothing where a cell is spoken for.
        let known = known + self.basis.iter().map(|it| onto(it).powi(2)).sum::<f64>();
        let new = whole - known;
        if new <= DEPENDENT * whole || new <= 0.0 {
            return None;
        }
        let along = onto(&self.left);
        Some((along * along / new, along / new))
    }

    /// A scatter of what is left that a few large values do not touch: 1.4826 times the median of
    /// the magnitudes, which is the standard deviation of normal noise. Never less than a tape can
    /// be read to.
    pub fn scatter(&self) -> f64 {
        let mut left: Vec<f64> = self.left.iter().map(|it| it.abs()).collect();
        left.retain(|it| *it > 1e-9);
        (1.4826 * median(&mut left)).max(0.1)
    }
}

/// The middle of the values, which are put in order; of none, zero.
pub fn median(values: &mut [f64]) -> f64 {
    values.sort_unstable_by(f64::total_cmp);
    match values.len() {
        0 => 0.0,
        odd if odd % 2 == 1 => values[odd / 2],
        even => f64::midpoint(values[even / 2 - 1], values[even / 2]),
    }
}

/// What every state of one round is weighed by: less is better.
///
/// The scatter is unknown, so that the likelihood is that of Student's t: (n + w) ln(w s² + squares),
/// where the prior is worth w readings of variance s². To it comes, for everything that a state
/// claims, ln n + 2 ln m: the extended information criterion of Chen and Chen ("Extended Bayesian
/// information criteria for model selection with large model spaces", Biometrika 95, 2008) with
/// γ = 1, where m is the number of claims to choose from. A slip, a swap or a wrong label costs less:
/// it says to the millimetre what must have been measured, and has no amount that could be fitted to
/// the noise. The plain criterion would name a fault in
/// every fifth faultless garment, only because there are so many points to look at.
#[derive(Debug)]
pub struct Criterion {
    pub prior: Prior,
    /// How many cells may still be weighed.
    work: std::cell::Cell<usize>,
    cells: f64,
    /// For each atom.
    claim: f64,
    /// For each slip or label.
    certain: f64,
    /// For a pair of swapped points, of which there are more to choose from.
    pair: f64,
}

/// A round of four pieces and 45 points is read by weighing 1.4 million cells at most, as far as the
/// simulator has seen. Dozens of pieces full of nonsense would go on for minutes: they end here, with
/// what was found so far and the rest told as values to measure again. By count and not by the clock, so that a round reads the same
/// on every machine. Our own choice.
const MOST_WORK: usize = 15_000_000;

/// Beyond the criterion: chosen by the simulator so that of faultless garments fewer than two in a
/// hundred are accused.
const CAUTION: f64 = 1.5;

/// How far off a single point usually is, in centimetres: larger amounts are less likely, by the
/// tails of Cauchy's distribution. Without it a value typed as its double is as good a reading as a
/// point sewn twice as wide. Our own choice.
const USUAL: f64 = 2.0;

impl Criterion {
    pub fn new(data: &Data, prior: Prior, cells: usize, candidates: usize) -> Criterion {
        let ln = |count: usize| (count.max(1) as f64).ln();
        let points = data.points.len();
        let pairs = data.pieces.len() * points * points.saturating_sub(1) / 2;
        Criterion {
            prior,
            work: MOST_WORK.into(),
            cells: cells as f64,
            claim: ln(cells) + 2.0 * ln(candidates) + CAUTION,
            certain: ln(candidates) + CAUTION + 1.0,
            pair: 2.0 * ln(pairs) + CAUTION - 3.0,
        }
    }

    pub fn misfit(&self, squares: f64) -> f64 {
        let Prior { weight, variance } = self.prior;
        (self.cells + weight) * (weight * variance + squares).ln()
    }

    /// What a state's claims cost.
    pub fn claims(&self, data: &Data, state: &State) -> f64 {
        let (slips, swaps) = state.fixed();
        let certain = slips + state.relabelled(data);
        let [atoms, certain, swaps] = [state.atoms.len(), certain, swaps].map(|it| it as f64);
        atoms * self.claim + certain * self.certain + swaps * self.pair
    }

    /// What one more atom costs, with so much of it.
    pub fn claim(&self, atom: Atom, amount: f64) -> f64 {
        self.claim + unusual(atom, amount)
    }

    /// The state's cost with its fit; `None` when its atoms repeat each other, or when so much was
    /// weighed already that the search ends where it is.
    pub fn weigh(&self, data: &Data, state: &State) -> Option<Weighed> {
        let cells = state.cells(data);
        self.work.set(self.work.get().checked_sub(cells.len())?);
        let fit = Fit::new(data, &cells, &state.atoms)?;
        let amounts = state.atoms.iter().zip(&fit.amounts);
        let unusual: f64 = amounts.map(|(atom, amount)| unusual(*atom, *amount)).sum();
        let cost = self.misfit(fit.squares) + self.claims(data, state) + unusual;
        Some(Weighed {
            state: state.clone(),
            cells,
            fit,
            cost,
        })
    }

    /// The scatter of a single value in centimetres, from the prior and what a fit leaves.
    pub fn deviation(&self, fit: &Fit) -> f64 {
        let Prior { weight, variance } = self.prior;
        let used = fit.amounts.len() as f64;
        let readings = (self.cells - used).max(0.0);
        ((weight * variance + fit.squares) / (weight + readings)).sqrt()
    }
}

/// What the amount of an atom costs: a single point's, the more the further it is off.
fn unusual(atom: Atom, amount: f64) -> f64 {
    match atom {
        Atom::Point(_) | Atom::Piece { .. } => 2.0 * (1.0 + (amount / USUAL).powi(2)).ln(),
        _ => 0.0,
    }
}

/// A state with all that follows from it.
pub struct Weighed {
    pub state: State,
    pub cells: Vec<Cell>,
    pub fit: Fit,
    pub cost: f64,
}

impl Weighed {
    /// What a measurement should be by everything but what was said of it alone.
    pub fn expected(&self, data: &Data, cell: &Cell) -> f64 {
        let pieces = data.pieces.len();
        let atoms = self.state.atoms.iter().zip(&self.fit.amounts);
        let moved = atoms
            .filter(|(atom, _)| !atom.is_at(cell.piece, cell.point, pieces))
            .map(|(atom, amount)| atom.at(data, cell) * amount);
        cell.spec + moved.sum::<f64>()
    }
}
