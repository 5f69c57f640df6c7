use super::*;
use crate::spec::decimal::Decimal;
use crate::spec::document::{Component, Fibre, LabelFold, LabelText, Material, Share};
use crate::spec::id::ItemId;
use layout::width;

fn paper(width: f64, height: f64) -> Paper {
    Paper {
        width,
        height,
        folded: None,
        fold: None,
        text: 1.4,
    }
}

fn said(texts: &[&str]) -> Vec<String> {
    texts.iter().map(|text| (*text).to_owned()).collect()
}

fn lines(layout: &Layout) -> Vec<&str> {
    layout.lines.iter().map(|line| line.text.as_str()).collect()
}

#[test]
fn letters_are_as_large_as_their_capitals_ask_for() {
    let layout = lay(paper(30.0, 60.0), &said(&["Wash"]), false);
    assert!((layout.em - 2.0).abs() < 1e-9, "{layout:?}");
    assert!((layout.pitch - 2.5).abs() < 1e-9);
    // Three millimetres are kept free above; a quarter of a millimetre lies above the em.
    assert!((layout.lines[0].foot - (3.0 + 0.25 + 1.4)).abs() < 1e-9);
    assert!((layout.needs - (3.0 + 2.5 + 3.0)).abs() < 1e-9);
    assert_eq!(layout.left, 2.0);
}

#[test]
fn a_text_is_broken_where_its_words_allow() {
    // 26 mm of room are 13 em.
    let layout = lay(
        paper(30.0, 60.0),
        &said(&["Wash inside out with similar colours.\nDry flat."]),
        false,
    );
    let lines = lines(&layout);
    assert_eq!(lines.last(), Some(&"Dry flat."));
    assert_eq!(
        lines[..lines.len() - 1].join(" "),
        "Wash inside out with similar colours."
    );
    assert!(lines.len() > 2, "{lines:?}");
    for line in &lines {
        assert!(width(line) <= 13.0, "{line}");
    }
    assert!(layout.fits(60.0));
    assert!(!layout.fits(layout.needs - 0.1));
}

#[test]
fn a_number_stays_with_its_unit() {
    let layout = lay(paper(12.0, 60.0), &said(&["80\u{a0}% Baumwolle"]), false);
    assert_eq!(lines(&layout), ["80\u{a0}%", "Baumwolle"]);
}

#[test]
fn a_word_wider_than_the_label_is_told_of() {
    let layout = lay(
        paper(12.0, 200.0),
        &said(&["Reißverschlüsse schließen"]),
        false,
    );
    assert_eq!(layout.wide, ["Reißverschlüsse"]);
    assert!(!layout.fits(200.0));
}

#[test]
fn scripts_without_spaces_break_between_letters() {
    let layout = lay(paper(12.0, 60.0), &said(&["請勿漂白請勿漂白"]), false);
    // 9.6 mm of room are 4.8 em.
    assert_eq!(lines(&layout), ["請勿漂白", "請勿漂白"]);
    assert!(layout.wide.is_empty());
}

#[test]
fn no_line_lies_across_the_fold() {
    let folded = |folded| Paper {
        fold: Some(LabelFold::Loop),
        folded,
        ..paper(30.0, 30.0)
    };
    let texts = said(&["one\ntwo\nthree\nfour\nfive\nsix"]);
    let layout = lay(folded(None), &texts, false);
    assert_eq!(layout.fold, Some(15.0));
    for line in &layout.lines {
        let top = line.foot - 1.4 - 0.25;
        assert!(
            top >= 15.0 - 1e-9 || top + layout.em <= 15.0 + 1e-9,
            "{line:?}"
        );
    }
    // The fifth line lies from 13 to 15 mm; above a fold at 14 mm it has no room.
    let below = |layout: &Layout, fold| layout.lines.iter().position(|line| line.foot > fold);
    assert_eq!(below(&layout, 15.0), Some(5), "{layout:?}");
    let sooner = lay(folded(Some(14.0)), &texts, false);
    assert_eq!(below(&sooner, 14.0), Some(4), "{sooner:?}");
    assert!((sooner.lines[4].foot - (14.0 + 1.65)).abs() < 1e-9);
    assert_eq!(lay(folded(Some(10.0)), &texts, false).fold, Some(10.0));
    assert_eq!(lay(folded(Some(40.0)), &texts, false).fold, Some(15.0));
}

#[test]
fn wide_letters_take_more_than_narrow_ones() {
    assert!(width("mmmm") > 3.0 * width("iiii"));
    assert!(width("Wash at 30 °C") < 13.0 * 0.56);
}

fn cotton() -> Material {
    let share = |fibre, percent| Share {
        fibre: Some(fibre),
        percent: Some(Decimal::new(percent, 0)),
        ..Share::default()
    };
    Material {
        id: ItemId::new("jersey"),
        component: Some(Component::Main),
        composition: vec![share(Fibre::Polyester, 20), share(Fibre::Cotton, 80)],
        ..Material::default()
    }
}

fn typed(market: Option<Market>, language: &str, text: &str) -> LabelText {
    LabelText {
        market,
        language: language.to_owned(),
        text: text.to_owned(),
    }
}

fn care_label(texts: Vec<LabelText>) -> Label {
    Label {
        kind: Some(LabelKind::CareComposition),
        contents: vec![LabelContent::Origin],
        texts,
        ..Label::default()
    }
}

fn spec(markets: Vec<Market>, languages: &[&str]) -> Spec {
    let mut spec = Spec::default();
    spec.header.markets = markets;
    spec.header.languages = said(languages);
    spec.materials.materials = vec![cotton()];
    spec
}

#[test]
fn a_market_has_the_languages_of_its_own_texts() {
    let spec = spec(vec![Market::Eu, Market::Uk], &["en", "de"]);
    let label = care_label(vec![
        typed(Some(Market::Eu), "de", "Liegend trocknen."),
        typed(Some(Market::Uk), "en", "Dry flat."),
    ]);
    let editions = editions(&spec, &label, &|market, language| {
        compose(&spec, market, language)
    });
    assert_eq!(editions.len(), 2);
    assert_eq!(
        editions[0].blocks,
        [Block {
            language: "de".to_owned(),
            says: vec![
                Says::Composition(Some("80\u{a0}% Baumwolle, 20\u{a0}% Polyester".to_owned())),
                Says::Care,
                Says::Typed("Liegend trocknen.".to_owned()),
                Says::Origin,
            ],
        }]
    );
    assert_eq!(editions[1].blocks[0].language, "en");
}

#[test]
fn markets_with_one_label_are_told_together() {
    let spec = spec(vec![Market::Eu, Market::Uk], &["en", "de"]);
    let editions = editions(&spec, &care_label(Vec::new()), &|market, language| {
        compose(&spec, market, language)
    });
    let [edition] = editions.as_slice() else {
        panic!("{editions:?}");
    };
    assert_eq!(edition.markets, [Market::Eu, Market::Uk]);
    let languages: Vec<&str> = edition
        .blocks
        .iter()
        .map(|it| it.language.as_str())
        .collect();
    assert_eq!(languages, ["en", "de"]);
}

#[test]
fn a_composition_that_is_not_whole_is_not_composed() {
    let mut spec = spec(vec![Market::Eu], &["xx"]);
    let says = |spec: &Spec| {
        let editions = editions(spec, &care_label(Vec::new()), &|market, language| {
            compose(spec, market, language)
        });
        editions[0].blocks[0].says[0].clone()
    };
    assert_eq!(
        says(&spec),
        Says::Composition(None),
        "a language without words"
    );
    spec.header.languages = said(&["en"]);
    assert!(matches!(says(&spec), Says::Composition(Some(_))));
    spec.materials.materials.clear();
    assert_eq!(says(&spec), Says::Composition(None), "nothing to say it of");
}

#[test]
fn a_size_loop_says_its_size_alone() {
    let spec = spec(vec![Market::Us], &["en"]);
    let label = Label {
        kind: Some(LabelKind::SizeLoop),
        ..Label::default()
    };
    let editions = editions(&spec, &label, &|market, language| {
        compose(&spec, market, language)
    });
    assert_eq!(editions[0].blocks.len(), 1);
    assert_eq!(editions[0].blocks[0].says, [Says::Size]);
    assert_eq!(editions[0].blocks[0].language, "");
}

#[test]
fn a_label_without_words_has_no_blocks() {
    let spec = spec(vec![], &["en"]);
    let editions = editions(&spec, &Label::default(), &|_, _| None);
    assert_eq!(
        editions,
        [Edition {
            markets: Vec::new(),
            blocks: Vec::new()
        }]
    );
}
