//! Bytes to a JSON tree, refusing what a canonical document cannot hold, with its path. The common
//! parsers take the last of two equal keys, round large integers and tell no path.

use serde_json::{Map, Value};

use super::{CanonError, CanonFault, Step, allowed, in_range};

/// No document of ours nests deeper than a tenth of this; hostile ones would exhaust the stack.
pub const MAX_DEPTH: usize = 128;

pub fn parse(bytes: &[u8]) -> Result<Value, CanonError> {
    let text = std::str::from_utf8(bytes).map_err(|error| CanonFault::Syntax {
        at: error.valid_up_to(),
    })?;
    let mut parser = Parser {
        text,
        at: 0,
        depth: 0,
    };
    let value = parser.value()?;
    parser.space();
    if parser.at < text.len() {
        return Err(parser.syntax());
    }
    Ok(value)
}

struct Parser<'a> {
    text: &'a str,
    at: usize,
    depth: usize,
}

impl<'a> Parser<'a> {
    fn value(&mut self) -> Result<Value, CanonError> {
        self.space();
        match self.peek() {
            Some(b'{') => self.nested(Self::object),
            Some(b'[') => self.nested(Self::array),
            Some(b'"') => self.string().map(Value::String),
            Some(b'-' | b'0'..=b'9') => self.number(),
            _ if self.take("true") => Ok(Value::Bool(true)),
            _ if self.take("false") => Ok(Value::Bool(false)),
            _ if self.take("null") => Err(CanonFault::Null.into()),
            _ => Err(self.syntax()),
        }
    }

    fn nested(
        &mut self,
        container: fn(&mut Self) -> Result<Value, CanonError>,
    ) -> Result<Value, CanonError> {
        self.depth += 1;
        if self.depth > MAX_DEPTH {
            return Err(CanonFault::TooDeep.into());
        }
        self.at += 1;
        let value = container(self);
        self.depth -= 1;
        value
    }

    fn object(&mut self) -> Result<Value, CanonError> {
        let mut fields = Map::new();
        self.space();
        if self.take("}") {
            return Ok(Value::Object(fields));
        }
        loop {
            self.space();
            let key = self.string()?;
            let within = |error: CanonError| error.within(Step::Key(key.clone()));
            if fields.contains_key(&key) {
                return Err(within(CanonFault::DuplicateKey.into()));
            }
            self.space();
            self.expect(":")?;
            let value = self.value().map_err(within)?;
            fields.insert(key, value);
            self.space();
            if self.take("}") {
                return Ok(Value::Object(fields));
            }
            self.expect(",")?;
        }
    }

    fn array(&mut self) -> Result<Value, CanonError> {
        let mut items = Vec::new();
        self.space();
        if self.take("]") {
            return Ok(Value::Array(items));
        }
        loop {
            let index = items.len();
            let item = self.value();
            items.push(item.map_err(|error| error.within(Step::Index(index)))?);
            self.space();
            if self.take("]") {
                return Ok(Value::Array(items));
            }
            self.expect(",")?;
        }
    }

    fn number(&mut self) -> Result<Value, CanonError> {
        let rest = self.rest();
        let part = |c: char| c.is_ascii_digit() || "+-.eE".contains(c);
        let token = &rest[..rest.find(|c| !part(c)).unwrap_or(rest.len())];
        let digits = token.strip_prefix('-').unwrap_or(token);
        if digits.contains(['.', 'e', 'E']) {
            return Err(CanonFault::Float.into());
        }
        let leading_zero = digits.len() > 1 && digits.starts_with('0');
        if leading_zero || digits.is_empty() || !digits.bytes().all(|b| b.is_ascii_digit()) {
            return Err(self.syntax());
        }
        let integer = token.parse().ok().filter(|integer| in_range(*integer));
        let integer: i64 = integer.ok_or(CanonFault::IntegerTooLarge)?;
        self.at += token.len();
        Ok(Value::Number(integer.into()))
    }

    fn string(&mut self) -> Result<String, CanonError> {
        self.expect("\"")?;
        let mut text = String::new();
        loop {
            let rest = self.rest();
            let special = |c: char| c == '"' || c == '\\' || c < ' ';
            let plain = rest.find(special).ok_or_else(|| self.syntax())?;
            text.push_str(&rest[..plain]);
            self.at += plain;
            if self.take("\"") {
                allowed(&text)?;
                return Ok(text);
            }
            self.expect("\\")?;
            text.push(self.escaped()?);
        }
    }

    /// The character after a backslash.
    fn escaped(&mut self) -> Result<char, CanonError> {
        let letter = self.peek().ok_or_else(|| self.syntax())?;
        let character = match letter {
            b'"' | b'\\' | b'/' => char::from(letter),
            b'b' => '\u{8}',
            b'f' => '\u{c}',
            b'n' => '\n',
            b'r' => '\r',
            b't' => '\t',
            b'u' => {
                self.at += 1;
                return self.code_units();
            }
            _ => return Err(self.syntax()),
        };
        self.at += 1;
        Ok(character)
    }

    /// One character from one or two escaped UTF-16 code units; half a pair is refused.
    fn code_units(&mut self) -> Result<char, CanonError> {
        let first = self.code_unit()?;
        let mut units = vec![first];
        if (0xd800..0xdc00).contains(&first) {
            self.expect("\\u")?;
            units.push(self.code_unit()?);
        }
        let mut decoded = char::decode_utf16(units);
        match (decoded.next(), decoded.next()) {
            (Some(Ok(character)), None) => Ok(character),
            _ => Err(self.syntax()),
        }
    }

    fn code_unit(&mut self) -> Result<u16, CanonError> {
        let digits = self.rest().get(..4).ok_or_else(|| self.syntax())?;
        if !digits.bytes().all(|byte| byte.is_ascii_hexdigit()) {
            return Err(self.syntax());
        }
        let unit = u16::from_str_radix(digits, 16).map_err(|_| self.syntax())?;
        self.at += 4;
        Ok(unit)
    }

    fn rest(&self) -> &'a str {
        &self.text[self.at..]
    }

    fn peek(&self) -> Option<u8> {
        self.rest().bytes().next()
    }

    fn space(&mut self) {
        let rest = self.rest();
        self.at += rest.len() - rest.trim_start_matches([' ', '\t', '\n', '\r']).len();
    }

    fn take(&mut self, token: &str) -> bool {
        let found = self.rest().starts_with(token);
        if found {
            self.at += token.len();
        }
        found
    }

    fn expect(&mut self, token: &str) -> Result<(), CanonError> {
        if self.take(token) {
            Ok(())
        } else {
            Err(self.syntax())
        }
    }

    fn syntax(&self) -> CanonError {
        CanonFault::Syntax { at: self.at }.into()
    }
}
