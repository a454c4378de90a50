//! The figures of the machine on its trailer.

use fitup_core::dimension::{Facing, ShortestRamp};
use fitup_core::finding::Verdict;
use fitup_core::fit::{Drive, OnTrailer, RatedLoad, TrailerStand};
use fitup_core::quantity::{Angle, Length, Mass};

use fitup_view::Fact;

use crate::shown::Ctx;
use crate::shown::ctx::verdict;

/// The drive's clearance and the ramp that would do that way round, what coupler and axles carry, tie-downs. `shortest` is
/// `None` while it is being looked for.
pub fn figures(
    ctx: Ctx,
    drive: Option<&Drive>,
    shortest: Option<[Option<ShortestRamp>; 2]>,
    facing: Facing,
    stand: Option<&TrailerStand>,
    on: &OnTrailer,
) -> Vec<Fact> {
    let clearance = drive.and_then(Drive::clearance);
    let mass = |mass: Mass| ctx.words.reader().mass(mass);
    let one = |key: &str, value: Option<String>, against: Option<String>, out: bool| Fact {
        name: ctx.text(key),
        value,
        against,
        out: out.then(|| verdict(Verdict::WontMount)),
    };
    let nose = stand.map(TrailerStand::nose_load);
    let range = stand.map(|stand| format!("{} – {}", mass(stand.nose_range.0), mass(stand.nose_range.1)));
    let that_way = |[forward, backward]: [Option<ShortestRamp>; 2]| match facing {
        Facing::Forward => forward,
        Facing::Backward => backward,
    };
    let shortest_at = shortest.and_then(that_way).map(|ramp| ctx.words.reader().angle(Angle::from_rad(ramp.angle)));
    // What is being looked for is not missing yet.
    let shortest_told = match shortest {
        None => Some("…".to_owned()),
        Some(both) => that_way(both).map(|ramp| ctx.length(Length::from_m(ramp.length))),
    };
    let item = drive.and_then(|drive| drive.item).map(|item| ctx.label(item).to_owned());
    let carried = |key: &str, it: RatedLoad| {
        let rated = it.rated.map(|rated| ctx.text_with("ui-of-rated", &[("rated", mass(rated).into())]));
        one(key, it.load.map(mass), rated, it.is_over())
    };
    vec![
        one("ui-ramp-clearance", clearance.map(|it| ctx.length(it)), item, drive.is_some_and(|drive| !drive.clears())),
        one("ui-ramp-that-clears", shortest_told, shortest_at, false),
        one("ui-nose-load", nose.map(mass), range, stand.is_some_and(|stand| !stand.is_in_range())),
        carried("ui-trailer-total", on.total),
        carried("ui-trailer-axles", on.axles(stand)),
        one(
            "ui-tie-downs",
            on.tie_downs.map(|ties| ctx.words.reader().count(ties.needed.into())),
            on.each_tie_down().map(|each| ctx.text_with("ui-each-holds", &[("each", mass(each).into())])),
            false,
        ),
    ]
}
