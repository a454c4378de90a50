//! Clearance beyond joints: the placed outlines of the items against each other and the ground.

mod apart;
pub(super) mod equipment;
pub(super) mod ground;
mod outline;
mod pairs;
pub(super) mod seats;
pub(super) mod swivel;

pub(crate) use equipment::EquipmentInTheWay;
pub(super) use equipment::{EquipmentClearOfFrame, EquipmentClearOfImplement};
pub(crate) use seats::{DriverSeatMoves, RearSeatMoves, SeatsClash, Use};
pub(super) use seats::{OwnSeatClear, SeatsClear};
pub(super) use swivel::Swivel;

use super::place::PlaceUnknown;
use super::{Adapters, Datum, Joints, Listed, Own, Place, Rule, Seen, View};
use apart::{Close, closest};
use outline::{
    IsOutlined, MachineIsOutlined, Outline, SeatOutline, SeatShape, Standing, Station, StationAndTyres, Tyres,
};
use pairs::{Owner, PAIRS, Pair};

use crate::build::{Change, Placement, Side};
use crate::finding::{Caution, Check, Drawn, Either, Finding, Grade, Name, Subject, Unstated, Verdict};
use crate::fit::desk::Desk;
use crate::fit::desk::solid::Solid;
use crate::item::{Frame, Implement, ItemRef, Machine, Seat, ShapeRole};
use crate::quantity::Length;
use crate::{findings, words};

findings! {
    /// Two parts that have no business with each other overlap.
    ClearanceHit = "clearance-hit", Fit {
        item: ItemRef, other: ItemRef, shape: ShapeName, other_shape: ShapeName, overlap: Drawn,
    }
    /// They are nearer to each other than is wanted.
    ClearanceTight = "clearance-tight", Fit {
        item: ItemRef, other: ItemRef, shape: ShapeName, other_shape: ShapeName, gap: Drawn, wanted: Drawn,
    }
    /// Nothing of an item is outlined from the side.
    ClearanceUnknown = "clearance-unknown", Fit { missing: Unstated }
    /// The roll-over bar and an item are in each other's way.
    BarInTheWay = "bar-in-the-way", Fit { item: ItemRef, overlap: Drawn, bar: BarStands }
}

/// A shape's name in the catalogue, or the tyre that the core makes of an axle.
type ShapeName = Either<Tyre, Name>;

words! {
    /// A tyre that no row outlines.
    Tyre, shown as "shape-" { Front = "front-tyre", Rear = "rear-tyre" }
}

words! {
    /// How the roll-over bar stands, or that it cannot be folded any more.
    BarStands { Up = "up", Folded = "folded", StaysUp = "stays-up" }
}

/// A frame keeps clear of the machine's tyres and off the ground.
pub(super) struct FrameClear;

/// All that is outlined of a frame, and its underside.
#[derive(PartialEq)]
pub struct FrameShape<'c> {
    outline: Outline<'c>,
    underside: &'c [Vec<(Length, Length)>],
}

impl<'c> View<'c, Frame> for FrameShape<'c> {
    fn of(desk: &'c Desk, item: ItemRef, frame: &'c Frame) -> Self {
        Self { outline: Outline::whole(desk.solids(item)), underside: &frame.body.underside }
    }
}

impl Rule for FrameClear {
    type Machine<'c> = Tyres<'c>;
    type Frame<'c> = Own<FrameShape<'c>>;
    type Seat<'c> = ();
    type Implement<'c> = ();
    type Asks<'c> = (Place<Frame>, Listed<Machine, Frame>);

    fn judge(seen: &Seen<'_, Self>, out: &mut Vec<Finding>) {
        let (Some(machine), Some(frame)) = (&seen.machine, seen.frame()) else { return };
        let (place, listed) = &seen.asks;
        let Some(at) = place.at.or_said_by::<PlaceUnknown>() else { return };
        let rear = Standing { item: frame.item, outline: frame.sees.sees.outline, at };
        keep_clear(
            [Owner::Frame, Owner::Machine],
            [rear, at_origin(machine.item, machine.sees.0)],
            Bar::NONE,
            listed.together,
            out,
        );
        ground::judge(rear, frame.sees.sees.underside, out);
    }
}

/// A seat keeps clear of cab and roll-over bar.
pub(super) struct SeatClearOfMachine;

impl Rule for SeatClearOfMachine {
    type Machine<'c> = Station<'c>;
    type Frame<'c> = ();
    type Seat<'c> = SeatOutline<'c>;
    type Implement<'c> = ();
    type Asks<'c> = (Place<Seat>, Listed<Machine, Seat>);

    fn judge(seen: &Seen<'_, Self>, out: &mut Vec<Finding>) {
        let (Some(machine), Some(seat)) = (&seen.machine, &seen.seat) else { return };
        let (place, listed) = &seen.asks;
        let Some(at) = place.at.or_said_by::<PlaceUnknown>() else { return };
        let rear = Standing { item: seat.item, outline: seat.sees.0, at };
        let bar = Bar::of(machine.sees, seen.side);
        keep_clear(
            [Owner::Seat, Owner::Machine],
            [rear, at_origin(machine.item, machine.sees.outline)],
            bar,
            listed.together,
            out,
        );
    }
}

/// An implement keeps clear of cab, roll-over bar and tyres.
pub(super) struct ImplementClearOfMachine;

impl Rule for ImplementClearOfMachine {
    type Machine<'c> = StationAndTyres<'c>;
    type Frame<'c> = ();
    type Seat<'c> = ();
    type Implement<'c> = Own<Outline<'c>>;
    type Asks<'c> = (Place<Implement>, Listed<Machine, Implement>);

    fn judge(seen: &Seen<'_, Self>, out: &mut Vec<Finding>) {
        let (Some(machine), Some(implement)) = (&seen.machine, &seen.implement) else { return };
        let (place, listed) = &seen.asks;
        let Some(at) = place.at.or_said_by::<PlaceUnknown>() else { return };
        let rear = Standing { item: implement.item, outline: implement.sees.sees, at };
        let station = machine.sees.0;
        let bar = Bar::of(station, seen.side);
        keep_clear(
            [Owner::Implement, Owner::Machine],
            [rear, at_origin(machine.item, station.outline)],
            bar,
            listed.together,
            out,
        );
    }
}

/// An implement keeps clear of the seat, but for a seat that comes on it: the two are one maker's piece.
pub(super) struct ImplementClearOfSeat;

impl Rule for ImplementClearOfSeat {
    type Machine<'c> = ();
    type Frame<'c> = ();
    type Seat<'c> = SeatShape<'c>;
    type Implement<'c> = Own<Outline<'c>>;
    type Asks<'c> = (Place<Seat>, Place<Implement>, Listed<Seat, Implement>);

    fn judge(seen: &Seen<'_, Self>, out: &mut Vec<Finding>) {
        let (Some(seat), Some(implement)) = (&seen.seat, &seen.implement) else { return };
        if seat.sees.is_implements_own {
            return;
        }
        let (of_seat, of_implement, listed) = &seen.asks;
        let Some((of_seat, of_implement)) = of_seat.at.and(of_implement.at).or_said_by::<PlaceUnknown>() else {
            return;
        };
        let rear = Standing { item: implement.item, outline: implement.sees.sees, at: of_implement };
        let front = Standing { item: seat.item, outline: seat.sees.outline, at: of_seat };
        keep_clear([Owner::Implement, Owner::Seat], [rear, front], Bar::NONE, listed.together, out);
    }
}

/// The machine stands at the origin.
fn at_origin(item: ItemRef, outline: Outline) -> Standing {
    Standing { item, outline, at: Placement::default() }
}

/// What may be done with the roll-over bar.
#[derive(Clone, Copy)]
struct Bar {
    /// Whether it can be folded.
    folds: bool,
    /// Whether the build folds it.
    folded: bool,
}

impl Bar {
    /// Where no bar is looked at.
    const NONE: Self = Self { folds: false, folded: false };

    fn of(station: Station, side: &Side) -> Self {
        Self { folds: station.folds, folded: side.changes.contains(&Change::FoldRollOverBar) }
    }
}

/// Parts of two items that have no business with each other keep clear, in transport, with the roll-over bar as the build leaves
/// it.
///
/// A pair that the maker lists together and whose outlines overlap is *check first*: one of the two is wrong. So is one that
/// overlaps from the side while a plan is missing, since one part may pass beside the other.
fn keep_clear(owners: [Owner; 2], standing: [Standing; 2], of_bar: Bar, is_listed: bool, out: &mut Vec<Finding>) {
    let [rear, front] = standing;
    for pair in PAIRS.iter().filter(|pair| [pair.rear.0, pair.front.0] == owners) {
        if pair.front.1 == [ShapeRole::RollOverBar] {
            bar(pair, standing, of_bar, is_listed, out);
        } else if let Some(close) = look(pair, rear, front, pair.front.1) {
            out.push(told(pair, rear.item, front.item, is_listed, &close));
        }
    }
}

fn look<'c>(pair: &Pair, rear: Standing<'c>, front: Standing<'c>, front_roles: &[ShapeRole]) -> Option<Close<'c>> {
    closest(rear, pair.rear.1, front, front_roles, pair.wanted)
}

/// How far two outlines may overlap on paper and still pass in the yard: each drawn to ±4 mm, as weldments of 1 to 2 m are made
/// (ISO 13920-B), and simplified.
const OVERLAP_OFF: Length = Length::from_mm(10.0);

/// What an overlap comes to.
fn hit(is_listed: bool, close: &Close) -> Verdict {
    if close.is_certain && !is_listed && -close.gap > OVERLAP_OFF { Verdict::WontMount } else { Verdict::CheckFirst }
}

fn told(pair: &Pair, rear: ItemRef, front: ItemRef, is_listed: bool, close: &Close) -> Finding {
    let (item, other, subject) = (rear, front, Subject::Clearance(rear, front));
    let [shape, other_shape] = [close.a, close.b].map(shape_name);
    let (finding, verdict) = if close.gap < crate::quantity::Length::ZERO {
        let verdict = hit(is_listed, close);
        let fact = ClearanceHit { item, other, shape, other_shape, overlap: -close.gap };
        (Finding::of(fact, subject, verdict, Grade::Drawing), verdict)
    } else {
        let fact = ClearanceTight { item, other, shape, other_shape, gap: close.gap, wanted: pair.wanted };
        (Finding::of(fact, subject, Verdict::CheckFirst, Grade::Drawing), Verdict::CheckFirst)
    };
    if verdict == Verdict::CheckFirst {
        let (a, b) = ((rear, close.a.name.clone()), (front, close.b.name.clone()));
        finding.check(Check::Gap { a, b, wanted: pair.wanted })
    } else {
        finding
    }
}

/// A tyre that the core makes of an axle has a coded name, any other shape its own.
fn shape_name(solid: &Solid) -> Either<Tyre, String> {
    match solid.name.as_str() {
        "front-tyre" => Either::A(Tyre::Front),
        "rear-tyre" => Either::A(Tyre::Rear),
        name => Either::B(name.to_owned()),
    }
}

/// The roll-over bar, up or folded.
///
/// A standing bar that an implement's transport outline overlaps may be folded for transport: work, if the folded bar is clear.
/// For a seat it has to stand, since somebody works there. A standing bar that is clear and could not be folded any more is
/// told as a fact.
fn bar(pair: &Pair, [rear, front]: [Standing; 2], bar: Bar, is_listed: bool, out: &mut Vec<Finding>) {
    let up = look(pair, rear, front, &[ShapeRole::RollOverBar]);
    let down = look(pair, rear, front, &[ShapeRole::RollOverBarFolded]);
    let Bar { folds, folded } = bar;
    let (close, bar, verdict) = match (&up, &down, folded) {
        (_, Some(down), true) => (down, BarStands::Folded, hit(is_listed, down)),
        (Some(up), None, false) if folds && pair.rear.0 == Owner::Implement => {
            (up, BarStands::Up, Verdict::BoltsUpWithWork)
        }
        (Some(up), _, false) => (up, BarStands::Up, hit(is_listed, up)),
        (None, Some(down), false) if folds => (down, BarStands::StaysUp, Verdict::BoltsUp),
        _ => return,
    };
    out.push(
        Finding::of(
            BarInTheWay { item: rear.item, overlap: -close.gap, bar },
            Subject::Clearance(rear.item, front.item),
            verdict,
            Grade::Drawing,
        )
        .caution(Caution::RollOverBarUp),
    );
}

/// An item of which nothing is outlined from the side cannot be judged, nor can tyres that are neither drawn nor measured.
pub(super) struct OutlinesKnown;

impl Rule for OutlinesKnown {
    type Machine<'c> = MachineIsOutlined;
    type Frame<'c> = IsOutlined;
    type Seat<'c> = IsOutlined;
    type Implement<'c> = IsOutlined;
    type Asks<'c> = Joints<'c>;

    fn judge(seen: &Seen<'_, Self>, out: &mut Vec<Finding>) {
        let Some(machine) = &seen.machine else { return };
        let frame = seen.frame().map(|frame| (frame.item, frame.sees.0));
        let seat = seen.seat.as_ref().map(|seat| (seat.item, seat.sees.0));
        let implement = seen.implement.as_ref().map(|implement| (implement.item, implement.sees.0));
        let of_items: Vec<_> = [frame, seat, implement].into_iter().flatten().collect();
        let of_items: Vec<_> = of_items.into_iter().filter(|(item, _)| seen.asks.holds(*item)).collect();
        if of_items.is_empty() {
            return;
        }
        let of_machine = [(machine.item, machine.sees.body), (machine.item, machine.sees.tyres)];
        for (item, outline) in of_machine.into_iter().chain(of_items) {
            outline.need(out, |what| {
                let fact = ClearanceUnknown { missing: what };
                Finding::of(fact, Subject::Item(item), Verdict::CheckFirst, Grade::None)
                    .check(Check::FindOut { item, what })
            });
        }
    }
}
