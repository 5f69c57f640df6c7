use super::*;
use crate::exchange::cast::*;
use crate::exchange::revision::{Fact, standing};
use crate::exchange::{Role, thread};
use crate::spec::ThreadId;

/// Revision 2 of a style is current, shared with Sao Mai Garment and acknowledged; nothing is
/// open and nobody has signed.
struct Table {
    number: u32,
    revisions: Vec<Fact>,
    shared: bool,
    acknowledged: bool,
    threads: Vec<Thread>,
    signed: Vec<Signed>,
    shown: Digest,
}

fn fact(number: u32, withdrawn: Option<&str>) -> Fact {
    Fact {
        number,
        withdrawn: withdrawn.map(str::to_owned),
    }
}

fn digest() -> Digest {
    Digest::of(b"revision 2")
}

impl Table {
    fn laid() -> Table {
        Table {
            number: 2,
            revisions: vec![fact(1, None), fact(2, None)],
            shared: true,
            acknowledged: true,
            threads: Vec::new(),
            signed: Vec::new(),
            shown: digest(),
        }
    }

    fn signs(&self, by: &Actor) -> Result<ToSign, Refused> {
        self.asks(by, may_sign)
    }

    fn asks<T>(&self, by: &Actor, rule: fn(&Signing<'_>) -> T) -> T {
        rule(&Signing {
            by,
            factory: &sao_mai(),
            subject: Subject::Revision {
                number: self.number,
                digest: &digest(),
                standing: &standing(self.number, &self.revisions).expect("it was published"),
                shared: self.shared,
                acknowledged: self.acknowledged,
            },
            subject_id: "revision-2",
            shown: &self.shown,
            threads: &self.threads,
            signed: &self.signed,
        })
    }

    fn signs_round(&self, by: &Actor, state: round::State) -> Result<ToSign, Refused> {
        may_sign(&Signing {
            by,
            factory: &sao_mai(),
            subject: Subject::Round {
                revision: self.number,
                digest: &digest(),
                state,
            },
            subject_id: "round-1",
            shown: &self.shown,
            threads: &self.threads,
            signed: &self.signed,
        })
    }
}

fn signed(by: &Actor, kind: SubjectKind, subject: &str) -> Signed {
    Signed {
        person: by.person.clone(),
        side: by.side(),
        factory: sao_mai(),
        kind,
        subject: subject.to_owned(),
    }
}

const APPROVED: round::State = round::State::Decided(round::Outcome::Approved);

#[test]
fn both_sides_sign_the_whole_digest_each_to_its_own_statement() {
    let mut table = Table::laid();
    let factory = table.signs(&merchandiser()).unwrap();
    assert_eq!(factory.statement, Statement::RevisionByFactory);
    assert_eq!(factory.digest, digest());
    table.signed = vec![signed(&merchandiser(), SubjectKind::Revision, "revision-2")];
    let brand = table.signs(&designer()).unwrap();
    assert_eq!(brand.statement, Statement::RevisionByBrand);
    assert_eq!(brand.digest, digest());
}

#[test]
fn each_side_signs_once() {
    let mut table = Table::laid();
    table.signed = vec![signed(&designer(), SubjectKind::Revision, "revision-2")];
    // Not even by a colleague.
    assert_eq!(table.signs(&owner()), Err(Refused::AlreadySigned));
    // Another revision, another factory or a round is another matter.
    table.signed = vec![
        signed(&designer(), SubjectKind::Revision, "revision-1"),
        signed(&designer(), SubjectKind::Round, "revision-2"),
        Signed {
            factory: meghna(),
            ..signed(&designer(), SubjectKind::Revision, "revision-2")
        },
    ];
    assert!(table.signs(&owner()).is_ok());
}

#[test]
fn one_person_never_signs_for_both_sides() {
    // Linh moved from the factory to the brand, and has signed for the factory before.
    let mut moved = designer();
    moved.person = merchandiser().person;
    let mut table = Table::laid();
    for (kind, subject) in [
        (SubjectKind::Revision, "revision-2"),
        (SubjectKind::Revision, "revision-1"),
        (SubjectKind::Round, "round-1"),
    ] {
        table.signed = vec![signed(&merchandiser(), kind, subject)];
        assert_eq!(table.signs(&moved), Err(Refused::SamePersonBothSides));
        assert_eq!(
            table.signs_round(&moved, APPROVED),
            Err(Refused::SamePersonBothSides)
        );
    }
    assert!(table.signs(&designer()).is_ok());
}

#[test]
fn only_the_current_revision_is_signed() {
    let mut table = Table::laid();
    table.number = 1;
    assert_eq!(
        table.signs(&merchandiser()),
        Err(Refused::NotCurrent { current: Some(2) })
    );
    table.number = 2;
    table.revisions[1] = fact(2, Some("wrong sleeve length"));
    assert_eq!(
        table.signs(&merchandiser()),
        Err(Refused::NotCurrent { current: None })
    );
}

#[test]
fn the_factory_acknowledges_before_it_signs_and_it_must_be_shared() {
    let mut table = Table::laid();
    table.acknowledged = false;
    assert_eq!(table.signs(&merchandiser()), Err(Refused::NotAcknowledged));
    assert!(table.signs(&designer()).is_ok());
    table.shared = false;
    assert_eq!(table.signs(&designer()), Err(Refused::NotShared));
}

#[test]
fn an_open_question_blocks_both_sides_until_its_answer_is_accepted() {
    let mut table = Table::laid();
    for state in [thread::State::Open, thread::State::Answered] {
        table.threads = vec![question("q", state)];
        for by in [merchandiser(), designer()] {
            let blocked = Refused::OpenQuestions {
                threads: vec![ThreadId::new("q")],
            };
            assert_eq!(table.signs(&by), Err(blocked.clone()));
            assert_eq!(table.signs_round(&by, APPROVED), Err(blocked));
        }
    }
    for state in [thread::State::Agreed, thread::State::Closed] {
        table.threads = vec![question("q", state)];
        assert!(table.signs(&merchandiser()).is_ok());
    }
}

#[test]
fn a_must_fix_blocks_until_it_is_changed_in_this_revision_or_let_pass() {
    let mut table = Table::laid();
    for state in [
        thread::State::Open,
        thread::State::Answered,
        thread::State::Agreed,
    ] {
        table.threads = vec![must_fix("m", state)];
        let blocked = Refused::MustFixOpen {
            threads: vec![ThreadId::new("m")],
        };
        assert_eq!(table.signs(&merchandiser()), Err(blocked));
    }
    for state in [
        thread::State::Changed { revision: 2 },
        thread::State::Verified { revision: 2 },
        thread::State::Closed,
        thread::State::Granted,
    ] {
        table.threads = vec![must_fix("m", state)];
        assert!(table.signs(&merchandiser()).is_ok(), "{state:?}");
    }
}

#[test]
fn what_is_open_with_another_factory_blocks_nobody_here() {
    let mut table = Table::laid();
    let mut elsewhere = question("q", thread::State::Open);
    elsewhere.factory = meghna();
    table.threads = vec![elsewhere];
    assert!(table.signs(&merchandiser()).is_ok());
}

#[test]
fn suggestions_and_concession_requests_do_not_block() {
    let mut table = Table::laid();
    table.threads = [thread::Kind::Suggestion, thread::Kind::Concession]
        .map(|kind| thread("t", kind, &merchandiser(), thread::State::Open))
        .to_vec();
    assert!(table.signs(&merchandiser()).is_ok());
}

#[test]
fn a_round_is_signed_when_it_is_decided_with_its_must_fixes_still_to_do() {
    let mut table = Table::laid();
    table.threads = vec![must_fix("m", thread::State::Open)];
    let with_changes = round::State::Decided(round::Outcome::ApprovedWithChanges);
    let signed = table.signs_round(&merchandiser(), with_changes).unwrap();
    assert_eq!(signed.statement, Statement::RoundByFactory);
    let signed = table.signs_round(&designer(), with_changes).unwrap();
    assert_eq!(signed.statement, Statement::RoundByBrand);

    for undecided in [
        round::State::Measured,
        round::State::Decided(round::Outcome::Cancelled),
    ] {
        assert_eq!(
            table.signs_round(&designer(), undecided),
            Err(Refused::NothingDecided)
        );
    }
}

#[test]
fn a_question_about_a_later_revision_does_not_block_an_older_round() {
    let mut table = Table::laid();
    let mut later = question("q", thread::State::Open);
    later.raised_on = 3;
    table.threads = vec![later.clone()];
    assert!(table.signs_round(&merchandiser(), APPROVED).is_ok());
    later.raised_on = 2;
    table.threads = vec![later];
    assert!(table.signs_round(&merchandiser(), APPROVED).is_err());
}

#[test]
fn what_is_signed_is_what_was_on_the_screen() {
    let mut table = Table::laid();
    table.shown = Digest::of(b"the record before a value was corrected");
    assert_eq!(
        table.signs_round(&designer(), APPROVED),
        Err(Refused::ScreenMoved)
    );
}

#[test]
fn only_who_may_bind_a_side_signs_and_only_their_own() {
    let table = Table::laid();
    for by in [viewer(), sample_room()] {
        assert_eq!(table.signs(&by), Err(Refused::RoleDoesNotSign));
    }
    let stranger = Actor {
        person: PersonId::new("rafiq"),
        org: meghna(),
        role: Role::Merchandiser,
    };
    assert_eq!(table.signs(&stranger), Err(Refused::NotShared));
}

#[test]
fn everything_that_blocks_is_said_at_once() {
    let mut table = Table::laid();
    table.number = 1;
    table.acknowledged = false;
    table.threads = vec![
        question("q", thread::State::Open),
        must_fix("m", thread::State::Open),
    ];
    assert_eq!(
        table.asks(&merchandiser(), blocks),
        [
            Refused::NotCurrent { current: Some(2) },
            Refused::NotAcknowledged,
            Refused::OpenQuestions {
                threads: vec![ThreadId::new("q")]
            },
            Refused::MustFixOpen {
                threads: vec![ThreadId::new("m")]
            },
        ]
    );
    assert_eq!(
        table.signs(&merchandiser()),
        Err(Refused::NotCurrent { current: Some(2) })
    );
}

#[test]
fn a_revision_goes_from_shared_to_signed_by_both() {
    assert_eq!(agreement(false, false, false), Agreement::Shared);
    assert_eq!(agreement(true, false, false), Agreement::Acknowledged);
    assert_eq!(agreement(true, true, false), Agreement::SignedByFactory);
    assert_eq!(agreement(false, false, true), Agreement::SignedByBrand);
    assert_eq!(agreement(true, true, true), Agreement::SignedByBoth);
}

#[test]
fn a_seal_is_signed_once_by_each_side_and_by_nobody_for_both() {
    let mut table = Table::laid();
    let signs = |table: &Table, by: &Actor, shown: &Digest| {
        may_sign(&Signing {
            by,
            factory: &sao_mai(),
            subject: Subject::Seal {
                revision: 2,
                digest: &digest(),
            },
            subject_id: "seal-1",
            shown,
            threads: &table.threads,
            signed: &table.signed,
        })
    };
    let statement = |by: &Actor| signs(&Table::laid(), by, &digest()).map(|it| it.statement);
    assert_eq!(statement(&merchandiser()), Ok(Statement::SealByFactory));
    assert_eq!(statement(&designer()), Ok(Statement::SealByBrand));
    assert_eq!(statement(&sample_room()), Err(Refused::RoleDoesNotSign));
    let moved = signs(&table, &designer(), &Digest::of(b"another"));
    assert_eq!(moved, Err(Refused::ScreenMoved));

    table.signed = vec![signed(&designer(), SubjectKind::Seal, "seal-1")];
    let again = signs(&table, &owner(), &digest());
    assert_eq!(again, Err(Refused::AlreadySigned));
    let other = Actor {
        person: designer().person,
        ..merchandiser()
    };
    let both = signs(&table, &other, &digest());
    assert_eq!(both, Err(Refused::SamePersonBothSides));
    table.threads = vec![question("rib", thread::State::Open)];
    assert_eq!(
        signs(&table, &merchandiser(), &digest()),
        Err(Refused::OpenQuestions {
            threads: vec![ThreadId::new("rib")]
        })
    );
}
