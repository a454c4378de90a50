//! Clearance beyond joints: the placed outlines of the items against each other and the ground.

mod alike;
mod apart;
mod ground;
mod pairs;
mod swivel;

pub(super) use alike::{ALIKE, FRAME, IMPLEMENT_AND_MACHINE, IMPLEMENT_AND_SEAT, SEAT_AND_MACHINE, SWIVEL};
pub(super) use swivel::swivel;

use apart::{Close, Standing, closest};
use pairs::{Owner, PAIRS, Pair};

use crate::build::Change;
use crate::finding::{Caution, Check, Finding, Grade, Subject, Value, Verdict};
use crate::fit::context::Context;
use crate::item::{ItemRef, SeatKind, ShapeRole};

/// A frame keeps clear of the machine's tyres and off the ground.
pub(super) fn frame(context: &Context, out: &mut Vec<Finding>) {
    keep_clear(context, [Owner::Frame, Owner::Machine], out);
    ground::rule(context, out);
}

/// A seat keeps clear of cab and roll-over bar.
pub(super) fn seat_and_machine(context: &Context, out: &mut Vec<Finding>) {
    keep_clear(context, [Owner::Seat, Owner::Machine], out);
}

/// An implement keeps clear of cab, roll-over bar and tyres.
pub(super) fn implement_and_machine(context: &Context, out: &mut Vec<Finding>) {
    keep_clear(context, [Owner::Implement, Owner::Machine], out);
}

/// An implement keeps clear of the seat.
pub(super) fn implement_and_seat(context: &Context, out: &mut Vec<Finding>) {
    keep_clear(context, [Owner::Implement, Owner::Seat], out);
}

/// Parts of two items that have no business with each other keep clear, in transport, with the roll-over bar as the build leaves
/// it.
///
/// A pair that the maker lists together and whose outlines overlap is *check first*: one of the two is wrong. So is one that
/// overlaps from the side while a plan is missing, since one part may pass beside the other.
fn keep_clear(context: &Context, [rear, front]: [Owner; 2], out: &mut Vec<Finding>) {
    for pair in PAIRS.iter().filter(|pair| (pair.rear.0, pair.front.0) == (rear, front)) {
        let (Some(rear), Some(front)) = (item_of(context, pair.rear.0), item_of(context, pair.front.0)) else {
            continue;
        };
        if comes_with_it(context, pair) {
            continue;
        }
        if pair.front.1 == [ShapeRole::RollOverBar] {
            bar(context, pair, rear, front, out);
        } else if let Some(close) = look(context, pair, rear, front, pair.front.1) {
            out.push(told(context, pair, rear, front, &close));
        }
    }
}

/// Whether the two sides of a pair are one maker's piece: an implement and the seat that comes on it.
fn comes_with_it(context: &Context, pair: &Pair) -> bool {
    pair.front.0 == Owner::Seat && context.seat().is_some_and(|(_, seat)| seat.kind == SeatKind::ImplementsOwn)
}

fn item_of(context: &Context, owner: Owner) -> Option<ItemRef> {
    match owner {
        Owner::Machine => context.machine().map(|(id, _)| ItemRef::Machine(id)),
        Owner::Frame => context.frame().map(|(id, _)| ItemRef::Frame(id)),
        Owner::Seat => context.seat().map(|(id, _)| ItemRef::Seat(id)),
        Owner::Implement => context.implement().map(|(id, _)| ItemRef::Implement(id)),
    }
}

fn standing<'a>(context: &'a Context, item: ItemRef) -> Option<Standing<'a>> {
    Some(Standing { solids: context.desk.solids(item)?, at: context.placement(item)? })
}

fn look<'a>(
    context: &'a Context,
    pair: &Pair,
    rear: ItemRef,
    front: ItemRef,
    front_roles: &[ShapeRole],
) -> Option<Close<'a>> {
    closest(standing(context, rear)?, pair.rear.1, standing(context, front)?, front_roles, pair.wanted)
}

/// What an overlap comes to.
fn hit(context: &Context, rear: ItemRef, front: ItemRef, close: &Close) -> Verdict {
    let listed = context.desk.listed(rear, front).is_some();
    if close.is_certain && !listed { Verdict::WontMount } else { Verdict::CheckFirst }
}

fn told(context: &Context, pair: &Pair, rear: ItemRef, front: ItemRef, close: &Close) -> Finding {
    let is_hit = close.gap < crate::quantity::Length::ZERO;
    let (code, verdict) = if is_hit {
        ("clearance-hit", hit(context, rear, front, close))
    } else {
        ("clearance-tight", Verdict::CheckFirst)
    };
    let finding = Finding::new(code, Subject::Clearance(rear, front), verdict, Grade::Drawing)
        .with("item", Value::Item(rear))
        .with("other", Value::Item(front))
        .with("shape", Value::Label(close.a.name.clone()))
        .with("other-shape", Value::Label(close.b.name.clone()));
    let finding = if is_hit {
        finding.with("overlap", Value::Length(-close.gap))
    } else {
        finding.with("gap", Value::Length(close.gap)).with("wanted", Value::Length(pair.wanted))
    };
    if verdict == Verdict::CheckFirst {
        finding.check(Check::Look { item: rear, what: close.a.name.clone() })
    } else {
        finding
    }
}

/// The roll-over bar, up or folded.
///
/// A standing bar that an implement's transport outline overlaps may be folded for transport: work, if the folded bar is clear.
/// For a seat it has to stand, since somebody works there. A standing bar that is clear and could not be folded any more is
/// told as a fact.
fn bar(context: &Context, pair: &Pair, rear: ItemRef, front: ItemRef, out: &mut Vec<Finding>) {
    let up = look(context, pair, rear, front, &[ShapeRole::RollOverBar]);
    let down = look(context, pair, rear, front, &[ShapeRole::RollOverBarFolded]);
    let folds =
        context.machine().and_then(|(_, machine)| machine.roll_over_bar).is_some_and(|bar| bar.height_folded.is_some());
    let folded = context.build.changes.contains(&Change::FoldRollOverBar);
    let (close, bar, verdict) = match (&up, &down, folded) {
        (_, Some(down), true) => (down, "folded", hit(context, rear, front, down)),
        (Some(up), None, false) if folds && pair.rear.0 == Owner::Implement => (up, "up", Verdict::BoltsUpWithWork),
        (Some(up), _, false) => (up, "up", hit(context, rear, front, up)),
        (None, Some(down), false) if folds => (down, "stays-up", Verdict::BoltsUp),
        _ => return,
    };
    out.push(
        Finding::new("bar-in-the-way", Subject::Clearance(rear, front), verdict, Grade::Drawing)
            .with("item", Value::Item(rear))
            .with("overlap", Value::Length(-close.gap))
            .with("bar", Value::Label(bar.to_owned()))
            .caution(Caution::RollOverBarUp),
    );
}

/// A machine or implement of which nothing is outlined from the side cannot be judged.
pub(super) fn unknown(context: &Context, out: &mut Vec<Finding>) {
    let (Some(machine), Some(implement)) = (item_of(context, Owner::Machine), item_of(context, Owner::Implement))
    else {
        return;
    };
    if !context.stack.holds(implement) {
        return;
    }
    for item in [machine, implement] {
        let is_outlined = context
            .desk
            .solids(item)
            .is_some_and(|solids| solids.parts.iter().any(|part| part.role != ShapeRole::Tyre));
        if !is_outlined {
            out.push(
                Finding::new("clearance-unknown", Subject::Item(item), Verdict::CheckFirst, Grade::None)
                    .with("missing", Value::Label("outline".to_owned()))
                    .check(Check::FindOut { item, what: "outline" }),
            );
        }
    }
}
