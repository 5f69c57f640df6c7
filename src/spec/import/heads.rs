//! Which column holds which field, guessed from the heads. Common practice, no source.

use super::words::plain;
use super::{Columns, Field};
use crate::spec::Spec;
use crate::spec::document::{Section, Size};
use crate::spec::sheet::{Cell, Place, Sheet};
use crate::spec::units::Unit;

/// So far down a head is looked for.
const FAR: u32 = 40;

/// The row of the heads, and what stands below each: the row that has most heads that are known,
/// two at least; without one no column is matched.
pub fn guess(sheet: &Sheet, section: Section, spec: &Spec) -> Columns {
    let rows = 0..u32::try_from(sheet.rows.len()).unwrap_or_default().min(FAR);
    let mut best = Columns {
        head: None,
        fields: vec![None; sheet.width() as usize],
    };
    let mut most = 1;
    for row in rows {
        let columns = below(sheet, row, section, spec);
        let known = columns.fields.iter().flatten().count();
        if known > most {
            most = known;
            best = columns;
        }
    }
    best
}

/// The unit that a head, or a line above the heads, speaks of: `Bust (cm)`, `all in inches`.
pub fn guess_unit(sheet: &Sheet, columns: &Columns) -> Option<Unit> {
    let last = columns.head?;
    let above = sheet.cells().take_while(|(place, _)| place.row <= last);
    above
        .filter_map(|(_, cell)| spoken_unit(cell.text()?))
        .next()
}

/// The unit that a text speaks of; `in` is one in brackets, or alone.
pub(super) fn spoken_unit(text: &str) -> Option<Unit> {
    let bracketed = text.contains(['(', '[']);
    let text = plain(text);
    text.split(' ').find_map(|word| match word {
        "cm" | "centimetres" | "centimeters" => Some(Unit::Cm),
        "mm" | "millimetres" | "millimeters" => Some(Unit::Mm),
        "inch" | "inches" => Some(Unit::Inch),
        "in" if bracketed || text == "in" => Some(Unit::Inch),
        _ => None,
    })
}

/// What each column holds by the heads of this row, counted from 0; of two alike the first.
pub fn below(sheet: &Sheet, row: u32, section: Section, spec: &Spec) -> Columns {
    let choices = Field::all(section, spec);
    let mut fields: Vec<Option<Field>> = Vec::new();
    for column in 0..sheet.width() {
        let head = match sheet.at(Place { row, column }) {
            Cell::Text(text) | Cell::Formula(text) => text.as_str(),
            _ => "",
        };
        let field = named(head, section, &spec.sizes.sizes);
        let free = |field: &Field| {
            choices.contains(field) && !fields.iter().flatten().any(|it| it == field)
        };
        let field = field.filter(free);
        fields.push(field);
    }
    Columns {
        head: Some(row),
        fields,
    }
}

fn named(head: &str, section: Section, sizes: &[Size]) -> Option<Field> {
    let whole = plain(head);
    // A size before all else: `L` is one where there are sizes.
    let is = |size: &Size, text: &str| {
        let code = plain(&size.code);
        !code.is_empty() && (code == text || !size.label.is_empty() && plain(&size.label) == text)
    };
    let short = without_unit(head);
    let size = [
        whole.as_str(),
        short.as_str(),
        whole.strip_prefix("size ").unwrap_or_default(),
    ];
    for text in size.into_iter().filter(|text| !text.is_empty()) {
        if let Some(size) = sizes.iter().find(|size| is(size, text)) {
            return Some(Field::Size(size.id.clone()));
        }
    }
    let words = |text: &str| {
        let common = match text {
            "letter" | "pom" | "code" | "#" | "no" | "no." | "pos" | "pos." | "point" | "ref" => {
                Some(Field::Letter)
            }
            "name" | "description" | "measurement" | "measurements" | "point of measure"
            | "points of measure" => Some(Field::Name),
            _ => None,
        };
        let own = match section {
            Section::Points => point(text),
            Section::Materials => material(text),
            _ => None,
        };
        own.or(common)
    };
    words(&whole).or_else(|| words(&short))
}

/// The head without what stands in brackets, which is a unit or a remark.
fn without_unit(head: &str) -> String {
    let mut depth = 0_usize;
    let mut out = String::new();
    for c in head.chars() {
        match c {
            '(' | '[' => depth += 1,
            ')' | ']' => depth = depth.saturating_sub(1),
            c if depth == 0 => out.push(c),
            _ => {}
        }
    }
    let text = plain(&out);
    let mut text = text.as_str();
    for unit in [" cm", " mm", " inch", " inches", " %"] {
        text = text.strip_suffix(unit).unwrap_or(text);
    }
    text.to_owned()
}

fn point(text: &str) -> Option<Field> {
    Some(match text {
        "how" | "how to measure" | "method" | "instruction" | "note" | "notes" | "remark"
        | "remarks" => Field::How,
        "from" | "start" | "measure from" | "begin" => Field::Start,
        "to" | "end" | "measure to" => Field::End,
        "basis" | "counts" | "half/full" | "half full" | "half or full" => Field::Basis,
        "key" | "key point" => Field::Key,
        "critical" | "critical point" => Field::Critical,
        "step" | "round to" | "rounding" | "rounding step" | "rounded to" => Field::Step,
        "tol -" | "tolerance minus" | "tol minus" | "minus" | "-" | "- tol" | "tol-" | "-tol"
        | "tolerance -" => Field::Minus,
        "tol +" | "tolerance plus" | "tol plus" | "plus" | "+" | "+ tol" | "tol+" | "+tol"
        | "tolerance +" => Field::Plus,
        "tol" | "tolerance" | "tol ±" | "± tol" | "±" | "tol +/-" | "+/-" | "tolerance +/-"
        | "tolerance ±" | "tol+/-" => Field::Tolerance,
        "grade" | "grade rule" | "rule" | "grading" | "increment" => Field::Grade,
        "base" | "base value" | "base size" | "base measurement" | "spec" => Field::Base,
        _ => return None,
    })
}

fn material(text: &str) -> Option<Field> {
    Some(match text {
        "item" | "material" | "article" => Field::Name,
        "kind" | "type" | "category" => Field::Kind,
        "composition" | "content" | "contents" | "fibre" | "fiber" | "fibre content"
        | "fiber content" => Field::Composition,
        "supplier" | "vendor" | "mill" | "source" => Field::Supplier,
        "reference" | "ref" | "ref." | "supplier reference" | "supplier ref" | "article no"
        | "article number" | "item no" | "style no" | "quality" => Field::Reference,
        "placement" | "position" | "where" | "location" | "use" | "where it goes" => {
            Field::Placement
        }
        "mass" | "weight" | "g/m²" | "g/m2" | "gsm" | "mass g/m²" | "weight g/m²"
        | "weight gsm" => Field::Mass,
        "width" | "full width" | "fabric width" => Field::Width,
        "consumption"
        | "amount"
        | "cons"
        | "cons."
        | "usage"
        | "qty"
        | "quantity"
        | "consumption per garment"
        | "for one garment" => Field::Amount,
        "unit" | "uom" | "counted in" | "units" => Field::Measured,
        "wastage" | "wastage, %" | "wastage %" | "waste" | "waste %" | "loss" | "loss %" => {
            Field::Wastage
        }
        _ => return None,
    })
}
