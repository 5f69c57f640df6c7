//! A thread: the messages on one item of a spec, between the brand and one factory.
//!
//! How it moves:
//!
//! - A message by the other side answers an open thread. A message by the asker's side opens an
//!   answered one again: they were not satisfied, or asked further. Later states are not moved by
//!   talk, and a settled thread takes no message until it is opened again: what is said after the
//!   end would be read by nobody.
//! - Agreed: the other side assents to what was asked, or the asker's side assents to the answer.
//! - Changed in revision n: the brand says so, and the change list of n must name the item. A
//!   must-fix may get there from any earlier state; anything else was agreed first.
//! - Verified: a sample made to that revision, or a later one, was measured.
//! - Closed: a question by its asker, or who leads the asker's organisation; a must-fix by the
//!   brand; a suggestion by either side; a concession request is declined by the brand or taken
//!   back by the asker.
//! - Granted: by the brand; a concession, or a must-fix let pass. It stays so, since signatures
//!   may rest on it.

use std::collections::BTreeSet;

use crate::spec::{ItemId, OrgId, PersonId, ThreadId};

use super::{Actor, Refused, Side};

super::named! {
    /// What a thread is for.
    Kind {
        Question = "question",
        /// The brand's: signing waits for it.
        MustFix = "must_fix",
        Suggestion = "suggestion",
        /// The factory asks to let something pass.
        Concession = "concession",
    }
}

/// How far a thread has come.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum State {
    Open,
    Answered,
    Agreed,
    Changed {
        revision: u32,
    },
    /// Seen on a sample; `revision` is the one that carried the change.
    Verified {
        revision: u32,
    },
    Closed,
    /// A concession, or a must-fix let pass.
    Granted,
}

impl State {
    /// The stable name, in the database and the ledger.
    pub fn name(self) -> &'static str {
        match self {
            State::Open => "open",
            State::Answered => "answered",
            State::Agreed => "agreed",
            State::Changed { .. } => "changed",
            State::Verified { .. } => "verified",
            State::Closed => "closed",
            State::Granted => "granted",
        }
    }

    /// The revision that carries the change, while the state knows of one.
    pub fn changed_in(self) -> Option<u32> {
        match self {
            State::Changed { revision } | State::Verified { revision } => Some(revision),
            _ => None,
        }
    }

    /// The state from its stored name and revision; `None` when the two do not make one.
    pub fn read(name: &str, changed_in: Option<u32>) -> Option<State> {
        match (name, changed_in) {
            ("open", _) => Some(State::Open),
            ("answered", _) => Some(State::Answered),
            ("agreed", _) => Some(State::Agreed),
            ("changed", Some(revision)) => Some(State::Changed { revision }),
            ("verified", Some(revision)) => Some(State::Verified { revision }),
            ("closed", _) => Some(State::Closed),
            ("granted", _) => Some(State::Granted),
            _ => None,
        }
    }

    /// Nothing more comes of it unless it is opened again.
    pub fn is_settled(self) -> bool {
        matches!(self, State::Closed | State::Granted)
    }
}

/// The facts about a thread that its moves need.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Thread {
    pub id: ThreadId,
    pub kind: Kind,
    pub state: State,
    /// The factory it is with. A thread never has two.
    pub factory: OrgId,
    pub item: ItemId,
    /// The number of the revision it was raised on.
    pub raised_on: u32,
    pub asker: PersonId,
    pub asker_org: OrgId,
    pub asker_side: Side,
}

/// What somebody wants to do to a thread.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Move<'a> {
    /// Write into it.
    Message,
    Agree,
    /// Say that `revision` carries the change; `touched` is every item that its change list names,
    /// against the revision that the thread was raised on.
    MarkChanged {
        revision: u32,
        touched: &'a BTreeSet<ItemId>,
    },
    /// Say that the change was seen on a sample of a round bound to `revision`.
    Verify {
        revision: u32,
        measured: bool,
    },
    Close,
    Reopen,
    Grant,
}

impl Move<'_> {
    /// The stable name, in addresses and in the ledger.
    pub fn name(&self) -> &'static str {
        match self {
            Move::Message => "message",
            Move::Agree => "agree",
            Move::MarkChanged { .. } => "mark_changed",
            Move::Verify { .. } => "verify",
            Move::Close => "close",
            Move::Reopen => "reopen",
            Move::Grant => "grant",
        }
    }
}

/// May this side raise a thread of this kind? Must-fixes are the brand's; concessions are asked
/// for by the factory.
pub fn raise(side: Side, kind: Kind) -> Result<State, Refused> {
    match (kind, side) {
        (Kind::MustFix, Side::Factory) => Err(Refused::OnlyBrand),
        (Kind::Concession, Side::Brand) => Err(Refused::OnlyFactory),
        _ => Ok(State::Open),
    }
}

impl Thread {
    /// The state that the move leads to.
    pub fn step(&self, by: &Actor, mv: Move<'_>) -> Result<State, Refused> {
        match mv {
            Move::Message => self.message(by),
            Move::Agree => self.agree(by),
            Move::MarkChanged { revision, touched } => self.mark_changed(by, revision, touched),
            Move::Verify { revision, measured } => self.verify(by, revision, measured),
            Move::Close => self.close(by),
            Move::Reopen => self.reopen(by),
            Move::Grant => self.grant(by),
        }
    }

    /// Whose move is next: what is agreed, the brand carries into a revision and sees on a sample.
    pub fn waits_for(&self) -> Option<Side> {
        match self.state {
            State::Open => Some(self.asker_side.other()),
            State::Answered => Some(self.asker_side),
            State::Agreed | State::Changed { .. } => Some(Side::Brand),
            State::Verified { .. } | State::Closed | State::Granted => None,
        }
    }

    /// A question that is neither settled nor agreed upon.
    pub fn is_open_question(&self) -> bool {
        self.kind == Kind::Question && matches!(self.state, State::Open | State::Answered)
    }

    /// A must-fix that the next revision has to carry.
    pub fn is_agreed_must_fix(&self) -> bool {
        self.kind == Kind::MustFix && self.state == State::Agreed
    }

    /// A must-fix that no revision up to `revision` carries and that was not let pass.
    pub fn is_must_fix_open_in(&self, revision: u32) -> bool {
        self.kind == Kind::MustFix
            && match self.state {
                State::Open | State::Answered | State::Agreed => true,
                State::Changed { revision: carried } | State::Verified { revision: carried } => {
                    carried > revision
                }
                State::Closed | State::Granted => false,
            }
    }

    /// Lets samples of `revision` be out of tolerance on its item. It was granted from what that
    /// revision asks for: another one may ask for something else.
    pub fn concedes(&self, item: &ItemId, revision: u32) -> bool {
        self.state == State::Granted && self.item == *item && self.raised_on == revision
    }

    fn is_asker(&self, by: &Actor) -> bool {
        by.person == self.asker || (by.org == self.asker_org && by.role.leads())
    }

    fn message(&self, by: &Actor) -> Result<State, Refused> {
        match self.state {
            State::Open if by.side() != self.asker_side => Ok(State::Answered),
            State::Answered if by.side() == self.asker_side => Ok(State::Open),
            state if state.is_settled() => Err(Refused::ThreadClosed),
            state => Ok(state),
        }
    }

    fn agree(&self, by: &Actor) -> Result<State, Refused> {
        if self.kind == Kind::Concession {
            return Err(Refused::NoSuchMove { kind: self.kind });
        }
        match self.state {
            State::Open if by.side() == self.asker_side => Err(Refused::OtherSideFirst),
            State::Open | State::Answered => Ok(State::Agreed),
            state => Err(Refused::ThreadNotIn { state }),
        }
    }

    fn mark_changed(
        &self,
        by: &Actor,
        revision: u32,
        touched: &BTreeSet<ItemId>,
    ) -> Result<State, Refused> {
        only_brand(by)?;
        match (self.kind, self.state) {
            (Kind::Concession, _) => return Err(Refused::NoSuchMove { kind: self.kind }),
            (Kind::MustFix, State::Open | State::Answered) | (_, State::Agreed) => {}
            (_, state) => return Err(Refused::ThreadNotIn { state }),
        }
        if revision > self.raised_on && touched.contains(&self.item) {
            Ok(State::Changed { revision })
        } else {
            Err(Refused::ItemUnchanged { revision })
        }
    }

    fn verify(&self, by: &Actor, sample: u32, measured: bool) -> Result<State, Refused> {
        only_brand(by)?;
        let State::Changed { revision } = self.state else {
            return Err(Refused::ThreadNotIn { state: self.state });
        };
        if sample < revision {
            Err(Refused::SampleTooOld {
                changed_in: revision,
            })
        } else if !measured {
            Err(Refused::NothingMeasured)
        } else {
            Ok(State::Verified { revision })
        }
    }

    fn close(&self, by: &Actor) -> Result<State, Refused> {
        if self.state.is_settled() {
            return Err(Refused::ThreadClosed);
        }
        let brand = by.side() == Side::Brand;
        match self.kind {
            Kind::Question if !self.is_asker(by) => Err(Refused::NotTheAsker),
            Kind::MustFix if !brand => Err(Refused::OnlyBrandCloses { kind: self.kind }),
            Kind::Concession if !brand && !self.is_asker(by) => Err(Refused::NotTheAsker),
            _ => Ok(State::Closed),
        }
    }

    fn reopen(&self, by: &Actor) -> Result<State, Refused> {
        if self.state != State::Closed {
            return Err(Refused::ThreadNotIn { state: self.state });
        }
        // Either side may find that a question or suggestion was not settled after all.
        match self.kind {
            Kind::MustFix => only_brand(by).map(|()| State::Open),
            _ => Ok(State::Open),
        }
    }

    fn grant(&self, by: &Actor) -> Result<State, Refused> {
        match self.kind {
            Kind::Question | Kind::Suggestion => {
                return Err(Refused::NoSuchMove { kind: self.kind });
            }
            Kind::MustFix | Kind::Concession if by.side() != Side::Brand => {
                return Err(Refused::OnlyBrandCloses { kind: self.kind });
            }
            Kind::MustFix | Kind::Concession => {}
        }
        if self.state.is_settled() {
            Err(Refused::ThreadClosed)
        } else {
            Ok(State::Granted)
        }
    }
}

fn only_brand(by: &Actor) -> Result<(), Refused> {
    if by.side() == Side::Brand {
        Ok(())
    } else {
        Err(Refused::OnlyBrand)
    }
}

#[cfg(test)]
mod tests;
