//! Asking a factory for samples.

use std::collections::BTreeMap;

use askama::Template;
use axum::extract::{Query, State};

use crate::access::act;
use crate::exchange::Refused;
use crate::exchange::revision::Standing;
use crate::exchange::round::{Kind, MOST_PIECES};
use crate::language::{Message, Text};
use crate::spec::{ItemId, OrgId, StyleId};
use crate::store::{NewRound, Revision, Shared, StoreError, StyleName};
use crate::web::App;
use crate::web::form::{Errors, Fields, Form};
use crate::web::frame::Frame;
use crate::web::may::MayOn;
use crate::web::page::{Answer, go, page, page_again};
use crate::web::problem::Problem;
use crate::web::refusal::{WayOn, ways_on};

#[derive(Template)]
#[template(path = "brand/new_round.html")]
struct NewRoundPage {
    t: Text,
    frame: Frame,
    style: StyleId,
    name: StyleName,
    /// `None`: nothing is published, or the newest was withdrawn.
    current: Option<Revision>,
    /// The factories that the style is shared with now.
    factories: Vec<Shared>,
    typed: Typed,
    errors: Errors,
    refused: Option<(String, Vec<WayOn>)>,
}

/// The form as it stands.
struct Typed {
    org: String,
    kind: Kind,
    /// How many of each size, as typed.
    counts: BTreeMap<ItemId, String>,
}

impl NewRoundPage {
    fn count(&self, size: &ItemId) -> &str {
        self.typed.counts.get(size).map_or("", String::as_str)
    }

    /// What a round of this kind is for.
    fn help(&self, kind: &Kind) -> Message {
        self.t.say(match kind {
            Kind::Proto => "rounds-kind-proto-help",
            Kind::Fit => "rounds-kind-fit-help",
            Kind::SizeSet => "rounds-kind-size-set-help",
            Kind::PreProduction => "rounds-kind-pre-production-help",
            Kind::TopOfProduction => "rounds-kind-top-of-production-help",
        })
    }
}

pub async fn show(
    may: MayOn<act::Decide>,
    State(app): State<App>,
    Query(query): Query<BTreeMap<String, String>>,
) -> Answer {
    let mut form = load(&may, &app).await?;
    if let Some(org) = query.get("org") {
        form.typed.org.clone_from(org);
    }
    page(&form)
}

pub async fn submit(may: MayOn<act::Decide>, State(app): State<App>, form: Form) -> Answer {
    let t = may.who.t;
    let mut again = load(&may, &app).await?;
    // The revision that the page showed: when another was published since, the rules refuse.
    let revision = form.fields.number("revision").ok_or(Problem::BadForm)?;
    let sizes = match app.store.revision(&may.permit.also()?, revision).await {
        Ok(shown) => shown.frozen.chart.sizes.clone(),
        Err(StoreError::Missing) => return Err(Problem::BadForm),
        Err(other) => return Err(other.into()),
    };
    again.typed = typed(&form.fields, &sizes);
    let mut pieces = Vec::new();
    for size in &sizes {
        let count = again.count(size);
        match count.parse::<usize>() {
            _ if count.is_empty() => {}
            Ok(count) if count <= MOST_PIECES => {
                pieces.extend(std::iter::repeat_n(size.clone(), count));
            }
            _ => again.errors.add(
                size.as_str(),
                t.say("rounds-count-wrong").with("most", MOST_PIECES),
            ),
        }
    }
    if again.typed.org.is_empty() {
        again.errors.add("org", t.say("rounds-factory-missing"));
    }
    if !again.errors.is_empty() {
        return page_again(&again);
    }
    let new = NewRound {
        org: &OrgId::new(again.typed.org.clone()),
        kind: again.typed.kind,
        revision,
        pieces: &pieces,
    };
    match app.store.request_round(&may.permit, new).await {
        Ok(round) => go(&format!("/styles/{}/rounds/{round}?said=made", again.style)),
        Err(StoreError::Refused(why, style)) => {
            again.refused = Some((t.why(&why).to_string(), ways_on(t, &why, &style)));
            page_again(&again)
        }
        Err(other) => Err(other.into()),
    }
}

fn typed(fields: &Fields, sizes: &[ItemId]) -> Typed {
    let count = |size: &ItemId| fields.text(&format!("count-{size}")).to_owned();
    Typed {
        org: fields.text("org").to_owned(),
        kind: Kind::from_name(fields.text("kind")).unwrap_or(Kind::Proto),
        counts: sizes
            .iter()
            .map(|size| (size.clone(), count(size)))
            .collect(),
    }
}

async fn load(may: &MayOn<act::Decide>, app: &App) -> Result<NewRoundPage, Problem> {
    let t = may.who.t;
    let read = may.permit.also::<act::Read>()?;
    let current = app.store.newest(&read).await?;
    let current = current.filter(|newest| newest.standing == Standing::Current);
    let mut factories = app.store.shares(&read).await?;
    factories.retain(|share| share.ended_at.is_none());
    let mut counts = BTreeMap::new();
    if let Some(current) = &current {
        counts.insert(current.frozen.chart.base_size.clone(), "1".to_owned());
    }
    let refused = match (&current, factories.is_empty()) {
        (None, _) => Some(Refused::NotCurrent { current: None }),
        (_, true) => Some(Refused::NotShared),
        _ => None,
    };
    let style = may.permit.style();
    Ok(NewRoundPage {
        t,
        frame: may.who.frame(),
        style: style.clone(),
        name: app.store.style_name(&read).await?,
        typed: Typed {
            org: match &factories[..] {
                [only] => only.org.to_string(),
                _ => String::new(),
            },
            kind: Kind::Proto,
            counts,
        },
        current,
        factories,
        errors: Errors::default(),
        refused: refused.map(|why| {
            let sentence = match why {
                Refused::NotShared => t.say("rounds-not-shared").to_string(),
                _ => t.say("rounds-none-current").to_string(),
            };
            (sentence, ways_on(t, &why, style))
        }),
    })
}
