//! Photographs of the pieces: those that there are, and the form that adds some.

use askama::Template;
use axum::extract::{Path, State};

use crate::access::{StylePermit, act};
use crate::exchange::measuring::may_measure;
use crate::language::Text;
use crate::spec::{PieceId, RoundId, StyleId};
use crate::store::{MOST_PIECE_PHOTOS, Piece, PiecePhoto, Round};
use crate::web::App;
use crate::web::both::item::MOST_PHOTOS;
use crate::web::both::threads::photos;
use crate::web::form::{Errors, Form};
use crate::web::frame::{Frame, name_or_erased};
use crate::web::may::{MayOn, Who};
use crate::web::page::{Answer, go, page_again};
use crate::web::problem::Problem;

use super::{address, load};

#[derive(Template)]
#[template(path = "both/photographs.html")]
pub struct Photographs {
    t: Text,
    frame: Frame,
    style: StyleId,
    /// The round's address.
    base: String,
    pieces: Vec<Photographed>,
    /// For who may add some now.
    adds: bool,
    /// How many one form may bring.
    most: usize,
    errors: Errors,
}

/// One piece with its photographs.
struct Photographed {
    id: PieceId,
    number: u32,
    size: String,
    photos: Vec<PiecePhoto>,
    /// There is room for more.
    room: bool,
}

impl Photographs {
    /// `None`: there are none, and the reader may add none.
    pub fn of(
        who: &Who,
        reader: &StylePermit<act::Read>,
        round: &Round,
        base: &str,
        all: Vec<PiecePhoto>,
    ) -> Option<Photographs> {
        let adds = reader.also::<act::Measure>().is_ok()
            && may_measure(round.state, reader.side(), false).is_ok();
        if all.is_empty() && !adds {
            return None;
        }
        let piece = |piece: &Piece| {
            let ours: Vec<PiecePhoto> = all
                .iter()
                .filter(|it| it.piece == piece.id)
                .cloned()
                .collect();
            let size = round.frozen.spec.size(&piece.size);
            Photographed {
                id: piece.id.clone(),
                number: piece.number,
                size: size.map_or_else(String::new, |it| it.code.clone()),
                room: adds && ours.len() < MOST_PIECE_PHOTOS,
                photos: ours,
            }
        };
        Some(Photographs {
            t: who.t,
            frame: who.frame(),
            style: reader.style().clone(),
            base: base.to_owned(),
            pieces: round.pieces.iter().map(piece).collect(),
            adds,
            most: MOST_PHOTOS,
            errors: Errors::default(),
        })
    }

    /// How many photographs this piece can still be given; `None`: there is no such piece, or the
    /// reader may add none.
    fn room_of(&self, piece: &PieceId) -> Option<usize> {
        let piece = self.pieces.iter().find(|it| it.id == *piece)?;
        self.adds
            .then(|| MOST_PIECE_PHOTOS.saturating_sub(piece.photos.len()))
    }

    fn by(&self, photo: &PiecePhoto) -> String {
        name_or_erased(self.t, photo.person.as_deref())
    }
}

/// Adds photographs to a piece.
pub async fn photograph(
    may: MayOn<act::Measure>,
    State(app): State<App>,
    Path((_, round)): Path<(String, String)>,
    form: Form,
) -> Answer {
    let t = may.who.t;
    let id = RoundId::new(round);
    let reader = may.permit.also::<act::Read>()?;
    let Form { fields, uploads } = form;
    let piece = PieceId::new(fields.text("piece"));
    let mut round = load(&may.who, &reader, &app, &id, None).await?;
    let side = may.permit.side();
    may_measure(round.round.state, side, false)
        .map_err(|why| Problem::Refused(why, Some(may.permit.style().clone())))?;
    let mut errors = Errors::default();
    let room = round.photographs.as_ref().and_then(|it| it.room_of(&piece));
    let room = room.ok_or(Problem::BadForm)?;
    let many = || t.say("photographs-many").with("count", MOST_PIECE_PHOTOS);
    if uploads.is_empty() {
        errors.add("photos", t.say("photographs-missing"));
    } else if uploads.len() > room {
        errors.add("photos", many());
    } else {
        let brought = photos(&app, &may.permit, t, uploads, &mut errors).await?;
        if errors.is_empty() {
            let store = &app.store;
            let added = store.photograph_piece(&may.permit, &id, &piece, &brought);
            if added.await?.is_some() {
                let to = address(may.permit.style(), &id);
                return go(&format!("{to}?said=photographed#photographs-{piece}"));
            }
            // Somebody has added some meanwhile.
            errors.add("photos", many());
        }
    }
    if let Some(photographs) = &mut round.photographs {
        for (_, sentence) in errors.all() {
            photographs.errors.add(piece.as_str(), sentence);
        }
    }
    page_again(&round)
}
