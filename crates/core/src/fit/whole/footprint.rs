//! What the placed stack measures.

use super::angles::{EndAngle, angles};
use super::loads::Loads;
use crate::fit::context::Context;
use crate::fit::context::runs::runs;
use crate::fit::context::underside::underside;
use crate::item::{Axle, ItemRef, Machine, ShapeRole, View};
use crate::quantity::{Length, Mass};

/// What the machine measures as it stands in transport. Missing data give `None`, never a guess.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Footprint {
    /// Overall length.
    pub length: Option<Length>,
    /// Overall width.
    pub width: Option<Length>,
    /// Overall height, roll-over bar up unless the build folds it.
    pub height: Option<Length>,
    /// Wheelbase.
    pub wheelbase: Option<Length>,
    /// From the rear axle centre to the rearmost point.
    pub rear_overhang: Option<Length>,
    /// From the front axle centre to the foremost point.
    pub front_overhang: Option<Length>,
    /// Least height of the underside over the ground.
    pub ground_clearance: Option<Length>,
    /// Departure angle (49 CFR 523.2).
    pub departure: Option<EndAngle>,
    /// Approach angle (49 CFR 523.2).
    pub approach: Option<EndAngle>,
    /// Breakover angle (49 CFR 523.2).
    pub breakover: Option<EndAngle>,
    /// Total mass with operator.
    pub mass: Option<Mass>,
    /// Load on the front axle.
    pub front_load: Option<Mass>,
    /// Load on the rear axle.
    pub rear_load: Option<Mass>,
    /// Extent forward and rearward in the machine's axes: (least x, greatest x).
    pub extent_x: Option<(Length, Length)>,
}

/// A box that grows.
#[derive(Debug, Clone, Copy)]
struct Span {
    least: f64,
    most: f64,
}

impl Span {
    const EMPTY: Self = Self { least: f64::INFINITY, most: f64::NEG_INFINITY };

    fn take(&mut self, value: f64) {
        self.least = self.least.min(value);
        self.most = self.most.max(value);
    }

    fn length(self) -> Option<Length> {
        (self.least <= self.most).then(|| Length::from_m(self.most - self.least))
    }
}

/// The footprint of the stack, or of the bare machine alone if `bare`.
pub(crate) fn footprint(context: &Context, loads: Option<&Loads>, bare: bool) -> Footprint {
    let Some((_, machine)) = context.machine() else { return Footprint::default() };
    let wheelbase = machine.wheelbase.map(|w| w.value);
    // What something of unknown place adds is not known either.
    if !bare && !context.without_place().is_empty() {
        return Footprint { wheelbase, ..Footprint::default() };
    }
    let runs = runs(context, bare);
    let (mut x, mut y, mut z) = (Span::EMPTY, Span::EMPTY, Span::EMPTY);
    let mut lowest = Span::EMPTY;
    for run in &runs {
        for &(a, b) in &run.points {
            match run.view {
                View::Side => {
                    x.take(a);
                    if run.role.is_some() {
                        z.take(b);
                    }
                    if run.role != Some(ShapeRole::Tyre) {
                        lowest.take(b);
                    }
                }
                View::Plan => {
                    x.take(a);
                    y.take(b);
                }
                View::Rear => {
                    y.take(a);
                    z.take(b);
                }
            }
        }
    }
    let folded = !bare && context.bar_is_folded();
    let (items, edges) = underside(context, bare);
    let tyres = [(0.0, machine.rear), (machine.wheelbase.map_or(f64::NAN, |w| w.value.m()), machine.front)];
    for (at, axle) in tyres {
        take_tyre(&mut x, &mut y, at, &axle);
    }
    take_bar(&mut z, machine, folded);
    if !bare
        && let Some((implement, row)) = context.implement()
        && context.placement(ItemRef::Implement(implement)).is_some()
    {
        let stabilisers = row.arm.and_then(|arm| arm.stabilisers).map(|stabilisers| stabilisers.transport_width);
        for width in row.transport_width.into_iter().chain(stabilisers) {
            y.take(width.m() / 2.0);
            y.take(-width.m() / 2.0);
        }
    }
    let angles = angles(machine, &items, &edges);
    Footprint {
        length: x.length(),
        width: y.length(),
        height: (z.least <= z.most).then(|| Length::from_m(z.most)),
        wheelbase,
        rear_overhang: (x.least <= x.most).then(|| Length::from_m(-x.least)),
        front_overhang: wheelbase.filter(|_| x.least <= x.most).map(|w| Length::from_m(x.most) - w),
        ground_clearance: (lowest.least <= lowest.most).then(|| Length::from_m(lowest.least)),
        departure: angles.departure,
        approach: angles.approach,
        breakover: angles.breakover,
        mass: if bare { bare_mass(machine) } else { loads.map(|loads| loads.total) },
        front_load: if bare { machine.front.bare_load } else { loads.map(|loads| loads.front) },
        rear_load: if bare { machine.rear.bare_load } else { loads.map(|loads| loads.rear) },
        extent_x: (x.least <= x.most).then(|| (Length::from_m(x.least), Length::from_m(x.most))),
    }
}

fn bare_mass(machine: &Machine) -> Option<Mass> {
    let axles = machine.front.bare_load.zip(machine.rear.bare_load).map(|(front, rear)| front + rear);
    axles.or(machine.body.mass.map(|mass| mass.value))
}

/// A tyre's extent; one whose place or size is not known takes no part.
fn take_tyre(x: &mut Span, y: &mut Span, at: f64, axle: &Axle) {
    if let Some(radius) = axle.overall_radius.or(axle.static_loaded_radius)
        && at.is_finite()
    {
        x.take(at - radius.m());
        x.take(at + radius.m());
    }
    if let (Some(track), Some(width)) = (axle.track, axle.tyre_width) {
        let half = f64::midpoint(track.m(), width.m());
        y.take(half);
        y.take(-half);
    }
}

fn take_bar(z: &mut Span, machine: &Machine, folded: bool) {
    if let Some(bar) = machine.roll_over_bar {
        let height = if folded { bar.height_folded.unwrap_or(bar.height_up) } else { bar.height_up };
        z.take(height.m());
    }
}
