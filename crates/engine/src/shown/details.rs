//! What the answer says, subject by subject; of the opened one, all of it.

use fitup_core::build::Build;
use fitup_core::finding::{Grade, Subject};
use fitup_core::fit::{Answer, Joint};
use fitup_core::item::ItemRef;
use fitup_core::search::RankedCheck;
use fitup_drawing::holes;
use fitup_view as view;
use fitup_view::{Look, View};

use super::ctx::{Ctx, verdict};
use super::desk::desk_of_joint;
use super::picture::{Lettering, sheet_of, titled};
use super::rows::{Row, key_of, rows};
use super::say;

/// Every subject, worst first.
pub fn details(ctx: Ctx, build: &Build, answer: &Answer, look: &Look, ranked: &[RankedCheck]) -> Vec<view::Row> {
    rows(answer).iter().filter_map(|row| shown(ctx, build, answer, look, row, ranked)).collect()
}

fn shown(
    ctx: Ctx,
    build: &Build,
    answer: &Answer,
    look: &Look,
    row: &Row,
    ranked: &[RankedCheck],
) -> Option<view::Row> {
    let worst = answer.findings.get(*row.findings.first()?)?;
    let key = key_of(row.subject);
    let is_open = look.opened == Some(key);
    let between = match row.subject {
        Subject::Joint(_, a, b) | Subject::Clearance(a, b) => Some(format!("{} ↔ {}", ctx.label(a), ctx.label(b))),
        _ => None,
    };
    let grade = worst.evidence.grade;
    let finding = |&index: &usize| {
        let finding = answer.findings.get(index)?;
        let settle = ranked.iter().filter(|ranked| ranked.findings.contains(&index));
        let settle = settle.map(|ranked| say::check(ctx, &ranked.check));
        Some(view::Finding {
            question: ctx.words.question(finding.question),
            verdict: verdict(finding.verdict),
            word: ctx.words.finding_word(finding.verdict),
            lines: say::workshop(ctx, finding).into_iter().chain(settle).collect(),
        })
    };
    let opened = |joint: usize| Some(Box::new(opened(ctx, build, answer.joints.get(joint)?, look, ranked)));
    Some(view::Row {
        key,
        verdict: verdict(row.verdict),
        word: ctx.words.finding_word(row.verdict),
        name: say::subject(ctx, worst),
        question: ctx.words.question(worst.question),
        between,
        line: say::sentence(ctx, worst),
        evidence: (grade_shown(grade), ctx.words.grade(grade), ctx.words.grade_meaning(grade)),
        findings: if is_open { row.findings.iter().filter_map(finding).collect() } else { Vec::new() },
        joint: row.joint.filter(|_| is_open).and_then(opened),
    })
}

const fn grade_shown(grade: Grade) -> view::Grade {
    match grade {
        Grade::Listed => view::Grade::Listed,
        Grade::SamePart => view::Grade::SamePart,
        Grade::ReplacedPart => view::Grade::ReplacedPart,
        Grade::Measured => view::Grade::Measured,
        Grade::Drawing => view::Grade::Drawing,
        Grade::None => view::Grade::None,
    }
}

/// A joint opened: part numbers on both sides, hole patterns, measurements.
fn opened(ctx: Ctx, build: &Build, joint: &Joint, look: &Look, ranked: &[RankedCheck]) -> view::Joint {
    let side = |(item, port): &(ItemRef, String), parts: &[String]| view::Side {
        kind: ctx.words.kind(*item),
        label: ctx.label(*item).to_owned(),
        parts: parts.to_vec(),
        port: port.clone(),
    };
    let lettering = Lettering(ctx.words);
    let overlay = joint.overlay.as_ref().map(|overlay| match look.overlay {
        Some(room) => titled(&holes(overlay, &sheet_of(room, &lettering)), &ctx.text("ui-hole-patterns")),
        None => view::Picture::default(),
    });
    view::Joint {
        sides: [side(&joint.carrier, &joint.carrier_parts), side(&joint.carried, &joint.carried_parts)],
        overlay,
        desk: (!matches!(look.view, View::Measure | View::Identify))
            .then(|| desk_of_joint(ctx, build, joint, ranked, look)),
    }
}
