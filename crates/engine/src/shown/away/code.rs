//! An address as a QR code.

use std::fmt::Write;

use fitup_drawing::escaped;
use qrcodegen::{QrCode, QrCodeEcc};

/// The light rim that a reader needs round the code, in modules (ISO/IEC 18004).
const RIM: i32 = 4;

/// The code as SVG, a module one unit wide; `None` if the text is longer than a code can hold.
///
/// The lowest correction is asked for, so that the modules are as large as can be; where the size has room for more, it is used.
pub fn qr(text: &str, title: &str) -> Option<String> {
    let code = QrCode::encode_text(text, QrCodeEcc::Low).ok()?;
    let size = code.size();
    let side = size + 2 * RIM;
    let mut dark = String::new();
    for y in 0..size {
        let mut x = 0;
        while x < size {
            let run = (x..size).take_while(|&x| code.get_module(x, y)).count();
            let run = i32::try_from(run).unwrap_or(size);
            if run > 0 {
                let _ = write!(dark, "M{} {}h{run}v1h-{run}z", x + RIM, y + RIM);
            }
            x += run.max(1);
        }
    }
    let title = escaped(title);
    Some(format!(
        "<svg class=\"qr\" viewBox=\"0 0 {side} {side}\" role=\"img\"><title>{title}</title>\
         <path class=\"qr-light\" d=\"M0 0h{side}v{side}h-{side}z\"/><path class=\"qr-dark\" d=\"{dark}\"/></svg>"
    ))
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The modules of a code, by its drawing alone: the rim is part of it.
    fn drawn(svg: &str) -> (usize, Vec<bool>) {
        let side: usize =
            svg.split("viewBox=\"0 0 ").nth(1).and_then(|rest| rest.split(' ').next()?.parse().ok()).unwrap();
        let mut modules = vec![false; side * side];
        let data = svg.split("qr-dark\" d=\"").nth(1).and_then(|rest| rest.split('"').next()).unwrap();
        for run in data.split('M').skip(1) {
            let (x, rest) = run.split_once(' ').unwrap();
            let (y, rest) = rest.split_once('h').unwrap();
            let (length, _) = rest.split_once('v').unwrap();
            let [x, y, length] = [x, y, length].map(|number| number.parse::<usize>().unwrap());
            modules[y * side + x..][..length].fill(true);
        }
        (side, modules)
    }

    /// What a decoder library reads off the drawing, each module printed four dots wide.
    fn read(svg: &str) -> String {
        const DOTS: usize = 4;
        let (side, modules) = drawn(svg);
        let dark = |x: usize, y: usize| modules[y / DOTS * side + x / DOTS];
        let mut image =
            rqrr::PreparedImage::prepare_from_greyscale(
                side * DOTS,
                side * DOTS,
                |x, y| {
                    if dark(x, y) { 0 } else { 255 }
                },
            );
        let codes = image.detect_grids();
        assert_eq!(codes.len(), 1);
        codes[0].decode().unwrap().1
    }

    #[test]
    fn a_decoder_reads_what_was_written_whatever_its_length() {
        let address = "https://dealer.example/fit-up/?x=1#contents&fit-up=1.";
        for length in [0, 1, 40, 200, 700, 1500, 2800] {
            let text = format!("{address}{}", "aB3_-".chars().cycle().take(length).collect::<String>());
            assert_eq!(read(&qr(&text, "code").unwrap()), text);
        }
    }

    #[test]
    fn what_is_too_long_for_a_code_gives_none_and_a_title_is_escaped() {
        assert_eq!(qr(&"a".repeat(2954), ""), None, "ISO/IEC 18004: 2,953 bytes at version 40, lowest correction");
        assert!(qr(&"a".repeat(2953), "").is_some());
        assert!(qr("a", "<b>").unwrap().contains("<title>&lt;b&gt;</title>"));
    }
}
