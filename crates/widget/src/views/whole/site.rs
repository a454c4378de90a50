//! Through the gate and round the corner behind it.

use fitup_core::build::Build;
use fitup_core::fit::{Access, Answer, access};
use fitup_core::item::SiteId;
use fitup_core::quantity::{Length, Mass};
use fitup_drawing::{GateTurn, Subject, gate};
use yew::prelude::*;

use super::choose::choose;
use super::facts::Figure;
use super::frame::{Frame, bare, frame};
use super::slider::{Slider, slider};
use crate::ctx::{Ctx, use_ctx};
use crate::hooks::{use_room, use_trial};
use crate::picture;
use crate::same::Same;
use crate::say;
use crate::state::Edit;

/// Widths that are tried, millimetres, and their step.
const GATE: (f64, f64, f64) = (700.0, 4000.0, 10.0);
const PATH: (f64, f64, f64) = (900.0, 6000.0, 10.0);

#[derive(Properties, PartialEq)]
pub struct SiteProps {
    /// The answer.
    pub answer: Same<Answer>,
    /// The build.
    pub build: Same<Build>,
}

/// The view.
#[component]
pub fn Site(props: &SiteProps) -> Html {
    let ctx = use_ctx();
    let SiteProps { answer, build } = props;
    let (build, live, done) = use_trial(&ctx, build);
    let node = use_node_ref();
    let room = use_room(&node);
    let taken = done.reform(|at: Option<usize>| Edit::Site(at.map(SiteId::at)));
    let labels = ctx.catalogue().sites.iter().map(|row| row.label.clone()).collect::<Vec<_>>();
    let chosen = build.site.map(SiteId::index);
    let choice = choose(&ctx, "ui-site", labels, chosen, &taken);
    let Some(found) = access(&ctx.desk, &build).filter(|_| build.site.is_some()) else {
        return bare(&ctx, &node, "ui-site-none", Some(choice));
    };
    let subject = Subject::new(ctx.catalogue(), &build, &answer.stack);
    let turn = found.turning_radius.zip(found.block).zip(found.swept.as_ref());
    let drawn = picture::drawn(&ctx, answer, room, |sheet| {
        let (((radius, block), swept), width) = turn.zip(found.gate)?;
        Some(gate(&subject, &GateTurn { gate: width, radius: radius.m(), block, swept }, sheet))
    });
    let width = |key: &str, value: Option<Length>, (least, most, step): (f64, f64, f64), edit: fn(Length) -> Edit| {
        let told = |to: &Callback<Edit>| to.reform(move |mm: f64| edit(Length::from_mm(mm)));
        value.map(|value| {
            slider(Slider {
                name: ctx.text(key),
                shown: say::length(&ctx, value),
                range: (least, most),
                step,
                value: value.mm(),
                live: told(&live),
                done: told(&done),
            })
        })
    };
    let controls = html! {
        <>
            { choice }
            { width("ui-gate-width", found.gate, GATE, Edit::Gateway) }
            { width("ui-path-width", found.path, PATH, Edit::Path) }
        </>
    };
    frame(&node, Frame { drawn, tall: true, controls, figures: figures(&ctx, &found), aside: None })
}

fn figures(ctx: &Ctx, found: &Access) -> Vec<Figure> {
    let length = |length: Length| say::length(ctx, length);
    let metres = |metres: f64| length(Length::from_m(metres));
    let one = |key: &str, value: Option<String>, against: Option<String>, out: bool| Figure {
        name: ctx.text(key),
        value,
        against,
        out,
    };
    let heaviest = found.heavier_axle();
    let mass = |mass: Mass| ctx.words.reader().mass(mass);
    let of = |key: &str, value: Option<String>| value.map(|it| ctx.text_with(key, &[("value", it.into())]));
    vec![
        one("ui-short-width", found.width.map(length), of("ui-gate-of", found.gate.map(length)), found.is_too_wide()),
        one(
            "ui-short-height",
            found.height.map(length),
            of("ui-gate-of", found.gate_height.map(length)),
            found.is_too_high(),
        ),
        one(
            "ui-path-wanted",
            Some(found.path_wanted.map_or_else(|| ctx.text("ui-no-width-does"), length)),
            of("ui-path-of", found.path.map(length)),
            found.turns() == Some(false),
        ),
        one("ui-corridor", found.corridor.map(length), Some(ctx.text("ui-corridor-meaning")), false),
        one("ui-swing-out", found.swept.map(|it| metres(it.swing_out)), None, false),
        one(
            "ui-heaviest-axle",
            heaviest.load.map(mass),
            of("ui-ground-takes", heaviest.rated.map(mass)),
            heaviest.is_over(),
        ),
    ]
}
