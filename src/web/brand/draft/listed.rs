//! Sections that are lists: their rows, with the fields that tell one from another. All fields of an
//! item are on its own page.

use askama::Template;
use axum::extract::{Path, State};
use axum::response::{Html, IntoResponse};
use serde_json::{Map, Value as Json, json};

use super::beside::Beside;
use super::rows::{self, Press};
use super::typed::{Desk, Input, Node, Reader};
use super::{SectionPage, Sent, told};
use crate::access::act;
use crate::language::Text;
use crate::spec::Spec;
use crate::spec::document::*;
use crate::store::World;
use crate::web::App;
use crate::web::form::{Errors, Fields, Form};
use crate::web::frame::Frame;
use crate::web::may::{MayOn, Who};
use crate::web::page::{Answer, go, page, page_again};
use crate::web::problem::Problem;

pub type Shapes = Vec<(&'static str, Shape)>;

/// A list of a section: its name in the document, what an item has, and the fields of its rows.
struct List {
    name: &'static str,
    shapes: Shapes,
    columns: &'static [&'static str],
}

fn lists(section: Section) -> Vec<List> {
    let list = |name, shapes, columns| List {
        name,
        shapes,
        columns,
    };
    match section {
        Section::Sizes => vec![list("lengths", LengthOption::shapes(), &["code", "label"])],
        Section::Materials => {
            let columns = &["letter", "name", "kind", "supplier", "reference"];
            vec![list("materials", Material::shapes(), columns)]
        }
        Section::Construction => vec![
            list("lines", Line::shapes(), &["name", "kind"]),
            list(
                "callouts",
                Callout::shapes(),
                &["letter", "place", "text", "stitch", "seam"],
            ),
        ],
        Section::Artwork => {
            let columns = &["letter", "name", "method", "form"];
            vec![list("artworks", Artwork::shapes(), columns)]
        }
        Section::Labels => {
            let columns = &["letter", "name", "kind", "made"];
            vec![list("labels", Label::shapes(), columns)]
        }
        Section::Packing => vec![
            list("steps", Step::shapes(), &["text"]),
            list(
                "ratio",
                RatioPack::shapes(),
                &["name", "colourway", "pieces"],
            ),
        ],
        Section::Header | Section::Drawings | Section::Points | Section::Colourways => Vec::new(),
    }
}

/// The fields of a section itself that these pages show.
pub fn own(section: Section) -> Shapes {
    match section {
        Section::Sizes => {
            let shapes = Sizes::shapes().into_iter();
            shapes.filter(|(name, _)| *name == "system").collect()
        }
        Section::Labels => Labels::shapes(),
        Section::Packing => Packing::shapes(),
        _ => Vec::new(),
    }
}

#[derive(Template)]
#[template(path = "brand/listed.html")]
struct ListedPage {
    t: Text,
    frame: Frame,
    page: SectionPage,
    own: Vec<Node>,
    lists: Vec<Table>,
    /// The section worked out, where it can be.
    beside: Option<String>,
    /// What is to be said of files that came with the form before.
    told: Vec<String>,
    errors: Errors,
}

/// A list as it stands in the form.
pub struct Table {
    pub name: &'static str,
    pub heads: Vec<String>,
    pub rows: Vec<Row>,
    /// An empty row, for script to add more.
    pub spare: Row,
}

pub struct Row {
    pub key: String,
    pub cells: Vec<Node>,
}

impl Row {
    pub fn is_new(&self) -> bool {
        rows::is_new(&self.key)
    }

    pub fn at(&self, field: &str) -> String {
        rows::at(&self.key, field)
    }
}

impl List {
    fn columns(&self) -> Shapes {
        let columns = self.columns.iter().filter_map(|column| {
            let found = self.shapes.iter().find(|(name, _)| name == column);
            found.cloned()
        });
        columns.collect()
    }

    fn table(&self, desk: Desk<'_>, items: &[Json], more: usize) -> Table {
        let columns = self.columns();
        let row = |key: String, item: Option<&Json>| Row {
            cells: cells(desk.nodes(&key, &columns, item)),
            key,
        };
        // The lists of a page share their fields' names: each has its own new rows.
        let new = |n| row(format!("{}-{}", rows::new_key(n), self.name), None);
        let rows = match desk.sent {
            Some(sent) => {
                let keys = sent.all(self.name).map(str::to_owned);
                keys.map(|key| row(key, None)).collect()
            }
            None => {
                let held = items.iter().map(|item| row(id_of(item), Some(item)));
                held.chain((1..=rows::SPARE + more).map(new)).collect()
            }
        };
        Table {
            name: self.name,
            heads: columns
                .iter()
                .flat_map(|(name, shape)| match shape {
                    Shape::ByItem(_) => desk.letters(name),
                    _ => vec![desk.t.field(name).to_string()],
                })
                .collect(),
            spare: new(0),
            rows,
        }
    }
}

/// A cell for each field; of a field with a value for each size, one for each.
fn cells(nodes: Vec<Node>) -> Vec<Node> {
    let cells = nodes.into_iter().flat_map(|node| match node.input {
        Input::Row(nodes) => nodes
            .into_iter()
            .map(|cell| Node {
                label: format!("{} {}", node.label, cell.label),
                ..cell
            })
            .collect(),
        _ => vec![node],
    });
    cells.collect()
}

pub fn id_of(item: &Json) -> String {
    let id = item.get("id").and_then(Json::as_str);
    id.unwrap_or_default().to_owned()
}

/// A section of the spec as JSON, absent ones as an empty object.
pub fn section_of(spec: &Spec, section: Section) -> Map<String, Json> {
    let mut whole = serde_json::to_value(spec).expect("a spec is JSON");
    match whole.get_mut(section.name()).map(Json::take) {
        Some(Json::Object(section)) => section,
        _ => Map::new(),
    }
}

pub fn with_section(
    spec: &Spec,
    section: Section,
    content: Map<String, Json>,
) -> Result<Spec, Problem> {
    let mut whole = serde_json::to_value(spec).expect("a spec is JSON");
    whole[section.name()] = Json::Object(content);
    // Numbers of a form can be too large for their fields, no more: those were read one by one.
    serde_json::from_value(whole).map_err(|_| Problem::BadForm)
}

fn items<'a>(section: &'a Map<String, Json>, list: &str) -> &'a [Json] {
    let list = section.get(list).and_then(Json::as_array);
    list.map(Vec::as_slice).unwrap_or_default()
}

/// The tables of a section's lists.
pub fn made(desk: Desk<'_>, section: Section, more: usize) -> Vec<Table> {
    let content = section_of(desk.spec, section);
    let tables = lists(section).into_iter();
    tables
        .map(|list| list.table(desk, items(&content, list.name), more))
        .collect()
}

/// The inputs of the section's own fields.
pub fn own_nodes(desk: Desk<'_>, section: Section) -> Vec<Node> {
    let content = Json::Object(section_of(desk.spec, section));
    desk.nodes("", &own(section), Some(&content))
}

/// `told` is what the address says of the files that came with the form before.
pub fn show(
    who: &Who,
    around: SectionPage,
    beside: &Beside,
    spec: &Spec,
    more: usize,
    told: &str,
) -> Answer {
    let errors = Errors::default();
    let desk = Desk {
        t: who.t,
        spec,
        sent: None,
        errors: &errors,
    };
    let section = around.section;
    page(&ListedPage {
        beside: beside.section(spec, section)?,
        t: who.t,
        frame: who.frame(),
        own: own_nodes(desk, section),
        lists: made(desk, section, more),
        page: around,
        told: told::sentences(who.t, told),
        errors,
    })
}

pub async fn save(sent: Sent) -> Answer {
    let t = sent.who.t;
    let press = Press::of(&sent.form.fields);
    let mut errors = Errors::default();
    let spec = read(
        sent.typed(),
        &sent.draft.spec,
        sent.section,
        &press,
        &mut errors,
    )?;
    if errors.is_empty() {
        return go(&sent.keep(&spec, &press.then()).await?);
    }
    let desk = Desk {
        t,
        spec: &sent.draft.spec,
        sent: Some(&sent.form.fields),
        errors: &errors,
    };
    let section = sent.section;
    let own = own_nodes(desk, section);
    let lists = made(desk, section, 0);
    let beside = Beside::of(&sent.app, t, &sent.permit.also()?).await?;
    page_again(&ListedPage {
        // What could be read of it.
        beside: beside.section(&spec, section)?,
        t,
        frame: sent.who.frame(),
        page: sent.around().await?,
        own,
        lists,
        told: Vec::new(),
        errors,
    })
}

/// The section worked out as it is being typed: what can be read of it. Nothing is saved.
pub async fn preview(
    may: MayOn<act::Write>,
    State(app): State<App>,
    Path((_, section)): Path<(String, String)>,
    form: Form,
) -> Answer {
    let section = Section::from_name(&section).ok_or(Problem::NotFound)?;
    let (t, review) = (may.who.t, may.permit.also()?);
    let draft = app.store.draft(&review).await?;
    let beside = Beside::of(&app, t, &review).await?;
    if beside.section(&draft.spec, section)?.is_none() {
        return Err(Problem::NotFound);
    }
    let typed = Typed {
        t,
        world: app.store.world(),
        fields: &form.fields,
    };
    let errors = &mut Errors::default();
    let spec = read(typed, &draft.spec, section, &Press::Save, errors)?;
    let shown = beside.section(&spec, section)?;
    Ok(Html(shown.unwrap_or_default()).into_response())
}

/// A form of a section as it was sent.
#[derive(Clone, Copy)]
pub struct Typed<'a> {
    pub t: Text,
    /// Gives new rows their ids.
    pub world: &'a World,
    pub fields: &'a Fields,
}

impl Sent {
    pub fn typed(&self) -> Typed<'_> {
        Typed {
            t: self.who.t,
            world: self.app.store.world(),
            fields: &self.form.fields,
        }
    }
}

/// The draft with the section's own fields and rows as they were sent.
pub fn read(
    sent: Typed<'_>,
    spec: &Spec,
    section: Section,
    press: &Press,
    errors: &mut Errors,
) -> Result<Spec, Problem> {
    let mut content = section_of(spec, section);
    let mut reader = Reader {
        t: sent.t,
        fields: sent.fields,
        unit: spec.header.unit,
        spec,
        errors,
    };
    reader.read("", &own(section), &mut content);
    for list in lists(section) {
        let columns = list.columns();
        let old = items(&content, list.name).to_vec();
        let mut kept = Vec::new();
        for key in rows::keys(sent.fields, list.name, press)? {
            let before = old.iter().find(|item| id_of(item) == key);
            let mut item = match before {
                Some(Json::Object(item)) => item.clone(),
                _ => Map::new(),
            };
            reader.read(&key, &columns, &mut item);
            if before.is_none() && item.is_empty() {
                continue;
            }
            let id = match before {
                Some(_) => key,
                None => sent.world.id(),
            };
            item.insert("id".to_owned(), json!(id));
            kept.push(Json::Object(item));
        }
        content.remove(list.name);
        if !kept.is_empty() {
            content.insert(list.name.to_owned(), Json::Array(kept));
        }
    }
    with_section(spec, section, content)
}
