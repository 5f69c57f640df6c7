//! What every sheet is written with: the same said in each language, items, fields, lengths.

use std::collections::{BTreeMap, BTreeSet};

use super::block::{Attached, Block, Cell, Column, Document, Fact, Letter, Page, Tag, Words};
use super::parcel::Parcel;
use super::{Band, Edition, NoPrint, Part};
use crate::exchange::revision::Frozen;
use crate::language::{Language, Text, shown};
use crate::print::qr;
use crate::spec::change::{Change, Version, changes, touched};
use crate::spec::document::{Fields, Record};
use crate::spec::{Digest, Item, ItemId, Length, Spec, Unit};

/// Where a picture lies for the template, and its bytes.
pub type Pictures = BTreeMap<String, Vec<u8>>;

pub struct Writer<'a> {
    pub parcel: &'a Parcel,
    pub edition: &'a Edition,
    pub spec: &'a Spec,
    pub before: Option<&'a Frozen>,
    pub changes: Vec<Change>,
    /// What changed since the revision before.
    pub touched: BTreeSet<ItemId>,
    /// In the order in which they are said.
    pub texts: Vec<Text>,
    pub unit: Unit,
}

impl<'a> Writer<'a> {
    pub fn new(
        parcel: &'a Parcel,
        edition: &'a Edition,
        before: Option<&'a Frozen>,
        languages: &[Language],
    ) -> Self {
        let new = Version {
            spec: &edition.spec,
            chart: edition.chart.as_ref(),
        };
        let list = before.map(|old| changes(old.version(), new));
        let list = list.unwrap_or_default();
        Self {
            parcel,
            edition,
            spec: &edition.spec,
            before,
            touched: touched(&list),
            changes: list,
            texts: languages.iter().map(|it| it.text()).collect(),
            unit: edition.spec.header.unit.unwrap_or(Unit::Cm),
        }
    }

    /// All of it, and the pictures that it shows.
    pub fn document(&self) -> Result<(Document, Pictures), NoPrint> {
        let order = &self.parcel.order;
        let header = &self.spec.header;
        let mut sheets = Vec::new();
        for part in &order.parts {
            sheets.push(super::block::Sheet {
                title: self.each(|t| part.title(t)),
                pages: match part {
                    Part::Identity => self.identity(),
                    Part::Pattern => self.pattern(),
                    Part::Cutting => self.cutting(),
                    Part::Sewing => self.sewing(),
                    Part::Artwork => self.artwork(),
                    Part::Labels => self.labels(),
                    Part::Inspection => self.inspection(),
                },
            });
        }
        for sheet in &mut sheets {
            if sheet.pages.iter().all(|page| page.blocks.is_empty()) {
                let text = self.each(|t| t.say("paper-nothing"));
                let strong = false;
                sheet.pages = vec![Page::of(vec![Block::Note { text, strong }])];
            }
        }
        let code = qr::square(&order.address).ok_or_else(|| NoPrint::Failed {
            why: "the address is too long for a code".to_owned(),
        })?;
        let title = format!("{} {}", header.number, header.name);
        let document = Document {
            title: format!("{} · {}", title.trim(), self.edition_words().a),
            date: date(&order.printed),
            languages: (self.texts.iter()).map(|it| tag(it.language())).collect(),
            paper: order.paper.size(),
            style: header.number.clone(),
            name: header.name.clone(),
            block: self.title_block(),
            foot: self.foot(),
            page: self.each(|t| t.say("paper-page")),
            band: order.band.map(|band| self.band(band)),
            marks: self
                .before
                .filter(|_| !self.touched.is_empty())
                .map(|old| self.each(|t| t.say("paper-changed").with("revision", old.number))),
            code: format!(
                "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {0} {0}\" width=\"{0}\" \
                 height=\"{0}\"><path d=\"{1}\"/></svg>",
                code.side, code.path
            ),
            code_label: self.each(|t| t.say("paper-scan")),
            sheets,
            attached: self.attached(),
        };
        let shown = self.parcel.files.iter();
        let shown = shown.filter(|it| it.as_what == super::Use::Picture);
        let pictures = shown.map(|it| (place(&it.file, &it.media_type), it.bytes.clone()));
        Ok((document, pictures.collect()))
    }

    fn edition_words(&self) -> Words {
        match &self.edition.frozen {
            Some(frozen) => self.each(|t| t.say("revision-number").with("revision", frozen.number)),
            None => self.each(|t| t.say("sheet-draft")),
        }
    }

    fn title_block(&self) -> Vec<Fact> {
        let mut facts = vec![self.fact(|t| t.say("revision-revision"), self.edition_short())];
        if let (Some(frozen), Some(digest)) = (&self.edition.frozen, &self.parcel.order.digest) {
            let published = frozen.published.date();
            facts.push(self.fact(|t| t.say("revision-date"), Words::plain(published)));
            let digest = Words::plain(digest.fingerprint());
            facts.push(self.fact(|t| t.say("revision-fingerprint"), digest));
        }
        facts.push(self.fact(|t| t.field("unit"), self.each(|t| t.name(&self.unit))));
        let base = self.spec.header.base_size.as_ref();
        if let Some(size) = base.and_then(|id| self.spec.size(id)) {
            facts.push(self.fact(|t| t.field("base_size"), Words::plain(&size.code)));
        }
        if let Some(state) = self.spec.header.measured {
            facts.push(self.fact(|t| t.field("measured"), self.each(|t| t.name(&state))));
        }
        facts
    }

    fn edition_short(&self) -> Words {
        match &self.edition.frozen {
            Some(frozen) => Words::plain(frozen.number.to_string()),
            None => self.each(|t| t.say("sheet-draft")),
        }
    }

    fn foot(&self) -> Vec<Fact> {
        let order = &self.parcel.order;
        let minute = order.printed.get(..16).unwrap_or_default();
        let printed = Words::plain(format!("{} UTC", minute.replace('T', " ")));
        vec![
            self.fact(|t| t.say("paper-for"), Words::plain(&order.factory)),
            self.fact(|t| t.say("paper-printed"), printed),
        ]
    }

    fn band(&self, band: Band) -> Words {
        match band {
            Band::Draft => self.each(|t| t.say("paper-band-draft")),
            Band::Superseded(by) => {
                self.each(|t| t.say("paper-band-superseded").with("revision", by))
            }
            Band::Withdrawn => self.each(|t| t.say("paper-band-withdrawn")),
        }
    }

    fn attached(&self) -> Vec<Attached> {
        let number: String = (self.spec.header.number.chars())
            .map(|c| if c.is_ascii_alphanumeric() { c } else { '-' })
            .collect();
        let document = Attached {
            path: match &self.edition.frozen {
                Some(frozen) => format!("{number}-revision-{}.json", frozen.number),
                None => format!("{number}-draft.json"),
            },
            media_type: "application/json".to_owned(),
            about: self.edition_words().a,
        };
        let originals = self.parcel.originals();
        let originals = originals.map(|it| Attached {
            path: it.name.clone(),
            media_type: it.media_type.clone(),
            about: it.file.to_string(),
        });
        std::iter::once(document).chain(originals).collect()
    }

    /// The same in each language.
    pub fn each<T: ToString>(&self, what: impl Fn(Text) -> T) -> Words {
        let mut said = self.texts.iter().map(|t| what(*t).to_string());
        let a = said.next().unwrap_or_default();
        let b = said.next().filter(|b| *b != a);
        Words { a, b, term: false }
    }

    pub fn fact<T: ToString>(&self, label: impl Fn(Text) -> T, value: Words) -> Fact {
        let label = self.each(label);
        Fact { label, value }
    }

    /// A brand's own words, and what the program knows of them in the languages of the print.
    pub fn named(&self, name: &str) -> Words {
        let beside = |t: &Text| match &self.edition.frozen {
            Some(frozen) => t.beside(frozen, name),
            None => t.beside_in(&self.parcel.beside, name),
        };
        let said = self.texts.iter().filter_map(beside);
        let said = said.map(|it| match it.own {
            true => format!("= {}", it.text),
            false => format!("≈ {}", it.text),
        });
        let said: Vec<String> = said.collect();
        Words {
            a: name.to_owned(),
            term: !said.is_empty(),
            b: (!said.is_empty()).then(|| said.join(" · ")),
        }
    }

    /// What fields say, in each language.
    pub fn facts(&self, fields: &Fields) -> Vec<Fact> {
        let said = self.texts.iter().map(|t| {
            let words = t.words(self.spec, self.edition.decimal);
            words.fields(fields).into_iter()
        });
        let mut said: Vec<_> = said.collect();
        let mut facts = Vec::new();
        while let Some(a) = said[0].next() {
            let b = said.get_mut(1).and_then(Iterator::next);
            let (label, value) = match b {
                Some(b) => (Some(b.label), Some(b.value)),
                None => (None, None),
            };
            facts.push(Fact {
                label: Words {
                    b: label.filter(|b| *b != a.label),
                    a: a.label,
                    term: false,
                },
                value: match a.typed {
                    true => self.named(&a.value),
                    false => Words {
                        b: value.filter(|b| *b != a.value),
                        a: a.value,
                        term: false,
                    },
                },
            });
        }
        facts
    }

    /// The fields of an item, those of these names aside. A name that ends with a dot is a nested
    /// record's.
    pub fn facts_but(&self, record: &impl Record, aside: &[&str]) -> Vec<Fact> {
        let mut fields = record.fields();
        fields.retain(|(name, _)| {
            !aside.iter().any(|it| match it.strip_suffix('.') {
                Some(record) => name.split('.').next() == Some(record),
                None => name == it,
            })
        });
        self.facts(&fields)
    }

    pub fn heading(&self, what: impl Fn(Text) -> crate::language::Message) -> Block {
        Block::Heading {
            text: self.each(what),
            letter: None,
            mark: false,
        }
    }

    /// A heading of one item.
    pub fn item_heading(&self, item: Item<'_>) -> Block {
        Block::Heading {
            text: self.named(item.name()),
            letter: letter(item),
            mark: self.touched.contains(item.id()),
        }
    }

    pub fn note(&self, what: impl Fn(Text) -> crate::language::Message) -> Block {
        Block::Note {
            text: self.each(what),
            strong: false,
        }
    }

    pub fn column<T: ToString>(&self, head: impl Fn(Text) -> T, width: f64) -> Column {
        Column::of(self.each(head), width)
    }

    /// Letter and name of an item, as the first cell of its row.
    pub fn item_cell(&self, item: Item<'_>) -> Cell {
        Cell {
            letter: letter(item),
            text: self.named(item.name()),
            mark: self.touched.contains(item.id()),
            ..Cell::default()
        }
    }

    /// What fields of a row say, each in a line of its own.
    pub fn facts_cell(&self, facts: Vec<Fact>) -> Cell {
        let lines = facts.into_iter().map(|fact| {
            let (label, value) = (fact.label, fact.value);
            // What reads the same in both has both labels before it.
            let both = match (&label.b, &value.b) {
                (Some(b), None) => format!("{} / {b}", label.a),
                _ => label.a.clone(),
            };
            let b = value.b.as_ref().map(|value| {
                let label = label.b.as_ref().unwrap_or(&label.a);
                format!("{label}: {value}")
            });
            Words {
                a: format!("{both}: {}", value.a),
                b,
                term: false,
            }
        });
        Cell {
            small: lines.collect(),
            ..Cell::default()
        }
    }

    /// In the master unit, to a point's step.
    pub fn length(&self, value: Length, step: Length) -> String {
        shown(value.show(self.unit, step, self.edition.decimal))
    }

    pub fn picture_of(&self, file: &Digest) -> Option<String> {
        let picture = self.parcel.picture(file)?;
        Some(place(&picture.file, &picture.media_type))
    }

    pub fn size_code(&self, size: &ItemId) -> String {
        let found = self.spec.size(size);
        found.map_or(size.as_str(), |it| &it.code).to_owned()
    }
}

impl Page {
    pub fn of(blocks: Vec<Block>) -> Page {
        Page { size: None, blocks }
    }
}

impl Column {
    pub fn of(head: Words, width: f64) -> Column {
        Column {
            head,
            width,
            right: false,
            strong: false,
        }
    }

    pub fn right(mut self) -> Column {
        self.right = true;
        self
    }
}

impl Cell {
    pub fn plain(text: impl Into<String>) -> Cell {
        Cell::of(Words::plain(text))
    }

    pub fn of(text: Words) -> Cell {
        Cell {
            text,
            ..Cell::default()
        }
    }
}

/// Nothing where it has no letter.
pub fn letter(item: Item<'_>) -> Option<Letter> {
    let text = item.letter().to_owned();
    (!text.is_empty()).then_some(Letter {
        text,
        shape: item.shape(),
    })
}

/// Where the template finds a picture.
fn place(file: &Digest, media_type: &str) -> String {
    let ending = match media_type {
        "image/svg+xml" => "svg",
        "image/png" => "png",
        "image/jpeg" => "jpg",
        _ => "webp",
    };
    format!("/pictures/{file}.{ending}")
}

fn tag(language: Language) -> Tag {
    let mut parts = language.tag().split('-');
    Tag {
        lang: parts.next().unwrap_or("en").to_owned(),
        // Of a script, the region that writes it so: `zh` alone is shaped as Traditional by some.
        region: match language {
            Language::Chinese => Some("cn".to_owned()),
            Language::Portuguese => Some("br".to_owned()),
            _ => None,
        },
    }
}

fn date(time: &str) -> [u16; 5] {
    let part = |from: usize, to: usize| {
        let part = time.get(from..to).and_then(|it| it.parse().ok());
        part.unwrap_or(1)
    };
    [
        part(0, 4),
        part(5, 7),
        part(8, 10),
        part(11, 13),
        part(14, 16),
    ]
}
