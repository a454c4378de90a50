//! Lists of measurements that settle a joint, each tried before it is asked for.

use super::checks::Stakes;
use crate::build::{Build, Measurement};
use crate::finding::{Asked, Check, Finding, Question, Subject, Verdict};
use crate::fit::context::anchors::{NAMES, stated};
use crate::fit::{Answer, Desk, judge};
use crate::item::{ItemRef, Port, span_of};
use crate::quantity::{Length, Tool};

/// Half ranges that may be asked for, coarsest first: a tape, a tape or rule read with care, a caliper, a caliper read with
/// care. Common practice, no source.
const ACCURACIES: [(Tool, Length); 4] = [
    (Tool::Tape, Length::from_mm(1.5)),
    (Tool::Tape, Length::from_mm(0.5)),
    (Tool::Caliper, Length::from_mm(0.1)),
    (Tool::Caliper, Length::from_mm(0.05)),
];

/// Beyond this a caliper does not reach, and nothing better is asked for than a rule read with care. Common practice, no source.
const LONGEST_CALIPER: Length = Length::from_mm(300.0);

/// Dimensions measured on one unit at most: more than that nobody measures. Own choice; two patterns of eight holes have 48.
const MOST_ASKED: usize = 48;

/// A list of measurements that was tried.
pub(super) struct Tried {
    /// What to measure.
    pub asked: Vec<Asked>,
    /// Indices of the findings that it settles.
    pub findings: Vec<usize>,
    /// The lists of values that were entered and settled them.
    pub settled_by: Vec<Vec<Measurement>>,
    /// Whether the values at the edge of what is known settle them, too.
    pub always: bool,
    /// What hangs on it with those values.
    pub stakes: Option<Stakes>,
}

/// The measurements that settle the open findings of joints, each joint's by as few as do and no finer than they have to be.
pub(super) fn measurings(desk: &Desk, build: &Build, answer: &Answer) -> Vec<Tried> {
    let mut all: Vec<Tried> = Vec::new();
    let mut subjects: Vec<Subject> = Vec::new();
    let bench = Bench { desk, build };
    for finding in &answer.findings {
        if !bench.names(finding).is_empty() && !subjects.contains(&finding.subject) {
            subjects.push(finding.subject);
        }
    }
    for subject in subjects {
        let open: Vec<usize> = (0..answer.findings.len())
            .filter(|&at| answer.findings[at].subject == subject && !bench.names(&answer.findings[at]).is_empty())
            .collect();
        let together = bench.of(answer, &open);
        match together {
            Some(tried) => all.push(tried),
            // What cannot be settled as a whole may be so in parts.
            None if open.len() > 1 => all.extend(open.iter().filter_map(|&at| bench.of(answer, &[at]))),
            None => {}
        }
    }
    bench.merged(answer, all)
}

/// A dimension of a port.
type Dimension = (ItemRef, String, String);

/// Which of several values is entered for a dimension.
#[derive(Clone, Copy, PartialEq, Eq)]
enum At {
    /// What is stated of it, else what the other piece states.
    Stated,
    /// The lower edge of what may be.
    Low,
    /// The upper edge.
    High,
}

/// What the catalogue states of a dimension, with its half range.
pub(super) fn stated_of(desk: &Desk, item: ItemRef, port: &str, dimension: &str) -> Option<(Length, Length)> {
    let body = desk.catalogue().body(item);
    if NAMES.contains(&dimension) {
        return stated(body, port, dimension);
    }
    let port = body.ports.iter().find(|known| known.name == port)?;
    port.stated(dimension).map(|stated| (stated.value, port.half_range(&stated)))
}

struct Bench<'a> {
    desk: &'a Desk,
    build: &'a Build,
}

impl Bench<'_> {
    /// Dimensions that an open finding asks to be measured, as far as they can be: no coordinate from an origin that cannot be
    /// seen on the unit.
    fn names(&self, finding: &Finding) -> Vec<Dimension> {
        let joint = matches!(finding.subject, Subject::Joint(..)) && finding.verdict == Verdict::CheckFirst;
        let asked = finding.checks.iter().filter(|_| joint).filter_map(|check| match check {
            Check::Measure { item, port, dimension, .. } => Some((*item, port.clone(), dimension.clone())),
            _ => None,
        });
        asked.filter(|named| self.can_be_measured(named)).collect()
    }

    fn port(&self, item: ItemRef, name: &str) -> Option<&Port> {
        self.desk.catalogue().body(item).ports.iter().find(|port| port.name == name)
    }

    fn can_be_measured(&self, named: &Dimension) -> bool {
        !self.family(named, Spans::All).is_empty()
    }

    /// The dimensions that tell what a finding wants to know of a port, as a person can take them: how far holes are apart and
    /// how wide they are, since what decides is how they lie to each other; from anchor to anchor for a place.
    fn family(&self, (item, port, dimension): &Dimension, spans: Spans) -> Vec<Dimension> {
        let Some(of) = self.port(*item, port) else { return Vec::new() };
        let at = |name: String| (*item, port.clone(), name);
        if dimension.starts_with("at-") || dimension == "pose" {
            let body = self.desk.catalogue().body(*item);
            let names = NAMES.into_iter().filter(|name| stated(body, port, name).is_some());
            return names.map(|name| at(name.to_owned())).collect();
        }
        let part = dimension.split_once('-').map_or("", |(part, _)| part);
        let is_place = PLACES.iter().any(|place| dimension.ends_with(place));
        if part == "hole" || is_place {
            let sizes = of.dimensions().into_iter().map(|known| known.name.to_string());
            let sizes = sizes.filter(|name| part == "hole" && name.starts_with("hole-") && name.ends_with("-diameter"));
            return spans.of(of).into_iter().chain(sizes).map(at).collect();
        }
        let is_own = of.dimensions().iter().any(|known| known.name.is(dimension)) || of.span(dimension).is_some();
        is_own.then(|| at(dimension.clone())).into_iter().collect()
    }

    /// What is known of a dimension of the unit: as measured, else as stated.
    fn known(&self, (item, port, dimension): &Dimension) -> Option<(Length, Length)> {
        let is_it = |m: &&Measurement| m.item == *item && m.port == *port && m.dimension == *dimension;
        let measured = self.build.side.measured.iter().rev().find(is_it);
        measured.map(|m| (m.value, m.half_range())).or_else(|| stated_of(self.desk, *item, port, dimension))
    }

    /// A list that settles these findings of one joint, or nothing if none of those tried does.
    fn of(&self, answer: &Answer, findings: &[usize]) -> Option<Tried> {
        let first = &answer.findings[*findings.first()?];
        let named: Vec<Dimension> = findings.iter().flat_map(|&at| self.names(&answer.findings[at])).collect();
        let joint = answer.joints.iter().find(|joint| {
            Subject::Joint(joint.role, joint.carrier.0, joint.carried.0) == first.subject
                && named.iter().any(|(item, port, _)| {
                    [&joint.carrier, &joint.carried].into_iter().any(|end| end.0 == *item && end.1 == *port)
                })
        })?;
        let ends = [joint.carrier.clone(), joint.carried.clone()];
        let codes: Vec<&str> = findings.iter().map(|&at| answer.findings[at].code).collect();
        let ask = Ask { bench: self, answer, subject: first.subject, codes, ends: &ends };
        // First the piece that is known less well, then the other one, then both.
        let vaguer = usize::from(ask.vagueness(0, &named) < ask.vagueness(1, &named));
        let sides: [&[usize]; 3] = [&[vaguer], &[1 - vaguer], &[0, 1]];
        // Of three holes or fewer, as few distances as hold them together are all.
        let count = |spans: Spans| -> usize {
            ends.iter().filter_map(|(item, port)| Some(spans.of(self.port(*item, port)?).len())).sum()
        };
        let (few, all) = (count(Spans::Few), count(Spans::All));
        let spans = if few < all { &[Spans::Few, Spans::All][..] } else { &[Spans::Few] };
        sides.into_iter().find_map(|sides| {
            let mut ways =
                ACCURACIES.iter().flat_map(|&accuracy| spans.iter().map(move |&spans| Way { accuracy, spans }));
            let tried = ways.find_map(|way| ask.list(sides, way, &named));
            tried.map(|tried| Tried { findings: findings.to_vec(), ..tried })
        })
    }

    /// Each dimension once: lists that share one become one list.
    fn merged(&self, answer: &Answer, all: Vec<Tried>) -> Vec<Tried> {
        let same = |a: &Asked, b: &Asked| a.item == b.item && a.port == b.port && a.dimension == b.dimension;
        let mut merged: Vec<Tried> = Vec::new();
        for next in all {
            let shares = |known: &&mut Tried| known.asked.iter().any(|a| next.asked.iter().any(|b| same(a, b)));
            let Some(known) = merged.iter_mut().find(shares) else {
                merged.push(next);
                continue;
            };
            let (Some(first), Some(second)) = (known.settled_by.first(), next.settled_by.first()) else { continue };
            let mut values = first.clone();
            for value in second {
                let at =
                    |m: &Measurement| m.item == value.item && m.port == value.port && m.dimension == value.dimension;
                match values.iter_mut().find(|m| at(m)) {
                    Some(twice) if twice.plus_minus > value.plus_minus => *twice = value.clone(),
                    Some(_) => {}
                    None => values.push(value.clone()),
                }
            }
            let then = self.entered(&values);
            let mut findings = known.findings.clone();
            findings.extend(&next.findings);
            let is_open = |at: &usize| {
                let asked = &answer.findings[*at];
                then.findings
                    .iter()
                    .any(|f| f.verdict == Verdict::CheckFirst && f.code == asked.code && f.subject == asked.subject)
            };
            // Where the two do not go together the first is asked for, and then the other one is, if it still is open.
            if !findings.iter().any(is_open) {
                let asked = values.iter().map(asked_of).collect();
                let stakes = Stakes::of(Question::Fit, answer, &[then]);
                *known = Tried { asked, findings, settled_by: vec![values], always: false, stakes };
            }
        }
        merged
    }

    /// The build judged with these measurements.
    fn entered(&self, measured: &[Measurement]) -> Answer {
        let mut build = self.build.clone();
        build.side.measured.extend_from_slice(measured);
        judge(self.desk, &build)
    }
}

fn asked_of(m: &Measurement) -> Asked {
    Asked { item: m.item, port: m.port.clone(), dimension: m.dimension.clone(), within: m.half_range() }
}

/// Dimensions that are counted from an origin which nobody sees on the unit.
const PLACES: [&str; 4] = ["-u", "-v", "-height", "-across"];

/// Which distances between the holes or points of a port are asked for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Spans {
    /// As few as hold the pattern together: between the two farthest apart, and from both to every other one.
    Few,
    /// All.
    All,
}

impl Spans {
    fn of(self, port: &Port) -> Vec<String> {
        let all = port.spans();
        let length = |name: &String| port.stated(name).map_or(0.0, |span| span.value.m());
        let longest = all.iter().max_by(|a, b| length(a).total_cmp(&length(b)).then(b.cmp(a)));
        let Some((_, ends)) = longest.filter(|_| self == Self::Few).and_then(|name| span_of(name)) else { return all };
        let holds =
            |name: &String| span_of(name).is_some_and(|(_, between)| between.iter().any(|at| ends.contains(at)));
        all.into_iter().filter(holds).collect()
    }
}

/// How a list is measured.
#[derive(Debug, Clone, Copy)]
struct Way {
    accuracy: (Tool, Length),
    spans: Spans,
}

/// What is open of one joint.
struct Ask<'a> {
    bench: &'a Bench<'a>,
    answer: &'a Answer,
    subject: Subject,
    /// Codes of the findings that are to be settled.
    codes: Vec<&'a str>,
    /// Carrier and carried, by item and name of the port.
    ends: &'a [(ItemRef, String); 2],
}

impl Ask<'_> {
    /// How little is known of these dimensions on one piece: the largest half range, or without end where one is not stated.
    fn vagueness(&self, side: usize, named: &[Dimension]) -> Length {
        let (item, port) = &self.ends[side];
        let on_this = named.iter().map(|(_, _, dimension)| (*item, port.clone(), dimension.clone()));
        let half = |at: &Dimension| self.bench.known(at).map_or(Length::from_m(f64::INFINITY), |(_, half)| half);
        let all = on_this.flat_map(|at| self.bench.family(&at, Spans::All));
        all.map(|at| half(&at)).fold(Length::ZERO, Length::max)
    }

    /// Adds what these dimensions ask for on the given sides, and on any side where they are not stated.
    fn add(&self, list: &mut Vec<Dimension>, sides: &[usize], named: &[Dimension], way: Way) {
        for (named_item, named_port, dimension) in named {
            for (side, (item, port)) in self.ends.iter().enumerate() {
                let at: Dimension = (*item, port.clone(), dimension.clone());
                let is_named = named_item == item && named_port == port;
                let is_unstated = is_named && self.bench.known(&at).is_none() && !dimension.starts_with("at-");
                if !sides.contains(&side) && !is_unstated {
                    continue;
                }
                for at in self.bench.family(&at, way.spans) {
                    let is_known = self.bench.known(&at);
                    let measured_so = |m: &Measurement| (m.item, &m.port, &m.dimension) == (at.0, &at.1, &at.2);
                    let is_measured = self.bench.build.side.measured.iter().any(measured_so);
                    let within = way.accuracy.1;
                    let is_good = is_measured && is_known.is_some_and(|(value, half)| half <= fair(within, value));
                    if !is_good && !list.contains(&at) {
                        list.push(at);
                    }
                }
            }
        }
    }

    /// A list taken one way on the given sides that settles what is asked, grown by what the judgement still asks for.
    fn list(&self, sides: &[usize], way: Way, named: &[Dimension]) -> Option<Tried> {
        let (mut list, accuracy) = (Vec::new(), way.accuracy);
        self.add(&mut list, sides, named, way);
        loop {
            if list.is_empty() || list.len() > MOST_ASKED {
                return None;
            }
            let before = list.len();
            let grown_by = if self.values(&list, accuracy, At::Stated).is_some() { At::Stated } else { At::Low };
            let values = self.values(&list, accuracy, grown_by)?;
            let then = self.bench.entered(&values);
            let open = self.still_open(&then, &list);
            if open.is_empty() {
                return self.tried(&list, accuracy);
            }
            let asked: Vec<Dimension> = open.iter().flat_map(|finding| self.bench.names(finding)).collect();
            self.add(&mut list, sides, &asked, way);
            if list.len() == before {
                // At the value that the other piece states it may lie just at a limit.
                return self.tried(&list, accuracy);
            }
        }
    }

    /// Open findings of the joint of the codes asked about, or that name a dimension of the list.
    fn still_open<'f>(&self, then: &'f Answer, list: &[Dimension]) -> Vec<&'f Finding> {
        let concerns = |finding: &&Finding| {
            finding.verdict == Verdict::CheckFirst
                && finding.subject == self.subject
                && (self.codes.contains(&finding.code)
                    || self
                        .bench
                        .names(finding)
                        .iter()
                        .any(|named| self.bench.family(named, Spans::All).iter().any(|at| list.contains(at))))
        };
        then.findings.iter().filter(concerns).collect()
    }

    /// Tries the list at what is stated and at both edges of what may be. It is good for something if it settles at what is
    /// stated or, where something is not stated, at both edges.
    fn tried(&self, list: &[Dimension], accuracy: (Tool, Length)) -> Option<Tried> {
        let mut settled_by = Vec::new();
        let mut answers = Vec::new();
        let mut settled = [false; 3];
        for (at, settled) in [At::Stated, At::Low, At::High].into_iter().zip(&mut settled) {
            let Some(values) = self.values(list, accuracy, at) else { continue };
            let then = self.bench.entered(&values);
            if self.still_open(&then, list).is_empty() {
                *settled = true;
                answers.push(then);
                settled_by.push(values);
            }
        }
        let something_is_unstated = list.iter().any(|at| self.bench.known(at).is_none());
        let [at_stated, low, high] = settled;
        if !(at_stated || something_is_unstated && low && high) {
            return None;
        }
        let asked = settled_by.first()?.iter().map(asked_of).collect();
        let stakes = Stakes::of(Question::Fit, self.answer, &answers);
        Some(Tried { asked, findings: Vec::new(), settled_by, always: at_stated && low && high, stakes })
    }

    fn values(&self, list: &[Dimension], accuracy: (Tool, Length), at: At) -> Option<Vec<Measurement>> {
        let value = |(index, dimension): (usize, &Dimension)| {
            let value = self.value(index, dimension, at)?;
            let within = fair(accuracy.1, value);
            let tool = if within > accuracy.1 { Tool::Tape } else { accuracy.0 };
            Some(Measurement {
                item: dimension.0,
                port: dimension.1.clone(),
                dimension: dimension.2.clone(),
                value,
                tool,
                plus_minus: Some(within),
                readings: Vec::new(),
                note: String::new(),
            })
        };
        list.iter().enumerate().map(value).collect()
    }

    fn value(&self, index: usize, dimension: &Dimension, at: At) -> Option<Length> {
        if let Some((value, half)) = self.bench.known(dimension) {
            // Every other one the other way, so that they do not all move together, which is no change at all.
            let way = if index.is_multiple_of(2) { half } else { -half };
            return Some(match at {
                At::Stated => value,
                At::Low => value - way,
                At::High => value + way,
            });
        }
        let other = self.ends.iter().find(|end| (end.0, &end.1) != (dimension.0, &dimension.1))?;
        let stated = self.bench.known(&(other.0, other.1.clone(), dimension.2.clone())).map(|(value, _)| value);
        let (low, high) = self.plausible(dimension, stated)?;
        match at {
            At::Stated => stated,
            At::Low => Some(low),
            At::High => Some(high),
        }
    }

    /// Least and greatest value that ports of the kind state for a dimension.
    fn plausible(&self, (item, port, dimension): &Dimension, other: Option<Length>) -> Option<(Length, Length)> {
        let kind = std::mem::discriminant(&self.bench.port(*item, port)?.kind);
        let catalogue = self.bench.desk.catalogue();
        let ports = catalogue.items().flat_map(|item| &catalogue.body(item).ports);
        let of_kind = ports.filter(|port| std::mem::discriminant(&port.kind) == kind);
        let stated = of_kind.filter_map(|port| Some(port.stated(dimension)?.value)).chain(other);
        stated.fold(None, |range: Option<(Length, Length)>, value| {
            Some(range.map_or((value, value), |(low, high)| (low.min(value), high.max(value))))
        })
    }
}

/// The accuracy that can be asked for of a length: a caliper only reaches so far.
fn fair(within: Length, value: Length) -> Length {
    if value.abs() > LONGEST_CALIPER { within.max(Length::from_mm(0.5)) } else { within }
}
