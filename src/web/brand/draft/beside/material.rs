//! A material: the colours that its parts give it in every colourway, what each size takes, and
//! where it is used.

use askama::Template;

use crate::language::Text;
use crate::spec::Item;
use crate::spec::document::Material;
use crate::web::both::patch::{Patch, Shape, patch};
use crate::web::plates::Bench;

#[derive(Template)]
#[template(path = "brand/beside_material.html")]
pub struct MaterialPlate {
    t: Text,
    colourways: Vec<String>,
    parts: Vec<PartRow>,
    /// One for each size that it has something in.
    sizes: Vec<SizeRow>,
    unit: String,
    /// Callouts that sew with it or tape by it.
    callouts: Vec<String>,
}

/// A part that it is the material of.
struct PartRow {
    letter: String,
    name: String,
    /// One for each colourway; nothing where that is not said.
    cells: Vec<Option<Patch>>,
}

struct SizeRow {
    code: String,
    base: bool,
    amount: String,
    length: String,
}

impl MaterialPlate {
    pub fn of(bench: Bench<'_>, material: &Material) -> MaterialPlate {
        let (t, spec) = (bench.t, bench.spec);
        let matrix = &spec.colourways;
        let called = |code: &str, name: &str| format!("{code} {name}").trim().to_owned();
        let parts = material.parts.iter().filter_map(|id| {
            let part = matrix.parts.iter().find(|part| part.id == *id)?;
            let cells = matrix.colourways.iter();
            Some(PartRow {
                letter: part.letter.clone(),
                name: part.name.clone(),
                cells: cells.map(|it| patch(t, matrix, &it.id, id)).collect(),
            })
        });
        let sizes = spec.sizes.sizes.iter().filter_map(|size| {
            let amount = material.consumption.of(&size.id);
            let length = material.length_in(&size.id);
            (amount.is_some() || length.is_some()).then(|| SizeRow {
                code: size.code.clone(),
                base: spec.header.base_size.as_ref() == Some(&size.id),
                amount: amount.map(|it| it.show(bench.sign)).unwrap_or_default(),
                length: length
                    .map(|it| format!("{} {}", it.exact(bench.sign), it.unit.symbol()))
                    .unwrap_or_default(),
            })
        });
        let uses = spec.construction.callouts.iter().filter(|callout| {
            let id = Some(&material.id);
            callout.thread.as_ref() == id || callout.tape.as_ref() == id
        });
        MaterialPlate {
            t,
            colourways: matrix
                .colourways
                .iter()
                .map(|it| called(&it.code, &it.name))
                .collect(),
            parts: parts.collect(),
            sizes: sizes.collect(),
            unit: material
                .consumption
                .unit
                .map(|it| t.name(&it).to_string())
                .unwrap_or_default(),
            callouts: uses.map(|it| Item::Callout(it).known_by()).collect(),
        }
    }

    /// Whether some size has a length of its own.
    fn has_lengths(&self) -> bool {
        self.sizes.iter().any(|size| !size.length.is_empty())
    }

    fn has_amounts(&self) -> bool {
        self.sizes.iter().any(|size| !size.amount.is_empty())
    }
}
