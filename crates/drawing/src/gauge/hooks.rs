//! Hooks on a bar: the rack's face from the side, or both hooks from behind.

use fitup_core::item::{HookRack, HookSide};
use fitup_core::plane::Point;
use fitup_core::quantity::{Length, Stated};

use super::detail::{Detail, HOLE, Piece, ROUND, SOLID};
use crate::look::{Look, Pen};

/// What is drawn where nothing is stated, metres: usual proportions, no source.
const DIAMETER: f64 = 0.045;
const SPREAD: f64 = 0.48;
const DROP: f64 = 0.25;
const LATCH: f64 = 0.026;
const SETBACK: f64 = 0.065;

fn or(stated: Option<Stated<Length>>, usual: f64) -> f64 {
    stated.map_or(usual, |stated| stated.value.m()).clamp(usual * 0.4, usual * 2.5)
}

/// The picture of a dimension.
pub(super) fn detail(rack: &HookRack, dimension: &str) -> Detail {
    if dimension == "spread" { from_behind(rack) } else { from_the_side(rack, dimension) }
}

fn from_the_side(rack: &HookRack, dimension: &str) -> Detail {
    let (diameter, drop) = (or(rack.diameter, DIAMETER), or(rack.drop, DROP));
    let (latch, setback) = (or(rack.latch, LATCH), or(rack.setback, SETBACK));
    let mut detail = Detail::default();
    let (bar, pin) = (Point::new(-setback, 0.0), Point::new(-setback, -drop));
    let thick = 0.014;
    detail.block(SOLID, Point::new(0.0, -drop - 0.05), Point::new(thick, 0.06));
    let lug = |detail: &mut Detail, at: Point, reach: f64| {
        let (a, b) = (Point::new(at.x - reach, at.y - reach), Point::new(0.0, at.y + reach));
        detail.block(SOLID, a, b);
    };
    lug(&mut detail, pin, latch * 0.95);
    if rack.side == HookSide::Bar {
        lug(&mut detail, bar, diameter * 0.42);
        detail.round(ROUND, bar, diameter);
        detail.round(HOLE, pin, latch);
    } else {
        hook(&mut detail, bar, diameter);
        detail.round(ROUND, pin, latch);
    }
    for at in [bar, pin] {
        cross(&mut detail, at, diameter * 0.85);
    }
    match dimension {
        "diameter" => detail.across(bar, diameter),
        "latch" => detail.across(pin, latch),
        "drop" => detail.between(bar, pin, -4.0),
        "setback" => detail.between(bar, Point::new(0.0, bar.y), diameter.max(0.03) / 0.012),
        _ => {}
    }
    detail
}

/// A hook that is open below, round a bar of this diameter.
fn hook(detail: &mut Detail, at: Point, diameter: f64) {
    let (inner, outer) = (diameter / 2.0, diameter * 0.92);
    let ring = |radius: f64, turn: f64| at + Point::unit(turn) * radius;
    let half = core::f64::consts::PI;
    let steps = 16_u32;
    let turns =
        |from: f64, to: f64| (0..=steps).map(move |step| from + (to - from) * f64::from(step) / f64::from(steps));
    let mut points = vec![Point::new(at.x + outer, at.y - diameter * 0.9)];
    points.extend(turns(0.0, half).map(|turn| ring(outer, turn)));
    points.push(Point::new(at.x - outer, at.y - diameter * 0.35));
    points.push(Point::new(at.x - inner, at.y - diameter * 0.35));
    points.extend(turns(half, 0.0).map(|turn| ring(inner, turn)));
    points.push(Point::new(at.x + inner, at.y - diameter * 0.9));
    detail.pieces.push(Piece::Outline(SOLID, points));
}

fn from_behind(rack: &HookRack) -> Detail {
    let (spread, diameter) = (or(rack.spread, SPREAD), or(rack.diameter, DIAMETER));
    let (half, high) = (spread / 2.0, or(rack.drop, DROP));
    let mut detail = Detail::default();
    let thick = 0.02;
    let side = |x: f64, y: f64| Point::new(x, y);
    if rack.side == HookSide::Bar {
        // Over the ends of the bar.
        detail.block(SOLID, side(-half * 0.7, -high), side(half * 0.7, 0.02));
        detail.block(ROUND, side(-half, -diameter / 2.0), side(half, diameter / 2.0));
        detail.between(side(-half, diameter / 2.0), side(half, diameter / 2.0), 1.8);
    } else {
        detail.block(SOLID, side(-half * 0.8, -high), side(half * 0.8, -0.03));
        for x in [-half, half] {
            detail.block(SOLID, side(x - thick, -high * 0.7), side(x + thick, diameter));
            detail.pieces.push(Piece::Line(Look::line(Pen::Centre), side(x, -high * 0.8), side(x, diameter * 1.5)));
        }
        detail.between(side(-half, diameter), side(half, diameter), 1.8);
    }
    detail
}

/// The centre lines of something round.
pub(super) fn cross(detail: &mut Detail, at: Point, reach: f64) {
    let pen = Look::line(Pen::Centre);
    detail.pieces.push(Piece::Line(pen, at - Point::new(reach, 0.0), at + Point::new(reach, 0.0)));
    detail.pieces.push(Piece::Line(pen, at - Point::new(0.0, reach), at + Point::new(0.0, reach)));
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_rack_of_which_nothing_is_stated_is_drawn_all_the_same() {
        for side in [HookSide::Bar, HookSide::Hook] {
            for dimension in ["diameter", "spread", "drop", "latch", "setback"] {
                let taken = detail(&HookRack::of(side), dimension).taken.expect("every dimension has its place");
                let length = taken.from.distance(taken.to);
                assert!(length > 0.01 && length.is_finite(), "{side:?} {dimension}: {length}");
            }
        }
    }

    #[test]
    fn a_length_out_of_all_proportion_does_not_make_the_rest_vanish() {
        let wide = Some(Stated::drawn(Length::from_m(90.0)));
        let shown = detail(&HookRack { spread: wide, ..HookRack::of(HookSide::Hook) }, "spread");
        assert!(shown.taken.is_some_and(|taken| taken.from.distance(taken.to) < 2.0));
    }
}
