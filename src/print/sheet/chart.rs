//! The size chart: the rounded chart, the grading that it is worked out from, and the same in the
//! other unit.

use rust_xlsxwriter::XlsxError;

use super::book::{Book, Look, Page, at, on, pinned, rounded, shown_as, truncated};
use super::{Source, number_in, with_unit};
use crate::spec::chart::{Row, Values, grade, steps};
use crate::spec::document::{Grade, Point};
use crate::spec::rule::{self, Names};
use crate::spec::{ItemId, Length, Unit};

/// The row of the heads, counted from 0; the points follow.
const HEADS: u32 = 3;
/// Columns of the chart.
const STEP: u32 = 8;
const MINUS: u32 = 9;
const PLUS: u32 = 10;
const FIRST: u32 = 12;
/// Columns of the grading: the offset of a point that follows another, and the first size.
const OFFSET: u32 = 2;
const GRADED: u32 = 3;

/// One point with what its line holds.
struct Line<'a> {
    point: &'a Point,
    /// The row on every sheet.
    row: u32,
    frozen: Option<&'a Row>,
    graded: Option<Values>,
}

fn lines<'a>(source: &Source<'a>) -> Vec<Line<'a>> {
    let graded = grade(source.spec);
    let points = source.spec.points.points.iter().zip(graded.points);
    points
        .zip(HEADS + 1..)
        .map(|((point, graded), row)| Line {
            point,
            row,
            frozen: source.chart.and_then(|chart| chart.row(&point.id)),
            graded: graded.result.ok(),
        })
        .collect()
}

impl Line<'_> {
    /// The values of the sizes: as they were frozen, else as they are graded.
    fn values(&self) -> &[Length] {
        match (self.frozen, &self.graded) {
            (Some(frozen), _) => &frozen.values,
            (None, Some(graded)) => &graded.rounded,
            (None, None) => &[],
        }
    }

    fn step(&self) -> Option<Length> {
        let typed = self.point.step.map(|step| step.nm);
        self.frozen.map(|row| row.step).or(typed)
    }

    /// Minus and plus.
    fn tolerances(&self) -> [Option<Length>; 2] {
        match self.frozen {
            Some(row) => [Some(row.minus), Some(row.plus)],
            None => [self.point.minus, self.point.plus].map(|it| it.map(|it| it.nm)),
        }
    }

    /// Whether this value is what grading and rounding give.
    fn follows(&self, size: usize) -> bool {
        let graded = self.graded.as_ref().and_then(|it| it.rounded.get(size));
        graded.is_some() && graded == self.values().get(size)
    }
}

/// Letter, name, how to measure, basis, key, critical: what stands before the numbers.
fn texts(source: &Source<'_>, point: &Point) -> [String; 8] {
    let t = source.t;
    let yes = |set: bool| match set {
        true => t.say("sheet-yes").to_string(),
        false => String::new(),
    };
    [
        point.letter.clone(),
        point.name.clone(),
        point.how.start.clone(),
        point.how.end.clone(),
        point.how.note.clone(),
        point
            .basis
            .map_or(String::new(), |it| t.name(&it).to_string()),
        yes(point.key),
        yes(point.critical),
    ]
}

fn heads(source: &Source<'_>, unit: Unit) -> Vec<String> {
    let t = source.t;
    let plain = [
        "letter",
        "name",
        "how.start",
        "how.end",
        "how.note",
        "basis",
        "key",
        "critical",
    ];
    let lengths = ["step", "minus", "plus"];
    let sizes = source.sizes().iter().map(|size| size.code.clone());
    let plain = plain.into_iter().map(|field| t.field(field).to_string());
    plain
        .chain(lengths.map(|field| with_unit(t.field(field), unit)))
        .chain([t.field("grade").to_string()])
        .chain(sizes)
        .collect()
}

fn rule_of(source: &Source<'_>, point: &Point) -> String {
    let points = source.spec.points.points.iter();
    let names = Names {
        sizes: source.sizes(),
        points: points.map(|it| (&it.id, it.letter.as_str())).collect(),
        unit: Some(source.unit()),
    };
    let grade = point.grade.as_ref();
    grade.map_or(String::new(), |grade| rule::write(grade, &names))
}

/// The chart in the master unit: a line a point, a column a size.
pub fn csv(source: &Source<'_>) -> Vec<u8> {
    let unit = source.unit();
    let length = |length: Length| source.number(number_in(length, unit));
    let maybe = |it: Option<Length>| it.map_or(String::new(), length);
    let mut rows = vec![heads(source, unit)];
    for line in lines(source) {
        let mut row: Vec<String> = texts(source, line.point).into();
        row.push(maybe(line.step()));
        row.extend(line.tolerances().map(maybe));
        row.push(rule_of(source, line.point));
        row.extend(line.values().iter().map(|value| length(*value)));
        rows.push(row);
    }
    source.csv(&rows)
}

/// The names of the sheets.
struct Sheets {
    chart: String,
    grading: String,
}

/// Errors: only what no spec of ours has, as a text beyond what a cell holds.
pub fn xlsx(source: &Source<'_>) -> Result<Vec<u8>, XlsxError> {
    let t = source.t;
    let sheets = Sheets {
        chart: t.say("sheet-chart").to_string(),
        grading: t.say("sheet-grading").to_string(),
    };
    let lines = lines(source);
    let mut book = Book::new(source)?;
    chart(source, &sheets, &lines, book.page(&sheets.chart, source)?)?;
    grading(source, &lines, book.page(&sheets.grading, source)?)?;
    let other = match source.unit().is_metric() {
        true => (Unit::Inch, t.say("sheet-in-inches").to_string()),
        false => (Unit::Cm, t.say("sheet-in-cm").to_string()),
    };
    let page = book.page(&other.1, source)?;
    reference(source, &sheets, &lines, other.0, page)?;
    let further = further(source, &lines);
    if !further.is_empty() {
        let name = t.say("sheet-further").to_string();
        more(source, &sheets, &further, book.page(&name, source)?)?;
    }
    book.bytes()
}

fn chart(
    source: &Source<'_>,
    sheets: &Sheets,
    lines: &[Line<'_>],
    mut page: Page<'_>,
) -> Result<(), XlsxError> {
    let unit = source.unit();
    page.heads(HEADS, &heads(source, unit))?;
    for (column, width) in [
        (0, 7),
        (1, 28),
        (2, 24),
        (3, 24),
        (4, 24),
        (5, 16),
        (11, 24),
    ] {
        page.width(column, width)?;
    }
    for line in lines {
        let row = line.row;
        for (text, column) in texts(source, line.point).iter().zip(0..) {
            page.text(at(row, column), text, Look::Plain)?;
        }
        let [minus, plus] = line.tolerances();
        for (column, length) in [(STEP, line.step()), (MINUS, minus), (PLUS, plus)] {
            if let Some(length) = length {
                let shown = shown_as(unit, None);
                page.number(at(row, column), number_in(length, unit), shown, Look::Input)?;
            }
        }
        page.text(at(row, STEP + 3), &rule_of(source, line.point), Look::Plain)?;
        let shown = shown_as(unit, line.step());
        for ((size, value), column) in line.values().iter().enumerate().zip(0..) {
            let (place, value) = (at(row, FIRST + column), number_in(*value, unit));
            if line.follows(size) {
                let exact = on(&sheets.grading, at(row, GRADED + column));
                let formula = rounded(&exact, &pinned(at(row, STEP)));
                page.formula(place, &formula, value, shown)?;
            } else {
                page.number(place, value, shown, Look::Plain)?;
            }
        }
    }
    Ok(())
}

/// The unrounded values. What is typed is the base value and the steps between neighbours, or each
/// value, or how much more it is than the point that it follows.
fn grading(source: &Source<'_>, lines: &[Line<'_>], mut page: Page<'_>) -> Result<(), XlsxError> {
    let (t, unit) = (source.t, source.unit());
    let sizes = source.sizes();
    let mut heads = vec![
        t.field("letter").to_string(),
        t.field("name").to_string(),
        with_unit(t.say("sheet-offset"), unit),
    ];
    heads.extend(sizes.iter().map(|size| size.code.clone()));
    heads.extend(sizes.windows(2).map(|pair| {
        t.say("sheet-gap")
            .with("from", &pair[0].code)
            .with("to", &pair[1].code)
            .to_string()
    }));
    page.heads(HEADS, &heads)?;
    page.width(1, 28)?;
    let count = u32::try_from(sizes.len()).unwrap_or_default();
    let shown = shown_as(unit, None);
    for line in lines {
        let row = line.row;
        page.text(at(row, 0), &line.point.letter, Look::Plain)?;
        page.text(at(row, 1), &line.point.name, Look::Plain)?;
        let Some(values) = &line.graded else {
            continue;
        };
        let exact: Vec<f64> = values.exact.iter().map(|it| number_in(*it, unit)).collect();
        let place = |size: u32| at(row, GRADED + size);
        let gap = |gap: u32| at(row, GRADED + count + gap);
        let each = exact.iter().copied().zip(0..);
        match &line.point.grade {
            Some(Grade::Derived { from, offset }) => {
                let source_row = lines
                    .iter()
                    .find(|it| it.point.id == *from)
                    .map(|it| it.row);
                let offset = number_in(offset.nm, unit);
                page.number(at(row, OFFSET), offset, shown, Look::Input)?;
                for (value, size) in each {
                    let from = at(source_row.unwrap_or(row), GRADED + size);
                    let formula = format!("{from}+{}", pinned(at(row, OFFSET)));
                    page.formula(place(size), &formula, value, shown)?;
                }
            }
            Some(Grade::Same {} | Grade::Segments { .. }) => {
                let base = source.base_at().and_then(|at| u32::try_from(at).ok());
                let base = base.unwrap_or_default();
                for (step, n) in steps(&values.exact).zip(0..) {
                    page.number(gap(n), number_in(step, unit), shown, Look::Input)?;
                }
                for (value, size) in each {
                    if size == base {
                        page.number(place(size), value, shown, Look::Input)?;
                        continue;
                    }
                    let formula = match size > base {
                        true => format!("{}+{}", place(size - 1), gap(size - 1)),
                        false => format!("{}-{}", place(size + 1), gap(size)),
                    };
                    page.formula(place(size), &formula, value, shown)?;
                }
            }
            Some(Grade::Explicit { .. }) | None => {
                for (value, size) in each {
                    page.number(place(size), value, shown, Look::Input)?;
                }
            }
        }
    }
    Ok(())
}

/// The chart in the other unit, as a reference: values to its finest step, tolerances towards zero.
fn reference(
    source: &Source<'_>,
    sheets: &Sheets,
    lines: &[Line<'_>],
    other: Unit,
    mut page: Page<'_>,
) -> Result<(), XlsxError> {
    let (t, unit) = (source.t, source.unit());
    let mut heads = vec![t.field("letter").to_string(), t.field("name").to_string()];
    heads.extend(["minus", "plus"].map(|field| with_unit(t.field(field), other)));
    heads.extend(source.sizes().iter().map(|size| size.code.clone()));
    page.heads(HEADS, &heads)?;
    page.width(1, 28)?;
    let fine = other.fine_step();
    let (fine_text, shown) = (
        number_in(fine, other).to_string(),
        shown_as(other, Some(fine)),
    );
    let converted = |place| {
        let cell = on(&sheets.chart, place);
        match unit {
            Unit::Inch => format!("{cell}*2.54"),
            Unit::Cm => format!("{cell}/2.54"),
            Unit::Mm => format!("{cell}/25.4"),
        }
    };
    for line in lines {
        let row = line.row;
        page.text(at(row, 0), &line.point.letter, Look::Plain)?;
        page.text(at(row, 1), &line.point.name, Look::Plain)?;
        for ((tolerance, from), column) in line.tolerances().iter().zip([MINUS, PLUS]).zip(2..) {
            if let Some(tolerance) = tolerance {
                let formula = truncated(&converted(at(row, from)), &fine_text);
                let value = number_in(tolerance.tolerance_in(other), other);
                page.formula(at(row, column), &formula, value, shown)?;
            }
        }
        for (value, column) in line.values().iter().zip(0..) {
            let formula = rounded(&converted(at(row, FIRST + column)), &fine_text);
            let value = number_in(value.rounded(fine), other);
            page.formula(at(row, 4 + column), &formula, value, shown)?;
        }
    }
    Ok(())
}

/// A line beside the chart: the values at a length of the second axis, or stretched; a tolerance
/// that differs by size.
struct Further<'a> {
    line: &'a Line<'a>,
    what: String,
    values: Vec<Option<Length>>,
    /// What is added to the unrounded values, where the values are graded.
    more: Option<Length>,
}

fn further<'a>(source: &Source<'a>, lines: &'a [Line<'a>]) -> Vec<Further<'a>> {
    let t = source.t;
    let mut all = Vec::new();
    for line in lines {
        let Some(row) = line.frozen else { continue };
        if !row.stretched.is_empty() {
            let least = line.point.stretched_min.map(|it| it.nm);
            let exact = line.graded.as_ref().zip(source.base_at());
            let base = exact.and_then(|(graded, at)| graded.exact.get(at).copied());
            all.push(Further {
                line,
                what: t.field("stretched_min").to_string(),
                values: row.stretched.iter().copied().map(Some).collect(),
                more: least.zip(base).map(|(least, base)| least - base),
            });
        }
        let lengths = source.chart.into_iter().flat_map(|chart| &chart.lengths);
        for length in lengths.filter(|it| it.point == line.point.id) {
            let options = source.spec.sizes.lengths.iter();
            let option = options.clone().find(|it| it.id == length.length);
            all.push(Further {
                line,
                what: option.map_or(String::new(), |it| it.code.clone()),
                values: length.values.iter().copied().map(Some).collect(),
                more: adds(lines, line.point, &length.length),
            });
        }
        if !row.tolerances.is_empty() {
            for (field, plus) in [("minus", false), ("plus", true)] {
                let of = |id: &ItemId| {
                    row.tolerances
                        .get(id)
                        .map(|it| if plus { it.plus } else { it.minus })
                };
                all.push(Further {
                    line,
                    what: t.field(field).to_string(),
                    values: source.sizes().iter().map(|size| of(&size.id)).collect(),
                    more: None,
                });
            }
        }
    }
    all
}

/// What a length of the second axis adds to a point: its own, else that of the point it follows.
fn adds(lines: &[Line<'_>], point: &Point, length: &ItemId) -> Option<Length> {
    let mut at = point;
    for _ in lines {
        if let Some(own) = at.lengths.get(length) {
            return Some(own.nm);
        }
        let Some(Grade::Derived { from, .. }) = &at.grade else {
            return None;
        };
        at = lines.iter().find(|it| it.point.id == *from)?.point;
    }
    None
}

fn more(
    source: &Source<'_>,
    sheets: &Sheets,
    further: &[Further<'_>],
    mut page: Page<'_>,
) -> Result<(), XlsxError> {
    let (t, unit) = (source.t, source.unit());
    let mut heads = vec![
        t.field("letter").to_string(),
        t.field("name").to_string(),
        t.say("sheet-what").to_string(),
        with_unit(t.say("sheet-offset"), unit),
    ];
    heads.extend(source.sizes().iter().map(|size| size.code.clone()));
    page.heads(HEADS, &heads)?;
    page.width(1, 28)?;
    page.width(2, 24)?;
    for (one, row) in further.iter().zip(HEADS + 1..) {
        let (line, shown) = (one.line, shown_as(unit, one.line.step()));
        page.text(at(row, 0), &line.point.letter, Look::Plain)?;
        page.text(at(row, 1), &line.point.name, Look::Plain)?;
        page.text(at(row, 2), &one.what, Look::Plain)?;
        if let Some(more) = one.more {
            page.number(
                at(row, 3),
                number_in(more, unit),
                shown_as(unit, None),
                Look::Input,
            )?;
        }
        for ((size, value), column) in one.values.iter().enumerate().zip(0..) {
            let Some(value) = *value else { continue };
            let place = at(row, 4 + column);
            let exact = line.graded.as_ref().and_then(|it| it.exact.get(size));
            let given = exact.zip(one.more).zip(line.step());
            let given = given.map(|((exact, more), step)| (*exact + more).rounded(step));
            if given == Some(value) {
                let exact = on(&sheets.grading, at(line.row, GRADED + column));
                let sum = format!("({exact}+{})", pinned(at(row, 3)));
                let step = on(&sheets.chart, at(line.row, STEP));
                page.formula(place, &rounded(&sum, &step), number_in(value, unit), shown)?;
            } else {
                page.number(place, number_in(value, unit), shown, Look::Plain)?;
            }
        }
    }
    Ok(())
}
