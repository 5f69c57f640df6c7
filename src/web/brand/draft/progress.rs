//! How far a draft is, section by section: what is ready, what is to be mended with the way to its
//! field, and what differs from the newest revision.

use super::one;
use crate::language::Text;
use crate::spec::change::{Version, changes};
use crate::spec::chart::Chart;
use crate::spec::check::{Finding, Severity};
use crate::spec::document::{Held, Section};
use crate::spec::units::{DecimalSign, Unit};
use crate::spec::{Book, Spec, StyleId, check_by, grade};
use crate::store::{Present, Revision};
use crate::web::frame::name_or_erased;

/// The line of progress of a draft. `templates/brand/parts.html` has the macro that shows it.
pub struct Progress {
    pub steps: Vec<Step>,
    /// The newest revision's number, which the draft is compared with; `None` before the first.
    pub since: Option<u32>,
    /// How many changes there are against it.
    pub changes: usize,
}

/// One section in the line of progress.
pub struct Step {
    pub section: Section,
    pub begun: bool,
    pub errors: usize,
    pub warnings: usize,
    /// How many changes there are in it against the newest revision.
    pub changes: usize,
    /// Others who have the section open now.
    pub here: Vec<String>,
}

/// A finding with the way to where it is mended.
pub struct Line {
    pub error: bool,
    pub code: &'static str,
    pub sentence: String,
    pub href: String,
}

/// A draft as it was looked through.
pub struct Looked {
    pub findings: Vec<Finding>,
    pub chart: Option<Chart>,
    pub progress: Progress,
}

impl Looked {
    /// Looks a draft through by the tables in force, and compares it with the newest revision.
    pub fn through(book: &Book, spec: &Spec, newest: Option<&Revision>) -> Looked {
        let grades = grade(spec);
        let findings = check_by(book, spec, &grades);
        let chart = grades.chart(spec);
        let now = Version {
            spec,
            chart: chart.as_ref(),
        };
        let changed = newest.map_or_else(Vec::new, |newest| changes(newest.frozen.version(), now));
        let count = |section, severity| {
            let same = |f: &&Finding| f.section == section && f.severity() == severity;
            findings.iter().filter(same).count()
        };
        let steps = Section::ALL.iter().copied();
        let steps = steps.map(|section| Step {
            section,
            begun: is_begun(spec, section),
            errors: count(section, Severity::Error),
            warnings: count(section, Severity::Warning),
            changes: changed.iter().filter(|it| it.section == section).count(),
            here: Vec::new(),
        });
        Looked {
            progress: Progress {
                steps: steps.collect(),
                since: newest.map(|newest| newest.number),
                changes: changed.len(),
            },
            findings,
            chart,
        }
    }
}

impl Progress {
    /// How many sections are as a revision wants them.
    fn ready(&self) -> usize {
        self.steps.iter().filter(|step| step.is_ready()).count()
    }

    /// How many sections have errors, empty ones included.
    fn wrong(&self) -> usize {
        self.steps.iter().filter(|step| step.errors > 0).count()
    }

    /// How many sections are empty, and may stay so.
    fn empty(&self) -> usize {
        let empty = |step: &&Step| !step.begun && step.errors == 0;
        self.steps.iter().filter(empty).count()
    }

    /// Says in which sections others are.
    pub fn place(&mut self, t: Text, present: &[Present]) {
        for one in present {
            let step = self.steps.iter_mut().find(|it| it.section == one.section);
            let name = name_or_erased(t, one.name.as_deref());
            if let Some(step) = step {
                step.here.push(name);
            }
        }
    }

    /// What all of it comes to.
    pub fn sum(&self, t: &Text) -> String {
        t.say("draft-sum")
            .with("ready", self.ready())
            .with("wrong", self.wrong())
            .with("empty", self.empty())
            .to_string()
    }
}

impl Step {
    fn is_ready(&self) -> bool {
        self.begun && self.errors == 0
    }

    /// The shape beside the words (`data-shape`).
    pub fn shape(&self) -> &'static str {
        match self {
            _ if !self.begun => "open",
            _ if self.errors > 0 => "stop",
            _ if self.warnings > 0 => "half",
            _ => "done",
        }
    }

    /// `ready`, `2 errors, 1 warning`, `empty` ...
    pub fn words(&self, t: &Text) -> String {
        if !self.begun {
            return t.say("draft-step-empty").to_string();
        }
        let errors = || t.say("draft-step-errors").with("count", self.errors);
        let warnings = || t.say("draft-step-warnings").with("count", self.warnings);
        let ready = || t.say("draft-step-ready").to_string();
        let words = match (self.errors, self.warnings) {
            (0, 0) => vec![ready()],
            (0, _) => vec![ready(), warnings().to_string()],
            (_, 0) => vec![errors().to_string()],
            (_, _) => vec![errors().to_string(), warnings().to_string()],
        };
        words.join(", ")
    }
}

impl Line {
    /// The findings of one section.
    pub fn all(
        t: Text,
        style: &StyleId,
        spec: &Spec,
        section: Section,
        findings: &[Finding],
    ) -> Vec<Line> {
        let own = findings.iter().filter(|finding| finding.section == section);
        own.map(|finding| Line::new(t, style, spec, finding))
            .collect()
    }

    pub fn new(t: Text, style: &StyleId, spec: &Spec, finding: &Finding) -> Line {
        let unit = spec.header.unit.unwrap_or(Unit::Cm);
        Line {
            error: finding.is_error(),
            code: finding.code.name(),
            sentence: t.finding(finding, unit, DecimalSign::Point).to_string(),
            href: place(style, finding),
        }
    }
}

/// The address of the field that a finding is about.
///
/// Fields of the header are named as in the document; those of a row `ITEM.FIELD`, the row itself
/// `row-ITEM`, a cell of the colour matrix `COLOURWAY.PART.kind`. What a grid has no room for is on
/// the item's own page.
pub fn place(style: &StyleId, finding: &Finding) -> String {
    let section = finding.section.name();
    let draft = format!("/styles/{style}/draft/{section}");
    if let (None, Some(item)) = (&finding.colourway, &finding.item)
        && one::has_page(finding.section, finding.field)
    {
        let field = finding.field.unwrap_or_default();
        return format!("{draft}/{item}#{item}.{field}");
    }
    let field = finding.field.map(|field| field.trim_start_matches("how."));
    let anchor = match (&finding.colourway, &finding.item, field) {
        (Some(colourway), Some(part), _) => format!("{colourway}.{part}.kind"),
        (None, Some(item), Some(field)) => format!("{item}.{field}"),
        (None, Some(item), None) => format!("row-{item}"),
        (_, None, Some(field)) => field.to_owned(),
        (_, None, None) => "section".to_owned(),
    };
    format!("{draft}#{anchor}")
}

fn is_begun(spec: &Spec, section: Section) -> bool {
    match section {
        Section::Header => true,
        Section::Sizes => !spec.sizes.sizes.is_empty(),
        Section::Drawings => !spec.drawings.drawings.is_empty(),
        Section::Points => !spec.points.points.is_empty(),
        Section::Colourways => {
            !spec.colourways.parts.is_empty() || !spec.colourways.colourways.is_empty()
        }
        Section::Materials => !spec.materials.is_absent(),
        Section::Construction => !spec.construction.is_absent(),
        Section::Artwork => !spec.artwork.is_absent(),
        Section::Labels => !spec.labels.is_absent(),
        Section::Packing => !spec.packing.is_absent(),
    }
}
