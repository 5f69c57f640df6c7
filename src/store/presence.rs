//! Who has which section of a draft open: signs from open pages, which count for a while. For the
//! brand alone; across instances they meet in the table, and who listens is told when somebody
//! comes or goes.

use super::events::{Audience, Event};
use super::people::still_here;
use super::world::later;
use super::{Read, Store, StoreError, values};
use crate::access::{StylePermit, act};
use crate::spec::{PersonId, Section, Time};

/// How long a page counts as open after its last sign, in seconds. Pages give one every 20 seconds;
/// browsers let those in the background speak once a minute.
const SILENCE: i64 = 70;

/// Somebody who has a section open.
#[derive(Debug, Clone, PartialEq, Eq, sqlx::FromRow)]
pub struct Present {
    pub section: Section,
    pub person: PersonId,
    /// `None`: erased.
    pub name: Option<String>,
    /// Since when, in the window that has had it open longest.
    pub since: Time,
}

impl Store {
    /// The others who have a section of the draft open now, whoever came first before the rest.
    pub async fn others_here(
        &self,
        permit: &StylePermit<act::Review>,
    ) -> Result<Vec<Present>, StoreError> {
        self.db
            .all(
                "SELECT p.section, p.person, n.content AS name, MIN(p.since) AS since \
                 FROM presence p \
                 LEFT JOIN private_text n ON n.person = p.person AND n.kind = 'name' \
                 WHERE p.style = $1 AND p.person <> $2 AND p.seen_at > $3 \
                 GROUP BY p.section, p.person, n.content ORDER BY 4, p.person",
                values![permit.style(), permit.person(), self.silent_since()],
            )
            .await
    }

    /// The holder has this section open in the page of this name.
    ///
    /// Errors: `Missing` when the permit no longer holds.
    pub async fn stays(
        &self,
        permit: &StylePermit<act::Review>,
        section: Section,
        seat: &str,
    ) -> Result<(), StoreError> {
        let (style, person, now) = (permit.style(), permit.person(), self.world.now());
        let tx = self.db.begin().await?;
        still_here(&tx, person, permit.role()).await?;
        let gone = tx
            .run(
                "DELETE FROM presence WHERE style = $1 AND seen_at <= $2",
                values![style, self.silent_since()],
            )
            .await?;
        let known = tx
            .run(
                "UPDATE presence SET seen_at = $5 \
                 WHERE style = $1 AND person = $2 AND seat = $3 AND section = $4",
                values![style, person, seat, section.name(), now],
            )
            .await?;
        if known == 0 {
            tx.run(
                "INSERT INTO presence (style, person, seat, section, since, seen_at) \
                 VALUES ($1, $2, $3, $4, $5, $5) ON CONFLICT (style, person, seat) \
                 DO UPDATE SET section = $4, since = $5, seen_at = $5",
                values![style, person, seat, section.name(), now],
            )
            .await?;
        }
        tx.commit().await?;
        if gone > 0 || known == 0 {
            self.tell_brand(permit);
        }
        Ok(())
    }

    /// The page of this name is closed.
    pub async fn leaves(
        &self,
        permit: &StylePermit<act::Review>,
        seat: &str,
    ) -> Result<(), StoreError> {
        let tx = self.db.begin().await?;
        let gone = tx
            .run(
                "DELETE FROM presence WHERE style = $1 AND person = $2 AND seat = $3",
                values![permit.style(), permit.person(), seat],
            )
            .await?;
        tx.commit().await?;
        if gone > 0 {
            self.tell_brand(permit);
        }
        Ok(())
    }

    /// Whose last sign is not after this is not here any more.
    fn silent_since(&self) -> Time {
        later(&self.world.now(), -SILENCE)
    }

    fn tell_brand(&self, permit: &StylePermit<act::Review>) {
        self.tell(Event {
            style: permit.style().clone(),
            audience: Audience::Brand,
        });
    }
}
