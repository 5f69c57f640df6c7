//! Ready instructions for callouts and for how to measure. A brand writes them as they stand in the
//! original, with its own figures; readers of other languages find them beside in their own.
//!
//! Nothing is kept of it in the document: a text is known by its words, sentence by sentence, and one
//! that is not wholly known is left alone.

use std::sync::OnceLock;

use super::message::Text;
use super::texts::Language;

/// The sentences: `instruction-<id>` in the files of every language. Where one takes a figure it is
/// called `value`: a length as somebody writes it, with its unit.
pub const INSTRUCTIONS: &[&str] = &[
    "allowance",
    "topstitch-seam",
    "topstitch-edge",
    "two-rows",
    "turn-under",
    "bartack-ends",
    "backstitch",
    "press-open",
    "press-back",
    "no-raw-edges",
    "seams-meet",
    "stripes-match",
    "no-puckers",
    "stretch-evenly",
    "fuse-first",
    "trim-threads",
    "centred",
    "catch-label",
    "lay-flat",
    "zip-closed",
    "along-curve",
    "rib-flat",
    "below-armhole",
    "below-shoulder",
    "above-hem",
];

/// Stands for the figure while a sentence is taken apart.
const GAP: &str = "\u{1}";

/// The units that a figure is written in, as people do.
const UNITS: [&str; 6] = ["mm", "cm", "in", "inch", "inches", "\""];

impl Text {
    /// The sentence in this language, with this figure where it takes one.
    pub fn instruction(self, id: &str, value: &str) -> String {
        let said = self.say(&format!("instruction-{id}"));
        said.with("value", value).to_string()
    }

    /// A text of the original in this language, when every sentence of it is a ready one.
    pub(super) fn instructed(self, text: &str) -> Option<String> {
        let sentences: Option<Vec<String>> = sentences(text)
            .map(|sentence| {
                let (id, value) = read(sentence)?;
                Some(self.instruction(id, value))
            })
            .collect();
        let sentences = sentences.filter(|it| !it.is_empty())?;
        let joint = match self.language() {
            Language::Chinese => "",
            _ => " ",
        };
        Some(sentences.join(joint))
    }
}

/// Whether a text is read by everybody in their own language.
pub fn is_ready(text: &str) -> bool {
    let mut all = sentences(text).peekable();
    all.peek().is_some() && all.all(|sentence| read(sentence).is_some())
}

/// A full stop that ends a sentence is followed by space; in `2.5 cm` it is not.
fn sentences(text: &str) -> impl Iterator<Item = &str> {
    let parts = text.split(". ").flat_map(|part| part.split('\n'));
    let parts = parts.map(|part| part.trim().trim_end_matches('.'));
    parts.filter(|part| !part.is_empty())
}

/// The sentence's id, and the figure in it; empty where it takes none.
fn read(sentence: &str) -> Option<(&'static str, &str)> {
    known().iter().find_map(|(id, before, after)| {
        let rest = strip_start(sentence, before)?;
        let Some(after) = after else {
            return rest.is_empty().then_some((*id, rest));
        };
        let value = strip_end(rest, after)?.trim();
        is_length(value).then_some((*id, value))
    })
}

/// Every sentence of the original, parted at its figure.
fn known() -> &'static [(&'static str, String, Option<String>)] {
    static KNOWN: OnceLock<Vec<(&'static str, String, Option<String>)>> = OnceLock::new();
    KNOWN.get_or_init(|| {
        let t = Language::ORIGINAL.text();
        let part = |id: &&'static str| {
            let whole = t.instruction(id, GAP);
            let whole = whole.trim_end_matches('.');
            match whole.split_once(GAP) {
                Some((before, after)) => (*id, before.to_owned(), Some(after.to_owned())),
                None => (*id, whole.to_owned(), None),
            }
        };
        INSTRUCTIONS.iter().map(part).collect()
    })
}

fn strip_start<'a>(text: &'a str, start: &str) -> Option<&'a str> {
    let head = text.get(..start.len())?;
    head.eq_ignore_ascii_case(start)
        .then(|| &text[start.len()..])
}

fn strip_end<'a>(text: &'a str, end: &str) -> Option<&'a str> {
    let at = text.len().checked_sub(end.len())?;
    let tail = text.get(at..)?;
    tail.eq_ignore_ascii_case(end).then(|| &text[..at])
}

/// A number with the unit that it is in: `6 mm`, `1 1/4 in`, `2,5 cm`, `½ in`.
fn is_length(text: &str) -> bool {
    let number = UNITS.iter().filter_map(|unit| text.strip_suffix(unit));
    let figure = |c: char| c.is_ascii_digit() || ".,/ ½¼¾⅛⅜⅝⅞".contains(c);
    number.into_iter().any(|number| {
        let number = number.trim();
        number.starts_with(|c: char| figure(c) && c != ' ') && number.chars().all(figure)
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_instruction_is_there_in_every_language_with_its_figure() {
        for language in Language::ALL {
            for (id, _, after) in known() {
                let said = language.text().instruction(id, "6 mm");
                assert!(!said.contains("instruction-"), "{}: {id}", language.tag());
                assert_eq!(
                    said.contains("6 mm"),
                    after.is_some(),
                    "{}: {said}",
                    language.tag()
                );
            }
        }
    }

    #[test]
    fn what_is_written_as_it_stands_is_read_in_every_language() {
        let vi = Language::Vietnamese.text();
        for (id, _, _) in known() {
            let text = Language::ORIGINAL.text().instruction(id, "1 1/4 in");
            assert_eq!(
                vi.instructed(&text),
                Some(vi.instruction(id, "1 1/4 in")),
                "{text}"
            );
        }
    }

    #[test]
    fn several_sentences_are_known_together_or_not_at_all() {
        let zh = Language::Chinese.text();
        let two = "Topstitch 2.5 cm from the edge. no raw edges inside";
        let said = [
            zh.instruction("topstitch-edge", "2.5 cm"),
            zh.instruction("no-raw-edges", ""),
        ];
        assert_eq!(zh.instructed(two), Some(said.concat()));
        assert!(is_ready(two));
        for text in [
            "Topstitch 2.5 cm from the edge. And take care.",
            "Topstitch wide from the edge.",
            "Topstitch 6 from the edge.",
            "Topstitch -6 mm from the edge.",
            "",
            ".",
        ] {
            assert_eq!(zh.instructed(text), None, "{text}");
            assert!(!is_ready(text), "{text}");
        }
    }
}
