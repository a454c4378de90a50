//! The build's trailer: masses, nose load, room on the deck, tie-downs.

use super::finished::OnDeck;
use super::missing::missing;
use super::ramp::LoadingUnknown;
use super::{Rule, Seen};
use crate::dimension::{Facing, Heading};
use crate::finding::{Caution, Count, Drawn, Fact, Finding, Grade, NeededMass, Subject, Verdict};
use crate::fit::whole::near::{drawn_off, taped_off};
use crate::fit::whole::rated_load::{Against, RatedLoad};
use crate::fit::whole::{OVERHANG_LIMITS, OnTrailer, TrailerStand, WIDTH_LIMITS, stand_after};
use crate::quantity::{Length, Mass};
use crate::{findings, words};

findings! {
    /// The trailer is within a rating.
    TrailerCarries = "trailer-carries", Travel { left: Mass, rating: Rating, load: Mass, rated: Mass }
    /// It is beyond it.
    TrailerOverloaded = "trailer-overloaded", Travel { over: Mass, rating: Rating, load: Mass, rated: Mass }
    /// A load is so near to a rating that what the masses may be off decides.
    TrailerLoadNear = "trailer-load-near", Travel { rating: Rating, load: Mass, rated: Mass, off: Mass }
    /// The machine is so nearly as wide as the deck, or its wheelbase as long, that measuring decides.
    DeckClose = "deck-close", Travel { way: DeckWay, size: Drawn, deck: Drawn, off: Drawn }
    /// The machine is wider than the deck.
    TrailerNarrow = "trailer-narrow", Travel { width: Drawn, deck: Drawn, beyond: Drawn }
    /// The wheelbase is longer than the deck.
    TrailerShort = "trailer-short", Travel { wheelbase: Drawn, deck: Drawn }
    /// The machine can stand where the nose load is in range.
    NoseLoadInRange = "nose-load-in-range", Travel {
        from: Drawn, to: Drawn, nose: Mass, least: Mass, most: Mass, heading: Heading,
    }
    /// Nowhere on the deck is it in range.
    NoseLoadOutOfRange = "nose-load-out-of-range", Travel { nose: Mass, least: Mass, most: Mass, heading: Heading }
    /// It depends on what the masses may be off whether it is in range anywhere.
    NoseLoadNear = "nose-load-near", Travel { nose: Mass, least: Mass, most: Mass, off: Mass, heading: Heading }
    /// The coupling may carry less than the least nose load.
    CouplingWeak = "coupling-weak", Travel { least: Mass, most: Mass }
    /// The load is wider than a road limit.
    LoadWide = "load-wide", Travel { width: Drawn, most: Drawn, beyond: Drawn, limit: WidthRule }
    /// The load reaches farther behind the trailer than a road limit.
    LoadLong = "load-long", Travel { overhang: Drawn, most: Drawn, beyond: Drawn, limit: LengthRule }
    /// The tie-downs that are needed.
    TieDownsNeeded = "tie-downs-needed", Travel { count: Count, together: NeededMass, each: NeededMass }
}

words! {
    /// Which size of the deck.
    DeckWay { Width = "width", Length = "length" }
}

words! {
    /// A rating of a trailer.
    Rating { Total = "total", Axle = "axle" }
}

words! {
    /// A limit of width on the road.
    WidthRule, shown as "limit-" { Eu = "eu-96-53", Us = "us-23-cfr-658" }
}

words! {
    /// A limit of what reaches behind a vehicle on the road.
    LengthRule, shown as "limit-" { De = "de-stvzo-22", Us = "us-49-cfr-393-87" }
}

words! {
    for Heading { Forward = "forward", Backward = "backward" }
}

/// Trailer and machine have to be within the trailer's rating, and the machine has to go on its deck. What depends on the way it
/// stands is judged with the way up: [`standing`].
pub(super) struct OnTheTrailer;

impl Rule for OnTheTrailer {
    type Machine<'c> = ();
    type Frame<'c> = ();
    type Seat<'c> = ();
    type Implement<'c> = ();
    type Asks<'c> = OnDeck;

    fn judge(seen: &Seen<'_, Self>, out: &mut Vec<Finding>) {
        let Some(on) = &seen.asks.0 else { return };
        missing(seen, |missing, item| LoadingUnknown { missing, item }, Subject::Loading, &on.missing, out);
        rated(Rating::Total, on.total, out);
        room(on, out);
        wide(on, out);
        tie_down(on, out);
    }
}

/// What the machine puts on axles and coupler, and how far it reaches out, as it stands after driving up `way`.
pub(super) fn standing(on: &OnTrailer, way: Facing, out: &mut Vec<Finding>) {
    let stand = stand_after(on, way);
    rated(Rating::Axle, on.axles(stand), out);
    if let Some(stand) = stand {
        nose(on, stand, out);
        long(stand, out);
    }
}

fn about<F: Fact>(fact: F, verdict: Verdict) -> Finding {
    Finding::of(fact, Subject::Loading, verdict, Grade::Drawing)
}

fn rated(rating: Rating, carried: RatedLoad, out: &mut Vec<Finding>) {
    let (Some(load), Some(rated), Some(left)) = (carried.load, carried.rated, carried.left()) else { return };
    let finding = if carried.is_over() {
        about(TrailerOverloaded { over: -left, rating, load, rated }, Verdict::WontMount)
    } else if carried.is_near() {
        about(TrailerLoadNear { rating, load, rated, off: carried.off }, Verdict::CheckFirst)
    } else {
        about(TrailerCarries { left, rating, load, rated }, Verdict::BoltsUp)
    };
    out.push(finding.caution(Caution::RoadLimits));
}

fn room(on: &OnTrailer, out: &mut Vec<Finding>) {
    if let (Some(room), Some(deck)) = (on.side_room, on.deck_width) {
        let width = deck - room;
        let off = drawn_off(width) + taped_off(deck);
        match Against::of(room.m(), off.m()) {
            Against::Over => out.push(about(TrailerNarrow { width, deck, beyond: -room }, Verdict::WontMount)),
            Against::Near => {
                out.push(about(DeckClose { way: DeckWay::Width, size: width, deck, off }, Verdict::CheckFirst));
            }
            Against::Within => {}
        }
    }
    let Some((wheelbase, deck)) = on.wheelbase.zip(on.deck_length) else { return };
    let off = wheelbase.plus_minus.unwrap_or_else(|| drawn_off(wheelbase.value)) + taped_off(deck);
    let wheelbase = wheelbase.value;
    match Against::of((deck - wheelbase).m(), off.m()) {
        Against::Over => out.push(about(TrailerShort { wheelbase, deck }, Verdict::WontMount)),
        Against::Near => {
            out.push(about(DeckClose { way: DeckWay::Length, size: wheelbase, deck, off }, Verdict::CheckFirst));
        }
        Against::Within => {}
    }
}

fn nose(on: &OnTrailer, stand: &TrailerStand, out: &mut Vec<Finding>) {
    if stand.places_on_deck.is_none() {
        return;
    }
    let (least, most) = stand.nose_range;
    let (nose, off, heading) = (stand.nose_load(), stand.nose_off, stand.heading);
    // The least nose load is a share of all masses, and off as they are.
    let of_least = on.total.load.map_or(Mass::ZERO, |total| on.total.off * (least / total));
    match Against::of((most - least).kg(), of_least.kg()) {
        Against::Over => {
            out.push(about(CouplingWeak { least, most }, Verdict::WontMount).caution(Caution::RoadLimits));
            return;
        }
        Against::Near => {
            let fact = NoseLoadNear { nose, least, most, off: of_least, heading };
            out.push(about(fact, Verdict::CheckFirst).caution(Caution::RoadLimits));
            return;
        }
        Against::Within => {}
    }
    let finding = match (stand.nose, stand.places) {
        (Against::Within, Some(places)) => {
            let [from, to] = [places.low, places.high].map(|place| behind_front(on, stand, place));
            about(NoseLoadInRange { from, to, nose, least, most, heading }, Verdict::BoltsUp)
        }
        (Against::Over, _) => about(NoseLoadOutOfRange { nose, least, most, heading }, Verdict::WontMount),
        _ => about(NoseLoadNear { nose, least, most, off, heading }, Verdict::CheckFirst),
    };
    out.push(finding.caution(Caution::RoadLimits));
}

/// Whether a load may be wider than a limit is for the road's authority to say.
fn wide(on: &OnTrailer, out: &mut Vec<Finding>) {
    let Some(width) = on.width else { return };
    for limit in WIDTH_LIMITS.iter().filter(|limit| width > limit.most) {
        let Some(rule) = [WidthRule::Eu, WidthRule::Us].into_iter().find(|rule| rule.word() == limit.rule) else {
            continue;
        };
        let fact = LoadWide { width, most: limit.most, beyond: width - limit.most, limit: rule };
        out.push(about(fact, Verdict::CheckFirst).caution(Caution::RoadLimits));
    }
}

/// How far the load reaches behind the trailer, where it stands best.
fn long(stand: &TrailerStand, out: &mut Vec<Finding>) {
    let Some((overhang, _)) = stand.beyond else { return };
    let overhang = Length::from_m(overhang);
    for limit in OVERHANG_LIMITS.iter().filter(|limit| overhang > limit.most) {
        let Some(rule) = [LengthRule::De, LengthRule::Us].into_iter().find(|rule| rule.word() == limit.rule) else {
            continue;
        };
        let fact = LoadLong { overhang, most: limit.most, beyond: overhang - limit.most, limit: rule };
        out.push(about(fact, Verdict::CheckFirst).caution(Caution::RoadLimits));
    }
}

fn tie_down(on: &OnTrailer, out: &mut Vec<Finding>) {
    let (Some(ties), Some(each)) = (on.tie_downs, on.each_tie_down()) else { return };
    let together = Mass::from_kg(ties.least_aggregate);
    let fact = TieDownsNeeded { count: ties.needed as usize, together, each };
    out.push(about(fact, Verdict::BoltsUp).caution(Caution::TieDown));
}

/// A place of the rear axle as it is measured on the deck: forward of the deck's rear edge.
fn behind_front(on: &OnTrailer, stand: &TrailerStand, place: f64) -> Length {
    let rear = stand.places_on_deck.map_or(0.0, |deck| match stand.heading {
        Heading::Forward => deck.low,
        Heading::Backward => deck.low - on.wheelbase.map_or(0.0, |wheelbase| wheelbase.value.m()),
    });
    Length::from_m(place - rear)
}
