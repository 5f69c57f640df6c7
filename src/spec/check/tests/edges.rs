//! Where a check just begins, on the sides that its case does not stand on, and what its sentence
//! is told.

use super::*;

fn has(code: Code, edit: impl FnOnce(&mut Spec)) -> bool {
    after(edit).iter().any(|finding| finding.code == code)
}

/// The facts of the one finding of this code.
fn facts(code: Code, edit: impl FnOnce(&mut Spec)) -> Vec<(&'static str, Fact)> {
    let findings = after(edit).into_iter();
    let mut of_code = findings.filter(|finding| finding.code == code);
    let facts = of_code.next().expect("it is found").facts;
    assert_eq!(of_code.next(), None);
    facts
}

fn length(text: &str) -> Fact {
    Fact::Length(inches(text).unwrap().nm)
}

#[test]
fn a_mark_is_outside_on_either_axis_beyond_the_edge() {
    for (x, y, outside) in [
        (10_000, 10_000, false),
        (10_001, 0, true),
        (0, 10_001, true),
        (10_001, 10_001, true),
    ] {
        let marker = has(Code::MarkerOutside, |s| {
            let marker = &mut s.drawings.drawings[0].markers[0];
            (marker.x, marker.y) = (x, y);
        });
        assert_eq!(marker, outside, "{x} {y}");
        let spot = Spot { x, y };
        let inside = Spot { x: 5, y: 5 };
        for (from, to, via) in [
            (spot, inside, None),
            (inside, spot, None),
            (inside, inside, Some(spot)),
        ] {
            let line = has(Code::DimensionOutside, |s| {
                s.drawings.drawings[0].lines.push(DimensionLine {
                    id: id("dimension-1"),
                    item: id("point-a"),
                    from,
                    to,
                    via,
                });
            });
            assert_eq!(line, outside, "{from:?} {to:?} {via:?}");
        }
        let blow_up = has(Code::DimensionOutside, |s| {
            let drawing = &mut s.drawings.drawings[0];
            drawing.blow_ups.push(BlowUp {
                id: id("blow-up-1"),
                drawing: drawing.id.clone(),
                at: spot,
                radius: 100,
            });
        });
        assert_eq!(blow_up, outside, "{x} {y}");
    }
}

#[test]
fn a_raster_without_a_size_has_no_resolution() {
    let codes = |width: &str, height: &str| {
        let findings = after(|s| {
            let artwork = artwork(s);
            artwork.form = Some(ArtworkForm::Raster);
            artwork.pixels_across = Some(100);
            artwork.pixels_down = Some(100);
            artwork.bands[0].width = inches(width);
            artwork.bands[0].height = inches(height);
        });
        findings.iter().map(|it| it.code).collect::<Vec<_>>()
    };
    assert_eq!(codes("0", "0"), [Code::ArtworkSizeMissing]);
    // The side that has one tells it.
    let both = [Code::ArtworkSizeMissing, Code::ArtworkCoarse];
    for (width, height) in [("0", "1"), ("1", "0")] {
        let mut found = codes(width, height);
        found.sort_by_key(|code| *code != Code::ArtworkSizeMissing);
        assert_eq!(found, both);
    }
    // 100 dots on a third of an inch are 300 on an inch.
    assert!(!codes("5/16", "5/16").contains(&Code::ArtworkCoarse));
    assert!(codes("5/16", "3/8").contains(&Code::ArtworkCoarse));
}

#[test]
fn every_method_holds_letters_of_its_own_height() {
    for (method, least) in [
        (ArtworkMethod::Embroidery, 50),
        (ArtworkMethod::Applique, 50),
        (ArtworkMethod::Deboss, 30),
        (ArtworkMethod::ScreenPrint, 20),
        (ArtworkMethod::DigitalPrint, 20),
        (ArtworkMethod::Sublimation, 20),
        (ArtworkMethod::WovenPatch, 15),
        (ArtworkMethod::HeatTransfer, 15),
        (ArtworkMethod::Other, 0),
    ] {
        let small = |tenths: i64| {
            has(Code::TextTooSmall, |s| {
                artwork(s).method = Some(method);
                artwork(s).smallest_text = Some(Entered {
                    nm: Length::nm(tenths * 100_000),
                    unit: Unit::Mm,
                });
            })
        };
        assert!(!small(least), "{method:?}");
        assert_eq!(small(least - 1), least > 0, "{method:?}");
    }
}

#[test]
fn a_cell_is_told_by_the_code_of_its_colourway_else_by_its_name() {
    let label = |code: &str| {
        let facts = facts(Code::CellEmpty, |s| {
            s.colourways.colourways[1].code = code.to_owned();
            let chalk = s.colourways.cells.get_mut(&id("colourway-chalk"));
            chalk.unwrap().remove(&id("part-1"));
        });
        let label = facts.into_iter().find(|(name, _)| *name == "colourway");
        label.unwrap().1
    };
    assert_eq!(label("CHALK"), "CHALK".into());
    assert_eq!(label(" "), "Chalk".into());
}

#[test]
fn steps_that_rounding_makes_uneven_are_told_with_the_exact_one() {
    let facts = facts(Code::StepsUneven, |s| {
        point(s, "E").grade = segments(&[("size-xs", "size-xl", "3/16")]);
    });
    let told: Vec<_> = facts[3..].to_vec();
    let exact = told.iter().find(|(name, _)| *name == "exact");
    assert_eq!(exact, Some(&("exact", length("3/16"))));
    let steps: Vec<_> = told
        .iter()
        .filter(|(name, _)| ["before", "after"].contains(name))
        .map(|(_, fact)| fact.clone())
        .collect();
    let mut sorted = steps.clone();
    sorted.sort_by_key(|fact| *fact != length("1/8"));
    assert_eq!(sorted, [length("1/8"), length("1/4")], "{facts:?}");
}

#[test]
fn sizes_that_shrink_overlap_like_those_that_grow() {
    // Each size an inch below the one before: the larger of two comes first.
    let overlaps = |size: &'static str, minus: &'static str, plus: &'static str| {
        has(Code::ToleranceOverlaps, |s| {
            let a = point(s, "A");
            a.grade = segments(&[("size-xs", "size-xl", "-1")]);
            let own = Tolerance {
                minus: inches(minus),
                plus: inches(plus),
            };
            a.tolerances.insert(id(size), own);
        })
    };
    assert!(overlaps("size-xs", "5/8", "0"));
    assert!(!overlaps("size-xs", "9/16", "5/8"));
    assert!(overlaps("size-xl", "0", "5/8"));
    assert!(!overlaps("size-xl", "5/8", "9/16"));
    // Sizes that are equal cannot be told apart anyway.
    assert!(!has(Code::ToleranceOverlaps, |s| {
        point(s, "A").grade = Some(Grade::Same {});
    }));
}

#[test]
fn a_width_is_suspected_against_the_usual_growth_of_the_wide_ones() {
    // Way round, from XS to XL: five widths that grow so many inches each.
    let suspected = |growths: [&'static str; 5]| {
        let findings = after(|s| {
            for (letter, growth) in ["A", "B", "D", "E", "F"].iter().zip(growths) {
                let point = point(s, letter);
                point.basis = Some(Basis::Full);
                point.direction = Some(Direction::Width);
                point.base = inches("40");
                point.step = inches("1/16");
                let step = Entered {
                    nm: Length::nm(inches(growth).unwrap().nm.as_nm() / 4),
                    unit: Unit::Inch,
                };
                let segment = Segment {
                    from: id("size-xs"),
                    to: id("size-xl"),
                    step,
                };
                point.grade = Some(Grade::Segments {
                    segments: vec![segment],
                });
            }
        });
        let of_code = findings
            .iter()
            .filter(|it| it.code == Code::GradeHalfOrFull);
        let items = of_code.map(|it| it.item.as_ref().unwrap().to_string());
        items.collect::<Vec<_>>()
    };
    let none: [&str; 0] = [];
    assert_eq!(suspected(["4", "4", "4", "4", "4"]), none);
    assert_eq!(suspected(["4", "4", "4", "4", "8"]), ["point-f"]);
    assert_eq!(suspected(["2", "4", "4", "4", "4"]), ["point-a"]);
    // Within a tenth of twice, and of half.
    assert_eq!(suspected(["4", "4", "4", "4", "7 1/4"]), ["point-f"]);
    assert_eq!(suspected(["4", "4", "4", "4", "7"]), none);
    assert_eq!(suspected(["4", "4", "4", "4", "8 3/4"]), ["point-f"]);
    assert_eq!(suspected(["4", "4", "4", "4", "9"]), none);
    // The usual one is in the middle of five, not the smallest nor the second.
    assert_eq!(suspected(["2", "2", "4", "4", "4"]), ["point-a", "point-b"]);
    assert_eq!(suspected(["4", "4", "8", "8", "8"]), ["point-a", "point-b"]);
}

#[test]
fn what_nobody_orders_in_a_colour_meets_every_minimum() {
    let unmet = |pieces: [u32; 2]| {
        has(Code::MinimumUnmet, |s| {
            let colourways = s.colourways.colourways.iter_mut();
            for (colourway, pieces) in colourways.zip(pieces) {
                colourway.pieces = Some(pieces);
            }
            material(s, "main").minimum = Some(Minimum {
                quantity: Some(decimal("50")),
                unit: Some(Measured::Metre),
                level: Some(MinimumLevel::Colour),
            });
        })
    };
    assert!(!unmet([100, 0]));
    assert!(unmet([100, 1]));
    assert!(!unmet([0, 0]));
}

#[test]
fn consumption_by_size_counts_by_its_mean() {
    let needed = |amounts: [&str; 5]| {
        let facts = facts(Code::MinimumUnmet, |s| {
            for colourway in &mut s.colourways.colourways {
                colourway.pieces = Some(10);
            }
            let sizes: Vec<_> = s.sizes.sizes.iter().map(|size| size.id.clone()).collect();
            let main = material(s, "main");
            main.consumption.amount = None;
            let amounts = amounts.iter().map(|amount| decimal(amount));
            main.consumption.by_size = sizes.into_iter().zip(amounts).collect();
            main.minimum = Some(Minimum {
                quantity: Some(decimal("900")),
                unit: Some(Measured::Metre),
                level: Some(MinimumLevel::Style),
            });
        });
        let needed = facts.into_iter().find(|(name, _)| *name == "needed");
        needed.unwrap().1
    };
    // 20 pieces of 1.2 m in the mean.
    assert_eq!(
        needed(["1", "1.1", "1.2", "1.3", "1.4"]),
        decimal("24").into()
    );
}

#[test]
fn padding_is_labelled_like_a_fabric_and_a_tape_is_not() {
    let lacks = |kind, component| {
        let findings = after(|s| {
            let tape = material(s, "tape");
            tape.kind = Some(kind);
            tape.placement = "in the hem".to_owned();
            tape.component = component;
            tape.composition.clear();
        });
        let mut codes: Vec<Code> = findings.iter().map(|it| it.code).collect();
        codes.retain(|code| [Code::CompositionMissing, Code::ComponentMissing].contains(code));
        codes
    };
    let lining = material(&mut half_zip(Digest::of(b"front")), "main").component;
    assert!(lining.is_some());
    let both = [Code::CompositionMissing, Code::ComponentMissing];
    assert_eq!(lacks(MaterialKind::Padding, None), both);
    assert_eq!(lacks(MaterialKind::Padding, lining), [both[0]]);
    assert_eq!(lacks(MaterialKind::Tape, lining), [both[0]]);
    assert_eq!(lacks(MaterialKind::Tape, None), []);
}

#[test]
fn a_zip_and_a_cord_are_told_with_their_point_and_size() {
    let told = facts(Code::ZipNotOpening, |s| {
        let zip = material(s, "zip");
        zip.length_by_size.clear();
        zip.length = inches("2");
    });
    let opening = told.iter().find(|(name, _)| *name == "point");
    let Some((_, Fact::Text(point))) = opening else {
        panic!("{told:?}");
    };
    assert!(
        point.contains(' ') && point.len() > 2,
        "letter and name: {point}"
    );
    assert!(told.contains(&("size", "XS".into())));
    assert!(told.contains(&("length", length("2"))));
    let told = facts(Code::CordUnderChannel, |s| {
        let tape = material(s, "tape");
        tape.cord.channel = Some(id("point-b"));
        tape.length = inches("2");
    });
    assert!(
        told.contains(&("point", "B Bottom width".into())),
        "{told:?}"
    );
    assert!(told.contains(&("channel", length("36"))), "{told:?}");
}

#[test]
fn a_waistband_has_a_height_where_there_are_legs() {
    let lacks = |legs: bool, height: bool| {
        has(Code::DimensionMissing, |s| {
            point(s, "F").measure = Some(Measure::Waist);
            if legs {
                point(s, "E").measure = Some(Measure::Inseam);
            }
            if height {
                point(s, "I").measure = Some(Measure::WaistbandHeight);
            }
        })
    };
    assert!(!lacks(false, false));
    assert!(lacks(true, false));
    assert!(!lacks(true, true));
}

#[test]
fn evidence_is_asked_for_where_a_child_and_the_market_meet() {
    let asks = |market, of_age: Option<(u16, u16)>| {
        let findings = after(|s| {
            if let Some((from, to)) = of_age {
                child(s, from, to);
            }
            s.header.worn = Some(Worn::Sleepwear);
            s.header.markets = vec![market];
        });
        let asked = [
            Code::EvidenceSmallParts,
            Code::EvidenceLead,
            Code::EvidenceSleepwear,
        ];
        asked.map(|code| findings.iter().any(|it| it.code == code))
    };
    assert_eq!(asks(Market::Us, Some((12, 24))), [true, true, true]);
    assert_eq!(asks(Market::Us, Some((60, 71))), [false, true, true]);
    assert_eq!(asks(Market::Us, None), [false; 3]);
    assert_eq!(asks(Market::Eu, Some((12, 24))), [false; 3]);
    assert_eq!(asks(Market::Eu, None), [false; 3]);
}

#[test]
fn a_reason_needs_a_name_and_its_own_code() {
    let lifted = |code: &str, reason: &str, by: &str| {
        let findings = after(|s| {
            child(s, 60, 71);
            us(s);
            material(s, "tape").cord.place = Some(CordPlace::HoodNeck);
            s.header.exemptions = exempt(code, reason);
            s.header.exemptions[0].by = by.to_owned();
        });
        let banned = findings.iter().any(|it| it.code == Code::CordHoodNeckUs);
        let void = findings.iter().any(|it| it.code == Code::ExemptionVoid);
        (!banned, void)
    };
    assert_eq!(
        lifted("cord-hood-neck-us", "a costume", "Nell"),
        (true, false)
    );
    assert_eq!(lifted("cord-hood-neck-us", "a costume", " "), (false, true));
    assert_eq!(lifted("cord-hood-neck-us", " ", "Nell"), (false, true));
    // That of the other market is none of this one.
    assert_eq!(
        lifted("cord-hood-neck-eu", "a costume", "Nell"),
        (false, false)
    );
    assert_eq!(lifted("name-missing", "a costume", "Nell"), (false, true));
}
