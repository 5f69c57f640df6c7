//! The pages. `routes.rs` is the whole table; each page is one file here, one struct, one template.
//!
//! A request's way: [`dress`](visit::dress) finds out who asks, an extractor gives the permit or
//! refuses, the handler calls pure code and store functions, an askama struct renders.

mod app;
mod form;
mod frame;
mod headers;
mod limit;
mod may;
mod password;
mod problem;
mod routes;
mod visit;

pub use app::{App, Settings};
pub use routes::{Route, router, table};
