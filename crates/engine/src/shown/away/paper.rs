//! The fit sheet, section by section.

use fitup_core::build::{Build, Measurement, Presence};
use fitup_core::finding::Question;
use fitup_core::fit::{Answer, ComeBy, Joint, PartsLine, footprint_figures};
use fitup_core::item::{ItemRef, Role};
use fitup_core::search::RankedCheck;
use fitup_drawing::{Sheet, Shown, Subject, element, plan, rear, side};
use fitup_view::{Answered, Block, LineRole, Paper, Section};
use fitup_words::LengthStyle;

use super::super::ctx::Ctx;
use super::super::parts::total;
use super::super::picture::Lettering;
use super::super::{say, title};
use super::{Taken, holes};

/// Width and greatest height of the drawings on paper, millimetres: what A4 and Letter have room for alike.
const SIDE: (f64, f64) = (184.0, 78.0);
const PLAN: (f64, f64) = (112.0, 58.0);
const REAR: (f64, f64) = (66.0, 58.0);

/// The fit sheet.
pub fn paper(ctx: Ctx, taken: Taken) -> Paper {
    let Taken { build, answer, headline, ranked, here } = taken;
    let name = &ctx.catalogue().name;
    let catalogue = [name.name.as_str(), &name.edition].join(" · ");
    let standing = answer.standing.map_or_else(|| ctx.text("ui-incomplete"), |standing| ctx.words.standing(standing));
    let sections = [
        drawings(ctx, build, answer),
        figures(ctx, answer),
        joints(ctx, answer),
        observed(ctx, build),
        strip(ctx, answer),
        parts(ctx, answer),
        open(ctx, ranked),
        cautions(ctx, answer),
        signed(ctx),
        // It is cut up, so it stands on sheets of its own.
        holes::holes(ctx, build, answer),
    ];
    Paper {
        heading: ctx.text("ui-fit-sheet"),
        title: super::chosen(ctx, build).join(" + "),
        headline: Some(ctx.headline(headline)),
        facts: [
            ("ui-job-name", here.name.clone()),
            ("ui-job-place", here.place.clone()),
            ("ui-date", here.today.clone()),
            ("ui-standing", standing),
            ("ui-catalogue", catalogue),
            ("ui-job-notes", here.notes.clone()),
        ]
        .into_iter()
        .filter(|(_, value)| !value.is_empty())
        .map(|(key, value)| (ctx.text(key), value))
        .collect(),
        answers: Question::ALL.map(|question| answered(ctx, answer, question)).to_vec(),
        sections: sections.into_iter().flatten().collect(),
    }
}

/// All four questions, also those that are not decided: an empty line would look like a yes.
fn answered(ctx: Ctx, answer: &Answer, question: Question) -> Answered {
    let told = answer.to(question);
    let open = || {
        ctx.text(match question {
            Question::Fit | Question::Work => "ui-incomplete",
            Question::Travel => "ui-no-trailer",
            Question::Site => "ui-no-site",
        })
    };
    Answered {
        question: ctx.words.question(question),
        verdict: told.verdict().map(super::super::ctx::verdict),
        word: ctx.words.answer_of(answer, question),
        line: ctx.words.question_line(ctx.catalogue(), answer, question).or_else(|| Some(open())),
    }
}

fn section(ctx: Ctx, key: &str, blocks: Vec<Block>) -> Option<Section> {
    (!blocks.is_empty()).then(|| Section { heading: ctx.text(key), blocks })
}

fn table(ctx: Ctx, head: &[&str], rows: Vec<Vec<String>>, foot: Vec<Vec<String>>, figures: u32) -> Vec<Block> {
    if rows.is_empty() {
        return Vec::new();
    }
    vec![Block::Table { head: head.iter().map(|key| ctx.text(key)).collect(), rows, foot, figures }]
}

fn drawings(ctx: Ctx, build: &Build, answer: &Answer) -> Option<Section> {
    if answer.stack.placed.is_empty() {
        return section(ctx, "ui-drawing", vec![Block::Said(ctx.text("ui-drawing-missing"))]);
    }
    let lettering = Lettering(ctx.words);
    let subject = Subject::new(ctx.catalogue(), build, &answer.stack);
    let sheet = |(width, height)| Sheet { letters: 2.6, ..Sheet::new(width, height, &lettering) };
    // Joints lie over each other from above and from behind: the side view marks them.
    let bare = |size| Sheet { markers: Shown::No, ..sheet(size) };
    let views = [
        ("ui-side-view", side(&subject, Some(answer), None, &sheet(SIDE))),
        ("ui-plan-view", plan(&subject, Some(answer), None, &bare(PLAN))),
        ("ui-rear-view", rear(&subject, Some(answer), None, &bare(REAR))),
    ];
    let drawn = views.into_iter().filter(|(_, scene)| !scene.nodes.is_empty());
    let drawn = drawn.map(|(key, scene)| (ctx.text(key), element(&scene, &ctx.text(key))));
    section(ctx, "ui-drawing", vec![Block::Pictures(drawn.collect())])
}

fn figures(ctx: Ctx, answer: &Answer) -> Option<Section> {
    let known = footprint_figures(&answer.footprint, &answer.bare);
    let facts = known.iter().filter_map(|figure| {
        let value = say::value(ctx, figure.value.as_ref()?);
        let change = figure.change.as_ref().map(|change| say::change(ctx, change));
        // What is as on the bare machine needs no comparison.
        let is_other = |change: &String| change.starts_with(['+', '−']);
        let change =
            change.filter(is_other).map(|change| ctx.text_with("ui-against-bare", &[("change", change.into())]));
        let value = change.map_or_else(|| value.clone(), |change| format!("{value} ({change})"));
        Some((ctx.text(&format!("footprint-{}", figure.name)), value))
    });
    let facts: Vec<(String, String)> = facts.collect();
    section(ctx, "ui-footprint", if facts.is_empty() { Vec::new() } else { vec![Block::Figures(facts)] })
}

fn joints(ctx: Ctx, answer: &Answer) -> Option<Section> {
    let end = |role, (item, port): &(ItemRef, String), parts: &[String]| {
        let numbers = match (parts, role) {
            // Hoses and wires are not told by the parts that bear them.
            ([], Role::Pressure | Role::Return | Role::CaseDrain | Role::Wiring) => String::new(),
            ([], _) => format!("\n{}", ctx.text("ui-no-part-number")),
            (parts, _) => format!("\n{}", parts.join(", ")),
        };
        format!("{}, {port}{numbers}", ctx.label(*item))
    };
    let row = |joint: &Joint| {
        let findings = joint.findings.iter().filter_map(|&index| answer.findings.get(index));
        let worst = findings.clone().next();
        let mut said: Vec<String> = Vec::new();
        for line in findings.flat_map(|finding| say::workshop(ctx, finding)).filter(|line| line.role == LineRole::Says)
        {
            let line = say::plain(&line.said);
            if !said.contains(&line) {
                said.push(line);
            }
        }
        let grade = worst.map(|finding| ctx.words.grade(finding.evidence.grade)).unwrap_or_default();
        vec![
            ctx.words.role(joint.role),
            end(joint.role, &joint.carrier, &joint.carrier_parts),
            end(joint.role, &joint.carried, &joint.carried_parts),
            format!("{}\n{}", ctx.words.finding_word(joint.verdict), said.join(" ")),
            grade,
        ]
    };
    let head = ["ui-joint", "ui-carries", "ui-carried", "ui-answer", "ui-evidence"];
    section(ctx, "ui-joints", table(ctx, &head, answer.joints.iter().map(row).collect(), Vec::new(), 0))
}

/// What was measured, read, looked for in the yard.
fn observed(ctx: Ctx, build: &Build) -> Option<Section> {
    let reader = ctx.words.reader();
    let length = |length| reader.length(length, LengthStyle::Part);
    let measured = |one: &Measurement| {
        let taken = one.readings.iter().map(|&reading| length(reading)).collect::<Vec<_>>();
        let note = taken.join("; ") + if taken.is_empty() || one.note.is_empty() { "" } else { ". " } + &one.note;
        vec![
            format!("{}, {}", ctx.label(one.item), one.port),
            ctx.words.value_name(&one.dimension),
            format!("{} ± {}", length(one.value), length(one.half_range())),
            ctx.words.tool(one.tool),
            note,
        ]
    };
    let side = &build.side;
    let head = ["ui-item", "ui-dimension", "ui-measured", "ui-measure-tool", "ui-note"];
    let mut blocks = table(ctx, &head, side.measured.iter().map(measured).collect(), Vec::new(), 0);
    let read = side.read.iter().map(|read| {
        let numbers: Vec<String> = read.parts.iter().map(ToString::to_string).collect();
        let by: Vec<&str> = [read.by.as_str(), &read.when].into_iter().filter(|part| !part.is_empty()).collect();
        let by = if by.is_empty() { String::new() } else { format!(" ({})", by.join(", ")) };
        (format!("{}, {}", ctx.label(read.item), read.port), format!("{}{by}", numbers.join(", ")))
    });
    let looked = side.looked.iter().map(|((item, what), there)| {
        let key = if *there == Presence::Yes { "ui-there" } else { "ui-not-there" };
        (format!("{}, {what}", ctx.label(*item)), ctx.text(key))
    });
    let serials = side.serials.iter().map(|(&item, serial)| {
        (ctx.label(item).to_owned(), ctx.words.labelled(&ctx.text("ui-serial"), &serial.to_string()))
    });
    let facts: Vec<(String, String)> = read.chain(looked).chain(serials).collect();
    blocks.extend((!facts.is_empty()).then_some(Block::Facts(facts)));
    section(ctx, "ui-observed", blocks)
}

/// What is done, in its order, with its hours.
fn strip(ctx: Ctx, answer: &Answer) -> Option<Section> {
    let hours = |step| ctx.words.strip_hours(step).unwrap_or_else(|| "–".to_owned());
    let steps = answer.strip.steps.iter();
    let rows = steps.map(|step| vec![ctx.words.strip_step(ctx.catalogue(), step), hours(step)]).collect();
    let foot = vec![vec![ctx.text("ui-work-time"), ctx.words.strip_total(&answer.strip)]];
    section(ctx, "strip-title", table(ctx, &["ui-step", "ui-hours"], rows, foot, 1))
}

fn parts(ctx: Ctx, answer: &Answer) -> Option<Section> {
    let reader = ctx.words.reader();
    let line = |line: &PartsLine| {
        let price = match line.come_by {
            ComeBy::OnHand => ctx.text("come-by-on-hand"),
            ComeBy::ComesWith(other) => ctx.text_with("come-by-comes-with", &[("item", ctx.label(other).into())]),
            ComeBy::Buy => line.price.map_or_else(|| ctx.text("ui-price-on-request"), |price| ctx.money(price)),
        };
        let numbers = super::numbers(answer, line.item).join(", ");
        vec![ctx.label(line.item).to_owned(), numbers, reader.count(line.quantity.into()), price]
    };
    let fittings = answer.parts.fittings.iter().filter(|_| !answer.parts.lines.is_empty());
    let fittings =
        fittings.map(|fitting| vec![fitting.clone(), String::new(), reader.count(1), ctx.text("come-by-elsewhere")]);
    let rows = answer.parts.lines.iter().map(line).chain(fittings).collect();
    let foot = vec![vec![ctx.text("ui-total"), String::new(), String::new(), total(ctx, answer)]];
    let head = ["ui-item", "ui-part-numbers", "ui-quantity", "ui-price"];
    section(ctx, "ui-parts-all", table(ctx, &head, rows, foot, 2))
}

/// What is still to be checked.
fn open(ctx: Ctx, ranked: &[RankedCheck]) -> Option<Section> {
    let ticks: Vec<_> = ranked.iter().map(|check| ctx.words.ranked_check(ctx.catalogue(), check)).collect();
    section(ctx, "ui-checks", if ticks.is_empty() { Vec::new() } else { vec![Block::Ticks(ticks)] })
}

fn cautions(ctx: Ctx, answer: &Answer) -> Option<Section> {
    let all = title::cautions(ctx, answer).into_iter().map(|caution| (caution.title, caution.body));
    let mut blocks = vec![Block::Facts(all.collect())];
    let own = &ctx.catalogue().name.notice;
    blocks.extend((!own.is_empty()).then(|| Block::Said(own.clone())));
    section(ctx, "ui-cautions", blocks)
}

fn signed(ctx: Ctx) -> Option<Section> {
    let lines = ["ui-sign-place", "ui-sign-name", "ui-sign"].map(|key| ctx.text(key)).to_vec();
    section(ctx, "ui-signed", vec![Block::Said(ctx.text("ui-signed.meaning")), Block::Lines(lines)])
}
