//! One item of a revision, what is said about it, and asking about it. Threads stand where their
//! item is, in no list apart.

mod about;

use axum::extract::{Path, State};
use axum::http::{HeaderMap, StatusCode};
use axum::response::{Html, IntoResponse};

use askama::Template;

use self::about::{About, What, about};
use super::later::{Later, later};
use super::number;
use super::patch::Shape;
use super::threads::{Card, Upheld, cards, photos};
use crate::access::{Side, StylePermit, act};
use crate::exchange::revision::Standing;
use crate::exchange::thread::{Kind, raise};
use crate::language::Text;
use crate::spec::{ItemId, OrgId, StyleId, ThreadId};
use crate::store::{NewThread, Revision, Says};
use crate::web::App;
use crate::web::cached::cached;
use crate::web::form::{Errors, Fields, Form};
use crate::web::frame::Frame;
use crate::web::may::{MayOn, Who};
use crate::web::page::{Answer, go, page_again};
use crate::web::problem::Problem;

/// The longest message, in letters.
pub const LONGEST: usize = 4000;
/// The most photographs of one message.
pub const MOST_PHOTOS: usize = 4;

#[derive(Template)]
#[template(path = "both/item.html")]
struct ItemPage {
    t: Text,
    frame: Frame,
    side: Side,
    style: StyleId,
    style_number: String,
    style_name: String,
    revision: u32,
    standing: Standing,
    /// The newest revision, when it has this item no more.
    removed_in: Option<u32>,
    /// The current revision, when it is another one that has the item.
    newer: Option<u32>,
    about: About,
    /// Translations that came after the revision.
    later: Vec<Later>,
    threads: Vec<Card>,
    /// Nothing for whoever may not ask.
    ask: Option<AskForm>,
    most_photos: usize,
}

/// What the form to ask offers, and what was typed into it.
struct AskForm {
    kinds: Vec<Kind>,
    kind: Option<Kind>,
    /// The factories to choose from: for the brand only.
    factories: Vec<(OrgId, String)>,
    factory: Option<OrgId>,
    text: String,
    errors: Errors,
    /// The style is shared with nobody: there is nobody to ask.
    alone: bool,
}

/// A form of the page that was not taken: it comes back as it was sent.
pub struct Returned {
    /// Into which thread it was written; `None`: it asks anew.
    pub thread: Option<ThreadId>,
    pub fields: Fields,
    pub errors: Errors,
    /// Why the rules do not let it, with the ways on.
    pub upheld: Option<Upheld>,
}

pub async fn show(
    may: MayOn<act::Read>,
    State(app): State<App>,
    Path((_, n, item)): Path<(String, String, String)>,
    headers: HeaderMap,
) -> Answer {
    let place = Place {
        revision: number(&n)?,
        item: ItemId::new(item),
    };
    let page = build(&app, &may.permit, &may.who, &place, None);
    cached(&app, &may, &headers, page).await
}

/// Raises a thread.
pub async fn ask(
    may: MayOn<act::Ask>,
    State(app): State<App>,
    Path((_, n, item)): Path<(String, String, String)>,
    form: Form,
) -> Answer {
    let place = Place {
        revision: number(&n)?,
        item: ItemId::new(item),
    };
    let Form { fields, uploads } = form;
    let t = may.who.t;
    let mut errors = Errors::default();
    let kind = Kind::from_name(fields.text("kind"));
    if kind.is_none() {
        errors.add("kind", t.say("error-kind-missing"));
    }
    let factory = match may.permit.side() {
        Side::Factory => None,
        Side::Brand => Some(OrgId::new(fields.text("factory"))),
    };
    if factory.as_ref().is_some_and(|org| org.as_str().is_empty()) {
        errors.add("factory", t.say("error-factory-missing"));
    }
    check_text(t, &fields, &mut errors, false);
    let photos = photos(&app, &may.permit, t, uploads, &mut errors).await?;
    let (Some(kind), true) = (kind, errors.is_empty()) else {
        let returned = Returned {
            thread: None,
            fields,
            errors,
            upheld: None,
        };
        return again(&app, &may.permit.also()?, &may.who, &place, returned).await;
    };
    let new = NewThread {
        item: &place.item,
        revision: place.revision,
        kind,
        org: factory.as_ref(),
        says: Says {
            text: fields.text("text"),
            language: &may.who.session.language,
            photos: &photos,
        },
    };
    let thread = app.store.ask(&may.permit, new).await?;
    go(&place.address(may.permit.style(), "sent", &thread))
}

/// What is typed must be there, unless something else can stand alone, and not be endless.
pub fn check_text(t: Text, fields: &Fields, errors: &mut Errors, may_be_empty: bool) {
    let text = fields.text("text");
    if text.is_empty() && !may_be_empty {
        errors.add("text", t.say("error-text-missing"));
    } else if text.chars().count() > LONGEST {
        errors.add("text", t.say("error-text-long").with("most", LONGEST));
    }
}

/// An item of a revision: where its page is.
pub struct Place {
    pub revision: u32,
    pub item: ItemId,
}

impl Place {
    /// The way to a thread on its page, after the form of this code.
    pub fn address(&self, style: &StyleId, said: &str, thread: &ThreadId) -> String {
        let Place { revision, item } = self;
        format!("/styles/{style}/revisions/{revision}/items/{item}?said={said}#thread-{thread}")
    }
}

/// The page again, with the form that was not taken.
pub async fn again(
    app: &App,
    permit: &StylePermit<act::Read>,
    who: &Who,
    place: &Place,
    returned: Returned,
) -> Answer {
    let refused = returned.upheld.is_some();
    let page = build(app, permit, who, place, Some(returned)).await?;
    if refused {
        return Ok((StatusCode::CONFLICT, Html(page.render()?)).into_response());
    }
    page_again(&page)
}

async fn build(
    app: &App,
    permit: &StylePermit<act::Read>,
    who: &Who,
    place: &Place,
    returned: Option<Returned>,
) -> Result<ItemPage, Problem> {
    let t = who.t;
    let revisions = app.store.revisions(permit).await?;
    let revision = revisions
        .iter()
        .find(|revision| revision.number == place.revision)
        .ok_or(Problem::NotFound)?;
    let about = about(t, &revision.frozen, &place.item).ok_or(Problem::NotFound)?;
    let has = |revision: &&Revision| revision.frozen.spec.item(&place.item).is_some();
    let newest = revisions.first();
    let removed_in = newest.filter(|newest| !has(newest)).map(|it| it.number);
    let current = revisions
        .iter()
        .find(|revision| revision.standing == Standing::Current);
    let newer = current.filter(has).map(|current| current.number);
    let header = &revision.frozen.spec.header;
    let ask = ask_form(app, permit, returned.as_ref()).await?;
    Ok(ItemPage {
        t,
        frame: who.frame(),
        side: permit.side(),
        style: permit.style().clone(),
        style_number: header.number.clone(),
        style_name: header.name.clone(),
        revision: revision.number,
        standing: revision.standing.clone(),
        removed_in,
        newer: newer.filter(|newer| *newer != revision.number),
        threads: cards(app, permit, who, &revisions, &place.item, returned).await?,
        later: later(
            t,
            &revision.frozen,
            app.store.translations(permit).await?,
            Some(&place.item),
        ),
        about,
        ask,
        most_photos: MOST_PHOTOS,
    })
}

async fn ask_form(
    app: &App,
    permit: &StylePermit<act::Read>,
    returned: Option<&Returned>,
) -> Result<Option<AskForm>, Problem> {
    if permit.also::<act::Ask>().is_err() {
        return Ok(None);
    }
    let factories: Vec<(OrgId, String)> = match permit.side() {
        Side::Factory => Vec::new(),
        Side::Brand => {
            let shares = app.store.shares(permit).await?.into_iter();
            let shares = shares.filter(|share| share.ended_at.is_none());
            shares.map(|share| (share.org, share.name)).collect()
        }
    };
    let typed = returned.filter(|returned| returned.thread.is_none());
    let text = |name: &str| typed.map_or("", |typed| typed.fields.text(name));
    let only = match factories.as_slice() {
        [(only, _)] => Some(only.clone()),
        _ => None,
    };
    let factory = Some(text("factory")).filter(|org| !org.is_empty());
    Ok(Some(AskForm {
        kinds: Kind::ALL
            .into_iter()
            .filter(|kind| raise(permit.side(), *kind).is_ok())
            .collect(),
        kind: Kind::from_name(text("kind")),
        alone: permit.side() == Side::Brand && factories.is_empty(),
        factory: factory.map(OrgId::new).or(only),
        factories,
        text: text("text").to_owned(),
        errors: typed.map_or_else(Errors::default, |typed| typed.errors.clone()),
    }))
}
