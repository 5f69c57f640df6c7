//! From a spec and a language to bytes for paper and spreadsheets, and a style as one archive.
//! Knows nothing of the web.

pub mod archive;
pub mod paper;
pub mod qr;
pub mod sheet;
