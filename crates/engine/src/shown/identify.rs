//! Which unit it could be, by what was found on it.

use fitup_core::build::{Measurement, Step};
use fitup_core::fit::Desk;
use fitup_core::item::{ItemRef, MachineId, Port, PortKind};
use fitup_core::search::{self, Observed, TellApart};
use fitup_view::{self as view, Candidate, Entry, Kind, Look, Place};
use fitup_words::Words;

use super::ctx::Ctx;
use super::desk::{Task, laid_out};
use super::steps::{shape, step_shown};
use super::taken;
use crate::change::{self, Refused};

/// Candidates that are shown: more are no help.
const SHOWN: usize = 4;

/// Stands for the item that is not known.
const NOBODY: ItemRef = ItemRef::Machine(MachineId(0));

/// Dimensions that are asked for at most, those that most units state first. Own choice.
const MOST_ASKED: usize = 8;

/// The view.
pub fn identify(ctx: Ctx, look: &Look) -> view::Identify {
    let seen = observed(ctx.words, &look.observed);
    let kind = look.observed.kind.as_deref().and_then(|name| of_kind(ctx.desk, name).next());
    let observed = Observed {
        kind: kind.map(|(_, port)| &port.kind),
        half: kind.map(|(_, port)| port.kind.half()),
        measured: &seen.measured,
        numbers: &seen.numbers,
        count: seen.count,
    };
    let is_known = !(seen.measured.is_empty() && seen.numbers.is_empty() && seen.count.is_none());
    let found = if is_known { search::identify(ctx.desk, &observed) } else { search::Identified::default() };
    let of = |port: &Port| format!("port-kind-{}", port.kind.half());
    let called = kind.map_or_else(|| ctx.text("identify-any-kind"), |(_, port)| ctx.text(&of(port)));
    let mut tasks = Vec::new();
    if let Some((item, port)) = kind {
        for what in dimensions(ctx.desk, &port.kind) {
            // Drawn on a unit that states it, so that it is drawn as it is.
            let shown = of_kind(ctx.desk, port.kind.half()).find(|(_, port)| port.stated(&what).is_some());
            let (item, port) = shown.unwrap_or((item, port));
            tasks.push(Task::on(ctx, Kind::Length, item, &port.name, &what));
        }
        if matches!(&port.kind, PortKind::Pins(_)) || port.kind.pattern().is_some() {
            tasks.push(Task::on(ctx, Kind::Count, item, &port.name, ""));
        }
    }
    let (item, port) = kind.map_or((NOBODY, ""), |(item, port)| (item, port.name.as_str()));
    if ctx.catalogue().items().next().is_some() {
        let drawn = kind.map(|_| (item, port.to_owned()));
        tasks.push(Task { drawn, ..Task::on(ctx, Kind::Numbers, item, port, "") });
    }
    for task in &mut tasks {
        task.at = Place { what: std::mem::take(&mut task.at.what), ..Place::default() };
        task.of.clone_from(&called);
    }
    // What tells the first two apart comes first.
    if let Some(next) = found.tell_apart.first() {
        tasks.sort_by_key(|task| match next {
            TellApart::Measure { dimension, .. } => task.kind != Kind::Length || task.at.what != *dimension,
            TellApart::Read { .. } => task.kind != Kind::Numbers,
            TellApart::Count { .. } => task.kind != Kind::Count,
        });
    }
    let kinds = kinds(ctx.desk).into_iter().map(|word| {
        let called = ctx.text(&format!("port-kind-{word}"));
        (word.to_owned(), called)
    });
    let left = found.candidates.len().saturating_sub(SHOWN);
    view::Identify {
        kinds: std::iter::once((String::new(), ctx.text("identify-any-kind"))).chain(kinds).collect(),
        kind: look.observed.kind.clone().unwrap_or_default(),
        desk: laid_out(ctx, tasks, Vec::new(), seen.taken, look),
        candidates: found
            .candidates
            .iter()
            .take(SHOWN)
            .map(|candidate| {
                let (name, says) = ctx.words.candidate(ctx.catalogue(), candidate);
                Candidate {
                    item: ctx.id(candidate.item),
                    port: candidate.port.clone(),
                    name,
                    says,
                    shape: shape(ctx, candidate.item, None),
                    step: Step::of(candidate.item).map(|(step, _)| step_shown(step)),
                }
            })
            .collect(),
        says: match (is_known, found.candidates.len()) {
            (false, _) => Some(ctx.text("identify-nothing-yet")),
            (true, 0) => Some(ctx.text("identify-none")),
            _ if left > 0 => Some(ctx.text_with("identify-more", &[("count", left.into())])),
            _ => None,
        },
        next: found.tell_apart.iter().take(2).map(|tell| ctx.words.tell_apart(ctx.catalogue(), &found, tell)).collect(),
    }
}

/// What was found, read.
#[derive(Default)]
struct Seen {
    /// What was measured, on no item in particular.
    measured: Vec<Measurement>,
    numbers: Vec<String>,
    count: Option<usize>,
    taken: Vec<view::Taken>,
}

/// Reads what was found as it was typed; what cannot be read is told in its line.
fn observed(words: &Words, observed: &view::Observed) -> Seen {
    let mut seen = Seen::default();
    for (at, kind, found) in &observed.found {
        let line = seen.take(words, at, found);
        let is_wrong = line.is_err();
        let line = line.unwrap_or_else(|refused: Refused| refused.shown().says);
        seen.taken.push(view::Taken { at: at.clone(), kind: *kind, line, is_wrong });
    }
    seen
}

impl Seen {
    fn take(&mut self, words: &Words, at: &Place, found: &Entry) -> Result<String, Refused> {
        Ok(match found {
            Entry::Length { .. } => {
                let measured = change::measured(words, NOBODY, at, found)?;
                let line = taken::value(words, &measured);
                self.measured.push(measured);
                line
            }
            Entry::Numbers { typed, .. } => {
                self.numbers = change::numbers(words, typed)?;
                words.labelled(&words.ui("desk-numbers", &[]), &self.numbers.join(" + "))
            }
            Entry::Number(typed) => {
                let count = change::number(words, typed)?;
                self.count = usize::try_from(count).ok();
                words.labelled(&words.ui("desk-count", &[]), &count.to_string())
            }
            Entry::Presence(_) | Entry::Photo(_) => String::new(),
        })
    }
}

/// The ports of a kind, with their items.
fn of_kind<'d>(desk: &'d Desk, name: &str) -> impl Iterator<Item = (ItemRef, &'d Port)> {
    let catalogue = desk.catalogue();
    let all = catalogue.items().flat_map(move |item| catalogue.body(item).ports.iter().map(move |port| (item, port)));
    let name = name.to_owned();
    all.filter(move |(_, port)| port.kind.half() == name)
}

/// The kinds of port that something can be measured or counted on, in the order of the catalogue.
fn kinds(desk: &Desk) -> Vec<&'static str> {
    let catalogue = desk.catalogue();
    let mut kinds = Vec::new();
    for port in catalogue.items().flat_map(|item| &catalogue.body(item).ports) {
        if !port.measurable().is_empty() && !kinds.contains(&port.kind.half()) {
            kinds.push(port.kind.half());
        }
    }
    kinds
}

/// The dimensions that ports of a kind state, those that most of them state first.
fn dimensions(desk: &Desk, kind: &PortKind) -> Vec<String> {
    let mut counted: Vec<(String, usize)> = Vec::new();
    for (_, port) in of_kind(desk, kind.half()) {
        for name in port.measurable().into_iter().filter(|name| port.stated(name).is_some()) {
            match counted.iter_mut().find(|(known, _)| *known == name) {
                Some((_, count)) => *count += 1,
                None => counted.push((name, 1)),
            }
        }
    }
    counted.sort_by_key(|(_, count)| std::cmp::Reverse(*count));
    counted.into_iter().take(MOST_ASKED).map(|(name, _)| name).collect()
}
