//! Beginning an inspection, and what keeps from it.

use super::{Inspection, inspections_in, to_json};
use crate::access::{Side, StylePermit, act};
use crate::exchange::Refused;
use crate::exchange::inspection::{self, Again, Beginning, Lot};
use crate::exchange::ledger::Act;
use crate::exchange::revision;
use crate::spec::{InspectionId, OrgId, SealId, StyleId};
use crate::store::act::Said;
use crate::store::revisions::facts_in;
use crate::store::seals::{Seal, seals_in};
use crate::store::shares::shared_with;
use crate::store::{Read, Store, StoreError, values};

/// What is known of a seal that somebody wants to inspect bulk against, read at one time.
pub struct ToInspect {
    pub seal: Seal,
    /// For a lot that was mended: how it was inspected before.
    pub before: Option<Inspection>,
    /// Everything that keeps bulk from being inspected.
    pub blocks: Vec<Refused>,
    unsigned: Vec<Side>,
    shared: bool,
    current: Option<u32>,
}

impl ToInspect {
    fn ask<T>(&self, ask: impl FnOnce(&Beginning<'_>) -> T) -> T {
        ask(&Beginning {
            unsigned: &self.unsigned,
            shared: self.shared,
            revision: self.seal.revision,
            current: self.current,
            spec: &self.seal.frozen.spec,
            chart: &self.seal.frozen.chart,
            again: self.before.as_ref().map(|it| Again {
                lot: &it.lot,
                state: it.state(),
                followed: it.followed_by.is_some(),
            }),
        })
    }
}

async fn to_inspect_in(
    store: &Store,
    db: &impl Read,
    style: &StyleId,
    tenant: Option<&OrgId>,
    seal: &SealId,
    follows: Option<&InspectionId>,
) -> Result<ToInspect, StoreError> {
    let mut seals = seals_in(store, db, style, tenant).await?.into_iter();
    let seal = seals.find(|it| it.id == *seal).ok_or(StoreError::Missing)?;
    let before = match follows {
        None => None,
        Some(id) => {
            let mut all = inspections_in(store, db, style, tenant).await?.into_iter();
            let before = all.find(|it| it.id == *id && it.org == seal.org);
            Some(before.ok_or(StoreError::Missing)?)
        }
    };
    let signed: Vec<(Side,)> = db
        .all(
            "SELECT side FROM signature WHERE style = $1 AND subject = 'seal' AND subject_id = $2",
            values![style, seal.id],
        )
        .await?;
    let unsigned = [Side::Factory, Side::Brand].into_iter();
    let mut known = ToInspect {
        unsigned: unsigned.filter(|it| !signed.contains(&(*it,))).collect(),
        shared: match shared_with(db, style, &seal.org).await {
            Ok(()) => true,
            Err(StoreError::Missing) => false,
            Err(other) => return Err(other),
        },
        current: revision::current(&facts_in(db, style).await?),
        seal,
        before,
        blocks: Vec::new(),
    };
    known.blocks = known.ask(inspection::blocks);
    Ok(known)
}

impl Store {
    /// What keeps bulk from being inspected against a seal; `follows`, where the lot was mended.
    ///
    /// Errors: `Missing` when there is no such seal or inspection for the holder.
    pub async fn to_inspect(
        &self,
        permit: &StylePermit<act::Read>,
        seal: &SealId,
        follows: Option<&InspectionId>,
    ) -> Result<ToInspect, StoreError> {
        let (style, tenant) = (permit.style(), permit.tenant());
        to_inspect_in(self, &self.db, style, tenant, seal, follows).await
    }

    /// Begins the inspection of a lot.
    ///
    /// Errors: `Missing` when the seal, or the inspection that it follows, is not there; `Refused` by
    /// the rules.
    pub async fn begin_inspection(
        &self,
        permit: &StylePermit<act::Inspect>,
        seal: &SealId,
        lot: &Lot,
        follows: Option<&InspectionId>,
    ) -> Result<InspectionId, StoreError> {
        let mut act = self.act(permit).await?;
        let style = act.style.clone();
        let tenant = permit.tenant();
        let known = to_inspect_in(self, &act.tx, &style, tenant, seal, follows).await?;
        known
            .ask(|facts| inspection::begin(facts, lot))
            .map_err(StoreError::refused(&style))?;
        let org = &known.seal.org;
        let before = inspections_in(self, &act.tx, &style, Some(org)).await?;
        let number = before.len() as i64 + 1;
        let id = InspectionId::new(self.world.id());
        let groups = to_json(&lot.groups);
        act.tx
            .run(
                "INSERT INTO inspection (id, style, seal, org, number, at, person, lot, level, \
                 aql_major, aql_minor, follows) \
                 VALUES ($1, $2, $3, $4, $5, $6, $7, $8, $9, $10, $11, $12)",
                values![
                    id,
                    style,
                    seal,
                    org,
                    number,
                    act.at,
                    permit.person(),
                    groups,
                    lot.level,
                    lot.major,
                    lot.minor,
                    follows
                ],
            )
            .await?;
        let mut said = Said::default()
            .to(org)
            .id("inspection", &id)
            .id("number", number)
            .id("seal", seal)
            .id("revision", known.seal.revision)
            .id("pieces", lot.size())
            .id("lot", &groups)
            .id("level", lot.level.name())
            .id("aql_major", lot.major.name())
            .id("aql_minor", lot.minor.name());
        if let Some(follows) = follows {
            said = said.id("follows", follows);
        }
        act.record(Act::BeginInspection, said).await?;
        act.commit().await?;
        Ok(id)
    }
}
