//! The points of measure: the grid, its form, and the values of every size beside what is typed.

use askama::Template;

use super::lettering;
use super::point_row::{BASES, CLOSURES, DIRECTIONS, PATHS, Row, SIDES};
use super::regrade::{Basis, Graded, graded, other_unit, read, rows_of};
use super::rows::{self, Press};
use super::{SectionPage, Sent};
use crate::language::{Message, Text};
use crate::spec::document::Size;
use crate::spec::rule::write_length;
use crate::spec::{ItemId, Spec, carry, letters};
use crate::store::Draft;
use crate::web::App;
use crate::web::brand::wordings::Library;
use crate::web::form::Errors;
use crate::web::frame::Frame;
use crate::web::may::Who;
use crate::web::page::{Answer, go, page, page_again};

#[derive(Template)]
#[template(path = "brand/points.html")]
struct PointsPage {
    t: Text,
    frame: Frame,
    page: SectionPage,
    /// The sizes as the form knows them, and their version.
    basis: Basis,
    rows: Vec<Graded>,
    /// An empty row, for script to add more.
    spare: Graded,
    sizes: Vec<Size>,
    base_size: Option<ItemId>,
    library: Library,
    errors: Errors,
}

fn usual_step(spec: &Spec) -> String {
    let step = carry::usual_step(spec);
    step.map_or(String::new(), |step| write_length(step, spec.header.unit))
}

fn spare(spec: &Spec, n: usize, letter: String) -> Graded {
    Graded::bare(Row {
        key: rows::new_key(n),
        lettered: letter.clone(),
        letter,
        step: usual_step(spec),
        ..Row::default()
    })
}

impl PointsPage {
    fn new(
        who: &Who,
        around: SectionPage,
        basis: Basis,
        spec: &Spec,
        rows: Vec<Graded>,
        library: Library,
        errors: Errors,
    ) -> Self {
        PointsPage {
            t: who.t,
            frame: who.frame(),
            page: around,
            basis,
            rows,
            spare: spare(spec, 0, String::new()),
            sizes: spec.sizes.sizes.clone(),
            base_size: spec.header.base_size.clone(),
            library,
            errors,
        }
    }

    /// In which units the numbers are.
    fn units(&self) -> Option<Message> {
        let (t, unit) = (self.t, self.basis.unit?);
        let (unit, other) = (t.name(&unit), t.name(&other_unit(unit)));
        Some(
            t.say("points-units")
                .with("unit", unit)
                .with("other", other),
        )
    }

    /// The ways to write a grade.
    fn ways(&self) -> [(&'static str, Message); 5] {
        let t = self.t;
        [
            ("2", t.say("points-grade-step")),
            ("XS-L 2, L-2XL 2.5", t.say("points-grade-segments")),
            ("same", t.say("points-grade-same")),
            ("XS=50, S=52, M=54", t.say("points-grade-values")),
            ("=C - 1.5", t.say("points-grade-derived")),
        ]
    }

    fn base_code(&self) -> &str {
        let base = self.sizes.iter().find(|size| self.is_base(size));
        base.map_or("", |size| size.code.as_str())
    }

    fn is_base(&self, size: &Size) -> bool {
        self.base_size.as_ref() == Some(&size.id)
    }

    /// What the keys do.
    fn keys(&self) -> [(&'static str, Message); 9] {
        let t = self.t;
        [
            ("← ↑ → ↓", t.say("grid-key-arrows")),
            ("Enter", t.say("grid-key-enter")),
            ("Shift ← ↑ → ↓", t.say("grid-key-range")),
            ("Ctrl C, X, V", t.say("grid-key-copy")),
            ("Ctrl D", t.say("grid-key-fill")),
            ("Ctrl Z, Ctrl Y", t.say("grid-key-undo")),
            ("Alt ↑ ↓", t.say("grid-key-move")),
            ("Alt Enter", t.say("grid-key-open")),
            ("Ctrl S", t.say("grid-key-save")),
        ]
    }

    /// How many columns the grid has: those to type in, and the sizes.
    fn columns(&self) -> usize {
        11 + self.sizes.len()
    }
}

pub async fn show(app: &App, who: &Who, around: SectionPage, draft: &Draft, more: usize) -> Answer {
    let spec = &draft.spec;
    let basis = Basis::of(draft);
    let mut rows = graded(who.t, spec, rows_of(spec, &basis), &Errors::default());
    let count = more
        + if rows.is_empty() {
            rows::FIRST
        } else {
            rows::SPARE
        };
    let taken = spec.points.points.iter().map(|point| point.letter.as_str());
    let letters = letters::after(taken).take(count);
    rows.extend(letters.zip(1..).map(|(letter, n)| spare(spec, n, letter)));
    let library = Library::read(app, &who.session.actor).await?;
    page(&PointsPage::new(
        who,
        around,
        basis,
        spec,
        rows,
        library,
        Errors::default(),
    ))
}

pub async fn save(sent: Sent) -> Answer {
    let t = sent.who.t;
    let fields = &sent.form.fields;
    let press = Press::of(fields);
    let review = sent.permit.also()?;
    let basis = Basis::read(&sent.app, &review, &sent.draft, fields).await?;
    let world = sent.app.store.world();
    let mut errors = Errors::default();
    let mut rows: Vec<(ItemId, Row)> = rows::keys(fields, "row", &press)?
        .into_iter()
        .map(|key| {
            (
                rows::id(&key, world),
                Row::read(t, fields, key, &mut errors),
            )
        })
        .collect();
    let library = Library::read(&sent.app, &sent.who.session.actor).await?;
    let mut kept = Vec::new();
    for (_, row) in &mut rows {
        row.take(t, &library, &mut errors);
        kept.extend(row.kept(t, &mut errors));
    }
    let all = rows.clone();
    rows.retain(|(_, row)| !row.is_blank());
    propose_letters(&mut rows);
    if press == Press::Letter {
        lettering::in_order(&sent.draft.spec, &basis, &mut rows);
    }
    let mut spec = sent.draft.spec.clone();
    spec.points.points = read(t, &sent.draft.spec, &basis, &rows, &mut errors);
    if errors.is_empty() {
        // What is only looked through keeps nothing.
        let kept = kept.iter().filter(|_| sent.trial.is_none());
        for wording in kept {
            sent.app.store.keep_wording(&sent.permit, wording).await?;
        }
        return go(&sent.keep(&spec, &press.then()).await?);
    }
    let rows = graded(t, &spec, all, &errors);
    let around = sent.around().await?;
    let page = PointsPage::new(&sent.who, around, basis, &spec, rows, library, errors);
    page_again(&page)
}

/// New rows without a letter, pasted ones, get the next ones.
fn propose_letters(rows: &mut [(ItemId, Row)]) {
    let taken: Vec<String> = rows.iter().map(|(_, row)| row.letter.clone()).collect();
    let mut next = letters::after(taken.iter().map(String::as_str));
    for (_, row) in rows {
        if row.is_new() && row.letter.is_empty() {
            row.letter = next.next().unwrap_or_default();
        }
    }
}
