//! Ready sentences in the reader's language.

use crate::exchange::phrase::{Filled, Group, Phrase, Said};
use crate::spec::{DecimalSign, Spec};

use super::changes::shown;
use super::message::{Message, Text};
use super::names::Named;

impl Named for Group {
    fn name(&self, t: Text) -> Message {
        t.say(match self {
            Group::Question => "phrase-group-question",
            Group::Answer => "phrase-group-answer",
            Group::Fix => "phrase-group-fix",
            Group::Measuring => "phrase-group-measuring",
            Group::Material => "phrase-group-material",
            Group::Date => "phrase-group-date",
            Group::Shipping => "phrase-group-shipping",
        })
    }
}

impl Text {
    /// The sentence. Items are called by the names of this spec, the brand's own words, and by the
    /// program's term beside them.
    pub fn phrase(self, said: &Said, spec: &Spec, sign: DecimalSign) -> Message {
        let slots = said.phrase.slots.iter().zip(&said.filled);
        let sentence = self.say(&format!("phrase-{}", said.phrase.id));
        slots.fold(sentence, |sentence, ((name, _), filled)| match filled {
            Filled::Length(length) => sentence.with(
                name,
                format!(
                    "{} {}",
                    shown(length.nm.exact(length.unit, sign)),
                    length.unit.symbol()
                ),
            ),
            Filled::Item(id) | Filled::Material(id) => {
                let item = self.item(id, &[spec]);
                let name_only = spec.item(id).map_or("", |item| item.name());
                let item = match self.term(name_only) {
                    Some(term) => format!("{item} ({term})"),
                    None => item,
                };
                sentence.with(name, item)
            }
            Filled::Size(id) => {
                let code = spec.item(id).map_or(id.as_str(), |item| item.letter());
                sentence.with(name, code)
            }
            Filled::Date(date) => sentence.with(name, date),
            Filled::Count(count) | Filled::Revision(count) => sentence.with(name, count),
            Filled::Percent(percent) => sentence.with(name, percent.show(sign)),
        })
    }

    /// The sentence to choose from a list about an item: three dots where something else is to be
    /// filled in.
    pub fn phrase_to_fill(self, phrase: &Phrase, item: &str) -> Message {
        let sentence = self.say(&format!("phrase-{}", phrase.id));
        let slots = phrase.slots.iter();
        slots.fold(sentence, |sentence, (name, _)| match *name {
            "item" => sentence.with(name, item),
            _ => sentence.with(name, "…"),
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::exchange::phrase::PHRASES;
    use crate::language::Language;
    use crate::spec::Digest;
    use crate::spec::ItemId;
    use crate::spec::example::half_zip;
    use crate::spec::units::{Entered, Length, Unit};

    #[test]
    fn every_phrase_is_there_in_every_language_and_given_what_it_names() {
        for language in Language::ALL {
            let t = language.text();
            for phrase in PHRASES {
                let message = t.phrase_to_fill(phrase, "…");
                assert_eq!(message.lang(), language.tag(), "{}", phrase.id);
                let text = message.to_string();
                assert!(!text.contains("{$"), "{}: {text}", language.tag());
                let dots = text.matches('…').count();
                assert_eq!(dots, phrase.slots.len(), "{}: {text}", language.tag());
            }
        }
    }

    #[test]
    fn one_sentence_is_read_by_each_side_in_its_own_language() {
        let spec = half_zip(Digest::of(b"drawing"));
        let point = spec.point(&ItemId::new("point-c")).expect("it is there");
        let length = |tenths: i64| {
            Filled::Length(Entered {
                nm: Length::nm(tenths * 1_000_000),
                unit: Unit::Cm,
            })
        };
        let filled = vec![Filled::Item(point.id.clone()), length(715), length(700)];
        let said = Said::new("measured-says", filled, &spec).unwrap();
        let read = |language: Language| {
            let text = language.text().phrase(&said, &spec, DecimalSign::Comma);
            text.to_string()
        };
        let item = format!("{} {}", point.letter, point.name);
        assert_eq!(
            read(Language::English),
            format!("{item}: measured 71,5 cm, the spec says 70 cm.")
        );
        let vi = read(Language::Vietnamese);
        assert!(vi.starts_with(&item), "{vi}");
        assert!(
            vi.ends_with(": đo được 71,5 cm, thông số là 70 cm."),
            "{vi}"
        );
    }
}
