//! Complete sets in words: what each is of, and what it comes to.

use fitup_core::build::{Build, Carrying};
use fitup_core::item::{Catalogue, Role};
use fitup_core::search::{Set, SetOrder};

use crate::{LengthStyle, Words, verdict_key};

impl Words {
    /// The items of a build by their labels; the bare hitch stands where a frame would.
    pub fn items_of(&self, catalogue: &Catalogue, build: &Build) -> String {
        let items = build.items();
        let (machine, others) = items.split_at(usize::from(build.choices.machine.is_some()));
        let mut named: Vec<String> = machine.iter().map(|&item| catalogue.body(item).label.clone()).collect();
        if build.choices.carrying == Carrying::Hitch {
            named.push(self.role(Role::Hitch));
        }
        named.extend(others.iter().map(|&item| catalogue.body(item).label.clone()));
        named.join(" + ")
    }

    /// What sets are ordered by, as what is ordered is called.
    pub fn set_order(&self, order: SetOrder) -> String {
        self.ui(
            match order {
                SetOrder::Price => "footprint-to-buy",
                SetOrder::Length => "footprint-length",
                SetOrder::Departure => "footprint-departure",
                SetOrder::Hours => "ui-work-time",
                SetOrder::OnHand => "sets-items-to-buy",
            },
            &[],
        )
    }

    /// What a set comes to: names and values, in the order of [`SetOrder::ALL`].
    pub fn set_measures(&self, catalogue: &Catalogue, set: &Set) -> Vec<(String, String)> {
        let (reader, measures) = (self.reader(), &set.measures);
        let (money, open) = measures.price;
        let money = reader.money(money, &catalogue.name.currency);
        let price = match open {
            0 => money,
            open => self.ui("total-at-least", &[("known", money.into()), ("open", open.into())]),
        };
        let unknown = || self.ui("ui-not-known", &[]);
        let length = measures.length.map_or_else(unknown, |length| reader.length(length, LengthStyle::Drawn));
        let departure = measures.departure.map_or_else(unknown, |angle| reader.angle(angle));
        let (work, is_least) = measures.hours;
        let work = reader.work(work);
        let hours = if is_least { self.ui("strip-at-least", &[("work", work.into())]) } else { work };
        let values = [price, length, departure, hours, measures.to_buy.to_string()];
        SetOrder::ALL.into_iter().map(|order| self.set_order(order)).zip(values).collect()
    }

    /// A set in lines: its answer, its items, what it comes to.
    pub fn set_lines(&self, catalogue: &Catalogue, set: &Set) -> Vec<String> {
        let answer = self.ui(verdict_key(set.verdict), &[]);
        let answer = if set.is_unbeaten { self.clauses(&[answer, self.ui("sets-unbeaten", &[])]) } else { answer };
        let measures = self.set_measures(catalogue, set);
        let comes_to: Vec<String> = measures.iter().map(|(name, value)| self.labelled(name, value)).collect();
        vec![answer, self.items_of(catalogue, &set.build), self.clauses(&comes_to)]
    }
}

#[cfg(test)]
mod tests {
    use fitup_core::fit::Desk;
    use fitup_core::search::Searcher;
    use fitup_yard::Yard;

    use super::*;
    use crate::{Lang, Units};

    #[test]
    fn a_set_tells_its_answer_its_items_and_what_it_comes_to() {
        let yard = Yard::new();
        let desk = Desk::new(yard.catalogue.clone());
        let found = Searcher::new(&desk).sets(&yard.build, SetOrder::Price);
        let lines = Words::new(Lang::En, Units::Metric).set_lines(&yard.catalogue, &found.found[0]);
        assert_eq!(lines[1], "Hedge tractor + Long frame + Rear seat + Digging arm");
        assert!(lines[0].ends_with("; nothing beats it"), "{lines:?}");
        assert!(lines[2].contains("Overall length") && lines[2].contains("Items to buy: 4"), "{lines:?}");
        for lang in Lang::ALL {
            let lines = Words::new(lang, Units::Us).set_lines(&yard.catalogue, &found.found[0]);
            assert!(lines.iter().all(|line| !line.contains("sets-")), "{lines:?}");
        }
    }
}
