//! An answer as text on a terminal.

use fitup_core::build::Build;
use fitup_core::finding::Question;
use fitup_core::fit::{Answer, ComeBy, Desk, EndAngle, Footprint, PartsLine, judge};
use fitup_core::item::Catalogue;
use fitup_core::quantity::{Length, Mass};
use fitup_core::search::{Headline, Remedy, checks, remedies};
use fitup_words::{Audience, LengthStyle, LineRole, Words};

/// The verdict, a sentence for each thing that decides, what would settle it first and what would help best.
pub fn short(words: &Words, desk: &Desk, build: &Build, answer: &Answer, headline: Option<&Headline>) -> String {
    let catalogue = desk.catalogue();
    let mut out = heading(words, catalogue, build, answer, headline);
    answers(&mut out, words, catalogue, answer);
    let explanation = words.explain(catalogue, answer, Audience::Shopper);
    for paragraph in &explanation.paragraphs {
        for line in &paragraph.lines {
            row(&mut out, "  ", &words.labelled(&words.finding_word(paragraph.verdict), &line.text()));
        }
    }
    if explanation.rest > 0 {
        row(&mut out, "  ", &words.ui("explain-rest", &[("count", explanation.rest.into())]));
    }
    if explanation.paragraphs.is_empty() {
        row(&mut out, "  ", &words.ui("explain-nothing", &[]));
    }
    if let Some(check) = checks(desk, build, answer).first() {
        row(&mut out, "  ", &words.labelled(&words.ui("ui-checks", &[]), &words.ranked_check(catalogue, check).0));
    }
    if let Some(remedy) = remedies(desk, build).found.first() {
        let mut sentences = vec![words.clauses(&words.remedy_steps(catalogue, remedy))];
        sentences.extend(words.remedy_settles(catalogue, remedy));
        sentences.push(comes_to(words, desk, answer, remedy).join(", "));
        sentences.extend(words.remedy_leaves(catalogue, remedy));
        row(&mut out, "  ", &words.labelled(&words.ui("ui-remedies", &[]), &format!("{}.", sentences.join(". "))));
    }
    clean(&out)
}

/// Everything, for the workshop: findings with evidence and checks, what the machine measures,
/// what has to be bought, cautions.
pub fn full(words: &Words, desk: &Desk, build: &Build, answer: &Answer, headline: Option<&Headline>) -> String {
    let catalogue = desk.catalogue();
    let mut out = heading(words, catalogue, build, answer, headline);
    answers(&mut out, words, catalogue, answer);
    let explanation = words.explain(catalogue, answer, Audience::Workshop);
    for paragraph in &explanation.paragraphs {
        out.push('\n');
        for (index, line) in paragraph.lines.iter().enumerate() {
            let start = match (index, line.role) {
                (0, _) => {
                    let word = words.finding_word(paragraph.verdict);
                    row(&mut out, "", &words.labelled(&word, &line.text()));
                    continue;
                }
                (_, LineRole::Step) => "    ",
                _ => "  ",
            };
            row(&mut out, start, &line.text());
        }
    }
    checks_to_do(&mut out, words, desk, build, answer);
    what_helps(&mut out, words, desk, build, answer);
    section(&mut out, &words.ui("ui-footprint", &[]));
    for (name, value) in footprint(words, answer) {
        row(&mut out, "  ", &words.labelled(&name, &value));
    }
    section(&mut out, &words.ui("ui-parts", &[]));
    parts(&mut out, words, catalogue, answer);
    bolts(&mut out, words, catalogue, answer);
    strip(&mut out, words, catalogue, answer);
    section(&mut out, &words.ui("ui-cautions", &[]));
    for &caution in &explanation.cautions {
        row(&mut out, "  ", &words.labelled(&words.caution_title(caution), &words.caution(caution)));
    }
    if !catalogue.name.notice.is_empty() {
        out.push('\n');
        row(&mut out, "", &catalogue.name.notice);
    }
    clean(&out)
}

/// What would settle what is open, most telling first.
fn checks_to_do(out: &mut String, words: &Words, desk: &Desk, build: &Build, answer: &Answer) {
    let (ranked, catalogue) = (checks(desk, build, answer), desk.catalogue());
    if ranked.is_empty() {
        return;
    }
    section(out, &words.ui("ui-checks", &[]));
    for check in &ranked {
        let (sentence, stakes) = words.ranked_check(catalogue, check);
        row(out, "  ? ", &sentence);
        if let Some(stakes) = stakes {
            row(out, "    ", &stakes);
        }
    }
}

/// How many remedies are printed; all are in the search's answer, best first.
const REMEDIES: usize = 3;

/// Changes to the build that give a better verdict, with what each does to money, time, length and
/// departure angle.
fn what_helps(out: &mut String, words: &Words, desk: &Desk, build: &Build, answer: &Answer) {
    let (told, catalogue) = (remedies(desk, build), desk.catalogue());
    let found = &told.found;
    let Some(first) = found.first() else {
        if let Some(none) = told.none.and_then(|none| words.no_remedy(none)) {
            section(out, &words.ui("ui-remedies", &[]));
            row(out, "  ", &none);
        }
        return;
    };
    section(out, &words.ui("ui-remedies", &[]));
    for remedy in found.iter().take(REMEDIES) {
        row(out, "  + ", &words.clauses(&words.remedy_steps(catalogue, remedy)));
        if let Some(settled) = words.remedy_settles(catalogue, remedy) {
            row(out, "    ", &settled);
        }
        row(out, "    ", &words.clauses(&comes_to(words, desk, answer, remedy)));
        if let Some(left) = words.remedy_leaves(catalogue, remedy) {
            row(out, "    ", &left);
        }
    }
    if found.len() > REMEDIES {
        row(out, "  ", &words.ui("ui-remedies-more", &[("count", (found.len() - REMEDIES).into())]));
    }
    with_first(out, words, catalogue, answer, &judge(desk, &first.build));
}

/// The answers a remedy leads to, what changes, and what of money and size does not.
fn comes_to(words: &Words, desk: &Desk, before: &Answer, remedy: &Remedy) -> Vec<String> {
    let mut said = vec![words.remedy_then(before, &judge(desk, &remedy.build))];
    said.extend(words.remedy_effect(desk.catalogue(), remedy));
    said.extend(words.remedy_same(remedy));
    said
}

/// What the best remedy makes of the machine: before and after, and the items it brings or spares.
fn with_first(out: &mut String, words: &Words, catalogue: &Catalogue, before: &Answer, after: &Answer) {
    let reader = words.reader();
    let length = |answer: &Answer| answer.footprint.length.map(|length| reader.length(length, LengthStyle::Drawn));
    let departure = |answer: &Answer| answer.footprint.departure.map(|end| reader.angle(end.angle));
    let total = |answer: &Answer| Some(total(words, catalogue, answer));
    section(out, &words.ui("remedy-with-first", &[]));
    let unknown = || words.ui("ui-not-known", &[]);
    for (key, [before, after], unknown) in [
        ("footprint-length", [length(before), length(after)], unknown()),
        ("footprint-departure", [departure(before), departure(after)], unknown()),
        ("footprint-to-buy", [total(before), total(after)], String::new()),
        ("footprint-work", [before, after].map(|answer| Some(words.strip_total(&answer.strip))), String::new()),
    ] {
        let [before, after] = [before, after].map(|value| value.unwrap_or_else(|| unknown.clone()));
        let told = if before == after {
            words.ui("remedy-as-before", &[("value", after.into())])
        } else {
            format!("{before} → {after}")
        };
        row(out, "  ", &words.labelled(&words.ui(key, &[]), &told));
    }
    let has = |answer: &Answer, line: &PartsLine| answer.parts.lines.iter().any(|other| other.item == line.item);
    for (sign, lines, others) in [("−", before, after), ("+", after, before)] {
        for line in lines.parts.lines.iter().filter(|line| !has(others, line)) {
            parts_line(out, &format!("  {sign} "), words, catalogue, line);
        }
    }
}

fn heading(
    words: &Words,
    catalogue: &Catalogue,
    build: &Build,
    answer: &Answer,
    headline: Option<&Headline>,
) -> String {
    let told = words.headline(catalogue, headline);
    let standing = match answer.standing {
        Some(standing) => words.standing(standing),
        None => words.ui("ui-incomplete", &[]),
    };
    let mut out = format!("{} · {standing}\n{}\n", told.word, words.items_of(catalogue, build));
    // Of a complete build the answers say it.
    if !answer.complete {
        row(&mut out, "  ", &told.reason);
    }
    out
}

/// A line for each question that is asked.
fn answers(out: &mut String, words: &Words, catalogue: &Catalogue, answer: &Answer) {
    for told in &answer.answers {
        if !told.is_decided && matches!(told.question, Question::Travel | Question::Site) {
            continue;
        }
        let mut said = words.answer_of(answer, told.question);
        if let Some(line) = words.question_line(catalogue, answer, told.question) {
            said = format!("{said} · {line}");
        }
        row(out, "  ", &words.labelled(&words.question(told.question), &said));
    }
}

fn section(out: &mut String, title: &str) {
    out.push('\n');
    row(out, "", title);
}

fn row(out: &mut String, start: &str, text: &str) {
    out.push_str(start);
    out.push_str(text);
    out.push('\n');
}

/// Figures with their change against the bare machine where there is one.
fn footprint(words: &Words, answer: &Answer) -> Vec<(String, String)> {
    let reader = words.reader();
    let (now, bare) = (&answer.footprint, &answer.bare);
    let unknown = || words.ui("ui-not-known", &[]);
    let against = |change: String| words.ui("ui-against-bare", &[("change", change.into())]);
    let length = |of: fn(&Footprint) -> Option<Length>| match (of(now), of(bare)) {
        (Some(value), Some(before)) if value != before => format!(
            "{} ({})",
            reader.length(value, LengthStyle::Drawn),
            against(reader.length(value - before, LengthStyle::Change))
        ),
        (Some(value), _) => reader.length(value, LengthStyle::Drawn),
        (None, _) => unknown(),
    };
    let angle = |of: fn(&Footprint) -> Option<EndAngle>| {
        let deg = |end: Option<EndAngle>| end.map(|end| end.angle);
        match (deg(of(now)), deg(of(bare))) {
            (Some(value), Some(before)) if value != before => {
                format!("{} ({})", reader.angle(value), against(reader.angle_more(value - before)))
            }
            (Some(value), _) => reader.angle(value),
            (None, _) => unknown(),
        }
    };
    let mass = |of: fn(&Footprint) -> Option<Mass>| match (of(now), of(bare)) {
        (Some(value), Some(before)) if value != before => {
            format!("{} ({})", reader.mass(value), against(reader.mass_more(value - before)))
        }
        (Some(value), _) => reader.mass(value),
        (None, _) => unknown(),
    };
    [
        ("footprint-length", length(|f| f.length)),
        ("footprint-width", length(|f| f.width)),
        ("footprint-height", length(|f| f.height)),
        ("footprint-wheelbase", length(|f| f.wheelbase)),
        ("footprint-rear-overhang", length(|f| f.rear_overhang)),
        ("footprint-ground-clearance", length(|f| f.ground_clearance)),
        ("footprint-departure", angle(|f| f.departure)),
        ("footprint-approach", angle(|f| f.approach)),
        ("footprint-breakover", angle(|f| f.breakover)),
        ("footprint-mass", mass(|f| f.mass)),
        ("footprint-front-load", mass(|f| f.front_load)),
        ("footprint-rear-load", mass(|f| f.rear_load)),
    ]
    .into_iter()
    .map(|(key, value)| (words.ui(key, &[]), value))
    .collect()
}

fn parts(out: &mut String, words: &Words, catalogue: &Catalogue, answer: &Answer) {
    for line in &answer.parts.lines {
        parts_line(out, "  ", words, catalogue, line);
    }
    for fitting in &answer.parts.fittings {
        row(out, "  ", &words.labelled(&format!("1 × {fitting}"), &words.ui("come-by-elsewhere", &[])));
    }
    row(out, "  ", &words.labelled(&words.ui("ui-total", &[]), &total(words, catalogue, answer)));
}

/// What is to buy comes to, or the least of it where prices are missing.
fn total(words: &Words, catalogue: &Catalogue, answer: &Answer) -> String {
    let money = |amount| words.reader().money(amount, &catalogue.name.currency);
    match (answer.parts.total, answer.parts.known()) {
        (Some(total), (_, 0)) => money(total),
        (_, (known, open)) => words.ui("total-at-least", &[("known", money(known).into()), ("open", open.into())]),
    }
}

/// The bolts of each joint, and the holes to make for them.
fn bolts(out: &mut String, words: &Words, catalogue: &Catalogue, answer: &Answer) {
    if answer.bolts.is_empty() {
        return;
    }
    section(out, &words.ui("bolts-title", &[]));
    for bolts in &answer.bolts {
        for (at, line) in words.bolt_lines(catalogue, bolts).iter().enumerate() {
            row(out, if at == 0 { "  " } else { "    " }, line);
        }
    }
}

/// What comes off, moves and goes on, in the order it is done.
fn strip(out: &mut String, words: &Words, catalogue: &Catalogue, answer: &Answer) {
    if answer.strip.steps.is_empty() {
        return;
    }
    section(out, &words.ui("strip-title", &[]));
    for step in &answer.strip.steps {
        let hours = words.strip_hours(step).map_or_else(String::new, |hours| format!(" ({hours})"));
        row(out, "  ", &format!("{}{hours}", words.strip_step(catalogue, step)));
    }
    row(out, &format!("  {}: ", words.ui("ui-work-time", &[])), &words.strip_total(&answer.strip));
}

fn parts_line(out: &mut String, start: &str, words: &Words, catalogue: &Catalogue, line: &PartsLine) {
    let come_by = match line.come_by {
        ComeBy::OnHand => words.ui("come-by-on-hand", &[]),
        ComeBy::ComesWith(item) => {
            words.ui("come-by-comes-with", &[("item", catalogue.body(item).label.as_str().into())])
        }
        ComeBy::Buy => match line.price {
            Some(price) => words.reader().money(price.times(line.quantity), &catalogue.name.currency),
            None => words.ui("ui-price-on-request", &[]),
        },
    };
    let item = format!("{} × {}", line.quantity, catalogue.body(line.item).label);
    row(out, start, &words.labelled(&item, &come_by));
}

/// What a catalogue holds must not steer the terminal.
fn clean(text: &str) -> String {
    text.chars().filter(|&c| c == '\n' || !c.is_control()).collect()
}
