//! Threads: what a designation means, and whether two of them are the same.

use crate::order;

/// Which system a thread belongs to.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum System {
    /// ISO metric.
    Metric,
    /// Unified inch.
    Inch,
}

/// A thread.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Thread {
    /// Metric or inch.
    pub system: System,
    /// Nominal diameter, metres.
    pub diameter: f64,
    /// Pitch, metres.
    pub pitch: f64,
}

/// Nominal diameter, coarse pitch, usual fine pitch; millimetres.
///
/// Source: ISO 261 and ISO 262, read in secondary tables (M8 to M24); M5, M6, M18, M22, M27 and M30 from memory.
const METRIC: [[f64; 3]; 13] = [
    [5.0, 0.8, 0.5],
    [6.0, 1.0, 0.75],
    [8.0, 1.25, 1.0],
    [10.0, 1.5, 1.25],
    [12.0, 1.75, 1.25],
    [14.0, 2.0, 1.5],
    [16.0, 2.0, 1.5],
    [18.0, 2.5, 1.5],
    [20.0, 2.5, 1.5],
    [22.0, 2.5, 1.5],
    [24.0, 3.0, 2.0],
    [27.0, 3.0, 2.0],
    [30.0, 3.5, 2.0],
];

/// Nominal diameter in sixteenths of an inch, threads per inch UNC and UNF.
///
/// Source: ASME B1.1, read in secondary tables; 1/4, 7/16, 9/16 and 7/8 from memory.
const UNIFIED: [[f64; 3]; 10] = [
    [4.0, 20.0, 28.0],
    [5.0, 18.0, 24.0],
    [6.0, 16.0, 24.0],
    [7.0, 14.0, 20.0],
    [8.0, 13.0, 20.0],
    [9.0, 12.0, 18.0],
    [10.0, 11.0, 18.0],
    [12.0, 10.0, 16.0],
    [14.0, 9.0, 14.0],
    [16.0, 8.0, 12.0],
];

const INCH: f64 = 0.0254;

/// Sizes within this are one, metres. Own choice: far below the step of any series.
const ROUNDING: f64 = 1e-8;

impl Thread {
    /// A metric thread in its coarse pitch; `None` for a diameter that the table lacks. `diameter` in metres.
    ///
    /// # Source
    /// ISO 261 and ISO 262.
    pub fn metric_coarse(diameter: f64) -> Option<Self> {
        let row = METRIC.iter().find(|row| (row[0] * 1e-3 - diameter).abs() <= ROUNDING)?;
        Some(Self { system: System::Metric, diameter: row[0] * 1e-3, pitch: row[1] * 1e-3 })
    }

    /// Reads a designation: `M12`, `M12x1.25`, `M12 × 1,25`, `1/2-13 UNC`, `5/8 UNC`, `1/2 in UNF`, `1-8`. Letter case and spaces
    /// do not count, nor does what stands after the pitch or the series (a tolerance class, `LH` excepted: a left-hand thread
    /// is none that is known here).
    ///
    /// `None` for anything else: an inch size without pitch or series, a metric size without a coarse pitch in the table,
    /// a series with another number of threads than it has.
    ///
    /// # Source
    /// ISO 965-1 and ASME B1.1 for how threads are written, from memory.
    ///
    /// # Examples
    /// ```
    /// use fitup_core::fit::mating::thread::Thread;
    /// let half = Thread::read("1/2-13 UNC").expect("a thread");
    /// assert!((half.diameter - 0.0127).abs() < 1e-12 && (half.pitch - 0.0254 / 13.0).abs() < 1e-12);
    /// assert!(half.is_same_as(&Thread::read("1/2 unc").expect("a thread")));
    /// assert_eq!(Thread::read("1/2"), None);
    /// ```
    pub fn read(designation: &str) -> Option<Self> {
        let text: String = designation.chars().filter(|c| !c.is_whitespace()).flat_map(char::to_uppercase).collect();
        let text = text.replace(',', ".").replace(['×', '*'], "X");
        if text.ends_with("LH") {
            return None;
        }
        match text.strip_prefix('M') {
            Some(rest) => read_metric(rest),
            None => read_inch(&text),
        }
    }

    /// Whether the two screw into each other: one system, one diameter, one pitch.
    pub fn is_same_as(&self, other: &Self) -> bool {
        self.system == other.system
            && (self.diameter - other.diameter).abs() <= ROUNDING
            && (self.pitch - other.pitch).abs() <= ROUNDING
    }

    /// Smallest bore of the nut's thread, metres.
    ///
    /// # Source
    /// ISO 68-1: D₁ = d − 5/4 H, H = √3/2 P; the unified thread has the same profile.
    pub fn minor_diameter(&self) -> f64 {
        self.diameter - 1.25 * (0.5 * 3.0_f64.sqrt()) * self.pitch
    }

    /// Tensile stress area, square metres.
    ///
    /// # Source
    /// ISO 898-1: As = π/4 ((d₂ + d₃)/2)², that is π/4 (d − 0.9382 P)²; the inch formula has 0.9743 P for 0.9382 P (ASME
    /// B1.1).
    pub fn stress_area(&self) -> f64 {
        let cut = match self.system {
            System::Metric => 0.938_194_3,
            System::Inch => 0.974_3,
        };
        let across = self.diameter - cut * self.pitch;
        0.25 * core::f64::consts::PI * across * across
    }
}

fn read_metric(rest: &str) -> Option<Thread> {
    let size: String = rest.chars().take_while(|c| c.is_ascii_digit() || *c == '.').collect();
    let after = &rest[size.len()..];
    let diameter = number(&size)? * 1e-3;
    match after.strip_prefix('X') {
        Some(pitch) => {
            let pitch: String = pitch.chars().take_while(|c| c.is_ascii_digit() || *c == '.').collect();
            let pitch = number(&pitch)? * 1e-3;
            (pitch < diameter).then_some(Thread { system: System::Metric, diameter, pitch })
        }
        // A tolerance class may follow, nothing else.
        None if after.is_empty() || after.starts_with('-') => Thread::metric_coarse(diameter),
        None => None,
    }
}

fn read_inch(text: &str) -> Option<Thread> {
    let size: String = text.chars().take_while(|c| c.is_ascii_digit() || matches!(c, '/' | '.')).collect();
    let after = text[size.len()..].trim_start_matches("INCH").trim_start_matches("IN").trim_start_matches(['"', '″']);
    let inches = match size.split_once('/') {
        Some((top, bottom)) => number(top)? / number(bottom)?,
        None => number(&size)?,
    };
    let sixteenths = inches * 16.0;
    let row = UNIFIED.iter().find(|row| (row[0] - sixteenths).abs() < 1e-9);
    let (count, series) = match after.strip_prefix('-') {
        Some(rest) => {
            let count: String = rest.chars().take_while(char::is_ascii_digit).collect();
            (Some(number(&count)?), &rest[count.len()..])
        }
        None => (None, after),
    };
    // UNRC and UNRF are the same threads with a rounded root.
    let of_series = if series.starts_with("UNC") || series.starts_with("UNRC") {
        Some(row?[1])
    } else if series.starts_with("UNF") || series.starts_with("UNRF") {
        Some(row?[2])
    } else if series.is_empty() || series.starts_with("UN") || series.starts_with('-') {
        None
    } else {
        return None;
    };
    let per_inch = match (count, of_series) {
        (Some(count), Some(usual)) if (count - usual).abs() > 1e-9 => return None,
        (Some(count), _) => count,
        (None, Some(usual)) => usual,
        (None, None) => return None,
    };
    Some(Thread { system: System::Inch, diameter: inches * INCH, pitch: INCH / per_inch })
}

/// A number above zero.
fn number(text: &str) -> Option<f64> {
    text.parse().ok().filter(|number: &f64| *number > 0.0 && *number < 1e4)
}

/// The threads that a hole of this diameter may be meant for: those whose usual clearance hole it is, to 0.3 mm, coarse pitches, by
/// diameter.
///
/// Where metric and inch threads are among them, the hole does not tell the system, and the thread has to be asked for.
/// The slack is own choice: what a drill, paint and a caliper in the yard leave.
///
/// # Source
/// Medium holes of ISO 273, normal holes of EN 1090-2 table 11, normal holes of ASME B18.2.8.
///
/// # Examples
/// 13.5 mm is the hole of M12; a 1/2 in bolt goes through it as well. 17.5 mm is that of M16 and of 5/8 in alike.
/// ```
/// use fitup_core::fit::mating::thread::{System, threads_of_hole};
/// let meant = threads_of_hole(0.0175);
/// assert_eq!(meant.iter().map(|thread| thread.system).collect::<Vec<_>>(), [System::Inch, System::Metric]);
/// ```
pub fn threads_of_hole(hole: f64) -> Vec<Thread> {
    use super::clearance_hole::{Series, inch, metric};
    /// Own choice.
    const SLACK: f64 = 0.3e-3;
    let is_near = |usual: f64| (hole - usual).abs() <= SLACK;
    let mut threads = Vec::new();
    for row in METRIC {
        let diameter = row[0] * 1e-3;
        // M12 and M14 have 1 mm of clearance in structural work, under conditions 2 mm.
        let structural: &[f64] = match row[0] {
            d if (12.0..=14.0).contains(&d) => &[1e-3, 2e-3],
            d if (16.0..=24.0).contains(&d) => &[2e-3],
            d if (27.0..=36.0).contains(&d) => &[3e-3],
            _ => &[],
        };
        let is_structural = structural.iter().any(|clearance| is_near(diameter + clearance));
        if metric(diameter, Series::Medium).is_some_and(is_near) || is_structural {
            threads.push(Thread { system: System::Metric, diameter, pitch: row[1] * 1e-3 });
        }
    }
    for row in UNIFIED {
        let diameter = row[0] * INCH / 16.0;
        let normal = inch(diameter, Series::Medium);
        // Between least and greatest, or within the slack of either; a bolt that just passes counts as well.
        if normal.is_some_and(|(least, greatest)| hole >= least - SLACK && hole <= greatest + SLACK)
            || (hole >= diameter + 0.5e-3 && hole <= diameter + 1e-3)
        {
            threads.push(Thread { system: System::Inch, diameter, pitch: INCH / row[1] });
        }
    }
    order::sort(&mut threads, |a, b| a.diameter.total_cmp(&b.diameter));
    threads
}

/// The threads with a nominal diameter from `least` to `most`, metres, in their coarse pitches, by diameter.
///
/// # Examples
/// A bolt that measures 15.8 mm may be M16 or 5/8 in; one called 16.0 mm is M16.
/// ```
/// use fitup_core::fit::mating::thread::threads_between;
/// assert_eq!(threads_between(0.0157, 0.01615).len(), 2);
/// assert_eq!(threads_between(0.01597, 0.01603).len(), 1);
/// ```
pub fn threads_between(least: f64, most: f64) -> Vec<Thread> {
    let metric = METRIC.iter().filter_map(|row| Thread::metric_coarse(row[0] * 1e-3));
    let inch = UNIFIED.iter().map(|row| {
        let diameter = row[0] * INCH / 16.0;
        Thread { system: System::Inch, diameter, pitch: INCH / row[1] }
    });
    let mut threads: Vec<Thread> = metric.chain(inch).filter(|it| (least..=most).contains(&it.diameter)).collect();
    order::sort(&mut threads, |a, b| a.diameter.total_cmp(&b.diameter));
    threads
}

/// Whether a hole of this diameter leaves open if a metric or an inch bolt belongs in it.
pub fn is_either_system(hole: f64) -> bool {
    let threads = threads_of_hole(hole);
    [System::Metric, System::Inch].iter().all(|system| threads.iter().any(|thread| thread.system == *system))
}

/// What a bolt does in a tapped hole.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum InTapped {
    /// The same thread.
    Screws,
    /// Another thread: it does not go in, falls through, or starts and jams.
    OtherThread,
    /// The sizes agree; pitch and system are not stated on both sides.
    AskThread,
}

/// How far a stated nominal diameter may lie from a thread's and still name it, metres. Own choice: inch sizes are written to
/// hundredths of a millimetre (1/2 in as 12.7), and M16 and 5/8 in lie 0.125 mm apart.
pub const NAMED_WITHIN: f64 = 0.05e-3;

/// What a bolt of nominal diameter `bolt` does in a hole tapped with nominal diameter `tapped`, metres; with the threads where
/// they are stated.
///
/// # Examples
/// An M12 bolt goes into neither a hole tapped 10 or 14 nor one tapped 1/2 in.
/// ```
/// use fitup_core::fit::mating::thread::{InTapped, Thread, in_tapped};
/// for tapped in [0.010, 0.014, 0.0127] {
///     assert_eq!(in_tapped(0.012, None, tapped, None), InTapped::OtherThread);
/// }
/// assert_eq!(in_tapped(0.012, None, 0.012, None), InTapped::AskThread);
/// let (coarse, fine) = (Thread::read("M12"), Thread::read("M12x1.25"));
/// assert_eq!(in_tapped(0.012, coarse, 0.012, coarse), InTapped::Screws);
/// assert_eq!(in_tapped(0.012, coarse, 0.012, fine), InTapped::OtherThread);
/// ```
pub fn in_tapped(bolt: f64, bolt_thread: Option<Thread>, tapped: f64, tapped_thread: Option<Thread>) -> InTapped {
    // A thread that is stated says the diameter as well.
    let bolt = bolt_thread.map_or(bolt, |thread| thread.diameter);
    let tapped = tapped_thread.map_or(tapped, |thread| thread.diameter);
    let agree = (bolt - tapped).abs() <= NAMED_WITHIN;
    match (bolt_thread, tapped_thread) {
        _ if !agree => InTapped::OtherThread,
        (Some(a), Some(b)) if a.is_same_as(&b) => InTapped::Screws,
        (Some(_), Some(_)) => InTapped::OtherThread,
        _ => InTapped::AskThread,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn read(text: &str) -> Thread {
        Thread::read(text).unwrap_or_else(|| panic!("{text}"))
    }

    #[test]
    fn one_thread_is_read_however_it_is_written() {
        for texts in [
            &["M12", "m 12", "M12x1.75", "M12 × 1,75", "M12*1.75-6g", "M12-6H"][..],
            &["1/2-13 UNC", "1/2 UNC", "1/2-13", "0.5-13UNC-2A", "1/2\"-13", "1/2 in UNC", "1/2 inch - 13 UNRC"],
            &["1-12 UNF", "1 unf", "1\"-12"],
        ] {
            for text in texts {
                assert!(read(text).is_same_as(&read(texts[0])), "{text}");
            }
        }
    }

    #[test]
    fn what_names_no_thread_is_none() {
        for text in [
            "",
            "M",
            "12",
            "1/2",
            "M12x",
            "Mx1.5",
            "M13",
            "M12x12",
            "M12 LH",
            "1/2-13 UNF",
            "1/0-13",
            "1/2-",
            "-13",
            "1/2 NPT",
            "bolt",
            "M-12",
            "M1e400",
            "é1/2-13",
            "M12y",
            "3/7 UNC",
        ] {
            assert_eq!(Thread::read(text), None, "{text}");
        }
    }

    #[test]
    fn near_twins_are_told_apart() {
        for (a, b) in
            [("M12", "M12x1.25"), ("M16", "5/8-11"), ("M8", "5/16-18"), ("1/2-13", "1/2-20"), ("M14", "9/16-12")]
        {
            assert!(!read(a).is_same_as(&read(b)), "{a} {b}");
        }
    }

    #[test]
    fn pitches_of_a_series_are_finer_in_the_fine_one() {
        assert!(METRIC.iter().all(|row| row[2] < row[1] && row[1] < row[0]));
        assert!(UNIFIED.iter().all(|row| row[2] > row[1]));
        assert!(METRIC.is_sorted_by(|a, b| a[0] < b[0]) && UNIFIED.is_sorted_by(|a, b| a[0] < b[0]));
    }

    #[test]
    fn holes_that_do_not_tell_the_system_say_so() {
        for hole in [13.5, 14.0, 17.5] {
            assert!(is_either_system(hole * 1e-3), "{hole}");
        }
        assert!(!is_either_system(0.011) && !is_either_system(0.0), "M10 alone, and none");
        assert!(threads_of_hole(f64::NAN).is_empty());
        assert!(threads_of_hole(0.0135).iter().any(|thread| (thread.diameter - 0.012).abs() < 1e-12));
    }

    #[test]
    fn stated_threads_decide_before_stated_diameters() {
        let (half, m12) = (Thread::read("1/2-13"), Thread::read("M12"));
        assert_eq!(in_tapped(0.012, half, 0.012, m12), InTapped::OtherThread);
        assert_eq!(in_tapped(0.012, m12, 0.012, None), InTapped::AskThread);
        assert_eq!(in_tapped(f64::NAN, None, 0.012, None), InTapped::OtherThread);
        assert_eq!(in_tapped(0.016, None, 0.625 * INCH, None), InTapped::OtherThread);
    }
}
