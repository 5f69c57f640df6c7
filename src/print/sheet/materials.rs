//! The list of materials: what a garment takes, and what the planned pieces come to.

use rust_xlsxwriter::XlsxError;

use super::book::{Book, Look, at, pinned};
use super::{Source, number_in, with_unit};
use crate::spec::document::{Material, Measured, Share, Structure, WastageBasis};
use crate::spec::sheet::{Place, column_name};
use crate::spec::{Decimal, Unit};

/// The row that the planned pieces are written in, and that of the heads.
const PIECES: u32 = 2;
const HEADS: u32 = 3;
/// Columns.
const MASS: u32 = 7;
const WIDTH: u32 = 8;
const AMOUNT: u32 = 10;
const FIRST: u32 = 11;

/// Rolls are measured in centimetres, whatever the garment is.
const ROLLS: Unit = Unit::Cm;

fn heads(source: &Source<'_>) -> Vec<String> {
    let t = source.t;
    let plain = [
        "letter",
        "name",
        "kind",
        "composition",
        "supplier",
        "reference",
        "placement",
    ];
    let mut heads: Vec<String> = plain.map(|field| t.field(field).to_string()).into();
    heads.push(t.field("fabric.mass").to_string());
    heads.push(with_unit(t.field("fabric.width"), ROLLS));
    heads.push(t.field("consumption.unit").to_string());
    heads.push(t.field("consumption.amount").to_string());
    heads.extend(source.sizes().iter().map(|size| size.code.clone()));
    heads.push(t.say("sheet-wastage").to_string());
    heads
}

fn texts(source: &Source<'_>, material: &Material) -> [String; 7] {
    let t = source.t;
    let shares = material
        .composition
        .iter()
        .map(|share| one_share(source, share));
    [
        material.letter.clone(),
        material.name.clone(),
        material
            .kind
            .map_or(String::new(), |it| t.name(&it).to_string()),
        shares.collect::<Vec<_>>().join(" "),
        material.supplier.clone(),
        material.reference.clone(),
        material.placement.clone(),
    ]
}

/// `80% cotton`.
fn one_share(source: &Source<'_>, share: &Share) -> String {
    let percent = share
        .percent
        .map_or(String::new(), |it| it.show(source.sign));
    let name = match share.fibre {
        Some(_) if !share.name.is_empty() => share.name.clone(),
        Some(fibre) => source.t.name(&fibre).to_string().to_lowercase(),
        None => share.name.clone(),
    };
    format!("{percent}% {name}")
}

fn unit_of(source: &Source<'_>, material: &Material) -> String {
    let unit = material.consumption.unit;
    unit.map_or(String::new(), |unit| source.t.name(&unit).to_string())
}

fn wastage(material: &Material) -> Option<Decimal> {
    material.wastage.as_ref().and_then(|it| it.percent)
}

/// The list, with what each size takes.
pub fn csv(source: &Source<'_>) -> Vec<u8> {
    let number = |it: Option<Decimal>| it.map_or(String::new(), |it| it.show(source.sign));
    let mut rows = vec![heads(source)];
    for material in &source.spec.materials.materials {
        let mut row: Vec<String> = texts(source, material).into();
        row.push(number(material.fabric.mass));
        let width = material.fabric.width.map(|it| number_in(it.nm, ROLLS));
        row.push(width.map_or(String::new(), |width| source.number(width)));
        row.push(unit_of(source, material));
        row.push(number(material.consumption.amount));
        let sizes = source.sizes().iter();
        row.extend(sizes.map(|size| number(material.consumption.of(&size.id))));
        row.push(number(wastage(material)));
        rows.push(row);
    }
    source.csv(&rows)
}

/// Errors: only what no spec of ours has, as a text beyond what a cell holds.
pub fn xlsx(source: &Source<'_>) -> Result<Vec<u8>, XlsxError> {
    let t = source.t;
    let mut book = Book::new(source)?;
    let name = t.say("sheet-materials").to_string();
    let mut page = book.page(&name, source)?;
    let sizes = source.sizes();
    let count = u32::try_from(sizes.len()).unwrap_or_default();
    let wasted = FIRST + count;
    let mut heads = heads(source);
    heads.push(t.say("sheet-needed").to_string());
    heads.push(t.say("sheet-kilograms").to_string());
    page.heads(HEADS, &heads)?;
    for (column, width) in [(0, 7), (1, 28), (2, 16), (3, 30), (4, 20), (5, 20), (6, 24)] {
        page.width(column, width)?;
    }
    page.text(
        at(PIECES, 0),
        &t.say("sheet-pieces").to_string(),
        Look::Head,
    )?;
    // Without sizes the pieces are of the garment as such.
    let pieces = match count {
        0 => AMOUNT..=AMOUNT,
        _ => FIRST..=wasted - 1,
    };
    for column in pieces.clone() {
        page.blank(at(PIECES, column))?;
    }
    for (material, row) in source.spec.materials.materials.iter().zip(HEADS + 1..) {
        for (text, column) in texts(source, material).iter().zip(0..) {
            page.text(at(row, column), text, Look::Plain)?;
        }
        let mut input = |column, value: Option<f64>| match value {
            Some(value) => page.number(at(row, column), value, "General", Look::Input),
            None => Ok(()),
        };
        let number = |it: Option<Decimal>| it.map(Decimal::to_f64);
        let consumption = &material.consumption;
        input(MASS, number(material.fabric.mass))?;
        input(
            WIDTH,
            material.fabric.width.map(|it| number_in(it.nm, ROLLS)),
        )?;
        input(AMOUNT, number(consumption.amount))?;
        input(wasted, number(wastage(material)))?;
        page.text(at(row, WIDTH + 1), &unit_of(source, material), Look::Plain)?;
        for (size, column) in sizes.iter().zip(FIRST..) {
            let place = at(row, column);
            match (consumption.by_size.get(&size.id), consumption.amount) {
                (Some(own), _) => page.number(place, own.to_f64(), "General", Look::Input)?,
                (None, Some(amount)) => {
                    let formula = pinned(at(row, AMOUNT));
                    page.formula(place, &formula, amount.to_f64(), "General")?;
                }
                (None, None) => {}
            }
        }
        if sizes.iter().all(|size| consumption.of(&size.id).is_none())
            && consumption.amount.is_none()
        {
            continue;
        }
        // Nothing is planned yet, so nothing is needed yet.
        let needed = at(row, wasted + 1);
        page.formula(needed, &need(material, row, &pieces), 0.0, "0.00")?;
        if let Some(formula) = kilograms(material, needed) {
            page.formula(at(row, wasted + 2), &formula, 0.0, "0.00")?;
        }
    }
    book.bytes()
}

/// Consumption × planned pieces, with the wastage by its own basis: so much on top of what is
/// needed, or so much of what is bought.
fn need(material: &Material, row: u32, pieces: &std::ops::RangeInclusive<u32>) -> String {
    let (first, last) = (*pieces.start(), *pieces.end());
    let planned = |column| format!("${}${}", column_name(column), PIECES + 1);
    let taken = format!(
        "SUMPRODUCT({}:{},{}:{})",
        at(row, first),
        at(row, last),
        planned(first),
        planned(last)
    );
    let percent = match first {
        AMOUNT => at(row, AMOUNT + 1),
        _ => at(row, last + 1),
    };
    match material.wastage.as_ref().and_then(|it| it.basis) {
        Some(WastageBasis::LossOfInput) => format!("{taken}/(1-{percent}/100)"),
        _ => format!("{taken}*(1+{percent}/100)"),
    }
}

/// kg = m × full width × g/m² / 1000, a tube twice; of square metres without the width.
fn kilograms(material: &Material, needed: Place) -> Option<String> {
    let row = needed.row;
    let mass = at(row, MASS);
    let has_mass = material.fabric.mass.is_some();
    match material.consumption.unit? {
        Measured::Metre if has_mass && material.fabric.width.is_some() => {
            let tube =
                matches!(&material.fabric.structure, Some(Structure::Knitted(it)) if it.tubular);
            let twice = if tube { "*2" } else { "" };
            Some(format!(
                "{needed}*{}/100{twice}*{mass}/1000",
                at(row, WIDTH)
            ))
        }
        Measured::SquareMetre if has_mass => Some(format!("{needed}*{mass}/1000")),
        Measured::Gram => Some(format!("{needed}/1000")),
        _ => None,
    }
}
