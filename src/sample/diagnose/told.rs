//! A reading of the measurements, told as findings.

use std::collections::BTreeMap;

use crate::sample::ask::Slip;
use crate::sample::contract::{Contract, Piece};
use crate::sample::finding::{Cause, Figures, Finding, Lack, Repeatability, RepeatedBy};
use crate::sample::ratio::{Factor, Percent};

use super::Again;
use super::atom::Atom;
use super::data::{Data, ENOUGH, Scope, length};
use super::fit::{Weighed, median};
use super::state::{Cell, Fix, State};

pub struct Told<'a> {
    data: &'a Data,
    pieces: &'a [Piece],
    reading: &'a Weighed,
}

impl<'a> Told<'a> {
    pub fn new(data: &'a Data, pieces: &'a [Piece], reading: &'a Weighed) -> Told<'a> {
        Told {
            data,
            pieces,
            reading,
        }
    }

    /// What was written wrong, then wrong labels, then what is wrong with the garment; of each the
    /// one that rests on most values first.
    pub fn findings(&self) -> Vec<Finding> {
        let mut all = self.entries();
        all.extend(self.labels());
        let mut garment = self.garment();
        garment.sort_by_key(|finding| std::cmp::Reverse(finding.figures.readings));
        all.extend(garment);
        all
    }

    /// Slips, those of one kind on one piece together, and swapped points.
    fn entries(&self) -> Vec<Finding> {
        let state = &self.reading.state;
        let mut slips: BTreeMap<(usize, &str), (Slip, Vec<usize>)> = BTreeMap::new();
        for (piece, (slip, only_round)) in &state.whole {
            let points = 0..self.data.points.len();
            let points = points.filter(|point| {
                (!only_round || self.data.round[*point])
                    && self.data.pieces[*piece].values[*point].is_some()
            });
            slips.insert((*piece, slip.name()), (*slip, points.collect()));
        }
        let mut swapped = Vec::new();
        for ((piece, point), fix) in &state.fixes {
            match fix {
                Fix::Slip(slip) => {
                    let entry = slips.entry((*piece, slip.name()));
                    entry.or_insert((*slip, Vec::new())).1.push(*point);
                }
                Fix::Swapped(other) if point < other => {
                    let cause = Cause::SwappedPoints;
                    swapped.push(self.entry(cause, *piece, &[*point, *other], None));
                }
                Fix::Swapped(_) => {}
            }
        }
        let slips = slips.into_iter().map(|((piece, _), (slip, points))| {
            self.entry(Cause::of_slip(slip), piece, &points, Some(slip))
        });
        slips.chain(swapped).collect()
    }

    fn entry(&self, cause: Cause, piece: usize, points: &[usize], slip: Option<Slip>) -> Finding {
        let given = State::new(self.data);
        let cells = points
            .iter()
            .filter_map(|point| given.cell(self.data, piece, *point));
        let mut before: Vec<f64> = cells.map(|cell| cell.d.abs()).collect();
        let mut left = self.left(|cell| cell.piece == piece && points.contains(&cell.point));
        Finding {
            points: points
                .iter()
                .map(|point| self.data.points[*point].clone())
                .collect(),
            slip,
            figures: Figures {
                readings: points.len(),
                same_side: points.len(),
                before: length(median(&mut before)),
                left: length(median(&mut left)),
                ..Figures::default()
            },
            ..self.about(cause, [piece])
        }
    }

    /// Pieces that are another size than they are said to be.
    fn labels(&self) -> Vec<Finding> {
        let state = &self.reading.state;
        let said = |piece: usize| self.data.pieces[piece].size;
        let wrong = |piece: &usize| state.sizes[*piece] != said(*piece);
        let pieces: Vec<usize> = (0..self.pieces.len()).filter(wrong).collect();
        let swap = |one: usize, other: usize| {
            state.sizes[one] == said(other) && state.sizes[other] == said(one)
        };
        let mut told = Vec::new();
        let mut findings = Vec::new();
        for piece in &pieces {
            if told.contains(piece) {
                continue;
            }
            let other = pieces
                .iter()
                .find(|other| **other > *piece && swap(*piece, **other));
            told.extend(other);
            let both = [*piece].into_iter().chain(other.copied());
            let cause = match other {
                Some(_) => Cause::SwappedSizes,
                None => Cause::WrongLabel,
            };
            findings.push(self.label(cause, &both.collect::<Vec<_>>()));
        }
        findings
    }

    fn label(&self, cause: Cause, pieces: &[usize]) -> Finding {
        let state = &self.reading.state;
        let mut as_said = state.clone();
        for piece in pieces {
            as_said.sizes[*piece] = self.data.pieces[*piece].size;
        }
        let of = |cells: Vec<Cell>| {
            let own = cells
                .into_iter()
                .filter(|cell| pieces.contains(&cell.piece));
            own.map(|cell| cell.d.abs()).collect::<Vec<_>>()
        };
        let mut before = of(as_said.cells(self.data));
        let mut left = self.left(|cell| pieces.contains(&cell.piece));
        let size = |number: usize| Some(self.data.sizes[number].clone());
        Finding {
            size: size(self.data.pieces[pieces[0]].size),
            really: size(state.sizes[pieces[0]]),
            figures: Figures {
                readings: before.len(),
                same_side: before.len(),
                before: length(median(&mut before)),
                left: length(median(&mut left)),
                ..Figures::default()
            },
            ..self.about(cause, pieces.iter().copied())
        }
    }

    fn garment(&self) -> Vec<Finding> {
        let fit = &self.reading.fit;
        let state = &self.reading.state;
        let unsteady = self.unsteady_points();
        let places = unsteady.iter();
        let mut findings: Vec<Finding> = places
            .map(|(size, point)| self.unsteady(*size, *point))
            .collect();
        for (atom, amount) in state.atoms.iter().zip(&fit.amounts) {
            // What the pieces have in common means nothing where they do not agree.
            let told = match atom {
                Atom::Piece { piece, point } => unsteady.contains(&(state.sizes[*piece], *point)),
                Atom::Point(point) => unsteady.iter().any(|(_, it)| it == point),
                _ => false,
            };
            if !told {
                findings.push(self.atom(*atom, *amount));
            }
        }
        findings
    }

    /// By size and point, where two pieces of a size or more are off, each in its own way: that is
    /// no longer one piece.
    fn unsteady_points(&self) -> Vec<(usize, usize)> {
        let state = &self.reading.state;
        let mut counts: BTreeMap<(usize, usize), usize> = BTreeMap::new();
        for atom in &state.atoms {
            if let Atom::Piece { piece, point } = atom {
                *counts.entry((state.sizes[*piece], *point)).or_default() += 1;
            }
        }
        counts.retain(|_, count| *count >= 2);
        counts.into_keys().collect()
    }

    fn unsteady(&self, size: usize, point: usize) -> Finding {
        let cells = self.reading.cells.iter();
        let cells: Vec<&Cell> = cells
            .filter(|cell| cell.size == size && cell.point == point)
            .collect();
        let mut before: Vec<f64> = cells.iter().map(|cell| cell.d.abs()).collect();
        let pieces = cells.iter().map(|cell| cell.piece);
        Finding {
            points: vec![self.data.points[point].clone()],
            size: Some(self.data.sizes[size].clone()),
            figures: Figures {
                readings: cells.len(),
                same_side: cells.iter().filter(|cell| cell.d > 0.0).count(),
                before: length(median(&mut before)),
                ..Figures::default()
            },
            ..self.about(Cause::Unsteady, pieces)
        }
    }

    fn atom(&self, atom: Atom, amount: f64) -> Finding {
        let (data, reading) = (self.data, self.reading);
        let touched = reading.cells.iter().zip(&reading.fit.left);
        let touched = touched.filter(|(cell, _)| atom.at(data, cell) != 0.0);
        let touched: Vec<(&Cell, f64)> = touched.map(|(cell, left)| (cell, *left)).collect();
        // What this atom and the noise make of each value.
        let own = touched.iter().map(|(cell, left)| {
            let moved = atom.at(data, cell) * amount;
            (moved + left, moved)
        });
        let same_side = own.clone().filter(|(d, moved)| d * moved > 0.0).count();
        let mut before: Vec<f64> = own.map(|(d, _)| d.abs()).collect();
        let mut left: Vec<f64> = touched.iter().map(|(_, left)| left.abs()).collect();
        let mut sizes: Vec<usize> = touched.iter().map(|(cell, _)| cell.size).collect();
        sizes.sort_unstable();
        sizes.dedup();
        let share = || Some(Percent::of_share(amount));
        let by = || Some(length(amount));
        let (cause, scope, by, share, correction) = match atom {
            Atom::Shift(scope) => (
                Cause::ProportionalShift,
                Some(scope),
                None,
                share(),
                Factor::of_share(amount),
            ),
            Atom::Constant(scope) => (Cause::ConstantError, Some(scope), by(), None, None),
            Atom::Grade(scope) => (Cause::Grading, Some(scope), None, share(), None),
            Atom::Size { scope, .. } => (Cause::SizePattern, Some(scope), by(), None, None),
            Atom::Point(_) if sizes.len() > 1 => (Cause::BasePattern, None, by(), None, None),
            Atom::Point(_) => (Cause::SinglePoint, None, by(), None, None),
            Atom::PointGrade(_) => (Cause::Grading, None, None, share(), None),
            Atom::Piece { .. } => (Cause::OnePiece, None, by(), None, None),
        };
        let scope: Option<&Scope> = scope.map(|number: usize| &data.scopes[number]);
        let one_size = match sizes[..] {
            [size] => Some(data.sizes[size].clone()),
            _ => None,
        };
        let points = (0..data.points.len())
            .filter(|point| touched.iter().any(|(cell, _)| cell.point == *point));
        Finding {
            fabric: scope
                .and_then(|it| it.fabric)
                .map(|it| data.fabrics[it].clone()),
            along: scope.and_then(|it| it.along),
            points: points.map(|point| data.points[point].clone()).collect(),
            size: one_size,
            figures: Figures {
                readings: touched.len(),
                same_side,
                by,
                share,
                correction,
                left: length(median(&mut left)),
                before: length(median(&mut before)),
            },
            ..self.about(cause, touched.iter().map(|(cell, _)| cell.piece))
        }
    }

    /// A finding without its place.
    fn about(&self, cause: Cause, pieces: impl IntoIterator<Item = usize>) -> Finding {
        let mut pieces: Vec<usize> = pieces.into_iter().collect();
        pieces.sort_unstable();
        pieces.dedup();
        Finding {
            cause,
            fabric: None,
            along: None,
            points: Vec::new(),
            size: None,
            really: None,
            pieces: pieces
                .into_iter()
                .map(|it| self.pieces[it].id.clone())
                .collect(),
            slip: None,
            figures: Figures::default(),
        }
    }

    /// What the reading leaves of these cells, as magnitudes.
    fn left(&self, of: impl Fn(&Cell) -> bool) -> Vec<f64> {
        let cells = self.reading.cells.iter().zip(&self.reading.fit.left);
        cells
            .filter(|(cell, _)| of(cell))
            .map(|(_, left)| left.abs())
            .collect()
    }

    /// Values that are out by what was measured, and that the reading does not bring in.
    fn unexplained(&self) -> Vec<&Cell> {
        let reading = self.reading;
        let given = State::new(self.data);
        let is_out = |cell: &Cell, d: f64| {
            // A tenth of a micrometre: what rounding may do.
            d.abs() > self.data.tolerance(cell.size, cell.point, d) + 1e-5
        };
        let cells = reading.cells.iter().zip(&reading.fit.left);
        let out = cells.filter(|(cell, left)| {
            let before = given.cell(self.data, cell.piece, cell.point);
            let was_out = before.is_some_and(|before| is_out(&before, before.d));
            let explained = cell.d - **left;
            let put_right = !is_out(cell, cell.d);
            was_out && !put_right && (explained == 0.0 || is_out(cell, **left))
        });
        out.map(|(cell, _)| cell).collect()
    }

    pub fn again(&self) -> Vec<Again> {
        let cells = self.unexplained().into_iter();
        let again = cells.map(|cell| Again {
            piece: self.pieces[cell.piece].id.clone(),
            point: self.data.points[cell.point].clone(),
        });
        again.collect()
    }

    pub fn lacks(&self, contract: &Contract) -> Vec<Lack> {
        let unexplained = self.unexplained();
        let mut lacks = Vec::new();
        for cell in &unexplained {
            let place = &contract.points[cell.point];
            let groups = &self.data.scopes[..self.data.groups];
            let known = groups.iter().any(|scope| scope.members[cell.point]);
            let alike = contract.points.iter().enumerate().filter(|(point, it)| {
                let measured = self.reading.cells.iter().any(|cell| cell.point == *point);
                measured && it.fabric == place.fabric && it.along == place.along
            });
            let lack = Lack::FewPoints {
                fabric: place.fabric.clone(),
                along: place.along,
                have: alike.count(),
                need: ENOUGH,
            };
            if !known && place.along.is_some() && !lacks.contains(&lack) {
                lacks.push(lack);
            }
        }
        let findings = !self.reading.state.atoms.is_empty();
        if findings || !unexplained.is_empty() {
            let sizes = &self.reading.state.sizes;
            let size = || self.data.sizes[sizes[0]].clone();
            if sizes.iter().all(|size| *size == sizes[0]) {
                lacks.push(Lack::OneSize { size: size() });
            }
            if sizes.len() == 1 {
                lacks.push(Lack::OnePiece { size: size() });
            }
        }
        lacks
    }

    /// The scatter of a single value from points that several pieces of one size have.
    pub fn by_pieces(&self) -> Option<Repeatability> {
        let mut values: BTreeMap<(usize, usize), Vec<f64>> = BTreeMap::new();
        for (cell, left) in self.reading.cells.iter().zip(&self.reading.fit.left) {
            values
                .entry((cell.size, cell.point))
                .or_default()
                .push(*left);
        }
        let mut gaps = Vec::new();
        let mut points = 0;
        for pieces in values.values().filter(|pieces| pieces.len() > 1) {
            points += 1;
            for (number, one) in pieces.iter().enumerate() {
                gaps.extend(pieces[number + 1..].iter().map(|other| (one - other).abs()));
            }
        }
        let deviation = 1.4826 * median(&mut gaps) / 2.0_f64.sqrt();
        (points >= super::ENOUGH_PAIRS).then(|| Repeatability {
            deviation: length(deviation),
            source: RepeatedBy::Pieces(points),
        })
    }
}
