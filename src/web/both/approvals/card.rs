//! One thing to approve, as its reader sees it: what it is, where it stands, its options.

use super::form::{Decided, Submitted};
use super::{Returned, limit};
use crate::access::Side;
use crate::exchange::approval::{
    Anchor, Compared, Kind, Needed, Standing, Verdict, compare, standing,
};
use crate::language::{Text, shown};
use crate::spec::colour::Limit;
use crate::spec::document::{Lab, Material};
use crate::spec::letters::nth;
use crate::spec::{Decimal, Item, ItemId, Spec, Time};
use crate::store::{Judgement, Photo, Revision, StyleFile, Submission};
use crate::web::both::patch::{Patch, patch};
use crate::web::frame::name_or_erased;
use crate::web::shape;

/// What a card is made from.
pub struct Around<'a> {
    pub t: Text,
    /// That all of it is for.
    pub revision: &'a Revision,
    /// The options of the factory, oldest first.
    pub submitted: &'a [Submission],
    pub files: &'a [StyleFile],
    pub factory: &'a str,
    /// The limit of today.
    pub limit: Limit,
    pub submits: bool,
    pub decides: bool,
}

/// One thing.
pub struct Card {
    /// Of its elements, from 1.
    pub place: usize,
    pub kind: Kind,
    pub item: ItemId,
    pub letter: String,
    pub letter_shape: &'static str,
    pub name: String,
    /// What it looks like: patches with the colourway that each is of.
    pub patches: Vec<(String, Patch)>,
    pub picture: Option<(String, u32, u32)>,
    /// Where else it stands, and on what cloth.
    pub about: Vec<String>,
    pub standing: Standing,
    pub shape: &'static str,
    /// What it has come to, and who must act next.
    pub next: String,
    pub options: Vec<OptionCard>,
    pub form: Option<Submitted>,
    /// The form has come back.
    pub open: bool,
}

/// One option.
pub struct OptionCard {
    pub id: String,
    pub letter: String,
    pub who: String,
    pub at: Time,
    pub revision: u32,
    /// The thing has changed since.
    pub was_other: bool,
    pub note: Option<String>,
    pub language: String,
    pub photos: Vec<Option<Photo>>,
    pub reading: Option<String>,
    pub instrument: String,
    /// What the reading says beside the spec's.
    pub figures: Vec<String>,
    pub decided: Option<DecidedOption>,
    pub form: Option<Decided>,
}

pub struct DecidedOption {
    pub verdict: Verdict,
    pub shape: &'static str,
    pub who: String,
    pub at: Time,
    /// `None`: erased.
    pub reason: Option<String>,
    /// It was decided against the figures.
    pub against: Option<String>,
}

pub fn card(around: &Around<'_>, place: usize, thing: &Needed, returned: &mut Returned) -> Card {
    let t = around.t;
    let spec = &around.revision.frozen.spec;
    let anchor = &thing.anchor;
    let offered: Vec<_> = around.submitted.iter().map(Submission::offered).collect();
    let (stands, counts) = standing(anchor, spec, &offered);
    let counts = counts.map(|place| &around.submitted[place]);
    let sent = &mut returned.submitted;
    let sent = sent.take_if(|sent| sent.anchor == *anchor);
    let open = sent.is_some();
    let empty = || Submitted::of(anchor, around.revision.number);
    let of_it = around.submitted.iter();
    let of_it = of_it.filter(|it| it.anchor.is(&it.frozen.spec, anchor, spec));
    let options = of_it.map(|it| option(around, anchor, it, returned));
    let options: Vec<_> = options.collect();
    let item = spec.item(&anchor.item);
    Card {
        place,
        kind: anchor.kind,
        item: anchor.item.clone(),
        letter: item.map_or("", |it| it.letter()).to_owned(),
        letter_shape: item.map_or("part", Item::shape),
        name: match anchor.colour(spec) {
            Some(colour) if !colour.reference.is_empty() && colour.reference != colour.name => {
                format!("{} · {}", colour.name, colour.reference)
            }
            Some(colour) => colour.name.clone(),
            None => item.map_or("", |it| it.name()).to_owned(),
        },
        patches: patches(t, spec, anchor),
        picture: picture(around, anchor),
        about: about(around, thing),
        standing: stands,
        shape: shape::approval(stands),
        next: next(around, stands, counts),
        options,
        form: sent.or_else(|| around.submits.then(empty)),
        open,
    }
}

/// What it has come to, and what is next for whom.
fn next(around: &Around<'_>, stands: Standing, counts: Option<&Submission>) -> String {
    let t = around.t;
    if let Some(counts) = counts {
        let letter = letter(counts.number);
        let said = match counts.revision == around.revision.number {
            true => t.say("approvals-approved").with("option", letter),
            false => t
                .say("approvals-holds")
                .with("option", letter)
                .with("revision", counts.revision),
        };
        return said.to_string();
    }
    let who = match stands.waits_for() {
        Some(Side::Brand) => t.name(&Side::Brand).to_string(),
        _ => around.factory.to_owned(),
    };
    t.say(match stands {
        Standing::Waiting => "approvals-next-decide",
        Standing::Lapsed => "approvals-next-anew",
        _ => "approvals-next-submit",
    })
    .with("who", who)
    .to_string()
}

fn letter(number: u32) -> String {
    nth(number.saturating_sub(1) as usize)
}

fn named(spec: &Spec, id: &ItemId) -> String {
    let item = spec.item(id);
    let words = item.map(|it| format!("{} {}", it.letter(), it.name()));
    words.unwrap_or_default().trim().to_owned()
}

/// The cells that a lab dip is for, and the cloth; the parts whose colours a trim takes.
fn about(around: &Around<'_>, thing: &Needed) -> Vec<String> {
    let (t, frozen) = (around.t, &around.revision.frozen);
    let spec = &frozen.spec;
    let mut said = Vec::new();
    let cells = thing.cells.iter();
    said.extend(
        cells
            .map(|(colourway, part)| format!("{} · {}", named(spec, colourway), named(spec, part))),
    );
    if let Some(fabric) = &thing.anchor.fabric {
        said.push(named(spec, fabric));
    }
    if let Some(lab) = thing.anchor.colour(spec).and_then(|it| it.lab.as_ref()) {
        said.push(
            t.say("approvals-standard")
                .with("reading", reading(around, lab))
                .to_string(),
        );
    }
    said
}

/// With the decimal sign of the revision that the page is for.
fn reading(around: &Around<'_>, lab: &Lab) -> String {
    let (t, sign) = (around.t, around.revision.frozen.decimal);
    t.say("colour-lab")
        .with("l", shown(lab.l.show(sign)))
        .with("a", shown(lab.a.show(sign)))
        .with("b", shown(lab.b.show(sign)))
        .with("illuminant", t.name(&lab.illuminant))
        .with("observer", t.name(&lab.observer))
        .to_string()
}

fn patches(t: Text, spec: &Spec, anchor: &Anchor) -> Vec<(String, Patch)> {
    let patch = |colourway: &ItemId, part: &ItemId| {
        let patch = patch(t, &spec.colourways, colourway, part)?;
        Some((named(spec, colourway), patch))
    };
    if let Some(colourway) = &anchor.colourway {
        return patch(colourway, &anchor.item).into_iter().collect();
    }
    let mut materials = spec.materials.materials.iter();
    let material = materials.find(|it: &&Material| it.id == anchor.item);
    let parts = material.map_or(&[][..], |it| &it.parts);
    let colourways = spec.colourways.colourways.iter();
    colourways
        .flat_map(|colourway| parts.iter().filter_map(|part| patch(&colourway.id, part)))
        .collect()
}

/// The artwork's own picture.
fn picture(around: &Around<'_>, anchor: &Anchor) -> Option<(String, u32, u32)> {
    let artworks = &around.revision.frozen.spec.artwork.artworks;
    let artwork = artworks.iter().find(|it| it.id == anchor.item)?;
    let files = [&artwork.file, &artwork.preview].into_iter().flatten();
    let mut known = files.filter_map(|file| around.files.iter().find(|it| it.digest == *file));
    let file = known.find(|it| it.pictured)?;
    Some((file.digest.to_string(), file.width, file.height))
}

fn option(
    around: &Around<'_>,
    anchor: &Anchor,
    option: &Submission,
    returned: &mut Returned,
) -> OptionCard {
    let t = around.t;
    let then = &option.frozen.spec;
    let spec = &around.revision.frozen.spec;
    let limit = option.decision.as_ref().map_or(around.limit, |it| it.limit);
    let standard = option.anchor.colour(then).and_then(|it| it.lab.as_ref());
    let compared = compare(standard, option.reading.as_ref(), &limit);
    let sent = &mut returned.decided;
    let sent = sent.take_if(|(id, _)| *id == option.id);
    let form = (option.decision.is_none() && around.decides)
        .then(|| sent.map(|(_, sent)| sent).unwrap_or_default());
    OptionCard {
        id: option.id.to_string(),
        letter: letter(option.number),
        who: name_or_erased(t, option.person.as_deref()),
        at: option.at.clone(),
        revision: option.revision,
        was_other: !option.anchor.holds(then, anchor, spec),
        note: option.note.clone(),
        language: option.language.clone(),
        photos: option.photos.clone(),
        reading: option.reading.as_ref().map(|lab| reading(around, lab)),
        instrument: option.instrument.clone().unwrap_or_default(),
        figures: figures(around, &compared, &limit),
        decided: option.decision.as_ref().map(|it| decided(t, it, &compared)),
        form,
    }
}

fn decided(t: Text, decision: &Judgement, compared: &Compared) -> DecidedOption {
    let against = match (decision.verdict, compared) {
        (Verdict::Approved, Compared::By { judged, .. }) if !judged.passes => {
            Some(t.say("approvals-although-over"))
        }
        (Verdict::Rejected, Compared::By { judged, .. }) if judged.passes => {
            Some(t.say("approvals-although-within"))
        }
        _ => None,
    };
    DecidedOption {
        verdict: decision.verdict,
        shape: shape::verdict(decision.verdict),
        who: name_or_erased(t, decision.person.as_deref()),
        at: decision.at.clone(),
        reason: decision.reason.clone(),
        against: against.map(|it| it.to_string()),
    }
}

/// The reading beside the spec's, in words.
fn figures(around: &Around<'_>, compared: &Compared, limit: &Limit) -> Vec<String> {
    let (t, sign) = (around.t, around.revision.frozen.decimal);
    let said = match compared {
        Compared::NoReading => return Vec::new(),
        Compared::NoStandard => t.say("approvals-no-standard"),
        Compared::Unlike(why) => t.incomparable(*why),
        Compared::By {
            cmc,
            ciede2000,
            judged,
        } => {
            let difference = |formula: &str, value: &Decimal| {
                t.say("approvals-difference")
                    .with("formula", formula)
                    .with("difference", value.show(sign))
                    .to_string()
            };
            let verdict = t
                .say(match judged.passes {
                    true => "approvals-within",
                    false => "approvals-over",
                })
                .with("limit", limit::said(t, limit, sign));
            return vec![
                difference(limit::FORMULAS[0], cmc),
                difference(limit::FORMULAS[1], ciede2000),
                verdict.to_string(),
            ];
        }
    };
    vec![said.to_string()]
}
