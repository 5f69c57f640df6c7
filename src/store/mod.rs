//! All SQL, and nothing else's SQL anywhere. One text for SQLite and PostgreSQL.
//!
//! ```no_run
//! use fellseam::spec::id::{PersonId, StyleId, Time};
//! use fellseam::store::{Db, Read, StoreError, values};
//!
//! #[derive(sqlx::FromRow)]
//! struct Style {
//!     id: StyleId,
//!     name: String,
//!     made_at: Time,
//! }
//!
//! // Reads through the database or through a transaction: `style(&db, ..)`, `style(&tx, ..)`.
//! async fn style(db: &impl Read, id: &StyleId) -> Result<Style, StoreError> {
//!     db.one("SELECT id, name, made_at FROM style WHERE id = $1", values![id]).await
//! }
//!
//! # async fn act(id: StyleId) -> Result<(), StoreError> {
//! let db = Db::open("sqlite:fellseam.db").await?; // migrated and guarded
//! let tx = db.begin().await?; // one at a time on SQLite: never begin inside a begin
//! let rows = tx.run("UPDATE style SET name = $2 WHERE id = $1", values![id, "Parka"]).await?;
//! assert_eq!(rows, 1);
//! let (seq, hash): (i64, String) = tx
//!     .one(
//!         "UPDATE ledger_head SET seq = seq + 1 WHERE style = $1 RETURNING seq, hash",
//!         values![id],
//!     )
//!     .await?;
//! style(&tx, &id).await?;
//! tx.commit().await?; // a dropped transaction is rolled back
//! # Ok(()) }
//! ```

mod acknowledgements;
mod act;
mod approvals;
mod audit;
mod corrections;
mod db;
mod decisions;
mod dispatches;
mod drafts;
mod entry;
mod erase;
mod error;
mod events;
mod files;
mod guard;
mod inspections;
mod ledger;
mod mail;
mod measurements;
mod message_translations;
mod messages;
mod migrate;
mod needs;
mod people;
mod pieces;
mod presence;
mod prints;
mod readers;
mod records;
mod revisions;
mod rounds;
mod rows;
mod seals;
mod shares;
mod settings;
mod signatures;
mod starts;
mod styles;
mod threads;
mod translations;
mod value;
mod wire;
mod wordings;
mod world;

pub use crate::store_values as values;
pub use acknowledgements::Acknowledged;
pub use approvals::{Judgement, NewSubmission, Submission};
pub use audit::{Audit, Fault};
pub use corrections::{Corrected, NewCorrection};
pub use db::{Db, Read, Tx};
pub use decisions::Decide;
pub use dispatches::Dispatch;
pub use drafts::{Draft, LastSave, LostSave, Saved, SectionVersion, Versions, put_section};
pub use entry::{Session, SetUp, Visit, WayIn};
pub use erase::Erased;
pub use error::StoreError;
pub use events::{Audience, Event};
pub use files::{Fetchable, FileKind, NewFile, NewPicture, StyleFile};
pub use guard::GUARDED;
pub use inspections::{
    Conclusion, FoundDefect, InspectedPiece, Inspection, JudgedPiece, LotDecision, NewPiece,
    PieceSent, ToInspect, lengths,
};
pub use ledger::LedgerLine;
pub use mail::Recipient;
pub use measurements::{Kept, NewMeasurement};
pub use message_translations::MessageTranslation;
pub use messages::{Message, Photo, Says};
pub use needs::{Need, Turn, What};
pub use people::{NewPerson, Organisation, Person};
pub use pieces::{MOST_PIECE_PHOTOS, NewSkip, PiecePhoto, Skipped};
pub use presence::Present;
pub use prints::{Printed, PrintedRevision};
pub use revisions::{Publish, Revision, RevisionCard};
pub use rounds::{Decision, Measured, NewRound, Piece, Round};
pub use seals::{Seal, SealedPiece, ToSeal};
pub use shares::{Shared, SharedStyle};
pub use signatures::{Sign, SignForm, Signature};
pub use starts::OwnStart;
pub use styles::{StyleCard, StyleCopy, StyleName};
pub use threads::{NewThread, ThreadMove, ThreadView};
pub use translations::{Retranslated, Translation};
pub use value::{Bind, Row, Value};
pub use wire::{Ear, Known, Wire};
pub use world::{World, later, stamp};

use std::sync::Arc;

use moka::sync::Cache;
use tokio::sync::broadcast;

use crate::exchange::revision::Frozen;
use crate::spec::Digest;

/// How many revisions are kept read; one of 45 points in 8 sizes is about 60 KiB.
const FROZEN_KEPT: u64 = 500;
/// How many events a slow listener may be behind before it is told to look at everything again.
const EVENTS_KEPT: usize = 1024;

/// Everything that is kept: the database, and what it needs of the world. The functions are in the
/// file of their noun. Each takes a permit, which says who asks and for what.
#[derive(Debug, Clone)]
pub struct Store {
    db: Db,
    world: World,
    events: broadcast::Sender<Event>,
    /// Revisions never change, so what was read once may be kept.
    frozen: Cache<Digest, Arc<Frozen>>,
}

impl Store {
    pub fn new(db: Db, world: World) -> Self {
        Self {
            db,
            world,
            events: broadcast::Sender::new(EVENTS_KEPT),
            frozen: Cache::new(FROZEN_KEPT),
        }
    }

    pub fn world(&self) -> &World {
        &self.world
    }

    /// Waits for running statements and closes every connection.
    pub async fn close(&self) {
        self.db.close().await;
    }
}
