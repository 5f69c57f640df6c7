//! Readings in which an entry, or the label of a piece, was wrong.

use super::data::{Data, taken_back};
use super::fit::{Criterion, Weighed};
use super::state::{Cell, Fix, State};
use crate::sample::ask::Slip;

/// A slip moves a value by at least so many centimetres: of less, noise may be the cause.
const LEAST_SLIP: f64 = 1.2;
/// How many times the scatter a value must be off before its entry is doubted.
const DOUBTFUL: f64 = 2.5;

/// Every state that differs by the size that one piece is taken to be, or by two pieces that change
/// their sizes.
pub fn relabellings(data: &Data, state: &State) -> Vec<State> {
    let pieces = 0..data.pieces.len();
    let mut all = Vec::new();
    for piece in pieces.clone() {
        for size in (0..data.sizes.len()).filter(|size| *size != state.sizes[piece]) {
            let mut other = state.clone();
            other.sizes[piece] = size;
            all.push(other);
        }
        for second in piece + 1..data.pieces.len() {
            if state.sizes[piece] != state.sizes[second] {
                let mut other = state.clone();
                other.sizes.swap(piece, second);
                all.push(other);
            }
        }
    }
    for other in &mut all {
        let changed: Vec<usize> = pieces
            .clone()
            .filter(|piece| other.sizes[*piece] != state.sizes[*piece])
            .collect();
        for piece in changed {
            for point in 0..data.points.len() {
                // What a swap or slip explains stays, what nothing explained is looked at anew.
                other.forget(piece, point, data.pieces.len());
            }
        }
    }
    all
}

/// The best reading that puts right one entry, one pair of entries or one label.
pub fn repairs(data: &Data, criterion: &Criterion, at: &Weighed) -> Option<Weighed> {
    let mut states = relabellings(data, &at.state);
    let doubtful = doubtful(data, at);
    states.extend(slips(data, at, &doubtful));
    states.extend(swaps(data, at, &doubtful));
    states.extend(taken_again(at));
    states
        .iter()
        .filter_map(|state| criterion.weigh(data, state))
        .min_by(|one, other| one.cost.total_cmp(&other.cost))
}

/// A value that is off, with what it should be.
struct Doubt {
    cell: Cell,
    expected: f64,
}

impl Doubt {
    fn value(&self) -> f64 {
        self.cell.spec + self.cell.d
    }

    fn off(&self) -> f64 {
        self.value() - self.expected
    }
}

/// The values that are far off and were not put right yet.
fn doubtful(data: &Data, at: &Weighed) -> Vec<Doubt> {
    let scatter = at.fit.scatter();
    let cells = at.cells.iter();
    let doubts = cells.map(|cell| Doubt {
        cell: *cell,
        expected: at.expected(data, cell),
    });
    doubts
        .filter(|it| it.off().abs() > DOUBTFUL * scatter)
        .filter(|it| !at.state.fixes.contains_key(&(it.cell.piece, it.cell.point)))
        .collect()
}

fn slips(data: &Data, at: &Weighed, doubtful: &[Doubt]) -> Vec<State> {
    let scatter = at.fit.scatter();
    let mut states = Vec::new();
    for doubt in doubtful.iter().filter(|it| it.off().abs() >= LEAST_SLIP) {
        for slip in Slip::ALL {
            let off = taken_back(slip, doubt.value()) - doubt.expected;
            if off.abs() * 3.0 < doubt.off().abs() && off.abs() < (4.0 * scatter).max(0.5) {
                let (piece, point) = (doubt.cell.piece, doubt.cell.point);
                let mut state = at.state.clone();
                state.fixes.insert((piece, point), Fix::Slip(slip));
                state.forget(piece, point, data.pieces.len());
                states.push(state);
            }
        }
    }
    states
}

fn swaps(data: &Data, at: &Weighed, doubtful: &[Doubt]) -> Vec<State> {
    let mut states = Vec::new();
    for (number, one) in doubtful.iter().enumerate() {
        for other in &doubtful[number + 1..] {
            let piece = one.cell.piece;
            let squared = |a: f64, b: f64| a * a + b * b;
            let before = squared(one.off(), other.off());
            let after = squared(other.value() - one.expected, one.value() - other.expected);
            if piece == other.cell.piece && after * 4.0 < before {
                let (first, second) = (one.cell.point, other.cell.point);
                let mut state = at.state.clone();
                state.fixes.insert((piece, first), Fix::Swapped(second));
                state.fixes.insert((piece, second), Fix::Swapped(first));
                state.forget(piece, first, data.pieces.len());
                state.forget(piece, second, data.pieces.len());
                states.push(state);
            }
        }
    }
    states
}

/// States in which one entry that was put right is left as it was.
fn taken_again(at: &Weighed) -> Vec<State> {
    let fixes = at.state.fixes.iter();
    let states = fixes.map(|((piece, point), fix)| {
        let mut state = at.state.clone();
        state.fixes.remove(&(*piece, *point));
        if let Fix::Swapped(other) = fix {
            state.fixes.remove(&(*piece, *other));
        }
        state
    });
    states.collect()
}
