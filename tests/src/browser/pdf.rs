//! Paper that a page prints, in its own units.

use base64::Engine as _;
use base64::engine::general_purpose::STANDARD;
use lopdf::Document;
use lopdf::content::Content;
use serde_json::json;

use super::{Outcome, Page, trouble};

/// Millimetres in a unit of a PDF: 1/72 in (ISO 32000-1, 8.3.2.3).
const MM: f64 = 25.4 / 72.0;

/// A sheet size.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Format {
    /// Width in millimetres.
    pub width: f64,
    /// Height in millimetres.
    pub height: f64,
}

/// ISO 216 A4.
pub const A4: Format = Format { width: 210.0, height: 297.0 };
/// ANSI/ASME Y14.1 A, US Letter.
pub const LETTER: Format = Format { width: 215.9, height: 279.4 };

/// A line on a page, from end to end in millimetres, or the box round a curve.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Stroke {
    /// Lower left corner.
    pub low: (f64, f64),
    /// Upper right corner.
    pub high: (f64, f64),
    /// Whether it bends.
    pub is_curve: bool,
}

impl Stroke {
    /// Width and height.
    pub fn size(&self) -> (f64, f64) {
        (self.high.0 - self.low.0, self.high.1 - self.low.1)
    }
}

impl Page {
    /// Prints the page as it is, on sheets of a size.
    ///
    /// # Errors
    /// The browser refuses.
    pub async fn print(&self, format: Format) -> Outcome<Vec<u8>> {
        let [width, height] = [format.width, format.height].map(|mm| mm / 25.4);
        let printed = self.cdp("Page.printToPDF", json!({ "paperWidth": width, "paperHeight": height })).await?;
        let data = printed["data"].as_str().ok_or_else(|| trouble("nothing was printed"))?;
        Ok(STANDARD.decode(data)?)
    }
}

/// The strokes of each page of a PDF.
///
/// # Errors
/// It cannot be read.
pub fn strokes(pdf: &[u8]) -> Outcome<Vec<Vec<Stroke>>> {
    let document = Document::load_mem(pdf)?;
    let page = |id| -> Outcome<Vec<Stroke>> { Ok(drawn(&Content::decode(&document.get_page_content(id))?)) };
    document.get_pages().into_values().map(page).collect()
}

type Matrix = [f64; 6];

fn drawn(content: &Content) -> Vec<Stroke> {
    let mut stack: Vec<Matrix> = Vec::new();
    let mut at: Matrix = [1.0, 0.0, 0.0, 1.0, 0.0, 0.0];
    let mut strokes: Vec<Stroke> = Vec::new();
    let mut path: Option<Stroke> = None;
    for operation in &content.operations {
        let n: Vec<f64> = operation.operands.iter().filter_map(|it| it.as_float().ok().map(f64::from)).collect();
        let place = |x: f64, y: f64| ((at[0] * x + at[2] * y + at[4]) * MM, (at[1] * x + at[3] * y + at[5]) * MM);
        let takes = |path: &mut Option<Stroke>, (x, y): (f64, f64), bends: bool| {
            if let Some(path) = path {
                path.low = (path.low.0.min(x), path.low.1.min(y));
                path.high = (path.high.0.max(x), path.high.1.max(y));
                path.is_curve |= bends;
            }
        };
        match (operation.operator.as_str(), &n[..]) {
            ("q", _) => stack.push(at),
            ("Q", _) => at = stack.pop().unwrap_or(at),
            ("cm", &[a, b, c, d, e, f]) => {
                at = [
                    a * at[0] + b * at[2],
                    a * at[1] + b * at[3],
                    c * at[0] + d * at[2],
                    c * at[1] + d * at[3],
                    e * at[0] + f * at[2] + at[4],
                    e * at[1] + f * at[3] + at[5],
                ];
            }
            ("m", &[x, y]) => {
                strokes.extend(path.take());
                let start = place(x, y);
                path = Some(Stroke { low: start, high: start, is_curve: false });
            }
            ("l", &[x, y]) => takes(&mut path, place(x, y), false),
            ("c" | "v" | "y", &[.., x, y]) => takes(&mut path, place(x, y), true),
            ("S" | "s" | "f" | "f*" | "B" | "b" | "B*" | "b*" | "n", _) => strokes.extend(path.take()),
            _ => {}
        }
    }
    strokes
}
