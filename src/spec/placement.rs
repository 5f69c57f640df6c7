//! Where an artwork goes: its box and its distances as a plan in millimetres, and where that plan
//! lies on the flat.
//!
//! A plan is drawn across from the left and down from the top; the artwork's box begins at 0, 0.
//! Left and right are the artwork's own, as it is read. A distance is taken from a line to the side
//! of the artwork that faces it, so a line lies to the right of a distance that is taken to the
//! right side. Nothing here is measured from: the numbers of the spec are.

mod flat;

use super::document::{Anchor, Artwork, Band, Distance, Drawing, LineKind, Spec};
use super::id::ItemId;
use super::units::{Entered, Length};

pub use flat::{Scale, scale};

/// The value of a point of measure in a size, where it has one.
pub type Values<'a> = &'a dyn Fn(&ItemId, &ItemId) -> Option<Length>;

/// The way that a distance is measured in.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Axis {
    /// From left to right.
    Across,
    /// From top to bottom.
    Down,
}

/// One band's artwork with the lines that it is placed from, in millimetres.
#[derive(Debug, Clone, PartialEq)]
pub struct Plan {
    pub width: f64,
    pub height: f64,
    pub legs: Vec<Leg>,
}

/// One distance of a plan.
#[derive(Debug, Clone, PartialEq)]
pub struct Leg {
    pub line: ItemId,
    pub anchor: Anchor,
    pub distance: Entered,
    pub axis: Axis,
    /// Where the line is, on the axis.
    pub line_at: f64,
    /// The named point of the artwork, across and down.
    pub anchor_at: (f64, f64),
    /// Taken to the artwork's middle, so that nothing but the flat tells on which side the line is.
    pub either_side: bool,
}

/// A plan, and where it lies on the flat.
#[derive(Debug, Clone, PartialEq)]
pub struct Placed {
    pub plan: Plan,
    /// The size that the flat is taken for: the base size, or the band's first.
    pub size: Option<ItemId>,
    pub flat: Result<OnFlat, NoFlat>,
}

/// Where a plan lies on its drawing, in millimetres of the garment.
#[derive(Debug, Clone, PartialEq)]
pub struct OnFlat {
    pub drawing: ItemId,
    /// Size of the whole picture.
    pub width: f64,
    pub height: f64,
    /// From the picture's left and upper edge to those of the artwork's box.
    pub left: f64,
    pub top: f64,
    pub scale: Scale,
    /// What tells where it lies across, and down.
    pub across: Found,
    pub down: Found,
}

/// What tells where on a drawing something is.
#[derive(Debug, Clone, PartialEq)]
pub enum Found {
    /// A centre line: the middle of the longest line that measures a whole width.
    Middle,
    /// The dimension line of this point begins or ends at the seam or edge, or runs along it, as its
    /// how-to-measure says.
    Line(ItemId),
    /// The artwork's own letter, for want of anything better.
    Letter,
    /// The artwork's own letter: by the point's dimension line it would lie so many millimetres
    /// away from it, which its distance is then hardly taken from.
    LetterInstead { point: ItemId, away: f64 },
}

/// Why a plan is not shown on a flat.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum NoFlat {
    /// The artwork names no drawing, or one that is gone.
    NoDrawing,
    /// The drawing has no straight dimension line of a point with a value, or they contradict each
    /// other: it is not to scale.
    NoScale,
    /// Neither a dimension line nor the artwork's letter tells where on it the artwork is.
    NoPlace,
}

/// The plan of a band of an artwork and its place; nothing without width and height.
pub fn place(spec: &Spec, artwork: &Artwork, band: &Band, values: Values<'_>) -> Option<Placed> {
    let mut plan = plan(spec, band)?;
    let size = size_of(spec, band);
    let drawing = artwork.drawing.as_ref().and_then(|id| drawing(spec, id));
    let flat = match (drawing, &size) {
        (None, _) => Err(NoFlat::NoDrawing),
        (Some(_), None) => Err(NoFlat::NoScale),
        (Some(drawing), Some(size)) => {
            let on = flat::Flat {
                spec,
                drawing,
                letter: flat::letter(drawing, &artwork.id),
            };
            match scale(spec, drawing, size, values) {
                Some(scale) => on.lay(&mut plan, scale).ok_or(NoFlat::NoPlace),
                None => Err(NoFlat::NoScale),
            }
        }
    };
    Some(Placed { plan, size, flat })
}

/// The plan of a band by itself; nothing without width and height.
pub fn plan(spec: &Spec, band: &Band) -> Option<Plan> {
    let (width, height) = (mm(band.width?.nm), mm(band.height?.nm));
    if width <= 0.0 || height <= 0.0 {
        return None;
    }
    let whole = band.distances.iter().filter_map(|distance| {
        let Distance {
            line,
            anchor,
            distance,
        } = distance;
        Some((line.clone()?, (*anchor)?, (*distance)?))
    });
    let whole: Vec<(ItemId, Anchor, Entered)> = whole.collect();
    // A distance to the middle goes the way that is left by another one.
    let taken = whole.iter().find_map(|(line, anchor, _)| {
        let own = axis_of(*anchor);
        own.or_else(|| is_centre_line(spec, line).then_some(Axis::Across))
    });
    let legs = whole.into_iter().map(|(line, anchor, distance)| {
        let axis = match (axis_of(anchor), is_centre_line(spec, &line), taken) {
            (Some(axis), _, _) => axis,
            (None, true, _) => Axis::Across,
            (None, false, Some(Axis::Down)) => Axis::Across,
            (None, false, _) => Axis::Down,
        };
        let far = mm(distance.nm);
        let length = match axis {
            Axis::Across => width,
            Axis::Down => height,
        };
        let line_at = match anchor {
            Anchor::Left | Anchor::Top => -far,
            Anchor::Right | Anchor::Bottom => length + far,
            Anchor::Centre => length / 2.0 - far,
        };
        Leg {
            line,
            anchor,
            distance,
            axis,
            line_at,
            anchor_at: match anchor {
                Anchor::Top => (width / 2.0, 0.0),
                Anchor::Bottom => (width / 2.0, height),
                Anchor::Left => (0.0, height / 2.0),
                Anchor::Right => (width, height / 2.0),
                Anchor::Centre => (width / 2.0, height / 2.0),
            },
            either_side: anchor == Anchor::Centre && far != 0.0,
        }
    });
    Some(Plan {
        width,
        height,
        legs: legs.collect(),
    })
}

impl Plan {
    /// The first distance that is measured this way.
    pub fn leg(&self, axis: Axis) -> Option<&Leg> {
        self.legs.iter().find(|leg| leg.axis == axis)
    }

    /// Whether one distance goes across and one goes down: only then is the place told whole.
    pub fn is_whole(&self) -> bool {
        self.leg(Axis::Across).is_some() && self.leg(Axis::Down).is_some()
    }

    /// The smallest rectangle around the box and all lines: left, top, right, bottom.
    pub fn extent(&self) -> (f64, f64, f64, f64) {
        let mut extent = (0.0, 0.0, self.width, self.height);
        for leg in &self.legs {
            match leg.axis {
                Axis::Across => {
                    extent.0 = f64::min(extent.0, leg.line_at);
                    extent.2 = f64::max(extent.2, leg.line_at);
                }
                Axis::Down => {
                    extent.1 = f64::min(extent.1, leg.line_at);
                    extent.3 = f64::max(extent.3, leg.line_at);
                }
            }
        }
        extent
    }
}

impl Leg {
    /// The line on the other side of the artwork's middle.
    fn turned(&mut self, plan_length: f64) {
        self.line_at = plan_length - self.line_at;
    }
}

/// The way that a side of the artwork faces; nothing for its middle.
fn axis_of(anchor: Anchor) -> Option<Axis> {
    match anchor {
        Anchor::Left | Anchor::Right => Some(Axis::Across),
        Anchor::Top | Anchor::Bottom => Some(Axis::Down),
        Anchor::Centre => None,
    }
}

fn is_centre_line(spec: &Spec, line: &ItemId) -> bool {
    let mut lines = spec.construction.lines.iter();
    let line = lines.find(|it| it.id == *line);
    line.is_some_and(|line| line.kind == Some(LineKind::CentreLine))
}

/// The size that stands for a band: the base size where it is in it, else the band's first.
pub fn size_of(spec: &Spec, band: &Band) -> Option<ItemId> {
    let sizes = &spec.sizes.sizes;
    let at = |id: &ItemId| sizes.iter().position(|size| size.id == *id);
    let first = band.from.as_ref().map_or(Some(0), at)?;
    let last = match &band.to {
        Some(to) => at(to)?,
        None => sizes.len().checked_sub(1)?,
    };
    let base = spec.header.base_size.as_ref();
    let within = base.filter(|id| at(id).is_some_and(|at| (first..=last).contains(&at)));
    match within {
        Some(base) => Some(base.clone()),
        None => Some(sizes.get(first)?.id.clone()),
    }
}

fn drawing<'a>(spec: &'a Spec, id: &ItemId) -> Option<&'a Drawing> {
    let mut drawings = spec.drawings.drawings.iter();
    drawings.find(|drawing| drawing.id == *id && drawing.width > 0 && drawing.height > 0)
}

/// For drawing alone, where less than a nanometre does not matter.
pub fn mm(length: Length) -> f64 {
    length.as_nm() as f64 / 1e6
}

#[cfg(test)]
mod tests;
