use super::*;
use crate::spec::Unit;
use crate::spec::chart::Allowed;

/// Tenths of a centimetre.
fn mm(tenths: i64) -> Length {
    Length::nm(tenths * 1_000_000)
}

fn limits(spec: i64, minus: i64, plus: i64) -> Limits {
    Limits {
        spec: mm(spec),
        minus: mm(minus),
        plus: mm(plus),
        critical: false,
    }
}

fn id(name: &str) -> ItemId {
    ItemId::new(name)
}

#[test]
fn exactly_on_tolerance_passes_and_one_nanometre_more_does_not() {
    let chest = limits(540, 10, 5);
    assert_eq!(chest.judge(mm(545)).verdict, Verdict::Within);
    assert_eq!(chest.judge(mm(530)).verdict, Verdict::Within);
    let nanometre = Length::nm(1);
    assert_eq!(
        chest.judge(mm(545) + nanometre).verdict,
        Verdict::Over { by: nanometre }
    );
    assert_eq!(
        chest.judge(mm(530) - nanometre).verdict,
        Verdict::Under { by: nanometre }
    );
}

#[test]
fn each_side_has_its_own_tolerance_and_says_by_how_much_it_is_missed() {
    let chest = limits(540, 10, 5);
    let over = chest.judge(mm(552));
    assert_eq!(over.d, mm(12));
    assert_eq!(over.verdict, Verdict::Over { by: mm(7) });
    assert_eq!(over.verdict.mark(), "▲");
    let under = chest.judge(mm(528));
    assert_eq!(under.d, mm(-12));
    assert_eq!(under.verdict, Verdict::Under { by: mm(2) });
    assert_eq!(under.verdict.mark(), "▼");
}

#[test]
fn with_a_zero_tolerance_any_deviation_is_out() {
    let zip = limits(200, 0, 0);
    assert_eq!(zip.judge(mm(200)).verdict, Verdict::Within);
    assert_eq!(zip.judge(mm(201)).verdict, Verdict::Over { by: mm(1) });
    assert_eq!(zip.judge(mm(199)).verdict, Verdict::Under { by: mm(1) });
    assert_eq!(zip.judge(mm(201)).used, None);
    // On one side only: shorter may be, longer may not.
    let cord = limits(200, 5, 0);
    assert_eq!(cord.judge(mm(196)).verdict, Verdict::Within);
    assert!(cord.judge(mm(201)).verdict.is_out());
}

#[test]
fn the_use_of_the_tolerance_never_rounds_what_is_out_into_what_passes() {
    let chest = limits(540, 10, 5);
    let permille = |measured| chest.judge(measured).used.map(Use::permille);
    assert_eq!(permille(mm(540)), Some(0));
    assert_eq!(permille(mm(545)), Some(1000));
    assert_eq!(permille(mm(535)), Some(500));
    assert_eq!(permille(mm(545) + Length::nm(1)), Some(1001));
    // A third of the tolerance: rounded up.
    assert_eq!(
        limits(100, 3, 3).judge(mm(101)).used.map(Use::permille),
        Some(334)
    );
}

#[test]
fn half_an_inch_is_judged_exactly() {
    // 28 1/2 in with 1/4 in either way; 1/64 in = 396 875 nm.
    let sixty_fourths = |n: i64| Length::nm(n * 396_875);
    let inseam = Limits {
        spec: sixty_fourths(28 * 64 + 32),
        minus: sixty_fourths(16),
        plus: sixty_fourths(16),
        critical: true,
    };
    assert_eq!(
        inseam.judge(sixty_fourths(28 * 64 + 48)).verdict,
        Verdict::Within
    );
    assert_eq!(
        inseam.judge(sixty_fourths(28 * 64 + 49)).verdict,
        Verdict::Over {
            by: sixty_fourths(1)
        }
    );
}

fn column() -> Column {
    BTreeMap::from([
        (id("a"), limits(540, 10, 10)),
        (
            id("b"),
            Limits {
                critical: true,
                ..limits(720, 5, 5)
            },
        ),
        (id("c"), limits(200, 0, 0)),
    ])
}

#[test]
fn a_round_is_summed_up_over_its_pieces() {
    let first = BTreeMap::from([(id("a"), mm(545)), (id("b"), mm(730)), (id("c"), mm(200))]);
    // The second has one value more than the chart has points, and two less.
    let second = BTreeMap::from([(id("b"), mm(714)), (id("removed"), mm(1))]);
    let pieces = [judge(&column(), &first), judge(&column(), &second)];
    assert_eq!(
        Summary::of(&pieces),
        Summary {
            points: 6,
            measured: 4,
            missing: 2,
            out: 2,
            critical_out: BTreeMap::from([(id("b"), 2)]),
        }
    );
    assert_eq!(Summary::of(&pieces[..1]).out, 1);
    let nothing = judge(&column(), &BTreeMap::new());
    assert_eq!(Summary::of([&nothing]).missing, 3);
}

#[test]
fn the_columns_come_from_the_frozen_chart_and_not_from_the_draft() {
    let row = |point: &str, values: [i64; 2]| Row {
        point: id(point),
        values: values.map(mm).to_vec(),
        minus: mm(5),
        plus: mm(10),
        step: mm(1),
        tolerances: BTreeMap::new(),
        pair_limit: None,
        stretched: Vec::new(),
    };
    let mut chart = Chart {
        unit: Unit::Cm,
        base_size: id("m"),
        sizes: vec![id("m"), id("l")],
        rows: vec![row("a", [540, 560]), row("b", [720, 735])],
        lengths: Vec::new(),
    };
    let wider = Allowed {
        minus: mm(8),
        plus: mm(12),
    };
    chart.rows[0].tolerances.insert(id("l"), wider);
    let mut spec = Spec::default();
    spec.points.points = serde_json::from_value(serde_json::json!([
        {"id": "a", "letter": "A", "name": "Chest"},
        {"id": "b", "letter": "B", "name": "Length", "critical": true,
         "base": {"nm": 999_000_000, "unit": "cm"}},
    ]))
    .expect("points");
    let columns = columns(&spec, &chart);
    assert_eq!(columns.len(), 2);
    assert_eq!(
        columns[&id("l")],
        BTreeMap::from([
            (id("a"), limits(560, 8, 12)),
            (
                id("b"),
                Limits {
                    critical: true,
                    ..limits(735, 5, 10)
                }
            ),
        ])
    );
    assert_eq!(columns[&id("m")][&id("a")], limits(540, 5, 10));
}

#[test]
fn two_sides_are_apart_beyond_half_the_wider_tolerance() {
    let chest = limits(540, 10, 4);
    assert!(!apart(&chest, mm(540), mm(545)));
    assert!(!apart(&chest, mm(545), mm(540)));
    assert!(apart(&chest, mm(540), mm(545) + Length::nm(1)));
    assert!(apart(&limits(200, 0, 0), mm(200), mm(201)));
    assert!(!apart(&limits(200, 0, 0), mm(201), mm(201)));
}
