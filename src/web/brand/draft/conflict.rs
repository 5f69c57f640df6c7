//! Two people saved one section: both versions side by side, and a choice for every field where they
//! differ: mine, theirs, or written anew.

use askama::Template;
use axum::extract::{Path, State};

use super::typed::{Desk, Node};
use super::{SectionPage, Sent, described, written};
use crate::access::act;
use crate::language::{FieldWords, Text};
use crate::spec::Spec;
use crate::spec::merge::{Place, Side, differences, merged};
use crate::store::{Draft, LostSave, SectionVersion, StoreError, put_section};
use crate::web::App;
use crate::web::form::{Errors, Fields, Form};
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
    /// When it was sent.
    saved_at: String,
    /// Who saved what is in the draft now, and when.
    by: String,
    at: String,
    /// What both changed.
    both: Vec<Group>,
    /// What only one of them changed, which is chosen already.
    one: Vec<Group>,
    errors: Errors,
    /// Why the choice could not be saved.
    refused: Option<String>,
}

impl ConflictPage {
    /// How many places only one of the two changed.
    fn decided(&self) -> usize {
        self.one.iter().map(|group| group.differences.len()).sum()
    }
}

/// The differences of one item, or of the section itself.
struct Group {
    heading: String,
    differences: Vec<Difference>,
}

/// A place where the two differ.
struct Difference {
    /// Of the form's field of the choice.
    name: String,
    label: String,
    /// `None`: it is not there.
    mine: Option<Vec<FieldWords>>,
    theirs: Option<Vec<FieldWords>>,
    /// Where it can be written anew.
    nodes: Vec<Node>,
    chosen: Chosen,
    /// Theirs moved again after the reader looked last.
    moved: bool,
    error: Option<String>,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Chosen {
    Mine,
    Theirs,
    Written,
}

impl Chosen {
    fn read(text: &str) -> Option<Chosen> {
        Some(match text {
            "mine" => Chosen::Mine,
            "theirs" => Chosen::Theirs,
            "written" => Chosen::Written,
            _ => return None,
        })
    }
}

/// The name of the form's field for a place.
fn name(place: &Place) -> String {
    match place {
        Place::Field(field) => format!("field.{field}"),
        Place::Item(id) => format!("item.{id}"),
        Place::Of { item, field } => format!("of.{item}.{field}"),
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

    /// The draft with the section as it was in this version; as it is now, where there is none.
    fn version(&self, version: i64) -> Result<Spec, Problem> {
        let known = self.history.iter().find(|it| it.version == version);
        match known {
            Some(known) => with_section(&self.draft.spec, &self.save, &known.content),
            None => Ok(self.draft.spec.clone()),
        }
    }

    /// `sent` is the form that could not be saved, if there is one: its choices stand.
    async fn page(
        &self,
        may: &MayOn<act::Write>,
        app: &App,
        sent: Option<&Fields>,
        errors: Errors,
        refused: Option<String>,
    ) -> Result<ConflictPage, Problem> {
        let t = self.who.t;
        let review = may.permit.also()?;
        let section = self.save.section;
        let (theirs, mine) = (&self.draft.spec, &self.mine);
        let base = self.version(self.save.base)?;
        let by_me = differences(section, &base, mine);
        let by_them = differences(section, &base, theirs);
        let looked: Option<i64> = sent.and_then(|sent| sent.number("version"));
        let since = match looked {
            Some(looked) => differences(section, &self.version(looked)?, theirs),
            None => Vec::new(),
        };
        let is_in = |all: &[Place], place: &Place| all.iter().any(|it| it.meets(place));
        let desk = Desk {
            t,
            spec: theirs,
            sent,
            errors: &errors,
        };
        let (mut both, mut one) = (Vec::new(), Vec::new());
        for place in differences(section, theirs, mine) {
            let name = name(&place);
            let label = described::label(t, [theirs, mine], &place);
            // What only the other one changed is theirs by itself, and the other way round.
            let (of_mine, of_theirs) = (is_in(&by_me, &place), is_in(&by_them, &place));
            let usual = match of_mine {
                true => Chosen::Mine,
                false => Chosen::Theirs,
            };
            let chosen = sent.and_then(|sent| Chosen::read(sent.text(&name)));
            let moved = is_in(&since, &place);
            let difference = Difference {
                mine: described::words(t, mine, section, &place),
                theirs: described::words(t, theirs, section, &place),
                nodes: written::nodes(desk, section, &place, &label),
                chosen: chosen.unwrap_or(usual),
                error: errors.of(&name).map(str::to_owned),
                moved,
                name,
                label,
            };
            let mut wrong = difference
                .nodes
                .iter()
                .filter_map(|node| node.error.as_ref());
            let wrong = difference.error.is_some() || wrong.next().is_some();
            let groups = match (of_mine && of_theirs) || moved || wrong {
                true => &mut both,
                false => &mut one,
            };
            let heading = described::heading(t, [theirs, mine], &place);
            add(groups, heading, difference);
        }
        let mut around = SectionPage::new(app, t, &review, section, &self.draft).await?;
        around.lost.retain(|other| other.id != self.save.id);
        let newest = self.history.first();
        let name_of = |newest: &SectionVersion| name_or_erased(t, newest.saved_by.as_deref());
        Ok(ConflictPage {
            t,
            frame: self.who.frame(),
            page: around,
            save: self.save.clone(),
            saved_at: self.save.saved_at.minute(),
            by: newest.map_or(String::new(), name_of),
            at: newest.map_or(String::new(), |newest| newest.saved_at.minute()),
            both,
            one,
            errors,
            refused,
        })
    }

    /// The section as it was chosen.
    fn chosen(&self, fields: &Fields, errors: &mut Errors) -> Result<Spec, Problem> {
        let t = self.who.t;
        let section = self.save.section;
        let places = differences(section, &self.draft.spec, &self.mine);
        let choice = |place: &Place| Chosen::read(fields.text(&name(place)));
        let spec = merged(
            section,
            &self.draft.spec,
            &self.mine,
            |place| match choice(place) {
                Some(Chosen::Theirs) => Side::Theirs,
                _ => Side::Mine,
            },
        );
        let is_written = |place: &&Place| choice(place) == Some(Chosen::Written);
        let anew: Vec<&Place> = places.iter().filter(is_written).collect();
        let spec = written::put(t, &spec, section, &anew, fields, errors)?;
        // What was written is not passed over because another choice is ticked.
        let desk = Desk {
            t,
            spec: &spec,
            sent: Some(fields),
            errors,
        };
        let unused = places.iter().filter(|place| {
            !is_written(place) && written::is_written(&written::nodes(desk, section, place, ""))
        });
        let unused: Vec<String> = unused.map(name).collect();
        for name in unused {
            errors.add(name, t.say("conflict-unused"));
        }
        Ok(spec)
    }
}

fn add(groups: &mut Vec<Group>, heading: String, difference: Difference) {
    match groups.last_mut() {
        Some(group) if group.heading == heading => group.differences.push(difference),
        _ => groups.push(Group {
            heading,
            differences: vec![difference],
        }),
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

pub async fn show(
    may: MayOn<act::Write>,
    State(app): State<App>,
    Path((_, save)): Path<(String, String)>,
) -> Answer {
    let case = Case::new(&may, &app, &save).await?;
    page(&case.page(&may, &app, None, Errors::default(), None).await?)
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
    let fields = &form.fields;
    let version: i64 = fields.number("version").ok_or(Problem::BadForm)?;
    let mut errors = Errors::default();
    if version != case.draft.versions[&section] {
        let refused = Some(t.say("conflict-moved").to_string());
        return page_again(&case.page(&may, &app, Some(fields), errors, refused).await?);
    }
    let spec = case.chosen(fields, &mut errors)?;
    if !errors.is_empty() {
        return page_again(&case.page(&may, &app, Some(fields), errors, None).await?);
    }
    let sent = Sent {
        trial: None,
        app: app.clone(),
        who: may.who.clone(),
        permit: may.permit.also()?,
        section,
        draft: case.draft.clone(),
        form: form.clone(),
        base: version,
    };
    let to = match sent.keep(&spec, "").await {
        Ok(to) => to,
        Err(StoreError::Unique(_)) => {
            let refused = Some(t.say("error-number-taken").to_string());
            return page_again(&case.page(&may, &app, Some(fields), errors, refused).await?);
        }
        Err(other) => return Err(other.into()),
    };
    // Kept first: if this is the last thing that is done, the choice is asked once more.
    app.store.resolve_save(&may.permit, &save).await?;
    go(&to)
}
