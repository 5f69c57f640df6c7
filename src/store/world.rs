//! Time and chance, handed in: tests hand in their own.

use std::fmt;
use std::sync::Arc;

use crate::exchange::ledger::Salt;
use crate::exchange::record::Key;
use crate::spec::Time;

type Clock = dyn Fn() -> Time + Send + Sync;
type Chance = dyn Fn(&mut [u8]) + Send + Sync;

/// What the program asks of the world: what time it is, and bytes that nobody can guess.
#[derive(Clone)]
pub struct World {
    clock: Arc<Clock>,
    chance: Arc<Chance>,
}

impl World {
    pub fn new(
        clock: impl Fn() -> Time + Send + Sync + 'static,
        chance: impl Fn(&mut [u8]) + Send + Sync + 'static,
    ) -> Self {
        Self {
            clock: Arc::new(clock),
            chance: Arc::new(chance),
        }
    }

    pub fn now(&self) -> Time {
        (self.clock)()
    }

    /// The moment `seconds` from now; before now when negative.
    pub fn after(&self, seconds: i64) -> Time {
        later(&self.now(), seconds)
    }

    /// A new id.
    pub fn id(&self) -> String {
        uuid::Builder::from_random_bytes(self.bytes())
            .into_uuid()
            .to_string()
    }

    /// 256 bits as text that fits into an address: a session's or a link's token.
    pub fn token(&self) -> String {
        use base64::Engine as _;
        base64::engine::general_purpose::URL_SAFE_NO_PAD.encode(self.bytes::<32>())
    }

    /// A salt for the hash of a personal text.
    pub fn salt(&self) -> Salt {
        Salt::new(self.bytes())
    }

    /// A key to sign records with.
    pub fn record_key(&self) -> Key {
        Key::new(self.bytes())
    }

    /// Eight letters and digits that are not mistaken for each other, to be read from one screen
    /// and typed on another: 40 bits, enough for a code that lives ten minutes behind a rate limit.
    pub fn short_code(&self) -> String {
        const CLEAR: &[u8; 32] = b"23456789ABCDEFGHJKLMNPQRSTUVWXYZ";
        self.bytes::<8>()
            .iter()
            .map(|byte| char::from(CLEAR[usize::from(byte % 32)]))
            .collect()
    }

    fn bytes<const N: usize>(&self) -> [u8; N] {
        let mut bytes = [0; N];
        (self.chance)(&mut bytes);
        bytes
    }
}

impl fmt::Debug for World {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("World")
    }
}

/// The moment `seconds` after this one, kept inside the years that the fixed form can write.
pub fn later(time: &Time, seconds: i64) -> Time {
    let moved = time
        .as_str()
        .parse::<jiff::Timestamp>()
        .ok()
        .and_then(|at| {
            at.checked_add(jiff::SignedDuration::from_secs(seconds))
                .ok()
        });
    moved.map_or_else(|| time.clone(), stamp)
}

/// A timestamp in the form that the program keeps.
pub fn stamp(at: jiff::Timestamp) -> Time {
    let text = at.strftime("%Y-%m-%dT%H:%M:%S.%3fZ").to_string();
    Time::try_from(text).expect("years 0 to 9999 have four digits")
}

#[cfg(test)]
mod tests {
    use super::*;

    fn world() -> World {
        World::new(
            || Time::try_from("2026-02-28T23:59:30.250Z".to_owned()).unwrap(),
            |bytes| {
                for (n, byte) in bytes.iter_mut().enumerate() {
                    *byte = (n as u8).wrapping_mul(37);
                }
            },
        )
    }

    #[test]
    fn time_moves_over_the_end_of_a_month() {
        assert_eq!(world().after(60).as_str(), "2026-03-01T00:00:30.250Z");
        assert_eq!(world().after(-60).as_str(), "2026-02-28T23:58:30.250Z");
    }

    #[test]
    fn codes_have_no_letters_that_look_alike() {
        let code = world().short_code();
        assert_eq!(code.len(), 8);
        assert!(!code.contains(['0', 'O', '1', 'I']));
    }

    #[test]
    fn a_token_fits_into_an_address() {
        let token = world().token();
        assert_eq!(token.len(), 43);
        assert!(
            token
                .bytes()
                .all(|b| b.is_ascii_alphanumeric() || b == b'-' || b == b'_')
        );
    }
}
