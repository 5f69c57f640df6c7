//! Faults planted in whole specs, one for each check.

mod figure;
mod finish;
mod make;
mod spoil;

use fellseam::spec::Spec;

const HALF_ZIP: &str = "half-zip";
const JACKET: &str = "rain-jacket";
const SHORTS: &str = "trail-shorts";

/// A code and the item that it is said of, empty where it is said of the whole.
pub type Told = (&'static str, &'static str);

#[derive(Clone)]
pub struct Fault {
    pub pack: &'static str,
    pub plant: fn(&mut Spec),
    pub told: Told,
    /// What follows from it.
    pub follows: &'static [Told],
}

/// Planted in a pack, a fault of this code is found on this item.
fn fault(
    pack: &'static str,
    code: &'static str,
    item: &'static str,
    plant: fn(&mut Spec),
) -> Fault {
    Fault {
        pack,
        plant,
        told: (code, item),
        follows: &[],
    }
}

impl Fault {
    fn follows(self, follows: &'static [Told]) -> Self {
        Fault { follows, ..self }
    }
}

pub fn faults() -> Vec<Fault> {
    [figure::faults(), make::faults(), finish::faults()].concat()
}
