//! What is done to the machine as it stands, a phrase a step.

use fitup_core::build::{Change, SeatStands};
use fitup_core::finding::{Finding, Subject};
use fitup_core::fit::{StripList, StripStep, StripWhat};
use fitup_core::item::{Catalogue, ItemRef};

use crate::words::{Arg, Words};

impl Words {
    /// One step of the strip list.
    pub fn strip_step(&self, catalogue: &Catalogue, step: &StripStep) -> String {
        let change = |change: Change| self.change(catalogue, &change);
        let item = |key: &str, of| self.ui(key, &[("item", Arg::from(self.item(catalogue, of)))]);
        match &step.what {
            StripWhat::TakeOff(what) => change(Change::TakeOff(*what)),
            StripWhat::PutOn(what) => change(Change::PutOn(*what)),
            StripWhat::Stays(what) => {
                self.ui("strip-stays", &[("what", Arg::from(self.item(catalogue, ItemRef::Equipment(*what))))])
            }
            StripWhat::OwnSeatOff(of) => item("strip-own-seat", *of),
            StripWhat::Holes(finding) => self.holes_made(catalogue, finding),
            StripWhat::Fit(of) => item("strip-fit", *of),
            StripWhat::FoldBar => change(Change::FoldRollOverBar),
            StripWhat::DriverSeat(SeatStands { state, .. }) => change(Change::DriverSeat(*state)),
            StripWhat::RearSeat(SeatStands { state, .. }) => change(Change::RearSeat(*state)),
        }
    }

    /// Which holes are made, and on which joint.
    fn holes_made(&self, catalogue: &Catalogue, finding: &Finding) -> String {
        let short = self.short(catalogue, finding);
        let Subject::Joint(role, ..) = finding.subject else { return short };
        format!("{short} ({})", self.role(role))
    }

    /// The workshop time of a step; nothing where none is needed, a word where it is not known.
    pub fn strip_hours(&self, step: &StripStep) -> Option<String> {
        match step.hours {
            None => Some(self.ui("strip-hours-unknown", &[])),
            Some(hours) if hours.hours() > 0.0 => Some(self.reader().work(hours)),
            Some(_) => None,
        }
    }

    /// The workshop time of all steps, *at least* where some is not known.
    pub fn strip_total(&self, list: &StripList) -> String {
        let (stated, is_least) = list.total();
        let stated = self.reader().work(stated);
        if is_least { self.ui("strip-at-least", &[("work", stated.into())]) } else { stated }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{Lang, Units};
    use fitup_core::item::{Body, Equipment, EquipmentId, SeatState};
    use fitup_core::quantity::Work;

    #[test]
    fn what_is_not_known_makes_the_total_a_least_one() {
        let words = Words::new(Lang::En, Units::Metric);
        let folded = StripWhat::DriverSeat(SeatStands { state: SeatState::Folded, ..SeatStands::default() });
        let by_hand = StripStep { what: folded, hours: Some(Work::ZERO) };
        let stated = StripStep { what: StripWhat::TakeOff(EquipmentId(0)), hours: Some(Work::from_hours(1.5)) };
        let open = StripStep { what: StripWhat::PutOn(EquipmentId(0)), hours: None };
        let body = Body { label: "Belly mower".to_owned(), ..Body::default() };
        let equipment = vec![Equipment { body, ..Equipment::default() }];
        let catalogue = Catalogue { equipment, ..Catalogue::default() };
        assert_eq!(words.strip_step(&catalogue, &by_hand), "Fold the operator’s seat forward to work");
        assert_eq!(words.strip_step(&catalogue, &stated), "Take off: Belly mower");
        assert_eq!(words.strip_hours(&by_hand), None);
        assert_eq!(words.strip_hours(&open).as_deref(), Some("hours not stated"));
        let known = StripList { steps: vec![by_hand, stated] };
        let mut part = known.clone();
        part.steps.push(open);
        let total = words.strip_total(&known);
        assert_eq!(words.strip_total(&part), format!("at least {total}"));
    }
}
