//! Last year's shorts: approved in every colour and trim, made as a size set and as they would be
//! ordered, sealed, and inspected as they came.

use super::{Story, sentence, size_id};
use crate::access::{Side, act};
use crate::cli::demo::Failed;
use crate::cli::demo::cast::{Factory, Person};
use crate::cli::demo::packs::TRAIL_SHORTS;
use crate::exchange::approval::{Verdict, needed};
use crate::exchange::measuring::Wash;
use crate::exchange::round::{Kind, Materials, Move, Outcome, Sending};
use crate::exchange::seal::Keep;
use crate::language::Language;
use crate::spec::{Digest, ItemId, Length, OrgId, RoundId, SealId, Spec, StyleId, Unit};
use crate::store::{Decide, NewMeasurement, NewRound, NewSubmission, Piece, Round, Sign, SignForm};
use crate::web::{Upload, figures, screen, upload};

/// The sizes of the size set, and of the pieces that were kept.
const SIZES: [&str; 4] = ["S", "M", "L", "XL"];
const KEPT: [&str; 2] = ["M", "M"];

/// How far off the pieces came out, point by point, in eighths of the tolerance: as sewing does, and
/// never the spec's own value all the way down.
const OFF: [i64; 7] = [2, -1, 0, 3, -2, 1, -3];

/// The shorts as they were a year before.
pub fn last_year(spec: &mut Spec) {
    spec.header.number = "HT-096".to_owned();
    spec.header.name = "Dune trail shorts".to_owned();
    spec.header.season = "Spring 2026".to_owned();
    spec.header.year = Some(2026);
}

impl Story<'_> {
    /// Everything that a seal rests on, the seal with both signatures, and a lot inspected against it.
    pub async fn dune_shorts(&self) -> Result<(), Failed> {
        let factory = &self.cast.meghna;
        self.days_ago(150, 0);
        let style = self.starts(&TRAIL_SHORTS, last_year).await?;
        self.days_ago(149, 30);
        self.publishes(&style, "First issue.").await?;
        self.shares(&style, factory).await?;
        self.days_ago(148, 0);
        self.acknowledges(&style, factory, 1).await?;
        for who in [&factory.merchandiser, &self.cast.designer] {
            self.signs_first_revision(&style, factory, who).await?;
        }
        self.days_ago(140, 0);
        self.everything_is_approved(&style, factory).await?;

        self.days_ago(130, 0);
        self.makes(&style, factory, Kind::SizeSet, &SIZES).await?;
        self.days_ago(110, 0);
        let made = self
            .makes(&style, factory, Kind::PreProduction, &KEPT)
            .await?;
        self.days_ago(90, 0);
        let seal = self.seals(&style, &made).await?;
        self.days_ago(89, 40);
        self.signs_seal(&style, &factory.merchandiser, &seal)
            .await?;
        self.days_ago(88, 10);
        self.signs_seal(&style, &self.cast.designer, &seal).await?;
        self.inspects(&style, &seal).await
    }

    /// Every colour, artwork and trim that needs it, by its first option.
    async fn everything_is_approved(
        &self,
        style: &StyleId,
        factory: &Factory,
    ) -> Result<(), Failed> {
        let store = &self.app.store;
        let merchandiser = &factory.merchandiser;
        let photo = Upload {
            field: String::new(),
            name: "option.webp".to_owned(),
            bytes: self.photograph().await?,
        };
        let permit = merchandiser.on::<act::Submit>(style).await?;
        let photo = upload::photo(self.app, &permit, photo)
            .await
            .map_err(sentence)?;
        let revision = store.newest(&merchandiser.on(style).await?).await?;
        let revision = revision.ok_or("nothing was published")?;
        for thing in needed(&revision.frozen.spec) {
            let option = NewSubmission {
                revision: revision.number,
                anchor: &thing.anchor,
                note: "From the mill's first lot.",
                language: "en",
                reading: None,
                instrument: "",
                photos: std::slice::from_ref(&photo),
            };
            let option = store.submit(&merchandiser.on(style).await?, option).await?;
            let permit = self.cast.designer.on(style).await?;
            store
                .judge_submission(&permit, &option, Verdict::Approved, "")
                .await?;
        }
        Ok(())
    }

    /// A round from the request to its approval. The first piece is measured before washing, too: the
    /// numbers of this spec hold for washed pieces.
    async fn makes(
        &self,
        style: &StyleId,
        factory: &Factory,
        kind: Kind,
        sizes: &[&str],
    ) -> Result<RoundId, Failed> {
        let store = &self.app.store;
        let (brand, merchandiser) = (&self.cast.designer, &factory.merchandiser);
        let pieces: Vec<ItemId> = sizes.iter().map(|size| size_id(size)).collect();
        let round = NewRound {
            org: &factory.org,
            kind,
            revision: 1,
            pieces: &pieces,
        };
        let id = store.request_round(&brand.on(style).await?, round).await?;
        store
            .start_round(&merchandiser.on(style).await?, &id)
            .await?;
        let round = store.round(&merchandiser.on(style).await?, &id).await?;
        let values = self.values(&round);
        let permit = factory.sample_room.on(style).await?;
        store.measure(&permit, &id, &values).await?;
        let sending = Sending {
            materials: Materials::Actual,
            substitutes: "",
            parcel: "Kestrel Post 4410",
        };
        store
            .dispatch_round(&merchandiser.on(style).await?, &id, sending)
            .await?;
        for step in [Move::Receive, Move::FinishMeasuring] {
            store
                .receive_round(&brand.on(style).await?, &id, step)
                .await?;
        }
        let approved = Decide {
            outcome: Outcome::Approved,
            reason: "",
            changes: &[],
            language: "en",
        };
        store.decide(&brand.on(style).await?, &id, approved).await?;
        for who in [merchandiser, brand] {
            self.signs_round(style, who, &id).await?;
        }
        Ok(id)
    }

    /// Every point of every piece, within tolerance; of the first piece before washing as well, some
    /// percent longer.
    fn values(&self, round: &Round) -> Vec<NewMeasurement> {
        let chart = &round.frozen.chart;
        let new = |piece: &Piece, point: &ItemId, value: Length, wash| NewMeasurement {
            piece: piece.id.clone(),
            point: point.clone(),
            value,
            unit: Unit::Cm,
            wash,
            key: self.app.store.world().id(),
        };
        let mut values = Vec::new();
        for (place, piece) in round.pieces.iter().enumerate() {
            for (line, row) in chart.rows.iter().enumerate() {
                let Some(spec) = chart.value(&row.point, &piece.size) else {
                    continue;
                };
                let eighths = OFF[(line + 2 * place) % OFF.len()];
                let allowed = row.tolerance(&piece.size);
                let allowed = allowed.minus.min(allowed.plus).as_nm();
                let washed = whole_millimetres(spec.as_nm() + allowed * eighths / 8);
                values.push(new(piece, &row.point, washed, None));
                if place == 0 {
                    // Washing takes 2.5 %.
                    let before = whole_millimetres(washed.as_nm() * 1000 / 975);
                    values.push(new(piece, &row.point, before, Some(Wash::Before)));
                }
            }
        }
        values
    }

    async fn seals(&self, style: &StyleId, round: &RoundId) -> Result<SealId, Failed> {
        let store = &self.app.store;
        let owner = &self.cast.owner;
        let pieces = store.round(&owner.on(style).await?, round).await?.pieces;
        let kept = [
            (
                "HT-0961",
                Side::Factory,
                "Sample room, locked cupboard, Shirin Akter",
            ),
            ("HT-0962", Side::Brand, "Studio, Iris Tide"),
        ];
        let keep = pieces
            .iter()
            .zip(kept)
            .map(|(piece, (tag, keeper, place))| Keep {
                piece: &piece.id,
                tag,
                keeper,
                place,
            });
        let keep: Vec<Keep<'_>> = keep.collect();
        Ok(store.seal(&owner.on(style).await?, round, &keep).await?)
    }

    async fn signs_seal(&self, style: &StyleId, who: &Person, seal: &SealId) -> Result<(), Failed> {
        let seals = self.app.store.seals(&who.on(style).await?).await?;
        let sealed = seals.iter().find(|it| it.id == *seal);
        let shown = sealed.ok_or("no seal")?.record().digest()?;
        self.signs(style, who, (Sign::Seal(seal), &shown), "", None)
            .await
    }

    async fn signs_round(&self, style: &StyleId, who: &Person, id: &RoundId) -> Result<(), Failed> {
        let store = &self.app.store;
        let must_fixes = store.must_fixes_of(&who.on(style).await?, id).await?;
        let record = store
            .round(&who.on(style).await?, id)
            .await?
            .record(must_fixes);
        let shown = record.ok_or("it is not decided")?.digest()?;
        self.signs(style, who, (Sign::Round(id), &shown), "", None)
            .await
    }

    async fn signs_first_revision(
        &self,
        style: &StyleId,
        factory: &Factory,
        who: &Person,
    ) -> Result<(), Failed> {
        let read = who.on::<act::Read>(style).await?;
        let revision = self.app.store.revision(&read, 1).await?;
        let figures = figures(Language::ORIGINAL.text(), &revision.frozen);
        let form = (Sign::Revision(1), &revision.digest);
        self.signs(style, who, form, &figures, Some(&factory.org))
            .await
    }

    /// Signs as somebody does who reads the page of it, on which these figures stand.
    async fn signs(
        &self,
        style: &StyleId,
        who: &Person,
        (what, shown): (Sign<'_>, &Digest),
        figures: &str,
        with: Option<&OrgId>,
    ) -> Result<(), Failed> {
        let store = &self.app.store;
        let permit = who.on::<act::Sign>(style).await?;
        let t = Language::ORIGINAL.text();
        let screen = screen(t, &what, permit.side(), shown, figures);
        let now = store.world().now();
        let form = SignForm {
            what,
            org: with,
            shown,
            screen: &screen,
            language: t.lang(),
            local_time: now.as_str(),
        };
        store.sign(&permit, form).await?;
        Ok(())
    }
}

fn whole_millimetres(nm: i64) -> Length {
    const MILLIMETRE: i64 = 1_000_000;
    Length::nm((nm + MILLIMETRE / 2) / MILLIMETRE * MILLIMETRE)
}
