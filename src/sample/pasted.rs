//! Measured pieces read from a sheet: which cell is whose. Nothing is guessed that the sheet does not
//! say: rows are told by the letter or the name of their point, columns by the number of their piece,
//! or, where neither is there, by their order when just as many are there as can be.

use std::collections::BTreeMap;

use crate::spec::ItemId;
use crate::spec::sheet::{Cell, NotASheet, Place, Separator, Sheet, parted_by};

/// A point that a row can be of.
#[derive(Debug, Clone, Copy)]
pub struct Known<'a> {
    pub id: &'a ItemId,
    pub letter: &'a str,
    pub name: &'a str,
}

/// What stands for one point of one piece.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Value {
    /// The piece's place in the list that was given.
    pub piece: usize,
    pub point: ItemId,
    pub text: String,
    pub place: Place,
}

/// What a sheet holds.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Pasted {
    /// In the order of the sheet.
    pub values: Vec<Value>,
    /// Rows with something in a piece's column whose point is not known, or was there before: where,
    /// and what the row begins with.
    pub unknown: Vec<(Place, String)>,
    /// Cells that hold no text: a date that a spreadsheet made of `1/2`, a formula without a value.
    pub unreadable: Vec<Place>,
}

/// Why nothing can be read.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Unread {
    /// No cell is the letter or the name of a point, and the rows are not just as many as the points.
    NoPoints { rows: usize, points: usize },
    /// More columns with values than pieces from the chosen one on, and none says whose it is.
    Columns { columns: usize, pieces: usize },
    /// Two columns say that they are of this piece.
    Twice { piece: u32 },
}

/// A text as a sheet: what a spreadsheet puts on the clipboard, or lines as people write them in a
/// letter, a point and its value.
///
/// Errors: as [`parted_by`] says.
pub fn sheet(text: &str, points: &[Known<'_>]) -> Result<Sheet, NotASheet> {
    if text.contains('\t') {
        return parted_by(Separator::Tab, text);
    }
    let line = |line: &str| {
        let ends = line
            .char_indices()
            .filter(|(_, c)| c.is_whitespace() || ":=;".contains(*c));
        let parted = ends.map(|(end, _)| line.split_at(end));
        let mut named = parted.filter(|(name, _)| points.iter().any(|point| is(name, point)));
        match named.next() {
            Some((name, value)) => {
                let value =
                    value.trim_start_matches(|c: char| c.is_whitespace() || ":=;".contains(c));
                format!("{name}\t{value}\n")
            }
            None => format!("{line}\n"),
        }
    };
    let lines: String = text.lines().map(line).collect();
    parted_by(Separator::Tab, &lines)
}

/// Reads a sheet. `pieces` are the numbers of the pieces in their order; columns that do not say whose
/// they are go to the pieces from the place `first` on.
pub fn read(
    sheet: &Sheet,
    points: &[Known<'_>],
    pieces: &[u32],
    first: usize,
) -> Result<Pasted, Unread> {
    let filled: Vec<usize> = (0..sheet.rows.len())
        .filter(|row| sheet.rows[*row].iter().any(|cell| *cell != Cell::Empty))
        .collect();
    let named: BTreeMap<usize, (usize, usize)> = filled
        .iter()
        .filter_map(|row| Some((*row, point_of(&sheet.rows[*row], points)?)))
        .collect();
    if named.is_empty() {
        return by_order(sheet, &filled, points, pieces, first);
    }
    let top = named.keys().next().copied().unwrap_or_default();
    let key_columns: Vec<usize> = named.values().map(|(column, _)| *column).collect();
    let columns = match told(&sheet.rows[..top], pieces)? {
        told if !told.is_empty() => told,
        _ => {
            let is_value = |column: usize| {
                named.iter().any(|(row, (_, point))| {
                    let cell = sheet.rows[*row].get(column);
                    let text = cell.and_then(Cell::text).unwrap_or_default();
                    has_digit(text) && !is(text, &points[*point])
                })
            };
            let widest = sheet.rows.iter().map(Vec::len).max().unwrap_or(0);
            let columns = (0..widest).filter(|it| !key_columns.contains(it) && is_value(*it));
            in_order(columns, pieces, first)?
        }
    };
    let mut pasted = Pasted::default();
    let mut seen = Vec::new();
    for row in filled.into_iter().filter(|row| *row >= top) {
        let point = named.get(&row).map(|(_, point)| *point);
        let point = point.filter(|point| !seen.contains(point));
        seen.extend(point);
        take(
            &mut pasted,
            sheet,
            row,
            point.map(|it| points[it].id),
            &columns,
        );
    }
    Ok(pasted)
}

/// Columns and the place of the piece that each is of.
type Columns = Vec<(usize, usize)>;

/// Nothing but values: as many rows as points.
fn by_order(
    sheet: &Sheet,
    filled: &[usize],
    points: &[Known<'_>],
    pieces: &[u32],
    first: usize,
) -> Result<Pasted, Unread> {
    if filled.len() != points.len() {
        let (rows, points) = (filled.len(), points.len());
        return Err(Unread::NoPoints { rows, points });
    }
    let widest = sheet.rows.iter().map(Vec::len).max().unwrap_or(0);
    let is_filled = |column: &usize| {
        let cells = sheet.rows.iter().filter_map(|row| row.get(*column));
        cells.into_iter().any(|cell| *cell != Cell::Empty)
    };
    let columns = in_order((0..widest).filter(is_filled), pieces, first)?;
    let mut pasted = Pasted::default();
    for (row, point) in filled.iter().zip(points) {
        take(&mut pasted, sheet, *row, Some(point.id), &columns);
    }
    Ok(pasted)
}

/// What one row has in these columns.
fn take(
    pasted: &mut Pasted,
    sheet: &Sheet,
    row: usize,
    point: Option<&ItemId>,
    columns: &[(usize, usize)],
) {
    let mut lost = false;
    for (column, piece) in columns {
        let place = place(row, *column);
        match (sheet.at(place), point) {
            (Cell::Empty, _) => {}
            (_, None) => lost = true,
            (cell, Some(point)) => match cell.text() {
                Some(text) if text.trim().is_empty() => {}
                Some(text) => pasted.values.push(Value {
                    piece: *piece,
                    point: point.clone(),
                    text: text.trim().to_owned(),
                    place,
                }),
                None => pasted.unreadable.push(place),
            },
        }
    }
    if lost {
        let cells = sheet.rows[row].iter().enumerate();
        let mut words = cells.filter_map(|(column, cell)| Some((column, cell.text()?)));
        let (column, words) = words.next().unwrap_or_default();
        pasted.unknown.push((place(row, column), words.to_owned()));
    }
}

/// The first cell that is a point's letter or name: its column, and the point's place.
fn point_of(cells: &[Cell], points: &[Known<'_>]) -> Option<(usize, usize)> {
    cells.iter().enumerate().find_map(|(column, cell)| {
        let text = cell.text()?;
        let point = points.iter().position(|point| is(text, point))?;
        Some((column, point))
    })
}

fn is(text: &str, point: &Known<'_>) -> bool {
    let text = text.trim().to_lowercase();
    !text.is_empty()
        && [point.letter, point.name]
            .iter()
            .any(|it| it.to_lowercase() == text)
}

/// The columns whose heads say the number of a piece.
fn told(heads: &[Vec<Cell>], pieces: &[u32]) -> Result<Columns, Unread> {
    let mut columns: Columns = Vec::new();
    for (column, cell) in heads.iter().flat_map(|row| row.iter().enumerate()) {
        let number = cell.text().and_then(only_number);
        let Some(piece) = number.and_then(|it| pieces.iter().position(|piece| *piece == it)) else {
            continue;
        };
        if columns.iter().any(|(_, other)| *other == piece) {
            let piece = pieces[piece];
            return Err(Unread::Twice { piece });
        }
        columns.push((column, piece));
    }
    Ok(columns)
}

/// The number of a text that holds one whole number and no other sign of a measurement.
fn only_number(text: &str) -> Option<u32> {
    if text.contains(['.', ',', '/', '%']) {
        return None;
    }
    let mut numbers = text
        .split(|c: char| !c.is_ascii_digit())
        .filter(|it| !it.is_empty());
    let number = numbers.next()?.parse().ok()?;
    numbers.next().is_none().then_some(number)
}

fn in_order(
    columns: impl Iterator<Item = usize>,
    pieces: &[u32],
    first: usize,
) -> Result<Columns, Unread> {
    let columns: Vec<usize> = columns.collect();
    let room = pieces.len().saturating_sub(first);
    if columns.len() > room {
        let columns = columns.len();
        return Err(Unread::Columns {
            columns,
            pieces: room,
        });
    }
    Ok(columns.into_iter().zip(first..).collect())
}

fn has_digit(text: &str) -> bool {
    text.chars()
        .any(|c| c.is_ascii_digit() || "¼½¾⅛⅜⅝⅞".contains(c))
}

fn place(row: usize, column: usize) -> Place {
    Place {
        row: row as u32,
        column: column as u32,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn ids() -> Vec<ItemId> {
        ["chest", "length", "cuff"].map(ItemId::new).to_vec()
    }

    fn known(ids: &[ItemId]) -> Vec<Known<'_>> {
        let names = [("A", "Chest"), ("B", "Body length"), ("C", "Cuff height")];
        let points = ids.iter().zip(names);
        points
            .map(|(id, (letter, name))| Known { id, letter, name })
            .collect()
    }

    fn of(text: &str, pieces: &[u32], first: usize) -> Result<Pasted, Unread> {
        let ids = ids();
        let sheet = sheet(text, &known(&ids)).expect("a sheet");
        read(&sheet, &known(&ids), pieces, first)
    }

    fn values(text: &str, pieces: &[u32], first: usize) -> Vec<(usize, String, String)> {
        let pasted = of(text, pieces, first).expect("values");
        assert_eq!(
            (pasted.unknown, pasted.unreadable),
            (Vec::new(), Vec::new())
        );
        let each = pasted.values.into_iter();
        each.map(|it| (it.piece, it.point.to_string(), it.text))
            .collect()
    }

    fn expected(list: &[(usize, &str, &str)]) -> Vec<(usize, String, String)> {
        let each = list.iter();
        each.map(|(piece, point, text)| (*piece, (*point).to_owned(), (*text).to_owned()))
            .collect()
    }

    #[test]
    fn rows_are_told_by_letter_or_name_in_any_order() {
        let said = expected(&[(0, "cuff", "7"), (0, "chest", "53,5")]);
        assert_eq!(values("c\t7\na\t53,5\n", &[1], 0), said);
        assert_eq!(values("CUFF HEIGHT\t7\nChest\t53,5\n", &[1], 0), said);
    }

    #[test]
    fn lines_are_read_as_people_write_them_in_a_letter() {
        let said = expected(&[
            (0, "chest", "53,5"),
            (0, "length", "70 1/2"),
            (0, "cuff", "7"),
        ]);
        assert_eq!(
            values("A 53,5\nBody length: 70 1/2\nC = 7\n", &[1], 0),
            said
        );
    }

    #[test]
    fn heads_that_name_pieces_leave_the_spec_and_the_tolerance_alone() {
        let sheet = "\t\tSpec\tTol +/-\tPiece 2\tPiece 1\nA\tChest\t53\t1\t53.4\t52.8\nB\tBody length\t70\t1\t\t70.5\n";
        let said = expected(&[
            (1, "chest", "53.4"),
            (0, "chest", "52.8"),
            (0, "length", "70.5"),
        ]);
        assert_eq!(values(sheet, &[1, 2], 0), said);
    }

    #[test]
    fn columns_without_heads_go_to_the_pieces_from_the_chosen_one_on() {
        let said = expected(&[(1, "chest", "53"), (2, "chest", "54")]);
        assert_eq!(values("A\t53\t54\n", &[1, 2, 3], 1), said);
        let many = Unread::Columns {
            columns: 2,
            pieces: 1,
        };
        assert_eq!(of("A\t53\t54\n", &[1, 2, 3], 2), Err(many));
    }

    #[test]
    fn values_alone_are_taken_in_the_order_of_the_points_when_there_is_one_for_each() {
        let said = expected(&[
            (0, "chest", "53"),
            (0, "length", "70"),
            (0, "cuff", "7 1/2"),
        ]);
        assert_eq!(values("53\n70\n7 1/2\n", &[1], 0), said);
        let short = Unread::NoPoints { rows: 2, points: 3 };
        assert_eq!(of("53\n70\n", &[1], 0), Err(short));
    }

    #[test]
    fn two_columns_of_one_piece_are_not_chosen_between() {
        let twice = Unread::Twice { piece: 2 };
        assert_eq!(of("\t2\tpiece 2\nA\t53\t54\n", &[1, 2], 0), Err(twice));
    }

    #[test]
    fn a_row_of_no_point_and_a_row_that_comes_twice_are_named() {
        let pasted = of("A\t53\nHood\t31\na\t52\n", &[1], 0).expect("values");
        assert_eq!(pasted.values.len(), 1);
        let named: Vec<String> = pasted
            .unknown
            .iter()
            .map(|(place, words)| format!("{place} {words}"))
            .collect();
        assert_eq!(named, ["A2 Hood", "A3 a"]);
    }

    #[test]
    fn a_date_that_a_spreadsheet_made_of_a_fraction_is_no_value() {
        let ids = ids();
        let mut sheet = Sheet::new("");
        sheet
            .put(place(0, 0), Cell::Text("A".to_owned()))
            .expect("room");
        sheet
            .put(place(0, 1), Cell::Text("53".to_owned()))
            .expect("room");
        sheet
            .put(place(1, 0), Cell::Text("B".to_owned()))
            .expect("room");
        sheet.put(place(1, 1), Cell::Date).expect("room");
        let pasted = read(&sheet, &known(&ids), &[1], 0).expect("values");
        assert_eq!(pasted.unreadable, [place(1, 1)]);
    }
}
