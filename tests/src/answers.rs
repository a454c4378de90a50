//! The answers to many builds of the demonstration catalogue, exact to the last bit.
//!
//! Written once natively and once in wasm, the two texts have to be the same: a figure must not
//! depend on where it is worked out.

use std::fmt::Write;

use fitup_core::build::{Build, Carrying, Choices, Seating};
use fitup_core::fit::judge;
use fitup_core::item::{FrameId, ImplementId, MachineId, SeatId};
use fitup_core::search::Searcher;

use crate::stories::desk;

/// One line for each set of machine, frame (or none), seat and implement: who they are, and the
/// fingerprint of everything the answer holds; then one for what stays reachable from nothing.
///
/// # Panics
/// If the demonstration catalogue cannot be read.
pub fn answers() -> String {
    let desk = desk();
    let catalogue = desk.catalogue();
    let carrying = || (0..=catalogue.frames.len()).map(|at| at.checked_sub(1).map(FrameId::at));
    let mut lines = String::new();
    for machine in (0..catalogue.machines.len()).map(MachineId::at) {
        for frame in carrying() {
            for seat in (0..catalogue.seats.len()).map(SeatId::at) {
                for implement in (0..catalogue.implements.len()).map(ImplementId::at) {
                    let build = Build::from(Choices {
                        machine: Some(machine),
                        carrying: frame.map_or(Carrying::Hitch, Carrying::Frame),
                        seating: Seating::This(seat),
                        implement: Some(implement),
                    });
                    // Debug prints the shortest digits that give the same bits back.
                    let print = fingerprint(&format!("{:?}", judge(&desk, &build)));
                    line(&mut lines, &format!("{machine:?} {frame:?} {seat:?} {implement:?}"), print);
                }
            }
        }
    }
    line(&mut lines, "reachable", fingerprint(&format!("{:?}", Searcher::new(&desk).reachable(&Build::default()))));
    lines
}

fn line(lines: &mut String, who: &str, print: u64) {
    writeln!(lines, "{who} {print:016x}").expect("writing to memory does not fail");
}

/// FNV-1a, 64 bits.
fn fingerprint(text: &str) -> u64 {
    text.bytes().fold(0xcbf2_9ce4_8422_2325, |hash, byte| (hash ^ u64::from(byte)).wrapping_mul(0x0100_0000_01b3))
}
