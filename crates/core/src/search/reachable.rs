//! Completions: the best verdict still reachable through each option of each step.

use crate::build::{Build, Carrying, Seating};
use crate::finding::{Finding, Verdict};
use crate::fit::{Desk, judge, verdict};
use crate::item::{Catalogue, FrameId, ImplementId, MachineId, SeatId};

/// One of the four steps.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Step {
    /// Machine.
    Machine,
    /// Frame or hitch.
    Frame,
    /// Seat arrangement.
    Seat,
    /// Implement.
    Implement,
}

impl Step {
    /// The four steps in their usual order.
    pub const ALL: [Self; 4] = [Self::Machine, Self::Frame, Self::Seat, Self::Implement];
}

/// What one option still leads to.
#[derive(Debug, Clone, PartialEq)]
pub struct Reach {
    /// The best verdict of any completed build through this option.
    pub verdict: Verdict,
    /// One completed build that has it.
    pub build: Build,
    /// Number of completed builds at each verdict, best first.
    pub counts: [u64; 4],
}

impl Reach {
    /// The worst finding of the build that is reached, unless it simply bolts up: the reason why
    /// nothing better is reachable.
    pub fn reason(&self, desk: &Desk) -> Option<Finding> {
        if self.verdict == Verdict::BoltsUp {
            return None;
        }
        judge(desk, &self.build).findings.into_iter().next()
    }
}

/// What every option of every step still leads to, in the order of the tables; the hitch stands
/// before the frames. An entry is `None` when some step has no option at all.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Reachable {
    /// Machines.
    pub machines: Vec<Option<Reach>>,
    /// The hitch, then the frames.
    pub carrying: Vec<Option<Reach>>,
    /// Seat arrangements.
    pub seats: Vec<Option<Reach>>,
    /// Implements.
    pub implements: Vec<Option<Reach>>,
}

/// The best verdict still reachable through each option of each step of a partial build.
///
/// For an option of a step, the other steps keep their choices if they have one and are free
/// otherwise; adapters, measurements and changes of the build stay.
/// Accuracy: exact; every completed build is judged.
pub fn reachable(desk: &Desk, build: &Build) -> Reachable {
    let options = Options::of(desk.catalogue());
    let through = |step: Step| -> Vec<Option<Reach>> {
        (0..options.count(step)).map(|index| best(desk, &options, &Options::choose(build, step, index), step)).collect()
    };
    Reachable {
        machines: through(Step::Machine),
        carrying: through(Step::Frame),
        seats: through(Step::Seat),
        implements: through(Step::Implement),
    }
}

/// How many options each step has.
struct Options {
    machines: usize,
    carrying: usize,
    seats: usize,
    implements: usize,
}

impl Options {
    fn of(catalogue: &Catalogue) -> Self {
        Self {
            machines: catalogue.machines.len(),
            carrying: catalogue.frames.len() + 1,
            seats: catalogue.seats.len(),
            implements: catalogue.implements.len(),
        }
    }

    const fn count(&self, step: Step) -> usize {
        match step {
            Step::Machine => self.machines,
            Step::Frame => self.carrying,
            Step::Seat => self.seats,
            Step::Implement => self.implements,
        }
    }

    fn choose(build: &Build, step: Step, index: usize) -> Build {
        let mut build = build.clone();
        match step {
            Step::Machine => build.machine = Some(MachineId::at(index)),
            Step::Frame => {
                build.carrying = match index.checked_sub(1) {
                    None => Carrying::Hitch,
                    Some(frame) => Carrying::Frame(FrameId::at(frame)),
                }
            }
            Step::Seat => build.seating = Seating::This(SeatId::at(index)),
            Step::Implement => build.implement = Some(ImplementId::at(index)),
        }
        build
    }
}

fn is_open(build: &Build, step: Step) -> bool {
    match step {
        Step::Machine => build.machine.is_none(),
        Step::Frame => build.carrying == Carrying::Open,
        Step::Seat => build.seating == Seating::Open,
        Step::Implement => build.implement.is_none(),
    }
}

fn best(desk: &Desk, options: &Options, build: &Build, chosen: Step) -> Option<Reach> {
    let Some(step) = Step::ALL.into_iter().find(|&step| step != chosen && is_open(build, step)) else {
        let verdict = verdict(desk, build);
        let mut counts = [0; 4];
        counts[verdict as usize] = 1;
        return Some(Reach { verdict, build: build.clone(), counts });
    };
    let mut reached: Option<Reach> = None;
    for index in 0..options.count(step) {
        let Some(found) = best(desk, options, &Options::choose(build, step, index), chosen) else { continue };
        match &mut reached {
            None => reached = Some(found),
            Some(so_far) => {
                for (sum, count) in so_far.counts.iter_mut().zip(found.counts) {
                    *sum += count;
                }
                if found.verdict < so_far.verdict {
                    (so_far.verdict, so_far.build) = (found.verdict, found.build);
                }
            }
        }
    }
    reached
}
