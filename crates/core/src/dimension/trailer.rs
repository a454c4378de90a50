//! The machine on a trailer: nose weight, axle load, and where on the deck it may stand.

use super::input::{Fault, InputError, SMALLEST, between, not_negative, sound};
use super::moment::{difference, span, without_rounding};

/// A trailer. Frame: origin under its axle, x forward to the coupler; for two axles, midway between them.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TrailerBed {
    /// Its own mass, kilograms.
    pub mass: f64,
    /// x of its own centre of gravity, metres.
    pub centre: f64,
    /// x of its coupler, metres.
    pub coupler: f64,
}

/// A machine that stands on the trailer.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Cargo {
    /// Load of its front axle, kilograms.
    pub front: f64,
    /// Load of its rear axle, kilograms.
    pub rear: f64,
    /// Wheelbase, metres.
    pub wheelbase: f64,
    /// Which way it faces.
    pub heading: Heading,
}

/// Which way the machine on the trailer faces.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Heading {
    /// Its front end to the coupler.
    Forward,
    /// Its rear end to the coupler.
    Backward,
}

impl Heading {
    pub(crate) fn sign(self) -> f64 {
        match self {
            Self::Forward => 1.0,
            Self::Backward => -1.0,
        }
    }
}

/// A stretch along the trailer, metres.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Stretch {
    /// Its rear end.
    pub low: f64,
    /// Its front end; behind `low` when nothing lies in it.
    pub high: f64,
}

impl Stretch {
    /// Whether `x` lies in it; its ends do.
    pub fn holds(self, x: f64) -> bool {
        difference(x, self.low) >= 0.0 && difference(self.high, x) >= 0.0
    }

    /// What lies in both; `None` when nothing does.
    pub fn and(self, other: Self) -> Option<Self> {
        let both = Self { low: self.low.max(other.low), high: self.high.min(other.high) };
        (difference(both.high, both.low) >= 0.0).then_some(both)
    }
}

/// What the coupler and the axle carry.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TrailerLoads {
    /// Mass of trailer and machine, kilograms.
    pub total: f64,
    /// Nose weight at the coupler, kilograms; negative when the nose lifts.
    pub nose: f64,
    /// Load of the axle, or of both axles together, kilograms. Two equalised axles carry half each.
    pub axle: f64,
}

impl TrailerLoads {
    /// Nose weight as a share of the total; `None` when nothing has mass.
    pub fn nose_share(&self) -> Option<f64> {
        (self.total > 0.0).then(|| self.nose / self.total)
    }
}

/// Nose weight and axle load with the machine's rear axle at `at`.
///
/// Shape: one axle, or two equalised ones taken as one midway. Units: kilograms, metres. Frame: the trailer's.
/// Valid for: level, standing still. Accuracy: closed form, rounding only.
///
/// # Errors
/// A coupler or wheelbase shorter than a millimetre, a negative trailer mass, a negative sum of the machine's axle
/// loads, or a number that is not finite.
///
/// # Source
/// Moment balance about the trailer's axle.
///
/// # Examples
/// 1000 kg balanced 0.3 m ahead of the axle, coupler at 3 m: a tenth rests on the coupler.
/// ```
/// use fitup_core::dimension::{Cargo, Heading, TrailerBed, trailer_loads};
/// let bed = TrailerBed { mass: 0.0, centre: 0.0, coupler: 3.0 };
/// let cargo = Cargo { front: 400.0, rear: 600.0, wheelbase: 1.5, heading: Heading::Forward };
/// let loads = trailer_loads(bed, cargo, -0.3).unwrap();
/// assert!((loads.nose - 100.0).abs() < 1e-9);
/// ```
pub fn trailer_loads(bed: TrailerBed, cargo: Cargo, at: f64) -> Result<TrailerLoads, InputError> {
    check(bed, cargo)?;
    sound("place", at)?;
    let total = bed.mass + cargo.rear + cargo.front;
    let front = at + cargo.heading.sign() * cargo.wheelbase;
    let parts = [bed.mass * bed.centre, cargo.rear * at, cargo.front * front];
    let nose = without_rounding(parts.iter().sum(), parts) / bed.coupler;
    Ok(TrailerLoads { total, nose, axle: total - nose })
}

/// Places of the machine's rear axle that keep the nose weight's share of the total between `least` and `most`.
///
/// `None` when the machine has no mass above [`SMALLEST`] and its place changes nothing.
///
/// # Errors
/// As [`trailer_loads`], a share outside 0 to 1, or the two in the wrong order.
///
/// # Source
/// Moment balance. Usual shares, guidance and not law: 10 to 15 % of the loaded trailer (University of Virginia,
/// Office of Property and Liability Risk Management).
///
/// # Examples
/// 1000 kg balanced 0.6 m ahead of the rear axle; a tenth on a coupler at 3 m asks for 0.3 m ahead of the axle.
/// ```
/// use fitup_core::dimension::{Cargo, Heading, TrailerBed, nose_window};
/// let bed = TrailerBed { mass: 0.0, centre: 0.0, coupler: 3.0 };
/// let cargo = Cargo { front: 400.0, rear: 600.0, wheelbase: 1.5, heading: Heading::Forward };
/// let window = nose_window(bed, cargo, 0.1, 0.15).unwrap().unwrap();
/// assert!((window.low + 0.3).abs() < 1e-12 && (window.high + 0.15).abs() < 1e-12);
/// ```
pub fn nose_window(bed: TrailerBed, cargo: Cargo, least: f64, most: f64) -> Result<Option<Stretch>, InputError> {
    check(bed, cargo)?;
    between("least-share", least, 0.0, 1.0)?;
    between("most-share", most, 0.0, 1.0)?;
    if least > most {
        return Err(InputError { what: "least-share", fault: Fault::Unordered });
    }
    let machine = cargo.rear + cargo.front;
    let total = bed.mass + machine;
    let fixed = bed.mass * bed.centre + cargo.heading.sign() * cargo.front * cargo.wheelbase;
    let place = |share: f64| (share * total * bed.coupler - fixed) / machine;
    Ok((machine >= SMALLEST).then(|| Stretch { low: place(least), high: place(most) }))
}

/// Places of the machine's rear axle with both its axles on the deck; its ends change order when the deck is
/// shorter than the wheelbase, by what is missing.
///
/// # Errors
/// A wheelbase shorter than a millimetre, a deck whose ends are in the wrong order, or a number that is not finite.
///
/// # Examples
/// ```
/// use fitup_core::dimension::{Heading, Stretch, wheels_window};
/// let deck = Stretch { low: -1.5, high: 2.5 };
/// assert_eq!(wheels_window(deck, 1.5, Heading::Forward).unwrap(), Stretch { low: -1.5, high: 1.0 });
/// assert_eq!(wheels_window(deck, 1.5, Heading::Backward).unwrap(), Stretch { low: 0.0, high: 2.5 });
/// ```
pub fn wheels_window(deck: Stretch, wheelbase: f64, heading: Heading) -> Result<Stretch, InputError> {
    sound_deck(deck)?;
    span("wheelbase", wheelbase)?;
    Ok(match heading {
        Heading::Forward => Stretch { high: deck.high - wheelbase, ..deck },
        Heading::Backward => Stretch { low: deck.low + wheelbase, ..deck },
    })
}

/// Whether both axles stand on the deck with the rear axle at `at`.
///
/// # Errors
/// As [`wheels_window`].
///
/// # Examples
/// ```
/// use fitup_core::dimension::{Heading, Stretch, wheels_on_deck};
/// let deck = Stretch { low: -1.5, high: 2.5 };
/// assert!(wheels_on_deck(deck, 1.5, Heading::Forward, 1.0).unwrap());
/// assert!(!wheels_on_deck(deck, 1.5, Heading::Backward, -0.1).unwrap());
/// ```
pub fn wheels_on_deck(deck: Stretch, wheelbase: f64, heading: Heading, at: f64) -> Result<bool, InputError> {
    sound_deck(deck)?;
    span("wheelbase", wheelbase)?;
    sound("place", at)?;
    Ok(deck.holds(at) && deck.holds(at + heading.sign() * wheelbase))
}

/// How far the machine's body reaches beyond the deck's rear end and front end, metres, never below 0.
///
/// `body` is the machine's length in its own frame; facing backward its rear end points to the coupler.
///
/// # Errors
/// A deck or body whose ends are in the wrong order, or a number that is not finite.
///
/// # Examples
/// ```
/// use fitup_core::dimension::{Heading, Stretch, deck_overhang};
/// let (deck, body) = (Stretch { low: -1.5, high: 2.5 }, Stretch { low: -1.0, high: 2.0 });
/// assert_eq!(deck_overhang(deck, body, Heading::Forward, -1.0).unwrap(), (0.5, 0.0));
/// assert_eq!(deck_overhang(deck, body, Heading::Backward, 2.0).unwrap(), (0.0, 0.5));
/// ```
pub fn deck_overhang(deck: Stretch, body: Stretch, heading: Heading, at: f64) -> Result<(f64, f64), InputError> {
    sound_deck(deck)?;
    ordered("body", body)?;
    sound("place", at)?;
    let (rear, front) = match heading {
        Heading::Forward => (at + body.low, at + body.high),
        Heading::Backward => (at - body.high, at - body.low),
    };
    Ok((difference(deck.low, rear).max(0.0), difference(front, deck.high).max(0.0)))
}

fn check(bed: TrailerBed, cargo: Cargo) -> Result<(), InputError> {
    not_negative("trailer-mass", bed.mass)?;
    sound("trailer-centre", bed.centre)?;
    span("coupler", bed.coupler)?;
    sound("front-load", cargo.front)?;
    sound("rear-load", cargo.rear)?;
    not_negative("rear-load", cargo.front + cargo.rear)?;
    span("wheelbase", cargo.wheelbase)?;
    Ok(())
}

fn sound_deck(deck: Stretch) -> Result<(), InputError> {
    ordered("deck", deck)
}

fn ordered(what: &'static str, stretch: Stretch) -> Result<(), InputError> {
    sound(what, stretch.low)?;
    sound(what, stretch.high)?;
    if stretch.low > stretch.high { Err(InputError { what, fault: Fault::Unordered }) } else { Ok(()) }
}

#[cfg(test)]
mod tests {
    use super::*;

    const BED: TrailerBed = TrailerBed { mass: 450.0, centre: 0.35, coupler: 3.0 };
    const CARGO: Cargo = Cargo { front: 500.0, rear: 800.0, wheelbase: 1.5, heading: Heading::Forward };

    #[test]
    fn each_end_of_the_window_gives_its_share() {
        for heading in [Heading::Forward, Heading::Backward] {
            let cargo = Cargo { heading, ..CARGO };
            let window = nose_window(BED, cargo, 0.1, 0.15).expect("sound").expect("has mass");
            for (at, share) in [(window.low, 0.1), (window.high, 0.15)] {
                let found = trailer_loads(BED, cargo, at).expect("sound").nose_share().expect("has mass");
                assert!((found - share).abs() < 1e-12);
            }
        }
    }

    #[test]
    fn a_machine_too_far_back_lifts_the_nose() {
        let loads = trailer_loads(BED, CARGO, -1.8).expect("sound");
        assert!(loads.nose < 0.0 && loads.axle > loads.total);
    }

    #[test]
    fn each_end_stands_out_either_way_round() {
        let (deck, body) = (Stretch { low: -1.5, high: 2.5 }, Stretch { low: -0.8, high: 2.1 });
        let near = |heading, at, (rear, front): (f64, f64)| {
            let found = deck_overhang(deck, body, heading, at).expect("sound");
            assert!((found.0 - rear).abs() < 1e-12 && (found.1 - front).abs() < 1e-12, "{found:?}");
        };
        near(Heading::Forward, 0.7, (0.0, 0.3));
        near(Heading::Forward, -1.1, (0.4, 0.0));
        near(Heading::Backward, 0.4, (0.2, 0.0));
        near(Heading::Backward, 1.9, (0.0, 0.2));
        near(Heading::Forward, 0.3, (0.0, 0.0));
    }

    #[test]
    fn nothing_on_the_trailer_has_no_window() {
        let empty = Cargo { front: 0.0, rear: 0.0, ..CARGO };
        assert_eq!(nose_window(BED, empty, 0.1, 0.15), Ok(None));
        let next_to_nothing = Cargo { front: 5e-324, rear: 5e-324, ..empty };
        assert_eq!(nose_window(BED, next_to_nothing, 0.1, 0.15), Ok(None), "no window can be told in numbers");
        let nothing = trailer_loads(TrailerBed { mass: 0.0, ..BED }, empty, 0.0).expect("sound");
        assert_eq!(nothing.nose_share(), None);
    }

    #[test]
    fn stretches_that_only_touch_share_a_point_and_apart_ones_nothing() {
        let left = Stretch { low: -1.0, high: 0.3 };
        let touching = left.and(Stretch { low: 0.1 + 0.2, high: 1.0 }).expect("one point");
        assert!((touching.low - 0.3).abs() < 1e-12);
        assert_eq!(left.and(Stretch { low: 0.31, high: 1.0 }), None);
    }

    #[test]
    fn a_deck_shorter_than_the_wheelbase_holds_no_place() {
        let deck = Stretch { low: -0.5, high: 0.5 };
        let window = wheels_window(deck, 1.5, Heading::Forward).expect("sound");
        assert!(window.low > window.high);
        assert_eq!(window.and(Stretch { low: -9.0, high: 9.0 }), None);
    }

    #[test]
    fn wheels_exactly_at_both_ends_stand_on_the_deck() {
        let deck = Stretch { low: -0.6, high: 0.9 };
        assert_eq!(wheels_on_deck(deck, 1.5, Heading::Forward, -0.6), Ok(true));
        assert_eq!(wheels_on_deck(deck, 1.5, Heading::Backward, 0.9), Ok(true));
        assert_eq!(wheels_on_deck(deck, 1.51, Heading::Backward, 0.9), Ok(false));
    }

    #[test]
    fn unsound_numbers_are_named() {
        let what = |bed, cargo| trailer_loads(bed, cargo, 0.0).expect_err("unsound").what;
        assert_eq!(what(TrailerBed { coupler: 0.0, ..BED }, CARGO), "coupler");
        assert_eq!(what(TrailerBed { mass: -1.0, ..BED }, CARGO), "trailer-mass");
        assert_eq!(what(BED, Cargo { rear: -900.0, ..CARGO }), "rear-load");
        assert_eq!(nose_window(BED, CARGO, 0.2, 0.1).map_err(|e| e.fault), Err(Fault::Unordered));
        assert_eq!(nose_window(BED, CARGO, 0.1, 15.0).map_err(|e| e.what), Err("most-share"));
        let reversed = Stretch { low: 1.0, high: -1.0 };
        assert_eq!(wheels_window(reversed, 1.5, Heading::Forward).map_err(|e| e.what), Err("deck"));
        let deck = Stretch { low: -1.0, high: 1.0 };
        assert_eq!(deck_overhang(deck, reversed, Heading::Forward, 0.0).map_err(|e| e.what), Err("body"));
    }
}
