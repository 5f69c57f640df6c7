use super::*;
use crate::spec::document::Part;
use crate::spec::rule::{self, Names};

fn cm(text: &str) -> Entered {
    Entered::read(text, Unit::Cm).unwrap()
}

fn spec(codes: &[&str], base: &str, points: &[(&str, &str, &str)]) -> Spec {
    let mut spec = Spec::default();
    spec.header.unit = Some(Unit::Cm);
    spec.sizes.sizes = codes
        .iter()
        .map(|code| Size {
            id: ItemId::new(format!("size-{}-{code}", codes.len())),
            code: (*code).to_owned(),
            ..Size::default()
        })
        .collect();
    let found = spec.sizes.sizes.iter().find(|size| size.code == base);
    spec.header.base_size = found.map(|size| size.id.clone());
    for (letter, value, _) in points {
        spec.points.points.push(Point {
            id: ItemId::new(format!("point-{letter}")),
            letter: (*letter).to_owned(),
            name: format!("Point {letter}"),
            base: Some(cm(value)),
            step: Some(cm("0.5")),
            ..Point::default()
        });
    }
    let rules: Vec<Grade> = points
        .iter()
        .map(|(_, _, typed)| read(&spec, typed))
        .collect();
    for (point, rule) in spec.points.points.iter_mut().zip(rules) {
        point.grade = Some(rule);
    }
    spec
}

fn names(spec: &Spec) -> Names<'_> {
    let points = spec.points.points.iter();
    Names {
        sizes: &spec.sizes.sizes,
        points: points.map(|it| (&it.id, it.letter.as_str())).collect(),
        unit: spec.header.unit,
    }
}

fn read(spec: &Spec, typed: &str) -> Grade {
    rule::read(typed, &names(spec)).unwrap()
}

/// All points of the one, carried into the other.
fn all(from: &Spec, to: &Spec) -> Vec<Carried> {
    let chosen: Vec<ItemId> = from.points.points.iter().map(|it| it.id.clone()).collect();
    some(from, to, &chosen)
}

fn some(from: &Spec, to: &Spec, chosen: &[ItemId]) -> Vec<Carried> {
    let mut count = 0;
    carry(from, to, chosen, &mut || {
        count += 1;
        ItemId::new(format!("new-{count}"))
    })
}

/// Base and rule of a carried point, as the grid would write them.
fn shown(to: &Spec, carried: &[Carried]) -> Vec<(String, String, String)> {
    let mut after = to.clone();
    after
        .points
        .points
        .extend(carried.iter().map(|it| it.point.clone()));
    let names = names(&after);
    let text = |entered: Option<Entered>| {
        entered.map_or(String::new(), |it| rule::write_length(it, names.unit))
    };
    let line = |it: &Carried| {
        let rule = it.point.grade.as_ref();
        let rule = rule.map_or(String::new(), |rule| rule::write(rule, &names));
        (it.point.letter.clone(), text(it.point.base), rule)
    };
    carried.iter().map(line).collect()
}

fn line(letter: &str, base: &str, rule: &str) -> (String, String, String) {
    (letter.to_owned(), base.to_owned(), rule.to_owned())
}

const FROM: [(&str, &str, &str); 4] = [
    ("A", "50", "S-L 2, L-XL 3"),
    ("B", "8", "same"),
    ("C", "60", "S=58, M=60, L=63, XL=65"),
    ("D", "48.5", "=A - 1.5"),
];

#[test]
fn between_the_same_sizes_rules_stay_and_letters_go_on() {
    let from = spec(&["S", "M", "L", "XL"], "M", &FROM);
    let mut to = spec(&["s ", "M", "L", "XL"], "M", &[("F", "1", "same")]);
    to.sizes
        .sizes
        .iter_mut()
        .for_each(|it| it.id = ItemId::new(format!("other-{}", it.code)));
    to.header.base_size = Some(ItemId::new("other-M"));
    let carried = all(&from, &to);
    assert!(
        carried
            .iter()
            .all(|it| it.asks.is_empty() && it.left.is_empty())
    );
    let expected = [
        line("G", "50", "s -L 2, L-XL 3"),
        line("H", "8", "same"),
        line("I", "60", "s =58, M=60, L=63, XL=65"),
        line("J", "48.5", "=G - 1.5"),
    ];
    assert_eq!(shown(&to, &carried), expected);
    let mut after = to.clone();
    after
        .points
        .points
        .extend(carried.into_iter().map(|it| it.point));
    let values = |spec: &Spec, at: usize| grade(spec).points[at].result.clone().unwrap();
    for place in 0..FROM.len() {
        assert_eq!(values(&after, place + 1), values(&from, place));
    }
}

#[test]
fn fewer_sizes_take_the_steps_between_them_and_another_base_its_value() {
    let from = spec(&["S", "M", "L", "XL"], "M", &FROM);
    let to = spec(&["S", "L", "XL"], "L", &[]);
    let carried = all(&from, &to);
    assert!(carried.iter().all(|it| it.asks.is_empty()), "{carried:?}");
    let expected = [
        line("A", "52", "S-L 4, L-XL 3"),
        line("B", "8", "same"),
        line("C", "63", "S=58, L=63, XL=65"),
        line("D", "50.5", "=A - 1.5"),
    ];
    assert_eq!(shown(&to, &carried), expected);
}

#[test]
fn a_size_that_is_not_there_is_asked_for() {
    let from = spec(&["S", "M", "L", "XL"], "M", &FROM);
    // One size more, the order turned, two sizes of one code.
    for codes in [
        &["S", "M", "L", "2XL"][..],
        &["L", "M", "S"],
        &["S", "M", "M"],
    ] {
        let to = spec(codes, "S", &[]);
        let carried = all(&from, &to);
        let asks: Vec<&[Ask]> = carried.iter().map(|it| it.asks.as_slice()).collect();
        assert_eq!(
            asks,
            [&[Ask::Grade][..], &[], &[Ask::Grade], &[]],
            "{codes:?}"
        );
        assert_eq!(shown(&to, &carried)[0], line("A", "48", ""));
    }
    let to = spec(&["36", "38"], "38", &[]);
    let carried = all(&from, &to);
    assert_eq!(carried[0].asks, [Ask::Base, Ask::Grade]);
    assert_eq!(carried[1].asks, []);
    assert_eq!(carried[3].asks, [Ask::Base]);
    assert_eq!(shown(&to, &carried)[0], line("A", "", ""));
}

#[test]
fn a_rule_that_follows_a_point_left_behind_is_asked_for() {
    let from = spec(&["S", "M", "L", "XL"], "M", &FROM);
    let carried = some(
        &from,
        &from,
        &[ItemId::new("point-D"), ItemId::new("nothing")],
    );
    assert_eq!(carried.len(), 1);
    assert_eq!(carried[0].asks, [Ask::Source]);
    assert_eq!(shown(&from, &carried), [line("E", "48.5", "")]);
}

#[test]
fn what_has_no_place_here_is_told() {
    let mut from = spec(&["S", "M"], "M", &[("A", "50", "2")]);
    let part = |id: &str, name: &str| Part {
        id: ItemId::new(id),
        name: name.to_owned(),
        ..Part::default()
    };
    from.colourways.parts = vec![part("p-1", "Rib")];
    let point = &mut from.points.points[0];
    point.part = Some(ItemId::new("p-1"));
    point.stretched_min = Some(cm("70"));
    let own = Tolerance {
        minus: Some(cm("1")),
        plus: None,
    };
    point.tolerances.insert(ItemId::new("size-2-S"), own);
    let mut to = spec(&["M", "L"], "L", &[]);
    to.header.unit = Some(Unit::Inch);
    let carried = all(&from, &to);
    let left = [Left::Stretched, Left::Part, Left::Tolerances, Left::Step];
    assert_eq!(carried[0].left, left);
    assert_eq!(
        carried[0].point.step,
        Some(Entered::read("1/8", Unit::Inch).unwrap())
    );
    to = spec(&["S", "M"], "S", &[]);
    to.colourways.parts = vec![part("p-9", " rib")];
    let carried = all(&from, &to);
    assert_eq!(carried[0].left, []);
    assert_eq!(carried[0].point.part, Some(ItemId::new("p-9")));
    assert_eq!(carried[0].point.stretched_min, Some(cm("68")));
    assert_eq!(carried[0].point.tolerances.len(), 1);
}
