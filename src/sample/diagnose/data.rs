//! The measurements as statistics take them: centimetres, points and pieces by number.

use crate::sample::ask::Slip;
use crate::sample::contract::{Contract, Piece};
use crate::sample::deviation::Limits;
use crate::spec::document::{Basis, Direction};
use crate::spec::{ItemId, Length};

/// Fewer points than this show no pattern that they would share.
pub const ENOUGH: usize = 4;

/// In centimetres.
pub fn cm(length: Length) -> f64 {
    // A kilometre in nanometres has far less than the 53 bits that are exact.
    let nm = length.as_nm() as f64;
    nm / 1e7
}

/// From centimetres, to a tenth of a millimetre: more digits than a tape has.
pub fn length(cm: f64) -> Length {
    let tenths = (cm * 100.0).round() as i64;
    Length::try_from(tenths.saturating_mul(100_000)).unwrap_or(Length::ZERO)
}

/// Points that may go wrong together.
#[derive(Debug, Clone, PartialEq)]
pub struct Scope {
    /// All of one fabric, or of any.
    pub fabric: Option<usize>,
    /// All along one direction, or along any.
    pub along: Option<Direction>,
    /// For each point, whether it belongs.
    pub members: Vec<bool>,
}

/// One piece as it was measured.
pub struct Measured {
    /// The size that it is said to be, by number.
    pub size: usize,
    /// For each point, where there is a value to reason with.
    pub values: Vec<Option<f64>>,
}

pub struct Data {
    pub points: Vec<ItemId>,
    pub sizes: Vec<ItemId>,
    pub base: usize,
    pub fabrics: Vec<ItemId>,
    /// What each point may measure, by size and point.
    pub limits: Vec<Vec<Option<Limits>>>,
    /// Whether a point counts a way round, half or full.
    pub round: Vec<bool>,
    /// Whether it is known along which direction a point runs.
    pub directed: Vec<bool>,
    pub pieces: Vec<Measured>,
    /// Where points may go wrong together: first those of one fabric along one direction, then
    /// wider ones.
    pub scopes: Vec<Scope>,
    /// How many of the first kind there are.
    pub groups: usize,
}

impl Data {
    /// `spared` are values that nobody should reason with: two who measured the piece are apart.
    pub fn new(
        contract: &Contract,
        pieces: &[Piece],
        spared: impl Fn(usize, &ItemId) -> bool,
    ) -> Option<Data> {
        let sizes = contract.sizes.clone();
        let base = sizes.iter().position(|size| *size == contract.base)?;
        let points: Vec<ItemId> = contract.points.iter().map(|it| it.point.clone()).collect();
        let limits = sizes.iter().map(|size| {
            let column = contract.columns.get(size);
            let of = |point| column.and_then(|column| column.get(point)).copied();
            points.iter().map(of).collect()
        });
        let limits = limits.collect();
        let measured = pieces.iter().enumerate().filter_map(|(number, piece)| {
            let values = piece.values();
            let value = |point: &ItemId| {
                let value = values.get(point).filter(|_| !spared(number, point))?;
                Some(cm(*value))
            };
            Some(Measured {
                size: sizes.iter().position(|size| *size == piece.size)?,
                values: points.iter().map(value).collect(),
            })
        });
        let measured: Vec<Measured> = measured.collect();
        if measured.len() != pieces.len() {
            return None;
        }
        let mut fabrics: Vec<ItemId> = Vec::new();
        for fabric in contract.points.iter().filter_map(|it| it.fabric.as_ref()) {
            if !fabrics.contains(fabric) {
                fabrics.push(fabric.clone());
            }
        }
        let round = contract.points.iter();
        let round = round.map(|it| matches!(it.basis, Some(Basis::Half | Basis::Full)));
        let mut data = Data {
            points,
            base,
            limits,
            round: round.collect(),
            directed: contract
                .points
                .iter()
                .map(|it| it.along.is_some())
                .collect(),
            pieces: measured,
            scopes: Vec::new(),
            groups: 0,
            fabrics,
            sizes,
        };
        data.group(contract);
        Some(data)
    }

    /// Finds the scopes that hold enough measured points, each set of points once.
    fn group(&mut self, contract: &Contract) {
        let number = |fabric: &Option<ItemId>| {
            let fabric = fabric.as_ref()?;
            self.fabrics.iter().position(|it| it == fabric)
        };
        let places: Vec<(Option<usize>, Option<Direction>)> = contract
            .points
            .iter()
            .map(|it| (number(&it.fabric), it.along))
            .collect();
        let measured: Vec<bool> = (0..self.points.len())
            .map(|point| self.pieces.iter().any(|it| it.values[point].is_some()))
            .collect();
        let scope = |fabric: Option<usize>, along: Option<Direction>| Scope {
            fabric,
            along,
            members: places
                .iter()
                .zip(&measured)
                .map(|((of, runs), measured)| {
                    *measured
                        && (fabric.is_none() || fabric == *of)
                        && (along.is_none() || along == *runs)
                })
                .collect(),
        };
        let directions = [Direction::Length, Direction::Width];
        let fabrics = 0..self.fabrics.len();
        let groups = fabrics
            .clone()
            .flat_map(|fabric| directions.map(|along| scope(Some(fabric), Some(along))));
        let enough = |scope: &Scope| scope.size() >= ENOUGH;
        let groups: Vec<Scope> = groups.filter(enough).collect();
        let wider = fabrics
            .map(|fabric| scope(Some(fabric), None))
            .chain(directions.map(|along| scope(None, Some(along))))
            .chain([scope(None, None)]);
        self.groups = groups.len();
        let mut kept = groups;
        for scope in wider.filter(enough) {
            if !kept.iter().any(|it| it.members == scope.members) {
                kept.push(scope);
            }
        }
        self.scopes = kept;
    }

    /// Whether most points of a scope have no direction.
    pub fn is_undirected(&self, scope: &Scope) -> bool {
        let members = scope.members.iter().zip(&self.directed);
        let directed = members
            .filter(|(member, directed)| **member && **directed)
            .count();
        directed * 2 < scope.size()
    }

    pub fn spec(&self, size: usize, point: usize) -> Option<f64> {
        self.limits[size][point].map(|limits| cm(limits.spec))
    }

    /// What a size's value is more than the base size's.
    pub fn offset(&self, size: usize, point: usize) -> f64 {
        let spec = |size| self.spec(size, point).unwrap_or(0.0);
        spec(size) - spec(self.base)
    }

    /// The tolerance on the side of a deviation.
    pub fn tolerance(&self, size: usize, point: usize, d: f64) -> f64 {
        self.limits[size][point].map_or(0.0, |limits| match d < 0.0 {
            true => cm(limits.minus),
            false => cm(limits.plus),
        })
    }
}

/// Smaller ones than this, in centimetres, are details of sewing: topstitching, tapes, eyelets. A
/// wrong seam allowance or cut does not reach them, only a wrong tape does. Our own choice.
const DETAIL: f64 = 3.0;

impl Scope {
    /// Whether an error that is the same everywhere moves a point of this value.
    pub fn reaches(&self, spec: f64) -> bool {
        let everything = self.fabric.is_none() && self.along.is_none();
        everything || spec >= DETAIL
    }

    /// How many points it has.
    pub fn size(&self) -> usize {
        self.members.iter().filter(|member| **member).count()
    }
}

/// What a value becomes when a slip of this kind is taken back.
pub fn taken_back(slip: Slip, value: f64) -> f64 {
    match slip {
        Slip::Doubled => value / 2.0,
        Slip::Halved => value * 2.0,
        Slip::CmAsInch => value / 2.54,
        Slip::InchAsCm => value * 2.54,
        Slip::TenTimes => value / 10.0,
        Slip::Tenth => value * 10.0,
    }
}
