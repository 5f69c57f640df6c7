//! The rows of a form: fields named `KEY.FIELD`, in the order of the hidden field that lists the
//! keys. The key of an item is its id; a new row is `new-1`, `new-2` ... until it is saved.

use crate::spec::ItemId;
use crate::store::World;
use crate::web::form::Fields;
use crate::web::problem::Problem;

/// How many empty rows follow those that are there, and those of an empty table.
pub const SPARE: usize = 2;
pub const FIRST: usize = 8;
/// How many one press of the button adds.
pub const MORE: usize = 10;

const NEW: &str = "new-";

/// The key of the `n`th new row, from 1.
pub fn new_key(n: usize) -> String {
    format!("{NEW}{n}")
}

pub fn is_new(key: &str) -> bool {
    key.starts_with(NEW)
}

/// The name and the id of a row's field.
pub fn at(key: &str, field: &str) -> String {
    format!("{key}.{field}")
}

/// The id of a row's item: a fresh one for a new row.
pub fn id(key: &str, world: &World) -> ItemId {
    if is_new(key) {
        ItemId::new(world.id())
    } else {
        ItemId::new(key)
    }
}

/// What the pressed button asks for beside saving.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Press {
    Save,
    /// More empty rows.
    Add,
    Up(String),
    Down(String),
    /// Letters anew, in the order of the rows.
    Letter,
    /// Another one like this one.
    Copy(String),
}

impl Press {
    pub fn of(fields: &Fields) -> Press {
        match fields.text("do").split_once(' ') {
            Some(("up", key)) => Press::Up(key.to_owned()),
            Some(("down", key)) => Press::Down(key.to_owned()),
            Some(("copy", key)) => Press::Copy(key.to_owned()),
            _ if fields.text("do") == "add" => Press::Add,
            _ if fields.text("do") == "letter" => Press::Letter,
            _ => Press::Save,
        }
    }

    /// The end of the address to go on to.
    pub fn then(&self) -> String {
        match self {
            Press::Save | Press::Letter => String::new(),
            Press::Add => format!("&more={MORE}#row-{}", new_key(1)),
            // Only an item's own key: it goes into an address.
            Press::Up(key) | Press::Down(key) if is_key(key) => format!("#row-{key}"),
            Press::Up(_) | Press::Down(_) | Press::Copy(_) => String::new(),
        }
    }
}

/// The keys of a list as the form asks for them: without the rows that are ticked to be removed,
/// and with the one moved whose button was pressed.
///
/// Errors: `BadForm` for what no page of ours sends: a key twice, or none that could be an id.
pub fn keys(fields: &Fields, list: &str, press: &Press) -> Result<Vec<String>, Problem> {
    let mut keys: Vec<String> = Vec::new();
    for key in fields.all(list) {
        if !is_key(key) || keys.iter().any(|other| other == key) {
            return Err(Problem::BadForm);
        }
        keys.push(key.to_owned());
    }
    keys.retain(|key| !fields.has(&at(key, "remove")));
    let place = |key: &String| keys.iter().position(|other| other == key);
    match press {
        Press::Up(key) => {
            if let Some(from) = place(key).filter(|from| *from > 0) {
                keys.swap(from, from - 1);
            }
        }
        Press::Down(key) => {
            if let Some(from) = place(key).filter(|from| from + 1 < keys.len()) {
                keys.swap(from, from + 1);
            }
        }
        Press::Save | Press::Add | Press::Letter | Press::Copy(_) => {}
    }
    Ok(keys)
}

/// Whether it could be an id.
pub fn is_key(key: &str) -> bool {
    (1..=64).contains(&key.len())
        && key
            .bytes()
            .all(|byte| byte.is_ascii_alphanumeric() || byte == b'-' || byte == b'_')
}

#[cfg(test)]
mod tests {
    use super::*;

    fn pressed(what: &str, ticked: &[&str]) -> Vec<String> {
        let mut body = "row=a&row=b&row=c&do=".to_owned() + what;
        for key in ticked {
            body += &format!("&{key}.remove=on");
        }
        let fields = Fields::parse(body.as_bytes()).unwrap();
        keys(&fields, "row", &Press::of(&fields)).unwrap()
    }

    #[test]
    fn rows_are_moved_and_removed() {
        assert_eq!(pressed("", &[]), ["a", "b", "c"]);
        assert_eq!(pressed("up+c", &[]), ["a", "c", "b"]);
        assert_eq!(pressed("down+a", &[]), ["b", "a", "c"]);
        assert_eq!(pressed("up+a", &[]), ["a", "b", "c"]);
        assert_eq!(pressed("down+c", &[]), ["a", "b", "c"]);
        assert_eq!(pressed("up+c", &["b"]), ["c", "a"]);
        assert_eq!(pressed("up+b", &["b"]), ["a", "c"]);
    }

    #[test]
    fn what_is_no_key_is_refused() {
        for body in ["row=a&row=a", "row=", "row=a%20b", "row=a/b"] {
            let fields = Fields::parse(body.as_bytes()).unwrap();
            assert!(keys(&fields, "row", &Press::Save).is_err(), "{body}");
        }
        assert_eq!(Press::Up("a/b".to_owned()).then(), "");
        assert_eq!(Press::Up("a".to_owned()).then(), "#row-a");
    }
}
