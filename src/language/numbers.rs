//! Why a style number, or the way to make them, is not taken.

use crate::spec::number_scheme::{NoNumber, NotAMask, NotANumber};

use super::message::{Message, Text};

impl Text {
    pub fn not_a_mask(self, why: &NotAMask) -> Message {
        match why {
            NotAMask::TooLong => self.say("not-a-mask-too-long"),
            NotAMask::BraceOpen { at } => self.say("not-a-mask-brace-open").with("at", at),
            NotAMask::BraceClosed { at } => self.say("not-a-mask-brace-closed").with("at", at),
            NotAMask::Unknown { at, name } => self
                .say("not-a-mask-unknown")
                .with("at", at)
                .with("name", name),
            NotAMask::Digits { at, name } => self
                .say("not-a-mask-digits")
                .with("at", at)
                .with("name", name),
            NotAMask::NotCounted { at, name } => self
                .say("not-a-mask-not-counted")
                .with("at", at)
                .with("name", name),
            NotAMask::Twice { at, name } => self
                .say("not-a-mask-twice")
                .with("at", at)
                .with("name", name),
            NotAMask::NoCounter => self.say("not-a-mask-no-counter"),
            NotAMask::BeforeCounter { at, name } => self
                .say("not-a-mask-before-counter")
                .with("at", at)
                .with("name", name),
            NotAMask::NoSystem { .. } => self.say("not-a-mask-no-system"),
            NotAMask::NoPlace => self.say("not-a-mask-no-place"),
            NotAMask::TooManyLists => self.say("not-a-mask-too-many-lists"),
            NotAMask::ListName { name } => self.say("not-a-mask-list-name").with("name", name),
            NotAMask::ListEmpty { list } => self.say("not-a-mask-list-empty").with("list", list),
            NotAMask::CodeEmpty { list } => self.say("not-a-mask-code-empty").with("list", list),
            NotAMask::CodeTwice { list, code } => self
                .say("not-a-mask-code-twice")
                .with("list", list)
                .with("code", code),
            NotAMask::UnprotectedText { at, character } => self
                .say("not-a-mask-unprotected-text")
                .with("at", at)
                .with("character", character.to_string()),
            NotAMask::UnprotectedCode {
                list,
                code,
                character,
            } => self
                .say("not-a-mask-unprotected-code")
                .with("list", list)
                .with("code", code)
                .with("character", character.to_string()),
        }
    }

    pub fn no_number(self, why: &NoNumber) -> Message {
        match why {
            NoNumber::ChoiceMissing { list } => self.say("no-number-choice").with("list", list),
            NoNumber::UnknownCode { list, .. } => self.say("no-number-code").with("list", list),
            NoNumber::CounterFull { .. } => self.say("no-number-full"),
            NoNumber::UnknownList { .. }
            | NoNumber::Zero
            | NoNumber::NoColourways
            | NoNumber::TwoReadings { .. } => self.say("no-number-other"),
        }
    }

    pub fn not_a_number(self, why: NotANumber) -> Message {
        self.say(match why {
            NotANumber::OtherMask => "not-a-number-mask",
            NotANumber::Check => "not-a-number-check",
            NotANumber::TwoReadings => "not-a-number-two",
        })
    }
}
