//! Publishing: what a revision freezes, what blocks it, and what a revision is afterwards.

use std::collections::{BTreeMap, BTreeSet};

use serde::{Deserialize, Serialize};

use crate::spec::book::{Book, Correction};
use crate::spec::canon::{CanonError, CanonFault, from_canonical, from_json, to_canonical};
use crate::spec::change::{Version, changes, touched};
use crate::spec::check::{self, Finding, check_by};
use crate::spec::composition::{Tables, text};
use crate::spec::document::{FORMAT, Market, Spec};
use crate::spec::{Chart, DecimalSign, Digest, ItemId, Section, StyleId, ThreadId, Time, grade};

use super::refused::FindingKey;
use super::thread::Thread;
use super::translation::Translations;
use super::{Actor, Refused, Side};

/// What a revision freezes. Its canonical bytes are hashed and kept, and never written again.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Frozen {
    pub format: u32,
    pub style: StyleId,
    pub number: u32,
    /// The digest of the revision before this one.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub previous: Option<Digest>,
    pub published: Time,
    /// Why it was published, in the designer's words.
    pub reason: String,
    pub spec: Spec,
    /// The rounded chart: the contract, from which every deviation is taken.
    pub chart: Chart,
    /// The warnings that it was published with, and why.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub accepted: Vec<Accepted>,
    /// What its labels say of its fibres, as the tables of the day gave it.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub compositions: Vec<CompositionText>,
    /// How its numbers are written, in every language.
    pub decimal: DecimalSign,
    /// The originals that it shows, in the order of their digests.
    #[serde(default, skip_serializing_if = "BTreeSet::is_empty")]
    pub files: BTreeSet<Digest>,
    /// The version of the rules that checked it.
    pub rules: u32,
    /// What of the tables behind those rules and texts was not as that version ships it.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub corrections: Vec<Correction>,
    /// What readers of other languages are shown beside the brand's words. Before format 3 nothing
    /// of it was kept.
    #[serde(default, skip_serializing_if = "Translations::is_empty")]
    pub translations: Translations,
}

/// A warning that was published with a reason.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Accepted {
    pub code: String,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub item: Option<ItemId>,
    pub reason: String,
}

/// The composition text of a label.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct CompositionText {
    pub market: Market,
    /// As a tag: `en`, `de`.
    pub language: String,
    pub text: String,
    /// Every name in it was checked against the official text.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub verified: bool,
}

impl Frozen {
    /// The exact bytes to keep, and their digest.
    pub fn seal(&self) -> Result<(Vec<u8>, Digest), CanonError> {
        let bytes = to_canonical(self)?;
        let digest = Digest::of(&bytes);
        Ok((bytes, digest))
    }

    /// Whether the translations that were shown with it are kept in it.
    pub fn keeps_translations(&self) -> bool {
        self.format >= 3
    }

    /// As one side of a change list.
    pub fn version(&self) -> Version<'_> {
        Version {
            spec: &self.spec,
            chart: Some(&self.chart),
        }
    }

    /// Reads the kept bytes, and no others. Of every format up to this program's own: format 1 has
    /// fewer sections, and is otherwise written alike.
    ///
    /// Errors: with the place in the document; a newer format says so before anything else.
    pub fn read(bytes: &[u8]) -> Result<Frozen, CanonError> {
        Self::of_a_known_format(from_canonical(bytes), bytes)
    }

    /// Reads a document that may be written with other spaces than the kept bytes: what is read is
    /// the same, but its digest is not told by these bytes.
    pub fn read_json(bytes: &[u8]) -> Result<Frozen, CanonError> {
        Self::of_a_known_format(from_json(bytes), bytes)
    }

    fn of_a_known_format(
        read: Result<Frozen, CanonError>,
        bytes: &[u8],
    ) -> Result<Frozen, CanonError> {
        let format = match &read {
            Ok(frozen) => Some(frozen.format),
            // What a newer format added is an unknown field here.
            Err(_) => serde_json::from_slice::<Format>(bytes)
                .ok()
                .map(|it| it.format),
        };
        match format {
            Some(format) if !(1..=FORMAT).contains(&format) => {
                let why = format!("format {format}; this program reads 1 to {FORMAT}");
                Err(CanonFault::Refused(why).into())
            }
            _ => read,
        }
    }
}

/// The first thing to know of a document.
#[derive(Deserialize)]
struct Format {
    format: u32,
}

/// The revision published before, withdrawn or not.
#[derive(Debug, Clone, Copy)]
pub struct Previous<'a> {
    pub number: u32,
    pub digest: &'a Digest,
    pub spec: &'a Spec,
    pub chart: &'a Chart,
    pub decimal: DecimalSign,
}

/// Everything that publishing looks at, read together under the style's lock.
#[derive(Debug, Clone)]
pub struct Publishing<'a> {
    pub style: &'a StyleId,
    pub at: &'a Time,
    pub reason: &'a str,
    pub draft: &'a Spec,
    pub decimal: DecimalSign,
    /// The version of every section that the form showed.
    pub shown: &'a BTreeMap<Section, i64>,
    /// The version of every section as it was read now.
    pub read: &'a BTreeMap<Section, i64>,
    /// The reasons typed for the warnings.
    pub accepted: &'a BTreeMap<FindingKey, String>,
    pub previous: Option<Previous<'a>>,
    /// The style's threads, with every factory.
    pub threads: &'a [Thread],
    /// The tables in force.
    pub book: &'a Book,
    /// What readers of other languages will be shown beside the draft's words.
    pub translations: Translations,
}

/// What publishing comes to.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Published {
    pub frozen: Frozen,
    /// The agreed must-fixes that this revision carries: they become *changed* in it.
    pub carries: Vec<ThreadId>,
}

/// Publishes a draft, or says what stands in the way.
pub fn publish(with: &Publishing<'_>) -> Result<Published, Refused> {
    let sections: Vec<Section> = Section::ALL
        .iter()
        .copied()
        .filter(|section| with.shown.get(section) != with.read.get(section))
        .collect();
    if !sections.is_empty() {
        return Err(Refused::SectionMoved { sections });
    }
    let graded = grade(with.draft);
    let (errors, warnings): (Vec<Finding>, Vec<Finding>) = check_by(with.book, with.draft, &graded)
        .into_iter()
        .partition(|finding| finding.is_error());
    let (true, Some(chart)) = (errors.is_empty(), graded.chart(with.draft)) else {
        return Err(Refused::ErrorsRemain {
            count: errors.len(),
        });
    };
    if let Some(previous) = with.previous
        && previous.spec == with.draft
        && previous.decimal == with.decimal
    {
        return Err(Refused::DraftUnchanged {
            newest: previous.number,
        });
    }

    let agreed = with.threads.iter();
    let agreed = agreed.filter(|thread| thread.is_agreed_must_fix());
    let touched = with.previous.map(|previous| {
        let old = Version {
            spec: previous.spec,
            chart: Some(previous.chart),
        };
        let new = Version {
            spec: with.draft,
            chart: Some(&chart),
        };
        touched(&changes(old, new))
    });
    let (carried, unchanged): (Vec<&Thread>, Vec<&Thread>) = agreed.partition(|thread| {
        let touched = touched.as_ref();
        touched.is_some_and(|touched| touched.contains(&thread.item))
    });
    if !unchanged.is_empty() {
        return Err(Refused::MustFixUnchanged {
            threads: ids(&unchanged),
        });
    }

    let accepted = accept(&warnings, with.accepted)?;
    let reason = with.reason.trim();
    if reason.is_empty() {
        return Err(Refused::ReasonMissing);
    }

    Ok(Published {
        frozen: Frozen {
            format: FORMAT,
            style: with.style.clone(),
            number: with.previous.map_or(1, |previous| previous.number + 1),
            previous: with.previous.map(|previous| previous.digest.clone()),
            published: with.at.clone(),
            reason: reason.to_owned(),
            spec: with.draft.clone(),
            chart,
            accepted,
            compositions: compositions(with.draft, &with.book.composition),
            decimal: with.decimal,
            files: with.draft.files(),
            rules: check::RULES,
            corrections: with.book.corrections.clone(),
            translations: with.translations.clone(),
        },
        carries: ids(&carried),
    })
}

/// Every warning with its typed reason.
fn accept(
    warnings: &[Finding],
    reasons: &BTreeMap<FindingKey, String>,
) -> Result<Vec<Accepted>, Refused> {
    let mut accepted = Vec::new();
    let mut missing = Vec::new();
    for key in warnings.iter().map(FindingKey::of) {
        match reasons.get(&key).map(|reason| reason.trim()) {
            Some(reason) if !reason.is_empty() => accepted.push(Accepted {
                code: key.code,
                item: key.item,
                reason: reason.to_owned(),
            }),
            _ => missing.push(key),
        }
    }
    if missing.is_empty() {
        Ok(accepted)
    } else {
        Err(Refused::WarningReasonMissing { warnings: missing })
    }
}

/// For every market in every language of the labels, where the tables have all the names.
fn compositions(spec: &Spec, tables: &Tables) -> Vec<CompositionText> {
    let languages = &spec.header.languages;
    let pairs = spec.header.markets.iter();
    let pairs = pairs.flat_map(|market| languages.iter().map(move |language| (*market, language)));
    let texts = pairs.filter_map(|(market, language)| {
        let composition = text(spec, market, language, tables);
        Some(CompositionText {
            market,
            language: language.clone(),
            text: composition.whole()?,
            verified: composition.is_verified(),
        })
    });
    texts.collect()
}

fn ids(threads: &[&Thread]) -> Vec<ThreadId> {
    threads.iter().map(|thread| thread.id.clone()).collect()
}

/// What is known of one published revision.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Fact {
    pub number: u32,
    /// Why it was withdrawn.
    pub withdrawn: Option<String>,
}

/// What a published revision is now.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Standing {
    Current,
    /// `by` is the newest; `current` is the one to use, none when the newest was withdrawn.
    Superseded {
        by: u32,
        current: Option<u32>,
    },
    /// Every page and print of it says stop.
    Withdrawn {
        reason: String,
        current: Option<u32>,
    },
}

impl Standing {
    /// The stable name.
    pub fn name(&self) -> &'static str {
        match self {
            Standing::Current => "current",
            Standing::Superseded { .. } => "superseded",
            Standing::Withdrawn { .. } => "withdrawn",
        }
    }

    /// Refused with the current one, if any, unless this is it.
    pub fn must_be_current(&self) -> Result<(), Refused> {
        match self {
            Standing::Current => Ok(()),
            Standing::Superseded { current, .. } | Standing::Withdrawn { current, .. } => {
                Err(Refused::NotCurrent { current: *current })
            }
        }
    }
}

/// The number of the current revision: the newest, unless it was withdrawn. An older one never
/// comes back; a correction is always a new revision.
pub fn current(revisions: &[Fact]) -> Option<u32> {
    let newest = revisions.iter().max_by_key(|fact| fact.number)?;
    newest.withdrawn.is_none().then_some(newest.number)
}

/// What revision `number` is now; `None` if it is not among `revisions`.
pub fn standing(number: u32, revisions: &[Fact]) -> Option<Standing> {
    let fact = revisions.iter().find(|fact| fact.number == number)?;
    let newest = revisions.iter().map(|fact| fact.number).max()?;
    let current = current(revisions);
    Some(match &fact.withdrawn {
        Some(reason) => Standing::Withdrawn {
            reason: reason.clone(),
            current,
        },
        None if number == newest => Standing::Current,
        None => Standing::Superseded {
            by: newest,
            current,
        },
    })
}

/// Withdraws a revision: never made new again, and nothing takes its place until one is published.
pub fn withdraw(by: &Actor, standing: &Standing, reason: &str) -> Result<(), Refused> {
    if by.side() != Side::Brand {
        return Err(Refused::OnlyBrand);
    }
    if matches!(standing, Standing::Withdrawn { .. }) {
        return Err(Refused::AlreadyWithdrawn);
    }
    if reason.trim().is_empty() {
        return Err(Refused::ReasonMissing);
    }
    Ok(())
}

/// A factory says that it has seen this revision and works to no other.
pub fn acknowledge(
    by: &Actor,
    standing: &Standing,
    shared: bool,
    acknowledged: bool,
) -> Result<(), Refused> {
    if by.side() != Side::Factory {
        return Err(Refused::OnlyFactory);
    }
    if !shared {
        return Err(Refused::NotShared);
    }
    standing.must_be_current()?;
    if acknowledged {
        return Err(Refused::AlreadyAcknowledged);
    }
    Ok(())
}

#[cfg(test)]
mod tests;
