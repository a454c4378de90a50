//! A whole answer in words, for a shopper or for a workshop, never both at once.

use fitup_core::finding::{Caution, Finding, Subject, Verdict};
use fitup_core::fit::Answer;
use fitup_core::item::{Catalogue, Role};

use crate::simplify::{Cause, simplify};
use crate::tell::Wording;
use crate::{Arg, Line, LineRole, Span, Words};

/// Who an explanation is for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Default)]
pub enum Audience {
    /// One plain sentence for each thing that decides.
    #[default]
    Shopper,
    /// Figures, part numbers, evidence and checks of everything.
    Workshop,
}

/// What is said of one cause.
#[derive(Debug, Clone, PartialEq)]
pub struct Paragraph {
    /// The worst verdict of its findings.
    pub verdict: Verdict,
    /// Indices of its findings in [`Answer::findings`].
    pub findings: Vec<usize>,
    /// The lines, the sentence first.
    pub lines: Vec<Line>,
}

/// An answer in words.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Explanation {
    /// What is said, worst first.
    pub paragraphs: Vec<Paragraph>,
    /// How many further points are in order and not spelled out.
    pub rest: usize,
    /// The cautions that go with it, each once, the planning aid first.
    pub cautions: Vec<Caution>,
}

impl Explanation {
    fn tells(&self, line: &Line) -> bool {
        self.paragraphs.iter().flat_map(|paragraph| &paragraph.lines).any(|told| told.spans == line.spans)
    }
}

impl Words {
    /// Explains an answer. Causes shared by several findings are said once; for a shopper, points
    /// that are in order are only counted as long as something else decides.
    pub fn explain(&self, catalogue: &Catalogue, answer: &Answer, audience: Audience) -> Explanation {
        let (findings, worst) = (&answer.findings, answer.rank().1);
        let mut explanation = Explanation { cautions: answer.cautions.clone(), ..Explanation::default() };
        for cause in simplify(findings) {
            let verdict = cause.verdict(findings);
            if audience == Audience::Shopper && verdict == Verdict::BoltsUp && worst != Verdict::BoltsUp {
                explanation.rest += 1;
                continue;
            }
            let members: Vec<&Finding> = cause.findings().iter().filter_map(|&index| findings.get(index)).collect();
            let mut lines = match audience {
                Audience::Shopper => self.shopper_of(catalogue, &cause, &members),
                Audience::Workshop => self.workshop_lines(catalogue, answer, &cause, &members),
            };
            // Part numbers of a joint are told with its worst finding and not again.
            lines.retain(|line| line.role != LineRole::Parts || !explanation.tells(line));
            for line in &mut lines {
                line.target = members.first().map(|finding| finding.subject);
            }
            // To a shopper, dimensions of one joint that differ are one thing that does not fit.
            let known = explanation.paragraphs.iter_mut().find(|said| {
                audience == Audience::Shopper
                    && said.verdict == verdict
                    && said.lines.iter().map(|line| &line.spans).eq(lines.iter().map(|line| &line.spans))
            });
            if let Some(said) = known {
                said.findings.extend(cause.findings());
                continue;
            }
            explanation.paragraphs.push(Paragraph { verdict, findings: cause.findings().to_vec(), lines });
        }
        explanation
    }

    fn shopper_of(&self, catalogue: &Catalogue, cause: &Cause, members: &[&Finding]) -> Vec<Line> {
        let spans = match cause {
            Cause::Same(_) => self.sentence(catalogue, members, Wording::Shopper),
            Cause::Missing { .. } => self.missing(catalogue, cause, members, "same-missing"),
        };
        vec![Line { role: LineRole::Sentence, spans, target: None }]
    }

    fn workshop_lines(&self, catalogue: &Catalogue, answer: &Answer, cause: &Cause, members: &[&Finding]) -> Vec<Line> {
        let mut lines = self.workshop_of(catalogue, members);
        if let (Cause::Missing { .. }, Some(first)) = (cause, lines.first_mut()) {
            first.spans = self.missing(catalogue, cause, members, "same-missing.workshop");
        }
        let parts: Vec<Line> =
            members.iter().filter_map(|finding| self.joint_parts(catalogue, answer, finding)).collect();
        for line in parts {
            if !lines.iter().any(|known| known.spans == line.spans) {
                lines.push(line);
            }
        }
        lines
    }

    fn missing(&self, catalogue: &Catalogue, cause: &Cause, members: &[&Finding], key: &str) -> Vec<Span> {
        let Cause::Missing { item, what, .. } = cause else { return Vec::new() };
        let names: Vec<String> = what.iter().map(|name| self.value_name(name)).collect();
        let mut areas: Vec<String> = Vec::new();
        for finding in members {
            let area = self.area(finding);
            if !areas.contains(&area) {
                areas.push(area);
            }
        }
        let list = |names: &[String]| Span::Text(self.reader().list(names));
        // What pressure or load nobody knows is not to be tried out.
        let is_risk = members.iter().any(|finding| matches!(finding.subject, Subject::Hydraulics | Subject::Loads));
        self.spans(
            key,
            &[
                ("risk", Arg::Choice(if is_risk { "yes" } else { "no" }.to_owned())),
                ("item", self.item(catalogue, *item).into()),
                ("missing-name", list(&names).into()),
                ("areas-name", list(&areas).into()),
            ],
        )
    }

    /// What a finding is about, in a word or two.
    pub fn area(&self, finding: &Finding) -> String {
        let key = match finding.subject {
            Subject::Joint(role, ..) => return self.role(role),
            _ if finding.code.starts_with("lift-") => "area-lift",
            Subject::Clearance(..) => "area-clearance",
            Subject::Hydraulics => "area-hydraulics",
            Subject::Drive => "area-drive",
            Subject::Loads => "area-loads",
            Subject::Operator => "area-operator",
            Subject::Wiring => "area-wiring",
            Subject::Loading => "area-loading",
            Subject::Site => "area-site",
            Subject::Digging => "area-digging",
            Subject::Item(_) | Subject::Build => "area-build",
        };
        self.ui(key, &[])
    }

    /// The part numbers on both sides of the joint that a finding is about, if any are known.
    fn joint_parts(&self, catalogue: &Catalogue, answer: &Answer, finding: &Finding) -> Option<Line> {
        let Subject::Joint(role, a, b) = finding.subject else { return None };
        let joint =
            answer.joints.iter().find(|joint| joint.role == role && joint.carrier.0 == a && joint.carried.0 == b)?;
        if joint.carrier_parts.is_empty() && joint.carried_parts.is_empty() || is_line(role) {
            return None;
        }
        let args = [
            ("a", self.item(catalogue, a).into()),
            ("a-parts", self.part_numbers(&joint.carrier_parts)),
            ("b", self.item(catalogue, b).into()),
            ("b-parts", self.part_numbers(&joint.carried_parts)),
        ];
        Some(Line { role: LineRole::Parts, spans: self.spans("joint-parts", &args), target: Some(finding.subject) })
    }
}

/// Hoses and wires are not borne by parts that decide.
const fn is_line(role: Role) -> bool {
    matches!(role, Role::Pressure | Role::Return | Role::CaseDrain | Role::Wiring)
}
