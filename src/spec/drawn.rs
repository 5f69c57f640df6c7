//! Dimension lines and leader lines as they are drawn, in units of which the drawing's width has 10 000. Sizes are a
//! drawing's width and height.

use serde::Serialize;

use crate::spec::ItemId;
use crate::spec::document::{DimensionLine, Drawing, Spot};

/// A line with a head at each end of what a point measures.
#[derive(Serialize)]
pub struct Dimension {
    pub item: ItemId,
    /// As path data.
    pub path: String,
    pub heads: [ArrowHead; 2],
}

/// The tip of an arrow, and where it points to in degrees, clockwise from the right.
#[derive(Serialize)]
pub struct ArrowHead {
    pub x: u32,
    pub y: u32,
    pub turn: i32,
    /// Stands outside the line with a tail of its own, where the line is too short for two.
    pub outside: bool,
}

/// Two heads need so much room, in the units of the drawing.
const SHORT: f64 = 900.0;

/// Nearer to the middle of its line, a letter needs no leader line.
const NEAR: f64 = 450.0;

/// A height in ten-thousandths of the drawing's, in the units of its width.
pub fn tall((width, height): (u32, u32), part: u16) -> u32 {
    let scaled = u64::from(part) * u64::from(height) / u64::from(width.max(1));
    u32::try_from(scaled).unwrap_or(u32::MAX)
}

/// The middle of a straight line; of a curve, the point half way along its parameter.
pub fn middle(line: &DimensionLine) -> Spot {
    let half = |from: u16, via: Option<u16>, to: u16| {
        let (from, to) = (u32::from(from), u32::from(to));
        let sum = match via {
            None => (from + to) / 2,
            Some(via) => (from + 2 * u32::from(via) + to) / 4,
        };
        u16::try_from(sum).unwrap_or(u16::MAX)
    };
    Spot {
        x: half(line.from.x, line.via.map(|via| via.x), line.to.x),
        y: half(line.from.y, line.via.map(|via| via.y), line.to.y),
    }
}

/// A line on a drawing of this size.
pub fn dimension(size: (u32, u32), line: &DimensionLine) -> Dimension {
    let at = |spot: Spot| (u32::from(spot.x), tall(size, spot.y));
    let (from, to) = (at(line.from), at(line.to));
    let via = line.via.map(at);
    let curve = via.map_or(String::from("L"), |(x, y)| format!("Q{x} {y} "));
    let outside = distance(from, to) < SHORT;
    // Along the curve's end: from its control point, or from the other end.
    let head = |tip: (u32, u32), other: (u32, u32)| {
        let (x, y) = (
            f64::from(tip.0) - f64::from(other.0),
            f64::from(tip.1) - f64::from(other.1),
        );
        let outward = y.atan2(x).to_degrees().round() as i32;
        ArrowHead {
            x: tip.0,
            y: tip.1,
            turn: if outside { outward + 180 } else { outward },
            outside,
        }
    };
    Dimension {
        item: line.item.clone(),
        path: format!("M{} {}{curve}{} {}", from.0, from.1, to.0, to.1),
        heads: [head(from, via.unwrap_or(to)), head(to, via.unwrap_or(from))],
    }
}

/// The leader lines of a drawing, from each letter to the nearest line of its point, as path data.
pub fn leaders(drawing: &Drawing) -> String {
    let size = (drawing.width, drawing.height);
    let at = |spot: Spot| (u32::from(spot.x), tall(size, spot.y));
    let mut path = String::new();
    for marker in &drawing.markers {
        let (x, y) = (marker.x, marker.y);
        let letter = at(Spot { x, y });
        let own = drawing.lines.iter().filter(|it| it.item == marker.item);
        let middles = own.map(|line| at(middle(line)));
        let far = |spot: &(u32, u32)| distance(letter, *spot);
        let nearest = middles.min_by(|one, other| far(one).total_cmp(&far(other)));
        if let Some(spot) = nearest.filter(|spot| far(spot) > NEAR) {
            path += &format!("M{} {}L{} {}", letter.0, letter.1, spot.0, spot.1);
        }
    }
    path
}

pub fn distance(from: (u32, u32), to: (u32, u32)) -> f64 {
    let x = f64::from(from.0) - f64::from(to.0);
    let y = f64::from(from.1) - f64::from(to.1);
    x.hypot(y)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::spec::Digest;
    use crate::spec::document::{Marker, View};

    const SIZE: (u32, u32) = (800, 1200);

    fn spot(x: u16, y: u16) -> Spot {
        Spot { x, y }
    }

    fn line(from: (u16, u16), to: (u16, u16), via: Option<(u16, u16)>) -> DimensionLine {
        DimensionLine {
            id: ItemId::new("line-a"),
            item: ItemId::new("point-a"),
            from: spot(from.0, from.1),
            to: spot(to.0, to.1),
            via: via.map(|(x, y)| spot(x, y)),
        }
    }

    #[test]
    fn the_heads_of_a_line_point_away_from_each_other() {
        let shown = dimension(SIZE, &line((1000, 2000), (5000, 2000), None));
        assert_eq!(shown.path, "M1000 3000L5000 3000");
        let [from, to] = shown.heads;
        assert_eq!((from.x, from.y, from.turn), (1000, 3000, 180));
        assert_eq!((to.x, to.y, to.turn), (5000, 3000, 0));
        assert!(!from.outside && !to.outside);
    }

    #[test]
    fn the_heads_of_a_curve_follow_its_ends() {
        let curve = line((1000, 2000), (5000, 2000), Some((5000, 1000)));
        let shown = dimension(SIZE, &curve);
        assert_eq!(shown.path, "M1000 3000Q5000 1500 5000 3000");
        // It comes down into its end, and its start looks down to the left.
        assert_eq!(shown.heads[1].turn, 90);
        assert_eq!(shown.heads[0].turn, 159);
        assert_eq!(middle(&curve), spot(4000, 1500));
    }

    #[test]
    fn a_letter_is_led_to_the_nearest_line_of_its_point() {
        let marker = |item: &str, x, y| Marker {
            id: ItemId::new(format!("marker-{item}-{x}")),
            item: ItemId::new(item),
            x,
            y,
        };
        let drawing = Drawing {
            id: ItemId::new("front"),
            view: View::Front,
            title: String::new(),
            file: Digest::of(b"front"),
            width: SIZE.0,
            height: SIZE.1,
            markers: vec![
                marker("point-a", 3000, 5000),
                marker("point-a", 3100, 2100),
                marker("point-b", 9000, 9000),
            ],
            lines: vec![
                line((1000, 2000), (5000, 2000), None),
                line((1000, 6000), (5000, 6000), None),
            ],
            blow_ups: Vec::new(),
        };
        // The second letter lies on its line; the third has none.
        assert_eq!(leaders(&drawing), "M3000 7500L3000 9000");
    }

    #[test]
    fn a_short_line_has_its_heads_outside() {
        let shown = dimension(SIZE, &line((1000, 2000), (1000, 2200), None));
        let [from, to] = shown.heads;
        assert!(from.outside && to.outside);
        assert_eq!((from.turn, to.turn), (90, 270));
    }
}
