//! Words for the enums of the answer: verdicts, evidence, roles, steps, cautions.

use fitup_core::finding::{Caution, Grade, Standing, Verdict};
use fitup_core::item::{ItemRef, Role};
use fitup_core::quantity::Tool;

use crate::Words;

impl Words {
    /// The verdict's word: "Bolts up".
    pub fn verdict(&self, verdict: Verdict) -> String {
        self.ui(verdict_key(verdict), &[])
    }

    /// What the verdict means, in a sentence.
    pub fn verdict_meaning(&self, verdict: Verdict) -> String {
        self.ui(&format!("{}.meaning", verdict_key(verdict)), &[])
    }

    /// The grade of evidence in a word or two: "same part".
    pub fn grade(&self, grade: Grade) -> String {
        self.ui(grade_key(grade), &[])
    }

    /// What the grade of evidence means, in a sentence.
    pub fn grade_meaning(&self, grade: Grade) -> String {
        self.ui(&format!("{}.meaning", grade_key(grade)), &[])
    }

    /// Whether the guide lists the set: "Listed", "Off-guide".
    pub fn standing(&self, standing: Standing) -> String {
        self.ui(
            match standing {
                Standing::Listed => "standing-listed",
                Standing::OffGuide => "standing-off-guide",
            },
            &[],
        )
    }

    /// The name of a joint's role: "rack".
    pub fn role(&self, role: Role) -> String {
        self.ui(&format!("role-{}", role.word()), &[])
    }

    /// The name of the table that an item is from: "frame".
    pub fn kind(&self, item: ItemRef) -> String {
        self.ui(&format!("kind-{}", item.kind()), &[])
    }

    /// The name of a tool.
    pub fn tool(&self, tool: Tool) -> String {
        self.ui(
            match tool {
                Tool::Caliper => "tool-caliper",
                Tool::Tape => "tool-tape",
                Tool::Photograph => "tool-photograph",
            },
            &[],
        )
    }

    /// The caution in full sentences.
    pub fn caution(&self, caution: Caution) -> String {
        self.ui(caution_key(caution), &[])
    }

    /// The caution's heading in a few words.
    pub fn caution_title(&self, caution: Caution) -> String {
        self.ui(&format!("{}.title", caution_key(caution)), &[])
    }
}

/// The key of a verdict's texts.
pub const fn verdict_key(verdict: Verdict) -> &'static str {
    match verdict {
        Verdict::BoltsUp => "verdict-bolts-up",
        Verdict::BoltsUpWithWork => "verdict-bolts-up-with-work",
        Verdict::CheckFirst => "verdict-check-first",
        Verdict::WontMount => "verdict-wont-mount",
    }
}

/// The key of a grade's texts.
pub const fn grade_key(grade: Grade) -> &'static str {
    match grade {
        Grade::Listed => "grade-listed",
        Grade::SamePart => "grade-same-part",
        Grade::ReplacedPart => "grade-replaced-part",
        Grade::Measured => "grade-measured",
        Grade::Drawing => "grade-drawing",
        Grade::None => "grade-none",
    }
}

/// The key of a caution's texts.
pub const fn caution_key(caution: Caution) -> &'static str {
    match caution {
        Caution::PlanningAid => "caution-planning-aid",
        Caution::ArmOnHitch => "caution-arm-on-hitch",
        Caution::RollOverBarUp => "caution-roll-over-bar-up",
        Caution::DrillingOrWelding => "caution-drilling-or-welding",
        Caution::LightFrontAxle => "caution-light-front-axle",
        Caution::HydraulicPressure => "caution-hydraulic-pressure",
        Caution::RotatingShafts => "caution-rotating-shafts",
        Caution::Hoisting => "caution-hoisting",
        Caution::RaisedParts => "caution-raised-parts",
        Caution::Slopes => "caution-slopes",
        Caution::Excavations => "caution-excavations",
        Caution::LoadingRamps => "caution-loading-ramps",
        Caution::TieDown => "caution-tie-down",
        Caution::RoadLimits => "caution-road-limits",
    }
}

#[cfg(test)]
mod tests {
    use fitup_core::item::MachineId;

    use super::*;
    use crate::{Lang, Units};

    #[test]
    fn every_word_of_the_answer_is_there_in_every_language() {
        for lang in Lang::ALL {
            let words = Words::new(lang, Units::Metric);
            let mut said = Vec::new();
            for verdict in Verdict::ALL {
                said.extend([words.verdict(verdict), words.verdict_meaning(verdict)]);
            }
            for grade in
                [Grade::Listed, Grade::SamePart, Grade::ReplacedPart, Grade::Measured, Grade::Drawing, Grade::None]
            {
                said.extend([words.grade(grade), words.grade_meaning(grade)]);
            }
            said.extend([Standing::Listed, Standing::OffGuide].map(|standing| words.standing(standing)));
            said.extend(Role::ALL.map(|role| words.role(role)));
            said.push(words.kind(ItemRef::Machine(MachineId(0))));
            said.extend([Tool::Caliper, Tool::Tape, Tool::Photograph].map(|tool| words.tool(tool)));
            for caution in Caution::ALL {
                said.extend([words.caution(caution), words.caution_title(caution)]);
            }
            for text in said {
                let is_key = ["verdict-", "grade-", "standing-", "role-", "kind-", "tool-", "caution-"]
                    .iter()
                    .any(|start| text.starts_with(start));
                assert!(!text.is_empty() && !is_key, "{lang:?}: {text}");
            }
        }
    }

    #[test]
    fn the_english_words_are_the_agreed_ones() {
        let words = Words::new(Lang::En, Units::Metric);
        assert_eq!(
            Verdict::ALL.map(|verdict| words.verdict(verdict)),
            ["Bolts up", "Bolts up with work", "Check first", "Won’t mount"]
        );
    }
}
