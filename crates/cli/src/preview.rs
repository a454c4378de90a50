//! `preview`: every item of a catalogue drawn as its data have it, on one page.

use std::fmt::Write as _;

use clap::Args;
use fitup_core::item::{Catalogue, View};
use fitup_drawing::{escaped, reference};
use fitup_words::Words;

use crate::judge::ReaderArguments;

/// What `preview` is asked.
#[derive(Debug, Clone, Args)]
pub struct Arguments {
    /// The catalogue: a JSON file, a folder of CSV tables or a workbook; `-` reads JSON from the standard input.
    pub catalogue: String,
    /// Whom the words are for.
    #[command(flatten)]
    pub reader: ReaderArguments,
}

/// What the page is drawn with; it needs no script, no other file and no network.
const STYLE: &str = "body{font:16px/1.4 sans-serif;margin:1rem;color:#222;background:#fff}\
section{display:flex;flex-wrap:wrap;gap:1rem;border-top:1px solid #bbb;padding:.5rem 0}\
h2{flex-basis:100%;margin:.2rem 0;font-size:1.05rem}figure{margin:0}figcaption{color:#555;font-size:.85rem}\
svg{width:26rem;max-width:100%;height:20rem;border:1px solid #ddd}\
.outline{fill:#e7ece7;fill-opacity:.6;stroke:#333}.origin{stroke:#06c;fill:none}\
.port{stroke:#b30;fill:#b30}.port text{stroke:none}.hole{fill:none}";

/// The page.
pub fn page(words: &Words, catalogue: &Catalogue) -> String {
    let mut out = format!(
        "<!DOCTYPE html>\n<html lang=\"{}\">\n<head>\n<meta charset=\"utf-8\">\n<title>{name}</title>\n<style>{STYLE}</style>\n\
         </head>\n<body>\n<h1>{name}</h1>\n",
        words.reader().lang.tag(),
        name = escaped(&catalogue.name.name),
    );
    for item in catalogue.items() {
        let body = catalogue.body(item);
        let _ = writeln!(out, "<section><h2>{} <small>{}</small></h2>", escaped(&body.label), escaped(&body.id));
        // The axes say which view it is, in every language.
        for (view, axes) in [(View::Side, "x →, z ↑"), (View::Plan, "x →, y ↑"), (View::Rear, "y →, z ↑")] {
            if let Some(drawn) = reference(body, view) {
                let _ = writeln!(out, "<figure>{drawn}<figcaption>{axes}</figcaption></figure>");
            }
        }
        let ports = body.ports.iter().map(|port| format!("{} ({})", port.name, words.role(port.role)));
        let _ = writeln!(out, "<p>{}</p></section>", escaped(&ports.collect::<Vec<_>>().join(" · ")));
    }
    out.push_str("</body>\n</html>\n");
    out
}
