//! Drawings with everything that is marked on them: letters, dimension lines, and circles that
//! another drawing shows larger. In units of which the drawing's width has 10 000.

use std::collections::BTreeSet;

use serde::Serialize;

use super::{About, Writer};
use crate::spec::ItemId;
use crate::spec::document::{BlowUp, Drawing, Spot};
use crate::spec::drawn::{Dimension, dimension, distance, leaders, middle, tall};

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
    /// As path data.
    pub leaders: String,
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
        let size = (drawing.width, drawing.height);
        let own: BTreeSet<&ItemId> = drawing.markers.iter().map(|it| &it.item).collect();
        let written = drawing.markers.iter();
        let written = written.map(|marker| {
            let (x, y) = (marker.x, marker.y);
            (&marker.item, Spot { x, y })
        });
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
                shape: item.shape(),
                x: u32::from(at.x),
                y: tall(size, at.y),
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
            box_height: tall(size, 10_000),
            circles: (drawing.blow_ups.iter())
                .filter_map(|it| self.circle(drawing, it))
                .collect(),
            lines: (drawing.lines.iter())
                .map(|line| dimension(size, line))
                .collect(),
            leaders: leaders(drawing),
            marks: marks.collect(),
            about: self.about(&drawing.id),
        }
    }

    fn circle(&self, on: &Drawing, blow_up: &BlowUp) -> Option<Circle> {
        let size = (on.width, on.height);
        let mut drawings = self.frozen.spec.drawings.drawings.iter();
        let at = drawings.position(|it| it.id == blow_up.drawing)?;
        let larger = &self.frozen.spec.drawings.drawings[at];
        let (x, y) = (u32::from(blow_up.at.x), tall(size, blow_up.at.y));
        let radius = u32::from(blow_up.radius);
        let box_height = tall(size, 10_000);
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
            let distances = markers.map(|it| distance(*place, (u32::from(it.x), tall(size, it.y))));
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
