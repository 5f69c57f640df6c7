//! Erasing somebody's personal texts. Chains and hashes stay whole: they never held the texts.

use super::act::Said;
use super::{Read, Store, StoreError, Tx, values};
use crate::access::{Role, Side};
use crate::exchange::ledger::Act;
use crate::spec::{Digest, OrgId, PersonId, StyleId};

/// What an erasing came to.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Erased {
    pub texts: u64,
    /// Pictures that nothing uses any more: to be removed from the folder of files.
    pub files: Vec<Digest>,
}

impl Store {
    /// Erases somebody's name, sign-in name, messages and photographs, sent or only uploaded, ends their access, and says
    /// so in the ledger of every style where they wrote. Their name under signatures stays for the
    /// owner's retention period.
    ///
    /// Errors: `Missing` when there is no such person.
    pub async fn erase(&self, person: &PersonId) -> Result<Erased, StoreError> {
        let mut tx = self.db.begin().await?;
        // Every style at once, so that nobody writes while their texts are being erased.
        tx.run("UPDATE ledger_head SET hash = hash", values![])
            .await?;
        let now = self.world.now();
        let (org, role): (OrgId, Role) = tx
            .one(
                "SELECT org, role FROM person WHERE id = $1",
                values![person],
            )
            .await?;
        let styles: Vec<(StyleId,)> = tx
            .all(
                "SELECT DISTINCT style FROM ledger WHERE person = $1 ORDER BY style",
                values![person],
            )
            .await?;
        let photos: Vec<(String,)> = tx
            .all(
                "SELECT content FROM private_text WHERE person = $1 AND kind = 'photo' \
                 AND content IS NOT NULL \
                 UNION SELECT file FROM photo_upload WHERE person = $1 ORDER BY 1",
                values![person],
            )
            .await?;
        tx.run(
            "DELETE FROM photo_upload WHERE person = $1",
            values![person],
        )
        .await?;
        // The salts go too: without them nobody can try whether a guessed text was the one.
        let texts = tx
            .run(
                "UPDATE private_text SET content = NULL, salt = '', erased_at = $2 \
                 WHERE person = $1 AND kind <> 'signed_name' AND erased_at IS NULL",
                values![person, now],
            )
            .await?;
        tx.run("DELETE FROM password WHERE person = $1", values![person])
            .await?;
        tx.run("DELETE FROM mail WHERE person = $1", values![person])
            .await?;
        tx.run("DELETE FROM session WHERE person = $1", values![person])
            .await?;
        tx.run("DELETE FROM way_in WHERE person = $1", values![person])
            .await?;
        tx.run(
            "UPDATE person SET left_at = COALESCE(left_at, $2) WHERE id = $1",
            values![person, now],
        )
        .await?;
        let mut files = Vec::new();
        for (photo,) in photos {
            files.extend(forget_photo(&tx, &photo).await?);
        }
        let mut events = Vec::new();
        for (style,) in styles {
            let mut act = self.program_act(tx, &style).await?;
            let mut said = Said::default().id("person", person);
            if role.side() == Side::Factory {
                // No other factory learns of its people.
                said = said.to(&org);
            }
            act.record(Act::Erase, said).await?;
            let closed = act.close().await?;
            tx = closed.0;
            events.extend(closed.1);
        }
        tx.commit().await?;
        for event in events {
            self.tell(event);
        }
        Ok(Erased { texts, files })
    }
}

/// Forgets a photograph unless somebody else sent the same one. Returns the pictures to remove.
async fn forget_photo(tx: &Tx, photo: &str) -> Result<Vec<Digest>, StoreError> {
    let others: Option<(String,)> = tx
        .maybe(
            "SELECT id FROM private_text WHERE kind = 'photo' AND content = $1 \
             UNION ALL SELECT file FROM photo_upload WHERE file = $1",
            values![photo],
        )
        .await?;
    if others.is_some() {
        return Ok(Vec::new());
    }
    let pictures: Vec<(Digest,)> = tx
        .all(
            "SELECT DISTINCT p.digest FROM picture p WHERE p.of_file = $1 \
             AND NOT EXISTS (SELECT 1 FROM picture o WHERE o.digest = p.digest \
                 AND o.of_file <> p.of_file) \
             AND NOT EXISTS (SELECT 1 FROM file f WHERE f.digest = p.digest \
                 AND f.kind = 'drawing') ORDER BY p.digest",
            values![photo],
        )
        .await?;
    tx.run("DELETE FROM file_use WHERE file = $1", values![photo])
        .await?;
    tx.run("DELETE FROM picture WHERE of_file = $1", values![photo])
        .await?;
    tx.run("DELETE FROM file WHERE digest = $1", values![photo])
        .await?;
    Ok(pictures.into_iter().map(|(digest,)| digest).collect())
}
