//! How the brand numbers its styles: a mask, its lists and its check character.

use askama::Template;
use axum::extract::State;

use crate::access::{act, grant};
use crate::language::{Message, Text};
use crate::spec::NumberScheme;
use crate::spec::number_scheme::{CheckSystem, Entry, List, Written};
use crate::web::App;
use crate::web::form::{Errors, Fields, Form};
use crate::web::frame::Frame;
use crate::web::may::{May, Who};
use crate::web::page::{Answer, go, page, page_again};

/// How many empty lists follow those that are there.
const SPARE: usize = 2;

#[derive(Template)]
#[template(path = "brand/numbers.html")]
struct NumbersPage {
    t: Text,
    frame: Frame,
    mask: String,
    check: Option<CheckSystem>,
    lists: Vec<Typed>,
    /// The first number that the scheme gives, with the first entry of every list.
    example: Option<String>,
    errors: Errors,
}

/// A list as it stands in the form: an entry a line, `code = meaning`.
struct Typed {
    name: String,
    entries: String,
}

impl NumbersPage {
    /// What a mask is written with.
    fn ways(&self) -> [(&'static str, Message); 4] {
        let t = self.t;
        [
            ("{seq:3}", t.say("numbers-how-seq")),
            ("{season}", t.say("numbers-how-list")),
            ("{colourway:2}", t.say("numbers-how-colourway")),
            ("{check}", t.say("numbers-how-check")),
        ]
    }

    fn new(who: &Who, written: &Written, errors: Errors) -> NumbersPage {
        let typed = written.lists.iter().map(|list| Typed {
            name: list.name.clone(),
            entries: list.entries.iter().map(line).collect(),
        });
        let spare = (0..SPARE).map(|_| Typed {
            name: String::new(),
            entries: String::new(),
        });
        NumbersPage {
            t: who.t,
            frame: who.frame(),
            mask: written.mask.clone(),
            check: written.check,
            lists: typed.chain(spare).collect(),
            example: NumberScheme::try_from(written.clone()).ok().and_then(first),
            errors,
        }
    }
}

fn line(entry: &Entry) -> String {
    format!("{} = {}\n", entry.code, entry.meaning)
}

fn first(scheme: NumberScheme) -> Option<String> {
    let choices = scheme.lists().filter_map(|list| {
        let entry = list.entries.first()?;
        Some((list.name.clone(), entry.code.clone()))
    });
    scheme.next(&choices.collect(), []).ok()
}

fn read(t: Text, fields: &Fields, errors: &mut Errors) -> Written {
    let names = fields.all("list");
    let lists = names.zip(fields.all("entries")).filter_map(|(name, text)| {
        let lines = text.lines().map(str::trim).filter(|line| !line.is_empty());
        let entries = lines.map(|line| {
            let (code, meaning) = line.split_once('=').unwrap_or((line, ""));
            Entry {
                code: code.trim().to_owned(),
                meaning: meaning.trim().to_owned(),
            }
        });
        let list = List {
            name: name.to_owned(),
            entries: entries.collect(),
        };
        (!list.name.is_empty() || !list.entries.is_empty()).then_some(list)
    });
    let lists = lists.collect();
    let check = fields.text("check");
    let mut systems = CheckSystem::ALL.into_iter();
    Written {
        mask: fields.line(t, "mask", errors),
        lists,
        check: systems.find(|system| system.designation() == check),
    }
}

pub async fn show(may: May<act::Govern>, State(app): State<App>) -> Answer {
    let browse = grant::<act::Browse>(&may.who.session.actor)?;
    let scheme = app.store.number_scheme(&browse).await?;
    let written = scheme.map(|scheme| scheme.written().clone());
    let written = written.unwrap_or_default();
    page(&NumbersPage::new(&may.who, &written, Errors::default()))
}

pub async fn save(may: May<act::Govern>, State(app): State<App>, form: Form) -> Answer {
    let t = may.who.t;
    let mut errors = Errors::default();
    let written = read(t, &form.fields, &mut errors);
    if errors.is_empty() && written == Written::default() {
        app.store.set_number_scheme(&may.permit, None).await?;
        return go("/numbers?said=saved");
    }
    match NumberScheme::try_from(written.clone()) {
        Ok(scheme) if errors.is_empty() => {
            app.store
                .set_number_scheme(&may.permit, Some(&scheme))
                .await?;
            go("/numbers?said=saved")
        }
        Ok(_) => page_again(&NumbersPage::new(&may.who, &written, errors)),
        Err(why) => {
            errors.add("mask", t.not_a_mask(&why));
            page_again(&NumbersPage::new(&may.who, &written, errors))
        }
    }
}
