//! Options that wait for the brand's decision, and things that wait for a factory's options.

use super::{Need, What};
use crate::access::{Permit, Side, act};
use crate::exchange::approval::{needed, standing};
use crate::spec::{OrgId, StyleId, Time};
use crate::store::act::number;
use crate::store::approvals::{Submission, submissions_in};
use crate::store::revisions::newest_in;
use crate::store::{Read, Store, StoreError, values};

/// A style with a factory, and since when something waits.
#[derive(sqlx::FromRow)]
struct Row {
    style: StyleId,
    org: OrgId,
    number: String,
    name: String,
    org_name: String,
    since: Time,
    count: i64,
}

impl Row {
    fn need(self, count: usize) -> Need {
        Need {
            style: self.style,
            number: self.number,
            name: self.name,
            org_name: self.org_name,
            since: self.since,
            what: What::Approvals {
                org: self.org,
                count,
            },
        }
    }
}

impl Store {
    pub(super) async fn approval_needs(
        &self,
        permit: &Permit<act::Enter>,
    ) -> Result<Vec<Need>, StoreError> {
        match permit.side() {
            Side::Brand => self.undecided().await,
            Side::Factory => self.to_submit(permit.org()).await,
        }
    }

    async fn undecided(&self) -> Result<Vec<Need>, StoreError> {
        let rows: Vec<Row> = self
            .db
            .all(
                "SELECT b.style, b.org, t.number, t.name, o.name AS org_name, \
                 MIN(b.at) AS since, COUNT(*) AS count FROM submission b \
                 JOIN style t ON t.id = b.style JOIN organisation o ON o.id = b.org \
                 JOIN share s ON s.style = b.style AND s.org = b.org AND s.ended_at IS NULL \
                 WHERE NOT EXISTS (SELECT 1 FROM submission_decision d WHERE d.submission = b.id) \
                 GROUP BY b.style, b.org, t.number, t.name, o.name",
                values![],
            )
            .await?;
        let need = |row: Row| {
            let count = number("submission", "count", row.style.as_str(), row.count)?;
            Ok(row.need(count))
        };
        rows.into_iter().map(need).collect()
    }

    /// Once a round before bulk was asked for, or one of bulk: until then there is time.
    async fn to_submit(&self, org: &OrgId) -> Result<Vec<Need>, StoreError> {
        let rows: Vec<Row> = self
            .db
            .all(
                "SELECT r.style, r.org, t.number, t.name, o.name AS org_name, \
                 MIN(r.made_at) AS since, COUNT(*) AS count FROM round r \
                 JOIN style t ON t.id = r.style JOIN organisation o ON o.id = r.org \
                 JOIN share s ON s.style = r.style AND s.org = r.org AND s.ended_at IS NULL \
                 WHERE r.org = $1 AND r.kind IN ('pre_production', 'top_of_production') \
                 AND r.state <> 'cancelled' \
                 AND NOT EXISTS (SELECT 1 FROM withdrawal w JOIN revision v ON v.id = w.revision \
                     WHERE v.style = r.style AND v.number = (SELECT MAX(x.number) FROM revision x \
                         WHERE x.style = r.style)) \
                 GROUP BY r.style, r.org, t.number, t.name, o.name",
                values![org],
            )
            .await?;
        let mut needs = Vec::new();
        for row in rows {
            let newest = newest_in(self, &self.db, &row.style).await?.frozen;
            let submitted = submissions_in(self, &self.db, &row.style, Some(org)).await?;
            let offered: Vec<_> = submitted.iter().map(Submission::offered).collect();
            let things = needed(&newest.spec).into_iter();
            let open = things.filter(|thing| {
                let stands = standing(&thing.anchor, &newest.spec, &offered).0;
                stands.waits_for() == Some(Side::Factory)
            });
            match open.count() {
                0 => {}
                count => needs.push(row.need(count)),
            }
        }
        Ok(needs)
    }
}
