//! What may be wrong, each as one column of a regression: how much every measurement moves by it.

use super::data::Data;
use super::state::Cell;

/// A way of going wrong, with its place: a scope, size, point or piece by number.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Atom {
    /// Every value of the scope's points moves by the same share of itself.
    Shift(usize),
    /// Every value of the scope's points moves by the same length.
    Constant(usize),
    /// Every step from the base size is the same share too large or too small.
    Grade(usize),
    /// In one size, every value of the scope's points moves by the same length.
    Size { size: usize, scope: usize },
    /// One point moves by the same length in every piece.
    Point(usize),
    /// One point's steps from the base size.
    PointGrade(usize),
    /// One point of one piece.
    Piece { piece: usize, point: usize },
}

/// The least share that is called a shift: exchange of less is lost in sewing. Our own choice, as
/// are the two that follow.
const LEAST_SHARE: f64 = 0.01;
/// The least constant, in centimetres: twice the repeatability that is assumed of a tape.
const LEAST_CONSTANT: f64 = 0.3;
/// The least share of the steps.
const LEAST_GRADE: f64 = 0.1;
/// Steps that are off by more than twice themselves were not graded wrong: something else is.
const MOST_GRADE: f64 = 2.0;

impl Atom {
    /// How much this measurement moves for each unit of what is wrong.
    pub fn at(self, data: &Data, cell: &Cell) -> f64 {
        let member = |scope: usize| data.scopes[scope].members[cell.point];
        let reached = |scope: usize| member(scope) && data.scopes[scope].reaches(cell.spec);
        match self {
            Atom::Shift(scope) if member(scope) => cell.spec,
            Atom::Constant(scope) if reached(scope) => 1.0,
            Atom::Grade(scope) if member(scope) => data.offset(cell.size, cell.point),
            Atom::Size { size, scope } if size == cell.size && reached(scope) => 1.0,
            Atom::Point(point) if point == cell.point => 1.0,
            Atom::PointGrade(point) if point == cell.point => data.offset(cell.size, cell.point),
            Atom::Piece { piece, point } if (piece, point) == (cell.piece, cell.point) => 1.0,
            _ => 0.0,
        }
    }

    /// Whether so much of it deserves a name. What stays within the tolerance of a single point is
    /// nobody's fault.
    pub fn is_worth(self, data: &Data, cells: &[Cell], amount: f64) -> bool {
        let beyond = |cell: &Cell| {
            let moved = self.at(data, cell) * amount;
            moved.abs() > data.tolerance(cell.size, cell.point, moved)
        };
        match self {
            Atom::Shift(_) => amount.abs() >= LEAST_SHARE,
            Atom::Constant(_) | Atom::Size { .. } => amount.abs() >= LEAST_CONSTANT,
            Atom::Grade(_) => (LEAST_GRADE..=MOST_GRADE).contains(&amount.abs()),
            Atom::PointGrade(_) if amount.abs() > MOST_GRADE => false,
            Atom::Point(_) | Atom::PointGrade(_) | Atom::Piece { .. } => cells
                .iter()
                .any(|cell| self.at(data, cell) != 0.0 && beyond(cell)),
        }
    }

    /// The one cell that it moves, when it can move no other.
    pub fn only(self, data: &Data, cells: &[Cell]) -> Option<usize> {
        let pieces = data.pieces.len();
        let only = |cell: &Cell| self.is_at(cell.piece, cell.point, pieces);
        match self {
            Atom::Point(_) | Atom::Piece { .. } => cells.iter().position(only),
            _ => None,
        }
    }

    /// Whether it moves only this point of this piece, among whatever else.
    pub fn is_at(self, piece: usize, point: usize, pieces: usize) -> bool {
        match self {
            Atom::Point(at) => at == point && pieces == 1,
            Atom::Piece { .. } => self == Atom::Piece { piece, point },
            _ => false,
        }
    }
}

/// Everything that these measurements could show, with the sizes that the pieces are taken to be.
/// Steps need more than one size, and to tell them from one size's own pattern more than two.
pub fn candidates(data: &Data, sizes: &[usize]) -> Vec<Atom> {
    let mut worn: Vec<usize> = sizes.to_vec();
    worn.sort_unstable();
    worn.dedup();
    let several = worn.len() >= 2;
    let mut atoms: Vec<Atom> = Vec::new();
    let scopes = || 0..data.scopes.len();
    // A fabric whose points have no direction still shrinks, and a garment can as a whole: washed,
    // pressed, or cut from a pattern that was copied in another size.
    let shrinks = |scope: &usize| {
        let it = &data.scopes[*scope];
        let all_fabrics = it.fabric.is_none() && it.along.is_some();
        *scope < data.groups || all_fabrics || it.fabric.is_some() && data.is_undirected(it)
    };
    atoms.extend(scopes().filter(shrinks).map(Atom::Shift));
    atoms.extend(scopes().map(Atom::Constant));
    if several {
        atoms.extend(scopes().map(Atom::Grade));
    }
    if worn.len() >= 3 {
        for size in &worn {
            let wider = scopes().filter(|scope| data.scopes[*scope].fabric.is_none());
            atoms.extend(wider.map(|scope| Atom::Size { size: *size, scope }));
        }
    }
    let twice = |size: &usize| sizes.iter().filter(|it| *it == size).count() >= 2;
    let off_base = || worn.iter().filter(|size| **size != data.base);
    let point_grades = worn.len() >= 3 || several && off_base().any(twice);
    for point in 0..data.points.len() {
        if data.pieces.iter().all(|it| it.values[point].is_none()) {
            continue;
        }
        atoms.push(Atom::Point(point));
        let graded = off_base().any(|size| data.offset(*size, point) != 0.0);
        if point_grades && graded {
            atoms.push(Atom::PointGrade(point));
        }
        if data.pieces.len() > 1 {
            let pieces = 0..data.pieces.len();
            let measured = pieces.filter(|piece| data.pieces[*piece].values[point].is_some());
            atoms.extend(measured.map(|piece| Atom::Piece { piece, point }));
        }
    }
    atoms
}

/// Where a column is not zero, and what stands there.
pub type Column = Vec<(usize, f64)>;

/// The candidates with their columns, which hang on the sizes of the pieces alone.
pub struct Offer {
    pub sizes: Vec<usize>,
    pub atoms: Vec<(Atom, Column)>,
}

impl Offer {
    pub fn new(data: &Data, sizes: &[usize], cells: &[Cell]) -> Offer {
        let atoms = candidates(data, sizes).into_iter();
        let atoms = atoms.map(|atom| {
            let column = cells.iter().enumerate();
            let column = column.map(|(row, cell)| (row, atom.at(data, cell)));
            (atom, column.filter(|(_, value)| *value != 0.0).collect())
        });
        Offer {
            sizes: sizes.to_vec(),
            atoms: atoms.collect(),
        }
    }
}
