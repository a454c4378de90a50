use super::*;

const MM: f64 = 1e-3;

fn rectangle(diameter: f64) -> Vec<Hole> {
    [(0.0, 0.0), (120.0, 0.0), (120.0, 80.0), (0.0, 80.0)]
        .map(|(u, v)| Hole::plain(u * MM, v * MM, diameter * MM))
        .into()
}

fn errors(place: f64, diameter: f64, law: Law) -> HoleErrors {
    HoleErrors { place_a: place * MM, place_b: place * MM, diameter: diameter * MM, law }
}

fn of(a: &[Hole], b: &[Hole], errors: &HoleErrors) -> PatternProbability {
    pattern_probability(a, b, 12.0 * MM, errors).expect("sound")
}

fn is(found: &PatternProbability) -> f64 {
    match found.worst {
        Some(WorstMargin::Is(margin)) => margin / MM,
        other => panic!("{other:?}"),
    }
}

#[test]
fn a_rectangle_on_itself_loses_the_diagonal_of_both_ranges() {
    let holes = rectangle(13.0);
    let worst = is(&of(&holes, &holes, &errors(0.7, 0.0, Law::Uniform)));
    assert!((worst - (1.0 - 1.4 * 2.0_f64.sqrt())).abs() < 0.01, "{worst}");
}

#[test]
fn the_same_errors_lie_on_a_turned_plate() {
    // The second plate drawn turned by 30 degrees: the lay is another, what the errors can do nearly the same.
    let holes = rectangle(13.0);
    let (sin, cos) = libm::sincos(0.52);
    let turned: Vec<Hole> = holes
        .iter()
        .map(|hole| Hole { u: cos * hole.u - sin * hole.v, v: sin * hole.u + cos * hole.v, ..*hole })
        .collect();
    let (straight, turned) =
        (of(&holes, &holes, &errors(0.7, 0.0, Law::Uniform)), of(&holes, &turned, &errors(0.7, 0.0, Law::Uniform)));
    assert!((straight.all - turned.all).abs() < 0.02, "{straight:?} {turned:?}");
    // A square turned against the other reaches less far along any one diagonal.
    assert!(is(&turned) > is(&straight) - 0.001 && is(&turned) < is(&straight) + 0.2, "{straight:?} {turned:?}");
}

#[test]
fn without_errors_it_is_certain_either_way() {
    let (a, mut b) = (rectangle(13.0), rectangle(13.0));
    for law in [Law::Uniform, Law::Normal] {
        assert!(of(&a, &b, &errors(0.0, 0.0, law)).all >= 1.0);
    }
    b[1].u += 2.5 * MM;
    b[2].u += 2.5 * MM;
    let found = of(&a, &b, &errors(0.0, 0.0, Law::Normal));
    assert_eq!((found.all, found.sigma), (0.0, 0.0));
    assert!((is(&found) + 0.25).abs() < 1e-6, "{found:?}");
}

#[test]
fn beyond_four_holes_the_worst_is_bounded() {
    let holes: Vec<Hole> =
        (0..6).map(|i| Hole::plain(f64::from(i) * 60.0 * MM, f64::from(i % 2) * 40.0 * MM, 14.0 * MM)).collect();
    let found = of(&holes, &holes, &errors(0.7, 0.0, Law::Uniform));
    let Some(WorstMargin::AtLeast(margin)) = found.worst else { panic!("{found:?}") };
    assert!((margin / MM - (2.0 - 1.4 * 2.0_f64.sqrt())).abs() < 1e-6);
    assert_eq!((found.all, found.sigma), (1.0, 0.0));
}

#[test]
fn a_hole_that_may_be_too_small_has_no_worst_margin_and_one_that_is_lets_nothing_in() {
    let holes = rectangle(12.2);
    assert_eq!(of(&holes, &holes, &errors(0.01, 0.3, Law::Uniform)).worst, None);
    // 12.2 less 0.2 just takes the bolt.
    assert!(of(&holes, &holes, &errors(0.01, 0.2, Law::Uniform)).worst.is_some());
    let small = rectangle(11.9);
    let found = of(&small, &rectangle(16.0), &errors(0.0, 0.0, Law::Uniform));
    assert_eq!((found.all, found.sigma, found.worst), (0.0, 0.0, None));
}

#[test]
fn holes_all_in_one_place_are_answered_at_once() {
    for count in 1..=5 {
        let heap = vec![Hole::plain(0.1, 0.2, 13.0 * MM); count];
        let spread: Vec<Hole> =
            (0..count).map(|i| Hole::plain(i as f64 * 0.05, (i % 2) as f64 * 0.07, 13.0 * MM)).collect();
        let found = of(&heap, &spread, &errors(0.6, 0.0, Law::Uniform));
        assert_eq!(found.all > 0.5, count == 1, "{found:?}");
    }
}

#[test]
fn many_holes_are_sampled_less_closely() {
    let ring = |count: usize| -> Vec<Hole> {
        let at = |i: usize| core::f64::consts::TAU * i as f64 / count as f64;
        (0..count).map(|i| Hole::plain(0.4 * libm::cos(at(i)), 0.4 * libm::sin(at(i)), 13.7 * MM)).collect()
    };
    let sigma = |count: usize| {
        let holes = ring(count);
        let found = of(&holes, &holes, &errors(1.0, 0.0, Law::Uniform));
        assert!(found.all > 0.2 && found.all < 0.8, "{count}: {found:?}");
        found.sigma
    };
    assert!(sigma(MANY) <= SIGMA);
    let many = sigma(MANY + 6);
    assert!(many > SIGMA && many <= SIGMA_OF_MANY, "{many}");
}

#[test]
fn the_answer_is_the_same_in_every_run() {
    let holes = rectangle(13.0);
    let once = of(&holes, &holes, &errors(0.7, 0.1, Law::Normal));
    assert_eq!(once, of(&holes, &holes, &errors(0.7, 0.1, Law::Normal)));
    assert!(once.sigma > 0.0 && once.sigma <= 0.0015);
}

#[test]
fn what_means_nothing_is_refused() {
    let holes = rectangle(13.0);
    let none = errors(0.0, 0.0, Law::Uniform);
    let fault =
        |a: &[Hole], b: &[Hole], errors: &HoleErrors| pattern_probability(a, b, 0.012, errors).expect_err("unsound");
    assert_eq!(fault(&holes, &holes[1..], &none), ProbabilityFault::Unequal { a: 4, b: 3 });
    assert_eq!(fault(&[], &[], &none), ProbabilityFault::Pattern(PatternFault::NothingRequired));
    let tapped = [Hole::tapped(0.0, 0.0, 0.012)];
    let plain = [Hole::plain(0.0, 0.0, 0.013)];
    assert_eq!(fault(&plain, &tapped, &none), ProbabilityFault::NotPlainRound { side: Plate::B, hole: 0 });
    let slot = [plain[0].slotted(0.01, 0.0)];
    assert_eq!(fault(&slot, &plain, &none), ProbabilityFault::NotPlainRound { side: Plate::A, hole: 0 });
    for (which, bad) in [
        (HalfRange::PlaceA, HoleErrors { place_a: -1e-9, ..none }),
        (HalfRange::PlaceB, HoleErrors { place_b: f64::NAN, ..none }),
        (HalfRange::Diameter, HoleErrors { diameter: f64::INFINITY, ..none }),
    ] {
        assert_eq!(fault(&plain, &plain, &bad), ProbabilityFault::HalfRange(which));
    }
}
