//! A reading of a colour, L*a*b*, as it is typed.

use crate::language::Text;
use crate::spec::Decimal;
use crate::spec::colour::NotOnScreen;
use crate::spec::document::{Illuminant, Lab, Observer, Word};
use crate::web::form::Errors;

/// What stands in the fields `l`, `a`, `b`, `illuminant` and `observer`.
#[derive(Clone, Copy)]
pub struct Typed<'a> {
    pub numbers: [&'a str; 3],
    pub illuminant: &'a str,
    pub observer: &'a str,
}

/// The reading, where any number of it is written: then all of it has to be.
pub fn read(t: Text, typed: Typed<'_>, errors: &mut Errors) -> Option<Lab> {
    if typed.numbers.iter().all(|typed| typed.is_empty()) {
        return None;
    }
    let mut number = |(field, typed): (&str, &str)| {
        let read = Decimal::read(typed).ok();
        match (&read, typed) {
            (None, "") => errors.add(field, t.say("error-missing")),
            (None, typed) => errors.add(field, t.say("error-decimal").with("typed", typed)),
            (Some(_), _) => {}
        }
        read
    };
    let [l, a, b] = typed.numbers;
    let [l, a, b] = [("l", l), ("a", a), ("b", b)].map(&mut number);
    let illuminant = Illuminant::from_word(typed.illuminant);
    let observer = Observer::from_word(typed.observer);
    if illuminant.is_none() {
        errors.add("illuminant", t.say("error-choice-missing"));
    }
    if observer.is_none() {
        errors.add("observer", t.say("error-choice-missing"));
    }
    let lab = Lab {
        l: l?,
        a: a?,
        b: b?,
        illuminant: illuminant?,
        observer: observer?,
    };
    if !lab.is_of_a_surface() {
        errors.add("l", t.not_on_screen(NotOnScreen::NoColour));
    }
    Some(lab)
}
