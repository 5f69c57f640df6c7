//! Where on the way through a round's values somebody is: a piece, its state, a point.

use std::collections::BTreeMap;

use crate::access::Side;
use crate::exchange::measuring::{Reason, Wash, may_measure};
use crate::spec::document::Point;
use crate::spec::{ItemId, Length, StyleId};
use crate::store::{Piece, Round};
use crate::web::both::round::address;
use crate::web::problem::Problem;

/// Which point of which piece in which state; the first that is due, when it is not said.
#[derive(serde::Deserialize)]
pub struct Place {
    piece: Option<String>,
    point: Option<String>,
    wash: Option<String>,
}

/// A point of a piece, as one side measures it.
pub struct At<'a> {
    pub round: &'a Round,
    pub side: Side,
    /// `None`: in the state that the spec's numbers hold for.
    pub wash: Option<Wash>,
    pub piece: &'a Piece,
    pub point: &'a Point,
}

/// The points that the frozen chart has a line for.
pub fn points(round: &Round) -> impl Iterator<Item = &Point> {
    let chart = &round.frozen.chart;
    let points = round.frozen.spec.points.points.iter();
    points.filter(|point| chart.row(&point.id).is_some())
}

/// The state of this name; `None`: the one that the spec's numbers hold for. A round's pieces have
/// one other.
pub fn state(round: &Round, name: &str) -> Result<Option<Wash>, Problem> {
    if name.is_empty() {
        return Ok(None);
    }
    let wash = Wash::from_name(name).filter(|wash| *wash == round.other_state());
    wash.map(Some).ok_or(Problem::NotFound)
}

/// The points of a piece that this side has still to measure in this state.
fn due<'a>(
    round: &'a Round,
    side: Side,
    wash: Option<Wash>,
    piece: &Piece,
) -> impl Iterator<Item = &'a Point> + use<'a> {
    let values = round.values_in(wash, &piece.id, Some(side));
    let skipped = match wash {
        None => round.skipped(&piece.id, Some(side)),
        Some(_) => BTreeMap::new(),
    };
    let open = may_measure(round.state, side, false).is_ok();
    points(round).filter(move |point| {
        open && !values.contains_key(&point.id) && !skipped.contains_key(&point.id)
    })
}

impl<'a> At<'a> {
    /// Errors: `NotFound` for what the round has not.
    pub fn find(round: &'a Round, side: Side, place: &Place) -> Result<At<'a>, Problem> {
        let wash = state(round, place.wash.as_deref().unwrap_or_default())?;
        let values = |piece: &Piece| round.values_in(wash, &piece.id, Some(side));
        let first_due = |piece: &Piece| due(round, side, wash, piece).next();
        let pieces = || round.pieces.iter();
        let piece = match &place.piece {
            Some(id) => pieces().find(|piece| piece.id.as_str() == id),
            // When nothing is due, or may be added, there are values to correct.
            None => pieces()
                .find(|piece| first_due(piece).is_some())
                .or_else(|| pieces().find(|piece| !values(piece).is_empty()))
                .or(round.pieces.first()),
        };
        let piece = piece.ok_or(Problem::NotFound)?;
        let point = match &place.point {
            Some(id) => points(round).find(|point| point.id.as_str() == id),
            None => first_due(piece)
                .or_else(|| points(round).find(|point| values(piece).contains_key(&point.id)))
                .or_else(|| points(round).next()),
        };
        Ok(At {
            round,
            side,
            wash,
            piece,
            point: point.ok_or(Problem::NotFound)?,
        })
    }

    /// What this side measured of a piece in this state.
    pub fn values(&self, piece: &Piece) -> BTreeMap<ItemId, Length> {
        self.round.values_in(self.wash, &piece.id, Some(self.side))
    }

    /// Why this side left points of a piece out.
    pub fn skipped(&self, piece: &Piece) -> BTreeMap<ItemId, Reason> {
        self.round.skipped(&piece.id, Some(self.side))
    }

    /// What this side has still to measure of a piece in this state.
    pub fn due(&self, piece: &Piece) -> impl Iterator<Item = &'a Point> + use<'a> {
        due(self.round, self.side, self.wash, piece)
    }

    /// To a piece in a state.
    pub fn to_piece(&self, style: &StyleId, piece: &Piece, wash: Option<Wash>) -> String {
        let base = address(style, &self.round.id);
        let wash = wash.map_or_else(String::new, |wash| format!("&wash={}", wash.name()));
        format!("{base}/measure?piece={}{wash}", piece.id)
    }

    /// To a point of a piece in the same state.
    pub fn href(&self, style: &StyleId, piece: &Piece, point: &ItemId) -> String {
        format!("{}&point={point}", self.to_piece(style, piece, self.wash))
    }

    /// Where to go from a point: the next of the piece, else the first that is due, else the next
    /// piece, else the round. The point is named when it is of the same piece.
    pub fn after(&self, style: &StyleId, point: &Point) -> (Option<ItemId>, String) {
        let At { round, piece, .. } = *self;
        let follows = points(round).skip_while(|it| it.id != point.id).nth(1);
        let other = || self.due(piece).find(|it| it.id != point.id);
        if let Some(next) = follows.or_else(other) {
            return (Some(next.id.clone()), self.href(style, piece, &next.id));
        }
        let others = round.pieces.iter().filter(|other| other.id != piece.id);
        let next = others
            .filter_map(|other| Some((other, self.due(other).next()?)))
            .next();
        let href = match next {
            Some((piece, point)) => self.href(style, piece, &point.id),
            None => format!("{}?said=measured", address(style, &round.id)),
        };
        (None, href)
    }
}
