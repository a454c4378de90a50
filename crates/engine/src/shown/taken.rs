//! What was found on the units, a line each.

use fitup_core::build::{Build, Measurement, Presence};
use fitup_core::item::ItemRef;
use fitup_core::quantity::Length;
use fitup_view::{Kind, Place, Taken};
use fitup_words::{LengthStyle, Words};

use super::ctx::Ctx;

/// What was measured, read and looked for where it is asked for.
pub fn taken(ctx: Ctx, build: &Build, is_here: &dyn Fn(ItemRef, &str) -> bool) -> Vec<Taken> {
    let side = &build.side;
    let of = |item: ItemRef, port: &str, what: &str, kind: Kind, line: String| {
        let at = Place { item: ctx.id(item), port: port.to_owned(), what: what.to_owned() };
        Taken { at, kind, line, is_wrong: false }
    };
    let measured = side.measured.iter().filter(|m| is_here(m.item, &m.port));
    let measured = measured.map(|m| of(m.item, &m.port, &m.dimension, Kind::Length, length(ctx, m)));
    let read = side.read.iter().filter(|read| is_here(read.item, &read.port)).map(|read| {
        let mut line = format!("{}, {}: {}", ctx.label(read.item), read.port, read.parts.join(" + "));
        if !read.by.is_empty() {
            line = format!("{line} ({})", read.by);
        }
        of(read.item, &read.port, "", Kind::Numbers, line)
    });
    let looked = side.looked.iter().filter_map(|((item, what), seen)| {
        let port = what.rsplit_once("/hole-").map_or(what.as_str(), |(port, _)| port);
        let word = ctx.text(if *seen == Presence::Yes { "desk-there" } else { "desk-not-there" });
        let line = format!("{}, {}: {word}", ctx.label(*item), ctx.words.looked_for(what));
        is_here(*item, port).then(|| of(*item, port, what, Kind::Presence, line))
    });
    let serials = side.serials.iter().filter(|(item, _)| is_here(**item, "")).map(|(item, number)| {
        of(*item, "", "", Kind::Serial, format!("{}, {}: {number}", ctx.label(*item), ctx.text("desk-serial")))
    });
    measured.chain(read).chain(looked).chain(serials).collect()
}

/// A measurement of an item in a line.
fn length(ctx: Ctx, measured: &Measurement) -> String {
    format!("{}, {}", ctx.label(measured.item), value(ctx.words, measured))
}

/// A measurement with how far it may be off, its readings and its note.
pub fn value(words: &Words, measured: &Measurement) -> String {
    let write = |length, style| words.reader().length(length, style);
    let mut besides = vec![words.tool(measured.tool)];
    if let Some(off) = measured.plus_minus {
        besides.push(format!("±{}", write(off, LengthStyle::Fine)));
    }
    let least = measured.readings.iter().copied().reduce(Length::min);
    let most = measured.readings.iter().copied().reduce(Length::max);
    if let Some((least, most)) = least.zip(most) {
        let [least, most] = [least, most].map(|it| write(it, LengthStyle::Part).into());
        let args = [("count", measured.readings.len().into()), ("least", least), ("most", most)];
        besides.push(words.ui("desk-readings", &args));
    }
    if !measured.note.is_empty() {
        besides.push(measured.note.clone());
    }
    let taken = write(measured.value, LengthStyle::Part);
    words.labelled(&words.value_name(&measured.dimension), &format!("{taken} ({})", besides.join("; ")))
}
