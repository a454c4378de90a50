//! `matrix`: what fits what, before a catalogue is published.

use std::fmt::Write as _;

use clap::Args;
use fitup_core::build::{Build, Carrying, Seating};
use fitup_core::finding::Verdict;
use fitup_core::fit::{Desk, judge, verdict};
use fitup_core::item::{Catalogue, FrameId, ImplementId, MachineId, Role, SeatId};
use fitup_words::Words;
use serde::Serialize;

use crate::check::Format;
use crate::judge::ReaderArguments;

/// What `matrix` is asked.
#[derive(Debug, Clone, Args)]
pub struct Arguments {
    /// The catalogue's JSON file; `-` reads the standard input.
    pub catalogue: String,
    /// How the table is printed: the table alone, with the reason of each cell, or as data.
    #[arg(long, value_enum, default_value_t)]
    pub format: Format,
    /// Whom the sentences and figures are for.
    #[command(flatten)]
    pub reader: ReaderArguments,
}

/// One machine with one implement: the best that any frame and seat make of them.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Cell {
    /// Id of the machine.
    pub machine: String,
    /// Id of the implement.
    pub implement: String,
    /// The best verdict; nothing if the catalogue has no frame or no seat to complete a build.
    pub verdict: Option<&'static str>,
    /// Id of the frame it is reached with; nothing for the bare hitch.
    pub frame: Option<String>,
    /// Id of the seat arrangement it is reached with.
    pub seat: Option<String>,
    /// Number of completed builds at each verdict, best first.
    pub builds: [u64; 4],
    /// Why it is no better.
    pub reason: Option<String>,
    #[serde(skip)]
    best: Option<Verdict>,
}

/// The table, row by row: every frame and the bare hitch with every seat arrangement is judged.
pub fn cells(desk: &Desk, words: &Words) -> Vec<Cell> {
    let catalogue = desk.catalogue();
    let mut cells = Vec::new();
    for machine in 0..catalogue.machines.len() {
        for implement in 0..catalogue.implements.len() {
            cells.push(cell(desk, words, MachineId::at(machine), ImplementId::at(implement)));
        }
    }
    cells
}

fn cell(desk: &Desk, words: &Words, machine: MachineId, implement: ImplementId) -> Cell {
    let catalogue = desk.catalogue();
    let mut best: Option<(Verdict, Build)> = None;
    let mut builds = [0; 4];
    for carrying in std::iter::once(Carrying::Hitch).chain(frames(catalogue)) {
        for seat in (0..catalogue.seats.len()).map(SeatId::at) {
            let build = Build {
                machine: Some(machine),
                carrying,
                seating: Seating::This(seat),
                implement: Some(implement),
                ..Build::default()
            };
            let verdict = verdict(desk, &build);
            builds[verdict as usize] += 1;
            if best.as_ref().is_none_or(|(known, _)| verdict < *known) {
                best = Some((verdict, build));
            }
        }
    }
    let build = best.as_ref().map(|(_, build)| build);
    let worst = |(verdict, build): &(Verdict, Build)| {
        let finding = judge(desk, build).findings.into_iter().next().filter(|_| *verdict != Verdict::BoltsUp);
        finding.map(|finding| words.short(catalogue, &finding))
    };
    Cell {
        machine: catalogue.machine(machine).body.id.clone(),
        implement: catalogue.implement(implement).body.id.clone(),
        verdict: best.as_ref().map(|(verdict, _)| verdict_name(*verdict)),
        frame: build.and_then(|it| it.carrying.frame()).map(|it| catalogue.frame(it).body.id.clone()),
        seat: build.and_then(|it| it.seating.seat()).map(|it| catalogue.seat(it).body.id.clone()),
        builds,
        reason: best.as_ref().and_then(worst),
        best: best.as_ref().map(|(verdict, _)| *verdict),
    }
}

fn frames(catalogue: &Catalogue) -> impl Iterator<Item = Carrying> {
    (0..catalogue.frames.len()).map(|index| Carrying::Frame(FrameId::at(index)))
}

/// The table as text.
pub fn text(desk: &Desk, words: &Words, cells: &[Cell], format: Format) -> String {
    match format {
        Format::Json => serde_json::to_string_pretty(cells).expect("text and numbers are JSON") + "\n",
        Format::Short => table(desk, words, cells),
        Format::Full => table(desk, words, cells) + "\n" + &reasons(desk, words, cells),
    }
}

/// One letter a verdict keeps a table of many implements narrow; the legend says which.
const fn mark(verdict: Option<Verdict>) -> char {
    match verdict {
        Some(Verdict::BoltsUp) => '●',
        Some(Verdict::BoltsUpWithWork) => '◐',
        Some(Verdict::CheckFirst) => '?',
        Some(Verdict::WontMount) => '×',
        None => '-',
    }
}

fn table(desk: &Desk, words: &Words, cells: &[Cell]) -> String {
    let catalogue = desk.catalogue();
    let width = catalogue.machines.iter().map(|it| it.body.label.chars().count()).max().unwrap_or_default();
    let mut out = String::new();
    for (index, implement) in catalogue.implements.iter().enumerate() {
        let _ = writeln!(out, "{:width$}  {:>3}  {}", "", index + 1, implement.body.label);
    }
    let _ = write!(out, "{:width$} ", "");
    for index in 0..catalogue.implements.len() {
        let _ = write!(out, "{:>4}", index + 1);
    }
    out.push('\n');
    for (machine, row) in catalogue.machines.iter().zip(cells.chunks(catalogue.implements.len().max(1))) {
        let _ = write!(out, "{:width$} ", machine.body.label);
        for cell in row {
            let _ = write!(out, "{:>4}", mark(cell.best));
        }
        out.push('\n');
    }
    let legend: Vec<String> =
        Verdict::ALL.iter().map(|&verdict| format!("{} {}", mark(Some(verdict)), words.verdict(verdict))).collect();
    out.push_str(&legend.join("   "));
    out.push('\n');
    out
}

fn reasons(desk: &Desk, words: &Words, cells: &[Cell]) -> String {
    let catalogue = desk.catalogue();
    let label = |id: &str| catalogue.find(id).map_or_else(|| id.to_owned(), |item| catalogue.body(item).label.clone());
    let mut out = String::new();
    for cell in cells {
        let Some(verdict) = cell.best else { continue };
        let through = match (&cell.frame, &cell.seat) {
            (Some(frame), Some(seat)) => format!("{}, {}", label(frame), label(seat)),
            (None, Some(seat)) => format!("{}, {}", words.role(Role::Hitch), label(seat)),
            _ => String::new(),
        };
        let _ = writeln!(
            out,
            "{} + {}: {} ({through})",
            label(&cell.machine),
            label(&cell.implement),
            words.verdict(verdict)
        );
        if let Some(reason) = &cell.reason {
            let _ = writeln!(out, "  {reason}");
        }
    }
    out.chars().filter(|&c| c == '\n' || !c.is_control()).collect()
}

fn verdict_name(verdict: Verdict) -> &'static str {
    let key = fitup_words::verdict_key(verdict);
    key.strip_prefix("verdict-").unwrap_or(key)
}
