use super::garment::{Garment, Rule};
use super::half_zip::{CHEST, CHEST_AT_FIRST, half_zip};
use super::rain_jacket::rain_jacket;
use super::trail_shorts::trail_shorts;
use crate::spec::check::{Severity, check};
use crate::spec::{DecimalSign, Digest, ItemId, Spec, from_canonical, grade, to_canonical};

/// As the demo's draft is, once its drawings are kept.
fn whole(garment: &Garment) -> Spec {
    let mut spec = garment.spec();
    for (view, name, text) in garment.flats {
        let drawing = garment.drawing(view, Digest::of(text.as_bytes()), 1000, 1000);
        assert!(!drawing.markers.is_empty(), "{name}");
        spec.drawings.drawings.push(drawing);
    }
    spec
}

fn found(garment: &Garment) -> Vec<(&'static str, Severity)> {
    let spec = whole(garment);
    let found = check(&spec, &grade(&spec)).into_iter();
    found
        .map(|finding| (finding.code.name(), finding.severity()))
        .collect()
}

fn row(spec: &Spec, letter: &str) -> Vec<String> {
    let chart = grade(spec).chart(spec).unwrap();
    let point = ItemId::new(format!("point-{letter}"));
    let row = chart.row(&point).unwrap();
    let show = |value: &crate::spec::Length| value.show(chart.unit, row.step, DecimalSign::Point);
    row.values.iter().map(show).collect()
}

#[test]
fn what_the_demo_publishes_has_nothing_to_mend() {
    assert_eq!(found(&half_zip(CHEST_AT_FIRST)), []);
    assert_eq!(found(&half_zip(CHEST)), []);
    assert_eq!(found(&trail_shorts()), []);
}

#[test]
fn the_draft_shows_what_checks_are_for() {
    assert_eq!(
        found(&rain_jacket()),
        [
            ("point-unmarked", Severity::Error),
            ("steps-uneven", Severity::Warning),
            ("how-end-missing", Severity::Error),
            ("grade-gap-uncovered", Severity::Error),
            ("cell-empty", Severity::Error),
        ]
    );
}

#[test]
fn the_specs_read_back_as_they_were_written() {
    for garment in [half_zip(CHEST), trail_shorts(), rain_jacket()] {
        let spec = whole(&garment);
        let bytes = to_canonical(&spec).unwrap();
        assert_eq!(from_canonical::<Spec>(&bytes).unwrap(), spec);
        let points = spec.points.points.len();
        assert!((10..=14).contains(&points), "{points} points");
        let parts = spec.colourways.parts.len();
        assert!((4..=7).contains(&parts), "{parts} parts");
    }
}

#[test]
fn the_second_revision_moves_the_chest_above_l() {
    let chest = |rule: Rule| row(&whole(&half_zip(rule)), "c");
    assert_eq!(
        chest(CHEST_AT_FIRST),
        ["49.0", "51.0", "53.0", "55.0", "57.0", "59.0"]
    );
    assert_eq!(
        chest(CHEST),
        ["49.0", "51.0", "53.0", "55.0", "57.5", "60.0"]
    );
}

#[test]
fn inches_are_fractions() {
    let spec = whole(&trail_shorts());
    assert_eq!(
        row(&spec, "a"),
        ["12 1/4", "13 1/4", "14 1/4", "15 1/4", "16 1/2"]
    );
    assert_eq!(row(&spec, "n"), ["1 9/16"; 5]);
}

/// EN 14682 and 16 CFR 1120.3 are about cords in hood and neck. Here are none to judge, and no word
/// of the demo judges.
#[test]
fn the_childs_jacket_names_no_cord_and_promises_nothing() {
    let garment = rain_jacket();
    let text = serde_json::to_string(&garment.spec())
        .unwrap()
        .to_lowercase();
    for word in ["cord", "toggle", "tie", "string", "safe", "complian"] {
        assert!(!text.contains(word), "{word}");
    }
    for (_, name, drawing) in garment.flats {
        assert!(!drawing.to_lowercase().contains("cord"), "{name}");
    }
}
