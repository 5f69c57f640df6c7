//! The sizes, smallest first.

use askama::Template;

use super::listed::{self, Table};
use super::rows::{self, Press};
use super::typed::{Desk, Node};
use super::{SectionPage, Sent};
use crate::language::Text;
use crate::spec::document::Size;
use crate::spec::{ItemId, Section, Spec};
use crate::web::form::{Errors, Fields};
use crate::web::frame::Frame;
use crate::web::may::Who;
use crate::web::page::{Answer, go, page, page_again};

#[derive(Template)]
#[template(path = "brand/sizes.html")]
struct SizesPage {
    t: Text,
    frame: Frame,
    page: SectionPage,
    rows: Vec<Row>,
    /// An empty row, for script to add more.
    spare: Row,
    base: Option<ItemId>,
    /// The system that they are of.
    own: Vec<Node>,
    /// The second axis.
    lengths: Vec<Table>,
    errors: Errors,
}

/// A size as it stands in the form.
struct Row {
    key: String,
    code: String,
    label: String,
}

impl Row {
    fn of(size: &Size) -> Row {
        Row {
            key: size.id.to_string(),
            code: size.code.clone(),
            label: size.label.clone(),
        }
    }

    fn spare(n: usize) -> Row {
        Row {
            key: rows::new_key(n),
            code: String::new(),
            label: String::new(),
        }
    }

    fn read(t: Text, fields: &Fields, key: String, errors: &mut Errors) -> Row {
        let code = fields.line(t, &rows::at(&key, "code"), errors);
        // Grade rules name sizes by their codes, with these signs between them.
        if code.contains([',', ';', '=']) {
            errors.add(rows::at(&key, "code"), t.say("error-size-code-signs"));
        }
        Row {
            code,
            label: fields.line(t, &rows::at(&key, "label"), errors),
            key,
        }
    }

    fn is_blank(&self) -> bool {
        self.is_new() && self.code.is_empty() && self.label.is_empty()
    }

    fn is_new(&self) -> bool {
        rows::is_new(&self.key)
    }

    fn at(&self, field: &str) -> String {
        rows::at(&self.key, field)
    }

    fn is(&self, id: &Option<ItemId>) -> bool {
        id.as_ref().is_some_and(|id| id.as_str() == self.key)
    }
}

pub fn show(who: &Who, around: SectionPage, spec: &Spec, more: usize) -> Answer {
    let errors = Errors::default();
    let desk = Desk {
        t: who.t,
        spec,
        sent: None,
        errors: &errors,
    };
    let mut typed: Vec<Row> = spec.sizes.sizes.iter().map(Row::of).collect();
    let spare = match typed.len() {
        0 => rows::FIRST,
        _ => rows::SPARE,
    };
    typed.extend((1..=spare + more).map(Row::spare));
    page(&SizesPage {
        t: who.t,
        frame: who.frame(),
        page: around,
        rows: typed,
        spare: Row::spare(0),
        base: spec.header.base_size.clone(),
        own: listed::own_nodes(desk, Section::Sizes),
        lengths: listed::made(desk, Section::Sizes, 0),
        errors,
    })
}

pub async fn save(sent: Sent) -> Answer {
    let t = sent.who.t;
    let fields = &sent.form.fields;
    let press = Press::of(fields);
    let mut errors = Errors::default();
    let typed: Vec<Row> = rows::keys(fields, "row", &press)?
        .into_iter()
        .map(|key| Row::read(t, fields, key, &mut errors))
        .collect();
    let mut spec = listed::read(
        sent.typed(),
        &sent.draft.spec,
        Section::Sizes,
        &press,
        &mut errors,
    )?;
    if errors.is_empty() {
        let world = sent.app.store.world();
        let kept = typed.into_iter().filter(|row| !row.is_blank());
        spec.sizes.sizes = kept
            .map(|row| {
                let id = rows::id(&row.key, world);
                let old = sent.draft.spec.size(&id).cloned();
                Size {
                    id,
                    code: row.code,
                    label: row.label,
                    ..old.unwrap_or_default()
                }
            })
            .collect();
        return go(&sent.keep(&spec, &press.then()).await?);
    }
    let desk = Desk {
        t,
        spec: &sent.draft.spec,
        sent: Some(fields),
        errors: &errors,
    };
    let own = listed::own_nodes(desk, Section::Sizes);
    let lengths = listed::made(desk, Section::Sizes, 0);
    page_again(&SizesPage {
        t,
        frame: sent.who.frame(),
        page: sent.around().await?,
        rows: typed,
        spare: Row::spare(0),
        base: sent.draft.spec.header.base_size.clone(),
        own,
        lengths,
        errors,
    })
}
