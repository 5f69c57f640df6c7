//! What has to be dyed, before there is an order: kilograms per substrate and colour from the
//! pieces that are thought of, so that a dye house can be asked.

mod amount;

use std::cmp::Ordering;

use super::decimal::Decimal;
use super::document::{Cell, Colour, Colourway, Colourways, Fibre, Material, Spec};
use super::id::ItemId;

/// All that the typed pieces need.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Dyeing {
    /// In the order of the colourways, then of the materials that need a colour first.
    pub rows: Vec<Row>,
    /// What keeps it from being the whole answer.
    pub missing: Vec<Missing>,
}

/// One bath's worth: all that is of one substrate and one colour, across fabrics, parts and
/// colourways.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Row {
    pub substrate: Substrate,
    /// Nothing for what is left natural.
    pub colour: Option<Shade>,
    /// The sum of the lines, rounded once to the gram.
    pub kg: Decimal,
    pub lines: Vec<Line>,
}

/// What one fabric adds in one colourway.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Line {
    pub material: ItemId,
    pub colourway: ItemId,
    /// With wastage; unrounded.
    pub kg: Decimal,
}

/// What is dyed: fabrics of one composition take the same dyes. A substrate that was typed for a
/// colour counts where there is no composition; without either, the fabric is its own.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Substrate {
    /// Fibres with their percentages, most first.
    Fibres(Vec<(Fibre, Decimal)>),
    Typed(String),
    Fabric(ItemId),
}

/// A colour by its reference, or by its name where it has none.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Shade {
    pub name: String,
    pub reference: String,
}

/// What a whole answer still needs, and of what.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Missing {
    pub what: Lack,
    pub material: Option<ItemId>,
    pub colourway: Option<ItemId>,
    pub part: Option<ItemId>,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Lack {
    /// How many of a colourway are thought of.
    Pieces,
    /// The parts that a fabric makes.
    Parts,
    /// The colour of a part in a colourway: the cell is empty, without a name, or dyed to match
    /// nothing that has one.
    Colour,
    /// A fabric's parts differ in a colourway: how much of it is which, the consumption does not
    /// say.
    PartsDiffer,
    /// The consumption, or that of a size.
    Consumption,
    /// What the consumption counts; pieces say nothing of the mass.
    ConsumptionUnit,
    /// Grams per square metre.
    Mass,
    /// The full width.
    Width,
    /// The percentage or its basis, or a loss that leaves something.
    Wastage,
    /// The numbers are too large to be meant.
    TooLarge,
}

/// What a fabric is in a colourway, once what it matches is followed.
enum Dyed<'a> {
    /// The colourway does without it.
    Absent,
    Natural,
    Colour(&'a Colour),
}

/// Kilograms of each fabric whose part has a colour: pieces × consumption of a garment × full
/// width × mass ÷ 1000 (twice for a tube), with wastage. Sizes are averaged plainly, or by the
/// ratio packs of the colourway where there are some.
pub fn dyeing(spec: &Spec) -> Dyeing {
    let mut result = Dyeing::default();
    let colourways = &spec.colourways.colourways;
    let planned = colourways
        .iter()
        .filter_map(|colourway| Some((colourway, colourway.pieces?)));
    let planned: Vec<(&Colourway, u32)> = planned.collect();
    let open = colourways.iter().filter(|it| it.pieces.is_none());
    for colourway in open {
        result.miss(Lack::Pieces, None, Some(colourway), None);
    }

    let fabrics = spec.materials.materials.iter().filter(|it| it.is_fabric());
    let fabrics: Vec<&Material> = fabrics.collect();
    for material in fabrics.iter().filter(|it| it.parts.is_empty()) {
        result.miss(Lack::Parts, Some(material), None, None);
    }
    for (colourway, pieces) in planned {
        for material in &fabrics {
            let Some(colour) = dyed(&spec.colourways, colourway, material, &mut result) else {
                continue;
            };
            let colour = match colour {
                Dyed::Absent => continue,
                Dyed::Natural => None,
                Dyed::Colour(colour) => Some(colour),
            };
            match amount::kilograms(spec, colourway, pieces, material) {
                Ok(kg) => result.add(material, colourway, colour, kg),
                Err(lack) => result.miss(lack, Some(material), None, None),
            }
        }
    }
    for row in &mut result.rows {
        row.kg = row.kg.rounded(3);
    }
    result
}

impl Dyeing {
    /// Natural fabric apart, which goes into no bath.
    pub fn natural(&self) -> impl Iterator<Item = &Row> {
        self.rows.iter().filter(|row| row.colour.is_none())
    }

    fn miss(
        &mut self,
        what: Lack,
        material: Option<&Material>,
        colourway: Option<&Colourway>,
        part: Option<&ItemId>,
    ) {
        let missing = Missing {
            what,
            material: material.map(|it| it.id.clone()),
            colourway: colourway.map(|it| it.id.clone()),
            part: part.cloned(),
        };
        if !self.missing.contains(&missing) {
            self.missing.push(missing);
        }
    }

    fn add(
        &mut self,
        material: &Material,
        colourway: &Colourway,
        colour: Option<&Colour>,
        kg: Decimal,
    ) {
        let substrate = Substrate::of(material, colour);
        let line = Line {
            material: material.id.clone(),
            colourway: colourway.id.clone(),
            kg,
        };
        let same = self.rows.iter_mut().find(|row| {
            row.substrate == substrate
                && match (&row.colour, colour) {
                    (Some(shade), Some(colour)) => shade.is(colour),
                    (None, None) => true,
                    _ => false,
                }
        });
        match same {
            Some(row) => match row.kg.plus(kg) {
                Some(sum) => {
                    row.kg = sum;
                    row.lines.push(line);
                }
                None => self.miss(Lack::TooLarge, Some(material), None, None),
            },
            None => self.rows.push(Row {
                substrate,
                colour: colour.map(|colour| Shade {
                    name: colour.name.clone(),
                    reference: colour.reference.clone(),
                }),
                kg,
                lines: vec![line],
            }),
        }
    }
}

impl Shade {
    fn is(&self, colour: &Colour) -> bool {
        let own = Colour {
            name: self.name.clone(),
            reference: self.reference.clone(),
            ..Colour::default()
        };
        own.is_meant_as(colour)
    }
}

impl Substrate {
    /// What a fabric offers to be dyed in this colour.
    pub fn of(material: &Material, colour: Option<&Colour>) -> Substrate {
        let shares = material.composition.iter();
        let fibres = shares.filter_map(|share| Some((share.fibre?, share.percent?)));
        let mut fibres: Vec<(Fibre, Decimal)> = fibres.collect();
        let typed = colour.map(|it| it.substrate.trim()).unwrap_or_default();
        if !fibres.is_empty() {
            fibres.sort_by(|one, other| match other.1.cmp(&one.1) {
                Ordering::Equal => one.0.cmp(&other.0),
                order => order,
            });
            Substrate::Fibres(fibres)
        } else if !typed.is_empty() {
            Substrate::Typed(typed.to_owned())
        } else {
            Substrate::Fabric(material.id.clone())
        }
    }
}

/// What a fabric is in a colourway. Nothing where that cannot be said, which is noted.
fn dyed<'a>(
    colourways: &'a Colourways,
    colourway: &Colourway,
    material: &'a Material,
    result: &mut Dyeing,
) -> Option<Dyed<'a>> {
    let mut found: Option<Dyed<'a>> = None;
    for part in &material.parts {
        let Some(next) = colour_of(colourways, &colourway.id, part) else {
            result.miss(Lack::Colour, Some(material), Some(colourway), Some(part));
            return None;
        };
        match &found {
            None => found = Some(next),
            Some(first) if first.is(&next) => {}
            Some(_) => {
                result.miss(Lack::PartsDiffer, Some(material), Some(colourway), None);
                return None;
            }
        }
    }
    found
}

impl Dyed<'_> {
    fn is(&self, other: &Dyed) -> bool {
        match (self, other) {
            (Dyed::Absent, Dyed::Absent) | (Dyed::Natural, Dyed::Natural) => true,
            (Dyed::Colour(one), Dyed::Colour(other)) => one.is_meant_as(other),
            _ => false,
        }
    }
}

/// A part's colour; what is dyed to match follows its target. Nothing where the cell is empty, has
/// a colour without name and reference, or leads round in a circle.
fn colour_of<'a>(
    colourways: &'a Colourways,
    colourway: &ItemId,
    part: &'a ItemId,
) -> Option<Dyed<'a>> {
    match colourways.settled(colourway, part)?.1 {
        Cell::None {} => Some(Dyed::Absent),
        Cell::Natural {} => Some(Dyed::Natural),
        Cell::Colour(colour) => {
            let named = [&colour.name, &colour.reference];
            let is_named = named.iter().any(|it| !it.trim().is_empty());
            is_named.then_some(Dyed::Colour(colour))
        }
        Cell::DyedToMatch { .. } => None,
    }
}

#[cfg(test)]
mod tests;
