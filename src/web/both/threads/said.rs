//! A message as its reader sees it, and the translations beside it.

use axum::extract::{Path, State};

use crate::access::{Side, act};
use crate::exchange::phrase;
use crate::language::{Language, Text};
use crate::spec::{MessageId, ThreadId, Time};
use crate::store::{Message, MessageTranslation, Photo, Revision};
use crate::web::App;
use crate::web::both::item::{Returned, again, check_text};
use crate::web::form::{Errors, Form};
use crate::web::frame::name_or_erased;
use crate::web::may::MayOn;
use crate::web::page::{Answer, go};
use crate::web::problem::Problem;

use super::place_of;

/// One message.
pub struct Said {
    pub id: String,
    pub side: Side,
    pub who: String,
    pub at: Time,
    pub language: String,
    /// Nothing: erased. Empty where photographs say it all.
    pub text: Option<String>,
    /// It is a ready sentence, shown in the reader's language.
    pub ready: bool,
    pub photos: Vec<Option<Photo>>,
    pub translations: Vec<Translated>,
    /// For who may put a translation beside it.
    pub translate: Option<TranslateForm>,
}

/// The message in another language.
pub struct Translated {
    pub language: String,
    /// What the language calls itself.
    pub name: &'static str,
    pub who: String,
    pub at: Time,
    /// Nothing: erased.
    pub text: Option<String>,
}

/// The form that puts a translation beside the message.
pub struct TranslateForm {
    /// Tag and name of the languages that it can be in.
    pub languages: Vec<(&'static str, &'static str)>,
    pub chosen: String,
    pub text: String,
    pub error: Option<String>,
}

/// What a message says to this reader, and the language of it: what somebody typed as it is, a ready
/// sentence in the reader's own.
pub fn words(t: Text, revisions: &[Revision], message: &Message) -> (Option<String>, String) {
    let typed = || (message.text.clone(), message.language.clone());
    if message.language != phrase::LANGUAGE {
        return typed();
    }
    let ready = message.text.as_deref().map(phrase::Said::read);
    // Of the newest revision that still has all of what it names.
    let names = |said: &phrase::Said| {
        let has = |revision: &&Revision| {
            said.items()
                .all(|id| revision.frozen.spec.item(id).is_some())
        };
        revisions.iter().find(has).or(revisions.first())
    };
    match ready {
        Some(Ok(said)) => match names(&said) {
            Some(revision) => {
                let frozen = &revision.frozen;
                let text = t.phrase(&said, &frozen.spec, frozen.decimal);
                (Some(text.to_string()), t.lang().to_owned())
            }
            None => typed(),
        },
        _ => typed(),
    }
}

/// A message as this reader sees it.
pub fn said(
    t: Text,
    revisions: &[Revision],
    message: Message,
    factory: &str,
    writes: bool,
) -> Said {
    let person = name_or_erased(t, message.person.as_deref());
    let (text, language) = words(t, revisions, &message);
    let translate = TranslateForm::of(t, &message).filter(|_| writes);
    Said {
        id: message.id.to_string(),
        side: message.side,
        who: match message.side {
            Side::Brand => person,
            Side::Factory => format!("{person}, {factory}"),
        },
        at: message.at,
        ready: message.language == phrase::LANGUAGE && text.is_some(),
        translate,
        translations: message
            .translations
            .into_iter()
            .map(|it| translated(t, it, factory))
            .collect(),
        language,
        text,
        photos: message.photos,
    }
}

impl Said {
    /// The form of its translation, when that is what these errors are about.
    pub fn translation_refused(&mut self, errors: &Errors) -> Option<&mut TranslateForm> {
        let error = errors.of(&format!("translation-{}", self.id))?;
        let form = self.translate.as_mut()?;
        form.error = Some(error.to_owned());
        Some(form)
    }
}

impl TranslateForm {
    /// `None`: there is nothing to translate.
    fn of(t: Text, message: &Message) -> Option<TranslateForm> {
        let typed = message.text.as_deref().is_some_and(|it| !it.is_empty());
        if !typed || message.language == phrase::LANGUAGE {
            return None;
        }
        let others = Language::ALL.iter();
        let others = others.filter(|it| it.tag() != message.language);
        let languages: Vec<(&str, &str)> = others.map(|it| (it.tag(), it.own_name())).collect();
        // Whoever reads a foreign message most likely puts it into their own language.
        let own = languages.iter().find(|(tag, _)| *tag == t.language().tag());
        let (chosen, _) = own.or(languages.first())?;
        Some(TranslateForm {
            chosen: (*chosen).to_owned(),
            languages,
            text: String::new(),
            error: None,
        })
    }
}

fn translated(t: Text, translation: MessageTranslation, factory: &str) -> Translated {
    let person = name_or_erased(t, translation.person.as_deref());
    Translated {
        name: Language::from_tag(&translation.language).map_or("", Language::own_name),
        language: translation.language,
        who: match translation.side {
            Side::Brand => person,
            Side::Factory => format!("{person}, {factory}"),
        },
        at: translation.at,
        text: translation.text,
    }
}

/// Puts a translation beside a message.
pub async fn translate(
    may: MayOn<act::Answer>,
    State(app): State<App>,
    Path((_, thread, message)): Path<(String, String, String)>,
    form: Form,
) -> Answer {
    let id = ThreadId::new(thread);
    let read = may.permit.also::<act::Read>()?;
    let (place, _) = place_of(&app, &read, &id).await?;
    let Form { fields, .. } = form;
    let language = Language::from_tag(fields.text("language")).ok_or(Problem::BadForm)?;
    let mut errors = Errors::default();
    check_text(may.who.t, &fields, &mut errors, false);
    if errors.is_empty() {
        let (store, message) = (&app.store, MessageId::new(message));
        let (tag, text) = (language.tag(), fields.text("text"));
        store
            .translate_message(&may.permit, &id, &message, tag, text)
            .await?;
        return go(&place.address(may.permit.style(), "translated", &id));
    }
    let mut wrong = Errors::default();
    let sentence = errors.of("text").unwrap_or_default();
    wrong.add(format!("translation-{message}"), sentence);
    let returned = Returned {
        thread: Some(id),
        fields,
        errors: wrong,
        upheld: None,
    };
    again(&app, &read, &may.who, &place, returned).await
}
