//! Operating characteristic: how likely a plan accepts a lot, by the share that is defective in it.
//!
//! The sums of the distributions' own definitions, term after term, each from the one before it.

use super::Plan;

/// Of `sample` pieces from an endless supply in which the share `p` is defective, at most `accept`
/// are: the binomial distribution.
pub fn binomial(sample: u32, accept: u32, p: f64) -> f64 {
    if p >= 1.0 {
        return if accept >= sample { 1.0 } else { 0.0 };
    }
    let n = f64::from(sample);
    let odds = p / (1.0 - p);
    let first = (1.0 - p).powf(n);
    sum(first, 0, accept.min(sample), |k| (n - k + 1.0) / k * odds)
}

/// The same by Poisson's distribution, for defects that one piece may have several of.
pub fn poisson(sample: u32, accept: u32, p: f64) -> f64 {
    let mean = f64::from(sample) * p;
    sum((-mean).exp(), 0, accept, |k| mean / k)
}

/// Of `sample` pieces from a lot that holds this many defective ones, at most `accept` are: the
/// hypergeometric distribution, exact for a lot that is known. More defective pieces than the lot
/// has count as all of it.
pub fn hypergeometric(lot: u32, defective: u32, sample: u32, accept: u32) -> f64 {
    let (sample, defective) = (sample.min(lot), defective.min(lot));
    let sound = lot - defective;
    // At least so many are drawn when the sound ones do not suffice.
    let least = sample.saturating_sub(sound);
    let most = accept.min(sample).min(defective);
    if most < least {
        return 0.0;
    }
    let (fewer, more) = (sample.min(sound), f64::from(sample.max(sound)));
    let first = (0..fewer).map(f64::from).fold(1.0, |all, drawn| {
        all * (more - drawn) / (f64::from(lot) - drawn)
    });
    let (n, bad, good) = (f64::from(sample), f64::from(defective), f64::from(sound));
    sum(first, least, most, |k| {
        (bad - k + 1.0) * (n - k + 1.0) / (k * (good - n + k))
    })
}

/// The terms from `least` to `most`, of which `first` is the first; each is the one before it times
/// the ratio of its number.
fn sum(first: f64, least: u32, most: u32, ratio: impl Fn(f64) -> f64) -> f64 {
    let mut term = first;
    let mut all = first;
    for k in least + 1..=most {
        term *= ratio(f64::from(k));
        all += term;
    }
    all.clamp(0.0, 1.0)
}

impl Plan {
    /// How likely the lot is accepted when so many of its pieces are defective.
    pub fn acceptance(&self, defective: u32) -> f64 {
        hypergeometric(self.lot, defective, self.sample, self.accept)
    }

    /// The curve for a lot of any size: `(share defective, likelihood of acceptance)`, both from 0
    /// to 1, at `steps` + 1 shares from none to `most`.
    pub fn curve(&self, most: f64, steps: u32) -> Vec<(f64, f64)> {
        let share = |step: u32| most * f64::from(step) / f64::from(steps.max(1));
        (0..=steps)
            .map(|step| (share(step), binomial(self.sample, self.accept, share(step))))
            .collect()
    }
}
