//! One item of a section with all of its fields.

use askama::Template;
use axum::extract::{Path, State};
use axum::http::HeaderMap;
use axum::response::{Html, IntoResponse};
use serde_json::{Map, Value as Json, json};

use super::beside::Beside;
use super::checked::{self, Trial};
use super::listed::{Shapes, id_of, section_of, with_section};
use super::typed::{Desk, Node, Reader};
use super::{SectionPage, Sent, rows, told};
use crate::access::act;
use crate::files::{Media, Warning};
use crate::language::Text;
use crate::spec::document::*;
use crate::spec::{ItemId, Spec};
use crate::web::form::{Errors, Fields, Form};
use crate::web::frame::Frame;
use crate::web::may::MayOn;
use crate::web::page::{Answer, go, page, page_again};
use crate::web::problem::Problem;
use crate::web::upload::Drawn;
use crate::web::{App, refusal, upload};

#[derive(Template)]
#[template(path = "brand/one.html")]
struct OnePage {
    t: Text,
    frame: Frame,
    page: SectionPage,
    item: ItemId,
    /// Letter and name.
    title: String,
    nodes: Vec<Node>,
    /// The item below it in its list, by its letter and name.
    next: Option<String>,
    /// The item drawn, where it can be.
    beside: Option<String>,
    errors: Errors,
}

/// An item of a draft as JSON, with its list and what its page shows of it.
struct One {
    section: Section,
    list: String,
    at: usize,
    item: Json,
    /// The item below it in its list.
    next: Option<ItemId>,
    shapes: Shapes,
}

impl One {
    fn find(spec: &Spec, section: &str, id: &ItemId) -> Option<One> {
        let section = Section::from_name(section)?;
        let content = section_of(spec, section);
        content.into_iter().find_map(|(list, items)| {
            let Json::Array(items) = items else {
                return None;
            };
            let mut items = items.into_iter().enumerate();
            let (at, item) = items.find(|(_, item)| id_of(item) == id.as_str())?;
            let next = items.next().map(|(_, item)| ItemId::new(id_of(&item)));
            Some(One {
                section,
                shapes: shapes(spec, &list, &item)?,
                list,
                at,
                item,
                next,
            })
        })
    }

    /// The item as it was sent; what cannot be read is left out, with an error.
    fn typed(
        &self,
        t: Text,
        spec: &Spec,
        id: &ItemId,
        fields: &Fields,
        errors: &mut Errors,
    ) -> Map<String, Json> {
        let mut item = self.item.as_object().cloned().unwrap_or_default();
        let mut reader = Reader {
            t,
            fields,
            unit: spec.header.unit,
            spec,
            errors,
        };
        reader.read(id.as_str(), &self.shapes, &mut item);
        item
    }

    /// The spec with this in the item's place.
    fn put(&self, spec: &Spec, item: Map<String, Json>) -> Result<Spec, Problem> {
        let mut content = section_of(spec, self.section);
        content[&self.list][self.at] = Json::Object(item);
        with_section(spec, self.section, content)
    }
}

fn title(spec: &Spec, id: &ItemId) -> String {
    let item = spec.item(id);
    let title = item.map(|item| format!("{} {}", item.letter(), item.name()));
    title.unwrap_or_default().trim().to_owned()
}

/// One item of a section, with all of its fields.
pub async fn show(
    may: MayOn<act::Review>,
    State(app): State<App>,
    Path((_, section, id)): Path<(String, String, String)>,
) -> Answer {
    let draft = app.store.draft(&may.permit).await?;
    let id = ItemId::new(id);
    let one = One::find(&draft.spec, &section, &id).ok_or(Problem::NotFound)?;
    let errors = Errors::default();
    let desk = Desk {
        t: may.who.t,
        spec: &draft.spec,
        sent: None,
        errors: &errors,
    };
    let nodes = desk.nodes(id.as_str(), &one.shapes, Some(&one.item));
    let beside = Beside::of(&app, may.who.t, &may.permit).await?;
    page(&OnePage {
        beside: beside.item(&draft.spec, &id)?,
        t: may.who.t,
        frame: may.who.frame(),
        page: SectionPage::new(&app, may.who.t, &may.permit, one.section, &draft).await?,
        title: title(&draft.spec, &id),
        next: one.next.map(|next| title(&draft.spec, &next)),
        item: id,
        nodes,
        errors,
    })
}

pub async fn save(
    may: MayOn<act::Write>,
    State(app): State<App>,
    Path((_, section, id)): Path<(String, String, String)>,
    headers: HeaderMap,
    form: Form,
) -> Answer {
    let review = may.permit.also()?;
    let (t, trial) = (may.who.t, Trial::of(&headers));
    let draft = app.store.draft(&review).await?;
    let id = ItemId::new(id);
    let one = One::find(&draft.spec, &section, &id).ok_or(Problem::NotFound)?;
    let section = one.section;
    let sent = Sent {
        base: form.fields.number("version").ok_or(Problem::BadForm)?,
        trial: trial.clone(),
        app: app.clone(),
        who: may.who,
        permit: may.permit,
        section: one.section,
        draft,
        form,
    };
    let answer = keep(sent, id, one).await;
    checked::answer(answer, &app, t, &review, section, trial).await
}

async fn keep(mut sent: Sent, id: ItemId, one: One) -> Answer {
    let mut errors = Errors::default();
    let (t, form) = (sent.who.t, &sent.form.fields);
    let mut item = one.typed(t, &sent.draft.spec, &id, form, &mut errors);
    let told = take_files(&mut sent, &id, &one, &mut item, &mut errors).await?;
    let spec = one.put(&sent.draft.spec, item);
    if errors.is_empty() {
        let spec = spec?;
        // What is said of files is said at the top of the section's page.
        if !told.is_empty() {
            let then = format!("&told={}", told.join("."));
            return go(&sent.keep(&spec, &then).await?);
        }
        let goes_on = sent.form.fields.text("do") == "next";
        return go(&match one.next.filter(|_| goes_on) {
            Some(next) => sent.keep_and_open(&spec, Some(&next), "").await?,
            None => sent.keep(&spec, &format!("#row-{id}")).await?,
        });
    }
    let desk = Desk {
        t: sent.who.t,
        spec: &sent.draft.spec,
        sent: Some(&sent.form.fields),
        errors: &errors,
    };
    let nodes = desk.nodes(id.as_str(), &one.shapes, Some(&one.item));
    let beside = Beside::of(&sent.app, t, &sent.permit.also()?).await?;
    page_again(&OnePage {
        // What could be read of it.
        beside: beside.item(spec.as_ref().unwrap_or(&sent.draft.spec), &id)?,
        t: sent.who.t,
        frame: sent.who.frame(),
        page: sent.around().await?,
        title: title(&sent.draft.spec, &id),
        next: one.next.map(|next| title(&sent.draft.spec, &next)),
        item: id,
        nodes,
        errors,
    })
}

/// The item drawn as it is being typed: what can be read of it. Nothing is saved.
pub async fn preview(
    may: MayOn<act::Write>,
    State(app): State<App>,
    Path((_, section, id)): Path<(String, String, String)>,
    form: Form,
) -> Answer {
    let (t, review) = (may.who.t, may.permit.also()?);
    let draft = app.store.draft(&review).await?;
    let id = ItemId::new(id);
    let one = One::find(&draft.spec, &section, &id).ok_or(Problem::NotFound)?;
    let item = one.typed(t, &draft.spec, &id, &form.fields, &mut Errors::default());
    let spec = one.put(&draft.spec, item)?;
    let beside = Beside::of(&app, t, &review).await?.item(&spec, &id)?;
    Ok(Html(beside.ok_or(Problem::NotFound)?).into_response())
}

/// Keeps the originals that came with the form, each for the field that it was chosen in. Gives what
/// is to be said of them, in codes.
async fn take_files(
    sent: &mut Sent,
    id: &ItemId,
    one: &One,
    item: &mut Map<String, Json>,
    errors: &mut Errors,
) -> Result<Vec<&'static str>, Problem> {
    let mut codes = Vec::new();
    let mut unseen = false;
    for brought in std::mem::take(&mut sent.form.uploads) {
        let field = brought.field.clone();
        let mut files = one.shapes.iter().filter(|(_, it)| *it == Shape::File);
        let known = files.find(|(name, _)| rows::at(id.as_str(), name) == field);
        let Some((name, _)) = known else {
            return Err(Problem::BadForm);
        };
        let is_original = one.list == "artworks" && *name == "file";
        let taken = if is_original {
            let stitches = item.get("form") == Some(&json!(ArtworkForm::Stitches));
            upload::original(&sent.app, &sent.permit, brought, stitches).await
        } else {
            upload::drawing(&sent.app, &sent.permit, brought).await
        };
        match taken {
            Ok(drawn) => {
                item.insert((*name).to_owned(), json!(drawn.file));
                if is_original {
                    original(&drawn, item);
                    unseen = drawn.width == 0;
                }
                let said = drawn.warnings.iter().copied().map(told::code);
                codes.extend(said.filter(|_| *name != "preview"));
            }
            Err(Problem::Upload(why)) => errors.add(field, refusal::upload(sent.who.t, &why)),
            Err(other) => return Err(other),
        }
    }
    if unseen && !item.contains_key("preview") {
        codes.push(told::NOT_SHOWN);
    }
    codes.sort_unstable();
    codes.dedup();
    Ok(codes)
}

/// What a new original tells of its artwork.
fn original(drawn: &Drawn, item: &mut Map<String, Json>) {
    item.remove("pixels_across");
    item.remove("pixels_down");
    let form = match drawn.media {
        Media::Svg => ArtworkForm::Vector,
        Media::Stitches => ArtworkForm::Stitches,
        // Either may be in it.
        Media::Pdf | Media::Eps => return,
        Media::Jpeg | Media::Png | Media::Webp | Media::Heic => ArtworkForm::Raster,
    };
    item.insert("form".to_owned(), json!(form));
    if form == ArtworkForm::Raster {
        // What an SVG is measured in are no pixels.
        item.insert("pixels_across".to_owned(), json!(drawn.width));
        item.insert("pixels_down".to_owned(), json!(drawn.height));
    }
    if drawn.media == Media::Svg {
        // Embedded pictures travel with the original: it is only here that they are not shown.
        let harms = |it: &Warning| *it != Warning::EmbeddedPictures;
        let unsafe_text = drawn.warnings.iter().any(harms);
        item.remove("unsafe_text");
        if unsafe_text {
            item.insert("unsafe_text".to_owned(), json!(true));
        }
    }
}

/// Whether an item's field is to be mended on the item's own page: all of them where a section has
/// no grid, and those that the grids leave out.
pub fn has_page(section: Section, field: Option<&str>) -> bool {
    let outer = field.and_then(|field| field.split('.').next());
    let Some(outer) = outer else {
        return false;
    };
    match section {
        Section::Header | Section::Drawings => false,
        Section::Sizes => IN_SIZE.contains(&outer),
        Section::Points => IN_POINT.contains(&outer),
        Section::Colourways => IN_COLOURWAY.contains(&outer),
        _ => true,
    }
}

const IN_SIZE: [&str; 2] = ["body", "ages"];
const IN_COLOURWAY: [&str; 1] = ["pieces"];
const IN_POINT: [&str; 7] = [
    "measure",
    "part",
    "panel",
    "tolerances",
    "pair_limit",
    "stretched_min",
    "lengths",
];

/// What an item of a list has on its own page. The grids have the rest of sizes, points and
/// colourways.
fn shapes(spec: &Spec, list: &str, item: &Json) -> Option<Shapes> {
    let only = |shapes: Shapes, fields: &[&str]| {
        let kept = shapes.into_iter().filter(|(name, _)| fields.contains(name));
        kept.collect()
    };
    Some(match list {
        "sizes" => only(Size::shapes(), &IN_SIZE),
        "points" => {
            let mut shapes: Shapes = only(Point::shapes(), &IN_POINT);
            if spec.sizes.lengths.is_empty() {
                shapes.retain(|(name, _)| *name != "lengths");
            }
            shapes
        }
        "colourways" => only(Colourway::shapes(), &IN_COLOURWAY),
        "lengths" => LengthOption::shapes(),
        "materials" => of_kind(Material::shapes(), item),
        "lines" => Line::shapes(),
        "callouts" => Callout::shapes(),
        "artworks" => Artwork::shapes(),
        "labels" => Label::shapes(),
        "steps" => Step::shapes(),
        "ratio" => RatioPack::shapes(),
        _ => return None,
    })
}

/// A zip has teeth, a fabric a mass: what a material of this kind can have.
fn of_kind(shapes: Shapes, item: &Json) -> Shapes {
    use MaterialKind::*;
    let kind = item.get("kind").and_then(Json::as_str);
    let kind = kind.and_then(MaterialKind::from_word);
    let fabric = matches!(
        kind,
        Some(WovenFabric | KnittedFabric | OtherFabric | Interlining | Padding)
    );
    let fibrous = fabric
        || matches!(
            kind,
            Some(Drawcord | Elastic | Tape | Webbing | Thread | Label | HookAndLoop | Patch)
        );
    let metal = matches!(kind, Some(Zip | Eyelet | Button | Snap | Buckle | CordTip));
    let mut shapes = shapes;
    shapes.retain(|(name, _)| match *name {
        "fabric" => fabric,
        "component" => fibrous,
        "care" => kind != Some(Packing),
        "zip" => kind == Some(Zip),
        "cord" => kind == Some(Drawcord),
        "metal_on_skin" => metal,
        "size" | "length" | "length_by_size" | "branding" | "branding_method" => !fabric,
        _ => true,
    });
    let other = match kind {
        Some(WovenFabric) => "knitted",
        Some(KnittedFabric) => "woven",
        _ => "",
    };
    for (_, shape) in &mut shapes {
        let Shape::Record(fields) = shape else {
            continue;
        };
        for (_, shape) in fields {
            if let Shape::OneOf(shapes) = shape {
                shapes.retain(|(name, _)| *name != other);
            }
        }
    }
    shapes
}
