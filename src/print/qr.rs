//! QR codes (ISO/IEC 18004), as a path that a page puts into an SVG of its own.

use qrcode::{Color, EcLevel, QrCode};

/// A code: draw `path` on white in a `viewBox` of `side` × `side`.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Square {
    /// Squares on a side, with the quiet zone of four that the standard asks for.
    pub side: usize,
    /// One run of dark squares after the other, as SVG path data.
    pub path: String,
}

const QUIET: usize = 4;

/// The code of an address; `None` when it is too long for one.
pub fn square(address: &str) -> Option<Square> {
    let code = QrCode::with_error_correction_level(address, EcLevel::M).ok()?;
    let width = code.width();
    let colors = code.to_colors();
    let mut path = String::new();
    for (y, row) in colors.chunks(width).enumerate() {
        let mut x = 0;
        while x < width {
            let run = row[x..]
                .iter()
                .take_while(|color| **color == Color::Dark)
                .count();
            if run > 0 {
                path.push_str(&format!("M{} {}h{run}v1h-{run}z", x + QUIET, y + QUIET));
            }
            x += run.max(1);
        }
    }
    Some(Square {
        side: width + 2 * QUIET,
        path,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_corners_carry_the_finder_patterns() {
        let square = square("https://specs.example.org/code").unwrap();
        // ISO/IEC 18004: a finder pattern is 7 squares wide in three corners.
        let near = QUIET;
        let far = square.side - QUIET - 7;
        for (x, y) in [(near, near), (far, near), (near, far)] {
            let run = format!("M{x} {y}h7v1h-7z");
            assert!(square.path.contains(&run), "{run}");
        }
        assert!((square.side - 2 * QUIET - 21).is_multiple_of(4));
    }
}
