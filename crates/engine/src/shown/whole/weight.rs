//! What stands on the axles, the ballast that mends it, and how far the ground may lean.

use fitup_core::build::Build;
use fitup_core::dimension::{TipAngles, TipEdge};
use fitup_core::finding::{Caution, Question, Verdict};
use fitup_core::fit::{Answer, QuestionAnswer, RatedLoad, Weight, tip, weight as weigh};
use fitup_core::quantity::{Angle, Length, Mass};
use fitup_drawing::{Subject, support};
use fitup_view::{Fact, Look, Slide, Slider, Whole};

use super::bare;
use crate::change::ballast_place;
use crate::shown::Ctx;
use crate::shown::ctx::verdict;
use crate::shown::picture::drawn;

/// Most ballast that is tried, kilograms, and the step: weights as they are sold.
const BALLAST: (f64, f64, f64) = (0.0, 250.0, 5.0);
/// Where ballast is tried, millimetres ahead of the rear axle, and the step.
const PLACE: (f64, f64, f64) = (-1500.0, 2600.0, 10.0);

/// The view.
pub fn weight(ctx: Ctx, (build, tried): (&Build, &Build), answer: &Answer, look: &Look) -> Whole {
    let hung = tried.ballast();
    // Tried without any, it comes back to where it hung.
    let wanted = hung.or_else(|| build.ballast()).map(|(_, x)| x).or_else(|| ballast_place(look));
    let Some(found) = weigh(ctx.desk, tried, wanted) else {
        return bare(ctx, "ui-weight-none", None);
    };
    let leaning = tip(ctx.desk, tried).and_then(|tip| tip.angles);
    let subject = Subject::new(ctx.catalogue(), tried, &answer.stack);
    Whole {
        picture: drawn(ctx, answer, look.room, |sheet| Some(support(&subject, found.loads.as_ref(), sheet))),
        sliders: found.ballast_at.map(|at| sliders(ctx, hung, at)).into_iter().flatten().collect(),
        facts: figures(ctx, &found, leaning, answer.to(Question::Work)),
        aside: Some(ctx.words.caution(Caution::Slopes)),
        ..Whole::default()
    }
}

/// How much ballast and where. The place of ballast that hangs is the build's; where nothing hangs it is only looked at.
fn sliders(ctx: Ctx, hung: Option<(Mass, Length)>, at: Length) -> [Slider; 2] {
    let mass = hung.map_or(Mass::ZERO, |(mass, _)| mass);
    let one = |sets, key: &str, shown, (least, most, step): (f64, f64, f64), value| Slider {
        sets,
        looks_only: sets == Slide::BallastPlace && hung.is_none(),
        name: ctx.text(key),
        shown,
        least,
        most,
        step,
        value,
    };
    [
        one(Slide::BallastMass, "ui-ballast", ctx.words.reader().mass(mass), BALLAST, mass.kg()),
        one(Slide::BallastPlace, "ui-ballast-place", ctx.length(at), PLACE, at.mm()),
    ]
}

fn figures(ctx: Ctx, found: &Weight, leaning: Option<TipAngles>, work: &QuestionAnswer) -> Vec<Fact> {
    // A share that is short asks for no more than the answer to work does.
    let worst = Some(work.worst).filter(|&worst| worst > Verdict::BoltsUp).map(verdict);
    let reader = ctx.words.reader();
    let mass = |mass: Mass| reader.mass(mass);
    let axle = |key: &str, axle: RatedLoad| Fact {
        name: ctx.text(key),
        value: axle.load.map(mass),
        against: axle.rated.map(|it| ctx.text_with("ui-of-rated", &[("rated", mass(it).into())])),
        out: (axle.is_over() || axle.lifts()).then(|| verdict(Verdict::WontMount)),
    };
    let mut figures = vec![axle("ui-front-axle", found.front), axle("ui-rear-axle", found.rear)];
    for rule in &found.rules {
        let needs = rule.ballast.filter(|_| !rule.is_met());
        figures.push(Fact {
            name: ctx.text(&format!("ui-{}", rule.rule)),
            value: Some(reader.share(rule.share)),
            against: Some(match needs {
                Some(ballast) => ctx.text_with("ui-needs-ballast", &[("ballast", mass(ballast).into())]),
                None => ctx.text_with("ui-at-least", &[("least", reader.share(rule.least).into())]),
            }),
            out: worst.filter(|_| !rule.is_met()),
        });
    }
    for (key, side) in [("ui-tip-side", TipEdge::Left), ("ui-tip-rear", TipEdge::Rear)] {
        let slope = leaning.and_then(|angles| angles.slope(side));
        figures.push(Fact {
            name: ctx.text(key),
            value: slope.map(|slope| reader.angle(Angle::from_rad(slope))),
            against: Some(ctx.text("ui-standing-still")),
            out: None,
        });
    }
    figures
}
