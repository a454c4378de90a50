//! The machine on its trailer: driving up the ramp, standing on the deck.

use fitup_core::build::Build;
use fitup_core::dimension::{Facing, Heading};
use fitup_core::fit::{Answer, Drive, loading, on_trailer, shortest_ramps};
use fitup_core::item::TrailerId;
use fitup_core::quantity::Length;
use fitup_drawing::{OnTrailer, RampDrive, Subject, ramp, ramp_places, trailer};
use yew::prelude::*;

use super::choose::choose;
use super::frame::{Frame, bare, frame};
use super::loading_figures::figures;
use super::slider::{Slider, slider};
use super::switch::switch;
use crate::ctx::use_ctx;
use crate::hooks::{use_later, use_room, use_trial};
use crate::picture;
use crate::same::Same;
use crate::say;
use crate::state::Edit;

/// Places of the drive that the slider steps through.
const PLACES: usize = 61;
/// Milliseconds after the last change until the shortest ramps are searched.
const AFTER: u32 = 150;

#[derive(Properties, PartialEq)]
pub struct LoadingProps {
    /// The answer.
    pub answer: Same<Answer>,
    /// The build.
    pub build: Same<Build>,
}

/// The view.
#[component]
pub fn Loading(props: &LoadingProps) -> Html {
    let ctx = use_ctx();
    let node = use_node_ref();
    let room = use_room(&node);
    let (backward, on_deck) = (use_state_eq(|| 0usize), use_state_eq(|| 0usize));
    let place = use_state_eq(|| None::<f64>);
    let (build, live, done) = use_trial(&ctx, &props.build);
    let shortest =
        use_later(AFTER, (ctx.desk.clone(), props.build.clone()), |(desk, build)| shortest_ramps(desk, build));
    let trailers = ctx.catalogue().trailers.iter().map(|row| row.label.clone()).collect::<Vec<_>>();
    let taken = {
        let done = done.clone();
        Callback::from(move |at: Option<usize>| done.emit(Edit::Trailer(at.map(TrailerId::at))))
    };
    let chosen = build.trailer.map(TrailerId::index);
    let choice = choose(&ctx, "ui-trailer", trailers, chosen, &taken);
    let (Some(found), Some(on)) = (loading(&ctx.desk, &build), on_trailer(&ctx.desk, &build)) else {
        return bare(&ctx, &node, "ui-loading-none", Some(choice));
    };
    let facing = if *backward == 0 { Facing::Forward } else { Facing::Backward };
    let heading = if *backward == 0 { Heading::Forward } else { Heading::Backward };
    let (drive, stand) = (found.drive(facing), on.stand(heading));
    let touch = drive.and_then(Drive::touch);
    let subject = Subject::new(ctx.catalogue(), &build, &props.answer.stack);
    let places = found.ramp.map(|ramp| ramp_places(&subject, &ramp, facing, PLACES)).unwrap_or_default();
    let at = place.or(touch.map(|(nearest, _)| nearest.rear_axle)).or(places.first().copied());
    let drawn = picture::drawn(&ctx, &props.answer, room, |sheet| match (*on_deck, found.ramp.zip(at), stand) {
        (0, Some((slope, rear_axle)), _) => {
            let nearest = touch.as_ref().map(|(nearest, item)| (nearest, *item));
            Some(ramp(&subject, &RampDrive { ramp: slope, facing, rear_axle, nearest }, sheet))
        }
        (1, _, Some(stand)) => {
            let row = ctx.catalogue().trailer(on.trailer);
            let standing = OnTrailer { trailer: row, heading, rear_axle: stand.rear_axle, loads: Some(stand.loads) };
            Some(trailer(&subject, &standing, sheet))
        }
        _ => None,
    });
    let length = found.ramp.map(|ramp| Length::from_m(ramp.length));
    let ways = vec![ctx.text("ui-forwards"), ctx.text("ui-backwards")];
    let pictures = vec![ctx.text("ui-on-ramp"), ctx.text("ui-on-deck")];
    let ramps = |to: &Callback<Edit>| to.reform(|mm: f64| Edit::Ramps(Length::from_mm(mm)));
    let turn = {
        let (way, place) = (backward.setter(), place.setter());
        Callback::from(move |at| {
            way.set(at);
            place.set(None);
        })
    };
    let look = {
        let on_deck = on_deck.setter();
        Callback::from(move |at| on_deck.set(at))
    };
    let ramp_length = length.zip(found.ramp_lengths()).map(|(length, (least, most))| {
        slider(Slider {
            name: ctx.text("ui-ramp-length"),
            shown: say::length(&ctx, length),
            range: (least.mm(), most.mm()),
            step: 10.0,
            value: length.mm(),
            live: ramps(&live),
            done: ramps(&done),
        })
    });
    let on_ramp = match (*on_deck, at, places.as_slice()) {
        (0, Some(at), [first, .., last]) => {
            let place = place.setter();
            Some(slider(Slider {
                name: ctx.text("ui-place-on-ramp"),
                shown: say::length(&ctx, Length::from_m(at)),
                range: (*first, *last),
                step: 0.01,
                value: at,
                live: Callback::from(move |at| place.set(Some(at))),
                done: Callback::noop(),
            }))
        }
        _ => None,
    };
    let controls = html! {
        <>
            { choice }
            { switch(ctx.text("ui-way"), ways, *backward, &turn) }
            { switch(ctx.text("ui-drawing"), pictures, *on_deck, &look) }
            { ramp_length }
            { on_ramp }
        </>
    };
    let figures = figures(&ctx, drive, shortest, *backward, stand, &on);
    frame(&node, Frame { drawn, tall: false, controls, figures, aside: None })
}
