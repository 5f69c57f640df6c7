//! The exchange between a brand and its factories: the rules of revisions, threads, sample rounds,
//! approvals, seals, bulk inspections and signatures, and the hashing of the ledger. Pure: no I/O, no clock, no async,
//! no SQL.
//!
//! Every move takes facts that were read elsewhere and says what comes of it, or why not and what
//! to do instead ([`Refused`]). Nothing here remembers anything.

pub mod approval;
#[cfg(test)]
mod cast;
pub mod inspection;
pub mod ledger;
pub mod measuring;
pub mod party;
pub mod phrase;
pub mod record;
pub mod refused;
pub mod revision;
pub mod round;
pub mod seal;
pub mod signature;
pub mod thread;
pub mod translation;

pub use party::{Actor, Role, Side};
pub use refused::Refused;

/// A set of values that the database and the ledger hold by name. The names are stable for ever.
macro_rules! named {
    ($(#[$doc:meta])* $name:ident { $($(#[$note:meta])* $value:ident = $text:literal,)* }) => {
        $(#[$doc])*
        #[derive(
            Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord,
            serde::Serialize, serde::Deserialize,
        )]
        pub enum $name {
            $($(#[$note])* #[serde(rename = $text)] $value,)*
        }

        impl $name {
            pub const ALL: [$name; [$($text),*].len()] = [$($name::$value),*];

            /// The stable name: in the database, in the ledger, in addresses.
            pub fn name(self) -> &'static str {
                match self {
                    $($name::$value => $text,)*
                }
            }

            pub fn from_name(name: &str) -> Option<$name> {
                match name {
                    $($text => Some($name::$value),)*
                    _ => None,
                }
            }
        }
    };
}
use named;
