//! What the marks on a photograph come to.

use fitup_core::item::{ItemRef, Port};
use fitup_core::quantity::Length;
use fitup_view::{Photo, PhotoShown};
use fitup_words::LengthStyle;

use super::ctx::Ctx;
use crate::change::{CORNERS, Refused, holes_to_mark, taken_from_photo};

/// What a photograph of a port comes to so far; `None` for a port of which nothing can be taken from one.
pub fn photo(ctx: Ctx, item: ItemRef, port: &Port, marked: Option<&Photo>) -> Option<PhotoShown> {
    let holes = holes_to_mark(port);
    if holes == 0 {
        return None;
    }
    let number = |key: &str, at: usize| ctx.text_with(key, &[("number", (at + 1).into())]);
    let corners = (0..CORNERS).map(|at| number("photo-corner", at));
    let names: Vec<String> = corners.chain((0..holes).map(|at| number("photo-hole", at))).collect();
    let marks = marked.map_or(0, |photo| photo.marks.len());
    let next = match names.get(marks) {
        Some(name) if marks == 0 => ctx.text_with("photo-first", &[("name", name.as_str().into())]),
        Some(name) => ctx.text_with("photo-next", &[("name", name.as_str().into())]),
        None => ctx.text("photo-all"),
    };
    let wanted = u32::try_from(names.len()).unwrap_or(u32::MAX);
    let shown = PhotoShown { wanted, names, next, ..PhotoShown::default() };
    let Some(photo) = marked.filter(|_| marks >= CORNERS) else { return Some(shown) };
    match taken_from_photo(ctx.words, item, port, photo) {
        Err(Refused::Wrong(says) | Refused::Asked(says)) => Some(PhotoShown { wrong: Some(says), ..shown }),
        Err(Refused::Gone) => Some(shown),
        Ok(measured) => {
            let length = |length: Length, style| ctx.words.reader().length(length, style);
            let lines = measured.iter().map(|one| {
                let off = length(one.half_range(), LengthStyle::Fine);
                let found = format!("{} ±{off}", length(one.value, LengthStyle::Part));
                let drawn = port.stated(&one.dimension).map(|stated| length(stated.value, LengthStyle::Part));
                let line = ctx.words.labelled(&ctx.words.value_name(&one.dimension), &found);
                drawn.map_or(line.clone(), |drawn| {
                    ctx.text_with("photo-beside-drawing", &[("line", line.into()), ("drawn", drawn.into())])
                })
            });
            Some(PhotoShown { lines: lines.collect(), ..shown })
        }
    }
}
