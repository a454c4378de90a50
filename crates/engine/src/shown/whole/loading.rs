//! The machine on its trailer: driving up the ramp, standing on the deck.

use fitup_core::build::Build;
use fitup_core::dimension::Facing;
use fitup_core::fit::{
    Answer, Drive, Loading, OnTrailer, TrailerStand, loading as found_on, on_trailer, shortest_ramps, stand_after,
    way_up,
};
use fitup_core::item::TrailerId;
use fitup_core::quantity::Length;
use fitup_drawing::{OnTrailer as Standing, RampDrive, Subject, ramp, ramp_places, trailer};
use fitup_view::{Chooser, Fact, Look, Slide, Slider, Switch, Way, Whole};

use super::bare;
use super::loading_figures::figures;
use crate::known::Shortest;
use crate::shown::Ctx;
use crate::shown::picture::drawn;

/// Places of the drive that the slider steps through.
const PLACES: usize = 61;

/// The way that is looked at: as chosen, else the one that the answer is told of.
fn facing(ctx: Ctx, build: &Build, look: &Look, found: &Loading, on: &OnTrailer) -> Facing {
    match look.backwards {
        Some(true) => Facing::Backward,
        Some(false) => Facing::Forward,
        None => {
            let is_helped = |facing| shortest_ramps(ctx.desk, build)[facing as usize].is_some();
            way_up(&[found.forward, found.backward], Some(on), is_helped)
        }
    }
}

/// The view; `shortest` is `None` while the shortest ramps are being looked for.
pub fn loading(ctx: Ctx, build: &Build, answer: &Answer, look: &Look, shortest: Option<Shortest>) -> Whole {
    let chooser = chooser(ctx, build);
    let (Some(found), Some(on)) = (found_on(ctx.desk, build), on_trailer(ctx.desk, build)) else {
        return bare(ctx, "ui-loading-none", Some(chooser));
    };
    let facing = facing(ctx, build, look, &found, &on);
    let (drive, stand) = (found.drive(facing), stand_after(&on, facing));
    let touch = drive.and_then(Drive::touch);
    let subject = Subject::new(ctx.catalogue(), build, &answer.stack);
    let places = found.ramp.map(|ramp| ramp_places(&subject, &ramp, facing, PLACES)).unwrap_or_default();
    let at = look.place(Slide::RampPlace);
    let at = at.or(touch.as_ref().map(|(nearest, _)| nearest.rear_axle)).or(places.first().copied());
    let picture = drawn(ctx, answer, look.room, |sheet| match (look.on_deck, found.ramp.zip(at), stand) {
        (false, Some((slope, rear_axle)), _) => {
            let nearest = touch.as_ref().map(|(nearest, item)| (nearest, *item));
            Some(ramp(&subject, &RampDrive { ramp: slope, facing, rear_axle, nearest }, sheet))
        }
        (true, _, Some(stand)) => {
            let row = ctx.catalogue().trailer(on.trailer);
            let TrailerStand { heading, rear_axle, loads, .. } = *stand;
            let standing = Standing { trailer: row, heading, rear_axle, loads: Some(loads) };
            Some(trailer(&subject, &standing, sheet))
        }
        _ => None,
    });
    let on_ramp = match (at, places.as_slice()) {
        (Some(at), [first, .., last]) if !look.on_deck => Some(place_on_ramp(ctx, at, *first, *last)),
        _ => None,
    };
    Whole {
        picture,
        chooser: Some(chooser),
        switches: switches(ctx, look, facing),
        sliders: ramp_length(ctx, &found).into_iter().chain(on_ramp).collect(),
        facts: figures(ctx, drive, shortest, facing, stand, &on),
        ..Whole::default()
    }
}

/// The figures again once the shortest ramps are found.
pub fn later_facts(ctx: Ctx, build: &Build, look: &Look, shortest: Shortest) -> Option<Vec<Fact>> {
    let (found, on) = (found_on(ctx.desk, build)?, on_trailer(ctx.desk, build)?);
    let facing = facing(ctx, build, look, &found, &on);
    Some(figures(ctx, found.drive(facing), Some(shortest), facing, stand_after(&on, facing), &on))
}

fn chooser(ctx: Ctx, build: &Build) -> Chooser {
    let trailers = &ctx.catalogue().trailers;
    Chooser {
        name: ctx.text("ui-trailer"),
        none: ctx.text("ui-none"),
        options: trailers.iter().map(|row| (row.id.clone(), row.label.clone())).collect(),
        chosen: build.side.trailer.map(TrailerId::index).map(|at| trailers[at].id.clone()),
        of_sites: false,
    }
}

fn switches(ctx: Ctx, look: &Look, facing: Facing) -> Vec<Switch> {
    let ways = [(Way::Forwards, "ui-forwards"), (Way::Backwards, "ui-backwards")];
    let pictures = [(Way::OnRamp, "ui-on-ramp"), (Way::OnDeck, "ui-on-deck")];
    let one = |name: &str, ways: [(Way, &str); 2], second: bool| Switch {
        name: ctx.text(name),
        taken: ways[usize::from(second)].0,
        ways: ways.into_iter().map(|(way, key)| (way, ctx.text(key))).collect(),
    };
    vec![one("ui-way", ways, facing == Facing::Backward), one("ui-drawing", pictures, look.on_deck)]
}

fn ramp_length(ctx: Ctx, found: &Loading) -> Option<Slider> {
    let length = found.ramp.map(|ramp| Length::from_m(ramp.length));
    length.zip(found.ramp_lengths()).map(|(length, (least, most))| Slider {
        sets: Slide::Ramps,
        looks_only: false,
        name: ctx.text("ui-ramp-length"),
        shown: ctx.length(length),
        least: least.mm(),
        most: most.mm(),
        step: 10.0,
        value: length.mm(),
    })
}

fn place_on_ramp(ctx: Ctx, at: f64, first: f64, last: f64) -> Slider {
    Slider {
        sets: Slide::RampPlace,
        looks_only: true,
        name: ctx.text("ui-place-on-ramp"),
        shown: ctx.length(Length::from_m(at)),
        least: first,
        most: last,
        step: 0.01,
        value: at,
    }
}
