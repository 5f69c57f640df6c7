use super::*;
use crate::exchange::cast::*;
use crate::spec::Digest;
use crate::spec::document::{Illuminant, Observer};
use crate::spec::example::half_zip;

fn spec() -> Spec {
    half_zip(Digest::of(b"front"))
}

fn id(id: &str) -> ItemId {
    ItemId::new(id)
}

fn dip(part: &str, colourway: &str, fabric: &str) -> Anchor {
    Anchor {
        kind: Kind::LabDip,
        item: id(part),
        colourway: Some(id(colourway)),
        fabric: Some(id(fabric)),
    }
}

fn thing(kind: Kind, item: &str) -> Anchor {
    Anchor {
        kind,
        item: id(item),
        colourway: None,
        fabric: None,
    }
}

fn ink() -> Anchor {
    dip("part-1", "colourway-ink", "material-main")
}

fn set(spec: &mut Spec, colourway: &str, part: &str, cell: Cell) {
    let row = spec.colourways.cells.entry(id(colourway)).or_default();
    row.insert(id(part), cell);
}

/// Changes the colour of the main fabric in the first colourway.
fn edit(spec: &mut Spec, edit: impl FnOnce(&mut Colour)) {
    let mut colour = ink().colour(spec).expect("a colour").clone();
    edit(&mut colour);
    set(spec, "colourway-ink", "part-1", Cell::Colour(colour));
}

fn trim<'a>(spec: &'a mut Spec, item: &str) -> &'a mut Material {
    let mut all = spec.materials.materials.iter_mut();
    all.find(|it| it.id == id(item)).expect("the material")
}

fn lab(l: &str, illuminant: Illuminant) -> Lab {
    let number = |text| Decimal::read(text).expect("a number");
    Lab {
        l: number(l),
        a: number("1"),
        b: number("-12"),
        illuminant,
        observer: Observer::Ten,
    }
}

#[test]
fn colours_of_fabrics_artworks_and_trims_need_approval() {
    let anchors: Vec<Anchor> = needed(&spec()).into_iter().map(|it| it.anchor).collect();
    assert_eq!(
        anchors,
        [
            ink(),
            dip("part-2", "colourway-chalk", "material-rib"),
            thing(Kind::StrikeOff, "artwork-wave"),
            thing(Kind::Trim, "material-zip"),
            thing(Kind::Trim, "material-tape"),
        ],
        "rust and the tape's sand are of trims, thread is none"
    );
}

#[test]
fn one_colour_on_one_substrate_counts_once() {
    let mut spec = spec();
    let colour = ink().colour(&spec).expect("a colour").clone();
    let spelled = Colour {
        name: "Dark ink".to_owned(),
        ..colour.clone()
    };
    set(
        &mut spec,
        "colourway-chalk",
        "part-1",
        Cell::Colour(spelled),
    );
    let first = &needed(&spec)[0];
    assert_eq!(
        first.cells,
        [
            (id("colourway-ink"), id("part-1")),
            (id("colourway-chalk"), id("part-1"))
        ]
    );
    // On the rib, which is of other fibres, it is another thing to dye.
    set(&mut spec, "colourway-ink", "part-2", Cell::Colour(colour));
    let dips = |spec: &Spec| {
        let all = needed(spec).into_iter();
        all.filter(|it| it.anchor.kind == Kind::LabDip).count()
    };
    assert_eq!(dips(&spec), 3);
    let main = trim(&mut spec, "material-main").composition.clone();
    trim(&mut spec, "material-rib").composition = main;
    assert_eq!(dips(&spec), 2, "and of the same fibres it is the same");
}

#[test]
fn an_approval_holds_while_what_it_was_given_for_is_the_same() {
    let then = spec();
    let holds = |anchor: &Anchor, now: &Spec| anchor.holds(&then, anchor, now);
    let zip = thing(Kind::Trim, "material-zip");
    let wave = thing(Kind::StrikeOff, "artwork-wave");
    let mut now = spec();
    trim(&mut now, "material-zip").letter = "T9".to_owned();
    trim(&mut now, "material-zip").lead_days = Some(40);
    now.artwork.artworks[0].letter = "W9".to_owned();
    edit(&mut now, |colour| {
        colour.screen = Some("#000000".to_owned())
    });
    for anchor in [&ink(), &wave, &zip] {
        assert!(holds(anchor, &now), "{anchor:?}");
    }
    trim(&mut now, "material-zip").zip.puller = "metal".to_owned();
    assert!(!holds(&zip, &now));
    now.artwork.artworks[0].note = "On the left".to_owned();
    assert!(!holds(&wave, &now));

    // The tape is dyed to match the main fabric: its colour is the zip's.
    let mut now = spec();
    edit(&mut now, |colour| colour.reference = "H&T Night".to_owned());
    assert!(!holds(&ink(), &now));
    assert!(
        ink().is(&then, &ink(), &now),
        "in its place it is the same thing"
    );
    assert!(!holds(&zip, &now), "the tape follows");
    let mut now = spec();
    edit(&mut now, |colour| {
        colour.lab = Some(lab("20", Illuminant::D65))
    });
    assert!(!holds(&ink(), &now), "another reading is another standard");
    let mut now = spec();
    trim(&mut now, "material-main").composition[0].percent = Decimal::read("90").ok();
    assert!(!holds(&ink(), &now), "and another substrate another dyeing");
}

#[test]
fn a_factory_submits_options_for_what_the_current_revision_needs() {
    let spec = spec();
    let anchor = ink();
    let submits = |by: &Actor, edit: &dyn Fn(&mut Submitting<'_>)| {
        let mut with = Submitting {
            revision: 2,
            current: Some(2),
            spec: &spec,
            anchor: &anchor,
            photos: 1,
            reading: None,
            before: &[],
        };
        edit(&mut with);
        submit(by, &with)
    };
    assert_eq!(submits(&merchandiser(), &|_| ()), Ok(1));
    assert_eq!(submits(&designer(), &|_| ()), Err(Refused::OnlyFactory));
    for current in [None, Some(3)] {
        let stale = submits(&merchandiser(), &|with| with.current = current);
        assert_eq!(stale, Err(Refused::NotCurrent { current }));
    }
    let blind = submits(&merchandiser(), &|with| with.photos = 0);
    assert_eq!(blind, Err(Refused::PhotoMissing));

    let thread = thing(Kind::Trim, "material-thread");
    let zip = thing(Kind::Trim, "material-zip");
    let reading = lab("20", Illuminant::D65);
    for (anchor, reading) in [(&thread, None), (&zip, Some(&reading))] {
        let with = Submitting {
            revision: 2,
            current: Some(2),
            spec: &spec,
            anchor,
            photos: 1,
            reading,
            before: &[],
        };
        assert_eq!(
            submit(&merchandiser(), &with),
            Err(Refused::NothingToApprove)
        );
    }
}

#[test]
fn options_are_counted_for_each_thing() {
    let (old, mut new) = (spec(), spec());
    // The colour has another place in the newer revision, and is the same.
    let colour = ink().colour(&old).expect("a colour").clone();
    set(&mut new, "colourway-chalk", "part-1", Cell::Colour(colour));
    set(&mut new, "colourway-ink", "part-1", Cell::Natural {});
    let moved = dip("part-1", "colourway-chalk", "material-main");
    let (was, zip) = (ink(), thing(Kind::Trim, "material-zip"));
    let offered = |anchor, number| Offered {
        anchor,
        spec: &old,
        number,
        verdict: None,
    };
    let before = [offered(&was, 1), offered(&was, 2), offered(&zip, 7)];
    let with = Submitting {
        revision: 2,
        current: Some(2),
        spec: &new,
        anchor: &moved,
        photos: 1,
        reading: None,
        before: &before,
    };
    assert_eq!(submit(&merchandiser(), &with), Ok(3));
}

#[test]
fn an_option_is_decided_once_by_the_brand_and_a_rejection_says_why() {
    use Verdict::{Approved, Rejected};
    assert_eq!(decide(&designer(), None, Approved, ""), Ok(()));
    assert_eq!(decide(&designer(), None, Rejected, "Too red"), Ok(()));
    let silent = decide(&designer(), None, Rejected, " \n");
    assert_eq!(silent, Err(Refused::ReasonMissing));
    let theirs = decide(&merchandiser(), None, Approved, "");
    assert_eq!(theirs, Err(Refused::OnlyBrand));
    for verdict in Verdict::ALL {
        let again = decide(&designer(), Some(verdict), Approved, "");
        assert_eq!(again, Err(Refused::OptionDecided { verdict }));
    }
}

#[test]
fn the_newest_approval_counts() {
    let spec = spec();
    let anchor = ink();
    let times = [time(1), time(2), time(3)];
    let stands = |verdicts: &[Option<(Verdict, usize)>]| {
        let offered: Vec<Offered<'_>> = verdicts
            .iter()
            .zip(1..)
            .map(|(verdict, number)| Offered {
                anchor: &anchor,
                spec: &spec,
                number,
                verdict: verdict.map(|(verdict, at)| (verdict, &times[at])),
            })
            .collect();
        standing(&anchor, &spec, &offered)
    };
    let yes = |at| Some((Verdict::Approved, at));
    let no = |at| Some((Verdict::Rejected, at));
    assert_eq!(stands(&[]), (Standing::NotSubmitted, None));
    assert_eq!(stands(&[None]), (Standing::Waiting, None));
    assert_eq!(stands(&[no(0)]), (Standing::Rejected, None));
    assert_eq!(stands(&[no(0), None]), (Standing::Waiting, None));
    assert_eq!(stands(&[yes(0), yes(1)]), (Standing::Approved, Some(1)));
    assert_eq!(stands(&[yes(1), yes(0)]), (Standing::Approved, Some(0)));
    let stays = (Standing::Approved, Some(0));
    assert_eq!(
        stands(&[yes(0), no(1), None]),
        stays,
        "what came later takes nothing away"
    );
    let sides: Vec<_> = Standing::ALL.map(Standing::waits_for).into();
    let (brand, factory) = (Some(Side::Brand), Some(Side::Factory));
    assert_eq!(sides, [factory, brand, None, factory, factory]);
}

#[test]
fn what_changed_since_it_was_approved_is_submitted_anew() {
    let (old, mut new) = (spec(), spec());
    let anchor = ink();
    let at = time(1);
    let approved = Offered {
        anchor: &anchor,
        spec: &old,
        number: 1,
        verdict: Some((Verdict::Approved, &at)),
    };
    let rejected = Offered {
        verdict: Some((Verdict::Rejected, &at)),
        ..approved
    };
    edit(&mut new, |colour| colour.name = "Night".to_owned());
    let stands = |offered: &[Offered<'_>]| standing(&anchor, &new, offered).0;
    assert_eq!(stands(&[approved]), Standing::Lapsed);
    assert_eq!(stands(&[rejected]), Standing::NotSubmitted);
    let again = Offered {
        spec: &new,
        verdict: None,
        ..approved
    };
    assert_eq!(stands(&[approved, again]), Standing::Waiting);
}

#[test]
fn a_reading_is_held_against_the_specs_own_only_where_they_are_alike() {
    let limit = usual_limit();
    let standard = lab("20", Illuminant::D65);
    let near = lab("20.5", Illuminant::D65);
    let judged = |reading: &Lab| match compare(Some(&standard), Some(reading), &limit) {
        Compared::By { cmc, judged, .. } => {
            assert_eq!(cmc, judged.difference, "the limit is by CMC(2:1)");
            judged.passes
        }
        other => panic!("{other:?}"),
    };
    assert!(judged(&near));
    assert!(!judged(&lab("26", Illuminant::D65)));
    assert_eq!(compare(Some(&standard), None, &limit), Compared::NoReading);
    assert_eq!(compare(None, Some(&near), &limit), Compared::NoStandard);
    let other = lab("20.5", Illuminant::A);
    assert!(matches!(
        compare(Some(&standard), Some(&other), &limit),
        Compared::Unlike(Incomparable::Illuminants { .. })
    ));
}
