//! The bolt a joint needs, against whole numbers of hundredths of a millimetre, which know no rounding.

use fitup_core::dimension::{BoltEnd, BoltedJoint, StockBolt, bolted_joint, edge_distance, hole_spacing};
use proptest::prelude::*;
use proptest::test_runner::{Config, RngAlgorithm, TestRng, TestRunner};
use std::cell::Cell;

fn runner() -> TestRunner {
    let config = Config { cases: 20_000, failure_persistence: None, ..Config::default() };
    TestRunner::new_with_rng(config, TestRng::deterministic_rng(RngAlgorithm::ChaCha))
}

/// Metres from hundredths of a millimetre, by way of decimal millimetres as a catalogue has them.
fn metres(hundredths: i64) -> f64 {
    hundredths as f64 / 100.0 * 1e-3
}

#[test]
fn lengths_and_faces_agree_with_whole_numbers() {
    let (none, equal, bottomed) = (Cell::new(0), Cell::new(0), Cell::new(0));
    let plates = prop::collection::vec(100..3_000_i64, 1..5);
    // Steps of half a millimetre, so that ties are frequent.
    let stock = prop::collection::vec((40..200_i64, prop::option::of(0..160_i64)), 0..8);
    let sizes = (1..40_i64, 1..60_i64, 0..9_i64, 1..50_i64, 0..4_i64, any::<bool>());
    runner()
        .run(&(plates, stock, sizes), |(plates, stock, (thread, pitch, washer, end, count, nut))| {
            let half = |n: i64| 50 * n;
            let plates: Vec<i64> = plates.iter().map(|plate| plate / 50 * 50).collect();
            let lengths: Vec<f64> = plates.iter().map(|plate| metres(*plate)).collect();
            let bolts: Vec<StockBolt> = stock
                .iter()
                .map(|(length, thread)| StockBolt {
                    length: metres(half(*length)),
                    thread: thread.map(|t| metres(half(t))),
                })
                .collect();
            let joint = BoltedJoint {
                thread: metres(half(thread)),
                pitch: metres(5 * pitch),
                plates: &lengths,
                washer: metres(half(washer)),
                end: if nut {
                    BoltEnd::Nut { height: metres(half(end)), pitches_past: count as f64 }
                } else {
                    BoltEnd::Tapped { depth: metres(half(end)), engagement: count as f64 / 2.0 }
                },
            };
            let found = bolted_joint(&joint, &bolts).expect("sound");
            // Twentieths of a hundredth are enough for half a diameter.
            let sum: i64 = plates.iter().sum();
            let washers = if nut { 2 } else { 1 };
            let grip = sum + washers * half(washer);
            let least = if nut { grip + half(end) + count * 5 * pitch } else { grip + count * half(thread) / 2 };
            prop_assert!((found.grip - metres(grip)).abs() < 1e-12);
            prop_assert!((found.least - metres(least)).abs() < 1e-12);
            // Every bolt in turn, the first of the shortest kept.
            let mut best: Option<(i64, Option<i64>)> = None;
            for (length, threaded) in &stock {
                let length = half(*length);
                if length >= least && best.is_none_or(|best| length < best.0) {
                    best = Some((length, threaded.map(half)));
                }
            }
            let Some((length, threaded)) = best else {
                none.set(none.get() + 1);
                prop_assert!(found.bolt.is_none());
                return Ok(());
            };
            equal.set(equal.get() + i32::from(length == least));
            let bolt = found.bolt.expect("one is long enough");
            prop_assert_eq!(bolt.length, metres(length));
            let face = if nut { grip - plates[plates.len() - 1] - half(washer) } else { grip };
            let shank = threaded.map(|threaded| (length - threaded < face, length - threaded > grip));
            prop_assert_eq!(bolt.shank.map(|shank| (shank.thread_in_shear, shank.too_long)), shank);
            let bottoms = (!nut).then_some(length - grip > half(end));
            bottomed.set(bottomed.get() + i32::from(bottoms == Some(true)));
            prop_assert_eq!(bolt.bottoms, bottoms);
            Ok(())
        })
        .expect("all agree");
    println!("bolt lengths, 20000 joints in whole numbers: no disagreement; {} met exactly", equal.get());
    assert!(none.get() > 1_000 && equal.get() > 100 && bottomed.get() > 500, "{none:?} {equal:?} {bottomed:?}");
}

#[test]
fn hole_distances_agree_with_whole_numbers() {
    let ties = Cell::new(0);
    runner()
        .run(&(100..4_000_i64, 0..10_000_i64, any::<bool>()), |(hole, distance, tie)| {
            // A hole of whole tenths makes the limits whole hundredths.
            let hole = hole / 10 * 10;
            let (edge, spacing) = if tie { (hole / 10 * 12, hole / 10 * 22) } else { (distance, distance) };
            ties.set(ties.get() + i32::from(tie));
            let found = edge_distance(metres(hole), metres(edge)).expect("sound");
            prop_assert_eq!(found.enough, 10 * edge >= 12 * hole);
            let found = hole_spacing(metres(hole), metres(spacing)).expect("sound");
            prop_assert_eq!(found.enough, 10 * spacing >= 22 * hole);
            Ok(())
        })
        .expect("all agree");
    assert!(ties.get() > 5_000);
}
