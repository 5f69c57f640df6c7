//! A brake on guessing: passwords, links and codes.

use std::time::Duration;

use moka::sync::Cache;

/// How many wrong tries one name or one address has within [`WINDOW`].
const TRIES: u32 = 8;
const WINDOW: Duration = Duration::from_secs(15 * 60);
/// More names than this at once push out the oldest; an attacker then meets the brake per address.
const KEPT: u64 = 100_000;

/// Counts wrong tries by key. Lives in memory: a restart forgives.
pub struct Limiter {
    wrong: Cache<String, u32>,
}

impl Default for Limiter {
    fn default() -> Self {
        Self {
            wrong: Cache::builder()
                .max_capacity(KEPT)
                .time_to_live(WINDOW)
                .build(),
        }
    }
}

impl Limiter {
    /// Whether this key has tries left.
    pub fn open(&self, key: &str) -> bool {
        self.wrong.get(key).unwrap_or(0) < TRIES
    }

    /// One more wrong try.
    pub fn wrong(&self, key: &str) {
        self.wrong
            .entry(key.to_owned())
            .and_upsert_with(|count| count.map_or(1, |entry| entry.into_value().saturating_add(1)));
    }

    /// It was right: forget the wrong ones.
    pub fn right(&self, key: &str) {
        self.wrong.invalidate(key);
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_ninth_wrong_try_is_not_heard() {
        let limiter = Limiter::default();
        for _ in 0..TRIES {
            assert!(limiter.open("mai"));
            limiter.wrong("mai");
        }
        assert!(!limiter.open("mai"));
        assert!(limiter.open("another"));
        limiter.right("mai");
        assert!(limiter.open("mai"));
    }
}
