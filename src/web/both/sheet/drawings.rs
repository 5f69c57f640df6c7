//! Drawings with everything that is marked on them: letters, dimension lines, and circles that
//! another drawing shows larger. In units of which the drawing's width has 10 000.

use std::collections::BTreeSet;

use serde::Serialize;

use super::{About, Writer};
use crate::spec::ItemId;
use crate::spec::document::{BlowUp, DimensionLine, Drawing, Spot};
use crate::web::shape;

#[derive(Serialize)]
pub struct Figure {
    pub id: ItemId,
    /// What circles on other drawings call it.
    pub number: usize,
    pub title: String,
    pub file: String,
    pub width: u32,
    pub height: u32,
    pub box_height: u32,
    pub circles: Vec<Circle>,
    pub lines: Vec<Dimension>,
    pub marks: Vec<Mark>,
    #[serde(skip)]
    pub about: About,
}

/// A letter on a drawing.
#[derive(Serialize)]
pub struct Mark {
    pub item: ItemId,
    pub letter: String,
    pub name: String,
    pub shape: &'static str,
    pub x: u32,
    pub y: u32,
    #[serde(skip)]
    pub flag: Option<char>,
    /// The first of its item on the page: what the row's letter leads to.
    #[serde(skip)]
    pub first: bool,
}

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

#[derive(Serialize)]
pub struct Circle {
    /// The drawing that shows it larger, and its title.
    pub drawing: ItemId,
    pub number: usize,
    pub title: String,
    pub x: u32,
    pub y: u32,
    pub radius: u32,
    /// Where its number stands: on the ring, as far from the letters as it can.
    pub tag: (u32, u32),
}

/// Two heads need so much room, in the units of the drawing.
const SHORT: f64 = 900.0;

/// A number needs so much room to the edge of the drawing.
const EDGE: u32 = 350;

impl<'a> Writer<'a> {
    pub(super) fn drawings(&self) -> Vec<Figure> {
        let mut seen = BTreeSet::new();
        let drawings = self.frozen.spec.drawings.drawings.iter();
        let figures = drawings.zip(1..);
        figures
            .map(|(it, number)| self.figure(it, number, &mut seen))
            .collect()
    }

    pub(super) fn drawing_title(&self, drawing: &Drawing) -> String {
        match drawing.title.as_str() {
            "" => self.t.name(&drawing.view).to_string(),
            title => title.to_owned(),
        }
    }

    pub(super) fn drawing(&self, id: &ItemId) -> Option<&'a Drawing> {
        let mut drawings = self.frozen.spec.drawings.drawings.iter();
        drawings.find(|drawing| drawing.id == *id)
    }

    fn figure(
        &self,
        drawing: &'a Drawing,
        number: usize,
        seen: &mut BTreeSet<&'a ItemId>,
    ) -> Figure {
        let own: BTreeSet<&ItemId> = drawing.markers.iter().map(|it| &it.item).collect();
        let written = drawing.markers.iter();
        let written = written.map(|marker| (&marker.item, spot(marker.x, marker.y)));
        // A line whose letter does not stand on this drawing carries it at its middle.
        let carried = drawing.lines.iter();
        let carried = carried.filter(|line| !own.contains(&line.item));
        let carried = carried.map(|line| (&line.item, middle(line)));
        let marks = written.chain(carried).filter_map(|(id, at)| {
            let item = self.frozen.spec.item(id)?;
            Some(Mark {
                first: seen.insert(id),
                item: id.clone(),
                letter: item.letter().to_owned(),
                name: item.name().to_owned(),
                shape: shape::letter(item),
                x: u32::from(at.x),
                y: tall(drawing, at.y),
                flag: self.about(id).flag(),
            })
        });
        Figure {
            id: drawing.id.clone(),
            number,
            title: self.drawing_title(drawing),
            file: drawing.file.to_string(),
            width: drawing.width,
            height: drawing.height,
            box_height: tall(drawing, 10_000),
            circles: (drawing.blow_ups.iter())
                .filter_map(|it| self.circle(drawing, it))
                .collect(),
            lines: (drawing.lines.iter())
                .map(|line| dimension(drawing, line))
                .collect(),
            marks: marks.collect(),
            about: self.about(&drawing.id),
        }
    }

    fn circle(&self, on: &Drawing, blow_up: &BlowUp) -> Option<Circle> {
        let mut drawings = self.frozen.spec.drawings.drawings.iter();
        let at = drawings.position(|it| it.id == blow_up.drawing)?;
        let larger = &self.frozen.spec.drawings.drawings[at];
        let (x, y) = (u32::from(blow_up.at.x), tall(on, blow_up.at.y));
        let radius = u32::from(blow_up.radius);
        let box_height = tall(on, 10_000);
        let places = (0..8).map(|eighth| {
            let (down, right) = (f64::from(eighth) * std::f64::consts::FRAC_PI_4).sin_cos();
            let along = |from: u32, part: f64, most: u32| {
                let at = f64::from(from) + f64::from(radius) * part;
                // With room for the number at the edges.
                (at.max(0.0) as u32).clamp(EDGE.min(most), most.saturating_sub(EDGE).max(EDGE))
            };
            (along(x, right, 10_000), along(y, down, box_height))
        });
        let room = |place: &(u32, u32)| {
            let markers = on.markers.iter();
            let distances = markers.map(|it| distance(*place, (u32::from(it.x), tall(on, it.y))));
            distances.fold(f64::MAX, f64::min)
        };
        let tag = places.max_by(|one, other| room(one).total_cmp(&room(other)));
        Some(Circle {
            drawing: larger.id.clone(),
            number: at + 1,
            title: self.drawing_title(larger),
            x,
            y,
            radius,
            tag: tag.unwrap_or((x, y)),
        })
    }
}

fn spot(x: u16, y: u16) -> Spot {
    Spot { x, y }
}

/// A height in ten-thousandths of the drawing's, in the units of its width.
fn tall(drawing: &Drawing, part: u16) -> u32 {
    let width = u64::from(drawing.width.max(1));
    let scaled = u64::from(part) * u64::from(drawing.height) / width;
    u32::try_from(scaled).unwrap_or(u32::MAX)
}

/// The middle of a straight line; of a curve, the point half way along its parameter.
fn middle(line: &DimensionLine) -> Spot {
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

pub fn dimension(drawing: &Drawing, line: &DimensionLine) -> Dimension {
    let at = |spot: Spot| (u32::from(spot.x), tall(drawing, spot.y));
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

fn distance(from: (u32, u32), to: (u32, u32)) -> f64 {
    let x = f64::from(from.0) - f64::from(to.0);
    let y = f64::from(from.1) - f64::from(to.1);
    x.hypot(y)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::spec::Digest;
    use crate::spec::document::View;

    fn drawing() -> Drawing {
        Drawing {
            id: ItemId::new("drawing-front"),
            view: View::Front,
            title: String::new(),
            file: Digest::of(b"front"),
            width: 800,
            height: 1200,
            markers: Vec::new(),
            lines: Vec::new(),
            blow_ups: Vec::new(),
        }
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
        let shown = dimension(&drawing(), &line((1000, 2000), (5000, 2000), None));
        assert_eq!(shown.path, "M1000 3000L5000 3000");
        let [from, to] = shown.heads;
        assert_eq!((from.x, from.y, from.turn), (1000, 3000, 180));
        assert_eq!((to.x, to.y, to.turn), (5000, 3000, 0));
        assert!(!from.outside && !to.outside);
    }

    #[test]
    fn the_heads_of_a_curve_follow_its_ends() {
        let curve = line((1000, 2000), (5000, 2000), Some((5000, 1000)));
        let shown = dimension(&drawing(), &curve);
        assert_eq!(shown.path, "M1000 3000Q5000 1500 5000 3000");
        // It comes down into its end, and its start looks down to the left.
        assert_eq!(shown.heads[1].turn, 90);
        assert_eq!(shown.heads[0].turn, 159);
        assert_eq!(middle(&curve), spot(4000, 1500));
    }

    #[test]
    fn a_short_line_has_its_heads_outside() {
        let shown = dimension(&drawing(), &line((1000, 2000), (1000, 2200), None));
        let [from, to] = shown.heads;
        assert!(from.outside && to.outside);
        assert_eq!((from.turn, to.turn), (90, 270));
    }
}
