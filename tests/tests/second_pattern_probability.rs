//! How likely all bolts go in, against plain sampling with another chance and another search for the lay; the worst margin against every
//! corner of the errors and against random ways downhill.

#![allow(clippy::disallowed_methods, reason = "the second method uses the platform's own functions")]

use fitup_core::fit::mating::bolt_pattern::{Hole, HoleErrors, Law, WorstMargin, pattern_probability};

type P = [f64; 2];

/// Chance of another kind than the core's.
struct Chance(u64);

impl Chance {
    fn unit(&mut self) -> f64 {
        self.0 = self.0.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        (self.0 >> 11) as f64 / 9_007_199_254_740_992.0
    }

    /// An error in half ranges.
    fn error(&mut self, law: Law) -> f64 {
        match law {
            Law::Uniform => 2.0 * self.unit() - 1.0,
            // The polar method.
            Law::Normal => loop {
                let (u, v) = (2.0 * self.unit() - 1.0, 2.0 * self.unit() - 1.0);
                let square = u * u + v * v;
                if square > 0.0 && square < 1.0 {
                    return u * (-2.0 * square.ln() / square).sqrt() / 3.0;
                }
            },
        }
    }
}

/// Two patterns with what each pair allows, millimetres.
#[derive(Clone)]
struct Pairs {
    a: Vec<P>,
    b: Vec<P>,
    allowances: Vec<f64>,
}

impl Pairs {
    /// Centres that a shift has to come near to, at a turn.
    fn centres(&self, turn: f64) -> Vec<P> {
        let (sin, cos) = turn.sin_cos();
        self.a
            .iter()
            .zip(&self.b)
            .map(|(a, b)| [a[0] - cos * b[0] + sin * b[1], a[1] - sin * b[0] - cos * b[1]])
            .collect()
    }

    /// The turn that lays the second pattern best on the first by least squares.
    fn turn(&self) -> f64 {
        let n = self.a.len() as f64;
        let middle = |of: &[P]| of.iter().fold([0.0, 0.0], |sum, p| [sum[0] + p[0] / n, sum[1] + p[1] / n]);
        let (ma, mb) = (middle(&self.a), middle(&self.b));
        let (mut sin, mut cos) = (0.0, 0.0);
        for (a, b) in self.a.iter().zip(&self.b) {
            let (a, b) = ([a[0] - ma[0], a[1] - ma[1]], [b[0] - mb[0], b[1] - mb[1]]);
            cos += a[0] * b[0] + a[1] * b[1];
            sin += b[0] * a[1] - b[1] * a[0];
        }
        sin.atan2(cos)
    }

    /// Whether discs about the centres, each as large as its pair allows less `margin`, share a point: if so they share one of their
    /// own centres or a crossing of two of their edges.
    fn shared(&self, centres: &[P], margin: f64) -> bool {
        let radius = |i: usize| self.allowances[i] - margin;
        if (0..centres.len()).any(|i| radius(i) < 0.0) {
            return false;
        }
        let in_all =
            |p: P| (0..centres.len()).all(|i| (p[0] - centres[i][0]).hypot(p[1] - centres[i][1]) <= radius(i) + 1e-9);
        if centres.iter().any(|c| in_all(*c)) {
            return true;
        }
        for i in 0..centres.len() {
            for j in 0..i {
                let (p, q, r, s) = (centres[i], centres[j], radius(i), radius(j));
                let [x, y] = [q[0] - p[0], q[1] - p[1]];
                let d = x.hypot(y);
                if d > r + s {
                    return false;
                }
                if d < (r - s).abs() || d == 0.0 {
                    continue;
                }
                let along = (d * d + r * r - s * s) / (2.0 * d);
                let aside = (r * r - along * along).max(0.0).sqrt();
                for side in [aside, -aside] {
                    if in_all([p[0] + (along * x - side * y) / d, p[1] + (along * y + side * x) / d]) {
                        return true;
                    }
                }
            }
        }
        false
    }

    /// The greatest least margin at a turn, by halving.
    fn at_turn(&self, turn: f64) -> f64 {
        let centres = self.centres(turn);
        let most = self.allowances.iter().copied().fold(f64::INFINITY, f64::min);
        if self.shared(&centres, most) {
            return most;
        }
        let (mut fits, mut not) = (most - 20.0, most);
        for _ in 0..34 {
            let middle = 0.5 * (fits + not);
            if self.shared(&centres, middle) { fits = middle } else { not = middle }
        }
        fits
    }

    /// The greatest least margin, by golden section over turns about the least squares'.
    fn best(&self) -> f64 {
        let golden = 0.618_033_988_749_894_9;
        let size = self.a.iter().map(|p| (p[0] - self.a[0][0]).hypot(p[1] - self.a[0][1])).fold(0.0, f64::max);
        let (mid, half) = (self.turn(), (8.0 / size).min(0.6));
        let (mut from, mut to) = (mid - half, mid + half);
        let (mut left, mut right) = (to - golden * (to - from), from + golden * (to - from));
        let (mut at_left, mut at_right) = (self.at_turn(left), self.at_turn(right));
        let mut best = at_left.max(at_right).max(self.at_turn(mid));
        for _ in 0..30 {
            if at_left >= at_right {
                (to, right, at_right) = (right, left, at_left);
                left = to - golden * (to - from);
                at_left = self.at_turn(left);
            } else {
                (from, left, at_left) = (left, right, at_right);
                right = from + golden * (to - from);
                at_right = self.at_turn(right);
            }
            best = best.max(at_left).max(at_right);
        }
        best
    }

    /// Whether all bolts go in, looking no closer than it takes.
    fn all_in(&self) -> bool {
        if self.shared(&self.centres(self.turn()), -1e-6) {
            return true;
        }
        for i in 0..self.a.len() {
            for j in 0..i {
                let span = |of: &[P]| (of[i][0] - of[j][0]).hypot(of[i][1] - of[j][1]);
                if (span(&self.a) - span(&self.b)).abs() > self.allowances[i] + self.allowances[j] + 1e-5 {
                    return false;
                }
            }
        }
        self.best() >= -1e-6
    }
}

/// A joint to be tried, millimetres.
struct Trial {
    name: &'static str,
    a: Vec<[f64; 3]>,
    b: Vec<[f64; 3]>,
    place_a: f64,
    place_b: f64,
    diameter: f64,
    law: Law,
}

const BOLT: f64 = 12.0;

impl Trial {
    fn errors(&self) -> HoleErrors {
        let [place_a, place_b, diameter] = [self.place_a, self.place_b, self.diameter].map(|range| range * 1e-3);
        HoleErrors { place_a, place_b, diameter, law: self.law }
    }

    fn found(&self) -> fitup_core::fit::mating::bolt_pattern::PatternProbability {
        let holes = |of: &[[f64; 3]]| -> Vec<Hole> {
            of.iter().map(|[u, v, d]| Hole::plain(u * 1e-3, v * 1e-3, d * 1e-3)).collect()
        };
        pattern_probability(&holes(&self.a), &holes(&self.b), BOLT * 1e-3, &self.errors()).expect("sound")
    }

    /// The pairs with errors in half ranges, six a pair; `None` where a hole is too small.
    fn off(&self, by: &[f64]) -> Option<Pairs> {
        let mut pairs = Pairs { a: Vec::new(), b: Vec::new(), allowances: Vec::new() };
        for ((a, b), by) in self.a.iter().zip(&self.b).zip(by.chunks(6)) {
            pairs.a.push([a[0] + self.place_a * by[0], a[1] + self.place_a * by[1]]);
            pairs.b.push([b[0] + self.place_b * by[2], b[1] + self.place_b * by[3]]);
            let plays = [a[2] + self.diameter * by[4] - BOLT, b[2] + self.diameter * by[5] - BOLT];
            if plays.iter().any(|play| *play < 0.0) {
                return None;
            }
            pairs.allowances.push(f64::midpoint(plays[0], plays[1]));
        }
        Some(pairs)
    }

    fn sampled(&self, draws: u32) -> f64 {
        let mut chance = Chance(20_261_130);
        let mut by = vec![0.0; 6 * self.a.len()];
        let mut fitting = 0_u32;
        for _ in 0..draws {
            for error in &mut by {
                *error = chance.error(self.law);
            }
            fitting += u32::from(self.off(&by).is_some_and(|pairs| pairs.all_in()));
        }
        f64::from(fitting) / f64::from(draws)
    }
}

fn turned(holes: &[[f64; 3]], degrees: f64) -> Vec<[f64; 3]> {
    let (sin, cos) = degrees.to_radians().sin_cos();
    holes.iter().map(|[u, v, d]| [cos * u - sin * v + 31.0, sin * u + cos * v - 7.0, *d]).collect()
}

fn trials() -> Vec<Trial> {
    let two = vec![[0.0, 0.0, 12.6], [800.0, 0.0, 12.6]];
    let near = vec![[0.0, 0.0, 12.5], [18.0, 9.0, 12.7]];
    let three = vec![[0.0, 0.0, 13.0], [90.0, 10.0, 12.8], [40.0, 70.0, 13.2]];
    let four = vec![[0.0, 0.0, 13.0], [120.0, 0.0, 13.0], [120.0, 80.0, 13.0], [0.0, 80.0, 13.0]];
    let longer = vec![[0.0, 0.0, 13.0], [120.8, 0.0, 13.0], [120.8, 80.0, 13.0], [0.0, 80.0, 13.0]];
    let six: Vec<[f64; 3]> = (0..6).map(|i| [f64::from(i / 2) * 70.0, f64::from(i % 2) * 50.0, 13.0]).collect();
    let trial = |name, a: &[[f64; 3]], b: &[[f64; 3]], [place_a, place_b, diameter]: [f64; 3], law| Trial {
        name,
        a: a.to_vec(),
        b: b.to_vec(),
        place_a,
        place_b,
        diameter,
        law,
    };
    vec![
        trial("two", &two, &two, [0.6, 0.6, 0.0], Law::Uniform),
        trial("two near", &near, &near, [0.7, 0.4, 0.2], Law::Normal),
        trial("three", &three, &three, [0.6, 0.9, 0.0], Law::Uniform),
        trial("three turned", &three, &turned(&three, 140.0), [1.7, 1.2, 0.4], Law::Normal),
        trial("four", &four, &four, [0.7, 0.7, 0.0], Law::Uniform),
        trial("four longer", &four, &longer, [0.5, 0.8, 0.3], Law::Uniform),
        trial("four turned", &four, &turned(&four, 33.0), [1.6, 1.1, 0.2], Law::Normal),
        trial("six", &six, &six, [0.7, 0.7, 0.1], Law::Uniform),
    ]
}

#[test]
fn probabilities_agree_with_plain_sampling() {
    let draws = 12_000;
    let mut worst = 0.0_f64;
    for trial in trials() {
        let found = trial.found();
        let plain = trial.sampled(draws);
        let sigma = (plain * (1.0 - plain) / f64::from(draws)).sqrt().hypot(found.sigma);
        assert!(found.sigma <= 0.005, "{}", trial.name);
        assert!(plain > 0.05 && plain < 0.999, "{}: {plain} is too sure to tell anything", trial.name);
        let off = (found.all - plain).abs() / sigma;
        assert!(off < 4.0, "{}: {} against {plain}", trial.name, found.all);
        worst = worst.max(off);
    }
    println!(
        "all bolts at once, 8 patterns of {draws} plain samples: greatest disagreement {worst:.1} standard errors"
    );
}

/// The least best margin that corners and random ways downhill from them come to.
fn downhill(trial: &Trial, every_corner: bool, ways: u32) -> f64 {
    let mut chance = Chance(7);
    let count = 6 * trial.a.len();
    let smallest = |by: &mut Vec<f64>| by.chunks_mut(6).for_each(|by| by[4..].fill(-1.0));
    let margin = |by: &[f64]| trial.off(by).expect("large enough").best();
    let mut least = f64::INFINITY;
    let mut starts: Vec<Vec<f64>> = Vec::new();
    if every_corner {
        for corner in 0..1_u32 << (4 * trial.a.len()) {
            let mut by = vec![0.0; count];
            let places = (0..count).filter(|i| i % 6 < 4);
            places.enumerate().for_each(|(bit, i)| by[i] = if corner >> bit & 1 == 0 { -1.0 } else { 1.0 });
            smallest(&mut by);
            let pairs = trial.off(&by).expect("large enough");
            // A lay at hand that leaves more says enough.
            if !pairs.shared(&pairs.centres(pairs.turn()), least) {
                least = least.min(pairs.best());
                starts.push(by);
            }
        }
    }
    // The lowest corners, and some by chance.
    starts = starts.into_iter().rev().take(5).collect();
    starts.extend((0..ways).map(|_| (0..count).map(|_| (2.0 * chance.unit() - 1.0).signum()).collect()));
    for mut by in starts {
        smallest(&mut by);
        let mut here = margin(&by);
        let mut step = 2.0;
        while step > 0.02 {
            let mut moved = false;
            for i in (0..count).filter(|i| i % 6 < 4) {
                let before = by[i];
                for value in [before - step, before + step, 2.0 * chance.unit() - 1.0] {
                    by[i] = value.clamp(-1.0, 1.0);
                    let there = margin(&by);
                    if there < here - 1e-6 {
                        (here, moved) = (there, true);
                        break;
                    }
                    by[i] = before;
                }
            }
            if !moved {
                step /= 3.0;
            }
        }
        least = least.min(here);
    }
    least
}

#[test]
fn worst_margins_agree_with_every_corner_and_ways_downhill() {
    let mut worst = 0.0_f64;
    let small = vec![[0.0, 0.0, 14.0], [32.0, 9.0, 13.0], [7.0, 26.0, 13.5]];
    let kite = vec![[0.0, 0.0, 14.0], [45.0, 12.0, 13.0], [60.0, 55.0, 13.5], [-8.0, 31.0, 14.5]];
    let more = [
        Trial {
            name: "small",
            a: small.clone(),
            b: small.clone(),
            place_a: 1.0,
            place_b: 0.6,
            diameter: 0.0,
            law: Law::Uniform,
        },
        Trial {
            name: "small turned",
            a: small.clone(),
            b: turned(&small, 71.0),
            place_a: 0.4,
            place_b: 1.1,
            diameter: 0.3,
            law: Law::Normal,
        },
        Trial {
            name: "kite",
            a: kite.clone(),
            b: kite.clone(),
            place_a: 0.8,
            place_b: 0.8,
            diameter: 0.0,
            law: Law::Uniform,
        },
        Trial {
            name: "kite turned",
            a: kite.clone(),
            b: turned(&kite, -20.0),
            place_a: 1.0,
            place_b: 0.3,
            diameter: 0.0,
            law: Law::Uniform,
        },
    ];
    // Small and crooked, with errors large against them: where edges matter most.
    let mut chance = Chance(3);
    let crooked = (0..9).map(|i| {
        let holes = 2 + i % 3;
        let hole = |chance: &mut Chance| [20.0 + 45.0 * chance.unit(), 45.0 * chance.unit(), 13.5 + chance.unit()];
        let mut a: Vec<[f64; 3]> = Vec::new();
        while a.len() < holes {
            let next = hole(&mut chance);
            if a.iter().all(|p| (p[0] - next[0]).hypot(p[1] - next[1]) > 18.0) {
                a.push(next);
            }
        }
        let b = turned(&a, 360.0 * chance.unit());
        let [place_a, place_b] = [1.2 * chance.unit(), 1.2 * chance.unit()];
        Trial { name: "crooked", a, b, place_a, place_b, diameter: 0.0, law: Law::Uniform }
    });
    let crooked: Vec<Trial> = crooked.collect();
    for trial in trials().into_iter().chain(more).chain(crooked) {
        let Some(worst_margin) = trial.found().worst else { continue };
        let holes = trial.a.len();
        let tried = downhill(&trial, holes <= 4, 4);
        match worst_margin {
            WorstMargin::Is(margin) => {
                let off = (1e3 * margin - tried).abs();
                assert!(off < 0.01, "{} of {holes}: {} against {tried}", trial.name, 1e3 * margin);
                worst = worst.max(off);
            }
            WorstMargin::AtLeast(margin) => assert!(1e3 * margin <= tried + 1e-6, "{}", trial.name),
        }
    }
    println!("worst margin, corners and ways downhill: greatest disagreement {worst:.4} mm");
}
