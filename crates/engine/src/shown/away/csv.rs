//! The parts as comma-separated values.

use fitup_core::fit::{Answer, ComeBy};
use fitup_core::quantity::{Money, fixed};

use super::super::ctx::Ctx;

/// The table of parts, a line for each, under a line of headings (RFC 4180). Numbers have a decimal point whatever the language.
///
/// It begins with a byte order mark: without one a spreadsheet takes the letters for those of its own region.
pub fn parts(ctx: Ctx, answer: &Answer) -> String {
    let heading = ["ui-item", "ui-name", "ui-part-numbers", "ui-quantity", "ui-come-by", "ui-price", "ui-currency"];
    let mut lines = vec![heading.map(|key| ctx.text(key)).to_vec()];
    let currency = &ctx.catalogue().name.currency;
    for line in &answer.parts.lines {
        let (come_by, price) = match line.come_by {
            ComeBy::OnHand => (ctx.text("come-by-on-hand"), None),
            ComeBy::ComesWith(other) => {
                (ctx.text_with("come-by-comes-with", &[("item", ctx.label(other).into())]), None)
            }
            ComeBy::Buy => (ctx.text("come-by-buy"), line.price),
        };
        lines.push(vec![
            ctx.words.kind(line.item),
            ctx.label(line.item).to_owned(),
            super::numbers(answer, line.item).join(" "),
            line.quantity.to_string(),
            come_by,
            price.map(plain).unwrap_or_default(),
            price.map(|_| currency.clone()).unwrap_or_default(),
        ]);
    }
    for fitting in answer.parts.fittings.iter().filter(|_| !answer.parts.lines.is_empty()) {
        let none = String::new;
        lines.push(vec![none(), fitting.clone(), none(), "1".into(), ctx.text("come-by-elsewhere"), none(), none()]);
    }
    let line = |cells: Vec<String>| cells.iter().map(|cell| quoted(cell)).collect::<Vec<_>>().join(",") + "\r\n";
    lines.into_iter().map(line).fold("\u{feff}".to_owned(), |table, line| table + &line)
}

#[expect(clippy::cast_precision_loss, reason = "prices are far below 2^52 hundredths")]
fn plain(price: Money) -> String {
    fixed(price.hundredths() as f64 / 100.0, 2)
}

/// A cell. One that a spreadsheet would take for a formula begins with an apostrophe, so that it stays a text.
fn quoted(cell: &str) -> String {
    let guard = if cell.starts_with(['=', '+', '-', '@', '\t', '\r']) { "'" } else { "" };
    format!("\"{guard}{}\"", cell.replace('"', "\"\""))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_cell_keeps_its_marks_and_is_no_formula() {
        assert_eq!(quoted("frame, \"long\""), "\"frame, \"\"long\"\"\"");
        assert_eq!(quoted("=1+1"), "\"'=1+1\"");
        assert_eq!(quoted("a\nb"), "\"a\nb\"");
    }

    #[test]
    fn a_price_is_a_plain_number() {
        assert_eq!(plain(Money::from_hundredths(1_289_050)), "12890.50");
    }
}
