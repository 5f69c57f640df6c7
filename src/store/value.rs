//! What goes into a statement and what comes out of a row, the same for both databases.
//!
//! In: [`values!`](crate::store::values) takes anything that is [`Bind`], by reference, and makes
//! [`Value`]s of it. A NULL keeps its type: PostgreSQL refuses an untyped one where it cannot
//! guess, SQLite never minds.
//!
//! Out: a struct that derives `sqlx::FromRow`, or a tuple. Ids, digests and times are fields as
//! they are; numbers are `i64` (PostgreSQL has no unsigned ones), narrower ones
//! `#[sqlx(try_from = "i64")]`; enums `#[sqlx(try_from = "String")]`.

use sqlx::error::BoxDynError;
use sqlx::{Database, Decode, FromRow, Type};
use sqlx_postgres::PgRow;
use sqlx_sqlite::SqliteRow;

use crate::exchange::{
    Role, Side, approval, inspection, ledger, measuring, round, signature, thread,
};
use crate::sample::inspection::{Aql, Level};
use crate::spec::id::*;
use crate::spec::{Section, Unit};

/// An argument of a statement; `None` is a NULL of that type.
#[derive(Debug, Clone, PartialEq)]
pub enum Value {
    Text(Option<String>),
    Int(Option<i64>),
    Bool(Option<bool>),
    Bytes(Option<Vec<u8>>),
}

/// What can be an argument of a statement.
pub trait Bind {
    /// The NULL of this type.
    const NULL: Value;
    fn value(&self) -> Value;
}

impl<T: Bind + ?Sized> Bind for &T {
    const NULL: Value = T::NULL;
    fn value(&self) -> Value {
        T::value(self)
    }
}

impl<T: Bind> Bind for Option<T> {
    const NULL: Value = T::NULL;
    fn value(&self) -> Value {
        self.as_ref().map_or(T::NULL, T::value)
    }
}

macro_rules! bind {
    ($kind:ident, $($type:ty => $make:expr),* $(,)?) => {$(
        impl Bind for $type {
            const NULL: Value = Value::$kind(None);
            fn value(&self) -> Value {
                let make: fn(&$type) -> _ = $make;
                Value::$kind(Some(make(self)))
            }
        }
    )*};
}

bind!(Text, str => |text| text.to_owned(), String => String::clone);
bind!(Int, i64 => |n| *n, i32 => |n| (*n).into(), u32 => |n| (*n).into(), u16 => |n| (*n).into());
bind!(Bool, bool => |yes| *yes);
bind!(Bytes, [u8] => |bytes| bytes.to_vec(), Vec<u8> => Vec::clone);

/// The arguments of a statement, in the order of `$1`, `$2`, ...: `values![&id, 3, None::<String>]`.
#[macro_export]
#[doc(hidden)]
macro_rules! store_values {
    ($($value:expr),* $(,)?) => {
        vec![$($crate::store::Bind::value(&$value)),*]
    };
}

/// A row of an answer, from either database.
pub trait Row:
    for<'r> FromRow<'r, SqliteRow> + for<'r> FromRow<'r, PgRow> + Send + Unpin + 'static
{
}

impl<T> Row for T where
    T: for<'r> FromRow<'r, SqliteRow> + for<'r> FromRow<'r, PgRow> + Send + Unpin + 'static
{
}

/// Lets values that are kept as text be arguments and fields of rows: how each is written, and how
/// it is read. It stands here and not at the types: they live in the pure rooms, which know no
/// database.
macro_rules! text {
    ($($type:ty: $write:expr => $read:expr),* $(,)?) => {$(
        bind!(Text, $type => $write);

        impl<D: Database> Type<D> for $type
        where
            String: Type<D>,
        {
            fn type_info() -> D::TypeInfo {
                String::type_info()
            }

            fn compatible(column: &D::TypeInfo) -> bool {
                String::compatible(column)
            }
        }

        impl<'r, D: Database> Decode<'r, D> for $type
        where
            String: Decode<'r, D>,
        {
            fn decode(value: D::ValueRef<'r>) -> Result<Self, BoxDynError> {
                let read: fn(String) -> Result<$type, BoxDynError> = $read;
                read(String::decode(value)?)
            }
        }
    )*};
}

/// Newtypes over text.
macro_rules! newtypes {
    ($($type:ty => $read:expr),* $(,)?) => {
        text! { $($type: |text| text.as_str().to_owned() => $read),* }
    };
}

/// Values that have a stable name.
macro_rules! named {
    ($($type:ty)*) => {
        text! { $(
            $type: |value| value.name().to_owned() => |name| {
                <$type>::from_name(&name).ok_or_else(|| format!("{name:?} is no value of it").into())
            }
        ),* }
    };
}

newtypes! {
    ItemId => |id| Ok(ItemId::new(id)),
    StyleId => |id| Ok(StyleId::new(id)),
    RevisionId => |id| Ok(RevisionId::new(id)),
    OrgId => |id| Ok(OrgId::new(id)),
    PersonId => |id| Ok(PersonId::new(id)),
    ThreadId => |id| Ok(ThreadId::new(id)),
    MessageId => |id| Ok(MessageId::new(id)),
    RoundId => |id| Ok(RoundId::new(id)),
    PieceId => |id| Ok(PieceId::new(id)),
    MeasurementId => |id| Ok(MeasurementId::new(id)),
    SignatureId => |id| Ok(SignatureId::new(id)),
    SubmissionId => |id| Ok(SubmissionId::new(id)),
    SealId => |id| Ok(SealId::new(id)),
    InspectionId => |id| Ok(InspectionId::new(id)),
    EntryId => |id| Ok(EntryId::new(id)),
    Digest => |hex| Ok(Digest::try_from(hex)?),
    Time => |text| Ok(Time::try_from(text)?),
}

named! { Role Side Section Unit thread::Kind round::Kind round::State round::Outcome
round::Materials measuring::Wash measuring::Reason ledger::Act signature::SubjectKind approval::Kind
approval::Verdict inspection::Class inspection::Outcome inspection::Decision Level Aql }
