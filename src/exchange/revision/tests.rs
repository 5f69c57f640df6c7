mod golden;

use super::*;
use crate::exchange::cast::*;
use crate::exchange::thread::State;
use crate::spec::book::Table;
use crate::spec::document::{Drawing, Point};
use crate::spec::example::half_zip;
use crate::spec::table::Status;
use crate::spec::{Entered, Length, Unit};

fn drawing() -> Digest {
    Digest::of(b"front")
}

/// A draft on the point of being published as revision 2.
struct Desk {
    draft: Spec,
    shown: BTreeMap<Section, i64>,
    read: BTreeMap<Section, i64>,
    accepted: BTreeMap<FindingKey, String>,
    first: Option<(Spec, Chart, Digest)>,
    decimal: DecimalSign,
    threads: Vec<Thread>,
    book: Book,
    reason: &'static str,
}

impl Desk {
    fn laid() -> Desk {
        let first = half_zip(drawing());
        let chart = grade(&first).chart(&first).expect("the half-zip has one");
        let mut draft = half_zip(drawing());
        draft.header.name = "Shoal half-zip, shorter".to_owned();
        let versions: BTreeMap<Section, i64> = Section::ALL
            .iter()
            .copied()
            .map(|section| (section, 3))
            .collect();
        Desk {
            draft,
            shown: versions.clone(),
            read: versions,
            accepted: BTreeMap::new(),
            first: Some((first, chart, Digest::of(b"revision 1"))),
            decimal: DecimalSign::Point,
            threads: Vec::new(),
            book: Book::shipped().as_ref().clone(),
            reason: "shorter body after the first fitting",
        }
    }

    fn point(&mut self, id: &str) -> &mut Point {
        let mut points = self.draft.points.points.iter_mut();
        points
            .find(|point| point.id.as_str() == id)
            .expect("the half-zip has it")
    }

    fn publish(&self) -> Result<Published, Refused> {
        publish(&Publishing {
            style: &StyleId::new("half-zip"),
            at: &time(0),
            reason: self.reason,
            draft: &self.draft,
            decimal: self.decimal,
            shown: &self.shown,
            read: &self.read,
            accepted: &self.accepted,
            previous: self.first.as_ref().map(|(spec, chart, digest)| Previous {
                number: 1,
                digest,
                spec,
                chart,
                decimal: DecimalSign::Point,
            }),
            threads: &self.threads,
            book: &self.book,
            translations: Translations::default(),
        })
    }
}

#[test]
fn a_revision_keeps_the_corrections_that_its_texts_were_made_with() {
    let mut desk = Desk::laid();
    let shipped = desk.publish().unwrap().frozen;
    assert_eq!(shipped.corrections, []);
    let german = |frozen: &Frozen| {
        let mut texts = frozen.compositions.iter();
        let text = texts.find(|it| it.language == "de");
        text.expect("the half-zip has German labels").text.clone()
    };
    let correction = Correction {
        table: Table::ComponentNames,
        row: "main.de".to_owned(),
        values: vec!["Außenstoff".to_owned()],
        status: Status::Verified,
        on: "2026-11-25".to_owned(),
        source: "our printer's list".to_owned(),
    };
    desk.book = Book::corrected(vec![correction.clone()]).unwrap();
    let frozen = desk.publish().unwrap().frozen;
    assert_eq!(frozen.corrections, [correction]);
    let expected = german(&shipped).replace("Oberstoff", "Außenstoff");
    assert_ne!(german(&frozen), german(&shipped));
    assert_eq!(german(&frozen), expected);
    let (bytes, _) = frozen.seal().unwrap();
    assert_eq!(Frozen::read(&bytes).unwrap(), frozen);
}

#[test]
fn a_revision_holds_the_draft_its_rounded_chart_and_what_came_before() {
    let desk = Desk::laid();
    let frozen = desk.publish().unwrap().frozen;
    assert_eq!(frozen.number, 2);
    assert_eq!(frozen.previous, Some(Digest::of(b"revision 1")));
    assert_eq!(frozen.spec, desk.draft);
    assert_eq!(frozen.reason, desk.reason);
    assert_eq!(frozen.published, time(0));
    // C, body length: 28 1/2 in at M and 5/8 in a size, to the eighth. Worked by hand.
    let eighths: Vec<Length> = [218, 223, 228, 233, 238]
        .map(|n| Length::nm(n * 3_175_000))
        .into();
    let body_length = frozen.chart.row(&point_c()).expect("point C has values");
    assert_eq!(body_length.values, eighths);
    assert_eq!(frozen.files, BTreeSet::from([drawing()]));
    assert_eq!(frozen.rules, check::RULES);
}

#[test]
fn a_file_that_is_shown_twice_is_kept_once() {
    let mut desk = Desk::laid();
    let again = desk.draft.drawings.drawings[0].clone();
    desk.draft.drawings.drawings.push(Drawing {
        id: ItemId::new("drawing-again"),
        markers: Vec::new(),
        ..again
    });
    assert_eq!(desk.publish().unwrap().frozen.files.len(), 1);
}

#[test]
fn the_first_revision_has_none_before_it() {
    let mut desk = Desk::laid();
    desk.first = None;
    let frozen = desk.publish().unwrap().frozen;
    assert_eq!((frozen.number, frozen.previous), (1, None));
}

#[test]
fn what_was_sealed_is_read_back_and_nothing_else_is() {
    let frozen = Desk::laid().publish().unwrap().frozen;
    let (bytes, digest) = frozen.seal().unwrap();
    assert_eq!(Digest::of(&bytes), digest);
    assert_eq!(Frozen::read(&bytes).unwrap(), frozen);
    // The same content written with a space is not the revision.
    let text = String::from_utf8(bytes).unwrap();
    let spaced = text.replacen(':', ": ", 1);
    assert!(Frozen::read(spaced.as_bytes()).is_err());
    let with_more = text.replacen('{', "{\"a\":1,", 1);
    assert!(Frozen::read(with_more.as_bytes()).is_err());
}

#[test]
fn publishing_is_of_what_was_read() {
    let mut desk = Desk::laid();
    desk.read.insert(Section::Points, 4);
    assert_eq!(
        desk.publish(),
        Err(Refused::SectionMoved {
            sections: vec![Section::Points]
        })
    );
    // A section that the form did not show was not read either.
    let mut desk = Desk::laid();
    desk.shown.remove(&Section::Header);
    assert_eq!(
        desk.publish(),
        Err(Refused::SectionMoved {
            sections: vec![Section::Header]
        })
    );
}

#[test]
fn an_error_blocks_publishing() {
    let mut desk = Desk::laid();
    desk.draft.header.unit = None;
    desk.draft.header.base_size = None;
    let Err(Refused::ErrorsRemain { count }) = desk.publish() else {
        panic!("nothing can be measured without a unit");
    };
    assert!(count >= 2, "{count}");
    // One is enough, and a reason does not lift it.
    let mut desk = Desk::laid();
    desk.draft.header.name.clear();
    let name = FindingKey {
        code: "name-missing".to_owned(),
        item: None,
    };
    desk.accepted.insert(name, "it has none".to_owned());
    assert_eq!(desk.publish(), Err(Refused::ErrorsRemain { count: 1 }));
}

#[test]
fn a_warning_is_published_with_a_reason_and_not_without() {
    let mut desk = Desk::laid();
    desk.draft.colourways = Default::default();
    desk.draft.drawings.drawings[0]
        .markers
        .retain(|marker| !marker.item.as_str().starts_with("part"));
    for material in &mut desk.draft.materials.materials {
        material.parts.clear();
    }
    desk.draft.artwork.artworks[0].colours.clear();
    let key = |code: &str| FindingKey {
        code: code.to_owned(),
        item: None,
    };
    let (parts, colourways) = (key("parts-none"), key("colourways-none"));
    desk.accepted.insert(parts.clone(), "  ".to_owned());
    assert_eq!(
        desk.publish(),
        Err(Refused::WarningReasonMissing {
            warnings: vec![parts.clone(), colourways.clone()]
        })
    );

    desk.accepted
        .insert(parts, " a toile, in calico ".to_owned());
    desk.accepted.insert(colourways, "undyed".to_owned());
    // A reason for what is no longer found is left out.
    desk.accepted
        .insert(key("steps-uneven"), "was there".to_owned());
    let accepted = |code: &str, reason: &str| Accepted {
        code: code.to_owned(),
        item: None,
        reason: reason.to_owned(),
    };
    assert_eq!(
        desk.publish().unwrap().frozen.accepted,
        [
            accepted("parts-none", "a toile, in calico"),
            accepted("colourways-none", "undyed"),
        ]
    );
}

#[test]
fn publishing_says_why() {
    let mut desk = Desk::laid();
    desk.reason = " \n";
    assert_eq!(desk.publish(), Err(Refused::ReasonMissing));
}

#[test]
fn an_unchanged_draft_is_not_published_again() {
    let mut desk = Desk::laid();
    desk.draft = half_zip(drawing());
    assert_eq!(desk.publish(), Err(Refused::DraftUnchanged { newest: 1 }));
    // Its numbers would be written another way: that is a change.
    desk.decimal = DecimalSign::Comma;
    assert!(desk.publish().is_ok());
}

#[test]
fn an_agreed_must_fix_is_carried_by_a_revision_that_changes_its_item() {
    let mut desk = Desk::laid();
    desk.threads = vec![must_fix("m", State::Agreed)];
    desk.point("point-d").name = "Across back".to_owned();
    assert_eq!(
        desk.publish(),
        Err(Refused::MustFixUnchanged {
            threads: vec![ThreadId::new("m")]
        })
    );
    desk.point("point-c").base = Some(Entered {
        nm: Length::nm(711_200_000),
        unit: Unit::Inch,
    });
    assert_eq!(desk.publish().unwrap().carries, [ThreadId::new("m")]);
}

#[test]
fn only_agreed_must_fixes_hold_up_publishing() {
    let mut desk = Desk::laid();
    desk.threads = vec![
        must_fix("open", State::Open),
        must_fix("done", State::Changed { revision: 1 }),
        must_fix("let-pass", State::Granted),
        question("asked", State::Agreed),
    ];
    desk.point("point-c").name = "Back length".to_owned();
    assert_eq!(desk.publish().unwrap().carries, []);
}

fn fact(number: u32, withdrawn: Option<&str>) -> Fact {
    Fact {
        number,
        withdrawn: withdrawn.map(str::to_owned),
    }
}

#[test]
fn the_newest_is_current_and_supersedes_the_others() {
    let three = [fact(1, None), fact(3, None), fact(2, None)];
    assert_eq!(current(&three), Some(3));
    assert_eq!(standing(3, &three), Some(Standing::Current));
    assert_eq!(
        standing(1, &three),
        Some(Standing::Superseded {
            by: 3,
            current: Some(3)
        })
    );
    assert_eq!(standing(4, &three), None);
    assert_eq!(current(&[]), None);
}

#[test]
fn withdrawing_the_newest_leaves_none_current() {
    let facts = [fact(1, None), fact(2, Some("wrong fabric"))];
    assert_eq!(current(&facts), None);
    assert_eq!(
        standing(2, &facts),
        Some(Standing::Withdrawn {
            reason: "wrong fabric".to_owned(),
            current: None
        })
    );
    assert_eq!(
        standing(1, &facts),
        Some(Standing::Superseded {
            by: 2,
            current: None
        })
    );
    // Publishing again makes one current.
    let facts = [fact(1, None), fact(2, Some("wrong fabric")), fact(3, None)];
    assert_eq!(current(&facts), Some(3));
}

#[test]
fn withdrawing_is_the_brands_once_and_says_why() {
    let superseded = Standing::Superseded {
        by: 2,
        current: Some(2),
    };
    for standing in [Standing::Current, superseded] {
        assert_eq!(withdraw(&owner(), &standing, "wrong fabric"), Ok(()));
        assert_eq!(
            withdraw(&owner(), &standing, " "),
            Err(Refused::ReasonMissing)
        );
        assert_eq!(
            withdraw(&merchandiser(), &standing, "wrong fabric"),
            Err(Refused::OnlyBrand)
        );
    }
    let withdrawn = Standing::Withdrawn {
        reason: "wrong fabric".to_owned(),
        current: None,
    };
    assert_eq!(
        withdraw(&owner(), &withdrawn, "again"),
        Err(Refused::AlreadyWithdrawn)
    );
}

#[test]
fn a_factory_acknowledges_the_current_revision_once() {
    let by = merchandiser();
    let current = Standing::Current;
    assert_eq!(acknowledge(&by, &current, true, false), Ok(()));
    assert_eq!(
        acknowledge(&by, &current, true, true),
        Err(Refused::AlreadyAcknowledged)
    );
    assert_eq!(
        acknowledge(&by, &current, false, false),
        Err(Refused::NotShared)
    );
    assert_eq!(
        acknowledge(&designer(), &current, true, false),
        Err(Refused::OnlyFactory)
    );
    let old = Standing::Superseded {
        by: 2,
        current: Some(2),
    };
    assert_eq!(
        acknowledge(&by, &old, true, false),
        Err(Refused::NotCurrent { current: Some(2) })
    );
}
