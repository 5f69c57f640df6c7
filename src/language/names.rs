//! What the program's own values are called.

mod exchange;

use crate::spec::Section;
use crate::spec::book::Table;
use crate::spec::document::*;
use crate::spec::stitch::StitchClass;
use crate::spec::table::Status;
use crate::spec::units::Unit;

use super::message::{Message, Text};
use super::texts::Language;

/// A value of the program that pages have a word for.
pub trait Named {
    fn name(&self, t: Text) -> Message;
}

impl<T: Named + ?Sized> Named for &T {
    fn name(&self, t: Text) -> Message {
        (**self).name(t)
    }
}

impl Named for Section {
    fn name(&self, t: Text) -> Message {
        t.say(&format!("section-{}", Section::name(*self)))
    }
}

/// The document's sets of words; a set that is not named here has no name to show.
macro_rules! words {
    ($($set:ident)*) => {
        $(impl Named for $set {
            fn name(&self, t: Text) -> Message {
                t.word($set::KIND, self.word())
            }
        })*

        /// Every word with its set.
        #[cfg(test)]
        fn all_words() -> Vec<(&'static str, &'static str)> {
            let mut all = Vec::new();
            $(all.extend($set::ALL.iter().map(|it| ($set::KIND, it.word())));)*
            all
        }
    };
}

words! {
    Wearer Market GarmentKind Worn Edges SizeSystem BodyDimension View Path Closure BodySide Basis
    Direction Measure Illuminant Observer Approval MaterialKind Component Fibre YarnSystem ZipTeeth
    ZipEnd CordPlace CordEnds Measured ConsumptionBasis WastageBasis MinimumLevel EvidenceKind Wash
    Bleach Tumble AirDry Iron DryClean WetClean LineKind SeamClass ArtworkMethod ArtworkForm Anchor
    LabelKind LabelMade LabelFold Driver LabelContent Assortment StitchClass
    Status Table
}

impl Text {
    /// What the value of a set is called that the document holds by this name.
    pub fn word(self, kind: &str, word: &str) -> Message {
        let word = word.replace('_', "-");
        self.say(&format!("word-{kind}-{word}"))
    }

    /// What a list of the document is called, by its name in it.
    pub fn list(self, list: &str) -> Message {
        let list = list.replace('_', "-");
        self.say(&format!("list-{list}"))
    }

    /// One of the program's own words within a sentence: small, unless it is an abbreviation.
    /// Scripts without small letters keep theirs.
    pub(super) fn within(self, word: &str) -> String {
        let mut letters = word.chars();
        match (letters.next(), letters.clone().next()) {
            // The Turkish pairs are İ i and I ı.
            (Some('İ'), _) => format!("i{}", letters.as_str()),
            (Some('I'), Some(second))
                if self.language() == Language::Turkish && !second.is_uppercase() =>
            {
                format!("ı{}", letters.as_str())
            }
            (Some(first), Some(second)) if !second.is_uppercase() => {
                first.to_lowercase().chain(letters).collect()
            }
            _ => word.to_owned(),
        }
    }

    /// What a field of the document is called: `how.start`, `base_size`.
    pub fn field(self, field: &str) -> Message {
        let field = field.replace(['.', '_'], "-");
        self.say(&format!("field-{field}"))
    }
}

impl Named for MeasuringState {
    fn name(&self, t: Text) -> Message {
        match self {
            MeasuringState::AsSewn => t.say("measured-as-sewn"),
            MeasuringState::AfterFinish => t.say("measured-after-finish"),
            MeasuringState::AfterWashes(count) => {
                t.say("measured-after-washes").with("count", count)
            }
        }
    }
}

impl Named for Unit {
    fn name(&self, t: Text) -> Message {
        t.say(match self {
            Unit::Cm => "unit-cm",
            Unit::Mm => "unit-mm",
            Unit::Inch => "unit-inch",
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::language::Language;

    #[test]
    fn every_word_of_the_document_has_a_name() {
        let t = Language::English.text();
        for (kind, word) in all_words() {
            let name = t.word(kind, word).to_string();
            assert!(!name.starts_with("word-"), "{name}");
        }
    }

    #[test]
    fn every_section_has_a_name() {
        for section in Section::ALL {
            let name = Language::English.text().name(section).to_string();
            assert!(!name.starts_with("section-"), "{name}");
        }
    }
}
