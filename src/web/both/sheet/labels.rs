//! Care in words, and the labels that are sewn in.

use serde::Serialize;

use super::artwork::{Original, Picture};
use super::{Fact, Head, Writer};
use crate::spec::Item;
use crate::spec::document::{self, Label, Record};
use crate::spec::table::Status;
use crate::web::plates::Bench;
use crate::web::plates::label::LabelPlate;

/// One treatment, in the order of ISO 3758.
#[derive(Serialize)]
pub struct CareLine {
    /// The document's name of the treatment, which the sign beside the words is drawn for.
    #[serde(skip)]
    pub sign: String,
    /// It is not to be done.
    #[serde(skip)]
    pub not: bool,
    pub words: String,
}

/// What composition labels say of the garment.
#[derive(Serialize)]
pub struct CompositionText {
    /// All that it is for.
    pub markets: String,
    /// As a tag.
    pub language: String,
    pub text: String,
    /// How far its words were checked.
    #[serde(skip)]
    pub status: Status,
}

#[derive(Serialize)]
pub struct LabelCard {
    pub head: Head,
    pub facts: Vec<Fact>,
    pub texts: Vec<LabelText>,
    pub distances: Vec<String>,
    /// Its own artwork.
    pub artwork: Option<Original>,
    #[serde(skip)]
    pub picture: Option<Picture>,
    /// Drawn to scale: says nothing more than is said elsewhere.
    #[serde(skip)]
    pub plate: LabelPlate,
}

#[derive(Serialize)]
pub struct LabelText {
    pub market: String,
    /// As a tag.
    pub language: String,
    pub text: String,
}

impl Writer<'_> {
    /// The document holds the treatments in their order.
    pub(super) fn care(&self) -> Vec<CareLine> {
        let fields = self.frozen.spec.labels.care.fields();
        let lines = fields.into_iter().filter_map(|(name, value)| match value {
            document::Value::Word { word, .. } => Some(CareLine {
                not: word == "no",
                words: self.words.value(&value, Some(&name)),
                sign: name.into_owned(),
            }),
            _ => None,
        });
        lines.collect()
    }

    /// As they were frozen; markets with one text together.
    pub(super) fn compositions(&self) -> Vec<CompositionText> {
        let mut texts: Vec<CompositionText> = Vec::new();
        for frozen in &self.frozen.compositions {
            let market = self.t.name(&frozen.market).to_string();
            let mut alike = texts.iter_mut();
            let same = alike.find(|it| it.language == frozen.language && it.text == frozen.text);
            match same {
                Some(same) => same.markets = format!("{}, {market}", same.markets),
                None => texts.push(CompositionText {
                    markets: market,
                    language: frozen.language.clone(),
                    text: frozen.text.clone(),
                    status: match frozen.verified {
                        true => Status::Verified,
                        false => Status::FromMemory,
                    },
                }),
            }
        }
        texts
    }

    pub(super) fn labels(&self) -> Vec<LabelCard> {
        let labels = self.frozen.spec.labels.labels.iter();
        let drawn = |bench: Bench<'_>| labels.map(|label| self.label(bench, label)).collect();
        self.at_bench(drawn)
    }

    fn label(&self, bench: Bench<'_>, label: &Label) -> LabelCard {
        let mut fields = label.fields();
        let own = ["letter", "name", "texts", "distances", "artwork"];
        self.take(&mut fields, &own);
        let texts = label.texts.iter().map(|text| LabelText {
            market: (text.market)
                .map(|it| self.t.name(&it).to_string())
                .unwrap_or_default(),
            language: text.language.clone(),
            text: text.text.clone(),
        });
        let artwork = label.artwork.as_ref();
        LabelCard {
            head: self.head(Item::Label(label)),
            facts: self.facts(&fields),
            texts: texts.collect(),
            distances: self.distances(&label.distances),
            artwork: artwork.map(|file| self.original(file)),
            picture: artwork.and_then(|file| self.picture(file)),
            plate: LabelPlate::of(bench, label),
        }
    }
}
