//! The sentences of the readiness checks.

use crate::exchange::refused::FindingKey;
use crate::exchange::revision::Frozen;
use crate::spec::check::{Fact, Finding, Severity, check_by};
use crate::spec::units::{DecimalSign, Length, Unit};
use crate::spec::{Book, grade};

use super::message::{Message, Text};
use super::names::Named;

impl Named for Severity {
    fn name(&self, t: Text) -> Message {
        t.say(match self {
            Severity::Error => "severity-error",
            Severity::Warning => "severity-warning",
        })
    }
}

/// A warning that a revision was published with.
pub struct AcceptedWarning {
    pub sentence: String,
    /// In the words of who accepted it.
    pub reason: String,
}

impl Text {
    /// The warnings that a revision was published with. Their sentences are made again from the frozen
    /// spec; a warning that the rules of today do not find goes by its code.
    pub fn accepted(self, frozen: &Frozen) -> Vec<AcceptedWarning> {
        if frozen.accepted.is_empty() {
            return Vec::new();
        }
        let spec = &frozen.spec;
        // By the tables that it was published with.
        let book = Book::corrected(frozen.corrections.clone());
        let findings = match &book {
            Ok(book) => check_by(book, spec, &grade(spec)),
            Err(_) => check_by(Book::shipped(), spec, &grade(spec)),
        };
        let lines = frozen.accepted.iter().map(|accepted| {
            let key = FindingKey {
                code: accepted.code.clone(),
                item: accepted.item.clone(),
            };
            let finding = findings.iter().find(|it| FindingKey::of(it) == key);
            let sentence = match finding {
                Some(finding) => self
                    .finding(finding, frozen.chart.unit, frozen.decimal)
                    .to_string(),
                None => {
                    let item = accepted.item.as_ref().and_then(|id| spec.item(id));
                    let item = item.map(|item| format!("{} {}: ", item.letter(), item.name()));
                    format!("{}{}", item.unwrap_or_default(), accepted.code)
                }
            };
            AcceptedWarning {
                sentence,
                reason: accepted.reason.clone(),
            }
        });
        lines.collect()
    }

    /// What was found, on which item, and what to do. Lengths are shown in `unit`, the spec's master
    /// unit.
    pub fn finding(self, finding: &Finding, unit: Unit, sign: DecimalSign) -> Message {
        let sentence = self.say(&format!("check-{}", finding.code.name()));
        let exact = |length: &Length, unit: Unit| {
            let number = length.exact(unit, sign);
            format!("{number} {}", unit.symbol())
        };
        let facts = finding.facts.iter();
        facts.fold(sentence, |sentence, (name, fact)| match fact {
            Fact::Text(text) => sentence.with(name, text),
            Fact::Length(length) => sentence.with(name, exact(length, unit)),
            Fact::LengthIn(length, unit) => sentence.with(name, exact(length, *unit)),
            Fact::Number(number) => sentence.with(name, number.show(sign)),
            Fact::Words(words) => {
                let words = words.iter().map(|(kind, word)| self.word(kind, word));
                let words: Vec<String> = words.map(String::from).collect();
                sentence.with(name, words.join(", "))
            }
            Fact::Fields(fields) => {
                let fields = fields.iter().map(|field| self.field(field));
                let fields: Vec<String> = fields.map(String::from).collect();
                sentence.with(name, fields.join(", "))
            }
        })
    }
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeSet;

    use super::super::Language;
    use super::*;
    use crate::spec::check::Code;
    use crate::spec::check::tests::one_of_each;

    #[test]
    fn every_code_has_its_sentence_and_every_sentence_a_code() {
        let codes: BTreeSet<String> = Code::ALL
            .iter()
            .map(|code| format!("check-{}", code.name()))
            .collect();
        let files = Language::ORIGINAL.files();
        let lines = files.flat_map(|(_, content)| content.lines());
        let ids = lines.filter_map(|line| line.split_once(" = "));
        let sentences: BTreeSet<String> = ids
            .map(|(id, _)| id.to_owned())
            .filter(|id| id.starts_with("check-"))
            .collect();
        assert_eq!(sentences, codes);
    }

    #[test]
    fn every_sentence_is_given_what_it_names() {
        for language in Language::ALL {
            for finding in one_of_each() {
                let text = language.text();
                let text = text.finding(&finding, Unit::Inch, DecimalSign::Point);
                let text = text.to_string();
                assert!(!text.contains("{$"), "{text}");
            }
        }
    }

    #[test]
    fn a_sentence_names_the_item_and_its_figures() {
        let sentence = |code| {
            let finding = one_of_each()
                .into_iter()
                .find(|finding| finding.code == code)
                .expect("there is one of each");
            let t = Language::English.text();
            t.finding(&finding, Unit::Inch, DecimalSign::Point)
                .to_string()
        };
        assert_eq!(
            sentence(Code::CellMatchNone),
            "P3 Zip tape in CHALK is dyed to match P4, which this colourway does without. \
             Choose another one."
        );
        assert_eq!(
            sentence(Code::ToleranceOverlaps),
            "A Chest width: this point is critical, and a piece of size XS can pass as S: the \
             sizes differ by 1 in, and the tolerances are −3/8 in and +5/8 in. Make the \
             tolerances smaller."
        );
    }
}
