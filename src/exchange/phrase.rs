//! Ready sentences with typed slots. A message holds the id and what its slots are filled with, so
//! that each side reads it in its own language and nothing has to be translated between them. What
//! is hashed is that canonical form, never a sentence.

use std::collections::BTreeMap;

use serde::{Deserialize, Serialize};

use crate::spec::canon::{CanonError, from_canonical, to_canonical};
use crate::spec::decimal::Decimal;
use crate::spec::units::Entered;
use crate::spec::{Item, ItemId, Spec};

/// What the language of a message is that holds one: none (BCP 47, *no linguistic content*).
pub const LANGUAGE: &str = "zxx";

/// What a sentence is for; the list to choose from is in this order.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Group {
    Question,
    Answer,
    Fix,
    Measuring,
    Material,
    Date,
    Shipping,
}

impl Group {
    pub const ALL: [Group; 7] = [
        Group::Question,
        Group::Answer,
        Group::Fix,
        Group::Measuring,
        Group::Material,
        Group::Date,
        Group::Shipping,
    ];
}

/// What a slot takes.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum SlotKind {
    Length,
    /// Anything of the spec that has an id.
    Item,
    Material,
    Size,
    /// `YYYY-MM-DD`.
    Date,
    Count,
    Percent,
    Revision,
}

/// A sentence: its text is `phrase-<id>` in the files of each language.
#[derive(Debug, PartialEq, Eq)]
pub struct Phrase {
    pub id: &'static str,
    pub group: Group,
    /// Every slot with its name in the sentence.
    pub slots: &'static [(&'static str, SlotKind)],
}

/// What a slot is filled with.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Filled {
    Length(Entered),
    Item(ItemId),
    Material(ItemId),
    Size(ItemId),
    Date(String),
    Count(u32),
    Percent(Decimal),
    Revision(u32),
}

/// A sentence with its slots filled.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Said {
    pub phrase: &'static Phrase,
    /// In the order of the phrase's slots.
    pub filled: Vec<Filled>,
}

/// Why this is no sentence of ours.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum NotAPhrase {
    #[error("there is no phrase `{0}`")]
    Unknown(String),
    #[error("the slots are not those of the phrase")]
    Slots,
    #[error("`{0}` does not fit its slot")]
    Filled(String),
    #[error("not in canonical form")]
    Form,
}

macro_rules! phrases {
    ($($group:ident { $($id:literal ($($slot:literal $kind:ident)*))* })*) => {
        /// All of them. An id stays for ever, with the same slots: messages hold it.
        pub const PHRASES: &[Phrase] = &[$($(
            Phrase {
                id: $id,
                group: Group::$group,
                slots: &[$(($slot, SlotKind::$kind)),*],
            },
        )*)*];
    };
}

phrases! {
    Question {
        "ask-how-measured" ("item" Item)
        "ask-which-right" ("item" Item)
        "ask-photo" ("item" Item)
        "ask-larger-drawing" ("item" Item)
        "ask-value" ("item" Item "size" Size)
        "ask-stitch" ("item" Item)
        "ask-allowance" ("item" Item)
        "ask-place" ("item" Item)
        "ask-colour" ("item" Item)
        "ask-revision" ("revision" Revision)
        "ask-order" ("item" Item "other" Item)
        "ask-sample" ("item" Item)
    }
    Answer {
        "answer-yes" ()
        "answer-no" ()
        "answer-spec" ()
        "answer-drawing" ()
        "answer-text" ()
        "answer-value" ("item" Item "size" Size "value" Length)
        "answer-next" ()
        "answer-changed" ("revision" Revision)
        "answer-go-on" ()
        "answer-stop" ("item" Item)
        "answer-understood" ()
        "answer-allowance" ("item" Item "value" Length)
        "answer-distance" ("item" Item "value" Length "other" Item)
    }
    Fix {
        "fix-large" ("item" Item "value" Length)
        "fix-small" ("item" Item "value" Length)
        "fix-density" ("item" Item "count" Count)
        "fix-twisted" ("item" Item)
        "fix-puckers" ("item" Item)
        "fix-skipped" ("item" Item)
        "fix-ends" ("item" Item)
        "fix-bartack" ("item" Item)
        "fix-place" ("item" Item "value" Length)
        "fix-turned" ("item" Item)
        "fix-sides" ("item" Item "value" Length)
        "fix-colour" ("item" Item)
        "fix-print" ("item" Item)
        "fix-stain" ("item" Item)
        "fix-label" ("item" Item)
    }
    Measuring {
        "measured-says" ("item" Item "value" Length "spec" Length)
        "measured-size" ("item" Item "size" Size "value" Length)
        "measured-shrinks" ("item" Item "percent" Percent)
        "measured-grows" ("item" Item "percent" Percent)
        "measure-again" ("item" Item)
        "measured-half" ("item" Item)
        "measured-stretched" ("item" Item "value" Length)
        "measured-allowance" ("item" Item "value" Length)
        "measured-tolerance" ("item" Item "value" Length)
        "measured-vary" ("item" Item "value" Length)
    }
    Material {
        "material-instead" ("material" Material "other" Material)
        "material-none" ("material" Material)
        "material-arrives" ("material" Material "date" Date)
        "material-shade" ("material" Material)
        "material-dip-sent" ("material" Material "date" Date)
        "material-dip-approve" ("material" Material)
        "material-minimum" ("material" Material)
        "material-width" ("material" Material "value" Length)
        "material-shrinks" ("material" Material "percent" Percent)
        "material-keep" ("material" Material)
        "material-take" ("material" Material)
        "material-short" ("material" Material "count" Count)
    }
    Date {
        "date-ready" ("date" Date)
        "date-late" ("count" Count)
        "date-need" ("date" Date)
        "date-answer" ("date" Date)
        "date-cutting" ("date" Date)
        "date-sewn" ("date" Date)
        "date-closed" ("date" Date "until" Date)
        "date-confirm" ("date" Date)
    }
    Shipping {
        "ship-sent" ("count" Count "date" Date)
        "ship-arrived" ("count" Count "date" Date)
        "ship-cartons" ("count" Count)
        "ship-missing" ("count" Count)
        "ship-damaged" ()
        "ship-address" ()
        "ship-papers" ()
    }
}

impl Phrase {
    pub fn find(id: &str) -> Option<&'static Phrase> {
        PHRASES.iter().find(|phrase| phrase.id == id)
    }
}

impl Filled {
    pub fn kind(&self) -> SlotKind {
        match self {
            Filled::Length(_) => SlotKind::Length,
            Filled::Item(_) => SlotKind::Item,
            Filled::Material(_) => SlotKind::Material,
            Filled::Size(_) => SlotKind::Size,
            Filled::Date(_) => SlotKind::Date,
            Filled::Count(_) => SlotKind::Count,
            Filled::Percent(_) => SlotKind::Percent,
            Filled::Revision(_) => SlotKind::Revision,
        }
    }

    /// Whether it says something: an item of this spec of the right sort, a day of the calendar.
    fn fits(&self, spec: &Spec) -> bool {
        match self {
            Filled::Length(length) => !length.nm.is_negative(),
            Filled::Item(id) => spec.item(id).is_some(),
            Filled::Material(id) => matches!(spec.item(id), Some(Item::Material(_))),
            Filled::Size(id) => matches!(spec.item(id), Some(Item::Size(_))),
            Filled::Date(date) => is_date(date),
            Filled::Percent(percent) => !percent.is_negative(),
            Filled::Count(_) | Filled::Revision(_) => true,
        }
    }
}

/// A day of the calendar as `YYYY-MM-DD`.
pub fn is_date(text: &str) -> bool {
    let parts: Vec<&str> = text.split('-').collect();
    let digits = parts
        .iter()
        .all(|it| it.bytes().all(|b| b.is_ascii_digit()));
    if !digits || !parts.iter().map(|it| it.len()).eq([4, 2, 2]) {
        return false;
    }
    let number = |at: usize| parts[at].parse::<u32>().unwrap_or_default();
    let (year, month, day) = (number(0), number(1), number(2));
    let leap = year % 4 == 0 && (year % 100 != 0 || year % 400 == 0);
    let days = match month {
        4 | 6 | 9 | 11 => 30,
        2 if leap => 29,
        2 => 28,
        1..=12 => 31,
        _ => 0,
    };
    (1..=days).contains(&day)
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Form {
    phrase: String,
    #[serde(default, skip_serializing_if = "BTreeMap::is_empty")]
    slots: BTreeMap<String, Filled>,
}

impl Said {
    /// A sentence about this spec.
    ///
    /// Errors: what does not fit the phrase's slots, or names nothing that the spec has.
    pub fn new(id: &str, filled: Vec<Filled>, spec: &Spec) -> Result<Said, NotAPhrase> {
        let phrase = Phrase::find(id).ok_or_else(|| NotAPhrase::Unknown(id.to_owned()))?;
        let kinds = filled.iter().map(Filled::kind);
        if !kinds.eq(phrase.slots.iter().map(|(_, kind)| *kind)) {
            return Err(NotAPhrase::Slots);
        }
        for (filled, (slot, _)) in filled.iter().zip(phrase.slots) {
            if !filled.fits(spec) {
                return Err(NotAPhrase::Filled((*slot).to_owned()));
            }
        }
        Ok(Said { phrase, filled })
    }

    /// What it names of the spec.
    pub fn items(&self) -> impl Iterator<Item = &ItemId> {
        self.filled.iter().filter_map(|filled| match filled {
            Filled::Item(id) | Filled::Material(id) | Filled::Size(id) => Some(id),
            _ => None,
        })
    }

    /// What a message holds and the ledger hashes: canonical JSON of the id and the slots by name.
    pub fn canonical(&self) -> Result<String, CanonError> {
        let names = self.phrase.slots.iter().map(|(name, _)| (*name).to_owned());
        let form = Form {
            phrase: self.phrase.id.to_owned(),
            slots: names.zip(self.filled.iter().cloned()).collect(),
        };
        let bytes = to_canonical(&form)?;
        Ok(String::from_utf8(bytes).expect("canonical JSON is UTF-8"))
    }

    /// What a message holds. An item that its revision had may be gone from later ones, so that no
    /// spec is asked.
    pub fn read(text: &str) -> Result<Said, NotAPhrase> {
        let form: Form = from_canonical(text.as_bytes()).map_err(|_| NotAPhrase::Form)?;
        let phrase = Phrase::find(&form.phrase).ok_or(NotAPhrase::Unknown(form.phrase))?;
        if form.slots.len() != phrase.slots.len() {
            return Err(NotAPhrase::Slots);
        }
        let mut slots = form.slots;
        let filled = phrase.slots.iter().map(|(name, kind)| {
            let filled = slots.remove(*name).ok_or(NotAPhrase::Slots)?;
            (filled.kind() == *kind)
                .then_some(filled)
                .ok_or_else(|| NotAPhrase::Filled((*name).to_owned()))
        });
        Ok(Said {
            phrase,
            filled: filled.collect::<Result<_, _>>()?,
        })
    }
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeSet;

    use super::*;
    use crate::spec::units::{Length, Unit};

    fn cm(tenths: i64) -> Entered {
        Entered {
            nm: Length::nm(tenths * 1_000_000),
            unit: Unit::Cm,
        }
    }

    fn spec() -> Spec {
        crate::spec::example::half_zip(crate::spec::Digest::of(b"drawing"))
    }

    #[test]
    fn there_are_enough_and_no_id_is_there_twice() {
        let ids: BTreeSet<&str> = PHRASES.iter().map(|phrase| phrase.id).collect();
        assert_eq!(ids.len(), PHRASES.len());
        assert!(PHRASES.len() >= 60);
        for group in Group::ALL {
            assert!(PHRASES.iter().any(|phrase| phrase.group == group));
        }
        for phrase in PHRASES {
            let names: BTreeSet<&str> = phrase.slots.iter().map(|(name, _)| *name).collect();
            assert_eq!(names.len(), phrase.slots.len(), "{}", phrase.id);
        }
    }

    #[test]
    fn the_form_that_is_hashed_is_canonical_and_comes_back() {
        let spec = spec();
        let item = ItemId::new("point-c");
        let filled = vec![
            Filled::Item(item.clone()),
            Filled::Length(cm(715)),
            Filled::Length(cm(700)),
        ];
        let said = Said::new("measured-says", filled, &spec).unwrap();
        let form = said.canonical().unwrap();
        assert_eq!(
            form,
            format!(
                "{{\"phrase\":\"measured-says\",\"slots\":{{\"item\":{{\"item\":\"{item}\"}},\
                 \"spec\":{{\"length\":{{\"nm\":700000000,\"unit\":\"cm\"}}}},\
                 \"value\":{{\"length\":{{\"nm\":715000000,\"unit\":\"cm\"}}}}}}}}"
            )
        );
        assert_eq!(Said::read(&form), Ok(said));
        let yes = Said::new("answer-yes", Vec::new(), &spec).unwrap();
        assert_eq!(yes.canonical().unwrap(), "{\"phrase\":\"answer-yes\"}");
    }

    #[test]
    fn what_does_not_fit_is_refused() {
        let spec = spec();
        let item = ItemId::new("point-c");
        let new = |id: &str, filled| Said::new(id, filled, &spec).map(|_| ());
        let slots = Err(NotAPhrase::Slots);
        assert_eq!(new("ask-photo", vec![]), slots);
        assert_eq!(new("ask-photo", vec![Filled::Count(3)]), slots);
        assert_eq!(
            new("ask-photo", vec![Filled::Item(ItemId::new("gone"))]),
            Err(NotAPhrase::Filled("item".to_owned()))
        );
        // A point of measure is no material.
        assert_eq!(
            new("material-none", vec![Filled::Material(item)]),
            Err(NotAPhrase::Filled("material".to_owned()))
        );
        assert_eq!(
            new("date-ready", vec![Filled::Date("2026-02-29".to_owned())]),
            Err(NotAPhrase::Filled("date".to_owned()))
        );
        assert_eq!(
            new("sing", vec![]),
            Err(NotAPhrase::Unknown("sing".to_owned()))
        );
    }

    #[test]
    fn a_form_that_is_not_ours_is_not_read() {
        for (form, why) in [
            ("", NotAPhrase::Form),
            ("{\"phrase\": \"answer-yes\"}", NotAPhrase::Form),
            ("{\"phrase\":\"ask-photo\"}", NotAPhrase::Slots),
            (
                "{\"phrase\":\"ask-photo\",\"slots\":{\"item\":{\"count\":3}}}",
                NotAPhrase::Filled("item".to_owned()),
            ),
        ] {
            assert_eq!(Said::read(form).unwrap_err(), why, "{form}");
        }
    }

    #[test]
    fn a_date_is_a_day_of_the_calendar() {
        for good in ["2026-11-29", "2028-02-29", "2000-02-29"] {
            assert!(is_date(good), "{good}");
        }
        for bad in [
            "2026-13-01",
            "2026-04-31",
            "1900-02-29",
            "26-1-1",
            "2026-01-00",
            "+026-01-01",
        ] {
            assert!(!is_date(bad), "{bad}");
        }
    }
}
