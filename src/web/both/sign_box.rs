//! Where the two sides sign a revision, a decided round or a seal: who has, who may now, and what stands in
//! the way. Stands inside a page as `{{ box|safe }}`.

use askama::Template;

use crate::access::{Side, StylePermit, act};
use crate::exchange::Refused;
use crate::exchange::signature::{Signed, Signing, Statement, Subject, blocks};
use crate::exchange::thread::Thread;
use crate::language::Text;
use crate::spec::{Digest, OrgId, SignatureId, Spec, StyleId, Time};
use crate::store::{Sign, SignForm, Signature};
use crate::web::App;
use crate::web::form::Form;
use crate::web::frame::name_or_erased;
use crate::web::may::{MayOn, Who};
use crate::web::problem::Problem;
use crate::web::refusal::{WayOn, ways_on};

#[derive(Template)]
#[template(path = "both/sign_box.html")]
pub struct SignBox {
    t: Text,
    token: String,
    /// Where the form goes.
    action: String,
    /// Where the signed record is, once somebody has signed.
    record: Option<String>,
    /// The factory that it is with.
    org: OrgId,
    /// What is signed.
    digest: Digest,
    sides: [SideBox; 2],
}

struct SideBox {
    side: Side,
    /// Whose side it is.
    org: String,
    state: SideState,
}

enum SideState {
    Signed {
        name: String,
        role: String,
        at: Time,
        /// The signer's own time; empty when it said no other than UTC.
        local: String,
    },
    /// The reader may sign, putting their name to these words.
    Open {
        statement: String,
        /// Of the screen as it is shown.
        screen: Digest,
        name: String,
        role: String,
    },
    /// The reader could sign, but for these reasons.
    Blocked(Vec<(String, Vec<WayOn>)>),
    /// Not signed, and not the reader's to sign.
    Waits,
}

/// What a box is about, as it stands now.
pub struct Facts<'a> {
    pub subject: Subject<'a>,
    /// The id of the revision, round or seal.
    pub subject_id: &'a str,
    pub digest: &'a Digest,
    /// The figures that stand on the screen and are not in the digest as they stand there.
    pub figures: &'a str,
    /// What the threads are about, for their names.
    pub spec: &'a Spec,
    /// The factory that it is with or by.
    pub org: &'a OrgId,
    pub org_name: &'a str,
    pub brand_name: &'a str,
    pub action: String,
    /// Every signature that the reader may see.
    pub signatures: &'a [Signature],
    /// The style's threads with this factory.
    pub threads: &'a [Thread],
    /// Every signature given in this style.
    pub signed: &'a [Signed],
}

impl SignBox {
    pub fn of(who: &Who, reader: &StylePermit<act::Read>, facts: Facts<'_>) -> SignBox {
        let t = who.t;
        let given = |side: Side| {
            facts.signatures.iter().find(|it| {
                it.subject_id == facts.subject_id && it.org == *facts.org && it.side == side
            })
        };
        let state = |side: Side| match given(side) {
            Some(signature) => SideState::Signed {
                name: name_or_erased(t, signature.name.as_deref()),
                role: t.name(&signature.role).to_string(),
                at: signature.at.clone(),
                local: local_minute(&signature.local_time),
            },
            None if side != reader.side() => SideState::Waits,
            None => {
                let blocks = blocks(&Signing {
                    by: reader.actor(),
                    factory: facts.org,
                    subject: facts.subject.clone(),
                    subject_id: facts.subject_id,
                    shown: facts.digest,
                    threads: facts.threads,
                    signed: facts.signed,
                });
                if blocks.contains(&Refused::RoleDoesNotSign) {
                    SideState::Waits
                } else if blocks.is_empty() {
                    let statement = t.statement(facts.subject.statement(side)).to_string();
                    SideState::Open {
                        screen: screen(t, &statement, facts.digest, facts.figures),
                        statement,
                        name: name_or_erased(t, who.session.name.as_deref()),
                        role: t.name(&reader.role()).to_string(),
                    }
                } else {
                    let why = |why| {
                        (
                            t.why(why).to_string(),
                            facts.ways_on(t, why, reader.style()),
                        )
                    };
                    SideState::Blocked(blocks.iter().map(why).collect())
                }
            }
        };
        let side = |side: Side| SideBox {
            side,
            org: match side {
                Side::Factory => facts.org_name.to_owned(),
                Side::Brand => facts.brand_name.to_owned(),
            },
            state: state(side),
        };
        let signed = [Side::Brand, Side::Factory]
            .into_iter()
            .any(|side| given(side).is_some());
        SignBox {
            t,
            token: who.form_token.clone(),
            sides: [side(Side::Factory), side(Side::Brand)],
            record: signed.then(|| {
                let of = facts.action.trim_end_matches("/sign");
                format!("{of}/record?with={}", facts.org)
            }),
            action: facts.action,
            org: facts.org.clone(),
            digest: facts.digest.clone(),
        }
    }
}

impl Facts<'_> {
    /// As [`ways_on`], but threads go by what they are about.
    fn ways_on(&self, t: Text, why: &Refused, style: &StyleId) -> Vec<WayOn> {
        match why {
            Refused::OpenQuestions { threads } | Refused::MustFixOpen { threads } => {
                let known = self.threads.iter().filter(|it| threads.contains(&it.id));
                let way = |thread: &Thread| {
                    let item = self.spec.item(&thread.item);
                    let item = item.map_or_else(String::new, |item| {
                        format!("{} {}", item.letter(), item.name())
                    });
                    let label = t
                        .say("sign-to-thread")
                        .with("kind", t.name(&thread.kind))
                        .with("item", item.trim());
                    WayOn {
                        href: format!("/styles/{style}/threads/{}", thread.id),
                        label: label.to_string(),
                    }
                };
                known.map(way).collect()
            }
            Refused::NotAcknowledged => vec![WayOn {
                href: "#acknowledge".to_owned(),
                label: t.say("sign-to-acknowledge").to_string(),
            }],
            other => ways_on(t, other, style),
        }
    }
}

/// The digest of what is on the signer's screen: language, statement, what is signed, and the
/// figures. Whoever has these and the program's texts can make it again.
fn screen(t: Text, statement: &str, digest: &Digest, figures: &str) -> Digest {
    Digest::of(format!("{}\n{statement}\n{digest}\n{figures}", t.lang()).as_bytes())
}

/// The same for what somebody of this side signs.
pub fn screen_of(t: Text, what: &Sign<'_>, side: Side, digest: &Digest, figures: &str) -> Digest {
    let statement = t.statement(match (what, side) {
        (Sign::Revision(_), Side::Factory) => Statement::RevisionByFactory,
        (Sign::Revision(_), Side::Brand) => Statement::RevisionByBrand,
        (Sign::Round(_), Side::Factory) => Statement::RoundByFactory,
        (Sign::Round(_), Side::Brand) => Statement::RoundByBrand,
        (Sign::Seal(_), Side::Factory) => Statement::SealByFactory,
        (Sign::Seal(_), Side::Brand) => Statement::SealByBrand,
    });
    screen(t, &statement.to_string(), digest, figures)
}

/// Takes a signature from the form of a box; `figures` are those that the page shows now.
pub async fn sign(
    may: &MayOn<act::Sign>,
    app: &App,
    what: Sign<'_>,
    figures: &str,
    form: &Form,
) -> Result<SignatureId, Problem> {
    let fields = &form.fields;
    let shown = Digest::try_from(fields.text("digest").to_owned());
    let (Ok(shown), "yes") = (shown, fields.text("agree")) else {
        return Err(Problem::BadForm);
    };
    let t = may.who.t;
    let screen = screen_of(t, &what, may.permit.side(), &shown, figures);
    if screen.as_str() != fields.text("screen") {
        // The page was shown in another language, or by another version of the program.
        let style = may.permit.style().clone();
        return Err(Problem::Refused(Refused::ScreenMoved, Some(style)));
    }
    let now = app.store.world().now();
    let local = local_time(fields.text("local_time"), &now);
    let org = OrgId::new(fields.text("org"));
    let form = SignForm {
        what,
        org: Some(&org),
        shown: &shown,
        screen: &screen,
        language: t.lang(),
        local_time: &local,
    };
    Ok(app.store.sign(&may.permit, form).await?)
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

/// `YYYY-MM-DD HH:MM UTC+HH:MM` of a kept local time; empty when it is UTC's, which stands there
/// already.
fn local_minute(kept: &str) -> String {
    match (kept.get(..10), kept.get(11..16), kept.get(19..)) {
        (Some(day), Some(minute), Some(offset))
            if offset.len() == 6 && !offset.ends_with("00:00") =>
        {
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
        for of_utc in [
            "2026-03-02T08:00:00.000Z",
            "2026-03-02T08:00:00+00:00",
            "2026-03-02T08:00:00-00:00",
        ] {
            assert_eq!(local_minute(of_utc), "");
        }
    }
}
