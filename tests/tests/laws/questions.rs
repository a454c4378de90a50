//! Laws of the four questions, tried on every build of the demonstration yard.
//!
//! Covers: core/src/fit/judge, core/src/search/headline.rs, words/src/question.rs, words/src/report/question.rs.

use fitup_core::build::{Build, Carrying, Choices, Seating, Step, options};
use fitup_core::finding::{Question, Value, Verdict};
use fitup_core::fit::{Answer, Desk, judge};
use fitup_core::item::{Catalogue, FrameId, ImplementId, MachineId, SeatId, SiteId, TrailerId};
use fitup_core::search::{Searcher, headline};
use fitup_tests::stories::{STORIES, desk, story};
use fitup_words::{Lang, Units, Words, verdict_key};

fn every_build(catalogue: &Catalogue) -> Vec<Build> {
    let carrying = std::iter::once(Carrying::Hitch)
        .chain((0..catalogue.frames.len()).map(|frame| Carrying::Frame(FrameId::at(frame))));
    let mut builds = Vec::new();
    for carrying in carrying {
        for machine in 0..catalogue.machines.len() {
            for seat in 0..catalogue.seats.len() {
                for implement in 0..catalogue.implements.len() {
                    builds.push(Build::from(Choices {
                        machine: Some(MachineId::at(machine)),
                        carrying,
                        seating: Seating::This(SeatId::at(seat)),
                        implement: Some(ImplementId::at(implement)),
                    }));
                }
            }
        }
    }
    builds
}

fn stories(desk: &Desk) -> Vec<Build> {
    STORIES.iter().map(|name| story(desk, name)).collect()
}

/// The build without the steps whose bit is not set.
fn part(build: &Build, kept: u8) -> Build {
    let mut part = Build { side: build.side.clone(), ..Build::default() };
    for step in Step::ALL {
        if let Some(option) = step.chosen(build).filter(|_| kept & (1 << step as u8) != 0) {
            step.choose(&mut part, option);
        }
    }
    part
}

#[test]
fn a_trailer_or_a_site_changes_neither_fit_nor_work() {
    let desk = desk();
    let catalogue = desk.catalogue();
    let told = |build: &Build| {
        let answer = judge(&desk, build);
        let said = [Question::Fit, Question::Work].map(|question| {
            let of = answer.findings.iter().filter(|finding| finding.question == question);
            of.cloned().collect::<Vec<_>>()
        });
        (answer.verdict, answer.decided(), said)
    };
    let mut changed = 0;
    for (index, build) in every_build(catalogue).into_iter().chain(stories(&desk)).enumerate() {
        let bare = build.changed(|build| (build.side.trailer, build.side.site) = (None, None));
        let expected = told(&bare);
        let trailer = Some(TrailerId::at(index % catalogue.trailers.len()));
        let site = Some(SiteId::at(index % catalogue.sites.len()));
        for (trailer, site) in [(trailer, None), (None, site)] {
            let with = bare.clone().changed(|build| (build.side.trailer, build.side.site) = (trailer, site));
            assert_eq!(told(&with), expected, "{with:?}");
            let answer = judge(&desk, &with);
            let asked = if trailer.is_some() { Question::Travel } else { Question::Site };
            assert!(answer.to(asked).is_decided);
            changed += usize::from(answer.to(asked).worst > answer.verdict);
        }
    }
    assert!(changed > 100, "trailer and site have hardly anything to say: {changed}");
}

#[test]
fn the_headline_is_the_worse_of_fit_and_work_and_every_surface_says_it() {
    let desk = desk();
    let words = Words::new(Lang::En, Units::Metric);
    let mut searcher = Searcher::new(&desk);
    let mut decided_by = [0; 2];
    for build in every_build(desk.catalogue()).into_iter().step_by(7).chain(stories(&desk)) {
        let answer = judge(&desk, &build);
        let told = headline(&mut searcher, &build).expect("every step has an option");
        let [fit, work] = [Question::Fit, Question::Work].map(|question| answer.to(question).worst);
        assert_eq!(told.verdict(), fit.max(work), "{build:?}");
        assert_eq!(answer.to(told.question()).verdict(), Some(told.verdict()));
        decided_by[told.question() as usize] += 1;
        let report = words.report(desk.catalogue(), &build, &answer, Some(&told));
        let text = words.headline(desk.catalogue(), Some(&told));
        assert_eq!(text.word, words.answer_of(&told.answer, told.question()));
        let name = verdict_key(told.verdict()).trim_start_matches("verdict-");
        assert_eq!((report.verdict, report.headline.verdict), (Some(name), Some(name)));
        assert_eq!((&report.verdict_text, &report.headline.text), (&text.word, &text.word));
        assert_eq!(report.headline.reason, text.reason);
        let of_question = report.answers.iter().find(|it| it.question == told.question().word()).expect("it is there");
        assert_eq!(of_question.verdict, Some(name));
        if told.verdict() > Verdict::BoltsUp {
            assert_eq!(of_question.line.as_ref(), Some(&text.reason));
        }
    }
    assert!(decided_by.iter().all(|&count| count > 10), "{decided_by:?}");
}

#[test]
fn where_all_is_in_order_the_least_to_spare_is_told() {
    let desk = desk();
    let answer = judge(&desk, &story(&desk, "listed"));
    let tightest = answer.tightest(Question::Work).expect("the axles are rated");
    // 101 kg of 1,050 at the rear, 403 kg of 620 at the front.
    assert_eq!((tightest.code, tightest.figure("axle")), ("axle-within-rating", Some(&Value::Word("rear"))));
    assert_eq!(answer.tightest(Question::Travel), None);
    let mut told = 0;
    for build in stories(&desk) {
        let answer = judge(&desk, &build);
        for question in Question::ALL {
            let Some(finding) = answer.tightest(question) else { continue };
            assert_eq!((finding.question, finding.verdict), (question, Verdict::BoltsUp));
            told += 1;
        }
    }
    assert!(told >= 10, "{told}");
}

#[test]
fn a_sum_with_missing_prices_is_the_least_it_can_be() {
    let desk = desk();
    for build in stories(&desk) {
        let parts = judge(&desk, &build).parts;
        let (known, open) = parts.known();
        match parts.total {
            Some(total) => assert_eq!(known, total),
            None => assert!(open > 0),
        }
    }
}

#[test]
fn the_card_of_what_is_chosen_says_what_the_headline_says() {
    let desk = desk();
    let mut searcher = Searcher::new(&desk);
    let builds = every_build(desk.catalogue()).into_iter().step_by(211).chain(stories(&desk));
    let mut compared = 0;
    for build in builds {
        for kept in [0b0001, 0b1000, 0b1001, 0b0111, 0b1011, 0b1111] {
            let part = part(&build, kept);
            let told = headline(&mut searcher, &part).expect("every step has an option");
            let reachable = searcher.reachable(&part);
            for step in Step::ALL {
                let Some(option) = step.chosen(&part) else { continue };
                let reach = reachable.through(step, option).expect("every step has an option");
                assert_eq!(reach.verdict, told.verdict(), "{part:?}");
                if part.is_complete() {
                    assert_eq!(reach.reason(&desk).as_ref(), told.reason(), "{part:?}");
                }
                compared += 1;
            }
            assert_eq!(
                told.reason().map(|finding| finding.verdict),
                Some(told.verdict()).filter(|&it| it > Verdict::BoltsUp)
            );
        }
    }
    assert!(compared > 200, "{compared}");
}

#[test]
fn no_partial_build_is_green_and_nothing_of_it_is_decided() {
    let desk = desk();
    let words = Words::new(Lang::En, Units::Metric);
    let mut searcher = Searcher::new(&desk);
    let machines = options(desk.catalogue())[Step::Machine as usize];
    let lone = (0..machines)
        .map(|machine| Build::from(Choices { machine: Some(MachineId::at(machine)), ..Choices::default() }));
    let builds = every_build(desk.catalogue()).into_iter().step_by(307).chain(stories(&desk));
    let parts = builds.flat_map(|build| (0..0b1111).map(move |kept| part(&build, kept)));
    for part in lone.chain(parts) {
        let answer: Answer = judge(&desk, &part);
        assert_eq!(answer.decided(), None, "{part:?}");
        assert!(answer.answers.iter().all(|told| told.verdict().is_none()), "{part:?}");
        let told = headline(&mut searcher, &part);
        let text = words.headline(desk.catalogue(), told.as_ref());
        assert!(text.verdict.is_none_or(|verdict| verdict == Verdict::WontMount), "{part:?}: {text:?}");
        let report = words.report(desk.catalogue(), &part, &answer, told.as_ref());
        assert_eq!((report.verdict, report.headline.decided), (None, false));
        assert_eq!(report.verdict_text, text.word);
        assert!(report.answers.iter().all(|told| told.verdict.is_none() && told.finding.is_none()));
    }
}

#[test]
fn what_the_catalogue_does_not_have_is_told_and_leaves_everything_undecided() {
    let desk = desk();
    let words = Words::new(Lang::En, Units::Metric);
    let build = story(&desk, "listed");
    let told = headline(&mut Searcher::new(&desk), &build);
    let report = words.report(desk.catalogue(), &build, &judge(&desk, &build), told.as_ref());
    assert_eq!(words.with_unknown(report.clone(), Vec::new()), report);
    let report = words.with_unknown(report, vec!["zzz".to_owned()]);
    assert_eq!((report.verdict, report.verdict_text.as_str()), (None, "Not decided yet"));
    assert_eq!((report.headline.decided, report.headline.reason.as_str()), (false, "zzz is not in this catalogue"));
    assert!(report.answers.iter().all(|told| told.verdict.is_none() && told.line.is_none()));
    assert_eq!(report.unknown, ["zzz"]);
}
