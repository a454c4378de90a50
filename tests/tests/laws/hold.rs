//! Holds a law over many builds: of the demonstration catalogue, and of catalogues by chance.

use fitup_catalogue::BuildFile;
use fitup_core::build::Build;
use fitup_core::finding::{Question, Value as Figure, Verdict};
use fitup_core::fit::{Answer, Desk, judge};
use serde_json::Value;

use super::chance::Chance;
use super::random;
use super::tree::{self, demo, desk, verdicts};

/// Builds that every law is tried on: `FITUP_LAWS`, else 240.
pub fn tried() -> usize {
    std::env::var("FITUP_LAWS").ok().and_then(|count| count.parse().ok()).unwrap_or(240)
}

/// Builds of a catalogue by chance.
const OF_EACH: usize = 12;

/// A catalogue with builds of it, as files.
pub struct Case {
    pub catalogue: Value,
    pub builds: Vec<Value>,
    /// Chance for the law to change them by.
    pub chance: Chance,
}

/// Half the builds are of the demonstration catalogue, half of catalogues by chance.
pub fn cases() -> impl Iterator<Item = Case> {
    let half = tried().div_ceil(2);
    let of_demo = {
        let catalogue = demo();
        let whole = desk(&catalogue).expect("the demonstration catalogue is sound");
        let all = tree::builds(&whole, 1);
        let step = (all.len() / half).max(1);
        let builds = all.iter().step_by(step).take(half).map(tree::Asked::as_file).collect();
        Case { catalogue, builds, chance: Chance::new(0) }
    };
    let by_chance = (1..).filter_map(|seed| random::catalogue(seed).map(|catalogue| (seed, catalogue)));
    let by_chance = by_chance.take(half.div_ceil(OF_EACH)).map(|(seed, catalogue)| {
        let chance = Chance::new(seed + 1_000_000);
        let builds = (0..OF_EACH).map(|_| random::build(&chance, &catalogue)).collect();
        Case { catalogue, builds, chance }
    });
    std::iter::once(of_demo).chain(by_chance)
}

/// A build in a catalogue that has all it names.
pub fn build_of(desk: &Desk, file: &Value) -> Option<Build> {
    let file = BuildFile::read(&file.to_string()).expect("a build file");
    let (build, unresolved) = file.resolve(desk.catalogue());
    unresolved.is_empty().then_some(build)
}

/// What is wrong with the answer before and the answer after, each with its desk; nothing if they keep the law.
pub trait Fault: Fn(&Desk, &Answer, &Desk, &Answer) -> Option<String> {}

impl<F: Fn(&Desk, &Answer, &Desk, &Answer) -> Option<String>> Fault for F {}

/// Asserts that what is told before and after a change of catalogue and builds keeps a law, which says what is wrong if not.
pub fn hold(law: &str, change: impl Fn(&mut Case), fault: impl Fault) {
    hold_from(law, |_| {}, change, fault);
}

/// As [`hold`], of catalogues and builds that are brought into a state first.
pub fn hold_from(law: &str, first: impl Fn(&mut Case), change: impl Fn(&mut Case), fault: impl Fault) {
    let (mut count, mut refused, mut faults) = (0, 0, Vec::new());
    for mut case in cases() {
        first(&mut case);
        let (before, files) = (desk(&case.catalogue).expect("it is sound"), case.builds.clone());
        change(&mut case);
        let Some(after) = desk(&case.catalogue) else {
            refused += 1;
            continue;
        };
        for (file, changed) in files.iter().zip(&case.builds) {
            let Some(was) = build_of(&before, file) else { continue };
            let Some(is) = build_of(&after, changed) else { continue };
            count += 1;
            let (was, is) = (judge(&before, &was), judge(&after, &is));
            if let Some(fault) = fault(&before, &was, &after, &is) {
                faults.push(format!("{fault}\n    {changed}"));
            }
        }
    }
    println!("{law}: {count} builds tried, {} counterexamples, {refused} changed catalogues refused", faults.len());
    let shown: Vec<&String> = faults.iter().step_by((faults.len() / 12).max(1)).collect();
    assert!(
        faults.is_empty(),
        "{law}: {} of {count}:\n{}",
        faults.len(),
        shown.iter().map(|it| it.as_str()).collect::<Vec<_>>().join("\n")
    );
    assert!(count * 10 >= tried() * 9, "{law}: only {count} builds");
}

/// A finding as it is compared: its verdict, code and words, and its numbers in SI units.
type Line = (Verdict, String, Vec<f64>);

fn lines(desk: &Desk, answer: &Answer, bare: &[&str], names: &dyn Fn(&str) -> String) -> Vec<Line> {
    let line = |finding: &fitup_core::finding::Finding| {
        let (mut words, mut numbers) = (finding.code.to_owned(), Vec::new());
        for figure in finding.figures.iter().filter(|_| !bare.contains(&finding.code)) {
            match &figure.value {
                Figure::Length(it) => numbers.push(it.m()),
                Figure::Mass(it) => numbers.push(it.kg()),
                Figure::Angle(it) => numbers.push(it.rad()),
                Figure::Pressure(it) => numbers.push(it.pa() * 1e-6),
                Figure::Flow(it) => numbers.push(it.m3_s() * 1e4),
                Figure::Power(it) => numbers.push(it.w() * 1e-4),
                Figure::Share(it) => numbers.push(*it),
                Figure::Item(it) => words.extend([" ", &names(&desk.catalogue().body(*it).id)]),
                other => words.extend([" ", &format!("{other:?}")]),
            }
        }
        // By how much a frame misses that misses by decimetres is known to a millimetre only: the search for its best turn ends
        // where the turn may go no farther.
        if finding.code == "closure-misses" {
            numbers.clear();
        }
        // Where two ways of laying a plate miss alike, either may be taken, and with it other holes: what is wrong with a tapped hole
        // is then told of one or the other.
        if ["bolt-not-for-tapped", "thread-too-short"].contains(&finding.code) {
            "tapped-hole".clone_into(&mut words);
            numbers.clear();
        }
        (finding.verdict, words, numbers)
    };
    let mut lines: Vec<Line> = answer.findings.iter().map(line).collect();
    lines.sort_by(|a, b| a.partial_cmp(b).expect("numbers"));
    lines
}

/// Whether two answers are the same but for the last digits: within `slack` and a millionth. Says the first difference.
pub fn same(slack: f64, names: impl Fn(&str) -> String) -> impl Fault {
    same_but(&[], slack, names)
}

/// As [`same`], where findings of some codes may have other figures.
pub fn same_but(bare: &'static [&'static str], slack: f64, names: impl Fn(&str) -> String) -> impl Fault {
    move |desk, was, other, is| {
        let as_was = |name: &str| name.to_owned();
        let (was, is) = (lines(desk, was, bare, &names), lines(other, is, bare, &as_was));
        let near = |a: &f64, b: &f64| a == b || (a - b).abs() <= slack + 1e-6 * a.abs().max(b.abs());
        let alike = |a: &Line, b: &Line| {
            (a.0, &a.1) == (b.0, &b.1) && a.2.len() == b.2.len() && a.2.iter().zip(&b.2).all(|(a, b)| near(a, b))
        };
        if was.len() == is.len() && was.iter().zip(&is).all(|(a, b)| alike(a, b)) {
            return None;
        }
        let only = |of: &[Line], other: &[Line]| {
            let lines: Vec<_> = of.iter().filter(|a| !other.iter().any(|b| alike(a, b))).cloned().collect();
            format!("{lines:?}")
        };
        let (gone, new) = (only(&was, &is), only(&is, &was));
        (gone != "[]" || new != "[]" || was.len() != is.len()).then(|| format!("- {gone}\n+ {new}"))
    }
}

/// The findings of a question that are not as good as a plain yes, for a message.
pub fn reasons(answer: &Answer, question: Question) -> String {
    let of = answer.findings.iter().filter(|it| it.question == question && it.verdict > Verdict::BoltsUp);
    of.map(|it| format!("{} {:?}", it.code, it.verdict)).collect::<Vec<_>>().join(", ")
}

/// Says which of some questions is answered in a way that is not allowed.
pub fn each(questions: &'static [Question], wrong: impl Fn(Verdict, Verdict) -> bool) -> impl Fault {
    move |_, was, _, is| {
        let (before, after) = (verdicts(was), verdicts(is));
        questions.iter().find_map(|&question| {
            let (before, after) = (before[question as usize], after[question as usize]);
            let told = || {
                format!("{question:?} {before:?} -> {after:?}: {} -> {}", reasons(was, question), reasons(is, question))
            };
            wrong(before, after).then(told)
        })
    }
}
