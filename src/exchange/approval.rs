//! What the brand approves before a sample may be sealed: the lab dip of each colour, the strike-off
//! of each artwork, each trim.
//!
//! The factory submits options for a thing, A, B, C ...; the brand decides each once, and the newest
//! approval counts. An approval was given for what one revision says of the thing; it holds for
//! another that says the same, and must be given anew where that changed.

use serde::Serialize;

use super::{Actor, Refused, Side};
use crate::spec::colour::{
    Formula, Incomparable, Judged, Limit, difference, judge as judge_difference,
};
use crate::spec::document::{Artwork, Cell, Colour, Lab, Material, MaterialKind};
use crate::spec::dyeing::Substrate;
use crate::spec::{Decimal, ItemId, Spec, Time};

super::named! {
    /// What is submitted.
    Kind {
        /// A colour on its cloth.
        LabDip = "lab_dip",
        /// An artwork as it will be made.
        StrikeOff = "strike_off",
        /// A zip, a cord, a button ...
        Trim = "trim",
    }
}

super::named! {
    /// What the brand says to an option.
    Verdict {
        Approved = "approved",
        Rejected = "rejected",
    }
}

/// Where a thing stands in a spec.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize)]
pub struct Anchor {
    pub kind: Kind,
    /// The artwork or the material; of a lab dip the part whose colour it is.
    pub item: ItemId,
    /// Of a lab dip: the first colourway that has the colour.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub colourway: Option<ItemId>,
    /// Of a lab dip: the fabric that is dyed.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub fabric: Option<ItemId>,
}

/// A thing that a spec needs approved.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Needed {
    pub anchor: Anchor,
    /// Every cell, colourway and part, that the lab dip is for; of other things none.
    pub cells: Vec<(ItemId, ItemId)>,
}

/// Everything that a spec needs approved: colours, artworks, trims, each in its spec's order.
///
/// A colour counts once for each substrate, whatever colourways and parts it stands in, and only on
/// parts that some fabric makes. Which materials need an approval is common practice, no source: all
/// but fabrics (whose colours do), threads, labels and packing.
pub fn needed(spec: &Spec) -> Vec<Needed> {
    let mut needed = lab_dips(spec);
    let thing = |kind, item: &ItemId| Needed {
        anchor: Anchor {
            kind,
            item: item.clone(),
            colourway: None,
            fabric: None,
        },
        cells: Vec::new(),
    };
    let artworks = spec.artwork.artworks.iter();
    needed.extend(artworks.map(|it| thing(Kind::StrikeOff, &it.id)));
    let trims = spec.materials.materials.iter().filter(|it| is_trim(it));
    needed.extend(trims.map(|it| thing(Kind::Trim, &it.id)));
    needed
}

fn is_trim(material: &Material) -> bool {
    let other = matches!(
        material.kind,
        Some(MaterialKind::Thread | MaterialKind::Label | MaterialKind::Packing)
    );
    !material.is_fabric() && !other
}

fn lab_dips(spec: &Spec) -> Vec<Needed> {
    let mut found: Vec<(&Colour, Substrate, Needed)> = Vec::new();
    for colourway in &spec.colourways.colourways {
        for part in &spec.colourways.parts {
            let Some(Cell::Colour(colour)) = spec.colourways.cell(&colourway.id, &part.id) else {
                continue;
            };
            let makes = |it: &&Material| it.is_fabric() && it.parts.contains(&part.id);
            for fabric in spec.materials.materials.iter().filter(makes) {
                let substrate = Substrate::of(fabric, Some(colour));
                let cell = (colourway.id.clone(), part.id.clone());
                let same = found
                    .iter_mut()
                    .find(|(other, on, _)| is_same(other, colour) && *on == substrate);
                match same {
                    Some((.., known)) if known.cells.contains(&cell) => {}
                    Some((.., known)) => known.cells.push(cell),
                    None => {
                        let anchor = Anchor {
                            kind: Kind::LabDip,
                            item: part.id.clone(),
                            colourway: Some(colourway.id.clone()),
                            fabric: Some(fabric.id.clone()),
                        };
                        let needed = Needed {
                            anchor,
                            cells: vec![cell],
                        };
                        found.push((colour, substrate, needed));
                    }
                }
            }
        }
    }
    found.into_iter().map(|(.., needed)| needed).collect()
}

/// A colour without name and reference is meant as no other, but still as itself.
fn is_same(one: &Colour, other: &Colour) -> bool {
    one == other || one.is_meant_as(other)
}

impl Anchor {
    /// The colour that a lab dip is for; nothing where the spec has none there any more.
    pub fn colour<'a>(&self, spec: &'a Spec) -> Option<&'a Colour> {
        match spec.colourways.cell(self.colourway.as_ref()?, &self.item)? {
            Cell::Colour(colour) => Some(colour),
            _ => None,
        }
    }

    fn substrate(&self, spec: &Spec) -> Option<Substrate> {
        let fabric = material(spec, self.fabric.as_ref()?)?;
        Some(Substrate::of(fabric, self.colour(spec)))
    }

    /// Whether the two are the same thing, each in its own revision, though it may have changed.
    pub fn is(&self, spec: &Spec, other: &Anchor, other_spec: &Spec) -> bool {
        if self.kind != other.kind {
            return false;
        }
        if self.kind != Kind::LabDip {
            return self.item == other.item;
        }
        match (self.colour(spec), other.colour(other_spec)) {
            // The place keeps a colour that was given another name.
            _ if self == other => true,
            (Some(one), Some(two)) => {
                is_same(one, two) && self.substrate(spec) == other.substrate(other_spec)
            }
            _ => false,
        }
    }

    /// Whether what was approved `then` is what is asked for `now`: for a colour its reference, name,
    /// reading and substrate; for an artwork all of it, with its inks; for a trim what it is, with its
    /// colours, but not how much of it is used, ordered and packed.
    pub fn holds(&self, then: &Spec, now: &Anchor, spec: &Spec) -> bool {
        if !self.is(then, now, spec) {
            return false;
        }
        match self.kind {
            Kind::LabDip => match (self.colour(then), now.colour(spec)) {
                (Some(one), Some(two)) => {
                    is_same(one, two)
                        && one.name == two.name
                        && one.lab == two.lab
                        && self.substrate(then) == now.substrate(spec)
                }
                _ => false,
            },
            Kind::StrikeOff => match (artwork(then, &self.item), artwork(spec, &now.item)) {
                (Some(one), Some(two)) => {
                    let bare = |it: &Artwork| Artwork {
                        letter: String::new(),
                        ..it.clone()
                    };
                    bare(one) == bare(two) && are_coloured_alike(&two.colours, then, spec)
                }
                _ => false,
            },
            Kind::Trim => match (material(then, &self.item), material(spec, &now.item)) {
                (Some(one), Some(two)) => {
                    itself(one) == itself(two) && are_coloured_alike(&two.parts, then, spec)
                }
                _ => false,
            },
        }
    }
}

fn artwork<'a>(spec: &'a Spec, id: &ItemId) -> Option<&'a Artwork> {
    spec.artwork.artworks.iter().find(|it| it.id == *id)
}

fn material<'a>(spec: &'a Spec, id: &ItemId) -> Option<&'a Material> {
    spec.materials.materials.iter().find(|it| it.id == *id)
}

/// A trim without what is only planned with it.
fn itself(trim: &Material) -> Material {
    Material {
        letter: String::new(),
        consumption: Default::default(),
        wastage: None,
        minimum: None,
        pack: None,
        lead_days: None,
        ..trim.clone()
    }
}

/// Whether parts have the same colours in every colourway that there is now. Where a part is dyed to
/// match another, that one's colour counts.
fn are_coloured_alike(parts: &[ItemId], then: &Spec, now: &Spec) -> bool {
    let alike = |one: Option<(&ItemId, &Cell)>, two: Option<(&ItemId, &Cell)>| match (
        one.map(|it| it.1),
        two.map(|it| it.1),
    ) {
        (Some(Cell::Colour(one)), Some(Cell::Colour(two))) => {
            is_same(one, two) && one.lab == two.lab
        }
        (one, two) => one == two,
    };
    now.colourways.colourways.iter().all(|colourway| {
        parts.iter().all(|part| {
            let was = then.colourways.settled(&colourway.id, part);
            alike(was, now.colourways.settled(&colourway.id, part))
        })
    })
}

/// What a factory submits for a thing.
#[derive(Debug, Clone)]
pub struct Submitting<'a> {
    /// The revision that it was made to.
    pub revision: u32,
    /// The current revision of the style, and what it says.
    pub current: Option<u32>,
    pub spec: &'a Spec,
    pub anchor: &'a Anchor,
    pub photos: usize,
    /// Of a lab dip, where it was read.
    pub reading: Option<&'a Lab>,
    /// What was submitted to this factory's things of the style before.
    pub before: &'a [Offered<'a>],
}

/// An option that was submitted, with what it was submitted for.
#[derive(Debug, Clone, Copy)]
pub struct Offered<'a> {
    pub anchor: &'a Anchor,
    /// The spec of the revision that it was made to.
    pub spec: &'a Spec,
    /// Through the options for its thing, from 1.
    pub number: u32,
    /// What was decided, and when.
    pub verdict: Option<(Verdict, &'a Time)>,
}

impl<'a> Offered<'a> {
    /// When it was approved.
    fn approved(&self) -> Option<&'a Time> {
        match self.verdict {
            Some((Verdict::Approved, at)) => Some(at),
            _ => None,
        }
    }
}

/// Submits an option: its number through the options for the thing, from 1.
pub fn submit(by: &Actor, with: &Submitting<'_>) -> Result<u32, Refused> {
    if by.side() != Side::Factory {
        return Err(Refused::OnlyFactory);
    }
    if with.current != Some(with.revision) {
        return Err(Refused::NotCurrent {
            current: with.current,
        });
    }
    let is_needed = needed(with.spec).iter().any(|it| it.anchor == *with.anchor);
    if !is_needed || (with.reading.is_some() && with.anchor.kind != Kind::LabDip) {
        return Err(Refused::NothingToApprove);
    }
    if with.photos == 0 {
        return Err(Refused::PhotoMissing);
    }
    let before = with.before.iter();
    let same = before.filter(|it| it.anchor.is(it.spec, with.anchor, with.spec));
    Ok(same.map(|it| it.number).max().unwrap_or_default() + 1)
}

/// Decides an option, once: another decision takes another option. A rejection says why.
pub fn decide(
    by: &Actor,
    decided: Option<Verdict>,
    verdict: Verdict,
    reason: &str,
) -> Result<(), Refused> {
    if by.side() != Side::Brand {
        return Err(Refused::OnlyBrand);
    }
    if let Some(verdict) = decided {
        return Err(Refused::OptionDecided { verdict });
    }
    if verdict == Verdict::Rejected && reason.trim().is_empty() {
        return Err(Refused::ReasonMissing);
    }
    Ok(())
}

super::named! {
    /// Where a thing stands on its way to approval.
    Standing {
        NotSubmitted = "not_submitted",
        Waiting = "waiting",
        Approved = "approved",
        Rejected = "rejected",
        /// It was approved, and has changed since.
        Lapsed = "lapsed",
    }
}

impl Standing {
    /// Whose move is next.
    pub fn waits_for(self) -> Option<Side> {
        match self {
            Standing::NotSubmitted | Standing::Rejected | Standing::Lapsed => Some(Side::Factory),
            Standing::Waiting => Some(Side::Brand),
            Standing::Approved => None,
        }
    }
}

/// Where a thing of `spec` stands, and the place in `offered` of the approval that counts: the newest
/// that holds.
pub fn standing(
    anchor: &Anchor,
    spec: &Spec,
    offered: &[Offered<'_>],
) -> (Standing, Option<usize>) {
    let of_it = |it: &&Offered<'_>| it.anchor.is(it.spec, anchor, spec);
    let holds = |it: &Offered<'_>| it.anchor.holds(it.spec, anchor, spec);
    let counts = offered
        .iter()
        .enumerate()
        .filter(|(_, it)| holds(it))
        .filter_map(|(place, it)| Some((it.approved()?, place)))
        .max();
    if let Some((_, place)) = counts {
        return (Standing::Approved, Some(place));
    }
    let mut any = offered.iter().filter(of_it).peekable();
    let standing = if any.peek().is_none() {
        Standing::NotSubmitted
    } else if any.clone().any(|it| it.verdict.is_none() && holds(it)) {
        Standing::Waiting
    } else if any.clone().any(|it| !holds(it) && it.approved().is_some()) {
        Standing::Lapsed
    } else if any.any(holds) {
        Standing::Rejected
    } else {
        Standing::NotSubmitted
    };
    (standing, None)
}

/// The limit of an installation that has set none: CMC(2:1) of at most 1.0, common practice, no
/// source.
pub fn usual_limit() -> Limit {
    Limit {
        formula: cmc(),
        at_most: Decimal::ONE,
    }
}

/// CMC(2:1), by which a shade passes or fails.
pub fn cmc() -> Formula {
    Formula::Cmc {
        l: Decimal::new(2, 0),
        c: Decimal::ONE,
    }
}

/// A reading beside what the spec says of the colour.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Compared {
    NoReading,
    /// The spec has no reading of the colour.
    NoStandard,
    Unlike(Incomparable),
    By {
        cmc: Decimal,
        ciede2000: Decimal,
        /// Against the brand's limit.
        judged: Judged,
    },
}

/// Holds a reading against the spec's own.
pub fn compare(standard: Option<&Lab>, reading: Option<&Lab>, limit: &Limit) -> Compared {
    let Some(reading) = reading else {
        return Compared::NoReading;
    };
    let Some(standard) = standard else {
        return Compared::NoStandard;
    };
    let by = |formula| difference(standard, reading, formula);
    let all = by(cmc()).and_then(|cmc| {
        Ok(Compared::By {
            cmc,
            ciede2000: by(Formula::Ciede2000 {})?,
            judged: judge_difference(standard, reading, limit)?,
        })
    });
    all.unwrap_or_else(Compared::Unlike)
}

#[cfg(test)]
mod tests;
