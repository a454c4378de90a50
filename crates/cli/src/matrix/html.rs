//! The table as one page that needs no script, no other file and no network.

use std::fmt::Write as _;

use fitup_core::finding::{Caution, Verdict};
use fitup_core::item::Catalogue;
use fitup_drawing::escaped;
use fitup_words::{Arg, Words};

use super::{Cell, through_text, told, verdict_name};

/// The page. The longer of the two lists goes down the page, the other across.
pub(super) fn page(catalogue: &Catalogue, words: &Words, cells: &[Cell]) -> String {
    let ui = |key: &str, args: &[(&str, Arg)]| escaped(&words.ui(key, args));
    let mut out = String::new();
    let name = &catalogue.name;
    let _ = write!(
        out,
        "<!DOCTYPE html>\n<html lang=\"{lang}\">\n<head>\n<meta charset=\"utf-8\">\n\
         <meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n\
         <title>{title} – {name}</title>\n<style>\n{STYLE}</style>\n</head>\n<body>\n<header>\n<h1>{title}</h1>\n\
         <p><strong>{name}</strong>",
        lang = words.reader().lang.tag(),
        title = ui("matrix-title", &[]),
        name = escaped(&name.name),
    );
    if !name.edition.is_empty() {
        let _ = write!(out, " · {}", ui("matrix-edition", &[("edition", name.edition.as_str().into())]));
    }
    out.push_str("</p>\n");
    if !name.notice.is_empty() {
        let _ = writeln!(out, "<p class=\"notice\">{}</p>", escaped(&name.notice));
    }
    let _ = writeln!(out, "<p>{}</p>", ui("matrix-lead", &[]));
    let _ = writeln!(out, "<p class=\"notice\">{}</p>", escaped(&words.caution(Caution::PlanningAid)));
    legend(words, &mut out);
    out.push_str("</header>\n<main tabindex=\"0\">\n");
    table(catalogue, words, cells, &mut out);
    out.push_str("</main>\n</body>\n</html>\n");
    out
}

fn legend(words: &Words, out: &mut String) {
    let _ = writeln!(out, "<h2>{}</h2>\n<dl>", escaped(&words.ui("matrix-legend", &[])));
    for verdict in Verdict::ALL {
        let told = super::legend(words, verdict);
        let (class, mark, word) = (told.name, told.mark, escaped(&told.word));
        let meaning = escaped(&words.verdict_meaning(verdict));
        let _ = writeln!(
            out,
            "<div><dt class=\"{class}\"><span aria-hidden=\"true\">{mark}</span> {word}</dt><dd>{meaning}</dd></div>"
        );
    }
    out.push_str("</dl>\n");
}

fn table(catalogue: &Catalogue, words: &Words, cells: &[Cell], out: &mut String) {
    let machines: Vec<&str> = catalogue.machines.iter().map(|it| it.body.label.as_str()).collect();
    let implements: Vec<&str> = catalogue.implements.iter().map(|it| it.body.label.as_str()).collect();
    let implements_down = implements.len() >= machines.len();
    let (down, across) = if implements_down { (&implements, &machines) } else { (&machines, &implements) };
    let heads = [("ui-step-implement", "ui-step-machine"), ("ui-step-machine", "ui-step-implement")];
    let (down_head, across_head) = heads[usize::from(!implements_down)];
    let _ = write!(
        out,
        "<table>\n<caption>{}</caption>\n<thead>\n<tr><th scope=\"col\">{} \\ {}</th>",
        escaped(&words.ui("matrix-title", &[])),
        escaped(&words.ui(down_head, &[])),
        escaped(&words.ui(across_head, &[])),
    );
    for label in across {
        let _ = write!(out, "<th scope=\"col\">{}</th>", escaped(label));
    }
    out.push_str("</tr>\n</thead>\n<tbody>\n");
    for (row, label) in down.iter().enumerate() {
        let _ = write!(out, "<tr><th scope=\"row\">{}</th>", escaped(label));
        for column in 0..across.len() {
            let (machine, implement) = if implements_down { (column, row) } else { (row, column) };
            one(catalogue, words, &cells[machine * implements.len() + implement], out);
        }
        out.push_str("</tr>\n");
    }
    out.push_str("</tbody>\n</table>\n");
}

fn one(catalogue: &Catalogue, words: &Words, cell: &Cell, out: &mut String) {
    let through = escaped(&through_text(catalogue, words, cell));
    let Some(found) = &cell.found else {
        let _ = write!(out, "<td><small>{through}</small></td>");
        return;
    };
    let told = told(words, found.verdict, found.question);
    let _ = write!(
        out,
        "<td class=\"{}\"><b><span aria-hidden=\"true\">{}</span> {}</b>",
        verdict_name(found.verdict),
        told.mark,
        escaped(&told.word)
    );
    if let Some(reason) = &found.reason {
        let _ = write!(out, "<span class=\"why\">{}</span>", escaped(reason));
    }
    let _ = write!(out, "<small>{through}</small></td>");
}

const STYLE: &str = include_str!("matrix.css");

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn nothing_of_the_catalogue_becomes_markup() {
        assert_eq!(escaped("<b title=\"a\">&\u{1b}"), "&lt;b title=&quot;a&quot;&gt;&amp; ");
    }
}
