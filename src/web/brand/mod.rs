//! Pages for the brand alone.

pub mod draft;
pub mod new_round;
pub mod numbers;
pub mod round;
pub mod publish;
pub mod styles;
