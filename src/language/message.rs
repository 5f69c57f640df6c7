//! One message with its values, written where it stands.

use std::borrow::Cow;
use std::fmt;

use fluent_bundle::{FluentArgs, FluentMessage, FluentValue};

use super::names::Named;
use super::texts::{Bundle, Language};

/// The voice of a page: one language, and the original behind it for what is not translated yet.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Text {
    language: Language,
}

impl Text {
    pub(super) fn new(language: Language) -> Self {
        Self { language }
    }

    pub fn language(self) -> Language {
        self.language
    }

    /// For `lang` attributes.
    pub fn lang(self) -> &'static str {
        self.language.tag()
    }

    /// The message of this id. One that is nowhere shows its id.
    pub fn say(self, id: &str) -> Message {
        let found = [self.language, Language::ORIGINAL]
            .into_iter()
            .find_map(|language| {
                let bundle = language.bundle();
                Some((language, bundle, bundle.get_message(id)?))
            });
        Message {
            found: found.ok_or_else(|| id.to_owned()),
            values: FluentArgs::new(),
        }
    }

    /// What one of the program's own values is called.
    pub fn name(self, named: &(impl Named + ?Sized)) -> Message {
        named.name(self)
    }
}

/// A message that waits to be written; `Display` does it, and `to_string` keeps it.
pub struct Message {
    found: Result<(Language, &'static Bundle, FluentMessage<'static>), String>,
    values: FluentArgs<'static>,
}

impl Message {
    /// Fills one of the message's variables.
    pub fn with(mut self, variable: &'static str, value: impl Slot) -> Self {
        self.values.set(variable, value.value());
        self
    }

    /// The language that it was found in, for a `lang` attribute where that may be another one
    /// than the page's.
    pub fn lang(&self) -> &'static str {
        let found = self.found.as_ref();
        found
            .map_or(Language::ORIGINAL, |(language, ..)| *language)
            .tag()
    }
}

impl fmt::Display for Message {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let (_, bundle, message) = match &self.found {
            Ok(found) => found,
            Err(id) => return f.write_str(id),
        };
        let Some(pattern) = message.value() else {
            return Ok(());
        };
        // A variable that was not given is written as {$variable}, and reported here; that no
        // page does so is tested.
        let mut errors = Vec::new();
        bundle.write_pattern(f, pattern, Some(&self.values), &mut errors)
    }
}

impl fmt::Debug for Message {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "Message({self})")
    }
}

impl From<Message> for String {
    fn from(message: Message) -> Self {
        message.to_string()
    }
}

/// What a variable can be filled with: text, a whole number, or another message.
pub trait Slot {
    fn value(&self) -> FluentValue<'static>;
}

impl<T: Slot + ?Sized> Slot for &T {
    fn value(&self) -> FluentValue<'static> {
        (**self).value()
    }
}

impl Slot for str {
    fn value(&self) -> FluentValue<'static> {
        FluentValue::String(Cow::Owned(self.to_owned()))
    }
}

impl Slot for String {
    fn value(&self) -> FluentValue<'static> {
        self.as_str().value()
    }
}

impl Slot for Cow<'_, str> {
    fn value(&self) -> FluentValue<'static> {
        self.as_ref().value()
    }
}

impl Slot for Message {
    fn value(&self) -> FluentValue<'static> {
        FluentValue::String(Cow::Owned(self.to_string()))
    }
}

macro_rules! whole_numbers {
    ($($number:ty)*) => {$(
        impl Slot for $number {
            fn value(&self) -> FluentValue<'static> {
                FluentValue::from(*self)
            }
        }
    )*};
}

whole_numbers! { u8 u16 u32 u64 usize i8 i16 i32 i64 isize }

#[cfg(test)]
mod tests {
    use super::*;

    fn t() -> Text {
        Language::English.text()
    }

    #[test]
    fn a_plural_follows_the_number() {
        let washes = |count: u8| t().say("measured-after-washes").with("count", count);
        assert_eq!(washes(1).to_string(), "After 1 wash");
        assert_eq!(washes(12).to_string(), "After 12 washes");
    }

    #[test]
    fn a_large_number_is_not_grouped() {
        let text = t().say("measured-after-washes").with("count", 1_234_567);
        assert_eq!(text.to_string(), "After 1234567 washes");
    }

    #[test]
    fn what_is_missing_shows_its_name() {
        assert_eq!(t().say("no-such-text").to_string(), "no-such-text");
        assert_eq!(
            t().say("measured-after-washes").to_string(),
            "After {$count} washes"
        );
    }

    #[test]
    fn values_are_taken_as_they_come() {
        let count: &&u8 = &&2;
        assert_eq!(
            t().say("measured-after-washes")
                .with("count", count)
                .to_string(),
            "After 2 washes"
        );
    }
}
