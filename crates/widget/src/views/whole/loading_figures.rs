//! The figures of the machine on its trailer.

use fitup_core::dimension::ShortestRamp;
use fitup_core::fit::{Drive, OnTrailer, RAMP_MARGIN, TrailerStand};
use fitup_core::quantity::{Angle, Length, Mass};

use super::facts::Figure;
use crate::ctx::Ctx;
use crate::say;

/// The drive's clearance and the ramp that would do, what coupler and axles carry, tie-downs.
pub fn figures(
    ctx: &Ctx,
    drive: Option<&Drive>,
    shortest: Option<ShortestRamp>,
    stand: Option<&TrailerStand>,
    on: &OnTrailer,
) -> Vec<Figure> {
    let clearance = drive.and_then(Drive::clearance);
    let mass = |mass: Mass| ctx.words.reader().mass(mass);
    let one = |key: &str, value: Option<String>, against: Option<String>, out: bool| Figure {
        name: ctx.text(key),
        value,
        against,
        out,
    };
    let nose = stand.map(|stand| Mass::from_kg(stand.loads.nose));
    let range = stand.map(|stand| format!("{} – {}", mass(stand.nose_range.0), mass(stand.nose_range.1)));
    let shortest_at = shortest.map(|ramp| ctx.words.reader().angle(Angle::from_rad(ramp.angle)));
    let item = drive.and_then(|drive| drive.item).map(|item| ctx.label(item).to_owned());
    let rated = |rated: Option<Mass>| rated.map(|it| ctx.text_with("ui-of-rated", &[("rated", mass(it).into())]));
    let over = |load: Option<Mass>, rated: Option<Mass>| load.zip(rated).is_some_and(|(load, rated)| load > rated);
    let axle = stand.map(|stand| Mass::from_kg(stand.loads.axle));
    vec![
        one(
            "ui-ramp-clearance",
            clearance.map(|it| say::length(ctx, it)),
            item,
            clearance.is_some_and(|it| it < RAMP_MARGIN),
        ),
        one("ui-ramp-that-clears", shortest.map(|it| say::length(ctx, Length::from_m(it.length))), shortest_at, false),
        one("ui-nose-load", nose.map(mass), range, stand.is_some_and(|stand| stand.places.is_none())),
        one("ui-trailer-total", on.total.map(mass), rated(on.rated_total), over(on.total, on.rated_total)),
        one("ui-trailer-axles", axle.map(mass), rated(on.rated_axle), over(axle, on.rated_axle)),
        one(
            "ui-tie-downs",
            on.tie_downs.map(|ties| ctx.words.reader().count(ties.needed.into())),
            on.each_tie_down().map(|each| ctx.text_with("ui-each-holds", &[("each", mass(each).into())])),
            false,
        ),
    ]
}
