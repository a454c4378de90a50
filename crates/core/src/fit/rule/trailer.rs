//! The build's trailer: masses, nose load, room on the deck, tie-downs.

use super::missing::missing;
use crate::dimension::Heading;
use crate::finding::{Caution, Finding, Grade, Subject, Value, Verdict};
use crate::fit::Footprint;
use crate::fit::context::Context;
use crate::fit::whole::{OnTrailer, TrailerStand, trailer_of};
use crate::quantity::{Length, Mass};

/// The machine has to be within the trailer's ratings, stand on its deck, and put the nose load in range.
pub(super) fn rule(context: &Context, footprint: &Footprint, out: &mut Vec<Finding>) {
    let Some(on) = trailer_of(context, footprint) else { return };
    missing(context, "loading-unknown", Subject::Loading, &on.missing, out);
    mass(&on, out);
    room(context, &on, out);
    nose(&on, out);
    if let (Some(ties), Some(each)) = (on.tie_downs, on.each_tie_down()) {
        out.push(
            about("tie-downs-needed", Verdict::BoltsUp)
                .with("count", Value::Count(ties.needed.into()))
                .with("together", Value::Mass(Mass::from_kg(ties.least_aggregate)))
                .with("each", Value::Mass(each))
                .caution(Caution::TieDown),
        );
    }
}

fn about(code: &'static str, verdict: Verdict) -> Finding {
    Finding::new(code, Subject::Loading, verdict, Grade::Drawing)
}

fn mass(on: &OnTrailer, out: &mut Vec<Finding>) {
    for (rating, carried) in [("total", on.total), ("axle", on.axles(on.better()))] {
        let (Some(load), Some(rated), Some(left)) = (carried.load, carried.rated, carried.left()) else { continue };
        let finding = if carried.is_over() {
            about("trailer-overloaded", Verdict::WontMount).with("over", Value::Mass(-left))
        } else {
            about("trailer-carries", Verdict::BoltsUp).with("left", Value::Mass(left))
        };
        out.push(
            finding
                .with("rating", Value::Label(rating.to_owned()))
                .with("load", Value::Mass(load))
                .with("rated", Value::Mass(rated))
                .caution(Caution::RoadLimits),
        );
    }
}

fn room(context: &Context, on: &OnTrailer, out: &mut Vec<Finding>) {
    let row = context.catalogue().trailer(on.trailer);
    if let (Some(room), Some(width)) = (on.side_room.filter(|room| *room < Length::ZERO), row.deck_width) {
        out.push(
            about("trailer-narrow", Verdict::WontMount)
                .with("width", Value::Length(width - room))
                .with("deck", Value::Length(width))
                .with("beyond", Value::Length(-room)),
        );
    }
    let wheelbase = context.machine().and_then(|(_, machine)| machine.wheelbase);
    if let (Some(wheelbase), Some(deck)) = (wheelbase, row.deck_length)
        && wheelbase.value > deck
    {
        out.push(
            about("trailer-short", Verdict::WontMount)
                .with("wheelbase", Value::Length(wheelbase.value))
                .with("deck", Value::Length(deck)),
        );
    }
}

fn nose(on: &OnTrailer, out: &mut Vec<Finding>) {
    let Some(stand) = on.better().filter(|stand| stand.places_on_deck.is_some()) else { return };
    let (least, most) = stand.nose_range;
    let finding = match stand.places {
        Some(places) => about("nose-load-in-range", Verdict::BoltsUp)
            .with("from", Value::Length(behind_front(on, stand, places.low)))
            .with("to", Value::Length(behind_front(on, stand, places.high))),
        None => about("nose-load-out-of-range", Verdict::WontMount),
    };
    out.push(
        finding
            .with("nose", Value::Mass(stand.nose()))
            .with("least", Value::Mass(least))
            .with("most", Value::Mass(most))
            .with("heading", Value::Label(heading(stand.heading).to_owned()))
            .caution(Caution::RoadLimits),
    );
}

/// A place of the rear axle as it is measured on the deck: forward of the deck's rear edge.
fn behind_front(on: &OnTrailer, stand: &TrailerStand, place: f64) -> Length {
    let rear = stand.places_on_deck.map_or(0.0, |deck| match stand.heading {
        Heading::Forward => deck.low,
        Heading::Backward => deck.low - on.wheelbase.m(),
    });
    Length::from_m(place - rear)
}

const fn heading(heading: Heading) -> &'static str {
    match heading {
        Heading::Forward => "forward",
        Heading::Backward => "backward",
    }
}
