//! Which of the usual cautions go with an answer.

use crate::build::Build;
use crate::finding::{Caution, Finding};
use crate::item::{Catalogue, Implement, ImplementKind};

/// The cautions of an answer, each once, in the order they are shown: the planning aid always, those
/// that the findings carry, and those that the chosen items bring with them.
///
/// A roll-over bar brings its own; an implement those of hoisting, of raised parts and of slopes; one that oil or a shaft
/// drives that of oil under pressure or of turning shafts; one that goes into the ground that of excavations; a trailer those of ramps, tie-down and road limits. Which item brings which
/// is common practice, no source.
pub(crate) fn cautions(catalogue: &Catalogue, build: &Build, findings: &[Finding]) -> Vec<Caution> {
    let machine = build.choices.machine.map(|id| catalogue.machine(id));
    let implement = build.choices.implement.map(|id| catalogue.implement(id));
    let applies = |caution: Caution| match caution {
        Caution::PlanningAid => true,
        Caution::RollOverBarUp => machine.is_some_and(|machine| machine.roll_over_bar.is_some()),
        Caution::HydraulicPressure => implement.is_some_and(Implement::is_oil_driven),
        Caution::RotatingShafts => implement.is_some_and(Implement::is_shaft_driven),
        Caution::Hoisting => implement.is_some(),
        Caution::RaisedParts | Caution::Slopes => machine.is_some() && implement.is_some(),
        Caution::Excavations => implement
            .is_some_and(|implement| matches!(implement.kind, ImplementKind::DiggingArm | ImplementKind::Auger)),
        Caution::LoadingRamps | Caution::TieDown | Caution::RoadLimits => build.side.trailer.is_some(),
        Caution::ArmOnHitch | Caution::DrillingOrWelding | Caution::LightFrontAxle => false,
    };
    let carried = |caution: &Caution| findings.iter().any(|finding| finding.cautions.contains(caution));
    Caution::ALL.into_iter().filter(|caution| applies(*caution) || carried(caution)).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::build::{Choices, Side};
    use crate::finding::{Grade, Subject, Verdict};
    use crate::fit::judge::NothingAnswers;
    use crate::item::{Body, Implement, ImplementId, Mount, Role, TrailerId};

    fn catalogue(kind: ImplementKind) -> Catalogue {
        let implement = Implement::of(Body::default(), kind, Mount::Rack);
        Catalogue { implements: vec![implement], ..Catalogue::default() }
    }

    #[test]
    fn nothing_chosen_leaves_the_planning_aid() {
        assert_eq!(cautions(&Catalogue::default(), &Build::default(), &[]), [Caution::PlanningAid]);
    }

    #[test]
    fn what_goes_into_the_ground_and_a_trailer_bring_theirs() {
        let choices = Choices { implement: Some(ImplementId(0)), ..Choices::default() };
        let build = Build { choices, side: Side { trailer: Some(TrailerId(0)), ..Side::default() } };
        let told = cautions(&catalogue(ImplementKind::Auger), &build, &[]);
        assert_eq!(
            told,
            [
                Caution::PlanningAid,
                Caution::HydraulicPressure,
                Caution::Hoisting,
                Caution::Excavations,
                Caution::LoadingRamps,
                Caution::TieDown,
                Caution::RoadLimits
            ],
            "nothing but oil can drive an auger without a shaft, whatever else is not stated"
        );
        let told = cautions(&catalogue(ImplementKind::Flail), &build, &[]);
        assert!(!told.contains(&Caution::Excavations));
    }

    #[test]
    fn a_findings_caution_is_told_once_and_in_order() {
        let finding = |caution| {
            let fact = NothingAnswers { role: Role::Rack, port: String::new() };
            Finding::of(fact, Subject::Build, Verdict::CheckFirst, Grade::Drawing).caution(caution)
        };
        let findings =
            [finding(Caution::HydraulicPressure), finding(Caution::ArmOnHitch), finding(Caution::HydraulicPressure)];
        assert_eq!(
            cautions(&Catalogue::default(), &Build::default(), &findings),
            [Caution::PlanningAid, Caution::ArmOnHitch, Caution::HydraulicPressure]
        );
    }
}
