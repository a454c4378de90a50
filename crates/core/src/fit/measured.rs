//! Ports as the tape, the caliper and the eye found them.

use crate::build::{Build, Measurement, Presence};
use crate::item::{BoltPattern, ItemRef, Port, PortKind, SeatBase};
use crate::quantity::{Length, Source, Stated};

/// The port with what was measured on it or found missing, or `None` if nothing was.
pub(super) fn as_measured(build: &Build, item: ItemRef, port: &Port) -> Option<Port> {
    let mut found = port.clone();
    let mut touched = false;
    for measurement in build.measured.iter().filter(|m| m.item == item && m.port == port.name) {
        touched |= enter(&mut found, measurement);
    }
    touched |= drop_missing_holes(build, item, &mut found);
    touched.then_some(found)
}

/// Names of the dimensions of a port that can be measured, as checks and measurements use them.
pub fn dimensions(port: &Port) -> Vec<String> {
    let mut all = of_kind(&port.kind);
    if port.pose.is_some() {
        all.extend(["at-x", "at-z"].map(str::to_owned));
    }
    all
}

/// The stated value of a dimension of a port and how far it may be off; `None` if it states none.
pub fn dimension_of(port: &Port, dimension: &str) -> Option<(Length, Length)> {
    let usual = port.tolerance.unwrap_or(port.source.usual_half_range());
    let stated = |value: Option<Stated<Length>>| value.map(|value| (value.value, port.half_range(&value)));
    let plain = |value: Option<Length>| value.map(|value| (value, usual));
    match (dimension, port.pose) {
        ("at-x", pose) => return plain(pose.map(|pose| pose.at.x)),
        ("at-z", pose) => return plain(pose.map(|pose| pose.at.z)),
        _ => {}
    }
    match &port.kind {
        PortKind::BoltPattern(pattern) | PortKind::SeatBase(SeatBase { pattern, .. }) => {
            if dimension == "bolt" {
                return plain(pattern.bolt);
            }
            let (index, what) = numbered(dimension, "hole-")?;
            let hole = pattern.holes.get(index)?;
            plain(match what {
                "u" => Some(hole.u),
                "v" => Some(hole.v),
                "diameter" => Some(hole.diameter),
                _ => None,
            })
        }
        PortKind::Pins(pins) => match numbered(dimension, "point-") {
            Some((index, what)) => {
                let point = pins.points.get(index)?;
                stated(match what {
                    "diameter" => point.diameter,
                    "width" => point.width,
                    "height" => point.height,
                    _ => None,
                })
            }
            None => stated(pins.spread.filter(|_| dimension == "spread")),
        },
        PortKind::HookRack(rack) => stated(match dimension {
            "diameter" => rack.diameter,
            "spread" => rack.spread,
            "drop" => rack.drop,
            "latch" => rack.latch,
            "setback" => rack.setback,
            _ => None,
        }),
        PortKind::ThreePoint(hitch) => stated(match dimension {
            "lower-pin" => hitch.lower_pin,
            "upper-pin" => hitch.upper_pin,
            "span" => hitch.span,
            "mast" => hitch.mast,
            _ => None,
        }),
        PortKind::PowerTakeOff(_) | PortKind::Coupler(_) | PortKind::Electric(_) => None,
    }
}

fn of_kind(kind: &PortKind) -> Vec<String> {
    let names = |fixed: &[&str]| fixed.iter().map(|&name| name.to_owned()).collect::<Vec<_>>();
    match kind {
        PortKind::BoltPattern(pattern) => hole_dimensions(pattern.holes.len()),
        PortKind::SeatBase(base) => hole_dimensions(base.pattern.holes.len()),
        PortKind::Pins(pins) => {
            let mut all = names(&["spread"]);
            for number in 1..=pins.points.len() {
                all.extend(["diameter", "width", "height"].map(|what| format!("point-{number}-{what}")));
            }
            all
        }
        PortKind::HookRack(_) => names(&["diameter", "spread", "drop", "latch", "setback"]),
        PortKind::ThreePoint(_) => names(&["lower-pin", "upper-pin", "span", "mast"]),
        PortKind::PowerTakeOff(_) | PortKind::Coupler(_) | PortKind::Electric(_) => Vec::new(),
    }
}

fn hole_dimensions(holes: usize) -> Vec<String> {
    let mut all = vec!["bolt".to_owned()];
    for number in 1..=holes {
        all.extend(["u", "v", "diameter"].map(|what| format!("hole-{number}-{what}")));
    }
    all
}

fn enter(port: &mut Port, measurement: &Measurement) -> bool {
    let stated = Stated {
        value: measurement.value,
        plus_minus: measurement.plus_minus,
        source: Source::Measured(measurement.tool),
    };
    if let Some(pose) = &mut port.pose
        && let Some(at) = match measurement.dimension.as_str() {
            "at-x" => Some(&mut pose.at.x),
            "at-z" => Some(&mut pose.at.z),
            _ => None,
        }
    {
        *at = measurement.value;
        port.source = stated.source;
        port.tolerance = Some(stated.half_range());
        return true;
    }
    let slot = match &mut port.kind {
        PortKind::BoltPattern(pattern) | PortKind::SeatBase(SeatBase { pattern, .. }) => {
            let entered = enter_hole(pattern, &measurement.dimension, measurement.value);
            if entered {
                port.source = Source::Measured(measurement.tool);
                port.tolerance = Some(stated.half_range());
            }
            return entered;
        }
        PortKind::Pins(pins) => match numbered(&measurement.dimension, "point-") {
            Some((index, what)) => pins.points.get_mut(index).and_then(|point| match what {
                "diameter" => Some(&mut point.diameter),
                "width" => Some(&mut point.width),
                "height" => Some(&mut point.height),
                _ => None,
            }),
            None if measurement.dimension == "spread" => Some(&mut pins.spread),
            None => None,
        },
        PortKind::HookRack(rack) => match measurement.dimension.as_str() {
            "diameter" => Some(&mut rack.diameter),
            "spread" => Some(&mut rack.spread),
            "drop" => Some(&mut rack.drop),
            "latch" => Some(&mut rack.latch),
            "setback" => Some(&mut rack.setback),
            _ => None,
        },
        PortKind::ThreePoint(hitch) => match measurement.dimension.as_str() {
            "lower-pin" => Some(&mut hitch.lower_pin),
            "upper-pin" => Some(&mut hitch.upper_pin),
            "span" => Some(&mut hitch.span),
            "mast" => Some(&mut hitch.mast),
            _ => None,
        },
        PortKind::PowerTakeOff(_) | PortKind::Coupler(_) | PortKind::Electric(_) => None,
    };
    slot.is_some_and(|slot| {
        *slot = Some(stated);
        true
    })
}

fn enter_hole(pattern: &mut BoltPattern, dimension: &str, value: Length) -> bool {
    if dimension == "bolt" {
        pattern.bolt = Some(value);
        return true;
    }
    let Some((index, what)) = numbered(dimension, "hole-") else { return false };
    let Some(hole) = pattern.holes.get_mut(index) else { return false };
    match what {
        "u" => hole.u = value,
        "v" => hole.v = value,
        "diameter" => hole.diameter = value,
        _ => return false,
    }
    true
}

/// "hole-3-u" → (2, "u").
fn numbered<'d>(dimension: &'d str, prefix: &str) -> Option<(usize, &'d str)> {
    let (number, what) = dimension.strip_prefix(prefix)?.split_once('-')?;
    let number: usize = number.parse().ok()?;
    Some((number.checked_sub(1)?, what))
}

/// Takes out the holes that were looked for and are not there ("port/hole-3").
fn drop_missing_holes(build: &Build, item: ItemRef, port: &mut Port) -> bool {
    let name = port.name.clone();
    let (PortKind::BoltPattern(pattern) | PortKind::SeatBase(SeatBase { pattern, .. })) = &mut port.kind else {
        return false;
    };
    let before = pattern.holes.len();
    let mut number = 0;
    pattern.holes.retain(|_| {
        number += 1;
        build.looked.get(&(item, format!("{name}/hole-{number}"))) != Some(&Presence::No)
    });
    pattern.holes.len() != before
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbered_dimensions_are_read_from_one() {
        assert_eq!(numbered("hole-3-u", "hole-"), Some((2, "u")));
        assert_eq!(numbered("hole-0-u", "hole-"), None);
        assert_eq!(numbered("hole-x-u", "hole-"), None);
        assert_eq!(numbered("spread", "hole-"), None);
    }
}
