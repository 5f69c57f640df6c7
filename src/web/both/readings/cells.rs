//! The values as they were typed: what is new of them, what is wrong, what to look at again.

use std::collections::BTreeMap;

use crate::access::Side;
use crate::exchange::measuring::{Wash, may_measure};
use crate::language::Text;
use crate::sample::ask::Ask;
use crate::spec::document::Point;
use crate::spec::{Digest, ItemId, Length};
use crate::store::{NewMeasurement, Piece, Round};
use crate::web::both::measure::{points, questions, read, sentence};
use crate::web::form::{Errors, Fields};

/// The fields by their names. A field that is not there stands for the saved value.
#[derive(Default)]
pub struct Typed(BTreeMap<String, String>);

/// The name of a value's field.
pub fn field(piece: &Piece, point: &Point) -> String {
    format!("v-{}-{}", piece.number, point.id)
}

impl Typed {
    pub fn read(round: &Round, fields: &Fields) -> Typed {
        let names = round
            .pieces
            .iter()
            .flat_map(|piece| points(round).map(|point| field(piece, point)));
        let sent = names.filter(|name| fields.has(name));
        Typed(
            sent.map(|name| (name.clone(), fields.text(&name).to_owned()))
                .collect(),
        )
    }

    pub fn get(&self, name: &str) -> Option<&str> {
        self.0.get(name).map(String::as_str)
    }

    pub fn put(&mut self, name: String, text: String) {
        self.0.insert(name, text);
    }
}

/// What there is to say of the fields, and to save.
pub struct Checked {
    pub new: Vec<NewMeasurement>,
    /// By the names of the fields.
    pub errors: Errors,
    pub asks: Vec<String>,
    /// What the answer to just these questions about just these values is called.
    pub answer: String,
}

/// Looks at every field that does not say what is saved. An empty one says nothing.
pub fn check(
    t: Text,
    round: &Round,
    side: Side,
    wash: Option<Wash>,
    typed: &Typed,
    key: &str,
) -> Checked {
    let mut checked = Checked {
        new: Vec::new(),
        errors: Errors::default(),
        asks: Vec::new(),
        answer: String::new(),
    };
    for piece in &round.pieces {
        let mut values = round.values_in(wash, &piece.id, Some(side));
        let mut new: Vec<(&Point, Length)> = Vec::new();
        for (place, point) in points(round).enumerate() {
            let name = field(piece, point);
            let text = typed.get(&name).unwrap_or_default();
            if text.is_empty() {
                continue;
            }
            let entered = match read(t, round, text) {
                Ok(entered) => entered,
                Err(sentence) => {
                    checked.errors.add(name, sentence);
                    continue;
                }
            };
            let before = values.insert(point.id.clone(), entered.nm);
            if before == Some(entered.nm) {
                continue;
            }
            if let Err(why) = may_measure(round.state, side, before.is_some()) {
                checked.errors.add(name, t.why(&why).to_string());
                continue;
            }
            new.push((point, entered.nm));
            checked.new.push(NewMeasurement {
                piece: piece.id.clone(),
                point: point.id.clone(),
                value: entered.nm,
                unit: entered.unit,
                wash,
                key: format!("{key}.{}.{place}", piece.number),
            });
        }
        if !new.is_empty() {
            let about = questions(round, piece, wash.is_none(), &values);
            checked.asks.extend(
                about
                    .into_iter()
                    .filter_map(|ask| said(t, round, piece, &new, ask)),
            );
        }
    }
    let all = checked
        .new
        .iter()
        .map(|it| format!("{} {} {}\n", it.piece, it.point, it.value.as_nm()));
    checked.answer = Digest::of(all.collect::<String>().as_bytes()).to_string();
    checked
}

/// A question with what it is about; none about a value that was saved before.
fn said(
    t: Text,
    round: &Round,
    piece: &Piece,
    new: &[(&Point, Length)],
    ask: Ask,
) -> Option<String> {
    let about = |id: &ItemId| new.iter().find(|(point, _)| point.id == *id);
    let heading = t
        .say("rounds-piece")
        .with("number", piece.number)
        .to_string();
    Some(match &ask {
        Ask::Slip { point, .. } => {
            let (point, value) = about(point)?;
            let letter = &point.letter;
            format!(
                "{heading}, {letter}: {}",
                sentence(t, &round.frozen, ask, *value, point)
            )
        }
        Ask::OtherSize { .. } | Ask::Copied => {
            let (point, value) = new.first()?;
            format!(
                "{heading}: {}",
                sentence(t, &round.frozen, ask, *value, point)
            )
        }
    })
}
