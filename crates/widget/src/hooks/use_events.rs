//! Tells the page what changes, after it is painted.

use fitup_catalogue::{BuildFile, link};
use fitup_core::build::Build;
use fitup_core::fit::Answer;
use fitup_words::Report;
use gloo::timers::callback::Timeout;
use serde::Serialize;
use web_sys::HtmlElement;
use yew::prelude::*;

use crate::api::ProblemReport;
use crate::ctx::Ctx;
use crate::event;
use crate::same::Same;
use crate::state::Trouble;

/// Detail of `fitup-change`.
#[derive(Serialize)]
struct Change {
    /// The build, as a build file holds it.
    build: BuildFile,
    /// The text that a link carries it in.
    link: String,
    /// What it comes to.
    report: Report,
}

/// Detail of `fitup-error`.
#[derive(Serialize)]
#[serde(tag = "kind", rename_all = "kebab-case")]
enum Failure<'a> {
    NoAddress,
    Unreachable { address: &'a str, reason: &'a str },
    Broken { address: &'a str, problems: Vec<ProblemReport> },
    NewerFormat { address: &'a str, problems: Vec<ProblemReport> },
}

/// Sends `fitup-change` when build, catalogue or words change, `fitup-error` on trouble.
#[hook]
pub fn use_events(
    host: &HtmlElement,
    ctx: &Ctx,
    build: &Same<Build>,
    answer: &Same<Answer>,
    trouble: Option<&Trouble>,
) {
    {
        let host = host.clone();
        let known = !ctx.catalogue().machines.is_empty() || !ctx.catalogue().implements.is_empty();
        let deps = (ctx.clone(), build.clone(), answer.clone());
        use_effect_with(deps, move |(ctx, build, answer)| {
            let (ctx, build, answer) = (ctx.clone(), build.clone(), answer.clone());
            let later = known.then(|| {
                Timeout::new(0, move || {
                    let file = BuildFile::of(ctx.catalogue(), &build);
                    let report = ctx.words.report(ctx.catalogue(), &build, &answer);
                    event::tell(&host, event::CHANGE, &Change { link: link::write(&file), build: file, report });
                })
            });
            move || drop(later)
        });
    }
    let host = host.clone();
    use_effect_with(trouble.cloned(), move |trouble| {
        if let Some(trouble) = trouble {
            tell_trouble(&host, trouble);
        }
    });
}

/// Sends `fitup-error`.
pub fn tell_trouble(host: &HtmlElement, trouble: &Trouble) {
    event::tell(host, event::ERROR, &failure(trouble));
}

fn failure(trouble: &Trouble) -> Failure<'_> {
    let all = |problems: &[fitup_catalogue::Problem]| problems.iter().map(ProblemReport::of).collect();
    match trouble {
        Trouble::NoAddress => Failure::NoAddress,
        Trouble::Unreachable { address, reason } => Failure::Unreachable { address, reason },
        Trouble::Broken { address, problems } => Failure::Broken { address, problems: all(problems) },
        Trouble::Newer { address, problem } => {
            Failure::NewerFormat { address, problems: all(std::slice::from_ref(problem)) }
        }
    }
}
