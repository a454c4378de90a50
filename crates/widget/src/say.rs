//! Findings, checks and remedies in the reader's words.

use fitup_catalogue::Problem;
use fitup_core::build::Measurement;
use fitup_core::finding::{Check, Finding, Subject, Value};
use fitup_core::search::Remedy;
use fitup_words::LengthStyle;

use crate::ctx::Ctx;

/// A finding in a few words, for cards and the title block.
pub fn short(_ctx: &Ctx, finding: &Finding) -> String {
    finding.code.replace('-', " ")
}

/// A finding in a sentence for a shopper.
pub fn sentence(_ctx: &Ctx, finding: &Finding) -> String {
    finding.code.replace('-', " ")
}

/// A finding in a sentence for a workshop, with its figures.
pub fn workshop(_ctx: &Ctx, finding: &Finding) -> String {
    finding.code.replace('-', " ")
}

/// What a finding is about, as a heading.
pub fn subject(ctx: &Ctx, subject: Subject) -> String {
    match subject {
        Subject::Joint(role, ..) => ctx.words.role(role),
        Subject::Item(item) | Subject::Clearance(item, _) => ctx.label(item).to_owned(),
        Subject::Hydraulics => ctx.text("area-hydraulics"),
        Subject::Drive => ctx.text("area-drive"),
        Subject::Loads => ctx.text("area-loads"),
        Subject::Operator => ctx.text("area-operator"),
        Subject::Wiring => ctx.text("area-wiring"),
        Subject::Loading => ctx.text("area-loading"),
        Subject::Site => ctx.text("area-site"),
        Subject::Digging => ctx.text("area-digging"),
        Subject::Build => ctx.text("area-build"),
    }
}

/// A check in a sentence.
pub fn check(_ctx: &Ctx, check: &Check) -> String {
    format!("{check:?}")
}

/// A remedy's steps in a sentence each.
pub fn remedy_steps(_ctx: &Ctx, remedy: &Remedy) -> Vec<String> {
    remedy.steps.iter().map(|step| format!("{step:?}")).collect()
}

/// A value of the footprint or of a finding.
pub fn value(ctx: &Ctx, value: &Value) -> String {
    let reader = ctx.words.reader();
    match value {
        Value::Length(length) => reader.length(*length, LengthStyle::Drawn),
        Value::Mass(mass) => reader.mass(*mass),
        Value::Angle(angle) => reader.angle(*angle),
        Value::Pressure(pressure) => reader.pressure(*pressure),
        Value::Flow(flow) => reader.flow(*flow),
        Value::Power(power) => reader.power(*power),
        Value::Force(force) => reader.force(*force),
        Value::Money(money) => ctx.money(*money),
        Value::Work(work) => reader.work(*work),
        Value::Share(share) => reader.share(*share),
        Value::Count(count) => reader.count(*count),
        Value::Item(item) => ctx.label(*item).to_owned(),
        Value::Label(label) => label.clone(),
    }
}

/// A change of a value, with its sign.
pub fn change(ctx: &Ctx, change: &Value) -> String {
    let reader = ctx.words.reader();
    match change {
        Value::Length(length) => reader.length(*length, LengthStyle::Change),
        Value::Mass(mass) => reader.mass_more(*mass),
        Value::Angle(angle) => reader.angle_more(*angle),
        Value::Money(money) => reader.money_more(*money, &ctx.catalogue().name.currency),
        Value::Work(work) => reader.work_more(*work),
        other => value(ctx, other),
    }
}

/// What a finding rests on, a line each.
pub fn evidence(_ctx: &Ctx, finding: &Finding) -> Vec<String> {
    finding.evidence.chains.iter().map(|chain| format!("{chain:?}")).collect()
}

/// What a remedy does, in a line.
pub fn remedy_effect(_ctx: &Ctx, _remedy: &Remedy) -> String {
    String::new()
}

/// A measurement in a line.
pub fn measured(ctx: &Ctx, measured: &Measurement) -> String {
    let reader = ctx.words.reader();
    format!(
        "{}: {} {} ({})",
        ctx.label(measured.item),
        dimension(ctx, &measured.dimension),
        reader.length(measured.value, LengthStyle::Part),
        ctx.words.tool(measured.tool)
    )
}

/// The name of a dimension.
pub fn dimension(ctx: &Ctx, dimension: &str) -> String {
    let key = format!("value-{dimension}");
    if ctx.words.has(&key) { ctx.text(&key) } else { dimension.replace('-', " ") }
}

/// Where a problem is.
pub fn place(_ctx: &Ctx, problem: &Problem) -> String {
    problem.path.clone()
}

/// What a problem is.
pub fn problem(_ctx: &Ctx, problem: &Problem) -> String {
    problem.code.as_str().replace('-', " ")
}
