use proptest::prelude::*;

use super::*;
use crate::sample::ask::Slip;
use crate::sample::contract::{Place, Reading};
use crate::sample::deviation::Limits;
use crate::sample::finding::{Cause, Finding, Lack, RepeatedBy};
use crate::spec::document::{Basis, Direction};

fn id(name: &str) -> ItemId {
    ItemId::new(name)
}

/// In tenths of a millimetre, so that noise has room.
fn tenths(tenths: i64) -> Length {
    Length::nm(tenths * 100_000)
}

/// Ten points of a shell and two of a rib, in three sizes; the base values in millimetres, with
/// what each grows by from size to size.
const POINTS: [(&str, &str, Direction, i64, i64); 12] = [
    ("a", "shell", Direction::Length, 700, 20),
    ("b", "shell", Direction::Length, 620, 15),
    ("c", "shell", Direction::Length, 240, 10),
    ("d", "shell", Direction::Length, 360, 8),
    ("e", "shell", Direction::Length, 90, 0),
    ("f", "shell", Direction::Width, 540, 20),
    ("g", "shell", Direction::Width, 420, 15),
    ("h", "shell", Direction::Width, 180, 6),
    ("i", "shell", Direction::Width, 150, 5),
    ("j", "shell", Direction::Width, 410, 12),
    ("k", "rib", Direction::Length, 60, 0),
    ("l", "rib", Direction::Width, 460, 20),
];

fn contract() -> Contract {
    let column = |steps: i64| {
        let limits = POINTS.map(|(point, _, _, base, step)| {
            let limits = Limits {
                spec: tenths((base + step * steps) * 10),
                minus: tenths(50),
                plus: tenths(50),
                critical: point == "a",
            };
            (id(point), limits)
        });
        BTreeMap::from(limits)
    };
    let place = |(point, fabric, along, _, _): (&str, &str, _, _, _)| Place {
        point: id(point),
        fabric: Some(id(fabric)),
        along: Some(along),
        basis: (point == "f").then_some(Basis::Half),
    };
    Contract {
        base: id("m"),
        sizes: vec![id("s"), id("m"), id("l")],
        points: POINTS.map(place).to_vec(),
        columns: BTreeMap::from([
            (id("s"), column(-1)),
            (id("m"), column(0)),
            (id("l"), column(1)),
        ]),
    }
}

/// What a tape reads beside the truth, by turns, in tenths of a millimetre.
const NOISE: [i64; 12] = [10, -12, 4, -8, 14, -5, 9, -11, 2, 7, -15, 6];

/// A piece of a size, moved at each point by so many tenths of a millimetre.
fn piece(
    contract: &Contract,
    number: usize,
    size: &str,
    moved: impl Fn(&str, i64) -> i64,
) -> Piece {
    let noise = |at: usize| NOISE[(at * 5 + number * 7) % 12];
    let values = contract.points.iter().enumerate().map(|(at, place)| {
        let spec = contract.columns[&id(size)][&place.point].spec;
        let moved = moved(place.point.as_str(), spec.as_nm() / 100_000);
        (place.point.clone(), spec + tenths(moved + noise(at)))
    });
    Piece {
        id: PieceId::new(number.to_string()),
        size: id(size),
        readings: vec![Reading {
            by: "factory".to_owned(),
            values: values.collect(),
        }],
    }
}

fn findings(contract: &Contract, pieces: &[Piece]) -> Vec<Finding> {
    evaluate(contract, pieces, &[])
        .diagnosis
        .expect("it was measured")
        .findings
}

fn causes(pieces: &[Piece]) -> Vec<Cause> {
    findings(&contract(), pieces)
        .iter()
        .map(|it| it.cause)
        .collect()
}

#[test]
fn a_piece_as_it_should_be_has_no_cause_and_nothing_to_measure_again() {
    let contract = contract();
    let evaluation = evaluate(&contract, &[piece(&contract, 1, "m", |_, _| 0)], &[]);
    let diagnosis = evaluation.diagnosis.expect("it was measured");
    assert_eq!(diagnosis.findings, []);
    assert_eq!(diagnosis.again, []);
    assert_eq!(diagnosis.lacks, []);
    assert_eq!(diagnosis.repeatability.source, RepeatedBy::Assumed);
    assert_eq!(diagnosis.repeatability.deviation, Length::nm(1_500_000));
    assert_eq!(
        (evaluation.summary.measured, evaluation.summary.out),
        (12, 0)
    );
}

#[test]
fn a_fabric_that_shrank_along_its_length_is_told_with_the_correction() {
    let contract = contract();
    let shrunk = piece(&contract, 1, "m", |point, spec| match point {
        "a" | "b" | "c" | "d" | "e" => -spec * 4 / 100,
        _ => 0,
    });
    let [finding] = &findings(&contract, &[shrunk])[..] else {
        panic!("one cause");
    };
    assert_eq!(finding.cause, Cause::ProportionalShift);
    assert_eq!(finding.fabric, Some(id("shell")));
    assert_eq!(finding.along, Some(Direction::Length));
    assert_eq!(finding.points, ["a", "b", "c", "d", "e"].map(id));
    let share = finding.figures.share.expect("a share").as_hundredths();
    assert!((-430..=-370).contains(&share), "{share}");
    let factor = finding.figures.correction.expect("a correction");
    assert!((10_385..=10_450).contains(&factor.as_ten_thousandths()));
    assert_eq!(
        (finding.figures.readings, finding.figures.same_side),
        (5, 5)
    );
}

#[test]
fn entries_and_labels_are_put_right_before_the_garment_is_blamed() {
    let contract = contract();
    let mut typed = piece(&contract, 1, "m", |_, _| 0);
    let values = &mut typed.readings[0].values;
    let chest = values[&id("f")];
    values.insert(id("f"), chest.doubled());
    let (one, other) = (values[&id("c")], values[&id("d")]);
    values.insert(id("c"), other);
    values.insert(id("d"), one);
    let found = findings(&contract, std::slice::from_ref(&typed));
    assert_eq!(found.len(), 2, "{found:?}");
    assert_eq!(
        (found[0].cause, found[0].slip),
        (Cause::HalfFull, Some(Slip::Doubled))
    );
    assert_eq!(found[0].points, [id("f")]);
    assert_eq!(found[1].cause, Cause::SwappedPoints);
    assert_eq!(found[1].points, [id("c"), id("d")]);

    let mut label = piece(&contract, 2, "l", |_, _| 0);
    label.size = id("m");
    let found = findings(&contract, &[label]);
    assert_eq!(found[0].cause, Cause::WrongLabel);
    assert_eq!(
        (&found[0].size, &found[0].really),
        (&Some(id("m")), &Some(id("l")))
    );
    assert_eq!(found.len(), 1, "{found:?}");
}

#[test]
fn two_pieces_with_each_others_label_are_told_once() {
    let contract = contract();
    let mut pieces = [
        piece(&contract, 1, "s", |_, _| 0),
        piece(&contract, 2, "m", |_, _| 0),
        piece(&contract, 3, "l", |_, _| 0),
    ];
    pieces[0].size = id("l");
    pieces[2].size = id("s");
    let found = findings(&contract, &pieces);
    assert_eq!(found.len(), 1, "{found:?}");
    assert_eq!(found[0].cause, Cause::SwappedSizes);
    assert_eq!(found[0].pieces, ["1", "3"].map(PieceId::new));
}

#[test]
fn pattern_grading_and_one_size_differ_by_the_sizes_that_show_it() {
    let contract = contract();
    let set = |moved: &dyn Fn(&str, &str) -> i64| {
        ["s", "m", "l"]
            .into_iter()
            .enumerate()
            .map(|(number, size)| piece(&contract, number, size, |point, _| moved(size, point)))
            .collect::<Vec<_>>()
    };
    let base = set(&|_, point| if point == "g" { -120 } else { 0 });
    assert_eq!(causes(&base), [Cause::BasePattern]);
    // Every width grows by twice its step.
    let steps = |size: &str| match size {
        "s" => -1,
        "m" => 0,
        _ => 1,
    };
    let graded = set(&|size, point| {
        let point = POINTS.iter().find(|it| it.0 == point).expect("it is one");
        match point.2 {
            Direction::Width => steps(size) * point.4 * 10,
            Direction::Length => 0,
        }
    });
    assert_eq!(causes(&graded), [Cause::Grading]);
    let one_size = set(&|size, point| {
        let point = POINTS.iter().find(|it| it.0 == point).expect("it is one");
        let off = size == "l" && point.2 == Direction::Length;
        if off { 150 } else { 0 }
    });
    assert_eq!(causes(&one_size), [Cause::SizePattern]);
}

#[test]
fn pieces_of_a_size_that_differ_are_unsteady_and_those_that_agree_are_not() {
    let contract = contract();
    let made = |moved: [i64; 4]| {
        let pieces = (0..4).map(|number| {
            let off = move |point: &str, _| if point == "j" { moved[number] } else { 0 };
            piece(&contract, number, "m", off)
        });
        pieces.collect::<Vec<_>>()
    };
    assert_eq!(causes(&made([150, -150, 140, -140])), [Cause::Unsteady]);
    assert_eq!(causes(&made([150, 150, 140, 140])), [Cause::SinglePoint]);
    assert_eq!(causes(&made([0, 0, 160, 0])), [Cause::OnePiece]);
}

#[test]
fn what_is_barely_out_is_measured_again_and_blamed_on_nobody() {
    let mut contract = contract();
    for column in contract.columns.values_mut() {
        let limits = column.get_mut(&id("l")).expect("it is a point");
        (limits.minus, limits.plus) = (tenths(20), tenths(20));
    }
    let off = piece(
        &contract,
        1,
        "m",
        |point, _| {
            if point == "l" { 25 } else { 0 }
        },
    );
    assert_eq!(
        failed(&contract, std::slice::from_ref(&off)),
        BTreeSet::from([id("l")])
    );
    let evaluation = evaluate(&contract, &[off], &[]);
    let diagnosis = evaluation.diagnosis.expect("it was measured");
    assert_eq!(diagnosis.findings, []);
    assert_eq!(diagnosis.again.len(), 1);
    assert_eq!(diagnosis.again[0].point, id("l"));
    // Two points of rib are too few to say whether it moved, and one piece is one piece.
    let names: Vec<_> = diagnosis.lacks.iter().map(Lack::name).collect();
    assert_eq!(names, ["few_points", "one_size", "one_piece"]);
}

#[test]
fn two_who_differ_by_more_than_half_the_tolerance_agree_first() {
    let contract = contract();
    let mut measured = piece(&contract, 1, "m", |_, _| 0);
    let mut brand = measured.readings[0].clone();
    brand.by = "brand".to_owned();
    let chest = brand.values[&id("f")];
    // Half the tolerance is 2.5 mm: exactly that far apart is still agreed.
    brand.values.insert(id("f"), chest + tenths(250));
    let sleeve = brand.values[&id("b")];
    brand.values.insert(id("b"), sleeve + tenths(25));
    measured.readings.push(brand);
    let evaluation = evaluate(&contract, &[measured], &[]);
    let [dispute] = &evaluation.disputes[..] else {
        panic!("one dispute: {:?}", evaluation.disputes);
    };
    assert_eq!((&dispute.point, dispute.gap()), (&id("f"), tenths(250)));
    assert_eq!(
        (dispute.least.0.as_str(), dispute.most.0.as_str()),
        ("factory", "brand")
    );
    assert_eq!(dispute.allowed, tenths(25));
    // What the last one measured is judged, and nobody is blamed before they agree.
    let judged = evaluation.pieces[0].judged.points[&id("f")].1;
    assert_eq!(
        judged.expect("it was measured").measured,
        chest + tenths(250)
    );
    let diagnosis = evaluation.diagnosis.expect("it was measured");
    assert_eq!(diagnosis.findings, []);
    assert_eq!(diagnosis.again, []);
    assert_eq!(diagnosis.repeatability.source, RepeatedBy::Measurers(12));
}

#[test]
fn what_failed_before_is_watched() {
    let contract = contract();
    let now = piece(
        &contract,
        1,
        "m",
        |point, _| if point == "a" { 200 } else { 0 },
    );
    let earlier = |round: &str, failed: &[&str]| Earlier {
        round: round.to_owned(),
        failed: failed.iter().map(|point| id(point)).collect(),
    };
    let earlier = [earlier("proto", &["a", "c"]), earlier("fit", &["a"])];
    let watch = evaluate(&contract, &[now], &earlier).watch;
    assert_eq!(watch.len(), 2);
    assert_eq!((watch[0].out, watch[0].rounds.len()), (1, 2));
    assert_eq!((watch[1].point.clone(), watch[1].out), (id("c"), 0));
}

#[test]
fn several_pieces_say_how_well_a_value_repeats() {
    let contract = contract();
    let pieces = [1, 2, 3].map(|number| piece(&contract, number, "m", |_, _| 0));
    let diagnosis = evaluate(&contract, &pieces, &[])
        .diagnosis
        .expect("it was measured");
    assert_eq!(diagnosis.repeatability.source, RepeatedBy::Pieces(12));
}

#[test]
fn without_measurements_or_with_an_unknown_size_there_is_no_diagnosis() {
    let contract = contract();
    let mut nothing = piece(&contract, 1, "m", |_, _| 0);
    nothing.readings.clear();
    assert_eq!(evaluate(&contract, &[nothing], &[]).diagnosis, None);
    assert_eq!(evaluate(&contract, &[], &[]).diagnosis, None);
    let mut unknown = piece(&contract, 1, "m", |_, _| 0);
    unknown.size = id("xxl");
    let evaluation = evaluate(&contract, &[unknown], &[]);
    assert_eq!(evaluation.diagnosis, None);
    assert_eq!(evaluation.summary.points, 0);
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(24))]

    /// The order that a chart lists its points in says nothing about the garment.
    #[test]
    fn permuting_the_points_changes_nothing(
        order in Just((0..12).collect::<Vec<usize>>()).prop_shuffle(),
        off in prop::collection::vec(-150i64..150, 12),
    ) {
        let contract = contract();
        let by_point = |point: &str, _: i64| {
            off[POINTS.iter().position(|it| it.0 == point).expect("it is one")]
        };
        let measured = [piece(&contract, 1, "m", by_point)];
        let mut other = contract.clone();
        other.points = order.iter().map(|at| contract.points[*at].clone()).collect();
        let (one, two) = (evaluate(&contract, &measured, &[]), evaluate(&other, &measured, &[]));
        prop_assert_eq!(&one.pieces, &two.pieces);
        prop_assert_eq!(&one.summary, &two.summary);
        let told = |evaluation: &Evaluation| {
            let diagnosis = evaluation.diagnosis.as_ref().expect("it was measured");
            diagnosis
                .findings
                .iter()
                .map(|it| (it.cause, it.points.iter().cloned().collect::<BTreeSet<_>>()))
                .collect::<BTreeSet<_>>()
        };
        prop_assert_eq!(told(&one), told(&two));
    }

    /// Verdicts hang on the difference alone: chart and measurements moved alike are judged alike.
    #[test]
    fn moving_chart_and_piece_alike_changes_no_verdict(
        by in -300i64..3000,
        off in prop::collection::vec(-150i64..150, 12),
    ) {
        let contract = contract();
        let by_point = |point: &str, _: i64| {
            off[POINTS.iter().position(|it| it.0 == point).expect("it is one")]
        };
        let measured = piece(&contract, 1, "m", by_point);
        let mut moved = (contract.clone(), measured.clone());
        for limits in moved.0.columns.values_mut().flat_map(BTreeMap::values_mut) {
            limits.spec = limits.spec + tenths(by);
        }
        for value in moved.1.readings[0].values.values_mut() {
            *value = *value + tenths(by);
        }
        let verdicts = |contract: &Contract, piece: &Piece| {
            let evaluation = evaluate(contract, std::slice::from_ref(piece), &[]);
            let judged = evaluation.pieces[0].judged.points.values();
            judged
                .map(|(_, deviation)| deviation.map(|it| (it.d, it.verdict)))
                .collect::<Vec<_>>()
        };
        prop_assert_eq!(verdicts(&contract, &measured), verdicts(&moved.0, &moved.1));
    }
}
