//! What the forms of the page say.

use crate::exchange::approval::{Anchor, Kind, Verdict};
use crate::language::Text;
use crate::spec::ItemId;
use crate::spec::document::Lab;
use crate::web::both::reading;
use crate::web::form::{Errors, Fields};
use crate::web::problem::Problem;

/// An option to submit, as it stands in the form.
pub struct Submitted {
    pub anchor: Anchor,
    pub revision: u32,
    pub note: String,
    pub l: String,
    pub a: String,
    pub b: String,
    pub illuminant: String,
    pub observer: String,
    pub instrument: String,
    /// The reading, where one was typed.
    pub lab: Option<Lab>,
    pub errors: Errors,
}

impl Submitted {
    /// The empty form for a thing of this revision.
    pub fn of(anchor: &Anchor, revision: u32) -> Submitted {
        Submitted {
            anchor: anchor.clone(),
            revision,
            note: String::new(),
            l: String::new(),
            a: String::new(),
            b: String::new(),
            illuminant: String::new(),
            observer: String::new(),
            instrument: String::new(),
            lab: None,
            errors: Errors::default(),
        }
    }

    /// Errors: `BadForm` when it does not say for what it is, which no page leaves out.
    pub fn read(t: Text, fields: &Fields) -> Result<Submitted, Problem> {
        let id = |name: &str| {
            let id = Some(fields.text(name)).filter(|id| !id.is_empty());
            id.map(ItemId::new)
        };
        let anchor = Anchor {
            kind: Kind::from_name(fields.text("kind")).ok_or(Problem::BadForm)?,
            item: id("item").ok_or(Problem::BadForm)?,
            colourway: id("colourway"),
            fabric: id("fabric"),
        };
        let revision = fields.number("revision").ok_or(Problem::BadForm)?;
        let mut errors = Errors::default();
        let mut line = |name| fields.line(t, name, &mut errors);
        let mut sent = Submitted {
            note: line("note"),
            l: line("l"),
            a: line("a"),
            b: line("b"),
            illuminant: line("illuminant"),
            observer: line("observer"),
            instrument: line("instrument"),
            ..Submitted::of(&anchor, revision)
        };
        if anchor.kind == Kind::LabDip {
            let typed = reading::Typed {
                numbers: [&sent.l, &sent.a, &sent.b],
                illuminant: &sent.illuminant,
                observer: &sent.observer,
            };
            sent.lab = reading::read(t, typed, &mut errors);
        }
        sent.errors = errors;
        Ok(sent)
    }
}

/// A decision, as it stands in the form.
#[derive(Default)]
pub struct Decided {
    pub verdict: Option<Verdict>,
    pub reason: String,
    pub errors: Errors,
}

impl Decided {
    pub fn read(t: Text, fields: &Fields) -> Decided {
        let mut errors = Errors::default();
        let verdict = Verdict::from_name(fields.text("verdict"));
        if verdict.is_none() {
            errors.add("verdict", t.say("error-choice-missing"));
        }
        let reason = fields.line(t, "reason", &mut errors);
        if verdict == Some(Verdict::Rejected) && reason.is_empty() {
            errors.add("reason", t.say("refused-reason-missing"));
        }
        Decided {
            verdict,
            reason,
            errors,
        }
    }

    pub fn chose(&self, verdict: &Verdict) -> bool {
        self.verdict == Some(*verdict)
    }
}
