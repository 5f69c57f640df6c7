//! A world that tests command: a clock that moves by itself only a little, and chance that repeats.

use std::sync::Arc;
use std::sync::atomic::{AtomicI64, AtomicU64, Ordering};

use fellseam::spec::{Digest, Time};
use fellseam::store::{World, stamp};
use jiff::Timestamp;

pub const MINUTE: i64 = 60;
pub const DAY: i64 = 24 * 60 * MINUTE;

/// Starts on a Monday morning and ticks one millisecond each time it is read, so that no two moments
/// are one.
#[derive(Clone)]
pub struct Clock(Arc<AtomicI64>);

impl Clock {
    pub fn starts_at(time: &str) -> Clock {
        let start: Timestamp = time.parse().expect("a time");
        Clock(Arc::new(AtomicI64::new(start.as_millisecond())))
    }

    fn tick(&self) -> Time {
        let now = self.0.fetch_add(1, Ordering::Relaxed);
        stamp(Timestamp::from_millisecond(now).expect("a time within the years"))
    }

    /// Lets time pass.
    pub fn forward(&self, seconds: i64) {
        self.0.fetch_add(seconds * 1000, Ordering::Relaxed);
    }
}

/// The world of a test, and the clock that moves it.
pub fn world() -> (World, Clock) {
    let clock = Clock::starts_at("2026-03-02T08:00:00Z");
    let hand = clock.clone();
    let thrown = AtomicU64::new(0);
    let chance = move |bytes: &mut [u8]| {
        for chunk in bytes.chunks_mut(32) {
            let n = thrown.fetch_add(1, Ordering::Relaxed);
            let digest = Digest::of(&n.to_be_bytes());
            for (byte, pair) in chunk.iter_mut().zip(digest.as_str().as_bytes().chunks(2)) {
                let hex = std::str::from_utf8(pair).expect("hexadecimal digits");
                *byte = u8::from_str_radix(hex, 16).expect("hexadecimal digits");
            }
        }
    };
    (World::new(move || hand.tick(), chance), clock)
}
