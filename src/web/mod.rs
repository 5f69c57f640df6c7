//! The pages. `routes.rs` is the whole table; each page is one file here, one struct, one template.
//!
//! A request's way: [`dress`](visit::dress) finds out who asks, an extractor ([`May`](may::May),
//! [`MayOn`](may::MayOn)) gives the permit or refuses, the handler calls pure code and store
//! functions, an askama struct renders.

mod app;
mod assets;
mod both;
mod brand;
mod cached;
mod entry;
mod factory;
mod figures;
mod form;
mod frame;
mod headers;
mod health;
mod limit;
mod may;
pub mod mail;
mod needs;
mod page;
mod password;
mod people;
mod plates;
mod problem;
mod refusal;
mod routes;
mod shape;
pub mod upload;
mod visit;

pub use app::{App, Settings};
pub use both::sign::figures;
pub use both::sign_box::screen_of as screen;
pub use cached::gzip;
pub use form::Upload;
pub use password::Passwords;
pub use problem::Problem;
pub use routes::{Route, router, table};
