//! What the program's own values are called.

mod exchange;

use crate::spec::Section;
use crate::spec::document::{Basis, Direction, Market, MeasuringState, Path, View, Wearer};
use crate::spec::units::Unit;

use super::message::{Message, Text};

/// A value of the program that pages have a word for.
pub trait Named {
    fn name(&self, t: Text) -> Message;
}

impl<T: Named + ?Sized> Named for &T {
    fn name(&self, t: Text) -> Message {
        (**self).name(t)
    }
}

impl Named for Section {
    fn name(&self, t: Text) -> Message {
        t.say(match self {
            Section::Header => "section-header",
            Section::Sizes => "section-sizes",
            Section::Drawings => "section-drawings",
            Section::Points => "section-points",
            Section::Colourways => "section-colourways",
        })
    }
}

impl Named for Wearer {
    fn name(&self, t: Text) -> Message {
        t.say(match self {
            Wearer::Women => "wearer-women",
            Wearer::Men => "wearer-men",
            Wearer::Unisex => "wearer-unisex",
            Wearer::Children => "wearer-children",
            Wearer::Infants => "wearer-infants",
        })
    }
}

impl Named for Market {
    fn name(&self, t: Text) -> Message {
        t.say(match self {
            Market::Eu => "market-eu",
            Market::Uk => "market-uk",
            Market::Us => "market-us",
            Market::Other => "market-other",
        })
    }
}

impl Named for MeasuringState {
    fn name(&self, t: Text) -> Message {
        match self {
            MeasuringState::AsSewn => t.say("measured-as-sewn"),
            MeasuringState::AfterFinish => t.say("measured-after-finish"),
            MeasuringState::AfterWashes(count) => {
                t.say("measured-after-washes").with("count", count)
            }
        }
    }
}

impl Named for Unit {
    fn name(&self, t: Text) -> Message {
        t.say(match self {
            Unit::Cm => "unit-cm",
            Unit::Mm => "unit-mm",
            Unit::Inch => "unit-inch",
        })
    }
}

impl Named for View {
    fn name(&self, t: Text) -> Message {
        t.say(match self {
            View::Front => "view-front",
            View::Back => "view-back",
            View::Left => "view-left",
            View::Right => "view-right",
            View::Detail => "view-detail",
        })
    }
}

impl Named for Path {
    fn name(&self, t: Text) -> Message {
        t.say(match self {
            Path::Straight => "path-straight",
            Path::Curved => "path-curved",
        })
    }
}

impl Named for Basis {
    fn name(&self, t: Text) -> Message {
        t.say(match self {
            Basis::Half => "basis-half",
            Basis::Full => "basis-full",
            Basis::Linear => "basis-linear",
        })
    }
}

impl Named for Direction {
    fn name(&self, t: Text) -> Message {
        t.say(match self {
            Direction::Length => "direction-length",
            Direction::Width => "direction-width",
        })
    }
}
