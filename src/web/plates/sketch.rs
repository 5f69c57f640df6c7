//! A plan drawn: the artwork's box, the lines that it is placed from, and its distances.

use super::{Bench, Mm, Picture};
use crate::spec::document::LineKind;
use crate::spec::placement::{Axis, Leg, OnFlat, Plan, mm};

/// A drawing of a plan, in millimetres of the garment.
pub struct Sketch {
    /// As a `viewBox`.
    pub view: String,
    /// What lies behind: the flat, and where.
    pub behind: Option<Behind>,
    /// What a text is high.
    pub text: Mm,
    pub artwork: Option<Picture>,
    pub width: Mm,
    pub height: Mm,
    pub lines: Vec<Reference>,
    pub distances: Vec<Dimension>,
    /// The points of the artwork that are measured to.
    pub anchors: Vec<(Mm, Mm)>,
    pub dot: Mm,
    /// In words.
    pub says: String,
}

pub struct Behind {
    pub href: String,
    pub x: Mm,
    pub y: Mm,
    pub width: Mm,
    pub height: Mm,
}

/// A seam, edge, fold or centre line.
pub struct Reference {
    pub kind: &'static str,
    pub path: String,
    pub name: String,
    pub at: (Mm, Mm),
    /// Where the name is held: at its beginning or its end.
    pub hold: &'static str,
}

/// A distance with its heads.
pub struct Dimension {
    pub path: String,
    pub heads: [(Mm, Mm, i32); 2],
    pub value: String,
    pub at: (Mm, Mm),
    pub hold: &'static str,
}

impl Bench<'_> {
    /// The flat, where it lies behind its plan; nothing where there is no picture of it.
    pub fn behind(&self, flat: &OnFlat) -> Option<Behind> {
        let mut drawings = self.spec.drawings.drawings.iter();
        let drawing = drawings.find(|it| it.id == flat.drawing)?;
        Some(Behind {
            href: self.picture([Some(&drawing.file), None])?.href,
            x: Mm(-flat.left),
            y: Mm(-flat.top),
            width: Mm(flat.width),
            height: Mm(flat.height),
        })
    }

    /// Kind and name of a leg's line.
    pub fn line(&self, leg: &Leg) -> (&'static str, String) {
        let mut lines = self.spec.construction.lines.iter();
        let Some(line) = lines.find(|it| it.id == leg.line) else {
            return ("seam", String::new());
        };
        let kind = match line.kind {
            Some(LineKind::Edge) => "edge",
            Some(LineKind::Fold) => "fold",
            Some(LineKind::CentreLine) => "centre",
            Some(LineKind::Seam) | None => "seam",
        };
        (kind, line.name.clone())
    }

    /// A plan by itself, or on the flat.
    pub fn sketch(
        &self,
        plan: &Plan,
        artwork: Option<Picture>,
        on: Option<(&OnFlat, Behind)>,
    ) -> Sketch {
        let (left, top, right, bottom) = plan.extent();
        let (view, around, text) = match &on {
            Some((flat, _)) => {
                let view = part_of(flat, plan.extent());
                (view, view.2 * 0.07, view.2 * 0.034)
            }
            None => {
                let wide = f64::max(right - left, (bottom - top) * 0.8);
                let around = wide * 0.22;
                let view = (
                    (left + right - wide) / 2.0 - around,
                    top - around,
                    wide + 2.0 * around,
                    bottom - top + 2.0 * around,
                );
                (view, around * 0.6, view.2 * 0.045)
            }
        };
        let room = (left - around, top - around, right + around, bottom + around);
        let sign = self.sign;
        let distances = plan.legs.iter().map(|leg| {
            let value = format!(
                "{} {}",
                leg.distance.exact(sign),
                leg.distance.unit.symbol()
            );
            dimension(leg, text, value)
        });
        let says: Vec<String> = plan.legs.iter().map(|leg| self.leg(leg)).collect();
        Sketch {
            view: format!(
                "{} {} {} {}",
                Mm(view.0),
                Mm(view.1),
                Mm(view.2),
                Mm(view.3)
            ),
            behind: on.map(|(_, behind)| behind),
            text: Mm(text),
            artwork,
            width: Mm(plan.width),
            height: Mm(plan.height),
            lines: plan
                .legs
                .iter()
                .map(|leg| self.reference(plan, leg, room, text))
                .collect(),
            distances: distances.flatten().collect(),
            anchors: plan
                .legs
                .iter()
                .map(|leg| (Mm(leg.anchor_at.0), Mm(leg.anchor_at.1)))
                .collect(),
            dot: Mm(text * 0.22),
            says: says.join("; "),
        }
    }

    /// A distance in words: `10.2 cm from Centre front to right`.
    fn leg(&self, leg: &Leg) -> String {
        let value = format!(
            "{} {}",
            leg.distance.exact(self.sign),
            leg.distance.unit.symbol()
        );
        let (line, anchor) = (self.line(leg).1, self.t.name(&leg.anchor));
        self.t
            .say("plates-distance")
            .with("value", value)
            .with("line", line)
            .with("anchor", anchor)
            .to_string()
    }

    /// A line with its name at the end that is away from the other line, so that the corner where
    /// they meet stays clear.
    fn reference(
        &self,
        plan: &Plan,
        leg: &Leg,
        room: (f64, f64, f64, f64),
        text: f64,
    ) -> Reference {
        let (kind, name) = self.line(leg);
        let at = leg.line_at;
        let (left, top, right, bottom) = room;
        match leg.axis {
            Axis::Across => {
                let below = plan.leg(Axis::Down).is_none_or(|it| it.line_at <= 0.0);
                let y = if below {
                    bottom + text * 1.1
                } else {
                    top - text * 0.4
                };
                Reference {
                    kind,
                    path: format!("M{} {}V{}", Mm(at), Mm(top), Mm(bottom)),
                    name,
                    at: (Mm(at), Mm(y)),
                    hold: match at {
                        at if at < 0.0 => "start",
                        at if at > plan.width => "end",
                        _ => "middle",
                    },
                }
            }
            Axis::Down => {
                let across = plan.leg(Axis::Across);
                let at_left = across.is_none_or(|it| it.line_at > plan.width / 2.0);
                let (x, hold) = if at_left {
                    (left, "start")
                } else {
                    (right, "end")
                };
                let beside = if at > plan.height / 2.0 {
                    text * 1.1
                } else {
                    -text * 0.4
                };
                Reference {
                    kind,
                    path: format!("M{} {}H{}", Mm(left), Mm(at), Mm(right)),
                    name,
                    at: (Mm(x), Mm(at + beside)),
                    hold,
                }
            }
        }
    }
}

/// The part of a flat that shows a plan of this extent with what is around it: half of the picture,
/// or more where the plan needs it.
fn part_of(
    flat: &OnFlat,
    (left, top, right, bottom): (f64, f64, f64, f64),
) -> (f64, f64, f64, f64) {
    let tall = flat.height / flat.width;
    let needs = f64::max(right - left, (bottom - top) / tall) * 1.4;
    let wide = f64::max(flat.width / 2.0, needs).min(flat.width);
    // Around the plan's middle, but not beyond the picture.
    let begin = |middle: f64, long: f64, whole: f64, before: f64| {
        (middle - long / 2.0).clamp(-before, f64::max(whole - long - before, -before))
    };
    (
        begin((left + right) / 2.0, wide, flat.width, flat.left),
        begin((top + bottom) / 2.0, wide * tall, flat.height, flat.top),
        wide,
        wide * tall,
    )
}

/// From a line to the artwork; nothing where they touch.
fn dimension(leg: &Leg, text: f64, value: String) -> Option<Dimension> {
    let (x, y) = leg.anchor_at;
    let at = leg.line_at;
    if mm(leg.distance.nm) == 0.0 {
        return None;
    }
    Some(match leg.axis {
        Axis::Across => Dimension {
            path: format!("M{} {}H{}", Mm(at), Mm(y), Mm(x)),
            heads: heads((at, y), (x, y), if at < x { 180 } else { 0 }),
            value,
            at: (Mm((at + x) / 2.0), Mm(y - text * 0.4)),
            hold: "middle",
        },
        Axis::Down => Dimension {
            path: format!("M{} {}V{}", Mm(x), Mm(at), Mm(y)),
            heads: heads((x, at), (x, y), if at < y { 270 } else { 90 }),
            value,
            at: (Mm(x + text * 0.4), Mm((at + y) / 2.0 + text * 0.35)),
            hold: "start",
        },
    })
}

/// Heads that point away from each other; `outward` is where the first one points to.
fn heads(from: (f64, f64), to: (f64, f64), outward: i32) -> [(Mm, Mm, i32); 2] {
    [
        (Mm(from.0), Mm(from.1), outward),
        (Mm(to.0), Mm(to.1), outward + 180),
    ]
}
