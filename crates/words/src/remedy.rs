//! Remedies in words: what to do, and what it comes to.

use fitup_core::build::Change;
use fitup_core::item::{Catalogue, ItemRef};
use fitup_core::quantity::{Length, Money};
use fitup_core::search::{RankedCheck, Remedy, RemedyStep};

use crate::{Arg, LengthStyle, Span, Words, text};

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

    /// What a remedy comes to, a phrase each: what is to buy more or less, workshop time, length.
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
        // Half a millimetre is what the figure is written to.
        if let Some(more) = remedy.length_more.filter(|more| more.mm().abs() >= 0.5) {
            let more = reader.length(more, LengthStyle::Change);
            said.push(self.ui("remedy-length", &[("length", more.into())]));
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
    use fitup_core::finding::Verdict;
    use fitup_core::quantity::{Mass, Work};

    use super::*;
    use crate::{Lang, Units};

    fn remedy(steps: Vec<RemedyStep>) -> Remedy {
        Remedy {
            steps,
            build: Build::default(),
            verdict: Verdict::BoltsUp,
            buy_more: Some(Money::from_hundredths(12_000)),
            work_more: Work::from_hours(1.5),
            length_more: Some(Length::from_mm(85.0)),
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
            ["+$120 to buy", "+1.5\u{a0}h of work", "+85\u{a0}mm in length"]
        );
    }

    #[test]
    fn what_does_not_change_is_not_said_and_an_unknown_price_is() {
        let words = Words::new(Lang::En, Units::Metric);
        let still = Remedy {
            buy_more: None,
            work_more: Work::ZERO,
            length_more: Some(Length::from_mm(0.2)),
            ..remedy(vec![RemedyStep::Change(Change::FrontSeatForward)])
        };
        assert_eq!(words.remedy_effect(&Catalogue::default(), &still), ["price on request"]);
        let mut catalogue = Catalogue::default();
        catalogue.name.currency = "USD".to_owned();
        let cheaper = Remedy { buy_more: Some(Money::from_hundredths(-38_500)), ..still };
        assert_eq!(words.remedy_effect(&catalogue, &cheaper), ["saves $385"]);
    }
}
