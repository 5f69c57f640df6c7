//! Entering pieces of a lot.

use super::*;

/// A piece of the lot, entered once.
fn one() -> (EntryId, Sort) {
    (EntryId::new("one"), sort("chalk", "l"))
}

/// What somebody enters, where it is not the ordinary piece.
#[derive(Clone, Copy)]
struct New<'a> {
    piece: u32,
    sort: Option<&'a Sort>,
    defects: &'a [Defect<'a>],
    values: Option<&'a BTreeMap<ItemId, Length>>,
    corrects: Option<&'a EntryId>,
}

/// The first piece, in ink and M, without a defect.
const FIRST: New<'static> = New {
    piece: 1,
    sort: None,
    defects: &[],
    values: None,
    corrects: None,
};

fn enters(state: State, entered: &[Entered<'_>], new: New<'_>) -> Result<(), Refused> {
    let case = Case::new();
    let lot = lot();
    let plans = lot.plans().unwrap();
    let columns = columns(&case.spec, &case.chart);
    let (ink, none) = (sort("ink", "m"), BTreeMap::new());
    let facts = Inspecting {
        state,
        lot: &lot,
        plans: &plans,
        spec: &case.spec,
        column: &columns[&item("size-m")],
        entered,
    };
    enter(
        &facts,
        &Entering {
            piece: new.piece,
            sort: new.sort.unwrap_or(&ink),
            defects: new.defects,
            values: new.values.unwrap_or(&none),
            corrects: new.corrects,
        },
    )
}

#[test]
fn a_piece_is_one_of_the_lot() {
    let open = State::Open;
    let unsaid = Err(Refused::PieceUnsaid { most: 1200 });
    assert_eq!(enters(open, &[], FIRST), Ok(()));
    assert_eq!(enters(open, &[], New { piece: 80, ..FIRST }), Ok(()));
    assert_eq!(enters(open, &[], New { piece: 0, ..FIRST }), unsaid);
    assert_eq!(
        enters(
            open,
            &[],
            New {
                piece: 1201,
                ..FIRST
            }
        ),
        unsaid
    );
    let other = sort("ink", "xl");
    assert_eq!(
        enters(
            open,
            &[],
            New {
                sort: Some(&other),
                ..FIRST
            }
        ),
        unsaid
    );
    let values = BTreeMap::from([(item("part-1"), Length::nm(1))]);
    assert_eq!(
        enters(
            open,
            &[],
            New {
                values: Some(&values),
                ..FIRST
            }
        ),
        unsaid
    );

    // The lot has five of this sort.
    let (id, few) = one();
    let entry = |piece| Entered {
        id: &id,
        piece,
        sort: &few,
    };
    let five: Vec<_> = (1..=5).map(entry).collect();
    assert_eq!(
        enters(
            open,
            &five,
            New {
                piece: 6,
                sort: Some(&few),
                ..FIRST
            }
        ),
        unsaid
    );
    let corrected = New {
        piece: 5,
        sort: Some(&few),
        corrects: Some(&id),
        ..FIRST
    };
    let corrected = enters(open, &five, corrected);
    assert_eq!(corrected, Ok(()), "its own place is free");
}

#[test]
fn a_concluded_inspection_takes_no_more_pieces() {
    for state in [
        State::Concluded(Outcome::Accepted),
        State::Decided(Decision::Rework),
    ] {
        assert_eq!(
            enters(state, &[], FIRST),
            Err(Refused::InspectionNotIn { state })
        );
    }
}

#[test]
fn an_entry_corrects_only_what_its_page_showed() {
    let (id, few) = one();
    let there = [Entered {
        id: &id,
        piece: 1,
        sort: &few,
    }];
    let other = EntryId::new("another");
    assert_eq!(enters(State::Open, &there, FIRST), Err(Refused::PieceMoved));
    let corrects = |id| New {
        corrects: Some(id),
        ..FIRST
    };
    let stale = enters(State::Open, &there, corrects(&other));
    assert_eq!(stale, Err(Refused::PieceMoved));
    let gone = enters(State::Open, &[], corrects(&id));
    assert_eq!(gone, Err(Refused::PieceMoved));
    let seen = enters(State::Open, &there, corrects(&id));
    assert_eq!(seen, Ok(()), "also of another sort than before");
}

#[test]
fn a_defect_says_where_or_what_it_is() {
    let point = item("point-c");
    let nowhere = item("point-zz");
    fn defect<'a>(item: Option<&'a ItemId>, words: &'a str) -> Defect<'a> {
        Defect {
            class: Class::Minor,
            item,
            times: 1,
            words,
        }
    }
    let with = |defect: &Defect<'_>| {
        let defects = std::slice::from_ref(defect);
        enters(State::Open, &[], New { defects, ..FIRST })
    };
    assert_eq!(with(&defect(Some(&point), "")), Ok(()));
    assert_eq!(with(&defect(None, "oil stain")), Ok(()));
    let unsaid = Err(Refused::DefectUnsaid);
    assert_eq!(with(&defect(None, " ")), unsaid);
    assert_eq!(with(&defect(Some(&nowhere), "there")), unsaid);
    for times in [0, MOST_TIMES + 1] {
        let defect = Defect {
            times,
            ..defect(Some(&point), "")
        };
        assert_eq!(with(&defect), unsaid);
    }
}

#[test]
fn beyond_the_sample_only_a_critical_defect_is_entered() {
    let of = |class| Defect {
        class,
        item: None,
        times: 1,
        words: "needle tip",
    };
    let with = |defect: &Defect<'_>, piece| {
        let defects = std::slice::from_ref(defect);
        enters(
            State::Open,
            &[],
            New {
                piece,
                defects,
                ..FIRST
            },
        )
    };
    let beyond = Err(Refused::PieceBeyond { sample: 80 });
    assert_eq!(with(&of(Class::Major), 80), Ok(()));
    assert_eq!(with(&of(Class::Major), 81), beyond);
    assert_eq!(with(&of(Class::Critical), 81), Ok(()));
    // What turned out to be none is taken back.
    let (id, _) = one();
    let ink = sort("ink", "m");
    let there = [Entered {
        id: &id,
        piece: 81,
        sort: &ink,
    }];
    let back = New {
        piece: 81,
        corrects: Some(&id),
        ..FIRST
    };
    let back = enters(State::Open, &there, back);
    assert_eq!(back, Ok(()));
}
