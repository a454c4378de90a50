//! Published and worked values of threads, bolts, edge distances and general tolerances, each with its source.
//!
//! "Memory" marks a figure that was not found in public text: a test pins it so that a correction is made knowingly.

use fitup_core::fit::mating::bolted_joint::{
    BoltLength, Clamped, Into, LEAST_EDGE, LEAST_SPACING, Metal, bolt_for, least_engagement,
};
use fitup_core::fit::mating::half_range::{
    Iso2768, Iso13920, Origin, Process, TapeClass, caliper, half_range, iso_2768, iso_13920, standard_uncertainty, tape,
};
use fitup_core::fit::mating::thread::{Thread, is_either_system};
use fitup_tests::published::{near, rel};

/// ISO 2768-1:1989, table 1 (a secondary table; c at 3 to 6 mm from memory). Millimetres, classes f, m, c, v.
#[test]
fn general_tolerances_of_machined_parts() {
    let rows = [
        ("s21.iso2768.3_6", 6.0, [0.05, 0.1, 0.3, 0.5]),
        ("s21.iso2768.6_30", 30.0, [0.1, 0.2, 0.5, 1.0]),
        ("s21.iso2768.30_120", 120.0, [0.15, 0.3, 0.8, 1.5]),
        ("s21.iso2768.120_400", 400.0, [0.2, 0.5, 1.2, 2.5]),
        ("s21.iso2768.400_1000", 1000.0, [0.3, 0.8, 2.0, 4.0]),
        ("s21.iso2768.1000_2000", 2000.0, [0.5, 1.2, 3.0, 6.0]),
    ];
    let classes = [Iso2768::Fine, Iso2768::Medium, Iso2768::Coarse, Iso2768::VeryCoarse];
    for (id, size, expected) in rows {
        for (class, expected) in classes.into_iter().zip(expected) {
            near(id, iso_2768(size * 1e-3, class).unwrap() * 1e3, expected, 1e-12);
        }
    }
    for (class, expected) in classes.into_iter().skip(1).zip([2.0, 4.0, 8.0]) {
        near("s21.iso2768.2000_4000", iso_2768(4.0, class).unwrap() * 1e3, expected, 1e-12);
    }
}

/// EN ISO 13920:1996, ISO 13920:2023, table 1 (a secondary table). Millimetres, classes A, B, C, D.
#[test]
fn general_tolerances_of_weldments() {
    let rows = [
        ("s21.iso13920.2_30", 30.0, [1.0, 1.0, 1.0, 1.0]),
        ("s21.iso13920.30_120", 120.0, [1.0, 2.0, 3.0, 4.0]),
        ("s21.iso13920.120_400", 400.0, [1.0, 2.0, 4.0, 7.0]),
        ("s21.iso13920.400_1000", 1000.0, [2.0, 3.0, 6.0, 9.0]),
        ("s21.iso13920.1000_2000", 2000.0, [3.0, 4.0, 8.0, 12.0]),
        ("s21.iso13920.2000_4000", 4000.0, [4.0, 6.0, 11.0, 16.0]),
    ];
    let classes = [Iso13920::A, Iso13920::B, Iso13920::C, Iso13920::D];
    for (id, size, expected) in rows {
        for (class, expected) in classes.into_iter().zip(expected) {
            near(id, iso_13920(size * 1e-3, class).unwrap() * 1e3, expected, 1e-12);
        }
    }
}

/// By kind of feature at 76, 300 and 700 mm: the tables above (one plate of unknown process, weldment).
#[test]
fn a_drawing_without_a_tolerance_goes_by_process_and_length() {
    for (size, plate, weldment) in [(0.076, 0.3, 2.0), (0.3, 0.5, 2.0), (0.7, 0.8, 3.0)] {
        let of = |process| half_range(Origin::Drawing, process, size).unwrap() * 1e3;
        near("s21.drawing.pick", of(Process::OnePart), plate, 1e-12);
        near("s21.drawing.pick", of(Process::Welded), weldment, 1e-12);
    }
}

/// Directive 2014/32/EU, annex X (MI-008), chapter I, table 1 (secondary); the sums by hand.
#[test]
fn tapes_and_rules() {
    near("s21.mid.ex.II.1m", tape(1.0, TapeClass::Two).unwrap() * 1e3, 0.7, 1e-9);
    near("s21.mid.ex.II.2m", tape(2.0, TapeClass::Two).unwrap() * 1e3, 0.9, 1e-9);
    near("s21.mid.ex.II.3m", tape(3.0, TapeClass::Two).unwrap() * 1e3, 1.1, 1e-9);
    near("s21.mid.ex.III.1m", tape(1.0, TapeClass::Three).unwrap() * 1e3, 1.3, 1e-9);
    near("s21.mid.ex.III.2m", tape(2.0, TapeClass::Three).unwrap() * 1e3, 1.7, 1e-9);
    near("s21.mid.class1", tape(1.0, TapeClass::One).unwrap() * 1e3, 0.3, 1e-9);
    // Half a division of reading beside it: common practice, no source.
    near("s21.tape.reading", half_range(Origin::Tape, Process::Welded, 2.0).unwrap() * 1e3, 1.4, 1e-9);
}

/// DIN 862 (a secondary table).
#[test]
fn calipers() {
    near("s21.caliper.digital.100", caliper(0.1, false).unwrap() * 1e3, 0.02, 1e-12);
    near("s21.caliper.digital.600", caliper(0.6, false).unwrap() * 1e3, 0.03, 1e-12);
    near("s21.caliper.inside", (caliper(0.1, true).unwrap() - caliper(0.1, false).unwrap()) * 1e3, 0.02, 1e-12);
}

/// JCGM 100:2008 (GUM), 4.3.7: memory.
#[test]
fn a_limit_without_further_knowledge() {
    near("s21.gum.rect", standard_uncertainty(1.0), 1.0 / 3.0_f64.sqrt(), 1e-15);
}

/// ISO 261 and ISO 262 (secondary): coarse pitches.
#[test]
fn metric_coarse_pitches() {
    let rows = [
        ("s22.m8.thread", "M8", 1.25),
        ("s22.m10.thread", "M10", 1.5),
        ("s22.m12.thread", "M12", 1.75),
        ("s22.m14.thread", "M14", 2.0),
        ("s22.m16.thread", "M16", 2.0),
        ("s22.m20.thread", "M20", 2.5),
        ("s22.m24.thread", "M24", 3.0),
    ];
    for (id, designation, pitch) in rows {
        near(id, Thread::read(designation).unwrap().pitch * 1e3, pitch, 1e-12);
    }
}

/// ISO 68-1 profile and ISO 898-1 stress area, worked two ways beforehand.
#[test]
fn thread_geometry() {
    let rows = [
        ("s22.m10.geometry", "M10", 8.37620237, 57.9895931),
        ("s22.m12.geometry", "M12", 10.1055694, 84.266533),
        ("s22.m16.geometry", "M16", 13.8349365, 156.668402),
        ("s22.m20.geometry", "M20", 17.2936706, 244.794379),
        ("s22.m24.geometry", "M24", 20.7524047, 352.503905),
    ];
    for (id, designation, minor, area) in rows {
        let thread = Thread::read(designation).unwrap();
        rel(id, thread.minor_diameter() * 1e3, minor, 1e-6);
        rel(id, thread.stress_area() * 1e6, area, 1e-6);
    }
    rel("s22.torque.half.g5", Thread::read("1/2-13").unwrap().stress_area() / 0.0254 / 0.0254, 0.141898, 1e-4);
}

/// ASME B1.1 (secondary): threads per inch, coarse and fine.
#[test]
fn inch_threads() {
    let rows = [
        ("s22.in.5_16.thread", "5/16", 18.0, 24.0),
        ("s22.in.3_8.thread", "3/8", 16.0, 24.0),
        ("s22.in.1_2.thread", "1/2", 13.0, 20.0),
        ("s22.in.5_8.thread", "5/8", 11.0, 18.0),
        ("s22.in.3_4.thread", "3/4", 10.0, 16.0),
        ("s22.in.1.thread", "1", 8.0, 12.0),
    ];
    for (id, size, coarse, fine) in rows {
        let per_inch = |series| 0.0254 / Thread::read(&format!("{size} {series}")).unwrap().pitch;
        near(id, per_inch("UNC"), coarse, 1e-9);
        near(id, per_inch("UNF"), fine, 1e-9);
    }
}

/// Arithmetic on the tables above: diameters and pitches that are easily taken for each other; 25.4 mm exact.
#[test]
fn near_twins_of_inch_and_metric() {
    let rows = [
        ("s22.trap.5_16", "5/16-18", "M8", -0.0625, 1.41111111),
        ("s22.trap.1_2", "1/2-13", "M12", 0.7, 1.95384615),
        ("s22.trap.1_2.m14", "1/2-13", "M14", -1.3, 1.95384615),
        ("s22.trap.5_8", "5/8-11", "M16", -0.125, 2.30909091),
    ];
    for (id, inch, metric, apart, pitch) in rows {
        let (inch, metric) = (Thread::read(inch).unwrap(), Thread::read(metric).unwrap());
        near(id, (inch.diameter - metric.diameter) * 1e3, apart, 1e-9);
        rel(id, inch.pitch * 1e3, pitch, 1e-6);
        assert!(!inch.is_same_as(&metric), "{id}");
    }
    for hole in [14.0, 17.5] {
        assert!(is_either_system(hole * 1e-3), "s22.trap.holes: {hole}");
    }
}

/// Sums by hand; washers and nuts: ISO 7089 and ISO 4032 (secondary); one pitch past the nut: common practice, no source.
#[test]
fn bolt_lengths() {
    let standard = [20, 25, 30, 35, 40, 45, 50, 55, 60, 65, 70, 80, 90, 100, 110, 120];
    let lengths = standard.map(|mm| BoltLength { length: f64::from(mm) * 1e-3, thread: None });
    let joint = |diameter, pitch, plates: [f64; 2], washer, nut| Clamped {
        diameter,
        pitch,
        plates: plates.to_vec(),
        washer,
        into: Into::Nut(nut),
        past_nut: 1.0,
    };
    let m12 = bolt_for(&joint(0.012, 0.00175, [0.010, 0.012], 0.0025, 0.0108), &lengths).unwrap();
    near("s22.grip.ex.m12", m12.least * 1e3, 39.55, 1e-9);
    near("s22.grip.ex.m12", m12.bolt.unwrap().length * 1e3, 40.0, 1e-9);
    let m16 = bolt_for(&joint(0.016, 0.002, [0.012, 0.020], 0.003, 0.0148), &lengths).unwrap();
    near("s22.grip.ex.m16", m16.least * 1e3, 54.8, 1e-9);
    near("s22.grip.ex.m16", m16.bolt.unwrap().length * 1e3, 55.0, 1e-9);
}

/// EN 1993-1-8:2005, table 3.3 (secondary); engagement: common rule of the trade, aluminium from memory.
#[test]
fn edges_spacing_and_engagement() {
    near("s22.ec3.min", LEAST_EDGE, 1.2, 0.0);
    near("s22.ec3.min", LEAST_SPACING, 2.2, 0.0);
    near("s22.edge.ex", LEAST_EDGE * 13.5, 16.2, 1e-9);
    near("s22.edge.ex", LEAST_SPACING * 13.5, 29.7, 1e-9);
    near("s22.engage", least_engagement(Metal::Steel), 1.0, 0.0);
    near("s22.engage", least_engagement(Metal::CastIron), 1.5, 0.0);
    near("s22.engage.alu", least_engagement(Metal::Aluminium), 2.0, 0.0);
}
