//! An arrow between rooms never points up, a pure room does no I/O, and only the store makes the
//! facts that permits are made from.

use std::collections::BTreeSet;

use crate::source::{Ending, File, Named, files, paths, words};

/// What each room may name: other rooms, or only a module of one.
const SEES: &[(&str, &[&str])] = &[
    ("spec", &[]),
    ("sample", &["spec"]),
    ("order", &["spec"]),
    // A lot is accepted or rejected by the plans and the tolerances of `sample`.
    ("exchange", &["spec", "sample"]),
    ("access", &["spec", "sample", "order", "exchange"]),
    ("language", &["spec", "sample", "order", "exchange"]),
    ("files", &["spec::id", "spec::sheet"]),
    (
        "print",
        &["spec", "sample", "order", "exchange", "access", "language"],
    ),
    ("store", &["spec", "sample", "order", "exchange", "access"]),
    (
        "notify",
        &["spec", "sample", "order", "exchange", "access", "store"],
    ),
    (
        "web",
        &[
            "spec", "sample", "order", "exchange", "access", "language", "files", "print", "store",
            "notify",
        ],
    ),
    (
        "cli",
        &[
            "spec", "sample", "order", "exchange", "access", "language", "files", "print", "store",
            "notify", "web",
        ],
    ),
    ("main", &["cli"]),
    ("lib", &[]),
];

/// The pure rooms, with the crates that each may name.
const PURE: &[(&str, &[&str])] = &[
    ("spec", PLAIN),
    ("sample", PLAIN),
    ("order", PLAIN),
    ("exchange", SIGNING),
    ("access", PLAIN),
    // What a signer was shown is hashed, so some of what it says can be written down.
    (
        "language",
        &["fluent_bundle", "serde", "thiserror", "unic_langid"],
    ),
];
const PLAIN: &[&str] = &[
    "palette",
    "rust_decimal",
    "serde",
    "serde_json",
    "sha2",
    "thiserror",
    "unicode_normalization",
];
/// Signed records are made and checked without a service.
const SIGNING: &[&str] = &[
    "ed25519_dalek",
    "serde",
    "serde_json",
    "sha2",
    "thiserror",
    "unicode_normalization",
];

/// What of the standard library touches the world. `Duration` is only a number.
const WORLD: &[&str] = &["env", "fs", "io", "net", "os", "process", "thread", "time"];
const WORLD_EXCEPT: &[&str] = &["time::Duration"];
const WORLD_MACROS: &[&str] = &["dbg", "eprint", "eprintln", "print", "println"];
const WORLD_WORDS: &[&str] = &["async", "await", "extern", "unsafe"];

/// Crates that only some rooms may name.
const AT_HOME: &[(&str, &[&str])] = &[
    ("askama", &["web"]),
    ("ed25519_dalek", &["exchange"]),
    ("fluent_bundle", &["language"]),
    ("palette", &["spec"]),
    ("rust_decimal", &["spec"]),
    ("sqlx", &["store"]),
    ("sqlx_core", &["store"]),
    ("sqlx_postgres", &["store"]),
    ("sqlx_sqlite", &["store"]),
    ("unic_langid", &["language"]),
];

/// Facts that permits are made from: the store reads them, nobody else makes them.
const FACTS: &[&str] = &["Actor", "Share", "StyleFacts"];
/// Those of them that pages may name (as what an extractor gives), and still not make.
const FACTS_TO_HOLD: &[&str] = &["Actor"];

#[test]
fn no_arrow_points_up() {
    let crates = crates();
    let complaints: Vec<String> = files("src", &[".rs"])
        .iter()
        .flat_map(|file| complaints(file, &crates))
        .collect();
    assert!(complaints.is_empty(), "\n{}", complaints.join("\n"));
}

#[test]
fn every_room_is_in_the_table() {
    let on_disk: BTreeSet<String> = files("src", &[".rs"]).iter().map(room).collect();
    let known: BTreeSet<String> = SEES.iter().map(|(room, _)| (*room).to_owned()).collect();
    let unknown: Vec<_> = on_disk.difference(&known).collect();
    assert!(unknown.is_empty(), "no rule for {unknown:?}");
}

/// The order in which the rooms are read: nothing that a room sees comes to see that room back.
#[test]
fn the_table_itself_has_no_way_round() {
    for (room, sees) in SEES {
        for seen in *sees {
            let seen = seen.split("::").next().unwrap_or(seen);
            assert!(!reaches(seen, room), "{seen} and {room} see each other");
        }
    }
}

fn reaches(from: &str, to: &str) -> bool {
    from == to || rule(SEES, from).iter().any(|next| reaches(next, to))
}

/// `arrows.txt` holds sources that break the rules, each with a piece of the complaint that it must
/// cause, and sources that break none.
#[test]
fn each_kind_of_breach_is_seen_and_nothing_else() {
    let crates = crates();
    let lines = include_str!("arrows.txt").lines();
    let cases = lines.filter(|line| !line.is_empty() && !line.starts_with("# "));
    let (mut breaches, mut allowed) = (0, 0);
    for case in cases {
        let [path, text, piece] = case
            .splitn(3, " |")
            .map(str::trim)
            .collect::<Vec<_>>()
            .try_into()
            .unwrap_or_else(|_| panic!("three columns: {case}"));
        let found = complaints(&File::new(path, text), &crates);
        if piece.is_empty() {
            allowed += 1;
            assert!(found.is_empty(), "{case}\ngave {found:?}");
        } else {
            breaches += 1;
            assert!(
                found.iter().any(|it| it.contains(piece)),
                "{case}\ngave {found:?}"
            );
        }
    }
    assert!(breaches > 40 && allowed > 10, "{breaches} and {allowed}");
}

/// Everything that one file says against the rules.
fn complaints(file: &File, crates: &BTreeSet<String>) -> Vec<String> {
    let room = room(file);
    let is_test = file.path.ends_with("/tests.rs") || file.path.contains("/tests/");
    let mut found = Vec::new();
    let mut complain = |line: usize, what: String| {
        found.push(format!("{}:{line}: {room} {what}", file.path));
    };
    let local = local_modules(file);
    for named in paths(file) {
        let shown = named.segments.join("::");
        match resolve(&named, &module(file), crates, &local) {
            Place::Here(path) => {
                if let Some(what) = arrow(&room, &path, named.ending) {
                    complain(named.line, format!("{what}: `{shown}`"));
                }
                if !(named.test || is_test)
                    && let Some(fact) = forbidden_fact(&room, &path, named.ending)
                {
                    complain(named.line, format!("may not name the facts `{fact}`"));
                }
            }
            Place::Crate if !(named.test || is_test) => {
                if let Some(what) = outside(&room, &named) {
                    complain(named.line, format!("{what}: `{shown}`"));
                }
            }
            Place::Crate | Place::Unknown => {}
        }
        if named.ending == Ending::Macro && !(named.test || is_test) {
            let name = shown.as_str();
            if name == "include" {
                complain(named.line, "may not `include!` source".to_owned());
            }
            if is_pure(&room) && WORLD_MACROS.contains(&name) {
                complain(named.line, format!("is pure and may not call `{name}!`"));
            }
        }
    }
    for (word, line, test) in words(file) {
        if is_pure(&room) && !test && !is_test && WORLD_WORDS.contains(&word.as_str()) {
            complain(line, format!("is pure and may not say `{word}`"));
        }
    }
    let flat: String = file.text.split_whitespace().collect();
    if flat.contains("#[path=") {
        complain(1, "may not move a module by `#[path]`".to_owned());
    }
    for (fact, line) in made_facts(file) {
        if !makes_facts(&room) && !is_test {
            complain(line, format!("may not make the facts `{fact}`"));
        }
    }
    found
}

enum Place {
    /// In this crate: the path from the root.
    Here(Vec<String>),
    /// Another crate, the standard library included.
    Crate,
    /// A name that a `use` brought in (and that was read there), or one of the file's own.
    Unknown,
}

fn resolve(
    named: &Named,
    module: &[String],
    crates: &BTreeSet<String>,
    local: &BTreeSet<String>,
) -> Place {
    let first = named.segments[0].as_str();
    if named.rooted {
        return Place::Crate;
    }
    let mut path: Vec<String> = module.to_vec();
    path.extend(named.inside.iter().cloned());
    let mut rest = named.segments.as_slice();
    match first {
        "crate" | "fellseam" => path.clear(),
        "self" => {}
        "super" => {
            while rest.first().is_some_and(|segment| segment == "super") {
                path.pop();
                rest = &rest[1..];
            }
            path.extend(rest.iter().cloned());
            return Place::Here(path);
        }
        _ if local.contains(first) => return Place::Unknown,
        _ if crates.contains(first) => return Place::Crate,
        _ => return Place::Unknown,
    }
    path.extend(rest[1..].iter().cloned());
    Place::Here(path)
}

/// Why this path of our own may not be named in this room.
fn arrow(room: &str, path: &[String], ending: Ending) -> Option<String> {
    let Some(target) = path.first() else {
        let alias = matches!(ending, Ending::Glob | Ending::Renamed);
        return alias.then(|| "may not take in the root, which has no room".to_owned());
    };
    // An exported macro lies at the root and carries its room's name in front.
    let target = match target.split_once('_') {
        Some((owner, _)) if path.len() == 1 => owner,
        _ => target.as_str(),
    };
    let allowed = target == room
        || rule(SEES, room).iter().any(|seen| {
            let seen: Vec<&str> = seen.split("::").collect();
            target == seen[0]
                && path.len() >= seen.len()
                && path.iter().zip(&seen).skip(1).all(|(a, b)| a == b)
        });
    (!allowed).then(|| "may not see".to_owned())
}

/// Why this path of another crate may not be named in this room.
fn outside(room: &str, named: &Named) -> Option<String> {
    let name = named.segments[0].as_str();
    if let Some((_, homes)) = AT_HOME.iter().find(|(other, _)| *other == name)
        && !homes.contains(&room)
    {
        return Some(format!("may not use a crate that belongs to {homes:?}"));
    }
    let (_, allowed) = PURE.iter().find(|(pure, _)| *pure == room)?;
    if !matches!(name, "std" | "core" | "alloc") {
        return (!allowed.contains(&name)).then(|| "is pure and may not use".to_owned());
    }
    let rest = named.segments[1..].join("::");
    let touches = match named.segments.get(1) {
        None => named.ending != Ending::Plain,
        Some(part) => WORLD.contains(&part.as_str()) && !WORLD_EXCEPT.contains(&rest.as_str()),
    };
    touches.then(|| "is pure and may not touch the world".to_owned())
}

fn forbidden_fact(room: &str, path: &[String], ending: Ending) -> Option<String> {
    let (target, fact) = (path.first()?, path.last()?);
    let apart = matches!(target.as_str(), "access" | "exchange") && FACTS.contains(&fact.as_str());
    let held = FACTS_TO_HOLD.contains(&fact.as_str()) && ending != Ending::Renamed;
    (apart && !held && !makes_facts(room)).then(|| fact.clone())
}

/// The store, and the rooms that the facts' own types stand in.
fn makes_facts(room: &str) -> bool {
    matches!(room, "access" | "exchange" | "store")
}

/// Where facts are written out as a literal, outside tests.
fn made_facts(file: &File) -> Vec<(String, usize)> {
    let test_lines: BTreeSet<usize> = words(file)
        .into_iter()
        .filter_map(|(_, line, test)| test.then_some(line))
        .collect();
    let mut found = Vec::new();
    for fact in FACTS_TO_HOLD {
        for (start, _) in file.text.match_indices(fact) {
            let (before, after) = (&file.text[..start], &file.text[start + fact.len()..]);
            let line = before.lines().count().max(1);
            let whole = !before.ends_with(|c: char| c.is_alphanumeric() || c == '_');
            let previous = before.split_whitespace().next_back().unwrap_or_default();
            let literal = after.trim_start().starts_with('{')
                && !matches!(previous, "for" | "impl" | "struct" | "->");
            if whole && literal && !test_lines.contains(&line) {
                found.push(((*fact).to_owned(), line));
            }
        }
    }
    found
}

fn rule<'a>(table: &'a [(&str, &'a [&'a str])], room: &str) -> &'a [&'a str] {
    table
        .iter()
        .find_map(|(name, rule)| (*name == room).then_some(*rule))
        .unwrap_or(&[])
}

fn is_pure(room: &str) -> bool {
    PURE.iter().any(|(pure, _)| *pure == room)
}

/// `src/web/factory/revision.rs` is in `web`; `src/main.rs` is a room of its own.
fn room(file: &File) -> String {
    let inside = file.path.strip_prefix("src/").unwrap_or(&file.path);
    let first = inside.split('/').next().unwrap_or(inside);
    first.trim_end_matches(".rs").to_owned()
}

/// The path of the module that a file is.
fn module(file: &File) -> Vec<String> {
    let inside = file.path.strip_prefix("src/").unwrap_or(&file.path);
    let mut path: Vec<String> = inside
        .trim_end_matches(".rs")
        .split('/')
        .map(str::to_owned)
        .collect();
    let last = path.last().map(String::as_str);
    let root = path.len() == 1 && matches!(last, Some("lib" | "main"));
    if root || last == Some("mod") {
        path.pop();
    }
    path
}

/// Modules that the file declares: their names stand before those of crates.
fn local_modules(file: &File) -> BTreeSet<String> {
    let mut names = BTreeSet::new();
    let mut words = file.text.split(|c: char| !c.is_alphanumeric() && c != '_');
    while let Some(word) = words.next() {
        if word == "mod"
            && let Some(name) = words.next()
        {
            names.insert(name.to_owned());
        }
    }
    names
}

/// The names of all crates that source can name: the manifest's, and the language's own.
fn crates() -> BTreeSet<String> {
    let manifest = include_str!("../../Cargo.toml");
    let mut names: BTreeSet<String> = ["std", "core", "alloc"].map(str::to_owned).into();
    let mut listed = false;
    for line in manifest.lines() {
        if line.starts_with('[') {
            listed = line.ends_with("dependencies]");
        } else if listed && let Some((name, _)) = line.split_once(" = ") {
            names.insert(name.trim().replace('-', "_"));
        }
    }
    assert!(names.contains("sqlx") && names.contains("proptest"));
    names
}
