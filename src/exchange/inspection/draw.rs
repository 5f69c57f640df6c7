//! How many pieces of each colourway and size are drawn: common practice, no source.

use super::Group;

/// So many pieces of each group, in their order: in proportion to the lot, the rest to the largest
/// remainders (of equal ones to the first), and at least one of each where the sample suffices.
///
/// Their sum is the sample, or the lot where that is smaller; no group gives more than it has.
pub fn draw(groups: &[Group], sample: u32) -> Vec<u32> {
    let lot: u64 = groups.iter().map(|it| u64::from(it.pieces)).sum();
    let sample = u64::from(sample).min(lot);
    if sample == 0 {
        return vec![0; groups.len()];
    }
    // A remainder is in parts of the whole lot. Where there is one the group has more than its
    // whole part, so that one more is there to be drawn.
    let quota = |it: &Group| u64::from(it.pieces) * sample;
    let mut drawn: Vec<u64> = groups.iter().map(|it| quota(it) / lot).collect();
    let mut by_remainder: Vec<usize> = (0..groups.len()).collect();
    by_remainder.sort_by_key(|at| std::cmp::Reverse(quota(&groups[*at]) % lot));
    let rest = sample - drawn.iter().sum::<u64>();
    for at in by_remainder.iter().take(rest as usize) {
        drawn[*at] += 1;
    }
    let filled = groups.iter().filter(|it| it.pieces > 0).count() as u64;
    if filled <= sample {
        for at in 0..groups.len() {
            if groups[at].pieces == 0 || drawn[at] > 0 {
                continue;
            }
            // From whoever has most beyond its share. Since the sample suffices for all, one has two.
            let beyond =
                |it: &usize| drawn[*it] as i128 * i128::from(lot) - i128::from(quota(&groups[*it]));
            let most = (0..groups.len())
                .filter(|it| drawn[*it] > 1)
                .max_by_key(beyond);
            if let Some(most) = most {
                drawn[most] -= 1;
                drawn[at] = 1;
            }
        }
    }
    // No group has more than its u32 of pieces.
    drawn.into_iter().map(|it| it as u32).collect()
}

#[cfg(test)]
mod tests;
