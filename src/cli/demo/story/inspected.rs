//! The order of last year's shorts, in two lots: a sample of each is inspected against the sealed
//! pieces. The first was let go, the second is being looked at.

use std::collections::BTreeMap;
use std::iter::repeat_n;

use super::{Story, size_id};
use crate::cli::demo::Failed;
use crate::exchange::inspection::draw::draw;
use crate::exchange::inspection::{Class, Decision, Defect, Group, Lot, Sort};
use crate::sample::inspection::{Aql, Level};
use crate::spec::{InspectionId, SealId, StyleId};
use crate::store::NewPiece;

/// How many pieces of each size there are in each colourway.
const FIRST: [(&str, u32); 4] = [("S", 20), ("M", 30), ("L", 20), ("XL", 10)];
const SECOND: [(&str, u32); 2] = [("M", 12), ("L", 8)];

/// How many pieces of the second lot were looked at so far.
const LOOKED_AT: usize = 4;

/// What was seen, by the number of the piece: few enough to let the lot pass.
const SEEN: [(u32, Class, &str); 3] = [
    (7, Class::Minor, "A loose thread at the hem."),
    (
        19,
        Class::Minor,
        "The topstitching wanders by 2 mm for a hand's width.",
    ),
    (
        23,
        Class::Major,
        "An oil mark on the front, as large as a coin.",
    ),
];

impl Story<'_> {
    pub async fn inspects(&self, style: &StyleId, seal: &SealId) -> Result<(), Failed> {
        let store = &self.app.store;
        let inspector = &self.cast.inspector;
        self.days_ago(20, 0);
        let id = self.looks_at(style, seal, &FIRST, usize::MAX).await?;
        store
            .conclude_inspection(&inspector.on(style).await?, &id)
            .await?;
        self.days_ago(18, 0);
        let permit = self.cast.designer.on(style).await?;
        store
            .decide_inspection(&permit, &id, Decision::Released, "")
            .await?;
        self.days_ago(1, 300);
        self.looks_at(style, seal, &SECOND, LOOKED_AT).await?;
        Ok(())
    }

    /// Begins an inspection of a lot with so many pieces of each size in each colourway, and enters the
    /// first pieces of its sample, or all of them.
    async fn looks_at(
        &self,
        style: &StyleId,
        seal: &SealId,
        sizes: &[(&str, u32)],
        most: usize,
    ) -> Result<InspectionId, Failed> {
        let store = &self.app.store;
        let inspector = &self.cast.inspector;
        let seals = store.seals(&inspector.on(style).await?).await?;
        let sealed = seals.iter().find(|it| it.id == *seal).ok_or("no seal")?;
        let colourways = &sealed.frozen.spec.colourways.colourways;
        let groups = colourways.iter().flat_map(|colourway| {
            sizes.iter().map(|(size, pieces)| Group {
                sort: Sort {
                    colourway: colourway.id.clone(),
                    size: size_id(size),
                },
                pieces: *pieces,
            })
        });
        let lot = Lot {
            groups: groups.collect(),
            level: Level::II,
            major: Aql::A2_5,
            minor: Aql::A4_0,
        };
        let sample = lot.plans().ok_or("no plan")?.sample();
        let permit = inspector.on(style).await?;
        let id = store.begin_inspection(&permit, seal, &lot, None).await?;
        let drawn = draw(&lot.groups, sample);
        let sorts = lot.groups.iter().zip(drawn);
        let sorts = sorts.flat_map(|(group, count)| repeat_n(&group.sort, count as usize));
        for (piece, sort) in (1..).zip(sorts.take(most)) {
            let seen = SEEN.iter().filter(|(of, ..)| *of == piece);
            let defects: Vec<Defect<'_>> = seen
                .map(|(_, class, words)| Defect {
                    class: *class,
                    item: None,
                    times: 1,
                    words,
                })
                .collect();
            let key = store.world().id();
            let new = NewPiece {
                piece,
                sort,
                defects: &defects,
                values: &BTreeMap::new(),
                corrects: None,
                language: "en",
                key: &key,
            };
            store.inspect(&inspector.on(style).await?, &id, new).await?;
        }
        Ok(id)
    }
}
