//! What only a browser can show: the real program, real Chromium, two people at a time.
//!
//! Every window fails its test on an error in the console (a breach of the content policy is one)
//! and on a page that scrolls sideways.

mod axe;
mod beginning;
mod demo;
mod dimensions;
mod entering;
mod foreign;
mod garment;
mod grid;
mod letters;
mod order;
mod pictures;
mod samples;
mod sealing;
mod service;
mod sketch;
mod slow;
mod stage;
mod together;
mod typed;
mod walk;
mod window;
