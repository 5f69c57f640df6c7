use super::*;

fn mm(tenths: i64) -> Length {
    Length::nm(tenths * 1_000_000)
}

fn id(name: &str) -> ItemId {
    ItemId::new(name)
}

fn limits(spec: i64) -> Limits {
    Limits {
        spec: mm(spec),
        minus: mm(5),
        plus: mm(5),
        critical: false,
    }
}

#[test]
fn a_slip_of_the_hand_is_recognised_by_its_ratio() {
    // Half a chest of 54.0 cm.
    for (typed, slip_of) in [
        (1080, Some(Slip::Doubled)),
        (270, Some(Slip::Halved)),
        (1372, Some(Slip::CmAsInch)), // 54 in
        (213, Some(Slip::InchAsCm)),  // 21.3 in read off
        (5400, Some(Slip::TenTimes)),
        (54, Some(Slip::Tenth)),
        (540, None),
        (560, None), // out of tolerance, and a plain error
        (400, None),
        (0, None),
    ] {
        assert_eq!(slip(&limits(540), mm(typed)), slip_of, "{typed} mm");
    }
}

#[test]
fn three_per_cent_of_the_ratio_and_no_more_is_near() {
    // Worked by hand: twice 500 mm is 1000 mm, ± 3 % is 970 to 1030 mm.
    let nanometre = Length::nm(1);
    for edge in [970, 1030] {
        assert_eq!(slip(&limits(500), mm(edge)), Some(Slip::Doubled), "{edge}");
    }
    assert_eq!(slip(&limits(500), mm(970) - nanometre), None);
    assert_eq!(slip(&limits(500), mm(1030) + nanometre), None);
}

#[test]
fn what_is_within_tolerance_is_never_asked_about() {
    // A bartack of 6 mm, give or take 6 mm: 12 mm is twice that, and passes.
    let bartack = Limits {
        minus: mm(6),
        plus: mm(6),
        ..limits(6)
    };
    assert_eq!(slip(&bartack, mm(12)), None);
    assert_eq!(slip(&limits(0), mm(100)), None);
    assert_eq!(slip(&limits(-10), mm(-20)), None);
}

/// Five points in three sizes: chest, length, sleeve, hem and a zip that is the same in all.
fn columns() -> BTreeMap<ItemId, Column> {
    let column = |chest, length, sleeve, hem| {
        BTreeMap::from([
            (id("chest"), limits(chest)),
            (id("length"), limits(length)),
            (id("sleeve"), limits(sleeve)),
            (id("hem"), limits(hem)),
            (id("zip"), limits(200)),
        ])
    };
    BTreeMap::from([
        (id("s"), column(520, 690, 620, 480)),
        (id("m"), column(540, 710, 635, 500)),
        (id("l"), column(560, 730, 650, 520)),
    ])
}

fn piece(chest: i64, length: i64, sleeve: i64, hem: i64) -> BTreeMap<ItemId, Length> {
    BTreeMap::from([
        (id("chest"), mm(chest)),
        (id("length"), mm(length)),
        (id("sleeve"), mm(sleeve)),
        (id("hem"), mm(hem)),
        (id("zip"), mm(201)),
    ])
}

#[test]
fn a_piece_that_fits_another_size_better_is_asked_about() {
    let of = |said: &str, values| asks(&columns(), &id(said), &values);
    // An L with the label of an M.
    assert_eq!(
        of("m", piece(558, 731, 651, 519)),
        [Ask::OtherSize { size: id("l") }]
    );
    assert_eq!(of("l", piece(558, 731, 651, 519)), []);
    // An S whose sleeve is out even for an S.
    assert_eq!(
        of("m", piece(518, 689, 612, 481)),
        [Ask::OtherSize { size: id("s") }]
    );
    // Smaller than every size: none fits it, so none is named.
    assert_eq!(of("m", piece(510, 680, 610, 470)), []);
}

#[test]
fn one_point_that_is_out_is_no_other_size() {
    // Only the chest is an L's.
    assert_eq!(asks(&columns(), &id("m"), &piece(560, 711, 634, 501)), []);
}

#[test]
fn a_few_values_show_no_pattern() {
    let mut few = piece(560, 730, 650, 520);
    few.remove(&id("hem"));
    // Three points differ between the sizes; the zip does not count.
    assert_eq!(asks(&columns(), &id("m"), &few), []);
}

#[test]
fn every_value_equal_to_the_chart_looks_copied() {
    let mut copied = piece(540, 710, 635, 500);
    // One that differs by a millimetre, within tolerance: somebody measured.
    assert_eq!(asks(&columns(), &id("m"), &copied), []);
    copied.insert(id("zip"), mm(200));
    assert_eq!(asks(&columns(), &id("m"), &copied), [Ask::Copied]);
    copied.remove(&id("chest"));
    assert_eq!(asks(&columns(), &id("m"), &copied), [Ask::Copied]);
    // Three that are right may well have been measured.
    copied.remove(&id("length"));
    assert_eq!(asks(&columns(), &id("m"), &copied), []);
}

#[test]
fn a_slip_in_one_point_is_named() {
    let mut values = piece(541, 709, 634, 501);
    values.insert(id("hem"), mm(1001));
    assert_eq!(
        asks(&columns(), &id("m"), &values),
        [Ask::Slip {
            point: id("hem"),
            slip: Slip::Doubled
        }]
    );
}

#[test]
fn a_size_that_is_not_in_the_chart_has_nothing_to_compare_with() {
    assert_eq!(asks(&columns(), &id("xxl"), &piece(540, 710, 635, 500)), []);
}
