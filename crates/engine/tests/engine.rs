//! The engine asked as a page asks it, on the demonstration catalogue.
//!
//! Covers: engine/src/engine.rs, engine/src/shown, engine/src/shown/away, engine/src/change/pick.rs.

use fitup_catalogue::{BuildFile, link};
use fitup_core::fit::judge;
use fitup_engine::Engine;
use fitup_view::{
    Ask, Edit, Field, Here, ListFrom, Look, Notice, Part, Reader, SetOrder, Sheet, Slide, Step, Verdict, View,
};
use fitup_words::{Lang, texts};

const CATALOGUE: &str = include_str!("../../../www/catalogue/demo.json");
const ROOM: Option<(u32, u32)> = Some((800, 400));

fn engine() -> Engine {
    let mut engine = Engine::default();
    assert!(engine.teach("en", texts(Lang::En).to_owned()) && engine.teach("de", texts(Lang::De).to_owned()));
    assert!(engine.read(CATALOGUE.as_bytes()).is_usable);
    engine
}

/// The listed set of the demonstration.
fn listed() -> String {
    link::write(&BuildFile {
        machine: Some("wren".into()),
        frame: Some("sparrow-frame".into()),
        seat: Some("rear-seat".into()),
        implement: Some("badger-arm".into()),
        ..BuildFile::default()
    })
}

fn looking(view: View) -> Look {
    Look { view, room: ROOM, cards: 40, ..Look::default() }
}

fn sheet(engine: &mut Engine, ask: Ask) -> Sheet {
    let number = ask.number;
    let reply = engine.ask(ask).expect("it has been taught a language");
    assert_eq!(reply.number, number);
    match reply.part {
        Part::Sheet(sheet) => *sheet,
        other => panic!("the sheet comes first, not {other:?}"),
    }
}

/// All that follows the sheet.
fn rest(engine: &mut Engine) -> Vec<Part> {
    std::iter::from_fn(|| engine.step()).map(|reply| reply.part).collect()
}

#[test]
fn a_whole_build_is_answered_at_once_as_the_library_answers_it() {
    let mut engine = engine();
    let sheet = sheet(&mut engine, Ask { number: 3, build: listed(), look: looking(View::Fit), ..Ask::default() });
    let catalogue = fitup_catalogue::read(CATALOGUE).catalogue.expect("it has no mistakes");
    let (build, _) = link::read(&listed()).expect("our own link").resolve(&catalogue);
    let answer = judge(&fitup_core::fit::Desk::new(catalogue), &build);
    assert_eq!(answer.verdict, fitup_core::finding::Verdict::BoltsUp);
    assert_eq!(
        sheet.headline.as_ref().map(|told| (told.verdict, told.word.as_str())),
        Some((Some(Verdict::BoltsUp), "Bolts up"))
    );
    assert_eq!(sheet.opened, listed(), "a link comes back as it went in");
    assert_eq!(sheet.steps.iter().filter(|step| step.chosen.is_some()).count(), 4);
    assert!(sheet.title.standing == "Listed" && !sheet.title.to_buy.is_empty());
    let Field::Drawing(picture) = &sheet.field else { panic!("the drawing is looked at") };
    assert!(picture.svg.starts_with("<svg") && picture.opens.len() == answer.joints.len());
    assert_eq!((sheet.catalogue.is_empty(), sheet.cautions.len()), (false, answer.cautions.len()));
}

#[test]
fn the_options_of_a_step_follow_with_what_they_lead_to() {
    let mut engine = engine();
    let look = Look { step: Some(Step::Implement), ..looking(View::Fit) };
    let first = sheet(&mut engine, Ask { number: 1, look: look.clone(), ..Ask::default() });
    assert!(!first.begun && first.headline.is_none() && first.options.is_none());
    let parts = rest(&mut engine);
    let Some(Part::Reached(reached)) = parts.first() else { panic!("{parts:?}") };
    let options = reached.options.as_ref().expect("a step is open");
    assert_eq!(options.cards.len(), options.found.min(40) as usize);
    assert!(
        options
            .cards
            .iter()
            .all(|card| card.verdict.is_some() && !card.coloured || card.verdict > Some(Verdict::BoltsUpWithWork))
    );
    assert!(options.cards.iter().all(|card| card.shape.starts_with("<svg") && !card.name.is_empty()));
    assert!(
        reached.ghost.as_ref().is_some_and(|ghost| ghost.svg.starts_with("<svg")),
        "what could come of it is drawn"
    );
    assert!(
        matches!(parts.last(), Some(Part::Change(told)) if told.contains("\"verdict\":null")),
        "nothing is decided"
    );
    let again = sheet(&mut engine, Ask { number: 2, look: Look { search: "badger".into(), ..look }, ..Ask::default() });
    let found = again.options.expect("where the options lead is known by now");
    assert!(found.found < found.all && found.cards.iter().all(|card| card.name.to_lowercase().contains("badger")));
}

#[test]
fn edits_are_done_in_order_and_what_is_refused_leaves_the_build() {
    let mut engine = engine();
    let choose = |step, id: &str| Edit::Choose(step, Some(id.to_owned()));
    let edits = vec![choose(Step::Machine, "wren"), choose(Step::Seat, "zzz"), choose(Step::Frame, "sparrow-frame")];
    let sheet = sheet(&mut engine, Ask { edits, look: looking(View::Fit), ..Ask::default() });
    assert_eq!(
        sheet.outcomes.iter().map(|outcome| outcome.refusal.is_some()).collect::<Vec<_>>(),
        [false, true, false]
    );
    assert_eq!(sheet.outcomes[0].build, sheet.outcomes[1].build);
    let last = link::read(&sheet.outcomes[2].build).expect("a link");
    assert_eq!(
        (last.machine.as_deref(), last.frame.as_deref(), last.seat),
        (Some("wren"), Some("sparrow-frame"), None)
    );
    assert!(sheet.headline.is_some_and(|told| told.verdict.is_none()), "a partial build is not decided");
}

#[test]
fn a_slider_is_answered_with_the_picture_alone() {
    let mut engine = engine();
    let build = with_trailer(&mut engine);
    let ask = Ask { build: build.clone(), look: looking(View::Loading), ..Ask::default() };
    let Field::Whole(first) = sheet(&mut engine, ask).field else { panic!("the view of loading is looked at") };
    let ramps = first.sliders.iter().find(|slider| slider.sets == Slide::Ramps).expect("a trailer has ramps").clone();
    assert!(first.facts.iter().any(|fact| fact.value.as_deref() == Some("…")), "the shortest ramp is being looked for");
    let later =
        rest(&mut engine).into_iter().find_map(|part| if let Part::Facts(facts) = part { Some(facts) } else { None });
    assert!(later.is_some_and(|facts| facts.iter().all(|fact| fact.value.as_deref() != Some("…"))));
    let tried = Some(Edit::Slide(Slide::Ramps, ramps.most));
    let moved = sheet(&mut engine, Ask { build, tried, look: looking(View::Loading), ..Ask::default() });
    let Field::Whole(whole) = moved.field else { panic!("still loading") };
    let now = whole.sliders.iter().find(|slider| slider.sets == Slide::Ramps).map(|slider| slider.value);
    assert!(now.is_some_and(|now| (now - ramps.most).abs() < 1e-6), "{now:?}");
    assert!(whole.facts.iter().all(|fact| fact.value.as_deref() != Some("…")), "what was found stays");
    assert!(rest(&mut engine).is_empty());
}

/// The listed set on the first trailer.
fn with_trailer(engine: &mut Engine) -> String {
    let view = sheet(engine, Ask { build: listed(), look: looking(View::Loading), ..Ask::default() });
    let Field::Whole(whole) = view.field else { panic!("the view of loading is looked at") };
    let id = whole.chooser.expect("trailers to choose from").options[0].0.clone();
    let edits = vec![Edit::Trailer(Some(id))];
    sheet(engine, Ask { build: listed(), edits, look: looking(View::Loading), ..Ask::default() }).outcomes[0]
        .build
        .clone()
}

#[test]
fn every_view_of_the_whole_machine_has_its_picture_and_figures() {
    let mut engine = engine();
    for view in [View::Weight, View::Digging] {
        let Field::Whole(whole) =
            sheet(&mut engine, Ask { build: listed(), look: looking(view), ..Ask::default() }).field
        else {
            panic!("{view:?} is a view of the whole machine")
        };
        assert!(
            whole.picture.svg.starts_with("<svg") && !whole.facts.is_empty() && !whole.sliders.is_empty(),
            "{view:?}"
        );
    }
    let Field::Whole(site) =
        sheet(&mut engine, Ask { build: listed(), look: looking(View::Site), ..Ask::default() }).field
    else {
        panic!("the site is a view of the whole machine")
    };
    assert!(site.picture.missing.is_some() && site.chooser.is_some_and(|chooser| chooser.of_sites));
    let parts = sheet(&mut engine, Ask { build: listed(), look: looking(View::Parts), ..Ask::default() }).parts;
    assert!(parts.is_some_and(|parts| parts.lines.len() >= 4 && !parts.total.is_empty()));
}

#[test]
fn an_opened_row_says_all_and_the_others_one_line() {
    let mut engine = engine();
    let first = sheet(&mut engine, Ask { build: listed(), look: looking(View::Fit), ..Ask::default() });
    assert!(first.rows.iter().all(|row| row.findings.is_empty() && !row.line.is_empty()));
    for row in &first.rows {
        let look = Look { opened: Some(row.key), overlay: Some((240, 160)), ..looking(View::Fit) };
        let opened = sheet(&mut engine, Ask { build: listed(), look, ..Ask::default() });
        let (open, shut): (Vec<_>, Vec<_>) = opened.rows.into_iter().partition(|other| other.key == row.key);
        assert!(!open[0].findings.is_empty() && shut.iter().all(|row| row.findings.is_empty()));
    }
}

#[test]
fn a_link_that_is_cut_off_and_an_id_that_is_gone_are_told() {
    let mut engine = engine();
    let cut = listed()[..listed().len() - 4].to_owned();
    let told = sheet(&mut engine, Ask { build: cut, ..Ask::default() });
    assert!(matches!(told.notice, Some(Notice::Link(_))) && !told.begun);
    let gone = link::write(&BuildFile { machine: Some("last-years".into()), ..BuildFile::default() });
    let told = sheet(&mut engine, Ask { build: gone, ..Ask::default() });
    assert_eq!(told.notice, Some(Notice::Missing(vec!["last-years is not in this catalogue".into()])));
}

#[test]
fn a_broken_catalogue_is_told_in_the_readers_language_and_the_one_before_stays() {
    let mut engine = engine();
    let broken = CATALOGUE.replacen("\"mass\"", "\"mas\"", 1);
    let read = engine.read(broken.as_bytes());
    assert!(!read.is_usable && !read.is_newer && read.problems.contains("\"line\":"));
    let problems = |engine: &mut Engine, lang| {
        let reader = Reader { lang, ..Reader::default() };
        let told = sheet(engine, Ask { build: listed(), reader, look: looking(View::Fit), ..Ask::default() });
        assert!(told.begun, "the catalogue before is in use");
        told.problems.expect("there are mistakes").listed[0].sentence.clone()
    };
    let english = problems(&mut engine, fitup_view::Lang::En);
    assert!(english.contains("mas"), "{english}");
    assert_ne!(english, problems(&mut engine, fitup_view::Lang::De));
}

#[test]
fn what_would_help_comes_with_the_builds_to_try() {
    let mut engine = engine();
    let misfit =
        link::write(&BuildFile { seat: Some("turning-seat".into()), ..link::read(&listed()).expect("a link") });
    let told = sheet(&mut engine, Ask { build: misfit, look: looking(View::Fit), ..Ask::default() });
    let parts = rest(&mut engine);
    if told.worst > Verdict::BoltsUp {
        let remedies = parts.iter().find_map(|part| if let Part::Remedies(found) = part { Some(found) } else { None });
        let remedies = remedies.expect("something is open");
        assert_eq!(remedies.of, told.opened);
        for remedy in &remedies.found {
            assert!(link::read(&remedy.build).is_ok() && !remedy.steps.is_empty() && !remedy.word.is_empty());
        }
    }
    assert!(matches!(parts.last(), Some(Part::Change(_))));
    let same = Ask { build: told.opened, look: looking(View::Fit), ..Ask::default() };
    sheet(&mut engine, same);
    assert!(!rest(&mut engine).iter().any(|part| matches!(part, Part::Change(_))), "the page is told once of a build");
}

#[test]
fn a_newer_request_takes_the_place_of_the_one_before() {
    let mut engine = engine();
    sheet(&mut engine, Ask { number: 1, build: listed(), ..Ask::default() });
    sheet(&mut engine, Ask { number: 2, ..Ask::default() });
    while let Some(reply) = engine.step() {
        assert_eq!(reply.number, 2);
    }
}

#[test]
fn without_a_language_nothing_can_be_said() {
    let mut engine = Engine::default();
    assert!(engine.ask(Ask::default()).is_none() && engine.step().is_none());
}

#[test]
fn what_is_taken_along_comes_last_and_its_link_opens_the_same_build() {
    let mut engine = engine();
    let here =
        Here { address: "https://dealer.example/#fit-up=".into(), today: "1 March 2026".into(), ..Here::default() };
    let look = Look { here: Some(here.clone()), ..looking(View::Fit) };
    sheet(&mut engine, Ask { build: listed(), look: look.clone(), ..Ask::default() });
    let parts = rest(&mut engine);
    let Some(Part::Away(away)) = parts.last() else { panic!("{parts:?}") };
    assert_eq!((&away.of, &away.address), (&listed(), &format!("{}{}", here.address, listed())));
    assert_eq!(BuildFile::read(&away.file), link::read(&away.of).map_err(|_| Vec::new()));
    assert!(away.code.as_ref().is_some_and(|code| code.starts_with("<svg")));
    let lines: Vec<&str> = away.text.lines().collect();
    assert_eq!(lines[0], "Wren, open + Sparrow frame + Rear seat on the deck + Badger digging arm");
    assert!(lines[1].starts_with("Bolts up.") && lines.contains(&away.address.as_str()), "{}", away.text);
    assert!(away.text.contains("1 March 2026") && away.text.contains("planning aid"), "{}", away.text);
    let table: Vec<&str> = away.parts.split("\r\n").collect();
    assert_eq!(
        table[0],
        "\u{feff}\"Item\",\"Name\",\"Part numbers\",\"Quantity\",\"How you get it\",\"Price\",\"Currency\""
    );
    assert!(table[2].starts_with("\"frame\",\"Sparrow frame\",\"FR-"), "{}", table[2]);
    assert_eq!(away.name, "wren_sparrow-frame_rear-seat_badger-arm");
    // Nothing chosen is nothing to take along.
    sheet(&mut engine, Ask { look, ..Ask::default() });
    assert!(!rest(&mut engine).iter().any(|part| matches!(part, Part::Away(_))));
}

#[test]
fn the_best_sets_follow_keep_what_is_kept_and_are_the_searchs_own() {
    let mut engine = engine();
    let look = Look { set_free: vec![Step::Frame, Step::Seat], set_order: SetOrder::Length, ..looking(View::Sets) };
    let ask = Ask { number: 1, build: listed(), look, ..Ask::default() };
    let first = sheet(&mut engine, ask.clone());
    let Field::Sets(shown) = &first.field else { panic!("the sets are looked at") };
    assert!(shown.found.is_none() && shown.says.is_none() && shown.kept.len() == 4, "{shown:?}");
    let found = |parts: Vec<Part>| {
        parts.into_iter().find_map(|part| if let Part::Sets(sets) = part { Some(sets) } else { None })
    };
    let sets = found(rest(&mut engine)).expect("they follow");
    let shown = sets.found.as_ref().expect("they were looked for");
    let desk = fitup_core::fit::Desk::new(fitup_catalogue::read(CATALOGUE).catalogue.expect("it has no mistakes"));
    let (mut build, _) = link::read(&listed()).expect("our own link").resolve(desk.catalogue());
    for step in [fitup_core::build::Step::Frame, fitup_core::build::Step::Seat] {
        step.clear(&mut build);
    }
    let own = fitup_core::search::Searcher::new(&desk).sets(&build, fitup_core::search::SetOrder::Length);
    assert!(shown.len() > 1 && shown.len() == own.found.len());
    for (shown, own) in shown.iter().zip(&own.found) {
        assert_eq!(shown.build, link::write(&BuildFile::of(desk.catalogue(), &own.build)));
        assert_eq!((shown.unbeaten.is_some(), shown.measures.len()), (own.is_unbeaten, 5));
    }
    // Asked again they stand on the sheet at once, and nothing follows.
    let Field::Sets(again) = sheet(&mut engine, ask).field else { panic!("the sets are looked at") };
    assert_eq!((again.found.as_ref(), found(rest(&mut engine))), (Some(shown), None));
}

#[test]
fn two_parts_lists_are_compared_as_they_come_from_the_catalogue_or_are_pasted() {
    let mut engine = engine();
    let of = |item: &str, text: &str| ListFrom { item: item.into(), text: text.into() };
    let mut look = |lists: [ListFrom; 2]| {
        let look = Look { lists, ..looking(View::Lists) };
        let Field::Lists(shown) = sheet(&mut engine, Ask { number: 1, look, ..Ask::default() }).field else {
            panic!("the lists are looked at")
        };
        shown
    };
    let none = look(Default::default());
    assert!(none.says.is_some() && none.assemblies.is_empty() && !none.items.is_empty());
    let (item, _) = none.items[0].clone();
    let same = look([of(&item, ""), of(&item, "")]);
    assert!(same.says.is_none() && !same.assemblies.is_empty() && same.assemblies.iter().all(|one| one.is_same));
    let pasted = look([
        of("", "Hooks\nHK-7001;hook;2\nPN-20;latch pin;1\n"),
        of("", "Hooks\nHK-7001;hook;1\nPN-20;latch pin;1\nx;;0\n"),
    ]);
    assert!(!pasted.assemblies[0].is_same && pasted.assemblies[0].lines.len() == 1, "{pasted:?}");
    assert_eq!((pasted.read[0].1.len(), pasted.read[1].1.len()), (0, 1), "{pasted:?}");
}
