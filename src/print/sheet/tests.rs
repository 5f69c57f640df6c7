//! What was written is read again by another library, and its formulas are worked out by an
//! arithmetic of their own.

mod evaluate;

use calamine::{Data, DataType};

use super::*;
use crate::language::Language;
use crate::spec::chart::grade;
use crate::spec::document::{Basis, Grade, LengthOption, Point};
use crate::spec::example::half_zip;
use crate::spec::import;
use crate::spec::sheet::{Place, read_csv};
use crate::spec::{Digest, Entered, ItemId, Section};
use evaluate::Workbook;

fn made() -> Time {
    Time::try_from("2026-03-01T08:09:10.000Z".to_owned()).unwrap()
}

fn entered(text: &str, unit: Unit) -> Entered {
    Entered::read(text, unit).unwrap()
}

/// The half-zip in inches, with a rule of every kind and all that stands beside a chart.
fn spec() -> Spec {
    let mut spec = half_zip(Digest::of(b"front"));
    let inch = |text| entered(text, Unit::Inch);
    spec.sizes.lengths = vec![LengthOption {
        id: ItemId::new("long"),
        code: "long".to_owned(),
        ..LengthOption::default()
    }];
    let points = &mut spec.points.points;
    points[1].lengths.insert(ItemId::new("long"), inch("1 1/4"));
    points[3].stretched_min = Some(inch("12"));
    points[2].name = "=HYPERLINK(\"http://example.org\")".to_owned();
    let values = spec
        .sizes
        .sizes
        .iter()
        .zip(["9", "9 1/2", "10", "10 3/8", "11"]);
    let values = values.map(|(size, value)| (size.id.clone(), inch(value)));
    points.push(Point {
        id: ItemId::new("point-explicit"),
        letter: "Q".to_owned(),
        name: "+Pocket @ side".to_owned(),
        basis: Some(Basis::Linear),
        base: Some(inch("10")),
        minus: Some(inch("1/8")),
        plus: Some(inch("1/4")),
        step: Some(inch("1/8")),
        grade: Some(Grade::Explicit {
            values: values.collect(),
        }),
        ..Point::default()
    });
    spec
}

/// The same kinds of rule in centimetres, with values that binary arithmetic does not hold.
fn metric() -> Spec {
    let mut spec = spec();
    spec.header.unit = Some(Unit::Cm);
    spec.sizes.lengths.clear();
    let cm = |text: &str| Some(entered(text, Unit::Cm));
    let kept = spec
        .points
        .points
        .split_off(spec.points.points.len() - 1)
        .remove(0);
    let from = spec.sizes.sizes[0].id.clone();
    let to = spec.sizes.sizes[4].id.clone();
    spec.points.points = (1..60)
        .map(|n| Point {
            id: ItemId::new(format!("point-{n}")),
            letter: crate::spec::letters::nth(n - 1),
            // Halves of the step among them: 28.05 goes to 28.1.
            base: cm(&format!("{}.{:02}00", 20 + n, n * 5 % 100)),
            step: cm(if n % 3 == 0 { "0.5" } else { "0.1" }),
            grade: Some(Grade::Segments {
                segments: vec![crate::spec::document::Segment {
                    from: from.clone(),
                    to: to.clone(),
                    step: cm("0.35").unwrap(),
                }],
            }),
            minus: cm("0.7"),
            plus: cm("0.3"),
            ..kept.clone()
        })
        .collect();
    spec
}

fn with_source<T>(spec: &Spec, sign: DecimalSign, then: impl FnOnce(&Source<'_>) -> T) -> T {
    let chart = grade(spec).chart(spec);
    let made = made();
    then(&Source {
        t: Language::English.text(),
        spec,
        chart: chart.as_ref(),
        sign,
        revision: Some(3),
        made: &made,
    })
}

fn written(spec: &Spec) -> Workbook {
    Workbook::read(with_source(spec, DecimalSign::Point, |it| {
        chart_xlsx(it).unwrap()
    }))
}

fn near(a: f64, b: f64) -> bool {
    (a - b).abs() < 1e-9
}

#[test]
fn every_value_is_the_charts_and_every_formula_gives_it() {
    for spec in [spec(), metric()] {
        let chart = grade(&spec).chart(&spec).unwrap();
        let unit = spec.header.unit.unwrap();
        let book = written(&spec);
        assert_eq!(chart.rows.len(), spec.points.points.len());
        for (row, line) in (4..).zip(&chart.rows) {
            assert!(near(
                book.cached("Size chart", row, 8),
                number_in(line.step, unit)
            ));
            assert!(near(
                book.cached("Size chart", row, 9),
                number_in(line.minus, unit)
            ));
            assert!(near(
                book.cached("Size chart", row, 10),
                number_in(line.plus, unit)
            ));
            for (column, value) in (12..).zip(&line.values) {
                let value = number_in(*value, unit);
                assert_eq!(book.cached("Size chart", row, column), value);
                assert!(book.formula("Size chart", row, column).is_some());
            }
        }
        // Each formula of each sheet, from the inputs alone.
        let formulas = book.formulas();
        assert!(
            formulas.len() > 3 * chart.rows.len() * chart.sizes.len() - 60,
            "{}",
            formulas.len()
        );
        for (sheet, place) in formulas {
            let (worked, cached) = (
                book.value(&sheet, place),
                book.cached(&sheet, place.row, place.column),
            );
            assert!(
                near(worked, cached),
                "{sheet} {place}: {worked} is not {cached}"
            );
        }
    }
}

#[test]
fn the_second_axis_and_what_is_stretched_stand_beside_the_chart() {
    let spec = spec();
    let chart = grade(&spec).chart(&spec).unwrap();
    let book = written(&spec);
    let row = |letter: &str| book.row("Further values", 0, letter).unwrap();
    let long = &chart.lengths[0];
    let stretched = chart
        .rows
        .iter()
        .find(|row| !row.stretched.is_empty())
        .unwrap();
    for (letter, values) in [("B", &long.values), ("D", &stretched.stretched)] {
        for (column, value) in (4..).zip(values) {
            let (place, value) = ((row(letter), column), number_in(*value, Unit::Inch));
            assert_eq!(book.cached("Further values", place.0, place.1), value);
            assert!(
                book.formula("Further values", place.0, place.1).is_some(),
                "{letter}"
            );
        }
    }
}

#[test]
fn what_is_typed_over_grades_as_the_program_does() {
    let mut spec = metric();
    let mut book = written(&spec);
    // The base of the fifth point, and the steps of the seventh.
    let typed = entered("33.3500", Unit::Cm);
    let base = spec
        .sizes
        .sizes
        .iter()
        .position(|it| Some(&it.id) == spec.header.base_size.as_ref());
    let column = 3 + u32::try_from(base.unwrap()).unwrap();
    book.type_over("Grading", Place { row: 4 + 4, column }, 33.35);
    spec.points.points[4].base = Some(typed);
    for gap in 0..4 {
        book.type_over(
            "Grading",
            Place {
                row: 4 + 6,
                column: 3 + 5 + gap,
            },
            0.45,
        );
    }
    let Some(Grade::Segments { segments }) = &mut spec.points.points[6].grade else {
        panic!()
    };
    segments[0].step = entered("0.45", Unit::Cm);
    let chart = grade(&spec).chart(&spec).unwrap();
    for row in [4, 6] {
        for (column, value) in (12..).zip(&chart.rows[row].values) {
            let place = Place {
                row: 4 + u32::try_from(row).unwrap(),
                column,
            };
            assert!(
                near(book.value("Size chart", place), number_in(*value, Unit::Cm)),
                "{place}"
            );
        }
    }
}

#[test]
fn a_frozen_value_stands_even_where_the_rule_would_give_another() {
    let spec = spec();
    let mut chart = grade(&spec).chart(&spec).unwrap();
    chart.rows[0].values[1] = Length::nm(254_000_000);
    let made = made();
    let source = Source {
        t: Language::English.text(),
        spec: &spec,
        chart: Some(&chart),
        sign: DecimalSign::Point,
        revision: Some(1),
        made: &made,
    };
    let book = Workbook::read(chart_xlsx(&source).unwrap());
    assert_eq!(book.cached("Size chart", 4, 13), 10.0);
    assert_eq!(book.formula("Size chart", 4, 13), None);
}

#[test]
fn text_never_becomes_a_formula() {
    let spec = spec();
    let book = written(&spec);
    let row = 4 + 2;
    let name = book
        .data("Size chart", row, 1)
        .and_then(|it| it.get_string().map(str::to_owned));
    assert_eq!(name.as_deref(), Some(spec.points.points[2].name.as_str()));
    assert_eq!(book.formula("Size chart", row, 1), None);
    let csv = with_source(&spec, DecimalSign::Point, |it| {
        String::from_utf8(chart_csv(it)).unwrap()
    });
    assert!(csv.starts_with('\u{feff}'));
    assert!(
        csv.contains("\"'=HYPERLINK(\"\"http://example.org\"\")\""),
        "{csv}"
    );
    assert!(csv.contains(",'+Pocket @ side,"), "{csv}");
}

#[test]
fn what_is_written_imports_as_it_is() {
    for sign in [DecimalSign::Point, DecimalSign::Comma] {
        for spec in [spec(), metric()] {
            let csv = with_source(&spec, sign, |it| String::from_utf8(chart_csv(it)).unwrap());
            comes_back(&csv, Section::Points, &spec);
            let csv = with_source(&spec, sign, |it| {
                String::from_utf8(materials_csv(it)).unwrap()
            });
            comes_back(&csv, Section::Materials, &spec);
        }
    }
}

fn comes_back(csv: &str, section: Section, spec: &Spec) {
    let sheet = read_csv(csv).unwrap();
    let columns = import::guess(&sheet, section, spec);
    let head = sheet.rows[0].iter().zip(&columns.fields);
    let left_out: Vec<_> = head
        .filter(|(_, field)| field.is_none())
        .map(|(it, _)| it.shown())
        .collect();
    assert_eq!(left_out, [""; 0]);
    let unit = import::guess_unit(&sheet, &columns);
    let mut new_id = || panic!("nothing is new");
    let outcome = import::read(&sheet, section, spec, &columns, unit, &mut new_id);
    assert_eq!(outcome.left, []);
    assert_eq!(outcome.told, []);
    assert_eq!(outcome.spec, *spec);
}

#[test]
fn materials_come_to_what_the_planned_pieces_take() {
    let spec = spec();
    let bytes = with_source(&spec, DecimalSign::Point, |it| materials_xlsx(it).unwrap());
    let mut book = Workbook::read(bytes);
    let sizes = u32::try_from(spec.sizes.sizes.len()).unwrap();
    let pieces = [10.0, 20.0, 30.0, 20.0, 5.0];
    for (column, count) in (11..).zip(pieces) {
        book.type_over("Materials", Place { row: 2, column }, count);
    }
    let mut weighed = 0;
    for (row, material) in (4..).zip(&spec.materials.materials) {
        let needed = Place {
            row,
            column: 11 + sizes + 1,
        };
        let consumption = &material.consumption;
        let taken = spec.sizes.sizes.iter().zip(pieces).map(|(size, count)| {
            consumption
                .of(&size.id)
                .map_or(0.0, crate::spec::Decimal::to_f64)
                * count
        });
        let mut wanted: f64 = taken.sum();
        if let Some(wastage) = &material.wastage {
            let percent = wastage.percent.unwrap().to_f64() / 100.0;
            match wastage.basis {
                Some(crate::spec::document::WastageBasis::LossOfInput) => wanted /= 1.0 - percent,
                _ => wanted *= 1.0 + percent,
            }
        }
        assert!(
            near(book.value("Materials", needed), wanted),
            "{} {wanted}",
            material.letter
        );
        let heavy = Place {
            column: needed.column + 1,
            ..needed
        };
        if let (Some(mass), Some(width)) = (material.fabric.mass, material.fabric.width)
            && book.formula("Materials", row, heavy.column).is_some()
        {
            let metres = width.nm.as_nm() as f64 / 1e9;
            let tube = match &material.fabric.structure {
                Some(crate::spec::document::Structure::Knitted(it)) if it.tubular => 2.0,
                _ => 1.0,
            };
            let kilograms = wanted * metres * tube * mass.to_f64() / 1000.0;
            assert!(
                near(book.value("Materials", heavy), kilograms),
                "{}",
                material.letter
            );
            weighed += 1;
        }
    }
    assert!(weighed > 0);
    let empty = book.data("Materials", 2, 11);
    assert!(empty.is_none_or(|it| *it == Data::Empty));
}
