//! Check characters by ISO/IEC 7064:2003: five of its systems, written out here since the whole of
//! their arithmetic is two loops.
//!
//! Every system finds each single wrong character. The pure ones (MOD 11-2, 37-2, 97-10) also find
//! each exchange of two neighbours; of the hybrid ones MOD 11,10 misses one in 45 and MOD 37,36 one
//! in 630. Separators (all but letters and digits) do not count, nor does case.
//!
//! MOD 97-10 is for digits. Letters count as two digits, A as 10 to Z as 35, as ISO 13616 and ISO
//! 17442 have it; a letter that was typed for a digit, or an exchange of the two, may then go
//! unseen (`1B`, `B1`): with letters another system is better.

use serde::{Deserialize, Serialize};

#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
pub enum CheckSystem {
    /// Digits; one digit or `X`.
    #[serde(rename = "mod_11_2")]
    Mod11_2,
    /// Letters and digits; one letter, digit or `*`.
    #[serde(rename = "mod_37_2")]
    Mod37_2,
    /// Digits (and letters, see above); two digits.
    #[serde(rename = "mod_97_10")]
    Mod97_10,
    /// Digits; one digit.
    #[serde(rename = "mod_11_10")]
    Mod11_10,
    /// Letters and digits; one letter or digit.
    #[serde(rename = "mod_37_36")]
    Mod37_36,
}

const CHARACTERS: &[u8; 37] = b"0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ*";

impl CheckSystem {
    pub const ALL: [CheckSystem; 5] = [
        CheckSystem::Mod11_2,
        CheckSystem::Mod37_2,
        CheckSystem::Mod97_10,
        CheckSystem::Mod11_10,
        CheckSystem::Mod37_36,
    ];

    /// As the standard calls it, in every language.
    pub const fn designation(self) -> &'static str {
        match self {
            CheckSystem::Mod11_2 => "MOD 11-2",
            CheckSystem::Mod37_2 => "MOD 37-2",
            CheckSystem::Mod97_10 => "MOD 97-10",
            CheckSystem::Mod11_10 => "MOD 11,10",
            CheckSystem::Mod37_36 => "MOD 37,36",
        }
    }

    /// How many check characters it gives.
    pub const fn length(self) -> usize {
        match self {
            CheckSystem::Mod97_10 => 2,
            _ => 1,
        }
    }

    /// Whether a number with this character can be protected. Separators do not count; the `*` of
    /// MOD 37-2 is none, it would be taken for the check character.
    pub fn takes(self, c: char) -> bool {
        match self {
            _ if !c.is_alphanumeric() => c != '*' || self != CheckSystem::Mod37_2,
            CheckSystem::Mod11_2 | CheckSystem::Mod11_10 => c.is_ascii_digit(),
            _ => c.is_ascii_alphanumeric(),
        }
    }

    /// The check characters of a number that has none yet; nothing when it has a character that
    /// the system does not take, or none that counts.
    pub fn characters(self, number: &str) -> Option<String> {
        if !number.chars().all(|c| self.takes(c)) || !number.contains(char::is_alphanumeric) {
            return None;
        }
        let values = number.chars().filter_map(|c| c.to_digit(36));
        let check = match self {
            CheckSystem::Mod11_2 => pure(values, 11, 2),
            CheckSystem::Mod37_2 => pure(values, 37, 2),
            CheckSystem::Mod97_10 => {
                let digits = values.fold(0, |so_far, value| {
                    let shift = if value < 10 { 10 } else { 100 };
                    (so_far * shift + value) % 97
                });
                let check = 98 - digits * 100 % 97;
                return Some(format!("{check:02}"));
            }
            CheckSystem::Mod11_10 => hybrid(values, 10),
            CheckSystem::Mod37_36 => hybrid(values, 36),
        };
        let at = usize::try_from(check).expect("below 37");
        let character = match (self, check) {
            (CheckSystem::Mod11_2, 10) => 'X',
            _ => char::from(CHARACTERS[at]),
        };
        Some(character.to_string())
    }

    /// Whether these are the check characters of the number that stands before them.
    pub fn holds(self, number: &str, check: &str) -> bool {
        let expected = self.characters(number);
        expected.is_some_and(|expected| expected.eq_ignore_ascii_case(check))
    }
}

/// Each value with its weight, a power of the radix that grows to the left: with the check
/// character the sum leaves 1 over the modulus (clause 7.2, the recursive way).
fn pure(values: impl Iterator<Item = u32>, modulus: u32, radix: u32) -> u32 {
    let sum = values.fold(0, |sum, value| (sum + value) * radix % modulus);
    (1 + modulus - sum) % modulus
}

/// Taken modulo M and doubled modulo M + 1 in turn, 0 standing for M (clause 10).
fn hybrid(values: impl Iterator<Item = u32>, m: u32) -> u32 {
    let product = values.fold(m, |product, value| {
        let sum = match (product + value) % m {
            0 => m,
            sum => sum,
        };
        sum * 2 % (m + 1)
    });
    (m + 1 - product) % m
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::CheckSystem::*;
    use super::*;

    /// In the file's rows: system, number, check characters, where it was published.
    const PUBLISHED: &str = include_str!("../../../tests/reference/iso7064_examples.csv");

    #[test]
    fn published_examples_come_out() {
        let mut seen = Vec::new();
        let rows = PUBLISHED.lines().filter(|line| !line.starts_with('#'));
        for row in rows.skip(1) {
            let [system, number, check, ..] = row.split(';').collect::<Vec<_>>()[..] else {
                panic!("{row}");
            };
            let all = CheckSystem::ALL.into_iter();
            let system = all
                .into_iter()
                .find(|it| it.designation() == system)
                .unwrap();
            let expected = check.to_owned();
            assert_eq!(system.characters(number), Some(expected), "{row}");
            assert!(system.holds(&number.to_lowercase(), &check.to_lowercase()));
            seen.push(system);
        }
        for system in CheckSystem::ALL {
            let published = seen.iter().filter(|it| **it == system).count();
            assert!(published >= 2, "{}", system.designation());
        }
    }

    #[test]
    fn what_a_system_does_not_take_has_no_check_character() {
        for system in [Mod11_2, Mod11_10] {
            assert_eq!(system.characters("12A"), None);
        }
        for system in CheckSystem::ALL {
            for nothing in ["", "-", "12É", "12٣"] {
                assert_eq!(system.characters(nothing), None, "{nothing}");
            }
            assert_eq!(system.characters("1-2/ 3"), system.characters("123"));
            assert!(!system.holds("123", ""));
        }
    }

    /// The letters and digits that a slip may bring into a number with its check characters.
    fn alphabet(system: CheckSystem) -> &'static [u8] {
        match system {
            Mod11_2 | Mod11_10 | Mod97_10 => &CHARACTERS[..10],
            Mod37_2 | Mod37_36 => &CHARACTERS[..36],
        }
    }

    fn splits(system: CheckSystem, whole: &str) -> bool {
        let (number, check) = whole.split_at(whole.len() - system.length());
        system.holds(number, check)
    }

    proptest! {
        #[test]
        fn no_single_wrong_character_goes_unseen(places in prop::collection::vec(0usize..36, 1..20)) {
            for system in CheckSystem::ALL {
                let alphabet = alphabet(system);
                let whole = protected(system, &places);
                for at in 0..whole.len() {
                    for wrong in alphabet {
                        let mut slip = whole.clone().into_bytes();
                        slip[at] = *wrong;
                        let slip = String::from_utf8(slip).unwrap();
                        prop_assert_eq!(splits(system, &slip), slip == whole, "{} {}", whole, slip);
                    }
                }
            }
        }

        #[test]
        fn a_pure_system_sees_every_exchange_of_neighbours(
            places in prop::collection::vec(0usize..36, 1..20),
        ) {
            for system in [Mod11_2, Mod37_2, Mod97_10] {
                let whole = protected(system, &places);
                for slip in exchanges(&whole) {
                    prop_assert_eq!(splits(system, &slip), slip == whole, "{} {}", whole, slip);
                }
            }
        }

        /// The letters that ISO 13616 and ISO 17442 bring into MOD 97-10: among themselves they are
        /// as safe as digits.
        #[test]
        fn mod_97_10_sees_wrong_and_exchanged_letters(
            letters in prop::collection::vec(10usize..36, 2..20),
        ) {
            let number: String = letters.iter().map(|at| char::from(CHARACTERS[*at])).collect();
            let check = Mod97_10.characters(&number).unwrap();
            for slip in exchanges(&number) {
                prop_assert_eq!(Mod97_10.holds(&slip, &check), slip == number);
            }
            for at in 0..number.len() {
                let mut slip = number.clone().into_bytes();
                slip[at] = if slip[at] == b'Z' { b'A' } else { slip[at] + 1 };
                prop_assert!(!Mod97_10.holds(&String::from_utf8(slip).unwrap(), &check));
            }
        }
    }

    fn protected(system: CheckSystem, places: &[usize]) -> String {
        let alphabet = alphabet(system);
        let characters = places.iter().map(|at| alphabet[at % alphabet.len()]);
        let number: String = characters.map(char::from).collect();
        let check = system.characters(&number).unwrap();
        number + &check
    }

    fn exchanges(whole: &str) -> impl Iterator<Item = String> {
        (1..whole.len()).map(|at| {
            let mut slip = whole.as_bytes().to_vec();
            slip.swap(at - 1, at);
            String::from_utf8(slip).unwrap()
        })
    }

    #[test]
    fn what_goes_unseen_is_known() {
        // Exchanges of two unlike neighbours: all, and those that a system misses.
        let exchanged = |system: CheckSystem, numbers: &mut dyn Iterator<Item = String>| {
            let (mut all, mut missed) = (0, 0);
            for number in numbers {
                let whole = number.clone() + &system.characters(&number).unwrap();
                for slip in exchanges(&whole).filter(|slip| *slip != whole) {
                    all += 1;
                    missed += i32::from(splits(system, &slip));
                }
            }
            (all, missed)
        };
        let (all, missed) = exchanged(Mod11_10, &mut (0..10_000).map(|n| format!("{n:04}")));
        assert_eq!(missed * 45, all);
        let (all, missed) = exchanged(
            Mod37_36,
            &mut (0..36 * 36).map(|n| {
                let [one, two] = [n / 36, n % 36].map(|at: usize| char::from(CHARACTERS[at]));
                format!("{one}{two}")
            }),
        );
        assert_eq!(missed * 630, all);

        assert_eq!(Mod97_10.characters("1B"), Mod97_10.characters("B1"));
    }
}
