//! Findings as plain data.

use fitup_core::finding::{Caution, Evidence, Finding, Grade, ReadOff, Subject, Verdict};
use fitup_core::item::{Catalogue, ItemRef};
use fitup_core::quantity::Tool;
use serde::Serialize;

use super::figures::{Figures, of_finding};
use super::id;
use crate::{Line, Words, caution_key, grade_key, verdict_key};

/// A finding.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct FindingReport {
    /// What kind of fact.
    pub code: &'static str,
    /// The question it belongs to: `fit`, `work`, `travel`, `site`.
    pub question: &'static str,
    /// What it is about.
    pub subject: SubjectReport,
    /// What it comes to.
    pub verdict: &'static str,
    /// What it rests on.
    pub evidence: EvidenceReport,
    /// Its figures.
    pub figures: Figures,
    /// Codes of its cautions.
    pub cautions: Vec<&'static str>,
    /// A few words.
    pub short: String,
    /// The sentence for a shopper.
    pub shopper: String,
    /// The lines for a workshop.
    pub workshop: Vec<String>,
}

/// What a finding is about.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct SubjectReport {
    /// `joint`, `clearance`, `item`, or the system.
    pub kind: &'static str,
    /// Role of a joint.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub role: Option<&'static str>,
    /// The items: of a joint the carrier and the carried one.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub items: Vec<String>,
}

/// What a finding rests on.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct EvidenceReport {
    /// Grade.
    pub grade: &'static str,
    /// Items listed together that it takes its listing from.
    pub witness: Option<[String; 2]>,
    /// Row of the guide, counted from 1.
    pub guide_row: Option<usize>,
    /// Lineage, for each side that differs.
    pub chains: Vec<ChainReport>,
    /// Tools of measured values.
    pub tools: Vec<&'static str>,
    /// Part numbers read off the unit.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub read: Vec<ReadReport>,
}

/// Part numbers read off a unit.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct ReadReport {
    /// The item.
    pub item: String,
    /// Its port.
    pub port: String,
    /// The numbers.
    pub parts: Vec<String>,
    /// Who read them.
    pub by: String,
    /// When.
    pub when: String,
}

/// How an item of the build comes to stand for a listed one.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct ChainReport {
    /// The item in the build.
    pub item: String,
    /// The listed item it stands for.
    pub stands_for: String,
    /// Part numbers that bear the joint.
    pub parts: Vec<String>,
    /// Replacement records used.
    pub steps: Vec<StepReport>,
}

/// One replacement record.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct StepReport {
    /// The old part.
    pub old: String,
    /// What replaced it.
    pub new: Vec<String>,
    /// Whether the old one also serves for the new one.
    pub both_ways: bool,
    /// Whether the step was taken from new to old.
    pub backwards: bool,
}

/// A caution.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct CautionReport {
    /// Its code.
    pub code: &'static str,
    /// Its heading.
    pub title: String,
    /// Its sentences.
    pub text: String,
}

pub(super) fn report(words: &Words, catalogue: &Catalogue, finding: &Finding) -> FindingReport {
    FindingReport {
        code: finding.code,
        question: finding.question.word(),
        subject: subject(catalogue, finding.subject),
        verdict: verdict_name(finding.verdict),
        evidence: evidence(catalogue, &finding.evidence),
        figures: of_finding(catalogue, &finding.figures),
        cautions: finding.cautions.iter().map(|&caution| after_dash(caution_key(caution))).collect(),
        short: words.short(catalogue, finding),
        shopper: words.shopper(catalogue, finding).text(),
        workshop: words.workshop(catalogue, finding).iter().map(Line::text).collect(),
    }
}

pub(super) fn caution(words: &Words, caution: Caution) -> CautionReport {
    CautionReport {
        code: after_dash(caution_key(caution)),
        title: words.caution_title(caution),
        text: words.caution(caution),
    }
}

/// The verdict as programs read it.
pub(super) fn verdict_name(verdict: Verdict) -> &'static str {
    after_dash(verdict_key(verdict))
}

fn grade_name(grade: Grade) -> &'static str {
    after_dash(grade_key(grade))
}

/// "verdict-bolts-up" → "bolts-up".
fn after_dash(key: &'static str) -> &'static str {
    key.split_once('-').map_or(key, |(_, name)| name)
}

fn subject(catalogue: &Catalogue, subject: Subject) -> SubjectReport {
    let of = |kind, items: &[ItemRef]| SubjectReport {
        kind,
        role: None,
        items: items.iter().map(|&item| id(catalogue, item)).collect(),
    };
    match subject {
        Subject::Joint(role, a, b) => SubjectReport { role: Some(role.word()), ..of("joint", &[a, b]) },
        Subject::Clearance(a, b) => of("clearance", &[a, b]),
        Subject::Item(item) => of("item", &[item]),
        Subject::Hydraulics => of("hydraulics", &[]),
        Subject::Drive => of("drive", &[]),
        Subject::Loads => of("loads", &[]),
        Subject::Operator => of("operator", &[]),
        Subject::Wiring => of("wiring", &[]),
        Subject::Loading => of("loading", &[]),
        Subject::Site => of("site", &[]),
        Subject::Digging => of("digging", &[]),
        Subject::Build => of("build", &[]),
    }
}

fn evidence(catalogue: &Catalogue, evidence: &Evidence) -> EvidenceReport {
    EvidenceReport {
        grade: grade_name(evidence.grade),
        witness: evidence.witness.map(|(a, b)| [id(catalogue, a), id(catalogue, b)]),
        guide_row: evidence.guide_row.map(|row| row + 1),
        chains: evidence
            .chains
            .iter()
            .map(|chain| ChainReport {
                item: id(catalogue, chain.item),
                stands_for: id(catalogue, chain.stands_for),
                parts: chain.parts.clone(),
                steps: chain
                    .steps
                    .iter()
                    .map(|step| StepReport {
                        old: step.old.clone(),
                        new: step.new.clone(),
                        both_ways: step.both_ways,
                        backwards: step.backwards,
                    })
                    .collect(),
            })
            .collect(),
        tools: evidence.tools.iter().map(|&tool| tool_name(tool)).collect(),
        read: evidence.read.iter().map(|read| read_off(catalogue, read)).collect(),
    }
}

fn read_off(catalogue: &Catalogue, read: &ReadOff) -> ReadReport {
    let ReadOff { item, port, parts, by, when } = read.clone();
    ReadReport { item: id(catalogue, item), port, parts, by, when }
}

pub(super) const fn tool_name(tool: Tool) -> &'static str {
    match tool {
        Tool::Caliper => "caliper",
        Tool::Tape => "tape",
        Tool::Photograph => "photograph",
    }
}
