//! From a spec, a language and file bytes to bytes for paper. Knows nothing of the web.

pub mod qr;
