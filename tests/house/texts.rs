//! Templates, source and texts say the same: each id that is used exists, each that exists is used,
//! a message is given the variables that it names, and every language has the same ones.

use fellseam::language::Language;
use fellseam::spec::check::{Code, Severity};
use proc_macro2::{Delimiter, TokenStream, TokenTree};

use crate::fluent::{Messages, Names, messages, messages_in, parsed};
use crate::source::{File, files, is_punct, tokens};
use crate::templates::split;

/// Ids that are put together at run time, `say(&format!("check-{code}"))`. Whoever adds one proves
/// by a test of its own that every id exists and is given what it names.
const FAMILIES: &[&str] = &[
    "check-",
    "field-",
    "instruction-",
    "list-",
    "phrase-",
    "section-",
    "word-",
];

#[test]
fn templates_source_and_texts_agree() {
    let original = messages(Language::ORIGINAL);
    let uses: Vec<Use> = all_uses();
    let wrong = disagreements(&original, &uses, FAMILIES);
    assert!(wrong.is_empty(), "\n{}", wrong.join("\n"));
}

/// What factories read is there in every language; what is not yet is in the list of it.
#[test]
fn every_language_has_the_same_messages() {
    let owed: Names = include_str!("untranslated.txt")
        .lines()
        .map(str::trim)
        .filter(|line| !line.is_empty() && !line.starts_with('#'))
        .map(str::to_owned)
        .collect();
    // An error keeps a draft from being published: only the brand reads its sentence.
    let errors = Code::ALL
        .iter()
        .filter(|code| code.severity() == Severity::Error);
    let errors: Names = errors
        .map(|code| format!("check-{}", code.name()))
        .collect();
    for language in Language::ALL {
        let areas: Names = language.files().map(|(area, _)| area.to_owned()).collect();
        let mut original = messages_in(Language::ORIGINAL, |area| areas.contains(area));
        if *language != Language::ORIGINAL {
            original.retain(|id, _| !owed.contains(id) && !errors.contains(id));
        }
        let wrong = differences(&original, &messages(*language));
        assert!(
            wrong.is_empty(),
            "{}: translate it, or write it into tests/house/untranslated.txt:\n{}",
            language.tag(),
            wrong.join("\n")
        );
    }
    let known = messages(Language::ORIGINAL);
    let gone: Vec<_> = owed.iter().filter(|id| !known.contains_key(*id)).collect();
    assert!(gone.is_empty(), "owed, and not in the original: {gone:?}");
}

#[test]
fn every_file_of_texts_is_compiled_in() {
    for language in Language::ALL {
        let folder = format!("src/language/{}", language.tag());
        let on_disk: Names = files(&folder, &[".ftl"])
            .into_iter()
            .map(|it| it.path)
            .collect();
        let compiled: Names = language
            .files()
            .map(|(area, _)| format!("{folder}/{area}.ftl"))
            .collect();
        assert_eq!(on_disk, compiled);
    }
}

#[test]
fn each_kind_of_disagreement_is_seen() {
    let texts = parsed(
        "a = One\nb = { $x } of { $y }\n-brand = F\nc = { a } { $n ->\n [one] { $z }\n *[other] z\n }\nunused = { -brand }\n",
    );
    let cases = [
        ("t.say(\"nope\")", "no message `nope`"),
        ("t.say(\"b\").with(\"x\", 1)", "`b` wants {\"x\", \"y\"}"),
        ("t.say(\"a\").with(\"x\", 1)", "`a` wants {}"),
        ("t.say(\"c\").with(\"n\", n)", "`c` wants {\"n\", \"z\"}"),
        (
            "t.say(match x { 1 => \"a\", _ => \"gone\" })",
            "no message `gone`",
        ),
        ("vec![t.say(\"gone\")]", "no message `gone`"),
        ("t.say(&format!(\"x-{code}\"))", "`x-{code}` is no family"),
        ("t.say(id)", "holds no id"),
        ("t.say(\"a\")", "`unused` is used nowhere"),
    ];
    for (source, complaint) in cases {
        let file = File::new("src/web/x.rs", &format!("fn f() {{ {source}; }}"));
        let wrong = disagreements(&texts, &uses(&file.path, tokens(&file)), &[]);
        assert!(
            wrong.iter().any(|it| it.contains(complaint)),
            "{source} gave {wrong:?}"
        );
    }
    let page = File::new(
        "templates/x.html",
        "{# t.say(\"no\") #}\n<p title=\"{{ t.say(\"gone\") -}}\">{%- if t.say(\"b\") %}",
    );
    let wrong = disagreements(&texts, &template_uses(&page), &[]);
    assert!(
        wrong.iter().any(|it| it.contains("no message `gone`")),
        "{wrong:?}"
    );
    assert!(wrong.iter().any(|it| it.contains("`b` wants")), "{wrong:?}");
    assert!(!wrong.iter().any(|it| it.contains("`no`")), "{wrong:?}");
}

#[test]
fn what_agrees_is_not_complained_of() {
    let texts = parsed("a = One\nb = { $x } of { a }\nfam-one = { $free }\n");
    let source = "fn f() { t.say(\"b\").with(\"x\", t.say(\"a\")).to_string(); t.say(&format!(\"fam-{x}\")).with(\"free\", 1); }";
    let file = File::new("src/web/x.rs", source);
    let wrong = disagreements(&texts, &uses(&file.path, tokens(&file)), &["fam-"]);
    assert!(wrong.is_empty(), "{wrong:?}");
}

#[test]
fn another_language_may_not_differ() {
    let original = parsed("a = One\nb = { $x }\n");
    assert!(differences(&original, &parsed("a = Eins\nb = { $x } hoch\n")).is_empty());
    assert_eq!(
        differences(&original, &parsed("a = Eins\nb = { $y }\nc = Drei\n")).len(),
        2
    );
    assert_eq!(
        differences(&original, &parsed("b = { $x }\n")),
        ["`a` is missing"]
    );
}

/// One call of `say`: the ids in its brackets and the variables given behind it.
struct Use {
    place: String,
    ids: Vec<String>,
    given: Names,
}

fn all_uses() -> Vec<Use> {
    let source = files("src", &[".rs"]);
    let templates = files("templates", &[".html"]);
    let source = source
        .iter()
        .flat_map(|file| uses(&file.path, tokens(file)));
    source
        .chain(templates.iter().flat_map(template_uses))
        .collect()
}

/// The calls of `say` in these tokens, however deep; tests and the room itself aside.
fn uses(place: &str, stream: TokenStream) -> Vec<Use> {
    let trees: Vec<TokenTree> = stream.into_iter().collect();
    let mut found = Vec::new();
    let mut test = false;
    for (at, tree) in trees.iter().enumerate() {
        match tree {
            TokenTree::Group(group) => {
                let text = group.stream().to_string();
                if group.delimiter() == Delimiter::Bracket && text.starts_with("cfg (test") {
                    test = true;
                } else if !test || group.delimiter() != Delimiter::Brace {
                    found.extend(uses(place, group.stream()));
                } else {
                    test = false;
                }
            }
            TokenTree::Ident(word)
                if word == "say"
                    && at > 0
                    && is_punct(trees.get(at - 1), '.')
                    && !is_store(trees.get(at.wrapping_sub(2))) =>
            {
                if let Some(TokenTree::Group(arguments)) = trees.get(at + 1) {
                    found.push(Use {
                        place: format!("{place}:{}", word.span().start().line),
                        ids: strings(arguments.stream()),
                        given: given(&trees[at + 2..]),
                    });
                }
            }
            _ => {}
        }
    }
    found
}

/// The first arguments of `.with("name", ...)`, one call after the other.
fn given(mut rest: &[TokenTree]) -> Names {
    let mut names = Names::new();
    while let [
        dot,
        TokenTree::Ident(with),
        TokenTree::Group(arguments),
        more @ ..,
    ] = rest
        && is_punct(Some(dot), '.')
        && with == "with"
    {
        names.extend(strings(arguments.stream()).into_iter().next());
        rest = more;
    }
    names
}

fn strings(stream: TokenStream) -> Vec<String> {
    let of = |tree| match tree {
        TokenTree::Group(group) => strings(group.stream()),
        TokenTree::Literal(literal) => {
            let text = literal.to_string();
            let inner = text
                .strip_prefix('"')
                .and_then(|text| text.strip_suffix('"'));
            inner.map(str::to_owned).into_iter().collect()
        }
        _ => Vec::new(),
    };
    stream.into_iter().flat_map(of).collect()
}

/// `store.say(..)` writes a message of a person, and no text of the program.
fn is_store(tree: Option<&TokenTree>) -> bool {
    matches!(tree, Some(TokenTree::Ident(word)) if word == "store")
}

/// What stands between the braces of a template is near enough to Rust to be read as its tokens.
fn template_uses(file: &File) -> Vec<Use> {
    let mut found = Vec::new();
    for (line, code) in split(&file.text).1 {
        let place = format!("{}:{line}", file.path);
        let stream: TokenStream = code.parse().unwrap_or_else(|why| panic!("{place}: {why}"));
        let inside = uses(&place, stream);
        found.extend(inside.into_iter().map(|it| Use {
            place: place.clone(),
            ..it
        }));
    }
    found
}

fn disagreements(texts: &Messages, uses: &[Use], families: &[&str]) -> Vec<String> {
    let mut wrong = Vec::new();
    let mut used = references(texts);
    for Use { place, ids, given } in uses {
        if ids.is_empty() {
            wrong.push(format!("{place}: `say` holds no id that can be read"));
        }
        for id in ids {
            if let Some((start, _)) = id.split_once('{') {
                if families.contains(&start) {
                    used.extend(texts.keys().filter(|it| it.starts_with(start)).cloned());
                } else {
                    wrong.push(format!("{place}: `{id}` is no family of ids"));
                }
                continue;
            }
            used.insert(id.clone());
            match texts.get(id) {
                None => wrong.push(format!("{place}: no message `{id}`")),
                Some(wanted) => {
                    let wanted: Names = wanted
                        .iter()
                        .filter(|it| !it.starts_with('@'))
                        .cloned()
                        .collect();
                    if wanted != *given {
                        wrong.push(format!(
                            "{place}: `{id}` wants {wanted:?} and is given {given:?}"
                        ));
                    }
                }
            }
        }
    }
    let unused = texts.keys().filter(|id| !used.contains(*id));
    wrong.extend(unused.map(|id| format!("`{id}` is used nowhere")));
    wrong
}

fn references(texts: &Messages) -> Names {
    let all = texts.values().flatten();
    all.filter_map(|it| it.strip_prefix('@'))
        .map(str::to_owned)
        .collect()
}

fn differences(original: &Messages, other: &Messages) -> Vec<String> {
    let mut wrong = Vec::new();
    for (id, wanted) in original {
        match other.get(id) {
            None => wrong.push(format!("`{id}` is missing")),
            Some(names) if names != wanted => {
                wrong.push(format!("`{id}` names {names:?}, not {wanted:?}"))
            }
            Some(_) => {}
        }
    }
    let surplus = other.keys().filter(|id| !original.contains_key(*id));
    wrong.extend(surplus.map(|id| format!("`{id}` is not in the original")));
    wrong
}

#[cfg(feature = "service")]
mod call {
    use askama::Template;
    use fellseam::language::{Language, Text};
    use fellseam::spec::document::Basis;

    struct Frame {
        t: Text,
    }

    struct Row {
        basis: Option<Basis>,
        washes: u8,
    }

    #[derive(Template)]
    #[template(
        ext = "html",
        source = "{{ page.t.say(\"section-points\") }}\
            {% for row in rows %}|{{ page.t.say(\"measured-after-washes\").with(\"count\", row.washes) }}\
            {% if let Some(basis) = row.basis %}|{{ page.t.name(basis) }}{% endif %}{% endfor %}\
            |{{ page.t.say(who).with(\"count\", rows.len()) }}"
    )]
    struct Page<'a> {
        page: Frame,
        rows: &'a [Row],
        who: String,
    }

    /// The calls that the language room promises to templates.
    #[test]
    fn a_template_calls_say_with_and_name() {
        let row = |basis, washes| Row { basis, washes };
        let page = Page {
            page: Frame {
                t: Language::English.text(),
            },
            rows: &[row(Some(Basis::Linear), 1), row(None, 2)],
            who: "<unknown>".to_owned(),
        };
        assert_eq!(
            page.render().expect("it is rendered"),
            "Points of measure|After 1 wash|Length|After 2 washes|&#60;unknown&#62;"
        );
    }
}
