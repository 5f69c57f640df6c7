//! Faults of header, sizes, drawings and points.

use std::collections::BTreeMap;

use fellseam::spec::document::*;

use super::spoil::*;
use super::{Fault, HALF_ZIP, JACKET, SHORTS, fault};

pub fn faults() -> Vec<Fault> {
    [
        header(),
        sizes(),
        drawings(),
        points(),
        grades(),
        relations(),
    ]
    .concat()
}

fn header() -> Vec<Fault> {
    vec![
        fault(HALF_ZIP, "number-missing", "", |s| s.header.number.clear()),
        fault(HALF_ZIP, "name-missing", "", |s| s.header.name.clear()),
        fault(HALF_ZIP, "unit-missing", "", |s| s.header.unit = None),
        fault(SHORTS, "base-size-missing", "", |s| {
            s.header.base_size = None
        }),
        fault(SHORTS, "base-size-unknown", "", |s| {
            s.header.base_size = Some(id("size-xs"));
        }),
        fault(JACKET, "measuring-state-missing", "", |s| {
            s.header.measured = None
        }),
        fault(HALF_ZIP, "markets-none", "", |s| s.header.markets.clear()),
        fault(HALF_ZIP, "wearer-missing", "", |s| s.header.wearer = None),
        fault(JACKET, "languages-missing", "", |s| {
            s.header.languages.clear()
        }),
        fault(SHORTS, "origin-missing", "", |s| s.header.origin.clear()),
        fault(JACKET, "exemption-void", "", |s| {
            s.header.exemptions.push(Exemption {
                code: "cell-empty".to_owned(),
                reason: "decided later".to_owned(),
                by: "the designer".to_owned(),
            });
        }),
    ]
}

fn sizes() -> Vec<Fault> {
    vec![
        fault(HALF_ZIP, "size-code-missing", "size-l", |s| {
            size(s, "l").code.clear()
        }),
        fault(HALF_ZIP, "size-code-twice", "size-s", |s| {
            size(s, "s").code = "xs".to_owned();
        }),
        fault(JACKET, "size-age-missing", "", |s| {
            s.sizes.system = None;
            for size in &mut s.sizes.sizes {
                size.ages = None;
                size.body.clear();
            }
        }),
        fault(SHORTS, "lengths-partial", "point-e", |s| {
            let length = |code: &str| LengthOption {
                id: id(&format!("length-{code}")),
                code: code.to_owned(),
                ..LengthOption::default()
            };
            s.sizes.lengths = ["short", "long"].map(length).into();
            point(s, "e").lengths = BTreeMap::from([(id("length-long"), mm(50))]);
        }),
    ]
}

fn drawings() -> Vec<Fault> {
    vec![
        fault(HALF_ZIP, "point-unmarked", "point-b", |s| {
            unmark(s, "point-b")
        }),
        fault(SHORTS, "item-unmarked", "callout-6", |s| {
            unmark(s, "callout-6")
        }),
        fault(JACKET, "item-unmarked", "label-care", |s| {
            unmark(s, "label-care")
        }),
        fault(HALF_ZIP, "marker-adrift", "marker-p1", |s| {
            marker(s, "part-1").item = id("part-99");
        }),
        fault(HALF_ZIP, "marker-adrift", "marker-b", |s| {
            marker(s, "point-b").item = id("point-zz");
        })
        .follows(&[("point-unmarked", "point-b")]),
        fault(JACKET, "marker-outside", "marker-b", |s| {
            marker(s, "point-b").x = 10_001
        }),
        fault(SHORTS, "dimension-adrift", "dimension-d", |s| {
            dimension(s, "point-d").item = id("part-1");
        }),
        fault(SHORTS, "dimension-outside", "dimension-d", |s| {
            dimension(s, "point-d").to.y = 12_000;
        }),
        fault(HALF_ZIP, "blow-up-adrift", "blow-up-collar", |s| {
            drawing(s, "front").blow_ups[0].drawing = id("drawing-front");
        }),
        fault(SHORTS, "side-view-missing", "", |s| {
            s.header.asymmetric = true
        })
        .follows(&[("side-view-missing", "")]),
    ]
}

fn points() -> Vec<Fault> {
    vec![
        fault(HALF_ZIP, "point-letter-missing", "point-c", |s| {
            point(s, "c").letter.clear()
        }),
        fault(HALF_ZIP, "point-letter-twice", "point-c", |s| {
            point(s, "c").letter = "B".to_owned();
        }),
        fault(HALF_ZIP, "point-name-missing", "point-c", |s| {
            point(s, "c").name.clear()
        }),
        fault(JACKET, "how-start-missing", "point-n", |s| {
            point(s, "n").how.start.clear()
        }),
        fault(JACKET, "how-end-missing", "point-n", |s| {
            point(s, "n").how.end.clear()
        }),
        fault(JACKET, "point-basis-missing", "point-g", |s| {
            point(s, "g").basis = None
        }),
        fault(SHORTS, "point-base-missing", "point-m", |s| {
            point(s, "m").base = None
        }),
        fault(SHORTS, "point-grade-missing", "point-m", |s| {
            point(s, "m").grade = None
        }),
        fault(SHORTS, "point-step-missing", "point-m", |s| {
            point(s, "m").step = None
        }),
        fault(SHORTS, "point-minus-missing", "point-m", |s| {
            point(s, "m").minus = None
        }),
        fault(SHORTS, "point-plus-missing", "point-m", |s| {
            point(s, "m").plus = None
        }),
        // A tolerance of nothing in all is also less than the step.
        fault(HALF_ZIP, "tolerance-negative", "point-s", |s| {
            point(s, "s").minus = Some(mm(-3));
        })
        .follows(&[("step-coarse", "point-s")]),
        fault(HALF_ZIP, "tolerance-unit", "point-s", |s| {
            point(s, "s").plus = Some(sixteenths(2));
        }),
        fault(HALF_ZIP, "step-unit", "point-aj", |s| {
            point(s, "aj").step = Some(sixteenths(1));
        }),
        fault(HALF_ZIP, "tolerance-size-unknown", "point-b", |s| {
            let tolerances = &mut point(s, "b").tolerances;
            tolerances.insert(id("size-3xl"), Tolerance::default());
        }),
        fault(HALF_ZIP, "reference-gone", "point-b", |s| {
            point(s, "b").part = Some(id("part-99"));
        }),
        fault(SHORTS, "points-usual", "", |s| point(s, "d").measure = None),
        fault(SHORTS, "dimension-missing", "point-g", |s| {
            point(s, "aj").measure = None
        }),
    ]
}

fn grades() -> Vec<Fault> {
    vec![
        fault(HALF_ZIP, "grade-gap-uncovered", "point-f", |s| {
            steps(s, "f")[0].to = id("size-xl");
        }),
        fault(HALF_ZIP, "grade-gap-twice", "point-f", |s| {
            steps(s, "f").push(segment("size-l", "size-xl", 8));
        }),
        fault(HALF_ZIP, "grade-backwards", "point-f", |s| {
            steps(s, "f").push(segment("size-l", "size-s", 8));
        }),
        fault(HALF_ZIP, "grade-size-unknown", "point-f", |s| {
            steps(s, "f").push(segment("size-2xl", "size-3xl", 8));
        }),
        fault(SHORTS, "grade-size-missing", "point-m", |s| {
            let values = ["size-s", "size-m", "size-l"].map(|size| (id(size), mm(40)));
            let values = BTreeMap::from(values);
            point(s, "m").grade = Some(Grade::Explicit { values });
        }),
        fault(JACKET, "grade-source-missing", "point-ag", |s| {
            point(s, "ag").grade = Some(Grade::Derived {
                from: id("point-zz"),
                offset: mm(-25),
            });
        }),
        fault(HALF_ZIP, "grade-cycle", "point-n", |s| {
            point(s, "n").grade = Some(Grade::Derived {
                from: id("point-k"),
                offset: mm(-12),
            });
        })
        .follows(&[("grade-cycle", "point-k")]),
        fault(HALF_ZIP, "grade-base-disagrees", "point-k", |s| {
            point(s, "k").base = Some(mm(260));
        }),
        fault(HALF_ZIP, "grade-too-long", "point-s", |s| {
            steps(s, "s")[0].step = mm(900_000);
        }),
        fault(HALF_ZIP, "grade-reverses", "point-s", |s| {
            let to_and_fro = [("size-xs", "size-l", 3), ("size-l", "size-2xl", -3)];
            point(s, "s").grade = segments(&to_and_fro);
        }),
        fault(HALF_ZIP, "tolerance-overlaps", "point-b", |s| {
            point(s, "b").plus = Some(mm(12));
        }),
        fault(HALF_ZIP, "step-coarse", "point-aj", |s| {
            point(s, "aj").step = Some(mm(10))
        }),
        fault(HALF_ZIP, "steps-uneven", "point-a", |s| {
            steps(s, "a")[0].step = mm(12)
        }),
        fault(HALF_ZIP, "grade-half-or-full", "point-c", |s| {
            let full = [("size-xs", "size-l", 40), ("size-l", "size-2xl", 50)];
            point(s, "c").grade = segments(&full);
        }),
        fault(HALF_ZIP, "value-not-positive", "point-s", |s| {
            point(s, "s").base = Some(mm(5));
        }),
    ]
}

fn relations() -> Vec<Fault> {
    vec![
        fault(SHORTS, "stretched-below-relaxed", "point-l", |s| {
            point(s, "l").base = Some(mm(350));
        }),
        fault(HALF_ZIP, "stretched-below-relaxed", "point-d", |s| {
            point(s, "d").stretched_min = Some(mm(450));
        }),
        fault(JACKET, "cuff-under-hand", "point-an", |s| {
            for range in &mut size(s, "128").body {
                if range.dimension == Some(BodyDimension::HandGirth) {
                    range.from = Some(mm(260));
                }
            }
        }),
        // Put on over the head, without a zip.
        fault(JACKET, "neck-under-head", "point-ah", |s| {
            s.header.kind = Some(GarmentKind::TShirt);
            point(s, "ah").measure = Some(Measure::NeckOpening);
            point(s, "ah").how.stretched = true;
        }),
        fault(HALF_ZIP, "zip-not-opening", "material-pocket-zip", |s| {
            material(s, "pocket-zip").length = Some(mm(150));
        }),
        fault(SHORTS, "cord-under-channel", "material-cord", |s| {
            let cord = material(s, "cord");
            cord.length_by_size.insert(id("size-xl"), mm(800));
        }),
        fault(SHORTS, "rise-and-inseam", "point-f", |s| {
            point(s, "f").base = Some(mm(550));
        }),
    ]
}
