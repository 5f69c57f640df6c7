//! Points copied from another style: from which, which ones, how they would stand here, and only then
//! the save. What the sizes do not answer is asked.

use askama::Template;
use axum::extract::{Query, State};
use serde::Deserialize;

use super::{SectionPage, Sent};
use crate::access::{StylePermit, act, grant, grant_on};
use crate::language::{Message, Text};
use crate::spec::carry::{Ask, Carried, Left, carry};
use crate::spec::rule::{self, Names, write_length};
use crate::spec::units::Entered;
use crate::spec::{ItemId, Section, Spec, StyleId};
use crate::store::{Draft, StyleCard};
use crate::web::App;
use crate::web::form::{Errors, Fields, Form};
use crate::web::frame::Frame;
use crate::web::may::{MayOn, Who};
use crate::web::page::{Answer, go, page, page_again};
use crate::web::problem::Problem;

#[derive(Template)]
#[template(path = "brand/copy_points.html")]
struct CopyPointsPage {
    t: Text,
    frame: Frame,
    page: SectionPage,
    styles: Vec<StyleCard>,
    from: Option<There>,
    /// How the chosen ones would stand here; none while they are being chosen.
    taken: Vec<Taken>,
    /// What the preview was made over.
    seen: String,
    /// It was made over something else than what is there now.
    moved: bool,
    errors: Errors,
}

/// The style that points are copied from.
struct There {
    style: StyleId,
    title: String,
    points: Vec<Offered>,
}

/// A point that can be copied.
struct Offered {
    id: ItemId,
    title: String,
    base: String,
    grade: String,
    way: String,
}

/// A point that is chosen, as it would stand here.
struct Taken {
    source: ItemId,
    letter: String,
    name: String,
    base: String,
    grade: String,
    /// The rule that it had.
    had: String,
    asks_base: bool,
    asks_grade: bool,
    told: Vec<Message>,
}

impl Taken {
    fn at(&self, field: &str) -> String {
        at(&self.source, field)
    }
}

/// The name of an answer's field in the form.
fn at(source: &ItemId, field: &str) -> String {
    super::rows::at(source.as_str(), field)
}

#[derive(Deserialize)]
pub struct Wish {
    from: Option<StyleId>,
}

/// From which style, and which of its points.
pub async fn show(
    may: MayOn<act::Write>,
    State(app): State<App>,
    Query(wish): Query<Wish>,
) -> Answer {
    let draft = app.store.draft(&may.permit.also()?).await?;
    let from = match wish.from.filter(|from| !from.as_str().is_empty()) {
        Some(style) => Some(source(&app, &may.who, style).await?),
        None => None,
    };
    let from = from
        .as_ref()
        .map(|(style, draft)| offered(style, &draft.spec));
    let shown = copy_page(&app, &may.who, &may.permit, &draft, from).await?;
    page(&shown)
}

/// How the chosen ones would stand here, and the save.
pub async fn submit(may: MayOn<act::Write>, State(app): State<App>, form: Form) -> Answer {
    let t = may.who.t;
    let draft = app.store.draft(&may.permit.also()?).await?;
    let style = match form.fields.text("from") {
        "" => return Err(Problem::BadForm),
        style => StyleId::new(style),
    };
    let (style, there) = source(&app, &may.who, style).await?;
    let from = offered(&style, &there.spec);
    let mut shown = copy_page(&app, &may.who, &may.permit, &draft, Some(from)).await?;
    let chosen: Vec<ItemId> = form.fields.all("take").map(ItemId::new).collect();
    let world = app.store.world();
    let mut new_id = || ItemId::new(world.id());
    let mut carried = carry(&there.spec, &draft.spec, &chosen, &mut new_id);
    if carried.is_empty() {
        shown.errors.add("take", t.say("carry-none"));
        return page_again(&shown);
    }
    answer(
        t,
        &form.fields,
        &draft.spec,
        &mut carried,
        &mut shown.errors,
    );
    let seen = versions(&draft, &there);
    let saves = form.fields.text("do") == "save";
    shown.moved = saves && form.fields.text("seen") != seen;
    if saves && !shown.moved && shown.errors.is_empty() {
        let mut spec = draft.spec.clone();
        spec.points
            .points
            .extend(carried.into_iter().map(|it| it.point));
        let base = draft.versions.get(&Section::Points).copied();
        let sent = Sent {
            app,
            who: may.who,
            permit: may.permit,
            section: Section::Points,
            draft,
            form,
            base: base.unwrap_or_default(),
            trial: None,
        };
        return go(&sent.keep(&spec, "").await?);
    }
    shown.seen = seen;
    shown.taken = taken(t, &form.fields, &there.spec, &draft.spec, &carried);
    match shown.errors.is_empty() {
        true => page(&shown),
        false => page_again(&shown),
    }
}

async fn copy_page(
    app: &App,
    who: &Who,
    permit: &StylePermit<act::Write>,
    draft: &Draft,
    from: Option<There>,
) -> Result<CopyPointsPage, Problem> {
    let review = permit.also()?;
    let browse = grant::<act::Browse>(&who.session.actor)?;
    let mut styles = app.store.styles(&browse).await?;
    styles.retain(|style| style.id != *permit.style());
    Ok(CopyPointsPage {
        t: who.t,
        frame: who.frame(),
        page: SectionPage::new(app, who.t, &review, Section::Points, draft).await?,
        styles,
        from,
        taken: Vec::new(),
        seen: String::new(),
        moved: false,
        errors: Errors::default(),
    })
}

/// Another style's draft. Errors: as on its own pages for one that is not there.
async fn source(app: &App, who: &Who, style: StyleId) -> Result<(StyleId, Draft), Problem> {
    let actor = &who.session.actor;
    let facts = app.store.style_facts(actor, &style).await?;
    let review: StylePermit<act::Review> = grant_on(actor, &facts.ok_or(Problem::NotFound)?)?;
    Ok((style, app.store.draft(&review).await?))
}

fn names<'a>(spec: &'a Spec, more: &'a [Carried]) -> Names<'a> {
    let points = spec.points.points.iter();
    let points = points.chain(more.iter().map(|it| &it.point));
    Names {
        sizes: &spec.sizes.sizes,
        points: points.map(|it| (&it.id, it.letter.as_str())).collect(),
        unit: spec.header.unit,
    }
}

fn written(entered: Option<Entered>, names: &Names<'_>) -> String {
    entered.map_or(String::new(), |it| write_length(it, names.unit))
}

fn offered(style: &StyleId, spec: &Spec) -> There {
    let names = names(spec, &[]);
    let points = spec.points.points.iter().map(|point| Offered {
        id: point.id.clone(),
        title: format!("{} {}", point.letter, point.name),
        base: written(point.base, &names),
        grade: written_rule(point.grade.as_ref(), &names),
        way: format!("{} → {}", point.how.start, point.how.end),
    });
    There {
        style: style.clone(),
        title: format!("{} {}", spec.header.number, spec.header.name),
        points: points.collect(),
    }
}

fn written_rule(rule: Option<&crate::spec::document::Grade>, names: &Names<'_>) -> String {
    rule.map_or(String::new(), |rule| rule::write(rule, names))
}

/// Puts what was answered into the points that asked for it. An answer may stay empty: the checks of
/// the draft ask again.
fn answer(t: Text, fields: &Fields, here: &Spec, carried: &mut [Carried], errors: &mut Errors) {
    let all = carried.to_vec();
    let names = names(here, &all);
    for it in carried {
        for ask in &it.asks {
            let field = match ask {
                Ask::Base => at(&it.source, "base"),
                Ask::Grade | Ask::Source => at(&it.source, "grade"),
            };
            let typed = fields.line(t, &field, errors);
            if typed.is_empty() {
                continue;
            }
            match ask {
                Ask::Base => match Entered::read_in(&typed, names.unit) {
                    Ok(base) => it.point.base = Some(base),
                    Err(why) => errors.add(field, t.not_a_length(why, &typed)),
                },
                Ask::Grade | Ask::Source => match rule::read(&typed, &names) {
                    Ok(rule) => it.point.grade = Some(rule),
                    Err(why) => errors.add(field, t.not_a_grade(&why)),
                },
            }
        }
    }
}

fn taken(t: Text, fields: &Fields, there: &Spec, here: &Spec, carried: &[Carried]) -> Vec<Taken> {
    let old_names = names(there, &[]);
    let names = names(here, carried);
    let line = |it: &Carried| {
        let asks_base = it.asks.contains(&Ask::Base);
        let asks_grade = it.asks.iter().any(|ask| *ask != Ask::Base);
        let old = there
            .point(&it.source)
            .and_then(|point| point.grade.as_ref());
        let typed = |asked: bool, field: &str, written: String| match asked {
            true => fields.text(&at(&it.source, field)).to_owned(),
            false => written,
        };
        Taken {
            source: it.source.clone(),
            letter: it.point.letter.clone(),
            name: it.point.name.clone(),
            base: typed(asks_base, "base", written(it.point.base, &names)),
            grade: typed(
                asks_grade,
                "grade",
                written_rule(it.point.grade.as_ref(), &names),
            ),
            had: written_rule(old, &old_names),
            asks_base,
            asks_grade,
            told: told(t, it),
        }
    };
    carried.iter().map(line).collect()
}

fn told(t: Text, carried: &Carried) -> Vec<Message> {
    let asks = carried.asks.iter().map(|ask| match ask {
        Ask::Base => t.say("carry-ask-base"),
        Ask::Grade => t.say("carry-ask-grade"),
        Ask::Source => t.say("carry-ask-source"),
    });
    let left = carried.left.iter().map(|left| match left {
        Left::Part => t.say("carry-left-part"),
        Left::Tolerances => t.say("carry-left-tolerances"),
        Left::Lengths => t.say("carry-left-lengths"),
        Left::Stretched => t.say("carry-left-stretched"),
        Left::Step => t.say("carry-left-step"),
    });
    asks.chain(left).collect()
}

/// What a preview is made over, as one word: the versions of all that the points are read by.
fn versions(here: &Draft, there: &Draft) -> String {
    let sections = [
        Section::Header,
        Section::Sizes,
        Section::Points,
        Section::Colourways,
    ];
    let all = [here, there].into_iter().flat_map(|draft| {
        let version = |section| draft.versions.get(&section).copied().unwrap_or_default();
        sections.map(|section| version(section).to_string())
    });
    all.collect::<Vec<_>>().join(".")
}
