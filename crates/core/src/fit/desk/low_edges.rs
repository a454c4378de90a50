//! Edges of an item that the ground may come against: what lies hidden above something lower of the same item is left out.

use super::outline::FlatShape;
use crate::item::{ShapeRole, View};
use crate::plane::Point;
use crate::quantity::Length;

/// An edge of an item's side view that the ground may come against, in the item's own axes, metres.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct LowEdge {
    /// What it shows; `None` = a polyline of the underside.
    pub role: Option<ShapeRole>,
    /// Its ends; of a lone point both the same.
    pub ends: [Point; 2],
}

impl LowEdge {
    /// Whether it comes and goes with the roll-over bar.
    fn is_bar(&self) -> bool {
        matches!(self.role, Some(ShapeRole::RollOverBar | ShapeRole::RollOverBarFolded))
    }
}

/// Upright lines an item is sampled on at most.
const LINES: usize = 400;

/// How much higher than its neighbours an edge has to lie to count as hidden, in distances of the upright lines.
const HIGHER: f64 = 4.0;

/// Edges of an item that can be the nearest to ground or ramp.
///
/// Of two points over the same x the lower one always limits more. An edge is left out where it lies above the lowest of the
/// others on both upright lines next to it, by four times their distance more: whatever slope up to 75° passes below
/// those then passes below it too, so that angles and clearances stay exact. Tyres are none of it, nor are folded seats.
pub(crate) fn low_edges(shapes: &[FlatShape], polylines: &[Vec<(Length, Length)>]) -> Vec<LowEdge> {
    let seen =
        |shape: &&FlatShape| shape.view == View::Side && !matches!(shape.role, ShapeRole::Tyre | ShapeRole::SeatFolded);
    let shown =
        shapes.iter().filter(seen).flat_map(|shape| shape.runs.iter().map(|run| (Some(shape.role), run.clone())));
    let stated = polylines.iter().map(|line| (None, line.iter().map(|&(x, z)| (x.m(), z.m())).collect::<Vec<_>>()));
    let mut all: Vec<LowEdge> = Vec::new();
    for (role, run) in shown.chain(stated) {
        let points: Vec<Point> = run.iter().map(|&(x, z)| Point::new(x, z)).collect();
        if let [lone] = points[..] {
            all.push(LowEdge { role, ends: [lone, lone] });
        }
        all.extend(points.windows(2).map(|pair| LowEdge { role, ends: [pair[0], pair[1]] }));
    }
    exposed(&all)
}

fn exposed(all: &[LowEdge]) -> Vec<LowEdge> {
    let (mut from, mut to) = (f64::INFINITY, f64::NEG_INFINITY);
    for point in all.iter().flat_map(|edge| edge.ends) {
        (from, to) = (from.min(point.x), to.max(point.x));
    }
    let step = ((to - from) / (LINES - 1) as f64).max(1e-4);
    let mut lowest = vec![f64::INFINITY; LINES];
    for (a, b) in all.iter().filter(|edge| !edge.is_bar()).map(|edge| ordered(edge.ends)) {
        for at in cell(a.x - from, step, f64::ceil)..=cell(b.x - from, step, f64::floor) {
            let share = (from + at as f64 * step - a.x) / (b.x - a.x);
            let z = if (0.0..=1.0).contains(&share) { a.lerp(b, share).y } else { a.y.max(b.y) };
            if let Some(low) = lowest.get_mut(at) {
                *low = low.min(z);
            }
        }
    }
    let is_hidden = |edge: &LowEdge| {
        let (a, b) = ordered(edge.ends);
        let last = cell(b.x - from, step, f64::ceil).min(LINES - 1);
        let below = lowest.get(cell(a.x - from, step, f64::floor)..=last).unwrap_or(&[]);
        let roof = below.iter().copied().fold(f64::NEG_INFINITY, f64::max);
        roof.is_finite() && a.y.min(b.y) > roof + HIGHER * step
    };
    let mut kept: Vec<LowEdge> = Vec::new();
    for edge in all.iter().filter(|edge| !is_hidden(edge)) {
        let [a, b] = edge.ends;
        // A stated underside often repeats what the outline shows.
        if !kept.iter().any(|known| known.ends == [a, b] || known.ends == [b, a]) {
            kept.push(*edge);
        }
    }
    kept
}

fn ordered([a, b]: [Point; 2]) -> (Point, Point) {
    if a.x <= b.x { (a, b) } else { (b, a) }
}

/// Index of the upright line at or beside a distance; 0 for what is no number.
#[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "a cast of a float stays within the type")]
fn cell(distance: f64, step: f64, round: fn(f64) -> f64) -> usize {
    (round(distance / step) as usize).min(LINES)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::dimension::{EndWheel, Facing, Ramp, Rider, Wheels, departure, ramp_roll};

    fn wavy(from: f64, to: f64, low: f64, waves: f64) -> Vec<(Length, Length)> {
        let point = |t: f64| (from + (to - from) * t, low + 0.1 * libm::sin(waves * t));
        let points = (0..200).map(|i| point(f64::from(i) / 199.0));
        points.map(|(x, z)| (Length::from_m(x), Length::from_m(z))).collect()
    }

    #[test]
    fn clearances_and_angles_are_the_same_without_what_is_hidden() {
        let lines = vec![
            wavy(-0.5, 2.0, 0.4, 9.0),
            wavy(-0.5, 2.0, 0.9, 30.0),
            wavy(-1.4, -0.4, 0.45, 14.0),
            wavy(-1.4, -0.4, 1.4, 14.0),
            vec![(Length::from_m(-1.3), Length::from_m(0.3))],
        ];
        let all: Vec<Vec<Point>> =
            lines.iter().map(|line| line.iter().map(|&(x, z)| Point::new(x.m(), z.m())).collect()).collect();
        let edges: Vec<[Point; 2]> = low_edges(&[], &lines).iter().map(|edge| edge.ends).collect();
        assert!(edges.len() * 3 < all.iter().map(Vec::len).sum::<usize>() * 2, "{}", edges.len());
        let wheels = Wheels { rear: 0.375, front: 0.25, wheelbase: 1.45 };
        for degrees in [4.0_f64, 14.0, 26.0, 38.0] {
            let ramp = Ramp { angle: degrees.to_radians(), length: 1.6, ..Ramp::default() };
            for facing in [Facing::Forward, Facing::Backward] {
                let full = ramp_roll(&Rider { wheels, lines: &all }, &ramp, facing).expect("sound").nearest;
                let thin = ramp_roll(&Rider { wheels, lines: &edges }, &ramp, facing).expect("sound").nearest;
                let off = full.expect("something").vertical - thin.expect("something").vertical;
                assert!(off.abs() < 1e-9, "{degrees} {facing:?}");
            }
        }
        let wheel = EndWheel { axle: 0.0, radius: 0.375 };
        let angle = |found: Option<crate::dimension::EndAngle>| found.map(|end| end.angle);
        let thin = departure(wheel, &edges).expect("sound");
        assert_eq!(angle(departure(wheel, &all).expect("sound")), angle(thin));
    }

    #[test]
    fn nothing_has_no_low_edges_and_lone_points_and_upright_edges_stay() {
        assert!(low_edges(&[], &[]).is_empty());
        let at = |x: f64, z: f64| (Length::from_m(x), Length::from_m(z));
        assert_eq!(low_edges(&[], &[vec![at(-1.0, 0.5)]])[0].ends, [Point::new(-1.0, 0.5); 2]);
        assert_eq!(low_edges(&[], &[vec![at(-1.0, 0.5), at(-1.0, 1.5)]]).len(), 1);
    }

    #[test]
    fn what_is_stated_twice_counts_once() {
        let line = vec![(Length::ZERO, Length::from_m(0.3)), (Length::from_m(1.0), Length::from_m(0.3))];
        let back = line.iter().rev().copied().collect();
        assert_eq!(low_edges(&[], &[line, back]).len(), 1);
    }

    #[test]
    fn an_edge_is_hidden_only_well_above_what_is_below_all_of_it() {
        let line = |from: f64, to: f64, z: f64| -> Vec<(Length, Length)> {
            [from, to].map(|x| (Length::from_m(x), Length::from_m(z))).to_vec()
        };
        // 400 upright lines on 0 to 3.99 m are 10 mm apart: 40 mm higher hides.
        let kept = |from, to, z| low_edges(&[], &[line(0.0, 3.99, 0.3), line(from, to, z)]).len() == 2;
        assert!(kept(1.0, 2.0, 0.339) && !kept(1.0, 2.0, 0.341));
        assert!(kept(1.0, 2.0, 0.2), "what lies below is seen");
        let beyond = low_edges(&[], &[line(0.0, 2.0, 0.3), line(1.0, 3.99, 0.5)]);
        assert_eq!(beyond.len(), 2, "what reaches beyond is seen");
    }

    #[test]
    fn tyres_and_other_views_are_no_underside_and_a_bar_hides_nothing() {
        let shape = |role, view, z: f64| FlatShape {
            shape: 0,
            view,
            role,
            carrier: crate::item::Carrier::Item,
            clearance: true,
            runs: vec![vec![(0.0, z), (1.0, z)]],
        };
        let rail = shape(ShapeRole::FrameRail, View::Side, 0.9);
        for (other, kept) in [
            (shape(ShapeRole::Tyre, View::Side, 0.1), vec![0.9]),
            (shape(ShapeRole::FrameRail, View::Plan, 0.1), vec![0.9]),
            (shape(ShapeRole::RollOverBar, View::Side, 0.1), vec![0.9, 0.1]),
            (shape(ShapeRole::RollOverBarFolded, View::Side, 0.1), vec![0.9, 0.1]),
            (shape(ShapeRole::FrameRail, View::Side, 0.1), vec![0.1]),
        ] {
            let heights: Vec<f64> = low_edges(&[rail.clone(), other], &[]).iter().map(|edge| edge.ends[0].y).collect();
            assert_eq!(heights, kept);
        }
    }

    #[test]
    fn upright_lines_are_counted_from_the_first_and_not_beyond_the_last() {
        for (distance, round, index) in [
            (2.4, f64::ceil as fn(f64) -> f64, 5),
            (2.4, f64::floor, 4),
            (-3.0, f64::floor, 0),
            (f64::NAN, f64::ceil, 0),
            (1e9, f64::ceil, LINES),
        ] {
            assert_eq!(cell(distance, 0.5, round), index, "{distance}");
        }
    }
}
