//! Translations that came after a revision: it keeps what it was published with, and what was put
//! right since stands beside it with its day.

use std::collections::BTreeSet;

use crate::exchange::revision::Frozen;
use crate::exchange::translation::texts;
use crate::language::Text;
use crate::spec::ItemId;
use crate::spec::document::Value;
use crate::store::Translation;

pub struct Later {
    pub words: String,
    pub text: String,
    /// The day, in UTC.
    pub date: String,
}

/// Those for this reader; of everything that the revision says, or of one item alone.
pub fn later(
    t: Text,
    frozen: &Frozen,
    translations: Vec<Translation>,
    of: Option<&ItemId>,
) -> Vec<Later> {
    let mut all = translations;
    all.retain(|it| it.language == t.lang() && it.at > frozen.published);
    if all.is_empty() {
        return Vec::new();
    }
    let item = of.and_then(|id| frozen.spec.item(id));
    let said: BTreeSet<String> = match item {
        Some(item) => {
            let fields = item.fields().into_iter();
            let words = fields.filter_map(|(_, value)| match value {
                Value::Text(words) => Some(words),
                _ => None,
            });
            words.collect()
        }
        None => texts(&frozen.spec).into_iter().map(|it| it.words).collect(),
    };
    let kept = |it: &Translation| t.beside(frozen, &it.words).map(|beside| beside.text);
    all.retain(|it| said.contains(&it.words) && kept(it).as_ref() != Some(&it.text));
    let later = all.into_iter().map(|it| Later {
        date: it.at.date().to_owned(),
        words: it.words,
        text: it.text,
    });
    later.collect()
}
