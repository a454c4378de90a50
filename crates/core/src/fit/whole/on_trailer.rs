//! The machine standing on the build's trailer.

use super::footprint::{Footprint, footprint};
use super::loads::{Loads, usual_off};
use super::rated_load::{Against, RatedLoad};
use super::{Ask, Missing, MissingOf};
use crate::build::Build;
use crate::dimension::{
    Article, Cargo, Heading, Stretch, TieDowns, TrailerBed, TrailerLoads, deck_overhang, nose_window, tie_downs,
    trailer_loads, wheels_window,
};
use crate::finding::Unstated;
use crate::fit::context::Context;
use crate::fit::desk::Desk;
use crate::item::{ItemRef, Machine, Trailer, TrailerId};
use crate::quantity::{Length, Mass, Stated};

/// A limit of a size on the road.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RoadLimit {
    /// Name of the rule, kebab-case.
    pub rule: &'static str,
    /// Where it holds: a country by ISO 3166-1, or `EU`.
    pub country: &'static str,
    /// The most.
    pub most: Length,
}

/// Limits of width on the road, by rule.
///
/// Source: 102 in, 23 CFR 658.15 (the national network of the United States); 2.55 m, Directive 96/53/EC, annex I, 1.2
/// (both from memory). Other roads and other places have others.
pub const WIDTH_LIMITS: [RoadLimit; 2] = [
    RoadLimit { rule: "eu-96-53", country: "EU", most: Length::from_mm(2550.0) },
    RoadLimit { rule: "us-23-cfr-658", country: "US", most: Length::from_mm(2590.8) },
];

/// How far a load may reach beyond the rear end of what carries it, by rule: farther, and it has to be marked or may not travel so.
///
/// Source: 1.5 m on any journey, `StVZO` section 22 (4), Germany; 4 ft before it has to be marked, 49 CFR 393.87, United States (both
/// from memory). Other places have others.
pub const OVERHANG_LIMITS: [RoadLimit; 2] = [
    RoadLimit { rule: "de-stvzo-22", country: "DE", most: Length::from_mm(1500.0) },
    RoadLimit { rule: "us-49-cfr-393-87", country: "US", most: Length::from_mm(1219.2) },
];

/// The machine on the build's trailer, without its operator.
#[derive(Debug, Clone, PartialEq)]
pub struct OnTrailer {
    /// The trailer.
    pub trailer: TrailerId,
    /// Wheelbase of the machine.
    pub wheelbase: Option<Stated<Length>>,
    /// Mass of trailer and machine.
    pub total: RatedLoad,
    /// Its front end to the coupler.
    pub forward: Option<TrailerStand>,
    /// Its rear end to the coupler.
    pub backward: Option<TrailerStand>,
    /// Greatest load of the trailer's axles.
    pub rated_axle: Option<Mass>,
    /// Width of the deck.
    pub deck_width: Option<Length>,
    /// Its length.
    pub deck_length: Option<Length>,
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

    /// What the trailer's axles carry of a stand.
    pub fn axles(&self, stand: Option<&TrailerStand>) -> RatedLoad {
        // What the masses are off by, all of it on the axles.
        RatedLoad {
            load: stand.map(|stand| Mass::from_kg(stand.loads.axle)),
            rated: self.rated_axle,
            off: self.total.off,
        }
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
    /// How far the nose load may be off.
    pub nose_off: Mass,
    /// Whether there is a place on the deck with the nose load in range: for certain, perhaps, for certain not.
    pub nose: Against,
    /// How far the body then reaches beyond the deck's rear end and front end.
    pub beyond: Option<(f64, f64)>,
}

impl TrailerStand {
    /// What the coupler carries.
    pub fn nose_load(&self) -> Mass {
        Mass::from_kg(self.loads.nose)
    }

    /// Whether the machine stands on the deck with the nose load in range.
    pub const fn is_in_range(&self) -> bool {
        self.places.is_some()
    }
}

/// The machine on the build's trailer. `None` without a machine or a trailer.
pub fn on_trailer(desk: &Desk, build: &Build) -> Option<OnTrailer> {
    trailer_of(&Context::new(desk, build))
}

/// As [`on_trailer`], of a build that is placed.
pub(crate) fn trailer_of(context: &Context) -> Option<OnTrailer> {
    let (machine_id, machine) = context.machine()?;
    let trailer = context.build.side.trailer?;
    let footprint = footprint(context, None, false);
    let (of, row) = (MissingOf::Trailer(trailer), context.catalogue().trailer(trailer));
    let mut ask = Ask::default();
    let loads = ask.loads(context).map(|loads| loads.without_operator());
    let empty = ask.need(of, Unstated::Mass, row.empty_mass);
    let over_tyres = [machine.rear, machine.front].map(|axle| Some(axle.track? + axle.tyre_width?));
    let over_tyres = over_tyres[0].zip(over_tyres[1]).map(|(rear, front)| rear.max(front));
    let over_tyres = ask.need(MissingOf::Item(ItemRef::Machine(machine_id)), Unstated::Track, over_tyres);
    let deck_width = ask.need(of, Unstated::DeckWidth, row.deck_width);
    let deck_length = ask.need(of, Unstated::DeckLength, row.deck_length);
    let rated_total = ask.need(of, Unstated::RatedTotal, row.rated_total);
    let rated_axle = ask.need(of, Unstated::RatedAxle, row.rated_axle);
    ask.extents(context);
    let stands = standing(&mut ask, of, row, machine, loads.as_ref(), &footprint);
    let tie_downs = loads.as_ref().zip(footprint.length).and_then(|(loads, length)| {
        let article =
            Article { mass: loads.total.kg(), length: length.m(), blocked_forward: false, as_heavy_machinery: false };
        tie_downs(article, &[]).ok()
    });
    Some(OnTrailer {
        trailer,
        wheelbase: machine.wheelbase,
        total: RatedLoad {
            load: loads.as_ref().zip(empty).map(|(loads, empty)| loads.total + empty),
            rated: rated_total,
            off: loads.as_ref().zip(empty).map_or(Mass::ZERO, |(loads, empty)| loads.off.total + usual_off(empty)),
        },
        forward: stands[0],
        backward: stands[1],
        rated_axle,
        deck_width,
        deck_length,
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
    let centre = ask.need(of, Unstated::CentreOfGravity, row.centre_of_gravity);
    let coupling = ask.need(of, Unstated::Coupling, row.coupling);
    let deck_rear = ask.need(of, Unstated::DeckRear, row.deck_rear);
    ask.need(of, Unstated::RatedNose, row.rated_nose);
    let shares = ask.need(of, Unstated::NoseLoad, row.nose_least.zip(row.nose_most));
    let (Some(loads), Some(empty), Some(centre), Some(coupling), Some(deck_rear), Some(length), Some(shares)) =
        (loads, row.empty_mass, centre, coupling, deck_rear, row.deck_length, shares)
    else {
        return [None, None];
    };
    let bed = TrailerBed { mass: empty.kg(), centre: centre.m(), coupler: coupling.m() };
    let deck = Stretch { low: deck_rear.m(), high: (deck_rear + length).m() };
    let total = empty + loads.total;
    // A rated nose load in kilograms narrows the range from above, down to nothing where the coupling bears less than the least.
    let most = row.rated_nose.map_or(shares.1, |rated| shares.1.min(rated / total));
    let is_open = most >= shares.0;
    [Heading::Forward, Heading::Backward].map(|heading| {
        let wheelbase = machine.wheelbase?.value.m();
        let cargo = Cargo { front: loads.front.kg(), rear: loads.rear.kg(), wheelbase, heading };
        let nose_in_range = nose_window(bed, cargo, shares.0.min(most), most).ok()??;
        let wheels = wheels_window(deck, wheelbase, heading).ok()?;
        let places_on_deck = (wheels.low <= wheels.high).then_some(wheels);
        let places = places_on_deck.filter(|_| is_open).and_then(|wheels| wheels.and(nose_in_range));
        let rear_axle = match (places, places_on_deck) {
            (Some(both), _) => f64::midpoint(both.low, both.high),
            (None, Some(wheels)) => nose_in_range.low.max(wheels.low).min(wheels.high),
            (None, None) => f64::midpoint(wheels.low, wheels.high),
        };
        // What the machine's axles are off, each by its arm about the trailer's axles, and the trailer's own mass by its.
        let front_axle = rear_axle + heading.sign() * wheelbase;
        let moment = loads.off.rear.kg() * rear_axle.abs() + loads.off.front.kg() * front_axle.abs();
        let off = (moment + usual_off(empty).kg() * centre.m().abs()) / coupling.m().abs();
        let body = footprint.extent_x.map(|(low, high)| Stretch { low: low.m(), high: high.m() });
        Some(TrailerStand {
            heading,
            nose_in_range,
            places_on_deck,
            places,
            rear_axle,
            loads: trailer_loads(bed, cargo, rear_axle).ok()?,
            nose_range: (total * shares.0, total * most),
            nose_off: Mass::from_kg(off),
            nose: nose(wheels, nose_in_range, off * coupling.m().abs() / loads.total.kg(), is_open),
            beyond: body.and_then(|body| deck_overhang(deck, body, heading, rear_axle).ok()),
        })
    })
}

/// Whether the nose load can be brought into range on the deck, where its range may lie so far off along it.
fn nose(wheels: Stretch, in_range: Stretch, off: f64, is_open: bool) -> Against {
    let meet = |by: f64| {
        let shifted = Stretch { low: in_range.low + by, high: in_range.high + by };
        wheels.and(shifted).is_some()
    };
    // Where it is not open, nothing is in range however it lies.
    match (is_open, meet(0.0), meet(-off) && meet(off)) {
        (true, true, true) => Against::Within,
        (true, here, _) if here || meet(-off) || meet(off) => Against::Near,
        _ => Against::Over,
    }
}
