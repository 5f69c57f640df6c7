//! Inspecting bulk.

use std::collections::BTreeMap;

use fellseam::access::Role;
use fellseam::exchange::inspection::{Class, Decision, Defect, Group, Lot, Outcome, Sort};
use fellseam::sample::inspection::{Aql, Level};
use fellseam::spec::{InspectionId, ItemId, SealId, StyleId};
use fellseam::store::{Inspection, NewPiece, PieceSent, Sign, StoreError};

use super::{Brand, Cast, Factory, Party, Person, inches, item};

/// Pieces of a colourway and a size: `sort("ink", "m")`.
pub fn sort(colourway: &str, size: &str) -> Sort {
    Sort {
        colourway: item(&format!("colourway-{colourway}")),
        size: item(&format!("size-{size}")),
    }
}

/// A lot for level II and AQL 2.5 and 4.0.
pub fn lot(groups: &[(&str, &str, u32)]) -> Lot {
    let group = |(colourway, size, pieces): &(&str, &str, u32)| Group {
        sort: sort(colourway, size),
        pieces: *pieces,
    };
    Lot {
        groups: groups.iter().map(group).collect(),
        level: Level::II,
        major: Aql::A2_5,
        minor: Aql::A4_0,
    }
}

/// Ten pieces, of which five are looked at, and no defective one is let pass.
pub fn small_lot() -> Lot {
    let lot = lot(&[("ink", "m", 6), ("chalk", "l", 4)]);
    let plans = lot.plans().expect("a lot");
    assert_eq!(
        (plans.sample(), plans.major.accept, plans.minor.accept),
        (5, 0, 0)
    );
    lot
}

/// A defect: its class, the item (or none) and words.
pub type Seen<'a> = (Class, &'a str, &'a str);

impl Cast {
    /// Somebody who inspects the lots of Sao Mai Garment.
    pub async fn inspector(&self) -> Person {
        let owner = &self.brand.owner;
        let org = &self.sao_mai.org;
        owner.names("Minh", org, Role::Inspector, "en").await
    }

    /// A seal that both sides have signed.
    pub async fn signed_seal(&self) -> SealId {
        self.signed_seal_with(&self.sao_mai).await
    }

    /// The same with another factory.
    pub async fn signed_seal_with(&self, factory: &Factory) -> SealId {
        let round = self.ready_to_seal_with(factory).await;
        let seal = self.seals(&round, &[("HT-17", "Shelf 3")]).await.unwrap();
        self.signs_seal(factory, &seal).await;
        self.signs_seal(&self.brand, &seal).await;
        seal
    }

    pub async fn signs_seal(&self, who: &Party, id: &SealId) {
        let seals = self.store.seals(&who.reads().await).await.unwrap();
        let seal = seals.into_iter().find(|it| it.id == *id);
        let shown = seal.expect("the seal").record().digest().unwrap();
        who.signs(Sign::Seal(id), None, &shown).await.unwrap();
    }
}

impl Party {
    pub async fn inspection(&self, id: &InspectionId) -> Inspection {
        let permit = self.reads().await;
        self.store.inspection(&permit, id).await.unwrap()
    }

    pub async fn inspections(&self) -> Vec<Inspection> {
        self.store.inspections(&self.reads().await).await.unwrap()
    }
}

impl Brand {
    pub async fn decides_lot(
        &self,
        id: &InspectionId,
        decision: Decision,
        reason: &str,
    ) -> Result<(), StoreError> {
        let permit = self.lead.on(&self.style).await;
        let decided = self.store.decide_inspection(&permit, id, decision, reason);
        decided.await
    }
}

impl Person {
    pub async fn begins(
        &self,
        style: &StyleId,
        seal: &SealId,
        lot: &Lot,
        follows: Option<&InspectionId>,
    ) -> Result<InspectionId, StoreError> {
        let permit = self.on(style).await;
        self.store
            .begin_inspection(&permit, seal, lot, follows)
            .await
    }

    /// Enters a piece of the small lot, with what was seen and measured (a point and its inches),
    /// under a new key and over its newest entry: pieces 1 to 3 are ink in M, the others chalk in L.
    pub async fn enters(
        &self,
        style: &StyleId,
        id: &InspectionId,
        piece: u32,
        seen: &[Seen<'_>],
        measured: &[(&str, &str)],
    ) -> Result<PieceSent, StoreError> {
        let reads = self.on(style).await;
        let now = self.store.inspection(&reads, id).await?;
        let corrects = now.newest().get(&piece).map(|it| it.id.clone());
        let items: Vec<ItemId> = seen.iter().map(|(_, id, _)| item(id)).collect();
        let defects = seen
            .iter()
            .zip(&items)
            .map(|((class, id, words), item)| Defect {
                class: *class,
                item: (!id.is_empty()).then_some(item),
                times: 1,
                words,
            });
        let defects: Vec<Defect<'_>> = defects.collect();
        let values = measured.iter();
        let values = values.map(|(point, typed)| (item(point), inches(typed)));
        let values: BTreeMap<_, _> = values.collect();
        let sort = match piece {
            ..=3 => sort("ink", "m"),
            _ => sort("chalk", "l"),
        };
        let key = self.store.world().id();
        let new = NewPiece {
            piece,
            sort: &sort,
            defects: &defects,
            values: &values,
            corrects: corrects.as_ref(),
            language: "en",
            key: &key,
        };
        self.store.inspect(&self.on(style).await, id, new).await
    }

    pub async fn concludes(
        &self,
        style: &StyleId,
        id: &InspectionId,
    ) -> Result<Outcome, StoreError> {
        let permit = self.on(style).await;
        self.store.conclude_inspection(&permit, id).await
    }
}
