//! The digging arm at work: depth, reach, loading height, what it lifts.

use fitup_core::build::{ArmAngles, Build};
use fitup_core::finding::Caution;
use fitup_core::fit::{Answer, ArmAtWork, FLAT_BOTTOM, Lifting, arm_at_work, lifting};
use fitup_core::item::ArmLink;
use fitup_core::quantity::{Angle, Length, Mass};
use fitup_drawing::Subject;
use fitup_view::{Fact, Look, Slide, Slider, Whole};

use super::bare;
use crate::shown::Ctx;
use crate::shown::picture::drawn;

/// The view.
pub fn digging(ctx: Ctx, (build, tried): (&Build, &Build), answer: &Answer, look: &Look) -> Whole {
    let arm = build.choices.implement.and_then(|id| ctx.catalogue().implement(id).arm);
    let (Some(found), Some(arm)) = (arm_at_work(ctx.desk, build), arm) else {
        return bare(ctx, "ui-digging-none", None);
    };
    let pose = tried.side.pose.unwrap_or_else(|| found.pose.unwrap_or_else(|| ArmAngles::transport(&arm)));
    let subject = Subject { pose: Some(pose), ..Subject::new(ctx.catalogue(), build, &answer.stack) };
    let link = |key: &str, sets: Slide, link: ArmLink, value: Angle| Slider {
        sets,
        looks_only: false,
        name: ctx.text(key),
        shown: ctx.words.reader().angle(value),
        least: link.least.deg(),
        most: link.greatest.deg(),
        step: 1.0,
        value: value.deg(),
    };
    Whole {
        picture: drawn(ctx, answer, look.room, |sheet| Some(fitup_drawing::digging(&subject, &found.reach, sheet))),
        tall: true,
        sliders: vec![
            link("ui-boom", Slide::Boom, arm.boom, pose.boom),
            link("ui-dipper", Slide::Dipper, arm.dipper, pose.dipper),
            link("ui-bucket", Slide::Bucket, arm.bucket, pose.bucket),
        ],
        facts: figures(ctx, &found, lifting(ctx.desk, build).as_ref()),
        aside: Some(ctx.words.caution(Caution::Excavations)),
        ..Whole::default()
    }
}

fn figures(ctx: Ctx, found: &ArmAtWork, lifts: Option<&Lifting>) -> Vec<Fact> {
    let length = |metres: f64| ctx.length(Length::from_m(metres));
    let one = |key: &str, value: Option<String>, against: Option<String>| Fact {
        name: ctx.text(key),
        value,
        against,
        out: None,
    };
    let bottom = ctx.text_with("ui-flat-bottom", &[("length", ctx.length(FLAT_BOTTOM).into())]);
    let from_axle = found.reach_from_axle.map(|it| ctx.length(it));
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
