use super::*;
use crate::exchange::approval;
use crate::exchange::cast::*;
use crate::spec::Digest;
use crate::spec::chart::grade;
use crate::spec::example::half_zip;

fn chart() -> Chart {
    let spec = half_zip(Digest::of(b"front"));
    grade(&spec).chart(&spec).expect("it grades")
}

fn id(id: &str) -> PieceId {
    PieceId::new(id)
}

/// An approved pre-production round of two pieces with everything in order, sealed by the owner.
struct Case {
    by: Actor,
    factory: OrgId,
    kind: Kind,
    state: Stage,
    sealed: bool,
    current: Option<u32>,
    shared: bool,
    threads: Vec<Thread>,
    size_set: Chart,
    unapproved: Vec<Anchor>,
    materials: Option<Materials>,
    pieces: BTreeMap<PieceId, BTreeSet<ItemId>>,
    chart: Chart,
}

impl Case {
    fn new() -> Case {
        Case {
            by: owner(),
            factory: sao_mai(),
            kind: Kind::PreProduction,
            state: Stage::Decided(Outcome::Approved),
            sealed: false,
            shared: true,
            current: Some(2),
            threads: Vec::new(),
            size_set: chart(),
            unapproved: Vec::new(),
            materials: Some(Materials::Actual),
            pieces: BTreeMap::from([(id("one"), BTreeSet::new()), (id("two"), BTreeSet::new())]),
            chart: chart(),
        }
    }

    fn with<T>(&self, ask: impl FnOnce(&Sealing<'_>) -> T) -> T {
        ask(&Sealing {
            by: &self.by,
            factory: &self.factory,
            kind: self.kind,
            state: self.state,
            sealed: self.sealed,
            shared: self.shared,
            revision: 2,
            chart: &self.chart,
            current: self.current,
            threads: &self.threads,
            size_sets: &[&self.size_set],
            unapproved: &self.unapproved,
            materials: self.materials,
            pieces: &self.pieces,
        })
    }

    fn blocks(&self) -> Vec<Refused> {
        self.with(blocks)
    }

    fn seals(&self, keep: &[Keep<'_>]) -> Result<(), Refused> {
        self.with(|facts| seal(facts, keep))
    }
}

fn keep<'a>(piece: &'a PieceId, tag: &'a str, place: &'a str) -> Keep<'a> {
    Keep {
        piece,
        tag,
        keeper: Side::Factory,
        place,
    }
}

#[test]
fn nothing_blocks_an_approved_round_with_everything_in_order() {
    let mut case = Case::new();
    assert_eq!(case.blocks(), []);
    case.kind = Kind::TopOfProduction;
    assert_eq!(case.blocks(), []);
}

#[test]
fn each_thing_blocks_by_itself() {
    let thread = |state| vec![must_fix("fix", state)];
    let open = vec![ThreadId::new("fix")];
    let blocks = |edit: &dyn Fn(&mut Case)| {
        let mut case = Case::new();
        edit(&mut case);
        case.blocks()
    };
    assert_eq!(blocks(&|case| case.by = designer()), [Refused::OnlyOwner]);
    assert_eq!(blocks(&|case| case.sealed = true), [Refused::AlreadySealed]);
    assert_eq!(blocks(&|case| case.shared = false), [Refused::NotShared]);
    for kind in [Kind::Proto, Kind::Fit, Kind::SizeSet] {
        assert_eq!(
            blocks(&|case| case.kind = kind),
            [Refused::TooEarlyToSeal { kind }]
        );
    }
    for state in [
        Stage::Measured,
        Stage::Decided(Outcome::ApprovedWithChanges),
    ] {
        assert_eq!(
            blocks(&|case| case.state = state),
            [Refused::RoundNotApproved { state }]
        );
    }
    for current in [None, Some(3)] {
        assert_eq!(
            blocks(&|case| case.current = current),
            [Refused::NotCurrent { current }]
        );
    }
    for state in [State::Open, State::Answered] {
        assert_eq!(
            blocks(&|case| case.threads = vec![question("fix", state)]),
            [Refused::QuestionsBeforeSealing {
                threads: open.clone()
            }]
        );
    }
    for state in [
        State::Open,
        State::Answered,
        State::Agreed,
        State::Changed { revision: 2 },
    ] {
        assert_eq!(
            blocks(&|case| case.threads = thread(state)),
            [Refused::MustFixUnverified {
                threads: open.clone()
            }],
            "{state:?}"
        );
    }
    for state in [
        State::Verified { revision: 2 },
        State::Closed,
        State::Granted,
    ] {
        assert_eq!(blocks(&|case| case.threads = thread(state)), []);
    }
    assert_eq!(
        blocks(&|case| {
            case.threads = thread(State::Open);
            case.factory = meghna();
        }),
        [],
        "another factory's are its own"
    );
    assert_eq!(
        blocks(&|case| case.size_set.rows[0].plus = crate::spec::Length::nm(1)),
        [Refused::SizeSetMissing],
        "another tolerance is another chart"
    );
    let thing = Anchor {
        kind: approval::Kind::Trim,
        item: ItemId::new("material-zip"),
        colourway: None,
        fabric: None,
    };
    assert_eq!(
        blocks(&|case| case.unapproved = vec![thing.clone()]),
        [Refused::NotApprovedYet {
            things: vec![thing.clone()]
        }]
    );
    assert_eq!(
        blocks(&|case| case.materials = Some(Materials::Substitute)),
        [Refused::SubstitutesSent]
    );
}

#[test]
fn everything_that_blocks_is_told_at_once_in_order() {
    let mut case = Case::new();
    case.by = designer();
    case.current = Some(3);
    case.materials = Some(Materials::Substitute);
    case.state = Stage::Measured;
    let codes: Vec<&str> = case.blocks().iter().map(Refused::code).collect();
    assert_eq!(
        codes,
        [
            "refused-only-owner",
            "refused-round-not-approved",
            "refused-not-current",
            "refused-substitutes-sent"
        ]
    );
    let (one, two) = (id("one"), id("two"));
    let both = [keep(&one, "1", "shelf"), keep(&two, "2", "shelf")];
    assert_eq!(case.seals(&both), Err(Refused::OnlyOwner));
}

#[test]
fn a_piece_with_a_critical_point_out_is_sealed_only_with_a_concession() {
    let mut case = Case::new();
    let (one, two) = (id("one"), id("two"));
    case.pieces.insert(one.clone(), BTreeSet::from([point_c()]));
    assert_eq!(case.blocks(), [], "the other piece is within");
    assert_eq!(case.seals(&[keep(&two, "17", "shelf")]), Ok(()));
    let points = vec![point_c()];
    let refused = Err(Refused::PieceCriticalOut {
        points: points.clone(),
    });
    assert_eq!(case.seals(&[keep(&one, "17", "shelf")]), refused);
    case.pieces.insert(two.clone(), BTreeSet::from([point_c()]));
    assert_eq!(case.blocks(), [Refused::PieceCriticalOut { points }]);

    let mut granted = thread(
        "pass",
        thread::Kind::Concession,
        &merchandiser(),
        State::Granted,
    );
    case.threads = vec![granted.clone()];
    assert_eq!(case.blocks().len(), 1, "it was granted on another revision");
    assert_eq!(concessions(&case.threads, &sao_mai(), 2), []);
    granted.raised_on = 2;
    case.threads = vec![granted];
    assert_eq!(case.blocks(), []);
    assert_eq!(case.seals(&[keep(&one, "17", "shelf")]), Ok(()));
    assert_eq!(
        concessions(&case.threads, &sao_mai(), 2),
        [ThreadId::new("pass")]
    );
    assert_eq!(concessions(&case.threads, &meghna(), 2), []);
}

#[test]
fn each_piece_has_a_number_and_a_place_of_its_own() {
    let case = Case::new();
    let (one, two, other) = (id("one"), id("two"), id("another"));
    let good = [
        keep(&one, "HT-17", "shelf 3"),
        keep(&two, "HT-18", "Iris’s desk"),
    ];
    assert_eq!(case.seals(&good), Ok(()));
    for wrong in [
        vec![],
        vec![keep(&one, " ", "shelf 3")],
        vec![keep(&one, "HT-17", "\n")],
        vec![keep(&other, "HT-17", "shelf 3")],
        vec![
            keep(&one, "HT-17", "shelf 3"),
            keep(&two, "HT-17 ", "shelf 3"),
        ],
        vec![
            keep(&one, "HT-17", "shelf 3"),
            keep(&one, "HT-18", "shelf 3"),
        ],
    ] {
        assert_eq!(case.seals(&wrong), Err(Refused::SealUnsaid), "{wrong:?}");
    }
}
