//! The answer's findings by subject, worst first, as the list shows them.

use std::hash::{DefaultHasher, Hash, Hasher};

use fitup_core::finding::{Subject, Verdict};
use fitup_core::fit::Answer;

/// What the answer says of one subject.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Row {
    /// The subject.
    pub subject: Subject,
    /// Its worst verdict.
    pub verdict: Verdict,
    /// Its findings, by index in the answer, worst first.
    pub findings: Vec<usize>,
    /// The joint, by index in the answer, if the subject is one.
    pub joint: Option<usize>,
}

/// A number that no other subject of an answer has, and that this one has in every answer.
pub fn key_of(subject: Subject) -> u64 {
    let mut hasher = DefaultHasher::new();
    subject.hash(&mut hasher);
    hasher.finish()
}

/// One row a subject, in the order of each subject's worst finding.
pub fn rows(answer: &Answer) -> Vec<Row> {
    let mut rows: Vec<Row> = Vec::new();
    for (index, finding) in answer.findings.iter().enumerate() {
        match rows.iter_mut().find(|row| row.subject == finding.subject) {
            Some(row) => row.findings.push(index),
            None => rows.push(Row {
                subject: finding.subject,
                verdict: finding.verdict,
                findings: vec![index],
                joint: joint_of(answer, finding.subject),
            }),
        }
    }
    rows
}

fn joint_of(answer: &Answer, subject: Subject) -> Option<usize> {
    let Subject::Joint(role, carrier, carried) = subject else { return None };
    answer
        .joints
        .iter()
        .position(|joint| joint.role == role && joint.carrier.0 == carrier && joint.carried.0 == carried)
}

#[cfg(test)]
mod tests {
    use fitup_core::build::Build;
    use fitup_core::finding::Grade;
    use fitup_core::fit::{Desk, judge};
    use fitup_core::item::Catalogue;

    use super::*;

    #[test]
    fn findings_of_one_subject_stand_together_under_the_worst() {
        let mut answer = judge(&Desk::new(Catalogue::default()), &Build::default());
        let finding = |code, subject, verdict| fitup_yard::finding(code, subject, verdict, Grade::Drawing, &[]);
        answer.findings = vec![
            finding("lift-short", Subject::Loads, Verdict::WontMount),
            finding("pto-unknown", Subject::Drive, Verdict::CheckFirst),
            finding("axle-within-rating", Subject::Loads, Verdict::BoltsUp),
        ];
        let rows = rows(&answer);
        assert_eq!(rows.len(), 2);
        assert_eq!((rows[0].subject, rows[0].verdict), (Subject::Loads, Verdict::WontMount));
        assert_eq!(rows[0].findings, [0, 2]);
        assert_eq!(rows[1].joint, None);
        assert_ne!(key_of(rows[0].subject), key_of(rows[1].subject));
    }
}
