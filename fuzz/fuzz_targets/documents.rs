//! Bytes as they come: `cargo fuzz run documents fuzz/corpus/documents tests/golden`.
#![no_main]

use libfuzzer_sys::fuzz_target;

fuzz_target!(|bytes: &[u8]| fellseam_fuzz::read(bytes));
