//! The brand's limit of colour differences.

use crate::exchange::approval::cmc;
use crate::language::Text;
use crate::spec::colour::{Formula, Limit};
use crate::spec::{Decimal, DecimalSign};
use crate::web::form::{Errors, Fields};

/// The formulas to choose from, by the name that the form and the page have for each.
pub const FORMULAS: [&str; 2] = ["CMC(2:1)", "CIEDE2000"];

/// The form as it stands.
pub struct LimitForm {
    pub formula: String,
    pub most: String,
    pub errors: Errors,
}

impl LimitForm {
    pub fn of(limit: &Limit) -> LimitForm {
        LimitForm {
            formula: name(limit.formula),
            most: limit.at_most.to_string(),
            errors: Errors::default(),
        }
    }

    pub fn read(t: Text, fields: &Fields) -> LimitForm {
        let mut errors = Errors::default();
        let formula = fields.line(t, "formula", &mut errors);
        if !FORMULAS.contains(&formula.as_str()) {
            errors.add("formula", t.say("error-choice-missing"));
        }
        let most = fields.line(t, "most", &mut errors);
        let read = Decimal::read(&most).ok();
        if !read.is_some_and(Decimal::is_positive) {
            errors.add("most", t.say("error-decimal").with("typed", &most));
        }
        LimitForm {
            formula,
            most,
            errors,
        }
    }

    /// What is kept; `None` while something is wrong with it.
    pub fn limit(&self) -> Option<Limit> {
        self.errors.is_empty().then_some(())?;
        Some(Limit {
            formula: match self.formula.as_str() {
                "CIEDE2000" => Formula::Ciede2000 {},
                _ => cmc(),
            },
            at_most: Decimal::read(&self.most).ok()?,
        })
    }
}

/// What a formula is called.
fn name(formula: Formula) -> String {
    match formula {
        Formula::Cie76 {} => "ΔE*ab".to_owned(),
        Formula::Cmc { l, c } => format!("CMC({l}:{c})"),
        Formula::Ciede2000 {} => "CIEDE2000".to_owned(),
    }
}

pub fn said(t: Text, limit: &Limit, sign: DecimalSign) -> String {
    t.say("approvals-limit-is")
        .with("formula", name(limit.formula))
        .with("most", limit.at_most.show(sign))
        .to_string()
}
