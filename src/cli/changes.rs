//! `fellseam changes`: what changed from one spec to another.

use std::path::PathBuf;
use std::process::ExitCode;

use clap::Args;
use serde::Serialize;

use super::Ended;
use super::given::{Given, Spoken, Unreadable, answer};
use crate::spec::change::{self, Change, Kind, Value, changes};
use crate::spec::{ItemId, Length};

#[derive(Debug, Args)]
#[command(after_help = "Ends with 0, whether anything changed or not, \
    with 2 when a file cannot be read.")]
pub struct Changes {
    /// The older spec as JSON, bare or within a revision's document, or a style's archive; `-` is
    /// standard input.
    old: PathBuf,
    /// The newer one.
    new: PathBuf,
    #[command(flatten)]
    spoken: Spoken,
}

#[derive(Serialize)]
struct Answer {
    changes: Vec<Line>,
}

#[derive(Serialize)]
struct Line {
    section: &'static str,
    /// The list of the section that the item stands in.
    #[serde(skip_serializing_if = "Option::is_none")]
    list: Option<&'static str>,
    #[serde(skip_serializing_if = "Option::is_none")]
    item: Option<ItemId>,
    /// The drawing of what is drawn on it; the colourway of a cell, whose part is the item.
    #[serde(skip_serializing_if = "Option::is_none")]
    within: Option<ItemId>,
    kind: &'static str,
    /// The places in the list, from 0.
    #[serde(skip_serializing_if = "Option::is_none")]
    from: Option<usize>,
    #[serde(skip_serializing_if = "Option::is_none")]
    to: Option<usize>,
    #[serde(skip_serializing_if = "Option::is_none")]
    field: Option<String>,
    /// As the document holds it.
    #[serde(skip_serializing_if = "Option::is_none")]
    old: Option<Value>,
    #[serde(skip_serializing_if = "Option::is_none")]
    new: Option<Value>,
    /// The sizes of a point whose values moved, in nanometres.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    sizes: Vec<Moved>,
    sentence: String,
}

#[derive(Serialize)]
struct Moved {
    size: ItemId,
    #[serde(skip_serializing_if = "Option::is_none")]
    old: Option<Length>,
    #[serde(skip_serializing_if = "Option::is_none")]
    new: Option<Length>,
}

impl Changes {
    pub fn run(self) -> Ended {
        answer(self.answer())
    }

    fn answer(&self) -> Result<(Answer, ExitCode), Unreadable> {
        let (old, new) = (Given::read(&self.old)?, Given::read(&self.new)?);
        let t = self.spoken.text();
        let changes = changes(old.version(), new.version());
        let lines = t.change_lines(&changes, old.version(), new.version(), new.sign);
        let lines = changes.into_iter().zip(&lines);
        let lines = lines.map(|(change, told)| line(change, t.change_sentence(told)));
        let answer = Answer {
            changes: lines.collect(),
        };
        Ok((answer, ExitCode::SUCCESS))
    }
}

fn line(change: Change, sentence: String) -> Line {
    let (kind, from, to) = match change.kind {
        Kind::Added { at } => ("added", None, Some(at)),
        Kind::Removed => ("removed", None, None),
        Kind::Moved { from, to } => ("moved", Some(from), Some(to)),
        Kind::Relettered => ("relettered", None, None),
        Kind::Changed => ("changed", None, None),
        Kind::Regraded => ("regraded", None, None),
    };
    let moved = change.sizes.into_iter().filter(change::SizeValue::moved);
    Line {
        section: change.section.name(),
        list: change.list,
        item: change.item,
        within: change.within,
        kind,
        from,
        to,
        field: change.field.map(|field| field.into_owned()),
        old: change.old,
        new: change.new,
        sizes: moved
            .map(|it| Moved {
                size: it.size,
                old: it.old,
                new: it.new,
            })
            .collect(),
        sentence,
    }
}
