//! Two people saved one section: both versions side by side, and a choice for every place where
//! they differ.

use std::collections::BTreeSet;

use askama::Template;
use axum::extract::{Path, State};

use super::described;
use super::{SectionPage, Sent};
use crate::access::act;
use crate::language::{FieldWords, Text};
use crate::spec::merge::{Place, Side, differences, merged};
use crate::spec::{Section, Spec};
use crate::store::{Draft, LostSave, SectionVersion, StoreError, put_section};
use crate::web::App;
use crate::web::form::Form;
use crate::web::frame::{Frame, name_or_erased};
use crate::web::may::{MayOn, Who};
use crate::web::page::{Answer, go, page, page_again};
use crate::web::problem::Problem;

#[derive(Template)]
#[template(path = "brand/conflict.html")]
struct ConflictPage {
    t: Text,
    frame: Frame,
    page: SectionPage,
    save: LostSave,
    /// Who saved what is in the draft now, and when.
    by: String,
    at: String,
    differences: Vec<Difference>,
    /// Why the choice could not be saved.
    refused: Option<String>,
}

/// A place where the two differ. Of a row that is in both, only the fields that differ are told.
struct Difference {
    name: String,
    label: String,
    /// `None`: it is not there.
    mine: Option<Vec<FieldWords>>,
    theirs: Option<Vec<FieldWords>>,
    mine_stands: bool,
}

/// The name of the form's field for a place.
fn name(place: &Place) -> String {
    match place {
        Place::Field(name) => format!("field.{name}"),
        Place::Item(id) => format!("item.{id}"),
        Place::Cell { colourway, part } => format!("cell.{colourway}.{part}"),
        Place::Order(list) => format!("order.{list}"),
    }
}

/// A save that lost, with the draft that it is to be compared with.
struct Case {
    who: Who,
    save: LostSave,
    draft: Draft,
    /// The draft with the section as it was sent.
    mine: Spec,
    /// Every version of the section, newest first.
    history: Vec<SectionVersion>,
}

impl Case {
    async fn new(may: &MayOn<act::Write>, app: &App, id: &str) -> Result<Case, Problem> {
        let lost = app.store.lost_saves(&may.permit).await?;
        let save = lost.into_iter().find(|save| save.id == id);
        let save = save.ok_or(Problem::NotFound)?;
        let review = may.permit.also()?;
        let draft = app.store.draft(&review).await?;
        let history = app.store.section_history(&review, save.section).await?;
        let mine = with_section(&draft.spec, &save, &save.content)?;
        Ok(Case {
            who: may.who.clone(),
            save,
            draft,
            mine,
            history,
        })
    }

    async fn page(
        &self,
        may: &MayOn<act::Write>,
        app: &App,
        refused: Option<String>,
    ) -> Result<ConflictPage, Problem> {
        let t = self.who.t;
        let review = may.permit.also()?;
        let section = self.save.section;
        let (theirs, mine) = (&self.draft.spec, &self.mine);
        // What only the other one changed is theirs by itself, and the other way round.
        let base = self.history.iter().find(|it| it.version == self.save.base);
        let base = match base {
            Some(base) => with_section(theirs, &self.save, &base.content)?,
            None => theirs.clone(),
        };
        let touched: BTreeSet<Place> = differences(section, &base, mine).into_iter().collect();
        let places = differences(section, theirs, mine);
        let mut around = SectionPage::new(app, t, &review, section, &self.draft).await?;
        around.lost.retain(|other| other.id != self.save.id);
        let newest = self.history.first();
        let name_of = |newest: &SectionVersion| name_or_erased(t, newest.saved_by.as_deref());
        Ok(ConflictPage {
            t,
            frame: self.who.frame(),
            page: around,
            save: self.save.clone(),
            by: newest.map_or(String::new(), name_of),
            at: newest.map_or(String::new(), |newest| newest.saved_at.minute()),
            differences: places
                .iter()
                .map(|place| difference(t, section, (theirs, mine), place, touched.contains(place)))
                .collect(),
            refused,
        })
    }
}

fn with_section(spec: &Spec, save: &LostSave, content: &str) -> Result<Spec, Problem> {
    let mut spec = spec.clone();
    put_section(&mut spec, save.section, content).map_err(|cause| {
        Problem::fault(&format!(
            "section {} of {}: {cause}",
            save.section.name(),
            save.id
        ))
    })?;
    Ok(spec)
}

fn difference(
    t: Text,
    section: Section,
    (theirs, mine): (&Spec, &Spec),
    place: &Place,
    touched: bool,
) -> Difference {
    let mut of_mine = described::fields(t, mine, section, place);
    let mut of_theirs = described::fields(t, theirs, section, place);
    if let (Some(mine), Some(theirs)) = (&mut of_mine, &mut of_theirs) {
        only_what_differs(mine, theirs);
    }
    Difference {
        name: name(place),
        label: described::label(t, [theirs, mine], place),
        mine: of_mine,
        theirs: of_theirs,
        mine_stands: touched,
    }
}

/// Leaves the fields that differ, each on both sides. Some differences have no words, as a letter
/// moved by a hair: then all is told.
fn only_what_differs(mine: &mut Vec<FieldWords>, theirs: &mut Vec<FieldWords>) {
    let of = |fields: &[FieldWords], label: &str| {
        let found = fields.iter().find(|field| field.label == label);
        found.map_or(String::new(), |field| field.value.clone())
    };
    let mut labels: Vec<&str> = mine.iter().map(|field| field.label.as_str()).collect();
    let more = theirs.iter().map(|field| field.label.as_str());
    labels.extend(more.filter(|label| of(mine, label).is_empty()));
    let differ = labels.into_iter().filter_map(|label| {
        let field = |value| FieldWords {
            label: label.to_owned(),
            value,
        };
        let (mine, theirs) = (of(mine, label), of(theirs, label));
        (mine != theirs).then(|| (field(mine), field(theirs)))
    });
    let differ: Vec<_> = differ.collect();
    if !differ.is_empty() {
        (*mine, *theirs) = differ.into_iter().unzip();
    }
}

pub async fn show(
    may: MayOn<act::Write>,
    State(app): State<App>,
    Path((_, save)): Path<(String, String)>,
) -> Answer {
    let case = Case::new(&may, &app, &save).await?;
    page(&case.page(&may, &app, None).await?)
}

pub async fn submit(
    may: MayOn<act::Write>,
    State(app): State<App>,
    Path((_, save)): Path<(String, String)>,
    form: Form,
) -> Answer {
    let t = may.who.t;
    let case = Case::new(&may, &app, &save).await?;
    let section = case.save.section;
    let version: i64 = form.fields.number("version").ok_or(Problem::BadForm)?;
    if version != case.draft.versions[&section] {
        let refused = t.say("conflict-moved").to_string();
        return page_again(&case.page(&may, &app, Some(refused)).await?);
    }
    let spec = merged(section, &case.draft.spec, &case.mine, |place| {
        if form.fields.text(&name(place)) == "theirs" {
            Side::Theirs
        } else {
            Side::Mine
        }
    });
    let sent = Sent {
        app: app.clone(),
        who: may.who.clone(),
        permit: may.permit.also()?,
        section,
        draft: case.draft.clone(),
        form,
        base: version,
    };
    let to = match sent.keep(&spec, "").await {
        Ok(to) => to,
        Err(StoreError::Unique(_)) => {
            let refused = t.say("error-number-taken").to_string();
            return page_again(&case.page(&may, &app, Some(refused)).await?);
        }
        Err(other) => return Err(other.into()),
    };
    // Kept first: if this is the last thing that is done, the choice is asked once more.
    app.store.resolve_save(&may.permit, &save).await?;
    go(&to)
}
