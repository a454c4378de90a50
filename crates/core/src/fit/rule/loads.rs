//! Axle and tyre ratings, and the front axle's share.

use super::finished::AxleLoads;
use super::{Datum, Joints, QuickVerdict, Rule, Seen, View};
use crate::build::{Build, Placed, unmountable};
use crate::finding::{
    AxleName, Caution, Check, Drawn, Fact, Finding, Grade, NeededMass, Share, Subject, Unstated, Verdict,
};
use crate::fit::desk::Desk;
use crate::fit::whole::loads::{Loads, OnAxles, off_at_worst, on_axles};
use crate::fit::whole::rated_load::{Against, RatedLoad};
use crate::fit::whole::weight::LEAST_FRONT_SHARE;
use crate::item::{Axle, Body, Catalogue, Frame, Implement, ItemRef, Machine, Seat};
use crate::quantity::{Length, Mass};
use crate::{findings, words};

findings! {
    /// An axle carries more than it is rated for.
    AxleOverloaded = "axle-overloaded", Work { axle: AxleName, load: Mass, rated: Mass, over: Mass }
    /// An axle carries no more than it is rated for.
    AxleWithinRating = "axle-within-rating", Work { axle: AxleName, load: Mass, rated: Mass, left: Mass }
    /// A load is so near to a rating that what the masses may be off decides.
    LoadNearRating = "load-near-rating", Work { bearer: LoadBearer, load: Mass, rated: Mass, off: Mass }
    /// A tyre carries more than it is rated for.
    TyreOverloaded = "tyre-overloaded", Work { axle: AxleName, load: Mass, rated: Mass, over: Mass }
    /// Enough weight on the front axle to steer.
    FrontAxleHeavyEnough = "front-axle-heavy-enough", Work { share: Share, least: Share, rule: FrontRule }
    /// Too little, and the ballast that mends it.
    FrontAxleLight = "front-axle-light", Work {
        share: Share, least: Share, rule: FrontRule, ballast: NeededMass, ballast_at: Drawn,
    }
    /// So near to too little that what the masses may be off decides, and the ballast that settles it.
    FrontAxleNearLeast = "front-axle-near-least", Work {
        share: Share, least: Share, rule: FrontRule, off: Mass, ballast: NeededMass, ballast_at: Drawn,
    }
    /// Less of everything than is usual, though enough of the unladen mass; the ballast that would bring it up.
    FrontShareOfTotalLow = "front-share-of-total-low", Work {
        share: Share, least: Share, ballast: NeededMass, ballast_at: Drawn,
    }
    /// The front axle lifts off, and the ballast that mends it.
    FrontAxleLifts = "front-axle-lifts", Work { lift: NeededMass, ballast: NeededMass, ballast_at: Drawn }
    /// What the loads depend on is not stated.
    LoadsUnknown = "loads-unknown", Work { missing: Unstated, item: ItemRef }
}

words! {
    /// What bears a load.
    LoadBearer, shown as "bearer-" {
        FrontAxle = "front-axle", RearAxle = "rear-axle", FrontTyre = "front-tyre", RearTyre = "rear-tyre", Hitch = "hitch",
    }
}

words! {
    /// The rule by which the front axle's share is judged.
    FrontRule { ShareOfUnladen = "front-share-of-unladen" }
}

/// What is missing for the loads to be judged. It reads what is stated, not its value, so that few items differ before it.
///
/// That a place is not stated is said by [`LoadsWithin`].
pub(super) struct LoadsKnown;

/// Whether wheelbase, seat, axle loads and ratings of the machine are stated.
#[derive(PartialEq)]
pub struct Axles {
    loads: [Datum<()>; 4],
    rated: [Datum<()>; 4],
    /// What is on it.
    pieces: Vec<(ItemRef, Weighed)>,
}

impl<'c> View<'c, Machine> for Axles {
    fn of(desk: &'c Desk, _: ItemRef, machine: &'c Machine) -> Self {
        let Machine { front, rear, .. } = machine;
        let piece = |id| (ItemRef::Equipment(id), Weighed::of_body(&desk.catalogue().equipment(id).body));
        Self {
            pieces: machine.on.iter().map(|on| piece(on.id)).collect(),
            loads: [
                Datum::new(Unstated::Wheelbase, machine.wheelbase).stated(),
                Datum::new(Unstated::FrontAxleLoad, front.bare_load).stated(),
                Datum::new(Unstated::RearAxleLoad, rear.bare_load).stated(),
                Datum::new(Unstated::IndexPoint, machine.operator_seat).stated(),
            ],
            rated: [
                Datum::new(Unstated::RatedLoad, front.rated).stated(),
                Datum::new(Unstated::RatedLoad, rear.rated).stated(),
                Datum::new(Unstated::TyreRating, front.tyre_rated).stated(),
                Datum::new(Unstated::TyreRating, rear.tyre_rated).stated(),
            ],
        }
    }
}

/// Whether mass and centre of gravity of an item are stated.
#[derive(Clone, Copy, PartialEq)]
pub struct Weighed([Datum<()>; 2]);

impl Weighed {
    const fn of_body(body: &Body) -> Self {
        Self([
            Datum::new(Unstated::Mass, body.mass).stated(),
            Datum::new(Unstated::CentreOfGravity, body.centre_of_gravity).stated(),
        ])
    }
}

impl<'c> View<'c, Frame> for Weighed {
    fn of(_: &'c Desk, _: ItemRef, frame: &'c Frame) -> Self {
        Self::of_body(&frame.body)
    }
}

impl<'c> View<'c, Seat> for Weighed {
    fn of(_: &'c Desk, _: ItemRef, seat: &'c Seat) -> Self {
        Self::of_body(&seat.body)
    }
}

impl<'c> View<'c, Implement> for Weighed {
    fn of(_: &'c Desk, _: ItemRef, implement: &'c Implement) -> Self {
        Self::of_body(&implement.body)
    }
}

impl Rule for LoadsKnown {
    type Machine<'c> = Axles;
    type Frame<'c> = Weighed;
    type Seat<'c> = Weighed;
    type Implement<'c> = Weighed;
    type Asks<'c> = Joints<'c>;

    fn judge(seen: &Seen<'_, Self>, out: &mut Vec<Finding>) {
        let (Some(_), Some(machine)) = (&seen.implement, &seen.machine) else { return };
        let unknown = |item| {
            move |what| {
                Finding::of(LoadsUnknown { missing: what, item }, Subject::Loads, Verdict::CheckFirst, Grade::None)
                    .check(Check::FindOut { item, what })
            }
        };
        for load in machine.sees.loads {
            load.need(out, unknown(machine.item));
        }
        for &(item, weighed) in &machine.sees.pieces {
            for datum in weighed.0 {
                datum.need(out, unknown(item));
            }
        }
        for item in seen.asks.placed() {
            let weighed = match item {
                ItemRef::Machine(_) | ItemRef::Equipment(_) => continue,
                ItemRef::Frame(_) => seen.frame().map(|frame| frame.sees),
                ItemRef::Seat(_) => seen.seat.as_ref().map(|seat| seat.sees),
                ItemRef::Implement(_) => seen.implement.as_ref().map(|implement| implement.sees),
                ItemRef::Adapter(id) => Some(Weighed::of_body(&seen.adapter(id).body)),
            };
            for datum in weighed.expect("what is placed is of the build").0 {
                datum.need(out, unknown(item));
            }
        }
        if out.is_empty() {
            for rated in machine.sees.rated {
                rated.need(out, unknown(machine.item));
            }
        }
    }
}

/// Every axle within its rating, every tyre within its own, and enough weight in front to steer.
///
/// It reads all of the build: every mass differs, so that no two items are alike before it.
pub(super) struct LoadsWithin;

/// The axles of a machine, for their ratings.
#[derive(PartialEq)]
pub struct Rated<'c>([&'c Axle; 2]);

impl<'c> View<'c, Machine> for Rated<'c> {
    fn of(_: &'c Desk, _: ItemRef, machine: &'c Machine) -> Self {
        Self([&machine.front, &machine.rear])
    }
}

impl Rule for LoadsWithin {
    type Machine<'c> = Rated<'c>;
    type Frame<'c> = ();
    type Seat<'c> = ();
    type Implement<'c> = ();
    type Asks<'c> = AxleLoads;

    const QUICK: Option<QuickVerdict> = Some(verdict);

    fn judge(seen: &Seen<'_, Self>, out: &mut Vec<Finding>) {
        let (Some(_), Some(machine)) = (&seen.implement, &seen.machine) else { return };
        match &seen.asks {
            AxleLoads::NoMachine => {}
            AxleLoads::Unknown(missing) => not_stated(missing, out),
            AxleLoads::Known(loads, ballast_at) => {
                let [front, rear] = machine.sees.0;
                rating(AxleName::Front, (loads.front, loads.off.front), front, loads, out);
                rating(AxleName::Rear, (loads.rear, loads.off.rear), rear, loads, out);
                front_share(*ballast_at, loads, out);
            }
        }
    }
}

/// The worst of what [`LoadsWithin`] finds, found without words.
fn verdict(catalogue: &Catalogue, build: &Build, placed: &[Placed]) -> Verdict {
    let (Some(_), Some(machine)) = (build.choices.implement, build.choices.machine) else { return Verdict::BoltsUp };
    let Some(OnAxles { front, rear, off, .. }) = on_axles(catalogue, build, placed) else {
        let stand = placed.iter().all(|placed| placed.placement.is_some());
        let known = stand && unmountable(catalogue, build, placed).next().is_none();
        return if known { Verdict::BoltsUp } else { Verdict::CheckFirst };
    };
    let machine = catalogue.machine(machine);
    let of_loads = [(front, off.front, &machine.front), (rear, off.rear, &machine.rear)];
    let of_ratings = of_loads.map(|(load, off, axle)| [of_axle(load, off, axle), of_tyre(load, off, axle)]);
    let worst = of_ratings.iter().flatten().filter_map(RatedLoad::against).map(told).max().unwrap_or_default();
    let bare = machine.front.bare_load.zip(machine.rear.bare_load).map(|(front, rear)| front + rear);
    worst.max(bare.map_or(Verdict::BoltsUp, |bare| of_front(front, off.front, bare)))
}

/// What a load comes to.
const fn told(against: Against) -> Verdict {
    match against {
        Against::Within => Verdict::BoltsUp,
        Against::Near => Verdict::CheckFirst,
        Against::Over => Verdict::WontMount,
    }
}

/// That an item's place is not stated is said here, of anything else by [`LoadsKnown`].
fn not_stated(missing: &[(ItemRef, Unstated)], out: &mut Vec<Finding>) {
    for &(item, what) in missing.iter().filter(|(_, what)| *what == Unstated::Pose) {
        let fact = LoadsUnknown { missing: what, item };
        let finding = Finding::of(fact, Subject::Loads, Verdict::CheckFirst, Grade::None);
        out.push(finding.check(Check::FindOut { item, what }));
    }
}

fn about<F: Fact>(fact: F, verdict: Verdict) -> Finding {
    Finding::of(fact, Subject::Loads, verdict, Grade::Drawing)
}

fn rating(name: AxleName, (load, off): (Mass, Mass), axle: &Axle, loads: &Loads, out: &mut Vec<Finding>) {
    let (on_axle, on_tyre) = (of_axle(load, off, axle), of_tyre(load, off, axle));
    // What is not rated is said by [`LoadsKnown`].
    if let (Some(against), Some(rated), Some(left)) = (on_axle.against(), on_axle.rated, on_axle.left()) {
        let bearer = if name == AxleName::Front { LoadBearer::FrontAxle } else { LoadBearer::RearAxle };
        out.push(match against {
            Against::Over => about(AxleOverloaded { axle: name, load, rated, over: -left }, told(against)),
            Against::Near => near(LoadNearRating { bearer, load, rated, off }, told(against), loads),
            Against::Within => about(AxleWithinRating { axle: name, load, rated, left }, told(against)),
        });
    }
    if let (Some(against), Some(half), Some(rated), Some(left)) =
        (on_tyre.against(), on_tyre.load, on_tyre.rated, on_tyre.left())
    {
        let bearer = if name == AxleName::Front { LoadBearer::FrontTyre } else { LoadBearer::RearTyre };
        match against {
            Against::Over => {
                out.push(about(TyreOverloaded { axle: name, load: half, rated, over: -left }, told(against)));
            }
            Against::Near => {
                out.push(near(LoadNearRating { bearer, load: half, rated, off: on_tyre.off }, told(against), loads));
            }
            Against::Within => {}
        }
    }
}

/// Weighing what may be off by the most settles the most.
fn near<F: Fact>(fact: F, verdict: Verdict, loads: &Loads) -> Finding {
    let vaguest = loads.bodies.iter().filter_map(|body| Some((body.item()?, body.off)));
    let vaguest = vaguest.reduce(|known, body| if body.1 > known.1 { body } else { known });
    let finding = about(fact, verdict);
    match vaguest {
        Some((item, _)) => finding.check(Check::FindOut { item, what: Unstated::Mass }),
        None => finding,
    }
}

const fn of_axle(load: Mass, off: Mass, axle: &Axle) -> RatedLoad {
    RatedLoad { load: Some(load), rated: axle.rated, off }
}

/// Each of two tyres bears half the axle's load.
fn of_tyre(load: Mass, off: Mass, axle: &Axle) -> RatedLoad {
    of_axle(load, off, axle).of_each_tyre(axle.tyre_rated)
}

/// Whether a front axle bears enough of what the bare machine weighs.
///
/// One that lifts for certain must not be driven, and one that may lift is open; one that is too light or may be needs ballast, or
/// weighing. So a heavier implement never makes it better.
fn of_front(front: Mass, off: Mass, bare: Mass) -> Verdict {
    let wanted = bare * LEAST_FRONT_SHARE;
    match (Against::of(front.kg(), off.kg()), Against::of((front - wanted).kg(), off.kg())) {
        (Against::Over, _) => Verdict::WontMount,
        (Against::Near, _) => Verdict::CheckFirst,
        (_, Against::Over | Against::Near) => Verdict::BoltsUpWithWork,
        (_, Against::Within) => Verdict::BoltsUp,
    }
}

fn front_share(ballast_at: Length, loads: &Loads, out: &mut Vec<Finding>) {
    let wanted = loads.bare * LEAST_FRONT_SHARE;
    let (share, least, rule) = (loads.front / loads.bare, LEAST_FRONT_SHARE, FrontRule::ShareOfUnladen);
    let (verdict, off) = (of_front(loads.front, loads.off.front, loads.bare), loads.off.front);
    let finding = if verdict == Verdict::BoltsUp {
        about(FrontAxleHeavyEnough { share, least, rule }, verdict)
    } else {
        let ballast = ballast(wanted + off - loads.front, ballast_at, loads.wheelbase);
        let is_light = Against::of((loads.front - wanted).kg(), off.kg()) == Against::Over;
        match verdict {
            Verdict::WontMount => about(FrontAxleLifts { lift: -loads.front, ballast, ballast_at }, verdict),
            Verdict::BoltsUpWithWork if is_light => {
                about(FrontAxleLight { share, least, rule, ballast, ballast_at }, verdict)
            }
            _ => near(FrontAxleNearLeast { share, least, rule, off, ballast, ballast_at }, verdict, loads),
        }
    };
    out.push(finding.caution(Caution::LightFrontAxle));
    let (share, short) = (loads.front_share(), loads.total * LEAST_FRONT_SHARE - loads.front);
    if verdict == Verdict::BoltsUp && short > Mass::ZERO {
        // Ballast weighs on the sum too: front + m·at/w ≥ share·(total + m).
        let lever = ballast_at / loads.wheelbase - LEAST_FRONT_SHARE;
        let fact = FrontShareOfTotalLow { share, least, ballast: short / lever, ballast_at };
        out.push(about(fact, Verdict::BoltsUp).caution(Caution::LightFrontAxle));
    }
}

/// Mass at `at` that adds so much to the front axle, though it may be off by its own range and place: m·at/w ≥ what is wanted.
fn ballast(wanted: Mass, at: Length, wheelbase: Length) -> Mass {
    wanted * (wheelbase / off_at_worst(at))
}
