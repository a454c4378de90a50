//! Two seats in each other's place: the operator's seat and the one that somebody works from behind it.
//!
//! The machine is worked from the seat behind and driven from the operator's seat, and both have to be possible. While somebody
//! works, the operator's seat may be slid, folded or taken off; while somebody drives, the seat behind may be.

use super::outline::{DriverSeat, ImplementSeat, Outline, OwnSeatChosen, SeatBehind, Standing};
use super::{Bar, Close, Listed, Owner, Place, PlaceUnknown, Rule, Seen, Station, closest, hit, keep_clear};
use crate::build::Placement;
use crate::finding::{Check, Drawn, Finding, Grade, Subject, Unstated, Verdict};
use crate::item::{
    FrontSeatEffect, Implement, ItemRef, Machine, OperatorSeat, Point3, Seat, SeatKind, SeatMoves, SeatState, ShapeRole,
};
use crate::quantity::{Angle, Length, Work};
use crate::{findings, words};

findings! {
    /// The two seats stand in each other's place, however one of them is moved.
    SeatsClash = "seats-clash", Fit { item: ItemRef, overlap: Drawn, used: Use, driver: SeatState, behind: SeatState }
    /// The operator's seat has to stand otherwise while somebody works behind it.
    DriverSeatMoves = "driver-seat-moves", Fit { state: SeatState, by: Option<Drawn>, hours: Option<Work> }
    /// The operator's seat cannot stand so.
    DriverSeatCannot = "driver-seat-cannot", Fit { state: SeatState }
    /// The seat behind has to stand otherwise while somebody drives.
    RearSeatMoves = "rear-seat-moves", Fit { item: ItemRef, state: SeatState, by: Option<Drawn>, hours: Option<Work> }
    /// The seat behind cannot stand so.
    RearSeatCannot = "rear-seat-cannot", Fit { item: ItemRef, state: SeatState }
    /// Whether the seats are in each other's way depends on something that is not stated.
    SeatsUnknown = "seats-unknown", Fit { missing: Unstated, used: Use }
}

words! {
    /// What the machine is used for while the seats stand so.
    Use { Working = "working", Driving = "driving" }
}

/// The operator's seat keeps clear of a seat that stands behind it.
pub(in crate::fit::rule) struct SeatsClear;

impl Rule for SeatsClear {
    type Machine<'c> = DriverSeat<'c>;
    type Frame<'c> = ();
    type Seat<'c> = SeatBehind<'c>;
    type Implement<'c> = ();
    type Asks<'c> = (Place<Seat>, Listed<Machine, Seat>);

    fn judge(seen: &Seen<'_, Self>, out: &mut Vec<Finding>) {
        let (Some(machine), Some(seat)) = (&seen.machine, &seen.seat) else { return };
        // An arrangement that turns the operator's seat is that seat.
        if seat.sees.kind != SeatKind::Separate || seat.sees.asks == FrontSeatEffect::Turns {
            return;
        }
        let (place, listed) = &seen.asks;
        let Some(at) = place.at.or_said_by::<PlaceUnknown>() else { return };
        let behind = Standing { item: seat.item, outline: seat.sees.outline, at };
        let (chosen, asks) = ([seen.side.driver_seat(), seen.side.rear_seat()], seat.sees.asks);
        judge(machine.item, machine.sees, behind, seat.sees.moves, asks, chosen, listed.together, out);
    }
}

/// The operator's seat keeps clear of the implement's own seat, where that is the one that is worked from, and so do cab and
/// roll-over bar.
pub(in crate::fit::rule) struct OwnSeatClear;

impl Rule for OwnSeatClear {
    type Machine<'c> = (DriverSeat<'c>, Station<'c>);
    type Frame<'c> = ();
    type Seat<'c> = OwnSeatChosen;
    type Implement<'c> = ImplementSeat<'c>;
    type Asks<'c> = (Place<Implement>, Listed<Machine, Implement>);

    fn judge(seen: &Seen<'_, Self>, out: &mut Vec<Finding>) {
        let (Some(machine), Some(seat), Some(implement)) = (&seen.machine, &seen.seat, &seen.implement) else { return };
        if !seat.sees.is_own {
            return;
        }
        let (place, listed) = &seen.asks;
        let Some(at) = place.at.or_said_by::<PlaceUnknown>() else { return };
        let behind = Standing { item: implement.item, outline: implement.sees.outline, at };
        let (driver, station) = machine.sees;
        let (chosen, asks) = ([seen.side.driver_seat(), seen.side.rear_seat()], seat.sees.asks);
        judge(machine.item, driver, behind, implement.sees.moves, asks, chosen, listed.together, out);
        let front = super::at_origin(machine.item, station.outline);
        let bar = Bar::of(station, seen.side);
        keep_clear([Owner::Seat, Owner::Machine], [behind, front], bar, listed.together, out);
    }
}

/// A seat in one of its states.
#[derive(Clone, Copy)]
struct Stands<'c> {
    state: SeatState,
    by: Length,
    /// The outline with the roles that show it so; `None` where it is off.
    shown: Option<(Standing<'c>, &'static [ShapeRole])>,
}

/// A seat with what it can do.
#[derive(Clone, Copy)]
struct Movable<'c> {
    standing: Standing<'c>,
    moves: SeatMoves,
    /// x of the axis it turns about, if it turns.
    axis: Option<Length>,
}

impl<'c> Movable<'c> {
    /// The seat in a state; `None` if it has none such, or slides less.
    fn stand(&self, state: SeatState, wanted: Option<Length>) -> Option<Stands<'c>> {
        let at = self.standing.at;
        let moved = |by: Length, turned: bool| Placement {
            at: Point3 { x: by, y: Length::ZERO, z: Length::ZERO },
            pitch: Angle::ZERO,
            reversed: turned,
        };
        let shown = |local: Placement, roles| Some((Standing { at: local.on(&at), ..self.standing }, roles));
        let seat: &'static [ShapeRole] = &[ShapeRole::Seat];
        let (by, shown) = match state {
            SeatState::Driving => (Length::ZERO, shown(Placement::default(), seat)),
            SeatState::Turned => (Length::ZERO, shown(moved(self.axis? * 2.0, true), seat)),
            SeatState::Folded if self.moves.folds => {
                (Length::ZERO, shown(Placement::default(), &[ShapeRole::SeatFolded]))
            }
            SeatState::Slid => {
                let by = wanted.unwrap_or(self.moves.slides);
                if by <= Length::ZERO || by > self.moves.slides {
                    return None;
                }
                (by, shown(moved(by, false), seat))
            }
            SeatState::Off if self.moves.off.is_some() => (Length::ZERO, None),
            SeatState::Folded | SeatState::Off => return None,
        };
        Some(Stands { state, by, shown })
    }
}

/// What one way to stand comes to.
struct Tried<'c> {
    stands: Stands<'c>,
    verdict: Verdict,
    close: Option<Close<'c>>,
    missing: Option<Unstated>,
}

/// How far two seats are apart as they stand.
fn look<'c>(moved: &Stands<'c>, other: &Stands<'c>, is_listed: bool, settled: bool) -> Tried<'c> {
    let is_off = moved.state == SeatState::Off;
    let ready = match (is_off, settled) {
        (true, _) | (_, false) => Verdict::BoltsUpWithWork,
        (false, true) => Verdict::BoltsUp,
    };
    let tried = |verdict, close, missing| Tried { stands: *moved, verdict, close, missing };
    let (Some((a, a_roles)), Some((b, b_roles))) = (moved.shown, other.shown) else { return tried(ready, None, None) };
    let is_outlined = |of: Outline, roles: &[ShapeRole]| of.parts().any(|part| roles.contains(&part.role));
    if !is_outlined(a.outline, a_roles) || !is_outlined(b.outline, b_roles) {
        return tried(Verdict::CheckFirst, None, Some(Unstated::Outline));
    }
    match closest(a, a_roles, b, b_roles, Length::ZERO) {
        Some(close) => tried(hit(is_listed, &close), Some(close), None),
        None => tried(ready, None, None),
    }
}

/// The order in which ways out are tried: what is done by hand before what takes tools.
const WAYS: [SeatState; 3] = [SeatState::Slid, SeatState::Folded, SeatState::Off];

/// The best of the ways a seat may stand: as decided, else as asked, else as built in, else out of the way.
fn best<'c>(
    seat: &Movable<'c>,
    other: &Stands<'c>,
    decided: Option<SeatState>,
    (asked, wanted): (SeatState, Option<Length>),
    is_listed: bool,
) -> Option<Tried<'c>> {
    if let Some(state) = decided {
        let wanted = wanted.filter(|_| state == asked);
        return seat.stand(state, wanted).map(|stands| look(&stands, other, is_listed, true));
    }
    let first = seat.stand(asked, wanted).map(|stands| look(&stands, other, is_listed, true));
    // What is not outlined may well leave room: nobody takes a seat off for that.
    if first.as_ref().is_some_and(|first| first.missing.is_some()) {
        return first;
    }
    let ways = WAYS.into_iter().filter(|&way| way != asked).filter_map(|way| seat.stand(way, None));
    let all = first.into_iter().chain(ways.map(|stands| look(&stands, other, is_listed, false)));
    all.reduce(|best, next| if next.verdict < best.verdict { next } else { best })
}

#[expect(clippy::too_many_arguments, reason = "two seats with all that is known of each")]
fn judge<'c>(
    machine: ItemRef,
    driver: DriverSeat<'c>,
    behind: Standing<'c>,
    behind_moves: SeatMoves,
    asks: FrontSeatEffect,
    [decided, decided_behind]: [Option<SeatState>; 2],
    is_listed: bool,
    out: &mut Vec<Finding>,
) {
    let plain = OperatorSeat {
        index_x: Length::ZERO,
        index_z: Length::ZERO,
        turns: false,
        flips_forward: false,
        slides_forward: Length::ZERO,
        off: None,
    };
    let own = driver.own.or_taken_as(plain, "a seat of which nothing is stated is taken to stay where it is");
    let front = super::at_origin(machine, driver.outline);
    let seat = Movable { standing: front, moves: own.moves(), axis: own.turns.then_some(own.index_x) };
    let rear = Movable { standing: behind, moves: behind_moves, axis: None };
    let asked = match asks {
        FrontSeatEffect::None | FrontSeatEffect::Turns => (SeatState::Driving, None),
        FrontSeatEffect::FlipsForward => (SeatState::Folded, None),
        FrontSeatEffect::SlidesForward(by) => (SeatState::Slid, Some(by)),
        FrontSeatEffect::ComesOff => (SeatState::Off, None),
    };
    let upright = |seat: &Movable<'c>| seat.stand(SeatState::Driving, None);
    let (Some(rear_stands), Some(front_stands)) = (upright(&rear), upright(&seat)) else { return };
    let working = best(&seat, &rear_stands, decided, asked, is_listed);
    told(Use::Working, machine, behind.item, working.as_ref(), seat.moves, decided.unwrap_or(asked.0), out);
    // Where the seats share their room while somebody works, they do while somebody drives.
    let driving = best(&rear, &front_stands, decided_behind, (SeatState::Driving, None), is_listed);
    if !is_same_clash(working.as_ref(), driving.as_ref()) {
        let wanted = decided_behind.unwrap_or_default();
        told(Use::Driving, machine, behind.item, driving.as_ref(), behind_moves, wanted, out);
    }
}

/// Whether both uses find the same two seats in the same place, so that one finding tells of both.
fn is_same_clash(working: Option<&Tried>, driving: Option<&Tried>) -> bool {
    let stands = |tried: &Tried| tried.stands.state == SeatState::Driving && tried.verdict >= Verdict::CheckFirst;
    working.is_some_and(stands) && driving.is_some_and(stands)
}

fn told(
    used: Use,
    machine: ItemRef,
    behind: ItemRef,
    best: Option<&Tried>,
    moves: SeatMoves,
    wanted: SeatState,
    out: &mut Vec<Finding>,
) {
    let subject = Subject::Clearance(behind, machine);
    let moved = if used == Use::Working { machine } else { behind };
    let ask_off = Check::FindOut { item: moved, what: Unstated::SeatOff };
    let Some(Tried { stands, verdict, close, missing }) = best else {
        let (verdict, grade) = (Verdict::WontMount, Grade::Drawing);
        let finding = match used {
            // A seat that has to come off most likely does.
            Use::Working if wanted == SeatState::Off => Finding::of(
                SeatsUnknown { missing: Unstated::SeatOff, used },
                subject,
                Verdict::CheckFirst,
                Grade::None,
            )
            .check(ask_off),
            Use::Working => Finding::of(DriverSeatCannot { state: wanted }, subject, verdict, grade),
            Use::Driving => Finding::of(RearSeatCannot { item: behind, state: wanted }, subject, verdict, grade),
        };
        out.push(finding);
        return;
    };
    let states = |state| if used == Use::Working { (state, SeatState::Driving) } else { (SeatState::Driving, state) };
    let (driver, rear) = states(stands.state);
    if let Some(close) = close {
        let fact = SeatsClash { item: behind, overlap: -close.gap, used, driver, behind: rear };
        let finding = Finding::of(fact, subject, *verdict, Grade::Drawing);
        // Whether it comes off decides, where nobody says.
        out.push(if moves.off.is_none() {
            Finding { verdict: (*verdict).min(Verdict::CheckFirst), ..finding }.check(ask_off)
        } else if *verdict == Verdict::CheckFirst {
            let still = if used == Use::Working { behind } else { machine };
            let (a, b) = ((moved, close.a.name.clone()), (still, close.b.name.clone()));
            finding.check(Check::Gap { a, b, wanted: Length::ZERO })
        } else {
            finding
        });
        return;
    }
    if let Some(missing) = *missing {
        let fact = SeatsUnknown { missing, used };
        let finding = Finding::of(fact, subject, Verdict::CheckFirst, Grade::None);
        out.push(finding.check(Check::FindOut { item: moved, what: missing }));
        return;
    }
    let by = (stands.state == SeatState::Slid).then_some(stands.by);
    let hours = moves.off.filter(|_| stands.state == SeatState::Off);
    match (used, stands.state) {
        (_, SeatState::Driving) => {}
        (Use::Working, state) => {
            out.push(Finding::of(DriverSeatMoves { state, by, hours }, subject, *verdict, Grade::Drawing));
        }
        (Use::Driving, state) => {
            let fact = RearSeatMoves { item: behind, state, by, hours };
            out.push(Finding::of(fact, subject, *verdict, Grade::Drawing));
        }
    }
}
