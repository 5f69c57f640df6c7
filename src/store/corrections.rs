//! What owners have put in the place of rows of the shipped tables. It only grows: the newest of a
//! row counts.

use std::collections::BTreeMap;
use std::sync::Arc;

use serde::{Deserialize, Serialize};

use super::people::still_here;
use super::{Read, Store, StoreError, values};
use crate::access::{Act, Permit, StylePermit, act};
use crate::spec::Time;
use crate::spec::book::{Book, Correction, Table};
use crate::spec::document::Word;
use crate::spec::table::Status;

/// A row as an owner wants it.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct NewCorrection {
    pub values: Vec<String>,
    pub status: Status,
    /// Where it stands, in the owner's words.
    pub source: String,
}

/// What once became of a row.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Corrected {
    /// Nothing: the shipped row was taken again.
    pub to: Option<NewCorrection>,
    /// Who did it; `None`: erased.
    pub by: Option<String>,
    pub at: Time,
}

#[derive(sqlx::FromRow)]
struct Row {
    table_name: String,
    row_key: String,
    content: Option<String>,
    set_at: Time,
}

#[derive(sqlx::FromRow)]
struct Past {
    content: Option<String>,
    name: Option<String>,
    set_at: Time,
}

impl Store {
    /// The tables in force, for the checks and label texts of a style.
    pub async fn book<A: Act>(&self, _permit: &StylePermit<A>) -> Result<Arc<Book>, StoreError> {
        book_in(&self.db).await
    }

    /// The tables in force, for whoever sets the installation up.
    pub async fn whole_book(&self, _permit: &Permit<act::Govern>) -> Result<Arc<Book>, StoreError> {
        book_in(&self.db).await
    }

    /// All that became of a row, newest first.
    pub async fn corrections(
        &self,
        _permit: &Permit<act::Govern>,
        table: Table,
        row: &str,
    ) -> Result<Vec<Corrected>, StoreError> {
        let rows: Vec<Past> = self
            .db
            .all(
                "SELECT c.content, n.content AS name, c.set_at FROM correction c \
                 LEFT JOIN private_text n ON n.person = c.set_by AND n.kind = 'name' \
                 WHERE c.table_name = $1 AND c.row_key = $2 ORDER BY c.set_at DESC",
                values![table.word(), row],
            )
            .await?;
        let past = rows.into_iter().map(|past| {
            let to = past
                .content
                .map(|content| read(table.word(), row, &content));
            Ok(Corrected {
                to: to.transpose()?,
                by: past.name,
                at: past.set_at,
            })
        });
        past.collect()
    }

    /// Puts a row in the place of the one that ships, or takes the shipped one again. Whether the
    /// table still makes sense with it, whoever calls this has tried.
    ///
    /// Errors: `Missing` when the permit does not hold any more.
    pub async fn correct(
        &self,
        permit: &Permit<act::Govern>,
        table: Table,
        row: &str,
        to: Option<&NewCorrection>,
    ) -> Result<(), StoreError> {
        let content = to.map(|to| serde_json::to_string(to).expect("a correction is JSON"));
        let tx = self.db.begin().await?;
        still_here(&tx, permit.person(), permit.role()).await?;
        tx.run(
            "INSERT INTO correction (table_name, row_key, content, set_by, set_at) \
             VALUES ($1, $2, $3, $4, $5)",
            values![
                table.word(),
                row,
                content,
                permit.person(),
                self.world.now()
            ],
        )
        .await?;
        tx.commit().await
    }
}

fn read(table: &str, row: &str, content: &str) -> Result<NewCorrection, StoreError> {
    let place = format!("{table}/{row}");
    serde_json::from_str(content)
        .map_err(|cause| StoreError::corrupt("correction", "content", &place, cause))
}

/// The shipped tables with the newest correction of every row.
pub(super) async fn book_in(db: &impl Read) -> Result<Arc<Book>, StoreError> {
    let rows: Vec<Row> = db
        .all(
            "SELECT table_name, row_key, content, set_at FROM correction ORDER BY set_at",
            values![],
        )
        .await?;
    let mut newest: BTreeMap<(Table, String), Correction> = BTreeMap::new();
    for row in rows {
        // A table or a row that the program has no more corrects nothing.
        let Some(table) = Table::from_word(&row.table_name) else {
            continue;
        };
        if table.row(&row.row_key).is_none() {
            continue;
        }
        let key = (table, row.row_key);
        match row.content {
            None => newest.remove(&key),
            Some(content) => {
                let NewCorrection {
                    values,
                    status,
                    source,
                } = read(table.word(), &key.1, &content)?;
                let correction = Correction {
                    table,
                    row: key.1.clone(),
                    values,
                    status,
                    on: row.set_at.date().to_owned(),
                    source,
                };
                newest.insert(key, correction)
            }
        };
    }
    if newest.is_empty() {
        return Ok(Book::shipped().clone());
    }
    match Book::corrected(newest.into_values().collect()) {
        Ok(book) => Ok(Arc::new(book)),
        Err(why) => Err(StoreError::corrupt("correction", "content", "", why)),
    }
}
