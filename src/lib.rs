//! Fellseam: the exchange of a garment spec between a clothing brand and its factories.
//!
//! The rooms, in reading order. An arrow never points up this list.

#![forbid(unsafe_code)]
#![warn(clippy::unwrap_used)]

pub mod spec;

pub mod sample;

pub mod exchange;

pub mod access;

pub mod language;

#[cfg(feature = "service")]
pub mod store;

#[cfg(feature = "service")]
pub mod notify;

#[cfg(feature = "service")]
pub mod files;

#[cfg(feature = "service")]
pub mod print;

#[cfg(feature = "service")]
pub mod web;

#[cfg(feature = "service")]
pub mod cli;
