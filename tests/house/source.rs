//! Reading the source as tokens, so that nothing hides: a `use`, a path in an expression, a type,
//! an attribute, a macro's body or its arguments are all read alike.

use std::fs;
use std::path::Path;

use proc_macro2::{Delimiter, TokenStream, TokenTree};

/// A file of the package: its path from the root, with `/`, and its content.
pub struct File {
    pub path: String,
    pub text: String,
}

impl File {
    pub fn new(path: &str, text: &str) -> Self {
        Self {
            path: path.to_owned(),
            text: text.to_owned(),
        }
    }
}

/// Every file under `folder` with one of these endings, sorted by path.
pub fn files(folder: &str, endings: &[&str]) -> Vec<File> {
    let root = Path::new(env!("CARGO_MANIFEST_DIR"));
    let mut found = Vec::new();
    let mut folders = vec![root.join(folder)];
    while let Some(folder) = folders.pop() {
        let Ok(entries) = fs::read_dir(&folder) else {
            continue;
        };
        for entry in entries {
            let path = entry.expect("a folder of the package is readable").path();
            let name = path.to_string_lossy().replace('\\', "/");
            if path.is_dir() {
                folders.push(path);
            } else if endings.iter().any(|ending| name.ends_with(ending)) {
                let shown = path.strip_prefix(root).expect("it lies under the root");
                found.push(File {
                    path: shown.to_string_lossy().replace('\\', "/"),
                    text: fs::read_to_string(&path).unwrap_or_else(|why| panic!("{name}: {why}")),
                });
            }
        }
    }
    found.sort_by(|a, b| a.path.cmp(&b.path));
    found
}

pub fn tokens(file: &File) -> TokenStream {
    file.text
        .parse()
        .unwrap_or_else(|why| panic!("{}: {why}", file.path))
}

/// A path as it stands in the source.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Named {
    pub segments: Vec<String>,
    pub line: usize,
    /// Inline modules around it, inside the file's own module.
    pub inside: Vec<String>,
    /// In an item under `#[cfg(test)]`.
    pub test: bool,
    /// Starts with `::`.
    pub rooted: bool,
    pub ending: Ending,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Ending {
    Plain,
    /// `use x::*`
    Glob,
    /// `use x as y`
    Renamed,
    /// `x!`
    Macro,
}

/// Every path of the file: all that have two segments or more, and single names that are imported,
/// rooted, or called as macros.
pub fn paths(file: &File) -> Vec<Named> {
    let mut reader = Reader::default();
    reader.read(tokens(file));
    reader.paths
}

/// Every identifier with its line; with `true` for those under `#[cfg(test)]`.
pub fn words(file: &File) -> Vec<(String, usize, bool)> {
    let mut reader = Reader::default();
    reader.read(tokens(file));
    reader.words
}

#[derive(Default)]
struct Reader {
    paths: Vec<Named>,
    words: Vec<(String, usize, bool)>,
    inside: Vec<String>,
    test: bool,
}

impl Reader {
    fn read(&mut self, stream: TokenStream) {
        let trees: Vec<TokenTree> = stream.into_iter().collect();
        let outer = self.test;
        let mut at = 0;
        while at < trees.len() {
            match &trees[at] {
                TokenTree::Group(group) => {
                    let attribute = group.delimiter() == Delimiter::Bracket
                        && (is_punct(trees.get(at.wrapping_sub(1)), '#')
                            || is_punct(trees.get(at.wrapping_sub(2)), '#')
                                && is_punct(trees.get(at - 1), '!'));
                    if attribute {
                        self.test |= marks_test(group.stream());
                        self.read_strings(group.stream());
                    }
                    self.read(group.stream());
                    if group.delimiter() == Delimiter::Brace {
                        self.test = outer;
                    }
                    at += 1;
                }
                TokenTree::Ident(word) if word == "mod" => {
                    let (name, body) = (trees.get(at + 1), trees.get(at + 2));
                    if let (Some(TokenTree::Ident(name)), Some(TokenTree::Group(body))) =
                        (name, body)
                    {
                        self.inside.push(name.to_string());
                        self.read(body.stream());
                        self.inside.pop();
                        self.test = outer;
                        at += 3;
                    } else {
                        at += 1;
                    }
                }
                TokenTree::Ident(word) if word == "use" => {
                    let mut rest = at + 1;
                    while rest < trees.len() && !is_punct(trees.get(rest), ';') {
                        rest += 1;
                    }
                    let tree: TokenStream = trees[at + 1..rest].iter().cloned().collect();
                    self.read_use(&[], tree, word.span().start().line);
                    self.test = outer;
                    at = rest + 1;
                }
                TokenTree::Punct(punct) if punct.as_char() == ';' => {
                    self.test = outer;
                    at += 1;
                }
                _ => at = self.read_path(&trees, at),
            }
        }
        self.test = outer;
    }

    /// Reads a path that starts at `at`, if one does; gives where to go on.
    fn read_path(&mut self, trees: &[TokenTree], at: usize) -> usize {
        let after_dot = is_punct(trees.get(at.wrapping_sub(1)), '.')
            && !is_punct(trees.get(at.wrapping_sub(2)), '.');
        let lifetime = is_punct(trees.get(at.wrapping_sub(1)), '\'');
        let rooted = is_separator(trees, at);
        let start = if rooted { at + 2 } else { at };
        let Some(TokenTree::Ident(first)) = trees.get(start) else {
            return at + 1;
        };
        let line = first.span().start().line;
        let mut segments = vec![self.word(first)];
        let mut next = start + 1;
        while is_separator(trees, next) {
            match trees.get(next + 2) {
                Some(TokenTree::Ident(segment)) => {
                    segments.push(self.word(segment));
                    next += 3;
                }
                // A use-tree in the arguments of a macro, without a `use` before it.
                Some(TokenTree::Group(group)) if group.delimiter() == Delimiter::Brace => {
                    self.read_use(&segments, group.stream(), line);
                    return next + 3;
                }
                Some(TokenTree::Punct(star)) if star.as_char() == '*' => {
                    self.push(segments, line, rooted, Ending::Glob);
                    return next + 3;
                }
                _ => break,
            }
        }
        let called = is_punct(trees.get(next), '!')
            && matches!(trees.get(next + 1), Some(TokenTree::Group(_)));
        let ending = if called { Ending::Macro } else { Ending::Plain };
        if !after_dot && !lifetime && (segments.len() > 1 || rooted || called) {
            self.push(segments, line, rooted, ending);
        }
        next
    }

    /// Reads what follows `use`, or the inside of one of its braces.
    fn read_use(&mut self, prefix: &[String], tree: TokenStream, line: usize) {
        let trees: Vec<TokenTree> = tree.into_iter().collect();
        for branch in trees.split(|tree| is_punct(Some(tree), ',')) {
            let rooted = prefix.is_empty() && is_separator(branch, 0);
            let mut segments = prefix.to_vec();
            let mut ending = Ending::Plain;
            let mut closed = false;
            let mut words = branch.iter().peekable();
            while let Some(tree) = words.next() {
                match tree {
                    TokenTree::Ident(word) if word == "as" => {
                        ending = Ending::Renamed;
                        words.next();
                    }
                    // `{self, ...}` is the prefix itself.
                    TokenTree::Ident(word) if word == "self" && !segments.is_empty() => {}
                    TokenTree::Ident(word) => segments.push(self.word(word)),
                    TokenTree::Punct(punct) if punct.as_char() == '*' => ending = Ending::Glob,
                    TokenTree::Group(group) => {
                        self.read_use(&segments, group.stream(), line);
                        closed = true;
                    }
                    _ => {}
                }
            }
            if !closed && !segments.is_empty() {
                let line = branch.first().map_or(line, |tree| tree.span().start().line);
                self.push(segments, line, rooted, ending);
            }
        }
    }

    /// Attributes name paths in strings too: `#[serde(with = "...")]`.
    fn read_strings(&mut self, attribute: TokenStream) {
        for tree in attribute {
            match tree {
                TokenTree::Group(group) => self.read_strings(group.stream()),
                TokenTree::Literal(literal) => {
                    let text = literal.to_string();
                    let inner = text.trim_matches('"');
                    if inner.contains("::")
                        && !inner.contains(char::is_whitespace)
                        && let Ok(stream) = inner.parse::<TokenStream>()
                    {
                        let read = self.paths.len();
                        self.read(stream);
                        let line = literal.span().start().line;
                        self.paths[read..].iter_mut().for_each(|it| it.line = line);
                    }
                }
                _ => {}
            }
        }
    }

    fn word(&mut self, ident: &proc_macro2::Ident) -> String {
        let word = ident.to_string();
        let line = ident.span().start().line;
        self.words.push((word.clone(), line, self.test));
        word.trim_start_matches("r#").to_owned()
    }

    fn push(&mut self, segments: Vec<String>, line: usize, rooted: bool, ending: Ending) {
        self.paths.push(Named {
            segments,
            line,
            inside: self.inside.clone(),
            test: self.test,
            rooted,
            ending,
        });
    }
}

pub fn is_punct(tree: Option<&TokenTree>, wanted: char) -> bool {
    matches!(tree, Some(TokenTree::Punct(punct)) if punct.as_char() == wanted)
}

fn is_separator(trees: &[TokenTree], at: usize) -> bool {
    is_punct(trees.get(at), ':') && is_punct(trees.get(at + 1), ':')
}

/// `cfg(test)`, also inside `all(...)`; not `cfg(not(test))`.
fn marks_test(attribute: TokenStream) -> bool {
    let text = attribute.to_string().replace(' ', "");
    text.starts_with("cfg(") && text.contains("test") && !text.contains("not(")
}
