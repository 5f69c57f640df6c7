//! Kilograms to be dyed for the planned pieces, so that a dye house can be asked.

use serde::Serialize;

use super::Writer;
use crate::language::shown;
use crate::spec::dyeing::{Lack, Line, Missing, Row, Substrate, dyeing};

#[derive(Serialize)]
pub struct Dyeing {
    pub rows: Vec<DyeRow>,
    /// What keeps it from being the whole answer.
    pub missing: Vec<String>,
}

#[derive(Serialize)]
pub struct DyeRow {
    pub substrate: String,
    /// Name and reference.
    pub colour: String,
    /// Stays undyed.
    pub natural: bool,
    pub kg: String,
    /// Each fabric with the colourway that it is for.
    pub of: Vec<String>,
}

impl Writer<'_> {
    /// Nothing where no pieces are planned.
    pub(super) fn dyeing(&self) -> Option<Dyeing> {
        let colourways = &self.frozen.spec.colourways.colourways;
        if colourways.iter().all(|it| it.pieces.is_none()) {
            return None;
        }
        let dyeing = dyeing(&self.frozen.spec);
        Some(Dyeing {
            rows: dyeing.rows.iter().map(|row| self.dyed(row)).collect(),
            missing: dyeing.missing.iter().map(|it| self.lack(it)).collect(),
        })
    }

    fn dyed(&self, row: &Row) -> DyeRow {
        let t = self.t;
        let substrate = match &row.substrate {
            Substrate::Fibres(fibres) => {
                let fibres = fibres.iter().map(|(fibre, percent)| {
                    t.say("group-percent")
                        .with("percent", shown(percent.show(self.frozen.decimal)))
                        .with("of", t.name(fibre))
                        .to_string()
                });
                fibres.collect::<Vec<_>>().join(", ")
            }
            Substrate::Typed(typed) => typed.clone(),
            Substrate::Fabric(material) => self.words.item(material),
        };
        let of = |line: &Line| {
            let letter = |id| self.frozen.spec.item(id).map_or("", |it| it.letter());
            format!("{} · {}", letter(&line.material), letter(&line.colourway))
        };
        let colour = row.colour.as_ref().map(|shade| {
            let parts = [&shade.name, &shade.reference];
            let parts = parts.into_iter().filter(|part| !part.is_empty());
            parts.map(String::as_str).collect::<Vec<_>>().join(" · ")
        });
        DyeRow {
            substrate,
            natural: colour.is_none(),
            colour: colour.unwrap_or_else(|| t.say("cell-natural").to_string()),
            kg: shown(row.kg.rounded(1).show(self.frozen.decimal)),
            of: row.lines.iter().map(of).collect(),
        }
    }

    fn lack(&self, missing: &Missing) -> String {
        let what = self.t.say(match missing.what {
            Lack::Pieces => "dyeing-lacks-pieces",
            Lack::Parts => "dyeing-lacks-parts",
            Lack::Colour => "dyeing-lacks-colour",
            Lack::PartsDiffer => "dyeing-parts-differ",
            Lack::Consumption => "dyeing-lacks-consumption",
            Lack::ConsumptionUnit => "dyeing-lacks-unit",
            Lack::Mass => "dyeing-lacks-mass",
            Lack::Width => "dyeing-lacks-width",
            Lack::Wastage => "dyeing-lacks-wastage",
            Lack::TooLarge => "dyeing-too-large",
        });
        let items = [&missing.material, &missing.part, &missing.colourway];
        let items = items.into_iter().flatten();
        let items: Vec<String> = items.map(|id| self.words.item(id)).collect();
        format!("{}: {what}", items.join(", "))
    }
}
