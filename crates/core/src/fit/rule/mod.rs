//! Rules beyond joints, one a file. Each says by types what it sees of a build, and adds the findings it has.
//!
//! A rule names a [`View`] of each step and what else it [asks](Ask). It is handed these, the side, and nothing else. Options of
//! which it sees the same stand for each other in the search for completions.
//!
//! A new rule is a file here, three lines below, its texts and its case: `DEVELOPERS.md` goes through the steps.
//!
//! # Examples
//! A rule that an implement weighs no more than two hundred kilograms:
//! ```
//! use fitup_core::finding::{Check, Finding, Grade, Subject, Unstated, Verdict};
//! use fitup_core::findings;
//! use fitup_core::fit::Desk;
//! use fitup_core::fit::rule::{Datum, Rule, Seen, View};
//! use fitup_core::item::{Implement, ItemRef};
//! use fitup_core::quantity::Mass;
//!
//! #[derive(PartialEq)]
//! struct Weight(Datum<Mass>);
//!
//! impl<'c> View<'c, Implement> for Weight {
//!     fn of(_: &'c Desk, _: ItemRef, implement: &'c Implement) -> Self {
//!         Self(Datum::new(Unstated::Mass, implement.body.mass).map(|mass| mass.value))
//!     }
//! }
//!
//! struct Light;
//!
//! findings! {
//!     /// It weighs more.
//!     Heavy = "heavy", Work { mass: Mass }
//!     /// Its mass is not stated.
//!     WeightUnknown = "weight-unknown", Work { missing: Unstated }
//! }
//!
//! impl Rule for Light {
//!     type Machine<'c> = ();
//!     type Frame<'c> = ();
//!     type Seat<'c> = ();
//!     type Implement<'c> = Weight;
//!     type Asks<'c> = ();
//!
//!     fn judge(seen: &Seen<'_, Self>, out: &mut Vec<Finding>) {
//!         let Some(implement) = &seen.implement else { return };
//!         let (item, subject) = (implement.item, Subject::Item(implement.item));
//!         let unknown = |what| {
//!             Finding::of(WeightUnknown { missing: what }, subject, Verdict::CheckFirst, Grade::None)
//!                 .check(Check::FindOut { item, what })
//!         };
//!         let Some(mass) = implement.sees.0.need(out, unknown) else { return };
//!         if mass > Mass::from_kg(200.0) {
//!             out.push(Finding::of(Heavy { mass }, subject, Verdict::CheckFirst, Grade::Drawing));
//!         }
//!     }
//! }
//! ```
//! The same rule does not compile if it reads what it does not declare:
//! ```compile_fail,E0609
//! # use fitup_core::finding::{Check, Finding, Grade, Subject, Unstated, Verdict};
//! # use fitup_core::findings;
//! # use fitup_core::fit::Desk;
//! # use fitup_core::fit::rule::{Datum, Rule, Seen, View};
//! # use fitup_core::item::{Implement, ItemRef};
//! # use fitup_core::quantity::Mass;
//! # #[derive(PartialEq)]
//! # struct Weight(Datum<Mass>);
//! # impl<'c> View<'c, Implement> for Weight {
//! #     fn of(_: &'c Desk, _: ItemRef, implement: &'c Implement) -> Self {
//! #         Self(Datum::new(Unstated::Mass, implement.body.mass).map(|mass| mass.value))
//! #     }
//! # }
//! # struct Light;
//! # findings! {
//! #     /// It weighs more.
//! #     Heavy = "heavy", Work { mass: Mass }
//! # }
//! # impl Rule for Light {
//! #     type Machine<'c> = ();
//! #     type Frame<'c> = ();
//! #     type Seat<'c> = ();
//! #     type Implement<'c> = Weight;
//! #     type Asks<'c> = ();
//! fn judge(seen: &Seen<'_, Self>, out: &mut Vec<Finding>) {
//!     let Some(implement) = &seen.implement else { return };
//!     if implement.sees.own_seat {
//!         let fact = Heavy { mass: Mass::ZERO };
//!         out.push(Finding::of(fact, Subject::Item(implement.item), Verdict::CheckFirst, Grade::None));
//!     }
//! }
//! # }
//! ```
//! Nor does one that uses a datum without saying what its absence means:
//! ```compile_fail,E0616
//! use fitup_core::finding::Unstated;
//! use fitup_core::fit::rule::Datum;
//! let mass = Datum::new(Unstated::Mass, Some(12.0));
//! let known: Option<f64> = mass.value;
//! ```

mod any;
mod ask;
mod datum;
mod finished;
mod view;

mod adapter;
mod arm_on_hitch;
mod clearance;
mod fitted;
mod frame_idle;
mod holes_planned;
mod hydraulics;
mod lift;
mod loads;
mod measurement;
mod missing;
mod own_seat;
mod place;
mod power;
mod presence;
mod ramp;
mod seat_kind;
mod seat_room;
mod seat_supplier;
mod seat_switch;
mod site;
mod station;
mod trailer;
mod unit;

pub use ask::{Adapters, Answers, Ask, Asked, HitchIsUsed, Joints, Listed, Place, PlacedAdapter, SpokenOf};
pub use datum::{Datum, Unnamed};
pub use view::{Carried, Of, Own, PortName, Seen, View};

pub use any::QuickVerdict;

pub(crate) use any::{AnyRule, Reads};
pub(crate) use clearance::EquipmentInTheWay;
pub(crate) use clearance::{BarInTheWay, DriverSeatMoves, RearSeatMoves, SeatsClash, Use};
pub(crate) use fitted::{MustComeOff, MustGoOn};
pub(crate) use holes_planned::superfluous;
pub(crate) use loads::{FrontAxleLifts, FrontAxleLight, FrontAxleNearLeast};
pub(crate) use own_seat::OwnSeatComesOff;
pub(crate) use ramp::{RampDrags, RampTight};
pub(crate) use site::GateLow;

use crate::finding::{Declared, Finding};
use crate::item::{Frame, Implement, Machine, Seat};

/// A rule: what it sees of a build, and what it says of that.
pub trait Rule: Sized {
    /// What it sees of the machine; `()` where it does not look, and so for the others.
    type Machine<'c>: View<'c, Machine>;
    /// What it sees of the frame.
    type Frame<'c>: View<'c, Frame>;
    /// What it sees of the seat arrangement.
    type Seat<'c>: View<'c, Seat>;
    /// What it sees of the implement.
    type Implement<'c>: View<'c, Implement>;
    /// What it asks beyond the items: which ports meet, where something stands, what is listed, what the finished machine comes to.
    type Asks<'c>: Ask<'c>;

    /// A quicker way to the worst of what it finds, for a rule on the finished machine that a search asks build by build.
    const QUICK: Option<QuickVerdict> = None;

    /// Adds the findings it has.
    fn judge(seen: &Seen<'_, Self>, out: &mut Vec<Finding>);
}

/// What rules can say, a list for each file that declares findings.
pub(crate) const SAID: &[&[&Declared]] = &[
    adapter::DECLARED,
    arm_on_hitch::DECLARED,
    clearance::DECLARED,
    clearance::equipment::DECLARED,
    clearance::ground::DECLARED,
    clearance::seats::DECLARED,
    clearance::swivel::DECLARED,
    fitted::DECLARED,
    frame_idle::DECLARED,
    holes_planned::DECLARED,
    hydraulics::DECLARED,
    lift::DECLARED,
    loads::DECLARED,
    measurement::DECLARED,
    missing::DECLARED,
    own_seat::DECLARED,
    place::DECLARED,
    power::DECLARED,
    presence::DECLARED,
    ramp::DECLARED,
    seat_kind::DECLARED,
    seat_room::DECLARED,
    seat_supplier::DECLARED,
    seat_switch::DECLARED,
    site::DECLARED,
    station::DECLARED,
    trailer::DECLARED,
    unit::DECLARED,
];

/// Every rule: in the order of the files, then those that ask where items stand, whole rules last, the cheapest first.
pub(crate) const RULES: &[&dyn AnyRule] = &[
    &adapter::AdaptersInUse,
    &arm_on_hitch::ArmOnBareHitch,
    &clearance::OutlinesKnown,
    &fitted::FittedOnMachine,
    &frame_idle::FrameInUse,
    &holes_planned::HolesPlanned,
    &hydraulics::Oil,
    &lift::LiftKnown,
    &loads::LoadsKnown,
    &measurement::MeasurementsUsed,
    &own_seat::OwnSeat,
    &power::TakeOffPower,
    &presence::PortPresence,
    &seat_kind::SeatArrangement,
    &seat_room::SeatRoomKnown,
    &seat_supplier::SeatSupplier,
    &seat_switch::SeatSwitch,
    &station::StationFits,
    &unit::UnitOfRow,
    &place::PlacesKnown,
    &clearance::FrameClear,
    &clearance::SeatClearOfMachine,
    &clearance::ImplementClearOfMachine,
    &clearance::EquipmentClearOfFrame,
    &clearance::EquipmentClearOfImplement,
    &clearance::ImplementClearOfSeat,
    &clearance::SeatsClear,
    &clearance::OwnSeatClear,
    &clearance::Swivel,
    &seat_room::RoomAtSeat,
    &lift::Lifts,
    &loads::LoadsWithin,
];

/// The rules on the build's trailer and site, in the order of the files. They have no say in the four steps:
/// a build without trailer and site finds nothing here.
pub(crate) const TRAVEL: &[&dyn AnyRule] = &[&trailer::OnTheTrailer, &ramp::UpTheRamp, &site::IntoSite];
