//! The drive over a ramp, beside the same drive put together from a general geometry library: wheels let down onto the
//! profile until they touch it, each centimetre of the way, and the underside measured against it.

#![allow(clippy::disallowed_methods, reason = "the comparison uses the platform's own functions")]

use criterion::{Criterion, criterion_group, criterion_main};
use fitup_bench::{RAMP, WHEELS, long_underside, ramp_roll_of_a_long_underside};
use geo::{AffineOps, AffineTransform, Coord, Distance, Euclidean, Line, LineIntersection, LineString, Point};

/// Centimetres.
const STEP: f64 = 0.01;

fn profile() -> LineString {
    let mut at = Coord { x: 0.0, y: 0.0 };
    let mut points = vec![Coord { x: -20.0, y: 0.0 }, at];
    for (angle, length) in [(RAMP.angle, RAMP.length), (RAMP.beaver_angle, RAMP.beaver_length)] {
        at = at + Coord { x: length * angle.cos(), y: length * angle.sin() };
        points.push(at);
    }
    points.push(at + Coord { x: 20.0, y: 0.0 });
    LineString::new(points)
}

/// Height of a wheel's centre over `x`: let down from above until it touches.
fn centre(profile: &LineString, x: f64, radius: f64) -> f64 {
    let (mut touching, mut above) = (radius, radius + 4.0);
    for _ in 0..40 {
        let middle = f64::midpoint(touching, above);
        if Euclidean.distance(&Point::new(x, middle), profile) < radius { touching = middle } else { above = middle }
    }
    above
}

/// Least clearance straight down, driving backward: the front wheel trails.
fn sweep() -> f64 {
    let profile = profile();
    let underside: Vec<LineString> = long_underside()
        .iter()
        .map(|line| line.iter().map(|p| Coord { x: WHEELS.wheelbase - p.x, y: p.y }).collect())
        .collect();
    let distance = WHEELS.wheelbase.hypot(WHEELS.rear - WHEELS.front);
    let level = (WHEELS.rear - WHEELS.front).atan2(WHEELS.wheelbase);
    let mut least = f64::INFINITY;
    for step in 0..900 {
        let x = -4.5 + STEP * f64::from(step);
        let z = centre(&profile, x, WHEELS.front);
        let (mut near, mut far) = (x, x + distance);
        for _ in 0..30 {
            let middle = f64::midpoint(near, far);
            let apart = (middle - x).hypot(centre(&profile, middle, WHEELS.rear) - z);
            if apart < distance { near = middle } else { far = middle }
        }
        let turn = (centre(&profile, near, WHEELS.rear) - z).atan2(near - x) - level;
        let place =
            AffineTransform::translate(0.0, -WHEELS.front).rotated(turn.to_degrees(), (0.0, 0.0)).translated(x, z);
        for line in &underside {
            least = least.min(clearance(&line.affine_transform(&place), &profile));
        }
    }
    least
}

fn clearance(line: &LineString, profile: &LineString) -> f64 {
    let down = |at: Coord, to: &LineString, sign: f64| {
        let ray = Line::new(Coord { x: at.x, y: at.y - 9.0 }, Coord { x: at.x, y: at.y + 9.0 });
        let hits =
            to.lines().filter_map(|edge| match geo::algorithm::line_intersection::line_intersection(ray, edge)? {
                LineIntersection::SinglePoint { intersection, .. } => Some(sign * (at.y - intersection.y)),
                LineIntersection::Collinear { .. } => None,
            });
        hits.fold(f64::INFINITY, f64::min)
    };
    let corners = line.coords().map(|&at| down(at, profile, 1.0));
    let crests = profile.coords().map(|&at| down(at, line, -1.0));
    corners.chain(crests).fold(f64::INFINITY, f64::min)
}

fn rolls(criterion: &mut Criterion) {
    let ours = ramp_roll_of_a_long_underside().and_then(|roll| roll.nearest).map(|nearest| nearest.vertical);
    println!("least clearance: {:.6} m; swept each centimetre: {:.6} m", ours.expect("it has an underside"), sweep());
    criterion.bench_function("ramp roll", |bencher| bencher.iter(ramp_roll_of_a_long_underside));
    criterion
        .benchmark_group("general library")
        .sample_size(10)
        .bench_function("ramp roll, a centimetre a step", |bencher| bencher.iter(sweep));
}

criterion_group!(benches, rolls);
criterion_main!(benches);
