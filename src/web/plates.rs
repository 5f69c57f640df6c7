//! Drawings to scale that the program makes of a spec: artwork at its true size and where it goes,
//! labels as they will look. The same on a draft and on a revision, and while somebody types.
//!
//! A plate is a template of its own (`templates/plates`). Its pictures are SVG in millimetres, with
//! presentation attributes only.

pub mod artwork;
pub mod label;
mod sketch;

use std::fmt;

use crate::language::Text;
use crate::spec::label::Compose;
use crate::spec::placement::Values;
use crate::spec::units::DecimalSign;
use crate::spec::{Digest, ItemId, Spec, StyleId};
use crate::store::StyleFile;

/// What plates are drawn from.
#[derive(Clone, Copy)]
pub struct Bench<'a> {
    pub t: Text,
    pub style: &'a StyleId,
    pub spec: &'a Spec,
    pub sign: DecimalSign,
    /// The values of points of measure: what the flats are drawn to.
    pub values: Values<'a>,
    /// What compositions say.
    pub compose: Compose<'a>,
    pub files: &'a [StyleFile],
}

/// A picture of an original.
pub struct Picture {
    /// Its address.
    pub href: String,
    pub width: u32,
    pub height: u32,
}

impl Bench<'_> {
    /// The first of these files that there is a picture of.
    pub fn picture(&self, files: [Option<&Digest>; 2]) -> Option<Picture> {
        files.into_iter().flatten().find_map(|file| {
            let known = self.files.iter().find(|known| known.digest == *file)?;
            known.pictured.then(|| Picture {
                href: format!("/styles/{}/files/{file}/1080", self.style),
                width: known.width,
                height: known.height,
            })
        })
    }

    /// A size as it stands on the label.
    fn size(&self, id: &ItemId) -> String {
        let found = self.spec.size(id);
        found.map_or(id.as_str(), |size| &size.code).to_owned()
    }

    /// Letter and name of a point of measure.
    fn point(&self, id: &ItemId) -> String {
        let Some(point) = self.spec.point(id) else {
            return String::new();
        };
        format!("{} {}", point.letter, point.name).trim().to_owned()
    }
}

/// A number of an SVG, to a hundredth.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Mm(pub f64);

impl fmt::Display for Mm {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let hundredths = (self.0 * 100.0).round();
        // Minus zero is written as zero.
        let number = if hundredths == 0.0 {
            0.0
        } else {
            hundredths / 100.0
        };
        write!(f, "{number}")
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_of_a_drawing_are_short() {
        for (number, written) in [
            (10.0, "10"),
            (3.175, "3.18"),
            (-0.001, "0"),
            (-12.345, "-12.35"),
            (100.1, "100.1"),
        ] {
            assert_eq!(Mm(number).to_string(), written);
        }
    }
}
