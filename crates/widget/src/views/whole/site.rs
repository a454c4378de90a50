//! Through the gate and round the corner behind it.

use fitup_core::build::Build;
use fitup_core::fit::{Access, Answer, Widths, access};
use fitup_core::item::SiteId;
use fitup_core::quantity::{Length, Mass};
use fitup_drawing::{GateTurn, Subject, gate};
use yew::prelude::*;

use super::choose::choose;
use super::facts::Figure;
use super::frame::{Frame, bare, frame};
use super::slider::{Slider, slider};
use crate::ctx::{Ctx, use_ctx};
use crate::hooks::use_room;
use crate::picture;
use crate::same::Same;
use crate::say;
use crate::state::{Action, Edit};

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
    let node = use_node_ref();
    let room = use_room(&node);
    let (gate_width, path_width) = (use_state_eq(|| None::<Length>), use_state_eq(|| None::<Length>));
    let taken = {
        let (act, gate_width, path_width) = (ctx.act.clone(), gate_width.setter(), path_width.setter());
        Callback::from(move |at: Option<usize>| {
            gate_width.set(None);
            path_width.set(None);
            act.emit(Action::Edit(Edit::Site(at.map(SiteId::at))));
        })
    };
    let labels = ctx.catalogue().sites.iter().map(|row| row.label.clone()).collect::<Vec<_>>();
    let chosen = build.site.map(SiteId::index);
    let choice = choose(&ctx, "ui-site", labels, chosen, &taken);
    let found = access(&ctx.desk, build, Widths { gate: *gate_width, path: *path_width });
    let Some(found) = found.filter(|_| build.site.is_some()) else {
        return bare(&ctx, &node, "ui-site-none", Some(choice));
    };
    let subject = Subject::new(ctx.catalogue(), build, &answer.stack);
    let turn = found.turning_radius.zip(found.block).zip(found.swept.as_ref());
    let drawn = picture::drawn(&ctx, answer, room, |sheet| {
        let (((radius, block), swept), width) = turn.zip(found.gate)?;
        Some(gate(&subject, &GateTurn { gate: width, radius: radius.m(), block, swept }, sheet))
    });
    let width = |key: &str,
                 value: Option<Length>,
                 (least, most, step): (f64, f64, f64),
                 set: UseStateSetter<Option<Length>>| {
        value.map(|value| {
            slider(Slider {
                name: ctx.text(key),
                shown: say::length(&ctx, value),
                range: (least, most),
                step,
                value: value.mm(),
                live: Callback::from(move |mm: f64| set.set(Some(Length::from_mm(mm)))),
                done: Callback::noop(),
            })
        })
    };
    let controls = html! {
        <>
            { choice }
            { width("ui-gate-width", found.gate, GATE, gate_width.setter()) }
            { width("ui-path-width", found.path, PATH, path_width.setter()) }
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
