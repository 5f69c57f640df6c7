//! One cell of the colour matrix with all that may be said of a colour: reference, reading, what a
//! screen shows of it, the photograph as dyed, the lab dip.

use askama::Template;
use axum::extract::{Path, State};
use axum::http::HeaderMap;

use super::checked::{self, Trial};
use super::colour_cell::{COLOUR, NATURAL, NONE, match_value, matched, screen};
use super::strip::{Strip, called, strip};
use super::{SectionPage, Sent, rows};
use crate::access::act;
use crate::language::Text;
use crate::spec::colour::on_screen;
use crate::spec::document::{
    Approval, Cell, Colour, Colourways, Illuminant, Lab, Observer, Part, Section, Word,
};
use crate::spec::{Decimal, Digest, ItemId, Spec};
use crate::web::both::patch::{Patch, Shape, patch};
use crate::web::both::reading;
use crate::web::form::{Errors, Fields, Form};
use crate::web::frame::Frame;
use crate::web::may::{MayOn, Who};
use crate::web::page::{Answer, go, page, page_again};
use crate::web::problem::Problem;
use crate::web::{App, refusal, upload};

#[derive(Template)]
#[template(path = "brand/colour.html")]
struct ColourPage {
    t: Text,
    frame: Frame,
    page: SectionPage,
    colourway: ItemId,
    part: ItemId,
    /// Letter and name of the part.
    part_name: String,
    /// Code and name of the colourway.
    colourway_name: String,
    /// The parts that this one may be dyed to match: the choice, and the letter with the name.
    others: Vec<(String, String)>,
    typed: Typed,
    photo: Option<Digest>,
    /// What is saved.
    patch: Option<Patch>,
    /// What the screen shows, in words.
    shown: Vec<String>,
    strip: Strip,
    errors: Errors,
}

/// The cell as it stands in the form.
#[derive(Default)]
struct Typed {
    kind: String,
    name: String,
    reference: String,
    substrate: String,
    l: String,
    a: String,
    b: String,
    illuminant: String,
    observer: String,
    screen: String,
    approval: String,
}

impl Typed {
    fn of(cell: Option<&Cell>) -> Typed {
        let kind = |kind: &str| Typed {
            kind: kind.to_owned(),
            ..Typed::default()
        };
        let colour = match cell {
            None => return Typed::default(),
            Some(Cell::None {}) => return kind(NONE),
            Some(Cell::Natural {}) => return kind(NATURAL),
            Some(Cell::DyedToMatch { part }) => return kind(&match_value(part.as_str())),
            Some(Cell::Colour(colour)) => colour,
        };
        let lab = colour.lab.as_ref();
        let number = |of: fn(&Lab) -> Decimal| lab.map_or(String::new(), |it| of(it).to_string());
        Typed {
            name: colour.name.clone(),
            reference: colour.reference.clone(),
            substrate: colour.substrate.clone(),
            l: number(|lab| lab.l),
            a: number(|lab| lab.a),
            b: number(|lab| lab.b),
            illuminant: lab.map_or(String::new(), |lab| lab.illuminant.word().to_owned()),
            observer: lab.map_or(String::new(), |lab| lab.observer.word().to_owned()),
            screen: colour.screen.clone().unwrap_or_default(),
            approval: colour
                .approval
                .map_or(String::new(), |it| it.word().to_owned()),
            ..kind(COLOUR)
        }
    }

    fn read(t: Text, fields: &Fields, errors: &mut Errors) -> Typed {
        let mut line = |field| fields.line(t, field, errors);
        Typed {
            kind: line("kind"),
            name: line("name"),
            reference: line("reference"),
            substrate: line("substrate"),
            l: line("l"),
            a: line("a"),
            b: line("b"),
            illuminant: line("illuminant"),
            observer: line("observer"),
            screen: line("screen"),
            approval: line("approval"),
        }
    }

    /// The cell that is meant. A cell without a choice in which something is written is a colour.
    fn cell(
        &self,
        t: Text,
        photo: Option<Digest>,
        others: &[(String, String)],
        errors: &mut Errors,
    ) -> Result<Option<Cell>, Problem> {
        match self.kind.as_str() {
            NONE => return Ok(Some(Cell::None {})),
            NATURAL => return Ok(Some(Cell::Natural {})),
            "" | COLOUR => {}
            kind => {
                let known = others.iter().any(|(choice, _)| choice == kind);
                let part = matched(kind).filter(|_| known).ok_or(Problem::BadForm)?;
                let part = ItemId::new(part);
                return Ok(Some(Cell::DyedToMatch { part }));
            }
        }
        let typed = reading::Typed {
            numbers: [&self.l, &self.a, &self.b],
            illuminant: &self.illuminant,
            observer: &self.observer,
        };
        let lab = reading::read(t, typed, errors);
        let screen = screen(&self.screen).unwrap_or_else(|()| {
            errors.add("screen", t.say("error-screen").with("typed", &self.screen));
            None
        });
        let colour = Colour {
            name: self.name.clone(),
            reference: self.reference.clone(),
            substrate: self.substrate.clone(),
            lab,
            screen,
            photo,
            approval: Approval::from_word(&self.approval),
        };
        let is_empty = self.kind.is_empty() && colour == Colour::default() && errors.is_empty();
        Ok((!is_empty).then_some(Cell::Colour(colour)))
    }
}

/// What stands for the colour on the screen, and what is to be known of that.
fn shown(t: Text, cell: Option<&Cell>) -> Vec<String> {
    let Some(Cell::Colour(colour)) = cell else {
        return Vec::new();
    };
    let mut said = Vec::new();
    if let Some(Err(why)) = colour.lab.as_ref().map(on_screen) {
        said.push(t.not_on_screen(why).to_string());
    }
    match crate::spec::colour::shown(colour) {
        None => said.push(t.say("colour-none-shown").to_string()),
        Some(shown) => {
            let screen = shown.screen.to_string();
            let sentence = match shown.computed {
                true => t.say("colour-computed").with("screen", screen),
                false => t.say("colour-typed").with("screen", screen),
            };
            said.push(sentence.to_string());
            if shown.clipped {
                said.push(t.say("colour-clipped").to_string());
            }
        }
    }
    said
}

/// The cell of the path, with its part.
struct Place<'a> {
    section: &'a Colourways,
    colourway: &'a crate::spec::document::Colourway,
    part: &'a Part,
}

impl<'a> Place<'a> {
    fn find(spec: &'a Spec, colourway: &str, part: &str) -> Result<Place<'a>, Problem> {
        let section = &spec.colourways;
        let mut colourways = section.colourways.iter();
        let mut parts = section.parts.iter();
        let colourway = colourways.find(|it| it.id.as_str() == colourway);
        let part = parts.find(|it| it.id.as_str() == part);
        Ok(Place {
            section,
            colourway: colourway.ok_or(Problem::NotFound)?,
            part: part.ok_or(Problem::NotFound)?,
        })
    }

    fn cell(&self) -> Option<&'a Cell> {
        self.section.cell(&self.colourway.id, &self.part.id)
    }

    /// What this part may be dyed to match.
    fn others(&self) -> Vec<(String, String)> {
        let others = self.section.parts.iter();
        let others = others.filter(|other| other.id != self.part.id);
        others
            .map(|it| (match_value(it.id.as_str()), named(it)))
            .collect()
    }

    fn page(&self, who: &Who, around: SectionPage, typed: Typed, errors: Errors) -> ColourPage {
        let t = who.t;
        let cell = self.cell();
        ColourPage {
            t,
            frame: who.frame(),
            page: around,
            colourway: self.colourway.id.clone(),
            part: self.part.id.clone(),
            part_name: named(self.part),
            colourway_name: called(self.colourway),
            others: self.others(),
            typed,
            photo: match cell {
                Some(Cell::Colour(colour)) => colour.photo.clone(),
                _ => None,
            },
            patch: patch(t, self.section, &self.colourway.id, &self.part.id),
            shown: shown(t, cell),
            strip: strip(t, self.section, self.colourway),
            errors,
        }
    }
}

fn named(part: &Part) -> String {
    format!("{} {}", part.letter, part.name).trim().to_owned()
}

impl ColourPage {
    /// Whether the part that this one is dyed to match is not there any more.
    fn is_adrift(&self) -> bool {
        let kind = &self.typed.kind;
        matched(kind).is_some() && self.others.iter().all(|(choice, _)| choice != kind)
    }
}

/// One cell of the matrix.
pub async fn show(
    may: MayOn<act::Review>,
    State(app): State<App>,
    Path((_, colourway, part)): Path<(String, String, String)>,
) -> Answer {
    let draft = app.store.draft(&may.permit).await?;
    let place = Place::find(&draft.spec, &colourway, &part)?;
    let section = Section::Colourways;
    let around = SectionPage::new(&app, may.who.t, &may.permit, section, &draft).await?;
    let typed = Typed::of(place.cell());
    page(&place.page(&may.who, around, typed, Errors::default()))
}

pub async fn save(
    may: MayOn<act::Write>,
    State(app): State<App>,
    Path((_, colourway, part)): Path<(String, String, String)>,
    headers: HeaderMap,
    form: Form,
) -> Answer {
    let review = may.permit.also()?;
    let (t, trial) = (may.who.t, Trial::of(&headers));
    let draft = app.store.draft(&review).await?;
    let section = Section::Colourways;
    let sent = Sent {
        base: form.fields.number("version").ok_or(Problem::BadForm)?,
        trial: trial.clone(),
        app: app.clone(),
        who: may.who,
        permit: may.permit,
        section,
        draft,
        form,
    };
    let answer = keep(sent, &colourway, &part).await;
    checked::answer(answer, &app, t, &review, section, trial).await
}

async fn keep(mut sent: Sent, colourway: &str, part: &str) -> Answer {
    let t = sent.who.t;
    let mut errors = Errors::default();
    let typed = Typed::read(t, &sent.form.fields, &mut errors);
    let brought = take_photo(&mut sent, &mut errors).await?;
    let place = Place::find(&sent.draft.spec, colourway, part)?;
    let kept = match place.cell() {
        Some(Cell::Colour(colour)) if !sent.form.fields.has("photo-remove") => colour.photo.clone(),
        _ => None,
    };
    // What it matched may be gone since; the form that comes back as it was keeps it.
    let mut others = place.others();
    if let Some(Cell::DyedToMatch { part }) = place.cell() {
        others.push((match_value(part.as_str()), String::new()));
    }
    let cell = typed.cell(t, brought.or(kept), &others, &mut errors)?;
    if errors.is_empty() {
        let mut spec = sent.draft.spec.clone();
        let cells = &mut spec.colourways.cells;
        let row = cells.entry(ItemId::new(colourway)).or_default();
        match cell {
            Some(cell) => row.insert(ItemId::new(part), cell),
            None => row.remove(&ItemId::new(part)),
        };
        cells.retain(|_, row| !row.is_empty());
        let at = rows::at(&rows::at(colourway, part), "kind");
        return go(&sent.keep(&spec, &format!("#{at}")).await?);
    }
    let around = sent.around().await?;
    page_again(&place.page(&sent.who, around, typed, errors))
}

/// Keeps the photograph that came with the form.
async fn take_photo(sent: &mut Sent, errors: &mut Errors) -> Result<Option<Digest>, Problem> {
    let mut photo = None;
    for brought in std::mem::take(&mut sent.form.uploads) {
        if brought.field != "photo" {
            return Err(Problem::BadForm);
        }
        match upload::as_dyed(&sent.app, &sent.permit, brought).await {
            Ok(file) => photo = Some(file),
            Err(Problem::Upload(why)) => errors.add("photo", refusal::upload(sent.who.t, &why)),
            Err(other) => return Err(other),
        }
    }
    Ok(photo)
}
