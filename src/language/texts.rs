//! The languages and the files that each is made of.

use std::sync::LazyLock;

use fluent_bundle::FluentResource;
use fluent_bundle::concurrent::FluentBundle;
use unic_langid::LanguageIdentifier;

use super::message::Text;

pub(super) type Bundle = FluentBundle<FluentResource>;

/// The files of one language, one an area: `(area, content)`. An area is added here and as a file
/// in the folder of every language.
macro_rules! areas {
    ($tag:literal) => {
        areas!($tag:
            "changes"
            "checks"
            "colours"
            "draft"
            "drawings"
            "errors"
            "fields"
            "frame"
            "groups"
            "import"
            "ledger"
            "names"
            "numbers"
            "people"
            "publish"
            "refusals"
            "revision"
            "rounds"
            "sheet"
            "sheets"
            "sign-in"
            "starts"
            "styles"
            "tables"
            "threads"
            "words"
        )
    };
    ($tag:literal: $($area:literal)*) => {
        &[$((
            $area,
            include_str!(concat!($tag, "/", $area, ".ftl")),
        )),*]
    };
}

macro_rules! languages {
    ($($variant:ident $tag:literal $own_name:literal)*) => {
        /// A language that the program speaks.
        #[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
        pub enum Language {
            $($variant,)*
        }

        impl Language {
            pub const ALL: &'static [Language] = &[$(Language::$variant),*];

            /// The BCP 47 tag: in `lang` attributes, the database and the name of the folder.
            pub fn tag(self) -> &'static str {
                match self {
                    $(Language::$variant => $tag,)*
                }
            }

            /// What its speakers call it: a list of languages is read before one is chosen.
            pub fn own_name(self) -> &'static str {
                match self {
                    $(Language::$variant => $own_name,)*
                }
            }

            /// Its files as they were written: area and content.
            pub fn files(self) -> &'static [(&'static str, &'static str)] {
                match self {
                    $(Language::$variant => areas!($tag),)*
                }
            }
        }
    };
}

// One line and one folder of the same files make a language.
languages! {
    English "en" "English"
}

impl Language {
    /// The language that every other one falls back to.
    pub const ORIGINAL: Language = Language::English;

    pub fn from_tag(tag: &str) -> Option<Language> {
        Language::ALL
            .iter()
            .copied()
            .find(|language| language.tag().eq_ignore_ascii_case(tag))
    }

    /// The voice of a page in this language.
    pub fn text(self) -> Text {
        Text::new(self)
    }

    pub(super) fn bundle(self) -> &'static Bundle {
        static BUNDLES: LazyLock<Vec<Bundle>> =
            LazyLock::new(|| Language::ALL.iter().copied().map(build).collect());
        &BUNDLES[self as usize]
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
    for (_, content) in language.files() {
        let resource = FluentResource::try_new((*content).to_owned())
            .unwrap_or_else(|(usable, _errors)| usable);
        // Fails only for ids that are already there; the first one stands.
        let _ = bundle.add_resource(resource);
    }
    bundle
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
}
