//! Cases of the labels and of the care.

use super::*;

#[rustfmt::skip]
pub const CASES: &[Case] = &[
    (Code::CompositionLabelMissing, None, None,
        |s| { s.labels.labels.remove(1); },
        |s| label(s, "care").contents.clear()),
    (Code::CareMissing, None, Some("care.wash"),
        |s| { us(s); s.labels.care.wash = None; s.labels.care.dry_clean = None; },
        |s| { us(s); s.labels.care.wash = None; }),
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
