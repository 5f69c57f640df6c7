//! Prints: the order, the document and the files come packed, the answer is a PDF.

use std::io::{self, Write};

use crate::print::paper::fonts::Fonts;
use crate::print::paper::{Parcel, pdf};

/// One line, `{"Ok": length}` or `{"Err": why}`, and the bytes.
pub fn answer(output: &mut impl Write, packed: &[u8]) -> io::Result<()> {
    let parcel = Parcel::unpack(packed)?;
    let made = pdf(&parcel, &Fonts::of_this_machine());
    serde_json::to_writer(&mut *output, &made.as_ref().map(Vec::len))?;
    output.write_all(b"\n")?;
    if let Ok(bytes) = &made {
        output.write_all(bytes)?;
    }
    output.flush()
}
