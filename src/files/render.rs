//! The client of the render child: `fellseam render`, the same binary started again for one file.
//!
//! Decoders and SVG parsers read bytes that a stranger chose. They do so in a process of their
//! own, for three reasons: what they take (memory, time) can be bounded and is given back for
//! certain; what they break is only themselves; and the process holds no database, no secret (its
//! environment is emptied) and no other person's file. Its answer is believed no further than
//! needed: lengths must add up and every picture must begin like the type it claims.
//!
//! One job is a line of JSON ([`Job`]) and the file on stdin; one answer is a line of JSON
//! ([`Answer`], or sheets as [`super::sheet`] reads them) and the pictures on stdout. Stderr is for
//! the log.

use std::io;
use std::path::{Path, PathBuf};
use std::process::{ExitStatus, Stdio};
use std::time::Duration;

use rustix::process::{Pid, Signal, kill_process_group};
use serde::{Deserialize, Serialize};
use tokio::io::{AsyncRead, AsyncReadExt, AsyncWriteExt};
use tokio::process::{Child, Command};
use tokio::sync::Semaphore;

use super::media::Media;

/// The largest picture that is decoded, in pixels.
pub const MAX_PIXELS: u64 = 50_000_000;

/// The largest file that is read and the largest picture that is unpacked, in bytes.
pub const MAX_BYTES: u64 = 256 * 1024 * 1024;

/// No honest answer is larger; a child that says more is stopped.
const MAX_ANSWER: u64 = 128 * 1024 * 1024;

/// As much of the child's complaints as the log gets.
const MAX_COMPLAINT: usize = 16 * 1024;

/// What a file is wanted for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Kind {
    /// JPEG, PNG, WebP or HEIC. Only the answer is kept, never the bytes that were sent: they may
    /// say where and by whom the picture was taken.
    Photo,
    /// As a photo, or SVG. The caller keeps the original beside the answer.
    Drawing,
}

/// What a file became.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Rendered {
    /// What the file was.
    pub media: Media,
    /// Size of the upright original: pixels, or for an SVG its user units (scaled up when it is
    /// drawn smaller than 1000 units, so that whole numbers give the true aspect).
    pub width: u32,
    pub height: u32,
    /// When a photograph was taken by the camera's own clock, `YYYY-MM-DDTHH:MM:SS`, no zone.
    pub taken: Option<String>,
    pub warnings: Vec<Warning>,
    /// What may be shown. Of a raster: lossy WebP at widths 480, 1080 and 2048, narrowest first,
    /// none wider than the original. Of an SVG: first the cleaned SVG, then a WebP of it 1080 wide.
    pub pictures: Vec<Picture>,
}

/// One picture that is safe to serve.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Picture {
    pub media: Media,
    /// In pixels, or user units of an SVG.
    pub width: u32,
    pub height: u32,
    pub bytes: Vec<u8>,
}

/// What the sender should be told about an SVG that was taken.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Warning {
    /// It holds text, drawn with whatever font this machine has in its place.
    LiveText,
    /// It holds text, and this machine has no font at all: the text is not shown.
    TextLost,
    /// It names pictures in other files or on other machines. They are not shown.
    LinkedPictures,
    /// It holds pictures. They are not shown.
    EmbeddedPictures,
}

/// Why a file was not taken, in terms that a page can explain. Only `Failed` is our own fault.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum RenderError {
    /// More than [`MAX_PIXELS`] or [`MAX_BYTES`], or an SVG of too many elements.
    #[error("the picture is too large")]
    TooLarge,
    #[error("the file is not a picture")]
    NotAPicture,
    /// A picture, but of a kind that is not taken here; `what` is a short technical name.
    #[error("{what} is not supported")]
    Unsupported { what: String },
    /// A phone's HEIC picture, and no converter is installed here.
    #[error("HEIC pictures cannot be read on this machine")]
    HeicUnsupported,
    #[error("the picture takes too long to draw")]
    TooSlow,
    #[error("the picture takes too much memory to draw")]
    TooMuchMemory,
    /// It begins like a picture and cannot be read as one: cut off, damaged, or made to harm.
    #[error("the picture is damaged")]
    Broken,
    /// The child could not be started or talked to.
    #[error("the render child failed: {why}")]
    Failed { why: String },
}

/// What the children may take.
#[derive(Debug, Clone)]
pub struct Limits {
    /// Children at one time; further jobs wait.
    pub at_once: usize,
    /// Of each, from start to answer.
    pub time: Duration,
    /// Address space of each, in bytes.
    pub memory: u64,
}

impl Default for Limits {
    fn default() -> Self {
        Self {
            at_once: 2,
            time: Duration::from_secs(30),
            memory: 1536 * 1024 * 1024,
        }
    }
}

/// What the child is asked for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub(crate) enum Task {
    Pictures(Kind),
    Sheets,
    Paper,
}

/// The first line to the child.
#[derive(Debug, Serialize, Deserialize)]
pub(crate) struct Job {
    pub task: Task,
    /// Bytes that follow the line.
    pub length: u64,
    /// Address space in bytes.
    pub memory: u64,
    /// Processor time in seconds.
    pub seconds: u64,
    /// The program that turns HEIC into PNG, called with two file names.
    pub heic: Option<PathBuf>,
}

/// The first line from the child.
pub(crate) type Answer = Result<Header, RenderError>;

#[derive(Debug, Serialize, Deserialize)]
pub(crate) struct Header {
    pub media: Media,
    pub width: u32,
    pub height: u32,
    pub taken: Option<String>,
    pub warnings: Vec<Warning>,
    /// In the order of the bytes that follow.
    pub pictures: Vec<PictureHeader>,
}

#[derive(Debug, Serialize, Deserialize)]
pub(crate) struct PictureHeader {
    pub media: Media,
    pub width: u32,
    pub height: u32,
    pub length: u64,
}

/// Starts render children, a few at a time. One for the whole service.
#[derive(Debug)]
pub struct Renderer {
    program: PathBuf,
    limits: Limits,
    heic: Option<PathBuf>,
    slots: Semaphore,
}

impl Renderer {
    /// `program` is this binary (`std::env::current_exe()`; another in tests). `heic` is a
    /// converter as [`heic_converter`] finds it.
    pub fn new(program: impl Into<PathBuf>, limits: Limits, heic: Option<PathBuf>) -> Self {
        Self {
            program: program.into(),
            slots: Semaphore::new(limits.at_once),
            limits,
            heic,
        }
    }

    /// Makes pictures that are safe to show out of an uploaded file.
    pub async fn render(&self, kind: Kind, bytes: &[u8]) -> Result<Rendered, RenderError> {
        let length = bytes.len() as u64;
        if length > MAX_BYTES {
            return Err(RenderError::TooLarge);
        }
        let Limits { time, memory, .. } = self.limits;
        let end = self.ask(Task::Pictures(kind), bytes, time, memory).await?;
        end.read()
    }

    /// Starts a child for one job and waits for its end.
    pub(super) async fn ask(
        &self,
        task: Task,
        bytes: &[u8],
        time: Duration,
        memory: u64,
    ) -> Result<End, RenderError> {
        let length = bytes.len() as u64;
        let job = Job {
            task,
            length,
            memory,
            // A child whose parent died still ends.
            seconds: time.as_secs().max(1),
            heic: self.heic.clone(),
        };
        let mut line = serde_json::to_vec(&job).map_err(|error| failed("job", &error))?;
        line.push(b'\n');

        let _slot = self
            .slots
            .acquire()
            .await
            .expect("the semaphore is never closed");
        // The HEIC converter works on files. Their folder goes with this function, however the
        // child ends.
        let scratch = (Media::sniff(bytes) == Some(Media::Heic))
            .then(tempfile::tempdir)
            .transpose()
            .map_err(|error| failed("temporary folder", &error))?;
        let folder = scratch.as_ref().map_or(Path::new("/"), |dir| dir.path());
        let mut child = self
            .command(folder)
            .spawn()
            .map_err(|error| failed("start", &error))?;
        let mut group = Group::of(&child);
        let talk = talk(&mut child, &line, bytes);
        let Ok(end) = tokio::time::timeout(time, talk).await else {
            tracing::warn!(?task, length, "render child stopped: too slow");
            return Err(RenderError::TooSlow);
        };
        let end = end.map_err(|error| failed("talk", &error))?;
        group.is_over();
        if !end.complaint.is_empty() || !end.status.success() {
            let complaint = String::from_utf8_lossy(&end.complaint);
            tracing::warn!(?task, length, status = %end.status, %complaint, "render child");
        }
        Ok(end)
    }

    /// Time and memory of one child.
    pub(super) fn limits_of_one(&self) -> (Duration, u64) {
        (self.limits.time, self.limits.memory)
    }

    fn command(&self, folder: &Path) -> Command {
        let mut command = Command::new(&self.program);
        command
            .arg("render")
            .current_dir(folder)
            // No secret of the service (a database's password) within reach of a decoder.
            .env_clear()
            // Every thread of the HEIC converter would reserve address space for a heap of its own.
            .env("MALLOC_ARENA_MAX", "1")
            .stdin(Stdio::piped())
            .stdout(Stdio::piped())
            .stderr(Stdio::piped())
            // A group of its own: it is killed together with a converter it started, and a Ctrl-C
            // meant for the service does not cut off uploads that a graceful end waits for.
            .process_group(0)
            .kill_on_drop(true);
        command
    }
}

/// Looks for an installed HEIC converter of libheif in the folders of `path` (the value of the
/// environment's `PATH`).
pub fn heic_converter(path: &std::ffi::OsStr) -> Option<PathBuf> {
    std::env::split_paths(path)
        .flat_map(|folder| ["heif-dec", "heif-convert"].map(|name| folder.join(name)))
        .find(|program| program.is_file())
}

/// Kills the child's process group when it goes out of scope: after the time limit, or when the
/// request that waited for it was dropped.
struct Group(Option<Pid>);

impl Group {
    fn of(child: &Child) -> Self {
        let id = child.id().and_then(|id| i32::try_from(id).ok());
        Self(id.and_then(Pid::from_raw))
    }

    /// The child has been waited for: its number may belong to somebody else now.
    fn is_over(&mut self) {
        self.0 = None;
    }
}

impl Drop for Group {
    fn drop(&mut self) {
        if let Some(group) = self.0 {
            let _ = kill_process_group(group, Signal::KILL);
        }
    }
}

/// How a child ended.
pub(super) struct End {
    status: ExitStatus,
    answer: Vec<u8>,
    complaint: Vec<u8>,
}

async fn talk(child: &mut Child, line: &[u8], bytes: &[u8]) -> io::Result<End> {
    let piped = "all three streams are piped";
    let mut stdin = child.stdin.take().expect(piped);
    let stdout = child.stdout.take().expect(piped);
    let mut stderr = child.stderr.take().expect(piped);

    let send = async move {
        // A child may refuse before it has read everything: the broken pipe is no error.
        let _ = stdin.write_all(line).await;
        let _ = stdin.write_all(bytes).await;
        let _ = stdin.shutdown().await;
    };
    let hear = async move {
        let mut answer = Vec::new();
        let mut stdout = stdout.take(MAX_ANSWER + 1);
        stdout.read_to_end(&mut answer).await.map(|_| answer)
    };
    let ((), answer, complaint) = tokio::join!(send, hear, complaint(&mut stderr));
    Ok(End {
        answer: answer?,
        complaint: complaint?,
        status: child.wait().await?,
    })
}

/// The beginning of what the child says on stderr; the rest is read too, so that it never blocks.
async fn complaint(stderr: &mut (impl AsyncRead + Unpin)) -> io::Result<Vec<u8>> {
    let mut kept = Vec::new();
    let mut part = [0; 4096];
    loop {
        match stderr.read(&mut part).await? {
            0 => return Ok(kept),
            length => {
                let room = MAX_COMPLAINT - kept.len();
                kept.extend_from_slice(&part[..length.min(room)]);
            }
        }
    }
}

impl End {
    /// The answer of a job that makes no pictures: its only line, whole.
    pub(super) fn line(self) -> Result<Vec<u8>, RenderError> {
        if self.answer.ends_with(b"\n") {
            Ok(self.answer)
        } else {
            Err(self.without_answer())
        }
    }

    /// The answer's first line, and what follows it.
    pub(super) fn line_and_bytes(mut self) -> Result<(Vec<u8>, Vec<u8>), RenderError> {
        let Some(at) = self.answer.iter().position(|byte| *byte == b'\n') else {
            return Err(self.without_answer());
        };
        let bytes = self.answer.split_off(at + 1);
        Ok((self.answer, bytes))
    }

    fn read(self) -> Result<Rendered, RenderError> {
        let Some(at) = self.answer.iter().position(|byte| *byte == b'\n') else {
            return Err(self.without_answer());
        };
        let (line, bytes) = (&self.answer[..at], &self.answer[at + 1..]);
        let answer: Answer =
            serde_json::from_slice(line).map_err(|error| failed("answer", &error))?;
        let header = answer?;

        let mut rest = bytes;
        let mut pictures = Vec::new();
        for PictureHeader {
            media,
            width,
            height,
            length,
        } in header.pictures
        {
            let length = usize::try_from(length).unwrap_or(usize::MAX);
            let Some((bytes, after)) = rest.split_at_checked(length) else {
                return Err(self.without_answer());
            };
            if Media::sniff(bytes) != Some(media) {
                return Err(failed("answer", &"a picture is not what it claims to be"));
            }
            pictures.push(Picture {
                media,
                width,
                height,
                bytes: bytes.to_vec(),
            });
            rest = after;
        }
        if !rest.is_empty() {
            return Err(failed("answer", &"more bytes than announced"));
        }
        Ok(Rendered {
            media: header.media,
            width: header.width,
            height: header.height,
            taken: header.taken,
            warnings: header.warnings,
            pictures,
        })
    }

    /// A child that refuses says so. One that is silent, or stops in the middle, was stopped by a
    /// limit or by what it read.
    fn without_answer(&self) -> RenderError {
        use std::os::unix::process::ExitStatusExt;

        const PANICKED: i32 = 101;
        let out_of_memory = self
            .complaint
            .windows(17)
            .any(|words| words == b"memory allocation");
        let signal = self.status.signal().and_then(Signal::from_named_raw);
        match (signal, self.status.code()) {
            (Some(Signal::XCPU), _) => RenderError::TooSlow,
            // The words are those of Rust's standard library as it gives up.
            (Some(Signal::ABORT), _) if out_of_memory => RenderError::TooMuchMemory,
            (Some(_), _) | (None, Some(PANICKED)) => RenderError::Broken,
            _ => failed("end without an answer", &self.status),
        }
    }
}

fn failed(where_: &str, why: &dyn std::fmt::Display) -> RenderError {
    RenderError::Failed {
        why: format!("{where_}: {why}"),
    }
}
