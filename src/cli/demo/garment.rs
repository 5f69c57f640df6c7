//! How the demo's specs are written down: in short lines, as a person would type them.

use std::collections::BTreeMap;

use crate::spec::document::*;
use crate::spec::{Digest, Entered, ItemId, Spec, Unit};

/// Where a letter stands: the view, and ten-thousandths of its width and height.
pub type Place = (View, u16, u16);

/// The parts, each with its letter, name and, where it is drawn, its place.
pub type Parts = &'static [(&'static str, &'static str, Option<Place>)];

/// The colourways, each with its code, name and a cell for every part, in their order.
pub type Ways = &'static [(&'static str, &'static str, &'static [Dye])];

/// One garment as the demo knows it. Drawings come from files, and are added when those are kept.
pub struct Garment {
    pub header: Header,
    /// Codes and labels, smallest first.
    pub sizes: &'static [(&'static str, &'static str)],
    pub lines: Vec<Line>,
    pub parts: Parts,
    pub colourways: Ways,
    /// The flats: view, name of the file, what is in it.
    pub flats: [(View, &'static str, &'static str); 2],
}

/// A cell of the colourways.
#[derive(Clone, Copy)]
pub enum Dye {
    /// Name and screen value; the reference is the brand's own.
    Colour(&'static str, &'static str),
    Natural,
    None,
    /// Dyed to match the part of this letter.
    Match(&'static str),
    /// Not decided yet.
    Open,
}

/// How a value goes from size to size.
#[derive(Clone, Copy)]
pub enum Rule {
    Same,
    /// From a size to a later one, so much for each gap.
    Steps(&'static [(&'static str, &'static str, &'static str)]),
    /// A value for each size.
    Values(&'static [(&'static str, &'static str)]),
    /// The point of this letter and so much more.
    From(&'static str, &'static str),
}

/// One point of measure with its letter on a drawing.
pub struct Line {
    letter: &'static str,
    name: &'static str,
    basis: Basis,
    direction: Direction,
    how: HowToMeasure,
    base: Option<&'static str>,
    within: (&'static str, &'static str),
    rule: Rule,
    nearest: &'static str,
    key: bool,
    critical: bool,
    place: Option<Place>,
}

/// A length along the body: not part of a way round.
pub fn length(letter: &'static str, name: &'static str) -> Line {
    line(letter, name, Basis::Linear, Direction::Length)
}

/// A width across the body that is not part of a way round.
pub fn across(letter: &'static str, name: &'static str) -> Line {
    line(letter, name, Basis::Linear, Direction::Width)
}

/// A width laid flat, edge to edge: half of the way round.
pub fn half(letter: &'static str, name: &'static str) -> Line {
    line(letter, name, Basis::Half, Direction::Width)
}

/// All the way round.
pub fn full(letter: &'static str, name: &'static str) -> Line {
    line(letter, name, Basis::Full, Direction::Width)
}

fn line(letter: &'static str, name: &'static str, basis: Basis, direction: Direction) -> Line {
    Line {
        letter,
        name,
        basis,
        direction,
        how: HowToMeasure {
            path: Some(Path::Straight),
            ..HowToMeasure::default()
        },
        base: None,
        within: ("0", "0"),
        rule: Rule::Same,
        nearest: "0.1",
        key: false,
        critical: false,
        place: None,
    }
}

impl Line {
    pub fn between(mut self, start: &str, end: &str) -> Self {
        self.how.start = start.to_owned();
        self.how.end = end.to_owned();
        self
    }

    /// Along the curve.
    pub fn curved(mut self) -> Self {
        self.how.path = Some(Path::Curved);
        self
    }

    pub fn stretched(mut self) -> Self {
        self.how.stretched = true;
        self
    }

    pub fn note(mut self, note: &str) -> Self {
        self.how.note = note.to_owned();
        self
    }

    /// The value at the base size.
    pub fn base(mut self, value: &'static str) -> Self {
        self.base = Some(value);
        self
    }

    /// The tolerance to either side.
    pub fn within(self, tolerance: &'static str) -> Self {
        self.within_each(tolerance, tolerance)
    }

    pub fn within_each(mut self, minus: &'static str, plus: &'static str) -> Self {
        self.within = (minus, plus);
        self
    }

    pub fn rule(mut self, rule: Rule) -> Self {
        self.rule = rule;
        self
    }

    /// The step that each size is rounded to.
    pub fn nearest(mut self, step: &'static str) -> Self {
        self.nearest = step;
        self
    }

    pub fn key(mut self) -> Self {
        self.key = true;
        self
    }

    pub fn critical(mut self) -> Self {
        self.critical = true;
        self
    }

    pub fn at(mut self, view: View, x: u16, y: u16) -> Self {
        self.place = Some((view, x, y));
        self
    }

    fn point(&self, unit: Unit) -> Point {
        let entered = |text: &str| entered(text, unit);
        Point {
            id: point_id(self.letter),
            letter: self.letter.to_owned(),
            name: self.name.to_owned(),
            how: self.how.clone(),
            basis: Some(self.basis),
            direction: Some(self.direction),
            key: self.key,
            critical: self.critical,
            minus: Some(entered(self.within.0)),
            plus: Some(entered(self.within.1)),
            base: self.base.map(entered),
            grade: Some(self.rule.grade(unit)),
            step: Some(entered(self.nearest)),
            ..Point::default()
        }
    }
}

impl Rule {
    pub fn grade(self, unit: Unit) -> Grade {
        match self {
            Rule::Same => Grade::Same {},
            Rule::Steps(steps) => {
                let segments = steps.iter().map(|(from, to, step)| Segment {
                    from: size_id(from),
                    to: size_id(to),
                    step: entered(step, unit),
                });
                Grade::Segments {
                    segments: segments.collect(),
                }
            }
            Rule::Values(values) => {
                let values = values.iter();
                let values = values.map(|(size, value)| (size_id(size), entered(value, unit)));
                Grade::Explicit {
                    values: values.collect(),
                }
            }
            Rule::From(letter, offset) => Grade::Derived {
                from: point_id(letter),
                offset: entered(offset, unit),
            },
        }
    }
}

impl Garment {
    /// The spec without its drawings.
    pub fn spec(&self) -> Spec {
        let unit = self.header.unit.unwrap_or(Unit::Cm);
        let sizes = self.sizes.iter().map(|(code, label)| Size {
            id: size_id(code),
            code: (*code).to_owned(),
            label: (*label).to_owned(),
            ..Size::default()
        });
        Spec {
            header: self.header.clone(),
            sizes: Sizes {
                sizes: sizes.collect(),
                ..Sizes::default()
            },
            drawings: Drawings::default(),
            points: Points {
                points: self.lines.iter().map(|line| line.point(unit)).collect(),
            },
            colourways: self.colourways(),
            ..Spec::default()
        }
    }

    /// A flat with every letter that stands on it, once its file is kept.
    pub fn drawing(&self, view: View, file: Digest, width: u32, height: u32) -> Drawing {
        let points = self
            .lines
            .iter()
            .filter_map(|line| Some((point_id(line.letter), line.letter, line.place?)));
        let parts = self
            .parts
            .iter()
            .filter_map(|(letter, _, place)| Some((part_id(letter), *letter, (*place)?)));
        let here = points
            .chain(parts)
            .filter(|(_, _, (side, _, _))| *side == view);
        let markers = here.map(|(item, letter, (_, x, y))| Marker {
            id: ItemId::new(format!("marker-{}", letter.to_lowercase())),
            item,
            x,
            y,
        });
        let name = match view {
            View::Back => "drawing-back",
            _ => "drawing-front",
        };
        Drawing {
            id: ItemId::new(name),
            view,
            // The view says enough.
            title: String::new(),
            file,
            width,
            height,
            markers: markers.collect(),
            lines: Vec::new(),
            blow_ups: Vec::new(),
        }
    }

    fn colourways(&self) -> Colourways {
        let parts = self.parts.iter().map(|(letter, name, _)| Part {
            id: part_id(letter),
            letter: (*letter).to_owned(),
            name: (*name).to_owned(),
        });
        let colourways = self.colourways.iter().map(|(code, name, _)| Colourway {
            id: colourway_id(code),
            code: (*code).to_owned(),
            name: (*name).to_owned(),
            ..Colourway::default()
        });
        let cells = self.colourways.iter().map(|(code, _, dyes)| {
            let parts = self.parts.iter().map(|(letter, _, _)| part_id(letter));
            let cells = parts.zip(*dyes);
            let cells = cells.filter_map(|(part, dye)| Some((part, dye.cell()?)));
            (colourway_id(code), cells.collect::<BTreeMap<_, _>>())
        });
        Colourways {
            parts: parts.collect(),
            colourways: colourways.collect(),
            cells: cells.collect(),
        }
    }
}

impl Dye {
    fn cell(self) -> Option<Cell> {
        Some(match self {
            Dye::Colour(name, screen) => Cell::Colour(Colour {
                name: name.to_owned(),
                reference: format!("H&T {name}"),
                screen: Some(screen.to_owned()),
                ..Colour::default()
            }),
            Dye::Natural => Cell::Natural {},
            Dye::None => Cell::None {},
            Dye::Match(letter) => Cell::DyedToMatch {
                part: part_id(letter),
            },
            Dye::Open => return None,
        })
    }
}

pub fn point_id(letter: &str) -> ItemId {
    ItemId::new(format!("point-{}", letter.to_lowercase()))
}

pub fn size_id(code: &str) -> ItemId {
    ItemId::new(format!("size-{}", code.to_lowercase()))
}

fn part_id(letter: &str) -> ItemId {
    ItemId::new(format!("part-{}", letter.to_lowercase()))
}

fn colourway_id(code: &str) -> ItemId {
    ItemId::new(format!("colourway-{}", code.to_lowercase()))
}

/// A value as somebody types it.
pub fn entered(text: &str, unit: Unit) -> Entered {
    Entered::read(text, unit)
        .expect("the demo's own values are lengths, and its tests read them all")
}
