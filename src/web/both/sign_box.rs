//! Where the two sides sign a revision or a decided round: who has, who may now, and what stands in
//! the way. Stands inside a page as `{{ box|safe }}`.

use askama::Template;

use crate::access::{Side, StylePermit, act};
use crate::exchange::Refused;
use crate::exchange::signature::{Signed, Signing, Statement, Subject, blocks};
use crate::exchange::thread::Thread;
use crate::language::Text;
use crate::spec::{Digest, OrgId, SignatureId, Time};
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
        local: String,
    },
    /// The reader may sign, putting their name to these words.
    Open {
        statement: String,
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
    /// The id of the revision or round.
    pub subject_id: &'a str,
    pub digest: &'a Digest,
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
                local: signature.local_time.clone(),
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
                    SideState::Open {
                        statement: t.statement(facts.subject.statement(side)).to_string(),
                        name: name_or_erased(t, who.session.name.as_deref()),
                        role: t.name(&reader.role()).to_string(),
                    }
                } else {
                    let why =
                        |why: &Refused| (t.why(why).to_string(), ways_on(t, why, reader.style()));
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
        SignBox {
            t,
            token: who.form_token.clone(),
            sides: [side(Side::Factory), side(Side::Brand)],
            action: facts.action,
            org: facts.org.clone(),
            digest: facts.digest.clone(),
        }
    }
}

/// Takes a signature from the form of a box.
pub async fn sign(
    may: &MayOn<act::Sign>,
    app: &App,
    what: Sign<'_>,
    form: &Form,
) -> Result<SignatureId, Problem> {
    let fields = &form.fields;
    let shown = Digest::try_from(fields.text("digest").to_owned());
    let (Ok(shown), "yes") = (shown, fields.text("agree")) else {
        return Err(Problem::BadForm);
    };
    let t = may.who.t;
    let statement = t.statement(match (&what, may.permit.side()) {
        (Sign::Revision(_), Side::Factory) => Statement::RevisionByFactory,
        (Sign::Revision(_), Side::Brand) => Statement::RevisionByBrand,
        (Sign::Round(_), Side::Factory) => Statement::RoundByFactory,
        (Sign::Round(_), Side::Brand) => Statement::RoundByBrand,
    });
    let screen = Digest::of(format!("{}\n{statement}\n{shown}", t.lang()).as_bytes());
    let local = fields.text("local_time");
    let clock = |c: char| c.is_ascii_digit() || "-T:.+Z".contains(c);
    let now = app.store.world().now();
    let local = if (1..=40).contains(&local.len()) && local.chars().all(clock) {
        local
    } else {
        now.as_str()
    };
    let org = OrgId::new(fields.text("org"));
    let form = SignForm {
        what,
        org: Some(&org),
        shown: &shown,
        screen: &screen,
        language: t.lang(),
        local_time: local,
    };
    Ok(app.store.sign(&may.permit, form).await?)
}
