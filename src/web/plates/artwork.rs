//! Artwork at its true size between rulers, and where it goes: its box and its distances, by
//! themselves and on the flat.

use std::fmt::Write;

use askama::Template;

use super::sketch::Sketch;
use super::{Bench, Mm, Picture};
use crate::language::Text;
use crate::spec::document::{Artwork, Band};
use crate::spec::placement::{self, Axis, Found, NoFlat, OnFlat, Placed, Plan};
use crate::spec::ruler::{CARD, Rank, marks};
use crate::spec::units::{Entered, Unit};

/// All bands of one artwork.
#[derive(Template)]
#[template(path = "plates/artwork.html")]
pub struct ArtworkPlate {
    t: Text,
    /// Letter and name.
    name: String,
    bands: Vec<BandPlate>,
}

/// Size and place in some sizes.
struct BandPlate {
    /// `XS to L`; of all sizes where it is empty.
    sizes: String,
    true_size: TrueSize,
    schematic: Sketch,
    /// On the flat; or why not, in a sentence.
    flat: Result<Sketch, String>,
    /// What the drawing on the flat goes by.
    notes: Vec<String>,
}

/// The artwork between three rulers, in millimetres.
struct TrueSize {
    picture: Option<Picture>,
    /// `32 × 32 mm`.
    size: String,
    /// Of the artwork.
    width: Mm,
    height: Mm,
    /// Of all of it.
    whole: (Mm, Mm),
    /// Marks and numbers: centimetres above and at the left, inches below.
    ticks: String,
    numbers: Vec<Number>,
    /// The picture has other proportions than the size that is asked for.
    askew: Option<String>,
}

struct Number {
    x: Mm,
    y: Mm,
    number: u32,
}

/// Room of the rulers around the artwork, in millimetres.
const RULER: f64 = 9.0;
/// Pictures and sizes agree when their proportions do within this part.
const ASKEW: f64 = 0.01;

impl ArtworkPlate {
    pub fn of(bench: Bench<'_>, artwork: &Artwork) -> ArtworkPlate {
        let bands = artwork.bands.iter();
        let bands = bands.filter_map(|band| {
            let placed = placement::place(bench.spec, artwork, band, bench.values)?;
            Some(bench.band(artwork, band, &placed))
        });
        ArtworkPlate {
            t: bench.t,
            name: format!("{} {}", artwork.letter, artwork.name)
                .trim()
                .to_owned(),
            bands: bands.collect(),
        }
    }

    /// A bank card, to hold against the screen.
    fn card(&self) -> (Mm, Mm) {
        (Mm(CARD.0), Mm(CARD.1))
    }
}

impl Bench<'_> {
    fn band(&self, artwork: &Artwork, band: &Band, placed: &Placed) -> BandPlate {
        let t = self.t;
        let picture = || self.picture([artwork.preview.as_ref(), artwork.file.as_ref()]);
        let plan = &placed.plan;
        let mut notes = Vec::new();
        let flat = match &placed.flat {
            Err(NoFlat::NoDrawing) => Err(t.say("plates-no-drawing").to_string()),
            Err(NoFlat::NoScale) => Err(t.say("plates-no-scale").to_string()),
            Err(NoFlat::NoPlace) => Err(t
                .say("plates-no-place")
                .with("letter", artwork.letter.as_str())
                .to_string()),
            Ok(flat) => {
                notes = self.goes_by(artwork, placed, flat);
                self.behind(flat)
                    .map(|behind| self.sketch(plan, picture(), Some((flat, behind))))
                    .ok_or_else(|| t.say("plates-no-picture").to_string())
            }
        };
        if !plan.is_whole() {
            notes.insert(0, t.say("plates-one-way").to_string());
        }
        BandPlate {
            sizes: self.sizes(band),
            true_size: self.true_size(band, plan, picture()),
            schematic: self.sketch(plan, picture(), None),
            flat,
            notes,
        }
    }

    fn sizes(&self, band: &Band) -> String {
        match (&band.from, &band.to) {
            (None, None) => String::new(),
            (Some(only), None) | (None, Some(only)) => self.size(only),
            (Some(from), Some(to)) if from == to => self.size(from),
            (Some(from), Some(to)) => {
                let (from, to) = (self.size(from), self.size(to));
                let sizes = self
                    .t
                    .say("artwork-sizes")
                    .with("from", from)
                    .with("to", to);
                sizes.to_string()
            }
        }
    }

    fn true_size(&self, band: &Band, plan: &Plan, picture: Option<Picture>) -> TrueSize {
        let (width, height) = (plan.width, plan.height);
        let exact = |length: Option<Entered>| {
            length
                .map(|it| it.nm.exact(Unit::Mm, self.sign))
                .unwrap_or_default()
        };
        let mut ticks = String::new();
        let mut numbers = Vec::new();
        let mut right = 0.0;
        let mut below = 0.0;
        let long = |rank: Rank| match rank {
            Rank::Fine => 1.4,
            Rank::Half => 2.4,
            Rank::Whole => 3.6,
        };
        for mark in marks(width, Unit::Cm) {
            let x = RULER + mark.at;
            mark_at(&mut ticks, (x, RULER - 0.6), (0.0, -long(mark.rank)));
            number(&mut numbers, (x, 3.2), mark.number);
            right = f64::max(right, x);
        }
        for mark in marks(height, Unit::Cm) {
            let y = RULER + mark.at;
            mark_at(&mut ticks, (RULER - 0.6, y), (-long(mark.rank), 0.0));
            number(&mut numbers, (2.4, y + 0.9), mark.number);
            below = f64::max(below, y);
        }
        for mark in marks(width, Unit::Inch) {
            let x = RULER + mark.at;
            mark_at(&mut ticks, (x, below + 1.6), (0.0, long(mark.rank)));
            number(&mut numbers, (x, below + 8.0), mark.number);
            right = f64::max(right, x);
        }
        TrueSize {
            size: self
                .t
                .say("artwork-true-size")
                .with("width", exact(band.width))
                .with("height", exact(band.height))
                .to_string(),
            askew: picture.as_ref().and_then(|it| self.askew(plan, it)),
            picture,
            width: Mm(width),
            height: Mm(height),
            whole: (Mm(right + 3.0), Mm(below + 9.0)),
            ticks,
            numbers,
        }
    }

    /// Says when the picture has other proportions than the size.
    fn askew(&self, plan: &Plan, picture: &Picture) -> Option<String> {
        let drawn = f64::from(picture.width) / f64::from(picture.height.max(1));
        let asked = plan.width / plan.height;
        let per_hundred = |ratio: f64| format!("{:.0} : 100", ratio * 100.0);
        ((drawn / asked - 1.0).abs() > ASKEW).then(|| {
            let (drawn, asked) = (per_hundred(drawn), per_hundred(asked));
            let text = self
                .t
                .say("plates-askew")
                .with("drawn", drawn)
                .with("asked", asked);
            text.to_string()
        })
    }

    /// What tells where the artwork lies on the flat.
    fn goes_by(&self, artwork: &Artwork, placed: &Placed, flat: &OnFlat) -> Vec<String> {
        let t = self.t;
        let size = placed.size.as_ref().map(|id| self.size(id));
        let scale = match flat.scale.of {
            1 => t
                .say("plates-scale-one")
                .with("size", size.unwrap_or_default()),
            of => t
                .say("plates-scale")
                .with("size", size.unwrap_or_default())
                .with("agree", flat.scale.agree)
                .with("of", of),
        };
        let mut notes = vec![scale.to_string()];
        let base = self.spec.header.base_size.as_ref();
        if let Some(base) = base.filter(|base| placed.size.as_ref() != Some(*base)) {
            let base = self.size(base);
            notes.push(t.say("plates-other-size").with("base", base).to_string());
        }
        for (axis, found) in [(Axis::Across, &flat.across), (Axis::Down, &flat.down)] {
            let line = placed.plan.leg(axis).map(|leg| self.line(leg).1);
            let line = line.unwrap_or_default();
            let letter = artwork.letter.as_str();
            let across = axis == Axis::Across;
            notes.push(match found {
                Found::Middle => t.say("plates-by-middle").with("line", line).to_string(),
                Found::Line(point) => {
                    let point = self.point(point);
                    t.say("plates-by-line")
                        .with("line", line)
                        .with("point", point)
                        .to_string()
                }
                Found::Letter if across => t
                    .say("plates-by-letter-across")
                    .with("letter", letter)
                    .to_string(),
                Found::Letter => t
                    .say("plates-by-letter-down")
                    .with("letter", letter)
                    .to_string(),
                Found::LetterInstead { point, away } => t
                    .say("plates-by-letter-instead")
                    .with("line", line)
                    .with("point", self.point(point))
                    .with("letter", letter)
                    .with("away", format!("{:.0} mm", away))
                    .to_string(),
            });
        }
        notes
    }
}

fn mark_at(ticks: &mut String, from: (f64, f64), along: (f64, f64)) {
    let step = match along {
        (x, 0.0) => format!("h{}", Mm(x)),
        (_, y) => format!("v{}", Mm(y)),
    };
    // Writing into a string cannot fail.
    let _ = write!(ticks, "M{} {}{step}", Mm(from.0), Mm(from.1));
}

fn number(numbers: &mut Vec<Number>, at: (f64, f64), number: Option<u32>) {
    numbers.extend(number.map(|number| Number {
        x: Mm(at.0),
        y: Mm(at.1),
        number,
    }));
}

#[cfg(test)]
mod tests;
