//! What is said of colours that are compared or shown.

use crate::spec::colour::{Incomparable, NotOnScreen};

use super::message::{Message, Text};

impl Text {
    /// Why two readings have no difference, and what to do.
    pub fn incomparable(self, why: Incomparable) -> Message {
        match why {
            Incomparable::Illuminants { standard, sample } => self
                .say("incomparable-illuminants")
                .with("standard", self.name(&standard))
                .with("sample", self.name(&sample)),
            Incomparable::Observers { standard, sample } => self
                .say("incomparable-observers")
                .with("standard", self.name(&standard))
                .with("sample", self.name(&sample)),
            Incomparable::NoColour => self.say("incomparable-no-colour"),
            Incomparable::Weight => self.say("incomparable-weight"),
        }
    }

    /// Why a reading has no screen value.
    pub fn not_on_screen(self, why: NotOnScreen) -> Message {
        match why {
            NotOnScreen::Illuminant(illuminant) => self
                .say("not-on-screen-illuminant")
                .with("illuminant", self.name(&illuminant)),
            NotOnScreen::NoColour => self.say("not-on-screen-no-colour"),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::language::Language;
    use crate::spec::document::{Illuminant, Observer};

    #[test]
    fn what_cannot_be_compared_names_both_conditions() {
        let t = Language::English.text();
        let why = Incomparable::Observers {
            standard: Observer::Two,
            sample: Observer::Ten,
        };
        assert_eq!(
            t.incomparable(why).to_string(),
            "One was measured for the 2° observer, the other for the 10° observer: such readings \
             cannot be compared. Measure both for the same observer."
        );
        assert!(
            t.not_on_screen(NotOnScreen::Illuminant(Illuminant::F11))
                .to_string()
                .starts_with("A reading under F11 does not say")
        );
    }
}
