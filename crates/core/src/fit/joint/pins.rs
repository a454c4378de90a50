//! Pins: a lug with a bore between the cheeks of a clevis, a pin through both.

use super::uncertain::{Decided, Weighed};
use super::{Mating, Meeting, Side};
use crate::finding::{Finding, Value, Verdict};
use crate::fit::context::Context;
use crate::item::{AdapterId, ItemRef, PinForm, PinPoint, Pins};
use crate::order;
use crate::quantity::{Length, Stated};

/// Running clearance up to which a pin needs no sleeve. A larger value lets a joint hammer.
/// Common practice, no source.
pub const SLOP_LIMIT: Length = Length::from_mm(1.5);

/// Side play of a lug in its clevis up to which no washers are needed. Common practice, no source.
pub const SIDE_PLAY_LIMIT: Length = Length::from_mm(6.0);

/// Difference in spread that two clevises take up by their side play. Common practice, no source.
pub const SPREAD_LIMIT: Length = Length::from_mm(2.0);

/// Every point of the carrier with the carried one of the same place, and the spread between them.
pub(super) fn judge(context: &Context, meeting: &Meeting, carrier: &Pins, carried: &Pins) -> Mating {
    if carrier.form == carried.form {
        return meeting
            .finding("kinds-differ", Verdict::WontMount)
            .with("carrier", Value::Label(form_name(carrier.form).to_owned()))
            .with("carried", Value::Label(form_name(carried.form).to_owned()))
            .into();
    }
    if carrier.points.is_empty() || carried.points.is_empty() {
        let side = if carrier.points.is_empty() { Side::Carrier } else { Side::Carried };
        return meeting.unknown("pins-unknown", side, "diameter").into();
    }
    let mut findings = Vec::new();
    for (index, (a, b)) in carrier.points.iter().zip(&carried.points).enumerate() {
        let point = Point { meeting, index, carrier: a, carried: b, carrier_is_lug: carrier.form == PinForm::Lug };
        findings.push(point.bore_and_pin(context));
        findings.push(point.lug_and_gap());
    }
    findings.extend(spread(meeting, carrier, carried));
    Mating { findings: essential(findings), overlay: None }
}

/// Of several points that come to the same, one says it: the tightest was pushed first among equals.
fn essential(mut findings: Vec<Finding>) -> Vec<Finding> {
    let mut seen: Vec<&'static str> = Vec::new();
    order::sort_by_key(&mut findings, |finding| std::cmp::Reverse(finding.verdict));
    findings.retain(|finding| {
        let new = !seen.contains(&finding.code);
        seen.push(finding.code);
        new
    });
    findings
}

struct Point<'a> {
    meeting: &'a Meeting<'a>,
    index: usize,
    carrier: &'a PinPoint,
    carried: &'a PinPoint,
    carrier_is_lug: bool,
}

type StatedLength = Stated<Length>;

impl Point<'_> {
    fn name(&self) -> Value {
        Value::Label(self.carrier.name.clone())
    }

    /// (lug's, clevis's) value of a dimension, or which side does not state it.
    fn lug_and_clevis(
        &self,
        of: impl Fn(&PinPoint) -> Option<StatedLength>,
    ) -> Result<(StatedLength, StatedLength), Side> {
        let a = of(self.carrier).ok_or(Side::Carrier)?;
        let b = of(self.carried).ok_or(Side::Carried)?;
        Ok(if self.carrier_is_lug { (a, b) } else { (b, a) })
    }

    fn half_ranges(&self, lug: &StatedLength, clevis: &StatedLength) -> [Length; 2] {
        let (lug_port, clevis_port) = if self.carrier_is_lug {
            (self.meeting.carrier_port, self.meeting.carried_port)
        } else {
            (self.meeting.carried_port, self.meeting.carrier_port)
        };
        [lug_port.half_range(lug), clevis_port.half_range(clevis)]
    }

    fn unknown(&self, side: Side, what: &str) -> Finding {
        let dimension = format!("point-{}-{what}", self.index + 1);
        self.meeting.unknown("pins-unknown", side, &dimension).with("point", self.name())
    }

    fn bore_and_pin(&self, context: &Context) -> Finding {
        let (bore, pin) = match self.lug_and_clevis(|point| point.diameter) {
            Ok(both) => both,
            Err(side) => return self.unknown(side, "diameter"),
        };
        let running = bore.value - pin.value;
        let ranges = self.half_ranges(&bore, &pin);
        let (Some(enters), Some(tight)) = (Weighed::new(running, &ranges), Weighed::new(SLOP_LIMIT - running, &ranges))
        else {
            return self.unknown(Side::Carrier, "diameter");
        };
        let base = |code, verdict| {
            self.meeting
                .finding(code, verdict)
                .with("running", Value::Length(running))
                .with("limit", Value::Length(SLOP_LIMIT))
                .with("point", self.name())
        };
        match (enters.decided, tight.decided) {
            (Decided::Misfits, _) => self.will_not_enter("diameter", &bore, &pin),
            (Decided::Open, _) => self.open(base("pins-may-enter", Verdict::CheckFirst), &enters, "diameter"),
            (Decided::Fits, Decided::Misfits) => match sleeve(context, &bore, &pin) {
                Some(id) => self
                    .meeting
                    .finding("pins-sleeved", Verdict::BoltsUpWithWork)
                    .with("bore", Value::Length(bore.value))
                    .with("pin", Value::Length(pin.value))
                    .with("item", Value::Item(ItemRef::Adapter(id))),
                None => base("pins-need-sleeve", Verdict::BoltsUpWithWork)
                    .with("bore", Value::Length(bore.value))
                    .with("pin", Value::Length(pin.value)),
            },
            // On the edge of the slop limit the joint goes together either way.
            (Decided::Fits, Decided::Open | Decided::Fits) => base("pins-enter", Verdict::BoltsUp),
        }
    }

    fn lug_and_gap(&self) -> Finding {
        let (lug, gap) = match self.lug_and_clevis(|point| point.width) {
            Ok(both) => both,
            Err(side) => return self.unknown(side, "width"),
        };
        let play = gap.value - lug.value;
        let Some(enters) = Weighed::new(play, &self.half_ranges(&lug, &gap)) else {
            return self.unknown(Side::Carrier, "width");
        };
        let base = |code, verdict| {
            self.meeting.finding(code, verdict).with("limit", Value::Length(SIDE_PLAY_LIMIT)).with("point", self.name())
        };
        match enters.decided {
            Decided::Misfits => self.will_not_enter("width", &gap, &lug),
            Decided::Open => {
                let finding = base("pins-may-enter", Verdict::CheckFirst).with("running", Value::Length(play));
                self.open(finding, &enters, "width")
            }
            Decided::Fits if play > SIDE_PLAY_LIMIT => {
                base("pins-side-play", Verdict::BoltsUpWithWork).with("play", Value::Length(play))
            }
            Decided::Fits => base("pins-enter", Verdict::BoltsUp).with("running", Value::Length(play)),
        }
    }

    fn will_not_enter(&self, what: &str, outer: &StatedLength, inner: &StatedLength) -> Finding {
        let (carrier, carried) =
            if self.carrier_is_lug == (what == "diameter") { (outer, inner) } else { (inner, outer) };
        self.meeting
            .finding("pins-will-not-enter", Verdict::WontMount)
            .with("dimension", Value::Label(what.to_owned()))
            .with("point", self.name())
            .with("carrier", Value::Length(carrier.value))
            .with("carried", Value::Length(carried.value))
            .with("over", Value::Length(inner.value - outer.value))
    }

    fn open(&self, finding: Finding, weighed: &Weighed, what: &str) -> Finding {
        let dimension = format!("point-{}-{what}", self.index + 1);
        let finding = finding.with("dimension", Value::Label(what.to_owned()));
        weighed
            .open(finding, self.meeting.carried.0, &self.meeting.carried_port.name, &dimension)
            .check(self.meeting.compare())
    }
}

fn spread(meeting: &Meeting, carrier: &Pins, carried: &Pins) -> Option<Finding> {
    let (a, b) = match (carrier.spread, carried.spread) {
        (Some(a), Some(b)) => (a, b),
        (None, None) => return None,
        (None, Some(_)) => return Some(meeting.unknown("pins-unknown", Side::Carrier, "spread")),
        (Some(_), None) => return Some(meeting.unknown("pins-unknown", Side::Carried, "spread")),
    };
    let off = (a.value - b.value).abs();
    let ranges = [meeting.carrier_port.half_range(&a), meeting.carried_port.half_range(&b)];
    let weighed = Weighed::new(SPREAD_LIMIT - off, &ranges)?;
    match weighed.decided {
        Decided::Fits => None,
        Decided::Misfits => Some(
            meeting
                .finding("pins-spread-off", Verdict::WontMount)
                .with("carrier", Value::Length(a.value))
                .with("carried", Value::Length(b.value))
                .with("off-by", Value::Length(off))
                .with("limit", Value::Length(SPREAD_LIMIT)),
        ),
        Decided::Open => {
            let finding = meeting
                .finding("pins-may-enter", Verdict::CheckFirst)
                .with("dimension", Value::Label("spread".to_owned()))
                .with("running", Value::Length(SPREAD_LIMIT - off))
                .with("limit", Value::Length(SPREAD_LIMIT));
            Some(weighed.open(finding, meeting.carried.0, &meeting.carried_port.name, "spread"))
        }
    }
}

/// A sleeve of the build that lines this bore for this pin: within the slop limit on both sides.
fn sleeve(context: &Context, bore: &StatedLength, pin: &StatedLength) -> Option<AdapterId> {
    context.build.adapters.iter().copied().find(|&id| {
        context.catalogue().adapter(id).sleeve.is_some_and(|sleeve| {
            let outside = bore.value - sleeve.outer;
            let inside = sleeve.inner - pin.value;
            [outside, inside].iter().all(|&play| play >= Length::ZERO && play <= SLOP_LIMIT)
        })
    })
}

/// The form of a pin port as figures name it; the words translate it.
const fn form_name(form: PinForm) -> &'static str {
    match form {
        PinForm::Lug => "lug",
        PinForm::Clevis => "clevis",
    }
}
