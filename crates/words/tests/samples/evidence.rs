//! Joints that something else is a witness of.

use fitup_core::finding::{Chain, ChainStep, Evidence, Finding, Grade, Value, Verdict};
use fitup_core::item::Role;
use fitup_core::quantity::Tool;

use super::{ARM, FRAME, OTHER_FRAME, joint, label};

pub fn samples() -> Vec<Finding> {
    use Verdict::{BoltsUp, WontMount};
    vec![
        witnessed("joint-listed", Grade::Listed, BoltsUp, Vec::new())
            .with("guide", label("Attachment guide"))
            .with("date", label("2024-03-01")),
        Finding {
            evidence: Evidence { witness: Some((FRAME, ARM)), ..Evidence::of(Grade::Listed) },
            ..joint("joint-listed", Role::Rack, BoltsUp)
        },
        witnessed(
            "joint-replaced-part",
            Grade::ReplacedPart,
            BoltsUp,
            vec![
                ChainStep { old: "FR-201".into(), new: vec!["FR-210".into()], both_ways: true, backwards: false },
                ChainStep { old: "FR-211".into(), new: vec!["FR-210".into()], both_ways: true, backwards: true },
            ],
        )
        .with("part", label("FR-211"))
        .with("witness", Value::Item(OTHER_FRAME))
        .with("witness-other", Value::Item(ARM)),
        witnessed("joint-same-part", Grade::SamePart, BoltsUp, Vec::new())
            .with("part", label("FR-211"))
            .with("witness", Value::Item(OTHER_FRAME))
            .with("witness-other", Value::Item(ARM)),
        Finding {
            evidence: Evidence::of(Grade::Measured),
            ..joint("port-looked-missing", Role::AxleAnchor, WontMount)
        }
        .with("port", label("spacer holes")),
    ]
}

fn witnessed(code: &'static str, grade: Grade, verdict: Verdict, steps: Vec<ChainStep>) -> Finding {
    let mut finding = joint(code, Role::Rack, verdict);
    let chains = if grade == Grade::Listed {
        Vec::new()
    } else {
        vec![Chain { item: FRAME, stands_for: OTHER_FRAME, steps, parts: vec!["FR-211".into()] }]
    };
    let witness = Some(if grade == Grade::Listed { (FRAME, ARM) } else { (OTHER_FRAME, ARM) });
    finding.evidence = Evidence { witness, guide_row: Some(6), chains, tools: vec![Tool::Caliper], grade };
    finding
}
