//! A way to read the measurements: which entries were slips, which size each piece really is, and
//! what went wrong with the garment.

use std::collections::BTreeMap;

use super::atom::Atom;
use super::data::{Data, taken_back};
use crate::sample::ask::Slip;

/// One measurement as a state reads it, in centimetres.
#[derive(Debug, Clone, Copy)]
pub struct Cell {
    pub piece: usize,
    pub point: usize,
    /// The size that the piece is taken to be.
    pub size: usize,
    pub spec: f64,
    /// What was measured less what the chart asks for.
    pub d: f64,
}

/// How an entry is put right.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Fix {
    Slip(Slip),
    /// It belongs to this other point, whose value stands here.
    Swapped(usize),
}

#[derive(Debug, Clone, PartialEq)]
pub struct State {
    /// The size that each piece is taken to be.
    pub sizes: Vec<usize>,
    /// By piece and point. Of two that are swapped, both.
    pub fixes: BTreeMap<(usize, usize), Fix>,
    /// Pieces whose every value, or every value of a way round, is a slip of one kind.
    pub whole: BTreeMap<usize, (Slip, bool)>,
    pub atoms: Vec<Atom>,
}

impl State {
    /// As the measurements were given.
    pub fn new(data: &Data) -> State {
        State {
            sizes: data.pieces.iter().map(|piece| piece.size).collect(),
            fixes: BTreeMap::new(),
            whole: BTreeMap::new(),
            atoms: Vec::new(),
        }
    }

    /// What was measured, put right.
    pub fn value(&self, data: &Data, piece: usize, point: usize) -> Option<f64> {
        let read = |point: usize| {
            let value = data.pieces[piece].values[point]?;
            Some(match self.whole.get(&piece) {
                Some((slip, only_round)) if !only_round || data.round[point] => {
                    taken_back(*slip, value)
                }
                _ => value,
            })
        };
        match self.fixes.get(&(piece, point)) {
            Some(Fix::Slip(slip)) => read(point).map(|value| taken_back(*slip, value)),
            Some(Fix::Swapped(other)) => read(*other),
            None => read(point),
        }
    }

    /// The measurement of one point, where there is one and the chart has it.
    pub fn cell(&self, data: &Data, piece: usize, point: usize) -> Option<Cell> {
        let size = self.sizes[piece];
        let spec = data.spec(size, point)?;
        let d = self.value(data, piece, point)? - spec;
        Some(Cell {
            piece,
            point,
            size,
            spec,
            d,
        })
    }

    /// Piece by piece, point by point.
    pub fn cells(&self, data: &Data) -> Vec<Cell> {
        let all = (0..data.pieces.len())
            .flat_map(|piece| (0..data.points.len()).map(move |point| (piece, point)));
        all.filter_map(|(piece, point)| self.cell(data, piece, point))
            .collect()
    }

    /// How many pieces are another size than they are said to be.
    pub fn relabelled(&self, data: &Data) -> usize {
        let pairs = self.sizes.iter().zip(&data.pieces);
        pairs.filter(|(size, piece)| **size != piece.size).count()
    }

    /// How many slips and pairs of swapped points.
    pub fn fixed(&self) -> (usize, usize) {
        let is_slip = |fix: &&Fix| matches!(fix, Fix::Slip(_));
        let slips = self.fixes.values().filter(is_slip).count();
        (slips + self.whole.len(), (self.fixes.len() - slips) / 2)
    }

    /// Drops what was said of one point of one piece alone.
    pub fn forget(&mut self, piece: usize, point: usize, pieces: usize) {
        self.atoms.retain(|atom| !atom.is_at(piece, point, pieces));
    }
}
