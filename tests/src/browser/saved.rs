//! Files that a page saves, and codes that it shows.

use std::collections::BTreeSet;
use std::fs;
use std::path::PathBuf;
use std::time::{Duration, Instant};

use serde_json::json;

use super::site::root;
use super::{DEADLINE, Outcome, Page, trouble};

/// The folder that a page saves into.
#[derive(Debug)]
pub struct Saved(PathBuf);

impl Saved {
    /// Lets a page save into a folder of its own.
    ///
    /// # Errors
    /// The folder cannot be made or the browser refuses.
    pub async fn by(page: &Page) -> Outcome<Self> {
        let folder = root().canonicalize()?.join("target/saved").join(page.site().port().to_string());
        if folder.exists() {
            fs::remove_dir_all(&folder)?;
        }
        fs::create_dir_all(&folder)?;
        page.cdp("Browser.setDownloadBehavior", json!({ "behavior": "allow", "downloadPath": folder })).await?;
        Ok(Self(folder))
    }

    /// Name and content of the file with this ending, once it is there.
    ///
    /// # Errors
    /// It is not there within the deadline.
    pub async fn next(&self, ending: &str) -> Outcome<(String, String)> {
        let started = Instant::now();
        loop {
            let names: BTreeSet<String> =
                fs::read_dir(&self.0)?.filter_map(|entry| entry.ok()?.file_name().into_string().ok()).collect();
            if let Some(name) = names.iter().find(|name| name.ends_with(&format!(".{ending}"))) {
                return Ok((name.clone(), fs::read_to_string(self.0.join(name))?));
            }
            if started.elapsed() > DEADLINE {
                return Err(trouble(format!("no .{ending} was saved, but {names:?}")));
            }
            tokio::time::sleep(Duration::from_millis(25)).await;
        }
    }
}

impl Drop for Saved {
    fn drop(&mut self) {
        // What cannot be removed lies below target/ and is in nobody's way.
        let _ = fs::remove_dir_all(&self.0);
    }
}

/// What a QR code says, read off a picture (PNG) by a decoder library.
///
/// # Errors
/// The picture is none, or holds no single code that can be read.
pub fn read_code(picture: &[u8]) -> Outcome<String> {
    let mut reader = png::Decoder::new(std::io::Cursor::new(picture)).read_info()?;
    let mut bytes = vec![0; reader.output_buffer_size().ok_or_else(|| trouble("the picture is too large"))?];
    let info = reader.next_frame(&mut bytes)?;
    let dot = info.line_size / info.width as usize;
    let mut image = rqrr::PreparedImage::prepare_from_greyscale(info.width as usize, info.height as usize, |x, y| {
        bytes[y * info.line_size + x * dot]
    });
    match &image.detect_grids()[..] {
        [code] => Ok(code.decode()?.1),
        codes => Err(trouble(format!("{} codes in the picture", codes.len()))),
    }
}
