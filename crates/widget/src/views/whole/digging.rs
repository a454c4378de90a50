//! The digging arm at work: depth, reach, loading height, what it lifts.

use fitup_core::build::{ArmAngles, Build};
use fitup_core::fit::{Answer, ArmAtWork, FLAT_BOTTOM, Lifting, arm_at_work, lifting};
use fitup_core::item::ArmLink;
use fitup_core::quantity::{Angle, Length, Mass};
use fitup_drawing::{Subject, digging};
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

#[derive(Properties, PartialEq)]
pub struct DiggingProps {
    /// The answer.
    pub answer: Same<Answer>,
    /// The build.
    pub build: Same<Build>,
}

/// The view.
#[component]
pub fn Digging(props: &DiggingProps) -> Html {
    let ctx = use_ctx();
    let DiggingProps { answer, build } = props;
    let node = use_node_ref();
    let room = use_room(&node);
    let (tried, live, done) = use_trial(&ctx, build);
    let key = (ctx.desk.clone(), build.clone());
    let found = use_memo(key, |(desk, build)| Some((arm_at_work(desk, build)?, lifting(desk, build))));
    let arm = build.implement.and_then(|id| ctx.catalogue().implement(id).arm);
    let (Some((found, lifts)), Some(arm)) = (&*found, arm) else {
        return bare(&ctx, &node, "ui-digging-none", None);
    };
    let pose = tried.pose.unwrap_or_else(|| found.pose.unwrap_or_else(|| ArmAngles::transport(&arm)));
    let subject = Subject { pose: Some(pose), ..Subject::new(ctx.catalogue(), build, &answer.stack) };
    let drawn = picture::drawn(&ctx, answer, room, |sheet| Some(digging(&subject, &found.reach, sheet)));
    let link = |key: &str, link: ArmLink, value: Angle, with: fn(ArmAngles, Angle) -> ArmAngles| {
        let told = |to: &Callback<Edit>| to.reform(move |deg: f64| Edit::Pose(with(pose, Angle::from_deg(deg))));
        slider(Slider {
            name: ctx.text(key),
            shown: ctx.words.reader().angle(value),
            range: (link.least.deg(), link.greatest.deg()),
            step: 1.0,
            value: value.deg(),
            live: told(&live),
            done: told(&done),
        })
    };
    let controls = html! {
        <>
            { link("ui-boom", arm.boom, pose.boom, |pose, boom| ArmAngles { boom, ..pose }) }
            { link("ui-dipper", arm.dipper, pose.dipper, |pose, dipper| ArmAngles { dipper, ..pose }) }
            { link("ui-bucket", arm.bucket, pose.bucket, |pose, bucket| ArmAngles { bucket, ..pose }) }
        </>
    };
    let aside = Some(ctx.words.caution(fitup_core::finding::Caution::Excavations));
    frame(&node, Frame { drawn, tall: true, controls, figures: figures(&ctx, found, lifts.as_ref()), aside })
}

fn figures(ctx: &Ctx, found: &ArmAtWork, lifts: Option<&Lifting>) -> Vec<Figure> {
    let length = |metres: f64| say::length(ctx, Length::from_m(metres));
    let one = |key: &str, value: Option<String>, against: Option<String>| Figure {
        name: ctx.text(key),
        value,
        against,
        out: false,
    };
    let bottom = ctx.text_with("ui-flat-bottom", &[("length", say::length(ctx, FLAT_BOTTOM).into())]);
    let from_axle = found.reach_from_axle.map(|it| say::length(ctx, it));
    let from_axle = from_axle.map(|it| ctx.text_with("ui-from-rear-axle", &[("length", it.into())]));
    let loading_reach = found.loading.map(|it| ctx.text_with("ui-at-reach", &[("reach", length(it.reach).into())]));
    let far = lifts.and_then(Lifting::farthest_on_ground);
    let rated = far.and_then(|lift| lift.rear.rated()).map(|(load, _)| ctx.words.reader().mass(Mass::from_kg(load)));
    let free = found.free_swing.map(|both| both.map(|(angle, _)| ctx.words.reader().angle(angle)));
    vec![
        one("ui-dig-depth", Some(length(found.reach.depth)), None),
        one("ui-flat-depth", found.reach.flat_depth.map(length), Some(bottom)),
        one("ui-dig-reach", found.reach.reach_at_ground.map(length), from_axle),
        one("ui-loading-height", found.loading.map(|it| length(it.height)), loading_reach),
        one("ui-lift-at-reach", rated, Some(ctx.text("ui-rated-load"))),
        one("ui-swing", free.map(|[left, right]| format!("{left} / {right}")), Some(ctx.text("ui-left-right"))),
    ]
}
