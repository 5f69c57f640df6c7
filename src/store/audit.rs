//! Does everything that was kept still hold? Every chain, every digest, every salted hash, and
//! every row that a chain tells of.
//!
//! The ledger tells how each row came to be, so the rows are built again from it and compared:
//! what was changed, added or taken away past the program is named. Columns are read as they are,
//! since an audit does not stop at nonsense.

mod approvals;
mod inspections;
mod revisions;
mod rounds;
mod seals;
mod signatures;
mod threads;
mod told;

use std::collections::{BTreeMap, BTreeSet};

use serde::Serialize;

use super::{Read, Row, Store, StoreError, Tx, values};
use crate::exchange::ledger::{self, Act, Entry, Head, Salt};
use crate::exchange::revision::Frozen;
use crate::spec::{Digest, StyleId};

/// What an audit of the database found.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Audit {
    pub styles: usize,
    pub entries: usize,
    pub revisions: usize,
    pub messages: usize,
    pub measurements: usize,
    pub signatures: usize,
    /// Personal texts that were erased: their hashes can no longer be checked.
    pub erased: usize,
    /// What does not hold, in the order it was met. Empty: all holds.
    pub faults: Vec<Fault>,
}

/// Something that does not hold.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Fault {
    /// The style's id.
    pub style: String,
    /// What: `ledger entry 7`, `revision 2`, `message 0b1c…`.
    pub what: String,
    pub why: String,
}

#[derive(sqlx::FromRow)]
struct LedgerRow {
    seq: i64,
    at: String,
    act: String,
    person: Option<String>,
    visible_to: Option<String>,
    internal: bool,
    body: String,
    hash: String,
}

#[derive(sqlx::FromRow)]
struct DocumentRow {
    number: i64,
    format: i64,
    published_at: String,
    bytes: Vec<u8>,
    digest: String,
}

/// A personal text, and the hash that was kept of it.
#[derive(sqlx::FromRow)]
struct TextRow {
    what: String,
    /// Who wrote it.
    person: String,
    hash: String,
    /// Whose erasing takes it along; `None`: the text has no row any more.
    owner: Option<String>,
    salt: Option<String>,
    content: Option<String>,
    erased_at: Option<String>,
}

/// A row with the name that a fault gives it.
#[derive(sqlx::FromRow)]
struct Named<T> {
    what: String,
    #[sqlx(flatten)]
    row: T,
}

/// The audit of one style.
struct OfStyle<'a> {
    /// Holds the style's lock: no act comes between the statements.
    tx: &'a Tx,
    audit: &'a mut Audit,
    style: StyleId,
    entries: Vec<Entry>,
}

impl Store {
    /// Checks the database, style after style. Acts on a style wait while it is looked at.
    pub async fn audit(&self) -> Result<Audit, StoreError> {
        let mut audit = Audit::default();
        let styles: Vec<(StyleId,)> = self
            .db
            .all("SELECT id FROM style ORDER BY made_at, id", values![])
            .await?;
        for (style,) in styles {
            audit.styles += 1;
            // Never committed: there is nothing to keep.
            let tx = self.db.begin().await?;
            tx.run(
                "UPDATE ledger_head SET seq = seq WHERE style = $1",
                values![style],
            )
            .await?;
            let mut of = OfStyle {
                tx: &tx,
                audit: &mut audit,
                style,
                entries: Vec::new(),
            };
            of.chain().await?;
            of.documents().await?;
            of.revisions().await?;
            of.sections().await?;
            of.withdrawals().await?;
            of.shares().await?;
            of.acknowledgements().await?;
            of.translations().await?;
            of.threads().await?;
            of.messages().await?;
            of.message_translations().await?;
            of.rounds().await?;
            of.pieces().await?;
            of.measurements().await?;
            of.skips().await?;
            of.piece_photos().await?;
            of.decisions().await?;
            of.dispatches().await?;
            of.submissions().await?;
            of.seals().await?;
            of.inspections().await?;
            of.signatures().await?;
            of.texts().await?;
        }
        Ok(audit)
    }

    /// The digests that must lie in the folder of files.
    pub async fn known_files(&self) -> Result<Vec<Digest>, StoreError> {
        let rows: Vec<(Digest,)> = self
            .db
            .all(
                "SELECT digest FROM file WHERE kind = 'drawing' \
                 UNION SELECT digest FROM picture ORDER BY 1",
                values![],
            )
            .await?;
        Ok(rows.into_iter().map(|(digest,)| digest).collect())
    }
}

/// A digest as it was kept. What is none is the digest of nothing, which nothing here has.
fn digest(hex: String) -> Digest {
    Digest::try_from(hex).unwrap_or_else(|_| Digest::of(b""))
}

impl OfStyle<'_> {
    fn fault(&mut self, what: impl ToString, why: impl ToString) {
        self.audit.faults.push(Fault {
            style: self.style.to_string(),
            what: what.to_string(),
            why: why.to_string(),
        });
    }

    /// The entries of an act, oldest first.
    fn told(&self, act: Act) -> impl Iterator<Item = &Entry> {
        self.entries.iter().filter(move |entry| entry.act == act)
    }

    /// Walks along the chain and names the first entry that does not hold; then every entry whose
    /// columns, which decide who reads it, do not say what its text says.
    async fn chain(&mut self) -> Result<(), StoreError> {
        let head: Option<(i64, String)> = self
            .tx
            .maybe(
                "SELECT seq, hash FROM ledger_head WHERE style = $1",
                values![self.style],
            )
            .await?;
        let rows: Vec<LedgerRow> = self
            .tx
            .all(
                "SELECT seq, at, act, person, visible_to, internal, body, hash FROM ledger \
                 WHERE style = $1 ORDER BY seq",
                values![self.style],
            )
            .await?;
        self.audit.entries += rows.len();
        let kept = match head {
            Some((seq, hash)) => Head {
                seq: u64::try_from(seq).unwrap_or_default(),
                hash: digest(hash),
            },
            None => {
                self.fault("ledger", "the head beside it is gone");
                Head::start(&self.style)
            }
        };
        let hashes: Vec<Digest> = rows.iter().map(|row| digest(row.hash.clone())).collect();
        let bodies = rows.iter().map(|row| row.body.as_str()).zip(&hashes);
        if let Err(first) = ledger::verify(&self.style, bodies, &kept) {
            self.fault(format!("ledger entry {}", first.seq), first.fault);
        }
        for row in rows {
            let Ok(entry) = serde_json::from_str::<Entry>(&row.body) else {
                continue;
            };
            let text = |id: &dyn ToString| id.to_string();
            let same = i64::try_from(entry.seq) == Ok(row.seq)
                && entry.at.as_str() == row.at
                && entry.act.name() == row.act
                && entry.person.as_ref().map(|id| text(id)) == row.person
                && entry.visible_to.as_ref().map(|id| text(id)) == row.visible_to
                && entry.internal == row.internal;
            if !same {
                let what = format!("ledger entry {}", row.seq);
                self.fault(what, "its columns do not say what its text says");
            }
            self.entries.push(entry);
        }
        Ok(())
    }

    /// Every revision's bytes.
    async fn documents(&mut self) -> Result<(), StoreError> {
        let rows: Vec<DocumentRow> = self
            .tx
            .all(
                "SELECT number, format, published_at, bytes, digest FROM revision \
                 WHERE style = $1 ORDER BY number",
                values![self.style],
            )
            .await?;
        for row in rows {
            let what = format!("revision {}", row.number);
            if Digest::of(&row.bytes).as_str() != row.digest {
                self.fault(what, "its bytes are not those that were hashed");
                continue;
            }
            let itself = Frozen::read(&row.bytes).is_ok_and(|frozen| {
                frozen.style == self.style
                    && i64::from(frozen.number) == row.number
                    && i64::from(frozen.format) == row.format
                    && frozen.published.as_str() == row.published_at
            });
            if !itself {
                self.fault(what, "its bytes are those of something else");
            }
        }
        Ok(())
    }

    /// The rows of a table by the names that faults give them.
    async fn kept<T>(&self, sql: &'static str) -> Result<Vec<(String, T)>, StoreError>
    where
        Named<T>: Row,
    {
        let rows: Vec<Named<T>> = self.tx.all(sql, values![self.style]).await?;
        Ok(rows
            .into_iter()
            .map(|named| (named.what, named.row))
            .collect())
    }

    /// Compares a table with what the ledger tells of it, each row by its name.
    fn hold<T: PartialEq + Serialize>(
        &mut self,
        kept: impl IntoIterator<Item = (String, T)>,
        mut told: BTreeMap<String, T>,
    ) {
        for (what, row) in kept {
            match told.remove(&what) {
                None => self.fault(what, "the ledger does not know it"),
                Some(known) if known != row => {
                    let why = format!("the ledger tells it otherwise: {}", differing(&row, &known));
                    self.fault(what, why);
                }
                Some(_) => {}
            }
        }
        for what in told.into_keys() {
            self.fault(what, "the ledger tells of it, and it is gone");
        }
    }

    /// Every personal text against the hash that stands where it was used. Those hashes were held
    /// against the ledger already.
    async fn texts(&mut self) -> Result<(), StoreError> {
        let rows: Vec<TextRow> = self
            .tx
            .all(
                "SELECT 'message ' || m.id AS what, m.person, m.text_hash AS hash, \
                 x.person AS owner, x.salt, x.content, x.erased_at FROM message m \
                 JOIN thread t ON t.id = m.thread LEFT JOIN private_text x ON x.id = m.text \
                 WHERE t.style = $1 \
                 UNION ALL SELECT 'photograph ' || CAST(h.seq AS TEXT) || ' of message ' || m.id, \
                 m.person, h.photo_hash, x.person, x.salt, x.content, x.erased_at \
                 FROM message_photo h JOIN message m ON m.id = h.message \
                 JOIN thread t ON t.id = m.thread \
                 LEFT JOIN private_text x ON x.id = h.photo \
                 WHERE t.style = $1 \
                 UNION ALL SELECT 'translation ' || r.id || ' of a message', m.person, \
                 r.text_hash, x.person, x.salt, x.content, x.erased_at \
                 FROM message_translation r JOIN message m ON m.id = r.message \
                 JOIN thread t ON t.id = m.thread LEFT JOIN private_text x ON x.id = r.text \
                 WHERE t.style = $1 \
                 UNION ALL SELECT 'photograph ' || CAST(h.seq AS TEXT) || ' of piece ' \
                 || h.piece, h.person, h.photo_hash, x.person, x.salt, x.content, x.erased_at \
                 FROM piece_photo h JOIN piece p ON p.id = h.piece \
                 JOIN round r ON r.id = p.round LEFT JOIN private_text x ON x.id = h.photo \
                 WHERE r.style = $1 \
                 UNION ALL SELECT 'decision of round ' || d.round, d.person, d.reason_hash, \
                 x.person, x.salt, x.content, x.erased_at FROM decision d \
                 JOIN round r ON r.id = d.round LEFT JOIN private_text x ON x.id = d.reason \
                 WHERE r.style = $1 \
                 UNION ALL SELECT 'substitutes in the dispatch of round ' || s.round, s.person, \
                 s.substitutes_hash, x.person, x.salt, x.content, x.erased_at FROM dispatch s \
                 JOIN round r ON r.id = s.round LEFT JOIN private_text x ON x.id = s.substitutes \
                 WHERE r.style = $1 \
                 UNION ALL SELECT 'parcel of the dispatch of round ' || s.round, s.person, \
                 s.parcel_hash, x.person, x.salt, x.content, x.erased_at FROM dispatch s \
                 JOIN round r ON r.id = s.round LEFT JOIN private_text x ON x.id = s.parcel \
                 WHERE r.style = $1 \
                 UNION ALL SELECT 'note of submission ' || s.id, s.person, s.note_hash, x.person, \
                 x.salt, x.content, x.erased_at FROM submission s \
                 LEFT JOIN private_text x ON x.id = s.note WHERE s.style = $1 \
                 UNION ALL SELECT 'instrument of submission ' || s.id, s.person, \
                 s.instrument_hash, x.person, x.salt, x.content, x.erased_at FROM submission s \
                 LEFT JOIN private_text x ON x.id = s.instrument WHERE s.style = $1 \
                 UNION ALL SELECT 'photograph ' || CAST(h.seq AS TEXT) || ' of submission ' \
                 || s.id, s.person, h.photo_hash, x.person, x.salt, x.content, x.erased_at \
                 FROM submission_photo h JOIN submission s ON s.id = h.submission \
                 LEFT JOIN private_text x ON x.id = h.photo WHERE s.style = $1 \
                 UNION ALL SELECT 'decision of submission ' || d.submission, d.person, \
                 d.reason_hash, x.person, x.salt, x.content, x.erased_at \
                 FROM submission_decision d JOIN submission s ON s.id = d.submission \
                 LEFT JOIN private_text x ON x.id = d.reason WHERE s.style = $1 \
                 UNION ALL SELECT 'pieces of seal ' || s.id || ', place of ' || p.piece, s.person, \
                 p.place_hash, x.person, x.salt, x.content, x.erased_at FROM seal_piece p \
                 JOIN seal s ON s.id = p.seal LEFT JOIN private_text x ON x.id = p.place \
                 WHERE s.style = $1 \
                 UNION ALL SELECT 'words of defect ' || CAST(d.seq AS TEXT) || ' of entry ' \
                 || d.entry, e.person, d.words_hash, x.person, x.salt, x.content, x.erased_at \
                 FROM inspection_defect d JOIN inspection_entry e ON e.id = d.entry \
                 JOIN inspection i ON i.id = e.inspection \
                 LEFT JOIN private_text x ON x.id = d.words WHERE i.style = $1 \
                 UNION ALL SELECT 'decision of inspection ' || d.inspection, d.person, \
                 d.reason_hash, x.person, x.salt, x.content, x.erased_at \
                 FROM inspection_decision d JOIN inspection i ON i.id = d.inspection \
                 LEFT JOIN private_text x ON x.id = d.reason WHERE i.style = $1 \
                 UNION ALL SELECT 'name on signature ' || s.id, s.person, s.name_hash, x.person, \
                 x.salt, x.content, x.erased_at FROM signature s \
                 LEFT JOIN private_text x ON x.id = s.name WHERE s.style = $1 ORDER BY 1",
                values![self.style],
            )
            .await?;
        let erased: BTreeSet<String> = self
            .told(Act::Erase)
            .filter_map(|entry| entry.ids.get("person").cloned())
            .collect();
        for row in rows {
            if row.owner.is_some_and(|owner| owner != row.person) {
                self.fault(&row.what, "its text is kept as somebody else's");
            }
            let Some(content) = row.content else {
                if row.erased_at.is_some() && erased.contains(&row.person) {
                    self.audit.erased += 1;
                } else {
                    self.fault(&row.what, "its text is gone, and nobody erased it");
                }
                continue;
            };
            let salt = row.salt.as_deref().and_then(Salt::from_hex);
            let holds =
                salt.is_some_and(|salt| ledger::salted(&salt, &content).as_str() == row.hash);
            if !holds {
                self.fault(&row.what, "its text is not the one that was hashed");
            }
        }
        Ok(())
    }
}

/// The names of the columns in which two rows differ.
fn differing<T: Serialize>(row: &T, known: &T) -> String {
    let columns = |row: &T| match serde_json::to_value(row) {
        Ok(serde_json::Value::Object(columns)) => columns,
        _ => serde_json::Map::new(),
    };
    let known = columns(known);
    let names: Vec<String> = columns(row)
        .into_iter()
        .filter(|(name, value)| known.get(name) != Some(value))
        .map(|(name, _)| name)
        .collect();
    names.join(", ")
}
