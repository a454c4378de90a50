//! The path of a wheel's centre over a profile.

use super::profile::Profile;
use crate::order;
use crate::plane::{Circle, Point};

/// One piece of a centre's path.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) enum Path {
    /// The wheel rolls on a flat: the path is straight.
    Straight {
        /// Slope.
        slope: f64,
        /// A point on it.
        base: Point,
    },
    /// The wheel pivots on a crest: the path is the upper arc about it.
    Pivot(Circle),
}

/// Height, slope and bend of a path over an x.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct PathPoint {
    pub at: Point,
    pub slope: f64,
}

impl Path {
    pub fn read(&self, x: f64) -> PathPoint {
        match *self {
            Self::Straight { slope, base } => PathPoint { at: Point::new(x, base.y + slope * (x - base.x)), slope },
            Self::Pivot(circle) => {
                let aside = x - circle.centre.x;
                let up = ((circle.radius - aside) * (circle.radius + aside)).max(0.0).sqrt();
                PathPoint { at: Point::new(x, circle.centre.y + up), slope: -aside / up }
            }
        }
    }

    /// x of the place where a wheel of radius `r` with its centre over `x` touches the profile.
    pub fn contact(&self, x: f64, r: f64) -> f64 {
        match *self {
            Self::Straight { slope, .. } => x + r * slope / (1.0 + slope * slope).sqrt(),
            Self::Pivot(circle) => circle.centre.x,
        }
    }

    /// Both points of the path's whole line or circle at `distance` from a point.
    pub fn at_distance(&self, from: Point, distance: f64) -> Option<[Point; 2]> {
        let ring = Circle::new(from, distance);
        match *self {
            Self::Straight { slope, base } => {
                // Measured from the foot below the ring's centre, where rounding is least.
                let a = Point::new(from.x, base.y + slope * (from.x - base.x));
                let b = a + Point::new(1.0, slope);
                ring.cut_line(a, b).map(|(near, far)| [a.lerp(b, near), a.lerp(b, far)])
            }
            Self::Pivot(circle) => ring.cut_circle(circle).map(|(left, right)| [left, right]),
        }
    }
}

/// A piece of a track, from an x up to the next piece's.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Span {
    pub from: f64,
    pub to: f64,
    pub path: Path,
}

/// The whole path of a wheel's centre: the upper envelope of the profile's offset. A wheel that
/// touches two faces at once stands where two pieces meet.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Track {
    pub spans: Vec<Span>,
}

/// How far beyond a span's end a point still counts as on it, metres: rounding, nothing more.
const SLACK: f64 = 1e-9;

impl Track {
    pub fn new(profile: &Profile, radius: f64) -> Self {
        let pieces = pieces(profile, radius);
        let mut places: Vec<f64> = pieces.iter().flat_map(|piece| [piece.from, piece.to]).collect();
        for (i, one) in pieces.iter().enumerate() {
            for other in &pieces[i + 1..] {
                places.extend(crossings(one, other));
            }
        }
        places.retain(|x| x.is_finite());
        order::sort(&mut places, f64::total_cmp);
        let mut spans: Vec<Span> = Vec::new();
        let ends = places.iter().copied().chain([f64::INFINITY]);
        let starts = [f64::NEG_INFINITY].into_iter().chain(places.iter().copied());
        for (from, to) in starts.zip(ends) {
            let middle = inside(from, to);
            let Some(path) = highest(&pieces, middle) else { continue };
            match spans.last_mut() {
                Some(last) if last.path == path => last.to = to,
                _ if to > from => spans.push(Span { from, to, path }),
                _ => {}
            }
        }
        Self { spans }
    }

    /// The place on the track at `distance` from a point, ahead of it (`ahead`) or behind it, with
    /// the span it lies on and which of the path's two points it is.
    pub fn at_distance(&self, from: Point, distance: f64, ahead: bool) -> Option<OnTrack> {
        let found = self.spans.iter().enumerate().flat_map(|(span, piece)| {
            let points = piece.path.at_distance(from, distance);
            points.into_iter().flatten().enumerate().filter_map(move |(pick, at)| {
                let beyond = (piece.from - at.x).max(at.x - piece.to);
                let above = match piece.path {
                    Path::Pivot(circle) => at.y >= circle.centre.y,
                    Path::Straight { .. } => true,
                };
                let right_side = (at.x > from.x) == ahead;
                (beyond <= SLACK && above && right_side).then_some((beyond, OnTrack { span, pick, at }))
            })
        });
        found.min_by(|a, b| a.0.total_cmp(&b.0)).map(|(_, found)| found)
    }

    /// The centre's place over `x`.
    pub fn read(&self, x: f64) -> PathPoint {
        let span = self.spans.iter().find(|span| x <= span.to).unwrap_or(&self.spans[self.spans.len() - 1]);
        span.path.read(x)
    }
}

/// A place on a track.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct OnTrack {
    pub span: usize,
    pub pick: usize,
    pub at: Point,
}

/// Every face's and crest's own path with the stretch of x where it can be touched. Valleys are never touched
/// alone: a wheel through a valley's point would cut one of its faces.
fn pieces(profile: &Profile, r: f64) -> Vec<Span> {
    let sine = |slope: f64| slope / (1.0 + slope * slope).sqrt();
    let faces = profile.stretches.iter().map(|face| {
        let back = r * sine(face.slope);
        let up = r * (1.0 + face.slope * face.slope).sqrt();
        let path = Path::Straight { slope: face.slope, base: face.base + Point::new(0.0, up) };
        Span { from: face.from - back, to: face.to - back, path }
    });
    let crests = profile.corners.iter().filter(|corner| corner.is_crest()).map(|corner| {
        let (before, after) = corner.slopes;
        Span {
            from: corner.at.x - r * sine(before),
            to: corner.at.x - r * sine(after),
            path: Path::Pivot(Circle::new(corner.at, r)),
        }
    });
    faces.chain(crests).collect()
}

/// Where two pieces' paths cross, for both within reach.
fn crossings(one: &Span, other: &Span) -> Vec<f64> {
    let points = match (one.path, other.path) {
        (Path::Straight { slope: m, base: a }, Path::Straight { slope: n, base: b }) => {
            let level = (b.y - n * b.x) - (a.y - m * a.x);
            // Parallel ones meet nowhere or everywhere: what is not finite is left out with the ends.
            vec![level / (m - n)]
        }
        (Path::Straight { slope, base }, Path::Pivot(circle))
        | (Path::Pivot(circle), Path::Straight { slope, base }) => {
            let b = base + Point::new(1.0, slope);
            circle.cut_line(base, b).map_or_else(Vec::new, |(s, t)| vec![base.x + s, base.x + t])
        }
        (Path::Pivot(a), Path::Pivot(b)) => a.cut_circle(b).map_or_else(Vec::new, |(p, q)| vec![p.x, q.x]),
    };
    let (from, to) = (one.from.max(other.from), one.to.min(other.to));
    points.into_iter().filter(|x| (from..=to).contains(x)).collect()
}

/// An x between two that may lie at infinity.
fn inside(from: f64, to: f64) -> f64 {
    match (from.is_finite(), to.is_finite()) {
        (true, true) => f64::midpoint(from, to),
        (true, false) => from + 1.0,
        (false, true) => to - 1.0,
        (false, false) => 0.0,
    }
}

fn highest(pieces: &[Span], x: f64) -> Option<Path> {
    let here = pieces.iter().filter(|piece| (piece.from..=piece.to).contains(&x));
    here.max_by(|a, b| a.path.read(x).at.y.total_cmp(&b.path.read(x).at.y)).map(|piece| piece.path)
}

#[cfg(test)]
mod tests {
    use super::super::profile::Ramp;
    use super::*;

    fn track(ramp: &Ramp, radius: f64) -> (Profile, Track) {
        let profile = Profile::new(ramp).expect("sound");
        let track = Track::new(&profile, radius);
        (profile, track)
    }

    /// Highest centre that some point of the profile allows, by stepping through the points.
    fn stepped(profile: &Profile, radius: f64, x: f64) -> f64 {
        let steps = 4_000;
        let even = (0..=steps).map(|i| x - radius + 2.0 * radius * f64::from(i) / f64::from(steps));
        let corners = profile.corners.iter().map(|corner| corner.at.x).filter(|px| (px - x).abs() <= radius);
        let heights = even.chain(corners).map(|px| {
            let face = &profile.stretches[profile.stretch_at(px)];
            face.height(px) + (radius * radius - (px - x) * (px - x)).max(0.0).sqrt()
        });
        heights.fold(f64::NEG_INFINITY, f64::max)
    }

    #[test]
    fn the_track_is_the_highest_any_point_of_the_profile_asks_for() {
        let ramps = [
            Ramp { angle: 0.26, length: 2.5, ..Ramp::default() },
            Ramp { angle: 0.3, length: 2.0, beaver_angle: 0.14, beaver_length: 1.2 },
            Ramp { angle: 0.3, length: 0.1, beaver_angle: 0.14, beaver_length: 0.05 },
            Ramp { angle: 0.1, length: 0.02, beaver_angle: 0.9, beaver_length: 0.3 },
            Ramp { angle: 1.2, length: 0.3, ..Ramp::default() },
            Ramp { angle: 0.02, length: 0.01, ..Ramp::default() },
            Ramp::default(),
        ];
        for ramp in &ramps {
            for radius in [0.2, 0.45] {
                let (profile, track) = track(ramp, radius);
                for i in -80..400 {
                    let x = f64::from(i) * 0.01 + 0.003;
                    let (got, want) = (track.read(x).at.y, stepped(&profile, radius, x));
                    assert!(got - want > -1e-9 && got - want < 2e-6, "{ramp:?} r {radius} x {x}: {got} against {want}");
                }
            }
        }
    }

    #[test]
    fn the_track_is_of_one_piece() {
        let (_, track) = track(&Ramp { angle: 0.3, length: 2.0, beaver_angle: 0.14, beaver_length: 1.2 }, 0.38);
        assert_eq!(track.spans.len(), 6);
        for pair in track.spans.windows(2) {
            assert!((pair[0].to - pair[1].from).abs() < 1e-15);
            let (a, b) = (pair[0].path.read(pair[0].to).at, pair[1].path.read(pair[0].to).at);
            assert!(a.distance(b) < 1e-12, "{pair:?}");
        }
    }

    #[test]
    fn in_the_valley_the_wheel_touches_ground_and_ramp_at_once() {
        // The centre stands over the corner's bisector: r tan(θ/2) before the foot.
        let (_, track) = track(&Ramp { angle: 0.26, length: 2.5, ..Ramp::default() }, 0.38);
        assert!((track.spans[0].to + 0.38 * libm::tan(0.13)).abs() < 1e-14);
    }

    #[test]
    fn a_place_at_a_distance_lies_on_the_track_on_the_asked_side() {
        let (_, track) = track(&Ramp { angle: 0.3, length: 2.0, beaver_angle: 0.14, beaver_length: 1.2 }, 0.38);
        for i in -30..50 {
            let from = track.read(f64::from(i) * 0.1).at;
            for ahead in [true, false] {
                let found = track.at_distance(from, 1.5, ahead).expect("the track has no end");
                assert!((found.at.distance(from) - 1.5).abs() < 1e-12);
                assert!((track.read(found.at.x).at.y - found.at.y).abs() < 1e-9);
                assert_eq!(found.at.x > from.x, ahead);
            }
        }
    }
}
