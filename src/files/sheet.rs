//! Sheets that are uploaded, read by the child: see [`super::render`].

use std::time::Duration;

use super::render::{RenderError, Renderer, Task};
use crate::spec::sheet::{NotASheet, Sheet};

/// The largest file that is taken, in bytes. A size chart is about a hundredth of it.
pub const MAX_BYTES: usize = 8 * 1024 * 1024;

/// What an XLSX may unpack to, in bytes, all its files together.
pub const MAX_UNPACKED: u64 = 48 * 1024 * 1024;

/// From start to answer: with a second of the processor, what is read of an honest file takes a
/// tenth of it.
const TIME: Duration = Duration::from_millis(1500);

/// Address space of the child, its own program included.
const MEMORY: u64 = 512 * 1024 * 1024;

impl Renderer {
    /// The sheets of an XLSX file, or of values parted by commas, semicolons or tabs. Sheets with
    /// nothing in them are left out.
    ///
    /// Errors: why the file is not taken. A file that was made to harm costs at most `TIME` and
    /// `MEMORY`.
    pub async fn sheets(&self, bytes: &[u8]) -> Result<Vec<Sheet>, NotASheet> {
        if bytes.len() > MAX_BYTES {
            return Err(NotASheet::TooLarge);
        }
        let answer = self.ask(Task::Sheets, bytes, TIME, MEMORY).await;
        let line = match answer.and_then(|end| end.line()) {
            Ok(line) => line,
            Err(RenderError::TooSlow | RenderError::TooMuchMemory) => {
                return Err(NotASheet::TooHeavy);
            }
            Err(RenderError::Failed { why }) => return Err(NotASheet::Failed { why }),
            Err(_) => return Err(NotASheet::Broken),
        };
        let answer: Result<Vec<Sheet>, NotASheet> =
            serde_json::from_slice(&line).map_err(|error| NotASheet::Failed {
                why: error.to_string(),
            })?;
        // The child read what a stranger wrote: its word is not taken for the limits.
        answer.and_then(|sheets| match sheets.iter().all(Sheet::fits) {
            true => Ok(sheets),
            false => Err(NotASheet::Broken),
        })
    }
}
