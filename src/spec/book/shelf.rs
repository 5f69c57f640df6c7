//! The texts of the shipped tables, their columns, and how a row is put in the place of another.

use serde_json::{Map, Value as Json, json};

use super::{Correction, Row, Table};
use crate::spec::document::Word;
use crate::spec::table::Source;

/// A table as it ships.
pub struct Shelved {
    pub text: &'static str,
    pub form: Form,
}

#[derive(Clone, Copy)]
pub enum Form {
    /// Rows with commas, of which the first columns are the key, and the last two how far it was
    /// checked.
    Lines { keys: usize },
    /// Rules by regulation and name, with a figure or a list of fibres in some.
    Rules,
}

/// The columns of [`Form::Rules`].
const RULE: [&str; 2] = ["percent", "fibres"];

pub fn shelved(table: Table) -> Shelved {
    let (text, form) = match table {
        Table::FibreNames => (
            include_str!("../data/fibre_names.csv"),
            Form::Lines { keys: 2 },
        ),
        Table::ComponentNames => (
            include_str!("../data/component_names.csv"),
            Form::Lines { keys: 2 },
        ),
        Table::LabelPhrases => (
            include_str!("../data/label_phrases.csv"),
            Form::Lines { keys: 2 },
        ),
        Table::FibreRules => (include_str!("../data/fibre_rules.json"), Form::Rules),
        Table::SafetyFigures => (
            include_str!("../data/safety_figures.csv"),
            Form::Lines { keys: 1 },
        ),
        Table::SafetyBands => (
            include_str!("../data/safety_bands.csv"),
            Form::Lines { keys: 1 },
        ),
        Table::Stitches => (
            include_str!("../data/stitches.csv"),
            Form::Lines { keys: 1 },
        ),
        Table::Seams => (include_str!("../data/seams.csv"), Form::Lines { keys: 1 }),
        Table::LetterCodes => (
            include_str!("../data/letter_codes.csv"),
            Form::Lines { keys: 1 },
        ),
        Table::Terms => (include_str!("../data/terms.csv"), Form::Lines { keys: 2 }),
    };
    Shelved { text, form }
}

impl Shelved {
    pub fn values(&self) -> Vec<&'static str> {
        match self.form {
            Form::Rules => RULE.to_vec(),
            Form::Lines { keys } => {
                let head = self.text.lines().find(|line| is_row(line));
                let columns: Vec<&str> = head.unwrap_or_default().split(',').collect();
                let end = columns.len().saturating_sub(2);
                columns.get(keys..end).unwrap_or_default().to_vec()
            }
        }
    }

    pub fn rows(&self) -> Vec<Row> {
        match self.form {
            Form::Lines { keys } => {
                let lines = self.text.lines().filter(|line| is_row(line)).skip(1);
                lines.filter_map(|line| row(line, keys)).collect()
            }
            Form::Rules => all_rules(&parsed(self.text)),
        }
    }
}

/// Neither a remark nor empty.
fn is_row(line: &str) -> bool {
    !line.starts_with('#') && !line.trim().is_empty()
}

/// Nothing of a line that the table's own reading refuses too.
fn row(line: &str, keys: usize) -> Option<Row> {
    let columns: Vec<String> = line.split(',').map(|it| it.trim().to_owned()).collect();
    let end = columns.len().checked_sub(2)?;
    Some(Row {
        key: columns.get(..keys)?.to_vec(),
        values: columns.get(keys..end)?.to_vec(),
        says: String::new(),
        source: Source::read(&columns[end], &columns[end + 1]).ok()?,
    })
}

/// The text with the corrected rows in the place of those of the same key.
pub fn lines(text: &str, shelved: &Shelved, corrections: &[&Correction]) -> String {
    let Form::Lines { keys } = shelved.form else {
        return text.to_owned();
    };
    let mut written = String::with_capacity(text.len());
    for line in text.lines() {
        let key = row(line, keys).filter(|_| is_row(line)).map(|it| it.key());
        let found = corrections.iter().find(|it| Some(&it.row) == key.as_ref());
        match found {
            Some(correction) => {
                let key: Vec<&str> = line.split(',').take(keys).collect();
                let values = correction.values.iter().map(String::as_str);
                let last = [correction.status.word(), &correction.on];
                let columns: Vec<&str> = key.into_iter().chain(values).chain(last).collect();
                written += &columns.join(",");
            }
            None => written += line,
        }
        written.push('\n');
    }
    written
}

fn parsed(text: &str) -> Json {
    serde_json::from_str(text).expect("a test reads the shipped tables")
}

fn all_rules(rules: &Json) -> Vec<Row> {
    let mut rows = Vec::new();
    for (regulation, rules) in rules.as_object().into_iter().flatten() {
        let cited = rules["cited"].as_str().unwrap_or_default();
        for (name, rule) in rules.as_object().into_iter().flatten() {
            let Some(rule) = rule.as_object() else {
                continue;
            };
            let text = |field: &str| rule.get(field).and_then(Json::as_str).unwrap_or_default();
            let of = |field: &str| rule["source"][field].as_str().unwrap_or_default();
            let Ok(source) = Source::read(of("status"), of("on")) else {
                continue;
            };
            let fibres = rule.get("fibres").and_then(Json::as_array);
            let fibres = fibres.into_iter().flatten().filter_map(Json::as_str);
            let fibres: Vec<&str> = fibres.collect();
            rows.push(Row {
                key: vec![regulation.clone(), name.clone()],
                values: vec![text("percent").to_owned(), fibres.join(" ")],
                says: format!("{} ({cited}, {})", text("says"), text("article")),
                source,
            });
        }
    }
    rows
}

/// The rules with the corrected figures, fibres and sources.
pub fn rules(text: &str, corrections: &[&Correction]) -> String {
    if corrections.is_empty() {
        return text.to_owned();
    }
    let mut rules = parsed(text);
    for correction in corrections {
        let Some((regulation, name)) = correction.row.split_once('.') else {
            continue;
        };
        let Some(rule) = rules[regulation][name].as_object_mut() else {
            continue;
        };
        let [percent, fibres] = [0, 1].map(|at| correction.values[at].as_str());
        put(
            rule,
            "percent",
            (!percent.is_empty()).then(|| json!(percent)),
        );
        let fibres: Vec<&str> = fibres.split_whitespace().collect();
        put(rule, "fibres", (!fibres.is_empty()).then(|| json!(fibres)));
        let (status, on) = (correction.status.word(), &correction.on);
        rule.insert("source".to_owned(), json!({ "status": status, "on": on }));
    }
    rules.to_string()
}

fn put(rule: &mut Map<String, Json>, field: &str, value: Option<Json>) {
    match value {
        Some(value) => {
            rule.insert(field.to_owned(), value);
        }
        None => {
            rule.remove(field);
        }
    }
}
