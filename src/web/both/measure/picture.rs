//! The part of a drawing around a letter.

use crate::spec::{ItemId, Spec, StyleId};

/// How much of the drawing is shown at least, in ten-thousandths of its width. Our own choice: wide
/// enough to see both ends of most dimensions, near enough for a phone.
const WINDOW: (i64, i64) = (4400, 2400);

/// A width of picture that is sharp enough when a phone shows a part of it.
const PIXELS: u32 = 1280;

/// A drawing, zoomed to one letter. Lengths are ten-thousandths of its width.
#[derive(Debug, PartialEq, Eq)]
pub struct Picture {
    pub href: String,
    pub height: i64,
    /// The letter's place.
    pub x: i64,
    pub y: i64,
    /// Left, top, width, height of the part to show.
    pub view: (i64, i64, i64, i64),
}

impl Picture {
    /// Of the first drawing that shows the point's letter; `None`: none does.
    pub fn of(style: &StyleId, spec: &Spec, point: &ItemId) -> Option<Picture> {
        let found = spec.drawings.drawings.iter().find_map(|drawing| {
            let marker = drawing.markers.iter().find(|it| it.item == *point)?;
            Some((drawing, marker))
        });
        let (drawing, marker) = found?;
        let (wide, high) = (i64::from(drawing.width.max(1)), i64::from(drawing.height));
        let height = 10_000 * high / wide;
        let (x, y) = (i64::from(marker.x), i64::from(marker.y) * high / wide);
        let (width, tall) = (WINDOW.0, WINDOW.1.min(height));
        // Near an edge the window stays on the drawing.
        let left = (x - width / 2).clamp(0, 10_000 - width);
        let top = (y - tall / 2).clamp(0, height - tall);
        Some(Picture {
            href: format!("/styles/{style}/files/{}/{PIXELS}", drawing.file),
            height,
            x,
            y,
            view: (left, top, width, tall),
        })
    }
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
        assert_eq!(
            Picture::of(&StyleId::new("s"), &spec, &ItemId::new("nothing")),
            None
        );
    }
}
