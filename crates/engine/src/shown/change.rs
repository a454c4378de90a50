//! What the page is told of a build.

use fitup_catalogue::{BuildFile, json};
use fitup_core::build::Build;
use fitup_core::fit::Answer;
use fitup_core::search::Headline;
use fitup_words::Report;
use serde::Serialize;

use super::ctx::Ctx;

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

/// The build, its link and its report as JSON text.
pub fn change(ctx: Ctx, build: &Build, answer: &Answer, headline: Option<&Headline>) -> String {
    let file = BuildFile::of(ctx.catalogue(), build);
    let report = ctx.words.report(ctx.catalogue(), build, answer, headline);
    json(&Change { link: fitup_catalogue::link::write(&file), build: file, report })
}
