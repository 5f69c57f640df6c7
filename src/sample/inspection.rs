//! Inspecting a finished lot: how many pieces to draw, and how many bad ones let it pass.
//!
//! The tables are those of MIL-STD-105E (10 May 1989), which ISO 2859-1 and ANSI Z1.4 share: Table I
//! for the code letters, Table II-A for single sampling under normal inspection. Where a cell of
//! Table II-A holds an arrow, the plan that it leads to counts with its own sample size.
//!
//! A critical defect has no acceptable level: one is enough to reject the lot.

pub mod curve;

use crate::spec::table::Status;

/// How much is looked at for a lot of one size: S-1 the least, III the most; II is the usual one.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Level {
    S1,
    S2,
    S3,
    S4,
    I,
    II,
    III,
}

impl Level {
    pub const ALL: [Level; 7] = [
        Level::S1,
        Level::S2,
        Level::S3,
        Level::S4,
        Level::I,
        Level::II,
        Level::III,
    ];

    /// As the table heads its columns.
    pub const fn name(self) -> &'static str {
        match self {
            Level::S1 => "S-1",
            Level::S2 => "S-2",
            Level::S3 => "S-3",
            Level::S4 => "S-4",
            Level::I => "I",
            Level::II => "II",
            Level::III => "III",
        }
    }

    pub fn from_name(name: &str) -> Option<Level> {
        Level::ALL.into_iter().find(|level| level.name() == name)
    }
}

/// Acceptable quality level: the share of defective pieces, in percent, that is let pass as a rule.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Aql {
    A0_65,
    A1_0,
    A1_5,
    A2_5,
    A4_0,
    A6_5,
}

impl Aql {
    pub const ALL: [Aql; 6] = [
        Aql::A0_65,
        Aql::A1_0,
        Aql::A1_5,
        Aql::A2_5,
        Aql::A4_0,
        Aql::A6_5,
    ];

    /// As the table heads its columns.
    pub const fn name(self) -> &'static str {
        match self {
            Aql::A0_65 => "0.65",
            Aql::A1_0 => "1.0",
            Aql::A1_5 => "1.5",
            Aql::A2_5 => "2.5",
            Aql::A4_0 => "4.0",
            Aql::A6_5 => "6.5",
        }
    }

    pub fn from_name(name: &str) -> Option<Aql> {
        Aql::ALL.into_iter().find(|aql| aql.name() == name)
    }

    /// How far this column was checked. The columns 1.0, 2.5 and 4.0 were compared cell by cell
    /// with a published copy; the others follow from the regularity that those three show, and
    /// agree with the table as remembered.
    pub const fn status(self) -> Status {
        match self {
            Aql::A1_0 | Aql::A2_5 | Aql::A4_0 => Status::Verified,
            Aql::A0_65 | Aql::A1_5 | Aql::A6_5 => Status::FromMemory,
        }
    }
}

/// The code letters in the table's order, each with its sample size. There is no I and no O.
const LETTERS: [(char, u32); 16] = [
    ('A', 2),
    ('B', 3),
    ('C', 5),
    ('D', 8),
    ('E', 13),
    ('F', 20),
    ('G', 32),
    ('H', 50),
    ('J', 80),
    ('K', 125),
    ('L', 200),
    ('M', 315),
    ('N', 500),
    ('P', 800),
    ('Q', 1250),
    ('R', 2000),
];

/// Table I: the largest lot of each line, with the letters of [`Level::ALL`].
const CODE_LETTERS: [(u32, &str); 15] = [
    (8, "AAAAAAB"),
    (15, "AAAAABC"),
    (25, "AABBBCD"),
    (50, "ABBCCDE"),
    (90, "BBCCCEF"),
    (150, "BBCDDFG"),
    (280, "BCDEEGH"),
    (500, "BCDEFHJ"),
    (1200, "CCEFGJK"),
    (3200, "CDEGHKL"),
    (10_000, "CDFGJLM"),
    (35_000, "CDFHKMN"),
    (150_000, "DEGJLNP"),
    (500_000, "DEGJMPQ"),
    (u32::MAX, "DEHKNQR"),
];

/// What a cell of Table II-A holds.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Cell {
    /// The acceptance number.
    Plan(u32),
    /// Use the first plan below.
    Down,
    /// Use the first plan above.
    Up,
}

/// The cell of a code letter and a level. The table repeats itself along its diagonals: a step to
/// the next letter changes the cell as a step to the next level does.
///
/// `None` for what is no code letter.
pub fn cell(letter: char, aql: Aql) -> Option<Cell> {
    let row = LETTERS.iter().position(|(other, _)| *other == letter)?;
    Some(cell_at(row, aql))
}

fn cell_at(row: usize, aql: Aql) -> Cell {
    match row + aql as usize {
        0..=4 | 7 => Cell::Down,
        5 => Cell::Plan(0),
        8 => Cell::Plan(1),
        9 => Cell::Plan(2),
        10 => Cell::Plan(3),
        11 => Cell::Plan(5),
        12 => Cell::Plan(7),
        13 => Cell::Plan(10),
        14 => Cell::Plan(14),
        15 => Cell::Plan(21),
        _ => Cell::Up,
    }
}

/// What to draw from a lot, and when it passes.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Plan {
    pub lot: u32,
    /// The letter that lot and level lead to, by Table I.
    pub code: char,
    /// The letter of the plan that is used: another one where an arrow led away.
    pub letter: char,
    /// How many pieces to look at.
    pub sample: u32,
    /// So many defective pieces at most, and the lot passes.
    pub accept: u32,
    /// So many, and it is rejected.
    pub reject: u32,
    /// The plan asks for as many pieces as there are, or more: every piece is looked at.
    pub whole_lot: bool,
    /// How far the column of the table was checked.
    pub status: Status,
}

/// The letter that Table I gives a lot; the smallest line serves for a single piece too. `None` for
/// an empty lot.
pub fn code_letter(lot: u32, level: Level) -> Option<char> {
    if lot == 0 {
        return None;
    }
    let (_, letters) = CODE_LETTERS.iter().find(|(most, _)| lot <= *most)?;
    letters.chars().nth(level as usize)
}

/// The plan for a lot. `None` for an empty one.
pub fn plan(lot: u32, level: Level, aql: Aql) -> Option<Plan> {
    let code = code_letter(lot, level)?;
    let mut row = LETTERS.iter().position(|(letter, _)| *letter == code)?;
    // Every column has a plan, and no two arrows of it face each other, so that this ends.
    let accept = loop {
        match cell_at(row, aql) {
            Cell::Plan(accept) => break accept,
            Cell::Down => row += 1,
            Cell::Up => row -= 1,
        }
    };
    let (letter, sample) = LETTERS[row];
    Some(Plan {
        lot,
        code,
        letter,
        sample: sample.min(lot),
        accept,
        reject: accept + 1,
        whole_lot: sample >= lot,
        status: aql.status(),
    })
}

impl Plan {
    pub fn passes(&self, defective: u32) -> bool {
        defective <= self.accept
    }
}

/// What was found in a sample.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq)]
pub struct Found {
    /// Pieces with a critical defect, wherever in the lot they were met.
    pub critical: u32,
    /// Pieces with a major defect.
    pub major: u32,
    /// Pieces with a minor defect.
    pub minor: u32,
}

/// Why a lot is rejected.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Rejection {
    /// One is enough.
    Critical {
        found: u32,
    },
    Major {
        found: u32,
        accept: u32,
    },
    Minor {
        found: u32,
        accept: u32,
    },
}

/// Everything that rejects the lot; nothing, and it is accepted. Each plan counts the pieces of its
/// own sample.
pub fn rejections(major: &Plan, minor: &Plan, found: Found) -> Vec<Rejection> {
    let critical = (found.critical > 0).then_some(Rejection::Critical {
        found: found.critical,
    });
    let of_major = (!major.passes(found.major)).then_some(Rejection::Major {
        found: found.major,
        accept: major.accept,
    });
    let of_minor = (!minor.passes(found.minor)).then_some(Rejection::Minor {
        found: found.minor,
        accept: minor.accept,
    });
    [critical, of_major, of_minor]
        .into_iter()
        .flatten()
        .collect()
}

#[cfg(test)]
mod tests;
