use super::*;
use crate::language::Language;
use crate::spec::example::half_zip;
use crate::spec::placement::Values;
use crate::spec::units::{DecimalSign, Length};
use crate::spec::{Digest, ItemId, Spec, StyleId};
use crate::store::StyleFile;

fn written(spec: &Spec, files: &[StyleFile]) -> String {
    let values: Values<'_> = &|point, _| Some(spec.point(point)?.base?.nm);
    let bench = Bench {
        t: Language::English.text(),
        style: &StyleId::new("style-1"),
        spec,
        sign: DecimalSign::Point,
        values,
        compose: &|_, _| None,
        files,
    };
    let plate = ArtworkPlate::of(bench, &spec.artwork.artworks[0]);
    plate.render().unwrap()
}

fn example() -> Spec {
    half_zip(Digest::of(b"front"))
}

fn pictured(width: u32, height: u32) -> [StyleFile; 1] {
    [StyleFile {
        digest: Digest::of(b"front"),
        name: "front.svg".to_owned(),
        width,
        height,
        pictured: true,
    }]
}

#[test]
fn the_artwork_is_as_large_as_it_is() {
    // 1 1/4 × 5/8 in.
    let page = written(&example(), &pictured(200, 100));
    assert!(
        page.contains("31.75 × 15.875 mm") || page.contains("31.75 × 15.8750 mm"),
        "{page}"
    );
    assert!(
        page.contains(r#"<image href="/styles/style-1/files/"#),
        "{page}"
    );
    assert!(
        page.contains(r#"x="9" y="9" width="31.75" height="15.88""#),
        "{page}"
    );
    // Its rulers end at four centimetres and at two inches: 9 + 50.8 + 3 mm is all of it.
    assert!(page.contains(r#"width="62.8mm""#), "{page}");
    assert!(
        !page.contains("style=\""),
        "the content policy lets no style attribute pass"
    );
}

#[test]
fn a_picture_of_other_proportions_is_told_of() {
    assert!(!written(&example(), &pictured(200, 100)).contains("The picture is"));
    let page = written(&example(), &pictured(100, 100));
    assert!(
        page.contains("The picture is 100 : 100, the size asks for 200 : 100"),
        "{page}"
    );
}

#[test]
fn distances_are_drawn_from_their_lines() {
    let page = written(&example(), &[]);
    // Three inches from the centre front to the left, five from the neck seam to the top.
    assert!(page.contains(r#"d="M-76.2 7.94H0""#), "{page}");
    assert!(page.contains(r#"d="M15.88 -127V0""#), "{page}");
    assert!(
        page.contains("Centre front") && page.contains("Neck seam"),
        "{page}"
    );
    assert!(page.contains("3 in") && page.contains("5 in"), "{page}");
}

#[test]
fn what_cannot_be_drawn_is_said() {
    let mut spec = example();
    spec.drawings.drawings[0].lines.clear();
    assert!(written(&spec, &[]).contains("which is not to scale"));
    spec.artwork.artworks[0].drawing = None;
    assert!(written(&spec, &[]).contains("choose the drawing that it is placed on"));
    spec.artwork.artworks[0].bands[0].distances.truncate(1);
    assert!(written(&spec, &[]).contains("they do not tell where it is"));
    spec.artwork.artworks[0].bands[0].width = None;
    let page = written(&spec, &[]);
    assert!(
        page.contains("Give its width and height") && !page.contains("<svg"),
        "{page}"
    );
}

#[test]
fn a_flat_that_is_to_scale_lies_behind_the_plan() {
    let mut spec = example();
    let drawing = &mut spec.drawings.drawings[0];
    let point = spec.points.points[0].id.clone();
    drawing.lines.clear();
    drawing.lines.push(crate::spec::document::DimensionLine {
        id: ItemId::new("dimension"),
        item: point,
        from: crate::spec::document::Spot { x: 2000, y: 5000 },
        to: crate::spec::document::Spot { x: 8000, y: 5000 },
        via: None,
    });
    drawing.markers.push(crate::spec::document::Marker {
        id: ItemId::new("marker-artwork"),
        item: ItemId::new("artwork-wave"),
        x: 6500,
        y: 3500,
    });
    spec.points.points[0].base = Some(Entered {
        nm: Length::nm(600_000_000),
        unit: Unit::Mm,
    });
    spec.points.points[0].basis = Some(crate::spec::document::Basis::Half);
    let page = written(&spec, &pictured(800, 900));
    // The drawing's 10 000 units are a thousand millimetres.
    assert!(page.contains("by a single dimension line"), "{page}");
    assert!(
        page.contains(r#"width="1000" height="1125" preserveAspectRatio="none""#),
        "{page}"
    );
}
