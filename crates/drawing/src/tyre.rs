//! Wheels drawn from the axles' figures: lugged tyre standing flat on the ground, rim, hub and bolts.

use fitup_core::item::{Axle, Machine, View};
use fitup_core::plane::Point;

use crate::ink;
use crate::look::{Look, Pen, Tone};
use crate::outline::Weight;
use crate::scene::Node;
use crate::sheet::{Extent, Mapping};

/// A pair of wheels of one axle, metres.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Wheel {
    pub x: f64,
    /// Height of the centre: the static loaded radius.
    pub loaded: f64,
    /// Radius without load.
    pub radius: f64,
    /// Width of the tyre, if it is known.
    pub width: Option<f64>,
    /// Track, if it is known.
    pub track: Option<f64>,
}

/// The wheels whose place and size are known.
pub(crate) fn wheels(machine: &Machine) -> Vec<Wheel> {
    let axles = [(Some(0.0), machine.rear), (machine.wheelbase.map(|w| w.value.m()), machine.front)];
    // Front wheels first: from behind the rear ones hide them.
    axles.into_iter().rev().filter_map(|(x, axle)| wheel(x?, &axle)).collect()
}

fn wheel(x: f64, axle: &Axle) -> Option<Wheel> {
    let loaded = axle.static_loaded_radius.or(axle.overall_radius)?.m();
    let radius = axle.overall_radius.map_or(loaded, fitup_core::quantity::Length::m);
    let sound = x.is_finite() && loaded.is_finite() && loaded > 0.0 && radius.is_finite() && radius >= loaded;
    sound.then_some(Wheel {
        x,
        loaded,
        radius,
        width: axle.tyre_width.map(fitup_core::quantity::Length::m),
        track: axle.track.map(fitup_core::quantity::Length::m),
    })
}

impl Wheel {
    /// What the pair takes up in a view.
    pub fn extent(&self, view: View) -> Extent {
        let mut extent = Extent::NONE;
        let half = self.track.zip(self.width).map(|(track, width)| f64::midpoint(track, width));
        let (low, high) = (0.0, self.loaded + self.radius);
        match (view, half) {
            (View::Side, _) => {
                extent.take(Point::new(self.x - self.radius, low));
                extent.take(Point::new(self.x + self.radius, high));
            }
            (View::Plan, Some(half)) => {
                extent.take(Point::new(self.x - self.radius, -half));
                extent.take(Point::new(self.x + self.radius, half));
            }
            (View::Rear, Some(half)) => {
                extent.take(Point::new(-half, low));
                extent.take(Point::new(half, high));
            }
            (View::Plan | View::Rear, None) => {}
        }
        extent
    }
}

/// The wheels of an axle in a view.
pub(crate) fn draw(wheel: &Wheel, view: View, map: &Mapping, weight: Weight) -> Vec<Node> {
    match view {
        View::Side => side(wheel, map, weight),
        View::Plan | View::Rear => across(wheel, view, map, weight),
    }
}

/// The wheels of an axle as pale outlines.
pub(crate) fn ghost(wheel: &Wheel, view: View, map: &Mapping) -> Vec<Node> {
    let look = Look::line(Pen::Ghost);
    match view {
        View::Side => {
            let points: Vec<Point> = ring(wheel, wheel.radius, 96).into_iter().map(|p| map.at(p)).collect();
            vec![ink::polygon(look, &points)]
        }
        View::Plan | View::Rear => {
            treads(wheel, view).into_iter().map(|b| ink::polygon(look, &corners(&b, map))).collect()
        }
    }
}

/// Share of the radius that a lug stands out, and where its bar ends on the shoulder. By eye.
const LUG: f64 = 0.052;
const SHOULDER: f64 = 0.80;
/// Distance between lugs along the tread, metres. By eye: agricultural treads of this size.
const PITCH: f64 = 0.125;

fn side(wheel: &Wheel, map: &Mapping, weight: Weight) -> Vec<Node> {
    let outline = if weight == Weight::Full { Pen::Outline } else { Pen::Thin };
    let base = wheel.radius * (1.0 - LUG);
    let points = |radius: f64| -> Vec<Point> { ring(wheel, radius, 96).into_iter().map(|p| map.at(p)).collect() };
    let mut nodes = lugs(wheel, map);
    nodes.push(ink::polygon(Look::new(outline, Tone::Tyre), &points(base)));
    nodes.extend(bars(wheel, map));
    let centre = map.at(Point::new(wheel.x, wheel.loaded));
    let rim = map.length(rim_radius(wheel));
    nodes.push(ink::circle(Look::line(Pen::Thin), centre, map.length(wheel.radius * SHOULDER * 0.93)));
    nodes.push(ink::circle(Look::new(outline, Tone::Rim), centre, rim));
    nodes.push(ink::circle(Look::line(Pen::Thin), centre, rim * 0.88));
    nodes.push(ink::circle(Look::line(Pen::Thin), centre, rim * 0.62));
    nodes.push(ink::circle(Look::new(Pen::Thin, Tone::Paper), centre, rim * 0.27));
    if weight == Weight::Full {
        for i in 0..6 {
            let on = Point::unit(core::f64::consts::FRAC_PI_3 * f64::from(i) + 0.26) * (rim * 0.44);
            nodes.push(ink::circle(Look::new(Pen::Thin, Tone::Ink), centre + on, rim * 0.045));
        }
        let reach = rim * 1.16;
        for (a, b) in
            [(Point::new(reach, 0.0), Point::new(-reach, 0.0)), (Point::new(0.0, reach), Point::new(0.0, -reach))]
        {
            nodes.push(ink::line(Look::line(Pen::Centre), centre + a, centre + b));
        }
    }
    nodes
}

/// The rim: the section of these tyres is some four fifths of their width high. By eye.
fn rim_radius(wheel: &Wheel) -> f64 {
    let section = wheel.width.map_or(wheel.radius * 0.42, |width| width * 0.78);
    (wheel.radius - section).max(wheel.radius * 0.42).min(wheel.radius * 0.66)
}

/// A circle about the wheel's centre, flattened where the ground cuts it.
fn ring(wheel: &Wheel, radius: f64, count: u32) -> Vec<Point> {
    (0..count)
        .map(|i| {
            let angle = core::f64::consts::TAU * f64::from(i) / f64::from(count);
            grounded(wheel, radius, angle)
        })
        .collect()
}

fn grounded(wheel: &Wheel, radius: f64, angle: f64) -> Point {
    let unit = Point::unit(angle);
    Point::new(wheel.x + radius * unit.x, (wheel.loaded + radius * unit.y).max(0.0))
}

fn lug_count(wheel: &Wheel) -> u32 {
    bars_along(core::f64::consts::TAU * wheel.radius, 14, 36)
}

/// How many bars a length of tread has: the pitch nearest to [`PITCH`] that divides it.
fn bars_along(length: f64, least: u32, most: u32) -> u32 {
    (least..most).find(|&n| length < (f64::from(n) + 0.5) * PITCH).unwrap_or(most)
}

/// The lugs standing out of the tread.
fn lugs(wheel: &Wheel, map: &Mapping) -> Vec<Node> {
    let count = lug_count(wheel);
    let pitch = core::f64::consts::TAU / f64::from(count);
    let base = wheel.radius * (1.0 - LUG * 1.5);
    (0..count)
        .map(|i| {
            let at = pitch * f64::from(i);
            let points = [(base, 0.0), (wheel.radius, 0.10), (wheel.radius, 0.46), (base, 0.58)]
                .map(|(radius, share)| map.at(grounded(wheel, radius, at + share * pitch)));
            ink::polygon(Look::new(Pen::Thin, Tone::Lug), &points)
        })
        .collect()
}

/// The lugs' bars coming down the shoulder, leaning as they run on the tread.
fn bars(wheel: &Wheel, map: &Mapping) -> Vec<Node> {
    let count = lug_count(wheel);
    let pitch = core::f64::consts::TAU / f64::from(count);
    let (outer, inner) = (wheel.radius * (1.0 - LUG), wheel.radius * SHOULDER);
    (0..count)
        .map(|i| {
            let at = pitch * f64::from(i);
            let points = [(outer, 0.06), (outer, 0.54), (inner, 0.98), (inner, 0.66)]
                .map(|(radius, share)| map.at(grounded(wheel, radius, at + share * pitch)));
            ink::polygon(Look::fill(Tone::Lug), &points)
        })
        .collect()
}

/// The treads of the pair, seen from above or behind.
fn treads(wheel: &Wheel, view: View) -> Vec<Extent> {
    let Some((track, width)) = wheel.track.zip(wheel.width) else { return Vec::new() };
    [1.0, -1.0]
        .map(|side| {
            let y = side * track / 2.0;
            let (a, b) = (y - width / 2.0, y + width / 2.0);
            match view {
                View::Rear => Extent { left: a, right: b, low: 0.0, high: wheel.loaded + wheel.radius },
                _ => Extent { left: wheel.x - wheel.radius, right: wheel.x + wheel.radius, low: a, high: b },
            }
        })
        .to_vec()
}

/// A box with cut corners on the sheet.
fn corners(b: &Extent, map: &Mapping) -> Vec<Point> {
    let cut = 0.16 * b.width().min(b.height());
    [
        (b.left + cut, b.low),
        (b.right - cut, b.low),
        (b.right, b.low + cut),
        (b.right, b.high - cut),
        (b.right - cut, b.high),
        (b.left + cut, b.high),
        (b.left, b.high - cut),
        (b.left, b.low + cut),
    ]
    .map(|(x, y)| map.at(Point::new(x, y)))
    .to_vec()
}

fn across(wheel: &Wheel, view: View, map: &Mapping, weight: Weight) -> Vec<Node> {
    let outline = if weight == Weight::Full { Pen::Outline } else { Pen::Thin };
    let mut nodes = Vec::new();
    for tread in treads(wheel, view) {
        nodes.push(ink::polygon(Look::new(outline, Tone::Tyre), &corners(&tread, map)));
        nodes.extend(chevrons(&tread, view, map));
    }
    nodes
}

/// The bars of the tread as they meet in its middle.
fn chevrons(tread: &Extent, view: View, map: &Mapping) -> Vec<Node> {
    let along = if view == View::Rear { tread.height() } else { tread.width() };
    let count = bars_along(along, 3, 14);
    // The first and last bars stop short of the cut corners.
    let cut = 0.16 * tread.width().min(tread.height());
    let step = (along - 2.0 * cut) / f64::from(count);
    // Bars run forward and inward: up the picture from behind, towards the front from above.
    let at = |u: f64, v: f64| match view {
        View::Rear => map.at(Point::new(tread.left + u * tread.width(), tread.low + v)),
        _ => map.at(Point::new(tread.left + v, tread.low + u * tread.height())),
    };
    (0..count)
        .flat_map(|i| {
            let v = cut + step * f64::from(i);
            let bar = |outer: f64, inner: f64, shift: f64| {
                let (start, end) = (v + shift, (v + shift + 0.62 * step).min(along));
                let thick = 0.26 * step;
                let points = [
                    at(outer, (start + 0.05 * step).min(along)),
                    at(outer, (start + 0.05 * step + thick).min(along)),
                    at(inner, end),
                    at(inner, (end - thick).max(start.min(along))),
                ];
                ink::polygon(Look::fill(Tone::Lug), &points)
            };
            [bar(0.0, 0.53, 0.0), bar(1.0, 0.47, 0.5 * step)]
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use fitup_core::quantity::Length;

    fn wheel() -> Wheel {
        let mm = Length::from_mm;
        let axle = Axle {
            static_loaded_radius: Some(mm(400.0)),
            overall_radius: Some(mm(420.0)),
            tyre_width: Some(mm(240.0)),
            track: Some(mm(900.0)),
            ..Axle::default()
        };
        super::wheel(0.0, &axle).expect("all figures are there")
    }

    #[test]
    fn a_tyre_stands_flat_on_the_ground_and_is_round_above() {
        let ring = ring(&wheel(), 0.42, 360);
        assert!(ring.iter().all(|p| p.y >= 0.0));
        let flat: Vec<&Point> = ring.iter().filter(|p| p.y == 0.0).collect();
        // Half the chord at 400 mm below the centre of a circle of 420 mm is 128 mm.
        let half = flat.iter().map(|p| p.x).fold(0.0, f64::max);
        assert!((half - 0.128).abs() < 0.008, "{half}");
        assert!((ring.iter().map(|p| p.y).fold(0.0, f64::max) - 0.82).abs() < 1e-9);
    }

    #[test]
    fn an_axle_without_a_radius_or_with_an_impossible_one_gives_no_wheel() {
        let mm = Length::from_mm;
        assert_eq!(super::wheel(0.0, &Axle::default()), None);
        let shrunk = Axle { static_loaded_radius: Some(mm(400.0)), overall_radius: Some(mm(300.0)), ..Axle::default() };
        assert_eq!(super::wheel(0.0, &shrunk), None);
    }

    #[test]
    fn a_pair_is_as_wide_as_track_and_one_tyre() {
        let extent = wheel().extent(View::Rear);
        assert!((extent.width() - 1.14).abs() < 1e-12);
        assert_eq!(treads(&wheel(), View::Plan).len(), 2);
    }
}
