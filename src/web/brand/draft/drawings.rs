//! The drawings, with the letters of points, parts and all else that has one where they belong.
//!
//! One form saves everything: what was typed, where the letters are, and the files that were
//! chosen. A file that cannot be taken keeps nothing else from being saved.

use askama::Template;

use super::rows::{self, Press};
use super::{SectionPage, Sent};
use crate::files::{RenderError, Warning};
use crate::language::Text;
use crate::spec::document::{Drawing, Marker, View};
use crate::spec::{Digest, Item, ItemId, Spec};
use crate::store::World;
use crate::web::form::{Errors, Fields, Upload};
use crate::web::frame::Frame;
use crate::web::may::Who;
use crate::web::page::{Answer, go, page, page_again};
use crate::web::problem::Problem;
use crate::web::{refusal, upload};

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
    /// Why files were not taken.
    refused: Vec<String>,
    /// What was seen in those that were.
    told: Vec<String>,
    /// Files came with a form that could not be read.
    files_again: bool,
    errors: Errors,
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
}

/// A letter as it stands in the form: on the drawing, or not.
struct Mark {
    /// The marker's id, or `new-1` ... for a letter that is not on the drawing yet.
    key: String,
    item: ItemId,
    letter: String,
    name: String,
    is_part: bool,
    /// In percent from the left and from the top; both empty: not on the drawing.
    x: String,
    y: String,
}

impl Mark {
    fn new(spec: &Spec, key: String, item: &ItemId) -> Mark {
        let found = spec.item(item);
        Mark {
            key,
            item: item.clone(),
            letter: found.map_or("?", Item::letter).to_owned(),
            name: found.map_or("", Item::name).to_owned(),
            is_part: matches!(found, Some(Item::Part(_))),
            x: String::new(),
            y: String::new(),
        }
    }

    fn of(spec: &Spec, marker: &Marker) -> Mark {
        Mark {
            x: percent(marker.x),
            y: percent(marker.y),
            ..Mark::new(spec, marker.id.to_string(), &marker.item)
        }
    }

    fn read(t: Text, spec: &Spec, fields: &Fields, key: &str, errors: &mut Errors) -> Mark {
        let item = ItemId::new(fields.text(&rows::at(key, "item")));
        let mut mark = Mark::new(spec, key.to_owned(), &item);
        mark.x = fields.line(t, &mark.at("x"), errors);
        mark.y = fields.line(t, &mark.at("y"), errors);
        for (field, typed, other) in [("x", &mark.x, &mark.y), ("y", &mark.y, &mark.x)] {
            let blank = typed.is_empty();
            if (blank && !other.is_empty()) || (!blank && ten_thousandths(typed).is_none()) {
                errors.add(mark.at(field), t.say("error-percent"));
            }
        }
        mark
    }

    fn at(&self, field: &str) -> String {
        rows::at(&self.key, field)
    }

    fn is_new(&self) -> bool {
        rows::is_new(&self.key)
    }

    /// From the left and from the top in ten-thousandths.
    fn place(&self) -> Option<(u16, u16)> {
        Some((ten_thousandths(&self.x)?, ten_thousandths(&self.y)?))
    }

    fn marker(&self, world: &World) -> Option<Marker> {
        let (x, y) = self.place()?;
        Some(Marker {
            id: rows::id(&self.key, world),
            item: self.item.clone(),
            x,
            y,
        })
    }
}

impl Row {
    /// `new` counts the new marks of the whole form.
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
        Row {
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
        let list = rows::at(&key, "mark");
        let marks = rows::keys(fields, &list, &Press::Save)?;
        Ok(Row {
            view: view.map(|(_, view)| *view).ok_or(Problem::BadForm)?,
            title: fields.line(t, &rows::at(&key, "title"), errors),
            marks: marks
                .iter()
                .map(|mark| Mark::read(t, &sent.draft.spec, fields, mark, errors))
                .collect(),
            key,
            file,
            width,
            height,
        })
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

    /// How far down `y` ten-thousandths of the height are, when the drawing is 10 000 wide.
    fn down(&self, y: u16) -> u64 {
        u64::from(y) * u64::from(self.height) / u64::from(self.width.max(1))
    }

    /// How high the drawing then is.
    fn tall(&self) -> u64 {
        self.down(10_000)
    }

    /// The letters that are on the drawing, and where in that measure.
    fn spots(&self) -> Vec<(&Mark, u16, u64)> {
        let spot = |mark| {
            let (x, y) = Mark::place(mark)?;
            Some((mark, x, self.down(y)))
        };
        self.marks.iter().filter_map(spot).collect()
    }

    /// Lines and blow-ups stay as they are in `old`.
    fn drawing(self, world: &World, old: &[Drawing]) -> Drawing {
        let id = rows::id(&self.key, world);
        let old = old.iter().find(|drawing| drawing.id == id);
        Drawing {
            lines: old.map(|old| old.lines.clone()).unwrap_or_default(),
            blow_ups: old.map(|old| old.blow_ups.clone()).unwrap_or_default(),
            id,
            view: self.view,
            title: self.title,
            file: self.file,
            width: self.width,
            height: self.height,
            markers: self
                .marks
                .iter()
                .filter_map(|mark| mark.marker(world))
                .collect(),
        }
    }
}

/// `told` is what the address says of the files that came with the form before.
pub fn show(who: &Who, around: SectionPage, spec: &Spec, told: &str) -> Answer {
    let told = told.split('.').filter_map(|code| warning(who.t, code));
    page(&DrawingsPage {
        t: who.t,
        frame: who.frame(),
        page: around,
        rows: rows_of(spec),
        refused: Vec::new(),
        told: told.collect(),
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
    let old = std::mem::take(&mut spec.drawings.drawings);
    let drawings = typed.into_iter().map(|row| row.drawing(world, &old));
    spec.drawings.drawings = drawings.collect();
    let newest = spec.drawings.drawings.last().map(|last| last.id.clone());
    let codes: Vec<&str> = taken.warned.into_iter().map(code).collect();
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
        refused: taken.refused,
        told: codes
            .into_iter()
            .filter_map(|code| warning(t, code))
            .collect(),
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

/// As it stands in the address of the next page.
fn code(warning: Warning) -> &'static str {
    match warning {
        Warning::LiveText => "live-text",
        Warning::TextLost => "text-lost",
        Warning::LinkedPictures => "linked",
        Warning::EmbeddedPictures => "embedded",
    }
}

fn warning(t: Text, code: &str) -> Option<String> {
    let sentence = match code {
        "live-text" => t.say("drawings-live-text"),
        "text-lost" => t.say("drawings-text-lost"),
        "linked" => t.say("drawings-linked"),
        "embedded" => t.say("drawings-embedded"),
        _ => return None,
    };
    Some(sentence.to_string())
}

/// Ten-thousandths as percent: `50`, `12.3`, `12.34`.
fn percent(ten_thousandths: u16) -> String {
    let (whole, rest) = (ten_thousandths / 100, ten_thousandths % 100);
    match (rest, rest % 10) {
        (0, _) => whole.to_string(),
        (_, 0) => format!("{whole}.{}", rest / 10),
        _ => format!("{whole}.{rest:02}"),
    }
}

/// Percent from 0 to 100 with at most two decimals as ten-thousandths.
fn ten_thousandths(typed: &str) -> Option<u16> {
    let number = typed.strip_suffix('%').unwrap_or(typed).trim_end();
    let (whole, rest) = number.split_once(['.', ',']).unwrap_or((number, "0"));
    let digits = |text: &str, most: usize| {
        (1..=most).contains(&text.len()) && text.bytes().all(|byte| byte.is_ascii_digit())
    };
    if !digits(whole, 3) || !digits(rest, 2) {
        return None;
    }
    let value: u32 = format!("{whole}{rest:0<2}").parse().ok()?;
    u16::try_from(value).ok().filter(|value| *value <= 10_000)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn percent_is_exact_both_ways() {
        for value in 0..=10_000 {
            assert_eq!(ten_thousandths(&percent(value)), Some(value));
        }
        assert_eq!(percent(1_230), "12.3");
        assert_eq!(percent(1_203), "12.03");
        assert_eq!(ten_thousandths("12,5 %"), Some(1_250));
        assert_eq!(ten_thousandths("007"), Some(700));
        for wrong in [
            "", "%", ".5", "5.", "-1", "100.01", "101", "999", "1.234", "a", "1e1",
        ] {
            assert_eq!(ten_thousandths(wrong), None, "{wrong}");
        }
    }

    #[test]
    fn a_files_name_tells_the_view() {
        assert_eq!(view("HT-204 Back v2.svg", &[]), View::Back);
        assert_eq!(view("scan 3.png", &[]), View::Front);
    }
}
