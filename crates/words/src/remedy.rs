//! Remedies in words: what to do, and what it comes to.

use fitup_core::build::Change;
use fitup_core::finding::{Finding, Verdict};
use fitup_core::item::{Catalogue, ItemRef};
use fitup_core::quantity::{Length, Money};
use fitup_core::search::{RankedCheck, Remedy, RemedyStep};

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
            Change::FrontSeatForward => self.ui("remedy-front-seat-forward", &[]),
            Change::FoldRollOverBar => self.ui("remedy-fold-roll-over-bar", &[]),
            Change::TakeOff(what) => self.ui("remedy-take-off", &[("what", label(what))]),
            Change::PutOn(what) => self.ui("remedy-put-on", &[("what", label(what))]),
            Change::Ramps { length } => {
                self.ui("remedy-ramps", &[("length", reader.length(*length, LengthStyle::Drawn).into())])
            }
            Change::Gateway { width } => {
                self.ui("remedy-gateway", &[("width", reader.length(*width, LengthStyle::Drawn).into())])
            }
            Change::Path { width } => {
                self.ui("remedy-path", &[("width", reader.length(*width, LengthStyle::Drawn).into())])
            }
            Change::Ballast { mass, x } => {
                let key = if *x < Length::ZERO { "remedy-ballast-behind" } else { "remedy-ballast" };
                let place = reader.length(x.abs(), LengthStyle::Drawn);
                self.ui(key, &[("mass", reader.mass(*mass).into()), ("x", place.into())])
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
                let more = reader.money_more(more, &catalogue.name.currency);
                said.push(self.ui("remedy-costs", &[("money", more.into())]));
            }
            Some(less) if less.hundredths() < 0 => {
                let less = Money::from_hundredths(less.hundredths().saturating_neg());
                said.push(self.ui("remedy-saves", &[("money", reader.money(less, &catalogue.name.currency).into())]));
            }
            Some(_) => {}
        }
        if remedy.work_more.hours().abs() > 0.0 {
            said.push(self.ui("remedy-takes", &[("work", reader.work_more(remedy.work_more).into())]));
        }
        if let Some(more) = remedy.length_more.filter(|more| more.mm().abs() >= SHOWN_MM) {
            let more = reader.length(more, LengthStyle::Change);
            said.push(self.ui("remedy-length", &[("length", more.into())]));
        }
        if let Some(more) = remedy.departure_more.filter(|more| more.deg().abs() >= SHOWN_DEG) {
            said.push(self.ui("remedy-departure", &[("change", reader.angle_more(more).into())]));
        }
        said
    }

    /// What a remedy does away with, a short title for each finding; nothing if no finding goes.
    pub fn remedy_settles(&self, catalogue: &Catalogue, remedy: &Remedy) -> Option<String> {
        self.titles(catalogue, &remedy.settles, "remedy-settles")
    }

    /// What stays open or in the way with it; nothing where it bolts up, with work or without.
    pub fn remedy_leaves(&self, catalogue: &Catalogue, remedy: &Remedy) -> Option<String> {
        let is_open = remedy.verdict > Verdict::BoltsUpWithWork;
        is_open.then(|| self.titles(catalogue, &remedy.leaves, "remedy-leaves")).flatten()
    }

    fn titles(&self, catalogue: &Catalogue, findings: &[Finding], key: &str) -> Option<String> {
        let mut titles: Vec<String> = Vec::new();
        for title in findings.iter().map(|finding| self.short(catalogue, finding)) {
            if !titles.contains(&title) {
                titles.push(title);
            }
        }
        (!titles.is_empty()).then(|| self.ui(key, &[("findings", titles.join("; ").into())]))
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

    /// A ranked check in a sentence, with what hangs on it.
    pub fn ranked_check(&self, catalogue: &Catalogue, ranked: &RankedCheck) -> (String, String) {
        let stakes = self.ui(
            "check-stakes",
            &[("best", self.verdict(ranked.at_best).into()), ("worst", self.verdict(ranked.at_worst).into())],
        );
        (text(&self.check(catalogue, &ranked.check)), stakes)
    }
}

#[cfg(test)]
mod tests {
    use fitup_core::build::Build;
    use fitup_core::finding::{Grade, Subject};
    use fitup_core::quantity::{Angle, Mass, Work};

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
        let ballast = Change::Ballast { mass: Mass::from_kg(60.0), x: Length::from_mm(2100.0) };
        let told = remedy(vec![RemedyStep::Change(Change::TakeOff("belly mower".into())), RemedyStep::Change(ballast)]);
        assert_eq!(
            words.remedy_steps(&catalogue, &told),
            ["Take off belly mower", "Hang 60\u{a0}kg of ballast 2,100\u{a0}mm ahead of the rear axle"]
        );
        assert_eq!(
            words.remedy_effect(&catalogue, &told),
            ["+$120 to buy", "+1.5\u{a0}h of work", "+85\u{a0}mm in length", "−2.0° of departure angle"]
        );
    }

    #[test]
    fn a_remedy_says_what_it_settles_and_what_it_leaves_open() {
        let words = Words::new(Lang::En, Units::Metric);
        let catalogue = Catalogue::default();
        let finding = |code| Finding::new(code, Subject::Build, Verdict::CheckFirst, Grade::Drawing);
        let open = Remedy {
            verdict: Verdict::CheckFirst,
            settles: vec![finding("pins-need-sleeve"), finding("pins-need-sleeve")],
            leaves: vec![finding("hydraulics-unknown"), finding("holes-unknown")],
            ..remedy(Vec::new())
        };
        assert_eq!(words.remedy_settles(&catalogue, &open).unwrap(), "Settles: Needs a sleeve");
        let left = "Still open: Hydraulics not stated; Bolt holes not stated";
        assert_eq!(words.remedy_leaves(&catalogue, &open).unwrap(), left);
        let bolts_up = Remedy { verdict: Verdict::BoltsUpWithWork, settles: Vec::new(), ..open };
        assert_eq!(
            (words.remedy_settles(&catalogue, &bolts_up), words.remedy_leaves(&catalogue, &bolts_up)),
            (None, None)
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
            ..remedy(vec![RemedyStep::Change(Change::FrontSeatForward)])
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
