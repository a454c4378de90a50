//! Pins in lugs or clevises, and three-point hitches, from behind.

use fitup_core::item::{PinForm, Pins, ThreePoint, span_of};
use fitup_core::plane::Point;
use fitup_core::quantity::{Length, Stated};

use super::detail::{Detail, HOLE, ROUND, SOLID};
use super::hooks::cross;

fn or(stated: Option<Stated<Length>>, usual: f64) -> f64 {
    stated.map_or(usual, |stated| stated.value.m()).clamp(usual * 0.4, usual * 2.5)
}

/// The picture of a dimension of a pinned port: two eyes where nothing is stated.
pub(super) fn pins(pins: &Pins, dimension: &str) -> Detail {
    let spread = or(pins.spread, 0.5);
    let of = |name: &str| {
        let (number, what) = name.strip_prefix("point-")?.split_once('-')?;
        Some((number.parse::<usize>().ok()?.checked_sub(1)?, what.to_owned()))
    };
    let (index, what) = of(dimension).filter(|_| span_of(dimension).is_none()).unwrap_or((0, dimension.to_owned()));
    let point = pins.points.get(index).cloned().unwrap_or_default();
    let (diameter, width) = (or(point.diameter, 0.026), or(point.width, 0.045));
    let mut detail = Detail::default();
    if what == "diameter" {
        // One eye from the side.
        detail.block(SOLID, Point::new(-diameter, -diameter), Point::new(diameter * 2.6, diameter));
        let look = if pins.form == PinForm::Lug { HOLE } else { ROUND };
        detail.round(look, Point::ORIGIN, diameter);
        cross(&mut detail, Point::ORIGIN, diameter * 1.4);
        detail.across(Point::ORIGIN, diameter);
        return detail;
    }
    let half = spread / 2.0;
    let high = 0.07;
    for x in [-half, half] {
        if pins.form == PinForm::Lug {
            detail.block(SOLID, Point::new(x - width / 2.0, -high), Point::new(x + width / 2.0, high * 0.6));
        } else {
            for way in [-1.0, 1.0] {
                let inner = x + way * width / 2.0;
                detail.block(SOLID, Point::new(inner, -high), Point::new(inner + way * 0.012, high * 0.6));
            }
            let pin = Point::new(width / 2.0 + 0.025, diameter / 2.0);
            detail.block(ROUND, Point::new(x, 0.0) - pin, Point::new(x, 0.0) + pin);
        }
        cross(&mut detail, Point::new(x, 0.0), high * 0.9);
    }
    detail.block(SOLID, Point::new(-half - 0.05, -high - 0.03), Point::new(half + 0.05, -high));
    match what.as_str() {
        "width" => detail.between(Point::new(-half - width / 2.0, 0.0), Point::new(-half + width / 2.0, 0.0), 3.0),
        "spread" => detail.between(Point::new(-half, 0.0), Point::new(half, 0.0), 0.0),
        _ if span_of(dimension).is_some() => detail.between(Point::new(-half, 0.0), Point::new(half, 0.0), 0.0),
        _ => {}
    }
    detail
}

/// The picture of a dimension of a three-point hitch.
pub(super) fn hitch(hitch: &ThreePoint, dimension: &str) -> Detail {
    let (span, mast) = (or(hitch.span, 0.7), or(hitch.mast, 0.46));
    let (lower, upper) = (or(hitch.lower_pin, 0.022).max(0.03), or(hitch.upper_pin, 0.019).max(0.03));
    let mut detail = Detail::default();
    let half = span / 2.0;
    let top = Point::new(0.0, mast);
    let beam = 0.03;
    detail.block(SOLID, Point::new(-half, -beam), Point::new(half, beam));
    for x in [-0.06, 0.06] {
        detail.block(SOLID, Point::new(x - 0.012, 0.0), Point::new(x + 0.012, mast + 0.04));
    }
    for way in [-1.0, 1.0] {
        let shoulder = way * half;
        detail.block(ROUND, Point::new(shoulder, -lower / 2.0), Point::new(shoulder + way * 0.1, lower / 2.0));
    }
    detail.block(ROUND, top - Point::new(0.1, upper / 2.0), top + Point::new(0.1, upper / 2.0));
    match dimension {
        "span" => detail.between(Point::new(half, -beam), Point::new(-half, -beam), 1.7),
        "mast" => detail.between(Point::new(0.0, 0.0), top, 0.0),
        "lower-pin" => {
            let x = half + 0.06;
            detail.between(Point::new(x, -lower / 2.0), Point::new(x, lower / 2.0), 0.0);
        }
        "upper-pin" => detail.between(Point::new(0.08, mast - upper / 2.0), Point::new(0.08, mast + upper / 2.0), 0.0),
        _ => {}
    }
    detail
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_pinned_port_and_a_hitch_of_which_nothing_is_stated_have_a_place_for_every_dimension() {
        for form in [PinForm::Lug, PinForm::Clevis] {
            for dimension in ["spread", "point-1-diameter", "point-2-width", "point-1-to-point-2"] {
                assert!(pins(&Pins::of(form), dimension).taken.is_some(), "{form:?} {dimension}");
            }
            assert!(pins(&Pins::of(form), "").taken.is_none());
        }
        for dimension in ["span", "mast", "lower-pin", "upper-pin"] {
            assert!(hitch(&ThreePoint::default(), dimension).taken.is_some(), "{dimension}");
        }
    }
}
