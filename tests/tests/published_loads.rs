//! Published and worked values of axle loads, trailers and tie-downs, digging loads, stability, hydraulics
//! and units, each with its source.
//!
//! Worked examples were each computed by two independent routes before any of this code existed.

#![allow(clippy::disallowed_methods, reason = "a second way uses the platform's own functions")]

use fitup_core::dimension::{
    Article, Cargo, Cylinder, DigStand, FrontSupport, Governs, Heading, PointMass, ShareOf, Stance, Stroke, Tie,
    TieRun, TipEdge, TrailerBed, Travel, axle_loads, centre, cycle_time, dig_loads, hydraulic_power, line_velocity,
    nose_window, tie_downs, tip_angles, trailer_loads,
};
use fitup_core::quantity::{Flow, Force, Length, Mass, Power, Pressure};
use fitup_tests::published::rel;

fn body(mass: f64, x: f64) -> PointMass {
    PointMass { mass, x }
}

/// One tractor of the mounted-implement formula: front and rear axle load TV, TH, wheelbase b, lengths a (front
/// ballast ahead of the front axle), c (rear axle to the lower links' ends), d (from there to the implement's
/// centre), front ballast GV and implement GH.
struct Mounted {
    id: &'static str,
    axles: [f64; 2],
    lengths: [f64; 4],
    added: [f64; 2],
}

/// Formula of the German "Merkblatt für Anbaugeräte" (federal transport ministry): 20 % of the unladen mass on the
/// front axle, of UNLADEN mass, not of total mass. Values: worked examples; second way a linear solve.
#[test]
fn axle_loads_with_a_mounted_implement() {
    let examples = [
        (
            Mounted { id: "s08.ex1", axles: [620.0, 880.0], lengths: [1.65, 0.6, 0.75, 0.9], added: [100.0, 520.0] },
            [236.363_636, 1883.636_36, 15.757_575_8, 146.666_667],
        ),
        (
            Mounted { id: "s08.ex2", axles: [1100.0, 1600.0], lengths: [2.05, 0.75, 0.95, 1.3], added: [0.0, 640.0] },
            [397.560_976, 2942.439_02, 14.724_480_6, 104.285_714],
        ),
        (
            Mounted { id: "s08.ex3", axles: [480.0, 600.0], lengths: [1.45, 0.55, 0.6, 0.7], added: [0.0, 310.0] },
            [202.068_966, 1187.931_03, 18.710_089_4, 10.1],
        ),
    ];
    for (Mounted { id, axles: [tv, th], lengths: [b, a, c, d], added: [gv, gh] }, [front, rear, percent, least]) in
        examples
    {
        let bare = tv + th;
        let tractor = [body(tv, b), body(th, 0.0), body(gh, -(c + d))];
        let mut laden = tractor.to_vec();
        laden.push(body(gv, b + a));
        let loads = axle_loads(b, &laden).expect("sound");
        rel(&format!("{id}.front"), loads.front, front, 1e-6);
        rel(&format!("{id}.rear"), loads.rear, rear, 1e-6);
        rel(&format!("{id}.front_share"), 100.0 * loads.front / bare, percent, 1e-6);
        let ballast = axle_loads(b, &tractor).and_then(|loads| loads.ballast(b + a, 0.2, ShareOf::Bare(bare)));
        rel(&format!("{id}.gv_min"), ballast.expect("sound").expect("reachable"), least, 1e-6);
    }
    // The implement that just lifts the front axle of example 1: TV · b / (c + d) = 620 kg (s08.liftoff).
    let lifted = [body(620.0, 1.65), body(880.0, 0.0), body(620.0, -1.65)];
    let loads = axle_loads(1.65, &lifted).expect("sound");
    assert_eq!((loads.front, loads.front_lifts()), (0.0, false));
}

/// Rear axle minimum of the printed rear-ballast formula, 45 % of the unladen mass (several printed manuals, one of which
/// names EN ISO 4254-10 annex B as its model). The formula is the front one with the machine turned about.
#[test]
fn rear_ballast_against_a_front_load() {
    let b = 1.65;
    let turned = [body(620.0, 0.0), body(880.0, b), body(450.0, -1.3)];
    let loads = axle_loads(b, &turned).expect("sound");
    let ballast = loads.ballast(b + 0.75 + 0.9, 0.45, ShareOf::Bare(1500.0)).expect("sound");
    rel("s08.rear_ballast", ballast.expect("reachable"), 74.772_727_3, 1e-6);
}

/// Worked example, x measured back from the coupling there. Shares 10 and 15 %: University of Virginia, Office of
/// Property and Liability Risk Management (guidance).
#[test]
fn tongue_load_of_a_trailer() {
    let axle = 4.2;
    let bed = TrailerBed { mass: 900.0, centre: axle - 3.75, coupler: axle };
    // The load as a machine with all of it on the rear axle.
    let cargo = Cargo { front: 0.0, rear: 2100.0, wheelbase: 1.5, heading: Heading::Forward };
    let loads = trailer_loads(bed, cargo, axle - 3.6).expect("sound");
    rel("s09.tongue.ex.kg", loads.nose, 396.428_571, 1e-6);
    rel("s09.tongue.ex.pct", 100.0 * loads.nose_share().expect("has mass"), 13.214_285_7, 1e-6);
    rel("s09.tongue.ex.axle", loads.axle, 2603.571_43, 1e-6);
    let window = nose_window(bed, cargo, 0.1, 0.15).expect("sound").expect("has mass");
    rel("s09.tongue.ex.x10", axle - window.low, 3.792_857_14, 1e-6);
    rel("s09.tongue.ex.x15", axle - window.high, 3.492_857_14, 1e-6);
}

/// 49 CFR 393.110(b), (c): counts derived from the rule's text; 49 CFR 393.130: heavy machinery.
#[test]
fn tie_down_counts() {
    let count = |feet: f64, pounds: f64, blocked_forward: bool, as_heavy_machinery: bool| {
        let article = Article {
            mass: Mass::from_lb(pounds).si(),
            length: Length::from_foot(feet).m(),
            blocked_forward,
            as_heavy_machinery,
        };
        tie_downs(article, &[]).expect("sound").needed
    };
    for (id, feet, pounds, blocked, expected) in [
        ("s09.393110.a", 4.5, 900.0, false, 1),
        ("s09.393110.b", 4.5, 1200.0, false, 2),
        ("s09.393110.c", 9.9, 3000.0, false, 2),
        ("s09.393110.d", 14.5, 5000.0, false, 3),
        ("s09.393110.f", 20.1, 5000.0, false, 4),
        ("s09.393110.g", 14.5, 5000.0, true, 2),
    ] {
        assert_eq!(count(feet, pounds, blocked, false), expected, "{id}");
    }
    // Examples e and h sit exactly on 20 and 30 ft. The printed metric step of 3.04 m is shorter than 10 ft (3.048 m),
    // so in printed metres they are 6.08 m and 9.12 m; in true metres one more is counted, on the safe side.
    let metric = |length, blocked_forward| {
        let article = Article { mass: 2268.0, length, blocked_forward, as_heavy_machinery: false };
        tie_downs(article, &[]).expect("sound").needed
    };
    assert_eq!((metric(6.08, false), count(20.0, 5000.0, false, false)), (3, 4), "s09.393110.e");
    assert_eq!((metric(9.12, true), count(30.0, 9000.0, true, false)), (3, 4), "s09.393110.h");
    // s09.393110.metric: 1.52 m, 3.04 m, 500 kg.
    let short = Article { mass: 500.0, length: 1.52, blocked_forward: false, as_heavy_machinery: false };
    assert_eq!(tie_downs(short, &[]).expect("sound").needed, 1);
    // s09.393130.min and s09.393130.threshold: four, mandatory from 4,536 kg.
    assert_eq!(count(9.9, 3000.0, false, true), 4);
    let heavy = Article { mass: 4536.0, length: 3.0, ..short };
    assert_eq!(tie_downs(heavy, &[]).expect("sound").needed, 4);
    assert_eq!(tie_downs(Article { mass: 4535.0, ..heavy }, &[]).expect("sound").needed, 2);
}

/// 49 CFR 393.106(d): half of direct ties, all of those over to the other side; limits of 49 CFR 393.108's tables
/// (grade 70 chain 3/8 in: 6,600 lb; webbing 2 in: 2,000 lb).
#[test]
fn aggregate_working_load_limits() {
    let tie = |pounds, run| Tie { limit: Mass::from_lb(pounds).si(), anchor_limit: None, run };
    let of = |pounds, ties: &[Tie]| {
        let article = Article {
            mass: Mass::from_lb(pounds).si(),
            length: 3.0,
            blocked_forward: false,
            as_heavy_machinery: false,
        };
        tie_downs(article, ties).expect("sound")
    };
    let chains = [tie(6600.0, TieRun::Direct); 4];
    let found = of(26_400.0, &chains);
    rel("s09.agg.ex1", Mass::from_si(found.aggregate).lb(), 13_200.0, 1e-12);
    assert!(found.strength_suffices(), "just enough is enough");
    assert!(!of(26_401.0, &chains).strength_suffices());
    let straps = [TieRun::Direct, TieRun::SameSide, TieRun::Over, TieRun::Over].map(|run| tie(2000.0, run));
    let found = of(12_000.0, &straps);
    rel("s09.agg.ex2", Mass::from_si(found.aggregate).lb(), 6000.0, 1e-12);
    assert!(found.strength_suffices());
}

/// 49 CFR 393.106(d): the share of each limit that counts, and half of the article's mass as what they reach at least.
#[test]
fn shares_of_working_load_limits() {
    let article = Article { mass: 1000.0, length: 1.0, blocked_forward: false, as_heavy_machinery: false };
    for (id, run, share) in [
        ("s09.393106.direct", TieRun::Direct, 0.5),
        ("s09.393106.direct, back to the same side", TieRun::SameSide, 0.5),
        ("s09.393106.indirect", TieRun::Over, 1.0),
    ] {
        let found = tie_downs(article, &[Tie { limit: 800.0, anchor_limit: None, run }]).expect("sound");
        rel(id, found.aggregate / 800.0, share, 1e-12);
        rel("s09.393106.half", found.least_aggregate / 1000.0, 0.5, 1e-12);
    }
}

/// SAE J/ISO 10567: at most 75 % of the static tipping load and 87 % of the hydraulic lift (a trade journal's account).
#[test]
fn rated_lift() {
    let rated = |tipping: f64, hydraulic: f64| {
        // A mass as far ahead of the line as the load lies behind it tips with its own mass.
        let stand = DigStand { line: -1.0, load: -2.0, wheelbase: 1.5 };
        dig_loads(stand, &[body(tipping, 0.0)], Some(hydraulic)).expect("sound").rated().expect("both known")
    };
    let (load, governs) = rated(1000.0, 800.0);
    rel("s10.rated.ex1", load, 696.0, 1e-9);
    assert_eq!(governs, Governs::Hydraulic);
    let (load, governs) = rated(700.0, 800.0);
    rel("s10.rated.ex2", load, 525.0, 1e-9);
    assert_eq!(governs, Governs::Tipping);
    // Where the other lift has no end, one share alone is seen; 1.16 times the hydraulic lift is where they meet.
    rel("s10.iso10567.hyd", rated(1e6, 1000.0).0 / 1000.0, 0.87, 1e-9);
    rel("s10.iso10567.tip", rated(1000.0, 1e6).0 / 1000.0, 0.75, 1e-9);
    assert_eq!(rated(1159.9, 1000.0).1, Governs::Tipping);
    assert_eq!(rated(1160.1, 1000.0).1, Governs::Hydraulic);
    rel("s10.rated.crossover", rated(1160.0, 1000.0).0 / 750.0, 1.16, 1e-9);
}

/// Worked examples: atan of lever over height; second way the root of the moment balance, for the pivot the triple
/// product of centre, gravity and edge.
#[test]
fn static_tip_angles() {
    let fixed =
        |track, centre| Stance { rear_track: track, wheelbase: 1.65, front: FrontSupport::Fixed { track }, centre };
    let slope =
        |stance: &Stance, side| tip_angles(stance).expect("sound").slope(side).expect("tips that way").to_degrees();
    rel("s11.side.ex1", slope(&fixed(1.1, [0.66, 0.0, 0.72]), TipEdge::Left), 37.375_807_5, 1e-6);
    rel("s11.side.ex2", slope(&fixed(1.45, [0.66, 0.0, 0.85]), TipEdge::Right), 40.462_227_5, 1e-6);
    rel("s11.up.ex1", slope(&fixed(1.1, [0.66, 0.0, 0.72]), TipEdge::Rear), 42.510_447_1, 1e-6);
    rel("s11.down.ex1", slope(&fixed(1.1, [0.66, 0.0, 0.72]), TipEdge::Front), 53.972_626_6, 1e-6);
    let pivot = Stance { front: FrontSupport::Pivot { height: 0.45 }, ..fixed(1.1, [0.66, 0.0, 0.72]) };
    rel("s11.side_pivot.ex1", slope(&pivot, TipEdge::Left), 31.429_565_6, 1e-6);
    let combined = fixed(1.1, [0.183_962_264, 0.0, 0.729_716_981]);
    rel("s11.combined.up", slope(&combined, TipEdge::Rear), 14.149_476_1, 1e-6);
}

/// The combined centre of gravity and the axle loads are two routes to one number.
#[test]
fn combined_centre_of_gravity() {
    let bodies = [body(1500.0, 620.0 * 1.65 / 1500.0), body(520.0, -1.65), body(100.0, 2.25)];
    let loads = axle_loads(1.65, &bodies).expect("sound");
    rel("s11.combined.x", loads.centre.expect("has mass"), 0.183_962_264, 1e-6);
    let height = centre([(1500.0, 0.7), (520.0, 0.85), (100.0, 0.55)]);
    rel("s11.combined.z", height.expect("has mass"), 0.729_716_981, 1e-6);
    rel("s11.combined.front_check", loads.front, 236.363_636, 1e-6);
    // Penn State Extension, Tractor Stability and Instability: 0.6 m ahead of the axle and 30 % in front
    // imply a wheelbase of 2.0 m.
    let typical = axle_loads(2.0, &[body(1000.0, 0.6)]).expect("sound");
    rel("s11.psu.wheelbase", typical.front_share().expect("has mass"), 0.3, 1e-9);
}

/// Worked examples of power, cylinders and lines, by two independent routes.
#[test]
fn hydraulics() {
    let kw = |power| Power::from_si(power).kw();
    let flow = |l_min| Flow::from_l_min(l_min).si();
    let power = hydraulic_power(Pressure::from_bar(180.0).si(), flow(40.0)).expect("sound");
    rel("s07.power.ex_metric", kw(power), 12.0, 1e-9);
    let power = hydraulic_power(Pressure::from_psi(2500.0).si(), Flow::from_gal_min(12.0).si()).expect("sound");
    rel("s07.power.ex_us_exact", Power::from_si(power).hp(), 17.5, 1e-9);
    // The handbooks' 1,714 is 1,714.28571 rounded: gal/min times psi in a horsepower of 550 ft·lbf/s.
    let one = hydraulic_power(Pressure::from_psi(1_714.285_71).si(), Flow::from_gal_min(1.0).si()).expect("sound");
    rel("s07.power.exact_1714", Power::from_si(one).hp(), 1.0, 1e-8);

    for (id, [bore, rod, bar, l_min, stroke], [push, pull, out, back, time]) in [
        (
            "s07.cyl63",
            [63.0, 36.0, 180.0, 25.0, 500.0],
            [56_110.415_6, 37_788.647_2, 133.665_023, 198.472_307, 3.740_694_37],
        ),
        (
            "s07.cyl80",
            [80.0, 45.0, 160.0, 40.0, 600.0],
            [80_424.771_9, 54_977.871_4, 132.629_119, 194.017_454, 4.523_893_42],
        ),
    ] {
        let cylinder = Cylinder::new(bore / 1000.0, rod / 1000.0).expect("sound");
        let pressure = Pressure::from_bar(bar).si();
        let force = |travel| cylinder.force(travel, pressure).expect("sound");
        let speed = |travel| 1000.0 * cylinder.speed(travel, flow(l_min)).expect("sound");
        rel(&format!("{id}.push"), force(Travel::Extend), push, 1e-6);
        rel(&format!("{id}.pull"), force(Travel::Retract), pull, 1e-6);
        rel(&format!("{id}.v_ext"), speed(Travel::Extend), out, 1e-6);
        rel(&format!("{id}.v_ret"), speed(Travel::Retract), back, 1e-6);
        let length = stroke / 1000.0;
        let stroke = Stroke { cylinder, length, travel: Travel::Extend, most_flow: None, count: 1.0 };
        rel(&format!("{id}.t_ext"), cycle_time(&[stroke], flow(l_min)).expect("sound"), time, 1e-6);
    }
    let inch = Cylinder::new(0.0762, 0.0381).expect("sound");
    let lbf = |travel| Force::from_n(inch.force(travel, Pressure::from_psi(2500.0).si()).expect("sound")).lbf();
    rel("s07.cyl3in.push", lbf(Travel::Extend), 17_671.458_7, 1e-6);
    rel("s07.cyl3in.pull", lbf(Travel::Retract), 13_253.594, 1e-6);

    rel("s07.vel.ex1", line_velocity(flow(30.0), 0.0127).expect("sound"), 3.947_050_48, 1e-6);
    let feet = line_velocity(Flow::from_gal_min(8.0).si(), 0.0127).expect("sound") / 0.3048;
    rel("s07.vel.ex2", feet, 13.071_926, 1e-6);
    for (id, speed, bore) in [
        ("s07.id20.suction_max", 0.5, 29.134_624_8),
        ("s07.id20.suction_min", 1.5, 16.820_883_5),
        ("s07.id20.return_max", 2.0, 14.567_312_4),
        ("s07.id20.return_min", 4.0, 10.300_645_4),
        ("s07.id20.pressure_max", 3.0, 11.894_160_8),
        ("s07.id20.pressure_min", 10.0, 6.514_700_16),
    ] {
        rel(id, line_velocity(flow(20.0), bore / 1000.0).expect("sound"), speed, 1e-6);
    }
}

/// Exact units: NIST SP 811 appendix B.
#[test]
fn units() {
    rel("s15.inch", Length::from_inch(1.0).mm(), 25.4, 1e-12);
    rel("s15.foot", Length::from_foot(1.0).mm(), 304.8, 1e-12);
    rel("s15.pound", Mass::from_lb(1.0).si(), 0.453_592_37, 1e-12);
    rel("s15.lbf", Force::from_lbf(1.0).n(), 4.448_221_615_260_5, 1e-12);
    rel("s15.psi", Pressure::from_psi(1.0).pa(), 6_894.757_293_168_361, 1e-12);
    rel("s15.bar_psi", Pressure::from_bar(1.0).psi(), 14.503_773_773, 1e-9);
    rel("s15.hp", Power::from_hp(1.0).w(), 745.699_871_582_270_2, 1e-12);
    rel("s15.hp_to_kw.ex", Power::from_hp(25.0).kw(), 18.642_496_8, 1e-8);
    rel("s15.gpm", Flow::from_gal_min(1.0).l_min(), 3.785_411_784, 1e-12);
    rel("s15.lb_round.ex", Mass::from_kg(4536.0).lb(), 10_000.168_2, 1e-8);
    rel("s09.10000lb", Mass::from_lb(10_000.0).kg(), 4_535.923_7, 1e-9);
    rel("s15.kgf", Force::from_n(fitup_core::quantity::STANDARD_GRAVITY).n(), 9.806_65, 1e-12);
}
