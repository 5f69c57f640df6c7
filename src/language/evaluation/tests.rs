use super::super::Language;
use super::*;
use crate::sample::finding::Figures;

fn told<T>(of: impl Fn(&Evaluated<'_>) -> T) -> T {
    of(&Evaluated {
        t: Language::English.text(),
        item: &|id| id.as_str().to_owned(),
        piece: &|id| id.as_str().to_owned(),
        unit: Unit::Cm,
        sign: DecimalSign::Comma,
    })
}

fn finding(cause: Cause) -> Finding {
    Finding {
        cause,
        fabric: Some(ItemId::new("Shell")),
        along: Some(Direction::Length),
        points: vec![ItemId::new("A"), ItemId::new("B")],
        size: Some(ItemId::new("M")),
        really: Some(ItemId::new("L")),
        pieces: vec![PieceId::new("2")],
        slip: Some(Slip::Halved),
        figures: Figures {
            readings: 12,
            same_side: 11,
            by: Some(Length::nm(13_000_000)),
            share: Some(Percent::hundredths(-400)),
            correction: Factor::of_share(-0.04),
            left: Length::nm(1_200_000),
            before: Length::nm(15_000_000),
        },
    }
}

#[test]
fn every_cause_and_every_lack_is_given_what_its_sentence_names() {
    let causes = Cause::ALL.into_iter().flat_map(|cause| {
        Slip::ALL.map(|slip| Finding {
            slip: Some(slip),
            ..finding(cause)
        })
    });
    for finding in causes {
        let sentence = told(|it| it.finding(&finding).to_string());
        assert!(!sentence.contains("{$"), "{sentence}");
        assert!(sentence.ends_with('.'), "{:?}: {sentence}", finding.cause);
    }
    let lacks = [
        Lack::FewPoints {
            fabric: None,
            along: Some(Direction::Width),
            have: 1,
            need: 4,
        },
        Lack::OneSize {
            size: ItemId::new("M"),
        },
        Lack::OnePiece {
            size: ItemId::new("M"),
        },
    ];
    for lack in &lacks {
        let sentence = told(|it| it.lack(lack).to_string());
        assert!(!sentence.contains("{$"), "{sentence}");
    }
}

#[test]
fn a_finding_says_where_how_much_and_what_to_do() {
    let shrunk = finding(Cause::ProportionalShift);
    assert_eq!(
        told(|it| it.finding(&shrunk).to_string()),
        "Shell, along the length: long and short points are off by the same share, −4 %. The \
         fabric has shrunk or stretched, or the pattern allows wrongly for it. Make the pattern × \
         1,0417 there."
    );
    assert_eq!(
        told(|it| it.figures(&shrunk).to_string()),
        "It rests on 12 values, 11 of them off to the same side. Half of them were off by more \
         than 1,5 cm; what this leaves of them is 0,12 cm."
    );
    let mut lone = finding(Cause::SinglePoint);
    lone.figures.readings = 1;
    assert_eq!(
        told(|it| it.figures(&lone).to_string()),
        "It rests on one value."
    );
    assert_eq!(
        told(|it| it.finding(&finding(Cause::HalfFull)).to_string()),
        "Piece 2, A, B: about half of what it should be. The half was written instead of the \
         whole way round: measure again."
    );
    let everywhere = Finding {
        fabric: None,
        along: None,
        ..finding(Cause::ConstantError)
    };
    assert!(
        told(|it| it.finding(&everywhere).to_string())
            .starts_with("The whole garment: every point is off by the same length, +1,3 cm")
    );
}

#[test]
fn what_was_assumed_is_said_to_be() {
    let repeatability = |source| Repeatability {
        deviation: Length::nm(1_500_000),
        source,
    };
    let assumed = repeatability(RepeatedBy::Assumed);
    assert_eq!(
        told(|it| it.repeatability(assumed).to_string()),
        "Nothing was measured twice. It is assumed that a value can be repeated to 0,15 cm."
    );
    for source in [RepeatedBy::Measurers(9), RepeatedBy::Pieces(9)] {
        let sentence = told(|it| it.repeatability(repeatability(source)).to_string());
        assert!(sentence.starts_with("Judged by 9 points"), "{sentence}");
    }
}
