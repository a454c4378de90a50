//! How the seats stand, as the findings tell of them.

use crate::build::{SeatStands, Seats};
use crate::finding::{Fact, Finding};
use crate::fit::context::Context;
use crate::fit::rule::{DriverSeatMoves, RearSeatMoves, SeatsClash, Use};
use crate::item::{FrontSeatEffect, SeatState};
use crate::quantity::Length;

/// How the seats of a judged build stand: as they were found to be in nobody's way, or as they clash.
pub(super) fn seats(context: &Context, findings: &[Finding]) -> Seats {
    let stands = |state, by: Option<Length>| SeatStands { state, by: by.unwrap_or_default() };
    let mut seats = Seats { own_is_off: !context.own_seat_is_on(), ..Seats::default() };
    let chosen = context.build.choices.seating.seat().map(|id| context.catalogue().seat(id));
    if chosen.is_some_and(|seat| seat.front_seat == FrontSeatEffect::Turns) {
        seats.driver.state = SeatState::Turned;
    }
    for finding in findings {
        if let Some(moved) = DriverSeatMoves::read(finding) {
            seats.driver = stands(moved.state, moved.by);
        } else if let Some(moved) = RearSeatMoves::read(finding) {
            seats.rear = stands(moved.state, moved.by);
        } else if let Some(clash) = SeatsClash::read(finding) {
            match clash.used {
                Use::Working => seats.driver = stands(clash.driver, None),
                Use::Driving => seats.rear = stands(clash.behind, None),
            }
        }
    }
    seats
}
