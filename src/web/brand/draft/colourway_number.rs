//! Numbers of colourways: proposed by the brand's scheme, and no two alike.

use crate::access::{act, grant};
use crate::language::{Message, Text};
use crate::spec::NumberScheme;
use crate::spec::number_scheme::{Number, collision};
use crate::web::App;
use crate::web::may::Who;
use crate::web::problem::Problem;

/// What the numbers of a style's colourways have to keep to.
pub struct ColourwayNumbers {
    /// The scheme with what the style's own number says in it; nothing where the brand's scheme has
    /// no counter for colourways, or where the style is numbered by no scheme.
    scheme: Option<(NumberScheme, Number)>,
    /// The style's own number.
    style: String,
    /// The numbers of all styles.
    taken: Vec<String>,
}

impl ColourwayNumbers {
    pub async fn read(app: &App, who: &Who, style: &str) -> Result<ColourwayNumbers, Problem> {
        let browse = grant::<act::Browse>(&who.session.actor)?;
        let scheme = app.store.number_scheme(&browse).await?;
        let scheme = scheme.filter(NumberScheme::numbers_colourways);
        Ok(ColourwayNumbers {
            scheme: scheme.and_then(|scheme| {
                let number = scheme.read(style).ok()?;
                Some((scheme, number))
            }),
            style: style.to_owned(),
            taken: app.store.taken_numbers(&browse).await?,
        })
    }

    /// The number to propose, when the style's colourways have these.
    pub fn next<'a>(&self, taken: impl IntoIterator<Item = &'a str>) -> Option<String> {
        let (scheme, style) = self.scheme.as_ref()?;
        scheme.next_colourway(style, taken).ok()
    }

    /// What is wrong with a number that was typed, beside the numbers of the other colourways. One
    /// that was there before the scheme may stay: `old` is not held against it.
    pub fn wrong<'a>(
        &self,
        t: Text,
        number: &str,
        old: &str,
        others: impl IntoIterator<Item = &'a str>,
    ) -> Option<Message> {
        if number.is_empty() {
            return None;
        }
        if collision(number, others).is_some() {
            return Some(t.say("error-colourway-number-twice"));
        }
        if number == old {
            return None;
        }
        let styles = self.taken.iter().map(String::as_str);
        if collision(number, styles).is_some() {
            return Some(t.say("error-colourway-number-style"));
        }
        let (scheme, style) = self.scheme.as_ref()?;
        match scheme.read(number) {
            Err(why) => Some(t.not_a_number(why)),
            Ok(read) if read.colourway.is_some() && same_style(&read, style) => None,
            Ok(_) => Some(
                t.say("error-colourway-number-other")
                    .with("number", self.style.as_str())
                    .with("like", self.next([]).unwrap_or_default()),
            ),
        }
    }
}

fn same_style(one: &Number, other: &Number) -> bool {
    (&one.choices, one.count) == (&other.choices, other.count)
}
