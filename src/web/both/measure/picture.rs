//! The part of a drawing that shows what a point measures: its dimension line, framed.

use crate::spec::document::{DimensionLine, Drawing, Spot};
use crate::spec::drawn::{Dimension, dimension, middle, tall};
use crate::spec::{ItemId, Spec, StyleId};

/// How much of the drawing is shown around a letter that has no line, in ten-thousandths of its
/// width. Our own choice: wide enough to see where it is, near enough for a phone.
const WINDOW: (i64, i64) = (4400, 2400);

/// The least that is shown around a line: what is near it tells what it is.
const LEAST: i64 = 1800;

/// A width of picture that is sharp enough when a phone shows a part of it.
const PIXELS: u32 = 2048;

/// A drawing, zoomed to what one point measures. Lengths are ten-thousandths of its width.
pub struct Picture {
    pub href: String,
    pub height: i64,
    /// The letter's place.
    pub x: i64,
    pub y: i64,
    /// Left, top, width, height of the part to show.
    pub view: (i64, i64, i64, i64),
    /// Letters and heads of arrows are drawn so many times as large as on the whole drawing, so that
    /// they look alike however near it is.
    pub scale: f64,
    pub lines: Vec<Dimension>,
}

impl Picture {
    /// Of the first drawing that has the point's line, or else its letter; `None`: none does.
    pub fn of(style: &StyleId, spec: &Spec, point: &ItemId) -> Option<Picture> {
        let drawings = || spec.drawings.drawings.iter();
        let lined = drawings().find(|it| it.lines.iter().any(|line| line.item == *point));
        let lettered = || drawings().find(|it| it.markers.iter().any(|it| it.item == *point));
        let drawing = lined.or_else(lettered)?;
        let lines: Vec<&DimensionLine> = drawing
            .lines
            .iter()
            .filter(|it| it.item == *point)
            .collect();
        let letter = drawing.markers.iter().find(|it| it.item == *point);
        let letter = letter.map(|it| Spot { x: it.x, y: it.y });
        let size = (drawing.width, drawing.height);
        let at = |spot: Spot| (i64::from(spot.x), i64::from(tall(size, spot.y)));
        let height = 10_000 * i64::from(drawing.height) / i64::from(drawing.width.max(1));
        let view = match (&lines[..], letter) {
            ([], Some(letter)) => around(at(letter), height),
            (lines, _) => framed(drawing, lines, height),
        };
        // A letter that stands elsewhere comes to its line.
        let seen = |spot: Spot| {
            let (x, y) = at(spot);
            let across = view.0..=view.0 + view.2;
            across.contains(&x) && (view.1..=view.1 + view.3).contains(&y)
        };
        let own = lines.first().map(|line| middle(line));
        let letter = letter.filter(|it| seen(*it)).or(own)?;
        let (x, y) = at(letter);
        Some(Picture {
            href: format!("/styles/{style}/files/{}/{PIXELS}", drawing.file),
            height,
            x,
            y,
            view,
            scale: view.2 as f64 / 2200.0,
            lines: lines.iter().map(|line| dimension(size, line)).collect(),
        })
    }
}

/// A window around a letter; near an edge it stays on the drawing.
fn around((x, y): (i64, i64), height: i64) -> (i64, i64, i64, i64) {
    let (width, tall) = (WINDOW.0, WINDOW.1.min(height));
    within((x, y), (width, tall), height)
}

/// A window around lines, with room beside them.
fn framed(drawing: &Drawing, lines: &[&DimensionLine], height: i64) -> (i64, i64, i64, i64) {
    let size = (drawing.width, drawing.height);
    let spots = lines.iter().flat_map(|line| {
        // A curve lies between its ends and half way to its control point.
        let bend = line.via.map(|_| middle(line));
        [Some(line.from), Some(line.to), bend]
    });
    let spots = spots
        .flatten()
        .map(|spot| (i64::from(spot.x), i64::from(tall(size, spot.y))));
    let spots: Vec<(i64, i64)> = spots.collect();
    let ends = |of: fn(&(i64, i64)) -> i64| {
        let all = || spots.iter().map(of);
        (all().min().unwrap_or(0), all().max().unwrap_or(0))
    };
    let ((left, right), (top, bottom)) = (ends(|it| it.0), ends(|it| it.1));
    // In the shape of the place on the page, whichever way the line goes.
    let (across, down) = ((right - left) * 3 / 2, (bottom - top) * 3 / 2);
    let width = across.max(down * WINDOW.0 / WINDOW.1).clamp(LEAST, 10_000);
    let tall = (width * WINDOW.1 / WINDOW.0).max(down).min(height);
    within(
        ((left + right) / 2, (top + bottom) / 2),
        (width, tall),
        height,
    )
}

/// A window of this size around a spot, kept on the drawing.
fn within((x, y): (i64, i64), (width, tall): (i64, i64), height: i64) -> (i64, i64, i64, i64) {
    let left = (x - width / 2).clamp(0, 10_000 - width);
    let top = (y - tall / 2).clamp(0, height - tall);
    (left, top, width, tall)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::spec::Digest;
    use crate::spec::example::half_zip;

    fn picture(x: u16, y: u16, width: u32, height: u32) -> Picture {
        let mut spec = half_zip(Digest::of(b"front"));
        let drawing = &mut spec.drawings.drawings[0];
        (drawing.width, drawing.height) = (width, height);
        let marker = drawing
            .markers
            .iter_mut()
            .find(|it| it.item.as_str() == "point-c");
        let marker = marker.expect("the example marks C");
        (marker.x, marker.y) = (x, y);
        let style = StyleId::new("s");
        Picture::of(&style, &spec, &ItemId::new("point-c")).expect("C is marked")
    }

    #[test]
    fn the_letter_stands_in_the_middle_of_the_window() {
        let found = picture(5000, 5000, 1000, 800);
        assert_eq!((found.x, found.y, found.height), (5000, 4000, 8000));
        assert_eq!(found.view, (2800, 2800, 4400, 2400));
    }

    #[test]
    fn near_an_edge_the_window_stays_on_the_drawing() {
        assert_eq!(picture(10_000, 0, 1000, 1000).view, (5600, 0, 4400, 2400));
        // A drawing that is lower than the window is shown in its whole height.
        assert_eq!(picture(0, 10_000, 1000, 100).view, (0, 0, 4400, 1000));
    }

    #[test]
    fn a_point_without_a_letter_has_no_picture() {
        let spec = half_zip(Digest::of(b"front"));
        let picture = Picture::of(&StyleId::new("s"), &spec, &ItemId::new("nothing"));
        assert!(picture.is_none());
    }

    fn lined(from: (u16, u16), to: (u16, u16)) -> Picture {
        let mut spec = half_zip(Digest::of(b"front"));
        let drawing = &mut spec.drawings.drawings[0];
        (drawing.width, drawing.height) = (1000, 1000);
        drawing.lines = vec![DimensionLine {
            id: ItemId::new("line-c"),
            item: ItemId::new("point-c"),
            from: Spot {
                x: from.0,
                y: from.1,
            },
            to: Spot { x: to.0, y: to.1 },
            via: None,
        }];
        Picture::of(&StyleId::new("s"), &spec, &ItemId::new("point-c")).expect("C has a line")
    }

    #[test]
    fn the_whole_line_is_seen_however_long_it_is_and_whichever_way_it_goes() {
        for (from, to) in [
            ((4000, 5000), (6000, 5000)),
            ((5000, 500), (5000, 9500)),
            ((0, 0), (10_000, 10_000)),
            ((100, 9900), (300, 9900)),
        ] {
            let Picture { view, lines, .. } = lined(from, to);
            assert_eq!(lines.len(), 1);
            for (x, y) in [from, to] {
                let (x, y) = (i64::from(x), i64::from(y));
                assert!((view.0..=view.0 + view.2).contains(&x), "{view:?} {x}");
                assert!((view.1..=view.1 + view.3).contains(&y), "{view:?} {y}");
            }
            assert!(view.0 >= 0 && view.0 + view.2 <= 10_000, "{view:?}");
            assert!(view.1 >= 0 && view.1 + view.3 <= 10_000, "{view:?}");
        }
        // A short one comes near.
        assert_eq!(lined((100, 9900), (300, 9900)).view.2, LEAST);
        assert_eq!(lined((4000, 5000), (6000, 5000)).view.2, 3000);
    }

    #[test]
    fn a_letter_that_stands_elsewhere_comes_to_its_line() {
        let shown = lined((9000, 9900), (9400, 9900));
        assert_eq!((shown.x, shown.y), (9200, 9900));
    }
}
