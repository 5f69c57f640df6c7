//! From a spec and a language to bytes for paper and spreadsheets. Knows nothing of the web.

pub mod qr;
pub mod sheet;
