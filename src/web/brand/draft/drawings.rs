//! The drawings, with the letters of points, parts and all else that has one where they belong.
//!
//! One form saves everything: what was typed, where the letters are, and the files that were
//! chosen. A file that cannot be taken keeps nothing else from being saved.

mod marked;
mod percent;

use askama::Template;

use self::marked::{Circle, Line, Mark};
use super::rows::{self, Press};
use super::{SectionPage, Sent, told};
use crate::files::{RenderError, Warning};
use crate::language::Text;
use crate::spec::document::{Drawing, View};
use crate::spec::drawn::{Dimension, dimension, tall};
use crate::spec::{Digest, Item, ItemId, Spec};
use crate::store::World;
use crate::web::form::{Errors, Upload};
use crate::web::frame::Frame;
use crate::web::may::Who;
use crate::web::page::{Answer, go, page, page_again};
use crate::web::problem::Problem;
use crate::web::{refusal, shape, upload};

const VIEWS: [(&str, View); 6] = [
    ("front", View::Front),
    ("back", View::Back),
    ("left", View::Left),
    ("right", View::Right),
    ("angle", View::Angle),
    ("detail", View::Detail),
];

/// What a drawing may be, for the browser's file dialog; what it is, is told by its bytes.
const ACCEPT: &str = "image/svg+xml,image/png,image/jpeg,image/webp,.svg";

#[derive(Template)]
#[template(path = "brand/drawings.html")]
struct DrawingsPage {
    t: Text,
    frame: Frame,
    page: SectionPage,
    rows: Vec<Row>,
    /// What a dimension line may measure: a point's id, and its letter with its name.
    points: Vec<(String, String)>,
    /// What a blow-up may lead to: a drawing's id, and its title or view.
    others: Vec<(String, String)>,
    /// Why files were not taken.
    refused: Vec<String>,
    /// What was seen in those that were.
    told: Vec<String>,
    /// Files came with a form that could not be read.
    files_again: bool,
    errors: Errors,
}

impl DrawingsPage {
    /// The rows that the script copies for a new mark.
    fn spare_line(&self) -> Line {
        Line::spare(rows::new_key(0))
    }

    fn spare_circle(&self) -> Circle {
        Circle::spare(rows::new_key(0))
    }
}

/// A drawing as it stands in the form.
struct Row {
    key: String,
    view: View,
    title: String,
    file: Digest,
    width: u32,
    height: u32,
    marks: Vec<Mark>,
    /// The last one of both is a spare.
    lines: Vec<Line>,
    circles: Vec<Circle>,
}

impl Row {
    /// `new` counts the new rows of the whole form.
    fn of(spec: &Spec, drawing: &Drawing, new: &mut usize) -> Row {
        let mut marks = Vec::new();
        let lettered = spec.items().filter(|item| item.is_lettered());
        for item in lettered.map(Item::id) {
            let on = drawing.markers.iter().filter(|it| it.item == *item);
            let before = marks.len();
            marks.extend(on.map(|marker| Mark::of(spec, marker)));
            if marks.len() == before {
                *new += 1;
                marks.push(Mark::new(spec, rows::new_key(*new), item));
            }
        }
        // What a letter stood for may be gone: the letter is shown until it is taken off.
        let adrift = drawing.markers.iter();
        let adrift = adrift.filter(|it| spec.item(&it.item).is_none());
        marks.extend(adrift.map(|marker| Mark::of(spec, marker)));
        let mut spare = || {
            *new += 1;
            rows::new_key(*new)
        };
        let lines = drawing.lines.iter().map(|line| Line::of(spec, line));
        let circles = drawing.blow_ups.iter().map(Circle::of);
        Row {
            lines: lines.chain([Line::spare(spare())]).collect(),
            circles: circles.chain([Circle::spare(spare())]).collect(),
            key: drawing.id.to_string(),
            view: drawing.view,
            title: drawing.title.clone(),
            file: drawing.file.clone(),
            width: drawing.width,
            height: drawing.height,
            marks,
        }
    }

    async fn read(sent: &Sent, key: String, errors: &mut Errors) -> Result<Row, Problem> {
        let (t, fields) = (sent.who.t, &sent.form.fields);
        let file = fields.text(&rows::at(&key, "file")).to_owned();
        let file = Digest::try_from(file).map_err(|_| Problem::BadForm)?;
        let store = &sent.app.store;
        let (width, height) = store.drawing_size(&sent.permit, &file).await?;
        let view = fields.text(&rows::at(&key, "view"));
        let view = VIEWS.iter().find(|(name, _)| *name == view);
        let spec = &sent.draft.spec;
        let keys = |list| rows::keys(fields, &rows::at(&key, list), &Press::Save);
        let (marks, lines, circles) = (keys("mark")?, keys("line")?, keys("circle")?);
        let mut row = Row {
            view: view.map(|(_, view)| *view).ok_or(Problem::BadForm)?,
            title: fields.line(t, &rows::at(&key, "title"), errors),
            marks: Vec::new(),
            lines: Vec::new(),
            circles: Vec::new(),
            key,
            file,
            width,
            height,
        };
        for mark in marks {
            row.marks.push(Mark::read(t, spec, fields, &mark, errors));
        }
        for line in lines {
            row.lines.push(Line::read(t, spec, fields, &line, errors));
        }
        for circle in circles {
            let place = (row.key.as_str(), circle.as_str());
            let circle = Circle::read(t, spec, fields, place, errors);
            row.circles.push(circle);
        }
        Ok(row)
    }

    fn at(&self, field: &str) -> String {
        rows::at(&self.key, field)
    }

    /// The title, or the view where there is none.
    fn called(&self, t: Text) -> String {
        match self.title.as_str() {
            "" => t.name(&self.view).to_string(),
            title => title.to_owned(),
        }
    }

    fn size(&self) -> (u32, u32) {
        (self.width, self.height)
    }

    /// How high the drawing is when it is 10 000 wide.
    fn tall(&self) -> u32 {
        tall(self.size(), 10_000)
    }

    /// The letters that are on the drawing, and where in that measure.
    fn spots(&self) -> Vec<(&Mark, u16, u32)> {
        let spot = |mark| {
            let (x, y) = Mark::place(mark)?;
            Some((mark, x, tall(self.size(), y)))
        };
        self.marks.iter().filter_map(spot).collect()
    }

    fn dimensions(&self) -> Vec<Dimension> {
        let lines = self.lines.iter();
        let lines = lines.filter_map(|it| it.line(ItemId::new(it.key.as_str())));
        lines.map(|line| dimension(self.size(), &line)).collect()
    }

    /// The middle and the radius of each circle in that measure.
    fn rings(&self) -> Vec<(u16, u32, u16)> {
        let circles = self.circles.iter();
        let circles = circles.filter_map(|it| it.blow_up(ItemId::new(it.key.as_str())));
        circles
            .map(|it| (it.at.x, tall(self.size(), it.at.y), it.radius))
            .collect()
    }

    fn drawing(self, world: &World) -> Drawing {
        let (marks, lines, circles) = (self.marks.iter(), self.lines.iter(), self.circles.iter());
        Drawing {
            markers: marks.filter_map(|mark| mark.marker(world)).collect(),
            lines: lines
                .filter_map(|it| it.line(rows::id(&it.key, world)))
                .collect(),
            blow_ups: circles
                .filter_map(|it| it.blow_up(rows::id(&it.key, world)))
                .collect(),
            id: rows::id(&self.key, world),
            view: self.view,
            title: self.title,
            file: self.file,
            width: self.width,
            height: self.height,
        }
    }
}

/// `told` is what the address says of the files that came with the form before.
pub fn show(who: &Who, around: SectionPage, spec: &Spec, told: &str) -> Answer {
    page(&DrawingsPage {
        t: who.t,
        frame: who.frame(),
        page: around,
        rows: rows_of(spec),
        points: points_of(spec),
        others: others_of(who.t, spec),
        refused: Vec::new(),
        told: told::sentences(who.t, told),
        files_again: false,
        errors: Errors::default(),
    })
}

fn rows_of(spec: &Spec) -> Vec<Row> {
    let mut new = 0;
    let drawings = spec.drawings.drawings.iter();
    drawings
        .map(|drawing| Row::of(spec, drawing, &mut new))
        .collect()
}

fn points_of(spec: &Spec) -> Vec<(String, String)> {
    let points = spec.points.points.iter();
    let words = |letter: &str, name: &str| format!("{letter} {name}").trim().to_owned();
    points
        .map(|point| (point.id.to_string(), words(&point.letter, &point.name)))
        .collect()
}

fn others_of(t: Text, spec: &Spec) -> Vec<(String, String)> {
    let drawings = spec.drawings.drawings.iter();
    let named = drawings.map(|drawing| {
        let view = t.name(&drawing.view).to_string();
        let words = match drawing.title.as_str() {
            "" => view,
            title => title.to_owned(),
        };
        (drawing.id.to_string(), words)
    });
    named.collect()
}

pub async fn save(mut sent: Sent) -> Answer {
    let t = sent.who.t;
    let press = Press::of(&sent.form.fields);
    let mut errors = Errors::default();
    let mut typed = Vec::new();
    for key in rows::keys(&sent.form.fields, "row", &press)? {
        typed.push(Row::read(&sent, key, &mut errors).await?);
    }
    let uploads = std::mem::take(&mut sent.form.uploads);
    if !errors.is_empty() {
        return page_again(&DrawingsPage {
            t,
            frame: sent.who.frame(),
            page: sent.around().await?,
            rows: typed,
            points: points_of(&sent.draft.spec),
            others: others_of(t, &sent.draft.spec),
            refused: Vec::new(),
            told: Vec::new(),
            files_again: !uploads.is_empty(),
            errors,
        });
    }
    let mut taken = Taken::default();
    for upload in uploads {
        taken.take(&sent, &mut typed, upload).await?;
    }
    let mut spec = sent.draft.spec.clone();
    let world = sent.app.store.world();
    let drawings = &mut spec.drawings.drawings;
    *drawings = typed.into_iter().map(|row| row.drawing(world)).collect();
    // With a drawing go the circles that led to it.
    let kept: Vec<ItemId> = drawings.iter().map(|it| it.id.clone()).collect();
    for drawing in drawings {
        drawing.blow_ups.retain(|it| kept.contains(&it.drawing));
    }
    let newest = spec.drawings.drawings.last().map(|last| last.id.clone());
    let codes: Vec<&str> = taken.warned.into_iter().map(told::code).collect();
    let then = match (codes.is_empty(), taken.added, newest) {
        // At the top of the page, where it is said.
        (false, ..) => format!("&told={}", codes.join(".")),
        (true, true, Some(newest)) => format!("#row-{newest}"),
        _ => press.then(),
    };
    let on = sent.keep(&spec, &then).await?;
    if taken.refused.is_empty() {
        return go(&on);
    }
    let review = sent.permit.also()?;
    let draft = sent.app.store.draft(&review).await?;
    page_again(&DrawingsPage {
        t,
        frame: sent.who.frame(),
        page: SectionPage::new(&sent.app, t, &review, sent.section, &draft).await?,
        rows: rows_of(&draft.spec),
        points: points_of(&draft.spec),
        others: others_of(t, &draft.spec),
        refused: taken.refused,
        told: told::sentences(t, &codes.join(".")),
        files_again: false,
        errors: Errors::default(),
    })
}

/// What came of the files.
#[derive(Default)]
struct Taken {
    added: bool,
    refused: Vec<String>,
    warned: Vec<Warning>,
}

impl Taken {
    /// Takes one file: in the place of a drawing's picture, whose letters stay where they are, or
    /// as a drawing of its own after the others.
    async fn take(
        &mut self,
        sent: &Sent,
        rows: &mut Vec<Row>,
        upload: Upload,
    ) -> Result<(), Problem> {
        let (field, name) = (upload.field.clone(), upload.name.clone());
        let file = Digest::of(&upload.bytes);
        if field == "new"
            && let Some(there) = rows.iter().find(|row| row.file == file)
        {
            let t = sent.who.t;
            let said = t
                .say("drawings-already-there")
                .with("name", &name)
                .with("drawing", there.called(t));
            self.refused.push(said.to_string());
            return Ok(());
        }
        let drawn = match upload::drawing(&sent.app, &sent.permit, upload).await {
            Ok(drawn) => drawn,
            Err(Problem::Upload(why)) => {
                self.refused.push(refused(sent.who.t, &name, &why));
                return Ok(());
            }
            Err(other) => return Err(other),
        };
        for warning in drawn.warnings {
            if !self.warned.contains(&warning) {
                self.warned.push(warning);
            }
        }
        let (file, width, height) = (drawn.file, drawn.width, drawn.height);
        if let Some(row) = rows.iter_mut().find(|row| row.at("picture") == field) {
            (row.file, row.width, row.height) = (file, width, height);
        } else if field == "new" {
            self.added = true;
            rows.push(Row {
                key: rows::new_key(rows.len() + 1),
                view: view(&name, rows),
                title: String::new(),
                file,
                width,
                height,
                marks: Vec::new(),
                lines: Vec::new(),
                circles: Vec::new(),
            });
        }
        Ok(())
    }
}

fn refused(t: Text, name: &str, why: &RenderError) -> String {
    let why = refusal::upload(t, why);
    t.say("drawings-refused-file")
        .with("name", name)
        .with("why", why)
        .to_string()
}

/// What a new drawing most likely shows: what its name says, or the first view that is missing.
fn view(name: &str, rows: &[Row]) -> View {
    let name = name.to_lowercase();
    let named = VIEWS.iter().find(|(view, _)| name.contains(view));
    let missing = [View::Front, View::Back].into_iter();
    let mut missing = missing.filter(|view| rows.iter().all(|row| row.view != *view));
    match named {
        Some((_, view)) => *view,
        None => missing.next().unwrap_or(View::Detail),
    }
}
