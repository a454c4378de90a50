//! A pattern's margin when every hole may be off by all it may.

use super::{Hole, Lay};

/// How far the figures of one hole may be off, metres either way.
#[derive(Clone, Copy, Debug, PartialEq, Default)]
pub struct HoleError {
    /// Of the place along u.
    pub u: f64,
    /// Of the place along v.
    pub v: f64,
    /// Of the diameter.
    pub diameter: f64,
}

impl HoleError {
    /// The most the centre can be off, in whatever direction.
    fn place(self) -> f64 {
        libm::hypot(self.u, self.v)
    }
}

/// What the margin can come to.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct WorstCase {
    /// No errors make it less than this, metres. Not below zero: the bolts go in, certainly.
    pub least: f64,
    /// No errors make it more than this, metres. Below zero: they do not, certainly.
    pub greatest: f64,
    /// Both are reached; otherwise they are bounds.
    pub exact: bool,
}

/// The least and greatest margin of a lay when every hole may be off in both coordinates and in diameter at once.
///
/// The plates may be shifted anew for whatever the errors are. A pair's margin changes by no more than both places and half
/// both diameters, so the best least margin changes by no more than the most of any pair. Two plates with two round holes
/// each are told exactly: all that counts is what the two spans can differ by. `None` when a half range is missing, negative or
/// not a number.
///
/// # Units
/// Metres.
///
/// # Accuracy
/// For a rectangle on itself the least is exact as well: the allowance less √2 times both half ranges.
///
/// # Source
/// Own derivation.
///
/// # Examples
/// Four M12 bolts in 13.5 mm holes, each coordinate of one plate within 1.5 mm: 1.5 − √2 · 1.5 mm, so nothing is certain.
/// ```
/// use fitup_core::fit::mating::bolt_pattern::{Flip, Hole, HoleError, lay_on, worst_case};
/// let plate = [(0.0, 0.0), (0.1, 0.0), (0.1, 0.06), (0.0, 0.06)].map(|(u, v)| Hole::plain(u, v, 0.0135));
/// let registered = lay_on(&plate, &plate, 0.012, 4, Flip::Forbidden)?;
/// let taped = [HoleError { u: 0.0015, v: 0.0015, diameter: 0.0 }; 4];
/// let worst = worst_case([&plate, &plate], registered.found().expect("four"), [&taped, &[HoleError::default(); 4]]);
/// assert!((worst.expect("plain figures").least - 0.0015 * (1.0 - 2.0_f64.sqrt())).abs() < 1e-9);
/// # Ok::<(), fitup_core::fit::mating::bolt_pattern::PatternFault>(())
/// ```
pub fn worst_case([a, b]: [&[Hole]; 2], lay: &Lay, [of_a, of_b]: [&[HoleError]; 2]) -> Option<WorstCase> {
    let known =
        |error: &HoleError| [error.u, error.v, error.diameter].iter().all(|x| (0.0..=super::LARGEST).contains(x));
    if of_a.len() != a.len() || of_b.len() != b.len() || !of_a.iter().chain(of_b).all(known) {
        return None;
    }
    let size = |error: &HoleError| error.place() + 0.5 * error.diameter;
    let most = |errors: &[HoleError]| errors.iter().map(size).fold(0.0, f64::max);
    let paired = lay.pairs.iter().map(|pair| Some(size(of_a.get(pair.a)?) + size(of_b.get(pair.b)?)));
    let paired = paired.collect::<Option<Vec<f64>>>()?.into_iter().fold(0.0, f64::max);
    let bounds = WorstCase {
        least: lay.margin - paired,
        // Another pairing may serve better once the holes are elsewhere.
        greatest: lay.margin + most(of_a) + most(of_b),
        exact: false,
    };
    Some(two_on_two([a, b], lay, [of_a, of_b]).unwrap_or(bounds))
}

/// Two round holes on two, alike: by what the spans can differ.
fn two_on_two([a, b]: [&[Hole]; 2], lay: &Lay, [of_a, of_b]: [&[HoleError]; 2]) -> Option<WorstCase> {
    let ([a0, a1], [b0, b1]) = (a, b) else { return None };
    let [first, second] = lay.pairs[..] else { return None };
    let round = [a0, a1, b0, b1].iter().all(|hole| hole.slot.is_none());
    let same = |one: f64, other: f64| (one - other).abs() <= super::RESOLUTION;
    let alike = same(a0.diameter, a1.diameter) || same(b0.diameter, b1.diameter);
    let same_errors = same(of_a[0].diameter, of_a[1].diameter) && same(of_b[0].diameter, of_b[1].diameter);
    if !round || !alike || !same_errors {
        return None;
    }
    let (span_a, span_b) = (span([a0, a1], of_a), span([b0, b1], of_b));
    // The allowances follow from the margins at the lay: margin and distance of the centres.
    let allowance = |pair: &super::PairedHoles| {
        let [u, v] = lay.motion.applied([b[pair.b].u, b[pair.b].v]);
        pair.margin + libm::hypot(u - a[pair.a].u, v - a[pair.a].v)
    };
    let (one, other) = (allowance(&first), allowance(&second));
    let size = 0.5 * (of_a[0].diameter + of_b[0].diameter);
    let margin = |apart: f64, size: f64| {
        let (one, other) = (one + size, other + size);
        one.min(other).min(0.5 * (one + other - apart))
    };
    let farthest = (span_a[1] - span_b[0]).max(span_b[1] - span_a[0]);
    let nearest = (span_a[0] - span_b[1]).max(span_b[0] - span_a[1]).max(0.0);
    Some(WorstCase { least: margin(farthest, -size), greatest: margin(nearest, size), exact: true })
}

/// Least and greatest distance of two holes.
fn span([p, q]: [&Hole; 2], errors: &[HoleError]) -> [f64; 2] {
    let part = |off: f64, error: f64| [(off.abs() - error).max(0.0), off.abs() + error];
    let u = part(q.u - p.u, errors[0].u + errors[1].u);
    let v = part(q.v - p.v, errors[0].v + errors[1].v);
    [libm::hypot(u[0], v[0]), libm::hypot(u[1], v[1])]
}

#[cfg(test)]
mod tests {
    use super::super::{Flip, lay_on};
    use super::*;

    fn plate(places: &[(f64, f64)], errors: &[HoleError], corner: u32) -> Vec<Hole> {
        let sign = |bit: usize| if corner >> bit & 1 == 0 { -1.0 } else { 1.0 };
        let hole = |(i, &(u, v)): (usize, &(f64, f64))| {
            let error = errors[i];
            let diameter = 0.0135 - error.diameter;
            Hole::plain(u * 1e-3 + sign(2 * i) * error.u, v * 1e-3 + sign(2 * i + 1) * error.v, diameter)
        };
        places.iter().enumerate().map(hole).collect()
    }

    fn margin(a: &[Hole], b: &[Hole]) -> f64 {
        lay_on(a, b, 0.012, a.len(), Flip::Forbidden).unwrap().found().unwrap().margin
    }

    /// Least margin over the corners of the box, and what is said of it.
    fn corners(places: &[(f64, f64)], moved: &[(f64, f64)], error: HoleError) -> (f64, WorstCase) {
        let (none, errors) = (vec![HoleError::default(); places.len()], vec![error; places.len()]);
        let (a, b) = (plate(places, &none, 0), plate(moved, &none, 0));
        let registered = lay_on(&a, &b, 0.012, a.len(), Flip::Forbidden).unwrap();
        let said = worst_case([&a, &b], registered.found().unwrap(), [&none, &errors]).unwrap();
        let at = (0..1u32 << (2 * places.len())).map(|corner| margin(&a, &plate(moved, &errors, corner)));
        (at.fold(f64::INFINITY, f64::min), said)
    }

    #[test]
    fn a_rectangle_on_itself_loses_the_diagonal_of_the_error() {
        let rectangle = [(0.0, 0.0), (100.0, 0.0), (100.0, 60.0), (0.0, 60.0)];
        let error = HoleError { u: 0.4e-3, v: 0.4e-3, diameter: 0.1e-3 };
        let (least, said) = corners(&rectangle, &rectangle, error);
        let by_hand = 0.0015 - 0.05e-3 - 2.0_f64.sqrt() * 0.4e-3;
        assert!((said.least - by_hand).abs() < 1e-9 && !said.exact);
        assert!((least - by_hand).abs() < 1e-5, "{least} against {by_hand}");
    }

    #[test]
    fn no_corner_is_below_the_least_for_a_crooked_pattern() {
        let (here, there) = ([(0.0, 0.0), (90.0, 10.0), (30.0, 70.0)], [(0.3, 0.0), (90.0, 10.5), (30.0, 69.6)]);
        let (least, said) = corners(&here, &there, HoleError { u: 0.5e-3, v: 0.2e-3, diameter: 0.0 });
        assert!(least >= said.least - 1e-8, "{least} below {}", said.least);
    }

    #[test]
    fn two_holes_are_told_exactly_by_their_spans() {
        let error = HoleError { u: 0.5e-3, v: 0.3e-3, diameter: 0.2e-3 };
        let (least, said) = corners(&[(0.0, 0.0), (80.0, 30.0)], &[(0.0, 0.0), (81.0, 30.0)], error);
        assert!(said.exact);
        assert!((least - said.least).abs() < 1e-8, "{least} against {}", said.least);
        assert!(said.greatest >= said.least && said.greatest <= 0.0015 + 0.1e-3 + 1e-12);
    }

    #[test]
    fn certain_misfits_stay_misfits_and_what_is_not_known_is_not_judged() {
        let (a, b) = (
            plate(&[(0.0, 0.0), (80.0, 0.0)], &[HoleError::default(); 2], 0),
            vec![Hole::plain(0.0, 0.0, 0.0135), Hole::plain(0.090, 0.0, 0.0135)],
        );
        let registered = lay_on(&a, &b, 0.012, 2, Flip::Forbidden).unwrap();
        let error = [HoleError { u: 0.5e-3, v: 0.5e-3, diameter: 0.0 }; 2];
        let said = worst_case([&a, &b], registered.found().unwrap(), [&error, &error]).unwrap();
        assert!(said.greatest < 0.0 && said.least < said.greatest);
        assert_eq!(worst_case([&a, &b], registered.found().unwrap(), [&error, &error[..1]]), None);
        let none = [HoleError { u: f64::NAN, ..error[0] }; 2];
        assert_eq!(worst_case([&a, &b], registered.found().unwrap(), [&error, &none]), None);
    }
}
