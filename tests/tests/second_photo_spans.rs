//! Distances from a photograph against made-up pictures of plates whose holes are known: a camera at some height and tilt, a lens
//! that bends, marks that slip, a sheet cut a little off.

#![allow(clippy::disallowed_methods, reason = "the second method uses the platform's own functions")]

use fitup_core::dimension::{LENS, MarkedPhoto, SheetPhoto, photo_spans};
use fitup_core::plane::Point;

/// A stream of random numbers (the usual 64-bit linear congruential generator of Knuth).
struct Draws(u64);

impl Draws {
    fn unit(&mut self) -> f64 {
        self.0 = self.0.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        (self.0 >> 11) as f64 / (1_u64 << 53) as f64
    }

    fn within(&mut self, from: f64, to: f64) -> f64 {
        from + (to - from) * self.unit()
    }

    /// Box and Muller.
    fn normal(&mut self) -> f64 {
        (-2.0 * self.unit().max(1e-300).ln()).sqrt() * (std::f64::consts::TAU * self.unit()).cos()
    }
}

/// A pinhole camera that looks at the middle of the plane from a distance, tilted and turned, with a lens that bends.
struct Camera {
    tilt: f64,
    turn: f64,
    away: f64,
    focal: f64,
    picture: Point,
    bend: f64,
}

impl Camera {
    fn sees(&self, x: f64, y: f64) -> Point {
        let (sin, cos) = self.turn.sin_cos();
        let (x, y) = (x * cos - y * sin, x * sin + y * cos);
        let (sin, cos) = self.tilt.sin_cos();
        let (up, depth) = (y * cos, self.away + y * sin);
        let middle = self.picture * 0.5;
        let ideal = Point::new(x / depth, -up / depth) * self.focal;
        let bent = ideal * (1.0 + self.bend * ideal.dot(ideal) / middle.dot(middle));
        middle + bent
    }
}

const SLIP: f64 = 4.0;
const SHEET_SIGMA: f64 = 0.0006;

/// Of 1,000 photographs at a tilt: distances within the half range, beyond it, and the mean half range, metres.
fn tried(tilt: f64, draws: &mut Draws) -> (usize, usize, f64) {
    let (mut within, mut beyond, mut sum) = (0, 0, 0.0);
    for _ in 0..1_000 {
        let camera = Camera {
            tilt: tilt.to_radians(),
            turn: draws.within(0.0, std::f64::consts::TAU),
            away: draws.within(0.45, 0.8),
            focal: 3_000.0,
            picture: Point::new(3_000.0, 4_000.0),
            bend: draws.within(-LENS, LENS),
        };
        // The sheet lies in the middle, the holes on either side of it.
        let (w, h) = (0.210 + SHEET_SIGMA * draws.normal(), 0.297 + SHEET_SIGMA * draws.normal());
        let mut slipped = |point: Point| point + Point::new(SLIP * draws.normal(), SLIP * draws.normal());
        let corners = [(-w, -h), (w, -h), (w, h), (-w, h)].map(|(x, y)| slipped(camera.sees(x / 2.0, y / 2.0)));
        let holes = [(-0.06, -0.04), (0.07, -0.05), (0.06, 0.05), (-0.07, 0.04), (0.0, 0.11)];
        let points: Vec<Point> = holes.iter().map(|&(x, y)| slipped(camera.sees(x, y))).collect();
        let sheet = SheetPhoto {
            width: 0.210,
            height: 0.297,
            sheet_sigma: SHEET_SIGMA,
            corners,
            corner_sigma: SLIP,
            point_sigma: SLIP,
        };
        let found = photo_spans(&MarkedPhoto { sheet, picture: camera.picture, points }).expect("sound");
        for span in found {
            let [a, b] = span.between.map(|at| Point::from(holes[at]));
            if (span.distance - a.distance(b)).abs() <= span.half_range {
                within += 1;
            } else {
                beyond += 1;
            }
            sum += span.half_range;
        }
    }
    (within, beyond, sum / (within + beyond) as f64)
}

#[test]
fn at_every_tilt_95_of_100_true_distances_lie_within_the_half_range() {
    let mut draws = Draws(7);
    for tilt in [0.0, 15.0, 30.0, 45.0] {
        let (within, beyond, mean) = tried(tilt, &mut draws);
        let share = within as f64 / (within + beyond) as f64;
        println!(
            "distances from 1,000 made-up photographs tilted {tilt}°: {:.1} % within, half range {:.2} mm on average",
            share * 100.0,
            mean * 1e3
        );
        assert!(share >= 0.95, "{tilt}°: {share}");
        // As honest the other way: a half range that holds everything would be of no use.
        assert!(share < 0.999 && mean < 0.004, "{tilt}°: {share}, {mean}");
    }
}
