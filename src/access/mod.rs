//! Who may do what. Pure: from facts that the store has read it says yes, by a permit that storage
//! demands, or no, with the reason.
//!
//! A permit has private fields and one constructor each, [`grant`] and [`grant_on`]. It carries the
//! ids that it was granted for, so store functions take no second id of that kind, and a query
//! without tenancy does not compile.

pub mod act;
mod permit;

pub use crate::exchange::{Actor, Role, Side};
pub use act::{Act, BringsPhotos};
pub use permit::{Denied, Permit, Share, StyleFacts, StylePermit, grant, grant_on};
