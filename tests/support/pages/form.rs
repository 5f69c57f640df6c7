//! Forms, as they stand on a page and as a browser sends them.

use scraper::{ElementRef, Selector};

/// A form of a page, filled as the page filled it.
#[derive(Debug, Clone)]
pub struct FormOf {
    pub action: String,
    pub fields: Vec<(String, String)>,
    pub files: Vec<FileOf>,
}

/// A file to send with a form.
#[derive(Debug, Clone)]
pub struct FileOf {
    pub field: String,
    pub name: String,
    pub bytes: Vec<u8>,
}

/// What a browser would send of a form whose first plain button is pressed.
pub fn fields(form: ElementRef<'_>) -> Vec<(String, String)> {
    let every = Selector::parse("input, select, textarea, button").expect("a selector");
    let options = Selector::parse("option").expect("a selector");
    let mut fields = Vec::new();
    for element in form.select(&every) {
        let Some(name) = element.attr("name") else {
            continue;
        };
        // What a template holds belongs to no form.
        let mut around = element.ancestors().filter_map(ElementRef::wrap);
        let in_template = around.any(|it| it.value().name() == "template");
        if element.attr("disabled").is_some() || in_template {
            continue;
        }
        let kind = element.attr("type").unwrap_or_default();
        let value = match element.value().name() {
            "select" => {
                let all: Vec<ElementRef<'_>> = element.select(&options).collect();
                let chosen = all
                    .iter()
                    .find(|option| option.attr("selected").is_some())
                    .or(all.first());
                chosen.map(|option| {
                    let text = || option.text().collect::<String>();
                    option.attr("value").map_or_else(text, ToOwned::to_owned)
                })
            }
            "textarea" => Some(element.text().collect()),
            "button" => None,
            _ if matches!(kind, "checkbox" | "radio") => {
                let value = element.attr("value").unwrap_or("on");
                element.attr("checked").map(|_| value.to_owned())
            }
            _ if matches!(kind, "file" | "submit") => None,
            _ => Some(element.attr("value").unwrap_or_default().to_owned()),
        };
        if let Some(value) = value {
            fields.push((name.to_owned(), value));
        }
    }
    fields
}

impl FormOf {
    /// Types into a field, chooses, ticks; a field that was not there is added, as a button's name.
    pub fn set(mut self, name: &str, value: &str) -> Self {
        match self.fields.iter_mut().find(|(field, _)| field == name) {
            Some((_, old)) => *old = value.to_owned(),
            None => self.fields.push((name.to_owned(), value.to_owned())),
        }
        self
    }

    /// Ticks one more box of the same name.
    pub fn tick(mut self, name: &str, value: &str) -> Self {
        self.fields.push((name.to_owned(), value.to_owned()));
        self
    }

    /// Takes the ticks of this name away.
    pub fn untick(mut self, name: &str) -> Self {
        self.fields.retain(|(field, _)| field != name);
        self
    }

    /// What stands in a field; empty when it is not there.
    pub fn value(&self, name: &str) -> &str {
        let field = self.fields.iter().find(|(field, _)| field == name);
        field.map_or("", |(_, value)| value)
    }

    pub fn attach(mut self, field: &str, name: &str, bytes: &[u8]) -> Self {
        self.files.push(FileOf {
            field: field.to_owned(),
            name: name.to_owned(),
            bytes: bytes.to_vec(),
        });
        self
    }

    pub fn multipart(&self, boundary: &str) -> Vec<u8> {
        let mut body = Vec::new();
        for (name, value) in &self.fields {
            let head = format!(
                "--{boundary}\r\ncontent-disposition: form-data; name=\"{name}\"\r\n\r\n{value}\r\n"
            );
            body.extend_from_slice(head.as_bytes());
        }
        for file in &self.files {
            let head = format!(
                "--{boundary}\r\ncontent-disposition: form-data; name=\"{}\"; filename=\"{}\"\r\n\
                 content-type: application/octet-stream\r\n\r\n",
                file.field, file.name
            );
            body.extend_from_slice(head.as_bytes());
            body.extend_from_slice(&file.bytes);
            body.extend_from_slice(b"\r\n");
        }
        body.extend_from_slice(format!("--{boundary}--\r\n").as_bytes());
        body
    }
}
