//! Sheets that people bring: what their columns hold, and what cannot be read of them.

use crate::spec::import::{Field, Trouble, Why};
use crate::spec::sheet::{
    MAX_CELLS, MAX_COLUMNS, MAX_ROWS, MAX_SHEETS, MAX_TEXT, NotASheet, Place,
};
use crate::spec::{DecimalSign, Spec};

use super::message::{Message, Text};

/// `C7`, or `Chart C7` of a sheet with a name.
fn cell(sheet: &str, place: Place) -> String {
    format!("{sheet} {place}").trim_start().to_owned()
}

impl Text {
    /// Why a file is not taken as a sheet, and what to send instead.
    pub fn not_a_sheet(self, why: &NotASheet) -> Message {
        let t = self;
        match why {
            NotASheet::TooLarge => t.say("sheet-too-large"),
            NotASheet::Unknown => t.say("sheet-unknown"),
            NotASheet::Unsupported { what } => t.say("sheet-unsupported").with("what", what),
            NotASheet::Encoding => t.say("sheet-encoding"),
            NotASheet::TooFar { sheet, place } => t
                .say("sheet-too-far")
                .with("cell", cell(sheet, *place))
                .with("rows", MAX_ROWS)
                .with("columns", MAX_COLUMNS),
            NotASheet::TooManyCells => t.say("sheet-too-many-cells").with("most", MAX_CELLS),
            NotASheet::TooManySheets => t.say("sheet-too-many-sheets").with("most", MAX_SHEETS),
            NotASheet::TooLong { sheet, place } => t
                .say("sheet-too-long")
                .with("cell", cell(sheet, *place))
                .with("most", MAX_TEXT),
            NotASheet::Nothing => t.say("sheet-nothing"),
            NotASheet::TooHeavy => t.say("sheet-too-heavy"),
            NotASheet::Broken => t.say("sheet-broken"),
            NotASheet::Failed { .. } => t.say("sheet-failed"),
        }
    }

    /// What a column holds; a size by its code.
    pub fn column(self, field: &Field, spec: &Spec) -> String {
        let name = match field {
            Field::Letter => "letter",
            Field::Name => "name",
            Field::Start => "how.start",
            Field::End => "how.end",
            Field::How => return self.say("import-how").to_string(),
            Field::Basis => "basis",
            Field::Key => "key",
            Field::Critical => "critical",
            Field::Step => "step",
            Field::Minus => "minus",
            Field::Plus => "plus",
            Field::Tolerance => return self.say("import-tolerance").to_string(),
            Field::Grade => "grade",
            Field::Base => "base",
            Field::Kind => "kind",
            Field::Composition => "composition",
            Field::Supplier => "supplier",
            Field::Reference => "reference",
            Field::Placement => "placement",
            Field::Mass => "fabric.mass",
            Field::Width => "fabric.width",
            Field::Amount => "consumption.amount",
            Field::Measured => "consumption.unit",
            Field::Wastage => "wastage",
            Field::Size(id) => {
                let size = spec.sizes.sizes.iter().find(|size| size.id == *id);
                let code = size.map_or("?", |size| size.code.as_str());
                return self.say("import-size").with("size", code).to_string();
            }
        };
        self.field(name).to_string()
    }

    /// Why a cell was not read, and what would do.
    pub fn trouble(self, trouble: &Trouble, spec: &Spec) -> Message {
        let (t, typed) = (self, trouble.shown.as_str());
        match &trouble.why {
            Why::Length(why) => t.not_a_length(*why, typed),
            Why::Grade(why) => t.not_a_grade(why),
            Why::NotANumber => t.say("import-not-a-number").with("typed", typed),
            Why::UnknownWord(field) => t
                .say("import-unknown-word")
                .with("typed", typed)
                .with("field", t.column(field, spec)),
            Why::Composition => t.say("import-composition").with("typed", typed),
            Why::Fibre(name) => t.say("import-fibre").with("name", name),
            Why::Date => t.say("import-date"),
            Why::Fault => t.say("import-fault").with("typed", typed),
            Why::Uncomputed => t.say("import-uncomputed"),
            Why::Merged(first) => t.say("import-merged").with("cell", first.to_string()),
            Why::Negative => t.say("import-negative").with("typed", typed),
            Why::LongText => t.say("import-long-text"),
            Why::LetterTwice(first) => t.say("import-twice").with("cell", first.to_string()),
            Why::Nameless => t.say("import-nameless"),
            Why::OnlyAName => t.say("import-only-a-name").with("typed", typed),
            Why::SizesMissing(codes) => t
                .say("import-sizes-missing")
                .with("sizes", codes.join(", ")),
            Why::NotAMultiple(step) => {
                let step = format!("{} {}", step.exact(DecimalSign::Point), step.unit.symbol());
                t.say("import-not-a-multiple")
                    .with("typed", typed)
                    .with("step", step)
            }
            Why::BaseDiffers => t.say("import-base-differs"),
            Why::Formula => t.say("import-formula"),
            Why::RuleDiffers => t.say("import-rule-differs").with("typed", typed),
        }
    }
}
