//! Places on a photographed plane against the 8 x 8 linear system, its differences and random draws; faults against the shape of the
//! four corners.

#![allow(clippy::disallowed_methods, reason = "the second method uses the platform's own functions")]

use fitup_core::dimension::{CornersFault, PhotoFault, SheetPhoto, photo_plane};
use fitup_core::plane::Point;
use proptest::prelude::*;
use proptest::test_runner::{Config, RngAlgorithm, TestRng, TestRunner};
use std::cell::Cell;

fn runner(cases: u32) -> TestRunner {
    let config = Config { cases, failure_persistence: None, ..Config::default() };
    TestRunner::new_with_rng(config, TestRng::deterministic_rng(RngAlgorithm::ChaCha))
}

/// Unknowns of a square linear system, by elimination with pivots.
fn solved<const N: usize>(mut rows: [[f64; N]; N], mut right: [f64; N]) -> [f64; N] {
    for at in 0..N {
        let pivot = (at..N).max_by(|i, j| rows[*i][at].abs().total_cmp(&rows[*j][at].abs())).expect("not empty");
        rows.swap(at, pivot);
        right.swap(at, pivot);
        for below in at + 1..N {
            let share = rows[below][at] / rows[at][at];
            let above = rows[at];
            rows[below].iter_mut().zip(above).for_each(|(value, above)| *value -= share * above);
            right[below] -= share * right[at];
        }
    }
    for at in (0..N).rev() {
        for column in at + 1..N {
            right[at] -= rows[at][column] * right[column];
        }
        right[at] /= rows[at][at];
    }
    right
}

/// Where pixels lie, by the eight numbers that take the picture to the sheet.
fn places<const K: usize>(size: [f64; 2], corners: [Point; 4], pixels: [Point; K]) -> [Point; K] {
    let sheet = [[0.0, 0.0], [size[0], 0.0], size, [0.0, size[1]]];
    let (mut rows, mut right) = ([[0.0; 8]; 8], [0.0; 8]);
    for (k, (pixel, [x, y])) in corners.iter().zip(sheet).enumerate() {
        let Point { x: u, y: v } = *pixel;
        rows[2 * k] = [u, v, 1.0, 0.0, 0.0, 0.0, -u * x, -v * x];
        rows[2 * k + 1] = [0.0, 0.0, 0.0, u, v, 1.0, -u * y, -v * y];
        (right[2 * k], right[2 * k + 1]) = (x, y);
    }
    let h = solved(rows, right);
    pixels.map(|Point { x: u, y: v }| {
        let below = h[6] * u + h[7] * v + 1.0;
        Point::new((h[0] * u + h[1] * v + h[2]) / below, (h[3] * u + h[4] * v + h[5]) / below)
    })
}

/// A sheet seen askew: a square of some size and turn whose corners are each a little off.
fn sheets() -> impl Strategy<Value = ([f64; 2], [Point; 4])> {
    let off = prop::array::uniform8(-0.22..0.22_f64);
    (0.05..0.5_f64, 0.05..0.5_f64, 100.0..900.0_f64, 0.0..6.2_f64, off).prop_map(|(w, h, size, turn, off)| {
        let around = [(-1.0, 1.0), (1.0, 1.0), (1.0, -1.0), (-1.0, -1.0)];
        let corner = |k: usize| {
            let (x, y) = (around[k].0 + off[2 * k], around[k].1 + off[2 * k + 1]);
            let (sin, cos) = turn.sin_cos();
            Point::new(1500.0 + size * (x * cos - y * sin), 1100.0 + size * (x * sin + y * cos))
        };
        ([w, h], [0, 1, 2, 3].map(corner))
    })
}

/// A pixel within or near the corners.
fn pixel(corners: &[Point; 4], (s, t): (f64, f64)) -> Point {
    corners[0].lerp(corners[1], s).lerp(corners[3].lerp(corners[2], s), t)
}

fn photo(size: [f64; 2], corners: [Point; 4], sigmas: [f64; 3]) -> SheetPhoto {
    let [sheet_sigma, corner_sigma, point_sigma] = sigmas;
    SheetPhoto { width: size[0], height: size[1], sheet_sigma, corners, corner_sigma, point_sigma }
}

#[test]
fn places_and_deviations_agree_with_the_linear_system_and_its_differences() {
    let (worst_place, worst_sigma) = (Cell::new(0.0_f64), Cell::new(0.0_f64));
    let shares = (-0.3..1.3_f64, -0.3..1.3_f64);
    let sigmas = [0.0..0.003_f64, 0.0..3.0_f64, 0.0..3.0_f64];
    runner(3_000)
        .run(&(sheets(), shares.clone(), shares, sigmas), |((size, corners), one, other, sigmas)| {
            let plane = photo_plane(&photo(size, corners, sigmas)).expect("a rectangle");
            let pixels = [pixel(&corners, one), pixel(&corners, other)];
            let found = pixels.map(|pixel| plane.place(pixel).expect("sound"));
            let [Some(a), Some(b)] = found else { return Err(TestCaseError::reject("beyond the horizon")) };
            let nominal = places(size, corners, pixels);
            let off = a.at.distance(nominal[0]).max(b.at.distance(nominal[1]));
            prop_assert!(off < 1e-9 * (1.0 + a.at.norm() + b.at.norm()), "{off}");
            worst_place.set(worst_place.get().max(off));

            // All fourteen inputs in turn, by central differences.
            let told = |at: [Point; 2]| [at[0].x, at[0].y, at[1].x, at[1].y, at[0].distance(at[1])];
            let mut variance = [0.0; 5];
            let mut add = |sigma: f64, plus: [Point; 2], minus: [Point; 2], step: f64| {
                for (sum, (p, m)) in variance.iter_mut().zip(told(plus).iter().zip(told(minus))) {
                    *sum += ((p - m) / (2.0 * step) * sigma).powi(2);
                }
            };
            let shifts = [Point::new(1e-3, 0.0), Point::new(0.0, 1e-3)];
            for shift in shifts {
                for k in 0..4 {
                    let moved = |by: Point| {
                        let mut corners = corners;
                        corners[k] = corners[k] + by;
                        places(size, corners, pixels)
                    };
                    add(sigmas[1], moved(shift), moved(-shift), 1e-3);
                }
                for k in 0..2 {
                    let moved = |by: Point| {
                        let mut pixels = pixels;
                        pixels[k] = pixels[k] + by;
                        places(size, corners, pixels)
                    };
                    add(sigmas[2], moved(shift), moved(-shift), 1e-3);
                }
            }
            for side in 0..2 {
                let moved = |by: f64| {
                    let mut size = size;
                    size[side] += by;
                    places(size, corners, pixels)
                };
                add(sigmas[0], moved(1e-6), moved(-1e-6), 1e-6);
            }
            let apart = plane.distance(pixels[0], pixels[1]).expect("sound").expect("before the horizon");
            prop_assert!((apart.distance - nominal[0].distance(nominal[1])).abs() < 1e-9);
            let sigma = [a.sigma.x, a.sigma.y, b.sigma.x, b.sigma.y, apart.sigma.expect("apart")];
            for (got, square) in sigma.iter().zip(variance) {
                let off = (got - square.sqrt()).abs();
                prop_assert!(off < 2e-5 * got + 1e-8, "{got} against {}", square.sqrt());
                worst_sigma.set(worst_sigma.get().max(off / got));
            }
            Ok(())
        })
        .expect("all agree");
    println!("places on a plane, 3000 sheets by the linear system: greatest disagreement {:.1e} m", worst_place.get());
    println!("their deviations, by differences: greatest disagreement {:.1e} of each", worst_sigma.get());
}

#[test]
fn deviations_agree_with_random_draws() {
    let (draws, worst) = (20_000, Cell::new(0.0_f64));
    let shares = (-0.2..1.2_f64, -0.2..1.2_f64);
    runner(20)
        .run(&(sheets(), shares.clone(), shares, any::<u64>()), |((size, corners), one, other, seed)| {
            // Far below the sheet, so that the first order is all there is.
            let sigmas = [1e-5, 0.02, 0.03];
            let plane = photo_plane(&photo(size, corners, sigmas)).expect("a rectangle");
            let pixels = [pixel(&corners, one), pixel(&corners, other)];
            let [Some(a), Some(_)] = pixels.map(|pixel| plane.place(pixel).expect("sound")) else {
                return Err(TestCaseError::reject("beyond the horizon"));
            };
            let apart = plane.distance(pixels[0], pixels[1]).expect("sound").expect("before the horizon");
            let mut state = seed | 1;
            let mut normal = || {
                // The sum of twelve even numbers, less six.
                (0..12).fold(-6.0, |sum, _| {
                    state = state.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
                    sum + (state >> 11) as f64 / 9_007_199_254_740_992.0
                })
            };
            let nominal = places(size, corners, pixels);
            let reference = [nominal[0].x, nominal[0].y, nominal[0].distance(nominal[1])];
            let mut squares = [0.0; 3];
            for _ in 0..draws {
                let corners = corners.map(|corner| corner + Point::new(normal(), normal()) * sigmas[1]);
                let pixels = pixels.map(|pixel| pixel + Point::new(normal(), normal()) * sigmas[2]);
                let size = size.map(|side| side + normal() * sigmas[0]);
                let at = places(size, corners, pixels);
                let told = [at[0].x, at[0].y, at[0].distance(at[1])];
                squares.iter_mut().zip(told.iter().zip(reference)).for_each(|(sum, (a, b))| *sum += (a - b) * (a - b));
            }
            for (square, sigma) in squares.iter().zip([a.sigma.x, a.sigma.y, apart.sigma.expect("apart")]) {
                let share = (square / f64::from(draws)).sqrt() / sigma - 1.0;
                // The root of a mean of that many squares scatters by 0.5 %.
                prop_assert!(share.abs() < 0.025, "{share}");
                worst.set(worst.get().max(share.abs()));
            }
            Ok(())
        })
        .expect("all agree");
    println!("their deviations, 20 sheets of 20000 draws: greatest disagreement {:.1} %", 100.0 * worst.get());
}

#[test]
fn faults_agree_with_the_shape_of_the_corners() {
    let seen = Cell::new([0; 4]);
    // Whole pixels of a small field, so that lines and coincidences are frequent.
    let corners = prop::array::uniform4((0..12_i32, 0..12_i32));
    runner(20_000)
        .run(&corners, |corners| {
            let at = corners.map(|(u, v)| Point::new(f64::from(u), f64::from(v)));
            let twice = |[i, j, k]: [usize; 3]| {
                let [(au, av), (bu, bv), (cu, cv)] = [corners[i], corners[j], corners[k]];
                (bu - au) * (cv - av) - (bv - av) * (cu - au)
            };
            let triples = [[0, 1, 2], [1, 2, 3], [2, 3, 0], [3, 0, 1]];
            // Two stretches cross where each has the other's ends on both sides.
            let cross = |[a, b]: [usize; 2], [c, d]: [usize; 2]| {
                twice([a, b, c]).signum() != twice([a, b, d]).signum()
                    && twice([c, d, a]).signum() != twice([c, d, b]).signum()
            };
            let within = |at: usize, [a, b, c]: [usize; 3]| {
                let sides = [twice([a, b, at]), twice([b, c, at]), twice([c, a, at])].map(i32::signum);
                sides[0] == sides[1] && sides[1] == sides[2]
            };
            let area: i32 = (0..4)
                .map(|k| {
                    let ((au, av), (bu, bv)) = (corners[k], corners[(k + 1) % 4]);
                    au * bv - av * bu
                })
                .sum();
            let expected = if triples.iter().any(|triple| twice(*triple) == 0) {
                Some(CornersFault::InLine)
            } else if cross([0, 1], [2, 3]) || cross([1, 2], [3, 0]) {
                Some(CornersFault::Crossed)
            } else if (0..4).any(|k| within(k, [(k + 1) % 4, (k + 2) % 4, (k + 3) % 4])) {
                Some(CornersFault::Dented)
            } else if area > 0 {
                Some(CornersFault::Mirrored)
            } else {
                None
            };
            let got = match photo_plane(&photo([0.2, 0.1], at, [0.0; 3])) {
                Ok(_) => None,
                Err(PhotoFault::Corners(fault)) => Some(fault),
                Err(other) => panic!("{other:?}"),
            };
            prop_assert_eq!(got, expected);
            if let Some(fault) = got {
                let mut counts = seen.get();
                counts[fault as usize] += 1;
                seen.set(counts);
            }
            Ok(())
        })
        .expect("all agree");
    assert!(seen.get().iter().all(|count| *count > 500), "{:?}", seen.get());
}
