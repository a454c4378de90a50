//! Implements: what is carried at the rear.

use super::{Body, End, Point3, PortKind, SeatMoves};
use crate::quantity::{Angle, Flow, Length, Mass, Power, Pressure, Work};

/// The kinds of implement.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum ImplementKind {
    /// Digging arm (backhoe).
    DiggingArm,
    /// Post-hole auger.
    Auger,
    /// Stump cutter.
    StumpCutter,
    /// Flail mower.
    Flail,
    /// Rotary cutter.
    RotaryCutter,
    /// Box blade or grader blade.
    Blade,
    /// Pallet forks.
    Forks,
    /// Ballast block.
    Ballast,
}

/// How an implement is carried.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Mount {
    /// On a frame's rack.
    Rack,
    /// On the three-point hitch.
    ThreePoint,
}

/// What an implement asks of the hydraulics.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct HydraulicNeed {
    /// Least flow it works with.
    pub flow_min: Option<Flow>,
    /// Greatest flow it stands.
    pub flow_max: Option<Flow>,
    /// Least pressure it works with.
    pub pressure_min: Option<Pressure>,
    /// Greatest pressure it stands.
    pub pressure_max: Option<Pressure>,
    /// Double-acting outlets it occupies.
    pub outlets: u32,
    /// Whether it has to be fed by power-beyond.
    pub power_beyond: Option<bool>,
}

/// One link of a digging arm.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ArmLink {
    /// Pin to pin, or pin to tip.
    pub length: Length,
    /// Least angle: boom over the horizontal, dipper and bucket against the link before.
    pub least: Angle,
    /// Greatest angle.
    pub greatest: Angle,
    /// Angle in transport.
    pub transport: Angle,
    /// Mass of the link with its cylinder.
    pub mass: Option<Mass>,
    /// Centre of gravity along the link from its first pin.
    pub centre: Option<Length>,
}

/// Stabilisers.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Stabilisers {
    /// Centre to centre of the pads, down.
    pub spread: Length,
    /// Width over the stabilisers in transport.
    pub transport_width: Length,
    /// x of the pads in the implement's axes.
    pub x: Length,
}

/// A digging arm: boom, dipper and bucket on a swing post. Measured outward (to the rear) from
/// the swing centre, so that its plane has u = −x.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DiggingArm {
    /// Swing centre, x in the implement's axes.
    pub swing_x: Length,
    /// Boom foot, outward from the swing centre.
    pub foot_u: Length,
    /// Boom foot, z in the implement's axes.
    pub foot_z: Length,
    /// Boom.
    pub boom: ArmLink,
    /// Dipper.
    pub dipper: ArmLink,
    /// Bucket.
    pub bucket: ArmLink,
    /// Swing to either side.
    pub swing: Angle,
    /// Stabilisers, if stated.
    pub stabilisers: Option<Stabilisers>,
    /// Load the hydraulics lift at full reach at ground level, if stated.
    pub lift_at_full_reach: Option<Mass>,
}

/// An implement. Its local origin is the reference point of its mount, on the carrier's face.
#[derive(Debug, Clone, PartialEq)]
pub struct Implement {
    /// What every item has; mass and centre of gravity are in transport.
    pub body: Body,
    /// Workshop time to put it on; `None` = not known.
    pub fitting: Option<Work>,
    /// Kind.
    pub kind: ImplementKind,
    /// How it is carried.
    pub mount: Mount,
    /// Digging arm, if it is one and its links are stated.
    pub arm: Option<DiggingArm>,
    /// Where the operator's levers are, if it has any.
    pub console: Option<Point3>,
    /// Whether it is worked from a seat facing the rear; see [`Self::is_worked_from_seat`].
    pub worked_from_seat: Option<bool>,
    /// What it asks of the hydraulics, if it has any.
    pub hydraulics: Option<HydraulicNeed>,
    /// Least power at the take-off or engine.
    pub power_least: Option<Power>,
    /// Greatest power it stands.
    pub power_most: Option<Power>,
    /// Whether it brings its own seat, outlined by its shapes of the role *seat*; `None` = not known.
    pub own_seat: Option<bool>,
    /// Seat index point of its own seat, (x, z).
    pub own_seat_index: Option<(Length, Length)>,
    /// How its own seat gets out of the way.
    pub own_seat_moves: SeatMoves,
    /// Width over all in transport.
    pub transport_width: Option<Length>,
}

impl Implement {
    /// An implement of which nothing else is stated: fixtures say what they need and leave out the rest.
    pub const fn of(body: Body, kind: ImplementKind, mount: Mount) -> Self {
        Self {
            body,
            fitting: None,
            kind,
            mount,
            arm: None,
            console: None,
            worked_from_seat: None,
            hydraulics: None,
            power_least: None,
            power_most: None,
            own_seat: None,
            own_seat_index: None,
            own_seat_moves: SeatMoves { folds: false, slides: Length::ZERO, off: None },
            transport_width: None,
        }
    }

    /// Whether it is worked from a seat facing the rear. A digging arm of which nothing is stated is.
    pub fn is_worked_from_seat(&self) -> bool {
        self.worked_from_seat.unwrap_or(self.kind == ImplementKind::DiggingArm)
    }

    /// Whether it brings a seat of its own; `None` = not known. One that is worked from no seat has none unless it says so.
    pub fn brings_seat(&self) -> Option<bool> {
        self.own_seat.or((!self.is_worked_from_seat()).then_some(false))
    }

    /// Whether a shaft from the take-off drives it.
    pub fn is_shaft_driven(&self) -> bool {
        let has_shaft = self.body.ports.iter();
        let mut has_shaft = has_shaft.filter(|port| matches!(port.kind, PortKind::PowerTakeOff(_)));
        has_shaft.any(|port| port.end == End::Carried) || self.power_least.or(self.power_most).is_some()
    }

    /// Whether oil drives it: what it needs is stated, or it is of a kind that nothing else can drive.
    pub fn is_oil_driven(&self) -> bool {
        use ImplementKind::{Auger, Ballast, Blade, DiggingArm, Flail, Forks, RotaryCutter, StumpCutter};
        let by_kind = match self.kind {
            DiggingArm => true,
            Auger | StumpCutter | Flail | RotaryCutter => !self.is_shaft_driven(),
            Blade | Forks | Ballast => false,
        };
        by_kind || self.hydraulics.is_some()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn implement(kind: ImplementKind) -> Implement {
        Implement::of(Body::default(), kind, Mount::Rack)
    }

    #[test]
    fn a_digging_arm_is_worked_from_a_seat_unless_it_says_otherwise() {
        let arm = implement(ImplementKind::DiggingArm);
        assert!(arm.is_worked_from_seat() && !implement(ImplementKind::Flail).is_worked_from_seat());
        assert!(!Implement { worked_from_seat: Some(false), ..arm }.is_worked_from_seat());
    }

    #[test]
    fn what_turns_is_driven_by_a_shaft_or_else_by_oil() {
        let oil = |of: &Implement| (of.is_shaft_driven(), of.is_oil_driven());
        let flail = implement(ImplementKind::Flail);
        assert_eq!(oil(&implement(ImplementKind::DiggingArm)), (false, true));
        assert_eq!(oil(&implement(ImplementKind::Forks)), (false, false));
        assert_eq!(oil(&flail), (false, true));
        assert_eq!(oil(&Implement { power_most: Some(Power::from_kw(9.0)), ..flail }), (true, false));
        let forks = implement(ImplementKind::Forks);
        assert_eq!(oil(&Implement { hydraulics: Some(HydraulicNeed::default()), ..forks }), (false, true));
    }
}
