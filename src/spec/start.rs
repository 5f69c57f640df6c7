//! What a style may begin with: a whole spec for each kind of garment, with flats drawn by us.
//!
//! Points, grades, tolerances, constructions and packing are common practice, no source: something
//! to change rather than to invent. Number, name, season, markets and origin are left to whoever
//! begins the style, and no supplier is named.

use super::Spec;
use super::document::GarmentKind;

/// What a style of one kind begins with.
pub struct Start {
    pub kind: GarmentKind,
    /// The document, in JSON.
    spec: &'static str,
    /// As the drawings of the spec name them, by their digests.
    pub flats: [Flat; 2],
}

/// The artwork that every start places, to be put another in the place of.
pub static MARK: Flat = Flat {
    name: "mark.svg",
    svg: include_str!("start/mark.svg"),
};

/// A drawing in black lines, without letters.
pub struct Flat {
    /// The name of its file: `joggers-front.svg`.
    pub name: &'static str,
    pub svg: &'static str,
}

macro_rules! starts {
    ($($kind:ident $folder:literal,)*) => {
        [$(Start {
            kind: GarmentKind::$kind,
            spec: include_str!(concat!("start/", $folder, "/spec.json")),
            flats: [
                Flat {
                    name: concat!($folder, "-front.svg"),
                    svg: include_str!(concat!("start/", $folder, "/front.svg")),
                },
                Flat {
                    name: concat!($folder, "-back.svg"),
                    svg: include_str!(concat!("start/", $folder, "/back.svg")),
                },
            ],
        }),*]
    };
}

/// One for every kind.
pub static STARTS: [Start; 8] = starts![
    TShirt "t-shirt",
    Hoodie "hoodie",
    HalfZip "half-zip",
    Jacket "jacket",
    Joggers "joggers",
    Shorts "shorts",
    Leggings "leggings",
    Dress "dress",
];

impl Start {
    pub fn of(kind: GarmentKind) -> Option<&'static Start> {
        STARTS.iter().find(|start| start.kind == kind)
    }

    /// Every drawing that its spec names.
    pub fn drawn(&self) -> impl Iterator<Item = &Flat> {
        self.flats.iter().chain([&MARK])
    }

    pub fn spec(&self) -> Spec {
        serde_json::from_str(self.spec).expect("a test reads every start")
    }
}

#[cfg(test)]
mod tests {
    use std::collections::HashSet;

    use super::*;
    use crate::spec::check::{Code, check};
    use crate::spec::document::{Market, MaterialKind, View, Wearer, Word};
    use crate::spec::{Digest, Item, from_canonical, grade, to_canonical};

    /// The codes that are found of a spec.
    fn found(spec: &Spec) -> Vec<Code> {
        let findings = check(spec, &grade(spec)).into_iter();
        findings.map(|finding| finding.code).collect()
    }

    #[test]
    fn there_is_one_for_every_kind() {
        for kind in GarmentKind::ALL {
            let start = Start::of(*kind).expect("a start");
            assert_eq!(start.spec().header.kind, Some(*kind));
        }
    }

    #[test]
    fn its_drawings_are_the_files_beside_it() {
        for start in &STARTS {
            let drawings = start.spec().drawings.drawings;
            assert_eq!(drawings.len(), 2);
            for ((drawing, flat), view) in drawings
                .iter()
                .zip(&start.flats)
                .zip([View::Front, View::Back])
            {
                assert_eq!(drawing.view, view, "{}", flat.name);
                assert_eq!(
                    drawing.file,
                    Digest::of(flat.svg.as_bytes()),
                    "{}",
                    flat.name
                );
                let size = format!("viewBox=\"0 0 {} {}\"", drawing.width, drawing.height);
                assert!(flat.svg.contains(&size), "{}", flat.name);
                // Lines and nothing else: no letters, no styles, no pictures.
                for word in ["<text", "style", "<image", "href", "<script", "font"] {
                    assert!(!flat.svg.contains(word), "{}: {word}", flat.name);
                }
            }
        }
    }

    #[test]
    fn nothing_is_to_mend_but_what_a_start_cannot_know() {
        for start in &STARTS {
            let mut spec = start.spec();
            assert_eq!(
                found(&spec),
                [Code::NumberMissing, Code::NameMissing, Code::MarketsNone],
                "{:?}",
                start.kind
            );
            // Sold everywhere, it lacks reports of tests alone.
            spec.header.number = "1".to_owned();
            spec.header.name = "One".to_owned();
            spec.header.markets = vec![Market::Eu, Market::Uk, Market::Us];
            spec.header.languages = vec!["en".to_owned(), "de".to_owned()];
            spec.header.origin = "Portugal".to_owned();
            let mut rest = found(&spec);
            rest.retain(|code| {
                let reports = [Code::EvidenceAzoDyes, Code::EvidenceFlammability];
                !reports.contains(code)
            });
            assert_eq!(rest, [], "{:?}", start.kind);
        }
    }

    #[test]
    fn every_section_is_filled() {
        for start in &STARTS {
            let spec = start.spec();
            let kind = start.kind;
            let header = &spec.header;
            assert!(header.number.is_empty() && header.name.is_empty() && header.season.is_empty());
            assert!(
                header.origin.is_empty() && header.markets.is_empty(),
                "{kind:?}"
            );
            let count = spec.points.points.len();
            assert!((12..=20).contains(&count), "{kind:?}: {count} points");
            let drawings = spec.drawings.drawings.iter();
            let dimensioned: HashSet<_> = drawings
                .flat_map(|drawing| &drawing.lines)
                .map(|line| &line.item)
                .collect();
            for point in &spec.points.points {
                assert!(dimensioned.contains(&point.id), "{kind:?} {}", point.letter);
                assert!(
                    point.direction.is_some() && point.part.is_some(),
                    "{}",
                    point.name
                );
            }
            assert_eq!(spec.colourways.colourways.len(), 1);
            assert!(
                (6..=8).contains(&spec.construction.callouts.len()),
                "{kind:?}"
            );
            let [artwork] = &spec.artwork.artworks[..] else {
                panic!("{kind:?}: one artwork");
            };
            assert_eq!(artwork.file, Some(Digest::of(MARK.svg.as_bytes())));
            assert_eq!(spec.labels.labels.len(), 3);
            assert!(!spec.packing.fold.is_empty() && spec.packing.carton.length.is_some());
            for material in &spec.materials.materials {
                assert!(material.supplier.is_empty() && material.reference.is_empty());
                assert!(!material.placement.is_empty(), "{}", material.name);
                let bare = [Some(MaterialKind::Eyelet)];
                assert!(
                    !material.composition.is_empty() || bare.contains(&material.kind),
                    "{kind:?} {}",
                    material.name
                );
                if material.is_fabric() {
                    assert!(material.fabric.structure.is_some(), "{}", material.name);
                }
            }
            let of_items = spec.items().filter(|item| item.is_lettered());
            let letters: Vec<&str> = of_items.map(Item::letter).collect();
            let once: HashSet<&str> = letters.iter().copied().collect();
            assert_eq!(once.len(), letters.len(), "{kind:?}");
        }
    }

    #[test]
    fn a_start_is_a_document_like_any_other() {
        for start in &STARTS {
            let spec = start.spec();
            let bytes = to_canonical(&spec).unwrap();
            assert_eq!(from_canonical::<Spec>(&bytes).unwrap(), spec);
            assert_eq!(spec.for_another_style(), spec, "{:?}", start.kind);
        }
    }

    /// Common practice, no source: men begin with S to XL, women with XS to L, and M is the base.
    #[test]
    fn sizes_begin_as_is_usual() {
        let mut seen = HashSet::new();
        for start in &STARTS {
            let spec = start.spec();
            let codes: Vec<&str> = spec.sizes.sizes.iter().map(|it| &it.code[..]).collect();
            let usual: &[&str] = match spec.header.wearer {
                Some(Wearer::Men) => &["S", "M", "L", "XL"],
                Some(Wearer::Women) => &["XS", "S", "M", "L"],
                _ => &codes,
            };
            assert_eq!(codes, usual, "{:?}", start.kind);
            let base = spec.header.base_size.as_ref().unwrap();
            assert_eq!(spec.size(base).unwrap().code, "M", "{:?}", start.kind);
            seen.insert(spec.header.wearer);
        }
        assert!(seen.contains(&Some(Wearer::Men)) && seen.contains(&Some(Wearer::Women)));
    }

    /// Common practice, no source: front rise 0.5 and outseam 1.0 a size; no unit was named, the
    /// centimetre is ours.
    #[test]
    fn joggers_grade_as_joggers_do() {
        let spec = Start::of(GarmentKind::Joggers).unwrap().spec();
        let chart = grade(&spec).chart(&spec).unwrap();
        let steps = |id: &str| {
            let row = chart.row(&crate::spec::ItemId::new(id)).unwrap();
            let pairs = row.values.windows(2);
            pairs
                .map(|pair| (pair[1] - pair[0]).as_nm() / 1_000_000)
                .collect::<Vec<_>>()
        };
        // In tenths of a centimetre.
        assert_eq!(steps("point-front-rise"), [5, 5, 5]);
        assert_eq!(steps("point-outseam"), [10, 10, 10]);
    }
}
