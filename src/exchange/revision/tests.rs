use serde_json::json;

use super::*;
use crate::exchange::cast::*;
use crate::exchange::thread::State;
use crate::spec::check::Code;

/// Joggers in S, M, L with one graded point, one drawing and nothing wanting.
fn joggers() -> Spec {
    let cm = |tenths: i64| json!({"nm": tenths * 1_000_000, "unit": "cm"});
    serde_json::from_value(json!({
        "header": {"number": "HT-014", "name": "Skerry joggers", "garment": "joggers",
                   "base_size": "m", "unit": "cm", "measured": "as_sewn"},
        "sizes": {"sizes": [{"id": "s", "code": "S"}, {"id": "m", "code": "M"},
                            {"id": "l", "code": "L"}]},
        "drawings": {"drawings": [
            {"id": "front", "view": "front", "file": Digest::of(b"front"), "width": 1, "height": 1},
            {"id": "again", "view": "detail", "file": Digest::of(b"front"), "width": 1, "height": 1},
        ]},
        "points": {"points": [
            {"id": "point-c", "letter": "C", "name": "Inseam", "basis": "linear",
             "minus": cm(5), "plus": cm(5), "base": cm(740), "step": cm(1),
             "grade": {"segments": {"segments": [{"from": "s", "to": "l", "step": cm(15)}]}}},
        ]},
    }))
    .expect("a spec")
}

/// A draft on the point of being published as revision 2.
struct Desk {
    draft: Spec,
    shown: BTreeMap<Section, i64>,
    read: BTreeMap<Section, i64>,
    findings: Vec<Finding>,
    accepted: BTreeMap<FindingKey, String>,
    first: Option<(Spec, Digest)>,
    decimal: DecimalSign,
    touched: BTreeSet<ItemId>,
    threads: Vec<Thread>,
    reason: &'static str,
}

impl Desk {
    fn laid() -> Desk {
        let first = joggers();
        let mut draft = joggers();
        draft.header.name = "Skerry joggers, tapered".to_owned();
        let versions: BTreeMap<Section, i64> = Section::ALL
            .into_iter()
            .map(|section| (section, 3))
            .collect();
        Desk {
            draft,
            shown: versions.clone(),
            read: versions,
            findings: Vec::new(),
            accepted: BTreeMap::new(),
            first: Some((first, Digest::of(b"revision 1"))),
            decimal: DecimalSign::Point,
            touched: BTreeSet::new(),
            threads: Vec::new(),
            reason: "narrower leg after the first fitting",
        }
    }

    fn publish(&self) -> Result<Published, Refused> {
        publish(&Publishing {
            style: &StyleId::new("joggers"),
            at: &time(0),
            reason: self.reason,
            draft: &self.draft,
            decimal: self.decimal,
            rules: 1,
            shown: &self.shown,
            read: &self.read,
            findings: &self.findings,
            accepted: &self.accepted,
            previous: self.first.as_ref().map(|(spec, digest)| Previous {
                number: 1,
                digest,
                spec,
                decimal: DecimalSign::Point,
            }),
            touched: &self.touched,
            threads: &self.threads,
        })
    }
}

fn finding(code: Code, item: Option<&str>) -> Finding {
    Finding {
        code,
        section: Section::Points,
        item: item.map(ItemId::new),
        colourway: None,
        field: None,
        facts: Vec::new(),
    }
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
    // 74.0 at M, 1.5 a size: worked by hand.
    let values: Vec<i64> = frozen.chart.rows[0]
        .values
        .iter()
        .map(|value| value.as_nm() / 1_000_000)
        .collect();
    assert_eq!(values, [725, 740, 755]);
    // Shown twice, kept once.
    assert_eq!(frozen.files, BTreeSet::from([Digest::of(b"front")]));
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
fn an_error_blocks_and_a_warning_needs_a_reason() {
    let mut desk = Desk::laid();
    desk.findings = vec![
        finding(Code::GradeReverses, Some("point-c")),
        finding(Code::NameMissing, Some("point-c")),
    ];
    assert_eq!(desk.publish(), Err(Refused::ErrorsRemain { count: 1 }));

    desk.findings.pop();
    desk.findings.push(finding(Code::PartsNone, None));
    let key = |code: &str, item: Option<&str>| FindingKey {
        code: code.to_owned(),
        item: item.map(ItemId::new),
    };
    let reverses = key("grade-reverses", Some("point-c"));
    let usual = key("parts-none", None);
    desk.accepted.insert(usual.clone(), "  ".to_owned());
    assert_eq!(
        desk.publish(),
        Err(Refused::WarningReasonMissing {
            warnings: vec![reverses.clone(), usual.clone()]
        })
    );

    desk.accepted.insert(usual, " not decided yet ".to_owned());
    desk.accepted
        .insert(reverses, "the largest size is petite".to_owned());
    // A reason for what is no longer found is left out.
    desk.accepted
        .insert(key("gone", None), "was there".to_owned());
    assert_eq!(
        desk.publish().unwrap().frozen.accepted,
        [
            Accepted {
                code: "grade-reverses".to_owned(),
                item: Some(point_c()),
                reason: "the largest size is petite".to_owned(),
            },
            Accepted {
                code: "parts-none".to_owned(),
                item: None,
                reason: "not decided yet".to_owned(),
            },
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
    desk.draft = joggers();
    assert_eq!(desk.publish(), Err(Refused::DraftUnchanged { newest: 1 }));
    // Its numbers would be written another way: that is a change.
    desk.decimal = DecimalSign::Comma;
    assert!(desk.publish().is_ok());
}

#[test]
fn a_draft_without_a_chart_is_not_published_even_if_no_check_says_so() {
    let mut desk = Desk::laid();
    desk.draft.header.unit = None;
    assert_eq!(desk.publish(), Err(Refused::ErrorsRemain { count: 1 }));
}

#[test]
fn an_agreed_must_fix_is_carried_by_a_revision_that_changes_its_item() {
    let mut desk = Desk::laid();
    desk.threads = vec![must_fix("m", State::Agreed)];
    desk.touched = BTreeSet::from([ItemId::new("point-d")]);
    assert_eq!(
        desk.publish(),
        Err(Refused::MustFixUnchanged {
            threads: vec![ThreadId::new("m")]
        })
    );
    desk.touched.insert(point_c());
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
    desk.touched = BTreeSet::from([point_c()]);
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
