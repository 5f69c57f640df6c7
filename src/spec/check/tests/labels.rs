//! Cases of the labels and of the care.

use super::*;

#[rustfmt::skip]
pub const CASES: &[Case] = &[
    (Code::CompositionLabelMissing, None, None,
        |s| { s.labels.labels.remove(1); },
        |s| label(s, "care").contents.clear()),
    (Code::CareMissing, None, Some("care.wash"),
        |s| { us(s); s.labels.care.wash = None; s.labels.care.dry_clean = None; },
        |s| { us(s); s.labels.care.wash = Some(Wash::Hand); }),
    (Code::CareLabelMissing, None, None,
        |s| { us(s); says(s, &[LabelContent::Composition]); },
        |s| { us(s); says(s, &[LabelContent::Composition, LabelContent::Care]); }),
    (Code::OriginLabelMissing, None, None,
        |s| { us(s); says(s, &[LabelContent::Care]); },
        |s| { us(s); says(s, &[LabelContent::Origin]); }),
    (Code::CareCustomary, None, Some("care.wash"),
        |s| s.labels.care = Care::default(),
        |s| { s.labels.care = Care::default(); s.header.markets = vec![Market::Other]; }),
    (Code::LabelSizeMissing, Some("label-brand"), Some("width"),
        |s| label(s, "brand").width = None,
        |s| label(s, "brand").folded_height = None),
    (Code::LabelPlaceMissing, Some("label-brand"), Some("distances"),
        |s| label(s, "brand").distances[0].line = None,
        |s| label(s, "brand").distances[0].distance = inches("0")),
    (Code::LabelLanguageMissing, Some("label-care"), Some("texts"),
        |s| texts(s, &["en", "DE"]),
        |s| texts(s, &["fr", "en", "DE"])),
    (Code::CareHarsh, None, Some("care.iron"),
        |s| s.labels.care.iron = Some(Iron::High),
        |s| s.labels.care.iron = Some(Iron::Medium)),
];

/// What the care label says, and nothing by its kind.
fn says(spec: &mut Spec, contents: &[LabelContent]) {
    let label = label(spec, "care");
    label.kind = Some(LabelKind::Other);
    label.contents = contents.to_vec();
}

fn texts(spec: &mut Spec, languages: &[&str]) {
    let text = |language: &&str| LabelText {
        market: None,
        language: (*language).to_owned(),
        text: "Harrow & Tide".to_owned(),
    };
    label(spec, "care").texts = languages.iter().map(text).collect();
}

#[test]
fn care_is_customary_in_either_market_and_required_in_none_of_them() {
    let found = |markets: &[Market]| {
        let findings = after(|s| {
            s.labels.care = Care::default();
            s.header.markets = markets.to_vec();
        });
        findings.iter().any(|it| it.code == Code::CareCustomary)
    };
    assert!(found(&[Market::Eu]));
    assert!(found(&[Market::Uk]));
    assert!(found(&[Market::Eu, Market::Uk]));
    assert!(!found(&[Market::Uk, Market::Us]), "there it is required");
    assert!(!found(&[]));
}

#[test]
fn small_text_on_a_label_is_measured_by_how_it_is_made() {
    let found = |made, height: &str| {
        let findings = after(|s| {
            label(s, "care").made = Some(made);
            label(s, "care").text_height = mm(height);
        });
        findings.iter().any(|it| it.code == Code::TextTooSmall)
    };
    assert!(found(LabelMade::Woven, "1.4"));
    assert!(!found(LabelMade::Woven, "1.5"));
    assert!(found(LabelMade::Printed, "1.1"));
    assert!(!found(LabelMade::Printed, "1.2"));
}
