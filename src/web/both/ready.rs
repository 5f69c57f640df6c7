//! Ready sentences: chosen from a list, filled in, and read by each side in its own language.
//!
//! A message of one is in no language (`zxx`) and its text is the canonical form, so that what the
//! ledger hashes is the id and the slots. A sentence that needs nothing but the item is sent from
//! the list by one button.

use askama::Template;
use axum::extract::{Path, Query, State};
use serde::Deserialize;

use super::item::Place;
use super::number;
use super::threads::place_of;
use crate::access::{Side, StylePermit, act};
use crate::exchange::phrase::{self, Filled, Group, PHRASES, Phrase, Said, SlotKind};
use crate::exchange::revision::Frozen;
use crate::exchange::thread::Kind;
use crate::language::Text;
use crate::spec::decimal::Decimal;
use crate::spec::units::Entered;
use crate::spec::{Item, ItemId, OrgId, Spec, StyleId, ThreadId};
use crate::store::{NewThread, Revision, Says};
use crate::web::App;
use crate::web::form::{Errors, Fields, Form};
use crate::web::frame::Frame;
use crate::web::may::{MayOn, Who};
use crate::web::page::{Answer, go, page, page_again};
use crate::web::problem::Problem;

#[derive(Template)]
#[template(path = "both/ready.html")]
struct ReadyPage {
    t: Text,
    frame: Frame,
    style: StyleId,
    style_number: String,
    /// The item that it is said about.
    letter: String,
    name: String,
    /// Where the page and its forms are.
    action: String,
    back: String,
    /// The list, unless one is chosen.
    groups: Vec<Listed>,
    chosen: Option<Chosen>,
    item: ItemId,
    /// For the brand that asks anew: with whom.
    factories: Vec<(OrgId, String)>,
    errors: Errors,
}

struct Listed {
    group: Group,
    phrases: Vec<Offered>,
}

struct Offered {
    id: &'static str,
    text: String,
    /// It needs nothing but the item: it is sent as it stands.
    at_once: bool,
}

struct Chosen {
    id: &'static str,
    text: String,
    slots: Vec<SlotField>,
}

/// A field for one slot.
struct SlotField {
    name: &'static str,
    kind: SlotKind,
    label: String,
    value: String,
    /// To choose from: value, words and whether it is chosen; empty where it is typed.
    options: Vec<(String, String, bool)>,
}

#[derive(Deserialize)]
pub struct Wish {
    phrase: Option<String>,
}

/// The list for a thread, or the sentence that was chosen from it.
pub async fn show(
    may: MayOn<act::Answer>,
    State(app): State<App>,
    Path((_, thread)): Path<(String, String)>,
    Query(wish): Query<Wish>,
) -> Answer {
    let thread = ThreadId::new(thread);
    let read = may.permit.also::<act::Read>()?;
    let (place, _) = place_of(&app, &read, &thread).await?;
    let about = About::new(&app, &read, place, Some(thread)).await?;
    page(&about.page(
        &may.who,
        wish.phrase.as_deref(),
        &Fields::default(),
        Errors::default(),
    )?)
}

/// Says it in a thread.
pub async fn say(
    may: MayOn<act::Answer>,
    State(app): State<App>,
    Path((_, thread)): Path<(String, String)>,
    form: Form,
) -> Answer {
    let thread = ThreadId::new(thread);
    let read = may.permit.also::<act::Read>()?;
    let (place, _) = place_of(&app, &read, &thread).await?;
    let about = About::new(&app, &read, place, Some(thread.clone())).await?;
    let mut errors = Errors::default();
    let Some(text) = about.said(may.who.t, &form.fields, &mut errors)? else {
        let phrase = Some(form.fields.text("phrase"));
        return page_again(&about.page(&may.who, phrase, &form.fields, errors)?);
    };
    app.store.say(&may.permit, &thread, says(&text)).await?;
    go(&about.place.address(may.permit.style(), "sent", &thread))
}

/// The list to ask anew about an item.
pub async fn show_new(
    may: MayOn<act::Ask>,
    State(app): State<App>,
    Path((_, n, item)): Path<(String, String, String)>,
    Query(wish): Query<Wish>,
) -> Answer {
    let place = Place {
        revision: number(&n)?,
        item: ItemId::new(item),
    };
    let about = About::new(&app, &may.permit.also()?, place, None).await?;
    page(&about.page(
        &may.who,
        wish.phrase.as_deref(),
        &Fields::default(),
        Errors::default(),
    )?)
}

/// Raises a thread by it.
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
    let about = About::new(&app, &may.permit.also()?, place, None).await?;
    let t = may.who.t;
    let mut errors = Errors::default();
    let factory = form.fields.text("factory");
    if may.permit.side() == Side::Brand && factory.is_empty() {
        errors.add("factory", t.say("error-factory-missing"));
    }
    let text = about.said(t, &form.fields, &mut errors)?;
    let phrase = Phrase::find(form.fields.text("phrase")).ok_or(Problem::BadForm)?;
    let (Some(text), true) = (text, errors.is_empty()) else {
        return page_again(&about.page(&may.who, Some(phrase.id), &form.fields, errors)?);
    };
    let org = OrgId::new(factory);
    let new = NewThread {
        item: &about.place.item,
        revision: about.place.revision,
        kind: kind(phrase.group),
        org: (may.permit.side() == Side::Brand).then_some(&org),
        says: says(&text),
    };
    let thread = app.store.ask(&may.permit, new).await?;
    go(&about.place.address(may.permit.style(), "sent", &thread))
}

/// What is raised by a sentence of this group.
fn kind(group: Group) -> Kind {
    match group {
        Group::Fix => Kind::MustFix,
        _ => Kind::Question,
    }
}

fn says(text: &str) -> Says<'_> {
    Says {
        text,
        language: phrase::LANGUAGE,
        photos: &[],
    }
}

/// What a sentence is about, and where it goes.
struct About {
    place: Place,
    /// `None`: it asks anew.
    thread: Option<ThreadId>,
    side: Side,
    style: StyleId,
    frozen: std::sync::Arc<Frozen>,
    revisions: Vec<u32>,
    factories: Vec<(OrgId, String)>,
}

impl About {
    async fn new(
        app: &App,
        permit: &StylePermit<act::Read>,
        place: Place,
        thread: Option<ThreadId>,
    ) -> Result<About, Problem> {
        let revisions = app.store.revisions(permit).await?;
        let numbers = revisions.iter().map(|revision| revision.number).collect();
        let of = |revision: &Revision| revision.number == place.revision;
        let revision = revisions.into_iter().find(of).ok_or(Problem::NotFound)?;
        if revision.frozen.spec.item(&place.item).is_none() {
            return Err(Problem::NotFound);
        }
        let factories = match (permit.side(), &thread) {
            (Side::Brand, None) => {
                let shares = app.store.shares(permit).await?.into_iter();
                let shares = shares.filter(|share| share.ended_at.is_none());
                shares.map(|share| (share.org, share.name)).collect()
            }
            _ => Vec::new(),
        };
        Ok(About {
            place,
            thread,
            side: permit.side(),
            style: permit.style().clone(),
            frozen: revision.frozen,
            revisions: numbers,
            factories,
        })
    }

    /// Whether this side says such a thing here: an answer needs a question, and only the brand
    /// insists.
    fn offers(&self, group: Group) -> bool {
        match group {
            Group::Answer => self.thread.is_some(),
            Group::Fix => self.thread.is_some() || self.side == Side::Brand,
            _ => true,
        }
    }

    fn page(
        &self,
        who: &Who,
        chosen: Option<&str>,
        typed: &Fields,
        errors: Errors,
    ) -> Result<ReadyPage, Problem> {
        let t = who.t;
        let (style, Place { revision, item }) = (&self.style, &self.place);
        let spec = &self.frozen.spec;
        let about = spec.item(item).ok_or(Problem::NotFound)?;
        let base = format!("/styles/{style}/revisions/{revision}/items/{item}");
        let chosen = match chosen {
            Some(id) => Some(Phrase::find(id).ok_or(Problem::NotFound)?),
            None => None,
        };
        let groups = Group::ALL.into_iter().filter(|group| self.offers(*group));
        let groups = groups.map(|group| {
            let phrases = PHRASES.iter().filter(|phrase| phrase.group == group);
            Listed {
                group,
                phrases: phrases.map(|phrase| self.offered(t, phrase)).collect(),
            }
        });
        Ok(ReadyPage {
            t,
            frame: who.frame(),
            style: style.clone(),
            style_number: spec.header.number.clone(),
            letter: about.letter().to_owned(),
            name: about.name().to_owned(),
            action: match &self.thread {
                Some(thread) => format!("/styles/{style}/threads/{thread}/ready"),
                None => format!("{base}/ready"),
            },
            back: match &self.thread {
                Some(thread) => format!("{base}#thread-{thread}"),
                None => format!("{base}#ask"),
            },
            groups: match chosen {
                Some(_) => Vec::new(),
                None => groups.collect(),
            },
            chosen: chosen.map(|phrase| Chosen {
                id: phrase.id,
                text: t.phrase_to_fill(phrase, &self.called()).to_string(),
                slots: self.fields(t, phrase, typed),
            }),
            item: item.clone(),
            factories: self.factories.clone(),
            errors,
        })
    }

    /// The sentence as it is listed: with the item in it where that is all it needs.
    fn offered(&self, t: Text, phrase: &'static Phrase) -> Offered {
        let filled = phrase.slots.iter().map(|(name, kind)| match (name, kind) {
            (&"item", SlotKind::Item) => Some(Filled::Item(self.place.item.clone())),
            (&"material", SlotKind::Material) if self.is_material() => {
                Some(Filled::Material(self.place.item.clone()))
            }
            _ => None,
        });
        let filled: Option<Vec<Filled>> = filled.collect();
        let said = filled.and_then(|filled| Said::new(phrase.id, filled, &self.frozen.spec).ok());
        let (spec, sign) = (&self.frozen.spec, self.frozen.decimal);
        // Who chooses a factory does so beside the sentence.
        let alone = self.factories.is_empty();
        Offered {
            id: phrase.id,
            text: match &said {
                Some(said) => t.phrase(said, spec, sign).to_string(),
                None => t.phrase_to_fill(phrase, &self.called()).to_string(),
            },
            at_once: said.is_some() && alone,
        }
    }

    /// The item as it is known: letter and name.
    fn called(&self) -> String {
        let item = self.frozen.spec.item(&self.place.item);
        let words = item.map(|item| format!("{} {}", item.letter(), item.name()));
        words.unwrap_or_default().trim().to_owned()
    }

    fn is_material(&self) -> bool {
        matches!(
            self.frozen.spec.item(&self.place.item),
            Some(Item::Material(_))
        )
    }

    fn fields(&self, t: Text, phrase: &Phrase, typed: &Fields) -> Vec<SlotField> {
        let spec = &self.frozen.spec;
        let fields = phrase.slots.iter().map(|(name, kind)| {
            let before = typed.text(name);
            let chosen = |proposed: String| match before.is_empty() {
                true => proposed,
                false => before.to_owned(),
            };
            let (value, options) = match kind {
                SlotKind::Item if *name == "item" => {
                    (chosen(self.place.item.to_string()), self.items(|_| true))
                }
                SlotKind::Item => (chosen(String::new()), self.items(|_| true)),
                SlotKind::Material => {
                    let this = *name == "material" && self.is_material();
                    let proposed = this.then(|| self.place.item.to_string());
                    let materials = self.items(|item| matches!(item, Item::Material(_)));
                    (chosen(proposed.unwrap_or_default()), materials)
                }
                SlotKind::Size => {
                    let base = spec.header.base_size.as_ref().map(ItemId::to_string);
                    let sizes = spec.sizes.sizes.iter();
                    let sizes = sizes.map(|size| (size.id.to_string(), size.code.clone()));
                    (chosen(base.unwrap_or_default()), sizes.collect())
                }
                SlotKind::Revision => {
                    let newest = self.revisions.first().map(u32::to_string);
                    let numbers = self.revisions.iter().map(u32::to_string);
                    let numbers = numbers.map(|number| (number.clone(), number));
                    (chosen(newest.unwrap_or_default()), numbers.collect())
                }
                _ => (before.to_owned(), Vec::new()),
            };
            SlotField {
                name,
                kind: *kind,
                label: self.label(t, name, *kind),
                options: options
                    .into_iter()
                    .map(|(id, words): (String, String)| {
                        let is_chosen = id == value;
                        (id, words, is_chosen)
                    })
                    .collect(),
                value,
            }
        });
        fields.collect()
    }

    fn label(&self, t: Text, name: &str, kind: SlotKind) -> String {
        let label = match (name, kind) {
            ("spec", _) => t
                .say("ready-slot-spec")
                .with("unit", t.name(&self.frozen.chart.unit)),
            ("other", _) => t.say("ready-slot-other"),
            ("until", _) => t.say("ready-slot-until"),
            (_, SlotKind::Length) => t
                .say("ready-slot-length")
                .with("unit", t.name(&self.frozen.chart.unit)),
            (_, SlotKind::Item) => t.say("ready-slot-item"),
            (_, SlotKind::Material) => t.say("ready-slot-material"),
            (_, SlotKind::Size) => t.say("ready-slot-size"),
            (_, SlotKind::Date) => t.say("ready-slot-date"),
            (_, SlotKind::Count) => t.say("ready-slot-count"),
            (_, SlotKind::Percent) => t.say("ready-slot-percent"),
            (_, SlotKind::Revision) => t.say("ready-slot-revision"),
        };
        label.to_string()
    }

    /// The items that have a name, as they are known by it.
    fn items(&self, wanted: impl Fn(&Item<'_>) -> bool) -> Vec<(String, String)> {
        let spec: &Spec = &self.frozen.spec;
        let items = spec.items().filter(|item| {
            let spoken_of = matches!(
                item,
                Item::Point(_)
                    | Item::Part(_)
                    | Item::Material(_)
                    | Item::Line(_)
                    | Item::Callout(_)
                    | Item::Artwork(_)
                    | Item::Label(_)
            );
            (spoken_of || *item.id() == self.place.item) && wanted(item)
        });
        items
            .map(|item| {
                let words = format!("{} {}", item.letter(), item.name());
                (item.id().to_string(), words.trim().to_owned())
            })
            .collect()
    }

    /// The canonical form of what was filled in; nothing where something is wrong, said beside its
    /// field.
    fn said(
        &self,
        t: Text,
        fields: &Fields,
        errors: &mut Errors,
    ) -> Result<Option<String>, Problem> {
        let phrase = Phrase::find(fields.text("phrase")).ok_or(Problem::BadForm)?;
        if !self.offers(phrase.group) {
            return Err(Problem::BadForm);
        }
        let mut filled = Vec::new();
        for (name, kind) in phrase.slots {
            match self.fill(t, *kind, fields.text(name)) {
                Ok(slot) => filled.push(slot),
                Err(why) => errors.add(*name, why),
            }
        }
        if !errors.is_empty() {
            return Ok(None);
        }
        match Said::new(phrase.id, filled, &self.frozen.spec) {
            Ok(said) => said.canonical().map(Some).map_err(|_| Problem::BadForm),
            Err(phrase::NotAPhrase::Filled(slot)) => {
                errors.add(slot, t.say("ready-slot-wrong"));
                Ok(None)
            }
            Err(_) => Err(Problem::BadForm),
        }
    }

    fn fill(&self, t: Text, kind: SlotKind, typed: &str) -> Result<Filled, String> {
        let wrong = || t.say("ready-slot-wrong").to_string();
        if typed.is_empty() {
            return Err(t.say("error-missing").to_string());
        }
        Ok(match kind {
            SlotKind::Length => {
                let read = Entered::read(typed, self.frozen.chart.unit);
                let why = |why| t.not_a_length(why, typed).to_string();
                Filled::Length(read.map_err(why)?)
            }
            SlotKind::Item => Filled::Item(ItemId::new(typed)),
            SlotKind::Material => Filled::Material(ItemId::new(typed)),
            SlotKind::Size => Filled::Size(ItemId::new(typed)),
            SlotKind::Date => Filled::Date(typed.to_owned()),
            SlotKind::Count => Filled::Count(typed.parse().map_err(|_| wrong())?),
            SlotKind::Percent => {
                let number = Decimal::read(&typed.replace(',', "."));
                Filled::Percent(number.map_err(|_| wrong())?)
            }
            SlotKind::Revision => {
                let number = typed.parse().map_err(|_| wrong())?;
                match self.revisions.contains(&number) {
                    true => Filled::Revision(number),
                    false => return Err(wrong()),
                }
            }
        })
    }
}
