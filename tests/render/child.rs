//! The child as a process: its limits, its end, and a child that lies.

use std::io::Write;
use std::os::unix::process::ExitStatusExt;
use std::path::Path;
use std::process::{Command, Stdio};
use std::sync::Arc;
use std::time::Duration;

use fellseam::files::{Kind, Limits, RenderError, Renderer};
use rustix::process::{Pid, Signal, kill_process};
use tokio::time::Instant;

use super::inputs::*;

fn seconds(time: u64, at_once: usize) -> Limits {
    Limits {
        time: Duration::from_secs(time),
        at_once,
        ..Limits::default()
    }
}

/// The real child, which first writes its process id to a file called `id`.
fn known_child(folder: &Path) -> std::path::PathBuf {
    let text = format!(
        "echo $$ > {0}/id.new; mv {0}/id.new {0}/id; exec {1} \"$@\"",
        folder.display(),
        program().display()
    );
    script(folder, "child", &text)
}

async fn id_in(file: &Path) -> i32 {
    for _ in 0..200 {
        if let Ok(text) = std::fs::read_to_string(file) {
            return text.trim().parse().unwrap();
        }
        tokio::time::sleep(Duration::from_millis(20)).await;
    }
    panic!("{} was not written", file.display());
}

/// Waits for the process to be no more, or a zombie.
async fn is_gone(id: i32) -> bool {
    for _ in 0..100 {
        match std::fs::read_to_string(format!("/proc/{id}/stat")) {
            Err(_) => return true,
            Ok(stat) if stat.contains(") Z ") => return true,
            Ok(_) => tokio::time::sleep(Duration::from_millis(20)).await,
        }
    }
    false
}

#[tokio::test]
async fn a_drawing_without_end_is_stopped_at_the_limit() {
    let folder = tempfile::tempdir().unwrap();
    let renderer = Renderer::new(known_child(folder.path()), seconds(1, 1), None);
    let start = Instant::now();
    let answer = renderer.render(Kind::Drawing, &endless_svg()).await;
    let took = start.elapsed();
    assert_eq!(answer, Err(RenderError::TooSlow));
    assert!(took < Duration::from_secs(4), "{took:?}");
    assert!(is_gone(id_in(&folder.path().join("id")).await).await);
    // Its place is free again.
    let photo = renderer.render(Kind::Photo, &png(&halves(8, 8))).await;
    assert!(photo.is_ok(), "{photo:?}");
}

#[tokio::test]
async fn a_child_that_is_killed_is_an_error_and_no_wait() {
    let folder = tempfile::tempdir().unwrap();
    let renderer = Renderer::new(known_child(folder.path()), seconds(60, 1), None);
    let start = Instant::now();
    let job = tokio::spawn(async move { renderer.render(Kind::Drawing, &endless_svg()).await });
    let id = id_in(&folder.path().join("id")).await;
    tokio::time::sleep(Duration::from_millis(300)).await;
    kill_process(Pid::from_raw(id).unwrap(), Signal::KILL).unwrap();
    assert_eq!(job.await.unwrap(), Err(RenderError::Broken));
    assert!(start.elapsed() < Duration::from_secs(20));
}

#[tokio::test]
async fn nobody_waits_then_nobody_works() {
    let folder = tempfile::tempdir().unwrap();
    let renderer = Renderer::new(known_child(folder.path()), seconds(60, 1), None);
    let job = tokio::spawn(async move { renderer.render(Kind::Drawing, &endless_svg()).await });
    let id = id_in(&folder.path().join("id")).await;
    job.abort();
    assert!(job.await.unwrap_err().is_cancelled());
    assert!(is_gone(id).await);
}

#[tokio::test]
async fn a_slow_converter_is_stopped_with_the_child() {
    let folder = tempfile::tempdir().unwrap();
    let file = folder.path().join("id");
    let text = format!(
        "echo $$ > {0}.new; mv {0}.new {0}; exec sleep 60",
        file.display()
    );
    let converter = script(folder.path(), "converter", &text);
    let renderer = Renderer::new(program(), seconds(2, 1), Some(converter));
    let heic = b"\x00\x00\x00\x18ftypheic\x00\x00\x00\x00mif1heic";
    let answer = renderer.render(Kind::Photo, heic).await;
    assert_eq!(answer, Err(RenderError::TooSlow));
    assert!(is_gone(id_in(&file).await).await);
}

#[test]
fn a_child_without_a_parent_ends_by_itself() {
    let svg = endless_svg();
    let mut child = Command::new(program())
        .arg("render")
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .spawn()
        .unwrap();
    let mut stdin = child.stdin.take().unwrap();
    let length = svg.len();
    writeln!(
        stdin,
        "{{\"task\":{{\"pictures\":\"drawing\"}},\"length\":{length},\"memory\":1073741824,\"seconds\":1}}"
    )
    .unwrap();
    stdin.write_all(&svg).unwrap();
    drop(stdin);
    let end = child.wait_with_output().unwrap();
    assert_eq!(end.status.signal(), Some(Signal::XCPU.as_raw()));
    assert!(end.stdout.is_empty());
}

#[tokio::test]
async fn a_child_is_not_believed() {
    let header = |length: u64| {
        format!(
            "{{\"Ok\":{{\"media\":\"png\",\"width\":1,\"height\":1,\"taken\":null,\
             \"warnings\":[],\"pictures\":[{{\"media\":\"webp\",\"width\":1,\"height\":1,\
             \"length\":{length}}}]}}}}"
        )
    };
    let folder = tempfile::tempdir().unwrap();
    for (name, lie, why) in [
        // More than it has, so much that nobody should make room for it.
        (
            "more",
            format!("echo '{}'", header(u64::MAX)),
            "without an answer",
        ),
        (
            "page",
            format!("echo '{}'; printf '<html>'", header(6)),
            "claims to be",
        ),
        (
            "rest",
            format!("echo '{}'; printf 'RIFF0000WEBPx'", header(12)),
            "announced",
        ),
        ("json", "echo '{\"Ok\":1}'".to_owned(), "answer"),
        ("void", "exit 0".to_owned(), "without an answer"),
        ("loud", "yes".to_owned(), "answer"),
        ("unread", "exec <&-; exit 2".to_owned(), "without an answer"),
    ] {
        let liar = script(folder.path(), name, &lie);
        let renderer = Renderer::new(liar, seconds(20, 1), None);
        let sent = png(&halves(512, 512));
        match renderer.render(Kind::Photo, &sent).await {
            Err(RenderError::Failed { why: said }) => assert!(said.contains(why), "{name}: {said}"),
            other => panic!("{name}: {other:?}"),
        }
    }
    let renderer = Renderer::new("/nowhere/fellseam", seconds(20, 1), None);
    let answer = renderer.render(Kind::Photo, b"x").await;
    assert!(
        matches!(answer, Err(RenderError::Failed { .. })),
        "{answer:?}"
    );
}

#[tokio::test]
async fn a_child_knows_nothing_of_the_service() {
    let folder = tempfile::tempdir().unwrap();
    let told = folder.path().join("told");
    let text = format!("env > {0}; pwd >> {0}", told.display());
    let spy = script(folder.path(), "spy", &text);
    let renderer = Renderer::new(spy, seconds(20, 1), None);
    renderer.render(Kind::Photo, b"x").await.unwrap_err();
    let told = std::fs::read_to_string(told).unwrap();
    // What a shell sets by itself.
    let own = ["PWD=", "OLDPWD=", "SHLVL=", "_="];
    let names: Vec<&str> = told
        .lines()
        .filter(|line| !own.iter().any(|name| line.starts_with(name)))
        .collect();
    assert_eq!(names, ["MALLOC_ARENA_MAX=1", "/"]);
}

#[tokio::test]
async fn a_child_is_bounded_before_it_reads() {
    // A converter inherits the child's limits and can tell them.
    let folder = tempfile::tempdir().unwrap();
    let told = folder.path().join("told");
    let text = format!("cat /proc/self/limits > {}", told.display());
    let spy = script(folder.path(), "spy", &text);
    let renderer = Renderer::new(program(), seconds(7, 1), Some(spy));
    let heic = b"\x00\x00\x00\x18ftypheic\x00\x00\x00\x00mif1heic";
    renderer.render(Kind::Photo, heic).await.unwrap_err();
    let told = std::fs::read_to_string(told).unwrap();
    for (limit, soft, hard) in [
        ("Max address space", "1610612736", "1610612736"),
        ("Max cpu time", "7", "8"),
        ("Max core file size", "0", "0"),
        ("Max file size", "268435456", "268435456"),
    ] {
        let line = told
            .lines()
            .find_map(|line| line.strip_prefix(limit))
            .unwrap();
        let mut words = line.split_whitespace();
        assert_eq!(
            (words.next(), words.next()),
            (Some(soft), Some(hard)),
            "{limit}"
        );
    }
}

#[tokio::test]
async fn only_a_few_children_work_at_once() {
    let folder = tempfile::tempdir().unwrap();
    let text = format!(
        "cd {}; cat > /dev/null; echo x >> began; mkdir busy || echo x >> overlap; \
         sleep 0.2; rmdir busy; echo '{{\"Err\":\"not_a_picture\"}}'",
        folder.path().display()
    );
    let program = script(folder.path(), "worker", &text);
    let renderer = Arc::new(Renderer::new(program, seconds(20, 1), None));
    let jobs = [(); 4].map(|()| {
        let renderer = renderer.clone();
        tokio::spawn(async move { renderer.render(Kind::Photo, b"x").await })
    });
    for job in jobs {
        assert_eq!(job.await.unwrap(), Err(RenderError::NotAPicture));
    }
    let began = std::fs::read_to_string(folder.path().join("began")).unwrap();
    assert_eq!(began.lines().count(), 4);
    assert!(!folder.path().join("overlap").exists());
}
