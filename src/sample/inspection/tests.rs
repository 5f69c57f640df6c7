use super::curve::{binomial, hypergeometric, poisson};
use super::*;

/// The lines of a published table below its heads.
fn lines(text: &'static str) -> impl Iterator<Item = Vec<&'static str>> {
    let lines = text.lines().filter(|line| !line.starts_with('#'));
    lines.skip(1).map(|line| line.split(',').collect())
}

#[test]
fn every_code_letter_is_the_tables() {
    let mut cells = 0;
    for line in lines(include_str!(
        "../../../tests/reference/sampling_code_letters.csv"
    )) {
        let least: u32 = line[0].parse().unwrap();
        // The last line is open.
        let most: u32 = line[1].parse().unwrap_or(u32::MAX);
        for (level, letter) in Level::ALL.into_iter().zip(&line[2..]) {
            for lot in [least, least.midpoint(most), most] {
                assert_eq!(
                    code_letter(lot, level).map(String::from).as_deref(),
                    Some(*letter),
                    "lot {lot}, level {}",
                    level.name()
                );
                cells += 1;
            }
        }
    }
    assert_eq!(cells, 15 * 7 * 3);
}

#[test]
fn every_plan_is_the_tables_with_the_sample_size_that_its_arrow_leads_to() {
    let mut rows = 0;
    for line in lines(include_str!(
        "../../../tests/reference/sampling_single_normal.csv"
    )) {
        let [letter, n, aql, shown, used, used_n, ac, re] = line[..] else {
            panic!("eight columns: {line:?}");
        };
        let number = |text: &str| text.parse::<u32>().unwrap();
        let letter = letter.chars().next().unwrap();
        let aql = Aql::from_name(aql).unwrap();
        assert!(LETTERS.contains(&(letter, number(n))), "{line:?}");
        let expected = match shown {
            "down" => Cell::Down,
            "up" => Cell::Up,
            _ => Cell::Plan(number(ac)),
        };
        assert_eq!(cell(letter, aql), Some(expected), "{line:?}");
        // A lot of this letter that is larger than any sample of it.
        let (lot, level) = lot_of(letter);
        let plan = plan(lot, level, aql).unwrap();
        assert_eq!(plan.code, letter);
        assert_eq!(plan.letter.to_string(), used, "{line:?}");
        assert_eq!(plan.accept, number(ac), "{line:?}");
        assert_eq!(plan.reject, number(re), "{line:?}");
        assert_eq!(plan.sample, number(used_n).min(lot), "{line:?}");
        assert_eq!(plan.whole_lot, number(used_n) >= lot, "{line:?}");
        rows += 1;
    }
    assert_eq!(rows, 3 * LETTERS.len());
}

/// The largest lot, up to a million, that some level gives this letter.
fn lot_of(letter: char) -> (u32, Level) {
    let lots = CODE_LETTERS
        .iter()
        .rev()
        .map(|(most, _)| (*most).min(1_000_000));
    let mut all = lots.flat_map(|lot| Level::ALL.map(|level| (lot, level)));
    all.find(|(lot, level)| code_letter(*lot, *level) == Some(letter))
        .expect("every letter is somewhere in the table")
}

#[test]
fn a_small_lot_is_inspected_whole() {
    // Letter D at 1.0: an arrow down to E, 13 pieces, and the lot has 12.
    let small = plan(12, Level::III, Aql::A1_0).unwrap();
    assert_eq!((small.code, small.letter), ('C', 'E'));
    assert!(small.whole_lot);
    assert_eq!((small.sample, small.accept), (12, 0));
    let exactly = plan(13, Level::III, Aql::A1_0).unwrap();
    assert!(exactly.whole_lot, "as many as the lot has is all of it");
    let more = plan(14, Level::III, Aql::A1_0).unwrap();
    assert!(!more.whole_lot);
    assert_eq!(more.sample, 13);
    assert_eq!(plan(1, Level::II, Aql::A2_5).unwrap().sample, 1);
    assert_eq!(plan(0, Level::II, Aql::A2_5), None);
}

#[test]
fn a_column_that_was_not_compared_says_so() {
    for aql in Aql::ALL {
        let compared = ["1.0", "2.5", "4.0"].contains(&aql.name());
        assert_eq!(aql.status() == Status::Verified, compared);
        // Whatever the column, each letter leads somewhere.
        for level in Level::ALL {
            for (most, _) in CODE_LETTERS {
                let plan = plan(most, level, aql).unwrap();
                assert_eq!(plan.reject, plan.accept + 1);
            }
        }
    }
}

#[test]
fn one_critical_defect_rejects_whatever_else_was_found() {
    let major = plan(1200, Level::II, Aql::A2_5).unwrap();
    let minor = plan(1200, Level::II, Aql::A4_0).unwrap();
    let found = |critical, major, minor| Found {
        critical,
        major,
        minor,
    };
    assert_eq!(rejections(&major, &minor, found(0, 5, 7)), []);
    assert_eq!(
        rejections(&major, &minor, found(1, 0, 0)),
        [Rejection::Critical { found: 1 }]
    );
    assert_eq!(
        rejections(&major, &minor, found(2, 6, 8)),
        [
            Rejection::Critical { found: 2 },
            Rejection::Major {
                found: 6,
                accept: 5
            },
            Rejection::Minor {
                found: 8,
                accept: 7
            },
        ]
    );
}

#[test]
fn the_characteristic_is_the_computed_one() {
    let mut rows = 0;
    for line in lines(include_str!("../../../tests/reference/oc_values.csv")) {
        // From the right: the plan's name may hold anything.
        let [n, ac, percent, by_binomial, by_poisson, lot, bad, exact] = line[line.len() - 8..]
        else {
            panic!("eight columns: {line:?}");
        };
        let whole = |text: &str| text.parse::<u32>().unwrap();
        let share = |text: &str| text.parse::<f64>().unwrap();
        let (n, ac, p) = (whole(n), whole(ac), share(percent) / 100.0);
        let near = |got: f64, expected: &str| {
            let expected = share(expected);
            assert!((got - expected).abs() < 1e-6, "{line:?}: {got}");
        };
        near(binomial(n, ac, p), by_binomial);
        near(poisson(n, ac, p), by_poisson);
        near(hypergeometric(whole(lot), whole(bad), n, ac), exact);
        rows += 1;
    }
    assert_eq!(rows, 71);
}

#[test]
fn the_exact_characteristic_keeps_its_sense_at_the_ends() {
    // Every piece is defective, every piece is drawn, more are let pass than there are.
    assert!(hypergeometric(50, 50, 13, 1) < 1e-12);
    assert!((hypergeometric(50, 50, 13, 13) - 1.0).abs() < 1e-12);
    assert!((hypergeometric(20, 3, 20, 3) - 1.0).abs() < 1e-12);
    assert!(hypergeometric(20, 4, 20, 3) < 1e-12);
    assert!((hypergeometric(20, 0, 5, 0) - 1.0).abs() < 1e-12);
    // 10 pieces, 8 of them bad, 4 drawn: at least two are bad. By hand: C(8,2)·C(2,2) / C(10,4)
    // = 28 / 210 for exactly two.
    assert!((hypergeometric(10, 8, 4, 2) - 28.0 / 210.0).abs() < 1e-12);
    assert!((binomial(5, 0, 1.0)).abs() < 1e-12);
    assert!((binomial(5, 5, 1.0) - 1.0).abs() < 1e-12);
}

#[test]
fn the_curve_of_a_plan_falls_from_certainty() {
    let plan = plan(1200, Level::II, Aql::A2_5).unwrap();
    let curve = plan.curve(0.2, 40);
    assert_eq!(curve.len(), 41);
    assert!((curve[0].1 - 1.0).abs() < 1e-12);
    assert!(curve.windows(2).all(|pair| pair[1].1 < pair[0].1));
    assert!((plan.acceptance(0) - 1.0).abs() < 1e-12);
    assert!(plan.acceptance(240) < 0.01);
}
