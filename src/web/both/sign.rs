//! Signing a revision: what each side has signed, what one would sign now, why one cannot yet.

use axum::extract::{Path, State};

use super::number;
use super::sheet::{Beside, Sheet};
use crate::access::{Actor, Role, Side, act};
use crate::exchange::revision::Frozen;
use crate::exchange::signature::{Signing, Subject, SubjectKind, agreement, blocks};
use crate::exchange::thread::Thread;
use crate::exchange::{Refused, signature};
use crate::language::Text;
use crate::spec::{Digest, OrgId, StyleId, Time};
use crate::store::{Acknowledged, RevisionCard, Shared, Sign, SignForm, Signature};
use crate::web::App;
use crate::web::form::Form;
use crate::web::frame::name_or_erased;
use crate::web::may::MayOn;
use crate::web::page::{Answer, go};
use crate::web::problem::Problem;
use crate::web::refusal::{self, WayOn};

/// What a revision is with one factory, and the two sides' signatures.
pub struct Deal {
    pub org: OrgId,
    pub name: String,
    /// Shared, acknowledged, signed by ...
    pub agreement: String,
    /// When it was acknowledged, in UTC.
    pub acknowledged: Option<String>,
    pub factory: SideBox,
    pub brand: SideBox,
}

/// One side of the seam.
pub enum SideBox {
    Signed(Given),
    /// The reader may sign here now.
    Form(ToSign),
    /// The reader's side has not signed, and why it cannot yet.
    Blocked(Vec<Block>),
    /// The other side has not signed.
    Waiting,
}

pub struct Given {
    pub name: String,
    pub role: Role,
    /// UTC.
    pub at: String,
    /// The signer's own clock with its offset; empty when it said no other than UTC.
    pub local: String,
}

pub struct ToSign {
    pub statement: String,
    /// Of the revision: whole, as it is signed.
    pub digest: Digest,
    /// Of statement and figures as they stand on the screen.
    pub screen: Digest,
}

/// Why one cannot sign yet, and the ways on.
pub struct Block {
    pub sentence: String,
    pub ways: Vec<WayOn>,
}

/// Everything that the state of signing follows from.
pub struct Table<'a> {
    pub t: Text,
    pub by: &'a Actor,
    pub style: &'a StyleId,
    pub card: &'a RevisionCard,
    pub frozen: &'a Frozen,
    pub sheet: &'a Sheet,
    pub shares: &'a [Shared],
    pub acknowledged: &'a [Acknowledged],
    pub threads: &'a [Thread],
    pub signatures: &'a [Signature],
    pub signed: &'a [signature::Signed],
}

impl Table<'_> {
    /// What the revision is with each factory that the reader may know of.
    pub fn deals(&self) -> Vec<Deal> {
        let shares = self.shares.iter();
        // A share that ended stays on the page of what was agreed under it.
        let shown = shares.filter(|share| {
            share.ended_at.is_none()
                || self.given(&share.org, Side::Factory).is_some()
                || self.given(&share.org, Side::Brand).is_some()
        });
        shown.map(|share| self.deal(share)).collect()
    }

    fn deal(&self, share: &Shared) -> Deal {
        let acknowledged = self.acknowledged(&share.org);
        let signed = |side| self.given(&share.org, side).is_some();
        let agreement = agreement(
            acknowledged.is_some(),
            signed(Side::Factory),
            signed(Side::Brand),
        );
        Deal {
            org: share.org.clone(),
            name: share.name.clone(),
            agreement: self.t.name(&agreement).to_string(),
            acknowledged: acknowledged.map(Time::minute),
            factory: self.side(share, Side::Factory),
            brand: self.side(share, Side::Brand),
        }
    }

    fn side(&self, share: &Shared, side: Side) -> SideBox {
        if let Some(given) = self.given(&share.org, side) {
            return SideBox::Signed(Given {
                name: name_or_erased(self.t, given.name.as_deref()),
                role: given.role,
                at: given.at.minute(),
                local: local_minute(&given.local_time),
            });
        }
        if self.by.side() != side {
            return SideBox::Waiting;
        }
        let subject = Subject::Revision {
            number: self.card.number,
            digest: &self.card.digest,
            standing: &self.card.standing,
            shared: share.ended_at.is_none(),
            acknowledged: self.acknowledged(&share.org).is_some(),
        };
        let statement = subject.statement(side);
        let blocks = blocks(&Signing {
            by: self.by,
            factory: &share.org,
            subject,
            subject_id: self.card.id.as_str(),
            shown: &self.card.digest,
            threads: self.threads,
            signed: self.signed,
        });
        if !blocks.is_empty() {
            return SideBox::Blocked(blocks.iter().map(|why| self.block(why)).collect());
        }
        let statement = self.t.statement(statement).to_string();
        SideBox::Form(ToSign {
            screen: screen(
                self.t,
                &statement,
                self.frozen,
                &self.card.digest,
                self.sheet,
            ),
            digest: self.card.digest.clone(),
            statement,
        })
    }

    fn given(&self, org: &OrgId, side: Side) -> Option<&Signature> {
        self.signatures.iter().find(|given| {
            given.subject == SubjectKind::Revision
                && given.subject_id == self.card.id.as_str()
                && given.org == *org
                && given.side == side
        })
    }

    fn acknowledged(&self, org: &OrgId) -> Option<&Time> {
        let done = self
            .acknowledged
            .iter()
            .find(|done| done.org == *org && u32::try_from(done.number) == Ok(self.card.number));
        done.map(|done| &done.at)
    }

    fn block(&self, why: &Refused) -> Block {
        let ways = match why {
            Refused::OpenQuestions { threads } | Refused::MustFixOpen { threads } => {
                let threads = threads.iter();
                let known = threads.filter_map(|id| self.threads.iter().find(|it| it.id == *id));
                known.map(|thread| self.way_to(thread)).collect()
            }
            Refused::NotAcknowledged => vec![WayOn {
                href: "#acknowledge".to_owned(),
                label: self.t.say("sign-to-acknowledge").to_string(),
            }],
            other => refusal::ways_on(self.t, other, self.style),
        };
        Block {
            sentence: self.t.why(why).to_string(),
            ways,
        }
    }

    /// Named by the item that the thread is about.
    fn way_to(&self, thread: &Thread) -> WayOn {
        let item = self.frozen.spec.item(&thread.item);
        let item = item.map_or_else(String::new, |item| {
            format!("{} {}", item.letter(), item.name())
                .trim()
                .to_owned()
        });
        let label = self
            .t
            .say("sign-to-thread")
            .with("kind", self.t.name(&thread.kind))
            .with("item", item);
        WayOn {
            href: format!("/styles/{}/threads/{}", self.style, thread.id),
            label: label.to_string(),
        }
    }
}

/// The digest of what was on the signer's screen: language, statement, revision and figures. Anyone
/// who has the revision and this program's texts can make it again.
fn screen(t: Text, statement: &str, frozen: &Frozen, digest: &Digest, sheet: &Sheet) -> Digest {
    let header = &frozen.spec.header;
    let head = format!(
        "{}\n{statement}\n{} {}\n{}\n{digest}\n",
        t.lang(),
        header.number,
        header.name,
        frozen.number,
    );
    Digest::of(format!("{head}{}", sheet.figures()).as_bytes())
}

/// Signs for the reader's side.
pub async fn submit(
    may: MayOn<act::Sign>,
    State(app): State<App>,
    Path((style, n)): Path<(String, String)>,
    form: Form,
) -> Answer {
    let n = number(&n)?;
    let t = may.who.t;
    let org = OrgId::new(form.fields.text("org"));
    let shown = Digest::try_from(form.fields.text("shown").to_owned());
    let shown = shown.map_err(|_| Problem::BadForm)?;
    let revision = app.store.revision(&may.permit.also()?, n).await?;
    let statement = match may.permit.side() {
        Side::Brand => signature::Statement::RevisionByBrand,
        Side::Factory => signature::Statement::RevisionByFactory,
    };
    let statement = t.statement(statement).to_string();
    let frozen = &revision.frozen;
    let sheet = Sheet::of(t, frozen, Beside::default());
    let screen = screen(t, &statement, frozen, &revision.digest, &sheet);
    if screen.as_str() != form.fields.text("screen") {
        // Another language or another version of the program than the page was shown in.
        return Err(Problem::Refused(
            Refused::ScreenMoved,
            Some(may.permit.style().clone()),
        ));
    }
    let now = app.store.world().now();
    let local_time = local_time(form.fields.text("local_time"), &now);
    let sign = SignForm {
        what: Sign::Revision(n),
        org: Some(&org),
        shown: &shown,
        screen: &screen,
        language: t.lang(),
        local_time: &local_time,
    };
    app.store.sign(&may.permit, sign).await?;
    go(&format!("/styles/{style}/revisions/{n}?said=signed#sign"))
}

/// The signer's own time as the browser said it, `YYYY-MM-DDTHH:MM:SS+HH:MM`; the server's UTC when
/// it said none or nonsense.
fn local_time(typed: &str, now: &Time) -> String {
    const SHAPE: &[u8] = b"0000-00-00T00:00:00+00:00";
    let fits = typed.len() == SHAPE.len()
        && typed.bytes().zip(SHAPE).all(|(byte, shape)| match shape {
            b'0' => byte.is_ascii_digit(),
            b'+' => matches!(byte, b'+' | b'-'),
            other => byte == *other,
        });
    if fits && typed.parse::<jiff::Timestamp>().is_ok() {
        typed.to_owned()
    } else {
        now.as_str().to_owned()
    }
}

/// `YYYY-MM-DD HH:MM UTC+HH:MM` of a kept local time; empty when it is UTC's.
fn local_minute(kept: &str) -> String {
    match (kept.get(..10), kept.get(11..16), kept.get(19..)) {
        (Some(day), Some(minute), Some(offset)) if offset.len() == 6 => {
            format!("{day} {minute} UTC{offset}")
        }
        _ => String::new(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_local_time_is_taken_as_it_is_or_not_at_all() {
        let now = Time::try_from("2026-03-02T08:00:00.000Z".to_owned()).unwrap();
        let said = "2026-03-02T15:00:00+07:00";
        assert_eq!(local_time(said, &now), said);
        assert_eq!(local_minute(said), "2026-03-02 15:00 UTC+07:00");
        for nonsense in [
            "",
            "15:00",
            "2026-13-02T15:00:00+07:00",
            "2026-03-02T15:00:00.0+07:0",
        ] {
            assert_eq!(local_time(nonsense, &now), "2026-03-02T08:00:00.000Z");
        }
        assert_eq!(local_minute("2026-03-02T08:00:00.000Z"), "");
    }
}
