//! Sheets that were made before: a revision never changes, and many people read the same one.

use std::sync::Arc;

use moka::sync::Cache;

use super::{Around, Open, Sheet, open};
use crate::exchange::revision::Frozen;
use crate::language::Text;
use crate::spec::Digest;
use crate::store::StyleFile;

/// The memory that kept sheets may take, as `weight` guesses it.
const MEMORY: u64 = 32 * 1024 * 1024;

/// The sheets that were made last, by everything that they are made from.
#[derive(Clone)]
pub struct Sheets(Cache<Key, Arc<Made>>);

/// A sheet, and its words as one text.
pub struct Made {
    pub sheet: Arc<Sheet>,
    /// See [`Sheet::figures`].
    pub figures: String,
}

#[derive(PartialEq, Eq, Hash)]
struct Key {
    revision: Digest,
    /// By its number: it is one of the same style.
    acknowledged: Option<u32>,
    language: &'static str,
    open: Open,
    files: Vec<StyleFile>,
}

impl Default for Sheets {
    fn default() -> Self {
        // A text stands on the sheet and in the figures, with its strings' own cost.
        let weight = |_: &Key, made: &Arc<Made>| u32::try_from(made.figures.len() * 4);
        let sheets = Cache::builder()
            .weigher(move |key, made| weight(key, made).unwrap_or(u32::MAX))
            .max_capacity(MEMORY);
        Self(sheets.build())
    }
}

impl Sheets {
    /// The sheet of the revision with this digest, beside what else is known of it.
    pub fn of(&self, t: Text, digest: &Digest, frozen: &Frozen, around: Around<'_>) -> Arc<Made> {
        let key = Key {
            revision: digest.clone(),
            acknowledged: around.acknowledged.map(|it| it.number),
            language: t.lang(),
            open: open(around.threads, frozen.number),
            files: around.files.to_vec(),
        };
        self.0.get_with(key, || {
            let sheet = Sheet::of(t, frozen, around);
            Arc::new(Made {
                figures: sheet.figures(),
                sheet: Arc::new(sheet),
            })
        })
    }
}
