//! Pages and acts of the factories alone.

pub mod acknowledge;
pub mod round;
