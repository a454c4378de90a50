//! What laying answers in ordinary, odd and hostile cases.

use super::*;
use core::f64::consts::{FRAC_PI_2, PI, TAU};

const BOLT: f64 = 0.012;

fn mm(u: f64, v: f64, diameter: f64) -> Hole {
    Hole::plain(u * 1e-3, v * 1e-3, diameter * 1e-3)
}

fn tapped(u: f64, v: f64) -> Hole {
    Hole::tapped(u * 1e-3, v * 1e-3, BOLT)
}

fn circle(count: usize, radius: f64, diameter: f64) -> Vec<Hole> {
    (0..count)
        .map(|i| {
            let (sin, cos) = libm::sincos(TAU * i as f64 / count as f64);
            mm(radius * cos, radius * sin, diameter)
        })
        .collect()
}

fn moved(holes: &[Hole], turn: f64, u: f64, v: f64) -> Vec<Hole> {
    let motion = Motion { face: Face::AsDrawn, turn, shift_u: u, shift_v: v };
    holes
        .iter()
        .map(|hole| {
            let [u, v] = motion.applied([hole.u, hole.v]);
            let slot = hole.slot.map(|slot| Slot { direction: slot.direction + turn, ..slot });
            Hole { u, v, slot, ..*hole }
        })
        .collect()
}

fn mirrored(holes: &[Hole]) -> Vec<Hole> {
    let flip = |slot: Slot| Slot { direction: PI - slot.direction, ..slot };
    holes.iter().map(|hole| Hole { u: -hole.u, slot: hole.slot.map(flip), ..*hole }).collect()
}

#[track_caller]
fn best(a: &[Hole], b: &[Hole], required: usize, flip: Flip) -> Lay {
    match lay_on(a, b, BOLT, required, flip).expect("well formed") {
        Laid::Found(found) => found,
        other => panic!("not found: {other:?}"),
    }
}

#[track_caller]
fn assert_margin(a: &[Hole], b: &[Hole], required: usize, flip: Flip, margin_mm: f64) {
    let found = best(a, b, required, flip);
    assert!((found.margin * 1e3 - margin_mm).abs() < 1e-6, "{} mm, not {margin_mm} mm", found.margin * 1e3);
}

fn crooked() -> Vec<Hole> {
    vec![mm(0.0, 0.0, 13.0), mm(100.0, 0.0, 13.0), mm(70.0, 55.0, 13.0), mm(-10.0, 45.0, 13.0)]
}

#[test]
fn equal_plates_leave_the_play_of_both_holes_wherever_they_were_drawn() {
    let far = moved(&crooked(), 2.1, 40.0, -70.0);
    assert_margin(&crooked(), &far, 4, Flip::Forbidden, 1.0);
    let found = best(&crooked(), &far, 4, Flip::Forbidden);
    assert!(libm::remainder(found.motion.turn + 2.1, TAU).abs() < 1e-6);
    assert_eq!(found.pairs.iter().map(|p| (p.a, p.b)).collect::<Vec<_>>(), [(0, 0), (1, 1), (2, 2), (3, 3)]);
    assert_eq!((found.unpaired_a.len(), found.unpaired_b.len()), (0, 0));
}

#[test]
fn a_plate_that_is_the_mirror_image_fits_only_when_it_may_be_flipped() {
    let mirror = mirrored(&crooked());
    assert!(best(&crooked(), &mirror, 4, Flip::Forbidden).margin < -0.001);
    let found = best(&crooked(), &mirror, 4, Flip::Allowed);
    assert!((found.margin - 0.001).abs() < 1e-9);
    assert_eq!(found.motion.face, Face::Flipped);
}

#[test]
fn a_flip_takes_the_slots_with_it() {
    let mut a = crooked();
    a[1] = a[1].slotted(0.006, 0.3);
    let mut b = mirrored(&crooked());
    for hole in &mut b {
        *hole = Hole::tapped(hole.u, hole.v, BOLT);
    }
    // The second plate's hole is off along the slot as seen after the flip.
    let (sin, cos) = libm::sincos(PI - 0.3);
    b[1].u += 0.003 * cos;
    b[1].v += 0.003 * sin;
    assert_margin(&a, &b, 4, Flip::Allowed, 0.5);
    // The slot in the flipped plate itself.
    let plain: Vec<Hole> = crooked().iter().map(|h| Hole::tapped(h.u, h.v, BOLT)).collect();
    let mut slotted = mirrored(&crooked());
    slotted[1] =
        Hole { u: slotted[1].u + 0.003 * cos, v: slotted[1].v + 0.003 * sin, ..slotted[1] }.slotted(0.006, PI - 0.3);
    assert_margin(&plain, &slotted, 4, Flip::Allowed, 0.5);
}

#[test]
fn one_hole_leaves_the_best_play_of_any_pair() {
    let a = [mm(0.0, 0.0, 12.5), mm(50.0, 0.0, 14.0)];
    assert_margin(&a, &[mm(9.0, 9.0, 13.0)], 1, Flip::Allowed, 1.5);
    assert_margin(&a, &[tapped(9.0, 9.0)], 1, Flip::Forbidden, 1.0);
    let found = best(&a, &[tapped(9.0, 9.0)], 1, Flip::Forbidden);
    assert_eq!((found.unpaired_a.as_slice(), found.pairs[0].a), (&[0][..], 1));
    let [u, v] = found.motion.applied([0.009, 0.009]);
    assert!((u - 0.05).abs() < 1e-12 && v.abs() < 1e-12);
}

#[test]
fn two_holes_share_the_difference_in_pitch() {
    let a = [mm(0.0, 0.0, 13.0), mm(100.0, 0.0, 13.0)];
    assert_margin(&a, &[tapped(0.0, 0.0), tapped(101.6, 0.0)], 2, Flip::Forbidden, -0.3);
    // Unequal play: the tighter hole is met exactly before the other has given up as much.
    let uneven = [mm(0.0, 0.0, 12.2), mm(100.0, 0.0, 14.0)];
    assert_margin(&uneven, &[tapped(0.0, 0.0), tapped(100.4, 0.0)], 2, Flip::Forbidden, 0.1);
    assert_margin(&uneven, &[tapped(0.0, 0.0), tapped(101.0, 0.0)], 2, Flip::Forbidden, 0.05);
}

#[test]
fn three_holes_meet_at_the_middle_of_their_offsets() {
    // Two equal triangles about the same middle, one larger by 0.5 mm in radius: every hole is off by 0.5 mm.
    assert_margin(&circle(3, 80.0, 13.0), &circle(3, 80.5, 13.0), 3, Flip::Allowed, 0.5);
}

#[test]
fn holes_in_a_row_are_no_special_case() {
    let row = |pitch: f64| (0..6).map(|i| mm(pitch * f64::from(i), 0.0, 13.0)).collect::<Vec<_>>();
    assert_margin(&row(50.0), &moved(&row(50.0), 1.0, 0.3, 0.2), 6, Flip::Allowed, 1.0);
    // 0.2 mm a pitch over five pitches: 1 mm in all, 0.5 mm at either end.
    assert_margin(&row(50.0), &row(50.2), 6, Flip::Allowed, 0.5);
    // With four of six bolts three pitches count.
    assert_margin(&row(50.0), &row(50.2), 4, Flip::Allowed, 0.7);
}

#[test]
fn circles_of_many_holes_are_settled() {
    for count in [6, 12, 24, 48] {
        assert_margin(&circle(count, 100.0, 13.5), &circle(count, 100.0, 13.5), count, Flip::Allowed, 1.5);
        assert_margin(&circle(count, 100.0, 13.5), &circle(count, 100.7, 13.5), count, Flip::Allowed, 0.8);
    }
}

#[test]
fn a_missing_or_superfluous_hole_is_left_out() {
    let mut b = crooked();
    b.insert(1, mm(33.0, 7.0, 13.0));
    let found = best(&crooked(), &b, 4, Flip::Forbidden);
    assert!((found.margin - 0.001).abs() < 1e-9);
    assert_eq!(found.unpaired_b, [1]);
    let swapped = best(&b, &crooked(), 4, Flip::Forbidden);
    assert_eq!((swapped.unpaired_a.as_slice(), swapped.unpaired_b.len()), (&[1][..], 0));
    assert!((swapped.margin - 0.001).abs() < 1e-9);
    // Of four holes any three may be bolted, so the bad one is left out.
    let mut wrong = crooked();
    wrong[2].u += 0.010;
    let found = best(&crooked(), &wrong, 3, Flip::Forbidden);
    assert!((found.margin - 0.001).abs() < 1e-9);
    assert_eq!((found.unpaired_a.as_slice(), found.unpaired_b.as_slice()), (&[2][..], &[2][..]));
}

#[test]
fn slots_in_both_plates_add_up() {
    // Crossed slots: a parallelogram of 4 mm by 6 mm about the second centre.
    let a = [mm(0.0, 0.0, 13.0), mm(100.0, 0.0, 13.0).slotted(0.004, 0.0)];
    let b = |u, v| [tapped(0.0, 0.0), tapped(u, v).slotted(0.006, FRAC_PI_2)];
    assert_margin(&a, &b(102.0, 3.0), 2, Flip::Forbidden, 0.5);
    // Along one line they simply add: 2 + 3 mm either way.
    let b = [tapped(0.0, 0.0), tapped(105.0, 0.0).slotted(0.006, PI)];
    assert_margin(&a, &b, 2, Flip::Forbidden, 0.5);
    let b = [tapped(0.0, 0.0), tapped(105.6, 0.0).slotted(0.006, 0.0)];
    assert_margin(&a, &b, 2, Flip::Forbidden, 0.2);
    // A slot of no travel is a round hole.
    let round = [mm(0.0, 0.0, 13.0), mm(100.0, 0.0, 13.0).slotted(0.0, 1.0)];
    assert_margin(&round, &[tapped(0.0, 0.0), tapped(100.4, 0.0)], 2, Flip::Forbidden, 0.3);
}

#[test]
fn threads_against_threads_and_tight_holes_make_no_pair() {
    let none = |a: &[Hole], b: &[Hole], required| lay_on(a, b, BOLT, required, Flip::Allowed);
    let threads = [tapped(0.0, 0.0), tapped(100.0, 0.0)];
    let plain = [mm(0.0, 0.0, 13.0), mm(100.0, 0.0, 13.0)];
    assert_eq!(none(&threads, &threads, 1), Ok(Laid::NoPairing { possible: 0 }));
    assert_eq!(none(&plain, &plain, 3), Ok(Laid::NoPairing { possible: 2 }));
    assert_eq!(none(&[], &plain, 1), Ok(Laid::NoPairing { possible: 0 }));
    assert_eq!(none(&[], &[], 1), Ok(Laid::NoPairing { possible: 0 }));
    let tight = [mm(0.0, 0.0, 11.999), mm(100.0, 0.0, 12.0)];
    assert_eq!(none(&tight, &plain, 2), Ok(Laid::NoPairing { possible: 1 }));
    assert_eq!(none(&tight, &threads, 2), Ok(Laid::NoPairing { possible: 1 }));
    // A thread and a clearance hole on each plate: crosswise two pairs are possible, and both can be met by turning.
    let mixed = [tapped(0.0, 0.0), mm(100.0, 0.0, 13.0)];
    assert_margin(&mixed, &mixed, 2, Flip::Forbidden, 0.5);
    let found = best(&mixed, &mixed, 2, Flip::Forbidden);
    assert_eq!(found.pairs.iter().map(|p| (p.a, p.b)).collect::<Vec<_>>(), [(0, 1), (1, 0)]);
}

#[test]
fn equal_answers_give_the_least_turned_lay() {
    let rectangle = [mm(0.0, 0.0, 13.0), mm(100.0, 0.0, 13.0), mm(100.0, 60.0, 13.0), mm(0.0, 60.0, 13.0)];
    let found = best(&rectangle, &rectangle, 4, Flip::Allowed);
    assert!(found.motion.turn.abs() < 1e-9 && found.motion.face == Face::AsDrawn, "{:?}", found.motion);
}

#[test]
fn duplicate_and_touching_holes_are_ordinary_holes() {
    let double = [mm(0.0, 0.0, 13.0), mm(0.0, 0.0, 13.0), mm(100.0, 0.0, 13.0)];
    assert_margin(&double, &double, 3, Flip::Allowed, 1.0);
    let all_one = vec![mm(5.0, 5.0, 13.0); 5];
    assert_margin(&all_one, &all_one, 5, Flip::Allowed, 1.0);
    assert_margin(&all_one, &crooked(), 2, Flip::Forbidden, 1.0 - 0.5 * libm::hypot(10.0, 45.0));
}

#[test]
fn the_margins_are_those_of_the_lay() {
    let mut b = moved(&crooked(), 0.4, 0.2, 0.1);
    b[0].u += 4e-4;
    b[3].v -= 3e-4;
    let found = best(&crooked(), &b, 4, Flip::Forbidden);
    for pair in &found.pairs {
        let (a, b) = (crooked()[pair.a], b[pair.b]);
        let [u, v] = found.motion.applied([b.u, b.v]);
        let margin = allowance(&a, &b, BOLT).unwrap() - libm::hypot(u - a.u, v - a.v);
        assert!((margin - pair.margin).abs() < 1e-12);
    }
    let least = found.pairs.iter().map(|pair| pair.margin).fold(f64::INFINITY, f64::min);
    assert!((least - found.margin).abs() < 1e-12);
}

#[test]
fn faults_name_plate_and_hole() {
    let good = [mm(0.0, 0.0, 13.0)];
    let fault = |a: &[Hole], b: &[Hole]| lay_on(a, b, BOLT, 1, Flip::Forbidden).expect_err("must be refused");
    let bad = |change: &dyn Fn(&mut Hole)| {
        let mut hole = good[0].slotted(0.002, 0.0);
        change(&mut hole);
        fault(&good, &[good[0], hole])
    };
    let not_a_number = PatternFault::NotANumber { side: Plate::B, hole: 1 };
    assert_eq!(bad(&|h| h.u = f64::NAN), not_a_number);
    assert_eq!(bad(&|h| h.v = f64::INFINITY), not_a_number);
    assert_eq!(bad(&|h| h.diameter = f64::NAN), not_a_number);
    assert_eq!(bad(&|h| h.slot = Some(Slot { travel: f64::NAN, direction: 0.0 })), not_a_number);
    assert_eq!(bad(&|h| h.slot = Some(Slot { travel: 0.0, direction: f64::NAN })), not_a_number);
    assert_eq!(bad(&|h| h.u = 1.1e6), PatternFault::TooLarge { side: Plate::B, hole: 1 });
    assert_eq!(bad(&|h| h.diameter = 0.0), PatternFault::NoDiameter { side: Plate::B, hole: 1 });
    assert_eq!(bad(&|h| h.diameter = -0.013), PatternFault::NoDiameter { side: Plate::B, hole: 1 });
    let negative = Some(Slot { travel: -0.001, direction: 0.0 });
    assert_eq!(bad(&|h| h.slot = negative), PatternFault::NegativeTravel { side: Plate::B, hole: 1 });
    assert_eq!(fault(&[mm(0.0, 0.0, -1.0)], &good), PatternFault::NoDiameter { side: Plate::A, hole: 0 });
    for bolt in [0.0, -0.012, f64::NAN, f64::INFINITY] {
        assert_eq!(lay_on(&good, &good, bolt, 1, Flip::Forbidden), Err(PatternFault::NoBolt));
    }
    assert_eq!(lay_on(&good, &good, BOLT, 0, Flip::Forbidden), Err(PatternFault::NothingRequired));
    let many = vec![good[0]; 10_000];
    let too_many = Err(PatternFault::TooManyHoles { side: Plate::A, holes: 10_000 });
    assert_eq!(lay_on(&many, &good, BOLT, 1, Flip::Forbidden), too_many);
    assert!(lay_on(&vec![good[0]; MOST_HOLES], &good, BOLT, 1, Flip::Forbidden).is_ok());
}

#[test]
fn a_pattern_at_the_edge_of_what_is_a_length_is_no_trouble() {
    let huge = [Hole::plain(1e6, 1e6, 1e6), Hole::plain(-1e6, 1e6, 1e6)];
    let found = lay_on(&huge, &huge, 1e5, 2, Flip::Allowed).unwrap();
    assert!((found.found().unwrap().margin - 9e5).abs() < 1e-3);
}

#[test]
fn too_little_effort_is_admitted_with_true_bounds() {
    let a = circle(30, 100.0, 13.5);
    let b: Vec<Hole> =
        circle(30, 100.4, 13.5).iter().enumerate().map(|(i, h)| Hole { v: h.v + 1e-5 * i as f64, ..*h }).collect();
    let full = best(&a, &b, 30, Flip::Allowed);
    match lay_on_within(&a, &b, BOLT, 30, Flip::Allowed, &mut 1_000).unwrap() {
        Laid::Undecided { at_least, at_most } => {
            assert!(at_most >= full.margin);
            assert!(at_least.is_none_or(|lay| lay.margin <= full.margin + RESOLUTION));
        }
        other => panic!("a thousand comparisons cannot settle thirty holes: {other:?}"),
    }
    let undecided = Laid::Undecided { at_least: None, at_most: 0.0 };
    assert_eq!((undecided.found(), Laid::NoPairing { possible: 0 }.found()), (None, None));
}

/// Holes strewn over a plate of 600 mm by 600 mm, the same at every run; every third a slot where `slots`.
fn strewn(count: usize, seed: u64, slots: bool) -> Vec<Hole> {
    let mut state = seed;
    let mut next = |span: f64| {
        state = state.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        span * (state >> 11) as f64 / (1_u64 << 53) as f64
    };
    (0..count)
        .map(|index| {
            let hole = mm(next(600.0), next(600.0), 12.5 + next(2.0));
            if slots && index % 3 == 0 { hole.slotted(0.001 + next(0.03), next(3.0)) } else { hole }
        })
        .collect()
}

#[test]
fn strewn_holes_take_no_more_than_the_effort_allowed() {
    for (count, required, slots) in [
        (16, 16, false),
        (32, 16, false),
        (64, 4, false),
        (64, 32, false),
        (200, 20, false),
        (500, 8, false),
        (40, 20, true),
    ] {
        let (a, b) = (strewn(count, 1, slots), strewn(count, 2, slots));
        let mut effort = USUAL_EFFORT;
        let laid = lay_on_within(&a, &b, BOLT, required, Flip::Allowed, &mut effort).unwrap();
        assert!(matches!(laid, Laid::Undecided { .. }), "{count} holes, {required} bolts: {laid:?}");
        assert_eq!(effort, 0, "all of it was spent, and no more could be");
    }
}

#[test]
fn that_strewn_holes_do_not_meet_is_known_long_before_how_far_they_miss() {
    let (a, b) = (strewn(16, 1, false), strewn(16, 2, false));
    let mut effort = USUAL_EFFORT / 50;
    match lay_on_within(&a, &b, BOLT, 16, Flip::Allowed, &mut effort).unwrap() {
        Laid::Undecided { at_least: Some(lay), at_most } => {
            assert!(at_most <= -16e-3 && lay.margin < at_most, "{at_most} {}", lay.margin);
        }
        other => panic!("a fiftieth of the work does not settle it: {other:?}"),
    }
}

#[test]
fn every_bound_is_true_however_early_the_search_ends() {
    for seed in 0..12 {
        for (count, required, slots) in [(5, 5, false), (7, 4, true), (8, 6, false), (6, 3, true)] {
            let (a, b) = (strewn(count, 2 * seed, slots), strewn(count, 2 * seed + 1, slots));
            let full = best(&a, &b, required, Flip::Allowed).margin;
            for effort in [0, 1, 30, 100, 300, 1_000, 3_000, 10_000, 30_000, 100_000] {
                let mut left = effort;
                match lay_on_within(&a, &b, BOLT, required, Flip::Allowed, &mut left).unwrap() {
                    Laid::Undecided { at_least, at_most } => {
                        assert!(at_most >= full - RESOLUTION, "{seed} {effort}: {at_most} {full}");
                        assert!(at_least.is_none_or(|lay| lay.margin <= full + RESOLUTION), "{seed} {effort}");
                        assert_eq!(left, 0);
                    }
                    other => assert!((other.found().unwrap().margin - full).abs() <= RESOLUTION, "{seed} {effort}"),
                }
            }
        }
    }
}

#[test]
fn a_margin_of_nothing_fits_and_a_hair_less_does_not() {
    let a = [mm(0.0, 0.0, 13.0), mm(100.0, 0.0, 13.0)];
    assert!(best(&a, &[tapped(0.0, 0.0), tapped(101.0, 0.0)], 2, Flip::Forbidden).fits());
    assert!(!best(&a, &[tapped(0.0, 0.0), tapped(101.001, 0.0)], 2, Flip::Forbidden).fits());
}

#[test]
fn a_motion_and_its_inverse_undo_each_other() {
    for face in [Face::AsDrawn, Face::Flipped] {
        let motion = Motion { face, turn: 0.7, shift_u: 0.3, shift_v: -1.2 };
        let [u, v] = motion.inverse().applied(motion.applied([0.11, 0.22]));
        assert!((u - 0.11).abs() < 1e-15 && (v - 0.22).abs() < 1e-15, "{face:?}");
        let [u, v] = motion.applied(motion.inverse().applied([0.11, 0.22]));
        assert!((u - 0.11).abs() < 1e-15 && (v - 0.22).abs() < 1e-15, "{face:?}");
    }
}
