//! A seal: which pieces are kept where, what it rests on, and who has signed it.

use askama::Template;
use axum::extract::{Path, State};

use super::inspection::begin::{Earlier, earlier, here};
use super::sealing::{called, named};
use super::sign_box::{Facts, SignBox, sign};
use crate::access::{Side, act};
use crate::exchange::revision::Standing;
use crate::exchange::signature::{Subject, SubjectKind};
use crate::language::Text;
use crate::spec::letters::nth;
use crate::spec::{SealId, StyleId};
use crate::store::{Seal, SealedPiece, Sign};
use crate::web::App;
use crate::web::form::Form;
use crate::web::frame::{Frame, name_or_erased};
use crate::web::may::MayOn;
use crate::web::page::{Answer, go, page};
use crate::web::problem::Problem;

#[derive(Template)]
#[template(path = "both/seal.html")]
struct SealPage {
    t: Text,
    frame: Frame,
    style: StyleId,
    seal: Seal,
    /// What it has come to, in a word, and its shape.
    word: String,
    shape: &'static str,
    by: String,
    /// A revision that is current instead of the one that the pieces were made to.
    newer: Option<u32>,
    /// That revision was withdrawn, and there is none.
    none_current: bool,
    approvals: Vec<String>,
    /// Each with its address.
    concessions: Vec<(String, String)>,
    signing: SignBox,
    inspections: Vec<Earlier>,
    /// Where bulk is inspected against it, for who may; and what keeps from it.
    inspect: Option<String>,
    keeps: Vec<String>,
}

impl SealPage {
    fn header(&self) -> &crate::spec::document::Header {
        &self.seal.frozen.spec.header
    }

    fn size(&self, piece: &SealedPiece) -> &str {
        let size = self.seal.frozen.spec.size(&piece.size);
        size.map_or("", |it| it.code.as_str())
    }
}

pub async fn show(
    may: MayOn<act::Read>,
    State(app): State<App>,
    Path((_, seal)): Path<(String, String)>,
) -> Answer {
    let (t, store, reader) = (may.who.t, &app.store, &may.permit);
    let id = SealId::new(seal);
    let seals = store.seals(reader).await?;
    let seal = seals.into_iter().find(|it| it.id == id);
    let seal = seal.ok_or(Problem::NotFound)?;
    let style = reader.style();
    let spec = &seal.frozen.spec;
    let newest = store.newest(reader).await?;
    let current = newest.filter(|it| it.standing == Standing::Current);
    let current = current.map(|it| it.number);
    let submissions = store.submissions(reader).await?;
    let approvals = submissions
        .iter()
        .filter(|it| seal.approvals.contains(&it.id));
    let approvals = approvals.map(|it| {
        let thing = called(t, &it.frozen.spec, &it.anchor);
        let option = t
            .say("approvals-option")
            .with("option", nth(it.number as usize - 1));
        format!("{thing}, {option}")
    });
    let threads = store.thread_facts(reader).await?;
    let conceded = threads
        .iter()
        .filter(|it| seal.concessions.contains(&it.id));
    let conceded = conceded.map(|it| {
        let href = format!("/styles/{style}/threads/{}", it.id);
        (
            href,
            format!("{}: {}", t.name(&it.kind), named(spec, &it.item)),
        )
    });
    let mut signatures = store.signatures(reader).await?;
    signatures.retain(|it| it.subject == SubjectKind::Seal && it.subject_id == id.as_str());
    let (word, shape) = standing(t, |side| signatures.iter().any(|it| it.side == side));
    let digest = seal
        .record()
        .digest()
        .map_err(|cause| Problem::fault(&cause))?;
    let signing = SignBox::of(
        &may.who,
        reader,
        Facts {
            subject: Subject::Seal {
                revision: seal.revision,
                digest: &digest,
            },
            subject_id: id.as_str(),
            digest: &digest,
            // The record has every piece, number and place.
            figures: "",
            spec,
            org: &seal.org,
            org_name: &seal.org_name,
            brand_name: &may.who.session.brand_name,
            action: format!("/styles/{style}/seals/{id}/sign"),
            signatures: &signatures,
            threads: &threads,
            signed: &store.signed(reader).await?,
        },
    );
    let (approvals, concessions) = (approvals.collect(), conceded.collect());
    let inspections = earlier(t, style, &seal, &store.inspections(reader).await?);
    let known = store.to_inspect(reader, &id, None).await?;
    let keeps = known.blocks.iter();
    let keeps: Vec<String> = keeps.map(|why| t.why(why).to_string()).collect();
    let may_inspect = reader.also::<act::Inspect>().is_ok();
    page(&SealPage {
        t,
        frame: may.who.frame(),
        style: style.clone(),
        by: name_or_erased(t, seal.person.as_deref()),
        newer: current.filter(|it| *it != seal.revision),
        none_current: current.is_none(),
        word,
        shape,
        approvals,
        concessions,
        signing,
        inspections,
        inspect: may_inspect.then(|| here(style, &id)),
        keeps,
        seal,
    })
}

/// What a seal has come to, in a word and its shape, by which sides have signed it.
pub fn standing(t: Text, signed: impl Fn(Side) -> bool) -> (String, &'static str) {
    let unsigned = [Side::Factory, Side::Brand].into_iter();
    let mut unsigned = unsigned.filter(|side| !signed(*side));
    let (word, shape) = match (unsigned.next(), unsigned.next()) {
        (None, _) => (t.say("seal-sealed"), "done"),
        (Some(side), None) => (t.say("seal-waits").with("side", t.name(&side)), "half"),
        (Some(_), Some(_)) => (t.say("seal-waits-both"), "open"),
    };
    (word.to_string(), shape)
}

/// Signs a seal for the reader's side.
pub async fn submit_signature(
    may: MayOn<act::Sign>,
    State(app): State<App>,
    Path((style, seal)): Path<(String, String)>,
    form: Form,
) -> Answer {
    let id = SealId::new(seal);
    sign(&may, &app, Sign::Seal(&id), "", &form).await?;
    go(&format!("/styles/{style}/seals/{id}?said=signed#sign"))
}
