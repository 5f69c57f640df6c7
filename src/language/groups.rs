//! What belongs together in the document, as the trade says it: `80 % cotton`, `from Neck seam to
//! its top: 6.0 cm (2 3/8 in)`.

use crate::spec::document::{Fibre, Value, Word, YarnSystem};

use super::values::Words;

type Group = [(&'static str, Value)];

impl Words<'_> {
    /// The members of a group; `field` is the field that holds it. What is not there is left out.
    pub(super) fn group(&self, field: &str, group: &Group) -> String {
        let part = |names: &[&str]| Some(self.members(group, names)).filter(|it| !it.is_empty());
        match field {
            "composition" => self.share(group),
            "distances" => self.told(self.way(group), part(&["distance"])),
            "bands" => self.band(group),
            "texts" => self.told(
                self.members(group, &["market", "language"]),
                part(&["text"]),
            ),
            "body" => {
                let girth = self.between(group);
                let girth = Some(girth).filter(|it| !it.is_empty());
                self.told(self.members(group, &["dimension"]), girth)
            }
            "ages" => self.between(group),
            "tolerances" => self.tolerance(group),
            "yarn" | "warp" | "weft" => self.yarn(group),
            "structure" => {
                let made = group.iter().map(|(made, value)| {
                    let how = Some(self.value(value, Some(made))).filter(|it| !it.is_empty());
                    self.told(self.t.field(made).to_string(), how)
                });
                made.collect()
            }
            "wastage" => self.wastage(group),
            "minimum" => {
                let members = ["quantity", "unit", "level"];
                let members = members.iter().filter_map(|name| self.member(group, name));
                members.collect::<Vec<_>>().join(" ")
            }
            "evidence" => self.told(self.members(group, &["kind"]), part(&["report", "date"])),
            "exemptions" => self.told(self.members(group, &["code"]), part(&["reason", "by"])),
            "file" => self.picture(group),
            _ => self.named(group),
        }
    }

    fn member(&self, group: &Group, name: &str) -> Option<String> {
        Some(self.value(find(group, name)?, Some(name)))
    }

    /// These members, as far as they are there.
    fn members(&self, group: &Group, names: &[&str]) -> String {
        let members = names.iter().filter_map(|name| self.member(group, name));
        members.collect::<Vec<_>>().join(", ")
    }

    /// `what: value`, or the one of them that is there.
    fn told(&self, what: String, value: Option<String>) -> String {
        match value {
            None => what,
            Some(value) if what.is_empty() => value,
            Some(value) => self
                .t
                .say("group-told")
                .with("what", what)
                .with("value", value)
                .to_string(),
        }
    }

    /// `80 % cotton`.
    fn share(&self, group: &Group) -> String {
        let name = self.member(group, "name");
        let fibre = match (find(group, "fibre"), name) {
            // A fibre without a listed name goes by the one that was typed.
            (Some(Value::Word { word, .. }), Some(name)) if *word == Fibre::Other.word() => name,
            (Some(fibre), None) => self.t.within(&self.value(fibre, None)),
            (Some(fibre), Some(name)) => self
                .t
                .say("group-also-called")
                .with("fibre", self.t.within(&self.value(fibre, None)))
                .with("name", name)
                .to_string(),
            (None, Some(name)) => name,
            (None, None) => self.t.say("group-unsaid").to_string(),
        };
        match self.member(group, "percent") {
            None => fibre,
            Some(percent) => self
                .t
                .say("group-percent")
                .with("percent", percent)
                .with("of", fibre)
                .to_string(),
        }
    }

    /// `5 % added to what is needed`.
    fn wastage(&self, group: &Group) -> String {
        let basis = self.member(group, "basis").unwrap_or_default();
        match self.member(group, "percent") {
            None => basis,
            Some(percent) => self
                .t
                .say("group-percent")
                .with("percent", percent)
                .with("of", basis)
                .to_string()
                .trim()
                .to_owned(),
        }
    }

    /// `from Neck seam to its top`.
    fn way(&self, group: &Group) -> String {
        let unsaid = || self.t.say("group-unsaid").to_string();
        let (line, anchor) = (self.member(group, "line"), self.member(group, "anchor"));
        if line.is_none() && anchor.is_none() {
            return String::new();
        }
        self.t
            .say("group-way")
            .with("line", line.unwrap_or_else(unsaid))
            .with("anchor", anchor.unwrap_or_else(unsaid))
            .to_string()
    }

    /// `XS–M: 8.0 cm (3 1/8 in) × 6.0 cm (2 3/8 in); from …`.
    fn band(&self, group: &Group) -> String {
        let size = |name| match find(group, name) {
            Some(Value::Item(size)) => Some(size),
            _ => None,
        };
        let sizes = match (size("from"), size("to")) {
            (Some(from), Some(to)) => self.range(from, to),
            (Some(one), None) | (None, Some(one)) => self.letter(one),
            (None, None) => String::new(),
        };
        let (width, height) = (self.member(group, "width"), self.member(group, "height"));
        let size = match (width, height) {
            (Some(width), Some(height)) => Some(self.across(&width, &height)),
            (None, None) => None,
            (one, _) => {
                let name = if one.is_some() { "width" } else { "height" };
                find(group, name).map(|value| self.labelled(name, value))
            }
        };
        let whole = size.into_iter().chain(self.member(group, "distances"));
        let whole = whole.collect::<Vec<_>>().join(", ");
        self.told(sizes, Some(whole).filter(|it| !it.is_empty()))
    }

    fn across(&self, width: &str, height: &str) -> String {
        self.t
            .say("group-across")
            .with("width", width)
            .with("height", height)
            .to_string()
    }

    fn between(&self, group: &Group) -> String {
        match (self.member(group, "from"), self.member(group, "to")) {
            (Some(from), Some(to)) if from != to => self
                .t
                .say("group-from-to")
                .with("from", from)
                .with("to", to)
                .to_string(),
            (from, to) => from.or(to).unwrap_or_default(),
        }
    }

    /// `−0.4 cm (1/8 in) +0.6 cm (3/16 in)`.
    fn tolerance(&self, group: &Group) -> String {
        let sides = [("minus", "−"), ("plus", "+")];
        let sides = sides.into_iter().filter_map(|(name, sign)| {
            let side = self.member(group, name)?;
            Some(format!("{sign}{side}"))
        });
        sides.collect::<Vec<_>>().join(" ")
    }

    /// `20 tex`, `Ne 30/2`: as each system is written.
    fn yarn(&self, group: &Group) -> String {
        let first = [YarnSystem::Nm, YarnSystem::Ne].map(YarnSystem::word);
        let named =
            matches!(find(group, "system"), Some(Value::Word { word, .. }) if first.contains(word));
        let count = match (self.member(group, "count"), self.member(group, "ply")) {
            (Some(count), Some(ply)) => Some(format!("{count}/{ply}")),
            (count, ply) => count.or(ply),
        };
        let system = self.member(group, "system");
        let order = match named {
            true => [system, count],
            false => [count, system],
        };
        order.into_iter().flatten().collect::<Vec<_>>().join(" ")
    }

    /// `1200 × 900, 3F2A 91BC`.
    fn picture(&self, group: &Group) -> String {
        let sides = [["width", "height"], ["pixels_across", "pixels_down"]];
        let sides = sides.into_iter().find_map(|[across, down]| {
            let (across, down) = (self.member(group, across)?, self.member(group, down)?);
            Some(self.across(&across, &down))
        });
        let file = self.member(group, "file");
        let both = sides.into_iter().chain(file);
        both.collect::<Vec<_>>().join(", ")
    }

    /// Every member under its name; a text that has no other name by itself.
    fn named(&self, group: &Group) -> String {
        let members = group.iter().map(|(name, value)| match (*name, value) {
            ("weave" | "knit", value) => self.value(value, None),
            (name, value) => self.labelled(name, value),
        });
        members.collect::<Vec<_>>().join(", ")
    }

    fn labelled(&self, name: &str, value: &Value) -> String {
        let label = self.t.field(name);
        if *value == Value::Flag(true) {
            return label.to_string();
        }
        self.t
            .say("group-named")
            .with("name", self.t.within(&label.to_string()))
            .with("value", self.value(value, Some(name)))
            .to_string()
    }
}

fn find<'a>(group: &'a Group, name: &str) -> Option<&'a Value> {
    let mut members = group.iter();
    members.find(|(it, _)| *it == name).map(|(_, value)| value)
}
