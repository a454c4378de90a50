//! Published and worked values against what is computed: `cargo xtask proof` makes a table of them.

use std::panic::Location;

/// `got` within `tolerance` of the published value, both in one unit. `id` is the value's in the reference.
#[track_caller]
pub fn near(id: &str, got: f64, expected: f64, tolerance: f64) {
    assert!((got - expected).abs() <= tolerance, "{id}: expected {expected}, got {got}");
    tell(id, got, expected, Location::caller());
}

/// `got` within a share of the published value.
#[track_caller]
pub fn rel(id: &str, got: f64, expected: f64, share: f64) {
    assert!((got - expected).abs() <= share * expected.abs() + 1e-15, "{id}: expected {expected}, got {got}");
    tell(id, got, expected, Location::caller());
}

/// The row of the table; its source stands beside the check.
fn tell(id: &str, got: f64, expected: f64, place: &Location) {
    println!("| {id} | {expected} | {got} | {}:{} |", place.file(), place.line());
}
