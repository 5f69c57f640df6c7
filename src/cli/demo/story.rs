//! What has happened before the demo is opened: some weeks of it, everything done by its people,
//! through the same doors as on the pages.

mod inspected;
pub mod sealed;

use std::collections::BTreeMap;
use std::sync::Arc;
use std::sync::atomic::{AtomicI64, Ordering};

use super::Failed;
use super::cast::{Cast, Factory};
use super::packs::{HALF_ZIP, Pack, RAIN_JACKET, TRAIL_SHORTS};
use crate::access::act;
use crate::exchange::{round, thread};
use crate::files::Kind;
use crate::language::{Language, terms_of};
use crate::spec::document::{Grade, Segment};
use crate::spec::{
    DecimalSign, Entered, ItemId, PersonId, RoundId, Section, Spec, StyleId, ThreadId, Unit,
};
use crate::store::{NewMeasurement, NewRound, NewThread, Publish, Saved, Says, Store};
use crate::web::{App, Problem, Upload, upload};

const MINUTE: i64 = 60;
const DAY: i64 = 24 * 60 * MINUTE;

/// How many seconds the clock of the store is behind while the story is told.
pub type Behind = Arc<AtomicI64>;

/// Fills an empty place, and says who owns the brand.
pub async fn tell(app: &App, behind: &Behind) -> Result<PersonId, Failed> {
    days_ago(behind, 151, 0);
    let cast = Cast::new(&app.store).await?;
    let story = Story { app, behind, cast };
    story.dune_shorts().await?;
    story.shoal_half_zip().await?;
    story.ridge_shorts().await?;
    story.puddle_jacket().await?;
    Ok(story.cast.owner.id().clone())
}

/// Goes on so many days before now, some minutes later than that.
fn days_ago(behind: &Behind, days: i64, minutes: i64) {
    behind.store(days * DAY - minutes * MINUTE, Ordering::Relaxed);
}

struct Story<'a> {
    app: &'a App,
    behind: &'a Behind,
    cast: Cast,
}

impl Story<'_> {
    /// Two revisions, a question that made the second, and a proto half measured.
    async fn shoal_half_zip(&self) -> Result<(), Failed> {
        let factory = &self.cast.sao_mai;
        self.days_ago(25, 0);
        let style = self.starts(&HALF_ZIP, at_first).await?;
        self.days_ago(22, 15);
        self.publishes(&style, "First issue, for the proto.")
            .await?;
        self.shares(&style, factory).await?;

        self.days_ago(21, 40);
        self.acknowledges(&style, factory, 1).await?;
        self.days_ago(21, 95);
        let question = self.asks(
            &style,
            "B",
            "From L to 2XL the hem grows 2.5 cm each size, but the chest only 2.0 cm. At 2XL the \
             side seam leans in. Is the chest grade right?",
        );
        let question = question.await?;
        self.days_ago(20, 30);
        self.answers(
            &style,
            &question,
            "Good catch. Above L the chest must grow 2.5 cm, like the hem. Revision 2 says so.",
        )
        .await?;
        let better = HALF_ZIP.spec();
        self.saves(&style, Section::Points, |spec| spec.points = better.points)
            .await?;
        self.days_ago(20, 55);
        self.publishes(
            &style,
            "The chest grows like the hem above L: see the question on B.",
        )
        .await?;
        self.days_ago(19, 20);
        self.acknowledges(&style, factory, 2).await?;

        self.days_ago(18, 0);
        let proto = self.asks_for_proto(&style, factory, 2, "M", 2).await?;
        self.days_ago(16, 10);
        let permit = factory.merchandiser.on(&style).await?;
        let store = &self.app.store;
        store.start_round(&permit, &proto).await?;
        self.days_ago(2, 180);
        // The hem of the first piece came out 1.5 cm over, with 1.0 cm allowed.
        let typed = [
            (0, "A", "66.5"),
            (0, "B", "53.3"),
            (0, "C", "50.0"),
            (0, "D", "47.5"),
            (0, "E", "61.5"),
            (0, "F", "17.7"),
            (0, "G", "15.2"),
            (1, "A", "65.5"),
            (1, "B", "52.8"),
        ];
        self.measures(&style, factory, &proto, &typed).await
    }

    /// Published and shared, and nothing since.
    async fn ridge_shorts(&self) -> Result<(), Failed> {
        self.days_ago(9, 0);
        let style = self.starts(&TRAIL_SHORTS, |_| ()).await?;
        self.days_ago(2, 240);
        self.publishes(&style, "First issue.").await?;
        self.shares(&style, &self.cast.meghna).await
    }

    /// Not ready to be published.
    async fn puddle_jacket(&self) -> Result<(), Failed> {
        self.days_ago(1, 0);
        self.starts(&RAIN_JACKET, unfinished).await?;
        Ok(())
    }

    fn days_ago(&self, days: i64, minutes: i64) {
        days_ago(self.behind, days, minutes);
    }

    /// Starts a style with what a pack says after `edit`, and brings its files into the draft.
    async fn starts(&self, pack: &Pack, edit: fn(&mut Spec)) -> Result<StyleId, Failed> {
        let designer = &self.cast.designer;
        let mut start = pack.spec();
        edit(&mut start);
        let drawings = std::mem::take(&mut start.drawings);
        let permit = designer.may()?;
        let style = self.app.store.create_style(&permit, &start).await?;
        for (name, bytes) in pack.originals {
            let file = Upload {
                field: String::new(),
                name: (*name).to_owned(),
                bytes: bytes.to_vec(),
            };
            let permit = designer.on(&style).await?;
            let drawn = upload::drawing(self.app, &permit, file).await;
            drawn.map_err(sentence)?;
        }
        self.saves(&style, Section::Drawings, |spec| spec.drawings = drawings)
            .await?;
        Ok(style)
    }

    /// Changes one section of the draft.
    async fn saves(
        &self,
        style: &StyleId,
        section: Section,
        edit: impl FnOnce(&mut Spec),
    ) -> Result<(), Failed> {
        let designer = &self.cast.designer;
        let store = &self.app.store;
        let mut draft = store.draft(&designer.on(style).await?).await?;
        edit(&mut draft.spec);
        let base = draft.versions[&section];
        let permit = designer.on(style).await?;
        match store
            .save_section(&permit, section, base, &draft.spec)
            .await?
        {
            Saved::Won(_) => Ok(()),
            Saved::Lost(_) => Err("somebody else writes into the demo".into()),
        }
    }

    async fn publishes(&self, style: &StyleId, reason: &str) -> Result<(), Failed> {
        let designer = &self.cast.designer;
        let store = &self.app.store;
        let draft = store.draft(&designer.on(style).await?).await?;
        let form = Publish {
            reason,
            shown: &draft.versions,
            accepted: &BTreeMap::new(),
            decimal: DecimalSign::Point,
            terms: terms_of,
        };
        store.publish(&designer.on(style).await?, form).await?;
        Ok(())
    }

    async fn shares(&self, style: &StyleId, factory: &Factory) -> Result<(), Failed> {
        let permit = self.cast.designer.on(style).await?;
        Ok(self.app.store.share(&permit, &factory.org).await?)
    }

    async fn acknowledges(
        &self,
        style: &StyleId,
        factory: &Factory,
        revision: u32,
    ) -> Result<(), Failed> {
        let permit = factory.merchandiser.on(style).await?;
        Ok(self.app.store.acknowledge(&permit, revision).await?)
    }

    /// Sao Mai asks about a point of revision 1, with a photograph.
    async fn asks(&self, style: &StyleId, letter: &str, text: &str) -> Result<ThreadId, Failed> {
        let permit = self.cast.sao_mai.merchandiser.on::<act::Ask>(style).await?;
        let photo = Upload {
            field: String::new(),
            name: "pattern.webp".to_owned(),
            bytes: self.photograph().await?,
        };
        let photo = upload::photo(self.app, &permit, photo).await;
        let question = NewThread {
            item: &point_id(letter),
            revision: 1,
            kind: thread::Kind::Question,
            org: None,
            says: Says {
                photos: &[photo.map_err(sentence)?],
                ..says(text)
            },
        };
        Ok(self.app.store.ask(&permit, question).await?)
    }

    /// A drawn picture as a phone would send it: no camera was at hand for an invented pattern.
    async fn photograph(&self) -> Result<Vec<u8>, Failed> {
        let drawn = include_bytes!("pattern-photo.svg");
        let drawn = self.app.renderer.render(Kind::Drawing, drawn).await?;
        let raster = drawn.pictures.into_iter().next_back();
        Ok(raster.ok_or("the drawing gave no picture")?.bytes)
    }

    async fn answers(&self, style: &StyleId, to: &ThreadId, text: &str) -> Result<(), Failed> {
        let permit = self.cast.designer.on(style).await?;
        Ok(Store::say(&self.app.store, &permit, to, says(text)).await?)
    }

    async fn asks_for_proto(
        &self,
        style: &StyleId,
        factory: &Factory,
        revision: u32,
        size: &str,
        pieces: usize,
    ) -> Result<RoundId, Failed> {
        let permit = self.cast.designer.on(style).await?;
        let round = NewRound {
            org: &factory.org,
            kind: round::Kind::Proto,
            revision,
            pieces: &vec![size_id(size); pieces],
        };
        Ok(self.app.store.request_round(&permit, round).await?)
    }

    /// The sample room types values in, in centimetres.
    async fn measures(
        &self,
        style: &StyleId,
        factory: &Factory,
        round: &RoundId,
        typed: &[(usize, &str, &str)],
    ) -> Result<(), Failed> {
        let store = &self.app.store;
        let sample_room = &factory.sample_room;
        let pieces = store.round(&sample_room.on(style).await?, round).await?;
        let pieces = pieces.pieces;
        let values = typed.iter().map(|(piece, letter, text)| {
            let value = entered(text, Unit::Cm);
            NewMeasurement {
                piece: pieces[*piece].id.clone(),
                point: point_id(letter),
                value: value.nm,
                unit: value.unit,
                wash: None,
                key: store.world().id(),
            }
        });
        let values: Vec<NewMeasurement> = values.collect();
        let permit = sample_room.on(style).await?;
        store.measure(&permit, round, &values).await?;
        Ok(())
    }
}

/// The half-zip before the factory asked: its chest grows alike between all sizes.
pub fn at_first(spec: &mut Spec) {
    let (first, last) = (size_id("XS"), size_id("2XL"));
    let points = spec.points.points.iter_mut();
    for chest in points.filter(|point| point.id == point_id("B")) {
        chest.grade = Some(Grade::Segments {
            segments: vec![Segment {
                from: first.clone(),
                to: last.clone(),
                step: entered("2.0", Unit::Cm),
            }],
        });
    }
}

/// The rain jacket as somebody left it in the evening: a colour to choose, an end to tell, a letter
/// to set, and the grade of the hem, which stops short of the last size.
pub fn unfinished(spec: &mut Spec) {
    let last = spec.colourways.cells.get_mut(&ItemId::new("colourway-tde"));
    if let Some(cells) = last {
        cells.remove(&ItemId::new("part-13"));
    }
    for point in &mut spec.points.points {
        match point.letter.as_str() {
            "C" => {
                if let Some(Grade::Segments { segments }) = &mut point.grade {
                    segments.iter_mut().for_each(|it| it.to = size_id("122"));
                }
            }
            "N" => point.how.end.clear(),
            _ => {}
        }
    }
    for drawing in &mut spec.drawings.drawings {
        drawing.markers.retain(|it| it.item != point_id("Y"));
    }
}

pub fn point_id(letter: &str) -> ItemId {
    ItemId::new(format!("point-{}", letter.to_lowercase()))
}

fn size_id(code: &str) -> ItemId {
    ItemId::new(format!("size-{}", code.to_lowercase()))
}

/// A value as somebody types it.
fn entered(text: &str, unit: Unit) -> Entered {
    Entered::read(text, unit)
        .expect("the demo's own values are lengths, and its tests tell them all")
}

/// Why a picture is not taken, in words.
fn sentence(problem: Problem) -> String {
    problem.sentence(Language::ORIGINAL.text())
}

fn says(text: &str) -> Says<'_> {
    Says {
        text,
        language: "en",
        photos: &[],
    }
}
