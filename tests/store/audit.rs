//! The audit: what was kept holds, and what was changed past the program is named.

use std::collections::BTreeSet;

use fellseam::store::{Audit, GUARDED, Store};

use crate::support::cast::*;
use crate::support::database::on_both;
use crate::support::past::Past;
use crate::walk::whole_walk;

async fn faults(store: &Store) -> BTreeSet<String> {
    let faults = store.audit().await.unwrap().faults;
    let count = faults.len();
    let faults: BTreeSet<String> = faults
        .into_iter()
        .map(|it| format!("{}: {}", it.what, it.why))
        .collect();
    assert_eq!(faults.len(), count, "one was named twice: {faults:#?}");
    faults
}

on_both! {
    async fn after_a_whole_walk_all_holds(db) {
        let cast = whole_walk(db).await;
        cast.brand.lead.starts(&another_style()).await;

        let audit = cast.store.audit().await.unwrap();
        let entries = cast.brand.ledger().await.len() + 1;
        let expected = Audit {
            styles: 2,
            entries,
            revisions: 3,
            messages: 9,
            measurements: 10,
            signatures: 7,
            erased: 0,
            faults: Vec::new(),
        };
        assert_eq!(audit, expected);
        assert!(entries > 40, "{entries}");
    }
}

/// One row of each guarded table, the last by a column that is its own, and what a fault calls it.
/// What hangs on another row comes before it, and the chain last.
const ROWS: [(&str, &str, &str); 26] = [
    ("revision_section", "version", "sections of revision "),
    ("withdrawal", "at", "withdrawal of revision "),
    ("acknowledgement", "at", "acknowledgement of revision "),
    ("translation", "set_at", "translation "),
    ("message_photo", "photo", "photograph "),
    ("message_translation", "id", "translation "),
    ("message", "id", "message "),
    ("measurement", "id", "measurement "),
    ("skip", "id", "skip "),
    ("piece_photo", "photo", "photograph "),
    ("piece", "id", "pieces of round "),
    ("signature", "at", "signature "),
    ("decision", "at", "decision of round "),
    ("dispatch", "at", "dispatch of round "),
    ("submission_photo", "photo", "photograph "),
    ("submission_decision", "at", "decision of submission "),
    ("submission", "id", "submission "),
    ("inspection_defect", "words", "defect "),
    ("inspection_entry", "id", "entry "),
    ("inspection_conclusion", "at", "conclusion of inspection "),
    ("inspection_decision", "at", "decision of inspection "),
    ("inspection", "number", "inspection "),
    ("seal_piece", "place", "pieces of seal "),
    ("seal", "at", "seal "),
    ("revision", "published_at", "revision "),
    ("ledger", "hash", "ledger entry "),
];

fn quoted(text: &str) -> String {
    format!("'{}'", text.replace('\'', "''"))
}

/// Another value for a column, as SQL: one that no row has, or where the schema allows only a few,
/// another of those.
fn another(column: &str, kind: &str, is_sqlite: bool) -> String {
    match (column, kind) {
        ("side", _) => "CASE side WHEN 'brand' THEN 'factory' ELSE 'brand' END".to_owned(),
        ("keeper", _) => "CASE keeper WHEN 'brand' THEN 'factory' ELSE 'brand' END".to_owned(),
        (_, "TEXT") => format!("COALESCE({column}, '') || 'x'"),
        (_, "BIGINT") => format!("{column} + 1000"),
        (_, "BOOLEAN") => format!("NOT {column}"),
        (_, "BYTEA") if is_sqlite => format!("CAST({column} || X'20' AS BLOB)"),
        (_, "BYTEA") => format!("{column} || '\\x20'"),
        (_, kind) => panic!("{column} is {kind}"),
    }
}

on_both! {
    async fn whatever_column_of_a_guarded_row_was_changed_it_is_named(db, address) {
        let cast = whole_walk(db).await;
        let is_sqlite = address.starts_with("sqlite:");
        let mut past = Past::the_guards(&address).await;
        let tables: BTreeSet<&str> = ROWS.iter().map(|row| row.0).collect();
        // A correction of a shipped table is in no style's ledger: only the triggers keep it, and
        // each revision freezes those that it was published by.
        let mut kept = tables.clone();
        kept.insert("correction");
        kept.insert("record_key");
        assert_eq!(kept, BTreeSet::from(GUARDED));

        let mut changed = 0;
        for (table, key, noun) in ROWS {
            let columns = past.columns(table).await;
            let names: Vec<&str> = columns.iter().map(|(name, _)| name.as_str()).collect();
            let names = names.join(", ");
            // The whole row is put back from a copy, whatever was changed.
            past.run(&format!(
                "CREATE TABLE kept_{table} AS SELECT {names} FROM {table} WHERE {key} = \
                 (SELECT MAX({key}) FROM {table})"
            )).await;
            assert_eq!(
                past.text(&format!("SELECT CAST(COUNT(*) AS TEXT) FROM kept_{table}")).await,
                Some("1".to_owned()),
                "{table}"
            );
            for (column, kind) in &columns {
                let new = another(column, kind, is_sqlite);
                let this = format!("{key} = (SELECT {key} FROM kept_{table})");
                let sql = format!("UPDATE {table} SET {column} = {new} WHERE {this}");
                assert_eq!(past.run(&sql).await, 1, "{sql}");
                let found = faults(&cast.store).await;
                assert!(
                    found.iter().any(|fault| fault.contains(noun)),
                    "{table}.{column} was changed, and the audit found {found:#?}"
                );
                changed += 1;

                let moved = match column == key {
                    true => format!("{key} = (SELECT {new} FROM kept_{table})"),
                    false => this,
                };
                past.run(&format!("DELETE FROM {table} WHERE {moved}")).await;
                let back = format!("INSERT INTO {table} ({names}) SELECT {names} FROM kept_{table}");
                assert_eq!(past.run(&back).await, 1, "{back}");
            }
        }
        assert_eq!(faults(&cast.store).await, BTreeSet::new(), "all was put back");
        println!("{changed} columns of {} tables", ROWS.len());
    }
}

on_both! {
    async fn a_guarded_row_that_was_taken_away_is_named(db, address) {
        let cast = whole_walk(db).await;
        let mut past = Past::the_guards(&address).await;
        let mut before = BTreeSet::new();
        for (table, key, noun) in ROWS {
            let sql = format!(
                "DELETE FROM {table} WHERE {key} = (SELECT MAX({key}) FROM {table})"
            );
            assert_eq!(past.run(&sql).await, 1, "{sql}");
            let after = faults(&cast.store).await;
            assert!(
                after.difference(&before).any(|fault| fault.starts_with(noun)),
                "a row of {table} is gone, and the audit found {after:#?}"
            );
            before = after;
        }
    }
}

on_both! {
    async fn a_row_that_was_put_in_past_the_program_is_named(db, address) {
        let cast = whole_walk(db).await;
        let mut past = Past::the_guards(&address).await;
        for (sql, noun) in [
            (
                "INSERT INTO acknowledgement SELECT r.id, a.org, a.at, a.person \
                 FROM acknowledgement a JOIN revision r ON r.number = 3 WHERE a.at = \
                 (SELECT MAX(at) FROM acknowledgement)",
                "acknowledgement of revision 3",
            ),
            (
                "INSERT INTO message SELECT 'forged', thread, seq + 1000, person, side, at, \
                 language, text, text_hash FROM message WHERE id = (SELECT MAX(id) FROM message)",
                "message forged",
            ),
            (
                "INSERT INTO measurement SELECT 'forged', round, seq + 1000, piece, point, nm, \
                 unit, person, side, at, 'another key', wash FROM measurement \
                 WHERE id = (SELECT MAX(id) FROM measurement)",
                "measurement forged",
            ),
            (
                "INSERT INTO piece SELECT 'forged', round, number + 1000, size FROM piece \
                 WHERE id = (SELECT MAX(id) FROM piece)",
                "pieces of round",
            ),
        ] {
            assert_eq!(past.run(sql).await, 1, "{sql}");
            let found = faults(&cast.store).await;
            assert!(found.iter().any(|fault| fault.starts_with(noun)), "{noun}: {found:#?}");
        }
    }
}

on_both! {
    async fn states_that_the_ledger_did_not_lead_to_are_named(db, address) {
        let cast = whole_walk(db).await;
        let mut past = Past::the_guards(&address).await;
        for (table, change, back, noun) in [
            ("thread", "state = 'closed'", "state = 'verified'", "thread "),
            ("thread", "changed_in = 3", "changed_in = 2", "thread "),
            ("thread", "kind = 'suggestion'", "kind = 'must_fix'", "thread "),
            ("round", "state = 'approved'", "state = 'approved_with_changes'", "round "),
            ("round", "kind = 'fit'", "kind = 'proto'", "round "),
            ("round", "continued_at = NULL", "continued_at = 3", "round "),
        ] {
            let this = match table {
                "thread" => "id = (SELECT id FROM thread WHERE changed_in IS NOT NULL)",
                // A seal's rounds are none of these.
                _ => "number = 2 AND kind IN ('proto', 'fit')",
            };
            let sql = format!("UPDATE {table} SET {change} WHERE {this}");
            assert_eq!(past.run(&sql).await, 1, "{sql}");
            let found = faults(&cast.store).await;
            assert!(found.iter().any(|fault| fault.starts_with(noun)), "{sql}: {found:#?}");
            let this = match change {
                "state = 'closed'" => "kind = 'must_fix' AND state = 'closed'",
                _ => this,
            };
            past.run(&format!("UPDATE {table} SET {back} WHERE {this}")).await;
        }
        assert_eq!(faults(&cast.store).await, BTreeSet::new());

        past.run("UPDATE share SET ended_at = NULL").await;
        let found = faults(&cast.store).await;
        let share = format!("share with {}: ", cast.meghna.org);
        assert!(found.iter().all(|fault| fault.starts_with(&share)), "{found:#?}");
        assert_eq!(found.len(), 1);
    }
}

on_both! {
    async fn texts_that_were_changed_or_removed_are_named(db, address) {
        let cast = whole_walk(db).await;
        // Each fault is its own style's.
        cast.brand.lead.starts(&another_style()).await;
        let mut past = Past::the_guards(&address).await;
        for (kind, noun) in [
            ("message", "message "),
            ("photo", "photograph "),
            ("signed_name", "name on signature "),
        ] {
            let this = format!("id = (SELECT MAX(id) FROM private_text WHERE kind = '{kind}')");
            let content = format!("SELECT content FROM private_text WHERE {this}");
            let content = past.text(&content).await.unwrap();
            let owner = past.text(&format!("SELECT person FROM private_text WHERE {this}")).await;
            for change in [
                "content = content || '.'",
                "salt = '0000000000000000000000000000000000000000000000000000000000000000'",
                "content = NULL",
                "content = NULL, erased_at = '2026-03-02T08:00:00.000Z'",
                "person = person || 'x'",
            ] {
                let kept = past.text(&format!("SELECT salt FROM private_text WHERE {this}")).await;
                past.run(&format!("UPDATE private_text SET {change} WHERE {this}")).await;
                let found = faults(&cast.store).await;
                // Reasons of decisions and what is said of a parcel or an option are kept like messages.
                let alike = ["decision", "substitutes", "parcel", "note", "instrument", "pieces", "translation", "words"];
                let named = |fault: &String| {
                    let alike = alike.iter().any(|noun| fault.starts_with(noun));
                    fault.starts_with(noun) || (kind == "message" && alike)
                };
                assert!(found.len() == 1 && found.iter().all(named), "{kind} {change}: {found:#?}");
                let (content, salt) = (quoted(&content), quoted(&kept.unwrap()));
                let owner = quoted(owner.as_deref().unwrap());
                past.run(&format!(
                    "UPDATE private_text SET content = {content}, salt = {salt}, \
                     person = {owner}, erased_at = NULL WHERE {this}"
                )).await;
            }
        }
        assert_eq!(faults(&cast.store).await, BTreeSet::new());
        past.run("DELETE FROM private_text WHERE kind = 'photo'").await;
        let found = faults(&cast.store).await;
        assert_eq!(found.len(), 11, "{found:#?}");
        assert!(found.iter().all(|fault| fault.contains("its text is gone")), "{found:#?}");
    }
}

on_both! {
    async fn a_chain_that_was_cut_or_rewritten_is_named_at_its_first_fault(db, address) {
        let cast = whole_walk(db).await;
        let mut past = Past::the_guards(&address).await;
        let length = cast.brand.ledger().await.len();

        // Cut, with the head beside it cut to match: the rows that the rest told of stand alone.
        past.run(&format!("CREATE TABLE cut AS SELECT * FROM ledger WHERE seq > {}", length - 5))
            .await;
        past.run(&format!("DELETE FROM ledger WHERE seq > {}", length - 5)).await;
        let found = faults(&cast.store).await;
        let first = format!("ledger entry {}: it is missing: the chain was cut", length - 4);
        assert!(found.contains(&first), "{found:#?}");
        past.run(
            "UPDATE ledger_head SET seq = (SELECT MAX(seq) FROM ledger), hash = \
             (SELECT hash FROM ledger WHERE seq = (SELECT MAX(seq) FROM ledger))"
        ).await;
        let found = faults(&cast.store).await;
        assert!(found.iter().any(|fault| fault.starts_with("signature ")), "{found:#?}");
        past.run("INSERT INTO ledger SELECT * FROM cut").await;
        past.run(
            "UPDATE ledger_head SET seq = (SELECT MAX(seq) FROM ledger), hash = \
             (SELECT hash FROM ledger WHERE seq = (SELECT MAX(seq) FROM ledger))"
        ).await;
        assert_eq!(faults(&cast.store).await, BTreeSet::new());

        // One word in one entry.
        past.run("UPDATE ledger SET body = REPLACE(body, 'publish', 'acknowledge') WHERE seq = 2")
            .await;
        let found = faults(&cast.store).await;
        assert!(
            found.contains("ledger entry 2: its text is not the one that was hashed"),
            "{found:#?}"
        );
        past.run("UPDATE ledger SET body = 'nonsense' WHERE seq = 2").await;
        assert!(!faults(&cast.store).await.is_empty(), "and nonsense stops no audit");
        past.run("UPDATE ledger SET hash = 'nonsense' WHERE seq = 1").await;
        past.run("UPDATE ledger_head SET hash = 'nonsense'").await;
        assert!(!faults(&cast.store).await.is_empty());
        past.run("DELETE FROM ledger_head").await;
        let found = faults(&cast.store).await;
        assert!(found.iter().any(|fault| fault.starts_with("ledger entry 1: ")), "{found:#?}");
        assert!(found.contains("ledger: the head beside it is gone"), "{found:#?}");
    }
}
