//! Pieces in packs and packs in cartons.

use super::decimal::Decimal;
use super::document::{Carton, RatioPack, Spec};
use super::id::ItemId;

/// What the planned pieces of a colourway come to.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Cartons {
    pub colourway: ItemId,
    /// Planned.
    pub pieces: u64,
    /// Full packs.
    pub packs: u64,
    /// Pieces that fill no pack.
    pub left: u64,
    /// For the full packs, the last one filled as far as they go; nothing while it is not said how
    /// many go into one.
    pub cartons: Option<u64>,
}

/// The pieces of one pack.
pub fn in_pack(pack: &RatioPack) -> u64 {
    pack.pieces.values().map(|pieces| u64::from(*pieces)).sum()
}

/// The packs that a colourway is packed in: its own, and those of every colourway.
pub fn packs_of<'a>(
    spec: &'a Spec,
    colourway: &'a ItemId,
) -> impl Iterator<Item = &'a RatioPack> + 'a {
    let packs = spec.packing.ratio.iter();
    packs.filter(move |pack| pack.colourway.as_ref().is_none_or(|own| own == colourway))
}

/// Packs and cartons of every colourway with planned pieces and one pack that is not empty. Of
/// several packs nobody said how many of each there are.
pub fn cartons(spec: &Spec) -> Vec<Cartons> {
    let colourways = spec.colourways.colourways.iter();
    let cartons = colourways.filter_map(|colourway| {
        let pieces = u64::from(colourway.pieces?);
        let mut packs = packs_of(spec, &colourway.id);
        let (pack, None) = (packs.next()?, packs.next()) else {
            return None;
        };
        let in_pack = in_pack(pack);
        let packs = pieces.checked_div(in_pack)?;
        let per_carton = spec.packing.packs_per_carton.map(u64::from);
        Some(Cartons {
            colourway: colourway.id.clone(),
            pieces,
            packs,
            left: pieces % in_pack,
            cartons: per_carton.filter(|it| *it > 0).map(|it| packs.div_ceil(it)),
        })
    });
    cartons.collect()
}

/// What a carton takes up in cubic metres, to a tenth of a litre; nothing while a side is missing.
pub fn cubic_metres(carton: &Carton) -> Option<Decimal> {
    let sides = [carton.length?, carton.width?, carton.height?];
    let metres = sides.map(|side| Decimal::new(side.nm.as_nm(), 9));
    let volume = metres[0].times(metres[1])?.times(metres[2])?;
    volume.is_positive().then(|| volume.rounded(4))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::spec::document::Colourway;
    use crate::spec::units::{Entered, Unit};

    fn spec(pieces: &[u32], planned: &[Option<u32>], per_carton: Option<u32>) -> Spec {
        let mut spec = Spec::default();
        let sizes = pieces.iter().zip(["s", "m", "l", "xl"]);
        spec.packing.ratio = vec![RatioPack {
            id: ItemId::new("pack"),
            pieces: sizes
                .map(|(count, size)| (ItemId::new(size), *count))
                .collect(),
            ..RatioPack::default()
        }];
        spec.packing.packs_per_carton = per_carton;
        let colourways = planned.iter().zip(["ink", "moss"]);
        spec.colourways.colourways = colourways
            .map(|(pieces, id)| Colourway {
                id: ItemId::new(id),
                pieces: *pieces,
                ..Colourway::default()
            })
            .collect();
        spec
    }

    #[test]
    fn planned_pieces_fill_packs_and_packs_fill_cartons() {
        // 100 = 12 packs of 8 and 4 over; 12 packs are 2 cartons of 5 and one of 2.
        let spec = spec(&[1, 3, 3, 1], &[Some(100), None], Some(5));
        assert_eq!(
            cartons(&spec),
            [Cartons {
                colourway: ItemId::new("ink"),
                pieces: 100,
                packs: 12,
                left: 4,
                cartons: Some(3),
            }]
        );
    }

    #[test]
    fn nothing_is_worked_out_from_an_empty_pack_or_from_several() {
        assert_eq!(cartons(&spec(&[0, 0], &[Some(100)], Some(5))), []);
        let mut several = spec(&[1, 2], &[Some(100)], Some(5));
        let mut other = several.packing.ratio[0].clone();
        other.colourway = Some(ItemId::new("moss"));
        several.packing.ratio.push(other.clone());
        assert_eq!(
            cartons(&several).len(),
            1,
            "the other one is another colourway's"
        );
        other.colourway = None;
        several.packing.ratio.push(other);
        assert_eq!(cartons(&several), []);
    }

    #[test]
    fn cartons_wait_for_how_many_packs_one_takes() {
        for per_carton in [None, Some(0)] {
            let cartons = cartons(&spec(&[1, 3, 3, 1], &[Some(80)], per_carton));
            assert_eq!(
                (cartons[0].packs, cartons[0].left, cartons[0].cartons),
                (10, 0, None)
            );
        }
    }

    #[test]
    fn a_carton_has_the_volume_of_its_sides() {
        let side = |text: &str| Some(Entered::read(text, Unit::Cm).unwrap());
        let mut carton = Carton {
            length: side("60cm"),
            width: side("40cm"),
            ..Carton::default()
        };
        assert_eq!(cubic_metres(&carton), None);
        carton.height = side("40cm");
        assert_eq!(cubic_metres(&carton), Some(Decimal::new(96, 3)));
    }
}
