//! Decisions on rounds, and the must-fixes that come of them.

use super::act::{Said, StyleAct};
use super::messages::{Says, say_in};
use super::rounds::{Round, round_in, set_state};
use super::threads::{InsertThread, insert_thread, threads_in};
use super::{Store, StoreError, values};
use crate::access::{Side, StylePermit, act};
use crate::exchange::ledger::Act;
use crate::exchange::round::{self, Change, Deciding, Outcome};
use crate::exchange::thread;
use crate::spec::{ItemId, RoundId};

/// A decision to be made.
#[derive(Debug, Clone)]
pub struct Decide<'a> {
    pub outcome: Outcome,
    pub reason: &'a str,
    pub changes: &'a [Change],
    /// The language of the words, BCP 47.
    pub language: &'a str,
}

impl Store {
    /// Decides a round; *approved with changes* raises its must-fixes.
    pub async fn decide(
        &self,
        permit: &StylePermit<act::Decide>,
        id: &RoundId,
        form: Decide<'_>,
    ) -> Result<(), StoreError> {
        let mut act = self.act(permit).await?;
        let round = round_in(self, &act, None, id).await?;
        decide_in(self, &mut act, permit, &round, form).await?;
        act.commit().await
    }
}

/// Decides a round in an act.
pub(super) async fn decide_in(
    store: &Store,
    act: &mut StyleAct<'_>,
    permit: &StylePermit<act::Decide>,
    round: &Round,
    form: Decide<'_>,
) -> Result<(), StoreError> {
    let style = act.style.clone();
    let id = &round.id;
    let threads = threads_in(&act.tx, &style, Some(&round.org)).await?;
    let conceded = |point: &ItemId| threads.iter().any(|it| it.concedes(point, round.revision));
    let mut critical_out = round.summary().critical_out;
    critical_out.retain(|point, _| !conceded(point));
    let items = round.frozen.spec.items().map(|item| item.id().clone());
    let items = items.collect();
    let decided = round::decide(
        round.state,
        permit.actor(),
        &Deciding {
            outcome: form.outcome,
            reason: form.reason,
            changes: form.changes,
            items: &items,
            measured: round.measurements.len(),
            critical_out: &critical_out.into_keys().collect(),
        },
    )
    .map_err(StoreError::refused(&style))?;
    let decision = store.world.id();
    let (reason, reason_hash) = act.keep_text("message", form.reason.trim()).await?;
    act.tx
        .run(
            "INSERT INTO decision (id, round, outcome, at, person, reason, reason_hash) \
             VALUES ($1, $2, $3, $4, $5, $6, $7)",
            values![
                decision,
                id,
                form.outcome,
                act.at,
                permit.person(),
                reason,
                reason_hash
            ],
        )
        .await?;
    set_state(act, id, decided.state).await?;
    let said = Said::default()
        .to(&round.org)
        .id("round", id)
        .id("number", round.number)
        .id("decision", &decision)
        .id("outcome", form.outcome.name())
        .hash("reason", &reason_hash);
    act.record(Act::Decide, said).await?;
    for change in &decided.must_fixes {
        let new = InsertThread {
            org: &round.org,
            item: &change.item,
            revision: round.revision,
            kind: thread::Kind::MustFix,
            side: Side::Brand,
            person: permit.person(),
            round: Some(id),
        };
        let thread = insert_thread(store, act, new).await?;
        let says = Says {
            text: change.text.trim(),
            language: form.language,
            photos: &[],
        };
        let said = say_in(
            store,
            act,
            Side::Brand,
            permit.person(),
            &thread,
            &round.org,
            says,
        )
        .await?;
        let said = said
            .to(&round.org)
            .id("thread", &thread)
            .id("item", &change.item)
            .id("revision", round.revision)
            .id("kind", thread::Kind::MustFix.name())
            .id("round", id);
        act.record(Act::Ask, said).await?;
    }
    Ok(())
}
