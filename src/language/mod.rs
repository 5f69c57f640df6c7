//! What the program says to people: Fluent messages, in each reader's language.
//!
//! The texts are `src/language/<tag>/<area>.ftl`, compiled in. A page struct carries a [`Text`], which
//! is two words and `Copy`; templates and source call it alike:
//!
//! ```
//! use fellseam::language::Language;
//!
//! let t = Language::English.text();
//! assert_eq!(t.say("section-points").to_string(), "Points of measure");
//! assert_eq!(
//!     t.say("measured-after-washes").with("count", 3).to_string(),
//!     "After 3 washes",
//! );
//! ```
//!
//! ```html
//! <h1>{{ page.t.say("thread-heading") }}</h1>
//! <p>{{ page.t.say("thread-count").with("count", threads.len()).with("item", point.name) }}</p>
//! <td>{{ page.t.name(point.basis) }}</td>
//! ```
//!
//! What `say` gives is not text yet: it is written, and by a template escaped, where it stands.
//! Measurements go in as text that is already formatted, because they look the same in every
//! language; whole numbers go in as numbers, so that a message can choose its plural.
//!
//! Ids stand as literals inside the brackets of `say`, also as the arms of a `match` there, so
//! that `tests/house/texts.rs` can hold templates, source and texts to each other.

mod changes;
mod colours;
mod deeds;
mod evaluation;
mod findings;
mod groups;
mod imports;
mod instructions;
mod message;
mod names;
mod negotiate;
mod numbers;
mod phrases;
mod sentences;
mod terms;
mod texts;
mod values;

pub use changes::{ChangeLine, SizeLine, other_unit, shown};
pub use deeds::Things;
pub use evaluation::Evaluated;
pub use findings::AcceptedWarning;
pub use instructions::{INSTRUCTIONS, is_ready};
pub use message::{Message, Slot, Text};
pub use names::Named;
pub use terms::{Beside, Worded, terms_of};
pub use texts::Language;
pub use values::{FieldWords, Words};
