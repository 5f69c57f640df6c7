//! Coming in: sessions, ways in that work once, passwords.
//!
//! Tokens are kept as their SHA-256 only: who reads the database cannot come in with it.

use std::sync::Arc;

use super::people::{found_in, name_of, set_name, still_here};
use super::styles::facts;
use super::world::later;
use super::{Read, Store, StoreError, Tx, values};
use crate::access::{Actor, Permit, Role, Side, StyleFacts, act};
use crate::spec::{Digest, OrgId, PersonId, StyleId, Time};

const MINUTE: i64 = 60;
const DAY: i64 = 24 * 60 * MINUTE;
/// How long an invitation or a new link waits to be used.
const LINK_LIVES: i64 = 7 * DAY;
/// How long a code for a second device waits.
const CODE_LIVES: i64 = 10 * MINUTE;
/// A session's last sight is written at most this often.
const SEEN_EVERY: i64 = 10 * MINUTE;

/// How long a session lasts unused, and at all. A factory's phone is on a floor without mail or a
/// password manager, and losing it costs a day; a brand's session can publish.
fn lifetimes(side: Side) -> (i64, i64) {
    match side {
        Side::Brand => (14 * DAY, 60 * DAY),
        Side::Factory => (45 * DAY, 180 * DAY),
    }
}

/// A live session: who it is, and how the page speaks to them.
#[derive(Debug, Clone)]
pub struct Session {
    pub actor: Actor,
    pub org_name: String,
    pub brand_name: String,
    /// BCP 47.
    pub language: String,
    /// `None`: erased.
    pub name: Option<String>,
}

/// Who asks, and what a permit on the style that they ask for is granted from.
#[derive(Debug, Clone)]
pub struct Visit {
    pub session: Arc<Session>,
    /// `None`: they ask for no style, or there is no such one.
    pub style: Option<StyleFacts>,
}

/// What a way in shows before it is used.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum WayIn {
    /// For this person.
    For {
        name: String,
        org_name: String,
        role: Role,
        language: String,
    },
    /// The first owner of a new installation.
    SetUp,
}

/// What the first owner says.
#[derive(Debug, Clone)]
pub struct SetUp<'a> {
    pub brand: &'a str,
    pub owner: &'a str,
    pub language: &'a str,
    pub login: &'a str,
    pub password_hash: &'a str,
}

#[derive(sqlx::FromRow)]
struct SessionRow {
    person: PersonId,
    org: OrgId,
    org_name: String,
    brand_name: String,
    role: Role,
    language: String,
    name: Option<String>,
    seen_at: Time,
    ends_at: Time,
    style: Option<StyleId>,
    head: Option<Digest>,
    shared: Option<OrgId>,
    renamings: i64,
}

impl From<SessionRow> for Visit {
    fn from(row: SessionRow) -> Self {
        let side = row.role.side();
        let style = row.style.zip(row.head);
        let style = style.map(|(style, head)| facts(style, side, row.shared, head, row.renamings));
        let session = Session {
            actor: Actor {
                person: row.person,
                org: row.org,
                role: row.role,
            },
            org_name: row.org_name,
            brand_name: row.brand_name,
            language: row.language,
            name: row.name,
        };
        Visit {
            session: Arc::new(session),
            style,
        }
    }
}

#[derive(sqlx::FromRow)]
struct WayInRow {
    kind: String,
    person: Option<PersonId>,
}

fn hash(token: &str) -> Digest {
    Digest::of(token.as_bytes())
}

impl Store {
    /// The session of this token, if it lives. Being seen keeps it alive.
    pub async fn session(&self, token: &str) -> Result<Option<Session>, StoreError> {
        let visit = self.visit(token, None, true).await?;
        Ok(visit.map(|visit| Arc::unwrap_or_clone(visit.session)))
    }

    /// The same for a page that looks by itself: nobody is there to be seen, and the session ends
    /// as if nothing had asked.
    pub async fn session_unseen(&self, token: &str) -> Result<Option<Session>, StoreError> {
        let visit = self.visit(token, None, false).await?;
        Ok(visit.map(|visit| Arc::unwrap_or_clone(visit.session)))
    }

    /// The session of this token with what is known of a style, in one question, since every page
    /// of a style asks it; `seen` when somebody is there.
    pub async fn visit(
        &self,
        token: &str,
        style: Option<&StyleId>,
        seen: bool,
    ) -> Result<Option<Visit>, StoreError> {
        let Some(row) = self.living(token, style).await? else {
            return Ok(None);
        };
        let now = self.world.now();
        if seen && now >= later(&row.seen_at, SEEN_EVERY) {
            let tx = self.db.begin().await?;
            tx.run(
                "UPDATE session SET seen_at = $2 WHERE token_hash = $1",
                values![hash(token), now],
            )
            .await?;
            tx.commit().await?;
        }
        Ok(Some(row.into()))
    }

    async fn living(
        &self,
        token: &str,
        style: Option<&StyleId>,
    ) -> Result<Option<SessionRow>, StoreError> {
        let row: Option<SessionRow> = self
            .db
            .maybe(
                "SELECT s.person, p.org, o.name AS org_name, b.name AS brand_name, p.role, \
                 p.language, n.content AS name, s.seen_at, s.ends_at, h.style, h.hash AS head, \
                 x.org AS shared, \
                 (SELECT CAST(SUM(r.renamings) AS BIGINT) FROM organisation r) AS renamings \
                 FROM session s JOIN person p ON p.id = s.person \
                 JOIN organisation o ON o.id = p.org \
                 JOIN organisation b ON b.kind = 'brand' \
                 LEFT JOIN private_text n ON n.person = p.id AND n.kind = 'name' \
                 LEFT JOIN ledger_head h ON h.style = $2 \
                 LEFT JOIN share x ON x.style = h.style AND x.org = p.org \
                 AND x.ended_at IS NULL \
                 WHERE s.token_hash = $1 AND p.left_at IS NULL",
                values![hash(token), style],
            )
            .await?;
        let now = self.world.now();
        Ok(row.filter(|row| {
            let (idle, _) = lifetimes(row.role.side());
            now < row.ends_at && now < later(&row.seen_at, idle)
        }))
    }

    /// Starts a session for somebody whose password was right. Returns its token.
    ///
    /// Errors: `Missing` when they may no longer come in.
    pub async fn open_session(&self, person: &PersonId) -> Result<String, StoreError> {
        let tx = self.db.begin().await?;
        let token = insert_session(self, &tx, person).await?;
        tx.commit().await?;
        Ok(token)
    }

    pub async fn end_session(&self, token: &str) -> Result<(), StoreError> {
        let tx = self.db.begin().await?;
        tx.run(
            "DELETE FROM session WHERE token_hash = $1",
            values![hash(token)],
        )
        .await?;
        tx.commit().await
    }

    /// Signs out everywhere.
    pub async fn end_sessions(&self, permit: &Permit<act::Enter>) -> Result<(), StoreError> {
        let tx = self.db.begin().await?;
        tx.run(
            "DELETE FROM session WHERE person = $1",
            values![permit.person()],
        )
        .await?;
        tx.commit().await
    }

    /// A link for somebody: their invitation, or a new one when they lost their session. An owner
    /// for anybody, a merchandiser for their own people. An earlier unused link stops working.
    ///
    /// Errors: `Missing` when the person is not there for the holder.
    pub async fn new_link(
        &self,
        permit: &Permit<act::Invite>,
        person: &PersonId,
    ) -> Result<String, StoreError> {
        let tx = self.db.begin().await?;
        still_here(&tx, permit.person(), permit.role()).await?;
        let _: (String,) = tx
            .one(
                "SELECT id FROM person WHERE id = $1 AND left_at IS NULL \
                 AND (CAST($2 AS TEXT) IS NULL OR org = $2)",
                values![person, permit.tenant()],
            )
            .await?;
        tx.run(
            "DELETE FROM way_in WHERE person = $1 AND kind = 'link' AND used_at IS NULL",
            values![person],
        )
        .await?;
        let token = self.world.token();
        insert_way_in(self, &tx, &token, "link", Some(person), LINK_LIVES).await?;
        tx.commit().await?;
        Ok(token)
    }

    /// A short code for one's own second device.
    pub async fn new_code(&self, permit: &Permit<act::Enter>) -> Result<String, StoreError> {
        let tx = self.db.begin().await?;
        tx.run(
            "DELETE FROM way_in WHERE person = $1 AND kind = 'code' AND used_at IS NULL",
            values![permit.person()],
        )
        .await?;
        let code = self.world.short_code();
        insert_way_in(self, &tx, &code, "code", Some(permit.person()), CODE_LIVES).await?;
        tx.commit().await?;
        Ok(code)
    }

    /// The link for the first owner of a new installation; an earlier one stops working. It opens
    /// nothing once there is a brand.
    pub async fn new_set_up_link(&self) -> Result<String, StoreError> {
        let tx = self.db.begin().await?;
        tx.run(
            "DELETE FROM way_in WHERE kind = 'set_up' AND used_at IS NULL",
            values![],
        )
        .await?;
        let token = self.world.token();
        insert_way_in(self, &tx, &token, "set_up", None, LINK_LIVES).await?;
        tx.commit().await?;
        Ok(token)
    }

    /// What this way in would do; reading spends nothing (chat programs fetch links for previews).
    /// `None`: it never was, was used, or its time is over.
    pub async fn way_in(&self, token: &str) -> Result<Option<WayIn>, StoreError> {
        let row: Option<WayInRow> = self
            .db
            .maybe(
                "SELECT kind, person FROM way_in \
                 WHERE token_hash = $1 AND used_at IS NULL AND ends_at > $2",
                values![hash(token), self.world.now()],
            )
            .await?;
        let Some(row) = row else { return Ok(None) };
        let Some(person) = row.person else {
            let founded = self.is_founded().await?;
            return Ok((row.kind == "set_up" && !founded).then_some(WayIn::SetUp));
        };
        let found: Option<(String, Role, String)> = self
            .db
            .maybe(
                "SELECT o.name, p.role, p.language FROM person p \
                 JOIN organisation o ON o.id = p.org WHERE p.id = $1 AND p.left_at IS NULL",
                values![person],
            )
            .await?;
        let Some((org_name, role, language)) = found else {
            return Ok(None);
        };
        Ok(Some(WayIn::For {
            name: name_of(&self.db, &person).await?.unwrap_or_default(),
            org_name,
            role,
            language,
        }))
    }

    /// Uses a link or a code: it never works again. `name` and `language` are the person's own
    /// choice where the way in asks for them. Returns the new session's token.
    ///
    /// Errors: `Missing` when it never was, was used, or its time is over.
    pub async fn use_way_in(
        &self,
        token: &str,
        choice: Option<(&str, &str)>,
    ) -> Result<String, StoreError> {
        let tx = self.db.begin().await?;
        let person = spend(self, &tx, token).await?.ok_or(StoreError::Missing)?;
        if let Some((name, language)) = choice {
            set_name(&tx, &person, name, language).await?;
        }
        let session = insert_session(self, &tx, &person).await?;
        tx.commit().await?;
        Ok(session)
    }

    /// Uses the set-up link: makes the brand and its first owner, who is then signed in.
    ///
    /// Errors: `Missing` when the link does not work; `Unique` when there is a brand already.
    pub async fn set_up(&self, token: &str, new: SetUp<'_>) -> Result<String, StoreError> {
        let tx = self.db.begin().await?;
        if spend(self, &tx, token).await?.is_some() {
            return Err(StoreError::Missing);
        }
        let owner = found_in(self, &tx, new.brand, new.owner, new.language).await?;
        insert_password(self, &tx, &owner, new.login, new.password_hash).await?;
        let session = insert_session(self, &tx, &owner).await?;
        tx.commit().await?;
        Ok(session)
    }

    /// Who signs in by this name, with the hash of their password. `login` is in lower case.
    pub async fn password(&self, login: &str) -> Result<Option<(PersonId, String)>, StoreError> {
        self.db
            .maybe(
                "SELECT p.id, w.hash FROM private_text t JOIN person p ON p.id = t.person \
                 JOIN password w ON w.person = p.id \
                 WHERE t.kind = 'login' AND t.content = $1 AND p.left_at IS NULL",
                values![login],
            )
            .await
    }

    /// The name that the holder signs in by, if they have a password.
    pub async fn login(&self, permit: &Permit<act::Enter>) -> Result<Option<String>, StoreError> {
        let row: Option<(String,)> = self
            .db
            .maybe(
                "SELECT content FROM private_text WHERE person = $1 AND kind = 'login' \
                 AND content IS NOT NULL",
                values![permit.person()],
            )
            .await?;
        Ok(row.map(|(login,)| login))
    }

    /// Sets one's own sign-in name (in lower case) and password, and signs out every other device:
    /// a new session is opened, whose token is returned.
    ///
    /// Errors: `Unique` when somebody else signs in by that name.
    pub async fn set_password(
        &self,
        permit: &Permit<act::Enter>,
        login: &str,
        password_hash: &str,
    ) -> Result<String, StoreError> {
        let tx = self.db.begin().await?;
        tx.run(
            "DELETE FROM private_text WHERE person = $1 AND kind = 'login'",
            values![permit.person()],
        )
        .await?;
        tx.run(
            "DELETE FROM password WHERE person = $1",
            values![permit.person()],
        )
        .await?;
        insert_password(self, &tx, permit.person(), login, password_hash).await?;
        tx.run(
            "DELETE FROM session WHERE person = $1",
            values![permit.person()],
        )
        .await?;
        let token = insert_session(self, &tx, permit.person()).await?;
        tx.commit().await?;
        Ok(token)
    }
}

/// Marks a way in as used. `Some`: whose it was; `None`: it was the set-up link.
async fn spend(store: &Store, tx: &Tx, token: &str) -> Result<Option<PersonId>, StoreError> {
    let (person,): (Option<PersonId>,) = tx
        .one(
            "UPDATE way_in SET used_at = $2 \
             WHERE token_hash = $1 AND used_at IS NULL AND ends_at > $2 RETURNING person",
            values![hash(token), store.world.now()],
        )
        .await?;
    Ok(person)
}

async fn insert_session(store: &Store, tx: &Tx, person: &PersonId) -> Result<String, StoreError> {
    let (role,): (Role,) = tx
        .one(
            "SELECT role FROM person WHERE id = $1 AND left_at IS NULL",
            values![person],
        )
        .await?;
    let now = store.world.now();
    let (_, longest) = lifetimes(role.side());
    let token = store.world.token();
    tx.run(
        "DELETE FROM session WHERE person = $1 AND ends_at <= $2",
        values![person, now],
    )
    .await?;
    tx.run(
        "INSERT INTO session (token_hash, person, made_at, seen_at, ends_at) \
         VALUES ($1, $2, $3, $3, $4)",
        values![hash(&token), person, now, later(&now, longest)],
    )
    .await?;
    Ok(token)
}

async fn insert_way_in(
    store: &Store,
    tx: &Tx,
    token: &str,
    kind: &str,
    person: Option<&PersonId>,
    lives: i64,
) -> Result<(), StoreError> {
    let now = store.world.now();
    tx.run(
        "INSERT INTO way_in (token_hash, kind, person, made_at, ends_at) \
         VALUES ($1, $2, $3, $4, $5)",
        values![hash(token), kind, person, now, later(&now, lives)],
    )
    .await?;
    Ok(())
}

async fn insert_password(
    store: &Store,
    tx: &Tx,
    person: &PersonId,
    login: &str,
    password_hash: &str,
) -> Result<(), StoreError> {
    tx.run(
        "INSERT INTO private_text (id, person, kind, salt, content) \
         VALUES ($1, $2, 'login', $3, $4)",
        values![store.world.id(), person, store.world.salt().as_str(), login],
    )
    .await?;
    tx.run(
        "INSERT INTO password (person, hash, set_at) VALUES ($1, $2, $3)",
        values![person, password_hash, store.world.now()],
    )
    .await?;
    Ok(())
}
