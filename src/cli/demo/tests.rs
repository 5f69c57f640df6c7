use super::packs::{HALF_ZIP, Pack, RAIN_JACKET, TRAIL_SHORTS};
use super::story::sealed::last_year;
use super::story::{at_first, point_id, unfinished};
use crate::spec::check::{Severity, check};
use crate::spec::{DecimalSign, Digest, Spec, grade};

fn edited(pack: &Pack, edit: fn(&mut Spec)) -> Spec {
    let mut spec = pack.spec();
    edit(&mut spec);
    spec
}

fn found(spec: &Spec) -> Vec<(&'static str, Severity)> {
    let found = check(spec, &grade(spec)).into_iter();
    found
        .map(|finding| (finding.code.name(), finding.severity()))
        .collect()
}

fn row(spec: &Spec, letter: &str) -> Vec<String> {
    let chart = grade(spec).chart(spec).unwrap();
    let row = chart.row(&point_id(letter)).unwrap();
    let show = |value: &crate::spec::Length| value.show(chart.unit, row.step, DecimalSign::Point);
    row.values.iter().map(show).collect()
}

#[test]
fn every_drawing_and_artwork_is_brought_along() {
    for pack in [HALF_ZIP, RAIN_JACKET, TRAIL_SHORTS] {
        let spec = pack.spec();
        let drawings = spec.drawings.drawings.iter().map(|it| &it.file);
        let artworks = spec
            .artwork
            .artworks
            .iter()
            .filter_map(|it| it.file.as_ref());
        let brought: Vec<Digest> = {
            let originals = pack.originals.iter();
            originals.map(|(_, bytes)| Digest::of(bytes)).collect()
        };
        for file in drawings.chain(artworks) {
            assert!(brought.contains(file), "{}", spec.header.name);
        }
    }
}

#[test]
fn what_the_demo_publishes_has_nothing_to_mend() {
    assert_eq!(found(&edited(&HALF_ZIP, at_first)), []);
    assert_eq!(found(&HALF_ZIP.spec()), []);
    assert_eq!(found(&TRAIL_SHORTS.spec()), []);
    assert_eq!(found(&edited(&TRAIL_SHORTS, last_year)), []);
}

#[test]
fn the_draft_shows_what_checks_are_for() {
    assert_eq!(
        found(&edited(&RAIN_JACKET, unfinished)),
        [
            ("point-unmarked", Severity::Error),
            ("grade-gap-uncovered", Severity::Error),
            ("how-end-missing", Severity::Error),
            ("cell-empty", Severity::Error),
        ]
    );
    assert_eq!(found(&RAIN_JACKET.spec()), []);
}

#[test]
fn the_second_revision_moves_the_chest_above_l() {
    assert_eq!(
        row(&edited(&HALF_ZIP, at_first), "b"),
        ["49.0", "51.0", "53.0", "55.0", "57.0", "59.0"]
    );
    assert_eq!(
        row(&HALF_ZIP.spec(), "b"),
        ["49.0", "51.0", "53.0", "55.0", "57.5", "60.0"]
    );
}

/// EN 14682 and 16 CFR 1120.3 are about cords in hood and neck. Here are none to judge, and no word
/// of the demo judges.
#[test]
fn the_childs_jacket_names_no_cord_and_promises_nothing() {
    let texts = RAIN_JACKET.originals.iter();
    let texts = texts.map(|(_, bytes)| String::from_utf8_lossy(bytes).into_owned());
    let spec = serde_json::to_string(&RAIN_JACKET.spec()).unwrap();
    for text in texts.chain([spec]) {
        let text = text.to_lowercase();
        let words = text.split(|c: char| !c.is_alphabetic());
        for word in words {
            let told = [
                "cord",
                "drawcord",
                "drawstring",
                "toggle",
                "tie",
                "ties",
                "string",
                "safe",
            ];
            assert!(
                !told.contains(&word) && !word.starts_with("complian"),
                "{word}"
            );
        }
    }
}
