//! Changes to a build put together until something is better: breadth first, each step proposed by what is in the way.

use crate::order;
use std::collections::BTreeSet;

use super::eliminate::eliminate;
use super::remedies::{Remedy, RemedyStep, named_changes, undecided, useful_adapters};
use super::terms::{Choice, Terms, side_of};
use crate::build::{Build, Carrying, Change, Seating, Step, options};
use crate::finding::{Finding, Subject, Verdict};
use crate::fit::{Answer, ComeBy, Desk, findings, is_worse, judge};
use crate::item::SeatId;
use crate::quantity::{Angle, Length, Money};

/// Changes put together at most: more than that is another build, and nobody follows why.
pub const MOST_STEPS: usize = 3;

/// Builds judged at most, so that a search stays within a twentieth of a second. Own choice; a larger one finds more where a
/// catalogue is large and several things are in the way.
const MOST_JUDGED: usize = 900;

/// Frames and seats that are each tried by themselves; of more, only those are that the search for completions says are better.
/// Own choice.
const FEW: usize = 48;

/// Exchanges taken from the completions at most, of each kind. Own choice.
const MOST_EXCHANGES: usize = 24;

/// The remedies of a build that is judged, best first, and whether everything was tried.
pub(super) fn combine(desk: &Desk, build: &Build, now: &Answer) -> (Vec<Remedy>, bool) {
    let (exchanges, all) = exchanges(desk, build, now.verdict);
    let mut search = Search {
        desk,
        build,
        now,
        undecided: undecided(now),
        exchanges,
        steps: Vec::new(),
        lifts: Vec::new(),
        seen: BTreeSet::new(),
        tried: 0,
        all_tried: all,
        found: Vec::new(),
    };
    search.run();
    let all_tried = search.all_tried;
    let mut found = search.found;
    let kept: Vec<bool> = found.iter().map(|one| !has_a_step_too_many(&one.remedy, &found)).collect();
    let mut kept = kept.into_iter();
    found.retain(|_| kept.next().unwrap_or_default());
    order::sort(&mut found, by_worth);
    (found.into_iter().map(|ranked| ranked.remedy).collect(), all_tried)
}

/// A remedy with what it is ranked by.
struct Ranked {
    remedy: Remedy,
    /// What the parts cost that were not in the build before; `None` = a price is missing.
    new_parts: Option<Money>,
    key: Vec<usize>,
}

/// A build on the way.
struct Node {
    /// Its steps, by their place in [`Search::steps`], in order.
    key: Vec<usize>,
    build: Build,
    verdict: Verdict,
    findings: Vec<Finding>,
}

impl Node {
    fn of(key: Vec<usize>, build: Build, findings: Vec<Finding>) -> Self {
        let verdict = findings.iter().map(|finding| finding.verdict).max().unwrap_or_default();
        Self { key, build, verdict, findings }
    }

    /// The findings that are as bad as `worst`.
    fn blocking(&self, worst: Verdict) -> impl Iterator<Item = &Finding> {
        self.findings.iter().filter(move |finding| finding.verdict >= worst)
    }

    /// How many findings of a code are as bad as `worst`.
    fn count(&self, worst: Verdict, code: &str) -> usize {
        self.blocking(worst).filter(|finding| finding.code == code).count()
    }
}

struct Search<'a> {
    desk: &'a Desk,
    build: &'a Build,
    now: &'a Answer,
    /// What the build as it is leaves undecided.
    undecided: usize,
    /// Other seats and frames, alone or one of each.
    exchanges: Vec<Vec<RemedyStep>>,
    /// Every step that was proposed.
    steps: Vec<RemedyStep>,
    /// What each change by itself lifted of what is in the way, by codes.
    lifts: Vec<(Vec<RemedyStep>, BTreeSet<&'static str>)>,
    seen: BTreeSet<Vec<usize>>,
    tried: usize,
    all_tried: bool,
    found: Vec<Ranked>,
}

impl Search<'_> {
    fn run(&mut self) {
        let root = Node::of(Vec::new(), self.build.clone(), self.now.findings.clone());
        let named: Vec<RemedyStep> = named_changes(&self.now.findings).into_iter().map(RemedyStep::Change).collect();
        let mut nodes = vec![root];
        for depth in 1..=MOST_STEPS {
            let mut next = Vec::new();
            for node in &nodes {
                for steps in self.proposals(node) {
                    if node.key.len() + steps.len() > MOST_STEPS {
                        continue;
                    }
                    let Some(reached) = self.attempt(node, &steps, depth < MOST_STEPS) else { continue };
                    let lifted = lifted(node, &reached, &steps);
                    if depth == 1 {
                        self.lifts.push((steps, lifted.iter().map(|finding| finding.code).collect()));
                    }
                    if !lifted.is_empty() {
                        next.push(reached);
                    }
                    if !self.all_tried && self.tried >= MOST_JUDGED {
                        return;
                    }
                }
            }
            if depth == 1 {
                if (2..=MOST_STEPS).contains(&named.len()) {
                    self.attempt(&nodes[0], &named, false);
                }
                // What no change lifts by itself stays in the way of all that are put together.
                let is_lifted = |finding: &Finding| self.lifts.iter().any(|(_, codes)| codes.contains(&finding.code));
                if !nodes[0].blocking(self.now.rank().1).all(is_lifted) {
                    return;
                }
            }
            if self.found.iter().any(|ranked| ranked.remedy.verdict == Verdict::BoltsUp) {
                return;
            }
            order::sort(&mut next, |a, b| (a.verdict, in_the_way(a), &a.key).cmp(&(b.verdict, in_the_way(b), &b.key)));
            nodes = next;
        }
    }

    /// What may be done about a build on the way: what its findings name, adapters, and other seats and frames. Where nothing
    /// new has come into the way, those that lifted nothing of it by themselves are left out.
    fn proposals(&self, node: &Node) -> Vec<Vec<RemedyStep>> {
        let named = named_changes(&node.findings).into_iter().map(RemedyStep::Change);
        let adapters = useful_adapters(self.desk, &node.build).into_iter().map(RemedyStep::Adapter);
        let all = named.chain(adapters).map(|step| vec![step]).chain(self.exchanges.iter().cloned());
        let codes: Vec<&str> = node.blocking(self.now.rank().1).map(|finding| finding.code).collect();
        let is_old =
            |code: &&str| self.now.findings.iter().any(|it| it.verdict >= self.now.rank().1 && it.code == *code);
        if self.lifts.is_empty() || !codes.iter().all(is_old) || codes.is_empty() {
            return all.collect();
        }
        let may_lift = |steps: &Vec<RemedyStep>| {
            let known = self.lifts.iter().find(|(known, _)| known == steps);
            known.is_none_or(|(_, lifts)| lifts.iter().any(|code| codes.contains(code)))
        };
        all.filter(may_lift).collect()
    }

    fn place(&mut self, step: &RemedyStep) -> usize {
        self.steps.iter().position(|known| known == step).unwrap_or_else(|| {
            self.steps.push(step.clone());
            self.steps.len() - 1
        })
    }

    /// Judges a build with more steps, and keeps it if it is a remedy. `None` if it is not a new one, or if it is the last of
    /// its line and no better.
    fn attempt(&mut self, from: &Node, more: &[RemedyStep], goes_on: bool) -> Option<Node> {
        let mut key = from.key.clone();
        for step in more {
            let place = self.place(step);
            if key.iter().any(|&known| excludes(&self.steps[known], step)) {
                return None;
            }
            key.push(place);
        }
        order::sort(&mut key, Ord::cmp);
        if self.seen.contains(&key) {
            return None;
        }
        let steps: Vec<RemedyStep> = key.iter().map(|&place| self.steps[place].clone()).collect();
        let build = with_steps(self.build, &steps);
        self.seen.insert(key.clone());
        if build == from.build || build == *self.build {
            return None;
        }
        if self.tried >= MOST_JUDGED {
            self.all_tried = false;
            return None;
        }
        self.tried += 1;
        // Trailer and site only add to what the four steps find: most attempts end here.
        let worst = self.now.rank().1;
        let limit = if self.may_decide(&steps) { worst } else { better_than(worst) };
        if !goes_on && is_worse(self.desk, &build, limit) {
            return None;
        }
        let mut node = Node::of(key, build, Vec::new());
        if goes_on {
            let mut found = findings(self.desk, &node.build);
            // Where the four steps alone are no better, trailer and site are taken to find what they found before.
            let is_travel = |finding: &&Finding| matches!(finding.subject, Subject::Loading | Subject::Site);
            found.extend(from.findings.iter().filter(is_travel).cloned());
            let of_steps = found.iter().filter(|finding| !is_travel(finding)).map(|finding| finding.verdict).max();
            node = Node::of(node.key, node.build, found);
            if of_steps.is_some_and(|of_steps| of_steps > limit) {
                return Some(node);
            }
        }
        let answer = judge(self.desk, &node.build);
        if self.is_remedy(&steps, &answer) {
            self.found.push(self.ranked(node.key.clone(), steps, &node.build, &answer));
        }
        Some(Node::of(node.key, node.build, answer.findings))
    }

    /// Whether steps may be worth telling though they make the verdict no better: they decide on something that was needed.
    fn may_decide(&self, steps: &[RemedyStep]) -> bool {
        self.now.rank().1 < Verdict::WontMount
            && self.undecided > 0
            && steps.iter().all(|step| matches!(step, RemedyStep::Change(_) | RemedyStep::Adapter(_)))
    }

    /// A better rank; or as good a one where something that was needed is decided on.
    fn is_remedy(&self, steps: &[RemedyStep], answer: &Answer) -> bool {
        if answer.rank() != self.now.rank() {
            return answer.rank() < self.now.rank();
        }
        let left = undecided(answer);
        self.may_decide(steps)
            && left < self.undecided
            // Several decisions together are worth telling only if nothing is left to decide.
            && (steps.len() == 1 || left == 0)
    }

    fn ranked(&self, key: Vec<usize>, steps: Vec<RemedyStep>, build: &Build, answer: &Answer) -> Ranked {
        let asks = |finding: &&Finding| finding.verdict > Verdict::BoltsUp;
        let is_gone = |finding: &&Finding| !answer.findings.iter().filter(asks).any(|after| is_alike(after, finding));
        let is_left = |finding: &&Finding| finding.verdict == answer.rank().1;
        let now = self.now;
        let bought = |answer: &Answer| {
            let lines = answer.parts.lines.iter().filter(|line| line.come_by == ComeBy::Buy);
            lines.map(|line| line.item).collect::<Vec<_>>()
        };
        let before = bought(now);
        let new = answer.parts.lines.iter().filter(|line| line.come_by == ComeBy::Buy && !before.contains(&line.item));
        let new_parts = new
            .map(|line| line.price.map(|price| price.times(line.quantity)))
            .try_fold(Money::ZERO, |sum, price| price.map(|price| sum.plus(price)));
        let remedy = Remedy {
            verdict: answer.verdict,
            settles: now.findings.iter().filter(asks).filter(is_gone).cloned().collect(),
            leaves: answer.findings.iter().filter(asks).filter(is_left).cloned().collect(),
            buy_more: difference(answer.parts.total, now.parts.total),
            work_more: answer.strip.total().0 - now.strip.total().0,
            length_more: answer.footprint.length.zip(now.footprint.length).map(|(a, b)| a - b),
            departure_more: departure(answer).zip(departure(now)).map(|(a, b)| a - b),
            steps,
            build: build.clone(),
        };
        Ranked { remedy, new_parts, key }
    }
}

/// What a step took out of the way: of each kind that there is less of. An adapter may need another one behind it, so that for
/// it any finding counts that is gone.
fn lifted<'n>(before: &'n Node, after: &Node, steps: &[RemedyStep]) -> Vec<&'n Finding> {
    let worst = before.verdict;
    let is_adapter = steps.iter().any(|step| matches!(step, RemedyStep::Adapter(_)));
    let is_gone = |finding: &&Finding| {
        if is_adapter {
            !after.blocking(worst).any(|it| is_same(it, finding))
        } else {
            after.count(worst, finding.code) < before.count(worst, finding.code)
        }
    };
    before.blocking(worst).filter(is_gone).collect()
}

/// The next better verdict.
fn better_than(verdict: Verdict) -> Verdict {
    Verdict::ALL[(verdict as usize).saturating_sub(1)]
}

/// How many findings are as bad as the verdict.
fn in_the_way(node: &Node) -> usize {
    node.blocking(node.verdict).count()
}

/// Whether two steps answer the same question, so that only one of them can be taken.
fn excludes(a: &RemedyStep, b: &RemedyStep) -> bool {
    use Change::{Ballast, DriverSeat, OpenUp, Ramps, RearSeat};
    match (a, b) {
        (RemedyStep::Seat(_), RemedyStep::Seat(_))
        | (RemedyStep::Carry(_), RemedyStep::Carry(_))
        | (RemedyStep::Change(DriverSeat(_)), RemedyStep::Change(DriverSeat(_)))
        | (RemedyStep::Change(RearSeat(_)), RemedyStep::Change(RearSeat(_)))
        | (RemedyStep::Change(Ballast { .. }), RemedyStep::Change(Ballast { .. }))
        | (RemedyStep::Change(Ramps { .. }), RemedyStep::Change(Ramps { .. })) => true,
        (
            RemedyStep::Change(OpenUp { item, port, .. }),
            RemedyStep::Change(OpenUp { item: other, port: other_port, .. }),
        ) => item == other && port == other_port,
        _ => a == b,
    }
}

/// The build with steps taken, in their order.
pub(super) fn with_steps(build: &Build, steps: &[RemedyStep]) -> Build {
    let mut build = build.clone();
    for step in steps {
        match step {
            RemedyStep::Adapter(id) => build.side.adapters.push(*id),
            RemedyStep::Seat(id) => build.choices.seating = Seating::This(*id),
            RemedyStep::Carry(carrying) => build.choices.carrying = *carrying,
            RemedyStep::Change(change) => build.side.decide(change.clone()),
        }
    }
    build
}

/// Other seats and other frames or the hitch, where one was chosen, and whether these are all there are.
///
/// Of few every one is tried. Of many the completions say which alone, and which pairs of a frame and a seat, are better.
fn exchanges(desk: &Desk, build: &Build, now: Verdict) -> (Vec<Vec<RemedyStep>>, bool) {
    let counts = options(desk.catalogue());
    let is_chosen = [build.choices.carrying != Carrying::Open, build.choices.seating != Seating::Open];
    let of = |step: Step, option: usize| {
        let mut other = Build::default();
        step.choose(&mut other, option);
        match step {
            Step::Seat => RemedyStep::Seat(SeatId::at(option)),
            _ => RemedyStep::Carry(other.choices.carrying),
        }
    };
    let steps = [Step::Seat, Step::Frame].into_iter().filter(|&step| is_chosen[usize::from(step == Step::Seat)]);
    let differs = |step: Step, option: usize| step.chosen(build) != Some(option);
    let total: usize = steps.clone().map(|step| counts[step as usize]).sum();
    if total <= FEW {
        let all = steps.flat_map(|step| (0..counts[step as usize]).map(move |option| (step, option)));
        return (
            all.filter(|&(step, option)| differs(step, option)).map(|(step, option)| vec![of(step, option)]).collect(),
            true,
        );
    }
    let mut found: Vec<Vec<RemedyStep>> = Vec::new();
    let chosen = Step::ALL.map(|step| step.chosen(build));
    let desk = desk.standing(&build.side);
    let terms = Terms::new(desk, side_of(build)).filter(|_| build.is_complete());
    let Some(mut terms) = terms else { return (found, false) };
    let all: Vec<usize> = steps.map(|step| step as usize).collect();
    let free_sets = all.iter().map(|&step| vec![step]).chain([all.clone()].into_iter().filter(|all| all.len() > 1));
    for free in free_sets {
        let fixed = [0, 1, 2, 3].map(|step| chosen[step].filter(|_| !free.contains(&step)));
        let best = eliminate(desk, &mut terms, fixed, &free);
        let reached = free.iter().flat_map(|&step| &best[step]).filter(|best| best.verdict < now);
        let mut better: Vec<(Verdict, Choice)> = reached.map(|best| (best.verdict, best.choice)).collect();
        order::sort(&mut better, Ord::cmp);
        better.dedup();
        for (_, choice) in better.into_iter().take(MOST_EXCHANGES) {
            let changed = free.iter().map(|&step| (Step::ALL[step], choice[step]));
            let steps: Vec<RemedyStep> = changed
                .filter(|&(step, option)| differs(step, option))
                .map(|(step, option)| of(step, option))
                .collect();
            if !steps.is_empty() && !found.contains(&steps) {
                found.push(steps);
            }
        }
    }
    (found, false)
}

/// Whether fewer of its steps do as well.
fn has_a_step_too_many(remedy: &Remedy, all: &[Ranked]) -> bool {
    all.iter().map(|ranked| &ranked.remedy).any(|other| {
        other.verdict <= remedy.verdict
            && other.steps.len() < remedy.steps.len()
            && remedy.settles.iter().all(|settled| other.settles.iter().any(|it| is_same(it, settled)))
            && other.steps.iter().all(|step| remedy.steps.contains(step))
    })
}

fn departure(answer: &Answer) -> Option<Angle> {
    answer.footprint.departure.map(|end| end.angle)
}

/// Whether two findings say the same of the same.
fn is_same(a: &Finding, b: &Finding) -> bool {
    a.code == b.code && a.subject == b.subject
}

/// Whether one finding says what the other says, be it of another item in the same part of the stack: a joint that is as open
/// with another frame is not settled by that frame.
fn is_alike(a: &Finding, b: &Finding) -> bool {
    let is_joint = |finding: &Finding| match finding.subject {
        Subject::Joint(role, ..) => Some(role),
        _ => None,
    };
    is_same(a, b) || a.code == b.code && is_joint(a).is_some() && is_joint(a) == is_joint(b)
}

fn difference(after: Option<Money>, before: Option<Money>) -> Option<Money> {
    Some(Money::from_hundredths(after?.hundredths().saturating_sub(before?.hundredths())))
}

fn by_worth(a: &Ranked, b: &Ranked) -> std::cmp::Ordering {
    let money = |ranked: &Ranked| ranked.new_parts.map_or(i64::MAX, Money::hundredths);
    let length = |ranked: &Ranked| ranked.remedy.length_more.map_or(f64::INFINITY, Length::m);
    (a.remedy.verdict.cmp(&b.remedy.verdict))
        .then_with(|| money(a).cmp(&money(b)))
        .then_with(|| a.remedy.work_more.total_cmp(&b.remedy.work_more))
        .then_with(|| length(a).total_cmp(&length(b)))
        .then_with(|| a.key.len().cmp(&b.key.len()))
        .then_with(|| a.key.cmp(&b.key))
}
