//! Prints, made by the child: see [`super::render`]. What goes in and why there may be none is the
//! business of the room `print`; here are bytes and their limits.

use super::render::{MAX_BYTES, RenderError, Renderer, Task};

impl Renderer {
    /// A PDF out of a packed order, or its refusal as JSON.
    pub async fn paper(&self, packed: &[u8]) -> Result<Result<Vec<u8>, String>, RenderError> {
        if packed.len() as u64 > MAX_BYTES {
            return Err(RenderError::TooLarge);
        }
        let (time, memory) = self.limits_of_one();
        let end = self.ask(Task::Paper, packed, time, memory).await?;
        let (line, bytes) = end.line_and_bytes()?;
        let failed = |why: String| RenderError::Failed { why };
        let answer: Result<u64, serde_json::Value> =
            serde_json::from_slice(&line).map_err(|error| failed(error.to_string()))?;
        match answer {
            Err(refusal) => Ok(Err(refusal.to_string())),
            Ok(length) if length == bytes.len() as u64 && bytes.starts_with(b"%PDF-") => {
                Ok(Ok(bytes))
            }
            Ok(_) => Err(failed("answer: not the PDF that was announced".to_owned())),
        }
    }
}
