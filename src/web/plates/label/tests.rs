use super::*;
use crate::language::Language;
use crate::spec::example::half_zip;
use crate::spec::placement::Values;
use crate::spec::units::{DecimalSign, Entered, Length};
use crate::spec::{Digest, Spec, StyleId};
use crate::store::StyleFile;

fn written(spec: &Spec, label: usize, files: &[StyleFile]) -> String {
    let values: Values<'_> = &|_, _| None;
    let bench = Bench {
        t: Language::English.text(),
        style: &StyleId::new("style-1"),
        spec,
        sign: DecimalSign::Point,
        values,
        compose: &|market, language| crate::spec::label::compose(spec, market, language),
        files,
    };
    LabelPlate::of(bench, &spec.labels.labels[label])
        .render()
        .unwrap()
}

fn example() -> Spec {
    let mut spec = half_zip(Digest::of(b"front"));
    spec.labels.labels[1].text_height = Some(mm_of(1.5));
    spec
}

fn mm_of(mm: f64) -> Entered {
    Entered {
        nm: Length::nm((mm * 1e6) as i64),
        unit: Unit::Mm,
    }
}

#[test]
fn a_label_is_drawn_open_and_folded_to_one_scale() {
    let page = written(&example(), 1, &[]);
    // 1 1/4 × 3 in open, 1 1/2 in folded: three times as large is 95 × 229 mm.
    assert!(
        page.contains("31.75 × 76.2 mm") && page.contains("31.75 × 38.1 mm"),
        "{page}"
    );
    assert!(page.contains("Drawn 3 times as large"), "{page}");
    assert!(page.contains(r#"d="M0 38.1H31.75""#), "the fold: {page}");
    assert!(!page.contains("style=\""));
}

#[test]
fn care_stands_in_words_and_no_sign_is_drawn() {
    let page = written(&example(), 1, &[]);
    for words in ["Wash at 30", "bleach.", "iron"] {
        assert!(
            page.to_lowercase().contains(&words.to_lowercase()),
            "{words}: {page}"
        );
    }
    assert!(!page.contains("care-sign"));
    // Nothing is drawn but the outline, the fold, the ruler and letters.
    assert_eq!(
        page.matches("<path").count(),
        page.matches("true-ticks").count() + page.matches("label-fold").count()
    );
}

#[test]
fn a_text_without_room_is_warned_of_as_an_estimate() {
    let mut spec = example();
    assert!(!written(&spec, 1, &[]).contains("seems not to fit"));
    spec.labels.labels[1].height = Some(mm_of(20.0));
    spec.labels.labels[1].folded_height = None;
    let page = written(&spec, 1, &[]);
    assert!(
        page.contains("seems not to fit") && page.contains("An estimate"),
        "{page}"
    );
    assert!(page.contains("label-text over"), "{page}");
}

#[test]
fn what_the_program_has_no_words_for_is_told() {
    let mut spec = example();
    spec.header.languages = vec!["xx".to_owned()];
    spec.header.origin.clear();
    let page = written(&spec, 1, &[]);
    assert!(page.contains("no words for care in xx"), "{page}");
    assert!(page.contains("No composition in xx"), "{page}");
    assert!(page.contains("No country of origin is said"), "{page}");
}

#[test]
fn a_label_with_artwork_shows_it_in_its_outline() {
    let mut spec = example();
    spec.labels.labels[0].artwork = Some(Digest::of(b"brand"));
    let files = [StyleFile {
        digest: Digest::of(b"brand"),
        name: "brand.svg".to_owned(),
        width: 100,
        height: 50,
        pictured: true,
    }];
    let page = written(&spec, 0, &files);
    assert_eq!(page.matches("<svg").count(), 1, "{page}");
    assert!(page.contains("Its artwork, in the outline of the label"));
    assert!(
        written(&spec, 0, &[]).contains("label-paper"),
        "its outline alone"
    );
}

#[test]
fn a_label_without_a_size_is_not_drawn() {
    let mut spec = example();
    spec.labels.labels[1].width = None;
    let page = written(&spec, 1, &[]);
    assert!(
        page.contains("Give its width and height") && !page.contains("<svg"),
        "{page}"
    );
}
