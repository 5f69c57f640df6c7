//! The brand's own translations of what it wrote, beside the program's words of the trade.

use std::collections::BTreeMap;

use askama::Template;
use axum::extract::{Query, State};

use crate::access::{StylePermit, act};
use crate::exchange::translation::{Place, texts};
use crate::language::{Language, Text, terms_of};
use crate::spec::{Digest, Section, Spec, StyleId};
use crate::store::{Retranslated, Translation};
use crate::web::App;
use crate::web::form::{Errors, Form};
use crate::web::frame::Frame;
use crate::web::may::{MayOn, Who};
use crate::web::page::{Answer, go, page, page_again};
use crate::web::problem::Problem;

#[derive(Template)]
#[template(path = "brand/translations.html")]
struct TranslationsPage {
    t: Text,
    frame: Frame,
    style: StyleId,
    number: String,
    name: String,
    language: Language,
    languages: Vec<Choice>,
    writes: bool,
    groups: Vec<Group>,
    errors: Errors,
}

/// A language to translate into.
struct Choice {
    language: Language,
    done: usize,
}

/// The texts of one section.
struct Group {
    section: Section,
    lines: Vec<Line>,
}

struct Line {
    /// The name of its field.
    key: String,
    /// What it is of: `A Chest width`, and which of its fields.
    place: String,
    words: String,
    /// The program's word, where it has one.
    term: Option<String>,
    text: String,
    /// As it is kept.
    was: String,
    long: bool,
}

impl TranslationsPage {
    fn count(&self) -> usize {
        self.groups.iter().map(|group| group.lines.len()).sum()
    }

    fn done(&self) -> usize {
        let choice = self
            .languages
            .iter()
            .find(|it| it.language == self.language);
        choice.map_or(0, |it| it.done)
    }
}

/// The language that the address names, `?in=`.
type Asked = Query<BTreeMap<String, String>>;

fn language(asked: &BTreeMap<String, String>) -> Result<Language, Problem> {
    let mut all = offered();
    match asked.get("in") {
        Some(tag) => all.find(|it| it.tag() == tag).ok_or(Problem::NotFound),
        None => all.next().ok_or(Problem::NotFound),
    }
}

/// Every language but the original.
fn offered() -> impl Iterator<Item = Language> {
    let all = Language::ALL.iter().copied();
    all.filter(|language| language.text().explains())
}

pub async fn show(may: MayOn<act::Review>, State(app): State<App>, Query(asked): Asked) -> Answer {
    let language = language(&asked)?;
    let read = Everything::read(&app, &may.permit).await?;
    page(&read.page(&may.who, &may.permit, language, None, Errors::default()))
}

pub async fn save(
    may: MayOn<act::Write>,
    State(app): State<App>,
    Query(asked): Asked,
    form: Form,
) -> Answer {
    let language = language(&asked)?;
    let review = may.permit.also()?;
    let read = Everything::read(&app, &review).await?;
    let t = may.who.t;
    let mut errors = Errors::default();
    let mut sent = BTreeMap::new();
    for place in texts(&read.spec) {
        let key = key(&place.words);
        let wanted = Retranslated {
            read: form.fields.text(&was(&key)).to_owned(),
            text: form.fields.text(&key).to_owned(),
        };
        if wanted.text.chars().count() > LONGEST {
            errors.add(key, t.say("error-text-long").with("most", LONGEST));
        }
        // What was left as it was found is nobody's wish, whatever has become of it.
        if wanted.read != wanted.text {
            sent.insert(place.words, wanted);
        }
    }
    if errors.is_empty() {
        let tag = language.tag();
        let moved = app.store.translate(&may.permit, tag, &sent).await?;
        if moved.is_empty() {
            let style = may.permit.style();
            return go(&format!("/styles/{style}/translations?in={tag}&said=saved"));
        }
        for (words, now) in &moved {
            errors.add(key(words), t.say("translations-moved").with("text", now));
        }
    }
    // Read again: what others wrote is what the next save is over.
    let read = Everything::read(&app, &review).await?;
    page_again(&read.page(&may.who, &review, language, Some(&sent), errors))
}

/// The name of the field of what stood in a text's field before anything was typed.
fn was(key: &str) -> String {
    format!("was-{key}")
}

/// The most letters of one translation.
const LONGEST: usize = 4000;

/// What the page is made from.
struct Everything {
    spec: Spec,
    translations: Vec<Translation>,
    terms: BTreeMap<String, BTreeMap<String, String>>,
}

impl Everything {
    async fn read(app: &App, permit: &StylePermit<act::Review>) -> Result<Everything, Problem> {
        let spec = app.store.draft(permit).await?.spec;
        let book = app.store.book(permit).await?;
        Ok(Everything {
            translations: app.store.translations(&permit.also()?).await?,
            terms: terms_of(&spec, &book),
            spec,
        })
    }

    /// The translations into a language, by the words.
    fn own(&self, language: Language) -> BTreeMap<&str, &str> {
        let own = self.translations.iter();
        let own = own.filter(|it| it.language == language.tag());
        own.map(|it| (it.words.as_str(), it.text.as_str()))
            .collect()
    }

    fn page(
        &self,
        who: &Who,
        permit: &StylePermit<act::Review>,
        language: Language,
        sent: Option<&BTreeMap<String, Retranslated>>,
        errors: Errors,
    ) -> TranslationsPage {
        let t = who.t;
        let places = texts(&self.spec);
        let languages = offered().map(|language| {
            let own = self.own(language);
            let done = places.iter().filter(|it| own.contains_key(&it.words[..]));
            Choice {
                language,
                done: done.count(),
            }
        });
        let languages = languages.collect();
        let own = self.own(language);
        let terms = self.terms.get(language.tag());
        let mut groups: Vec<Group> = Vec::new();
        for place in places {
            let line = Line {
                key: key(&place.words),
                place: self.place(t, &place),
                term: terms.and_then(|it| it.get(&place.words)).cloned(),
                text: match sent.and_then(|it| it.get(&place.words)) {
                    Some(wanted) => wanted.text.clone(),
                    None => own.get(&place.words[..]).copied().unwrap_or("").to_owned(),
                },
                was: own.get(&place.words[..]).copied().unwrap_or("").to_owned(),
                long: place.words.chars().count() > 60 || place.words.contains('\n'),
                words: place.words,
            };
            match groups.last_mut() {
                Some(group) if group.section == place.section => group.lines.push(line),
                _ => groups.push(Group {
                    section: place.section,
                    lines: vec![line],
                }),
            }
        }
        TranslationsPage {
            t,
            frame: who.frame(),
            style: permit.style().clone(),
            number: self.spec.header.number.clone(),
            name: self.spec.header.name.clone(),
            language,
            languages,
            writes: permit.also::<act::Write>().is_ok(),
            groups,
            errors,
        }
    }

    fn place(&self, t: Text, place: &Place) -> String {
        let field = t.field(&place.field).to_string();
        let item = place.item.as_ref().and_then(|id| self.spec.item(id));
        match item.map(|item| item.letter().trim()) {
            Some(letter) if !letter.is_empty() => format!("{letter} · {field}"),
            _ => field,
        }
    }
}

/// The name of a text's field: short, and the same as long as the text is.
fn key(words: &str) -> String {
    format!("t-{}", &Digest::of(words.as_bytes()).as_str()[..20])
}
