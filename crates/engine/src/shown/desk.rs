//! The desk: what is open and can be measured, read or looked for, that which settles most first.

use std::collections::BTreeSet;
use std::hash::{DefaultHasher, Hash, Hasher};

use fitup_core::build::Build;
use fitup_core::finding::{Asked, Check, Unstated};
use fitup_core::fit::Joint;
use fitup_core::item::{ItemRef, Port, Serials};
use fitup_core::quantity::{Length, Tool};
use fitup_core::search::{Chance, RankedCheck, Stakes};
use fitup_drawing::gauge;
use fitup_view::{self as view, Kind, Look, Place};
use fitup_words::LengthStyle;

use super::ctx::Ctx;
use super::photo::photo;
use super::picture::{Lettering, sheet_of, titled};
use super::say;
use super::taken;

/// From this half range on a tape is good enough. Common practice, no source.
const TAPE: Length = Length::from_mm(0.5);

/// Something that can be found out.
pub struct Task {
    /// Of what kind it is.
    pub kind: Kind,
    /// The item that it is drawn on, and its port; `None` where it is not drawn.
    pub drawn: Option<(ItemRef, String)>,
    /// Where it is entered.
    pub at: Place,
    /// Of what it is.
    pub of: String,
    /// How precisely, if that is known.
    pub within: Option<Length>,
    /// Numbers that would settle it.
    pub any_of: Vec<String>,
    /// What hangs on it.
    pub stakes: Option<Stakes>,
}

impl Task {
    /// Something to find out on an item; of its port, or of all of it where that has no name.
    pub fn on(ctx: Ctx, kind: Kind, item: ItemRef, port: &str, what: &str) -> Self {
        let label = ctx.label(item);
        Self {
            kind,
            drawn: Some((item, port.to_owned())),
            at: Place { item: ctx.id(item), port: port.to_owned(), what: what.to_owned() },
            of: if port.is_empty() { label.to_owned() } else { format!("{label}, {port}") },
            within: None,
            any_of: Vec::new(),
            stakes: None,
        }
    }

    fn hanging_on(mut self, ranked: &RankedCheck) -> Self {
        self.stakes = ranked.stakes;
        self
    }

    fn key(&self) -> u64 {
        let mut hasher = DefaultHasher::new();
        (self.kind as u8, &self.at.item, &self.at.port, &self.at.what).hash(&mut hasher);
        hasher.finish()
    }

    fn is_of(&self, item: ItemRef) -> bool {
        self.drawn.as_ref().is_some_and(|drawn| drawn.0 == item)
    }
}

/// All that is open for the build.
pub fn desk(ctx: Ctx, build: &Build, ranked: &[RankedCheck], look: &Look) -> view::Desk {
    let (tasks, besides) = open(ctx, build, ranked);
    laid_out(ctx, tasks, besides, taken::taken(ctx, build, &|_, _| true), look)
}

/// What can be found out about a joint: what is open first, of the rest the side first of which less is stated.
pub fn desk_of_joint(ctx: Ctx, build: &Build, joint: &Joint, ranked: &[RankedCheck], look: &Look) -> view::Desk {
    let is_here = |item: ItemRef, port: &str| {
        [&joint.carrier, &joint.carried].into_iter().any(|end| end.0 == item && (port.is_empty() || end.1 == port))
    };
    let (mut tasks, _) = open(ctx, build, ranked);
    tasks.retain(|task| {
        [joint.carrier.0, joint.carried.0].into_iter().any(|item| task.is_of(item) && is_here(item, &task.at.port))
    });
    let mut sides: Vec<(usize, ItemRef, &Port)> = [&joint.carrier, &joint.carried]
        .into_iter()
        .filter_map(|(item, name)| {
            let port = ctx.catalogue().body(*item).ports.iter().find(|port| port.name == *name)?;
            Some((port.measurable().iter().filter(|name| port.stated(name).is_some()).count(), *item, port))
        })
        .collect();
    sides.sort_by_key(|side| side.0);
    for (_, item, port) in sides {
        let (stated, unstated): (Vec<String>, Vec<String>) =
            port.measurable().into_iter().partition(|name| port.stated(name).is_some());
        let lengths = unstated.iter().chain(&stated).map(|name| Task::on(ctx, Kind::Length, item, &port.name, name));
        let rest = [Kind::Numbers, Kind::Presence].map(|kind| {
            let what = if kind == Kind::Presence { port.name.as_str() } else { "" };
            Task::on(ctx, kind, item, &port.name, what)
        });
        tasks.extend(lengths.chain(rest));
    }
    laid_out(ctx, tasks, Vec::new(), taken::taken(ctx, build, &is_here), look)
}

/// What the checks ask for, and what of it cannot be entered.
fn open(ctx: Ctx, build: &Build, ranked: &[RankedCheck]) -> (Vec<Task>, Vec<view::Said>) {
    let (mut tasks, mut besides) = (Vec::new(), Vec::new());
    for one in ranked {
        match &one.check {
            Check::MeasureAll(all) => {
                // Unit by unit, first the one of which nothing is stated.
                let mut all: Vec<&Asked> = all.iter().collect();
                all.sort_by_key(|asked| (is_stated(ctx, asked), asked.item));
                tasks.extend(all.into_iter().map(|asked| {
                    let task = Task::on(ctx, Kind::Length, asked.item, &asked.port, &asked.dimension);
                    Task { within: Some(asked.within), ..task }.hanging_on(one)
                }));
            }
            Check::ReadParts { item, port, any_of } => {
                let any_of = any_of.iter().map(|set| set.parts.join(" + ")).collect();
                tasks.push(Task { any_of, ..Task::on(ctx, Kind::Numbers, *item, port, "") }.hanging_on(one));
            }
            Check::Look { item, what } if one.chance != Chance::NotTried => {
                let port = what.rsplit_once("/hole-").map_or(what.as_str(), |(port, _)| port);
                tasks.push(Task::on(ctx, Kind::Presence, *item, port, what).hanging_on(one));
                let of = ctx.catalogue().body(*item).ports.iter().find(|known| known.name == port);
                // Where only some serial numbers have it, the number tells as well.
                if of.is_some_and(|of| of.serials != Serials::default()) && !build.side.serials.contains_key(item) {
                    tasks.push(Task::on(ctx, Kind::Serial, *item, "", "").hanging_on(one));
                }
            }
            Check::FindOut { item, what: Unstated::Serials } => {
                tasks.push(Task::on(ctx, Kind::Serial, *item, "", "").hanging_on(one));
            }
            other => besides.push(say::check(ctx, other).said),
        }
    }
    (tasks, besides)
}

/// Whether the catalogue states what is asked for.
fn is_stated(ctx: Ctx, asked: &Asked) -> bool {
    let ports = &ctx.catalogue().body(asked.item).ports;
    ports.iter().any(|port| port.name == asked.port && port.stated(&asked.dimension).is_some())
}

/// A desk of these tasks, with what was found.
pub fn laid_out(
    ctx: Ctx,
    mut tasks: Vec<Task>,
    besides: Vec<view::Said>,
    taken: Vec<view::Taken>,
    look: &Look,
) -> view::Desk {
    let is_taken = |task: &Task| taken.iter().any(|taken| taken.kind == task.kind && taken.at == task.at);
    let mut seen = BTreeSet::new();
    // What was measured and is asked for again has to be measured more finely.
    tasks.retain(|task| seen.insert(task.key()) && (task.within.is_some() || !is_taken(task)));
    let at = look.tasks.iter().find_map(|&key| tasks.iter().position(|task| task.key() == key)).unwrap_or_default();
    let now = tasks.get(at).map(|task| Box::new(now(ctx, task, look)));
    let (done, of) = (taken.len() + at + 1, taken.len() + tasks.len());
    view::Desk {
        progress: match now {
            Some(_) => ctx.text_with("desk-progress", &[("at", done.into()), ("of", of.into())]),
            None => ctx.text(if besides.is_empty() { "desk-nothing-open" } else { "desk-nothing-to-enter" }),
        },
        tasks: tasks
            .iter()
            .map(|task| view::Task { key: task.key(), name: name(ctx, task), of: task.of.clone() })
            .collect(),
        now,
        taken,
        besides,
        decimal_mark: decimal_mark(ctx),
        tools: tools(ctx),
    }
}

/// The mark before decimals.
fn decimal_mark(ctx: Ctx) -> String {
    ctx.words.reader().number(0.5, 1).chars().filter(|letter| !letter.is_ascii_digit()).collect()
}

/// The tools and how they are called.
fn tools(ctx: Ctx) -> Vec<(view::Tool, String)> {
    vec![(view::Tool::Caliper, ctx.words.tool(Tool::Caliper)), (view::Tool::Tape, ctx.words.tool(Tool::Tape))]
}

fn name(ctx: Ctx, task: &Task) -> String {
    match task.kind {
        Kind::Length => ctx.words.value_name(&task.at.what),
        Kind::Numbers => ctx.text("desk-numbers"),
        Kind::Serial => ctx.text("desk-serial"),
        Kind::Count => ctx.text("desk-count"),
        Kind::Presence => ctx.words.looked_for(&task.at.what),
    }
}

fn now(ctx: Ctx, task: &Task, look: &Look) -> view::Now {
    let mut says = Vec::new();
    let is_taped = task.within.is_some_and(|within| within >= TAPE);
    match task.kind {
        Kind::Length => says.extend(task.within.map(|within| {
            let within = ctx.words.reader().length(within, LengthStyle::Fine);
            ctx.text_with(
                if is_taped { "desk-within-tape" } else { "desk-within-caliper" },
                &[("within", within.into())],
            )
        })),
        Kind::Numbers if task.any_of.is_empty() => says.push(ctx.text("desk-numbers-read")),
        Kind::Numbers => {
            says.push(ctx.text_with("desk-numbers-settle", &[("numbers", task.any_of.join(", ").into())]));
        }
        Kind::Presence => says.push(ctx.text("desk-presence-look")),
        Kind::Serial => says.push(ctx.text("desk-serial-read")),
        Kind::Count => {}
    }
    says.extend(task.stakes.map(|stakes| at_stake(ctx, stakes)));
    let picture = look.bench.zip(task.drawn.as_ref()).map(|(room, (item, port))| {
        let lettering = Lettering(ctx.words);
        let scene = gauge(ctx.catalogue(), *item, port, &task.at.what, &sheet_of(room, &lettering));
        titled(&scene, &format!("{}: {}", task.of, name(ctx, task)))
    });
    view::Now {
        key: task.key(),
        at: task.at.clone(),
        kind: task.kind,
        name: name(ctx, task),
        of: task.of.clone(),
        says,
        picture: picture.unwrap_or_default(),
        tool: if is_taped { view::Tool::Tape } else { view::Tool::Caliper },
        photo: photographed(ctx, task, look),
    }
}

/// What a photograph comes to, of the port of which a length is asked for.
fn photographed(ctx: Ctx, task: &Task, look: &Look) -> Option<view::PhotoShown> {
    let (item, name) = task.drawn.as_ref().filter(|_| task.kind == Kind::Length && !task.at.item.is_empty())?;
    let port = ctx.catalogue().body(*item).ports.iter().find(|port| port.name == *name)?;
    let marked = look.photo.as_ref().filter(|photo| photo.at.item == task.at.item && photo.at.port == task.at.port);
    photo(ctx, *item, port, marked)
}

/// What the answer is now, and what it may come to.
fn at_stake(ctx: Ctx, stakes: Stakes) -> String {
    let word = |verdict| ctx.words.answer(stakes.question, Some(verdict)).into();
    let question = ctx.words.question(stakes.question).into();
    let args =
        [("question", question), ("now", word(stakes.now)), ("best", word(stakes.best)), ("worst", word(stakes.worst))];
    ctx.text_with(if stakes.best == stakes.worst { "desk-comes-to" } else { "desk-comes-between" }, &args)
}
