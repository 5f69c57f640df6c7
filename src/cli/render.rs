//! `fellseam render`, the child: reads one job from stdin, writes one answer to stdout, ends.
//! Started by [`crate::files::Renderer`], which says why it is a process of its own.
//!
//! No threads, no async, no database, no log: it starts in milliseconds and nothing of the
//! service is in it that a broken decoder could reach.

mod paper;
mod raster;
mod sheet;
mod svg;

use std::fs;
use std::io::{self, BufRead, Read, Write};
use std::path::Path;
use std::process::{Command, ExitCode, Stdio};

use rustix::process::{Resource, Rlimit, setrlimit};

use crate::files::media::foreign;
use crate::files::render::{Answer, Header, Job, Kind, MAX_BYTES, PictureHeader, Task};
use crate::files::{Media, Picture, RenderError, Rendered};

/// Widths of the pictures made from a raster, in pixels: a phone, a phone's sharp screen or a
/// page's column, a large screen.
const WIDTHS: [u32; 3] = [480, 1080, 2048];

/// The longest side that a WebP file can have (RFC 9649, 14 bits).
const WEBP_SIDE: u32 = 16_383;

/// Lossy WebP's quality: fine seams stay visible, a photograph 1080 wide stays near 100 KB.
const QUALITY: f32 = 80.0;

/// Does the job on stdin. A refusal is an answer and ends well; only a job that cannot be read or
/// an answer that cannot be written is a failure.
pub fn render() -> ExitCode {
    match work(&mut io::stdin().lock(), &mut io::stdout().lock()) {
        Ok(()) => ExitCode::SUCCESS,
        Err(error) => {
            eprintln!("render: {error}");
            ExitCode::FAILURE
        }
    }
}

fn work(input: &mut impl BufRead, output: &mut impl Write) -> io::Result<()> {
    let mut line = Vec::new();
    input.take(64 * 1024).read_until(b'\n', &mut line)?;
    let job: Job = serde_json::from_slice(&line)?;
    // Before the first byte of the file is looked at.
    confine(&job)?;
    if job.length > MAX_BYTES {
        return answer(output, Err(RenderError::TooLarge));
    }
    let length = usize::try_from(job.length).map_err(io::Error::other)?;
    let mut bytes = vec![0; length];
    input.read_exact(&mut bytes)?;
    match job.task {
        Task::Paper => paper::answer(output, &bytes),
        Task::Pictures(kind) => answer(output, draw(&job, kind, bytes)),
        Task::Sheets => {
            serde_json::to_writer(&mut *output, &sheet::read(bytes))?;
            output.write_all(b"\n")?;
            output.flush()
        }
    }
}

/// Takes away what the job does not need; what is taken cannot be had back.
fn confine(job: &Job) -> io::Result<()> {
    let bound = |resource, most: u64, at_last: u64| {
        let limit = Rlimit {
            current: Some(most),
            maximum: Some(at_last),
        };
        setrlimit(resource, limit).map_err(io::Error::from)
    };
    bound(Resource::As, job.memory, job.memory)?;
    // At the first limit comes the signal that names it, at the second one that names nothing.
    bound(Resource::Cpu, job.seconds, job.seconds + 1)?;
    // A crash leaves no picture of a person in a dump.
    bound(Resource::Core, 0, 0)?;
    // Nothing is written to files, but by the HEIC converter.
    bound(Resource::Fsize, MAX_BYTES, MAX_BYTES)
}

fn answer(output: &mut impl Write, result: Result<Rendered, RenderError>) -> io::Result<()> {
    let (answer, pictures): (Answer, _) = match result {
        Err(error) => (Err(error), Vec::new()),
        Ok(rendered) => {
            let header = Header {
                media: rendered.media,
                width: rendered.width,
                height: rendered.height,
                taken: rendered.taken,
                warnings: rendered.warnings,
                pictures: rendered.pictures.iter().map(header).collect(),
            };
            (Ok(header), rendered.pictures)
        }
    };
    serde_json::to_writer(&mut *output, &answer)?;
    output.write_all(b"\n")?;
    for picture in pictures {
        output.write_all(&picture.bytes)?;
    }
    output.flush()
}

fn header(picture: &Picture) -> PictureHeader {
    PictureHeader {
        media: picture.media,
        width: picture.width,
        height: picture.height,
        length: picture.bytes.len() as u64,
    }
}

fn draw(job: &Job, kind: Kind, bytes: Vec<u8>) -> Result<Rendered, RenderError> {
    let unsupported = |what: &str| {
        Err(RenderError::Unsupported {
            what: what.to_owned(),
        })
    };
    match (Media::sniff(&bytes), kind) {
        (Some(media @ (Media::Jpeg | Media::Png | Media::Webp)), _) => raster::render(media, bytes),
        (Some(media @ Media::Heic), _) => {
            let converter = job.heic.as_deref().ok_or(RenderError::HeicUnsupported)?;
            raster::render(media, from_heic(converter, &bytes)?)
        }
        (Some(Media::Svg), Kind::Drawing) => svg::render(&bytes),
        (Some(Media::Svg), Kind::Photo) => unsupported("SVG"),
        (Some(Media::Pdf), _) => unsupported("PDF"),
        (Some(Media::Eps), _) => unsupported("EPS"),
        (Some(Media::Stitches) | None, _) => {
            foreign(&bytes).map_or(Err(RenderError::NotAPicture), unsupported)
        }
    }
}

/// Turns HEIC into PNG by an installed program: its codec is encumbered by patents, so it is the
/// machine's owner who decides to have one. The program inherits this process's limits and is
/// killed with it. Files lie in the working folder, which the parent made for this job alone.
fn from_heic(converter: &Path, bytes: &[u8]) -> Result<Vec<u8>, RenderError> {
    let trouble = |error: io::Error| RenderError::Failed {
        why: format!("HEIC converter: {error}"),
    };
    const FROM: &str = "in.heic";
    const TO: &str = "out.png";
    fs::write(FROM, bytes).map_err(trouble)?;
    let status = Command::new(converter)
        .args([FROM, TO])
        .stdin(Stdio::null())
        .stdout(Stdio::null())
        .stderr(Stdio::null())
        .status()
        .map_err(trouble)?;
    if !status.success() {
        return Err(RenderError::Broken);
    }
    match fs::read(TO) {
        Ok(png) if Media::sniff(&png) == Some(Media::Png) => Ok(png),
        Ok(_) => Err(RenderError::Broken),
        Err(error) if error.kind() == io::ErrorKind::NotFound => Err(RenderError::Broken),
        Err(error) => Err(trouble(error)),
    }
}

/// The size at this width, in the same proportion; narrower where the height would be more than
/// WebP can hold.
fn fit(width: u32, height: u32, wanted: u32) -> (u32, u32) {
    let (w, h, wanted) = (u64::from(width), u64::from(height), u64::from(wanted));
    let divide = |a: u64, b: u64| ((a + b / 2) / b).max(1);
    let (mut new_width, mut new_height) = (wanted, divide(h * wanted, w));
    if new_height > u64::from(WEBP_SIDE) {
        new_height = u64::from(WEBP_SIDE);
        new_width = divide(w * new_height, h);
    }
    let small = |side: u64| u32::try_from(side).expect("both sides fit a WebP");
    (small(new_width), small(new_height))
}

/// Opaque 8-bit RGB pixels as lossy WebP, without any metadata.
fn webp(rgb: &[u8], width: u32, height: u32) -> Result<Picture, RenderError> {
    let encoder = webp::Encoder::from_rgb(rgb, width, height);
    match encoder.encode_simple(false, QUALITY) {
        Ok(bytes) => Ok(Picture {
            media: Media::Webp,
            width,
            height,
            bytes: bytes.to_vec(),
        }),
        // Its only other errors are of sizes and settings, which are ours.
        Err(webp::WebPEncodingError::VP8_ENC_ERROR_OUT_OF_MEMORY) => {
            Err(RenderError::TooMuchMemory)
        }
        Err(error) => Err(RenderError::Failed {
            why: format!("WebP encoder: {error:?}"),
        }),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_picture_keeps_its_proportion() {
        assert_eq!(fit(4000, 3000, 2048), (2048, 1536));
        assert_eq!(fit(3000, 2, 480), (480, 1));
        // 1000 x 50 000 at 480 wide would be 24 000 high.
        assert_eq!(fit(1000, 50_000, 480), (328, 16_383));
        assert_eq!(fit(1, 50_000_000, 1), (1, 16_383));
    }
}
