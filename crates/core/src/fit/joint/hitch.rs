//! Three-point hitches by category (ISO 730) and, where they are stated, by dimensions.

use super::uncertain::{Decided, Weighed};
use super::{Mating, Meeting};
use crate::finding::{Dimension, Finding, Name, PartSize, Probability, Verdict};
use crate::findings;
use crate::fit::mating::three_point::{Category, HitchFit, LOWER_PIN_TOLERANCE, SPAN_TOLERANCE, hitch_fit};
use crate::item::{DimensionName, End, Port, ThreePoint};
use crate::quantity::{Length, Stated};

findings! {
    /// The categories go together.
    HitchFits = "hitch-fits", Fit { category: Name }
    /// The lower links are moved to another span.
    HitchOtherSpan = "hitch-other-span", Fit { carrier: Name, carried: Name }
    /// The implement's pins are thinner: bushings take that up.
    HitchNeedsBushings = "hitch-needs-bushings", Fit { carrier: Name, carried: Name }
    /// The implement's pins are too large.
    HitchDiffers = "hitch-differs", Fit { carrier: Name, carried: Name }
    /// A quick-attach frame holds its hooks at another span.
    HitchFrameStiff = "hitch-frame-stiff", Fit { carrier: Name, carried: Name }
    /// A stated dimension does not go on.
    HitchDimensionMisfits = "hitch-dimension-misfits", Fit {
        dimension: Dimension, carrier: PartSize, carried: PartSize, limit: PartSize, over: Length,
    }
    /// A stated dimension is too close to call.
    HitchDimensionOpen = "hitch-dimension-open", Fit {
        dimension: Dimension,
        carrier: PartSize,
        carried: PartSize,
        limit: PartSize,
        probability: Probability,
        settles: Option<Length>,
    }
    /// Neither category nor dimensions are stated.
    HitchUnknown = "hitch-unknown", Fit { missing: Dimension }
}

/// How the implement's category goes on the hitch's, and then every dimension that decides and is stated.
///
/// A port that names no category has those whose pins and span are the ones it states. A quick-attach frame holds its hooks at
/// one span and one mast height; without it the lower links are moved to the implement's span, and the top link is screwed to
/// its mast.
pub(super) fn judge(meeting: &Meeting, carrier: &ThreePoint, carried: &ThreePoint) -> Mating {
    let known = [(End::Carrier, carrier), (End::Carried, carried)].map(|(side, hitch)| {
        let found = categories(meeting.end(side).1, hitch);
        if found.is_empty() { Err(side) } else { Ok(found) }
    });
    let (hitches, implements) = match known {
        [Ok(hitches), Ok(implements)] => (hitches, implements),
        [Err(side), _] | [_, Err(side)] => return unknown(meeting, side, ThreePoint::CATEGORY.name()).into(),
    };
    let pairs = hitches.iter().flat_map(|&hitch| implements.iter().map(move |&implement| (hitch, implement)));
    let fits = pairs.map(|(hitch, implement)| (hitch_fit(hitch, implement, carrier.quick_attach), hitch, implement));
    let Some((fit, hitch, implement)) = fits.min_by_key(|&(fit, ..)| rank(fit)) else {
        return unknown(meeting, End::Carrier, ThreePoint::CATEGORY.name()).into();
    };
    let mut findings = vec![by_category(meeting, fit, hitch, implement, &hitches, &implements)];
    let misfits = rank(fit) >= rank(HitchFit::PinsTooLarge);
    if !misfits {
        findings.extend(by_dimensions(meeting, carrier, carried, hitch));
    }
    Mating { findings, overlay: None }
}

fn unknown(meeting: &Meeting, side: End, dimension: DimensionName) -> Finding {
    meeting.unknown(side, dimension, |missing| HitchUnknown { missing })
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
    let (carrier, carried) = (names(hitches), names(implements));
    match fit {
        HitchFit::Fits => {
            let category = if hitch == implement { hitch.name().to_owned() } else { names(&[hitch, implement]) };
            meeting.finding(HitchFits { category }, Verdict::BoltsUp)
        }
        HitchFit::OtherSpan => meeting.finding(HitchOtherSpan { carrier, carried }, Verdict::BoltsUpWithWork),
        HitchFit::Bushings => meeting.finding(HitchNeedsBushings { carrier, carried }, Verdict::BoltsUpWithWork),
        HitchFit::PinsTooLarge => meeting.finding(HitchDiffers { carrier, carried }, Verdict::WontMount),
        HitchFit::FrameTooStiff => meeting.finding(HitchFrameStiff { carrier, carried }, Verdict::WontMount),
    }
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
    for (line, nominal) in [(&ThreePoint::LOWER_PIN, table.lower_pin), (&ThreePoint::UPPER_PIN, table.upper_pin)] {
        if let (Some(ball), Some(pin)) = (or_nominal(line.of(carrier), Some(nominal)), line.of(carried)) {
            findings.extend(weigh(meeting, line.name(), ball, pin, ball.value - pin.value, Length::ZERO));
        }
    }
    if carrier.quick_attach {
        let limit = Length::from_m(SPAN_TOLERANCE);
        for (line, nominal) in [(&ThreePoint::SPAN, table.span), (&ThreePoint::MAST, table.mast)] {
            if let (Some(hooks), Some(implement)) = (or_nominal(line.of(carrier), nominal), line.of(carried)) {
                let off = (hooks.value - implement.value).abs();
                findings.extend(weigh(meeting, line.name(), hooks, implement, limit - off, limit));
            }
        }
    }
    findings
}

/// A margin that is certain one way says nothing, the other way *won't mount*; between them it is open.
fn weigh(
    meeting: &Meeting,
    name: DimensionName,
    carrier: Stated<Length>,
    carried: Stated<Length>,
    margin: Length,
    limit: Length,
) -> Option<Finding> {
    let ranges = [meeting.carrier_port.half_range(&carrier), meeting.carried_port.half_range(&carried)];
    let Some(weighed) = Weighed::new(margin, &ranges) else {
        return Some(unknown(meeting, End::Carried, name));
    };
    // A pin of its nominal size goes into a ball of that size: the ball is made for it.
    let is_made_for_it = margin >= Length::ZERO && carrier.plus_minus == Some(Length::ZERO);
    let (carrier, carried, dimension) = (carrier.value, carried.value, name.to_string());
    match weighed.decided {
        Decided::Fits => None,
        Decided::Open if is_made_for_it => None,
        Decided::Misfits => {
            let fact = HitchDimensionMisfits { dimension, carrier, carried, limit, over: -margin };
            Some(meeting.finding(fact, Verdict::WontMount))
        }
        Decided::Open => {
            let (probability, settles) = (weighed.probability(), weighed.settles());
            let fact = HitchDimensionOpen { dimension, carrier, carried, limit, probability, settles };
            let (item, port) = meeting.end(End::Carried);
            let check = weighed.check(item, &port.name, name);
            Some(meeting.finding(fact, Verdict::CheckFirst).check(check))
        }
    }
}
