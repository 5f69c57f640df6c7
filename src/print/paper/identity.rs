//! The first sheet: what it is, how it looks, its colours, and what changed.

use super::MOST_ATTACHED;
use super::block::{Block, Page, Words};
use super::drawing::What;
use super::writer::Writer;
use crate::spec::Section;
use crate::spec::document::View;

impl Writer<'_> {
    pub(super) fn identity(&self) -> Vec<Page> {
        let mut blocks = Vec::new();
        let views = self.spec.drawings.drawings.iter();
        let views = views.filter(|it| it.view != View::Detail);
        let figures: Vec<_> = views
            .take(3)
            .filter_map(|it| self.figure(it, What::Bare, 72.0))
            .collect();
        if !figures.is_empty() {
            blocks.push(Block::Figures { figures });
        }
        let aside = [
            "number",
            "name",
            "exemptions",
            "base_size",
            "unit",
            "measured",
        ];
        blocks.push(Block::Facts {
            facts: self.facts_but(&self.spec.header, &aside),
            columns: 3,
        });
        for exemption in &self.spec.header.exemptions {
            let text = self.each(|t| {
                let title = t.say("exemption-title").with("code", &exemption.code);
                let reason = t.say("exemption-reason").with("reason", &exemption.reason);
                let by = t.say("exemption-by").with("name", &exemption.by);
                format!("{title}. {reason}. {by}.")
            });
            blocks.push(Block::Note { text, strong: true });
        }
        if !self.spec.colourways.colourways.is_empty() {
            blocks.push(self.heading(|t| t.name(&Section::Colourways)));
            blocks.extend(self.matrix());
        }
        blocks.extend(self.what_changed());
        blocks.extend(self.accepted());
        if !self.parcel.left_out.is_empty() {
            let names = self.parcel.left_out.join(", ");
            blocks.push(self.note(|t| {
                t.say("paper-left-out")
                    .with("most", MOST_ATTACHED / (1024 * 1024))
                    .with("names", &names)
            }));
        }
        if self.texts.iter().any(|t| t.explains()) {
            let explain = self.texts.iter().find(|t| t.explains());
            let terms = explain.map(|t| t.say("term-legend").to_string());
            let english = crate::language::Language::ORIGINAL.text();
            blocks.push(Block::Note {
                text: Words {
                    a: english.say("term-legend").to_string(),
                    b: terms,
                    term: false,
                },
                strong: false,
            });
        }
        vec![Page::of(blocks)]
    }

    /// The warnings that it was published with, each with its reason.
    fn accepted(&self) -> Vec<Block> {
        let Some(frozen) = self
            .edition
            .frozen
            .as_ref()
            .filter(|it| !it.accepted.is_empty())
        else {
            return Vec::new();
        };
        let told: Vec<_> = self
            .texts
            .iter()
            .map(|t| (*t, t.accepted(frozen)))
            .collect();
        let line = |at: usize| {
            let mut said = told.iter().filter_map(|(t, lines)| {
                let line = lines.get(at)?;
                let (sentence, reason) = (&line.sentence, &line.reason);
                Some(format!("{sentence} {} {reason}", t.say("accepted-reason")))
            });
            let a = said.next().unwrap_or_default();
            let b = said.next().filter(|b| *b != a);
            Words { a, b, term: false }
        };
        let items = (0..frozen.accepted.len()).map(line).collect();
        vec![
            self.heading(|t| t.say("accepted-title")),
            Block::List { items },
        ]
    }

    /// The change list against the revision before, and why this one was published.
    fn what_changed(&self) -> Vec<Block> {
        let mut blocks = Vec::new();
        if let Some(frozen) = &self.edition.frozen {
            let number = frozen.number;
            blocks.push(self.heading(|t| t.say("changes-title").with("revision", number)));
            let facts = vec![self.fact(|t| t.say("revision-reason"), Words::plain(&frozen.reason))];
            blocks.push(Block::Facts { facts, columns: 1 });
        } else if let Some(old) = self.before {
            let number = old.number;
            blocks.push(self.heading(|t| t.say("changes-since").with("revision", number)));
        }
        let Some(old) = self.before else {
            if self.edition.frozen.is_some() {
                blocks.push(self.note(|t| t.say("changes-first")));
            }
            return blocks;
        };
        if self.changes.is_empty() {
            let number = old.number;
            blocks.push(self.note(|t| t.say("changes-none").with("revision", number)));
            return blocks;
        }
        let new = crate::spec::change::Version {
            spec: self.spec,
            chart: self.edition.chart.as_ref(),
        };
        let sign = self.edition.decimal;
        let told = self.texts.iter().map(|t| {
            let lines = t.change_lines(&self.changes, old.version(), new, sign);
            let lines = lines.iter().map(|line| t.change_sentence(line));
            lines.collect::<Vec<String>>()
        });
        let told: Vec<Vec<String>> = told.collect();
        let items = told[0].iter().enumerate().map(|(at, a)| Words {
            a: a.clone(),
            b: told
                .get(1)
                .and_then(|b| b.get(at))
                .filter(|b| *b != a)
                .cloned(),
            term: false,
        });
        blocks.push(Block::List {
            items: items.collect(),
        });
        blocks
    }
}
