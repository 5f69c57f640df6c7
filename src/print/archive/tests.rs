use super::*;

const SVG: &[u8] = b"<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 9 9\"/>";
const PNG: &[u8] = b"\x89PNG\r\n\x1a\n and so on";

fn original<'a>(file: &'a Digest, ending: &'a str) -> Original<'a> {
    Original {
        file,
        name: "front v2.svg",
        media_type: match ending {
            "png" => "image/png",
            _ => "image/svg+xml",
        },
        ending,
    }
}

fn written(document: &[u8]) -> Vec<u8> {
    let mut archive = Archive::begin(Cursor::new(Vec::new()), document).unwrap();
    archive.add(original(&Digest::of(SVG), "svg"), SVG).unwrap();
    archive.add(original(&Digest::of(PNG), "png"), PNG).unwrap();
    archive.end().unwrap().into_inner()
}

/// A zip of any entries.
fn zip(entries: &[(&str, &[u8])]) -> Vec<u8> {
    let mut zip = ZipWriter::new(Cursor::new(Vec::new()));
    for (name, content) in entries {
        zip.start_file(*name, SimpleFileOptions::default()).unwrap();
        zip.write_all(content).unwrap();
    }
    zip.finish().unwrap().into_inner()
}

/// The bytes with every `from` exchanged for a `to` of the same length.
fn exchanged(bytes: &[u8], from: &[u8], to: &[u8]) -> Vec<u8> {
    assert_eq!(from.len(), to.len());
    let mut bytes = bytes.to_vec();
    let mut found = 0;
    for at in 0..=bytes.len() - from.len() {
        if bytes[at..].starts_with(from) {
            bytes[at..at + to.len()].copy_from_slice(to);
            found += 1;
        }
    }
    assert!(found > 0, "nothing to exchange");
    bytes
}

fn foreign(name: &str) -> Result<Vec<u8>, NotAnArchive> {
    Err(NotAnArchive::Foreign(name.to_owned()))
}

#[test]
fn what_was_written_is_read() {
    let bytes = written(b"{}");
    assert!(is_archive(&bytes) && !is_archive(b"{}"));
    assert_eq!(document(&bytes).unwrap(), b"{}");
    assert_eq!(bytes, written(b"{}"), "the same again");

    // As any other program unpacks it.
    let mut zip = ZipArchive::new(Cursor::new(&bytes[..])).unwrap();
    let (svg, png) = (Digest::of(SVG), Digest::of(PNG));
    let names: Vec<String> = zip
        .file_names()
        .map(|name| name.unwrap().into_owned())
        .collect();
    let entries = [
        format!("originals/{svg}.svg"),
        format!("originals/{png}.png"),
    ];
    assert_eq!(names, ["spec.json", &entries[0], &entries[1], "files.json"]);
    let mut content = Vec::new();
    let mut entry = zip.by_name(&entries[1]).unwrap();
    entry.read_to_end(&mut content).unwrap();
    assert_eq!(content, PNG);
    drop(entry);
    let list: serde_json::Value =
        serde_json::from_reader(zip.by_name("files.json").unwrap()).unwrap();
    assert_eq!(list[0]["file"], svg.as_str());
    assert_eq!(list[0]["entry"], entries[0]);
    assert_eq!(list[0]["name"], "front v2.svg");
    assert_eq!(list[1]["media_type"], "image/png");
}

#[test]
fn packed_again_by_another_program_it_is_still_read() {
    let svg = format!("originals/{}.svg", Digest::of(SVG));
    let entries: [(&str, &[u8]); 3] = [("originals/", b""), (&svg, SVG), ("spec.json", b"{}")];
    assert_eq!(document(&zip(&entries)).unwrap(), b"{}");
}

#[test]
fn other_bytes_than_were_kept_are_not_written() {
    let mut archive = Archive::begin(Cursor::new(Vec::new()), b"{}").unwrap();
    let wrong = archive.add(original(&Digest::of(PNG), "png"), SVG);
    assert_eq!(wrong.unwrap_err().kind(), io::ErrorKind::InvalidData);
    let long = vec![b' '; MAX_JSON as usize + 1];
    let long = Archive::begin(Cursor::new(Vec::new()), &long);
    assert_eq!(long.err().unwrap().kind(), io::ErrorKind::FileTooLarge);
}

#[test]
fn no_name_leads_out_of_the_folder() {
    let digest = Digest::of(SVG);
    let mut names = vec![
        "../spec.json".to_owned(),
        "/spec.json".to_owned(),
        "./spec.json".to_owned(),
        "Spec.json".to_owned(),
        "spec.json/".to_owned(),
        "C:\\spec.json".to_owned(),
        "originals/../../x.svg".to_owned(),
        "originals\\x.svg".to_owned(),
        "originals/front.svg".to_owned(),
        "elsewhere/".to_owned(),
        format!("{digest}.svg"),
        format!("originals/{digest}"),
        format!("originals/{digest}."),
        format!("originals/{digest}.svg/../x"),
        format!("originals/{digest}.SVG"),
        format!("originals/{}.svg", digest.as_str().to_uppercase()),
    ];
    names.push("originals/a\u{202e}gvs.exe".to_owned());
    for name in names {
        let bytes = zip(&[("spec.json", b"{}"), (&name, SVG)]);
        assert_eq!(document(&bytes), foreign(&name));
    }
}

#[test]
fn a_link_is_no_entry() {
    let mut zip = ZipWriter::new(Cursor::new(Vec::new()));
    let options = SimpleFileOptions::default();
    zip.add_symlink("spec.json", "/etc/passwd", options)
        .unwrap();
    let bytes = zip.finish().unwrap().into_inner();
    assert_eq!(document(&bytes), foreign("spec.json"));
}

#[test]
fn the_same_entry_twice_is_refused() {
    let bytes = zip(&[("spec.json", b"{}"), ("spec.jsoN", b"[]")]);
    let bytes = exchanged(&bytes, b"spec.jsoN", b"spec.json");
    assert_eq!(document(&bytes), Err(NotAnArchive::Twice));
    let digest = Digest::of(SVG);
    let names = ["svg", "bin"].map(|ending| format!("originals/{digest}.{ending}"));
    let bytes = zip(&[(&names[0], SVG), (&names[1], SVG), ("spec.json", b"{}")]);
    assert_eq!(document(&bytes), Err(NotAnArchive::Twice));
}

#[test]
fn bytes_that_their_name_is_not_of_are_refused() {
    let name = format!("originals/{}.svg", Digest::of(PNG));
    let bytes = zip(&[("spec.json", b"{}"), (&name, SVG)]);
    assert_eq!(document(&bytes), Err(NotAnArchive::Altered(name)));
}

#[test]
fn a_bomb_does_not_go_off() {
    // 32 KiB that say that they unpack to 32 MiB and a byte.
    let long = vec![0; MAX_JSON as usize + 1];
    let bomb = zip(&[("spec.json", &long)]);
    assert!(bomb.len() < 64 * 1024);
    let too_large = NotAnArchive::TooLarge("spec.json".to_owned());
    assert_eq!(document(&bomb), Err(too_large));

    // The same, saying that it is two bytes long: unpacked no further than that.
    let said = u32::try_from(long.len()).unwrap().to_le_bytes();
    let lying = exchanged(&bomb, &said, &2_u32.to_le_bytes());
    let unsound = NotAnArchive::Unsound("spec.json".to_owned());
    assert_eq!(document(&lying), Err(unsound.clone()));

    // A little that says it is more.
    let little = zip(&[("spec.json", b"nothing here")]);
    let more = exchanged(&little, &12_u32.to_le_bytes(), &13_u32.to_le_bytes());
    assert_eq!(document(&more), Err(unsound));
}

#[test]
fn all_together_are_bounded_before_anything_is_unpacked() {
    // Nine that say they are as large as one may be: the ninth is too much.
    let contents: Vec<[u8; 12]> = (0..9).map(|n| [n; 12]).collect();
    let names = contents.iter().map(|it| Digest::of(it));
    let names: Vec<String> = names.map(|it| format!("originals/{it}.svg")).collect();
    let entries = names.iter().zip(&contents);
    let entries: Vec<(&str, &[u8])> = entries
        .map(|(name, content)| (&name[..], &content[..]))
        .collect();
    let much = u32::try_from(MAX_ORIGINAL).unwrap().to_le_bytes();
    let many = exchanged(&zip(&entries), &12_u32.to_le_bytes(), &much);
    let too_large = NotAnArchive::TooLarge(names[8].clone());
    assert_eq!(document(&many), Err(too_large));
}

#[test]
fn more_entries_than_an_archive_has_are_not_looked_at() {
    let names: Vec<String> = (0..=MAX_ENTRIES).map(|n| n.to_string()).collect();
    let entries: Vec<(&str, &[u8])> = names.iter().map(|name| (&name[..], &b""[..])).collect();
    assert_eq!(document(&zip(&entries)), Err(NotAnArchive::TooMany));
    assert_eq!(
        document(&HEAD.repeat(MAX_HEADS + 1)),
        Err(NotAnArchive::TooMany)
    );
}

#[test]
fn what_is_no_whole_zip_is_refused() {
    let bytes = written(b"{}");
    for cut in [4, bytes.len() / 2, bytes.len() - 1] {
        assert_eq!(document(&bytes[..cut]), Err(NotAnArchive::Damaged), "{cut}");
    }
    assert_eq!(document(&zip(&[])), Err(NotAnArchive::NoDocument));
    assert_eq!(
        document(&zip(&[("files.json", b"[]")])),
        Err(NotAnArchive::NoDocument)
    );
    // One bit of the document, stored as it is: the zip's own check sum finds it.
    let options = SimpleFileOptions::default().compression_method(CompressionMethod::Stored);
    let mut zip = ZipWriter::new(Cursor::new(Vec::new()));
    zip.start_file("spec.json", options).unwrap();
    zip.write_all(b"{\"one\":1}").unwrap();
    let stored = zip.finish().unwrap().into_inner();
    let turned = exchanged(&stored, b"\"one\"", b"\"ond\"");
    let unsound = NotAnArchive::Unsound("spec.json".to_owned());
    assert_eq!(document(&turned), Err(unsound));
}
