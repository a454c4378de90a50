//! Identification, checks, comparison and remedies: values worked out by hand, and what holds for every story.

#![allow(clippy::disallowed_methods, reason = "the second method uses the platform's own functions")]

use fitup_core::build::{Build, Carrying, Change, Measurement};
use fitup_core::finding::{Check, Finding, Grade, Subject, Value, Verdict};
use fitup_core::fit::{Answer, Desk, judge};
use fitup_core::item::{FrameId, ImplementId, ItemRef, PortKind};
use fitup_core::quantity::{Length, Mass, Tool};
use fitup_core::search::{MOST_COMPARED, RemedyStep, Sameness, checks, compare, identify, remedies};
use fitup_tests::stories::{desk, story};
use fitup_yard::Yard;

const LONG: ItemRef = ItemRef::Frame(FrameId(0));
const SHORT: ItemRef = ItemRef::Frame(FrameId(1));
const ARM: ItemRef = ItemRef::Implement(ImplementId(0));
const STORIES: [&str; 10] = [
    "listed",
    "shared-parts",
    "measured",
    "sleeve",
    "two-holes",
    "another-seat",
    "no-adapter",
    "light-front",
    "ramp",
    "missing-data",
];

fn measured(dimension: &str, mm: f64) -> Measurement {
    Measurement {
        item: ARM,
        port: String::new(),
        dimension: dimension.to_owned(),
        value: Length::from_mm(mm),
        tool: Tool::Caliper,
        plus_minus: None,
        note: String::new(),
    }
}

/// Two frames whose racks are 40.0 and 40.1 mm thick, and an arm with hooks of 41.5 mm.
fn racks() -> (Yard, PortKind) {
    let mut yard = Yard::new();
    yard.catalogue.adapters.clear();
    let kind = PortKind::HookRack(yard.rack(LONG, "rack").clone());
    let off = |mm: f64| Some(fitup_yard::drawn(mm).expect("a dimension"));
    yard.rack(SHORT, "rack").diameter = off(40.1);
    yard.rack(SHORT, "rack").spread = off(470.0);
    yard.rack(SHORT, "rack").drop = off(241.0);
    (yard, kind)
}

#[test]
fn the_likeliest_port_is_the_one_that_explains_the_measurement_and_the_shares_come_to_one() {
    let (yard, kind) = racks();
    let found = identify(&Desk::new(yard.catalogue), &kind, &[measured("diameter", 40.0)]);
    let items: Vec<ItemRef> = found.candidates.iter().map(|candidate| candidate.item).collect();
    assert_eq!(items, [LONG, SHORT, ARM]);
    // Drawing ±0.2 mm and caliper ±0.1 mm may be off by √0.05 mm together, three standard deviations: 0.1 mm are
    // 0.447 of it, and exp(−½ (3 · 0.447)²) = exp(−0.9).
    let second = (-0.9_f64).exp();
    for (candidate, share) in found.candidates.iter().zip([1.0 / (1.0 + second), second / (1.0 + second), 0.0]) {
        assert!((candidate.likelihood - share).abs() < 1e-9, "{candidate:?} {share}");
        assert_eq!(candidate.compared, 1);
    }
    assert!((found.candidates[1].worst - 0.2_f64.sqrt()).abs() < 1e-9);
    // 10 mm of spread and 1 mm of drop are more than the ±0.4 mm that both drawings may be off.
    let telling: Vec<(&str, f64, f64)> =
        found.tell_apart.iter().map(|tell| (tell.dimension.as_str(), tell.first.mm(), tell.second.mm())).collect();
    assert_eq!(telling.iter().map(|tell| tell.0).collect::<Vec<_>>(), ["spread", "drop"]);
    assert!((telling[0].1 - 460.0).abs() < 1e-9 && (telling[0].2 - 470.0).abs() < 1e-9);
}

#[test]
fn a_port_that_does_not_state_what_was_measured_neither_wins_nor_is_lost() {
    let (mut yard, kind) = racks();
    yard.rack(ARM, "hooks").diameter = None;
    let both = [measured("diameter", 40.0), measured("spread", 460.0)];
    let found = identify(&Desk::new(yard.catalogue.clone()), &kind, &both);
    let arm = found.candidates.iter().find(|candidate| candidate.item == ARM).expect("it states the spread");
    // As if it were off by all that may be: exp(−½ 3²) beside the long frame's 1; the short one's spread is far off.
    let silent = (-4.5_f64).exp();
    assert!((arm.likelihood - silent / (1.0 + silent)).abs() < 1e-9);
    assert_eq!((arm.compared, found.candidates[0].item), (1, LONG));
    // Of what nobody states there is nobody to tell of; a measurement that is no number says nothing.
    let desk = Desk::new(yard.catalogue);
    assert_eq!(identify(&desk, &kind, &[measured("lid", 5.0)]).candidates, []);
    assert_eq!(identify(&desk, &kind, &[measured("diameter", f64::NAN)]).candidates, []);
    assert_eq!(identify(&desk, &kind, &[]).tell_apart, []);
}

#[test]
fn checks_that_move_the_verdict_farthest_come_first_and_one_act_is_one_check() {
    let ask = |what: &'static str| Check::FindOut { item: ARM, what };
    let open = |check: Check| Finding::new("code", Subject::Item(ARM), Verdict::CheckFirst, Grade::None).check(check);
    let mut answer = Yard::new().judge();
    answer.findings = vec![open(ask("one")), open(ask("two")), open(ask("one"))];
    let ranked = checks(&answer);
    assert_eq!(ranked.iter().map(|check| check.findings.clone()).collect::<Vec<_>>(), [vec![0, 2], vec![1]]);
    // The other one stays open whichever is settled.
    assert!(ranked.iter().all(|check| (check.at_best, check.at_worst) == (Verdict::CheckFirst, Verdict::WontMount)));
    answer.findings.pop();
    answer.findings[1] = Finding::new("code", Subject::Item(ARM), Verdict::BoltsUpWithWork, Grade::None);
    let alone = checks(&answer);
    assert_eq!((alone.len(), alone[0].at_best), (1, Verdict::BoltsUpWithWork));
    answer.findings.remove(0);
    assert_eq!(checks(&answer), [], "what is known to need work is not open");
}

#[test]
fn builds_lie_side_by_side_line_for_line() {
    let desk = desk();
    let builds = [story(&desk, "listed"), story(&desk, "two-holes"), story(&desk, "listed")];
    let found = compare(&desk, &builds);
    let line = |name: &str| found.rows.iter().find(|row| row.name == name).expect("a line");
    let money = |index: usize| Some(Value::Money(judge(&desk, &builds[index]).parts.total.expect("priced")));
    assert_eq!(line("to-buy").values, [money(0), money(1), money(0)]);
    assert_eq!(line("to-buy").sameness, Sameness::Differs);
    assert_eq!(line("items-to-buy").values, vec![Some(Value::Count(4)); 3]);
    assert_eq!(line("items-to-buy").sameness, Sameness::Same);
    let length = found.answers[0].footprint.length.map(Value::Length);
    assert_eq!(line("length").values[0], length);
    let twice = [builds[0].clone(), builds[0].clone()];
    assert!(compare(&desk, &twice).rows.iter().all(|row| row.sameness == Sameness::Same));
    let many: Vec<Build> = builds.iter().cycle().take(9).cloned().collect();
    assert_eq!(compare(&desk, &many).answers.len(), MOST_COMPARED);
}

fn first(name: &str) -> (Vec<RemedyStep>, Verdict) {
    let desk = desk();
    let found = remedies(&desk, &story(&desk, name));
    let best = found.first().unwrap_or_else(|| panic!("{name} has no remedy"));
    (best.steps.clone(), best.verdict)
}

#[test]
fn ballast_is_proposed_in_weights_and_ramps_in_lengths_as_they_are_made() {
    let (steps, verdict) = first("light-front");
    assert_eq!(verdict, Verdict::BoltsUp);
    let [RemedyStep::Change(Change::Ballast { mass, .. })] = steps[..] else { panic!("{steps:?}") };
    // 11.4 kg are wanted and weights are of 5 kg.
    assert_eq!(mass, Mass::from_kg(15.0));
    let desk = desk();
    let ramps = remedies(&desk, &story(&desk, "ramp")).into_iter().flat_map(|remedy| remedy.steps);
    let lengths: Vec<f64> = ramps
        .filter_map(
            |step| if let RemedyStep::Change(Change::Ramps { length }) = step { Some(length.mm()) } else { None },
        )
        .collect();
    // 1,858 mm just clear.
    assert!(!lengths.is_empty() && lengths.iter().all(|length| (length - 1900.0).abs() < 1e-6), "{lengths:?}");
}

#[test]
fn a_sleeve_and_what_a_frame_asks_for_are_proposed_though_they_make_no_verdict_better() {
    let (steps, verdict) = first("sleeve");
    let desk = desk();
    let [RemedyStep::Adapter(sleeve)] = steps[..] else { panic!("{steps:?}") };
    assert_eq!(
        (desk.catalogue().adapter(sleeve).body.id.as_str(), verdict),
        ("sleeve-25-30", Verdict::BoltsUpWithWork)
    );
    let (steps, verdict) = first("missing-data");
    assert_eq!(steps, [RemedyStep::Change(Change::PutOn("loader base".to_owned()))]);
    assert_eq!(verdict, Verdict::CheckFirst);
    let answer = judge(&desk, &story(&desk, "missing-data"));
    assert_eq!(answer.parts.fittings, ["loader base"]);
    assert!(judge(&desk, &story(&desk, "listed")).parts.fittings.is_empty(), "the Wren has what the frame needs");
}

#[test]
fn every_remedy_is_a_build_that_is_judged_as_it_says_and_holds_no_step_too_many() {
    let desk = desk();
    for name in STORIES {
        let build = story(&desk, name);
        let now = judge(&desk, &build);
        let found = remedies(&desk, &build);
        assert!(now.verdict != Verdict::BoltsUp || found.is_empty(), "{name} needs none");
        for pair in found.windows(2) {
            assert!(pair[0].verdict <= pair[1].verdict, "{name}: best first");
        }
        for remedy in &found {
            let then = judge(&desk, &remedy.build);
            assert_eq!(then.verdict, remedy.verdict, "{name}");
            assert!(then.verdict <= now.verdict, "{name}");
            assert_eq!(remedy.work_more, then.parts.work - now.parts.work, "{name}");
            let length = then.footprint.length.zip(now.footprint.length).map(|(then, now)| then - now);
            assert_eq!(remedy.length_more, length, "{name}");
            let angle = |answer: &Answer| answer.footprint.departure.map(|end| end.angle);
            let departure = angle(&then).zip(angle(&now)).map(|(then, now)| then - now);
            assert_eq!(remedy.departure_more, departure, "{name}");
            let asks = |answer: &Answer| -> Vec<(&str, Subject)> {
                let open = answer.findings.iter().filter(|finding| finding.verdict > Verdict::BoltsUp);
                open.map(|finding| (finding.code, finding.subject)).collect()
            };
            let (before, after) = (asks(&now), asks(&then));
            let settles: Vec<_> = before.into_iter().filter(|asked| !after.contains(asked)).collect();
            let told: Vec<_> = remedy.settles.iter().map(|finding| (finding.code, finding.subject)).collect();
            assert_eq!(told, settles, "{name}");
            assert!(remedy.verdict < now.verdict || !settles.is_empty(), "{name}: {:?} changes nothing", remedy.steps);
            let worst = |finding: &Finding| finding.verdict == then.verdict && then.verdict > Verdict::BoltsUp;
            let leaves: Vec<Finding> = then.findings.iter().filter(|finding| worst(finding)).cloned().collect();
            assert_eq!(remedy.leaves, leaves, "{name}");
            for smaller in found.iter().filter(|other| other.steps.len() < remedy.steps.len()) {
                let within = smaller.steps.iter().all(|step| remedy.steps.contains(step));
                let does_less = smaller.settles.len() < remedy.settles.len();
                assert!(!within || smaller.verdict > remedy.verdict || does_less, "{name}: {:?}", remedy.steps);
            }
        }
    }
}

#[test]
fn another_frame_or_the_hitch_is_tried_only_where_one_was_chosen() {
    let desk = desk();
    let open = Build { carrying: Carrying::Open, ..story(&desk, "no-adapter") };
    let steps = remedies(&desk, &open).into_iter().flat_map(|remedy| remedy.steps);
    assert!(steps.into_iter().all(|step| !matches!(step, RemedyStep::Carry(_))));
}
