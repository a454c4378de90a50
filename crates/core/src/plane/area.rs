//! Areas bounded by runs of points: whether two overlap, by how much, and how far apart they are.

/// A run of points; closed if it ends where it began, and then the area within it counts too.
type Run = [(f64, f64)];

/// A box along the axes.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Bounds {
    /// Least of both axes.
    pub least: (f64, f64),
    /// Greatest of both axes.
    pub most: (f64, f64),
}

impl Bounds {
    /// The box round some points; `None` without any, or if one is not a number.
    pub fn of(points: impl IntoIterator<Item = (f64, f64)>) -> Option<Self> {
        let mut all: Option<Self> = None;
        for (a, b) in points {
            if !(a.is_finite() && b.is_finite()) {
                return None;
            }
            let so_far = all.unwrap_or(Self { least: (a, b), most: (a, b) });
            all = Some(Self {
                least: (so_far.least.0.min(a), so_far.least.1.min(b)),
                most: (so_far.most.0.max(a), so_far.most.1.max(b)),
            });
        }
        all
    }

    /// The box that both cover, grown by `by` on every side; `None` if that is empty.
    #[must_use]
    pub fn common(self, other: Self, by: f64) -> Option<Self> {
        let common = Self {
            least: (self.least.0.max(other.least.0) - by, self.least.1.max(other.least.1) - by),
            most: (self.most.0.min(other.most.0) + by, self.most.1.min(other.most.1) + by),
        };
        (common.least.0 <= common.most.0 && common.least.1 <= common.most.1).then_some(common)
    }

    /// Moved.
    #[must_use]
    pub fn moved(self, by: (f64, f64)) -> Self {
        let add = |p: (f64, f64)| (p.0 + by.0, p.1 + by.1);
        Self { least: add(self.least), most: add(self.most) }
    }

    fn holds_part_of(&self, [a, b]: Edge) -> bool {
        a.0.min(b.0) <= self.most.0
            && a.0.max(b.0) >= self.least.0
            && a.1.min(b.1) <= self.most.1
            && a.1.max(b.1) >= self.least.1
    }
}

type Edge = [(f64, f64); 2];

fn edges(run: &Run) -> impl Iterator<Item = Edge> + '_ {
    run.windows(2).map(|pair| [pair[0], pair[1]])
}

/// The edges of a run that reach into a box.
fn edges_in(run: &Run, within: Bounds) -> Vec<Edge> {
    edges(run).filter(|&edge| within.holds_part_of(edge)).collect()
}

/// Distance between two runs as areas: 0 where they overlap or touch; `None` if it is more than `most`.
///
/// Units: any one length. Accuracy: rounding. Valid for runs that do not cross themselves.
pub fn gap(a: &Run, b: &Run, most: f64) -> Option<f64> {
    let common = Bounds::of(a.iter().copied())?.common(Bounds::of(b.iter().copied())?, most)?;
    if overlap_somewhere(a, b) {
        return Some(0.0);
    }
    let (of_a, of_b) = (edges_in(a, common), edges_in(b, common));
    let mut least = f64::INFINITY;
    for &edge in &of_a {
        for &other in &of_b {
            least = least.min(between(edge, other));
        }
    }
    (least <= most).then_some(least)
}

/// Whether two runs have more than their edges in common: one crosses the other, or holds it.
pub fn overlap_somewhere(a: &Run, b: &Run) -> bool {
    let (Some(first), Some(second)) = (Bounds::of(a.iter().copied()), Bounds::of(b.iter().copied())) else {
        return false;
    };
    let Some(common) = first.common(second, 0.0) else { return false };
    let (of_a, of_b) = (edges_in(a, common), edges_in(b, common));
    of_a.iter().any(|&edge| of_b.iter().any(|&other| cross(edge, other)))
        || a.first().is_some_and(|&point| holds(b, point))
        || b.first().is_some_and(|&point| holds(a, point))
}

/// By how much two runs overlap: the smaller extent, along one of the axes, of what they have in common; 0 where they do not
/// overlap.
pub fn overlap(a: &Run, b: &Run) -> f64 {
    if !overlap_somewhere(a, b) {
        return 0.0;
    }
    let (Some(first), Some(second)) = (Bounds::of(a.iter().copied()), Bounds::of(b.iter().copied())) else {
        return 0.0;
    };
    let Some(within) = first.common(second, 0.0) else { return 0.0 };
    let (of_a, of_b) = (edges_in(a, within), edges_in(b, within));
    let mut corners: Vec<(f64, f64)> = Vec::new();
    for &edge in &of_a {
        corners.extend(of_b.iter().filter(|&&other| cross(edge, other)).map(|&other| crossing(edge, other)));
    }
    corners.extend(of_a.iter().map(|edge| edge[0]).filter(|&point| holds(b, point)));
    corners.extend(of_b.iter().map(|edge| edge[0]).filter(|&point| holds(a, point)));
    Bounds::of(corners).map_or(0.0, |common| (common.most.0 - common.least.0).min(common.most.1 - common.least.1))
}

/// Where two edges cross that do.
fn crossing([a, b]: Edge, [c, d]: Edge) -> (f64, f64) {
    let (dx, dy) = (d.0 - c.0, d.1 - c.1);
    let (from, to) = (dx * (a.1 - c.1) - dy * (a.0 - c.0), dx * (b.1 - c.1) - dy * (b.0 - c.0));
    let t = from / (from - to);
    (a.0 + (b.0 - a.0) * t, a.1 + (b.1 - a.1) * t)
}

/// First axis of an edge at a height it has; of a level one, the end that `choose` prefers.
fn along([a, b]: Edge, at: f64, choose: fn(f64, f64) -> f64) -> f64 {
    let rise = b.1 - a.1;
    if rise == 0.0 { choose(a.0, b.0) } else { a.0 + (b.0 - a.0) * ((at - a.1) / rise) }
}

/// Whether two edges cross inside both.
fn cross([a, b]: Edge, [c, d]: Edge) -> bool {
    let side = |p: (f64, f64), q: (f64, f64), r: (f64, f64)| (q.0 - p.0) * (r.1 - p.1) - (q.1 - p.1) * (r.0 - p.0);
    side(a, b, c) * side(a, b, d) < 0.0 && side(c, d, a) * side(c, d, b) < 0.0
}

/// Whether a closed run has a point inside; its edge counts as neither in nor out.
fn holds(run: &Run, point: (f64, f64)) -> bool {
    if run.len() < 4 || run.first() != run.last() {
        return false;
    }
    let mut inside = false;
    for [a, b] in edges(run) {
        if (a.1 > point.1) != (b.1 > point.1) && point.0 < along([a, b], point.1, f64::min) {
            inside = !inside;
        }
    }
    inside
}

/// Distance between two edges that do not cross.
fn between(a: Edge, b: Edge) -> f64 {
    [(a[0], b), (a[1], b), (b[0], a), (b[1], a)]
        .into_iter()
        .map(|(point, edge)| from_edge(point, edge))
        .fold(f64::INFINITY, f64::min)
}

fn from_edge(point: (f64, f64), [a, b]: Edge) -> f64 {
    let (dx, dy) = (b.0 - a.0, b.1 - a.1);
    let length = dx * dx + dy * dy;
    let t = if length > 0.0 { (((point.0 - a.0) * dx + (point.1 - a.1) * dy) / length).clamp(0.0, 1.0) } else { 0.0 };
    libm::hypot(point.0 - a.0 - t * dx, point.1 - a.1 - t * dy)
}

/// The part of a run between two values of the first axis. A closed run stays closed; the cut edges run along the cuts.
#[must_use]
pub fn between_x(run: &Run, from: f64, to: f64) -> Vec<(f64, f64)> {
    let cut = |run: Vec<(f64, f64)>, at: f64, sign: f64| {
        let inside = |p: (f64, f64)| (p.0 - at) * sign >= 0.0;
        let mut kept: Vec<(f64, f64)> = Vec::new();
        for [a, b] in edges(&run) {
            if inside(a) {
                kept.push(a);
            }
            if inside(a) != inside(b) {
                kept.push((at, a.1 + (b.1 - a.1) * ((at - a.0) / (b.0 - a.0))));
            }
        }
        match (run.last(), run.first() == run.last(), kept.first().copied()) {
            (_, true, Some(first)) => kept.push(first),
            (Some(&last), false, _) if inside(last) => kept.push(last),
            _ => {}
        }
        kept
    };
    cut(cut(run.to_vec(), from, 1.0), to, -1.0)
}

/// A run with fewer points: every point left out lies within `off` of the run that is left. The ends stay.
#[must_use]
pub fn simplified(run: &Run, off: f64) -> Vec<(f64, f64)> {
    let mut kept: Vec<(f64, f64)> = run.first().copied().into_iter().collect();
    let mut from = 0;
    while from + 1 < run.len() {
        // As far on as all that is passed over stays near.
        let is_near = |to: usize| run[from + 1..to].iter().all(|&point| from_edge(point, [run[from], run[to]]) <= off);
        let mut to = from + 1;
        while to + 1 < run.len() && is_near(to + 1) {
            to += 1;
        }
        kept.push(run[to]);
        from = to;
    }
    kept
}

#[cfg(test)]
mod tests {
    use super::*;

    fn square(x: f64, y: f64, side: f64) -> Vec<(f64, f64)> {
        vec![(x, y), (x + side, y), (x + side, y + side), (x, y + side), (x, y)]
    }

    #[test]
    fn squares_that_overlap_touch_and_stand_apart() {
        assert!(overlap_somewhere(&square(0.0, 0.0, 2.0), &square(1.0, 1.0, 2.0)));
        assert!((overlap(&square(0.0, 0.0, 2.0), &square(1.5, 0.5, 2.0)) - 0.5).abs() < 1e-12);
        assert!(!overlap_somewhere(&square(0.0, 0.0, 1.0), &square(1.0, 0.0, 1.0)), "edges in common are no overlap");
        assert_eq!(gap(&square(0.0, 0.0, 1.0), &square(1.0, 0.0, 1.0), 1.0), Some(0.0));
        assert_eq!(gap(&square(0.0, 0.0, 1.0), &square(4.0, 5.0, 1.0), 10.0), Some(5.0));
        assert_eq!(gap(&square(0.0, 0.0, 1.0), &square(4.0, 5.0, 1.0), 4.9), None);
    }

    #[test]
    fn one_area_inside_another_overlaps_though_no_edges_cross() {
        assert!(overlap_somewhere(&square(0.0, 0.0, 10.0), &square(4.0, 4.0, 1.0)));
        assert!((overlap(&square(0.0, 0.0, 10.0), &square(1.0, 4.0, 1.0)) - 1.0).abs() < 1e-12);
        let open: Vec<_> = square(0.0, 0.0, 10.0)[..4].to_vec();
        assert!(!overlap_somewhere(&open, &square(4.0, 4.0, 1.0)), "an open run has no inside");
    }

    #[test]
    fn a_run_in_the_hollow_of_another_stands_apart_from_it() {
        let horseshoe = vec![
            (0.0, 0.0),
            (10.0, 0.0),
            (10.0, 10.0),
            (9.0, 10.0),
            (9.0, 1.0),
            (1.0, 1.0),
            (1.0, 10.0),
            (0.0, 10.0),
            (0.0, 0.0),
        ];
        assert!(!overlap_somewhere(&horseshoe, &square(4.0, 4.0, 2.0)));
        assert_eq!(gap(&horseshoe, &square(4.0, 4.0, 2.0), 100.0), Some(3.0));
    }

    #[test]
    fn crossing_bars_overlap_by_what_they_have_in_common() {
        let flat = vec![(0.0, 0.0), (10.0, 0.0), (10.0, 1.0), (0.0, 1.0), (0.0, 0.0)];
        let upright = vec![(4.0, -5.0), (5.0, -5.0), (5.0, 5.0), (4.0, 5.0), (4.0, -5.0)];
        assert!((overlap(&flat, &upright) - 1.0).abs() < 1e-12);
    }

    #[test]
    fn a_strip_is_cut_out_of_a_square() {
        let strip = between_x(&square(0.0, 0.0, 10.0), 2.0, 3.0);
        assert_eq!(Bounds::of(strip.iter().copied()), Some(Bounds { least: (2.0, 0.0), most: (3.0, 10.0) }));
        assert_eq!(strip.first(), strip.last());
        assert!(between_x(&square(0.0, 0.0, 1.0), 2.0, 3.0).is_empty());
    }

    #[test]
    fn a_simplified_circle_stays_near_and_closed() {
        let circle: Vec<(f64, f64)> = (0..=360)
            .map(|degree| libm::sincos(f64::from(degree % 360).to_radians()))
            .map(|(sin, cos)| (cos, sin))
            .collect();
        let few = simplified(&circle, 0.01);
        assert!(few.len() < 40 && few.first() == few.last(), "{}", few.len());
        for &point in &circle {
            assert!(edges(&few).any(|edge| from_edge(point, edge) <= 0.01));
        }
        assert_eq!(simplified(&square(0.0, 0.0, 1.0), 0.01), square(0.0, 0.0, 1.0));
        assert!(simplified(&[], 0.01).is_empty());
    }

    #[test]
    fn what_is_no_number_overlaps_nothing() {
        let odd = vec![(f64::NAN, 0.0), (1.0, 1.0), (0.0, 1.0), (f64::NAN, 0.0)];
        assert!(!overlap_somewhere(&odd, &square(0.0, 0.0, 2.0)));
        assert_eq!(gap(&odd, &square(0.0, 0.0, 2.0), 9.0), None);
        assert_eq!(gap(&[], &square(0.0, 0.0, 2.0), 9.0), None);
        assert_eq!(Bounds::of([]), None);
    }
}
