//! Does everything that was kept still hold? Every chain, every digest, every salted hash.

use std::collections::BTreeMap;

use super::{Read, Store, StoreError, ledger::head_in, values};
use crate::exchange::ledger::{self, Act, Entry, Salt};
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

/// A personal text beside the hash that was kept of it.
#[derive(sqlx::FromRow)]
struct TextRow {
    id: String,
    hash: Digest,
    salt: String,
    content: Option<String>,
    erased_at: Option<String>,
}

#[derive(sqlx::FromRow)]
struct MeasurementRow {
    id: String,
    round: String,
    piece: String,
    point: String,
    nm: i64,
    unit: String,
}

#[derive(sqlx::FromRow)]
struct SignatureRow {
    id: String,
    digest: Digest,
    screen: Digest,
    name_hash: Digest,
    chain: Digest,
    side: String,
}

/// The audit of one style.
struct OfStyle<'a> {
    audit: &'a mut Audit,
    style: StyleId,
    entries: Vec<(Entry, Digest)>,
}

impl Store {
    /// Checks the database, style after style.
    pub async fn audit(&self) -> Result<Audit, StoreError> {
        let mut audit = Audit::default();
        let styles: Vec<(StyleId,)> = self
            .db
            .all("SELECT id FROM style ORDER BY made_at, id", values![])
            .await?;
        for (style,) in styles {
            audit.styles += 1;
            let mut of = OfStyle {
                audit: &mut audit,
                style,
                entries: Vec::new(),
            };
            of.chain(self).await?;
            of.revisions(self).await?;
            of.messages(self).await?;
            of.photos(self).await?;
            of.decisions(self).await?;
            of.measurements(self).await?;
            of.signatures(self).await?;
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

impl OfStyle<'_> {
    fn fault(&mut self, what: impl ToString, why: impl ToString) {
        self.audit.faults.push(Fault {
            style: self.style.to_string(),
            what: what.to_string(),
            why: why.to_string(),
        });
    }

    /// Walks along the chain; stops at the first entry that does not hold.
    async fn chain(&mut self, store: &Store) -> Result<(), StoreError> {
        let kept = head_in(&store.db, &self.style).await?;
        let rows: Vec<(String, Digest)> = store
            .db
            .all(
                "SELECT body, hash FROM ledger WHERE style = $1 ORDER BY seq",
                values![self.style],
            )
            .await?;
        self.audit.entries += rows.len();
        let bodies = rows.iter().map(|(body, hash)| (body.as_str(), hash));
        if let Err(first) = ledger::verify(&self.style, bodies, &kept) {
            self.fault(format!("ledger entry {}", first.seq), first.fault);
        }
        for (body, hash) in rows {
            if let Ok(entry) = serde_json::from_str(&body) {
                self.entries.push((entry, hash));
            }
        }
        Ok(())
    }

    /// The ledger's entries of these acts, by the id that they give under `name`.
    fn said(&self, acts: &[Act], name: &str) -> BTreeMap<String, Entry> {
        self.entries
            .iter()
            .filter(|(entry, _)| acts.contains(&entry.act))
            .filter_map(|(entry, _)| Some((entry.ids.get(name)?.clone(), entry.clone())))
            .collect()
    }

    async fn revisions(&mut self, store: &Store) -> Result<(), StoreError> {
        let rows: Vec<(i64, Vec<u8>, Digest)> = store
            .db
            .all(
                "SELECT number, bytes, digest FROM revision WHERE style = $1 ORDER BY number",
                values![self.style],
            )
            .await?;
        let said = self.said(&[Act::Publish], "revision");
        self.audit.revisions += rows.len();
        for (number, entry) in &said {
            if !rows.iter().any(|(n, ..)| n.to_string() == *number) {
                let why = format!("entry {} published it, and it is gone", entry.seq);
                self.fault(format!("revision {number}"), why);
            }
        }
        for (number, bytes, digest) in rows {
            let what = format!("revision {number}");
            if Digest::of(&bytes) != digest {
                self.fault(&what, "its bytes are not those that were hashed");
            }
            let known = said.get(&number.to_string());
            if known.and_then(|entry| entry.hashes.get("document")) != Some(&digest) {
                self.fault(&what, "the ledger knows another document");
            }
        }
        Ok(())
    }

    async fn messages(&mut self, store: &Store) -> Result<(), StoreError> {
        let rows: Vec<TextRow> = store
            .db
            .all(
                "SELECT m.id, m.text_hash AS hash, x.salt, x.content, x.erased_at \
                 FROM message m JOIN thread t ON t.id = m.thread \
                 JOIN private_text x ON x.id = m.text WHERE t.style = $1 ORDER BY m.id",
                values![self.style],
            )
            .await?;
        self.audit.messages += rows.len();
        let said = self.said(&[Act::Ask, Act::Message], "message");
        for id in said.keys() {
            if !rows.iter().any(|row| row.id == *id) {
                self.fault(
                    format!("message {id}"),
                    "the ledger knows it, and it is gone",
                );
            }
        }
        for row in rows {
            let known = said.get(&row.id).and_then(|entry| entry.hashes.get("text"));
            self.text(&format!("message {}", row.id), &row, known);
        }
        Ok(())
    }

    async fn photos(&mut self, store: &Store) -> Result<(), StoreError> {
        type Row = (String, i64, Digest, String, Option<String>, Option<String>);
        let rows: Vec<Row> = store
            .db
            .all(
                "SELECT h.message, h.seq, h.photo_hash, x.salt, x.content, x.erased_at \
                 FROM message_photo h JOIN message m ON m.id = h.message \
                 JOIN thread t ON t.id = m.thread JOIN private_text x ON x.id = h.photo \
                 WHERE t.style = $1 ORDER BY h.message, h.seq",
                values![self.style],
            )
            .await?;
        let said = self.said(&[Act::Ask, Act::Message], "message");
        for (id, seq, hash, salt, content, erased_at) in rows {
            let row = TextRow {
                id,
                hash,
                salt,
                content,
                erased_at,
            };
            let name = format!("photo_{seq}");
            let known = said.get(&row.id).and_then(|entry| entry.hashes.get(&name));
            self.text(
                &format!("photograph {seq} of message {}", row.id),
                &row,
                known,
            );
        }
        Ok(())
    }

    async fn decisions(&mut self, store: &Store) -> Result<(), StoreError> {
        let rows: Vec<TextRow> = store
            .db
            .all(
                "SELECT d.round AS id, d.reason_hash AS hash, x.salt, x.content, x.erased_at \
                 FROM decision d JOIN round r ON r.id = d.round \
                 JOIN private_text x ON x.id = d.reason WHERE r.style = $1 ORDER BY d.round",
                values![self.style],
            )
            .await?;
        let said = self.said(&[Act::Decide], "round");
        for row in rows {
            let known = said
                .get(&row.id)
                .and_then(|entry| entry.hashes.get("reason"));
            self.text(&format!("decision of round {}", row.id), &row, known);
        }
        Ok(())
    }

    async fn measurements(&mut self, store: &Store) -> Result<(), StoreError> {
        let rows: Vec<MeasurementRow> = store
            .db
            .all(
                "SELECT m.id, m.round, m.piece, m.point, m.nm, m.unit FROM measurement m \
                 JOIN round r ON r.id = m.round WHERE r.style = $1 ORDER BY m.id",
                values![self.style],
            )
            .await?;
        self.audit.measurements += rows.len();
        let said = self.said(&[Act::Measure], "measurement");
        for id in said.keys() {
            if !rows.iter().any(|row| row.id == *id) {
                self.fault(
                    format!("measurement {id}"),
                    "the ledger knows it, and it is gone",
                );
            }
        }
        for row in rows {
            let same = said.get(&row.id).is_some_and(|entry| {
                let nm = row.nm.to_string();
                let values = [
                    ("round", &row.round),
                    ("piece", &row.piece),
                    ("point", &row.point),
                    ("nm", &nm),
                    ("unit", &row.unit),
                ];
                values
                    .iter()
                    .all(|(name, value)| entry.ids.get(*name) == Some(value))
            });
            if !same {
                let what = format!("measurement {}", row.id);
                self.fault(what, "the ledger knows another value");
            }
        }
        Ok(())
    }

    async fn signatures(&mut self, store: &Store) -> Result<(), StoreError> {
        let rows: Vec<SignatureRow> = store
            .db
            .all(
                "SELECT id, digest, screen, name_hash, chain, side FROM signature \
                 WHERE style = $1 ORDER BY at, id",
                values![self.style],
            )
            .await?;
        let names: Vec<TextRow> = store
            .db
            .all(
                "SELECT s.id, s.name_hash AS hash, x.salt, x.content, x.erased_at \
                 FROM signature s JOIN private_text x ON x.id = s.name WHERE s.style = $1",
                values![self.style],
            )
            .await?;
        self.audit.signatures += rows.len();
        let said = self.said(&[Act::Sign], "signature");
        for id in said.keys() {
            if !rows.iter().any(|row| row.id == *id) {
                self.fault(
                    format!("signature {id}"),
                    "the ledger knows it, and it is gone",
                );
            }
        }
        for row in rows {
            let same = said.get(&row.id).is_some_and(|entry| {
                entry.hashes.get("document") == Some(&row.digest)
                    && entry.hashes.get("screen") == Some(&row.screen)
                    && entry.hashes.get("name") == Some(&row.name_hash)
                    && entry.ids.get("side") == Some(&row.side)
                    && entry.before == row.chain
            });
            if !same {
                let what = format!("signature {}", row.id);
                self.fault(what, "the ledger knows another signature");
            }
        }
        for row in names {
            let known = said.get(&row.id).and_then(|entry| entry.hashes.get("name"));
            self.text(&format!("name on signature {}", row.id), &row, known);
        }
        Ok(())
    }

    /// A personal text against the hash beside it and the one in the ledger.
    fn text(&mut self, what: &str, row: &TextRow, known: Option<&Digest>) {
        if known != Some(&row.hash) {
            self.fault(what, "the ledger knows another text");
        }
        let Some(content) = &row.content else {
            if row.erased_at.is_some() {
                self.audit.erased += 1;
            } else {
                self.fault(what, "its text is gone, and nobody erased it");
            }
            return;
        };
        let holds = Salt::from_hex(&row.salt)
            .is_some_and(|salt| ledger::salted(&salt, content) == row.hash);
        if !holds {
            self.fault(what, "its text is not the one that was hashed");
        }
    }
}
