//! The header: what the garment is, and what its numbers hold for.

use askama::Template;

use super::{SectionPage, Sent};
use crate::language::Text;
use crate::spec::document::{Header, Market, MeasuringState, Size, Wearer};
use crate::spec::units::Unit;
use crate::spec::{ItemId, Spec};
use crate::store::{Draft, StoreError};
use crate::web::form::{Errors, Fields};
use crate::web::frame::Frame;
use crate::web::may::Who;
use crate::web::page::{Answer, go, page, page_again};

const WEARERS: [(&str, Wearer); 5] = [
    ("women", Wearer::Women),
    ("men", Wearer::Men),
    ("unisex", Wearer::Unisex),
    ("children", Wearer::Children),
    ("infants", Wearer::Infants),
];
const MARKETS: [(&str, Market); 4] = [
    ("eu", Market::Eu),
    ("uk", Market::Uk),
    ("us", Market::Us),
    ("other", Market::Other),
];

#[derive(Template)]
#[template(path = "brand/header.html")]
struct HeaderPage {
    t: Text,
    frame: Frame,
    page: SectionPage,
    typed: Typed,
    sizes: Vec<Size>,
    errors: Errors,
}

/// The header as it stands in the form.
#[derive(Default)]
struct Typed {
    header: Header,
    /// `as_sewn`, `after_finish`, `after_washes`, or nothing.
    measured: &'static str,
    washes: String,
}

impl Typed {
    fn of(header: &Header) -> Typed {
        let (measured, washes) = match header.measured {
            None => ("", String::new()),
            Some(MeasuringState::AsSewn) => ("as_sewn", String::new()),
            Some(MeasuringState::AfterFinish) => ("after_finish", String::new()),
            Some(MeasuringState::AfterWashes(count)) => ("after_washes", count.to_string()),
        };
        Typed {
            header: header.clone(),
            measured,
            washes,
        }
    }

    /// What the form does not show stays as it is in `old`.
    fn read(t: Text, fields: &Fields, old: &Spec, errors: &mut Errors) -> Typed {
        let mut line = |name| fields.line(t, name, errors);
        let mut header = Header {
            number: line("number"),
            name: line("name"),
            garment: line("garment"),
            season: line("season"),
            origin: line("origin"),
            main_fabric: line("main_fabric"),
            contrast_fabric: line("contrast_fabric"),
            ..old.header.clone()
        };
        for (field, text) in [("number", &header.number), ("name", &header.name)] {
            if text.is_empty() {
                errors.add(field, t.say("error-missing"));
            }
        }
        header.wearer = WEARERS
            .iter()
            .find(|(name, _)| *name == fields.text("wearer"))
            .map(|(_, wearer)| *wearer);
        header.markets = MARKETS
            .iter()
            .filter(|(name, _)| fields.all("markets").any(|ticked| ticked == *name))
            .map(|(_, market)| *market)
            .collect();
        header.unit = Unit::from_name(fields.text("unit"));
        let base = ItemId::new(fields.text("base_size"));
        header.base_size = old.size(&base).is_some().then_some(base);
        let washes = fields.text("washes").to_owned();
        let measured = ["as_sewn", "after_finish", "after_washes"]
            .into_iter()
            .find(|name| *name == fields.text("measured"))
            .unwrap_or_default();
        header.measured = match measured {
            "as_sewn" => Some(MeasuringState::AsSewn),
            "after_finish" => Some(MeasuringState::AfterFinish),
            "after_washes" => {
                let count = washes.parse().ok().filter(|count| (1..=99).contains(count));
                if count.is_none() {
                    errors.add("washes", t.say("error-washes"));
                }
                count.map(MeasuringState::AfterWashes)
            }
            _ => None,
        };
        Typed {
            header,
            measured,
            washes,
        }
    }
}

impl HeaderPage {
    fn new(who: &Who, around: SectionPage, draft: &Draft, typed: Typed, errors: Errors) -> Self {
        HeaderPage {
            t: who.t,
            frame: who.frame(),
            page: around,
            typed,
            sizes: draft.spec.sizes.sizes.clone(),
            errors,
        }
    }
}

pub fn show(who: &Who, around: SectionPage, draft: &Draft) -> Answer {
    let typed = Typed::of(&draft.spec.header);
    page(&HeaderPage::new(
        who,
        around,
        draft,
        typed,
        Errors::default(),
    ))
}

pub async fn save(sent: Sent) -> Answer {
    let t = sent.who.t;
    let mut errors = Errors::default();
    let typed = Typed::read(t, &sent.form.fields, &sent.draft.spec, &mut errors);
    if errors.is_empty() {
        let mut spec = sent.draft.spec.clone();
        spec.header = typed.header.clone();
        match sent.keep(&spec, "").await {
            Ok(to) => return go(&to),
            Err(StoreError::Unique(_)) => errors.add("number", t.say("error-number-taken")),
            Err(other) => return Err(other.into()),
        }
    }
    let around = sent.around().await?;
    page_again(&HeaderPage::new(
        &sent.who,
        around,
        &sent.draft,
        typed,
        errors,
    ))
}
