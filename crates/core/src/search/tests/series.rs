//! Items that differ from one another in one thing alone.

use super::chance::Chance;
use crate::item::{Body, Frame, Implement, Machine, Seat};

/// One thing of another body, under that one's name.
fn body(chance: &Chance, before: &Body, other: Body) -> Body {
    let named = Body { id: other.id, label: other.label, ..before.clone() };
    match chance.below(5) {
        0 => Body { mass: other.mass, ..named },
        1 => Body { centre_of_gravity: other.centre_of_gravity, ..named },
        2 => Body { listed_with: other.listed_with, ..named },
        3 => Body { ports: other.ports, ..named },
        _ => Body { shapes: other.shapes, ..named },
    }
}

/// The same body under another's name.
fn named(before: &Body, other: &Body) -> Body {
    Body { id: other.id.clone(), label: other.label.clone(), ..before.clone() }
}

pub fn machine(chance: &Chance, before: &Machine, other: Machine) -> Machine {
    let same = Machine { body: named(&before.body, &other.body), ..before.clone() };
    match chance.below(11) {
        0 => Machine { station: other.station, ..same },
        1 => Machine { wheelbase: other.wheelbase, ..same },
        2 => Machine { rear: other.rear, ..same },
        3 => Machine { front: other.front, ..same },
        4 => Machine { roll_over_bar: other.roll_over_bar, ..same },
        5 => Machine { cab_rear: other.cab_rear, ..same },
        6 => Machine { operator_seat: other.operator_seat, ..same },
        7 => Machine { hydraulics: other.hydraulics, ..same },
        8 => Machine { fitted: other.fitted, ..same },
        _ => Machine { body: body(chance, &before.body, other.body), ..same },
    }
}

pub fn frame(chance: &Chance, before: &Frame, other: Frame) -> Frame {
    let same = Frame { body: named(&before.body, &other.body), ..before.clone() };
    match chance.below(6) {
        0 => Frame { stations: other.stations, ..same },
        1 => Frame { excludes: other.excludes, ..same },
        2 => Frame { requires: other.requires, ..same },
        _ => Frame { body: body(chance, &before.body, other.body), ..same },
    }
}

pub fn seat(chance: &Chance, before: &Seat, other: Seat) -> Seat {
    let same = Seat { body: named(&before.body, &other.body), ..before.clone() };
    match chance.below(12) {
        0 => Seat { kind: other.kind, ..same },
        1 => Seat { supplied_with: other.supplied_with, ..same },
        2 => Seat { stations: other.stations, ..same },
        3 => Seat { index_point: other.index_point, ..same },
        4 => Seat { swivel_radius: other.swivel_radius, ..same },
        5 => Seat { front_seat: other.front_seat, ..same },
        6 => Seat { least_room: other.least_room, ..same },
        7 => Seat { greatest_reach: other.greatest_reach, ..same },
        8 => Seat { presence_switch: other.presence_switch, ..same },
        _ => Seat { body: body(chance, &before.body, other.body), ..same },
    }
}

pub fn implement(chance: &Chance, before: &Implement, other: Implement) -> Implement {
    let same = Implement { body: named(&before.body, &other.body), ..before.clone() };
    match chance.below(12) {
        0 => Implement { kind: other.kind, ..same },
        1 => Implement { mount: other.mount, ..same },
        2 => Implement { console: other.console, ..same },
        3 => Implement { worked_from_seat: other.worked_from_seat, ..same },
        4 => Implement { hydraulics: other.hydraulics, ..same },
        5 => Implement { power_least: other.power_least, ..same },
        6 => Implement { power_most: other.power_most, ..same },
        7 => Implement {
            own_seat: other.own_seat,
            own_seat_index: other.own_seat_index,
            own_seat_moves: other.own_seat_moves,
            ..same
        },
        _ => Implement { body: body(chance, &before.body, other.body), ..same },
    }
}
