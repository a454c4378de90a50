//! The cells: each machine with each implement, at best.

use std::sync::atomic::{AtomicUsize, Ordering};
use std::sync::{Mutex, PoisonError};
use std::time::{Duration, Instant};

use fitup_core::build::{Build, Choices, Step};
use fitup_core::finding::{Question, Verdict};
use fitup_core::fit::{Desk, judge};
use fitup_core::item::{Catalogue, FrameId, ImplementId, MachineId, SeatId};
use fitup_core::search::{Nearest, Searcher};
use fitup_words::Words;
use serde::Serialize;

/// One machine with one implement.
#[derive(Debug, Clone, PartialEq)]
pub struct Cell {
    /// The machine.
    pub machine: MachineId,
    /// The implement.
    pub implement: ImplementId,
    /// The best that any frame and seat make of them; nothing if the catalogue has no seat to complete a build.
    pub found: Option<Found>,
}

/// The best answer of a cell.
#[derive(Debug, Clone, PartialEq)]
pub struct Found {
    /// The best verdict.
    pub verdict: Verdict,
    /// Which of fit and work decides.
    pub question: Question,
    /// The frame it is reached with; nothing for the bare hitch. Where nothing mounts, the one that misses by the least.
    pub frame: Option<FrameId>,
    /// The seat arrangement it is reached with.
    pub seat: SeatId,
    /// Why it is no better: the finding that decides that build.
    pub reason: Option<String>,
}

/// A cell as data.
#[derive(Debug, Serialize)]
pub(super) struct Record<'a> {
    machine: &'a str,
    implement: &'a str,
    verdict: Option<&'static str>,
    question: Option<&'static str>,
    frame: Option<&'a str>,
    seat: Option<&'a str>,
    reason: Option<&'a str>,
}

impl Cell {
    /// With ids for names.
    pub(super) fn record<'a>(&'a self, catalogue: &'a Catalogue) -> Record<'a> {
        let found = self.found.as_ref();
        Record {
            machine: &catalogue.machine(self.machine).body.id,
            implement: &catalogue.implement(self.implement).body.id,
            verdict: found.map(|it| super::verdict_name(it.verdict)),
            question: found.map(|it| it.question.word()),
            frame: found.and_then(|it| it.frame).map(|frame| catalogue.frame(frame).body.id.as_str()),
            seat: found.map(|it| catalogue.seat(it.seat).body.id.as_str()),
            reason: found.and_then(|it| it.reason.as_deref()),
        }
    }
}

/// How far the work has come.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Progress {
    /// Machines that are done.
    pub done: usize,
    /// Machines there are.
    pub machines: usize,
    /// How long the rest will take at the pace so far.
    pub left: Duration,
}

/// Every machine with every implement, machine by machine, in the order of the tables. Machines are worked on side by side,
/// as many as the computer has cores; `progress` is told after each.
pub fn cells(desk: &Desk, words: &Words, progress: impl Fn(Progress) + Sync) -> Vec<Cell> {
    let machines = desk.catalogue().machines.len();
    let (next, rows) = (AtomicUsize::new(0), Mutex::new(Vec::new()));
    let start = Instant::now();
    let work = || {
        let mut searcher = Searcher::new(desk);
        loop {
            let machine = next.fetch_add(1, Ordering::Relaxed);
            if machine >= machines {
                break;
            }
            let row = row(&mut searcher, words, MachineId::at(machine));
            let mut rows = rows.lock().unwrap_or_else(PoisonError::into_inner);
            rows.push((machine, row));
            let done = rows.len();
            let left = start.elapsed().mul_f64(share(machines - done, done));
            progress(Progress { done, machines, left });
        }
    };
    std::thread::scope(|scope| {
        let cores = std::thread::available_parallelism().map_or(1, usize::from);
        for _ in 1..cores.min(machines) {
            scope.spawn(work);
        }
        work();
    });
    let mut rows = rows.into_inner().unwrap_or_else(PoisonError::into_inner);
    rows.sort_unstable_by_key(|(machine, _)| *machine);
    rows.into_iter().flat_map(|(_, row)| row).collect()
}

/// `a` in parts of `b`.
fn share(a: usize, b: usize) -> f64 {
    let of = |count: usize| u32::try_from(count).map_or(f64::from(u32::MAX), f64::from);
    of(a) / of(b.max(1))
}

/// One machine with every implement.
fn row(searcher: &mut Searcher<&Desk>, words: &Words, machine: MachineId) -> Vec<Cell> {
    let build = Build::from(Choices { machine: Some(machine), ..Choices::default() });
    let nearest = searcher.nearest_through(&build, Step::Implement).into_iter().enumerate();
    let cell = |(implement, nearest): (usize, Option<Nearest>)| Cell {
        machine,
        implement: ImplementId::at(implement),
        found: nearest.and_then(|nearest| found(searcher.desk(), words, nearest)),
    };
    nearest.map(cell).collect()
}

fn found(desk: &Desk, words: &Words, Nearest { verdict, build }: Nearest) -> Option<Found> {
    let seat = build.choices.seating.seat()?;
    let answer = judge(desk, &build);
    let reason = answer.reason().map(|finding| words.why(desk.catalogue(), finding));
    Some(Found { verdict, question: answer.deciding().question, frame: build.choices.carrying.frame(), seat, reason })
}
