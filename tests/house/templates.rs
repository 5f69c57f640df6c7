//! Templates read as markup and as code, and the words that stand in the markup.

use crate::source::files;

/// Words that are the same in every language and may stand in a template as they are.
const UNTRANSLATED: &[&str] = &["Fellseam", "UTC"];

#[test]
fn a_template_holds_no_words_of_its_own() {
    let found: Vec<String> = files("templates", &[".html"])
        .iter()
        .flat_map(|file| {
            let path = file.path.clone();
            loose_words(&file.text)
                .into_iter()
                .map(move |(line, word)| format!("{path}:{line}: {word}"))
        })
        .collect();
    assert!(found.is_empty(), "\n{}", found.join("\n"));
}

/// What cannot be taken back asks once: its button stands in a fold that is opened first.
#[test]
fn what_cannot_be_taken_back_asks_once() {
    let templates = files("templates", &[".html"]);
    let mut buttons = 0;
    for file in &templates {
        for (at, _) in file.text.match_indices("class=\"danger") {
            buttons += 1;
            let before = &file.text[..at];
            let asks = before.rfind("<details class=\"sure\"");
            let closed = before.rfind("</details>");
            assert!(
                asks > closed,
                "{}: {}",
                file.path,
                &file.text[at..(at + 60)]
            );
        }
    }
    assert!(buttons > 3);
}

#[test]
fn loose_words_are_found_where_readers_see_them() {
    let words = |text| {
        loose_words(text)
            .into_iter()
            .map(|(_, word)| word)
            .collect::<Vec<_>>()
    };
    assert!(
        words("<p class=\"wide\">{{ t.say(\"a\") }} · 3 ▲</p><!-- note --><h1>Fellseam</h1>")
            .is_empty()
    );
    assert!(words("<td>{{ a }} {# note #} {% if a > b %}</td>").is_empty());
    assert_eq!(words("<p>\n Save\n</p>"), ["Save"]);
    assert_eq!(
        words("<input placeholder=\"Your name\" name=\"who\">"),
        ["Your name"]
    );
    assert_eq!(words("<a aria-label=\"{{ x }} by\">"), ["by"]);
}

/// A template as its markup, with code and comments blanked out, and its pieces of code with lines.
pub fn split(text: &str) -> (String, Vec<(usize, String)>) {
    let (mut markup, mut code) = (String::new(), Vec::new());
    let (mut rest, mut line) = (text, 1);
    while let Some(start) = rest.find('{') {
        let (before, from) = rest.split_at(start);
        markup += before;
        line += before.matches('\n').count();
        let end = match from.as_bytes().get(1) {
            Some(b'{') => "}}",
            Some(b'%') => "%}",
            Some(b'#') => "#}",
            _ => {
                markup.push('{');
                rest = &from[1..];
                continue;
            }
        };
        let stop = from[2..].find(end).map_or(from.len(), |at| at + 4);
        let piece = &from[..stop];
        if end != "#}" {
            let inner = piece[2..].trim_end_matches(end);
            code.push((line, inner.trim_matches(['-', '+', '~']).to_owned()));
        }
        markup.extend(piece.chars().filter(|c| *c == '\n'));
        markup.push(' ');
        line += piece.matches('\n').count();
        rest = &from[stop..];
    }
    (markup + rest, code)
}

/// Words that readers see, or hear, and that do not come from the texts.
fn loose_words(template: &str) -> Vec<(usize, String)> {
    const SHOWN: [&str; 5] = [
        "alt=\"",
        "aria-label=\"",
        "content=\"",
        "placeholder=\"",
        "title=\"",
    ];
    let markup = split(template).0;
    let mut found = Vec::new();
    let mut keep = |offset: usize, text: &str| {
        let lone = text.trim();
        let is_word = |word: &str| word.chars().filter(|c| c.is_alphabetic()).count() > 1;
        let translated = lone
            .split_whitespace()
            .all(|word| !is_word(word) || UNTRANSLATED.contains(&word));
        if !translated {
            found.push((markup[..offset].matches('\n').count() + 1, lone.to_owned()));
        }
    };
    let mut at = 0;
    while let Some(open) = markup[at..].find('<').map(|it| it + at) {
        keep(at, &markup[at..open]);
        let comment = markup[open..].starts_with("<!");
        let close = if markup[open..].starts_with("<!--") {
            "-->"
        } else {
            ">"
        };
        let end = markup[open..]
            .find(close)
            .map_or(markup.len(), |it| open + it + close.len());
        let tag = &markup[open..end];
        for shown in SHOWN {
            // `content` is read by people only where it describes the page.
            let applies = !comment && (shown != "content=\"" || tag.contains("description"));
            if let Some(start) = tag.find(shown).filter(|_| applies) {
                let value = &tag[start + shown.len()..];
                keep(open, value.split('"').next().unwrap_or_default());
            }
        }
        at = end;
    }
    keep(at, &markup[at..]);
    found
}
