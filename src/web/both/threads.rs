//! Threads: what one looks like on its item's page, writing into it and moving it on.

pub mod said;

use std::collections::BTreeSet;

use axum::extract::{Path, State};

use self::said::{Said, said};
use super::item::{MOST_PHOTOS, Place, Returned, again, check_text};
use crate::access::{BringsPhotos, Side, StylePermit, act};
use crate::exchange::revision::Standing;
use crate::exchange::thread::{Kind, Move, State as ThreadState, Thread};
use crate::language::{Message as Words, Text};
use crate::spec::change::{changes, touched};
use crate::spec::{Digest, ItemId, RoundId, StyleId, ThreadId};
use crate::store::{Revision, Round, Says, StoreError, ThreadMove, ThreadView};
use crate::web::form::{Errors, Form, Upload};
use crate::web::frame::name_or_erased;
use crate::web::may::{MayOn, Who};
use crate::web::page::{Answer, go};
use crate::web::problem::Problem;
use crate::web::refusal::{self, WayOn, ways_on};
use crate::web::{App, shape, upload};

/// A thread as its reader sees it.
pub struct Card {
    pub id: ThreadId,
    /// Who raised it, and for the brand with whom.
    pub heading: String,
    pub kind: String,
    pub kind_shape: &'static str,
    pub state: String,
    pub shape: &'static str,
    pub raised_on: u32,
    /// Who must act next; nothing when nobody must.
    pub next: Option<String>,
    pub messages: Vec<Said>,
    pub may_write: bool,
    pub moves: Vec<Button>,
    /// The round that *verify* is about.
    pub round: Option<RoundId>,
    /// What was typed and not taken.
    pub text: String,
    pub errors: Errors,
    pub upheld: Option<Upheld>,
}

/// A move that the rules let this reader make.
pub struct Button {
    pub name: &'static str,
    pub label: String,
    /// It cannot be taken back.
    pub final_: bool,
}

/// A refusal of the rules, with the ways on.
pub struct Upheld {
    pub why: String,
    pub ways_on: Vec<WayOn>,
}

/// To the thread on its item's page.
pub async fn show(
    may: MayOn<act::Read>,
    State(app): State<App>,
    Path((_, thread)): Path<(String, String)>,
) -> Answer {
    let thread = ThreadId::new(thread);
    let (place, _) = place_of(&app, &may.permit, &thread).await?;
    let Place { revision, item } = place;
    let style = may.permit.style();
    go(&format!(
        "/styles/{style}/revisions/{revision}/items/{item}#thread-{thread}"
    ))
}

/// Writes into a thread.
pub async fn say(
    may: MayOn<act::Answer>,
    State(app): State<App>,
    Path((_, thread)): Path<(String, String)>,
    form: Form,
) -> Answer {
    let id = ThreadId::new(thread);
    let read = may.permit.also::<act::Read>()?;
    let (place, thread) = place_of(&app, &read, &id).await?;
    let Form { fields, uploads } = form;
    let t = may.who.t;
    let mut errors = Errors::default();
    // A photograph may say it all.
    check_text(t, &fields, &mut errors, !uploads.is_empty());
    // Before the pictures are drawn: nobody waits for them in vain.
    let mut upheld = match thread.step(may.permit.actor(), Move::Message) {
        Ok(_) => None,
        Err(why) => Some(Upheld::new(t, may.permit.style(), &why)),
    };
    if errors.is_empty() && upheld.is_none() {
        let photos = photos(&app, &may.permit, t, uploads, &mut errors).await?;
        let says = Says {
            text: fields.text("text"),
            language: &may.who.session.language,
            photos: &photos,
        };
        if errors.is_empty() {
            match app.store.say(&may.permit, &id, says).await {
                Ok(()) => return go(&place.address(may.permit.style(), "sent", &id)),
                Err(StoreError::Refused(why, style)) => {
                    upheld = Some(Upheld::new(t, &style, &why));
                }
                Err(other) => return Err(other.into()),
            }
        }
    }
    let returned = Returned {
        thread: Some(id),
        fields,
        errors,
        upheld,
    };
    again(&app, &read, &may.who, &place, returned).await
}

/// Moves a thread on.
pub async fn step(
    may: MayOn<act::Answer>,
    State(app): State<App>,
    Path((_, thread)): Path<(String, String)>,
    form: Form,
) -> Answer {
    let id = ThreadId::new(thread);
    let read = may.permit.also::<act::Read>()?;
    let (place, _) = place_of(&app, &read, &id).await?;
    let mv = match form.fields.text("move") {
        "agree" => ThreadMove::Agree,
        "close" => ThreadMove::Close,
        "reopen" => ThreadMove::Reopen,
        "grant" => ThreadMove::Grant,
        "mark_changed" => ThreadMove::MarkChanged,
        "verify" => ThreadMove::Verify(RoundId::new(form.fields.text("round"))),
        _ => return Err(Problem::BadForm),
    };
    match app.store.move_thread(&may.permit, &id, &mv).await {
        Ok(()) => go(&place.address(may.permit.style(), "moved", &id)),
        Err(StoreError::Refused(why, style)) => {
            let returned = Returned {
                thread: Some(id),
                fields: form.fields,
                errors: Errors::default(),
                upheld: Some(Upheld::new(may.who.t, &style, &why)),
            };
            again(&app, &read, &may.who, &place, returned).await
        }
        Err(other) => Err(other.into()),
    }
}

/// Keeps the photographs of a message. One that cannot be taken is said beside the field.
pub async fn photos<A: BringsPhotos>(
    app: &App,
    permit: &StylePermit<A>,
    t: Text,
    uploads: Vec<Upload>,
    errors: &mut Errors,
) -> Result<Vec<Digest>, Problem> {
    if uploads.len() > MOST_PHOTOS {
        errors.add(
            "photos",
            t.say("error-photos-many").with("count", MOST_PHOTOS),
        );
    }
    let mut photos = Vec::new();
    for photo in uploads {
        // With anything wrong the form comes back, and browsers keep no file in it.
        if !errors.is_empty() {
            break;
        }
        let name = photo.name.clone();
        match upload::photo(app, permit, photo).await {
            Ok(digest) => photos.push(digest),
            Err(Problem::Upload(why)) => {
                errors.add("photos", format!("{name}: {}", refusal::upload(t, &why)));
            }
            Err(other) => return Err(other),
        }
    }
    Ok(photos)
}

/// Where a thread stands: on the newest revision that has its item. At least the one that it was
/// raised on has it.
pub(super) async fn place_of(
    app: &App,
    permit: &StylePermit<act::Read>,
    id: &ThreadId,
) -> Result<(Place, Thread), Problem> {
    let threads = app.store.threads(permit).await?;
    let thread = threads.into_iter().find(|thread| thread.facts.id == *id);
    let thread = thread.ok_or(Problem::NotFound)?.facts;
    let revisions = app.store.revisions(permit).await?;
    let newest = revisions
        .iter()
        .find(|revision| revision.frozen.spec.item(&thread.item).is_some());
    let place = Place {
        revision: newest.map_or(thread.raised_on, |revision| revision.number),
        item: thread.item.clone(),
    };
    Ok((place, thread))
}

impl Upheld {
    fn new(t: Text, style: &StyleId, why: &crate::exchange::Refused) -> Self {
        Self {
            why: t.why(why).to_string(),
            ways_on: ways_on(t, why, style),
        }
    }
}

/// The threads on an item, those that are not settled first.
pub async fn cards(
    app: &App,
    permit: &StylePermit<act::Read>,
    who: &Who,
    revisions: &[Revision],
    item: &ItemId,
    mut returned: Option<Returned>,
) -> Result<Vec<Card>, Problem> {
    let mut threads = app.store.threads(permit).await?;
    threads.retain(|thread| thread.facts.item == *item);
    threads.sort_by_key(|thread| thread.facts.state.is_settled());
    let writes = permit.also::<act::Answer>().is_ok();
    let verifies = |thread: &ThreadView| {
        matches!(thread.facts.state, ThreadState::Changed { .. }) && permit.side() == Side::Brand
    };
    let rounds = match writes && threads.iter().any(verifies) {
        true => app.store.rounds(permit).await?,
        false => Vec::new(),
    };
    let seen = Seen {
        t: who.t,
        permit,
        revisions,
        rounds: &rounds,
    };
    let mut cards = Vec::with_capacity(threads.len());
    for thread in threads {
        let mut card = seen.card(thread, writes);
        if let Some(back) = returned.take_if(|back| back.thread.as_ref() == Some(&card.id)) {
            let typed = back.fields.text("text").to_owned();
            let mut messages = card.messages.iter_mut();
            match messages.find_map(|it| it.translation_refused(&back.errors)) {
                Some(form) => form.text = typed,
                None => card.text = typed,
            }
            card.errors = back.errors;
            card.upheld = back.upheld;
        }
        cards.push(card);
    }
    Ok(cards)
}

/// What a reader's view of a thread follows from.
struct Seen<'a> {
    t: Text,
    permit: &'a StylePermit<act::Read>,
    /// Newest first.
    revisions: &'a [Revision],
    /// Where a change may have been seen.
    rounds: &'a [Round],
}

impl Seen<'_> {
    fn card(&self, thread: ThreadView, writes: bool) -> Card {
        let t = self.t;
        let facts = &thread.facts;
        let message = facts.step(self.permit.actor(), Move::Message);
        Card {
            id: facts.id.clone(),
            heading: self.heading(&thread),
            kind: t.name(&facts.kind).to_string(),
            kind_shape: shape::kind(facts.kind),
            state: t.name(&facts.state).to_string(),
            shape: shape::thread(facts.state),
            raised_on: facts.raised_on,
            next: self.next(&thread).map(String::from),
            may_write: writes && message.is_ok(),
            moves: match writes {
                true => self.moves(facts),
                false => Vec::new(),
            },
            round: self.measured_in(facts).map(|round| round.id.clone()),
            messages: thread
                .messages
                .into_iter()
                .map(|message| said(t, self.revisions, message, &thread.org_name, writes))
                .collect(),
            text: String::new(),
            errors: Errors::default(),
            upheld: None,
        }
    }

    fn heading(&self, thread: &ThreadView) -> String {
        let t = self.t;
        let person = name_or_erased(t, thread.asked_by.as_deref());
        let heading = match (self.permit.side(), thread.facts.asker_side) {
            (Side::Factory, Side::Brand) => t.say("thread-asked-by-brand").with("person", person),
            (Side::Factory, Side::Factory) => t.say("thread-asked-by").with("person", person),
            (Side::Brand, Side::Factory) => t
                .say("thread-asked-by-factory")
                .with("person", person)
                .with("factory", &thread.org_name),
            (Side::Brand, Side::Brand) => t
                .say("thread-asked-of-factory")
                .with("person", person)
                .with("factory", &thread.org_name),
        };
        heading.to_string()
    }

    /// Who must act next, and what they do.
    fn next(&self, thread: &ThreadView) -> Option<Words> {
        let t = self.t;
        let facts = &thread.facts;
        let side = facts.waits_for()?;
        if side == self.permit.side() {
            return Some(match facts.state {
                ThreadState::Open => t.say("thread-next-you-answer"),
                ThreadState::Answered => t.say("thread-next-you-read"),
                ThreadState::Agreed => t.say("thread-next-you-change"),
                _ => t.say("thread-next-you-verify"),
            });
        }
        let who = match side {
            Side::Brand => t.name(&Side::Brand).to_string(),
            Side::Factory => thread.org_name.clone(),
        };
        Some(match facts.state {
            ThreadState::Open => t.say("thread-next-answer").with("who", who),
            ThreadState::Answered => t.say("thread-next-read").with("who", who),
            ThreadState::Agreed => t.say("thread-next-change").with("who", who),
            _ => t.say("thread-next-verify").with("who", who),
        })
    }

    /// The moves that the rules let this reader make now.
    fn moves(&self, thread: &Thread) -> Vec<Button> {
        let t = self.t;
        let mut moves = Vec::new();
        let mut offer = |mv: Move<'_>, label: Words| {
            if thread.step(self.permit.actor(), mv).is_ok() {
                moves.push(Button {
                    name: mv.name(),
                    label: label.to_string(),
                    final_: mv == Move::Grant,
                });
            }
        };
        offer(Move::Agree, t.say("thread-agree"));
        if let Some((revision, touched)) = self.touched(thread) {
            let mv = Move::MarkChanged {
                revision,
                touched: &touched,
            };
            let label = t.say("thread-mark-changed").with("revision", revision);
            offer(mv, label);
        }
        if let Some(round) = self.measured_in(thread) {
            let mv = Move::Verify {
                revision: round.revision,
                measured: true,
            };
            let label = t
                .say("thread-verify")
                .with("kind", t.name(&round.kind))
                .with("number", round.number);
            offer(mv, label);
        }
        let close = match (thread.kind, self.permit.side()) {
            (Kind::Question, _) => t.say("thread-close-question"),
            (Kind::MustFix, _) => t.say("thread-close-must-fix"),
            (Kind::Suggestion, _) => t.say("thread-close-suggestion"),
            (Kind::Concession, Side::Brand) => t.say("thread-decline"),
            (Kind::Concession, Side::Factory) => t.say("thread-take-back"),
        };
        offer(Move::Close, close);
        offer(Move::Reopen, t.say("thread-reopen"));
        offer(Move::Grant, t.say("thread-grant"));
        moves
    }

    /// The current revision and every item that changed up to it since the thread was raised.
    fn touched(&self, thread: &Thread) -> Option<(u32, BTreeSet<ItemId>)> {
        if self.permit.side() != Side::Brand || thread.state.is_settled() {
            return None;
        }
        let newest = self.revisions.first()?;
        if newest.standing != Standing::Current {
            return None;
        }
        let mut revisions = self.revisions.iter();
        let raised = revisions.find(|old| old.number == thread.raised_on)?;
        let changes = changes(raised.frozen.version(), newest.frozen.version());
        Some((newest.number, touched(&changes)))
    }

    /// The newest round with this factory in which the thread's item was measured on a sample of
    /// a revision that carries the change.
    fn measured_in(&self, thread: &Thread) -> Option<&Round> {
        let carries = thread.state.changed_in()?;
        self.rounds
            .iter()
            .filter(|round| round.org == thread.factory && round.revision >= carries)
            .filter(|round| round.measurements.iter().any(|it| it.point == thread.item))
            .max_by_key(|round| round.number)
    }
}
