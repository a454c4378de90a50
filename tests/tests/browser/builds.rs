//! The widget's verdicts against the library's.

use fitup_core::build::{Build, Carrying, Choices, Seating};
use fitup_core::finding::Verdict;
use fitup_core::fit::judge;
use fitup_core::item::{FrameId, ImplementId, MachineId, SeatId};
use fitup_tests::browser::{LAPTOP, browse};
use serde_json::json;

use crate::widget::{desk, fragment, open, words};

/// Every 53rd of the catalogue's complete builds: a prime step goes through all tables.
const EVERY: usize = 53;

#[test]
fn verdict_standing_and_findings_of_many_builds_are_the_librarys() {
    let (desk, words) = (desk(), words());
    let catalogue = desk.catalogue();
    let mut builds = Vec::new();
    for machine in 0..catalogue.machines.len() {
        for frame in 0..=catalogue.frames.len() {
            for seat in 0..catalogue.seats.len() {
                for implement in 0..catalogue.implements.len() {
                    builds.push(Build::from(Choices {
                        machine: Some(MachineId::at(machine)),
                        carrying: match frame.checked_sub(1) {
                            None => Carrying::Hitch,
                            Some(frame) => Carrying::Frame(FrameId::at(frame)),
                        },
                        seating: Seating::This(SeatId::at(seat)),
                        implement: Some(ImplementId::at(implement)),
                    }));
                }
            }
        }
    }
    let chosen: Vec<&Build> = builds.iter().step_by(EVERY).collect();
    assert!(chosen.len() >= 40, "{} builds are too few", chosen.len());
    browse("builds-many", LAPTOP, async |page| {
        open(&page, "").await?;
        let mut met = [0usize; 4];
        for build in &chosen {
            let answer = judge(&desk, build);
            met[Verdict::ALL.iter().position(|&v| v == answer.verdict).expect("one of the four")] += 1;
            let wanted = fragment(&desk, build);
            page.value(&format!("void (location.hash = {})", json!(wanted))).await?;
            let rows: std::collections::BTreeSet<_> = answer.findings.iter().map(|finding| finding.subject).collect();
            let standing = answer.standing.map(|standing| words.standing(standing)).expect("the build is complete");
            page.until(
                &format!("the answer to {build:?}"),
                &format!(
                    "widget.querySelector('.title-word')?.textContent === {} \
                     && widget.querySelector('.title-cells dd').textContent === {} \
                     && widget.querySelectorAll('.joint').length === {}",
                    json!(words.answer_of(&answer, answer.deciding().question)),
                    json!(standing),
                    rows.len()
                ),
            )
            .await?;
        }
        println!("{} builds; by verdict, best first: {met:?}", chosen.len());
        assert!(met.iter().filter(|&&count| count > 0).count() >= 3, "{met:?}");
        assert_eq!(page.errors().await?, Vec::<String>::new());
        Ok(())
    });
}
