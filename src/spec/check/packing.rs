//! Checks of the ratio packs.

use super::{Code, Finding, on};
use crate::spec::decimal::Decimal;
use crate::spec::document::{RatioPack, Spec};
use crate::spec::item::Item;

pub fn packing(spec: &Spec, findings: &mut Vec<Finding>) {
    let packs = &spec.packing.ratio;
    let of = |pack: &RatioPack| -> u64 { pack.pieces.values().map(|n| u64::from(*n)).sum() };
    for pack in packs.iter().filter(|pack| of(pack) == 0) {
        findings.push(on(pack, Code::RatioEmpty).field("pieces"));
    }
    for colourway in &spec.colourways.colourways {
        let mut fitting = packs.iter().filter(|pack| {
            let own = pack.colourway.as_ref();
            own.is_none_or(|own| *own == colourway.id)
        });
        // With several packs of a colourway any number may come out even.
        if let (Some(pack), None, Some(pieces)) = (fitting.next(), fitting.next(), colourway.pieces)
            && let in_pack @ 1.. = of(pack)
            && let left @ 1.. = u64::from(pieces) % in_pack
        {
            let number = |n: u64| Decimal::of(n.into());
            let finding = on(pack, Code::RatioRemainder).field("pieces");
            let finding = finding.fact("colourway", Item::Colourway(colourway).known_by());
            let finding = finding.fact("pieces", number(u64::from(pieces)));
            findings.push(
                finding
                    .fact("pack", number(in_pack))
                    .fact("left", number(left)),
            );
        }
    }
}
