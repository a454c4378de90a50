//! How far lengths of a finished machine, and of a place it goes through, may be off.

use crate::fit::mating::half_range::{Origin, Process, half_range};
use crate::quantity::Length;

/// How far a length across a machine may be off that a row states or an outline shows: as weldments are made.
///
/// Beyond the table's 4 m and below its 2 mm, what its end has.
pub(crate) fn drawn_off(size: Length) -> Length {
    off(Origin::Drawing, size, 0.002)
}

/// How far a length may be off that somebody took with a tape: a gateway, a deck.
pub(crate) fn taped_off(size: Length) -> Length {
    off(Origin::Tape, size, 0.001)
}

fn off(origin: Origin, size: Length, least: f64) -> Length {
    let size = size.m().abs().clamp(least, 4.0);
    Length::from_m(half_range(origin, Process::Welded, size).unwrap_or_default())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_wide_machine_is_off_by_more_than_a_narrow_one_and_a_tape_by_less() {
        // ISO 13920-B: 400 mm to 1 m ±3, 1 to 2 m ±4, 2 to 4 m ±6; tape of class II at 2 m: 0.3 + 0.4 + 0.2, and half a
        // millimetre of reading.
        let drawn = [0.5, 1.3, 2.5, 9.0].map(|m| drawn_off(Length::from_m(m)).mm());
        assert!(drawn.iter().zip([3.0, 4.0, 6.0, 6.0]).all(|(off, by_hand)| (off - by_hand).abs() < 1e-9), "{drawn:?}");
        assert!((taped_off(Length::from_m(2.0)).mm() - 1.4).abs() < 1e-9);
        assert!(
            drawn_off(Length::ZERO).mm() > 0.5
                && drawn_off(Length::from_mm(-500.0)) == drawn_off(Length::from_mm(500.0))
        );
    }
}
