//! What must hold of every document that can be read, however it came about.

use fellseam::exchange::revision::Frozen;
use fellseam::language::Language;
use fellseam::spec::canon::{from_canonical, from_json, to_canonical};
use fellseam::spec::change::{Version, changes};
use fellseam::spec::{Chart, DecimalSign, Spec, Unit, check, grade};
use serde_json::Value;

/// Bytes from anywhere: read or refused, never a panic; what is read is written back the same.
pub fn read(bytes: &[u8]) {
    if let Ok(value) = from_canonical::<Value>(bytes) {
        let again = to_canonical(&value).expect("what was read can be written");
        assert_eq!(again, bytes, "there is one canonical writing");
        let other: Value = serde_json::from_slice(bytes).expect("other readers take it too");
        assert_eq!(other, value);
    }
    if let Ok(frozen) = Frozen::read(bytes) {
        // Not to the byte: an empty text that was written out is left out the next time.
        let (sealed, _) = frozen.seal().expect("what was read can be sealed");
        assert_eq!(Frozen::read(&sealed).as_ref(), Ok(&frozen));
        assert_eq!(Frozen::read_json(bytes).as_ref(), Ok(&frozen));
        holds(&frozen.spec);
    }
    if let Ok(spec) = from_json::<Spec>(bytes) {
        holds(&spec);
    }
}

/// A spec of any content is graded, checked, compared and told without a panic.
pub fn holds(spec: &Spec) {
    let written = to_canonical(spec).expect("a spec that was read can be written");
    let again: Spec = from_canonical(&written).expect("and read again");
    assert_eq!(&again, spec);
    assert_eq!(to_canonical(&again).expect("and written"), written);

    let graded = grade(spec);
    let chart = graded.chart(spec);
    if let Some(chart) = &chart {
        let written = to_canonical(chart).expect("a chart can be written");
        let again: Chart = from_canonical(&written).expect("and read again");
        assert_eq!(&again, chart);
    }
    let t = Language::English.text();
    for finding in check(spec, &graded) {
        let unit = spec.header.unit.unwrap_or(Unit::Cm);
        let said = t.finding(&finding, unit, DecimalSign::Point).to_string();
        assert!(!said.contains("{$"), "{said}");
    }
    let new = Version {
        spec,
        chart: chart.as_ref(),
    };
    let nothing = Spec::default();
    let old = Version {
        spec: &nothing,
        chart: None,
    };
    for (old, new) in [(old, new), (new, old)] {
        let list = changes(old, new);
        for line in t.change_lines(&list, old, new, DecimalSign::Comma) {
            t.change_sentence(&line);
        }
    }
    assert!(changes(new, new).is_empty());
}
