//! The session with an engine that is played: it answers as the real one does.

use fitup_view::{Entry, LinkTrouble, Outcome, Picture, Place, Refusal, Supplied, Title, Verdict};

use super::*;

fn supplied(is_usable: bool) -> Action {
    Action::Read("a.json".into(), Supplied { is_usable, is_newer: false, problems: String::new() })
}

/// What is chosen is told by its id, and the build after it goes by that name.
fn choose(id: &str) -> Action {
    Action::Edit(Edit::Choose(Step::Frame, Some(id.into())))
}

/// Answers as an engine does whose builds go by the frame chosen last; `notice` is what it has to tell of the link.
fn answered(session: &Session, notice: Option<fitup_view::Notice>) -> Session {
    let ask = session.ask(Reader::default());
    let mut builds = Vec::new();
    for edit in &ask.edits {
        let says = || Refusal { says: "no length".into(), is_question: false };
        let refusal = matches!(edit, Edit::Enter { .. }).then(says);
        let last = builds.last().map_or(ask.build.clone(), |outcome: &Outcome| outcome.build.clone());
        let build = match edit {
            Edit::Choose(_, Some(id)) => id.clone(),
            Edit::Empty => String::new(),
            _ => last,
        };
        builds.push(Outcome { build, refusal });
    }
    let opened = if notice.is_some() { String::new() } else { ask.build.clone() };
    let sheet = Sheet {
        opened,
        outcomes: builds,
        notice,
        catalogue: String::new(),
        problems: None,
        begun: false,
        headline: None,
        answers: Vec::new(),
        title: Title::default(),
        figures: Vec::new(),
        steps: Vec::new(),
        also: Vec::new(),
        field: Field::Drawing(Picture::default()),
        options: None,
        rows: Vec::new(),
        worst: Verdict::BoltsUp,
        parts: None,
        cautions: Vec::new(),
        own_notice: String::new(),
    };
    session.after(Action::Said(Part::Sheet(Box::new(sheet)), Rc::new(ask)))
}

fn run(actions: impl IntoIterator<Item = Action>) -> Session {
    let step = |session: Session, action| answered(&session.after(action), None);
    actions.into_iter().fold(Session::default(), step)
}

fn at(link: Option<&str>) -> Action {
    Action::Arrive(Address { link: link.map(str::to_owned), ..Address::default() })
}

fn build_of(session: &Session) -> &str {
    session.history.present()
}

#[test]
fn an_address_waits_for_the_catalogue_and_then_opens() {
    let address = Address { link: Some("b".into()), step: Some(Step::Seat), view: View::Fit };
    let waiting = run([Action::Arrive(address.clone())]);
    assert_eq!(waiting.address(), address, "nothing of the address is lost while it waits");
    assert_eq!(waiting.ask(Reader::default()), Ask::default(), "there is nothing to read it against");
    let opened = answered(&waiting.after(supplied(true)), None);
    assert_eq!((build_of(&opened), opened.step()), ("b", Some(Step::Seat)));
    assert!(!opened.history.can_undo(), "a page that opens with a build has none before it");
    let other = answered(&opened.after(at(Some("c"))), None);
    assert_eq!(build_of(&other.after(Action::Undo)), "b");
}

#[test]
fn a_cut_link_leaves_the_build_and_says_so() {
    let cut = fitup_view::Notice::Link(LinkTrouble::CutOff);
    let opened = answered(&run([supplied(true)]).after(at(Some("b-"))), Some(cut.clone()));
    assert_eq!(opened.notice, Some(Notice::Link(cut)));
    assert_eq!(build_of(&opened), "");
    assert_eq!(opened.address().link.as_deref(), Some("b-"), "the address keeps the link until something is edited");
    assert_eq!(answered(&opened.after(choose("a")), None).address().link.as_deref(), Some("a"));
}

#[test]
fn another_catalogue_keeps_the_build_by_its_ids_and_forgets_what_came_before() {
    let session = run([supplied(true), choose("b"), supplied(true)]);
    assert_eq!(build_of(&session), "b");
    assert!(!session.history.can_undo(), "older builds were made against the catalogue that is gone");
}

#[test]
fn a_failed_reload_keeps_what_was_there() {
    let session = run([supplied(true), choose("b"), supplied(false)]);
    assert!(session.usable && matches!(session.trouble, Some(Trouble::Broken { .. })));
    assert_eq!(build_of(&session), "b");
    assert_eq!(session.after(supplied(true)).trouble, None);
}

#[test]
fn what_is_done_before_the_answer_comes_is_done_in_order_and_each_is_a_step_back() {
    let session = run([supplied(true)]).after(choose("a")).after(choose("b"));
    assert_eq!(session.ask(Reader::default()).edits.len(), 2);
    let both = answered(&session, None);
    assert_eq!((build_of(&both), build_of(&both.after(Action::Undo))), ("b", "a"));
    assert!(both.ask(Reader::default()).edits.is_empty());
}

#[test]
fn an_answer_about_a_build_that_is_gone_is_dropped() {
    let session = run([supplied(true), choose("a"), choose("b")]);
    let stale = Rc::new(session.after(choose("c")).ask(Reader::default()));
    let part = answered(&session, None).sheet.expect("it was answered");
    let back = session.after(Action::Undo);
    let after = back.after(Action::Said(Part::Sheet(Box::new(Sheet::clone(&part))), stale));
    assert_eq!(build_of(&after), "a", "undone is undone, whatever was under way");
}

#[test]
fn an_undo_before_the_answer_takes_back_what_has_not_been_answered() {
    let session = run([supplied(true), choose("a")]).after(choose("b")).after(Action::Undo);
    assert_eq!((build_of(&session), session.ask(Reader::default()).edits.len()), ("a", 0));
}

#[test]
fn an_entry_that_could_not_be_understood_is_said_until_the_next() {
    let at = Place { item: "a".into(), port: "rack".into(), what: "spread".into() };
    let entry = Edit::Enter { at, found: Entry::Number("twelve".into()), sure: false };
    let session = run([supplied(true), choose("a"), Action::Edit(entry)]);
    assert!(session.refused.is_some() && build_of(&session) == "a");
    assert!(session.after(Action::Correct).refused.is_none());
    assert!(answered(&session.after(choose("b")), None).refused.is_none());
}

#[test]
fn a_slider_is_tried_until_it_is_let_go() {
    let slide = |value| Edit::Slide(Slide::Ramps, value);
    let session = run([supplied(true), choose("a"), Action::Try(slide(1.0)), Action::Try(slide(2.0))]);
    assert_eq!(session.ask(Reader::default()).tried, Some(slide(2.0)));
    assert_eq!(session.address().link.as_deref(), Some("a"), "nothing is taken yet");
    assert_eq!(session.held(Slide::Ramps), Some(2.0), "the handle stays under the finger");
    let let_go = session.after(Action::Edit(slide(2.0)));
    assert_eq!((let_go.ask(Reader::default()).tried, let_go.ask(Reader::default()).edits), (None, vec![slide(2.0)]));
}

#[test]
fn a_language_that_is_not_to_be_had_leaves_english_and_says_so() {
    let session = run([Action::Speak(Lang::De), Action::Unspoken(Lang::De)]);
    assert_eq!(session.lang(), Some(Lang::En));
    assert_eq!(session.notice, Some(Notice::Unspoken(Lang::De)));
    assert_eq!(session.preferences.lang, Some(Lang::De), "it is asked for again at the next visit");
    assert_eq!(session.after(Action::Speak(Lang::De)).lang(), Some(Lang::De));
}

#[test]
fn going_back_in_the_page_can_be_undone() {
    let session = run([supplied(true), choose("a"), at(None)]);
    assert_eq!(build_of(&session), "");
    assert_eq!(build_of(&session.after(Action::Undo)), "a");
}

#[test]
fn edits_before_there_is_a_catalogue_do_nothing() {
    assert_eq!(run([choose("a")]).ask(Reader::default()), Ask::default());
}

#[test]
fn a_build_is_pinned_once_and_taken_away_again() {
    let session = run([supplied(true), choose("a"), Action::Pin, Action::Pin]);
    assert_eq!((session.look.pinned.len(), session.can_pin()), (1, false));
    let other = answered(&session.after(choose("b")), None).after(Action::Pin);
    assert_eq!(other.look.pinned, ["a", "b"]);
    assert_eq!(other.after(Action::Unpin(0)).after(Action::Unpin(7)).look.pinned, ["b"]);
    assert!(!run([supplied(true)]).can_pin(), "nothing is no build");
}

#[test]
fn what_is_found_on_an_unknown_unit_is_kept_until_another_kind_is_told() {
    let at = Place { what: "spread".into(), ..Place::default() };
    let kind = fitup_view::Kind::Length;
    let session = run([supplied(true), Action::Observe(at.clone(), kind, Entry::Number("4".into()))]);
    assert_eq!(session.look.observed.found.len(), 1);
    assert!(session.after(Action::Unobserve(at, kind)).look.observed.found.is_empty());
    assert!(session.after(Action::Connects(Some("pins".into()))).look.observed.found.is_empty());
}

fn noted(session: &Session, notes: &str) -> Action {
    Action::Write(Memo { notes: notes.into(), ..(**session.history.memo()).clone() })
}

#[test]
fn the_first_thing_done_begins_a_job_and_a_link_that_is_only_looked_at_does_not() {
    let known = [supplied(true), Action::KnowJobs(Vec::new(), 16)];
    let looked = run(known.clone().into_iter().chain([at(Some("b"))]));
    assert!(looked.job().is_none());
    let begun = answered(&looked.after(choose("c")), None);
    let job = begun.job().expect("something was done");
    assert_eq!((&*job.memo.id, &*job.build), ("11", "c"));
    // Where no jobs are kept there is none, whatever is done.
    assert!(run([supplied(true), choose("c")]).job().is_none());
}

#[test]
fn notes_are_undone_like_everything_else_and_starting_again_leaves_the_job_as_it_was() {
    let session = run([supplied(true), Action::KnowJobs(Vec::new(), 0), choose("b")]);
    let session = session.after(noted(&session, "left pin worn"));
    assert_eq!(session.job().map(|job| job.memo.notes), Some("left pin worn".into()));
    let undone = session.after(Action::Undo);
    assert_eq!((build_of(&undone), undone.job().map(|job| job.memo.notes)), ("b", Some(String::new())));
    let again = answered(&session.after(Action::Edit(Edit::Empty)), None);
    assert!(again.job().is_none() && again.history.memo().notes.is_empty());
    let other = answered(&again.after(choose("c")), None);
    assert_eq!(other.job().map(|job| (job.memo.id, job.memo.notes)), Some(("2".into(), String::new())));
    let back = other.after(Action::Undo).after(Action::Undo);
    assert_eq!(back.job().map(|job| (job.memo.id, job.memo.notes)), Some(("1".into(), "left pin worn".into())));
}

#[test]
fn a_job_is_opened_with_what_was_written_and_found_again_by_its_build() {
    let memo = Memo { id: "a".into(), name: "Mill".into(), ..Memo::default() };
    let job = Job { memo, build: "b".into(), ..Job::default() };
    let known = run([supplied(true), Action::KnowJobs(vec![job.clone()], 0), choose("c")]);
    let opened = answered(&known.after(Action::OpenJob("a".into())), None);
    assert_eq!((build_of(&opened), &*opened.history.memo().name), ("b", "Mill"));
    assert!(!opened.history.can_undo(), "another job is another beginning");
    let reloaded = run([Action::KnowJobs(vec![job], 0), supplied(true), at(Some("b"))]);
    assert_eq!(reloaded.history.memo().name, "Mill");
}

#[test]
fn a_deleted_job_is_brought_back_and_the_build_at_hand_stays() {
    let session = run([supplied(true), Action::KnowJobs(Vec::new(), 0), choose("b")]);
    let session = session.after(Action::JobKept(session.job().expect("a job")));
    let deleted = session.after(Action::DeleteJob("1".into()));
    assert_eq!((deleted.jobs().len(), build_of(&deleted)), (0, "b"));
    let back = deleted.after(Action::BringBack);
    assert_eq!((back.jobs().len(), back.deleted().is_none()), (1, true));
}

#[test]
fn a_build_kept_beside_is_there_once_and_comes_back_by_undo() {
    let session = run([supplied(true), Action::KnowJobs(Vec::new(), 0), choose("b")]);
    let kept = session.after(Action::KeepBuild).after(Action::KeepBuild);
    assert_eq!(kept.history.memo().kept.iter().map(|kept| &*kept.build).collect::<Vec<_>>(), ["b"]);
    let dropped = kept.after(Action::DropBuild(0)).after(Action::DropBuild(7));
    assert!(dropped.history.memo().kept.is_empty());
    assert_eq!(dropped.after(Action::Undo).history.memo().kept.len(), 1);
}

#[test]
fn that_nothing_is_kept_is_said_once() {
    let told = Session::default().after(Action::Tell(Some(Notice::NotKept)));
    assert_eq!(told.notice, Some(Notice::NotKept));
    let away = told.after(Action::Tell(None)).after(Action::Tell(Some(Notice::NotKept)));
    assert_eq!(away.notice, None);
}
