//! Chance that comes out the same in every run and on every machine.

use core::f64::consts::{FRAC_1_SQRT_2, TAU};

/// How errors are spread over their range.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Law {
    /// Every error within the half range is as likely as another; none is beyond.
    Uniform,
    /// The normal law with the half range at three standard deviations, not cut off.
    Normal,
}

/// A stream of chance numbers.
///
/// # Source
/// `SplitMix64`: G. Steele, D. Lea, C. Flood, *Fast Splittable Pseudorandom Number Generators*, 2014.
pub(super) struct Chance {
    state: u64,
}

/// Where the stream begins; any other number would do.
const START: u64 = 0x0123_4567_89AB_CDEF;

impl Chance {
    pub fn new() -> Self {
        Self { state: START }
    }

    fn next(&mut self) -> u64 {
        self.state = self.state.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mut mixed = self.state;
        mixed = (mixed ^ (mixed >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        mixed = (mixed ^ (mixed >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        mixed ^ (mixed >> 31)
    }

    /// Above 0, at most 1.
    fn unit(&mut self) -> f64 {
        ((self.next() >> 11) + 1) as f64 * (1.0 / 9_007_199_254_740_992.0)
    }

    /// Fills a list with errors, in half ranges. Its length is even.
    pub fn fill(&mut self, law: Law, errors: &mut [f64]) {
        match law {
            Law::Uniform => errors.iter_mut().for_each(|error| *error = 2.0 * self.unit() - 1.0),
            // Box and Muller: two at a time.
            Law::Normal => {
                for two in errors.chunks_exact_mut(2) {
                    let size = (-2.0 * libm::log(self.unit())).sqrt() / 3.0;
                    let (sin, cos) = libm::sincos(TAU * self.unit());
                    two[0] = size * cos;
                    two[1] = size * sin;
                }
            }
        }
    }
}

/// Probability that an error is at least `least`.
pub(super) fn at_least(least: f64, half_range: f64, law: Law) -> f64 {
    if half_range == 0.0 {
        return if least <= super::SAME { 1.0 } else { 0.0 };
    }
    match law {
        Law::Uniform => ((half_range - least) / (2.0 * half_range)).clamp(0.0, 1.0),
        Law::Normal => 0.5 * libm::erfc(3.0 * least / half_range * FRAC_1_SQRT_2),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Mean, mean square and share above a third of the half range.
    fn moments(law: Law) -> [f64; 3] {
        let mut chance = Chance::new();
        let mut list = vec![0.0; 200_000];
        chance.fill(law, &mut list);
        let mean = |of: &dyn Fn(f64) -> f64| list.iter().map(|error| of(*error)).sum::<f64>() / 200_000.0;
        [mean(&|e| e), mean(&|e| e * e), mean(&|e| f64::from(u8::from(e > 1.0 / 3.0)))]
    }

    #[test]
    fn errors_are_spread_as_their_law_says() {
        let near =
            |got: [f64; 3], wanted: [f64; 3]| got.iter().zip(wanted).all(|(got, wanted)| (got - wanted).abs() < 0.004);
        assert!(near(moments(Law::Uniform), [0.0, 1.0 / 3.0, 1.0 / 3.0]), "{:?}", moments(Law::Uniform));
        assert!(near(moments(Law::Normal), [0.0, 1.0 / 9.0, 0.158_655]), "{:?}", moments(Law::Normal));
        let [.., above] = moments(Law::Normal);
        assert!((above - at_least(1.0 / 3.0, 1.0, Law::Normal)).abs() < 0.004);
    }

    #[test]
    fn what_is_certain_has_no_chance_in_it() {
        for law in [Law::Uniform, Law::Normal] {
            assert!(at_least(0.1, 0.0, law) <= 0.0 && at_least(0.0, 0.0, law) >= 1.0);
        }
        assert!(at_least(-2.0, 1.0, Law::Uniform) >= 1.0 && at_least(2.0, 1.0, Law::Uniform) <= 0.0);
    }

    #[test]
    fn the_stream_is_the_same_in_every_run() {
        // The first number of the published generator from this state.
        let mut chance = Chance { state: 1_234_567 };
        assert_eq!(chance.next(), 6_457_827_717_110_365_317);
        assert_eq!(chance.next(), 3_203_168_211_198_807_973);
    }
}
