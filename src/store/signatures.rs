//! Signatures of revisions, rounds and seals.

use super::act::Said;
use super::people::name_of;
use super::revisions::facts_in;
use super::rounds::rounds_in;
use super::seals::seals_in;
use super::threads::threads_in;
use super::{Read, Store, StoreError, values};
use crate::access::{Role, Side, StylePermit, act};
use crate::exchange::ledger::Act;
use crate::exchange::revision;
use crate::exchange::signature::{Signed, Signing, Subject, SubjectKind, may_sign};
use crate::spec::{
    Digest, OrgId, PersonId, RevisionId, RoundId, SealId, SignatureId, StyleId, ThreadId, Time,
};

/// A signature that was given.
#[derive(Debug, Clone, PartialEq, Eq, sqlx::FromRow)]
pub struct Signature {
    pub id: SignatureId,
    pub subject: SubjectKind,
    /// The revision's, the round's or the seal's id.
    pub subject_id: String,
    /// The factory that it is with or by.
    pub org: OrgId,
    pub side: Side,
    /// Kept for the owner's retention period, beyond an erasing of the person.
    pub name: Option<String>,
    pub role: Role,
    pub at: Time,
    /// The signer's own clock: as the browser said it, with its offset.
    pub local_time: String,
    pub digest: Digest,
    pub language: String,
    pub screen: Digest,
}

/// What is signed.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Sign<'a> {
    /// A revision, by its number.
    Revision(u32),
    Round(&'a RoundId),
    Seal(&'a SealId),
}

/// What the signing form says.
#[derive(Debug, Clone)]
pub struct SignForm<'a> {
    pub what: Sign<'a>,
    /// With which factory, when the brand signs a revision; otherwise known.
    pub org: Option<&'a OrgId>,
    /// The digest that the page showed.
    pub shown: &'a Digest,
    /// The digest of the statement as it was on the screen.
    pub screen: &'a Digest,
    /// BCP 47.
    pub language: &'a str,
    pub local_time: &'a str,
}

async fn signed_in(
    db: &impl Read,
    style: &StyleId,
    tenant: Option<&OrgId>,
) -> Result<Vec<Signed>, StoreError> {
    let rows: Vec<(PersonId, Side, OrgId, SubjectKind, String)> = db
        .all(
            "SELECT person, side, org, subject, subject_id FROM signature \
             WHERE style = $1 AND (CAST($2 AS TEXT) IS NULL OR org = $2)",
            values![style, tenant],
        )
        .await?;
    Ok(rows
        .into_iter()
        .map(|(person, side, factory, kind, subject)| Signed {
            person,
            side,
            factory,
            kind,
            subject,
        })
        .collect())
}

impl Store {
    /// Who has signed what on a style, for the rules of signing: a factory sees what was signed
    /// with itself. What is shown comes from [`signatures`](Self::signatures).
    pub async fn signed(&self, permit: &StylePermit<act::Read>) -> Result<Vec<Signed>, StoreError> {
        signed_in(&self.db, permit.style(), permit.tenant()).await
    }

    /// The signatures given on a style: a factory sees those with itself.
    pub async fn signatures(
        &self,
        permit: &StylePermit<act::Read>,
    ) -> Result<Vec<Signature>, StoreError> {
        self.db
            .all(
                "SELECT s.id, s.subject, s.subject_id, s.org, s.side, x.content AS name, s.role, \
                 s.at, s.local_time, s.digest, s.language, s.screen FROM signature s \
                 JOIN private_text x ON x.id = s.name \
                 WHERE s.style = $1 AND (CAST($2 AS TEXT) IS NULL OR s.org = $2) \
                 ORDER BY s.at, s.id",
                values![permit.style(), permit.tenant()],
            )
            .await
    }

    /// The must-fixes that a round's decision made, by id.
    pub async fn must_fixes_of(
        &self,
        permit: &StylePermit<act::Read>,
        round: &RoundId,
    ) -> Result<Vec<ThreadId>, StoreError> {
        must_fixes_in(&self.db, permit.style(), permit.tenant(), round).await
    }

    /// Signs a revision, a decided round or a seal for the holder's side.
    pub async fn sign(
        &self,
        permit: &StylePermit<act::Sign>,
        form: SignForm<'_>,
    ) -> Result<SignatureId, StoreError> {
        let mut act = self.act(permit).await?;
        let style = act.style.clone();
        let signed = signed_in(&act.tx, &style, None).await?;
        let facts = facts_in(&act.tx, &style).await?;
        // Of a seal: the round that the pieces are of.
        let mut of_round = None;
        let (org, subject_id, to_sign, kind, number) = match form.what {
            Sign::Revision(n) => {
                let org = permit.tenant().or(form.org).ok_or(StoreError::Missing)?;
                let (id, digest): (RevisionId, Digest) = act
                    .tx
                    .one(
                        "SELECT id, digest FROM revision WHERE style = $1 AND number = $2",
                        values![style, n],
                    )
                    .await?;
                let standing = revision::standing(n, &facts).ok_or(StoreError::Missing)?;
                let shared: Option<(String,)> = act
                    .tx
                    .maybe(
                        "SELECT org FROM share WHERE style = $1 AND org = $2 \
                         AND ended_at IS NULL",
                        values![style, org],
                    )
                    .await?;
                let acknowledged: Option<(String,)> = act
                    .tx
                    .maybe(
                        "SELECT at FROM acknowledgement WHERE revision = $1 AND org = $2",
                        values![id, org],
                    )
                    .await?;
                let threads = threads_in(&act.tx, &style, Some(org)).await?;
                let to_sign = may_sign(&Signing {
                    by: permit.actor(),
                    factory: org,
                    subject: Subject::Revision {
                        number: n,
                        digest: &digest,
                        standing: &standing,
                        shared: shared.is_some(),
                        acknowledged: acknowledged.is_some(),
                    },
                    subject_id: id.as_str(),
                    shown: form.shown,
                    threads: &threads,
                    signed: &signed,
                })
                .map_err(StoreError::refused(&style))?;
                let id = id.as_str().to_owned();
                (org.clone(), id, to_sign, SubjectKind::Revision, n)
            }
            Sign::Round(id) => {
                let rounds = rounds_in(self, &act.tx, &style, permit.tenant()).await?;
                let round = rounds
                    .into_iter()
                    .find(|round| round.id == *id)
                    .ok_or(StoreError::Missing)?;
                let must_fixes = must_fixes_in(&act.tx, &style, permit.tenant(), id).await?;
                // Before a decision there is no record, and the rules refuse for that reason.
                let digest = match round.record(must_fixes) {
                    Some(record) => record
                        .digest()
                        .map_err(|cause| StoreError::corrupt("round", "id", id.as_str(), cause))?,
                    None => round.digest.clone(),
                };
                let threads = threads_in(&act.tx, &style, Some(&round.org)).await?;
                let to_sign = may_sign(&Signing {
                    by: permit.actor(),
                    factory: &round.org,
                    subject: Subject::Round {
                        revision: round.revision,
                        digest: &digest,
                        state: round.state,
                    },
                    subject_id: id.as_str(),
                    shown: form.shown,
                    threads: &threads,
                    signed: &signed,
                })
                .map_err(StoreError::refused(&style))?;
                let subject_id = id.as_str().to_owned();
                (
                    round.org,
                    subject_id,
                    to_sign,
                    SubjectKind::Round,
                    round.number,
                )
            }
            Sign::Seal(id) => {
                let seals = seals_in(self, &act.tx, &style, permit.tenant()).await?;
                let seal = seals.into_iter().find(|seal| seal.id == *id);
                let seal = seal.ok_or(StoreError::Missing)?;
                let unwritable = |cause| StoreError::corrupt("seal", "id", id.as_str(), cause);
                let digest = seal.record().digest().map_err(unwritable)?;
                let threads = threads_in(&act.tx, &style, Some(&seal.org)).await?;
                let to_sign = may_sign(&Signing {
                    by: permit.actor(),
                    factory: &seal.org,
                    subject: Subject::Seal {
                        revision: seal.revision,
                        digest: &digest,
                    },
                    subject_id: id.as_str(),
                    shown: form.shown,
                    threads: &threads,
                    signed: &signed,
                })
                .map_err(StoreError::refused(&style))?;
                of_round = Some(seal.round);
                let subject_id = id.as_str().to_owned();
                (
                    seal.org,
                    subject_id,
                    to_sign,
                    SubjectKind::Seal,
                    seal.number,
                )
            }
        };
        let id = SignatureId::new(self.world.id());
        let name = name_of(&act.tx, permit.person()).await?.unwrap_or_default();
        let (name, name_hash) = act.keep_text("signed_name", &name).await?;
        let chain = act.head().hash.clone();
        act.tx
            .run(
                "INSERT INTO signature (id, style, subject, subject_id, org, side, person, role, \
                 at, local_time, digest, language, screen, statement, name, name_hash, chain) \
                 VALUES ($1, $2, $3, $4, $5, $6, $7, $8, $9, $10, $11, $12, $13, $14, $15, $16, \
                 $17)",
                values![
                    id,
                    style,
                    kind,
                    subject_id,
                    org,
                    permit.side(),
                    permit.person(),
                    permit.role(),
                    act.at,
                    form.local_time,
                    to_sign.digest,
                    form.language,
                    form.screen,
                    to_sign.statement.name(),
                    name,
                    name_hash,
                    chain
                ],
            )
            .await?;
        let mut said = Said::default()
            .to(&org)
            .id("signature", &id)
            .id("side", permit.side().name())
            .id("role", permit.role().name())
            .id("subject", &subject_id)
            .id(kind.name(), number)
            .id("statement", to_sign.statement.name())
            .id("language", form.language)
            .id("local_time", form.local_time)
            .hash("document", &to_sign.digest)
            .hash("screen", form.screen)
            .hash("name", &name_hash);
        if let Some(round) = of_round {
            said = said.id("round_id", round);
        }
        act.record(Act::Sign, said).await?;
        act.commit().await?;
        Ok(id)
    }
}

pub(super) async fn must_fixes_in(
    db: &impl Read,
    style: &StyleId,
    tenant: Option<&OrgId>,
    round: &RoundId,
) -> Result<Vec<ThreadId>, StoreError> {
    let rows: Vec<(ThreadId,)> = db
        .all(
            "SELECT id FROM thread WHERE style = $1 AND round = $2 \
             AND (CAST($3 AS TEXT) IS NULL OR org = $3) ORDER BY id",
            values![style, round, tenant],
        )
        .await?;
    Ok(rows.into_iter().map(|(id,)| id).collect())
}
