//! Text on a label: broken into lines by widths of letters, in millimetres from its upper left.

use crate::spec::document::LabelFold;

/// A label open, in millimetres.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Paper {
    pub width: f64,
    pub height: f64,
    pub folded: Option<f64>,
    pub fold: Option<LabelFold>,
    /// The height of a capital letter.
    pub text: f64,
}

/// Text as it lies.
#[derive(Debug, Clone, PartialEq)]
pub struct Layout {
    /// The size of the letters (the em), of which a capital is seven tenths high.
    pub em: f64,
    /// From line to line.
    pub pitch: f64,
    /// Where every line of text begins, from the left.
    pub left: f64,
    pub lines: Vec<Line>,
    /// The fold, from the top, where it goes across.
    pub fold: Option<f64>,
    /// What the text takes from the label's upper to its lower edge, with the room that is kept free
    /// at both.
    pub needs: f64,
    /// Words that are wider than the label, each once.
    pub wide: Vec<String>,
}

#[derive(Debug, Clone, PartialEq)]
pub struct Line {
    /// Which of the given texts it is of.
    pub of: usize,
    pub text: String,
    /// Of its letters' feet, from the top.
    pub foot: f64,
    /// In the middle of the label instead of at the left.
    pub centred: bool,
}

/// Capitals are so high in an em. Measured on one widespread sans; others differ by a little.
const CAPITAL: f64 = 0.7;
/// From line to line, in ems. Common practice, no source.
const PITCH: f64 = 1.25;
/// What is kept free at each side, and at the upper and lower end, which are cut or sewn in. Common
/// practice, no source.
const SIDE: f64 = 2.0;
const END: f64 = 3.0;

/// Lays texts below each other, half a line apart; a text breaks at spaces and at its own line ends.
/// A line that would lie across the fold begins below it. What has no room goes on below the label.
pub fn lay(paper: Paper, texts: &[String], centred: bool) -> Layout {
    let em = paper.text / CAPITAL;
    let pitch = em * PITCH;
    // A tiny label has no such room to spare.
    let (side, end) = (SIDE.min(paper.width / 10.0), END.min(paper.height / 10.0));
    let room = (paper.width - 2.0 * side).max(0.0) / em;
    let fold = fold(paper);
    let mut wide = Vec::new();
    let mut lines = Vec::new();
    let mut top = end;
    for (of, text) in texts.iter().enumerate() {
        if of > 0 {
            top += pitch / 2.0;
        }
        for text in text.lines().flat_map(|line| broken(line, room, &mut wide)) {
            if let Some(fold) = fold
                && top < fold
                && top + em > fold
            {
                top = fold;
            }
            lines.push(Line {
                of,
                text,
                foot: top + em * CAPITAL + (pitch - em) / 2.0,
                centred,
            });
            top += pitch;
        }
    }
    Layout {
        em,
        pitch,
        left: side,
        fold,
        needs: if lines.is_empty() { 0.0 } else { top + end },
        lines,
        wide,
    }
}

/// Where the label is folded across: so far down as it is high when folded, else in the middle.
fn fold(paper: Paper) -> Option<f64> {
    match paper.fold {
        Some(LabelFold::Centre | LabelFold::Loop) => {
            let folded = paper.folded.filter(|it| (0.0..paper.height).contains(it));
            Some(folded.unwrap_or(paper.height / 2.0))
        }
        Some(LabelFold::Flat | LabelFold::Ends | LabelFold::Mitre) | None => None,
    }
}

impl Layout {
    /// Whether it seems to have room on a label so high.
    pub fn fits(&self, height: f64) -> bool {
        self.needs <= height && self.wide.is_empty()
    }
}

/// A line of text broken into lines of at most so many ems, as far as its words allow.
fn broken(text: &str, room: f64, wide: &mut Vec<String>) -> Vec<String> {
    let mut lines = Vec::new();
    let mut line = String::new();
    // Not at a space that holds a number to its unit.
    for word in text.split([' ', '\t']).filter(|word| !word.is_empty()) {
        if word.chars().any(is_square) {
            // Such scripts break between any two letters.
            for letter in word.chars() {
                if !line.is_empty() && width(&line) + self::letter(letter) > room {
                    lines.push(std::mem::take(&mut line));
                }
                line.push(letter);
            }
            continue;
        }
        if width(word) > room && !wide.iter().any(|it| it == word) {
            wide.push(word.to_owned());
        }
        let longer = match line.is_empty() {
            true => word.to_owned(),
            false => format!("{line} {word}"),
        };
        if line.is_empty() || width(&longer) <= room {
            line = longer;
        } else {
            lines.push(std::mem::replace(&mut line, word.to_owned()));
        }
    }
    if !line.is_empty() {
        lines.push(line);
    }
    lines
}

/// The width of a text in ems: an estimate.
pub fn width(text: &str) -> f64 {
    text.chars().map(letter).sum()
}

/// The width of a letter in ems, from memory, as a widespread sans has them; scripts that it lacks
/// by their square.
fn letter(letter: char) -> f64 {
    match letter {
        'i' | 'j' | 'l' | '\'' | '|' | '’' => 0.22,
        ' ' | '\u{a0}' | 'f' | 't' | 'I' | '.' | ',' | ':' | ';' | '/' | '!' | '\\' => 0.28,
        'r' | '-' | '(' | ')' | '"' | '°' => 0.34,
        'c' | 'k' | 's' | 'v' | 'x' | 'y' | 'z' | 'J' => 0.5,
        'm' | 'M' | 'W' | '%' | '@' => 0.85,
        'w' | 'C' | 'D' | 'H' | 'N' | 'R' | 'U' | 'G' | 'O' | 'Q' => 0.74,
        'A' | 'B' | 'E' | 'K' | 'P' | 'S' | 'V' | 'X' | 'Y' => 0.67,
        'F' | 'L' | 'T' | 'Z' => 0.6,
        it if is_square(it) => 1.0,
        it if it.is_uppercase() => 0.7,
        _ => 0.56,
    }
}

/// East Asian scripts and full-width forms stand in a square each.
fn is_square(letter: char) -> bool {
    matches!(letter, '\u{1100}'..='\u{11ff}' | '\u{2e80}'..='\u{d7ff}' | '\u{f900}'..='\u{ffef}')
}
