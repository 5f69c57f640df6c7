//! Every SQL text of the program: it stands in the store alone, whole, and only adds to the tables
//! that only grow. Triggers say the last in both databases too; this says it before anything runs.
//!
//! `cargo nextest run -E 'test(sql::)' --no-capture` prints the list.

use std::collections::BTreeSet;

use fellseam::store::GUARDED;
use proc_macro2::{TokenStream, TokenTree};

use crate::source::{File, files, is_punct, tokens, words};

/// Words that a statement begins with.
const STATEMENTS: [&str; 24] = [
    "ALTER", "ANALYZE", "ATTACH", "BEGIN", "COMMIT", "COPY", "CREATE", "DELETE", "DROP", "EXPLAIN",
    "INSERT", "LISTEN", "LOCK", "MERGE", "NOTIFY", "PRAGMA", "REPLACE", "SELECT", "SET",
    "TRUNCATE", "UPDATE", "VACUUM", "VALUES", "WITH",
];

/// Macros that make one text of several.
const ASSEMBLERS: [&str; 5] = ["concat", "format", "format_args", "write", "writeln"];

/// The one migration that makes a table again, since a check cannot be changed, and the two
/// statements that do it. Nothing points to that table, and a test of the store holds it to every row.
const REBUILDS: (&str, &str) = (
    "migrations/0014_seal.sql",
    "DROP TABLE signature;\n\nALTER TABLE signature_now RENAME TO signature;\n",
);

/// A string of the source.
struct Text {
    line: usize,
    text: String,
    /// It is an argument of one of the [`ASSEMBLERS`].
    assembled: bool,
}

/// Every string of a file, those in macros and attributes too; comments and documentation not.
fn strings(file: &File) -> Vec<Text> {
    let mut found = Vec::new();
    collect(tokens(file), false, &mut found);
    found
}

fn collect(stream: TokenStream, assembled: bool, found: &mut Vec<Text>) {
    let trees: Vec<TokenTree> = stream.into_iter().collect();
    for (at, tree) in trees.iter().enumerate() {
        match tree {
            TokenTree::Group(group) => {
                let before = |back: usize| trees.get(at.wrapping_sub(back));
                let documentation = (is_punct(before(1), '#') || is_punct(before(1), '!'))
                    && matches!(group.stream().into_iter().next(),
                        Some(TokenTree::Ident(word)) if word == "doc");
                let assembles = is_punct(before(1), '!')
                    && matches!(before(2),
                        Some(TokenTree::Ident(word)) if ASSEMBLERS.contains(&&*word.to_string()));
                if !documentation {
                    collect(group.stream(), assembled || assembles, found);
                }
            }
            TokenTree::Literal(literal) => {
                if let Ok(string) = syn::parse_str::<syn::LitStr>(&literal.to_string()) {
                    found.push(Text {
                        line: literal.span().start().line,
                        text: string.value(),
                        assembled,
                    });
                }
            }
            _ => {}
        }
    }
}

/// The words of a statement in lower case, without comments, quotes and marks.
fn sql_words(text: &str) -> Vec<String> {
    let mut bare = String::new();
    let mut rest = text;
    while let Some(start) = rest.find("--").into_iter().chain(rest.find("/*")).min() {
        bare += &rest[..start];
        bare += " ";
        let end = if rest[start..].starts_with("--") {
            "\n"
        } else {
            "*/"
        };
        rest = rest[start..].split_once(end).map_or("", |(_, after)| after);
    }
    bare += rest;
    bare.split(|mark: char| !mark.is_alphanumeric() && mark != '_')
        .filter(|word| !word.is_empty())
        .map(str::to_lowercase)
        .collect()
}

/// The tables of the schema.
fn tables() -> BTreeSet<String> {
    let mut tables = BTreeSet::new();
    for migration in files("migrations", &[".sql"]) {
        let words = sql_words(&migration.text);
        for three in words.windows(3) {
            if three[0] == "create" && three[1] == "table" {
                tables.insert(three[2].clone());
            }
        }
    }
    tables
}

/// Whether a string is SQL, or the beginning of some: it begins with a statement's word in capitals,
/// or in any case and names a table where a statement does.
fn is_sql(text: &str, tables: &BTreeSet<String>) -> bool {
    let words = sql_words(text);
    let Some(first) = text.split_whitespace().next() else {
        return false;
    };
    let loud = STATEMENTS.contains(&first) && (words.len() > 1 || text.ends_with(' '));
    let begins = STATEMENTS.contains(&&*first.to_uppercase());
    let names_table = words.windows(2).any(|two| {
        matches!(&*two[0], "from" | "into" | "join" | "update" | "table")
            && tables.contains(&two[1])
    });
    loud || (begins && names_table)
}

/// What a text does to a guarded table besides adding rows, or to its guard.
fn breaks_guard(text: &str) -> Option<String> {
    const BETWEEN: [&str; 14] = [
        "or", "rollback", "abort", "fail", "ignore", "replace", "only", "table", "if", "exists",
        "main", "public", "temp", "from",
    ];
    let words = sql_words(text);
    let guarded = |word: &String| GUARDED.contains(&word.as_str());
    let mut adds_to_guarded = false;
    for (at, word) in words.iter().enumerate() {
        let mut after = words[at + 1..]
            .iter()
            .skip_while(|word| BETWEEN.contains(&&***word));
        let next = after.next();
        let object = next.filter(|word| guarded(word));
        match &**word {
            "into" => {
                let verb = words[..at].last().map(String::as_str);
                if let (Some("replace" | "merge"), Some(table)) = (verb, object) {
                    return Some(format!("{} INTO {table}", verb.unwrap_or_default()));
                }
                adds_to_guarded |= object.is_some();
            }
            // ON CONFLICT ... DO UPDATE SET
            "update" if adds_to_guarded && at > 0 && words[at - 1] == "do" => {
                return Some("DO UPDATE of a guarded table".to_owned());
            }
            "alter" if object.is_some() => {
                let added = after.next().is_some_and(|word| word == "add");
                if !added {
                    return Some(format!("ALTER {}", object?));
                }
            }
            "truncate" if next.is_some_and(|word| word != "on") => {
                // It takes a list.
                if let Some(table) = words[at + 1..].iter().find(|word| guarded(word)) {
                    return Some(format!("TRUNCATE {table}"));
                }
            }
            "update" | "delete" | "drop" if object.is_some() => {
                return Some(format!("{} {}", word.to_uppercase(), object?));
            }
            "drop" | "disable" if next.is_some_and(|word| word == "trigger") => {
                return Some(format!("{} TRIGGER", word.to_uppercase()));
            }
            "session_replication_role" => return Some("triggers switched off".to_owned()),
            _ => {}
        }
    }
    None
}

/// Everything wrong in one file of the source, as `path:line: what`.
fn faults(file: &File, tables: &BTreeSet<String>) -> Vec<String> {
    let mut faults = Vec::new();
    let mut fault =
        |line: usize, what: String| faults.push(format!("{}:{line}: {what}", file.path));
    let in_store = file.path.starts_with("src/store/");
    for Text {
        line,
        text,
        assembled,
    } in strings(file)
    {
        if !is_sql(&text, tables) {
            if text.ends_with(".sql") && !in_store {
                fault(line, format!("SQL file outside the store: {text}"));
            }
            continue;
        }
        if !in_store {
            fault(line, format!("SQL outside the store: {text}"));
        }
        if assembled {
            fault(line, format!("SQL is assembled: {text}"));
        }
        if let Some(what) = breaks_guard(&text) {
            fault(line, format!("{what}: {text}"));
        }
    }
    for (word, line, _) in words(file) {
        match &*word {
            // Each turns a text made at run time into one that sqlx takes.
            "AssertSqlSafe" | "QueryBuilder" | "SqlStr" | "SqlSafeStr" | "leak" => {
                fault(line, format!("{word}: SQL is never made at run time"));
            }
            "concat" | "stringify" if in_store => {
                fault(line, format!("{word}!: SQL stands whole in one place"));
            }
            "sqlx" | "sqlx_core" | "sqlx_postgres" | "sqlx_sqlite" if !in_store => {
                fault(line, format!("{word} outside the store"));
            }
            _ => {}
        }
    }
    faults
}

#[test]
fn sql_stands_whole_in_the_store_and_only_adds_to_guarded_tables() {
    let tables = tables();
    let source = files("src", &[".rs"]);
    let faults: Vec<String> = source
        .iter()
        .flat_map(|file| faults(file, &tables))
        .collect();
    assert!(faults.is_empty(), "\n{}", faults.join("\n"));

    let mut count = 0;
    for file in source
        .iter()
        .filter(|file| file.path.starts_with("src/store/"))
    {
        for text in strings(file).iter().filter(|it| is_sql(&it.text, &tables)) {
            let words: Vec<&str> = text.text.split_whitespace().collect();
            println!("{}:{}: {}", file.path, text.line, words.join(" "));
            count += 1;
        }
    }
    assert!(
        count > 0,
        "the list of SQL texts is empty: the scan sees nothing"
    );
}

#[test]
fn sql_files_only_add_to_guarded_tables() {
    for file in files("src", &[".sql"]) {
        assert!(
            file.path.starts_with("src/store/"),
            "{}: SQL outside the store",
            file.path
        );
        assert_eq!(breaks_guard(&file.text), None, "{}", file.path);
    }
    for file in files("migrations", &[".sql"]) {
        let text = match file.path == REBUILDS.0 {
            true => {
                assert_eq!(file.text.matches(REBUILDS.1).count(), 1, "{}", file.path);
                file.text.replace(REBUILDS.1, "")
            }
            false => file.text.clone(),
        };
        assert_eq!(breaks_guard(&text), None, "{}", file.path);
        for two in sql_words(&text).windows(2) {
            let statement = (&*two[0], &*two[1]);
            let allowed = !matches!(
                statement,
                ("drop", "table" | "column" | "index") | ("rename", "to" | "column")
            );
            assert!(
                allowed,
                "{}: migrations only CREATE and ADD COLUMN: {two:?}",
                file.path
            );
        }
    }
}

#[test]
fn the_schema_has_the_guarded_tables() {
    let tables = tables();
    for table in GUARDED {
        assert!(tables.contains(table), "no migration creates {table}");
    }
}

#[test]
fn the_check_tells_sql_from_sentences() {
    let tables = tables();
    for sql in [
        "SELECT 1",
        "select id from style",
        "  \n  UPDATE style SET name = $1",
        "insert into style values ($1)",
        "SELECT ",
        "SET session_replication_role = replica",
        "BEGIN IMMEDIATE",
        "With x as (select 1) select * from x join person",
    ] {
        assert!(is_sql(sql, &tables), "{sql}");
    }
    for sentence in [
        "",
        "DELETE",
        "Select a size from the list",
        "Update the chart",
        "with a revision from the factory",
        "the table revision only grows",
        "select-size",
    ] {
        assert!(!is_sql(sentence, &tables), "{sentence}");
    }
}

#[test]
fn the_check_finds_every_way_past_a_guard() {
    for sql in [
        "UPDATE revision SET bytes = $1",
        "update \"revision\" set bytes = $1",
        "UPDATE OR IGNORE ledger SET seq = 1",
        "UPDATE /* why */ message SET text = $1",
        "UPDATE ONLY public.message SET text = $1",
        "DELETE FROM measurement WHERE id = $1",
        "DELETE -- all\nFROM signature",
        "WITH gone AS (DELETE FROM decision RETURNING id) SELECT id FROM gone",
        "REPLACE INTO withdrawal VALUES ($1)",
        "INSERT OR REPLACE INTO acknowledgement VALUES ($1)",
        "INSERT INTO message_photo VALUES ($1) ON CONFLICT (message, seq) DO UPDATE SET photo = $1",
        "MERGE INTO ledger USING x ON TRUE WHEN MATCHED THEN DELETE",
        "TRUNCATE style, ledger",
        "TRUNCATE TABLE ledger",
        "DROP TABLE IF EXISTS ledger",
        "ALTER TABLE ledger DISABLE TRIGGER ALL",
        "ALTER TABLE ledger DROP COLUMN hash",
        "DROP TRIGGER ledger_no_delete",
        "SET session_replication_role = replica",
    ] {
        assert!(breaks_guard(sql).is_some(), "{sql}");
    }
    for sql in [
        "INSERT INTO revision (id) VALUES ($1)",
        "INSERT INTO ledger (style) VALUES ($1) ON CONFLICT DO NOTHING",
        "UPDATE ledger_head SET seq = seq + 1 WHERE style = $1 RETURNING seq, hash",
        "UPDATE thread SET state = $2 WHERE id IN (SELECT thread FROM message)",
        "DELETE FROM session WHERE person = $1",
        "SELECT id FROM revision ORDER BY number",
        "INSERT INTO share (style) VALUES ($1) ON CONFLICT (style, org) DO UPDATE SET ended_at = NULL",
        "CREATE TRIGGER a BEFORE UPDATE ON revision BEGIN SELECT RAISE(ABORT, ''); END",
        "BEFORE UPDATE OR DELETE OR TRUNCATE ON ledger FOR EACH STATEMENT",
        "ALTER TABLE revision ADD COLUMN more TEXT",
    ] {
        assert_eq!(breaks_guard(sql), None, "{sql}");
    }
}

#[test]
fn the_check_finds_what_a_file_does_wrong() {
    let tables = tables();
    let count = |path: &str, text: &str| faults(&File::new(path, text), &tables).len();
    let store = "src/store/style.rs";
    assert_eq!(
        count(store, r#"const A: &str = "SELECT id FROM style";"#),
        0
    );
    assert_eq!(
        count(store, r##"const A: &str = r#"DELETE FROM ledger"#;"##),
        1
    );
    assert_eq!(
        count(
            "src/web/page.rs",
            r#"const A: &str = "SELECT id FROM style";"#
        ),
        1
    );
    assert_eq!(
        count(
            "src/web/page.rs",
            r#"fn a() { x(vec!["select id from style"]) }"#
        ),
        1
    );
    assert_eq!(
        count(
            "src/web/page.rs",
            r#"const A: &str = include_str!("a.sql");"#
        ),
        1
    );
    assert_eq!(count("src/web/page.rs", "fn a(x: sqlx::SqlitePool) {}"), 1);
    assert_eq!(
        count("src/web/page.rs", "/// SELECT id FROM style\nfn a() {}"),
        0
    );
    assert_eq!(
        count(store, r#"fn a() { format!("SELECT id FROM {table}") }"#),
        1
    );
    assert_eq!(
        count(store, r#"const A: &str = concat!("SELECT ", "id");"#),
        2
    );
    assert_eq!(
        count(store, "fn a(x: String) { query(AssertSqlSafe(x)) }"),
        1
    );
    assert_eq!(count(store, "fn a(x: String) { query(x.leak()) }"), 1);
}
