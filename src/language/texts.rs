//! The languages and the files that each is made of.

use std::borrow::Cow;
use std::sync::OnceLock;

use fluent_bundle::FluentResource;
use fluent_bundle::concurrent::FluentBundle;
use unic_langid::LanguageIdentifier;

use super::message::Text;

pub(super) type Bundle = FluentBundle<FluentResource>;

/// The files of one language, one an area: `(area, content)`.
macro_rules! files {
    ($tag:literal: $($area:literal)*) => {
        &[$((
            $area,
            include_str!(concat!($tag, "/", $area, ".ftl")),
        )),*]
    };
}

/// The areas that a factory reads, and both sides: in the folder of every language. Of the checks it
/// reads the warnings that a brand has accepted; errors keep a draft from it.
macro_rules! read_by_all {
    ($tag:literal) => {
        files!($tag:
            "approvals"
            "changes"
            "checks"
            "errors"
            "evaluation"
            "fields"
            "frame"
            "groups"
            "inspections"
            "instructions"
            "ledger"
            "mail"
            "names"
            "paper"
            "people"
            "phrases"
            "plates"
            "records"
            "refusals"
            "revision"
            "rounds"
            "seals"
            "sheet"
            "sheets"
            "sign-in"
            "styles"
            "threads"
            "words"
        )
    };
}

/// The areas of the pages that only the brand writes on: in the original alone, which stands for
/// every other language there.
macro_rules! written_by_the_brand {
    ($tag:literal) => {
        files!($tag:
            "colours"
            "draft"
            "drawings"
            "import"
            "numbers"
            "points"
            "publish"
            "starts"
            "tables"
            "translations"
        )
    };
}

macro_rules! languages {
    ($($variant:ident $tag:literal $own_name:literal $checked:ident)*) => {
        /// A language that the program speaks.
        #[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
        pub enum Language {
            $($variant,)*
            /// The original in letters that look foreign, to find what no file of texts said. Not
            /// among [`Language::ALL`], and chosen by its tag in debug builds only.
            Pseudo,
        }

        impl Language {
            /// Those that people choose from.
            pub const ALL: &'static [Language] = &[$(Language::$variant),*];

            /// The BCP 47 tag: in `lang` attributes, the database and the name of the folder.
            pub fn tag(self) -> &'static str {
                match self {
                    $(Language::$variant => $tag,)*
                    Language::Pseudo => "en-XA",
                }
            }

            /// What its speakers call it: a list of languages is read before one is chosen.
            pub fn own_name(self) -> &'static str {
                match self {
                    $(Language::$variant => $own_name,)*
                    Language::Pseudo => "Pseudo",
                }
            }

            /// Whether somebody who grew up with it has read its texts and put them right.
            pub fn is_checked(self) -> bool {
                match self {
                    $(Language::$variant => languages!(@ $checked),)*
                    Language::Pseudo => false,
                }
            }

            fn read_by_all(self) -> &'static [(&'static str, &'static str)] {
                match self {
                    $(Language::$variant => read_by_all!($tag),)*
                    Language::Pseudo => Language::ORIGINAL.read_by_all(),
                }
            }
        }
    };
    (@ checked) => { true };
    (@ unchecked) => { false };
}

// One line and one folder of the same files make a language. It is `checked` when a native speaker
// has read all of it.
languages! {
    English "en" "English" checked
    Chinese "zh-Hans" "简体中文" unchecked
    Vietnamese "vi" "Tiếng Việt" unchecked
    Bengali "bn" "বাংলা" unchecked
    Turkish "tr" "Türkçe" unchecked
    Portuguese "pt-BR" "Português (Brasil)" unchecked
    Spanish "es" "Español" unchecked
    Hindi "hi" "हिन्दी" unchecked
}

impl Language {
    /// The language that every other one falls back to.
    pub const ORIGINAL: Language = Language::English;

    pub fn from_tag(tag: &str) -> Option<Language> {
        let pseudo = cfg!(debug_assertions).then_some(Language::Pseudo);
        let known = Language::ALL.iter().copied().chain(pseudo);
        known
            .into_iter()
            .find(|language| language.tag().eq_ignore_ascii_case(tag))
    }

    /// Its files as they were written: area and content. The original has more of them than the
    /// others, which fall back to it.
    pub fn files(self) -> impl Iterator<Item = (&'static str, &'static str)> {
        let more: &[(&str, &str)] = match self {
            Language::English | Language::Pseudo => written_by_the_brand!("en"),
            _ => &[],
        };
        self.read_by_all().iter().chain(more).copied()
    }

    /// The languages that no native speaker has read yet, by their own names: whoever chooses one
    /// for others is told.
    pub fn unchecked() -> String {
        let unchecked = Language::ALL.iter().filter(|it| !it.is_checked());
        let names: Vec<&str> = unchecked.map(|it| it.own_name()).collect();
        names.join(", ")
    }

    /// The voice of a page in this language.
    pub fn text(self) -> Text {
        Text::new(self)
    }

    pub(super) fn bundle(self) -> &'static Bundle {
        const COUNT: usize = Language::Pseudo as usize + 1;
        static BUNDLES: [OnceLock<Bundle>; COUNT] = [const { OnceLock::new() }; COUNT];
        BUNDLES[self as usize].get_or_init(|| build(self))
    }
}

/// A file that does not parse, or an id that is there twice, fails `tests/house/texts.rs`; here
/// what is left of it is used.
fn build(language: Language) -> Bundle {
    let tag: LanguageIdentifier = language.tag().parse().unwrap_or_default();
    let mut bundle = Bundle::new_concurrent(vec![tag]);
    // Isolation marks around values would end up in attributes, in mails and on the clipboard,
    // and no language here runs from right to left.
    bundle.set_use_isolating(false);
    if language == Language::Pseudo {
        bundle.set_transform(Some(pseudo));
    }
    for (_, content) in language.files() {
        let resource =
            FluentResource::try_new(content.to_owned()).unwrap_or_else(|(usable, _errors)| usable);
        // Fails only for ids that are already there; the first one stands.
        let _ = bundle.add_resource(resource);
    }
    bundle
}

/// Each letter as one that looks like it, vowels twice, since most languages need more room than
/// English. Values are no text of the program's and stay.
fn pseudo(text: &str) -> Cow<'_, str> {
    const PLAIN: &str = "bcdfghjklmnpqrstvwxyzBCDFGHJKLMNPQRSTVWXYZ";
    const FOREIGN: &str = "ƀçðƒĝĥĵķļɱñþɋŕšţṽŵẋýžßÇÐƑĜĤĴĶĻṀÑÞɊŔŠŢṼŴẊÝŽ";
    let mut changed = String::with_capacity(text.len() * 2);
    for letter in text.chars() {
        changed.push_str(match letter {
            'a' => "åå",
            'e' => "éé",
            'i' => "îî",
            'o' => "öö",
            'u' => "ûû",
            'A' => "Å",
            'E' => "É",
            'I' => "Î",
            'O' => "Ö",
            'U' => "Û",
            _ => {
                let at = PLAIN.chars().position(|it| it == letter);
                changed.push(at.and_then(|at| FOREIGN.chars().nth(at)).unwrap_or(letter));
                continue;
            }
        });
    }
    Cow::Owned(changed)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_tag_leads_back_to_its_language() {
        for language in Language::ALL {
            assert_eq!(Language::from_tag(language.tag()), Some(*language));
            assert!(language.tag().parse::<LanguageIdentifier>().is_ok());
        }
        assert_eq!(Language::from_tag("EN"), Some(Language::English));
        assert_eq!(Language::from_tag("tlh"), None);
    }

    #[test]
    fn the_pseudo_language_changes_texts_and_leaves_values() {
        let t = Language::Pseudo.text();
        let text = t.say("rounds-place").with("place", "S").with("count", 12);
        assert_eq!(text.to_string(), "S ööƒ 12");
        assert!(!Language::ALL.contains(&Language::Pseudo));
    }

    #[test]
    fn what_is_not_translated_is_said_in_the_original() {
        let t = Language::Vietnamese.text();
        let draft = t.say("publish-title");
        assert_eq!(draft.lang(), "en");
        assert_eq!(t.say("frame-nav").lang(), "vi");
    }
}
