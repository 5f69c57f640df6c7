//! The way to the reading that costs least: one claim after the other, and back where a later one
//! makes an earlier one needless.

use super::atom::{Atom, Offer, candidates};
use super::data::{Data, ENOUGH, taken_back};
use super::entry::{relabellings, repairs};
use super::fit::{Criterion, Prior, Weighed};
use super::state::State;
use crate::sample::ask::Slip;

/// More steps than any round of samples needs: the cost falls with each, so that this only bounds
/// the time that nonsense can take.
const MOST_STEPS: usize = 40;
/// How many other beginnings are followed to their end.
const MOST_STARTS: usize = 4;
/// What is called gross: so many centimetres, and such a share of the value, off.
const GROSS: (f64, f64) = (1.2, 0.2);

/// The reading that costs least. `None` when nothing was measured.
pub fn search(data: &Data, prior: Prior) -> Option<(Weighed, Criterion)> {
    let first = beginning(data, State::new(data));
    let cells = first.cells(data).len();
    if cells == 0 {
        return None;
    }
    let count = candidates(data, &first.sizes).len();
    let criterion = Criterion::new(data, prior, cells, count);
    // As they are said to be, before anything else spends the work that there is.
    let own = settle(data, &criterion, criterion.weigh(data, &first)?);
    // A wrong label hides behind other claims when it is looked for last.
    let mut others: Vec<Weighed> = relabellings(data, &first)
        .into_iter()
        .filter_map(|state| criterion.weigh(data, &beginning(data, state)))
        .collect();
    others.sort_by(|one, other| one.cost.total_cmp(&other.cost));
    others.truncate(MOST_STARTS);
    let others = others
        .into_iter()
        .filter_map(|start| settle(data, &criterion, start));
    let settled = own.into_iter().chain(others);
    let best = settled.min_by(|one, other| one.cost.total_cmp(&other.cost))?;
    Some((best, criterion))
}

/// A state with what stares one in the face: pieces entered in another unit throughout, and
/// entries so far off that nothing may be concluded from them. Each of these gets a claim of its
/// own, which takes it out of the fit until it is explained: the mean-shift model of outliers.
fn beginning(data: &Data, mut state: State) -> State {
    state.atoms.clear();
    state.fixes.clear();
    state.whole.clear();
    for piece in 0..data.pieces.len() {
        if let Some(whole) = whole_piece(data, &state, piece) {
            state.whole.insert(piece, whole);
        }
    }
    let cells = state.cells(data);
    let gross: Vec<_> = cells
        .iter()
        .filter(|cell| cell.d.abs() > GROSS.0.max(GROSS.1 * cell.spec.abs()))
        .collect();
    // Where much is that far off, it is the garment.
    if gross.len() * 4 <= cells.len() {
        let one = data.pieces.len() == 1;
        let atom = |piece, point| match one {
            true => Atom::Point(point),
            false => Atom::Piece { piece, point },
        };
        state.atoms = gross
            .iter()
            .map(|cell| atom(cell.piece, cell.point))
            .collect();
    }
    state
}

/// Whether most values of a piece are a slip of one kind; of a way round, where only those can be.
fn whole_piece(data: &Data, state: &State, piece: usize) -> Option<(Slip, bool)> {
    let kinds = [
        (Slip::CmAsInch, false),
        (Slip::InchAsCm, false),
        (Slip::TenTimes, false),
        (Slip::Tenth, false),
        (Slip::Doubled, true),
        (Slip::Halved, true),
    ];
    // Of a few millimetres twice as many are soon measured.
    const LEAST: f64 = 4.0;
    let cells = (0..data.points.len()).filter_map(|point| state.cell(data, piece, point));
    let cells: Vec<_> = cells.filter(|cell| cell.spec >= LEAST).collect();
    kinds.into_iter().find(|(slip, only_round)| {
        let of_kind = cells
            .iter()
            .filter(|cell| !only_round || data.round[cell.point]);
        let (mut all, mut near) = (0, 0);
        for cell in of_kind {
            let back = taken_back(*slip, cell.spec + cell.d);
            all += 1;
            near += usize::from((back - cell.spec).abs() <= 0.12 * cell.spec);
        }
        all >= ENOUGH && near * 5 >= all * 3
    })
}

/// From a beginning to where no single step costs less.
fn settle(data: &Data, criterion: &Criterion, start: Weighed) -> Option<Weighed> {
    let mut at = start;
    let mut offer = Offer::new(data, &at.state.sizes, &at.cells);
    for _ in 0..MOST_STEPS {
        if offer.sizes != at.state.sizes {
            offer = Offer::new(data, &at.state.sizes, &at.cells);
        }
        let steps = [
            add(data, criterion, &offer, &at),
            repairs(data, criterion, &at),
            remove(data, criterion, &at),
            replace(data, criterion, &offer, &at),
        ];
        let steps = steps.into_iter().flatten();
        let best = steps.min_by(|one, other| one.cost.total_cmp(&other.cost));
        match best {
            Some(best) if best.cost < at.cost - 1e-9 => at = best,
            _ => break,
        }
    }
    // Amounts may have shrunk below what deserves a name while others were found.
    let amounts = at.fit.amounts.iter().zip(&at.state.atoms);
    let worth = amounts.filter(|(amount, atom)| atom.is_worth(data, &at.cells, **amount));
    let atoms: Vec<Atom> = worth.map(|(_, atom)| *atom).collect();
    if atoms.len() == at.state.atoms.len() {
        return Some(at);
    }
    let state = State {
        atoms,
        ..at.state.clone()
    };
    // Without work left, small amounts are told rather than nothing.
    criterion.weigh(data, &state).or(Some(at))
}

/// The best atom to add.
fn add(data: &Data, criterion: &Criterion, offer: &Offer, at: &Weighed) -> Option<Weighed> {
    let mut state = at.state.clone();
    state.atoms.push(best_atom(data, criterion, offer, at)?);
    criterion.weigh(data, &state)
}

fn best_atom(data: &Data, criterion: &Criterion, offer: &Offer, at: &Weighed) -> Option<Atom> {
    let before = criterion.misfit(at.fit.squares);
    let gains = offer.atoms.iter().filter_map(|(atom, column)| {
        let (gain, amount) = at.fit.gain(column)?;
        // What is left can be less than nothing by a rounding.
        let after = criterion.misfit((at.fit.squares - gain).max(0.0));
        let cheaper = before - after - criterion.claim(*atom, amount);
        (cheaper > 0.0 && atom.is_worth(data, &at.cells, amount)).then_some((cheaper, *atom))
    });
    let best = gains.max_by(|one, other| one.0.total_cmp(&other.0));
    best.map(|(_, atom)| atom)
}

/// The best atom to do without.
fn remove(data: &Data, criterion: &Criterion, at: &Weighed) -> Option<Weighed> {
    without_one(at)
        .filter_map(|state| criterion.weigh(data, &state))
        .min_by(|one, other| one.cost.total_cmp(&other.cost))
}

fn without_one(at: &Weighed) -> impl Iterator<Item = State> + '_ {
    (0..at.state.atoms.len()).map(|gone| {
        let mut state = at.state.clone();
        state.atoms.remove(gone);
        state
    })
}

/// The best atom to put in the place of one that is there, or of all that were said of one point.
fn replace(data: &Data, criterion: &Criterion, offer: &Offer, at: &Weighed) -> Option<Weighed> {
    let exchanged = without_one(at).filter_map(|state| {
        let less = criterion.weigh(data, &state)?;
        add(data, criterion, offer, &less)
    });
    let merged = merged(data, at);
    let merged = merged
        .iter()
        .filter_map(|state| criterion.weigh(data, state));
    exchanged
        .chain(merged)
        .min_by(|one, other| one.cost.total_cmp(&other.cost))
}

/// States that say once of a point what was said of several pieces.
fn merged(data: &Data, at: &Weighed) -> Vec<State> {
    let atoms = &at.state.atoms;
    let count = |point: usize| {
        let same = atoms.iter().filter(|atom| is_piece(atom, point));
        same.count()
    };
    let points = (0..data.points.len()).filter(|point| count(*point) >= 2);
    let states = points.flat_map(|point| {
        let merged = |atom: Atom| {
            let mut state = at.state.clone();
            state.atoms.retain(|atom| !is_piece(atom, point));
            state.atoms.push(atom);
            state
        };
        [merged(Atom::Point(point)), merged(Atom::PointGrade(point))]
    });
    states.collect()
}

fn is_piece(atom: &Atom, of: usize) -> bool {
    matches!(atom, Atom::Piece { point, .. } if *point == of)
}
