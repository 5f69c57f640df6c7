//! The drivers: types, acts, readers, errors.

use fellseam::store::{Read, values};

use crate::support::database::on_both;

on_both! {
    async fn every_kind_of_value_and_its_null_come_back(db) {
        type Found = (Option<String>, Option<i64>, Option<bool>, Option<Vec<u8>>);
        let tx = db.begin().await.unwrap();
        tx.run(
            "CREATE TABLE kinds (t TEXT, i BIGINT, b BOOLEAN, y BYTEA)",
            values![],
        ).await.unwrap();
        let full: Found = (Some("a\u{301}".into()), Some(-(1 << 53)), Some(true), Some(vec![0, 255]));
        let none: Found = (None, None, None, None);
        for (t, i, b, y) in [&full, &none] {
            tx.run("INSERT INTO kinds VALUES ($1, $2, $3, $4)", values![t, i, b, y]).await.unwrap();
        }
        let found: Vec<Found> = tx
            .all("SELECT t, i, b, y FROM kinds ORDER BY t IS NULL", values![])
            .await
            .unwrap();
        assert_eq!(found, [full, none]);
    }
}
