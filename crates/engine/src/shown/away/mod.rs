//! A build made ready to be taken along: link, QR code, plain text, parts as a table, build file, fit sheet.

mod code;
mod csv;
mod holes;
mod paper;
mod plain;

use fitup_catalogue::{BuildFile, json};
use fitup_core::build::{Build, Carrying};
use fitup_core::fit::Answer;
use fitup_core::item::ItemRef;
use fitup_core::search::{Headline, RankedCheck};
use fitup_view::{Away, Here};

use super::ctx::Ctx;
use crate::link;

/// A build that is taken along.
#[derive(Clone, Copy)]
pub struct Taken<'a> {
    /// The build.
    pub build: &'a Build,
    /// Its answer.
    pub answer: &'a Answer,
    /// What stands over it.
    pub headline: Option<&'a Headline>,
    /// What would settle what is open, best first.
    pub ranked: &'a [RankedCheck],
    /// Where the page is, and what is written to the build.
    pub here: &'a Here,
}

/// The build, ready to be taken along.
pub fn away(ctx: Ctx, taken: Taken) -> Away {
    let Taken { build, answer, here, .. } = taken;
    let of = link::text_of(ctx.catalogue(), build);
    let address = format!("{}{of}", here.address);
    Away {
        code: code::qr(&address, &ctx.text("ui-qr-code")),
        title: chosen(ctx, build).join(" + "),
        text: plain::text(ctx, taken, &address),
        paper: paper::paper(ctx, taken),
        parts: csv::parts(ctx, answer),
        file: json(&BuildFile::of(ctx.catalogue(), build)),
        name: file_name(ctx, build),
        of,
        address,
    }
}

/// The labels of what is chosen, carriers first.
fn chosen(ctx: Ctx, build: &Build) -> Vec<String> {
    let mut chosen: Vec<String> = build.items().into_iter().map(|item| ctx.label(item).to_owned()).collect();
    if build.choices.carrying == Carrying::Hitch {
        chosen.insert(usize::from(build.choices.machine.is_some()), ctx.text("ui-on-hitch"));
    }
    chosen
}

/// The numbers on the pieces by which an item is joined in this build: what a counter knows it by.
fn numbers(answer: &Answer, item: ItemRef) -> Vec<String> {
    let mut numbers = Vec::new();
    for joint in &answer.joints {
        for ((of, _), parts) in [(&joint.carrier, &joint.carrier_parts), (&joint.carried, &joint.carried_parts)] {
            let fresh =
                parts.iter().filter(|part| *of == item && !numbers.contains(*part)).cloned().collect::<Vec<_>>();
            numbers.extend(fresh);
        }
    }
    numbers
}

/// The ids of what is chosen: they hold nothing that a file's name may not.
fn file_name(ctx: Ctx, build: &Build) -> String {
    let ids: Vec<String> = build.items().into_iter().map(|item| ctx.id(item)).collect();
    if ids.is_empty() { "fit-up".to_owned() } else { ids.join("_") }
}
