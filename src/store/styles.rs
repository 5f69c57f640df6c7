//! Styles: the list of the brand, and what is known of one before a permit is given.

use super::act::Said;
use super::drafts::insert_section;
use super::people::still_here;
use super::revisions::newest_in;
use super::{Read, Store, StoreError, values};
use crate::access::{Actor, Permit, Share, Side, StyleFacts, StylePermit, act};
use crate::exchange::ledger::Act;
use crate::spec::{Digest, OrgId, Section, Spec, StyleId, Time};

/// A style in the brand's list.
#[derive(Debug, Clone, PartialEq, Eq, sqlx::FromRow)]
pub struct StyleCard {
    pub id: StyleId,
    pub number: String,
    pub name: String,
    pub made_at: Time,
    /// The newest published revision's number; `None`: never published.
    pub newest: Option<i64>,
    /// Threads that are not settled.
    pub open_threads: i64,
    /// Rounds that are not decided.
    pub open_rounds: i64,
}

/// A style's number and name, for the head of its pages.
#[derive(Debug, Clone, PartialEq, Eq, sqlx::FromRow)]
pub struct StyleName {
    pub number: String,
    pub name: String,
}

/// Another style, by what its brand calls it.
#[derive(Debug, Clone, PartialEq, Eq, sqlx::FromRow)]
pub struct StyleCopy {
    pub id: StyleId,
    pub number: String,
    pub name: String,
}

impl Store {
    /// What a permit on this style is granted from; `None`: there is no such style.
    pub async fn style_facts(
        &self,
        actor: &Actor,
        style: &StyleId,
    ) -> Result<Option<StyleFacts>, StoreError> {
        let row: Option<(Option<OrgId>, Digest, i64)> = self
            .db
            .maybe(
                "SELECT s.org, h.hash, \
                 (SELECT CAST(SUM(o.renamings) AS BIGINT) FROM organisation o) AS renamings \
                 FROM ledger_head h LEFT JOIN share s ON s.style = h.style AND s.org = $2 \
                 AND s.ended_at IS NULL WHERE h.style = $1",
                values![style, actor.org],
            )
            .await?;
        Ok(row.map(|(shared, head, renamings)| {
            facts(style.clone(), actor.side(), shared, head, renamings)
        }))
    }

    /// The brand's styles, newest first.
    pub async fn styles(
        &self,
        _permit: &Permit<act::Browse>,
    ) -> Result<Vec<StyleCard>, StoreError> {
        self.db
            .all(
                "SELECT t.id, t.number, t.name, t.made_at, \
                 (SELECT MAX(r.number) FROM revision r WHERE r.style = t.id) AS newest, \
                 (SELECT COUNT(*) FROM thread h WHERE h.style = t.id \
                     AND h.state NOT IN ('closed', 'granted', 'verified')) AS open_threads, \
                 (SELECT COUNT(*) FROM round o WHERE o.style = t.id AND o.state IN \
                     ('requested', 'in_work', 'dispatched', 'received', 'measured')) AS open_rounds \
                 FROM style t ORDER BY t.made_at DESC, t.id",
                values![],
            )
            .await
    }

    /// The style that this one was copied from.
    pub async fn copied_from(
        &self,
        permit: &StylePermit<act::Review>,
    ) -> Result<Option<StyleCopy>, StoreError> {
        self.db
            .maybe(
                "SELECT f.id, f.number, f.name FROM style s JOIN style f ON f.id = s.copied_from \
                 WHERE s.id = $1",
                values![permit.style()],
            )
            .await
    }

    /// The style's number and name: for a factory those of the newest published revision, since a
    /// draft's are none of its business.
    pub async fn style_name(
        &self,
        permit: &StylePermit<act::Read>,
    ) -> Result<StyleName, StoreError> {
        if permit.side() == Side::Factory {
            let newest = newest_in(self, &self.db, permit.style()).await?;
            let header = &newest.frozen.spec.header;
            return Ok(StyleName {
                number: header.number.clone(),
                name: header.name.clone(),
            });
        }
        self.db
            .one(
                "SELECT number, name FROM style WHERE id = $1",
                values![permit.style()],
            )
            .await
    }

    /// Starts a style from a spec that has at least a number and a name.
    ///
    /// Errors: `Unique` when another style has the number.
    pub async fn create_style(
        &self,
        permit: &Permit<act::Create>,
        start: &Spec,
    ) -> Result<StyleId, StoreError> {
        self.begin_style(permit, start, None).await
    }

    /// Starts a style from what another's draft says. The files that the other uses are used by
    /// the new one as well.
    ///
    /// Errors: `Unique` when another style has the number.
    pub async fn copy_style(
        &self,
        permit: &Permit<act::Create>,
        from: &StylePermit<act::Review>,
        start: &Spec,
    ) -> Result<StyleId, StoreError> {
        self.begin_style(permit, start, Some(from.style())).await
    }

    async fn begin_style(
        &self,
        permit: &Permit<act::Create>,
        start: &Spec,
        from: Option<&StyleId>,
    ) -> Result<StyleId, StoreError> {
        let style = StyleId::new(self.world.id());
        let now = self.world.now();
        let tx = self.db.begin().await?;
        still_here(&tx, permit.person(), permit.role()).await?;
        tx.run(
            "INSERT INTO style (id, number, name, made_at, made_by, copied_from) \
             VALUES ($1, $2, $3, $4, $5, $6)",
            values![
                style,
                start.header.number,
                start.header.name,
                now,
                permit.person(),
                from
            ],
        )
        .await?;
        for section in Section::ALL {
            let id = self.world.id();
            insert_section(&tx, &style, *section, start, permit.person(), &now, id).await?;
        }
        tx.run(
            "INSERT INTO file_use (style, file, revision, org) \
             SELECT $1, u.file, 0, '' FROM file_use u \
             WHERE u.style = $2 AND u.revision = 0 AND u.org = ''",
            values![style, from],
        )
        .await?;
        let mut act = self
            .first_act(tx, &style, permit.person(), permit.org())
            .await?;
        let said = Said {
            internal: true,
            ..Said::default()
        };
        let said = said.id("style", &style);
        let said = match from {
            Some(from) => said.id("copied_from", from),
            None => said,
        };
        act.record(Act::Create, said).await?;
        act.commit().await?;
        Ok(style)
    }
}

/// What was read of a style for somebody of this side: the share of their organisation, the end of
/// the ledger, and how often people were renamed.
pub(super) fn facts(
    style: StyleId,
    side: Side,
    shared: Option<OrgId>,
    head: Digest,
    renamings: i64,
) -> StyleFacts {
    StyleFacts {
        style,
        share: shared
            .filter(|_| side == Side::Factory)
            .map(|org| Share { org }),
        // The ledger's end moves with every act; renaming somebody is none.
        edition: format!("{head} {renamings}"),
    }
}
