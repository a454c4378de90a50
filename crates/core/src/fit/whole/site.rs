//! Turning, the gateway, the path behind it and the ground.

use super::{Ask, Missing, MissingOf};
use crate::build::Build;
use crate::dimension::{Block, Swing, swing};
use crate::fit::Footprint;
use crate::fit::context::Context;
use crate::fit::desk::Desk;
use crate::fit::footprint::footprint;
use crate::fit::rated_load::RatedLoad;
use crate::item::{ItemRef, SiteId};
use crate::quantity::{Length, Mass};

/// How the build turns, and whether it gets into its site.
#[derive(Debug, Clone, PartialEq)]
pub struct Access {
    /// The site, if the build has one.
    pub site: Option<SiteId>,
    /// Radius that the rear axle's centre turns on at the least.
    pub turning_radius: Option<Length>,
    /// The machine's block over the rear axle, plain SI.
    pub block: Option<Block>,
    /// What the tightest turn sweeps, plain SI.
    pub swept: Option<Swing>,
    /// Least width of two equal corridors that meet at a right angle.
    pub corridor: Option<Length>,
    /// Width of the machine.
    pub width: Option<Length>,
    /// Height of the machine.
    pub height: Option<Length>,
    /// Height with the roll-over bar folded, where it folds.
    pub height_folded: Option<Length>,
    /// The gateway's width.
    pub gate: Option<Length>,
    /// The gateway's height.
    pub gate_height: Option<Length>,
    /// Width of the path behind it.
    pub path: Option<Length>,
    /// Least width of the path that lets the machine turn square behind a gateway of that width, or square into it
    /// out of the path, whichever is less; `None` where no path does.
    pub path_wanted: Option<Length>,
    /// Whether the path turns square behind the gateway.
    pub right_angle_turn: bool,
    /// Load of the front and of the rear axle, where the site limits them.
    pub axle_loads: Option<(Mass, Mass)>,
    /// Greatest load the ground takes on one axle.
    pub greatest_axle_load: Option<Mass>,
    /// What is not stated.
    pub missing: Vec<Missing>,
}

impl Access {
    /// Gate beyond the machine's width; negative = it does not go through.
    pub fn gate_left(&self) -> Option<Length> {
        self.gate.zip(self.width).map(|(gate, width)| gate - width)
    }

    /// Whether the machine is known to be too wide for the gateway.
    pub fn is_too_wide(&self) -> bool {
        self.gate_left().is_some_and(|left| left < Length::ZERO)
    }

    /// Gateway over the machine's height; negative = it does not go under.
    pub fn height_left(&self) -> Option<Length> {
        self.gate_height.zip(self.height).map(|(gate, height)| gate - height)
    }

    /// Whether the machine is known to be too high for the gateway.
    pub fn is_too_high(&self) -> bool {
        self.height_left().is_some_and(|left| left < Length::ZERO)
    }

    /// Whether one sweep does the turn behind the gateway; `None` where there is none to do or not enough is known.
    pub fn turns(&self) -> Option<bool> {
        let known = self.right_angle_turn && self.gate.is_some() && self.path.is_some() && self.swept.is_some();
        known.then(|| self.path_left().is_some_and(|left| left >= Length::ZERO))
    }

    /// The load of the heavier axle on the ground, where the site limits it.
    pub fn heavier_axle(&self) -> RatedLoad {
        RatedLoad { load: self.axle_loads.map(|(front, rear)| front.max(rear)), rated: self.greatest_axle_load }
    }

    /// Path beyond what the turn wants; negative = it is too tight.
    pub fn path_left(&self) -> Option<Length> {
        self.path.zip(self.path_wanted).map(|(path, wanted)| path - wanted)
    }
}

/// How the build turns, and whether it gets into its site. `None` without a machine.
///
/// Widths that the build states ([`Change::Gateway`](crate::build::Change::Gateway),
/// [`Change::Path`](crate::build::Change::Path)) stand for the site's own.
pub fn access(desk: &Desk, build: &Build) -> Option<Access> {
    of(&Context::new(desk, build))
}

pub(super) fn of(context: &Context) -> Option<Access> {
    let loads = super::super::loads::loads(context).and_then(Result::ok);
    access_of(context, &footprint(context, loads.as_ref(), false))
}

/// As [`access`], with the footprint that is known already.
pub(in crate::fit) fn access_of(context: &Context, footprint: &Footprint) -> Option<Access> {
    let (machine_id, machine) = context.machine()?;
    let item = MissingOf::Item(ItemRef::Machine(machine_id));
    let site = context.build.site.map(|id| context.catalogue().site(id));
    let mut ask = Ask::default();
    let outer = ask.need(item, "turning-radius", machine.turning_radius);
    let track = ask.need(item, "track", machine.front.track);
    let wheelbase = ask.need(item, "wheelbase", machine.wheelbase);
    let width = ask.need(item, "width", footprint.width);
    let extent = ask.need(item, "outline", footprint.extent_x);
    let turning_radius = outer.zip(track).zip(wheelbase).and_then(|((outer, track), wheelbase)| {
        // The outer front wheel stands the wheelbase ahead and half the track outside of the rear axle's centre.
        let square = outer.m() * outer.m() - wheelbase.value.m() * wheelbase.value.m();
        let radius = square.max(0.0).sqrt() - track.m() / 2.0;
        ask.need(item, "turning-radius", (radius > 0.0).then(|| Length::from_m(radius)))
    });
    let block = extent.zip(width).map(|((rear, front), width)| Block {
        rear: rear.m().min(0.0),
        front: front.m().max(0.0),
        half_width: width.m() / 2.0,
    });
    let swept = turning_radius.zip(block).and_then(|(radius, block)| swing(radius.m(), None, block, None).ok());
    let corridor = swept.and_then(|swept| swept.corridor);
    let gate = site.and_then(|site| context.build.gateway().or(site.gate_width));
    let path = site.and_then(|site| context.build.path().or(site.path_width));
    if let Some(id) = context.build.site {
        ask.need(MissingOf::Site(id), "gate-width", gate);
        if site.is_some_and(|site| site.right_angle_turn) {
            ask.need(MissingOf::Site(id), "path-width", path);
        }
    }
    let greatest_axle_load = site.and_then(|site| site.greatest_axle_load);
    let loads = greatest_axle_load.and_then(|_| ask.loads(context));
    Some(Access {
        site: context.build.site,
        turning_radius,
        block,
        swept,
        corridor: corridor.map(|corridor| Length::from_m(corridor.width())),
        width,
        height: footprint.height,
        height_folded: machine.roll_over_bar.and_then(|bar| bar.height_folded).and_then(|_| folded_height(context)),
        gate,
        gate_height: site.and_then(|site| site.gate_height),
        path,
        path_wanted: corridor.zip(gate).and_then(|(corridor, gate)| path_wanted(corridor, gate.m())),
        right_angle_turn: site.is_some_and(|site| site.right_angle_turn),
        axle_loads: loads.map(|loads| (loads.front, loads.rear)),
        greatest_axle_load,
        missing: ask.0,
    })
}

/// Driving in through the gateway and square into the path, or out of the path square into the gateway: the
/// machine may do either, forwards or backwards.
fn path_wanted(corridor: crate::dimension::Corridor, gate: f64) -> Option<Length> {
    let out_of_gate = corridor.gateway(gate);
    let mirrored = crate::dimension::Corridor {
        entry_extent: corridor.exit_extent,
        exit_extent: corridor.entry_extent,
        ..corridor
    };
    let into_gate = mirrored.gateway(gate);
    [out_of_gate, into_gate].into_iter().flatten().reduce(f64::min).map(Length::from_m)
}

/// Height of everything with the bar folded.
fn folded_height(context: &Context) -> Option<Length> {
    let build = Build { changes: vec![crate::build::Change::FoldRollOverBar], ..context.build.clone() };
    footprint(&Context::new(context.desk, &build), None, false).height
}

#[cfg(test)]
mod tests {
    use super::*;

    const NOTHING: Access = Access {
        site: None,
        turning_radius: None,
        block: None,
        swept: None,
        corridor: None,
        width: None,
        height: None,
        height_folded: None,
        gate: None,
        gate_height: None,
        path: None,
        path_wanted: None,
        right_angle_turn: false,
        axle_loads: None,
        greatest_axle_load: None,
        missing: Vec::new(),
    };

    #[test]
    fn through_the_gate_either_way_round_the_narrower_path_counts() {
        let corridor = crate::dimension::Corridor { entry_extent: 3.3, exit_extent: 3.7, inner_radius: 1.9 };
        let mirrored = crate::dimension::Corridor { entry_extent: 3.7, exit_extent: 3.3, ..corridor };
        // By hand: 3.7 − √(1.9² − 0²) and 3.3 − √(1.9² − 0.4²); the one way 3.7 − √(1.9² − 1.8²), the other none.
        for (gate, path) in [(3.3, Some(3.3 - 3.45_f64.sqrt())), (1.5, Some(3.7 - 0.37_f64.sqrt())), (1.3, None)] {
            for corridor in [corridor, mirrored] {
                let wanted = path_wanted(corridor, gate).map(Length::m);
                assert!(wanted.zip(path).map_or(wanted == path, |(a, b)| (a - b).abs() < 1e-9), "{gate}: {wanted:?}");
            }
        }
    }

    #[test]
    fn as_wide_and_as_high_as_the_gate_still_goes_through() {
        for (size, too_much) in [(1.0, false), (1.001, true), (0.999, false)] {
            let (size, gate) = (Some(Length::from_m(size)), Some(Length::from_m(1.0)));
            let access = Access { width: size, gate, height: size, gate_height: gate, ..NOTHING };
            assert_eq!((access.is_too_wide(), access.is_too_high()), (too_much, too_much));
        }
        assert!(!NOTHING.is_too_wide() && !NOTHING.is_too_high());
        let left = Access { gate: Some(Length::from_m(3.0)), width: Some(Length::from_m(1.0)), ..NOTHING };
        assert_eq!(left.gate_left(), Some(Length::from_m(2.0)));
    }

    #[test]
    fn the_heavier_axle_is_the_one_that_the_ground_has_to_bear() {
        let loads = |front, rear| Access { axle_loads: Some((Mass::from_kg(front), Mass::from_kg(rear))), ..NOTHING };
        assert_eq!(loads(300.0, 200.0).heavier_axle().load, Some(Mass::from_kg(300.0)));
        assert_eq!(loads(200.0, 300.0).heavier_axle().load, Some(Mass::from_kg(300.0)));
    }
}
