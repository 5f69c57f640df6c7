//! A callout: what its stitch and seam are called, and the drawing that shows it larger.

use askama::Template;

use crate::language::{INSTRUCTIONS, Language, Text, is_ready};
use crate::spec::document::{Callout, Drawing};
use crate::spec::fabric;
use crate::spec::stitch::{Tables, class, seam_class};
use crate::spec::table::Source;
use crate::web::plates::{Bench, Mm, Picture};

#[derive(Template)]
#[template(path = "brand/beside_callout.html")]
pub struct CalloutPlate {
    t: Text,
    stitches: Vec<Named>,
    seam: Option<Named>,
    /// Per inch, to a tenth.
    per_inch: Option<String>,
    drawings: Vec<Larger>,
    /// Ready instructions, with three dots where a figure goes.
    instructions: Vec<String>,
    /// The text as it stands is read in every language.
    ready: bool,
}

/// A number or class of a standard, and what it is called.
struct Named {
    /// As it was typed; empty for a class that was chosen.
    code: String,
    /// In the tables' words; empty where only the number is known.
    meaning: String,
    /// The class that it belongs to; empty for none.
    class: String,
    /// How far it was checked; empty where the tables have no such number.
    status: String,
}

/// A drawing that shows it.
struct Larger {
    picture: Picture,
    title: String,
    /// Where its letter stands, when the picture is 100 wide, and how high it is then.
    spots: Vec<(Mm, Mm)>,
    tall: Mm,
}

impl CalloutPlate {
    pub fn of(bench: Bench<'_>, callout: &Callout) -> CalloutPlate {
        let t = bench.t;
        let numbers = callout.stitch.split('+').map(str::trim);
        let numbers = numbers.filter(|number| !number.is_empty());
        let per_inch = callout.density.and_then(fabric::per_inch);
        let drawings = bench.spec.drawings.drawings.iter();
        let drawings = drawings.filter(|drawing| {
            let marked = drawing.markers.iter().any(|it| it.item == callout.id);
            marked || callout.detail.as_ref() == Some(&drawing.id)
        });
        CalloutPlate {
            t,
            stitches: numbers.map(|number| stitch(t, number)).collect(),
            seam: seam(t, callout),
            per_inch: per_inch.map(|it| it.rounded(1).show(bench.sign)),
            drawings: drawings
                .filter_map(|it| larger(bench, callout, it))
                .collect(),
            instructions: instructions(),
            ready: is_ready(&callout.text),
        }
    }

    fn is_empty(&self) -> bool {
        self.stitches.is_empty() && self.seam.is_none() && self.drawings.is_empty()
    }
}

/// In the original: they are known by its words.
fn instructions() -> Vec<String> {
    let t = Language::ORIGINAL.text();
    let each = INSTRUCTIONS.iter();
    each.map(|id| t.instruction(id, "…")).collect()
}

fn stitch(t: Text, number: &str) -> Named {
    let known = Tables::shipped().stitch(number);
    let source = known.map(|it| status(t, &it.source));
    Named {
        code: number.to_owned(),
        meaning: known.map(|it| it.meaning.clone()).unwrap_or_default(),
        class: class(number)
            .map(|it| t.name(&it).to_string())
            .unwrap_or_default(),
        status: source.unwrap_or_else(|| t.say("beside-not-in-table").to_string()),
    }
}

/// By the chosen class, else by what the full designation begins with.
fn seam(t: Text, callout: &Callout) -> Option<Named> {
    let class = callout.seam.or_else(|| seam_class(&callout.seam_code))?;
    let known = Tables::shipped().seam(class);
    Some(Named {
        code: callout.seam_code.trim().to_owned(),
        meaning: known.map(|it| it.letters.clone()).unwrap_or_default(),
        class: t.name(&class).to_string(),
        status: known.map(|it| status(t, &it.source)).unwrap_or_default(),
    })
}

fn status(t: Text, source: &Source) -> String {
    t.name(&source.status).to_string()
}

fn larger(bench: Bench<'_>, callout: &Callout, drawing: &Drawing) -> Option<Larger> {
    let markers = drawing.markers.iter().filter(|it| it.item == callout.id);
    let tall = 100.0 * f64::from(drawing.height) / f64::from(drawing.width.max(1));
    Some(Larger {
        picture: bench.picture([Some(&drawing.file), None])?,
        title: match drawing.title.as_str() {
            "" => bench.t.name(&drawing.view).to_string(),
            title => title.to_owned(),
        },
        spots: markers
            .map(|it| {
                (
                    Mm(f64::from(it.x) / 100.0),
                    Mm(f64::from(it.y) / 10_000.0 * tall),
                )
            })
            .collect(),
        tall: Mm(tall),
    })
}
