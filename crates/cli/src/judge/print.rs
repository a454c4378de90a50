//! An answer as text on a terminal.

use fitup_core::build::{Build, Carrying};
use fitup_core::fit::{Answer, ComeBy, Desk, EndAngle, Footprint, judge};
use fitup_core::item::{Catalogue, Role};
use fitup_core::quantity::{Length, Mass};
use fitup_core::search::{checks, remedies};
use fitup_words::{Audience, LengthStyle, LineRole, Words};

/// The verdict, a sentence for each thing that decides, what would settle it first and what would help best.
pub fn short(words: &Words, desk: &Desk, build: &Build, answer: &Answer) -> String {
    let catalogue = desk.catalogue();
    let mut out = heading(words, catalogue, build, answer);
    let explanation = words.explain(catalogue, answer, Audience::Shopper);
    for paragraph in &explanation.paragraphs {
        for line in &paragraph.lines {
            row(&mut out, &format!("  {}: ", words.verdict(paragraph.verdict)), &line.text());
        }
    }
    if explanation.rest > 0 {
        row(&mut out, "  ", &words.ui("explain-rest", &[("count", explanation.rest.into())]));
    }
    if explanation.paragraphs.is_empty() {
        row(&mut out, "  ", &words.ui("explain-nothing", &[]));
    }
    if let Some(check) = checks(answer).first() {
        row(&mut out, &format!("  {}: ", words.ui("ui-checks", &[])), &words.ranked_check(catalogue, check).0);
    }
    if let Some(remedy) = remedies(desk, build).first() {
        let mut said = vec![words.ui("remedy-leads-to", &[("verdict", words.verdict(remedy.verdict).into())])];
        said.extend(words.remedy_effect(catalogue, remedy));
        let steps = words.remedy_steps(catalogue, remedy).join("; ");
        row(&mut out, &format!("  {}: ", words.ui("ui-remedies", &[])), &format!("{steps}. {}.", said.join(", ")));
    }
    clean(&out)
}

/// Everything, for the workshop: findings with evidence and checks, what the machine measures,
/// what has to be bought, cautions.
pub fn full(words: &Words, desk: &Desk, build: &Build, answer: &Answer) -> String {
    let catalogue = desk.catalogue();
    let mut out = heading(words, catalogue, build, answer);
    let explanation = words.explain(catalogue, answer, Audience::Workshop);
    for paragraph in &explanation.paragraphs {
        out.push('\n');
        for (index, line) in paragraph.lines.iter().enumerate() {
            let start = match (index, line.role) {
                (0, _) => format!("{}: ", words.verdict(paragraph.verdict)),
                (_, LineRole::Step) => "    ".to_owned(),
                (_, LineRole::Check) => "  ? ".to_owned(),
                _ => "  ".to_owned(),
            };
            row(&mut out, &start, &line.text());
        }
    }
    checks_to_do(&mut out, words, catalogue, answer);
    what_helps(&mut out, words, desk, build, answer);
    section(&mut out, &words.ui("ui-footprint", &[]));
    for (name, value) in footprint(words, answer) {
        row(&mut out, &format!("  {name}: "), &value);
    }
    section(&mut out, &words.ui("ui-parts", &[]));
    parts(&mut out, words, catalogue, answer);
    section(&mut out, &words.ui("ui-cautions", &[]));
    for &caution in &explanation.cautions {
        row(&mut out, &format!("  {}: ", words.caution_title(caution)), &words.caution(caution));
    }
    if !catalogue.name.notice.is_empty() {
        out.push('\n');
        row(&mut out, "", &catalogue.name.notice);
    }
    clean(&out)
}

/// What would settle what is open, most telling first.
fn checks_to_do(out: &mut String, words: &Words, catalogue: &Catalogue, answer: &Answer) {
    let ranked = checks(answer);
    if ranked.is_empty() {
        return;
    }
    section(out, &words.ui("ui-checks", &[]));
    for check in &ranked {
        let (sentence, stakes) = words.ranked_check(catalogue, check);
        row(out, "  ? ", &sentence);
        row(out, "    ", &stakes);
    }
}

/// How many remedies are printed; all are in the search's answer, best first.
const REMEDIES: usize = 3;

/// Changes to the build that give a better verdict, with what each does to money, time, length and
/// departure angle.
fn what_helps(out: &mut String, words: &Words, desk: &Desk, build: &Build, answer: &Answer) {
    let found = remedies(desk, build);
    if found.is_empty() {
        return;
    }
    section(out, &words.ui("ui-remedies", &[]));
    for remedy in found.iter().take(REMEDIES) {
        row(out, "  + ", &words.remedy_steps(desk.catalogue(), remedy).join("; "));
        let mut comes_to = vec![words.ui("remedy-leads-to", &[("verdict", words.verdict(remedy.verdict).into())])];
        comes_to.extend(words.remedy_effect(desk.catalogue(), remedy));
        let departure = judge(desk, &remedy.build).footprint.departure.zip(answer.footprint.departure);
        // A twentieth of a degree is what the figure is written to.
        if let Some(change) =
            departure.map(|(now, before)| now.angle - before.angle).filter(|change| change.deg().abs() >= 0.05)
        {
            comes_to.push(words.ui("remedy-departure", &[("change", words.reader().angle_more(change).into())]));
        }
        row(out, "    ", &comes_to.join("; "));
    }
    if found.len() > REMEDIES {
        row(out, "  ", &words.ui("ui-remedies-more", &[("count", (found.len() - REMEDIES).into())]));
    }
}

fn heading(words: &Words, catalogue: &Catalogue, build: &Build, answer: &Answer) -> String {
    let mut chosen: Vec<String> = Vec::new();
    let items = build.items();
    let label = |item| catalogue.body(item).label.clone();
    let (machine, others) = items.split_at(usize::from(build.machine.is_some()));
    chosen.extend(machine.iter().map(|&item| label(item)));
    if build.carrying == Carrying::Hitch {
        chosen.push(words.role(Role::Hitch));
    }
    chosen.extend(others.iter().map(|&item| label(item)));
    let verdict = words.verdict(answer.verdict);
    let standing = match answer.standing {
        Some(standing) => words.standing(standing),
        None => words.ui("ui-incomplete", &[]),
    };
    format!("{verdict} · {standing}\n{}\n", chosen.join(" + "))
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
    let (reader, currency) = (words.reader(), &catalogue.name.currency);
    for line in &answer.parts.lines {
        let come_by = match line.come_by {
            ComeBy::OnHand => words.ui("come-by-on-hand", &[]),
            ComeBy::ComesWith(item) => {
                words.ui("come-by-comes-with", &[("item", catalogue.body(item).label.as_str().into())])
            }
            ComeBy::Buy => match line.price {
                Some(price) => reader.money(price.times(line.quantity), currency),
                None => words.ui("ui-price-on-request", &[]),
            },
        };
        row(out, &format!("  {} × {}: ", line.quantity, catalogue.body(line.item).label), &come_by);
    }
    let total = match answer.parts.total {
        Some(total) => reader.money(total, currency),
        None => words.ui("ui-price-on-request", &[]),
    };
    row(out, &format!("  {}: ", words.ui("ui-total", &[])), &total);
    row(out, &format!("  {}: ", words.ui("ui-work-time", &[])), &reader.work(answer.parts.work));
}

/// What a catalogue holds must not steer the terminal.
fn clean(text: &str) -> String {
    text.chars().filter(|&c| c == '\n' || !c.is_control()).collect()
}
