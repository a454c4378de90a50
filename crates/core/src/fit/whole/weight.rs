//! What stands on the axles and tyres, and the ballast that mends it.

use super::loads::Loads;
use super::rated_load::RatedLoad;
use super::{Ask, Missing, MissingOf};
use crate::build::Build;
use crate::dimension::{AxleLoads, PointMass, ShareOf, axle_loads};
use crate::finding::Unstated;
use crate::fit::context::Context;
use crate::fit::desk::Desk;
use crate::item::ItemRef;
use crate::quantity::{Length, Mass};

/// Least load on the front axle as a share of the bare machine's mass.
///
/// Source: German road traffic rule for tractors with a rear implement, 20 % of the unladen mass,
/// as reported by a farm journal from a ministry leaflet; the same figure stands in most
/// implement manuals.
pub(crate) const LEAST_FRONT_SHARE: f64 = 0.2;

/// The build on its axles, in transport on level ground.
#[derive(Debug, Clone, PartialEq)]
pub struct Weight {
    /// Front and rear axle load of the bare machine, without operator.
    pub bare: Option<(Mass, Mass)>,
    /// Everything, with the operator and the build's ballast.
    pub loads: Option<Loads>,
    /// Front axle.
    pub front: RatedLoad,
    /// Rear axle.
    pub rear: RatedLoad,
    /// One front tyre.
    pub front_tyre: RatedLoad,
    /// One rear tyre.
    pub rear_tyre: RatedLoad,
    /// The rules on the front axle's share, each by its name.
    pub rules: Vec<WeightRule>,
    /// Where the ballast of the rules hangs, forward of the rear axle.
    pub ballast_at: Option<Length>,
    /// What is not stated.
    pub missing: Vec<Missing>,
}

/// A rule on the front axle's share.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct WeightRule {
    /// Name, kebab-case.
    pub rule: &'static str,
    /// The share as it is.
    pub share: f64,
    /// The least share.
    pub least: f64,
    /// Ballast that brings it up, 0 where it is met; `None` = no ballast at that place does.
    pub ballast: Option<Mass>,
}

impl WeightRule {
    /// Whether the rule is kept.
    pub fn is_met(&self) -> bool {
        self.share >= self.least
    }
}

/// The build on its axles; `ballast_at` is where ballast would hang, `None` for ahead of the foremost point. `None`
/// without a machine.
pub fn weight(desk: &Desk, build: &Build, ballast_at: Option<Length>) -> Option<Weight> {
    of(&Context::new(desk, build), ballast_at)
}

pub(super) fn of(context: &Context, ballast_at: Option<Length>) -> Option<Weight> {
    let (id, machine) = context.machine()?;
    let item = MissingOf::Item(ItemRef::Machine(id));
    let mut ask = Ask::default();
    let loads = ask.loads(context);
    ask.need(item, Unstated::RatedLoad, machine.front.rated.and(machine.rear.rated));
    let off = loads.as_ref().map(|loads| loads.off).unwrap_or_default();
    let front = RatedLoad { load: loads.as_ref().map(|loads| loads.front), rated: machine.front.rated, off: off.front };
    let rear = RatedLoad { load: loads.as_ref().map(|loads| loads.rear), rated: machine.rear.rated, off: off.rear };
    let ballast_at = ballast_at.or_else(|| Some(ballast_place(context, machine.wheelbase?.value)));
    let rules = loads.as_ref().zip(ballast_at).map_or_else(Vec::new, |(loads, at)| rules(loads, at));
    Some(Weight {
        bare: machine.front.bare_load.zip(machine.rear.bare_load),
        loads,
        front,
        rear,
        front_tyre: front.of_each_tyre(machine.front.tyre_rated),
        rear_tyre: rear.of_each_tyre(machine.rear.tyre_rated),
        rules,
        ballast_at,
        missing: ask.0,
    })
}

/// Front ballast hangs ahead of the foremost point of the machine; where that is not known, a
/// front overhang of 500 mm is taken (common practice, no source).
pub(crate) fn ballast_place(context: &Context, wheelbase: Length) -> Length {
    let nose = context.machine().and_then(|(id, _)| context.desk.foremost(ItemRef::Machine(id)));
    nose.unwrap_or(wheelbase + Length::from_mm(500.0))
}

/// The share of the unladen mass, as the road rules have it, and the same share of everything, as manuals often have it.
fn rules(loads: &Loads, at: Length) -> Vec<WeightRule> {
    let bodies: Vec<PointMass> =
        loads.bodies.iter().map(|body| PointMass { mass: body.mass.kg(), x: body.x.m() }).collect();
    let Ok(axles) = axle_loads(loads.wheelbase.m(), &bodies) else { return Vec::new() };
    let rule = |rule, of: ShareOf, whole: f64| {
        let share = axles.front / whole;
        share.is_finite().then(|| WeightRule {
            rule,
            share,
            least: LEAST_FRONT_SHARE,
            ballast: ballast(&axles, at, of),
        })
    };
    let bare = loads.bare.kg();
    let unladen = rule("front-share-of-unladen", ShareOf::Bare(bare), bare);
    let total = rule("front-share-of-total", ShareOf::Total, axles.total);
    unladen.into_iter().chain(total).collect()
}

fn ballast(axles: &AxleLoads, at: Length, of: ShareOf) -> Option<Mass> {
    axles.ballast(at.m(), LEAST_FRONT_SHARE, of).ok().flatten().map(Mass::from_kg)
}
