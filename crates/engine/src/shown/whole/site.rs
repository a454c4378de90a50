//! Through the gate and round the corner behind it.

use fitup_core::build::Build;
use fitup_core::finding::Verdict;
use fitup_core::fit::{Access, Answer, access};
use fitup_core::item::SiteId;
use fitup_core::quantity::{Length, Mass};
use fitup_drawing::{GateTurn, Subject, gate};
use fitup_view::{Chooser, Fact, Look, Slide, Slider, Whole};

use super::bare;
use crate::shown::Ctx;
use crate::shown::ctx::verdict;
use crate::shown::picture::drawn;

/// Widths that are tried, millimetres, and their step.
const GATE: (f64, f64, f64) = (700.0, 4000.0, 10.0);
const PATH: (f64, f64, f64) = (900.0, 6000.0, 10.0);

/// The view.
pub fn site(ctx: Ctx, build: &Build, answer: &Answer, look: &Look) -> Whole {
    let sites = &ctx.catalogue().sites;
    let chooser = Chooser {
        name: ctx.text("ui-site"),
        none: ctx.text("ui-none"),
        options: sites.iter().map(|row| (row.id.clone(), row.label.clone())).collect(),
        chosen: build.side.site.map(SiteId::index).map(|at| sites[at].id.clone()),
        of_sites: true,
    };
    let Some(found) = access(ctx.desk, build).filter(|_| build.side.site.is_some()) else {
        return bare(ctx, "ui-site-none", Some(chooser));
    };
    let subject = Subject::new(ctx.catalogue(), build, &answer.stack);
    let turn = found.turning_radius.zip(found.block).zip(found.swept.as_ref());
    let picture = drawn(ctx, answer, look.room, |sheet| {
        let (((radius, block), swept), width) = turn.zip(found.gate)?;
        Some(gate(&subject, &GateTurn { gate: width, radius: radius.m(), block, swept }, sheet))
    });
    let width = |key: &str, value: Option<Length>, (least, most, step): (f64, f64, f64), sets: Slide| {
        value.map(|value| Slider {
            sets,
            looks_only: false,
            name: ctx.text(key),
            shown: ctx.length(value),
            least,
            most,
            step,
            value: value.mm(),
        })
    };
    let sliders = [
        width("ui-gate-width", found.gate, GATE, Slide::Gateway),
        width("ui-path-width", found.path, PATH, Slide::Path),
    ];
    Whole {
        picture,
        tall: true,
        chooser: Some(chooser),
        sliders: sliders.into_iter().flatten().collect(),
        facts: figures(ctx, &found),
        ..Whole::default()
    }
}

fn figures(ctx: Ctx, found: &Access) -> Vec<Fact> {
    let length = |length: Length| ctx.length(length);
    let metres = |metres: f64| length(Length::from_m(metres));
    let one = |key: &str, value: Option<String>, against: Option<String>, out: bool| Fact {
        name: ctx.text(key),
        value,
        against,
        out: out.then(|| verdict(Verdict::WontMount)),
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
