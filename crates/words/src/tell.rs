//! A finding in words: a sentence for a shopper, lines for a workshop.

use fitup_core::finding::{Asked, Check, Evidence, Finding, Grade, Subject};
use fitup_core::fit::declaration;
use fitup_core::item::{Catalogue, ItemRef, Role};
use fitup_core::quantity::{Length, Source, Tool};

use crate::figure::NONE;
use crate::{Arg, Line, LineRole, Span, Words, text};

/// Who a sentence is for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Wording {
    /// A plain sentence.
    Shopper,
    /// A few words, for a card or a list.
    Short,
    /// With the figures.
    Workshop,
}

impl Words {
    /// The finding in a plain sentence.
    pub fn shopper(&self, catalogue: &Catalogue, finding: &Finding) -> Line {
        line(LineRole::Sentence, finding, self.sentence(catalogue, &[finding], Wording::Shopper))
    }

    /// The finding in a few words, without a full stop.
    pub fn short(&self, catalogue: &Catalogue, finding: &Finding) -> String {
        text(&self.sentence(catalogue, &[finding], Wording::Short))
    }

    /// The finding for a workshop: figures and evidence with its chain.
    pub fn workshop(&self, catalogue: &Catalogue, finding: &Finding) -> Vec<Line> {
        self.workshop_of(catalogue, &[finding])
    }

    /// Findings that say the same of several joints, for a workshop, once.
    pub(crate) fn workshop_of(&self, catalogue: &Catalogue, findings: &[&Finding]) -> Vec<Line> {
        let Some(first) = findings.first() else { return Vec::new() };
        let mut lines = vec![line(LineRole::Sentence, first, self.sentence(catalogue, findings, Wording::Workshop))];
        lines.extend(self.evidence(catalogue, first));
        lines
    }

    /// The sentence of findings that differ in their joints only.
    pub(crate) fn sentence(&self, catalogue: &Catalogue, findings: &[&Finding], wording: Wording) -> Vec<Span> {
        let Some(first) = findings.first() else { return Vec::new() };
        let mut args = self.subject_args(catalogue, findings);
        args.extend(self.ways(catalogue, first));
        for figure in declaration(first.code).map_or(&[][..], |declared| declared.figures) {
            match first.figure(figure.name) {
                Some(value) => self.figure_args(catalogue, figure, value, &mut args),
                None => args.push((figure.name, Arg::Choice(NONE.to_owned()))),
            }
        }
        let key = match wording {
            Wording::Shopper => first.code.to_owned(),
            Wording::Short => format!("{}.short", first.code),
            Wording::Workshop => format!("{}.workshop", first.code),
        };
        capital(self.spans(&key, &args))
    }

    fn subject_args(&self, catalogue: &Catalogue, findings: &[&Finding]) -> Vec<(&'static str, Arg)> {
        let mut args = Vec::new();
        let Some(first) = findings.first() else { return args };
        let items = match first.subject {
            Subject::Joint(_, a, b) | Subject::Clearance(a, b) => [Some(a), Some(b)],
            Subject::Item(item) => [Some(item), None],
            _ => [None, None],
        };
        for (name, item) in ["a", "b"].into_iter().zip(items) {
            args.push((name, self.item_or_none(catalogue, item)));
        }
        let roles: Vec<String> =
            findings.iter().filter_map(|finding| role(finding.subject)).map(|r| self.role(r)).collect();
        args.push(("roles-name", Span::Text(self.reader().list(&roles)).into()));
        args.push(("missing-of", self.item_or_none(catalogue, first.checks.iter().find_map(check_item).or(items[0]))));
        args
    }

    fn item_or_none(&self, catalogue: &Catalogue, item: Option<ItemRef>) -> Arg {
        item.map_or_else(|| Arg::Choice(NONE.to_owned()), |item| self.item(catalogue, item).into())
    }

    /// What a finding rests on: the grade with its witness and guide row, then the lineage chains.
    fn evidence(&self, catalogue: &Catalogue, finding: &Finding) -> Vec<Line> {
        let evidence = &finding.evidence;
        let mut lines = vec![line(LineRole::Evidence, finding, self.evidence_sentence(catalogue, evidence))];
        for read in &evidence.read {
            let said = |text: &str| {
                if text.is_empty() { Arg::Choice(NONE.to_owned()) } else { Span::Text(text.to_owned()).into() }
            };
            let args = [
                ("item", self.item(catalogue, read.item).into()),
                ("port", Span::Label(read.port.clone()).into()),
                ("parts", self.part_numbers(&read.parts)),
                ("by", said(&read.by)),
                ("when", said(&read.when)),
            ];
            lines.push(line(LineRole::Evidence, finding, self.spans("evidence-read", &args)));
        }
        for chain in &evidence.chains {
            let args = [
                ("item", self.item(catalogue, chain.item).into()),
                ("stands-for", self.item(catalogue, chain.stands_for).into()),
                ("parts", self.part_numbers(&chain.parts)),
            ];
            let key = if chain.steps.is_empty() { "chain-same" } else { "chain-replaced" };
            lines.push(line(LineRole::Step, finding, self.spans(key, &args)));
            for step in &chain.steps {
                let key = if step.backwards { "step-backward" } else { "step-forward" };
                let ways = if step.both_ways { "both" } else { "forward" };
                let args = [
                    ("old", Span::Part(step.old.clone()).into()),
                    ("new", self.part_numbers(&step.new)),
                    ("ways", Arg::Choice(ways.to_owned())),
                ];
                lines.push(line(LineRole::Step, finding, self.spans(key, &args)));
            }
        }
        lines
    }

    fn evidence_sentence(&self, catalogue: &Catalogue, evidence: &Evidence) -> Vec<Span> {
        // Rows are counted from 1 where people read them.
        let row = evidence.guide_row.map_or_else(|| Arg::Choice(NONE.to_owned()), |row| (row + 1).into());
        let (witness, other) = evidence.witness.unzip();
        let tools: Vec<String> = evidence.tools.iter().map(|&tool| self.tool(tool)).collect();
        let args = [
            ("row", row),
            ("witness", self.item_or_none(catalogue, witness)),
            ("witness-other", self.item_or_none(catalogue, other)),
            ("tools-name", Span::Text(self.reader().list(&tools)).into()),
        ];
        let key = match evidence.grade {
            Grade::Listed if evidence.witness.is_none() => "evidence-stated",
            Grade::Listed => "evidence-listed",
            Grade::SamePart => "evidence-same-part",
            Grade::ReplacedPart => "evidence-replaced-part",
            Grade::Measured if tools.is_empty() => "evidence-looked",
            Grade::Measured => "evidence-measured",
            Grade::Drawing => "evidence-drawing",
            Grade::None => "evidence-none",
        };
        self.spans(key, &args)
    }

    /// Part numbers as spans, joined; the words for "not known" if there are none.
    pub(crate) fn part_numbers(&self, parts: &[String]) -> Arg {
        if parts.is_empty() {
            return Span::Text(self.ui("no-parts", &[])).into();
        }
        let mut spans = Vec::new();
        for (index, part) in parts.iter().enumerate() {
            if index > 0 {
                spans.push(Span::Text(" + ".to_owned()));
            }
            spans.push(Span::Part(part.clone()));
        }
        Arg::Spans(spans)
    }

    /// A check in a sentence.
    pub fn check(&self, catalogue: &Catalogue, check: &Check) -> Vec<Span> {
        let item = |item: ItemRef| Arg::from(self.item(catalogue, item));
        let port = |name: &str| Arg::from(Span::Label(name.to_owned()));
        match check {
            Check::CompareParts { a, b } => self.spans(
                "check-compare-parts",
                &[("a", item(a.0)), ("a-port", port(&a.1)), ("b", item(b.0)), ("b-port", port(&b.1))],
            ),
            Check::Measure { item: of, port: at, dimension, .. } if READ_OFF.contains(&dimension.as_str()) => self
                .spans(
                    "check-read-off",
                    &[
                        ("item", item(*of)),
                        ("port", port(at)),
                        ("value-name", Span::Text(self.value_name(dimension)).into()),
                    ],
                ),
            Check::Measure { item: of, port: at, dimension, within } => {
                let tool = within.map_or(NONE, tool_for);
                self.measure(catalogue, (*of, at), self.value_name(dimension), (*within, tool), "check-measure")
            }
            Check::MeasureAll(all) => self.measure_all(catalogue, all),
            Check::ReadParts { item: of, port: at, any_of } => {
                let sets = any_of.iter().map(|it| self.ui("quoted", &[("title", it.parts.join(" + ").into())]));
                let with = any_of.first().map_or_else(
                    || Arg::Choice(NONE.to_owned()),
                    |first| {
                        let of_piece = [first.witness.0, first.witness.1].map(|item| self.item(catalogue, item));
                        Span::Text(of_piece.map(|span| text(&[span])).join(" + ")).into()
                    },
                );
                self.spans(
                    "check-read-parts",
                    &[
                        ("item", item(*of)),
                        ("port", port(at)),
                        ("numbers", Span::Text(sets.collect::<Vec<_>>().join(", ")).into()),
                        ("witness", with),
                    ],
                )
            }
            Check::Gap { a, b, wanted } => {
                let shape = |name: &str| Arg::from(Span::Text(self.term("shape-", name)));
                self.spans(
                    "check-gap",
                    &[
                        ("a", item(a.0)),
                        ("a-shape", shape(&a.1)),
                        ("b", item(b.0)),
                        ("b-shape", shape(&b.1)),
                        ("wanted", self.length_span("wanted", *wanted)),
                    ],
                )
            }
            Check::Look { item: of, what } => {
                self.spans("check-look", &[("item", item(*of)), ("what", self.looked_for(what).into())])
            }
            Check::FindOut { item: of, what } => self.spans(
                "check-find-out",
                &[("item", item(*of)), ("value-name", Span::Text(self.value_name(what.word())).into())],
            ),
            Check::Ask { a, b } => self.spans("check-ask", &[("a", item(*a)), ("b", item(*b))]),
        }
    }

    /// What is looked for: a hole by its number, a port by its name, anything else in the catalogue's words.
    pub fn looked_for(&self, what: &str) -> String {
        let hole = what.rsplit_once('/').and_then(|(port, hole)| Some((port, hole.strip_prefix("hole-")?)));
        match hole.and_then(|(port, number)| Some((port, number.parse::<i64>().ok()?))) {
            Some((port, number)) => self.ui("hole-named", &[("number", number.into()), ("port", port.into())]),
            None => self.value_name(what),
        }
    }

    /// Dimensions to measure together, those of one port and accuracy in one sentence.
    fn measure_all(&self, catalogue: &Catalogue, all: &[Asked]) -> Vec<Span> {
        let mut spans = Vec::new();
        let alike = |a: &Asked, b: &Asked| a.item == b.item && a.port == b.port && a.within == b.within;
        let mut left: Vec<&Asked> = all.iter().collect();
        while let Some(&first) = left.first() {
            let (group, others): (Vec<&Asked>, Vec<&Asked>) = left.into_iter().partition(|asked| alike(first, asked));
            left = others;
            let names: Vec<String> = group.iter().map(|asked| self.value_name(&asked.dimension)).collect();
            let key = if all.len() > 1 { "check-measure-all" } else { "check-measure" };
            if !spans.is_empty() {
                spans.push(Span::Text(" ".to_owned()));
            }
            let at = (first.item, first.port.as_str());
            // A tape read with care is good for half a millimetre, and for long lengths there is nothing better.
            let tool = if first.within >= CAREFUL_TAPE { "tape" } else { tool_for(first.within) };
            spans.extend(self.measure(catalogue, at, self.reader().list(&names), (Some(first.within), tool), key));
        }
        spans
    }

    fn measure(
        &self,
        catalogue: &Catalogue,
        (item, port): (ItemRef, &str),
        what: String,
        (within, tool): (Option<Length>, &str),
        key: &str,
    ) -> Vec<Span> {
        let within = within.map_or_else(|| Arg::Choice(NONE.to_owned()), |within| self.length_span("within", within));
        self.spans(
            key,
            &[
                ("item", self.item(catalogue, item).into()),
                ("port", Span::Label(port.to_owned()).into()),
                ("value-name", Span::Text(what).into()),
                ("within", within),
                ("tool", Arg::Choice(tool.to_owned())),
            ],
        )
    }

    fn length_span(&self, name: &'static str, length: Length) -> Arg {
        Span::Figure { name, text: self.reader().length(length, crate::LengthStyle::Fine) }.into()
    }
}

/// What a tape is read to with care. Common practice, no source.
const CAREFUL_TAPE: Length = Length::from_mm(0.5);

/// What a port has that is read off a plate, a marking, a drawing or the manual and is no one length.
const READ_OFF: [&str; 8] = ["category", "speed", "size", "standard", "rotation", "shaft-type", "holes", "pose"];

fn line(role: LineRole, finding: &Finding, spans: Vec<Span>) -> Line {
    Line { role, spans, target: Some(finding.subject) }
}

/// The coarsest tool whose usual half range settles it.
fn tool_for(within: Length) -> &'static str {
    let settles = |tool: Tool| Source::Measured(tool).usual_half_range() <= within;
    if settles(Tool::Tape) {
        "tape"
    } else if settles(Tool::Caliper) {
        "caliper"
    } else {
        "finer"
    }
}

fn role(subject: Subject) -> Option<Role> {
    match subject {
        Subject::Joint(role, ..) => Some(role),
        _ => None,
    }
}

/// The item that a check is done on.
fn check_item(check: &Check) -> Option<ItemRef> {
    match check {
        Check::Measure { item, .. }
        | Check::Look { item, .. }
        | Check::FindOut { item, .. }
        | Check::ReadParts { item, .. } => Some(*item),
        Check::CompareParts { .. } | Check::Ask { .. } | Check::MeasureAll(_) | Check::Gap { .. } => None,
    }
}

/// A sentence that begins with a word of a list or a port's name gets its capital; labels of items
/// and part numbers stay as they are written.
fn capital(mut spans: Vec<Span>) -> Vec<Span> {
    if let Some(Span::Text(words) | Span::Label(words) | Span::Figure { text: words, .. }) = spans.first_mut() {
        let mut letters = words.chars();
        if let Some(first) = letters.next() {
            *words = std::iter::once(capital_letter(first)).chain(letters).collect();
        }
    }
    spans
}

/// The capital of a letter of the four languages; any other letter as it is. The tables for every
/// script of the world would weigh more in the browser than all the texts.
const fn capital_letter(letter: char) -> char {
    match letter {
        'à'..='ö' | 'ø'..='þ' => (letter as u8 - 32) as char,
        'œ' => 'Œ',
        'ÿ' => 'Ÿ',
        _ => letter.to_ascii_uppercase(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_letters_of_the_four_languages_have_their_capitals() {
        for letter in "abzàâäæçéèêëíîïñóôöœúùûüÿ".chars() {
            assert!(letter.to_uppercase().eq([capital_letter(letter)]), "{letter}");
        }
        assert!("ÀZß1¿÷".chars().all(|letter| capital_letter(letter) == letter));
    }
}
