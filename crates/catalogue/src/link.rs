//! A build in an address: the build file as JSON, with a check sum, in base64url.
//!
//! The text is `1.` and then the base64url (RFC 4648, section 5, without padding) of the CRC-32
//! of the JSON, big-endian, and the JSON. The check sum tells a link that a mail program cut off
//! from one that says something else; it is no protection, and what it carries stays untrusted.

use base64::Engine as _;
use base64::engine::general_purpose::URL_SAFE_NO_PAD;

use crate::build_file::BuildFile;
use crate::json::json;
use crate::problem::Code;

/// The longest link that is read, in bytes. A build with two hundred measurements stays below
/// it; a longer text is not one of ours.
pub const LONGEST_LINK: usize = 64 * 1024;

/// Why a link could not be read.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum LinkError {
    /// It is longer than any link of ours.
    TooLong,
    /// It does not begin as our links do, or holds characters that they never hold.
    NotALink,
    /// Its check sum is wrong: the end is cut off or a character has changed.
    CutOff,
    /// It was made by a newer version, with this format number.
    Newer(u32),
    /// Its check sum is right and yet it is no build.
    NotABuild,
}

/// The link text of a build.
///
/// # Examples
/// ```
/// use fitup_catalogue::{BuildFile, link};
/// let build = BuildFile { machine: Some("small-open".into()), ..BuildFile::default() };
/// let text = link::write(&build);
/// assert!(text.starts_with("1."));
/// assert_eq!(link::read(&text), Ok(build));
/// ```
pub fn write(build: &BuildFile) -> String {
    let json = json(build);
    let mut bytes = crc32(json.as_bytes()).to_be_bytes().to_vec();
    bytes.extend_from_slice(json.as_bytes());
    format!("1.{}", URL_SAFE_NO_PAD.encode(bytes))
}

/// The build of a link text.
///
/// # Errors
/// Says which way the text is no link of a build; see [`LinkError`].
pub fn read(text: &str) -> Result<BuildFile, LinkError> {
    if text.len() > LONGEST_LINK {
        return Err(LinkError::TooLong);
    }
    let (version, payload) = text.split_once('.').ok_or(LinkError::NotALink)?;
    let version: u32 = version.parse().map_err(|_| LinkError::NotALink)?;
    if version != 1 {
        return Err(if version > 1 { LinkError::Newer(version) } else { LinkError::NotALink });
    }
    // A length of 4n + 1 or set bits after the last byte come from a cut, other characters do not.
    let ours = |b: u8| b.is_ascii_alphanumeric() || b == b'-' || b == b'_';
    if !payload.bytes().all(ours) {
        return Err(LinkError::NotALink);
    }
    let bytes = URL_SAFE_NO_PAD.decode(payload).map_err(|_| LinkError::CutOff)?;
    let (sum, json) = bytes.split_at_checked(4).ok_or(LinkError::CutOff)?;
    if crc32(json).to_be_bytes() != sum {
        return Err(LinkError::CutOff);
    }
    let text = std::str::from_utf8(json).map_err(|_| LinkError::NotABuild)?;
    BuildFile::read(text).map_err(|problems| {
        let newer = problems.iter().find(|problem| problem.code == Code::NewerFormat);
        let format = newer.and_then(|problem| problem.arg("found")?.parse().ok());
        format.map_or(LinkError::NotABuild, LinkError::Newer)
    })
}

/// CRC-32 as in ISO/IEC/IEEE 8802-3 (reversed polynomial `edb88320`), bit by bit: links are
/// short, and a table would cost more than it saves.
fn crc32(bytes: &[u8]) -> u32 {
    let mut crc = !0u32;
    for &byte in bytes {
        crc ^= u32::from(byte);
        for _ in 0..8 {
            crc = if crc & 1 == 1 { crc >> 1 ^ 0xedb8_8320 } else { crc >> 1 };
        }
    }
    !crc
}

#[cfg(test)]
mod tests {
    use super::*;

    fn some() -> BuildFile {
        BuildFile {
            machine: Some("small-open".into()),
            frame: Some("frame-2".into()),
            seat: Some("turning".into()),
            implement: Some("arm-21-first".into()),
            ..BuildFile::default()
        }
    }

    #[test]
    fn the_check_sum_is_the_standard_one() {
        // The check value of CRC-32/ISO-HDLC in the catalogue of parametrised CRC algorithms.
        assert_eq!(crc32(b"123456789"), 0xcbf4_3926);
    }

    #[test]
    fn every_cut_is_told_from_a_build() {
        let text = write(&some());
        for end in 2..text.len() {
            assert_eq!(read(&text[..end]), Err(LinkError::CutOff), "cut at {end}");
        }
        assert_eq!(read("1"), Err(LinkError::NotALink));
        assert_eq!(read(""), Err(LinkError::NotALink));
    }

    #[test]
    fn a_changed_character_is_noticed() {
        let text = write(&some());
        for at in 2..text.len() {
            let old = text.as_bytes()[at];
            let new = if old == b'A' { 'B' } else { 'A' };
            let changed = format!("{}{new}{}", &text[..at], &text[at + 1..]);
            assert!(read(&changed).is_err(), "changed at {at}");
        }
    }

    #[test]
    fn hostile_text_is_refused_with_the_reason() {
        assert_eq!(read("1.<script>alert(1)</script>"), Err(LinkError::NotALink));
        assert_eq!(read(&format!("1.{}", "A".repeat(LONGEST_LINK))), Err(LinkError::TooLong));
        assert_eq!(read("9.AAAA"), Err(LinkError::Newer(9)));
        assert_eq!(read("-1.AAAA"), Err(LinkError::NotALink));
        assert_eq!(read("1.\u{1f600}"), Err(LinkError::NotALink));
    }

    #[test]
    fn a_right_sum_over_no_build_and_over_a_newer_one_differ() {
        let of = |json: &str| {
            let mut bytes = crc32(json.as_bytes()).to_be_bytes().to_vec();
            bytes.extend(json.as_bytes());
            format!("1.{}", URL_SAFE_NO_PAD.encode(bytes))
        };
        assert_eq!(read(&of(r#"{"format":1,"machine":7}"#)), Err(LinkError::NotABuild));
        assert_eq!(
            read(&of(r#"{"format":1,"measured":[{"item":"a","port":"b","dimension":"c","mm":1e999,"tool":"tape"}]}"#)),
            Err(LinkError::NotABuild)
        );
        assert_eq!(read(&of(r#"{"format":3,"arrangement":"new"}"#)), Err(LinkError::Newer(3)));
        assert_eq!(read(&of("[".repeat(5000).as_str())), Err(LinkError::NotABuild));
    }
}
