//! The letters that points are proposed: A to Z, then AA, AB ...

/// The letter of this place, counted from 0.
pub fn nth(mut place: usize) -> String {
    let mut letters = Vec::new();
    loop {
        let digit = u8::try_from(place % 26).expect("below 26");
        letters.insert(0, char::from(b'A' + digit));
        if place < 26 {
            return letters.into_iter().collect();
        }
        place = place / 26 - 1;
    }
}

/// The place of a letter; nothing for any other text.
pub fn place(letter: &str) -> Option<usize> {
    let letter = letter.trim();
    if letter.is_empty() || letter.len() > 4 {
        return None;
    }
    letter
        .chars()
        .try_fold(0, |before, c| {
            let c = c.to_ascii_uppercase();
            let digit = c.is_ascii_uppercase().then(|| c as usize - 'A' as usize)?;
            Some(before * 26 + digit + 1)
        })?
        .checked_sub(1)
}

/// The letters after the last one that is taken: a letter that was given up is not proposed again,
/// since older papers still carry it.
pub fn after<'a>(taken: impl IntoIterator<Item = &'a str>) -> impl Iterator<Item = String> {
    let last = taken.into_iter().filter_map(place).max();
    (last.map_or(0, |last| last + 1)..).map(nth)
}

/// The letters from A on for points in their order, but for those that stand for something else of
/// the spec: on paper a letter names one thing.
pub fn in_order(others: Vec<&str>) -> impl Iterator<Item = String> {
    let is_free = move |letter: &String| {
        let mut others = others.iter();
        !others.any(|other| other.trim().eq_ignore_ascii_case(letter))
    };
    (0..).map(nth).filter(is_free)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn letters_go_on_after_z() {
        let shown: Vec<String> = (0..3).chain(24..29).chain(700..704).map(nth).collect();
        let all = [
            "A", "B", "C", "Y", "Z", "AA", "AB", "AC", "ZY", "ZZ", "AAA", "AAB",
        ];
        assert_eq!(shown, all);
        for n in 0..20_000 {
            assert_eq!(place(&nth(n)), Some(n));
        }
    }

    #[test]
    fn letters_in_order_leave_out_those_of_other_things() {
        let shown: Vec<String> = in_order(vec!["b", " D ", "P1"]).take(4).collect();
        assert_eq!(shown, ["A", "C", "E", "F"]);
    }

    #[test]
    fn proposals_follow_the_last_letter_and_skip_what_is_none() {
        let after = |taken: &[&str]| after(taken.iter().copied()).next().unwrap();
        assert_eq!(after(&[]), "A");
        assert_eq!(after(&["A", "c"]), "D");
        assert_eq!(after(&["Z", "12", "", "B2", "é"]), "AA");
    }
}
