//! Values parted by commas (RFC 4180), semicolons or tabs.

use super::{Cell, MAX_CELLS, NotASheet, Place, Sheet};

/// What parts two values.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Separator {
    Comma,
    Semicolon,
    Tab,
}

impl Separator {
    /// The rarest in running text first: it wins where two are there as often.
    const ALL: [Separator; 3] = [Separator::Tab, Separator::Semicolon, Separator::Comma];

    pub const fn sign(self) -> char {
        match self {
            Separator::Comma => ',',
            Separator::Semicolon => ';',
            Separator::Tab => '\t',
        }
    }
}

/// Writes one value so that a spreadsheet takes it for text or a number and never for a formula:
/// text that begins with `=`, `+`, `-`, `@`, a tab or a line's end and is no number gets an
/// apostrophe before it. [`read`] takes that one away again.
pub fn field(value: &str, separator: Separator) -> String {
    let formula = value.starts_with(FORMULA) && !is_number(value);
    let value = match formula {
        true => format!("'{value}"),
        false => value.to_owned(),
    };
    if value.contains(['"', '\n', '\r', separator.sign()]) || value.trim() != value {
        format!("\"{}\"", value.replace('"', "\"\""))
    } else {
        value
    }
}

const FORMULA: [char; 6] = ['=', '+', '-', '@', '\t', '\r'];

fn is_number(value: &str) -> bool {
    let digits = value.strip_prefix(['-', '+']).unwrap_or(value);
    digits.starts_with(|c: char| c.is_ascii_digit())
        && digits
            .chars()
            .all(|c| c.is_ascii_digit() || c == '.' || c == ',')
}

/// Reads a text as one sheet without a name. The separator is the sign that the first line with
/// any of them has most of, outside quotes.
///
/// Errors: what goes beyond the limits of a sheet; `Nothing`; `Broken` when a quote is never closed.
pub fn read(text: &str) -> Result<Sheet, NotASheet> {
    parted_by(separator(text.trim_start_matches('\u{feff}')), text)
}

/// The same of a text whose separator is known.
pub fn parted_by(separator: Separator, text: &str) -> Result<Sheet, NotASheet> {
    let text = text.strip_prefix('\u{feff}').unwrap_or(text);
    let mut sheet = Sheet::default();
    let mut count = 0;
    let mut put = |place: Place, value: &str| {
        let value = match value.strip_prefix('\'') {
            Some(plain) if plain.starts_with(FORMULA) => plain,
            _ => value,
        };
        let cell = Cell::of_text(&value.replace('\0', ""));
        if cell == Cell::Empty {
            return Ok(());
        }
        count += 1;
        if count > MAX_CELLS {
            return Err(NotASheet::TooManyCells);
        }
        sheet.put(place, cell)
    };
    let mut place = Place { row: 0, column: 0 };
    let mut value = String::new();
    let mut quoted = false;
    let mut letters = text.chars().peekable();
    while let Some(c) = letters.next() {
        match c {
            '"' if quoted && letters.next_if_eq(&'"').is_some() => value.push('"'),
            '"' if quoted => quoted = false,
            _ if quoted => value.push(c),
            '"' if value.trim().is_empty() => {
                value.clear();
                quoted = true;
            }
            c if c == separator.sign() => {
                put(place, &value)?;
                value.clear();
                place.column = place.column.saturating_add(1);
            }
            '\n' | '\r' => {
                if c == '\r' {
                    let _ = letters.next_if_eq(&'\n');
                }
                put(place, &value)?;
                value.clear();
                place = Place {
                    row: place.row.saturating_add(1),
                    column: 0,
                };
            }
            c => value.push(c),
        }
    }
    if quoted {
        return Err(NotASheet::Broken);
    }
    put(place, &value)?;
    if sheet.is_empty() {
        return Err(NotASheet::Nothing);
    }
    Ok(sheet)
}

fn separator(text: &str) -> Separator {
    let mut quoted = false;
    // A quote elsewhere is an inch mark.
    let mut at_start = true;
    let mut counts = [0_usize; 3];
    for c in text.chars() {
        let found = Separator::ALL.iter().position(|it| it.sign() == c);
        match (c, found) {
            ('"', _) if quoted || at_start => quoted = !quoted,
            ('\n' | '\r', _) if !quoted && counts != [0; 3] => break,
            (_, Some(found)) if !quoted => counts[found] += 1,
            _ => {}
        }
        at_start = found.is_some() || matches!(c, '\n' | '\r') || at_start && c == ' ';
    }
    let most = counts.iter().copied().max().unwrap_or_default();
    let found = counts.iter().position(|count| *count == most);
    match most {
        0 => Separator::Comma,
        _ => Separator::ALL[found.unwrap_or_default()],
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;

    fn cells(text: &str) -> Vec<Vec<String>> {
        let sheet = read(text).unwrap();
        let row = |row: &Vec<Cell>| row.iter().map(|cell| cell.shown().to_owned()).collect();
        sheet.rows.iter().map(row).collect()
    }

    #[test]
    fn values_are_parted_as_the_first_line_tells() {
        assert_eq!(cells("a,b\r\n1,2\r\n"), [["a", "b"], ["1", "2"]]);
        assert_eq!(cells("\u{feff}a;b\n1,5;2,5"), [["a", "b"], ["1,5", "2,5"]]);
        assert_eq!(cells("Chart\na\tb, c\n1\t2")[1], ["a", "b, c"]);
        assert_eq!(cells("\"a, \"\"x\"\"\nz\",b"), [["a, \"x\"\nz", "b"]]);
        assert_eq!(cells("28 1/2\",b"), [["28 1/2\"", "b"]]);
    }

    #[test]
    fn nothing_written_begins_like_a_formula() {
        for bad in ["=HYPERLINK(1)", "+1+1", "-2+3", "@SUM(A1)", "\t=1", "-"] {
            let written = field(bad, Separator::Comma);
            let bare = written.trim_start_matches('"');
            assert!(bare.starts_with('\''), "{written}");
        }
        for good in ["-0.5", "28.5", "+3", "cuff - left", "A"] {
            assert_eq!(field(good, Separator::Comma), good);
        }
        assert_eq!(field("=C - 1.5", Separator::Comma), "'=C - 1.5");
        assert_eq!(cells("'=C - 1.5,'quoted'"), [["=C - 1.5", "'quoted'"]]);
    }

    #[test]
    fn what_is_not_taken() {
        assert_eq!(read(" \n,,\n"), Err(NotASheet::Nothing));
        assert_eq!(read("a,\"b\nc"), Err(NotASheet::Broken));
        let many = "1,2\n".repeat(1_000_000);
        assert!(matches!(read(&many), Err(NotASheet::TooFar { .. })));
        let wide = "1,".repeat(1_000_000);
        assert!(matches!(read(&wide), Err(NotASheet::TooFar { .. })));
        let full = "1,2,3,4,5,6,7,8,9,10,11,12,13,14,15\n".repeat(1900);
        assert_eq!(read(&full), Err(NotASheet::TooManyCells));
    }

    proptest! {
        #[test]
        fn what_is_written_is_read_again(
            values in prop::collection::vec("[ -~\u{e9}\n]{0,12}", 1..6),
            which in 0_usize..3,
        ) {
            let separator = Separator::ALL[which];
            // A head line tells the separator beyond doubt.
            let head = vec!["h"; 40].join(&separator.sign().to_string());
            let line: Vec<String> = values.iter().map(|it| field(it, separator)).collect();
            let text = format!("{head}\n{}\n", line.join(&separator.sign().to_string()));
            let read = cells(&text);
            for (at, value) in values.iter().enumerate() {
                let got = read.get(1).and_then(|row| row.get(at));
                let plain = value.trim();
                // An apostrophe before a formula's sign is taken for our own.
                if !plain.starts_with('\'') {
                    prop_assert_eq!(got.map_or("", String::as_str), plain);
                }
            }
        }
    }
}
