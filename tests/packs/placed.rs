//! The artwork of the three specs lies on its flats where it is drawn there.

use fellseam::spec::placement::{Found, OnFlat, Placed, place};
use fellseam::spec::{ItemId, Length, Spec, grade};

use crate::packs;

fn placed(spec: &Spec, band: usize) -> Placed {
    let graded = grade(spec);
    let values = |point: &ItemId, size: &ItemId| -> Option<Length> {
        let column = spec.sizes.sizes.iter().position(|it| it.id == *size)?;
        graded.values(point)?.rounded.get(column).copied()
    };
    let artwork = &spec.artwork.artworks[0];
    place(spec, artwork, &artwork.bands[band], &values).expect("it has a size")
}

/// The middle of the artwork in user units of the flat, of which its width has 1000.
fn middle(placed: &Placed, flat: &OnFlat) -> (f64, f64) {
    let unit = 1000.0 / flat.width;
    let plan = &placed.plan;
    (
        (flat.left + plan.width / 2.0) * unit,
        (flat.top + plan.height / 2.0) * unit,
    )
}

/// So near to where the flat's own lines draw it, in user units: 10 units are about a centimetre.
#[track_caller]
fn near(found: (f64, f64), drawn: (f64, f64), most: f64) {
    let away = (found.0 - drawn.0).hypot(found.1 - drawn.1);
    assert!(away < most, "{found:?} is {away} from {drawn:?}");
}

#[test]
fn the_heron_lies_in_the_middle_below_the_yoke() {
    let placed = placed(&packs::spec("rain-jacket"), 1);
    let flat = placed.flat.as_ref().expect("to scale");
    assert_eq!(flat.across, Found::Middle);
    // The vent's line runs along the edge of the yoke, so it tells where the edge is in the middle.
    assert_eq!(flat.down, Found::Line(ItemId::new("point-t")));
    assert_eq!(flat.scale.agree, flat.scale.of);
    // The yoke ends at 514 units, and 11.5 units are a centimetre: 6.3 cm below it, 14 cm high.
    near(
        middle(&placed, flat),
        (500.0, 514.2 + 11.5 * (6.3 + 7.0)),
        3.0,
    );
}

#[test]
fn the_mark_of_the_shorts_lies_where_it_is_drawn() {
    let placed = placed(&packs::spec("trail-shorts"), 0);
    let flat = placed.flat.as_ref().expect("to scale");
    assert_eq!(flat.across, Found::Line(ItemId::new("point-f")));
    assert!(matches!(flat.down, Found::Line(_)), "{flat:?}");
    // Its shapes are drawn from 728 to 808 across and from 629 to 674 down.
    near(middle(&placed, flat), (768.0, 651.0), 10.0);
}

#[test]
fn the_emblem_follows_its_letter_since_the_neck_seam_is_taken_at_centre_front() {
    let placed = placed(&packs::spec("half-zip"), 0);
    let flat = placed.flat.as_ref().expect("to scale");
    assert_eq!(flat.across, Found::Middle);
    let Found::LetterInstead { away, .. } = flat.down else {
        panic!("{flat:?}");
    };
    assert!((50.0..65.0).contains(&away), "{away}");
    // It is drawn as a circle around 401, 252.
    near(middle(&placed, flat), (401.0, 252.0), 3.0);
}

#[test]
fn a_larger_size_makes_the_artwork_smaller_on_the_same_flat() {
    let spec = packs::spec("half-zip");
    let scale = |band| {
        placed(&spec, band)
            .flat
            .expect("to scale")
            .scale
            .units_per_mm
    };
    assert_eq!(placed(&spec, 1).size, Some(ItemId::new("size-xl")));
    assert!(scale(1) < scale(0), "{} and {}", scale(1), scale(0));
}
