//! Files and folders of the command line: which of them are designs, and what of the rest there is to say.

use std::path::{Path, PathBuf};

/// A file, or why it cannot be read.
pub(crate) struct File {
    /// As it is named in the output.
    pub(crate) name: String,
    /// Its bytes.
    pub(crate) bytes: Result<Vec<u8>, String>,
}

/// A file that may be a design.
pub(crate) struct Candidate {
    /// Where it is.
    pub(crate) path: PathBuf,
    /// Position of the folder it was found in; none when it was named itself, and then it is a design.
    pub(crate) folder: Option<usize>,
}

/// What the paths of a command line came to.
#[derive(Default)]
pub(crate) struct Found {
    /// Files, sorted by path, each once.
    pub(crate) files: Vec<Candidate>,
    /// The folders that were looked through.
    pub(crate) folders: Vec<PathBuf>,
    /// Sentences about what could not be looked at.
    pub(crate) remarks: Vec<String>,
}

/// Looks through the paths; nothing is read yet.
pub(crate) fn find(paths: &[PathBuf]) -> Found {
    let mut found = Found::default();
    for path in paths {
        if path.is_dir() {
            folder(path, &mut found);
        } else {
            found.files.push(Candidate { path: path.clone(), folder: None });
        }
    }
    // A file that is named and lies in a folder too counts as named.
    found.files.sort_by(|a, b| (&a.path, a.folder.is_some()).cmp(&(&b.path, b.folder.is_some())));
    found.files.dedup_by(|a, b| a.path == b.path);
    found
}

/// Reads one file.
pub(crate) fn read(path: &Path) -> File {
    File { name: path.to_string_lossy().into_owned(), bytes: bytes(path) }
}

/// Nothing larger is read into memory.
const LARGEST: u64 = 64 << 20;

fn bytes(path: &Path) -> Result<Vec<u8>, String> {
    let said = |error: std::io::Error| match error.kind() {
        std::io::ErrorKind::NotFound => "there is no such file".to_owned(),
        std::io::ErrorKind::PermissionDenied => "the file may not be read".to_owned(),
        _ => format!("the file cannot be read: {error}"),
    };
    if path.to_str().is_none() {
        return Err(
            "the name of the file is not UTF-8 text, so no result could name it; rename the file".to_owned()
        );
    }
    let about = std::fs::metadata(path).map_err(said)?;
    if about.is_dir() {
        return Err("this is a folder, and one file is wanted".to_owned());
    }
    // A pipe or a device may never end.
    if !about.is_file() {
        return Err(
            "this is neither a file nor a folder of files; save the design as a .json file".to_owned()
        );
    }
    if about.len() > LARGEST {
        return Err(format!("the file has {} bytes, and no design is that large", about.len()));
    }
    std::fs::read(path).map_err(said)
}

fn folder(path: &Path, found: &mut Found) {
    let position = found.folders.len();
    found.folders.push(path.to_owned());
    for entry in walkdir::WalkDir::new(path) {
        match entry {
            Ok(entry)
                if !entry.file_type().is_dir() && entry.path().extension().is_some_and(|e| e == "json") =>
            {
                found.files.push(Candidate { path: entry.into_path(), folder: Some(position) });
            }
            Ok(_) => {}
            Err(error) => {
                let at = error.path().unwrap_or(path).display();
                let why = match error.io_error().map(std::io::Error::kind) {
                    Some(std::io::ErrorKind::PermissionDenied) => "the folder may not be read".to_owned(),
                    _ => format!("the folder cannot be looked through: {error}"),
                };
                found.remarks.push(format!("{at}: {why}"));
            }
        }
    }
}

/// What there is to say about a folder with so many designs and other files, and whether that is a lack.
pub(crate) fn of_folder(path: &Path, designs: usize, others: usize) -> Vec<String> {
    let mut said = Vec::new();
    if designs == 0 {
        let what = "the folder holds no design: no .json file with a member \"edition\"";
        said.push(format!("{}: {what}", path.display()));
    }
    if others > 0 {
        let files = if others == 1 { "file is" } else { "files are" };
        let what = format!("{others} other .json {files} no design (no member \"edition\")");
        said.push(format!("{}: {what}", path.display()));
    }
    said
}

/// Whether a text has a member "edition" at its top level; one that cannot be read to the end counts as a design if
/// the word stands in it, so that a broken design is not passed over in silence.
pub(crate) fn has_edition(bytes: &[u8]) -> bool {
    let reading = haulout_document::read(bytes, &haulout_document::Limits::default());
    match reading.tree {
        Some(tree) => tree.member(tree.root(), "edition").is_some(),
        None => bytes.windows(9).any(|w| w == b"\"edition\""),
    }
}

/// Today in universal time, `2026-11-25`.
pub(crate) fn today() -> String {
    let since = std::time::SystemTime::now().duration_since(std::time::UNIX_EPOCH);
    let days = since.map_or(0, |d| d.as_secs() / 86_400) as i64;
    // Civil date from days, after H. Hinnant's public algorithm: years begin on 1 March, eras have 400 years.
    let shifted = days + 719_468;
    let era = shifted.div_euclid(146_097);
    let day_of_era = shifted.rem_euclid(146_097);
    let year_of_era = (day_of_era - day_of_era / 1_460 + day_of_era / 36_524 - day_of_era / 146_096) / 365;
    let day_of_year = day_of_era - (365 * year_of_era + year_of_era / 4 - year_of_era / 100);
    let month_from_march = (5 * day_of_year + 2) / 153;
    let day = day_of_year - (153 * month_from_march + 2) / 5 + 1;
    let month = if month_from_march < 10 { month_from_march + 3 } else { month_from_march - 9 };
    let year = year_of_era + era * 400 + i64::from(month <= 2);
    format!("{year:04}-{month:02}-{day:02}")
}
