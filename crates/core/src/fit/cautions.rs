//! Which of the usual cautions go with an answer.

use crate::build::Build;
use crate::finding::{Caution, Finding};
use crate::item::{Catalogue, ImplementKind};

/// The cautions of an answer, each once, in the order they are shown: the planning aid always, those
/// that the findings carry, and those that the chosen items bring with them.
///
/// A roll-over bar brings its own; an implement that of raised parts and of slopes; one that goes into the
/// ground that of excavations; a trailer those of ramps, tie-down and road limits. Which item brings which
/// is common practice, no source.
pub(super) fn cautions(catalogue: &Catalogue, build: &Build, findings: &[Finding]) -> Vec<Caution> {
    let machine = build.machine.map(|id| catalogue.machine(id));
    let implement = build.implement.map(|id| catalogue.implement(id));
    let applies = |caution: Caution| match caution {
        Caution::PlanningAid => true,
        Caution::RollOverBarUp => machine.is_some_and(|machine| machine.roll_over_bar.is_some()),
        Caution::RaisedParts | Caution::Slopes => machine.is_some() && implement.is_some(),
        Caution::Excavations => implement
            .is_some_and(|implement| matches!(implement.kind, ImplementKind::DiggingArm | ImplementKind::Auger)),
        Caution::LoadingRamps | Caution::TieDown | Caution::RoadLimits => build.trailer.is_some(),
        Caution::ArmOnHitch | Caution::DrillingOrWelding | Caution::LightFrontAxle | Caution::HydraulicPressure => {
            false
        }
    };
    let carried = |caution: &Caution| findings.iter().any(|finding| finding.cautions.contains(caution));
    Caution::ALL.into_iter().filter(|caution| applies(*caution) || carried(caution)).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::finding::{Grade, Subject, Verdict};
    use crate::item::{Body, Implement, ImplementId, Mount, TrailerId};

    fn catalogue(kind: ImplementKind) -> Catalogue {
        let implement = Implement {
            body: Body::default(),
            kind,
            mount: Mount::Rack,
            arm: None,
            console: None,
            worked_from_seat: false,
            hydraulics: None,
            power_least: None,
            power_most: None,
            own_seat: false,
            transport_width: None,
        };
        Catalogue { implements: vec![implement], ..Catalogue::default() }
    }

    #[test]
    fn nothing_chosen_leaves_the_planning_aid() {
        assert_eq!(cautions(&Catalogue::default(), &Build::default(), &[]), [Caution::PlanningAid]);
    }

    #[test]
    fn what_goes_into_the_ground_and_a_trailer_bring_theirs() {
        let build = Build { implement: Some(ImplementId(0)), trailer: Some(TrailerId(0)), ..Build::default() };
        let told = cautions(&catalogue(ImplementKind::Auger), &build, &[]);
        assert_eq!(
            told,
            [Caution::PlanningAid, Caution::Excavations, Caution::LoadingRamps, Caution::TieDown, Caution::RoadLimits]
        );
        let told = cautions(&catalogue(ImplementKind::Flail), &build, &[]);
        assert!(!told.contains(&Caution::Excavations));
    }

    #[test]
    fn a_findings_caution_is_told_once_and_in_order() {
        let finding = |caution| {
            Finding::new("holes-need-drilling", Subject::Build, Verdict::BoltsUpWithWork, Grade::Drawing)
                .caution(caution)
        };
        let findings =
            [finding(Caution::HydraulicPressure), finding(Caution::ArmOnHitch), finding(Caution::HydraulicPressure)];
        assert_eq!(
            cautions(&Catalogue::default(), &Build::default(), &findings),
            [Caution::PlanningAid, Caution::ArmOnHitch, Caution::HydraulicPressure]
        );
    }
}
