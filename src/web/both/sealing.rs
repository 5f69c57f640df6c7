//! Sealing pieces of an approved round: everything that keeps them from being sealed, each with its
//! way on; when nothing does, the form.

use askama::Template;
use axum::extract::{Path, State};

use super::round::address;
use crate::access::{Side, StylePermit, act};
use crate::exchange::Refused;
use crate::exchange::approval::Anchor;
use crate::exchange::seal::Keep;
use crate::exchange::thread::Thread;
use crate::language::Text;
use crate::spec::{ItemId, RoundId, Spec, StyleId};
use crate::store::{Round, StoreError, ToSeal};
use crate::web::App;
use crate::web::form::{Errors, Fields, Form};
use crate::web::frame::Frame;
use crate::web::may::{MayOn, Who};
use crate::web::page::{Answer, go, page, page_again};
use crate::web::problem::Problem;
use crate::web::refusal::{WayOn, ways_on};

#[derive(Template)]
#[template(path = "both/sealing.html")]
struct SealingPage {
    t: Text,
    frame: Frame,
    style: StyleId,
    /// The round's own address.
    base: String,
    round: Round,
    blocks: Vec<Block>,
    /// For an owner, when nothing else blocks.
    pieces: Vec<PieceForm>,
    approvals: usize,
    concessions: usize,
    errors: Errors,
}

/// What keeps it from being sealed, and the ways on.
struct Block {
    sentence: String,
    /// What it is about, by name.
    things: Vec<String>,
    ways: Vec<WayOn>,
}

/// A piece as it stands in the form.
struct PieceForm {
    number: u32,
    size: String,
    /// Critical points that keep it from being sealed.
    out: Vec<String>,
    chosen: bool,
    tag: String,
    keeper: Side,
    place: String,
}

impl SealingPage {
    fn header(&self) -> &crate::spec::document::Header {
        &self.round.frozen.spec.header
    }

    /// What is wrong with a field of a piece.
    fn error(&self, field: &str, number: &u32) -> Option<&str> {
        self.errors.of(&format!("{field}-{number}"))
    }
}

/// Where the round's pieces are sealed.
fn here(style: &StyleId, round: &RoundId) -> String {
    format!("{}/seal", address(style, round))
}

pub async fn show(
    may: MayOn<act::Read>,
    State(app): State<App>,
    Path((_, round)): Path<(String, String)>,
) -> Answer {
    let id = RoundId::new(round);
    let known = app.store.to_seal(&may.permit, &id).await?;
    page(&load(&app, &may.permit, &may.who, known, None, Errors::default()).await?)
}

/// Seals what was chosen; what is wrong with the form comes back beside its fields.
pub async fn submit(
    may: MayOn<act::Seal>,
    State(app): State<App>,
    Path((_, round)): Path<(String, String)>,
    form: Form,
) -> Answer {
    let t = may.who.t;
    let id = RoundId::new(round);
    let reader = may.permit.also::<act::Read>()?;
    let known = app.store.to_seal(&reader, &id).await?;
    let mut errors = Errors::default();
    let typed = read(t, &known.round, &form.fields, &mut errors);
    if let (true, Some(why)) = (errors.is_empty(), known.blocks.first()) {
        let style = may.permit.style().clone();
        return Err(Problem::Refused(why.clone(), Some(style)));
    }
    let chosen = typed.iter().filter(|it| it.chosen);
    let pieces = chosen.filter_map(|it| {
        let piece = known
            .round
            .pieces
            .iter()
            .find(|piece| piece.number == it.number)?;
        Some(Keep {
            piece: &piece.id,
            tag: &it.tag,
            keeper: it.keeper,
            place: &it.place,
        })
    });
    let pieces: Vec<Keep<'_>> = pieces.collect();
    if errors.is_empty() {
        match app.store.seal(&may.permit, &id, &pieces).await {
            Ok(seal) => {
                let style = may.permit.style();
                return go(&format!("/styles/{style}/seals/{seal}?said=sealed"));
            }
            Err(StoreError::Refused(why, _)) => errors.add("pieces", t.why(&why)),
            Err(other) => return Err(other.into()),
        }
    }
    page_again(&load(&app, &reader, &may.who, known, Some(typed), errors).await?)
}

fn read(t: Text, round: &Round, fields: &Fields, errors: &mut Errors) -> Vec<PieceForm> {
    let pieces = round.pieces.iter().map(|piece| {
        let number = piece.number;
        let chosen = fields.text(&format!("keep-{number}")) == "yes";
        let mut line = |name: &str| {
            let field = format!("{name}-{number}");
            let text = fields.line(t, &field, errors);
            if chosen && text.is_empty() {
                errors.add(field, t.say("error-missing"));
            }
            text
        };
        PieceForm {
            tag: line("tag"),
            place: line("place"),
            keeper: Side::from_name(fields.text(&format!("keeper-{number}")))
                .unwrap_or(Side::Brand),
            size: String::new(),
            out: Vec::new(),
            chosen,
            number,
        }
    });
    let pieces: Vec<PieceForm> = pieces.collect();
    if pieces.iter().all(|it| !it.chosen) {
        errors.add("pieces", t.say("refused-seal-unsaid"));
    }
    pieces
}

async fn load(
    app: &App,
    reader: &StylePermit<act::Read>,
    who: &Who,
    known: ToSeal,
    typed: Option<Vec<PieceForm>>,
    errors: Errors,
) -> Result<SealingPage, Problem> {
    let t = who.t;
    let store = &app.store;
    let style = reader.style();
    let threads = store.thread_facts(reader).await?;
    let round = &known.round;
    let spec = &round.frozen.spec;
    let sealed = store.seals(reader).await?;
    let sealed = sealed.into_iter().find(|it| it.round == round.id);
    let sealed = sealed.map(|it| format!("/styles/{style}/seals/{}", it.id));
    let around = Around {
        t,
        style,
        spec,
        round,
        threads: &threads,
        sealed,
        asks: reader.also::<act::Decide>().is_ok(),
    };
    let blocks = known.blocks.iter().map(|why| around.block(why)).collect();
    let mut pieces = match (known.blocks.is_empty(), typed) {
        (false, _) => Vec::new(),
        (true, Some(typed)) => typed,
        (true, None) => {
            let pieces = round.pieces.iter();
            let empty = |number| PieceForm {
                number,
                size: String::new(),
                out: Vec::new(),
                chosen: false,
                tag: String::new(),
                keeper: Side::Brand,
                place: String::new(),
            };
            pieces.map(|piece| empty(piece.number)).collect()
        }
    };
    for form in &mut pieces {
        let piece = round.pieces.iter().find(|it| it.number == form.number);
        let Some(piece) = piece else { continue };
        let size = spec.size(&piece.size);
        form.size = size.map_or("", |it| it.code.as_str()).to_owned();
        let out = known.out.get(&piece.id).into_iter().flatten();
        form.out = out.map(|it| named(spec, it)).collect();
    }
    Ok(SealingPage {
        t,
        frame: who.frame(),
        style: style.clone(),
        base: here(style, &round.id),
        blocks,
        pieces,
        approvals: known.approvals.len(),
        concessions: known.concessions.len(),
        errors,
        round: known.round,
    })
}

/// A thing to approve by its kind and name: a colour with the cloth that it is on.
pub fn called(t: Text, spec: &Spec, anchor: &Anchor) -> String {
    let fabric = anchor.fabric.as_ref().map(|it| named(spec, it));
    let name = match (anchor.colour(spec), fabric) {
        (Some(colour), Some(fabric)) => format!("{} ({fabric})", colour.name),
        _ => named(spec, &anchor.item),
    };
    format!("{}: {name}", t.name(&anchor.kind))
}

/// Letter and name of an item.
pub fn named(spec: &Spec, id: &ItemId) -> String {
    let item = spec.item(id);
    let words = item.map(|it| format!("{} {}", it.letter(), it.name()));
    words.unwrap_or_default().trim().to_owned()
}

/// What the ways on are made from.
struct Around<'a> {
    t: Text,
    style: &'a StyleId,
    spec: &'a Spec,
    round: &'a Round,
    threads: &'a [Thread],
    /// The address of the seal that there is.
    sealed: Option<String>,
    /// The reader may ask for rounds.
    asks: bool,
}

impl Around<'_> {
    fn block(&self, why: &Refused) -> Block {
        let things = match why {
            Refused::NotApprovedYet { things } => things
                .iter()
                .map(|it| called(self.t, self.spec, it))
                .collect(),
            Refused::PieceCriticalOut { points } => {
                points.iter().map(|it| named(self.spec, it)).collect()
            }
            _ => Vec::new(),
        };
        Block {
            sentence: self.t.why(why).to_string(),
            things,
            ways: self.ways_on(why),
        }
    }

    fn ways_on(&self, why: &Refused) -> Vec<WayOn> {
        let (t, style) = (self.t, self.style);
        let org = &self.round.org;
        let way = |href: String, label: String| vec![WayOn { href, label }];
        match why {
            Refused::AlreadySealed => match &self.sealed {
                Some(href) => way(href.clone(), t.say("seal-open").to_string()),
                None => Vec::new(),
            },
            Refused::TooEarlyToSeal { .. } | Refused::SizeSetMissing | Refused::SubstitutesSent
                if self.asks =>
            {
                way(
                    format!("/styles/{style}/rounds/new?org={org}"),
                    t.say("rounds-another").to_string(),
                )
            }
            Refused::RoundNotApproved { .. } => way(
                address(style, &self.round.id),
                t.say("seal-to-round").to_string(),
            ),
            Refused::QuestionsBeforeSealing { threads }
            | Refused::MustFixUnverified { threads } => {
                let known = self.threads.iter().filter(|it| threads.contains(&it.id));
                let way = |thread: &Thread| WayOn {
                    href: format!("/styles/{style}/threads/{}", thread.id),
                    label: t
                        .say("sign-to-thread")
                        .with("kind", t.name(&thread.kind))
                        .with("item", named(self.spec, &thread.item))
                        .to_string(),
                };
                known.map(way).collect()
            }
            Refused::NotApprovedYet { .. } => way(
                format!("/styles/{style}/approvals?with={org}"),
                t.say("approvals-title").to_string(),
            ),
            Refused::PieceCriticalOut { points } => {
                let way = |point: &ItemId| WayOn {
                    href: format!(
                        "/styles/{style}/revisions/{}/items/{point}",
                        self.round.revision
                    ),
                    label: named(self.spec, point),
                };
                points.iter().map(way).collect()
            }
            other => ways_on(t, other, style),
        }
    }
}
