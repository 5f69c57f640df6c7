//! Whole sentences for what the pure rooms found: why an act is refused or a value not
//! taken, with the way on, and what a signature is put to.
//!
//! Where a refusal carries a list (threads, points, sections), the sentence gives its length and the
//! page shows the list below it, with links.

use crate::exchange::Refused;
use crate::exchange::inspection::LARGEST;
use crate::exchange::round::MOST_PIECES;
use crate::exchange::signature::Statement;
use crate::spec::document::Point;
use crate::spec::rule::NotAGrade;
use crate::spec::units::NotALength;

use super::message::{Message, Text};

impl Text {
    /// What the signer declares. The subject, with its digest, stands beside it.
    pub fn statement(self, statement: Statement) -> Message {
        self.say(match statement {
            Statement::RevisionByFactory => "statement-revision-factory",
            Statement::RevisionByBrand => "statement-revision-brand",
            Statement::RoundByFactory => "statement-round-factory",
            Statement::RoundByBrand => "statement-round-brand",
            Statement::SealByFactory => "statement-seal-factory",
            Statement::SealByBrand => "statement-seal-brand",
        })
    }

    /// Why what was typed is not taken as a measurement, and how to write one.
    pub fn not_a_length(self, why: NotALength, typed: &str) -> Message {
        match why {
            NotALength::Empty => self.say("length-empty"),
            NotALength::NotANumber => self.say("length-not-a-number").with("typed", typed),
            NotALength::UnknownUnit => self.say("length-unknown-unit").with("typed", typed),
            NotALength::UnitMissing => self.say("length-unit-missing").with("typed", typed),
            NotALength::MayBeThousands => self.say("length-may-be-thousands").with("typed", typed),
            NotALength::ZeroDivisor => self.say("length-zero-divisor").with("typed", typed),
            NotALength::FractionNotProper => {
                self.say("length-fraction-not-proper").with("typed", typed)
            }
            NotALength::TooFine => self.say("length-too-fine").with("typed", typed),
            NotALength::TooLong => self.say("length-too-long").with("typed", typed),
        }
    }

    /// The way a point is measured: along what, relaxed or stretched, open or closed, on which side.
    pub fn way(self, point: &Point) -> String {
        let how = &point.how;
        let stretched = match how.stretched {
            true => self.say("how-stretched"),
            false => self.say("how-relaxed"),
        };
        let ways = [
            how.path.map(|it| self.name(&it)),
            Some(stretched),
            how.closure.map(|it| self.name(&it)),
            how.side.map(|it| self.name(&it)),
            point.direction.map(|it| self.name(&it)),
        ];
        let ways = ways.into_iter().flatten().map(|it| it.to_string());
        ways.collect::<Vec<_>>().join(" · ")
    }

    /// Why what was typed is not taken as a grade rule, and how to write one.
    pub fn not_a_grade(self, why: &NotAGrade) -> Message {
        match why {
            NotAGrade::Unreadable { piece } => self.say("grade-unreadable").with("piece", piece),
            NotAGrade::TwoReadings { piece } => self.say("grade-two-readings").with("piece", piece),
            NotAGrade::UnknownSize { code } => self.say("grade-unknown-size").with("size", code),
            NotAGrade::SizeTwice { code } => self.say("grade-size-twice").with("size", code),
            NotAGrade::UnknownPoint { text } => self.say("grade-unknown-point").with("text", text),
            NotAGrade::TooFewSizes => self.say("grade-too-few-sizes"),
            NotAGrade::Length { typed, why } => self.not_a_length(*why, typed),
        }
    }

    /// Why, and what to do.
    pub fn why(self, refused: &Refused) -> Message {
        let t = self;
        match refused {
            Refused::SectionMoved { sections } => {
                t.say("refused-section-moved").with("count", sections.len())
            }
            Refused::ErrorsRemain { count } => t.say("refused-errors-remain").with("count", count),
            Refused::WarningReasonMissing { warnings } => t
                .say("refused-warning-reason-missing")
                .with("count", warnings.len()),
            Refused::ReasonMissing => t.say("refused-reason-missing"),
            Refused::DraftUnchanged { newest } => {
                t.say("refused-draft-unchanged").with("revision", newest)
            }
            Refused::MustFixUnchanged { threads } => t
                .say("refused-must-fix-unchanged")
                .with("count", threads.len()),
            Refused::AlreadyWithdrawn => t.say("refused-already-withdrawn"),
            Refused::NotCurrent {
                current: Some(revision),
            } => t.say("refused-not-current").with("revision", revision),
            Refused::NotCurrent { current: None } => t.say("refused-none-current"),
            Refused::NotShared => t.say("refused-not-shared"),
            Refused::AlreadyAcknowledged => t.say("refused-already-acknowledged"),

            Refused::OnlyBrand => t.say("refused-only-brand"),
            Refused::OnlyFactory => t.say("refused-only-factory"),
            Refused::NotTheAsker => t.say("refused-not-the-asker"),
            Refused::OnlyBrandCloses { kind } => t
                .say("refused-only-brand-closes")
                .with("kind", t.name(kind)),
            Refused::OtherSideFirst => t.say("refused-other-side-first"),

            Refused::ThreadNotIn { state } => {
                t.say("refused-thread-not-in").with("state", t.name(state))
            }
            Refused::ThreadClosed => t.say("refused-thread-closed"),
            Refused::NoSuchMove { kind } => {
                t.say("refused-no-such-move").with("kind", t.name(kind))
            }
            Refused::ItemUnchanged { revision } => {
                t.say("refused-item-unchanged").with("revision", revision)
            }
            Refused::SampleTooOld { changed_in } => {
                t.say("refused-sample-too-old").with("revision", changed_in)
            }

            Refused::RoundNotIn { state } => {
                t.say("refused-round-not-in").with("state", t.name(state))
            }
            Refused::NothingMeasured => t.say("refused-nothing-measured"),
            Refused::OnlyCorrections => t.say("refused-only-corrections"),
            Refused::PiecesMissing => t.say("refused-pieces-missing").with("most", MOST_PIECES),
            Refused::SubstitutesMissing => t.say("refused-substitutes-missing"),
            Refused::ChangesMissing => t.say("refused-changes-missing"),
            Refused::CriticalOut { points } => {
                t.say("refused-critical-out").with("count", points.len())
            }
            Refused::NewerRevisionNeeded { than } => t
                .say("refused-newer-revision-needed")
                .with("revision", than),
            Refused::NoNewerRevision => t.say("refused-no-newer-revision"),

            Refused::NothingToApprove => t.say("refused-nothing-to-approve"),
            Refused::PhotoMissing => t.say("refused-photo-missing"),
            Refused::OptionDecided { verdict } => t
                .say("refused-option-decided")
                .with("verdict", t.name(verdict)),

            Refused::OnlyOwner => t.say("refused-only-owner"),
            Refused::AlreadySealed => t.say("refused-already-sealed"),
            Refused::TooEarlyToSeal { kind } => t
                .say("refused-too-early-to-seal")
                .with("kind", t.name(kind)),
            Refused::RoundNotApproved { state } => t
                .say("refused-round-not-approved")
                .with("state", t.name(state)),
            Refused::QuestionsBeforeSealing { threads } => t
                .say("refused-questions-before-sealing")
                .with("count", threads.len()),
            Refused::MustFixUnverified { threads } => t
                .say("refused-must-fix-unverified")
                .with("count", threads.len()),
            Refused::SizeSetMissing => t.say("refused-size-set-missing"),
            Refused::NotApprovedYet { things } => t
                .say("refused-not-approved-yet")
                .with("count", things.len()),
            Refused::SubstitutesSent => t.say("refused-substitutes-sent"),
            Refused::PieceCriticalOut { points } => t
                .say("refused-piece-critical-out")
                .with("count", points.len()),
            Refused::SealUnsaid => t.say("refused-seal-unsaid"),

            Refused::SealUnsigned { sides } => {
                let sides = sides.iter().map(|side| t.name(side).to_string());
                let sides: Vec<String> = sides.collect();
                t.say("refused-seal-unsigned")
                    .with("sides", sides.join(", "))
            }
            Refused::LotUnsaid => t.say("refused-lot-unsaid").with("most", LARGEST),
            Refused::NotForRework => t.say("refused-not-for-rework"),
            Refused::InspectedAgain => t.say("refused-inspected-again"),
            Refused::LotGrown => t.say("refused-lot-grown"),
            Refused::InspectionNotIn { state } => t
                .say("refused-inspection-not-in")
                .with("state", t.name(state)),
            Refused::PieceUnsaid { most } => t.say("refused-piece-unsaid").with("most", most),
            Refused::PieceBeyond { sample } => t.say("refused-piece-beyond").with("sample", sample),
            Refused::PieceMoved => t.say("refused-piece-moved"),
            Refused::DefectUnsaid => t.say("refused-defect-unsaid"),
            Refused::PiecesUninspected { missing } => {
                t.say("refused-pieces-uninspected").with("count", missing)
            }
            Refused::LotRejected => t.say("refused-lot-rejected"),
            Refused::NothingToConcede => t.say("refused-nothing-to-concede"),
            Refused::CriticalInBulk { pieces } => {
                t.say("refused-critical-in-bulk").with("count", pieces)
            }

            Refused::OpenQuestions { threads } => {
                t.say("refused-open-questions").with("count", threads.len())
            }
            Refused::MustFixOpen { threads } => {
                t.say("refused-must-fix-open").with("count", threads.len())
            }
            Refused::SamePersonBothSides => t.say("refused-same-person-both-sides"),
            Refused::AlreadySigned => t.say("refused-already-signed"),
            Refused::NotAcknowledged => t.say("refused-not-acknowledged"),
            Refused::NothingDecided => t.say("refused-nothing-decided"),
            Refused::RoleDoesNotSign => t.say("refused-role-does-not-sign"),
            Refused::ScreenMoved => t.say("refused-screen-moved"),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::super::Language;
    use super::*;
    use crate::exchange::{round, thread};

    #[test]
    fn a_refusal_says_why_and_the_way_on() {
        let t = Language::English.text();
        let why = |refused| t.why(&refused).to_string();
        assert_eq!(
            why(Refused::ThreadNotIn {
                state: thread::State::Changed { revision: 3 },
            }),
            "This cannot be done now. The thread is: changed in revision 3."
        );
        assert_eq!(
            why(Refused::RoundNotIn {
                state: round::State::Decided(round::Outcome::Remake),
            }),
            "This cannot be done now. The round is: remake."
        );
        assert_eq!(
            why(Refused::OpenQuestions { threads: vec![] }),
            "0 questions are open. Answer them; the asker closes them. Then sign."
        );
    }
}
