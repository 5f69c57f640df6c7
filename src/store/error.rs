//! What may go wrong in the store.

use std::path::PathBuf;

use crate::exchange::Refused;
use crate::spec::StyleId;

/// One error type for everything that touches the database.
#[derive(Debug, thiserror::Error)]
pub enum StoreError {
    /// The address names no database that this program knows. It is not repeated: it may hold a
    /// password.
    #[error("no such kind of database: write sqlite:PATH or postgres://USER@HOST/NAME")]
    Address,

    /// The database cannot be reached just now; trying again may help.
    #[error("the database does not answer: {0}")]
    Unavailable(#[source] sqlx::Error),

    /// Something that may exist once only is there already. Which constraint it was is not told:
    /// SQLite does not name it, so an act that must know looks before it writes.
    #[error("it exists already")]
    Unique(#[source] sqlx::Error),

    /// The act cannot be committed: a statement of it failed, so nothing of it is kept.
    #[error("a part of this failed, so nothing of it is kept")]
    Failed,

    /// A row that had to be there is not.
    #[error("no such row")]
    Missing,

    /// The rules of the exchange refuse the move, on this style.
    #[error("refused: {0}")]
    Refused(Box<Refused>, StyleId),

    /// A row holds what no version of this program wrote.
    #[error("table {table}, column {column}, row {row}: {cause}")]
    Corrupt {
        table: String,
        column: String,
        row: String,
        cause: String,
    },

    /// The schema could not be brought up to date.
    #[error("the schema cannot be brought up to date: {0}")]
    Migration(#[from] sqlx::migrate::MigrateError),

    /// The file beside an SQLite database that keeps two programs from migrating it at once.
    #[error("{}: {cause}", path.display())]
    Lock {
        path: PathBuf,
        cause: std::io::Error,
    },

    /// Any other refusal by the database: a fault of this program.
    #[error(transparent)]
    Sql(sqlx::Error),
}

impl StoreError {
    /// For `map_err`: what the rules refuse on this style.
    pub fn refused(style: &StyleId) -> impl FnOnce(Refused) -> Self {
        let style = style.clone();
        move |why| Self::Refused(Box::new(why), style)
    }

    /// Names the place of content that makes no sense, for checks that a column's type cannot make.
    pub fn corrupt(table: &str, column: &str, row: &str, cause: impl ToString) -> Self {
        Self::Corrupt {
            table: table.to_owned(),
            column: column.to_owned(),
            row: row.to_owned(),
            cause: cause.to_string(),
        }
    }
}

/// Codes of refusals that pass. SQLite: another program kept the file busy for too long.
/// PostgreSQL: too many connections, going down, coming up, deadlock.
/// <https://sqlite.org/rescode.html>, <https://www.postgresql.org/docs/current/errcodes-appendix.html>
const PASSING: [&str; 5] = ["5", "53300", "57P01", "57P03", "40P01"];

impl From<sqlx::Error> for StoreError {
    fn from(error: sqlx::Error) -> Self {
        use sqlx::Error as E;
        match &error {
            E::Io(_) | E::Tls(_) | E::PoolTimedOut | E::PoolClosed | E::WorkerCrashed => {
                Self::Unavailable(error)
            }
            E::Database(refusal) if refusal.is_unique_violation() => Self::Unique(error),
            E::Database(refusal)
                if refusal.code().is_some_and(|code| PASSING.contains(&&*code)) =>
            {
                Self::Unavailable(error)
            }
            _ => Self::Sql(error),
        }
    }
}
