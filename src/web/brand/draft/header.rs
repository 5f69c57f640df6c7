//! The header: what the garment is, and what its numbers hold for.

use askama::Template;
use serde_json::Value as Json;

use super::listed::{section_of, with_section};
use super::typed::{Desk, Node, Reader};
use super::{SectionPage, Sent};
use crate::exchange::Role;
use crate::language::Text;
use crate::spec::document::{
    Exemption, Header, Market, MeasuringState, Record, Section, Shape, Size, Wearer,
};
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
    /// What the garment is beside that.
    more: Vec<Node>,
    /// The rules set aside, where the reader cannot change them.
    exemptions: Vec<Exemption>,
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

/// The fields that are written as they are in any section.
///
/// Only an owner sets a rule aside.
fn more(role: Role) -> Vec<(&'static str, Shape)> {
    const MORE: [&str; 8] = [
        "kind",
        "worn",
        "year",
        "range",
        "languages",
        "edges",
        "asymmetric",
        "exemptions",
    ];
    let mut shapes = Header::shapes();
    shapes
        .retain(|(name, _)| MORE.contains(name) && (*name != "exemptions" || role == Role::Owner));
    shapes
}

impl HeaderPage {
    fn new(
        who: &Who,
        around: SectionPage,
        draft: &Draft,
        typed: Typed,
        sent: Option<&Fields>,
        errors: Errors,
    ) -> Self {
        let desk = Desk {
            t: who.t,
            spec: &draft.spec,
            sent,
            errors: &errors,
        };
        let header = Json::Object(section_of(&draft.spec, Section::Header));
        let role = who.session.actor.role;
        let exemptions = match role {
            Role::Owner => Vec::new(),
            _ => draft.spec.header.exemptions.clone(),
        };
        HeaderPage {
            t: who.t,
            frame: who.frame(),
            page: around,
            typed,
            sizes: draft.spec.sizes.sizes.clone(),
            more: desk.nodes("", &more(role), Some(&header)),
            exemptions,
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
        None,
        Errors::default(),
    ))
}

pub async fn save(sent: Sent) -> Answer {
    let t = sent.who.t;
    let mut errors = Errors::default();
    let typed = Typed::read(t, &sent.form.fields, &sent.draft.spec, &mut errors);
    let mut spec = sent.draft.spec.clone();
    spec.header = typed.header.clone();
    let mut header = section_of(&spec, Section::Header);
    let mut reader = Reader {
        t,
        fields: &sent.form.fields,
        unit: spec.header.unit,
        spec: &sent.draft.spec,
        errors: &mut errors,
    };
    reader.read("", &more(sent.who.session.actor.role), &mut header);
    if errors.is_empty() {
        let spec = with_section(&spec, Section::Header, header)?;
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
        Some(&sent.form.fields),
        errors,
    ))
}
