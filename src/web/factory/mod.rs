//! Pages and acts of the factories alone.

pub mod round;
