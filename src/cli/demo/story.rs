//! What has happened before the demo is opened: some weeks of it, everything done by its people,
//! through the same doors as on the pages.

use std::collections::BTreeMap;
use std::sync::Arc;
use std::sync::atomic::{AtomicI64, Ordering};

use super::Failed;
use super::cast::{Cast, Factory};
use super::garment::{Garment, entered, point_id, size_id};
use super::half_zip::{CHEST, CHEST_AT_FIRST, half_zip};
use super::rain_jacket::rain_jacket;
use super::trail_shorts::trail_shorts;
use crate::access::act;
use crate::exchange::round::Move;
use crate::exchange::{round, thread};
use crate::files::Kind;
use crate::language::Language;
use crate::spec::{DecimalSign, PersonId, RoundId, Section, Spec, StyleId, ThreadId, Unit};
use crate::store::{NewMeasurement, NewRound, NewThread, Publish, Saved, Says, Store};
use crate::web::{App, Problem, Upload, upload};

const MINUTE: i64 = 60;
const DAY: i64 = 24 * 60 * MINUTE;

/// How many seconds the clock of the store is behind while the story is told.
pub type Behind = Arc<AtomicI64>;

/// Fills an empty place, and says who owns the brand.
pub async fn tell(app: &App, behind: &Behind) -> Result<PersonId, Failed> {
    days_ago(behind, 26, 0);
    let cast = Cast::new(&app.store).await?;
    let story = Story { app, behind, cast };
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
        let style = self.starts(&half_zip(CHEST_AT_FIRST)).await?;
        self.days_ago(22, 15);
        self.publishes(&style, "First issue, for the proto.")
            .await?;
        self.shares(&style, factory).await?;

        self.days_ago(21, 40);
        self.acknowledges(&style, factory, 1).await?;
        self.days_ago(21, 95);
        let question = self.asks(
            &style,
            "C",
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
        let better = half_zip(CHEST).spec();
        self.saves(&style, Section::Points, |spec| spec.points = better.points)
            .await?;
        self.days_ago(20, 55);
        self.publishes(
            &style,
            "The chest grows like the hem above L: see the question on C.",
        )
        .await?;
        self.days_ago(19, 20);
        self.acknowledges(&style, factory, 2).await?;

        self.days_ago(18, 0);
        let proto = self.asks_for_proto(&style, factory, 2, "M", 2).await?;
        self.days_ago(16, 10);
        let permit = factory.merchandiser.on(&style).await?;
        let store = &self.app.store;
        store.dispatch_round(&permit, &proto, Move::Start).await?;
        self.days_ago(2, 180);
        // The hem of the first piece came out 1.5 cm over, with 1.0 cm allowed.
        let typed = [
            (0, "A", "64.5"),
            (0, "B", "42.2"),
            (0, "C", "53.3"),
            (0, "D", "47.5"),
            (0, "E", "61.5"),
            (0, "F", "20.2"),
            (0, "G", "8.6"),
            (1, "A", "63.5"),
            (1, "B", "41.8"),
        ];
        self.measures(&style, factory, &proto, &typed).await
    }

    /// Published and shared, and nothing since.
    async fn ridge_shorts(&self) -> Result<(), Failed> {
        self.days_ago(9, 0);
        let style = self.starts(&trail_shorts()).await?;
        self.days_ago(2, 240);
        self.publishes(&style, "First issue.").await?;
        self.shares(&style, &self.cast.meghna).await
    }

    /// Not ready to be published.
    async fn puddle_jacket(&self) -> Result<(), Failed> {
        self.days_ago(1, 0);
        self.starts(&rain_jacket()).await?;
        Ok(())
    }

    fn days_ago(&self, days: i64, minutes: i64) {
        days_ago(self.behind, days, minutes);
    }

    /// Starts a style and brings its flats into the draft.
    async fn starts(&self, garment: &Garment) -> Result<StyleId, Failed> {
        let designer = &self.cast.designer;
        let start = garment.spec();
        let permit = designer.may()?;
        let style = self.app.store.create_style(&permit, &start).await?;
        let mut drawings = Vec::new();
        for (view, name, text) in garment.flats {
            let file = Upload {
                field: String::new(),
                name: name.to_owned(),
                bytes: text.as_bytes().to_vec(),
            };
            let permit = designer.on(&style).await?;
            let drawn = upload::drawing(self.app, &permit, file).await;
            let drawn = drawn.map_err(sentence)?;
            drawings.push(garment.drawing(view, drawn.file, drawn.width, drawn.height));
        }
        self.saves(&style, Section::Drawings, |spec| {
            spec.drawings.drawings = drawings;
        })
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
                key: store.world().id(),
            }
        });
        let values: Vec<NewMeasurement> = values.collect();
        let permit = sample_room.on(style).await?;
        store.measure(&permit, round, &values).await?;
        Ok(())
    }
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
