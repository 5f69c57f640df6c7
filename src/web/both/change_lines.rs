//! The change list as it stands on a page: on *what changed*, and where a draft is published.

use crate::language::{ChangeLine, Text};
use crate::spec::Item;
use crate::spec::change::{Version, changes};
use crate::spec::{DecimalSign, ItemId, Section};

/// The changes of one section. `templates/both/change_lines.html` has the macro that shows them.
pub struct ChangeGroup {
    pub section: Section,
    pub lines: Vec<LinkedLine>,
}

/// One change, and where to look at what it changed.
pub struct LinkedLine {
    pub line: ChangeLine,
    /// The shape around its letter.
    pub shape: &'static str,
    pub href: Option<String>,
}

/// What changed from `old` to `new`, by section. `href` leads to an item of the newer version, or
/// nowhere.
pub fn change_groups(
    t: Text,
    old: Version<'_>,
    new: Version<'_>,
    sign: DecimalSign,
    href: impl Fn(&ItemId) -> Option<String>,
) -> Vec<ChangeGroup> {
    let mut groups: Vec<ChangeGroup> = Vec::new();
    for line in t.change_lines(&changes(old, new), old, new, sign) {
        let id = line.item.as_ref();
        let item = id.and_then(|id| new.spec.item(id).or_else(|| old.spec.item(id)));
        let linked = LinkedLine {
            href: id.filter(|_| !line.removed).and_then(&href),
            shape: item.map_or("point", Item::shape),
            line,
        };
        match groups.last_mut() {
            Some(group) if group.section == linked.line.section => group.lines.push(linked),
            _ => groups.push(ChangeGroup {
                section: linked.line.section,
                lines: vec![linked],
            }),
        }
    }
    groups
}
