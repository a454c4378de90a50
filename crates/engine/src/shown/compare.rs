//! Builds side by side.

use fitup_core::build::{Build, Step};
use fitup_core::finding::{Question, Value};
use fitup_core::fit::Answer;
use fitup_core::search::{self, Headline, Sameness};
use fitup_drawing::{Subject, over};
use fitup_view::{self as view, CompareRow, Compared, Look, Verdict};

use super::ctx::{Ctx, verdict};
use super::picture::{Lettering, sheet_of, titled};
use super::say;
use crate::change::Pick;
use crate::link;

/// The view: the build at hand beside those that are pinned.
pub fn compare(ctx: Ctx, build: &Build, look: &Look) -> view::Compare {
    let pinned = look.pinned.iter().map(|link| link::opened(ctx.catalogue(), link).build);
    let builds: Vec<Build> = std::iter::once(build.clone()).chain(pinned).collect();
    let found = search::compare(ctx.desk, &builds);
    let names = ["compare-now", "A", "B", "C"];
    let name = |at: usize| if at == 0 { ctx.text(names[0]) } else { names[at.min(3)].to_owned() };
    let columns = builds.iter().zip(&found.answers).enumerate().map(|(at, (build, answer))| {
        let decided = answer.complete.then(|| Headline::decided(build.clone(), Answer::clone(answer)));
        Compared {
            name: name(at),
            build: link::text_of(ctx.catalogue(), build),
            headline: ctx.headline(decided.as_ref()),
        }
    });
    let columns: Vec<Compared> = columns.collect();
    let mut rows: Vec<CompareRow> = Step::ALL.into_iter().map(|step| chosen(ctx, &builds, step)).collect();
    rows.extend(Question::ALL.into_iter().map(|question| answered(ctx, &found.answers, question)));
    rows.extend(found.rows.iter().map(|row| CompareRow {
        name: ctx.text(&format!("footprint-{}", row.name)),
        values: row.values.iter().map(|value| (None, shown(ctx, value.as_ref()))).collect(),
        differs: row.sameness == Sameness::Differs,
    }));
    let lettering = Lettering(ctx.words);
    let subjects: Vec<Subject> = builds
        .iter()
        .zip(&found.answers)
        .map(|(build, answer)| Subject::new(ctx.desk.standing(&build.side).catalogue(), build, &answer.stack))
        .collect();
    let called: Vec<String> = columns.iter().map(|column| column.name.clone()).collect();
    let picture = look.room.map(|room| {
        let title = format!("{}: {}", ctx.text("ui-view-compare"), called.join(", "));
        titled(&over(&subjects, &called, &sheet_of(room, &lettering)), &title)
    });
    let says = match columns.len() {
        1 => Some(ctx.text("compare-says")),
        _ if rows.iter().all(|row| !row.differs) => Some(ctx.text("compare-all-same")),
        _ => None,
    };
    view::Compare { builds: columns, rows, picture: picture.unwrap_or_default(), says }
}

fn row(name: String, values: Vec<(Option<Verdict>, String)>) -> CompareRow {
    let differs = values.windows(2).any(|pair| pair[0] != pair[1]);
    CompareRow { name, values, differs }
}

fn chosen(ctx: Ctx, builds: &[Build], step: Step) -> CompareRow {
    let label = |build: &Build| Pick::of(build, step).map_or_else(|| "–".to_owned(), |pick| ctx.pick_label(pick));
    row(ctx.text(&format!("ui-step-{}", step.name())), builds.iter().map(|build| (None, label(build))).collect())
}

fn answered(ctx: Ctx, answers: &[Answer], question: Question) -> CompareRow {
    let told = |answer: &Answer| (answer.to(question).verdict().map(verdict), ctx.words.answer_of(answer, question));
    row(ctx.words.question(question), answers.iter().map(told).collect())
}

fn shown(ctx: Ctx, value: Option<&Value>) -> String {
    match value {
        Some(Value::Money(money)) => ctx.money(*money),
        Some(value) => say::value(ctx, value),
        None => "–".to_owned(),
    }
}
