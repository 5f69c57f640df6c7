//! Tables that only grow: both databases refuse to change or delete what is in them.
//!
//! Put on after every migration, so that a later migration cannot lose them.

use sqlx_postgres::PgConnection;
use sqlx_sqlite::SqliteConnection;

/// The tables that refuse UPDATE and DELETE.
pub const GUARDED: [&str; 28] = [
    "revision",
    "revision_section",
    "withdrawal",
    "acknowledgement",
    "message",
    "message_photo",
    "message_translation",
    "piece",
    "measurement",
    "skip",
    "piece_photo",
    "signature",
    "decision",
    "dispatch",
    "submission",
    "submission_photo",
    "submission_decision",
    "seal",
    "seal_piece",
    "inspection",
    "inspection_entry",
    "inspection_defect",
    "inspection_conclusion",
    "inspection_decision",
    "ledger",
    "correction",
    "record_key",
    "translation",
];

pub(super) async fn sqlite(connection: &mut SqliteConnection) -> sqlx::Result<()> {
    sqlx::raw_sql(include_str!("guard_sqlite.sql"))
        .execute(connection)
        .await?;
    Ok(())
}

pub(super) async fn postgres(connection: &mut PgConnection) -> sqlx::Result<()> {
    sqlx::raw_sql(include_str!("guard_postgres.sql"))
        .execute(connection)
        .await?;
    Ok(())
}
