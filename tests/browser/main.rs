//! What only a browser can show: the real program, real Chromium, two people at a time.
//!
//! Every window fails its test on an error in the console (a breach of the content policy is one)
//! and on a page that scrolls sideways.

mod entering;
mod demo;
mod dimensions;
mod garment;
mod grid;
mod pictures;
mod letters;
mod samples;
mod service;
mod stage;
mod walk;
mod window;
