//! Points of measure from rows. The values of the sizes become the simplest rule that gives exactly
//! them; a rule that gives them already stays.

use super::words::{basis, yes_or_no};
use super::{Field, Known, Reader, Why, put};
use crate::spec::chart::grade;
use crate::spec::document::{Grade, Point, Segment, Size};
use crate::spec::id::ItemId;
use crate::spec::rule::{self, Names};
use crate::spec::sheet::Place;
use crate::spec::units::{Entered, Length, NotALength, Unit};
use crate::spec::{Spec, letters};

/// What one row gave.
struct Read {
    /// Of the point in the new list.
    at: usize,
    /// The values in the order of the sizes.
    values: Vec<Entered>,
    /// Where its rule was typed.
    rule: Option<Place>,
    /// Its base value has been made that of the base size.
    based: bool,
}

pub(super) fn read(
    reader: &mut Reader<'_>,
    spec: &Spec,
    new_id: &mut dyn FnMut() -> ItemId,
) -> (Spec, usize) {
    let rows = reader.rows();
    let old = &spec.points.points;
    // Every row's point has its id and letter first: a rule may name a point further down.
    let taken = old.iter().map(|point| point.letter.as_str());
    let typed = rows.iter().map(|row| row.letter.as_str());
    let nameless = rows.iter().filter(|row| row.letter.is_empty()).count();
    let mut next = letters::after(taken.chain(typed))
        .take(nameless)
        .collect::<Vec<_>>()
        .into_iter();
    let begun: Vec<(Known, Option<usize>, Point)> = rows
        .into_iter()
        .map(|row| {
            let items = old.iter().map(|it| (it.letter.as_str(), it.name.as_str()));
            let at = row.among(items);
            let mut point = match at {
                Some(at) => old[at].clone(),
                None => Point {
                    id: new_id(),
                    ..Point::default()
                },
            };
            if at.is_none() {
                point.letter = match row.letter.as_str() {
                    "" => next.next().unwrap_or_default(),
                    typed => typed.to_owned(),
                };
            }
            (row, at, point)
        })
        .collect();
    let new = begun.iter().filter(|(_, at, _)| at.is_none());
    let labels: Vec<(ItemId, String)> = old
        .iter()
        .chain(new.map(|(_, _, point)| point))
        .map(|point| (point.id.clone(), point.letter.clone()))
        .collect();
    let names = Names {
        sizes: &spec.sizes.sizes,
        points: labels
            .iter()
            .map(|(id, letter)| (id, letter.as_str()))
            .collect(),
        unit: reader.unit,
    };
    let mut after = spec.clone();
    let mut done = Vec::new();
    let mut count = 0;
    for (row, at, mut point) in begun {
        reader.row = row.row;
        if !row.name.is_empty() {
            point.name = row.name;
        }
        let (values, rule) = one(reader, spec, &names, &mut point);
        if reader.failed() {
            continue;
        }
        let points = &mut after.points.points;
        let at = match at {
            Some(at) => at,
            None => {
                points.push(Point::default());
                points.len() - 1
            }
        };
        points[at] = point;
        count += 1;
        done.extend(values.map(|values| Read {
            at,
            values,
            rule,
            based: false,
        }));
    }
    settle(reader, spec, &mut after, done);
    (after, count)
}

/// Reads a row into its point, all but the rule that its sizes' values come to.
fn one(
    reader: &mut Reader<'_>,
    spec: &Spec,
    names: &Names<'_>,
    point: &mut Point,
) -> (Option<Vec<Entered>>, Option<Place>) {
    reader.line(&Field::Start, &mut point.how.start);
    reader.line(&Field::End, &mut point.how.end);
    how(reader, point);
    if let Some(read) = reader.word(&Field::Basis, basis) {
        point.basis = Some(read);
    }
    if let Some(read) = reader.word(&Field::Key, yes_or_no) {
        point.key = read;
    }
    if let Some(read) = reader.word(&Field::Critical, yes_or_no) {
        point.critical = read;
    }
    let step = reader.length(&Field::Step);
    match step.filter(|(_, step)| !step.nm.is_positive()) {
        Some((place, _)) => reader.wrong(place, Why::Negative),
        None => step
            .into_iter()
            .for_each(|(_, step)| put(&mut point.step, step)),
    }
    tolerances(reader, point);
    let base = reader.length(&Field::Base);
    let values = values(reader, spec, base, point);
    if let (None, Some((_, base))) = (&values, base) {
        put(&mut point.base, base);
    }
    let mut rule = None;
    if let Some((place, text)) = reader.text(&Field::Grade) {
        // As the draft writes it: it stays what it is, whatever is gone that it names.
        let same = point
            .grade
            .as_ref()
            .is_some_and(|it| rule::write(it, names) == text);
        match rule::read(text, names) {
            _ if same => {}
            Ok(read) => {
                point.grade = Some(read);
                rule = Some(place);
            }
            Err(why) => reader.wrong(place, Why::Grade(why)),
        }
    }
    (values, rule)
}

/// `from HPS to hem` is two fields of the document, all else is a note.
fn how(reader: &mut Reader<'_>, point: &mut Point) {
    let mut how = String::new();
    reader.line(&Field::How, &mut how);
    if how.is_empty() {
        return;
    }
    let small = how.to_ascii_lowercase();
    let parted = small.strip_prefix("from ").and_then(|rest| {
        let to = rest.find(" to ")?;
        (rest.matches(" to ").count() == 1).then_some(to + 5)
    });
    match parted.filter(|_| how.is_ascii()) {
        Some(to) => {
            point.how.start = how[5..to].trim().to_owned();
            point.how.end = how[to + 4..].trim().to_owned();
        }
        None => point.how.note = how,
    }
}

fn tolerances(reader: &mut Reader<'_>, point: &mut Point) {
    // Minus is often typed with its sign; plus with a minus is a slip.
    if let Some((_, minus)) = reader.length(&Field::Minus) {
        let nm = minus.nm.abs();
        put(&mut point.minus, Entered { nm, ..minus });
    }
    reader.positive(&Field::Plus, &mut point.plus);
    let Some((place, text)) = reader.text(&Field::Tolerance) else {
        return;
    };
    match tolerance(text, reader.unit_at(place.column)) {
        Ok((minus, plus)) => {
            put(&mut point.minus, minus);
            put(&mut point.plus, plus);
        }
        Err(why) => reader.wrong(place, Why::Length(why)),
    }
}

/// Minus and plus of `±0.5`, `+/- 0.5`, `0.5`, `+1 / -0.5`, `-1/4 +1/2`.
fn tolerance(text: &str, unit: Option<Unit>) -> Result<(Entered, Entered), NotALength> {
    let text = text.trim().replace(['−', '–'], "-");
    let both = ["±", "+/-", "+-", "-/+"]
        .iter()
        .find_map(|sign| text.strip_prefix(sign));
    if let Some(both) = both {
        let both = Entered::read_in(both, unit)?;
        return Ok((both, both));
    }
    // A second sign begins the other side.
    let second = text
        .char_indices()
        .skip(1)
        .find(|(_, c)| matches!(c, '+' | '-'));
    let Some((at, _)) = second.filter(|_| text.starts_with(['+', '-'])) else {
        let both = Entered::read_in(&text, unit)?;
        let both = Entered {
            nm: both.nm.abs(),
            ..both
        };
        return Ok((both, both));
    };
    let (one, other) = text.split_at(at);
    let one = Entered::read_in(one.trim_end_matches([' ', '/', ',', ';']), unit)?;
    let other = Entered::read_in(other, unit)?;
    let far = |it: Entered| Entered {
        nm: it.nm.abs(),
        ..it
    };
    match (text.starts_with('+'), other.nm.is_negative()) {
        (true, true) => Ok((far(other), one)),
        (false, false) => Ok((far(one), other)),
        _ => Err(NotALength::NotANumber),
    }
}

/// The values of all sizes; of the base size alone, the base value.
fn values(
    reader: &mut Reader<'_>,
    spec: &Spec,
    base: Option<(Place, Entered)>,
    point: &mut Point,
) -> Option<Vec<Entered>> {
    let sizes = &spec.sizes.sizes;
    let base_at = sizes
        .iter()
        .position(|size| Some(&size.id) == spec.header.base_size.as_ref());
    let before = reader.left.len();
    let fields = sizes.iter().map(|size| Field::Size(size.id.clone()));
    let read: Vec<Option<(Place, Entered)>> = fields.map(|it| reader.length(&it)).collect();
    if reader.left.len() > before {
        return None;
    }
    let count = read.iter().flatten().count();
    let (first, one) = *read.iter().flatten().next()?;
    if count < sizes.len() {
        if count == 1 && base_at.is_some_and(|at| read[at].is_some()) {
            put(&mut point.base, one);
            return None;
        }
        let missing = sizes.iter().zip(&read).filter(|(_, read)| read.is_none());
        let codes = missing.map(|(size, _)| size.code.clone()).collect();
        let empty = sizes.iter().zip(&read).find(|(_, read)| read.is_none());
        let place = empty.and_then(|(size, _)| reader.place(&Field::Size(size.id.clone())));
        return reader.none(place.unwrap_or(first), Why::SizesMissing(codes));
    }
    let read: Vec<(Place, Entered)> = read.into_iter().flatten().collect();
    let all: Vec<Entered> = read.iter().map(|(_, value)| *value).collect();
    let step = point
        .step
        .unwrap_or_else(|| usual_step(&all, spec.header.unit));
    point.step = Some(step);
    for (place, value) in &read {
        if !value.nm.is_multiple_of(step.nm) {
            reader.wrong(*place, Why::NotAMultiple(step));
        }
    }
    if let (Some((place, base)), Some(at)) = (base, base_at)
        && all[at].nm != base.nm
    {
        reader.wrong(place, Why::BaseDiffers);
    }
    Some(all)
}

/// The coarsest usual step that keeps all of these values as they are: of the master unit, else of
/// the unit that they are written in; else the finest of that.
fn usual_step(values: &[Entered], master: Option<Unit>) -> Entered {
    let own = values.first().map_or(Unit::Cm, |value| value.unit);
    let keeps = |step: &Length| values.iter().all(|value| value.nm.is_multiple_of(*step));
    let units = [master.unwrap_or(own), own].into_iter();
    let steps = units.flat_map(|unit| unit.steps().iter().rev().map(move |nm| (unit, *nm)));
    let mut keeping = steps.filter(|(_, step)| keeps(step));
    let (unit, nm) = keeping.next().unwrap_or((own, own.fine_step()));
    Entered { nm, unit }
}

/// Makes the rule of every row give its values: the one that is there where it does, with another
/// base value if need be, else the simplest one. Whatever follows another point is looked at again
/// once that one has settled.
fn settle(reader: &mut Reader<'_>, spec: &Spec, after: &mut Spec, mut rows: Vec<Read>) {
    let sizes = &spec.sizes.sizes;
    let base = spec.header.base_size.as_ref();
    let base = base.and_then(|id| sizes.iter().position(|size| size.id == *id));
    loop {
        let graded = grade(after);
        let gives = |read: &Read| {
            let found = graded.points[read.at].result.as_ref();
            let wanted = read.values.iter().map(|value| value.nm);
            found.is_ok_and(|found| found.rounded.iter().copied().eq(wanted))
        };
        rows.retain(|read| !gives(read));
        if rows.is_empty() {
            return;
        }
        let mut next = Vec::new();
        for mut read in rows {
            let point = &mut after.points.points[read.at];
            let typed = base.map(|at| read.values[at]);
            let follows = matches!(point.grade, Some(Grade::Same {} | Grade::Segments { .. }));
            if follows && !read.based && point.base.map(|it| it.nm) != typed.map(|it| it.nm) {
                point.base = typed;
                read.based = true;
                next.push(read);
                continue;
            }
            if let Some(place) = read.rule {
                reader.tell(place, Why::RuleDiffers);
            }
            point.base = typed;
            point.grade = Some(simplest(sizes, &read.values, typed.is_some()));
        }
        rows = next;
    }
}

/// The simplest rule that gives exactly these values of the sizes: the same in all, steps by
/// segment while there are at most half as many segments as gaps, else each value.
fn simplest(sizes: &[Size], values: &[Entered], has_base: bool) -> Grade {
    if has_base && values.windows(2).all(|pair| pair[0].nm == pair[1].nm) {
        return Grade::Same {};
    }
    let mut segments: Vec<Segment> = Vec::new();
    for (pair, ids) in values.windows(2).zip(sizes.windows(2)) {
        let step = Entered {
            nm: pair[1].nm - pair[0].nm,
            unit: pair[1].unit,
        };
        let (from, to) = (ids[0].id.clone(), ids[1].id.clone());
        match segments.last_mut().filter(|last| last.step.nm == step.nm) {
            Some(last) => last.to = to,
            None => segments.push(Segment { from, to, step }),
        }
    }
    let gaps = values.len().saturating_sub(1);
    if has_base && segments.len() <= gaps.div_ceil(2) {
        return Grade::Segments { segments };
    }
    let values = sizes.iter().zip(values);
    Grade::Explicit {
        values: values
            .map(|(size, value)| (size.id.clone(), *value))
            .collect(),
    }
}
