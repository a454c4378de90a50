//! Three-point hitches by category (ISO 730) and, where they are stated, by dimensions.

use super::uncertain::{Decided, Weighed};
use super::{Mating, Meeting, Side};
use crate::finding::{Finding, Value, Verdict};
use crate::fit::mating::three_point::{Category, HitchFit, LOWER_PIN_TOLERANCE, SPAN_TOLERANCE, hitch_fit};
use crate::item::{Port, ThreePoint};
use crate::quantity::{Length, Stated};

/// How the implement's category goes on the hitch's, and then every dimension that decides and is stated.
///
/// A port that names no category has those whose pins and span are the ones it states. A quick-attach frame holds its hooks at
/// one span and one mast height; without it the lower links are moved to the implement's span, and the top link is screwed to
/// its mast.
pub(super) fn judge(meeting: &Meeting, carrier: &ThreePoint, carried: &ThreePoint) -> Mating {
    let known = [(Side::Carrier, carrier), (Side::Carried, carried)].map(|(side, hitch)| {
        let found = categories(meeting.end(side).1, hitch);
        if found.is_empty() { Err(side) } else { Ok(found) }
    });
    let (hitches, implements) = match known {
        [Ok(hitches), Ok(implements)] => (hitches, implements),
        [Err(side), _] | [_, Err(side)] => return meeting.unknown("hitch-unknown", side, "category").into(),
    };
    let pairs = hitches.iter().flat_map(|&hitch| implements.iter().map(move |&implement| (hitch, implement)));
    let fits = pairs.map(|(hitch, implement)| (hitch_fit(hitch, implement, carrier.quick_attach), hitch, implement));
    let Some((fit, hitch, implement)) = fits.min_by_key(|&(fit, ..)| rank(fit)) else {
        return meeting.unknown("hitch-unknown", Side::Carrier, "category").into();
    };
    let mut findings = vec![by_category(meeting, fit, hitch, implement, &hitches, &implements)];
    let misfits = rank(fit) >= rank(HitchFit::PinsTooLarge);
    if !misfits {
        findings.extend(by_dimensions(meeting, carrier, carried, hitch));
    }
    Mating { findings, overlay: None }
}

/// Best first.
const fn rank(fit: HitchFit) -> u8 {
    match fit {
        HitchFit::Fits => 0,
        HitchFit::OtherSpan => 1,
        HitchFit::Bushings => 2,
        HitchFit::PinsTooLarge => 3,
        HitchFit::FrameTooStiff => 4,
    }
}

/// The categories that a port names, or else those whose figures it states.
fn categories(port: &Port, hitch: &ThreePoint) -> Vec<Category> {
    let named: Vec<Category> = hitch.categories.iter().filter_map(|name| Category::named(name)).collect();
    if !named.is_empty() || hitch.lower_pin.is_none() {
        return named;
    }
    let near = |stated: Option<Stated<Length>>, nominal: Option<f64>, tolerance: f64| match (stated, nominal) {
        (Some(stated), Some(nominal)) => (stated.value.m() - nominal).abs() <= tolerance + port.half_range(&stated).m(),
        // What is not stated, or not in the table, speaks against no category.
        _ => true,
    };
    let is_like = |category: &Category| {
        let table = category.dimensions();
        near(hitch.lower_pin, Some(table.lower_pin), LOWER_PIN_TOLERANCE)
            && near(hitch.span, table.span, SPAN_TOLERANCE)
    };
    Category::ALL.into_iter().filter(is_like).collect()
}

fn by_category(
    meeting: &Meeting,
    fit: HitchFit,
    hitch: Category,
    implement: Category,
    hitches: &[Category],
    implements: &[Category],
) -> Finding {
    let names =
        |categories: &[Category]| categories.iter().map(|category| category.name()).collect::<Vec<_>>().join(", ");
    let (code, verdict) = match fit {
        HitchFit::Fits => {
            let name = if hitch == implement { hitch.name().to_owned() } else { names(&[hitch, implement]) };
            return meeting.finding("hitch-fits", Verdict::BoltsUp).with("category", Value::Label(name));
        }
        HitchFit::OtherSpan => ("hitch-other-span", Verdict::BoltsUpWithWork),
        HitchFit::Bushings => ("hitch-needs-bushings", Verdict::BoltsUpWithWork),
        HitchFit::PinsTooLarge => ("hitch-differs", Verdict::WontMount),
        HitchFit::FrameTooStiff => ("hitch-frame-stiff", Verdict::WontMount),
    };
    meeting
        .finding(code, verdict)
        .with("carrier", Value::Label(names(hitches)))
        .with("carried", Value::Label(names(implements)))
}

/// What the stated dimensions say beside the categories: a pin thicker than its ball, and on a quick-attach frame a span or a
/// mast that the hooks do not meet. A dimension that the implement does not state is that of its category and says nothing.
fn by_dimensions(meeting: &Meeting, carrier: &ThreePoint, carried: &ThreePoint, hitch: Category) -> Vec<Finding> {
    let table = hitch.dimensions();
    let or_nominal = |stated: Option<Stated<Length>>, nominal: Option<f64>| {
        // The table's figures are nominal: what they may be off is in the limits.
        stated.or(nominal.map(|nominal| Stated {
            value: Length::from_m(nominal),
            plus_minus: Some(Length::ZERO),
            ..Stated::default()
        }))
    };
    let mut findings = Vec::new();
    for (name, ball, pin) in [
        ("lower-pin", or_nominal(carrier.lower_pin, Some(table.lower_pin)), carried.lower_pin),
        ("upper-pin", or_nominal(carrier.upper_pin, Some(table.upper_pin)), carried.upper_pin),
    ] {
        if let (Some(ball), Some(pin)) = (ball, pin) {
            findings.extend(weigh(meeting, name, ball, pin, ball.value - pin.value, Length::ZERO));
        }
    }
    if carrier.quick_attach {
        let limit = Length::from_m(SPAN_TOLERANCE);
        for (name, hooks, implement) in [
            ("span", or_nominal(carrier.span, table.span), carried.span),
            ("mast", or_nominal(carrier.mast, table.mast), carried.mast),
        ] {
            if let (Some(hooks), Some(implement)) = (hooks, implement) {
                let off = (hooks.value - implement.value).abs();
                findings.extend(weigh(meeting, name, hooks, implement, limit - off, limit));
            }
        }
    }
    findings
}

/// A margin that is certain one way says nothing, the other way *won't mount*; between them it is open.
fn weigh(
    meeting: &Meeting,
    name: &str,
    carrier: Stated<Length>,
    carried: Stated<Length>,
    margin: Length,
    limit: Length,
) -> Option<Finding> {
    let ranges = [meeting.carrier_port.half_range(&carrier), meeting.carried_port.half_range(&carried)];
    let figures = |code, verdict| {
        meeting
            .finding(code, verdict)
            .with("dimension", Value::Label(name.to_owned()))
            .with("carrier", Value::Length(carrier.value))
            .with("carried", Value::Length(carried.value))
            .with("limit", Value::Length(limit))
    };
    let Some(weighed) = Weighed::new(margin, &ranges) else {
        return Some(meeting.unknown("hitch-unknown", Side::Carried, name));
    };
    match weighed.decided {
        Decided::Fits => None,
        // A pin of its nominal size goes into a ball of that size: the ball is made for it.
        Decided::Open if margin >= Length::ZERO && carrier.plus_minus == Some(Length::ZERO) => None,
        Decided::Misfits => {
            Some(figures("hitch-dimension-misfits", Verdict::WontMount).with("over", Value::Length(-margin)))
        }
        Decided::Open => {
            let finding = figures("hitch-dimension-open", Verdict::CheckFirst);
            Some(weighed.open(finding, meeting.carried.0, &meeting.carried_port.name, name))
        }
    }
}
