//! From a statement to rows of ours, or to the exact place that holds nonsense.

use sqlx::query::Query;
use sqlx::{Column, ColumnIndex, Database, Decode, Encode, Type};
use sqlx_postgres::Postgres;
use sqlx_postgres::{PgConnection, PgRow};
use sqlx_sqlite::Sqlite;
use sqlx_sqlite::{SqliteConnection, SqliteRow};

use super::{Row, StoreError, Value};

/// The statement with its arguments.
pub(super) fn query<D: Database>(
    sql: &'static str,
    values: Vec<Value>,
) -> Query<'static, D, D::Arguments>
where
    Option<String>: Encode<'static, D> + Type<D>,
    Option<i64>: Encode<'static, D> + Type<D>,
    Option<bool>: Encode<'static, D> + Type<D>,
    Option<Vec<u8>>: Encode<'static, D> + Type<D>,
{
    values
        .into_iter()
        .fold(sqlx::query(sql), |query, value| match value {
            Value::Text(text) => query.bind(text),
            Value::Int(number) => query.bind(number),
            Value::Bool(yes) => query.bind(yes),
            Value::Bytes(bytes) => query.bind(bytes),
        })
}

/// What the rows of an answer become, from either database.
pub trait Take: Send {
    fn sqlite(&mut self, row: &SqliteRow) -> sqlx::Result<()>;
    fn postgres(&mut self, row: &PgRow) -> sqlx::Result<()>;
}

impl<T: Row> Take for Vec<T> {
    fn sqlite(&mut self, row: &SqliteRow) -> sqlx::Result<()> {
        self.push(T::from_row(row)?);
        Ok(())
    }

    fn postgres(&mut self, row: &PgRow) -> sqlx::Result<()> {
        self.push(T::from_row(row)?);
        Ok(())
    }
}

pub(super) async fn sqlite(
    connection: &mut SqliteConnection,
    sql: &'static str,
    values: Vec<Value>,
    to: &mut dyn Take,
) -> Result<(), StoreError> {
    let rows = query::<Sqlite>(sql, values).fetch_all(connection).await?;
    for row in &rows {
        if let Err(error) = to.sqlite(row) {
            let bad = Bad::of(row, error)?;
            let origin = bad.column.origin();
            let place = origin
                .table_column()
                .map(|place| (place.table.to_string(), place.name.to_string()));
            return Err(bad.error(place));
        }
    }
    Ok(())
}

pub(super) async fn postgres(
    connection: &mut PgConnection,
    sql: &'static str,
    values: Vec<Value>,
    to: &mut dyn Take,
) -> Result<(), StoreError> {
    let rows = query::<Postgres>(sql, values)
        .fetch_all(&mut *connection)
        .await?;
    for row in &rows {
        if let Err(error) = to.postgres(row) {
            let bad = Bad::of(row, error)?;
            // The answer carries the table's and column's numbers; the catalogue has the names.
            let place = sqlx::query_as(
                "SELECT CAST(attrelid::regclass AS TEXT), CAST(attname AS TEXT)
                 FROM pg_catalog.pg_attribute WHERE attrelid = $1 AND attnum = $2",
            )
            .bind(bad.column.relation_id())
            .bind(bad.column.relation_attribute_no())
            .fetch_optional(&mut *connection)
            .await?;
            return Err(bad.error(place));
        }
    }
    Ok(())
}

/// A column of a row of an answer that does not hold what the program wrote.
struct Bad<'r, R: sqlx::Row> {
    column: &'r <R::Database as Database>::Column,
    row: String,
    cause: String,
}

impl<'r, R: sqlx::Row> Bad<'r, R>
where
    usize: ColumnIndex<R>,
    for<'a> &'a str: ColumnIndex<R>,
    Option<String>: Decode<'r, R::Database> + Type<R::Database>,
    Option<i64>: Decode<'r, R::Database> + Type<R::Database>,
{
    /// Errors: those of the statement itself, which are no fault of the row.
    fn of(row: &'r R, error: sqlx::Error) -> Result<Self, StoreError> {
        let sqlx::Error::ColumnDecode { index, source } = error else {
            return Err(error.into());
        };
        // sqlx hands over the index as Debug text: a number, or a name (quoted or not).
        let named = |column: &&_| Column::name(*column) == index.trim_matches('"');
        let by_number = || row.columns().get(index.parse::<usize>().ok()?);
        let Some(column) = row.columns().iter().find(named).or_else(by_number) else {
            return Err(sqlx::Error::ColumnDecode { index, source }.into());
        };
        // The row goes by its `id`, or by the first column of the answer.
        let id = row
            .columns()
            .iter()
            .position(|column| column.name() == "id");
        let id = id.unwrap_or(0);
        let text = row.try_get::<Option<String>, _>(id).ok().flatten();
        let number = || row.try_get::<Option<i64>, _>(id).ok().flatten();
        let name = text.or_else(|| number().map(|number| number.to_string()));
        Ok(Self {
            column,
            row: name.unwrap_or_else(|| "without a readable id".to_owned()),
            cause: source.to_string(),
        })
    }

    fn error(self, place: Option<(String, String)>) -> StoreError {
        let (table, column) =
            place.unwrap_or_else(|| ("(an expression)".to_owned(), self.column.name().to_owned()));
        StoreError::corrupt(&table, &column, &self.row, self.cause)
    }
}
