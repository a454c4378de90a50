//! What stands on the axles, the ballast that mends it, and how far the ground may lean.

use fitup_core::build::Build;
use fitup_core::dimension::Side;
use fitup_core::fit::{Answer, RatedLoad, tip, weight};
use fitup_core::quantity::{Angle, Length, Mass};
use fitup_drawing::{Subject, support};
use yew::prelude::*;

use super::facts::Figure;
use super::frame::{Frame, bare, frame};
use super::slider::{Slider, slider};
use crate::ctx::{Ctx, use_ctx};
use crate::hooks::{use_room, use_trial};
use crate::picture;
use crate::same::Same;
use crate::say;
use crate::state::Edit;

/// Most ballast that is tried, kilograms, and the step: weights as they are sold.
const BALLAST: (f64, f64, f64) = (0.0, 250.0, 5.0);

#[derive(Properties, PartialEq)]
pub struct WeightProps {
    /// The answer.
    pub answer: Same<Answer>,
    /// The build.
    pub build: Same<Build>,
}

/// The view.
#[component]
pub fn Weight(props: &WeightProps) -> Html {
    let ctx = use_ctx();
    let node = use_node_ref();
    let room = use_room(&node);
    let place = use_state_eq(|| None::<Length>);
    let (build, live, done) = use_trial(&ctx, &props.build);
    let hung = build.ballast();
    let wanted = hung.map(|(_, x)| x).or(*place);
    let Some(found) = weight(&ctx.desk, &build, wanted) else {
        return bare(&ctx, &node, "ui-weight-none", None);
    };
    let leaning = tip(&ctx.desk, &build).and_then(|tip| tip.angles);
    let subject = Subject::new(ctx.catalogue(), &build, &props.answer.stack);
    let drawn = picture::drawn(&ctx, &props.answer, room, |sheet| Some(support(&subject, found.loads.as_ref(), sheet)));
    let mass = hung.map_or(Mass::ZERO, |(mass, _)| mass);
    let sliders = found.ballast_at.map(|at| {
        let by_mass = |to: &Callback<Edit>| to.reform(move |kg: f64| Edit::Ballast(Mass::from_kg(kg), at));
        let by_place = |to: &Callback<Edit>| to.reform(move |mm: f64| Edit::Ballast(mass, Length::from_mm(mm)));
        let moved = {
            let (place, live) = (place.setter(), by_place(&live));
            Callback::from(move |mm: f64| {
                place.set(Some(Length::from_mm(mm)));
                live.emit(mm);
            })
        };
        let hung = slider(Slider {
            name: ctx.text("ui-ballast"),
            shown: ctx.words.reader().mass(mass),
            range: (BALLAST.0, BALLAST.1),
            step: BALLAST.2,
            value: mass.kg(),
            live: by_mass(&live),
            done: by_mass(&done),
        });
        let placed = slider(Slider {
            name: ctx.text("ui-ballast-place"),
            shown: say::length(&ctx, at),
            range: (-1500.0, 2600.0),
            step: 10.0,
            value: at.mm(),
            live: moved,
            done: by_place(&done),
        });
        html! { <>{ hung }{ placed }</> }
    });
    let (controls, figures) = (sliders.unwrap_or_default(), figures(&ctx, &found, leaning));
    let aside = Some(ctx.words.caution(fitup_core::finding::Caution::Slopes));
    frame(&node, Frame { drawn, tall: false, controls, figures, aside })
}

fn figures(
    ctx: &Ctx,
    found: &fitup_core::fit::Weight,
    leaning: Option<fitup_core::dimension::TipAngles>,
) -> Vec<Figure> {
    let reader = ctx.words.reader();
    let mass = |mass: Mass| reader.mass(mass);
    let axle = |key: &str, axle: RatedLoad| Figure {
        name: ctx.text(key),
        value: axle.load.map(mass),
        against: axle.rated.map(|it| ctx.text_with("ui-of-rated", &[("rated", mass(it).into())])),
        out: axle.is_over() || axle.lifts(),
    };
    let mut figures = vec![axle("ui-front-axle", found.front), axle("ui-rear-axle", found.rear)];
    for rule in &found.rules {
        let needs = rule.ballast.filter(|_| !rule.is_met());
        figures.push(Figure {
            name: ctx.text(&format!("ui-{}", rule.rule)),
            value: Some(reader.share(rule.share)),
            against: Some(match needs {
                Some(ballast) => ctx.text_with("ui-needs-ballast", &[("ballast", mass(ballast).into())]),
                None => ctx.text_with("ui-at-least", &[("least", reader.share(rule.least).into())]),
            }),
            out: !rule.is_met(),
        });
    }
    for (key, side) in [("ui-tip-side", Side::Left), ("ui-tip-rear", Side::Rear)] {
        let slope = leaning.and_then(|angles| angles.slope(side));
        figures.push(Figure {
            name: ctx.text(key),
            value: slope.map(|slope| reader.angle(Angle::from_rad(slope))),
            against: Some(ctx.text("ui-standing-still")),
            out: false,
        });
    }
    figures
}
