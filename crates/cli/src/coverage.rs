//! `coverage`: what a catalogue still lacks, by how many answers it holds back.

use std::collections::{BTreeMap, BTreeSet};
use std::fmt::Write as _;

use clap::Args;
use fitup_catalogue::wire::CatalogueFile;
use fitup_core::build::{Build, Choices, Step};
use fitup_core::finding::Verdict;
use fitup_core::fit::{Desk, judge};
use fitup_core::item::MachineId;
use fitup_core::search::Searcher;
use fitup_words::{Words, verdict_key};
use serde_json::{Value, json};

use crate::judge::ReaderArguments;

/// What `coverage` is asked.
#[derive(Debug, Clone, Args)]
pub struct Arguments {
    /// The catalogue: a JSON file, a folder of CSV tables or a workbook; `-` reads JSON from the standard input.
    pub catalogue: String,
    /// Print data instead of text.
    #[arg(long)]
    pub json: bool,
    /// Whom the sentences and figures are for.
    #[command(flatten)]
    pub reader: ReaderArguments,
}

/// What a catalogue still lacks.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Coverage {
    /// Machines with implements: all, and those whose best answer is open.
    pub answers: (usize, usize),
    /// What leaves answers open, and how many each holds back; the most first.
    pub open: Vec<(String, usize)>,
    /// Listed sets that are not simply in order: row of the guide from 1, items, verdict, reason.
    pub sets: Vec<(usize, String, Verdict, String)>,
    /// Headings of parts lists that no port of the item is named by: item and heading.
    pub lists: Vec<(String, String)>,
}

impl Coverage {
    /// Whether nothing is lacking.
    pub fn is_whole(&self) -> bool {
        self.open.is_empty() && self.sets.is_empty() && self.lists.is_empty()
    }
}

/// Looks a catalogue through: every machine with every implement at best, every set of the guide, every
/// parts list.
pub fn coverage(desk: &Desk, file: &CatalogueFile, words: &Words) -> Coverage {
    let catalogue = desk.catalogue();
    let mut found = Coverage::default();
    let mut open: BTreeMap<String, usize> = BTreeMap::new();
    let mut searcher = Searcher::new(desk);
    for machine in (0..catalogue.machines.len()).map(MachineId::at) {
        let build = Build::from(Choices { machine: Some(machine), ..Choices::default() });
        for nearest in searcher.nearest_through(&build, Step::Implement).into_iter().flatten() {
            found.answers.0 += 1;
            if nearest.verdict != Verdict::CheckFirst {
                continue;
            }
            found.answers.1 += 1;
            let answer = judge(desk, &nearest.build);
            let reasons = answer.findings.iter().filter(|finding| finding.verdict == Verdict::CheckFirst);
            let mut told: Vec<String> = reasons.map(|finding| words.why(catalogue, finding)).collect();
            // One answer is held back once by one reason.
            told.sort_unstable();
            told.dedup();
            for reason in told {
                *open.entry(reason).or_default() += 1;
            }
        }
    }
    found.open = open.into_iter().collect();
    found.open.sort_by(|a, b| b.1.cmp(&a.1).then_with(|| a.0.cmp(&b.0)));
    for (index, row) in catalogue.guide.iter().flat_map(|guide| &guide.rows).enumerate() {
        let answer = judge(desk, &Build::from(Choices::listed(row)));
        if let Some(reason) = answer.reason().filter(|_| answer.complete) {
            let items = words.items_of(catalogue, &Build::from(Choices::listed(row)));
            found.sets.push((index + 1, items, answer.verdict, words.why(catalogue, reason)));
        }
    }
    found.lists = lists_without_port(file);
    found
}

/// Headings of parts lists by which no port gets its parts: a list proves a joint where its heading is the
/// name of a port that names no parts of its own.
fn lists_without_port(file: &CatalogueFile) -> Vec<(String, String)> {
    let mut ports: BTreeMap<&str, Vec<&str>> = BTreeMap::new();
    macro_rules! tables {
        ($($table:ident),+) => { $(
            for row in &file.$table {
                ports.entry(&row.id).or_default().extend(row.ports.iter().map(|port| port.name.as_str()));
            }
        )+ };
    }
    tables!(machines, frames, seats, implements, adapters);
    let mut lost: BTreeSet<(String, String)> = BTreeSet::new();
    for line in &file.parts_lists {
        let is_named = ports.get(line.item.as_str()).is_some_and(|names| names.contains(&line.assembly.as_str()));
        if !is_named {
            lost.insert((line.item.clone(), line.assembly.clone()));
        }
    }
    lost.into_iter().collect()
}

/// The coverage as it is printed.
pub fn text(words: &Words, found: &Coverage) -> String {
    let mut out = String::new();
    let counts = [("open", found.answers.1.into()), ("count", found.answers.0.into())];
    let _ = writeln!(out, "{}", words.ui("coverage-answers", &counts));
    for (reason, count) in &found.open {
        let _ = writeln!(out, "  {count:>4}  {reason}");
    }
    let _ = writeln!(out, "\n{}", words.ui("coverage-sets", &[("count", found.sets.len().into())]));
    for (row, items, verdict, reason) in &found.sets {
        let _ = writeln!(out, "  {row:>4}  {items}: {} · {reason}", words.ui(verdict_key(*verdict), &[]));
    }
    let _ = writeln!(out, "\n{}", words.ui("coverage-lists", &[("count", found.lists.len().into())]));
    for (item, heading) in &found.lists {
        let _ = writeln!(out, "        {item}: {heading}");
    }
    out
}

/// The coverage as data.
pub fn data(found: &Coverage) -> Value {
    let verdict = |verdict: Verdict| verdict_key(verdict).trim_start_matches("verdict-");
    json!({
        "answers": found.answers.0,
        "open": found.answers.1,
        "reasons": found.open.iter().map(|(reason, count)| json!({"reason": reason, "answers": count})).collect::<Vec<_>>(),
        "sets": found.sets.iter().map(|(row, items, answer, reason)| {
            json!({"row": row, "items": items, "verdict": verdict(*answer), "reason": reason})
        }).collect::<Vec<_>>(),
        "lists": found.lists.iter().map(|(item, heading)| json!({"item": item, "assembly": heading})).collect::<Vec<_>>(),
    })
}
