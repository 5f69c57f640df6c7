//! The form that sends the pieces: what they are made of, and how they travel.

use crate::exchange::round::{Materials, Sending};
use crate::language::Text;
use crate::web::form::{Errors, Fields};

use super::next::{Next, Way};

const FIELDS: [&str; 3] = ["materials", "substitutes", "parcel"];

/// The form as it stands.
#[derive(Default)]
pub struct SendForm {
    pub materials: Option<Materials>,
    pub substitutes: String,
    pub parcel: String,
    pub errors: Errors,
}

impl SendForm {
    /// The empty form, for who may send the pieces now.
    pub fn of(next: &Next) -> Option<SendForm> {
        let sends = |way: &Way| matches!(way, Way::Send { .. });
        next.ways.iter().any(sends).then(SendForm::default)
    }

    pub fn read(t: Text, fields: &Fields) -> SendForm {
        let mut errors = Errors::default();
        let materials = Materials::from_name(fields.text("materials"));
        if materials.is_none() {
            errors.add("materials", t.say("rounds-send-materials-missing"));
        }
        let substitutes = fields.line(t, "substitutes", &mut errors);
        if materials == Some(Materials::Substitute) && substitutes.is_empty() {
            errors.add("substitutes", t.say("refused-substitutes-missing"));
        }
        SendForm {
            materials,
            substitutes,
            parcel: fields.line(t, "parcel", &mut errors),
            errors,
        }
    }

    pub fn chose(&self, materials: &Materials) -> bool {
        self.materials == Some(*materials)
    }

    /// What is kept; `None` while something is wrong with it.
    pub fn sending(&self) -> Option<Sending<'_>> {
        self.errors.is_empty().then_some(())?;
        Some(Sending {
            materials: self.materials?,
            substitutes: &self.substitutes,
            parcel: &self.parcel,
        })
    }
}

/// The fields of the form that were sent.
pub fn typed(fields: &Fields) -> Vec<(&'static str, String)> {
    let sent = FIELDS.into_iter().filter(|name| fields.has(name));
    sent.map(|name| (name, fields.text(name).to_owned()))
        .collect()
}
