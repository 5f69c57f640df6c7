//! The fonts of this machine, as far as a print may need them: the families named here for each
//! script, and no others.

use std::collections::BTreeSet;

use resvg::usvg::fontdb;
use typst::text::{Font, FontBook, FontInfo};
use typst::utils::LazyHash;
use typst_kit::fonts::{FontPath, FontStore};

use crate::language::Language;

/// Letters that are written together, the families that have them, the best first, and what Debian
/// calls the package that brings the first.
struct Script {
    families: &'static [&'static str],
    package: &'static str,
    /// The ranges of code points that nothing else here has.
    own: &'static [(u32, u32)],
}

const LATIN: Script = Script {
    families: &["Noto Sans", "DejaVu Sans"],
    package: "fonts-noto-core",
    own: &[(0x0020, 0x036f), (0x1e00, 0x218f)],
};

const HAN: Script = Script {
    families: &["Noto Sans CJK SC", "Noto Sans SC", "WenQuanYi Zen Hei"],
    package: "fonts-noto-cjk",
    own: &[
        (0x2e80, 0x30ff),
        (0x3400, 0x9fff),
        (0xac00, 0xd7af),
        (0xf900, 0xfaff),
        (0xff00, 0xffef),
        (0x20000, 0x3ffff),
    ],
};

const BENGALI: Script = Script {
    families: &["Noto Sans Bengali", "Lohit Bengali"],
    package: "fonts-noto-core",
    own: &[(0x0980, 0x09ff)],
};

const DEVANAGARI: Script = Script {
    families: &["Noto Sans Devanagari", "Lohit Devanagari"],
    package: "fonts-noto-core",
    own: &[(0x0900, 0x097f)],
};

/// Arrows, marks and what a brand may paste: behind all others.
const SIGNS: Script = Script {
    families: &["DejaVu Sans", "Noto Sans Math", "Noto Sans Symbols2"],
    package: "fonts-dejavu-core",
    own: &[(0x2190, 0x2bff)],
};

const SCRIPTS: [&Script; 5] = [&LATIN, &HAN, &BENGALI, &DEVANAGARI, &SIGNS];

fn script(language: Language) -> &'static Script {
    match language {
        Language::Chinese => &HAN,
        Language::Bengali => &BENGALI,
        Language::Hindi => &DEVANAGARI,
        Language::English
        | Language::Vietnamese
        | Language::Turkish
        | Language::Portuguese
        | Language::Spanish
        | Language::Pseudo => &LATIN,
    }
}

/// The fonts, found once.
pub struct Fonts {
    store: FontStore,
}

/// What a language needs to be printed, and whether it is here.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Stock {
    pub language: Language,
    /// The family that is used.
    pub family: Option<String>,
    /// What to install, where something is missing.
    pub package: Option<&'static str>,
}

impl Fonts {
    /// Looks through the fonts of this machine. Their letters are read only when they are used.
    pub fn of_this_machine() -> Fonts {
        let mut known = fontdb::Database::new();
        known.load_system_fonts();
        Fonts::of(&known)
    }

    fn of(known: &fontdb::Database) -> Fonts {
        let mut store = FontStore::new();
        let wanted: BTreeSet<&str> = (SCRIPTS.iter())
            .flat_map(|script| script.families.iter().copied())
            .collect();
        for face in known.faces() {
            let named = face
                .families
                .iter()
                .any(|(it, _)| wanted.contains(it.as_str()));
            // Only what is set: ordinary and bold, upright, of ordinary width.
            let plain = face.style == fontdb::Style::Normal
                && face.stretch == fontdb::Stretch::Normal
                && matches!(face.weight.0, 400 | 700);
            if !named || !plain {
                continue;
            }
            let path = match &face.source {
                fontdb::Source::File(path) | fontdb::Source::SharedFile(path, _) => path.clone(),
                fontdb::Source::Binary(_) => continue,
            };
            let info = known.with_face_data(face.id, FontInfo::new);
            if let Some(info) = info.flatten() {
                let index = face.index;
                store.push((FontPath { path, index }, info));
            }
        }
        Fonts { store }
    }

    pub(super) fn book(&self) -> &LazyHash<FontBook> {
        self.store.book()
    }

    pub(super) fn font(&self, index: usize) -> Option<Font> {
        self.store.font(index)
    }

    fn has(&self, family: &str) -> bool {
        self.store.book().contains_family(&family.to_lowercase())
    }

    /// Families in the order in which a print of these languages asks them for a letter. Those of
    /// the other scripts stand behind: a brand may have written in any.
    pub(super) fn families(&self, languages: &[Language]) -> Vec<String> {
        let first = std::iter::once(&LATIN).chain(languages.iter().map(|it| script(*it)));
        let mut families: Vec<String> = Vec::new();
        for family in first.chain(SCRIPTS).flat_map(|script| script.families) {
            if self.has(family) && !families.iter().any(|it| it == family) {
                families.push((*family).to_owned());
            }
        }
        families
    }

    /// For each language of the program, what prints it here.
    pub fn stock(&self) -> Vec<Stock> {
        let languages = Language::ALL.iter().copied();
        let stock = languages.map(|language| {
            let script = script(language);
            let family = script.families.iter().copied().find(|it| self.has(it));
            let covers = family.is_some_and(|family| self.covers(language, family));
            Stock {
                language,
                family: family.filter(|_| covers).map(str::to_owned),
                package: (!covers).then_some(script.package),
            }
        });
        stock.collect()
    }

    /// Whether every letter that the program's own texts have is there, with what stands behind.
    fn covers(&self, language: Language, family: &str) -> bool {
        let book = self.store.book();
        let families = self.families(&[language]);
        let named = families.iter().map(String::as_str).chain([family]);
        let infos: Vec<&FontInfo> = named
            .flat_map(|it| book.select_family(&it.to_lowercase()).collect::<Vec<_>>())
            .filter_map(|index| book.info(index))
            .collect();
        let letters: BTreeSet<char> = language
            .files()
            .flat_map(|(_, text)| text.chars())
            .collect();
        let visible = letters.into_iter().filter(|it| !it.is_control());
        visible.filter(|it| !is_silent(*it)).all(|it| {
            infos
                .iter()
                .any(|info| info.coverage.contains(u32::from(it)))
        })
    }
}

/// Joins and spaces that are no letters.
fn is_silent(letter: char) -> bool {
    matches!(letter, '\u{200b}'..='\u{200f}' | '\u{2060}'..='\u{206f}' | '\u{feff}' | '\u{a0}')
}

/// The packages that bring these letters, as far as it is known, parted by spaces.
pub fn packages(letters: &BTreeSet<char>) -> String {
    let of = |letter: &char| {
        let code = u32::from(*letter);
        let has = |script: &&Script| {
            script
                .own
                .iter()
                .any(|(from, to)| (*from..=*to).contains(&code))
        };
        SCRIPTS.into_iter().find(has).map(|script| script.package)
    };
    let packages: BTreeSet<&str> = letters.iter().filter_map(of).collect();
    packages.into_iter().collect::<Vec<_>>().join(" ")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_letter_leads_to_the_package_that_brings_it() {
        let letters = |text: &str| packages(&text.chars().collect());
        assert_eq!(letters("裤"), "fonts-noto-cjk");
        assert_eq!(letters("ক"), "fonts-noto-core");
        assert_eq!(
            letters("裤क→"),
            "fonts-dejavu-core fonts-noto-cjk fonts-noto-core"
        );
        assert_eq!(letters("\u{10300}"), "");
    }

    #[test]
    fn without_fonts_every_language_names_its_package() {
        let stock = Fonts::of(&fontdb::Database::new()).stock();
        assert_eq!(stock.len(), Language::ALL.len());
        for it in stock {
            assert_eq!(it.family, None);
            assert_eq!(it.package, Some(script(it.language).package));
        }
    }
}
