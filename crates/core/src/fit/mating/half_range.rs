//! How far a stated figure may be off: by where it comes from, how the part is made, and how long it is.

/// ISO 2768-1 classes of linear tolerance.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Iso2768 {
    /// f.
    Fine,
    /// m: the usual one of machined and sheet parts.
    Medium,
    /// c.
    Coarse,
    /// v.
    VeryCoarse,
}

/// ISO 13920 classes of linear tolerance.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Iso13920 {
    /// A: welded in a jig.
    A,
    /// B: the usual one of agricultural weldments.
    B,
    /// C.
    C,
    /// D.
    D,
}

/// Half range of a length without a tolerance of its own on a machined or sheet part, metres; `None` outside 0.5 mm to 4 m, and for
/// class f above 2 m.
///
/// # Source
/// ISO 2768-1:1989, table 1, read in secondary tables; 0.5 to 3 mm and class c at 3 to 6 mm from memory. A size equal to a
/// range's upper limit belongs to that range.
///
/// # Examples
/// 300 mm, medium: ±0.5 mm.
/// ```
/// use fitup_core::fit::mating::half_range::{Iso2768, iso_2768};
/// assert_eq!(iso_2768(0.3, Iso2768::Medium), Some(0.0005));
/// ```
pub fn iso_2768(length: f64, class: Iso2768) -> Option<f64> {
    /// Up to; f, m, c, v; millimetres. Zero: not given.
    const TABLE: [[f64; 5]; 8] = [
        [3.0, 0.05, 0.1, 0.2, 0.0],
        [6.0, 0.05, 0.1, 0.3, 0.5],
        [30.0, 0.1, 0.2, 0.5, 1.0],
        [120.0, 0.15, 0.3, 0.8, 1.5],
        [400.0, 0.2, 0.5, 1.2, 2.5],
        [1000.0, 0.3, 0.8, 2.0, 4.0],
        [2000.0, 0.5, 1.2, 3.0, 6.0],
        [4000.0, 0.0, 2.0, 4.0, 8.0],
    ];
    of_table(&TABLE, 0.5, length, 1 + class as usize)
}

/// Half range of a length across a weldment, metres; `None` outside 2 mm to 4 m.
///
/// # Source
/// EN ISO 13920:1996, ISO 13920:2023, table 1, read in secondary tables.
///
/// # Examples
/// 700 mm, class B: ±3 mm.
/// ```
/// use fitup_core::fit::mating::half_range::{Iso13920, iso_13920};
/// assert_eq!(iso_13920(0.7, Iso13920::B), Some(0.003));
/// ```
pub fn iso_13920(length: f64, class: Iso13920) -> Option<f64> {
    /// Up to; A, B, C, D; millimetres.
    const TABLE: [[f64; 5]; 6] = [
        [30.0, 1.0, 1.0, 1.0, 1.0],
        [120.0, 1.0, 2.0, 3.0, 4.0],
        [400.0, 1.0, 2.0, 4.0, 7.0],
        [1000.0, 2.0, 3.0, 6.0, 9.0],
        [2000.0, 3.0, 4.0, 8.0, 12.0],
        [4000.0, 4.0, 6.0, 11.0, 16.0],
    ];
    of_table(&TABLE, 2.0, length, 1 + class as usize)
}

/// Half range of a length on a plate cut by laser, 6 to 15 mm thick, metres; `None` outside 3 mm to 2 m.
///
/// # Source
/// ISO 9013:2017, tolerance class 1, plates over 10 to 15 mm (the wider of two rows), read in secondary tables. Holes drilled
/// afterwards are not covered.
pub fn iso_9013_laser(length: f64) -> Option<f64> {
    const TABLE: [[f64; 2]; 6] =
        [[10.0, 0.3], [35.0, 0.35], [125.0, 0.4], [315.0, 0.45], [1000.0, 0.55], [2000.0, 0.65]];
    of_table(&TABLE, 3.0, length, 1)
}

fn of_table<const N: usize>(table: &[[f64; N]], from: f64, length: f64, column: usize) -> Option<f64> {
    // A nanometre of slack keeps a size at its range's end in that range.
    let mm = length * 1e3;
    if mm.is_nan() || mm < from - 1e-6 {
        return None;
    }
    let row = table.iter().find(|row| mm <= row[0] + 1e-6)?;
    (row[column] > 0.0).then(|| row[column] * 1e-3)
}

/// Accuracy classes of tapes and rules, marked in Roman figures on the scale.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum TapeClass {
    /// I.
    One,
    /// II: most pocket tapes.
    Two,
    /// III: wooden folding rules.
    Three,
}

/// What is added for reading a millimetre scale, metres. Common practice, no source: half a division.
pub const READING: f64 = 0.5e-3;

/// Largest error of a tape or rule over a length, from its hook or end, without reading, metres; `None` for a length that is not
/// above zero or beyond 100 m.
///
/// # Source
/// Directive 2014/32/EU, annex X (MI-008), chapter I, read in secondary text: a + b L, L rounded up to the next metre, and c
/// where the end is a surface.
///
/// # Examples
/// Class II at 1 m: 0.3 + 0.2 + 0.2 mm.
/// ```
/// use fitup_core::fit::mating::half_range::{TapeClass, tape};
/// assert!((tape(1.0, TapeClass::Two).expect("a length") - 0.0007).abs() < 1e-12);
/// ```
pub fn tape(length: f64, class: TapeClass) -> Option<f64> {
    if !(length > 0.0 && length <= 100.0) {
        return None;
    }
    let [a, b, c] = match class {
        TapeClass::One => [0.1, 0.1, 0.1],
        TapeClass::Two => [0.3, 0.2, 0.2],
        TapeClass::Three => [0.6, 0.4, 0.3],
    };
    Some((a + b * libm::ceil(length - 1e-9) + c) * 1e-3)
}

/// Largest error of a digital caliper, metres; `None` beyond 600 mm, where no caliper in a yard reaches.
///
/// # Source
/// DIN 862, error limit G, read in a secondary table: 0.02 mm to 100 mm, 0.03 mm to 600 mm; inside jaws and depth 0.02 mm more.
pub fn caliper(length: f64, inside: bool) -> Option<f64> {
    if !(0.0..=0.6 + 1e-9).contains(&length) {
        return None;
    }
    let outside = if length <= 0.1 + 1e-9 { 0.02e-3 } else { 0.03e-3 };
    Some(outside + if inside { 0.02e-3 } else { 0.0 })
}

/// The least half range of a caliper reading in a yard, metres: paint, burrs, worn faces, the hand. Common practice, no source.
pub const CALIPER_IN_THE_YARD: f64 = 0.1e-3;

/// Where a figure comes from.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Origin {
    /// A drawing or list.
    Drawing,
    /// A digital caliper in the yard.
    Caliper,
    /// A tape of class II, read to half a millimetre.
    Tape,
    /// A folding rule of class III, read to half a millimetre.
    FoldingRule,
}

/// How the two features that a figure lies between are made.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Process {
    /// In one plate, cut by laser or drilled by machine.
    CutInOnePlate,
    /// In one plate or machined part, process not known.
    OnePart,
    /// Across a weldment.
    Welded,
    /// Across a weldment made in a jig.
    WeldedInJig,
    /// Marked and drilled by hand.
    DrilledByHand,
    /// Marked and drilled by hand through a template.
    DrilledByTemplate,
}

/// How far a part is worn.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Wear {
    /// As new.
    AsNew,
    /// Worn to be noted: pins 1 mm in their bushes.
    Noted,
    /// Worn to be renewed: 2 mm.
    Renew,
}

/// What wear adds to the play of a pin in its bush over a new one's, metres.
///
/// # Source
/// Common practice, no source: as new 0.4, worth a note 1.0, renew 2.0 mm of play.
pub const fn wear(wear: Wear) -> f64 {
    match wear {
        Wear::AsNew => 0.0,
        Wear::Noted => 0.6e-3,
        Wear::Renew => 1.6e-3,
    }
}

/// Half range of a length that states none, metres; `None` where no table reaches.
///
/// A drawing's figure is as good as the process; a measured one as the tool, whatever the process: what is there is measured.
/// Holes drilled by hand and by template: ±1 and ±0.5 mm, common practice, no source.
///
/// # Units
/// Metres.
///
/// # Source
/// [`iso_2768`], [`iso_13920`], [`iso_9013_laser`], [`tape`], [`caliper`]. That drawings without a tolerance mean ISO 2768-m for
/// machined parts and ISO 13920-B for weldments is common practice, no source.
///
/// # Examples
/// One figure for everything is false exactness: 300 mm on a plate, and across a weldment.
/// ```
/// use fitup_core::fit::mating::half_range::{Origin, Process, half_range};
/// assert_eq!(half_range(Origin::Drawing, Process::OnePart, 0.3), Some(0.0005));
/// assert_eq!(half_range(Origin::Drawing, Process::Welded, 0.3), Some(0.002));
/// assert!((half_range(Origin::Tape, Process::Welded, 1.5).expect("a length") - 0.0014).abs() < 1e-12);
/// ```
pub fn half_range(origin: Origin, process: Process, size: f64) -> Option<f64> {
    match origin {
        Origin::Drawing => match process {
            Process::CutInOnePlate => iso_9013_laser(size),
            Process::OnePart => iso_2768(size, Iso2768::Medium),
            Process::Welded => iso_13920(size, Iso13920::B),
            Process::WeldedInJig => iso_13920(size, Iso13920::A),
            Process::DrilledByHand => (size > 0.0).then_some(1e-3),
            Process::DrilledByTemplate => (size > 0.0).then_some(0.5e-3),
        },
        Origin::Caliper => caliper(size, true).map(|tool| tool.max(CALIPER_IN_THE_YARD)),
        Origin::Tape => tape(size, TapeClass::Two).map(|tool| tool + READING),
        Origin::FoldingRule => tape(size, TapeClass::Three).map(|tool| tool + READING),
    }
}

/// Standard uncertainty of a figure of which no more is known than that it lies within its half range.
///
/// # Source
/// JCGM 100:2008 (GUM), 4.3.7, rectangular distribution: a/√3, from memory.
///
/// # Examples
/// ```
/// use fitup_core::fit::mating::half_range::standard_uncertainty;
/// assert!((standard_uncertainty(0.0015) - 0.000866).abs() < 1e-6);
/// ```
pub fn standard_uncertainty(half_range: f64) -> f64 {
    half_range.abs() / 3.0_f64.sqrt()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn longer_parts_and_coarser_classes_are_never_closer() {
        let sizes = [2.0, 3.0, 5.0, 29.0, 31.0, 119.0, 300.0, 700.0, 1500.0, 1999.0].map(|mm| mm * 1e-3);
        let machined = [Iso2768::Fine, Iso2768::Medium, Iso2768::Coarse];
        let welded = [Iso13920::A, Iso13920::B, Iso13920::C, Iso13920::D];
        for pair in sizes.windows(2) {
            assert!(machined.iter().all(|&class| iso_2768(pair[0], class) <= iso_2768(pair[1], class)));
            assert!(welded.iter().all(|&class| iso_13920(pair[0], class) <= iso_13920(pair[1], class)));
        }
        for size in sizes {
            assert!(machined.is_sorted_by_key(|&class| iso_2768(size, class)));
            assert!(welded.is_sorted_by_key(|&class| iso_13920(size, class)));
        }
    }

    #[test]
    fn sizes_at_a_limit_belong_to_the_lower_range_and_those_outside_to_none() {
        assert_eq!(iso_2768(0.12, Iso2768::Medium), Some(0.0003));
        assert_eq!(iso_2768(0.1201, Iso2768::Medium), Some(0.0005));
        assert_eq!(iso_2768(3.0, Iso2768::Fine), None);
        assert_eq!(iso_2768(0.001, Iso2768::VeryCoarse), None);
        assert_eq!((iso_13920(4.1, Iso13920::B), iso_13920(0.001, Iso13920::B)), (None, None));
        for none in [f64::NAN, f64::INFINITY, -1.0, 0.0] {
            assert_eq!(iso_2768(none, Iso2768::Medium), None);
            assert_eq!(tape(none, TapeClass::Two), None);
            for process in [Process::CutInOnePlate, Process::Welded, Process::WeldedInJig] {
                assert_eq!(half_range(Origin::Drawing, process, none), None);
            }
        }
        assert_eq!(caliper(0.7, false), None);
        assert_eq!(caliper(f64::NAN, false), None);
    }

    #[test]
    fn a_tape_counts_whole_metres_upwards() {
        let class = TapeClass::Two;
        assert_eq!(tape(0.3, class), tape(1.0, class));
        assert!(tape(1.001, class) > tape(1.0, class));
        assert!((tape(2.0, TapeClass::Three).unwrap() - 0.0017).abs() < 1e-12);
    }

    #[test]
    fn a_caliper_in_the_yard_is_no_better_than_the_hand() {
        assert_eq!(half_range(Origin::Caliper, Process::Welded, 0.05), Some(CALIPER_IN_THE_YARD));
        assert!((caliper(0.3, true).unwrap() - 0.05e-3).abs() < 1e-15);
        assert!(wear(Wear::AsNew) < wear(Wear::Noted) && wear(Wear::Noted) < wear(Wear::Renew));
    }
}
