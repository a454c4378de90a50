//! What is timed natively and in wasm alike.

use fitup_core::build::{Build, Carrying, Choices, Seating};
use fitup_core::dimension::{Facing, Ramp, RampRoll, Rider, Wheels, ramp_roll};
use fitup_core::fit::Desk;
use fitup_core::plane::Point;
use fitup_core::search::Searcher;

/// A complete build with a frame, the best there is.
pub fn completed(desk: &Desk) -> Build {
    let frames = Searcher::new(desk).reachable(&Build::default()).carrying.into_iter().skip(1).flatten();
    frames.min_by_key(|reach| reach.verdict).map(|reach| reach.build).unwrap_or_default()
}

/// Builds with more and more chosen on the way to a complete one, with their names.
pub fn builds(complete: &Build) -> Vec<(&'static str, Build)> {
    let of = |machine: bool, carrying: bool, seating: bool, implement: bool| {
        Build::from(Choices {
            machine: complete.choices.machine.filter(|_| machine),
            carrying: if carrying { complete.choices.carrying } else { Carrying::Open },
            seating: if seating { complete.choices.seating } else { Seating::Open },
            implement: complete.choices.implement.filter(|_| implement),
        })
    };
    vec![
        ("nothing chosen", of(false, false, false, false)),
        ("machine chosen", of(true, false, false, false)),
        ("implement chosen", of(false, false, false, true)),
        ("machine and frame chosen", of(true, true, false, false)),
        ("all four chosen", complete.clone()),
    ]
}

/// Wheels of the machine that is driven.
pub const WHEELS: Wheels = Wheels { rear: 0.52, front: 0.34, wheelbase: 1.7 };

/// The ramp it is driven over, with a beaver tail.
pub const RAMP: Ramp = Ramp { angle: 0.26, length: 1.8, beaver_angle: 0.12, beaver_length: 0.9 };

/// Its underside: sixty points in three lines.
pub fn long_underside() -> [Vec<Point>; 3] {
    let line = |from: f64, to: f64, height: f64| -> Vec<Point> {
        let at = |k: u32| f64::from(k) / 19.0;
        (0..20).map(|k| Point::new(from + (to - from) * at(k), height + 0.05 * bump(at(k)))).collect()
    };
    [line(-1.6, -0.4, 0.35), line(-0.3, 1.6, 0.28), line(1.7, 2.4, 0.4)]
}

/// Drives it over the ramp, backward.
pub fn ramp_roll_of_a_long_underside() -> Option<RampRoll> {
    ramp_roll(&Rider { wheels: WHEELS, lines: &long_underside() }, &RAMP, Facing::Backward).ok()
}

/// A bump between 0 and 1 without a trigonometric function.
fn bump(t: f64) -> f64 {
    4.0 * t * (1.0 - t)
}
