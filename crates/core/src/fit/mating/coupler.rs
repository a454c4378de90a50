//! Hydraulic connections by standard and size.

/// The families of connection in use on compact tractors and their implements.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Family {
    /// ISO 7241 series A: poppet couplers, the usual ones on agricultural machines.
    Iso7241A,
    /// ISO 7241 series B: mainly North America and industry.
    Iso7241B,
    /// ISO 16028: flush-face couplers.
    Iso16028,
    /// Screwed, 37 degree flare (SAE J514, ISO 8434-2).
    Flare37,
    /// Screwed, 45 degree flare (SAE J512).
    Flare45,
}

/// Which half of a connection.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Half {
    /// The plug, or the outer thread.
    Male,
    /// The socket, or the nut.
    Female,
}

/// How two halves meet.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum CouplerFit {
    /// They connect and seal.
    Mates,
    /// Both are the plug or both the socket.
    SameHalf,
    /// One family, two sizes.
    OtherSize,
    /// Two families that do not connect.
    OtherFamily,
    /// The threads screw together but the seats differ by 8 degrees: it leaks.
    ScrewsButLeaks,
}

/// Lowest and highest nominal pressure of ISO 16028 couplers, pascals. Source: ISO 16028:1999, clause 1.
pub const ISO_16028_PRESSURE: (f64, f64) = (20.0e6, 31.5e6);

/// Largest force to open the male valve without pressure, newtons: size 12.5, and the larger size.
///
/// Source: ISO 5675:2021, 4.3.5.
pub const ISO_5675_OPENING_FORCE: (f64, f64) = (45.0, 70.0);

/// Dash sizes at which 37 and 45 degree flares have one thread. Source: thread identification note on SAE J514 and J512.
pub const SHARED_THREAD_DASHES: [u8; 6] = [2, 3, 4, 5, 8, 10];

impl Family {
    /// Every family.
    pub const ALL: [Self; 5] = [Self::Iso7241A, Self::Iso7241B, Self::Iso16028, Self::Flare37, Self::Flare45];

    /// The half that the tractor carries as a rule, where the standard has one.
    ///
    /// # Source
    /// ISO 7241:2014, introduction, quoted by a fittings page: female half on the tractor, male on the attachment.
    pub const fn on_the_tractor(self) -> Option<Half> {
        match self {
            Self::Iso7241A => Some(Half::Female),
            _ => None,
        }
    }
}

/// Whether two halves connect. Sizes are compared as the standard writes them: 12.5, or a dash number.
///
/// # Source
/// ISO 7241, ISO 16028: interface geometries differ, so halves of two families do not connect (from memory for series A against
/// flush face). Flares: SAE J514 and J512.
///
/// # Examples
/// ```
/// use fitup_core::fit::mating::coupler::{CouplerFit, Family, Half, coupler_fit};
/// let socket = (Family::Iso7241A, 12.5, Half::Female);
/// assert_eq!(coupler_fit(socket, (Family::Iso7241A, 12.5, Half::Male)), CouplerFit::Mates);
/// assert_eq!(coupler_fit(socket, (Family::Iso16028, 12.5, Half::Male)), CouplerFit::OtherFamily);
/// ```
pub fn coupler_fit(a: (Family, f64, Half), b: (Family, f64, Half)) -> CouplerFit {
    let same_size = (a.1 - b.1).abs() < 1e-9;
    let flares = matches!((a.0, b.0), (Family::Flare37, Family::Flare45) | (Family::Flare45, Family::Flare37));
    let shared_thread = SHARED_THREAD_DASHES.iter().any(|dash| (f64::from(*dash) - a.1.abs()).abs() < 1e-9);
    if a.0 != b.0 {
        let screws = flares && same_size && shared_thread && a.2 != b.2;
        return if screws { CouplerFit::ScrewsButLeaks } else { CouplerFit::OtherFamily };
    }
    if !same_size {
        CouplerFit::OtherSize
    } else if a.2 == b.2 {
        CouplerFit::SameHalf
    } else {
        CouplerFit::Mates
    }
}

/// A unified thread: outer diameter as a fraction of an inch, and threads per inch.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Thread {
    /// Sixteenths of an inch of the outer diameter.
    pub sixteenths: u8,
    /// Threads per inch.
    pub per_inch: u8,
}

/// Thread of a 37 degree flare of a dash size.
///
/// # Source
/// SAE J514, ISO 8434-2. Dashes 3, 4, 5, 8, 10 and the diameters of 12, 16, 20: a fittings page; 2, 6, 14, 24, 32 and the 12
/// threads per inch: from memory. That page prints 5/8-18 for dash 6, which is the 45 degree flare's thread.
///
/// # Examples
/// Dash 8 is 3/4-16.
/// ```
/// use fitup_core::fit::mating::coupler::{Thread, flare_37_thread};
/// assert_eq!(flare_37_thread(8), Some(Thread { sixteenths: 12, per_inch: 16 }));
/// ```
pub const fn flare_37_thread(dash: u8) -> Option<Thread> {
    let (sixteenths, per_inch) = match dash {
        2 => (5, 24),
        3 => (6, 24),
        4 => (7, 20),
        5 => (8, 20),
        6 => (9, 18),
        8 => (12, 16),
        10 => (14, 14),
        12 => (17, 12),
        14 => (19, 12),
        16 => (21, 12),
        20 => (26, 12),
        24 => (30, 12),
        32 => (40, 12),
        _ => return None,
    };
    Some(Thread { sixteenths, per_inch })
}

/// Inside diameter of a hose of a dash size, metres: sixteenths of an inch. (Of a tube it is the outside diameter.)
///
/// # Examples
/// ```
/// use fitup_core::fit::mating::coupler::hose_bore;
/// assert!((hose_bore(8) - 0.0127).abs() < 1e-15);
/// ```
pub fn hose_bore(dash: u8) -> f64 {
    f64::from(dash) * 25.4e-3 / 16.0
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_opposite_halves_of_one_family_and_size_mate() {
        for a in Family::ALL {
            for b in Family::ALL {
                let fit = coupler_fit((a, 12.0, Half::Male), (b, 12.0, Half::Female));
                assert_eq!(fit == CouplerFit::Mates, a == b, "{a:?} {b:?}");
                let swapped = coupler_fit((b, 12.0, Half::Female), (a, 12.0, Half::Male));
                assert_eq!(fit, swapped);
            }
            assert_eq!(coupler_fit((a, 10.0, Half::Male), (a, 12.5, Half::Female)), CouplerFit::OtherSize);
            assert_eq!(coupler_fit((a, 12.5, Half::Male), (a, 12.5, Half::Male)), CouplerFit::SameHalf);
        }
    }

    #[test]
    fn flares_of_one_thread_screw_together_and_leak() {
        let meet = |dash: f64, half| coupler_fit((Family::Flare37, dash, Half::Male), (Family::Flare45, dash, half));
        assert_eq!(meet(8.0, Half::Female), CouplerFit::ScrewsButLeaks);
        assert_eq!(meet(-8.0, Half::Female), CouplerFit::ScrewsButLeaks);
        assert_eq!(meet(6.0, Half::Female), CouplerFit::OtherFamily);
        assert_eq!(meet(8.0, Half::Male), CouplerFit::OtherFamily);
        let sizes = coupler_fit((Family::Flare45, 8.0, Half::Male), (Family::Flare37, 10.0, Half::Female));
        assert_eq!(sizes, CouplerFit::OtherFamily);
    }

    #[test]
    fn the_tractor_carries_the_socket() {
        assert_eq!(Family::Iso7241A.on_the_tractor(), Some(Half::Female));
        assert_eq!(Family::Iso16028.on_the_tractor(), None);
    }

    #[test]
    fn odd_dashes_have_no_thread() {
        assert_eq!((flare_37_thread(1), flare_37_thread(7), flare_37_thread(33)), (None, None, None));
    }
}
