//! How it is sewn: the lines that distances start from, and the callouts.

use serde::Serialize;

use super::{Fact, Head, Writer};
use crate::language::{Worded, shown};
use crate::spec::Decimal;
use crate::spec::document::{Callout, Record};
use crate::spec::{Item, ItemId, fabric};

/// A seam, edge, fold or centre line.
#[derive(Serialize)]
pub struct LineRow {
    pub head: Head,
    pub kind: String,
}

#[derive(Serialize)]
pub struct CalloutRow {
    pub head: Head,
    pub text: Worded,
    /// Part and line that it is about.
    pub place: Vec<Fact>,
    /// Stitch type and seam.
    pub stitch: Vec<Fact>,
    /// Per centimetre, and per inch as a reference.
    pub density: Option<(String, String)>,
    /// What is measured: needles apart, allowance, topstitching.
    pub measures: Vec<Fact>,
    pub thread: Vec<Fact>,
    pub bartacks: Vec<Fact>,
    pub larger: Option<Larger>,
}

/// The drawing that shows something larger.
#[derive(Serialize)]
pub struct Larger {
    pub drawing: ItemId,
    pub title: String,
    pub file: String,
    pub width: u32,
    pub height: u32,
}

impl Writer<'_> {
    pub(super) fn lines(&self) -> Vec<LineRow> {
        let lines = self.frozen.spec.construction.lines.iter();
        let rows = lines.map(|line| LineRow {
            head: self.head(Item::Line(line)),
            kind: line
                .kind
                .map(|it| self.t.name(&it).to_string())
                .unwrap_or_default(),
        });
        rows.collect()
    }

    pub(super) fn callouts(&self) -> Vec<CalloutRow> {
        let callouts = self.frozen.spec.construction.callouts.iter();
        callouts.map(|callout| self.callout(callout)).collect()
    }

    fn callout(&self, callout: &Callout) -> CalloutRow {
        let mut fields = callout.fields();
        let mut take = |names: &[&str]| self.take(&mut fields, names);
        take(&["letter", "place", "text", "detail", "density"]);
        CalloutRow {
            head: self.head(Item::Callout(callout)),
            text: self.worded(&callout.text),
            place: take(&["part", "line"]),
            stitch: take(&["stitch", "seam", "seam_code"]),
            density: callout.density.map(|density| self.density(density)),
            thread: take(&["thread", "tape"]),
            bartacks: take(&["bartacks", "bartack_length"]),
            larger: callout.detail.as_ref().and_then(|id| self.larger(id)),
            // Last: all that nothing else has taken.
            measures: self.facts(&fields),
        }
    }

    fn density(&self, per_cm: Decimal) -> (String, String) {
        let show = |number: Decimal| shown(number.show(self.frozen.decimal));
        let per_inch = fabric::per_inch(per_cm).map(|it| show(it.rounded(1)));
        (show(per_cm), per_inch.unwrap_or_default())
    }

    pub(super) fn larger(&self, id: &ItemId) -> Option<Larger> {
        let drawing = self.drawing(id)?;
        Some(Larger {
            drawing: drawing.id.clone(),
            title: self.drawing_title(drawing),
            file: drawing.file.to_string(),
            width: drawing.width,
            height: drawing.height,
        })
    }
}
