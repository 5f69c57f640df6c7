//! How the files of the package look, whoever wrote them.

use std::collections::BTreeSet;

use crate::source::{File, files};

const LONGEST: usize = 500;

/// Everything that people read or write here; what is generated or downloaded lies elsewhere.
fn all_files() -> Vec<File> {
    const FOLDERS: [&str; 7] = [
        ".ci",
        "benches",
        "migrations",
        "src",
        "static",
        "templates",
        "tests",
    ];
    const ENDINGS: [&str; 13] = [
        ".css", ".ftl", ".html", ".js", ".json", ".md", ".rs", ".sh", ".sql", ".svg", ".toml",
        ".txt", "/run",
    ];
    let mut all: Vec<File> = FOLDERS
        .iter()
        .flat_map(|folder| files(folder, &ENDINGS))
        .collect();
    for name in [
        ".dockerignore",
        "Cargo.toml",
        "DEVELOPERS.md",
        "Dockerfile",
        "README.md",
        "build.rs",
        "clippy.toml",
        "deny.toml",
        "docker-compose.yml",
        "rustfmt.toml",
    ] {
        let path = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join(name);
        let text = std::fs::read_to_string(path).unwrap_or_else(|why| panic!("{name}: {why}"));
        all.push(File::new(name, &text));
    }
    assert!(all.iter().any(|file| file.path == "src/lib.rs"));
    all
}

#[test]
fn no_file_is_longer_than_a_sitting() {
    let long: Vec<String> = all_files().iter().filter_map(too_long).collect();
    assert!(long.is_empty(), "\n{}", long.join("\n"));
}

#[test]
fn every_module_says_what_it_is_for() {
    let silent: Vec<String> = files("src", &[".rs"])
        .into_iter()
        .chain(files("tests", &[".rs"]))
        .filter(is_silent)
        .map(|file| file.path)
        .collect();
    assert!(silent.is_empty(), "no `//!` at the top of {silent:#?}");
}

#[test]
fn the_map_for_developers_shows_the_rooms_that_are_there() {
    let map = include_str!("../../DEVELOPERS.md");
    let shown: BTreeSet<&str> = map
        .lines()
        .filter_map(|line| line.strip_prefix("| `")?.split('`').next())
        .filter(|name| !name.contains(' '))
        .collect();
    let source = files("src", &[".rs"]);
    let rooms: BTreeSet<&str> = source
        .iter()
        .filter_map(|file| Some(file.path.strip_prefix("src/")?.split_once('/')?.0))
        .collect();
    assert_eq!(shown, rooms);
}

#[test]
fn no_file_knows_a_machine() {
    let known: Vec<String> = all_files().iter().flat_map(machine_words).collect();
    assert!(known.is_empty(), "\n{}", known.join("\n"));
}

#[test]
fn each_fault_of_a_file_is_seen() {
    assert!(too_long(&File::new("src/x.rs", &"\n".repeat(LONGEST + 1))).is_some());
    assert!(too_long(&File::new("src/x.rs", &"\n".repeat(LONGEST))).is_none());
    assert!(
        too_long(&File::new(
            "tests/reference/x.txt",
            &"\n".repeat(LONGEST + 1)
        ))
        .is_none()
    );
    assert!(is_silent(&File::new(
        "src/x.rs",
        "use std::fmt;\n//! Late."
    )));
    assert!(!is_silent(&File::new("src/x.rs", "//! Early.")));
    for word in machine_paths() {
        let file = File::new("src/x.rs", &format!("\nopen(\"{word}x\")"));
        let found = machine_words(&file);
        assert_eq!(found, [format!("src/x.rs:2: names {word}")]);
    }
    let fine = File::new(
        "src/x.rs",
        "a/tmp/b https://example.org/work/ /usr/lib/ ~/fellseam",
    );
    assert!(machine_words(&fine).is_empty());
}

fn too_long(file: &File) -> Option<String> {
    // Published tables and whole specs are as long as they are.
    const DATA: [&str; 3] = ["tests/reference/", "src/cli/demo/packs/", "src/spec/start/"];
    let data = DATA.iter().any(|folder| file.path.starts_with(folder));
    let lines = file.text.lines().count();
    (lines > LONGEST && !data).then(|| format!("{}: {lines} lines", file.path))
}

/// A `tests.rs` beside the code that it tests needs no word of its own.
fn is_silent(file: &File) -> bool {
    !file.path.ends_with("/tests.rs") && !file.text.starts_with("//!")
}

/// Folders of somebody's machine, and hosts that packages come from. Put together here, so that
/// this file does not name them.
fn machine_paths() -> Vec<String> {
    let folders = ["tmp", "home", "root", "work", "Users", "mnt"].map(|name| format!("/{name}/"));
    let hosts = [
        ("crates", "io"),
        ("npmjs", "org"),
        ("npmjs", "com"),
        ("pypi", "org"),
    ]
    .map(|(name, end)| format!("{name}.{end}"));
    folders.into_iter().chain(hosts).collect()
}

/// `mktemp` names a place that every machine has, and a new name in it.
fn machine_words(file: &File) -> Vec<String> {
    let words = machine_paths();
    let lines = file.text.lines().enumerate();
    let lines = lines.filter(|(_, line)| !line.contains("mktemp -d "));
    lines
        .flat_map(|(number, line)| {
            let said = words.iter().filter(move |word| names(line, word));
            said.map(move |word| format!("{}:{}: names {word}", file.path, number + 1))
        })
        .collect()
}

/// A folder counts only where a path begins, so that addresses and longer paths may hold its name.
fn names(line: &str, word: &str) -> bool {
    line.match_indices(word).any(|(at, _)| {
        let before = line[..at].chars().next_back();
        !word.starts_with('/')
            || !before
                .is_some_and(|c| c.is_alphanumeric() || matches!(c, '.' | '-' | '_' | '~' | '}'))
    })
}
