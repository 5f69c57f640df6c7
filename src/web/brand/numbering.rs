//! A style is begun: with the number that was typed, or the next free one of the brand's scheme.

use crate::access::{Permit, StylePermit, act};
use crate::language::Text;
use crate::spec::number_scheme::{Choices, collision};
use crate::spec::{NumberScheme, Spec, StyleId};
use crate::store::StoreError;
use crate::web::App;
use crate::web::form::{Errors, Fields};
use crate::web::problem::Problem;

/// How often a proposed number may be taken by somebody else in the same moment.
const TRIES: usize = 5;

/// How styles are numbered.
pub struct Numbering {
    pub scheme: Option<NumberScheme>,
    taken: Vec<String>,
}

impl Numbering {
    pub async fn read(app: &App, permit: &Permit<act::Browse>) -> Result<Numbering, Problem> {
        Ok(Numbering {
            scheme: app.store.number_scheme(permit).await?,
            taken: app.store.taken_numbers(permit).await?,
        })
    }

    fn taken(&self) -> impl Iterator<Item = &str> {
        self.taken.iter().map(String::as_str)
    }

    /// The next free number, where there is nothing to choose.
    pub fn next(&self) -> Option<String> {
        let scheme = self.scheme.as_ref()?;
        scheme.next(&Choices::new(), self.taken()).ok()
    }

    /// The number of a new style: typed, or proposed. Nothing when there is an error.
    fn number(&self, t: Text, fields: &Fields, errors: &mut Errors) -> Option<String> {
        let typed = fields.line(t, "number", errors);
        let wrong = match (&self.scheme, typed.as_str()) {
            (Some(scheme), "") => match scheme.next(&choices(scheme, fields), self.taken()) {
                Ok(next) => return Some(next),
                Err(why) => t.no_number(&why),
            },
            (None, "") => t.say("error-missing"),
            (scheme, typed) => match scheme.as_ref().map(|scheme| scheme.read(typed)) {
                Some(Err(why)) => t.not_a_number(why),
                _ => match collision(typed, self.taken()) {
                    Some(other) if other == typed => t.say("error-number-taken"),
                    Some(other) => t.say("error-number-like").with("other", other),
                    None => return Some(typed.to_owned()),
                },
            },
        };
        errors.add("number", wrong);
        None
    }
}

/// What was chosen from each list of the scheme.
fn choices(scheme: &NumberScheme, fields: &Fields) -> Choices {
    let chosen = scheme.lists().map(|list| {
        let code = fields.text(&format!("list.{}", list.name));
        (list.name.clone(), code.to_owned())
    });
    chosen.filter(|(_, code)| !code.is_empty()).collect()
}

/// A form that begins a style.
pub struct Begin<'a> {
    pub app: &'a App,
    pub t: Text,
    pub permit: &'a Permit<act::Create>,
    pub fields: &'a Fields,
    /// The style that it is copied from.
    pub from: Option<&'a StylePermit<act::Review>>,
}

impl Begin<'_> {
    /// Begins a style with `start` and the form's number and name; nothing when something is
    /// wrong with them, which is then among the errors.
    pub async fn style(
        &self,
        numbering: &Numbering,
        mut start: Spec,
        errors: &mut Errors,
    ) -> Result<Option<StyleId>, Problem> {
        start.header.name = self.fields.line(self.t, "name", errors);
        if start.header.name.is_empty() {
            errors.add("name", self.t.say("error-missing"));
        }
        let proposed = self.fields.text("number").is_empty();
        let mut taken = Vec::new();
        for _ in 0..TRIES {
            let numbering = Numbering {
                scheme: numbering.scheme.clone(),
                taken: numbering.taken.iter().chain(&taken).cloned().collect(),
            };
            let number = numbering.number(self.t, self.fields, errors);
            let Some(number) = number.filter(|_| errors.is_empty()) else {
                return Ok(None);
            };
            start.header.number = number.clone();
            let store = &self.app.store;
            let begun = match self.from {
                Some(from) => store.copy_style(self.permit, from, &start).await,
                None => store.create_style(self.permit, &start).await,
            };
            match begun {
                Ok(style) => return Ok(Some(style)),
                Err(StoreError::Unique(_)) if proposed => taken.push(number),
                Err(StoreError::Unique(_)) => break,
                Err(other) => return Err(other.into()),
            }
        }
        errors.add("number", self.t.say("error-number-taken"));
        Ok(None)
    }
}
