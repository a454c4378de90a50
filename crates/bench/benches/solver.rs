//! The same completions by a general-purpose solver: a SAT solver asked, for each option, for a
//! build of a verdict or better that has it.
//!
//! The solver knows nothing of ports and rules, so every build is judged first and what does not
//! go together is written down as clauses: of two options where no build has both, else of three,
//! else of four. That takes a judgement for each build, which bounds the sizes it can manage.

use std::time::Instant;

use fitup_bench::{SIZES, yard};
use fitup_core::build::{Build, Step, options};
use fitup_core::finding::Verdict;
use fitup_core::fit::{Desk, verdict};
use fitup_core::search::Searcher;
use varisat::{ExtendFormula, Lit, Solver, Var};

fn main() {
    // As many sizes as the first argument says; cargo adds `--bench`.
    let sizes = std::env::args().skip(1).find_map(|argument| argument.parse().ok()).unwrap_or(2);
    for size in SIZES.into_iter().take(sizes) {
        compare(size);
    }
}

fn compare(size: fitup_bench::Size) {
    let desk = Desk::new(yard(size));
    let counts = options(desk.catalogue());
    let start = Instant::now();
    let verdicts = judge_all(&desk, counts);
    println!("{size:?}: {} builds judged in {:?}", verdicts.len(), start.elapsed());
    let mut searcher = Searcher::new(&desk);
    let found = searcher.reachable(&Build::default());
    let ours = Instant::now();
    let again = searcher.reachable(&Build::default());
    println!("  completions here: {:?}", ours.elapsed());
    assert_eq!(found, again);
    let start = Instant::now();
    let mut best = counts.map(|count| vec![Verdict::WontMount; count]);
    for worst in [Verdict::CheckFirst, Verdict::BoltsUpWithWork, Verdict::BoltsUp] {
        let mut solver = Solver::new();
        let clauses = write(&mut solver, &verdicts, counts, worst);
        let written = start.elapsed();
        for (step, best) in best.iter_mut().enumerate() {
            for (option, best) in best.iter_mut().enumerate() {
                solver.assume(&[lit(counts, step, option)]);
                if solver.solve().expect("nothing interrupts it") {
                    *best = worst;
                }
            }
        }
        println!("  solver, {worst:?}: {clauses} clauses written by {written:?}, solved by {:?}", start.elapsed());
    }
    let rows = [found.machines, found.carrying, found.seats, found.implements];
    let same = rows
        .iter()
        .zip(&best)
        .all(|(row, best)| row.iter().flatten().map(|reach| reach.verdict).eq(best.iter().copied()));
    println!("  same answers: {same}");
}

fn judge_all(desk: &Desk, counts: [usize; 4]) -> Vec<Verdict> {
    let mut build = Build::default();
    let mut verdicts = Vec::with_capacity(counts.iter().product());
    for m in 0..counts[0] {
        Step::Machine.choose(&mut build, m);
        for c in 0..counts[1] {
            Step::Frame.choose(&mut build, c);
            for s in 0..counts[2] {
                Step::Seat.choose(&mut build, s);
                for i in 0..counts[3] {
                    Step::Implement.choose(&mut build, i);
                    verdicts.push(verdict(desk, &build));
                }
            }
        }
    }
    verdicts
}

fn lit(counts: [usize; 4], step: usize, option: usize) -> Lit {
    Var::from_index(counts[..step].iter().sum::<usize>() + option).positive()
}

/// One option a step, and what does not go together.
fn write(solver: &mut Solver, verdicts: &[Verdict], counts: [usize; 4], worst: Verdict) -> usize {
    let mut clauses = 0;
    let mut add = |clause: &[Lit]| {
        solver.add_clause(clause);
        clauses += 1;
    };
    for step in 0..4 {
        let all: Vec<Lit> = (0..counts[step]).map(|option| lit(counts, step, option)).collect();
        add(&all);
        for (at, &a) in all.iter().enumerate() {
            for &b in &all[at + 1..] {
                add(&[!a, !b]);
            }
        }
    }
    // Sets of two, three and four steps, small ones first; of each, the options that some build has together.
    let mut sets: Vec<Vec<usize>> = (1..16_usize)
        .map(|set| (0..4).filter(|step| set >> step & 1 == 1).collect::<Vec<_>>())
        .filter(|set| set.len() > 1)
        .collect();
    sets.sort_by_key(Vec::len);
    let place = |set: &[usize], choice: [usize; 4]| set.iter().fold(0, |at, &step| at * counts[step] + choice[step]);
    let mut goes: Vec<Vec<bool>> = Vec::new();
    for set in &sets {
        goes.push(vec![false; set.iter().map(|&step| counts[step]).product()]);
    }
    for (at, _) in verdicts.iter().enumerate().filter(|(_, verdict)| **verdict <= worst) {
        let choice = choice_at(at, counts);
        for (set, goes) in sets.iter().zip(&mut goes) {
            goes[place(set, choice)] = true;
        }
    }
    for (index, set) in sets.iter().enumerate() {
        for at in 0..goes[index].len() {
            if goes[index][at] {
                continue;
            }
            let mut choice = [0; 4];
            let mut rest = at;
            for &step in set.iter().rev() {
                choice[step] = rest % counts[step];
                rest /= counts[step];
            }
            let said = sets[..index]
                .iter()
                .zip(&goes)
                .any(|(smaller, goes)| smaller.iter().all(|step| set.contains(step)) && !goes[place(smaller, choice)]);
            if !said {
                let clause: Vec<Lit> = set.iter().map(|&step| !lit(counts, step, choice[step])).collect();
                add(&clause);
            }
        }
    }
    clauses
}

fn choice_at(at: usize, counts: [usize; 4]) -> [usize; 4] {
    let (rest, i) = (at / counts[3], at % counts[3]);
    let (rest, s) = (rest / counts[2], rest % counts[2]);
    [rest / counts[1], rest % counts[1], s, i]
}
