//! What is told of a round's pieces beside their values: why a point was not measured, and
//! photographs.

use std::collections::{BTreeMap, BTreeSet};

use super::act::{Said, StyleAct};
use super::messages::{Photo, PictureRow, keep_photo};
use super::rounds::round_in;
use super::{Read, Store, StoreError, values};
use crate::access::{Side, StylePermit, act};
use crate::exchange::ledger::Act;
use crate::exchange::measuring::{Reason, may_measure};
use crate::spec::{Digest, ItemId, OrgId, PersonId, PieceId, RoundId, StyleId, Time};

/// The most photographs that one piece has.
pub const MOST_PIECE_PHOTOS: usize = 24;

/// Why a point of a piece was not measured.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Skipped {
    pub piece: PieceId,
    pub point: ItemId,
    pub reason: Reason,
    pub side: Side,
    /// `None`: erased.
    pub person: Option<String>,
    pub at: Time,
}

/// A reason to be kept.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct NewSkip {
    pub piece: PieceId,
    pub point: ItemId,
    pub reason: Reason,
    /// The sender's own key: the same key twice is one reason.
    pub key: String,
}

/// A photograph of a piece.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct PiecePhoto {
    pub piece: PieceId,
    pub side: Side,
    /// `None`: erased.
    pub person: Option<String>,
    pub at: Time,
    /// `None`: erased.
    pub photo: Option<Photo>,
}

#[derive(sqlx::FromRow)]
struct SkipRow {
    round: RoundId,
    piece: PieceId,
    point: ItemId,
    reason: Reason,
    side: Side,
    person: Option<String>,
    at: Time,
}

#[derive(sqlx::FromRow)]
struct PhotoRow {
    piece: PieceId,
    side: Side,
    person: Option<String>,
    at: Time,
    #[sqlx(flatten)]
    picture: PictureRow,
}

impl Store {
    /// Keeps why a point of a piece was not measured. Whether it is kept under this key now, which it
    /// is not when the key came before with something else.
    ///
    /// Errors: `Missing` when the piece or point is not there; `Refused` when no value could be added
    /// either.
    pub async fn skip(
        &self,
        permit: &StylePermit<act::Measure>,
        id: &RoundId,
        new: &NewSkip,
    ) -> Result<bool, StoreError> {
        let side = permit.side();
        let mut act = self.act(permit).await?;
        let round = round_in(self, &act, permit.tenant(), id).await?;
        if let Some(same) = came_before(&act, id, permit.person(), new).await? {
            return Ok(same);
        }
        let known = round.pieces.iter().any(|piece| piece.id == new.piece)
            && round.frozen.chart.row(&new.point).is_some();
        if !known {
            return Err(StoreError::Missing);
        }
        may_measure(round.state, side, false).map_err(StoreError::refused(permit.style()))?;
        let skip = self.world.id();
        let inserted = act
            .tx
            .run(
                "INSERT INTO skip (id, round, seq, piece, point, reason, person, side, at, key) \
                 VALUES ($1, $2, $3, $4, $5, $6, $7, $8, $9, $10) ON CONFLICT (key) DO NOTHING",
                values![
                    skip,
                    id,
                    round.skips.len() as i64 + 1,
                    new.piece,
                    new.point,
                    new.reason,
                    permit.person(),
                    side,
                    act.at,
                    new.key
                ],
            )
            .await?;
        if inserted == 0 {
            // Kept meanwhile by another style: this one is locked.
            return Ok(false);
        }
        let said = Said::default()
            .to(&round.org)
            .id("round", id)
            .id("number", round.number)
            .id("skip", &skip)
            .id("piece", &new.piece)
            .id("point", &new.point)
            .id("reason", new.reason.name())
            .id("key", &new.key);
        act.record(Act::Skip, said).await?;
        act.commit().await?;
        Ok(true)
    }

    /// Adds photographs, which were uploaded before, to a piece; those that it has of this side
    /// already are left out. How many it has now; `None`, and nothing is added, when that would be
    /// more than [`MOST_PIECE_PHOTOS`].
    ///
    /// Errors: `Missing` when the piece or a photograph is not there; `Refused` when no value could be
    /// added either.
    pub async fn photograph_piece(
        &self,
        permit: &StylePermit<act::Measure>,
        id: &RoundId,
        piece: &PieceId,
        photos: &[Digest],
    ) -> Result<Option<usize>, StoreError> {
        let side = permit.side();
        let mut act = self.act(permit).await?;
        let round = round_in(self, &act, permit.tenant(), id).await?;
        let piece = round.pieces.iter().find(|it| it.id == *piece);
        let piece = &piece.ok_or(StoreError::Missing)?.id;
        may_measure(round.state, side, false).map_err(StoreError::refused(permit.style()))?;
        let there = photos_in(&act.tx, &act.style, None, id).await?;
        let there: Vec<&PiecePhoto> = there.iter().filter(|it| it.piece == *piece).collect();
        let ours = there.iter().filter(|it| it.side == side);
        let ours = ours.filter_map(|it| it.photo.as_ref());
        let mut known: BTreeSet<&Digest> = ours.map(|it| &it.digest).collect();
        let new: Vec<&Digest> = photos.iter().filter(|it| known.insert(it)).collect();
        let count = there.len() + new.len();
        if count > MOST_PIECE_PHOTOS {
            return Ok(None);
        }
        for (seq, photo) in (there.len() + 1..).zip(new) {
            let (text, hash) = keep_photo(&act, photo, &round.org).await?;
            act.tx
                .run(
                    "INSERT INTO piece_photo (piece, seq, person, side, at, photo, photo_hash) \
                     VALUES ($1, $2, $3, $4, $5, $6, $7)",
                    values![piece, seq as i64, permit.person(), side, act.at, text, hash],
                )
                .await?;
            let said = Said::default()
                .to(&round.org)
                .id("round", id)
                .id("number", round.number)
                .id("piece", piece)
                .id("seq", seq)
                .hash("photo", &hash);
            act.record(Act::Photograph, said).await?;
        }
        act.commit().await?;
        Ok(Some(count))
    }

    /// The photographs of a round's pieces, in the order they came in.
    pub async fn piece_photos(
        &self,
        permit: &StylePermit<act::Read>,
        id: &RoundId,
    ) -> Result<Vec<PiecePhoto>, StoreError> {
        photos_in(&self.db, permit.style(), permit.tenant(), id).await
    }
}

async fn photos_in(
    db: &impl Read,
    style: &StyleId,
    tenant: Option<&OrgId>,
    id: &RoundId,
) -> Result<Vec<PiecePhoto>, StoreError> {
    let rows: Vec<PhotoRow> = db
        .all(
            "SELECT h.piece, h.side, n.content AS person, h.at, x.content, f.width, f.height, \
             f.taken FROM piece_photo h JOIN piece p ON p.id = h.piece \
             JOIN round r ON r.id = p.round JOIN private_text x ON x.id = h.photo \
             LEFT JOIN private_text n ON n.person = h.person AND n.kind = 'name' \
             LEFT JOIN file f ON f.digest = x.content \
             WHERE r.style = $1 AND r.id = $3 AND (CAST($2 AS TEXT) IS NULL OR r.org = $2) \
             ORDER BY p.number, h.seq",
            values![style, tenant, id],
        )
        .await?;
    let photo = |row: PhotoRow| {
        Ok(PiecePhoto {
            photo: row.picture.photo(row.piece.as_str())?,
            piece: row.piece,
            side: row.side,
            person: row.person,
            at: row.at,
        })
    };
    rows.into_iter().map(photo).collect()
}

/// Why points were not measured, by round; with one factory, when `tenant` is given.
pub(super) async fn skips_of(
    db: &impl Read,
    style: &StyleId,
    tenant: Option<&OrgId>,
) -> Result<BTreeMap<RoundId, Vec<Skipped>>, StoreError> {
    let rows: Vec<SkipRow> = db
        .all(
            "SELECT k.round, k.piece, k.point, k.reason, k.side, n.content AS person, k.at \
             FROM skip k JOIN round r ON r.id = k.round \
             LEFT JOIN private_text n ON n.person = k.person AND n.kind = 'name' \
             WHERE r.style = $1 AND (CAST($2 AS TEXT) IS NULL OR r.org = $2) \
             ORDER BY k.round, k.seq",
            values![style, tenant],
        )
        .await?;
    let mut found: BTreeMap<RoundId, Vec<Skipped>> = BTreeMap::new();
    for row in rows {
        found.entry(row.round).or_default().push(Skipped {
            piece: row.piece,
            point: row.point,
            reason: row.reason,
            side: row.side,
            person: row.person,
            at: row.at,
        });
    }
    Ok(found)
}

/// Whether this key was kept before, and then whether with just this.
async fn came_before(
    act: &StyleAct<'_>,
    round: &RoundId,
    person: &PersonId,
    new: &NewSkip,
) -> Result<Option<bool>, StoreError> {
    let before: Option<(RoundId, PieceId, ItemId, Reason, PersonId)> = act
        .tx
        .maybe(
            "SELECT round, piece, point, reason, person FROM skip WHERE key = $1",
            values![new.key],
        )
        .await?;
    let same = (
        round.clone(),
        new.piece.clone(),
        new.point.clone(),
        new.reason,
        person.clone(),
    );
    Ok(before.map(|before| before == same))
}
