//! The messages of the `.ftl` files, each with the variables that it names.

use std::collections::{BTreeMap, BTreeSet};

use fellseam::language::Language;
use fluent_syntax::ast::{CallArguments, Entry, Expression, InlineExpression, PatternElement};
use fluent_syntax::parser;

pub type Names = BTreeSet<String>;
/// The messages of one language, each with its variables.
pub type Messages = BTreeMap<String, Names>;

/// All messages of a language. An area that does not parse, and an id that is there twice, panics.
pub fn messages(language: Language) -> Messages {
    messages_in(language, |_| true)
}

/// Those of its messages that stand in such areas.
pub fn messages_in(language: Language, wanted: impl Fn(&str) -> bool) -> Messages {
    let mut all = Messages::new();
    for (area, content) in language.files().filter(|(area, _)| wanted(area)) {
        for (id, names) in parsed(content) {
            let before = all.insert(id.clone(), names);
            assert!(
                before.is_none(),
                "{}/{area}.ftl: `{id}` is there twice",
                language.tag()
            );
        }
    }
    all
}

/// Messages of one file: variables by name, other messages and terms that they stand on as `@id`.
pub fn parsed(content: &str) -> Messages {
    let resource =
        parser::parse(content).unwrap_or_else(|(_, errors)| panic!("{errors:?}\n{content}"));
    let mut found = Messages::new();
    for entry in resource.body {
        let (id, pattern) = match entry {
            Entry::Message(message) => {
                assert!(
                    message.attributes.is_empty(),
                    "{}: no attributes",
                    message.id.name
                );
                let pattern = message.value.expect("without attributes there is a value");
                (message.id.name.to_owned(), pattern)
            }
            Entry::Term(term) => (format!("-{}", term.id.name), term.value),
            _ => continue,
        };
        let mut names = Names::new();
        pattern
            .elements
            .iter()
            .for_each(|element| element_names(element, &mut names));
        let before = found.insert(id.clone(), names);
        assert!(before.is_none(), "`{id}` is there twice");
    }
    inherit(&mut found);
    found
}

/// A message that stands on another one names that one's variables too.
fn inherit(texts: &mut Messages) {
    let snapshot = texts.clone();
    for names in texts.values_mut() {
        let mut open: Vec<String> = names.iter().cloned().collect();
        while let Some(name) = open.pop() {
            for inner in name
                .strip_prefix('@')
                .and_then(|id| snapshot.get(id))
                .into_iter()
                .flatten()
            {
                if names.insert(inner.clone()) {
                    open.push(inner.clone());
                }
            }
        }
    }
}

fn element_names(element: &PatternElement<&str>, names: &mut Names) {
    if let PatternElement::Placeable { expression } = element {
        expression_names(expression, names);
    }
}

fn expression_names(expression: &Expression<&str>, names: &mut Names) {
    match expression {
        Expression::Inline(inline) => inline_names(inline, names),
        Expression::Select { selector, variants } => {
            inline_names(selector, names);
            let elements = variants.iter().flat_map(|variant| &variant.value.elements);
            elements.for_each(|element| element_names(element, names));
        }
    }
}

fn inline_names(inline: &InlineExpression<&str>, names: &mut Names) {
    let mut of_arguments = |arguments: &CallArguments<&str>| {
        arguments
            .positional
            .iter()
            .for_each(|it| inline_names(it, names));
        arguments
            .named
            .iter()
            .for_each(|it| inline_names(&it.value, names));
    };
    match inline {
        InlineExpression::FunctionReference { arguments, .. } => of_arguments(arguments),
        InlineExpression::TermReference { id, arguments, .. } => {
            arguments.iter().for_each(of_arguments);
            names.insert(format!("@-{}", id.name));
        }
        InlineExpression::VariableReference { id } => {
            names.insert(id.name.to_owned());
        }
        InlineExpression::MessageReference { id, .. } => {
            names.insert(format!("@{}", id.name));
        }
        InlineExpression::Placeable { expression } => expression_names(expression, names),
        InlineExpression::StringLiteral { .. } | InlineExpression::NumberLiteral { .. } => {}
    }
}
