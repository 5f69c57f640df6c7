//! Pages for the brand alone.

pub mod copy;
pub mod draft;
pub mod history;
pub mod new_round;
mod numbering;
pub mod numbers;
pub mod round;
pub mod publish;
pub mod starts;
pub mod styles;
pub mod tables;
pub mod translations;
pub mod wordings;
