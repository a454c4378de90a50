//! Remedies in words: what to do, and what it comes to.

use fitup_core::build::Change;
use fitup_core::finding::{Finding, Question, Verdict};
use fitup_core::fit::Answer;
use fitup_core::item::{Catalogue, ItemRef};
use fitup_core::quantity::{Angle, Length, Money, Work};
use fitup_core::search::{NoRemedy, RankedCheck, Remedy, RemedyStep};

use crate::figure::NONE;
use crate::{Arg, LengthStyle, Span, Words, text};

/// Changes from half a millimetre are told: that is what the figure is written to.
const SHOWN_MM: f64 = 0.5;
/// Changes from a twentieth of a degree are told: that is what the figure is written to.
const SHOWN_DEG: f64 = 0.05;

impl Words {
    /// What a remedy does, a phrase for each step.
    pub fn remedy_steps(&self, catalogue: &Catalogue, remedy: &Remedy) -> Vec<String> {
        let with_item = |key: &str, item: ItemRef| self.ui(key, &[("item", self.item(catalogue, item).into())]);
        let step = |step: &RemedyStep| match step {
            RemedyStep::Adapter(id) => with_item("remedy-adapter", ItemRef::Adapter(*id)),
            RemedyStep::Seat(id) => with_item("remedy-seat", ItemRef::Seat(*id)),
            RemedyStep::Carry(carrying) => match carrying.frame() {
                Some(id) => with_item("remedy-frame", ItemRef::Frame(id)),
                None => self.ui("remedy-hitch", &[]),
            },
            RemedyStep::Change(change) => self.change(catalogue, change),
        };
        remedy.steps.iter().map(step).collect()
    }

    /// Work decided on, in a phrase.
    pub fn change(&self, catalogue: &Catalogue, change: &Change) -> String {
        let reader = self.reader();
        let item = |item: &ItemRef| Arg::from(self.item(catalogue, *item));
        let label = |words: &str| Arg::from(Span::Label(words.to_owned()));
        match change {
            Change::Drill { item: of, port } => self.ui("remedy-drill", &[("port", label(port)), ("item", item(of))]),
            Change::OpenUp { item: of, port, by } => {
                let by = reader.length(*by, LengthStyle::Fine);
                self.ui("remedy-open-up", &[("port", label(port)), ("item", item(of)), ("by", by.into())])
            }
            Change::DriverSeat(state) => {
                self.ui("remedy-driver-seat", &[("state", Arg::Choice(state.word().to_owned()))])
            }
            Change::RearSeat(state) => self.ui("remedy-rear-seat", &[("state", Arg::Choice(state.word().to_owned()))]),
            Change::FoldRollOverBar => self.ui("remedy-fold-roll-over-bar", &[]),
            Change::TakeOff(what) => self.ui("remedy-take-off", &[("what", item(&ItemRef::Equipment(*what)))]),
            Change::PutOn(what) => self.ui("remedy-put-on", &[("what", item(&ItemRef::Equipment(*what)))]),
            Change::Ramps { length } => {
                self.ui("remedy-ramps", &[("length", reader.length(*length, LengthStyle::Needed).into())])
            }
            Change::Gateway { width } => {
                self.ui("remedy-gateway", &[("width", reader.length(*width, LengthStyle::Needed).into())])
            }
            Change::Path { width } => {
                self.ui("remedy-path", &[("width", reader.length(*width, LengthStyle::Needed).into())])
            }
            Change::Ballast { mass, x } => {
                let key = if *x < Length::ZERO { "remedy-ballast-behind" } else { "remedy-ballast" };
                let place = reader.length(x.abs(), LengthStyle::Drawn);
                self.ui(key, &[("mass", reader.mass_needed(*mass).into()), ("x", place.into())])
            }
        }
    }

    /// What a remedy comes to, a phrase each: what is to buy more or less, workshop time, length, departure angle.
    /// What does not change is not said.
    pub fn remedy_effect(&self, catalogue: &Catalogue, remedy: &Remedy) -> Vec<String> {
        let reader = self.reader();
        let mut said = Vec::new();
        match remedy.buy_more {
            None => said.push(self.ui("remedy-price-open", &[])),
            Some(more) if more.hundredths() > 0 => {
                said.push(self.ui("remedy-costs", &[("money", reader.money(more, &catalogue.name.currency).into())]));
            }
            Some(less) if less.hundredths() < 0 => {
                let less = Money::from_hundredths(less.hundredths().saturating_neg());
                said.push(self.ui("remedy-saves", &[("money", reader.money(less, &catalogue.name.currency).into())]));
            }
            Some(_) => {}
        }
        if remedy.work_more.hours().abs() > 0.0 {
            let work = reader.work(Work::from_hours(remedy.work_more.hours().abs()));
            said.push(self.ui("remedy-takes", &[("work", work.into()), ("way", way(remedy.work_more.hours()))]));
        }
        if let Some(more) = remedy.length_more.filter(|more| more.mm().abs() >= SHOWN_MM) {
            let length = reader.length(more.abs(), LengthStyle::Drawn);
            said.push(self.ui("remedy-length", &[("length", length.into()), ("way", way(more.mm()))]));
        }
        if let Some(more) = remedy.departure_more.filter(|more| more.deg().abs() >= SHOWN_DEG) {
            let change = reader.angle(Angle::from_deg(more.deg().abs()));
            said.push(self.ui("remedy-departure", &[("change", change.into()), ("way", way(more.deg()))]));
        }
        said
    }

    /// What a remedy does away with, a short title for each finding; nothing if no finding goes.
    pub fn remedy_settles(&self, catalogue: &Catalogue, remedy: &Remedy) -> Option<String> {
        self.titles(catalogue, &remedy.settles, "remedy-settles")
    }

    /// What stays open or in the way with it; nothing where no more than work is left.
    pub fn remedy_leaves(&self, catalogue: &Catalogue, remedy: &Remedy) -> Option<String> {
        let is_open = remedy.leaves.iter().any(|finding| finding.verdict > Verdict::BoltsUpWithWork);
        is_open.then(|| self.titles(catalogue, &remedy.leaves, "remedy-leaves")).flatten()
    }

    fn titles(&self, catalogue: &Catalogue, findings: &[Finding], key: &str) -> Option<String> {
        let mut titles: Vec<String> = Vec::new();
        for title in findings.iter().map(|finding| self.short(catalogue, finding)) {
            let title = self.ui("quoted", &[("title", title.into())]);
            if !titles.contains(&title) {
                titles.push(title);
            }
        }
        (!titles.is_empty()).then(|| self.ui(key, &[("findings", self.reader().list(&titles).into())]))
    }

    /// What a remedy leads to: the answers that it changes, and the one that decides.
    pub fn remedy_then(&self, before: &Answer, after: &Answer) -> String {
        let changed = |question: &Question| {
            let verdict = after.to(*question).verdict();
            verdict.is_some() && verdict != before.to(*question).verdict()
        };
        // What decides is told, too, where it is not yet a plain yes: else a part would pass for the whole.
        let deciding = after.deciding();
        let is_told = |it: &Question| changed(it) || (*it == deciding.question && after.verdict > Verdict::BoltsUp);
        let mut told: Vec<Question> = Question::ALL.into_iter().filter(is_told).collect();
        if told.is_empty() {
            told.push(deciding.question);
        }
        let several = told.len() > 1;
        let say = |question: Question| {
            let answer = self.answer_of(after, question);
            if !several {
                return answer;
            }
            self.ui("answer-to", &[("answer", answer.into()), ("question", self.question(question).into())])
        };
        let said: Vec<String> = told.into_iter().map(say).collect();
        self.ui("remedy-leads-to", &[("verdict", self.reader().list(&said).into())])
    }

    /// What stays as it is with a remedy, a phrase each.
    pub fn remedy_same(&self, remedy: &Remedy) -> Vec<String> {
        let mut said = Vec::new();
        // Ramps, ballast and what a frame asks for are no items of the catalogue.
        let is_priced = |step: &RemedyStep| {
            use Change::{Ballast, PutOn, Ramps};
            !matches!(step, RemedyStep::Change(Ramps { .. } | Ballast { .. } | PutOn(_)))
        };
        if remedy.buy_more == Some(Money::ZERO) {
            let key = if remedy.steps.iter().all(is_priced) { "remedy-same-price" } else { "remedy-price-elsewhere" };
            said.push(self.ui(key, &[]));
        }
        let is_long_as_before = remedy.length_more.is_some_and(|more| more.mm().abs() < SHOWN_MM);
        let is_steep_as_before = remedy.departure_more.is_some_and(|more| more.deg().abs() < SHOWN_DEG);
        if is_long_as_before && is_steep_as_before {
            said.push(self.ui("remedy-same-size", &[]));
        }
        said
    }

    /// Why there is no remedy; nothing where none is needed.
    pub fn no_remedy(&self, why: NoRemedy) -> Option<String> {
        let key = match why {
            NoRemedy::NotNeeded => return None,
            NoRemedy::NotChosenYet => "ui-remedies-not-chosen",
            NoRemedy::ChecksDecide => "ui-remedies-checks",
            NoRemedy::NotAllTried => "ui-remedies-not-all-tried",
            NoRemedy::NothingHelps => "ui-remedies-none",
        };
        Some(self.ui(key, &[]))
    }

    /// A ranked check in a sentence, with what hangs on it, where something does.
    pub fn ranked_check(&self, catalogue: &Catalogue, ranked: &RankedCheck) -> (String, Option<String>) {
        let stakes = ranked.stakes.filter(|stakes| stakes.best != stakes.now || stakes.worst != stakes.now);
        let stakes = stakes.map(|stakes| {
            let answer = |verdict| Arg::from(self.answer(stakes.question, Some(verdict)));
            let other = if stakes.worst == stakes.best { Arg::Choice(NONE.to_owned()) } else { answer(stakes.worst) };
            let now = answer(stakes.now);
            let question = self.question(stakes.question).into();
            self.ui(
                "check-stakes",
                &[("question", question), ("now", now), ("best", answer(stakes.best)), ("worst", other)],
            )
        });
        (text(&self.check(catalogue, &ranked.check)), stakes)
    }
}

/// Whether a change is one to more or to less.
fn way(change: f64) -> Arg {
    Arg::Choice(if change < 0.0 { "less" } else { "more" }.to_owned())
}

#[cfg(test)]
mod tests {
    use fitup_core::build::Build;
    use fitup_core::finding::{Asked, Check, Grade, Question, SettlingParts, Subject};
    use fitup_core::item::{Adapter, AdapterId, Body, Equipment, EquipmentId, SeatState};
    use fitup_core::quantity::Mass;
    use fitup_core::search::{Chance, Stakes};
    use fitup_yard::finding;

    use super::*;
    use crate::{Lang, Units};

    fn remedy(steps: Vec<RemedyStep>) -> Remedy {
        Remedy {
            steps,
            build: Build::default(),
            verdict: Verdict::BoltsUp,
            settles: Vec::new(),
            leaves: Vec::new(),
            buy_more: Some(Money::from_hundredths(12_000)),
            work_more: Work::from_hours(1.5),
            length_more: Some(Length::from_mm(85.0)),
            departure_more: Some(Angle::from_deg(-2.04)),
        }
    }

    #[test]
    fn a_remedy_says_what_to_do_and_what_it_comes_to() {
        let words = Words::new(Lang::En, Units::Metric);
        let mut catalogue = Catalogue::default();
        catalogue.name.currency = "USD".to_owned();
        let body = Body { label: "Belly mower".to_owned(), ..Body::default() };
        catalogue.equipment = vec![Equipment { body, ..Equipment::default() }];
        let ballast = Change::Ballast { mass: Mass::from_kg(60.0), x: Length::from_mm(2100.0) };
        let told = remedy(vec![RemedyStep::Change(Change::TakeOff(EquipmentId(0))), RemedyStep::Change(ballast)]);
        assert_eq!(
            words.remedy_steps(&catalogue, &told),
            ["Take off: Belly mower", "Fit 60\u{a0}kg of ballast 2,100\u{a0}mm ahead of the rear axle"]
        );
        assert_eq!(
            words.remedy_effect(&catalogue, &told),
            ["$120 more to buy", "1.5\u{a0}h more work", "85\u{a0}mm longer", "departure angle 2.0° smaller"]
        );
    }

    #[test]
    fn a_remedy_says_what_it_settles_and_what_it_leaves_open() {
        let words = Words::new(Lang::En, Units::Metric);
        let catalogue = Catalogue::default();
        let open_of = |code| finding(code, Subject::Build, Verdict::CheckFirst, Grade::Drawing, &[]);
        let open = Remedy {
            verdict: Verdict::CheckFirst,
            settles: vec![open_of("joint-same-part"), open_of("joint-same-part")],
            leaves: vec![open_of("hydraulics-unknown"), open_of("holes-unknown")],
            ..remedy(Vec::new())
        };
        assert_eq!(words.remedy_settles(&catalogue, &open).unwrap(), "Does away with: “Same parts as a listed set”");
        let left = "Still open: “Hydraulics data missing” and “Bolt hole data missing”";
        assert_eq!(words.remedy_leaves(&catalogue, &open).unwrap(), left);
        let bolts_up = Remedy { verdict: Verdict::BoltsUpWithWork, settles: Vec::new(), leaves: Vec::new(), ..open };
        assert_eq!(
            (words.remedy_settles(&catalogue, &bolts_up), words.remedy_leaves(&catalogue, &bolts_up)),
            (None, None)
        );
    }

    #[test]
    fn why_there_is_no_remedy_is_said_unless_none_is_needed() {
        let words = Words::new(Lang::En, Units::Metric);
        assert_eq!(words.no_remedy(NoRemedy::NotNeeded), None);
        let said = |why| words.no_remedy(why).unwrap();
        assert_eq!(said(NoRemedy::NothingHelps), "No adapter, seat, frame or work in this catalogue helps.");
        assert_eq!(said(NoRemedy::ChecksDecide), "No change settles this. The checks do: measure, look or ask first.");
        assert_eq!(said(NoRemedy::NotChosenYet), "Not everything is chosen yet. The open steps decide first.");
        assert_eq!(
            said(NoRemedy::NotAllTried),
            "Nothing was found that helps; not everything in this catalogue was tried."
        );
    }

    fn the_spacer() -> ItemRef {
        ItemRef::Adapter(AdapterId::at(0))
    }

    fn spacer() -> Catalogue {
        let body = Body { label: "Rack spacer".to_owned(), ..Body::default() };
        let adapter = Adapter { body, work: Work::ZERO, sleeve: None };
        Catalogue { adapters: vec![adapter], ..Catalogue::default() }
    }

    #[test]
    fn dimensions_that_settle_together_are_asked_for_together_by_port_and_accuracy() {
        let (words, catalogue) = (Words::new(Lang::En, Units::Metric), spacer());
        let asked = |port: &str, dimension: &str, within: f64| Asked {
            item: the_spacer(),
            port: port.to_owned(),
            dimension: dimension.to_owned(),
            within: Length::from_mm(within),
        };
        let say = |all: Vec<Asked>| text(&words.check(&catalogue, &Check::MeasureAll(all)));
        assert_eq!(
            say(vec![asked("hooks", "drop", 0.5)]),
            "Measure: Rack spacer, hooks, hook centre down to latch pin, to ±0.5\u{a0}mm (a tape will do)."
        );
        assert_eq!(
            say(vec![asked("hooks", "drop", 0.1), asked("bar", "spread", 1.5), asked("hooks", "latch", 0.1)]),
            "Measure all of these: Rack spacer, hooks: hook centre down to latch pin and latch pin diameter, to \
             ±0.1\u{a0}mm (use a caliper). Measure all of these: Rack spacer, bar: spacing left to right, to ±1.5\u{a0}mm (a tape will do)."
        );
    }

    #[test]
    fn part_numbers_to_look_for_are_named_with_the_set_that_lists_them() {
        let (words, catalogue) = (Words::new(Lang::En, Units::Metric), spacer());
        let settling = |parts: &[&str]| SettlingParts {
            parts: parts.iter().map(|&number| number.to_owned()).collect(),
            witness: (the_spacer(), the_spacer()),
            guide_row: None,
        };
        let any_of = vec![settling(&["AX-1104"]), settling(&["AX-1", "AX-2"])];
        let check = Check::ReadParts { item: the_spacer(), port: "axle plate".to_owned(), any_of };
        assert_eq!(
            text(&words.check(&catalogue, &check)),
            "Read the part numbers: Rack spacer, axle plate. Any of these would prove it: “AX-1104”, “AX-1 + AX-2” \
             (listed with Rack spacer + Rack spacer)."
        );
    }

    #[test]
    fn a_check_that_comes_to_the_same_either_way_tells_no_best_case() {
        let words = Words::new(Lang::En, Units::Metric);
        let catalogue = spacer();
        let ranked = |stakes| RankedCheck {
            check: Check::Look { item: the_spacer(), what: "hooks".to_owned() },
            findings: vec![0],
            chance: Chance::AtEveryValue,
            settled_by: Vec::new(),
            stakes,
        };
        let told = |stakes| words.ranked_check(&catalogue, &ranked(stakes)).1;
        let stakes = |now, best, worst| Some(Stakes { question: Question::Fit, now, best, worst });
        let (open, no) = (Verdict::CheckFirst, Verdict::WontMount);
        assert_eq!(told(None), None);
        assert_eq!(told(stakes(no, no, no)), None);
        assert_eq!(
            told(stakes(open, Verdict::BoltsUp, Verdict::BoltsUp)).unwrap(),
            "Could move Fit from “Check first” to “Bolts up”."
        );
        assert_eq!(
            told(stakes(open, Verdict::BoltsUp, no)).unwrap(),
            "Could move Fit from “Check first” to “Bolts up” or to “Won’t mount”."
        );
    }

    #[test]
    fn what_does_not_change_is_not_said_and_an_unknown_price_is() {
        let words = Words::new(Lang::En, Units::Metric);
        let still = Remedy {
            buy_more: None,
            work_more: Work::ZERO,
            length_more: Some(Length::from_mm(0.2)),
            departure_more: Some(Angle::from_deg(0.04)),
            ..remedy(vec![RemedyStep::Change(Change::DriverSeat(SeatState::Folded))])
        };
        assert_eq!(words.remedy_effect(&Catalogue::default(), &still), ["price on request"]);
        assert_eq!(words.remedy_same(&still), ["same length and departure angle"]);
        let steeper = Remedy { departure_more: Some(Angle::from_deg(0.06)), ..still.clone() };
        assert!(words.remedy_same(&steeper).is_empty(), "said as a change");
        let free = Remedy { buy_more: Some(Money::ZERO), ..steeper };
        assert_eq!(words.remedy_same(&free), ["nothing more to buy"]);
        let ramps = RemedyStep::Change(Change::Ramps { length: Length::from_mm(1900.0) });
        let driven_over = Remedy { steps: vec![ramps], ..free };
        assert_eq!(words.remedy_same(&driven_over), ["its price is not in this catalogue"]);
        let mut catalogue = Catalogue::default();
        catalogue.name.currency = "USD".to_owned();
        let cheaper = Remedy { buy_more: Some(Money::from_hundredths(-38_500)), ..still };
        assert_eq!(words.remedy_effect(&catalogue, &cheaper), ["saves $385"]);
    }
}
