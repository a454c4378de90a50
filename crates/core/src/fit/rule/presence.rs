//! Whether the unit in the yard has the ports the joints rely on.

use super::{Joints, PortName, Rule, Seen, View};
use crate::build::Presence;
use crate::finding::{Check, Finding, Grade, Name, Subject, Verdict};
use crate::findings;
use crate::fit::desk::Desk;
use crate::item::{Body, Frame, Implement, ItemRef, Machine, Seat, Serials};

findings! {
    /// A port was looked for and is not there.
    PortLookedMissing = "port-looked-missing", Fit { port: Name }
    /// A port that a unit of this serial number does not have.
    PortNotOnSerial = "port-not-on-serial", Fit { port: Name, serial: Name }
    /// A port that only some serial numbers have.
    PortSerialUnknown = "port-serial-unknown", Fit { port: Name }
}

/// A port that only some serial numbers have, or that was looked for and is not there.
pub(super) struct PortPresence;

/// Which serial numbers have each port of an item.
#[derive(PartialEq)]
pub struct PortSerials<'c>(Vec<(PortName<'c>, Serials)>);

impl<'c> PortSerials<'c> {
    fn of_body(body: &'c Body) -> Self {
        Self(body.ports.iter().map(|port| (PortName(&port.name), port.serials)).collect())
    }
}

impl<'c> View<'c, Machine> for PortSerials<'c> {
    fn of(_: &'c Desk, _: ItemRef, machine: &'c Machine) -> Self {
        Self::of_body(&machine.body)
    }
}

impl<'c> View<'c, Frame> for PortSerials<'c> {
    fn of(_: &'c Desk, _: ItemRef, frame: &'c Frame) -> Self {
        Self::of_body(&frame.body)
    }
}

impl<'c> View<'c, Seat> for PortSerials<'c> {
    fn of(_: &'c Desk, _: ItemRef, seat: &'c Seat) -> Self {
        Self::of_body(&seat.body)
    }
}

impl<'c> View<'c, Implement> for PortSerials<'c> {
    fn of(_: &'c Desk, _: ItemRef, implement: &'c Implement) -> Self {
        Self::of_body(&implement.body)
    }
}

impl Rule for PortPresence {
    type Machine<'c> = PortSerials<'c>;
    type Frame<'c> = PortSerials<'c>;
    type Seat<'c> = PortSerials<'c>;
    type Implement<'c> = PortSerials<'c>;
    type Asks<'c> = Joints<'c>;

    fn judge(seen: &Seen<'_, Self>, out: &mut Vec<Finding>) {
        for (role, ends) in seen.asks.iter() {
            let subject = Subject::Joint(role, ends[0].0, ends[1].0);
            for (item, index) in ends {
                let (name, serials) = port(seen, item, index);
                let port = name.for_findings();
                match (name.looked_for(item, seen.side), seen.side.serials.get(&item)) {
                    (Some(Presence::No), _) => {
                        let fact = PortLookedMissing { port };
                        out.push(Finding::of(fact, subject, Verdict::WontMount, Grade::Measured));
                    }
                    (None, Some(&serial)) if !serials.holds(serial) => {
                        let fact = PortNotOnSerial { port, serial: serial.to_string() };
                        out.push(Finding::of(fact, subject, Verdict::WontMount, Grade::Listed));
                    }
                    (None, None) if !serials.is_open() => {
                        let check = Check::Look { item, what: port.clone() };
                        let fact = PortSerialUnknown { port };
                        out.push(Finding::of(fact, subject, Verdict::CheckFirst, Grade::None).check(check));
                    }
                    (Some(Presence::Yes) | None, _) => {}
                }
            }
        }
    }
}

/// A port of an item of the build.
fn port<'c>(seen: &Seen<'c, PortPresence>, item: ItemRef, index: usize) -> (PortName<'c>, Serials) {
    let of = match item {
        ItemRef::Machine(_) | ItemRef::Equipment(_) => seen.machine.as_ref(),
        ItemRef::Frame(_) => seen.frame(),
        ItemRef::Seat(_) => seen.seat.as_ref(),
        ItemRef::Implement(_) => seen.implement.as_ref(),
        ItemRef::Adapter(id) => {
            let port = &seen.adapter(id).body.ports[index];
            return (PortName(&port.name), port.serials);
        }
    };
    of.expect("a joint is between items of the build").sees.0[index]
}
