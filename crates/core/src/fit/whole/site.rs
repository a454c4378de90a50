//! Turning, the gateway, the path behind it and the ground.

use super::footprint::footprint;
use super::near::{drawn_off, taped_off};
use super::rated_load::{Against, RatedLoad};
use super::{Ask, Missing, MissingOf};
use crate::build::{Build, Change, Side};
use crate::dimension::{Block, Swing, swing};
use crate::finding::Unstated;
use crate::fit::context::Context;
use crate::fit::desk::Desk;
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
    /// How far these may be off.
    pub axle_loads_off: (Mass, Mass),
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

    /// How the machine's width stands against the gateway's, and how far the two may be off together.
    pub fn through_gate(&self) -> Option<(Against, Length)> {
        against(self.width, self.gate)
    }

    /// Whether the machine is for certain too wide for the gateway.
    pub fn is_too_wide(&self) -> bool {
        self.through_gate().is_some_and(|(against, _)| against == Against::Over)
    }

    /// Gateway over the machine's height; negative = it does not go under.
    pub fn height_left(&self) -> Option<Length> {
        self.gate_height.zip(self.height).map(|(gate, height)| gate - height)
    }

    /// How the machine's height stands against the gateway's, and how far the two may be off together.
    pub fn under_gate(&self) -> Option<(Against, Length)> {
        against(self.height, self.gate_height)
    }

    /// The height with the bar folded, and how it goes under the gateway then; `None` where it does not fold or is too high for
    /// certain.
    pub fn folded_under_gate(&self) -> Option<(Length, Against)> {
        let (against, _) = against(self.height_folded, self.gate_height)?;
        self.height_folded.filter(|_| against != Against::Over).map(|height| (height, against))
    }

    /// Whether the machine is for certain too high for the gateway.
    pub fn is_too_high(&self) -> bool {
        self.under_gate().is_some_and(|(against, _)| against == Against::Over)
    }

    /// Whether one sweep does the turn behind the gateway; `None` where there is none to do or not enough is known.
    pub fn turns(&self) -> Option<bool> {
        let known = self.right_angle_turn && self.gate.is_some() && self.path.is_some() && self.swept.is_some();
        known.then(|| self.path_left().is_some_and(|left| left >= Length::ZERO))
    }

    /// The load of the heavier axle on the ground, where the site limits it.
    pub fn heavier_axle(&self) -> RatedLoad {
        let (front, rear) = self.axle_loads_off;
        let heavier = |(on_front, on_rear)| if on_front > on_rear { (on_front, front) } else { (on_rear, rear) };
        let known = self.axle_loads.map(heavier);
        RatedLoad {
            load: known.map(|(load, _)| load),
            rated: self.greatest_axle_load,
            off: known.map_or(Mass::ZERO, |(_, off)| off),
        }
    }

    /// Path beyond what the turn wants; negative = it is too tight.
    pub fn path_left(&self) -> Option<Length> {
        self.path.zip(self.path_wanted).map(|(path, wanted)| path - wanted)
    }
}

/// A size of the machine against one of the gateway.
fn against(size: Option<Length>, gate: Option<Length>) -> Option<(Against, Length)> {
    let (size, gate) = size.zip(gate)?;
    let off = drawn_off(size) + taped_off(gate);
    Some((Against::of((gate - size).m(), off.m()), off))
}

/// How the build turns, and whether it gets into its site. `None` without a machine.
///
/// Widths that the build states ([`Change::Gateway`],
/// [`Change::Path`]) stand for the site's own.
pub fn access(desk: &Desk, build: &Build) -> Option<Access> {
    access_of(&Context::new(desk, build))
}

/// As [`access`], of a build that is placed.
pub(crate) fn access_of(context: &Context) -> Option<Access> {
    let (machine_id, machine) = context.machine()?;
    let item = MissingOf::Item(ItemRef::Machine(machine_id));
    let footprint = footprint(context, None, false);
    let site = context.build.side.site.map(|id| context.catalogue().site(id));
    let mut ask = Ask::default();
    let outer = ask.need(item, Unstated::TurningRadius, machine.turning_radius);
    let track = ask.need(item, Unstated::Track, machine.front.track);
    let wheelbase = ask.need(item, Unstated::Wheelbase, machine.wheelbase);
    let (width, extent) = if ask.places(context) {
        (ask.need(item, Unstated::Width, footprint.width), ask.need(item, Unstated::Outline, footprint.extent_x))
    } else {
        (None, None)
    };
    let turning_radius = outer.zip(track).zip(wheelbase).and_then(|((outer, track), wheelbase)| {
        // The outer front wheel stands the wheelbase ahead and half the track outside of the rear axle's centre.
        let square = outer.m() * outer.m() - wheelbase.value.m() * wheelbase.value.m();
        let radius = square.max(0.0).sqrt() - track.m() / 2.0;
        ask.need(item, Unstated::TurningRadius, (radius > 0.0).then(|| Length::from_m(radius)))
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
    if let Some(id) = context.build.side.site {
        let of = MissingOf::Site(id);
        ask.need(of, Unstated::GateWidth, gate);
        ask.need(of, Unstated::GateHeight, site.and_then(|site| site.gate_height));
        ask.need(of, Unstated::GroundLoad, site.and_then(|site| site.greatest_axle_load));
        ask.need(item, Unstated::Height, footprint.height);
        ask.extents(context);
        let turn = ask.need(of, Unstated::PathTurn, site.and_then(|site| site.right_angle_turn));
        if turn == Some(true) {
            ask.need(of, Unstated::PathWidth, path);
        }
    }
    let greatest_axle_load = site.and_then(|site| site.greatest_axle_load);
    let loads = greatest_axle_load.and_then(|_| ask.loads(context));
    Some(Access {
        site: context.build.side.site,
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
        path_wanted: swept_paths(turning_radius, block, corridor, gate),
        right_angle_turn: site.and_then(|site| site.right_angle_turn) == Some(true),
        axle_loads_off: loads.as_ref().map(|loads| (loads.off.front, loads.off.rear)).unwrap_or_default(),
        axle_loads: loads.map(|loads| (loads.front, loads.rear)),
        greatest_axle_load,
        missing: ask.0,
    })
}

/// The least path by either way of turning: in the gateway, or driven straight out of it first.
fn swept_paths(
    radius: Option<Length>,
    block: Option<Block>,
    corridor: Option<crate::dimension::Corridor>,
    gate: Option<Length>,
) -> Option<Length> {
    let in_gate = corridor.zip(gate).and_then(|(corridor, gate)| path_wanted(corridor, gate.m()));
    let after_it = radius.zip(block).map(|(radius, block)| straight_out(radius.m(), block));
    [in_gate, after_it].into_iter().flatten().reduce(Length::min)
}

/// Least width of the path where the machine drives straight out of the gateway until its rear end is through, and turns there:
/// from the gateway to the rear axle, and from there to the far corner of what turns.
fn straight_out(radius: f64, block: Block) -> Length {
    let far = libm::hypot(block.front, radius + block.half_width);
    // Tighter than half its width the inner rear corner swings back.
    let inner = block.half_width - radius;
    let behind = if inner > 0.0 { libm::hypot(block.rear, inner) } else { -block.rear };
    Length::from_m(behind + far)
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
    let side = Side { changes: vec![Change::FoldRollOverBar], ..context.build.side.clone() };
    let build = Build { side, ..context.build.clone() };
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
        axle_loads_off: (Mass::ZERO, Mass::ZERO),
        greatest_axle_load: None,
        missing: Vec::new(),
    };

    #[test]
    fn with_the_bar_folded_it_goes_under_for_certain_perhaps_or_not_at_all() {
        let under = |folded: f64| {
            let gate_height = Some(Length::from_mm(1500.0));
            Access { height_folded: Some(Length::from_mm(folded)), gate_height, ..NOTHING }.folded_under_gate()
        };
        let against = [1400.0, 1500.0, 1600.0].map(|folded| under(folded).map(|(_, against)| against));
        assert_eq!(against, [Some(Against::Within), Some(Against::Near), None]);
        assert_eq!(NOTHING.folded_under_gate(), None, "it does not fold");
    }

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
    fn driving_straight_out_first_a_wide_path_is_enough_for_any_gate() {
        // By hand: 1.5 m to the rear end, and √(2² + (2.5 + 0.6)²) to the far corner.
        let block = Block { rear: -1.5, front: 2.0, half_width: 0.6 };
        assert!((straight_out(2.5, block).m() - (1.5 + 13.61_f64.sqrt())).abs() < 1e-9);
        // Turning about a point within the machine: the inner rear corner, 0.4 m beside it, swings back.
        let behind = (1.5_f64.powi(2) + 0.4_f64.powi(2)).sqrt();
        assert!((straight_out(0.2, block).m() - (behind + 4.64_f64.sqrt())).abs() < 1e-9);
        let corridor = crate::dimension::Corridor { entry_extent: 3.3, exit_extent: 3.7, inner_radius: 1.9 };
        let [radius, gate] = [2.5, 1.3].map(|metres| Some(Length::from_m(metres)));
        assert_eq!(path_wanted(corridor, 1.3), None);
        assert_eq!(swept_paths(radius, Some(block), Some(corridor), gate), Some(straight_out(2.5, block)));
    }

    #[test]
    fn as_wide_and_as_high_as_the_gate_is_near_and_neither_through_nor_too_much() {
        // ±3 mm of the machine, ±1.2 mm of the gateway.
        for (size, is_near, too_much) in [
            (1.0, true, false),
            (1.004, true, false),
            (1.006, false, true),
            (0.996, true, false),
            (0.995, false, false),
        ] {
            let (size, gate) = (Some(Length::from_m(size)), Some(Length::from_m(1.0)));
            let access = Access { width: size, gate, height: size, gate_height: gate, ..NOTHING };
            assert_eq!((access.is_too_wide(), access.is_too_high()), (too_much, too_much), "{size:?}");
            let near =
                [access.through_gate(), access.under_gate()].map(|it| it.expect("it is known").0 == Against::Near);
            assert_eq!(near, [is_near; 2], "{size:?}");
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
