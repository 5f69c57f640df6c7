//! A revision on paper for both sides, and the draft for the brand: what is asked for, and the PDF.

use std::collections::BTreeSet;
use std::sync::Arc;
use std::time::Duration;

use askama::Template;
use axum::body::Bytes;
use axum::extract::{Path, RawQuery, State};
use axum::http::header;
use axum::response::IntoResponse;
use moka::sync::Cache;

use super::{number, plain};
use crate::access::{Side, StylePermit, act};
use crate::exchange::revision::Standing;
use crate::exchange::translation::Translations;
use crate::files::{Media, RenderError};
use crate::language::{Language, Text, terms_of};
use crate::print::paper::{
    Band, Enclosed, MOST_ATTACHED, NoPrint, Order, Paper, Parcel, Part, Use,
};
use crate::spec::{Digest, OrgId, StyleId};
use crate::store::StoreError;
use crate::web::App;
use crate::web::frame::Frame;
use crate::web::may::{MayOn, Who};
use crate::web::page::{Answer, page, page_again};
use crate::web::problem::Problem;

/// Bytes of all prints that are kept.
const KEPT: u64 = 64 * 1024 * 1024;
/// Pictures are shown as sharp as this many pixels across.
const SHARP: u32 = 2048;

/// How long a print is kept: it says when it was printed, and may name people.
const LONGEST: Duration = Duration::from_secs(10 * 60);

/// Prints of revisions, kept by everything that stands on them but the minute.
pub struct Prints(Cache<Key, Bytes>);

type Key = (Digest, Order);

impl Default for Prints {
    fn default() -> Self {
        let weight = |_: &Key, bytes: &Bytes| u32::try_from(bytes.len()).unwrap_or(u32::MAX);
        let kept = Cache::builder().weigher(weight).max_capacity(KEPT);
        Self(kept.time_to_live(LONGEST).build())
    }
}

#[derive(Template)]
#[template(path = "both/print.html")]
struct PrintPage {
    t: Text,
    frame: Frame,
    style: StyleId,
    number: String,
    /// Nothing for a draft.
    revision: Option<u32>,
    asked: Asked,
    /// Whom the brand may print for.
    factories: Vec<(OrgId, String)>,
    refused: Option<String>,
}

/// What the form asks for.
#[derive(Clone)]
struct Asked {
    languages: Vec<Language>,
    paper: Paper,
    parts: Vec<Part>,
    factory: Option<OrgId>,
}

impl Asked {
    /// What is missing or unknown is as a new form has it.
    fn of(t: Text, query: Option<&str>) -> Asked {
        let query = query.unwrap_or_default().as_bytes();
        let fields: Vec<(String, String)> = form_urlencoded::parse(query).into_owned().collect();
        let all = |name: &'static str| {
            let named = fields.iter().filter(move |(it, _)| it == name);
            named.map(|(_, value)| value.as_str())
        };
        let language = |name| all(name).next().and_then(Language::from_tag);
        let first = language("language").unwrap_or(t.language());
        let own = (first != Language::ORIGINAL).then_some(Language::ORIGINAL);
        let second = match all("second").next() {
            Some(tag) => Language::from_tag(tag),
            None => own,
        };
        let mut parts: Vec<Part> = all("part").filter_map(Part::from_name).collect();
        parts.sort();
        parts.dedup();
        if parts.is_empty() {
            parts = Part::ALL.to_vec();
        }
        let factory = all("for").find(|it| !it.is_empty()).map(OrgId::new);
        Asked {
            languages: [Some(first), second.filter(|it| *it != first)]
                .into_iter()
                .flatten()
                .collect(),
            paper: all("paper").find_map(Paper::from_name).unwrap_or(Paper::A4),
            parts,
            factory,
        }
    }
}

impl PrintPage {
    fn speaks(&self, at: usize, language: &Language) -> bool {
        self.asked.languages.get(at) == Some(language)
    }

    fn action(&self) -> String {
        let style = &self.style;
        match self.revision {
            Some(n) => format!("/styles/{style}/revisions/{n}/paper"),
            None => format!("/styles/{style}/draft/paper"),
        }
    }

    fn back(&self) -> String {
        let style = &self.style;
        match self.revision {
            Some(n) => format!("/styles/{style}/revisions/{n}"),
            None => format!("/styles/{style}"),
        }
    }
}

/// Where a print of a revision is asked for.
pub async fn show(
    may: MayOn<act::Read>,
    State(app): State<App>,
    Path((_, n)): Path<(String, String)>,
    RawQuery(query): RawQuery,
) -> Answer {
    let n = number(&n)?;
    let revision = app.store.revision(&may.permit, n).await?;
    let asked = Asked::of(may.who.t, query.as_deref());
    let number = revision.frozen.spec.header.number.clone();
    page(&form(&app, &may.permit, &may.who, number, Some(n), asked).await?)
}

/// Where a print of the draft is asked for.
pub async fn draft(
    may: MayOn<act::Review>,
    State(app): State<App>,
    RawQuery(query): RawQuery,
) -> Answer {
    let draft = app.store.draft(&may.permit).await?;
    let asked = Asked::of(may.who.t, query.as_deref());
    let read = may.permit.also()?;
    let number = draft.spec.header.number.clone();
    page(&form(&app, &read, &may.who, number, None, asked).await?)
}

async fn form(
    app: &App,
    permit: &StylePermit<act::Read>,
    who: &Who,
    number: String,
    revision: Option<u32>,
    asked: Asked,
) -> Result<PrintPage, Problem> {
    let factories = match (permit.side(), revision) {
        (Side::Brand, Some(_)) => {
            let shares = app.store.shares(permit).await?.into_iter();
            let shared = shares.filter(|share| share.ended_at.is_none());
            shared.map(|share| (share.org, share.name)).collect()
        }
        _ => Vec::new(),
    };
    Ok(PrintPage {
        t: who.t,
        frame: who.frame(),
        style: permit.style().clone(),
        number,
        revision,
        asked,
        factories,
        refused: (!printable(app)).then(|| who.t.say("print-no-address").to_string()),
    })
}

/// Outside the demo no code is printed that leads to this machine alone.
fn printable(app: &App) -> bool {
    app.settings.demo || app.settings.reachable()
}

/// A revision as PDF.
pub async fn paper(
    may: MayOn<act::Read>,
    State(app): State<App>,
    Path((_, n)): Path<(String, String)>,
    RawQuery(query): RawQuery,
) -> Answer {
    let n = number(&n)?;
    let permit = &may.permit;
    let revision = app.store.revision(permit, n).await?;
    let number = &revision.frozen.spec.header.number;
    let asked = Asked::of(may.who.t, query.as_deref());
    let form = form(
        &app,
        permit,
        &may.who,
        number.clone(),
        Some(n),
        asked.clone(),
    )
    .await?;
    if form.refused.is_some() {
        return page_again(&form);
    }
    let code = app
        .store
        .print_code(permit, n, asked.factory.as_ref())
        .await?;
    let session = &may.who.session;
    let named = form.factories.iter();
    let mut named = named.filter(|(org, _)| Some(org) == asked.factory.as_ref());
    let whom = match (permit.side(), named.next()) {
        (Side::Factory, _) => session.org_name.clone(),
        (Side::Brand, Some((_, name))) => name.clone(),
        (Side::Brand, None) => session.brand_name.clone(),
    };
    let band = match &revision.standing {
        Standing::Current => None,
        Standing::Superseded { by, .. } => Some(Band::Superseded(*by)),
        Standing::Withdrawn { .. } => Some(Band::Withdrawn),
    };
    let mut order = order(&app, &asked, band, whom, &code);
    order.digest = Some(revision.digest.clone());
    let printed = std::mem::take(&mut order.printed);
    let key = (revision.digest.clone(), order.clone());
    let name = format!("{}-revision-{n}", plain(number));
    if let Some(kept) = app.prints.0.get(&key) {
        return Ok(send(&name, kept));
    }
    order.printed = printed;
    let before = match n {
        0 | 1 => Vec::new(),
        _ => app.store.revision_bytes(permit, n - 1).await?,
    };
    let document = app.store.revision_bytes(permit, n).await?;
    let (files, left_out) = enclosed(&app, permit, &revision.frozen.files).await?;
    let parcel = Parcel {
        order,
        document,
        before,
        files,
        left_out,
        beside: Translations::default(),
    };
    match made(&app, may.who.t, parcel).await? {
        Ok(pdf) => {
            app.prints.0.insert(key, pdf.clone());
            Ok(send(&name, pdf))
        }
        Err(refused) => page_again(&PrintPage {
            refused: Some(refused),
            ..form
        }),
    }
}

/// The draft as PDF, as it is now.
pub async fn draft_paper(
    may: MayOn<act::Review>,
    State(app): State<App>,
    RawQuery(query): RawQuery,
) -> Answer {
    let draft = app.store.draft(&may.permit).await?;
    let read = may.permit.also()?;
    let number = draft.spec.header.number.clone();
    let asked = Asked::of(may.who.t, query.as_deref());
    let form = form(&app, &read, &may.who, number.clone(), None, asked.clone()).await?;
    if form.refused.is_some() {
        return page_again(&form);
    }
    let code = app.store.draft_print_code(&may.permit).await?;
    let whom = may.who.session.brand_name.clone();
    let cards = app.store.revision_cards(&read).await?;
    let newest = cards.iter().map(|card| card.number).max();
    let before = match newest {
        Some(n) => app.store.revision_bytes(&read, n).await?,
        None => Vec::new(),
    };
    let document = serde_json::to_vec(&draft.spec);
    let (files, left_out) = enclosed(&app, &read, &draft.spec.files()).await?;
    let own = app.store.own_translations(&may.permit).await?;
    let book = app.store.book(&may.permit).await?;
    let beside = Translations::new(&draft.spec, &own, terms_of(&draft.spec, &book));
    let parcel = Parcel {
        order: order(&app, &asked, Some(Band::Draft), whom, &code),
        document: document.map_err(|error| Problem::fault(&error))?,
        before,
        files,
        left_out,
        beside,
    };
    match made(&app, may.who.t, parcel).await? {
        Ok(pdf) => Ok(send(&format!("{}-draft", plain(&number)), pdf)),
        Err(refused) => page_again(&PrintPage {
            refused: Some(refused),
            ..form
        }),
    }
}

fn order(app: &App, asked: &Asked, band: Option<Band>, factory: String, code: &str) -> Order {
    let languages = asked.languages.iter().map(|it| it.tag().to_owned());
    Order {
        languages: languages.collect(),
        paper: asked.paper,
        parts: asked.parts.clone(),
        band,
        factory,
        printed: app.store.world().now().as_str().to_owned(),
        address: format!("{}/p/{code}", app.settings.public_url),
        digest: None,
    }
}

/// What is shown of the files, and their originals as far as they are not too large together; then the
/// names of those that are left out.
async fn enclosed(
    app: &App,
    permit: &StylePermit<act::Read>,
    named: &BTreeSet<Digest>,
) -> Result<(Vec<Enclosed>, Vec<String>), Problem> {
    let mut enclosed = Vec::new();
    let mut left_out = Vec::new();
    let mut room = MOST_ATTACHED;
    for file in named {
        match app.store.picture(permit, file, SHARP).await {
            Ok(picture) => enclosed.push(Enclosed {
                file: file.clone(),
                as_what: Use::Picture,
                name: String::new(),
                media_type: picture.media_type,
                bytes: app.files.get(&picture.digest).await?,
            }),
            Err(StoreError::Missing) => {}
            Err(error) => return Err(error.into()),
        }
        let original = match app.store.original(permit, file).await {
            Ok(original) => original,
            // A photograph: no original of it is kept.
            Err(StoreError::Missing) => continue,
            Err(error) => return Err(error.into()),
        };
        let (_, length) = app.files.stream(&original.digest).await?;
        let length = usize::try_from(length).unwrap_or(usize::MAX);
        if length > room {
            left_out.push(original.name);
            continue;
        }
        room -= length;
        let ending = Media::from_mime(&original.media_type).map_or("bin", Media::extension);
        enclosed.push(Enclosed {
            file: file.clone(),
            as_what: Use::Original,
            // The fingerprint keeps two files of one name apart.
            name: format!("{}.{ending}", file.as_str().get(..10).unwrap_or_default()),
            media_type: original.media_type,
            bytes: app.files.get(&original.digest).await?,
        });
    }
    Ok((enclosed, left_out))
}

/// The PDF, or why there is none as a sentence.
async fn made(app: &App, t: Text, parcel: Parcel) -> Result<Result<Bytes, String>, Problem> {
    let packed = Arc::new(parcel.pack());
    let refusal = match app.renderer.paper(&packed).await {
        Ok(Ok(pdf)) => return Ok(Ok(pdf.into())),
        Ok(Err(refusal)) => refusal,
        Err(RenderError::TooSlow | RenderError::TooMuchMemory | RenderError::TooLarge) => {
            return Ok(Err(t.say("print-failed").to_string()));
        }
        Err(error) => return Err(Problem::fault(&error)),
    };
    match serde_json::from_str(&refusal) {
        Ok(NoPrint::NoFont { letters, packages }) => {
            let said = t
                .say("print-no-font")
                .with("letters", letters)
                .with("packages", packages);
            Ok(Err(said.to_string()))
        }
        Ok(NoPrint::Failed { why }) => Err(Problem::fault(&why)),
        Err(error) => Err(Problem::fault(&error)),
    }
}

fn send(name: &str, pdf: Bytes) -> axum::response::Response {
    let about = [
        (header::CONTENT_TYPE, "application/pdf".to_owned()),
        (
            header::CONTENT_DISPOSITION,
            format!("inline; filename=\"{name}.pdf\""),
        ),
        (header::CACHE_CONTROL, "private, no-cache".to_owned()),
    ];
    (about, pdf).into_response()
}
