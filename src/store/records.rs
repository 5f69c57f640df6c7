//! Signed records, the key that signs them, and a chain held against one.

use super::audit::Fault;
use super::revisions::frozen_in;
use super::rounds::rounds_in;
use super::seals::seals_in;
use super::{Read, Sign, Store, StoreError, values};
use crate::access::{StylePermit, act};
use crate::exchange::ledger::{Act, Entry, FirstFault, Head, Verifier};
use crate::exchange::record::{
    Chain, FORMAT, Factory, Given, Kept, Key, Record, Style, Subject, matters, seal,
};
use crate::exchange::signature::{Statement, SubjectKind};
use crate::exchange::{Role, Side};
use crate::spec::canon::to_canonical;
use crate::spec::{Digest, OrgId, StyleId};

impl Store {
    /// The installation's key, made when it is asked for the first time.
    pub async fn record_key(&self) -> Result<Key, StoreError> {
        if let Some(key) = self.kept_key().await? {
            return Ok(key);
        }
        let made = self.world.record_key();
        let tx = self.db.begin().await?;
        // Whoever comes second takes the key of the first.
        tx.run(
            "INSERT INTO record_key (id, seed, made_at) VALUES (1, $1, $2) \
             ON CONFLICT (id) DO NOTHING",
            values![made.to_hex(), self.world.now()],
        )
        .await?;
        tx.commit().await?;
        self.kept_key().await?.ok_or(StoreError::Missing)
    }

    async fn kept_key(&self) -> Result<Option<Key>, StoreError> {
        let row: Option<(String,)> = self
            .db
            .maybe("SELECT seed FROM record_key WHERE id = 1", values![])
            .await?;
        let unreadable = || StoreError::corrupt("record_key", "seed", "1", "no key");
        row.map(|(seed,)| Key::from_hex(&seed).ok_or_else(unreadable))
            .transpose()
    }

    /// The signed record of a revision, a round or a seal with one factory, and the bytes of its file. The
    /// brand names the factory for a revision. `words` gives the statement in a language.
    ///
    /// Errors: `Missing` when there is no such thing for the holder.
    pub async fn signed_record(
        &self,
        permit: &StylePermit<act::Read>,
        what: Sign<'_>,
        org: Option<&OrgId>,
        words: impl Fn(&str, Statement) -> String,
    ) -> Result<(Record, Vec<u8>), StoreError> {
        let key = self.record_key().await?;
        let style = permit.style();
        // Before the rest: what comes in between is then left out, and not half told.
        let head = self.head(permit).await?;
        let (org, revision, subject) = match what {
            Sign::Revision(n) => {
                let org = permit.tenant().or(org).ok_or(StoreError::Missing)?;
                let kept = frozen_in(self, &self.db, style, n).await?;
                let subject = Subject {
                    kind: SubjectKind::Revision,
                    id: kept.id.to_string(),
                    number: n,
                    revision: n,
                    digest: Some(kept.digest),
                    content: None,
                };
                (org.clone(), kept.frozen, subject)
            }
            Sign::Round(id) => {
                let rounds = rounds_in(self, &self.db, style, permit.tenant()).await?;
                let round = rounds.into_iter().find(|round| round.id == *id);
                let round = round.ok_or(StoreError::Missing)?;
                let unwritable = |cause| StoreError::corrupt("round", "id", id.as_str(), cause);
                let content = match round.record(self.must_fixes_of(permit, id).await?) {
                    Some(record) => Some(to_canonical(&record).map_err(unwritable)?),
                    None => None,
                };
                let subject = Subject {
                    kind: SubjectKind::Round,
                    id: id.to_string(),
                    number: round.number,
                    revision: round.revision,
                    digest: content.as_deref().map(Digest::of),
                    content: content.and_then(|bytes| String::from_utf8(bytes).ok()),
                };
                (round.org, round.frozen, subject)
            }
            Sign::Seal(id) => {
                let seals = seals_in(self, &self.db, style, permit.tenant()).await?;
                let seal = seals.into_iter().find(|seal| seal.id == *id);
                let seal = seal.ok_or(StoreError::Missing)?;
                let unwritable = |cause| StoreError::corrupt("seal", "id", id.as_str(), cause);
                let content = to_canonical(&seal.record()).map_err(unwritable)?;
                let subject = Subject {
                    kind: SubjectKind::Seal,
                    id: id.to_string(),
                    number: seal.number,
                    revision: seal.revision,
                    digest: Some(Digest::of(&content)),
                    content: String::from_utf8(content).ok(),
                };
                (seal.org, seal.frozen, subject)
            }
        };
        let (factory,): (String,) = self
            .db
            .one(
                "SELECT o.name FROM share s JOIN organisation o ON o.id = s.org \
                 WHERE s.style = $1 AND s.org = $2",
                values![style, org],
            )
            .await?;
        let (brand,): (String,) = self
            .db
            .one(
                "SELECT name FROM organisation WHERE kind = 'brand'",
                values![],
            )
            .await?;
        let mut entries = entries_in(&self.db, style).await?;
        entries.retain(|kept| kept.entry.seq <= head.seq && matters(&kept.entry, &subject, &org));
        let names = names_in(&self.db, style, &org).await?;
        let signatures = entries
            .iter()
            .filter(|kept| kept.entry.act == Act::Sign)
            .filter_map(|kept| given(&kept.entry, &names, &words))
            .collect();
        let header = &revision.spec.header;
        let record = Record {
            format: FORMAT,
            made: self.world.now(),
            key: key.public(),
            brand,
            factory: Factory {
                id: org,
                name: factory,
            },
            style: Style {
                id: style.clone(),
                number: header.number.clone(),
                name: header.name.clone(),
            },
            subject,
            signatures,
            chain: Chain { head, entries },
        };
        let bytes = seal(&record, &key)
            .map_err(|cause| StoreError::corrupt("ledger", "body", style.as_str(), cause))?;
        Ok((record, bytes))
    }

    /// Holds a style's chain against a record that was kept elsewhere: it must still pass through
    /// every entry and the head that the record has.
    pub async fn audit_against(&self, record: &Record) -> Result<Option<Fault>, StoreError> {
        let style = &record.style.id;
        let rows = bodies_in(&self.db, style).await?;
        let entries = record.chain.entries.iter().map(|kept| Head {
            seq: kept.entry.seq,
            hash: kept.hash.clone(),
        });
        let known = entries.chain([record.chain.head.clone()]);
        let fault = |first: FirstFault| Fault {
            style: style.to_string(),
            what: format!("ledger entry {}", first.seq),
            why: first.fault.to_string(),
        };
        Ok(passes(style, known, &rows).err().map(fault))
    }
}

fn passes(
    style: &StyleId,
    known: impl Iterator<Item = Head>,
    rows: &[(String, Digest)],
) -> Result<(), FirstFault> {
    let mut verifier = Verifier::new(style);
    for head in known {
        verifier.expect(&head)?;
    }
    for (body, hash) in rows {
        verifier.next(body, hash)?;
    }
    verifier.finish().map(|_| ())
}

/// The name under a signature, with what it was salted with.
#[derive(sqlx::FromRow)]
struct NameRow {
    signature: String,
    salt: String,
    name: Option<String>,
}

async fn names_in(
    db: &impl Read,
    style: &StyleId,
    org: &OrgId,
) -> Result<Vec<NameRow>, StoreError> {
    db.all(
        "SELECT s.id AS signature, x.salt, x.content AS name FROM signature s \
         JOIN private_text x ON x.id = s.name WHERE s.style = $1 AND s.org = $2",
        values![style, org],
    )
    .await
}

async fn bodies_in(db: &impl Read, style: &StyleId) -> Result<Vec<(String, Digest)>, StoreError> {
    db.all(
        "SELECT body, hash FROM ledger WHERE style = $1 ORDER BY seq",
        values![style],
    )
    .await
}

async fn entries_in(db: &impl Read, style: &StyleId) -> Result<Vec<Kept>, StoreError> {
    bodies_in(db, style)
        .await?
        .into_iter()
        .map(|(body, hash)| {
            let entry: Entry = serde_json::from_str(&body)
                .map_err(|cause| StoreError::corrupt("ledger", "body", style.as_str(), cause))?;
            Ok(Kept { entry, hash })
        })
        .collect()
}

/// A signature as its entry tells it; `None`: the entry is none of this program's.
fn given(
    entry: &Entry,
    names: &[NameRow],
    words: &impl Fn(&str, Statement) -> String,
) -> Option<Given> {
    let id = |name: &str| entry.ids.get(name).map(String::as_str);
    let row = names
        .iter()
        .find(|row| Some(row.signature.as_str()) == id("signature"));
    let name = row.and_then(|row| row.name.clone());
    let statement = Statement::from_name(id("statement")?)?;
    let language = id("language")?;
    Some(Given {
        entry: entry.seq,
        side: Side::from_name(id("side")?)?,
        role: Role::from_name(id("role")?)?,
        salt: row.filter(|_| name.is_some()).map(|row| row.salt.clone()),
        name,
        at: entry.at.clone(),
        local_time: id("local_time")?.to_owned(),
        language: language.to_owned(),
        digest: entry.hashes.get("document")?.clone(),
        statement,
        words: words(language, statement),
    })
}
