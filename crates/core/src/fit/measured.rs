//! Names and stated values of the dimensions that can be measured on a port.

use crate::item::{Port, PortKind, SeatBase};
use crate::quantity::{Length, Stated};

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
    let usual = port.usual_half_range();
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

/// "hole-3-u" → (2, "u").
pub(super) fn numbered<'d>(dimension: &'d str, prefix: &str) -> Option<(usize, &'d str)> {
    let (number, what) = dimension.strip_prefix(prefix)?.split_once('-')?;
    let number: usize = number.parse().ok()?;
    Some((number.checked_sub(1)?, what))
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
