//! The machine standing on the build's trailer.

use super::{Ask, Missing, MissingOf};
use crate::build::Build;
use crate::dimension::{
    Article, Cargo, Heading, Stretch, TieDowns, TrailerBed, TrailerLoads, deck_overhang, nose_window, tie_downs,
    trailer_loads, wheels_window,
};
use crate::fit::Footprint;
use crate::fit::context::Context;
use crate::fit::desk::Desk;
use crate::fit::footprint::footprint;
use crate::fit::loads::Loads;
use crate::fit::rated_load::RatedLoad;
use crate::item::{ItemRef, Machine, Trailer, TrailerId};
use crate::order;
use crate::quantity::{Length, Mass};

/// A limit of width on the road.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct WidthLimit {
    /// Name of the rule, kebab-case.
    pub rule: &'static str,
    /// Greatest width.
    pub most: Length,
}

/// Limits of width on the road, by rule.
///
/// Source: 102 in, 23 CFR 658.15 (the national network of the United States); 2.55 m, Directive 96/53/EC, annex I, 1.2
/// (both from memory). Other roads and other places have others.
pub const WIDTH_LIMITS: [WidthLimit; 2] = [
    WidthLimit { rule: "eu-96-53", most: Length::from_mm(2550.0) },
    WidthLimit { rule: "us-23-cfr-658", most: Length::from_mm(2590.8) },
];

/// The machine on the build's trailer, without its operator.
#[derive(Debug, Clone, PartialEq)]
pub struct OnTrailer {
    /// The trailer.
    pub trailer: TrailerId,
    /// Wheelbase of the machine, 0 if it is not known.
    pub wheelbase: Length,
    /// Mass of trailer and machine.
    pub total: RatedLoad,
    /// Its front end to the coupler.
    pub forward: Option<TrailerStand>,
    /// Its rear end to the coupler.
    pub backward: Option<TrailerStand>,
    /// Greatest load of the trailer's axles.
    pub rated_axle: Option<Mass>,
    /// Deck beyond the machine's length; negative = the machine is longer.
    pub deck_left: Option<Length>,
    /// Deck beyond the width over the tyres; negative = the tyres do not stand on it.
    pub side_room: Option<Length>,
    /// Greatest height over the ground, on the deck.
    pub height: Option<Length>,
    /// Width of the machine, which the road limits.
    pub width: Option<Length>,
    /// Number and strength of tie-downs by 49 CFR 393, straight from the trailer to the machine; plain SI.
    pub tie_downs: Option<TieDowns>,
    /// What is not stated.
    pub missing: Vec<Missing>,
}

impl OnTrailer {
    /// The stand one way.
    pub const fn stand(&self, heading: Heading) -> Option<&TrailerStand> {
        match heading {
            Heading::Forward => self.forward.as_ref(),
            Heading::Backward => self.backward.as_ref(),
        }
    }

    /// The better of the two: the nose load in range first, then forwards.
    pub fn better(&self) -> Option<&TrailerStand> {
        let both = [self.forward.as_ref(), self.backward.as_ref()];
        let stands = both.into_iter().flatten();
        stands.min_by_key(|stand| (!stand.is_in_range(), stand.places_on_deck.is_none()))
    }

    /// What the trailer's axles carry of a stand.
    pub fn axles(&self, stand: Option<&TrailerStand>) -> RatedLoad {
        RatedLoad { load: stand.map(|stand| Mass::from_kg(stand.loads.axle)), rated: self.rated_axle }
    }

    /// Least strength of each tie-down where as few as allowed are used, each straight from the trailer to the
    /// machine, of which half counts (49 CFR 393.106(d)).
    pub fn each_tie_down(&self) -> Option<Mass> {
        self.tie_downs.map(|ties| Mass::from_kg(2.0 * ties.least_aggregate / f64::from(ties.needed.max(1))))
    }
}

/// Where the machine stands on the trailer; metres in the trailer's frame.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TrailerStand {
    /// Which way it faces.
    pub heading: Heading,
    /// Places of the rear axle with the nose load in range.
    pub nose_in_range: Stretch,
    /// Places of the rear axle with both axles on the deck; `None` = the deck is too short for the wheelbase.
    pub places_on_deck: Option<Stretch>,
    /// Places that are both.
    pub places: Option<Stretch>,
    /// The place that is taken: the middle of the places that are both, else the nearest to the range on the deck.
    pub rear_axle: f64,
    /// What coupler and axles carry there.
    pub loads: TrailerLoads,
    /// Least and greatest nose load.
    pub nose_range: (Mass, Mass),
    /// How far the body then reaches beyond the deck's rear end and front end.
    pub beyond: Option<(f64, f64)>,
}

impl TrailerStand {
    /// What the coupler carries.
    pub fn nose(&self) -> Mass {
        Mass::from_kg(self.loads.nose)
    }

    /// Whether the machine stands on the deck with the nose load in range.
    pub const fn is_in_range(&self) -> bool {
        self.places.is_some()
    }
}

/// The machine on the build's trailer. `None` without a machine or a trailer.
pub fn on_trailer(desk: &Desk, build: &Build) -> Option<OnTrailer> {
    of(&Context::new(desk, build))
}

pub(super) fn of(context: &Context) -> Option<OnTrailer> {
    let loads = super::super::loads::loads(context).and_then(Result::ok);
    trailer_of(context, &footprint(context, loads.as_ref(), false))
}

/// As [`on_trailer`], with the footprint that is known already.
pub(in crate::fit) fn trailer_of(context: &Context, footprint: &Footprint) -> Option<OnTrailer> {
    let (machine_id, machine) = context.machine()?;
    let trailer = context.build.trailer?;
    let (of, row) = (MissingOf::Trailer(trailer), context.catalogue().trailer(trailer));
    let mut ask = Ask::default();
    let loads = ask.loads(context).map(|loads| loads.without_operator());
    let empty = ask.need(of, "mass", row.empty_mass);
    let over_tyres = [machine.rear, machine.front].map(|axle| Some(axle.track? + axle.tyre_width?));
    let over_tyres = over_tyres[0].zip(over_tyres[1]).map(|(rear, front)| rear.max(front));
    let over_tyres = ask.need(MissingOf::Item(ItemRef::Machine(machine_id)), "track", over_tyres);
    let deck_width = ask.need(of, "deck-width", row.deck_width);
    let deck_length = ask.need(of, "deck-length", row.deck_length);
    let rated_total = ask.need(of, "rated-total", row.rated_total);
    let stands = standing(&mut ask, of, row, machine, loads.as_ref(), footprint);
    let tie_downs = loads.as_ref().zip(footprint.length).and_then(|(loads, length)| {
        let article =
            Article { mass: loads.total.kg(), length: length.m(), blocked_forward: false, as_heavy_machinery: false };
        tie_downs(article, &[]).ok()
    });
    Some(OnTrailer {
        trailer,
        wheelbase: machine.wheelbase.map_or(Length::ZERO, |wheelbase| wheelbase.value),
        total: RatedLoad {
            load: loads.as_ref().zip(empty).map(|(loads, empty)| loads.total + empty),
            rated: rated_total,
        },
        forward: stands[0],
        backward: stands[1],
        rated_axle: row.rated_axle,
        deck_left: deck_length.zip(footprint.length).map(|(deck, length)| deck - length),
        side_room: deck_width.zip(over_tyres).map(|(deck, over)| deck - over),
        height: row.deck_height.zip(footprint.height).map(|(deck, height)| deck + height),
        width: footprint.width,
        tie_downs,
        missing: ask.0,
    })
}

fn standing(
    ask: &mut Ask,
    of: MissingOf,
    row: &Trailer,
    machine: &Machine,
    loads: Option<&Loads>,
    footprint: &Footprint,
) -> [Option<TrailerStand>; 2] {
    let centre = ask.need(of, "centre-of-gravity", row.centre_of_gravity);
    let coupling = ask.need(of, "coupling", row.coupling);
    let deck_rear = ask.need(of, "deck-rear", row.deck_rear);
    let shares = ask.need(of, "nose-load", row.nose_least.zip(row.nose_most));
    let (Some(loads), Some(empty), Some(centre), Some(coupling), Some(deck_rear), Some(length), Some(shares)) =
        (loads, row.empty_mass, centre, coupling, deck_rear, row.deck_length, shares)
    else {
        return [None, None];
    };
    let bed = TrailerBed { mass: empty.kg(), centre: centre.m(), coupler: coupling.m() };
    let deck = Stretch { low: deck_rear.m(), high: (deck_rear + length).m() };
    let total = empty + loads.total;
    // A rated nose load in kilograms narrows the range from above.
    let most = row.rated_nose.map_or(shares.1, |rated| shares.1.min(rated / total)).max(shares.0);
    [Heading::Forward, Heading::Backward].map(|heading| {
        let wheelbase = machine.wheelbase?.value.m();
        let cargo = Cargo { front: loads.front.kg(), rear: loads.rear.kg(), wheelbase, heading };
        let nose_in_range = nose_window(bed, cargo, shares.0, most).ok()??;
        let wheels = wheels_window(deck, wheelbase, heading).ok()?;
        let places_on_deck = (wheels.low <= wheels.high).then_some(wheels);
        let places = places_on_deck.and_then(|wheels| wheels.and(nose_in_range));
        let rear_axle = match (places, places_on_deck) {
            (Some(both), _) => f64::midpoint(both.low, both.high),
            (None, Some(wheels)) => order::within(nose_in_range.low, wheels.low, wheels.high),
            (None, None) => f64::midpoint(wheels.low, wheels.high),
        };
        let body = footprint.extent_x.map(|(low, high)| Stretch { low: low.m(), high: high.m() });
        Some(TrailerStand {
            heading,
            nose_in_range,
            places_on_deck,
            places,
            rear_axle,
            loads: trailer_loads(bed, cargo, rear_axle).ok()?,
            nose_range: (total * shares.0, total * most),
            beyond: body.and_then(|body| deck_overhang(deck, body, heading, rear_axle).ok()),
        })
    })
}
